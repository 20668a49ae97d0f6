//! Sugars: composition is stored, yield is derived from it by stoichiometry.

use super::constant::{CO2_MOLAR_MASS, WATER_DENSITY_20};
use crate::evidence::Source;
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited, symbol};
use crate::evidence::source::{
    ASBC_GRAVITY, ATOMIC_WEIGHTS, FLOOD, HUXLEY, MOHOS, NIELSEN, OXFORD_BEER, USDA, USDA_28, WHITE,
};
use crate::number::sqrt;
use crate::quantity::unit::{FACTOR, GRAMS_PER_LITRE, PERCENT, SPECIFIC_GRAVITY, US_GALLON};

/// Molar masses, kg/mol, from the standard atomic weights (C 12.011, H 1.008, O 15.999).
const HEXOSE: f64 = 0.180_156;
const DISACCHARIDE: f64 = 0.342_297;
const TRISACCHARIDE: f64 = 0.504_438;
const DEXTROSE_MONOHYDRATE_MASS: f64 = 0.198_171;
const ETHANOL: f64 = 0.046_069;
/// Ethanol in a litre of drink of 1 % vol, g: its density at 20 °C is 789.24 kg/m3.
const ETHANOL_PER_PERCENT: f64 = 7.8924;

/// What yeast ferments in a product, g/g.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sugars {
    /// Hexoses: glucose, fructose.
    pub hexose: f64,
    /// Disaccharides: sucrose, maltose.
    pub disaccharide: f64,
    /// Trisaccharides: maltotriose.
    pub trisaccharide: f64,
}

impl Sugars {
    /// As the equations take them.
    #[inline(always)]
    pub const fn parts(self) -> [f64; 3] {
        [self.hexose, self.disaccharide, self.trisaccharide]
    }
}

/// Moles of ethanol, and of CO2, from a kilogram of product: two from each hexose unit.
#[inline(always)]
fn moles([hexose, disaccharide, trisaccharide]: [f64; 3]) -> f64 {
    2.0 * hexose / HEXOSE + 4.0 * disaccharide / DISACCHARIDE + 6.0 * trisaccharide / TRISACCHARIDE
}

/// CO2 that a gram of product can make, g/g.
#[inline(always)]
pub fn theoretical_yield(sugars: Sugars) -> f64 {
    CO2_MOLAR_MASS * moles(sugars.parts())
}

/// Alcohol, % vol, that `dose` (kg/m3) of product adds at `percent` of the theoretical yield.
#[inline(always)]
pub fn added_alcohol(dose: f64, sugars: Sugars, percent: f64, factor: f64) -> f64 {
    dose * (ETHANOL * moles(sugars.parts())) * percent / 100.0 * factor / ETHANOL_PER_PERCENT
}

/// Dry matter of a syrup, g/g, from its specific gravity 20/20 °C, as if all of it were sucrose, whose volume in solution
/// grows a little with its share.
#[inline(always)]
pub fn syrup_solids(sg: f64) -> f64 {
    let water = 1000.0 / WATER_DENSITY_20;
    let (displaced, missing) = (water - 0.6146, water * (1.0 - 1.0 / sg));
    2.0 * missing / (displaced + sqrt(displaced * displaced - 4.0 * 0.0182 * missing))
}

const PARTS: [Symbol; 3] = [
    limited("h", Measure::Plain("g/g"), "fermentable hexoses in the product", 0.0, 1.0),
    limited("d", Measure::Plain("g/g"), "fermentable disaccharides in the product", 0.0, 1.0),
    limited("t", Measure::Plain("g/g"), "fermentable trisaccharides in the product", 0.0, 1.0),
];
const YIELDED: &str = "stoichiometry is exact; yeast growth, glycerol and acids take 3-7 % (Pasteur, Balling), and products vary as their range says";

/// The catalogue's entry for [`theoretical_yield`].
pub static THEORETICAL_YIELD: Equation = Equation {
    id: "sugar_yield",
    title: "theoretical CO2 from sugar",
    formula: "y = 44.0095*(2*h/180.156 + 4*d/342.297 + 6*t/504.438)",
    result: limited("y", Measure::Plain("g/g"), "CO2 per mass of product", 0.0, 0.53),
    inputs: &PARTS,
    uncertainty_percent: Some(6.0),
    uncertainty: YIELDED,
    sources: &[&ATOMIC_WEIGHTS, &NIELSEN, &HUXLEY],
    standing: Standing::Published,
    kernel: |x| theoretical_yield(Sugars { hexose: x[0], disaccharide: x[1], trisaccharide: x[2] }),
};

