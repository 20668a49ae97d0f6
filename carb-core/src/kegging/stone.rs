//! The regulator pressure at which a carbonation stone works.
//!
//! Only the pressure over the drink sets the carbonation that it comes to. The head of drink over the stone, and what the
//! stone itself takes before gas comes out of it, are on top of that.

use crate::balance::{pressure, sealed};
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::{Caution, SLACK, WETTING_IN_WATER};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited};
use crate::evidence::source::STONE_PRACTICE;
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::constant::STANDARD_GRAVITY;
use crate::property::solubility::{Here, Solubility};
use crate::property::{carbonating, liquid, water};
use crate::quantity::unit::{KILOGRAM_PER_CUBIC_METRE, METRE, PASCAL};
use crate::quantity::{
    Carbonation, GaugePressure, Key, Length, Name, PressureDifference, SpecificGravity, Temperature,
};

const HEAD: Symbol = limited("h", Measure::In(&PASCAL), "head of the drink over the stone", 0.0, 3.0e5);

/// The head of a drink.
pub static HEAD_OF_DRINK: Equation = Equation {
    id: "stone_head",
    title: "head of the drink over a stone",
    formula: "h = 9.80665*d*z",
    result: HEAD,
    inputs: &[
        limited("d", Measure::In(&KILOGRAM_PER_CUBIC_METRE), "density of the drink", 950.0, 1200.0),
        limited("z", Measure::In(&METRE), "height of drink over the stone", 0.0, 30.0),
    ],
    uncertainty_percent: Some(0.5),
    uncertainty: "gravity differs so much over the globe",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| head(x[0], x[1]),
};

/// What the regulator has to give.
pub static STONE_PRESSURE_EQUATION: Equation = Equation {
    id: "stone_regulator",
    title: "regulator pressure of a carbonation stone, gauge",
    formula: "G = S + h + w + m",
    result: limited("G", Measure::In(&PASCAL), "regulator pressure, gauge", 0.0, 4.0e6),
    inputs: &[
        limited("S", Measure::In(&PASCAL), "pressure over the drink that holds the carbonation, gauge", 0.0, 1.0e6),
        HEAD,
        limited("w", Measure::In(&PASCAL), "wetting pressure of the stone in the drink", 0.0, 1.0e5),
        limited("m", Measure::In(&PASCAL), "pressure to spare, so that gas flows", 0.0, 1.0e5),
    ],
    uncertainty_percent: None,
    uncertainty: "exact; the wetting pressure is measured, 3 to 10 psi being usual",
    sources: &[&STONE_PRACTICE],
    standing: Standing::CommonPractice,
    kernel: |x| x[0] + x[1] + x[2] + x[3],
};

#[inline(always)]
fn head(density: f64, depth: f64) -> f64 {
    STANDARD_GRAVITY * density * depth
}

#[derive(Clone, Copy)]
struct Stone<S> {
    solubility: S,
    /// Whether the gravity was read; else it follows from the composition.
    read: bool,
}

