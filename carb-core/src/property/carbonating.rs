//! How fast a drink takes up CO2: the methods of carbonating, and the law of first order that all of them follow.
//!
//! Of the gap between what the drink holds and what it would hold at equilibrium, the same share closes in every hour. The
//! share is the rate; it is known to a factor of 1.6 at best, so that every answer has a fast and a slow end.

use crate::evidence::caution::{DEEP_DRINK, HIGH_GAUGE, Range, UPTAKE_TEMPERATURE};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited, symbol};
use crate::evidence::source::{COLE_CARACO, LLOYD_MORAN};
use crate::number::{exp, ln};
use crate::quantity::unit::{
    CELSIUS, CO2_GRAMS_PER_LITRE, FACTOR, GRAM_PER_HOUR, HOUR, LITRE, METRE, MILLIPASCAL_SECOND, PER_HOUR, PSI, VOLUMES,
};

/// How drink and gas meet.
#[derive(Debug)]
pub struct Method {
    /// Its name in every face.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// Whether the three figures are factors on the rate of a still surface; else they are rates at 4 °C, 1/s.
    pub of_still: bool,
    /// As expected.
    pub expected: f64,
    /// The slow end.
    pub least: f64,
    /// The fast end.
    pub most: f64,
    /// Where they are from.
    pub reason: &'static str,
    /// How well they are known.
    pub standing: Standing,
}

const fn surface(name: &'static str, title: &'static str, [e, l, m]: [f64; 3], reason: &'static str) -> Method {
    Method { name, title, of_still: true, expected: e, least: l, most: m, reason, standing: Standing::Judgement }
}
const fn stirred(name: &'static str, title: &'static str, [e, l, m]: [f64; 3], reason: &'static str) -> Method {
    let [expected, least, most] = [PER_HOUR.to_si(e), PER_HOUR.to_si(l), PER_HOUR.to_si(m)];
    Method { name, title, of_still: false, expected, least, most, reason, standing: Standing::Judgement }
}

/// The still surface from its slowest to its fastest: 0.009 to 0.022 of 0.015 per hour.
const SLOW: f64 = 0.6;
const FAST: f64 = 22.0 / 15.0;

/// The methods. Where one is a factor on the still surface, both doubts are taken at their worst together.
pub static METHODS: &[&Method] = &[
    &Method {
        name: "still",
        title: "standing keg, gas on top",
        of_still: true,
        expected: 1.0,
        least: SLOW,
        most: FAST,
        reason: "eight rules of the trade give 0.008 to 0.021 per hour in a 19 L keg; free convection and windless lakes give the upper half of it",
        standing: Standing::Judgement,
    },
    &surface(
        "dip_tube",
        "standing keg, gas through the liquid tube",
        [1.5, 1.1 * SLOW, 2.5 * FAST],
        "a tenth to a half of the bubbles dissolves on its way up, and they stir; the trade says less than half the time: the least known of all",
    ),
    &surface(
        "on_side",
        "keg on its side, not moved",
        [1.7, 1.4 * SLOW, 2.0 * FAST],
        "the surface of a full keg on its side is 1.7 times that of a standing one",
    ),
    &stirred(
        "stone",
        "carbonation stone in the keg",
        [5.0, 1.0, 12.0],
        "the trade carbonates in about half an hour; bubbles of 0.5 to 1 mm at 1 L/min give 2 to 10 per hour",
    ),
    &stirred(
        "rocked",
        "keg rocked or shaken under gas",
        [10.0, 5.0, 40.0],
        "at 30 psi the trade says from a minute to several: 40 to 8 per hour",
    ),
];

/// The names, in the order of [`METHODS`].
pub const NAMES: &[&str] = &["still", "dip_tube", "on_side", "stone", "rocked"];

/// Drink in the keg where nothing else is said, m3: five US gallons.
pub const USUAL_VOLUME: f64 = LITRE.to_si(18.93);
/// Inner diameter of the keg where nothing else is said, m: that of the usual 19 L keg.
pub const USUAL_DIAMETER: f64 = 0.215;

