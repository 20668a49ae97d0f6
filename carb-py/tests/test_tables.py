"""Tables: functions that answer with rows."""

import copy
import inspect
import json
import math
import pickle

import carb
import carb._carb as native
import pytest
from shared import TABLES, call, example, names_of

STATE = {"volumes": 2.5, "temperature_c": 4}

REFUSED = [
    ("fermentables", {"volumes": 2.5}, "NOT_TAKEN", "volumes"),
    ("fermentables", {"sugr": "honey"}, "UNKNOWN_NAME", "sugr"),
    ("fermentables", {"errors": "nan"}, "UNKNOWN_NAME", "errors"),
    ("solubility_models", {**STATE, "tempertaure_c": None}, "UNKNOWN_NAME", "tempertaure_c"),
    ("solubility_models", {**STATE, "temperature_f": 39}, "GIVEN_TWICE", "temperature_f"),
    ("solubility_models", {**STATE, "abs_bar": 2}, "EXCLUDED", "volumes"),
    ("solubility_models", {**STATE, "beverage": "tea"}, "UNKNOWN_CHOICE", "beverage"),
    ("solubility_models", {**STATE, "volumes": [2.4, 2.5]}, "WRONG_TYPE", "volumes"),
    ("solubility_models", {**STATE, "volumes": math.nan}, "NOT_A_NUMBER", "volumes"),
    ("solubility_models", {"volumes": 2.5}, "MISSING", "temperature_c"),
    ("solubility_models", {"temperature_c": 4}, "MISSING", "gauge_kpa"),
    ("solubility_models", {"gauge_bar": 1, "temperature_c": 4}, "MISSING", "altitude_m"),
]


@pytest.mark.parametrize("name", TABLES)
def test_table(name):
    table, known = call(name, **example(name)), TABLES[name]
    answer = json.loads(table.to_json())
    assert table.to_json() == native.json(name, json.dumps({"carb": 1, **example(name)}))
    assert (table.name, table.request) == (name, answer["request"])
    assert table.request == example(name)
    assert [*table.columns] == [*table.units] == [*table.meanings] == [column["name"] for column in known["columns"]]
    assert len(table) == len(answer["rows"]) > 0
    assert [dict(row) for row in table] == answer["rows"] == [dict(table[at]) for at in range(len(table))]
    assert table.to_dict() == {column: [row[column] for row in answer["rows"]] for column in table.columns}
    for column in known["columns"]:
        said, values = column["name"], table.column(column["name"])
        assert (table.units[said], table.meanings[said]) == (column["unit"], column["meaning"])
        # What has no unit is a text, a count or a plain number; the first of them names its row.
        kinds = float if column["unit"] else (str, int, float)
        assert all(value is None or isinstance(value, kinds) for value in values)
        assert values == tuple(getattr(row, said) for row in table)
        assert said in inspect.getdoc(getattr(carb, name)) and f">{said}<" in table._repr_html_()
    # A chart has numbers only, and nothing names its rows.
    named = next((said for said, unit in table.units.items() if not unit), None)
    names = table.column(named) if named else ()
    for at, text in enumerate(names):
        assert text in table
        if names.count(text) == 1:
            assert table[text] == table[at]
        else:
            with pytest.raises(KeyError, match=f"{names.count(text)} rows"):
                table[text]
    assert table._repr_html_().count("<tr ") == min(len(table), 60) + 1
    assert name in repr(table) and all(column in repr(table) for column in table.columns)
    for again in (pickle.loads(pickle.dumps(table)), copy.deepcopy(table)):
        assert again == table and hash(again) == hash(table) and again.to_json() == table.to_json()
    assert name in carb.__all__


