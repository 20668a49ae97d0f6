//! What must hold for any brew: conservation of CO2, the direction of every effect, worst cases that are worse, and
//! arrays that answer as single values do. The inputs are random but the same on every run.

use carb_core::Error;
use carb_core::balance::sealed::{Closed, Sealed};
use carb_core::basis::function::{Slices, Statuses};
use carb_core::basis::kernel::Series;
use carb_core::basis::request::{Raw, Value, choices};
use carb_core::basis::{Answer, Function, Kind, Need, Request, Values};
use carb_core::error::code;
use carb_core::evidence::NoSteps;
use carb_core::property::constant::{CO2_MOLAR_MASS, GAS_CONSTANT};
use carb_core::property::solubility::henry::Weiss;
use carb_core::property::solubility::water_core::WaterCore;
use carb_core::property::solubility::{Here, Solubility};
use carb_core::property::{co2_gas, water};
use carb_core::quantity::unit::{UNITS, VOLUMES};
use carb_core::quantity::{Key, Name, Unit};
use carb_core::table::functions::{FUNCTIONS, named};
use proptest::prelude::*;
use proptest::sample::select;
use proptest::test_runner::RngSeed;

/// The same cases on every run and every machine.
fn cases(cases: u32) -> ProptestConfig {
    ProptestConfig { cases, rng_seed: RngSeed::Fixed(1857), failure_persistence: None, ..ProptestConfig::default() }
}

/// Puts numbers and choices together into a request.
fn request(numbers: &[(&str, f64)], words: &[(&str, &str)]) -> Request {
    let mut request = Request::new();
    for &(name, value) in numbers {
        request.set(name, Raw::Number(value)).unwrap();
    }
    for &(name, word) in words.iter().filter(|(_, word)| !word.is_empty()) {
        request.set(name, Raw::Text(word)).unwrap();
    }
    request
}

fn answer(function: &str, request: &Request) -> Result<Answer<Values>, Error> {
    named(function).unwrap().answer(request, &mut NoSteps)
}

/// The output at a place, SI.
fn value(function: &str, numbers: &[(&str, f64)], words: &[(&str, &str)], at: usize) -> f64 {
    let found = answer(function, &request(numbers, words));
    found.unwrap_or_else(|error| panic!("{function} {numbers:?} {words:?}: {error}")).value.as_slice()[at]
}

const EXPECTED_GAUGE: usize = 0;
const EXPECTED_ABSOLUTE: usize = 1;
const EXPECTED_CO2: usize = 2;
const WORST_GAUGE: usize = 3;
const WORST_ABSOLUTE: usize = 4;
const MASS: usize = 0;
const DOSE: usize = 1;

fn beverage() -> impl Strategy<Value = &'static str> {
    select(choices(Key::Beverage))
}

/// A model by name; empty for the default.
fn model() -> impl Strategy<Value = &'static str> {
    select([&[""], choices(Key::Model)].concat())
}

fn basis() -> impl Strategy<Value = &'static str> {
    select(choices(Key::Basis))
}

