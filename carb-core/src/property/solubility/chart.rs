//! The printed beer chart, as a fit: volumes of CO2 against temperature and pressure.

use super::relation::{ByTotal, Relation};
use crate::evidence::caution::{CHART_PRESSURE, CHART_TEMPERATURE, Range};
use crate::evidence::equation::{Equation, Measure, Standing, limited};
use crate::evidence::source::{DELANGE, MILLER};
use crate::evidence::{Steps, Symbol, equation::symbol};
use crate::number::exp_within;
use crate::quantity::unit::{FACTOR, FAHRENHEIT, PSI, VOLUMES};

/// Chilled beer: temperatures at which the chart and its fit agree.
pub static TEMPERATURE: Range = Range { caution: &CHART_TEMPERATURE, low: 273.15, high: 288.15 };
/// Absolute pressures to 3 bar gauge.
pub static PRESSURE: Range = Range { caution: &CHART_PRESSURE, low: 0.0, high: 401_325.0 };

/// The chart fit; knows no composition.
#[derive(Clone, Copy, Debug)]
pub struct ChartFit {
    /// Factor on the solubility, 1 by default.
    pub factor: f64,
}

/// The chart fit at one temperature.
#[derive(Clone, Copy, Debug)]
pub struct ChartHere {
    t: f64,
    factor: f64,
    /// Volumes per psi.
    slope: f64,
}

const OFFSET: f64 = 0.003342;
// A division takes as long as a third of all the rest, so the units of the fit are brought to SI units once.
const FREEZING: f64 = FAHRENHEIT.to_si(32.0);
const PER_KELVIN: f64 = 1.0 / (FAHRENHEIT.scale * 43.11);
const PER_PASCAL: f64 = 1.0 / PSI.scale;

#[inline(always)]
fn volumes_per_psi(t: f64) -> f64 {
    0.01821 + 0.090115 * exp_within((FREEZING - t) * PER_KELVIN)
}

#[inline(always)]
fn dissolved(p: f64, slope: f64, factor: f64) -> f64 {
    VOLUMES.to_si(factor * (p * PER_PASCAL * slope - OFFSET))
}

impl ByTotal for ChartFit {
    type Relation = ChartHere;
    #[inline(always)]
    fn relation(&self, t: f64, abv: f64, extract: f64, steps: &mut impl Steps) -> (ChartHere, i32) {
        self.relation_with(volumes_per_psi(t), t, abv, extract, steps)
    }
    #[inline(always)]
    fn ahead(&self, t: f64) -> f64 {
        volumes_per_psi(t)
    }
    #[inline(always)]
    fn relation_with(&self, slope: f64, t: f64, _: f64, _: f64, steps: &mut impl Steps) -> (ChartHere, i32) {
        (ChartHere { t, factor: self.factor, slope }, steps.within(&TEMPERATURE, t))
    }
}

impl Relation for ChartHere {
    #[inline(always)]
    fn dissolved(&self, total: f64) -> f64 {
        dissolved(total, self.slope, self.factor)
    }
    #[inline(always)]
    fn slope(&self, _: f64) -> f64 {
        VOLUMES.to_si(self.factor * self.slope) * PER_PASCAL
    }
    #[inline(always)]
    fn pressure(&self, dissolved: f64) -> f64 {
        // The same for all elements, so that a loop divides once.
        let volumes = 1.0 / (VOLUMES.scale * self.factor);
        PSI.to_si((dissolved * volumes + OFFSET) / self.slope)
    }
    #[inline(always)]
    fn tell(&self, total: f64, steps: &mut impl Steps) -> i32 {
        steps.record(&CHART_FIT, &[total, self.t, self.factor], self.dissolved(total));
        steps.within(&PRESSURE, total)
    }
}

const RESULT: Symbol = symbol("V", Measure::In(&VOLUMES), "CO2 in the beer");

/// The catalogue's entry for the chart fit.
pub static CHART_FIT: Equation = Equation {
    id: "chart_fit",
    title: "CO2 in beer, fit of the printed chart",
    formula: "V = k*(P*(0.01821 + 0.090115*exp(-(f - 32)/43.11)) - 0.003342)",
    result: RESULT,
    inputs: &[
        limited("P", Measure::In(&PSI), "total pressure, absolute", 0.0, 58.2),
        limited("f", Measure::In(&FAHRENHEIT), "temperature", 32.0, 59.0),
        symbol("k", Measure::In(&FACTOR), "factor on the solubility, 1 by default"),
    ],
    uncertainty_percent: Some(5.0),
    uncertainty: "judgement for beer of unknown composition; against the printed chart itself rms 0.015, worst 0.044 volumes",
    sources: &[&DELANGE, &MILLER],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| dissolved(x[0], volumes_per_psi(x[1]), x[2]),
};