impl<S: Solubility> Kernel<9, 3> for Stone<S> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 9] = [
        Key::Carbonation,
        Key::Temperature,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
        Key::Gravity,
        Key::Depth,
        Key::Wetting,
        Key::Margin,
    ];
    #[inline(always)]
    fn eval(&self, x: [f64; 9], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let [c, t, ambient, abv, extract, read, depth, wetting, margin] = x;
        let (here, bits) = self.solubility.here(t, abv, extract, steps);
        let total = here.total_pressure(c);
        let told = here.tell(total, 0.0, steps);
        let surface = pressure::gauge(total, ambient, steps);

        let mut sg = read;
        if !self.read {
            sg = steps.step(&liquid::GRAVITY_OF_COMPOSITION, &[extract, abv], liquid::gravity(abv, extract));
        }
        let of_water = steps.step(&water::DENSITY, &[t], water::density(t));
        let density = steps.step(&liquid::DENSITY, &[sg, of_water, abv, t], liquid::density(t, of_water, sg, abv));
        let range = steps.within(&liquid::DENSITY_ALCOHOL, abv) | steps.within(&liquid::DENSITY_TEMPERATURE, t);
        let head = steps.step(&HEAD_OF_DRINK, &[density, depth], head(density, depth));
        let gauge = surface + head + wetting + margin;
        steps.record(&STONE_PRESSURE_EQUATION, &[surface, head, wetting, margin], gauge);

        let range = range | steps.within(&carbonating::PRESSURE, gauge);
        let low = if surface < -SLACK * ambient { code::TARGET_BELOW_HELD } else { bits | told | range };
        ([gauge, surface, head], if total > sealed::MOST { code::PRESSURE_TOO_HIGH } else { low })
    }
    fn explain(&self, status: i32, [c, t, ambient, abv, extract, ..]: [f64; 9]) -> Error {
        let parameter = Name::first(Key::Carbonation);
        if status == code::TARGET_BELOW_HELD {
            let (here, _) = self.solubility.here(t, abv, extract, &mut NoSteps);
            return Error::TargetBelowHeld {
                parameter,
                value: c,
                held: here.dissolved_under(ambient),
                remedy: "a stone only adds CO2: the drink holds that much open to the air, under CO2",
            };
        }
        Error::PressureTooHigh { parameter, limit: sealed::MOST }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<9, 3>>(read: bool, context: &Context, visitor: V) -> V::Output {
    let solubility = context.solubility();
    visitor.visit(Stone { solubility, read })
}

/// A stone, and where it lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Placed {
    /// Height of drink over the stone.
    pub depth: Length,
    /// Pressure at which gas first comes out of it, in the drink.
    pub wetting: PressureDifference,
    /// Pressure to spare, so that gas flows.
    pub margin: PressureDifference,
    /// Specific gravity of the drink; where it was not read, that of its composition.
    pub gravity: Option<SpecificGravity>,
}

/// The pressures of a carbonation stone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StonePressure {
    /// What the regulator has to give.
    pub regulator: GaugePressure,
    /// The pressure over the drink, which alone sets the carbonation.
    pub surface: GaugePressure,
    /// The head of drink over the stone.
    pub head: PressureDifference,
}

/// The kernel's columns, SI.
pub(crate) fn columns(
    carbonation: Carbonation,
    temperature: Temperature,
    stone: &Placed,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<[f64; 9], Error> {
    let drink = context.beverage;
    Ok([
        carbonation.si(),
        temperature.si(),
        context.ambient(steps)?,
        drink.abv(),
        drink.extract(),
        stone.gravity.map_or(1.0, SpecificGravity::si),
        stone.depth.si(),
        stone.wetting.si(),
        stone.margin.si(),
    ])
}

/// The regulator pressure at which a carbonation stone brings a drink to a carbonation: that over the drink, the head over
/// the stone, what the stone takes, and some to spare.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, or the drink holds more than the target
/// even open to the air.
pub fn stone_pressure(
    carbonation: Carbonation,
    temperature: Temperature,
    stone: &Placed,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<StonePressure>, Error> {
    let mut notes = Notes::default();
    let x = columns(carbonation, temperature, stone, context, &mut Both(&mut notes, steps))?;
    let once = Once { x, steps: &mut Both(&mut notes, steps) };
    let [regulator, surface, head] = visit(stone.gravity.is_some(), context, once)?;
    context.note_model(&mut notes.cautions);
    if stone.wetting.si() > 0.0 {
        notes.cautions.add(Caution::of(&WETTING_IN_WATER, stone.wetting.si()));
    }
    let value = StonePressure {
        regulator: GaugePressure::from_si(regulator),
        surface: GaugePressure::from_si(surface),
        head: PressureDifference::from_si(head),
    };
    Ok(Answer { value, context: *context, notes })
}
