//! The crate's own `exp`, `ln` and `pow`, and one bracketed root finder.
//!
//! Every kernel draws its transcendental functions from here, because the platform's own differ in the last bits
//! from one machine to the next and cannot be vectorised. These use only additions, multiplications, one division
//! and integer operations on the bits, all of them exactly rounded by IEEE 754 and never fused, so the result has
//! the same bits on every machine, at every vector width, with or without the standard library. (The payload of a
//! NaN is the one exception: IEEE 754 leaves it open.)

mod exp;
mod ln;
pub mod root;

pub use exp::{exp, exp_within};
pub use ln::ln;

/// `x` to the power `y`, for a positive base `x`, as `exp(y * ln(x))`.
///
/// Range: `x` > 0. A negative `x` gives NaN; so do the indefinite 0^0, inf^0 and 1^inf.
///
/// Accuracy: the relative error of a normal result is below `2.4e-16 + 3.6e-16 * |y * ln(x)|`, because `exp` magnifies
/// the rounding of `y * ln(x)` by its size. For a result between 1/1000 and 1000 that is at most 2.8e-15, far finer
/// than any measured correlation, so the logarithm is not carried in double length.
#[inline(always)]
pub fn pow(x: f64, y: f64) -> f64 {
    exp(y * ln(x))
}

/// Square root of a positive `x`: [`pow`] and one step of Newton's method, which leaves at most an ulp. (The core library
/// has no square root of its own.) 0, as every other `x` that is not positive, gives NaN.
#[inline(always)]
pub fn sqrt(x: f64) -> f64 {
    let near = pow(x, 0.5);
    0.5 * (near + x / near)
}

// The natural logarithm of 2 in two parts. The high part has 42 bits, so its product with any exponent of a double
// (at most 11 bits) is exact.
const LN_2_HI: f64 = 0.693_147_180_559_890_3;
const LN_2_LO: f64 = 5.497_923_018_708_371e-14;

/// The next whole number at or below `x`, for numbers that an `i64` holds. (The core library has none of its own.)
#[inline(always)]
pub fn floor(x: f64) -> f64 {
    let whole = x as i64 as f64;
    if whole > x { whole - 1.0 } else { whole }
}

/// The next whole number at or above `x`, as [`floor`].
#[inline(always)]
pub fn ceil(x: f64) -> f64 {
    -floor(-x)
}