@pytest.mark.parametrize("name", TABLES)
def test_signature(name):
    parameters = inspect.signature(getattr(carb, name)).parameters
    names = names_of(TABLES[name])
    assert list(parameters) == [*names, "unknown"]
    assert all(parameters[spelling].kind is inspect.Parameter.KEYWORD_ONLY for spelling in names)
    assert all(spelling in inspect.getdoc(getattr(carb, name)) for spelling in names)
    assert hasattr(carb.at(altitude_m=0), name) == bool(names)
    with pytest.raises(TypeError):
        getattr(carb, name)(1.0)


def test_rows():
    sugars = carb.fermentables()
    honey = sugars["honey"]
    assert honey.name == honey["name"] == "honey"
    assert "honey" in sugars and honey in sugars and "sand" not in sugars
    assert sugars[-1] == [*sugars][-1] and sugars[:2] == (sugars[0], sugars[1])
    assert sugars == carb.fermentables() != carb.sweeteners()
    with pytest.raises(KeyError, match="there is no sand here, but: .*honey"):
        sugars["sand"]
    with pytest.raises(KeyError, match="there is no sand here, but: name"):
        sugars.column("sand")
    with pytest.raises(IndexError):
        sugars[len(sugars)]


def test_nobody_changes_a_table():
    sugars = carb.fermentables()
    before = sugars.to_json()
    for thing, name in ((sugars, "name"), (sugars, "other"), (sugars[0], "name"), (sugars.units, "name")):
        with pytest.raises(AttributeError):
            setattr(thing, name, "sand")
    for thing in (sugars, sugars[0], sugars.meanings):
        with pytest.raises(TypeError):
            thing["name"] = "sand"
    sugars.to_dict()["name"].clear()
    sugars.request["volumes"] = 2.5
    assert sugars.to_json() == before and sugars["honey"] and sugars.request == {}
    crates = carb.fill_list(**example("fill_list"))
    crates.request["bottles"][0]["count"] = 0
    assert crates.request == example("fill_list")


def test_at():
    here = carb.at(altitude_m=240, beverage="cider", volumes=2.4)
    bound = here.solubility_models
    assert inspect.signature(bound) == inspect.signature(carb.solubility_models)
    assert bound(temperature_c=4) == carb.solubility_models(
        volumes=2.4, temperature_c=4, altitude_m=240, beverage="cider"
    )
    # A pressure replaces the carbonation, and air as it was measured the altitude.
    measured = bound(gauge_bar=1, temperature_c=4, ambient_kpa=99)
    assert measured == carb.solubility_models(gauge_bar=1, temperature_c=4, ambient_kpa=99, beverage="cider")


def test_agrees_with_the_function():
    state = {**STATE, "altitude_m": 0, "beverage": "beer"}
    own = [row for row in carb.solubility_models(**state) if row.default == "yes"]
    assert [row.gauge_psi for row in own] == [carb.keg_pressure(**state).gauge_psi]


@pytest.mark.parametrize(("name", "inputs", "code", "parameter"), REFUSED)
def test_refused(name, inputs, code, parameter):
    with pytest.raises(carb.CarbError) as caught:
        call(name, **inputs)
    assert (caught.value.code, caught.value.parameter) == (carb.CODES[code], parameter)
    assert str(caught.value) and caught.value.index is None


def test_numbers_of_an_error():
    with pytest.raises(carb.CarbError) as table:
        carb.solubility_models(**{**STATE, "volumes": 99})
    with pytest.raises(carb.CarbError) as function:
        carb.keg_pressure(**{**STATE, "volumes": 99, "altitude_m": 0})
    assert vars(table.value) == vars(function.value) and str(table.value) == str(function.value)
    assert table.value.value == 99 and table.value.high > table.value.low == 0


def test_an_open_limit():
    error = {"code": 1, "parameter": "gauge_bar", "value": -2.0, "low": -1.0, "high": None, "text": "too low"}
    with pytest.raises(carb.CarbError, match="too low") as caught:
        carb._errors.refuse(error)
    assert (caught.value.value, caught.value.low, caught.value.high) == (-2, -1, math.inf)
