"""A sheet as it is made: inputs, workings and results, each cell with its formula and with the value that the library
gives it. The value is what viewers show before anything is worked out; tests believe none of them."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from math import isnan, nan
from typing import Any

from carb import _carb

from .core import EQUATIONS, SLACK, UNITS, Equation, convert, first_unit, kernel, limits

Number = float


@dataclass(frozen=True)
class Node:
    """A quantity: where it stands (or how it is written), what it is, and its value in its unit."""

    written: str
    unit: str
    value: float
    label: str = ""


@dataclass
class Cell:
    """A cell: a text, a number or a formula, and how it looks."""

    content: Any
    look: str
    value: Any = None
    merged: int = 0
    choices: Any = None


@dataclass
class Input:
    """An input of a sheet: where it and its unit stand."""

    name: str
    cell: str
    unit_cell: str | None
    value: Any
    unit: str | None
    choices: Any
    limits: tuple[float, float] | None


def address(row: int, column: int) -> str:
    return f"{'ABCDEFGHIJKLMNOPQRSTUVWXYZ'[column]}{row + 1}"


def as_unit(written: str, source: str, target: str) -> str:
    """A quantity in another unit, by the factors on the sheet of units."""
    if source == target or not source or not target:
        return written
    a, b = UNITS[source], UNITS[target]
    if (a.scale, a.offset) == (b.scale, b.offset):
        return written
    text = written
    if a.scale != 1:
        text = f"{text}*scale_{source}"
    if a.offset:
        text = f"{text}+offset_{source}"
    if b.offset:
        text = f"{text}-offset_{target}"
    if b.scale != 1:
        text = f"({text})/scale_{target}" if a.offset or b.offset else f"{text}/scale_{target}"
    return f"({text})"


def in_unit(node: Node, unit: str) -> Node:
    if not unit or node.unit == unit:
        return node
    return Node(as_unit(node.written, node.unit, unit), unit, convert(node.value, node.unit, unit), node.label)


def written_number(value: float) -> str:
    return repr(int(value)) if value == int(value) and abs(value) < 1e15 else repr(value)


def constant(value: float, unit: str = "") -> Node:
    return Node(written_number(value), unit, value)


def fitted(name: str, symbols: dict[str, Node | float]) -> tuple[Equation, dict[str, Node]]:
    """The symbols of an equation in its own units."""
    equation = EQUATIONS[name]
    wanted = {symbol.name for symbol in equation.inputs}
    if wanted != set(symbols):
        raise ValueError(f"{name} takes {sorted(wanted)}, not {sorted(symbols)}")
    units = {symbol.name: symbol.unit for symbol in equation.inputs}
    nodes = {key: node if isinstance(node, Node) else constant(node, units[key]) for key, node in symbols.items()}
    return equation, {key: in_unit(node, units[key]) for key, node in nodes.items()}


def inline(name: str, **symbols: Node | float) -> Node:
    """An equation written out where it is needed."""
    equation, nodes = fitted(name, symbols)
    text = equation.worksheet.format_map({key: node.written for key, node in nodes.items()})
    value = kernel(name, [nodes[symbol.name].value for symbol in equation.inputs])
    return Node(f"({text})", equation.result.unit, value)


def is_formula(content: Any) -> bool:
    """Whether a cell is worked out; a label may begin with an equals sign and a space."""
    return isinstance(content, str) and content.startswith("=") and not content.startswith("= ")


def rounded_lines(text: str, width: float) -> int:
    return sum(max(1, math.ceil(len(line) / width)) for line in text.split("\n"))


@dataclass
class Sheet:
    """A sheet of use: columns A label, B value, C unit, D and E a second value and its unit, F notes."""

    name: str
    title: str
    given: dict[str, tuple[Any, str | None]] = field(default_factory=dict)
    cells: dict[tuple[int, int], Cell] = field(default_factory=dict)
    inputs: list[Input] = field(default_factory=list)
    results: dict[str, tuple[str, str, float]] = field(default_factory=dict)
    heights: dict[int, float] = field(default_factory=dict)
    row: int = 0
    converted: dict[tuple[str, str], Node] = field(default_factory=dict)
    pending: list[Callable[[], None]] = field(default_factory=list)
    notes: list[tuple[str, str]] = field(default_factory=list)
    widths: tuple[float, ...] = (36, 13, 11, 13, 11, 46)
    landscape: bool = False
    pages: int = 1
    repeat: int | None = None
    printed_to: int | None = None
    used: list[Equation] = field(default_factory=list)

    def put(self, row: int, column: int, content: Any, look: str, value: Any = None, merged: int = 0) -> str:
        self.cells[row, column] = Cell(content, look, value, merged)
        return address(row, column)

    def head(self, lead: str, warning: str = "") -> None:
        last = len(self.widths) - 1
        self.put(0, 0, self.title, "title", merged=last)
        self.heights[0] = 34
        self.row = 1
        for text, look in ((lead, "lead"), (warning, "lead danger")):
            if text:
                self.put(self.row, 0, text, look, merged=last)
                self.heights[self.row] = 15.5 * rounded_lines(text, sum(self.widths) * 0.98) + 5
                self.row += 1
        self.row += 1

    def section(self, *texts: str) -> None:
        """A bar with the heads of the columns; `>` sets one to the right."""
        for column in range(len(self.widths)):
            text = texts[column] if column < len(texts) else ""
            right = text.startswith(">")
            look = "section right" if right else "section unit" if text == "unit" else "section"
            self.put(self.row, column, text.removeprefix(">"), look)
        self.heights[self.row] = 18
        self.row += 1

    def text(self, text: str, look: str = "text") -> None:
        self.put(self.row, 0, text, look, merged=len(self.widths) - 1)
        self.heights[self.row] = 14 * rounded_lines(text, sum(self.widths) * 1.1) + 3
        self.row += 1

    def wrapped(self, row: int, column: int, text: str, look: str, merged: int = 0) -> None:
        width = sum(self.widths[column : (merged or column) + 1])
        self.put(row, column, text, look, merged=merged)
        fine = look.startswith(("small", "work", "source"))
        each, fitting = (11.5, 1.2) if fine else (13, 1.0)
        self.heights[row] = max(self.heights.get(row, 15), each * rounded_lines(text, width * fitting) + 3)

    def input(
        self,
        name: str,
        label: str,
        function: str,
        parameter: str,
        value: float,
        unit: str,
        units: Iterable[str],
        note: str = "",
    ) -> Node:
        """An input with its unit beside it, and the limits within which the library answers."""
        value, unit = self.given.get(name, (value, unit))
        row = self.row
        self.row += 1
        first = first_unit(UNITS[next(iter(units))].dimension)
        dimension = UNITS[first].dimension
        low, high = limits(function, parameter)
        choices = [UNITS[each].printed for each in units]
        self.put(row, 0, label, "label")
        cell = self.put(row, 1, value, "input")
        printed = UNITS[unit].printed if unit in UNITS else unit
        several = len(choices) > 1
        unit_cell = self.put(row, 2, printed, "choice" if several else "unit")
        if several:
            self.cells[row, 2].choices = choices
        known = unit in UNITS and UNITS[unit].dimension == dimension
        scale = f"INDEX(scales_{dimension},MATCH({unit_cell},units_{dimension},0))"
        offset = f"INDEX(offsets_{dimension},MATCH({unit_cell},units_{dimension},0))"
        ends = []
        for column, end in ((3, low), (4, high)):
            text = as_si(written_number(end), first)
            formula = f"=IFERROR(({text}-{offset})/{scale},NA())" if several else end
            shown = convert(end, first, unit) if known else nan
            ends.append(self.put(row, column, formula, "limit", shown if several else None))
        number = isinstance(value, (int, float)) and not isinstance(value, bool) and known
        inside = number and _within(float(value), *(convert(end, first, unit) for end in (low, high)))
        kept = convert(float(value), unit, first) if inside else nan
        raw = f"({cell}*{scale}+{offset})" if several else cell
        back = back_from_si(raw, first) if several else raw
        self.inputs.append(Input(name, cell, unit_cell if several else None, value, unit, choices, (low, high)))
        node = Node(f"__{name}__", first, kept, label)
        # Where it is counted stands further down, with the working.
        here = (
            f"=IF(AND(ISNUMBER({cell}),NOT(ISLOGICAL({cell}))),IF(AND({cell}>={ends[0]}-slack*ABS({ends[0]}),"
            f"{cell}<={ends[1]}+slack*ABS({ends[1]})),{back},NA()),NA())"
        )
        self.counted.append((name, label, here, first, kept))
        row_note = note.replace('"', "'")
        self.heights[row] = 21
        self.put(
            row,
            5,
            f'=IF(ISNUMBER({node.written}),"{row_note}","no number between these two limits: nothing is answered")',
            "note",
            row_note if not isnan(kept) else "no number between these two limits: nothing is answered",
            merged=len(self.widths) - 1,
        )
        return node

    def choice(
        self, name: str, label: str, table: str, options: list[str], value: str, source: str = ""
    ) -> tuple[str, int]:
        """A choice from a list on the sheet of tables; where it stands, and which it is (-1 for none)."""
        value, _ = self.given.get(name, (value, None))
        row = self.row
        self.row += 1
        self.put(row, 0, label, "label")
        cell = self.put(row, 1, value, "choice", merged=2)
        names = source.removeprefix("=") or f"list_{table}"
        self.cells[row, 1].choices = options if source else f"={names}"
        self.inputs.append(Input(name, cell, None, value, None, options, None))
        where = next((at for at, option in enumerate(options) if same_text(option, value)), -1)
        good = "" if source else "its figures and source: sheet Tables"
        bad = "choose one of the list: nothing is answered"
        self.heights[row] = 21
        self.put(
            row,
            5,
            f'=IF(ISNUMBER(MATCH({cell},{names},0)),"{good}","{bad}")',
            "note",
            good if where >= 0 else bad,
            merged=len(self.widths) - 1,
        )
        return cell, where

    def looked_up(
        self, label: str, table: str, column: str, choice: tuple[str, int], values: list[float], unit: str
    ) -> Node:
        cell, where = choice
        formula = f"=IFERROR(INDEX(list_{table}_{column},MATCH({cell},list_{table},0)),NA())"
        value = values[where] if where >= 0 else nan
        return self.line(label, formula, value, unit, "looked up on the sheet Tables")

    def line(self, label: str, formula: str, value: float, unit: str, said: str = "", source: str = "") -> Node:
        """A line of the working."""
        row = self.row
        self.row += 1
        self.put(row, 0, label, "work label")
        cell = self.put(row, 1, formula, "work", value)
        self.put(row, 2, UNITS[unit].printed if unit in UNITS else unit, "work unit")
        self.wrapped(row, 3, said, "work text", merged=4)
        self.wrapped(row, 5, source, "work text")
        return Node(cell, unit if unit in UNITS else "", value, label)

    def working(self) -> None:
        """The working: what was read, and then every equation."""
        self.section("Working (not printed)", ">value", "unit", "formula", "", "source")
        for name, label, formula, unit, value in self.counted:
            node = self.line(f"{label}, as counted", formula, value, unit, "if it is a number within its limits")
            self.aliases[f"__{name}__"] = node.written

    def convertible(self, node: Node, unit: str) -> Node:
        """A quantity in the unit that a formula takes, on a line of its own."""
        if not unit or node.unit == unit:
            return node
        key = (node.written, unit)
        if key not in self.converted:
            there = in_unit(node, unit)
            label = node.label.removesuffix(", as counted")
            self.converted[key] = self.line(
                f"{label}, in {UNITS[unit].printed}", f"={there.written}", there.value, unit, "units: sheet Tables"
            )
        return self.converted[key]

    def step(
        self,
        name: str,
        label: str = "",
        *,
        unless: str = "",
        impossible: bool = False,
        remarks: bool = True,
        within: tuple[float, float] | None = None,
        strict: bool = False,
        needs: Node | None = None,
        **symbols: Node | float,
    ) -> Node:
        """An equation of the catalogue on a line, its symbols in its own units on lines above.

        There is no answer where `unless` holds (`impossible` says whether it does), where the result is not `within`
        its limits, where what it `needs` has none, and, if it is `strict`, outside the range of the source.
        """
        equation = EQUATIONS[name]
        units = {symbol.name: symbol.unit for symbol in equation.inputs}
        nodes = {
            key: self.convertible(node, units[key]) if isinstance(node, Node) else constant(node, units[key])
            for key, node in symbols.items()
        }
        fitted(name, dict(nodes))
        text = equation.worksheet.format_map({key: node.written for key, node in nodes.items()})
        value = kernel(name, [nodes[symbol.name].value for symbol in equation.inputs])
        if within:
            text = f"IF(OR({text}<{_edge(within[0], -1)},{text}>{_edge(within[1], 1)}),NA(),{text})"
            value = value if _within(value, *within) else nan
        if needs:
            text = f"IF(ISNUMBER({needs.written}),{text},NA())"
            value = nan if isnan(needs.value) else value
        if strict:
            for symbol in equation.inputs:
                written, known = nodes[symbol.name].written, nodes[symbol.name].value
                if symbol.bounded and not written[0].isdigit():
                    low, high = _edge(symbol.low, -1), _edge(symbol.high, 1)
                    text = f"IF(OR({written}<{low},{written}>{high}),NA(),{text})"
                    value = value if _within(known, symbol.low, symbol.high) else nan
            remarks = False
        return self._equation(
            equation, label, text, value, nodes, unless, impossible, equation.formula, remarks=remarks
        )

    def turned(self, name: str, symbol: str, label: str, value: float, **symbols: Node | float) -> Node:
        """An equation turned round for a symbol; `value` is what the library gives."""
        equation = EQUATIONS[name]
        text = _carb.turned(name, symbol)
        if text is None:
            raise ValueError(f"{name} cannot be turned round for {symbol}")
        known = {each.name: each for each in (*equation.inputs, equation.result)}
        nodes = {
            key: self.convertible(node, known[key].unit) if isinstance(node, Node) else constant(node, known[key].unit)
            for key, node in symbols.items()
        }
        written = text.format_map({key: node.written for key, node in nodes.items()})
        if any(isnan(node.value) for node in nodes.values()):
            value = nan
        said = f"{symbol} of {equation.formula}"
        node = self._equation(equation, label, written, value, {}, "", False, said, known[symbol].unit)
        self.range_notes(equation, {**nodes, symbol: node})
        return node

    def _equation(
        self,
        equation: Equation,
        label: str,
        text: str,
        value: float,
        nodes: dict[str, Node],
        unless: str,
        impossible: bool,
        said: str,
        unit: str | None = None,
        remarks: bool = True,
    ) -> Node:
        if unless:
            text = f"IF({unless.format_map({key: node.written for key, node in nodes.items()})},NA(),{text})"
            value = nan if impossible else value
        value = value if math.isfinite(value) else nan
        unit = equation.result.unit if unit is None else unit
        parts = ", ".join(f"{key} = {node.written}" for key, node in nodes.items() if not node.written[0].isdigit())
        node = self.line(
            label or equation.title,
            f"=IFERROR({text},NA())",
            value,
            unit or equation.result.printed,
            f"{said}" + (f"\n{parts}" if parts else ""),
            equation.cited,
        )
        if equation not in self.used:
            self.used.append(equation)
        if nodes and remarks:
            self.range_notes(equation, nodes)
        return node

    def range_notes(self, equation: Equation, nodes: dict[str, Node]) -> None:
        """What lies outside the range that the source states, to be said below the results."""
        for symbol in equation.inputs:
            node = nodes.get(symbol.name)
            if node is None or not symbol.bounded or node.written[0].isdigit():
                continue
            unit = f" {symbol.printed}" if symbol.printed else ""
            said = (
                f"{symbol.meaning} outside {symbol.low:g} to {symbol.high:g}{unit}, "
                f"where {equation.title} is stated to hold"
            )
            self.remark(said, node, symbol.low, symbol.high)

    def remark(self, said: str, node: Node, low: float, high: float) -> None:
        """What is to be said where a quantity lies outside its limits."""
        tests = []
        if low > -math.inf:
            tests.append(f"{node.written}<{_edge(low, -1)}")
        if high < math.inf:
            tests.append(f"{node.written}>{_edge(high, 1)}")
        if any((said, node.written) == (known[0], known[2]) for known in self.remarks):
            return
        out = not isnan(node.value) and not _within(node.value, low, high)
        formula = f"IF(ISNUMBER({node.written}),IF(OR({','.join(tests)}),1,0),0)"
        self.remarks.append((said, formula, node.written, out))

    def result(
        self, name: str, label: str, node: Node, units: tuple[str, ...], look: str = "0.00", note: str = ""
    ) -> None:
        """A result in one or two units; the cells are written once the working is done."""
        row = self.row
        self.row += 1
        self.put(row, 0, label, "result label")
        for at, unit in enumerate(units[:2]):
            there = in_unit(node, unit) if unit else node
            cell = self.put(row, 1 + 2 * at, f"={there.written}", f"result {look}", there.value)
            self.put(row, 2 + 2 * at, UNITS[unit].printed if unit else "", "result unit")
            self.results[f"{name}_{unit}" if unit else name] = (cell, unit, there.value)
        self.put(row, 5, note, "note", merged=len(self.widths) - 1)
        self.heights[row] = max(21, 12.5 * rounded_lines(note, self.widths[5] * 1.12) + 3)

    def __post_init__(self) -> None:
        self.counted: list[tuple[str, str, str, str, float]] = []
        self.aliases: dict[str, str] = {}
        self.remarks: list[tuple[str, str, str, bool]] = []
        # Of the chart: its grid, and the cells that tell where its source ends.
        self.grid: tuple[int, int, int, int] | None = None
        self.outside: dict[str, str] = {}

    def remark_block(self, row: int, rows: int) -> None:
        """The remarks that are true, one below the other from `row` on."""
        if not self.remarks:
            return
        self.section("Where the sources hold", ">outside: 1", "", "remark")
        start = self.row
        for said, formula, _, out in self.remarks:
            self.put(self.row, 0, "", "work label")
            self.put(self.row, 1, f"={formula}", "work count", float(out))
            self.put(self.row, 2, f"=SUM(B${start + 1}:B{self.row + 1})*B{self.row + 1}", "work count", 0.0)
            self.wrapped(self.row, 3, said, "work text", merged=5)
            self.row += 1
        end = self.row
        running = 0
        true = []
        for at, (said, _, _, out) in enumerate(self.remarks):
            running += out
            self.cells[start + at, 2].value = float(running if out else 0)
            if out:
                true.append(said)
        for at in range(rows):
            found = f"MATCH({at + 1},$C${start + 1}:$C${end},0)"
            formula = f'=IF(ISNUMBER({found}),INDEX($D${start + 1}:$D${end},{found}),"")'
            if at == rows - 1:
                formula = (
                    f'=IF(SUM($B${start + 1}:$B${end})>{rows},"and more: see below, where the sources hold",'
                    f"{formula[1:]})"
                )
            text = true[at] if at < len(true) else ""
            if at == rows - 1 and len(true) > rows:
                text = "and more: see below, where the sources hold"
            self.put(row + at, 0, formula, "remark", text, merged=len(self.widths) - 1)

    def equation_block(self, row: int, rows: int) -> None:
        """The equations that the sheet goes by, each with its source."""
        if rows != len(self.used) + 1:
            raise ValueError(f"{self.name}: keep {len(self.used) + 1} rows for its equations, not {rows}")
        end, self.row = self.row, row
        self.section("By these equations", "formula", "", "", "", "source")
        for equation in self.used:
            self.wrapped(self.row, 0, equation.title, "small")
            self.wrapped(self.row, 1, equation.formula, "small formula", merged=4)
            self.wrapped(self.row, 5, equation.cited, "small", merged=len(self.widths) - 1)
            self.row += 1
        self.printed_to = self.row - 1
        self.row = end

    def settle(self) -> None:
        """Names of inputs become the cells in which they are counted."""
        for cell in self.cells.values():
            if isinstance(cell.content, str) and "__" in cell.content:
                for alias, written in self.aliases.items():
                    cell.content = cell.content.replace(alias, written)


def as_si(written: str, unit: str) -> str:
    known = UNITS[unit]
    text = written if known.scale == 1 else f"{written}*scale_{unit}"
    return f"{text}+offset_{unit}" if known.offset else text


def back_from_si(written: str, unit: str) -> str:
    known = UNITS[unit]
    text = f"({written}-offset_{unit})" if known.offset else written
    return text if known.scale == 1 else f"{text}/scale_{unit}"


def same_text(one: str, other: Any) -> bool:
    return isinstance(other, str) and one.lower() == other.lower()


def _edge(limit: float, side: int) -> str:
    """A limit with its slack, as it is written."""
    sign = "+" if side > 0 else "-"
    return f"{written_number(limit)}{sign}slack*{written_number(abs(limit))}"


def _within(value: float, low: float, high: float) -> bool:
    least = low if math.isinf(low) else low - SLACK * abs(low)
    most = high if math.isinf(high) else high + SLACK * abs(high)
    return least <= value <= most
