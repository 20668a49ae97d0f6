//! Claims that somebody may be hurt by: judged by what is claimed, whether or not this library has an answer of its own.

use super::claim::Claim;
use crate::basis::{Answer, Lists, Request, Values};
use crate::evidence::Level;
use crate::plan::bottle;
use crate::plan::bottling::INPUTS;
use crate::property::keg_rating::KEG_RATINGS;
use crate::quantity::unit::{BAR, CELSIUS, GRAM, GRAMS_PER_LITRE, KELVIN, KILOGRAM, METRE, OUNCE, PSI};
use crate::quantity::{Key, Name};
use alloc::format;
use alloc::string::{String, ToString};

/// Why somebody who follows a claim may be hurt, by this library's reckoning.
pub(super) fn danger(claim: &Claim, answer: Option<&Answer<Values>>) -> Option<String> {
    let own = || answer.and_then(|answer| answer.notes.cautions.iter().find(|c| c.kind.level == Level::Danger));
    pressures(claim).or_else(|| sugar(claim)).or_else(|| own().map(ToString::to_string))
}

/// What a dose would do to the bottles, by the worst case that every plan is judged by.
fn sugar(claim: &Claim) -> Option<String> {
    if claim.quantity.name != "priming_sugar" {
        return None;
    }
    let si = claim.unit.unit.to_si(claim.printed.value);
    let packaged = claim.request.number(Key::Packaged)?;
    let mass = if *claim.unit.unit == GRAMS_PER_LITRE { si * packaged } else { si };
    let taken = |key: Key| key != Key::Carbonation && INPUTS.iter().any(|input| input.key == key);
    let told = claim.request.given().filter(|name| !taken(name.key)).fold(claim.request, |r, name| r.without(name.key));
    let request = with_defaults(told).with_number(Name { key: Key::Mass, unit: Some(&KILOGRAM) }, mass);
    let amount = format!("{:.0} g ({:.1} oz)", GRAM.from_si(mass), OUNCE.from_si(mass));
    let Ok(bottling) = bottle(&request, &Lists::new()) else { return None };
    if bottling.beyond_every_bottle().is_some() {
        return Some(format!("{amount} of this sugar make more CO2 than any bottle is for: glass bursts"));
    }
    let notes = bottling.notes();
    let mut all = notes.iter().flat_map(|notes| notes.cautions.iter());
    let gravest = all.find(|caution| caution.kind.level == Level::Danger)?;
    Some(format!("with {amount} of this sugar, {gravest}"))
}

/// A request that can be judged: where it is silent, at sea level, at 20 °C, and with nothing left to ferment.
fn with_defaults(mut request: Request) -> Request {
    let silent = |request: &Request, keys: &[Key]| keys.iter().all(|&key| request.get(key).is_none());
    if silent(&request, &[Key::Altitude, Key::Ambient]) {
        let altitude = Name { key: Key::Altitude, unit: Some(&METRE) };
        request = request.without(Key::SeaLevel).with_number(altitude, 0.0);
    }
    if silent(&request, &[Key::Warmest, Key::Residual]) {
        request = request.with_number(Name { key: Key::Warmest, unit: Some(&KELVIN) }, CELSIUS.to_si(20.0));
    }
    if silent(&request, &[Key::Fermentable]) {
        request = request.with_number(Name { key: Key::Fermentable, unit: Some(&GRAMS_PER_LITRE) }, 0.0);
    }
    request
}

/// The least that a keg of the trade is usually marked for, Pa: where no rating is told, it may be such a keg.
fn usual_keg() -> f64 {
    KEG_RATINGS.iter().find(|rating| rating.name == "brewery_keg").map_or(f64::INFINITY, |rating| rating.high)
}

/// Every pressure that is claimed or told, against every rating that is told.
fn pressures(claim: &Claim) -> Option<String> {
    let name = claim.quantity.name;
    let claimed =
        matches!(name, "keg_pressure" | "package_pressure").then(|| claim.unit.unit.to_si(claim.printed.value));
    let told = [Key::Gauge, Key::FermenterGauge, Key::PurgeGauge].map(|key| claim.request.number(key));
    let highest = told.into_iter().chain([claimed]).flatten().fold(f64::NEG_INFINITY, f64::max);
    let ratings = [Key::KegRating, Key::RatingGauge].map(|key| claim.request.number(key));
    let rated = ratings.into_iter().flatten().fold(f64::INFINITY, f64::min);
    let said = |p: f64| format!("{:.0} psi ({:.1} bar)", PSI.from_si(p), BAR.from_si(p));
    if highest > rated {
        let (is, most) = (said(highest), said(rated));
        return Some(format!(
            "{is} is more than it is rated for, {most}: what is under more than its rating can burst. Keep to its marking and its relief valve"
        ));
    }
    let keg = claimed.filter(|&p| name == "keg_pressure" && rated.is_infinite() && p > usual_keg())?;
    Some(format!(
        "{} is more than some kegs are marked for, {}, and no rating was told: a keg under more than its rating can burst. Keep to its marking and its relief valve",
        said(keg),
        said(usual_keg())
    ))
}
