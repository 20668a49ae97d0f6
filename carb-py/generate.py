"""Writes python/carb/_generated.py and _generated.pyi from the tables of the core.

Run it with the built package installed: ``python generate.py``. The tests compare what it writes with what is there.
"""

from __future__ import annotations

import importlib.util
import json
import textwrap
from itertools import groupby
from pathlib import Path
from types import ModuleType
from typing import Any


def native() -> ModuleType:
    """The native module by itself, so that this runs whatever state the written files are in."""
    package = importlib.util.find_spec("carb")
    assert package is not None and package.submodule_search_locations
    places = [Path(place) for place in package.submodule_search_locations]
    path = next(path for place in places for path in place.glob("_carb*") if path.suffix in (".so", ".pyd"))
    spec = importlib.util.spec_from_file_location("_carb", path)
    assert spec is not None and spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


_carb = native()
Entry = dict[str, Any]
KNOWN: Entry = json.loads(_carb.tables())
FUNCTIONS: list[Entry] = KNOWN["functions"]
TABLES: list[Entry] = KNOWN["tables"]
LISTS: list[Entry] = KNOWN["lists"]
ASKED_TABLES = [table for table in TABLES if table["inputs"] or table["lists"]]
"""The other tables take nothing, so there is nothing to bind them to."""
BOTTLING: Entry = {
    "name": "bottling",
    "summary": "Bottle a batch: is it finished, what primes it, which bottles to fill, do they hold, when is it ready.",
    "inputs": KNOWN["bottling"],
    "lists": KNOWN["bottling_lists"],
    "example": json.dumps(
        {
            "packaged_l": 19.2,
            "volumes": 2.4,
            "warmest_c": 20.5,
            "altitude_m": 240,
            "bottles": [{"bottle_ml": 500, "count": 24}, {"bottle_ml": 330, "count": 30}],
        }
    ),
    "shown": ["priming.mass_g", "bottles[0].filled_count"],
}
KEGGING: Entry = {
    "name": "kegging",
    "summary": "Keg a batch: what pressure for how long, how it is purged, how much gas, which line, what a hot day does.",
    "inputs": KNOWN["kegging"],
    "lists": KNOWN["kegging_lists"],
    "example": json.dumps(
        {"packaged_l": 18.9, "volumes": 2.5, "warmest_c": 20, "serving_c": 4, "altitude_m": 0, "keg_rating_gauge_bar": 9}
    ),
    "shown": ["regulator.gauge_bar", "carbonating.expected.time_d"],
}
JOBS = [BOTTLING, KEGGING]
ASKED = [*FUNCTIONS, *ASKED_TABLES, *JOBS]
SCHEMA = Path(__file__).parents[1] / "docs" / "schema" / "carb-1.json"
ANSWERS: Entry = json.loads(SCHEMA.read_text(encoding="utf-8"))["$defs"]
PARTS = ("object", "array")
ROWS = "Rows"
WARNINGS = [code for code, level, bit in _carb.caution_codes() if bit is not None or level != "note"]
PACKAGE = Path(__file__).parent / "python" / "carb"
HEAD = '"""{}"""\n\n# Written by generate.py from the tables of the core; a test compares.\n\n'
DECORATED = "raise NotImplementedError  # The decorator answers."
EXAMPLES = ["    Examples", "    --------", "    >>> import carb"]


def camel(name: str) -> str:
    return "".join(word.capitalize() for word in name.split("_"))


def quoted(value: str | list[str]) -> str:
    """A text, or a tuple of texts, as Python."""
    if isinstance(value, str):
        return json.dumps(value, ensure_ascii=False)
    return f"({', '.join(map(quoted, value))}{',' if len(value) == 1 else ''})"


def spelled(value: Any) -> str:
    """What JSON gave, as Python."""
    if isinstance(value, list):
        return f"[{', '.join(map(spelled, value))}]"
    if isinstance(value, dict):
        return f"{{{', '.join(f'{quoted(name)}: {spelled(inner)}' for name, inner in value.items())}}}"
    return quoted(value) if isinstance(value, str) else repr(value)


def literal(choices: list[str]) -> str:
    return f"Literal[{', '.join(map(quoted, choices))}]"


def full(out: Entry) -> str:
    """The name of an output with its noun."""
    return "_".join(filter(None, (out["noun"], out["name"])))