/// The catalogue's entry for [`added_alcohol`].
pub static ALCOHOL: Equation = Equation {
    id: "sugar_alcohol",
    title: "alcohol from sugar",
    formula: "v = q*46.069*(2*h/180.156 + 4*d/342.297 + 6*t/504.438)*y/100*k/7.8924",
    result: symbol("v", Measure::In(&PERCENT), "alcohol by volume that is added"),
    inputs: &{
        let [h, d, t] = PARTS;
        [
            limited("q", Measure::In(&GRAMS_PER_LITRE), "product per litre of drink", 0.0, 400.0),
            h,
            d,
            t,
            symbol("y", Measure::In(&PERCENT), "share of the theoretical yield"),
            symbol("k", Measure::In(&FACTOR), "factor on the yield, 1 by default"),
        ]
    },
    uncertainty_percent: Some(6.0),
    uncertainty: YIELDED,
    sources: &[&ATOMIC_WEIGHTS, &HUXLEY],
    standing: Standing::Published,
    kernel: |x| added_alcohol(x[0], Sugars { hexose: x[1], disaccharide: x[2], trisaccharide: x[3] }, x[4], x[5]),
};

/// The catalogue's entry for [`syrup_solids`].
pub static SYRUP: Equation = Equation {
    id: "syrup_solids",
    title: "dry matter of a syrup from its gravity",
    formula: "b = 2*1000/998.2*(1 - 1/s)/(1000/998.2 - 0.6146 + ((1000/998.2 - 0.6146)^2 - 4*0.0182*1000/998.2*(1 - 1/s))^0.5)",
    result: limited("b", Measure::Plain("g/g"), "dry matter", 0.0, 0.85),
    inputs: &[limited("s", Measure::In(&SPECIFIC_GRAVITY), "specific gravity 20/20 °C", 1.0, 1.45)],
    uncertainty_percent: Some(1.5),
    uncertainty: "our fit: within 0.3 % of the extract tables from 5 to 25 °P and of saturated sucrose (67 %); other sugars differ by 1 %",
    sources: &[&ASBC_GRAVITY, &MOHOS],
    standing: Standing::Judgement,
    kernel: |x| syrup_solids(x[0]),
};

/// What remaining fermentable extract yields: taken as maltose. (Maltotriose, of which little is left, makes 1.8 % more.)
#[inline(always)]
pub fn extract_yield() -> f64 {
    theoretical_yield(Sugars { hexose: 0.0, disaccharide: 1.0, trisaccharide: 0.0 })
}

/// A fermentable product as sold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fermentable {
    /// Its name in every face.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// Water, g/g.
    pub water: f64,
    /// What ferments.
    pub sugars: Sugars,
    /// Density of a syrup or a juice, kg/m3, where a source gives it.
    pub density: Option<f64>,
    /// Yields that samples of the product span, g CO2 per g; for fruit and juices judgement, about 6 % either way.
    pub yield_range: (f64, f64),
    /// Where the composition comes from; `None` for common practice and for a sugar of the caller's own.
    pub source: Option<&'static Source>,
    /// How well it is known.
    pub standing: Standing,
}

impl Fermentable {
    /// CO2 that a gram can make, by the composition.
    pub fn theoretical_yield(&self) -> f64 {
        theoretical_yield(self.sugars)
    }

    /// The most CO2 that a gram of any sample can make: what a safety check takes.
    pub fn highest_yield(&self) -> f64 {
        let (derived, high) = (self.theoretical_yield(), self.yield_range.1);
        if derived > high { derived } else { high }
    }

    /// The name of a sugar of the caller's own.
    pub const CUSTOM: &'static str = "custom";

    /// A sugar of the caller's own: water in its mass, what ferments of its dry matter, and as what.
    pub fn custom(water: f64, fermentable: f64, kind: SugarKind) -> Self {
        let share = (1.0 - water) * fermentable;
        let of = |which| if kind == which { share } else { 0.0 };
        let sugars = Sugars {
            hexose: of(SugarKind::Hexose),
            disaccharide: of(SugarKind::Disaccharide),
            trisaccharide: of(SugarKind::Trisaccharide),
        };
        let derived = theoretical_yield(sugars);
        Self {
            name: Self::CUSTOM,
            title: "a sugar of one's own",
            water,
            sugars,
            density: None,
            yield_range: (derived, derived),
            source: None,
            standing: Standing::Definition,
        }
    }
}

/// What the fermentable part of a sugar is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SugarKind {
    /// Glucose, fructose.
    Hexose,
    /// Sucrose, maltose.
    Disaccharide,
    /// Maltotriose.
    Trisaccharide,
}

