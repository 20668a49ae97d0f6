//! The C face of `carb-core`: `include/carb.h` and `libcarb`.
//!
//! A face converts, calls and reports: there is no arithmetic and no constant of the trade here. `generated` holds the
//! structs and functions of the header, written from the tables of the core; behind them stands one generic routine for
//! a single answer and one for arrays ([`call`]). Everything that C can get wrong is met in one place ([`boundary`]).
#![deny(unsafe_op_in_unsafe_fn)]
#![allow(non_camel_case_types, clippy::missing_safety_doc, reason = "the names and the contract are those of carb.h")]

pub mod bound;
pub mod boundary;
pub mod call;
pub mod error;
#[rustfmt::skip]
pub mod generated;
pub mod inputs;
pub mod json;
pub mod rows;

pub use bound::{carb_bind, carb_bound, carb_bound_call, carb_bound_free};
pub use call::{carb_convert, carb_series};
pub use error::{carb_error, carb_status};
pub use generated::*;
pub use inputs::{carb_inputs_choose, carb_inputs_init, carb_inputs_set, carb_is_first_name};
pub use json::{carb_bottling_page, carb_crosscheck_page, carb_json, carb_kegging_page, carb_plan_page};

use core::ffi::{CStr, c_char};

/// The version of the binary interface; it is in the name of the shared library, libcarb.so.0.
pub const CARB_ABI_VERSION: u32 = 0;

/// A number that is not given; `-DBL_MAX` in the header.
pub const NOT_GIVEN: f64 = f64::MIN;

const VERSION: &CStr = match CStr::from_bytes_with_nul(concat!(env!("CARGO_PKG_VERSION"), "\0").as_bytes()) {
    Ok(text) => text,
    Err(_) => c"",
};

/// The version of the library, such as "1.2.3"; a constant text.
#[unsafe(no_mangle)]
pub extern "C" fn carb_version() -> *const c_char {
    VERSION.as_ptr()
}

/// The CARB_ABI_VERSION that the library was built with; a program may compare it with that of its header.
#[unsafe(no_mangle)]
pub extern "C" fn carb_abi_version() -> u32 {
    CARB_ABI_VERSION
}
