//! Kegging: the pressure that keeps a keg at its carbonation, under CO2 or a blend, through a stone, and from its own
//! fermentation; the keg that warms; the drink as it flows, the gas in its cylinder.

pub mod blend;
pub mod closed_fermenter;
pub mod cost;
pub mod cylinder;
pub mod draught;
pub mod filling;
pub mod handbook_line;
pub mod keg_temperature;
pub mod line;
pub mod liquid;
pub mod mixed_gas;
pub mod pour;
pub mod pressure;
mod rating;
pub mod spunding;
pub mod stone;
pub mod warmed_keg;
