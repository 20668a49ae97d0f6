"""The workbook as a file: how its cells look, how it prints, what is locked."""

from __future__ import annotations

import datetime
from math import isnan
from pathlib import Path
from typing import Any

import xlsxwriter
from chart import chart
from check import Check
from equations import Equations
from jobs import JOBS
from paper import Sheet, is_formula
from readme import readme
from tables import Tables

MADE = datetime.datetime(2024, 1, 1)
"""A date of no meaning, so that the same workbook is the same bytes."""

FONT = "Calibri"
DEEP, PALE, INK, FAINT = "#234B5A", "#E6EEF0", "#1B1B1B", "#667378"
GIVEN, EDGE = "#FFF3CF", "#C9A227"
RED, GREEN = "#A61B1B", "#1E6B3A"

PLAIN: dict[str, Any] = {"font_name": FONT, "font_size": 10, "font_color": INK, "valign": "vcenter"}
TEXT = {"text_wrap": True, "align": "left"}
OPEN = {"bg_color": GIVEN, "border": 1, "border_color": EDGE, "locked": False}

LOOKS: dict[str, dict[str, Any]] = {
    "title": {"font_size": 18, "bold": True, "font_color": DEEP, "align": "left"},
    "lead": {**TEXT, "valign": "top", "font_size": 11},
    "lead danger": {**TEXT, "valign": "top", "font_size": 11, "bold": True, "font_color": RED},
    "section": {"bold": True, "bg_color": DEEP, "font_color": "#FFFFFF", "align": "left"},
    "section unit": {"bold": True, "bg_color": DEEP, "font_color": "#FFFFFF", "align": "left", "indent": 1},
    "section right": {"bold": True, "bg_color": DEEP, "font_color": "#FFFFFF", "align": "right"},
    "text": TEXT,
    "small": {**TEXT, "font_size": 8.5, "indent": 1},
    "small right": {"font_size": 8.5, "align": "right", "num_format": "0.0"},
    "small formula": {**TEXT, "font_size": 8.5, "font_name": "Courier New"},
    "danger": {**TEXT, "font_color": RED, "bold": True},
    "caution": {"font_color": "#8A5A00", "bold": True, "valign": "top"},
    "label": {"align": "left", "font_size": 12},
    "input": {**OPEN, "num_format": "General", "align": "right", "font_size": 12, "bold": True},
    "input free": {**OPEN, "num_format": "General", "align": "right"},
    "choice": {**OPEN, "align": "left", "font_size": 12, "indent": 1},
    "unit": {"align": "left", "indent": 1},
    "limit": {"font_color": FAINT, "num_format": "0.0##", "align": "right"},
    "note": {**TEXT, "font_color": FAINT, "font_size": 9, "indent": 1},
    "remark": {**TEXT, "font_color": RED, "bold": True},
    "result label": {**TEXT, "bold": True, "bg_color": PALE, "font_size": 12},
    "result unit": {"bg_color": PALE, "font_size": 12, "indent": 1},
    "work": {"font_size": 9, "font_color": FAINT, "num_format": "General", "align": "right"},
    "work count": {"font_size": 9, "font_color": FAINT, "num_format": "0", "align": "right"},
    "work label": {**TEXT, "font_size": 9, "font_color": FAINT},
    "work unit": {"font_size": 9, "font_color": FAINT, "indent": 1},
    "work text": {**TEXT, "font_size": 8, "font_color": FAINT},
    "equation": {"bold": True, "bg_color": PALE, "font_color": DEEP},
    "formula": {**TEXT, "font_name": "Courier New", "font_size": 9},
    "symbol": {"bold": True, "align": "center"},
    "source": {**TEXT, "font_size": 8, "font_color": FAINT, "valign": "top"},
    "checked": {"font_size": 9, "num_format": "0.00000", "align": "right"},
    "limit free": {"font_color": FAINT, "num_format": "General", "align": "right"},
    "given": {"font_size": 9, "num_format": "General"},
    "exact": {"num_format": "General", "align": "right"},
    "verdict": {"bold": True, "font_color": GREEN, "align": "center"},
    "verdict big": {"bold": True, "font_color": GREEN, "font_size": 14, "align": "left"},
    "link": {"font_color": DEEP, "underline": 1, "bold": True},
    "grid corner": {"bg_color": DEEP, "font_color": "#FFFFFF", "font_size": 9},
    "grid said": {"bg_color": DEEP, "font_color": "#FFFFFF", "align": "center", "bold": True},
    "grid side": {"bold": True, "bg_color": PALE, "num_format": "0.0", "align": "center", "font_size": 12},
    "grid top": {"bold": True, "bg_color": PALE, "num_format": "0.0#", "align": "center", "font_size": 12},
    "grid even": {"num_format": "0.00", "align": "center", "font_size": 12},
    "grid odd": {"num_format": "0.00", "align": "center", "font_size": 12, "bg_color": "#F4F7F8"},
}


def _look(name: str) -> dict[str, Any]:
    if name.startswith("result ") and name not in LOOKS:
        return {
            **PLAIN,
            "bold": True,
            "bg_color": PALE,
            "align": "right",
            "font_size": 12,
            "num_format": name.removeprefix("result "),
        }
    return {**PLAIN, **LOOKS[name]}