def hint(entry: Entry, number: str) -> str:
    """The type of an input; `number` for what may be an array."""
    if "choices" in entry:
        return literal(entry["choices"])
    if "low" not in entry:
        return "str" if entry["names"] == ["title"] else "bool"
    return number if entry["array"] else "float"


def wrapped(text: str, indent: int) -> str:
    pad = " " * indent
    return textwrap.fill(text, 110, initial_indent=pad, subsequent_indent=pad, break_on_hyphens=False)


def meaning_of(entry: Entry) -> str:
    """An input in words: meaning, range, and what is taken where it is not given."""
    words: str = entry["meaning"]
    words = words[0].upper() + words[1:]
    if "low" in entry:
        words += f". From {entry['low']:g} to {entry['high']:g} in ``{entry['names'][0]}``"
    if entry.get("need"):
        words += ". Required"
    elif "one_of" in entry:
        words += f". Required: this, or another {entry['one_of']}"
    else:
        words += f". Default: {entry['default']}"
    return words + "."


def call_of(entry: Entry) -> str:
    """The call of the example of a function, a table or a job; a long one in several lines."""
    given = [f"{name}={spelled(value)}" for name, value in json.loads(entry["example"]).items()]
    call = f"carb.{entry['name']}({', '.join(given)})"
    if len(call) < 70:
        return call
    return "\n".join([f"carb.{entry['name']}(", *(f"    ...     {value}," for value in given), "    ... )"])


def value_of(function: Entry) -> tuple[str, str]:
    """The example of a function: a call and the value it gives."""
    given = json.loads(function["example"])
    first = next(out for out in function["outputs"] if out["shown"] and out["name"] not in given)
    value = _carb.answer(function["name"], given).value(full(first))
    path = ".".join(filter(None, (first["noun"], first["name"])))
    return f"{call_of(function)}.{path}", repr(value)


def rows_of(table: Entry) -> tuple[str, str]:
    """The example of a table: a call and the first column that says something, or the number of rows."""
    request = json.dumps({"carb": 1, **json.loads(table["example"])})
    rows = json.loads(_carb.json(table["name"], request))["rows"]
    if table not in ASKED_TABLES:
        return f"len({call_of(table)})", str(len(rows))
    texts = [column["name"] for column in table["columns"] if not column["unit"]]
    first = next((name for name in texts if any(row[name] for row in rows)), None)
    if first is None:
        return f"len({call_of(table)})", str(len(rows))
    return f"{call_of(table)}.column({quoted(first)})", repr(tuple(row[first] for row in rows))


def hanging(text: str, indent: int) -> str:
    """A text whose further lines are set in."""
    return wrapped(text, indent).replace(f"\n{' ' * indent}", f"\n{' ' * (indent + 2)}")


def names_of(entry: Entry, number: str) -> dict[str, str]:
    """The names that a function, a table or a job takes, with their types."""
    inputs = {name: hint(e, number) for e in entry["inputs"] for name in e["names"]}
    doubts = {"uncertainty": "Mapping[str, Doubt]"} if entry in JOBS else {}
    return inputs | {rows["name"]: ROWS for rows in entry.get("lists", ())} | doubts


def list_parameter(rows: Entry) -> list[str]:
    lines = [f"    {rows['name']} : sequence of mappings, optional"]
    lines += [wrapped(f"{rows['meaning'][0].upper()}{rows['meaning'][1:]}. A row has:", 8), ""]
    for column in rows["columns"]:
        names = ", ".join(f"``{name}``" for name in column["names"])
        if "choices" in column:
            names += f" ({', '.join(map(quoted, column['choices']))})"
        lines += [hanging(f"- {names}: {meaning_of(column)}", 8)]
    return [*lines, "", "        A data frame, or a mapping of columns, holds rows too."]


def parameters(entries: list[Entry], lists: list[Entry] | tuple[()] = ()) -> list[str]:
    lines = ["    Parameters", "    ----------"]
    for entry in entries:
        kind = {"bool": "bool", "str": "str", "float": "float", "Number": "float or array"}.get(hint(entry, "Number"))
        kind = kind or "{" + ", ".join(f'"{choice}"' for choice in entry["choices"]) + "}"
        lines += [wrapped(f"{', '.join(entry['names'])} : {kind}, optional", 4).replace("\n    ", "\n        ")]
        lines += [wrapped(meaning_of(entry), 8)]
    return [*lines, *(line for rows in lists for line in list_parameter(rows))]


