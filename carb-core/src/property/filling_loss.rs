//! What a drink loses of its CO2 on the way from the keg into its package or glass.

use crate::evidence::Source;
use crate::evidence::equation::{Equation, Measure, Standing, limited};
use crate::evidence::source::{COUNTER_PRESSURE, FILLER_MAKER, LIGER_BELAIR_LAGER};
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, PERCENT, VOLUMES};

/// CO2 (kg/m3) to have before filling, for `wanted` after it, where `lost` (kg/m3) and then `share` (percent of what there
/// was before) are lost.
#[inline(always)]
pub fn before(wanted: f64, lost: f64, share: f64) -> f64 {
    (wanted + lost) / (1.0 - share / 100.0)
}

/// The catalogue's entry for [`before`].
pub static BEFORE: Equation = Equation {
    id: "filling_carbonation",
    title: "CO2 to have before filling",
    formula: "F = (C + a)/(1 - s/100)",
    result: limited("F", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in the keg", 0.0, 30.0),
    inputs: &[
        limited("C", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 wanted in the package", 0.0, 15.0),
        limited("a", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 lost in filling", 0.0, 2.0),
        limited("s", Measure::In(&PERCENT), "share of the CO2 lost in filling", 0.0, 30.0),
    ],
    uncertainty_percent: None,
    uncertainty: "arithmetic; the loss itself has its range",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| before(x[0], x[1], x[2]),
};

/// A way to fill.
#[derive(Clone, Copy, Debug)]
pub struct Filling {
    /// Its name in every face.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// CO2 lost, volumes: expected, least and most.
    pub volumes: [f64; 3],
    /// CO2 lost, percent: expected, least and most.
    pub percent: [f64; 3],
    /// How well the expected loss is known.
    pub standing: Standing,
    /// Where the range is from.
    pub range: &'static str,
    /// Where the expected loss is from.
    pub source: Option<&'static Source>,
}

impl Filling {
    /// The loss, kg/m3 and percent: expected, least and most.
    pub fn losses(&self) -> [[f64; 2]; 3] {
        let at = |i: usize| {
            let of = |list: &[f64; 3]| list.get(i).copied().unwrap_or_default();
            [VOLUMES.to_si(of(&self.volumes)), of(&self.percent)]
        };
        [at(0), at(1), at(2)]
    }
}

/// One measurement says little of the next filler.
const HALF_TO_TWICE: &str = "half to twice the expected loss; judgement";
const NONE: [f64; 3] = [0.0; 3];

/// Filled from the tap through a tube.
pub const TAP_TUBE: Filling = Filling {
    name: "tap_tube",
    title: "through a tube from the tap, as growlers are",
    volumes: NONE,
    percent: [15.0, 10.0, 20.0],
    standing: Standing::CommonPractice,
    range: "common practice, no source",
    source: None,
};

/// The ways to fill, the gentlest first.
pub static FILLINGS: &[Filling] = &[
    Filling {
        name: "automatic",
        title: "automatic counter-pressure filler",
        volumes: [0.05, 0.025, 0.1],
        percent: NONE,
        standing: Standing::Published,
        range: HALF_TO_TWICE,
        source: Some(&COUNTER_PRESSURE),
    },
    Filling {
        name: "counter_pressure_line",
        title: "small line from the keg, with counter-pressure",
        volumes: [0.125, 0.10, 0.15],
        percent: NONE,
        standing: Standing::Published,
        range: "as published; the expected loss is its middle",
        source: Some(&FILLER_MAKER),
    },
    Filling {
        name: "hand_counter_pressure",
        title: "counter-pressure filler worked by hand",
        volumes: [0.25, 0.125, 0.5],
        percent: NONE,
        standing: Standing::Published,
        range: HALF_TO_TWICE,
        source: Some(&COUNTER_PRESSURE),
    },
    TAP_TUBE,
    Filling {
        name: "tilted_glass",
        title: "poured gently into a tilted glass (5.49 g/L became 5.19)",
        volumes: NONE,
        percent: [100.0 * 0.30 / 5.49, 50.0 * 0.30 / 5.49, 200.0 * 0.30 / 5.49],
        standing: Standing::Published,
        range: HALF_TO_TWICE,
        source: Some(&LIGER_BELAIR_LAGER),
    },
];

/// Names of the ways to fill, in their order.
pub static NAMES: &[&str] = &{
    let mut names = [""; FILLINGS.len()];
    let mut at = 0;
    while at < FILLINGS.len() {
        names[at] = FILLINGS[at].name;
        at += 1;
    }
    names
};
