"""The sheets for use: bottles, pressures, lines, gravities, purging, gas. Each has inputs, results and the working."""

from __future__ import annotations

from math import isnan, nan
from typing import Any

import carb
from core import FACTOR, SLACK, assumed, convert, limits
from paper import Node, Sheet, in_unit

Given = dict[str, tuple[Any, str | None]]

TEMPERATURE = ("c", "f")
PRESSURE = ("kpa", "bar", "psi")
CARBONATION = ("volumes", "co2_g_per_l")
VOLUME = ("l", "us_gal", "imp_gal")
HEIGHT = ("m", "ft")
SUGARS = [row["name"] for row in carb.fermentables()]
TUBES = [row["name"] for row in carb.tubes()]

# What the library's own answer takes where nothing is told, by its working.
SEA_LEVEL = assumed("ambient_pressure", "station_pressure", "p0", altitude_m=0)
_PRIMED = {"volumes": 2, "warmest_c": 20, "packaged_l": 1, "altitude_m": 0}
YIELD = assumed("priming_sugar", "priming_dose", "q", **_PRIMED)
EXTRACT_YIELD = assumed("priming_sugar", "co2_from_extract", "y", fermentable_g_per_l=1, **_PRIMED)
_PURGED = {"purge_gauge_psi": 10, "oxygen_ppm": 1000, "altitude_m": 0}
AIR_OXYGEN = assumed("purge_cycles", "purge_cycles", "s", **_PURGED)
GAS_OXYGEN = assumed("purge_cycles", "purge_cycles", "g", **_PURGED)
KEG = assumed("purge_cycles", "purge_gas", "V", **_PURGED)

HIGHEST = convert(limits("dissolved_co2", "abs_kpa")[1], "kpa", "pa")
BEYOND = 1e9
"""More than any quantity here."""


def air_inputs(sheet: Sheet, function: str) -> tuple[Node, Node]:
    altitude = sheet.input(
        "altitude", "altitude", function, "altitude_m", 0, "m", HEIGHT, "of the place where the gauge is read"
    )
    sea_level = sheet.input(
        "sea_level",
        "air pressure at sea level",
        "ambient_pressure",
        "sea_level_kpa",
        convert(SEA_LEVEL, "pa", "kpa"),
        "kpa",
        PRESSURE,
        "as weather reports give it; the standard atmosphere if you leave it",
    )
    return altitude, sea_level


def air_of(sheet: Sheet, inputs: tuple[Node, Node]) -> Node:
    altitude, sea_level = (kept(sheet, node) for node in inputs)
    low, high = (convert(end, "kpa", "pa") for end in limits("keg_pressure", "ambient_kpa"))
    return sheet.step("station_pressure", "air pressure outside", within=(low, high), p0=sea_level, z=altitude)


def kept(sheet: Sheet, node: Node) -> Node:
    return Node(sheet.aliases.get(node.written, node.written), node.unit, node.value, node.label)


class Reserved:
    """Rows kept free above the working: for results, remarks, and the equations behind them."""

    def __init__(self, sheet: Sheet, results: int, equations: int, remarks: int = 3, more: int = 0) -> None:
        self.sheet, self.results, self.remarks = sheet, results, remarks
        self.at = sheet.row + 1
        self.equations = equations + 1
        sheet.row += 1 + (results + 1) + remarks + (self.equations + 1) + more + 1

    def write(self, *results: tuple) -> None:
        sheet, end = self.sheet, self.sheet.row
        if len(results) != self.results:
            raise ValueError(f"{sheet.name}: keep {len(results)} rows for its results, not {self.results}")
        sheet.row = self.at
        sheet.section("Results", ">value", "unit", ">the same", "unit", "")
        for result in results:
            sheet.result(*result)
        first = sheet.row
        sheet.row = end
        sheet.remark_block(first, self.remarks)
        sheet.equation_block(first + self.remarks + 1, self.equations)
        sheet.settle()


