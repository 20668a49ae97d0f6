"""Data frames of what is answered; pandas is needed only where one is asked for."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from importlib import import_module
from typing import TYPE_CHECKING, Any

from ._result import View

if TYPE_CHECKING:
    from ._result import Result


def frame(columns: Mapping[str, Any], numbers: Iterable[str] = (), index: Any = None) -> Any:
    """A data frame of columns; those of ``numbers`` hold numbers even where nothing in them is known."""
    try:
        pandas = import_module("pandas")
    except ModuleNotFoundError as error:
        raise ImportError("a data frame needs pandas, which is not installed: pip install pandas") from error
    made = pandas.DataFrame(dict(columns), index=index)
    return made.astype({name: float for name in numbers})


ABOUT = ("basis", "beverage", "ambient", "equations", "sources")
"""What an answer stands on: it is told by the row, and is in no column."""


class Listing(tuple[View, ...]):
    """Rows of an answer, each read by attribute or by name.

    Examples
    --------
    >>> import carb
    >>> batch = carb.bottling(
    ...     packaged_l=19.2, volumes=2.4, warmest_c=20.5, altitude_m=240, bottles=[{"bottle_ml": 500, "count": 40}]
    ... )
    >>> [row.filled_count for row in batch.bottles]
    [39]
    >>> day = batch.bottles.to_frame()  # doctest: +SKIP
    """

    __slots__ = ()

    def to_columns(self) -> dict[str, list[Any]]:
        """The columns by name; what is missing is None.

        The names within a part of a row have its noun before them. What a part stands on (its basis, its sources, ...)
        is not among them.
        """
        flat = [dict(_flat(row)) for row in self]
        names = dict.fromkeys(name for row in flat for name in row)
        return {name: [row.get(name) for row in flat] for name in names}

    def to_frame(self) -> Any:
        """The rows as a pandas data frame with the columns of ``to_columns()``; pandas has to be installed."""
        return frame(self.to_columns())


def _flat(row: Mapping[str, Any], noun: str = "") -> Iterator[tuple[str, Any]]:
    for name, value in row.items():
        if "equations" in row and name in ABOUT:
            continue
        if isinstance(value, Mapping):
            yield from _flat(value, f"{noun}{name}_")
        else:
            yield f"{noun}{name}", value


def rowed(value: Any) -> Any:
    """What JSON gave, its lists of objects made rows."""
    if isinstance(value, dict):
        return {name: rowed(member) for name, member in value.items()}
    if isinstance(value, list) and all(isinstance(member, dict) for member in value):
        return Listing(map(View, value))
    return value


def bare(value: Any) -> Any:
    """A value without the unit that it may carry: its name tells that."""
    return getattr(value, "magnitude", value)


def elements(result: Result[Any]) -> Any:
    """The elements of a result as a data frame, a row each; of a result for a single number, one row.

    It has the inputs, as far as they were given, the shown outputs, and the status; before them, where there is more
    than one dimension, the place in each (``index_0``, ``index_1``, ...). An input that has the name of an output has
    ``given_`` before it. What is indexed keeps its index.
    """
    import numpy as np

    status = result.status
    shape = np.shape(status)
    places = np.indices(shape) if len(shape) > 1 else ()

    def column(value: Any) -> Any:
        if isinstance(value, (str, bool)):
            return [value] * int(np.prod(shape))
        # What is added to knows itself how its elements belong to those that were given.
        return np.ravel(status * 0 + bare(value))

    columns = {
        **{f"index_{axis}": place.ravel() for axis, place in enumerate(places)},
        **{f"given_{name}" if name in result.shown else name: column(v) for name, v in result.request.items()},
        **{name: column(result._value(name)) for name in result.shown},
        "status": np.ravel(status),
    }
    return frame(columns, index=getattr(status, "index", None))
