"""The cases that every language answers alike, to the last bit."""

import csv
import json

import carb
import carb._carb as native
import numpy as np
import pytest
from shared import ROOT, arrays, call, given, pick

JOBS = {
    "plan": (carb.plan, carb.plan),
    "bottling": (lambda given: carb.bottling(**given), carb.Bottling),
    "kegging": (lambda given: carb.kegging(**given), carb.Kegging),
    "crosscheck": (lambda given: carb.crosscheck(**given), carb.Crosscheck),
}
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
        if case["function"] not in JOBS:
            result = answers(case, given(case["inputs"]), check)
            assert result is None or result.to_json() == case["answer_json"]


def test_arrays(cases):
    def check(values, wanted):
        assert values.tobytes() == np.full(3, wanted).tobytes()

    for case in cases:
        if case["function"] not in JOBS:
            inputs = given(case["inputs"])
            varying = arrays(case["function"])
            many = {n: [v] * 3 if n in varying and isinstance(v, float) else v for n, v in inputs.items()}
            if many != inputs:
                answers(case, many, check)


@pytest.mark.parametrize("name", JOBS)
def test_jobs(cases, name):
    found = [case for case in cases if case["function"] == name]
    assert found
    by_name, by_text = JOBS[name]
    for case in found:
        answer = json.loads(case["answer_json"])
        for ask, request in ((by_name, given(case["inputs"])), (by_text, case["request_json"])):
            if "error" in answer:
                with pytest.raises(carb.CarbError) as caught:
                    ask(request)
                error = caught.value
                assert (error.code, str(error)) == (answer["error"]["code"], answer["error"]["text"])
                assert (error.list, error.row) == (answer["error"].get("list"), answer["error"].get("row"))
            else:
                done = ask(request)
                assert done.to_json() == case["answer_json"]
                assert done.danger == answer["unsafe" if name == "crosscheck" else "danger"]
                assert done.page() == str(done)
