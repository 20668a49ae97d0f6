"""What a notebook shows of answers."""

import json
import re
from html.parser import HTMLParser
from types import SimpleNamespace

import carb
import numpy as np
import pytest
from carb import _html
from shared import FUNCTIONS, TABLES, call, example

BAD = "<script>alert('x')</script>&\""
KEG = {"volumes": 2.5, "temperature_f": 38, "altitude_m": 0}
GLASS = {"temperature_c": 30, "headspace_percent": 4, "altitude_m": 240, "bottle_class": "light_one_way"}
CLAIM = {"quantity": "keg_pressure", "value": "400", "unit": "psi", **KEG}


class Page(HTMLParser):
    """A piece of HTML read by a strict reader: every element is closed, and in its order."""

    VOID = frozenset(["br", "hr"])

    def __init__(self, piece):
        super().__init__()
        self.open, self.tags, self.styles, self.words = [], [], [], []
        self.feed(piece)
        self.close()
        assert not self.open, self.open
        self.text = re.sub(r"\s+", " ", " ".join(self.words))

    def handle_starttag(self, tag, attributes):
        self.tags.append(tag)
        assert set(dict(attributes)) <= {"style", "title", "colspan"}, attributes
        self.styles.append(dict(attributes).get("style", ""))
        if tag not in self.VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag

    def handle_data(self, data):
        self.words.append(data)

    def goes_on_any_theme(self):
        """Whether no text has a colour of its own beyond the marks, and nothing brings a background of one theme."""
        style = ";".join(self.styles)
        assert not {"script", "style", "link", "img"} & set(self.tags)
        marks = {colour for _, _, colour in _html.LEVELS.values()}
        colours = set(re.findall(r"(?:^|;)color:([^;]+)", style))
        grounds = set(re.findall(r"background:([^;]+)", style))
        return colours <= {"inherit", *marks} and grounds <= {"transparent", "currentColor", _html.FAINT}


def contrast(one, other):
    """How well two colours are told apart, as the guidelines for accessible pages work it out."""

    def light(colour):
        parts = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
        linear = (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts)
        return sum(share * part for share, part in zip((0.2126, 0.7152, 0.0722), linear, strict=True))

    low, high = sorted((light(one), light(other)))
    return (high + 0.05) / (low + 0.05)


@pytest.mark.parametrize("function", FUNCTIONS)
def test_a_result_shows_every_value_with_its_unit_and_its_name(function):
    result = call(function, **example(function))
    page = Page(_html.result(result))
    assert page.goes_on_any_theme()
    for out in FUNCTIONS[function]["outputs"]:
        full = "_".join(filter(None, (out["noun"], out["name"])))
        if out["shown"]:
            assert f"{carb._result.brief(result._value(full))} {out['unit']}".rstrip() in page.text
            assert out["name"] in page.text and out["noun"] in page.text and out["meaning"] in page.text
    assert all(caution.text in page.text for caution in result.cautions)
    assert all(source.citation in page.text for source in result.sources)


def test_a_quantity_is_one_row_in_all_its_units():
    page = _html.result(carb.keg_pressure(**KEG))
    row = next(row for row in page.split("<tr")[1:] if "gauge_psi" in row)
    assert "gauge_bar" in row and "gauge_kpa" in row and "abs_psi" not in row
    _, *rows = _html.result(carb.dissolved_co2(gauge_psi=12, temperature_f=38, altitude_m=0)).split("<tr")
    assert len(rows) == 1 and "co2_g_per_l" in rows[0] and "volumes" in rows[0]


def test_expected_and_worst_stand_apart():
    text = Page(_html.result(carb.package_pressure(volumes=2.4, **GLASS))).text
    assert text.index("expected") < text.index("worst") and text.count("gauge_bar") == 2
    only = Page(_html.part("worst", carb.package_pressure(volumes=2.4, **GLASS))).text
    assert only.count("gauge_bar") == 1 and "expected" not in only


