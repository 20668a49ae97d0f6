"""Claims: what other programs print, in whatever form Python or a file has them."""

from __future__ import annotations

import os
import re
from collections.abc import Iterator, Mapping, Sequence
from functools import lru_cache
from math import isfinite
from numbers import Number, Real
from typing import Any, NamedTuple, NoReturn

from . import _carb
from ._errors import CarbError
from ._lists import missing, rows

SAID = ("label", "program", "quantity", "value", "unit")
"""The columns of a claim that are texts; the others are inputs by the names of the vocabulary."""
NEEDED = ("quantity", "value", "unit")
FLAGS = {"true": True, "false": False}
NUMBER = re.compile(r"[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?", re.ASCII)
# A text in quotes, in which a quote is written twice, or a bare one; and what ends it.
CELL = re.compile(r' *(?! )(?:"([^"]*(?:""[^"]*)*)"|((?!")[^,\r\n]*))(,|\r\n|\n|\r|\Z)')
CLOSED = re.compile(r' *"[^"]*(?:""[^"]*)*"(?!")')
LINE_END = re.compile("\r\n|\n|\r")
WHOLE = 1e15
"""Below this every whole number has a form of its own."""
BOM = "\ufeff".encode()


@lru_cache(maxsize=1000)
def kind(name: str) -> str:
    """What a column takes: ``"number"``, ``"choice"``, ``"flag"`` or ``"text"``; empty where there is none such."""
    if name in SAID:
        return "text"
    try:
        return _carb.kind(name)
    except CarbError:
        return ""


def printed(value: Any) -> Any:
    """A number as a program might have printed it: with the fewest digits that tell it."""
    if isinstance(value, bool) or not isinstance(value, Number):
        return value
    try:
        text = str(value)
    except ValueError:  # An integer of thousands of digits.
        return []
    return text.removesuffix(".0") if isinstance(value, Real) else text


def cell(name: str, value: Any) -> Any:
    """A value as JSON has it. What has no such form becomes something that the core refuses with its place."""
    if getattr(value, "shape", None) == () and not isinstance(value, Number):
        value = value.item()
    if name in SAID:
        value = printed(value)
    if isinstance(value, str):
        # Half of a character that needs two is none.
        text = value.encode(errors="replace").decode().strip()
        if kind(name) == "number" and NUMBER.fullmatch(text) and isfinite(float(text)):
            return _number(float(text))
        return FLAGS.get(text.lower(), text) if kind(name) == "flag" else text
    if isinstance(value, bool):
        return value
    if not isinstance(value, Number):
        return []
    try:
        number = float(str(value))
    except ValueError:
        return []
    return _number(number) if isfinite(number) else []


def _number(number: float) -> float:
    """A whole number without a point, however it was given, so that like claims are one request."""
    return int(number) if number.is_integer() and abs(number) < WHOLE else number


def claim(row: Any) -> Any:
    """A claim as JSON has it, without what is not given; what is no row is left for the core to refuse."""
    if not isinstance(row, Mapping):
        return []
    given = {_name(name): None if _blank(value) else value for name, value in row.items()}
    # A name that there is not is no name of nothing either.
    return {n: None if v is None else cell(n, v) for n, v in given.items() if v is not None or not kind(n)}


def claims_of(given: Any) -> Any:
    """Claims as JSON has them; None where there are none, for the core to refuse."""
    found = rows("claims", given)
    return [claim(row) for row in found] if isinstance(found, list) else None


def _name(name: Any) -> str:
    return str(name).encode(errors="replace").decode()


def _blank(value: Any) -> bool:
    return value is None or missing(value) or (isinstance(value, str) and not value.strip())


class Fault(NamedTuple):
    """Something malformed in a file of claims."""

    line: int
    """The line on which the row starts, from 1."""
    column: int
    """The column, from 1."""
    name: str
    """The name of the column; empty where it has none."""
    text: str

    def told(self, file: str) -> str:
        """The fault with its place; what a terminal might take for an order is not passed on."""
        said = f"{file}, line {self.line}, column {self.column}{f' ({self.name})' if self.name else ''}: {self.text}"
        return "".join(letter if letter.isprintable() else "\ufffd" for letter in said)


class Sheet(NamedTuple):
    """A file of claims as it was read."""

    file: str
    header: tuple[str, ...]
    rows: tuple[tuple[int, tuple[str, ...]], ...]
    """The line on which each row starts, and its cells."""

    def claims(self) -> list[dict[str, str]]:
        """The rows by the names of the header."""
        return [dict(zip(self.header, cells, strict=False)) for _, cells in self.rows]


class Malformed(Exception):
    """Where a file cannot be read on."""

    def __init__(self, line: int, column: int, text: str, name: str = "") -> None:
        super().__init__(text)
        self.fault = Fault(line, column, name, text)


def read(path: str | os.PathLike[str]) -> tuple[Sheet, list[Fault]]:
    """A file of claims, and what is malformed in its form; what its cells mean is for the core to judge."""
    file = os.fspath(path)
    with open(file, "rb") as opened:
        raw = opened.read()
    try:
        return _sheet(file, list(_records(_text(raw))))
    except Malformed as malformed:
        return Sheet(file, (), ()), [malformed.fault]


def _text(raw: bytes) -> str:
    def refuse(at: int, text: str) -> NoReturn:
        *_, (line, start) = [(1, 0), *((n, end.end()) for n, end in enumerate(_ends(raw[:at]), 2))]
        raise Malformed(line, at - start + 1, text, "counted in bytes")

    if b"\0" in raw:
        refuse(raw.index(b"\0"), "there is a NUL byte, so this is no text: save it as CSV in UTF-8")
    body = raw.removeprefix(BOM)
    try:
        return body.decode()
    except UnicodeDecodeError as error:
        refuse(error.start + len(raw) - len(body), "this is no UTF-8: save it as CSV in UTF-8")


