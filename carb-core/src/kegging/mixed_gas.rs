//! Gas over the drink that is not CO2 alone: a blend with nitrogen, and air left in the headspace.
//!
//! The gas comes dry from its cylinder and takes up water over the drink; its CO2 has the share that the cylinder had.
//! The share counts on *absolute* pressure, less the vapour and the air: to scale the gauge pressure is the common error.

use crate::balance::pressure::{self, Pressure};
use crate::balance::sealed;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::{SLACK, above, below};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited};
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::carbonating;
use crate::property::solubility::{Here, Solubility};
use crate::quantity::unit::{PASCAL, PERCENT};
use crate::quantity::{AbsolutePressure, Carbonation, GaugePressure, Key, Name, Percent, Temperature};

const TOTAL: Symbol = limited("P", Measure::In(&PASCAL), "total pressure over the drink, absolute", 1.3e5, 3.0e6);
const EQUAL: Symbol = limited(
    "q",
    Measure::In(&PASCAL),
    "total pressure of CO2 and vapour alone that holds the same, absolute",
    3.0e4,
    3.0e6,
);
const VAPOUR: Symbol = limited("pw", Measure::In(&PASCAL), "vapour pressure of water", 400.0, 2.0e4);
const SHARE: Symbol = limited("x", Measure::In(&PERCENT), "CO2 in the gas as supplied, by volume", 1.0, 100.0);
const AIR: Symbol = limited("o", Measure::In(&PASCAL), "partial pressure of the air in the headspace", 0.0, 1.0e5);

const UNCERTAINTY: &str = "judgement: the gases are taken to mix as ideal ones, where at 4 bar and 25 % a real blend holds about 2 % less; the nitrogen that dissolves (1.5 % of what CO2 does) is left out. The trade's own formula, absolute pressure over share, leaves the vapour out: it asks for 0.05 psi more at 70 % and 38 °F";

/// The pressure of a blend from that of CO2 alone.
pub static MIXED_PRESSURE: Equation = Equation {
    id: "mixed_gas_pressure",
    title: "total pressure of a blended gas over the drink",
    formula: "P = pw + (q - pw)/(x/100) + o",
    result: TOTAL,
    inputs: &[EQUAL, VAPOUR, SHARE, AIR],
    uncertainty_percent: Some(2.0),
    uncertainty: UNCERTAINTY,
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| total_of(x[0], x[1], x[2], x[3]),
};

/// The pressure of CO2 alone from that of a blend.
pub static MIXED_EQUIVALENT: Equation = Equation {
    id: "mixed_gas_equivalent",
    title: "pressure of CO2 and vapour alone that holds as much as a blended gas",
    formula: "q = pw + x/100*(P - pw - o)",
    result: EQUAL,
    inputs: &[TOTAL, VAPOUR, SHARE, AIR],
    uncertainty_percent: Some(2.0),
    uncertainty: UNCERTAINTY,
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| alone(x[0], x[1], x[2], x[3]),
};

/// The share of CO2 from two pressures.
pub static BLEND: Equation = Equation {
    id: "gas_blend",
    title: "CO2 in the gas that holds a carbonation under a pressure",
    formula: "x = 100*(q - pw)/(P - pw - o)",
    result: SHARE,
    inputs: &[EQUAL, VAPOUR, TOTAL, AIR],
    uncertainty_percent: Some(2.0),
    uncertainty: UNCERTAINTY,
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| share_of(x[0], x[1], x[2], x[3]),
};

/// Total pressure (Pa) of a gas with `share` (percent) of CO2 and with `air` (Pa) besides, that holds what CO2 and vapour
/// alone hold under `equal` (Pa).
#[inline(always)]
pub(crate) fn total_of(equal: f64, vapour: f64, share: f64, air: f64) -> f64 {
    vapour + (equal - vapour) / (share / 100.0) + air
}

/// The pressure (Pa) of CO2 and vapour alone that holds what such a gas holds under `total` (Pa).
#[inline(always)]
pub(crate) fn alone(total: f64, vapour: f64, share: f64, air: f64) -> f64 {
    vapour + share / 100.0 * (total - vapour - air)
}

#[inline(always)]
fn share_of(equal: f64, vapour: f64, total: f64, air: f64) -> f64 {
    100.0 * (equal - vapour) / (total - vapour - air)
}

