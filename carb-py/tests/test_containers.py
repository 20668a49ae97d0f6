"""What goes in comes out as what it was: Series, DataArrays, masked and lazy arrays, quantities."""

import pickle
import warnings

import carb
import dask
import dask.array as da
import numpy as np
import pandas as pd
import pint
import pytest
import xarray as xr
from carb._quantities import SPELT

VALUES = np.array([2.4, 2.5, 2.6])
SERIES = pd.Series(VALUES, index=["pale", "stout", "wheat"], name="target")
units = pint.UnitRegistry()


@pytest.fixture(autouse=True)
def no_warning():
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        yield


def keg(volumes, temperature_f=38.0, **more):
    return carb.keg_pressure(volumes=volumes, temperature_f=temperature_f, altitude_m=0, **more)


def test_series_keep_index_and_name():
    result = keg(SERIES)
    pd.testing.assert_series_equal(
        result.gauge_psi, pd.Series(keg(VALUES).gauge_psi, index=SERIES.index, name="target")
    )
    assert result.status.tolist() == [0, 0, 0] and result.status.index.equals(SERIES.index)
    assert result[1] == keg(2.5) and pickle.loads(pickle.dumps(result)) == result and hash(result) == hash(keg(SERIES))
    assert result != keg(SERIES.rename(index={"pale": "mild"}))
    assert list(result.to_frame().index) == list(SERIES.index)


def test_series_are_matched_by_their_index():
    temperatures = pd.Series([42.0, 40.0, 38.0], index=["wheat", "stout", "pale"])
    result = keg(SERIES, temperatures)
    assert (
        result.gauge_psi["pale"] == keg(2.4, 38.0).gauge_psi and result.gauge_psi["wheat"] == keg(2.6, 42.0).gauge_psi
    )
    assert result[0] == keg(2.4, 38.0)


def test_a_series_changed_later_changes_nothing():
    changed = SERIES.copy()
    result = keg(changed)
    changed["pale"] = 3.0
    assert result.abs_psi["pale"] == keg(2.4).abs_psi


def test_missing_in_a_series():
    result = keg(pd.Series([2.5, None], dtype="Float64"))
    assert result.gauge_psi.dtype == "Float64" and result.gauge_psi.isna().tolist() == [False, True]
    assert keg(pd.Series([2.5, None])).gauge_psi.isna().tolist() == [False, True]


def test_a_bad_element_of_a_series():
    with pytest.raises(carb.CarbError, match="element 2") as caught:
        keg(pd.Series([2.4, np.nan, -1.0]))
    assert caught.value.index == (2,) and caught.value.parameter == "volumes"
    assert keg(pd.Series([2.4, -1.0]), errors="nan").gauge_psi.isna().tolist() == [False, True]


def test_one_warning_for_a_series():
    with pytest.warns(carb.ChartTemperatureWarning, match="^2 of 3 elements") as caught:
        result = keg(2.5, pd.Series([38.0, 60.0, 70.0]))
    assert len(caught) == 1 and caught[0].filename == __file__
    assert [caution.code for caution in result.cautions] == ["chart_temperature"]


def test_frames():
    frame = pd.DataFrame({"a": VALUES, "b": VALUES[::-1]})
    assert keg(frame).gauge_psi["b"].tolist() == keg(VALUES[::-1]).gauge_psi.tolist()


def test_data_arrays_keep_dimensions_and_attributes():
    volumes = xr.DataArray(VALUES, dims="batch", coords={"batch": [1, 2, 3]}, attrs={"kept": "yes"})
    result = keg(volumes, xr.DataArray([38.0, 40.0], dims="keg"))
    assert result.gauge_psi.dims == result.status.dims == ("batch", "keg")
    assert (result.gauge_psi.values == keg(VALUES[:, None], np.array([38.0, 40.0])).gauge_psi).all()
    assert result[2, 1] == keg(2.6, 40.0)


def test_masked_elements_are_not_looked_at():
    result = keg(np.ma.masked_array([2.4, 99.0], mask=[False, True]))
    assert result.gauge_psi.mask.tolist() == result.status.mask.tolist() == [False, True]


def lazy():
    return da.from_array(np.linspace(2, 2.6, 1000), chunks=100)


