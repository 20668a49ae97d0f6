//! The drink in its fermenter: what CO2 is left after fermentation, open to the air, under pressure, or chilled before it is
//! packaged.

use super::pressure;
use super::sealed::{Closed, Sealed};
use super::visit_solubility;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, ColdCrash, Context, Fermenter, ResidualModel};
use crate::error::{Error, code};
use crate::evidence::caution::{Caution, FERMENTER_VACUUM, RESIDUAL_HELD, Range, above, below};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::HALL;
use crate::evidence::{Notes, Steps};
use crate::property::constant::STANDARD_ATMOSPHERE;
use crate::property::solubility::{Here, Solubility};
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, FACTOR, FAHRENHEIT, PASCAL, VOLUMES};
use crate::quantity::{Carbonation, Key, Name};

/// Temperatures of the residual table; beyond its ends its last value is kept: above, the quadratic turns up; below, only a chilled drink goes.
pub static TABLE: Range = Range { caution: &RESIDUAL_HELD, low: 273.15, high: 303.15 };

pub(crate) const TABLE_START_F: f64 = 32.0;
pub(crate) const TABLE_END_F: f64 = 86.0;

/// The quadratic itself, volumes at `f` °F under one atmosphere: it means nothing beyond its ends.
#[inline(always)]
pub(crate) fn quadratic(f: f64) -> f64 {
    3.0378 + f * (-0.050062 + 0.00026555 * f)
}

#[inline(always)]
fn table(t: f64, ambient: f64, factor: f64) -> f64 {
    let f = FAHRENHEIT.from_si(t);
    let held = if f < TABLE_END_F { f } else { TABLE_END_F };
    let held = if held > TABLE_START_F { held } else { TABLE_START_F };
    VOLUMES.to_si(factor * quadratic(held) * ambient / STANDARD_ATMOSPHERE)
}

/// The catalogue's entry for the residual table.
pub static RESIDUAL_TABLE: Equation = Equation {
    id: "residual_table",
    title: "residual CO2, the trade's quadratic",
    formula: "r = k*(3.0378 - 0.050062*max(32, min(f, 86)) + 0.00026555*max(32, min(f, 86))^2)*a/101325",
    result: symbol("r", Measure::In(&VOLUMES), "CO2 left in the drink"),
    inputs: &[
        limited("f", Measure::In(&FAHRENHEIT), "highest temperature since active fermentation", 32.0, 86.0),
        symbol(
            "a",
            Measure::In(&PASCAL),
            "pressure over the drink, absolute: of the air outside, and what the fermenter held",
        ),
        symbol("k", Measure::In(&FACTOR), "factor on the residual CO2, 1 by default"),
    ],
    uncertainty_percent: Some(8.0),
    uncertainty: "judgement; it is a table for water, beer holds 3-7 % less; fresh beer may hold more than equilibrium",
    sources: &[&HALL],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| table(x[0], x[1], x[2]),
};

/// CO2 left by equilibrium: the drink's own model, times a factor.
pub static RESIDUAL_EQUILIBRIUM: Equation = Equation {
    id: "residual_equilibrium",
    title: "residual CO2 at equilibrium with CO2 at the pressure over the drink",
    formula: "r = k*max(c, 0)",
    result: symbol("r", Measure::In(&VOLUMES), "CO2 left in the drink"),
    inputs: &[
        limited("c", Measure::In(&VOLUMES), "CO2 held at equilibrium", 0.0, 2.0),
        limited("k", Measure::In(&FACTOR), "factor on the residual CO2, 1 by default", 0.0, 3.0),
    ],
    uncertainty_percent: Some(8.0),
    uncertainty: "judgement: solubility 6 %, and fresh beer may hold more than equilibrium",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| if x[0] > 0.0 { x[0] * x[1] } else { 0.0 },
};

