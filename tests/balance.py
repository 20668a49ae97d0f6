"""Weighs the CO2 of random packages and fleets of bottles, with formulas and a solver of its own.

From the library it takes answers alone. A sealed bottle of beer has to come to the pressures and the CO2 in it that
the formulas here give; and the CO2 in all bottles of a batch, liquid and gas, has to be what the drink kept and what
the sugar makes by stoichiometry. CO2 in grams, volumes in litres, pressures in pascals, temperatures in kelvins.
"""

import math
import random
from collections.abc import Callable
from typing import Any

import carb

RELATIVE = 1e-9
GAS = 8.314462618
CO2 = 44.0095  # g/mol
ATMOSPHERE = 101325.0
VOLUME = CO2 / 22.263  # g/L in a volume
ETHANOL, PERCENT_ALCOHOL = 46.069, 7.8924  # g/mol, and g in a litre of 1 % vol

# Grams of hexose, of disaccharide and of water in a gram as sold.
SUGARS = {
    "sucrose": (0.0, 1.0, 0.0),
    "dextrose_anhydrous": (1.0, 0.0, 0.0),
    "dextrose_monohydrate": (180.156 / 198.171, 0.0, 1 - 180.156 / 198.171),
    "dry_malt_extract": (0.0, 0.97 * 0.62, 0.03),
    "honey": (0.382 + 0.313, 0.013 + 0.071 / 2, 0.172),
    "maple_syrup": (0.021, 0.583, 0.3239),
}


def moles(hexose: float, disaccharide: float) -> float:
    """Moles of CO2, and of ethanol, of a gram: C6H12O6 -> 2 C2H5OH + 2 CO2, and twice that of two joined hexoses."""
    return 2 * hexose / 180.156 + 4 * disaccharide / 342.297


# ---------------------------------------------------------------------------------------------- properties


def air_at(altitude: float) -> float:
    """ISO 2533, from the standard pressure at sea level."""
    height = 6356766 * altitude / (6356766 + altitude)
    return ATMOSPHERE * math.pow(1 - 0.0065 * height / 288.15, 5.25588)


def vapour(t: float) -> float:
    """Water, Wagner and Pruss."""
    x = 1 - t / 647.096
    powers = (
        (-7.85951783, 1), (1.84408259, 1.5), (-11.7866497, 3), (22.6807411, 3.5), (-15.9618719, 4), (1.80122502, 7.5),
    )
    return 22.064e6 * math.exp(647.096 / t * sum(a * x**n for a, n in powers))


def density(t: float) -> float:
    """Water, Kell 1975, kg/m3."""
    c = t - 273.15
    series = (999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12)
    return sum(a * c**n for n, a in enumerate(series)) / (1 + 16.87985e-3 * c)


def virial(p: float, t: float) -> tuple[float, float]:
    """The two terms of CO2's virial series in the pressure, Kaye and Laby."""
    b = 137.6e-6 - 87.7e-6 * math.exp(325.7 / t)
    q = p / (GAS * t)
    return b * q, (4900e-12 - b * b) * q * q


def gas_density(p: float, t: float) -> float:
    """CO2, g/L."""
    first, second = virial(p, t)
    return p * CO2 / 1000 / ((1 + first + second) * GAS * t)


def weiss(t: float) -> float:
    """Weiss 1974: moles of CO2 in a kilogram of water under one atmosphere."""
    return math.exp(-60.2409 + 93.4517 * 100 / t + 23.3585 * math.log(t / 100))


def laboratory(abv: float, extract: float) -> float:
    """What alcohol and extract leave of the solubility in water."""
    return math.exp(-0.0042 * abv - 8.7e-4 * extract)


def unfavourable(abv: float, extract: float) -> float:
    """The lower of that and of what the wine relation says of the two."""
    return min(laboratory(abv, extract), (0.86 - 0.01 * abv) / 0.86 * (1 - 0.00144 * extract))


def dissolved(p: float, air: float, t: float, factor: float) -> float:
    """CO2 in a litre of drink under CO2 at `p`, with air and vapour over it besides."""
    total = p + air + vapour(t)
    first, second = virial(total, t)
    real = math.exp(first + second / 2)
    squeezed = math.exp(-32.3e-6 * (total - ATMOSPHERE) / (GAS * t))
    molality = weiss(t) * p / ATMOSPHERE * real * squeezed
    return factor * molality * CO2 / (1000 / density(t) + 0.0335 * molality)


def beer(factor: float) -> Callable[[float, float, float], float]:
    """The law of a drink that holds this part of what water does."""
    return lambda p, air, t: dissolved(p, air, t, factor)