def keg(given: Given | None = None) -> Sheet:
    sheet = Sheet("Keg", "Keg: pressure to set, and what a pressure keeps", given or {})
    sheet.head(
        "Beer under CO2, by the fit of the printed chart (the handbook basis of the library). Gauges read above the "
        "air "
        "outside, the chart is above vacuum: both stand here, and the air between them.",
        "Never set more than the rating marked on the keg. Vent before opening. CO2 suffocates in closed rooms.",
    )
    sheet.section("Inputs", ">your value", "unit", ">from", ">to", "")
    target = sheet.input("target", "carbonation wanted", "keg_pressure", "volumes", 2.5, "volumes", CARBONATION)
    t = sheet.input(
        "temperature",
        "temperature of the beer",
        "keg_pressure",
        "temperature_c",
        4,
        "c",
        TEMPERATURE,
        "of the beer itself, not of the room",
    )
    reading = sheet.input(
        "gauge",
        "gauge pressure on a keg",
        "dissolved_co2",
        "gauge_bar",
        1,
        "bar",
        PRESSURE,
        "to see what this keeps at the same temperature",
    )
    air = air_inputs(sheet, "keg_pressure")
    reserved = Reserved(sheet, 7, 6)
    sheet.working()
    target, t, reading = (kept(sheet, node) for node in (target, t, reading))
    outside = air_of(sheet, air)
    answer = nan
    if not isnan(target.value + t.value):
        models = carb.solubility_models(co2_g_per_l=target.value, temperature_c=t.value)
        answer = models["chart_fit"].abs_psi or nan
    total = sheet.turned("chart_fit", "P", "pressure that keeps it, above vacuum", answer, V=target, f=t, k=FACTOR)
    refused = in_unit(total, "pa").value < outside.value
    gauge = sheet.step(
        "gauge_pressure", "gauge pressure to set", unless="{P}<{a}", impossible=refused, P=total, a=outside
    )
    needed = sheet.step("absolute_pressure", "pressure over the beer, above vacuum", G=gauge, a=outside)
    over = sheet.step(
        "absolute_pressure", "that gauge pressure, above vacuum", within=(0, BEYOND), G=reading, a=outside
    )
    # Where a relation says that less than nothing is dissolved it says nothing.
    chart = sheet.step("chart_fit", "CO2 kept, by the chart", within=(0, BEYOND), P=over, f=t, k=FACTOR)
    quadratic = sheet.step("chart_quadratic", "CO2 kept, by the quadratic", strict=True, P=over, f=t, k=FACTOR)
    european = sheet.step("european", "CO2 kept, by the European form", within=(0, BEYOND), P=over, T=t, k=FACTOR)
    reserved.write(
        ("ambient", "air pressure outside", outside, ("bar", "psi"), "0.000"),
        ("keg_gauge", "+ gauge pressure to set", gauge, ("bar", "psi"), "0.000", "never above the rating of the keg"),
        ("abs", "= pressure over the beer", needed, ("bar", "psi"), "0.000", "above vacuum; keeps what you want"),
        ("reading", "air + the gauge you read on a keg", over, ("bar", "psi"), "0.000", "above vacuum; this keeps:"),
        ("chart", "   by the printed chart", chart, CARBONATION, "0.00"),
        (
            "quadratic",
            "   by the trade's quadratic",
            quadratic,
            CARBONATION,
            "0.00",
            "only where its source says that it holds",
        ),
        (
            "european",
            "   by the European form",
            european,
            CARBONATION,
            "0.00",
            "how far they differ is what is not known",
        ),
    )
    return sheet


