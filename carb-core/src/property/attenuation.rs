//! Real extract, attenuation and alcohol from two gravities, and the CO2 that a falling gravity makes.

use super::constant::WATER_DENSITY_20;
use crate::evidence::caution::{ORIGINAL_RANGE, Range};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited, symbol};
use crate::evidence::source::{ASBC_RDF, BALLING, CUTAIA, NIELSEN};
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, DEGREE_PLATO, GRAMS_PER_LITRE, PERCENT, SPECIFIC_GRAVITY};

/// Original extracts for which the relations are known.
pub static ORIGINAL_EXTRACT: Range = Range { caution: &ORIGINAL_RANGE, low: 5.0, high: 25.0 };

/// Which relation gives real extract.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum RealExtractModel {
    /// Balling's constant quotient.
    Balling,
    /// The quotient that grows with the original extract, after 532 brews.
    Quotient,
}

impl RealExtractModel {
    /// Every model.
    pub const ALL: &'static [RealExtractModel] = &[RealExtractModel::Balling, RealExtractModel::Quotient];
    /// The names, in the order of [`RealExtractModel::ALL`].
    pub const NAMES: &'static [&'static str] = &["balling", "quotient"];
}

impl RealExtractModel {
    /// The apparent extract, °P, of a drink from which everything has fermented: no lower one is possible.
    pub fn driest(self, original: f64) -> f64 {
        match self {
            RealExtractModel::Balling => -0.1808 * original / REAL_SHARE,
            RealExtractModel::Quotient => original * (1.0 - 1.0 / (0.814 + 0.000862 * original)),
        }
    }
}

/// Real extract, °P, by Balling, from original and apparent extract.
#[inline(always)]
pub fn real_extract(original: f64, apparent: f64) -> f64 {
    0.1808 * original + REAL_SHARE * apparent
}

/// What a degree of apparent extract is of real extract.
const REAL_SHARE: f64 = 0.8192;

/// Apparent attenuation, percent.
#[inline(always)]
pub fn apparent_attenuation(original: f64, apparent: f64) -> f64 {
    100.0 * (original - apparent) / original
}

/// Real attenuation, percent, from original and real extract.
#[inline(always)]
pub fn real_attenuation(original: f64, real: f64) -> f64 {
    100.0 * (1.0 - real / original)
}

/// Real attenuation, percent of the original extract's mass, by the quotient that grows with it.
#[inline(always)]
pub fn quotient_attenuation(original: f64, apparent: f64) -> f64 {
    (0.814 + 0.000862 * original) * apparent_attenuation(original, apparent)
}

/// Real extract, °P, from the original and a real attenuation (percent) that counts the mass lost as CO2.
#[inline(always)]
pub fn extract_left(original: f64, attenuation: f64) -> f64 {
    let share = attenuation / 100.0;
    original * (1.0 - share) / (1.0 - 0.005161 * share * original)
}

/// Alcohol by mass, percent, from original and Balling's real extract.
#[inline(always)]
pub fn alcohol_by_mass(original: f64, real: f64) -> f64 {
    (original - real) / (BALLING_EXTRACT - 0.010665 * original)
}

/// Alcohol by volume, percent, from alcohol by mass and the gravity of the drink.
#[inline(always)]
pub fn alcohol_by_volume(abw: f64, sg: f64) -> f64 {
    abw * sg / 0.794
}

/// Alcohol by volume, percent, by the quick form.
#[inline(always)]
pub fn quick_alcohol(original: f64, current: f64) -> f64 {
    131.25 * (original - current)
}

/// Extract per litre, g/L, from °P and the gravity of the drink.
#[inline(always)]
pub fn extract_per_litre(plato: f64, sg: f64) -> f64 {
    plato / 100.0 * WATER_DENSITY_20 * sg
}

/// Extract that ferments, g/L, while the apparent extract falls from `now` to `end`, in a drink of the gravity `sg`.
#[inline(always)]
pub fn fermentable_left(now: f64, end: f64, sg: f64) -> f64 {
    REAL_SHARE * extract_per_litre(now - end, sg)
}

/// Apparent extract, °P, at the end of a fermentation that a real degree of fermentation (percent) limits.
#[inline(always)]
pub fn limit_extract(original: f64, limit: f64) -> f64 {
    (original * (1.0 - limit / 100.0) - 0.1808 * original) / REAL_SHARE
}

/// Apparent extract, °P, at an apparent attenuation (percent).
#[inline(always)]
pub fn attenuated(original: f64, attenuation: f64) -> f64 {
    original * (1.0 - attenuation / 100.0)
}