def test_a_lazy_array_stays_lazy_and_nothing_is_said_before_it_is_computed():
    result = keg(lazy(), 70.0)
    assert isinstance(result.gauge_psi, da.Array) and isinstance(result.status, da.Array)
    assert result.gauge_psi.chunks == lazy().chunks
    for asks in (lambda: result.cautions, lambda: result[0]):
        with pytest.raises(TypeError, match="compute"):
            asks()
    assert "not worked out yet" in result._repr_html_()
    with pytest.warns(carb.ChartTemperatureWarning):
        now = keg(lazy().compute(scheduler="synchronous"), 70.0)
    with dask.config.set(scheduler="synchronous"):
        assert result.gauge_psi.compute().tobytes() == now.gauge_psi.tobytes()
        assert (result.status.compute() == now.status).all() and (now.status > 0).all()


def test_an_error_of_a_lazy_array_is_a_nan_with_a_status():
    result = keg(da.from_array(np.array([2.5, -1.0]), chunks=1))
    with dask.config.set(scheduler="synchronous"):
        assert np.isnan(result.gauge_psi.compute()).tolist() == [False, True]
        assert result.status.compute().tolist() == [0, carb.CODES["OUT_OF_RANGE"]]


def test_lazy_data_arrays():
    result = keg(xr.DataArray(lazy(), dims="t"))
    assert isinstance(result.gauge_psi.data, da.Array)
    ufunc = carb.ufunc.of("keg_pressure", "volumes", gives="gauge_psi", temperature_f=38, altitude_m=0)
    applied = xr.apply_ufunc(ufunc, xr.DataArray(lazy(), dims="t"), dask="parallelized", output_dtypes=[float])
    with dask.config.set(scheduler="synchronous"):
        assert (applied.values == result.gauge_psi.values).all()
        assert (da.map_blocks(ufunc, lazy(), dtype=float).compute() == result.gauge_psi.values).all()


def test_quantities_are_converted_to_the_unit_of_their_name():
    result = keg(2.5, units.Quantity(4.0, "degC"))
    assert result.gauge_psi.units == units.psi and result.gauge_bar.units == units.bar
    assert result.gauge_psi.magnitude == pytest.approx(
        carb.keg_pressure(volumes=2.5, temperature_c=4, altitude_m=0).gauge_psi
    )
    assert result.gauge_psi.to("bar").magnitude == pytest.approx(result.gauge_bar.magnitude, rel=1e-14)
    assert result.working() and result.cautions and "psi" in result._repr_html_()
    assert pickle.loads(pickle.dumps(result)) == result


def test_co2_by_mass_under_the_name_of_volumes():
    by_mass = keg(units.Quantity([4900.0, 5000.0], "mg/L"))
    assert by_mass.gauge_psi.magnitude.tolist() == pytest.approx(
        carb.keg_pressure(co2_g_per_l=[4.9, 5.0], temperature_f=38, altitude_m=0).gauge_psi.tolist()
    )
    assert keg(units.Quantity(2.5)).gauge_psi.magnitude == keg(2.5).gauge_psi


def test_a_quantity_of_another_dimension_is_refused():
    for wrong in (units.Quantity(4.0, "m"), units.Quantity(4.0, "")):
        with pytest.raises(carb.CarbError, match="degF"):
            keg(2.5, wrong)
    with pytest.raises(carb.CarbError):
        carb.break_even(packaged_l=20, bottle_money=units.Quantity(1, "m"))


def test_what_carries_a_unit_may_hold_an_array_of_any_kind():
    result = keg(units.Quantity(lazy(), ""))
    assert isinstance(result.gauge_psi.magnitude, da.Array)


# What a registry cannot tell apart from a plain number, or does not know.
OF_THE_TRADE = {"money", "money_per_kg", "money_per_lb", "money_per_l", "money_per_us_gal"}
PLAIN = {"volumes", "sg", "plato", "ppb"}


def test_every_unit_is_spelt_as_the_registry_has_it():
    """The factors of the registry and those of the core are two works on the same definitions."""
    names = [row.name for row in carb.units()]
    assert set(names) == set(SPELT) | OF_THE_TRADE
    compared = 0
    for one in names:
        for other in names:
            if {one, other} & (OF_THE_TRADE | PLAIN):
                continue
            try:
                ours = carb.convert([0.0, 1.0, 98.6], one, other)
            except ValueError:
                continue
            theirs = units.Quantity(np.array([0.0, 1.0, 98.6]), SPELT[one]).to(SPELT[other]).magnitude
            assert theirs == pytest.approx(ours, rel=1e-9, abs=1e-12), (one, other)
            compared += one != other
    assert compared > 60