def bottle(given: Given | None = None) -> Sheet:
    sheet = Sheet("Bottle", "Bottle: priming sugar by the handbook", given or {})
    sheet.head(
        "The dose of the printed tables: what the drink already holds by its warmest temperature, and sugar for the "
        "rest. "
        "Headspace, yeast growth and the lower solubility of beer are left out, as the tables do. Weigh the sugar.",
        "Glass bursts. This sheet judges no bottle: the worst case needs the library. Bottle only what is finished "
        "(a gravity "
        "that stood still for days), in bottles whose maker rates them for it.",
    )
    sheet.section("Inputs", ">your value", "unit", ">from", ">to", "")
    volume = sheet.input(
        "packaged",
        "drink that reaches the bottles",
        "priming_sugar",
        "packaged_l",
        20,
        "l",
        VOLUME,
        "not the batch size",
    )
    target = sheet.input("target", "carbonation wanted", "priming_sugar", "volumes", 2.4, "volumes", CARBONATION)
    warmest = sheet.input(
        "warmest",
        "warmest temperature",
        "priming_sugar",
        "warmest_c",
        20,
        "c",
        TEMPERATURE,
        "highest since active fermentation, not that of bottling",
    )
    left = sheet.input(
        "left",
        "fermentable extract still left",
        "priming_sugar",
        "fermentable_g_per_l",
        0,
        "g_per_l",
        ("g_per_l",),
        "0 only if the gravity stood still for days; the sheet Gravity tells it",
    )
    air = air_inputs(sheet, "priming_sugar")
    choice = sheet.choice("sugar", "sugar", "sugars", SUGARS, "dextrose_monohydrate")
    others = [name for name in SUGARS if name != "custom"][:6]
    bottles = carb.bottle_classes()
    reserved = Reserved(sheet, 4 + len(others), 5, more=len(bottles) + 2)
    sheet.working()
    volume, target, warmest, left = (kept(sheet, node) for node in (volume, target, warmest, left))
    outside = air_of(sheet, air)
    residual = sheet.step("residual_table", "CO2 left in the drink", f=warmest, a=outside, k=FACTOR)
    extra = sheet.step(
        "co2_from_extract", "CO2 that the extract still makes", y=EXTRACT_YIELD, q=YIELD, k=FACTOR, x=left
    )
    # The library refuses a target below what the drink holds or makes by itself.
    held = in_unit(residual, "co2_g_per_l")
    wanted = in_unit(target, "co2_g_per_l")
    short = not isnan(held.value + extra.value + wanted.value) and wanted.value < (held.value + extra.value) * (
        1 - SLACK
    )
    yields = [row["yield_g_per_g"] for row in carb.fermentables()]
    made = sheet.looked_up("CO2 from a gram of the sugar", "sugars", "yield", choice, yields, "g_per_g")
    guard = "{c}<({r}+{e})*(1-slack)"

    def dose(sugar: Node, label: str, remarks: bool = True) -> tuple[Node, Node]:
        each = sheet.step(
            "priming_dose",
            f"{label}, per litre",
            unless=guard,
            impossible=short,
            remarks=remarks,
            c=target,
            r=residual,
            e=extra,
            y=sugar,
            q=YIELD,
            k=FACTOR,
        )
        return each, sheet.step("priming_mass", f"{label}, for the batch", remarks=remarks, d=each, V=volume)

    each, mass = dose(made, "sugar")
    table = []
    for name in others:
        at = SUGARS.index(name)
        title = carb.fermentables()[at]["title"].split(" (")[0]
        own = sheet.line(
            f"CO2 from a gram of {title}",
            f"=INDEX(list_sugars_yield,{at + 1})",
            yields[at],
            "g_per_g",
            "from the sheet Tables",
        )
        own_mass = dose(own, title, remarks=False)[1]
        table.append((f"mass_{name}", f"instead: {title}", own_mass, ("g", "oz"), "0.0"))
    reserved.write(
        ("ambient", "air pressure outside", outside, ("bar", "psi"), "0.000"),
        ("residual", "CO2 left in the drink", residual, ("volumes", "co2_g_per_l"), "0.00"),
        ("dose", "sugar per litre", each, ("g_per_l",), "0.00"),
        ("mass", "sugar for the batch: weigh this", mass, ("g", "oz"), "0.0", "dissolve it, and mix it in fully"),
        *table,
    )
    end, sheet.row = sheet.row, (sheet.printed_to or 0) + 2
    sheet.section(
        "What bottles usually hold: no rating", ">from vol", "", ">to vol", "", "said of them; conditioning in them"
    )
    for row in bottles:
        sheet.wrapped(sheet.row, 0, row.title, "small")
        holds = row["high_volumes"] > 0
        sheet.put(sheet.row, 1, row["low_volumes"] if holds else "none", "small right")
        sheet.put(sheet.row, 3, row["high_volumes"] if holds else "none", "small right")
        said = row.published or row.standing
        sheet.wrapped(
            sheet.row, 5, said if row["for_conditioning"] == "yes" else f"NEVER condition in it; {said}", "small"
        )
        sheet.row += 1
    sheet.printed_to, sheet.row = sheet.row - 1, end
    return sheet


