//! The sealed package: liquid, headspace, trapped air and the expansion of the liquid.
//!
//! Everything is per volume of liquid at the filling temperature. The liquid expands as water does (a strong drink
//! expands up to a fifth more, which a usual headspace forgives); CO2 spreads between the liquid and the gas; air
//! that was sealed in stays, and is squeezed as the liquid grows.

use super::pressure;
use crate::error::code;
use crate::evidence::Steps;
use crate::evidence::caution::SLACK;
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::KELL;
use crate::property::co2_gas;
use crate::property::constant::{CO2_MOLAR_MASS, GAS_CONSTANT};
use crate::property::solubility::{HIGHEST, Here};
use crate::property::water;
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, KELVIN, PASCAL, PERCENT};

/// Volume of the liquid, relative to that at filling.
pub static LIQUID_VOLUME: Equation = Equation {
    id: "liquid_expansion",
    title: "volume of the liquid, relative to that at filling",
    formula: "v = rf/rs",
    result: limited("v", Measure::Plain(""), "volume of the liquid over that at filling", 0.9, 1.1),
    inputs: &[
        limited("rf", Measure::Plain("kg/m3"), "density of water at the filling temperature", 900.0, 1000.0),
        limited("rs", Measure::Plain("kg/m3"), "density of water at the storage temperature", 900.0, 1000.0),
    ],
    uncertainty_percent: Some(0.1),
    uncertainty: "the drink is taken to expand as water; at 5 % mass ethanol it expands 1.06-1.18 times as much",
    sources: &[&KELL],
    standing: Standing::Published,
    kernel: |x| x[0] / x[1],
};

/// Volume of the gas, relative to the liquid at filling.
pub static GAS_VOLUME: Equation = Equation {
    id: "gas_volume",
    title: "volume of the gas, relative to the liquid at filling",
    formula: "u = 1 + h/100 - v",
    result: symbol("u", Measure::Plain(""), "volume of the gas over that of the liquid at filling"),
    inputs: &[
        limited("h", Measure::In(&PERCENT), "headspace at filling", 0.0, 100.0),
        limited("v", Measure::Plain(""), "volume of the liquid over that at filling", 0.9, 1.1),
    ],
    uncertainty_percent: None,
    uncertainty: "exact for a rigid package; glass gives a thousandth",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| 1.0 + x[0] / 100.0 - x[1],
};

/// Pressure of air that was sealed in.
pub static TRAPPED_AIR: Equation = Equation {
    id: "trapped_air",
    title: "partial pressure of air sealed in",
    formula: "o = (a - w)*h/100/u*Ts/Tf",
    result: symbol("o", Measure::In(&PASCAL), "partial pressure of the air"),
    inputs: &[
        symbol("a", Measure::In(&PASCAL), "pressure of the air outside, absolute"),
        symbol("w", Measure::In(&PASCAL), "vapour pressure of water at filling"),
        limited("h", Measure::In(&PERCENT), "headspace at filling", 0.0, 100.0),
        limited("u", Measure::Plain(""), "volume of the gas over that of the liquid at filling", 0.001, 1.1),
        limited("Ts", Measure::In(&KELVIN), "storage temperature", 268.15, 333.15),
        limited("Tf", Measure::In(&KELVIN), "filling temperature", 268.15, 333.15),
    ],
    uncertainty_percent: None,
    uncertainty: "a bound: yeast takes the oxygen, and a little air dissolves",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| trapped_air(x[0], x[1], x[2], x[3], x[4], x[5]),
};

#[inline(always)]
fn trapped_air(ambient: f64, vapour: f64, headspace: f64, gas: f64, storage: f64, filling: f64) -> f64 {
    (ambient - vapour) * headspace / 100.0 / gas * storage / filling
}

/// The balance of CO2 over liquid and gas.
pub static BALANCE: Equation = Equation {
    id: "vessel_balance",
    title: "CO2 in the package, per litre of drink as filled",
    formula: "c = d*v + g*u",
    result: symbol("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in liquid and gas, per litre of drink as filled"),
    inputs: &[
        symbol("d", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 dissolved"),
        symbol("v", Measure::Plain(""), "volume of the liquid over that at filling"),
        symbol("g", Measure::Plain("kg/m3"), "density of the CO2 in the gas"),
        symbol("u", Measure::Plain(""), "volume of the gas over that of the liquid at filling"),
    ],
    uncertainty_percent: None,
    uncertainty: "exact: it is conservation of mass",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] * x[1] + x[2] * x[3],
};

/// A sealed package at one temperature.
#[derive(Clone, Copy, Debug)]
pub struct Sealed<H> {
    here: H,
    t: f64,
    b: f64,
    /// Volume of the liquid over that at filling.
    pub liquid: f64,
    /// Volume of the gas over that of the liquid at filling; 0 or less where the liquid fills the package.
    pub gas: f64,
    /// Partial pressure of trapped air, Pa.
    pub air: f64,
}

/// How a package was closed.
#[derive(Clone, Copy, Debug)]
pub struct Closed {
    /// Headspace at filling, percent of the liquid.
    pub headspace: f64,
    /// Filling temperature, K.
    pub filling: f64,
    /// Pressure of the air that was sealed in, Pa; 0 where it was driven out.
    pub air: f64,
}

/// Least gas volume for which a pressure is given: with less, the glass rather than the gas sets it.
pub const LEAST_GAS: f64 = 1e-4;