def docstring(function: Entry) -> str:
    lines = [
        f'    """{function["summary"]}',
        "",
        *parameters(function["inputs"]),
        '    errors : {"raise", "nan"}, optional',
        "        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.",
        "",
        "    Returns",
        "    -------",
        f"    {camel(function['name'])}",
        "",
        "    Raises",
        "    ------",
        "    CarbError",
        "        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.",
        "",
        "    Warns",
        "    -----",
        "    CarbWarning",
        "        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)",
        "",
        *EXAMPLES,
    ]
    call, value = value_of(function)
    return "\n".join([*lines, f"    >>> {call}", f"    {value}", '    """'])


def rows_docstring(table: Entry) -> str:
    lines = [wrapped(f'"""{table["summary"]}', 4), ""]
    if table in ASKED_TABLES:
        lines += [*parameters(table["inputs"], table["lists"]), ""]
    lines += ["    Returns", "    -------", "    Table", "        The columns:", ""]
    for said, same in groupby(table["columns"], key=lambda column: column["meaning"]):
        names = (f"``{column['name']}``" + (f" ({column['unit']})" if column["unit"] else "") for column in same)
        lines += [hanging(f"- {', '.join(names)}: {said}", 8)]
    if table in ASKED_TABLES:
        lines += ["", "    Raises", "    ------", "    CarbError"]
        lines += ["        For an unknown name, a quantity in two units, or a value outside its range."]
    call, value = rows_of(table)
    return "\n".join([*lines, "", *EXAMPLES, f"    >>> {call}", f"    {value}", '    """'])


def job_docstring(entry: Entry) -> str:
    lines = [wrapped(f'"""{entry["summary"]}', 4), ""]
    lines += [*parameters(entry["inputs"], entry["lists"])]
    said = "How far inputs may lie from what was given, by their names, as ``Result.uncertainty`` takes it: the answer's "
    said += "``uncertainty`` then has the intervals of its main parts."
    lines += ["    uncertainty : mapping, optional", wrapped(said, 8), "", "    Returns", "    -------"]
    said = "``page()`` is the whole as text. The parts, each an answer or an ``error``, some only where asked for: "
    parts = ANSWERS[f"answer.{entry['name']}"]["oneOf"][0]["properties"]
    said += ", ".join(f"``{name}``" for name, kind in parts.items() if kind.get("type") in PARTS)
    lines += [f"    {camel(entry['name'])}", wrapped(f"{said}.", 8)]
    answer = json.loads(_carb.json(entry["name"], json.dumps({"carb": 1, **json.loads(entry["example"])})))
    lines += ["", "    Raises", "    ------", "    CarbError"]
    said = "Where the request as a whole is wrong, as with an unknown name or a wrong row of a list. "
    said += "What is wrong with one part is the ``error`` of that part."
    lines += [wrapped(said, 8), "", *EXAMPLES, f"    >>> batch = {call_of(entry)}"]
    for path in entry["shown"]:
        found = answer
        for step in path.replace("[", ".").replace("]", "").split("."):
            found = found[int(step) if step.isdigit() else step]
        lines += [f"    >>> batch.{path}", f"    {found!r}"]
    return "\n".join([*lines, '    """'])


def nouns_of(function: Entry) -> list[str]:
    return list(dict.fromkeys(out["noun"] for out in function["outputs"] if out["noun"]))


def property_doc(out: Entry) -> str:
    unit = "" if out["unit"] in out["meaning"] else f", {out['unit']}"
    return f"{out['meaning'][0].upper()}{out['meaning'][1:]}{unit}."


