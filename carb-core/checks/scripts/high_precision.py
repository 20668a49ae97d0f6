"""Write ../high_precision/functions.csv: answers of every function, computed to 50 digits by mpmath.

Everything is written out here from the published equations and shares nothing with the library. Inputs are exact decimals.
A vessel is solved by halving an interval 190 times, so that no step size and no derivative enters.

Run from anywhere: python3 high_precision.py
"""

import random
from itertools import chain
from pathlib import Path

import mpmath
from mpmath import exp, log, mpf, power

mpmath.mp.dps = 50
FILE = Path(__file__).resolve().parent.parent / "high_precision" / "functions.csv"

R = mpf("8.314462618")
M = mpf("44.0095")  # g/mol
VOLUME = M / mpf("22.263")  # g/L
ATM = mpf(101325)
PSI = mpf("0.45359237") * mpf("9.80665") / mpf("0.0254") ** 2
HEXOSE, DISACCHARIDE, TRISACCHARIDE = mpf("180.156"), mpf("342.297"), mpf("504.438")
MONOHYDRATE, ETHANOL = mpf("198.171"), mpf("46.069")

# ------------------------------------------------------------------------------------------------- units

SCALE = {
    "kpa": mpf(1000), "bar": mpf(100000), "psi": PSI, "pa": mpf(1),
    "co2_g_per_l": mpf(1), "volumes": VOLUME, "g_per_l": mpf(1),
    "l": mpf(1), "ml": mpf("0.001"), "us_gal": mpf("3.785411784"), "imp_gal": mpf("4.54609"),  # to litres
    "g": mpf(1), "kg": mpf(1000), "oz": mpf("28.349523125"), "lb": mpf("453.59237"),  # to grams
    "m": mpf(1), "ft": mpf("0.3048"), "percent": mpf(1), "multiplier": mpf(1), "sg": mpf(1), "plato": mpf(1),
    "kg_per_m3": mpf(1), "pa_s": mpf(1), "mpa_s": mpf("0.001"), "cp": mpf("0.001"), "m2_per_s": mpf(1),
    "d": mpf(1), "h": mpf(1) / 24, "min": mpf(1) / 1440,  # to days
    "million_per_ml": mpf(1), "per_h": mpf(1), "per_d": mpf(1) / 24,  # to hours
    "g_per_h": mpf(1), "oz_per_h": mpf("28.349523125"),
}


def split_unit(name):
    """The role and the unit of a name such as warmest_c or expected_co2_g_per_l."""
    for unit in sorted([*SCALE, "c", "f", "k"], key=len, reverse=True):
        if name == unit:
            return "", unit
        if name.endswith("_" + unit):
            return name[: -len(unit) - 1], unit
    raise ValueError(name)


def inward(unit, text):
    value = mpf(text)
    if unit == "c":
        return value + mpf("273.15")
    if unit == "f":
        return (value + mpf("459.67")) * 5 / 9
    if unit == "k":
        return value
    return value * SCALE[unit]


# ------------------------------------------------------------------------------------------- properties


def vapour_pressure(t):
    """Water, Wagner and Pruss, Pa."""
    x = 1 - t / mpf("647.096")
    terms = (
        ("-7.85951783", "1"), ("1.84408259", "1.5"), ("-11.7866497", "3"),
        ("22.6807411", "3.5"), ("-15.9618719", "4"), ("1.80122502", "7.5"),
    )
    return mpf(22064000) * exp(mpf("647.096") / t * sum(mpf(a) * power(x, mpf(n)) for a, n in terms))


def water_density(t):
    """Kell 1975, kg/m3."""
    c = t - mpf("273.15")
    coefficients = ("999.83952", "16.945176", "-7.9870401e-3", "-46.170461e-6", "105.56302e-9", "-280.54253e-12")
    return sum(mpf(a) * c**n for n, a in enumerate(coefficients)) / (1 + mpf("16.87985e-3") * c)


def virial(t):
    """B and C - B^2 of CO2, m3/mol and its square."""
    b = mpf("137.6e-6") - mpf("87.7e-6") * exp(mpf("325.7") / t)
    return b, mpf("4900e-12") - b**2


def compressibility(p, t):
    b, c = virial(t)
    q = p / (R * t)
    return 1 + b * q + c * q**2


def fugacity_coefficient(p, t):
    b, c = virial(t)
    q = p / (R * t)
    return exp(b * q + c * q**2 / 2)


def gas_density(p, t):
    """CO2 at its own partial pressure, g/L (= kg/m3)."""
    return p * (M / 1000) / (compressibility(p, t) * R * t)


def station_pressure(sea_level, z):
    r = mpf(6356766)
    height = r * z / (r + z)
    return sea_level * power(1 - mpf("0.0065") * height / mpf("288.15"), mpf("5.25588"))


def water_viscosity(t):
    """Patek and others 2009, at 1 bar, Pa s."""
    terms = (("280.68", "-1.9"), ("511.45", "-7.7"), ("61.131", "-19.6"), ("0.45903", "-40"))
    return mpf("1e-6") * sum(mpf(a) * power(t / 300, mpf(n)) for a, n in terms)


def disaccharide_yield():
    return 4 * M / DISACCHARIDE


def sugar_yield(parts, product):
    """Grams of CO2 or ethanol per gram: a hexose gives 2 molecules of each, a disaccharide 4, a trisaccharide 6."""
    each = (2 / HEXOSE, 4 / DISACCHARIDE, 6 / TRISACCHARIDE)
    return product * sum(part * molecules for part, molecules in zip(parts, each))


SUGARS = {  # hexose, disaccharide and, where there is any, trisaccharide per gram as sold
    "dextrose_monohydrate": (HEXOSE / MONOHYDRATE, mpf(0)),
    "dextrose_anhydrous": (mpf(1), mpf(0)),
    "sucrose": (mpf(0), mpf(1)),
    "dry_malt_extract": (mpf(0), mpf("0.97") * mpf("0.62")),
    "honey": (mpf("0.695"), mpf("0.013") + mpf("0.0355")),
    "maple_syrup": (mpf("0.021"), mpf("0.583")),
}
HIGHEST = {  # the most CO2 from a gram of any sample; by the composition where that is more
    "dextrose_monohydrate": "0.447", "dextrose_anhydrous": "0.489", "sucrose": "0.5143", "dry_malt_extract": "0.34",
    "honey": "0.39", "maple_syrup": "0.335",
}
PRODUCTS = {  # hexose and disaccharide in 100 g as sold, and the most CO2 from a gram
    "table_sugar": ("0", "99.80", "0.514"), "icing_sugar": ("0", "97.81", "0.51"),
    "turbinado": ("0", "99.19", "0.512"), "demerara": ("0", "98.4", "0.51"), "brown_sugar": ("2.5", "94.5", "0.50"),
    "maple_sugar": ("0", "84.87", "0.45"), "invert_syrup": ("77", "0", "0.39"), "hfcs_42": ("67.45", "0", "0.33"),
    "hfcs_55": ("75.65", "0", "0.37"), "high_maltose_syrup": ("0", "61.25", "0.33"),
    "molasses": ("25", "29", "0.33"), "blackstrap_molasses": ("15.5", "30", "0.26"),
    "cane_syrup": ("36.6", "36.6", "0.38"), "agave_syrup": ("68", "0", "0.37"), "candi_syrup": ("63.75", "0", "0.36"),
    "liquid_malt_extract": ("0", "49.6", "0.28"), "apple_juice": ("9.62", "0", "0.06"),
    "apple_concentrate": ("38.83", "0", "0.20"), "grape_juice": ("14.20", "0", "0.10"),
    "orange_juice": ("4.38", "4.38", "0.048"), "pineapple_juice": ("4.99", "4.99", "0.054"),
    "raisins": ("59.19", "0", "0.31"), "dates": ("39.55", "23.80", "0.33"),
}
MORE = {}  # what else may be added, in a gram
for name, (hexose, disaccharide, high) in PRODUCTS.items():
    MORE[name] = (mpf(hexose) / 100, mpf(disaccharide) / 100)
    HIGHEST[name] = high
for name, dry, parts, high in (
    ("corn_syrup_42", "0.80", ("0.19", "0.14", "0.11"), "0.20"), ("corn_syrup_63", "0.82", ("0.37", "0.30", "0.13"), "0.35")
):
    MORE[name] = tuple(mpf(dry) * mpf(part) for part in parts)
    HIGHEST[name] = high
SWEETENERS = {
    "lactose": "0", "maltodextrin": "0.05", "sucralose": "0", "aspartame": "0", "saccharin": "0", "stevia": "0",
    "erythritol": "0", "xylitol": "0", "sorbitol": "0", "sweetener_packets": "0.42",
}
for name, high in SWEETENERS.items():
    MORE[name] = (mpf(0), mpf(0))
    HIGHEST[name] = high


WATER = {  # grams in a gram as sold, of those sugars whose syrups are asked for
    "dextrose_monohydrate": 1 - HEXOSE / MONOHYDRATE, "dextrose_anhydrous": "0", "sucrose": "0",
    "dry_malt_extract": "0.03", "honey": "0.172", "maple_syrup": "0.3239", "table_sugar": "0.0002",
    "brown_sugar": "0.0134", "maple_sugar": "0.08", "invert_syrup": "0.23", "molasses": "0.2187", "apple_juice": "0.8824",
    "corn_syrup_42": "0.20", "corn_syrup_63": "0.18",
}


def custom_dry(request):
    """Dry matter in a gram of a sugar of one's own."""
    if "sugar_sg" not in request:
        return 1 - mpf(request.get("sugar_water_percent", 0)) / 100
    # A litre of water and of sugar that takes 0.6146 + 0.0182 w litres a kilogram, w its share: solved for w.
    water = 1 / mpf("0.9982")
    missing = water * (1 - 1 / mpf(request["sugar_sg"]))
    a, b = mpf("0.0182"), water - mpf("0.6146")
    return (b - mpmath.sqrt(b**2 - 4 * a * missing)) / (2 * a)


