"""The workbook of plain formulas, worked out anew by a real LibreOffice: every formula cell is what the library says.

What stands in the file as the value of a cell is believed nowhere: a job recalculates everything, then sheets are read.
"""

from __future__ import annotations

import json
import random
import shutil
import subprocess
import sys
import zipfile
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from functools import cache
from math import isnan
from pathlib import Path
from typing import Any

import carb
import pytest

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE.parent))

from plain.book import PATH as WORKBOOK  # noqa: E402
from plain.book import Book  # noqa: E402
from plain.chart import chart  # noqa: E402
from plain.core import EQUATIONS, UNITS, convert, kernel  # noqa: E402
from plain.equations import usual  # noqa: E402
from plain.jobs import JOBS, SUGARS, TUBES  # noqa: E402
from plain.paper import Sheet, address, is_formula  # noqa: E402

PYTHON_OF_LIBREOFFICE = "/usr/bin/python3"
NOT_AVAILABLE = "NA"
RELATIVE = 1e-11
ZERO = 1e-12

MAKERS: dict[str, Callable[..., Sheet]] = {**JOBS, "Chart": chart}
Given = dict[str, tuple[Any, str | None]]


def has_office() -> bool:
    found = shutil.which("soffice") and Path(PYTHON_OF_LIBREOFFICE).exists()
    return (
        bool(found) and subprocess.run([PYTHON_OF_LIBREOFFICE, "-c", "import uno"], capture_output=True).returncode == 0
    )


needs_office = pytest.mark.skipif(not has_office(), reason="no LibreOffice (soffice with its Python) is installed here")


# What is asked of the program


@dataclass
class Run:
    """Cells that are set, and the sheets that are read after everything was worked out."""

    cells: dict[str, Any]
    sheets: list[str]
    found: dict[str, Any] = field(default_factory=dict)

    def value(self, sheet: str, cell: str) -> Any:
        """A number or a text; the number of the error where there is one."""
        column, row = ord(cell[0]) - ord("A"), int(cell[1:])
        error = self.found[sheet]["errors"].get(cell)
        return Error(error) if error else self.found[sheet]["values"][row - 1][column]


@dataclass(frozen=True)
class Error:
    """An error in a cell: #N/A, or any other."""

    kind: str


@cache
def book() -> Book:
    return Book()


def cells_of(name: str, given: Given) -> dict[str, Any]:
    """The cells by which a sheet is given its inputs: all of them, so that no run sees what another one set."""
    sheet = MAKERS[name]()
    cells: dict[str, Any] = {}
    for each in sheet.inputs:
        value, unit = given.get(each.name, (each.value, each.unit))
        cells[f"{name}.{each.cell}"] = value
        if each.unit_cell:
            cells[f"{name}.{each.unit_cell}"] = UNITS[unit].printed if unit in UNITS else unit
    return cells