def test_a_danger_comes_first_and_is_a_word():
    text = Page(_html.result(carb.package_pressure(volumes=4.2, **GLASS))).text
    assert "▲ DANGER" in text and text.index("DANGER") < text.index("NOTE")
    backwards = [SimpleNamespace(level=level, text=level) for level in ("note", "caution", "danger")]
    assert re.findall("[A-Z]+", Page(_html.cautions(backwards)).text) == ["DANGER", "CAUTION", "NOTE"]
    assert {mark for mark, _, _ in _html.LEVELS.values()} == {"▲", "◆", "●"}


def test_every_level_is_known():
    assert {level for _, level, _ in carb._carb.caution_codes()} <= set(_html.LEVELS)


@pytest.mark.parametrize("ground", ["#ffffff", "#111111", "#1e1e1e"])
def test_marks_are_seen_on_light_and_on_dark(ground):
    # The guidelines ask for 3 to 1 of what is no text.
    assert all(contrast(colour, ground) >= 3 for _, _, colour in _html.LEVELS.values())


def test_assumptions_are_told():
    text = Page(_html.result(carb.keg_pressure(**KEG))).text
    assert "basis handbook" in text and "beverage beer" in text and "ambient_kpa 101.325" in text
    assert "basis" not in Page(_html.result(carb.gravity(sg=1.05))).text


def test_an_array_shows_its_first_elements():
    many = carb.keg_pressure(volumes=np.linspace(2, 3, 40), temperature_c=4, altitude_m=0)
    page = Page(_html.result(many))
    assert page.goes_on_any_theme() and "40 elements" in page.text and "… and 32 more" in page.text
    assert page.tags.count("tr") == 1 + _html.HEAD
    for at in range(_html.HEAD):
        assert f"{many.gauge_psi[at]:.6g}" in page.text and f"{np.linspace(2, 3, 40)[at]:.6g}" in page.text
    # What is the same for all is told once.
    assert page.text.count("temperature_c") == 1 and page.text.count("temperature_c=4") == 1


def test_an_array_tells_what_has_no_answer_and_what_is_to_be_minded():
    some = carb.keg_pressure(volumes=[2.5, 99, np.nan], temperature_c=4, altitude_m=0, errors="nan")
    text = Page(_html.result(some)).text
    assert "no answer for 2 of 3 elements: 1 NOT_A_NUMBER, 1 OUT_OF_RANGE" in text and "nan" not in text
    with pytest.warns(carb.CarbWarning):
        warm = carb.keg_pressure(volumes=[2.5, 2.5], temperature_c=[4, 18], altitude_m=0)
    text = Page(_html.result(warm)).text
    assert all(caution.text in text for caution in warm.cautions) and "1 of 2 elements" in text
    assert "chart_temperature" in text


def test_arrays_of_every_shape():
    for sg in (np.empty(0), np.empty((0, 3)), [1.05], [[1.05, 1.06], [1.07, 1.08]]):
        result = carb.gravity(sg=sg)
        page = Page(_html.result(result))
        assert " × ".join(map(str, np.shape(sg))) in page.text
        assert page.tags.count("tr") == (1 + result.status.size if result.status.size else 0)
    assert "1, 0" in page.text


@pytest.mark.parametrize("name", TABLES)
def test_a_table_shows_its_rows(name):
    table = call(name, **example(name))
    page = Page(table._repr_html_())
    assert page.goes_on_any_theme() and page.tags.count("tr") == 1 + min(len(table), _html.MOST)
    assert all(column in page.text for column in table.columns)
    assert all(meaning.split()[0] in table._repr_html_() for meaning in table.meanings.values())
    assert ("more" in page.words[-1]) == (len(table) > _html.MOST)


@pytest.mark.parametrize("function", FUNCTIONS)
def test_an_uncertainty_shows_intervals_and_shares(function):
    sure = call(function, **example(function)).uncertainty()
    page = Page(sure._repr_html_())
    assert page.goes_on_any_theme()
    for entry in sure:
        for full, value, low, high in entry._rows():
            assert full in page.text and value in page.text and f"{low} to {high}" in page.text
        for share in entry.budget:
            assert share.name in page.text and f"{share.share:.0%}" in page.text
            assert f"width:{100 * share.share:.1f}%" in sure._repr_html_()


