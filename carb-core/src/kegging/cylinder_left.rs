//! What is left in a cylinder: what its gauge tells, and what the scale does.

use super::gas_budget::KEGS;
use crate::balance::pressure;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::{
    CYLINDER_LIQUID_FULL, CYLINDER_OVERFILLED, CYLINDER_OVERWEIGHT, Caution, GAUGE_SHOWS_TEMPERATURE, above, below,
};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::{Notes, Steps};
use crate::number::root::bracketed;
use crate::property::co2_saturation::{self, liquid_density, vapour_density};
use crate::property::cylinder::MOST_FILLING;
use crate::quantity::unit::{GRAM, GRAM_PER_GRAM, PERCENT};
use crate::quantity::{AbsolutePressure, GaugePressure, Key, Mass, Name, Percent, Temperature};

/// Share of a full charge when the last liquid is gone.
pub static GAS_ONLY: Equation = Equation {
    id: "cylinder_gas_only",
    title: "share of a full charge left when the last liquid is gone",
    formula: "s = v/(10*f)",
    result: symbol("s", Measure::In(&PERCENT), "share of a full charge"),
    inputs: &[
        limited("v", Measure::Plain("kg/m3"), "density of the vapour at saturation", 10.0, 345.0),
        limited(
            "f",
            Measure::In(&GRAM_PER_GRAM),
            "CO2 in the full cylinder over the water that it would hold",
            0.5,
            0.9,
        ),
    ],
    uncertainty_percent: Some(0.1),
    uncertainty: "that of the density; the water is taken as 1 kg/L",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| x[0] / (10.0 * x[1]),
};

/// What is left, by weight.
pub static LEFT: Equation = Equation {
    id: "cylinder_contents",
    title: "CO2 left in the cylinder",
    formula: "m = g - t",
    result: symbol("m", Measure::In(&GRAM), "CO2 left"),
    inputs: &[
        limited("g", Measure::In(&GRAM), "what the cylinder weighs now", 6000.0, 60_000.0),
        limited("t", Measure::In(&GRAM), "what it weighs empty", 1000.0, 5000.0),
    ],
    uncertainty_percent: None,
    uncertainty: "arithmetic",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] - x[1],
};

/// Share of a full charge that is left.
pub static LEFT_SHARE: Equation = Equation {
    id: "cylinder_share",
    title: "share of a full charge that is left",
    formula: "s = 100*m/c",
    result: symbol("s", Measure::In(&PERCENT), "share of a full charge"),
    inputs: &[
        limited("m", Measure::In(&GRAM), "CO2 left", 0.0, 50_000.0),
        limited("c", Measure::In(&GRAM), "CO2 in the full cylinder", 100.0, 50_000.0),
    ],
    uncertainty_percent: None,
    uncertainty: "arithmetic",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| 100.0 * x[0] / x[1],
};

#[derive(Clone, Copy)]
struct Gauge;

impl Kernel<3, 4> for Gauge {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 3] = [Key::Cylinder, Key::FillingRatio, Key::Ambient];
    #[inline(always)]
    fn eval(&self, [t, filling, ambient]: [f64; 3], steps: &mut impl Steps) -> ([f64; 4], i32) {
        let p = steps.step(&co2_saturation::PRESSURE, &[t], co2_saturation::pressure(t));
        let gauge = pressure::gauge(p, ambient, steps);
        let v = steps.step(&co2_saturation::VAPOUR_DENSITY, &[t], vapour_density(t));
        let share = steps.step(&GAS_ONLY, &[v, filling], v / (10.0 * filling));
        let (low, high) = Key::Cylinder.limits().unwrap_or_default();
        let full = bracketed(low, high, |t| liquid_density(t) - 1000.0 * filling);
        if let Some(full) = full {
            // The full cylinder is all liquid where the liquid is as light as its filling.
            steps.record(&co2_saturation::LIQUID_DENSITY, &[full], liquid_density(full));
        }
        let status = if full.is_none() { code::NOT_CONVERGED } else { steps.within(&co2_saturation::TEMPERATURE, t) };
        ([gauge, p, share, full.unwrap_or(high)], status)
    }
    fn explain(&self, _: i32, _: [f64; 3]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::FillingRatio) }
    }
}

/// Hands the kernel of the gauge to a visitor.
pub(crate) fn visit<V: Visit<3, 4>>(visitor: V) -> V::Output {
    visitor.visit(Gauge)
}

