//! A gauge on a sealed package, read backwards: how much CO2 is in it.

use super::package::Keeping;
use super::priming::at_least;
use crate::balance::sealed::{Closed, LEAST_GAS, Sealed};
use crate::balance::{pressure, visit_solubility};
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::solubility::composition::Factor;
use crate::property::solubility::henry::Weiss;
use crate::property::solubility::water_core::WaterCore;
use crate::property::solubility::{Here, Solubility};
use crate::quantity::{Carbonation, GaugePressure, Key, Name};

#[derive(Clone, Copy)]
struct Reading<S> {
    solubility: S,
    /// Factor on the solubility of the least favourable case.
    worst_factor: f64,
}

impl<S: Solubility> Kernel<7, 4> for Reading<S> {
    const COLUMNS: [Key; 7] =
        [Key::Gauge, Key::Temperature, Key::Headspace, Key::Filling, Key::Ambient, Key::Abv, Key::Extract];
    #[inline(always)]
    fn eval(
        &self,
        [gauge, t, headspace, filling, ambient, abv, extract]: [f64; 7],
        steps: &mut impl Steps,
    ) -> ([f64; 4], i32) {
        let total = pressure::absolute(gauge, ambient, steps);
        let (here, bits) = self.solubility.here(t, abv, extract, steps);
        let vessel = Sealed::new(here, Closed { headspace, filling, air: 0.0 }, t, steps);
        let co2 = vessel.co2_of(total);
        let (_, told) = vessel.total(co2, steps);

        let unfavourable = WaterCore { law: Weiss, composition: Factor::Unfavourable, factor: self.worst_factor };
        let (least_here, more) = unfavourable.here(t, abv, extract, steps);
        let with_air = Sealed::new(least_here, Closed { headspace, filling, air: ambient }, t, steps);
        // All that the gauge shows may be air.
        let least = at_least(with_air.co2_of(total), 0.0);
        let (_, least_told) = with_air.total(least, steps);

        let low = if co2 < 0.0 { code::PRESSURE_TOO_LOW } else { bits | told | more | least_told };
        let status = if vessel.gas < LEAST_GAS { code::VESSEL_FULL } else { low };
        // Never more than without air, where the wine relation is carried far beyond its range.
        let at_most = |value: f64, most: f64| if value > most { most } else { value };
        let (content, dissolved) = (vessel.content(co2), vessel.dissolved(co2));
        let least_content = at_most(with_air.content(least), content);
        ([content, dissolved, least_content, at_most(with_air.dissolved(least), dissolved)], status)
    }
    fn explain(&self, status: i32, [gauge, t, _, _, ambient, abv, extract]: [f64; 7]) -> Error {
        if status == code::VESSEL_FULL {
            return Error::VesselFull { parameter: Name::first(Key::Temperature), value: t };
        }
        let (here, _) = self.solubility.here(t, abv, extract, &mut NoSteps);
        Error::PressureTooLow { parameter: Name::first(Key::Gauge), value: gauge, low: here.vapour() - ambient }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<7, 4>>(context: &Context, visitor: V) -> V::Output {
    let worst_factor = context.basis.solubility_factor.min(1.0);
    visit_solubility!(visitor: V, context, solubility => Reading { solubility, worst_factor })
}

/// The CO2 in a package whose pressure was read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PackageCarbonation {
    /// In liquid and gas together, per litre of drink as filled, if no air was sealed in.
    pub total: Carbonation,
    /// Of that, dissolved in the drink.
    pub dissolved: Carbonation,
    /// The same where all the headspace was air when it was closed, with the least favourable solubility.
    pub least_total: Carbonation,
    /// Of that, dissolved in the drink.
    pub least_dissolved: Carbonation,
}

/// The kernel's columns, SI.
pub(crate) fn columns(
    gauge: GaugePressure,
    keeping: &Keeping,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<[f64; 7], Error> {
    let drink = context.beverage;
    Ok([
        gauge.si(),
        keeping.temperature.si(),
        keeping.headspace.si(),
        keeping.filling.si(),
        context.ambient(steps)?,
        drink.abv(),
        drink.extract(),
    ])
}

/// CO2 in a sealed package, from the pressure that a gauge on it shows: [`super::package::package_pressure`] backwards.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, the pressure lies below the drink's own
/// vapour pressure, or the liquid fills the package.
pub fn package_carbonation(
    gauge: GaugePressure,
    keeping: &Keeping,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PackageCarbonation>, Error> {
    let mut notes = Notes::default();
    let x = columns(gauge, keeping, context, &mut Both(&mut notes, steps))?;
    let values: [f64; 4] = visit(context, Once { x, steps: &mut Both(&mut notes, steps) })?;
    context.note_model(&mut notes.cautions);
    let [total, dissolved, least_total, least_dissolved] = values.map(Carbonation::from_si);
    let mut context = *context;
    context.basis.count_headspace = true;
    Ok(Answer { value: PackageCarbonation { total, dissolved, least_total, least_dissolved }, context, notes })
}