proptest! {
    #![proptest_config(cases(400))]

    /// 1e-12 of the absolute pressure: a gauge pressure is a small difference of two absolute ones.
    #[test]
    fn the_regulator_pressure_of_the_co2_that_a_pressure_holds_is_that_pressure(
        gauge in 1.0..400.0f64, t in -2.0..60.0f64, ambient in 60.0..105.0f64, drink in beverage(), model in model()
    ) {
        let here = [("temperature_c", t), ("ambient_kpa", ambient)];
        let words = [("beverage", drink), ("model", model)];
        let state = request(&[here[0], here[1], ("gauge_kpa", gauge)], &words);
        // The quadratic leaves nothing dissolved in warm beer under little pressure.
        prop_assume!(answer("dissolved_co2", &state).is_ok() || model != "chart_quadratic");
        let c = answer("dissolved_co2", &state).unwrap().value.as_slice()[0];
        let back = value("keg_pressure", &[here[0], here[1], ("co2_g_per_l", c)], &words, 0);
        prop_assert!((back - 1e3 * gauge).abs() <= 1e-12 * 1e3 * (gauge + ambient), "{gauge} kPa, {c} g/L, {back} Pa");
    }

    /// The cubic's terms reach 1200 °P and round to 1e-13 of that; a gravity point is a quarter of a degree.
    #[test]
    fn a_gravity_reads_the_same_after_a_turn_through_the_other_scale(
        sg in 0.981..1.159f64, plato in -5.0..36.0f64, scale in select(choices(Key::ExtractScale))
    ) {
        let words = [("extract_scale", scale)];
        let there = value("gravity", &[("sg", sg)], &words, 1);
        prop_assert!((value("gravity", &[("plato", there)], &words, 0) - sg).abs() <= 2e-14);
        let there = value("gravity", &[("plato", plato)], &words, 0);
        prop_assert!((value("gravity", &[("sg", there)], &words, 1) - plato).abs() <= 5e-12);
        let more = value("gravity", &[("sg", sg + 1e-4)], &words, 1);
        prop_assert!(more > value("gravity", &[("sg", sg)], &words, 1), "denser is more extract");
    }

    /// Balling's wort: what ferments becomes alcohol, CO2 and yeast in fixed shares, so extract is conserved.
    #[test]
    fn a_lower_gravity_is_more_alcohol_and_less_extract(
        original in 1.03..1.12f64, share in 0.05..0.95f64, further in 0.02..0.9f64,
        scale in select(choices(Key::ExtractScale)), model in select(choices(Key::RealExtractModel))
    ) {
        let words = [("extract_scale", scale), ("real_extract_model", model)];
        // A wort from which everything has fermented falls by about a fifth below water.
        let lowest = 1.0 - 0.19 * (original - 1.0);
        let now = original - 0.8 * share * (original - lowest);
        let further = further * (now - lowest);
        let at = |current, output| value("attenuation", &[("original_sg", original), ("current_sg", current)], &words, output);
        // Real extract and extract per litre fall; both attenuations and all three alcohols rise.
        for output in [0, 6] {
            prop_assert!(at(now - further, output) < at(now, output));
        }
        for output in 1..6 {
            prop_assert!(at(now - further, output) > at(now, output));
        }
        prop_assert!(at(now, 2) < at(now, 1), "real attenuation is less than the apparent one");
        // What is fermented between two readings is the fall of the real extract, but for the density of the liquid.
        let left = value("gravity_co2", &[("current_sg", now), ("final_sg", now - further)], &[("extract_scale", scale)], 0);
        let balling = [("extract_scale", scale)];
        let real = |current| value("attenuation", &[("original_sg", original), ("current_sg", current)], &balling, 0);
        let fallen = 10.0 * (real(now) - real(now - further)) * 0.9982 * now;
        prop_assert!((left / fallen - 1.0).abs() <= 1e-9, "{left} {fallen}");
    }

    #[test]
    fn what_is_fermented_is_counted_once(
        first in 1.005..1.03f64, fall in 0.0005..0.005f64, again in 0.0005..0.005f64
    ) {
        let co2 = |from: f64, to: f64, at| value("gravity_co2", &[("current_sg", from), ("final_sg", to)], &[], at);
        for at in 0..3 {
            let parts = co2(first, first - fall, at) + co2(first - fall, first - fall - again, at);
            let whole = co2(first, first - fall - again, at);
            // The liquid becomes lighter by its own fall in gravity on the way.
            prop_assert!((parts / whole - 1.0).abs() <= fall + again);
        }
        prop_assert!(co2(first, first - fall, 2) > co2(first, first - fall, 1), "theory is more than Balling");
    }

    /// Carbon in is carbon out: of 180.156 g of hexose 88.02 g become CO2 and 92.14 g alcohol.
    #[test]
    fn sugar_becomes_co2_and_alcohol_and_nothing_else(
        dose in 0.1..30.0f64, water in 0.0..60.0f64, share in 10.0..100.0f64, kind in select(choices(Key::SugarKind))
    ) {
        let numbers = [("dose_g_per_l", dose), ("sugar_water_percent", water), ("sugar_fermentable_percent", share)];
        let words = [("addition", "custom"), ("sugar_kind", kind)];
        let at = |output| value("added_co2", &numbers, &words, output);
        let sugar = dose * (1.0 - water / 100.0) * share / 100.0;
        // Each bond between two hexoses takes a molecule of water, 18.015 g, to break.
        let bonds = match kind { "hexose" => 0.0, "disaccharide" => 18.015 / 342.297, _ => 2.0 * 18.015 / 504.438 };
        let made = at(0) + at(2) * 7.8924;
        prop_assert!((made / (sugar * (1.0 + bonds)) - 1.0).abs() <= 2e-5, "{made} g of {sugar} g");
        prop_assert!(at(1) >= at(0) * (1.0 - 1e-12), "the worst is no better");
    }

    #[test]
    fn safety_never_takes_less_than_is_expected(
        dose in 0.0..60.0f64, at in 0..choices(Key::Addition).len(), percent in 50.0..105.0f64, factor in 0.5..2.0f64
    ) {
        let addition = choices(Key::Addition)[at];
        prop_assume!(addition != "custom");
        let numbers = [("dose_g_per_l", dose), ("yield_percent", percent), ("yield_multiplier", factor)];
        let found = |output| value("added_co2", &numbers, &[("addition", addition)], output);
        prop_assert!(found(1) >= found(0) * (1.0 - 1e-12), "{addition}");
        prop_assert!(found(1) <= 0.53 * dose * (percent * factor / 100.0).max(1.0), "{addition}");
    }

    #[test]
    fn a_warmer_drink_is_thinner_lighter_and_lets_co2_through_faster(
        t in 4.0..59.0f64, warmer in 0.1..1.0f64, drink in beverage()
    ) {
        let at = |t, output| value("drink_properties", &[("temperature_c", t)], &[("beverage", drink)], output);
        prop_assert!(at(t + warmer, 0) < at(t, 0) && at(t + warmer, 1) < at(t, 1) && at(t + warmer, 2) > at(t, 2));
    }

    #[test]
    fn a_warmer_cylinder_has_more_pressure_and_less_between_liquid_and_vapour(t in -56.0..30.9f64, warmer in 0.01..0.05f64) {
        let at = |t, output| value("co2_saturation", &[("cylinder_c", t)], &[], output);
        prop_assert!(at(t + warmer, 0) > at(t, 0) && at(t + warmer, 1) < at(t, 1) && at(t + warmer, 2) > at(t, 2));
        prop_assert!(at(t, 1) > at(t, 2), "the liquid is the denser one");
    }

    /// As a sugar primes, so it makes CO2: the dose for a gain of CO2, added, gives that gain.
    #[test]
    fn the_priming_dose_makes_the_co2_that_was_wanted(
        volumes in 1.5..4.0f64, warmest in 5.0..30.0f64, at in 0..choices(Key::Sugar).len()
    ) {
        let sugar = choices(Key::Sugar)[at];
        prop_assume!(sugar != "custom");
        let here = [("warmest_c", warmest), ("altitude_m", 0.0)];
        let numbers = [here[0], here[1], ("volumes", volumes), ("packaged_l", 20.0)];
        let dose = value("priming_sugar", &numbers, &[("sugar", sugar)], DOSE);
        let added = value("added_co2", &[("dose_g_per_l", dose)], &[("addition", sugar)], 0);
        let held = value("residual_co2", &here, &[], 0);
        prop_assert!((added + held - VOLUMES.to_si(volumes)).abs() <= 1e-12 * VOLUMES.to_si(volumes));
    }

    #[test]
    fn a_quantity_comes_back_from_every_unit(x in -1e6..1e6f64) {
        for unit in UNITS {
            let back = unit.from_si(unit.to_si(x));
            let shifted = x.abs() + (unit.offset / unit.scale).abs();
            prop_assert!((back - x).abs() <= 4.0 * f64::EPSILON * shifted, "{}: {x} {back}", unit.name);
        }
    }

    #[test]
    fn more_pressure_holds_more_co2_and_warmth_less(
        p in 25.0..900.0f64, more in 1.001..1.5f64, t in -2.0..59.0f64, warmer in 0.1..30.0f64,
        drink in beverage(), model in model()
    ) {
        let words = [("beverage", drink), ("model", model)];
        let hotter = (t + warmer).min(60.0);
        let state = |p, t| request(&[("abs_kpa", p), ("temperature_c", t)], &words);
        // The quadratic leaves nothing dissolved in warm beer under little pressure.
        prop_assume!(answer("dissolved_co2", &state(p, hotter)).is_ok());
        let at = |p, t| answer("dissolved_co2", &state(p, t)).unwrap().value.as_slice()[0];
        prop_assert!(at(p * more, t) > at(p, t));
        prop_assert!(at(p, hotter) < at(p, t));
    }

    #[test]
    fn a_drink_keeps_less_co2_up_a_mountain(
        warmest in 0.0..45.0f64, low in -400.0..8000.0f64, climb in 1.0..900.0f64, drink in beverage(), basis in basis()
    ) {
        let words = [("beverage", drink), ("basis", basis)];
        let at = |z| value("residual_co2", &[("warmest_c", warmest), ("altitude_m", z)], &words, 0);
        prop_assert!(at(low + climb) < at(low));
    }

    #[test]
    fn a_drink_that_stayed_colder_never_needs_more_sugar(
        warmest in 1.0..45.0f64, colder in 0.01..1.0f64, volumes in 2.2..4.0f64, drink in beverage(), basis in basis()
    ) {
        let words = [("beverage", drink), ("basis", basis)];
        let at = |t| {
            let numbers = [("warmest_c", t), ("volumes", volumes), ("packaged_l", 20.0), ("altitude_m", 0.0),
                ("fermentable_g_per_l", 0.0), ("headspace_percent", 5.0)];
            value("priming_sugar", &numbers, &words, DOSE)
        };
        prop_assert!(at(warmest * (1.0 - colder)) <= at(warmest));
    }

    #[test]
    fn the_sugar_for_twice_the_drink_is_twice_the_sugar(
        packaged in 1.0..500.0f64, part in 0.1..3.0f64, volumes in 2.0..4.0f64, warmest in 5.0..25.0f64, basis in basis()
    ) {
        let of = |litres, at| {
            let numbers = [("packaged_l", litres), ("volumes", volumes), ("warmest_c", warmest), ("altitude_m", 240.0)];
            value("priming_sugar", &numbers, &[("basis", basis)], at)
        };
        // Doubling is exact in a double, any other factor rounds a few times.
        prop_assert_eq!((2.0 * of(packaged, MASS)).to_bits(), of(2.0 * packaged, MASS).to_bits());
        let (one, other) = (of(packaged, MASS) * part, of(packaged * part, MASS));
        prop_assert!((one - other).abs() <= 4.0 * f64::EPSILON * other);
        prop_assert_eq!(of(packaged, DOSE).to_bits(), of(packaged * part, DOSE).to_bits());
    }
}