GOOD: dict[str, list[Given]] = {
    "Keg": [
        {"target": (2.5, "volumes"), "temperature": (38, "f"), "gauge": (12, "psi"), "altitude": (0, "m")},
        {"target": (5.5, "co2_g_per_l"), "temperature": (7, "c"), "gauge": (120, "kpa"), "altitude": (5280, "ft")},
        {"target": (3, "volumes"), "temperature": (25, "c"), "gauge": (3.2, "bar"), "sea_level": (14.9, "psi")},
        {"temperature": (-5, "c"), "gauge": (-0.5, "bar"), "altitude": (9000, "m")},
        {"temperature": (140, "f"), "gauge": (0, "psi"), "altitude": (-500, "m"), "sea_level": (109, "kpa")},
        {"target": (0.3, "volumes")},
        {"target": (15.176, "volumes"), "gauge": (30, "bar")},
        {"gauge": (-1.1, "bar")},
        {"temperature": (59, "f"), "sea_level": (14.2, "psi")},
    ],
    "Bottle": [
        {"packaged": (5, "us_gal"), "target": (2.5, "volumes"), "warmest": (68, "f"), "sugar": ("sucrose", None)},
        {"packaged": (23, "l"), "warmest": (24, "c"), "altitude": (1500, "m"), "sugar": ("honey", None)},
        {"packaged": (9, "imp_gal"), "target": (6, "co2_g_per_l"), "warmest": (0, "c"), "left": (2.5, "g_per_l")},
        {"warmest": (45, "c"), "sea_level": (97.5, "kpa"), "sugar": ("dextrose_anhydrous", None)},
        {"target": (0.5, "volumes")},
        {"target": (3.2, "volumes")},
        {"target": (1.2, "volumes"), "left": (4, "g_per_l")},
        {"warmest": (86, "f"), "altitude": (-500, "m"), "sugar": (SUGARS[-1], None)},
    ],
    "Line": [
        {
            "gauge": (12, "psi"),
            "rise": (3, "ft"),
            "hardware": (1, "psi"),
            "length": (8, "ft"),
            "tube": (TUBES[1], None),
        },
        {"gauge": (1.4, "bar"), "rise": (-2, "m"), "length": (0, "m"), "tube": (TUBES[-1], None)},
        {"gauge": (0.1, "bar"), "rise": (10, "m")},
        {"gauge": (30, "bar"), "tube": ("vinyl_1_2_in", None)},
        {"gauge": (80, "kpa"), "hardware": (5, "kpa"), "length": (500, "m")},
    ],
    "Gravity": [
        {"original": (1.060, "sg"), "current": (1.010, "sg"), "final": (1.008, "sg")},
        {"original": (1.165, "sg"), "current": (1.100, "sg"), "final": (0.980, "sg")},
        {"original": (1.048, "sg"), "current": (1.050, "sg")},
        {"original": (1.048, "sg"), "current": (1.010, "sg"), "final": (1.020, "sg")},
        {"original": (1.020, "sg"), "current": (0.995, "sg"), "final": (0.990, "sg")},
    ],
    "Purge": [
        {"gauge": (30, "psi"), "oxygen": (1000, "ppm"), "keg": (5, "us_gal"), "temperature": (68, "f")},
        {"gauge": (80, "kpa"), "oxygen": (0.1, "vol_percent"), "altitude": (2000, "ft"), "supplied": (0, "ppm")},
        {"oxygen": (21, "vol_percent"), "start": (20, "vol_percent")},
        {"oxygen": (20, "ppm"), "supplied": (30, "ppm")},
        {"gauge": (2, "bar"), "keg": (1000, "l"), "temperature": (-5, "c"), "sea_level": (95, "kpa")},
        {"gauge": (12, "bar"), "temperature": (60, "c")},
    ],
    "Gas": [
        {"packaged": (5, "us_gal"), "temperature": (38, "f"), "gauge": (11, "psi"), "charge": (5, "lb")},
        {"target": (5, "co2_g_per_l"), "start": (0, "volumes"), "loss": (0, "percent"), "altitude": (6000, "ft")},
        {"start": (3, "volumes")},
        {"keg": (18, "l")},
        {"gauge": (-0.2, "bar")},
        {"gauge": (29.5, "bar")},
    ],
    "Chart": [
        {"cold": (32, "f"), "warm": (60, "f"), "shown": ("psi", None)},
        {"least": (4, "co2_g_per_l"), "most": (8, "co2_g_per_l"), "altitude": (7000, "ft"), "shown": ("kPa", None)},
        {"least": (0.5, "volumes"), "warm": (30, "c"), "cold": (-2, "c")},
    ],
}


