//! Kegging: the pressure that keeps a keg at its carbonation, the drink as it flows, the gas in its cylinder,
//! and how long carbonating takes: rates, schedules, bursts, and rates from readings.

pub mod burst;
pub mod cylinder;
pub mod fit;
pub mod liquid;
pub mod pressure;
pub mod schedule;
pub mod uptake;