def custom(request):
    """A sugar of one's own: hexose, disaccharide, trisaccharide in a gram."""
    share = custom_dry(request) * mpf(request["sugar_fermentable_percent"]) / 100
    kinds = ("hexose", "disaccharide", "trisaccharide")
    return tuple(share if kind == request["sugar_kind"] else mpf(0) for kind in kinds)

# ------------------------------------------------------------------------------------------- solubility

USUAL = {  # % vol, g/L extract
    "water": (0, 0), "beer": (5, 35), "cider": (6, 10), "mead": (12, 20), "wine": (12, 5), "soft_drink": (0, 100),
}
MODELS = {
    "handbook": {"beer": "chart_fit", "cider": "chart_fit", "mead": "chart_fit", "water": "water_core",
                 "soft_drink": "water_core", "wine": "eu_wine"},
    "physical": {"beer": "water_core", "cider": "water_core", "mead": "water_core", "water": "water_core",
                 "soft_drink": "water_core", "wine": "eu_wine"},
}


def laboratory(a, e):
    return exp(-mpf("0.0042") * a - mpf("8.7e-4") * e)


def midpoint(a, e):
    return exp(-mpf("0.008") * a - mpf("0.0011") * e)


def eu_ratio(a, e):
    return (mpf("0.86") - mpf("0.01") * a) / mpf("0.86") * (1 - mpf("0.00144") * e)


def weiss(t):
    return exp(mpf("-60.2409") + mpf("93.4517") * (100 / t) + mpf("23.3585") * log(t / 100))


def by_mole_fraction(henry, t):
    """K0 in mol/(kg atm) from Pa per mole fraction, from the pressure of the vapour to one atmosphere."""
    poynting = exp(-mpf("32.3e-6") * (ATM - vapour_pressure(t)) / (R * t))
    return 1000 / mpf("18.015268") * ATM / henry * poynting


def iapws(t):
    """IAPWS G7-04."""
    tr = t / mpf("647.096")
    tau = 1 - tr
    terms = mpf("-8.55445") / tr + mpf("4.01195") * power(tau, mpf("0.355")) / tr
    terms += mpf("9.52345") * power(tr, mpf("-0.41")) * exp(tau)
    return by_mole_fraction(vapour_pressure(t) * exp(terms), t)


def carroll(t):
    """Carroll, Slupsky and Mather 1991."""
    ln = mpf("-6.8346") + mpf("1.2817e4") / t - mpf("3.7668e6") / t**2 + mpf("2.997e8") / t**3
    return by_mole_fraction(mpf(10) ** 6 * exp(ln), t)


K0 = {"water_core": weiss, "iapws_water": iapws, "carroll_water": carroll}


def core(p, total, t, factor, k, k0=weiss):
    """Weiss, or another K0, with fugacity and Poynting term, g/L of solution."""
    m = k0(t) * (p / ATM) * fugacity_coefficient(total, t) * exp(-mpf("32.3e-6") * (total - ATM) / (R * t))
    return k * factor * m * M / (1000 / water_density(t) + mpf("0.0335") * m)


def chart(total, t, k):
    f = t * 9 / 5 - mpf("459.67")
    return VOLUME * k * (total / PSI * (mpf("0.01821") + mpf("0.090115") * exp(-(f - 32) / mpf("43.11"))) - mpf("0.003342"))


def chart_quadratic(total, t, k):
    """Psi by gauge at sea level is a quadratic in volumes; the lower of its two roots is the physical one."""
    f = t * 9 / 5 - mpf("459.67")
    bend, slope = mpf("0.0684226"), mpf("0.173354") * f + mpf("4.24267")
    missing = (total - ATM) / PSI - (mpf("-16.6999") - mpf("0.0101059") * f + mpf("0.00116512") * f**2)
    square = slope**2 - 4 * bend * missing
    # Beyond its summit the chart holds any amount, so that a search turns back.
    return VOLUME * k * (slope - mpmath.sqrt(square)) / (2 * bend) if square >= 0 else mpmath.inf


def european(total, t, k):
    return k * 10 * total / 100000 * exp(mpf("-10.73797") + mpf("2617.25") / t)


def eu_wine(total, t, a, e, k):
    slope = (mpf("0.86") - mpf("0.01") * a) * (1 - mpf("0.00144") * e)
    return k * mpf("1.951e-5") * total * slope * exp(2983 * (1 / t - 1 / mpf("293.15")))


class Drink:
    def __init__(self, request, basis):
        get = request.get
        self.kind = get("beverage", "beer")
        usual = USUAL[self.kind]
        self.a = mpf(get("abv_percent", usual[0]))
        self.e = mpf(get("extract_g_per_l", usual[1]))
        self.living = get("yeast", "live") == "live"
        # What is fermentable is part of what is dissolved, whether or not yeast is there to ferment it.
        matter = mpf(get("fermentable_g_per_l", 0))
        self.e = max(self.e, matter)
        self.fermentable = matter if self.living else mpf(0)
        self.model = get("model", MODELS[basis][self.kind])
        self.k = mpf(get("solubility_multiplier", 1))

    def dissolved(self, p, other, t):
        """CO2 in the drink, g/L, under CO2 at p with `other` gas (no water) besides."""
        total = p + vapour_pressure(t) + other
        if self.model == "chart_fit":
            return chart(total, t, self.k)
        if self.model == "chart_quadratic":
            return chart_quadratic(total, t, self.k)
        if self.model == "european":
            return european(total, t, self.k)
        if self.model == "eu_wine":
            return eu_wine(total, t, self.a, self.e, self.k)
        factor = midpoint if self.kind in ("cider", "mead") else laboratory
        return core(p, total, t, factor(self.a, self.e), self.k, K0[self.model])

    def under(self, total, t):
        return self.dissolved(total - vapour_pressure(t), 0, t)


def solve(function, target, high=mpf(8_000_000)):
    low = mpf(-20000)
    assert function(low) < target < function(high)
    for _ in range(190):
        middle = (low + high) / 2
        if function(middle) < target:
            low = middle
        else:
            high = middle
    return (low + high) / 2


# -------------------------------------------------------------------------------------------- functions


class Request(dict):
    """The quantities of a request: SI, but litres and grams."""

    def quantity(self, role, units, default=None):
        for unit in units:
            name = f"{role}_{unit}" if role else unit
            if name in self:
                return inward(unit, self[name])
        return default

    def temperature(self, role, default=None):
        return self.quantity(role, ("c", "f", "k"), default)

    def pressure(self, role, default=None):
        return self.quantity(role, ("kpa", "bar", "psi", "pa"), default)

    def carbonation(self):
        return self.quantity("", ("volumes", "co2_g_per_l"))

    def ambient(self):
        measured = self.pressure("ambient")
        if measured is not None:
            return measured
        return station_pressure(self.pressure("sea_level", ATM), self.quantity("altitude", ("m", "ft")))

    def strength(self, role, scale):
        """An extract by sg or plato, as both."""
        name = f"{role}_sg" if role else "sg"
        if name in self:
            sg = mpf(self[name])
            return sg, plato_of(sg, scale)
        plato = mpf(self[f"{role}_plato" if role else "plato"])
        return sg_of(plato, scale), plato

    def factor(self, role):
        return mpf(self.get(role + "_multiplier", 1))


def dissolved_co2(request):
    drink = Drink(request, request.get("basis", "handbook"))
    total = request.pressure("abs")
    if total is None:
        total = request.pressure("gauge") + request.ambient()
    return {"": drink.under(total, request.temperature("temperature"))}


def keg_pressure(request):
    drink, t = Drink(request, request.get("basis", "handbook")), request.temperature("temperature")
    total = solve(lambda total: drink.under(total, t), request.carbonation())
    return {"gauge": total - request.ambient(), "abs": total}


def left_under(request, basis, pressure, t):
    """CO2 that is left in the drink at a temperature and a pressure, as the model of the residual has it."""
    if request.get("residual_model", "table" if basis == "handbook" else "equilibrium") == "table":
        f = max(mpf(32), min(t * 9 / 5 - mpf("459.67"), mpf(86)))
        table = mpf("3.0378") - mpf("0.050062") * f + mpf("0.00026555") * f**2
        return request.factor("residual") * table * pressure / ATM * VOLUME
    return request.factor("residual") * max(mpf(0), Drink(request, basis).under(pressure, t))


def residual(request, basis):
    measured = request.quantity("residual", ("volumes", "co2_g_per_l"))
    if measured is not None:
        return measured
    t, crash = request.temperature("warmest"), request.get("cold_crash", "open")
    pressure = request.pressure("fermenter_gauge", mpf(0)) + request.ambient()
    if crash == "open":
        return left_under(request, basis, pressure, t)
    cold = request.temperature("crash")
    if crash == "co2_supplied":
        return left_under(request, basis, pressure, cold)
    left = left_under(request, basis, pressure, t)
    headspace = mpf(request["fermenter_headspace_percent"])
    if headspace == 0:
        return left
    # Drink and gas keep their CO2 between them: what the drink's own solubility makes of it is the gain, in proportion.
    drink, p = Drink(request, basis), pressure - vapour_pressure(t)
    before = drink.dissolved(p, 0, t)
    held = content(before, p, t, t, headspace)
    chilled = solve(lambda p: content(drink.dissolved(p, 0, cold), p, cold, t, headspace), held)
    return left * drink.dissolved(chilled, 0, cold) / before


def residual_co2(request):
    if request.get("cold_crash", "open") != "open" and request.temperature("crash") > request.temperature("warmest"):
        return None
    return {"": residual(request, request.get("basis", "handbook"))}


def real_yield(request, basis):
    percent = mpf(request.get("yield_percent", 100 if basis == "handbook" else 95))
    return percent / 100 * request.factor("yield")


