"""Work out the column `worked` of ../published/claims.csv: what the expected habits make of the inputs of each row.

    python3 published_claims.py

The arithmetic is written out here once more, from the sources' formulas; nothing of carb-core goes into it, and
least of all its cross-check. A row without known habits has nothing to work out.
"""

from math import exp, log
from pathlib import Path

FILE = Path(__file__).resolve().parent.parent / "published" / "claims.csv"
PSI, BAR, ATMOSPHERE = 0.45359237 * 9.80665 / 0.0254**2, 1e5, 101325.0
GAS = 8.314462618
CO2 = 44.0095
POUND, GALLON, FLUID_OUNCE, IMPERIAL_GALLON = 453.59237, 3.785411784, 3.785411784 / 128, 4.54609
VOLUMES = {"real": CO2 / 22.263, "ideal": CO2 / 22.41397, "at_25_c": 1.808}  # g/L
OUTSIDE = {"standard": ATMOSPHERE, "psi_14_7": 14.7 * PSI, "bar_1_013": 1.013 * BAR, "one_bar": BAR}
# CO2 by stoichiometry, g/g.
THEORY = {"sucrose": 4 * CO2 / 342.297, "dextrose_anhydrous": 2 * CO2 / 180.156}
FIXED = {"fixed_0_85": 0.85, "fixed_0_9": 0.9, "fixed_1": 1.0, "none": 0.0}
# CO2 in water under one atmosphere of it, volumes, at 0, 1 ... 30 degC: Bohr and Bock as in handbooks, from memory.
HANDBOOK = (
    1.713, 1.646, 1.584, 1.527, 1.473, 1.424, 1.377, 1.331, 1.282, 1.237, 1.194, 1.154, 1.117, 1.083, 1.050, 1.019,
    0.985, 0.956, 0.928, 0.902, 0.878, 0.854, 0.829, 0.804, 0.781, 0.759, 0.738, 0.718, 0.699, 0.682, 0.665,
)
# Resistances, psi/ft, by whoever tells them: the handbook, a vendor, and the least of trade texts.
TUBES = {
    "told": {"vinyl_3_16_in": 3.0, "vinyl_1_4_in": 0.85, "vinyl_1_2_in": 0.025, "barrier_5_16_in": 0.10},
    "vendor": {"vinyl_3_16_in": 2.7, "vinyl_3_8_in": 0.11},
    "low": {"vinyl_3_8_in": 0.07},
}


def first(told, *names):
    """The first of some inputs that is given, times its factor: names and factors by turns."""
    for name, factor in zip(names[::2], names[1::2]):
        if name in told:
            return float(told[name]) * factor
    return None


def celsius(told, role):
    if f"{role}_c" in told:
        return float(told[f"{role}_c"])
    return (float(told[f"{role}_f"]) - 32) / 1.8


def litres(told):
    return first(told, "packaged_l", 1, "packaged_us_gal", GALLON, "packaged_imp_gal", IMPERIAL_GALLON)


def a_volume(told, habits):
    """What a volume weighs, g/L."""
    habit = habits.get("gas_volume", "real")
    if habit == "at_drink":
        return ATMOSPHERE * CO2 / (GAS * (celsius(told, "warmest") + 273.15)) / 1000
    return VOLUMES[habit]


def residual(told, habits):
    """Volumes left after fermentation, at sea level."""
    habit = habits.get("residual", "table")
    if habit in FIXED:
        return FIXED[habit]
    c = celsius(told, "warmest")
    if habit == "table":
        f = 1.8 * c + 32
        return 3.0378 - 0.050062 * f + 0.00026555 * f * f
    step = {"water_handbook": 5, "water_by_degree": 1}[habit]
    lines = HANDBOOK[::step]
    at = min(int(c / step), len(lines) - 2)
    part = c / step - at
    return lines[at] * (1 - part) + lines[at + 1] * part


def residual_co2(told, unit, habits):
    assert unit == "volumes"
    return residual(told, habits)


def priming_sugar(told, unit, habits):
    weighs = a_volume(told, habits)
    target = first(told, "co2_g_per_l", 1, "volumes", weighs)
    before = first(told, "residual_co2_g_per_l", 1, "residual_volumes", weighs)
    if before is None:
        before = residual(told, habits) * weighs
    yields = {"theory": THEORY[told["sugar"]], "half": 0.5, "four_grams": weighs / 4}
    makes = yields[habits.get("sugar_yield", "theory")]
    dose = (target - before) / makes
    return dose if unit == "g_per_l" else dose * litres(told)


