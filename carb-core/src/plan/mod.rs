//! A whole packaging day: one request, both ways of packaging, each part an answer or an error of its own.

#[cfg(feature = "json")]
pub mod json;
#[cfg(feature = "json")]
mod json_uncertainty;
#[cfg(feature = "json")]
mod node;
pub mod safety;
#[cfg(feature = "json")]
pub mod schema;
pub mod sure;
mod text;

use crate::balance::pressure::Pressure;
use crate::balance::{open, sealed};
use crate::basis::answer::Both;
use crate::basis::function::{one_of, optional, required};
use crate::basis::{Answer, Basis, BasisName, Context, Input, Kind, Request, ResidualModel};
use crate::bottling::package::{
    Contents, EXPECTED_CO2, Keeping, PackagePressure, USUAL_HEADSPACE, WORST_CO2, note_contents, pressure_of_contents,
    worst_co2,
};
use crate::bottling::priming::{self, EXTRACT_CO2, PrimingDose, extract_co2};
use crate::error::Error;
use crate::evidence::caution::{Caution, SUPERSATURATION};
use crate::evidence::{Level, NoSteps, Notes, Steps, Working};
use crate::kegging;
use crate::property::fermentable::{self, FERMENTABLES, Fermentable};
use crate::quantity::{Carbonation, Concentration, Key, Mass, Percent, Temperature};
use crate::table::functions::{
    ABV, BEVERAGE, CUSTOM, EXTRACT, FERMENTABLE, RESIDUAL, SEA_LEVEL, SOLUBILITY, USUAL_ROOM, YEAST, YIELD_FACTOR,
    carbonation, note_headspace, wanted, warmest,
};
use alloc::vec::Vec;
pub use sure::{Sure, plan_with};

/// The inputs of a plan.
pub static INPUTS: &[Input] = &[
    optional(Key::Title, "no title"),
    BEVERAGE,
    ABV,
    EXTRACT,
    FERMENTABLE,
    YEAST,
    required(Key::Packaged),
    required(Key::Carbonation),
    required(Key::Warmest),
    optional(Key::Filling, "the warmest"),
    optional(Key::Serving, "4 °C"),
    optional(Key::Cellar, "12 °C"),
    optional(Key::Room, "20 °C"),
    optional(Key::HotDay, "35 °C"),
    one_of("ambient", Key::Altitude),
    one_of("ambient", Key::Ambient),
    SEA_LEVEL,
    optional(Key::Headspace, "4 % of the liquid, and noted"),
    optional(Key::Sugar, "sucrose"),
    optional(Key::SugarWater, CUSTOM),
    optional(Key::SugarGravity, CUSTOM),
    optional(Key::SugarFermentable, CUSTOM),
    optional(Key::SugarKind, CUSTOM),
    optional(Key::Basis, "handbook, for the dose and the keg; package pressures always take the physical one"),
    optional(Key::Model, "that of the basis for the drink"),
    optional(Key::ResidualModel, "that of the basis"),
    optional(Key::Yield, "that of the basis"),
    optional(Key::CountHeadspace, "that of the basis"),
    SOLUBILITY,
    RESIDUAL,
    YIELD_FACTOR,
    optional(Key::Working, "false"),
];

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

    /// The value, if there is one.
    pub fn value(&self) -> Option<&T> {
        self.answer.as_ref().ok().map(|answer| &answer.value)
    }
}

/// What the mass balance expects of the dose.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Expectation {
    /// CO2 dissolved at room temperature.
    pub expected: Carbonation,
    /// The same with the least yield.
    pub low: Carbonation,
    /// The same with the worst case's CO2.
    pub high: Carbonation,
    /// The dose by which the balance reaches the target.
    pub dose: Option<PrimingDose>,
}

/// The bottle at one temperature.
#[derive(Clone, Debug)]
pub struct Storage {
    /// Where: `cellar`, `room` or `hot_day`.
    pub place: &'static str,
    /// Which field says how warm it is there.
    pub key: Key,
    /// How warm it is.
    pub temperature: Temperature,
    /// The pressure.
    pub pressure: Part<PackagePressure>,
}

