"""The sheet of checks: values from outside the library, worked out again by the formulas of the workbook."""

from __future__ import annotations

import csv
from collections.abc import Callable
from dataclasses import dataclass
from io import StringIO
from math import nan

import carb
from bibliography import citations
from carb import _carb

from .core import EQUATIONS, FACTOR, UNITS
from .jobs import EXTRACT_YIELD, SEA_LEVEL, SUGARS, TUBES, YIELD
from .paper import Node, Sheet, constant, in_unit, inline

MOST_INPUTS = 5
FILES = ("functions.csv", "kegging_line.csv", "kegging_gas.csv", "kegging_pressure.csv")

Asked = dict[str, Node]
Texts = dict[str, str]


@dataclass(frozen=True)
class Published:
    """A row of the check data."""

    id: str
    source: str
    function: str
    inputs: tuple[tuple[str, str], ...]
    output: str
    value: float
    tolerance: float
    reason: str
    standing: str


def published() -> list[Published]:
    """Every row with a tolerance; those without are not reproduced, for the reason told in the data."""
    files = dict(_carb.checks())
    found = []
    for name in FILES:
        text = "\n".join(line for line in files[name].splitlines() if not line.startswith("#"))
        for row in csv.DictReader(StringIO(text)):
            if row["tolerance"] and row.get("kind", "check") == "check":
                pairs = tuple(tuple(pair.split("=", 1)) for pair in row["inputs"].split(";") if pair)
                found.append(
                    Published(
                        row["id"],
                        row["source"],
                        row["function"],
                        pairs,
                        row["output"],
                        float(row["value"]),
                        float(row["tolerance"]),
                        row["reason"],
                        row["standing"],
                    )
                )
    return found


def _ambient(given: Asked) -> Node | None:
    if "ambient_kpa" in given:
        return in_unit(given["ambient_kpa"], "pa")
    if "altitude_m" in given:
        return inline("station_pressure", p0=given.get("sea_level_kpa", SEA_LEVEL), z=given["altitude_m"])
    return None


def _total(given: Asked) -> Node | None:
    outside = _ambient(given)
    if "abs_kpa" in given:
        return given["abs_kpa"]
    if outside is None or "gauge_kpa" not in given:
        return None
    return inline("absolute_pressure", G=given["gauge_kpa"], a=outside)


WINE = {"abv_percent", "extract_g_per_l"}


def _dissolved(given: Asked, texts: Texts) -> dict[str, Node] | None:
    total = _total(given)
    if total is None:
        return None
    t = given["temperature_c"]
    if texts.get("beverage") == "wine" and set(given) >= WINE and "model" not in texts:
        found = inline("eu_wine", P=total, T=t, A=given["abv_percent"], S=given["extract_g_per_l"], k=FACTOR)
        return {"co2_g_per_l": found}
    model = texts.get("model", "chart_fit")
    if texts.get("beverage", "beer") != "beer":
        return None
    if model == "european":
        return {"co2_g_per_l": inline("european", P=total, T=t, k=FACTOR)}
    if model in ("chart_fit", "chart_quadratic"):
        return {"co2_g_per_l": inline(model, P=total, f=t, k=FACTOR)}
    return None


def _turned(name: str, symbol: str, **symbols: Node | float) -> Node:
    equation = EQUATIONS[name]
    known = {each.name: each for each in (*equation.inputs, equation.result)}
    text = _carb.turned(name, symbol)
    nodes = {
        key: in_unit(node, known[key].unit) if isinstance(node, Node) else constant(node, known[key].unit)
        for key, node in symbols.items()
    }
    written = text.format_map({key: node.written for key, node in nodes.items()}) if text else ""
    return Node(f"({written})", known[symbol].unit, nan)


