"""The sheet that holds another program's numbers beside these."""

from __future__ import annotations

from . import bottles, core, keg
from .formula import call, quoted
from .parts import air, asked, minded, notes, or_else
from .sheet import Sheet

TOP = 7
NEAR = "$C$5"


def here(sheet: str, *arguments: str) -> tuple[str, ...]:
    """Blocks of another sheet; texts stay as they are."""
    return tuple(f"{sheet}.{one}" if one.startswith("$") else one for one in arguments)


def questions() -> dict[str, str]:
    """On what programs differ, in the library's words."""
    return {row["question"]: row["asks"] for row in core.rows("crosscheck_habits")}


BOTTLES = here("Bottles", bottles.PLACE, bottles.WARMEST)
DOSE = here("Bottles", bottles.DOSE)
GAUGE = (quoted("gauge_bar"), "Keg.$G$5")
CYCLES = (quoted("cycles_count"), "Keg.$G$12")
# What is asked, its function, the names in which the other may print it, their number as an example, blocks, habits.
ROWS: tuple[tuple[str, str, tuple[str, ...], float | None, tuple[str, ...], tuple[str, ...]], ...] = (
    (
        "Keg: pressure",
        "KEG_PRESSURE",
        ("gauge_psi", "gauge_bar", "gauge_kpa"),
        11.9,
        here("Keg", keg.SERVED),
        ("beer_solubility", "altitude", "atmosphere", "gas_volume"),
    ),
    (
        "Keg: CO2 at your gauge's reading",
        "DISSOLVED_CO2",
        ("volumes", "co2_g_per_l"),
        None,
        here("Keg", "$B$5:$C$10", keg.READ),
        ("beer_solubility", "altitude", "atmosphere", "gas_volume"),
    ),
    (
        "Keg: purge cycles",
        "PURGE_CYCLES",
        ("whole_cycles_count", "cycles_count"),
        9,
        here("Keg", keg.PURGE, keg.AMBIENT),
        ("air_oxygen", "gas_oxygen", "cycles_rounding", "altitude"),
    ),
    (
        "Keg: CO2 in all",
        "GAS_BUDGET",
        ("total_gas_g", "total_gas_oz", "total_gas_kg", "total_gas_lb"),
        None,
        (*here("Keg", "$B$8:$C$13", keg.VESSEL), *CYCLES, *GAUGE),
        ("start_co2", "keg_headspace", "gas_law"),
    ),
    (
        "Keg: line, by the trade's balance",
        "HANDBOOK_LINE",
        ("line_ft", "line_m"),
        5.5,
        (*here("Keg", keg.TUBE), *GAUGE),
        ("tube_resistance", "lift", "faucet"),
    ),
    (
        "Keg: line, by the flow in the tube",
        "LINE_LENGTH",
        ("line_ft", "line_m"),
        None,
        (*here("Keg", keg.DRINK, keg.COLD, keg.POUR), *GAUGE),
        ("tube_resistance", "lift"),
    ),
    (
        "Bottles: CO2 still in the drink",
        "RESIDUAL_CO2",
        ("volumes", "co2_g_per_l"),
        0.85,
        BOTTLES,
        ("residual", "altitude", "fermenter_pressure"),
    ),
    (
        "Bottles: sugar",
        "PRIMING_SUGAR",
        ("mass_g", "mass_oz", "mass_kg", "mass_lb"),
        121,
        DOSE,
        ("sugar_yield", "sugar_taken", "residual", "dose_headspace", "gas_volume"),
    ),
    (
        "Bottles: expected on a hot day",
        "PACKAGE_PRESSURE",
        ("expected_gauge_bar", "expected_gauge_psi", "expected_gauge_kpa"),
        None,
        (
            *here("Bottles", bottles.PACKAGE),
            quoted("co2_g_per_l"),
            "Bottles.$G$9",
            quoted("temperature_c"),
            'IFERROR(CARB_CONVERT(Bottles.$C$19;Bottles.$B$19;"c");"")',
        ),
        ("package_headspace", "trapped_air", "extract_left"),
    ),
    (
        "Pressure of the air outside",
        "AMBIENT_PRESSURE",
        ("ambient_kpa", "ambient_bar", "ambient_psi"),
        None,
        (),
        ("altitude", "atmosphere"),
    ),
)
SUGAR = TOP + [row[1] for row in ROWS].index("PRIMING_SUGAR")


