//! What is usually marked on vessels that hold a drink under pressure. No vessel is judged by it: the marking on the
//! vessel itself, its relief valve and local code decide.

use crate::evidence::equation::Standing;
use crate::quantity::unit::{BAR, PSI};

/// A kind of vessel, or of its relief device.
#[derive(Debug)]
pub struct KegRating {
    /// Its name in every face.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// The least that is usual, Pa, gauge.
    pub low: f64,
    /// The most that is usual, Pa, gauge.
    pub high: f64,
    /// How well it is known.
    pub standing: Standing,
}

const fn rating(name: &'static str, title: &'static str, low: f64, high: f64) -> KegRating {
    KegRating { name, title, low, high, standing: Standing::CommonPractice }
}

/// The strongest usual marking, Pa, gauge.
pub const STRONGEST: f64 = PSI.to_si(130.0);

/// Usual markings, the strongest first.
pub static KEG_RATINGS: &[KegRating] = &[
    rating("soda_keg", "stainless soda keg of a beverage maker, as marked", STRONGEST, STRONGEST),
    rating("soda_keg_relief", "relief valve in the lid of a soda keg", PSI.to_si(100.0), PSI.to_si(130.0)),
    rating("soda_keg_copy", "stainless soda keg of another maker", PSI.to_si(60.0), PSI.to_si(100.0)),
    rating("brewery_keg", "brewery keg with a valve in its neck, working pressure", PSI.to_si(60.0), PSI.to_si(60.0)),
    rating("regulator_relief", "relief valve on the low side of a regulator", PSI.to_si(50.0), PSI.to_si(65.0)),
    rating("low_pressure_lid", "coloured low-pressure relief valve in a lid", PSI.to_si(30.0), PSI.to_si(65.0)),
    rating("pet_vessel", "PET fermenter or keg, with a relief valve", PSI.to_si(30.0), PSI.to_si(35.0)),
    rating("brewery_tank", "brewery tank", PSI.to_si(15.0), PSI.to_si(30.0)),
    rating("growler", "growler, glass jug, bucket or carboy: no pressure vessel", BAR.to_si(0.0), BAR.to_si(0.0)),
];
