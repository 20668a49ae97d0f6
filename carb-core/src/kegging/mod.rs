//! Kegging: the pressure that keeps a keg at its carbonation, the drink as it flows, the gas in its cylinder;
//! the draught line by physics and by the trade's balance, filling from the keg, blending.

pub mod blend;
pub mod cylinder;
pub mod draught;
pub mod filling;
pub mod handbook_line;
pub mod line;
pub mod liquid;
pub mod pour;
pub mod pressure;
