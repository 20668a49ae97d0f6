#!/usr/bin/python3
"""A real LibreOffice, headless, in a profile of its own: what stands in the cells of a workbook once all is worked out.

LibreOffice brings its own Python, which alone knows `uno`; so this file is a program for that one (Debian's
/usr/bin/python3), and the tests, which know carb, talk to it in JSON: `office.py < job.json > found.json`.

A job is {"folder": where the profile may lie, "addin": an .oxt or null, "documents": [...]}. A document is {"path": a
workbook, or null for an empty one, "runs": [{"set": {"Keg.B4": 2.5 | "text" | "=formula" | "{=formula}" | null}}],
"names": {"name": "$Keg.$B$4"}, "pdf": a path or null, "save": a path or null}. Each run sets cells (null empties one;
it stays so for the runs that follow; an array formula goes into "Keg.B4:C7"), works everything out anew, and gives
{"Sheet.A1": [formula, value, text, error]} of every cell that is not empty; a cell without an error has error 0. A run
with "as_it_comes" works out only what changed, one cell after another, as for somebody who types; "copy" in a run, of
pairs of cells, then copies the first of each to the second. Where a document is "quick", no text of numbers is told.
Instead of a document: {"described": true} gives what the function wizard says of every function, {"calls": [[name,
arguments], ...]} what functions give without a document, null for an error.
"""

import json
import os
import re
import shutil
import subprocess
import sys
import time
from pathlib import Path

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.sheet.CellFlags import DATETIME, FORMULA, STRING, VALUE
from com.sun.star.table import CellAddress

ATTEMPTS = 240
COLUMN = re.compile(r"(.+\.[A-Z]+)(\d+)")
# LibreOffice's Python takes its standard library from beside the first python3 of the path: that has to be its own.
OWN = {name: value for name, value in os.environ.items() if name not in ("PYTHONPATH", "PYTHONHOME", "VIRTUAL_ENV")}
OWN["PATH"] = f"/usr/bin:/bin:{OWN.get('PATH', '')}"


def environment(folder):
    """Options that keep LibreOffice and its extensions away from everything else on the machine."""
    return [
        f"-env:UserInstallation={(folder / 'profile').as_uri()}",
        f"-env:UNO_SHARED_PACKAGES_CACHE={(folder / 'shared').as_uri()}",
    ]


def install(addin, folder):
    subprocess.run(
        ["unopkg", "add", "--shared", "-f", str(addin), *environment(folder)],
        check=True,
        stdout=subprocess.DEVNULL,
        env=OWN,
    )


class Office:
    """LibreOffice, started for one job."""

    def __init__(self, folder):
        pipe = f"carb{folder.name}"
        quiet = ["--headless", "--norestore", "--nologo", "--nolockcheck"]
        accept = f"--accept=pipe,name={pipe};urp;"
        self.process = subprocess.Popen(
            ["soffice", *quiet, accept, *environment(folder)],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            env=OWN,
        )
        local = uno.getComponentContext()
        resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
        for _ in range(ATTEMPTS):
            try:
                context = resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
                break
            except Exception:
                time.sleep(0.25)
        else:
            self.process.kill()
            raise SystemExit("LibreOffice did not start")
        self.context = context
        self.desktop = self.service("com.sun.star.frame.Desktop")

    def service(self, name):
        return self.context.ServiceManager.createInstanceWithContext(name, self.context)

    def open(self, path):
        hidden = PropertyValue("Hidden", 0, True, 0)
        address = Path(path).resolve().as_uri() if path else "private:factory/scalc"
        return self.desktop.loadComponentFromURL(address, "_blank", 0, (hidden,))

    def close(self):
        try:
            self.desktop.terminate()
        except Exception:
            pass
        self.process.wait()


def cell(document, address):
    sheet, place = address.rsplit(".", 1)
    return document.Sheets.getByName(sheet).getCellRangeByName(place)


def put(document, address, value):
    target = cell(document, address)
    if value is None:
        target.String = ""
    elif isinstance(value, str) and value.startswith("{="):
        target.setArrayFormula(value[1:-1])
    elif isinstance(value, str) and value.startswith("="):
        target.Formula = value
    elif isinstance(value, str):
        target.String = value
    else:
        target.Value = value


