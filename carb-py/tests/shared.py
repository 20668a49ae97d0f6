"""What the tests share."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import carb
import carb._carb as native

ROOT = Path(__file__).parents[2]
KNOWN = json.loads(native.tables())
FUNCTIONS = {function["name"]: function for function in KNOWN["functions"]}
TABLES = {table["name"]: table for table in KNOWN["tables"]}
NUMBER = re.compile(r"[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?")


def given(inputs: str) -> dict[str, Any]:
    """The pairs of ``name=value;name=value``."""

    def value(text: str) -> Any:
        if text in ("true", "false"):
            return text == "true"
        if text.startswith("["):
            return json.loads(text)
        return float(text) if NUMBER.fullmatch(text) else text

    return {name: value(text) for name, _, text in (pair.partition("=") for pair in inputs.split(";")) if name}


def names_of(entry: dict[str, Any]) -> list[str]:
    """The names that a function, a table or a job takes, its lists behind them."""
    inputs = [name for known in entry["inputs"] for name in known["names"]]
    return inputs + [rows["name"] for rows in entry.get("lists", ())]


def pick(result: Any, name: str) -> Any:
    """An output by its full name: ``gauge_bar``, or ``worst_gauge_bar`` by way of ``.worst.gauge_bar``."""
    if hasattr(result, name):
        return getattr(result, name)
    # A noun may begin as another does: later_room_air_ppm, later_low_half_room_air_ppm.
    splits = [(name[:at], name[at + 1 :]) for at, letter in enumerate(name) if letter == "_" and hasattr(result, name[:at])]
    return next(getattr(getattr(result, noun), rest) for noun, rest in splits if hasattr(getattr(result, noun), rest))


def arrays(function: str) -> set[str]:
    """The names that a function takes as arrays."""
    return {name for entry in _known(function)["inputs"] if entry["array"] for name in entry["names"]}


def _known(function: str) -> dict[str, Any]:
    found: dict[str, Any] = {**FUNCTIONS, **TABLES}[function]
    return found


def example(function: str) -> dict[str, Any]:
    """The example of a function or a table."""
    call: dict[str, Any] = json.loads(_known(function)["example"])
    return call


def call(function: str, **inputs: Any) -> Any:
    return getattr(carb, function)(**inputs)
