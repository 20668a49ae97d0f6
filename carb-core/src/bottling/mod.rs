//! Bottling: gravity readings, what is still to come, additions, the priming dose, the pressure in the package.

pub mod addition;
pub mod attenuation;
pub mod gravity;
pub mod package;
pub mod priming;
pub mod reading;
