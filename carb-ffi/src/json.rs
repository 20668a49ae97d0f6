//! Whole jobs through a buffer of the caller's: JSON in, JSON or a page of text out.

use crate::boundary::{self, guard};
use crate::error::{Fault, carb_error, carb_status};
use carb_core::basis::Refusal;
use carb_core::crosscheck;
use carb_core::plan::json;
use core::ffi::c_char;

/// A buffer of the caller's.
#[derive(Clone, Copy)]
struct Buffer {
    start: *mut c_char,
    capacity: usize,
    needed: *mut usize,
}

impl Buffer {
    fn check(self) -> Result<(), Fault> {
        boundary::pointer(self.needed, "needed")?;
        if self.capacity > 0 {
            boundary::pointer(self.start, "buffer")?;
            boundary::count::<c_char>(self.capacity, "capacity")?;
        }
        Ok(())
    }

    /// Writes a text with its NUL, or nothing but how much room it needs.
    fn put(self, text: &str) -> Result<(), Fault> {
        let length = text.len() + 1;
        // SAFETY: `check` has passed, and the capacity is there by the contract.
        unsafe {
            *self.needed = length;
            if length > self.capacity {
                let text = format!("the buffer has {} bytes, the text needs {length}", self.capacity);
                return Err(Fault::face(carb_status::CARB_BUFFER_TOO_SMALL, "capacity", text));
            }
            core::ptr::copy_nonoverlapping(text.as_ptr().cast(), self.start, text.len());
            *self.start.add(text.len()) = 0;
        }
        Ok(())
    }

    /// An empty text, and nothing needed, unless it was just the room that lacked.
    fn blank(self, code: i32) {
        // SAFETY: each is NULL or as long as is said of it, by the contract.
        unsafe {
            boundary::fill(self.start, self.capacity.min(1), 0);
            if code != carb_status::CARB_BUFFER_TOO_SMALL as i32 {
                boundary::fill(self.needed, 1, 0);
            }
        }
    }
}

/// Answers a request of a function, of a table, or of a job ("bottling", "kegging", "plan", "crosscheck"): JSON in, JSON out. Tables and jobs take
/// lists of rows, such as "bottles". A request may hold "uncertainty", half widths by the names of inputs; a function's name with ".markdown" behind it gives its working in Markdown. The request
/// need not end with a NUL; the answer does. needed receives the bytes of the answer, its NUL included. Returns CARB_OK, or the code of the error that the
/// answer tells (it is written all the same), or CARB_BUFFER_TOO_SMALL; with capacity 0 the buffer may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_json(
    function: *const c_char,
    request: *const c_char,
    request_length: usize,
    buffer: *mut c_char,
    capacity: usize,
    needed: *mut usize,
) -> i32 {
    let buffer = Buffer { start: buffer, capacity, needed };
    let body = || {
        buffer.check()?;
        // SAFETY: NULL, or as long as is said of them, by the contract.
        let (function, request) =
            unsafe { (boundary::name(function, "function")?, boundary::text(request, request_length, "request")?) };
        let (answer, code) = json::answer_with_code(function, request);
        buffer.put(&answer)?;
        Ok(code)
    };
    // SAFETY: there is no error to tell.
    unsafe { guard(core::ptr::null_mut(), |code| buffer.blank(code), body) }
}

/// A page of text, and whether somebody may be hurt.
type Page = (String, bool);

/// Writes the page of a job into a buffer.
///
/// # Safety
/// Every pointer is NULL, or points to what the header says of it.
unsafe fn page(
    find: fn(&str) -> Result<Page, Refusal>,
    (request, request_length): (*const c_char, usize),
    buffer: Buffer,
    danger: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let tell = |found: bool| {
        if boundary::pointer(danger, "danger").is_ok() {
            // SAFETY: not NULL and aligned.
            unsafe { *danger = i32::from(found) };
        }
    };
    let body = || {
        buffer.check()?;
        // SAFETY: NULL, or as long as is said of it, by the contract.
        let request = unsafe { boundary::text(request, request_length, "request") }?;
        let (text, hurts) = find(request)?;
        tell(hurts);
        buffer.put(&text)?;
        Ok(0)
    };
    let blank = |code| {
        if code != carb_status::CARB_BUFFER_TOO_SMALL as i32 {
            tell(false);
        }
        buffer.blank(code);
    };
    // SAFETY: `error` is NULL or a `carb_error`, by the contract.
    unsafe { guard(error, blank, body) }
}

/// The plan of a packaging day as a page of text (UTF-8, 80 columns), from a request in JSON. Buffer and needed are used
/// as by carb_json. danger may be NULL; it receives 1 if somebody may be hurt (a program for the command line then exits
/// with a failure), else 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_plan_page(
    request: *const c_char,
    request_length: usize,
    buffer: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    danger: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let find = |text: &str| json::plan_of(text).map(|plan| (plan.to_text(), plan.danger()));
    // SAFETY: by the contract of this function.
    unsafe { page(find, (request, request_length), Buffer { start: buffer, capacity, needed }, danger, error) }
}

/// The bottling of a batch as a page of text; everything else as carb_plan_page.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_bottling_page(
    request: *const c_char,
    request_length: usize,
    buffer: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    danger: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let find = |text: &str| json::bottling_of(text).map(|job| (job.to_text(), job.danger()));
    // SAFETY: by the contract of this function.
    unsafe { page(find, (request, request_length), Buffer { start: buffer, capacity, needed }, danger, error) }
}

/// The kegging of a batch as a page of text; everything else as carb_plan_page.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_kegging_page(
    request: *const c_char,
    request_length: usize,
    buffer: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    danger: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let find = |text: &str| json::kegging_of(text).map(|job| (job.to_text(), job.danger()));
    // SAFETY: by the contract of this function.
    unsafe { page(find, (request, request_length), Buffer { start: buffer, capacity, needed }, danger, error) }
}

/// What is found about claims of other programs, as a page of text, from a request {"carb": 1, "claims": [...]}; everything else as
/// carb_plan_page, danger where following a claim may hurt somebody.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_crosscheck_page(
    request: *const c_char,
    request_length: usize,
    buffer: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    danger: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let find = |text: &str| crosscheck::json::crosscheck_of(text).map(|found| (found.to_text(), found.danger()));
    // SAFETY: by the contract of this function.
    unsafe { page(find, (request, request_length), Buffer { start: buffer, capacity, needed }, danger, error) }
}
