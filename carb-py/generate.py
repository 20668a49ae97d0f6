"""Writes python/carb/_generated.py and _generated.pyi from the tables of the core.

Run it with the built package installed: ``python generate.py``. The tests compare what it writes with what is there.
"""

from __future__ import annotations

import importlib.util
import json
import textwrap
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
Table = dict[str, Any]
TABLES: Table = json.loads(_carb.tables())
FUNCTIONS: list[Table] = TABLES["functions"]
WARNINGS = [code for code, level, bit in _carb.caution_codes() if bit is not None or level != "note"]
PACKAGE = Path(__file__).parent / "python" / "carb"
HEAD = '"""{}"""\n\n# Written by generate.py from the tables of the core; a test compares.\n\n'


def camel(name: str) -> str:
    return "".join(word.capitalize() for word in name.split("_"))


def quoted(value: str | list[str]) -> str:
    """A text, or a tuple of texts, as Python."""
    if isinstance(value, str):
        return json.dumps(value, ensure_ascii=False)
    return f"({', '.join(map(quoted, value))}{',' if len(value) == 1 else ''})"


def literal(choices: list[str]) -> str:
    return f"Literal[{', '.join(map(quoted, choices))}]"


def full(out: Table) -> str:
    """The name of an output with its noun."""
    return "_".join(filter(None, (out["noun"], out["name"])))


def hint(entry: Table, number: str) -> str:
    """The type of an input; `number` for what may be an array."""
    if "choices" in entry:
        return literal(entry["choices"])
    if "low" not in entry:
        return "str" if entry["names"] == ["title"] else "bool"
    return number if entry["array"] else "float"


def wrapped(text: str, indent: int) -> str:
    pad = " " * indent
    return textwrap.fill(text, 110, initial_indent=pad, subsequent_indent=pad, break_on_hyphens=False)


def meaning_of(entry: Table) -> str:
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


def value_of(function: Table) -> tuple[str, str]:
    """The example of a function: a call and the value it gives."""
    given = json.loads(function["example"])
    first = next(out for out in function["outputs"] if out["shown"] and out["name"] not in given)
    value = _carb.answer(function["name"], given).value(full(first))
    call = ", ".join(f"{key}={json.dumps(value)}" for key, value in given.items())
    path = ".".join(filter(None, (first["noun"], first["name"])))
    return f"carb.{function['name']}({call}).{path}", repr(value)


def docstring(function: Table) -> str:
    lines = [f'    """{function["summary"]}', "", "    Parameters", "    ----------"]
    for entry in function["inputs"]:
        kind = {"bool": "bool", "str": "str", "float": "float", "Number": "float or array"}.get(hint(entry, "Number"))
        kind = kind or "{" + ", ".join(f'"{choice}"' for choice in entry["choices"]) + "}"
        lines += [wrapped(f"{', '.join(entry['names'])} : {kind}, optional", 4).replace("\n    ", "\n        ")]
        lines += [wrapped(meaning_of(entry), 8)]
    lines += [
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
        "    Examples",
        "    --------",
        "    >>> import carb",
    ]
    call, value = value_of(function)
    return "\n".join([*lines, f"    >>> {call}", f"    {value}", '    """'])


def nouns_of(function: Table) -> list[str]:
    return list(dict.fromkeys(out["noun"] for out in function["outputs"] if out["noun"]))


def property_doc(out: Table) -> str:
    unit = "" if out["unit"] in out["meaning"] else f", {out['unit']}"
    return f"{out['meaning'][0].upper()}{out['meaning'][1:]}{unit}."


