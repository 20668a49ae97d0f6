"""Invents programs that compute carbonation, and what they would print.

A program is one *habit* for each *question* on which programs differ (`PRIORS`), the units it works in (`SYSTEMS`),
and the digits it prints (`DIGITS`). A *claim* is a packaging day put to it (`DAYS`), with the number that it prints.
Nobody's program is meant by any of them. The formulas are written from the science, without the library's code, so
that what the cross-check finds in a claim can be held against what was put in.

    single(seed)        a claim of a program, what its habits are, and its exact value in the claim's unit
    six(seed)           six such claims, of three kinds, of one program
    random_wrong(seed)  a claim whose number is drawn within 20 % of the right one

What is told of a claim's habits (its *truth*) is what its number was made with: a question that was never asked on
the way is left out. The first habit of each question is the library's own (`OURS`).

How the quantities are computed, where a habit does not say it all:

| quantity | formula |
|---|---|
| priming_sugar | litres x (target - residual - what is fermentable makes) / yield; a counted syrup is drink, and flat |
| residual_co2 | the residual at one atmosphere x (air + fermenter gauge) / one atmosphere; a set figure stays |
| dissolved_co2 | solubility at gauge + air |
| keg_pressure | pressure at which the solubility gives the target, less the air |
| package_pressure | the same; or, counted, by the mass balance of liquid and gas in the package |
| bottle_count | litres / bottle |
| line_length | (gauge - lift x rise - hardware - what is kept at the faucet) / resistance |
| gas_used | litres x (target - start) + gas at serving pressure in the headspace and in the emptied keg |
| purge_cycles | ln((limit - gas) / (air - gas)) / ln(ambient / full), the gas with 30 ppm of oxygen or none |
| alcohol | by the formula, from original and present gravity |

Where that could be read in two ways, it is read so:
- what "a volume" weighs enters wherever volumes and grams meet, and nowhere else;
- the air outside is the program's own constant times the standard atmosphere's share at the altitude; a residual is
  scaled by that share, whatever the constant (it is told for one atmosphere, and such a program takes it as it is);
- relations that are told by gauge pressure at sea level are entered with absolute pressure less the program's constant;
- of a number on the wrong scale of temperature the bare relation is taken, without the ends of its range; the
  handbooks' table has no row for it, so no such program has that;
- the rule of 1 psi for 2000 ft is added to the gauge pressure at sea level, after a blend;
- fermentable extract counts as maltose, by the yield that the program has for sugar;
- a counted package is the library's own sum, filled at 20 °C unless told: no program counts it;
- of degrees Plato the gravity is what the program's own scale gives back.
"""

import math
import random
from collections.abc import Callable, Iterable
from typing import Any

Row = dict[str, Any]
Truth = dict[str, str]
Case = tuple[Row, Truth, float]

# ---------------------------------------------------------------------------------------------- how common habits are

# Out of a hundred programs, by our own judgement of the trade; nothing was counted. Blunders (a wrong label, a wrong
# scale) are put at 1 to 4 in a hundred: with more a program would be found out, with fewer it would teach nothing here.
PRIORS: dict[str, dict[str, float]] = {
    # Most say what they mean by a volume nowhere; 44 g on 22.4 L is what a textbook gives.
    "gas_volume": {
        "real": 27, "ideal": 36, "rounded_molar": 8, "rounded": 12, "real_rounded": 3, "two": 4, "one_bar": 2,
        "ideal_one_bar": 2, "at_60_f": 2, "at_20_c": 2, "at_25_c": 2,
    },
    # The quadratic is everywhere in public texts; the exponential fit's coefficients hardly anywhere. The European form is in
    # German texts.
    "beer_solubility": {
        "chart_fit": 15, "quadratic": 51, "european": 13, "brewery_polynomial": 4, "water_core": 3, "carroll": 3,
        "iapws": 3, "sander": 8,
    },
    "water_solubility": {
        "water_core": 30, "sander": 25, "chart_fit": 15, "quadratic": 15, "carroll": 8, "iapws": 7,
    },
    "wine_solubility": {"eu_wine": 55, "chart_fit": 20, "water_core": 15, "european": 10},
    "residual": {
        "table": 60, "water_handbook": 7, "water_by_degree": 4, "beer_chart": 6, "european": 7, "water": 4, "none": 3, "fixed_0_85": 4,
        "fixed_0_9": 3, "fixed_1": 2,
    },
    "sugar_yield": {"theory": 52, "ninety_five": 8, "balling": 9, "textbook": 7, "half": 8, "four_grams": 16},
    "sugar_taken": {"told": 82, "anhydrous": 8, "monohydrate": 3, "sucrose": 7},
    "dose_headspace": {"left_out": 89, "adds_3": 3, "adds_4": 4, "adds_5": 4},
    "syrup": {"left_out": 80, "counted": 20},
    "gallon": {"told": 96, "other": 4},
    "temperature_scale": {"told": 98, "other": 2},
    "altitude": {"used": 49, "forgotten": 48, "rule": 3},
    "atmosphere": {"standard": 48, "psi_14_7": 30, "bar_1_013": 16, "one_bar": 6},
    "gauge": {"told": 97, "absolute": 3},
    "pressure_label": {"told": 96.4, "psi": 1, "bar": 1, "kpa": 1, "atm": 0.3, "kgf_per_cm2": 0.3},
    "given_pressure": {"told": 98.5, "psi": 0.5, "bar": 0.5, "kpa": 0.5},
    "carbonation_unit": {"told": 98, "other": 2},
    "mass_label": {"told": 93, "ounce_28": 3, "ounce_30": 2, "ounce_fluid": 1, "other": 1},
    "blend": {"absolute": 10, "dry": 56, "by_gauge": 18, "ignored": 16},
    "extract_left": {"counted": 65, "ignored": 35},
    "fermenter_pressure": {"counted": 55, "ignored": 45},
    "package_headspace": {"counted": 0, "left_out": 100},
    "trapped_air": {"left_out": 90, "counted": 10},
    "count_rounding": {"down": 58, "up": 15, "nearest": 24, "exact": 3},
    "cycles_rounding": {"exact": 50, "up": 50},
    "air_oxygen": {"0.20946": 35, "0.21": 65},
    # Who counts purges takes the gas for pure.
    "gas_oxygen": {"usual": 10, "pure": 90},
    "tube_resistance": {"told": 45, "low": 5, "r_1_8": 5, "r_2": 10, "r_2_2": 13, "r_2_7": 13, "r_3": 9},
    "lift": {"half_psi": 62, "water": 24, "per_metre": 4, "ignored": 10},
    "faucet": {"told": 80, "one_psi": 20},
    "alcohol_formula": {"balling": 20, "balling_791": 8, "quick": 46, "quick_131": 8, "hall": 12, "by_ratio": 2, "by_mass": 4},
    "extract_scale": {"asbc": 66, "lincoln": 12, "quick": 22},
    "start_co2": {"counted": 75, "ignored": 25},
    "keg_headspace": {"counted": 50, "left_out": 50},
    "gas_law": {"real": 30, "ideal": 70},
}

