"""The workbook of a packaging day: what a real LibreOffice shows in it is what the library says, cell by cell.

Every formula is read from its cell and worked out by `carb` in Python (`worksheet.py`), for the inputs as shipped and
for other days. That bad inputs never make a number is then shown without LibreOffice, for every input in turn.
"""

from __future__ import annotations

import io
import json
import os
import random
import re
import shutil
import subprocess
import sys
import zipfile
from functools import cache
from pathlib import Path
from typing import Any

import carb
import pytest

HERE = Path(__file__).parent
sys.path[:0] = [str(HERE), str(HERE.parent)]
from worksheet import CellError, Worksheet  # noqa: E402

from workbook import book, core, ods, parts, styles  # noqa: E402

ROOT = HERE.parents[1]
ADDIN = Path(os.environ.get("CARB_OXT", ROOT / "target" / "carb.oxt"))
PYTHON = "/usr/bin/python3"
"""That of LibreOffice, which alone knows it."""
SAME = 1e-12
NAME = 525
"""Calc's error for a function that it does not know."""

missing = [name for name in ("soffice", "unopkg") if shutil.which(name) is None]
office = pytest.mark.skipif(bool(missing), reason=f"LibreOffice Calc is not here: no {' and no '.join(missing)}")

US = {
    "Bottles.B8": "altitude_ft",
    "Bottles.C8": 5280,
    "Bottles.B13": "filling_f",
    "Bottles.C13": 66,
    "Bottles.B14": "packaged_us_gal",
    "Bottles.C14": 4.8,
    "Bottles.B15": "co2_g_per_l",
    "Bottles.C15": 4.9,
    "Bottles.B16": "warmest_f",
    "Bottles.C16": 69,
    "Bottles.C17": "dextrose_monohydrate",
    "Bottles.B18": "room_f",
    "Bottles.C18": 70,
    "Bottles.B19": "hot_day_f",
    "Bottles.C19": 98,
    "Bottles.E25": "rating_gauge_psi",
    "Bottles.C25": "bottle_us_fl_oz",
    "Bottles.C26": 22,
    "Bottles.D26": 12,
    "Bottles.E26": 120,
    "Bottles.C27": 12,
    "Bottles.D27": 48,
    "Keg.B8": "ambient_psi",
    "Keg.C8": 12.1,
    "Keg.B10": "temperature_f",
    "Keg.C10": 38,
    "Keg.B13": "packaged_us_gal",
    "Keg.C13": 5,
    "Keg.B16": "purge_gauge_psi",
    "Keg.C16": 14,
    "Keg.B18": "keg_rating_gauge_psi",
    "Keg.C18": 130,
    "Keg.C20": "cylinder_5_lb",
    "Keg.B22": "rise_ft",
    "Keg.C22": 2,
    "Keg.B24": "glass_us_fl_oz",
    "Keg.C24": 16,
    "Keg.B25": "room_ft3",
    "Keg.C25": 900,
    "Keg.B27": "temperature_f",
    "Keg.C27": 95,
    "Keg.B29": "gauge_psi",
    "Keg.C29": 12,
    "Chart.B10": "°F, psi, volumes",
    "Chart.B8": "altitude_ft",
    "Chart.C8": 5280,
    "Cross-check.B13": "co2_g_per_l",
    "Cross-check.C13": 1.5,
    "Cross-check.B14": "mass_oz",
    "Cross-check.C14": 4.4,
}
CIDER = {
    "Bottles.C5": "cider",
    "Bottles.C6": 6.2,
    "Bottles.C7": 12,
    "Bottles.C9": 99.4,
    "Bottles.C20": 4,
    "Bottles.C15": 2.8,
    "Bottles.C17": "honey",
    "Bottles.A26": "champagne",
    "Keg.C5": "cider",
    "Keg.C6": 6.2,
    "Keg.C14": "rocked",
    "Keg.C31": 3,
    "Keg.C19": "headspace",
    "Chart.C5": "cider",
    "Chart.C6": 6.2,
}
DANGER = {
    "Bottles.C15": 3.4,
    "Bottles.C21": 1.014,
    "Bottles.C22": 1.011,
    "Bottles.C19": 42,
    "Bottles.A27": "growler",
    "Bottles.E26": 5,
    "Keg.C11": 3.2,
    "Keg.C18": 4,
    "Keg.C20": "cylinder_10_kg",
    "Keg.C25": 12,
    "Cross-check.C14": 190,
}
BARE = {
    place: None
    for place in (
        *(f"Bottles.C{row}" for row in (5, 6, 7, 9, 10, 12, 13, 17, 20, 21, 22)),
        "Bottles.A26",
        "Bottles.A27",
        *(f"Keg.C{row}" for row in (5, 6, 7, 9, 14, 17, 18, 22, 24, 26, 29)),
        "Cross-check.C7",
        *(f"Chart.C{row}" for row in (5, 6, 7, 9)),
    )
}
WRONG = {
    "Bottles.C8": None,
    "Bottles.C16": "warm",
    "Bottles.D26": None,
    "Keg.C10": -40,
    "Keg.C20": "barrel",
    "Chart.C8": "high",
    "Cross-check.C5": "near",
    "Cross-check.C9": "nine",
}
ENOUGH = {
    "Bottles.C14": 12,
    "Bottles.C21": 1.020,
    "Bottles.C22": 1.012,
    "Bottles.A27": None,
    "Bottles.C27": None,
    "Bottles.D27": None,
}
"""What is left to ferment makes more than is wanted; and the bottles hold the drink to the last drop."""
GLASS = {"Bottles.A27": "growler"}
"""Nothing is wrong but the bottle."""
FEW = {"Bottles.D26": 3}
CAPACITY = {"Bottles.B26": 503, "Bottles.C15": 3.1, "Bottles.B27": 330}
DAYS: dict[str, dict[str, Any]] = {
    "as shipped": {},
    "US units": US,
    "cider": CIDER,
    "danger": DANGER,
    "bare": BARE,
    "wrong": WRONG,
    "enough": ENOUGH,
    "glass": GLASS,
    "few": FEW,
    "capacity": CAPACITY,
}


