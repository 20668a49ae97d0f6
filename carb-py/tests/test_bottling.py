"""The bottling of a batch, and the lists that it, the plan and some tables take."""

import copy
import inspect
import json
import pickle

import carb
import carb._carb as native
import numpy as np
import pytest
from shared import KNOWN, TABLES, call, example, names_of

BATCH = {"packaged_l": 19.2, "volumes": 2.4, "warmest_c": 20.5, "altitude_m": 240}
CRATES = [{"bottle_ml": 500, "count": 24, "rating_gauge_bar": 8}, {"bottle_ml": 330, "count": 30}]
COLUMNS = {"bottle_ml": [500, 330], "count": [24, 30], "rating_gauge_bar": [8, None]}
PARTS = ("residual", "priming", "primed", "sugars", "balance", "storage", "fill", "bottles", "ready", "safety")
JOB = {"inputs": KNOWN["jobs"][0]["inputs"], "lists": KNOWN["lists"]}


class Frame:
    """What a data frame has of the rows: NaN, or an NA that has no truth, where a number is missing."""

    def __init__(self, rows):
        self.rows = rows

    def __iter__(self):
        return iter(self.rows[0])

    def to_dict(self, orient="dict"):
        if orient != "records":
            raise ValueError(orient)
        return self.rows


class NA:
    def __ne__(self, other):
        return self

    def __bool__(self):
        raise TypeError("NA is ambiguous")


def bottling(**given):
    return carb.bottling(**{**BATCH, **given})


def refused(**given):
    with pytest.raises(carb.CarbError) as caught:
        bottling(**given)
    return caught.value


def test_bottling():
    done = bottling(bottles=CRATES)
    assert type(done) is carb.Bottling and carb.Bottling.__name__ in carb.__all__
    text = json.dumps({"carb": 1, **BATCH, "bottles": CRATES})
    assert done.to_json() == native.json("bottling", text) == carb.Bottling(text).to_json()
    assert done.to_dict() == json.loads(done.to_json())
    assert done.priming.mass_g == done["priming"]["mass_g"] == carb.priming_sugar(**BATCH).mass_g
    assert [row.count for row in done.bottles] == [24, 30]
    assert done.danger is False and bottling(volumes=4.5).danger is True
    assert done.page() == str(done) == native.bottling_page(text)
    assert "<pre" in done._repr_html_()
    assert eval(repr(done), {"carb": carb}) == done
    # The plan says the same of its bottles.
    day = carb.plan({**BATCH, "bottles": CRATES})
    assert day.bottling.bottles == done.bottles and day != done
    for again in (pickle.loads(pickle.dumps(done)), copy.deepcopy(done)):
        assert type(again) is carb.Bottling
        assert again == done and hash(again) == hash(done) and again.to_json() == done.to_json()
    assert done != bottling() and done == bottling(bottles=CRATES, title=None, additions=None)
    for name in ("danger", "priming", "other"):
        with pytest.raises(AttributeError):
            setattr(done, name, 1)
    with pytest.raises(AttributeError, match="there is no primng here, but: .*priming"):
        _ = done.primng


def test_signature():
    parameters = inspect.signature(carb.bottling).parameters
    names = names_of(JOB)
    assert list(parameters) == [*names, "uncertainty", "unknown"]
    assert all(parameters[name].kind is inspect.Parameter.KEYWORD_ONLY for name in names)
    said = inspect.getdoc(carb.bottling)
    columns = [name for rows in JOB["lists"] for column in rows["columns"] for name in column["names"]]
    assert all(f"``{part}``" in said for part in PARTS) and set(PARTS) <= set(bottling(bottles=CRATES))
    assert all(name in said for name in [*names, *columns])
    with pytest.raises(TypeError):
        carb.bottling(BATCH)


@pytest.mark.parametrize(
    "bottles",
    [
        tuple(CRATES),
        [{**row, "capacity_ml": None} for row in CRATES],
        (row for row in CRATES),
        np.array(CRATES),
        [{name: np.float64(value) for name, value in row.items()} for row in CRATES],
        [{np.str_(name): np.int64(value) for name, value in row.items()} for row in CRATES],
        COLUMNS,
        {name: tuple(column) for name, column in COLUMNS.items()},
        {**COLUMNS, "bottle_ml": np.array([500, 330]), "rating_gauge_bar": np.array([8, np.nan])},
        Frame([{**row, "capacity_ml": float("nan")} for row in CRATES]),
        Frame([{**row, "capacity_ml": NA(), "bottle_class": None} for row in CRATES]),
        bottling(bottles=CRATES).request.get("bottles", CRATES),
    ],
)
def test_what_holds_rows(bottles):
    assert bottling(bottles=bottles) == bottling(bottles=CRATES)


def test_a_data_frame():
    pandas = pytest.importorskip("pandas")
    assert bottling(bottles=pandas.DataFrame(CRATES)) == bottling(bottles=CRATES)
    columns = {name: pandas.DataFrame(CRATES)[name] for name in COLUMNS}
    assert bottling(bottles=columns) == bottling(bottles=CRATES)


