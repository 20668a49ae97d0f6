"""Docstrings of functions, tables and jobs, from what the core says of them."""

from __future__ import annotations

import json
import textwrap
from itertools import groupby
from typing import Any

from . import _carb

Entry = dict[str, Any]
EXAMPLES = ["Examples", "--------", ">>> import carb"]
SHOWN = {
    "bottling": ("priming.mass_g", "bottles[0].filled_count"),
    "kegging": ("regulator.gauge_bar", "carbonating.expected.time_d"),
}
"""What the examples of the jobs show of their answers."""
PARTS = ("object", "array")


def camel(name: str) -> str:
    """The class of a function: ``KegPressure`` for ``keg_pressure``."""
    return "".join(word.capitalize() for word in name.split("_"))


def full(out: Entry) -> str:
    """The name of an output with its noun."""
    return "_".join(filter(None, (out["noun"], out["name"])))


def quoted(value: str) -> str:
    """A text as Python."""
    return json.dumps(value, ensure_ascii=False)


def spelled(value: Any) -> str:
    """What JSON gave, as Python."""
    if isinstance(value, list):
        return f"[{', '.join(map(spelled, value))}]"
    if isinstance(value, dict):
        return f"{{{', '.join(f'{quoted(name)}: {spelled(inner)}' for name, inner in value.items())}}}"
    return quoted(value) if isinstance(value, str) else repr(value)


def wrapped(text: str, indent: int) -> str:
    pad = " " * indent
    return textwrap.fill(text, 106, initial_indent=pad, subsequent_indent=pad, break_on_hyphens=False)


def hanging(text: str, indent: int) -> str:
    """A text whose further lines are set in."""
    return wrapped(text, indent).replace(f"\n{' ' * indent}", f"\n{' ' * (indent + 2)}")


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


def kind_of(entry: Entry) -> str:
    """What an input takes, in words."""
    if "choices" in entry:
        return "{" + ", ".join(map(quoted, entry["choices"])) + "}"
    if "low" not in entry:
        return "str" if entry["names"] == ["title"] else "bool"
    return "float or array" if entry["array"] else "float"


def parameters(entries: list[Entry], lists: list[Entry] | tuple[()] = ()) -> list[str]:
    lines = ["Parameters", "----------"]
    for entry in entries:
        lines += [wrapped(f"{', '.join(entry['names'])} : {kind_of(entry)}, optional", 0).replace("\n", "\n    ")]
        lines += [wrapped(meaning_of(entry), 4)]
    return [*lines, *(line for rows in lists for line in list_parameter(rows))]


def list_parameter(rows: Entry) -> list[str]:
    lines = [f"{rows['name']} : sequence of mappings, optional"]
    lines += [wrapped(f"{rows['meaning'][0].upper()}{rows['meaning'][1:]}. A row has:", 4), ""]
    for column in rows["columns"]:
        names = ", ".join(f"``{name}``" for name in column["names"])
        if "choices" in column:
            names += f" ({', '.join(map(quoted, column['choices']))})"
        lines += [hanging(f"- {names}: {meaning_of(column)}", 4)]
    return [*lines, "", "    A data frame, or a mapping of columns, holds rows too."]


def call_of(entry: Entry) -> str:
    """The call of the example of a function, a table or a job; a long one in several lines."""
    given = [f"{name}={spelled(value)}" for name, value in json.loads(entry["example"]).items()]
    call = f"carb.{entry['name']}({', '.join(given)})"
    if len(call) < 70:
        return call
    return "\n".join([f"carb.{entry['name']}(", *(f"...     {value}," for value in given), "... )"])


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
    texts = [column["name"] for column in table["columns"] if not column["unit"]]
    first = next((name for name in texts if any(row[name] for row in rows)), None)
    if first is None or not takes(table):
        return f"len({call_of(table)})", str(len(rows))
    return f"{call_of(table)}.column({quoted(first)})", repr(tuple(row[first] for row in rows))


def takes(entry: Entry) -> bool:
    """Whether a table is asked anything; the others have nothing to be bound to."""
    return bool(entry["inputs"] or entry["lists"])


def function_doc(function: Entry) -> str:
    call, value = value_of(function)
    lines = [
        function["summary"],
        "",
        *parameters(function["inputs"]),
        'errors : {"raise", "nan"}, optional',
        "    For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.",
        "",
        "Returns",
        "-------",
        camel(function["name"]),
        "    Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.",
        "",
        "Raises",
        "------",
        "CarbError",
        "    For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.",
        "",
        "Warns",
        "-----",
        "CarbWarning",
        "    For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)",
        "",
        *EXAMPLES,
        f">>> {call}",
        value,
    ]
    return "\n".join(lines) + "\n"


def table_doc(table: Entry) -> str:
    lines = [wrapped(table["summary"], 0), ""]
    if takes(table):
        lines += [*parameters(table["inputs"], table["lists"]), ""]
    lines += ["Returns", "-------", "Table", "    The columns:", ""]
    for said, same in groupby(table["columns"], key=lambda column: column["meaning"]):
        names = (f"``{column['name']}``" + (f" ({column['unit']})" if column["unit"] else "") for column in same)
        lines += [hanging(f"- {', '.join(names)}: {said}", 4)]
    if takes(table):
        lines += ["", "Raises", "------", "CarbError"]
        lines += ["    For an unknown name, a quantity in two units, or a value outside its range."]
    call, value = rows_of(table)
    return "\n".join([*lines, "", *EXAMPLES, f">>> {call}", value]) + "\n"


def job_doc(job: Entry) -> str:
    lines = [wrapped(job["summary"], 0), "", *parameters(job["inputs"], job["lists"])]
    said = (
        "How far inputs may lie from what was given, by their names, as ``Result.uncertainty`` takes it: the answer's "
    )
    said += "``uncertainty`` then has the intervals of its main parts."
    lines += ["uncertainty : mapping, optional", wrapped(said, 4), "", "Returns", "-------"]
    answers = json.loads(_carb.schema())["$defs"][f"answer.{job['name']}"]["oneOf"][0]["properties"]
    parts = ", ".join(f"``{name}``" for name, kind in answers.items() if kind.get("type") in PARTS)
    said = "``page()`` is the whole as text. The parts, each an answer or an ``error``, some only where asked for: "
    said += f"{parts}."
    lines += [camel(job["name"]), wrapped(said, 4), "", "Raises", "------", "CarbError"]
    said = "Where the request as a whole is wrong, as with an unknown name or a wrong row of a list. "
    said += "What is wrong with one part is the ``error`` of that part."
    lines += [wrapped(said, 4), "", *EXAMPLES, f">>> batch = {call_of(job)}"]
    answer = json.loads(_carb.json(job["name"], json.dumps({"carb": 1, **json.loads(job["example"])})))
    for path in SHOWN[job["name"]]:
        found = answer
        for step in path.replace("[", ".").replace("]", "").split("."):
            found = found[int(step) if step.isdigit() else step]
        lines += [f">>> batch.{path}", repr(found)]
    return "\n".join(lines) + "\n"


def output_doc(out: Entry) -> str:
    """What an output is, with its unit."""
    unit = "" if out["unit"] in out["meaning"] else f", {out['unit']}"
    return f"{out['meaning'][0].upper()}{out['meaning'][1:]}{unit}."
