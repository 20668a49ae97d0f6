"""Data frames of tables, of results, of uncertainties, of jobs and of cross-checks."""

import copy
import json
import pickle
import sys
from types import SimpleNamespace

import carb
import numpy as np
import pytest
from carb import _frame
from shared import FUNCTIONS, TABLES, call, example

BOTTLES = [{"bottle_ml": 500, "count": 30}, {"bottle_ml": 330, "count": 40, "bottle_class": "champagne"}]
DAY = {"packaged_l": 19.2, "volumes": 2.4, "warmest_c": 20.5, "altitude_m": 240}
CLAIM = {"quantity": "keg_pressure", "value": "11.2", "unit": "psi", "volumes": 2.5, "temperature_f": 38}


@pytest.fixture
def pandas():
    return pytest.importorskip("pandas")


def known(frame):
    """The cells of a data frame as columns, None where nothing is known."""
    return {name: [None if cell is None or cell != cell else cell for cell in frame[name].tolist()] for name in frame}


@pytest.mark.parametrize("name", TABLES)
def test_a_table_has_its_numbers_as_numbers_and_its_texts_as_texts(pandas, name):
    table = call(name, **example(name))
    frame = table.to_frame()
    assert list(frame.columns) == list(table.columns) and len(frame) == len(table)
    assert known(frame) == table.to_dict()
    for column, unit in table.units.items():
        values = table.column(column)
        if unit:
            assert frame[column].dtype == np.float64
        elif all(isinstance(value, int) for value in values):
            assert frame[column].dtype == np.int64
        elif any(isinstance(value, str) for value in values):
            assert all(isinstance(cell, str) for cell, value in zip(frame[column], values, strict=True) if value)


def test_a_column_of_which_nothing_is_known_holds_numbers(pandas):
    frame = _frame.frame({"limit_gauge_bar": [None, None], "name": ["a", "b"]}, ["limit_gauge_bar"])
    assert frame["limit_gauge_bar"].dtype == np.float64 and frame["limit_gauge_bar"].isna().all()


def test_bottles_go_out_as_a_frame_and_come_back(pandas):
    day = carb.bottling(**DAY, bottles=BOTTLES)
    frame = day.request.bottles.to_frame()
    assert carb.fill_list(bottles=frame, packaged_l=19.2) == carb.fill_list(bottles=BOTTLES, packaged_l=19.2)
    assert carb.bottling(**DAY, bottles=frame) == day
    filled = carb.fill_list(bottles=BOTTLES, packaged_l=19.2).to_frame()
    crates = filled[["bottle_l", "count", "bottle_class"]]
    again = carb.fill_list(bottles=crates.replace("", None), packaged_l=19.2).to_frame()
    pandas.testing.assert_frame_equal(again, filled)


def test_rows_of_a_job_are_a_frame(pandas):
    day = carb.bottling(**DAY, bottles=BOTTLES)
    frame = day.bottles.to_frame()
    assert frame["filled_count"].tolist() == [row.filled_count for row in day.bottles]
    assert frame["filled_count"].dtype == np.int64
    hot = [row.storage.hot_day.worst.gauge_bar for row in day.bottles]
    assert frame["storage_hot_day_worst_gauge_bar"].tolist() == hot
    assert frame["glass_verdict"].tolist() == [row.glass.verdict for row in day.bottles]
    assert not [name for name in frame if name.startswith(("glass_sources", "glass_basis"))]
    assert len(day.sugars.to_frame()) == len(day.sugars) > 0
    plan = carb.plan({**DAY, "serving_c": 4, "bottles": BOTTLES})
    assert plan.bottling.bottles == day.bottles and len(plan.kegging.days.to_frame()) == len(plan.kegging.days)
    # A keg whose carbonation cannot be followed has no days: no rows are no error.
    assert carb.kegging(volumes=2.5, packaged_l=19, altitude_m=0).days.to_frame().empty


def test_rows_stay_what_they_were():
    day = carb.bottling(**DAY, bottles=BOTTLES)
    assert isinstance(day.bottles, tuple) and day.bottles[1:] == tuple(day.bottles)[1:]
    assert [dict(row) for row in day.request.bottles] == day.to_dict()["request"]["bottles"]
    assert day.to_dict() == json.loads(day.to_json())
    for again in (pickle.loads(pickle.dumps(day.bottles)), copy.deepcopy(day.bottles)):
        assert again == day.bottles and again.to_columns() == day.bottles.to_columns()
    with pytest.raises(AttributeError):
        day.bottles.other = 1
    with pytest.raises(AttributeError):
        day.bottles[0].count = 3
    assert carb.fermentables()[:2] == tuple(carb.fermentables())[:2]


def test_an_uncertainty_has_a_row_for_each_output_and_share(pandas):
    keg = carb.keg_pressure(volumes=2.5, temperature_c=4, altitude_m=0)
    sure = keg.uncertainty(volumes=0.1, temperature_c=("range", 1))
    frame = sure.to_frame()
    assert len(frame) == sum(len(entry.names) * len(entry.budget) for entry in sure)
    psi = frame[frame["output"] == "gauge_psi"]
    entry = sure["gauge_psi"]
    assert psi["value"].unique().tolist() == [keg.gauge_psi]
    assert psi["low"].unique().tolist() == [entry.low.gauge_psi]
    assert psi["input"].tolist() == [share.name for share in entry.budget]
    assert psi["share"].sum() == pytest.approx(1) and psi["share"].tolist() == entry.budget.to_frame()["share"].tolist()
    assert psi["sensitivity"].tolist() == [share.sensitivity.gauge_psi for share in entry.budget]
    assert set(psi["kind"]) == {"normal", "range"} and psi["of_an_equation"].tolist().count(True) == 1
    assert sure.models.to_frame()["gauge_psi"].tolist() == [model.gauge_psi for model in sure.models]


