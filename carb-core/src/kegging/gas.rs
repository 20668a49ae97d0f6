//! CO2 gas in a space: how dense it is, and how much of it the space takes.

use crate::error::Error;
use crate::evidence::Steps;
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::property::co2_gas;
use crate::quantity::field::HIGHEST_PRESSURE;
use crate::quantity::unit::{GRAM, LITRE};
use crate::quantity::{Key, Name};

/// CO2 that fills a space, once or several times.
pub static FILL: Equation = Equation {
    id: "co2_in_space",
    title: "CO2 that fills a space",
    formula: "m = n*V*d",
    result: symbol("m", Measure::In(&GRAM), "CO2 in it"),
    inputs: &[
        limited("n", Measure::Plain(""), "how many times it is filled", 0.0, 1000.0),
        limited("V", Measure::In(&LITRE), "the space", 0.1, 1000.0),
        limited("d", Measure::Plain("kg/m3"), "density of the gas", 0.1, 60.0),
    ],
    uncertainty_percent: None,
    uncertainty: "arithmetic",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] * x[1] * x[2],
};

/// Density of CO2 gas, kg/m3, at the absolute pressure `p` (Pa) and temperature `t` (K), and the status of its range.
#[inline(always)]
pub(crate) fn density(p: f64, t: f64, steps: &mut impl Steps) -> (f64, i32) {
    let b = steps.step(&co2_gas::SECOND_VIRIAL, &[t], co2_gas::second_virial(t));
    let d = steps.step(&co2_gas::DENSITY, &[p, t, b], co2_gas::density(p, t, b));
    (d, steps.within(&co2_gas::CHECKED, p))
}

/// Mass, kg, of gas of the density `d` that fills `volume` (m3) `times`.
#[inline(always)]
pub(crate) fn fill(times: f64, volume: f64, d: f64, steps: &mut impl Steps) -> f64 {
    steps.step(&FILL, &[times, volume, d], times * volume * d)
}

/// The error of a gauge pressure that lies below none, or with the air outside above what is answered.
pub(crate) fn beyond(key: Key, value: f64, ambient: f64) -> Error {
    Error::OutOfRange { parameter: Name::first(key), value, low: 0.0, high: HIGHEST_PRESSURE - ambient }
}