OURS: dict[str, str] = {question: next(iter(habits)) for question, habits in PRIORS.items()}

# ---------------------------------------------------------------------------------------------- units and digits

# How many programs work so, of a hundred, and what in: temperature, volume, pressure, length, and the units of mass.
SYSTEMS: dict[str, tuple[float, dict[str, Any]]] = {
    "metric": (42, {"t": "c", "volume": "l", "bottle": "ml", "pressure": {"bar": 80, "kpa": 20}, "length": "m",
                    "mass": {"g": 85, "g_per_l": 10, "kg": 5}, "gas": {"g": 80, "kg": 20}}),
    "US": (33, {"t": "f", "volume": "us_gal", "bottle": "us_fl_oz", "pressure": {"psi": 100}, "length": "ft",
                "mass": {"oz": 45, "g": 50, "lb": 5}, "gas": {"oz": 50, "lb": 25, "g": 25}}),
    "mixed": (20, {"t": "c", "volume": "l", "bottle": "ml", "pressure": {"psi": 100}, "length": "ft",
                   "mass": {"g": 95, "g_per_l": 5}, "gas": {"g": 100}}),
    "imperial": (5, {"t": "c", "volume": "imp_gal", "bottle": "ml", "pressure": {"psi": 100}, "length": "ft",
                     "mass": {"g": 70, "oz": 30}, "gas": {"g": 50, "oz": 50}}),
}

# Decimals that are printed of a unit, and how many programs in a hundred print so many: what stands on a screen, which is
# finer than a scale or a regulator can be read. Gas is told more coarsely, and has units of its own here.
DIGITS: dict[str, dict[int, float]] = {
    "g": {1: 50, 2: 50}, "oz": {2: 50, 3: 50}, "kg": {4: 100}, "lb": {3: 100}, "g_per_l": {2: 80, 3: 20},
    "volumes": {2: 95, 3: 5}, "co2_g_per_l": {2: 100},
    "psi": {1: 98, 2: 2}, "bar": {2: 98, 3: 2}, "kpa": {0: 95, 1: 5},
    "count": {0: 100}, "cycles": {1: 90, 2: 10}, "ft": {1: 30, 2: 70}, "m": {2: 100},
    "abv_percent": {2: 97, 1: 3},
    "gas g": {0: 100}, "gas oz": {1: 100}, "gas kg": {3: 100}, "gas lb": {2: 100},
}
# A rougher screen: whole grams, tenths of an ounce, whole psi. Measured too, and held to nothing.
COARSE: dict[str, dict[int, float]] = {
    "g": {0: 100}, "oz": {1: 100}, "kg": {3: 100}, "lb": {2: 100}, "g_per_l": {1: 100},
    "volumes": {1: 50, 2: 50}, "co2_g_per_l": {1: 100}, "psi": {0: 50, 1: 50}, "bar": {1: 50, 2: 50}, "kpa": {0: 100},
    "count": {0: 100}, "cycles": {1: 100}, "ft": {1: 100}, "m": {1: 100}, "abv_percent": {1: 100},
    "gas g": {0: 100}, "gas oz": {1: 100}, "gas kg": {2: 100}, "gas lb": {1: 100},
}

# ---------------------------------------------------------------------------------------------- what is asked

# Lowest, highest, and the step to which a user would type it.
DAYS: dict[str, tuple[float, float, float]] = {
    "volumes": (2.0, 3.0, 0.1),
    "co2_g_per_l": (4.0, 6.0, 0.1),
    "packaged_l": (10.0, 60.0, 0.5),
    "packaged_us_gal": (3.0, 15.0, 0.25),
    "packaged_imp_gal": (2.5, 13.0, 0.5),
    "warmest_c": (15.0, 25.0, 0.5),
    "warmest_f": (59.0, 77.0, 1.0),
    "temperature_c": (1.0, 12.0, 0.5),
    "temperature_f": (34.0, 54.0, 1.0),
    "stored_c": (12.0, 30.0, 1.0),
    "stored_f": (54.0, 86.0, 1.0),
    "altitude_m": (100.0, 2500.0, 50.0),
    "fermentable_g_per_l": (0.5, 3.0, 0.1),
    "fermenter_gauge_psi": (1.0, 8.0, 0.5),
    "fermenter_gauge_bar": (0.1, 0.5, 0.05),
    "residual_volumes": (0.7, 1.1, 0.05),
    "syrup_water_ml": (200.0, 800.0, 50.0),
    "gauge_psi": (8.0, 20.0, 0.5),
    "gauge_bar": (0.6, 1.4, 0.05),
    "gauge_kpa": (60.0, 140.0, 5.0),
    "blend_psi": (20.0, 40.0, 1.0),
    "blend_bar": (1.4, 2.8, 0.1),
    "blend_kpa": (140.0, 280.0, 10.0),
    "co2_percent": (50.0, 90.0, 5.0),
    "headspace_percent": (3.0, 8.0, 0.5),
    "start_volumes": (0.7, 1.0, 0.05),
    "rise_ft": (1.0, 6.0, 0.5),
    "rise_m": (0.3, 1.8, 0.1),
    "hardware_psi": (0.5, 3.0, 0.5),
    "resistance_psi_per_ft": (0.8, 3.0, 0.1),
    "purge_gauge_psi": (10.0, 30.0, 1.0),
    "purge_gauge_bar": (0.7, 2.0, 0.1),
    "original_sg": (1.035, 1.085, 0.001),
    "original_plato": (9.0, 20.0, 0.1),
}

# How often, of a hundred times, a day has what few have.
RARE: dict[str, float] = {
    "co2_g_per_l": 15, "sea_level": 50, "fermentable": 6, "fermenter_gauge": 6, "residual": 4, "syrup": 6, "blend": 8,
    "beverage": 8, "named": 15, "rise": 85, "hardware": 25, "resistance": 15, "keg": 60, "plato": 15, "filling": 25,
}

