"""The sheet of the chart: gauge pressures by temperature and carbonation, for the place where it hangs."""

from __future__ import annotations

from math import isnan, nan
from typing import Any

import carb
from carb import _carb
from core import EQUATIONS, FACTOR, UNITS, Equation, convert
from jobs import CARBONATION, PRESSURE, TEMPERATURE, air_inputs, air_of, kept
from paper import Node, Sheet, address, as_unit, in_unit, written_number

ROWS, COLUMNS = 16, 13


def chart(given: dict[str, tuple[Any, str | None]] | None = None) -> Sheet:
    sheet = Sheet("Chart", "Chart: gauge pressure that keeps a carbonation", given or {})
    sheet.widths = (27, *([9.5] * COLUMNS))
    sheet.landscape = True
    sheet.head(
        "Beer under CO2, by the fit of the printed chart, for the air pressure of the place below; gauges read above "
        "that. A dash: "
        "under CO2 alone no pressure keeps so little. In red: outside what the source states, extrapolated.",
        "Never set more than the rating marked on the keg.",
    )
    sheet.section("Inputs", ">your value", "unit", ">from", ">to")
    ends = [
        sheet.input("cold", "coldest beer", "keg_pressure", "temperature_c", 0, "c", TEMPERATURE),
        sheet.input("warm", "warmest beer", "keg_pressure", "temperature_c", 15, "c", TEMPERATURE),
        sheet.input("least", "least carbonation", "keg_pressure", "volumes", 1.6, "volumes", CARBONATION),
        sheet.input("most", "most carbonation", "keg_pressure", "volumes", 4, "volumes", CARBONATION),
    ]
    air = air_inputs(sheet, "keg_pressure")
    printed = [UNITS[name].printed for name in PRESSURE]
    shown, which = sheet.choice("shown", "pressures in", "", printed, "bar", "=units_Pressure")
    sheet.row += 1
    top = sheet.row
    sheet.row += ROWS + 8
    sheet.working()
    cold, warm, least, most = (kept(sheet, node) for node in ends)
    outside = air_of(sheet, air)
    sheet.put(top, 0, "temperature   \\   carbonation", "grid corner")
    unit_of = {node.label: sheet.inputs[at] for at, node in enumerate((cold, warm, least, most))}
    t_unit, v_unit = (unit_of[node.label].unit for node in (cold, least))
    t_cell, v_cell = (unit_of[node.label].unit_cell for node in (cold, least))
    sheet.put(
        top,
        1,
        f'="gauge pressure in "&{shown}&", temperature in "&{t_cell}&", carbonation in "&{v_cell}',
        "grid said",
        f"gauge pressure in {shown_text(sheet, shown)}, temperature in {UNITS[t_unit].printed}, carbonation in "
        f"{UNITS[v_unit].printed}"
        if t_unit in UNITS and v_unit in UNITS
        else nan,
        merged=COLUMNS,
    )
    temperatures = _scale(
        sheet, cold, warm, t_unit, t_cell, "Temperature", ROWS, lambda at: (top + 2 + at, 0), "grid side"
    )
    carbonations = _scale(
        sheet, least, most, v_unit, v_cell, "Carbonation", COLUMNS, lambda at: (top + 1, 1 + at), "grid top"
    )
    sheet.put(top + 1, 0, "", "grid corner")
    text = _carb.turned("chart_fit", "P")
    pressure = UNITS[PRESSURE[which]] if which >= 0 else None
    for i, (t, t_first) in enumerate(temperatures):
        for j, (v, v_first) in enumerate(carbonations):
            nodes = {
                "f": as_unit(_first(t, t_cell, "Temperature", "c"), "c", "f"),
                "V": as_unit(_first(v, v_cell, "Carbonation", "co2_g_per_l"), "co2_g_per_l", "volumes"),
                "k": repr(FACTOR),
            }
            total = as_unit(f"({text.format_map(nodes)})", "psi", "pa")
            gauge = f"({total}-{outside.written})"
            place = f"MATCH({shown},units_Pressure,0)"
            wanted = f"({gauge}-INDEX(offsets_Pressure,{place}))/INDEX(scales_Pressure,{place})"
            formula = f'=IFERROR(IF({gauge}<0,"–",{wanted}),NA())'
            value: Any = nan
            if pressure and not any(map(isnan, (t_first, v_first, outside.value))):
                try:
                    answer = carb.keg_pressure(co2_g_per_l=v_first, temperature_c=t_first, ambient_pa=outside.value)
                    value = convert(answer.gauge_bar, "bar", pressure.name)
                except carb.CarbError:
                    value = "–"
            look = "grid odd" if i % 2 else "grid even"
            sheet.put(top + 2 + i, 1 + j, formula, look, value)
            sheet.heights[top + 2 + i] = 23
    sheet.heights[top] = sheet.heights[top + 1] = 23
    equation = EQUATIONS["chart_fit"]
    sheet.used.append(equation)
    for node in (cold, warm):
        sheet.range_notes(equation, {"f": sheet.convertible(node, "f")})
    sheet.outside = _outside(sheet, equation, outside, shown, pressure.name if pressure else None)
    sheet.outside["unit"] = _pinned(t_cell or "")
    sheet.grid = (top + 2, 1, top + 1 + ROWS, COLUMNS)
    first = top + 2 + ROWS
    sheet.remark_block(first, 2)
    sheet.equation_block(first + 3, 3)
    sheet.settle()
    return sheet


