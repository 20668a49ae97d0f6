//! Claims of how often a keg has to be purged.

use super::claim::Claim;
use super::quantity::Otherwise;
use super::question::{AirOxygen, Choice, CyclesRounding, GasOxygen, Question, Reference};
use super::told::Told;
use crate::error::Error;
use crate::evidence::caution::SLACK;
use crate::kegging::purge::cycles;
use crate::number::{ceil, floor};
use crate::property::oxygen::{IN_AIR, IN_GAS};
use crate::quantity::Key;
use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

struct Purge {
    told: Told,
    /// Oxygen that may be left, at the start, in the gas; pressure of a filling, as it was told.
    numbers: [f64; 4],
    /// Whether cycles are printed without decimals.
    whole: bool,
}

/// What other programs make of purge cycles.
pub(super) fn otherwise(claim: &Claim) -> Result<Box<dyn Otherwise>, Error> {
    let told = Told::of(claim)?;
    let number = |key| told.request.number(key);
    let start = number(Key::StartOxygen).unwrap_or(IN_AIR);
    let supplied = number(Key::GasOxygen).unwrap_or(IN_GAS);
    let numbers =
        [number(Key::Oxygen).unwrap_or_default(), start, supplied, number(Key::PurgeGauge).unwrap_or_default()];
    Ok(Box::new(Purge { told, numbers, whole: claim.printed.step >= 1.0 }))
}

/// The whole number that is enough: as the library's own, which forgives what rounding may add.
fn enough(exact: f64) -> f64 {
    ceil(exact - exact * SLACK)
}

impl Otherwise for Purge {
    fn questions(&self) -> Vec<Question> {
        let mut all = vec![Question::CyclesRounding, Question::Reference, Question::GivenPressure];
        all.extend(self.told.request.number(Key::StartOxygen).is_none().then_some(Question::AirOxygen));
        all.extend(self.told.request.number(Key::GasOxygen).is_none().then_some(Question::GasOxygen));
        all.extend(self.told.air(true));
        all
    }

    fn value(&self, choice: &Choice) -> Option<f64> {
        let [limit, start, supplied, gauge] = self.numbers;
        let of_air = self.told.request.number(Key::StartOxygen).is_none();
        let start = match choice.of() {
            AirOxygen::Fine if of_air => 0.20946,
            AirOxygen::Rounded if of_air => 0.21,
            _ => start,
        };
        let supplied = match choice.of() {
            GasOxygen::Pure if self.told.request.number(Key::GasOxygen).is_none() => 0.0,
            _ => supplied,
        };
        let outside = self.told.outside(choice);
        let unit = self.told.request.name_of(Key::PurgeGauge)?.unit?;
        let gauge = gauge * Told::given_pressure(unit, choice)?;
        let filled = match choice.of() {
            Reference::Told => gauge,
            // To this pressure above vacuum, which may be none above the air outside.
            Reference::Absolute => gauge - outside,
        };
        if filled <= 0.0 {
            return None;
        }
        let exact = cycles([limit, start, supplied, outside, filled]);
        Some(match choice.of() {
            // A whole number that is no less than needed is what this library says too.
            CyclesRounding::Exact if self.whole => enough(exact),
            CyclesRounding::Exact => exact,
            CyclesRounding::Nearest => floor(exact + 0.5),
            CyclesRounding::Up => enough(exact),
        })
    }
}
