//! How sure a plan is: the dose, what the weighed dose does in the bottle, the regulator.

use super::bottling::{Bottling, HOT_DAY, INPUTS};
use super::completed::completed;
use super::contents::{Primer, contents, keeping, physical, primed_batch};
use super::kegging::{self, Kegging, REGULATOR};
use super::{Plan, bottle, inputs, keg, keg_inputs, plan};
use crate::basis::{BasisName, Input, Lists, Request};
use crate::bottling::package::pressure_of_contents;
use crate::bottling::priming::{self, PrimingDose};
use crate::error::Error;
use crate::evidence::{NoSteps, Notes};
use crate::quantity::{Carbonation, Concentration, Key, Mass, Temperature};
use crate::table::inputs::{USUAL_ROOM, carbonation};
use crate::uncertainty::{Doubts, Estimate, estimate, sources};
use alloc::vec;
use alloc::vec::Vec;

/// How sure the main answers of a plan are. What has no answer has no estimate.
#[derive(Clone, Debug, Default)]
pub struct Sure {
    /// Mass of sugar.
    pub dose: Option<Estimate>,
    /// CO2 dissolved at the room's temperature in bottles primed with the mass that the plan says.
    pub carbonation: Option<Estimate>,
    /// Their pressure on a hot day, gauge: the expected one. The worst case is a bound and has no interval.
    pub bottle: Option<Estimate>,
    /// The regulator pressure, gauge.
    pub regulator: Option<Estimate>,
    /// CO2 that a keg takes.
    pub gas: Option<Estimate>,
    /// Pressure of a keg that warms on a hot day, gauge: the expected one.
    pub warmed: Option<Estimate>,
}

impl Sure {
    /// The estimates with their name, the noun of their answer and what they measure.
    pub fn parts(&self) -> impl Iterator<Item = (&'static str, &'static str, Key, &Estimate)> {
        let all = [
            ("priming", "", Key::Mass, &self.dose),
            ("carbonation", "expected", Key::Carbonation, &self.carbonation),
            ("hot_day", "expected", Key::Gauge, &self.bottle),
            ("regulator", "", Key::Gauge, &self.regulator),
            ("gas", "total", Key::Gas, &self.gas),
            ("warmed", "expected", Key::Gauge, &self.warmed),
        ];
        all.into_iter().filter_map(|(place, noun, key, found)| Some((place, noun, key, found.as_ref()?)))
    }
}

/// A plan that says how sure it is, where doubts are given.
///
/// # Errors
/// As [`plan`], and where a doubt is about something that was not given.
pub fn plan_with(request: &Request, lists: &Lists<'_>, doubts: Option<&Doubts>) -> Result<Plan, Error> {
    let mut found = plan(request, lists)?;
    if let Some(doubts) = doubts {
        let inputs = inputs();
        check(doubts, request, &inputs, "plan")?;
        let bottles = sure(&found.bottling, request, lists, doubts, &inputs)?;
        let kegs = kegs(request, lists, doubts, &inputs)?;
        found.sure = Some(Sure { regulator: kegs.regulator, gas: kegs.gas, warmed: kegs.warmed, ..bottles });
    }
    Ok(found)
}

/// A kegging job that says how sure it is, where doubts are given.
///
/// # Errors
/// As [`keg`].
pub fn keg_with(request: &Request, lists: &Lists<'_>, doubts: Option<&Doubts>) -> Result<Kegging, Error> {
    let mut found = keg(request, lists)?;
    if let Some(doubts) = doubts {
        check(doubts, request, keg_inputs::INPUTS, "kegging")?;
        found.sure = Some(kegs(request, lists, doubts, keg_inputs::INPUTS)?);
    }
    Ok(found)
}

/// A bottling job that says how sure it is, where doubts are given.
///
/// # Errors
/// As [`bottle`], and where a doubt is about something that was not given.
pub fn bottle_with(request: &Request, lists: &Lists<'_>, doubts: Option<&Doubts>) -> Result<Bottling, Error> {
    let mut found = bottle(request, lists)?;
    if let Some(doubts) = doubts {
        check(doubts, request, INPUTS, "bottling")?;
        found.sure = Some(sure(&found, request, lists, doubts, INPUTS)?);
    }
    Ok(found)
}

fn check(doubts: &Doubts, request: &Request, inputs: &[Input], function: &'static str) -> Result<(), Error> {
    if let Some(key) = doubts.keys().find(|key| !inputs.iter().any(|input| input.key == *key)) {
        return Err(Error::NotTaken { parameter: crate::quantity::Name::first(key), function });
    }
    doubts.check(request, None)
}

