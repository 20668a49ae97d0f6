//! The priming dose: how much sugar gives the CO2 that is still missing.

use super::addition::note_sugar;
use crate::balance::open::residual;
use crate::balance::sealed::{self, Closed, Sealed};
use crate::balance::with_solubility;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context, ResidualModel, Yeast};
use crate::error::{Error, code};
use crate::evidence::caution::SLACK;
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::{NoSteps, Notes, Steps, Symbol};
use crate::property::fermentable::{self, Fermentable, Sugars};
use crate::property::solubility::Solubility;
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, FACTOR, GRAM, GRAMS_PER_LITRE, LITRE, PERCENT};
use crate::quantity::{Carbonation, Concentration, Key, Mass, Name, Percent, Temperature, Volume};

const YIELD: Symbol = limited("y", Measure::Plain("g/g"), "theoretical CO2 per mass of product", 0.01, 0.53);
const SHARE: Symbol = limited("q", Measure::In(&PERCENT), "CO2 really made, of the theoretical yield", 50.0, 105.0);
const FACTOR_ON_YIELD: Symbol = symbol("k", Measure::In(&FACTOR), "factor on the yield, 1 by default");

/// CO2 that what is still fermentable will make.
pub static EXTRACT_CO2: Equation = Equation {
    id: "co2_from_extract",
    title: "CO2 from sugar or extract",
    formula: "e = y*q/100*k*x",
    result: symbol("e", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 that it makes"),
    inputs: &[
        YIELD,
        SHARE,
        FACTOR_ON_YIELD,
        limited("x", Measure::In(&GRAMS_PER_LITRE), "fermentable matter, or sugar as sold", 0.0, 400.0),
    ],
    uncertainty_percent: None,
    uncertainty: "exact; what is uncertain is the yield, and what yeast will leave",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| extract_co2(x[0], x[1], x[2], x[3]),
};

#[inline(always)]
pub(crate) fn extract_co2(y: f64, percent: f64, factor: f64, fermentable: f64) -> f64 {
    y * percent / 100.0 * factor * fermentable
}

/// The larger of two numbers, neither of which is NaN.
#[inline(always)]
pub(crate) fn at_least(value: f64, least: f64) -> f64 {
    if value < least { least } else { value }
}

/// Sugar for the CO2 that is missing.
pub static DOSE: Equation = Equation {
    id: "priming_dose",
    title: "priming sugar per litre of drink",
    formula: "d = (c - r - e)/(y*q/100*k)",
    result: symbol("d", Measure::In(&GRAMS_PER_LITRE), "sugar, as sold, per litre of drink"),
    inputs: &[
        symbol("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 wanted, per litre of drink as filled"),
        symbol("r", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 left in the drink"),
        symbol("e", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 still to come from what is fermentable"),
        YIELD,
        SHARE,
        FACTOR_ON_YIELD,
    ],
    uncertainty_percent: None,
    uncertainty: "exact: it is conservation of mass",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| (x[0] - x[1] - x[2]) / (x[3] * x[4] / 100.0 * x[5]),
};

/// Sugar for the whole batch.
pub static BATCH: Equation = Equation {
    id: "priming_mass",
    title: "priming sugar for the batch",
    formula: "m = d*V",
    result: symbol("m", Measure::In(&GRAM), "sugar, as sold"),
    inputs: &[
        symbol("d", Measure::In(&GRAMS_PER_LITRE), "sugar, as sold, per litre of drink"),
        symbol("V", Measure::In(&LITRE), "drink that reaches packages"),
    ],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] * x[1],
};

#[derive(Clone, Copy)]
struct Priming<S> {
    solubility: S,
    residual: ResidualModel,
    residual_factor: f64,
    count_headspace: bool,
    sugars: Sugars,
    yield_percent: f64,
    yield_factor: f64,
}

impl<S: Solubility> Priming<S> {
    /// CO2 that is there or comes by itself: residual, and from what is still fermentable.
    #[inline(always)]
    fn held(&self, [t, ambient, abv, extract, left]: [f64; 5], steps: &mut impl Steps) -> (f64, f64, i32) {
        let (r, bits) =
            residual(self.solubility, self.residual, self.residual_factor, [t, ambient, abv, extract], steps);
        let mut e = 0.0;
        if left != 0.0 {
            let y = steps.step(&fermentable::THEORETICAL_YIELD, &[0.0, 1.0, 0.0], fermentable::extract_yield());
            e = extract_co2(y, self.yield_percent, self.yield_factor, left);
            steps.record(&EXTRACT_CO2, &[y, self.yield_percent, self.yield_factor, left], e);
        }
        (r, e, bits)
    }
}

impl<S: Solubility> Kernel<10, 2> for Priming<S> {
    const COLUMNS: [Key; 10] = [
        Key::Carbonation,
        Key::Warmest,
        Key::Packaged,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
        Key::Fermentable,
        Key::Headspace,
        Key::Filling,
        Key::Room,
    ];
    #[inline(always)]
    fn eval(
        &self,
        [target, warmest, packaged, ambient, abv, extract, left, headspace, filling, room]: [f64; 10],
        steps: &mut impl Steps,
    ) -> ([f64; 2], i32) {
        // What is fermentable is part of the extract.
        let extract = at_least(extract, left);
        let (r, e, mut bits) = self.held([warmest, ambient, abv, extract, left], steps);
        let mut total = target;
        if self.count_headspace {
            let (here, more) = self.solubility.here(room, abv, extract, steps);
            let closed = Closed { headspace, filling, air: 0.0 };
            let vessel = Sealed::new(here, closed, room, steps);
            let co2 = vessel.co2_pressure(target);
            let (pressure, told) = vessel.total(co2, steps);
            total = vessel.content(co2);
            bits |= more | told;
            bits = if pressure > sealed::MOST { code::PRESSURE_TOO_HIGH } else { bits };
            bits = if vessel.gas < sealed::LEAST_GAS { code::VESSEL_FULL } else { bits };
        }
        let made = fermentable::theoretical_yield(self.sugars);
        let y = steps.step(&fermentable::THEORETICAL_YIELD, &self.sugars.parts(), made);
        let dose = (total - r - e) / (y * self.yield_percent / 100.0 * self.yield_factor);
        steps.record(&DOSE, &[total, r, e, y, self.yield_percent, self.yield_factor], dose);
        let mass = steps.step(&BATCH, &[dose, packaged], dose * packaged);
        let most = Key::Dose.limits().unwrap_or_default().1;
        let status = if (dose > most) & (bits >= 0) { code::OUT_OF_RANGE } else { bits };
        ([mass, dose], if (dose * y < -SLACK * target) & (bits >= 0) { code::TARGET_BELOW_HELD } else { status })
    }
    fn explain(&self, status: i32, x: [f64; 10]) -> Error {
        let [target, warmest, _, ambient, abv, extract, left, _, _, room] = x;
        match status {
            code::TARGET_BELOW_HELD => {
                let (r, e, _) = self.held([warmest, ambient, abv, extract, left], &mut NoSteps);
                Error::TargetBelowHeld {
                    parameter: Name::first(Key::Carbonation),
                    value: target,
                    held: r + e,
                    remedy: "it needs no sugar; let it ferment out or lose CO2 first, or ask for more if the package holds it",
                }
            }
            code::OUT_OF_RANGE => {
                let ([_, dose], _) = self.eval(x, &mut NoSteps);
                let (low, high) = Key::Dose.limits().unwrap_or_default();
                Error::OutOfRange { parameter: Name::first(Key::Dose), value: dose, low, high }
            }
            code::VESSEL_FULL => Error::VesselFull { parameter: Name::first(Key::Room), value: room },
            _ => Error::PressureTooHigh { parameter: Name::first(Key::Carbonation), limit: sealed::MOST },
        }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<10, 2>>(context: &Context, sugar: &Fermentable, visitor: V) -> V::Output {
    let basis = &context.basis;
    with_solubility!(context, solubility => visitor.visit(Priming {
        solubility,
        residual: basis.residual,
        residual_factor: basis.residual_factor,
        count_headspace: basis.count_headspace,
        sugars: sugar.sugars,
        yield_percent: basis.yield_percent,
        yield_factor: basis.yield_factor,
    }))
}

/// A priming dose.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PrimingDose {
    /// Sugar for the batch, as sold.
    pub mass: Mass,
    /// Sugar per litre of drink.
    pub dose: Concentration,
}

/// What a priming dose is asked for.
#[derive(Clone, Copy, Debug)]
pub struct Wanted {
    /// CO2 wanted.
    pub target: Carbonation,
    /// Highest temperature since active fermentation.
    pub warmest: Temperature,
    /// Temperature at which the bottles are closed; counts by the physical basis only.
    pub filling: Temperature,
    /// Drink that reaches packages.
    pub packaged: Volume,
    /// Headspace in percent of the liquid; counts by the physical basis only.
    pub headspace: Percent,
    /// Temperature at which the bottles are conditioned; counts by the physical basis only.
    pub room: Temperature,
}

/// How much of a sugar gives the CO2 wanted.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, the drink holds the target already, no
/// living yeast is there, or what is still fermentable is not known.
pub fn priming_sugar(
    wanted: &Wanted,
    sugar: &Fermentable,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PrimingDose>, Error> {
    let mut notes = Notes::default();
    let x = columns(wanted, context, &mut Both(&mut notes, steps))?;
    let [mass, dose] = visit(context, sugar, Once { x, steps: &mut Both(&mut notes, steps) })?;
    context.beverage.note_finished(&mut notes.cautions);
    note_sugar(sugar, &mut notes);
    if context.basis.count_headspace || context.basis.residual == ResidualModel::Equilibrium {
        context.note_model(&mut notes.cautions);
    }
    let value = PrimingDose { mass: Mass::from_si(mass), dose: Concentration::from_si(dose) };
    Ok(Answer { value, context: *context, notes })
}

/// The kernel's columns, SI.
pub(crate) fn columns(wanted: &Wanted, context: &Context, steps: &mut impl Steps) -> Result<[f64; 10], Error> {
    let drink = context.beverage;
    if drink.yeast == Yeast::None {
        return Err(Error::NoLiveYeast);
    }
    let left = drink.fermentable()?;
    Ok([
        wanted.target.si(),
        wanted.warmest.si(),
        wanted.packaged.si(),
        context.ambient(steps)?,
        drink.abv(),
        drink.extract(),
        left,
        wanted.headspace.si(),
        wanted.filling.si(),
        wanted.room.si(),
    ])
}
