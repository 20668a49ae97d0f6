//! A drink in equilibrium with the gas over it: CO2 from pressure.

use super::{pressure, visit_solubility};
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::solubility::{Here, Solubility};
use crate::quantity::{AbsolutePressure, Carbonation, GaugePressure, Key, Name, Temperature};

/// CO2 under an absolute pressure.
#[derive(Clone, Copy)]
struct FromAbsolute<S>(S);

/// CO2 under a gauge pressure.
#[derive(Clone, Copy)]
struct FromGauge<S>(S);

/// CO2 (kg/m3) at equilibrium under the absolute pressure `p`, and the status.
#[inline(always)]
pub(crate) fn dissolved<S: Solubility>(
    model: S,
    p: f64,
    t: f64,
    abv: f64,
    extract: f64,
    steps: &mut impl Steps,
) -> (f64, i32) {
    dissolved_with(model, model.ahead(t), p, [t, abv, extract], steps)
}

/// The same with what the model worked out ahead.
#[inline(always)]
fn dissolved_with<S: Solubility>(
    model: S,
    ahead: f64,
    p: f64,
    [t, abv, extract]: [f64; 3],
    steps: &mut impl Steps,
) -> (f64, i32) {
    let (here, bits) = model.here_with(ahead, t, abv, extract, steps);
    let told = here.tell(p, 0.0, steps);
    let c = here.dissolved_under(p);
    let low = if c < 0.0 { code::PRESSURE_TOO_LOW } else { bits | told };
    (c, if p > here.most() { code::PRESSURE_TOO_HIGH } else { low })
}

/// Below the pressure at which the model leaves no CO2 in the drink, there is no equilibrium; nor where the model ends.
pub(crate) fn none<S: Solubility>(model: S, status: i32, key: Key, value: f64, ambient: f64, x: [f64; 3]) -> Error {
    let [t, abv, extract] = x;
    let (here, _) = model.here(t, abv, extract, &mut NoSteps);
    if status == code::PRESSURE_TOO_HIGH {
        return Error::PressureTooHigh { parameter: Name::first(key), limit: here.most() };
    }
    Error::PressureTooLow { parameter: Name::first(key), value, low: here.total_pressure(0.0) - ambient }
}

impl<S: Solubility> Kernel<4, 1> for FromAbsolute<S> {
    const COLUMNS: [Key; 4] = [Key::Absolute, Key::Temperature, Key::Abv, Key::Extract];
    #[inline(always)]
    fn eval(&self, x: [f64; 4], steps: &mut impl Steps) -> ([f64; 1], i32) {
        self.eval_with(self.ahead(&x), x, steps)
    }
    #[inline(always)]
    fn ahead(&self, [_, t, ..]: &[f64; 4]) -> f64 {
        self.0.ahead(*t)
    }
    #[inline(always)]
    fn eval_with(&self, ahead: f64, [p, rest @ ..]: [f64; 4], steps: &mut impl Steps) -> ([f64; 1], i32) {
        let (c, status) = dissolved_with(self.0, ahead, p, rest, steps);
        ([c], status)
    }
    fn explain(&self, status: i32, [p, rest @ ..]: [f64; 4]) -> Error {
        none(self.0, status, Key::Absolute, p, 0.0, rest)
    }
}

impl<S: Solubility> Kernel<5, 1> for FromGauge<S> {
    const COLUMNS: [Key; 5] = [Key::Gauge, Key::Ambient, Key::Temperature, Key::Abv, Key::Extract];
    #[inline(always)]
    fn eval(&self, x: [f64; 5], steps: &mut impl Steps) -> ([f64; 1], i32) {
        self.eval_with(self.ahead(&x), x, steps)
    }
    #[inline(always)]
    fn ahead(&self, [_, _, t, ..]: &[f64; 5]) -> f64 {
        self.0.ahead(*t)
    }
    #[inline(always)]
    fn eval_with(&self, ahead: f64, [gauge, ambient, rest @ ..]: [f64; 5], steps: &mut impl Steps) -> ([f64; 1], i32) {
        let p = pressure::absolute(gauge, ambient, steps);
        let (c, status) = dissolved_with(self.0, ahead, p, rest, steps);
        ([c], status)
    }
    fn explain(&self, status: i32, [gauge, ambient, rest @ ..]: [f64; 5]) -> Error {
        none(self.0, status, Key::Gauge, gauge, ambient, rest)
    }
}

/// Hands the kernel for an absolute pressure to a visitor.
pub(crate) fn visit_absolute<V: Visit<4, 1>>(context: &Context, visitor: V) -> V::Output {
    visit_solubility!(visitor: V, context, model => FromAbsolute(model))
}

/// Hands the kernel for a gauge pressure to a visitor.
pub(crate) fn visit_gauge<V: Visit<5, 1>>(context: &Context, visitor: V) -> V::Output {
    visit_solubility!(visitor: V, context, model => FromGauge(model))
}

/// CO2 that a drink holds at equilibrium under an absolute pressure of CO2 and water vapour.
///
/// # Errors
/// Where a value lies outside its limits, or the pressure below the drink's own vapour pressure.
pub fn dissolved_co2_absolute(
    absolute: AbsolutePressure,
    temperature: Temperature,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Carbonation>, Error> {
    let mut notes = Notes::default();
    let drink = context.beverage;
    let x = [absolute.si(), temperature.si(), drink.abv(), drink.extract()];
    let [c] = visit_absolute(context, Once { x, steps: &mut Both(&mut notes, steps) })?;
    context.note_model(&mut notes.cautions);
    Ok(Answer { value: Carbonation::from_si(c), context: *context, notes })
}

/// CO2 that a drink holds at equilibrium under a gauge pressure of CO2 and water vapour.
///
/// ```
/// use carb_core::balance::equilibrium::dissolved_co2;
/// use carb_core::basis::{Ambient, Beverage, Context, Kind};
/// use carb_core::evidence::NoSteps;
/// use carb_core::quantity::{GaugePressure, Temperature};
/// let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
/// let co2 = dissolved_co2(GaugePressure::from_psi(12.0), Temperature::from_f(38.0), &here, &mut NoSteps)?;
/// assert_eq!(format!("{:.3}", co2.value.volumes()), "2.576");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, or the pressure lies below the drink's own
/// vapour pressure.
pub fn dissolved_co2(
    gauge: GaugePressure,
    temperature: Temperature,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Carbonation>, Error> {
    let mut notes = Notes::default();
    let drink = context.beverage;
    let watch = &mut Both(&mut notes, steps);
    let ambient = context.ambient(watch)?;
    let x = [gauge.si(), ambient, temperature.si(), drink.abv(), drink.extract()];
    let [c] = visit_gauge(context, Once { x, steps: watch })?;
    context.note_model(&mut notes.cautions);
    Ok(Answer { value: Carbonation::from_si(c), context: *context, notes })
}
