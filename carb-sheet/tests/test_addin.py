"""The add-in in a real LibreOffice: what stands in its cells is what the library says, to the last bit.

One LibreOffice works out all documents below; each test reads what one of them shows.
"""

import csv
import json
import os
import re
import shutil
import subprocess
import zipfile
from pathlib import Path

import carb
import pytest
from carb import _carb

ROOT = Path(__file__).parents[2]
ADDIN = Path(os.environ.get("CARB_OXT", ROOT / "target" / "carb.oxt"))
PYTHON = "/usr/bin/python3"
"""That of LibreOffice, which alone knows it."""
FUNCTIONS = json.loads(_carb.tables())["functions"]
TABLES = json.loads(_carb.tables())["tables"]
ARGUMENT = 502
"""Calc's error for what a function does not take."""
SAME = 1e-12

missing = [name for name in ("soffice", "unopkg") if shutil.which(name) is None]
pytestmark = pytest.mark.skipif(bool(missing), reason=f"LibreOffice Calc is not here: no {' and no '.join(missing)}")


def quoted(value):
    """A value as a formula writes it."""
    if isinstance(value, bool):
        return "TRUE()" if value else "FALSE()"
    return f'"{value.replace(chr(34), chr(34) * 2)}"' if isinstance(value, str) else repr(value)


def formula(function, *arguments, **given):
    """A formula: its first arguments as they are, then names and values."""
    pairs = [part for name, value in given.items() for part in (quoted(name), quoted(value))]
    return f"{function.upper()}({';'.join([*arguments, *pairs])})"


def full(out):
    return "_".join(filter(None, (out["noun"], out["name"])))


def place(column, row):
    return f"{chr(ord('A') + column // 26 - 1) if column > 25 else ''}{chr(ord('A') + column % 26)}{row}"


# Every function's example, in every unit that is shown.


def examples():
    for function in FUNCTIONS:
        given = json.loads(function["example"])
        for out in function["outputs"]:
            if out["shown"] and out["name"] not in given:
                yield function["name"], given, full(out)


EXAMPLES = list(examples())


def example_cells():
    cells = {}
    for row, (function, given, output) in enumerate(EXAMPLES, 1):
        cells[f"Sheet1.A{row}"] = "=" + formula(function, quoted(output), **given)
        cells[f"Sheet1.B{row}"] = "=" + formula("carb_cautions", quoted(function), **given)
        cells[f"Sheet1.C{row}"] = "=" + formula("carb_sources", quoted(function), **given)
    return cells


# The cases that every language answers alike.


def cases():
    path = ROOT / "tests" / "conformance" / "cases.tsv"
    known = {function["name"] for function in FUNCTIONS}
    with path.open(encoding="utf-8", newline="") as file:
        rows = csv.DictReader(file, delimiter="\t", quoting=csv.QUOTE_NONE)
        return [row for row in rows if row["function"] in known]


CASES = cases()


def case_pairs(case):
    """Names and values of a case as a formula writes them; a name may stand there twice."""
    parts = []
    for pair in case["inputs"].split(";") if case["inputs"] else []:
        name, _, value = pair.partition("=")
        parts += [quoted(name), value if is_number(value) else quoted(value)]
    return parts


def is_number(text):
    try:
        return abs(float(text)) < float("inf")
    except ValueError:
        return False


def case_outputs(case):
    pairs = (pair.partition("=") for pair in case["outputs"].split(";") if pair)
    return [(name, float(value)) for name, _, value in pairs]


def case_cells():
    cells = {}
    for row, case in enumerate(CASES, 1):
        pairs = case_pairs(case)
        outputs = case_outputs(case)
        first = (
            outputs[0][0]
            if outputs
            else full(next(f for f in FUNCTIONS if f["name"] == case["function"])["outputs"][0])
        )
        cells[f"Sheet1.A{row}"] = "=" + formula(case["function"], quoted(first), *pairs)
        if outputs:
            several = "{" + ";".join(quoted(name) for name, _ in outputs) + "}"
            last = place(len(outputs), row)
            cells[f"Sheet1.B{row}:{last}"] = "{=" + formula(case["function"], several, *pairs) + "}"
        else:
            cells[f"Sheet1.B{row}"] = "=" + formula("carb_cautions", quoted(case["function"]), *pairs)
    return cells


# The forms that arguments take.

