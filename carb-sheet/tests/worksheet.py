"""Works a worksheet's formulas out without a spreadsheet program: what each cell must show, by the library in Python.

It reads formulas as they stand in the cells, and knows only what the workbooks of this project use of the language of
worksheets. Where it knows something of carbonation, it asks `carb`.
"""

from __future__ import annotations

import json
import math
import re
from collections.abc import Callable, Iterable
from functools import cache
from typing import Any

import carb
from carb import _carb

FUNCTIONS, TABLES, _ = _carb.names()
CALLS = {"CARB.CALC." + name.replace("_", "").upper(): name for name in FUNCTIONS}
TOKEN = re.compile(
    r'\s*(?:(?P<text>"(?:[^"]|"")*")|(?P<number>\d+\.?\d*(?:E[+-]?\d+)?)'
    r"|(?P<cell>(?:\$?(?:'[^']+'|[A-Za-z]+)\.)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)(?![A-Za-z(])"
    r"|(?P<name>[A-Z][A-Z0-9_.]*)(?=\()|(?P<sign><=|>=|<>|[-+*/^&=<>();]))"
)
LISTS = ("bottles",)
FLAGS = ("count_headspace", "count_syrup", "filtered")
LEVELS = (("danger", "DANGER: "), ("caution", "Caution: "), ("note", "Note: "))
BINDS = ({"=", "<", ">", "<=", ">=", "<>"}, {"&"}, {"+", "-"}, {"*", "/"})
Rows = list[list[Any]]


class CellError(Exception):
    """A cell without an answer."""


def column_number(letters: str) -> int:
    number = 0
    for letter in letters:
        number = 26 * number + ord(letter) - ord("A") + 1
    return number


def column_letters(number: int) -> str:
    letters = ""
    while number:
        number, rest = divmod(number - 1, 26)
        letters = chr(ord("A") + rest) + letters
    return letters


@cache
def parsed(formula: str) -> Any:
    """A formula as nested tuples."""
    tokens, at = [], 0
    while at < len(formula):
        found = TOKEN.match(formula, at)
        assert found, f"no formula of these workbooks: {formula[at:]}"
        tokens.append((str(found.lastgroup), found[str(found.lastgroup)]))
        at = found.end()
    tree, end = _level(tokens, 0, 0)
    assert end == len(tokens), f"more than a formula: {formula}"
    return tree


def _level(tokens: list[tuple[str, str]], at: int, level: int) -> tuple[Any, int]:
    if level == len(BINDS):
        return _atom(tokens, at)
    left, at = _level(tokens, at, level + 1)
    while at < len(tokens) and tokens[at][0] == "sign" and tokens[at][1] in BINDS[level]:
        sign = tokens[at][1]
        right, at = _level(tokens, at + 1, level + 1)
        left = ("sign", sign, left, right)
    return left, at


def _atom(tokens: list[tuple[str, str]], at: int) -> tuple[Any, int]:
    kind, text = tokens[at]
    if kind == "text":
        return ("value", text[1:-1].replace('""', '"')), at + 1
    if kind == "number":
        return ("value", float(text)), at + 1
    if kind == "cell":
        return ("cell", text.replace("$", "").replace("'", "")), at + 1
    if text == "-":
        inner, at = _atom(tokens, at + 1)
        return ("sign", "-", ("value", 0.0), inner), at
    if text == "(":
        inner, at = _level(tokens, at + 1, 0)
        return inner, at + 1
    arguments: list[Any] = []
    at += 2
    while tokens[at][1] != ")":
        if tokens[at][1] == ";":
            at += 1
        one, at = _level(tokens, at, 0)
        arguments.append(one)
    return ("call", text, arguments), at + 1


