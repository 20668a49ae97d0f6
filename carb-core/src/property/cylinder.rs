//! Cylinders and cartridges of CO2, and how far they may be filled.

use crate::evidence::Source;
use crate::evidence::equation::Standing;
use crate::evidence::source::{ADR_P200, CFR_CYLINDER};
use crate::quantity::unit::{BAR, GRAM, POUND, PSI};

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

/// Names of the sizes, in their order.
pub static NAMES: &[&str] = &{
    let mut names = [""; CYLINDERS.len()];
    let mut at = 0;
    while at < CYLINDERS.len() {
        names[at] = CYLINDERS[at].name;
        at += 1;
    }
    names
};

/// How far cylinders of CO2 may be filled.
#[derive(Debug)]
pub struct FillingDensity {
    /// Its name.
    pub name: &'static str,
    /// Which cylinders.
    pub title: &'static str,
    /// CO2 to the water that they would hold, kg/kg.
    pub ratio: f64,
    /// Pressure by which they are classed, Pa, gauge.
    pub pressure: f64,
    /// Which pressure that is.
    pub pressure_is: &'static str,
    /// Where it is laid down.
    pub source: &'static Source,
    /// How well it is known.
    pub standing: Standing,
}

const fn service(name: &'static str, title: &'static str, ratio: f64, psi: f64) -> FillingDensity {
    let (source, standing) = (&CFR_CYLINDER, Standing::Published);
    FillingDensity { name, title, ratio, pressure: PSI.to_si(psi), pressure_is: "service", source, standing }
}
const fn test(name: &'static str, title: &'static str, ratio: f64, bar: f64) -> FillingDensity {
    let (source, standing) = (&ADR_P200, Standing::ConfirmedFromMemory);
    FillingDensity { name, title, ratio, pressure: BAR.to_si(bar), pressure_is: "test", source, standing }
}

/// How far cylinders may be filled, by country and strength.
pub static FILLING_DENSITIES: &[FillingDensity] = &[
    service("us_1800_psi", "DOT-3A, 3AA and 3AL cylinders of 1800 psi service pressure", 0.68, 1800.0),
    service("us_2000_psi", "DOT-3A and like cylinders of 2000 psi service pressure", 0.703, 2000.0),
    service("us_2265_psi", "DOT-3A and like cylinders of 2265 psi service pressure", 0.732, 2265.0),
    service("us_2400_psi", "DOT-3A and like cylinders of 2400 psi service pressure", 0.745, 2400.0),
    test("un_190_bar", "UN 1013 cylinders tested at 190 bar", 0.68, 190.0),
    test("un_250_bar", "UN 1013 cylinders tested at 250 bar", 0.76, 250.0),
];

/// The highest filling ratio of [`FILLING_DENSITIES`].
pub const MOST_FILLING: f64 = 0.76;
