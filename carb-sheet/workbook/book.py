"""The workbook: its sheets in order."""

from pathlib import Path

from . import bottles, chart, check, cross, keg, readme, sugars
from .sheet import Sheet

PATH = Path(__file__).parents[1] / "packaging_day.ods"
TITLE = "Packaging day"


def sheets() -> list[Sheet]:
    """Every sheet, as it is laid out."""
    return [one.sheet() for one in (readme, bottles, keg, chart, sugars, cross, check)]
