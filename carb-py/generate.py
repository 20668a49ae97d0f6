"""Writes python/carb/__init__.pyi from the tables of the core.

Run it with the built package installed: ``python generate.py``. The tests compare what it writes with what is there.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from carb import _carb, _docs
from carb._docs import camel, quoted, takes
from carb._errors import WARNINGS
from carb._functions import nouns

Entry = dict[str, Any]
KNOWN: Entry = json.loads(_carb.tables())
FUNCTIONS: list[Entry] = KNOWN["functions"]
TABLES: list[Entry] = KNOWN["tables"]
JOBS: list[Entry] = KNOWN["jobs"]
ASKED_TABLES = [table for table in TABLES if takes(table)]
"""The other tables take nothing, so there is nothing to bind them to."""
PACKAGE = Path(__file__).parent / "python" / "carb"
HEAD = """# Written by generate.py from the tables of the core; a test compares.

from collections.abc import Mapping
from typing import Any, Generic, Literal, TypedDict, TypeVar, overload

import numpy as np
from numpy.typing import NDArray
from typing_extensions import Unpack

from . import ufunc as ufunc
from ._at import Bound
from ._carb import __version__ as __version__
from ._claims import read_claims as read_claims
from ._convert import convert as convert
from ._crosscheck import Crosscheck as Crosscheck
from ._crosscheck import crosscheck as crosscheck
from ._errors import CarbError as CarbError
from ._errors import CarbWarning as CarbWarning
from ._plan import Bottling as Bottling
from ._plan import Kegging as Kegging
from ._plan import Plan as Plan
from ._plan import plan as plan
from ._result import CODES as CODES
from ._result import Caution as Caution
from ._result import Part as Part
from ._result import Result as Result
from ._result import Source as Source
from ._result import View as View
from ._table import Table as Table
from ._types import Container, Doubt, Numbers, Rows
from ._uncertainty import Estimate as Estimate
from ._uncertainty import Uncertainty as Uncertainty