/// Extract, CO2 and alcohol of Balling's fermentation, g for 1 g of alcohol.
const BALLING_EXTRACT: f64 = 2.0665;
const BALLING_CO2: f64 = 0.9565;

/// CO2, g/L, by Balling's yield, from fermented extract, g/L.
#[inline(always)]
pub fn balling_co2(extract: f64) -> f64 {
    extract * BALLING_CO2 / BALLING_EXTRACT
}

const fn degrees(name: &'static str, meaning: &'static str) -> Symbol {
    symbol(name, Measure::In(&DEGREE_PLATO), meaning)
}
const fn gravity(name: &'static str, meaning: &'static str) -> Symbol {
    symbol(name, Measure::In(&SPECIFIC_GRAVITY), meaning)
}
const fn percent(name: &'static str, meaning: &'static str) -> Symbol {
    symbol(name, Measure::In(&PERCENT), meaning)
}
const ORIGINAL: Symbol = limited("O", Measure::In(&DEGREE_PLATO), "original extract", 5.0, 25.0);
const APPARENT: Symbol = degrees("A", "apparent extract");
const REAL: Symbol = degrees("R", "real extract");

/// The catalogue's entry for [`real_extract`].
pub static REAL_EXTRACT: Equation = Equation {
    id: "real_extract",
    title: "real extract, Balling",
    formula: "R = 0.1808*O + 0.8192*A",
    result: REAL,
    inputs: &[ORIGINAL, APPARENT],
    uncertainty_percent: Some(4.0),
    uncertainty: "0.2 °P: it lies 0.15 to 0.19 °P below the means of four sets of brews of 2009",
    sources: &[&BALLING, &CUTAIA],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| real_extract(x[0], x[1]),
};

/// The catalogue's entry for [`apparent_attenuation`].
pub static APPARENT_ATTENUATION: Equation = Equation {
    id: "apparent_attenuation",
    title: "apparent attenuation",
    formula: "a = 100*(O - A)/O",
    result: percent("a", "share of the extract that seems fermented"),
    inputs: &[ORIGINAL, APPARENT],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| apparent_attenuation(x[0], x[1]),
};

/// The catalogue's entry for [`real_attenuation`].
pub static REAL_ATTENUATION: Equation = Equation {
    id: "real_attenuation",
    title: "real attenuation",
    formula: "r = 100*(1 - R/O)",
    result: percent("r", "share of the extract that was fermented"),
    inputs: &[ORIGINAL, REAL],
    uncertainty_percent: Some(2.0),
    uncertainty: "that of the real extract",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| real_attenuation(x[0], x[1]),
};

/// The catalogue's entry for [`quotient_attenuation`].
pub static QUOTIENT_ATTENUATION: Equation = Equation {
    id: "real_attenuation_quotient",
    title: "real attenuation, quotient of 532 brews",
    formula: "r = (0.814 + 0.000862*O)*100*(O - A)/O",
    result: percent("r", "share of the extract's mass that was fermented"),
    inputs: &[ORIGINAL, APPARENT],
    uncertainty_percent: Some(0.5),
    uncertainty: "the means of four of its sets of brews lie within 0.2 % of it; a single brew scatters more",
    sources: &[&CUTAIA],
    standing: Standing::Published,
    kernel: |x| quotient_attenuation(x[0], x[1]),
};

/// The catalogue's entry for [`extract_left`].
pub static EXTRACT_LEFT: Equation = Equation {
    id: "real_extract_from_attenuation",
    title: "real extract from real attenuation",
    formula: "R = O*(1 - r/100)/(1 - 0.005161*r/100*O)",
    result: REAL,
    inputs: &[ORIGINAL, percent("r", "real attenuation, counting the mass lost as CO2")],
    uncertainty_percent: Some(1.0),
    uncertainty: "that of the attenuation; the factor for the mass lost is from memory",
    sources: &[&ASBC_RDF],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| extract_left(x[0], x[1]),
};

/// The catalogue's entry for [`alcohol_by_mass`].
pub static ALCOHOL_BY_MASS: Equation = Equation {
    id: "alcohol_by_mass",
    title: "alcohol by mass, Balling",
    formula: "w = (O - R)/(2.0665 - 0.010665*O)",
    result: percent("w", "alcohol by mass"),
    inputs: &[ORIGINAL, degrees("R", "real extract by Balling")],
    uncertainty_percent: Some(3.0),
    uncertainty: "within 0.11 % mass of the means of five sets of brews of 2009",
    sources: &[&BALLING, &NIELSEN, &CUTAIA],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| alcohol_by_mass(x[0], x[1]),
};