/// Temperatures at which the rates are known, by the viscosity of water; colder than ice is a matter of that.
pub static TEMPERATURE: Range = Range { caution: &UPTAKE_TEMPERATURE, low: 0.0, high: CELSIUS.to_si(25.0) };
/// Depths of drink under a still surface for which the rate is known, m: half-empty kegs to half-barrels, and twice as deep.
pub static DEPTH: Range = Range { caution: &DEEP_DRINK, low: 0.05, high: 1.2 };
/// Pressures that vessels of all kinds stand, Pa above the air; common practice.
pub static PRESSURE: Range = Range { caution: &HIGH_GAUGE, low: f64::NEG_INFINITY, high: PSI.to_si(30.0) };

/// Speed at which CO2 passes a still surface at 4 °C, m/s: 0.015 per hour in the usual keg.
pub const STILL: f64 = 2.2e-6;
/// Viscosity of water at 4 °C, Pa s.
const VISCOSITY_4: f64 = 1.567_320_138_758_348_6e-3;
const QUARTER_PI: f64 = core::f64::consts::FRAC_PI_4;

/// Rate over that at 4 °C, from the viscosity of water (Pa s) at the temperature of the drink.
#[inline(always)]
pub fn warmth(viscosity: f64) -> f64 {
    VISCOSITY_4 / viscosity
}

/// Height of the drink, m, in a standing vessel.
#[inline(always)]
pub fn depth(diameter: f64, volume: f64) -> f64 {
    volume / (QUARTER_PI * diameter * diameter)
}

/// Rate (1/s) through a still surface, times the factor of the method.
#[inline(always)]
pub fn still_rate(factor: f64, warmth: f64, diameter: f64, volume: f64) -> f64 {
    STILL * factor * warmth * (QUARTER_PI * diameter * diameter) / volume
}

/// CO2 (kg/m3) after a time (s) at the rate `k` (1/s), on the way from `start` to `end`.
#[inline(always)]
pub fn uptake(start: f64, end: f64, k: f64, time: f64) -> f64 {
    end - (end - start) * exp(-(k * time))
}

/// Share of the gap between `start` and `end` that is left at `target`.
#[inline(always)]
pub fn gap_left(start: f64, target: f64, end: f64) -> f64 {
    (end - target) / (end - start)
}

/// Time (s) until no more than a share of the gap is left.
#[inline(always)]
pub fn gap_time(left: f64, k: f64) -> f64 {
    -ln(left) / k
}

/// CO2 up to which the supply, and not the surface, sets the pace on the way from `start` to `target`.
#[inline(always)]
pub fn supply_turn(start: f64, target: f64, end: f64, k: f64, supply: f64, volume: f64) -> f64 {
    let turn = end - supply / (volume * k);
    let turn = if turn < target { turn } else { target };
    if turn > start { turn } else { start }
}

/// Time (s) until the target: at the pace of the supply up to `turn`, and `rest` after it.
#[inline(always)]
pub fn supply_time(start: f64, turn: f64, supply: f64, volume: f64, rest: f64) -> f64 {
    (turn - start) * volume / supply + rest
}

/// CO2 that has come at the pace of the supply when a time (s) has passed.
#[inline(always)]
pub fn supply_taken(start: f64, end: f64, k: f64, supply: f64, volume: f64, time: f64) -> f64 {
    let (turn, come) = (end - supply / (volume * k), start + supply * time / volume);
    let least = if turn < come { turn } else { come };
    if least > start { least } else { start }
}

/// What is left of a time (s) after that.
#[inline(always)]
pub fn supply_left(start: f64, taken: f64, supply: f64, volume: f64, time: f64) -> f64 {
    let left = time - (taken - start) * volume / supply;
    if left > 0.0 { left } else { 0.0 }
}

/// What nobody tastes, kg/m3: a tenth of a volume; judgement.
pub const CLOSE: f64 = VOLUMES.to_si(0.1);

