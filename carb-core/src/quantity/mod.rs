//! What can be measured: typed quantities, the one table of units, the one vocabulary of names.
//!
//! Gauge, absolute and ambient pressure are different types; only [`GaugePressure::to_absolute`] and
//! [`AbsolutePressure::to_gauge`] cross between them, and both ask for the air pressure outside.

pub mod field;
pub mod name;
pub mod typed;
pub mod unit;

pub use field::{Field, Key};
pub use name::{Name, ShortText};
pub use typed::{
    AbsolutePressure, AmbientPressure, Bore, Carbonation, Concentration, Density, Diffusivity, Flow, GaugePressure,
    Length, Mass, MassFlow, Multiplier, Percent, Plato, PressureDifference, Rate, RoomVolume, ShortTime,
    SpecificGravity, Temperature, TemperatureDifference, Time, TraceConcentration, Velocity, Viscosity, Volume,
    VolumeFraction,
};
pub use unit::{Dimension, Unit};
