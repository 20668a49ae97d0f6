"""Write ../reference/*.csv: values of general reference libraries, against which the tests compare carb-core.

    pip install CoolProp PyCO2SYS fluids iapws numpy
    python3 reference.py

Nothing here comes from carb-core. CoolProp gives CO2 by the equation of state of Span and Wagner (1996) and water by
that of Wagner and Pruss (2002); PyCO2SYS gives the solubility of CO2 by Weiss (1974); iapws gives Henry's constant of
CO2 by IAPWS G7-04; fluids gives the U.S. Standard Atmosphere 1976, which is that of ISO 2533 at these altitudes. The
beer equations beside the water of solubility_grid.csv are written out here, as published.
"""

import warnings
from importlib.metadata import version
from pathlib import Path

import CoolProp.CoolProp as coolprop
import numpy as np
import PyCO2SYS
from CoolProp import AbstractState
from fluids import ATMOSPHERE_1976
from iapws._iapws import _Henry as henry_constant

FOLDER = Path(__file__).resolve().parent.parent / "reference"
CELSIUS = range(0, 61, 5)
ATMOSPHERE = 101325.0
PSI = 6894.757293168
GRAMS_PER_VOLUME = 44.0095 / 22.263  # a volume is at 0 °C and 1 atm, where the real gas has 22.263 L/mol


def write(name, what, libraries, columns, rows):
    versions = ", ".join(f"{library} {version(library)}" for library in libraries.split())
    with open(FOLDER / name, "w", encoding="utf-8", newline="\n") as file:
        file.write(f"# {what}\n")
        file.write(f"# From {versions}. Regenerate: python3 ../scripts/reference.py\n")
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


def vapour(kelvin):
    # Held at the triple point, as in water().
    return coolprop.PropsSI("P", "T", max(kelvin, 273.16), "Q", 0, "Water")


def density(kelvin):
    return coolprop.PropsSI("D", "T", max(kelvin, 273.16), "P", ATMOSPHERE, "Water")


def weiss(kelvin):
    return float(PyCO2SYS.sys(salinity=0, temperature=kelvin - 273.15)["k_CO2"])


def dissolved(state, k0, co2, pressure, kelvin):
    """CO2 in water, g/L of solution, under CO2 at its partial pressure within the whole."""
    state.update(coolprop.PT_INPUTS, pressure, kelvin)
    fugacity = co2 * state.fugacity_coefficient(0)
    # Molar volume of dissolved CO2: 32.3 mL/mol under pressure (Weiss), 33.5 mL/mol in the solution's volume.
    swelling = np.exp(-32.3e-6 * (pressure - ATMOSPHERE) / (8.314462618 * kelvin))
    molality = k0 * fugacity / ATMOSPHERE * swelling
    return molality * coolprop.PropsSI("M", "CO2") / (1 / density(kelvin) + 33.5e-6 * molality)


def bottles():
    """CO2 in a sealed bottle of water, by bisection on the pressure of CO2; worst: 8 % more, and air sealed in."""
    state = AbstractState("HEOS", "CO2")
    filling, ambient = 12 + 273.15, 97500.0

    def total(content, kelvin, headspace, air):
        k0 = weiss(kelvin)
        liquid = density(filling) / density(kelvin)
        gas = 1 + headspace / 100 - liquid
        other = (air - vapour(filling)) * headspace / 100 / gas * kelvin / filling if air else 0.0

        def found(co2):
            held = dissolved(state, k0, co2, co2 + vapour(kelvin) + other, kelvin)
            state.update(coolprop.PT_INPUTS, co2, kelvin)
            return held * liquid + state.rhomass() * gas

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


def saturation():
    for celsius in (*range(-20, 31, 2), 30.5):
        kelvin = celsius + 273.15
        liquid, gas = (coolprop.PropsSI("D", "T", kelvin, "Q", quality, "CO2") for quality in (0, 1))
        yield celsius, coolprop.PropsSI("P", "T", kelvin, "Q", 0, "CO2"), liquid, gas