/// A bottle with 4 % headspace, filled at 20 °C.
#[derive(Clone, Copy, Debug)]
struct Bottle {
    drink: &'static str,
    model: &'static str,
    volumes: f64,
    fermentable: f64,
    t: f64,
    ambient: f64,
}

impl Bottle {
    fn value(self, at: usize) -> f64 {
        let numbers = [
            ("volumes", self.volumes),
            ("fermentable_g_per_l", self.fermentable),
            ("temperature_c", self.t),
            ("ambient_kpa", self.ambient),
            ("headspace_percent", 4.0),
        ];
        value("package_pressure", &numbers, &[("beverage", self.drink), ("model", self.model)], at)
    }
}

fn bottle() -> impl Strategy<Value = Bottle> {
    (beverage(), model(), 0.5..4.0f64, 0.0..3.0f64, -2.0..59.0f64, 60.0..105.0f64).prop_map(
        |(drink, model, volumes, fermentable, t, ambient)| Bottle { drink, model, volumes, fermentable, t, ambient },
    )
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn more_co2_more_sugar_more_warmth_and_more_air_only_raise_the_worst_pressure(
        bottle in bottle(), more in 0.01..1.0f64
    ) {
        let worst = bottle.value(WORST_GAUGE);
        let carbonated = Bottle { volumes: bottle.volumes + more, ..bottle };
        let sweeter = Bottle { fermentable: bottle.fermentable + more, ..bottle };
        let warmer = Bottle { t: bottle.t + more, ..bottle };
        for worse in [carbonated, sweeter, warmer] {
            prop_assert!(worse.value(WORST_GAUGE) > worst, "{worse:?}");
        }
        // Heavier air adds what was sealed in; a gauge does not show all of it, so the absolute pressure is compared.
        let heavier = Bottle { ambient: bottle.ambient + more, ..bottle };
        let (before, after) = (bottle.value(WORST_ABSOLUTE), heavier.value(WORST_ABSOLUTE));
        // Where the worst case is held at the expected one, which knows no air, the air changes nothing.
        let held = before == bottle.value(EXPECTED_ABSOLUTE);
        prop_assert!(after > before || held && after >= before, "{heavier:?}");
    }

    /// A gauge read backwards gives the CO2 that was put in; and less of it, if part of the pressure is air.
    #[test]
    fn a_gauge_read_backwards_gives_the_co2_that_was_put_in(
        bottle in bottle(), headspace in 3.0..30.0f64, filling in 0.0..25.0f64
    ) {
        let mut numbers = [("volumes", bottle.volumes), ("temperature_c", bottle.t), ("ambient_kpa", bottle.ambient),
            ("headspace_percent", headspace), ("filling_c", filling)];
        let words = [("beverage", bottle.drink), ("model", bottle.model), ("yeast", "none")];
        let at = |place| value("package_pressure", &numbers, &words, place);
        let (gauge, dissolved) = (at(EXPECTED_GAUGE), at(2));
        numbers[0] = ("gauge_pa", gauge);
        let words = [("beverage", bottle.drink), ("model", bottle.model)];
        let read = |place| value("package_carbonation", &numbers, &words, place);
        let put_in = bottle.volumes * 44.0095 / 22.263;
        // A gauge near zero loses digits against an atmosphere: 1e-12 of that, on CO2 that is no less than a tenth of it.
        prop_assert!((read(0) - put_in).abs() <= 1e-11 * put_in.max(1.0), "{} {put_in}", read(0));
        prop_assert!((read(1) - dissolved).abs() <= 1e-11 * put_in.max(1.0));
        prop_assert!(read(2) <= read(0) && read(3) <= read(1));
    }

    #[test]
    fn the_worst_case_is_never_better_than_the_expected_one(
        bottle in bottle(), headspace in 3.0..30.0f64, filling in 0.0..25.0f64
    ) {
        let numbers = [("volumes", bottle.volumes), ("fermentable_g_per_l", bottle.fermentable),
            ("temperature_c", bottle.t), ("ambient_kpa", bottle.ambient), ("headspace_percent", headspace),
            ("filling_c", filling)];
        let words = [("beverage", bottle.drink), ("model", bottle.model)];
        let at = |place| value("package_pressure", &numbers, &words, place);
        prop_assert!(at(WORST_GAUGE) >= at(EXPECTED_GAUGE), "{} {}", at(WORST_GAUGE), at(EXPECTED_GAUGE));
        prop_assert!(at(WORST_ABSOLUTE) >= at(EXPECTED_ABSOLUTE));
    }

    /// Whatever factors the caller sets: the worst case is no place for optimism.
    #[test]
    fn no_factor_of_the_caller_makes_the_worst_case_better_than_the_expected_one(
        bottle in bottle(), solubility in 0.5..2.0f64, made in 0.5..2.0f64
    ) {
        let numbers = [("volumes", bottle.volumes), ("fermentable_g_per_l", bottle.fermentable),
            ("temperature_c", bottle.t), ("ambient_kpa", bottle.ambient), ("headspace_percent", 4.0),
            ("solubility_multiplier", solubility), ("yield_multiplier", made)];
        let words = [("beverage", bottle.drink), ("model", bottle.model)];
        // Where the expected pressure is beyond every vessel there is an error instead, as there should be.
        if let Ok(found) = answer("package_pressure", &request(&numbers, &words)) {
            let found = found.value;
            let (worst, expected) = (found.as_slice()[WORST_GAUGE], found.as_slice()[EXPECTED_GAUGE]);
            prop_assert!(worst >= expected, "worst {worst} Pa, expected {expected} Pa");
        }
    }

    /// To 1e-12: what the balance promises of itself. The gas law is written out here once more.
    #[test]
    fn co2_put_into_a_package_is_co2_in_the_liquid_and_in_the_gas(
        volumes in 0.5..5.0f64, t in -2.0..60.0f64, headspace in 3.0..30.0f64, filling in 0.0..25.0f64,
        (abv, extract) in (0.0..14.0f64, 0.0..120.0f64)
    ) {
        let numbers = [("volumes", volumes), ("temperature_c", t), ("headspace_percent", headspace),
            ("filling_c", filling), ("ambient_kpa", 101.325), ("abv_percent", abv), ("extract_g_per_l", extract)];
        let at = |place| value("package_pressure", &numbers, &[("beverage", "beer")], place);
        let (kelvin, filled) = (t + 273.15, filling + 273.15);
        let model = WaterCore { law: Weiss, composition: Kind::Beer.factor(), factor: 1.0 };
        let (here, _) = model.here(kelvin, abv, extract, &mut NoSteps);
        let co2 = at(EXPECTED_ABSOLUTE) - here.vapour();
        let liquid = water::density(filled) / water::density(kelvin);
        let z = co2_gas::compressibility(co2, kelvin, co2_gas::second_virial(kelvin));
        let gas = co2 * CO2_MOLAR_MASS / (z * GAS_CONSTANT * kelvin) * (1.0 + headspace / 100.0 - liquid);
        let put_in = VOLUMES.to_si(volumes);
        let dissolved = here.dissolved(co2, 0.0);
        prop_assert!((dissolved * liquid + gas - put_in).abs() <= 1e-12 * put_in);
        prop_assert!((at(EXPECTED_CO2) - dissolved).abs() <= 1e-12 * dissolved);

        // The same vessel with its air, solved and read back.
        let closed = Closed { headspace, filling: filled, air: 101_325.0 };
        let vessel = Sealed::new(here, closed, kelvin, &mut NoSteps);
        let (co2, status) = vessel.solve(put_in);
        let gas = co2_gas::density(co2, kelvin, co2_gas::second_virial(kelvin)) * vessel.gas;
        prop_assert_eq!(status, 0);
        prop_assert!((vessel.dissolved(co2) * vessel.liquid + gas - put_in).abs() <= 1e-12 * put_in);
    }

    #[test]
    fn every_factor_works_in_its_direction(
        factor in 1.01..1.5f64, t in 1.0..25.0f64, volumes in 2.4..4.0f64, drink in beverage(), basis in basis()
    ) {
        let words = [("beverage", drink), ("basis", basis)];
        let compare = |function, numbers: &[(&'static str, f64)], multiplier, at| {
            let with = |k| value(function, &[numbers, &[(multiplier, k)]].concat(), &words, at);
            with(factor) - with(1.0)
        };
        let gas = [("temperature_c", t), ("ambient_kpa", 95.0)];
        let keg = [&gas[..], &[("volumes", volumes)]].concat();
        let open = [("warmest_c", t), ("ambient_kpa", 95.0)];
        let dose = [&open[..], &[("volumes", volumes), ("packaged_l", 10.0), ("fermentable_g_per_l", 1.0)]].concat();
        let sealed = [&keg[..], &[("fermentable_g_per_l", 1.0)]].concat();
        prop_assert!(compare("dissolved_co2", &[&gas[..], &[("gauge_kpa", 90.0)]].concat(), "solubility_multiplier", 0) > 0.0);
        // The most that a factor of 1.5 lets an open drink hold is 2.4 volumes, at 1 °C.
        if volumes > 2.6 {
            prop_assert!(compare("keg_pressure", &keg, "solubility_multiplier", 0) < 0.0);
        }
        prop_assert!(compare("residual_co2", &open, "residual_multiplier", 0) > 0.0);
        prop_assert!(compare("package_pressure", &sealed, "solubility_multiplier", EXPECTED_GAUGE) < 0.0);
        prop_assert!(compare("package_pressure", &sealed, "yield_multiplier", EXPECTED_GAUGE) > 0.0);
        prop_assert!(compare("priming_sugar", &dose, "yield_multiplier", DOSE) < 0.0);
        if volumes > 3.0 {
            prop_assert!(compare("priming_sugar", &dose, "residual_multiplier", DOSE) < 0.0);
        }
    }
}

/// One request with every column as a series of `LONG` elements or of one, and the words that go with it.
#[derive(Clone)]
struct Table {
    function: &'static Function,
    /// Names, whether the name varies, and values.
    columns: Vec<(Name, bool, Vec<f64>)>,
    words: Vec<(&'static str, &'static str)>,
    which: usize,
    unit: &'static Unit,
}

impl Table {
    /// Asks for all elements of the series, as many as `out` holds.
    fn each(
        &self,
        rest: &Request,
        series: &[Series<'_>],
        out: &mut [f64],
        statuses: Statuses<'_>,
    ) -> Result<i32, Error> {
        let slices = Slices {
            count: out.len(),
            series,
            which: self.which,
            unit: self.unit,
            out,
            also: None,
            statuses,
            keep: None,
        };
        self.function.each(rest, slices)
    }

    /// What does not vary, and the names that do with their values.
    fn split(&self) -> (Request, Vec<(Name, &[f64])>) {
        let mut rest = request(&[], &self.words);
        for (name, _, values) in self.columns.iter().filter(|(_, varies, _)| !varies) {
            rest.set(name.spelling().as_str(), Raw::Number(values[0])).unwrap();
        }
        let varying = self.columns.iter().filter(|(_, varies, _)| *varies);
        (rest, varying.map(|(name, _, values)| (*name, values.as_slice())).collect())
    }
}

impl std::fmt::Debug for Table {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} of {} in {}: {:?}", self.which, self.function.name, self.unit.name, self.words)?;
        self.columns.iter().try_for_each(|(name, varies, values)| write!(f, " {name}={} ({varies})", values[0]))
    }
}

