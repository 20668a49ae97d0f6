//! Kegging: the pressure that keeps a keg at its carbonation.

pub mod pressure;
