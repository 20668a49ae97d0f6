//! Bottling: gravity readings, the priming dose, the pressure in the package.

pub mod gravity;
pub mod package;
pub mod priming;
pub mod reading;