def vapour_pressure(t):
    x = 1 - t / 647.096
    low = -7.85951783 * x + 1.84408259 * x**1.5 - 11.7866497 * x**3
    high = 22.6807411 * x**3.5 - 15.9618719 * x**4 + 1.80122502 * x**7.5
    return 22.064e6 * exp(647.096 / t * (low + high))


def in_water(p, c):
    """g/L of the solution under a total pressure: Weiss 1974 with the fugacity by two virial coefficients."""
    t = c + 273.15
    b, q = (137.6 - 87.7 * exp(325.7 / t)) * 1e-6, p / (GAS * t)
    fugacity = (p - vapour_pressure(t)) * exp(b * q + 0.5 * (4900e-12 - b * b) * q * q)
    constant = exp(-60.2409 + 93.4517 * 100 / t + 23.3585 * log(t / 100))
    m = constant * fugacity / ATMOSPHERE * exp(-32.3e-6 * (p - ATMOSPHERE) / (GAS * t))
    top = (((-280.54253e-12 * c + 105.56302e-9) * c - 46.170461e-6) * c - 7.9870401e-3) * c + 16.945176
    density = (top * c + 999.83952) / (1 + 16.87985e-3 * c)
    return m * CO2 / (1000 / density + 0.0335 * m)


def dissolved_co2(told, unit, habits):
    assert habits == {"beer_solubility": "water_core"} and unit == "co2_g_per_l"
    return in_water(float(told["abs_kpa"]) * 1e3, celsius(told, "temperature"))


def total_pressure(told, habits):
    """Pa, absolute, of CO2 alone."""
    c, weighs = celsius(told, "temperature"), a_volume(told, habits)
    grams = first(told, "co2_g_per_l", 1, "volumes", weighs)
    match habits.get("beer_solubility", "chart_fit"):
        case "chart_fit":
            f = 1.8 * c + 32
            return PSI * (grams / weighs + 0.003342) / (0.01821 + 0.090115 * exp(-(f - 32) / 43.11))
        case "european":
            return BAR * grams / (10 * exp(-10.73797 + 2617.25 / (c + 273.15)))
        case "sander":
            return grams / (3.4e-4 * exp(2400 * (1 / (c + 273.15) - 1 / 298.15)) * CO2 / 1000)
    raise ValueError(habits)


def keg_pressure(told, unit, habits):
    gauge = total_pressure(told, habits) - OUTSIDE[habits.get("atmosphere", "standard")]
    if habits.get("altitude") == "rule":
        gauge += PSI * float(told["altitude_ft"]) / 2000
    return gauge / {"psi": PSI, "bar": BAR}[unit]


def line_length(told, unit, habits):
    assert unit == "ft"
    resistance = first(told, "resistance_psi_per_ft", 1)
    if resistance is None:
        resistance = TUBES[habits.get("tube_resistance", "told")][told["tube"]]
    left = float(told["gauge_psi"]) - 0.5 * float(told.get("rise_ft", 0)) - float(told.get("hardware_psi", 0))
    return left / resistance


def purge_cycles(told, _unit, habits):
    outside = OUTSIDE[habits.get("atmosphere", "standard")]
    assert habits["air_oxygen"] == "rounded"
    gas = 0.0 if habits.get("gas_oxygen") == "pure" else float(told["gas_oxygen_ppm"]) * 1e-6
    share = outside / (outside + float(told["purge_gauge_psi"]) * PSI)
    return log((float(told["oxygen_ppm"]) * 1e-6 - gas) / (0.21 - gas)) / log(share)


def alcohol(told, _unit, habits):
    original, current = float(told["original_sg"]), float(told["current_sg"])
    by = {"quick": 131.25, "quick_131": 131.0, "by_ratio": 105 / current / 0.79}
    return by[habits["alcohol_formula"]] * (original - current)


def bottle_count(told, _unit, _habits):
    return litres(told) // first(told, "bottle_ml", 1e-3, "bottle_us_fl_oz", FLUID_OUNCE)


def pairs(text):
    return dict(pair.split("=") for pair in text.split(";") if pair)


def worked(row):
    if row["expected"] in ("?", "none") or "=?" in row["expected"]:
        return ""
    told, habits = pairs(row["inputs"]), pairs(row["expected"])
    return f"{globals()[row['quantity']](told, row['unit'], habits):.8g}"


def main():
    lines = FILE.read_text(encoding="utf-8").splitlines()
    names = next(line for line in lines if not line.startswith("#")).split(",")
    for at, line in enumerate(lines):
        if not line.startswith("#") and not line.startswith(names[0] + ","):
            row = dict(zip(names, line.split(","), strict=True))
            row["worked"] = worked(row)
            lines[at] = ",".join(row.values())
    FILE.write_text("\n".join(lines) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
