"""What the tests share."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import carb
import carb._carb as native
from carb import _selfcheck
from carb._selfcheck import given, pick

__all__ = ["FUNCTIONS", "KNOWN", "ROOT", "TABLES", "arrays", "call", "example", "given", "names_of", "pick"]

ROOT = Path(__file__).parents[2]
KNOWN = json.loads(native.tables())
FUNCTIONS = {function["name"]: function for function in KNOWN["functions"]}
TABLES = {table["name"]: table for table in KNOWN["tables"]}


def names_of(entry: dict[str, Any]) -> list[str]:
    """The names that a function, a table or a job takes, its lists behind them."""
    inputs = [name for known in entry["inputs"] for name in known["names"]]
    return inputs + [rows["name"] for rows in entry.get("lists", ())]


def arrays(function: str) -> set[str]:
    """The names that a function takes as arrays."""
    return _selfcheck.arrays(_known(function))


def _known(function: str) -> dict[str, Any]:
    found: dict[str, Any] = {**FUNCTIONS, **TABLES}[function]
    return found


def example(function: str) -> dict[str, Any]:
    """The example of a function or a table."""
    call: dict[str, Any] = json.loads(_known(function)["example"])
    return call


def call(function: str, **inputs: Any) -> Any:
    return getattr(carb, function)(**inputs)
