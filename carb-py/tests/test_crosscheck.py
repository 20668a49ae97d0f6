"""What other programs print: claims as Python has them, claims in files, and the command line."""

import copy
import csv
import inspect
import io
import json
import math
import os
import pickle
import subprocess
import sys
import threading
import time
from decimal import Decimal
from fractions import Fraction

import carb
import carb._carb as native
import numpy as np
import pytest
from carb import _claims, _crosscheck
from carb.__main__ import main
from carb._progress import Bar
from hypothesis import given
from hypothesis import strategies as st
from shared import ROOT
from test_bottling import NA, Frame

DEMO = ROOT / "docs" / "claims" / "three_programs.csv"
# A worked example of the trade's fit of the beer chart: 2.5 volumes at 38 °F are 11.214 psi.
KEG = {"quantity": "keg_pressure", "value": "11.2", "unit": "psi", "volumes": 2.5, "temperature_f": 38, "altitude_m": 0}
ALCOHOL = {"quantity": "alcohol", "value": "5.1", "unit": "abv_percent", "original_sg": 1.05, "current_sg": 1.011}
DOSE = {
    "quantity": "priming_sugar",
    "value": "124.6",
    "unit": "g",
    "volumes": 2.5,
    "warmest_f": 68,
    "packaged_us_gal": 5,
}
DOSE = {**DOSE, "altitude_m": 0, "sugar": "dextrose_monohydrate"}
BOTTLES = {"quantity": "bottle_count", "value": "38", "unit": "count", "packaged_l": 19.2, "bottle_ml": 500}
# More than the strongest keg is marked for, and no answer for want of an altitude.
UNSAFE = {**KEG, "value": "400"}
NOWHERE = {name: value for name, value in KEG.items() if name != "altitude_m"}
COLUMNS = [
    "label",
    "program",
    "quantity",
    "value",
    "unit",
    "verdict",
    "unsafe",
    "ours",
    "difference_percent",
    "count",
    "explanation",
]


def request(claims, **more):
    return json.dumps({"carb": 1, "claims": claims, **more})


def dose(volumes, fahrenheit, litres, grams, sugar_yield):
    """A dose by the formulas of the trade: the residual quadratic, grams to the volume, CO2 to the gram of sugar."""
    residual = 3.0378 - 0.050062 * fahrenheit + 0.00026555 * fahrenheit**2
    return (volumes - residual) * grams * litres / sugar_yield


def many(count):
    """Claims of many programs, those of each standing among those of others, some of no program and some unanswered."""
    for at in range(count):
        kind = (KEG, ALCOHOL, BOTTLES, NOWHERE)[at % 4]
        program = {} if at % 5 == 0 else {"program": f"program {at * 7 % 11}"}
        value = f"{float(kind['value']) + at % 3 / 10:.1f}" if kind is not BOTTLES else str(38 + at % 2)
        yield {**kind, **program, "label": f"row {at}", "value": value}


# What is found


def test_a_claim_that_agrees():
    found = carb.crosscheck(**KEG, label="keg", program="A")
    assert type(found) is carb.Crosscheck and carb.Crosscheck.__name__ in carb.__all__
    (claim,) = found.claims
    assert (claim.label, claim.program, claim.quantity, claim.value, claim.unit) == (
        "keg",
        "A",
        *list(KEG.values())[:3],
    )
    assert (claim.verdict, claim.unsafe) == ("agrees", False)
    assert claim.ours == carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=0).gauge_psi
    assert found.danger is False and found.answered is True
    assert found.to_dict() == json.loads(found.to_json())
    assert found["claims"][0]["ours"] == claim.ours


def test_what_reproduces_a_claim():
    # The ideal gas at 0 °C and 1 atm, and dextrose without its water: CO2 44.0095, glucose 180.156 g/mol.
    value = dose(2.5, 68, 5 * 3.785411784, 44.0095 / 22.41397, 2 * 44.0095 / 180.156)
    (claim,) = carb.crosscheck(**{**DOSE, "value": f"{value:.1f}"}).claims
    assert claim.verdict == "explained" and claim.count >= 1
    first = claim.readings[0]
    assert {(departure.question, departure.habit) for departure in first.departures} == {
        ("gas_volume", "ideal"),
        ("sugar_taken", "anhydrous"),
    }
    assert first.value == pytest.approx(value, rel=3e-5)
    told = [name for name in DOSE if name not in ("quantity", "value", "unit")]
    assert claim.ours == carb.priming_sugar(**{name: DOSE[name] for name in told}).mass_g
    assert claim.difference_percent == pytest.approx(100 * (round(value, 1) / claim.ours - 1))


def test_a_program():
    rows = [
        {**KEG, "program": "B", "label": "keg"},
        {**ALCOHOL, "program": "B", "label": "alcohol"},
        {**BOTTLES, "program": "C"},
    ]
    found = carb.crosscheck(rows)
    assert [row.program for row in found.claims] == ["B", "B", "C"]
    (program,) = [program for program in found.programs if program.program == "B"]
    assert program.claims == (1, 2) and program.text
    assert len(program.survivors[0]["values"]) == 2


def test_most_readings():
    claim = {**DOSE, "value": "130"}
    few, more = (carb.crosscheck(most_readings=most, **claim).claims[0] for most in (1, 10))
    assert len(few.readings) == 1 < len(more.readings) and few.count == more.count
    assert few.readings[0] == more.readings[0]
    assert carb.crosscheck(most_readings=np.int64(1), **claim) == carb.crosscheck(most_readings=1, **claim)
    for wrong in (-1, 1.5, "many", None, 10**400, float("nan"), [], True):
        with pytest.raises(carb.CarbError):
            carb.crosscheck(most_readings=wrong, **claim)


