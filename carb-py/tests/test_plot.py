"""Pictures: what is drawn is what the library says, in either system of units, with its dangers written on it."""

import doctest
import importlib
import io
import itertools
import re
import subprocess
import sys
import tokenize
from pathlib import Path

import carb
import carb.plot
import matplotlib
import numpy as np
import pytest
from shared import ROOT

matplotlib.use("Agg")
from matplotlib import pyplot  # noqa: E402
from matplotlib.colors import to_rgb  # noqa: E402
from matplotlib.figure import Figure  # noqa: E402

style = importlib.import_module("carb.plot._style")

HERE = {"altitude_m": 240, "abv_percent": 5.1, "extract_g_per_l": 38}
BATCH = {"volumes": 2.4, "warmest_c": 20.5, "packaged_l": 19.2, **HERE}
UNDER = {"start_volumes": 0.85, "gauge_psi": 11.2, "temperature_f": 38, **HERE}
BURST = {"start_volumes": 0.85, "volumes": 2.5, "burst_gauge_bar": 2, "temperature_c": 4, **HERE}
KEG = {"packaged_l": 19, "volumes": 2.5, "start_volumes": 0.84, "temperature_c": 4, "gauge_bar": 0.8, "altitude_m": 240}
GAS = {**KEG, "purge": "push", "gas_loss_percent": 10, "cylinder_size": "cylinder_2_kg"}


def sure():
    return carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=0).uncertainty(
        temperature_f="thermometer", volumes=("range", 0.1)
    )


PICTURES = {
    "bottle_pressure": lambda **how: carb.plot.bottle_pressure(volumes=2.4, **HERE, **how),
    "burst_schedule": lambda **how: carb.plot.burst_schedule(**BURST, **how),
    "carbonation_chart": lambda **how: carb.plot.carbonation_chart(**HERE, **how),
    "carbonation_progress": lambda **how: carb.plot.carbonation_progress(**UNDER, **how),
    "gas_budget": lambda **how: carb.plot.gas_budget(**GAS, **how),
    "priming_sugars": lambda **how: carb.plot.priming_sugars(sugars=["sucrose", "honey"], **BATCH, **how),
    "uncertainty_budget": lambda **how: carb.plot.uncertainty_budget(sure(), **how),
}


def axes():
    """Axes of a figure that pyplot does not know."""
    return Figure(figsize=(7, 4.4), layout="constrained").add_subplot()


def drawn(ax, gid):
    """The numbers of a line or a bar of a picture."""
    found = [line for line in ax.get_lines() if line.get_gid() == gid]
    if found:
        (line,) = found
        return np.asarray(line.get_xdata(), float), np.asarray(line.get_ydata(), float)
    (bar,) = (bar for bar in ax.patches if bar.get_gid() == gid)
    return bar.get_x(), bar.get_width()


def lines(ax):
    return {line.get_gid() for line in ax.get_lines()}


def words(ax):
    """All that is written on and around a picture, on one line."""
    return " ".join(" ".join([*(text.get_text() for text in ax.texts), ax.get_title(loc="left")]).split())


@pytest.fixture(autouse=True)
def no_figures_are_left():
    before = dict(matplotlib.rcParams)
    yield
    pyplot.close("all")
    assert dict(matplotlib.rcParams) == before


@pytest.mark.parametrize("name", carb.plot.__all__)
@pytest.mark.parametrize("system", ["metric", "us"])
def test_every_picture_names_its_axes_and_units(name, system):
    ax = axes()
    assert PICTURES[name](axes=system, ax=ax) is ax
    assert pyplot.get_fignums() == []
    assert ax.get_title(loc="left") and "Drawn with carb" in words(ax)
    for label in filter(None, (ax.get_xlabel(), ax.get_ylabel())):
        assert label.endswith(")") and "(" in label
    assert ax.get_xlabel()
    other = {"metric": r"°F|\bpsi\b|\boz\b", "us": r"°C|\bbar\b|\bkPa\b"}[system]
    # Cautions of the library tell both; there are none here.
    told = " ".join([ax.get_xlabel(), ax.get_ylabel(), words(ax)])
    assert not re.search(other, told), told