def result_classes(function: Entry, stub: bool) -> list[str]:
    """A class for the result and for each noun in it."""
    name, lines = camel(function["name"]), []
    outputs = function["outputs"]

    def members(noun: str) -> list[str]:
        mine = [out for out in outputs if out["noun"] == noun]
        if stub:
            return [f"    @property\n    def {out['name']}(self) -> T: ..." for out in mine]
        return [f"    {out['name']} = output({quoted(out['name'])}, {quoted(property_doc(out))})" for out in mine]

    def tail(kept: list[Entry]) -> str:
        return quoted([full(out) for out in kept])

    for noun in nouns_of(function):
        lines.append(f"class {name}{camel(noun)}(Part[T]):")
        if not stub:
            lines += [f'    """The outputs of {name} that are {noun}."""', "", "    __slots__ = ()"]
            lines += [f"    shown = {quoted([o['name'] for o in outputs if o['noun'] == noun and o['shown']])}"]
        lines += [*members(noun), "", ""]
    lines.append(f"class {name}(Result[T]):")
    if not stub:
        lines += [f'    """{function["summary"]}"""', "", "    __slots__ = ()"]
        lines += [f"    function = {quoted(function['name'])}"]
        lines += [f"    outputs = {tail(outputs)}", f"    shown = {tail([out for out in outputs if out['shown']])}"]
    for noun in nouns_of(function):
        kind = f"{name}{camel(noun)}"
        if stub:
            lines.append(f"    @property\n    def {noun}(self) -> {kind}[T]: ...")
        else:
            lines.append(f"    {noun} = part({kind}, {quoted(noun)}, {quoted(noun.capitalize() + '.')})")
    return [*lines, *members(""), "", ""]


def groups() -> list[list[str]]:
    """Names of which one replaces the others in a context: units of a quantity, and quantities of a one-of group."""
    found: dict[tuple[str, ...], list[str]] = {}
    for entries in [*(entry["inputs"] for entry in ASKED), KNOWN["plan"]]:
        mine: dict[str, list[str]] = {}
        for entry in entries:
            mine.setdefault(entry.get("one_of", entry["names"][0]), []).extend(entry["names"])
        for names in mine.values():
            found.setdefault(tuple(names), names)
    # What another group holds whole says nothing more.
    known = [set(names) for names in found.values()]
    return [names for names in found.values() if names[1:] and not any(set(names) < other for other in known)]


def exports() -> list[str]:
    kinds = [camel(f["name"]) + camel(noun) for f in FUNCTIONS for noun in ["", *nouns_of(f)]]
    names = [entry["name"] for entry in [*FUNCTIONS, *TABLES, *JOBS]]
    return sorted([*kinds, *names, *(camel(code) + "Warning" for code in WARNINGS), "At"])


def module() -> str:
    lines = [
        HEAD.format("The functions of the library and their results.") + "from __future__ import annotations",
        "",
        "from collections.abc import Mapping",
        "from typing import TYPE_CHECKING, Any, Literal, TypeVar",
        "",
        "from ._at import Bound, bound",
        "from ._errors import CarbWarning",
        "from ._plan import Bottling, Kegging, job",
        "from ._result import Part, Result, function, output, part",
        "from ._table import Table, table",
        "",
        "if TYPE_CHECKING:",
        "    from ._types import Doubt, Number, Rows",
        "",
        "__all__ = [",
        *(f'    "{name}",' for name in exports()),
        "]",
        "",
        'T = TypeVar("T")',
        "",
        "",
    ]
    for code in WARNINGS:
        lines += [f"class {camel(code)}Warning(CarbWarning):"]
        lines += [f'    """Elements with the caution ``{code}``."""', "", f"    code = {quoted(code)}", "", ""]
    for f in FUNCTIONS:
        kind = camel(f["name"])
        lines += [*result_classes(f, stub=False), f"@function({kind})", f"def {f['name']}(", "    *,"]
        for entry in f["inputs"]:
            lines += [f"    {name}: {hint(entry, 'Number')} | None = None," for name in entry["names"]]
        lines += ['    errors: Literal["raise", "nan"] = "raise",', "    **unknown: Any,"]
        lines += [f") -> {kind}[Any]:", docstring(f), f"    {DECORATED}", "", ""]
    for t in TABLES:
        names = [f"    {name}: {kind} | None = None," for name, kind in names_of(t, "float").items()]
        several = [f"def {t['name']}(", "    *,", *names, "    **unknown: Any,", ") -> Table:"]
        lines += ["@table", *(several if names else [f"def {t['name']}(**unknown: Any) -> Table:"])]
        lines += [rows_docstring(t), f"    {DECORATED}", "", ""]
    for entry in JOBS:
        kind = camel(entry["name"])
        lines += [f"@job({kind})", f"def {entry['name']}(", "    *,"]
        lines += [f"    {name}: {hinted} | None = None," for name, hinted in names_of(entry, "float").items()]
        lines += ["    **unknown: Any,", f") -> {kind}:", job_docstring(entry), f"    {DECORATED}", "", ""]
    lines += ["class At(Bound):"]
    lines += ['    """All functions with a context that they share; what a call gives replaces it.']
    lines += ["", *EXAMPLES]
    lines += ['    >>> here = carb.at(altitude_m=240, beverage="beer")', "    >>> here.ambient_pressure().ambient_kpa"]
    value = _carb.answer("ambient_pressure", {"altitude_m": 240}).value("ambient_kpa")
    lines += [f"    {value!r}", '    """', "", "    __slots__ = ()", "    groups = ("]
    lines += [f"        frozenset({quoted(group)})," for group in groups()]
    names = [name for entry in KNOWN["plan"] for name in entry["names"]] + [rows["name"] for rows in LISTS]
    lines += ["    )", f"    plan_names = frozenset({quoted(names)})"]
    lines += [f"    {f['name']} = bound({f['name']})" for f in ASKED]
    return "\n".join(lines) + "\n"


