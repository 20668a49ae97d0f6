"""Context that several calls share."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from functools import lru_cache, wraps
from typing import Any

from . import _carb, _functions
from ._lists import asked
from ._plan import Plan, plan
from ._result import Frozen, request_text


@lru_cache(maxsize=None)
def _known() -> tuple[list[frozenset[str]], frozenset[str]]:
    """Names of which one replaces the others (a quantity in its units, or quantities that exclude each other), and the
    names that a plan takes."""
    tables = json.loads(_carb.tables())
    asked = [entry["inputs"] for entry in [*tables["functions"], *tables["tables"], *tables["jobs"]]]
    groups = set()
    for entries in [*asked, tables["plan"]]:
        mine: dict[str, list[str]] = {}
        for entry in entries:
            mine.setdefault(entry.get("one_of", entry["names"][0]), []).extend(entry["names"])
        groups |= {frozenset(names) for names in mine.values()}
    lists = (rows["name"] for rows in tables["lists"])
    return [group for group in groups if len(group) > 1], frozenset(name for e in tables["plan"] for name in e["names"]).union(lists)


class Bound(Frozen):
    """What several calls have in common; see ``carb.at``."""

    __slots__ = ("_context",)
    _context: dict[str, Any]

    def __init__(self, **context: Any) -> None:
        object.__setattr__(self, "_context", asked(context))

    def _with(self, names: frozenset[str], given: Mapping[str, Any]) -> dict[str, Any]:
        """What is given, and of the context what the function takes and the call does not replace."""
        groups, _ = _known()
        said = {name for name, value in given.items() if value is not None}
        replaced = said.union(*(group for group in groups if group & said))
        return {**given, **{n: v for n, v in self._context.items() if n in names and n not in replaced}}

    def plan(self, request: Mapping[str, Any]) -> Plan:
        """Plans a packaging day; the request's own values come before the context's."""
        return plan(self._with(_known()[1], request))

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


class function:
    """A function of the library as an attribute of a context."""

    def __set_name__(self, owner: type, name: str) -> None:
        self.name = name

    def __get__(self, here: Bound | None, owner: type | None = None) -> Callable[..., Any]:
        whole: Callable[..., Any] = _functions.made(self.name)
        if here is None:
            return whole
        entry = _functions.described(self.name)
        names = frozenset(name for known in entry["inputs"] for name in known["names"])
        names = names.union(rows["name"] for rows in entry.get("lists", ()))

        @wraps(whole)
        def call(**given: Any) -> Any:
            return whole(**here._with(names, given))

        return call


class At(Bound):
    """All functions with a context that they share, such as the altitude and the drink; what a call gives replaces it.

    Examples
    --------
    >>> import carb
    >>> here = carb.at(altitude_m=240, beverage="beer")
    >>> round(here.ambient_pressure().ambient_kpa, 2)
    98.47
    >>> here.keg_pressure(volumes=2.5, temperature_c=4) == carb.keg_pressure(
    ...     volumes=2.5, temperature_c=4, altitude_m=240, beverage="beer"
    ... )
    True
    """

    __slots__ = ()

    # What takes nothing has nothing to be bound to.
    for _name in sorted(_functions.FUNCTIONS | _functions.JOBS | _functions.asked_tables()):
        locals()[_name] = function()
    del _name


at = At


def _made(context: dict[str, Any]) -> At:
    return At(**context)