@pytest.mark.parametrize("name", carb.plot.__all__)
def test_without_axes_there_is_one_new_figure(name):
    ax = PICTURES[name]()
    assert pyplot.get_fignums() == [ax.get_figure().number]


@pytest.mark.parametrize("name", carb.plot.__all__)
def test_an_unknown_system_is_refused_before_anything_is_drawn(name):
    with pytest.raises(carb.CarbError, match='axes = "imperial" is not known: choose one of "metric", "us"') as caught:
        PICTURES[name](axes="imperial")
    assert (caught.value.code, caught.value.parameter) == (carb.CODES["UNKNOWN_CHOICE"], "axes")
    assert pyplot.get_fignums() == []


def test_the_chart_is_the_keg_pressure():
    for system, gauge, warm in (("metric", "gauge_bar", "temperature_c"), ("us", "gauge_psi", "temperature_f")):
        ax = carb.plot.carbonation_chart(volumes=[2.2, 2.6], axes=system, ax=axes(), **HERE)
        for volumes in (2.2, 2.6):
            x, y = drawn(ax, f"volumes {volumes}")
            for at in (0, 77, -1):
                keg = carb.keg_pressure(volumes=volumes, **{warm: float(x[at])}, **HERE)
                assert y[at] == getattr(keg, gauge)


def test_the_chart_is_whole_only_where_its_source_holds():
    ax = carb.plot.carbonation_chart(volumes=2.4, temperature_c=(-2, 20), ax=axes(), **HERE)
    x, y = drawn(ax, "volumes 2.4 in range")
    held = x[np.isfinite(y)]
    beyond = x[~np.isfinite(y)]
    for warm in held[[0, -1]]:
        codes = {c.code for c in carb.keg_pressure(volumes=2.4, temperature_c=float(warm), **HERE).cautions}
        assert "chart_temperature" not in codes
    for warm in beyond[[0, -1]]:
        codes = {c.code for c in carb.keg_pressure(volumes=2.4, temperature_c=float(warm), **HERE).cautions}
        assert "chart_temperature" in codes
    assert "beyond the range of the source" in words(ax)
    cold = carb.plot.carbonation_chart(volumes=2.4, temperature_c=(1, 10), ax=axes(), **HERE)
    assert "beyond the range of the source" not in words(cold)


@pytest.mark.parametrize(
    "state",
    [
        lambda: carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=240),
        lambda: carb.dissolved_co2(gauge_psi=12, temperature_f=38, altitude_m=240),
        lambda: carb.keg_temperature(volumes=2.5, gauge_psi=12, altitude_m=240),
    ],
)
def test_a_state_of_ones_own_is_marked_where_its_line_would_pass(state):
    own = state()
    here = {**own.request}
    volumes = here.get("volumes", getattr(own, "volumes", None))
    for system, gauge, warm in (("metric", "gauge_bar", "temperature_c"), ("us", "gauge_psi", "temperature_f")):
        ((x,), (y,)) = drawn(carb.plot.carbonation_chart(own, axes=system, ax=axes()), "point")
        keg = carb.keg_pressure(volumes=volumes, altitude_m=240, **{warm: float(x)})
        assert y == pytest.approx(getattr(keg, gauge), rel=1e-9)
    if "temperature_f" in here:
        assert x == pytest.approx(38, rel=1e-12)


def test_a_chart_in_grams_has_lines_in_grams():
    own = carb.keg_pressure(co2_g_per_l=5, temperature_c=4, altitude_m=0)
    ax = carb.plot.carbonation_chart(own, ax=axes())
    assert {"co2_g_per_l 5", "point"} <= lines(ax) and "5 g/L" in words(ax)