@cache
def opened() -> dict[str, Any]:
    """Every cell that may be filled in, with what stands there as shipped."""
    return {
        f"{sheet.name}.{column}{row}": cell.content
        for sheet in book.sheets()
        for (row, column), cell in sheet.cells.items()
        if cell.look in styles.OPEN
    }


@cache
def found() -> dict[str, Any]:
    """What LibreOffice shows: on every day, with a wrong published value, and without the add-in."""
    folder = Path(os.environ.get("TMPDIR", "/tmp")) / f"carb-workbook-{os.getpid()}"
    folder.mkdir(parents=True, exist_ok=True)
    shipped = folder / book.PATH.name
    shutil.copy(book.PATH, shipped)
    planted = folder / "planted.ods"
    planted.write_bytes(ods.written(with_wrong_value(), book.TITLE, core.version()))
    runs = [{"set": opened() | changes} for changes in DAYS.values()]
    documents: list[dict[str, Any]] = [
        {"path": str(shipped), "pdf": str(folder / "shipped.pdf"), "quick": True},
        {"path": str(shipped), "runs": runs, "pdf": str(folder / "last.pdf"), "quick": True},
        {"path": str(planted), "quick": True},
    ]
    with_addin = asked(folder / "with", ADDIN, documents)
    without = asked(folder / "without", None, [{"path": str(shipped), "quick": True}])
    pages = [pages_of(folder / name) for name in ("shipped.pdf", "last.pdf")]
    shutil.rmtree(folder)
    return {
        **dict(zip(DAYS, with_addin[1], strict=True)),
        "as it opens": with_addin[0][0],
        "planted": with_addin[2][0],
        "without": without[0][0],
        "pages": pages,
    }


def asked(folder: Path, addin: Path | None, documents: list[dict[str, Any]]) -> Any:
    job = {"folder": str(folder), "addin": addin and str(addin.resolve()), "documents": documents}
    told = subprocess.run([PYTHON, str(HERE / "office.py")], input=json.dumps(job), capture_output=True, text=True)
    assert told.returncode == 0, told.stderr
    return json.loads(told.stdout)


