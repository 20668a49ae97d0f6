"""Arrays: the same bits as numbers, broadcast, with missing values and cautions."""

import pickle
import warnings

import carb
import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from hypothesis.extra import numpy as hnp
from shared import FUNCTIONS, arrays, call, example, pick


def same(one, many):
    return np.float64(one).tobytes() == np.float64(many).tobytes()


@pytest.mark.filterwarnings("ignore::carb.CarbWarning")
@pytest.mark.parametrize("function", FUNCTIONS)
@given(data=st.data())
def test_same_bits_as_numbers(function, data):
    """Every array input is drawn from its whole range, in any of its units, in shapes that broadcast."""
    fixed = {name: value for name, value in example(function).items() if name not in arrays(function)}
    columns = {}
    shapes = data.draw(hnp.mutually_broadcastable_shapes(num_shapes=len(example(function)), max_side=3, max_dims=3))
    for entry in FUNCTIONS[function]["inputs"]:
        name = next((n for n in entry["names"] if n in example(function) and entry["array"]), None)
        if name is not None:
            first = entry["names"][0]
            numbers = st.floats(entry["low"], entry["high"]) | st.just(float("nan"))
            shape = shapes.input_shapes[len(columns)]
            columns[first] = data.draw(hnp.arrays(np.float64, shape, elements=numbers))
    shape = np.broadcast_shapes(*(column.shape for column in columns.values()))
    assume(shape != ())
    result = call(function, **fixed, **columns, errors="nan")
    outputs = [f"{out['noun']}_{out['name']}".lstrip("_") for out in FUNCTIONS[function]["outputs"]]
    assert result.status.shape == shape
    for index in np.ndindex(shape):
        inputs = {name: float(np.broadcast_to(column, shape)[index]) for name, column in columns.items()}
        try:
            one = call(function, **fixed, **inputs)
        except carb.CarbError as error:
            assert result.status[index] == error.code
            assert all(np.isnan(pick(result, name)[index]) for name in outputs)
        else:
            assert result.status[index] >= 0
            assert all(same(pick(one, name), pick(result, name)[index]) for name in outputs)
            assert result[index] == one


def test_broadcasting():
    result = carb.keg_pressure(volumes=[2.2, 2.4, 2.6], temperature_c=np.array([[2], [4]]), altitude_m=0)
    assert result.gauge_bar.shape == result.status.shape == (2, 3)
    assert result.gauge_bar is result.gauge_bar
    assert result[1, 2] == carb.keg_pressure(volumes=2.6, temperature_c=4, altitude_m=0)
    assert result[1].gauge_bar.shape == (3,)
    assert "working" in result[0, 0].to_dict()
    assert set(result.to_dict()) == {*result.shown, "status"}
    with pytest.raises(TypeError, match="one element"):
        result.working()
    with pytest.raises(ValueError, match="broadcast"):
        carb.keg_pressure(volumes=[2.2, 2.4, 2.6], temperature_c=[1, 2], altitude_m=0)


@pytest.mark.parametrize(
    "volumes",
    [
        [2, 3],
        (2.0, 3.0),
        range(2, 4),
        np.array([2, 3], dtype=np.int16),
        np.array([2, 3], dtype=np.float32),
        np.array([2.0, 3.0], dtype=">f8"),
        np.array([3.0, 2.0])[::-1],
        np.array([2.0, 3.0], dtype=object),
    ],
)
def test_kinds_of_arrays(volumes):
    result = carb.keg_pressure(volumes=volumes, temperature_c=4, altitude_m=0)
    assert same(result[1].gauge_psi, carb.keg_pressure(volumes=3, temperature_c=4, altitude_m=0).gauge_psi)


@pytest.mark.parametrize("volumes", [np.float64(2.5), np.float32(2.5), np.array(2.5)])
def test_numbers_of_numpy(volumes):
    result = carb.keg_pressure(volumes=volumes, temperature_c=np.int64(4), altitude_m=0)
    assert type(result.gauge_psi) is float
    assert result == carb.keg_pressure(volumes=2.5, temperature_c=4, altitude_m=0)