def test_sugars_are_dosed_as_the_library_doses():
    for system, mass in (("metric", "mass_g"), ("us", "mass_oz")):
        ax = carb.plot.priming_sugars(sugars=["sucrose", "honey"], sugar="honey", axes=system, ax=axes(), **BATCH)
        for sugar in ("sucrose", "honey"):
            ((dose,), _) = drawn(ax, f"dose {sugar}")
            assert dose == getattr(carb.priming_sugar(sugar=sugar, **BATCH), mass)
        (low, high), _ = drawn(ax, "range honey")
        made = carb.fermentables()["honey"]
        # What the richest and the poorest honey make of CO2 is the same as what is drawn of the usual one.
        assert low * made.high_yield_g_per_g == pytest.approx(dose * made.yield_g_per_g, rel=1e-9)
        assert high * made.low_yield_g_per_g == pytest.approx(dose * made.yield_g_per_g, rel=1e-9)
        assert "yours" in words(ax)


def test_the_sugar_of_a_result_is_marked_even_if_unusual():
    ax = carb.plot.priming_sugars(carb.priming_sugar(sugar="raisins", **BATCH), ax=axes())
    assert "dose raisins" in lines(ax) and words(ax).count("yours") == 1
    assert "no source" in words(ax)


def test_a_bottle_is_drawn_as_its_table_tells():
    request = {"volumes": 3.4, "bottle_class": "light_one_way", "headspace_percent": 4, **HERE}
    table = carb.bottle_pressures(**request)
    for system, gauge, warm in (("metric", "gauge_bar", "c"), ("us", "gauge_psi", "f")):
        ax = carb.plot.bottle_pressure(axes=system, ax=axes(), **request)
        for role in ("expected", "worst"):
            x, y = drawn(ax, role)
            assert tuple(x) == table.column(warm) and tuple(y) == table.column(f"{role}_{gauge}")
        x, y = drawn(ax, "limit")
        judged = [row for row in table if row.caution != "heated_glass"]
        assert list(x) == [row[warm] for row in judged] and set(y) == {row[f"limit_{gauge}"] for row in judged}
        x, y = drawn(ax, "over the limit")
        assert list(x) == [row[warm] for row in judged if row[f"worst_{gauge}"] > row[f"limit_{gauge}"]]
        hot = "40 °C" if system == "metric" else "104 °F"
        assert f"no margin is known above {hot}" in words(ax)


def test_a_bottle_that_may_burst_says_so_in_words():
    ax = carb.plot.bottle_pressure(volumes=3.4, bottle_class="light_one_way", ax=axes(), **HERE)
    assert "Danger: the worst case" in words(ax) and "glass can burst" in words(ax) and "over the limit" in words(ax)
    growler = carb.plot.bottle_pressure(volumes=2.4, bottle_class="growler", ax=axes(), **HERE)
    assert "Danger" in words(growler) and "they burst" in words(growler)
    full = carb.plot.bottle_pressure(volumes=4.2, bottle_class="champagne", headspace_percent=1, ax=axes(), **HERE)
    assert "full of liquid" in words(full)
    # An alarm on every bottle is no alarm.
    calm = carb.plot.bottle_pressure(volumes=2.4, bottle_class="champagne", headspace_percent=4, ax=axes(), **HERE)
    assert "Danger" not in words(calm) and "over the limit" not in lines(calm)


def test_a_rating_is_the_limit():
    ax = carb.plot.bottle_pressure(volumes=2.4, rating_gauge_bar=6, ax=axes(), **HERE)
    assert drawn(ax, "limit")[1] == pytest.approx(6, rel=1e-12) and "rating of the bottle: 6 bar" in words(ax)


def test_progress_is_what_the_library_expects():
    ax = carb.plot.carbonation_progress(volumes=2.4, time_d=14, ax=axes(), **UNDER)
    for role in ("expected", "least", "most"):
        x, y = drawn(ax, role)
        for at in (0, 40, -1):
            answer = carb.carbonation_progress(time_d=float(x[at]), **UNDER)
            assert y[at] == getattr(answer, role).volumes
    assert drawn(ax, "end")[1][0] == answer.end.volumes
    assert drawn(ax, "target")[1] == pytest.approx(2.4, rel=1e-9)
    time = carb.carbonation_time(volumes=2.4, **UNDER)
    assert list(drawn(ax, "reached")[0]) == [time.soonest.time_d, time.latest.time_d]