def content(dissolved, p, t, filling, headspace):
    """CO2 in liquid and gas, g per litre of drink as filled."""
    v = water_density(filling) / water_density(t)
    return dissolved * v + gas_density(p, t) * (1 + headspace / 100 - v)


VOLUMES_OF = ("l", "ml", "us_gal", "imp_gal")


class Bottled:
    """A drink that is primed: what it holds, and the bottle in which it is conditioned."""

    def __init__(self, request):
        basis = request.get("basis", "handbook")
        self.drink, self.packaged = Drink(request, basis), request.quantity("packaged", VOLUMES_OF)
        self.real, self.residual = real_yield(request, basis), residual(request, basis)
        self.own = disaccharide_yield() * self.real * self.drink.fermentable
        counts = "true" if basis == "physical" else "false"
        self.counted = request.get("count_headspace", counts) == "true"
        self.room = request.temperature("room", mpf("293.15"))
        warmest = request.temperature("warmest", mpf("293.15"))
        self.filling = request.temperature("filling", request.temperature("crash", warmest))
        self.headspace = mpf(request.get("headspace_percent", 4))
        name = request.get("sugar", "sucrose")
        parts = custom(request) if name == "custom" else (SUGARS | MORE)[name]
        self.made = sugar_yield(parts, M) * self.real  # g CO2 of a gram
        self.ethanol = sugar_yield(parts, ETHANOL) * self.real
        # The syrup thins the drink: its water, and the room of the sugar in it, in litres for a litre and for a gram.
        self.water, self.takes = mpf(0), mpf(0)
        given = request.quantity("syrup_water", VOLUMES_OF)
        if given is not None and request.get("count_syrup", counts) == "true":
            self.water, self.takes = given / self.packaged, in_solution(water_of(request)) / 1000

    def all_co2(self, p):
        return content(self.drink.dissolved(p, 0, self.room), p, self.room, self.filling, self.headspace)

    def total(self, dissolved):
        """CO2 for a litre as filled that leaves so much dissolved."""
        if not self.counted:
            return dissolved
        return self.all_co2(solve(lambda p: self.drink.dissolved(p, 0, self.room), dissolved))

    def dissolved(self, total):
        if not self.counted:
            return total
        return self.drink.dissolved(solve(self.all_co2, total), 0, self.room)


def water_of(request):
    """Water in a gram of the sugar as sold."""
    name = request.get("sugar", "sucrose")
    return 1 - custom_dry(request) if name == "custom" else mpf(WATER[name])


def in_solution(water):
    """Millilitres that a gram of product takes in solution."""
    return mpf("0.62") * (1 - water) + water


def priming_sugar(request):
    bottled = Bottled(request)
    # A gram of sugar makes CO2, and room that has to hold the CO2 wanted; so does the water.
    wanted = bottled.total(request.carbonation())
    gain = bottled.made - wanted * bottled.takes
    dose = (wanted * (1 + bottled.water) - bottled.residual - bottled.own) / gain
    return {"dose": dose, "mass": dose * bottled.packaged} if gain > 0 else None


def primed_carbonation(request):
    bottled = Bottled(request)
    dose = request.quantity("mass", ("g", "kg", "oz", "lb")) / bottled.packaged
    grown = 1 + bottled.water + dose * bottled.takes
    added = dose / grown * bottled.ethanol / mpf("7.8924")
    return {
        "": bottled.dissolved((bottled.residual + bottled.own + bottled.made * dose) / grown),
        "added_abv": added,
        "abv": bottled.drink.a / grown + added,
    }


def priming_wort(request):
    """Unfermented wort or fermenting beer: the blend holds what both hold and make."""
    scale, bottled = request.get("extract_scale", "asbc"), Bottled(request)
    original_sg, original = request.strength("wort_original", scale)
    fresh = "wort_current_sg" not in request and "wort_current_plato" not in request
    sg, now = (original_sg, original) if fresh else request.strength("wort_current", scale)
    # The real extract at the end is what the limit leaves; Balling's relation tells what a hydrometer shows of it.
    end = (original * (1 - mpf(request["limit_attenuation_percent"]) / 100) - mpf("0.1808") * original) / mpf("0.8192")
    ferments = mpf("0.8192") * (now - end) * 10 * WATER_20 * sg
    held = request.quantity("wort", ("volumes", "co2_g_per_l"), mpf(0) if fresh else bottled.residual)
    wanted = bottled.total(request.carbonation())
    gain = disaccharide_yield() * bottled.real * ferments + held - wanted
    share = (wanted - bottled.residual - bottled.own) / gain
    if now > original or ferments < 0 or gain <= 0 or not 0 <= share <= 100:
        return None
    return {"wort_percent": 100 * share, "wort": share * bottled.packaged}


def priming_syrup(request):
    mass, water = request.quantity("mass", ("g", "kg", "oz", "lb")), water_of(request)
    name = request.get("sugar", "sucrose")
    hexose, disaccharide = (custom(request) if name == "custom" else (SUGARS | MORE)[name])[:2]
    c = request.temperature("dissolving", mpf("293.15")) - mpf("273.15")
    if water > mpf("0.13") and name not in ("raisins", "dates"):  # a liquid; fruit is none
        saturated, usual = mpf(100), mpf(0)
    elif name == "custom":  # it may be maltose, the least soluble
        c = min(c, mpf(63))
        saturated = mpf("0.9") * (mpf("34.65") + mpf("0.706") * c - mpf("0.00137") * c**2)
        usual = 3 * mass / 1000
    elif hexose > disaccharide:
        c = min(c, mpf(63))
        saturated, usual = mpf("34.65") + mpf("0.706") * c - mpf("0.00137") * c**2, 3 * mass / 1000
    else:
        saturated, usual = mpf("64.185") + mpf("0.135") * c + mpf("0.000528") * c**2, 3 * mass / 1000
    given = request.quantity("syrup_water", VOLUMES_OF, usual)
    least = mass / 1000 * max(mpf(0), (1 - water) * (100 / saturated - 1) - water)
    if given < least:
        return None
    return {
        "syrup": given + mass / 1000 * in_solution(water),
        "least_syrup_water": least,
        "syrup_percent": 100 * mass * (1 - water) / (mass + 1000 * given),
    }


def yeast_rate(t):
    """The cardinal temperature model of Rosso and others, over its value at 20 degrees; nothing beyond its ends."""
    least, best, most = mpf("3"), mpf("32.3"), mpf("45.4")

    def model(c):
        below = (best - least) * ((best - least) * (c - best) - (best - most) * (best + least - 2 * c))
        return (c - most) * (c - least) ** 2 / below

    c = t - mpf("273.15")
    return model(c) / model(mpf(20)) if least < c < most else mpf(0)


def paces(request):
    """How fast the yeast is over usual: expected, slow, fast; 1.5 to 2 times slower in strong drinks or with few cells."""
    cells = request.quantity("yeast", ("million_per_ml",), mpf(1))
    slow = Drink(request, "handbook").a > 9 or cells < mpf("0.5")
    spread = mpf("1.5")
    return (1 / mpf("1.75"), 1 / (spread * 2), spread / mpf("1.5")) if slow else (mpf(1), 1 / spread, spread)


TIMES = ("d", "h", "min")


def conditioning(request):
    days = request.quantity("time", TIMES) * yeast_rate(request.temperature("room"))
    # A day of nothing, then a quarter of what is left a day.
    made = [100 * (1 - exp(-max(mpf(0), pace * days - 1) / 4)) for pace in paces(request)]
    return dict(zip(("expected_progress", "least_progress", "most_progress"), made))


def conditioning_time(request):
    progress, rate = mpf(request.get("progress_percent", 95)), yeast_rate(request.temperature("room"))
    if progress > mpf("99.9") or rate < mpf("0.001"):
        return None
    needed = 1 - 4 * log(1 - progress / 100)
    expected, slow, fast = (needed / (pace * rate) for pace in paces(request))
    return {"expected_time": expected, "least_time": fast, "most_time": slow}


def reyeasting(request):
    """A gram of dry yeast has 20 thousand million living cells: 5 g to the hectolitre bring a million to the millilitre."""
    cells = request.quantity("packaged", VOLUMES_OF) * 1000 * request.quantity("yeast", ("million_per_ml",), mpf(1))
    return {"dry_yeast_mass": cells / 20000}


def package_pressure(request):
    basis = request.get("basis", "physical")
    drink, ambient = Drink(request, basis), request.ambient()
    t, filling = request.temperature("temperature"), request.temperature("filling", mpf("293.15"))
    headspace, given = mpf(request.get("headspace_percent", 4)), request.carbonation()
    gas_space = 1 + headspace / 100 - water_density(filling) / water_density(t)
    if gas_space <= 0:
        return None
    theory, pw = disaccharide_yield() * drink.fermentable, vapour_pressure(t)

    total = given + theory * real_yield(request, basis)
    p = solve(lambda p: content(drink.dissolved(p, 0, t), p, t, filling, headspace), total)
    answer = {
        "expected_gauge": p + pw - ambient,
        "expected_abs": p + pw,
        "expected": drink.dissolved(p, 0, t),
    }

    factor = min(laboratory(drink.a, drink.e), eu_ratio(drink.a, drink.e))
    air = (ambient - vapour_pressure(filling)) * (headspace / 100) / gas_space * (t / filling)
    # The worst case takes no multiplier that would make it better, and is never better than what is expected.
    total = mpf("1.08") * given + theory * max(mpf(1), real_yield(request, basis))
    multiplier = min(mpf(1), mpf(request.get("solubility_multiplier", 1)))
    p = solve(lambda p: content(core(p, p + pw + air, t, factor, multiplier), p, t, filling, headspace), total)
    answer["worst_abs"] = max(p + pw + air, answer["expected_abs"])
    answer["worst_gauge"] = answer["worst_abs"] - ambient
    return answer