def with_wrong_value() -> list[Any]:
    """The sheets with one published value set wrong by three times its tolerance."""
    sheets = book.sheets()
    check = next(sheet for sheet in sheets if sheet.name == "Check")
    row = next(row for row, column in check.cells if column == "D" and row > 5)
    value, tolerance = (check.cells[row, column].content for column in "DG")
    assert isinstance(value, float) and isinstance(tolerance, float)
    check.put(row, "D", value + 3 * tolerance, "worked", 3)
    return sheets


def pages_of(path: Path) -> int:
    return len(re.findall(rb"/Type\s*/Page\b", path.read_bytes()))


def worksheet(cells: dict[str, Any]) -> Worksheet:
    """The formulas and inputs as LibreOffice has them."""
    return Worksheet({place: content(*cell) for place, cell in cells.items()})


def content(formula: str, value: float | None, text: str, error: int) -> Any:
    if is_formula(formula):
        return formula
    try:
        return float(formula)
    except ValueError:
        return text


def is_formula(text: str) -> bool:
    return text.startswith(("=", "{="))


def value_of(sheet: Worksheet, place: str) -> Any:
    """What a cell must show; None for an error."""
    try:
        return sheet.shows(place)
    except CellError:
        return None


@office
@pytest.mark.parametrize("day", DAYS)
def test_every_cell_shows_what_the_library_says(day: str) -> None:
    cells = found()[day]
    sheet = worksheet(cells)
    formulas = {place: cell for place, cell in cells.items() if is_formula(cell[0])}
    assert len(formulas) > 900
    numbers = 0
    for place, (formula, value, text, error) in formulas.items():
        wanted = value_of(sheet, place)
        if wanted is None:
            assert error != 0, f"{place} {formula} shows {text}, but has no answer"
        elif isinstance(wanted, str):
            assert (text, error) == (wanted, 0), f"{place} {formula}"
        else:
            assert error == 0, f"{place} {formula} shows {text}, not {wanted}"
            assert value == pytest.approx(wanted, rel=SAME, abs=SAME), f"{place} {formula}"
            numbers += 1
    print(f"{day}: {len(formulas)} formulas, {numbers} of them numbers")


@office
def test_no_cell_shows_an_error_as_shipped() -> None:
    for cells in (found()["as it opens"], found()["as shipped"], found()["US units"], found()["cider"]):
        assert not {place: cell for place, cell in cells.items() if cell[3]}


@office
def test_the_file_opens_with_what_stands_there_as_shipped() -> None:
    assert found()["as it opens"] == found()["as shipped"]


@office
def test_dangers_stand_at_the_head_of_their_sheets() -> None:
    cells = found()["danger"]
    assert cells["Bottles.A3"][2].startswith("DANGER: Bottles in the room")
    assert [cells[f"Bottles.F{row}"][2] for row in (26, 27)] == ["DANGER", "DANGER"]
    assert cells["Keg.A3"][2].startswith("DANGER: Keg on a hot day")
    assert cells["Cross-check.A3"][2].startswith("DANGER: Their sugar")
    for sheet in ("Bottles", "Keg", "Cross-check"):
        assert found()["as shipped"][f"{sheet}.A3"][2] == parts.STATUS_FINE


@office
def test_a_drink_that_makes_too_much_by_itself_is_a_danger_with_its_pressure() -> None:
    cells = found()["enough"]
    assert cells["Bottles.A3"][2].startswith("DANGER: Bottles in the room")
    assert cells["Bottles.G6"][3] != 0
    assert cells["Bottles.G15"][1] > cells["Bottles.G13"][1] > 5.0
    assert cells["Bottles.F26"][2] == "DANGER"


@office
def test_bottles_that_hold_the_drink_to_the_last_drop_leave_0() -> None:
    for place in ("Bottles.G22", "Bottles.I22"):
        assert found()["enough"][place][1:] == [0.0, found()["enough"][place][2], 0]


@office
def test_a_bottle_that_is_a_danger_is_told_at_the_head() -> None:
    cells = found()["glass"]
    assert [cells[f"Bottles.F{row}"][2] for row in (26, 27)] == ["within", "DANGER"]
    assert cells["Bottles.A3"][2].startswith("DANGER: your bottles")
    assert found()["few"]["Bottles.A3"][2] == parts.STATUS_FAILED


