//! Whole jobs: bottling, kegging, and a packaging day with both. Each part is an answer or an error of its own.

mod ask;
pub mod bottles;
pub mod bottling;
mod completed;
mod contents;
#[cfg(feature = "json")]
pub mod json;
#[cfg(feature = "json")]
mod json_bottling;
#[cfg(feature = "json")]
mod json_kegging;
#[cfg(feature = "json")]
pub mod json_tables;
#[cfg(feature = "json")]
mod json_uncertainty;
pub mod keg_inputs;
mod keg_parts;
pub mod kegging;
#[cfg(feature = "json")]
pub(crate) mod node;
pub(crate) mod page;
mod readiness;
mod ready;
pub mod safety;
#[cfg(feature = "json")]
pub mod schema;
pub mod sure;
mod text;
mod text_bottling;
mod text_choice;
mod text_kegging;

use crate::basis::{Answer, Input, Kind, List, Lists, Request};
use crate::error::Error;
use crate::evidence::{Level, Notes, Working};
use crate::quantity::{Key, Name, Temperature};
use alloc::vec::Vec;
pub use bottles::{BottleRow, FillTotals, Verdict};
pub use bottling::{Bottling, Expectation, Storage};
pub use kegging::{Day, KegPart, Kegging, Kegs};
pub use readiness::{Point, Readiness};
pub use ready::Ready;
pub use sure::{Sure, bottle_with, keg_with, plan_with};

/// The inputs of a plan: those of bottling, and what kegging takes beside them.
pub fn inputs() -> Vec<Input> {
    let kegging =
        keg_inputs::INPUTS.iter().filter(|input| !bottling::INPUTS.iter().any(|known| known.key == input.key));
    bottling::INPUTS.iter().chain(kegging).copied().collect()
}

/// The lists of a plan: those of bottling, and what kegging takes beside them.
pub fn takes() -> Vec<&'static List> {
    let kegging = keg_inputs::TAKES.iter().filter(|list| !bottling::TAKES.iter().any(|known| known.name == list.name));
    bottling::TAKES.iter().chain(kegging).copied().collect()
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
    /// In kegs.
    pub kegging: Kegging,
}

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
    check(request, lists, "plan", &inputs(), &takes())?;
    let bottling = bottling::bottling(request, lists)?;
    // Where the sugar was weighed, what it makes is what is wanted.
    let primed = bottling.primed.value().filter(|_| bottling.was_weighed());
    let sugar = bottling.priming.value().map(|dose| dose.mass);
    let known = kegging::FromBottles { made: primed.map(|drink| drink.carbonation), sugar };
    let kegging = kegging::kegging(request, lists, known)?;
    Ok(Plan { request: *request, sure: None, bottling, kegging })
}

/// Bottles a batch: is it finished, how much of what primes it, which bottles to fill, whether they stand it, and when they
/// are ready.
///
/// # Errors
/// As [`plan`].
pub fn bottle(request: &Request, lists: &Lists<'_>) -> Result<Bottling, Error> {
    check(request, lists, "bottling", bottling::INPUTS, bottling::TAKES)?;
    bottling::bottling(request, lists)
}

/// Kegs a batch: what pressure for how long, how it is purged, how much gas, which line, and what a hot day does.
///
/// # Errors
/// As [`plan`].
pub fn keg(request: &Request, lists: &Lists<'_>) -> Result<Kegging, Error> {
    check(request, lists, "kegging", keg_inputs::INPUTS, keg_inputs::TAKES)?;
    kegging::kegging(request, lists, kegging::FromBottles::default())
}

/// Checks that a request is one for a job.
fn check(
    request: &Request,
    lists: &Lists<'_>,
    name: &'static str,
    inputs: &[Input],
    takes: &[&List],
) -> Result<(), Error> {
    if let Some(parameter) = request.given().find(|name| !inputs.iter().any(|input| input.key == name.key)) {
        return Err(Error::NotTaken { parameter, function: name });
    }
    if let Some((list, _)) = lists.given().find(|(list, _)| !takes.iter().any(|known| known.name == list.name)) {
        return Err(Error::WrongList { list: list.name, advice: "this job takes no such list: leave it out" });
    }
    // What contradicts itself is no request for any part.
    if let Err(error @ Error::Excluded { .. }) = request.air() {
        return Err(error);
    }
    Ok(())
}

impl Plan {
    /// Whether any part carries a `danger` caution, or a bottle has no pressure because it would burst or be full: a
    /// command line then exits non-zero.
    pub fn danger(&self) -> bool {
        self.bottling.beyond_every_bottle().is_some()
            || self.kegging.beyond_every_keg().is_some()
            || self.all_notes().iter().any(|notes| notes.cautions.any(Level::Danger))
    }

    /// Whether either way of packaging has an answer; a command line without one exits non-zero too.
    pub fn answered(&self) -> bool {
        self.bottling.answered() || self.kegging.answered()
    }

    /// What the parts noted, in their order.
    fn all_notes(&self) -> Vec<&Notes> {
        let mut all = self.bottling.notes();
        all.extend(self.kegging.notes());
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