def rolled(name: str, dice: random.Random) -> Given:
    """Inputs anywhere that the library answers, in any unit; most of them usual, so that most make numbers."""
    usual = {
        "target": (2, 8), "temperature": (0, 15), "gauge": (20, 250), "altitude": (-100, 2500), "sea_level": (97, 104),
        "packaged": (5, 60), "warmest": (2, 30), "left": (0, 1), "rise": (-1, 2), "hardware": (0, 20), "length": (1, 9),
        "original": (1.04, 1.09), "current": (1.01, 1.02), "final": (1.002, 1.008), "oxygen": (100, 5000),
        "start": (1e5, 2.2e5), "supplied": (0, 90), "keg": (5, 60), "cold": (0, 4), "warm": (8, 14), "least": (2, 4),
        "most": (6, 9),
    }  # fmt: skip
    if name == "Gas":
        usual |= {"packaged": (5, 18), "keg": (18, 60), "start": (0, 2), "loss": (0, 30), "charge": (1000, 9000)}
    given: Given = {}
    for each in MAKERS[name]().inputs:
        if each.unit is None:
            given[each.name] = (dice.choice(each.choices), None)
            continue
        alike = [unit for unit in UNITS.values() if unit.dimension == UNITS[each.unit].dimension]
        first = alike[0].name
        printed = dice.choice(each.choices)
        unit = next(unit.name for unit in alike if unit.printed == printed)
        low, high = each.limits if dice.random() < 0.1 else usual[each.name]
        given[each.name] = (convert(dice.uniform(low, high), first, unit), unit)
    return given


NONSENSE: dict[str, Any] = {
    "empty": None,
    "text": "much",
    "negative": -1e6,
    "huge": 1e9,
    "error": "=1/0",
    "number as text": "'2",
}


@dataclass
class Everything:
    """All runs of one session of the program."""

    default: Run
    good: list[tuple[str, Given, Run]]
    bad: list[tuple[str, str, str, Run]]
    equations: list[tuple[dict[str, list[float]], Run]]
    bad_equations: list[tuple[int, str, Run]]
    planted: tuple[str, Run]
    unplanted: Run
    truths: list[tuple[str, str, Run]]


def asked() -> tuple[Everything, list[Run]]:
    runs: list[Run] = []

    def run(cells: dict[str, Any], *sheets: str) -> Run:
        runs.append(Run(cells, list(sheets)))
        return runs[-1]

    default = run({}, *(sheet.name for sheet in book().sheets))
    good = []
    dice = random.Random(11)
    for name, cases in GOOD.items():
        for given in [*cases, *(rolled(name, dice) for _ in range(4 if name == "Chart" else 12))]:
            good.append((name, given, run(cells_of(name, given), name)))
        run(cells_of(name, {}), name)
    bad = []
    for name in MAKERS:
        before: dict[str, Any] = {}
        usual = cells_of(name, {})
        for each in MAKERS[name]().inputs:
            places_of = [("", each.cell, tuple(NONSENSE))]
            if each.unit_cell:
                places_of.append((" unit", each.unit_cell, ("empty", "text", "number as text")))
            for what, cell, kinds in places_of:
                place = f"{name}.{cell}"
                for kind in kinds:
                    bad.append((name, each.name + what, kind, run({**before, place: NONSENSE[kind]}, name)))
                    before = {}
                before = {place: usual[place]}
        run(before, name)
    places = book().equations.places
    several = []
    for _ in range(4):
        values = {name: inside(name, dice) for name in EQUATIONS}
        cells = {
            f"Equations.{cell}": value
            for name, (inputs, _, _) in places.items()
            for cell, value in zip(inputs, values[name], strict=True)
        }
        several.append((values, run(cells, "Equations")))
    back = {f"Equations.{c}": v for inputs, _, values in places.values() for c, v in zip(inputs, values, strict=True)}
    bad_equations = []
    for at in range(max(len(equation.inputs) for equation in EQUATIONS.values())):
        for kind, value in NONSENSE.items():
            # Some quantities, such as money and a constant in pascals, reach beyond 1e9 themselves.
            value = 1e18 if kind == "huge" else value
            cells = {f"Equations.{inputs[at]}": value for inputs, _, _ in places.values() if at < len(inputs)}
            bad_equations.append((at, kind, run({**back, **cells}, "Equations")))
    run(back, "Equations")
    planted = book().check.values[3]
    wrong = run({f"Check.{planted}": book().check.rows[3].value * 1.1}, "Check")
    right = run({f"Check.{planted}": book().check.rows[3].value}, "Check")
    # The last of all, because LibreOffice keeps a cell that was true a truth, whatever number is put there later.
    truths = []
    for name in JOBS:
        for each in MAKERS[name]().inputs:
            truths.append((name, each.name, run({f"{name}.{each.cell}": "=TRUE()"}, name)))
    return Everything(default, good, bad, several, bad_equations, (planted, wrong), right, truths), runs