/// A request as a line.
fn shown(request: &Request) -> String {
    let one = |name: Name| match request.get(name.key) {
        Some(Value::Number(number, _)) => format!("{name}={number}"),
        Some(Value::Choice(at)) => format!("{name}={}", choices(name.key)[at]),
        other => format!("{name}={other:?}"),
    };
    request.given().map(one).collect::<Vec<_>>().join(" ")
}

/// More than one block of the loop, and no multiple of it.
const LONG: usize = 150;

/// A number for a field in some unit: mostly allowed, sometimes a little outside.
fn number(key: Key, unit: &'static Unit, at: f64) -> f64 {
    let (low, high) = key.limits().unwrap();
    // What brewers have is a small part of what is answered: half of the numbers come from there.
    let (low, high) = match (key, at < 0.5) {
        (Key::Carbonation, true) => (2.0, 9.0),
        (Key::Absolute, true) => (1.0e5, 6.0e5),
        (Key::Gauge, true) => (0.0, 4.0e5),
        (Key::Headspace, true) => (3.0, 12.0),
        (Key::Fermentable, true) => (0.0, 3.0),
        (Key::Extract, true) => (0.0, 60.0),
        (Key::Mass, _) => (0.0, 1.0),
        (Key::Packaged, _) => (5.0e-3, 0.5),
        (Key::Residual, _) => (0.5, 3.0),
        (Key::FermenterGauge, _) => (0.0, 2.0e5),
        (Key::FermenterHeadspace, _) => (1.0, 50.0),
        (Key::Crash, true) => (272.0, 280.0),
        (Key::SyrupWater, true) => (0.0, 2.0e-3),
        (Key::ExpectedAttenuation, true) => (60.0, 95.0),
        (Key::WortOriginalGravity, _) => (1.04, 1.1),
        (Key::WortCurrentGravity, true) => (1.02, 1.04),
        (Key::WortOriginalPlato, _) => (10.0, 25.0),
        (Key::WortCurrentPlato, true) => (5.0, 10.0),
        (Key::LimitAttenuation, _) => (50.0, 80.0),
        (Key::WortCo2, _) => (0.0, 3.0),
        (Key::Start, true) => (0.0, 1.5),
        (Key::Oxygen, true) => (1.0e-4, 0.2),
        (Key::Pocket, true) => (0.0, 3.0e-4),
        (Key::Keg, _) => (4.0e-4, 1.0),
        (Key::Gross, true) => (4.0, 20.0),
        (Key::Tare, true) => (1.0, 5.0),
        (Key::Start, _) => (0.0, 3.0),
        (Key::CurrentGravity, true) => (1.0, 1.03),
        (Key::CurrentPlato, true) => (0.0, 7.0),
        (Key::FinalGravity, true) => (0.99, 1.02),
        (Key::FinalPlato, true) => (-1.0, 4.0),
        (Key::Bore, _) => (3.0e-3, 0.012),
        (Key::Line, true) => (0.0, 20.0),
        (Key::Rise, _) => (-2.0, 5.0),
        (Key::Fittings, _) => (0.0, 10.0),
        (Key::Flow, _) => (1.0e-6, 8.0e-5),
        (Key::Pour, _) => (5.0, 60.0),
        (Key::PourSize, _) => (2.0e-4, 1.0e-3),
        (Key::Resistance, _) => (100.0, 8.0e4),
        (Key::Hardware, _) => (0.0, 5.0e4),
        (Key::OtherVolume, _) => (5.0e-3, 0.5),
        (Key::BurstGauge, _) => (1.0e5, 5.0e5),
        (Key::Kla, true) => (1.0e-6, 1.0e-4),
        _ => (low, high),
    };
    let within = (at * 2.0).fract();
    unit.from_si(low + (high - low) * (1.06 * within - 0.02))
}

