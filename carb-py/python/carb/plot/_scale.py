"""The units of a picture, and values in them."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Any, Literal, NamedTuple, TypeAlias

import carb
from carb import CarbError

System: TypeAlias = Literal["metric", "us"]


class Scale(NamedTuple):
    """The unit of each kind of quantity, as names of the vocabulary end."""

    temperature: str
    gauge: str
    ambient: str
    mass: str


SCALES: dict[str, Scale] = {
    "metric": Scale("c", "bar", "kpa", "g"),
    "us": Scale("f", "psi", "psi", "oz"),
}


def scale(axes: str) -> Scale:
    """The units of the axes that were asked for."""
    if axes not in SCALES:
        known = ", ".join(f'"{name}"' for name in SCALES)
        raise CarbError(f'axes = "{axes}" is not known: choose one of {known}', carb.CODES["UNKNOWN_CHOICE"], "axes")
    return SCALES[axes]


@cache
def symbols() -> dict[str, str]:
    """The symbol of each unit, by its name."""
    return {unit.name: unit.symbol for unit in carb.units()}


def brief(value: float, unit: str) -> str:
    """A value with its unit, to three digits."""
    text = f"{value:.3g}"
    # Three digits of some kilograms in grams would be told by powers of ten.
    return f"{f'{value:.0f}' if 'e+' in text else text} {symbol(unit)}"


def symbol(unit: str) -> str:
    """The symbol of a unit. That of volumes of CO2 is spelt out: alone, it would be read as percent of alcohol."""
    return unit if unit == "volumes" else symbols()[unit]


def carbonation_unit(given: Mapping[str, Any]) -> str:
    """The unit in which carbonation was given, else volumes."""
    for name in given:
        for unit in ("volumes", "co2_g_per_l"):
            if name.endswith(unit):
                return unit
    return "volumes"


def step(given: Mapping[str, Any], gauge: str = "") -> Any:
    """A temperature and a gauge pressure as they were given, told in every unit: by the library, which converts.

    A schedule of one step tells its step again.
    """
    kept = {name: given[name] for name in given if name.startswith("temperature_")}
    under = {name.removeprefix(gauge): given[name] for name in given if name.startswith(f"{gauge}gauge_")}
    only = {**kept, **(under or {"gauge_bar": 0}), "time_h": 1}
    return carb.carbonation_schedule(start_volumes=0, altitude_m=0, schedule=[only])[0]


def celsius_or_fahrenheit(given: Mapping[str, Any], units: Scale) -> float | None:
    """The temperature that was given, in the unit of the picture."""
    if not any(name.startswith("temperature_") for name in given):
        return None
    return float(step(given)[units.temperature])
