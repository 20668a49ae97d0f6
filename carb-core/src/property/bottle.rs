//! Bottles: the sizes that are sold, and what their classes are used for.
//!
//! The carbonation of a class is what the trade usually puts into it: no rating. A maker's rating goes before it.

use crate::evidence::Source;
use crate::evidence::equation::Standing;
use crate::evidence::source::{BRITISH_GLASS, BS_6119, CAMPDEN, GROWLERS, OXFORD_BEER};

/// A size of bottle.
#[derive(Debug)]
pub struct Size {
    /// Nominal content, mL.
    pub millilitres: f64,
    /// What it is called, where it has a name.
    pub title: &'static str,
    /// Where it is listed.
    pub source: Option<&'static Source>,
    /// How well it is known.
    pub standing: Standing,
}

const fn listed(millilitres: f64, title: &'static str) -> Size {
    Size { millilitres, title, source: Some(&OXFORD_BEER), standing: Standing::Published }
}
const fn common(millilitres: f64, title: &'static str) -> Size {
    Size { millilitres, title, source: None, standing: Standing::CommonPractice }
}

/// The sizes, the smallest first.
pub static SIZES: &[Size] = &[
    common(187.0, "split"),
    common(200.0, ""),
    common(250.0, ""),
    listed(275.0, ""),
    common(300.0, ""),
    listed(330.0, ""),
    listed(341.0, "12 imperial fluid ounces"),
    listed(355.0, "12 US fluid ounces"),
    common(375.0, "half bottle of wine"),
    common(473.0, "16 US fluid ounces, a US pint"),
    listed(500.0, ""),
    listed(550.0, ""),
    listed(568.0, "imperial pint"),
    common(600.0, ""),
    common(620.0, ""),
    common(633.0, ""),
    common(640.0, ""),
    listed(650.0, "22 US fluid ounces"),
    common(660.0, ""),
    listed(750.0, "bottle of wine"),
    common(946.0, "32 US fluid ounces, a US quart"),
    common(1000.0, ""),
    listed(1136.0, "2 imperial pints"),
    common(1500.0, "magnum"),
    common(1893.0, "64 US fluid ounces, a growler"),
];

/// A class of bottle.
#[derive(Debug)]
pub struct Class {
    /// Its name in every face.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// Usual highest carbonation, volumes: from and to; 0 where it is not for conditioning.
    pub usual: (f64, f64),
    /// How well that is known: without exception by the trade's practice.
    pub standing: Standing,
    /// What is published of it, if anything.
    pub published: &'static str,
    /// Where.
    pub source: Option<&'static Source>,
}

impl Class {
    /// Whether bottles of the class are for conditioning drink in them.
    pub fn for_conditioning(&self) -> bool {
        self.usual.1 > 0.0
    }

    const fn usual(name: &'static str, title: &'static str, low: f64, high: f64) -> Self {
        Self { name, title, usual: (low, high), standing: Standing::CommonPractice, published: "", source: None }
    }

    const fn with(mut self, published: &'static str, source: &'static Source) -> Self {
        self.published = published;
        self.source = Some(source);
        self
    }
}

/// Light one-way beer bottles.
pub static LIGHT: Class =
    Class::usual("light_one_way", "light one-way beer bottle, 330-355 mL of about 190-200 g", 2.7, 3.0);
/// Heavier reusable beer bottles.
pub static HEAVIER: Class =
    Class::usual("heavier_reusable", "heavier reusable beer bottle, 500 mL of about 360 g and more", 3.0, 3.5);

/// The classes.
pub static CLASSES: &[&Class] = &[
    &LIGHT,
    &HEAVIER,
    &Class::usual("swing_top", "swing-top bottle with a good gasket, which vents first", 3.5, 4.0),
    &Class::usual("heavy_belgian", "heavy Belgian bottle, 330 or 750 mL", 4.0, 5.0),
    &Class::usual("champagne", "champagne bottle, 750 mL of about 835-900 g, crown or wired cork", 6.5, 7.0)
        .with("tested at 16 bar of internal pressure", &CAMPDEN),
    &Class::usual("soft_drink_multi_trip", "soft-drink glass for many trips, 750 mL or 1 L", 4.0, 4.5)
        .with("at most 4.5 volumes, 9 g/L, at 20 °C", &BS_6119),
    &Class::usual("soft_drink_glass", "other soft-drink glass, at most 1150 mL", 4.0, 4.5)
        .with("at most 4.7 bar of carbonation pressure, at a temperature that is not told; 5.3 bar only refillable ones to 180 mL", &BRITISH_GLASS),
    &Class::usual("pet_soft_drink", "PET bottle for carbonated soft drinks", 4.0, 4.5)
        .with("burst near 12 bar when new; creeps when warm", &CAMPDEN),
    &Class::usual("growler", "glass growler or screw-cap jug: not for conditioning", 0.0, 0.0)
        .with("2.5 volumes filled at 38 °F to 99 % reach 29 psi gauge at 68 °F and 52 at 90 °F: by a source that has no air in it", &GROWLERS),
    &Class::usual("still_wine", "still-wine bottle with a cork: not for conditioning", 0.0, 0.0),
];

/// Names of the classes, in their order.
pub static NAMES: &[&str] = &{
    let mut names = [""; CLASSES.len()];
    let mut at = 0;
    while at < CLASSES.len() {
        names[at] = CLASSES[at].name;
        at += 1;
    }
    names
};
