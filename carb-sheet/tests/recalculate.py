#!/usr/bin/python3
"""Many runs over one workbook in a real LibreOffice: whole sheets are read, and whole columns are set, at once, which
takes a thousandth of the time that cell after cell takes. `recalculate.py < job.json > found.json`, by the Python that
LibreOffice brings (see office.py).

A job is {"folder": where the profile may lie, "path": the workbook, "pdf": a path or null, "runs": [{"set": {"Keg.B4":
value}, "sheets": [...]}]}. Each run sets cells, which stay so, works out what depends on them (everything, before the
first), and gives for each sheet named {"values": rows of numbers and texts, null where there is an error; "errors":
{"B4": "NA" | "other"}}.
"""

import json
import shutil
import sys
from pathlib import Path

import office
from com.sun.star.beans import PropertyValue

AT_ONCE = 40
"""So many cells of a column are set together."""
PROBE = "probe of "


def used(sheet):
    cursor = sheet.createCursor()
    cursor.gotoEndOfUsedArea(False)
    last = cursor.RangeAddress
    return last.EndColumn, last.EndRow


def probe(document, name):
    """A sheet beside it that tells its errors: 1 where something is not available, 2 for any other error."""
    sheet = document.Sheets.getByName(name)
    column, row = used(sheet)
    document.Sheets.insertNewByName(PROBE + name, document.Sheets.Count)
    area = f"$'{name}'.A1:{office.column_name(column)}{row + 1}"
    probed = document.Sheets.getByName(PROBE + name).getCellRangeByPosition(0, 0, column, row)
    probed.setArrayFormula(f"=IF(ISNA({area});1;IF(ISERROR({area});2;0))")
    return sheet.getCellRangeByPosition(0, 0, column, row), probed


def read(area, probed):
    errors = {}
    for row, cells in enumerate(probed.getDataArray()):
        for column, kind in enumerate(cells):
            if kind:
                errors[f"{office.column_name(column)}{row + 1}"] = "NA" if kind == 1 else "other"
    return {"values": area.getDataArray(), "errors": errors}


def put(document, cells):
    columns = {}
    for address, value in cells.items():
        sheet, place = address.rsplit(".", 1)
        columns.setdefault((sheet, place[0]), {})[int(place[1:]) - 1] = value
    for (name, column), values in columns.items():
        if len(values) < AT_ONCE:
            for row, value in values.items():
                office.put(document, f"{name}.{column}{row + 1}", value)
            continue
        sheet = document.Sheets.getByName(name)
        area = sheet.getCellRangeByName(f"{column}1:{column}{used(sheet)[1] + 1}")
        formulas = [list(row) for row in area.getFormulaArray()]
        for row, value in values.items():
            formulas[row][0] = "" if value is None else value if isinstance(value, str) else repr(value)
        area.setFormulaArray(tuple(map(tuple, formulas)))


def answer(job):
    folder = Path(job["folder"])
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    # A copy, so that no lock is left beside the workbook.
    copy = folder / Path(job["path"]).name
    shutil.copy(job["path"], copy)
    program = office.Office(folder)
    try:
        document = program.open(copy)
        # Otherwise every cell that is set works everything out that depends on it.
        document.enableAutomaticCalculation(False)
        if job.get("pdf"):
            document.calculateAll()
            export = PropertyValue("FilterName", 0, "calc_pdf_Export", 0)
            document.storeToURL(Path(job["pdf"]).resolve().as_uri(), (export,))
        for name in document.Sheets.ElementNames:
            document.Sheets.getByName(name).unprotect("")
        areas = {name: probe(document, name) for name in document.Sheets.ElementNames}
        # No value that the file brings is kept; from here on only what a run changes is worked out.
        document.calculateAll()
        found = []
        for run in job["runs"]:
            put(document, run["set"])
            document.calculate()
            found.append({name: read(*areas[name]) for name in run["sheets"]})
        document.close(True)
        return found
    finally:
        program.close()


if __name__ == "__main__":
    json.dump(answer(json.load(sys.stdin)), sys.stdout)
