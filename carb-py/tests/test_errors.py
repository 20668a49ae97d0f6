"""What is refused, and how it is said."""

import math
import pickle

import carb
import numpy as np
import pytest
from shared import FUNCTIONS, call, example

SEA = {"altitude_m": 0}
DOSE = {"volumes": 2.5, "warmest_c": 20, "packaged_l": 20, **SEA}
AIR = ("altitude", "ambient", "sea_level")

REFUSED = [
    ("keg_pressure", {"volumes": math.nan, "temperature_c": 4, **SEA}, "NOT_A_NUMBER", "volumes"),
    ("keg_pressure", {"volumes": math.inf, "temperature_c": 4, **SEA}, "NOT_A_NUMBER", "volumes"),
    ("dissolved_co2", {"abs_psi": -5, "temperature_c": 4}, "OUT_OF_RANGE", "abs_psi"),
    ("priming_sugar", {**DOSE, "volumes": 0.5}, "TARGET_BELOW_HELD", "volumes"),
    ("priming_sugar", {**DOSE, "sugar": "dextrose"}, "AMBIGUOUS_SUGAR", "sugar"),
    ("priming_sugar", {**DOSE, "sugar": "erythritol"}, "MAKES_NO_CO2", "sugar"),
    ("priming_sugar", {**DOSE, "beverage": "cider"}, "MISSING", "fermentable_g_per_l"),
    ("priming_sugar", {**DOSE, "sugar": "sand"}, "UNKNOWN_CHOICE", "sugar"),
    ("gravity", {"sg": 1.5}, "OUT_OF_RANGE", "sg"),
    ("gravity", {"sg": 1.05, "plato": 12}, "EXCLUDED", "plato"),
    ("gravity", {}, "MISSING", "sg"),
    ("keg_pressure", {"volumes": 2.5, "tempertaure_c": 4, **SEA}, "UNKNOWN_NAME", "tempertaure_c"),
    ("keg_pressure", {"volumes": 2.5, "tempertaure_c": None, **SEA}, "UNKNOWN_NAME", "tempertaure_c"),
    ("keg_pressure", {"volumes": 2.5, "temperature_c": 4, "temperature_f": 39, **SEA}, "GIVEN_TWICE", "temperature_f"),
    ("keg_pressure", {"volumes": 2.5, "temperature_c": 4, "packaged_l": 19, **SEA}, "NOT_TAKEN", "packaged_l"),
    ("keg_pressure", {"volumes": "two", "temperature_c": 4, **SEA}, "WRONG_TYPE", "volumes"),
    ("keg_pressure", {"volumes": True, "temperature_c": 4, **SEA}, "WRONG_TYPE", "volumes"),
    ("keg_pressure", {"volumes": {}, "temperature_c": 4, **SEA}, "WRONG_TYPE", "volumes"),
    ("keg_pressure", {"volumes": [True, False], "temperature_c": 4, **SEA}, "WRONG_TYPE", "volumes"),
    ("keg_pressure", {"volumes": ["a", "b"], "temperature_c": 4, **SEA}, "WRONG_TYPE", "volumes"),
    ("keg_pressure", {"volumes": 2.5, "temperature_c": 4, "beverage": 1, **SEA}, "WRONG_TYPE", "beverage"),
    ("keg_pressure", {"volumes": [2.5], "temperature_c": 4, "beverage": ["beer"], **SEA}, "WRONG_TYPE", "beverage"),
    ("keg_pressure", {"volumes": 2.5, "temperature_c": 4, "solubility_multiplier": [1, 1], **SEA}, "WRONG_TYPE", None),
    ("keg_pressure", {"volumes": [2.5, 9], "tempertaure_c": [4, 5], **SEA}, "UNKNOWN_NAME", "tempertaure_c"),
    ("keg_pressure", {"volumes": [2.5], "temperature_c": 4, "errors": "ignore", **SEA}, "UNKNOWN_CHOICE", "errors"),
    ("package_pressure", {"volumes": 2.4, "temperature_c": 40, "headspace_percent": 0, **SEA}, "VESSEL_FULL", None),
]


@pytest.mark.parametrize(("function", "inputs", "code", "parameter"), REFUSED)
def test_refused(function, inputs, code, parameter):
    with pytest.raises(carb.CarbError) as caught:
        call(function, **inputs)
    assert caught.value.code == carb.CODES[code]
    assert parameter in (None, caught.value.parameter)
    assert isinstance(caught.value, ValueError)
    assert str(caught.value)


NEED_AIR = [
    name
    for name, function in FUNCTIONS.items()
    if name != "ambient_pressure"
    and any("altitude_m" in entry["names"] for entry in function["inputs"])
    # Where the CO2 was measured, nothing asks for the air.
    and not any(given.startswith("residual_") for given in example(name))
]


@pytest.mark.parametrize("function", NEED_AIR)
def test_without_ambient(function):
    inputs = {name: value for name, value in example(function).items() if not name.startswith(AIR)}
    with pytest.raises(carb.CarbError, match="altitude_m") as caught:
        call(function, **inputs)
    assert (caught.value.code, caught.value.parameter) == (carb.CODES["MISSING"], "altitude_m")


def test_nearest_name():
    with pytest.raises(carb.CarbError, match='did you mean "temperature_c"'):
        carb.keg_pressure(volumes=2.5, tempertaure_c=4, altitude_m=0)


def test_numbers_of_an_error():
    with pytest.raises(carb.CarbError) as caught:
        carb.gravity(sg=1.5)
    error = pickle.loads(pickle.dumps(caught.value))
    assert (error.value, error.low, error.high, error.index) == (1.5, 0.98, 1.165, None)
    assert (str(error), error.code) == (str(caught.value), carb.CODES["OUT_OF_RANGE"])


def test_element_of_an_error():
    with pytest.raises(carb.CarbError, match=r"sg = 1\.5000 .*\(element 1, 0\)") as caught:
        carb.gravity(sg=[[1.05, np.nan], [1.5, 1.6]])
    assert (caught.value.index, caught.value.value, caught.value.parameter) == ((1, 0), 1.5, "sg")


def test_positional():
    with pytest.raises(TypeError):
        carb.gravity(1.05)


@pytest.mark.parametrize("request_", ["{", "[]", "{}", '{"carb": 2}', {"carb": 2}, {"volumes": math.nan}, {"x": 1}])
def test_plan(request_):
    with pytest.raises(carb.CarbError):
        carb.plan(request_)
