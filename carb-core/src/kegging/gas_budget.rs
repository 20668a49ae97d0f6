//! How much CO2 a keg takes, use by use, and how many kegs a cylinder does.

use super::gas;
use super::purge::{Vessel, vents};
use crate::balance::pressure::absolute;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::{above, below};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::{Notes, Steps};
use crate::property::keg::{KEG_HEADSPACE, PurgeMethod};
use crate::quantity::field::HIGHEST_PRESSURE;
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, GRAM, LITRE, PERCENT};
use crate::quantity::{Carbonation, GaugePressure, Key, Mass, Name, Percent, Temperature, Volume};

const fn grams(name: &'static str, meaning: &'static str) -> crate::evidence::Symbol {
    limited(name, Measure::In(&GRAM), meaning, 0.0, 1000.0)
}

/// CO2 that a drink takes up.
pub static DISSOLVE: Equation = Equation {
    id: "co2_to_dissolve",
    title: "CO2 that the drink takes up",
    formula: "m = V*(c - s)",
    result: symbol("m", Measure::In(&GRAM), "CO2 taken up"),
    inputs: &[
        limited("V", Measure::In(&LITRE), "the drink", 0.1, 1000.0),
        limited("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 wanted", 3.0, 10.0),
        limited("s", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 at the start", 0.0, 2.0),
    ],
    uncertainty_percent: None,
    uncertainty: "arithmetic",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] * (x[1] - x[2]),
};

/// What is lost.
pub static LOSS: Equation = Equation {
    id: "gas_loss",
    title: "CO2 lost",
    formula: "l = p/100*u",
    result: symbol("l", Measure::In(&GRAM), "CO2 lost"),
    inputs: &[
        limited("p", Measure::In(&PERCENT), "losses, percent of what is used", 0.0, 500.0),
        grams("u", "CO2 used"),
    ],
    uncertainty_percent: None,
    uncertainty: "arithmetic; what is lost is the brewer's own figure",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] / 100.0 * x[1],
};

/// All that a keg takes.
pub static TOTAL: Equation = Equation {
    id: "gas_total",
    title: "CO2 that a keg takes",
    formula: "t = d + h + p + s + l",
    result: symbol("t", Measure::In(&GRAM), "CO2 for the keg"),
    inputs: &[
        grams("d", "CO2 dissolved"),
        grams("h", "CO2 in the headspace"),
        grams("p", "CO2 for purging"),
        grams("s", "CO2 that pushes the drink out"),
        grams("l", "CO2 lost"),
    ],
    uncertainty_percent: None,
    uncertainty: "arithmetic",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] + x[1] + x[2] + x[3] + x[4],
};

/// Kegs of a mass of CO2.
pub static KEGS: Equation = Equation {
    id: "kegs_per_cylinder",
    title: "kegs that a mass of CO2 does",
    formula: "k = c/t",
    result: symbol("k", Measure::Plain(""), "kegs"),
    inputs: &[
        limited("c", Measure::In(&GRAM), "CO2 at hand", 0.0, 50_000.0),
        limited("t", Measure::In(&GRAM), "CO2 for a keg", 1.0, 1000.0),
    ],
    uncertainty_percent: None,
    uncertainty: "arithmetic; the last gas, at no more than the serving pressure, stays in the cylinder",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] / x[1],
};

/// How the keg is purged, and which of the columns were given; the others follow from those that were.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Budget {
    pub purge: PurgeMethod,
    pub keg: bool,
    pub push: bool,
}