def test_what_is_quite_sure_has_a_row_without_a_share(pandas):
    frame = carb.gravity(sg=1.05).uncertainty().to_frame()
    sg = frame[frame["output"] == "sg"]
    assert sg["value"].tolist() == [1.05] and sg["share"].isna().all() and sg["share"].dtype == np.float64


def test_claims_that_have_no_answer_have_no_number(pandas):
    found = carb.crosscheck([{**CLAIM, "altitude_m": 0}, CLAIM])
    frame = found.to_frame()
    assert frame["ours"].dtype == np.float64 and frame["ours"].isna().tolist() == [False, True]
    assert carb.crosscheck([CLAIM]).to_frame()["ours"].dtype == np.float64
    claims = found.claims.to_frame()
    assert claims["claimed"][0] == 11.2 and claims["error_parameter"][1] == "altitude_m"


@pytest.mark.parametrize("function", FUNCTIONS)
def test_a_result_is_a_row(pandas, function):
    result = call(function, **example(function))
    frame = _frame.elements(result)
    given = [f"given_{name}" if name in result.shown else name for name in result.request]
    assert list(frame.columns) == [*given, *result.shown, "status"] and len(frame) == 1
    for name in result.shown:
        assert frame[name].tolist() == [result._value(name)]


def test_elements_are_rows_with_what_was_given(pandas):
    pressures = carb.keg_pressure(
        volumes=[2.2, np.nan, 2.6], temperature_c=4, altitude_m=0, beverage="cider", errors="nan"
    )
    frame = _frame.elements(pressures)
    assert frame["volumes"].tolist()[::2] == [2.2, 2.6] and set(frame["beverage"]) == {"cider"}
    assert set(frame["temperature_c"]) == {4} and frame["status"].tolist() == pressures.status.tolist()
    np.testing.assert_array_equal(frame["gauge_psi"], pressures.gauge_psi)
    # Whoever works on the frame does not change the result.
    before = pressures.gauge_psi.copy()
    frame.loc[0, "gauge_psi"] = 0
    np.testing.assert_array_equal(pressures.gauge_psi, before)


def test_a_grid_of_elements_tells_its_places(pandas):
    grid = carb.keg_pressure(volumes=[[2.2], [2.6]], temperature_c=[2, 4, 6], altitude_m=0)
    frame = _frame.elements(grid)
    assert len(frame) == 6
    for row in frame.itertuples():
        assert row.gauge_psi == grid.gauge_psi[row.index_0, row.index_1]
        assert (row.volumes, row.temperature_c) == ([2.2, 2.6][row.index_0], [2, 4, 6][row.index_1])


def test_an_input_with_the_name_of_an_output_is_told_apart(pandas):
    batch = {"warmest_c": 20, "packaged_l": 19, "altitude_m": 0, "abv_percent": 5}
    frame = _frame.elements(carb.primed_carbonation(mass_g=[100, 120], **batch))
    assert frame["given_abv_percent"].tolist() == [5, 5] and (frame["abv_percent"] > 5).all()


def test_what_is_indexed_keeps_its_index(pandas):
    kegs = pandas.Index(["left", "right"], name="keg")
    series = pandas.Series([2.2, 2.6], index=kegs)
    status = pandas.Series([0, 0], index=kegs)
    stands_in = {"status": status, "request": {"volumes": series}, "shown": ("gauge_psi",), "_value": lambda _: series}
    frame = _frame.elements(SimpleNamespace(**stands_in))
    assert frame.index.equals(kegs) and frame.loc["right", "volumes"] == 2.6


def test_without_pandas_it_is_said_how_to_have_it(monkeypatch):
    monkeypatch.setitem(sys.modules, "pandas", None)
    sure = carb.gravity(sg=1.05).uncertainty()
    for asked in (carb.keg_sizes().to_frame, sure.to_frame, carb.crosscheck(**CLAIM).to_frame, sure.models.to_frame):
        with pytest.raises(ImportError, match="pip install pandas"):
            asked()


# Tables as they are printed


@pytest.mark.parametrize("name", TABLES)
def test_a_printed_table_has_every_column_with_its_unit(name):
    table = call(name, **example(name))
    said = str(table)
    assert said == repr(table) and said.startswith(f"{name}: {len(table)} row")
    assert all(column in said for column in table.columns) and all(unit in said for unit in table.units.values())
    assert (f"... and {len(table) - 20} more" in said) == (len(table) > 20)
    assert max(map(len, said.splitlines())) <= 120
    assert not [line for line in said.splitlines() if line != line.rstrip()]


def test_printed_numbers_stand_below_each_other():
    head, unit, *rows = str(carb.keg_sizes()).splitlines()[1:]
    end = head.index("content_l") + len("content_l")
    assert unit[end - 1] == "L"
    for line, row in zip(rows, carb.keg_sizes(), strict=True):
        assert line[:end].split()[-1] == f"{row.content_l:.6g}" and line[end] == " "
        assert line.startswith(row.name)


def test_a_long_text_is_cut_and_what_is_not_known_is_a_dash():
    said = str(carb.fermentables())
    assert "dextrose monohydrate (corn sugar as usu…" in said
    unknown = next(row.name for row in carb.fermentables() if row.density_kg_per_m3 is None)
    assert any(line.startswith(unknown) and line.endswith(" -") for line in said.splitlines())
