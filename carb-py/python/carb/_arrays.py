"""Answers for arrays, element by element: arrays of NumPy, and whatever takes its ufuncs."""

from __future__ import annotations

import sys
import warnings
from math import prod
from typing import Any

import numpy as np
from numpy.typing import NDArray

from . import _carb, ufunc
from ._errors import WARNINGS, CarbError
from ._lists import LISTS, missing
from ._quantities import Measured, is_quantity, plain
from ._result import CODES, Caution, Result

_last: dict[str, str] = {}
"""The output of each function that was asked for last: most likely it is wanted of the next arrays too. It makes nothing
but the order of the work."""


INHERITED = frozenset(("units", "long_name", "standard_name"))
"""What labelled arrays say of the quantity that they hold, by the CF conventions."""
LEVELS = ("danger", "caution", "note")
RANGES_ONLY = frozenset(("dissolved_co2", "keg_pressure"))
"""Functions of which nothing but the ranges of their equations is to be minded."""


class Elements:
    """The answers for the elements of arrays of NumPy. An output is worked out when it is first asked for.

    Arrays are not copied, for that would take longer than the answer; a print of them is kept, so that no answer is mixed
    with numbers that were changed since.
    """

    lazy = False

    def __init__(self, kind: type[Result[Any]], given: dict[str, Any], arrays: dict[str, Any]) -> None:
        self.kind = kind
        self.given = given
        self.arrays = arrays
        self.cautions: tuple[Caution, ...] = ()
        self._values: dict[str, NDArray[np.float64]] = {}
        self._begin()

    def _begin(self) -> None:
        shapes = {array.shape for array in self.arrays.values()}
        self.shape = shapes.pop() if len(shapes) == 1 else np.broadcast_shapes(*shapes)
        self._count = prod(self.shape)
        alike = all(array.shape == self.shape for array in self.arrays.values())
        if not alike:
            # What is spread over the others is copied anyway, so that nothing of it needs to be watched.
            self.arrays = {name: array.copy() for name, array in self.arrays.items()}
        flat = alike and len(self.shape) == 1
        self._columns = self.arrays if flat else {name: self._column(array) for name, array in self.arrays.items()}
        wanted, worst = _last.get(self.kind.function, self.kind.outputs[0]), self.kind._worst
        self.status, self._seen, self._print = self._run(wanted, None if worst == wanted else worst)

    def _column(self, array: NDArray[np.float64]) -> NDArray[np.float64]:
        """One number for all elements, or one for each."""
        if array.size == 1 or array.shape == self.shape:
            return array.reshape(-1)
        return np.broadcast_to(array, self.shape).reshape(-1)

    def _run(self, name: str, also: str | None = None) -> tuple[NDArray[np.int32], int, int]:
        found = _carb.each(self.kind.function, self.given, self._columns, self._count, name, also)
        values, others, status, seen, print_of = found
        for output, array in ((name, values), (also, others)):
            if output is not None and array is not None:
                array.setflags(write=False)
                self._values[output] = array.reshape(self.shape)
        status.setflags(write=False)
        return status.reshape(self.shape), seen, print_of

    def value(self, name: str) -> Any:
        """The values of an output by its name."""
        _last[self.kind.function] = name
        if name not in self._values:
            *_, print_of = self._run(name)
            if print_of != self._print:
                del self._values[name]
                self._refuse_changed()
        return self._values[name]

    def _refuse_changed(self) -> None:
        raise RuntimeError(
            f"the arrays given to {self.kind.function} were changed since, so that its outputs would not belong "
            "together: ask again, or give copies of arrays that you change"
        )

    @property
    def request(self) -> dict[str, Any]:
        """What was asked."""
        if _carb.print(list(self._columns.values()), self._count) != self._print:
            self._refuse_changed()
        return {**self.given, **self.arrays}

    def operand(self, name: str) -> NDArray[np.float64]:
        """An input, for every element."""
        return np.broadcast_to(self.arrays[name], self.shape)

    def statuses(self) -> NDArray[np.int32]:
        """The status of every element as an array of NumPy."""
        return self.status

    def element(self, index: Any) -> dict[str, Any]:
        """The request for one element, or for some."""
        asked = self.request
        return {**asked, **{name: self.operand(name)[index] for name in self.arrays}}

    def numbers(self, name: str) -> NDArray[np.float64]:
        """The values of an output as an array of NumPy."""
        return as_numbers(self.value(name), np.float64, np.nan)

    def tell(self, refuse: bool, warn: bool) -> None:
        """Raises what has to be raised, and warns of what is to be minded."""
        if self.lazy:
            return
        if refuse:
            self.refuse()
        self.caution()
        for caution in self.cautions if warn else ():
            if caution.level != "note":
                warned = next(kind for kind in WARNINGS.values() if kind.code == caution.code)
                warnings.warn(warned(caution.text), stacklevel=_outside())

    def refuse(self) -> None:
        """Raises the error of the first element that has one; a missing value is none."""
        if self._seen >= 0:
            return
        # NaN is a missing value. What else is no number, as an infinity or what overflows in SI units, is wrong.
        status = self.statuses()
        missing = np.zeros(status.shape, dtype=bool)
        for name in self.arrays:
            missing |= np.isnan(self.operand(name))
        wrong = (status < 0) & ~(missing & (status == CODES["NOT_A_NUMBER"]))
        if not wrong.any():
            return
        index = first(wrong)
        try:
            _carb.answer(self.kind.function, self.element(index))
        except CarbError as error:
            text = f"{error} (element {', '.join(map(str, index))})"
            found = CarbError(text, error.code, error.parameter, error.value, error.low, error.high, index)
        else:
            found = CarbError(f"element {index} has no answer", int(status[index]), index=index)
        raise found

    def caution(self) -> None:
        """Gathers the cautions, one for each code, in the words of the first element that it concerns."""
        found = []
        if self._seen:
            bits = np.where(self.statuses() > 0, self.statuses(), 0)
            seen = int(np.bitwise_or.reduce(bits, axis=None))
            for code, _, bit in _carb.caution_codes() if seen else ():
                if bit is not None and seen >> bit & 1:
                    outside = (bits >> bit & 1).astype(bool)
                    one = self._alone(first(outside))
                    said = next(caution for caution in one.cautions if caution.code == code)
                    count = np.count_nonzero(outside)
                    found.append(said._replace(text=f"{count} of {bits.size} elements: {said.text}"))
        self.cautions = tuple(sorted(self._of_extremes() + found, key=lambda said: LEVELS.index(said.level)))

    def _alone(self, index: tuple[int, ...]) -> Result[Any]:
        return self.kind(_carb.answer(self.kind.function, self.element(index)))

    def _of_extremes(self) -> list[Caution]:
        """What is to be minded beyond the ranges, of the elements with the least and the most of something: such limits
        are those of one quantity, so that whoever crosses one is found among these."""
        if self.kind.function in RANGES_ONLY:
            return []
        answered = self.statuses() >= 0
        places: set[int] = set()
        for column in [*map(self.operand, self.arrays), *map(self.numbers, self.kind._told)]:
            meant = answered & np.isfinite(column)
            if meant.any():
                places |= {int(np.argmax(np.where(meant, column, -np.inf))), int(np.argmin(np.where(meant, column, np.inf)))}
        ranges = {code for code, _, bit in _carb.caution_codes() if bit is not None}
        found: dict[str, Caution] = {}
        for place in sorted(places):
            index = tuple(map(int, np.unravel_index(place, answered.shape)))
            for said in self._alone(index).cautions:
                if said.code not in ranges:
                    text = f"element {', '.join(map(str, index))}: {said.text}"
                    found.setdefault(said.code, said._replace(text=text))
        return list(found.values())


