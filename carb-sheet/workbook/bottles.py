"""The sheet of bottles: how many, how much sugar, what pressure, which glass, how long."""

from __future__ import annotations

from . import core
from .formula import call, quoted
from .parts import air, asked, entry, in_unit, minded, notes, opened, or_else, verdict
from .sheet import Sheet

DRINK, PLACE = "$B$5:$C$7", "$B$5:$C$9"
PACKAGE = "$B$5:$C$13"
"""The drink, the place, the yeast, what it can still ferment, and the headspace: what a package's pressure takes."""
HEADLESS = ("$B$5:$C$11", "$B$13:$C$13")
"""The same without the headspace."""
UNPRIMED = "$B$5:$C$14"
CARBONATION, WARMEST, SUGAR, ROOM = "$B$15:$C$15", "$B$16:$C$16", "$B$17:$C$17", "$B$18:$C$18"
DOSE = "$B$5:$C$18"
GRAVITY = "$B$21:$C$22"
NO_GRAVITY = 'AND($C$21="";$C$22="")'
FINISHED = ("$B$5:$C$10", "$B$12:$C$14", "$B$16:$C$18", quoted("fermentable_g_per_l"), "0")
"""What primed_carbonation takes, without what still ferments: the pressure of a package adds that itself."""
PACKED, EXPECTED = (quoted("co2_g_per_l"), "$G$11"), (quoted("co2_g_per_l"), "$G$9")
HOT_DAY = (quoted("hot_day_c"), 'CARB_CONVERT($C$19;$B$19;"c")')
KINDS = range(26, 31)
EXAMPLE = (
    ("heavier_reusable", 500, 24),
    ("light_one_way", 330, 24),
    (None, None, None),
    (None, None, None),
    (None, None, None),
)
LISTED = ("$B$14:$C$14", "$B$12:$C$12", "$B$23:$C$23", "$D$24:$E$24", quoted("bottles"), "$A$25:$E$30")
"""What the library chooses the bottles by; the list has the names of its columns in its first row."""


def pressure(wanted: str, at: str) -> str:
    """What is expected goes by the balance, the worst case by the tables, which say more."""
    packed = EXPECTED if wanted.startswith("expected") else PACKED
    return asked("PACKAGE_PRESSURE", wanted, PACKAGE, *packed, quoted("temperature_c"), at)


def sheet() -> Sheet:
    page = Sheet("Bottles", (4.8, 3.7, 3.6, 1.9, 2.8, 5.4, 1.9, 1.3, 1.9, 1.3), "bottles", frozen=4)
    opened(page, "Bottles")
    inputs(page)
    results(page)
    bottles(page)
    glass(page, 33)
    room, hot = in_unit(18, "c"), in_unit(19, "c")
    # Gravities that are both blank are no cause: then it is the dose that says what is missing.
    gravity = call("IF", NO_GRAVITY, '""', minded("GRAVITY_CO2", GRAVITY))
    dose = minded("PRIMING_SUGAR", DOSE)

    def told(function: str, *arguments: str) -> str:
        return or_else(minded(function, *arguments), gravity, dose)

    notes(
        page,
        45,
        "J",
        [
            ("CO2 still in the drink", or_else(minded("RESIDUAL_CO2", PLACE, WARMEST)), 0.8),
            ("Sugar", told("PRIMING_SUGAR", DOSE), 1.5),
            ("Bottles in the room", told("PACKAGE_PRESSURE", PACKAGE, *PACKED, quoted("temperature_c"), room), 3.6),
            ("Bottles on a hot day", told("PACKAGE_PRESSURE", PACKAGE, *PACKED, quoted("temperature_c"), hot), 4.6),
            ("Conditioning", or_else(minded("CONDITIONING_TIME", "$B$5:$C$6", ROOM)), 1.2),
        ],
        ("your bottles", f"$F${KINDS[0]}:$F${KINDS[-1]}"),
    )
    return page


