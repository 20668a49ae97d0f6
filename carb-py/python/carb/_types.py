"""Types that are only looked at by type checkers."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, Literal, Protocol, TypeAlias

from numpy.typing import NDArray


class Array(Protocol):
    """What NumPy makes an array of: its own arrays, a column of a data frame, ..."""

    def __array__(self, *args: Any, **kwargs: Any) -> Any: ...


class Named(Protocol):
    """A container that has a name, as an array of NumPy has not."""

    @property
    def name(self) -> Any: ...

    def __array__(self, *args: Any, **kwargs: Any) -> Any: ...


class Quantity(Protocol):
    """A value with a unit."""

    @property
    def magnitude(self) -> Any: ...


class Frame(Protocol):
    """A data frame that gives its rows as dictionaries."""

    def to_dict(self, orient: Literal["records"], /) -> Any: ...


Rows: TypeAlias = "Sequence[Mapping[str, Any]] | Mapping[str, Sequence[Any] | Array] | Frame"
"""A list of a request: rows of names and values, columns by name, or a data frame."""

Several: TypeAlias = "Sequence[float] | Sequence[Sequence[float]] | NDArray[Any]"
"""Numbers of which an array of NumPy is made."""

Numbers: TypeAlias = "float | Several"
"""Numbers for which an array of NumPy is given."""

Container: TypeAlias = "float | Sequence[float] | Named | Quantity"
"""What else holds numbers, and gets back what it is itself: a Series, a DataArray, a Dask array, a quantity."""

Doubt: TypeAlias = "float | str | Mapping[str, float] | tuple[str, float] | None"
"""How far a value may lie from what was given: a half width, an even one, or the name of a usual instrument."""
