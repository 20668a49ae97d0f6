#!/usr/bin/python3
"""A real LibreOffice, headless, in a profile of its own: what stands in the cells of a workbook once all is worked out.

LibreOffice brings its own Python, which alone knows `uno`; so this file is a program for that one (Debian's
/usr/bin/python3), and the tests, which know carb, talk to it in JSON: `office.py < job.json > found.json`.

A job is {"folder": where the profile may lie, "addin": an .oxt or null, "documents": [...]}. A document is {"path": a
workbook, or null for an empty one, "runs": [{"set": {"Keg.B4": 2.5 | "text" | "=formula" | null}}, ...], "pdf": a path or
null}. Each run sets cells (null empties one; it stays so for the runs that follow), works everything out anew, and gives
{"Sheet.A1": [formula, value, text, error]} of every cell that is not empty; a cell without an error has error 0.
"""

import json
import os
import shutil
import subprocess
import sys
import time
from pathlib import Path

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.table.CellContentType import EMPTY

ATTEMPTS = 240
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
        self.desktop = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)

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


def cells(document):
    found = {}
    for sheet in document.Sheets:
        cursor = sheet.createCursor()
        cursor.gotoEndOfUsedArea(False)
        last = cursor.RangeAddress
        for row in range(last.EndRow + 1):
            for column in range(last.EndColumn + 1):
                one = sheet.getCellByPosition(column, row)
                if one.Type != EMPTY:
                    error = one.getError()
                    place = f"{sheet.Name}.{column_name(column)}{row + 1}"
                    found[place] = [one.Formula, None if error else one.Value, one.String, error]
    return found


def answer(job):
    folder = Path(job["folder"])
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    if job.get("addin"):
        install(job["addin"], folder)
    office = Office(folder)
    try:
        found = []
        for wanted in job["documents"]:
            document = office.open(wanted.get("path"))
            runs = []
            for run in wanted.get("runs", [{}]):
                for address, value in run.get("set", {}).items():
                    put(document, address, value)
                document.calculateAll()
                runs.append(cells(document))
            if wanted.get("pdf"):
                export = PropertyValue("FilterName", 0, "calc_pdf_Export", 0)
                document.storeToURL(Path(wanted["pdf"]).resolve().as_uri(), (export,))
            found.append(runs)
            document.close(True)
        return found
    finally:
        office.close()


if __name__ == "__main__":
    json.dump(answer(json.load(sys.stdin)), sys.stdout)