class Containers(Elements):
    """The answers for what takes ufuncs of NumPy in its own way: Series, DataArrays, masked arrays, Dask arrays."""

    def _begin(self) -> None:
        self.lazy = any(map(is_lazy, self.arrays.values()))
        if not self.lazy:
            self.arrays = {
                name: array.copy() if hasattr(array, "copy") else array for name, array in self.arrays.items()
            }
        self.status = self._asked(self.kind.outputs[0], status=True)
        self.shape = self.status.shape
        self._seen = 0 if self.lazy else int(np.bitwise_or.reduce(self.statuses(), axis=None))

    def _asked(self, name: str, status: bool = False) -> Any:
        # What is worked out elsewhere and later has to be found there by its name.
        make = ufunc.of if self.lazy else ufunc.made
        call = make(self.kind.function, *self.arrays, gives=name, status=status, **self.given)
        return call(*self.arrays.values())

    def value(self, name: str) -> Any:
        found = self._asked(name)
        attrs = getattr(found, "attrs", None)
        if attrs and attrs.keys() & INHERITED:
            # What an input said of itself is not true of the output.
            found = found.copy(deep=False)
            found.attrs = {key: value for key, value in attrs.items() if key not in INHERITED}
        return found

    @property
    def request(self) -> dict[str, Any]:
        return {**self.given, **self.arrays}

    def _now(self) -> None:
        if self.lazy:
            raise TypeError(
                "this needs the elements, which are not worked out yet: compute the arrays first, or see .status"
            )

    def operand(self, name: str) -> NDArray[np.float64]:
        self._now()
        # The containers themselves know how their elements belong together.
        return as_numbers(self.status * 0 + self.arrays[name], np.float64, np.nan)

    def statuses(self) -> NDArray[np.int32]:
        self._now()
        return as_numbers(self.status, np.int32, 0)