KINDS: dict[str, float] = {
    "priming_sugar": 26, "residual_co2": 8, "dissolved_co2": 10, "keg_pressure": 16, "package_pressure": 7,
    "bottle_count": 5, "line_length": 7, "gas_used": 6, "purge_cycles": 5, "alcohol": 10,
}
# What a program of six claims is mainly for.
MAIN_KINDS: dict[str, float] = {"priming_sugar": 75, "keg_pressure": 25}
SUGARS: dict[str, float] = {
    "sucrose": 40, "dextrose_monohydrate": 32, "dextrose_anhydrous": 14, "dry_malt_extract": 9, "honey": 5,
}
BEVERAGES: dict[str, float] = {"water": 30, "soft_drink": 15, "wine": 20, "cider": 25, "mead": 10}
BOTTLES: dict[str, tuple[float, ...]] = {"ml": (330, 355, 375, 500, 750), "us_fl_oz": (12, 16, 22)}
KEGS: dict[str, tuple[tuple[float, float], ...]] = {  # the drink that goes in, and the keg
    "l": ((18.0, 19.6), (19.0, 19.6), (9.0, 9.8), (28.0, 30.0), (48.0, 50.0)),
    "us_gal": ((4.8, 5.2), (5.0, 5.2), (2.4, 2.6), (15.0, 15.5)),
    "imp_gal": ((4.0, 4.3), (10.5, 11.0)),
}
OXYGEN = (50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0, 5000.0, 10000.0)

# ---------------------------------------------------------------------------------------------- constants

PSI = 0.45359237 * 9.80665 / 0.0254**2  # Pa; pound, standard gravity and inch are exact by definition
PASCALS = {"psi": PSI, "bar": 1e5, "kpa": 1e3}
# And what a pressure may be labelled for: atmospheres, kilograms-force on a square centimetre.
LABELS = {**PASCALS, "atm": 101325.0, "kgf_per_cm2": 98066.5}
OUNCE = 28.349523125  # g, the pound of 1959 over 16
LITRES = {"l": 1.0, "ml": 1e-3, "us_gal": 3.785411784, "imp_gal": 4.54609, "us_fl_oz": 3.785411784 / 128}
OTHER_LITRES = {**LITRES, "us_gal": 4.54609, "imp_gal": 3.785411784, "us_fl_oz": 4.54609 / 160}
FOOT = 0.3048  # m
ATMOSPHERE = 101325.0  # Pa
CO2 = 44.0095  # g/mol, standard atomic weights
GAS = 8.314462618  # J/(mol K), CODATA 2018
BEER = (5.0, 35.0)  # % vol and g/L of a usual beer: the library's, for the counted package
SOFT_DRINK = 100.0  # g/L of sugar in a usual soft drink: the library's
WINE = (12.0, 5.0)  # % vol and g/L of a usual wine: the library's

# What a volume weighs, g/L: real gas at 0 °C and 1 atm (Span and Wagner 1996), ideal gas (CODATA), roundings of either,
# and gas at other conditions (real: Span and Wagner 1996).
VOLUMES: dict[str, float] = {
    "real": CO2 / 22.263, "ideal": CO2 / 22.41397, "rounded_molar": 44.01 / 22.4, "rounded": 1.96,
    "real_rounded": 1.977, "two": 2.0, "one_bar": 1.9508, "ideal_one_bar": 1.9378, "at_60_f": 1.8682,
    "at_20_c": 1.839, "at_25_c": 1.808,
}
ATMOSPHERES = {"standard": ATMOSPHERE, "psi_14_7": 14.7 * PSI, "bar_1_013": 101300.0, "one_bar": 100000.0}
# Hexose, disaccharide and water in a gram: stoichiometry; White 1962 and USDA for honey; the trade's 97 % solids with a
# real attenuation of 62 % for malt extract.
COMPOSITION: dict[str, tuple[float, float, float]] = {
    "sucrose": (0.0, 1.0, 0.0),
    "dextrose_anhydrous": (1.0, 0.0, 0.0),
    "dextrose_monohydrate": (180.156 / 198.171, 0.0, 1 - 180.156 / 198.171),
    "dry_malt_extract": (0.0, 0.97 * 0.62, 0.03),
    "honey": (0.382 + 0.313, 0.013 + 0.071 / 2, 0.172),
}
TAKEN = {"anhydrous": "dextrose_anhydrous", "monohydrate": "dextrose_monohydrate", "sucrose": "sucrose"}
# g CO2 per g: Balling 1865 (0.9565 g on 2.0665 g of extract), a German textbook's 0.46.
PER_DRY = {"balling": 0.4629, "textbook": 0.46}
# Volumes of CO2 in water at 1 atm by °C: Bohr and Bock, as handbooks of chemistry print them.
# The same with a line for each degree.
BY_DEGREE = tuple(enumerate((
    1.713, 1.646, 1.584, 1.527, 1.473, 1.424, 1.377, 1.331, 1.282, 1.237, 1.194, 1.154, 1.117, 1.083, 1.050, 1.019,
    0.985, 0.956, 0.928, 0.902, 0.878, 0.854, 0.829, 0.804, 0.781, 0.759, 0.738, 0.718, 0.699, 0.682, 0.665,
)))
BUNSEN = ((0, 1.713), (5, 1.424), (10, 1.194), (15, 1.019), (20, 0.878), (25, 0.759), (30, 0.665))
SET_RESIDUAL = {"none": 0.0, "fixed_0_85": 0.85, "fixed_0_9": 0.9, "fixed_1": 1.0}
# psi/ft: the Draught Beer Quality Manual's table (in secondary texts); the others are the trade's figures for 3/16 in.
TUBES = {"vinyl_3_16_in": 3.0, "barrier_3_16_in": 2.2, "vinyl_1_4_in": 0.85}
# The least that trade texts give.
LOW = {"vinyl_3_16_in": 1.8, "barrier_3_16_in": 2.0, "vinyl_1_4_in": 0.4}
RESISTANCES = {"r_1_8": 1.8, "r_2": 2.0, "r_2_2": 2.2, "r_2_7": 2.7, "r_3": 3.0}
LIFTS = {"half_psi": 0.5, "water": 0.4335, "per_metre": 0.1e5 * FOOT / PSI, "ignored": 0.0}  # psi/ft: the manual's, water's, the German rule
GAS_OXYGEN = 30e-6  # the most that CO2 for drinks may have, ISBT 2006
KEG_HEADSPACE = 0.035  # of the drink, where the keg is not told: 19.6 L over 18.93 L


class Unanswered(Exception):
    """A program has no sensible number for this day."""


class Asked:
    """The habits of a program, and which of its questions were asked on the way to a number."""

    def __init__(self, habits: dict[str, str]) -> None:
        self.habits = habits
        self.truth: Truth = {}

    def __call__(self, question: str) -> str:
        habit = self.truth[question] = self.habits[question]
        return habit

    def volume(self) -> float:
        """What a volume weighs, g/L."""
        return VOLUMES[self("gas_volume")]


class Carbonation:
    """CO2 in a drink, as it is told: in volumes or in g/L. What a volume weighs is asked only where it is needed."""

    def __init__(self, value: float, in_volumes: bool) -> None:
        self.value, self.in_volumes = value, in_volumes

    def volumes(self, ask: Asked) -> float:
        return self.value if self.in_volumes else self.value / ask.volume()

    def grams(self, ask: Asked) -> float:
        return self.value * ask.volume() if self.in_volumes else self.value

    def told(self, unit: str, ask: Asked) -> float:
        other = ask("carbonation_unit") == "other"
        return self.volumes(ask) if (unit == "volumes") != other else self.grams(ask)

    def times(self, factor: float) -> "Carbonation":
        return Carbonation(self.value * factor, self.in_volumes)


