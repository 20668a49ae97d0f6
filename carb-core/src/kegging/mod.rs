//! Kegging: the pressure that keeps a keg at its carbonation, the drink as it flows, the gas in its cylinder.

pub mod cost;
pub mod cylinder;
pub mod liquid;
pub mod pressure;
