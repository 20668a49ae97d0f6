//! Yeast in the bottle: how fast it works at a temperature, how far it is, how much of it to add.
//!
//! The rates are an estimate with a range. They are built on the temperature model of growth and on the trade's rules
//! (two weeks near 20 °C; after one week 60 to 90 %), and fall into the published times of sparkling wine.

use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited, symbol};
use crate::evidence::source::{CHAMPAGNE_YEAST, ROSSO, SALVADO, STULIKOVA, YEAST_PRACTICE};
use crate::number::exp;
use crate::quantity::unit::{CELSIUS, DAY, FACTOR, GRAM, LITRE, MILLION_PER_ML, PERCENT};

const LEAST_T: f64 = 3.0;
const BEST_T: f64 = 32.3;
const MOST_T: f64 = 45.4;

/// Temperatures between which yeast works, K.
pub const WORKS: (f64, f64) = (CELSIUS.to_si(LEAST_T), CELSIUS.to_si(MOST_T));

#[inline(always)]
fn cardinal(t: f64) -> f64 {
    (t - MOST_T) * (t - LEAST_T) * (t - LEAST_T)
        / ((BEST_T - LEAST_T) * ((BEST_T - LEAST_T) * (t - BEST_T) - (BEST_T - MOST_T) * (BEST_T + LEAST_T - 2.0 * t)))
}

/// The temperature (K), or the nearest at which the rate of yeast is told: it is 0 there.
#[inline(always)]
pub fn within_reach(t: f64) -> f64 {
    let warm = if t > WORKS.0 { t } else { WORKS.0 };
    if warm < WORKS.1 { warm } else { WORKS.1 }
}

/// How fast yeast works at the temperature `t` (K, within reach), over that at 20 °C.
#[inline(always)]
pub fn rate(t: f64) -> f64 {
    cardinal(CELSIUS.from_si(t)) / cardinal(20.0)
}

/// How fast yeast works.
pub static RATE: Equation = Equation {
    id: "yeast_rate",
    title: "rate of yeast over that at 20 °C",
    formula: "r = (t - 45.4)*(t - 3)^2/(3.1*t - 483.96)*421.96/7340.6",
    result: symbol("r", Measure::In(&FACTOR), "rate over that at 20 °C"),
    inputs: &[limited("t", Measure::In(&CELSIUS), "temperature", 3.0, 45.4)],
    uncertainty_percent: Some(50.0),
    uncertainty: "cardinal temperatures of S. cerevisiae: 3 (judgement, from 1.3-4.3 of the genus), 32.3 and 45.4 °C; nothing beyond them; strains differ",
    sources: &[&ROSSO, &SALVADO],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| rate(x[0]),
};

/// Share of the CO2 made a day by yeast at work at 20 °C; judgement.
const PER_DAY: f64 = 0.25;
/// Days at 20 °C before any shows; judgement.
const LAG: f64 = 1.0;
/// Bottles of one batch, and batches, differ by this factor in time: after a week it makes 60 to 90 %, as the trade has it.
const SPREAD: f64 = 1.5;
/// Alcohol above which, and cells below which, yeast takes 1.5 to 2 times as long.
pub const STRONG: f64 = 9.0;
/// Fewest cells that condition reliably, per m3.
pub const FEW: f64 = MILLION_PER_ML.to_si(0.5);
/// Cells beyond which there is a thick sediment, per m3.
pub const MANY: f64 = MILLION_PER_ML.to_si(5.0);
/// Cells that are usually added, per m3.
pub const USUAL: f64 = MILLION_PER_ML.to_si(1.0);
const SLOWER: (f64, f64) = (1.5, 2.0);

/// How fast yeast is in a drink, over usual: expected, slowest, fastest.
#[inline(always)]
pub fn paces(abv: f64, cells: f64) -> [f64; 3] {
    let slow = crate::evidence::caution::above(abv, STRONG) | crate::evidence::caution::below(cells, FEW);
    let slowed = [1.0 / (0.5 * (SLOWER.0 + SLOWER.1)), 1.0 / (SPREAD * SLOWER.1), SPREAD / SLOWER.0];
    let usual = [1.0, 1.0 / SPREAD, SPREAD];
    if slow { slowed } else { usual }
}