DOSE = 'PRIMING_SUGAR("mass_g";"packaged_l";19;"volumes";2.4;"warmest_c";20;"altitude_m";9;%s)'
KEG = 'KEG_PRESSURE("gauge_psi";%s;"temperature_f";38;"altitude_m";100)'
INPUTS = {
    "A1": "volumes", "B1": 2.5, "A2": "temperature_f", "B2": 38, "A3": "altitude_m", "B3": 100, "A4": "abv_percent",
    "A6": "beverage", "B6": "cider", "A7": "sugar", "B7": "sucrose", "A8": "count_headspace", "B8": "=TRUE()",
    "D1": 2.0, "D2": 2.5, "D3": 3.0, "E1": 36, "F1": 38, "G1": 40, "H1": 2.0, "H3": "much", "H4": 45.0, "H5": 2.5,
    "I1": "beer", "I2": "wine", "I3": "ale", "A9": "=1/0", "B9": "=NA()", "K1": "Volumes ", "L1": 2.5,
}  # fmt: skip
FORMS = {
    "block": '=KEG_PRESSURE("gauge_psi";A1:B4)',
    "block and pair": '=KEG_PRESSURE("gauge_psi";A1:B2;"altitude_m";0)',
    "two blocks": '=KEG_PRESSURE("gauge_psi";A1:B4;A5:B6)',
    "empty block": '=KEG_PRESSURE("gauge_psi";A1:B3;C10:D12)',
    "capitals": '=KEG_PRESSURE(" Gauge_PSI";K1;L1;"Temperature_F";38;"altitude_m";100)',
    "lower case": '=keg_pressure("gauge_psi";A1:B3)',
    "nested": '=ROUND(1+KEG_PRESSURE("gauge_psi";A1:B3);2)',
    "of another": '=DISSOLVED_CO2("volumes";"gauge_psi";KEG_PRESSURE("gauge_psi";A1:B3);A2:B3)',
    "sum": "=SUM(" + KEG % '"volumes";D1:D3' + ")",
    "choice": "=" + KEG % '"volumes";2.5;"beverage";"soft_drink"',
    "flag as a word": "=" + DOSE % 'A7:B7;"count_headspace";"true"',
    "flag as a value": "=" + DOSE % "A7:B8",
    "any unit": '=KEG_PRESSURE("gauge_pa";A1:B3)',
}
WRONG = {
    "no arguments": '=KEG_PRESSURE("gauge_psi")',
    "odd arguments": '=KEG_PRESSURE("gauge_psi";"volumes")',
    "text for a number": "=" + KEG % '"volumes";"much"',
    "number in quotes": "=" + KEG % '"volumes";"2.5"',
    "number for a choice": "=" + KEG % '"volumes";2.5;"beverage";3',
    "number for a flag": "=" + DOSE % 'A7:B7;"count_headspace";2',
    "unknown choice": "=" + KEG % '"volumes";2.5;"beverage";"ale"',
    "unknown name": "=" + KEG % '"volumse";2.5',
    "unknown output": '=KEG_PRESSURE("guage_psi";A1:B3)',
    "empty wanted": '=KEG_PRESSURE("";A1:B3)',
    "no wanted": "=KEG_PRESSURE(;A1:B3)",
    "wanted is a number": "=KEG_PRESSURE(1;A1:B3)",
    "wanted is an empty cell": "=KEG_PRESSURE(C20;A1:B3)",
    "twice": '=KEG_PRESSURE("gauge_psi";A1:B3;"volumes";2.5)',
    "in two units": '=KEG_PRESSURE("gauge_psi";A1:B3;"temperature_c";3)',
    "a choice twice": "=" + KEG % '"volumes";2.5;"beverage";"beer";"beverage";"beer"',
    "not taken": '=KEG_PRESSURE("gauge_psi";A1:B3;"packaged_l";19)',
    "wide block": '=KEG_PRESSURE("gauge_psi";A1:C3)',
    "numbers as names": '=KEG_PRESSURE("gauge_psi";D1:E3)',
    "number as a name": '=KEG_PRESSURE("gauge_psi";2.5;"volumes")',
    "far too many": '=KEG_PRESSURE("gauge_psi";"volumes";Q1:Q20000;"temperature_f";R1:DM1;"altitude_m";0)',
    "huge": "=" + KEG % '"volumes";1E308',
    "below zero": "=" + KEG % '"volumes";-1E308',
    "long name": "=" + KEG % f'"{"v" * 300}";2.5',
    "long wanted": f'=KEG_PRESSURE("{"v" * 300}";A1:B3)',
    "long choice": "=" + KEG % f'"volumes";2.5;"beverage";"{"v" * 300}"',
    "other letters": "=" + KEG % '"объём";2.5',
    "other letters wanted": '=KEG_PRESSURE("Überdruck😀";A1:B3)',
    "other letters chosen": "=" + KEG % '"volumes";2.5;"beverage";"пиво"',
    "air pressure untold": '=KEG_PRESSURE("gauge_psi";A1:B2)',
    "gauge to absolute": '=CARB_CONVERT(12;"gauge_psi";"abs_bar")',
    "units of two kinds": '=CARB_CONVERT(12;"psi";"c")',
    "unknown unit": '=CARB_CONVERT(12;"psi";"hands")',
    "text converted": '=CARB_CONVERT("much";"psi";"bar")',
    "nothing converted": '=CARB_CONVERT(;"psi";"bar")',
    "unknown table": '=CARB_TABLE("prices")',
    "sources of nothing": '=CARB_SOURCES("KEG_PRESSURE";"volumes";2.5)',
}
PASSED_ON = {
    "error": "=" + KEG % '"volumes";A9',
    "not available": "=" + KEG % '"volumes";B9',
    "error in a range": "=" + KEG % '"volumes";A9:B9',
    "error in a block": '=KEG_PRESSURE("gauge_psi";A1:B9)',
}
ARRAYS = {
    "column": ("30:30", 3, 1, KEG % '"volumes";D1:D3'),
    "grid": ("34", 3, 3, 'KEG_PRESSURE("gauge_psi";"volumes";D1:D3;"temperature_f";E1:G1;"altitude_m";100)'),
    "holes": ("38", 5, 1, KEG % '"volumes";H1:H5'),
    "outputs": ("44", 1, 4, 'KEG_PRESSURE({"gauge_psi";"gauge_bar";"abs_psi";"abs_bar"};A1:B3)'),
    "choices": ("46", 3, 1, KEG % '"volumes";2.5;"beverage";I1:I3;"basis";"physical"'),
    "optional holes": ("50", 5, 1, KEG % '"volumes";2.5;"basis";"physical";"abv_percent";H1:H5'),
    "converted": ("56", 3, 1, 'CARB_CONVERT(D1:D3;"volumes";"co2_g_per_l")'),
    "cautions": ("60", 5, 1, 'CARB_CAUTIONS("KEG_PRESSURE";"volumes";H1:H5;A2:B3)'),
    "uneven": ("66", 3, 1, 'KEG_PRESSURE("gauge_psi";"volumes";D1:D3;"temperature_f";H1:H5;"altitude_m";100)'),
    "sea level of each": ("70", 3, 1, KEG % '"volumes";2.5;"sea_level_kpa";H11:H13'),
}
ARRAYS["column"] = ("30", *ARRAYS["column"][1:])
COMPANIONS = {
    "cautions": '=CARB_CAUTIONS("keg_pressure";A1:B3)',
    "with what is wanted": '=CARB_CAUTIONS("KEG_PRESSURE";"gauge_psi";A1:B3)',
    "unknown wanted": '=CARB_CAUTIONS("KEG_PRESSURE";"guage_psi";A1:B3)',
    "unknown function": '=CARB_CAUTIONS("KEG_PRESURE";A1:B3)',
    "why not": '=CARB_CAUTIONS("KEG_PRESSURE";A1:B2)',
    "danger": '=CARB_CAUTIONS("PACKAGE_PRESSURE";"volumes";5;"temperature_c";40;"altitude_m";0;"headspace_percent";4;'
    '"bottle_class";"light_one_way")',
    "sources": '=CARB_SOURCES("KEG_PRESSURE";A1:B3)',
    "working": '=CARB_WORKING("KEG_PRESSURE";A1:B3)',
    "version": "=CARB_VERSION()",
    "converted": '=CARB_CONVERT(38;"temperature_f";"c")',
    "gauge": '=CARB_CONVERT(12;"gauge_psi";"Gauge_Bar")',
}
EVERY_FORM = {**FORMS, **WRONG, **PASSED_ON, **COMPANIONS}