fn table() -> impl Strategy<Value = Table> {
    (0..FUNCTIONS.len(), any::<u64>()).prop_map(|(at, seed)| {
        let mut state = seed;
        let mut next = move || {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (state >> 11) as f64 / (1u64 << 53) as f64
        };
        let function = FUNCTIONS[at];
        let (mut columns, mut words) = (Vec::new(), Vec::<(&str, &str)>::new());
        let second = next() < 0.5;
        let mut seen: Vec<&str> = Vec::new();
        for input in function.inputs {
            let mut taken = match input.need {
                Need::Required => true,
                // The first of a group or the second; a sea-level pressure goes with an altitude only.
                Need::OneOf(group) => {
                    let first = !seen.contains(&group);
                    seen.push(group);
                    first != second
                }
                Need::Optional(_) => next() < 0.6,
            };
            let altitude = columns.iter().any(|(name, _, _): &(Name, bool, Vec<f64>)| name.key == Key::Altitude);
            match input.key {
                Key::Warmest => taken = true,
                Key::WortCurrentGravity => taken &= !second,
                Key::WortCurrentPlato => taken &= second,
                // A rate of one's own goes with no method.
                Key::Kla => taken &= !words.iter().any(|word| word.0 == "method"),
                // What a cold crash needs comes with it.
                Key::Crash => taken = words.iter().any(|word| word.0 == "cold_crash" && word.1 != "open"),
                Key::FermenterHeadspace if input.need != Need::Required => {
                    taken = words.contains(&("cold_crash", "closed"))
                }
                Key::SeaLevel => taken &= altitude || function.takes(Key::Altitude) && !function.takes(Key::Ambient),
                Key::Altitude if function.name == "dissolved_co2" => taken = !second && next() < 0.5,
                Key::Ambient if function.name == "dissolved_co2" => taken = !second && !altitude,
                Key::Altitude if matches!(input.need, Need::Optional(_)) => taken = !second,
                Key::Ambient if matches!(input.need, Need::Optional(_)) => taken = second,
                // What purging needs comes with it.
                Key::PurgeGauge | Key::Cycles if function.name == "gas_budget" => {
                    taken = words.iter().any(|word| word.0 == "purge" && word.1 != "none");
                }
                Key::PushGauge if function.name == "gas_budget" => taken &= words.contains(&("purge", "push")),
                Key::PurgeTemperature => {
                    taken &= words.contains(&("purge", "push")) || words.contains(&("purge", "empty"));
                }
                Key::Charge if function.name == "gas_budget" => {
                    taken &= !words.iter().any(|word| word.0 == "cylinder_size");
                }
                // A keg and the drink in it leave room for gas by a rare chance only.
                Key::Packaged if function.name == "oxygen_pickup" => taken = false,
                // What describes a sugar of one's own comes with it, below.
                Key::SugarWater | Key::SugarGravity | Key::SugarFermentable | Key::SugarKind => taken = false,
                _ => {}
            }
            if !taken {
                continue;
            }
            if input.key.dimension().is_none() {
                let list = choices(input.key);
                if !list.is_empty() {
                    words.push((input.key.field().role, list[(next() * list.len() as f64) as usize]));
                }
                continue;
            }
            let units: Vec<_> = Name::of(input.key).collect();
            let name = units[(next() * units.len() as f64) as usize];
            let varies = (function.columns.contains(&input.key) || input.key == Key::Altitude) && next() < 0.7;
            let length = if varies && next() < 0.9 { LONG } else { 1 };
            let values = (0..length).map(|_| number(input.key, name.unit.unwrap(), next())).collect();
            columns.push((name, varies, values));
        }
        if words.iter().any(|(_, word)| *word == "custom") {
            words.push(("sugar_kind", "disaccharide"));
            columns.push((Name::first(Key::SugarGravity), false, vec![1.2 + 0.2 * next()]));
            columns.push((Name::first(Key::SugarFermentable), false, vec![10.0 + 90.0 * next()]));
        }
        let which = (next() * function.outputs.len() as f64) as usize;
        let units: Vec<_> = Unit::of(function.outputs[which].key.dimension().unwrap()).collect();
        let unit = units[(next() * units.len() as f64) as usize];
        Table { function, columns, words, which, unit }
    })
}