def _ends(raw: bytes) -> Iterator[re.Match[str]]:
    return LINE_END.finditer(raw.decode("latin-1"))


def _records(text: str) -> Iterator[tuple[int, tuple[str, ...]]]:
    """The rows of a CSV text, with the line on which each starts; empty ones are left out."""
    at, line, start, cells = 0, 1, 1, list[str]()
    while at < len(text) or cells:
        found = CELL.match(text, at)
        if found is None:
            what = "text follows a closing quote: a quote within a text in quotes is written twice"
            never = "a quote is opened and never closed"
            raise Malformed(start, len(cells) + 1, what if CLOSED.match(text, at) else never)
        quoted, bare, end = found.groups()
        cells.append(bare if quoted is None else quoted.replace('""', '"'))
        line += len(LINE_END.findall(found[0]))
        at = found.end()
        if end != ",":
            if any(cell.strip() for cell in cells):
                yield start, tuple(cells)
            start, cells = line, []


def _sheet(file: str, records: Sequence[tuple[int, tuple[str, ...]]]) -> tuple[Sheet, list[Fault]]:
    if not records:
        raise Malformed(1, 1, "the file is empty: a header of column names is wanted, and a row for each claim")
    (line, names), *below = records
    header = tuple(name.strip() for name in names)
    faults = [Fault(line, *fault) for fault in _header_faults(header)]
    if not below:
        faults.append(Fault(line + 1, 1, header[0], "there is no claim below the header"))
    for at, cells in below:
        if len(cells) != len(header):
            column = min(len(cells), len(header)) + 1
            name = header[column - 1] if column <= len(header) else ""
            counts = f"the row has {len(cells)} cell{'s' * (len(cells) != 1)}, the header {len(header)}"
            faults.append(Fault(at, column, name, f"{counts}: a text that holds a comma needs quotes around it"))
    return Sheet(file, header, tuple(below)), faults


def _header_faults(header: Sequence[str]) -> Iterator[tuple[int, str, str]]:
    for column, name in enumerate(header, 1):
        if not name:
            yield column, name, "the column has no name"
        elif name in header[: column - 1]:
            yield column, name, f"column {header.index(name) + 1} has this name too"
        elif not kind(name):
            yield column, name, _unknown(name)
    if len(header) == 1 and re.search("[;\t]", header[0]):
        return
    for name in NEEDED:
        if name not in header:
            yield len(header) + 1, name, "there is no such column, and every claim needs it"


def _unknown(name: str) -> str:
    from difflib import get_close_matches

    if re.search("[;\t]", name):
        return "columns are separated by commas"
    near = get_close_matches(name.lower(), SAID, 1)
    if near:
        return f'there is no column "{name}": did you mean "{near[0]}"?'
    try:
        _carb.kind(name)
    except CarbError as error:
        return str(error)
    return ""


def refused(claims: Sequence[Any], request: Any) -> Iterator[tuple[int, CarbError]]:
    """What the core refuses of claims, each row by itself: the place of the row from 0, and the error."""
    before = 0
    while before < len(claims):
        try:
            _carb.claims_checked(request(claims[before:]))
        except CarbError as error:
            if error.row is None:
                raise
            before += error.row
            yield before - 1, error
        else:
            return


def faults_of(sheet: Sheet, request: Any) -> Iterator[Fault]:
    """What is malformed in what the cells of a sheet mean."""
    whole = [(line, cells) for line, cells in sheet.rows if len(cells) == len(sheet.header)]
    claims = [claim(dict(zip(sheet.header, cells, strict=True))) for _, cells in whole]
    for at, error in refused(claims, request):
        name = error.parameter
        column = sheet.header.index(name) + 1 if name in sheet.header else len(sheet.header) + 1
        yield Fault(whole[at][0], column, name, str(error).removeprefix(f"in row {error.row} of claims: "))


def read_claims(path: str | os.PathLike[str]) -> list[dict[str, str]]:
    """Read claims from a CSV file, every text as it stands there: 4.40 keeps its zero.

    Parameters
    ----------
    path : path
        A CSV file in UTF-8 with commas between its columns: a header of column names, then a row for each claim. The
        columns are those of ``carb.crosscheck``; what does not belong to a claim is left empty in its row.

    Returns
    -------
    list of dict
        A row each, as ``carb.crosscheck`` takes them; what is empty is an empty text.

    Raises
    ------
    CarbError
        Where the file is malformed: the text has line and column, ``parameter`` the name of the column. Numbers and
        names are looked at by ``carb.crosscheck``.
    OSError
        Where the file cannot be read.

    Examples
    --------
    >>> import carb
    >>> import tempfile
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     path = f"{folder}/claims.csv"
    ...     with open(path, "w") as file:
    ...         _ = file.write("quantity,value,unit,volumes\\npriming_sugar,4.40,oz,2.5\\n")
    ...     carb.read_claims(path)
    [{'quantity': 'priming_sugar', 'value': '4.40', 'unit': 'oz', 'volumes': '2.5'}]
    """
    sheet, faults = read(path)
    if faults:
        worst = min(faults)
        code = dict(_carb.codes())["WRONG_LIST"]
        raise CarbError(worst.told(sheet.file), code, worst.name or "claims", list="claims")
    return sheet.claims()