# ---------------------------------------------------------------------------------------------- reading a claim


def celsius(row: Row, name: str, ask: Asked) -> float:
    """A temperature as the program takes it."""
    as_told = ask("temperature_scale") == "told"
    if f"{name}_c" in row:
        t = float(row[f"{name}_c"])
        return t if as_told else (t - 32) / 1.8
    t = float(row[f"{name}_f"])
    return (t - 32) / 1.8 if as_told else t


def litres(row: Row, name: str, ask: Asked) -> float:
    unit = next(unit for unit in LITRES if f"{name}_{unit}" in row)
    metric = unit in ("l", "ml")
    scale = LITRES if metric or ask("gallon") == "told" else OTHER_LITRES
    return float(row[f"{name}_{unit}"]) * scale[unit]


def gauge(row: Row, name: str) -> float:
    """Pa."""
    unit = next(unit for unit in PASCALS if f"{name}_{unit}" in row)
    return float(row[f"{name}_{unit}"]) * PASCALS[unit]


def given(row: Row, name: str, ask: Asked) -> float:
    """Pa, of a pressure as the program takes its unit."""
    unit = next(unit for unit in PASCALS if f"{name}_{unit}" in row)
    taken = ask("given_pressure")
    if taken == unit:
        raise Unanswered
    return float(row[f"{name}_{unit}"]) * PASCALS[unit if taken == "told" else taken]


def in_drink(row: Row, name: str, ask: Asked) -> Carbonation:
    """CO2 that is told in volumes or in g/L, and may be taken for the other."""
    in_volumes = f"{name}volumes" in row
    number = float(row[f"{name}volumes"] if in_volumes else row[f"{name}co2_g_per_l"])
    return Carbonation(number, in_volumes != (ask("carbonation_unit") == "other"))


def wanted(row: Row, ask: Asked) -> Carbonation:
    return in_drink(row, "", ask)


def share_at(altitude: float) -> float:
    """Pressure of the air over that at sea level: the standard atmosphere, ISO 2533."""
    height = 6356766 * altitude / (6356766 + altitude)
    return math.pow(1 - 0.0065 * height / 288.15, 5.25588)


def air_share(row: Row, ask: Asked) -> float:
    altitude = float(row["altitude_m"])
    return 1.0 if altitude == 0 or ask("altitude") == "forgotten" else share_at(altitude)


def sea_level(ask: Asked) -> float:
    return ATMOSPHERES[ask("atmosphere")]


def ambient(row: Row, ask: Asked) -> float:
    """Pa."""
    return sea_level(ask) * air_share(row, ask)


def absolute(row: Row, name: str, ask: Asked, over: float | None = None) -> float:
    """Pa, of a gauge pressure."""
    told = gauge(row, name) if over is None else over
    return told if ask("gauge") == "absolute" else told + ambient(row, ask)


# ---------------------------------------------------------------------------------------------- gas and water


def vapour(t: float) -> float:
    """Pressure of water vapour, Pa, at t K: Wagner and Pruss 1993."""
    x = 1 - t / 647.096
    series = (
        (-7.85951783, 1), (1.84408259, 1.5), (-11.7866497, 3), (22.6807411, 3.5), (-15.9618719, 4), (1.80122502, 7.5),
    )
    return 22.064e6 * math.exp(647.096 / t * sum(a * x**n for a, n in series))


def water_density(t: float) -> float:
    """kg/m3 at t K: Kell 1975."""
    c = t - 273.15
    series = (999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12)
    return sum(a * c**n for n, a in enumerate(series)) / (1 + 16.87985e-3 * c)


def virial(p: float, t: float) -> tuple[float, float]:
    """First and second term of the virial series in the pressure: Kaye and Laby's B, and C = 4900 cm6/mol2."""
    b = 137.6e-6 - 87.7e-6 * math.exp(325.7 / t)
    q = p / (GAS * t)
    return b * q, (4900e-12 - b * b) * q * q


def gas_density(p: float, t: float, real: bool = True) -> float:
    """CO2, g/L, at p Pa and t K."""
    z = 1 + sum(virial(p, t)) if real else 1.0
    return p * CO2 / 1000 / (z * GAS * t)


# ---------------------------------------------------------------------------------------------- solubility


def weiss(t: float) -> float:
    """mol/(kg atm) of fugacity: Weiss 1974."""
    return math.exp(-60.2409 + 93.4517 * 100 / t + 23.3585 * math.log(t / 100))


def of_henry(h: float, t: float) -> float:
    """The same from a constant in Pa of fugacity per mole fraction, at the vapour pressure of water."""
    return ATMOSPHERE / (0.018015268 * h) * math.exp(-32.3e-6 * (ATMOSPHERE - vapour(t)) / (GAS * t))


def carroll(t: float) -> float:
    """Carroll, Slupsky and Mather 1991."""
    return of_henry(1e6 * math.exp(-6.8346 + 1.2817e4 / t - 3.7668e6 / t**2 + 2.997e8 / t**3), t)


def iapws(t: float) -> float:
    """IAPWS guideline G7-04, 2004."""
    r = t / 647.096
    s = -8.55445 / r + 4.01195 * (1 - r) ** 0.355 / r + 9.52345 * math.exp(1 - r) / r**0.41
    return of_henry(vapour(t) * math.exp(s), t)


class Solubility:
    """CO2 in a drink by the total pressure, Pa absolute, and back, at t K; told in volumes or in g/L."""

    in_volumes = False

    def told(self, total: float) -> float:
        raise NotImplementedError

    def total(self, told: float) -> float:
        raise NotImplementedError

    def dissolved(self, total: float) -> Carbonation:
        return Carbonation(self.told(total), self.in_volumes)

    def pressure(self, co2: Carbonation, ask: Asked) -> float:
        return self.total(co2.volumes(ask) if self.in_volumes else co2.grams(ask))


class Line(Solubility):
    """told = slope x (total - base) + offset."""

    def __init__(self, slope: float, offset: float = 0.0, base: float = 0.0, in_volumes: bool = False) -> None:
        self.slope, self.offset, self.base, self.in_volumes = slope, offset, base, in_volumes

    def told(self, total: float) -> float:
        return self.slope * (total - self.base) + self.offset

    def total(self, told: float) -> float:
        return (told - self.offset) / self.slope + self.base


def chart_fit(t: float) -> Line:
    """Fit of the printed chart, attributed to deLange 2011."""
    slope = 0.01821 + 0.090115 * math.exp(-(t * 1.8 - 459.67 - 32) / 43.11)
    return Line(slope / PSI, -0.003342, in_volumes=True)