/// What a table did: elements answered, elements refused.
fn compare(table: &Table) -> Result<(usize, usize), TestCaseError> {
    let (whole, varying) = table.split();
    let series: Vec<Series<'_>> = varying.into_iter().map(|(name, values)| Series { name, values }).collect();
    let (mut out, mut status) = ([0.0; LONG], [0; LONG]);
    let done = table.each(&whole, &series, &mut out, Statuses::Every(&mut status));
    if let Ok(all) = done {
        prop_assert_eq!(all, status.iter().fold(0, |all, status| all | status));
    }
    let (mut answered, mut refused) = (0, 0);
    for at in 0..LONG {
        let mut one = whole;
        for Series { name, values } in &series {
            let value = if values.len() == 1 { values[0] } else { values[at] };
            one.set(name.spelling().as_str(), Raw::Number(value)).unwrap();
        }
        match (done, table.function.answer(&one, &mut NoSteps)) {
            (Ok(_), Ok(answer)) => {
                let single = table.unit.from_si(answer.value.as_slice()[table.which]);
                let bits = answer.notes.cautions.iter().filter_map(|c| c.kind.bit).fold(0, |all, bit| all | 1 << bit);
                prop_assert_eq!(out[at].to_bits(), single.to_bits(), "{} and {} for {}", out[at], single, shown(&one));
                prop_assert_eq!(status[at], bits, "{}", shown(&one));
                answered += 1;
            }
            (Ok(_), Err(error)) => {
                prop_assert_eq!(status[at], error.code(), "{} for {}", error, shown(&one));
                prop_assert!(out[at].is_nan());
                refused += 1;
            }
            (Err(error), single) => {
                prop_assert!(single.is_err(), "an array is refused ({}), its element is not: {}", error, shown(&one));
                refused += 1;
            }
        }
    }
    Ok((answered, refused))
}

