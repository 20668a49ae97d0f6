"""Answers for arrays, element by element."""

from __future__ import annotations

import sys
import warnings
from typing import Any

import numpy as np
from numpy.typing import NDArray

from . import _carb
from ._errors import CarbError, CarbWarning
from ._lists import LISTS, asked
from ._result import CODES, Caution, Result


class Elements:
    """The answers for the elements of arrays. An output is worked out when it is first asked for."""

    def __init__(self, kind: type[Result[Any]], given: dict[str, Any], arrays: dict[str, NDArray[np.float64]]) -> None:
        self.kind = kind
        self.given = given
        self.arrays = arrays
        self.shape = np.broadcast_shapes(*(array.shape for array in arrays.values()))
        self.cautions: tuple[Caution, ...] = ()
        self._values: dict[str, NDArray[np.float64]] = {}
        self._columns = {name: self._column(array) for name, array in arrays.items()}
        self._count = int(np.prod(self.shape))
        self.status = self._run(kind.outputs[0])
        self.whole = self.status.min(initial=0) == 0
        """Whether every element has an answer."""

    def _column(self, array: NDArray[np.float64]) -> NDArray[np.float64]:
        """One number for all elements, or one for each."""
        return array.ravel() if array.size == 1 else np.broadcast_to(array, self.shape).ravel()

    def _run(self, name: str) -> NDArray[np.int32]:
        values, status = _carb.each(self.kind.function, self.given, self._columns, self._count, name)
        self._values[name] = values.reshape(self.shape)
        self._values[name].flags.writeable = status.flags.writeable = False
        return status.reshape(self.shape)

    def value(self, name: str) -> NDArray[np.float64]:
        if name not in self._values:
            self._run(name)
        return self._values[name]

    @property
    def request(self) -> dict[str, Any]:
        return {**self.given, **self.arrays}

    def element(self, index: Any) -> dict[str, Any]:
        """The request for one element."""
        picked = {name: np.broadcast_to(array, self.shape)[index] for name, array in self.arrays.items()}
        return {**self.given, **picked}

    def first(self, where: NDArray[np.bool_]) -> tuple[int, ...]:
        """The index of the first element that is meant."""
        return tuple(int(axis[0]) for axis in np.nonzero(where))

    def refuse(self) -> None:
        """Raises the error of the first element that has one; a missing value is none."""
        if self.whole:
            return
        # NaN is a missing value; an infinity is a wrong one, though both have the status of what is no number.
        infinite = np.zeros(self.shape, dtype=bool)
        for array in self.arrays.values():
            infinite |= np.isinf(array)
        wrong = (self.status < 0) & (infinite | (self.status != CODES["NOT_A_NUMBER"]))
        if not wrong.any():
            return
        index = self.first(wrong)
        try:
            _carb.answer(self.kind.function, self.element(index))
        except CarbError as error:
            text = f"{error} (element {', '.join(map(str, index))})"
            found = CarbError(text, error.code, error.parameter, error.value, error.low, error.high, index)
        else:
            found = CarbError(f"element {index} has no answer", int(self.status[index]), index=index)
        raise found

    def caution(self) -> None:
        """Gathers the cautions, one for each code, in the words of the first element that it concerns."""
        found = []
        bits = self.status if self.whole else np.where(self.status > 0, self.status, 0)
        seen = int(np.bitwise_or.reduce(bits, axis=None))
        for code, _, bit in _carb.caution_codes() if seen else ():
            if bit is not None and seen >> bit & 1:
                outside = (bits >> bit & 1).astype(bool)
                one = self.kind(_carb.answer(self.kind.function, self.element(self.first(outside))))
                said = next(caution for caution in one.cautions if caution.code == code)
                count = np.count_nonzero(outside)
                found.append(said._replace(text=f"{count} of {self._count} elements: {said.text}"))
        self.cautions = tuple(self._of_the_worst() + found)

    def _of_the_worst(self) -> list[Caution]:
        """What is to be minded of the element with the highest worst pressure, beyond the ranges: it may be a danger."""
        worst = next((name for name in self.kind.outputs if name.startswith("worst_")), None)
        if worst is None or not (self.status >= 0).any():
            return []
        values = np.where(self.status >= 0, self.value(worst), -np.inf)
        index = np.unravel_index(int(np.argmax(values)), self.shape)
        one = self.kind(_carb.answer(self.kind.function, self.element(index)))
        place = ", ".join(map(str, map(int, index)))
        ranges = {code for code, _, bit in _carb.caution_codes() if bit is not None}
        return [
            said._replace(text=f"element {place}, the worst: {said.text}")
            for said in one.cautions
            if said.code not in ranges
        ]


def column(name: str, value: Any) -> NDArray[np.float64]:
    """What was given as an array; what is masked or None is missing."""
    if isinstance(value, np.ma.MaskedArray):
        value = np.ma.filled(value.astype(np.float64), np.nan)
    array = np.asarray(value)
    try:
        texts = array.dtype.kind == "O" and any(isinstance(v, (str, bytes, bool, np.bool_)) for v in array.flat)
        if array.dtype.kind in "iufO" and not texts:
            # A copy that nobody changes: the result stays what it is.
            copy = np.array(array, dtype=np.float64)
            copy.flags.writeable = False
            return copy
    except (TypeError, ValueError, OverflowError):
        pass
    _carb.request({name: ()})  # The core's words for a value of the wrong type.
    raise TypeError(name)


def varies(value: Any) -> bool:
    """Whether a value may be an array."""
    return hasattr(value, "__len__") and not isinstance(value, str)


def answer(kind: type[Result[Any]], given: dict[str, Any], refuse: bool, warn: bool) -> _carb.Record | Elements:
    """Answers where something may be an array."""
    plain = {n: v for n, v in given.items() if v is not None and (not varies(v) or n in LISTS)}
    arrays = {n: column(n, v) for n, v in given.items() if v is not None and n not in plain}
    if all(array.shape == () for array in arrays.values()):
        return _carb.answer(kind.function, {n: float(arrays[n]) if n in arrays else v for n, v in given.items()})
    found = Elements(kind, asked(plain, lists=False), arrays)
    if refuse:
        found.refuse()
    found.caution()
    kinds = {warning.code: warning for warning in CarbWarning.__subclasses__()}
    for caution in found.cautions if warn else ():
        if caution.level != "note":
            warnings.warn(kinds[caution.code](caution.text), stacklevel=_outside())
    return found


def _outside() -> int:
    """How many frames lie between the warning and the caller of the library."""
    level, frame = 1, sys._getframe(1)
    while frame.f_back is not None and frame.f_globals.get("__package__") == __package__:
        level, frame = level + 1, frame.f_back
    return level