def as_numbers(container: Any, dtype: Any, absent: Any) -> NDArray[Any]:
    """A container as an array of NumPy, with something in place of what is missing."""
    if isinstance(container, np.ma.MaskedArray):
        return np.asarray(container.filled(absent), dtype=dtype)
    array = np.asarray(container)
    if array.dtype.kind == "O":
        array = np.array([absent if missing(value) else value for value in array.flat], dtype=dtype).reshape(
            array.shape
        )
    elif array.dtype.kind == "f":
        array = np.where(np.isnan(array), absent, array)
    return array.astype(dtype, copy=False)


def first(where: NDArray[np.bool_]) -> tuple[int, ...]:
    """The index of the first element that is meant."""
    return tuple(map(int, np.unravel_index(int(np.argmax(where)), where.shape)))


def is_lazy(value: Any) -> bool:
    """Whether a value is a graph of work that is still to do."""
    graph = getattr(value, "__dask_graph__", None)
    return graph is not None and graph() is not None


def varies(value: Any) -> bool:
    """Whether a value may hold several."""
    if isinstance(value, (str, float, int, np.generic)) or value is None:
        return False
    return hasattr(value, "__len__") or hasattr(value, "__array_ufunc__") or hasattr(value, "__array__")


def is_container(value: Any) -> bool:
    """Whether a value takes ufuncs in its own way."""
    if isinstance(value, np.ndarray):
        return isinstance(value, np.ma.MaskedArray)
    return getattr(value, "__array_ufunc__", None) is not None


def column(name: str, value: Any) -> NDArray[np.float64]:
    """What was given as an array of numbers; None is missing."""
    array = np.asarray(value)
    if array.dtype == np.float64 and array.flags.c_contiguous and array.flags.aligned and array.dtype.isnative:
        return array
    try:
        texts = array.dtype.kind == "O" and any(isinstance(v, (str, bytes, bool, np.bool_)) for v in array.flat)
        if array.dtype.kind in "iufO" and not texts:
            return np.array(array, dtype=np.float64, order="C")
    except (TypeError, ValueError, OverflowError):
        pass
    _carb.request({name: ()})  # The core's words for a value of the wrong type.
    raise TypeError(name)


_DOUBLE = np.dtype(np.float64)
_PLAIN = frozenset((float, int, str, bool, type(None)))


def doubles(name: str, container: Any) -> Any:
    """A container of numbers as one of doubles; what it holds is judged as what a list holds."""
    dtype = getattr(container, "dtype", None)
    kind = getattr(dtype, "kind", "f")
    if kind == "O":
        column(name, np.asarray(container, dtype=object))
    elif kind not in "iuf":
        _carb.request({name: ()})  # The core's words for a value of the wrong type.
    elif dtype is None or getattr(dtype, "itemsize", 0) == _DOUBLE.itemsize and kind == "f":
        return container
    # A container whose numbers may be missing keeps that.
    return container.astype(_DOUBLE if isinstance(dtype, np.dtype) else "Float64")


def run(kind: type[Result[Any]], given: dict[str, Any], warn: bool = True) -> Result[Any]:
    """Answers where something else than numbers and texts may be given."""
    errors, registry = given.get("errors", "raise"), None
    if errors not in ("raise", "nan"):
        raise CarbError('errors should be "raise" or "nan"', CODES["UNKNOWN_CHOICE"], "errors")
    rest: dict[str, Any] = {}
    arrays: dict[str, Any] = {}
    containers = False
    for name, value in given.items():
        kept = rest
        if type(value) is np.ndarray and value.dtype is _DOUBLE and value.ndim and value.flags.carray:
            kept = arrays  # As most arrays are.
        elif type(value) not in _PLAIN:
            if is_quantity(value):
                registry = value._REGISTRY
                name, value = plain(name, value)
            if name not in LISTS and varies(value):
                kept = arrays
                if is_container(value):
                    value, containers = doubles(name, value), True
                else:
                    value = column(name, value)
        if name in rest or name in arrays:
            raise CarbError(f"{name} was given twice", CODES["GIVEN_TWICE"], name)
        if name != "errors":
            kept[name] = value
    if not containers and not any(array.shape for array in arrays.values()):
        found: _carb.Record | Elements
        found = _carb.answer(kind.function, {**rest, **{name: float(array) for name, array in arrays.items()}})
    else:
        found = (Containers if containers else Elements)(kind, _carb.request(rest, False), arrays)
        found.tell(errors == "raise", warn)
    return kind(found if registry is None else Measured(kind.function, found, registry, given))


def _outside() -> int:
    """How many frames lie between the warning and the caller of the library."""
    level, frame = 1, sys._getframe(1)
    while frame.f_back is not None and frame.f_globals.get("__package__") == __package__:
        level, frame = level + 1, frame.f_back
    return level