def form_cells():
    cells = {f"Sheet1.{at}": value for at, value in INPUTS.items()}
    cells |= {"Sheet1.H11": 101.0, "Sheet1.H12": 102.0, "Sheet1.H13": 103.0}
    cells |= {f"Sheet1.N{row}": text for row, text in enumerate(EVERY_FORM.values(), 1)}
    for row, height, width, text in ARRAYS.values():
        cells[f"Sheet1.D{row}:{place(2 + width, int(row) + height - 1)}"] = "{=" + text + "}"
    return cells


# Empty cells. Every row is a call; the runs below fill and empty B1.

EMPTIES = {
    "reference": "B1",
    "range of one": "B1:B1",
    "left out": "",
    "named": "height",
    "in brackets": "(B1)",
    "on a sheet": "$Sheet1.$B$1",
    "picked": "IF(1;B1)",
    "picked, plus 0": "IF(1;B1)+0",
    "looked up": "VLOOKUP(1;A1:B1;2;0)",
    "indexed": "INDEX(B1:B2;1)",
    "a number": "0",
    "worked out": "1-1",
    "of a formula": "C1",
}


def empty_cells(change):
    """Each form on its own values, so that none can be mistaken for another; and one mixed up on purpose."""
    cells = {"Sheet1.A1": 1.0, "Sheet1.C1": "=1-1", "Sheet1.B1": None}
    for row, form in enumerate(EMPTIES.values(), 3):
        pairs = f'"volumes";{2 + row / 16};"temperature_f";38;"altitude_m";{form}'
        cells[f"Sheet1.D{row}"] = f'=KEG_PRESSURE("gauge_psi";{pairs})'
        cells[f"Sheet1.E{row}"] = f'=CARB_CAUTIONS("KEG_PRESSURE";{pairs})'
    return cells | change


