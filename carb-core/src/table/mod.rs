//! The tables that every face walks: functions, and equations. (Fields and units are in [`crate::quantity`].)

pub mod catalogue;
pub mod functions;

pub use catalogue::CATALOGUE;
pub use functions::FUNCTIONS;
