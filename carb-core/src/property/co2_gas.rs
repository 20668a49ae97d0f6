//! CO2 as a gas: second virial coefficient, compressibility, fugacity, density.
//!
//! Two virial terms in pressure, `Z = 1 + B q + (C - B^2) q^2` with `q = P/RT`: within 0.1 % of the reference equation
//! of Span and Wagner to 10 bar and 45 °C, within 0.15 % to 16 bar and 60 °C (checked against their values).

use super::constant::{CO2_MOLAR_MASS, GAS_CONSTANT};
use crate::evidence::caution::{GAS_PRESSURE, Range};
use crate::evidence::equation::{Equation, Measure, Standing, limited};
use crate::evidence::source::{CODATA, KAYE_LABY, SPAN_WAGNER};
use crate::number::exp;
use crate::quantity::unit::{KELVIN, PASCAL};

/// Absolute pressures up to which the gas equations were checked.
pub static CHECKED: Range = Range { caution: &GAS_PRESSURE, low: 0.0, high: 16.0e5 };

/// Third virial coefficient, m6/mol2: one constant suffices at the pressures of this trade.
pub const THIRD_VIRIAL: f64 = 4.9e-9;

/// Second virial coefficient of CO2, m3/mol, at the temperature `t` (K).
#[inline(always)]
pub fn second_virial(t: f64) -> f64 {
    137.6e-6 - 87.7e-6 * exp(325.7 / t)
}

/// The catalogue's entry for [`second_virial`].
pub static SECOND_VIRIAL: Equation = Equation {
    id: "co2_second_virial",
    title: "second virial coefficient of CO2",
    formula: "B = 0.0001376 - 0.0000877*exp(325.7/T)",
    result: limited("B", Measure::Plain("m3/mol"), "second virial coefficient", -1.0, 0.0),
    inputs: &[limited("T", Measure::In(&KELVIN), "temperature", 220.0, 1100.0)],
    uncertainty_percent: Some(1.0),
    uncertainty: "difference from Span and Wagner over 0-60 °C",
    sources: &[&KAYE_LABY],
    standing: Standing::Published,
    kernel: |x| second_virial(x[0]),
};

/// Compressibility factor at the absolute pressure `p` (Pa) and temperature `t` (K), with second virial `b`.
#[inline(always)]
pub fn compressibility(p: f64, t: f64, b: f64) -> f64 {
    let q = p / (GAS_CONSTANT * t);
    1.0 + b * q + (THIRD_VIRIAL - b * b) * (q * q)
}

/// The catalogue's entry for [`compressibility`].
pub static COMPRESSIBILITY: Equation = Equation {
    id: "co2_compressibility",
    title: "compressibility factor of CO2",
    formula: "Z = 1 + B*P/(8.314462618*T) + (0.0000000049 - B^2)*(P/(8.314462618*T))^2",
    result: limited("Z", Measure::Plain(""), "compressibility factor", 0.0, 1.0),
    inputs: &[
        limited("P", Measure::In(&PASCAL), "pressure, absolute", 0.0, 16.0e5),
        limited("T", Measure::In(&KELVIN), "temperature", 273.15, 333.15),
        limited("B", Measure::Plain("m3/mol"), "second virial coefficient", -2.0e-4, 0.0),
    ],
    uncertainty_percent: Some(0.15),
    uncertainty: "largest difference from Span and Wagner over 0-60 °C and 0-16 bar; the constant third coefficient is our fit",
    sources: &[&KAYE_LABY, &SPAN_WAGNER, &CODATA],
    standing: Standing::Judgement,
    kernel: |x| compressibility(x[0], x[1], x[2]),
};

/// Logarithm of the fugacity coefficient at `q` = P/RT (mol/m3), with second virial `b`.
#[inline(always)]
pub fn ln_fugacity(q: f64, b: f64) -> f64 {
    b * q + 0.5 * (THIRD_VIRIAL - b * b) * (q * q)
}

/// The catalogue's entry for the fugacity coefficient, `exp` of [`ln_fugacity`].
pub static FUGACITY: Equation = Equation {
    id: "co2_fugacity",
    title: "fugacity coefficient of CO2",
    formula: "phi = exp(B*P/(8.314462618*T) + (0.0000000049 - B^2)/2*(P/(8.314462618*T))^2)",
    result: limited("phi", Measure::Plain(""), "fugacity over pressure", 0.0, 1.0),
    inputs: COMPRESSIBILITY.inputs,
    uncertainty_percent: Some(0.1),
    uncertainty: "largest difference from Span and Wagner over 0-60 °C and 0-16 bar",
    sources: &[&KAYE_LABY, &SPAN_WAGNER, &CODATA],
    standing: Standing::Judgement,
    kernel: |x| exp(ln_fugacity(x[0] / (GAS_CONSTANT * x[1]), x[2])),
};

/// Density of CO2 gas, kg/m3, at the absolute pressure `p` (Pa) and temperature `t` (K), with second virial `b`.
#[inline(always)]
pub fn density(p: f64, t: f64, b: f64) -> f64 {
    p * CO2_MOLAR_MASS / (compressibility(p, t, b) * (GAS_CONSTANT * t))
}

/// The catalogue's entry for [`density`].
pub static DENSITY: Equation = Equation {
    id: "co2_gas_density",
    title: "density of CO2 gas",
    formula: "g = P*0.0440095/((1 + B*P/(8.314462618*T) + (0.0000000049 - B^2)*(P/(8.314462618*T))^2)*8.314462618*T)",
    result: limited("g", Measure::Plain("kg/m3"), "density, grams per litre", 0.0, f64::INFINITY),
    inputs: COMPRESSIBILITY.inputs,
    uncertainty_percent: Some(0.15),
    uncertainty: "that of the compressibility factor",
    sources: &[&KAYE_LABY, &SPAN_WAGNER, &CODATA],
    standing: Standing::Judgement,
    kernel: |x| density(x[0], x[1], x[2]),
};