def test_a_bottle_is_judged_with_the_headspace_that_its_capacity_leaves() -> None:
    strong = {"Bottles.C15": 3.1}
    assert shipped_sheet(strong).shows("Bottles.F26") == "caution"
    assert shipped_sheet(strong | {"Bottles.B26": 503.0}).shows("Bottles.F26") == "DANGER"
    full = shipped_sheet({"Bottles.B26": 500.0})
    assert full.shows("Bottles.F26") == "DANGER"
    assert str(full.shows("Bottles.A3")).startswith("DANGER: ")


def test_what_would_burst_is_a_danger_though_there_is_no_number() -> None:
    for sheet, changes in (("Keg", {"Keg.C31": 60.0}), ("Cross-check", {"Cross-check.C14": 900.0})):
        assert str(shipped_sheet(changes).shows(f"{sheet}.A3")).startswith("DANGER: ")


def test_a_dose_that_fails_says_its_own_cause() -> None:
    for changes in ({"Bottles.C5": "cider"}, {"Bottles.C17": "lactose"}, {"Bottles.C14": 1e7}):
        sheet = shipped_sheet(changes)
        assert sheet.shows("Bottles.B47").startswith("Error: ")
        assert sheet.shows("Bottles.B48") == sheet.shows("Bottles.B49") == sheet.shows("Bottles.B47")


@office
def test_what_is_wrong_is_said_in_a_sentence() -> None:
    cells = found()["wrong"]
    for place in ("Bottles.A3", "Keg.A3", "Chart.A3"):
        assert cells[place][2] == parts.STATUS_FAILED
    said = [cell[2] for cell in cells.values() if cell[2].startswith("Error: ")]
    assert any("altitude_m=0" in text or "altitude" in text for text in said)
    assert any("temperature_c" in text for text in said)


@office
def test_published_values_are_met_and_a_wrong_one_is_noticed() -> None:
    rows = sum(1 for place in found()["as shipped"] if re.fullmatch(r"Check\.H\d+", place)) - 1
    assert rows >= 25
    assert found()["as shipped"]["Check.A3"][2] == f"0 of {rows} fail"
    assert found()["planted"]["Check.A3"][2] == f"1 of {rows} fail"


@office
def test_every_sheet_is_one_page() -> None:
    assert found()["pages"] == [len(book.sheets())] * 2


@office
def test_without_the_addin_no_result_is_a_number_or_a_good_word() -> None:
    cells = found()["without"]
    calls = [cell for cell in cells.values() if is_formula(cell[0]) and "carb.calc" in cell[0].lower()]
    assert sum(error == NAME for *_, error in calls) > 400
    for formula, value, text, error in calls:
        assert error or (value == 0.0 and text not in GOOD_WORDS), f"{formula} shows {value} {text}"
    shown = {place: cell[2] for place, cell in cells.items() if place.endswith(".A3") and is_formula(cell[0])}
    assert shown.pop("Check.A3").split()[0] == found()["as shipped"]["Check.A3"][2].split()[2]
    assert set(shown.values()) == {parts.STATUS_FAILED}


@cache
def shipped_cells() -> dict[str, Any]:
    """Inputs and formulas as the generator lays them out, which is what stands in the file."""
    cells = {}
    for sheet in book.sheets():
        for (row, column), cell in sheet.cells.items():
            cells[f"{sheet.name}.{column}{row}"] = stored_form(cell)
    for sheet in book.sheets():
        for (row, column), cell in sheet.cells.items():
            down, across = cell.array or (0, 0)
            for place in [(one, other) for one in range(down) for other in range(across)]:
                address = f"{sheet.name}.{chr(ord(column) + place[1])}{row + place[0]}"
                cells[address] = "{" + str(stored_form(cell)) + "}"
    return cells


def shipped_sheet(changes: dict[str, Any]) -> Worksheet:
    """The workbook with other inputs, to be worked out without LibreOffice."""
    return Worksheet(shipped_cells() | changes)


@cache
def as_shipped() -> Worksheet:
    return shipped_sheet({})


def stored_form(cell: Any) -> Any:
    if not cell.is_formula:
        return float(cell.content) if isinstance(cell.content, int) else cell.content
    return re.sub(r"[A-Z][A-Z0-9_]*(?=\()", lambda name: core.stored_name(name[0]), str(cell.content))