def _pressure(given: Asked, texts: Texts) -> dict[str, Node] | None:
    outside = _ambient(given)
    target = given.get("co2_g_per_l")
    if outside is None or target is None:
        return None
    t = given["temperature_c"]
    model = texts.get("model", "chart_fit")
    if texts.get("beverage") == "wine" and set(given) >= WINE and "model" not in texts:
        total = _turned("eu_wine", "P", c=target, T=t, A=given["abv_percent"], S=given["extract_g_per_l"], k=FACTOR)
    elif texts.get("beverage", "beer") != "beer" or model not in ("chart_fit", "european"):
        return None
    elif model == "european":
        total = _turned("european", "P", c=target, T=t, k=FACTOR)
    else:
        total = _turned("chart_fit", "P", V=target, f=t, k=FACTOR)
    return {"abs_kpa": total, "gauge_kpa": inline("gauge_pressure", P=total, a=outside)}


def _residual_of(given: Asked) -> Node | None:
    outside = _ambient(given)
    if "residual_co2_g_per_l" in given:
        return given["residual_co2_g_per_l"]
    if outside is None or "warmest_c" not in given:
        return None
    if "fermenter_gauge_kpa" in given:
        outside = inline("absolute_pressure", G=given["fermenter_gauge_kpa"], a=outside)
    return inline("residual_table", f=given["warmest_c"], a=outside, k=FACTOR)


def _residual(given: Asked, texts: Texts) -> dict[str, Node] | None:
    found = _residual_of(given)
    return None if found is None else {"co2_g_per_l": found}


def _priming(given: Asked, texts: Texts) -> dict[str, Node] | None:
    residual = _residual_of(given)
    sugar = texts.get("sugar", "")
    if residual is None or sugar not in SUGARS:
        return None
    made = Node(
        f"INDEX(list_sugars_yield,{SUGARS.index(sugar) + 1})", "g_per_g", carb.fermentables()[sugar].yield_g_per_g
    )
    extra = inline(
        "co2_from_extract",
        y=EXTRACT_YIELD,
        q=given.get("yield_percent", YIELD),
        k=FACTOR,
        x=given.get("fermentable_g_per_l", 0.0),
    )
    dose = inline(
        "priming_dose",
        c=given["co2_g_per_l"],
        r=residual,
        e=extra,
        y=made,
        q=given.get("yield_percent", YIELD),
        k=FACTOR,
    )
    return {"dose_g_per_l": dose, "mass_g": inline("priming_mass", d=dose, V=given["packaged_l"])}


def _attenuation(given: Asked, texts: Texts) -> dict[str, Node] | None:
    def extract(role: str) -> Node | None:
        if f"{role}_sg" in given:
            return inline("extract_from_gravity", s=given[f"{role}_sg"])
        return given.get(f"{role}_plato")

    o, a = extract("original"), extract("current")
    if o is None or a is None or texts.get("extract_scale", "asbc") != "asbc":
        return None
    apparent = inline("apparent_attenuation", O=o, A=a)
    if texts.get("real_extract_model", "balling") == "quotient":
        real = inline("real_attenuation_quotient", O=o, A=a)
        r = inline("real_extract_from_attenuation", O=o, r=real)
    else:
        r = inline("real_extract", O=o, A=a)
        real = inline("real_attenuation", O=o, R=r)
    return {
        "real_extract_plato": r,
        "apparent_attenuation_percent": apparent,
        "real_attenuation_percent": real,
        "abw_percent": inline("alcohol_by_mass", O=o, R=r),
    }


def _gravity_co2(given: Asked, texts: Texts) -> dict[str, Node] | None:
    if "current_sg" not in given or "final_sg" not in given:
        return None
    s = given["current_sg"]
    a, b = (inline("extract_from_gravity", s=each) for each in (s, given["final_sg"]))
    left = inline("fermentable_from_gravity", A=a, B=b, s=s)
    return {"fermentable_g_per_l": left, "balling_co2_g_per_l": inline("balling_co2", F=left)}


def _altitude(given: Asked, texts: Texts) -> dict[str, Node] | None:
    outside = _ambient(given)
    return None if outside is None else {"ambient_kpa": outside}


