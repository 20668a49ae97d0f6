//! The mathematics of carbonating and packaging beer, cider, mead and soft drinks: one audited, unit-safe
//! implementation, each equation with its cited source.
#![cfg_attr(not(feature = "std"), no_std)]
#![forbid(unsafe_code)]

#[cfg(feature = "alloc")]
extern crate alloc;

pub mod balance;
pub mod basis;
pub mod bottling;
#[cfg(feature = "alloc")]
pub mod crosscheck;
pub mod error;
pub mod evidence;
pub mod kegging;
pub mod number;
#[cfg(feature = "alloc")]
pub mod plan;
pub mod property;
pub mod quantity;
pub mod table;
pub mod uncertainty;

pub use error::Error;