def chart(p: float, air: float, t: float) -> float:
    """The same by the trade's chart, in pounds per square inch and degrees Fahrenheit."""
    total, f = p + air + vapour(t), t * 9 / 5 - 459.67
    psi = total / (0.45359237 * 9.80665 / 0.0254**2)
    return VOLUME * (psi * (0.01821 + 0.090115 * math.exp(-(f - 32) / 43.11)) - 0.003342)


def solve(held: Callable[[float], float], wanted: float) -> float:
    """The pressure at which `held` is what is wanted: the interval is halved until nothing lies between its ends."""
    low, high = 0.0, 4e6
    assert held(low) <= wanted < held(high), wanted
    while low < (middle := (low + high) / 2) < high:
        low, high = (middle, high) if held(middle) < wanted else (low, middle)
    return low


class Bottle:
    """A bottle of beer, or a fermenter: how it was filled and is kept. Everything for a litre of drink as filled.

    `law` gives the CO2 dissolved under CO2, with air besides, at a temperature.
    """

    def __init__(self, t: float, headspace: float, filling: float, law: Callable[[float, float, float], float]) -> None:
        self.t, self.law = t, law
        self.liquid = density(filling) / density(t)
        self.gas = 1 + headspace / 100 - self.liquid
        self.headspace, self.filling = headspace, filling

    def content(self, p: float) -> float:
        return self.held(self.law(p, 0.0, self.t), p)

    def held(self, in_drink: float, p: float) -> float:
        """In the liquid as it has grown, and in the gas that is left over it."""
        return in_drink * self.liquid + gas_density(p, self.t) * self.gas

    def of_dissolved(self, in_drink: float) -> float:
        """CO2 in all where so much is dissolved: the pressure follows from that, and from it the gas."""
        return self.held(in_drink, solve(lambda p: self.law(p, 0.0, self.t), in_drink))

    def pressure(self, content: float) -> tuple[float, float]:
        """Absolute pressure, and CO2 dissolved."""
        p = solve(self.content, content)
        return p + vapour(self.t), self.law(p, 0.0, self.t)

    def with_air(self, content: float, outside: float) -> float:
        """Absolute pressure with all the air that was over the drink sealed in."""
        air = (outside - vapour(self.filling)) * self.headspace / 100 / self.gas * self.t / self.filling
        p = solve(lambda p: self.held(self.law(p, air, self.t), p), content)
        return p + air + vapour(self.t)


# ---------------------------------------------------------------------------------------------- checks


class Tally:
    """The worst relative difference of each check, and how often it was made."""

    def __init__(self) -> None:
        self.worst: dict[str, float] = {}
        self.count: dict[str, int] = {}

    def same(self, what: str, got: float, wanted: float, case: Any) -> None:
        error = abs(got - wanted) / abs(wanted)
        self.worst[what] = max(self.worst.get(what, 0.0), error)
        self.count[what] = self.count.get(what, 0) + 1
        assert error <= RELATIVE, f"{what}: {got!r}, by the balance {wanted!r}, {error:.1e} apart, of {case}"


def kelvin(celsius: float) -> float:
    return celsius + 273.15


def packages(draw: random.Random, cases: int, tally: Tally) -> None:
    """Sealed bottles of beer, cold and hot, with little and much over them."""
    for _ in range(cases):
        filling, t = draw.uniform(0, 25), draw.uniform(0, 45)
        asked: dict[str, Any] = {
            "volumes": draw.uniform(1.5, 4), "temperature_c": t, "filling_c": filling,
            "headspace_percent": draw.uniform(2, 12), "altitude_m": draw.uniform(-100, 3000),
            "abv_percent": draw.uniform(0, 13), "extract_g_per_l": draw.uniform(5, 80),
            "fermentable_g_per_l": draw.choice((0.0, draw.uniform(0, 3))),
        }
        found = carb.package_pressure(**asked)
        stated, left = asked["volumes"] * VOLUME, asked["fermentable_g_per_l"] * CO2 * moles(0.0, 1.0)
        closed = kelvin(t), asked["headspace_percent"], kelvin(filling)
        composition = asked["abv_percent"], asked["extract_g_per_l"]
        outside = air_at(asked["altitude_m"])
        pressure, in_drink = Bottle(*closed, beer(laboratory(*composition))).pressure(stated + 0.95 * left)
        tally.same("pressure expected", 1000 * found.expected.gauge_kpa, pressure - outside, asked)
        tally.same("CO2 dissolved", found.expected.co2_g_per_l, in_drink, asked)
        # At worst there is 8 % more than is stated, all that is left ferments, and the drink holds the least it may.
        worst = Bottle(*closed, beer(unfavourable(*composition))).with_air(1.08 * stated + left, outside)
        tally.same("pressure at worst", 1000 * found.worst.gauge_kpa, worst - outside, asked)


