"""The sheet of what can be primed with: what it is, what it makes, and how much of it this batch would take."""

from __future__ import annotations

from . import core
from .formula import call, quoted
from .parts import asked
from .sheet import Sheet

TOP = 5
BATCH = ("Bottles.$B$5:$C$16", "Bottles.$B$18:$C$18")
"""The inputs of the sheet of bottles without the sugar."""


def sheet() -> Sheet:
    page = Sheet(
        "Sugars", (4.3, 7.2, 1.8, 2.2, 2.9, 2.3, 2.3, 4.6, 9.4), "sugars, syrups and juices", landscape=True, frozen=4
    )
    page.put(1, "A", "What to prime with", "title", across=9)
    page.put(
        2,
        "A",
        "Everything comes from the library, nothing is filled in. The amounts are for the batch of "
        "the sheet "
        "Bottles, by the trade's tables; read the label of what you buy.",
        "lead",
        across=9,
    )
    page.heights |= {1: 1.0, 2: 0.7, 4: 1.0}
    heads = (
        "name",
        "what it is",
        "water, %",
        "CO2 from it, g/g",
        "usually",
        "for this batch, g",
        "in each litre, g/L",
        "standing",
        "source",
    )
    page.heading(4, dict(zip("ABCDEFGHI", heads, strict=True)), "I", "CDFG")
    columns = core.columns("fermentables")
    shown = {
        "A": ("name", "tag", None),
        "B": ("title", "small", None),
        "C": ("water_percent", "worked", 1),
        "D": ("yield_g_per_g", "worked", 3),
        "H": ("standing", "small", None),
        "I": ("source", "small", None),
    }
    whole = call("CARB_TABLE", quoted("fermentables"))
    count = len(core.rows("fermentables"))
    for row in range(TOP, TOP + count):
        line = row - TOP + 2
        for letter, (column, look, places) in shown.items():
            page.put(row, letter, f"=INDEX({whole};{line};{columns.index(column) + 1})", look, places)
        low, high = (f"INDEX({whole};{line};{columns.index(f'{end}_yield_g_per_g') + 1})" for end in ("low", "high"))
        page.put(row, "E", f'=IF({low}="";"";TEXT({low};"0.000")&" to "&TEXT({high};"0.000"))', "small")
        for letter, output in (("F", "mass_g"), ("G", "dose_g_per_l")):
            amount = asked("PRIMING_SUGAR", output, *BATCH, quoted("sugar"), f"$A{row}")
            page.put(row, letter, "=" + amount, "result", 1 if letter == "F" else 2)
        page.heights[row] = 0.68
    return page