def line(given: Given | None = None) -> Sheet:
    sheet = Sheet("Line", "Line: how long a draught line has to be, by the trade", given or {})
    sheet.head(
        "The pressure belongs to the carbonation (sheet Keg); the line has to take it all. Handbooks differ by a "
        "factor of 2 "
        "to 4 for one bore: cut it long, pour, and shorten.",
        "Never raise the pressure above the rating marked on the keg to suit a line.",
    )
    sheet.section("Inputs", ">your value", "unit", ">from", ">to", "")
    gauge = sheet.input("gauge", "gauge pressure on the keg", "handbook_line", "gauge_bar", 0.8, "bar", PRESSURE)
    rise = sheet.input(
        "rise",
        "height of the faucet over the keg",
        "handbook_line",
        "rise_m",
        0.6,
        "m",
        HEIGHT,
        "from the middle of the keg; negative if it is below",
    )
    hardware = sheet.input(
        "hardware",
        "faucet, shank and other lengths",
        "handbook_line",
        "hardware_bar",
        0,
        "bar",
        PRESSURE,
        "what they take, if it is known",
    )
    length = sheet.input(
        "length", "a length you have", "handbook_pressure", "line_m", 2, "m", HEIGHT, "to see which pressure it takes"
    )
    choice = sheet.choice("tube", "tube", "tubes", TUBES, "vinyl_3_16_in")
    reserved = Reserved(sheet, 4, 3)
    sheet.working()
    gauge, rise, hardware, length = (kept(sheet, node) for node in (gauge, rise, hardware, length))
    values = [row["resistance_psi_per_ft"] for row in carb.tubes()]
    resistance = sheet.looked_up("resistance of the tube", "tubes", "resistance", choice, values, "psi_per_ft")
    lifted = sheet.step("handbook_lift", "what the rise takes", H=rise)
    tube = sheet.step("handbook_length", "length of the tube", P=gauge, w=lifted, h=hardware, R=resistance)
    most = limits("handbook_pressure", "line_m")[1]
    refused = not isnan(tube.value) and not 0 <= in_unit(tube, "m").value <= most
    possible = sheet.line(
        "length, if it can be",
        f"=IF(OR({tube.written}<0,{in_unit(tube, 'm').written}>{most!r}),NA(),{tube.written})",
        nan if refused else tube.value,
        tube.unit,
        "no length where rise and hardware take more than there is, nor beyond what the library answers",
    )
    ends = tuple(convert(end, "kpa", "psi") for end in limits("handbook_line", "gauge_kpa"))
    pressure = sheet.step(
        "handbook_pressure",
        "pressure that the length takes",
        within=(ends[0], ends[1]),
        R=resistance,
        L=length,
        w=lifted,
        h=hardware,
    )
    reserved.write(
        ("resistance", "resistance of the tube", resistance, ("bar_per_m", "psi_per_ft"), "0.000"),
        ("lift", "what the rise takes", lifted, ("bar", "psi"), "0.000"),
        ("length", "length of line for this pressure", possible, ("m", "ft"), "0.00"),
        ("pressure", "pressure that your length takes", pressure, ("bar", "psi"), "0.00", "gauge"),
    )
    return sheet


