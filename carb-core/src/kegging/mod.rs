//! Kegging: the pressure that keeps a keg at its carbonation, under CO2 or a blend, through a stone, and from its own
//! fermentation; how long that takes; how air is kept out, how much CO2 it all takes, and what escapes into the room; the line
//! to the glass; the keg that warms; and what it costs beside bottles.
//! Kegging: the pressure that keeps a keg at its carbonation, the drink as it flows, the gas in its cylinder;
//! the draught line by physics and by the trade's balance, filling from the keg, blending.

pub mod blend;
pub mod burst;
pub mod closed_fermenter;
pub mod cost;
pub mod cylinder;
pub mod cylinder_left;
pub mod draught;
pub mod filling;
pub mod fit;
pub mod gas;
pub mod gas_budget;
pub mod handbook_line;
pub mod keg_temperature;
pub mod line;
pub mod liquid;
pub mod mixed_gas;
pub mod oxygen;
pub mod pour;
pub mod pressure;
pub mod purge;
pub mod push;
pub(crate) mod rating;
pub mod room;
pub mod schedule;
pub mod spunding;
pub mod stone;
pub mod sweep;
pub mod uptake;
pub mod warmed_keg;