def package_carbonation(request):
    """What a gauge on a package says of its CO2: without air, and with all the air that was sealed in."""
    basis = request.get("basis", "physical")
    drink, ambient = Drink(request, basis), request.ambient()
    t, filling = request.temperature("temperature"), request.temperature("filling", mpf("293.15"))
    headspace = mpf(request.get("headspace_percent", 4))
    pressure = request.quantity("gauge", ("kpa", "bar", "psi", "pa")) + ambient
    gas_space = 1 + headspace / 100 - water_density(filling) / water_density(t)
    pw = vapour_pressure(t)
    p = pressure - pw
    if gas_space <= 0 or p < 0:
        return None
    without = {
        "total": content(drink.dissolved(p, 0, t), p, t, filling, headspace),
        "dissolved": drink.dissolved(p, 0, t),
    }
    factor = min(laboratory(drink.a, drink.e), eu_ratio(drink.a, drink.e))
    multiplier = min(mpf(1), mpf(request.get("solubility_multiplier", 1)))
    air = (ambient - vapour_pressure(filling)) * (headspace / 100) / gas_space * (t / filling)
    p = max(mpf(0), pressure - pw - air)
    held = core(p, p + pw + air, t, factor, multiplier)
    least = {"least_total": content(held, p, t, filling, headspace), "least_dissolved": held}
    return without | {name: min(value, without[name[len("least_"):]]) for name, value in least.items()}


def plato_of(sg, scale):
    if scale == "lincoln":
        return mpf("-463.37") + mpf("668.72") * sg - mpf("205.35") * sg**2
    if scale == "quick":
        return 259 - 259 / sg
    return mpf("-616.868") + mpf("1111.14") * sg - mpf("630.272") * sg**2 + mpf("135.997") * sg**3


def sg_of(plato, scale):
    low, high = mpf("0.9"), mpf("1.3")
    assert plato_of(low, scale) < plato < plato_of(high, scale)
    for _ in range(190):
        middle = (low + high) / 2
        if plato_of(middle, scale) < plato:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def gravity(request):
    sg, plato = request.strength("", request.get("extract_scale", "asbc"))
    return {"sg": sg, "plato": plato}


WATER_20 = mpf("0.99820")  # kg/L, on which sg rests


def attenuation(request):
    scale = request.get("extract_scale", "asbc")
    (original_sg, o), (sg, a) = request.strength("original", scale), request.strength("current", scale)
    balling = mpf("0.1808") * o + mpf("0.8192") * a
    if request.get("real_extract_model", "balling") == "quotient":
        r = (mpf("0.814") + mpf("0.000862") * o) * (o - a) / o
        e, real = o * (1 - r) / (1 - mpf("0.005161") * r * o), 100 * r
    else:
        e, real = balling, 100 * (1 - balling / o)
    if e < 0:
        return None
    abw = (o - balling) / (mpf("2.0665") - mpf("0.010665") * o)
    return {
        "real_extract": e,
        "apparent_attenuation": 100 * (o - a) / o,
        "real_attenuation": real,
        "abw": abw,
        "abv": abw * sg / mpf("0.794"),
        "quick_abv": mpf("131.25") * (original_sg - sg),
        "extract": 10 * e * WATER_20 * sg,
    }


def final_gravity(request):
    scale = request.get("extract_scale", "asbc")
    _, original = request.strength("original", scale)
    end = original * (1 - mpf(request["expected_attenuation_percent"]) / 100)
    # Where it would be drier than real extract allows, there is none.
    if mpf("0.1808") * original + mpf("0.8192") * end < 0:
        return None
    return {"final_plato": end, "final_sg": sg_of(end, scale)}


def gravity_co2(request):
    scale = request.get("extract_scale", "asbc")
    (sg, current), (_, final) = request.strength("current", scale), request.strength("final", scale)
    fermentable = mpf("0.8192") * (current - final) * 10 * WATER_20 * sg
    return {
        "fermentable": fermentable,
        "balling": fermentable * mpf("0.9565") / mpf("2.0665"),
        "theory": fermentable * disaccharide_yield(),
    }


THICKER = {  # viscosity by that of water
    "water": "1", "beer": "1.6", "cider": "1.6", "mead": "1.6", "wine": "1.7", "soft_drink": "1.3",
}


def drink_properties(request):
    drink, t = Drink(request, "handbook"), request.temperature("temperature")
    sg = mpf(request.get("sg", 1 + mpf("0.000387") * drink.e - mpf("0.00143") * drink.a))
    f = mpf(request.get("viscosity_multiplier", THICKER[drink.kind]))
    # Ethanol makes a drink expand more than water does.
    expansion = water_density(t) / water_density(mpf("293.15")) * (1 - mpf("3.8e-7") * drink.a**2 * (t - mpf("293.15")))
    return {
        "density": 1000 * WATER_20 * sg * expansion,
        "viscosity": f * water_viscosity(t),
        "diffusivity": mpf("13.942e-9") * power(t / 227 - 1, mpf("1.7094")) / f,
    }


def co2_saturation(request):
    """Span and Wagner 1996, the ancillary equations."""
    t = request.temperature("cylinder")
    x = 1 - t / mpf("304.1282")

    def series(*terms):
        return sum(mpf(a) * power(x, n) for a, n in terms)

    half, third = mpf("0.34"), mpf(1) / 3
    pressure = series(("-7.0602087", 1), ("1.9391218", mpf("1.5")), ("-1.6463597", 2), ("-3.2995634", 4))
    liquid = series(("1.9245108", half), ("-0.62385555", mpf("0.5")), ("-0.32731127", 5 * third),
                    ("0.39245142", mpf(11) / 6))
    vapour = series(("-1.7074879", half), ("-0.8227467", mpf("0.5")), ("-4.6008549", 1), ("-10.111178", 7 * third),
                    ("-29.742252", 14 * third))
    return {
        "abs": mpf("7377300") * exp(mpf("304.1282") / t * pressure),
        "liquid_density": mpf("467.6") * exp(liquid),
        "vapour_density": mpf("467.6") * exp(vapour),
    }


def added_co2(request):
    name, dose = request["addition"], request.quantity("dose", ("g_per_l",))
    parts = custom(request) if name == "custom" else (SUGARS | MORE)[name]
    real = real_yield(request, request.get("basis", "handbook"))
    fermented = dose * real
    highest = max(mpf(HIGHEST.get(name, 0)), sugar_yield(parts, M))
    if "sugar_sg" in request:  # what the fit of its gravity leaves open
        highest *= mpf("1.015")
    return {
        "expected": fermented * sugar_yield(parts, M),
        "worst": dose * highest * max(mpf(1), real),
        # 1 % vol is 10 mL/L, at 0.78924 g/mL.
        "added_abv": fermented * sugar_yield(parts, ETHANOL) / mpf("7.8924"),
    }


def ambient_pressure(request):
    return {"ambient": request.ambient()}


METHODS = {  # expected, slow, fast: factors on the still surface, or rates at 4 degC in 1/h
    "still": (True, mpf(1), mpf("0.6"), mpf(22) / 15),
    "dip_tube": (True, mpf("1.5"), mpf("1.1") * mpf("0.6"), mpf("2.5") * 22 / 15),
    "on_side": (True, mpf("1.7"), mpf("1.4") * mpf("0.6"), mpf(2) * 22 / 15),
    "stone": (False, mpf(5), mpf(1), mpf(12)),
    "rocked": (False, mpf(10), mpf(5), mpf(40)),
}


def uptake_rates(request):
    """1/h: expected, slow, fast."""
    own = request.quantity("kla", ("per_h", "per_d"))
    if own is not None:
        return [own] * 3
    of_still, *figures = METHODS[request.get("method", "still")]
    # The viscosity at 4 degC as the catalogue prints it.
    warmth = mpf("1.5673201387583486e-3") / water_viscosity(request.temperature("temperature"))
    if not of_still:
        return [figure * warmth for figure in figures]
    diameter = request.quantity("keg_diameter", ("m", "ft"), mpf("0.215"))
    volume = request.quantity("packaged", ("l", "us_gal"), mpf("18.93")) / 1000
    return [mpf("2.2e-6") * 3600 * figure * warmth * mpmath.pi / 4 * diameter**2 / volume for figure in figures]


def uptake_rate(request):
    return dict(zip(("expected_kla", "least_kla", "most_kla"), uptake_rates(request)))


class Way:
    """From the start to equilibrium; the gap closes at the rate, or as fast as the supply lets it."""

    def __init__(self, request, gauge="gauge"):
        drink, t = Drink(request, request.get("basis", "handbook")), request.temperature("temperature")
        self.start = request.quantity("start", ("volumes", "co2_g_per_l"))
        self.end = drink.under(request.pressure(gauge) + request.ambient(), t)
        volume = request.quantity("packaged", ("l", "us_gal"), mpf("18.93"))
        supply = request.quantity("supply", ("g_per_h", "oz_per_h"))
        self.most = None if supply is None else supply / volume
        self.hold = lambda target: solve(lambda total: drink.under(total, t), target) - request.ambient()

    def turn(self, k):
        """CO2 from which on the surface is slower than the supply."""
        return self.start if self.most is None else max(self.start, self.end - self.most / k)

    def hours(self, target, k):
        turn = self.turn(k)
        if turn == self.start:
            return log((self.end - self.start) / (self.end - target)) / k
        if target <= turn:
            return (target - self.start) / self.most
        return (turn - self.start) / self.most + log((self.end - turn) / (self.end - target)) / k

    def after(self, hours, k):
        turn = self.turn(k)
        if turn > self.start:
            full = (turn - self.start) / self.most
            if hours <= full:
                return self.start + self.most * hours
            hours -= full
        return self.end - (self.end - turn) * exp(-k * hours)

    def reaches(self, target):
        """Whether the target lies on the way, and not so near an end that rounding decides the time."""
        left = (self.end - target) / (self.end - self.start)
        return mpf("0.01") < left < mpf("0.99")


def carbonation_time(request):
    way, target = Way(request), request.carbonation()
    if not way.reaches(target):
        return None
    expected, slow, fast = (way.hours(target, k) / 24 for k in uptake_rates(request))
    return {"expected_time": expected, "soonest_time": fast, "latest_time": slow}


