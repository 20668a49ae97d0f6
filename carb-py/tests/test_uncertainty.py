"""How sure an answer is, and its working as Markdown."""

import copy
import json
import math
import pickle
import re

import carb
import carb._carb as native
import numpy as np
import pytest
from shared import FUNCTIONS, call, example

STATE = {"volumes": 2.5, "temperature_c": 4, "altitude_m": 0, "beverage": "beer"}
DAY = {"packaged_l": 19.2, "volumes": 2.4, "warmest_c": 20.5, "altitude_m": 240}
PLACES = ["priming", "carbonation", "hot_day", "regulator", "gas", "warmed"]


def keg():
    return carb.keg_pressure(**STATE)


def asked(function, request, doubts):
    """What the core says in JSON."""
    return json.loads(native.json(function, json.dumps({"carb": 1, **request, "uncertainty": doubts})))


def budget_of(entry):
    return {share.name: share for share in entry.budget}


@pytest.mark.parametrize("function", FUNCTIONS)
def test_same_as_the_json(function):
    result, request = call(function, **example(function)), example(function)
    name = next(name for name, value in request.items() if isinstance(value, (int, float)))
    for doubts in ({}, {name: 0}, {name: 0.001}, {name: {"range": 0.001}}):
        sure, answer = result.uncertainty(doubts), asked(function, result.request, doubts)
        assert sure.to_dict() == answer == json.loads(sure.to_json())
        assert [{**entry, "budget": [*entry.budget]} for entry in sure] == answer["uncertainty"]
        assert [dict(model) for model in sure.models] == answer.get("models", [])
        assert len(sure) == len(sure.outputs) == len(answer["uncertainty"]) > 0
        for at, (entry, known) in enumerate(zip(sure, answer["uncertainty"], strict=True)):
            assert isinstance(entry, carb.Estimate) and entry == sure[at] == sure.outputs[at]
            assert (entry.noun, entry.method) == (known["noun"], known["method"])
            for part in ("value", "low", "high", "standard"):
                assert dict(getattr(entry, part)) == known[part]
            assert [dict(share) for share in entry.budget] == known["budget"]
            if any(entry.standard.values()):
                assert math.isclose(sum(share.share for share in entry.budget), 1)
            for full, unit in zip(entry.names, entry.value, strict=True):
                assert full in result.shown and full in sure and sure[full] == entry
                assert entry.low[unit] <= entry.value[unit] <= entry.high[unit]
                assert full in repr(entry) and f">{full}<" in entry._repr_html_()
        assert repr(sure).startswith("\n".join(map(repr, sure)))
        for again in (pickle.loads(pickle.dumps(sure)), copy.deepcopy(sure)):
            assert again == sure and hash(again) == hash(sure) and again.to_json() == sure.to_json()
            assert again[0] == sure[0]


def test_estimate():
    sure = keg().uncertainty(volumes=0.1, temperature_c={"range": 1})
    entry = sure["gauge_psi"]
    assert entry == sure["gauge_kpa"] != sure["abs_psi"]
    assert entry.value.gauge_psi == keg().gauge_psi
    shares = budget_of(entry)
    mine = shares["volumes"]
    assert (mine.half_width, mine.kind, mine.of_an_equation) == (0.1, "normal", False)
    assert shares["solubility_multiplier"].of_an_equation is True
    assert mine.sensitivity.gauge_psi > 0 > shares["solubility_multiplier"].sensitivity.gauge_psi
    assert [share.share for share in entry.budget] == sorted((share.share for share in entry.budget), reverse=True)
    assert len(sure.models) > 1 and keg().gauge_psi in [model.gauge_psi for model in sure.models]
    assert carb.gravity(sg=1.05).uncertainty().models == ()


def test_nouns():
    sure = carb.package_pressure(volumes=2.4, temperature_c=30, altitude_m=240).uncertainty()
    # The worst case is a bound and has no interval.
    assert sure["expected_gauge_bar"].noun == "expected" and "worst_gauge_bar" not in sure
    assert "expected_gauge_bar" in repr(sure) and "gauge_bar" not in sure and sure[0] in sure
    assert sure[-1] == [*sure][-1] and sure[:2] == (sure[0], sure[1])
    with pytest.raises(KeyError, match="there is no gauge_bar here, but: .*expected_gauge_bar"):
        sure["gauge_bar"]
    with pytest.raises(IndexError):
        sure[len(sure)]


