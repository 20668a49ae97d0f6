//! Claims of the pressure in a sealed package.

use super::claim::Claim;
use super::memo::Memo;
use super::pressure::{gauge_of, held_by, holding};
use super::quantity::Otherwise;
use super::question::{
    Altitude, CarbonationUnit, Choice, GasVolume, PackageHeadspace, Question, Reference, TemperatureScale, TrappedAir,
};
use super::relation::{Amount, Relation};
use super::told::Told;
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, KELVIN, METRE};
use crate::quantity::{Key, Name};
use crate::table::functions::PACKAGE_PRESSURE;
use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;
use core::cell::RefCell;

/// What was asked of the mass balance: what a volume weighs, whether altitude is forgotten, whose degrees.
type Asked = (u64, bool, bool);

struct Package {
    told: Told,
    /// Answers of the mass balance, which takes its time.
    balance: RefCell<Vec<(Asked, Option<f64>)>>,
    /// Total pressure of CO2 alone that holds all of it, whether it is by gauge, and the temperature.
    total: Memo<Option<(f64, bool, f64)>>,
}

/// What other programs make of the pressure in a package.
pub(super) fn otherwise(claim: &Claim) -> Result<Box<dyn Otherwise>, Error> {
    let told = Told::of(claim)?;
    Ok(Box::new(Package { total: Memo::of(held_by(&told)), told, balance: RefCell::default() }))
}

impl Package {
    /// The expected pressure by mass balance, Pa gauge.
    fn balanced(&self, amount: Amount, t: f64, choice: &Choice) -> Option<f64> {
        let told = &self.told;
        let grams = amount.grams(told.grams(choice));
        let forgotten = told.elsewhere() && choice.of::<Altitude>() == Altitude::Forgotten;
        let other = choice.of::<TemperatureScale>() == TemperatureScale::Other;
        let asked = (grams.to_bits(), forgotten, other);
        if let Some((_, known)) = self.balance.borrow().iter().find(|(known, _)| *known == asked) {
            return *known;
        }
        let mut request = told.request;
        // What was understood as it was told goes in as it was told, to the last bit.
        if choice.of::<GasVolume>() != GasVolume::Real || choice.of::<CarbonationUnit>() != CarbonationUnit::Told {
            let name = Name { key: Key::Carbonation, unit: Some(&CO2_GRAMS_PER_LITRE) };
            request = request.with_number(name, grams);
        }
        if other {
            request = request.with_number(Name { key: Key::Temperature, unit: Some(&KELVIN) }, t);
        }
        if forgotten {
            request = request.without(Key::Ambient).without(Key::SeaLevel);
            request = request.with_number(Name { key: Key::Altitude, unit: Some(&METRE) }, 0.0);
        }
        let found = PACKAGE_PRESSURE.answer(&request, &mut NoSteps).ok().map(|answer| answer.value.as_slice()[0]);
        self.balance.borrow_mut().push((asked, found));
        found
    }
}

impl Otherwise for Package {
    fn questions(&self) -> Vec<Question> {
        let told = &self.told;
        let mut all = vec![
            Question::PackageHeadspace,
            Relation::question(told.kind),
            Question::GasVolume,
            Question::CarbonationUnit,
            Question::TrappedAir,
            Question::Reference,
            Question::PressureLabel,
        ];
        all.extend(told.air(true));
        all.extend(told.scale(Key::Temperature));
        all
    }

    fn value(&self, choice: &Choice) -> Option<f64> {
        let told = &self.told;
        let t = told.temperature(Key::Temperature, choice)?;
        let amount = told.amount(Key::Carbonation, choice)?;
        let here = told.outside(choice);
        let air = match choice.of() {
            TrappedAir::LeftOut => 0.0,
            TrappedAir::Counted => here,
        };
        let label = Told::pressure_label(told.unit, choice)?;
        match choice.of() {
            PackageHeadspace::Counted => {
                let absolute = match choice.of() {
                    Reference::Told => 0.0,
                    Reference::Absolute => here,
                };
                Some((self.balanced(amount, t, choice)? + air + absolute) * label)
            }
            PackageHeadspace::LeftOut => {
                let (total, by_gauge, t) = self.total.get(choice, || holding(told, choice))?;
                Some(gauge_of(told, total, by_gauge, t, choice)? + air * label)
            }
        }
    }
}