def test_bars_stay_within_their_axis():
    for reach, low, value, high in (((0, 3), 1, 2, 3), ((-2, 1), -2, 0, 1), ((0, 0), 0, 0, 0)):
        ends = re.findall(r"left:([\d.-]+)%", _html.interval_bar(low, value, high, reach))
        assert all(0 <= float(end) <= 100 for end in ends)


def test_a_job_shows_its_dangers_above_its_page():
    day = {"packaged_l": 19.2, "warmest_c": 20.5, "altitude_m": 240}
    done = carb.bottling(**day, volumes=4.5, bottles=[{"bottle_ml": 500, "count": 40}])
    page = Page(done._repr_html_())
    assert done.danger and page.goes_on_any_theme()
    assert page.text.index("▲ DANGER") < page.text.index("BOTTLING") and done.page() in "".join(page.words)
    assert "▲" not in Page(carb.bottling(**day, volumes=2.4)._repr_html_()).text
    plan = carb.plan({**day, "volumes": 4.5})
    assert plan.danger and "▲ DANGER" in Page(plan._repr_html_()).text


def test_a_danger_is_never_left_out():
    # Even where no caution of the job has said it.
    silent = SimpleNamespace(_members={}, danger=True, page=lambda: "")
    assert "▲ DANGER somebody may be hurt" in Page(_html.job(silent)).text


def test_claims_are_rows_with_a_verdict():
    claims = [CLAIM, {**CLAIM, "value": "11.2", "label": "ours", "program": "A"}, {**CLAIM, "altitude_m": None}]
    found = carb.crosscheck(claims)
    page = Page(found._repr_html_())
    assert page.goes_on_any_theme() and page.tags.count("tr") == 4
    unsafe, agrees, silent = found._repr_html_().split("<tr")[2:]
    assert "UNSAFE" in Page(f"<tr{unsafe.split('</tr>')[0]}</tr>").text and "400 psi" in unsafe
    assert "agrees" in agrees and "A · ours" in agrees and "UNSAFE" not in agrees
    assert "no answer" in silent and "altitude_m" in silent


def test_a_context_tells_what_it_binds():
    here = carb.at(altitude_m=240, beverage="cider", bottles=[{"bottle_ml": 500, "count": 4}])
    page = Page(_html.bound(here._context))
    assert page.goes_on_any_theme() and "altitude_m 240 height above sea level" in page.text
    assert "cider" in page.text and "1 row" in page.text
    assert "nothing" in Page(_html.bound({})).text


def test_units_are_those_of_the_core():
    for function in FUNCTIONS.values():
        for out in function["outputs"]:
            assert _html.symbol(out["name"]) == out["unit"], out["name"]
    assert _html.symbol("bottle_class") == _html.symbol("") == ""


def test_nothing_that_is_given_becomes_html():
    found = carb.crosscheck(**CLAIM, label=BAD, program=BAD)
    day = carb.bottling(packaged_l=19.2, volumes=2.4, warmest_c=20.5, altitude_m=240, title="<script>x</script>")
    answer = carb.keg_pressure(**KEG).uncertainty(volumes=0.1).to_dict()
    entry = answer["uncertainty"][0]
    entry["noun"] = entry["budget"][0]["name"] = entry["budget"][0]["kind"] = BAD
    pieces = [found._repr_html_(), day._repr_html_(), carb.Uncertainty(json.dumps(answer))._repr_html_()]
    pieces += [_html.bound({BAD: BAD}), _html.minded("note", BAD), _html.asked(BAD, {BAD: BAD})]
    pieces += [_html.head(BAD, BAD, BAD), _html.cell(BAD)]
    for piece in pieces:
        assert "<script" not in piece and Page(piece).text.count("<script>") > 0