def test_rows_of_an_answer():
    sizes = carb.fill_list(**example("fill_list"))
    taken = [{"bottle_l": row.bottle_l, "count": row.filled_count} for row in sizes]
    assert carb.fill_list(packaged_l=1, bottles=taken).request["bottles"] == taken


WRONG = [
    ([{"bottle_ml": 500, "count": 24}, {"bottle_ml": 330, "cuont": 30}], "UNKNOWN_NAME", "cuont", 2),
    ([{"bottle_ml": 500, "cuont": None}], "UNKNOWN_NAME", "cuont", 1),
    ([{"bottle_ml": 500}], "MISSING", "count", 1),
    ([{"bottle_ml": 500, "count": None}], "MISSING", "count", 1),
    (Frame([{"bottle_ml": 500.0, "count": float("nan")}]), "MISSING", "count", 1),
    ([{"bottle_ml": 500, "count": "many"}], "WRONG_TYPE", "count", 1),
    ([{"bottle_ml": 500, "count": True}], "WRONG_TYPE", "count", 1),
    ([{"bottle_ml": 500, "count": np.True_}], "WRONG_TYPE", "count", 1),
    ([{"bottle_ml": 500, "count": [24]}], "WRONG_TYPE", "count", 1),
    ([{"bottle_ml": 500, "count": 10**400}], "WRONG_TYPE", "count", 1),
    ([{"bottle_ml": 500, "count": float("nan")}], "NOT_A_NUMBER", "count", 1),
    ([{"bottle_ml": 500, "count": float("inf")}], "NOT_A_NUMBER", "count", 1),
    ([{"bottle_ml": -500, "count": 24}], "OUT_OF_RANGE", "bottle_ml", 1),
    ([{"bottle_ml": 500, "bottle_l": 0.5, "count": 24}], "GIVEN_TWICE", "bottle_l", 1),
    ([{"bottle_ml": 500, "count": 24, "volumes": 2}], "NOT_TAKEN", "volumes", 1),
    ([{"bottle_ml": 500, "count": 24, "bottle_class": "mug"}], "UNKNOWN_CHOICE", "bottle_class", 1),
    ([{0: 500, 1: 24}], "UNKNOWN_NAME", "0", 1),
    (Frame([{0: 500, 1: 24}]), "UNKNOWN_NAME", "0", 1),
    ([{"bottle_ml\ud800": 500}], "UNKNOWN_NAME", None, 1),
    ([CRATES[0], (330, 30)], "WRONG_LIST", "bottles", None),
    ([500, 330], "WRONG_LIST", "bottles", None),
    (np.array([500, 330]), "WRONG_LIST", "bottles", None),
    (np.array(500), "WRONG_LIST", "bottles", None),
    ("crates", "WRONG_LIST", "bottles", None),
    (b"crates", "WRONG_LIST", "bottles", None),
    (24, "WRONG_LIST", "bottles", None),
    (True, "WRONG_LIST", "bottles", None),
    ({"bottle_ml": 500, "count": 24}, "WRONG_LIST", "bottles", None),
    ({"bottle_ml": [500, 330], "count": [24]}, "WRONG_LIST", "bottles", None),
    ({"bottle_class": "growler", "count": [24]}, "WRONG_LIST", "bottles", None),
    (object(), "WRONG_LIST", "bottles", None),
    ([{"bottle_ml": 500, "count": 1}] * 401, "TOO_MANY_ROWS", "bottles", None),
]


@pytest.mark.parametrize(("bottles", "code", "parameter", "row"), WRONG)
def test_wrong_rows(bottles, code, parameter, row):
    error = refused(bottles=bottles)
    assert error.code == carb.CODES[code] and parameter in (None, error.parameter)
    assert error.row == row and (row is None or error.list == "bottles")
    assert "bottles" in str(error) and (row is None or str(error).startswith(f"in row {row} of bottles: "))
    again = pickle.loads(pickle.dumps(error))
    assert repr(vars(again)) == repr(vars(error)) and str(again) == str(error)


@pytest.mark.parametrize("bottles", [[500], {"bottle_ml": 500}, [{"cuont": 1}], [{"count": 1}], [{"count": "x"}]])
def test_texts_are_those_of_the_json(bottles):
    answer = json.loads(native.json("bottling", json.dumps({"carb": 1, **BATCH, "bottles": bottles})))["error"]
    error = refused(bottles=bottles)
    assert (str(error), error.code) == (answer["text"], answer["code"])
    assert (error.list, error.row) == (answer.get("list"), answer.get("row"))
    with pytest.raises(carb.CarbError) as page:
        native.bottling_page(json.dumps({"carb": 1, **BATCH, "bottles": bottles}))
    assert vars(page.value) == vars(error) and str(page.value) == str(error)


