//! Claims of how much CO2 a keg takes.

use super::claim::Claim;
use super::quantity::Otherwise;
use super::question::{Altitude, Choice, GasLaw, GasVolume, KegHeadspace, Question, StartCo2};
use super::told::Told;
use crate::basis::Request;
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::property::co2_gas::{compressibility, second_virial};
use crate::property::constant::STANDARD_ATMOSPHERE;
use crate::quantity::unit::METRE;
use crate::quantity::{Key, Name};
use crate::table::functions::GAS_BUDGET;
use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

/// What a keg takes, kg: its headspace, purging, and what pushes the drink out; and how much denser real gas is.
#[derive(Clone, Copy, Debug)]
struct Parts {
    headspace: f64,
    purge: f64,
    serve: f64,
    denser: f64,
}

impl Parts {
    fn of(request: &Request, outside: f64) -> Result<Self, Error> {
        let answer = GAS_BUDGET.answer(request, &mut NoSteps)?;
        let [_, headspace, purge, serve, ..] = *answer.value.as_slice() else {
            return Err(Error::NotConverged { parameter: Name::first(Key::Gas) });
        };
        let (t, gauge) = (request.number(Key::Temperature), request.number(Key::Gauge));
        let (t, p) = (t.unwrap_or(273.15), outside + gauge.unwrap_or_default());
        Ok(Self { headspace, purge, serve, denser: 1.0 / compressibility(p, t, second_virial(t)) })
    }
}

struct Gas {
    told: Told,
    target: Option<super::relation::Amount>,
    start: Option<super::relation::Amount>,
    packaged: f64,
    loss: f64,
    /// At the place, and at sea level.
    here: Parts,
    at_sea_level: Parts,
}

/// What other programs make of a keg's gas.
pub(super) fn otherwise(claim: &Claim) -> Result<Box<dyn Otherwise>, Error> {
    let told = Told::of(claim)?;
    let here = Parts::of(&told.request, told.station())?;
    let low = told.request.without(Key::Ambient).without(Key::SeaLevel);
    let low = low.with_number(Name { key: Key::Altitude, unit: Some(&METRE) }, 0.0);
    let at_sea_level = if told.elsewhere() { Parts::of(&low, STANDARD_ATMOSPHERE)? } else { here };
    Ok(Box::new(Gas {
        target: told.amount(Key::Carbonation),
        start: told.amount(Key::Start),
        packaged: told.request.number(Key::Packaged).unwrap_or_default(),
        loss: told.request.number(Key::GasLoss).unwrap_or_default() / 100.0,
        here,
        at_sea_level,
        told,
    }))
}

impl Otherwise for Gas {
    fn questions(&self) -> Vec<Question> {
        let mut all = vec![Question::GasVolume, Question::KegHeadspace, Question::GasLaw];
        all.extend(self.start.map(|_| Question::StartCo2));
        all.extend(self.told.air(false));
        all.extend(self.told.gallons(&[Key::Packaged]));
        all.extend(self.told.masses());
        all
    }

    fn value(&self, choice: &Choice) -> Option<f64> {
        let told = &self.told;
        let grams = choice.of::<GasVolume>().grams();
        let start = match (self.start, choice.of()) {
            (Some(start), StartCo2::Counted) => start.grams(grams),
            _ => 0.0,
        };
        let parts = if choice.of::<Altitude>() == Altitude::Forgotten { self.at_sea_level } else { self.here };
        let headspace = match choice.of() {
            KegHeadspace::Counted => parts.headspace,
            KegHeadspace::LeftOut => 0.0,
        };
        let denser = match choice.of() {
            GasLaw::Real => 1.0,
            GasLaw::Ideal => parts.denser,
        };
        let dissolve = (self.target?.grams(grams) - start).max(0.0) * self.packaged;
        let used = dissolve + parts.purge + (headspace + parts.serve) / denser;
        // Keg and drink are taken to be told in one kind of gallon.
        Some(used * (1.0 + self.loss) * told.gallon(Key::Packaged, choice)? * told.mass_label(choice)?)
    }
}