def test_no_answer_is_an_error_of_its_row():
    found = carb.crosscheck([NOWHERE, KEG])
    error = found.claims[0].error
    assert (error.code, error.parameter) == (carb.CODES["MISSING"], "altitude_m")
    assert "verdict" not in found.claims[0] and found.claims[1].verdict == "agrees"
    assert found.answered and not carb.crosscheck(**NOWHERE).answered
    assert error.text in found.to_columns()["explanation"]


def test_danger():
    found = carb.crosscheck([KEG, UNSAFE])
    assert found.danger is True and [row.unsafe for row in found.claims] == [False, True]
    assert "UNSAFE" in repr(found) and "UNSAFE" not in repr(carb.crosscheck(**KEG))


def test_the_shape_of_the_answer():
    found = carb.crosscheck([KEG, ALCOHOL, NOWHERE])
    text = request([KEG, ALCOHOL, NOWHERE], most_readings=10)
    whole = native.crosscheck(text)
    assert found.to_json() == whole.json() == carb.Crosscheck(text).to_json() == native.json("crosscheck", text)
    assert found.page() == str(found) == whole.page() == carb.Crosscheck(text).page()
    assert whole.danger is False
    for again in (pickle.loads(pickle.dumps(found)), copy.deepcopy(found), carb.Crosscheck(text)):
        assert type(again) is carb.Crosscheck
        assert again == found and hash(again) == hash(found)
        assert (again.to_json(), again.page()) == (found.to_json(), found.page())
    assert found != carb.crosscheck([ALCOHOL, KEG, NOWHERE]) and found != carb.crosscheck(**KEG)
    assert "3 claims" in repr(found) and "1 no answer" in repr(found)
    for name in ("danger", "claims", "other"):
        with pytest.raises(AttributeError):
            setattr(found, name, 1)
    for name in ("json", "page", "danger"):
        with pytest.raises(AttributeError):
            setattr(whole, name, 1)
    with pytest.raises(AttributeError, match="there is no programms here, but: .*programs"):
        _ = found.programms


def test_a_pickle_is_not_searched_again(monkeypatch):
    stored = pickle.dumps(carb.crosscheck(**KEG))
    monkeypatch.setattr(native, "crosscheck", None)
    assert pickle.loads(stored).claims[0].verdict == "agrees"


# A table out


def test_columns():
    found = carb.crosscheck([{**KEG, "label": "keg", "program": "A"}, UNSAFE, NOWHERE])
    columns = found.to_columns()
    assert list(columns) == COLUMNS and {len(column) for column in columns.values()} == {3}
    assert columns["label"] == ["keg", None, None] and columns["program"] == ["A", None, None]
    assert columns["value"] == ["11.2", "400", "11.2"]
    assert columns["verdict"][0] == "agrees" and columns["verdict"][2] is None
    assert columns["unsafe"] == [False, True, False]
    assert columns["ours"][:2] == [found.claims[0].ours] * 2 and columns["ours"][2] is None
    assert columns["explanation"][:2] == [claim.text for claim in found.claims[:2]]
    assert found._repr_html_().count("<tr ") == 4


def test_a_frame():
    pandas = pytest.importorskip("pandas")
    found = carb.crosscheck([KEG, NOWHERE])
    frame = found.to_frame()
    assert isinstance(frame, pandas.DataFrame) and list(frame.columns) == COLUMNS and len(frame) == 2
    assert frame["verdict"][0] == "agrees" and pandas.isna(frame["ours"][1])


def test_a_frame_without_pandas(monkeypatch):
    monkeypatch.setitem(sys.modules, "pandas", None)
    with pytest.raises(ImportError, match="pip install pandas"):
        carb.crosscheck(**KEG).to_frame()


# Claims as Python has them

ROWS = [{**KEG, "program": "A"}, {**BOTTLES, "program": "A"}]
NAMES = list(dict.fromkeys(name for row in ROWS for name in row))


@pytest.mark.parametrize(
    "claims",
    [
        tuple(ROWS),
        (row for row in ROWS),
        np.array(ROWS),
        [{name: row.get(name) for name in NAMES} for row in ROWS],
        [{name: row.get(name, float("nan")) for name in NAMES} for row in ROWS],
        [{name: row.get(name, NA()) for name in NAMES} for row in ROWS],
        [{name: str(row.get(name, " ")) for name in NAMES} for row in ROWS],
        [{name: f" {row.get(name, '')}\t" for name in NAMES} for row in ROWS],
        [
            {np.str_(name): np.float64(v) if isinstance(v, (int, float)) else v for name, v in row.items()}
            for row in ROWS
        ],
        [{name: Decimal(str(v)) if isinstance(v, (int, float)) else v for name, v in row.items()} for row in ROWS],
        [{**row, "value": float(row["value"])} for row in ROWS],
        [{**row, "value": np.float32(row["value"])} for row in ROWS],
        {name: [row.get(name) for row in ROWS] for name in NAMES},
        {name: np.array([row.get(name) for row in ROWS], dtype=object) for name in NAMES},
        Frame([{name: row.get(name, float("nan")) for name in NAMES} for row in ROWS]),
    ],
)
def test_what_holds_claims(claims):
    assert carb.crosscheck(claims) == carb.crosscheck(ROWS)