PLACES = sorted(opened())
NAMES = {place for place in PLACES if isinstance(opened()[place], str) and place.split(".")[1][0] == "B"}
USED = [
    place
    for place in PLACES
    if place not in NAMES or opened().get(place.replace(".B", ".C")) is not None or place == "Chart.B10"
]
"""Input cells, without the names of rows that are left blank: what those say makes no difference."""
BESIDE = {
    "Bottles.B25": {"Bottles.B26": 521.0, "Bottles.B27": 345.0},
    "Bottles.E25": {"Bottles.E26": 6.0, "Bottles.E27": 6.0},
}
"""What has to stand elsewhere for a cell to count."""
THEIRS = re.compile(r"Cross-check\.C(?!5$)")
"""Another program's numbers may be any numbers."""
GOOD_WORDS = {"within", "agrees", "pass", parts.NOTHING, parts.STATUS_FINE}


@pytest.mark.parametrize("place", USED)
def test_bad_inputs_never_make_a_number_or_a_good_word(place: str) -> None:
    refused(place, "nonsense")
    if place not in NAMES and not THEIRS.match(place):
        refused(place, -1e9)


def note_beside(place: str) -> str:
    name, address = place.split(".")
    sheet = next(sheet for sheet in book.sheets() if sheet.name == name)
    cell = sheet.cells.get((int(address[1:]), "D"))
    return str(cell.content) if cell else ""


NEEDED = [place for place in PLACES if ".C" in place and note_beside(place) == "needed"]


@pytest.mark.parametrize("place", NEEDED)
def test_what_is_needed_and_blank_never_makes_a_number_or_a_good_word(place: str) -> None:
    refused(place, None)


def refused(place: str, bad: Any) -> None:
    sheet, before = shipped_sheet(BESIDE.get(place, {}) | {place: bad}), as_shipped()
    hanging = before.dependents(place)
    assert hanging, f"nothing depends on {place}"
    for one in sorted(hanging):
        shown, was = value_of(sheet, one), value_of(before, one)
        if was in ("", 0.0):
            continue
        assert not isinstance(shown, float), f"{one} shows {shown} with {place} = {bad}"
        assert shown not in GOOD_WORDS, f"{one} shows {shown} with {place} = {bad}"


def test_bottles_are_filled_as_the_library_fills_a_list() -> None:
    chance = random.Random(7)
    for order in core.choices("fill_list", "fill_order"):
        rows = [(chance.choice([250, 330, 355, 500, 750, 946]), chance.randrange(9, 30)) for _ in range(4)]
        drink, spare = chance.randrange(3000, 12000) / 1000, chance.randrange(0, 11)
        changes: dict[str, Any] = {"Bottles.C14": drink, "Bottles.C23": float(spare), "Bottles.E24": order}
        # The second kind is left blank.
        for row, (size, count) in zip((26, 28, 29, 30), rows, strict=True):
            changes |= {f"Bottles.C{row}": float(size), f"Bottles.D{row}": float(count)}
        sheet = shipped_sheet(changes | {"Bottles.A27": None, "Bottles.C27": None, "Bottles.D27": None})
        bottles = [{"bottle_ml": size, "count": count} for size, count in rows]
        request: Any = {"packaged_l": drink, "bottles": bottles, "fill_order": order, "spare_percent": spare}
        wanted = carb.fill_list(**request)
        for row, line in zip((26, 28, 29, 30), wanted, strict=True):
            assert sheet.shows(f"Bottles.G{row}") == line.filled_count
            assert sheet.shows(f"Bottles.H{row}") == line.washed_count
        assert sheet.shows("Bottles.G27") == ""