def brewery_polynomial(t: float, base: float) -> Line:
    """A brewery's fit of 2009, by gauge pressure at sea level."""
    f = t * 1.8 - 459.67
    slope = (9.81e-6 * f - 2.29169e-3) * f + 0.16809729
    return Line(slope / PSI, (2.4826e-4 * f - 0.04710192) * f + 2.87424296, base, in_volumes=True)


def european(t: float) -> Line:
    """The form of European breweries, described by MEBAK."""
    return Line(10 * math.exp(-10.73797 + 2617.25 / t) / 1e5)


def sander(t: float) -> Line:
    """Two digits of Sander 2023, Henry's law by the total pressure."""
    return Line(3.4e-4 * math.exp(2400 * (1 / t - 1 / 298.15)) * CO2 / 1000)


def eu_wine(t: float) -> Line:
    """The EU's methods for wine, carried to other temperatures by Agabaliantz's table (in Liger-Belair 2005)."""
    abv, sugar = WINE
    k = 1.951e-5 * (0.86 - 0.01 * abv) * (1 - 0.00144 * sugar)
    return Line(k * math.exp(2983 * (1 / t - 1 / 293.15)))


class Quadratic(Solubility):
    """The trade's quadratic, by gauge pressure at sea level; no author."""

    in_volumes = True

    def __init__(self, t: float, base: float) -> None:
        f = t * 1.8 - 459.67
        self.base = base
        self.terms = -16.6999 - 0.0101059 * f + 0.00116512 * f * f, 0.173354 * f + 4.24267, -0.0684226

    def total(self, told: float) -> float:
        a, b, c = self.terms
        return (a + b * told + c * told * told) * PSI + self.base

    def told(self, total: float) -> float:
        a, b, c = self.terms
        root = b * b - 4 * c * (a - (total - self.base) / PSI)
        if root < 0:
            raise Unanswered
        return (math.sqrt(root) - b) / (2 * c)


class Water(Solubility):
    """Water with fugacity and Poynting term (32.3 mL/mol: Weiss 1974; 33.5 mL/mol: the middle of the literature)."""

    def __init__(self, t: float, k0: Callable[[float], float] = weiss, factor: float = 1.0) -> None:
        self.t, self.factor, self.k0 = t, factor, k0(t)
        self.vapour, self.litre = vapour(t), 1000 / water_density(t)

    def activity(self, total: float) -> float:
        first, second = virial(total, self.t)
        return math.exp(first + second / 2 - 32.3e-6 * (total - ATMOSPHERE) / (GAS * self.t))

    def told(self, total: float) -> float:
        molality = self.k0 * (total - self.vapour) / ATMOSPHERE * self.activity(total)
        return self.factor * molality * CO2 / (self.litre + 0.0335 * molality)

    def total(self, told: float) -> float:
        molality = told * self.litre / (self.factor * CO2 - 0.0335 * told)
        wanted, total = molality * ATMOSPHERE / self.k0, ATMOSPHERE
        for _ in range(60):
            before, total = total, wanted / self.activity(total) + self.vapour
            if abs(total - before) < 1e-7:
                return total
        raise Unanswered


def beer_factor(abv: float, extract: float) -> float:
    """What alcohol (Findlay and Shen 1911) and extract (Usher 1910) leave of the solubility in water."""
    return math.exp(-0.0042 * abv - 8.7e-4 * extract)


def solubility(row: Row, t: float, ask: Asked) -> Solubility:
    drink = row.get("beverage", "beer")
    group = {"water": "water", "soft_drink": "water", "wine": "wine"}.get(drink, "beer")
    match ask(f"{group}_solubility"):
        case "chart_fit":
            return chart_fit(t)
        case "quadratic":
            return Quadratic(t, sea_level(ask))
        case "brewery_polynomial":
            return brewery_polynomial(t, sea_level(ask))
        case "european":
            return european(t)
        case "sander":
            return sander(t)
        case "eu_wine":
            return eu_wine(t)
        case "carroll":
            return Water(t, carroll)
        case "iapws":
            return Water(t, iapws)
    return Water(t, factor=beer_factor(0.0, SOFT_DRINK) if drink == "soft_drink" else 1.0)


# ---------------------------------------------------------------------------------------------- the quantities


def bunsen(t: float, table: tuple[tuple[int, float], ...] = BUNSEN) -> float:
    for (low, one), (high, other) in zip(table, table[1:], strict=False):
        if low <= t <= high:
            return one + (other - one) * (t - low) / (high - low)
    raise Unanswered


def residual(row: Row, ask: Asked) -> Carbonation:
    """What the drink holds before it is primed."""
    if "residual_volumes" in row:
        return in_drink(row, "residual_", ask)
    habit = ask("residual")
    if habit in SET_RESIDUAL:
        return Carbonation(SET_RESIDUAL[habit], True)
    c = celsius(row, "warmest", ask)
    t = c + 273.15
    match habit:
        case "table":  # attributed to Hall, Zymurgy 1995
            f = c * 1.8 + 32
            if ask("temperature_scale") == "told":
                f = max(32.0, min(f, 86.0))
            held = Carbonation(3.0378 - 0.050062 * f + 0.00026555 * f * f, True)
        case "water_handbook":
            held = Carbonation(bunsen(c), True)
        case "water_by_degree":
            held = Carbonation(bunsen(c, BY_DEGREE), True)
        case "beer_chart":
            held = chart_fit(t).dissolved(ATMOSPHERE)
        case "european":
            held = european(t).dissolved(ATMOSPHERE)
        case _:
            held = Water(t).dissolved(ATMOSPHERE)
    if any(f"fermenter_gauge_{unit}" in row for unit in PASCALS) and ask("fermenter_pressure") == "counted":
        over = gauge(row, "fermenter_gauge")
        if ask("gauge") == "absolute":
            return held.times(over / ATMOSPHERE)
        return held.times(air_share(row, ask) + over / ATMOSPHERE)
    return held.times(air_share(row, ask))


def theory(sugar: str) -> float:
    """g CO2 per g: C6H12O6 -> 2 CO2, and twice that of a disaccharide."""
    hexose, disaccharide, _ = COMPOSITION[sugar]
    return CO2 * (2 * hexose / 180.156 + 4 * disaccharide / 342.297)


