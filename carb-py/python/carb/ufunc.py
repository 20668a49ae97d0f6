"""The elementwise functions as ufuncs of NumPy.

``carb.ufunc.keg_pressure`` gives the first output of ``carb.keg_pressure`` in its first unit; its operands are the
inputs of that function's example, each in its first (metric) unit, and its docstring names them.
``carb.ufunc.keg_pressure_status`` gives the status of each element: 0, or bits of the cautions, or below 0 an error code
(``carb.CODES``), where the value is NaN. ``carb.ufunc.of`` makes one for any names, units and fixed inputs.

They are ufuncs like NumPy's own: ``out=``, ``where=``, broadcasting, strides, single and double precision (worked out
in double), masked arrays, Series, DataArrays, Dask arrays. They run without the interpreter's lock, and never warn.

>>> import carb
>>> carb.ufunc.keg_pressure([5.0, 5.2], 4.0, 240.0).round(1)
array([86.4, 93.8])
>>> psi = carb.ufunc.of("keg_pressure", "volumes", "temperature_f", gives="gauge_psi", altitude_m=0)
>>> psi([2.4, 2.5], [[38.0], [40.0]]).round(1)
array([[10.2, 11.2],
       [11.1, 12.2]])
"""

from __future__ import annotations

import json
from functools import cache
from threading import RLock
from typing import Any
from urllib.parse import unquote

import numpy as np

from . import _carb
from ._docs import Entry, full
from ._functions import FUNCTIONS, described
from ._lists import asked

STATUS = "_status"
_making = RLock()
_kept: dict[str, np.ufunc] = {}
"""Every ufunc that was made by `of`, by its name: by it, it is found again where it was pickled to."""


def of(function: str, /, *operands: str, gives: str | None = None, status: bool = False, **given: Any) -> np.ufunc:
    """Make a ufunc of a function.

    Parameters
    ----------
    function : str
        The name of the function, such as ``"keg_pressure"``.
    *operands : str
        The names of the inputs that are its operands, in their order, such as ``"volumes"``, ``"temperature_f"``.
    gives : str, optional
        The output, its noun before: ``"gauge_psi"``, ``"worst_gauge_bar"``. Default: the first one in its first unit.
    status : bool, optional
        Whether it gives the status of each element instead of the value.
    **given
        The other inputs, the same for all elements.

    Returns
    -------
    numpy.ufunc
        It can be pickled, also to processes that have not made it.

    Raises
    ------
    CarbError
        Where the function could not answer with these names, whatever the elements are.

    Examples
    --------
    >>> import carb
    >>> dose = carb.ufunc.of("priming_sugar", "volumes", "warmest_c", gives="mass_g", packaged_l=20, altitude_m=0)
    >>> dose([2.2, 2.4], 20).round(1)
    array([102.9, 118.3])
    """
    _check(function)
    if not operands:
        raise ValueError("a ufunc needs an operand: name an input that varies, such as \"temperature_c\"")
    wanted = gives or described(function)["outputs"][0]
    wanted = wanted if isinstance(wanted, str) else full(wanted)
    task = json.dumps([list(operands), wanted, asked(given, lists=False)])
    # What is imported by its name must not have a point in it.
    return _found(f"{function}{STATUS * status} {task}".replace("%", "%25").replace(".", "%2E"))


def made(function: str, /, *operands: str, gives: str, status: bool = False, **given: Any) -> np.ufunc:
    """The same for one use, which is not kept."""
    return _make(function, operands, given, gives, status, function + STATUS * status)


def _found(name: str) -> np.ufunc:
    with _making:
        if name not in _kept:
            head, _, task = unquote(name).partition(" ")
            operands, wanted, given = json.loads(task)
            function = head.removesuffix(STATUS)
            _check(function)
            _kept[name] = _make(function, operands, given, wanted, head != function, name)
        return _kept[name]


def _make(function: str, operands: Any, given: dict[str, Any], gives: str, status: bool, name: str) -> np.ufunc:
    said = f"{'The status of' if status else f'``{gives}`` of'} ``carb.{function}``. Operands: {', '.join(operands)}."
    if given:
        said += f" The same for all elements: {', '.join(f'{key}={value!r}' for key, value in given.items())}."
    made: np.ufunc = _carb.ufunc(function, list(operands), given, gives, status, name, said)
    try:
        made.__module__ = __name__  # type: ignore[misc]
    except AttributeError:  # NumPy 1 finds the module by looking through all of them.
        pass
    return made


@cache
def _plain(name: str) -> np.ufunc:
    """The ufunc of a function's example."""
    function = name.removesuffix(STATUS)
    entry = described(function)
    example = json.loads(entry["example"])
    operands, given = list[str](), dict[str, Any]()
    for known in entry["inputs"]:
        told = next((spelt for spelt in known["names"] if spelt in example), None)
        if told is not None and known["array"]:
            operands.append(known["names"][0])
        elif told is not None:
            given[told] = example[told]
    return _make(function, operands, given, full(_first(entry)), name != function, name)


def _first(entry: Entry) -> Entry:
    found: Entry = entry["outputs"][0]
    return found


def _check(function: str) -> None:
    if function not in FUNCTIONS:
        raise ValueError(f"{function!r} is no elementwise function of carb; these are: {', '.join(sorted(FUNCTIONS))}")


def __getattr__(name: str) -> np.ufunc:
    if name.removesuffix(STATUS) in FUNCTIONS:
        with _making:
            return _plain(name)
    if " " in name:
        try:
            return _found(name)
        except ValueError:
            pass
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


def __dir__() -> list[str]:
    return sorted([*FUNCTIONS, *(function + STATUS for function in FUNCTIONS), "of"])
