//! Doses by the bottle: sugar, tablets, and what a scale can weigh.

use super::priming::{Batch, PrimingDose, primed_carbonation};
use crate::basis::{Answer, Context};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::evidence::caution::{COARSE_SCALE, Caution};
use crate::property::fermentable::Fermentable;
use crate::quantity::{Carbonation, Mass, Volume};

/// What goes into one bottle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BottleDose {
    /// Sugar, as sold.
    pub mass: Mass,
    /// Tablets: how many come nearest, and the carbonation that the bottle then has.
    pub tablets: Option<(u32, Carbonation)>,
}

/// CO2 of one bottle that gets a mass of sugar dry, by the basis of the context.
fn bottled(
    content: Volume,
    mass: Mass,
    batch: &Batch,
    sugar: &Fermentable,
    context: &Context,
) -> Result<Carbonation, Error> {
    let bottle = Batch { packaged: content, syrup_water: None, ..*batch };
    primed_carbonation(mass, &bottle, sugar, context, &mut NoSteps).map(|answer| answer.value.carbonation)
}

/// What goes into a bottle of a content: its share of the dose, and the whole number of tablets that comes nearest.
///
/// # Errors
/// As [`primed_carbonation`].
pub fn bottle_dose(
    content: Volume,
    dose: &PrimingDose,
    tablet: Option<Mass>,
    batch: &Batch,
    sugar: &Fermentable,
    context: &Context,
) -> Result<BottleDose, Error> {
    let mass = Mass::from_si(dose.dose.si() * content.si());
    let Some(tablet) = tablet else { return Ok(BottleDose { mass, tablets: None }) };
    let fewer = (mass.si() / tablet.si()) as u32;
    let with = |count: u32| {
        let all = Mass::from_si(f64::from(count) * tablet.si());
        bottled(content, all, batch, sugar, context).map(|co2| (count, co2))
    };
    let wanted = bottled(content, mass, batch, sugar, context)?.si();
    let (low, high) = (with(fewer)?, with(fewer + 1));
    let off = |co2: Carbonation| (co2.si() - wanted).abs();
    let tablets = match high {
        Ok(high) if off(high.1) < off(low.1) => high,
        _ => low,
    };
    Ok(BottleDose { mass, tablets: Some(tablets) })
}

/// A dose as a scale weighs it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weighed {
    /// The nearest mass that the scale shows.
    pub mass: Mass,
    /// The carbonation of it.
    pub carbonation: Carbonation,
    /// The same for half a step less and more, which the scale cannot tell from it.
    pub range: (Carbonation, Carbonation),
    /// The heaviest mass that the scale shows so.
    pub most: Mass,
}

/// Steps of a scale that are a larger part of the dose are coarse; judgement.
const COARSE: f64 = 0.1;

/// What a scale makes of a dose.
///
/// # Errors
/// As [`primed_carbonation`].
pub fn weighed(
    mass: Mass,
    step: Mass,
    batch: &Batch,
    sugar: &Fermentable,
    context: &Context,
) -> Result<Answer<Weighed>, Error> {
    // A whole number of steps, without the rounding of a standard library.
    let steps = (mass.si() / step.si() + 0.5) as u64;
    let shown = steps as f64 * step.si();
    let made = |mass: f64| {
        let least = if mass > 0.0 { mass } else { 0.0 };
        primed_carbonation(Mass::from_si(least), batch, sugar, context, &mut NoSteps)
    };
    let mut answer = made(shown)?;
    let (low, high) = (made(shown - 0.5 * step.si())?, made(shown + 0.5 * step.si())?);
    if step.si() > COARSE * mass.si() {
        answer.notes.cautions.add(Caution { kind: &COARSE_SCALE, value: step.si(), limit: mass.si() });
    }
    Ok(answer.map(|drink| Weighed {
        mass: Mass::from_si(shown),
        carbonation: drink.carbonation,
        range: (low.value.carbonation, high.value.carbonation),
        most: Mass::from_si(shown + 0.5 * step.si()),
    }))
}
