//! Kegging: the whole job, from purge to pour.

use super::ask::Ask;
use super::completed::complete;
use super::keg_parts::{PARTS, Spec};
use super::readiness::{Readiness, readiness};
use super::{Part, Sure, fermented, named};
use crate::balance::open;
use crate::basis::{Answer, BasisName, Function, Lists, Request, Values};
use crate::bottling::before::Before;
use crate::bottling::conditioning::Span;
use crate::error::Error;
use crate::evidence::caution::{BLEND_COUNTED, CYLINDER_HOT, Caution, UNPURGED, WORKING_PRESSURE};
use crate::evidence::{Level, NoSteps, Notes, Working};
use crate::kegging::rating::note_as;
use crate::property::co2_saturation::CRITICAL_TEMPERATURE;
use crate::property::keg::{PurgeMethod, SODA_KEG};
use crate::property::solubility::{Here, Solubility};
use crate::quantity::unit::DAY;
use crate::quantity::{Carbonation, GaugePressure, Key, Mass, Name, Temperature, Time, Volume};
use crate::table::functions::CARBONATION_PROGRESS;
use crate::table::inputs::{before, carbonation, packaged, temperature};
use alloc::vec::Vec;

/// Temperature at which a keg is served where none is given, K.
pub(super) const SERVING: f64 = 277.15;

/// The kegs of a batch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kegs {
    /// How many.
    pub count: u32,
    /// What each holds, filled to the brim.
    pub capacity: Volume,
    /// Drink in each.
    pub drink: Volume,
}

impl Kegs {
    /// Gas over the drink of each.
    pub fn gas(&self) -> Volume {
        Volume::from_si(self.capacity.si() - self.drink.si())
    }

    /// The same in percent of the drink.
    pub fn headspace(&self) -> f64 {
        100.0 * self.gas().si() / self.drink.si()
    }
}

/// What the parts are asked from.
pub(super) struct Whole<'a> {
    /// The request, with what follows from gravities and losses.
    pub request: &'a Request,
    pub lists: &'a Lists<'a>,
    pub kegs: Result<Kegs, Error>,
    /// CO2 wanted, kg/m3.
    pub target: Result<f64, Error>,
    /// CO2 that the drink holds before, kg/m3.
    pub start: Result<f64, Error>,
    /// Regulator pressure, gauge, Pa; and what it would be under CO2 alone.
    pub regulator: Result<f64, Error>,
    pub pure: Result<f64, Error>,
    /// Sugar that would prime the batch in bottles, kg, where that is known.
    pub sugar: Option<f64>,
    /// The parts that have been asked.
    pub parts: Vec<KegPart>,
}

impl Whole<'_> {
    /// A value of a part, SI; `None` where nothing called for the part.
    pub fn value(&self, place: &str, noun: &str, key: Key) -> Result<Option<f64>, Error> {
        let Some(part) = self.parts.iter().find(|part| part.place == place) else { return Ok(None) };
        part.part.answer.as_ref().map(|_| part.value(noun, key)).map_err(|error| *error)
    }
}

/// A part of the job.
#[derive(Clone, Debug)]
pub struct KegPart {
    /// Its name in answers.
    pub place: &'static str,
    /// The function that was asked.
    pub function: &'static Function,
    /// What it was asked.
    pub request: Request,
    /// What it said.
    pub part: Part<Values>,
}

impl KegPart {
    /// One of its values, SI.
    pub fn value(&self, noun: &str, key: Key) -> Option<f64> {
        let at = self.function.outputs.iter().position(|output| output.noun == noun && output.key == key)?;
        self.part.value()?.as_slice().get(at).copied()
    }
}

/// The kegging of a batch.
#[derive(Clone, Debug)]
#[must_use]
pub struct Kegging {
    /// What was asked, with what follows from the gravities and the losses.
    pub request: Request,
    /// How sure the main answers are, where that was asked for of this job.
    pub sure: Option<Sure>,
    /// Temperature at which the kegs are served.
    pub serving: Temperature,
    /// The kegs.
    pub kegs: Part<Kegs>,
    /// Whether the drink is finished; `None` where nothing is said of its gravity.
    pub readiness: Option<Part<Readiness>>,
    /// CO2 in the drink before.
    pub start: Part<Carbonation>,
    /// Part by part, in the order of the day.
    pub parts: Vec<KegPart>,
    /// How far carbonation is, day by day, under the regulator's pressure.
    pub days: Vec<Day>,
}

