"""The sheet of every equation: formula, symbols, a result that is worked out, and where it comes from."""

from __future__ import annotations

import math
from math import inf, isnan, nan

from core import EQUATIONS, Equation, Symbol, convert, kernel
from paper import Sheet, written_number

# Where to begin with what no source limits, by unit; as the tests of the catalogue do.
USUAL = {
    "pa": (1e3, 2e5),
    "multiplier": (1, 1),
    "volumes": (1, 4),
    "co2_g_per_l": (1, 8),
    "g_per_l": (5, 50),
    "kg": (0.1, 1),
    "d": (1, 20),
    "l": (10, 30),
    "percent": (60, 90),
    "plato": (5, 15),
    "sg": (1.005, 1.06),
    "mpa_s": (0.8, 1.6),
    "m2_per_s": (1e-9, 3e-9),
}
PLAIN = {"kg/m3": (1, 20), "mol/kg": (0.05, 0.2), "mol/(kg atm)": (0.02, 0.07), "": (0.1, 0.9)}
WATER = {"rho", "w"}
PARTS = (0.5, 0.3, 0.62, 0.45, 0.7, 0.38, 0.55)
ROOM = 20.0
"""A temperature, °C, to begin with where it lies inside the range."""
FAR = 10
"""So many widths of its range outside of it, a number is no such quantity."""
ANYTHING = 1e8


def _usual(symbol: Symbol) -> tuple[float, float]:
    if symbol.low > -inf and symbol.high < inf:
        return symbol.low, symbol.high
    if symbol.printed == "kg/m3" and symbol.name in WATER:
        return 990, 1000
    return USUAL.get(symbol.unit) or PLAIN[symbol.printed]


def _rounded(value: float, low: float, high: float) -> float:
    for digits in (2, 3, 4, 6, 9):
        found = float(f"{value:.{digits}g}")
        if low <= found <= high and (abs(found - value) <= 0.05 * (high - low) or low == high):
            return found
    return value


def prefilled(equation: Equation) -> list[float]:
    """Inputs inside their ranges that make a number which says something."""
    best: list[float] = []
    for turn in range(len(PARTS) * 5):
        values = []
        for at, symbol in enumerate(equation.inputs):
            low, high = _usual(symbol)
            if turn == 0 and symbol.unit in ("c", "f", "k") and low <= convert(ROOM, "c", symbol.unit) <= high:
                values.append(convert(ROOM, "c", symbol.unit))
                continue
            part = PARTS[(at * (1 + turn // len(PARTS)) + turn) % len(PARTS)]
            values.append(_rounded(low + part * (high - low), low, high))
        found = kernel(equation.id, values)
        if math.isfinite(found):
            best = best or values
            inside = equation.result.low <= found <= equation.result.high
            if found > 0 and inside and found not in values:
                return values
    return best


class Equations:
    """The sheet, and where its cells are."""

    def __init__(self) -> None:
        self.sheet = Sheet("Equations", "Equations: everything that the library works out, one by one")
        self.sheet.widths = (8, 46, 14, 12, 12, 12, 34)
        self.sheet.pages = 0
        # Of each equation: its input cells, its result cell and what stands in the inputs.
        self.places: dict[str, tuple[list[str], str, list[float]]] = {}
        self.sheet.head(
            f"All {len(EQUATIONS)} equations of the library's catalogue, in the order of its floors, each to try "
            "alone: change "
            "the coloured cells. Text, an empty cell, a number of the wrong sign or far outside make #N/A; a number "
            "outside "
            "the range that the source states makes a note. What iterates over these equations needs the library."
        )
        self.sheet.repeat = self.sheet.row
        self.sheet.section("symbol", "meaning", ">value", "unit", ">from", ">to", "note")
        for equation in EQUATIONS.values():
            self._write(equation)

    def _write(self, equation: Equation) -> None:
        sheet = self.sheet
        sheet.row += 1
        top = sheet.row
        sheet.put(top, 0, f"{equation.title}  ({equation.id})", "equation", merged=6)
        sheet.row += 1
        sheet.wrapped(sheet.row, 0, equation.formula, "formula", merged=6)
        sheet.row += 1
        values = prefilled(equation)
        cells, checks = [], []
        for symbol, value in zip(equation.inputs, values, strict=True):
            cell = sheet.put(sheet.row, 2, value, "input free")
            cells.append(cell)
            sheet.put(sheet.row, 0, symbol.name, "symbol")
            sheet.wrapped(sheet.row, 1, symbol.meaning, "text")
            sheet.put(sheet.row, 3, symbol.printed, "unit")
            for column, end in ((4, symbol.low), (5, symbol.high)):
                sheet.put(sheet.row, column, end if math.isfinite(end) else "", "limit free")
            low, high = sense(symbol)
            checks.append(f"{cell}>={written_number(low)},{cell}<={written_number(high)}")
            tests = []
            if symbol.low > -inf:
                tests.append(f"{cell}<{written_number(symbol.low)}-slack*ABS({written_number(symbol.low)})")
            if symbol.high < inf:
                tests.append(f"{cell}>{written_number(symbol.high)}+slack*ABS({written_number(symbol.high)})")
            outside = f'IF(OR({",".join(tests)}),"outside the range of the source: extrapolated","")' if tests else '""'
            sheet.put(
                sheet.row,
                6,
                f'=IF(ISNUMBER({cell}),IF(AND({checks[-1]}),{outside},"no such quantity: nothing is answered"),'
                '"a number is needed: nothing is answered")',
                "note",
                "",
            )
            sheet.row += 1
        text = equation.worksheet.format_map(dict(zip([s.name for s in equation.inputs], cells, strict=True)))
        count = f"COUNT({cells[0]}:{cells[-1]})={len(cells)}"
        value = kernel(equation.id, values)
        result = sheet.put(
            sheet.row,
            2,
            f"=IF({count},IF(AND({','.join(checks)}),IFERROR({text},NA()),NA()),NA())",
            "result General",
            nan if isnan(value) else value,
        )
        sheet.put(sheet.row, 0, equation.result.name, "symbol")
        sheet.wrapped(sheet.row, 1, equation.result.meaning, "result label")
        sheet.put(sheet.row, 3, equation.result.printed, "result unit")
        percent = equation.uncertainty_percent
        sheet.put(sheet.row, 4, f"± {percent:g} %, k = 2" if percent is not None else "", "note", merged=5)
        sheet.put(sheet.row, 6, "", "note")
        sheet.row += 1
        said = f"{equation.standing}. Uncertainty: {equation.reason}."
        if equation.sources:
            said += f" Source: {'; '.join(equation.sources)}."
        sheet.wrapped(sheet.row, 0, said, "source", merged=6)
        sheet.row += 1
        self.places[equation.id] = (cells, result, values)


def sense(symbol: Symbol) -> tuple[float, float]:
    """Beyond these a number is no such quantity."""
    if symbol.bounded and symbol.low > -inf and symbol.high < inf:
        width = symbol.high - symbol.low
        low, high = symbol.low - FAR * width, symbol.high + FAR * width
        return (0.0 if symbol.low >= 0 else low), high
    low = -ANYTHING if symbol.low < 0 and symbol.low > -inf else 0.0
    return low, ANYTHING