# Two calls with the same values, of which one means a 0 and the other an empty cell.
MIXED = {
    "Sheet1.A1": '=KEG_PRESSURE("gauge_psi";"volumes";2.5;"temperature_f";38;"altitude_m";0)',
    "Sheet1.A2": '=KEG_PRESSURE("gauge_psi";"volumes";2.5;"temperature_f";38;"altitude_m";B2)',
    "Sheet1.A3": '=CARB_CAUTIONS("KEG_PRESSURE";"volumes";2.5;"temperature_f";38;"altitude_m";B2)',
}

# The page for people.


PAGE_TEXT = (ROOT / "docs" / "calc.md").read_text("utf-8")
README = (ROOT / "README.md").read_text("utf-8")
PAGE = re.findall(r"^(=.*?\)) +→ (.+)$", PAGE_TEXT + README, re.MULTILINE)


def page_cells():
    """The formulas of the page, and its block of inputs."""
    cells = {f"Sheet1.N{row}": text for row, (text, _) in enumerate(PAGE, 1)}
    for row, name, given in re.findall(r"^\| (\d+) \| (\w+) \| ([\d.]*) ?\|$", PAGE_TEXT, re.MULTILINE):
        cells |= {f"Sheet1.A{row}": name, f"Sheet1.B{row}": float(given) if given else None}
    return cells


MODELS = '{=CARB_TABLE("Solubility_Models";"volumes";2.5;"temperature_f";38;"altitude_m";0)}'
DOCUMENTS = {
    "examples": {"quick": True, "runs": [{"set": example_cells()}], "save": "examples.ods"},
    "examples again": {"quick": True, "path": "examples.ods"},
    "cases": {"quick": True, "runs": [{"set": case_cells()}]},
    "forms": {"runs": [{"set": form_cells()}]},
    "tables": {
        "runs": [
            {
                "set": {
                    "Sheet1.A1:N90": '{=CARB_TABLE("fermentables")}',
                    "Sheet1.P1:U40": MODELS,
                    "Sheet1.W1": "bottle_ml",
                    "Sheet1.X1": "count",
                    "Sheet1.W2": 500.0,
                    "Sheet1.X2": 30.0,
                    "Sheet1.W3": 330.0,
                    "Sheet1.X3": 24.0,
                    "Sheet1.W6:AN12": '{=CARB_TABLE("fill_list";"packaged_l";19.2;"bottles";W1:X4)}',
                    "Sheet1.W15": '=CARB_TABLE("fill_list";"packaged_l";19.2;"bottles";W2:X4)',
                    "Sheet1.W16": '=CARB_TABLE("fill_list";"packaged_l";19.2;"bottles";W1:X2)',
                    "Sheet1.W17": '=CARB_TABLE("keg_sizes";"packaged_l";19.2)',
                }
            }
        ]
    },
    "empties": {
        "names": {"height": "$Sheet1.$B$1"},
        "runs": [{"set": empty_cells({})}, {"set": {"Sheet1.B1": 0.0}}, {"set": {"Sheet1.B1": None}}],
    },
    "mixed": {"runs": [{"set": MIXED}, {"set": {"Sheet1.B2": 0.0}}, {"set": {"Sheet1.B2": None, "Sheet1.A1": None}}]},
    "typed": {
        "runs": [
            {"as_it_comes": True, "set": {"Sheet1.A2": MIXED["Sheet1.A2"]}},
            {"as_it_comes": True, "set": {"Sheet1.B2": 0.0}},
            {"as_it_comes": True, "set": {"Sheet1.B2": None}},
        ]
    },
    "copied": {
        "runs": [
            {
                "as_it_comes": True,
                "set": {"Sheet1.B1": 0.0, "Sheet1.A1": MIXED["Sheet1.A2"].replace("B2", "B1")},
                "copy": [["Sheet1.A1", "Sheet1.A2"], ["Sheet1.A2", "Sheet1.A3"]],
            },
            {"set": {"Sheet1.B2": 0.0, "Sheet1.B3": 0.0}},
        ]
    },
    "page": {"runs": [{"set": page_cells()}]},
    "described": {"described": True},
    "calls": {
        "calls": [
            ["KEG_PRESSURE", ["gauge_psi", "volumes", 2.5, "temperature_f", 38.0, "altitude_m", 0.0]],
            ["KEG_PRESSURE", ["gauge_psi", "volumes", 2.5, "temperature_f", 38.0]],
        ]
    },
}


