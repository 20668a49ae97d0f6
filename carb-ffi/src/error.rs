//! Statuses, and the error that a caller may own.

use crate::boundary::Place;
pub use crate::generated::carb_status;
use carb_core::Error;
use carb_core::basis::Refusal;
use core::ffi::c_char;
use core::mem::offset_of;

const PARAMETER: usize = 64;
const TEXT: usize = 512;

/// What was wrong. The caller owns it, sets struct_size to sizeof (carb_error), and may pass NULL instead. After a call
/// that succeeded the code is CARB_OK and the texts are empty.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_error {
    /// sizeof (carb_error)
    pub struct_size: u32,
    /// the status that was returned
    pub code: i32,
    /// the parameter at fault, by the name that was used; empty where there is none
    pub parameter: [c_char; 64],
    /// the value at fault, in the unit of the parameter's name; NaN where there is none
    pub value: f64,
    /// the lowest value that is answered; NaN where there is no limit
    pub low: f64,
    /// the highest value that is answered, infinite where that side is open; NaN where there is no limit
    pub high: f64,
    /// what is wrong and what to do, in a sentence of UTF-8
    pub text: [c_char; 512],
}

impl carb_error {
    /// An error that says nothing yet.
    pub fn empty() -> Self {
        Self {
            struct_size: size_of::<Self>() as u32,
            code: 0,
            parameter: [0; PARAMETER],
            value: f64::NAN,
            low: f64::NAN,
            high: f64::NAN,
            text: [0; TEXT],
        }
    }

    /// Where to tell it; nowhere for NULL.
    pub(crate) unsafe fn place(error: *mut Self) -> Result<Option<Told>, Fault> {
        if error.is_null() {
            return Ok(None);
        }
        // SAFETY: by the contract of the boundary it points to a `carb_error`.
        unsafe { Place::new(error, "error") }.map(|place| Some(Told(place)))
    }
}

/// A `carb_error` of the caller's.
pub(crate) struct Told(Place);

impl Told {
    pub(crate) fn tell(&self, fault: Option<&Fault>) {
        let mut error = carb_error::empty();
        match fault {
            Some(Fault::Core(refusal)) => {
                let core = refusal.error;
                (error.value, (error.low, error.high)) =
                    (core.value().unwrap_or(f64::NAN), core.limits().unwrap_or((f64::NAN, f64::NAN)));
                error.parameter = c_text(core.parameter().as_str());
                error.text = c_text(&refusal.to_string());
            }
            Some(Fault::Face { parameter, text, .. }) => {
                error.parameter = c_text(parameter);
                error.text = c_text(text);
            }
            None => {}
        }
        error.code = fault.map_or(0, Fault::code);
        let Told(place) = *self;
        place.write(offset_of!(carb_error, code), error.code);
        place.write(offset_of!(carb_error, parameter), error.parameter);
        place.write(offset_of!(carb_error, value), error.value);
        place.write(offset_of!(carb_error, low), error.low);
        place.write(offset_of!(carb_error, high), error.high);
        place.write(offset_of!(carb_error, text), error.text);
        place.mark_unknown(size_of::<carb_error>());
    }
}

/// A text with its NUL. One that is too long is cut between two characters, and says so by dots at its end.
fn c_text<const N: usize>(text: &str) -> [c_char; N] {
    const DOTS: &str = "...";
    let (text, dots) = match text.len() < N {
        true => (text, ""),
        false => (&text[..text.floor_char_boundary(N - 1 - DOTS.len())], DOTS),
    };
    let mut all = [0; N];
    for (to, from) in all.iter_mut().zip(text.bytes().chain(dots.bytes())) {
        *to = from as c_char;
    }
    all
}

/// Why a call has no answer.
#[derive(Debug)]
pub enum Fault {
    /// The core says so.
    Core(Refusal),
    /// The call itself is wrong.
    Face {
        /// Which status.
        status: carb_status,
        /// Which argument or name.
        parameter: String,
        /// What to do.
        text: String,
    },
}

impl Fault {
    /// A fault of the call.
    pub fn face(status: carb_status, parameter: &str, text: impl Into<String>) -> Self {
        Self::Face { status, parameter: parameter.into(), text: text.into() }
    }

    /// Its code.
    pub fn code(&self) -> i32 {
        match self {
            Self::Core(refusal) => refusal.error.code(),
            Self::Face { status, .. } => *status as i32,
        }
    }
}

impl From<Error> for Fault {
    fn from(error: Error) -> Self {
        Self::Core(error.into())
    }
}

impl From<Refusal> for Fault {
    fn from(refusal: Refusal) -> Self {
        Self::Core(refusal)
    }
}