/// Share of the CO2 that is made (percent) after `worked` seconds' worth of work at 20 °C.
#[inline(always)]
pub fn progress(worked: f64) -> f64 {
    let days = DAY.from_si(worked) - LAG;
    let days = if days > 0.0 { days } else { 0.0 };
    100.0 * (1.0 - exp(-PER_DAY * days))
}

/// Work (seconds at 20 °C) after which a share of the CO2 (percent, below 100) is made: the inverse of [`progress`].
#[inline(always)]
pub fn work(progress: f64) -> f64 {
    DAY.to_si(LAG - crate::number::ln(1.0 - progress / 100.0) / PER_DAY)
}

const PACE: Symbol =
    limited("v", Measure::In(&FACTOR), "pace over usual: 1, or less in strong drinks and with few cells", 0.3, 1.5);
const WORKED: Symbol = limited("w", Measure::In(&DAY), "work done, in days at 20 °C", 0.0, 200.0);

/// Work done.
pub static WORK: Equation = Equation {
    id: "conditioning_work",
    title: "work of the yeast, in days at 20 °C",
    formula: "w = v*r*d",
    result: WORKED,
    inputs: &[
        PACE,
        symbol("r", Measure::In(&FACTOR), "rate over that at 20 °C"),
        symbol("d", Measure::In(&DAY), "time"),
    ],
    uncertainty_percent: None,
    uncertainty: "that of the rate",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| x[0] * x[1] * x[2],
};

/// Progress of conditioning.
pub static PROGRESS: Equation = Equation {
    id: "conditioning_progress",
    title: "share of the carbonation that is made",
    formula: "p = 100*(1 - exp(-0.25*max(0, w - 1)))",
    result: symbol("p", Measure::In(&PERCENT), "share of the CO2 to come that is made"),
    inputs: &[WORKED],
    uncertainty_percent: None,
    uncertainty: "an estimate, judgement; its range is a factor of 1.5 in time either way, so that a week at 20 °C makes 60 to 90 %",
    sources: &[&STULIKOVA],
    standing: Standing::Judgement,
    kernel: |x| progress(x[0]),
};

/// Time for a progress.
pub static WORK_NEEDED: Equation = Equation {
    id: "conditioning_work_needed",
    title: "work of the yeast for a share of the carbonation",
    formula: "w = 1 - ln(1 - p/100)/0.25",
    result: WORKED,
    inputs: &[limited("p", Measure::In(&PERCENT), "share of the CO2 to come that is made", 0.0, 99.9)],
    uncertainty_percent: None,
    uncertainty: "an estimate, judgement, as the progress",
    sources: &[&STULIKOVA],
    standing: Standing::Judgement,
    kernel: |x| work(x[0]),
};

/// Cells in a kilogram of dry yeast.
const CELLS_PER_MASS: f64 = 2.0e13;

/// Dry yeast (kg) that brings `cells` (per m3) into a volume (m3).
#[inline(always)]
pub fn dry_yeast(volume: f64, cells: f64) -> f64 {
    volume * cells / CELLS_PER_MASS
}

/// Yeast to add.
pub static DRY_YEAST: Equation = Equation {
    id: "dry_yeast",
    title: "dry yeast for conditioning",
    formula: "m = V*1000*n/20000",
    result: symbol("m", Measure::In(&GRAM), "dry yeast"),
    inputs: &[
        symbol("V", Measure::In(&LITRE), "drink that reaches packages"),
        limited("n", Measure::In(&MILLION_PER_ML), "living cells wanted", 0.1, 10.0),
    ],
    uncertainty_percent: Some(50.0),
    uncertainty: "5 g/hL bring 1 million cells per mL by the trade's practice; packets hold 0.5 to 2 times as many living cells",
    sources: &[&YEAST_PRACTICE, &CHAMPAGNE_YEAST],
    standing: Standing::Published,
    kernel: |x| dry_yeast(x[0], x[1]),
};
