//! The priming dose: how much sugar gives the CO2 that is still missing; and what a dose that was given makes.

use super::addition::note_sugar;
use super::before::{Before, Conditioned, Drink, Holds, closed, holds};
use crate::balance::visit_solubility;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, ColdCrash, Context, ResidualModel};
use crate::error::{Error, code};
use crate::evidence::caution::SLACK;
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::{NoSteps, Notes, Steps, Symbol};
use crate::property::fermentable::{self, Fermentable, Sugars};
use crate::property::solubility::{Here, Solubility};
use crate::property::syrup;
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, FACTOR, GRAM, GRAMS_PER_LITRE, LITRE, PERCENT};
use crate::quantity::{Carbonation, Concentration, Key, Mass, Name, Percent, Volume};

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
pub static MASS: Equation = Equation {
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

/// Sugar for the CO2 that is missing, where the syrup's volume counts: it holds no CO2 itself.
pub static SYRUP_DOSE: Equation = Equation {
    id: "priming_dose_in_syrup",
    title: "priming sugar per litre of drink, its syrup counted",
    formula: "d = (c*(1 + w/1000) - r - e)/(y*q/100*k - c*v/1000)",
    result: symbol("d", Measure::In(&GRAMS_PER_LITRE), "sugar, as sold, per litre of drink"),
    inputs: &[
        limited("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 wanted, per litre of drink as filled", 4.0, 10.0),
        limited("w", Measure::Plain("mL/L"), "water of the syrup, per litre of drink", 0.0, 100.0),
        limited("r", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 left in the drink", 0.0, 2.0),
        limited("e", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 still to come from what is fermentable", 0.0, 1.0),
        limited("y", Measure::Plain("g/g"), "theoretical CO2 per mass of product", 0.2, 0.53),
        SHARE,
        limited("k", Measure::In(&FACTOR), "factor on the yield, 1 by default", 0.8, 1.2),
        limited("v", Measure::Plain("mL/g"), "volume of a gram of sugar in solution", 0.6, 1.0),
    ],
    uncertainty_percent: None,
    uncertainty: "exact: it is conservation of mass",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| syrup_dose(x[0], x[1] / 1000.0, x[2] + x[3], x[4] * x[5] / 100.0 * x[6], x[7] / 1000.0),
};

/// Where sugar makes hardly more CO2 than the room that it takes has to hold, no dose gives the target.
const LEAST_GAIN: f64 = 1e-6;

/// Sugar (kg per m3 of drink) by the balance over drink and syrup: `water` is the syrup's, m3 per m3 of drink; a kilogram of
/// sugar makes `made` of CO2 and takes `room`, m3.
#[inline(always)]
fn syrup_dose(total: f64, water: f64, held: f64, made: f64, room: f64) -> f64 {
    let gain = made - total * room;
    let dose = (total * (1.0 + water) - held) / gain;
    if gain > LEAST_GAIN { dose } else { f64::MAX }
}

/// CO2 in the package from a dose that was given.
pub static PRIMED: Equation = Equation {
    id: "primed_co2",
    title: "CO2 of a drink that was primed",
    formula: "c = (r + e + y*q/100*k*d)/(1 + w/1000 + d*v/1000)",
    result: symbol("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2, per litre of drink as filled"),
    inputs: &[
        symbol("r", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 left in the drink"),
        symbol("e", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 still to come from what is fermentable"),
        YIELD,
        SHARE,
        FACTOR_ON_YIELD,
        limited("d", Measure::In(&GRAMS_PER_LITRE), "sugar, as sold, per litre of drink", 0.0, 400.0),
        limited("w", Measure::Plain("mL/L"), "water of the syrup, per litre of drink", 0.0, 100.0),
        limited("v", Measure::Plain("mL/g"), "volume of a gram of sugar in solution, where it counts", 0.0, 1.0),
    ],
    uncertainty_percent: None,
    uncertainty: "exact: it is conservation of mass",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| {
        let made = extract_co2(x[2], x[3], x[4], x[5]);
        (x[0] + x[1] + made) / (1.0 + x[6] / 1000.0 + x[5] * x[7] / 1000.0)
    },
};

/// Alcohol of the drink with what priming adds.
pub static PRIMED_ALCOHOL: Equation = Equation {
    id: "primed_alcohol",
    title: "alcohol by volume of a drink that was primed",
    formula: "b = a/(1 + w/1000 + d*v/1000) + n",
    result: symbol("b", Measure::In(&PERCENT), "alcohol by volume"),
    inputs: &[
        symbol("a", Measure::In(&PERCENT), "alcohol by volume before"),
        limited("w", Measure::Plain("mL/L"), "water of the syrup, per litre of drink", 0.0, 100.0),
        limited("d", Measure::In(&GRAMS_PER_LITRE), "sugar, as sold, per litre of drink", 0.0, 400.0),
        limited("v", Measure::Plain("mL/g"), "volume of a gram of sugar in solution, where it counts", 0.0, 1.0),
        symbol("n", Measure::In(&PERCENT), "alcohol by volume that the sugar adds"),
    ],
    uncertainty_percent: None,
    uncertainty: "that of its parts",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] / (1.0 + x[1] / 1000.0 + x[2] * x[3] / 1000.0) + x[4],
};

/// The sugar and the syrup that a kernel is made for.
#[derive(Clone, Copy)]
struct Sweet {
    sugars: Sugars,
    /// Volume of a kilogram in solution, m3; 0 where it does not count.
    room: f64,
    /// Whether a syrup counts.
    syrup: bool,
}

impl Sweet {
    fn new(sugar: &Fermentable, context: &Context, water: Option<Volume>) -> Self {
        let syrup = context.basis.count_syrup && water.is_some();
        let room = if syrup { syrup::volume_per_mass(sugar.water) } else { 0.0 };
        Self { sugars: sugar.sugars, room, syrup }
    }

    /// Water of the syrup, m3 per m3 of drink.
    #[inline(always)]
    fn water(&self, water: f64, packaged: f64) -> f64 {
        if self.syrup { water / packaged } else { 0.0 }
    }

    #[inline(always)]
    fn made(&self, steps: &mut impl Steps) -> f64 {
        let made = fermentable::theoretical_yield(self.sugars);
        steps.step(&fermentable::THEORETICAL_YIELD, &self.sugars.parts(), made)
    }
}

/// The columns of both kernels, the first one left out.
macro_rules! columns {
    ($first:ident) => {
        [
            Key::$first,
            Key::Packaged,
            Key::Headspace,
            Key::Filling,
            Key::Room,
            Key::SyrupWater,
            Key::Warmest,
            Key::Ambient,
            Key::Abv,
            Key::Extract,
            Key::Fermentable,
            Key::FermenterGauge,
            Key::Crash,
            Key::FermenterHeadspace,
            Key::Residual,
        ]
    };
}

#[derive(Clone, Copy)]
struct Priming<S> {
    drink: Drink<S>,
    sweet: Sweet,
}

#[inline(always)]
fn split([a, packaged, headspace, filling, room, water, holds @ ..]: [f64; 15]) -> (f64, [f64; 5], f64, Holds) {
    let mut holds = holds;
    // What is fermentable is part of the extract.
    holds[3] = at_least(holds[3], holds[4]);
    (a, [packaged, headspace, filling, room, water], room, holds)
}

impl<S: Solubility> Kernel<15, 2> for Priming<S> {
    const COLUMNS: [Key; 15] = columns!(Carbonation);
    #[inline(always)]
    fn eval(&self, x: [f64; 15], steps: &mut impl Steps) -> ([f64; 2], i32) {
        let (target, [packaged, headspace, filling, room, water], _, holds) = split(x);
        let [_, _, abv, extract, ..] = holds;
        let (r, e, held_bits) = self.drink.held(holds, steps);
        let (total, more) = self.drink.total(target, [headspace, filling, room], [abv, extract], steps);
        let bits = if held_bits < 0 { held_bits } else { more | (if more < 0 { 0 } else { held_bits }) };
        let y = self.sweet.made(steps);
        let (q, k) = (self.drink.yield_percent, self.drink.yield_factor);
        let made = y * q / 100.0 * k;
        let dose = if self.sweet.syrup {
            let water = self.sweet.water(water, packaged);
            let dose = syrup_dose(total, water, r + e, made, self.sweet.room);
            let told = [total, 1000.0 * water, r, e, y, q, k, 1000.0 * self.sweet.room];
            steps.step(&SYRUP_DOSE, &told, dose)
        } else {
            steps.step(&DOSE, &[total, r, e, y, q, k], (total - r - e) / made)
        };
        let mass = steps.step(&MASS, &[dose, packaged], dose * packaged);
        let most = Key::Dose.limits().unwrap_or_default().1;
        let status = if (dose > most) & (bits >= 0) { code::OUT_OF_RANGE } else { bits };
        ([mass, dose], if (dose * y < -SLACK * target) & (bits >= 0) { code::TARGET_BELOW_HELD } else { status })
    }
    fn explain(&self, status: i32, x: [f64; 15]) -> Error {
        let (target, _, room, holds) = split(x);
        let ([_, dose], _) = self.eval(x, &mut NoSteps);
        let (low, high) = Key::Dose.limits().unwrap_or_default();
        if status == code::OUT_OF_RANGE && dose > high {
            return Error::OutOfRange { parameter: Name::first(Key::Dose), value: dose, low, high };
        }
        self.drink.explain(status, (Key::Carbonation, target), holds, room)
    }
}

#[derive(Clone, Copy)]
struct Primed<S> {
    drink: Drink<S>,
    sweet: Sweet,
}

impl<S: Solubility> Kernel<15, 3> for Primed<S> {
    const COLUMNS: [Key; 15] = columns!(Mass);
    #[inline(always)]
    fn eval(&self, x: [f64; 15], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let (mass, [packaged, headspace, filling, room, water], _, holds) = split(x);
        let [_, _, abv, extract, ..] = holds;
        let (r, e, held_bits) = self.drink.held(holds, steps);
        let y = self.sweet.made(steps);
        let (q, k) = (self.drink.yield_percent, self.drink.yield_factor);
        let (dose, water) = (mass / packaged, self.sweet.water(water, packaged));
        let grown = 1.0 + water + dose * self.sweet.room;
        let total = (r + e + extract_co2(y, q, k, dose)) / grown;
        let (w, v) = (1000.0 * water, 1000.0 * self.sweet.room);
        steps.record(&PRIMED, &[r, e, y, q, k, dose, w, v], total);
        let [h, d, t] = self.sweet.sugars.parts();
        let share = dose / grown;
        let added = fermentable::added_alcohol(share, self.sweet.sugars, q, k);
        steps.record(&fermentable::ALCOHOL, &[share, h, d, t, q, k], added);
        let strength = steps.step(&PRIMED_ALCOHOL, &[abv, w, dose, v, added], abv / grown + added);
        let (dissolved, more) = self.drink.dissolved(total, [headspace, filling, room], [abv, extract], steps);
        let bits = if held_bits < 0 { held_bits } else { more | (if more < 0 { 0 } else { held_bits }) };
        let most = Key::Dose.limits().unwrap_or_default().1;
        ([dissolved, added, strength], if (dose > most) & (bits >= 0) { code::OUT_OF_RANGE } else { bits })
    }
    fn explain(&self, status: i32, x: [f64; 15]) -> Error {
        let (mass, [packaged, ..], room, holds) = split(x);
        let (low, high) = Key::Dose.limits().unwrap_or_default();
        if status == code::OUT_OF_RANGE && mass / packaged > high {
            let (low, high) = (low * packaged, high * packaged);
            return Error::OutOfRange { parameter: Name::first(Key::Mass), value: mass, low, high };
        }
        if status == code::TARGET_BELOW_HELD {
            let (here, _) = self.drink.solubility.here(room, holds[2], holds[3], &mut NoSteps);
            let (r, e, _) = self.drink.held(holds, &mut NoSteps);
            return Error::TargetBelowHeld {
                parameter: Name::first(Key::Carbonation),
                value: r + e,
                held: here.dissolved(0.0, 0.0),
                remedy: "this solubility model holds that much under vapour alone; take model=\"water_core\"",
            };
        }
        self.drink.explain(status, (Key::Mass, mass), holds, room)
    }
}

/// Hands the kernel of the dose to a visitor.
pub(crate) fn visit<V: Visit<15, 2>>(context: &Context, sugar: &Fermentable, wanted: &Batch, visitor: V) -> V::Output {
    let sweet = Sweet::new(sugar, context, wanted.syrup_water);
    visit_solubility!(visitor: V, context, solubility => Priming {
        drink: Drink::new(solubility, context, &wanted.before, wanted.added),
        sweet,
    })
}

/// Hands the kernel of what a dose makes to a visitor.
pub(crate) fn visit_primed<V: Visit<15, 3>>(
    context: &Context,
    sugar: &Fermentable,
    given: &Batch,
    visitor: V,
) -> V::Output {
    let sweet = Sweet::new(sugar, context, given.syrup_water);
    visit_solubility!(visitor: V, context, solubility => Primed {
        drink: Drink::new(solubility, context, &given.before, given.added),
        sweet,
    })
}

/// A priming dose.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PrimingDose {
    /// Sugar for the batch, as sold.
    pub mass: Mass,
    /// Sugar per litre of drink.
    pub dose: Concentration,
}

/// The batch that is primed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Batch {
    /// Where its CO2 is known from.
    pub before: Before,
    /// Drink that reaches packages, the syrup not counted.
    pub packaged: Volume,
    /// How the bottles are closed and conditioned; counts by the physical basis only.
    pub conditioned: Conditioned,
    /// Water in which the sugar is dissolved; counts by the physical basis only.
    pub syrup_water: Option<Volume>,
    /// CO2 from what else was added.
    pub added: Carbonation,
}

/// How much of a sugar gives the CO2 wanted.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, the drink holds the target already, no
/// living yeast is there, or what is still fermentable is not known.
pub fn priming_sugar(
    target: Carbonation,
    batch: &Batch,
    sugar: &Fermentable,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PrimingDose>, Error> {
    let mut notes = Notes::default();
    let x = columns(target.si(), batch, context, &mut Both(&mut notes, steps))?;
    let [mass, dose] = visit(context, sugar, batch, Once { x, steps: &mut Both(&mut notes, steps) })?;
    note(batch, sugar, context, &mut notes);
    let value = PrimingDose { mass: Mass::from_si(mass), dose: Concentration::from_si(dose) };
    Ok(Answer { value, context: *context, notes })
}

/// What a dose makes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PrimedDrink {
    /// CO2 in the drink: by the handbook all that there is, by the balance what stays dissolved in the room.
    pub carbonation: Carbonation,
    /// Alcohol by volume that the sugar adds.
    pub added_abv: Percent,
    /// Alcohol by volume of the drink then, thinned by the syrup where that counts.
    pub abv: Percent,
}

/// What a mass of sugar that was added makes of the drink: the inverse of [`priming_sugar`].
///
/// # Errors
/// As [`priming_sugar`], and where the bottle cannot hold it.
pub fn primed_carbonation(
    mass: Mass,
    batch: &Batch,
    sugar: &Fermentable,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PrimedDrink>, Error> {
    let mut notes = Notes::default();
    let x = columns(mass.si(), batch, context, &mut Both(&mut notes, steps))?;
    let once = Once { x, steps: &mut Both(&mut notes, steps) };
    let [carbonation, added, abv] = visit_primed(context, sugar, batch, once)?;
    note(batch, sugar, context, &mut notes);
    let value = PrimedDrink {
        carbonation: Carbonation::from_si(carbonation),
        added_abv: Percent::from_si(added),
        abv: Percent::from_si(abv),
    };
    Ok(Answer { value, context: *context, notes })
}

fn note(batch: &Batch, sugar: &Fermentable, context: &Context, notes: &mut Notes) {
    context.beverage.note_finished(&mut notes.cautions);
    note_sugar(sugar, notes);
    note_before(&batch.before, context, notes);
}

/// Notes what the choice of model means, where one was used.
pub(crate) fn note_before(before: &Before, context: &Context, notes: &mut Notes) {
    let by_model = match before {
        Before::Measured(_) => false,
        Before::Fermented(fermenter) => {
            context.basis.residual == ResidualModel::Equilibrium || fermenter.crash == ColdCrash::Closed
        }
    };
    if context.basis.count_headspace || by_model {
        context.note_model(&mut notes.cautions);
    }
}

/// The kernels' columns, SI; the first is what each takes.
pub(crate) fn columns(
    first: f64,
    batch: &Batch,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<[f64; 15], Error> {
    let held = holds(&batch.before, context, steps)?;
    let [headspace, filling, room] = closed(&batch.conditioned);
    let water = batch.syrup_water.map_or(0.0, Volume::si);
    let mut x = [0.0; 15];
    x[..6].copy_from_slice(&[first, batch.packaged.si(), headspace, filling, room, water]);
    x[6..].copy_from_slice(&held);
    Ok(x)
}
