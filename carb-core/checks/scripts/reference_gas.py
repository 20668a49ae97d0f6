"""Write ../reference/kegging_*.csv of gas: masses of CO2, cylinders and rooms, against which the tests compare carb-core.

    pip install CoolProp numpy
    python3 reference_gas.py

Nothing here comes from carb-core. CoolProp gives CO2 by the equation of state of Span and Wagner (1996); the rest is
arithmetic written out here.
"""

from importlib.metadata import version
from pathlib import Path

import numpy as np
from CoolProp.CoolProp import PropsSI

FOLDER = Path(__file__).resolve().parent.parent / "reference"
PSI = 6.894757293168361  # kPa
ATMOSPHERE = 101.325  # kPa
POUND = 453.59237  # g


def write(name, what, columns, rows):
    with open(FOLDER / name, "w", encoding="utf-8", newline="\n") as file:
        file.write(f"# {what}\n")
        file.write(f"# From CoolProp {version('CoolProp')}. Regenerate: python3 ../scripts/reference_gas.py\n")
        file.write(",".join(columns) + "\n")
        for row in rows:
            file.write(",".join(cell if isinstance(cell, str) else f"{cell:.10g}" for cell in row) + "\n")


def density(kpa, celsius):
    """CO2 gas, g/L."""
    return PropsSI("D", "P", kpa * 1000, "T", celsius + 273.15, "CO2")


def masses():
    """Uses of CO2: use, space in L, temperature, air outside, gauge pressure, grams."""
    for celsius in (1.0, 3.3, 8.0):
        for ambient in (ATMOSPHERE, 83.4):
            for psi in (5, 10, 11, 12, 14, 35):
                gas = density(ambient + psi * PSI, celsius)
                yield "serve", 18.93, celsius, ambient, psi * PSI, 18.93 * gas
                yield "headspace", 0.67, celsius, ambient, psi * PSI, 0.67 * gas
    for celsius in (5.0, 20.0, 30.0):
        for ambient in (ATMOSPHERE, 83.4):
            for psi in (5, 10, 15, 30, 60):
                full, vented = density(ambient + psi * PSI, celsius), density(ambient, celsius)
                yield "purge", 19.6, celsius, ambient, psi * PSI, 19.6 * (full - vented)
                yield "push", 19.6, celsius, ambient, psi * PSI, 19.6 * full - 0.05 * vented
            yield "sweep", 19.6, celsius, ambient, 0, 5 * 19.6 * density(ambient, celsius)


def liquid_full(filling):
    """Temperature at which the liquid is as light as the filling, °C, by halving."""
    low, high = 0.0, 30.9
    for _ in range(60):
        middle = (low + high) / 2
        dense = PropsSI("D", "T", middle + 273.15, "Q", 0, "CO2") > 1000 * filling
        low, high = (middle, high) if dense else (low, middle)
    return low


def cylinders():
    for filling in (0.68, 0.703, 0.745, 0.75, 0.76, 0.8):
        for celsius in (-10, 0, 4, 10, 20, 25, 30):
            pressure = PropsSI("P", "T", celsius + 273.15, "Q", 1, "CO2")
            vapour = PropsSI("D", "T", celsius + 273.15, "Q", 1, "CO2")
            yield celsius, filling, pressure / 1000 - ATMOSPHERE, vapour / (10 * filling), liquid_full(filling)


def rooms():
    """CO2 in rooms of air that has none at first, in percent: mixed, none of it leaving, in the lower half."""
    gas = density(ATMOSPHERE, 20)
    for grams in (5 * POUND, 10 * POUND, 20 * POUND, 6000, 10_000, 735):
        volume = grams / gas / 1000
        for room in (9, 15, 30, 50):
            full = [100 * (1 - np.exp(-volume / space)) for space in (room, room / 2)]
            yield grams, room, full[0], min(100 * volume / room, 100), full[1]
        # The rooms that just come to a limit.
        for ppm in (5000, 15_000, 30_000, 40_000):
            room = -volume / np.log(1 - ppm / 1e6)
            yield grams, room, ppm / 1e4, 100 * volume / room, 100 * (1 - np.exp(-2 * volume / room))


if __name__ == "__main__":
    write(
        "kegging_masses.csv",
        "Masses of CO2 gas by Span and Wagner (1996). The push leaves 50 mL of air; the sweep is of 5 vessel volumes.",
        ("use", "space_l", "temperature_c", "ambient_kpa", "gauge_kpa", "gas_g"),
        masses(),
    )
    write(
        "kegging_cylinders.csv",
        "Cylinders of CO2 by Span and Wagner (1996): gauge at sea level, share left as the last liquid goes, liquid-full.",
        ("cylinder_c", "filling_g_per_g", "gauge_kpa", "left_percent", "liquid_full_c"),
        cylinders(),
    )
    write(
        "kegging_rooms.csv",
        "CO2 in a room at 20 °C and sea level, by Span and Wagner's density, percent by volume; air without CO2 at first.",
        ("released_g", "room_m3", "mixed_percent", "bound_percent", "low_half_percent"),
        rooms(),
    )
