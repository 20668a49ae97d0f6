//! The quadratic of the trade: the gauge pressure that holds beer at a carbonation, in °F and psi.

use super::chart::TEMPERATURE as CHART;
use super::relation::{ByTotal, Relation};
use crate::evidence::Steps;
use crate::evidence::caution::{CHART_PRESSURE, Range};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::MILLER;
use crate::number::sqrt;
use crate::property::constant::STANDARD_ATMOSPHERE;
use crate::quantity::unit::{FACTOR, FAHRENHEIT, PSI, VOLUMES};

/// Temperatures at which the quadratic follows the printed chart: 30 to 50 °F.
pub static TEMPERATURE: Range = Range { caution: CHART.caution, low: 489.67 * 5.0 / 9.0, high: 509.67 * 5.0 / 9.0 };
/// Absolute pressures of the printed chart, 1 to 24 psi gauge at sea level.
pub static PRESSURE: Range = Range { caution: &CHART_PRESSURE, low: 108_219.757, high: 266_799.175 };

/// The quadratic; knows no composition.
#[derive(Clone, Copy, Debug)]
pub struct ChartQuadratic {
    /// Factor on the solubility, 1 by default.
    pub factor: f64,
}

/// The quadratic at one temperature: psi gauge at sea level = `level + rise * V - BEND * V^2`.
#[derive(Clone, Copy, Debug)]
pub struct ChartQuadraticHere {
    t: f64,
    factor: f64,
    level: f64,
    rise: f64,
}

const BEND: f64 = 0.0684226;
/// The discriminant is kept above 0, where it means nothing any more.
const LEAST: f64 = 1e-12;

impl ChartQuadraticHere {
    #[inline(always)]
    fn at(t: f64, factor: f64) -> Self {
        let f = FAHRENHEIT.from_si(t);
        let level = -16.6999 + f * (-0.0101059 + 0.00116512 * f);
        Self { t, factor, level, rise: 4.24267 + 0.173354 * f }
    }

    /// How far a total pressure lies above that of no CO2, psi.
    #[inline(always)]
    fn beyond(&self, total: f64) -> f64 {
        PSI.from_si(total - STANDARD_ATMOSPHERE) - self.level
    }

    /// Root of the discriminant at a total pressure, psi per volume; 0 beyond the highest.
    #[inline(always)]
    fn root(&self, total: f64) -> f64 {
        let discriminant = self.rise * self.rise - 4.0 * BEND * self.beyond(total);
        sqrt(if discriminant > LEAST { discriminant } else { LEAST })
    }
}

impl ByTotal for ChartQuadratic {
    type Relation = ChartQuadraticHere;
    #[inline(always)]
    fn relation(&self, t: f64, _: f64, _: f64, steps: &mut impl Steps) -> (ChartQuadraticHere, i32) {
        (ChartQuadraticHere::at(t, self.factor), steps.within(&TEMPERATURE, t))
    }
}

impl Relation for ChartQuadraticHere {
    #[inline(always)]
    fn dissolved(&self, total: f64) -> f64 {
        // The lower root, in the form in which nothing cancels.
        VOLUMES.to_si(self.factor * 2.0 * self.beyond(total) / (self.rise + self.root(total)))
    }
    #[inline(always)]
    fn slope(&self, total: f64) -> f64 {
        // Kept finite towards the highest pressure, so that an iteration that strays there comes back.
        let root = self.root(total);
        VOLUMES.to_si(self.factor) / (if root > 1.0 { root } else { 1.0 }) / PSI.scale
    }
    #[inline(always)]
    fn pressure(&self, dissolved: f64) -> f64 {
        let v = VOLUMES.from_si(dissolved) / self.factor;
        STANDARD_ATMOSPHERE + PSI.to_si(self.level + v * (self.rise - BEND * v))
    }
    #[inline(always)]
    fn most(&self) -> f64 {
        STANDARD_ATMOSPHERE + PSI.to_si(self.level + self.rise * self.rise / (4.0 * BEND))
    }
    #[inline(always)]
    fn tell(&self, total: f64, steps: &mut impl Steps) -> i32 {
        steps.record(&CHART_QUADRATIC, &[total, self.t, self.factor], self.dissolved(total));
        steps.within(&PRESSURE, total)
    }
}

/// The catalogue's entry for the quadratic, solved for the carbonation.
pub static CHART_QUADRATIC: Equation = Equation {
    id: "chart_quadratic",
    title: "CO2 in beer, the trade's quadratic",
    formula: "V = k*2*(P - 14.695948775513 + 16.6999 + 0.0101059*f - 0.00116512*f^2)/(4.24267 + 0.173354*f + ((4.24267 + 0.173354*f)^2 - 4*0.0684226*(P - 14.695948775513 + 16.6999 + 0.0101059*f - 0.00116512*f^2))^0.5)",
    result: symbol("V", Measure::In(&VOLUMES), "CO2 in the beer"),
    inputs: &[
        limited("P", Measure::In(&PSI), "total pressure, absolute", 15.7, 38.7),
        limited("f", Measure::In(&FAHRENHEIT), "temperature", 30.0, 50.0),
        symbol("k", Measure::In(&FACTOR), "factor on the solubility, 1 by default"),
    ],
    uncertainty_percent: Some(5.0),
    uncertainty: "judgement for beer of unknown composition; against the printed chart itself rms 0.009, worst 0.036 volumes. Never for warm beer: at 20 °C it lies 1.3 to 6 psi low",
    sources: &[&MILLER],
    standing: Standing::CommonPractice,
    kernel: |x| ChartQuadraticHere::at(x[1], x[2]).dissolved(x[0]),
};
