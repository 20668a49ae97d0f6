//! Claims of how much CO2 a keg takes.

use super::claim::Claim;
use super::quantity::Otherwise;
use super::question::{Choice, GasLaw, KegHeadspace, Question, Reference, StartCo2};
use super::told::Told;
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::property::co2_gas::{density, second_virial};
use crate::property::constant::{CO2_MOLAR_MASS, GAS_CONSTANT};
use crate::quantity::{Key, Name};
use crate::table::functions::GAS_BUDGET;
use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

struct Gas {
    told: Told,
    start: bool,
    /// Drink, and room over it, m3.
    packaged: f64,
    over: f64,
    /// What purging takes, kg, by this library.
    purge: f64,
    gauge: f64,
    loss: f64,
}

/// What other programs make of a keg's gas.
pub(super) fn otherwise(claim: &Claim) -> Result<Box<dyn Otherwise>, Error> {
    let told = Told::of(claim)?;
    let request = &told.request;
    let answer = GAS_BUDGET.answer(request, &mut NoSteps)?;
    let [_, headspace, purge, serve, ..] = *answer.value.as_slice() else {
        return Err(Error::NotConverged { parameter: Name::first(Key::Gas) });
    };
    let number = |key| request.number(key).unwrap_or_default();
    // The gas in the headspace is as dense as what pushes the drink out.
    let over = if serve > 0.0 { number(Key::Packaged) * headspace / serve } else { 0.0 };
    Ok(Box::new(Gas {
        start: request.number(Key::Start).is_some(),
        packaged: number(Key::Packaged),
        over,
        purge,
        gauge: number(Key::Gauge),
        loss: number(Key::GasLoss) / 100.0,
        told,
    }))
}

impl Otherwise for Gas {
    fn questions(&self) -> Vec<Question> {
        let mut all = vec![Question::GasVolume, Question::KegHeadspace, Question::GasLaw, Question::Reference];
        all.extend(self.start.then_some(Question::StartCo2));
        all.push(Question::CarbonationUnit);
        all.extend(self.told.air(true));
        all.extend(self.told.scale(Key::Temperature));
        all.extend(self.told.gallons(&[Key::Packaged]));
        all.extend(self.told.masses());
        all
    }

    fn value(&self, choice: &Choice) -> Option<f64> {
        let told = &self.told;
        let grams = told.grams(choice);
        let start = match choice.of() {
            StartCo2::Counted if self.start => told.amount(Key::Start, choice)?.grams(grams),
            _ => 0.0,
        };
        let t = told.temperature(Key::Temperature, choice)?;
        let p = match choice.of() {
            Reference::Told => told.outside(choice) + self.gauge,
            Reference::Absolute => self.gauge,
        };
        let density = match choice.of() {
            GasLaw::Real => density(p, t, second_virial(t)),
            GasLaw::Ideal => p * CO2_MOLAR_MASS / (GAS_CONSTANT * t),
        };
        let over = match choice.of() {
            KegHeadspace::Counted => self.over,
            KegHeadspace::LeftOut => 0.0,
        };
        let dissolve = (told.amount(Key::Carbonation, choice)?.grams(grams) - start).max(0.0) * self.packaged;
        let used = dissolve + self.purge + (self.packaged + over) * density;
        // Keg and drink are taken to be told in one kind of gallon.
        Some(used * (1.0 + self.loss) * told.gallon(Key::Packaged, choice)? * told.mass_label(choice)?)
    }
}
