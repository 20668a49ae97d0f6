"""The workbook of a packaging day for the add-in of LibreOffice Calc: what writes `packaging_day.ods`."""
