//! A function kept with its request, for programs that ask it again and again.

use crate::boundary::{self, guard};
use crate::call::wanted;
use crate::error::{Fault, carb_error, carb_status};
use crate::generated::carb_inputs;
use crate::inputs;
use carb_core::basis::{Bound, Request};
use carb_core::quantity::field::COUNT;
use carb_core::table::functions;
use core::ffi::c_char;

/// A function with its inputs, made by carb_bind and freed by carb_bound_free. It does not change, so that any number of
/// threads may call it at once.
#[allow(missing_debug_implementations, reason = "C never sees into it")]
pub struct carb_bound {
    bound: Bound,
}

/// Keeps a function with its inputs: what does not vary comes from inputs, the names (any of the vocabulary, such as
/// "temperature_f") say what every call gives, and output in which name it answers ("gauge_psi"). A call then costs little
/// more than the equation. What bound receives is to be freed by carb_bound_free, and is NULL where there is an error. A call
/// tells no danger beyond the ranges of equations, such as glass that may burst: ask the function itself about the ends.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_bind(
    function: *const c_char,
    inputs: *const carb_inputs,
    names: *const *const c_char,
    name_count: usize,
    output: *const c_char,
    bound: *mut *mut carb_bound,
    error: *mut carb_error,
) -> i32 {
    let body = || {
        boundary::pointer(bound, "bound")?;
        // SAFETY: NULL or a text with an end, by the contract.
        let name = unsafe { boundary::name(function, "function") }?;
        let function = functions::named(name).ok_or_else(|| {
            let text = format!(
                "there is no elementwise function \"{name}\": give the name of one without carb_, such as keg_pressure; \
                 tables and whole jobs are asked by carb_json"
            );
            Fault::face(carb_status::CARB_UNKNOWN_NAME, "function", text)
        })?;
        let request = inputs::request(inputs)?;
        if name_count > COUNT {
            return Err(Fault::face(carb_status::CARB_BAD_COUNT, "name_count", "there are more names than inputs"));
        }
        // SAFETY: as many as is said, each with an end, by the contract.
        let names = unsafe { boundary::slice(names, name_count, "names") }?;
        let mut parsed = Vec::with_capacity(names.len());
        for name in names {
            // SAFETY: NULL or a text with an end, by the contract.
            parsed.push(Request::name(unsafe { boundary::name(*name, "names") }?)?);
        }
        // SAFETY: NULL or a text with an end, by the contract.
        let (which, unit) = wanted(function, unsafe { boundary::name(output, "output") }?)?;
        let made = Box::new(carb_bound { bound: function.bind(&request, &parsed, which, unit)? });
        // SAFETY: not NULL and aligned, by the check above.
        unsafe { *bound = Box::into_raw(made) };
        Ok(0)
    };
    let blank = |_| {
        if boundary::pointer(bound, "bound").is_ok() {
            // SAFETY: not NULL and aligned.
            unsafe { *bound = core::ptr::null_mut() };
        }
    };
    // SAFETY: `error` is NULL or a `carb_error`, by the contract.
    unsafe { guard(error, blank, body) }
}

/// Calls a bound function with one number for each of its names, in their order. out receives the answer, or NaN. Returns
/// CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0, as the status of an element of an array call.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_bound_call(
    bound: *const carb_bound,
    numbers: *const f64,
    count: usize,
    out: *mut f64,
) -> i32 {
    if boundary::pointer(out, "out").is_err() {
        return carb_status::CARB_NULL_POINTER as i32;
    }
    let refused = |status: carb_status| {
        // SAFETY: not NULL and aligned.
        unsafe { *out = f64::NAN };
        status as i32
    };
    if boundary::pointer(bound, "bound").is_err() || (count > 0 && boundary::pointer(numbers, "numbers").is_err()) {
        return refused(carb_status::CARB_NULL_POINTER);
    }
    // SAFETY: made by carb_bind and not freed, by the contract.
    let bound = unsafe { &(*bound).bound };
    if count != bound.takes() {
        return refused(carb_status::CARB_BAD_COUNT);
    }
    // SAFETY: as many numbers as there are names are there, by the contract; none of NULL are taken.
    let numbers = if count == 0 { &[] } else { unsafe { core::slice::from_raw_parts(numbers, count) } };
    let answered = boundary::quick(|| {
        let (value, status) = bound.call(numbers)?;
        // SAFETY: not NULL and aligned.
        unsafe { *out = value };
        Some(status)
    });
    answered.unwrap_or_else(|| refused(carb_status::CARB_PANIC))
}

/// Frees what carb_bind made; NULL is left alone. No thread may use it any more.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_bound_free(bound: *mut carb_bound) {
    if boundary::pointer(bound, "bound").is_ok() {
        // SAFETY: made by `Box::into_raw` in carb_bind and freed once, by the contract.
        let made = unsafe { Box::from_raw(bound) };
        // A panic cannot come of it: there is nothing in it but memory.
        drop(made);
    }
}