class Book:
    """Every sheet of the workbook, in its order."""

    def __init__(self) -> None:
        self.jobs = {name: make() for name, make in JOBS.items()}
        self.chart = chart()
        self.equations = Equations()
        self.check = Check()
        self.tables = Tables()
        bottle, keg, *others = self.jobs.values()
        self.sheets = [
            readme(), bottle, keg, self.chart, *others, self.equations.sheet, self.check.sheet, self.tables.sheet,
        ]  # fmt: skip

    def write(self, path: Path) -> None:
        with xlsxwriter.Workbook(path) as book:
            book.set_properties({"title": "Carbonating and packaging: plain formulas", "created": MADE})
            book.set_calc_mode("auto")
            looks: dict[str, Any] = {}

            def look(name: str) -> Any:
                if name not in looks:
                    looks[name] = book.add_format(_look(name))
                return looks[name]

            pages = [(sheet, book.add_worksheet(sheet.name)) for sheet in self.sheets]
            for name, place in self.tables.names.items():
                book.define_name(name, place)
            for sheet, page in pages:
                _fill(sheet, page, look)
                _set_up(sheet, page, book)


def _fill(sheet: Sheet, page: Any, look: Any) -> None:
    for column, width in enumerate(sheet.widths):
        page.set_column(column, column, width)
    for row, height in sheet.heights.items():
        page.set_row(row, height)
    for (row, column), cell in sorted(sheet.cells.items()):
        style = look(cell.look)
        if cell.merged > column:
            page.merge_range(row, column, row, cell.merged, "", style)
        content = cell.content
        if cell.look == "link":
            page.write_url(row, column, content, style, cell.value)
        elif is_formula(content):
            value = cell.value
            if isinstance(value, float) and isnan(value):
                value = "#N/A"
            page.write_formula(row, column, content, style, value)
        elif content == "" or content is None:
            page.write_blank(row, column, None, style)
        elif isinstance(content, str):
            page.write_string(row, column, content, style)
        else:
            page.write_number(row, column, content, style)
        if cell.choices:
            page.data_validation(
                row,
                column,
                row,
                column,
                {
                    "validate": "list",
                    "source": cell.choices,
                    "error_title": "Not in the list",
                    "error_message": "Choose one of the list.",
                },
            )


def _set_up(sheet: Sheet, page: Any, book: Any) -> None:
    page.hide_gridlines(2)
    page.set_paper(9)
    page.set_margins(left=0.4, right=0.4, top=0.5, bottom=0.6)
    if sheet.landscape:
        page.set_landscape()
    page.fit_to_pages(1, sheet.pages)
    end = sheet.printed_to if sheet.printed_to is not None else max(row for row, _ in sheet.cells)
    page.print_area(0, 0, end, len(sheet.widths) - 1)
    if sheet.repeat is not None:
        page.repeat_rows(sheet.repeat)
    page.set_footer("&L&8plain formulas of the library carb: the maker's rating and local code decide&R&8&A, &P of &N")
    page.freeze_panes(1 if sheet.repeat is None else sheet.repeat + 1, 0)
    page.protect(
        "", {"select_locked_cells": True, "select_unlocked_cells": True, "format_columns": True, "format_rows": True}
    )
    last = max(row for row, _ in sheet.cells)
    alarm = book.add_format({"font_color": "#FFFFFF", "bg_color": RED, "bold": True})
    missing = book.add_format({"font_color": "#B0B0B0"})
    area = (0, 0, last, len(sheet.widths) - 1)
    if sheet.grid:
        _mark_outside(sheet, page, book)
    if sheet.name == "Check":
        page.conditional_format(*area, {"type": "text", "criteria": "begins with", "value": "FAIL", "format": alarm})
        page.conditional_format(
            *area, {"type": "text", "criteria": "begins with", "value": "SOMETHING", "format": alarm}
        )
    else:
        page.conditional_format(*area, {"type": "errors", "format": missing})
        wrong = book.add_format({"font_color": RED, "bold": True})
        page.conditional_format(
            *area, {"type": "text", "criteria": "containing", "value": "nothing is answered", "format": wrong}
        )
        page.conditional_format(
            *area, {"type": "text", "criteria": "begins with", "value": "outside the range", "format": wrong}
        )


def _mark_outside(sheet: Sheet, page: Any, book: Any) -> None:
    """What lies outside the range of the source, in red."""
    red = book.add_format({"font_color": RED, "italic": True})
    assert sheet.grid
    row, column, _, _ = sheet.grid
    first = f"{chr(ord('A') + column)}{row + 1}"
    side = f"$A{row + 1}"
    unit = f"MATCH({sheet.outside['unit']},units_Temperature,0)"
    fahrenheit = f"({side}*INDEX(scales_Temperature,{unit})+INDEX(offsets_Temperature,{unit})-offset_f)/scale_f"
    most = sheet.outside["most"]
    pinned = f"${most[0]}${most[1:]}"
    low, high = sheet.outside["low"], sheet.outside["high"]
    ends = f"{first}>{pinned}+slack,{fahrenheit}<{low}-slack*{low},{fahrenheit}>{high}+slack*{high}"
    test = f"=AND(ISNUMBER({first}),OR({ends}))"
    page.conditional_format(*sheet.grid, {"type": "formula", "criteria": test, "format": red})