def test_a_data_frame():
    pandas = pytest.importorskip("pandas")
    assert carb.crosscheck(pandas.DataFrame(ROWS)) == carb.crosscheck(ROWS)
    # Of a column of floats the printed digits are lost: 38 has become 38.0.
    floats = pandas.DataFrame([{**row, "value": float(row["value"])} for row in ROWS])
    assert carb.crosscheck(floats) == carb.crosscheck(ROWS)
    assert carb.crosscheck({name: pandas.DataFrame(ROWS)[name] for name in NAMES}) == carb.crosscheck(ROWS)


def test_a_found_table_is_no_claim_but_its_rows_may_be():
    columns = carb.crosscheck(ROWS).to_columns()
    with pytest.raises(carb.CarbError, match="verdict"):
        carb.crosscheck(columns)


@pytest.mark.parametrize(
    ("value", "text"),
    [
        ("4.40", "4.40"),
        (" 4.40 ", "4.40"),
        (4.40, "4.4"),
        (124.0, "124"),
        (124, "124"),
        (np.float64(4.4), "4.4"),
        (np.float32(4.4), "4.4"),
        (np.int64(124), "124"),
        (Decimal("4.40"), "4.40"),
        (Decimal("124.0"), "124.0"),
        (np.array(4.4), "4.4"),
    ],
)
def test_the_digits_of_a_value(value, text):
    assert carb.crosscheck(**{**KEG, "value": value}).claims[0].value == text


def test_names_of_rows_may_be_numbers():
    rows = [{**KEG, "program": 1, "label": 7}, {**ALCOHOL, "program": 1.0}, {**KEG, "program": "1"}]
    assert {claim.program for claim in carb.crosscheck(rows).claims} == {"1"}
    assert carb.crosscheck(rows).claims[0].label == "7"


def test_flags():
    # No quantity takes one yet, but a name of the vocabulary is what it is.
    assert [_claims.cell("count_headspace", flag) for flag in ("TRUE", "False", True, np.False_, "yes")] == [
        *(True, False, True, False, "yes")
    ]
    with pytest.raises(carb.CarbError) as caught:
        carb.crosscheck(**DOSE, count_headspace="true")
    assert caught.value.code == carb.CODES["NOT_TAKEN"]


WRONG = [
    ([{**KEG, "quantity": "keg_presure"}], "quantity", 1),
    ([{**KEG, "quantity": None}], "quantity", 1),
    ([KEG, {**KEG, "unit": "atm"}], "unit", 2),
    ([{**KEG, "unit": ""}], "unit", 1),
    ([{**KEG, "value": "11,2"}], "value", 1),
    ([{**KEG, "value": "eleven"}], "value", 1),
    ([{**KEG, "value": "1_1"}], "value", 1),
    ([{**KEG, "value": "0x1p3"}], "value", 1),
    ([{**KEG, "value": "٣"}], "value", 1),
    ([{**KEG, "value": float("nan")}], "value", 1),
    ([{**KEG, "value": float("inf")}], "value", 1),
    ([{**KEG, "value": True}], "value", 1),
    ([{**KEG, "value": b"11.2"}], "value", 1),
    ([{**KEG, "value": 10**400}], "value", 1),
    ([{**KEG, "value": 10**5000}], "value", 1),
    ([{**KEG, "value": Fraction(1, 3)}], "value", 1),
    ([{**KEG, "value": 1j}], "value", 1),
    ([KEG, KEG, {**KEG, "tempertaure_c": 4}], "tempertaure_c", 3),
    ([{**KEG, "tempertaure_c": None}], "tempertaure_c", 1),
    ([{**KEG, "tempertaure_c": " "}], "tempertaure_c", 1),
    ([{**KEG, "volumes": "2,5"}], "volumes", 1),
    ([{**KEG, "volumes": "inf"}], "volumes", 1),
    ([{**KEG, "volumes": "1e999"}], "volumes", 1),
    ([{**KEG, "volumes": float("inf")}], "volumes", 1),
    ([{**KEG, "volumes": 10**400}], "volumes", 1),
    ([{**KEG, "volumes": [2.5]}], "volumes", 1),
    ([{**KEG, "volumes": {"a": 1}}], "volumes", 1),
    ([{**KEG, "volumes": object()}], "volumes", 1),
    ([{**KEG, "volumes": True}], "volumes", 1),
    ([{**KEG, "volumes": np.array([2.5, 2.6])}], "volumes", 1),
    ([{**KEG, "volumes": 1e6}], "volumes", 1),
    ([{**KEG, "volumes": "-1"}], "volumes", 1),
    ([{**KEG, "temperature_c": 4}], ("temperature_c", "temperature_f"), 1),
    ([{**KEG, "beverage": "tea"}], "beverage", 1),
    ([{**KEG, "beverage": 4}], "beverage", 1),
    ([{**KEG, "warmest_c": 20}], "warmest_c", 1),
    ([{**KEG, "label": "two\nlines"}], "label", 1),
    ([{**KEG, "program": ["A"]}], "program", 1),
    ([{**KEG, 0: 1}], "0", 1),
    ([{**KEG, "volumes\ud800": 1}], "volumes?", 1),
    ([KEG, 4], "claims", 2),
    ([KEG, "KEG"], "claims", 2),
    ([KEG, None], "claims", 2),
]


