//! What is added for sweetness and is not meant to ferment.

use super::fermentable::{FERMENTABLES, Fermentable};
use crate::evidence::Source;
use crate::evidence::caution::{CautionKind, DEXTRIN_LEFT, LACTOSE_LEFT, SWEETENER_LEFT, SWEETENER_PACKET};
use crate::evidence::equation::Standing;
use crate::evidence::source::USDA;

/// Something added for sweetness.
#[derive(Debug)]
pub struct Sweetener {
    /// Its name in every face.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// CO2 that a gram makes at most, g/g; what is expected is none.
    pub highest_yield: f64,
    /// What is to be said of it: above all, what does ferment it.
    pub caution: &'static CautionKind,
    /// Where the figure comes from; `None` for common knowledge.
    pub source: Option<&'static Source>,
    /// How well it is known.
    pub standing: Standing,
}

const fn inert(name: &'static str, title: &'static str, caution: &'static CautionKind) -> Sweetener {
    Sweetener { name, title, highest_yield: 0.0, caution, source: None, standing: Standing::CommonPractice }
}

/// The sweeteners, in the order in which they are listed.
pub static SWEETENERS: &[Sweetener] = &[
    inert("lactose", "lactose (milk sugar)", &LACTOSE_LEFT),
    Sweetener { highest_yield: 0.05, ..inert("maltodextrin", "maltodextrin", &DEXTRIN_LEFT) },
    inert("sucralose", "sucralose, pure", &SWEETENER_LEFT),
    inert("aspartame", "aspartame, pure", &SWEETENER_LEFT),
    inert("saccharin", "saccharin, pure", &SWEETENER_LEFT),
    inert("stevia", "stevia extract, pure", &SWEETENER_LEFT),
    inert("erythritol", "erythritol", &SWEETENER_LEFT),
    inert("xylitol", "xylitol", &SWEETENER_LEFT),
    inert("sorbitol", "sorbitol", &SWEETENER_LEFT),
    // Packets hold 80 to 85 g of sugars in 100 g, whichever those are.
    Sweetener {
        name: "sweetener_packets",
        title: "table-top sweetener packets",
        highest_yield: 0.42,
        caution: &SWEETENER_PACKET,
        source: Some(&USDA),
        standing: Standing::Published,
    },
];

/// A name that stands for any of them.
pub const ANY: &str = "sweetener";

/// Names of everything that may be added: the fermentables, a sugar of one's own, the sweeteners.
pub static ADDITIONS: &[&str] = &{
    let mut names = [Fermentable::CUSTOM; FERMENTABLES.len() + 1 + SWEETENERS.len()];
    let mut at = 0;
    while at < FERMENTABLES.len() {
        names[at] = FERMENTABLES[at].name;
        at += 1;
    }
    let mut sweetener = 0;
    while sweetener < SWEETENERS.len() {
        names[at + 1 + sweetener] = SWEETENERS[sweetener].name;
        sweetener += 1;
    }
    names
};