impl SugarKind {
    /// Every kind.
    pub const ALL: &'static [SugarKind] = &[SugarKind::Hexose, SugarKind::Disaccharide, SugarKind::Trisaccharide];
    /// The names, in the order of [`SugarKind::ALL`].
    pub const NAMES: &'static [&'static str] = &["hexose", "disaccharide", "trisaccharide"];
}

/// A row: water and sugars in grams per 100 g, as the tables print them.
struct Row {
    name: &'static str,
    title: &'static str,
    water: f64,
    hexose: f64,
    disaccharide: f64,
    yields: (f64, f64),
    source: Option<&'static Source>,
    standing: Standing,
}

impl Row {
    const fn made(self) -> Fermentable {
        Fermentable {
            name: self.name,
            title: self.title,
            water: self.water / 100.0,
            sugars: Sugars { hexose: self.hexose / 100.0, disaccharide: self.disaccharide / 100.0, trisaccharide: 0.0 },
            density: None,
            yield_range: self.yields,
            source: self.source,
            standing: self.standing,
        }
    }
}

/// Density, kg/m3, of what weighs `grams` in a US cup, the sixteenth part of a gallon.
const fn per_cup(grams: f64) -> f64 {
    grams / 1000.0 / (US_GALLON.scale / 16.0)
}

/// Density, kg/m3, of what weighs `grams` in a US tablespoon, the sixteenth part of a cup.
const fn per_tablespoon(grams: f64) -> f64 {
    per_cup(16.0 * grams)
}

/// Sucrose: the sugar that is taken where none is named.
pub static SUCROSE: Fermentable = SUCROSE_ENTRY;
const SUCROSE_ENTRY: Fermentable = Fermentable {
    name: "sucrose",
    title: "sucrose (table sugar)",
    water: 0.0,
    sugars: Sugars { hexose: 0.0, disaccharide: 1.0, trisaccharide: 0.0 },
    density: None,
    yield_range: (0.512, 0.5143),
    source: Some(&USDA),
    standing: Standing::Published,
};

/// How many of the [`FERMENTABLES`] a plan lists beside the one that is asked for.
pub const USUAL: usize = 6;