/// A packaging day.
#[derive(Clone, Debug)]
#[must_use]
pub struct Plan {
    /// What was asked.
    pub request: Request,
    /// CO2 left after fermentation.
    pub residual: Part<Carbonation>,
    /// The sugar chosen.
    pub sugar: Fermentable,
    /// Its dose.
    pub priming: Part<PrimingDose>,
    /// How sure the main answers are, where that was asked for.
    pub sure: Option<Sure>,
    /// The dose of every sugar.
    pub sugars: Vec<(&'static Fermentable, Result<PrimingDose, Error>)>,
    /// What the balance expects of the dose.
    pub expectation: Part<Expectation>,
    /// The bottle in the cellar, in the room, on a hot day.
    pub storage: Vec<Storage>,
    /// Temperature at which the keg is served.
    pub serving: Temperature,
    /// The regulator pressure.
    pub regulator: Part<Pressure>,
}

/// Yield in the least favourable case for carbonation, percent of theory: Balling's figure for maltose.
const LEAST_YIELD: f64 = 90.0;

const SERVING: f64 = 277.15;
const CELLAR: f64 = 285.15;
const HOT_DAY: f64 = 308.15;

/// Plans a packaging day.
///
/// ```
/// use carb_core::basis::{Kind, Request};
/// use carb_core::plan::plan;
/// use carb_core::quantity::{Carbonation, Length, Temperature, Volume};
/// let request = Request::new()
///     .beverage(Kind::Beer)
///     .packaged(Volume::from_l(19.2))
///     .carbonation(Carbonation::from_volumes(2.4))
///     .warmest(Temperature::from_c(20.5))
///     .altitude(Length::from_m(240.0));
/// let plan = plan(&request)?;
/// let dose = plan.priming.value().expect("a dose");
/// assert_eq!(format!("{:.1}", dose.mass.g()), "116.2");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Only for a field that no plan takes, or two that exclude each other; everything else that a request can hold is an error
/// of the part it concerns.
pub fn plan(request: &Request) -> Result<Plan, Error> {
    if let Some(parameter) = request.given().find(|name| !INPUTS.iter().any(|input| input.key == name.key)) {
        return Err(Error::NotTaken { parameter, function: "plan" });
    }
    // What contradicts itself is no request for any part.
    if let Err(error @ Error::Excluded { .. }) = request.air() {
        return Err(error);
    }
    let temperature = |key, usual| request.or(key, usual).map(Temperature::from_si);
    let named_sugar = request.priming_sugar();
    let chosen = named_sugar.unwrap_or(fermentable::SUCROSE);
    let residual = Part::of(request, |steps| {
        let warmest = warmest(request)?;
        open::residual_co2(warmest, &request.context(BasisName::Handbook)?, steps)
    });
    let priming = Part::of(request, |steps| {
        let context = request.context(BasisName::Handbook)?;
        let mut answer = priming::priming_sugar(&wanted(request)?, &named_sugar?, &context, steps)?;
        if context.basis.count_headspace {
            note_headspace(request, &mut answer);
        }
        Ok(answer)
    });
    let sugars = FERMENTABLES
        .iter()
        .take(fermentable::USUAL)
        .map(|sugar| {
            let dose = Part::of(request, |steps| {
                priming::priming_sugar(&wanted(request)?, sugar, &request.context(BasisName::Handbook)?, steps)
            });
            (sugar, dose.answer.map(|answer| answer.value))
        })
        .collect();
    let contents = |steps: &mut dyn Steps, notes: &mut Notes| {
        let dose = match &priming.answer {
            Ok(answer) => answer.value,
            // What the drink makes without any sugar is what must be known now.
            Err(Error::TargetBelowHeld { .. }) => {
                PrimingDose { mass: Mass::from_si(0.0), dose: Concentration::from_si(0.0) }
            }
            Err(error) => return Err(*error),
        };
        contents(request, &chosen, &dose, &mut Both(steps, notes))
    };
    let expectation = Part::of(request, |steps| expectation(request, &chosen, &contents, steps));
    let places = [("cellar", Key::Cellar, CELLAR), ("room", Key::Room, USUAL_ROOM), ("hot_day", Key::HotDay, HOT_DAY)];
    let storage = places
        .into_iter()
        .map(|(place, key, usual)| Storage {
            place,
            key,
            temperature: Temperature::from_si(request.number(key).unwrap_or(usual)),
            pressure: Part::of(request, |steps| {
                let keeping = keeping(request, temperature(key, usual)?)?;
                let mut notes = Notes::default();
                let found = contents(steps, &mut notes)?;
                let mut answer = pressure_of_contents(found.package, &keeping, &physical(request)?, steps)
                    .map_err(|error| error.renamed(|k| (k == Key::Temperature).then(|| named(request, key))))?;
                answer.notes.join(&notes);
                note_contents(found.package.worst, found.still_to_come, &mut answer.notes.cautions);
                note_headspace(request, &mut answer);
                Ok(answer)
            }),
        })
        .collect();
    let serving = Temperature::from_si(request.number(Key::Serving).unwrap_or(SERVING));
    let regulator = Part::of(request, |steps| {
        let serving = temperature(Key::Serving, SERVING)?;
        let context = request.context(BasisName::Handbook)?;
        kegging::pressure::keg_pressure(carbonation(request)?, serving, &context, steps)
    });
    let sure = None;
    Ok(Plan {
        request: *request,
        residual,
        sugar: chosen,
        priming,
        sure,
        sugars,
        expectation,
        storage,
        serving,
        regulator,
    })
}

impl Plan {
    /// Whether any part carries a `danger` caution, or a bottle has no pressure because it would burst or be full: a
    /// command line then exits non-zero.
    pub fn danger(&self) -> bool {
        self.beyond_every_bottle().is_some() || self.danger_noted()
    }