class Worksheet:
    """Cells by their place: numbers, texts, or formulas; None is empty. What each shows is worked out once."""

    def __init__(self, cells: dict[str, Any]) -> None:
        self.cells = cells
        self.found: dict[str, Any] = {}
        self.users: dict[str, set[str]] = {}
        self.arrays: dict[tuple[str, str], tuple[int, int]] = {}
        for place, content in cells.items():
            if isinstance(content, str) and content.startswith("{="):
                sheet, row, column = self.at(place)
                known = self.arrays.get((sheet, content), (row, column))
                self.arrays[sheet, content] = min(known[0], row), min(known[1], column)

    @staticmethod
    def at(place: str) -> tuple[str, int, int]:
        sheet, address = place.rsplit(".", 1)
        split = re.fullmatch(r"([A-Z]+)(\d+)", address)
        assert split
        return sheet, int(split[2]), column_number(split[1])

    def shows(self, place: str) -> Any:
        """The value of a cell; raises CellError where it has none."""
        if place not in self.found:
            try:
                self.found[place] = self._worked(place)
            except CellError as error:
                self.found[place] = error
        if isinstance(self.found[place], CellError):
            raise self.found[place]
        return self.found[place]

    def _worked(self, place: str) -> Any:
        content = self.cells.get(place)
        if not isinstance(content, str) or not content.startswith(("=", "{=")):
            return content
        sheet, row, column = self.at(place)
        if content.startswith("{="):
            top, left = self.arrays[sheet, content]
            value = Working(self, sheet).of(parsed(content[2:-1]))
            return value[row - top][column - left]
        value = Working(self, sheet).of(parsed(content[1:]))
        value = value[0][0] if isinstance(value, list) else value
        return 0.0 if value is None else value

    def uses(self, place: str) -> set[str]:
        """The cells that a formula names."""
        content = self.cells.get(place)
        if not isinstance(content, str) or not content.startswith(("=", "{=")):
            return set()
        named: set[str] = set()

        def walk(tree: Any) -> None:
            if tree[0] == "cell":
                named.update(place for row in area(tree[1], place_sheet) for place in row)
            elif tree[0] == "call":
                for one in tree[2]:
                    walk(one)
            elif tree[0] == "sign":
                walk(tree[2])
                walk(tree[3])

        place_sheet = self.at(place)[0]
        walk(parsed(content.strip("{}")[1:]))
        return named

    def dependents(self, start: str) -> set[str]:
        """Every formula that hangs on a cell, near or far."""
        if not self.users:
            for place in self.cells:
                for used in self.uses(place):
                    self.users.setdefault(used, set()).add(place)
        found: set[str] = set()
        waiting = [start]
        while waiting:
            for user in self.users.get(waiting.pop(), set()) - found:
                found.add(user)
                waiting.append(user)
        return found


def area(reference: str, sheet: str) -> list[list[str]]:
    """The places of a cell or a range, row by row."""
    if "." in reference:
        sheet, reference = reference.split(".")
    first, _, last = reference.partition(":")
    (_, top, left), (_, bottom, right) = (Worksheet.at(f"{sheet}.{one}") for one in (first, last or first))
    return [
        [f"{sheet}.{column_letters(column)}{row}" for column in range(left, right + 1)]
        for row in range(top, bottom + 1)
    ]


PICKS = ("IF", "IFERROR", "INDEX")
"""What hands on a cell, an empty one too: of a 0 from there the add-in does not say that it is a number."""


class Working:
    """The working of one formula."""

    def __init__(self, worksheet: Worksheet, sheet: str) -> None:
        self.worksheet, self.sheet = worksheet, sheet

    def of(self, tree: Any) -> Any:
        kind = tree[0]
        if kind == "value":
            return tree[1]
        if kind == "cell":
            rows = [[self.worksheet.shows(place) for place in row] for row in area(tree[1], self.sheet)]
            return rows if ":" in tree[1] else rows[0][0]
        if kind == "sign":
            return signed(tree[1], self.of(tree[2]), self.of(tree[3]))
        name, arguments = tree[1], tree[2]
        if name == "IF":
            chosen = 1 if truth(self.of(arguments[0])) else 2
            return self.of(arguments[chosen]) if chosen < len(arguments) else False
        if name in ("IFERROR", "ISERROR"):
            try:
                value = self.of(arguments[0])
            except CellError:
                return True if name == "ISERROR" else self.of(arguments[1])
            return False if name == "ISERROR" else value
        values = [self.of(one) for one in arguments]
        if name in CALLS:
            if any(one[0] == "call" and one[1] in PICKS and value == 0.0 for one, value in zip(arguments, values)):
                raise CellError("a 0 that may be an empty cell")
            return answer(CALLS[name], values)
        return NATIVE[name](*values)


def truth(value: Any) -> bool:
    if isinstance(value, str):
        raise CellError("a text where yes or no is asked")
    return bool(value)


def number(value: Any) -> float:
    if isinstance(value, str):
        raise CellError("a text where a number is needed")
    return float(value or 0.0)