/// CO2 (kg/m3) under a total pressure (Pa) of CO2 and vapour, for an error's text: nothing below nothing, and no more
/// than where the model ends.
pub(crate) fn held<H: Here>(here: H, equal: f64) -> f64 {
    here.dissolved_under(equal.min(here.most())).max(0.0)
}

/// The gas over a drink.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gas {
    /// CO2 in the gas as supplied, percent by volume; the rest is nitrogen.
    pub co2: Percent,
    /// Partial pressure of the air in the headspace.
    pub air: AbsolutePressure,
}

impl Gas {
    /// CO2 and nothing else.
    pub fn pure() -> Self {
        Self { co2: Percent::from_si(100.0), air: AbsolutePressure::from_si(0.0) }
    }
}

#[derive(Clone, Copy)]
struct Keg<S>(S);

impl<S: Solubility> Kernel<7, 2> for Keg<S> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 7] =
        [Key::Carbonation, Key::Temperature, Key::Ambient, Key::Abv, Key::Extract, Key::Co2Share, Key::HeadspaceAir];
    #[inline(always)]
    fn eval(&self, x: [f64; 7], steps: &mut impl Steps) -> ([f64; 2], i32) {
        let [c, t, ambient, abv, extract, share, air] = x;
        let (here, bits) = self.0.here(t, abv, extract, steps);
        let equal = here.total_pressure(c);
        let told = here.tell(equal, 0.0, steps);
        let vapour = here.vapour();
        let total = steps.step(&MIXED_PRESSURE, &[equal, vapour, share, air], total_of(equal, vapour, share, air));
        let gauge = pressure::gauge(total, ambient, steps);
        let high = steps.within(&carbonating::PRESSURE, gauge);
        let low = if gauge < -SLACK * ambient { code::TARGET_BELOW_HELD } else { bits | told | high };
        ([gauge, total], if total > sealed::MOST { code::PRESSURE_TOO_HIGH } else { low })
    }
    fn explain(&self, status: i32, [c, t, ambient, abv, extract, share, air]: [f64; 7]) -> Error {
        let parameter = Name::first(Key::Carbonation);
        if status == code::TARGET_BELOW_HELD {
            let (here, _) = self.0.here(t, abv, extract, &mut NoSteps);
            return Error::TargetBelowHeld {
                parameter,
                value: c,
                held: held(here, alone(ambient, here.vapour(), share, air)),
                remedy: "under this gas no regulator pressure keeps so little; serve it warmer, or take a gas with less CO2",
            };
        }
        Error::PressureTooHigh { parameter, limit: sealed::MOST }
    }
}

#[inline(always)]
fn dissolved<S: Solubility>(
    model: S,
    total: f64,
    [t, abv, extract, share, air]: [f64; 5],
    steps: &mut impl Steps,
) -> (f64, i32) {
    let (here, bits) = model.here(t, abv, extract, steps);
    let vapour = here.vapour();
    let equal = steps.step(&MIXED_EQUIVALENT, &[total, vapour, share, air], alone(total, vapour, share, air));
    let told = here.tell(equal, 0.0, steps);
    let c = here.dissolved_under(equal);
    let low = if c < 0.0 { code::PRESSURE_TOO_LOW } else { bits | told };
    (c, if equal > here.most() { code::PRESSURE_TOO_HIGH } else { low })
}

/// Why nothing is dissolved under a pressure that is `value` (Pa) above `ambient`.
fn none<S: Solubility>(model: S, status: i32, key: Key, [value, ambient]: [f64; 2], x: [f64; 5]) -> Error {
    let [t, abv, extract, share, air] = x;
    let (here, _) = model.here(t, abv, extract, &mut NoSteps);
    let total = |equal: f64| total_of(equal, here.vapour(), share, air);
    let parameter = Name::first(key);
    if status == code::PRESSURE_TOO_HIGH {
        return Error::PressureTooHigh { parameter, limit: here.most() };
    }
    Error::PressureTooLow { parameter, value, low: total(here.total_pressure(0.0)) - ambient }
}

#[derive(Clone, Copy)]
struct FromGauge<S>(S);

