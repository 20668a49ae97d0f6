//! The tables that every face walks: functions, tables of rows, and equations. (Fields and units are in [`crate::quantity`].)

pub mod bottle_tables;
pub mod catalogue;
pub mod functions;
pub mod gravities;
pub mod inputs;
pub mod packages;
pub mod primings;
pub mod schedule_tables;
pub mod schedules;
pub mod tables;

pub use catalogue::CATALOGUE;
pub use functions::FUNCTIONS;
pub use tables::TABLES;
