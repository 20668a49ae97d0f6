//! What a dose puts into the bottle: as the balance expects it, at least, and at worst.

use super::named;
use crate::balance::{open, sealed};
use crate::basis::lists::ADDITIONS;
use crate::basis::request::Addition;
use crate::basis::{Basis, BasisName, Context, Fermenter, Lists, Microbes, Request, ResidualModel};
use crate::bottling::addition::{self, AddedCo2, note_syrup};
use crate::bottling::before::Before;
use crate::bottling::package::{Contents, EXPECTED_CO2, Keeping, USUAL_HEADSPACE, WORST_CO2, worst_co2};
use crate::bottling::priming::{Batch, EXTRACT_CO2, PRIMED, PrimingDose, extract_co2};
use crate::error::Error;
use crate::evidence::caution::{Caution, WILD_DANGER};
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::fermentable::{self, Fermentable};
use crate::property::syrup;
use crate::quantity::{Carbonation, Concentration, Key, Mass, Percent, SpecificGravity, Temperature};
use crate::table::inputs::{batch, before, filling};

/// Yield in the least favourable case for carbonation, percent of theory: Balling's figure for maltose.
const LEAST_YIELD: f64 = 90.0;

/// The mass balance, whatever basis the caller chose for the dose; the caller's single assumptions stay.
pub(super) fn physical(request: &Request) -> Result<Context, Error> {
    let mut context = request.context(BasisName::Physical)?;
    let physical = Basis::physical();
    context.basis.name = physical.name;
    context.basis.residual = physical.residual;
    context.basis.count_headspace = physical.count_headspace;
    context.basis.count_syrup = request.flag(Key::CountSyrup).unwrap_or(physical.count_syrup);
    context.basis.yield_percent = request.or(Key::Yield, physical.yield_percent)?;
    Ok(context)
}

pub(super) fn keeping(request: &Request, temperature: Temperature) -> Result<Keeping, Error> {
    let headspace = Percent::from_si(request.or(Key::Headspace, USUAL_HEADSPACE)?);
    Ok(Keeping { temperature, headspace, filling: filling(request)? })
}

/// CO2 from what else was added: to be expected, and the most.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Added {
    /// To be expected, kg/m3.
    pub expected: f64,
    /// The most, kg/m3.
    pub most: f64,
    /// Alcohol by volume that it adds.
    pub abv: f64,
}

/// What is wrong with a dose is wrong with the mass that a row tells.
fn in_mass(error: Error, row: &Request, packaged: f64) -> Error {
    match error {
        Error::OutOfRange { parameter, value, low, high } if parameter.key == Key::Dose => Error::OutOfRange {
            parameter: named(row, Key::Mass),
            value: value * packaged,
            low: low * packaged,
            high: high * packaged,
        },
        other => other.renamed(|key| row.name_of(key)),
    }
}

/// What the additions make in so much drink, by a basis.
pub(super) fn added(
    request: &Request,
    lists: &Lists<'_>,
    packaged: f64,
    context: &Context,
    notes: &mut Notes,
    steps: &mut impl Steps,
) -> Result<Added, Error> {
    let mut all = Added::default();
    let wild = request.microbes() != Microbes::BrewingYeast;
    for row in lists.of(&ADDITIONS) {
        let what: Addition = row.addition()?;
        let dose = Concentration::from_si(row.or(Key::Mass, 0.0)? / packaged);
        let answer = addition::added_co2(&what, dose, context, steps).map_err(|error| in_mass(error, row, packaged))?;
        let AddedCo2 { expected, worst, abv } = answer.value;
        all.expected += expected.si();
        // Wild microbes ferment dextrins and lactose too.
        let dry = match &what {
            Addition::Sugar(sugar) => 1.0 - sugar.water,
            Addition::Sweetener(_) => 1.0,
        };
        let all_of_it = if wild { dry * fermentable::extract_yield() } else { 0.0 };
        all.most += worst.si().max(extract_co2(all_of_it, context.basis.most_yield(), 1.0, dose.si()));
        all.abv += abv.si();
        notes.join(&answer.notes);
        note_syrup(row.number(Key::SugarGravity).map(SpecificGravity::from_si), notes);
    }
    Ok(all)
}

/// The contents of the bottles.
#[derive(Clone, Copy, Debug)]
pub(super) struct Found {
    pub package: Contents,
    /// With the least yield.
    pub least: f64,
    /// What is still fermentable in the drink would add at most.
    pub still_to_come: f64,
    /// What is there without any priming, at worst: residual, and what is still fermentable.
    pub unprimed: f64,
}

/// CO2 left at worst: the larger of the two models, the drink's own, and no factor below 1; or what was measured.
fn worst_residual(before: &Before, context: &Context, steps: &mut impl Steps) -> Result<f64, Error> {
    let fermenter: &Fermenter = match before {
        Before::Measured(co2) => return Ok(co2.si()),
        Before::Fermented(fermenter) => fermenter,
    };
    let basis = &context.basis;
    let at_worst = Basis {
        model: None,
        residual_factor: basis.residual_factor.max(1.0),
        solubility_factor: basis.solubility_factor.max(1.0),
        ..*basis
    };
    let mut by = |model| {
        let context = context.with_basis(Basis { residual: model, ..at_worst });
        open::residual_co2(fermenter, &context, steps).map(|answer| answer.value.si())
    };
    Ok(by(ResidualModel::Table)?.max(by(ResidualModel::Equilibrium)?))
}

