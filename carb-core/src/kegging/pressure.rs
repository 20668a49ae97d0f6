//! The regulator pressure that holds a drink at its carbonation.

use crate::balance::pressure::{self, Pressure};
use crate::balance::{sealed, visit_solubility};
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::SLACK;
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::solubility::{Here, Solubility};
use crate::quantity::{AbsolutePressure, Carbonation, GaugePressure, Key, Name, Temperature};

#[derive(Clone, Copy)]
struct Keg<S>(S);

impl<S: Solubility> Kernel<5, 2> for Keg<S> {
    const COLUMNS: [Key; 5] = [Key::Carbonation, Key::Temperature, Key::Ambient, Key::Abv, Key::Extract];
    #[inline(always)]
    fn eval(&self, x: [f64; 5], steps: &mut impl Steps) -> ([f64; 2], i32) {
        self.eval_with(self.ahead(&x), x, steps)
    }
    #[inline(always)]
    fn ahead(&self, [_, t, ..]: &[f64; 5]) -> f64 {
        self.0.ahead(*t)
    }
    #[inline(always)]
    fn eval_with(&self, ahead: f64, x: [f64; 5], steps: &mut impl Steps) -> ([f64; 2], i32) {
        let [c, t, ambient, abv, extract] = x;
        let (here, bits) = self.0.here_with(ahead, t, abv, extract, steps);
        let total = here.total_pressure(c);
        let told = here.tell(total, 0.0, steps);
        // A drink at equilibrium with the air needs no pressure at all; rounding must not make an error of that.
        let gauge = pressure::gauge(total, ambient, steps);
        let low = if gauge < -SLACK * ambient { code::TARGET_BELOW_HELD } else { bits | told };
        ([gauge, total], if total > sealed::MOST { code::PRESSURE_TOO_HIGH } else { low })
    }
    fn explain(&self, status: i32, [c, t, ambient, abv, extract]: [f64; 5]) -> Error {
        let parameter = Name::first(Key::Carbonation);
        let (here, _) = self.0.here(t, abv, extract, &mut NoSteps);
        if status == code::TARGET_BELOW_HELD {
            return Error::TargetBelowHeld {
                parameter,
                value: c,
                held: here.dissolved_under(ambient),
                remedy: "under CO2 alone no regulator pressure keeps so little; serve it warmer, or under mixed gas",
            };
        }
        Error::PressureTooHigh { parameter, limit: sealed::MOST }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<5, 2>>(context: &Context, visitor: V) -> V::Output {
    visit_solubility!(visitor: V, context, model => Keg(model))
}

/// The regulator pressure that holds a drink at a carbonation, at the surface of the drink and with CO2 alone over it.
///
/// ```
/// use carb_core::basis::{Ambient, Beverage, Context, Kind};
/// use carb_core::evidence::NoSteps;
/// use carb_core::kegging::pressure::keg_pressure;
/// use carb_core::quantity::{Carbonation, Temperature};
/// let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
/// let keg = keg_pressure(Carbonation::from_volumes(2.5), Temperature::from_f(38.0), &here, &mut NoSteps)?;
/// assert_eq!(format!("{:.2}", keg.value.gauge.psi()), "11.21");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, or the drink holds more than the target
/// even open to the air.
pub fn keg_pressure(
    carbonation: Carbonation,
    temperature: Temperature,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Pressure>, Error> {
    let mut notes = Notes::default();
    let drink = context.beverage;
    let watch = &mut Both(&mut notes, steps);
    let ambient = context.ambient(watch)?;
    let x = [carbonation.si(), temperature.si(), ambient, drink.abv(), drink.extract()];
    let [gauge, absolute] = visit(context, Once { x, steps: watch })?;
    context.note_model(&mut notes.cautions);
    let value = Pressure { gauge: GaugePressure::from_si(gauge), absolute: AbsolutePressure::from_si(absolute) };
    Ok(Answer { value, context: *context, notes })
}
