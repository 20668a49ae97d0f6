"""Writes the workbook of plain formulas: `python carb-sheet/plain/generate.py`. A test holds the file to it."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

from book import Book  # noqa: E402

WORKBOOK = Path(__file__).parent.parent / "plain_formulas.xlsx"

if __name__ == "__main__":
    Book().write(Path(sys.argv[1]) if len(sys.argv) > 1 else WORKBOOK)
