//! The air outside: standard pressure by altitude.

use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::ISO_2533;
use crate::number::pow;
use crate::quantity::unit::{METRE, PASCAL};

const EARTH_RADIUS: f64 = 6_356_766.0;

/// Share of the sea-level pressure that is left at the geometric altitude `z` (m).
#[inline(always)]
pub fn pressure_ratio(z: f64) -> f64 {
    let geopotential = EARTH_RADIUS * z / (EARTH_RADIUS + z);
    pow(1.0 - 0.0065 * geopotential / 288.15, 5.25588)
}

/// Pressure of the air, Pa, at the geometric altitude `z` (m), when it is `sea_level` (Pa) at the sea.
#[inline(always)]
pub fn station_pressure(sea_level: f64, z: f64) -> f64 {
    sea_level * pressure_ratio(z)
}

/// The catalogue's entry for [`station_pressure`].
pub static STATION_PRESSURE: Equation = Equation {
    id: "station_pressure",
    title: "air pressure at altitude",
    formula: "a = p0*(1 - 0.0065*(6356766*z/(6356766 + z))/288.15)^5.25588",
    result: symbol("a", Measure::In(&PASCAL), "pressure of the air outside, absolute"),
    inputs: &[
        symbol("p0", Measure::In(&PASCAL), "pressure at sea level; 101325 Pa in the standard atmosphere"),
        limited("z", Measure::In(&METRE), "geometric altitude", -2000.0, 11_000.0),
    ],
    uncertainty_percent: Some(4.0),
    uncertainty: "the formula is exact for the standard atmosphere; weather moves the real one by about 2 kPa either way",
    sources: &[&ISO_2533],
    standing: Standing::Published,
    kernel: |x| station_pressure(x[0], x[1]),
};