@pytest.mark.parametrize(("claims", "parameter", "row"), WRONG)
def test_malformed(claims, parameter, row):
    for given_ in (claims, claims + list(many(40))):
        with pytest.raises(carb.CarbError) as caught:
            carb.crosscheck(given_)
        error = caught.value
        assert error.parameter == parameter or error.parameter in parameter
        assert (error.list, error.row) == ("claims", row) and str(error).startswith(f"in row {row} of claims: ")
        again = pickle.loads(pickle.dumps(error))
        assert repr(vars(again)) == repr(vars(error)) and str(again) == str(error)


@pytest.mark.parametrize(
    "claims", [4, "KEG", b"KEG", object(), KEG, {"quantity": ["a", "b"], "unit": ["c"]}, [1], np.array(1)]
)
def test_no_claims_at_all(claims):
    with pytest.raises(carb.CarbError, match="claims"):
        carb.crosscheck(claims)


def test_claims_and_a_claim():
    with pytest.raises(carb.CarbError, match="claims and volumes exclude each other") as caught:
        carb.crosscheck([KEG], volumes=2.5)
    assert caught.value.code == carb.CODES["EXCLUDED"]
    assert len(carb.crosscheck([]).claims) == 0 and carb.crosscheck([]).answered is False
    with pytest.raises(carb.CarbError) as caught:
        carb.crosscheck()
    assert caught.value.parameter == "claims"
    with pytest.raises(carb.CarbError) as caught:
        carb.crosscheck(volumes=2.5)
    assert caught.value.parameter == "quantity"


def test_a_nearest_name():
    with pytest.raises(carb.CarbError, match='did you mean "temperature_c"'):
        carb.crosscheck(**{**NOWHERE, "temperature_g": 38})


def test_hostile_texts():
    # What turns the direction of a line is refused, the rest is kept as it is.
    with pytest.raises(carb.CarbError, match="one line"):
        carb.crosscheck(**KEG, label="\u202epsi 11")
    label = "=1+1|<b>\"&'"
    found = carb.crosscheck(**KEG, label=label, program="\ud83c\udf7a\ud800")
    assert found.claims[0].label == label and found.claims[0].verdict == "agrees"
    assert "<b>" not in found._repr_html_()
    assert json.loads(found.to_json())["claims"][0]["label"] == label
    assert pickle.loads(pickle.dumps(found)) == found


@pytest.mark.parametrize(
    "text", ["", "{", "[]", "null", '{"carb": 2, "claims": []}', '{"claims": []}', "[" * 10**5, "\ud800"]
)
def test_hostile_requests(text):
    for asking in (carb.Crosscheck, native.crosscheck, native.claims_checked):
        with pytest.raises((carb.CarbError, UnicodeEncodeError)):
            asking(text)


@given(
    st.recursive(
        st.none() | st.booleans() | st.floats() | st.text(), lambda x: st.lists(x) | st.dictionaries(st.text(), x)
    )
)
def test_anything_is_answered_or_refused(value):
    for claims in (value, [value], [{**KEG, "volumes": value}], [{**KEG, "value": value}], [{**KEG, "label": value}]):
        try:
            assert carb.crosscheck(claims).claims is not None
        except carb.CarbError as error:
            assert str(error)


# Many claims


@pytest.mark.parametrize("count", [1, 7, 8, 9, 40, 61])
def test_threads_give_the_same_bytes_as_one_call(count):
    rows = list(many(count))
    found, whole = carb.crosscheck(rows), native.crosscheck(request(rows, most_readings=10))
    assert count < 16 or len(list(_crosscheck._chunks(rows))) > 1
    assert (found.to_json(), found.page(), found.danger) == (whole.json(), whole.page(), whole.danger)
    assert [claim.label for claim in found.claims] == [row["label"] for row in rows]
    assert carb.crosscheck(rows).to_json() == found.to_json()


def test_a_program_is_never_torn():
    rows = list(many(61))
    chunks = list(_crosscheck._chunks(rows))
    assert sorted(at for chunk in chunks for at in chunk) == list(range(61))
    for at, row in enumerate(rows):
        if "program" in row:
            (home,) = [chunk for chunk in chunks if at in chunk]
            assert all(other in home for other, same in enumerate(rows) if same.get("program") == row["program"])


def test_progress():
    rows, calls = list(many(61)), []
    assert carb.crosscheck(rows, progress=lambda done, total: calls.append((done, total))) == carb.crosscheck(rows)
    assert len(calls) > 1 and calls[-1] == (61, 61) and {total for _, total in calls} == {61}
    assert calls == sorted(set(calls)) and calls[0][0] > 0
    calls.clear()
    carb.crosscheck(**KEG, progress=lambda *call: calls.append(call))
    assert calls == [(1, 1)]


def test_progress_ends_the_work():
    def stop(done, total):
        raise KeyboardInterrupt

    before = threading.active_count()
    with pytest.raises(KeyboardInterrupt):
        carb.crosscheck(list(many(200)), progress=stop)
    assert threading.active_count() == before


def test_a_malformed_claim_is_told_before_the_work():
    calls = []
    with pytest.raises(carb.CarbError, match="in row 62 of claims: "):
        carb.crosscheck([*many(61), {**KEG, "unit": "atm"}], progress=lambda *call: calls.append(call))
    assert not calls


def test_other_threads_go_on():
    text, started, done = request(list(many(400))), threading.Event(), threading.Event()

    def work():
        started.set()
        native.crosscheck(text)
        done.set()

    thread, turns = threading.Thread(target=work), 0
    thread.start()
    started.wait()
    while not done.is_set():
        turns += 1
        time.sleep(0)
    thread.join()
    # Were the others kept waiting, the first turn would come when all is done.
    assert turns > 10