def result_classes(function: Table, stub: bool) -> list[str]:
    """A class for the result and for each noun in it."""
    name, lines = camel(function["name"]), []
    outputs = function["outputs"]

    def members(noun: str) -> list[str]:
        mine = [out for out in outputs if out["noun"] == noun]
        if stub:
            return [f"    @property\n    def {out['name']}(self) -> T: ..." for out in mine]
        return [f"    {out['name']} = output({quoted(out['name'])}, {quoted(property_doc(out))})" for out in mine]

    def tail(kept: list[Table]) -> str:
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
    found: dict[str, list[str]] = {}
    grouped = {e["names"][0]: e["one_of"] for f in FUNCTIONS for e in f["inputs"] if "one_of" in e}
    for entry in [*(e for f in FUNCTIONS for e in f["inputs"]), *TABLES["plan"]]:
        first = entry["names"][0]
        names = found.setdefault(grouped.get(first, first), [])
        names += [name for name in entry["names"] if name not in names]
    return [names for names in found.values() if names[1:]]


def exports() -> list[str]:
    kinds = [camel(f["name"]) + camel(noun) for f in FUNCTIONS for noun in ["", *nouns_of(f)]]
    return sorted([*kinds, *(f["name"] for f in FUNCTIONS), *(camel(code) + "Warning" for code in WARNINGS), "At"])


def module() -> str:
    lines = [
        HEAD.format("The functions of the library and their results.") + "from __future__ import annotations",
        "",
        "from typing import TYPE_CHECKING, Any, Literal, TypeVar",
        "",
        "from ._at import Bound, bound",
        "from ._errors import CarbWarning",
        "from ._result import Part, Result, function, output, part",
        "",
        "if TYPE_CHECKING:",
        "    from ._types import Number",
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
        lines += [f") -> {kind}[Any]:", docstring(f), "    raise NotImplementedError  # The decorator answers.", "", ""]
    lines += ["class At(Bound):"]
    lines += ['    """All functions with a context that they share; what a call gives replaces it.']
    lines += ["", "    Examples", "    --------", "    >>> import carb"]
    lines += ['    >>> here = carb.at(altitude_m=240, beverage="beer")', "    >>> here.ambient_pressure().ambient_kpa"]
    value = _carb.answer("ambient_pressure", {"altitude_m": 240}).value("ambient_kpa")
    lines += [f"    {value!r}", '    """', "", "    __slots__ = ()", "    groups = ("]
    lines += [f"        frozenset({quoted(group)})," for group in groups()]
    names = [name for entry in TABLES["plan"] for name in entry["names"]]
    lines += ["    )", f"    plan_names = frozenset({quoted(names)})"]
    lines += [f"    {f['name']} = bound({f['name']})" for f in FUNCTIONS]
    return "\n".join(lines) + "\n"


def stub() -> str:
    lines = [
        HEAD.format("The types of the functions of the library and of their results."),
        "from typing import Any, Generic, Literal, TypedDict, TypeVar, overload",
        "",
        "import numpy as np",
        "from numpy.typing import NDArray",
        "from typing_extensions import Unpack",
        "",
        "from ._at import Bound",
        "from ._errors import CarbWarning",
        "from ._result import Part, Result",
        "from ._types import Number",
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
    lines += ["class At(Bound):"]
    every = {name: hint(e, "float") for f in FUNCTIONS for e in f["inputs"] for name in e["names"]}
    every |= {name: hint(e, "float") for e in TABLES["plan"] for name in e["names"]}
    lines += ["    def __init__(", "        self,", "        *,"]
    lines += [f"        {name}: {kind} | None = None," for name, kind in every.items()]
    lines += ["    ) -> None: ...", *(line for f in FUNCTIONS for line in overloads(f, "self, "))]
    return "\n".join(lines) + "\n"


def overloads(function: Table, self: str) -> list[str]:
    name, kind, pad = function["name"], camel(function["name"]), "    " if self else ""
    start = f"{pad}def {name}({self}**given: Unpack[_{kind}Inputs"
    return [
        f"{pad}@overload",
        f"{start}[float]]) -> {kind}[float]: ...",
        f"{pad}@overload",
        f"{start}[Number]]) -> {kind}[NDArray[np.float64]]: ...",
    ]


def texts() -> dict[Path, str]:
    """What belongs into each file."""
    return {PACKAGE / "_generated.py": module(), PACKAGE / "_generated.pyi": stub()}


if __name__ == "__main__":
    for path, text in texts().items():
        path.write_text(text, encoding="utf-8")