def test_the_sheets_say_what_the_whole_jobs_say() -> None:
    sheet = as_shipped()
    drink: dict[str, Any] = {"abv_percent": 5.1, "extract_g_per_l": 38, "altitude_m": 240}
    day = carb.bottling(packaged_l=19.2, volumes=2.4, warmest_c=20.5, filling_c=20.5, room_c=20, hot_day_c=35, **drink)
    bottles = {
        5: day.residual.co2_g_per_l,
        6: day.priming.mass_g,
        8: day["balance"]["expected"]["co2_g_per_l"],
        10: day["balance"]["balance_dose"]["mass_g"],
        11: day["primed"]["co2_g_per_l"],
        12: day.storage.room.expected.gauge_bar,
        14: day.storage.hot_day.expected.gauge_bar,
        16: day.ready.expected.time_d,
        17: day.ready.least.time_d,
        18: day.ready.most.time_d,
    }
    for row, wanted in bottles.items():
        assert sheet.shows(f"Bottles.G{row}") == pytest.approx(wanted, rel=1e-9), f"Bottles.G{row}"
    for row, worst in ((13, day.storage.room.worst), (15, day.storage.hot_day.worst)):
        assert worst.gauge_bar <= sheet.shows(f"Bottles.G{row}") < 1.08 * worst.gauge_bar
    keg = carb.kegging(
        packaged_l=18.9, volumes=2.5, warmest_c=20, serving_c=4, cylinder_size="cylinder_2_kg", purge="empty",
        purge_gauge_bar=1, oxygen_ppm=500, keg_l=19.6, keg_rating_gauge_bar=9, tube="vinyl_3_16_in", rise_m=0.6,
        pour_seconds=10, glass_ml=473, room_m3=160, **drink,
    )  # fmt: skip
    kegs = {
        5: keg.regulator.gauge_bar,
        8: keg.carbonating.expected.time_d,
        10: keg.carbonating.latest.time_d,
        12: keg.purge.whole.cycles_count,
        18: keg.gas.total.gas_g,
        19: keg.gas.kegs_count,
        20: keg.line.line_m,
        21: keg.handbook_line.line_m,
        27: keg.room.low_half.room_air_vol_percent,
    }
    for row, wanted in kegs.items():
        assert sheet.shows(f"Keg.G{row}") == pytest.approx(wanted, rel=1e-9), f"Keg.G{row}"


def test_the_file_is_what_the_generator_writes() -> None:
    fresh = zipfile.ZipFile(io.BytesIO(ods.written(book.sheets(), book.TITLE, core.version())))
    kept = zipfile.ZipFile(book.PATH)
    assert fresh.namelist() == kept.namelist()
    for name in fresh.namelist():
        assert fresh.read(name) == kept.read(name), f"{name} differs: run `python -m workbook` in carb-sheet"


def test_formulas_are_protected_and_inputs_are_open_without_a_password() -> None:
    text = zipfile.ZipFile(book.PATH).read("content.xml").decode()
    guards = dict(
        re.findall(r'<style:style style:name="([^"]+)" style:family="table-cell".*?cell-protect="(\w+)"', text)
    )
    tables = re.findall(r"<table:table (.*?)>", text)
    assert len(tables) == len(book.sheets())
    for table in tables:
        assert 'table:protected="true"' in table
        assert "protection-key" not in table
    cells = re.findall(r"<table:table-cell ([^>]*?)/?>", text)
    formulas = [cell for cell in cells if "table:formula=" in cell]
    assert len(formulas) > 600
    for cell in cells:
        style = re.search(r'table:style-name="([^"]+)"', cell)
        assert style
        if "table:formula=" in cell:
            assert guards[style[1]] == "protected"
        if "content-validation-name" in cell:
            assert guards[style[1]] == "none"
    assert sum(guards[style] == "none" for style in re.findall(r'table-cell table:style-name="([^"]+)"', text)) == len(
        PLACES
    )


def test_headings_are_frozen() -> None:
    text = zipfile.ZipFile(book.PATH).read("settings.xml").decode()
    # Calc reads the set of this name only where its prefix is declared.
    assert 'xmlns:ooo="http://openoffice.org/2004/office"' in text
    frozen = re.findall(r'"VerticalSplitPosition"[^>]*>(\d+)', text)
    assert [int(one) for one in frozen] == [sheet.frozen for sheet in book.sheets() if sheet.frozen]


def test_names_offered_are_names_that_the_formulas_take() -> None:
    for sheet in book.sheets():
        for (row, column), cell in sheet.cells.items():
            if cell.look == "name":
                assert cell.content in cell.offered, f"{sheet.name}.{column}{row}"
