"""Ufuncs like NumPy's own."""

import pickle
import warnings
from concurrent.futures import ThreadPoolExecutor

import carb
import numpy as np
import pytest
from shared import FUNCTIONS

keg = carb.ufunc.of("keg_pressure", "volumes", "temperature_f", gives="gauge_psi", altitude_m=0)
keg_status = carb.ufunc.of("keg_pressure", "volumes", "temperature_f", status=True, altitude_m=0)
RNG = np.random.default_rng(7)
VOLUMES, TEMPERATURES = RNG.uniform(2, 3, 10_001), RNG.uniform(33, 58, 10_001)


def named(volumes, temperatures):
    return carb.keg_pressure(volumes=volumes, temperature_f=temperatures, altitude_m=0).gauge_psi


@pytest.mark.parametrize("function", FUNCTIONS)
def test_every_function_has_two(function):
    value, status = getattr(carb.ufunc, function), getattr(carb.ufunc, f"{function}_status")
    assert isinstance(value, np.ufunc) and isinstance(status, np.ufunc)
    assert value.nin == status.nin and value.nout == status.nout == 1
    operands = "d" * value.nin
    assert value.types == [f"{operands.replace('d', 'f')}->f", f"{operands}->d"]
    assert status.types == [f"{operands.replace('d', 'f')}->i", f"{operands}->i"]
    assert f"carb.{function}" in value.__doc__ and "status" in status.__doc__
    assert value is getattr(carb.ufunc, function)
    assert {function, f"{function}_status"} <= set(dir(carb.ufunc))
    assert pickle.loads(pickle.dumps(value)) is value


def test_out_and_where():
    out = np.full(VOLUMES.shape, -1.0)
    where = VOLUMES > 2.5
    assert keg(VOLUMES, TEMPERATURES, out=out, where=where) is out
    assert (out[~where] == -1).all() and (out[where] == named(VOLUMES, TEMPERATURES)[where]).all()


def test_strides_and_order():
    whole = named(VOLUMES, TEMPERATURES)
    assert (keg(VOLUMES[::-3], TEMPERATURES[::-3]) == whole[::-3]).all()
    grid = np.asfortranarray(VOLUMES[:9999].reshape(99, 101))
    assert keg(grid, 38.0).flags.f_contiguous
    assert (keg(grid, TEMPERATURES[:101]) == named(grid, np.broadcast_to(TEMPERATURES[:101], grid.shape))).all()
    apart = np.zeros(20_002)[::2]
    keg(VOLUMES, TEMPERATURES, out=apart)
    assert (apart == whole).all()
    record = np.zeros(11, dtype=[("flag", "i1"), ("volumes", "f8")])
    record["volumes"] = VOLUMES[:11]
    assert not record["volumes"].flags.aligned
    assert (keg(record["volumes"], TEMPERATURES[:11]) == whole[:11]).all()
    assert (keg(VOLUMES.astype(">f8"), TEMPERATURES) == whole).all()


@pytest.mark.parametrize("shift", [-5000, -129, -1, 0, 1, 129, 5000])
@pytest.mark.parametrize("operand", [0, 1])
def test_an_output_that_lies_over_an_input(shift, operand):
    """In place, and shifted: the answer is that of inputs that were read before."""
    size, room = 10_001, 6000
    memory = np.zeros(size + 2 * room)
    inputs = [VOLUMES.copy(), TEMPERATURES.copy()]
    source = memory[room : room + size]
    source[:] = inputs[operand]
    before = keg(*inputs)
    inputs[operand] = source
    out = memory[room + shift : room + shift + size]
    keg(*inputs, out=out)
    assert (out == before).all()


def test_single_precision_is_worked_out_in_double():
    volumes, temperatures = VOLUMES.astype(np.float32), TEMPERATURES.astype(np.float32)
    out = keg(volumes, temperatures)
    assert out.dtype == np.float32
    assert (out == keg(volumes.astype(float), temperatures.astype(float)).astype(np.float32)).all()
    assert keg_status(volumes, temperatures).dtype == np.int32
    with pytest.raises(TypeError):
        keg(np.array([2.5], dtype=object), 38)


def test_masked_arrays():
    masked = np.ma.masked_array([2.4, 99.0], mask=[False, True])
    out = keg(masked, 38.0)
    assert out.mask.tolist() == [False, True] and out[0] == keg(2.4, 38.0)


def test_scalars_and_nothing():
    assert type(keg(2.5, 38)) is np.float64 and type(keg_status(2.5, 38)) is np.int32
    assert keg([], 38).shape == (0,) and keg.outer([2.4, 2.5], [38.0, 39.0, 40.0]).shape == (2, 3)


def test_nothing_warns_and_a_bad_element_is_seen_in_its_status():
    with warnings.catch_warnings(), np.errstate(all="raise"):
        warnings.simplefilter("error")
        bad = np.array([2.5, np.nan, np.inf, -1.0, 1e308, 2.5])
        assert np.isnan(keg(bad, 38)).tolist() == [False, True, True, True, True, False]
        assert np.sign(keg_status(bad, 38)).tolist() == [0, -1, -1, -1, -1, 0]
        assert keg_status(2.5, 70) > 0
        np.array([1.0]) / np.array([3.0])


def test_others_are_made_by_name():
    again = pickle.loads(pickle.dumps(keg))
    assert again is keg is carb.ufunc.of("keg_pressure", "volumes", "temperature_f", gives="gauge_psi", altitude_m=0.0)
    assert carb.ufunc.of("added_co2", "dose_g_per_l", addition="lactose")(5.0) == 0
    with pytest.raises(carb.CarbError, match="did you mean"):
        carb.ufunc.of("keg_pressure", "volumes", "tempertaure_f", altitude_m=0)
    with pytest.raises(carb.CarbError, match="altitude"):
        carb.ufunc.of("keg_pressure", "volumes", "temperature_f")
    with pytest.raises(carb.CarbError):
        carb.ufunc.of("keg_pressure", "volumes", "beverage", altitude_m=0)
    with pytest.raises(ValueError, match="gives no"):
        carb.ufunc.of("keg_pressure", "volumes", "temperature_f", gives="gauge_atm", altitude_m=0)
    with pytest.raises(ValueError, match="keg_pressure"):
        carb.ufunc.of("keg_presure", "volumes")
    with pytest.raises(AttributeError):
        carb.ufunc.keg_presure  # noqa: B018


def test_threads_agree_with_one():
    whole = keg(VOLUMES, TEMPERATURES)
    with ThreadPoolExecutor(8) as pool:
        for out in pool.map(lambda _: keg(VOLUMES, TEMPERATURES), range(64)):
            assert (out == whole).all()


def test_a_ufunc_needs_an_operand():
    with pytest.raises(ValueError, match="operand"):
        carb.ufunc.of("keg_pressure", volumes=2.5, temperature_c=4, altitude_m=0)


def test_reduce_and_accumulate_go_one_after_the_other():
    """They mean nothing here, but what NumPy offers has to do what it says."""
    step = carb.ufunc.of("keg_pressure", "temperature_c", "volumes", gives="gauge_bar", altitude_m=0)
    values = np.array([4.0, 2.5, 2.6, 2.4, 2.5])
    told = [values[0]]
    for value in values[1:]:
        told.append(float(step(told[-1], value)))
    assert step.reduce(values) == told[-1] and step.accumulate(values).tolist() == told