def test_empty():
    assert carb.gravity(sg=[]).plato.shape == (0,)
    assert carb.keg_pressure(volumes=np.ones((0, 2)), temperature_c=[4], altitude_m=0).gauge_bar.shape == (0, 2)


def test_missing_is_silent():
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        result = carb.keg_pressure(volumes=[2.5, np.nan, None], temperature_c=4, altitude_m=0)
        masked = np.ma.masked_array([2.5, 99.0], mask=[False, True])
        hidden = carb.keg_pressure(volumes=masked, temperature_c=4, altitude_m=0)
    assert np.isnan(result.gauge_bar).tolist() == [False, True, True]
    assert result.status.tolist() == [0, carb.CODES["NOT_A_NUMBER"], carb.CODES["NOT_A_NUMBER"]]
    assert hidden.gauge_bar.mask.tolist() == hidden.status.mask.tolist() == [False, True]


def test_errors_as_nan():
    result = carb.gravity(sg=[1.05, 1.5], errors="nan")
    assert result.status.tolist() == [0, carb.CODES["OUT_OF_RANGE"]]
    assert np.isnan(result.plato).tolist() == [False, True]


@pytest.mark.parametrize("of", [carb, carb.at(altitude_m=0)])
def test_one_warning_for_each_code(of):
    with pytest.warns(carb.ChartTemperatureWarning, match=r"^2 of 3 elements: .*20\.0 °C") as caught:
        result = of.keg_pressure(volumes=2.5, temperature_c=[4, 20, 25], altitude_m=0)
    assert len(caught) == 1
    assert caught[0].filename == __file__
    assert [caution.code for caution in result.cautions] == ["chart_temperature"]
    assert (result.status > 0).tolist() == [False, True, True]


def test_outputs_are_read_only():
    result = carb.keg_pressure(volumes=np.array([2.4, 2.5]), temperature_c=4, altitude_m=0)
    for array in (result.gauge_bar, result.status):
        with pytest.raises(ValueError):
            array[0] = 0


@pytest.mark.parametrize(
    "ask", [lambda r: (r.abs_psi, r.abs_kpa), lambda r: r[0], lambda r: r == r, hash, pickle.dumps]
)
@pytest.mark.parametrize("change", [lambda v: v.__setitem__(0, 3.0), lambda v: v.sort(), lambda v: v.fill(2.5)])
def test_an_answer_is_never_mixed_with_numbers_that_were_changed_since(ask, change):
    values = np.array([2.5, 2.4, 2.6])
    result = carb.keg_pressure(volumes=values, temperature_c=4, altitude_m=0)
    before = result.gauge_bar
    ask(result)
    result = carb.keg_pressure(volumes=values, temperature_c=4, altitude_m=0)
    result.gauge_bar  # noqa: B018
    change(values)
    assert result.gauge_bar.tobytes() == before.tobytes()
    with pytest.raises(RuntimeError, match="changed since"):
        ask(result)


def test_large():
    volumes = np.linspace(1.3, 4.0, 100_001)
    result = carb.keg_pressure(volumes=volumes, temperature_f=38, altitude_m=np.float64(240), errors="nan")
    good = result.status >= 0
    assert good.sum() > 90_000
    assert np.all(np.diff(result.gauge_psi[good]) > 0)


@pytest.mark.filterwarnings("ignore::carb.CarbWarning")
def test_the_worst_element_is_judged_as_a_bottle_of_its_own():
    given = {"temperature_c": 35, "altitude_m": 0}
    result = carb.package_pressure(volumes=[8.0, 2.0], **given)
    alone = carb.package_pressure(volumes=8.0, **given)
    dangers = {caution.code for caution in alone.cautions if caution.level == "danger"}
    assert dangers and dangers <= {caution.code for caution in result.cautions}
    assert all("element 0" in caution.text for caution in result.cautions if caution.level == "danger")
    calm = carb.package_pressure(volumes=[2.0, 2.2], **given)
    assert not any(caution.level == "danger" for caution in calm.cautions)


