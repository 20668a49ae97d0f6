"""Tables: what the functions return whose answer is rows."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from copy import deepcopy
from typing import Any, overload

from . import _carb
from ._errors import answered
from ._frame import Listing, frame
from ._lists import asked
from ._result import Frozen, View, brief, request_text

PRINTED = 20
"""So many rows are printed, in cells of this width and lines of that."""
CELL = 40
LINE = 120


class Table(Frozen, Sequence[View]):
    """Rows, each read by attribute or by name; a row is had by its place, or by the first of its texts.

    What is not known is None. ``to_dict()`` gives the columns, ``to_frame()`` a pandas data frame.

    Examples
    --------
    >>> import carb
    >>> carb.keg_sizes()["soda_5_gal"].content_us_gal
    5.0
    """

    __slots__ = ("_text", "_whole")
    _text: str
    _whole: dict[str, Any]

    def __init__(self, name: str, request: Mapping[str, Any]) -> None:
        text = _carb.json(name, request_text(asked(request)))
        object.__setattr__(self, "_text", text)
        object.__setattr__(self, "_whole", answered(text))

    @property
    def name(self) -> str:
        """The function that gives this table."""
        return str(self._whole["table"])

    @property
    def request(self) -> dict[str, Any]:
        """What was asked, as it was given."""
        return deepcopy(dict(self._whole["request"]))

    def _described(self, by: str) -> dict[str, str]:
        return {column["name"]: column[by] for column in self._whole["columns"]}

    @property
    def columns(self) -> tuple[str, ...]:
        """The names of the columns."""
        return tuple(self._described("name"))

    @property
    def units(self) -> View:
        """The unit of each column; empty for texts."""
        return View(self._described("unit"))

    @property
    def meanings(self) -> View:
        """What each column means."""
        return View(self._described("meaning"))

    def column(self, name: str) -> tuple[Any, ...]:
        """The values of a column, from the first row to the last."""
        if name not in self.columns:
            raise KeyError(f"there is no {name} here, but: {', '.join(self.columns)}")
        return tuple(row[name] for row in self)

    @property
    def _names(self) -> tuple[Any, ...]:
        return self.column(next(name for name, unit in self.units.items() if not unit))

    def _named(self, text: str) -> View:
        found = [row for row, name in zip(self, self._names, strict=True) if name == text]
        if not found:
            raise KeyError(f"there is no {text} here, but: {', '.join(filter(None, self._names))}")
        # One of several would hide that the others say something else.
        if len(found) > 1:
            raise KeyError(f"there are {len(found)} rows of {text}: take one by its place")
        return found[0]

    @overload
    def __getitem__(self, index: int | str) -> View: ...
    @overload
    def __getitem__(self, index: slice) -> Listing: ...
    def __getitem__(self, index: int | str | slice) -> View | Listing:
        if isinstance(index, str):
            return self._named(index)
        rows = self._whole["rows"][index]
        return Listing(map(View, rows)) if isinstance(index, slice) else View(rows)

    def __iter__(self) -> Iterator[View]:
        return map(View, self._whole["rows"])

    def __len__(self) -> int:
        return len(self._whole["rows"])

    def __contains__(self, row: object) -> bool:
        return row in self._names if isinstance(row, str) else super().__contains__(row)

    def to_json(self) -> str:
        """The table as JSON, the same bytes in every language."""
        return self._text

    def to_dict(self) -> dict[str, list[Any]]:
        """The columns by name."""
        return {name: list(self.column(name)) for name in self.columns}

    def to_frame(self) -> Any:
        """The table as a pandas data frame; pandas has to be installed.

        Numbers are floats, and NaN where they are not known; counts are integers, texts texts.

        Examples
        --------
        >>> import carb
        >>> kegs = carb.keg_sizes().to_frame()  # doctest: +SKIP
        >>> kegs[kegs.content_l > 25]  # doctest: +SKIP
        """
        return frame(self.to_dict(), numbers=(name for name, unit in self.units.items() if unit))

    def __repr__(self) -> str:
        rows = self._whole["rows"][:PRINTED]
        columns = [_aligned(name, self.units[name], [row[name] for row in rows]) for name in self.columns]
        said = f"{self.name}: {len(self)} row{'s' * (len(self) != 1)}"
        more = [f"... and {len(self) - len(rows)} more"] if len(self) > len(rows) else []
        return "\n".join([said, "\n\n".join(_blocks(columns)), *more])

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Table) and self._text == other._text

    def __hash__(self) -> int:
        return hash(self._text)

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (self.name, self.request)

    def _repr_html_(self) -> str:
        from ._html import table

        return table(self)


def _aligned(name: str, unit: str, values: list[Any]) -> list[str]:
    """The cells of a column, all as wide: numbers to the right, texts to the left."""
    texts = ["-" if value is None else brief(value) for value in values]
    cells = [name, unit, *(text if len(text) <= CELL else f"{text[: CELL - 1]}…" for text in texts)]
    width = max(map(len, cells))
    numbers = unit or any(isinstance(value, (int, float)) for value in values)
    return [cell.rjust(width) if numbers else cell.ljust(width) for cell in cells]


def _blocks(columns: list[list[str]]) -> Iterator[str]:
    """As many columns as go into a line, then the others beside the first one again."""
    first, *others = columns
    while True:
        block = [first, *others[:1]]
        others = others[1:]
        while others and sum(len(column[0]) + 2 for column in (*block, others[0])) <= LINE + 2:
            block.append(others.pop(0))
        name, unit, *rows = ("  ".join(cells).rstrip() for cells in zip(*block, strict=True))
        yield "\n".join([name, *([unit] if unit else []), *rows])
        if not others:
            return
