"""Write ../high_precision/functions.csv: answers of every function, computed to 50 digits by mpmath.

Everything is written out here from the published equations and shares nothing with the library. Inputs are exact decimals.
A vessel is solved by halving an interval 190 times, so that no step size and no derivative enters.

Run from anywhere: python3 high_precision.py
"""

import random
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
HEXOSE, DISACCHARIDE, MONOHYDRATE = mpf("180.156"), mpf("342.297"), mpf("198.171")

# ------------------------------------------------------------------------------------------------- units

SCALE = {
    "kpa": mpf(1000), "bar": mpf(100000), "psi": PSI, "pa": mpf(1),
    "co2_g_per_l": mpf(1), "volumes": VOLUME, "g_per_l": mpf(1),
    "l": mpf(1), "ml": mpf("0.001"), "us_gal": mpf("3.785411784"), "imp_gal": mpf("4.54609"),  # to litres
    "g": mpf(1), "kg": mpf(1000), "oz": mpf("28.349523125"), "lb": mpf("453.59237"),  # to grams
    "m": mpf(1), "ft": mpf("0.3048"), "percent": mpf(1), "multiplier": mpf(1), "sg": mpf(1), "plato": mpf(1),
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


def hexose_yield():
    return 2 * M / HEXOSE


def disaccharide_yield():
    return 4 * M / DISACCHARIDE


SUGARS = {  # hexose and disaccharide per gram as sold
    "dextrose_monohydrate": (HEXOSE / MONOHYDRATE, mpf(0)),
    "dextrose_anhydrous": (mpf(1), mpf(0)),
    "sucrose": (mpf(0), mpf(1)),
    "dry_malt_extract": (mpf(0), mpf("0.97") * mpf("0.62")),
    "honey": (mpf("0.695"), mpf("0.013") + mpf("0.0355")),
    "maple_syrup": (mpf("0.021"), mpf("0.583")),
}

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


def core(p, total, t, factor, k):
    """Weiss with fugacity and Poynting term, g/L of solution."""
    k0 = exp(mpf("-60.2409") + mpf("93.4517") * (100 / t) + mpf("23.3585") * log(t / 100))
    m = k0 * (p / ATM) * fugacity_coefficient(total, t) * exp(-mpf("32.3e-6") * (total - ATM) / (R * t))
    return k * factor * m * M / (1000 / water_density(t) + mpf("0.0335") * m)


def chart(total, t, k):
    f = t * 9 / 5 - mpf("459.67")
    return VOLUME * k * (total / PSI * (mpf("0.01821") + mpf("0.090115") * exp(-(f - 32) / mpf("43.11"))) - mpf("0.003342"))


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
        if self.model == "eu_wine":
            return eu_wine(total, t, self.a, self.e, self.k)
        factor = midpoint if self.kind in ("cider", "mead") else laboratory
        return core(p, total, t, factor(self.a, self.e), self.k)

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


def residual(request, basis):
    t, ambient = request.temperature("warmest"), request.ambient()
    if request.get("residual_model", "table" if basis == "handbook" else "equilibrium") == "table":
        f = min(t * 9 / 5 - mpf("459.67"), mpf(86))
        table = mpf("3.0378") - mpf("0.050062") * f + mpf("0.00026555") * f**2
        return request.factor("residual") * table * ambient / ATM * VOLUME
    return request.factor("residual") * Drink(request, basis).under(ambient, t)


def residual_co2(request):
    return {"": residual(request, request.get("basis", "handbook"))}


def real_yield(request, basis):
    percent = mpf(request.get("yield_percent", 100 if basis == "handbook" else 95))
    return percent / 100 * request.factor("yield")


def content(dissolved, p, t, filling, headspace):
    """CO2 in liquid and gas, g per litre of drink as filled."""
    v = water_density(filling) / water_density(t)
    return dissolved * v + gas_density(p, t) * (1 + headspace / 100 - v)


def priming_sugar(request):
    basis = request.get("basis", "handbook")
    drink, wanted = Drink(request, basis), request.carbonation()
    if request.get("count_headspace", "true" if basis == "physical" else "false") == "true":
        room = request.temperature("room", mpf("293.15"))
        p = solve(lambda p: drink.dissolved(p, 0, room), wanted)
        headspace = mpf(request.get("headspace_percent", 4))
        wanted = content(wanted, p, room, request.temperature("warmest"), headspace)
    hexose, disaccharide = SUGARS[request.get("sugar", "sucrose")]
    sugar = hexose * hexose_yield() + disaccharide * disaccharide_yield()
    real = real_yield(request, basis)
    own = disaccharide_yield() * real * drink.fermentable
    dose = (wanted - residual(request, basis) - own) / (sugar * real)
    return {"dose": dose, "mass": dose * request.quantity("packaged", ("l", "ml", "us_gal", "imp_gal"))}


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


def plato_of(sg):
    return mpf("-616.868") + mpf("1111.14") * sg - mpf("630.272") * sg**2 + mpf("135.997") * sg**3


def gravity(request):
    if "sg" in request:
        sg = mpf(request["sg"])
        return {"plato": plato_of(sg), "sg": sg}
    wanted, low, high = mpf(request["plato"]), mpf("0.9"), mpf("1.3")
    assert plato_of(low) < wanted < plato_of(high)
    for _ in range(190):
        middle = (low + high) / 2
        if plato_of(middle) < wanted:
            low = middle
        else:
            high = middle
    return {"sg": (low + high) / 2, "plato": wanted}


def ambient_pressure(request):
    return {"ambient": request.ambient()}


FUNCTIONS = {f.__name__: f for f in (
    dissolved_co2, keg_pressure, residual_co2, priming_sugar, package_pressure, package_carbonation, gravity,
    ambient_pressure
)}

# ------------------------------------------------------------------------------------------------ cases

KINDS = tuple(USUAL)
AIR = ("altitude_m=0", "altitude_m=240", "altitude_m=1609.344", "altitude_ft=5280", "altitude_m=-120", "ambient_kpa=98.2",
       "ambient_psi=13.9", "ambient_bar=0.8435", "altitude_m=350;sea_level_kpa=102.1", "altitude_m=3100", "ambient_pa=101325")
# Sweet drinks with living yeast need their sugar said.
SWEET = ("cider", "mead", "wine", "soft_drink")


def cases():
    rng = random.Random(20240229)

    def decimal(low, high, digits=3):
        return f"{rng.uniform(low, high):.{digits}f}"

    def air():
        return rng.choice(AIR)

    def living(kind):
        if kind in SWEET:
            return rng.choice(("yeast=none", f"fermentable_g_per_l={decimal(0, 2.5, 2)}"))
        return rng.choice(("", f"fermentable_g_per_l={decimal(0, 2.5, 2)}"))

    def composition(kind):
        if kind == "water":
            return ""
        return rng.choice(("", f"abv_percent={decimal(0, 14, 2)};extract_g_per_l={decimal(0, 120, 1)}",
                           f"abv_percent={decimal(2, 20, 1)}", f"extract_g_per_l={decimal(0, 60, 2)}"))

    models = ("", "model=chart_fit", "model=water_core", "model=eu_wine")

    def join(*parts):
        return ";".join(part for part in parts if part)

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


def outward(name, answer):
    role, unit = split_unit(name)
    return answer[role if role or unit not in ("sg", "plato") else unit] / SCALE[unit]


HEADER = """\
# Answers of every function to 25 significant digits, from the published equations.
# Made by checks/scripts/high_precision.py with mpmath at 50 digits, sharing nothing with the library; random points from a
# fixed seed. inputs are exact decimals, by the names of the vocabulary; a name that is missing takes its default.
"""


def main():
    rows, seen = [], set()
    for function, inputs, outputs in cases():
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