def test_forms():
    ranged = keg().uncertainty(temperature_c={"range": 0.5})
    assert budget_of(ranged[0])["temperature_c"].kind == "range"
    for same in (("range", 0.5), ["range", 0.5], {"range": np.float32(0.5)}, ("range", np.float64(0.5))):
        assert keg().uncertainty(temperature_c=same) == ranged
    assert keg().uncertainty({"temperature_c": ("range", 0.5)}) == ranged
    # A keyword replaces what the mapping says, and None says nothing.
    assert keg().uncertainty({"temperature_c": 3}, temperature_c=("range", 0.5), volumes=None) == ranged
    assert keg().uncertainty(temperature_c=None) == keg().uncertainty({}) == keg().uncertainty(None)
    assert keg().uncertainty(temperature_c=np.int64(1)) == keg().uncertainty(temperature_c=1)
    usual = budget_of(keg().uncertainty(temperature_c="thermometer")[0])["temperature_c"]
    good = budget_of(keg().uncertainty(temperature_c="good_thermometer")[0])["temperature_c"]
    assert usual.kind == good.kind == "normal" and usual.half_width > good.half_width > 0
    # A doubt may be in another unit than the input.
    other = budget_of(keg().uncertainty(temperature_f=9)[0])["temperature_c"]
    assert math.isclose(other.half_width, 5)


@pytest.mark.parametrize(
    ("doubts", "code", "parameter"),
    [
        ({"temperature_c": "crystal_ball"}, "UNKNOWN_CHOICE", "temperature_c"),
        ({"temperature_c": "hydrometer"}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": -1}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": ("range", -1)}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": ("normal", 1)}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": ("range",)}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": ()}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": {}}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": {"range": "thermometer"}}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": {"range": 1, "normal": 1}}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": [1, 2]}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": np.array([1.0])}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": object()}, "WRONG_TYPE", "temperature_c"),
        ({"temperature_c": True}, "WRONG_TYPE", "temperature_c"),
        ({"beverage": 1}, "WRONG_TYPE", "beverage"),
        ({"temperature_c": math.nan}, "NOT_A_NUMBER", "temperature_c"),
        ({"temperature_c": ("range", math.inf)}, "NOT_A_NUMBER", "temperature_c"),
        ({"abv_percent": 0.5}, "MISSING", "abv_percent"),
        ({"packaged_l": 0.5}, "NOT_TAKEN", "packaged_l"),
        ({"tempertaure_c": 1}, "UNKNOWN_NAME", "tempertaure_c"),
        ({"tempertaure_c": None}, "UNKNOWN_NAME", "tempertaure_c"),
        ({"temperature_c": 1, "temperature_f": 1}, "GIVEN_TWICE", "temperature_f"),
    ],
)
def test_refused(doubts, code, parameter):
    with pytest.raises(carb.CarbError) as caught:
        keg().uncertainty(doubts)
    assert (caught.value.code, caught.value.parameter) == (carb.CODES[code], parameter)
    assert str(caught.value) and caught.value.index is None
    if code != "NOT_TAKEN":
        with pytest.raises(carb.CarbError) as caught:
            carb.plan({**DAY, "serving_c": 4, "uncertainty": {"serving_c": 1, **doubts}})
        assert caught.value.parameter


def test_arrays():
    many = carb.keg_pressure(**{**STATE, "volumes": [2.4, 2.5]})
    for asking in (many.uncertainty, lambda: many.working("markdown"), many.working, many.to_json):
        with pytest.raises(TypeError, match=re.escape("take it from one, such as result[0]")):
            asking()
    assert many[1].uncertainty(volumes=0.1) == keg().uncertainty(volumes=0.1)
    assert many[1].working("markdown") == keg().working("markdown")


def test_nobody_changes_it():
    sure = keg().uncertainty(volumes=0.1)
    before = sure.to_json()
    share = sure[0].budget[0]
    things = ((sure, "outputs"), (sure, "other"), (sure[0], "value"), (sure[0].low, "gauge_psi"), (share, "share"))
    for thing, name in things:
        with pytest.raises(AttributeError):
            setattr(thing, name, 1)
    with pytest.raises(TypeError):
        sure[0]["noun"] = "worst"
    sure.to_dict()["uncertainty"].clear()
    assert sure.to_json() == before and len(sure) > 0