@pytest.fixture(scope="module")
def shown(tmp_path_factory):
    """What each document shows after each of its runs."""
    assert ADDIN.exists(), f"{ADDIN} is not there: make addin"
    folder = tmp_path_factory.mktemp("office")
    wanted = []
    for one in DOCUMENTS.values():
        paths = {key: str(folder / one[key]) for key in ("path", "save") if key in one}
        wanted.append({**one, **paths})
    job = {"folder": str(folder / "profile"), "addin": str(ADDIN), "documents": wanted}
    done = subprocess.run(
        [PYTHON, str(Path(__file__).with_name("office.py"))], input=json.dumps(job), capture_output=True, text=True
    )
    assert done.returncode == 0, done.stderr
    return dict(zip(DOCUMENTS, json.loads(done.stdout), strict=True))


def error(cell):
    return cell[3]


def value(cell):
    assert error(cell) == 0, cell
    return cell[1]


def close(got, wanted):
    return abs(got - wanted) <= SAME * abs(wanted)


def said(function, given, output):
    """What the library says, through Python."""
    return _carb.answer(function, given).value(output)


def texts(function, given, part):
    return json.loads(_carb.json(function, json.dumps({"carb": 1, **given})))[part]


def test_examples(shown):
    """Every function in every unit shown."""
    cells = shown["examples"][0]
    same_bits = 0
    for row, (function, given, output) in enumerate(EXAMPLES, 1):
        got, wanted = value(cells[f"Sheet1.A{row}"]), said(function, given, output)
        assert close(got, wanted), (function, output, got, wanted)
        same_bits += got == wanted
    assert {function for function, _, _ in EXAMPLES} == {function["name"] for function in FUNCTIONS}
    print(f"\n{len(EXAMPLES)} examples, {same_bits} of them equal to the last bit")
    assert same_bits == len(EXAMPLES)


def test_examples_say_what_is_behind_them(shown):
    cells = shown["examples"][0]
    for row, (function, given, _) in enumerate(EXAMPLES, 1):
        cautions = cells.get(f"Sheet1.B{row}", ["", 0, "", 0])[2]
        assert all(one["text"] in cautions for one in texts(function, given, "cautions")), function
        sources = cells[f"Sheet1.C{row}"][2]
        assert sources == "\n".join(one["citation"] for one in texts(function, given, "sources")), function


def test_saved_and_loaded(shown):
    assert shown["examples again"][0] == shown["examples"][0]


def test_cases(shown):
    """Answers to the last bit, errors as errors, with the library's sentence beside them."""
    cells = shown["cases"][0]
    answers = errors = 0
    for row, case in enumerate(CASES, 1):
        outputs = case_outputs(case)
        if case["code"] != "0":
            errors += 1
            assert error(cells[f"Sheet1.A{row}"]) == ARGUMENT, case["inputs"]
            told = json.loads(case["answer_json"])["error"]["text"]
            # What no package holds is a danger, though there is no number.
            level = "DANGER" if case["code"] in ("-15", "-16") else "Error"
            assert cells[f"Sheet1.B{row}"][2] == f"{level}: {told}", (case["code"], case["inputs"])
            continue
        assert value(cells[f"Sheet1.A{row}"]) == outputs[0][1], case["inputs"]
        for column, (name, wanted) in enumerate(outputs, 1):
            answers += 1
            assert value(cells[f"Sheet1.{place(column, row)}"]) == wanted, (case["inputs"], name)
    print(f"\n{answers} answers, {errors} errors")
    assert answers > 5000 and errors > 400


