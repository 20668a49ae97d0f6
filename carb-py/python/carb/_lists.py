"""Lists of rows, in whatever form Python has them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from . import _carb
from ._errors import CarbError

LISTS = frozenset(_carb.lists())


def asked(given: Mapping[str, Any], lists: bool = True) -> dict[str, Any]:
    """A request as it was given, its names and types checked; what is wrong in a row is said with the row."""
    return _carb.request({n: rows(n, v) if lists and n in LISTS else v for n, v in given.items()}, lists)


def rows(name: str, value: Any) -> Any:
    """A list of dictionaries; what cannot be made one is left as it is, for the core to refuse."""
    if isinstance(value, (str, bytes)) or value is None:
        return value
    if isinstance(value, Mapping):
        return _of_columns(name, value)
    records = _records(value)
    if records is not None:
        return [_known(row) for row in records]
    try:
        return [dict(row) if isinstance(row, Mapping) else row for row in value]
    except TypeError:
        return value


def _records(frame: Any) -> Any:
    """The rows of a data frame; None where it is none."""
    try:
        return frame.to_dict("records")
    except (AttributeError, TypeError, ValueError):
        return None


def _of_columns(name: str, columns: Mapping[Any, Any]) -> Any:
    """The rows of columns by name."""
    if any(isinstance(column, (str, bytes, Mapping)) for column in columns.values()):
        return columns
    try:
        cells = [list(column) for column in columns.values()]
    except TypeError:
        return columns
    if len(set(map(len, cells))) > 1:
        lengths = ", ".join(f"{column} {len(values)}" for column, values in zip(columns, cells, strict=True))
        text = f"{name}: the columns should be of one length, not {lengths}"
        raise CarbError(text, dict(_carb.codes())["WRONG_LIST"], name, list=name)
    return [_known(dict(zip(columns, row, strict=True))) for row in zip(*cells, strict=True)]


def _known(row: Mapping[Any, Any]) -> dict[Any, Any]:
    """A row without what is missing in it: in a column of numbers, what is missing is NaN."""
    return {name: value for name, value in row.items() if not missing(value)}


def missing(value: Any) -> bool:
    try:
        return bool(value != value)
    except TypeError:  # The NA of a data frame is neither equal nor unequal.
        return True
    except ValueError:
        return False
