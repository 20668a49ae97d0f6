//! Sugars: composition is stored, yield is derived from it by stoichiometry.

use super::constant::CO2_MOLAR_MASS;
use crate::evidence::Source;
use crate::evidence::equation::{Equation, Measure, Standing, limited};
use crate::evidence::source::{ATOMIC_WEIGHTS, HUXLEY, NIELSEN, OXFORD_BEER, USDA, WHITE};

/// Molar masses, kg/mol, from the standard atomic weights (C 12.011, H 1.008, O 15.999).
const HEXOSE: f64 = 0.180_156;
const DISACCHARIDE: f64 = 0.342_297;
const DEXTROSE_MONOHYDRATE_MASS: f64 = 0.198_171;

/// CO2 that a gram of product can make, g/g: two molecules from each hexose, four from each disaccharide.
#[inline(always)]
pub fn theoretical_yield(hexose: f64, disaccharide: f64) -> f64 {
    CO2_MOLAR_MASS * (2.0 * hexose / HEXOSE + 4.0 * disaccharide / DISACCHARIDE)
}

/// The catalogue's entry for [`theoretical_yield`].
pub static THEORETICAL_YIELD: Equation = Equation {
    id: "sugar_yield",
    title: "theoretical CO2 from sugar",
    formula: "y = 44.0095*(2*h/180.156 + 4*d/342.297)",
    result: limited("y", Measure::Plain("g/g"), "CO2 per mass of product", 0.0, 0.53),
    inputs: &[
        limited("h", Measure::Plain("g/g"), "fermentable hexoses in the product", 0.0, 1.0),
        limited("d", Measure::Plain("g/g"), "fermentable disaccharides in the product", 0.0, 1.0),
    ],
    uncertainty_percent: Some(6.0),
    uncertainty: "stoichiometry is exact; yeast growth, glycerol and acids take 3-7 % (Pasteur, Balling), and products vary as their range says",
    sources: &[&ATOMIC_WEIGHTS, &NIELSEN, &HUXLEY],
    standing: Standing::Published,
    kernel: |x| theoretical_yield(x[0], x[1]),
};

/// What remaining fermentable extract yields: taken as maltose, the larger of the usual figures.
#[inline(always)]
pub fn extract_yield() -> f64 {
    theoretical_yield(0.0, 1.0)
}

/// A fermentable product as sold.
#[derive(Debug)]
pub struct Fermentable {
    /// Its name in every face.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// Water, g/g.
    pub water: f64,
    /// Fermentable hexoses (glucose, fructose), g/g.
    pub hexose: f64,
    /// Fermentable disaccharides (sucrose, maltose), g/g.
    pub disaccharide: f64,
    /// Yields that samples of the product span, g CO2 per g.
    pub yield_range: (f64, f64),
    /// Where the composition comes from.
    pub source: &'static Source,
    /// How well it is known.
    pub standing: Standing,
}

impl Fermentable {
    /// CO2 that a gram can make, by the composition.
    pub fn theoretical_yield(&self) -> f64 {
        theoretical_yield(self.hexose, self.disaccharide)
    }

    /// The most CO2 that a gram of any sample can make: what a safety check takes.
    pub fn highest_yield(&self) -> f64 {
        let (derived, high) = (self.theoretical_yield(), self.yield_range.1);
        if derived > high { derived } else { high }
    }
}

/// Sucrose: the sugar that is taken where none is named.
pub static SUCROSE: Fermentable = SUCROSE_ENTRY;
const SUCROSE_ENTRY: Fermentable = Fermentable {
    name: "sucrose",
    title: "sucrose (table sugar)",
    water: 0.0,
    hexose: 0.0,
    disaccharide: 1.0,
    yield_range: (0.512, 0.5143),
    source: &USDA,
    standing: Standing::Published,
};

/// The sugars, in the order in which they are listed.
pub static FERMENTABLES: &[Fermentable] = &[
    Fermentable {
        name: "dextrose_monohydrate",
        title: "dextrose monohydrate (corn sugar as usually sold)",
        water: 1.0 - HEXOSE / DEXTROSE_MONOHYDRATE_MASS,
        hexose: HEXOSE / DEXTROSE_MONOHYDRATE_MASS,
        disaccharide: 0.0,
        yield_range: (0.440, 0.447),
        source: &ATOMIC_WEIGHTS,
        standing: Standing::Published,
    },
    Fermentable {
        name: "dextrose_anhydrous",
        title: "dextrose, anhydrous",
        water: 0.0,
        hexose: 1.0,
        disaccharide: 0.0,
        yield_range: (0.486, 0.489),
        source: &ATOMIC_WEIGHTS,
        standing: Standing::Published,
    },
    SUCROSE_ENTRY,
    // 97 % extract, of which 62 % ferments, as maltose.
    Fermentable {
        name: "dry_malt_extract",
        title: "dry malt extract",
        water: 0.03,
        hexose: 0.0,
        disaccharide: 0.97 * 0.62,
        yield_range: (0.245, 0.34),
        source: &OXFORD_BEER,
        standing: Standing::CommonPractice,
    },
    // Fructose 38.2 and glucose 31.3, sucrose 1.3 and half of 7.1 maltose-like sugars, g per 100 g.
    Fermentable {
        name: "honey",
        title: "honey",
        water: 0.172,
        hexose: 0.382 + 0.313,
        disaccharide: 0.013 + 0.5 * 0.071,
        yield_range: (0.34, 0.39),
        source: &WHITE,
        standing: Standing::Published,
    },
    // 60.46 g sugars per 100 g; the split into sucrose and hexoses is from memory of the same tables.
    Fermentable {
        name: "maple_syrup",
        title: "maple syrup",
        water: 0.3239,
        hexose: 0.021,
        disaccharide: 0.583,
        yield_range: (0.30, 0.335),
        source: &USDA,
        standing: Standing::ConfirmedFromMemory,
    },
];

/// Names of the [`FERMENTABLES`], in their order.
pub static NAMES: &[&str] = &{
    let mut names = [""; FERMENTABLES.len()];
    let mut at = 0;
    while at < names.len() {
        names[at] = FERMENTABLES[at].name;
        at += 1;
    }
    names
};

/// Why a name is refused as a priming sugar.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// Two products go by it, 10 % apart.
    Ambiguous,
    /// Brewing yeast makes no CO2 of it.
    MakesNoCo2,
}

/// Names that are refused with a reason of their own.
pub static REFUSED: &[(&str, Refusal)] = &[
    ("dextrose", Refusal::Ambiguous),
    ("glucose", Refusal::Ambiguous),
    ("corn_sugar", Refusal::Ambiguous),
    ("lactose", Refusal::MakesNoCo2),
    ("maltodextrin", Refusal::MakesNoCo2),
    ("sucralose", Refusal::MakesNoCo2),
    ("aspartame", Refusal::MakesNoCo2),
    ("saccharin", Refusal::MakesNoCo2),
    ("stevia", Refusal::MakesNoCo2),
    ("erythritol", Refusal::MakesNoCo2),
    ("xylitol", Refusal::MakesNoCo2),
    ("sorbitol", Refusal::MakesNoCo2),
    ("sweetener", Refusal::MakesNoCo2),
];
