//! What alcohol and dissolved matter do to the solubility of CO2 in water.

use super::eu_wine;
use crate::evidence::caution::{ALCOHOL_HIGH, EXTRACT_HIGH, Range};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::{EU_WINE, FINDLAY_SHEN, USHER};
use crate::evidence::{Steps, Symbol};
use crate::number::exp;
use crate::quantity::unit::{GRAMS_PER_LITRE, PERCENT};

/// Alcohol for which the factors are known.
pub static ALCOHOL: Range = Range { caution: &ALCOHOL_HIGH, low: 0.0, high: 13.0 };
/// Dissolved matter for which the factors are known.
pub static EXTRACT: Range = Range { caution: &EXTRACT_HIGH, low: 0.0, high: 110.0 };

/// Which composition factor a drink takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Factor {
    /// Laboratory data on ethanol and sucrose: water, beer, soft drinks.
    Laboratory,
    /// Midway between the laboratory and the wine relation: cider, mead.
    Midpoint,
    /// The smaller of the laboratory factor and the wine relation's: the safe side for pressure.
    Unfavourable,
}

impl Factor {
    /// The factor for `abv` (% vol) and `extract` (g/L). Without branches, so that the slice loops stay vectors.
    #[inline(always)]
    pub fn of(self, abv: f64, extract: f64) -> f64 {
        let slopes = if matches!(self, Factor::Midpoint) { MIDPOINT_SLOPES } else { LABORATORY_SLOPES };
        let displaced = displaced(slopes, abv, extract);
        let wine = wine(abv, extract);
        if matches!(self, Factor::Unfavourable) & (wine < displaced) { wine } else { displaced }
    }

    /// Its entry in the catalogue.
    pub fn equation(self) -> &'static Equation {
        match self {
            Factor::Laboratory => &LABORATORY,
            Factor::Midpoint => &MIDPOINT,
            Factor::Unfavourable => &UNFAVOURABLE,
        }
    }

    /// The factor, with the working told and the range cautions noted.
    #[inline(always)]
    pub fn step(self, abv: f64, extract: f64, steps: &mut impl Steps) -> (f64, i32) {
        let bits = steps.within(&ALCOHOL, abv) | steps.within(&EXTRACT, extract);
        (steps.step(self.equation(), &[abv, extract], self.of(abv, extract)), bits)
    }
}

/// What a % vol of alcohol and a g/L of dissolved matter take off the logarithm of the solubility.
type Slopes = (f64, f64);
const LABORATORY_SLOPES: Slopes = (0.0042, 8.7e-4);
const MIDPOINT_SLOPES: Slopes = (0.008, 0.0011);

#[inline(always)]
fn displaced((by_alcohol, by_extract): Slopes, abv: f64, extract: f64) -> f64 {
    exp(-by_alcohol * abv - by_extract * extract)
}

/// The wine relation's composition, relative to water's.
#[inline(always)]
fn wine(abv: f64, extract: f64) -> f64 {
    eu_wine::composition(abv, extract) / eu_wine::composition(0.0, 0.0)
}

const FACTOR: Symbol = symbol("F", Measure::Plain(""), "solubility relative to water");
const COMPOSITION: &[Symbol] = &[
    limited("A", Measure::In(&PERCENT), "alcohol by volume", 0.0, 13.0),
    limited("E", Measure::In(&GRAMS_PER_LITRE), "dissolved matter", 0.0, 110.0),
];

/// The laboratory factor.
pub static LABORATORY: Equation = Equation {
    id: "composition_laboratory",
    title: "solubility relative to water, laboratory data",
    formula: "F = exp(-0.0042*A - 0.00087*E)",
    result: FACTOR,
    inputs: COMPOSITION,
    uncertainty_percent: Some(5.6),
    uncertainty: "both coefficients rest on data quoted from memory; the 5 % that they take off for beer is what the printed chart shows at 0-8 °C. With the 2 % of the water core it makes the 6 % stated for beer; ethanol may take 0 to 0.0094 and extract 0.00062 to 0.00144",
    sources: &[&USHER, &FINDLAY_SHEN],
    standing: Standing::Judgement,
    kernel: |x| Factor::Laboratory.of(x[0], x[1]),
};

/// The factor for cider and mead.
pub static MIDPOINT: Equation = Equation {
    id: "composition_midpoint",
    title: "solubility relative to water, cider and mead",
    formula: "F = exp(-0.008*A - 0.0011*E)",
    result: FACTOR,
    inputs: COMPOSITION,
    uncertainty_percent: Some(8.0),
    uncertainty: "midway between laboratory data and the wine relation, which differ by this much",
    sources: &[&USHER, &FINDLAY_SHEN, &EU_WINE],
    standing: Standing::Judgement,
    kernel: |x| Factor::Midpoint.of(x[0], x[1]),
};

/// The factor for safety checks.
pub static UNFAVOURABLE: Equation = Equation {
    id: "composition_unfavourable",
    title: "solubility relative to water, smaller of laboratory data and wine relation",
    formula: "F = min(exp(-0.0042*A - 0.00087*E), (0.86 - 0.01*A)/0.86*(1 - 0.00144*E))",
    result: FACTOR,
    inputs: COMPOSITION,
    uncertainty_percent: None,
    uncertainty: "a bound on the safe side, not an estimate",
    sources: &[&USHER, &FINDLAY_SHEN, &EU_WINE],
    standing: Standing::Judgement,
    kernel: |x| Factor::Unfavourable.of(x[0], x[1]),
};