#[test]
fn an_array_answers_to_the_last_bit_what_its_elements_answer_one_by_one() {
    // As many of each function, however many there are.
    let mut runner = proptest::test_runner::TestRunner::new(cases(75 * FUNCTIONS.len() as u32));
    let counts = std::cell::RefCell::new(std::collections::BTreeMap::<&str, (usize, usize)>::new());
    let result = runner.run(&table(), |table| {
        let (answered, refused) = compare(&table)?;
        let mut counts = counts.borrow_mut();
        let count = counts.entry(table.function.name).or_default();
        *count = (count.0 + answered, count.1 + refused);
        Ok(())
    });
    result.unwrap_or_else(|error| panic!("{error}"));
    // The comparison is worth something only where there was much of both.
    for (function, (answered, refused)) in counts.into_inner() {
        println!("{function}: {answered} answered, {refused} refused");
        assert!(answered > 1000 && refused > 100, "{function}: {answered} answered, {refused} refused");
    }
}

#[test]
fn a_missing_element_of_an_array_is_no_number_and_harms_no_other() {
    let keg = named("keg_pressure").unwrap();
    let values = [2.5, f64::NAN, 2.5, f64::INFINITY, 2.5];
    let whole = request(&[("temperature_c", 4.0), ("altitude_m", 0.0)], &[]);
    let (mut out, mut status) = ([0.0; 5], [0; 5]);
    let series = [Series { name: Name::parse("volumes").unwrap(), values: &values }];
    let unit = Name::parse("gauge_bar").unwrap().unit.unwrap();
    let statuses = Statuses::Every(&mut status);
    let slices = Slices { count: 5, series: &series, which: 0, unit, out: &mut out, also: None, statuses, keep: None };
    assert!(keg.each(&whole, slices).unwrap() < 0);
    assert!(out[0] > 0.5 && out[0] == out[2] && out[0] == out[4]);
    assert_eq!((status[0], status[1]), (0, code::NOT_A_NUMBER));
    assert!(status[3] < 0 && out[1].is_nan() && out[3].is_nan());
}

/// The values of a column over several blocks of the slice loop: the first hold one value all through, then comes
/// everything.
fn hostile(place: usize, values: &[f64]) -> Vec<f64> {
    let wild = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MAX, -1.0e9, 0.0];
    let one = |at: usize| match wild.get((at * (place + 3)) % 37) {
        Some(&wild) if at > 2 * LONG => wild,
        _ if at > LONG => values[at % values.len()],
        _ => values[0],
    };
    (0..4 * LONG).map(one).collect()
}