def inside(name: str, dice: random.Random) -> list[float]:
    """Values inside the ranges of an equation that make a number."""
    for _ in range(100):
        values = [low + (high - low) * dice.random() for low, high in map(usual, EQUATIONS[name].inputs)]
        if abs(kernel(name, values)) < float("inf"):
            return values
    raise AssertionError(f"{name} gives no number")


@pytest.fixture(scope="module")
def everything(tmp_path_factory: pytest.TempPathFactory) -> Everything:
    what, runs = asked()
    job = {
        "folder": str(tmp_path_factory.mktemp("office") / "plain"),
        "path": str(WORKBOOK),
        "runs": [{"set": run.cells, "sheets": run.sheets} for run in runs],
    }
    done = subprocess.run(
        [PYTHON_OF_LIBREOFFICE, str(HERE / "recalculate.py")], input=json.dumps(job), capture_output=True, text=True
    )
    assert done.returncode == 0, done.stderr
    for run, found in zip(runs, json.loads(done.stdout), strict=True):
        run.found = found
    return what


# What is compared


def formulas(sheet: Sheet) -> Iterator[tuple[str, Any]]:
    for (row, column), cell in sheet.cells.items():
        if is_formula(cell.content):
            yield address(row, column), cell.value


def agrees(found: Any, wanted: Any) -> bool:
    if isinstance(wanted, str):
        return found == wanted
    if isnan(wanted):
        return found == Error(NOT_AVAILABLE)
    if not isinstance(found, float):
        return False
    # A temperature of 0 °C comes out of kelvins: it is as near as they are.
    return abs(found - wanted) <= RELATIVE * abs(wanted) or max(abs(found), abs(wanted)) < ZERO


def wrong_cells(sheet: Sheet, run: Run) -> list[str]:
    found = []
    for cell, wanted in formulas(sheet):
        value = run.value(sheet.name, cell)
        if not agrees(value, wanted):
            found.append(f"{sheet.name}.{cell}: {value!r}, not {wanted!r}")
    return found


@needs_office
def test_every_formula_cell_as_delivered_is_what_the_library_says(everything: Everything) -> None:
    count = 0
    differences = {f"P{row}" for row in range(1, 1000)}
    for sheet in book().sheets:
        # The difference of two numbers is as near as the numbers are, not as itself; both are looked at.
        wrong = [
            text
            for text in wrong_cells(sheet, everything.default)
            if sheet.name != "Check" or text.split(":")[0][6:] not in differences
        ]
        assert not wrong, wrong[:5]
        count += sum(1 for _ in formulas(sheet))
    print(f"{count} formula cells")
    assert count > 1500


@needs_office
def test_no_cell_as_delivered_shows_an_error(everything: Everything) -> None:
    assert {name: found["errors"] for name, found in everything.default.found.items() if found["errors"]} == {}


@needs_office
def test_every_formula_cell_is_what_the_library_says_for_other_inputs(everything: Everything) -> None:
    count = 0
    for name, given, run in everything.good:
        sheet = MAKERS[name](given)
        wrong = wrong_cells(sheet, run)
        assert not wrong, (name, given, wrong[:5])
        count += sum(1 for _ in formulas(sheet))
    print(f"{count} formula cells of {len(everything.good)} sets of inputs")


