//! The bottles of the job: which are at hand, what goes into each, and whether it stands it.

use super::contents::{Found, keeping, physical};
use super::{Part, Place, named};
use crate::basis::lists::BOTTLES;
use crate::basis::{Answer, Lists, Request, kernel};
use crate::bottling::doses::BottleDose;
use crate::bottling::fill::Kind;
use crate::bottling::glass::{Glass, verdict};
use crate::bottling::package::{PackagePressure, USUAL_HEADSPACE, pressure_of_contents};
use crate::bottling::priming::PrimingDose;
use crate::error::Error;
use crate::evidence::{NoSteps, Notes};
use crate::quantity::{Concentration, GaugePressure, Key, Mass, Percent, Temperature, Unit, Volume};
use crate::table::inputs::headspace;
use alloc::vec::Vec;

/// The name of a place, and the pressure there.
pub type AtPlace = (&'static str, Result<PackagePressure, Error>);

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
    /// Its pressure in each place of the job.
    pub pressures: Vec<AtPlace>,
    /// Whether it stands it in all of them.
    pub glass: Part<Verdict>,
}

impl BottleRow {
    /// Whether bottles of this kind are filled, as far as is known: those that stay empty endanger nobody.
    pub(super) fn is_filled(&self) -> bool {
        self.filled != Some(0)
    }
}

/// What is said of a bottle's glass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Verdict {
    /// `within`, `high`, `danger` or `not_for_conditioning`.
    pub word: &'static str,
    /// The worst pressure in any place where bottles are kept.
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

    /// The pressure in a bottle of this kind.
    fn pressure(
        &self,
        request: &Request,
        found: &Found,
        t: Temperature,
        place: Key,
    ) -> Result<Answer<PackagePressure>, Error> {
        kernel::check(Key::Headspace, self.headspace)?;
        let mut keeping = keeping(request, t)?;
        keeping.headspace = Percent::from_si(self.headspace);
        pressure_of_contents(found.package, &keeping, None, &physical(request)?, &mut NoSteps).map_err(|error| {
            error.renamed(|key| Some(named(request, if key == Key::Temperature { place } else { key })))
        })
    }

    /// Its pressure in each place, and whether it stands it in all of them.
    pub fn judge(
        &self,
        request: &Request,
        found: Result<Found, Error>,
        places: &[Place],
    ) -> (Vec<AtPlace>, Result<Answer<Verdict>, Error>) {
        let at = |place: &Place| {
            let answer = found.and_then(|found| self.pressure(request, &found, place.temperature, place.key));
            (place.name, answer.map(|answer| answer.value))
        };
        let pressures: Vec<_> = places.iter().map(at).collect();
        let verdict = found.and_then(|found| self.verdict(request, &found, &pressures));
        (pressures, verdict)
    }

    fn verdict(&self, request: &Request, found: &Found, pressures: &[AtPlace]) -> Result<Answer<Verdict>, Error> {
        let mut worst = f64::MIN;
        // Nobody keeps bottles in a pasteuriser: what is said of that is said of the place.
        for (_, pressure) in pressures.iter().filter(|(place, _)| *place != super::PASTEURISING) {
            worst = worst.max((*pressure)?.worst.gauge.si());
        }
        let (context, glass, mut notes) = (physical(request)?, &self.glass, Notes::default());
        glass.note_pressure(worst, &mut notes.cautions);
        glass.note_contents(found.package.worst, 0.0, &mut notes.cautions);
        let (limit, rated) = glass.pressure_limit();
        let mut keeping = keeping(request, Temperature::from_si(super::bottling::HOT_DAY))?;
        keeping.headspace = Percent::from_si(self.headspace);
        let value = Verdict {
            word: verdict(glass, &notes.cautions),
            worst: GaugePressure::from_si(worst),
            limit: GaugePressure::from_si(limit),
            rated,
            warmest: glass.warmest(found.package, &keeping, &context)?,
        };
        Ok(Answer { value, context, notes })
    }
}

/// The bottles at hand. A rating of the request is that of bottles of which none is told; it never makes a class stronger, and
/// never fit for conditioning.
pub(super) fn kinds(request: &Request, lists: &Lists<'_>) -> Vec<AtHand> {
    let usual = request.number(Key::Headspace).unwrap_or(USUAL_HEADSPACE);
    let rating_of = |row: &Request| row.number(Key::RatingGauge).map(GaugePressure::from_si);
    let of = |row: &Request| {
        let content = row.number(Key::Bottle).unwrap_or_default();
        let inherited = rating_of(request).filter(|rating| match row.bottle_class() {
            Some(class) => rating.si() < Glass { class: Some(class), rating: None }.pressure_limit().0,
            None => true,
        });
        AtHand {
            unit: row.name_of(Key::Bottle).and_then(|name| name.unit),
            at_hand: Kind { content, count: row.number(Key::Count).unwrap_or_default() as u32 },
            headspace: headspace(row, usual),
            glass: Glass { class: row.bottle_class().or(request.bottle_class()), rating: rating_of(row).or(inherited) },
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