/// The share of the CO2 that a drink keeps when its closed fermenter is chilled.
pub static CRASH_GAIN: Equation = Equation {
    id: "crash_gain",
    title: "residual CO2 after chilling in a closed fermenter",
    formula: "s = r*d/c",
    result: symbol("s", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in the drink, chilled"),
    inputs: &[
        symbol("r", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 left before chilling"),
        limited("d", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 dissolved by balance after chilling", 0.1, 10.0),
        limited("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 dissolved at equilibrium before chilling", 0.1, 10.0),
    ],
    uncertainty_percent: Some(3.0),
    uncertainty: "judgement: the gas over the drink is taken to be CO2 and vapour alone, and the vessel to be tight",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| x[0] * x[1] / x[2],
};

/// What is left after fermentation, and by which model.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Left {
    pub model: ResidualModel,
    pub factor: f64,
    pub crash: ColdCrash,
}

impl Left {
    pub(crate) fn of(context: &Context, crash: ColdCrash) -> Self {
        Self { model: context.basis.residual, factor: context.basis.residual_factor, crash }
    }

    /// CO2 left at the temperature `t` under the pressure `p` (absolute); kg/m3.
    #[inline(always)]
    fn equilibrium<S: Solubility>(
        self,
        solubility: S,
        [t, p, abv, extract]: [f64; 4],
        steps: &mut impl Steps,
    ) -> (f64, i32) {
        match self.model {
            ResidualModel::Table => {
                let bits = steps.within(&TABLE, t);
                (steps.step(&RESIDUAL_TABLE, &[t, p, self.factor], table(t, p, self.factor)), bits)
            }
            ResidualModel::Equilibrium => {
                let (here, bits) = solubility.here(t, abv, extract, steps);
                let told = here.tell(p, 0.0, steps);
                let held = here.dissolved_under(p);
                // A relation carried beyond its range may leave less than nothing.
                let left = if held > 0.0 { held * self.factor } else { 0.0 };
                (steps.step(&RESIDUAL_EQUILIBRIUM, &[held, self.factor], left), bits | told)
            }
        }
    }

    /// CO2 left in a drink (kg/m3), a status, and the pressure in a fermenter that was chilled closed (Pa, absolute).
    #[inline(always)]
    pub(crate) fn residual<S: Solubility>(
        self,
        solubility: S,
        [warmest, ambient, abv, extract, gauge, cold, headspace]: [f64; 7],
        steps: &mut impl Steps,
    ) -> (f64, i32, f64) {
        let p = if gauge == 0.0 { ambient } else { pressure::absolute(gauge, ambient, steps) };
        let t = if matches!(self.crash, ColdCrash::Supplied) { cold } else { warmest };
        let (left, bits) = self.equilibrium(solubility, [t, p, abv, extract], steps);
        let warmer = if matches!(self.crash, ColdCrash::Open) { false } else { above(cold, warmest) };
        let status = if warmer { code::OUT_OF_RANGE } else { bits };
        if !matches!(self.crash, ColdCrash::Closed) {
            return (left, status, p);
        }
        let closed = Closed { headspace, filling: warmest, air: 0.0 };
        let (warm, more) = solubility.here(warmest, abv, extract, steps);
        let open = Sealed::new(warm, closed, warmest, steps);
        let co2 = open.co2_of(p);
        let (_, told) = open.total(co2, steps);
        let (chilled, cold_bits) = solubility.here(cold, abv, extract, steps);
        let shut = Sealed::new(chilled, closed, cold, steps);
        let (cold_co2, solved) = shut.solve(open.content(co2));
        let (fallen, cold_told) = shut.total(cold_co2, steps);
        let (before, after) = (open.dissolved(co2), shut.dissolved(cold_co2));
        let gained = steps.step(&CRASH_GAIN, &[left, after, before], left * after / before);
        // Without any gas over it, and where a relation beyond its range holds nothing warm or too much cold, nothing is
        // gained.
        let gains = (headspace > 0.0) & (before > 0.0) & (solved != code::TARGET_BELOW_HELD);
        let range = status | more | told | cold_bits | cold_told;
        let found = if gains & (solved < 0) { solved } else { range };
        (if gains { gained } else { left }, if status < 0 { status } else { found }, fallen)
    }
}

#[derive(Clone, Copy)]
struct Residual<S> {
    solubility: S,
    left: Left,
}

impl<S: Solubility> Kernel<7, 1> for Residual<S> {
    const COLUMNS: [Key; 7] =
        [Key::Warmest, Key::Ambient, Key::Abv, Key::Extract, Key::FermenterGauge, Key::Crash, Key::FermenterHeadspace];
    #[inline(always)]
    fn eval(&self, x: [f64; 7], steps: &mut impl Steps) -> ([f64; 1], i32) {
        let (r, status, _) = self.left.residual(self.solubility, x, steps);
        ([r], status)
    }
    fn explain(&self, status: i32, [warmest, _, _, _, _, cold, _]: [f64; 7]) -> Error {
        no_residual(status, warmest, cold)
    }
}

/// Why there is no residual CO2.
pub(crate) fn no_residual(status: i32, warmest: f64, cold: f64) -> Error {
    match status {
        code::OUT_OF_RANGE => {
            let low = Key::Crash.limits().unwrap_or_default().0;
            Error::OutOfRange { parameter: Name::first(Key::Crash), value: cold, low, high: warmest }
        }
        code::VESSEL_FULL => Error::VesselFull { parameter: Name::first(Key::Crash), value: cold },
        _ => Error::NotConverged { parameter: Name::first(Key::Warmest) },
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<7, 1>>(context: &Context, crash: ColdCrash, visitor: V) -> V::Output {
    let left = Left::of(context, crash);
    visit_solubility!(visitor: V, context, solubility => Residual { solubility, left })
}

/// CO2 left in a drink after fermentation: what it holds at the highest temperature that it has had since, under the
/// pressure that it had then, and what chilling before packaging adds.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, or it was chilled to more than it was
/// warm.
pub fn residual_co2(
    fermenter: &Fermenter,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Carbonation>, Error> {
    let mut notes = Notes::default();
    let drink = context.beverage;
    let watch = &mut Both(&mut notes, steps);
    let ambient = context.ambient(watch)?;
    let warmest = fermenter.warmest.si();
    crate::basis::kernel::check(Key::Warmest, warmest)?;
    let [gauge, cold, headspace] = fermenter.si();
    let x = [warmest, ambient, drink.abv(), drink.extract(), gauge, cold, headspace];
    let [r] = visit(context, fermenter.crash, Once { x, steps: watch })?;
    if fermenter.crash == ColdCrash::Closed {
        let left = Left::of(context, fermenter.crash);
        let (_, _, fallen) = left.residual(context.solubility(), x, &mut crate::evidence::NoSteps);
        if below(fallen, ambient) {
            notes.cautions.add(Caution { kind: &FERMENTER_VACUUM, value: fallen, limit: ambient });
        }
    }
    if context.basis.residual == ResidualModel::Equilibrium || fermenter.crash == ColdCrash::Closed {
        context.note_model(&mut notes.cautions);
    }
    Ok(Answer { value: Carbonation::from_si(r), context: *context, notes })
}