impl Kernel<13, 9> for Budget {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 13] = [
        Key::Packaged,
        Key::Carbonation,
        Key::Start,
        Key::Temperature,
        Key::Gauge,
        Key::Ambient,
        Key::Keg,
        Key::PurgeGauge,
        Key::Cycles,
        Key::PushGauge,
        Key::PurgeTemperature,
        Key::GasLoss,
        Key::Charge,
    ];
    #[inline(always)]
    fn eval(&self, x: [f64; 13], steps: &mut impl Steps) -> ([f64; 9], i32) {
        let [drink, c, start, t, gauge, ambient, keg, purge_gauge, cycles, push_gauge, purge_t, percent, charge] = x;
        let brim = if self.keg { keg } else { drink * (1.0 + KEG_HEADSPACE / 100.0) };
        let over = if brim > drink { brim - drink } else { 0.0 };
        let dissolve = steps.step(&DISSOLVE, &[drink, c, start], drink * (c - start));
        let p = absolute(gauge, ambient, steps);
        let (d, bits) = gas::density(p, t, steps);
        let headspace = gas::fill(1.0, over, d, steps);
        let serve = gas::fill(1.0, drink, d, steps);
        let (purge, purging) =
            self.purge(brim, over, [t, gauge, ambient, purge_gauge, cycles, push_gauge, purge_t], steps);
        let used = dissolve + headspace + purge + serve;
        let loss = steps.step(&LOSS, &[percent, used], percent / 100.0 * used);
        let mut sum = |p: f64, l: f64| {
            steps.step(&TOTAL, &[dissolve, headspace, p, serve, l], dissolve + headspace + p + serve + l)
        };
        let (total, least) = (sum(purge, loss), sum(0.0, 0.0));
        let kegs = steps.step(&KEGS, &[charge, total], charge / total);
        let most = steps.step(&KEGS, &[charge, least], charge / least);
        let small = self.keg & below(keg, drink);
        let refused = small | (gauge < 0.0) | above(p, HIGHEST_PRESSURE) | (purging < 0);
        let status = if refused { code::OUT_OF_RANGE } else { bits | purging };
        let less = if above(start, c) { code::TARGET_BELOW_HELD } else { status };
        ([dissolve, headspace, purge, serve, loss, total, least, kegs, most], less)
    }
    fn explain(&self, status: i32, x: [f64; 13]) -> Error {
        let [drink, c, start, _, gauge, ambient, keg, purge_gauge, _, push_gauge, ..] = x;
        if status == code::TARGET_BELOW_HELD {
            return Error::TargetBelowHeld {
                parameter: Name::first(Key::Carbonation),
                value: c,
                held: start,
                remedy: "it takes up no CO2 then; leave the start out, or give what it holds now",
            };
        }
        if self.keg && below(keg, drink) {
            let (_, high) = Key::Keg.limits().unwrap_or_default();
            return Error::OutOfRange { parameter: Name::first(Key::Keg), value: keg, low: drink, high };
        }
        let beyond = |value: f64| value < 0.0 || above(value + ambient, HIGHEST_PRESSURE);
        if beyond(gauge) {
            gas::beyond(Key::Gauge, gauge, ambient)
        } else if self.push && beyond(push_gauge) {
            gas::beyond(Key::PushGauge, push_gauge, ambient)
        } else {
            gas::beyond(Key::PurgeGauge, purge_gauge, ambient)
        }
    }
}