def test_progress_knows_a_result_and_draws_days_or_hours():
    slow = carb.carbonation_time(volumes=2.4, **UNDER)
    ax = carb.plot.carbonation_progress(slow, axes="us", ax=axes())
    assert {"target", "reached"} <= lines(ax) and "(days)" in ax.get_xlabel() and "11.2 psi" in words(ax)
    assert drawn(ax, "expected")[0][-1] == carb.carbonation_curve(**UNDER)[-1].d
    ax = carb.plot.carbonation_progress(slow, method="stone", volumes=2.2, ax=axes())
    assert "(hours)" in ax.get_xlabel() and "target 2.2 volumes" in words(ax)


def test_a_burst_is_the_librarys_schedule():
    burst = carb.burst_time(**BURST)
    ax = carb.plot.burst_schedule(burst, ax=axes())
    x, y = drawn(ax, "expected")
    assert drawn(ax, "stop")[0][0] == burst.stop.time_d
    at = int(np.argmin(abs(x - burst.stop.time_d)))
    assert x[at] == pytest.approx(burst.stop.time_d, rel=1e-9)
    assert y[at] == pytest.approx(burst.expected.volumes, rel=1e-9)
    assert x[-1] == pytest.approx(burst.stop.time_d + burst.latest_rest.time_d, rel=1e-9)
    assert drawn(ax, "target")[1] == pytest.approx(2.5, rel=1e-9)
    band = next(c for c in ax.collections if c.get_gid() == "band").get_paths()[0].vertices
    # The fast end meets the target and does not pass it.
    assert band[:, 1].max() == pytest.approx(2.5, rel=1e-6)


def test_a_burst_at_high_pressure_says_what_stands_it():
    ax = carb.plot.burst_schedule(carb.burst_time(**{**BURST, "burst_gauge_bar": 3.5}), axes="us", ax=axes())
    assert "Caution" in words(ax) and "more than every vessel stands" in words(ax) and "50.8 psi" in words(ax)


def test_a_gas_budget_adds_up():
    for system, gas in (("metric", "gas_g"), ("us", "gas_oz")):
        ax = carb.plot.gas_budget(axes=system, ax=axes(), **GAS)
        budget = carb.gas_budget(**GAS)
        end = 0
        for use in ("purge", "dissolve", "headspace", "serve", "loss"):
            x, width = drawn(ax, use)
            assert (x, width) == pytest.approx((end, getattr(getattr(budget, use), gas)), rel=1e-12, abs=1e-12)
            end = x + width
        assert end == pytest.approx(getattr(budget.total, gas), rel=1e-12)
        assert drawn(ax, "total") == (0, getattr(budget.total, gas))
        assert drawn(ax, "least")[0][0] == getattr(budget.least, gas)
        assert f"2 kg cylinder does {budget.kegs_count:.3g} such kegs" in words(ax)


def test_a_keg_that_is_purged_above_its_rating_is_a_danger():
    ax = carb.plot.gas_budget(**{**GAS, "purge_gauge_bar": 3, "cycles_count": 3}, keg_rating_gauge_bar=2, ax=axes())
    assert "Danger: 3.00 bar" in words(ax) and "it can burst" in words(ax)


def test_a_budget_of_doubt_is_the_librarys():
    estimate = sure()["gauge_psi"]
    ax = carb.plot.uncertainty_budget(sure(), "gauge_psi", ax=axes())
    assert {entry.name: drawn(ax, entry.name)[1] for entry in estimate.budget} == {
        entry.name: entry.share for entry in estimate.budget
    }
    for told in (estimate.value, estimate.low, estimate.high):
        assert f"{told.gauge_psi:.3g} psi" in words(ax)
    (low, high), (middle,) = drawn(ax, "interval")[0], drawn(ax, "value")[0]
    share = (estimate.value.gauge_psi - estimate.low.gauge_psi) / (estimate.high.gauge_psi - estimate.low.gauge_psi)
    assert (middle - low) / (high - low) == pytest.approx(share, rel=1e-9)
    assert "bar" in words(carb.plot.uncertainty_budget(estimate, ax=axes()))
    assert "psi" in words(carb.plot.uncertainty_budget(estimate, axes="us", ax=axes()))