@pytest.fixture(scope="module")
def form(shown):
    """The cell of a form by its name."""
    cells = shown["forms"][0]
    return {name: cells[f"Sheet1.N{row}"] for row, name in enumerate(EVERY_FORM, 1)}


@pytest.fixture(scope="module")
def array(shown):
    """The cells of an array by its name, row by row."""
    cells = shown["forms"][0]
    return {
        name: [[cells[f"Sheet1.{place(3 + x, int(row) + y)}"] for x in range(width)] for y in range(height)]
        for name, (row, height, width, _) in ARRAYS.items()
    }


def keg(volumes=2.5, temperature_f=38, altitude_m=100, output="gauge_psi", **more):
    return said(
        "keg_pressure", dict(volumes=volumes, temperature_f=temperature_f, altitude_m=altitude_m, **more), output
    )


def test_forms(form):
    assert value(form["block"]) == keg()
    assert value(form["block and pair"]) == keg(altitude_m=0)
    assert value(form["two blocks"]) == keg(beverage="cider")
    assert value(form["empty block"]) == keg()
    assert value(form["capitals"]) == keg()
    assert value(form["lower case"]) == keg()
    assert value(form["nested"]) == round(1 + keg(), 2)
    assert close(value(form["of another"]), 2.5)
    assert close(value(form["sum"]), keg(2.0) + keg(2.5) + keg(3.0))
    assert value(form["choice"]) == keg(beverage="soft_drink")
    assert value(form["any unit"]) == keg(output="gauge_pa")
    dose = dict(packaged_l=19, volumes=2.4, warmest_c=20, sugar="sucrose", altitude_m=9, count_headspace=True)
    assert value(form["flag as a word"]) == value(form["flag as a value"]) == said("priming_sugar", dose, "mass_g")


@pytest.mark.parametrize("name", WRONG)
def test_wrong(form, name):
    assert error(form[name]) == ARGUMENT


@pytest.mark.parametrize("name", PASSED_ON)
def test_errors_are_passed_on(form, name):
    assert error(form[name]) != 0


def test_arrays(array):
    assert [value(row[0]) for row in array["column"]] == [keg(2.0), keg(2.5), keg(3.0)]
    grid = [[keg(volumes, degrees) for degrees in (36, 38, 40)] for volumes in (2.0, 2.5, 3.0)]
    assert [[value(one) for one in row] for row in array["grid"]] == grid
    outputs = ("gauge_psi", "gauge_bar", "abs_psi", "abs_bar")
    assert [value(one) for one in array["outputs"][0]] == [keg(output=output) for output in outputs]
    beer, wine = (keg(beverage=drink, basis="physical") for drink in ("beer", "wine"))
    assert [value(row[0]) for row in array["choices"][:2]] == [beer, wine]
    assert error(array["choices"][2][0]) == ARGUMENT
    grams = [carb.convert(volumes, "volumes", "co2_g_per_l") for volumes in (2.0, 2.5, 3.0)]
    assert [value(row[0]) for row in array["converted"]] == grams
    levels = [keg(sea_level_kpa=level) for level in (101.0, 102.0, 103.0)]
    assert [value(row[0]) for row in array["sea level of each"]] == levels


def test_elements_stand_for_themselves(array):
    """One that is missing, a text or beyond the limits is an error; its neighbours are answered."""
    cells = [row[0] for row in array["holes"]]
    assert [error(cell) for cell in cells] == [0, ARGUMENT, ARGUMENT, ARGUMENT, 0]
    assert (value(cells[0]), value(cells[4])) == (keg(2.0), keg(2.5))


def test_optional_elements_that_are_empty_take_their_default(array):
    cells = [row[0] for row in array["optional holes"]]
    assert value(cells[1]) == keg(basis="physical")
    assert value(cells[0]) == keg(basis="physical", abv_percent=2.0)
    assert error(cells[2]) == error(cells[3]) == ARGUMENT


def test_ranges_that_do_not_go_together(array):
    assert [error(row[0]) for row in array["uneven"]] == [ARGUMENT] * 3


def test_cautions_of_a_range(array):
    said = [row[0][2] for row in array["cautions"]]
    assert [text.startswith("Error: ") for text in said] == [False, True, True, True, False]


