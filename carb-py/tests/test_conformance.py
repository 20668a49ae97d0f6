"""The cases that every language answers alike, to the last bit."""

import csv
import json

import carb
import carb._carb as native
import numpy as np
import pytest
from shared import ROOT, arrays, call, given, pick

FILE = ROOT / "tests" / "conformance" / "cases.tsv"

pytestmark = pytest.mark.filterwarnings("ignore::carb.CarbWarning")


@pytest.fixture(scope="module")
def cases():
    with FILE.open(encoding="utf-8", newline="") as file:
        found = list(csv.DictReader(file, delimiter="\t", quoting=csv.QUOTE_NONE))
    assert len(found) > 50
    return found


def outputs(case):
    """The outputs of a function; a table has none, its rows stand in the JSON."""
    pairs = (pair.partition("=") for pair in case["outputs"].split(";") if pair)
    return {name: float(value) for name, _, value in pairs}


def answers(case, inputs, check):
    """Whether a call gives the outputs of the case, or its error."""
    if case["code"] == "0":
        result = call(case["function"], **inputs)
        for name, value in outputs(case).items():
            check(pick(result, name), value)
        return result
    with pytest.raises(carb.CarbError) as caught:
        call(case["function"], **inputs)
    assert (caught.value.code, caught.value.parameter) == (int(case["code"]), case["parameter"]), case["inputs"]
    return None


def test_json(cases):
    for case in cases:
        assert native.json(case["function"], case["request_json"]) == case["answer_json"]


def test_numbers(cases):
    def check(value, wanted):
        assert value.hex() == wanted.hex()

    for case in cases:
        if case["function"] != "plan":
            result = answers(case, given(case["inputs"]), check)
            assert result is None or result.to_json() == case["answer_json"]


def test_arrays(cases):
    def check(values, wanted):
        assert values.tobytes() == np.full(3, wanted).tobytes()

    for case in cases:
        if case["function"] != "plan":
            inputs = given(case["inputs"])
            varying = arrays(case["function"])
            many = {n: [v] * 3 if n in varying and isinstance(v, float) else v for n, v in inputs.items()}
            if many != inputs:
                answers(case, many, check)


def test_plans(cases):
    found = [case for case in cases if case["function"] == "plan"]
    assert found
    for case in found:
        answer = json.loads(case["answer_json"])
        for request in (given(case["inputs"]), case["request_json"]):
            if "error" in answer:
                with pytest.raises(carb.CarbError) as caught:
                    carb.plan(request)
                assert caught.value.code == answer["error"]["code"]
                assert str(caught.value) == answer["error"]["text"]
            else:
                plan = carb.plan(request)
                assert plan.to_json() == case["answer_json"]
                assert plan.danger == answer["danger"]
                assert plan.page() == str(plan)
