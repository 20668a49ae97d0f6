//! Kegging: the whole job, from purge to pour.

use super::completed::complete;
use super::keg_inputs::INPUTS;
use super::keg_parts::{Ask, PARTS, Spec};
use super::{Part, Sure, named};
use crate::basis::{Answer, BasisName, Function, Lists, Request, Values};
use crate::bottling::before::Before;
use crate::balance::open;
use crate::error::Error;
use crate::evidence::{Level, NoSteps, Notes, Working};
use crate::property::keg;
use crate::quantity::{Carbonation, Key, Temperature, Volume};
use crate::table::inputs::{before, carbonation, packaged};
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
    /// Where gravities and losses cannot be.
    pub sound: Result<(), Error>,
    pub kegs: Result<Kegs, Error>,
    /// CO2 wanted, kg/m3.
    pub target: Result<f64, Error>,
    /// CO2 that the drink holds before, kg/m3.
    pub start: Result<f64, Error>,
    /// Serving temperature, K.
    pub serving: f64,
    /// Regulator pressure, gauge, Pa.
    pub regulator: Result<f64, Error>,
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
    /// CO2 in the drink before.
    pub start: Part<Carbonation>,
    /// Part by part, in the order of the day.
    pub parts: Vec<KegPart>,
}

/// Room that a keg needs over the drink, so that no drink comes into the gas line: judgement.
const LEAST_ROOM: f64 = 1.02;

fn kegs(request: &Request) -> Result<Kegs, Error> {
    let (drink, capacity) = (packaged(request)?.si(), request.or(Key::Keg, keg::USUAL_CAPACITY)?);
    let full = capacity / LEAST_ROOM;
    let count = whole_number_above(drink / full);
    Ok(Kegs {
        count,
        capacity: Volume::from_si(capacity),
        drink: Volume::from_si(drink / f64::from(count)),
    })
}

/// The least whole number that is not below `x`, and at least 1; a billionth over counts as none.
fn whole_number_above(x: f64) -> u32 {
    let down = (x - 1e-9) as u32;
    down.saturating_add(1).max(1)
}

/// What is asked of one part; `None` where nothing calls for it.
fn asked(spec: &'static Spec, whole: &Whole<'_>) -> Option<KegPart> {
    let mut working = Working::default();
    let blank = |answer| KegPart {
        place: spec.place,
        function: spec.function,
        request: Request::new(),
        part: Part { answer, working: Working::default() },
    };
    match whole.sound.and_then(|()| (spec.ask)(whole, Ask::new(spec.function, whole.request))) {
        Ok(None) => None,
        Err(error) => Some(blank(Err(error.renamed(|key| whole.request.name_of(key))))),
        Ok(Some(ask)) => {
            let answer = spec.function.answer(&ask.request, &mut working).map_err(|error| ask.renamed(error));
            Some(KegPart { request: ask.request, part: Part { answer, working }, ..blank(Err(Error::NotConverged { parameter: named(whole.request, Key::Carbonation) })) })
        }
    }
}

/// Kegs a batch. A carbonation that the request does not tell may follow from elsewhere (`made`).
pub(super) fn kegging(request: &Request, lists: &Lists<'_>, made: Option<Carbonation>) -> Result<Kegging, Error> {
    let (completed, sound) = complete(request, lists)?;
    let mut wanted = completed;
    if let Some(made) = made {
        wanted = wanted.carbonation(made);
    }
    // A drink of which sugar was weighed is told by what the sugar makes.
    let wanted = wanted.without(Key::Mass);
    let request = &wanted;
    let kegs = Part::of(request, |_| {
        sound?;
        let context = request.context(BasisName::Handbook)?;
        Ok(Answer { value: kegs(request)?, context, notes: Notes::default() })
    });
    let start = Part::of(request, |steps| {
        sound?;
        let context = request.context(BasisName::Handbook)?;
        let told = |value| Ok(Answer { value, context, notes: Notes::default() });
        if request.get(Key::Start).is_some() {
            return told(Carbonation::from_si(request.or(Key::Start, 0.0)?));
        }
        match before(request)? {
            Before::Measured(value) => told(value),
            Before::Fermented(fermenter) => open::residual_co2(&fermenter, &context, steps),
        }
    });
    let serving = request.number(Key::Serving).unwrap_or(SERVING);
    let mut whole = Whole {
        request,
        lists,
        sound,
        kegs: kegs.answer.as_ref().map(|answer| answer.value).map_err(|error| *error),
        target: carbonation(request).map(Carbonation::si),
        start: start.answer.as_ref().map(|answer| answer.value.si()).map_err(|error| *error),
        serving,
        regulator: Err(Error::NotConverged { parameter: named(request, Key::Carbonation) }),
    };
    let mut parts: Vec<KegPart> = Vec::new();
    for spec in PARTS {
        let Some(part) = asked(spec, &whole) else { continue };
        if part.place == REGULATOR {
            whole.regulator = match (&part.part.answer, part.value("", Key::Gauge)) {
                (Err(error), _) => Err(*error),
                (Ok(_), gauge) => gauge.ok_or(Error::NotConverged { parameter: named(request, Key::Carbonation) }),
            };
        }
        parts.push(part);
    }
    Ok(Kegging { request: completed, sure: None, serving: Temperature::from_si(serving), kegs, start, parts })
}

/// The part that says how the regulator is set.
pub(super) const REGULATOR: &str = "regulator";

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

    /// Whether any part carries a `danger` caution.
    pub fn danger(&self) -> bool {
        self.notes().iter().any(|notes| notes.cautions.any(Level::Danger))
    }

    /// What the parts noted, in their order.
    pub(super) fn notes(&self) -> Vec<&Notes> {
        let first = self.start.answer.as_ref().ok().map(|answer| &answer.notes);
        let parts = self.parts.iter().filter_map(|part| part.part.answer.as_ref().ok());
        first.into_iter().chain(parts.map(|answer| &answer.notes)).collect()
    }
}