/// Time (s) at the holding pressure until the drink is close to its target, of which so much (kg/m3) is missing.
#[inline(always)]
pub fn rest_time(missing: f64, k: f64) -> f64 {
    let times = missing / CLOSE;
    ln(if times > 1.0 { times } else { 1.0 }) / k
}

const fn co2(name: &'static str, meaning: &'static str) -> Symbol {
    symbol(name, Measure::In(&CO2_GRAMS_PER_LITRE), meaning)
}
const START: Symbol = co2("c", "CO2 at the start");
const TARGET: Symbol = co2("a", "CO2 wanted");
const END: Symbol = co2("e", "CO2 at equilibrium under this pressure");
const RATE: Symbol = limited("k", Measure::In(&PER_HOUR), "rate: share of the gap that closes in an hour", 1e-3, 40.0);
const TIME: Symbol = limited("t", Measure::In(&HOUR), "time", 0.0, 400.0);
const SUPPLY: Symbol = limited("Q", Measure::In(&GRAM_PER_HOUR), "CO2 that the regulator lets through", 0.1, 500.0);
const VOLUME: Symbol = symbol("V", Measure::In(&LITRE), "drink in the keg");
const WARMER: Symbol = limited("r", Measure::In(&FACTOR), "rate over that at 4 °C", 0.8, 2.0);
const NO_DOUBT: &str = "arithmetic; the rate carries all the doubt";

/// The catalogue's entry for [`warmth`].
pub static WARMTH: Equation = Equation {
    id: "uptake_warmth",
    title: "rate of uptake over that at 4 °C",
    formula: "r = 1.5673201387583486/w",
    result: WARMER,
    inputs: &[limited("w", Measure::In(&MILLIPASCAL_SECOND), "viscosity of water", 0.89, 1.8)],
    uncertainty_percent: None,
    uncertainty: "free convection goes with D^(2/3)/nu^(1/3), and D with 1/viscosity; a drink's viscosity is taken to change as that of water does; not measured",
    sources: &[&LLOYD_MORAN],
    standing: Standing::Judgement,
    kernel: |x| warmth(x[0]),
};

/// The catalogue's entry for [`still_rate`].
pub static STILL_RATE: Equation = Equation {
    id: "still_uptake_rate",
    title: "rate of uptake through a still surface",
    formula: "k = 3600*0.0000022*f*r*0.7853981633974483*d^2/(V/1000)",
    result: RATE,
    inputs: &[
        limited("f", Measure::In(&FACTOR), "factor of the method", 0.6, 3.7),
        WARMER,
        limited("d", Measure::In(&METRE), "inner diameter of the keg", 0.02, 20.0),
        VOLUME,
    ],
    uncertainty_percent: None,
    uncertainty: "0.6 to 1.5 times: what the trade's rules leave open; 2.2e-6 m/s is also what free convection (Sh = 0.15 Ra^(1/3)) and windless lakes give at most",
    sources: &[&LLOYD_MORAN, &COLE_CARACO],
    standing: Standing::Judgement,
    kernel: |x| still_rate(x[0], x[1], x[2], x[3]),
};

/// Rate of a method that stirs.
pub static STIRRED_RATE: Equation = Equation {
    id: "stirred_uptake_rate",
    title: "rate of uptake through bubbles or by shaking",
    formula: "k = b*r",
    result: RATE,
    inputs: &[limited("b", Measure::In(&PER_HOUR), "rate of the method at 4 °C", 1.0, 40.0), WARMER],
    uncertainty_percent: None,
    uncertainty: "a factor of 2 to 5 either way, as the method's range says; how it goes with temperature is a guess",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| x[0] * x[1],
};

/// The catalogue's entry for [`uptake`].
pub static UPTAKE: Equation = Equation {
    id: "co2_uptake",
    title: "CO2 after a time under constant pressure",
    formula: "C = e - (e - c)*exp(-(k*t))",
    result: co2("C", "CO2 after the time"),
    inputs: &[START, END, RATE, TIME],
    uncertainty_percent: None,
    uncertainty: "first order is a model: free convection slows a little more near the end; the doubt about the rate covers it",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| uptake(x[0], x[1], x[2], x[3]),
};