def test_an_infinity_is_wrong_and_a_nan_is_missing():
    assert np.isnan(carb.keg_pressure(volumes=[2.4, np.nan], temperature_c=4, altitude_m=0).gauge_bar[1])
    with pytest.raises(carb.CarbError) as caught:
        carb.keg_pressure(volumes=[2.4, np.inf], temperature_c=4, altitude_m=0)
    assert caught.value.index == (1,) and caught.value.parameter == "volumes"


@pytest.mark.parametrize("elements", [["4", 5.0], [True, 4.0], [10**400, 4]])
def test_an_array_of_objects_holds_numbers_only(elements):
    with pytest.raises(carb.CarbError):
        carb.keg_pressure(volumes=2.4, temperature_c=np.array(elements, dtype=object), altitude_m=0)


@pytest.mark.parametrize("change", [lambda t: t.fill(14.0), lambda t: np.add(t, 3, out=t), lambda t: np.copyto(t, np.roll(t, 1024))])
@pytest.mark.parametrize("values", [np.full(4096, 4.0), np.tile(np.repeat([2.0, 4.0, 6.0, 8.0], 1024), 4)])
def test_changes_that_follow_a_pattern_are_noticed(values, change):
    values = values.copy()
    result = carb.keg_pressure(volumes=np.full(values.size, 2.5), temperature_c=values, altitude_m=0)
    before = values.copy()
    result.gauge_bar  # noqa: B018
    change(values)
    if (values != before).any():
        with pytest.raises(RuntimeError, match="changed since"):
            result.request  # noqa: B018


def test_what_is_spread_is_kept_as_it_was():
    volumes, temperatures = np.array([2.4, 2.5]), np.array([4.0, 5.0, 6.0])
    result = carb.keg_pressure(volumes=volumes[:, None], temperature_c=temperatures, altitude_m=0)
    before = result[0, 0]
    volumes[:] = 3.5
    assert result[0, 0] == before and result.request["volumes"][0, 0] == 2.4


def test_what_overflows_in_other_units_is_wrong_and_not_missing():
    with pytest.raises(carb.CarbError) as caught:
        carb.keg_pressure(volumes=[1e308, 2.0], temperature_c=4, altitude_m=0)
    assert caught.value.index == (0,)


def test_a_danger_to_people_is_told_of_arrays_too():
    room = {"room_m3": 30, "altitude_m": 0, "air_changes_per_h": 0.5, "time_h": 2}
    alone = {said.code for said in carb.room_co2(released_lb=4.0, **room).cautions if said.level == "danger"}
    assert alone
    with pytest.warns(carb.CarbWarning) as caught:
        result = carb.room_co2(released_lb=[2.5, 4.0], **room)
    assert alone <= {warned.category.code for warned in caught}
    assert result.cautions[0].level == "danger" and alone <= {said.code for said in result.cautions}


@pytest.mark.filterwarnings("ignore::carb.CarbWarning")
def test_a_danger_is_told_wherever_the_highest_pressure_is():
    bottles = {"headspace_percent": 4, "altitude_m": 240, "bottle_class": "heavier_reusable"}
    result = carb.package_pressure(volumes=[3.0, 3.45], temperature_c=[40, 15], **bottles)
    each = {said.code for at in range(2) for said in result[at].cautions if said.level == "danger"}
    assert each and each <= {said.code for said in result.cautions}


@pytest.mark.filterwarnings("ignore::carb.CarbWarning")
@pytest.mark.parametrize("function", FUNCTIONS)
def test_functions_without_dangers_are_known(function):
    """What is left out when extremes are looked at has nothing to be found."""
    from carb._arrays import RANGES_ONLY

    if function in RANGES_ONLY:
        ranges = {code for code, level, bit in carb._carb.caution_codes() if bit is not None or level == "note"}
        for factor in (0.3, 1.0, 3.0, 10.0):
            given = {n: v * factor if isinstance(v, (int, float)) else v for n, v in example(function).items()}
            try:
                assert {said.code for said in call(function, **given).cautions} <= ranges
            except carb.CarbError:
                pass