def _line(given: Asked, texts: Texts) -> dict[str, Node] | None:
    nothing = constant(0.0, "psi")
    tube = texts.get("tube")
    if tube:
        at = TUBES.index(tube)
        resistance = Node(
            f"INDEX(list_tubes_resistance,{at + 1})", "psi_per_ft", carb.tubes()[at]["resistance_psi_per_ft"]
        )
    else:
        resistance = given["resistance_bar_per_m"]
    lifted = inline("handbook_lift", H=given["rise_m"]) if "rise_m" in given else nothing
    hardware = given.get("hardware_kpa", nothing)
    found = {"lift_drop_kpa": lifted}
    if "line_m" in given:
        found["gauge_kpa"] = inline("handbook_pressure", R=resistance, L=given["line_m"], w=lifted, h=hardware)
    elif "gauge_kpa" in given:
        found["line_m"] = inline("handbook_length", P=given["gauge_kpa"], w=lifted, h=hardware, R=resistance)
    return found


def _cycles(given: Asked, texts: Texts) -> dict[str, Node] | None:
    outside = _ambient(given)
    if outside is None or "start_oxygen_ppm" not in given or "gas_oxygen_ppm" not in given:
        return None
    n = inline(
        "purge_cycles",
        x=given["oxygen_ppm"],
        s=given["start_oxygen_ppm"],
        g=given["gas_oxygen_ppm"],
        a=outside,
        G=given["purge_gauge_kpa"],
    )
    return {"cycles_count": n}


RECIPES: dict[str, Callable[[Asked, Texts], dict[str, Node] | None]] = {
    "dissolved_co2": _dissolved,
    "keg_pressure": _pressure,
    "residual_co2": _residual,
    "priming_sugar": _priming,
    "attenuation": _attenuation,
    "gravity_co2": _gravity_co2,
    "ambient_pressure": _altitude,
    "handbook_line": _line,
    "handbook_pressure": _line,
    "purge_cycles": _cycles,
}
UNDERSTOOD = {"beverage", "model", "sugar", "tube", "extract_scale", "real_extract_model"}
TAKEN = {
    "altitude_m", "ambient_kpa", "sea_level_kpa", "abs_kpa", "gauge_kpa", "temperature_c", "co2_g_per_l", "warmest_c",
    "fermenter_gauge_kpa", "residual_co2_g_per_l", "packaged_l", "yield_percent", "fermentable_g_per_l", "original_sg",
    "original_plato", "current_sg", "current_plato", "final_sg", "line_m", "rise_m", "hardware_kpa", "purge_gauge_kpa",
    "resistance_bar_per_m", "oxygen_ppm", "start_oxygen_ppm", "gas_oxygen_ppm", "abv_percent", "extract_g_per_l",
}  # fmt: skip


def recomputed(row: Published, where: Callable[[int], str]) -> tuple[list[tuple[str, float, str]], Texts, Node] | None:
    """The inputs of a row, and its value by worksheet formulas; nothing where these cannot give it."""
    recipe = RECIPES.get(row.function)
    if recipe is None:
        return None
    numbers: list[tuple[str, float, str]] = []
    given: Asked = {}
    texts: Texts = {}
    for name, text in row.inputs:
        if name in UNDERSTOOD:
            texts[name] = text
            continue
        try:
            unit, first, value = _carb.unit(name), _carb.first_name(name), float(text)
        except ValueError:
            return None
        if first not in TAKEN:
            return None
        given[first] = Node(where(len(numbers)), unit, value)
        numbers.append((name, value, unit))
    if len(numbers) > MOST_INPUTS:
        return None
    # Composition is nothing to the relations of the trade for beer.
    outputs = recipe(given, texts)
    unit = _carb.output_unit(row.function, row.output)
    stem = row.output.removesuffix(unit)
    wanted = {_stem(name): node for name, node in (outputs or {}).items()}.get(stem)
    if not wanted:
        return None
    there = in_unit(wanted, unit if wanted.unit else "")
    request = {name: texts[name] if name in texts else float(text) for name, text in row.inputs}
    found = getattr(carb, row.function)(**request)
    value = found.value(row.output) if hasattr(found, "value") and callable(found.value) else _dig(found, row.output)
    return numbers, texts, Node(there.written, there.unit, value)


