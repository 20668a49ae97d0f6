"""The sheet of the keg: pressure, time, purging, gas, line, a hot day, and the room."""

from __future__ import annotations

from . import core
from .formula import call, quoted
from .parts import air, asked, entry, in_unit, minded, notes, opened, or_else
from .sheet import Sheet

DRINK, PLACE, AMBIENT = "$B$5:$C$7", "$B$5:$C$9", "$B$8:$C$9"
COLD, WANTED = "$B$10:$C$10", "$B$11:$C$11"
SERVED = "$B$5:$C$11"
"""The drink, the place, the temperature and the carbonation: what the regulator's pressure takes."""
TIMED = (
    "$B$5:$C$10",
    "$B$12:$C$14",
    quoted("volumes"),
    'IF($C$30="";"";$C$12+$C$30/100*(CARB_CONVERT($C$11;$B$11;"volumes")-$C$12))',
    quoted("gauge_bar"),
    "$G$5",
)
PURGE, VESSEL = "$B$15:$C$18", "$B$16:$C$20"
TUBE, POUR = "$B$21:$C$22", "$B$21:$C$24"
ROOM = "$B$25:$C$26"
WARM = "$B$28:$C$28"
READ = "$B$29:$C$29"
RATING, LEFT = "$B$18:$C$18", "$B$31:$C$31"
GAUGE = (quoted("gauge_bar"), "$G$5")
PURGING = ("PURGE_CYCLES", PURGE, AMBIENT)
RESIDUAL = ("RESIDUAL_CO2", PLACE, WARM)
MILLILITRES = 473


def sheet() -> Sheet:
    page = Sheet("Keg", (4.8, 4.0, 2.9, 1.9, 2.8, 5.6, 1.9, 1.3, 1.9, 1.3), "keg", frozen=4)
    opened(page, "Keg")
    inputs(page)
    results(page)
    warm = (quoted("filling_c"), in_unit(10, "c"), quoted("temperature_c"), in_unit(27, "c"))
    pressure, residual, purging = minded("KEG_PRESSURE", SERVED), minded(*RESIDUAL), minded(*PURGING)
    notes(
        page,
        33,
        "J",
        [
            ("Regulator", or_else(pressure), 1.9),
            ("Carbonating", or_else(minded("CARBONATION_TIME", *TIMED), pressure, residual), 1.4),
            ("Purging", or_else(purging), 1.4),
            (
                "Gas",
                or_else(minded("GAS_BUDGET", "$B$8:$C$13", VESSEL, *CYCLES, *GAUGE), pressure, residual, purging),
                1.4,
            ),
            ("Line", or_else(minded("LINE_LENGTH", DRINK, COLD, POUR, *GAUGE), pressure), 1.4),
            ("Keg on a hot day", or_else(minded("WARMED_KEG", PLACE, WANTED, *warm, LEFT, RATING)), 3.6),
            ("The room", or_else(minded("ROOM_CO2", quoted("released_g"), charge(), ROOM, AMBIENT)), 3.2),
        ],
    )
    return page


CYCLES = (quoted("cycles_count"), "$G$12")


def charge() -> str:
    """What the cylinder holds when full, in grams; nothing where no cylinder is chosen."""
    found = entry("cylinder_sizes", "$C$20", core.columns("cylinder_sizes"), "charge_g")
    return call("IF", '$C$20=""', '""', found)


def inputs(page: Sheet) -> None:
    page.given(5, "The drink", "keg_pressure", "beverage", "beer")
    page.given(6, "Alcohol", "keg_pressure", "abv_percent", 5.1)
    page.given(7, "Dissolved extract", "keg_pressure", "extract_g_per_l", 38)
    page.given(8, "Altitude, or air pressure", "keg_pressure", "altitude_m", 240, others=("ambient_kpa",))
    page.given(9, "Weather report's pressure", "keg_pressure", "sea_level_kpa", None)
    page.given(10, "Drink in the fridge", "keg_pressure", "temperature_c", 4)
    page.given(11, "Carbonation wanted", "keg_pressure", "volumes", 2.5)
    residual = asked(RESIDUAL[0], "volumes", *RESIDUAL[1:])
    page.worked(
        12, "CO2 already in the drink", "start_volumes", "=" + residual, "from its warmest temperature, below", 3
    )
    page.given(13, "Drink in the keg", "gas_budget", "packaged_l", 18.9, note="needed for the gas")
    page.given(14, "Way of carbonating", "carbonation_time", "method", "still")
    page.given(15, "Oxygen that may stay", "purge_cycles", "oxygen_ppm", 500)
    page.given(16, "Pressure for purging", "purge_cycles", "purge_gauge_bar", 1)
    page.given(17, "Keg, filled to the brim", "purge_cycles", "keg_l", 19.6)
    page.given(18, "Keg's rating, as marked", "purge_cycles", "keg_rating_gauge_bar", 9)
    page.given(19, "What is purged", "gas_budget", "purge", "empty", note="needed")
    page.given(20, "Cylinder", "gas_budget", "cylinder_size", "cylinder_2_kg", note="needed for the room")
    page.given(21, "Tube of the line", "line_length", "tube", "vinyl_3_16_in")
    page.given(22, "Faucet above the keg", "line_length", "rise_m", 0.6)
    page.given(23, "Seconds for a glass", "line_length", "pour_seconds", 10)
    page.given(24, "The glass", "line_length", "glass_ml", MILLILITRES)
    page.given(25, "The room", "room_co2", "room_m3", 160)
    page.given(26, "Its air changes", "room_co2", "air_changes_per_h", None)
    page.given(27, "A hot day there", "warmed_keg", "temperature_c", 35)
    page.given(28, "Warmest since fermentation", "residual_co2", "warmest_c", 20)
    page.given(29, "Your gauge reads", "dissolved_co2", "gauge_bar", 0.8, note="needed for what the keg holds now")
    page.given(31, "Fermentable in the keg", "warmed_keg", "fermentable_g_per_l", None)
    page.put(30, "A", "Carbonated: share of the way", "label")
    page.put(30, "B", "percent", "fixed")
    page.put(30, "C", 95, "input")
    page.noted(30, "needed; the end itself takes for ever")


