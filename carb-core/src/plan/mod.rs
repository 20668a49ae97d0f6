//! Whole jobs: bottling, and a packaging day with both ways of packaging. Each part is an answer or an error of its own.

pub mod bottles;
pub mod bottling;
mod completed;
mod contents;
#[cfg(feature = "json")]
pub mod json;
#[cfg(feature = "json")]
mod json_bottling;
#[cfg(feature = "json")]
mod json_uncertainty;
#[cfg(feature = "json")]
mod node;
mod page;
mod readiness;
mod ready;
pub mod safety;
#[cfg(feature = "json")]
pub mod schema;
pub mod sure;
mod text;
mod text_bottling;

use crate::balance::pressure::Pressure;
use crate::basis::function::optional;
use crate::basis::{Answer, BasisName, Input, Kind, Lists, Request};
use crate::error::Error;
use crate::evidence::{Level, Notes, Working};
use crate::kegging;
use crate::quantity::{Key, Name, Temperature};
use crate::table::inputs::carbonation;
use alloc::vec::Vec;
pub use bottles::{BottleRow, FillTotals, Verdict};
pub use bottling::{Bottling, Expectation, Storage};
pub use readiness::{Point, Readiness};
pub use ready::Ready;
pub use sure::{Sure, bottle_with, plan_with};

/// What a plan takes beside the inputs of its bottling.
static KEG_INPUTS: &[Input] = &[optional(Key::Serving, "4 °C")];

/// The inputs of a plan.
pub fn inputs() -> Vec<Input> {
    bottling::INPUTS.iter().chain(KEG_INPUTS).copied().collect()
}

/// A part of a plan: an answer or an error, and the working.
#[derive(Clone, Debug)]
pub struct Part<T> {
    /// The answer.
    pub answer: Result<Answer<T>, Error>,
    /// How it was found, as far as it was.
    pub working: Working,
}

impl<T> Part<T> {
    fn of(request: &Request, find: impl FnOnce(&mut Working) -> Result<Answer<T>, Error>) -> Self {
        let mut working = Working::default();
        let answer = find(&mut working).map_err(|error| error.renamed(|key| request.name_of(key)));
        Self { answer, working }
    }

    /// A part that may have nothing to say.
    fn some(request: &Request, find: impl FnOnce(&mut Working) -> Result<Option<Answer<T>>, Error>) -> Option<Self> {
        let mut working = Working::default();
        let answer = find(&mut working).map_err(|error| error.renamed(|key| request.name_of(key)));
        answer.transpose().map(|answer| Self { answer, working })
    }

    /// The value, if there is one.
    pub fn value(&self) -> Option<&T> {
        self.answer.as_ref().ok().map(|answer| &answer.value)
    }
}

/// Where bottles are kept.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Place {
    /// Its name in answers.
    pub name: &'static str,
    /// Which field says how warm it is there.
    pub key: Key,
    /// How warm it is.
    pub temperature: Temperature,
}

/// The place where filled bottles are heated.
const PASTEURISING: &str = "pasteurising";

/// A packaging day.
#[derive(Clone, Debug)]
#[must_use]
pub struct Plan {
    /// What was asked.
    pub request: Request,
    /// How sure the main answers are, where that was asked for.
    pub sure: Option<Sure>,
    /// In bottles.
    pub bottling: Bottling,
    /// Temperature at which the keg is served.
    pub serving: Temperature,
    /// The regulator pressure.
    pub regulator: Part<Pressure>,
}

const SERVING: f64 = 277.15;

/// Plans a packaging day.
///
/// ```
/// use carb_core::basis::{Kind, Lists, Request};
/// use carb_core::plan::plan;
/// use carb_core::quantity::{Carbonation, Length, Temperature, Volume};
/// let request = Request::new()
///     .beverage(Kind::Beer)
///     .packaged(Volume::from_l(19.2))
///     .carbonation(Carbonation::from_volumes(2.4))
///     .warmest(Temperature::from_c(20.5))
///     .altitude(Length::from_m(240.0));
/// let plan = plan(&request, &Lists::new())?;
/// let dose = plan.bottling.priming.value().expect("a dose");
/// assert_eq!(format!("{:.1}", dose.mass.g()), "116.2");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Only for a field that no plan takes, or two that exclude each other; everything else that a request can hold is an error
/// of the part it concerns.
pub fn plan(request: &Request, lists: &Lists<'_>) -> Result<Plan, Error> {
    let bottling = job(request, lists, "plan", &inputs())?;
    let serving = Temperature::from_si(request.number(Key::Serving).unwrap_or(SERVING));
    let whole = &bottling.request;
    let regulator = Part::of(whole, |steps| {
        let serving = whole.or(Key::Serving, SERVING).map(Temperature::from_si)?;
        let context = whole.context(BasisName::Handbook)?;
        // Where the sugar was weighed, what it makes is what is wanted.
        let target = match bottling.primed.value() {
            Some(drink) if bottling.was_weighed() => drink.carbonation,
            _ => carbonation(whole)?,
        };
        kegging::pressure::keg_pressure(target, serving, &context, steps)
    });
    Ok(Plan { request: *request, sure: None, bottling, serving, regulator })
}

/// Bottles a batch: is it finished, how much of what primes it, which bottles to fill, whether they stand it, and when they
/// are ready.
///
/// # Errors
/// As [`plan`].
pub fn bottle(request: &Request, lists: &Lists<'_>) -> Result<Bottling, Error> {
    job(request, lists, "bottling", bottling::INPUTS)
}

fn job(request: &Request, lists: &Lists<'_>, name: &'static str, inputs: &[Input]) -> Result<Bottling, Error> {
    if let Some(parameter) = request.given().find(|name| !inputs.iter().any(|input| input.key == name.key)) {
        return Err(Error::NotTaken { parameter, function: name });
    }
    // What contradicts itself is no request for any part.
    if let Err(error @ Error::Excluded { .. }) = request.air() {
        return Err(error);
    }
    bottling::bottling(request, lists)
}

impl Plan {
    /// Whether any part carries a `danger` caution, or a bottle has no pressure because it would burst or be full: a
    /// command line then exits non-zero.
    pub fn danger(&self) -> bool {
        self.bottling.beyond_every_bottle().is_some()
            || self.all_notes().iter().any(|notes| notes.cautions.any(Level::Danger))
    }

    /// Whether either way of packaging has an answer; a command line without one exits non-zero too.
    pub fn answered(&self) -> bool {
        self.bottling.answered() || self.regulator.answer.is_ok()
    }

    /// What the parts noted, in their order.
    fn all_notes(&self) -> Vec<&Notes> {
        let mut all = self.bottling.notes();
        all.extend(self.regulator.answer.as_ref().ok().map(|answer| &answer.notes));
        all
    }
}

/// Whether the drink has fermented, so that it may hold more CO2 than equilibrium.
fn fermented(kind: Kind) -> bool {
    !matches!(kind, Kind::Water | Kind::SoftDrink)
}

fn named(request: &Request, key: Key) -> Name {
    request.name_of(key).unwrap_or(Name::first(key))
}
