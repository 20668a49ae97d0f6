"""The sheet that says what the workbook is, and what to mind."""

from __future__ import annotations

from . import bottles, core, keg
from .formula import call, quoted
from .sheet import Sheet


def paragraphs() -> list[tuple[str, str, int]]:
    """Texts with their looks and lines."""
    limit = next(row for row in core.rows("exposure_limits") if row["name"] == "idlh")
    return [
        ("What this is", "chapter", 1),
        (
            "A workbook for the day on which beer, cider, mead or soft drinks go into bottles and kegs. Every "
            "number is worked out by "
            f"the library carb {core.version()}, through its add-in for LibreOffice Calc: the sheets hold no "
            f"equations of their own.",
            "prose",
            2,
        ),
        ("Before the first use: the add-in", "chapter", 1),
        (
            "Install carb.oxt once: Tools, Extensions, Add, then start LibreOffice again. Without it every result "
            "reads #NAME? or an "
            "error, never a number. Nothing else is needed, and there are no macros.",
            "prose",
            2,
        ),
        ("What to fill in", "chapter", 1),
        (
            "Yellow cells are yours; all others are protected, without a password. To the left of a value stands "
            "its name, which chooses "
            "the unit: pick volumes or co2_g_per_l, packaged_l or packaged_us_gal, temperature_c or temperature_f "
            "from the list of the cell.",
            "prose",
            2,
        ),
        (
            "A blank cell is not zero. Where something usual is taken for it, the note beside it says what; where "
            "it is needed, the results "
            "that hang on it are errors (such as Err:502), and the foot of the page says in a sentence what to do.",
            "prose",
            2,
        ),
        (
            "Bottles and Keg are the day's two sheets. Chart is for the door of the keg fridge. Sugars lists what "
            "to prime with. "
            "Cross-check holds another program's numbers beside these. Check works out published values again: it "
            "should say that none "
            "fails.",
            "prose",
            2,
        ),
        (
            "Every sheet prints on one page. The numbers that stand in the yellow cells now are an invented example.",
            "prose",
            1,
        ),
        ("What can hurt", "chapter", 1),
        (
            "Glass bursts. Bottle only what has finished, weigh the sugar, mix it well, and never use a bottle for "
            "more than its maker "
            "rates it for. Keep full bottles cool, in boxes, away from faces; wear eye protection where one may be "
            "too full.",
            "strong",
            2,
        ),
        (
            sentence(
                said("not_for_conditioning", ". ", -1),
                said("heated_glass", ": ", 0),
                said("carbonation_danger", ": ", -1),
            ),
            "prose",
            2,
        ),
        (
            "A keg, a fermenter and their hoses have ratings: read the marking on each, never go above the least "
            "of them or above the "
            "relief valve, and never plug a relief valve.",
            "strong",
            2,
        ),
        (
            f"CO2 fills cellars, rooms and cold stores from the floor up, and cannot be smelt. "
            f"{limit['limit_vol_percent']:.0f} % of it in the "
            "air is immediately dangerous to life. Fit an alarm, air the room, and never go in after somebody.",
            "strong",
            2,
        ),
        ("The maker's rating, local code and licensed practice go before every number in this workbook.", "strong", 1),
        ("Where the numbers come from", "chapter", 1),
        (
            "Doses and keg pressures follow the trade's printed tables unless something else is said; pressures in "
            "packages follow a mass "
            "balance, with a worst case beside what is expected. What the tables leave out, the balance shows.",
            "prose",
            2,
        ),
    ]


def said(code: str, mark: str, part: int) -> str:
    """A part of a caution, without the numbers of a case."""
    return core.caution(code).split(mark)[part]


def sentence(*texts: str) -> str:
    """Texts as sentences, one after another."""
    return " ".join(f"{text[0].upper()}{text[1:]}." for text in texts)


LATER = "Told as soon as the sheet has an answer."
SOURCES = (
    ("Sugar", "PRIMING_SUGAR", "Bottles", (bottles.DOSE,)),
    ("Keg pressure", "KEG_PRESSURE", "Keg", (keg.SERVED,)),
    (
        "Bottle pressure",
        "PACKAGE_PRESSURE",
        "Bottles",
        (
            bottles.PACKAGE,
            bottles.CARBONATION,
            quoted("temperature_c"),
            'IFERROR(CARB_CONVERT(Bottles.$C$19;Bottles.$B$19;"c");"")',
        ),
    ),
)


def sheet() -> Sheet:
    page = Sheet("Read me", (3.4, 18.6), "read me")
    page.put(1, "A", "Packaging day", "title", across=2)
    page.heights[1] = 1.1
    row = 2
    for text, look, lines in paragraphs():
        page.put(row, "A", text, look, across=2)
        page.heights[row] = 0.9 if look == "chapter" else 0.5 * lines + 0.25
        row += 1
    for label, function, name, blocks in SOURCES:
        arguments = (f"{name}.{one}" if one.startswith("$") else one for one in blocks)
        page.put(row, "A", label, "label")
        told = call("CARB_SOURCES", quoted(function), *arguments)
        page.put(row, "B", "=" + call("IFERROR", told, quoted(LATER)), "text")
        page.heights[row] = 2.2 if function == "KEG_PRESSURE" else 4.2
        row += 1
    return page
