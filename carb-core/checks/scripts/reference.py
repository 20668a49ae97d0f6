"""Write ../reference/*.csv: values of general reference libraries, against which the tests compare carb-core.

    pip install CoolProp PyCO2SYS fluids numpy
    python3 reference.py

Nothing here comes from carb-core. CoolProp gives CO2 by the equation of state of Span and Wagner (1996) and water by
that of Wagner and Pruss (2002); PyCO2SYS gives the solubility of CO2 by Weiss (1974); fluids gives the U.S. Standard
Atmosphere 1976, which is that of ISO 2533 at these altitudes.
"""

from importlib.metadata import version
from pathlib import Path

import CoolProp.CoolProp as coolprop
import numpy as np
import PyCO2SYS
from CoolProp import AbstractState
from fluids import ATMOSPHERE_1976

FOLDER = Path(__file__).resolve().parent.parent / "reference"
CELSIUS = range(0, 61, 5)
ATMOSPHERE = 101325.0


def write(name, what, library, columns, rows):
    with open(FOLDER / name, "w", newline="\n") as file:
        file.write(f"# {what}\n")
        file.write(f"# From {library} {version(library)}. Regenerate: python3 ../scripts/reference.py\n")
        file.write(",".join(columns) + "\n")
        for row in rows:
            file.write(",".join(f"{value:.10g}" for value in row) + "\n")


def gas():
    state = AbstractState("HEOS", "CO2")
    for celsius in CELSIUS:
        for bar in (0.5, 1, 2, 3, 4, 5, 6, 8, 10, 12, 14, 16):
            state.update(coolprop.PT_INPUTS, bar * 1e5, celsius + 273.15)
            yield celsius, bar, state.compressibility_factor(), state.fugacity_coefficient(0), state.rhomass()


def solubility():
    for celsius in range(0, 41, 2):
        # K0 in mol/(kg atm): at salinity 0 a kilogram of sea water is a kilogram of water.
        yield celsius, PyCO2SYS.sys(salinity=0, temperature=celsius)["k_CO2"]


def water():
    for celsius in CELSIUS:
        kelvin = celsius + 273.15
        # The triple point, 0.01 °C, is where the saturation curve begins.
        pressure = coolprop.PropsSI("P", "T", max(kelvin, 273.16), "Q", 0, "Water")
        yield max(celsius, 0.01), pressure, coolprop.PropsSI("D", "T", max(kelvin, 273.16), "P", ATMOSPHERE, "Water")


def atmosphere():
    for metre in (-400, -200, *range(0, 9001, 250)):
        yield metre, ATMOSPHERE_1976(metre).P


def bottles():
    """CO2 in a sealed bottle of water, by bisection on the pressure of CO2; worst: 8 % more, and air sealed in."""
    molar_mass = coolprop.PropsSI("M", "CO2")
    state = AbstractState("HEOS", "CO2")
    vapour = lambda kelvin: coolprop.PropsSI("P", "T", kelvin, "Q", 0, "Water")
    density = lambda kelvin: coolprop.PropsSI("D", "T", kelvin, "P", ATMOSPHERE, "Water")
    filling, ambient = 12 + 273.15, 97500.0

    def total(content, kelvin, headspace, air):
        k0 = float(PyCO2SYS.sys(salinity=0, temperature=kelvin - 273.15)["k_CO2"])
        liquid = density(filling) / density(kelvin)
        gas = 1 + headspace / 100 - liquid
        other = (air - vapour(filling)) * headspace / 100 / gas * kelvin / filling if air else 0.0

        def found(co2):
            pressure = co2 + vapour(kelvin) + other
            state.update(coolprop.PT_INPUTS, pressure, kelvin)
            fugacity = co2 * state.fugacity_coefficient(0)
            # Molar volume of dissolved CO2: 32.3 mL/mol under pressure (Weiss), 33.5 mL/mol in the solution's volume.
            swelling = np.exp(-32.3e-6 * (pressure - ATMOSPHERE) / (8.314462618 * kelvin))
            molality = k0 * fugacity / ATMOSPHERE * swelling
            dissolved = molality * molar_mass / (1 / density(kelvin) + 33.5e-6 * molality)
            state.update(coolprop.PT_INPUTS, co2, kelvin)
            return dissolved * liquid + state.rhomass() * gas

        low, high = 1.0, 25e5
        for _ in range(60):
            middle = (low + high) / 2
            low, high = (middle, high) if found(middle) < content else (low, middle)
        return (low + vapour(kelvin) + other) / 1e5

    for celsius in (4, 12, 20, 30, 40, 50, 60):
        for headspace in (3, 4, 10):
            for content in (3, 5, 8):
                kelvin = celsius + 273.15
                expected = total(content, kelvin, headspace, 0.0)
                worst = total(1.08 * content, kelvin, headspace, ambient)
                yield content, celsius, headspace, filling - 273.15, ambient / 1e3, expected, worst


if __name__ == "__main__":
    FOLDER.mkdir(exist_ok=True)
    write(
        "co2_gas.csv",
        "CO2 gas by Span and Wagner (1996): compressibility factor, fugacity coefficient, density.",
        "CoolProp",
        ("temperature_c", "pressure_bar_abs", "compressibility", "fugacity_coefficient", "density_kg_m3"),
        gas(),
    )
    write(
        "weiss_k0.csv",
        "Solubility of CO2 in pure water by Weiss (1974), mol per kg and atmosphere of fugacity.",
        "PyCO2SYS",
        ("temperature_c", "k0"),
        solubility(),
    )
    write(
        "water.csv",
        "Water by Wagner and Pruss (2002): saturation pressure, and density at 101.325 kPa.",
        "CoolProp",
        ("temperature_c", "saturation_pressure_pa", "density_kg_m3"),
        water(),
    )
    write(
        "atmosphere.csv",
        "U.S. Standard Atmosphere 1976 (that of ISO 2533): pressure by geometric altitude.",
        "fluids",
        ("altitude_m", "pressure_pa"),
        atmosphere(),
    )
    write(
        "bottle.csv",
        "Pressure in a sealed bottle of water by gas and water of CoolProp with the solubility of PyCO2SYS.",
        "CoolProp",
        (
            "co2_g_per_l",
            "temperature_c",
            "headspace_percent",
            "filling_c",
            "ambient_kpa",
            "expected_abs_bar",
            "worst_abs_bar",
        ),
        bottles(),
    )
