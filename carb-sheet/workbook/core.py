"""What the workbook takes from the library: names, choices, defaults, tables and texts."""

from __future__ import annotations

import csv
import json
from functools import cache
from pathlib import Path
from typing import Any

from carb import _carb

Entry = dict[str, Any]
CRATE = Path(__file__).parents[2] / "carb-core"
CHECKS = CRATE / "checks" / "published" / "functions.csv"
SERVICE = "CARB.CALC."
"""What stands before the name of a function of the add-in in a stored formula: the name of its service."""
COMPANIONS = ("CARB_CAUTIONS", "CARB_CONVERT", "CARB_SOURCES", "CARB_TABLE", "CARB_VERSION", "CARB_WORKING")


@cache
def functions() -> tuple[str, ...]:
    """The elementwise functions, as a worksheet writes them."""
    return tuple(sorted(name.upper() for name in _carb.names()[0]))


def stored_name(name: str) -> str:
    """The name under which a formula in a file calls a function of the add-in; others keep theirs."""
    ours = name in functions() or name in COMPANIONS
    return SERVICE + name.replace("_", "") if ours else name


@cache
def described(name: str) -> Entry:
    """What the library says of a function or a table."""
    found: Entry = json.loads(_carb.described(name))
    return found


@cache
def known_input(function: str, name: str) -> Entry:
    """An input of a function or a table, by any of its names."""
    entry = described(function)
    lists = [column for rows in entry.get("lists", ()) for column in rows["columns"]]
    return next(known for known in [*entry["inputs"], *lists] if name in known["names"])


def names(function: str, *firsts: str) -> tuple[str, ...]:
    """All names of some inputs of a function: one of them is chosen, and with it the unit."""
    return tuple(name for first in firsts for name in known_input(function, first)["names"])


def choices(function: str, name: str) -> tuple[str, ...]:
    """What can be chosen for an input that is no number."""
    return tuple(known_input(function, name)["choices"])


def if_blank(function: str, name: str) -> str:
    """What is taken where an input is left blank, in the library's words."""
    known = known_input(function, name)
    if known.get("need") == "required" or "one_of" in known:
        return "needed"
    taken: str = known["default"]
    return taken if taken.startswith("needed") else f"blank: {taken}"


@cache
def rows(table: str, asked: str = '{"carb": 1}') -> tuple[Entry, ...]:
    """The rows of a table."""
    return tuple(json.loads(_carb.json(table, asked))["rows"])


@cache
def columns(table: str) -> tuple[str, ...]:
    """The columns of a table, in order."""
    return tuple(column["name"] for column in described(table)["columns"])


@cache
def caution(code: str) -> str:
    """The text of a caution."""
    return next(str(row["text"]) for row in rows("cautions") if row["code"] == code)


def version() -> str:
    """The version of the library."""
    return str(_carb.__version__)


def published() -> list[dict[str, str]]:
    """Published values that a function answers."""
    lines = [line for line in CHECKS.read_text("utf-8").splitlines() if not line.startswith("#")]
    return list(csv.DictReader(lines))