/// Room that a keg needs over the drink, so that no drink comes into the gas line: judgement.
const LEAST_ROOM: f64 = 1.02;

fn kegs(request: &Request) -> Result<Kegs, Error> {
    let (drink, capacity) = (packaged(request)?.si(), request.or(Key::Keg, SODA_KEG)?);
    let full = capacity / LEAST_ROOM;
    let count = whole_number_above(drink / full);
    Ok(Kegs { count, capacity: Volume::from_si(capacity), drink: Volume::from_si(drink / f64::from(count)) })
}

/// The least whole number that is not below `x`, and at least 1; a billionth over counts as none.
fn whole_number_above(x: f64) -> u32 {
    let down = (x - 1e-9) as u32;
    down.saturating_add(1).max(1)
}

/// Asks one part; `None` where nothing calls for it.
fn asked(spec: &'static Spec, whole: &Whole<'_>) -> Option<KegPart> {
    let Spec { place, function, ask } = *spec;
    let found = ask(whole, Ask::new(function, whole.request));
    let of = |request, answer, working| KegPart { place, function, request, part: Part { answer, working } };
    match found {
        Ok(None) => None,
        Err(error) => {
            let error = error.renamed(|key| whole.request.name_of(key));
            Some(of(Request::new(), Err(error), Working::default()))
        }
        Ok(Some(ask)) => {
            let mut working = Working::default();
            let mut answer = function.answer(&ask.request, &mut working).map_err(|error| ask.renamed(error));
            if let Ok(found) = &mut answer {
                judge(place, &ask.request, found, whole.request);
            }
            Some(of(ask.request, answer, working))
        }
    }
}

/// Judges what the job itself decides; the functions that ask for a rating judge by it themselves.
fn judge(place: &str, asked: &Request, found: &mut Answer<Values>, whole: &Request) {
    let cautions = &mut found.notes.cautions;
    let gauge = match place {
        REGULATOR | STONE => found.value.as_slice().first().copied(),
        BURST => asked.number(Key::BurstGauge),
        _ => None,
    };
    let told = |key| whole.get(key).is_some();
    if let Some(gauge) = gauge {
        let rating = whole.number(Key::KegRating).map(GaugePressure::from_si);
        note_as(&WORKING_PRESSURE, gauge, rating, cautions);
    }
    let unpurged = told(Key::Purge) && whole.purge() == PurgeMethod::Nothing && !told(Key::HeadspaceAir);
    if place == REGULATOR
        && unpurged
        && let Ok(air) = found.context.ambient(&mut NoSteps)
    {
        cautions.add(Caution::of(&UNPURGED, air));
    }
    if place == GAS {
        if let Some(share) = whole.number(Key::Co2Share).filter(|share| *share < 100.0) {
            cautions.add(Caution::of(&BLEND_COUNTED, share));
        }
        if let Some(hot) = whole.number(Key::Room).filter(|room| *room >= CRITICAL_TEMPERATURE) {
            cautions.add(Caution { kind: &CYLINDER_HOT, value: hot, limit: CRITICAL_TEMPERATURE });
        }
    }
}

/// The days on which progress is shown.
const DAYS: [f64; 7] = [1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 14.0];

/// How far carbonation is on one day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Day {
    /// Since the gas was connected.
    pub time: Time,
    /// CO2 in the drink: expected, at least and at most.
    pub carbonation: Span<Carbonation>,
}

/// The days of a keg that stands under its regulator's pressure.
fn days(whole: &Whole<'_>) -> Vec<Day> {
    let Some(part) = whole.parts.iter().find(|part| part.place == CARBONATING && part.part.answer.is_ok()) else {
        return Vec::new();
    };
    let asked = part.request.without(Key::Carbonation);
    let on = |day: &f64| {
        let name = Name { key: Key::Time, unit: Some(&DAY) };
        let answer = CARBONATION_PROGRESS.answer(&asked.with_number(name, *day), &mut NoSteps).ok()?;
        let [expected, least, most, ..] = *answer.value.as_slice() else { return None };
        let [expected, least, most] = [expected, least, most].map(Carbonation::from_si);
        Some(Day { time: Time::from_d(*day), carbonation: Span { expected, least, most } })
    };
    DAYS.iter().filter_map(on).collect()
}