def test_merged_claims_have_places():
    keg, alcohol = (native.crosscheck(request([claim])) for claim in (KEG, ALCOHOL))
    merged = native.crosscheck_merged([([0], keg), ([1], alcohol)])
    assert merged.json() == native.crosscheck(request([KEG, ALCOHOL])).json()
    merged = native.crosscheck_merged([([1], keg), ([0], alcohol)])
    assert merged.json() == native.crosscheck(request([ALCOHOL, KEG])).json()
    for wrong in ([[0], []], [[0], [0]], [[0], [2]], [[0], [1, 2]], [[0, 1], []]):
        with pytest.raises(ValueError, match="a place of its own"):
            native.crosscheck_merged(list(zip(wrong, (keg, alcohol), strict=True)))
    with pytest.raises(TypeError):
        native.crosscheck_merged([None])


# Claims in files

HEAD = "label,quantity,value,unit,volumes,temperature_f,altitude_m"
LINE = "keg,keg_pressure,11.20,psi,2.5,38,0"


@pytest.fixture
def claims_file(tmp_path):
    def write(content):
        path = tmp_path / "claims.csv"
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return path

    return write


def test_read_claims(claims_file):
    whole = dict(zip(HEAD.split(","), LINE.split(","), strict=True))
    for text in (
        f"{HEAD}\n{LINE}\n",
        f"\ufeff{HEAD}\r\n{LINE}",
        f"\n{HEAD}\n\n{LINE}\n,,,,,,\n\n",
        f"{HEAD}\r{LINE}\r",
    ):
        assert carb.read_claims(claims_file(text)) == [whole]
        assert carb.read_claims(str(claims_file(text))) == [whole]
    assert carb.crosscheck(carb.read_claims(claims_file(f"{HEAD}\n{LINE}"))) == carb.crosscheck(
        **{**KEG, "value": "11.20", "label": "keg"}
    )
    quoted = claims_file(f'{HEAD}\n"a ""b"", c\nd", keg_pressure,"11.20",psi,,,\n')
    assert carb.read_claims(quoted)[0]["label"] == 'a "b", c\nd'
    with pytest.raises(FileNotFoundError):
        carb.read_claims("nowhere.csv")
    with pytest.raises(carb.CarbError, match=r"claims\.csv, line 1, column 7 \(altitud_m\): ") as caught:
        carb.read_claims(claims_file(f"{HEAD[:-10]}altitud_m\n{LINE}"))
    assert caught.value.parameter == "altitud_m"


CELLS = st.text(st.sampled_from('ab1, "\n\r\t;é\u2028'), max_size=6)


@given(st.lists(st.lists(CELLS, min_size=1, max_size=4), max_size=5), st.sampled_from(["\n", "\r\n", "\r"]))
def test_what_is_written_is_read(rows, end):
    text = io.StringIO(newline="")
    csv.writer(text, lineterminator=end, quoting=csv.QUOTE_ALL).writerows(rows)
    read = [cells for _, cells in _claims._records(text.getvalue())]
    assert read == [tuple(row) for row in rows if any(cell.strip() for cell in row)]


@given(st.text(st.sampled_from('a, "\n\r'), max_size=12))
def test_files_are_read_as_the_standard_library_reads_them(text):
    reader = csv.reader(io.StringIO(text, newline=""), strict=True, skipinitialspace=True)
    rows, line, start = [], None, 1
    try:
        for row in reader:
            rows.append((start, tuple(row)))
            start = reader.line_num + 1
    except csv.Error:
        line = start
    rows = [(at, row) for at, row in rows if any(cell.strip() for cell in row)]
    try:
        assert list(_claims._records(text)) == rows and line is None
    except _claims.Malformed as malformed:
        assert malformed.fault.line == line


