"""The names of the library, from the file that was written when the add-in was built."""

import json
from pathlib import Path

_known, TEXTS = (json.loads(Path(__file__).with_name(file).read_text("utf-8")) for file in ("names.json", "texts.json"))

FUNCTIONS = _known["outputs"]
"""Each elementwise function, with the names of its outputs."""
INPUTS = _known["inputs"]
"""Each elementwise function, with the names of its inputs."""
VARYING = _known["varying"]
"""Those of the inputs that the library takes as arrays."""
TABLES = _known["tables"]
"""Each table, with the names of its columns."""
LISTS = _known["lists"]
"""What tables take whole: rows of names and values."""
KINDS = _known["kinds"]
"""Every name that a function or a table takes, with what it takes: "number", "choice" or "flag"."""
UNITS = _known["units"]
"""The names of the units."""
PLATFORM = _known["platform"]
"""The platform that the add-in was built for."""

VOCABULARY = {*KINDS, *(name for outputs in FUNCTIONS.values() for name in outputs)}


def plain(name):
    """A name without underlines, by which Calc's files know a function."""
    return name.replace("_", "")


def spelled(text):
    """A name or a choice as the library writes it: Calc likes to put capitals where a cell begins."""
    return text.strip().lower()


def role_and_unit(name):
    """What a name says before its unit, and the unit: "gauge" and "psi". A unit by itself has no role."""
    ends = [unit for unit in UNITS if name.endswith(f"_{unit}")]
    if name in UNITS or name not in VOCABULARY or not ends:
        return "", name
    unit = max(ends, key=len)
    return name[: -len(f"_{unit}")], unit
