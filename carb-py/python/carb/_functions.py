"""The functions of the library and their result classes, made from what the core says of them when first asked for."""

from __future__ import annotations

import json
import types
from collections.abc import Callable
from functools import cache
from inspect import Parameter, Signature
from threading import RLock
from typing import Any, TypeVar

from . import _carb, _docs
from ._docs import Entry, camel

FUNCTIONS, TABLES, JOBS = (frozenset(names) for names in _carb.names())
T = TypeVar("T")


@cache
def described(name: str) -> Entry:
    """What the core says of a function, a table or a job."""
    found: Entry = json.loads(_carb.described(name))
    return found


_making = RLock()


def made(name: str) -> Any:
    """The function or the class of this name, made once; None where there is none."""
    with _making:
        return _made(name)


@cache
def _made(name: str) -> Any:
    if name in FUNCTIONS:
        return _function(described(name))
    if name in TABLES:
        return _table(described(name))
    if name in JOBS:
        return _job(described(name))
    for function in FUNCTIONS:
        kind = camel(function)
        if name == kind:
            return _result(described(function))
        if name.startswith(kind) and name[len(kind) :] in map(camel, nouns(described(function))):
            return _part(described(function), name)
    return None


def public() -> list[str]:
    """The names of all that is made here."""
    kinds = [camel(name) + camel(noun) for name in FUNCTIONS for noun in ("", *nouns(described(name)))]
    return sorted([*FUNCTIONS, *TABLES, *JOBS, *kinds])


def asked_tables() -> frozenset[str]:
    """The tables that are asked something."""
    return frozenset(name for name in TABLES if _docs.takes(described(name)))


def nouns(function: Entry) -> list[str]:
    """The nouns of the outputs of a function."""
    return list(dict.fromkeys(out["noun"] for out in function["outputs"] if out["noun"]))


def _named(call: Callable[..., Any], entry: Entry, doc: str, more: dict[str, Any], gives: str) -> Callable[..., Any]:
    """Gives a function its name, docstring and signature."""
    names = [name for known in entry["inputs"] for name in known["names"]] + [
        rows["name"] for rows in entry.get("lists", ())
    ]
    taken = {**dict.fromkeys(names), **more}
    signed = [Parameter(name, Parameter.KEYWORD_ONLY, default=default) for name, default in taken.items()]
    signed.append(Parameter("unknown", Parameter.VAR_KEYWORD, annotation=Any))
    call.__name__ = call.__qualname__ = entry["name"]
    call.__module__ = __package__ or ""
    call.__doc__ = doc
    call.__signature__ = Signature(signed, return_annotation=gives)  # type: ignore[attr-defined]
    return call


def _function(entry: Entry) -> Callable[..., Any]:
    from ._arrays import run

    answer = _carb.Call(entry["name"], made(camel(entry["name"])), run).answer

    def call(**given: Any) -> Any:
        return answer(given)

    return _named(call, entry, _docs.function_doc(entry), {"errors": "raise"}, camel(entry["name"]))


def _table(entry: Entry) -> Callable[..., Any]:
    from ._table import Table

    def call(**given: Any) -> Any:
        return Table(entry["name"], given)

    return _named(call, entry, _docs.table_doc(entry), {}, "Table")


def _job(entry: Entry) -> Callable[..., Any]:
    from . import _plan

    kind = getattr(_plan, camel(entry["name"]))

    def call(**given: Any) -> Any:
        return kind(_plan.job_text(given))

    return _named(call, entry, _docs.job_doc(entry), {"uncertainty": None}, camel(entry["name"]))


def _class(name: str, base: Any, members: dict[str, Any]) -> Any:
    members = {"__slots__": (), "__module__": __package__, **members}
    return types.new_class(name, (base,), exec_body=lambda namespace: namespace.update(members))


def _quantities(outputs: list[Entry]) -> tuple[str, ...]:
    """Each quantity of the outputs once, in its first unit."""
    first = {(out["noun"], out["meaning"]): _docs.full(out) for out in reversed(outputs)}
    return tuple(reversed(first.values()))


def _result(entry: Entry) -> Any:
    from ._result import Result, part, whole_output

    outputs, name = entry["outputs"], camel(entry["name"])
    members: dict[str, Any] = {
        noun: part(made(name + camel(noun)), noun, f"{noun.capitalize().replace('_', ' ')}.") for noun in nouns(entry)
    }
    members |= {out["name"]: whole_output(out["name"], _docs.output_doc(out)) for out in outputs if not out["noun"]}
    worst = next((_docs.full(out) for out in outputs if out["noun"] == "worst"), None)
    told = {
        "__doc__": entry["summary"],
        "function": entry["name"],
        "outputs": tuple(map(_docs.full, outputs)),
        "shown": tuple(_docs.full(out) for out in outputs if out["shown"]),
        "_worst": worst,
        "_told": (worst,) if worst else _quantities(outputs),
    }
    return _class(name, Result[T], {**members, **told})  # type: ignore[valid-type]


def _part(entry: Entry, name: str) -> Any:
    from ._result import Part, output

    kind = camel(entry["name"])
    noun = next(noun for noun in nouns(entry) if kind + camel(noun) == name)
    mine = [out for out in entry["outputs"] if out["noun"] == noun]
    members: dict[str, Any] = {out["name"]: output(out["name"], _docs.output_doc(out)) for out in mine}
    told = {
        "__doc__": f"The outputs of {kind} that are {noun.replace('_', ' ')}.",
        "shown": tuple(out["name"] for out in mine if out["shown"]),
    }
    return _class(name, Part[T], {**members, **told})  # type: ignore[valid-type]