def table_of_the_trade(t: float, pressure: float) -> float:
    """Residual CO2 by the trade's quadratic in degrees Fahrenheit, held at both ends."""
    f = max(32.0, min(t * 9 / 5 - 459.67, 86.0))
    return (3.0378 - 0.050062 * f + 0.00026555 * f * f) * pressure / ATMOSPHERE * VOLUME


class Batch:
    """A batch of beer that is primed, as it is asked of the library and as it is weighed here."""

    def __init__(self, draw: random.Random, physical: bool) -> None:
        self.physical, self.sugar = physical, draw.choice(tuple(SUGARS))
        self.abv, self.extract = draw.uniform(2, 12), draw.uniform(10, 70)
        self.left = draw.choice((0.0, draw.uniform(0, 1)))
        warmest, room, altitude = draw.uniform(10, 26), draw.uniform(12, 28), draw.uniform(0, 2500)
        self.fermented: dict[str, Any] = {"warmest_c": warmest, "altitude_m": altitude}
        pressure = air_at(altitude)
        if draw.random() < 0.3:
            gauge = draw.uniform(0.02, 0.5)
            self.fermented["fermenter_gauge_bar"] = gauge
            pressure += 1e5 * gauge
        t = warm = kelvin(warmest)
        way = draw.choice(("open", "open", "co2_supplied", "closed"))
        if way != "open":
            cold = draw.uniform(2, 8)
            self.fermented |= {"cold_crash": way, "crash_c": cold}
            t = kelvin(cold)
        gas = draw.uniform(3, 40)
        if way == "closed":
            self.fermented["fermenter_headspace_percent"] = gas
        self.drink: dict[str, Any] = {
            "basis": "physical" if physical else "handbook", "abv_percent": self.abv, "extract_g_per_l": self.extract,
        }
        law = beer(laboratory(self.abv, self.extract)) if physical else chart
        # Chilled closed, the drink starts from what it held warm.
        at = warm if way == "closed" else t
        self.residual = law(pressure - vapour(at), 0.0, at) if physical else table_of_the_trade(at, pressure)
        if way == "closed":
            # The fermenter is a bottle that was closed warm; what is dissolved in it gains in that proportion.
            before = law(pressure - vapour(warm), 0.0, warm)
            held = Bottle(warm, gas, warm, law).content(pressure - vapour(warm))
            self.residual *= Bottle(t, gas, warm, law).pressure(held)[1] / before
        headspace, filling = draw.uniform(2, 9), draw.uniform(5, 25)
        self.bottle = Bottle(kelvin(room), headspace, kelvin(filling), law)
        self.kept = {
            "fermentable_g_per_l": self.left, "room_c": room, "headspace_percent": headspace, "filling_c": filling,
        }
        # What becomes of the sugar, by its theoretical yield.
        self.share = 0.95 if physical else 1.0
        if draw.random() < 0.3:
            percent = draw.uniform(88, 100)
            self.share = percent / 100
            self.kept["yield_percent"] = percent
        self.asked = {**self.fermented, **self.drink, **self.kept, "sugar": self.sugar}

    def made(self, sugar: float, drink: float) -> float:
        """Moles of CO2, and of ethanol, of grams of sugar and of what is fermentable in litres of drink."""
        hexose, disaccharide, _ = SUGARS[self.sugar]
        return self.share * (sugar * moles(hexose, disaccharide) + drink * self.left * moles(0.0, 1.0))

    def co2(self, sugar: float, drink: float) -> float:
        return self.residual * drink + CO2 * self.made(sugar, drink)

    def a_litre(self, answered: float) -> float:
        """CO2 in liquid and gas for a litre as filled, of the CO2 that the library answers."""
        return self.bottle.of_dissolved(answered) if self.physical else answered


def bottles_at_hand(draw: random.Random, volume: float) -> list[dict[str, float]]:
    """Bottles of a few sizes that hold the volume, and some more."""
    sizes = draw.sample((200, 250, 330, 355, 375, 500, 568, 650, 750, 1000, 1500), draw.randint(1, 4))
    share = 1000 * volume / len(sizes)
    return [{"bottle_ml": size, "count": math.ceil(share / size) + draw.randint(0, 6)} for size in sizes]


