//! What something added makes in the package: a sugar, or something for sweetness.

use super::priming::{EXTRACT_CO2, extract_co2};
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::request::Addition;
use crate::basis::{Answer, Context};
use crate::error::Error;
use crate::evidence::caution::{Caution, SUGAR_VARIES, SYRUP_BY_DENSITY};
use crate::evidence::{Notes, Steps};
use crate::property::fermentable::{self, Sugars};
use crate::quantity::{Carbonation, Concentration, Key, Name, Percent, SpecificGravity};

#[derive(Clone, Copy)]
struct Added {
    sugars: Sugars,
    /// CO2 that a gram makes at most, g/g.
    highest: f64,
    yield_percent: f64,
    most_percent: f64,
    factor: f64,
}

impl Kernel<1, 3> for Added {
    const COLUMNS: [Key; 1] = [Key::Dose];
    #[inline(always)]
    fn eval(&self, [dose]: [f64; 1], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let [h, d, t] = self.sugars.parts();
        let y = fermentable::theoretical_yield(self.sugars);
        steps.record(&fermentable::THEORETICAL_YIELD, &[h, d, t], y);
        let (e, k) = (self.yield_percent, self.factor);
        let expected = steps.step(&EXTRACT_CO2, &[y, e, k, dose], extract_co2(y, e, k, dose));
        let most = self.most_percent;
        let worst = extract_co2(self.highest, most, 1.0, dose);
        steps.record(&EXTRACT_CO2, &[self.highest, most, 1.0, dose], worst);
        let alcohol = fermentable::added_alcohol(dose, self.sugars, e, k);
        ([expected, worst, steps.step(&fermentable::ALCOHOL, &[dose, h, d, t, e, k], alcohol)], 0)
    }
    fn explain(&self, _: i32, _: [f64; 1]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Dose) }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<1, 3>>(added: &Addition, context: &Context, visitor: V) -> V::Output {
    let (sugars, highest) = match added {
        Addition::Sugar(sugar) => (sugar.sugars, sugar.highest_yield()),
        Addition::Sweetener(sweetener) => {
            (Sugars { hexose: 0.0, disaccharide: 0.0, trisaccharide: 0.0 }, sweetener.highest_yield)
        }
    };
    let basis = &context.basis;
    visitor.visit(Added {
        sugars,
        highest,
        yield_percent: basis.yield_percent,
        most_percent: basis.most_yield(),
        factor: basis.yield_factor,
    })
}

/// What something added makes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AddedCo2 {
    /// CO2 to be expected, with living yeast.
    pub expected: Carbonation,
    /// The most CO2: what a safety check takes.
    pub worst: Carbonation,
    /// Alcohol by volume that it adds.
    pub abv: Percent,
}

/// CO2 and alcohol that something added to a drink makes in the package, with living yeast.
///
/// # Errors
/// Where the dose lies outside its limits.
pub fn added_co2(
    added: &Addition,
    dose: Concentration,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<AddedCo2>, Error> {
    let mut notes = Notes::default();
    let x = [dose.si()];
    let [expected, worst, abv] = visit(added, context, Once { x, steps: &mut Both(&mut notes, steps) })?;
    match added {
        Addition::Sugar(sugar) => note_sugar(sugar, &mut notes),
        Addition::Sweetener(sweetener) => {
            notes.cautions.add(Caution::of(sweetener.caution, dose.si()));
            notes.datum(sweetener.source);
        }
    }
    let [expected, worst] = [expected, worst].map(Carbonation::from_si);
    Ok(Answer { value: AddedCo2 { expected, worst, abv: Percent::from_si(abv) }, context: *context, notes })
}

/// Samples of a sugar that differ by more than this factor are worth a note.
const VARIES: f64 = 1.03;

/// Notes where a sugar's composition is from, and that its samples differ.
pub(crate) fn note_sugar(sugar: &fermentable::Fermentable, notes: &mut Notes) {
    notes.datum(sugar.source);
    let (low, high) = sugar.yield_range;
    if high > VARIES * low {
        notes.cautions.add(Caution { kind: &SUGAR_VARIES, value: low, limit: high });
    }
}

/// Notes that the water of a syrup was found from its gravity.
pub(crate) fn note_syrup(gravity: Option<SpecificGravity>, notes: &mut Notes) {
    if let Some(sg) = gravity {
        notes.cautions.add(Caution::of(&SYRUP_BY_DENSITY, sg.si()));
    }
}