def test_wrong_requests():
    for wrong, code in (
        ({"packagd_l": 19}, "UNKNOWN_NAME"),
        ({"packaged_ml": 19200}, "GIVEN_TWICE"),
        ({"volumes": [2.4, 2.5]}, "WRONG_TYPE"),
        ({"volumes": float("nan")}, "NOT_A_NUMBER"),
        ({"serving_c": 4}, "NOT_TAKEN"),
        ({"mass_g": 100}, "EXCLUDED"),
        ({"errors": "nan"}, "UNKNOWN_NAME"),
        ({"uncertainty": {"room_c": 1}}, "MISSING"),
        ({"carb": 2}, "WRONG_VERSION"),
    ):
        assert refused(**wrong).code == carb.CODES[code], wrong
    assert bottling(carb=1) == bottling()
    assert bottling(filtered=np.True_) == bottling(filtered=True)
    assert "error" in bottling(volumes=0.5).priming


def test_uncertainty():
    sure = bottling(uncertainty={"warmest_c": "thermometer", "packaged_l": 0.5}).uncertainty
    assert list(sure) == ["priming", "carbonation", "hot_day"]
    assert sure.priming.low.mass_g < bottling().priming.mass_g < sure.priming.high.mass_g
    # A gravity that is not sure makes the dose unsure, through what is left to ferment.
    known = {"original_sg": 1.05, "current_sg": 1.0112, "final_sg": 1.0105}
    budget = bottling(**known, uncertainty={"current_sg": "hydrometer"}).uncertainty.priming.budget
    assert budget[0].name == "current_sg" and budget[0].share > 0.5


def test_every_list():
    readings = [{"time_d": 7, "current_sg": 1.012}, {"time_d": 10, "current_sg": 1.012}]
    history = {"temperature_c": [20, 8], "time_d": [10, 20]}
    done = bottling(
        original_sg=1.05,
        final_sg=1.012,
        additions=[{"addition": "honey", "mass_g": 60}],
        readings=readings,
        history=history,
        bottles=CRATES,
    )
    assert done.readiness.current_sg == pytest.approx(1.012)
    assert done.added.volumes > 0 and done.ready.days and done.fill.filled_count > 0
    assert carb.conditioning_days(history=history) == carb.conditioning_days(
        history=[{"temperature_c": 20, "time_d": 10}, {"temperature_c": 8, "time_d": 20}]
    )


@pytest.mark.parametrize(
    ("function", "more"),
    [("gravity", {}), ("gravity", {"sg": [1.04, 1.05]}), ("keg_pressure", {"volumes": [2.4, 2.5], "temperature_c": 4})],
)
def test_a_function_takes_no_list(function, more):
    answer = json.loads(native.json(function, json.dumps({"carb": 1, "bottles": CRATES})))["error"]
    for bottles in (CRATES, COLUMNS, Frame(CRATES)):
        with pytest.raises(carb.CarbError) as caught:
            call(function, bottles=bottles, **more)
        assert (str(caught.value), caught.value.code) == (answer["text"], answer["code"])
    assert carb.gravity(sg=1.05, bottles=None) == carb.gravity(sg=1.05)


@pytest.mark.parametrize("name", TABLES)
def test_a_table_takes_its_own_lists(name):
    for other, rows in {"history": [{"temperature_c": 20, "time_d": 1}], "bottles": CRATES}.items():
        if other not in names_of(TABLES[name]):
            with pytest.raises(carb.CarbError, match=f"{other}: this table takes no such list"):
                call(name, **{**example(name), other: rows})


def test_at():
    here = carb.at(altitude_m=240, beverage="cider", basis="physical", bottles=COLUMNS, packaged_l=19.2)
    given = {"volumes": 2.4, "warmest_c": 20.5, "fermentable_g_per_l": 0}
    whole = {**given, "altitude_m": 240, "beverage": "cider", "basis": "physical", "packaged_l": 19.2}
    assert here.bottling(**given) == carb.bottling(**whole, bottles=CRATES)
    assert here.plan(given) == carb.plan({**whole, "bottles": CRATES})
    assert here.fill_list() == carb.fill_list(packaged_l=19.2, bottles=CRATES)
    # What a call gives replaces the list, and what excludes what the context says.
    assert here.bottling(**given, bottles=CRATES[:1]) == carb.bottling(**whole, bottles=CRATES[:1])
    batch = {name: value for name, value in whole.items() if name != "packaged_l"}
    assert here.bottling(**given, batch_us_gal=5) == carb.bottling(**batch, batch_us_gal=5, bottles=CRATES)
    weighed = {**whole, "mass_g": 110}
    del weighed["volumes"]
    assert carb.at(volumes=2.4).bottling(**weighed) == carb.bottling(**weighed)
    # What a function takes no list of keeps working.
    assert here.gravity(sg=1.05) == carb.gravity(sg=1.05)
    assert inspect.signature(here.bottling) == inspect.signature(carb.bottling)
    assert pickle.loads(pickle.dumps(here)) == here and hash(here) == hash(copy.deepcopy(here))
    assert eval(repr(here), {"carb": carb}) == here
    with pytest.raises(carb.CarbError, match="in row 1 of bottles"):
        carb.at(bottles=[{"cuont": 1}])


def test_a_context_is_its_own():
    crates = [dict(row) for row in CRATES]
    here = carb.at(bottles=crates)
    before = hash(here)
    crates[0]["count"] = 0
    assert hash(here) == before and here.fill_list(packaged_l=10).request["bottles"][0]["count"] == 24
