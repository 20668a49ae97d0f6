//! Specific gravity and extract.

use crate::evidence::caution::{GRAVITY_RANGE, Range};
use crate::evidence::equation::{Equation, Measure, Standing, limited};
use crate::evidence::source::ASBC_GRAVITY;
use crate::quantity::unit::{DEGREE_PLATO, SPECIFIC_GRAVITY};

/// Gravities that the printed tables cover.
pub static TABLE: Range = Range { caution: &GRAVITY_RANGE, low: 0.990, high: 1.130 };

/// Extract, °P, of a solution of specific gravity `sg` (20/20 °C).
#[inline(always)]
pub fn plato(sg: f64) -> f64 {
    -616.868 + sg * (1111.14 + sg * (-630.272 + sg * 135.997))
}

/// The catalogue's entry for [`plato`].
pub static PLATO: Equation = Equation {
    id: "extract_from_gravity",
    title: "extract from specific gravity",
    formula: "E = -616.868 + 1111.14*s - 630.272*s^2 + 135.997*s^3",
    result: limited("E", Measure::In(&DEGREE_PLATO), "extract", -3.0, 31.0),
    inputs: &[limited("s", Measure::In(&SPECIFIC_GRAVITY), "specific gravity 20/20 °C", 0.990, 1.130)],
    uncertainty_percent: Some(0.3),
    uncertainty: "scatter of the fits of the tables in circulation between 5 and 25 °P",
    sources: &[&ASBC_GRAVITY],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| plato(x[0]),
};

/// Specific gravity (20/20 °C) of a solution with `p` °P: the root of [`plato`], by Newton's method, whose
/// fixed number of steps suffices anywhere the fit is monotone.
#[inline(always)]
pub fn specific_gravity(p: f64) -> f64 {
    let mut s = 1.0 + p / (258.6 - 227.1 * p / 258.2);
    let mut step = 0;
    while step < 5 {
        let slope = 1111.14 + s * (-2.0 * 630.272 + s * (3.0 * 135.997));
        s -= (plato(s) - p) / slope;
        step += 1;
    }
    s
}