impl<H: Here> Sealed<H> {
    /// A package closed as `closed` says, now at the temperature `t` (K), holding a drink with the solubility `here`.
    #[inline(always)]
    pub fn new(here: H, closed: Closed, t: f64, steps: &mut impl Steps) -> Self {
        let filled = steps.step(&water::DENSITY, &[closed.filling], water::density(closed.filling));
        let stored = steps.step(&water::DENSITY, &[t], water::density(t));
        let liquid = steps.step(&LIQUID_VOLUME, &[filled, stored], filled / stored);
        let gas = 1.0 + closed.headspace / 100.0 - liquid;
        steps.record(&GAS_VOLUME, &[closed.headspace, liquid], gas);
        let mut air = 0.0;
        if closed.air != 0.0 {
            let vapour = water::vapour_pressure(closed.filling);
            steps.record(&water::VAPOUR_PRESSURE, &[closed.filling], vapour);
            air = trapped_air(closed.air, vapour, closed.headspace, gas, t, closed.filling);
            steps.record(&TRAPPED_AIR, &[closed.air, vapour, closed.headspace, gas, t, closed.filling], air);
        }
        Self { here, t, b: co2_gas::second_virial(t), liquid, gas, air }
    }

    /// CO2 in the package (kg per m3 of liquid as filled) when its partial pressure is `co2` (Pa).
    #[inline(always)]
    pub fn content(&self, co2: f64) -> f64 {
        self.here.dissolved(co2, self.air) * self.liquid + co2_gas::density(co2, self.t, self.b) * self.gas
    }

    /// Partial pressure of CO2 (Pa) that `content` makes, and a status below 0 where there is none.
    ///
    /// Newton's method from the answer of a linear law: content rises smoothly with pressure, so each step doubles the
    /// digits, and six reach the last one; that the balance closes is checked, not hoped for. Written out, because a
    /// loop here would keep LLVM from vectorising the loop over the elements.
    #[inline(always)]
    pub fn solve(&self, content: f64) -> (f64, i32) {
        let first = self.newton(self.newton(content / self.slope(0.0), content), content);
        let second = self.newton(self.newton(first, content), content);
        let co2 = self.newton(self.newton(second, content), content);
        let total = co2 + self.here.vapour() + self.air;
        // Some models hold a little, or less than nothing, without any CO2: rounding is relative to that too.
        let scale = content + self.content(0.0).abs();
        let open = (self.content(co2) - content).abs() > CLOSURE * scale + TINY;
        // Where a model ends, no pressure holds more.
        let lost = if self.here.most() < f64::INFINITY { code::PRESSURE_TOO_HIGH } else { code::NOT_CONVERGED };
        let unclosed = if open { lost } else { 0 };
        let below = if self.content(0.0) > content * (1.0 + SLACK) + TINY { code::TARGET_BELOW_HELD } else { unclosed };
        let high = if total > MOST { code::PRESSURE_TOO_HIGH } else { below };
        (co2, if self.gas < LEAST_GAS { code::VESSEL_FULL } else { high })
    }

    #[inline(always)]
    fn newton(&self, co2: f64, content: f64) -> f64 {
        let next = co2 - (self.content(co2) - content) / self.slope(co2);
        let kept = if next > 0.0 { next } else { 0.0 };
        if kept < HIGHEST { kept } else { HIGHEST }
    }

    #[inline(always)]
    fn slope(&self, co2: f64) -> f64 {
        let z = co2_gas::compressibility(co2, self.t, self.b);
        let q = 1.0 / (GAS_CONSTANT * self.t);
        let dz = self.b * q + 2.0 * (co2_gas::THIRD_VIRIAL - self.b * self.b) * q * (q * co2);
        let gas = CO2_MOLAR_MASS * q * (z - co2 * dz) / (z * z);
        self.here.slope(co2, self.air) * self.liquid + gas * self.gas
    }

    /// Partial pressure of CO2 (Pa) under a total pressure (Pa, absolute); below 0 where vapour and air make more.
    #[inline(always)]
    pub fn co2_of(&self, total: f64) -> f64 {
        total - self.here.vapour() - self.air
    }

    /// Total pressure (Pa, absolute) at a partial pressure of CO2; tells the working, and returns the range cautions.
    #[inline(always)]
    pub fn total(&self, co2: f64, steps: &mut impl Steps) -> (f64, i32) {
        let total = co2 + self.here.vapour() + self.air;
        steps.record(&pressure::TOTAL, &[co2, self.here.vapour(), self.air], total);
        let bits = self.here.tell(total, self.air, steps);
        let dissolved = self.here.dissolved(co2, self.air);
        let gas = co2_gas::density(co2, self.t, self.b);
        steps.record(&co2_gas::DENSITY, &[co2, self.t, self.b], gas);
        steps.record(&BALANCE, &[dissolved, self.liquid, gas, self.gas], self.content(co2));
        (total, bits)
    }

    /// CO2 dissolved (kg/m3) at a partial pressure of CO2.
    #[inline(always)]
    pub fn dissolved(&self, co2: f64) -> f64 {
        self.here.dissolved(co2, self.air)
    }

    /// Partial pressure of CO2 (Pa) at which `dissolved` (kg/m3) is dissolved: the inverse of [`Sealed::dissolved`].
    #[inline(always)]
    pub fn co2_pressure(&self, dissolved: f64) -> f64 {
        self.here.co2_pressure(dissolved, self.air)
    }
}

/// CO2 put in equals CO2 found, to this relative difference.
const CLOSURE: f64 = 1e-12;
const TINY: f64 = 1e-300;
/// Absolute pressure beyond which there is an error instead of a number, Pa.
pub const MOST: f64 = crate::quantity::field::HIGHEST_PRESSURE;
