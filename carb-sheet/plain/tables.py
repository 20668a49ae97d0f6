"""The sheet of tables: units, sugars and tubes, which the formulas of the other sheets look up by name."""

from __future__ import annotations

import carb
from core import SLACK, UNITS
from paper import Sheet


class Tables:
    """The sheet, and the names under which formulas know its cells."""

    def __init__(self) -> None:
        self.sheet = Sheet("Tables", "Tables: units, sugars, tubes, bottles")
        self.sheet.widths = (44, 20, 17, 21, 19, 62)
        self.sheet.pages = 0
        self.names: dict[str, str] = {}
        sheet = self.sheet
        sheet.head(
            "What the formulas look up. Every figure is the library's own, with its definition or source beside it."
        )
        sheet.put(sheet.row, 0, "relative slack of every limit", "label")
        self.names["slack"] = self._fixed(sheet.put(sheet.row, 1, SLACK, "exact"))
        sheet.row += 2
        self._units()
        self._sugars()
        self._tubes()
        self._bottles()

    @staticmethod
    def _fixed(cell: str, end: str | None = None) -> str:
        def fixed(one: str) -> str:
            return f"${one[0]}${one[1:]}"

        return f"=Tables!{fixed(cell)}" + (f":{fixed(end)}" if end else "")

    def _units(self) -> None:
        sheet = self.sheet
        sheet.section("Units: SI = value × scale + offset", "as printed", "name", ">scale", ">offset", "definition")
        spans: dict[str, list[int]] = {}
        for unit, said in zip(UNITS.values(), carb.units(), strict=True):
            spans.setdefault(unit.dimension, [sheet.row, sheet.row])[1] = sheet.row
            sheet.put(sheet.row, 0, _spaced(unit.dimension), "text")
            sheet.put(sheet.row, 1, unit.printed, "unit")
            sheet.put(sheet.row, 2, unit.name, "unit")
            scale = sheet.put(sheet.row, 3, unit.scale, "exact")
            offset = sheet.put(sheet.row, 4, unit.offset, "exact")
            sheet.wrapped(sheet.row, 5, f"{said.definition}; {said.source}", "small")
            self.names[f"scale_{unit.name}"] = self._fixed(scale)
            self.names[f"offset_{unit.name}"] = self._fixed(offset)
            sheet.row += 1
        for dimension, (first, last) in spans.items():
            for name, column in (("units", "B"), ("scales", "D"), ("offsets", "E")):
                self.names[f"{name}_{dimension}"] = self._fixed(f"{column}{first + 1}", f"{column}{last + 1}")
        sheet.row += 1

    def _list(self, name: str, column: str, first: int) -> None:
        self.names[name] = self._fixed(f"{column}{first + 1}", f"{column}{self.sheet.row}")

    def _sugars(self) -> None:
        sheet = self.sheet
        sheet.section("Sugars: CO2 from a gram as sold, by theory", ">g/g", "", "name", "", "standing and source")
        first = sheet.row
        for row in carb.fermentables():
            sheet.wrapped(sheet.row, 0, row.title, "text")
            sheet.put(sheet.row, 1, row["yield_g_per_g"], "exact")
            sheet.put(sheet.row, 3, row.name, "text", merged=4)
            sheet.wrapped(sheet.row, 5, "; ".join(filter(None, (row.standing, row.source))), "small")
            sheet.row += 1
        self._list("list_sugars", "D", first)
        self._list("list_sugars_yield", "B", first)
        sheet.row += 1

    def _tubes(self) -> None:
        sheet = self.sheet
        sheet.section("Tubes: resistance by the handbooks", ">psi/ft", ">bar/m", "name", "", "standing and source")
        first = sheet.row
        for row in carb.tubes():
            sheet.wrapped(sheet.row, 0, row.title, "text")
            sheet.put(sheet.row, 1, row["resistance_psi_per_ft"], "exact")
            sheet.put(sheet.row, 2, row["resistance_bar_per_m"], "exact")
            sheet.put(sheet.row, 3, row.name, "text", merged=4)
            sheet.wrapped(sheet.row, 5, "; ".join(filter(None, (row.standing, row.source))), "small")
            sheet.row += 1
        self._list("list_tubes", "D", first)
        self._list("list_tubes_resistance", "B", first)
        sheet.row += 1

    def _bottles(self) -> None:
        sheet = self.sheet
        sheet.section(
            "Bottles: what classes usually hold; no rating",
            ">from vol",
            ">to vol",
            "for conditioning",
            "",
            "said of it",
        )
        for row in carb.bottle_classes():
            sheet.wrapped(sheet.row, 0, row.title, "text")
            kept = row["high_volumes"] > 0
            sheet.put(sheet.row, 1, row["low_volumes"] if kept else "", "exact")
            sheet.put(sheet.row, 2, row["high_volumes"] if kept else "", "exact")
            sheet.put(sheet.row, 3, row["for_conditioning"], "text", merged=4)
            sheet.wrapped(sheet.row, 5, "; ".join(filter(None, (row.standing, row.published, row.source))), "small")
            sheet.row += 1


def _spaced(name: str) -> str:
    return "".join(f" {letter.lower()}" if letter.isupper() else letter for letter in name).strip()
