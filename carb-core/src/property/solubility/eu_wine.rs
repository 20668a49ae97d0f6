//! The European Union's relation for sparkling wine, carried from 20 °C to other temperatures.

use super::relation::{ByTotal, Relation};
use crate::evidence::Steps;
use crate::evidence::caution::{ALCOHOL_HIGH, EU_TEMPERATURE, EXTRACT_HIGH, GAS_PRESSURE, Range};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::{EU_WINE, LIGER_BELAIR};
use crate::number::exp;
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, FACTOR, GRAMS_PER_LITRE, KELVIN, PASCAL, PERCENT};

/// Temperatures to which the relation is carried.
pub static TEMPERATURE: Range = Range { caution: &EU_TEMPERATURE, low: 273.15, high: 298.15 };

/// Alcohol, sugar and absolute pressure for which it is taken to hold.
pub static ALCOHOL: Range = Range { caution: &ALCOHOL_HIGH, low: 0.0, high: 15.0 };
/// See [`ALCOHOL`].
pub static SUGAR: Range = Range { caution: &EXTRACT_HIGH, low: 0.0, high: 200.0 };
/// See [`ALCOHOL`].
pub static PRESSURE: Range = Range { caution: &GAS_PRESSURE, low: 0.0, high: 1.0e6 };

/// The wine relation.
#[derive(Clone, Copy, Debug)]
pub struct EuWine {
    /// Factor on the solubility, 1 by default.
    pub factor: f64,
}

/// The wine relation at one temperature and composition.
#[derive(Clone, Copy, Debug)]
pub struct EuWineHere {
    t: f64,
    abv: f64,
    sugar: f64,
    factor: f64,
    /// kg/m3 per Pa of total pressure.
    slope: f64,
}

/// What alcohol (% vol) and sugar (g/L) leave of the solubility at 20 °C; 0.86 with neither.
#[inline(always)]
pub fn composition(abv: f64, sugar: f64) -> f64 {
    (0.86 - 0.01 * abv) * (1.0 - 0.00144 * sugar)
}

#[inline(always)]
fn slope(t: f64, abv: f64, sugar: f64, factor: f64) -> f64 {
    factor * 1.951e-5 * composition(abv, sugar) * exp(2983.0 * (1.0 / t - 1.0 / 293.15))
}

impl ByTotal for EuWine {
    type Relation = EuWineHere;
    #[inline(always)]
    fn relation(&self, t: f64, abv: f64, extract: f64, steps: &mut impl Steps) -> (EuWineHere, i32) {
        let slope = slope(t, abv, extract, self.factor);
        let here = EuWineHere { t, abv, sugar: extract, factor: self.factor, slope };
        let bits = steps.within(&ALCOHOL, abv) | steps.within(&SUGAR, extract);
        (here, bits | steps.within(&TEMPERATURE, t))
    }
}

impl Relation for EuWineHere {
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
        steps.record(&RELATION, &[total, self.t, self.abv, self.sugar, self.factor], self.dissolved(total));
        steps.within(&PRESSURE, total)
    }
}

/// The catalogue's entry for the wine relation.
pub static RELATION: Equation = Equation {
    id: "eu_wine",
    title: "CO2 in wine, European Union relation",
    formula: "c = k*0.00001951*P*(0.86 - 0.01*A)*(1 - 0.00144*S)*exp(2983*(1/T - 1/293.15))",
    result: symbol("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in the wine"),
    inputs: &[
        limited("P", Measure::In(&PASCAL), "total pressure, absolute", 0.0, 1.0e6),
        limited("T", Measure::In(&KELVIN), "temperature", 273.15, 298.15),
        limited("A", Measure::In(&PERCENT), "alcohol by volume", 8.0, 15.0),
        limited("S", Measure::In(&GRAMS_PER_LITRE), "sugar", 0.0, 200.0),
        symbol("k", Measure::In(&FACTOR), "factor on the solubility, 1 by default"),
    ],
    uncertainty_percent: Some(6.0),
    uncertainty: "judgement; linear in pressure as published, the pressure at which it was calibrated is not known",
    sources: &[&EU_WINE, &LIGER_BELAIR],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| x[0] * slope(x[1], x[2], x[3], x[4]),
};