def column_name(index):
    name = ""
    index += 1
    while index:
        index, rest = divmod(index - 1, 26)
        name = chr(ord("A") + rest) + name
    return name


def cells(document, quick):
    found = {}
    for sheet in document.Sheets:
        for block in sheet.queryContentCells(VALUE | DATETIME | STRING | FORMULA):
            at = block.RangeAddress
            for row, (formulas, values) in enumerate(zip(block.getFormulaArray(), block.getDataArray(), strict=True)):
                for column, (formula, value) in enumerate(zip(formulas, values, strict=True)):
                    one = quickly(value) if quick else None
                    one = one or read(block.getCellByPosition(column, row))
                    place = f"{sheet.Name}.{column_name(at.StartColumn + column)}{at.StartRow + row + 1}"
                    found[place] = [formula, *one]
    return found


def quickly(value):
    """A cell by its value alone; None where that is an error."""
    if isinstance(value, str):
        return [0.0, value, 0]
    return None if value is None else [value, "", 0]


def read(cell):
    error = cell.getError()
    return [None if error else cell.Value, cell.String, error]


def put_all(document, values):
    """Sets cells; formulas that stand below one another at once, which is much faster."""
    columns = {}
    for address, value in values.items():
        column = COLUMN.fullmatch(address) if isinstance(value, str) and value.startswith("=") else None
        if column:
            columns.setdefault(column[1], {})[int(column[2])] = value
        else:
            put(document, address, value)
    for column, formulas in columns.items():
        rows = sorted(formulas)
        starts = [at for at, row in enumerate(rows) if at == 0 or rows[at - 1] != row - 1]
        for start, end in zip(starts, [*starts[1:], len(rows)], strict=True):
            block = cell(document, f"{column}{rows[start]}:{column.rpartition('.')[2]}{rows[end - 1]}")
            block.setFormulaArray(tuple((formulas[row],) for row in rows[start:end]))


def worked(document, run, quick):
    """What stands in the cells after a run."""
    at_once = not run.get("as_it_comes")
    document.enableAutomaticCalculation(not at_once)
    if at_once:
        put_all(document, run.get("set", {}))
        document.calculateAll()
    else:
        for address, value in run.get("set", {}).items():
            put(document, address, value)
            cell(document, address).getDataArray()
    document.enableAutomaticCalculation(True)
    for source, target in run.get("copy", ()):
        first, second = cell(document, source), cell(document, target)
        first.Spreadsheet.copyRange(second.CellAddress, first.RangeAddress)
    return cells(document, quick)


def runs(office, wanted):
    document = office.open(wanted.get("path"))
    for name, content in wanted.get("names", {}).items():
        document.NamedRanges.addNewByName(name, content, CellAddress(), 0)
    found = [worked(document, run, wanted.get("quick")) for run in wanted.get("runs", [{}])]
    for path, form in ((wanted.get("pdf"), "calc_pdf_Export"), (wanted.get("save"), "calc8")):
        if path:
            document.storeToURL(Path(path).resolve().as_uri(), (PropertyValue("FilterName", 0, form, 0),))
    document.close(True)
    return found


def described(office):
    """Every function: its name, its text, and names and texts of its arguments."""
    found = []
    for function in office.service("com.sun.star.sheet.FunctionDescriptions"):
        said = {one.Name: one.Value for one in function}
        arguments = [[one.Name, one.Description] for one in said["Arguments"] or ()]
        found.append([said["Name"], said["Description"], arguments])
    return found


def calls(office, wanted):
    access = office.service("com.sun.star.sheet.FunctionAccess")
    found = []
    for name, arguments in wanted:
        try:
            found.append(access.callFunction(name, tuple(arguments)))
        except Exception:
            found.append(None)
    return found


def told(office, wanted):
    if wanted.get("described"):
        return described(office)
    return calls(office, wanted["calls"]) if "calls" in wanted else runs(office, wanted)


def answer(job):
    folder = Path(job["folder"])
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    if job.get("addin"):
        install(job["addin"], folder)
    office = Office(folder)
    try:
        return [told(office, wanted) for wanted in job["documents"]]
    finally:
        office.close()


if __name__ == "__main__":
    json.dump(answer(json.load(sys.stdin)), sys.stdout)