def test_print():
    lines = repr(keg().uncertainty(volumes=0.1)["gauge_kpa"]).splitlines()
    assert re.fullmatch(r"gauge_kpa = \d\d\.\d \(\d\d\.\d to \d\d\.\d\)", lines[0])
    assert re.fullmatch(r"    solubility_multiplier \d\d%, volumes \d\d%", lines[-1])
    # What is sure is printed as elsewhere, and what makes nothing unsure is not named.
    assert repr(carb.gravity(sg=1.05).uncertainty()["sg"]) == "sg = 1.05 (1.05 to 1.05)"
    dose = carb.priming_sugar(**DAY).uncertainty()["mass_g"]
    assert " 0%" not in repr(dose)
    assert ">67%</td>" in dose._repr_html_()
    assert carb._uncertainty.rounded(12345.0, 6789.0) == "12300"
    assert carb._uncertainty.rounded(1.5, 1e-300) == "1.5"


def test_html():
    answer = keg().uncertainty(volumes=0.1).to_dict()
    entry = answer["uncertainty"][0]
    entry["noun"] = entry["budget"][0]["name"] = entry["budget"][0]["kind"] = "<b>&"
    page = carb.Uncertainty(json.dumps(answer))._repr_html_()
    assert "<b>" not in page and page.count("&lt;b&gt;&amp;") == 2 + len(entry["value"])
    assert re.search(r">volumes<.*>normal</td><td[^>]*>\d+%</td>", page)


def test_plan():
    doubts = {"volumes": 0.1, "packaged_l": "marked_bucket", "warmest_c": ("range", 1)}
    day = carb.plan({**DAY, "uncertainty": doubts})
    said = {**doubts, "warmest_c": {"range": 1}}
    assert day.to_dict() == asked("plan", DAY, said)
    assert day == carb.plan({**DAY, "carb": 1, "uncertainty": {**said, "serving_c": None}})
    assert [*day.uncertainty] == PLACES
    for part in day.uncertainty.values():
        assert math.isclose(sum(share.share for share in part.budget), 1)
    priming = day.uncertainty.priming
    assert math.isclose(priming.value.mass_g, day.bottling.priming.mass_g)
    assert priming.low.mass_g < priming.value.mass_g < priming.high.mass_g
    assert budget_of(priming)["warmest_c"].kind == "range"
    assert day.bottling == carb.plan(DAY).bottling
    for nothing in (DAY, {**DAY, "uncertainty": None}):
        assert "uncertainty" not in carb.plan(nothing)
    assert [*carb.plan({**DAY, "uncertainty": {}}).uncertainty] == PLACES
    here = carb.at(altitude_m=240)
    rest = {name: value for name, value in DAY.items() if name != "altitude_m"}
    assert here.plan({**rest, "uncertainty": doubts}).uncertainty == day.uncertainty
    for wrong in (3, [], "thermometer"):
        with pytest.raises(carb.CarbError) as caught:
            carb.plan({**DAY, "uncertainty": wrong})
        assert caught.value.parameter == "request"


@pytest.mark.parametrize("function", FUNCTIONS)
def test_markdown(function):
    result = call(function, **example(function))
    text = result.working("markdown")
    assert result.working(form="text") == result.working()
    assert text.count("$$") == 2 * len(result.steps)
    for step in result.steps:
        assert f"`{step.equation}`" in text
        # The values as the working in text has them, one line to a symbol.
        for value in re.findall(r" = (\S+?)(?= |,|$)", step.text.splitlines()[-1]):
            assert re.search(rf"^- \$.+\$ = {re.escape(value)}( .+)?: .+$", text, re.MULTILINE)
    # A datum has its source beside the answer; an equation has it in the working.
    defined = all(equation.standing == "definition" for equation in result.equations)
    assert not result.sources or defined or any(source.citation in text for source in result.sources)


def test_unknown_form():
    with pytest.raises(carb.CarbError, match='"text" or "markdown"') as caught:
        keg().working("html")
    assert (caught.value.code, caught.value.parameter) == (carb.CODES["UNKNOWN_CHOICE"], "form")


def test_what_no_factor_carries_is_told_as_not_counted():
    cells = carb.reyeasting(packaged_l=19.2).uncertainty()
    assert [equation.id for equation in cells.not_counted] == ["dry_yeast"]
    assert repr(cells).endswith("not counted, what the equations themselves leave open: dry_yeast 50%")
    assert "dry_yeast 50%" in cells._repr_html_()
    keg = carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=0).uncertainty()
    assert keg.not_counted == () and "not counted" not in repr(keg)