    /// Whether either way of packaging has an answer; a command line without one exits non-zero too.
    pub fn answered(&self) -> bool {
        self.priming.answer.is_ok()
            || self.storage.iter().any(|s| s.pressure.answer.is_ok())
            || self.regulator.answer.is_ok()
    }

    /// The error that says that no bottle would hold.
    fn beyond_every_bottle(&self) -> Option<&Error> {
        let errors = self.storage.iter().filter_map(|place| place.pressure.answer.as_ref().err());
        errors.into_iter().find(|error| matches!(error, Error::PressureTooHigh { .. } | Error::VesselFull { .. }))
    }

    fn danger_noted(&self) -> bool {
        self.all_notes().iter().any(|notes| notes.cautions.any(Level::Danger))
    }

    /// What the parts noted, in their order.
    fn all_notes(&self) -> Vec<&Notes> {
        fn notes<T>(part: &Part<T>) -> Option<&Notes> {
            part.answer.as_ref().ok().map(|answer| &answer.notes)
        }
        let parts = [notes(&self.residual), notes(&self.priming), notes(&self.expectation), notes(&self.regulator)];
        let stored = self.storage.iter().map(|s| notes(&s.pressure));
        parts.into_iter().chain(stored).flatten().collect()
    }
}

/// Whether the drink has fermented, so that it may hold more CO2 than equilibrium.
fn fermented(kind: Kind) -> bool {
    !matches!(kind, Kind::Water | Kind::SoftDrink)
}

fn named(request: &Request, key: Key) -> crate::quantity::Name {
    request.name_of(key).unwrap_or(crate::quantity::Name::first(key))
}

/// The mass balance, whatever basis the caller chose for the dose; the caller's single assumptions stay.
fn physical(request: &Request) -> Result<Context, Error> {
    let mut context = request.context(BasisName::Physical)?;
    let physical = Basis::physical();
    context.basis.name = physical.name;
    context.basis.residual = physical.residual;
    context.basis.count_headspace = physical.count_headspace;
    context.basis.yield_percent = request.or(Key::Yield, physical.yield_percent)?;
    Ok(context)
}

fn keeping(request: &Request, temperature: Temperature) -> Result<Keeping, Error> {
    let warmest = warmest(request)?;
    Ok(Keeping {
        temperature,
        headspace: Percent::from_si(request.or(Key::Headspace, USUAL_HEADSPACE)?),
        filling: Temperature::from_si(request.or(Key::Filling, warmest.si())?),
    })
}

struct Found {
    package: Contents,
    /// With the least yield.
    least: f64,
    /// What is still fermentable would add at most.
    still_to_come: f64,
}

/// What a dose puts into the package: as the balance expects it, at least, and at worst.
fn contents(
    request: &Request,
    sugar: &Fermentable,
    dose: &PrimingDose,
    steps: &mut impl Steps,
) -> Result<Found, Error> {
    let context = physical(request)?;
    let warmest = warmest(request)?;
    let factor = context.basis.residual_factor;
    let held = open::residual_co2(warmest, &context, steps)?.value.si();
    // In the worst case the larger of the two models, the drink's own, and no factor below 1.
    let basis = &context.basis;
    let at_worst = Basis {
        model: None,
        residual_factor: factor.max(1.0),
        solubility_factor: basis.solubility_factor.max(1.0),
        ..*basis
    };
    let worst_residual = |model, steps: &mut dyn Steps| {
        let context = context.with_basis(Basis { residual: model, ..at_worst });
        open::residual_co2(warmest, &context, &mut &mut *steps).map(|answer| answer.value.si())
    };
    let larger = worst_residual(ResidualModel::Table, steps)?.max(worst_residual(ResidualModel::Equilibrium, steps)?);
    let (d, left) = (dose.dose.si(), context.beverage.fermentable()?);
    let mut made = |y: f64, percent: f64, factor: f64, matter: f64| {
        let co2 = extract_co2(y, percent, factor, matter);
        if matter > 0.0 {
            steps.record(&EXTRACT_CO2, &[y, percent, factor, matter], co2);
        }
        co2
    };
    let (likely, most) = (sugar.theoretical_yield(), sugar.highest_yield());
    let extract = fermentable::extract_yield();
    let (from_sugar, from_extract) = (
        made(likely, basis.yield_percent, basis.yield_factor, d),
        made(extract, basis.yield_percent, basis.yield_factor, left),
    );
    let at_most = basis.most_yield();
    let (most_sugar, most_extract) = (made(most, at_most, 1.0, d), made(extract, at_most, 1.0, left));
    // The least that the sugar may give: Balling's share, or a poor sample of it, and never more than is expected.
    let share = LEAST_YIELD.min(basis.yield_percent);
    let poorest = sugar.yield_range.0.min(likely) * basis.yield_percent.min(100.0) / 100.0;
    let least_yield = (likely * share / 100.0).min(poorest);
    let expected = held + from_sugar + from_extract;
    let worst = worst_co2(larger, most_sugar, most_extract);
    let (_, limit) = Key::Carbonation.limits().unwrap_or_default();
    if worst > limit {
        let parameter = named(request, if most_extract > most_sugar { Key::Fermentable } else { Key::Carbonation });
        return Err(Error::PressureTooHigh { parameter, limit: sealed::MOST });
    }
    steps.record(&EXPECTED_CO2, &[held, from_sugar, from_extract], expected);
    steps.record(&WORST_CO2, &[larger, most_sugar, most_extract], worst);
    Ok(Found {
        package: Contents { expected, worst },
        least: held
            + extract_co2(least_yield, 100.0, basis.yield_factor, d)
            + extract_co2(extract, share, basis.yield_factor, left),
        still_to_come: most_extract,
    })
}

type ContentsOf<'a> = dyn Fn(&mut dyn Steps, &mut Notes) -> Result<Found, Error> + 'a;

fn expectation(
    request: &Request,
    sugar: &Fermentable,
    contents: &ContentsOf<'_>,
    steps: &mut Working,
) -> Result<Answer<Expectation>, Error> {
    let context = physical(request)?;
    let room = Temperature::from_si(request.or(Key::Room, USUAL_ROOM)?);
    let keeping = keeping(request, room)?;
    let mut notes = Notes::default();
    let found = contents(steps, &mut notes)?;
    let dissolved = |content: f64, steps: &mut dyn Steps| {
        let both = Contents { expected: content, worst: content };
        pressure_of_contents(both, &keeping, &context, &mut &mut *steps)
    };
    let mut answer = dissolved(found.package.expected, steps)?;
    let low = dissolved(found.least, &mut NoSteps)?;
    let high = dissolved(found.package.worst, &mut NoSteps)?;
    let dose = priming::priming_sugar(&wanted(request)?, sugar, &context, &mut NoSteps).ok();
    answer.notes.join(&notes);
    if fermented(context.beverage.kind) {
        answer.notes.cautions.add(Caution::of(&SUPERSATURATION, answer.value.dissolved.si()));
    }
    context.note_model(&mut answer.notes.cautions);
    note_headspace(request, &mut answer);
    Ok(answer.map(|package| Expectation {
        expected: package.dissolved,
        low: low.value.dissolved,
        high: high.value.dissolved,
        dose: dose.map(|d| d.value),
    }))
}
