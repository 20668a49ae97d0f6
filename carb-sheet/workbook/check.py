"""The sheet that works published values out again."""

from __future__ import annotations

import math

from bibliography import citations

from . import core
from .formula import call, literal, quoted
from .sheet import Sheet

TOP = 6
KNOWN_WELL = ("verified", "published", "high")


def chosen() -> list[dict[str, str]]:
    """One value of each source and function, the last that is printed, where a tolerance is stated with its reason."""
    last: dict[tuple[str, str], dict[str, str]] = {}
    for row in core.published():
        if row["tolerance"] and row["standing"] in KNOWN_WELL:
            last[row["function"], row["source"]] = row
    return [last[key] for key in sorted(last)]


def sheet() -> Sheet:
    page = Sheet(
        "Check",
        (3.5, 9.4, 3.3, 1.9, 1.9, 2.0, 2.0, 1.2, 7.9, 9.4),
        "published values, worked out again",
        landscape=True,
        frozen=5,
    )
    rows = chosen()
    last = TOP + len(rows) - 1
    page.put(1, "A", "Published values, worked out again", "title", across=10)
    page.put(
        2,
        "A",
        "Each line is a number that somebody else has printed. What the add-in makes of the same "
        "inputs stands beside "
        "it. A line fails where the two differ by more than the tolerance, or where there is no answer.",
        "lead",
        across=10,
    )
    failed = f'COUNTIF($H${TOP}:$H${last};"FAIL")'
    page.put(3, "A", f'={failed}&" of {len(rows)} fail"', "status", across=10)
    page.heights |= {1: 1.0, 2: 0.7, 3: 0.8}
    page.signal("A3", (f"formula-is({failed}>0)", "failed"))
    heads = (
        "function",
        "inputs",
        "wanted",
        "published",
        "ours",
        "difference",
        "tolerance",
        "",
        "why this tolerance",
        "source",
    )
    page.heading(5, dict(zip("ABCDEFGHIJ", heads, strict=True)), "J", "DEFG")
    for row, value in enumerate(rows, TOP):
        pairs = [pair.split("=", 1) for pair in value["inputs"].split(";")]
        page.put(row, "A", value["function"], "small")
        page.put(row, "B", ", ".join(f"{name} {given}" for name, given in pairs), "small")
        page.put(row, "C", value["output"], "small")
        page.put(row, "D", float(value["value"]), "worked", 3)
        arguments = [part for name, given in pairs for part in (quoted(name), literal(given))]
        page.put(row, "E", "=" + call(value["function"].upper(), quoted(value["output"]), *arguments), "result", 3)
        page.put(row, "F", f"=$E{row}-$D{row}", "worked", 4)
        page.put(row, "G", float(value["tolerance"]), "worked", 4)
        page.put(
            row, "H", "=" + call("IFERROR", call("IF", f"ABS($F{row})<=$G{row}", '"pass"', '"FAIL"'), '"FAIL"'), "word"
        )
        page.put(row, "I", value["reason"], "small")
        page.put(row, "J", citations()[value["source"]], "small")
        letters = (len(value["reason"]) / 54, len(citations()[value["source"]]) / 62, len(value["inputs"]) / 66)
        page.heights[row] = 0.25 + 0.27 * math.ceil(max(letters))
    page.signal(f"H{TOP}:H{last}", ('="pass"', "fine"), ('="FAIL"', "failed"))
    return page
