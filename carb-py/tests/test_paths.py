"""One answer by every path: ufunc, named function, number, Series; for inputs that nobody would give too."""

import warnings

import carb
import numpy as np
import pandas as pd
import pytest
from shared import FUNCTIONS, example, pick

DRAWS, SIZE, ALONE = 4, 500, 12
"""Arrays drawn of each function, elements in each, and how many of these are asked as numbers too."""
STRANGE = [0.0, -0.0, 1.0, -1.0, 1e-308, 5e-324, 1e300, -1e300, np.nan, np.inf, -np.inf, 273.15, -273.15, -459.67]


def drawn(rng, entry, likely):
    """Numbers of an input: most near its example, some of its whole range, beyond it, and strange ones."""
    low, high = entry["low"], entry["high"]
    span = high - low
    near = np.clip(likely * rng.uniform(0.7, 1.3, SIZE), low, high)
    return np.select(
        [rng.random(SIZE) < share for share in (0.7, 0.6, 0.5)],
        [near, rng.uniform(low, high, SIZE), rng.uniform(low - span, high + span, SIZE)],
        rng.choice(STRANGE, SIZE),
    )


def inputs(function, rng):
    """Arrays for what varies in the example of a function, under its first names, and the rest."""
    columns, rest = {}, dict(example(function))
    for entry in FUNCTIONS[function]["inputs"]:
        told = next((name for name in entry["names"] if name in rest), None)
        if told is not None and entry["array"]:
            value = rest.pop(told)
            likely = value if told == entry["names"][0] else (entry["low"] + entry["high"]) / 2
            columns[entry["names"][0]] = drawn(rng, entry, likely)
    return columns, rest


def bits(values):
    """Bits, every NaN the same."""
    array = np.array(values, dtype=np.float64)
    array[np.isnan(array)] = np.nan
    return array.tobytes()


@pytest.mark.filterwarnings("ignore::carb.CarbWarning")
@pytest.mark.parametrize("function", FUNCTIONS)
def test_every_path_gives_the_same_bits_and_no_silent_nan(function):
    named = getattr(carb, function)
    outputs = [f"{out['noun']}_{out['name']}".lstrip("_") for out in FUNCTIONS[function]["outputs"]]
    for draw in range(DRAWS):
        rng = np.random.default_rng([sum(map(ord, function)), draw])
        columns, rest = inputs(function, rng)
        result = named(**rest, **columns, errors="nan")
        series = named(**rest, **{name: pd.Series(column) for name, column in columns.items()}, errors="nan")
        output = outputs[draw % len(outputs)]
        operands, values = list(columns.values()), pick(result, output)
        with warnings.catch_warnings():
            warnings.simplefilter("error")
            by_ufunc = carb.ufunc.of(function, *columns, gives=output, **rest)(*operands)
            status = carb.ufunc.of(function, *columns, gives=output, status=True, **rest)(*operands)
            plain = getattr(carb.ufunc, function)(*operands)
            plain_status = getattr(carb.ufunc, f"{function}_status")(*operands)
        assert bits(values) == bits(by_ufunc) == bits(pick(series, output))
        assert bits(pick(result, outputs[0])) == bits(plain)
        assert (result.status == status).all() and (status == plain_status).all() and (series.status == status).all()
        assert (np.isfinite(values) == (status >= 0)).all()
        for at in rng.integers(0, SIZE, ALONE):
            try:
                one = named(**rest, **{name: float(column[at]) for name, column in columns.items()})
            except carb.CarbError as error:
                assert error.code == status[at]
            else:
                assert bits(pick(one, output)) == bits(values[at]) and status[at] >= 0


def test_so_many_elements_are_drawn():
    assert DRAWS * len(FUNCTIONS) == 200 and SIZE * DRAWS * len(FUNCTIONS) == 100_000
