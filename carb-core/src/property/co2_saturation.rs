//! Liquid CO2 and the gas over it, as in a cylinder.

use crate::evidence::caution::{Range, SATURATION_NEAR_CRITICAL};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited, symbol};
use crate::evidence::source::SPAN_WAGNER;
use crate::number::{exp, pow, sqrt};
use crate::quantity::unit::{KELVIN, KILOGRAM_PER_CUBIC_METRE, PASCAL};

/// Temperatures to which the densities are good to 0.1 %.
pub static TEMPERATURE: Range = Range { caution: &SATURATION_NEAR_CRITICAL, low: 216.592, high: 303.15 };

/// Temperature above which CO2 is no liquid, K.
pub const CRITICAL_TEMPERATURE: f64 = 304.1282;
const CRITICAL_PRESSURE: f64 = 7.3773e6;
const CRITICAL_DENSITY: f64 = 467.6;

/// How far below the critical point, as a share; a little above 0 there, so that its powers exist.
#[inline(always)]
fn below(t: f64) -> f64 {
    let x = 1.0 - t / CRITICAL_TEMPERATURE;
    if x > 1e-15 { x } else { 1e-15 }
}

/// Saturation pressure, Pa, at the temperature `t` (K).
#[inline(always)]
pub fn pressure(t: f64) -> f64 {
    let x = below(t);
    let x2 = x * x;
    let sum = -7.0602087 * x + 1.9391218 * (x * sqrt(x)) - 1.6463597 * x2 - 3.2995634 * (x2 * x2);
    CRITICAL_PRESSURE * exp(CRITICAL_TEMPERATURE / t * sum)
}

/// Density of the saturated liquid, kg/m3, at the temperature `t` (K).
#[inline(always)]
pub fn liquid_density(t: f64) -> f64 {
    let x = below(t);
    let sum = 1.9245108 * pow(x, 0.34) - 0.62385555 * sqrt(x) - 0.32731127 * pow(x, 10.0 / 6.0)
        + 0.39245142 * pow(x, 11.0 / 6.0);
    CRITICAL_DENSITY * exp(sum)
}

/// Density of the saturated vapour, kg/m3, at the temperature `t` (K).
#[inline(always)]
pub fn vapour_density(t: f64) -> f64 {
    let x = below(t);
    let sum = -1.7074879 * pow(x, 0.34)
        - 0.8227467 * sqrt(x)
        - 4.6008549 * x
        - 10.111178 * pow(x, 7.0 / 3.0)
        - 29.742252 * pow(x, 14.0 / 3.0);
    CRITICAL_DENSITY * exp(sum)
}

const INPUTS: &[Symbol] = &[limited("T", Measure::In(&KELVIN), "temperature", 216.592, 303.15)];
const UNCERTAINTY: &str = "difference from the authors' own equation of state below 30 °C";

/// The catalogue's entry for [`pressure`].
pub static PRESSURE: Equation = Equation {
    id: "co2_saturation_pressure",
    title: "saturation pressure of CO2",
    formula: "P = 7377300*exp(304.1282/T*(-7.0602087*(1 - T/304.1282) + 1.9391218*(1 - T/304.1282)^1.5 - 1.6463597*(1 - T/304.1282)^2 - 3.2995634*(1 - T/304.1282)^4))",
    result: symbol("P", Measure::In(&PASCAL), "saturation pressure, absolute"),
    inputs: INPUTS,
    uncertainty_percent: Some(0.03),
    uncertainty: UNCERTAINTY,
    sources: &[&SPAN_WAGNER],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| pressure(x[0]),
};

/// The catalogue's entry for [`liquid_density`].
pub static LIQUID_DENSITY: Equation = Equation {
    id: "co2_liquid_density",
    title: "density of liquid CO2 at saturation",
    formula: "l = 467.6*exp(1.9245108*(1 - T/304.1282)^0.34 - 0.62385555*(1 - T/304.1282)^0.5 - 0.32731127*(1 - T/304.1282)^(10/6) + 0.39245142*(1 - T/304.1282)^(11/6))",
    result: symbol("l", Measure::In(&KILOGRAM_PER_CUBIC_METRE), "density of the liquid"),
    inputs: INPUTS,
    uncertainty_percent: Some(0.1),
    uncertainty: UNCERTAINTY,
    sources: &[&SPAN_WAGNER],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| liquid_density(x[0]),
};

/// The catalogue's entry for [`vapour_density`].
pub static VAPOUR_DENSITY: Equation = Equation {
    id: "co2_vapour_density",
    title: "density of CO2 vapour at saturation",
    formula: "v = 467.6*exp(-1.7074879*(1 - T/304.1282)^0.34 - 0.8227467*(1 - T/304.1282)^0.5 - 4.6008549*(1 - T/304.1282) - 10.111178*(1 - T/304.1282)^(7/3) - 29.742252*(1 - T/304.1282)^(14/3))",
    result: symbol("v", Measure::In(&KILOGRAM_PER_CUBIC_METRE), "density of the vapour"),
    inputs: INPUTS,
    uncertainty_percent: Some(0.1),
    uncertainty: UNCERTAINTY,
    sources: &[&SPAN_WAGNER],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| vapour_density(x[0]),
};