def carbonation_progress(request):
    way, hours = Way(request), 24 * request.quantity("time", ("d", "h"))
    expected, slow, fast = (way.after(hours, k) for k in uptake_rates(request))
    return {"expected": expected, "least": min(slow, fast), "most": max(slow, fast), "end": way.end}


def burst_time(request):
    way, target = Way(request, "burst_gauge"), request.carbonation()
    if not way.reaches(target) or target < way.start:
        return None
    expected, slow, fast = uptake_rates(request)
    stop, hold = way.hours(target, fast), way.hold(target)
    if hold < 0:
        return None
    held = [way.after(stop, k) for k in (expected, slow)]
    rest = [log(max(mpf(1), (target - c) / (VOLUME / 10))) / k / 24 for c, k in zip(held, (expected, slow))]
    return {"stop_time": stop / 24, "expected": held[0], "least": held[1], "hold_gauge": hold,
            "rest_time": rest[0], "latest_rest_time": rest[1]}


FUNCTIONS = {f.__name__: f for f in (
    dissolved_co2, keg_pressure, residual_co2, priming_sugar, package_pressure, package_carbonation, gravity,
    ambient_pressure, attenuation, gravity_co2, drink_properties, co2_saturation, added_co2, primed_carbonation,
    priming_wort, priming_syrup, conditioning, conditioning_time, reyeasting, final_gravity, uptake_rate, carbonation_time,
    carbonation_progress, burst_time
)}

# ------------------------------------------------------------------------------------------------ cases

KINDS = tuple(USUAL)
AIR = ("altitude_m=0", "altitude_m=240", "altitude_m=1609.344", "altitude_ft=5280", "altitude_m=-120", "ambient_kpa=98.2",
       "ambient_psi=13.9", "ambient_bar=0.8435", "altitude_m=350;sea_level_kpa=102.1", "altitude_m=3100", "ambient_pa=101325")
# Sweet drinks with living yeast need their sugar said.
SWEET = ("cider", "mead", "wine", "soft_drink")


class Draw(random.Random):
    """The random parts of a request."""

    def decimal(self, low, high, digits=3):
        return f"{self.uniform(low, high):.{digits}f}"

    def air(self):
        return self.choice(AIR)

    def living(self, kind):
        if kind in SWEET:
            return self.choice(("yeast=none", f"fermentable_g_per_l={self.decimal(0, 2.5, 2)}"))
        return self.choice(("", f"fermentable_g_per_l={self.decimal(0, 2.5, 2)}"))

    def composition(self, kind):
        if kind == "water":
            return ""
        return self.choice(("", f"abv_percent={self.decimal(0, 14, 2)};extract_g_per_l={self.decimal(0, 120, 1)}",
                            f"abv_percent={self.decimal(2, 20, 1)}", f"extract_g_per_l={self.decimal(0, 60, 2)}"))


def join(*parts):
    return ";".join(part for part in parts if part)


def cases():
    rng = Draw(20240229)
    decimal, air, living, composition = rng.decimal, rng.air, rng.living, rng.composition
    models = ("", "model=chart_fit", "model=water_core", "model=eu_wine")

    # Dissolved CO2: the worked and printed points first, then every drink on both bases and by every model.
    yield "dissolved_co2", "gauge_psi=12;temperature_f=38;altitude_m=0", "co2_g_per_l volumes"
    yield "dissolved_co2", "abs_bar=3;temperature_c=20;beverage=water", "co2_g_per_l volumes"
    yield "dissolved_co2", "abs_kpa=250;temperature_c=6;beverage=wine;abv_percent=12.5;extract_g_per_l=10", "co2_g_per_l"
    yield "dissolved_co2", "abs_bar=16;temperature_c=25;beverage=water", "co2_g_per_l"
    yield "dissolved_co2", "abs_bar=0.2;temperature_c=59.9;beverage=water", "co2_g_per_l"
    for kind in KINDS:
        for basis in ("handbook", "physical"):
            for model in models:
                pressure = rng.choice((f"gauge_bar={decimal(0, 4)};{air()}", f"abs_kpa={decimal(110, 900, 1)}",
                                       f"gauge_psi={decimal(2, 45, 1)};{air()}"))
                t = rng.choice((f"temperature_c={decimal(-2, 60, 2)}", f"temperature_f={decimal(29, 140, 1)}"))
                k = rng.choice(("", f"solubility_multiplier={decimal(0.9, 1.1)}"))
                inputs = join(f"beverage={kind}", f"basis={basis}", model, pressure, t, composition(kind), k)
                yield "dissolved_co2", inputs, "co2_g_per_l"

    # Keg pressure: the same, the other way; chilled kegs and warm ones.
    yield "keg_pressure", "volumes=2.5;temperature_f=38;altitude_m=0", "gauge_psi abs_kpa"
    yield "keg_pressure", "volumes=2.5;temperature_c=4;altitude_m=0;basis=physical", "gauge_kpa"
    yield "keg_pressure", "volumes=1.434;temperature_c=3;altitude_m=0", "gauge_kpa"  # next to the pressure of the air
    for kind in KINDS:
        for basis in ("handbook", "physical"):
            for model in models:
                wanted = rng.choice((f"volumes={decimal(0.5, 4)}", f"co2_g_per_l={decimal(1, 8)}"))
                inputs = join(f"beverage={kind}", f"basis={basis}", model, wanted, f"temperature_c={decimal(-2, 35, 2)}",
                              air(), composition(kind), rng.choice(("", f"solubility_multiplier={decimal(0.9, 1.1)}")))
                yield "keg_pressure", inputs, rng.choice(("gauge_kpa", "gauge_psi", "abs_bar", "gauge_bar", "abs_kpa"))

    # Residual CO2: the table, held above 86 degF, and the equilibrium of every drink.
    yield "residual_co2", "warmest_c=20;altitude_m=0", "volumes co2_g_per_l"
    yield "residual_co2", "warmest_f=86;altitude_m=0", "volumes"
    yield "residual_co2", "warmest_f=86.5;altitude_m=0", "volumes"
    yield "residual_co2", "warmest_c=45;ambient_kpa=97", "volumes"
    yield "residual_co2", "warmest_c=0;ambient_kpa=101.325", "volumes"
    for kind in KINDS:
        for model in ("residual_model=table", "residual_model=equilibrium", "basis=physical", "basis=handbook"):
            inputs = join(f"beverage={kind}", model, f"warmest_c={decimal(0, 44, 2)}", air(), composition(kind),
                          rng.choice(("", f"residual_multiplier={decimal(0.8, 1.3, 2)}")),
                          rng.choice(("", f"solubility_multiplier={decimal(0.9, 1.1)}")))
            yield "residual_co2", inputs, "co2_g_per_l"

    # Priming sugar: every sugar and drink on both bases; the headspace counted and not.
    yield "priming_sugar", "volumes=2.5;warmest_f=68;packaged_us_gal=5;altitude_m=0;sugar=sucrose", "mass_g mass_oz"
    yield "priming_sugar", "volumes=2.4;warmest_c=20.5;packaged_l=19;altitude_m=240", "mass_g dose_g_per_l"
    yield "priming_sugar", "volumes=2.4;warmest_c=20.5;packaged_l=19;altitude_m=240;basis=physical", "mass_g dose_g_per_l"
    yield "priming_sugar", "volumes=0.8616;warmest_c=20;packaged_l=20;altitude_m=0", "dose_g_per_l"  # next to what it holds
    for sugar in SUGARS:
        for basis in ("handbook", "physical"):
            for kind in KINDS:
                counted = rng.choice(("", "", "count_headspace=true", "count_headspace=false"))
                inputs = join(
                    f"beverage={kind}", f"basis={basis}", f"sugar={sugar}", counted,
                    rng.choice((f"volumes={decimal(2, 4)}", f"co2_g_per_l={decimal(4.2, 8)}")),
                    f"warmest_c={decimal(5, 28, 2)}",
                    rng.choice((f"packaged_l={decimal(1, 60, 2)}", f"packaged_us_gal={decimal(1, 15, 2)}")),
                    # A dose needs living yeast, and the sweet drinks their remaining sugar.
                    f"fermentable_g_per_l={decimal(0, 2, 2)}" if kind in SWEET or rng.random() < 0.3 else "",
                    air(), composition(kind),
                    rng.choice(("", f"headspace_percent={decimal(2, 12, 1)}")),
                    rng.choice(("", "", f"room_c={decimal(10, 26, 1)}")),
                    rng.choice(("", "", f"yield_percent={decimal(88, 101, 1)}", f"yield_multiplier={decimal(0.9, 1.1, 2)}")),
                    rng.choice(("", "", f"residual_multiplier={decimal(0.8, 1.3, 2)}")),
                    rng.choice(("", "", "model=water_core", "residual_model=table", "residual_model=equilibrium")),
                )
                yield "priming_sugar", inputs, rng.choice(("mass_g", "dose_g_per_l", "mass_oz"))

    # Package pressure: warm rooms, hot days and cold cellars, little and much headspace.
    outputs = "expected_gauge_kpa expected_co2_g_per_l worst_gauge_kpa"
    yield "package_pressure", "volumes=2.4;temperature_c=30;headspace_percent=4;altitude_m=240", outputs
    yield "package_pressure", "volumes=6;temperature_c=40;headspace_percent=5;altitude_m=0", outputs
    yield "package_pressure", "volumes=0.5;temperature_c=0;headspace_percent=30;altitude_m=0", outputs
    yield "package_pressure", "volumes=2.5;temperature_c=25;headspace_percent=1;altitude_m=0", outputs
    yield "package_pressure", "volumes=2.5;temperature_c=60;headspace_percent=4;altitude_m=0", outputs
    yield "package_pressure", "volumes=2.5;temperature_c=-2;headspace_percent=4;altitude_m=0;filling_c=4", outputs
    for kind in KINDS:
        for model in models:
            for _ in range(2):
                inputs = join(
                    f"beverage={kind}", rng.choice(("", "basis=handbook", "basis=physical")), model,
                    rng.choice((f"volumes={decimal(0.5, 5)}", f"co2_g_per_l={decimal(3, 9)}")),
                    rng.choice((f"temperature_c={decimal(-2, 60, 2)}", f"temperature_f={decimal(32, 110, 1)}")),
                    rng.choice(("", f"headspace_percent={decimal(3, 30, 1)}")),
                    rng.choice(("", f"filling_c={decimal(2, 28, 1)}")),
                    air(), composition(kind), living(kind),
                    rng.choice(("", "", f"yield_percent={decimal(90, 100, 1)}", f"yield_multiplier={decimal(0.95, 1.05, 2)}")),
                    rng.choice(("", "", f"solubility_multiplier={decimal(0.95, 1.05)}")),
                )
                yield "package_pressure", inputs, outputs

    # The same read backwards, from a gauge on the bottle.
    outputs = "total_co2_g_per_l dissolved_co2_g_per_l least_total_co2_g_per_l least_dissolved_co2_g_per_l"
    yield "package_carbonation", "gauge_bar=1.8;temperature_c=20;headspace_percent=4;altitude_m=240", outputs
    yield "package_carbonation", "gauge_psi=3;temperature_c=4;headspace_percent=6;altitude_m=0", outputs
    for kind in KINDS:
        for model in models:
            inputs = join(
                f"beverage={kind}", rng.choice(("", "basis=handbook", "basis=physical")), model,
                rng.choice((f"gauge_bar={decimal(0.2, 6)}", f"gauge_psi={decimal(5, 80, 1)}")),
                f"temperature_c={decimal(0, 45, 1)}", rng.choice(("", f"headspace_percent={decimal(3, 30, 1)}")),
                rng.choice(("", f"filling_c={decimal(2, 28, 1)}")), air(), composition(kind),
                rng.choice(("", "", f"solubility_multiplier={decimal(0.95, 1.05)}")),
            )
            yield "package_carbonation", inputs, outputs

    for sg in ("0.985", "0.998", "1.000", "1.0000027", "1.004", "1.012", "1.048", "1.0832", "1.12", "1.155"):
        yield "gravity", f"sg={sg}", "plato"
    for plato in ("-5", "-2", "0", "0.5", "2.75", "7.3", "12", "16.4", "23.9", "36.5"):
        yield "gravity", f"plato={plato}", "sg"

    for altitude in ("altitude_m=-450", "altitude_m=0", "altitude_m=240", "altitude_ft=5280", "altitude_m=1609.344",
                     "altitude_m=4150.5", "altitude_m=8848", "altitude_m=350;sea_level_kpa=102.1",
                     "altitude_ft=1200;sea_level_bar=0.989", "altitude_m=0;sea_level_psi=14.7"):
        yield "ambient_pressure", altitude, rng.choice(("ambient_kpa", "ambient_psi", "ambient_bar"))