impl<S: Solubility> Kernel<7, 1> for FromGauge<S> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 7] =
        [Key::Gauge, Key::Ambient, Key::Temperature, Key::Abv, Key::Extract, Key::Co2Share, Key::HeadspaceAir];
    #[inline(always)]
    fn eval(&self, [gauge, ambient, rest @ ..]: [f64; 7], steps: &mut impl Steps) -> ([f64; 1], i32) {
        let total = pressure::absolute(gauge, ambient, steps);
        let (c, status) = dissolved(self.0, total, rest, steps);
        ([c], status)
    }
    fn explain(&self, status: i32, [gauge, ambient, rest @ ..]: [f64; 7]) -> Error {
        none(self.0, status, Key::Gauge, [gauge, ambient], rest)
    }
}

#[derive(Clone, Copy)]
struct FromAbsolute<S>(S);

impl<S: Solubility> Kernel<6, 1> for FromAbsolute<S> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 6] =
        [Key::Absolute, Key::Temperature, Key::Abv, Key::Extract, Key::Co2Share, Key::HeadspaceAir];
    #[inline(always)]
    fn eval(&self, [total, rest @ ..]: [f64; 6], steps: &mut impl Steps) -> ([f64; 1], i32) {
        let (c, status) = dissolved(self.0, total, rest, steps);
        ([c], status)
    }
    fn explain(&self, status: i32, [total, rest @ ..]: [f64; 6]) -> Error {
        none(self.0, status, Key::Absolute, [total, 0.0], rest)
    }
}

#[derive(Clone, Copy)]
struct Share<S>(S);

impl<S: Solubility> Kernel<7, 1> for Share<S> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 7] =
        [Key::Carbonation, Key::Temperature, Key::Gauge, Key::Ambient, Key::Abv, Key::Extract, Key::HeadspaceAir];
    #[inline(always)]
    fn eval(&self, [c, t, gauge, ambient, abv, extract, air]: [f64; 7], steps: &mut impl Steps) -> ([f64; 1], i32) {
        let total = pressure::absolute(gauge, ambient, steps);
        let (here, bits) = self.0.here(t, abv, extract, steps);
        let equal = here.total_pressure(c);
        let told = here.tell(equal, 0.0, steps);
        let vapour = here.vapour();
        let share = steps.step(&BLEND, &[equal, vapour, total, air], share_of(equal, vapour, total, air));
        let much = (total - vapour - air <= 0.0) | above(share, MOST);
        let low = if below(share, LEAST) { code::TARGET_BELOW_HELD } else { bits | told };
        let status = if much { code::OUT_OF_REACH } else { low };
        // What rounding leaves beyond the ends has to be taken back by the other functions.
        let most = if share < MOST { share } else { MOST };
        ([if most > LEAST { most } else { LEAST }], status)
    }
    fn explain(&self, status: i32, [c, t, gauge, ambient, abv, extract, air]: [f64; 7]) -> Error {
        let (parameter, value) = (Name::first(Key::Carbonation), c);
        let (here, _) = self.0.here(t, abv, extract, &mut NoSteps);
        let held = |share| held(here, alone(gauge + ambient, here.vapour(), share, air));
        if status == code::OUT_OF_REACH {
            let advice = "not even CO2 alone holds it under this pressure; raise the pressure, purge the air, or chill the drink";
            return Error::OutOfReach { parameter, value, limit: held(MOST), advice };
        }
        let remedy = "a gas with 1 % CO2 holds more under this pressure; lower the pressure";
        Error::TargetBelowHeld { parameter, value, held: held(LEAST), remedy }
    }
}

/// Shares of CO2 that are answered, percent: the limits of the field.
const LEAST: f64 = 1.0;
const MOST: f64 = 100.0;

/// Hands the kernel for a regulator pressure to a visitor.
pub(crate) fn visit_keg<V: Visit<7, 2>>(context: &Context, visitor: V) -> V::Output {
    let model = context.solubility();
    visitor.visit(Keg(model))
}

/// Hands the kernel for the CO2 under a gauge pressure to a visitor.
pub(crate) fn visit_gauge<V: Visit<7, 1>>(context: &Context, visitor: V) -> V::Output {
    let model = context.solubility();
    visitor.visit(FromGauge(model))
}

/// Hands the kernel for the CO2 under an absolute pressure to a visitor.
pub(crate) fn visit_absolute<V: Visit<6, 1>>(context: &Context, visitor: V) -> V::Output {
    let model = context.solubility();
    visitor.visit(FromAbsolute(model))
}

