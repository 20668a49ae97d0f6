"""Write ../reference/kegging_pressure.csv: sealed kegs, growlers and fermenters worked out with a general library.

The gas, the water and its vapour are those of CoolProp's equations of state; the drink holds what the fit of the printed
beer chart says (deLange 2011). Nothing of the library goes in; everything is solved by halving an interval.

Run from anywhere: python3 reference_pressure.py
"""

from math import exp
from pathlib import Path

import CoolProp
from CoolProp.CoolProp import PropsSI

FILE = Path(__file__).resolve().parent.parent / "reference" / "kegging_pressure.csv"
ATM, PSI, VOLUME = 101325.0, 6894.757293168361, 44.0095 / 22.263


def chart(total, c):
    """CO2 in beer, g/L, under a total pressure in Pa at c degrees."""
    return VOLUME * (total / PSI * (0.01821 + 0.090115 * exp(-(c * 1.8) / 43.11)) - 0.003342)


def gas(p, c):
    """Density of CO2, g/L."""
    return PropsSI("D", "P", p, "T", c + 273.15, "CO2")


def vapour(c):
    return PropsSI("P", "Q", 0, "T", c + 273.15, "Water")


def water(c):
    return PropsSI("D", "P", ATM, "T", c + 273.15, "Water")


def solve(function, target, low, high):
    for _ in range(100):
        middle = (low + high) / 2
        low, high = (middle, high) if function(middle) < target else (low, middle)
    return (low + high) / 2


def keg(volumes, filling, c, headspace, air=0.0):
    """Gauge pressure in psi and volumes dissolved in a keg that was sealed in equilibrium; air as its partial pressure."""
    r = headspace / 100

    def total_of(co2, at, other):
        return co2 + vapour(at) + other

    sealed = solve(lambda p: chart(total_of(p, filling, 0), filling), volumes * VOLUME, 1e3, 2e6)
    content = volumes * VOLUME + gas(sealed, filling) * r
    liquid = water(filling) / water(c)
    space = 1 + r - liquid
    other = air * r / space * (c + 273.15) / (filling + 273.15)
    co2 = solve(lambda p: chart(total_of(p, c, 0), c) * liquid + gas(p, c) * space, content, 1e3, 2.9e6)
    return (total_of(co2, c, other) - ATM) / PSI, chart(total_of(co2, c, 0), c) / VOLUME


def plato(sg):
    return -616.868 + sg * (1111.14 + sg * (-630.272 + sg * 135.997))


def spunding(volumes, c, final, headspace, start):
    """Relief pressure in psi, and how far above its end the gravity is at closing; the drink holds `start` volumes then."""
    total = solve(lambda p: chart(p, c), volumes * VOLUME, 1e4, 2e6)
    needed = (volumes - start) * VOLUME + headspace / 100 * (gas(total - vapour(c), c) - gas(ATM - vapour(c), c))

    def made(sg):
        return 0.8192 * 10 * (plato(sg) - plato(final)) * 0.9982 * sg * 0.9565 / 2.0665

    return (total - ATM) / PSI, solve(made, needed, final, 1.2) - final


def rows():
    for headspace in (3.5, 10, 50):
        for c in (1, 3.3, 10, 20, 25, 30, 38):
            pressure, left = keg(2.5, 3.3, c, headspace)
            inputs = f"volumes=2.5;filling_c=3.3;temperature_c={c};headspace_percent={headspace}"
            yield "warmed_keg", inputs, "expected_gauge_psi", pressure
            yield "warmed_keg", inputs, "expected_volumes", left
    for volumes, filling, c, headspace, air in ((2.41, 4, 4, 5, ATM), (2.41, 4, 22, 5, ATM), (2.33, 4, 22, 10, ATM),
                                                (2.45, 4, 22, 3, ATM), (2.6, 2, 30, 5, 50000)):
        pressure, left = keg(volumes, filling, c, headspace, air)
        inputs = f"volumes={volumes};filling_c={filling};temperature_c={c};headspace_percent={headspace};air_abs_pa={air:g}"
        yield "warmed_keg", inputs, "expected_gauge_psi", pressure
        yield "warmed_keg", inputs, "expected_volumes", left
    for c in (8, 12, 18, 20):
        for headspace in (0, 5, 10, 30):
            pressure, drop = spunding(2.5, c, 1.010, headspace, 0.84)
            inputs = f"volumes=2.5;temperature_c={c};final_sg=1.010;start_volumes=0.84;fermenter_headspace_percent={headspace}"
            yield "spunding", inputs, "relief_gauge_psi", pressure
            yield "spunding", inputs, "drop_sg", drop


HEADER = f"""\
# Sealed kegs and growlers, and fermenters closed before their end, at sea level: gas and water by CoolProp, the drink by the
# fit of the printed chart. From CoolProp {CoolProp.__version__}. Regenerate: python3 ../scripts/reference_pressure.py
function,inputs,output,value
"""

if __name__ == "__main__":
    lines = [f"{function},{inputs},{output},{value:.7g}\n" for function, inputs, output, value in rows()]
    FILE.write_text(HEADER + "".join(lines), encoding="utf-8")
    print(len(lines), "rows")
