//! Kegs: the sizes that are sold. Pressure is not among them: read the rating that is marked on the keg.

use crate::evidence::equation::Standing;
use crate::quantity::unit::{LITRE, US_GALLON};

/// A size of keg.
#[derive(Debug)]
pub struct Keg {
    /// Its name in every face.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// Nominal content, m3.
    pub content: f64,
    /// How well it is known.
    pub standing: Standing,
}

const fn keg(name: &'static str, title: &'static str, content: f64) -> Keg {
    Keg { name, title, content, standing: Standing::CommonPractice }
}

/// The sizes, the smallest first.
pub static KEGS: &[Keg] = &[
    keg("soda_2_5_gal", "soda keg of 2.5 US gallons", US_GALLON.to_si(2.5)),
    keg("soda_3_gal", "soda keg of 3 US gallons", US_GALLON.to_si(3.0)),
    keg("soda_5_gal", "soda keg of 5 US gallons (19 L)", US_GALLON.to_si(5.0)),
    keg("sixth_barrel", "sixth of a US barrel", US_GALLON.to_si(31.0 / 6.0)),
    keg("metric_20_l", "20 L keg", LITRE.to_si(20.0)),
    keg("quarter_barrel", "quarter of a US barrel", US_GALLON.to_si(31.0 / 4.0)),
    keg("metric_30_l", "30 L keg", LITRE.to_si(30.0)),
    keg("metric_50_l", "50 L keg", LITRE.to_si(50.0)),
    keg("half_barrel", "half of a US barrel", US_GALLON.to_si(31.0 / 2.0)),
];

/// What a soda keg of 5 US gallons holds to the brim, m3; common practice.
pub const SODA_KEG: f64 = LITRE.to_si(19.6);
/// Gas over the drink in a full soda keg, percent of the drink: 19.6 L to the brim over 18.93 L of drink.
pub const KEG_HEADSPACE: f64 = 3.5;

/// How air is kept out of a keg.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum PurgeMethod {
    /// It is not.
    #[default]
    Nothing,
    /// The gas over the drink is vented.
    Headspace,
    /// The empty keg is vented before it is filled.
    Empty,
    /// CO2 pushes sanitiser out of the full keg.
    Push,
}

impl PurgeMethod {
    /// Every way.
    pub const ALL: &'static [PurgeMethod] =
        &[PurgeMethod::Nothing, PurgeMethod::Headspace, PurgeMethod::Empty, PurgeMethod::Push];
    /// The names, in the order of [`PurgeMethod::ALL`].
    pub const NAMES: &'static [&'static str] = &["none", "headspace", "empty", "push"];
}