def signed(sign: str, left: Any, right: Any) -> Any:
    if sign == "&":
        return shown(left) + shown(right)
    if sign in BINDS[0]:
        return compared(sign, left, right)
    one, other = number(left), number(right)
    if sign == "/" and other == 0.0:
        raise CellError("divided by nothing")
    return {"+": one + other, "-": one - other, "*": one * other, "/": one / other if other else 0.0}[sign]


def compared(sign: str, left: Any, right: Any) -> bool:
    if left is None:
        left = "" if isinstance(right, str) else 0.0
    if right is None:
        right = "" if isinstance(left, str) else 0.0
    if isinstance(left, str) != isinstance(right, str):
        left, right = isinstance(left, str), isinstance(right, str)
    elif isinstance(left, str):
        left, right = left.lower(), right.lower()
    return bool(
        {
            "=": left == right,
            "<>": left != right,
            "<": left < right,
            ">": left > right,
            "<=": left <= right,
            ">=": left >= right,
        }[sign]
    )


def shown(value: Any) -> str:
    if value is None:
        return ""
    return value if isinstance(value, str) else f"{value:.15g}"


def flat(values: Iterable[Any]) -> list[Any]:
    return [one for value in values for row in (value if isinstance(value, list) else [[value]]) for one in row]


def numbers(values: Iterable[Any]) -> list[float]:
    return [float(one) for one in flat(values) if isinstance(one, (float, int)) and not isinstance(one, bool)]


def index(rows: Any, row: float, column: float = 0.0) -> Any:
    chosen = rows[int(row) - 1 : int(row)] if row else rows
    chosen = [line[int(column) - 1 : int(column)] for line in chosen] if column else chosen
    if not chosen or not chosen[0]:
        raise CellError("beyond the table")
    return chosen if not (row and column) else chosen[0][0]


def match(wanted: Any, rows: Rows, _: float) -> float:
    values = [str(one).lower() for one in flat([rows])]
    if str(wanted).lower() not in values:
        raise CellError("not in the table")
    return float(values.index(str(wanted).lower()) + 1)


def rounded(value: Any, digits: float) -> float:
    scale = 10.0 ** int(digits)
    return math.floor(abs(number(value)) * scale + 0.5) / scale * math.copysign(1.0, number(value))


def not_there() -> Any:
    raise CellError("#N/A")


def product(left: Any, right: Any) -> float:
    pairs = zip(flat([left]), flat([right]), strict=True)
    return math.fsum(
        float(one) * float(other) for one, other in pairs if isinstance(one, float) and isinstance(other, float)
    )


NATIVE: dict[str, Callable[..., Any]] = {
    "ABS": lambda value: abs(number(value)),
    "AND": lambda *values: all(map(truth, flat(values))),
    "OR": lambda *values: any(map(truth, flat(values))),
    "NOT": lambda value: not truth(value),
    "INT": lambda value: float(math.floor(number(value))),
    "ISNUMBER": lambda value: isinstance(value, float),
    "LEFT": lambda text, count: shown(text)[: int(count)],
    "MIN": lambda *values: min(map(number, values)),
    "COUNT": lambda *values: float(len(numbers(values))),
    "SUM": lambda *values: math.fsum(numbers(values)),
    "SUMPRODUCT": product,
    "COUNTIF": lambda rows, wanted: float(sum(one == wanted for one in flat([rows]))),
    "ROUND": rounded,
    "ROUNDUP": lambda value, _: float(math.ceil(number(value))),
    "TEXT": lambda value, form: f"{number(value):.{len(form.partition('.')[2])}f}",
    "INDEX": index,
    "MATCH": match,
    "NA": not_there,
}


# What the add-in's functions must give.


def requested(values: list[Any]) -> list[tuple[str, Any]]:
    """Names with their values, from single pairs and blocks; what is empty is left out."""
    found: list[tuple[str, Any]] = []
    at = 0
    while at < len(values):
        block = values[at]
        if isinstance(block, list) and len(block[0]) == 2:
            found += [(name, value) for name, value in block]
            at += 1
        else:
            value = values[at + 1]
            value = listed(value) if block in LISTS else value
            name = block[0][0] if isinstance(block, list) else block
            found.append((name, value[0][0] if isinstance(value, list) and len(value) == len(value[0]) == 1 else value))
            at += 2
    return [(name, value) for name, value in found if name not in (None, "") and value not in (None, "")]


def listed(rows: Rows) -> tuple[str, ...]:
    """The rows of a list in JSON, one by one; the range has their names in its first row."""
    found = [
        {name: value for name, value in zip(rows[0], row, strict=True) if value not in (None, "")} for row in rows[1:]
    ]
    return tuple(json.dumps(row) for row in found if row)


