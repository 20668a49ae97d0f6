//! Kegging: the pressure that keeps a keg at its carbonation, the drink as it flows, the gas in its cylinder; how air is kept
//! out, how much CO2 that and the serving take, and what escapes into the room.

pub mod cylinder;
pub mod cylinder_left;
pub mod gas;
pub mod gas_budget;
pub mod liquid;
pub mod oxygen;
pub mod pressure;
pub mod purge;
pub mod push;
pub mod room;
pub mod sweep;