def test_doubts_of_a_dangerous_answer_tell_the_danger():
    hot = carb.package_pressure(volumes=4, temperature_c=40, bottle_class="light_one_way", **HERE)
    ax = carb.plot.uncertainty_budget(hot.uncertainty(volumes=0.1), "expected_gauge_bar", ax=axes())
    assert "Danger" in words(ax) and "glass can burst" in words(ax)


def test_a_context_is_taken_and_what_is_given_goes_before_it():
    here = carb.at(**HERE, volumes=2.4)
    x, y = drawn(carb.plot.bottle_pressure(here, co2_g_per_l=6, ax=axes()), "worst")
    assert tuple(y) == carb.bottle_pressures(co2_g_per_l=6, **HERE).column("worst_gauge_bar")


@pytest.mark.parametrize(
    ("draw", "error", "text"),
    [
        (lambda: carb.plot.carbonation_chart(volumes=2.4), carb.CarbError, "altitude_m"),
        (lambda: carb.plot.carbonation_chart(sugar="honey", **HERE), carb.CarbError, "sugar"),
        (lambda: carb.plot.carbonation_chart(temperature_c=4, **HERE), TypeError, "a pair, from and to"),
        (lambda: carb.plot.carbonation_chart(temperature_c=(9, 4), **HERE), ValueError, "lower to the higher"),
        (lambda: carb.plot.bottle_pressure(volume=2.4, **HERE), carb.CarbError, "volumes"),
        (lambda: carb.plot.priming_sugars(sugars=["sand"], **BATCH), carb.CarbError, "sand"),
        (lambda: carb.plot.priming_sugars(sugars=[], **BATCH), ValueError, "sugars is empty"),
        (lambda: carb.plot.gas_budget(3), TypeError, "give a context"),
        (lambda: carb.plot.gas_budget(carb.gas_budget(**{**KEG, "volumes": [2, 2.5]})), TypeError, "take one element"),
        (lambda: carb.plot.uncertainty_budget(sure(), "gauge_furlong"), KeyError, "there is no gauge_furlong"),
        (lambda: carb.plot.uncertainty_budget(2.5), TypeError, "result.uncertainty"),
    ],
)
def test_errors_teach_and_leave_no_figure(draw, error, text):
    with pytest.raises(error, match=text):
        draw()
    assert pyplot.get_fignums() == []


def test_names_at_the_edge_do_not_touch():
    ax = PICTURES["burst_schedule"](ax=axes())
    figure = ax.get_figure()
    figure.canvas.draw()
    edge = ("target", "expected", "0.842 bar all along")
    boxes = [text.get_window_extent() for text in ax.texts if text.get_text().startswith(edge)]
    assert len(boxes) == 3
    assert not any(one.overlaps(other) for one, other in itertools.combinations(boxes, 2))


