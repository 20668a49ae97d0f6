//! The solubility of CO2 in pure water at infinite dilution, by three correlations.
//!
//! Weiss is the default: he meets the laboratories' measurements at 0-40 °C best. The other two are offered for comparison.

use crate::evidence::Steps;
use crate::evidence::caution::{CORE_WARM, HENRY_TEMPERATURE, Range};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::{CARROLL, CODATA, IAPWS_G7, WEISS};
use crate::number::{exp, ln, pow};
use crate::property::constant::{GAS_CONSTANT, STANDARD_ATMOSPHERE, WATER_MOLAR_MASS};
use crate::property::water::CRITICAL_TEMPERATURE;
use crate::quantity::unit::{KELVIN, PASCAL};

/// Temperatures of the measurements behind Weiss's solubility.
pub static WEISS_TEMPERATURE: Range = Range { caution: &CORE_WARM, low: 0.0, high: 313.15 };
/// Temperatures for which the IAPWS guideline is given.
pub static IAPWS_TEMPERATURE: Range = Range { caution: &HENRY_TEMPERATURE, low: 274.19, high: 642.66 };
/// Temperatures for which Carroll et al. give their correlation.
pub static CARROLL_TEMPERATURE: Range = Range { caution: &HENRY_TEMPERATURE, low: 273.15, high: 433.15 };

/// Partial molar volume of dissolved CO2 in Weiss's own reduction, m3/mol.
pub const MOLAR_VOLUME: f64 = 32.3e-6;

/// A correlation of the solubility in water.
pub trait Law: Copy + Send + Sync + 'static {
    /// CO2 per mass of water and atmosphere of fugacity, mol/(kg atm), at one atmosphere and the temperature `t` (K), where
    /// the vapour pressure of water is `vapour` (Pa); and the range cautions.
    fn k0(self, t: f64, vapour: f64, steps: &mut impl Steps) -> (f64, i32);
}

/// Weiss 1974.
#[derive(Clone, Copy, Debug)]
pub struct Weiss;

/// IAPWS guideline G7-04.
#[derive(Clone, Copy, Debug)]
pub struct Iapws;

/// Carroll, Slupsky and Mather 1991.
#[derive(Clone, Copy, Debug)]
pub struct Carroll;

impl Law for Weiss {
    #[inline(always)]
    fn k0(self, t: f64, _: f64, steps: &mut impl Steps) -> (f64, i32) {
        (steps.step(&HENRY, &[t], weiss(t)), steps.within(&WEISS_TEMPERATURE, t))
    }
}

impl Law for Iapws {
    #[inline(always)]
    fn k0(self, t: f64, vapour: f64, steps: &mut impl Steps) -> (f64, i32) {
        let kh = steps.step(&IAPWS, &[t, vapour], iapws(t, vapour));
        let k0 = steps.step(&PER_MASS, &[kh, t, vapour], per_mass(kh, t, vapour));
        (k0, steps.within(&IAPWS_TEMPERATURE, t))
    }
}

impl Law for Carroll {
    #[inline(always)]
    fn k0(self, t: f64, vapour: f64, steps: &mut impl Steps) -> (f64, i32) {
        let kh = steps.step(&CARROLL_HENRY, &[t], carroll(t));
        let k0 = steps.step(&PER_MASS, &[kh, t, vapour], per_mass(kh, t, vapour));
        (k0, steps.within(&CARROLL_TEMPERATURE, t))
    }
}

/// Solubility by Weiss, mol/(kg atm) of fugacity, at the temperature `t` (K).
#[inline(always)]
pub fn weiss(t: f64) -> f64 {
    exp(-60.2409 + 93.4517 * (100.0 / t) + 23.3585 * ln(t / 100.0))
}

/// Henry's constant by IAPWS, Pa of fugacity per mole fraction, at the temperature `t` (K) and the vapour pressure of water.
#[inline(always)]
pub fn iapws(t: f64, vapour: f64) -> f64 {
    let reduced = t / CRITICAL_TEMPERATURE;
    let tau = 1.0 - reduced;
    let sum = -8.55445 / reduced + 4.01195 * pow(tau, 0.355) / reduced + 9.52345 * exp(tau) / pow(reduced, 0.41);
    vapour * exp(sum)
}