def test_companions(form):
    given = {"volumes": 2.5, "temperature_f": 38, "altitude_m": 100}
    (note,) = texts("keg_pressure", given, "cautions")
    assert form["cautions"][2] == form["with what is wanted"][2] == f"Note: {note['text']}"
    assert form["sources"][2].split("\n") == [one["citation"] for one in texts("keg_pressure", given, "sources")]
    assert form["working"][2].split("\n") == [
        line for step in texts("keg_pressure", given, "working") for line in step["text"].split("\n")
    ]
    assert form["version"][2] == _carb.__version__
    assert value(form["converted"]) == carb.convert(38, "f", "c")
    assert value(form["gauge"]) == carb.convert(12, "psi", "bar")


def test_what_is_wrong_is_told(form):
    assert form["unknown wanted"][2].startswith('Error: keg_pressure has no output "guage_psi": it has gauge_kpa,')
    assert form["unknown function"][2].startswith(
        'Error: there is no function "keg_presure": choose one of dissolved_co2,'
    )
    assert form["why not"][2].startswith("Error: altitude_m is missing: ")


def test_danger_comes_first(form):
    assert form["danger"][2].startswith("DANGER: "), form["danger"]


def test_tables(shown):
    cells = shown["tables"][0]
    rows = json.loads(_carb.json("fermentables", '{"carb": 1}'))["rows"]
    names = [column["name"] for column in next(table for table in TABLES if table["name"] == "fermentables")["columns"]]
    assert [cells[f"Sheet1.{place(x, 1)}"][2] for x in range(len(names))] == names
    for y, row in enumerate(rows, 2):
        for x, name in enumerate(names):
            cell = cells[f"Sheet1.{place(x, y)}"]
            assert (cell[1] if isinstance(row[name], float) else cell[2]) == ("" if row[name] is None else row[name])
    assert cells["Sheet1.P1"][2] == "model" and len(rows) > 30


def test_a_table_takes_a_list(shown):
    """Bottles at hand as a range with names above; an empty row is none, and bottles that do not do are an error."""
    cells = shown["tables"][0]
    bottles = [{"bottle_ml": 500, "count": 30}, {"bottle_ml": 330, "count": 24}]
    request = json.dumps({"carb": 1, "packaged_l": 19.2, "bottles": bottles})
    rows = json.loads(_carb.json("fill_list", request))["rows"]
    names = [cells[f"Sheet1.{place(22 + x, 6)}"][2] for x in range(len(rows[0]))]
    assert sorted(names) == sorted(rows[0])
    for y, row in enumerate(rows, 7):
        for x, name in enumerate(names):
            cell = cells[f"Sheet1.{place(22 + x, y)}"]
            assert row[name] in (cell[1], cell[2]) or row[name] is None, (name, cell)
    assert [error(cells[f"Sheet1.W{row}"]) for row in (15, 16, 17)] == [ARGUMENT] * 3


SEA_LEVEL = [keg(2 + row / 16, altitude_m=0) for row in range(3, 3 + len(EMPTIES))]
ALWAYS = {"a number", "worked out", "of a formula"}
PICKED = {"picked", "looked up", "indexed"}


def test_an_empty_cell_is_missing(shown):
    for run in (0, 2):
        cells = shown["empties"][run]
        for row, (name, wanted) in enumerate(zip(EMPTIES, SEA_LEVEL, strict=True), 3):
            cell, told = cells[f"Sheet1.D{row}"], cells[f"Sheet1.E{row}"][2]
            if name in ALWAYS | {"picked, plus 0"}:
                assert value(cell) == wanted, name
            else:
                assert error(cell) == ARGUMENT, name
                assert ("write +0 behind it" if name in PICKED else "altitude_m is missing") in told, (name, told)


def test_a_cell_that_holds_0_is_0(shown):
    cells = shown["empties"][1]
    for row, (name, wanted) in enumerate(zip(EMPTIES, SEA_LEVEL, strict=True), 3):
        if name in PICKED | {"left out"}:
            assert error(cells[f"Sheet1.D{row}"]) == ARGUMENT, name
        else:
            assert value(cells[f"Sheet1.D{row}"]) == wanted, name


def test_nothing_is_guessed(shown):
    """The same values once with a 0 and once with an empty cell: both are errors, and it is told what to write."""
    both, zero, alone = shown["mixed"]
    assert error(both["Sheet1.A1"]) == error(both["Sheet1.A2"]) == ARGUMENT
    assert "B2:B2 instead of B2" in both["Sheet1.A3"][2]
    assert value(zero["Sheet1.A1"]) == value(zero["Sheet1.A2"]) == keg(altitude_m=0)
    assert error(alone["Sheet1.A2"]) == ARGUMENT and "altitude_m is missing" in alone["Sheet1.A3"][2]