def fleets(draw: random.Random, cases: int, tally: Tally) -> int:
    """Batches in bottles of several sizes: the CO2 in all of them is what the drink kept and the sugar made."""
    filled_in_all = 0
    for number in range(cases):
        batch = Batch(draw, physical=number % 2 == 0)
        kept = carb.residual_co2(**batch.fermented, **batch.drink).co2_g_per_l
        tally.same("residual CO2", kept, batch.residual, batch.asked)
        drink, target = draw.uniform(4, 60), draw.uniform(2.4, 3.4)
        syrup: dict[str, Any] = {"syrup_water_ml": draw.uniform(100, 800)} if number % 3 else {}
        dose = carb.priming_sugar(**batch.asked, **syrup, volumes=target, packaged_l=drink)
        primed = carb.primed_carbonation(**batch.asked, **syrup, mass_g=dose.mass_g, packaged_l=drink)
        tally.same("dose and back", primed.co2_g_per_l, target * VOLUME, batch.asked)

        # What was weighed out is a little more or less.
        sugar = dose.mass_g * draw.uniform(0.8, 1.2)
        primed = carb.primed_carbonation(**batch.asked, **syrup, mass_g=sugar, packaged_l=drink)
        blend = drink
        if syrup and batch.physical:
            water = SUGARS[batch.sugar][2]
            blend += (syrup["syrup_water_ml"] + sugar * (0.62 * (1 - water) + water)) / 1000
        case = batch.asked | syrup | {"mass_g": sugar, "packaged_l": drink}
        at_hand = bottles_at_hand(draw, blend)
        fill = list(carb.fill_list(packaged_l=blend, bottles=at_hand))
        assert len(fill) == len(at_hand)
        assert all(0 <= row.filled_count <= row.count == own["count"] for row, own in zip(fill, at_hand)), case
        in_bottles = sum(row.filled_count * row.bottle_l for row in fill)
        tally.same("drink in bottles and left over", in_bottles + fill[0].leftover_l, blend, (blend, at_hand))
        # Each bottle has its part of all there is; what is left over has the rest.
        each = batch.a_litre(primed.co2_g_per_l)
        found = sum(row.filled_count * row.bottle_l * each for row in fill)
        tally.same("CO2 in all bottles", found, batch.co2(sugar, drink) * in_bottles / blend, case)
        alcohol = batch.abv * drink + ETHANOL * batch.share * sugar * moles(*SUGARS[batch.sugar][:2]) / PERCENT_ALCOHOL
        tally.same("alcohol", primed.abv_percent * blend, alcohol, case)

        # The same bottles, each dosed by itself and dry: with its part of the dose, and with tablets.
        tablet = draw.uniform(0.3, 3)
        doses = list(carb.bottle_doses(**batch.asked, volumes=target, tablet_g=tablet, bottles=at_hand))
        found = wanted = in_tablets = tablets = 0.0
        for row, filled in zip(doses, fill, strict=True):
            assert row.bottle_l == filled.bottle_l
            one = carb.primed_carbonation(**batch.asked, mass_g=row.mass_g, packaged_l=row.bottle_l)
            found += filled.filled_count * row.bottle_l * batch.a_litre(one.co2_g_per_l)
            wanted += filled.filled_count * batch.co2(row.mass_g, row.bottle_l)
            tally.same("CO2 of a bottle dosed dry", one.co2_g_per_l, target * VOLUME, case)
            in_tablets += filled.filled_count * row.bottle_l * batch.a_litre(row.tablet_co2_g_per_l)
            tablets += filled.filled_count * batch.co2(row.tablet_count * tablet, row.bottle_l)
            filled_in_all += int(filled.filled_count)
        tally.same("CO2 in all bottles dosed dry", found, wanted, case)
        tally.same("CO2 in all bottles with tablets", in_tablets, tablets, case)
    return filled_in_all


def main() -> None:
    draw, tally = random.Random(20261125), Tally()
    sealed, batches = 300, 240
    packages(draw, sealed, tally)
    filled = fleets(draw, batches, tally)
    for what, worst in tally.worst.items():
        print(f"  {what}: {tally.count[what]} times, worst {worst:.1e}")
    most = max(tally.worst.values())
    print(f"{sealed} packages and {batches} batches in {filled} bottles balance, worst {most:.1e} apart")
    assert tally.count["pressure at worst"] == sealed and tally.count["CO2 in all bottles"] == batches
    assert tally.count["CO2 in all bottles with tablets"] == tally.count["residual CO2"] == batches


if __name__ == "__main__":
    main()