/// Henry's constant by Carroll et al., Pa of fugacity per mole fraction, at the temperature `t` (K).
#[inline(always)]
pub fn carroll(t: f64) -> f64 {
    1.0e6 * exp(-6.8346 + (1.2817e4 + (-3.7668e6 + 2.997e8 / t) / t) / t)
}

/// Solubility, mol/(kg atm) at one atmosphere, from Henry's constant `kh` (Pa) at the vapour pressure of water.
#[inline(always)]
pub fn per_mass(kh: f64, t: f64, vapour: f64) -> f64 {
    STANDARD_ATMOSPHERE / (WATER_MOLAR_MASS * kh)
        * exp(-MOLAR_VOLUME * (STANDARD_ATMOSPHERE - vapour) / (GAS_CONSTANT * t))
}

/// The catalogue's entry for [`weiss`].
pub static HENRY: Equation = Equation {
    id: "co2_henry_water",
    title: "solubility of CO2 in water",
    formula: "K0 = exp(-60.2409 + 93.4517*(100/T) + 23.3585*ln(T/100))",
    result: symbol("K0", Measure::Plain("mol/(kg atm)"), "CO2 per mass of water and atmosphere of fugacity"),
    inputs: &[limited("T", Measure::In(&KELVIN), "temperature", 272.15, 313.15)],
    uncertainty_percent: Some(2.1),
    uncertainty: "scatter of the published measurements, 0-40 °C, of which 34 in 35 lie within; to 60 °C within 2 % of later correlations",
    sources: &[&WEISS],
    standing: Standing::Published,
    kernel: |x| weiss(x[0]),
};

/// The catalogue's entry for [`iapws`].
pub static IAPWS: Equation = Equation {
    id: "co2_henry_iapws",
    title: "Henry's constant of CO2 in water, IAPWS guideline",
    formula: "kH = pw*exp(-8.55445/(T/647.096) + 4.01195*(1 - T/647.096)^0.355/(T/647.096) + 9.52345*exp(1 - T/647.096)/(T/647.096)^0.41)",
    result: symbol("kH", Measure::In(&PASCAL), "fugacity of CO2 per mole fraction"),
    inputs: &[
        limited("T", Measure::In(&KELVIN), "temperature", 274.19, 642.66),
        symbol("pw", Measure::In(&PASCAL), "vapour pressure of water"),
    ],
    uncertainty_percent: Some(5.0),
    uncertainty: "difference from the measurements at 0-40 °C: rms 2.3 %, and 4 to 5 % near 0 °C",
    sources: &[&IAPWS_G7],
    standing: Standing::Published,
    kernel: |x| iapws(x[0], x[1]),
};

/// The catalogue's entry for [`carroll`].
pub static CARROLL_HENRY: Equation = Equation {
    id: "co2_henry_carroll",
    title: "Henry's constant of CO2 in water, Carroll et al.",
    formula: "kH = 1000000*exp(-6.8346 + 12817/T - 3766800/T^2 + 299700000/T^3)",
    result: symbol("kH", Measure::In(&PASCAL), "fugacity of CO2 per mole fraction"),
    inputs: &[limited("T", Measure::In(&KELVIN), "temperature", 273.15, 433.15)],
    uncertainty_percent: Some(3.0),
    uncertainty: "difference from the measurements at 0-40 °C: rms 1.6 %; the authors state 2 % for their table",
    sources: &[&CARROLL],
    standing: Standing::Published,
    kernel: |x| carroll(x[0]),
};

/// The catalogue's entry for [`per_mass`].
pub static PER_MASS: Equation = Equation {
    id: "co2_solubility_from_henry",
    title: "solubility from Henry's constant",
    formula: "K0 = 101325/(0.018015268*kH)*exp(-0.0000323*(101325 - pw)/(8.314462618*T))",
    result: symbol("K0", Measure::Plain("mol/(kg atm)"), "CO2 per mass of water and atmosphere of fugacity"),
    inputs: &[
        limited("kH", Measure::In(&PASCAL), "fugacity of CO2 per mole fraction", 5.0e7, 5.0e8),
        limited("T", Measure::In(&KELVIN), "temperature", 273.15, 333.15),
        symbol("pw", Measure::In(&PASCAL), "vapour pressure of water"),
    ],
    uncertainty_percent: Some(0.02),
    uncertainty: "the Poynting term from the vapour pressure to one atmosphere, known to a tenth",
    sources: &[&WEISS, &CODATA],
    standing: Standing::Definition,
    kernel: |x| per_mass(x[0], x[1], x[2]),
};
