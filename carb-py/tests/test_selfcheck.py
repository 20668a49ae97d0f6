"""The installed package checks itself: against values from outside the project, and against its own bits."""

import math

import carb
import carb._carb as native
import pytest
from carb import _selfcheck
from carb.__main__ import main
from shared import ROOT

PUBLISHED = ROOT / "carb-core" / "checks" / "published"
CASES = ROOT / "tests" / "conformance" / "cases.tsv"


def test_published_values_are_met(capsys):
    for done in _selfcheck.published():
        assert done.faults == []
        assert done.values > 10 and len(done.sources) > 1, done.name
        # No function gives the solubility of oxygen, no table that mass in pounds.
        assert all(row.startswith("oxygen_") or row == "fire_threshold" for row in done.elsewhere), done.elsewhere
        with capsys.disabled():
            print(f"\n{done.name}: {done.values} published values, at most {done.worst:.0%} of what is allowed", end="")


def test_the_package_holds_the_files_of_the_source_tree():
    held = dict(native.checks())
    packed = held.pop("cases.tsv").splitlines()
    assert {name: (PUBLISHED / name).read_text(encoding="utf-8") for name in held} == held
    assert len(packed) == len(CASES.read_text(encoding="utf-8").splitlines())


def test_it_says_what_it_compared(capsys):
    assert main(["selfcheck"]) == 0
    said = capsys.readouterr()
    assert "functions.csv" in said.out and "same bits" in said.out and said.err == ""


@pytest.mark.parametrize(
    ("file", "right", "wrong", "told"),
    [
        ("kegging_line.csv", ",line_drop_bar,0.05,", ",line_drop_bar,0.07,", "german_7_mm"),
        ("cases.tsv", '{"carb":1,"gauge_psi":12,"te', '{"carb":1,"gauge_psi":13,"te', "the answer differs"),
    ],
)
def test_what_differs_is_named(monkeypatch, capsys, file, right, wrong, told):
    held = dict(native.checks())
    assert right in held[file]
    held[file] = held[file].replace(right, wrong, 1)
    monkeypatch.setattr(native, "checks", lambda: list(held.items()))
    assert main(["selfcheck"]) == 1
    said = capsys.readouterr()
    assert told in said.err and "do not rely" in said.out


def test_a_call_has_the_bits_of_the_answer(monkeypatch, capsys):
    right = native.json
    held = carb.dissolved_co2(gauge_psi=12, temperature_f=38, altitude_m=0).volumes

    def off(function, request):
        answer = right(function, request)
        return answer.replace(f'"volumes":{held!r}', f'"volumes":{math.nextafter(held, 0)!r}')

    monkeypatch.setattr(native, "json", off)
    assert main(["selfcheck"]) == 1
    said = capsys.readouterr().err
    assert f"the answer differs, volumes is {held!r} instead of {math.nextafter(held, 0)!r}" in said
    assert f"volumes of arrays is {held!r}" in said


def test_nothing_compared_is_no_success(monkeypatch, capsys):
    empty = [(name, text.splitlines()[0] if name == "cases.tsv" else text) for name, text in native.checks()]
    monkeypatch.setattr(native, "checks", lambda: empty)
    assert main(["selfcheck"]) == 1
    assert "do not rely" in capsys.readouterr().out
