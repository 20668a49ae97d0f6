//! The drink as a liquid: density, viscosity, diffusivity of CO2.

use super::constant::WATER_DENSITY_20;
use super::water;
use crate::evidence::caution::{LIQUID_ALCOHOL, LIQUID_WARM, Range, VISCOSITY_TEMPERATURE};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited, symbol};
use crate::evidence::source::{LIGER_BELAIR_LAGER, LU};
use crate::number::pow;
use crate::quantity::unit::{
    CELSIUS, FACTOR, GRAMS_PER_LITRE, KELVIN, KILOGRAM_PER_CUBIC_METRE, MILLIPASCAL_SECOND, PERCENT, SPECIFIC_GRAVITY,
    SQUARE_METRE_PER_SECOND,
};

/// Temperatures for which the viscosity of water and the diffusivity of CO2 are given.
pub static TEMPERATURE: Range = Range { caution: &VISCOSITY_TEMPERATURE, low: 273.15, high: 383.15 };

/// Alcohol to which the density was checked.
pub static DENSITY_ALCOHOL: Range = Range { caution: &LIQUID_ALCOHOL, low: 0.0, high: 13.0 };
/// Temperatures to which it was.
pub static DENSITY_TEMPERATURE: Range = Range { caution: &LIQUID_WARM, low: 0.0, high: 313.15 };

/// Specific gravity (20/20 °C) of a drink with `abv` (% vol) and `extract` (kg/m3).
#[inline(always)]
pub fn gravity(abv: f64, extract: f64) -> f64 {
    1.0 + 0.000387 * extract - 0.00143 * abv
}

/// Density, kg/m3, at the temperature `t` (K), where water has the density `water`, of a drink of the gravity `sg`
/// (20/20 °C) with `abv` (% vol).
#[inline(always)]
pub fn density(t: f64, water: f64, sg: f64, abv: f64) -> f64 {
    let expanded = water / water::density(TWENTY);
    WATER_DENSITY_20 * sg * expanded * (1.0 - 3.8e-7 * abv * abv * (t - TWENTY))
}

const TWENTY: f64 = 293.15;

/// Diffusivity, m2/s, of CO2 in water at the temperature `t` (K).
#[inline(always)]
pub fn diffusivity(t: f64) -> f64 {
    13.942e-9 * pow(t / 227.0 - 1.0, 1.7094)
}

const GRAVITY: Symbol = symbol("s", Measure::In(&SPECIFIC_GRAVITY), "specific gravity 20/20 °C");
const ALCOHOL: Symbol = limited("A", Measure::In(&PERCENT), "alcohol by volume", 0.0, 13.0);

/// The catalogue's entry for [`gravity`].
pub static GRAVITY_OF_COMPOSITION: Equation = Equation {
    id: "gravity_of_composition",
    title: "specific gravity from composition",
    formula: "s = 1 + 0.000387*E - 0.00143*A",
    result: GRAVITY,
    inputs: &[limited("E", Measure::In(&GRAMS_PER_LITRE), "dissolved matter", 0.0, 110.0), ALCOHOL],
    uncertainty_percent: Some(0.2),
    uncertainty: "sucrose and ethanol in water by their tables, from memory; other matter differs a little",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| gravity(x[1], x[0]),
};

/// The catalogue's entry for [`density`].
pub static DENSITY: Equation = Equation {
    id: "drink_density",
    title: "density of the drink",
    formula: "d = 998.2*s*w/998.2041322005837*(1 - 0.00000038*A^2*(t - 20))",
    result: symbol("d", Measure::In(&KILOGRAM_PER_CUBIC_METRE), "density without dissolved CO2"),
    inputs: &[
        GRAVITY,
        symbol("w", Measure::Plain("kg/m3"), "density of water at the temperature"),
        ALCOHOL,
        limited("t", Measure::In(&CELSIUS), "temperature", 0.0, 40.0),
    ],
    uncertainty_percent: Some(0.1),
    uncertainty: "our fit: alcohol adds a little to the expansion of water, within 0.02 % of an ethanol-water correlation to 12 % vol",
    sources: &[&LIGER_BELAIR_LAGER],
    standing: Standing::Judgement,
    kernel: |x| density(x[3], x[1], x[0], x[2]),
};

/// Viscosity of the drink from that of water.
pub static VISCOSITY: Equation = Equation {
    id: "drink_viscosity",
    title: "viscosity of the drink",
    formula: "e = f*w",
    result: symbol("e", Measure::In(&MILLIPASCAL_SECOND), "dynamic viscosity"),
    inputs: &[
        limited("f", Measure::In(&FACTOR), "viscosity relative to water; 1.6 for beer", 1.0, 2.5),
        symbol("w", Measure::In(&MILLIPASCAL_SECOND), "viscosity of water"),
    ],
    uncertainty_percent: Some(12.0),
    uncertainty: "beers lie between 1.4 and 1.8; 1.64 was measured for a lager, 1.7 for champagne",
    sources: &[&LIGER_BELAIR_LAGER],
    standing: Standing::Judgement,
    kernel: |x| x[0] * x[1],
};

/// The catalogue's entry for [`diffusivity`].
pub static DIFFUSIVITY_WATER: Equation = Equation {
    id: "co2_diffusivity_water",
    title: "diffusivity of CO2 in water",
    formula: "D = 0.000000013942*(T/227 - 1)^1.7094",
    result: symbol("D", Measure::In(&SQUARE_METRE_PER_SECOND), "diffusivity in water"),
    inputs: &[limited("T", Measure::In(&KELVIN), "temperature", 268.0, 473.0)],
    uncertainty_percent: Some(6.0),
    uncertainty: "difference from two other fits, 9 % near 0 °C and 2 % at 20 °C",
    sources: &[&LU],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| diffusivity(x[0]),
};

/// Diffusivity in the drink, which falls as its viscosity rises.
pub static DIFFUSIVITY: Equation = Equation {
    id: "co2_diffusivity_drink",
    title: "diffusivity of CO2 in the drink",
    formula: "d = D/f",
    result: symbol("d", Measure::In(&SQUARE_METRE_PER_SECOND), "diffusivity in the drink"),
    inputs: &[
        symbol("D", Measure::In(&SQUARE_METRE_PER_SECOND), "diffusivity in water"),
        limited("f", Measure::In(&FACTOR), "viscosity relative to water", 1.0, 2.5),
    ],
    uncertainty_percent: Some(15.0),
    uncertainty: "Stokes and Einstein's proportion, with the spread of the viscosity",
    sources: &[&LU, &LIGER_BELAIR_LAGER],
    standing: Standing::Judgement,
    kernel: |x| x[0] / x[1],
};