/// What the job begins with.
struct Begun<'a> {
    lists: &'a Lists<'a>,
    readiness: Option<Part<Readiness>>,
    /// The request as the parts take it.
    request: Request,
    completed: Request,
    kegs: Part<Kegs>,
    start: Part<Carbonation>,
    target: Result<f64, Error>,
}

/// What the job's request says before any part is asked; `made` is the carbonation where it follows from elsewhere.
fn begin<'a>(request: &Request, lists: &'a Lists<'a>, made: Option<Carbonation>) -> Result<Begun<'a>, Error> {
    let (completed, sound) = complete(request, lists)?;
    // The mass is that of sugar in bottles.
    let mut request = completed.without(Key::Mass);
    if let Some(made) = made {
        request = request.carbonation(made);
    }
    let kegs = Part::of(&request, |_| {
        sound?;
        let context = request.context(BasisName::Handbook)?;
        Ok(Answer { value: kegs(&request)?, context, notes: Notes::default() })
    });
    let start = Part::of(&request, |steps| {
        sound?;
        let context = request.context(BasisName::Handbook)?;
        let told = |value| Ok(Answer { value, context, notes: Notes::default() });
        // What never fermented holds nothing.
        let fresh = !fermented(context.beverage.kind)
            && [Key::Warmest, Key::Residual].iter().all(|&key| request.get(key).is_none());
        if request.get(Key::Start).is_some() || fresh {
            return told(Carbonation::from_si(request.or(Key::Start, 0.0)?));
        }
        // The fermenter's headspace counts for natural carbonation too, not only for a closed cold crash.
        let crashed = request.get(Key::ColdCrash).is_some();
        let fermented = if crashed { request } else { request.without(Key::FermenterHeadspace) };
        match before(&fermented)? {
            Before::Measured(value) => told(value),
            Before::Fermented(fermenter) => open::residual_co2(&fermenter, &context, steps),
        }
    });
    // The pressure asks nothing of gravities and losses.
    let target = carbonation(&request).map(Carbonation::si);
    // A keg stands more than a bottle: what is left to ferment is judged by its pressure.
    let readiness = Part::some(&request, |steps| readiness(&request, lists, None, f64::INFINITY, steps));
    Ok(Begun { lists, readiness, request, completed, kegs, start, target })
}

impl Begun<'_> {
    /// Asks the parts that are wanted.
    fn ask(&self, sugar: Option<Mass>, wanted: &dyn Fn(&str) -> bool) -> Vec<KegPart> {
        let mut whole = self.whole(sugar);
        for spec in PARTS.iter().filter(|spec| wanted(spec.place)) {
            let Some(part) = asked(spec, &whole) else { continue };
            if part.place == REGULATOR {
                whole.regulator = pressure(&part);
                whole.pure = whole.regulator.and_then(|_| of_co2(&part));
            }
            whole.parts.push(part);
        }
        whole.parts
    }

    fn whole(&self, sugar: Option<Mass>) -> Whole<'_> {
        let none = Err(Error::NotConverged { parameter: named(&self.request, Key::Carbonation) });
        Whole {
            request: &self.request,
            lists: self.lists,
            kegs: self.kegs.answer.as_ref().map(|answer| answer.value).map_err(|error| *error),
            target: self.target,
            start: self.start.answer.as_ref().map(|answer| answer.value.si()).map_err(|error| *error),
            regulator: none,
            pure: none,
            sugar: sugar.map(Mass::si),
            parts: Vec::new(),
        }
    }
}

/// Pressure (Pa, gauge) of CO2 and vapour alone that holds what the regulator holds; below 0 where a drink under a blend
/// holds less than it would open to air that is all CO2.
fn of_co2(part: &KegPart) -> Result<f64, Error> {
    let context = part.request.context(BasisName::Handbook)?;
    let (t, target) = (temperature(&part.request)?.si(), carbonation(&part.request)?.si());
    let drink = context.beverage;
    let (here, _) = context.solubility().here(t, drink.abv(), drink.extract(), &mut NoSteps);
    Ok(here.total_pressure(target) - context.ambient(&mut NoSteps)?)
}

fn pressure(part: &KegPart) -> Result<f64, Error> {
    match &part.part.answer {
        Err(error) => Err(*error),
        Ok(_) => part.value("", Key::Gauge).ok_or(Error::NotConverged { parameter: Name::first(Key::Gauge) }),
    }
}

