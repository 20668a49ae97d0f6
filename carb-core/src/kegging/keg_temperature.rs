//! The temperature at which a regulator pressure holds a drink at its carbonation.

use super::mixed_gas::{Gas, MIXED_PRESSURE, alone, held, total_of};
use crate::balance::pressure;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::{NoSteps, Notes, Steps};
use crate::number::root::bracketed;
use crate::property::solubility::{Here, Solubility};
use crate::quantity::{Carbonation, GaugePressure, Key, Name, Temperature};

#[derive(Clone, Copy)]
struct Holding<S>(S);

/// The drink's temperatures, K: the limits of the field.
fn ends() -> (f64, f64) {
    Key::Temperature.limits().unwrap_or_default()
}

impl<S: Solubility> Kernel<7, 1> for Holding<S> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 7] =
        [Key::Carbonation, Key::Gauge, Key::Ambient, Key::Abv, Key::Extract, Key::Co2Share, Key::HeadspaceAir];
    #[inline(always)]
    fn eval(&self, [c, gauge, ambient, abv, extract, share, air]: [f64; 7], steps: &mut impl Steps) -> ([f64; 1], i32) {
        let total = pressure::absolute(gauge, ambient, steps);
        // The warmer the drink, the more pressure it takes.
        let missing = |t: f64| {
            let (here, _) = self.0.here(t, abv, extract, &mut NoSteps);
            total_of(here.total_pressure(c), here.vapour(), share, air) - total
        };
        let (cold, warm) = ends();
        let Some(t) = bracketed(cold, warm, missing) else {
            let much = missing(cold) > 0.0;
            return ([f64::NAN], if much { code::OUT_OF_REACH } else { code::TARGET_BELOW_HELD });
        };
        let (here, bits) = self.0.here(t, abv, extract, steps);
        let equal = here.total_pressure(c);
        let told = here.tell(equal, 0.0, steps);
        let vapour = here.vapour();
        steps.record(&MIXED_PRESSURE, &[equal, vapour, share, air], total_of(equal, vapour, share, air));
        ([t], bits | told)
    }
    fn explain(&self, status: i32, [c, gauge, ambient, abv, extract, share, air]: [f64; 7]) -> Error {
        let (parameter, value) = (Name::first(Key::Carbonation), c);
        let held = |t: f64| {
            let (here, _) = self.0.here(t, abv, extract, &mut NoSteps);
            held(here, alone(gauge + ambient, here.vapour(), share, air))
        };
        let (cold, warm) = ends();
        if status == code::OUT_OF_REACH {
            let advice = "this pressure holds no more even at -5 °C; raise the pressure, or the share of CO2";
            return Error::OutOfReach { parameter, value, limit: held(cold), advice };
        }
        let remedy = "this pressure holds as much even at 60 °C; lower the pressure, or the share of CO2";
        Error::TargetBelowHeld { parameter, value, held: held(warm), remedy }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<7, 1>>(context: &Context, visitor: V) -> V::Output {
    let model = context.solubility();
    visitor.visit(Holding(model))
}

/// The temperature at which a regulator pressure holds a drink at a carbonation: above it the drink loses CO2.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, or the pressure holds so much at no
/// temperature of a drink, or more at all of them.
pub fn keg_temperature(
    carbonation: Carbonation,
    gauge: GaugePressure,
    gas: &Gas,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Temperature>, Error> {
    let mut notes = Notes::default();
    let drink = context.beverage;
    let watch = &mut Both(&mut notes, steps);
    let ambient = context.ambient(watch)?;
    let x = [carbonation.si(), gauge.si(), ambient, drink.abv(), drink.extract(), gas.co2.si(), gas.air.si()];
    let [t] = visit(context, Once { x, steps: watch })?;
    context.note_model(&mut notes.cautions);
    Ok(Answer { value: Temperature::from_si(t), context: *context, notes })
}