RANGES = {  # the temperatures in degrees Celsius and the pressures by gauge in bar at which a model is asked
    "chart_quadratic": (0, 12, 0.4, 2), "european": (0, 20, 0.3, 3), "iapws_water": (1.1, 45, 0.2, 6),
    "carroll_water": (0, 60, 0.2, 6),
}


def later_cases():
    """What came later, from a seed of its own so that the rows above stay as they are."""
    rng = Draw(20250301)
    decimal, air, living, composition = rng.decimal, rng.air, rng.living, rng.composition

    def temperature(role, low, high):
        unit = rng.choice("ccfk")
        shifted = {"c": lambda c: c, "f": lambda c: c * 9 / 5 + 32, "k": lambda c: c + 273.15}[unit]
        return f"{role}_{unit}={decimal(shifted(low), shifted(high), 2)}"

    # The other solubility models, on every function that takes one.
    for model, (cold, warm, least, most) in RANGES.items():
        for kind in KINDS:
            start = join(f"beverage={kind}", f"model={model}", rng.choice(("", "basis=handbook", "basis=physical")))
            k = lambda: rng.choice(("", "", f"solubility_multiplier={decimal(0.9, 1.1)}"))
            headspace = lambda: rng.choice(("", f"headspace_percent={decimal(3, 30, 1)}"))
            wanted = lambda: rng.choice((f"volumes={decimal(2, 3)}", f"co2_g_per_l={decimal(4.2, 6)}"))
            gauge = lambda: rng.choice((f"gauge_bar={decimal(least, most)}",
                                        f"gauge_kpa={decimal(100 * least, 100 * most, 1)}",
                                        f"gauge_psi={decimal(14.6 * least, 14.4 * most, 1)}"))

            pressure = rng.choice((f"{gauge()};{air()}", f"abs_bar={decimal(least + 1, most + 1)}"))
            inputs = join(start, pressure, temperature("temperature", cold, warm), composition(kind), k())
            yield "dissolved_co2", inputs, "co2_g_per_l"

            inputs = join(start, wanted(), temperature("temperature", cold, warm), air(), composition(kind), k())
            yield "keg_pressure", inputs, rng.choice(("gauge_kpa", "gauge_psi", "abs_bar", "gauge_bar"))

            inputs = join(start, "residual_model=equilibrium", temperature("warmest", cold, min(warm, 44)), air(),
                          composition(kind), k(), rng.choice(("", f"residual_multiplier={decimal(0.8, 1.3, 2)}")))
            yield "residual_co2", inputs, "co2_g_per_l"

            # Counting the headspace or asking the equilibrium is what brings the model in.
            inputs = join(
                start, f"sugar={rng.choice(tuple(SUGARS))}", wanted(),
                f"warmest_c={decimal(max(cold, 4), min(warm, 28), 2)}", f"packaged_l={decimal(1, 60, 2)}",
                rng.choice(("count_headspace=true", "residual_model=equilibrium",
                            "count_headspace=true;residual_model=equilibrium")),
                f"room_c={decimal(max(cold, 5), min(warm, 26), 1)}",
                f"fermentable_g_per_l={decimal(0, 1, 2)}" if kind in SWEET else "",
                air(), composition(kind), headspace(), k(),
            )
            yield "priming_sugar", inputs, rng.choice(("mass_g", "dose_g_per_l"))

            inputs = join(start, wanted(), temperature("temperature", cold, warm), headspace(),
                          rng.choice(("", f"filling_c={decimal(2, 20, 1)}")),
                          air(), composition(kind), living(kind), k())
            yield "package_pressure", inputs, "expected_gauge_kpa expected_co2_g_per_l worst_gauge_kpa"

            inputs = join(start, gauge(), temperature("temperature", cold, min(warm, 45)), headspace(),
                          rng.choice(("", f"filling_c={decimal(2, 20, 1)}")), air(), composition(kind), k())
            yield ("package_carbonation", inputs,
                   "total_co2_g_per_l dissolved_co2_g_per_l least_total_co2_g_per_l least_dissolved_co2_g_per_l")

    scales = ("", "extract_scale=asbc", "extract_scale=lincoln", "extract_scale=quick")
    for scale in scales[1:]:
        for sg in ("0.992", "1.0003", "1.0123", "1.048", "1.0975", decimal(1, 1.12, 4)):
            yield "gravity", join(f"sg={sg}", scale), "plato"
        for plato in ("-1.8", "0", "3.1", "12", "22.75", decimal(0, 28, 2)):
            yield "gravity", join(f"plato={plato}", scale), "sg"

    def strength(role, low, high):
        """Low and high in thousandths of sg above one."""
        return rng.choice((f"{role}_sg={decimal(1 + low / 1000, 1 + high / 1000, 4)}",
                           f"{role}_plato={decimal(low / 4, high / 4, 2)}"))

    # Every scale with either real extract, from worts and from musts that end below water.
    outputs = ("real_extract_plato real_attenuation_percent", "apparent_attenuation_percent abw_percent",
               "abv_percent extract_g_per_l", "quick_abv_percent real_extract_plato")
    yield "attenuation", "original_plato=12;current_plato=2.5", " ".join(outputs[:3]) + " quick_abv_percent"
    yield "attenuation", "original_sg=1.048;current_sg=1.010", " ".join(outputs[:3]) + " quick_abv_percent"
    for scale in scales:
        for model in ("", "real_extract_model=balling", "real_extract_model=quotient"):
            for asked in (outputs[:2], outputs[2:]):
                inputs = join(strength("original", 30, 110), strength("current", -7, 26), scale, model)
                yield "attenuation", inputs, " ".join(asked)

    yield ("gravity_co2", "current_sg=1.014;final_sg=1.010",
           "fermentable_g_per_l balling_volumes balling_co2_g_per_l theory_volumes theory_co2_g_per_l")
    for scale in scales:
        for _ in range(3):
            yield ("gravity_co2", join(strength("current", 6, 20), strength("final", -2, 5), scale),
                   rng.choice(("fermentable_g_per_l balling_co2_g_per_l", "theory_volumes balling_volumes",
                               "theory_co2_g_per_l")))

    yield "drink_properties", "temperature_c=20", "density_kg_per_m3 viscosity_mpa_s diffusivity_m2_per_s"
    yield "drink_properties", "temperature_c=4;beverage=water", "density_kg_per_m3 viscosity_cp diffusivity_m2_per_s"
    for kind in KINDS:
        for more in ("", "sg", "viscosity_multiplier"):
            extra = {"": "", "sg": f"sg={decimal(0.99, 1.06, 4)}",
                     "viscosity_multiplier": f"viscosity_multiplier={decimal(1, 2.2, 2)}"}[more]
            inputs = join(f"beverage={kind}", temperature("temperature", 0, 45), composition(kind), extra)
            yield ("drink_properties", inputs,
                   rng.choice(("density_kg_per_m3", "viscosity_mpa_s", "viscosity_pa_s", "viscosity_cp"))
                   + rng.choice(("", " diffusivity_m2_per_s")))

    density = "liquid_density_kg_per_m3 vapour_density_kg_per_m3"
    for cylinder in ("cylinder_c=20", "cylinder_c=-20", "cylinder_f=70", "cylinder_k=273.15", "cylinder_c=30.5"):
        yield "co2_saturation", cylinder, rng.choice(("abs_bar", "abs_psi", "abs_kpa")) + " " + density
    for _ in range(4):
        pressure = rng.choice(("abs_bar", "abs_psi", "abs_pa"))
        yield "co2_saturation", temperature("cylinder", -18, 30), f"{pressure} {density}"

    for sugar in SUGARS:
        for basis in ("", "basis=handbook", "basis=physical"):
            inputs = join(f"dose_g_per_l={decimal(1, 12, 2)}", f"addition={sugar}", basis,
                          rng.choice(("", f"yield_percent={decimal(88, 101, 1)}")),
                          rng.choice(("", f"yield_multiplier={decimal(0.9, 1.1, 2)}")))
            yield "added_co2", inputs, rng.choice(("expected_co2_g_per_l", "expected_volumes")) + " added_abv_percent"

    for name in (*PRODUCTS, "corn_syrup_42", "corn_syrup_63"):
        inputs = join(f"dose_g_per_l={decimal(1, 12, 2)}", f"addition={name}", f"yield_percent={decimal(90, 100, 1)}")
        yield "added_co2", inputs, "expected_volumes worst_co2_g_per_l added_abv_percent"
    for name in SWEETENERS:
        yield "added_co2", join(f"dose_g_per_l={decimal(1, 60, 2)}", f"addition={name}"), "worst_volumes"
    for kind in ("hexose", "disaccharide", "trisaccharide"):
        for water in (f"sugar_water_percent={decimal(0, 40, 1)}", f"sugar_sg={decimal(1.2, 1.42, 3)}"):
            own = join("addition=custom", water, f"sugar_fermentable_percent={decimal(40, 100, 1)}", f"sugar_kind={kind}")
            inputs = join(f"dose_g_per_l={decimal(1, 12, 2)}", own)
            yield "added_co2", inputs, "expected_co2_g_per_l worst_volumes added_abv_percent"


