"""The workbook of plain formulas: generated from the catalogue, for any spreadsheet program."""
