//! Tubing of draught lines: bore, and the resistance that the trade's handbooks give it.
//!
//! The handbooks' figures belong to their flow, and do not agree with each other: one bore has three to four times the
//! resistance in vinyl that it has in smooth barrier tubing, which no friction explains. They are kept as they are told.

use crate::evidence::Source;
use crate::evidence::equation::Standing;
use crate::evidence::source::{DESIGNING, DISPENSE_HANDBOOK, DRAUGHT_MANUAL, GERMAN_RULE, VENDOR_TUBING};
use crate::quantity::unit::{
    BAR_PER_METRE, BORE_INCH, BORE_MILLIMETRE, LITRE_PER_MINUTE, PSI_PER_FOOT, US_FLUID_OUNCE_PER_SECOND, Unit,
};

/// The flow to which the American handbooks balance a line, m3/s: 2 US fluid ounces in a second.
pub const TRADE_FLOW: f64 = US_FLUID_OUNCE_PER_SECOND.to_si(2.0);
/// The flow of the German rule, m3/s.
pub const GERMAN_FLOW: f64 = LITRE_PER_MINUTE.to_si(3.0);

/// A tube.
#[derive(Clone, Copy, Debug)]
pub struct Tube {
    /// Its name in every face.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// Inner diameter, m.
    pub bore: f64,
    /// Resistance by the handbook, in the unit in which it is told.
    pub told: f64,
    /// That unit.
    pub unit: &'static Unit,
    /// The least and the most that trade texts give, in that unit.
    pub range: (f64, f64),
    /// The flow that it belongs to, m3/s.
    pub flow: f64,
    /// How well it is known that the source says so.
    pub standing: Standing,
    /// Where the figure is from.
    pub source: &'static Source,
    /// Where the ends of the range are from, if from elsewhere.
    pub range_source: Option<&'static Source>,
}

impl Tube {
    /// Resistance by the handbook, Pa/m.
    pub fn resistance(&self) -> f64 {
        self.unit.to_si(self.told)
    }

    const fn american(name: &'static str, title: &'static str, inches: f64, told: f64, range: (f64, f64)) -> Self {
        Self {
            name,
            title,
            bore: BORE_INCH.to_si(inches),
            told,
            unit: &PSI_PER_FOOT,
            range,
            flow: TRADE_FLOW,
            standing: Standing::Published,
            source: &DRAUGHT_MANUAL,
            range_source: None,
        }
    }

    const fn german(name: &'static str, title: &'static str, millimetres: f64, told: f64) -> Self {
        Self {
            name,
            title,
            bore: BORE_MILLIMETRE.to_si(millimetres),
            told,
            unit: &BAR_PER_METRE,
            range: (told, told),
            flow: GERMAN_FLOW,
            standing: Standing::Published,
            source: &GERMAN_RULE,
            range_source: None,
        }
    }

    const fn from(mut self, source: &'static Source) -> Self {
        self.source = source;
        self
    }

    const fn remembered(mut self) -> Self {
        self.standing = Standing::FromMemory;
        self
    }

    const fn spread(mut self, source: &'static Source) -> Self {
        self.range_source = Some(source);
        self
    }
}

/// The tubes, by material, the narrowest first. The bore of steel tubing is its outer diameter less two walls of 0.035 in.
pub static TUBES: &[Tube] = &[
    Tube::american("vinyl_3_16_in", "vinyl, 3/16 in inside", 3.0 / 16.0, 3.0, (1.8, 3.0)).spread(&VENDOR_TUBING),
    Tube::american("vinyl_1_4_in", "vinyl, 1/4 in inside", 0.25, 0.85, (0.4, 0.85))
        .from(&DESIGNING)
        .spread(&VENDOR_TUBING),
    Tube::american("vinyl_5_16_in", "vinyl, 5/16 in inside", 5.0 / 16.0, 0.40, (0.1, 0.40))
        .remembered()
        .spread(&VENDOR_TUBING),
    Tube::american("vinyl_3_8_in", "vinyl, 3/8 in inside", 0.375, 0.20, (0.07, 0.20))
        .remembered()
        .spread(&DISPENSE_HANDBOOK),
    Tube::american("vinyl_1_2_in", "vinyl, 1/2 in inside", 0.5, 0.025, (0.025, 0.03)).spread(&VENDOR_TUBING),
    Tube::american("barrier_3_16_in", "polyethylene or barrier tubing, 3/16 in inside", 3.0 / 16.0, 2.2, (2.0, 2.2)),
    Tube::american("barrier_1_4_in", "barrier tubing, 1/4 in inside", 0.25, 0.30, (0.30, 0.30)).remembered(),
    Tube::american("barrier_5_16_in", "barrier tubing, 5/16 in inside", 5.0 / 16.0, 0.10, (0.10, 0.10))
        .from(&DESIGNING),
    Tube::american("barrier_3_8_in", "barrier tubing, 3/8 in inside", 0.375, 0.06, (0.06, 0.06)).remembered(),
    Tube::american("steel_1_4_in_od", "stainless steel, 1/4 in outside", 0.25 - 0.07, 1.20, (0.4, 1.20))
        .remembered()
        .spread(&VENDOR_TUBING),
    Tube::american("steel_5_16_in_od", "stainless steel, 5/16 in outside", 0.3125 - 0.07, 0.30, (0.1, 0.30))
        .remembered()
        .spread(&VENDOR_TUBING),
    Tube::american("steel_3_8_in_od", "stainless steel, 3/8 in outside", 0.375 - 0.07, 0.12, (0.09, 0.15))
        .remembered()
        .spread(&VENDOR_TUBING),
    Tube::german("metric_7_mm", "7 mm inside", 7.0, 0.05),
    Tube::german("metric_10_mm", "10 mm inside", 10.0, 0.01),
];

/// Names of the tubes, in their order.
pub static NAMES: &[&str] = &{
    let mut names = [""; TUBES.len()];
    let mut at = 0;
    while at < TUBES.len() {
        names[at] = TUBES[at].name;
        at += 1;
    }
    names
};