BAD = "keg,keg_pressure,eleven,psi,2.5,38,0"
MALFORMED = {
    "an empty file": ("", (1, 1, "", "empty")),
    "blank lines": ("\n\n,,\n", (1, 1, "", "empty")),
    "no rows": (f"{HEAD}\n", (2, 1, "label", "no claim")),
    "a value": (f"{HEAD}\n{LINE}\n{BAD}\n", (3, 3, "value", "eleven")),
    "a value with a comma": (
        f"{HEAD}\n{LINE.replace('11.20', chr(34) + '11,2' + chr(34))}\n",
        (2, 3, "value", "point"),
    ),
    "a quantity": (f"{HEAD}\n{LINE.replace('keg_pressure', 'keg')}\n", (2, 2, "quantity", "keg_pressure")),
    "a unit": (f"{HEAD}\n{LINE.replace('psi', 'atm')}\n", (2, 4, "unit", '"psi"')),
    "no unit": (f"{HEAD}\n{LINE.replace('psi', '')}\n", (2, 4, "unit", "missing")),
    "an input": (f"{HEAD}\n{LINE.replace('38', 'warm')}\n", (2, 6, "temperature_f", "should be a number")),
    "an input out of limits": (f"{HEAD}\n{LINE.replace('2.5', '1e6')}\n", (2, 5, "volumes", "outside")),
    "an input of another quantity": (f"{HEAD},warmest_c\n{LINE},20\n", (2, 8, "warmest_c", "takes no warmest_c")),
    "a quantity in two units": (f"{HEAD},temperature_c\n{LINE},4\n", (2, 8, "temperature_c", "two units")),
    "below a text of two lines": (f'{HEAD}\n{LINE},"two\r\nlines"\n\n{BAD}\n', (2, 8, "", "8 cells")),
    "below it": (f'{HEAD},program\n{LINE},"\r\n"\n\n{BAD},\n', (5, 3, "value", "eleven")),
    "a text of two lines": (f'{HEAD}\n{LINE}\n"two\nlines"{LINE[3:]}\n', (3, 1, "label", "one line")),
    "a short row": (f"{HEAD}\n{LINE}\nkeg,keg_pressure\n", (3, 3, "value", "2 cells, the header 7")),
    "a short row of one": (f"{HEAD}\nkeg\n", (2, 2, "quantity", "1 cell, the header 7")),
    "a long row": (f"{HEAD}\n{LINE},1\n", (2, 8, "", "8 cells, the header 7")),
    "a comma in a text": (f"{HEAD}\nkeg, cold{LINE[3:]}\n", (2, 8, "", "quotes around it")),
    "a column twice": (f"{HEAD},unit\n{LINE},psi\n", (1, 8, "unit", "column 4 has this name too")),
    "a column without a name": (f"{HEAD},\n{LINE},4\n", (1, 8, "", "no name")),
    "an unknown column": (f"{HEAD},tempertaure_c\n{LINE},\n", (1, 8, "tempertaure_c", 'did you mean "temperature_c"')),
    "a capital letter": (f"Label{HEAD[5:]}\n{LINE}\n", (1, 1, "Label", 'did you mean "label"')),
    "an unknown column like none": (f"{HEAD},remark\n{LINE},\n", (1, 8, "remark", "there is no parameter")),
    "no value column": ("quantity,unit\nkeg_pressure,psi\n", (1, 3, "value", "every claim needs it")),
    "semicolons": (f"{HEAD}\n{LINE}\n".replace(",", ";"), (1, 1, HEAD.replace(",", ";"), "separated by commas")),
    "tabs": (f"{HEAD}\n{LINE}\n".replace(",", "\t"), (1, 1, HEAD.replace(",", "\ufffd"), "separated by commas")),
    "a quote that never closes": (f'{HEAD}\n{LINE}\nkeg,"keg_pressure,11.20\n{LINE}\n', (3, 2, "", "never closed")),
    "a quote that never closes, after quotes": (f'{HEAD}\n"a""b', (2, 1, "", "never closed")),
    "text after a quote": (f'{HEAD}\n"keg" cold{LINE[3:]}\n', (2, 1, "", "closing quote")),
    "a NUL": (f"{HEAD}\n{LINE}\nkeg,\0\n", (3, 5, "counted in bytes", "NUL")),
    "no UTF-8": (f"{HEAD}\n{LINE}\nk\u00e9g,k".encode("latin-1"), (3, 2, "counted in bytes", "UTF-8")),
    "no UTF-8 after umlauts": (f"{HEAD}\nküké".encode() + b"\xff", (2, 7, "counted in bytes", "UTF-8")),
    "no UTF-8 behind a mark": (b"\xef\xbb\xbfab\xff", (1, 6, "counted in bytes", "UTF-8")),
    "two bytes a letter": (f"{HEAD}\n".encode("utf-16-le"), (1, 2, "counted in bytes", "NUL")),
    "half a letter": (f"{HEAD}\n{LINE}\n".encode() + "é".encode()[:1], (3, 1, "counted in bytes", "UTF-8")),
}


@pytest.mark.parametrize("kind", MALFORMED)
def test_malformed_files(kind, claims_file, tmp_path, capsysbinary):
    content, (line, column, name, said) = MALFORMED[kind]
    file, old, new = claims_file(content), tmp_path / "old.csv", tmp_path / "new.txt"
    old.write_text("as it was")
    assert main(["crosscheck", str(file), "--table", str(old), "--output", str(new)]) == 2
    out, err = capsysbinary.readouterr()
    assert out == b"" and old.read_text() == "as it was" and not new.exists()
    assert sorted(path.name for path in tmp_path.iterdir()) == ["claims.csv", "old.csv"]
    told = [text for text in err.decode().splitlines() if said in text]
    place = f"{file}, line {line}, column {column}{f' ({name})' if name else ''}: "
    assert any(text.startswith(place) for text in told), err.decode()
    # The row below is malformed too.
    assert len(err.decode().splitlines()) == 1 + (kind == "below a text of two lines")


def test_all_that_is_malformed_is_told(claims_file, capsysbinary):
    rows = [BAD, LINE, "keg", LINE.replace("psi", "atm"), f"{LINE},1", BAD.replace("38", "warm")]
    file = claims_file("\n".join([HEAD, *rows, ""]))
    assert main(["crosscheck", str(file)]) == 2
    places = [line.split(": ")[0] for line in capsysbinary.readouterr().err.decode().splitlines()]
    assert places == [
        f"{file}, line {line}, column {column}{name}"
        for line, column, name in ((2, 3, " (value)"), (4, 2, " (quantity)"), (5, 4, " (unit)"), (6, 8, ""))
    ] + [place for place in places[4:]]
    assert len(places) == 5 and places[4].startswith(f"{file}, line 7, column ")
    assert main(["crosscheck", str(claims_file("\n".join([HEAD, *[BAD] * 21])))]) == 2
    told = capsysbinary.readouterr().err.decode().splitlines()
    assert len(told) == 21 and told[19].startswith(f"{file}, line 21, ") and "the first 20" in told[20]
    assert main(["crosscheck", str(claims_file("\n".join([HEAD, *[BAD] * 20])))]) == 2
    assert len(capsysbinary.readouterr().err.decode().splitlines()) == 20


