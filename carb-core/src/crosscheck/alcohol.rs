//! Claims of alcohol from gravities.

use super::claim::Claim;
use super::quantity::Otherwise;
use super::question::{AlcoholFormula, Choice, ExtractScale, Question};
use super::told::Told;
use crate::basis::request::Raw;
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::HALL;
use crate::property::attenuation::quick_alcohol;
use crate::property::gravity::Scale;
use crate::quantity::Key;
use crate::quantity::unit::{PERCENT, SPECIFIC_GRAVITY};
use crate::table::functions::ATTENUATION;
use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

/// Alcohol, % vol, by the difference of the gravities over a number that follows from the first.
fn by_difference(original: f64, current: f64) -> f64 {
    76.08 * (original - current) / (1.775 - original) * current / 0.794
}

/// Alcohol by a formula of the trade.
pub static ALCOHOL_BY_DIFFERENCE: Equation = Equation {
    id: "alcohol_by_difference",
    title: "alcohol from gravities, the trade's longer formula",
    formula: "A = 76.08*(o - s)/(1.775 - o)*s/0.794",
    result: symbol("A", Measure::In(&PERCENT), "alcohol by volume"),
    inputs: &[
        limited("o", Measure::In(&SPECIFIC_GRAVITY), "gravity before fermentation", 1.0, 1.165),
        limited("s", Measure::In(&SPECIFIC_GRAVITY), "gravity now", 0.98, 1.165),
    ],
    uncertainty_percent: None,
    uncertainty: "within 0.05 % vol of Balling's relations for beer; known to the cross-check only",
    sources: &[&HALL],
    standing: Standing::FromMemory,
    kernel: |x| by_difference(x[0], x[1]),
};

struct Alcohol {
    /// By each relation for extract: alcohol by mass and by volume, and the gravities.
    by_scale: Vec<[f64; 4]>,
}

/// What other programs make of alcohol.
pub(super) fn otherwise(claim: &Claim) -> Result<Box<dyn Otherwise>, Error> {
    let request = Told::of(claim)?.request;
    let mut by_scale = Vec::new();
    for scale in Scale::ALL {
        let mut asked = request;
        asked.set("extract_scale", Raw::Text(Scale::NAMES[*scale as usize]))?;
        let answer = ATTENUATION.answer(&asked, &mut NoSteps)?;
        let [_, _, _, abw, abv, ..] = *answer.value.as_slice() else { continue };
        let gravity = |sg, plato| {
            let read = |plato| scale.specific_gravity(plato);
            request.number(sg).or(request.number(plato).map(read)).unwrap_or(1.0)
        };
        let original = gravity(Key::OriginalGravity, Key::OriginalPlato);
        by_scale.push([abw, abv, original, gravity(Key::CurrentGravity, Key::CurrentPlato)]);
    }
    Ok(Box::new(Alcohol { by_scale }))
}

impl Otherwise for Alcohol {
    fn questions(&self) -> Vec<Question> {
        vec![Question::AlcoholFormula, Question::ExtractScale]
    }

    fn value(&self, choice: &Choice) -> Option<f64> {
        let at = match choice.of() {
            ExtractScale::Asbc => 0,
            ExtractScale::Lincoln => 1,
            ExtractScale::Quick => 2,
        };
        let [abw, abv, original, current] = *self.by_scale.get(at)?;
        let value = match choice.of() {
            AlcoholFormula::Balling => abv,
            AlcoholFormula::Balling791 => abv * (0.794 / 0.791),
            AlcoholFormula::Quick => quick_alcohol(original, current),
            AlcoholFormula::Quick131 => 131.0 * (original - current),
            AlcoholFormula::Hall => by_difference(original, current),
            // Common practice, from memory.
            AlcoholFormula::ByRatio => 100.0 * 1.05 * (original - current) / current / 0.79,
            AlcoholFormula::ByMass => abw,
        };
        (value >= 0.0).then_some(value)
    }
}
