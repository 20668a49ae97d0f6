//! The tables that every face walks: functions, tables of rows, and equations. (Fields and units are in [`crate::quantity`].)

pub mod catalogue;
pub mod functions;
pub mod tables;

pub use catalogue::CATALOGUE;
pub use functions::FUNCTIONS;
pub use tables::TABLES;