impl Budget {
    /// CO2 for purging, kg, and a status. The same for every element of an array, but for the numbers.
    #[inline(always)]
    fn purge(
        self,
        brim: f64,
        over: f64,
        [t, gauge, ambient, purge_gauge, cycles, push_gauge, purge_t]: [f64; 7],
        steps: &mut impl Steps,
    ) -> (f64, i32) {
        let vented = |volume: f64, t: f64, steps: &mut _| {
            let full = absolute(purge_gauge, ambient, steps);
            let ([all, _], status) = vents(cycles, volume, [ambient, full, t], steps);
            (all, status)
        };
        match self.purge {
            PurgeMethod::Nothing => (0.0, 0),
            PurgeMethod::Headspace => vented(over, t, steps),
            PurgeMethod::Empty => vented(brim, purge_t, steps),
            PurgeMethod::Push => {
                let p = absolute(if self.push { push_gauge } else { gauge }, ambient, steps);
                let (d, bits) = gas::density(p, purge_t, steps);
                let pushed = gas::fill(1.0, brim, d, steps);
                let (all, status) = vented(over, t, steps);
                let high = if above(p, HIGHEST_PRESSURE) { code::OUT_OF_RANGE } else { bits | status };
                (pushed + all, if status < 0 { status } else { high })
            }
        }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<13, 9>>(budget: Budget, visitor: V) -> V::Output {
    visitor.visit(budget)
}

/// How air is kept out of a keg, and at what cost of gas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Purging {
    /// In which way.
    pub method: PurgeMethod,
    /// Pressure to which it is filled before it is vented; counts with cycles only.
    pub gauge: GaugePressure,
    /// How often it is filled and vented.
    pub cycles: f64,
    /// Pressure at which sanitiser is pushed out; that of serving where none is given.
    pub push: Option<GaugePressure>,
    /// Temperature of the empty keg.
    pub temperature: Temperature,
}

impl Purging {
    /// Nothing is purged.
    pub fn none() -> Self {
        Self {
            method: PurgeMethod::Nothing,
            gauge: GaugePressure::from_bar(1.0),
            cycles: 0.0,
            push: None,
            temperature: Temperature::from_c(20.0),
        }
    }
}

/// A keg that is carbonated and served.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KegUse {
    /// The drink in it.
    pub drink: Volume,
    /// What it holds to the brim; 3.5 % more than the drink where that is not known.
    pub keg: Option<Volume>,
    /// CO2 wanted in the drink.
    pub carbonation: Carbonation,
    /// CO2 in it at the start.
    pub start: Carbonation,
    /// Temperature at which it is served.
    pub temperature: Temperature,
    /// Pressure at which it is served.
    pub gauge: GaugePressure,
    /// How it is purged.
    pub purging: Purging,
    /// CO2 lost, percent of what is used.
    pub loss: Percent,
    /// CO2 in a full cylinder.
    pub charge: Mass,
    /// What the keg is rated for, where that is told.
    pub rating: Option<GaugePressure>,
}

/// The kernel and its columns, SI.
pub(crate) fn columns(keg: &KegUse, ambient: f64) -> (Budget, [f64; 13]) {
    let purging = &keg.purging;
    let budget = Budget { purge: purging.method, keg: keg.keg.is_some(), push: purging.push.is_some() };
    let x = [
        keg.drink.si(),
        keg.carbonation.si(),
        keg.start.si(),
        keg.temperature.si(),
        keg.gauge.si(),
        ambient,
        // What is not given is not looked at.
        keg.keg.map_or(crate::property::keg::SODA_KEG, Volume::si),
        purging.gauge.si(),
        purging.cycles,
        purging.push.map_or(0.0, GaugePressure::si),
        purging.temperature.si(),
        keg.loss.si(),
        keg.charge.si(),
    ];
    (budget, x)
}

/// CO2 that a keg takes, by its uses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GasBudget {
    /// Taken up by the drink.
    pub dissolve: Mass,
    /// In the headspace of the full keg, at the pressure of serving.
    pub headspace: Mass,
    /// For purging.
    pub purge: Mass,
    /// That pushes the drink out: it fills the empty keg.
    pub serve: Mass,
    /// Lost.
    pub loss: Mass,
    /// All of it.
    pub total: Mass,
    /// The bare minimum: without purging and losses.
    pub least: Mass,
    /// Kegs that a cylinder does.
    pub kegs: f64,
    /// Kegs that it would do at the bare minimum.
    pub most_kegs: f64,
}

/// How much CO2 a keg takes to carbonate and to serve, use by use, and how many kegs a cylinder does.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, the drink holds more than is wanted, or does not
/// go into the keg.
pub fn gas_budget(keg: &KegUse, context: &Context, steps: &mut impl Steps) -> Result<Answer<GasBudget>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let (budget, x) = columns(keg, context.ambient(watch)?);
    let [dissolve, headspace, purge, serve, loss, total, least, kegs, most_kegs] =
        visit(budget, Once { x, steps: watch })?;
    if keg.purging.method != PurgeMethod::Nothing && keg.purging.cycles > 0.0 {
        Vessel { rating: keg.rating, ..Vessel::soda_keg() }.note(keg.purging.gauge, &mut notes.cautions);
    }
    let [dissolve, headspace, purge, serve, loss] = [dissolve, headspace, purge, serve, loss].map(Mass::from_si);
    let [total, least] = [total, least].map(Mass::from_si);
    let value = GasBudget { dissolve, headspace, purge, serve, loss, total, least, kegs, most_kegs };
    Ok(Answer { value, context: *context, notes })
}
