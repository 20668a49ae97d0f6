//! How much CO2 a drink holds: several models behind one pair of traits.
//!
//! A model is evaluated *here*, at one temperature and composition ([`Solubility::here`]), which costs the
//! exponentials; then [`Here::dissolved`] and its inverse [`Here::co2_pressure`] are cheap, and the sealed vessel can
//! call them in a loop.

pub mod any;
pub mod chart;
pub mod chart_quadratic;
pub mod composition;
pub mod eu_wine;
pub mod european;
pub mod henry;
pub mod model;
pub mod relation;
pub mod water_core;

pub use any::AnySolubility;
pub use model::Model;

use crate::evidence::{Equation, Measure, Standing, Steps, equation::symbol};
use crate::quantity::unit::PASCAL;

/// Partial pressure at which an iteration is stopped, Pa: no vessel of the trade comes near it, it only keeps absurd input
/// finite.
pub(crate) const HIGHEST: f64 = 6.0e6;

/// A solubility model.
pub trait Solubility: Copy + Send + Sync + 'static {
    /// The model at one temperature and composition.
    type Here: Here;
    /// The model at the temperature `t` (K) for `abv` (% vol) and `extract` (kg/m3), and the range cautions.
    fn here(&self, t: f64, abv: f64, extract: f64, steps: &mut impl Steps) -> (Self::Here, i32);
    /// What a slice loop works out for a whole block before the rest; see [`crate::basis::kernel::Kernel::ahead`].
    #[inline(always)]
    fn ahead(&self, _: f64) -> f64 {
        0.0
    }
    /// The same as [`Solubility::here`], with what [`Solubility::ahead`] gave for `t`.
    #[inline(always)]
    fn here_with(&self, _: f64, t: f64, abv: f64, extract: f64, steps: &mut impl Steps) -> (Self::Here, i32) {
        self.here(t, abv, extract, steps)
    }
}

/// A solubility model at one temperature and composition.
pub trait Here: Copy {
    /// Vapour pressure of the drink, Pa.
    fn vapour(&self) -> f64;
    /// CO2 dissolved (kg/m3) under the partial pressure `co2` (Pa), with `other` (Pa) of further gas beside the vapour.
    fn dissolved(&self, co2: f64, other: f64) -> f64;
    /// Derivative of [`Here::dissolved`] by `co2`, near enough for Newton's method.
    fn slope(&self, co2: f64, other: f64) -> f64;
    /// The partial pressure (Pa) that holds `dissolved` (kg/m3): the inverse of [`Here::dissolved`].
    fn co2_pressure(&self, dissolved: f64, other: f64) -> f64;
    /// CO2 dissolved (kg/m3) under the total pressure `total` (Pa) of CO2 and vapour alone.
    fn dissolved_under(&self, total: f64) -> f64;
    /// The total pressure (Pa) of CO2 and vapour alone that holds `dissolved` (kg/m3).
    fn total_pressure(&self, dissolved: f64) -> f64;
    /// The highest total pressure (Pa) at which the model has an answer.
    #[inline(always)]
    fn most(&self) -> f64 {
        f64::INFINITY
    }
    /// Tells the working what was evaluated under the total pressure `total` (Pa), of which `other` is neither CO2 nor
    /// vapour, and returns the range cautions of the pressure.
    fn tell(&self, total: f64, other: f64, steps: &mut impl Steps) -> i32;
}

/// The CO2 in a gas over a drink.
pub static CO2_SHARE: Equation = Equation {
    id: "co2_partial_pressure",
    title: "partial pressure of CO2",
    formula: "p = P - pw - o",
    result: symbol("p", Measure::In(&PASCAL), "partial pressure of CO2, absolute"),
    inputs: &[
        symbol("P", Measure::In(&PASCAL), "total pressure, absolute"),
        symbol("pw", Measure::In(&PASCAL), "vapour pressure of water"),
        symbol("o", Measure::In(&PASCAL), "partial pressure of other gas"),
    ],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] - x[1] - x[2],
};