def bottling_cases():
    """Priming, the drink before it and the bottles after it, from a seed of their own."""
    rng = Draw(20261125)
    decimal, air, composition = rng.decimal, rng.air, rng.composition

    def crash(way, warmest):
        """A cold crash of a drink that was so warm."""
        if way == "open":
            return rng.choice(("cold_crash=open", f"cold_crash=open;crash_c={decimal(0, 4, 1)}"))
        cold = decimal(-1, min(6, warmest), 2)
        gas = f"fermenter_headspace_percent={decimal(2, 60, 1)}" if way == "closed" else ""
        return join(f"cold_crash={way}", f"crash_c={cold}", gas)

    def pressure():
        return rng.choice((f"fermenter_gauge_bar={decimal(0.05, 1.5, 3)}", f"fermenter_gauge_psi={decimal(1, 20, 1)}",
                           f"fermenter_gauge_kpa={decimal(1, 150, 1)}"))

    def wanted():
        return rng.choice((f"volumes={decimal(2.2, 3.4)}", f"co2_g_per_l={decimal(4.3, 6.8)}"))

    def packaged():
        return rng.choice((f"packaged_l={decimal(4, 60, 2)}", f"packaged_us_gal={decimal(1, 15, 2)}"))

    def sweet(kind):
        return f"fermentable_g_per_l={decimal(0, 1, 2)}" if kind in SWEET else ""

    # What the drink keeps: each cold crash of every drink on both bases, with and without pressure.
    yield "residual_co2", "warmest_c=20;altitude_m=0;fermenter_gauge_bar=0.8", "volumes co2_g_per_l"
    yield "residual_co2", "warmest_c=20;altitude_m=0;cold_crash=co2_supplied;crash_c=2", "volumes co2_g_per_l"
    yield ("residual_co2", "warmest_c=20;altitude_m=0;cold_crash=closed;crash_c=2;fermenter_headspace_percent=25",
           "volumes co2_g_per_l")
    yield ("residual_co2", "warmest_c=20;altitude_m=0;cold_crash=closed;crash_c=2;fermenter_headspace_percent=0",
           "co2_g_per_l")
    yield "residual_co2", "warmest_f=70;altitude_m=0;cold_crash=co2_supplied;crash_c=-2", "co2_g_per_l"
    for way in ("open", "closed", "co2_supplied"):
        for kind in KINDS:
            for basis in ("", "basis=physical", "residual_model=equilibrium", "basis=physical;residual_model=table",
                          "basis=physical;model=carroll_water"):
                warmest = rng.uniform(8, 26)
                inputs = join(f"warmest_c={warmest:.2f}", f"beverage={kind}", basis, air(), composition(kind),
                              crash(way, warmest), rng.choice(("", pressure())),
                              rng.choice(("", "", f"residual_multiplier={decimal(0.8, 1.2, 2)}")),
                              rng.choice(("", "", f"solubility_multiplier={decimal(0.9, 1.1)}")))
                yield "residual_co2", inputs, rng.choice(("co2_g_per_l", "volumes"))

    def batch(way, kind, basis):
        """All that is said of a batch but the CO2 wanted and the sugar."""
        warmest = rng.uniform(10, 24)
        before = rng.choice((crash(way, warmest), join(crash(way, warmest), pressure()), pressure()))
        told = rng.choice((f"warmest_c={warmest:.2f};{before}", f"warmest_c={warmest:.2f};{before}",
                           f"residual_co2_g_per_l={decimal(1.2, 2)}", f"residual_volumes={decimal(0.6, 1)}"))
        return join(told, f"beverage={kind}", basis, packaged(), air(), composition(kind), sweet(kind),
                    rng.choice(("", f"headspace_percent={decimal(2, 10, 1)}")),
                    rng.choice(("", f"filling_c={decimal(2, 22, 1)}")), rng.choice(("", f"room_c={decimal(12, 26, 1)}")),
                    rng.choice(("", "", f"yield_percent={decimal(90, 100, 1)}")),
                    rng.choice(("", "", f"yield_multiplier={decimal(0.95, 1.05, 2)}")))

    def syrup():
        return rng.choice(("", f"syrup_water_ml={decimal(150, 900, 0)}", f"syrup_water_l={decimal(0.2, 0.9, 2)}",
                           f"syrup_water_ml={decimal(150, 900, 0)};count_syrup=true",
                           f"syrup_water_ml={decimal(150, 900, 0)};count_syrup=false"))

    def some_sugar():
        name = rng.choice(("", "", *WATER, "custom"))
        if name == "custom":
            return join("sugar=custom", rng.choice((f"sugar_water_percent={decimal(0, 30, 1)}",
                                                    f"sugar_sg={decimal(1.2, 1.42, 3)}")),
                        f"sugar_fermentable_percent={decimal(60, 100, 1)}",
                        f"sugar_kind={rng.choice(('hexose', 'disaccharide', 'trisaccharide'))}")
        return f"sugar={name}" if name else ""

    # The dose and what a dose makes: a printed example first, and the same by the balance with its syrup.
    same = "residual_co2_g_per_l=1.7;packaged_l=20;altitude_m=0"
    yield "priming_sugar", f"co2_g_per_l=5;{same}", "mass_g dose_g_per_l"
    yield "priming_sugar", f"co2_g_per_l=5;{same};basis=physical;syrup_water_ml=350", "mass_g dose_g_per_l"
    yield "primed_carbonation", f"mass_g=120;{same}", "co2_g_per_l volumes added_abv_percent abv_percent"
    yield ("primed_carbonation", f"mass_g=120;{same};basis=physical;syrup_water_ml=350",
           "co2_g_per_l volumes added_abv_percent abv_percent")
    yield "primed_carbonation", f"mass_g=0;{same}", "co2_g_per_l abv_percent"
    outputs = ("co2_g_per_l added_abv_percent", "volumes abv_percent", "co2_g_per_l abv_percent")
    for way in ("open", "closed", "co2_supplied"):
        for kind in KINDS:
            for basis in ("", "basis=physical", "basis=physical", "count_headspace=true", "basis=physical;count_headspace=false"):
                inputs = join(wanted(), batch(way, kind, basis), some_sugar(), syrup())
                yield "priming_sugar", inputs, rng.choice(("mass_g", "dose_g_per_l", "mass_oz"))
                # There and back: the mass that was asked for, to a hundredth of a gram, and any other.
                answer = priming_sugar(Request(pair.split("=") for pair in inputs.split(";")))
                for mass in (mpmath.nstr(answer["mass"], 6) if answer else "0", decimal(20, 300, 1)):
                    given = join(f"mass_g={mass}", *(pair for pair in inputs.split(";")
                                                     if not pair.startswith(("volumes=", "co2_g_per_l="))))
                    if mpf(mass) >= 0:
                        yield "primed_carbonation", given, rng.choice(outputs)

    # Wort: fresh and fermenting, by either reading and every scale.
    yield ("priming_wort", f"co2_g_per_l=5;{same};wort_original_plato=12;limit_attenuation_percent=65",
           "wort_l wort_percent")
    yield ("priming_wort", f"co2_g_per_l=5;{same};wort_original_sg=1.048;wort_current_sg=1.030;limit_attenuation_percent=65",
           "wort_l wort_percent")
    for scale in ("", "extract_scale=asbc", "extract_scale=lincoln", "extract_scale=quick"):
        for basis in ("", "basis=physical", "count_headspace=true"):
            for fresh in (True, False):
                for way in ("open", rng.choice(("closed", "co2_supplied"))):
                    original = rng.choice((f"wort_original_sg={decimal(1.040, 1.075, 4)}",
                                           f"wort_original_plato={decimal(10, 18, 2)}"))
                    current = rng.choice((f"wort_current_sg={decimal(1.026, 1.036, 4)}",
                                          f"wort_current_plato={decimal(6.5, 9, 2)}"))
                    inputs = join(wanted(), batch(way, rng.choice(KINDS), basis), original, "" if fresh else current,
                                  scale, f"limit_attenuation_percent={decimal(60, 82, 1)}",
                                  rng.choice(("", f"wort_co2_g_per_l={decimal(0, 2)}", f"wort_volumes={decimal(0, 1)}")))
                    yield "priming_wort", inputs, rng.choice(("wort_l", "wort_percent", "wort_us_gal", "wort_l wort_percent"))

    outputs = "syrup_l least_syrup_water_l syrup_percent"
    yield "priming_syrup", "mass_g=116;syrup_water_ml=350", outputs
    yield "priming_syrup", "mass_g=116;syrup_water_ml=50;dissolving_c=80", outputs
    for sugar in (*WATER, "custom"):
        for water in ("", f"syrup_water_ml={decimal(250, 900, 0)}", f"syrup_water_l={decimal(0.2, 0.9, 3)}"):
            for heat in ("", f"dissolving_c={decimal(0, 100, 1)}", f"dissolving_f={decimal(40, 210, 0)}"):
                own = "sugar_fermentable_percent=95;sugar_kind=" + rng.choice(("hexose", "disaccharide", "trisaccharide"))
                own = join(own, rng.choice((f"sugar_water_percent={decimal(0, 12, 1)}", f"sugar_sg={decimal(1.2, 1.42, 3)}")))
                mass = rng.choice((f"mass_g={decimal(40, 220, 1)}", f"mass_oz={decimal(1.5, 7, 2)}"))
                inputs = join(mass, f"sugar={sugar}", water, heat, own if sugar == "custom" else "")
                yield "priming_syrup", inputs, rng.choice((outputs, "syrup_ml syrup_percent", "syrup_us_gal least_syrup_water_ml"))

    # Conditioning: usual, strong, with few cells, cold, hot, and beyond the temperatures at which yeast works.
    spans = {"conditioning": "expected_progress_percent least_progress_percent most_progress_percent",
             "conditioning_time": "expected_time_d least_time_d most_time_d"}
    yield "conditioning", "room_c=20;time_d=14", spans["conditioning"]
    yield "conditioning", "room_c=2;time_d=40", spans["conditioning"]
    yield "conditioning", "room_c=50;time_d=40", spans["conditioning"]
    yield "conditioning", "room_c=20;time_h=24", spans["conditioning"]
    yield "conditioning_time", "room_c=20", spans["conditioning_time"]
    yield "conditioning_time", "room_c=20;progress_percent=0", spans["conditioning_time"]
    yield "conditioning_time", "room_c=20;progress_percent=99.9", spans["conditioning_time"]
    for state in ("", "abv_percent=9", "abv_percent=9.1", "abv_percent=12.5", "yeast_million_per_ml=0.5",
                  "yeast_million_per_ml=0.4", "yeast_million_per_ml=3", "beverage=mead", "beverage=wine;abv_percent=8",
                  "age_d=90;filtered=true"):
        for room in (f"room_c={decimal(5, 12, 1)}", f"room_c={decimal(15, 26, 1)}", f"room_f={decimal(50, 100, 1)}",
                     f"room_c={decimal(33, 44, 1)}"):
            time = rng.choice((f"time_d={decimal(3, 60, 1)}", f"time_h={decimal(80, 900, 0)}"))
            yield "conditioning", join(room, time, state), spans["conditioning"]
            share = rng.choice(("", f"progress_percent={decimal(5, 99, 1)}"))
            yield "conditioning_time", join(room, share, state), spans["conditioning_time"]

    yield "reyeasting", "packaged_l=19.2", "dry_yeast_mass_g dry_yeast_mass_oz"
    for _ in range(6):
        cells = rng.choice(("", f"yeast_million_per_ml={decimal(0.1, 6, 2)}"))
        yield "reyeasting", join(packaged(), cells), rng.choice(("dry_yeast_mass_g", "dry_yeast_mass_oz"))

    yield "final_gravity", "original_sg=1.048;expected_attenuation_percent=78", "final_sg final_plato"
    for scale in ("", "extract_scale=asbc", "extract_scale=lincoln", "extract_scale=quick"):
        for original in (f"original_sg={decimal(1.030, 1.11, 4)}", f"original_plato={decimal(7, 25, 2)}",
                         f"original_sg={decimal(1.030, 1.11, 4)}", f"original_plato={decimal(7, 25, 2)}"):
            inputs = join(original, f"expected_attenuation_percent={decimal(55, 118, 1)}", scale)
            yield "final_gravity", inputs, "final_sg final_plato"