def inputs(page: Sheet) -> None:
    dose, bottle = "priming_sugar", "package_pressure"
    page.given(5, "The drink", dose, "beverage", "beer")
    page.given(6, "Alcohol", dose, "abv_percent", 5.1)
    page.given(7, "Dissolved extract", dose, "extract_g_per_l", 38)
    page.given(8, "Altitude, or air pressure", bottle, "altitude_m", 240, others=("ambient_kpa",))
    page.given(9, "Weather report's pressure", bottle, "sea_level_kpa", None)
    page.given(10, "Living yeast in the bottle", dose, "yeast", "live")
    own = "$C$20"
    told = asked("GRAVITY_CO2", "fermentable_g_per_l", GRAVITY)
    left = call("IF", f'{own}<>""', own, call("IF", NO_GRAVITY, '""', told))
    page.worked(11, "What it can still ferment", "fermentable_g_per_l", "=" + left, "from the three rows below", 2)
    page.given(12, "Headspace", bottle, "headspace_percent", None)
    page.given(13, "Temperature when closed", bottle, "filling_c", 20.5, note="blank: 20 °C; for the dose the warmest")
    page.given(14, "Drink that reaches bottles", dose, "packaged_l", 19.2)
    page.given(15, "Carbonation wanted", dose, "volumes", 2.4)
    page.given(16, "Warmest since fermentation", dose, "warmest_c", 20.5, note="needed")
    page.given(17, "Priming sugar", dose, "sugar", "sucrose")
    page.given(
        18, "Room where bottles stand", "conditioning_time", "room_c", 20, note="needed for pressures and conditioning"
    )
    page.given(19, "A hot day there", "bottle_verdicts", "hot_day_c", 35, note="needed")
    page.given(20, "Fermentable, if you know it", dose, "fermentable_g_per_l", None)
    page.given(
        21,
        "Gravity now",
        "gravity_co2",
        "current_sg",
        None,
        others=("current_plato",),
        note="blank: finished, if the end is blank too",
    )
    page.given(
        22,
        "Gravity at the end",
        "gravity_co2",
        "final_sg",
        None,
        others=("final_plato",),
        note="best from a forced-fermentation test",
    )
    page.given(23, "Spare bottles to wash", "fill_list", "spare_percent", 5)