def stub() -> str:
    lines = [
        HEAD.format("The types of the functions of the library and of their results."),
        "from collections.abc import Mapping",
        "from typing import Any, Generic, Literal, TypedDict, TypeVar, overload",
        "",
        "import numpy as np",
        "from numpy.typing import NDArray",
        "from typing_extensions import Unpack",
        "",
        "from ._at import Bound",
        "from ._errors import CarbWarning",
        "from ._plan import Bottling, Kegging",
        "from ._result import Part, Result",
        "from ._table import Table",
        "from ._types import Doubt, Number, Rows",
        "",
        "__all__ = [",
        *(f'    "{name}",' for name in exports()),
        "]",
        "",
        'T = TypeVar("T")',
        'N = TypeVar("N")',
        "",
        *(f"class {camel(code)}Warning(CarbWarning): ..." for code in WARNINGS),
        "",
    ]
    for f in FUNCTIONS:
        kind = camel(f["name"])
        lines += result_classes(f, stub=True)
        lines += [f"class _{kind}Inputs(TypedDict, Generic[N], total=False):"]
        for entry in f["inputs"]:
            lines += [f"    {name}: {hint(entry, 'N')} | None" for name in entry["names"]]
        lines += ['    errors: Literal["raise", "nan"]', "", *overloads(f, ""), ""]
    for t in [*ASKED_TABLES, *JOBS]:
        lines += [f"class _{camel(t['name'])}Inputs(TypedDict, total=False):"]
        lines += [f"    {name}: {kind} | None" for name, kind in names_of(t, "float").items()]
        lines += [""]
    lines += [*(plain_stub(t, "") for t in [*TABLES, *JOBS]), ""]
    lines += ["class At(Bound):"]
    every = {name: kind for f in ASKED for name, kind in names_of(f, "float").items() if name != "uncertainty"}
    every |= {name: hint(e, "float") for e in KNOWN["plan"] for name in e["names"]}
    lines += ["    def __init__(", "        self,", "        *,"]
    lines += [f"        {name}: {kind} | None = None," for name, kind in every.items()]
    lines += ["    ) -> None: ...", *(line for f in FUNCTIONS for line in overloads(f, "self, "))]
    lines += [f"    {plain_stub(t, 'self, ')}" for t in [*ASKED_TABLES, *JOBS]]
    return "\n".join(lines) + "\n"


def overloads(function: Entry, self: str) -> list[str]:
    name, kind, pad = function["name"], camel(function["name"]), "    " if self else ""
    start = f"{pad}def {name}({self}**given: Unpack[_{kind}Inputs"
    return [
        f"{pad}@overload",
        f"{start}[float]]) -> {kind}[float]: ...",
        f"{pad}@overload",
        f"{start}[Number]]) -> {kind}[NDArray[np.float64]]: ...",
    ]


def plain_stub(entry: Entry, self: str) -> str:
    """A table or a job, which takes no arrays."""
    given = f"**given: Unpack[_{camel(entry['name'])}Inputs]" if entry in ASKED else ""
    kind = "Table" if "columns" in entry else camel(entry["name"])
    return f"def {entry['name']}({self}{given}) -> {kind}: ..."


def texts() -> dict[Path, str]:
    """What belongs into each file."""
    return {PACKAGE / "_generated.py": module(), PACKAGE / "_generated.pyi": stub()}


if __name__ == "__main__":
    for path, text in texts().items():
        path.write_text(text, encoding="utf-8")
