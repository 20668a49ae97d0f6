"""The bibliography of the library, for both workbooks."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

BIBLIOGRAPHY = Path(__file__).parents[1] / "carb-core" / "references.bib"


@cache
def citations() -> dict[str, str]:
    """Every source of the bibliography by its key: author, year, title, and where it was printed."""
    found = {}
    for entry in re.findall(r"^@\w+\{(\w+),\n(.*?)^\}", BIBLIOGRAPHY.read_text("utf-8"), re.M | re.S):
        fields = dict(re.findall(r"^  (\w+) = \{(.*)\},?$", entry[1], re.M))
        order = ("author", "year", "title", "journal", "howpublished", "publisher")
        text = ", ".join(fields[name] for name in order if name in fields)
        text = text.replace(r"{\OE}", "Œ").replace(r"$^\circ$", "°")
        found[entry[0]] = re.sub(r"[{}]|\\(?=\W)", "", text)
    return found
