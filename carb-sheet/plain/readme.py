"""The first sheet: what the workbook is, what can hurt, and what it leaves to the library."""

from __future__ import annotations

import carb

from .core import EQUATIONS
from .paper import Sheet

SHEETS = [
    ("Bottle", "priming sugar for a batch by the printed tables, for one sugar and six others"),
    ("Keg", "the gauge pressure that keeps a carbonation, and the carbonation that a gauge pressure keeps"),
    ("Chart", "gauge pressures by temperature and carbonation, for the place where it hangs"),
    ("Line", "length of a draught line by the trade's balance, or the pressure that a length takes"),
    ("Gravity", "extract, attenuation and alcohol, and the CO2 of the points that can still ferment"),
    ("Purge", "cycles of filling and venting to a limit of oxygen, and the CO2 they take"),
    ("Gas", "the CO2 that a keg takes, and how many kegs a cylinder does"),
    ("Equations", "every equation of the library's catalogue, to try alone"),
    ("Check", "published values, worked out again here: pass or fail"),
    ("Tables", "units, sugars, tubes and bottles, with definitions and sources"),
]

# The core's own words, by code; those that tell a number of an answer are told without it.
CAUTIONS = ["not_for_conditioning", "fermentable_left", "assumed_finished", "heated_glass", "wild_danger", "high_gauge",
            "low_half", "room_immediately_dangerous", "cylinder_hot"]  # fmt: skip

NEEDS_THE_LIBRARY = [
    "the worst case of a bottle: warm storage, trapped air, what may still ferment, and the verdict on the glass",
    "the mass balance of a sealed package: headspace, real gas, water vapour, a drink's own composition (its root is "
    "searched)",
    "degrees Plato to specific gravity by the cubic of the tables (it iterates), and gauge pressures by the quadratic",
    "blended gas, drinks other than beer in a keg, natural carbonation in a closed vessel",
    "a line by its flow: friction depends on the flow that is looked for",
    "schedules of carbonating, conditioning, uncertainty, a whole packaging day, the cross-check of another "
    "program's number",
]


def readme() -> Sheet:
    sheet = Sheet("Read me", "Carbonating and packaging: a workbook of plain formulas")
    sheet.widths = (14, 104)
    sheet.head(
        "No macros, nothing to install: every number here is a worksheet formula that you can read. The formulas "
        "were written "
        "from the catalogue of the library carb, and each cell was checked against it in LibreOffice and Gnumeric; no "
        "other "
        "spreadsheet program was tried. The colour of a cell that waits for your value is that of this one:"
    )
    sheet.put(sheet.row - 1, 0, "your value", "input")
    sheet.put(sheet.row - 1, 1, "   Sheets are protected without a password; units and lists open on a click.", "text")
    sheet.row += 1
    sheet.section("What can hurt")
    for text in (
        "Glass bursts. This workbook doses by the handbook and does not judge a bottle: it works out neither the "
        "worst case "
        "nor the pressure in a warm room. Growlers, screw-cap jugs and still-wine bottles are not made for the "
        "pressure of "
        "conditioning. Take bottles whose maker rates them, bottle only what is finished, and never heat filled glass.",
        "Kegs and cylinders burst too. Never go above the rating marked on the vessel, nor above its relief valve; "
        "plastic kegs "
        "and fermenters stand less than steel. Keep a cylinder upright, chained and cool, and leave its relief "
        "device alone.",
        "CO2 suffocates. It is heavier than air and lies low in cellars and cold rooms: air the room, fit a CO2 "
        "alarm, and never "
        "go in to help anybody where it may stand.",
        "The maker's rating, local code and licensed practice decide, not this sheet.",
    ):
        sheet.text(text, "danger")
    sheet.row += 1
    sheet.section("In the library's own words (… is a number of its answer)")
    for code in CAUTIONS:
        row = next(row for row in carb.cautions() if row.code == code)
        sheet.put(sheet.row, 0, row.level, row.level)
        sheet.wrapped(sheet.row, 1, _worded(row.text), "text")
        sheet.row += 1
    sheet.row += 1
    sheet.section("The sheets")
    for name, said in SHEETS:
        sheet.put(sheet.row, 0, f"internal:'{name}'!A1", "link", name)
        sheet.put(sheet.row, 1, said, "text")
        sheet.row += 1
    sheet.row += 1
    sheet.section("How it answers")
    for text in (
        "An empty cell, text, or a number outside what the library answers makes #N/A in every result that needs it: "
        "never a "
        "number that looks right.",
        "Inside that, but outside the range that a source states, the number stands and a line below the results "
        "says so.",
        "Gauge pressure, air pressure and their sum stand in cells of their own: a gauge means nothing without the "
        "air outside.",
        f"It holds the handbook's equations ({len(EQUATIONS)} of the catalogue stand on the sheet Equations, those "
        "behind the "
        "library's physical basis too, each alone). A volume of CO2 is the library's: "
        + next(unit.definition for unit in carb.units() if unit.name == "volumes")
        + ".",
    ):
        sheet.text(text)
    sheet.row += 1
    sheet.section("Needs the library")
    for text in NEEDS_THE_LIBRARY:
        sheet.text(f"–  {text}")
    return sheet


def _worded(text: str) -> str:
    """A caution as it is said without an answer: an ellipsis where its numbers go."""
    plain = text.replace("{value}", "…").replace("{limit}", "…")
    return plain[0].upper() + plain[1:]
