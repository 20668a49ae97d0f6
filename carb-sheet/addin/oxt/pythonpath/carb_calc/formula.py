"""The calls of our functions in a formula, as the document gives its text: English names, `;` between arguments."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

PREFIX = "CARB.CALC."
QUOTES = {'"': '"', "'": "'"}
CALL = re.compile(r"CARB\.CALC\.([A-Z0-9]+)\(", re.IGNORECASE)
CELL = re.compile(
    r"(?:(?P<sheet>\$?(?:'(?:[^']|'')+'|[^\s'\"#$.!~:+\-*/^&=<>%(){};|]+))\.)?"
    r"\$?(?P<column>[A-Z]{1,4})\$?(?P<row>\d+)"
)
NUMBER = re.compile(r"[+-]?(?:\d+\.?\d*|\.\d+)(?:E[+-]?\d+)?")
NAME = re.compile(r"[^\W\d][\w.]*")
FUNCTION = re.compile(r"([A-Z][A-Z0-9._]*)\(")
MAY_BE_EMPTY = {"CHOOSE", "FILTER", "HLOOKUP", "IF", "IFERROR", "IFNA", "IFS", "INDEX", "INDIRECT", "LOOKUP", "OFFSET"}
MAY_BE_EMPTY |= {"SWITCH", "VLOOKUP", "XLOOKUP", "OPERATIONS"}
"""Functions that may hand on a cell, an empty one too."""


@dataclass(frozen=True)
class Constant:
    """A number or a text in the formula itself, or nothing between two separators."""

    value: object


@dataclass(frozen=True)
class Reference:
    """One cell: its sheet (None is that of the formula), column and row, from 0."""

    sheet: str | None
    column: int
    row: int


@dataclass(frozen=True)
class Named:
    """A name that the document gave to something."""

    name: str


@dataclass(frozen=True)
class Several:
    """More than one cell, or an array."""


@dataclass(frozen=True)
class Worked:
    """What is worked out; it may be what an empty cell holds, where it only picks a cell."""

    picks: bool


@lru_cache(maxsize=100_000)
def calls(text):
    """Each call in a formula: the plain name of the function in small letters, and its arguments."""
    found = []
    if PREFIX in text.upper():
        for place in CALL.finditer(text):
            arguments = split(text, place.end())
            if arguments is not None:
                while arguments and not arguments[-1].strip():
                    arguments.pop()
                found.append((place.group(1).lower(), tuple(map(argument, arguments))))
    return tuple(found)


def split(text, start):
    """The arguments of a call that begins before `start`; None where it does not end."""
    found, depth, begin, place = [], 0, start, start
    while place < len(text):
        letter = text[place]
        if letter in QUOTES:
            place = text.find(letter, place + 1)
            if place < 0:
                return None
        elif letter in "({":
            depth += 1
        elif letter in ")}" and depth:
            depth -= 1
        elif letter == ")":
            return [*found, text[begin:place]]
        elif letter == ";" and not depth:
            found.append(text[begin:place])
            begin = place + 1
        place += 1
    return None


def argument(text):
    text = bare(text.strip())
    if not text:
        return Constant(None)
    if text[0] == text[-1] == '"' and len(text) > 1 and '"' not in text[1:-1].replace('""', ""):
        return Constant(text[1:-1].replace('""', '"'))
    if NUMBER.fullmatch(text):
        return Constant(float(text))
    if cell := CELL.fullmatch(text):
        return reference(cell)
    first, colon, last = text.rpartition(":")
    if text[0] == "{" or (colon and CELL.fullmatch(last) and CELL.fullmatch(first)):
        return Several()
    if NAME.fullmatch(text):
        return Named(text)
    function = FUNCTION.match(text)
    whole = function and text.endswith(")") and (inner := split(text, function.end())) is not None
    if whole and sum(map(len, inner)) + len(inner) + function.end() == len(text):
        return Worked(function.group(1).rpartition(".")[2] in MAY_BE_EMPTY)
    return Worked(any(sign in text for sign in "!~#"))


def bare(text):
    """A text without brackets around all of it."""
    while text.startswith("(") and text.endswith(")"):
        inner = split(text, 1)
        if inner is None or len(inner) != 1 or len(inner[0]) != len(text) - 2:
            break
        text = inner[0].strip()
    return text


def reference(cell):
    sheet = cell["sheet"]
    if sheet is not None:
        sheet = sheet.lstrip("$")
        sheet = sheet[1:-1].replace("''", "'") if sheet.startswith("'") else sheet
    column = 0
    for letter in cell["column"]:
        column = column * 26 + ord(letter) - ord("A") + 1
    return Reference(sheet, column - 1, int(cell["row"]) - 1)
