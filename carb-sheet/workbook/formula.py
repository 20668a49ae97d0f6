"""Formulas as one types them, written as OpenDocument stores them."""

from __future__ import annotations

import re

from . import core

CELL = r"\$?[A-Z]{1,3}\$?[0-9]+"
TOKEN = re.compile(
    rf'(?P<text>"(?:[^"]|"")*")|(?P<name>[A-Z][A-Z0-9_.]*(?=\())'
    rf"|(?P<sheet>[A-Za-z]+\.)?(?P<first>{CELL})(?::(?P<last>{CELL}))?"
)


def quoted(text: str) -> str:
    """A text inside a formula."""
    return '"' + text.replace('"', '""') + '"'


def literal(value: str) -> str:
    """A number as it is, everything else as a text."""
    try:
        float(value)
    except ValueError:
        return quoted(value)
    return value


def call(function: str, *arguments: str) -> str:
    """A call of a function, its arguments as formulas."""
    return f"{function}({';'.join(arguments)})"


def stored(formula: str) -> str:
    """A formula as it stands in a file: cells in brackets, functions of the add-in under their full names."""
    return "of:=" + TOKEN.sub(_token, formula)


def _token(found: re.Match[str]) -> str:
    if name := found["name"]:
        return core.stored_name(name)
    if found["text"]:
        return found["text"]
    sheet = f"${found['sheet']}" if found["sheet"] else "."
    last = f":.{found['last']}" if found["last"] else ""
    return f"[{sheet}{found['first']}{last}]"
