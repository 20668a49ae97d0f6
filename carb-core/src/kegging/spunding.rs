//! Natural carbonation in the fermenter: the relief valve's pressure, and the gravity at which it is closed.

use super::rating::note_rating;
use crate::balance::open::Left;
use crate::balance::pressure::{self, Pressure};
use crate::balance::sealed;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, ColdCrash, Context};
use crate::bottling::attenuation::{Reading, both};
use crate::bottling::gravity::{Gravity, told};
use crate::bottling::priming::at_least;
use crate::error::{Error, code};
use crate::evidence::caution::{SLACK, above, below};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited, symbol};
use crate::evidence::{NoSteps, Notes, Steps};
use crate::number::root::bracketed;
use crate::property::attenuation::{BALLING_YIELD, FERMENTABLE_LEFT, balling_co2, fermentable_left};
use crate::property::co2_gas;
use crate::property::gravity::Scale;
use crate::property::solubility::{Here, Solubility};
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, PERCENT};
use crate::quantity::{
    AbsolutePressure, Carbonation, GaugePressure, Key, Name, Percent, Plato, SpecificGravity, Temperature,
};

const STARTS: Symbol = symbol("s", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in the drink when the vessel is closed");
const HEADSPACE: Symbol =
    limited("h", Measure::In(&PERCENT), "gas over the drink, percent of the drink's volume", 0.0, 1000.0);
const GAS_AT_START: Symbol =
    limited("a", Measure::Plain("kg/m3"), "density of the CO2 over the drink when the vessel is closed", 0.5, 2.0);

/// CO2 that has to come after the valve is closed.
pub static CO2_TO_COME: Equation = Equation {
    id: "spunding_co2",
    title: "CO2 still to be made when the vessel is closed, per litre of drink",
    formula: "n = c - s + h/100*(g - a)",
    result: symbol("n", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 still to be made"),
    inputs: &[
        limited("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 wanted in the drink", 4.0, 12.0),
        limited("s", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in the drink when the vessel is closed", 0.0, 3.0),
        HEADSPACE,
        limited("g", Measure::Plain("kg/m3"), "density of the CO2 over the drink at the end", 2.5, 12.0),
        GAS_AT_START,
    ],
    uncertainty_percent: None,
    uncertainty: "exact: it is conservation of mass, the gas over a fermenting drink being CO2 and vapour",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| to_come(x[0], x[1], x[2], [x[3], x[4]]),
};

/// CO2 in a closed fermenter.
pub static CLOSED_CO2: Equation = Equation {
    id: "closed_fermenter_co2",
    title: "CO2 in a closed fermenter at the end, per litre of drink",
    formula: "n = s + h/100*a + m",
    result: symbol("n", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in drink and gas together"),
    inputs: &[
        STARTS,
        HEADSPACE,
        GAS_AT_START,
        symbol("m", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 that the falling gravity makes"),
    ],
    uncertainty_percent: None,
    uncertainty: "exact: it is conservation of mass, the gas over a fermenting drink being CO2 and vapour",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| in_all(x[0], x[1], x[2], x[3]),
};

#[inline(always)]
fn to_come(wanted: f64, starts: f64, headspace: f64, [at_end, at_start]: [f64; 2]) -> f64 {
    wanted - starts + headspace / 100.0 * (at_end - at_start)
}

#[inline(always)]
pub(super) fn in_all(starts: f64, headspace: f64, at_start: f64, made: f64) -> f64 {
    starts + headspace / 100.0 * at_start + made
}

/// What the drink holds when its fermenter is closed: measured, or what it keeps open to the air.
#[derive(Clone, Copy)]
pub(super) struct Starts {
    left: Left,
    measured: bool,
}

impl Starts {
    pub(super) fn new(fermenting: &Fermenting, context: &Context) -> Self {
        Self { left: Left::of(context, ColdCrash::Open), measured: fermenting.start.is_some() }
    }

    /// CO2 in the drink (kg/m3), and a status.
    #[inline(always)]
    pub(super) fn held<S: Solubility>(
        &self,
        solubility: S,
        measured: f64,
        [t, ambient, abv, extract]: [f64; 4],
        steps: &mut impl Steps,
    ) -> (f64, i32) {
        if self.measured {
            return (measured, 0);
        }
        let (left, status, _) = self.left.residual(solubility, [t, ambient, abv, extract, 0.0, t, 0.0], steps);
        (left, if self.too_warm(t) { code::OUT_OF_RANGE } else { status })
    }

    /// Whether what is left cannot be told at the temperature `t` (K).
    #[inline(always)]
    pub(super) fn too_warm(&self, t: f64) -> bool {
        let (low, high) = Key::Warmest.limits().unwrap_or_default();
        !self.measured & (below(t, low) | above(t, high))
    }

    /// The error for that.
    pub(super) fn refuse(t: f64) -> Error {
        let (low, high) = Key::Warmest.limits().unwrap_or_default();
        Error::OutOfRange { parameter: Name::first(Key::Temperature), value: t, low, high }
    }
}

#[derive(Clone, Copy)]
struct Spund<S, const END: bool> {
    solubility: S,
    starts: Starts,
    scale: Scale,
}

/// Gravities between which a fermentation goes: the limits of the field.
fn gravities() -> (f64, f64) {
    Key::Gravity.limits().unwrap_or_default()
}

impl<S: Solubility, const END: bool> Spund<S, END> {
    /// CO2 (kg/m3) that is made while the gravity falls from `sg` to the extract `last`.
    #[inline(always)]
    fn made(&self, sg: f64, last: f64) -> f64 {
        balling_co2(fermentable_left(self.scale.plato(sg), last, sg))
    }
}

impl<S: Solubility, const END: bool> Kernel<8, 6> for Spund<S, END> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 8] = [
        Key::Carbonation,
        Key::Temperature,
        if END { Key::FinalPlato } else { Key::FinalGravity },
        Key::FermenterHeadspace,
        Key::Start,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
    ];
    #[inline(always)]
    fn eval(&self, x: [f64; 8], steps: &mut impl Steps) -> ([f64; 6], i32) {
        let [c, t, end, headspace, measured, ambient, abv, extract] = x;
        let (sg, last, bits) = both::<END>(self.scale, end, steps);
        let (starts, left) = self.starts.held(self.solubility, measured, [t, ambient, abv, extract], steps);
        let (here, more) = self.solubility.here(t, abv, extract, steps);
        let total = here.total_pressure(c);
        let of_pressure = here.tell(total, 0.0, steps);
        let gauge = pressure::gauge(total, ambient, steps);

        let b = steps.step(&co2_gas::SECOND_VIRIAL, &[t], co2_gas::second_virial(t));
        let gas = [total, ambient].map(|p| {
            let co2 = p - here.vapour();
            steps.step(&co2_gas::DENSITY, &[co2, t, b], co2_gas::density(co2, t, b))
        });
        let needed = to_come(c, starts, headspace, gas);
        steps.record(&CO2_TO_COME, &[c, starts, headspace, gas[0], gas[1]], needed);
        let low = (gauge < -SLACK * ambient) | (needed < -SLACK);

        let closing = if self.made(sg, last) >= needed {
            Some(sg)
        } else {
            bracketed(sg, gravities().1, |s| self.made(s, last) - needed)
        };
        let (at, beyond) = (closing.unwrap_or(sg), closing.is_none());
        let (plato, of_gravity) = told(self.scale, at, steps);
        let ferments = fermentable_left(plato, last, at);
        steps.record(&FERMENTABLE_LEFT, &[plato, last, at], ferments);
        steps.record(&BALLING_YIELD, &[ferments], balling_co2(ferments));

        let range = bits | left | more | of_pressure | of_gravity;
        let found = if beyond { code::OUT_OF_REACH } else { range };
        let held = if low { code::TARGET_BELOW_HELD } else { found };
        let high = if total > sealed::MOST { code::PRESSURE_TOO_HIGH } else { held };
        ([gauge, total, at, plato, at - sg, starts], if left < 0 { left } else { high })
    }
    fn explain(&self, status: i32, x: [f64; 8]) -> Error {
        let [c, t, end, headspace, measured, ambient, abv, extract] = x;
        let parameter = Name::first(Key::Carbonation);
        let (starts, _) = self.starts.held(self.solubility, measured, [t, ambient, abv, extract], &mut NoSteps);
        match status {
            code::OUT_OF_RANGE if self.starts.too_warm(t) => Starts::refuse(t),
            code::OUT_OF_REACH => {
                let (here, _) = self.solubility.here(t, abv, extract, &mut NoSteps);
                let b = co2_gas::second_virial(t);
                let dense = |p: f64| co2_gas::density(p - here.vapour(), t, b);
                let gained = dense(here.total_pressure(c)) - dense(ambient);
                // The end that the strongest wort has to come to, and the gas that it can fill where it ends as told.
                let needed = c - starts + headspace / 100.0 * gained;
                let (_, last, _) = both::<END>(self.scale, end, &mut NoSteps);
                let (driest, strongest) = gravities();
                let from = self.scale.plato(strongest);
                let limit = from - needed / self.made(strongest, from - 1.0);
                if limit >= self.scale.plato(driest) {
                    let advice = "no wort makes so much CO2 above this end; ask for less, or fill the vessel further";
                    let limit = if END { limit } else { self.scale.specific_gravity(limit) };
                    return Error::OutOfReach { parameter: Name::first(Self::COLUMNS[2]), value: end, limit, advice };
                }
                let advice = "the gas over the drink takes more CO2 than any wort makes; fill the vessel further";
                let limit = 100.0 * (self.made(strongest, last) - (c - starts)) / gained;
                Error::OutOfReach { parameter: Name::first(Key::FermenterHeadspace), value: headspace, limit, advice }
            }
            code::TARGET_BELOW_HELD => Error::TargetBelowHeld {
                parameter,
                value: c,
                held: at_least(
                    starts,
                    super::mixed_gas::held(self.solubility.here(t, abv, extract, &mut NoSteps).0, ambient),
                ),
                remedy: "an open fermenter keeps that much at this temperature: no relief valve is needed, or ask for more",
            },
            _ => Error::PressureTooHigh { parameter, limit: sealed::MOST },
        }
    }
}

/// Hands the kernel to a visitor; the flag says whether the reading at the end is in degrees Plato.
pub(crate) fn visit<V: Visit<8, 6>>(
    plato: bool,
    fermenting: &Fermenting,
    scale: Scale,
    context: &Context,
    visitor: V,
) -> V::Output {
    let starts = Starts::new(fermenting, context);
    let solubility = context.solubility();
    if plato {
        visitor.visit(Spund::<_, true> { solubility, starts, scale })
    } else {
        visitor.visit(Spund::<_, false> { solubility, starts, scale })
    }
}

/// A fermenter that is closed before its fermentation ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fermenting {
    /// Temperature of the drink when its fermentation ends.
    pub temperature: Temperature,
    /// Gas over the drink, percent of the drink's volume.
    pub headspace: Percent,
    /// CO2 in the drink when the vessel is closed, where it was measured; else what it keeps open to the air.
    pub start: Option<Carbonation>,
}

/// How a fermenter is closed for a carbonation.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spunding {
    /// At which pressure the relief valve opens: it holds the carbonation when the fermentation ends.
    pub relief: Pressure,
    /// The gravity at which the vessel is closed.
    pub closing: Gravity,
    /// By how much it lies above the end, in specific gravity.
    pub above_end: f64,
    /// CO2 in the drink then.
    pub start: Carbonation,
}

/// The kernel's columns, SI, and whether the reading at the end is in degrees Plato.
pub(crate) fn columns(
    carbonation: Carbonation,
    end: Reading,
    fermenting: &Fermenting,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<([f64; 8], bool), Error> {
    let (drink, start) = (context.beverage, fermenting.start.map_or(0.0, Carbonation::si));
    let (c, t, headspace) = (carbonation.si(), fermenting.temperature.si(), fermenting.headspace.si());
    let x = [c, t, end.si(), headspace, start, context.ambient(steps)?, drink.abv(), drink.extract()];
    Ok((x, matches!(end, Reading::Plato(_))))
}

/// The pressure of the relief valve that leaves a drink at a carbonation when its fermentation ends, and the gravity at
/// which the fermenter is closed so that what is left to ferment makes it.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, the drink holds more even open to the air,
/// or no wort would make so much.
pub fn spunding(
    carbonation: Carbonation,
    end: Reading,
    fermenting: &Fermenting,
    scale: Scale,
    rating: Option<GaugePressure>,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Spunding>, Error> {
    let mut notes = Notes::default();
    let (x, plato) = columns(carbonation, end, fermenting, context, &mut Both(&mut notes, steps))?;
    let once = Once { x, steps: &mut Both(&mut notes, steps) };
    let [gauge, absolute, sg, extract, above_end, start] = visit(plato, fermenting, scale, context, once)?;
    context.note_model(&mut notes.cautions);
    note_rating(gauge, rating, &mut notes.cautions);
    let value = Spunding {
        relief: Pressure { gauge: GaugePressure::from_si(gauge), absolute: AbsolutePressure::from_si(absolute) },
        closing: Gravity { specific_gravity: SpecificGravity::from_si(sg), plato: Plato::from_si(extract) },
        above_end,
        start: Carbonation::from_si(start),
    };
    Ok(Answer { value, context: *context, notes })
}
