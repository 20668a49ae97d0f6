//! The drink open to the air: what CO2 is left after fermentation.

use super::with_solubility;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context, ResidualModel};
use crate::error::Error;
use crate::evidence::caution::{RESIDUAL_HELD, Range};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::HALL;
use crate::evidence::{Notes, Steps};
use crate::property::constant::STANDARD_ATMOSPHERE;
use crate::property::solubility::{Here, Solubility};
use crate::quantity::unit::{FACTOR, FAHRENHEIT, PASCAL, VOLUMES};
use crate::quantity::{Carbonation, Key, Temperature};

/// Temperatures of the residual table; above its end its last value is kept, because the quadratic turns up there.
pub static TABLE: Range = Range { caution: &RESIDUAL_HELD, low: 273.15, high: 303.15 };

const TABLE_END_F: f64 = 86.0;

#[inline(always)]
fn table(t: f64, ambient: f64, factor: f64) -> f64 {
    let f = FAHRENHEIT.from_si(t);
    let held = if f < TABLE_END_F { f } else { TABLE_END_F };
    VOLUMES.to_si(factor * (3.0378 + held * (-0.050062 + 0.00026555 * held)) * ambient / STANDARD_ATMOSPHERE)
}

/// The catalogue's entry for the residual table.
pub static RESIDUAL_TABLE: Equation = Equation {
    id: "residual_table",
    title: "residual CO2, the trade's quadratic",
    formula: "r = k*(3.0378 - 0.050062*min(f, 86) + 0.00026555*min(f, 86)^2)*a/101325",
    result: symbol("r", Measure::In(&VOLUMES), "CO2 left in the drink"),
    inputs: &[
        limited("f", Measure::In(&FAHRENHEIT), "highest temperature since active fermentation", 32.0, 86.0),
        symbol("a", Measure::In(&PASCAL), "pressure of the air outside, absolute"),
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
    title: "residual CO2 at equilibrium with CO2 at the pressure outside",
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

/// CO2 left by one of the two models; kg/m3.
#[inline(always)]
pub(crate) fn residual<S: Solubility>(
    solubility: S,
    model: ResidualModel,
    factor: f64,
    [t, ambient, abv, extract]: [f64; 4],
    steps: &mut impl Steps,
) -> (f64, i32) {
    match model {
        ResidualModel::Table => {
            let bits = steps.within(&TABLE, t);
            (steps.step(&RESIDUAL_TABLE, &[t, ambient, factor], table(t, ambient, factor)), bits)
        }
        ResidualModel::Equilibrium => {
            let (here, bits) = solubility.here(t, abv, extract, steps);
            let told = here.tell(ambient, 0.0, steps);
            let held = here.dissolved_under(ambient);
            // A relation carried beyond its range may leave less than nothing.
            let left = if held > 0.0 { held * factor } else { 0.0 };
            (steps.step(&RESIDUAL_EQUILIBRIUM, &[held, factor], left), bits | told)
        }
    }
}

#[derive(Clone, Copy)]
struct Residual<S> {
    solubility: S,
    model: ResidualModel,
    factor: f64,
}

impl<S: Solubility> Kernel<4, 1> for Residual<S> {
    const COLUMNS: [Key; 4] = [Key::Warmest, Key::Ambient, Key::Abv, Key::Extract];
    #[inline(always)]
    fn eval(&self, x: [f64; 4], steps: &mut impl Steps) -> ([f64; 1], i32) {
        let (r, status) = residual(self.solubility, self.model, self.factor, x, steps);
        ([r], status)
    }
    fn explain(&self, _: i32, _: [f64; 4]) -> Error {
        Error::NotConverged { parameter: crate::quantity::Name::first(Key::Warmest) }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<4, 1>>(context: &Context, visitor: V) -> V::Output {
    let (model, factor) = (context.basis.residual, context.basis.residual_factor);
    with_solubility!(context, solubility => visitor.visit(Residual { solubility, model, factor }))
}

/// CO2 left in a drink after fermentation: what it holds at the highest temperature that it has had since.
///
/// # Errors
/// Where a value lies outside its limits, or nothing is said of the air outside.
pub fn residual_co2(
    warmest: Temperature,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Carbonation>, Error> {
    let mut notes = Notes::default();
    let drink = context.beverage;
    let watch = &mut Both(&mut notes, steps);
    let ambient = context.ambient(watch)?;
    crate::basis::kernel::check(Key::Warmest, warmest.si())?;
    let x = [warmest.si(), ambient, drink.abv(), drink.extract()];
    let [r] = visit(context, Once { x, steps: watch })?;
    if context.basis.residual == ResidualModel::Equilibrium {
        context.note_model(&mut notes.cautions);
    }
    Ok(Answer { value: Carbonation::from_si(r), context: *context, notes })
}
