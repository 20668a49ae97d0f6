//! Gauge and absolute: the two sums that every pressure goes through.

use crate::evidence::equation::{Equation, Measure, Standing, symbol};
use crate::evidence::{Steps, Symbol};
use crate::quantity::unit::PASCAL;
use crate::quantity::{AbsolutePressure, GaugePressure};

/// A pressure in both references.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pressure {
    /// Above the air outside.
    pub gauge: GaugePressure,
    /// Above vacuum.
    pub absolute: AbsolutePressure,
}

const AMBIENT: Symbol = symbol("a", Measure::In(&PASCAL), "pressure of the air outside, absolute");

/// Absolute from gauge.
pub static ABSOLUTE: Equation = Equation {
    id: "absolute_pressure",
    title: "absolute pressure",
    formula: "P = G + a",
    result: symbol("P", Measure::In(&PASCAL), "pressure, absolute"),
    inputs: &[symbol("G", Measure::In(&PASCAL), "pressure, gauge"), AMBIENT],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] + x[1],
};

/// Gauge from absolute.
pub static GAUGE: Equation = Equation {
    id: "gauge_pressure",
    title: "gauge pressure",
    formula: "G = P - a",
    result: symbol("G", Measure::In(&PASCAL), "pressure, gauge"),
    inputs: &[symbol("P", Measure::In(&PASCAL), "pressure, absolute"), AMBIENT],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] - x[1],
};

/// Gauge pressure of an absolute one.
#[inline(always)]
pub fn gauge(absolute: f64, ambient: f64, steps: &mut impl Steps) -> f64 {
    steps.step(&GAUGE, &[absolute, ambient], absolute - ambient)
}

/// Absolute pressure of a gauge one.
#[inline(always)]
pub fn absolute(gauge: f64, ambient: f64, steps: &mut impl Steps) -> f64 {
    steps.step(&ABSOLUTE, &[gauge, ambient], gauge + ambient)
}

/// The total of a gas from its parts.
pub static TOTAL: Equation = Equation {
    id: "total_pressure",
    title: "total pressure over the drink",
    formula: "P = p + pw + o",
    result: symbol("P", Measure::In(&PASCAL), "total pressure, absolute"),
    inputs: &[
        symbol("p", Measure::In(&PASCAL), "partial pressure of CO2, absolute"),
        symbol("pw", Measure::In(&PASCAL), "vapour pressure of water"),
        symbol("o", Measure::In(&PASCAL), "partial pressure of other gas"),
    ],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] + x[1] + x[2],
};
