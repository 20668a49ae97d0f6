//! Syrup: what water dissolves, and the room that dissolved sugar takes.

use super::fermentable::Fermentable;
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited, symbol};
use crate::evidence::source::{JACKSON, LOWE, MOHOS};
use crate::quantity::unit::{CELSIUS, KILOGRAM, LITRE, PERCENT};

/// Water of a product above which it is a syrup or a juice already.
const LIQUID: f64 = 0.13;

/// What bounds the solubility of a product.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Saturation {
    /// Sucrose; dry products that are mostly disaccharides behave alike or better.
    Sucrose,
    /// Glucose, the least soluble of the sugars that prime.
    Dextrose,
    /// A sugar of the caller's own: it may be maltose, the least soluble of all.
    Custom,
    /// It is a liquid as sold.
    Liquid,
}

impl Saturation {
    /// Of a product.
    pub fn of(sugar: &Fermentable) -> Self {
        let sugars = sugar.sugars;
        // Dried fruit is moist and no syrup.
        let fruit = matches!(sugar.name, "raisins" | "dates");
        if sugar.water > LIQUID && !fruit {
            Saturation::Liquid
        } else if sugar.name == Fermentable::CUSTOM {
            Saturation::Custom
        } else if sugars.hexose > sugars.disaccharide {
            Saturation::Dextrose
        } else {
            Saturation::Sucrose
        }
    }

    /// Dissolved dry matter in a saturated solution, percent of its mass, at the temperature `t` (K).
    #[inline(always)]
    pub fn percent(self, t: f64) -> f64 {
        match self {
            Saturation::Sucrose => sucrose(t),
            Saturation::Dextrose => dextrose(t),
            Saturation::Custom => OF_CUSTOM * dextrose(t),
            Saturation::Liquid => 100.0,
        }
    }

    /// The equation behind it; `None` for a liquid.
    pub fn equation(self) -> Option<&'static Equation> {
        match self {
            Saturation::Sucrose => Some(&SUCROSE_SOLUBILITY),
            Saturation::Dextrose => Some(&DEXTROSE_SOLUBILITY),
            Saturation::Custom => Some(&CUSTOM_SOLUBILITY),
            Saturation::Liquid => None,
        }
    }
}

#[inline(always)]
fn sucrose(t: f64) -> f64 {
    let t = CELSIUS.from_si(t);
    64.185 + t * (0.135 + 0.000528 * t)
}

#[inline(always)]
fn dextrose(t: f64) -> f64 {
    let t = CELSIUS.from_si(t);
    let t = if t < 63.0 { t } else { 63.0 };
    34.65 + t * (0.706 - 0.00137 * t)
}

const T: Symbol = limited("t", Measure::In(&CELSIUS), "temperature", 0.0, 100.0);

/// Saturated sucrose.
pub static SUCROSE_SOLUBILITY: Equation = Equation {
    id: "sucrose_solubility",
    title: "sucrose in a saturated solution",
    formula: "w = 64.185 + 0.135*t + 0.000528*t^2",
    result: symbol("w", Measure::In(&PERCENT), "dissolved sugar, of the mass of the solution"),
    inputs: &[T],
    uncertainty_percent: Some(0.1),
    uncertainty: "our fit, within 0.03 of the printed percentages from 0 to 100 °C",
    sources: &[&MOHOS],
    standing: Standing::Judgement,
    kernel: |x| sucrose(x[0]),
};

/// Saturated glucose.
pub static DEXTROSE_SOLUBILITY: Equation = Equation {
    id: "dextrose_solubility",
    title: "dextrose in a saturated solution",
    formula: "w = 34.65 + 0.706*min(t, 63) - 0.00137*min(t, 63)^2",
    result: symbol("w", Measure::In(&PERCENT), "dissolved sugar, of the mass of the solution"),
    inputs: &[T],
    uncertainty_percent: Some(7.0),
    uncertainty: "our fit: within 1.5 of the figures to 40 °C and at 63 °C, 4 below the one at 50 °C, where they bend; on the side of more water",
    sources: &[&LOWE, &JACKSON],
    standing: Standing::Judgement,
    kernel: |x| dextrose(x[0]),
};

/// Maltose dissolves to nine tenths of what dextrose does at 21 °C.
const OF_CUSTOM: f64 = 0.9;

