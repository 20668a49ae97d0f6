"""What is raised and what is warned of."""

from __future__ import annotations

from typing import ClassVar


class CarbError(ValueError):
    """There is no answer; the text says why, and what to do.

    Attributes
    ----------
    code : int
        Which error; stable, the same in every language. ``carb.CODES`` has the names.
    parameter : str
        The parameter at fault, under the name that was used.
    value, low, high : float or None
        The value at fault and the limits, in the parameter's unit, where there are any.
    index : tuple of int or None
        The element at fault, where arrays were given.
    """

    def __init__(
        self,
        text: str,
        code: int = 0,
        parameter: str = "",
        value: float | None = None,
        low: float | None = None,
        high: float | None = None,
        index: tuple[int, ...] | None = None,
    ) -> None:
        super().__init__(text)
        self.code = code
        self.parameter = parameter
        self.value = value
        self.low = low
        self.high = high
        self.index = index


class CarbWarning(UserWarning):
    """Something is to be minded of some elements of an array; there is a subclass for each caution code."""

    code: ClassVar[str] = ""
