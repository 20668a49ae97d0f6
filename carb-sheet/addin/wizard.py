"""What the function wizard says of each function and argument, from the tables of the library."""

from os.path import commonprefix
from typing import Any
from xml.sax.saxutils import escape, quoteattr

from interface import plain

Entry = dict[str, Any]
HEAD = """\
<?xml version="1.0" encoding="UTF-8"?>
<oor:component-data xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" \
oor:name="CalcAddIns" oor:package="org.openoffice.Office">
<node oor:name="AddInInfo"><node oor:name="carb.Calc" oor:op="replace"><node oor:name="AddInFunctions">
"""
TAIL = "</node></node></node>\n</oor:component-data>\n"
CATEGORY = "Add-In"
"""Calc has no categories but its own."""


Text = tuple[str, list[tuple[str, str]]]
"""A summary, and the name and text of each argument."""


def texts(functions: list[Entry], companions: list[Entry], tables: list[Entry]) -> dict[str, Text]:
    """What is said of each function, by its name."""
    found: dict[str, Text] = {
        one["name"]: (one["summary"], [("wanted", wanted(one)), *repeated(pairs(one), len(one["inputs"]))])
        for one in functions
    }
    most = max(len(one["inputs"]) for one in functions) + 1
    for one in companions:
        arguments: list[tuple[str, str]] = []
        for name, text in one["arguments"]:
            told = text + choice_of(tables) * (name == "table")
            arguments += repeated(told, most) if name == "pairs" else [(name, told)]
        found[one["name"]] = (one["summary"], arguments)
    return found


def repeated(text: str, count: int) -> list[tuple[str, str]]:
    """The arguments for so many names and their values; all is said of the first."""
    found = [("name 1", text), ("value 1", "Its value: a number, a text, a cell or a range.")]
    for at in range(2, count + 1):
        found += [(f"name {at}", "Another name, or a block."), (f"value {at}", "Its value.")]
    return found


def configuration(said: dict[str, Text]) -> str:
    """Names and summaries as LibreOffice reads them before the add-in is loaded; it asks the add-in for the rest."""
    return HEAD + "".join(node(name, text[0]) for name, text in said.items()) + TAIL


def choice_of(tables: list[Entry]) -> str:
    return f"One of: {', '.join(table['name'] for table in tables)}."


def wanted(function: Entry) -> str:
    """The outputs in the units that are shown; a text of the wizard has no room for more."""
    names = ["_".join(filter(None, (out["noun"], out["name"]))) for out in function["outputs"] if out["shown"]]
    return f"The name of what is wanted, in quotes. One of: {', '.join(names)}."


def pairs(function: Entry) -> str:
    """Names of inputs, by what has to be given."""
    inputs = function["inputs"]
    needed = [spelled(one) for one in inputs if one.get("need")]
    choices: dict[str, list[str]] = {}
    for one in inputs:
        if "one_of" in one:
            choices.setdefault(one["one_of"], []).append(spelled(one))
    free = [spelled(one) for one in inputs if not one.get("need") and "one_of" not in one]
    lines = ["Names and values in turn, or blocks of two columns; a value may be a range."]
    if needed:
        lines.append(f"Required: {'; '.join(needed)}.")
    lines += [f"One of: {'; '.join(some)}." for some in choices.values()]
    if free:
        lines.append(f"Optional: {'; '.join(free)}.")
    return " ".join(lines)


def spelled(entry: Entry) -> str:
    """The names of an input: one quantity in several units, or a choice."""
    names = spelled_names(entry["names"])
    if "choices" in entry and len(entry["choices"]) <= FEW:
        return f"{names} ({', '.join(entry['choices'])})"
    return names if "choices" in entry or "low" in entry else f"{names} (true, false)"


def spelled_names(names: list[str]) -> str:
    """One quantity in several units: "temperature_c, _f, _k"."""
    stem = commonprefix(names).rpartition("_")[0]
    if not stem or len(names) == 1:
        return " or ".join(names)
    return ", ".join([names[0], *(name[len(stem) :] for name in names[1:])])


FEW = 8
"""So many choices are listed; longer lists are the names of a table."""


def node(name: str, summary: str) -> str:
    category = f'<prop oor:name="Category"><value>{CATEGORY}</value></prop>'
    texts = prop("DisplayName", name.upper()) + prop("Description", summary)
    return f"{start(name)}{texts}{category}</node>\n"


def start(name: str) -> str:
    return f'<node oor:name={quoteattr(plain(name))} oor:op="replace">'


def prop(name: str, text: str) -> str:
    return f'<prop oor:name={quoteattr(name)}><value xml:lang="en">{escape(text)}</value></prop>'