/// A saturated sugar of the caller's own.
pub static CUSTOM_SOLUBILITY: Equation = Equation {
    id: "custom_solubility",
    title: "a sugar of one's own in a saturated solution",
    formula: "w = 0.9*(34.65 + 0.706*min(t, 63) - 0.00137*min(t, 63)^2)",
    result: symbol("w", Measure::In(&PERCENT), "dissolved sugar, of the mass of the solution"),
    inputs: &[T],
    uncertainty_percent: Some(15.0),
    uncertainty: "a bound on the side of more water: maltose, the least soluble, at 21 °C; carried to other temperatures by dextrose",
    sources: &[&LOWE],
    standing: Standing::Judgement,
    kernel: |x| OF_CUSTOM * dextrose(x[0]),
};

/// Volume of a dissolved gram of dry sugar, L/kg: from 0.615 in weak to 0.627 in strong solution by [`super::fermentable::SYRUP`].
const DISSOLVED: f64 = 0.62;

/// Volume (m3) that a kilogram of product takes in solution, where `water` (kg/kg) of it is water.
#[inline(always)]
pub fn volume_per_mass(water: f64) -> f64 {
    (DISSOLVED * (1.0 - water) + water) / 1000.0
}

/// Volume of a syrup.
pub static SYRUP_VOLUME: Equation = Equation {
    id: "syrup_volume",
    title: "volume of the syrup",
    formula: "s = W + m*(0.62*(1 - w) + w)",
    result: symbol("s", Measure::In(&LITRE), "volume of the syrup, cooled"),
    inputs: &[
        symbol("W", Measure::In(&LITRE), "water"),
        symbol("m", Measure::In(&KILOGRAM), "sugar, as sold"),
        limited("w", Measure::Plain("g/g"), "water in the sugar as sold", 0.0, 0.9),
    ],
    uncertainty_percent: Some(1.0),
    uncertainty: "sugar takes 0.615 L/kg in weak and 0.627 in strong solution; what boils off is left out",
    sources: &[&MOHOS],
    standing: Standing::Judgement,
    kernel: |x| x[0] + x[1] * volume_per_mass(x[2]),
};

/// Water in which sugar just dissolves.
pub static LEAST_WATER: Equation = Equation {
    id: "least_water",
    title: "least water that dissolves the sugar",
    formula: "L = m*max(0, (1 - w)*(100/p - 1) - w)",
    result: symbol("L", Measure::In(&LITRE), "water"),
    inputs: &[
        symbol("m", Measure::In(&KILOGRAM), "sugar, as sold"),
        limited("w", Measure::Plain("g/g"), "water in the sugar as sold", 0.0, 0.9),
        limited("p", Measure::In(&PERCENT), "dissolved sugar at saturation", 30.0, 100.0),
    ],
    uncertainty_percent: None,
    uncertainty: "that of the solubility",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| least_water(x[0], x[1], x[2]),
};

/// Water (m3) in which a mass (kg) of product just dissolves.
#[inline(always)]
pub fn least_water(mass: f64, water: f64, percent: f64) -> f64 {
    let needed = (1.0 - water) * (100.0 / percent - 1.0) - water;
    let needed = if needed > 0.0 { needed } else { 0.0 };
    mass * needed / 1000.0
}

/// How strong a syrup is.
pub static SYRUP_STRENGTH: Equation = Equation {
    id: "syrup_strength",
    title: "strength of the syrup",
    formula: "b = 100*m*(1 - w)/(m + W)",
    result: symbol("b", Measure::In(&PERCENT), "dry matter, of the mass of the syrup"),
    inputs: &[
        symbol("m", Measure::In(&KILOGRAM), "sugar, as sold"),
        limited("w", Measure::Plain("g/g"), "water in the sugar as sold", 0.0, 0.9),
        symbol("W", Measure::In(&LITRE), "water, a kilogram to the litre"),
    ],
    uncertainty_percent: Some(0.3),
    uncertainty: "a litre of water weighs 0.998 kg at 20 °C",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| strength(x[0], x[1], x[2]),
};

/// Strength of a syrup, percent.
#[inline(always)]
pub fn strength(mass: f64, water: f64, added: f64) -> f64 {
    100.0 * mass * (1.0 - water) / (mass + 1000.0 * added)
}
