"""What the workbook takes from the core: equations as worksheet text, units, limits, and what answers assume."""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import cache
from math import inf, isnan, nan

import carb
import numpy as np
from carb import _carb

SLACK: float = _carb.SLACK


@dataclass(frozen=True)
class Symbol:
    """A symbol of a formula: its unit (empty if in no table) as named and as printed, and where its source holds."""

    name: str
    unit: str
    printed: str
    meaning: str
    low: float
    high: float

    @property
    def bounded(self) -> bool:
        return self.low > -inf or self.high < inf


@dataclass(frozen=True)
class Equation:
    """An equation of the catalogue."""

    id: str
    title: str
    formula: str
    worksheet: str
    result: Symbol
    inputs: tuple[Symbol, ...]
    sources: tuple[str, ...]
    uncertainty_percent: float | None
    reason: str
    standing: str

    @property
    def cited(self) -> str:
        return "; ".join(self.sources) or self.standing


def _equations() -> dict[str, Equation]:
    said = {row["id"]: row for row in carb.equations()}
    found = {}
    for name, text, result, inputs, sources in _carb.worksheets():
        row = said[name]
        symbols = tuple(Symbol(*symbol) for symbol in inputs)
        found[name] = Equation(
            name,
            row["title"],
            row["formula"],
            text,
            Symbol(*result),
            symbols,
            tuple(sources),
            row["uncertainty_percent"],
            row["reason"],
            row["standing"],
        )
    return found


EQUATIONS = _equations()


@dataclass(frozen=True)
class Unit:
    """A unit of the core: SI = value * scale + offset."""

    name: str
    printed: str
    dimension: str
    scale: float
    offset: float


UNITS = {row[0]: Unit(*row) for row in _carb.unit_factors()}


def first_unit(dimension: str) -> str:
    """The metric unit of a dimension, in which the sheets keep a quantity."""
    return next(unit.name for unit in UNITS.values() if unit.dimension == dimension)


def convert(value: float, source: str, target: str) -> float:
    if source == target or not source or not target:
        return value
    return float(_carb.convert(np.array([value]), source, target)[0])


def kernel(equation: str, values: list[float]) -> float:
    """The value of an equation; what is not known stays unknown."""
    return nan if any(map(isnan, values)) else _carb.kernel(equation, values)


@cache
def described(function: str) -> dict:
    return json.loads(_carb.described(function))


def limits(function: str, name: str) -> tuple[float, float]:
    """From where to where a function takes an input, in the first of its units."""
    entry = next(entry for entry in described(function)["inputs"] if name in entry["names"])
    return entry["low"], entry["high"]


def assumed(function: str, equation: str, symbol: str, **request: object) -> float:
    """The number that an answer of the library takes for a symbol, by its own working."""
    answer = getattr(carb, function)(**request)
    steps = answer.to_dict()["working"]
    return next(step["inputs"][symbol] for step in steps if step["equation"] == equation)


FACTOR = assumed("dissolved_co2", "chart_fit", "k", abs_bar=2, temperature_c=4)
"""The factor on a solubility."""
