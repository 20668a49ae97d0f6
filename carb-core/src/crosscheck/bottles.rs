//! Claims of how many bottles a batch fills.

use super::claim::Claim;
use super::quantity::Otherwise;
use super::question::{Choice, CountRounding, Question};
use super::told::Told;
use crate::error::Error;
use crate::number::{ceil, floor};
use crate::quantity::Key;
use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

/// Part of a bottle that rounding in the division may make.
const ROUNDING: f64 = 1e-9;

struct Bottles {
    told: Told,
    packaged: f64,
    bottle: f64,
}

/// What other programs make of a number of bottles.
pub(super) fn otherwise(claim: &Claim) -> Result<Box<dyn Otherwise>, Error> {
    const ADVICE: &str =
        "bottles are counted from the drink (such as packaged_l) and what goes into one (such as bottle_ml)";
    let told = Told::of(claim)?;
    let packaged = told.request.need(Key::Packaged, ADVICE)?;
    let bottle = told.request.need(Key::Bottle, ADVICE)?;
    Ok(Box::new(Bottles { told, packaged, bottle }))
}

impl Otherwise for Bottles {
    fn questions(&self) -> Vec<Question> {
        let mut all = vec![Question::CountRounding];
        all.extend(self.told.gallons(&[Key::Packaged, Key::Bottle]));
        all
    }

    fn value(&self, choice: &Choice) -> Option<f64> {
        let packaged = self.packaged * self.told.gallon(Key::Packaged, choice)?;
        let bottles = packaged / (self.bottle * self.told.gallon(Key::Bottle, choice)?);
        Some(match choice.of() {
            CountRounding::Down => floor(bottles + ROUNDING),
            CountRounding::Up => ceil(bottles - ROUNDING),
            CountRounding::Nearest => floor(bottles + 0.5),
            CountRounding::Exact => bottles,
        })
    }
}