_T = TypeVar("_T")
_N = TypeVar("_N")
"""


def literal(choices: list[str]) -> str:
    return f"Literal[{', '.join(map(quoted, choices))}]"


def hint(entry: Entry, number: str) -> str:
    """The type of an input; `number` for what may be an array."""
    if "choices" in entry:
        return literal(entry["choices"])
    if "low" not in entry:
        return "str" if entry["names"] == ["title"] else "bool"
    return number if entry["array"] else "float"


def names_of(entry: Entry, number: str) -> dict[str, str]:
    """The names that a function, a table or a job takes, with their types."""
    inputs = {name: hint(e, number) for e in entry["inputs"] for name in e["names"]}
    doubts = {"uncertainty": "Mapping[str, Doubt]"} if entry in JOBS else {}
    return inputs | {rows["name"]: "Rows" for rows in entry.get("lists", ())} | doubts


def indented(text: str) -> str:
    return "\n".join(f"    {line}" if line else "" for line in text.splitlines())


def documented(doc: str) -> list[str]:
    """A docstring below a definition."""
    escaped = doc.replace("\\", "\\\\")
    return [indented(f'"""{escaped.rstrip()}\n"""')]


def result_classes(function: Entry) -> list[str]:
    """A class for the result and for each noun in it."""
    name, lines = camel(function["name"]), []

    def members(noun: str) -> list[str]:
        mine = [out for out in function["outputs"] if out["noun"] == noun]
        return [
            line
            for out in mine
            for line in (
                "    @property",
                f"    def {out['name']}(self) -> _T:",
                f'        """{_docs.output_doc(out)}"""',
            )
        ]

    for noun in nouns(function):
        lines += [f"class {name}{camel(noun)}(Part[_T]):", *members(noun), ""]
    lines += [f"class {name}(Result[_T]):", f'    """{function["summary"]}"""', ""]
    for noun in nouns(function):
        lines += ["    @property", f"    def {noun}(self) -> {name}{camel(noun)}[_T]: ..."]
    return [*lines, *members(""), ""]


def exports() -> list[str]:
    import carb

    return carb.__all__


def stub() -> str:
    lines = [HEAD, "__all__ = [", *(f"    {quoted(name)}," for name in exports()), "]", ""]
    lines += [f"class {name}(CarbWarning): ..." for name in WARNINGS]
    lines += [""]
    for f in FUNCTIONS:
        lines += result_classes(f)
        lines += [f"class _{camel(f['name'])}Inputs(TypedDict, Generic[_N], total=False):"]
        for entry in f["inputs"]:
            lines += [f"    {name}: {hint(entry, '_N')} | None" for name in entry["names"]]
        lines += ['    errors: Literal["raise", "nan"]', "", *overloads(f, ""), ""]
    for t in [*ASKED_TABLES, *JOBS]:
        lines += [f"class _{camel(t['name'])}Inputs(TypedDict, total=False):"]
        lines += [f"    {name}: {kind} | None" for name, kind in names_of(t, "float").items()]
        lines += [""]
    for t in TABLES:
        lines += [plain_stub(t, ""), *documented(_docs.table_doc(t)), ""]
    for j in JOBS:
        lines += [plain_stub(j, ""), *documented(_docs.job_doc(j)), ""]
    asked = [*FUNCTIONS, *ASKED_TABLES, *JOBS]
    every = {name: kind for f in asked for name, kind in names_of(f, "float").items() if name != "uncertainty"}
    every |= {name: hint(e, "float") for e in KNOWN["plan"] for name in e["names"]}
    lines += [
        "class At(Bound):",
        '    """All functions with a context that they share."""',
        "",
        "    def __init__(",
        "        self,",
    ]
    lines += [
        "        *,",
        *(f"        {name}: {kind} | None = None," for name, kind in every.items()),
        "    ) -> None: ...",
    ]
    lines += [line for f in FUNCTIONS for line in overloads(f, "self, ")]
    lines += [f"    {plain_stub(t, 'self, ')} ..." for t in [*ASKED_TABLES, *JOBS]]
    lines += ["", "at = At"]
    return "\n".join(lines) + "\n"


def overloads(function: Entry, self: str) -> list[str]:
    """Numbers give numbers, arrays of NumPy and sequences arrays; what containers give, is theirs."""
    name, kind, pad = function["name"], camel(function["name"]), "    " if self else ""
    kinds = {"float": "float", "Numbers": "NDArray[np.float64]", "Container": "Any"}
    lines = []
    for given, gives in kinds.items():
        signature = f"{pad}def {name}({self}**given: Unpack[_{kind}Inputs[{given}]]) -> {kind}[{gives}]:"
        doc = documented(_docs.function_doc(function)) if given == "float" and not self else None
        lines += [f"{pad}@overload", *([signature, *doc] if doc else [f"{signature} ..."])]
    return lines


def plain_stub(entry: Entry, self: str) -> str:
    """A table or a job, which takes no arrays."""
    given = f"**given: Unpack[_{camel(entry['name'])}Inputs]" if entry in JOBS or takes(entry) else ""
    kind = "Table" if "columns" in entry else camel(entry["name"])
    return f"def {entry['name']}({self}{given}) -> {kind}:"


UFUNC_HEAD = """# Written by generate.py from the tables of the core; a test compares.

from typing import Any

import numpy as np

def of(
    function: str, /, *operands: str, gives: str | None = None, status: bool = False, **given: Any
) -> np.ufunc: ...
def made(function: str, /, *operands: str, gives: str, status: bool = False, **given: Any) -> np.ufunc: ...

"""


def ufuncs() -> str:
    names = [name for f in FUNCTIONS for name in (f["name"], f"{f['name']}_status")]
    return UFUNC_HEAD + "".join(f"{name}: np.ufunc\n" for name in sorted(names))


def texts() -> dict[Path, str]:
    """What belongs into each file."""
    return {PACKAGE / "__init__.pyi": stub(), PACKAGE / "ufunc.pyi": ufuncs()}


if __name__ == "__main__":
    for path, text in texts().items():
        path.write_text(text, encoding="utf-8")