def gravity(given: Given | None = None) -> Sheet:
    sheet = Sheet("Gravity", "Gravity: extract, attenuation, alcohol, and what can still ferment", given or {})
    sheet.head(
        "Hydrometer readings at 20 °C, relative to water at 20 °C. A refractometer reads false once there is alcohol.",
        "What can still ferment makes CO2 in the bottle, and a few points burst it: the last two results say how "
        "much. A "
        "gravity is stable when it has stood still for three days and more.",
    )
    sheet.section("Inputs", ">your value", "unit", ">from", ">to", "")
    original = sheet.input(
        "original", "gravity before fermentation", "attenuation", "original_sg", 1.048, "sg", ("sg",)
    )
    current = sheet.input("current", "gravity now", "attenuation", "current_sg", 1.013, "sg", ("sg",))
    final = sheet.input(
        "final", "gravity at the end", "gravity_co2", "final_sg", 1.012, "sg", ("sg",), "of a forced fermentation"
    )
    reserved = Reserved(sheet, 12, 11)
    sheet.working()
    original, current, final = (kept(sheet, node) for node in (original, current, final))
    o = sheet.step("extract_from_gravity", "extract before fermentation", s=original)
    a = sheet.step("extract_from_gravity", "apparent extract now", s=current)
    b = sheet.step("extract_from_gravity", "apparent extract at the end", s=final)
    risen = not isnan(o.value + a.value) and a.value > o.value
    # The library refuses a gravity that leaves less than no extract.
    r = sheet.step("real_extract", unless="{A}>{O}", impossible=risen, within=(0, BEYOND), O=o, A=a)
    apparent = sheet.step("apparent_attenuation", needs=r, O=o, A=a)
    real = sheet.step("real_attenuation", O=o, R=r)
    mass = sheet.step("alcohol_by_mass", O=o, R=r)
    alcohol = sheet.step("alcohol_by_volume", w=mass, s=current)
    quick = sheet.step("alcohol_quick", needs=r, o=original, s=current)
    litre = sheet.step("extract_per_litre", E=r, s=current)
    below = not isnan(a.value + b.value) and b.value > a.value
    left = sheet.step("fermentable_from_gravity", unless="{B}>{A}", impossible=below, A=a, B=b, s=current)
    balling = sheet.step("balling_co2", F=left)
    theory = sheet.step(
        "co2_from_extract", "CO2 at most, all of it by theory", y=EXTRACT_YIELD, q=YIELD, k=FACTOR, x=left
    )
    reserved.write(
        ("original_plato", "extract before fermentation", o, ("plato",), "0.00"),
        ("current_plato", "apparent extract now", a, ("plato",), "0.00"),
        ("apparent", "apparent attenuation", apparent, ("percent",), "0.0"),
        ("real", "real attenuation", real, ("percent",), "0.0"),
        ("extract", "real extract", r, ("plato",), "0.00"),
        ("abw", "alcohol by mass", mass, ("percent",), "0.00"),
        ("abv", "alcohol by volume", alcohol, ("percent",), "0.00"),
        ("quick", "alcohol by volume, quick form", quick, ("percent",), "0.00"),
        ("litre", "everything dissolved", litre, ("g_per_l",), "0.0"),
        ("left", "extract that can still ferment", left, ("g_per_l",), "0.00", "goes into the sheet Bottle"),
        ("balling", "CO2 that it makes", balling, ("volumes", "co2_g_per_l"), "0.00"),
        (
            "theory",
            "CO2 at most",
            theory,
            ("volumes", "co2_g_per_l"),
            "0.00",
            "no yeast grows on it: what safety counts",
        ),
    )
    return sheet