/// The catalogue's entry for [`gap_left`].
pub static GAP_LEFT: Equation = Equation {
    id: "gap_left",
    title: "share of the gap to equilibrium that is left at the target",
    formula: "l = (e - a)/(e - c)",
    result: symbol("l", Measure::Plain(""), "share of the gap that is left"),
    inputs: &[START, TARGET, END],
    uncertainty_percent: None,
    uncertainty: NO_DOUBT,
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| gap_left(x[0], x[1], x[2]),
};

/// The catalogue's entry for [`gap_time`].
pub static GAP_TIME: Equation = Equation {
    id: "gap_time",
    title: "time until a share of the gap is left",
    formula: "t = -ln(l)/k",
    result: TIME,
    inputs: &[limited("l", Measure::Plain(""), "share of the gap that is left", 1e-9, 0.999), RATE],
    uncertainty_percent: None,
    uncertainty: "the same law of first order, turned round",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| gap_time(x[0], x[1]),
};

/// The catalogue's entry for [`supply_turn`].
pub static SUPPLY_TURN: Equation = Equation {
    id: "supply_turn",
    title: "CO2 up to which the supply sets the pace",
    formula: "x = max(c, min(a, e - Q/(V*k)))",
    result: co2("x", "CO2 at which the surface becomes slower than the supply"),
    inputs: &[START, TARGET, END, RATE, SUPPLY, VOLUME],
    uncertainty_percent: None,
    uncertainty: NO_DOUBT,
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| supply_turn(x[0], x[1], x[2], x[3], x[4], x[5]),
};

/// The catalogue's entry for [`supply_time`].
pub static SUPPLY_TIME: Equation = Equation {
    id: "supply_time",
    title: "time at the pace of the supply, and after it",
    formula: "t = (x - c)*V/Q + u",
    result: TIME,
    inputs: &[
        START,
        co2("x", "CO2 up to which the supply sets the pace"),
        SUPPLY,
        VOLUME,
        limited("u", Measure::In(&HOUR), "time from there", 0.0, 400.0),
    ],
    uncertainty_percent: None,
    uncertainty: NO_DOUBT,
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| supply_time(x[0], x[1], x[2], x[3], x[4]),
};

/// The catalogue's entry for [`supply_taken`].
pub static SUPPLY_TAKEN: Equation = Equation {
    id: "supply_taken",
    title: "CO2 that has come at the pace of the supply",
    formula: "x = max(c, min(e - Q/(V*k), c + Q*t/V))",
    result: co2("x", "CO2 when the surface becomes slower than the supply, or the time is over"),
    inputs: &[START, END, RATE, SUPPLY, VOLUME, TIME],
    uncertainty_percent: None,
    uncertainty: NO_DOUBT,
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| supply_taken(x[0], x[1], x[2], x[3], x[4], x[5]),
};

/// The catalogue's entry for [`supply_left`].
pub static SUPPLY_LEFT: Equation = Equation {
    id: "supply_left",
    title: "time that is left after the supply has set the pace",
    formula: "u = max(0, t - (x - c)*V/Q)",
    result: limited("u", Measure::In(&HOUR), "time at the pace of the surface", 0.0, 400.0),
    inputs: &[START, co2("x", "CO2 that has come at the pace of the supply"), SUPPLY, VOLUME, TIME],
    uncertainty_percent: None,
    uncertainty: NO_DOUBT,
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| supply_left(x[0], x[1], x[2], x[3], x[4]),
};

/// The catalogue's entry for [`rest_time`].
pub static REST_TIME: Equation = Equation {
    id: "rest_time",
    title: "time at the holding pressure until a tenth of a volume is missing",
    formula: "t = ln(max(1, g/0.1))/k",
    result: TIME,
    inputs: &[limited("g", Measure::In(&VOLUMES), "CO2 that is missing when the burst ends", 0.0, 8.0), RATE],
    uncertainty_percent: None,
    uncertainty: "a tenth of a volume is what nobody tastes: judgement",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| rest_time(x[0], x[1]),
};