def test_typing(shown):
    empty, zero, emptied = shown["typed"]
    assert error(empty["Sheet1.A2"]) == error(emptied["Sheet1.A2"]) == ARGUMENT
    assert value(zero["Sheet1.A2"]) == keg(altitude_m=0)


def test_copying(shown):
    """A copy that refers to an empty cell is worked out before the document tells that it was changed."""
    copied, filled_in = shown["copied"]
    assert value(copied["Sheet1.A1"]) == keg(altitude_m=0)
    assert error(copied["Sheet1.A2"]) == error(copied["Sheet1.A3"]) == ARGUMENT
    assert [value(filled_in[f"Sheet1.A{row}"]) for row in (1, 2, 3)] == [keg(altitude_m=0)] * 3


def test_without_a_document_a_0_is_a_0(shown):
    assert shown["calls"] == [[[keg(altitude_m=0)]], None]


OURS = {function["name"].upper() for function in FUNCTIONS}
BESIDE = {f"CARB_{name}" for name in ("CAUTIONS", "SOURCES", "WORKING", "CONVERT", "TABLE", "VERSION")}


def test_no_name_of_ours_is_one_of_calcs(shown):
    """One would be listed twice; and typed by its short name, Calc's own would be meant."""
    names = [name for name, _, _ in shown["described"]]
    assert all(names.count(name) == 1 for name in OURS | BESIDE)
    typed = [cell[0] for document in ("examples", "forms") for cell in shown[document][0].values()]
    typed = [text for text in typed if any(f"{name.replace('_', '')}(" in text for name in OURS)]
    assert len(typed) > 300 and all("CARB.CALC." in text for text in typed)


def test_the_wizard_tells_every_function_and_argument(shown):
    described = {name: said for name, *said in shown["described"]}
    for function in FUNCTIONS:
        text, arguments = described[function["name"].upper()]
        assert text == function["summary"]
        (wanted, outputs), (first_name, inputs), *others = arguments
        assert (wanted, first_name) == ("wanted", "name 1")
        assert len(others) == 2 * len(function["inputs"]) - 1
        assert all(full(out) in outputs for out in function["outputs"] if out["shown"])
        for known in function["inputs"]:
            first, *others = known["names"]
            assert first in inputs and all(f"_{name.rpartition('_')[2]}" in inputs or name in inputs for name in others)
    for name in BESIDE:
        text, arguments = described[name]
        assert text and all(all(argument) for argument in arguments)


def test_where_the_library_is_missing_it_is_told(tmp_path):
    with zipfile.ZipFile(ADDIN) as addin:
        addin.extractall(tmp_path, [name for name in addin.namelist() if name.startswith("pythonpath/")])
    ask = "from carb_calc.library import version; from carb_calc.refusal import Refusal\ntry: version()\n"
    ask += "except Refusal as refusal: print(refusal)"
    done = subprocess.run([PYTHON, "-c", ask], cwd=tmp_path / "pythonpath", capture_output=True, text=True)
    assert "this add-in was built for" in done.stdout and "`make addin`" in done.stdout, done.stderr


def test_the_page_shows_what_is_so(shown):
    """Every formula of docs/calc.md and the README that has an answer there."""
    cells = shown["page"][0]
    for row, (text, wanted) in enumerate(PAGE, 1):
        _, number, told, failed = cells[f"Sheet1.N{row}"]
        assert failed == 0, text
        assert told.startswith(wanted) if not is_number(wanted) else f"{number:.3f}".startswith(wanted), (text, number)
    assert len(PAGE) > 7


def test_the_add_in_knows_the_c_interface_as_it_is(monkeypatch, tmp_path):
    """The struct of errors, and the numbers of the errors that are dangers, stand in the interface file of the library."""
    zipfile.ZipFile(ADDIN).extractall(tmp_path)
    monkeypatch.syspath_prepend(tmp_path / "pythonpath")
    from carb_calc import library

    lines = (ROOT / "carb-ffi" / "abi.txt").read_text("utf-8").splitlines()
    interface = dict(line.split(" = ", 1) for line in lines if not line.startswith("#"))
    members = {name: getattr(library.Error, name) for name, *_ in library.Error._fields_}
    offsets = {f"member carb_error.{name}": str(member.offset) for name, member in members.items()}
    told = {name: where.split()[0] for name, where in interface.items() if name.startswith("member carb_error.")}
    assert offsets == told
    assert interface["struct carb_error"] == str(library.ctypes.sizeof(library.Error))
    dangers = {int(interface[f"enumerator CARB_{name}"]) for name in ("VESSEL_FULL", "PRESSURE_TOO_HIGH")}
    assert dangers == set(library.BURSTING)
