//! Families of drinks, and how much carbonation each usually has.

use crate::evidence::Source;
use crate::evidence::equation::Standing;
use crate::evidence::source::{CFR_CIDER, DRAPER, HIBBERD, LIGER_BELAIR_LAGER, MEBAK_RANGE, OIV, PHYSICS_WORLD, SONG};
use crate::quantity::unit::VOLUMES;

/// A range of carbonation that one source gives for a family.
#[derive(Debug)]
pub struct Usual {
    /// The family.
    pub family: &'static str,
    /// What kind of drink it is, as in the requests.
    pub beverage: &'static str,
    /// Lowest and highest carbonation, volumes; a single figure where both are the same, a limit where the lowest is 0.
    pub volumes: (f64, f64),
    /// Where from; `None` for common practice.
    pub source: Option<&'static Source>,
    /// How well it is known.
    pub standing: Standing,
}

const fn published(
    family: &'static str,
    beverage: &'static str,
    low: f64,
    high: f64,
    source: &'static Source,
) -> Usual {
    Usual { family, beverage, volumes: (low, high), source: Some(source), standing: Standing::Published }
}
const fn practice(family: &'static str, beverage: &'static str, low: f64, high: f64) -> Usual {
    Usual { family, beverage, volumes: (low, high), source: None, standing: Standing::CommonPractice }
}
/// A figure published in g/L, as volumes.
const fn grams(g_per_l: f64) -> f64 {
    VOLUMES.from_si(g_per_l)
}

/// The ranges, family by family.
pub static RANGES: &[Usual] = &[
    practice("British cask ale, served", "beer", 0.9, 1.3),
    published("British bottled ale", "beer", 1.8, 2.2, &HIBBERD),
    practice("British bottled ale", "beer", 1.5, 2.2),
    published("British-style ale", "beer", 1.5, 2.0, &DRAPER),
    practice("British-style ale", "beer", 1.5, 2.2),
    published("porter, stout", "beer", 1.7, 2.3, &DRAPER),
    practice("porter, stout", "beer", 1.7, 2.3),
    practice("stout under nitrogen", "beer", 1.0, 1.3),
    published("American ale, lager", "beer", 2.2, 2.7, &DRAPER),
    practice("American ale, lager", "beer", 2.3, 2.8),
    published("European lager", "beer", 2.2, 2.7, &DRAPER),
    published("lager", "beer", 2.2, 2.6, &HIBBERD),
    published("lager, highly carbonated", "beer", 2.6, 3.0, &HIBBERD),
    practice("European lager", "beer", 2.4, 2.7),
    published("bottom-fermented beer", "beer", grams(4.0), grams(6.0), &MEBAK_RANGE),
    published("top-fermented beer", "beer", grams(4.0), grams(8.0), &MEBAK_RANGE),
    published("commercial lager, 5 % vol", "beer", grams(5.5), grams(5.5), &LIGER_BELAIR_LAGER),
    published("average bottled beer", "beer", grams(6.0), grams(6.0), &PHYSICS_WORLD),
    published("Belgian ale", "beer", 1.9, 2.4, &DRAPER),
    practice("Belgian ale", "beer", 2.5, 3.5),
    practice("strong golden ale, saison", "beer", 3.0, 4.5),
    published("wheat beer", "beer", 3.3, 4.5, &DRAPER),
    practice("wheat beer", "beer", 3.0, 4.5),
    published("lambic", "beer", 2.4, 2.8, &DRAPER),
    practice("lambic", "beer", 3.0, 4.5),
    published("fruit lambic", "beer", 3.0, 4.5, &DRAPER),
    practice("gueuze", "beer", 3.0, 4.5),
    practice("still cider", "cider", 0.0, 1.3),
    practice("petillant cider", "cider", 1.5, 2.5),
    practice("sparkling cider", "cider", 2.5, 4.0),
    published("hard cider in the USA, at most", "cider", 0.0, grams(6.4), &CFR_CIDER),
    practice("still mead", "mead", 0.0, 1.3),
    practice("petillant mead", "mead", 1.5, 2.5),
    practice("sparkling mead", "mead", 3.0, 6.0),
    published("still wine in the USA, at most", "wine", 0.0, grams(3.92), &CFR_CIDER),
    practice("sparkling wine", "wine", 5.0, 6.5),
    published("champagne", "wine", grams(11.0), grams(11.0), &LIGER_BELAIR_LAGER),
    practice("champagne", "wine", grams(11.0), grams(12.0)),
    published("sparkling wine, at least: 3.5 bar over at 20 °C, 12 % vol", "wine", 3.3, 3.3, &OIV),
    published(
        "sparkling wine in bottles below 250 mL, at least: 3 bar over at 20 °C, 12 % vol",
        "wine",
        2.93,
        2.93,
        &OIV,
    ),
    practice("pearl wine: 1 to 2.5 bar over at 20 °C, 12 % vol", "wine", 1.5, 2.6),
    practice("hard seltzer", "soft_drink", 0.0, 2.8),
    published("carbonated drink, from where it is felt to the most recommended", "soft_drink", 0.6, 8.0, &SONG),
    practice("kombucha, water kefir", "soft_drink", 1.5, 3.0),
    published("soft drink", "soft_drink", 3.0, 3.5, &SONG),
    practice("cola", "soft_drink", 3.5, 4.0),
    practice("ginger ale, mixer", "soft_drink", 3.5, 4.5),
    practice("fruit soft drink", "soft_drink", 1.5, 3.0),
    practice("sparkling water", "water", 2.5, 4.5),
];
