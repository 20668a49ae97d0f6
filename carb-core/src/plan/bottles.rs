//! The bottles of the job: which are at hand, what goes into each, and whether it stands it.

use super::contents::{Found, keeping, physical};
use super::{Part, named};
use crate::basis::kernel;
use crate::basis::lists::BOTTLES;
use crate::basis::{Answer, Lists, Request};
use crate::bottling::doses::BottleDose;
use crate::bottling::fill::Kind;
use crate::bottling::glass::{Glass, verdict};
use crate::bottling::package::{PackagePressure, USUAL_HEADSPACE, pressure_of_contents};
use crate::bottling::priming::PrimingDose;
use crate::error::Error;
use crate::evidence::{Cautions, NoSteps};
use crate::quantity::{Concentration, GaugePressure, Key, Mass, Percent, Temperature, Unit, Volume};
use alloc::vec::Vec;

/// A kind of bottle: how many to fill, with what, and whether it stands it.
#[derive(Clone, Debug)]
pub struct BottleRow {
    /// Drink that goes into one.
    pub content: Volume,
    /// Gas over it, and the same in percent of the drink.
    pub gas: Volume,
    /// Headspace in percent of the drink.
    pub headspace: Percent,
    /// The class, where it is known.
    pub class: &'static str,
    /// How many are at hand.
    pub count: u32,
    /// In which unit its content was told.
    pub unit: Option<&'static Unit>,
    /// How many to fill: all that are for conditioning, where they do not hold the drink; `None` where it is not known how
    /// much there is.
    pub filled: Option<u32>,
    /// How many to wash, spares included.
    pub washed: Option<u32>,
    /// Sugar for one bottle, and tablets.
    pub dose: Option<BottleDose>,
    /// Its pressure in each place, where there is one: the places of [`Bottling::storage`].
    pub pressures: Vec<(&'static str, Option<PackagePressure>)>,
    /// Whether it stands it: `within`, `high`, `danger`, `not_for_conditioning`.
    pub glass: Part<Verdict>,
}

impl BottleRow {
    /// Whether anybody would fill bottles of this kind: those that stay empty endanger nobody, those that are not for
    /// conditioning were meant for it all the same.
    pub(super) fn concerns(&self) -> bool {
        self.filled != Some(0) || self.glass.value().is_some_and(|verdict| verdict.word == "not_for_conditioning")
    }
}

/// What is said of a bottle's glass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Verdict {
    /// `within`, `high`, `danger` or `not_for_conditioning`.
    pub word: &'static str,
    /// The worst pressure on a hot day.
    pub worst: GaugePressure,
    /// What must not be passed.
    pub limit: GaugePressure,
    /// Whether that is a rating.
    pub rated: bool,
    /// Up to which temperature the worst pressure stays within it, at most 40 °C; `None` where nowhere.
    pub warmest: Option<Temperature>,
}

/// All bottles together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FillTotals {
    /// Drink to bottle, the syrup included.
    pub drink: Volume,
    /// Bottles to fill.
    pub filled: u32,
    /// Bottles to wash, with the spares.
    pub washed: u32,
    /// Drink left over.
    pub leftover: Volume,
}

/// A row of the bottles at hand.
pub(super) struct AtHand {
    pub at_hand: Kind,
    pub unit: Option<&'static Unit>,
    /// Percent of the drink.
    pub headspace: f64,
    pub glass: Glass,
}

impl AtHand {
    /// What may be filled of them: none that are not for conditioning, unless their maker rates them.
    pub fn usable(&self) -> Kind {
        let usable = self.glass.for_conditioning() || self.glass.rating.is_some();
        Kind { count: if usable { self.at_hand.count } else { 0 }, ..self.at_hand }
    }

    pub fn content(&self) -> Volume {
        Volume::from_si(self.at_hand.content)
    }
}

pub(super) fn kinds(request: &Request, lists: &Lists<'_>) -> Vec<AtHand> {
    let usual = request.number(Key::Headspace).unwrap_or(USUAL_HEADSPACE);
    let of = |row: &Request| {
        let content = row.number(Key::Bottle).unwrap_or_default();
        let capacity = row.number(Key::Capacity);
        let rating = row.number(Key::RatingGauge).or(request.number(Key::RatingGauge)).map(GaugePressure::from_si);
        AtHand {
            unit: row.name_of(Key::Bottle).and_then(|name| name.unit),
            at_hand: Kind { content, count: row.number(Key::Count).unwrap_or_default() as u32 },
            headspace: capacity.map_or(usual, |capacity| 100.0 * (capacity / content - 1.0)),
            glass: Glass { class: row.bottle_class().or(request.bottle_class()), rating },
        }
    };
    lists.of(&BOTTLES).iter().map(of).collect()
}

/// The dose that tablets make of a bottle, where there are any.
pub(super) fn tablets(request: &Request, kind: &AtHand, dose: Option<&BottleDose>) -> Option<PrimingDose> {
    let ((count, _), tablet) = (dose?.tablets?, request.number(Key::Tablet)?);
    let mass = Mass::from_si(f64::from(count) * tablet);
    Some(PrimingDose { mass, dose: Concentration::from_si(mass.si() / kind.at_hand.content) })
}

/// The weakest of the bottles at hand: by it the stores are judged. Without any, what the request says of its bottles.
pub(super) fn weakest(request: &Request, kinds: &[AtHand]) -> Glass {
    let rating = request.number(Key::RatingGauge).map(GaugePressure::from_si);
    let own = Glass { class: request.bottle_class(), rating };
    let known = kinds.iter().map(|kind| kind.glass).filter(|glass| glass.class.is_some() || glass.rating.is_some());
    known.min_by(|a, b| a.pressure_limit().0.total_cmp(&b.pressure_limit().0)).unwrap_or(own)
}

/// The pressure in a bottle of a kind.
pub(super) fn pressure(
    request: &Request,
    kind: &AtHand,
    found: &Found,
    t: Temperature,
) -> Result<PackagePressure, Error> {
    let mut keeping = keeping(request, t)?;
    keeping.headspace = Percent::from_si(kind.headspace);
    pressure_of_contents(found.package, &keeping, &kind.glass, &physical(request)?, &mut NoSteps)
        .map(|answer| answer.value)
}

pub(super) fn judge(
    request: &Request,
    kind: &AtHand,
    found: &Found,
    hot_day: Temperature,
) -> Result<Answer<Verdict>, Error> {
    let context = physical(request)?;
    let mut keeping = keeping(request, hot_day)?;
    keeping.headspace = Percent::from_si(kind.headspace);
    kernel::check(Key::Headspace, kind.headspace)?;
    let glass = &kind.glass;
    let answer = pressure_of_contents(found.package, &keeping, glass, &context, &mut NoSteps)
        .map_err(|error| error.renamed(|key| (key == Key::Temperature).then(|| named(request, Key::HotDay))))?;
    let mut notes = answer.notes;
    // Only what is said of the glass.
    notes.cautions = Cautions::default();
    glass.note_pressure(answer.value.worst.gauge.si(), &mut notes.cautions);
    glass.note_contents(found.package.worst, 0.0, &mut notes.cautions);
    let (limit, rated) = glass.pressure_limit();
    let value = Verdict {
        word: verdict(glass, &notes.cautions),
        worst: answer.value.worst.gauge,
        limit: GaugePressure::from_si(limit),
        rated,
        warmest: glass.warmest(found.package, &keeping, &context)?,
    };
    Ok(Answer { value, context, notes })
}