/// What the gauge of a cylinder tells.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CylinderGauge {
    /// What it shows while there is liquid, however much.
    pub gauge: GaugePressure,
    /// The same above vacuum.
    pub absolute: AbsolutePressure,
    /// Share of a full charge left when the last liquid is gone: from there on the gauge falls.
    pub falling: Percent,
    /// Temperature at which a full cylinder is full of liquid.
    pub liquid_full: Temperature,
}

/// What the gauge of a cylinder shows while there is liquid in it, how little is left when it begins to fall, and when a full
/// cylinder is full of liquid. `filling` is the CO2 in the full cylinder over the water that it would hold.
///
/// # Errors
/// Where there is no liquid at the temperature, a value lies outside its limits, or nothing is said of the air outside.
pub fn cylinder_left(
    temperature: Temperature,
    filling: f64,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<CylinderGauge>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let t = temperature.si();
    let x = [t, filling, context.ambient(watch)?];
    let [gauge, absolute, falling, full] = visit(Once { x, steps: watch })?;
    notes.cautions.add(Caution::of(&GAUGE_SHOWS_TEMPERATURE, gauge));
    if !below(t, full) {
        notes.cautions.add(Caution { kind: &CYLINDER_LIQUID_FULL, value: t, limit: full });
    }
    if above(filling, MOST_FILLING) {
        notes.cautions.add(Caution { kind: &CYLINDER_OVERFILLED, value: filling, limit: MOST_FILLING });
    }
    let value = CylinderGauge {
        gauge: GaugePressure::from_si(gauge),
        absolute: AbsolutePressure::from_si(absolute),
        falling: Percent::from_si(falling),
        liquid_full: Temperature::from_si(full),
    };
    Ok(Answer { value, context: *context, notes })
}

/// CO2 that a keg of 19 L takes where nothing else is said, kg: carbonated, served, its headspace purged, a little lost.
pub const USUAL_KEG: f64 = GRAM.to_si(150.0);
/// The least CO2 for a keg that kegs are counted by, kg.
const LEAST_KEG: f64 = 1e-4;
/// How much more than its charge a cylinder may seem to hold, for the scale and the tare, before that is a danger.
const SCALE_ERROR: f64 = 1.02;

#[derive(Clone, Copy)]
struct Contents;

impl Kernel<4, 3> for Contents {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 4] = [Key::Gross, Key::Tare, Key::Charge, Key::Gas];
    #[inline(always)]
    fn eval(&self, [gross, tare, charge, keg]: [f64; 4], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let left = steps.step(&LEFT, &[gross, tare], gross - tare);
        let share = steps.step(&LEFT_SHARE, &[left, charge], 100.0 * left / charge);
        let none = below(keg, LEAST_KEG);
        let each = if none { LEAST_KEG } else { keg };
        let kegs = steps.step(&KEGS, &[left, each], left / each);
        ([left, share, kegs], if none | (left < 0.0) { code::OUT_OF_RANGE } else { 0 })
    }
    fn explain(&self, _: i32, [gross, tare, _, keg]: [f64; 4]) -> Error {
        let (key, value, low) = if gross < tare { (Key::Gross, gross, tare) } else { (Key::Gas, keg, LEAST_KEG) };
        let (_, high) = key.limits().unwrap_or_default();
        Error::OutOfRange { parameter: Name::first(key), value, low, high }
    }
}

/// Hands the kernel of the contents to a visitor.
pub(crate) fn visit_contents<V: Visit<4, 3>>(visitor: V) -> V::Output {
    visitor.visit(Contents)
}

/// What is left in a cylinder.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CylinderContents {
    /// CO2 left.
    pub left: Mass,
    /// Share of a full charge.
    pub share: Percent,
    /// Kegs that it does.
    pub kegs: f64,
}

/// What is left in a cylinder by its weight now and empty, and how many kegs that does at `each`.
///
/// # Errors
/// Where a value lies outside its limits, or the cylinder weighs less than it does empty.
pub fn cylinder_contents(
    gross: Mass,
    tare: Mass,
    charge: Mass,
    each: Mass,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<CylinderContents>, Error> {
    let mut notes = Notes::default();
    let x = [gross.si(), tare.si(), charge.si(), each.si()];
    let [left, share, kegs] = visit_contents(Once { x, steps: &mut Both(&mut notes, steps) })?;
    if above(left, charge.si() * SCALE_ERROR) {
        notes.cautions.add(Caution { kind: &CYLINDER_OVERWEIGHT, value: left, limit: charge.si() });
    }
    let value = CylinderContents { left: Mass::from_si(left), share: Percent::from_si(share), kegs };
    Ok(Answer { value, context: *context, notes })
}
