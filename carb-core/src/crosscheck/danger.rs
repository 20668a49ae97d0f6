//! Claims that somebody may be hurt by.

use super::claim::Claim;
use crate::basis::{Answer, Lists, Values};
use crate::evidence::Level;
use crate::plan::bottle;
use crate::plan::bottling::INPUTS;
use crate::property::keg_rating::STRONGEST;
use crate::quantity::unit::{BAR, GRAMS_PER_LITRE, KILOGRAM, PSI};
use crate::quantity::{Key, Name};
use alloc::format;
use alloc::string::{String, ToString};

/// Why somebody who follows a claim may be hurt, by this library's reckoning.
pub(super) fn danger(claim: &Claim, answer: Option<&Answer<Values>>) -> Option<String> {
    let si = claim.unit.unit.to_si(claim.printed.value);
    let followed = match claim.quantity.name {
        "priming_sugar" => sugar(claim, si),
        "keg_pressure" => keg(claim, si),
        _ => None,
    };
    let own = answer.and_then(|answer| answer.notes.cautions.iter().find(|c| c.kind.level == Level::Danger));
    followed.or_else(|| own.map(ToString::to_string))
}

/// What a dose would do to the bottles, by the worst case that every plan is judged by.
fn sugar(claim: &Claim, si: f64) -> Option<String> {
    let packaged = claim.request.number(Key::Packaged)?;
    let mass = if *claim.unit.unit == GRAMS_PER_LITRE { si * packaged } else { si };
    let taken = |key: Key| key != Key::Carbonation && INPUTS.iter().any(|input| input.key == key);
    let request =
        claim.request.given().filter(|name| !taken(name.key)).fold(claim.request, |r, name| r.without(name.key));
    let request = request.with_number(Name { key: Key::Mass, unit: Some(&KILOGRAM) }, mass);
    let bottling = bottle(&request, &Lists::new()).ok().filter(|bottling| bottling.danger())?;
    let beyond = bottling.beyond_every_bottle().map(ToString::to_string);
    beyond.or_else(|| {
        let notes = bottling.notes();
        let mut all = notes.iter().flat_map(|notes| notes.cautions.iter());
        all.find(|caution| caution.kind.level == Level::Danger).map(ToString::to_string)
    })
}

/// What a pressure would do to the keg.
fn keg(claim: &Claim, si: f64) -> Option<String> {
    let told = claim.request.number(Key::KegRating);
    let most = told.unwrap_or(STRONGEST);
    let (psi, bar) = (|p| PSI.from_si(p), |p| BAR.from_si(p));
    (si > most).then(|| {
        let whose = if told.is_some() { "the keg is rated for" } else { "the strongest usual marking of a keg is" };
        format!(
            "{:.0} psi ({:.1} bar) is more than {whose}, {:.0} psi ({:.1} bar): a keg under more than its rating can burst. Keep to its marking and its relief valve",
            psi(si), bar(si), psi(most), bar(most)
        )
    })
}