def priming(row: Row, ask: Asked) -> float:
    habit, sugar = ask("sugar_yield"), row["sugar"]
    by_sugar = habit not in ("half", "four_grams")
    if by_sugar and (taken := ask("sugar_taken")) != "told":
        sugar = TAKEN[taken]
    hexose, disaccharide, wet = COMPOSITION[sugar]

    def made(theory: float, dry: float) -> float:
        """CO2, g/g, of something with a yield by stoichiometry and a fermentable part."""
        if habit in PER_DRY:
            return PER_DRY[habit] * dry
        return {"theory": theory, "ninety_five": 0.95 * theory, "half": 0.5}[habit]

    extract = row.get("fermentable_g_per_l", 0.0)
    counted = extract if extract and ask("extract_left") == "counted" else 0.0
    syrup = "syrup_water_ml" in row and ask("syrup") == "counted"
    target, held = wanted(row, ask), residual(row, ask)
    if habit == "four_grams" and not syrup:
        dose = 4.0 * (target.volumes(ask) - held.volumes(ask)) - counted
    else:
        g = ask.volume() / 4 if habit == "four_grams" else made(theory(sugar), hexose + disaccharide)
        e = g if habit == "four_grams" else made(theory("sucrose"), 1.0)
        want, have = target.grams(ask), held.grams(ask) + e * counted
        if syrup:
            # The water and the dissolved sugar (0.62 mL/g) are drink that holds nothing yet.
            water = row["syrup_water_ml"] / 1000 / litres(row, "packaged", ask)
            dose = (want * (1 + water) - have) / (g - want * (0.62 * (1 - wet) + wet) / 1000)
        else:
            dose = (want - have) / g
    dose *= {"left_out": 1.0, "adds_3": 1.03, "adds_4": 1.04, "adds_5": 1.05}[ask("dose_headspace")]
    if row["unit"] == "g_per_l":
        return dose
    return labelled_mass(dose * litres(row, "packaged", ask), row["unit"], ask)


def labelled_mass(grams: float, unit: str, ask: Asked) -> float:
    """Grams as they are printed."""
    match unit:
        case "kg":
            return grams / 1000
        case "lb":
            return grams / (16 * OUNCE)
        case "g":
            return grams / OUNCE if ask("mass_label") == "other" else grams
    per_ounce = {"told": OUNCE, "ounce_28": 28.0, "ounce_30": 30.0, "ounce_fluid": 29.5735, "other": 1.0}
    return grams / per_ounce[ask("mass_label")]


def labelled_pressure(pascals: float, unit: str, ask: Asked) -> float:
    label = ask("pressure_label")
    return pascals / LABELS[unit if label == "told" else label]


def dissolved(row: Row, ask: Asked) -> float:
    t = celsius(row, "temperature", ask) + 273.15
    share = row["co2_percent"] / 100 if "co2_percent" in row else 1.0
    blend = ask("blend") if share < 1 else "ignored"
    if blend == "by_gauge":
        scaled = share * given(row, "gauge", ask)
        total = scaled if ask("gauge") == "absolute" else scaled + ambient(row, ask)
    else:
        total = absolute(row, "gauge", ask, given(row, "gauge", ask))
    if blend == "absolute":
        total = vapour(t) + share * (total - vapour(t))
    elif blend == "dry":
        total *= share
    return solubility(row, t, ask).dissolved(total).told(row["unit"], ask)


def keg(row: Row, ask: Asked) -> float:
    t = celsius(row, "temperature", ask) + 273.15
    total = solubility(row, t, ask).pressure(wanted(row, ask), ask)
    share = row["co2_percent"] / 100 if "co2_percent" in row else 1.0
    blend = ask("blend") if share < 1 else "ignored"
    if blend == "absolute":
        total = vapour(t) + (total - vapour(t)) / share
    elif blend == "dry":
        total /= share
    is_absolute, scale = ask("gauge") == "absolute", share if blend == "by_gauge" else 1.0
    if is_absolute and scale == 1:
        over = total
    elif row["altitude_m"] and ask("altitude") == "rule":
        outside = sea_level(ask)
        over = (total - outside) / scale + (outside if is_absolute else row["altitude_m"] / FOOT / 2000 * PSI)
    else:
        outside = ambient(row, ask)
        over = (total - outside) / scale + (outside if is_absolute else 0.0)
    return labelled_pressure(over, row["unit"], ask)


def package(row: Row, ask: Asked) -> float:
    if ask("package_headspace") == "counted":
        return counted_package(row, ask)
    t = celsius(row, "temperature", ask) + 273.15
    total = solubility(row, t, ask).pressure(wanted(row, ask), ask)
    over = total if ask("gauge") == "absolute" else total - ambient(row, ask)
    air = ambient(row, ask) if ask("trapped_air") == "counted" else 0.0
    return labelled_pressure(over + air, row["unit"], ask)


def counted_package(row: Row, ask: Asked) -> float:
    """The library's own: all CO2 stays in the package, the liquid grows as water does, the gas is real."""
    t = celsius(row, "temperature", ask) + 273.15
    filling = 293.15
    if "filling_c" in row or "filling_f" in row:
        filling = celsius(row, "filling", ask) + 273.15
    here, liquid = Water(t, factor=beer_factor(*BEER)), water_density(filling) / water_density(t)
    space, content = 1 + row["headspace_percent"] / 100 - liquid, wanted(row, ask).grams(ask)
    low, high = here.vapour, 4e6
    while low < (middle := (low + high) / 2) < high:
        held = here.told(middle) * liquid + gas_density(middle - here.vapour, t) * space
        low, high = (middle, high) if held < content else (low, middle)
    return (low - ambient(row, ask)) / PASCALS[row["unit"]]


def bottles(row: Row, ask: Asked) -> float:
    count = litres(row, "packaged", ask) / litres(row, "bottle", ask)
    # What comes out whole but for the last digits of the arithmetic is whole.
    whole = round(count)
    if ask("count_rounding") == "exact":
        return count
    if abs(count - whole) < 1e-9 * count:
        ask("count_rounding")
        return float(whole)
    return float({"down": math.floor(count), "up": math.ceil(count), "nearest": whole}[ask("count_rounding")])


def line(row: Row, ask: Asked) -> float:
    if "tube" in row:
        habit = ask("tube_resistance")
        own = {"told": TUBES, "low": LOW}.get(habit)
        resistance = own[row["tube"]] if own else RESISTANCES[habit]
    else:
        resistance = float(row["resistance_psi_per_ft"])
    left: float = gauge(row, "gauge") / PSI - row.get("hardware_psi", 0.0)
    rise = row.get("rise_ft", row.get("rise_m", 0.0) / FOOT)
    if rise:
        left -= LIFTS[ask("lift")] * rise
    if ask("faucet") == "one_psi":
        left -= 1.0
    return left / resistance * (FOOT if row["unit"] == "m" else 1.0)


def gas_used(row: Row, ask: Asked) -> float:
    drink = litres(row, "packaged", ask)
    taken = wanted(row, ask).grams(ask)
    if ask("start_co2") == "counted":
        taken -= in_drink(row, "start_", ask).grams(ask)
    t = celsius(row, "temperature", ask) + 273.15
    space = drink
    if ask("keg_headspace") == "counted":
        told = any(f"keg_{unit}" in row for unit in LITRES)
        space = litres(row, "keg", ask) if told else drink * (1 + KEG_HEADSPACE)
    gas = gas_density(absolute(row, "gauge", ask), t, ask("gas_law") == "real")
    return labelled_mass(drink * taken + space * gas, row["unit"], ask)