def viscosity():
    for celsius in (0.5, *range(2, 61, 2)):
        yield celsius, 1e3 * coolprop.PropsSI("V", "T", celsius + 273.15, "P", 1e5, "Water")


def henry():
    for celsius in CELSIUS:
        kelvin = celsius + 273.15
        with warnings.catch_warnings():
            # At 0 °C it extrapolates, and says so: its data begin at 1.04 °C.
            warnings.simplefilter("ignore")
            yield celsius, np.log(henry_constant(kelvin, "CO2") / 1e3), weiss(kelvin)


def expansion():
    solution = lambda x, celsius: coolprop.PropsSI("D", "T", celsius + 273.15, "P", ATMOSPHERE, f"INCOMP::MEA[{x!r}]")
    for percent in (0, 4, 5, 6, 8, 12):
        x = 0.0
        for _ in range(30):
            x = percent / 100 * 789.24 / solution(x, 20)
        for celsius in (2, 4, 8, 12, 20, 25, 30):
            yield celsius, percent, solution(x, celsius) / solution(x, 20)


def grid():
    state = AbstractState("HEOS", "CO2")
    for celsius in (0, 2, 4, 6, 10, 15, 20, 25, 30, 40):
        for bar in (2, 3):
            kelvin, pressure, f = celsius + 273.15, bar * 1e5, celsius * 9 / 5 + 32
            chart_fit = pressure / PSI * (0.01821 + 0.090115 * np.exp(-(f - 32) / 43.11)) - 0.003342
            # Gauge pressure as a quadratic in volumes, of which the lower root is the physical one.
            gauge = (pressure - ATMOSPHERE) / PSI
            slope, bend = 4.24267 + 0.173354 * f, 0.0684226
            missing = gauge - (-16.6999 - 0.0101059 * f + 0.00116512 * f**2)
            quadratic = (slope - np.sqrt(slope**2 - 4 * bend * missing)) / (2 * bend)
            yield (
                celsius,
                bar,
                dissolved(state, weiss(kelvin), pressure - vapour(kelvin), pressure, kelvin),
                chart_fit * GRAMS_PER_VOLUME,
                quadratic * GRAMS_PER_VOLUME,
                10 * bar * np.exp(-10.73797 + 2617.25 / kelvin),
            )


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
    write(
        "co2_saturation.csv",
        "CO2 at saturation by Span and Wagner (1996): pressure, and density of the liquid and of the vapour.",
        "CoolProp",
        ("temperature_c", "pressure_pa", "liquid_density_kg_m3", "vapour_density_kg_m3"),
        saturation(),
    )
    write(
        "water_viscosity.csv",
        "Viscosity of water at 1 bar.",
        "CoolProp",
        ("temperature_c", "viscosity_mpa_s"),
        viscosity(),
    )
    write(
        "henry.csv",
        "CO2 in water: ln of Henry's constant in GPa by IAPWS G7-04, and mol per kg and atmosphere by Weiss (1974).",
        "iapws PyCO2SYS",
        ("temperature_c", "iapws_ln_kh_gpa", "weiss_k0_mol_per_kg_atm"),
        henry(),
    )
    write(
        "ethanol_expansion.csv",
        "Density of ethanol in water relative to that at 20 °C, by the fits of Melinder (2010).",
        "CoolProp",
        ("temperature_c", "alcohol_percent_vol", "density_ratio_to_20c"),
        expansion(),
    )
    write(
        "solubility_grid.csv",
        "CO2 by total pressure, g/L: water by gas and water of CoolProp with PyCO2SYS, beer by published equations.",
        "CoolProp PyCO2SYS",
        ("temperature_c", "pressure_bar_abs", "water", "chart_fit", "chart_quadratic", "european"),
        grid(),
    )
