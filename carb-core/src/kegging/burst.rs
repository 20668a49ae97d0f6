//! Starting with a burst of high pressure: when to stop so that the target is never passed, and what is left to wait.

use super::schedule::{join, left, reached};
use super::uptake::{How, Uptake};
use crate::balance::{equilibrium, pressure};
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::SLACK;
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::carbonating::{self, GAP_TIME, PRESSURE, REST_TIME, UPTAKE};
use crate::property::solubility::{Here, Solubility};
use crate::quantity::{Carbonation, GaugePressure, Key, Name, Temperature, Time};

#[derive(Clone, Copy)]
struct Burst<S> {
    model: S,
    how: How,
}

impl<S: Solubility> Kernel<10, 6> for Burst<S> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 10] = [
        Key::Start,
        Key::Carbonation,
        Key::BurstGauge,
        Key::Ambient,
        Key::Temperature,
        Key::Abv,
        Key::Extract,
        Key::Packaged,
        Key::KegDiameter,
        Key::Kla,
    ];
    #[inline(always)]
    fn eval(&self, x: [f64; 10], steps: &mut impl Steps) -> ([f64; 6], i32) {
        let [start, target, gauge, ambient, t, abv, extract, volume, diameter, kla] = x;
        let p = pressure::absolute(gauge, ambient, steps);
        let (end, status) = equilibrium::dissolved(self.model, p, t, abv, extract, steps);
        let ([expected, slow, fast], bits) = self.how.rates([t, volume, diameter, kla], steps);
        let bits = bits | steps.within(&PRESSURE, gauge);
        // A burst that no keg needs: the drink holds more than the target, or the pressure holds less.
        let wrong = if target < start { code::NEVER_REACHED } else { reached(start, target, end) };

        let left = left(start, target, end, steps);
        let stop = steps.step(&GAP_TIME, &[left, fast], carbonating::gap_time(left, fast));
        let held = [expected, slow]
            .map(|k| steps.step(&UPTAKE, &[start, end, k, stop], carbonating::uptake(start, end, k, stop)));

        let (here, _) = self.model.here(t, abv, extract, steps);
        let total = here.total_pressure(target);
        let hold = pressure::gauge(total, ambient, steps);
        let low = if hold < -SLACK * ambient { code::TARGET_BELOW_HELD } else { 0 };
        let rests = [(held[0], expected), (held[1], slow)].map(|(held, k)| {
            let missing = target - held;
            steps.step(&REST_TIME, &[missing, k], carbonating::rest_time(missing, k))
        });
        ([stop, held[0], held[1], hold, rests[0], rests[1]], join(status, join(wrong, join(low, bits))))
    }
    fn explain(&self, status: i32, x: [f64; 10]) -> Error {
        let [start, target, gauge, ambient, t, abv, extract, ..] = x;
        let parameter = Name::first(Key::Carbonation);
        let (here, _) = self.model.here(t, abv, extract, &mut NoSteps);
        match status {
            code::NEVER_REACHED => {
                let end = here.dissolved_under(gauge + ambient);
                Error::NeverReached { parameter, value: target, start, end }
            }
            code::TARGET_BELOW_HELD => Error::TargetBelowHeld {
                parameter,
                value: target,
                held: here.dissolved_under(ambient),
                remedy: "under CO2 alone no pressure keeps so little; keep it warmer, or under mixed gas",
            },
            _ => equilibrium::none(self.model, status, Key::BurstGauge, gauge, ambient, [t, abv, extract]),
        }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<10, 6>>(how: How, context: &Context, visitor: V) -> V::Output {
    let model = context.solubility();
    visitor.visit(Burst { model, how })
}

/// The kernel's columns, SI.
pub(crate) fn columns(
    [start, target]: [Carbonation; 2],
    burst: GaugePressure,
    temperature: Temperature,
    uptake: &Uptake,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<[f64; 10], Error> {
    let [volume, diameter, kla, _] = uptake.columns();
    let (ambient, t, drink) = (context.ambient(steps)?, temperature.si(), context.beverage);
    let (start, target) = (start.si(), target.si());
    Ok([start, target, burst.si(), ambient, t, drink.abv(), drink.extract(), volume, diameter, kla])
}

/// A burst that cannot pass its target, and the rest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BurstPlan {
    /// When to stop: then the target is just reached at the fast end of the rate.
    pub stop: Time,
    /// What the drink then holds as expected.
    pub expected: Carbonation,
    /// What it holds at the slow end.
    pub least: Carbonation,
    /// The pressure to go on with: it holds the target, and cannot pass it.
    pub hold: GaugePressure,
    /// How long, at that, until no more than a tenth of a volume is missing, as expected.
    pub rest: Time,
    /// The same at the slow end.
    pub latest_rest: Time,
}

/// When to end a burst of high pressure so that the target is not passed even at the fast end of the rate, and how long the
/// rest takes at the pressure that holds the target.
///
/// ```
/// use carb_core::basis::{Ambient, Beverage, Context, Kind};
/// use carb_core::evidence::NoSteps;
/// use carb_core::kegging::burst::burst_time;
/// use carb_core::kegging::uptake::Uptake;
/// use carb_core::quantity::{Carbonation, GaugePressure, Temperature};
/// let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
/// let (burst, cold) = (GaugePressure::from_psi(30.0), Temperature::from_f(38.0));
/// let drink = [0.85, 2.5].map(Carbonation::from_volumes);
/// let plan = burst_time(drink, burst, cold, &Uptake::default(), &here, &mut NoSteps)?.value;
/// assert_eq!(format!("{:.0} h, then {:.1} psi", plan.stop.h(), plan.hold.psi()), "30 h, then 11.2 psi");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, the drink holds more than the target, the
/// burst is no higher than what holds the target, or no pressure holds so little.
pub fn burst_time(
    start_and_target: [Carbonation; 2],
    burst: GaugePressure,
    temperature: Temperature,
    uptake: &Uptake,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<BurstPlan>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let x = columns(start_and_target, burst, temperature, uptake, context, watch)?;
    let [stop, expected, least, hold, rest, latest] = visit(uptake.how(), context, Once { x, steps: watch })?;
    context.note_model(&mut notes.cautions);
    let [expected, least] = [expected, least].map(Carbonation::from_si);
    let [stop, rest, latest_rest] = [stop, rest, latest].map(Time::from_si);
    let value = BurstPlan { stop, expected, least, hold: GaugePressure::from_si(hold), rest, latest_rest };
    Ok(Answer { value, context: *context, notes })
}