/// Hands the kernel for a blend to a visitor.
pub(crate) fn visit_blend<V: Visit<7, 1>>(context: &Context, visitor: V) -> V::Output {
    let model = context.solubility();
    visitor.visit(Share(model))
}

/// The regulator pressure that holds a drink at a carbonation under a blended gas, or over air that was not purged.
///
/// ```
/// use carb_core::basis::{Ambient, Beverage, Context, Kind};
/// use carb_core::evidence::NoSteps;
/// use carb_core::kegging::mixed_gas::{Gas, mixed_keg_pressure};
/// use carb_core::quantity::{Carbonation, Percent, Temperature};
/// let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
/// let gas = Gas { co2: Percent::from_percent(70.0), ..Gas::pure() };
/// let keg = mixed_keg_pressure(Carbonation::from_volumes(2.5), Temperature::from_f(38.0), &gas, &here, &mut NoSteps)?;
/// assert_eq!(format!("{:.1}", keg.value.gauge.psi()), "22.3");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// As [`super::pressure::keg_pressure`], and where the gas lies outside its limits.
pub fn mixed_keg_pressure(
    carbonation: Carbonation,
    temperature: Temperature,
    gas: &Gas,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Pressure>, Error> {
    let mut notes = Notes::default();
    let drink = context.beverage;
    let watch = &mut Both(&mut notes, steps);
    let ambient = context.ambient(watch)?;
    let (c, t) = (carbonation.si(), temperature.si());
    let x = [c, t, ambient, drink.abv(), drink.extract(), gas.co2.si(), gas.air.si()];
    let [gauge, absolute] = visit_keg(context, Once { x, steps: watch })?;
    context.note_model(&mut notes.cautions);
    let value = Pressure { gauge: GaugePressure::from_si(gauge), absolute: AbsolutePressure::from_si(absolute) };
    Ok(Answer { value, context: *context, notes })
}

/// CO2 that a drink holds under a gauge pressure of a blended gas, or over air that was not purged.
///
/// # Errors
/// As [`crate::balance::equilibrium::dissolved_co2`], and where the gas lies outside its limits.
pub fn mixed_dissolved_co2(
    gauge: GaugePressure,
    temperature: Temperature,
    gas: &Gas,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Carbonation>, Error> {
    let mut notes = Notes::default();
    let drink = context.beverage;
    let watch = &mut Both(&mut notes, steps);
    let (ambient, t) = (context.ambient(watch)?, temperature.si());
    let x = [gauge.si(), ambient, t, drink.abv(), drink.extract(), gas.co2.si(), gas.air.si()];
    let [c] = visit_gauge(context, Once { x, steps: watch })?;
    context.note_model(&mut notes.cautions);
    Ok(Answer { value: Carbonation::from_si(c), context: *context, notes })
}

/// CO2 that a drink holds under an absolute pressure of a blended gas, or over air that was not purged.
///
/// # Errors
/// As [`crate::balance::equilibrium::dissolved_co2_absolute`], and where the gas lies outside its limits.
pub fn mixed_dissolved_co2_absolute(
    absolute: AbsolutePressure,
    temperature: Temperature,
    gas: &Gas,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Carbonation>, Error> {
    let mut notes = Notes::default();
    let drink = context.beverage;
    let x = [absolute.si(), temperature.si(), drink.abv(), drink.extract(), gas.co2.si(), gas.air.si()];
    let [c] = visit_absolute(context, Once { x, steps: &mut Both(&mut notes, steps) })?;
    context.note_model(&mut notes.cautions);
    Ok(Answer { value: Carbonation::from_si(c), context: *context, notes })
}

/// The share of CO2 in the gas that holds a drink at a carbonation under a regulator pressure.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, not even CO2 alone holds so much under the
/// pressure, or hardly any CO2 holds more.
pub fn gas_blend(
    carbonation: Carbonation,
    temperature: Temperature,
    gauge: GaugePressure,
    air: AbsolutePressure,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Percent>, Error> {
    let mut notes = Notes::default();
    let drink = context.beverage;
    let watch = &mut Both(&mut notes, steps);
    let ambient = context.ambient(watch)?;
    let x = [carbonation.si(), temperature.si(), gauge.si(), ambient, drink.abv(), drink.extract(), air.si()];
    let [share] = visit_blend(context, Once { x, steps: watch })?;
    context.note_model(&mut notes.cautions);
    Ok(Answer { value: Percent::from_si(share), context: *context, notes })
}