def purge(given: Given | None = None) -> Sheet:
    sheet = Sheet("Purge", "Purge: how often to fill and vent, and the CO2 it takes", given or {})
    sheet.head(
        "A keg is filled with CO2 to a pressure, mixed, and vented to the air outside, again and again.",
        "Never purge above the rating marked on the vessel, and never glass or what has no marking. What is vented "
        "lies low in "
        "the room and suffocates: air it.",
    )
    sheet.section("Inputs", ">your value", "unit", ">from", ">to", "")
    gauge = sheet.input(
        "gauge",
        "gauge pressure of each filling",
        "purge_cycles",
        "purge_gauge_bar",
        1,
        "bar",
        PRESSURE,
        "never above the rating marked on the keg",
    )
    oxygen = sheet.input(
        "oxygen",
        "oxygen that may be left in the gas",
        "purge_cycles",
        "oxygen_ppm",
        1000,
        "ppm",
        ("ppm", "vol_percent"),
    )
    start = sheet.input(
        "start",
        "oxygen at the start",
        "purge_cycles",
        "start_oxygen_ppm",
        AIR_OXYGEN,
        "ppm",
        ("ppm", "vol_percent"),
        "air, if you leave it",
    )
    supplied = sheet.input(
        "supplied",
        "oxygen in the CO2",
        "purge_cycles",
        "gas_oxygen_ppm",
        GAS_OXYGEN,
        "ppm",
        ("ppm", "vol_percent"),
        "the most that CO2 for drinks may have, if you leave it",
    )
    space = sheet.input(
        "keg", "gas space of the keg", "purge_cycles", "keg_l", KEG, "l", VOLUME, "a soda keg of 5 US gallons, empty"
    )
    t = sheet.input("temperature", "temperature of the gas", "purge_cycles", "temperature_c", 20, "c", TEMPERATURE)
    air = air_inputs(sheet, "purge_cycles")
    reserved = Reserved(sheet, 8, 7)
    sheet.working()
    gauge, oxygen, start, supplied, space, t = (
        kept(sheet, node) for node in (gauge, oxygen, start, supplied, space, t)
    )
    outside = air_of(sheet, air)
    full = sheet.step("absolute_pressure", "pressure when it is full", within=(0, HIGHEST), G=gauge, a=outside)
    x, s, g = oxygen.value, start.value, supplied.value
    never = not isnan(x + s + g) and x < s and x <= g
    idle = not isnan(x + s + g) and x >= s
    n = sheet.step(
        "purge_cycles",
        "cycles",
        unless="AND({x}<{s},{x}<={g})",
        needs=full,
        impossible=never,
        x=oxygen,
        s=start,
        g=supplied,
        a=outside,
        G=gauge,
    )
    if idle and not isnan(n.value + full.value):
        n = Node(n.written, n.unit, 0.0, n.label)
    whole = sheet.line(
        "whole cycles",
        f"=IF({n.written}>0,INT({n.written}-{n.written}*slack)+1,0)",
        whole_cycles(n.value),
        "",
        "the next whole number",
    )
    b = sheet.step("co2_second_virial", T=t)
    high = sheet.step("co2_gas_density", "density of the gas when it is full", P=full, T=t, B=b)
    low = sheet.step("co2_gas_density", "density of the gas when it is vented", P=outside, T=t, B=b)
    each = sheet.step("purge_gas", "CO2 for one cycle", needs=n, n=1, V=space, h=high, l=low)
    total = sheet.step("purge_gas", "CO2 for the whole cycles", n=whole, V=space, h=high, l=low)
    left = sheet.step(
        "purged_oxygen", "oxygen left after the whole cycles", s=start, g=supplied, a=outside, G=gauge, n=whole
    )
    reserved.write(
        ("ambient", "air pressure outside", outside, ("bar", "psi"), "0.000"),
        ("gauge", "+ gauge pressure of each filling", gauge, ("bar", "psi"), "0.000"),
        ("full", "= pressure when it is full", full, ("bar", "psi"), "0.000", "above vacuum"),
        ("cycles", "cycles of filling and venting", n, ("",), "0.00"),
        ("whole", "whole cycles", whole, ("",), "0"),
        ("left", "oxygen left after these", left, ("ppm", "vol_percent"), "0.0##"),
        ("each", "CO2 for one cycle", each, ("g", "oz"), "0.0"),
        ("total", "CO2 for the whole cycles", total, ("g", "oz"), "0.0", "vented into the room, if it is not led out"),
    )
    return sheet


