"""The shape of the package: signatures, docstrings, pickling, what is written from the tables."""

import copy
import doctest
import importlib
import importlib.util
import inspect
import json
import pickle
import subprocess
import sys
from pathlib import Path

import carb
import numpy as np
import pytest
from shared import FUNCTIONS, ROOT, TABLES, call, example, pick

HERE = Path(__file__).parent
BATCH = {"packaged_l": 19.2, "volumes": 2.4, "warmest_c": 20.5, "altitude_m": 240}
HARBOUR = ROOT / "docs" / "scenarios" / "harbour_ale.json"


def test_written_files_are_current():
    spec = importlib.util.spec_from_file_location("generate", HERE.parent / "generate.py")
    generate = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(generate)
    for path, text in generate.texts().items():
        assert path.read_text(encoding="utf-8") == text, f"{path.name} is not current: run python generate.py"


@pytest.mark.parametrize("function", FUNCTIONS)
def test_signature(function):
    parameters = inspect.signature(getattr(carb, function)).parameters
    names = [name for entry in FUNCTIONS[function]["inputs"] for name in entry["names"]]
    assert list(parameters) == [*names, "errors", "unknown"]
    assert all(parameters[name].kind is inspect.Parameter.KEYWORD_ONLY for name in names)
    bound = getattr(carb.at(altitude_m=0), function)
    assert inspect.signature(bound) == inspect.signature(getattr(carb, function))
    assert bound.__doc__ == getattr(carb, function).__doc__
    assert all(name in bound.__doc__ for name in names)


MODULES = (
    "",
    "._claims",
    "._convert",
    "._crosscheck",
    "._frame",
    "._plan",
    "._result",
    "._table",
    "._uncertainty",
    ".ufunc",
)


@pytest.mark.parametrize("module", MODULES)
def test_doctests(module):
    found = doctest.testmod(importlib.import_module(f"carb{module}"))
    assert found.attempted > 0 and found.failed == 0


@pytest.mark.parametrize("name", [*FUNCTIONS, *TABLES, "bottling", "kegging", "at"])
def test_doctests_of_functions(name):
    function = getattr(carb, name)
    test = doctest.DocTestParser().get_doctest(function.__doc__, {}, name, None, None)
    assert test.examples and doctest.DocTestRunner().run(test).failed == 0


@pytest.mark.parametrize("function", FUNCTIONS)
def test_result(function):
    result = call(function, **example(function))
    assert type(result).__name__ in carb.__all__
    for out in FUNCTIONS[function]["outputs"]:
        noun, name = out["noun"], out["name"]
        value = pick(result, f"{noun}_{name}".lstrip("_"))
        assert isinstance(value, float)
        assert inspect.getdoc(getattr(type(getattr(result, noun) if noun else result), name))
        if out["shown"]:
            whole = result.to_dict()
            assert (whole[noun] if noun else whole)[name] == value
    assert result.request == json.loads(result.to_json())["request"]
    if not any(entry["names"] == ["beverage"] for entry in FUNCTIONS[function]["inputs"]):
        assert result.basis is None and result.beverage is None
    else:
        assert result.basis.basis in ("handbook", "physical")
        assert result.beverage.beverage == result.beverage["beverage"] == "beer"
    assert all(caution.code and caution.level and caution.text for caution in result.cautions)
    # Only what is true by definition needs no source.
    assert result.sources or {equation.standing for equation in result.equations} <= {
        "definition",
        "common practice, no source",
    }
    assert all(source.citation for source in result.sources)
    assert result.steps[0].equation == result.equations[0].id
    assert result.working().startswith(result.steps[0].text)
    assert result.status == 0
    assert type(result).__name__ in repr(result)
    assert "<table" in result._repr_html_()
    for again in (pickle.loads(pickle.dumps(result)), copy.deepcopy(result)):
        assert again == result and hash(again) == hash(result) and again.to_json() == result.to_json()
    with pytest.raises(AttributeError):
        result.other = 1
    with pytest.raises(AttributeError):
        setattr(result, result.outputs[0], 1.0)
    with pytest.raises(AttributeError):
        result.basis.basis = "physical"
    with pytest.raises(TypeError):
        result[0]


def test_package_pressure_is_expected_or_worst():
    result = carb.package_pressure(volumes=2.4, temperature_c=30, headspace_percent=4, altitude_m=240)
    assert result.worst.gauge_bar > result.expected.gauge_bar
    assert not [name for name in dir(result) if "bar" in name or "psi" in name]
    assert pickle.loads(pickle.dumps(result.worst)) == result.worst != result.expected
    assert "gauge_bar" in repr(result.worst)


def test_array_result():
    result = carb.gravity(sg=[1.05, float("nan")])
    assert pickle.loads(pickle.dumps(result)) == result != carb.gravity(sg=[1.05, 1.06])
    assert hash(result) == hash(copy.copy(result))
    assert "(2,)" in repr(result) and "carb.gravity" in result._repr_html_()