fn one(found: Result<Vec<Estimate>, Error>) -> Option<Estimate> {
    found.ok().and_then(|list| list.into_iter().next())
}

/// How sure the bottles are.
fn sure(
    job: &Bottling,
    request: &Request,
    lists: &Lists<'_>,
    doubts: &Doubts,
    inputs: &[Input],
) -> Result<Sure, Error> {
    // What follows from gravities and losses follows anew from every draw of them.
    let whole = |request: &Request| completed(request, lists);
    let by = |default| sources(request, doubts, inputs, default);
    let (handbook, balance) = (by(BasisName::Handbook)?, by(BasisName::Physical)?);

    let dose = one(estimate(
        &|request| {
            let request = &whole(request)?;
            let context = request.context(BasisName::Handbook)?;
            let sugar = request.priming_sugar()?;
            let answer = priming::priming_sugar(
                carbonation(request)?,
                &primed_batch(request, lists)?,
                &sugar,
                &context,
                &mut NoSteps,
            )?;
            Ok(vec![answer.value.mass.si()])
        },
        request,
        &handbook,
    ));
    // The sugar is weighed: whatever the truth is, it is this much that went in.
    let mass = job.priming.value().map(|dose| dose.mass.si());
    let in_bottles =
        mass.and_then(|mass| estimate(&|request| bottles(&whole(request)?, lists, mass), request, &balance).ok());
    let mut in_bottles = in_bottles.into_iter().flatten();
    let (carbonation_found, bottle) = (in_bottles.next(), in_bottles.next());
    Ok(Sure { dose, carbonation: carbonation_found, bottle, ..Sure::default() })
}

/// How sure the kegs are.
fn kegs(request: &Request, lists: &Lists<'_>, doubts: &Doubts, inputs: &[Input]) -> Result<Sure, Error> {
    let of = |wanted: (&'static str, &'static str, Key), default: BasisName| {
        let sources = sources(request, doubts, inputs, default)?;
        let job = |request: &Request| kegging::values(request, lists, made(request, lists)?, &[wanted]);
        Ok::<_, Error>(one(estimate(&job, request, &sources)))
    };
    let by_physics = BasisName::Physical;
    Ok(Sure {
        regulator: of((REGULATOR, "", Key::Gauge), BasisName::Handbook)?,
        gas: of(("gas", "total", Key::Gas), BasisName::Handbook)?,
        warmed: of(("warmed", "expected", Key::Gauge), by_physics)?,
        ..Sure::default()
    })
}

/// What weighed sugar makes of the drink, by the request's basis; `None` where no sugar was weighed.
pub(super) fn made(request: &Request, lists: &Lists<'_>) -> Result<Option<Carbonation>, Error> {
    if request.get(Key::Mass).is_none() {
        return Ok(None);
    }
    let request = &completed(request, lists)?;
    let mass = Mass::from_si(request.or(Key::Mass, 0.0)?);
    let (batch, context) = (primed_batch(request, lists)?, request.context(BasisName::Handbook)?);
    let drink = priming::primed_carbonation(mass, &batch, &request.priming_sugar()?, &context, &mut NoSteps)?;
    Ok(Some(drink.value.carbonation))
}

/// What a mass of sugar does: CO2 dissolved at the room's temperature, and gauge pressure on a hot day, SI.
fn bottles(request: &Request, lists: &Lists<'_>, mass: f64) -> Result<Vec<f64>, Error> {
    let batch = crate::table::inputs::batch(request)?;
    let packaged = batch.packaged.si();
    // Where the sugar was weighed, how sure that is counts.
    let mass = Mass::from_si(request.number(Key::Mass).unwrap_or(mass));
    let dose = PrimingDose { mass, dose: Concentration::from_si(mass.si() / packaged) };
    let context = physical(request)?;
    let sugar = request.priming_sugar()?;
    let found = contents(
        request,
        &batch,
        lists,
        Primer { sugar: &sugar, dose: &dose, heaviest: None },
        &mut Notes::default(),
        &mut NoSteps,
    )?;
    let at = |key, usual| {
        let keeping = keeping(request, Temperature::from_si(request.or(key, usual)?))?;
        pressure_of_contents(found.package, &keeping, None, &context, &mut NoSteps)
    };
    let room = at(Key::Room, USUAL_ROOM)?.value.dissolved.si();
    Ok(vec![room, at(Key::HotDay, HOT_DAY)?.value.expected.gauge.si()])
}
