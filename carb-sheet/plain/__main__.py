"""Writes plain_formulas.xlsx: `python -m plain`, beside the folder of this package. A test holds the file to it."""

from .book import PATH, Book

Book().write(PATH)