def results(page: Sheet) -> None:
    def both(
        row: int,
        label: str,
        function: str,
        outputs: tuple[str, str],
        units: tuple[str, str],
        places: tuple[int, int],
        *arguments: str,
    ) -> None:
        first, second = (
            ("=" + asked(function, output, *arguments), unit, place)
            for output, unit, place in zip(outputs, units, places, strict=True)
        )
        page.result(row, label, first, second)

    gauges = (("gauge_bar", "gauge_psi"), ("bar", "psi"), (2, 1))
    both(5, "Set the regulator to", "KEG_PRESSURE", *gauges, SERVED)
    both(
        6,
        "It holds at your gauge's reading",
        "DISSOLVED_CO2",
        ("co2_g_per_l", "volumes"),
        ("g/L", "vol"),
        (2, 2),
        "$B$5:$C$10",
        READ,
    )
    both(
        7, "CO2 already in the drink", "RESIDUAL_CO2", ("co2_g_per_l", "volumes"), ("g/L", "vol"), (2, 2), *RESIDUAL[1:]
    )
    for row, kind, label in (
        (8, "expected", "Carbonated at that pressure after"),
        (9, "soonest", "   at the soonest"),
        (10, "latest", "   at the latest"),
    ):
        page.result(row, label, ("=" + asked("CARBONATION_TIME", f"{kind}_time_d", *TIMED), "days", 1))
    page.put(
        11, "F", "Set and wait; then taste. Shaking or a stone is faster: choose it in the list.", "note", across=5
    )
    page.result(
        12, "Fill and vent, how often", ("=" + asked(PURGING[0], "whole_cycles_count", *PURGING[1:]), "times", 0)
    )
    masses = (("g", "oz"), (0, 1))
    both(13, "   CO2 that it takes", "PURGE_CYCLES", ("total_gas_g", "total_gas_oz"), *masses, *PURGING[1:])
    budget = ("$B$8:$C$13", VESSEL, *CYCLES, *GAUGE)
    for row, kind, label in (
        (14, "dissolve", "CO2 that dissolves"),
        (15, "headspace", "   in the headspace"),
        (16, "purge", "   for purging"),
        (17, "serve", "   to push the drink out"),
        (18, "total", "   in all, for this keg"),
    ):
        both(row, label, "GAS_BUDGET", (f"{kind}_gas_g", f"{kind}_gas_oz"), *masses, *budget)
    page.result(19, "Kegs from a full cylinder", ("=" + asked("GAS_BUDGET", "kegs_count", *budget), "kegs", 1))
    lengths = (("m", "ft"), (2, 1))
    both(
        20, "Line, by the flow in your tube", "LINE_LENGTH", ("line_m", "line_ft"), *lengths, DRINK, COLD, POUR, *GAUGE
    )
    both(21, "Line, by the trade's balance", "HANDBOOK_LINE", ("line_m", "line_ft"), *lengths, TUBE, *GAUGE)
    page.put(
        22,
        "F",
        "The trade's figure is for its own, faster pour. Start with the longer line, and cut.",
        "note",
        across=5,
    )
    warm = (
        PLACE,
        WANTED,
        quoted("filling_c"),
        in_unit(10, "c"),
        quoted("temperature_c"),
        in_unit(27, "c"),
        LEFT,
        RATING,
    )
    both(
        23, "Keg on a hot day, expected", "WARMED_KEG", ("expected_gauge_bar", "expected_gauge_psi"), *gauges[1:], *warm
    )
    both(24, "   at worst", "WARMED_KEG", ("worst_gauge_bar", "worst_gauge_psi"), *gauges[1:], *warm)
    room = (quoted("released_g"), "$G$25", ROOM, AMBIENT)
    page.result(
        25,
        "A full cylinder holds",
        ("=" + charge(), "g", 0),
        ("=" + call("CARB_CONVERT", "$G$25", quoted("g"), quoted("oz")), "oz", 0),
    )
    page.result(
        26,
        "The room, if all of it escapes",
        ("=" + asked("ROOM_CO2", "mixed_room_air_vol_percent", *room), "% vol", 1),
        ("=" + asked("ROOM_CO2", "mixed_room_air_ppm", *room), "ppm", 0),
    )
    page.result(
        27,
        "   in its lower half",
        ("=" + asked("ROOM_CO2", "low_half_room_air_vol_percent", *room), "% vol", 1),
        ("=" + asked("ROOM_CO2", "low_half_room_air_ppm", *room), "ppm", 0),
    )
    page.result(28, "   aired out to 5000 ppm after", ("=" + asked("ROOM_CO2", "low_half_aired_time_h", *room), "h", 1))
    page.result(
        29,
        "Pressure of the air outside",
        ("=" + air("", quoted("ambient_bar")), "bar", 3),
        ("=" + air("", quoted("ambient_psi")), "psi", 2),
    )