def results(page: Sheet) -> None:
    room, hot = in_unit(18, "c"), in_unit(19, "c")
    table, balance = (
        asked("PRIMING_SUGAR", "{}", DOSE, quoted("basis"), quoted(basis)) for basis in ("handbook", "physical")
    )
    expected = asked(
        "PRIMED_CARBONATION",
        "{}",
        UNPRIMED,
        "$B$16:$C$18",
        quoted("mass_g"),
        "$G$6",
        quoted("basis"),
        quoted("physical"),
    )
    days = asked("CONDITIONING_TIME", "{}", "$B$5:$C$6", ROOM)
    left = asked("GRAVITY_CO2", "theory_{}", GRAVITY)

    def of(formula: str, wanted: str) -> str:
        return "=" + formula.replace("{}", wanted)

    residual = asked("RESIDUAL_CO2", "{}", PLACE, WARMEST)
    page.result(
        5, "CO2 still in the drink", (of(residual, "co2_g_per_l"), "g/L", 2), (of(residual, "volumes"), "vol", 2)
    )
    page.result(6, "Sugar, by the trade's tables", (of(table, "mass_g"), "g", 1), (of(table, "mass_oz"), "oz", 2))
    page.result(7, "   in each litre", (of(table, "dose_g_per_l"), "g/L", 2))
    page.result(
        8, "   makes, by mass balance", (of(expected, "co2_g_per_l"), "g/L", 2), (of(expected, "volumes"), "vol", 2)
    )
    page.result(
        10, "Sugar, if the balance is to be met", (of(balance, "mass_g"), "g", 1), (of(balance, "mass_oz"), "oz", 2)
    )
    # What makes enough by itself gets no sugar, and its bottles are judged all the same.
    alone = asked("PRIMED_CARBONATION", "co2_g_per_l", UNPRIMED, "$B$16:$C$18", quoted("mass_g"), "0")
    target = call("CARB_CONVERT", "$C$15", "$B$15", quoted("co2_g_per_l"))
    enough = call("AND", f"{target}>0", f"{alone}>{target}")
    # The +0 says that a 0 is a number: what IFERROR picks might be an empty cell to the add-in.
    weighed = call("IFERROR", "$G$6", call("IF", enough, "0", "NA()")) + "+0"
    # The sugar stands first, because the cross-check asks the same with a sugar that may not be there: two calls that
    # look alike, one with a 0 and one with nothing, are in doubt.
    packed = asked("PRIMED_CARBONATION", "{}", quoted("mass_g"), weighed, *FINISHED)
    balanced = asked(
        "PRIMED_CARBONATION",
        "{}",
        *FINISHED,
        *(quoted("mass_g"), weighed),
        *(quoted("basis"), quoted("physical"), quoted("count_headspace"), quoted("false")),
    )
    page.result(
        9,
        "   with what the headspace gets",
        (of(balanced, "co2_g_per_l"), "g/L", 2),
        (of(balanced, "volumes"), "vol", 2),
    )
    page.result(
        11, "CO2 that the worst case takes", (of(packed, "co2_g_per_l"), "g/L", 2), (of(packed, "volumes"), "vol", 2)
    )
    for row, (where, at) in enumerate((("in the room", room), ("on a hot day", hot))):
        for line, (kind, word) in enumerate((("expected", "expected"), ("worst", "at worst"))):
            page.result(
                12 + 2 * row + line,
                f"Pressure {where}, {word}",
                ("=" + pressure(f"{kind}_gauge_bar", at), "bar", 2),
                ("=" + pressure(f"{kind}_gauge_psi", at), "psi", 1),
            )
    page.result(16, "Ready after, as expected", (of(days, "expected_time_d"), "days", 0))
    page.result(17, "   at the soonest", (of(days, "least_time_d"), "days", 0))
    page.result(18, "   at the latest", (of(days, "most_time_d"), "days", 0))
    page.result(
        19,
        "CO2 still to come, by gravity",
        ("=" + call("IF", NO_GRAVITY, '"not told"', left.replace("{}", "co2_g_per_l")), "g/L", 2),
        ("=" + call("IF", NO_GRAVITY, '"not told"', left.replace("{}", "volumes")), "vol", 2),
    )
    fill, wash = (f"SUM(${column}${KINDS[0]}:${column}${KINDS[-1]})" for column in "GH")
    page.result(20, "Bottles to fill, in all", ("=" + fill, "", 0))
    page.result(21, "Bottles to wash, in all", ("=" + wash, "", 0))
    over = filling("2", "leftover_l") + "+0"
    page.result(
        22,
        "Drink that is left over",
        ("=" + call("CARB_CONVERT", over, quoted("l"), quoted("ml")), "mL", 0),
        ("=" + call("CARB_CONVERT", over, quoted("l"), quoted("us_fl_oz")), "fl oz", 1),
    )
    page.result(
        23,
        "Pressure of the air outside",
        ("=" + air("", quoted("ambient_bar")), "bar", 3),
        ("=" + air("", quoted("ambient_psi")), "psi", 2),
    )


def filling(line: str, column: str) -> str:
    """A cell of the library's list of bottles to fill."""
    place = core.columns("fill_list").index(column) + 1
    return call("INDEX", call("CARB_TABLE", quoted("fill_list"), *LISTED), line, str(place))


