"""Builds the add-in for LibreOffice Calc: `python carb-sheet/addin/build.py target/release/libcarb.so target/carb.oxt`.

An .oxt is a zip. Its interface, its texts and its names are written here from the tables of the core, as the Python
module tells them; the library that it carries is the one given. The same inputs make the same bytes.
"""

from __future__ import annotations

import json
import platform
import sys
import zipfile
from pathlib import Path
from typing import Any

from carb import _carb
from companions import COMPANIONS
from interface import idl
from wizard import configuration, texts

HERE = Path(__file__).parent
ROOT = HERE.parents[1]
START_OF_ZIP = (1980, 1, 1, 0, 0, 0)
Entry = dict[str, Any]

DESCRIPTION = """\
<?xml version="1.0" encoding="UTF-8"?>
<description xmlns="http://openoffice.org/extensions/description/2006" xmlns:xlink="http://www.w3.org/1999/xlink">
 <identifier value="carb.calc"/>
 <version value="{version}"/>
 <display-name><name lang="en">carb: carbonating and packaging drinks</name></display-name>
 <publisher><name lang="en">The carb project</name></publisher>
 <extension-description><src lang="en" xlink:href="description.txt"/></extension-description>
</description>
"""
ABOUT = """\
Functions for carbonating and packaging beer, cider, mead and soft drinks: KEG_PRESSURE, PRIMING_SUGAR, PACKAGE_PRESSURE
and others, worked out by the library that lies inside. Licensed under either of MIT or Apache-2.0, at your choice.
Bottles can burst, kegs can be over-pressured, and CO2 in a closed room kills: read what CARB_CAUTIONS says. The maker's
rating, local code and licensed practice go before any number from here.
"""


def kind(entry: Entry) -> str:
    if "choices" in entry:
        return "choice"
    return "number" if "low" in entry else "flag"


def here() -> str:
    machine = platform.machine().lower()
    return f"{platform.system().lower()}-{ {'amd64': 'x86_64', 'aarch64': 'arm64'}.get(machine, machine) }"


def names(tables: Entry) -> Entry:
    """What the add-in knows of the library beforehand."""
    entries = [*tables["functions"], *tables["tables"]]
    lists = [rows for one in tables["tables"] for rows in one["lists"]]
    taken = [known for one in entries for known in one["inputs"]]
    taken += [column for rows in lists for column in rows["columns"]]
    units = json.loads(_carb.json("units", '{"carb": 1}'))["rows"]
    return {
        "platform": here(),
        "outputs": {
            one["name"]: ["_".join(filter(None, (out["noun"], out["name"]))) for out in one["outputs"]]
            for one in tables["functions"]
        },
        "inputs": {
            one["name"]: [name for known in one["inputs"] for name in known["names"]] for one in tables["functions"]
        },
        "varying": {
            one["name"]: [name for known in one["inputs"] if known["array"] for name in known["names"]]
            for one in tables["functions"]
        },
        "tables": {one["name"]: [column["name"] for column in one["columns"]] for one in tables["tables"]},
        "lists": sorted({rows["name"] for rows in lists}),
        "kinds": {name: kind(known) for known in taken for name in known["names"]},
        "units": [unit["name"] for unit in units],
    }


def contents(library: Path) -> dict[str, bytes]:
    """Each file of the add-in."""
    tables = json.loads(_carb.tables())
    version = _carb.__version__
    said = texts(tables["functions"], COMPANIONS, tables["tables"])
    written = {
        "XFunctions.idl": idl(said),
        "CalcAddIns.xcu": configuration(said),
        "pythonpath/carb_calc/texts.json": json.dumps(said, indent=1, ensure_ascii=False),
        "pythonpath/carb_calc/names.json": json.dumps(names(tables), indent=1),
        "description.xml": DESCRIPTION.format(version=version),
        "description.txt": ABOUT,
    }
    files = {name: text.encode() for name, text in written.items()}
    kept = [path for path in sorted((HERE / "oxt").rglob("*")) if path.is_file() and "__pycache__" not in path.parts]
    files |= {path.relative_to(HERE / "oxt").as_posix(): path.read_bytes() for path in kept}
    files |= {path.name: path.read_bytes() for path in sorted(ROOT.glob("LICENSE-*"))}
    files[f"lib/{here()}/{library.name}"] = library.read_bytes()
    return dict(sorted(files.items()))


def build(library: Path, target: Path) -> None:
    target.parent.mkdir(parents=True, exist_ok=True)
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as oxt:
        for name, data in contents(library).items():
            oxt.writestr(zipfile.ZipInfo(name, START_OF_ZIP), data, zipfile.ZIP_DEFLATED)


if __name__ == "__main__":
    build(Path(sys.argv[1]), Path(sys.argv[2]))