def purge(row: Row, ask: Asked) -> float:
    air, full = float(ask("air_oxygen")), absolute(row, "purge_gauge", ask, given(row, "purge_gauge", ask))
    outside = ambient(row, ask)
    if full < 1.05 * outside:
        raise Unanswered
    supplied = GAS_OXYGEN if ask("gas_oxygen") == "usual" else 0.0
    over = (row["oxygen_ppm"] * 1e-6 - supplied) / (air - supplied)
    cycles = math.log(over) / math.log(outside / full)
    return float(math.ceil(cycles)) if ask("cycles_rounding") == "up" else cycles


def degrees(sg: float, scale: str) -> float:
    """°P of a gravity: the cubic of the ASBC's tables, Lincoln's quadratic, the quick form."""
    match scale:
        case "asbc":
            return -616.868 + 1111.14 * sg - 630.272 * sg**2 + 135.997 * sg**3
        case "lincoln":
            return -463.37 + 668.72 * sg - 205.35 * sg**2
    return 259 - 259 / sg


def gravity(plato: float, scale: str) -> float:
    low, high = 0.9, 1.3
    while low < (middle := (low + high) / 2) < high:
        low, high = (middle, high) if degrees(middle, scale) < plato else (low, middle)
    return low


def alcohol(row: Row, ask: Asked) -> float:
    def sg(name: str) -> float:
        if f"{name}_sg" in row:
            return float(row[f"{name}_sg"])
        return gravity(row[f"{name}_plato"], ask("extract_scale"))

    def plato(name: str) -> float:
        if f"{name}_plato" in row:
            return float(row[f"{name}_plato"])
        return degrees(row[f"{name}_sg"], ask("extract_scale"))

    match formula := ask("alcohol_formula"):
        case "quick" | "quick_131":  # common practice
            return (131.25 if formula == "quick" else 131.0) * (sg("original") - sg("current"))
        case "hall":  # attributed to Hall, Zymurgy 1995
            og, fg = sg("original"), sg("current")
            return 76.08 * (og - fg) / (1.775 - og) * fg / 0.794
        case "by_ratio":  # common practice
            return 100 * 1.05 * (sg("original") - sg("current")) / sg("current") / 0.79
    # Balling 1865
    oe, ae = plato("original"), plato("current")
    by_mass = (oe - 0.1808 * oe - 0.8192 * ae) / (2.0665 - 0.010665 * oe)
    if formula == "by_mass":
        return by_mass
    return by_mass * sg("current") / (0.791 if formula == "balling_791" else 0.794)


QUANTITIES: dict[str, Callable[[Row, Asked], float]] = {
    "priming_sugar": priming,
    "residual_co2": lambda row, ask: residual(row, ask).told(row["unit"], ask),
    "dissolved_co2": dissolved,
    "keg_pressure": keg,
    "package_pressure": package,
    "bottle_count": bottles,
    "line_length": line,
    "gas_used": gas_used,
    "purge_cycles": purge,
    "alcohol": alcohol,
}


def answer(row: Row, habits: dict[str, str]) -> tuple[float, Truth]:
    """What a program with these habits computes for a claim, in the claim's unit, and which habits it took."""
    ask = Asked(habits)
    return QUANTITIES[row["quantity"]](row, ask), ask.truth


# ---------------------------------------------------------------------------------------------- drawing


def pick(draw: random.Random, weights: dict[Any, float]) -> Any:
    return draw.choices(list(weights), list(weights.values()))[0]


def rarely(draw: random.Random, what: str) -> bool:
    return draw.random() < RARE[what] / 100


def typed(draw: random.Random, name: str) -> float:
    """A number as it would be typed."""
    low, high, step = DAYS[name]
    return round(low + step * draw.randint(0, round((high - low) / step)), 6)


class Program:
    """Habits, units and digits."""

    def __init__(self, draw: random.Random, name: str, digits: dict[str, dict[int, float]] = DIGITS) -> None:
        self.name = name
        self.habits = {question: pick(draw, habits) for question, habits in PRIORS.items()}
        if self.habits["temperature_scale"] == "other" and self.habits["residual"].startswith("water_"):
            self.habits["residual"] = "table"
        system = pick(draw, {name: weight for name, (weight, _) in SYSTEMS.items()})
        units = SYSTEMS[system][1]
        self.units = {what: pick(draw, unit) if isinstance(unit, dict) else unit for what, unit in units.items()}
        # Regulators are read in bar where pressures are told in kPa.
        self.units["regulator"] = "psi" if self.units["pressure"] == "psi" else "bar"
        self.units["co2"] = "co2_g_per_l" if rarely(draw, "co2_g_per_l") else "volumes"
        self.digits = {unit: pick(draw, many) for unit, many in digits.items()}

    def decimals(self, row: Row) -> int:
        unit = row["unit"]
        if row["quantity"] == "purge_cycles" and self.habits["cycles_rounding"] == "exact":
            unit = "cycles"
        if row["quantity"] == "bottle_count" and self.habits["count_rounding"] == "exact":
            unit = "cycles"
        if row["quantity"] == "gas_used":
            unit = f"gas {unit}"
        return int(self.digits[unit])

    def day(self, draw: random.Random, quantity: str) -> Row:
        """A claim without its number."""
        row: Row = {"program": self.name, "quantity": quantity, "value": "", "unit": ""}
        DRAWS[quantity](row, self.units, draw)
        return row

    def claim(self, draw: random.Random, quantity: str) -> Case:
        """A day for which both this program and the library have a number, and what this program prints."""
        for _ in range(100):
            row = self.day(draw, quantity)
            decimals = self.decimals(row)
            try:
                exact, truth = answer(row, self.habits)
                ours, _ = answer(row, OURS)
            except (Unanswered, OverflowError):
                continue
            if min(exact, ours) > 2 * 10**-decimals:
                return {**row, "value": f"{exact:.{decimals}f}"}, truth, exact
        raise Unanswered


def put(row: Row, draw: random.Random, *names: str) -> None:
    for name in names:
        row[name] = typed(draw, name)


def put_altitude(row: Row, draw: random.Random) -> None:
    row["altitude_m"] = 0.0 if rarely(draw, "sea_level") else typed(draw, "altitude_m")


def put_beverage(row: Row, draw: random.Random) -> None:
    if rarely(draw, "beverage"):
        row["beverage"] = pick(draw, BEVERAGES)
    elif rarely(draw, "named"):
        row["beverage"] = "beer"


def put_fermented(row: Row, units: dict[str, str], draw: random.Random) -> None:
    put(row, draw, f"warmest_{units['t']}")
    if rarely(draw, "fermenter_gauge"):
        put(row, draw, f"fermenter_gauge_{units['regulator']}")
    put_altitude(row, draw)


