"""The workbook of plain formulas in a second spreadsheet program, Gnumeric.

The values that stand in the file are the library's (test_plain.py sees to that). They are taken out before Gnumeric
opens it, so that what it shows it has worked out.
"""

from __future__ import annotations

import csv
import html
import os
import re
import shutil
import subprocess
import zipfile
from pathlib import Path

import pytest

WORKBOOK = Path(os.environ.get("CARB_PLAIN", Path(__file__).parents[1] / "plain_formulas.xlsx"))
RELATIVE = 1e-11
ZERO = 1e-12
"""A temperature of 0 °C comes out of kelvins: it is as near as they are."""
FOR_USE = ["Bottle", "Keg", "Line", "Gravity", "Purge"]
FORMULA = re.compile(r'<c r="([A-Z]+\d+)"((?: s="\d+")?)(?: t="\w+")?>(<f>.*?</f>)<v>(.*?)</v></c>', re.DOTALL)

pytestmark = pytest.mark.skipif(shutil.which("ssconvert") is None, reason="Gnumeric (ssconvert) is not here")

Rows = dict[str, list[list[str]]]


def parts() -> dict[str, str]:
    """The XML of every sheet, by the sheet's name, in order."""
    with zipfile.ZipFile(WORKBOOK) as file:
        names = re.findall(r'<sheet name="([^"]+)"', file.read("xl/workbook.xml").decode())
        return {name: file.read(f"xl/worksheets/sheet{at + 1}.xml").decode() for at, name in enumerate(names)}


def put(xml: str, cell: str, value: float | str | None) -> str:
    """A sheet with another value in a cell."""
    found = re.search(rf'<c r="{cell}"( s="\d+")?(?: t="\w+")?(?:/>|>.*?</c>)', xml, re.DOTALL)
    assert found, cell
    start = f'<c r="{cell}"{found[1] or ""}'
    if value is None:
        new = f"{start}/>"
    elif isinstance(value, str):
        new = f'{start} t="inlineStr"><is><t>{html.escape(value)}</t></is></c>'
    else:
        new = f"{start}><v>{value!r}</v></c>"
    return xml[: found.start()] + new + xml[found.end() :]


def worked_out(folder: Path, cells: dict[str, dict[str, float | str | None]]) -> Rows:
    """What Gnumeric shows in every sheet, cells of some replaced, and no value left for a formula."""
    sheets = parts()
    for name, values in cells.items():
        for cell, value in values.items():
            sheets[name] = put(sheets[name], cell, value)
    paths = {f"xl/worksheets/sheet{at + 1}.xml": xml for at, xml in enumerate(sheets.values())}
    path = folder / "bare.xlsx"
    with zipfile.ZipFile(WORKBOOK) as file, zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as bare:
        for part in file.namelist():
            text = FORMULA.sub(r'<c r="\1"\2>\3</c>', paths[part]).encode() if part in paths else file.read(part)
            bare.writestr(part, text)
    command = ["ssconvert", "--recalc", "-S", "-T", "Gnumeric_stf:stf_csv", str(path), str(folder / "%s.csv")]
    subprocess.run(command, check=True, capture_output=True)
    return {name: list(csv.reader((folder / f"{name}.csv").open(encoding="utf-8"))) for name in sheets}


def shown(rows: list[list[str]], cell: str) -> str:
    row, column = int(cell[1:]) - 1, ord(cell[0]) - ord("A")
    return rows[row][column] if row < len(rows) and column < len(rows[row]) else ""


def block(rows: list[list[str]], head: str) -> list[int]:
    """The rows of a sheet below a head, up to the next empty one, counted as the sheet does."""
    first = next(at for at, row in enumerate(rows) if row[0] == head) + 1
    last = next(at for at in range(first, len(rows)) if not any(rows[at]))
    return list(range(first + 1, last + 1))


def is_near(found: str, wanted: str) -> bool:
    try:
        a, b = float(found), float(wanted)
    except ValueError:
        return found == wanted
    return abs(a - b) <= RELATIVE * abs(b) or max(abs(a), abs(b)) < ZERO


@pytest.fixture(scope="module")
def delivered(tmp_path_factory: pytest.TempPathFactory) -> Rows:
    return worked_out(tmp_path_factory.mktemp("gnumeric"), {})


def test_every_formula_gives_what_the_library_says(delivered: Rows) -> None:
    count, wrong = 0, []
    for name, xml in parts().items():
        for cell, _, _, value in FORMULA.findall(xml):
            # A difference of two numbers is as near as these are, not as itself: they are looked at in its place.
            if name == "Check" and cell[0] == "P":
                continue
            count += 1
            if not is_near(shown(delivered[name], cell), html.unescape(value)):
                wrong.append((name, cell, shown(delivered[name], cell), value))
    print(f"{count} formula cells")
    assert not wrong, wrong[:5]
    assert count > 1500


def test_nonsense_makes_no_number(delivered: Rows, tmp_path: Path) -> None:
    inputs = {name: block(delivered[name], "Inputs") for name in FOR_USE}
    for kind, value in (("empty", None), ("text", "much"), ("number as text", "2"), ("huge", 1e9)):
        for at in range(max(map(len, inputs.values()))):
            asked = [name for name in FOR_USE if at < len(inputs[name])]
            found = worked_out(tmp_path, {name: {f"B{inputs[name][at]}": value} for name in asked})
            for name in asked:
                cells = [f"{column}{row}" for row in block(delivered[name], "Results") for column in "BD"]
                now, before = ([shown(rows[name], cell) for cell in cells] for rows in (found, delivered))
                assert "#N/A" in now, (name, at, kind)
                for cell, a, b in zip(cells, now, before, strict=True):
                    assert a in ("#N/A", b), (name, at, kind, cell, a)


def test_a_wrong_value_fails_the_check(delivered: Rows, tmp_path: Path) -> None:
    verdicts = [row for row in delivered["Check"] if row[-1] in ("pass", "FAIL")]
    assert len(verdicts) > 150 and {row[-1] for row in verdicts} == {"pass"}
    first = delivered["Check"].index(verdicts[0]) + 1
    planted = worked_out(tmp_path, {"Check": {f"M{first}": 2 * float(shown(delivered["Check"], f"M{first}"))}})
    assert [row[-1] for row in planted["Check"]].count("FAIL") == 1
    assert shown(planted["Check"], f"R{first}") == "FAIL"
    assert f"{len(verdicts) - 1} of {len(verdicts)} pass" in (cell for row in planted["Check"] for cell in row)