#[test]
fn whatever_an_array_holds_it_answers_the_same_however_its_statuses_are_told() {
    let mut runner = proptest::test_runner::TestRunner::new(cases(40 * FUNCTIONS.len() as u32));
    let seen = std::cell::RefCell::new(std::collections::BTreeMap::<&str, [usize; 3]>::new());
    let result = runner.run(&table(), |table| {
        let (rest, varying) = table.split();
        let long = |(place, (name, values)): (usize, &(Name, &[f64]))| (*name, hostile(place, values));
        let columns: Vec<(Name, Vec<f64>)> = varying.iter().enumerate().map(long).collect();
        let series: Vec<Series<'_>> = columns.iter().map(|(name, values)| Series { name: *name, values }).collect();
        let (mut out, mut every) = ([9.0; 4 * LONG], [9; 4 * LONG]);
        let Ok(all) = table.each(&rest, &series, &mut out, Statuses::Every(&mut every)) else { return Ok(()) };
        prop_assert_eq!(all, every.iter().fold(0, |all, status| all | status));
        prop_assert!(out.iter().zip(&every).all(|(value, status)| value.is_nan() == (*status < 0)));

        let (mut again, mut found) = ([9.0; 4 * LONG], [0; 4 * LONG]);
        prop_assert_eq!(table.each(&rest, &series, &mut again, Statuses::Found(&mut found)), Ok(all));
        prop_assert_eq!(found, every);
        prop_assert_eq!(again.map(f64::to_bits), out.map(f64::to_bits));

        let mut again = [9.0; 4 * LONG];
        prop_assert_eq!(table.each(&rest, &series, &mut again, Statuses::Untold), Ok(all));
        prop_assert_eq!(again.map(f64::to_bits), out.map(f64::to_bits));

        let Table { function, which, unit, .. } = table;
        // One after the other, by the function kept with its request.
        let names: Vec<Name> = series.iter().map(|series| series.name).collect();
        let bound = function.bind(&rest, &names, which, unit).unwrap();
        for at in 0..4 * LONG {
            let numbers: Vec<f64> = series.iter().map(|series| series.values[at]).collect();
            let (value, status) = bound.call(&numbers).unwrap();
            prop_assert_eq!((value.to_bits(), status), (out[at].to_bits(), every[at]), "{:?}: {}", numbers, value);
        }
        prop_assert_eq!(bound.call(&vec![1.0; names.len() + 1]), None);

        let (mut told, none) = ([9; 4 * LONG], &mut []);
        let slices = Slices {
            count: 4 * LONG,
            series: &series,
            which,
            unit,
            out: none,
            also: None,
            statuses: Statuses::Every(&mut told),
            keep: None,
        };
        prop_assert_eq!(function.each(&rest, slices), Ok(all));
        prop_assert_eq!(told, every);

        let mut seen = seen.borrow_mut();
        let kinds = seen.entry(function.name).or_default();
        for status in every {
            kinds[usize::from(status < 0) + 2 * usize::from(status > 0)] += 1;
        }
        Ok(())
    });
    result.unwrap_or_else(|error| panic!("{error}"));
    // It is worth something only where there was much of both.
    for (function, [clear, refused, warned]) in seen.into_inner() {
        println!("{function}: {clear} clear, {refused} refused, {warned} with cautions");
        assert!(
            clear + warned > 500 && refused > 500,
            "{function}: {clear} clear, {refused} refused, {warned} with cautions"
        );
    }
}

/// A keg for each value, in volumes, at 4 °C and sea level.
fn kegs(count: usize, values: &[f64], out: &mut [f64], statuses: Statuses<'_>) -> Result<i32, Error> {
    let keg = named("keg_pressure").unwrap();
    let rest = request(&[("temperature_c", 4.0), ("altitude_m", 0.0)], &[]);
    let series = [Series { name: Name::parse("volumes").unwrap(), values }];
    let unit = Name::parse("gauge_bar").unwrap().unit.unwrap();
    keg.each(&rest, Slices { count, series: &series, which: 0, unit, out, also: None, statuses, keep: None })
}

#[test]
fn statuses_that_are_all_clear_leave_their_memory_untouched() {
    let mut values = [2.5; 1000];
    values[700] = 9.0;
    // The mark of memory that nobody wrote to; a caller would have 0 here.
    let (mut out, mut found) = ([0.0; 1000], [77; 1000]);
    let all = kegs(1000, &values, &mut out, Statuses::Found(&mut found)).unwrap();
    assert!(all > 0 && found[700] == all);
    let written = found.iter().filter(|status| **status != 77).count();
    assert!((1..500).contains(&written), "{written} of 1000 statuses were written for one caution");
    assert_eq!(kegs(500, &values[..500], &mut out[..500], Statuses::Found(&mut [77; 500])), Ok(0));
}

#[test]
fn slices_of_uneven_lengths_are_an_error_and_nothing_is_written() {
    let values = [2.5; 5];
    let uneven = |given| Err(Error::UnevenArrays { expected: 5, given });
    let mut out = [9.0; 5];
    assert_eq!(kegs(5, &values[..4], &mut out, Statuses::Untold), uneven(4));
    assert_eq!(kegs(5, &[], &mut out, Statuses::Untold), uneven(0));
    assert_eq!(kegs(5, &values, &mut out[..4], Statuses::Untold), uneven(4));
    assert_eq!(kegs(5, &values, &mut out, Statuses::Every(&mut [0; 6])), uneven(6));
    // Only `out` may be left empty; who wants no statuses says so.
    assert_eq!(kegs(5, &values, &mut out, Statuses::Every(&mut [])), uneven(0));
    assert_eq!(kegs(5, &values, &mut out, Statuses::Found(&mut [])), uneven(0));
    assert_eq!(out, [9.0; 5]);
    assert_eq!(kegs(5, &values, &mut [], Statuses::Untold), Ok(0));
    assert_eq!(kegs(5, &values[..1], &mut out, Statuses::Untold), Ok(0));
    assert!(out.iter().all(|gauge| *gauge == out[0] && *gauge < 2.0));
    // No elements, no answers.
    assert_eq!(kegs(0, &[], &mut [], Statuses::Every(&mut [])), Ok(0));
    assert_eq!(kegs(0, &values[..1], &mut [], Statuses::Found(&mut [])), Ok(0));
}
