"""A sheet as it is laid out: cells, inputs by their names, results, and what conditions colour."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from . import core

NOTE, LINE = 36, 0.33
"""Letters in a line of a note beside an input, and the height of a line in centimetres."""


def column_name(index: int) -> str:
    """A for 0."""
    return chr(ord("A") + index)


@dataclass(frozen=True)
class Cell:
    """What stands in a cell. A text that begins with = is a formula."""

    content: str | float | None
    look: str
    places: int | None = None
    offered: tuple[str, ...] = ()
    across: int = 1
    down: int = 1
    array: tuple[int, int] | None = None

    @property
    def is_formula(self) -> bool:
        return isinstance(self.content, str) and self.content.startswith("=")


@dataclass
class Sheet:
    """One sheet, one printed page. Rows are counted from 1, columns are letters."""

    name: str
    widths: Sequence[float]
    title: str
    landscape: bool = False
    frozen: int = 0
    cells: dict[tuple[int, str], Cell] = field(default_factory=dict)
    heights: dict[int, float] = field(default_factory=dict)
    signals: list[tuple[str, list[tuple[str, str]]]] = field(default_factory=list)

    def put(
        self,
        row: int,
        column: str,
        content: str | float | None,
        look: str,
        places: int | None = None,
        offered: tuple[str, ...] = (),
        across: int = 1,
        down: int = 1,
        array: tuple[int, int] | None = None,
    ) -> None:
        """Puts something into a cell."""
        self.cells[row, column] = Cell(content, look, places, offered, across, down, array)

    def heading(self, row: int, texts: dict[str, str], last: str, right: str = "") -> None:
        """A row of headings from column A to the last one; those in `right` stand over numbers."""
        for index in range(ord(last) - ord("A") + 1):
            letter = column_name(index)
            self.put(row, letter, texts.get(letter), "headright" if letter in right else "head")

    def signal(self, area: str, *conditions: tuple[str, str]) -> None:
        """Colours an area where a condition holds, the first that does: condition and signal."""
        self.signals.append((area, list(conditions)))

    def given(
        self,
        row: int,
        label: str,
        function: str,
        name: str,
        value: str | float | None,
        others: tuple[str, ...] = (),
        note: str | None = None,
    ) -> None:
        """An input: label, name, value, and what is taken where it is left blank."""
        offered = core.names(function, name, *others)
        known = core.known_input(function, name)
        self.put(row, "A", label, "label")
        if len(offered) > 1:
            self.put(row, "B", name, "name", offered=offered)
        else:
            self.put(row, "B", name, "fixed")
        choices = tuple(known.get("choices", ()))
        self.put(row, "C", value, "choice" if choices else "input", offered=choices)
        self.noted(row, note or core.if_blank(function, name))

    def noted(self, row: int, note: str) -> None:
        """What is taken where an input is left blank, in as many lines as it needs."""
        self.put(row, "D", note, "note", across=2)
        lines = -(-len(note) // NOTE)
        self.heights[row] = max(LINE * lines + 0.12, self.heights.get(row, 0.58))

    def worked(self, row: int, label: str, name: str, formula: str, note: str, places: int | None = None) -> None:
        """A row of a block whose value is worked out from others."""
        self.put(row, "A", label, "label")
        self.put(row, "B", name, "fixed")
        self.put(row, "C", formula, "worked", places)
        self.noted(row, note)

    def result(
        self, row: int, label: str, first: tuple[str, str, int], second: tuple[str, str, int] | None = None
    ) -> None:
        """A result in one or two units: formula, unit, places."""
        self.put(row, "F", label, "label")
        for columns, one in (("GH", first), ("IJ", second)):
            self.put(row, columns[0], one[0] if one else None, "result", one[2] if one else None)
            self.put(row, columns[1], one[1] if one else None, "unit")