/// What bottling knows that kegging may use: CO2 that weighed sugar makes, and the sugar of the batch.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct FromBottles {
    pub made: Option<Carbonation>,
    pub sugar: Option<Mass>,
}

/// Kegs a batch.
pub(super) fn kegging(request: &Request, lists: &Lists<'_>, known: FromBottles) -> Result<Kegging, Error> {
    let begun = begin(request, lists, known.made)?;
    let parts = begun.ask(known.sugar, &|_| true);
    let mut whole = begun.whole(None);
    whole.parts = parts;
    let days = days(&whole);
    let serving = Temperature::from_si(begun.request.number(Key::Serving).unwrap_or(SERVING));
    let parts = whole.parts;
    Ok(Kegging {
        request: begun.completed,
        sure: None,
        serving,
        kegs: begun.kegs,
        readiness: begun.readiness,
        start: begun.start,
        parts,
        days,
    })
}

/// Values of the parts by place, noun and field, SI, for how sure they are.
pub(super) fn values(
    request: &Request,
    lists: &Lists<'_>,
    made: Option<Carbonation>,
    wanted: &[(&str, &str, Key)],
) -> Result<Vec<f64>, Error> {
    let begun = begin(request, lists, made)?;
    // The gas of a keg depends on how often it is purged.
    let needed =
        |place: &str| place == REGULATOR || ["push", "purge"].contains(&place) || wanted.iter().any(|w| w.0 == place);
    let parts = begun.ask(None, &needed);
    wanted
        .iter()
        .map(|(place, noun, key)| {
            let missing = Error::NotConverged { parameter: Name::first(*key) };
            let part = parts.iter().find(|part| part.place == *place).ok_or(missing)?;
            part.part.answer.as_ref().map_err(|error| *error)?;
            part.value(noun, *key).ok_or(missing)
        })
        .collect()
}

/// The part that says how the regulator is set.
pub(super) const REGULATOR: &str = "regulator";
/// The part that says what the gas is for.
pub(super) const GAS: &str = "gas";
/// The part of a carbonation stone, and the method by that name.
pub(super) const STONE: &str = "stone";
/// The part of the keg on a hot day.
const WARMED: &str = "warmed";
/// The part that begins with high pressure.
pub(super) const BURST: &str = "burst";
/// The part that says how long carbonation takes.
pub(super) const CARBONATING: &str = "carbonating";

impl Kegging {
    /// The part of a name.
    pub fn part(&self, place: &str) -> Option<&KegPart> {
        self.parts.iter().find(|part| part.place == place)
    }

    /// A value of a part, SI.
    pub fn value(&self, place: &str, noun: &str, key: Key) -> Option<f64> {
        self.part(place)?.value(noun, key)
    }

    /// Whether there is an answer.
    pub fn answered(&self) -> bool {
        self.part(REGULATOR).is_some_and(|part| part.part.answer.is_ok())
    }

    /// The error that says that no keg would hold what is in it when it is warm.
    pub(super) fn beyond_every_keg(&self) -> Option<&Error> {
        let error = self.unjudged()?;
        let beyond = match error {
            Error::PressureTooHigh { .. } | Error::VesselFull { .. } => true,
            // So much that the library has no answer for it.
            Error::OutOfRange { parameter, value, high, .. } => {
                matches!(parameter.key, Key::HotDay | Key::Start | Key::Fermentable) && value > high
            }
            _ => false,
        };
        beyond.then_some(error)
    }

    /// Why nothing is known of the keg on a hot day.
    pub(super) fn unjudged(&self) -> Option<&Error> {
        self.part(WARMED)?.part.answer.as_ref().err()
    }

    /// Whether any part carries a `danger` caution, or no keg would hold it.
    pub fn danger(&self) -> bool {
        self.beyond_every_keg().is_some() || self.notes().iter().any(|notes| notes.cautions.any(Level::Danger))
    }

    /// What the parts noted, in their order.
    pub(super) fn notes(&self) -> Vec<&Notes> {
        let readiness = self.readiness.as_ref().and_then(|part| part.answer.as_ref().ok()).map(|answer| &answer.notes);
        let first = readiness.into_iter().chain(self.start.answer.as_ref().ok().map(|answer| &answer.notes));
        let parts = self.parts.iter().filter_map(|part| part.part.answer.as_ref().ok());
        first.chain(parts.map(|answer| &answer.notes)).collect()
    }
}