def test_at():
    here = carb.at(altitude_m=240, beverage="beer")
    assert repr(here) == "carb.at(beverage='beer', altitude_m=240.0)"
    same = carb.keg_pressure(volumes=2.5, temperature_c=4, altitude_m=240, beverage="beer")
    assert here.keg_pressure(volumes=2.5, temperature_c=4) == same
    assert here.keg_pressure(volumes=2.5, temperature_c=4, altitude_m=None) == same
    # What a call gives replaces the same quantity in any unit, and what it excludes.
    assert here.ambient_pressure(altitude_ft=0) == carb.ambient_pressure(altitude_ft=0)
    measured = here.dissolved_co2(gauge_bar=1, temperature_c=4, ambient_kpa=99)
    assert measured == carb.dissolved_co2(gauge_bar=1, temperature_c=4, ambient_kpa=99, beverage="beer")
    # What a function does not take stays out.
    assert here.gravity(sg=1.05) == carb.gravity(sg=1.05)
    day = {name: value for name, value in BATCH.items() if name != "altitude_m"}
    assert here.plan(day).to_json() == carb.plan({**BATCH, "beverage": "beer"}).to_json()
    assert pickle.loads(pickle.dumps(here)) == here == carb.at(beverage="Beer", altitude_m=240)
    # Where a function needs both, a pressure does not replace a carbonation.
    told = {"start_volumes": 0.9, "gauge_psi": 12, "temperature_c": 3}
    assert carb.at(volumes=2.4, altitude_m=0).carbonation_time(**told) == carb.carbonation_time(
        **told, volumes=2.4, altitude_m=0
    )
    with pytest.raises(AttributeError):
        here.altitude_m = 0
    for wrong in ({"altitud_m": 0}, {"altitude_m": 0, "altitude_ft": 0}, {"altitude_m": [0, 1]}):
        with pytest.raises(carb.CarbError):
            carb.at(**wrong)
    with pytest.raises(carb.CarbError, match='did you mean "temperature_c"'):
        here.keg_pressure(volumes=2.5, tempertaure_c=4)


def test_plan():
    day = carb.plan(BATCH)
    assert day.to_json() == carb.plan(json.dumps({"carb": 1, **BATCH})).to_json()
    assert day.to_dict() == json.loads(day.to_json())
    assert day.kegging.regulator.gauge_psi == day["kegging"]["regulator"]["gauge_psi"]
    assert day.page().startswith("PACKAGING PLAN") and str(day) == day.page()
    assert day.danger is False
    assert pickle.loads(pickle.dumps(day)) == day
    assert "error" in carb.plan({**BATCH, "volumes": 0.5}).bottling.priming


def test_command_line(tmp_path):
    def run(*arguments):
        return subprocess.run([sys.executable, "-m", "carb", *arguments], capture_output=True, check=False)

    page, day = run("plan", str(HARBOUR)), carb.plan(HARBOUR.read_text(encoding="utf-8"))
    assert (page.stdout.decode(), page.returncode) == (day.page(), int(day.danger))
    file = tmp_path / "request.json"
    for kind in (carb.Plan, carb.Bottling):
        for request, code in ((BATCH, 0), ({**BATCH, "volumes": 4.5}, 1), ({"title": "nothing else"}, 2)):
            text = json.dumps({"carb": 1, **request})
            file.write_text(text)
            page = run(kind.job, str(file))
            assert (page.stdout.decode(), page.returncode) == (kind(text).page(), code)
        file.write_text(json.dumps({"carb": 1, **BATCH, "bottles": [{"bottle_ml": 500}]}))
        refused = run(kind.job, str(file))
        assert refused.returncode == 2 and "in row 1 of bottles: count" in refused.stderr.decode()
        file.write_text("{}")
        assert run(kind.job, str(file)).returncode == run(kind.job, "nowhere.json").returncode == 2
    said = run("version").stdout.decode().splitlines()
    assert said[:2] == [f"carb {carb.__version__}", f"NumPy {np.__version__}"]


def test_a_name_that_is_meant_is_told():
    with pytest.raises(AttributeError, match="did you mean 'keg_pressure'"):
        carb.keg_presure  # noqa: B018
    assert not [name for name in dir(carb) if name.startswith("_") and not name.startswith("__")]
    with pytest.raises(TypeError):
        carb.CODES["MISSING"] = 0
    here = carb.at(bottles=[{"bottle_ml": 500, "count": 24}])
    here.context["bottles"].clear()
    bound = pickle.loads(pickle.dumps(carb.at(altitude_m=240).keg_pressure))
    assert bound(volumes=2.5, temperature_c=4) == carb.keg_pressure(volumes=2.5, temperature_c=4, altitude_m=240)
    assert here.context["bottles"]


def test_threads_that_ask_first_get_one_class(tmp_path):
    """Every name by four threads at once, in a fresh process that changes threads as often as it can."""
    script = """
import sys, threading
import carb
sys.setswitchinterval(1e-6)
names = [name for name in carb.__all__ if name[0].isupper()]
found = [[], [], [], []]
start = threading.Barrier(4)
def ask(mine):
    start.wait()
    mine += [getattr(carb, name) for name in names]
threads = [threading.Thread(target=ask, args=(mine,)) for mine in found]
[thread.start() for thread in threads]
[thread.join() for thread in threads]
assert all(one is other for all in zip(*found) for one in all for other in all)
"""
    subprocess.run([sys.executable, "-c", script], check=True)


def test_threads_that_import_at_once_do_not_wait_for_each_other():
    script = """
import numpy, carb, threading
threading.Thread(target=lambda: carb.convert(38, "f", "c")).start()
carb.keg_pressure(volumes=2.5, temperature_c=4, altitude_m=0)
"""
    for _ in range(3):
        subprocess.run([sys.executable, "-c", script], check=True, timeout=120)
