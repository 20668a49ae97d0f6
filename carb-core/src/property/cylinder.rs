//! Cylinders and cartridges of CO2.

use crate::evidence::Source;
use crate::evidence::equation::Standing;
use crate::evidence::source::CFR_CYLINDER;
use crate::quantity::unit::{GRAM, POUND};

/// A cylinder of CO2.
#[derive(Debug)]
pub struct Cylinder {
    /// Its name in every face.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// CO2 in a full one, kg.
    pub charge: f64,
    /// CO2 to the water it would hold, kg/L: how far it may be filled. `None` for cartridges.
    pub filling_ratio: Option<f64>,
    /// Where the filling ratio is laid down.
    pub source: Option<&'static Source>,
    /// How well it is known.
    pub standing: Standing,
}

/// A US cylinder, filled to 68 % of its water capacity.
const fn us(name: &'static str, title: &'static str, pounds: f64) -> Cylinder {
    Cylinder {
        name,
        title,
        charge: POUND.to_si(pounds),
        filling_ratio: Some(0.68),
        source: Some(&CFR_CYLINDER),
        standing: Standing::Published,
    }
}
/// A European cylinder, filled to 0.75 kg/L by the trade.
const fn european(name: &'static str, title: &'static str, kilograms: f64) -> Cylinder {
    Cylinder {
        name,
        title,
        charge: kilograms,
        filling_ratio: Some(0.75),
        source: None,
        standing: Standing::CommonPractice,
    }
}
const fn cartridge(name: &'static str, title: &'static str, grams: f64) -> Cylinder {
    Cylinder {
        name,
        title,
        charge: GRAM.to_si(grams),
        filling_ratio: None,
        source: None,
        standing: Standing::CommonPractice,
    }
}

impl Cylinder {
    /// Water capacity, m3, where the filling ratio is known.
    pub fn water_capacity(&self) -> Option<f64> {
        self.filling_ratio.map(|ratio| self.charge / (ratio * 1000.0))
    }
}

/// The sizes, the smallest first.
pub static CYLINDERS: &[Cylinder] = &[
    cartridge("cartridge_8_g", "cartridge of 8 g", 8.0),
    cartridge("cartridge_12_g", "cartridge of 12 g", 12.0),
    cartridge("cartridge_16_g", "cartridge of 16 g", 16.0),
    cartridge("cartridge_74_g", "cartridge of 74 g", 74.0),
    european("cylinder_2_kg", "2 kg cylinder", 2.0),
    us("cylinder_5_lb", "5 lb cylinder", 5.0),
    us("cylinder_10_lb", "10 lb cylinder", 10.0),
    european("cylinder_6_kg", "6 kg cylinder", 6.0),
    us("cylinder_20_lb", "20 lb cylinder", 20.0),
    european("cylinder_10_kg", "10 kg cylinder", 10.0),
];
