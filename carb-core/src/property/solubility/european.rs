//! The exponential form of the European breweries.

use super::relation::{ByTotal, Relation};
use crate::evidence::Steps;
use crate::evidence::caution::{CHART_PRESSURE, EUROPEAN_TEMPERATURE, Range};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::MEBAK;
use crate::number::exp;
use crate::quantity::unit::{BAR, CO2_GRAMS_PER_LITRE, FACTOR, KELVIN};

/// Temperatures of the printed tables that the form reproduces.
pub static TEMPERATURE: Range = Range { caution: &EUROPEAN_TEMPERATURE, low: 273.15, high: 298.15 };
/// Absolute pressures of those tables.
pub static PRESSURE: Range = Range { caution: &CHART_PRESSURE, low: 0.0, high: 4.0e5 };

/// The European form; knows no composition.
#[derive(Clone, Copy, Debug)]
pub struct European {
    /// Factor on the solubility, 1 by default.
    pub factor: f64,
}

/// The European form at one temperature.
#[derive(Clone, Copy, Debug)]
pub struct EuropeanHere {
    t: f64,
    factor: f64,
    /// kg/m3 per Pa of total pressure.
    slope: f64,
}

#[inline(always)]
fn slope(t: f64, factor: f64) -> f64 {
    factor * 10.0 * exp(-10.73797 + 2617.25 / t) / BAR.scale
}

impl ByTotal for European {
    type Relation = EuropeanHere;
    #[inline(always)]
    fn relation(&self, t: f64, _: f64, _: f64, steps: &mut impl Steps) -> (EuropeanHere, i32) {
        (EuropeanHere { t, factor: self.factor, slope: slope(t, self.factor) }, steps.within(&TEMPERATURE, t))
    }
}

impl Relation for EuropeanHere {
    #[inline(always)]
    fn dissolved(&self, total: f64) -> f64 {
        total * self.slope
    }
    #[inline(always)]
    fn slope(&self, _: f64) -> f64 {
        self.slope
    }
    #[inline(always)]
    fn pressure(&self, dissolved: f64) -> f64 {
        dissolved / self.slope
    }
    #[inline(always)]
    fn tell(&self, total: f64, steps: &mut impl Steps) -> i32 {
        steps.record(&EUROPEAN, &[total, self.t, self.factor], self.dissolved(total));
        steps.within(&PRESSURE, total)
    }
}

/// The catalogue's entry for the European form.
pub static EUROPEAN: Equation = Equation {
    id: "european",
    title: "CO2 in beer, the European breweries' form",
    formula: "c = k*10*P*exp(-10.73797 + 2617.25/T)",
    result: symbol("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in the beer"),
    inputs: &[
        limited("P", Measure::In(&BAR), "total pressure, absolute", 0.0, 4.0),
        limited("T", Measure::In(&KELVIN), "temperature", 273.15, 298.15),
        symbol("k", Measure::In(&FACTOR), "factor on the solubility, 1 by default"),
    ],
    uncertainty_percent: Some(5.0),
    uncertainty: "judgement for beer of unknown composition; it reproduces German dispense tables to 0.02 bar",
    sources: &[&MEBAK],
    standing: Standing::Published,
    kernel: |x| x[0] * slope(x[1], x[2]),
};