def test_conversions():
    assert carb.convert(1, "us_gal", "l") == 3.785411784
    for wrong in ("psi", "c", "parsec"):
        with pytest.raises(ValueError):
            carb.convert(1.0, "l", wrong)
    with pytest.raises(carb.CarbError):
        carb.convert(float("nan"), "l", "ml")


def test_what_a_conversion_cannot_keep_it_refuses():
    for value in (units.Quantity(10.0, "psi"), SERIES, np.ma.masked_array([2.4], mask=[True]), "38", True, ["38"]):
        with pytest.raises(carb.CarbError):
            carb.convert(value, "bar", "kpa")


def test_a_series_is_judged_as_a_list_is():
    assert keg(pd.Series([2.5, None], dtype=object)).gauge_psi.isna().tolist() == [False, True]
    for wrong in (["2.5"], [True], [b"2"]):
        for dtype in (object, None, "category"):
            with pytest.raises(carb.CarbError, match="number"):
                keg(pd.Series(wrong, dtype=dtype))
    for dtype in ("int8", "float32", "Int16", "Float32"):
        told = keg(2.5, pd.Series([38], dtype=dtype)).gauge_psi
        assert str(told.dtype).lower() == "float64" and told[0] == keg(2.5).gauge_psi


def test_equal_means_the_same_numbers_of_the_same_things():
    one, other = xr.DataArray(VALUES, dims="a"), xr.DataArray(VALUES, dims="b")
    assert keg(one) == keg(one.copy()) != keg(other)
    assert keg(pd.DataFrame({"a": VALUES})) != keg(pd.DataFrame({"b": VALUES}))
    masked = [np.ma.masked_array(VALUES, mask=mask) for mask in ([0, 0, 0], [0, 1, 0])]
    assert keg(masked[0]) != keg(masked[1])
    here, there = np.array([2.4, np.nan]), np.array([38.0, 40.0])
    swapped = carb.keg_pressure(altitude_m=0, temperature_f=there, volumes=here)
    assert swapped == keg(here, there) and hash(swapped) == hash(keg(here, there))
    assert keg(lazy()) == keg(lazy())


@pytest.mark.filterwarnings("ignore::carb.CarbWarning")
def test_nothing_but_missing_elements():
    told = {"temperature_c": 20, "altitude_m": 0}
    assert carb.package_pressure(volumes=np.ma.array([2.4, 2.5], mask=True), **told).worst.gauge_bar.mask.all()
    assert carb.package_pressure(volumes=pd.Series([None, None], dtype="Float64"), **told).status.isna().all()
    mixed = carb.package_pressure(volumes=pd.Series([None, 99.0], dtype="Float64"), errors="nan", **told)
    assert mixed.worst.gauge_bar.isna().all()


def test_a_quantity_and_a_number_of_the_same_thing():
    for first, second in ((units.Quantity(5.0, "g/L"), 4.0), (4.0, units.Quantity(5.0, "g/L"))):
        names = ("volumes", "co2_g_per_l") if isinstance(second, float) else ("co2_g_per_l", "volumes")
        with pytest.raises(carb.CarbError) as caught:
            carb.keg_pressure(**dict(zip(names, (first, second), strict=True)), temperature_c=4, altitude_m=0)
        assert caught.value.code == carb.CODES["GIVEN_TWICE"]


def test_a_lazy_array_of_unknown_size_can_be_shown():
    known = lazy()
    assert "unknown number" in keg(known[known > 2.2])._repr_html_()


def test_an_output_does_not_claim_the_unit_of_an_input():
    volumes = xr.DataArray(VALUES, dims="batch", attrs={"units": "vol", "long_name": "carbonation", "site": "north"})
    assert keg(volumes).gauge_bar.attrs == {"site": "north"}


def test_an_element_of_quantities_is_a_quantity_and_a_change_is_noticed():
    warmth = np.array([40.0, 50.0])
    result = carb.keg_pressure(volumes=2.5, temperature_f=units.Quantity(warmth, "degF"), altitude_m=0)
    assert result[0].gauge_bar.units == units.bar and result[0].gauge_bar == result.gauge_bar[0]
    warmth[:] = 60
    with pytest.raises(RuntimeError, match="changed since"):
        pickle.dumps(result)
