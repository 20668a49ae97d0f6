"""What is raised and what is warned of."""

from __future__ import annotations

from typing import Any, ClassVar, NoReturn

from . import _carb

OPEN = {"low": float("-inf"), "high": float("inf")}
"""What a limit is on an open side; JSON has no infinity and says null."""


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
    list, row : str and int, or None
        The list and the row at fault, the first row being 1, where a row of a list is.
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
        list: str | None = None,
        row: int | None = None,
    ) -> None:
        super().__init__(text)
        self.code = code
        self.parameter = parameter
        self.value = value
        self.low = low
        self.high = high
        self.index = index
        self.list = list
        self.row = row


class CarbWarning(UserWarning):
    """Something is to be minded of some elements of an array; there is a subclass for each caution code."""

    code: ClassVar[str] = ""


def _warnings() -> dict[str, type[CarbWarning]]:
    kinds = {}
    for code, level, bit in _carb.caution_codes():
        # A note that is no range is said of no array.
        if bit is not None or level != "note":
            name = "".join(word.capitalize() for word in code.split("_")) + "Warning"
            told = {"__doc__": f"Elements with the caution ``{code}``.", "__module__": __package__, "code": code}
            kinds[name] = type(name, (CarbWarning,), told)
    return kinds


WARNINGS = _warnings()
"""The class for each caution code, by its name."""


def refuse(error: dict[str, Any]) -> NoReturn:
    """Raises what an error object says, as the core raises it elsewhere."""
    low, high = (OPEN[end] if end in error and error[end] is None else error.get(end) for end in OPEN)
    place = {"list": error.get("list"), "row": error.get("row")}
    raise CarbError(error["text"], error["code"], error["parameter"], error.get("value"), low, high, **place)


def answered(text: str) -> dict[str, Any]:
    """An answer in JSON, read; raises where it is that there is none."""
    import json

    whole: dict[str, Any] = json.loads(text)
    if "error" in whole:
        refuse(whole["error"])
    return whole
