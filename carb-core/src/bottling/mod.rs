//! Bottling: gravity readings, what is still to come, additions, priming by sugar and by wort, syrup, the pressure in the
//! package, its glass, conditioning, and which bottles to fill.

pub mod addition;
pub mod attenuation;
pub mod before;
pub mod conditioning;
pub mod doses;
#[cfg(feature = "alloc")]
pub mod fill;
pub mod glass;
pub mod gravity;
pub mod package;
pub mod parts;
pub mod priming;
pub mod reading;
pub mod syrup;
pub mod wort;