def _stem(name: str) -> str:
    """An output without its unit."""
    return name.removesuffix(max((unit for unit in UNITS if name.endswith(unit)), key=len))


def _dig(answer: object, name: str) -> float:
    """The output of an answer, nested by its noun."""
    whole = answer.to_dict()  # type: ignore[attr-defined]
    if name in whole:
        return float(whole[name])
    noun, rest = name.split("_", 1)
    return float(whole[noun][rest])


class Check:
    """The sheet, and where its rows are."""

    def __init__(self) -> None:
        self.sheet = Sheet("Check", "Check: values from outside, worked out again here")
        self.sheet.widths = (30, 20, 13, 8, 13, 8, 13, 8, 13, 8, 13, 8, 9, 11, 7, 11, 9, 8)
        self.sheet.landscape = True
        self.sheet.pages = 0
        self.values: list[str] = []
        self.passed: list[str] = []
        self.rows: list[Published] = []
        sheet = self.sheet
        sheet.head(
            "Each printed value is worked out again by this workbook's own formulas. The allowed difference is that "
            "of the "
            "library's check data, each with its reason: the digits that are printed, and how near the equation is "
            "known to "
            "come. What is wrong here is wrong in the workbook: do not use it then."
        )
        summary = sheet.row
        sheet.row += 2
        heads = ["source", "what"]
        for at in range(MOST_INPUTS):
            heads += [f"input {at + 1}", ""]
        sheet.repeat = sheet.row
        sheet.section(*heads, ">printed", ">worked out", "unit", ">difference", ">allowed", "")
        first = sheet.row
        for row in published():
            at = sheet.row
            found = recomputed(row, lambda index, at=at: f"{'DFHJL'[index]}{at + 1}")
            if found is None:
                continue
            numbers, texts, node = found
            kind = ", ".join(texts.values())
            source = citations()[row.source]
            sheet.wrapped(at, 0, _short(source), "small")
            sheet.wrapped(at, 1, f"{row.output} ({row.function}{': ' + kind if kind else ''})", "small")
            for index, (name, value, _) in enumerate(numbers):
                sheet.wrapped(at, 2 + 2 * index, name, "small")
                sheet.put(at, 3 + 2 * index, value, "given")
            m, n, p, q = (f"{column}{at + 1}" for column in "MNPQ")
            self.values.append(sheet.put(at, 12, row.value, "given"))
            sheet.put(at, 13, f"=IFERROR({node.written},NA())", "checked", node.value)
            sheet.put(at, 14, UNITS[node.unit].printed if node.unit in UNITS else "", "small")
            sheet.put(at, 15, f"={n}-{m}", "checked", node.value - row.value)
            sheet.put(at, 16, row.tolerance, "given")
            ok = abs(node.value - row.value) <= row.tolerance + 1e-12
            self.passed.append(
                sheet.put(
                    at,
                    17,
                    f'=IF(ISNUMBER({p}),IF(ABS({p})<={q}+{TINY},"pass","FAIL"),"FAIL")',
                    "verdict",
                    "pass" if ok else "FAIL",
                )
            )
            self.rows.append(row)
            sheet.row += 1
        column = f"R{first + 1}:R{sheet.row}"
        good = sum(sheet.cells[int(cell[1:]) - 1, 17].value == "pass" for cell in self.passed)
        self.count = sheet.put(
            summary,
            0,
            f'=COUNTIF({column},"pass")&" of "&ROWS({column})&" pass"',
            "verdict big",
            f"{good} of {len(self.passed)} pass",
            merged=1,
        )
        self.verdict = sheet.put(
            summary,
            2,
            f'=IF(COUNTIF({column},"pass")=ROWS({column}),"all pass","SOMETHING FAILS: do not use this workbook")',
            "verdict big",
            "all pass" if good == len(self.passed) else "SOMETHING FAILS: do not use this workbook",
            merged=8,
        )


TINY = "0.000000000001"
"""What exact values may differ by, in rounding alone."""


def _short(citation: str) -> str:
    return citation if len(citation) <= 70 else citation[:67] + "..."
