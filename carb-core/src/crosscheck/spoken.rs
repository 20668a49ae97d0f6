//! Slips that go either way are told as they went.

use super::claim::Claim;
use super::question::Question;
use crate::quantity::unit::{CELSIUS, CO2_GRAMS_PER_LITRE, FAHRENHEIT, GRAM, IMPERIAL_GALLON, OUNCE, VOLUMES};
use crate::quantity::{Key, Unit};
use alloc::vec::Vec;

/// What a program did to this claim that takes a unit for another, where the direction is known from what it was told.
pub(super) fn spoken(claim: &Claim) -> Vec<(Question, &'static str)> {
    let given = |key: Key| claim.request.name_of(key).and_then(|name| name.unit);
    let is = |unit: Option<&'static Unit>, wanted: &'static Unit| unit.is_some_and(|unit| unit == wanted);
    let mut all = Vec::new();
    let mut say = |question, applies: bool, says| {
        if applies {
            all.push((question, says));
        }
    };
    let temperature = given(Key::Temperature).or(given(Key::Warmest));
    say(Question::TemperatureScale, is(temperature, &CELSIUS), "takes degrees Celsius for Fahrenheit");
    say(Question::TemperatureScale, is(temperature, &FAHRENHEIT), "takes degrees Fahrenheit for Celsius");
    let imperial = is(given(Key::Packaged), &IMPERIAL_GALLON);
    say(Question::Gallon, imperial, "takes imperial gallons for US ones");
    say(Question::Gallon, !imperial, "takes US gallons and fluid ounces for imperial ones");
    let unit = claim.unit.unit;
    say(Question::MassLabel, *unit == OUNCE, "labels grams as ounces");
    say(Question::MassLabel, *unit == GRAM, "labels ounces as grams");
    let target = given(Key::Carbonation);
    say(Question::CarbonationUnit, *unit == VOLUMES, "labels grams per litre as volumes");
    say(Question::CarbonationUnit, *unit == CO2_GRAMS_PER_LITRE, "labels volumes as grams per litre");
    say(Question::CarbonationUnit, is(target, &VOLUMES), "takes volumes for grams per litre");
    say(Question::CarbonationUnit, is(target, &CO2_GRAMS_PER_LITRE), "takes grams per litre for volumes");
    all
}