def sheet() -> Sheet:
    page = Sheet(
        "Cross-check", (5.6, 3.9, 2.2, 2.2, 2.1, 1.7, 5.0, 12.5), "another program's numbers", landscape=True, frozen=6
    )
    page.put(1, "A", "Another program says something else?", "title", across=8)
    page.put(
        2,
        "A",
        "Give it the inputs of the sheets Bottles and Keg, choose in which unit it prints, and "
        "write its numbers into "
        "the yellow cells.",
        "lead",
        across=8,
    )
    page.heights |= {1: 1.0, 2: 0.7}
    page.put(5, "A", "Near enough is a difference of", "label")
    page.put(5, "B", "percent", "fixed")
    page.put(5, "C", 2, "input")
    heads = (
        "what",
        "name",
        "theirs",
        "ours",
        "difference",
        "%",
        "verdict",
        "where such numbers usually part: judgement",
    )
    page.heading(6, dict(zip("ABCDEFGH", heads, strict=True)), "H", "CDEF")
    asks = questions()
    for row, (label, function, offered, theirs, blocks, habits) in enumerate(ROWS, TOP):
        page.put(row, "A", label, "label")
        page.put(row, "B", offered[0], "name", offered=offered)
        page.put(row, "C", theirs, "input")
        ours = call(function, f"$B{row}:$B{row}", *blocks) if blocks else air("Bottles.", f"$B{row}:$B{row}")
        page.put(row, "D", "=" + ours, "result", 3)
        given = f'$C{row}=""'
        page.put(row, "E", "=" + call("IF", given, '""', f"$C{row}-$D{row}"), "result", 3)
        page.put(row, "F", "=" + call("IF", given, '""', f"100*$E{row}/$D{row}"), "result", 1)
        side = f'"theirs is "&TEXT(ABS($F{row});"0.0")&" % "&IF($F{row}>0;"more";"less")'
        judged = call(
            "IF", f"NOT(ISNUMBER({NEAR}))", '"no answer"', call("IF", f"ABS($F{row})<={NEAR}", '"agrees"', side)
        )
        page.put(row, "G", "=" + call("IF", given, '""', call("IFERROR", judged, '"no answer"')), "word")
        page.put(row, "H", "; ".join(asks[one] for one in habits), "small")
        page.heights[row] = 0.8
    last = TOP + len(ROWS) - 1
    page.signal(
        f"G{TOP}:G{last}", ('="agrees"', "fine"), ('="no answer"', "failed"), ('begins-with("theirs")', "careful")
    )
    follow(page, last + 2)
    return page


def follow(page: Sheet, row: int) -> None:
    """What their sugar would make, and whether bottles stand it."""
    page.heading(row, {"A": "If their sugar went into the bottles", "D": "metric", "F": "US"}, "H", "DF")
    mass = f'{quoted("mass_g")};IFERROR(CARB_CONVERT($C${SUGAR};$B${SUGAR};"g");"")'
    blocks = (*here("Bottles", bottles.UNPRIMED, "$B$16:$C$18"), mass)
    blank = f'$C${SUGAR}=""'
    made = asked("PRIMED_CARBONATION", "volumes", *blocks, quoted("basis"), quoted("handbook"))
    hot = (quoted("temperature_c"), 'IFERROR(CARB_CONVERT(Bottles.$C$19;Bottles.$B$19;"c");"")')
    packed = asked("PRIMED_CARBONATION", "co2_g_per_l", *here("Bottles", *bottles.FINISHED), mass)
    package = (*here("Bottles", bottles.PACKAGE), quoted("co2_g_per_l"), packed, *hot)
    lines = (
        ("It makes, by the trade's tables", made.replace('"volumes"', '"co2_g_per_l"', 1), "g/L", made, "vol", 2),
        (
            "Worst pressure on the hot day",
            asked("PACKAGE_PRESSURE", "worst_gauge_bar", *package),
            "bar",
            asked("PACKAGE_PRESSURE", "worst_gauge_psi", *package),
            "psi",
            1,
        ),
    )
    for line, (label, metric, unit, us, other, places) in enumerate(lines, row + 1):
        page.put(line, "A", label, "label", across=3)
        page.put(line, "D", "=" + call("IF", blank, '""', metric), "result", 2)
        page.put(line, "E", unit, "unit")
        page.put(line, "F", "=" + call("IF", blank, '""', us), "result", places)
        page.put(line, "G", other, "unit")
    text = or_else(minded("PACKAGE_PRESSURE", *package), minded("PRIMED_CARBONATION", *blocks))
    notes(page, row + 4, "H", [("Their sugar", call("IF", blank, quoted("No number of theirs is given."), text), 3.0)])