/// The catalogue's entry for [`alcohol_by_volume`].
pub static ALCOHOL_BY_VOLUME: Equation = Equation {
    id: "alcohol_by_volume",
    title: "alcohol by volume",
    formula: "v = w*s/0.794",
    result: percent("v", "alcohol by volume"),
    inputs: &[
        limited("w", Measure::In(&PERCENT), "alcohol by mass", 0.0, 15.0),
        gravity("s", "specific gravity of the drink"),
    ],
    uncertainty_percent: Some(0.4),
    uncertainty: "0.791 is used for the gravity of alcohol too",
    sources: &[],
    standing: Standing::CommonPractice,
    kernel: |x| alcohol_by_volume(x[0], x[1]),
};

/// The catalogue's entry for [`quick_alcohol`].
pub static QUICK_ALCOHOL: Equation = Equation {
    id: "alcohol_quick",
    title: "alcohol by volume, quick form",
    formula: "v = 131.25*(o - s)",
    result: percent("v", "alcohol by volume"),
    inputs: &[
        limited("o", Measure::In(&SPECIFIC_GRAVITY), "original gravity", 1.02, 1.1),
        gravity("s", "gravity as it is"),
    ],
    uncertainty_percent: Some(4.0),
    uncertainty: "0.03 % vol below Balling at 5 %, 0.35 % vol at 11 %",
    sources: &[],
    standing: Standing::CommonPractice,
    kernel: |x| quick_alcohol(x[0], x[1]),
};

/// The catalogue's entry for [`extract_per_litre`].
pub static EXTRACT_PER_LITRE: Equation = Equation {
    id: "extract_per_litre",
    title: "extract per litre",
    formula: "c = 10*E*0.9982*s",
    result: symbol("c", Measure::In(&GRAMS_PER_LITRE), "extract per litre of drink"),
    inputs: &[degrees("E", "extract"), gravity("s", "specific gravity of the drink")],
    uncertainty_percent: Some(0.01),
    uncertainty: "the density of water at 20 °C to five digits",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| extract_per_litre(x[0], x[1]),
};

/// The catalogue's entry for [`fermentable_left`].
pub static FERMENTABLE_LEFT: Equation = Equation {
    id: "fermentable_from_gravity",
    title: "extract that ferments while the gravity falls",
    formula: "F = 0.8192*10*(A - B)*0.9982*s",
    result: symbol("F", Measure::In(&GRAMS_PER_LITRE), "extract that ferments, per litre of drink"),
    inputs: &[
        limited("A", Measure::In(&DEGREE_PLATO), "apparent extract now", -3.0, 25.0),
        degrees("B", "apparent extract at the end"),
        gravity("s", "specific gravity now"),
    ],
    uncertainty_percent: Some(4.0),
    uncertainty: "that of Balling's quotient; a hydrometer's 0.001 is 2 g/L",
    sources: &[&BALLING],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| fermentable_left(x[0], x[1], x[2]),
};

/// The catalogue's entry for [`balling_co2`].
pub static BALLING_YIELD: Equation = Equation {
    id: "balling_co2",
    title: "CO2 from fermented extract, Balling",
    formula: "c = F*0.9565/2.0665",
    result: symbol("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 made"),
    inputs: &[limited("F", Measure::In(&GRAMS_PER_LITRE), "extract that ferments", 0.0, 400.0)],
    uncertainty_percent: Some(5.0),
    uncertainty: "0.9695 was measured; theory for maltose makes 11 % more",
    sources: &[&NIELSEN],
    standing: Standing::Published,
    kernel: |x| balling_co2(x[0]),
};

/// The catalogue's entry for [`limit_extract`].
pub static LIMIT_EXTRACT: Equation = Equation {
    id: "limit_extract",
    title: "apparent extract at the limit attenuation",
    formula: "B = (O*(1 - r/100) - 0.1808*O)/0.8192",
    result: degrees("B", "apparent extract at the end"),
    inputs: &[ORIGINAL, limited("r", Measure::In(&PERCENT), "real degree of fermentation at the end", 40.0, 90.0)],
    uncertainty_percent: Some(4.0),
    uncertainty: "that of Balling's quotient",
    sources: &[&BALLING],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| limit_extract(x[0], x[1]),
};

/// The catalogue's entry for [`attenuated`].
pub static ATTENUATED: Equation = Equation {
    id: "final_extract",
    title: "apparent extract at an apparent attenuation",
    formula: "B = O*(1 - a/100)",
    result: degrees("B", "apparent extract at the end"),
    inputs: &[ORIGINAL, limited("a", Measure::In(&PERCENT), "apparent attenuation at the end", 40.0, 90.0)],
    uncertainty_percent: None,
    uncertainty: "exact: that of the attenuation expected",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| attenuated(x[0], x[1]),
};
