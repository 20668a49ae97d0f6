"""The chart for the keg fridge: carbonation by temperature and pressure."""

from __future__ import annotations

from . import core
from .formula import call, quoted
from .parts import minded, notes
from .sheet import Sheet, column_name

METRIC, US = "°C, bar, g/L", "°F, psi, volumes"
DRINK = "$B$5:$C$9"
COLUMNS, ROWS = 16, 16
TOP = 12
"""The row of the pressures; the temperatures stand below it."""


def axis(kind: str, name: str) -> tuple[float, float]:
    """Where an axis of the library's own chart begins, and how far its steps are."""
    asked = f'{{"carb": 1, "chart": "{kind}", "altitude_m": 0}}'
    values = sorted({row[name] for row in core.rows("carbonation_chart", asked)})
    return values[0], round(values[1] - values[0], 6)


def sheet() -> Sheet:
    last = column_name(COLUMNS)
    page = Sheet(
        "Chart",
        (3.9, *(2.55,) + (1.75,) * (COLUMNS - 1)),
        "carbonation by temperature and pressure",
        landscape=True,
        frozen=4,
    )
    page.put(1, "A", "CO2 in the drink, by temperature and regulator pressure", "title", across=COLUMNS + 1)
    page.put(
        2,
        "A",
        "Choose the units and the drink in the yellow cells, print the page, and keep it on the keg fridge.",
        "lead",
        across=COLUMNS + 1,
    )
    page.heights[1] = 1.0
    page.heading(4, {"A": "What you fill in", "B": "name", "C": "value", "D": "if left blank"}, last)
    for row, label, name, value, others in (
        (5, "The drink", "beverage", "beer", ()),
        (6, "Alcohol", "abv_percent", None, ()),
        (7, "Dissolved extract", "extract_g_per_l", None, ()),
        (8, "Altitude", "altitude_m", 240, ("ambient_kpa",)),
        (9, "Weather report", "sea_level_kpa", None, ()),
    ):
        page.given(row, label, "dissolved_co2", name, value, others)
        cell = page.cells[row, "D"]
        page.put(row, "D", cell.content, "note", across=6)
        page.heights[row] = 0.58
    page.put(10, "A", "Units", "label")
    page.put(10, "B", METRIC, "choice", offered=(METRIC, US), across=2)
    page.put(10, "D", "°C and bar down and across, g of CO2 per litre inside; or °F, psi and volumes", "note", across=6)
    grid(page, last)
    where = minded("DISSOLVED_CO2", *corner())
    notes(page, TOP + ROWS + 2, last, [("Coldest, highest", where, 1.6)])
    return page


def units(metric: str, us: str) -> str:
    return call("IF", f"$B$10={quoted(US)}", us, call("IF", f"$B$10={quoted(METRIC)}", metric, "NA()"))


def corner() -> tuple[str, ...]:
    """The arguments of the coldest row at the highest pressure."""
    column = column_name(COLUMNS)
    return (
        units(quoted("temperature_c"), quoted("temperature_f")),
        f"$A${TOP + 1}",
        units(quoted("gauge_bar"), quoted("gauge_psi")),
        f"${column}${TOP}",
        DRINK,
    )


def grid(page: Sheet, last: str) -> None:
    page.put(TOP, "A", "=" + units(quoted("°C | bar, g/L"), quoted("°F | psi, volumes")), "axis")
    axes = [axis("metric", "gauge_bar"), axis("us", "gauge_psi"), axis("metric", "c"), axis("us", "f")]
    (bar, bars), (psi, psis), (celsius, degrees), (fahrenheit, steps) = axes
    for index in range(COLUMNS):
        value = units(repr(round(bar + index * bars, 6)), repr(psi + index * psis))
        page.put(TOP, column_name(index + 1), "=" + value, "axis", 1)
    for index in range(ROWS):
        value = units(repr(celsius + index * degrees), repr(fahrenheit + index * steps))
        page.put(TOP + 1 + index, "A", "=" + value, "axis", 0)
    body = f"$A${TOP + 1}:$A${TOP + ROWS}", f"$B${TOP}:${last}${TOP}"
    formula = call(
        "DISSOLVED_CO2",
        units(quoted("co2_g_per_l"), quoted("volumes")),
        units(quoted("temperature_c"), quoted("temperature_f")),
        body[0],
        units(quoted("gauge_bar"), quoted("gauge_psi")),
        body[1],
        DRINK,
    )
    for row in range(TOP + 1, TOP + 1 + ROWS):
        for index in range(COLUMNS):
            page.put(row, column_name(index + 1), None, "grid", 2)
    page.put(TOP + 1, "B", "=" + formula, "grid", 2, array=(ROWS, COLUMNS))
    for row in range(TOP, TOP + ROWS + 1):
        page.heights[row] = 0.62
    page.put(
        TOP + ROWS + 1,
        "A",
        "Once the drink has had the time: days at a still surface, hours when shaken. "
        "Gauge pressure "
        "of CO2 alone; a mixed gas, or air left in the keg, holds less.",
        "note",
        across=COLUMNS + 1,
    )
    page.signal(f"B{TOP + 1}:{last}{TOP + ROWS}", ("is-error", "failed"))