def test_a_terminal_is_not_given_orders(claims_file, capsysbinary):
    assert main(["crosscheck", str(claims_file(f"{HEAD},\x1b[2J\u202e\n{LINE},\n"))]) == 2
    err = capsysbinary.readouterr().err.decode()
    assert "\x1b" not in err and "\u202e" not in err and "column 8" in err


# The command line


def run(*arguments, **options):
    return subprocess.run(
        [sys.executable, "-m", "carb", "crosscheck", *map(str, arguments)], capture_output=True, **options
    )


def sheet(*rows):
    names = list(dict.fromkeys(name for row in rows for name in row))
    text = io.StringIO()
    csv.DictWriter(text, names, lineterminator="\n").writeheader()
    csv.DictWriter(text, names, lineterminator="\n").writerows(rows)
    return text.getvalue()


@pytest.mark.parametrize(
    ("rows", "code"), [([KEG], 0), ([KEG, NOWHERE], 0), ([KEG, UNSAFE], 1), ([NOWHERE], 2), ([NOWHERE, UNSAFE], 1)]
)
def test_exit_codes(rows, code, claims_file, capsysbinary):
    file = claims_file(sheet(*rows))
    found = carb.crosscheck(rows)
    assert main(["crosscheck", str(file)]) == code
    out, err = capsysbinary.readouterr()
    assert out.decode() == found.page() and err == b""
    assert main(["crosscheck", str(file), "--json", "--most-readings", "3"]) == code
    assert capsysbinary.readouterr().out.decode() == carb.crosscheck(rows, most_readings=3).to_json() + "\n"


def test_a_process_of_its_own(claims_file, tmp_path):
    file, table = claims_file(sheet(KEG, UNSAFE)), tmp_path / "table.csv"
    done = run(file, "--table", table)
    assert (done.returncode, done.stderr) == (1, b"")
    assert done.stdout.decode() == carb.crosscheck([KEG, UNSAFE]).page()
    assert table.exists()
    done = run(claims_file("quantity\n"))
    assert done.returncode == 2 and b"line 1, column 2 (value)" in done.stderr and done.stdout == b""


def test_output(claims_file, tmp_path, capsysbinary):
    file, report, table = claims_file(sheet(KEG, NOWHERE, UNSAFE)), tmp_path / "report.txt", tmp_path / "table.csv"
    report.write_text("old")
    assert main(["crosscheck", str(file), "--output", str(report), "--table", str(table)]) == 1
    assert capsysbinary.readouterr() == (b"", b"")
    found = carb.crosscheck([KEG, NOWHERE, UNSAFE])
    assert report.read_text(encoding="utf-8") == found.page()
    with open(table, newline="", encoding="utf-8") as opened:
        rows = list(csv.DictReader(opened))
    assert list(rows[0]) == [*KEG, "verdict", "unsafe", "ours", "difference_percent", "count", "explanation"]
    columns = found.to_columns()
    for at, (row, claim) in enumerate(zip(rows, (KEG, NOWHERE, UNSAFE), strict=True)):
        assert {name: row[name] for name in KEG} == {name: str(claim.get(name, "")) for name in KEG}
        assert row["explanation"] == columns["explanation"][at] and row["verdict"] == (columns["verdict"][at] or "")
        assert (float(row["ours"]) if row["ours"] else None) == columns["ours"][at]
    assert [row["unsafe"] for row in rows] == ["false", "false", "true"]
    assert main(["crosscheck", str(file), "--json", "--output", str(report)]) == 1
    assert report.read_text(encoding="utf-8") == found.to_json() + "\n"
    # What other files may be read by, these may.
    mask = os.umask(0)
    os.umask(mask)
    assert table.stat().st_mode & 0o777 == 0o666 & ~mask
    assert sorted(path.name for path in tmp_path.iterdir()) == ["claims.csv", "report.txt", "table.csv"]


def test_a_link_is_followed(claims_file, tmp_path, capsysbinary):
    file, real, link = claims_file(sheet(KEG)), tmp_path / "real.txt", tmp_path / "link.txt"
    real.write_text("old")
    link.symlink_to(real)
    assert main(["crosscheck", str(file), "--output", str(link)]) == 0
    assert link.is_symlink() and real.read_text(encoding="utf-8") == carb.crosscheck(**KEG).page()
    assert capsysbinary.readouterr().out == b""


def test_files_that_cannot_be_written(claims_file, tmp_path, capsysbinary):
    file = claims_file(sheet(KEG))
    before = file.read_bytes()
    out, nowhere = tmp_path / "out", tmp_path / "nowhere" / "out"
    for wrong in (
        ("--table", file),
        ("--output", tmp_path / "." / "claims.csv"),
        ("--output", out, "--table", out),
        ("--output", tmp_path),
        ("--output", "/dev/null"),
        ("--output", out, "--table", nowhere),
        ("--output", nowhere),
        ("--output", ""),
    ):
        assert main(["crosscheck", str(file), *map(str, wrong)]) == 2
        said = capsysbinary.readouterr()
        assert said.out == b"" and said.err.decode().strip()
        assert file.read_bytes() == before and list(tmp_path.iterdir()) == [file]
    assert main(["crosscheck", str(tmp_path / "none.csv")]) == main(["crosscheck", str(tmp_path)]) == 2
    assert main(["crosscheck", str(file), "--most-readings", "-1"]) == 2
    assert capsysbinary.readouterr().out == b""
    with pytest.raises(SystemExit) as caught:
        main(["crosscheck", str(file), "--most-readings", "many"])
    assert caught.value.code == 2


