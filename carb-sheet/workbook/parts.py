"""Formulas that several sheets are made of."""

from __future__ import annotations

from .formula import call, quoted
from .sheet import Sheet

WRONG = "Error: an input above is missing or is no number, or the add-in is not installed (see Read me)."
NOTHING = "Nothing."
STATUS_DANGER = ". Read what stands at the foot of the page in red before you go on."
STATUS_LISTED = ". Never fill those marked DANGER in your list: the drink is more than they are made for."
STATUS_FAILED = "Something is missing or wrong, so some results are errors: see the foot of the page."
STATUS_FINE = "Nothing dangerous was found for these inputs. Mind what stands at the foot of the page all the same."


def opened(page: Sheet, title: str) -> None:
    """The head of a sheet for the day: its title, what to do, and the headings of inputs and results."""
    page.put(1, "A", title, "title", across=5)
    page.put(1, "F", '="carb " & CARB_VERSION()', "lead", across=5)
    page.put(
        2,
        "A",
        "Fill in the yellow cells. The name to the left of a value has a list: it chooses the unit, or another "
        "way to say it.",
        "lead",
        across=10,
    )
    page.heights |= {1: 1.0, 2: 0.7}
    inputs = {"A": "What you fill in", "B": "name", "C": "value", "D": "if left blank"}
    page.heading(4, {**inputs, "F": "What comes out", "G": "metric", "I": "US"}, "J", "CGI")


def asked(function: str, wanted: str, *arguments: str) -> str:
    """An output of a function of the add-in."""
    return call(function, quoted(wanted), *arguments)


def minded(function: str, *arguments: str) -> str:
    """What is to be minded of a function's answer, or why there is none."""
    return call("CARB_CAUTIONS", quoted(function), *arguments)


def in_unit(row: int, unit: str) -> str:
    """An input in another unit; nothing where it is blank or no number, so that the function says what is missing."""
    return call("IFERROR", call("CARB_CONVERT", f"$C${row}", f"$B${row}", quoted(unit)), '""')


def air(sheet: str, wanted: str) -> str:
    """The pressure of the air outside, in a unit that a formula names: as measured, or from the altitude."""
    name, value, block = (sheet + one for one in ("$B$8", "$C$8", "$B$8:$C$9"))
    from_altitude = call("AMBIENT_PRESSURE", wanted, block)
    return call("IF", f'LEFT({name};7)="ambient"', call("CARB_CONVERT", value, name, wanted), from_altitude)


def entry(table: str, asked_name: str, columns: tuple[str, ...], wanted: str) -> str:
    """What a row of a table says, found by its first column."""
    whole = call("CARB_TABLE", quoted(table))
    place = call("MATCH", asked_name, call("INDEX", whole, "0", "1"), "0")
    return call("INDEX", whole, place, str(columns.index(wanted) + 1))


def verdict(text: str) -> str:
    """The worst that a text of cautions says, in a word."""
    words = (("Error:", "no answer"), ("DANGER:", "DANGER"), ("Caution:", "caution"))
    found = '"within"'
    for start, word in reversed(words):
        found = call("IF", f"LEFT({text};{len(start)})={quoted(start)}", quoted(word), found)
    return call("IFERROR", found, quoted("no answer"))


def or_else(text: str, *causes: str) -> str:
    """A text of cautions; where its arguments are errors themselves, what the first cause that fails says of it."""
    fallback = quoted(WRONG)
    for cause in reversed(causes):
        fallback = call("IF", f'LEFT({cause};6)="Error:"', cause, fallback)
    return call("IFERROR", call("IF", f'{text}=""', quoted(NOTHING), text), fallback)


def notes(
    sheet: Sheet,
    row: int,
    last: str,
    texts: list[tuple[str, str, float]],
    judged: tuple[str, str] | None = None,
) -> int:
    """What is to be minded at the foot of a sheet: of what, the formula, and the height. Gives the row after.

    Verdicts that stand elsewhere (of what, and the cells) count for the head of the sheet too."""
    width = ord(last) - ord("A")
    sheet.heading(row, {"A": "What to mind"}, last)
    first = row + 1
    for row, (label, formula, height) in enumerate(texts, first):
        sheet.put(row, "A", label, "label")
        sheet.put(row, "B", "=" + formula, "text", across=width)
        sheet.heights[row] = height
    end = first + len(texts)
    cells = [f"$B${one}" for one in range(first, end)]
    wrong = [f'LEFT({cell};6)="Error:"' for cell in cells]
    if judged:
        wrong.append(f'COUNTIF({judged[1]};"no answer")>0')
    status = call("IF", call("OR", *wrong), quoted(STATUS_FAILED), quoted(STATUS_FINE))
    if judged:
        what, verdicts = judged
        status = call("IF", f'COUNTIF({verdicts};"DANGER")>0', quoted(f"DANGER: {what}{STATUS_LISTED}"), status)
    for row, cell in reversed(list(zip(range(first, end), cells, strict=True))):
        status = call("IF", f'LEFT({cell};7)="DANGER:"', f'"DANGER: "&$A${row}&{quoted(STATUS_DANGER)}', status)
    sheet.put(3, "A", "=" + call("IFERROR", status, quoted(STATUS_FAILED)), "status", across=width + 1)
    sheet.heights[3] = 0.75
    sheet.signal(
        f"B{first}:B{end - 1}",
        ("is-error", "danger"),
        ('begins-with("DANGER")', "failed"),
        ('begins-with("Error")', "danger"),
        ('begins-with("Caution")', "careful"),
    )
    sheet.signal("A3", ('begins-with("DANGER")', "failed"), ('begins-with("Something")', "careful"))
    return end