# How colours look without one kind of cones: Machado, Oliveira and Fernandes 2009, IEEE Trans. Vis. Comput. Graph.
# 15:1291, severity 1, over linear RGB.
CONES = {
    "usual": np.eye(3),
    "protanopia": [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
    "deuteranopia": [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
}


def lab(color, cones):
    """CIE L*a*b* (D65) of a colour as it is seen."""
    rgb = np.asarray(to_rgb(color))
    linear = np.where(rgb <= 0.04045, rgb / 12.92, ((rgb + 0.055) / 1.055) ** 2.4)
    seen = np.clip(np.asarray(cones) @ linear, 0, 1)
    to_xyz = [[0.4124564, 0.3575761, 0.1804375], [0.2126729, 0.7151522, 0.0721750], [0.0193339, 0.1191920, 0.9503041]]
    x, y, z = (np.asarray(to_xyz) @ seen) / [0.95047, 1, 1.08883]
    fx, fy, fz = (t ** (1 / 3) if t > (6 / 29) ** 3 else t / (3 * (6 / 29) ** 2) + 4 / 29 for t in (x, y, z))
    return np.array([116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)])


@pytest.mark.parametrize("cones", CONES)
def test_lines_are_told_apart_without_red_or_green(cones):
    assert np.asarray(CONES[cones]).sum(axis=1) == pytest.approx(1, abs=1e-5)
    # Lines that stand on one picture. A difference of 2.3 is just seen; 20 is seen across a room.
    bottle, keg = (style.BLUE, style.VERMILION, style.INK), (style.BLUE, style.GREEN, style.QUIET)
    together = [(*bottle, style.PAPER), (*keg, style.PAPER)]
    for colors in together:
        for one, other in itertools.combinations(colors, 2):
            assert np.linalg.norm(lab(one, CONES[cones]) - lab(other, CONES[cones])) > 20, (one, other)


def test_lines_of_one_picture_differ_in_style_too():
    styles = [str(how["linestyle"]) for how in (style.EXPECTED, style.WORST, style.LIMIT, style.TARGET, style.END)]
    assert len(set(styles)) == len(styles)


def test_without_matplotlib_it_says_what_to_install():
    code = "import sys; sys.modules['matplotlib'] = None\ntry: import carb.plot\nexcept ImportError as e: print(e)"
    told = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True).stdout
    assert "pip install carb[plot]" in told


def test_carb_alone_imports_no_matplotlib():
    code = "import sys, carb; print('matplotlib' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], capture_output=True, text=True).stdout.strip() == "False"


def test_examples():
    ran = 0
    for file in sorted(Path(carb.plot.__file__).parent.glob("*.py")):
        name = "carb.plot" if file.stem == "__init__" else f"carb.plot.{file.stem}"
        result = doctest.testmod(importlib.import_module(name))
        assert result.failed == 0
        ran += result.attempted
    assert ran > 15


def test_the_gallery_shows_every_picture():
    docs = ROOT / "docs"
    page = (docs / "pictures.md").read_text()
    shown = re.findall(r"\((pictures/\w+\.png)\)", page)
    assert all(f"carb.plot.{name}(" in page for name in carb.plot.__all__)
    assert sorted(shown) == sorted(f"pictures/{file.name}" for file in (docs / "pictures").glob("*.png"))
    assert all((docs / file).stat().st_size < 80_000 for file in shown)


def test_pictures_hold_no_constants():
    """What a brewer would call a number stands in the core: here are layouts, in tenths at most."""
    for file in Path(carb.plot.__file__).parent.glob("*.py"):
        for token in tokenize.generate_tokens(io.StringIO(file.read_text()).readline):
            if token.type == tokenize.NUMBER:
                assert len(token.string.partition(".")[2]) < 2, f"{file}:{token.start}: {token.string}"


def test_a_bottle_that_fills_with_liquid_is_a_danger_from_there_on():
    ax = carb.plot.bottle_pressure(volumes=2.4, headspace_percent=0.1, altitude_m=240)
    full = next(line for line in ax.get_lines() if line.get_gid() == "full of liquid")
    first = next(
        row.c for row in carb.bottle_pressures(volumes=2.4, headspace_percent=0.1, altitude_m=240) if row.refused
    )
    assert set(full.get_xdata()) == {first} and first < 40
    said = " ".join(text.get_text() for text in (*ax.texts, *ax.figure.texts))
    assert "Danger: the bottle is full of liquid" in said.replace("\n", " ")
    pyplot.close(ax.figure)


def test_one_sugar_may_be_named_as_a_text_and_no_lines_are_refused():
    ax = carb.plot.priming_sugars(sugars="honey", volumes=2.4, packaged_l=19, warmest_c=20, altitude_m=0)
    pyplot.close(ax.figure)
    with pytest.raises(ValueError, match="no carbonation"):
        carb.plot.carbonation_chart(volumes=[], altitude_m=0)
