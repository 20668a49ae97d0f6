"""Context that several calls share."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import wraps
from typing import Any

from ._lists import asked
from ._plan import Plan, plan
from ._result import Frozen, request_text


class Bound(Frozen):
    """What several calls have in common, such as the altitude and the drink; see ``carb.at``."""

    __slots__ = ("_context",)
    _context: dict[str, Any]
    groups: tuple[frozenset[str], ...] = ()
    """Names of which one replaces the others: a quantity in its units, or quantities that exclude each other."""
    plan_names: frozenset[str] = frozenset()
    """The names that a plan takes."""

    def __init__(self, **context: Any) -> None:
        object.__setattr__(self, "_context", asked(context))

    def _with(self, names: frozenset[str], given: Mapping[str, Any]) -> dict[str, Any]:
        """What is given, and of the context what the function takes and the call does not replace."""
        said = {name for name, value in given.items() if value is not None}
        replaced = said.union(*(group for group in self.groups if group & said))
        return {**given, **{n: v for n, v in self._context.items() if n in names and n not in replaced}}

    def plan(self, request: Mapping[str, Any]) -> Plan:
        """Plans a packaging day; the request's own values come before the context's."""
        return plan(self._with(self.plan_names, request))

    def __repr__(self) -> str:
        return f"carb.at({', '.join(f'{name}={value!r}' for name, value in self._context.items())})"

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Bound) and self._context == other._context

    def __hash__(self) -> int:
        return hash(request_text(self._context))

    def __reduce__(self) -> tuple[Any, ...]:
        return _made, (type(self), self._context)


def _made(kind: type[Bound], context: dict[str, Any]) -> Bound:
    return kind(**context)


class bound:
    """A function of the library as an attribute of a context."""

    def __init__(self, function: Callable[..., Any]) -> None:
        self.function = function
        self.names = frozenset(function.__wrapped__.__kwdefaults__)  # type: ignore[attr-defined]

    def __get__(self, here: Bound | None, owner: type | None = None) -> Callable[..., Any]:
        if here is None:
            return self.function

        @wraps(self.function)
        def call(**given: Any) -> Any:
            return self.function(**here._with(self.names, given))

        return call
