//! Specific gravity and extract.

use crate::evidence::caution::{GRAVITY_RANGE, Range};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited};
use crate::evidence::source::{ASBC_GRAVITY, LINCOLN};
use crate::number::sqrt;
use crate::quantity::unit::{DEGREE_PLATO, SPECIFIC_GRAVITY};

/// Gravities that the printed tables cover.
pub static TABLE: Range = Range { caution: &GRAVITY_RANGE, low: 0.990, high: 1.130 };

/// Which relation turns specific gravity into extract.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Scale {
    /// The cubic that fits the tables of the ASBC.
    Asbc,
    /// The quadratic of Lincoln.
    Lincoln,
    /// The quick form of the trade.
    Quick,
}

impl Scale {
    /// Every scale.
    pub const ALL: &'static [Scale] = &[Scale::Asbc, Scale::Lincoln, Scale::Quick];
    /// The names, in the order of [`Scale::ALL`].
    pub const NAMES: &'static [&'static str] = &["asbc", "lincoln", "quick"];

    /// Its entry in the catalogue.
    pub fn equation(self) -> &'static Equation {
        match self {
            Scale::Asbc => &PLATO,
            Scale::Lincoln => &PLATO_LINCOLN,
            Scale::Quick => &PLATO_QUICK,
        }
    }

    /// Extract, °P, of a solution of specific gravity `sg` (20/20 °C).
    #[inline(always)]
    pub fn plato(self, sg: f64) -> f64 {
        match self {
            Scale::Asbc => -616.868 + sg * (1111.14 + sg * (-630.272 + sg * 135.997)),
            Scale::Lincoln => -463.37 + sg * (668.72 - 205.35 * sg),
            Scale::Quick => 259.0 - 259.0 / sg,
        }
    }

    /// Specific gravity (20/20 °C) of a solution with `p` °P: the inverse of [`Scale::plato`].
    #[inline(always)]
    pub fn specific_gravity(self, p: f64) -> f64 {
        match self {
            // By Newton's method, whose fixed number of steps suffices anywhere the fit is monotone.
            Scale::Asbc => {
                let mut s = near_gravity(p);
                let mut step = 0;
                while step < 5 {
                    let slope = 1111.14 + s * (-2.0 * 630.272 + s * (3.0 * 135.997));
                    s -= (self.plato(s) - p) / slope;
                    step += 1;
                }
                s
            }
            // The lower root, in the form in which nothing cancels.
            Scale::Lincoln => 2.0 * (463.37 + p) / (668.72 + sqrt(668.72 * 668.72 - 4.0 * 205.35 * (463.37 + p))),
            Scale::Quick => 259.0 / (259.0 - p),
        }
    }
}

/// Specific gravity near that of a solution with `p` °P, by the trade's own inverse.
#[inline(always)]
pub fn near_gravity(p: f64) -> f64 {
    1.0 + p / (258.6 - 227.1 * p / 258.2)
}

const EXTRACT: Symbol = limited("E", Measure::In(&DEGREE_PLATO), "extract", -3.0, 31.0);
const GRAVITY: &[Symbol] = &[limited("s", Measure::In(&SPECIFIC_GRAVITY), "specific gravity 20/20 °C", 0.990, 1.130)];

/// The catalogue's entry for [`Scale::Asbc`].
pub static PLATO: Equation = Equation {
    id: "extract_from_gravity",
    title: "extract from specific gravity",
    formula: "E = -616.868 + 1111.14*s - 630.272*s^2 + 135.997*s^3",
    result: EXTRACT,
    inputs: GRAVITY,
    uncertainty_percent: Some(0.3),
    uncertainty: "scatter of the fits of the tables in circulation between 5 and 25 °P",
    sources: &[&ASBC_GRAVITY],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| Scale::Asbc.plato(x[0]),
};

/// The catalogue's entry for [`Scale::Lincoln`].
pub static PLATO_LINCOLN: Equation = Equation {
    id: "extract_lincoln",
    title: "extract from specific gravity, Lincoln",
    formula: "E = -463.37 + 668.72*s - 205.35*s^2",
    result: EXTRACT,
    inputs: GRAVITY,
    uncertainty_percent: Some(0.4),
    uncertainty: "against the cubic fit: 0.01 °P to 15 °P, 0.06 °P at 28 °P",
    sources: &[&LINCOLN],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| Scale::Lincoln.plato(x[0]),
};

/// The catalogue's entry for [`Scale::Quick`].
pub static PLATO_QUICK: Equation = Equation {
    id: "extract_quick",
    title: "extract from specific gravity, quick form",
    formula: "E = 259 - 259/s",
    result: EXTRACT,
    inputs: GRAVITY,
    uncertainty_percent: Some(1.5),
    uncertainty: "against the cubic fit: 0.05 °P at 12 °P, 0.3 °P at 28 °P",
    sources: &[],
    standing: Standing::CommonPractice,
    kernel: |x| Scale::Quick.plato(x[0]),
};

/// The catalogue's entry for [`near_gravity`].
pub static NEAR_GRAVITY: Equation = Equation {
    id: "gravity_from_extract",
    title: "specific gravity from extract",
    formula: "s = 1 + E/(258.6 - 227.1*E/258.2)",
    result: limited("s", Measure::In(&SPECIFIC_GRAVITY), "specific gravity 20/20 °C", 0.990, 1.130),
    inputs: &[EXTRACT],
    uncertainty_percent: Some(0.02),
    uncertainty: "against the inverse of the cubic fit, of which it is the start",
    sources: &[&LINCOLN],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| near_gravity(x[0]),
};