class Terminal(io.StringIO):
    def isatty(self):
        return True


def test_a_bar(monkeypatch):
    now = [100.0]
    monkeypatch.setattr("carb._progress.monotonic", lambda: now[0])
    terminal, pipe = Terminal(), io.StringIO()
    bars = Bar(terminal), Bar(pipe)

    def draw(done, total):
        for bar in bars:
            bar(done, total)

    draw(1, 10)
    assert terminal.getvalue() == ""
    now[0] += 2
    draw(5, 10)
    draw(10, 10)
    for bar in bars:
        bar.clear()
        bar.clear()
    half, full, end = terminal.getvalue().split("\r")[1:]
    assert half == f"[{'#' * 20}{'.' * 20}] 5 of 10 claims" and full == f"[{'#' * 40}] 10 of 10 claims"
    assert end == "\x1b[K" and pipe.getvalue() == ""


# What is said


def test_said():
    said, parameters = inspect.getdoc(carb.crosscheck), inspect.signature(carb.crosscheck).parameters
    assert list(parameters) == ["claims", "most_readings", "progress", "claim"]
    assert all(name in said for name in [*parameters, "label", "program", "quantity", "value", "unit"])
    for function in ("crosscheck", "read_claims", "Crosscheck"):
        assert function in carb.__all__ and inspect.getdoc(getattr(carb, function))
    # Every quantity is in the text, with all its units and where its inputs are told.
    for row in carb.claim_quantities():
        (line,) = [line for line in said.splitlines() if line.startswith(f"    ``{row.quantity}``")]
        assert row.unit in line.replace(",", "").replace(";", "").split()
        assert f"as ``carb.{row.function}``" in line or row.function is None


def demo():
    """What the programs of the demo compute, by formulas written out here; none of them minds the altitude but B."""
    outside = 1.01325 * (1 - 2.25577e-5 * 240) ** 5.25588  # bar at 240 m
    ideal, real = 44.0095 / 22.41397, 44.0095 / 22.263
    monohydrate = 2 * 44.0095 / 198.171
    psi = 0.0689475729

    def quadratic(volumes, f=38):
        return (
            -16.6999
            + f * (-0.0101059 + 0.00116512 * f + 0.173354 * volumes)
            + volumes * (4.24267 - 0.0684226 * volumes)
        )

    def held(pressure, low=2.0, high=3.0):
        for _ in range(50):
            middle = (low + high) / 2
            low, high = (middle, high) if quadratic(middle) < pressure else (low, middle)
        return low

    def european(celsius):
        return 10 * math.exp(-10.73797 + 2617.25 / (celsius + 273.15))

    chart = 0.01821 + 0.090115 * math.exp(-(38 - 32) / 43.11)
    return {
        "program A, sugar": dose(2.4, 68, 5 * 3.785411784, ideal, monohydrate) / 28.349523125,
        "program A, keg": quadratic(2.5),
        "program A, CO2 in the keg": held(12),
        "program A, alcohol": 131.25 * (1.050 - 1.011),
        "program B, sugar": (5.0 - european(20) * outside) * 50 / 0.5,
        "program B, keg": 5.0 / european(7) - outside,
        "program B, bottle in a warm room": 5.0 / european(20) - outside,
        "program B, bottles": math.ceil(50 / 0.33),
        "program C, line": (12 - 2 * 0.5 - 1) / 2.2,
        "program C, keg": ((2.5 + 0.003342) / chart - 1.01325 / psi) * 100 * psi,
        "program C, CO2 before priming": 3.0378 - 0.050062 * 68 + 0.00026555 * 68**2,
        "program C, sugar for wheat beer": dose(4.5, 68, 19.2, real, monohydrate),
    }


HABITS = {
    "A": "gas_volume ideal, beer_solubility quadratic, altitude forgotten, alcohol_formula quick",
    "B": "beer_solubility european, residual european, sugar_yield half, package_headspace left_out, count_rounding up",
    "C": "altitude forgotten, pressure_label kpa, tube_resistance r_2_2, faucet one_psi",
}


def test_demo(capsysbinary):
    claims = carb.read_claims(DEMO)
    computed = demo()
    assert [claim["label"] for claim in claims] == list(computed)
    for claim in claims:
        places = len(claim["value"].partition(".")[2])
        assert claim["value"] == f"{computed[claim['label']]:.{places}f}"
    found = carb.crosscheck(claims)
    assert {program.program: habits(program.survivors[0]) for program in found.programs} == HABITS
    for program in found.programs:
        for at, value in zip(program.claims, program.survivors[0]["values"], strict=True):
            assert value == pytest.approx(computed[claims[at - 1]["label"]], rel=1e-5)
    unsafe = ["program C, keg", "program C, sugar for wheat beer"]
    assert [claim.label for claim in found.claims if claim.unsafe] == unsafe
    assert main(["crosscheck", str(DEMO)]) == 1
    assert capsysbinary.readouterr().out.decode() == found.page()


def habits(survivor):
    return ", ".join(f"{departure.question} {departure.habit}" for departure in survivor.departures)
