//! The tables that every face walks: functions, tables of rows, and equations. (Fields and units are in [`crate::quantity`].)

pub mod bottle_tables;
pub mod catalogue;
pub mod costs;
#[cfg(feature = "alloc")]
pub mod crosscheck_tables;
pub mod fillings;
pub mod functions;
pub mod gas_tables;
pub mod gases;
pub mod gravities;
pub mod inputs;
pub mod keg_pressures;
pub mod keg_tables;
pub mod line_tables;
pub mod lines;
pub mod packages;
pub mod primings;
pub mod purges;
pub mod schedule_tables;
pub mod schedules;
pub mod tables;

pub use catalogue::CATALOGUE;
pub use functions::FUNCTIONS;
pub use tables::TABLES;