# The functions that a whole chain has to equal: result, function, which input is which parameter, output, and what
# else is told.
AIR = {"altitude": "altitude", "sea_level": "sea_level"}
HELD = {"gauge": "gauge", "temperature": "temperature", **AIR}
DOSE = {"packaged": "packaged", "target": "", "warmest": "warmest", "left": "fermentable", "sugar": "sugar", **AIR}
TUBE = {"rise": "rise", "hardware": "hardware", "tube": "tube"}
GRAVITIES = {"original": "original", "current": "current"}
CYCLES = {
    "gauge": "purge_gauge", "oxygen": "oxygen", "start": "start_oxygen", "supplied": "gas_oxygen", "keg": "keg",
    "temperature": "temperature", **AIR,
}  # fmt: skip
BUDGET = {
    "packaged": "packaged", "keg": "keg", "target": "", "start": "start", "temperature": "temperature",
    "gauge": "gauge", "loss": "gas_loss", "charge": "charge", **AIR,
}  # fmt: skip
LEFT = {"current": "current", "final": "final"}
# What is not answered outside its range, and the cautions by which the library says so.
STRICT = {"quadratic": {"chart_temperature", "chart_pressure"}}
Chain = tuple[str, str, dict[str, str], str, dict[str, Any]]
CHAINS: dict[str, list[Chain]] = {
    "Keg": [
        ("keg_gauge", "keg_pressure", {"target": "", "temperature": "temperature", **AIR}, "gauge", {}),
        ("chart", "dissolved_co2", HELD, "", {}),
        ("quadratic", "dissolved_co2", HELD, "", {"model": "chart_quadratic"}),
        ("european", "dissolved_co2", HELD, "", {"model": "european"}),
    ],
    "Bottle": [
        ("residual", "residual_co2", {"warmest": "warmest", **AIR}, "", {}),
        ("dose", "priming_sugar", DOSE, "dose", {}),
        ("mass", "priming_sugar", DOSE, "mass", {}),
        (
            "mass_sucrose",
            "priming_sugar",
            {k: v for k, v in DOSE.items() if k != "sugar"},
            "mass",
            {"sugar": "sucrose"},
        ),
    ],
    "Line": [
        ("length", "handbook_line", {"gauge": "gauge", **TUBE}, "line", {}),
        ("pressure", "handbook_pressure", {"length": "line", **TUBE}, "gauge", {}),
    ],
    "Gravity": [
        ("extract", "attenuation", GRAVITIES, "real_extract", {}),
        ("apparent", "attenuation", GRAVITIES, "apparent_attenuation", {}),
        ("real", "attenuation", GRAVITIES, "real_attenuation", {}),
        ("abw", "attenuation", GRAVITIES, "abw", {}),
        ("abv", "attenuation", GRAVITIES, "abv", {}),
        ("quick", "attenuation", GRAVITIES, "quick_abv", {}),
        ("litre", "attenuation", GRAVITIES, "extract", {}),
        ("left", "gravity_co2", LEFT, "fermentable", {}),
        ("balling", "gravity_co2", LEFT, "balling", {}),
        ("theory", "gravity_co2", LEFT, "theory", {}),
    ],
    "Purge": [
        ("cycles", "purge_cycles", CYCLES, "cycles", {}),
        ("whole", "purge_cycles", CYCLES, "whole_cycles", {}),
        ("each", "purge_cycles", CYCLES, "each_gas", {}),
        ("total", "purge_cycles", CYCLES, "total_gas", {}),
    ],
    "Gas": [
        ("total", "gas_budget", BUDGET, "total_gas", {}),
        ("kegs", "gas_budget", BUDGET, "kegs", {}),
    ],
}


def by_library(name: str, given: Given, chain: Chain) -> Any:
    """The answer of the library to what a sheet was given; an error where it refuses."""
    _, function, parameters, _, more = chain
    request: dict[str, Any] = dict(more)
    for each in MAKERS[name]().inputs:
        if each.name in parameters:
            value, unit = given.get(each.name, (each.value, each.unit))
            role = parameters[each.name]
            request["_".join(filter(None, (role, unit)))] = value
    try:
        return getattr(carb, function)(**request)
    except carb.CarbError as error:
        return error