def _outside(sheet: Sheet, equation: Equation, outside: Node, shown: str, unit: str | None) -> dict[str, str]:
    """Where the source ends: a cell for pressures, in the unit that is shown; numbers in °F for temperatures."""
    place = f"MATCH({shown},units_Pressure,0)"
    known = {symbol.name: symbol for symbol in equation.inputs}
    high = in_unit(Node(written_number(known["P"].high), "psi", known["P"].high), "pa")
    gauge = high.value - outside.value
    most = sheet.line(
        "gauge pressure at which the chart ends",
        f""
        f""
        f"=IFERROR(({high.written}-{outside.written}-INDEX(offsets_Pressure,{place}))/INDEX(scales_Pressure,{place}),NA())",
        convert(gauge, "pa", unit) if unit else nan,
        "",
        "in the unit that is shown",
    )
    return {"most": most.written, "low": written_number(known["f"].low), "high": written_number(known["f"].high)}


def shown_text(sheet: Sheet, cell: str) -> Any:
    return next(each.value for each in sheet.inputs if each.cell == cell)


def _first(cell: str, unit_cell: str, dimension: str, first: str) -> str:
    """A cell of the margin in the first unit of its dimension."""
    place = f"MATCH({_pinned(unit_cell)},units_{dimension},0)"
    si = f"({cell}*INDEX(scales_{dimension},{place})+INDEX(offsets_{dimension},{place}))"
    known = UNITS[first]
    return f"({si}-offset_{first})" if known.offset else si


def _pinned(cell: str) -> str:
    return f"${cell[0]}${cell[1:]}"


def _scale(
    sheet: Sheet, low: Node, high: Node, unit: str, unit_cell: str, dimension: str, count: int, where: Any, look: str
) -> list[tuple[str, float]]:
    """The margin: even steps from one end to the other, in the unit of the first."""
    first = low.unit
    place = f"MATCH({unit_cell},units_{dimension},0)"

    def shown(node: Node) -> str:
        known = UNITS[first]
        si = f"({node.written}+offset_{first})" if known.offset else node.written
        return f"({si}-INDEX(offsets_{dimension},{place}))/INDEX(scales_{dimension},{place})"

    found = []
    for at in range(count):
        row, column = where(at)
        formula = f"=IFERROR({shown(low)}+({shown(high)}-{shown(low)})*{at}/{count - 1},NA())"
        value = nan
        if unit in UNITS and not isnan(low.value + high.value):
            a, b = convert(low.value, first, unit), convert(high.value, first, unit)
            value = a + (b - a) * at / (count - 1)
        sheet.put(row, column, formula, look, value)
        found.append((address(row, column), nan if isnan(value) else convert(value, unit, first)))
    return found