def gas(given: Given | None = None) -> Sheet:
    sheet = Sheet("Gas", "Gas: the CO2 that a keg takes, and the kegs that a cylinder does", given or {})
    sheet.head(
        "What the drink takes up, what fills the space over it, what pushes it out, and what is lost. Purging (sheet "
        "Purge) "
        "comes on top.",
        "Keep a cylinder upright, chained and cool, and leave its relief device alone. CO2 that leaks lies low in "
        "the room and "
        "suffocates: fit an alarm.",
    )
    sheet.section("Inputs", ">your value", "unit", ">from", ">to", "")
    ask = "gas_budget"
    drink = sheet.input("packaged", "drink in the keg", ask, "packaged_l", 18.5, "l", VOLUME)
    space = sheet.input("keg", "the keg to the brim", ask, "keg_l", KEG, "l", VOLUME, "a soda keg of 5 US gallons")
    target = sheet.input("target", "carbonation wanted", ask, "volumes", 2.5, "volumes", CARBONATION)
    start = sheet.input(
        "start", "carbonation at the start", ask, "start_volumes", 0.8, "volumes", CARBONATION, "sheet Bottle: CO2 left"
    )
    t = sheet.input("temperature", "temperature of the keg", ask, "temperature_c", 4, "c", TEMPERATURE)
    gauge = sheet.input("gauge", "gauge pressure", ask, "gauge_bar", 0.8, "bar", PRESSURE, "from the sheet Keg")
    lost = sheet.input(
        "loss", "lost, of all that", ask, "gas_loss_percent", 10, "percent", ("percent",), "leaks, venting"
    )
    charge = sheet.input(
        "charge", "CO2 in the cylinder", ask, "charge_kg", 2, "kg", ("kg", "lb"), "by weight, without tare"
    )
    air = air_inputs(sheet, ask)
    reserved = Reserved(sheet, 8, 9)
    sheet.working()
    drink, space, target, start = (kept(sheet, node) for node in (drink, space, target, start))
    t, gauge, lost, charge = (kept(sheet, node) for node in (t, gauge, lost, charge))
    outside = air_of(sheet, air)
    vacuum = not isnan(gauge.value) and gauge.value < 0
    full = sheet.step(
        "absolute_pressure", "pressure over the drink", unless="{G}<0", impossible=vacuum, within=(0, HIGHEST),
        G=gauge, a=outside,
    )  # fmt: skip
    over = sheet.line(
        "space over the drink",
        f"=IF({space.written}<{drink.written},NA(),{space.written}-{drink.written})",
        space.value - drink.value if space.value >= drink.value else nan,
        "l",
        "the keg less the drink in it",
    )
    less = not isnan(target.value + start.value) and target.value < start.value
    b = sheet.step("co2_second_virial", T=t)
    density = sheet.step("co2_gas_density", "density of the gas", P=full, T=t, B=b)
    taken = sheet.step("co2_to_dissolve", unless="{c}<{s}", impossible=less, V=drink, c=target, s=start)
    head = sheet.step("co2_in_space", "CO2 over the drink", n=1, V=over, d=density)
    push = sheet.step("co2_in_space", "CO2 that pushes the drink out", n=1, V=drink, d=density)
    bare = sheet.step("gas_total", "CO2 without losses", d=taken, h=head, p=0, s=push, l=0)
    leaks = sheet.step("gas_loss", p=lost, u=bare)
    total = sheet.step("gas_total", d=taken, h=head, p=0, s=push, l=leaks)
    kegs = sheet.step("kegs_per_cylinder", "kegs that the cylinder does", c=charge, t=total)
    reserved.write(
        ("ambient", "air pressure outside", outside, ("bar", "psi"), "0.000"),
        ("full", "= with the gauge, over the drink", full, ("bar", "psi"), "0.000", "above vacuum"),
        ("dissolve", "CO2 that the drink takes up", taken, ("g", "oz"), "0.0"),
        ("headspace", "CO2 over it", head, ("g", "oz"), "0.0"),
        ("serve", "CO2 that pushes it out", push, ("g", "oz"), "0.0", "at the same pressure"),
        ("loss", "CO2 that is lost", leaks, ("g", "oz"), "0.0"),
        ("total", "CO2 for the keg", total, ("g", "oz"), "0.0"),
        ("kegs", "kegs that the cylinder does", kegs, ("",), "0.0"),
    )
    return sheet


def whole_cycles(n: float) -> float:
    if isnan(n):
        return nan
    return float(int(n - n * SLACK) + 1) if n > 0 else 0.0


JOBS = {"Bottle": bottle, "Keg": keg, "Line": line, "Gravity": gravity, "Purge": purge, "Gas": gas}