def output(answer: Any, role: str, unit: str) -> float:
    name = "_".join(filter(None, (role, unit or "count")))
    whole = answer.to_dict()
    if name in whole:
        return float(whole[name])
    noun = next(noun for noun in whole if name.startswith(f"{noun}_"))
    return float(whole[noun][name.removeprefix(f"{noun}_")])


@needs_office
def test_chains_are_what_the_functions_of_the_library_answer(everything: Everything) -> None:
    numbers = refusals = 0
    for name, given, run in everything.good:
        sheet = MAKERS[name](given)
        for chain in CHAINS.get(name, []):
            answer = by_library(name, given, chain)
            found = {
                key: place for key, place in sheet.results.items() if key.startswith(f"{chain[0]}_") or key == chain[0]
            }
            units = [
                (cell, unit)
                for key, (cell, unit, _) in found.items()
                if key == "_".join(filter(None, (chain[0], unit)))
            ]
            assert units, chain
            for cell, unit in units:
                value = run.value(name, cell)
                if chain[0] in STRICT and value == Error(NOT_AVAILABLE):
                    codes = set() if isinstance(answer, carb.CarbError) else {each.code for each in answer.cautions}
                    assert isinstance(answer, carb.CarbError) or codes & STRICT[chain[0]], (name, given, chain)
                elif isinstance(answer, carb.CarbError):
                    assert value == Error(NOT_AVAILABLE), (name, given, chain, cell, value, str(answer))
                    refusals += 1
                else:
                    wanted = output(answer, chain[3], unit)
                    assert agrees(value, wanted), (name, given, chain, cell, value, wanted)
                    numbers += 1
    print(f"{numbers} results equal the functions, {refusals} refused by both")
    assert numbers > 500 and refusals > 10


@needs_office
def test_nonsense_in_an_input_makes_no_number_of_what_depends_on_it(everything: Everything) -> None:
    silenced: dict[str, set[str]] = {}
    for name, what, kind, run in everything.bad:
        plain = MAKERS[name]()
        each = next(each for each in plain.inputs if each.name == what.removesuffix(" unit"))
        sheet = MAKERS[name]({each.name: ("?", each.unit)})
        for key, (cell, _, value) in sheet.results.items():
            found = run.value(name, cell)
            if isnan(value):
                assert found == Error(NOT_AVAILABLE), (name, what, kind, key, found)
                silenced.setdefault(f"{name}.{each.name}", set()).add(key)
            else:
                assert agrees(found, value), (name, what, kind, key, found, value)
        if sheet.grid:
            top, left, bottom, right = sheet.grid
            area = [address(row, column) for row in range(top, bottom + 1) for column in range(left, right + 1)]
            kinds = {run.value(name, cell) == Error(NOT_AVAILABLE) for cell in area}
            assert kinds == {True} or each.name in ("cold", "warm", "least", "most"), (name, what, kind)
            silenced.setdefault(f"{name}.{each.name}", set()).add("grid")
        # Nothing but #N/A stands anywhere, and that only where it has to.
        assert set(run.found[name]["errors"].values()) <= {NOT_AVAILABLE, *(["other"] if kind == "error" else [])}, (
            name,
            what,
            kind,
        )
    inputs = {f"{name}.{each.name}" for name in MAKERS for each in MAKERS[name]().inputs}
    assert set(silenced) == inputs, "every input silences something"


@needs_office
def test_what_lies_outside_a_range_stands_below_the_results(everything: Everything) -> None:
    said: dict[str, set[str]] = {}
    for name, _, run in everything.good:
        cells = [address(row, column) for (row, column), cell in MAKERS[name]().cells.items() if cell.look == "remark"]
        said.setdefault(name, set()).update(str(run.value(name, cell)) for cell in cells)
        assert not any(everything.default.value(name, cell) for cell in cells), name
    for name, words in {
        "Keg": "temperature outside 32 to 59 °F",
        "Bottle": "highest temperature since active fermentation outside 32 to 86 °F",
        "Line": "height of the faucet over the drink outside",
        "Gravity": "original extract outside 5 to 25 °P",
        "Chart": "temperature outside 32 to 59 °F",
    }.items():
        assert any(text.startswith(words) for text in said[name]), (name, said[name])
    assert any("glass can burst" in text for text in said["Bottle"])


