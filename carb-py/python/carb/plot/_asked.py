"""What a picture was asked for."""

from __future__ import annotations

import warnings
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from typing import Any, TypeAlias

import carb
from carb import At, CarbWarning, Result

Here: TypeAlias = "At | Result[Any] | None"
"""Where names come from that are not given: a context, or a result, whose request is meant."""


def told(here: Here, given: Mapping[str, Any]) -> At:
    """All that was said: what is given comes before what ``here`` holds."""
    if here is None:
        here = carb.at()
    elif isinstance(here, Result):
        if any(hasattr(value, "shape") for value in here.request.values()):
            raise TypeError("a picture shows one answer: take one element, such as result[0]")
        here = carb.at(**here.request)
    elif not isinstance(here, At):
        raise TypeError(f"give a context (carb.at), a result of the library, or names; not {type(here).__name__}")
    return here.at(**given)


def names(said: At) -> dict[str, Any]:
    """The names and values of all that was said."""
    return said.context


@contextmanager
def written() -> Iterator[None]:
    """Without warnings of arrays: what they warn of is written on the picture."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", CarbWarning)
        yield