/// The sugar that goes in.
#[derive(Clone, Copy, Debug)]
pub(super) struct Primer<'a> {
    pub sugar: &'a Fermentable,
    pub dose: &'a PrimingDose,
    /// What the scale cannot tell from it, at most.
    pub heaviest: Option<Mass>,
}

/// What a dose puts into the bottle, per litre as filled.
pub(super) fn contents(
    request: &Request,
    batch: &Batch,
    lists: &Lists<'_>,
    Primer { sugar, dose, heaviest }: Primer<'_>,
    notes: &mut Notes,
    steps: &mut impl Steps,
) -> Result<Found, Error> {
    let context = physical(request)?;
    let basis = &context.basis;
    let before = before(request)?;
    let held = match &before {
        Before::Measured(co2) => co2.si(),
        Before::Fermented(fermenter) => open::residual_co2(fermenter, &context, steps)?.value.si(),
    };
    let larger = worst_residual(&before, &context, steps)?;
    let added = added(request, lists, batch.packaged.si(), &context, notes, steps)?;
    let (d, left) = (dose.dose.si(), context.beverage.fermentable()?);
    let mut made = |y: f64, percent: f64, factor: f64, matter: f64| {
        let co2 = extract_co2(y, percent, factor, matter);
        if matter > 0.0 {
            steps.record(&EXTRACT_CO2, &[y, percent, factor, matter], co2);
        }
        co2
    };
    // Microbes that split dextrins may ferment all the dry matter of the sugar, and all the extract that is left.
    let wild = request.microbes() != Microbes::BrewingYeast;
    let whole = if wild { (1.0 - sugar.water) * fermentable::extract_yield() } else { 0.0 };
    let (likely, most) = (sugar.theoretical_yield(), sugar.highest_yield().max(whole));
    let extract = fermentable::extract_yield();
    let (y, k) = (basis.yield_percent, basis.yield_factor);
    let (from_sugar, from_extract) = (made(likely, y, k, d), made(extract, y, k, left));
    let at_most = basis.most_yield();
    let most_left = if wild { left.max(context.beverage.extract()) } else { left };
    let heaviest = heaviest.map_or(d, |mass| d.max(mass.si() / batch.packaged.si()));
    let (most_sugar, most_extract) = (made(most, at_most, 1.0, heaviest), made(extract, at_most, 1.0, most_left));
    if wild {
        notes.cautions.add(Caution::of(&WILD_DANGER, most_extract));
    }
    // The least that the sugar may give: Balling's share, or a poor sample of it, and never more than is expected.
    let share = LEAST_YIELD.min(y);
    let poorest = sugar.yield_range.0.min(likely) * y.min(100.0) / 100.0;
    let least_yield = (likely * share / 100.0).min(poorest);
    // The syrup thins what is expected; the worst case does not count on it.
    let syrup = if basis.count_syrup { batch.syrup_water } else { None };
    let (water, room) = match syrup {
        Some(water) => (water.si() / batch.packaged.si(), syrup::volume_per_mass(sugar.water)),
        None => (0.0, 0.0),
    };
    let grown = 1.0 + water + d * room;
    let together = held + from_sugar + from_extract + added.expected;
    let expected = together / grown;
    if grown > 1.0 {
        let told = [held, from_extract + added.expected, likely, y, k, d, 1000.0 * water, 1000.0 * room];
        steps.record(&PRIMED, &told, expected);
    } else {
        steps.record(&EXPECTED_CO2, &[held, from_sugar, from_extract + added.expected], expected);
    }
    let others = most_extract + added.most;
    let worst = worst_co2(larger, most_sugar, others);
    let (_, limit) = Key::Carbonation.limits().unwrap_or_default();
    if worst > limit {
        let of_sugar = if request.get(Key::Mass).is_some() { Key::Mass } else { Key::Carbonation };
        let of_extract = if wild { Key::Extract } else { Key::Fermentable };
        let parameter = named(request, if most_extract > most_sugar { of_extract } else { of_sugar });
        return Err(Error::PressureTooHigh { parameter, limit: sealed::MOST });
    }
    steps.record(&WORST_CO2, &[larger, most_sugar, others], worst);
    let least = held
        + extract_co2(least_yield, 100.0, k, d)
        + extract_co2(extract, share, k, left)
        + added.expected * share / y;
    Ok(Found {
        package: Contents { expected, worst },
        least: least / grown,
        still_to_come: extract_co2(extract, at_most, 1.0, left),
        unprimed: worst_co2(larger, 0.0, most_extract),
    })
}

/// The batch with what else was added, by the basis of the dose.
pub(super) fn primed_batch(request: &Request, lists: &Lists<'_>) -> Result<Batch, Error> {
    let (mut batch, context) = (batch(request)?, request.context(BasisName::Handbook)?);
    let found = added(request, lists, batch.packaged.si(), &context, &mut Notes::default(), &mut NoSteps)?;
    batch.added = Carbonation::from_si(found.expected);
    Ok(batch)
}