def bottles(page: Sheet) -> None:
    first, last = KINDS[0], KINDS[-1]
    page.heading(24, {"A": "Your bottles", "F": "Which of them to fill"}, "J")
    page.put(24, "C", "which first:", "headright")
    page.put(24, "D", "fill_order", "fixed")
    page.put(24, "E", "as_listed", "choice", offered=core.choices("fill_list", "fill_order"))
    heads = {"F": "on a hot day this class is", "G": "fill", "H": "wash", "I": "sugar in each, g", "J": "mL"}
    page.heading(25, heads, "J", "GHIJ")
    page.put(25, "A", "bottle_class", "fixed")
    page.put(25, "B", "capacity_ml", "name", offered=core.names("fill_list", "capacity_ml"))
    page.put(25, "C", "bottle_ml", "name", offered=core.names("fill_list", "bottle_ml"))
    page.put(25, "D", "count", "fixed")
    page.put(25, "E", "rating_gauge_bar", "name", offered=core.names("fill_list", "rating_gauge_kpa"))
    page.heights[25] = 0.95
    for row, (kind, size, count) in zip(KINDS, EXAMPLE, strict=True):
        page.put(row, "A", kind, "choice", offered=core.choices("package_pressure", "bottle_class"))
        page.put(row, "B", None, "input")
        page.put(row, "C", size, "input")
        page.put(row, "D", count, "input")
        page.put(row, "E", None, "input")
        none = f'AND($C{row}="";$D{row}="")'
        size_ml = call("CARB_CONVERT", f"$C{row}", "$C$25", quoted("ml"))
        known = call("IF", f"ISERROR($G{row})", "NA()", size_ml)
        page.put(row, "J", "=" + call("IF", f'$C{row}=""', '""', known), "worked", 0)
        # The library's list has no rows for kinds that are left blank.
        line = f"COUNT($C${first}:$C{row})+1"
        for letter, column in (("G", "filled_count"), ("H", "washed_count")):
            page.put(row, letter, "=" + call("IF", none, '""', filling(line, column)), "result", 0)
        each = asked(
            "PRIMING_SUGAR",
            "mass_g",
            "$B$5:$C$13",
            "$B$15:$C$18",
            quoted("packaged_ml"),
            f"$J{row}",
            quoted("basis"),
            quoted("handbook"),
        )
        page.put(row, "I", "=" + call("IF", none, '""', call("IF", f"ISERROR($G{row})", "NA()", each)), "result", 2)
        # Its own headspace: what a small capacity leaves may be far less than the drink's.
        text = minded(
            "PACKAGE_PRESSURE",
            *HEADLESS,
            quoted("headspace_percent"),
            filling(line, "headspace_percent") + "+0",
            *PACKED,
            quoted("temperature_c"),
            in_unit(19, "c"),
            quoted("bottle_class"),
            f"$A{row}:$A{row}",
            "$E$25",
            f"$E{row}:$E{row}",
        )
        page.put(
            row,
            "F",
            "=" + call("IF", none, '""', call("IF", f"ISERROR($G{row})", quoted("no answer"), verdict(text))),
            "word",
        )
    page.put(
        31,
        "A",
        "Every kind takes a size (what goes in) and a count, or fill and wash are errors; capacity is what it holds to "
        "the brim (blank: what the headspace leaves). A rating is the maker's, and goes before the class. The balance "
        "asks for more sugar than the tables: more is your decision. Pressures are those of the tables' dose and of "
        "all that can still ferment.",
        "note",
        across=10,
    )
    page.heights[31] = 0.8
    page.signal(
        f"F{first}:F{last}",
        ('="DANGER"', "danger"),
        ('="no answer"', "failed"),
        ('="caution"', "careful"),
        ('="within"', "fine"),
    )


def glass(page: Sheet, row: int) -> None:
    """The verdict of every class of bottle, worked out as a table."""
    page.heading(row - 1, {"A": "Every class of bottle, on the hot day"}, "J")
    columns = core.columns("bottle_verdicts")
    wanted = {
        "A": "bottle_class",
        "B": "verdict",
        "C": "usual_volumes",
        "D": "usual_co2_g_per_l",
        "G": "worst_gauge_bar",
        "H": "limit_gauge_bar",
        "I": "worst_gauge_psi",
        "J": "limit_gauge_psi",
    }
    heads = {
        "A": "class",
        "B": "verdict",
        "C": "usually up to, vol",
        "D": "g/L",
        "F": "what it is",
        "G": "at worst, bar",
        "H": "limit, bar",
        "I": "at worst, psi",
        "J": "limit, psi",
    }
    page.heading(row, heads, "J", "CDGHIJ")
    page.heights[row] = 0.95
    classes = core.rows("bottle_classes")
    whole = call("CARB_TABLE", quoted("bottle_verdicts"), PACKAGE, *PACKED, *HOT_DAY)
    titles = {"A": "tag", "B": "tag"}
    places = {"C": 1, "D": 1, "G": 2, "H": 2, "I": 1, "J": 1}
    for letter, column in wanted.items():
        place = columns.index(column) + 1
        for line in range(len(classes)):
            page.put(
                row + 1 + line,
                letter,
                f"=INDEX({whole};{line + 2};{place})",
                titles.get(letter, "worked"),
                places.get(letter),
            )
    for line in range(len(classes)):
        said = entry("bottle_classes", f"$A{row + 1 + line}", core.columns("bottle_classes"), "title")
        page.put(row + 1 + line, "E", "=" + said, "small", across=2)
    page.put(row, "E", "what it is", "head")
    page.put(row, "F", None, "head")
    page.signal(
        f"B{row + 1}:B{row + len(classes)}",
        ("is-error", "failed"),
        ('="within"', "fine"),
        ('="high"', "careful"),
        ('="danger"', "danger"),
        ('="not_for_conditioning"', "danger"),
    )