/// The sugars, in the order in which they are listed; the usual ones first.
pub static FERMENTABLES: &[Fermentable] = &[
    Fermentable {
        name: "dextrose_monohydrate",
        title: "dextrose monohydrate (corn sugar as usually sold)",
        water: 1.0 - HEXOSE / DEXTROSE_MONOHYDRATE_MASS,
        sugars: Sugars { hexose: HEXOSE / DEXTROSE_MONOHYDRATE_MASS, disaccharide: 0.0, trisaccharide: 0.0 },
        density: None,
        yield_range: (0.440, 0.447),
        source: Some(&ATOMIC_WEIGHTS),
        standing: Standing::Published,
    },
    Fermentable {
        name: "dextrose_anhydrous",
        title: "dextrose, anhydrous",
        water: 0.0,
        sugars: Sugars { hexose: 1.0, disaccharide: 0.0, trisaccharide: 0.0 },
        density: None,
        yield_range: (0.486, 0.489),
        source: Some(&ATOMIC_WEIGHTS),
        standing: Standing::Published,
    },
    SUCROSE_ENTRY,
    // 97 % extract, of which 62 % ferments, as maltose.
    Fermentable {
        name: "dry_malt_extract",
        title: "dry malt extract",
        water: 0.03,
        sugars: Sugars { hexose: 0.0, disaccharide: 0.97 * 0.62, trisaccharide: 0.0 },
        density: None,
        yield_range: (0.245, 0.34),
        source: Some(&OXFORD_BEER),
        standing: Standing::CommonPractice,
    },
    // Fructose 38.2 and glucose 31.3, sucrose 1.3 and half of 7.1 maltose-like sugars, g per 100 g.
    Fermentable {
        name: "honey",
        title: "honey",
        water: 0.172,
        sugars: Sugars { hexose: 0.382 + 0.313, disaccharide: 0.013 + 0.5 * 0.071, trisaccharide: 0.0 },
        density: Some(per_cup(339.0)),
        yield_range: (0.34, 0.39),
        source: Some(&WHITE),
        standing: Standing::Published,
    },
    // 60.46 g sugars per 100 g; the split into sucrose and hexoses is from memory of the same tables.
    Fermentable {
        name: "maple_syrup",
        title: "maple syrup",
        water: 0.3239,
        sugars: Sugars { hexose: 0.021, disaccharide: 0.583, trisaccharide: 0.0 },
        density: Some(per_tablespoon(20.0)),
        yield_range: (0.30, 0.335),
        source: Some(&USDA),
        standing: Standing::ConfirmedFromMemory,
    },
    Row {
        name: "table_sugar",
        title: "table sugar, as analysed",
        water: 0.02,
        hexose: 0.0,
        disaccharide: 99.8,
        yields: (0.513, 0.514),
        source: Some(&USDA),
        standing: Standing::Published,
    }
    .made(),
    Row {
        name: "icing_sugar",
        title: "icing sugar, with its starch",
        water: 0.23,
        hexose: 0.0,
        disaccharide: 97.81,
        yields: (0.49, 0.51),
        source: Some(&USDA),
        standing: Standing::Published,
    }
    .made(),
    Row {
        name: "turbinado",
        title: "turbinado sugar",
        water: 0.03,
        hexose: 0.0,
        disaccharide: 99.19,
        yields: (0.5, 0.512),
        source: Some(&USDA),
        standing: Standing::Published,
    }
    .made(),
    Row {
        name: "demerara",
        title: "demerara sugar",
        water: 0.4,
        hexose: 0.0,
        disaccharide: 98.4,
        yields: (0.5, 0.51),
        source: None,
        standing: Standing::CommonPractice,
    }
    .made(),
    // 97.02 g sugars; the split is from memory of the same tables.
    Row {
        name: "brown_sugar",
        title: "brown sugar, soft",
        water: 1.34,
        hexose: 2.5,
        disaccharide: 94.5,
        yields: (0.47, 0.5),
        source: Some(&USDA),
        standing: Standing::ConfirmedFromMemory,
    }
    .made(),
    // Taken as sucrose, of which it mostly consists.
    Row {
        name: "maple_sugar",
        title: "maple sugar",
        water: 8.0,
        hexose: 0.0,
        disaccharide: 84.87,
        yields: (0.42, 0.45),
        source: Some(&USDA),
        standing: Standing::Published,
    }
    .made(),
    Row {
        name: "invert_syrup",
        title: "invert syrup, 77 % dry matter",
        water: 23.0,
        hexose: 77.0,
        disaccharide: 0.0,
        yields: (0.36, 0.39),
        source: None,
        standing: Standing::CommonPractice,
    }
    .made(),
    // 42 % fructose and 53 % glucose of 71 g dry matter.
    Row {
        name: "hfcs_42",
        title: "high-fructose corn syrup, 42 % fructose, 71 % dry matter",
        water: 29.0,
        hexose: 67.45,
        disaccharide: 0.0,
        yields: (0.32, 0.33),
        source: Some(&FLOOD),
        standing: Standing::Published,
    }
    .made(),
    Fermentable {
        density: Some(per_cup(310.0)),
        ..Row {
            name: "hfcs_55",
            title: "high-fructose corn syrup, 55 % fructose",
            water: 24.0,
            hexose: 75.65,
            disaccharide: 0.0,
            yields: (0.355, 0.37),
            source: Some(&USDA),
            standing: Standing::Published,
        }
        .made()
    },
    Row {
        name: "high_maltose_syrup",
        title: "high-maltose brewing syrup, 80 % dry matter",
        water: 20.0,
        hexose: 0.0,
        disaccharide: 61.25,
        yields: (0.3, 0.33),
        source: None,
        standing: Standing::CommonPractice,
    }
    .made(),
    // The 74.72 g sugars are by difference; sucrose 29, glucose 12 and fructose 13 g are what single sugars sum to.
    Fermentable {
        density: Some(per_cup(337.0)),
        ..Row {
            name: "molasses",
            title: "molasses, table",
            water: 21.87,
            hexose: 25.0,
            disaccharide: 29.0,
            yields: (0.25, 0.33),
            source: Some(&USDA),
            standing: Standing::ConfirmedFromMemory,
        }
        .made()
    },
    Row {
        name: "blackstrap_molasses",
        title: "blackstrap molasses",
        water: 22.5,
        hexose: 15.5,
        disaccharide: 30.0,
        yields: (0.2, 0.26),
        source: None,
        standing: Standing::CommonPractice,
    }
    .made(),
    // 73.2 g sugars, taken as half inverted.
    Row {
        name: "cane_syrup",
        title: "cane syrup",
        water: 26.0,
        hexose: 36.6,
        disaccharide: 36.6,
        yields: (0.35, 0.38),
        source: Some(&USDA),
        standing: Standing::ConfirmedFromMemory,
    }
    .made(),
    // What its fructans could add is in the range.
    Row {
        name: "agave_syrup",
        title: "agave syrup",
        water: 22.9,
        hexose: 68.0,
        disaccharide: 0.0,
        yields: (0.32, 0.37),
        source: Some(&USDA_28),
        standing: Standing::ConfirmedFromMemory,
    }
    .made(),
    Row {
        name: "candi_syrup",
        title: "dark candi syrup",
        water: 25.0,
        hexose: 63.75,
        disaccharide: 0.0,
        yields: (0.25, 0.36),
        source: None,
        standing: Standing::CommonPractice,
    }
    .made(),
    // 80 % extract, of which 62 % ferments, as maltose.
    Row {
        name: "liquid_malt_extract",
        title: "liquid malt extract",
        water: 20.0,
        hexose: 0.0,
        disaccharide: 80.0 * 0.62,
        yields: (0.2, 0.28),
        source: Some(&OXFORD_BEER),
        standing: Standing::CommonPractice,
    }
    .made(),
    Row {
        name: "apple_juice",
        title: "apple juice",
        water: 88.24,
        hexose: 9.62,
        disaccharide: 0.0,
        yields: (0.045, 0.06),
        source: Some(&USDA),
        standing: Standing::Published,
    }
    .made(),
    Row {
        name: "apple_concentrate",
        title: "apple juice concentrate, undiluted",
        water: 57.0,
        hexose: 38.83,
        disaccharide: 0.0,
        yields: (0.18, 0.2),
        source: Some(&USDA),
        standing: Standing::Published,
    }
    .made(),
    Row {
        name: "grape_juice",
        title: "grape juice",
        water: 84.51,
        hexose: 14.2,
        disaccharide: 0.0,
        yields: (0.065, 0.1),
        source: Some(&USDA),
        standing: Standing::Published,
    }
    .made(),
    // 8.76 g sugars, about half of them sucrose.
    Row {
        name: "orange_juice",
        title: "orange juice",
        water: 87.72,
        hexose: 4.38,
        disaccharide: 4.38,
        yields: (0.041, 0.048),
        source: Some(&USDA),
        standing: Standing::ConfirmedFromMemory,
    }
    .made(),
    // 9.98 g sugars, about half of them sucrose.
    Row {
        name: "pineapple_juice",
        title: "pineapple juice",
        water: 86.37,
        hexose: 4.99,
        disaccharide: 4.99,
        yields: (0.047, 0.054),
        source: Some(&USDA),
        standing: Standing::ConfirmedFromMemory,
    }
    .made(),
    Row {
        name: "raisins",
        title: "raisins",
        water: 15.43,
        hexose: 59.19,
        disaccharide: 0.0,
        yields: (0.27, 0.31),
        source: Some(&USDA),
        standing: Standing::Published,
    }
    .made(),
    // 63.35 g sugars; the split is from memory of the same tables.
    Row {
        name: "dates",
        title: "dates (deglet noor)",
        water: 20.53,
        hexose: 39.55,
        disaccharide: 23.8,
        yields: (0.29, 0.33),
        source: Some(&USDA),
        standing: Standing::ConfirmedFromMemory,
    }
    .made(),
    Fermentable {
        name: "corn_syrup_42",
        title: "corn syrup, 42 dextrose equivalent, 80 % dry matter",
        water: 1.0 - 0.8,
        sugars: Sugars { hexose: 0.8 * 0.19, disaccharide: 0.8 * 0.14, trisaccharide: 0.8 * 0.11 },
        density: None,
        yield_range: (0.15, 0.2),
        source: None,
        standing: Standing::CommonPractice,
    },
    Fermentable {
        name: "corn_syrup_63",
        title: "corn syrup, 63 dextrose equivalent, 82 % dry matter",
        water: 1.0 - 0.82,
        sugars: Sugars { hexose: 0.82 * 0.37, disaccharide: 0.82 * 0.3, trisaccharide: 0.82 * 0.13 },
        density: None,
        yield_range: (0.31, 0.35),
        source: None,
        standing: Standing::CommonPractice,
    },
];

/// Names of the [`FERMENTABLES`], in their order, and that of a sugar of one's own.
pub static NAMES: &[&str] = &{
    let mut names = [Fermentable::CUSTOM; FERMENTABLES.len() + 1];
    let mut at = 0;
    while at < FERMENTABLES.len() {
        names[at] = FERMENTABLES[at].name;
        at += 1;
    }
    names
};

/// Names that two products go by, 10 % apart.
pub static AMBIGUOUS: &[&str] = &["dextrose", "glucose", "corn_sugar"];
