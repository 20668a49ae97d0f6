"""Context that several calls share."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from copy import deepcopy
from functools import cache, partial, update_wrapper
from typing import Any, TypeVar

from . import _carb, _functions
from ._lists import asked
from ._plan import Plan, plan
from ._result import Frozen, request_text

B = TypeVar("B", bound="Bound")


@cache
def _tables() -> dict[str, Any]:
    found: dict[str, Any] = json.loads(_carb.tables())
    return found


@cache
def _fields() -> list[dict[str, Any]]:
    """Every input of the library once."""
    kinds = (*_tables()["functions"], *_tables()["tables"], *_tables()["jobs"])
    entries = [*_tables()["plan"], *(entry for kind in kinds for entry in kind["inputs"])]
    return list({entry["names"][0]: {"names": entry["names"]} for entry in entries}.values())


def _replaced(entries: list[dict[str, Any]], said: set[str]) -> set[str]:
    """Names that are replaced by what is said: the same quantity in another unit, or what excludes it."""
    groups: dict[str, set[str]] = {}
    for entry in entries:
        names = entry["names"]
        # The air outside is told once, whether a function has to know it or not.
        air = AIR if names[0].startswith(("altitude_", "ambient_")) else None
        groups.setdefault(air or entry.get("one_of", names[0]), set()).update(names)
    return said.union(*(group for group in groups.values() if group & said))


AIR = "ambient"


class Bound(Frozen):
    """What several calls have in common; see ``carb.at``."""

    __slots__ = ("_context",)
    _context: dict[str, Any]

    def __init__(self, **context: Any) -> None:
        object.__setattr__(self, "_context", asked(context))

    def _with(
        self, entries: list[dict[str, Any]], lists: list[dict[str, Any]], given: Mapping[str, Any]
    ) -> dict[str, Any]:
        """What is given, and of the context what the function takes and the call does not replace."""
        names = {name for entry in [*entries, *lists] for name in entry.get("names", [entry.get("name")])}
        replaced = _replaced(entries, {name for name, value in given.items() if value is not None})
        return {**given, **{n: v for n, v in self._context.items() if n in names and n not in replaced}}

    @property
    def context(self) -> dict[str, Any]:
        """What the calls have in common, as it was given."""
        return deepcopy(self._context)

    def at(self: B, **given: Any) -> B:
        """The same context with more, or with something else in a place."""
        return type(self)(**self._with(_fields(), _tables()["lists"], given))

    def plan(self, request: Mapping[str, Any]) -> Plan:
        """Plans a packaging day; the request's own values come before the context's."""
        return plan(self._with(_tables()["plan"], _tables()["lists"], request))

    def __repr__(self) -> str:
        return f"carb.at({', '.join(f'{name}={value!r}' for name, value in self._context.items())})"

    def _repr_html_(self) -> str:
        from ._html import bound

        return bound(self._context)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Bound) and self._context == other._context

    def __hash__(self) -> int:
        return hash(request_text(self._context))

    def __reduce__(self) -> tuple[Any, ...]:
        return _made, (self._context,)


def _called(here: Bound, name: str, /, **given: Any) -> Any:
    entry = _functions.described(name)
    return _functions.made(name)(**here._with(entry["inputs"], entry.get("lists", []), given))


class function:
    """A function of the library as an attribute of a context."""

    def __set_name__(self, owner: type, name: str) -> None:
        self.name = name

    def __get__(self, here: Bound | None, owner: type | None = None) -> Callable[..., Any]:
        whole: Callable[..., Any] = _functions.made(self.name)
        if here is None:
            return whole
        # Not a function within this one: what is bound goes to other processes too.
        call = partial(_called, here, self.name)
        return update_wrapper(call, whole, updated=())


DOC = """All functions with a context that they share, such as altitude and drink; what a call gives replaces it.

Examples
--------
>>> import carb
>>> here = carb.at(altitude_m=240, beverage="beer")
>>> round(here.ambient_pressure().ambient_kpa, 1)
98.5
>>> here.keg_pressure(volumes=2.5, temperature_c=4) == carb.keg_pressure(
...     volumes=2.5, temperature_c=4, altitude_m=240, beverage="beer"
... )
True
"""


@cache
def context() -> type[Bound]:
    """The class of contexts, with all functions that are asked by names as members."""
    # What takes nothing has nothing to be bound to.
    names = sorted(_functions.FUNCTIONS | _functions.JOBS | _functions.asked_tables())
    members: dict[str, Any] = {"__slots__": (), "__doc__": DOC, "__module__": __package__}
    return type("At", (Bound,), {**members, **{name: function() for name in names}})


def _made(given: dict[str, Any]) -> Bound:
    return context()(**given)