@needs_office
def test_a_truth_is_no_number(everything: Everything) -> None:
    for name, what, run in everything.truths:
        unit = next(each.unit for each in MAKERS[name]().inputs if each.name == what)
        sheet = MAKERS[name]({what: ("?", unit)})
        found = {run.value(name, cell) for cell, _, value in sheet.results.values() if isnan(value)}
        assert found == {Error(NOT_AVAILABLE)}, (name, what)


@needs_office
def test_every_equation_is_its_kernel_inside_its_ranges(everything: Everything) -> None:
    for values, run in everything.equations:
        for name, (_, cell, _) in book().equations.places.items():
            found, wanted = run.value("Equations", cell), kernel(name, values[name])
            # In the relations for extract terms of about 1000 cancel near a gravity of 1: rounding is relative to them.
            terms = 1000.0 if name.startswith("extract_") else 0.0
            near = isinstance(found, float) and abs(found - wanted) <= RELATIVE * max(abs(wanted), terms)
            assert near, (name, values[name], found, wanted)


@needs_office
def test_nonsense_makes_no_number_of_an_equation(everything: Everything) -> None:
    for at, kind, run in everything.bad_equations:
        for name, (inputs, cell, _) in book().equations.places.items():
            found = run.value("Equations", cell)
            if at >= len(inputs):
                assert isinstance(found, float), (name, kind, found)
            else:
                assert found == Error(NOT_AVAILABLE), (name, EQUATIONS[name].inputs[at].name, kind, found)


@needs_office
def test_every_published_value_passes_and_a_planted_one_does_not(everything: Everything) -> None:
    check = book().check
    rows = len(check.rows)
    assert {everything.default.value("Check", cell) for cell in check.passed} == {"pass"}
    assert everything.default.value("Check", check.count) == f"{rows} of {rows} pass"
    assert everything.default.value("Check", check.verdict) == "all pass"
    cell, wrong = everything.planted
    assert [wrong.value("Check", each) for each in check.passed].count("FAIL") == 1
    assert wrong.value("Check", check.passed[check.values.index(cell)]) == "FAIL"
    assert wrong.value("Check", check.count) == f"{rows - 1} of {rows} pass"
    assert wrong.value("Check", check.verdict) != "all pass"
    assert everything.unplanted.value("Check", check.verdict) == "all pass"
    assert rows > 150


# The file


def parts(path: Path) -> dict[str, bytes]:
    with zipfile.ZipFile(path) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


def test_the_file_is_the_one_that_the_generator_writes(tmp_path: Path) -> None:
    Book().write(tmp_path / "again.xlsx")
    again, committed = parts(tmp_path / "again.xlsx"), parts(WORKBOOK)
    assert sorted(again) == sorted(committed)
    differing = [name for name in again if again[name] != committed[name]]
    assert not differing, f"{differing}: run python -m plain in carb-sheet"


def test_inputs_are_open_and_everything_else_is_locked() -> None:
    from plain.book import LOOKS

    opened = {name for name, look in LOOKS.items() if look.get("locked") is False}
    assert opened == {"input", "input free", "choice"}
    for sheet in book().sheets:
        for place, cell in sheet.cells.items():
            assert not (is_formula(cell.content) and cell.look in opened), (sheet.name, place)
    protected = [name for name, text in parts(WORKBOOK).items() if b"<sheetProtection sheet=" in text]
    assert len(protected) == len(book().sheets)


def test_no_formula_needs_a_program_newer_than_2007() -> None:
    for sheet in book().sheets:
        for place, cell in sheet.cells.items():
            if is_formula(cell.content):
                assert "_xlfn" not in cell.content and len(cell.content) < 8192, (sheet.name, place)