def kegging_schedule_cases():
    """How fast a drink takes up CO2, and how long it takes."""
    rng = random.Random(1515)

    def decimal(low, high, places=2):
        return f"{rng.uniform(low, high):.{places}f}"

    def join(*pairs):
        return ";".join(pair for pair in pairs if pair)

    def air():
        return rng.choice((f"altitude_m={decimal(0, 2500, 0)}", f"ambient_kpa={decimal(75, 104, 1)}",
                           f"altitude_ft={decimal(0, 6000, 0)};sea_level_kpa={decimal(98, 104, 1)}"))

    def keg():
        return join(rng.choice(("", "", *(f"method={method}" for method in METHODS), f"kla_per_h={decimal(0.008, 0.04, 4)}",
                                f"kla_per_d={decimal(0.2, 20)}")),
                    rng.choice(("", f"packaged_l={decimal(5, 60, 1)}", f"packaged_us_gal={decimal(2, 15)}")),
                    rng.choice(("", f"keg_diameter_m={decimal(0.15, 0.4, 3)}", f"keg_diameter_ft={decimal(0.5, 1.3)}")))

    def drink():
        return join(f"beverage={rng.choice(KINDS)}", rng.choice(("", "basis=physical", "solubility_multiplier=1.02")))

    rates = "expected_kla_per_h least_kla_per_h most_kla_per_h"
    yield "uptake_rate", "temperature_c=4", rates
    for method in METHODS:
        for temperature in (f"temperature_c={decimal(0, 28, 1)}", f"temperature_f={decimal(33, 75, 0)}"):
            yield "uptake_rate", join(temperature, f"method={method}"), rates
    for _ in range(8):
        yield "uptake_rate", join(f"temperature_c={decimal(0, 24, 1)}", keg()), rates

    times = "expected_time_h soonest_time_h latest_time_d"
    amounts = "expected_co2_g_per_l least_volumes most_volumes end_co2_g_per_l"
    burst = "stop_time_h expected_volumes least_co2_g_per_l hold_gauge_psi rest_time_h latest_rest_time_d"
    yield "carbonation_time", "start_volumes=0.85;volumes=2.4;gauge_psi=11.2;temperature_f=38;altitude_m=0", times
    yield "carbonation_progress", "start_volumes=0.85;time_d=7;gauge_psi=11.2;temperature_f=38;altitude_m=0", amounts
    yield "burst_time", "start_volumes=0.85;volumes=2.5;burst_gauge_psi=30;temperature_f=38;altitude_m=0", burst
    for _ in range(60):
        cold = f"temperature_c={decimal(0, 14, 1)}"
        supply = rng.choice(("", "", f"supply_g_per_h={decimal(2, 60, 1)}", f"supply_oz_per_h={decimal(0.1, 2)}"))
        start = rng.choice((f"start_volumes={decimal(0.3, 1.2)}", f"start_co2_g_per_l={decimal(0.6, 2.4)}"))
        gauge = rng.choice((f"gauge_psi={decimal(8, 35, 1)}", f"gauge_bar={decimal(0.6, 2.4)}"))
        where = join(cold, supply, keg(), air(), drink())
        yield "carbonation_time", join(start, f"volumes={decimal(1.4, 2.6)}", gauge, where), times
        # Vented.
        yield ("carbonation_time",
               join(f"start_volumes={decimal(4, 5)}", f"volumes={decimal(2.9, 3.8)}", f"gauge_psi={decimal(0, 12, 1)}", where), times)
        start = rng.choice((start, f"start_volumes={decimal(3, 5)}"))
        yield "carbonation_progress", join(start, f"time_h={decimal(0, 200, 1)}", gauge, where), amounts
        where = join(cold, keg(), air(), drink())
        start = f"start_volumes={decimal(0.3, 1.2)}"
        yield "burst_time", join(start, f"volumes={decimal(2, 2.8)}", f"burst_gauge_psi={decimal(25, 45, 1)}", where), burst


def outward(name, answer):
    role, unit = split_unit(name)
    # Where two quantities share a role, the answer names them by their units too.
    key = name if name in answer else role if role or unit not in ("sg", "plato") else unit
    return answer[key] / SCALE[unit]


HEADER = """\
# Answers of every function to 25 significant digits, from the published equations.
# Made by checks/scripts/high_precision.py with mpmath at 50 digits, sharing nothing with the library; random points from a
# fixed seed. inputs are exact decimals, by the names of the vocabulary; a name that is missing takes its default.
"""


def main():
    rows, seen = [], set()
    for function, inputs, outputs in chain(cases(), later_cases(), bottling_cases(), kegging_schedule_cases()):
        request = Request(pair.split("=") for pair in inputs.split(";"))
        answer = FUNCTIONS[function](request)
        # What has no answer is none of this file's business: a full bottle, no dose needed, a keg that holds more when open.
        held = function == "keg_pressure" and answer["gauge"] < 0
        if answer is None or held or answer.get("dose", 1) <= 0 or (function, inputs) in seen:
            continue
        seen.add((function, inputs))
        for output in outputs.split():
            value = mpmath.nstr(outward(output, answer), 25, strip_zeros=False)
            rows.append(f"{function},{inputs},{output},{value}\n")
    FILE.write_text(HEADER + "function,inputs,output,value\n" + "".join(rows), encoding="utf-8")
    print(len(rows), "rows")


if __name__ == "__main__":
    main()
