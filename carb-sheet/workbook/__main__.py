"""Writes packaging_day.ods: `python -m workbook`, beside the folder of this package."""

from . import ods
from .book import PATH, TITLE, sheets
from .core import version

PATH.write_bytes(ods.written(sheets(), TITLE, version()))