def draw_priming(row: Row, units: dict[str, str], draw: random.Random) -> None:
    row["unit"] = units["mass"]
    put(row, draw, units["co2"], f"packaged_{units['volume']}")
    put_fermented(row, units, draw)
    row["sugar"] = pick(draw, SUGARS)
    if rarely(draw, "fermentable"):
        put(row, draw, "fermentable_g_per_l")
    if rarely(draw, "residual"):
        put(row, draw, "residual_volumes")
    if rarely(draw, "syrup"):
        put(row, draw, "syrup_water_ml")


def draw_residual(row: Row, units: dict[str, str], draw: random.Random) -> None:
    row["unit"] = units["co2"]
    put_fermented(row, units, draw)


def draw_dissolved(row: Row, units: dict[str, str], draw: random.Random) -> None:
    row["unit"] = units["co2"]
    put_beverage(row, draw)
    put(row, draw, f"temperature_{units['t']}")
    if rarely(draw, "blend"):
        put(row, draw, "co2_percent")
        row[f"gauge_{units['pressure']}"] = typed(draw, f"blend_{units['pressure']}")
    else:
        put(row, draw, f"gauge_{units['pressure']}")
    put_altitude(row, draw)


def draw_keg(row: Row, units: dict[str, str], draw: random.Random) -> None:
    row["unit"] = units["pressure"]
    put_beverage(row, draw)
    put(row, draw, units["co2"], f"temperature_{units['t']}")
    if rarely(draw, "blend"):
        put(row, draw, "co2_percent")
    put_altitude(row, draw)


def draw_package(row: Row, units: dict[str, str], draw: random.Random) -> None:
    row["unit"] = units["pressure"]
    put(row, draw, units["co2"], "headspace_percent")
    row[f"temperature_{units['t']}"] = typed(draw, f"stored_{units['t']}")
    if rarely(draw, "filling"):
        row[f"filling_{units['t']}"] = typed(draw, f"warmest_{units['t']}")
    put_altitude(row, draw)


def draw_bottles(row: Row, units: dict[str, str], draw: random.Random) -> None:
    row["unit"] = "count"
    put(row, draw, f"packaged_{units['volume']}")
    row[f"bottle_{units['bottle']}"] = float(draw.choice(BOTTLES[units["bottle"]]))


def draw_line(row: Row, units: dict[str, str], draw: random.Random) -> None:
    row["unit"] = units["length"]
    put(row, draw, f"gauge_{units['regulator']}")
    if rarely(draw, "resistance"):
        put(row, draw, "resistance_psi_per_ft")
    else:
        row["tube"] = pick(draw, {"vinyl_3_16_in": 75, "barrier_3_16_in": 15, "vinyl_1_4_in": 10})
    if rarely(draw, "rise"):
        put(row, draw, f"rise_{units['length']}")
    if rarely(draw, "hardware"):
        put(row, draw, "hardware_psi")


def draw_gas(row: Row, units: dict[str, str], draw: random.Random) -> None:
    row["unit"] = units["gas"]
    drink, brim = draw.choice(KEGS[units["volume"]])
    row[f"packaged_{units['volume']}"] = drink
    if rarely(draw, "keg"):
        row[f"keg_{units['volume']}"] = brim
    put(row, draw, units["co2"], "start_volumes", f"temperature_{units['t']}", f"gauge_{units['regulator']}")
    put_altitude(row, draw)


def draw_purge(row: Row, units: dict[str, str], draw: random.Random) -> None:
    row["unit"] = "count"
    put(row, draw, f"purge_gauge_{units['regulator']}")
    row["oxygen_ppm"] = draw.choice(OXYGEN)
    put_altitude(row, draw)


def draw_alcohol(row: Row, units: dict[str, str], draw: random.Random) -> None:
    row["unit"] = "abv_percent"
    left = draw.uniform(0.15, 0.32)
    if rarely(draw, "plato"):
        put(row, draw, "original_plato")
        row["current_plato"] = round(left * row["original_plato"], 1)
    else:
        put(row, draw, "original_sg")
        row["current_sg"] = round(1 + left * (row["original_sg"] - 1), 3)


DRAWS: dict[str, Callable[[Row, dict[str, str], random.Random], None]] = {
    "priming_sugar": draw_priming,
    "residual_co2": draw_residual,
    "dissolved_co2": draw_dissolved,
    "keg_pressure": draw_keg,
    "package_pressure": draw_package,
    "bottle_count": draw_bottles,
    "line_length": draw_line,
    "gas_used": draw_gas,
    "purge_cycles": draw_purge,
    "alcohol": draw_alcohol,
}


def labelled(cases: Iterable[Case]) -> list[Case]:
    return [({"label": f"row {n}", **row}, truth, exact) for n, (row, truth, exact) in enumerate(cases, 1)]


def single(seed: int) -> Case:
    """A claim, the habits it was made with, and its exact value in the claim's unit."""
    draw = random.Random(f"single {seed}")
    while True:
        try:
            program = Program(draw, f"single {seed}")
            return labelled([program.claim(draw, pick(draw, KINDS))])[0]
        except Unanswered:
            continue


def six(seed: int, digits: dict[str, dict[int, float]] = DIGITS) -> list[Case]:
    """Six claims from one program, which does three kinds of things, and is mainly for sugar or for a keg."""
    draw = random.Random(f"six {seed}")
    while True:
        kinds = [pick(draw, MAIN_KINDS)]
        while len(kinds) < 3:
            kind = pick(draw, KINDS)
            if kind not in kinds:
                kinds.append(kind)
        kinds += [pick(draw, {kind: KINDS[kind] for kind in kinds}) for _ in range(3)]
        try:
            program = Program(draw, f"six {seed}", digits)
            return labelled(program.claim(draw, kind) for kind in kinds)
        except Unanswered:
            continue


def random_wrong(seed: int) -> Row:
    """A claim whose number is drawn within 20 % of what the library's habits give, and printed as a program prints."""
    draw = random.Random(f"random {seed}")
    while True:
        try:
            program = Program(draw, f"random {seed}")
            row, _, _ = program.claim(draw, pick(draw, KINDS))
        except Unanswered:
            continue
        right, _ = answer(row, OURS)
        drawn = right * draw.uniform(0.8, 1.2)
        return {"label": "row 1", **row, "value": f"{drawn:.{program.decimals(row)}f}"}


def one_of_ours(seed: int) -> Case:
    """As `single`, of a program that has the library's habits."""
    draw = random.Random(f"ours {seed}")
    while True:
        program = Program(draw, f"ours {seed}")
        program.habits = dict(OURS)
        try:
            return labelled([program.claim(draw, pick(draw, KINDS))])[0]
        except Unanswered:
            continue


if __name__ == "__main__":
    for number in range(5):
        for claim in six(number):
            print(*claim, sep="\n    ")
