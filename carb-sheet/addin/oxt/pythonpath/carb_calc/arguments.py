"""Names and values, as the arguments of a call give them."""

from .names import spelled
from .refusal import Refusal

EMPTY = ("", None)
MOST = 1 << 20
"""So many values a call answers, as many as a column has."""


class Cells:
    """Values in rows and columns; None is a value that is not there."""

    def __init__(self, rows):
        self.rows = rows
        self.height, self.width = len(rows), len(rows[0]) if rows else 0

    @property
    def is_one(self):
        return self.height == self.width == 1

    @property
    def first(self):
        return self.rows[0][0]

    def spread(self, height, width):
        """Every value in order, as often as rows and columns of the answer need it."""
        if self.is_one:
            return [self.first]
        rows = self.rows * height if self.height == 1 else self.rows
        return [value for row in rows for value in (row * width if self.width == 1 else row)]


def cells(argument):
    """An argument as cells: a range has rows, everything else is one value. What is empty is missing."""
    rows = argument if isinstance(argument, tuple) else ((argument,),)
    return Cells(tuple(tuple(None if value in EMPTY else value for value in row) for row in rows))


def pairs(arguments, first):
    """Names with their cells, from single pairs and from blocks of two columns; `first` is the place of the first."""
    found, place = [], 0
    while place < len(arguments):
        name = cells(arguments[place])
        if not name.is_one:
            found += block(name, first + place)
            place += 1
            continue
        if not isinstance(name.first, str):
            raise Refusal(f'argument {first + place + 1} should be a name in quotes, such as "volumes"', first + place)
        if place + 1 == len(arguments):
            text = (
                f"{name.first} is missing: no value stands behind its name; give names and values in turn, or a block"
            )
            raise Refusal(text, first + place)
        found.append((spelled(name.first), cells(arguments[place + 1])))
        place += 2
    return found


def block(table, place):
    """The rows of a block: a name and its value. Rows without a name or without a value are left out."""
    if table.width != 2:
        text = f"a block of names and values has two columns, not {table.width}"
        raise Refusal(f"{text}; a range of values needs its name before it", place)
    found = []
    for name, value in table.rows:
        if name is None or value is None:
            continue
        if not isinstance(name, str):
            raise Refusal("the left column of a block holds names, the right one their values", place)
        found.append((spelled(name), Cells(((value,),))))
    return found


def shape(all_cells):
    """Rows and columns of the answer: those of the ranges; one row and one column make a grid."""
    height = width = 1
    for one in all_cells:
        for mine, yours in ((one.height, height), (one.width, width)):
            if mine != 1 and yours != 1 and mine != yours:
                text = "the ranges of a call have one size, or are one row and one column: "
                raise Refusal(f"{text}{one.height} x {one.width} does not go with {height} x {width}")
        height, width = max(height, one.height), max(width, one.width)
    if height * width > MOST:
        raise Refusal(
            f"{height} x {width} values are asked for, and a call answers {MOST} at most: take smaller ranges"
        )
    return height, width
