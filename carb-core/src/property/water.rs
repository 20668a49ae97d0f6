//! Water: vapour pressure, density, viscosity.

use crate::evidence::caution::{BELOW_FREEZING, Range};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::{KELL, PATEK, WAGNER_PRUSS};
use crate::number::{exp, ln};
use crate::quantity::unit::{CELSIUS, KELVIN, MILLIPASCAL_SECOND, PASCAL};

/// Below the freezing point the equations for liquid water are extrapolated.
pub static LIQUID: Range = Range { caution: &BELOW_FREEZING, low: 273.15, high: f64::INFINITY };

/// Critical temperature of water, K.
pub const CRITICAL_TEMPERATURE: f64 = 647.096;
const CRITICAL_PRESSURE: f64 = 22.064e6;

/// Vapour pressure of water, Pa, at the temperature `t` (K).
#[inline(always)]
pub fn vapour_pressure(t: f64) -> f64 {
    let x = 1.0 - t / CRITICAL_TEMPERATURE;
    let root = exp(0.5 * ln(x));
    let (x2, x3) = (x * x, x * x * x);
    let sum = -7.85951783 * x + 1.84408259 * (x * root) - 11.7866497 * x3 + 22.6807411 * (x3 * root)
        - 15.9618719 * (x2 * x2)
        + 1.80122502 * (x3 * x3 * x * root);
    CRITICAL_PRESSURE * exp(CRITICAL_TEMPERATURE / t * sum)
}

/// The catalogue's entry for [`vapour_pressure`].
pub static VAPOUR_PRESSURE: Equation = Equation {
    id: "water_vapour_pressure",
    title: "vapour pressure of water",
    formula: "pw = 22064000*exp(647.096/T*(-7.85951783*(1 - T/647.096) + 1.84408259*(1 - T/647.096)^1.5 - 11.7866497*(1 - T/647.096)^3 + 22.6807411*(1 - T/647.096)^3.5 - 15.9618719*(1 - T/647.096)^4 + 1.80122502*(1 - T/647.096)^7.5))",
    result: limited("pw", Measure::In(&PASCAL), "vapour pressure of water, absolute", 0.0, f64::INFINITY),
    inputs: &[limited("T", Measure::In(&KELVIN), "temperature", 273.15, 647.096)],
    uncertainty_percent: Some(0.02),
    uncertainty: "stated by the authors for this range; a drink's own vapour pressure is lower by its dissolved matter, up to 2 %",
    sources: &[&WAGNER_PRUSS],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| vapour_pressure(x[0]),
};

/// Density of air-free water at one atmosphere, kg/m3, at the temperature `t` (K).
#[inline(always)]
pub fn density(t: f64) -> f64 {
    let c = t - 273.15;
    let above = 999.83952
        + c * (16.945176 + c * (-7.9870401e-3 + c * (-46.170461e-6 + c * (105.56302e-9 + c * -280.54253e-12))));
    above / (1.0 + 16.87985e-3 * c)
}

/// The catalogue's entry for [`density`].
pub static DENSITY: Equation = Equation {
    id: "water_density",
    title: "density of water",
    formula: "rho = (999.83952 + 16.945176*t - 0.0079870401*t^2 - 0.000046170461*t^3 + 0.00000010556302*t^4 - 0.00000000028054253*t^5)/(1 + 0.01687985*t)",
    result: limited("rho", Measure::Plain("kg/m3"), "density of water at one atmosphere", 0.0, f64::INFINITY),
    inputs: &[limited("t", Measure::In(&CELSIUS), "temperature", 0.0, 70.0)],
    uncertainty_percent: Some(0.001),
    uncertainty: "stated by the author for 0-70 °C",
    sources: &[&KELL],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| density(x[0]),
};

/// Viscosity of water at one bar, Pa s, at the temperature `t` (K).
#[inline(always)]
pub fn viscosity(t: f64) -> f64 {
    let power = ln(t / 300.0);
    let sum = 280.68 * exp(-1.9 * power)
        + 511.45 * exp(-7.7 * power)
        + 61.131 * exp(-19.6 * power)
        + 0.45903 * exp(-40.0 * power);
    sum * 1e-6
}

/// The catalogue's entry for [`viscosity`].
pub static VISCOSITY: Equation = Equation {
    id: "water_viscosity",
    title: "viscosity of water",
    formula: "w = 0.001*(280.68/(T/300)^1.9 + 511.45/(T/300)^7.7 + 61.131/(T/300)^19.6 + 0.45903/(T/300)^40)",
    result: symbol("w", Measure::In(&MILLIPASCAL_SECOND), "viscosity of water at one bar"),
    inputs: &[limited("T", Measure::In(&KELVIN), "temperature", 273.15, 383.15)],
    uncertainty_percent: Some(1.0),
    uncertainty: "stated for the formulation that it follows within 0.01 %",
    sources: &[&PATEK],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| viscosity(x[0]),
};
