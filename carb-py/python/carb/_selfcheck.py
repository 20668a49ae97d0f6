"""``python -m carb selfcheck``: whether the installed package answers as it was built to, on this machine.

The published values and the conformance cases are inside the native module, which took them from the source tree when
it was built: nothing else is needed, and they cannot be of another version.
"""

from __future__ import annotations

import argparse
import csv
import json
import sys
import warnings
import zlib
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import carb

from . import _carb as native

__all__ = ["Checked", "arrays", "conformance", "given", "pick", "published", "run"]

MOST_FAULTS = 20

Row = dict[str, str]


@dataclass
class Checked:
    """What was compared of one file, and what differed."""

    name: str
    values: int = 0
    worst: float = 0.0
    """The greatest deviation, as a share of what is allowed."""
    sources: set[str] = field(default_factory=set)
    left_out: int = 0
    """Rows that are on record as not reproduced, each with its reason."""
    elsewhere: list[str] = field(default_factory=list)
    """Rows of what this package does not offer; the tests of the source tree hold them."""
    faults: list[str] = field(default_factory=list)


def published() -> Iterator[Checked]:
    """Compares the values that were published outside the project, file by file."""
    tables = {table["name"] for table in json.loads(native.tables())["tables"]}
    for name, text in native.checks():
        if name.endswith(".csv"):
            yield _published(name, text, tables)


def _published(name: str, text: str, tables: set[str]) -> Checked:
    done = Checked(name)
    for row in csv.DictReader(line for line in text.splitlines() if not line.startswith("#")):
        function, inputs, output = row["function"], row["inputs"], row["output"]
        if not row["tolerance"]:
            done.left_out += 1
            continue
        try:
            value = _asked(function, inputs, output, tables)
        except AttributeError:
            done.elsewhere.append(row["id"])
            continue
        off, allowed = abs(value - float(row["value"])), float(row["tolerance"])
        done.values += 1
        done.sources.add(row["source"])
        if allowed:
            done.worst = max(done.worst, off / allowed)
        # Not off > allowed: what is no number differs too.
        if not off <= allowed:
            done.faults.append(f"{row['id']}: {output} is {value!r}, published {row['value']}, allowed {allowed:g}")
    return done


def _asked(function: str, inputs: str, output: str, tables: set[str]) -> float:
    """The value that a row asks for: one output of a function, or a cell in the row of a table that has this name."""
    ask = getattr(carb, function)
    found: float
    if function in tables:
        found = getattr(next(row for row in ask() if row.name == inputs), output)
    else:
        found = pick(ask(**given(inputs)), output)
    return found


def conformance() -> Checked:
    """Compares every conformance case to the last bit: numbers, arrays of them, errors, and whole answers."""
    [text] = [text for name, text in native.checks() if name == "cases.tsv"]
    done = Checked("conformance cases")
    known = {function["name"]: function for function in json.loads(native.tables())["functions"]}
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", carb.CarbWarning)
        for case in csv.DictReader(text.splitlines(), delimiter="\t", quoting=csv.QUOTE_NONE):
            differing = [what for what, same in _case(case, known.get(case["function"])) if not same]
            done.values += 1
            if differing:
                done.faults.append(f"{case['function']} {case['request_json']}: {', '.join(differing)}")
    return done


def _case(case: Row, function: dict[str, Any] | None) -> Iterator[tuple[str, bool]]:
    """What is compared in a case, and whether it is the same."""
    text = native.json(case["function"], case["request_json"])
    yield "the answer differs", f"{zlib.crc32(text.encode()):08x}" == case["answer_crc"]
    if function is None:
        # A table or a job: all that it says stands in its answer.
        return
    # The checksum holds the numbers of the answer, and they hold those of a call and of the loops over arrays.
    answer = json.loads(text)
    told = answer.get("error", {})
    inputs = {name: value for name, value in json.loads(case["request_json"]).items() if name != "carb"}
    varying = arrays(function)
    many = {name: [value] * 3 if name in varying and _is_number(value) else value for name, value in inputs.items()}
    for said, asked in (("", inputs), (" of arrays", many)):
        try:
            result = getattr(carb, case["function"])(**asked)
        except carb.CarbError as error:
            same = (error.code, error.parameter) == (told.get("code"), told.get("parameter"))
            yield f"error {error.code}{said} instead of {told.get('code', 'an answer')}", same
            continue
        if told:
            yield f"an answer{said} instead of error {told['code']}", False
            continue
        for output in function["outputs"]:
            if output["shown"]:
                noun, name = output["noun"], output["name"]
                wanted = (answer[noun] if noun else answer)[name]
                values = _floats(getattr(getattr(result, noun) if noun else result, name))
                same = all(value.hex() == wanted.hex() for value in values)
                yield f"{noun} {name}{said} is {values[0]!r} instead of {wanted!r}".lstrip(), same


def _is_number(value: Any) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def _floats(value: Any) -> list[float]:
    return [float(one) for one in value] if hasattr(value, "__len__") else [float(value)]


def given(inputs: str) -> dict[str, Any]:
    """The pairs of ``name=value;name=value``."""

    def value(text: str) -> Any:
        if text in ("true", "false"):
            return text == "true"
        if text.startswith("["):
            return json.loads(text)
        try:
            return float(text)
        except ValueError:
            return text

    return {name: value(text) for name, _, text in (pair.partition("=") for pair in inputs.split(";")) if name}


def pick(result: Any, name: str) -> Any:
    """An output by its full name: ``gauge_bar``, or ``worst_gauge_bar`` by way of ``.worst.gauge_bar``."""
    if hasattr(result, name):
        return getattr(result, name)
    # A noun may begin as another does: later_room_air_ppm, later_low_half_room_air_ppm.
    for noun, rest in [(name[:at], name[at + 1 :]) for at, letter in enumerate(name) if letter == "_"]:
        if hasattr(result, noun) and hasattr(getattr(result, noun), rest):
            return getattr(getattr(result, noun), rest)
    raise AttributeError(f"{type(result).__name__} has no {name}")


def arrays(function: dict[str, Any]) -> set[str]:
    """The names that a function, or a table, takes as arrays."""
    return {name for entry in function["inputs"] if entry["array"] for name in entry["names"]}


def run(_: argparse.Namespace) -> int:
    """Prints what was compared; gives 0, or 1 where something differed."""
    *files, bits = done = [*published(), conformance()]
    print(f"{'published values':<22}{'compared':>9}{'differ':>8}{'worst':>8}{'sources':>9}")
    for file in files:
        worst = f"{100 * file.worst:.0f} %"
        print(f"  {file.name:<20}{file.values:>9}{len(file.faults):>8}{worst:>8}{len(file.sources):>9}")
    print(f"{bits.name:<22}{bits.values:>9}{len(bits.faults):>8}")
    left_out, elsewhere = sum(file.left_out for file in files), sum(len(file.elsewhere) for file in files)
    print("worst: the greatest deviation, of the tolerance that stands beside each value")
    print(f"{left_out} more values are on record as not reproduced, with reasons; {elsewhere} no function gives")
    faults = [f"{file.name}: {fault}" for file in done for fault in file.faults]
    # Nothing compared would prove nothing.
    right = not faults and all(file.values for file in done)
    print("every case has the same bits" if right else "something differs: do not rely on this installation")
    for fault in faults[:MOST_FAULTS]:
        print(fault, file=sys.stderr)
    if len(faults) > MOST_FAULTS:
        print(f"and {len(faults) - MOST_FAULTS} more", file=sys.stderr)
    return int(not right)