def once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    given = dict(pairs)
    if len(given) < len(pairs):
        raise CellError("given twice")
    return given


@cache
def places(function: str) -> dict[str, tuple[str, str]]:
    """Where each output of a function stands in its result."""
    outputs = json.loads(_carb.described(function))["outputs"]
    return {"_".join(filter(None, (out["noun"], out["name"]))): (out["noun"], out["name"]) for out in outputs}


def answer(function: str, values: list[Any]) -> Any:
    wanted = values[0][0][0] if isinstance(values[0], list) else values[0]
    given = once(requested(values[1:]))
    if wanted not in places(function):
        raise CellError(f"no output {wanted}")
    ranges = {name: value for name, value in given.items() if isinstance(value, list)}
    if not ranges:
        return one_answer(function, wanted, tuple(given.items()))
    height, width = (max(size) for size in zip(*((len(rows), len(rows[0])) for rows in ranges.values()), strict=True))
    return [[element(function, wanted, given, row, column) for column in range(width)] for row in range(height)]


def element(function: str, wanted: str, given: dict[str, Any], row: int, column: int) -> Any:
    own = {
        name: value[row % len(value)][column % len(value[0])] if isinstance(value, list) else value
        for name, value in given.items()
    }
    return one_answer(function, wanted, tuple(own.items()))


@cache
def one_answer(function: str, wanted: str, given: tuple[tuple[str, Any], ...]) -> float:
    flags = {"true": True, "false": False}
    asked = {name: flags.get(str(value), value) if name in FLAGS else value for name, value in given}
    try:
        result = getattr(carb, function)(**asked)
    except carb.CarbError as error:
        raise CellError(str(error)) from None
    noun, name = places(function)[wanted]
    return float(getattr(getattr(result, noun) if noun else result, name))


@cache
def whole(name: str, pairs: tuple[tuple[str, Any], ...]) -> Any:
    """What the library says of a request, in JSON."""
    inner = "".join(f", {json.dumps(key)}: {as_json(value)}" for key, value in pairs)
    return json.loads(_carb.json(name, f'{{"carb": 1{inner}}}'))


def as_json(value: Any) -> str:
    return f"[{', '.join(value)}]" if isinstance(value, tuple) else json.dumps(value)


def cautions(function: str, *values: Any) -> str:
    found = whole(function.lower(), tuple(requested(list(values))))
    if "error" in found:
        # A package that is full, and a pressure beyond every package, are dangers.
        return f"{'DANGER' if found['error']['code'] in (-15, -16) else 'Error'}: {found['error']['text']}"
    return "\n".join(mark + one["text"] for level, mark in LEVELS for one in found["cautions"] if one["level"] == level)


def sources(function: str, *values: Any) -> str:
    found = whole(function.lower(), tuple(requested(list(values))))
    if "error" in found:
        raise CellError(found["error"]["text"])
    return "\n".join(source["citation"] for source in found["sources"])


def table(name: str, *values: Any) -> Rows:
    found = whole(name, tuple(requested(list(values))))
    if "error" in found:
        raise CellError(found["error"]["text"])
    columns = [column["name"] for column in json.loads(_carb.described(name))["columns"]]
    rows = [[row.get(column) for column in columns] for row in found["rows"]]
    return [columns, *([("" if one is None else one) for one in row] for row in rows)]


def convert(value: Any, source: Any, target: str) -> float:
    if not isinstance(value, float) or not isinstance(source, str):
        raise CellError("no number to convert, or no name of its unit")
    try:
        return float(carb.convert(value, unit(source), unit(target)))
    except carb.CarbError as error:
        raise CellError(str(error)) from None


@cache
def unit(name: str) -> str:
    """The unit of a name: the longest end of it that is one."""
    units = {row.name for row in carb.units()}
    ends = [name[at:] for at in range(len(name)) if at == 0 or name[at - 1] == "_"]
    found = next((end for end in ends if end in units), None)
    if found is None:
        raise CellError(f"no unit in {name}")
    return found


NATIVE |= {
    "CARB.CALC.CARBCAUTIONS": cautions,
    "CARB.CALC.CARBSOURCES": sources,
    "CARB.CALC.CARBTABLE": table,
    "CARB.CALC.CARBCONVERT": convert,
    "CARB.CALC.CARBVERSION": lambda: _carb.__version__,
}
