//! The air outside the vessel. Gauge pressure means nothing without it.

use crate::error::Error;
use crate::evidence::Steps;
use crate::property::atmosphere;
use crate::property::constant::STANDARD_ATMOSPHERE;
use crate::quantity::{AmbientPressure, Key, Length};

/// Where the pressure of the air outside is known from.
#[derive(Clone, Copy, Debug, PartialEq)]
#[must_use]
pub enum Ambient {
    /// Measured where the vessel stands.
    Measured(AmbientPressure),
    /// From the altitude, by the standard atmosphere.
    Altitude(Length),
    /// From the altitude and a weather report's pressure, which is reduced to sea level.
    Weather {
        /// The pressure of the report.
        sea_level: AmbientPressure,
        /// The altitude.
        altitude: Length,
    },
}

impl Ambient {
    /// Sea level in the standard atmosphere. Named, never a default.
    pub const STANDARD: Self = Self::Measured(AmbientPressure::STANDARD);

    /// The pressure of the air outside, Pa.
    pub fn pressure(self, steps: &mut impl Steps) -> f64 {
        let mut station = |sea_level: f64, altitude: Length| {
            let z = altitude.si();
            steps.step(&atmosphere::STATION_PRESSURE, &[sea_level, z], atmosphere::station_pressure(sea_level, z))
        };
        match self {
            Ambient::Measured(pressure) => pressure.si(),
            Ambient::Altitude(altitude) => station(STANDARD_ATMOSPHERE, altitude),
            Ambient::Weather { sea_level, altitude } => station(sea_level.si(), altitude),
        }
    }

    /// Checks the limits of what was given.
    ///
    /// # Errors
    /// Where a number lies outside them.
    pub fn check(self) -> Result<(), Error> {
        match self {
            Ambient::Measured(pressure) => super::kernel::check(Key::Ambient, pressure.si()),
            Ambient::Altitude(altitude) => super::kernel::check(Key::Altitude, altitude.si()),
            Ambient::Weather { sea_level, altitude } => {
                super::kernel::check(Key::SeaLevel, sea_level.si())?;
                super::kernel::check(Key::Altitude, altitude.si())
            }
        }
    }
}

/// What to say where it is missing.
pub const ADVICE: &str = "a gauge shows the difference from the air outside; give altitude_m (0 for sea level), or ambient_kpa as measured, or sea_level_kpa of a weather report together with altitude_m";

/// The error for a missing ambient pressure.
pub const fn missing() -> Error {
    Error::Missing { parameter: Key::Altitude, advice: ADVICE }
}

/// The error for a sea-level pressure without the altitude.
pub const fn missing_altitude() -> Error {
    Error::Missing {
        parameter: Key::Altitude,
        advice: "sea_level_kpa is reduced to the sea: give altitude_m too, from which the pressure at the station follows",
    }
}
