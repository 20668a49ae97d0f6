use super::{LN_2_HI, LN_2_LO};

/// The natural logarithm of `x`.
///
/// Range: every `f64`, subnormal numbers included. Zero gives minus infinity, infinity gives infinity, a negative
/// number or NaN gives NaN.
///
/// Accuracy: within 0.95 units in the last place; `ln(1.0)` is exactly 0. Never decreasing between neighbouring
/// arguments.
///
/// Only selects, no branch and no table, so that a loop over a slice becomes vector instructions.
#[inline(always)]
pub fn ln(x: f64) -> f64 {
    // A subnormal number has no leading bit in its place; 2^54 times it has. (So does a number not above zero, whose
    // result is replaced at the end.)
    let tiny = x < f64::MIN_POSITIVE;
    let scaled = if tiny { x * TWO_54 } else { x };
    let bias = if tiny { TWO_52 + 1023.0 + 54.0 } else { TWO_52 + 1023.0 };

    // x = 2^k m with m from sqrt(1/2) to sqrt(2), so that near 1 k is 0 and nothing cancels. The exponent becomes a
    // double by way of the bits of 2^52 + exponent, a conversion that SSE2 and AVX2 lack.
    let bits = scaled.to_bits().wrapping_add(ONE - SQRT_HALF);
    let k = f64::from_bits(bits >> 52 | TWO_52.to_bits()) - bias;
    let m = f64::from_bits((bits & MANTISSA) + SQRT_HALF);

    // With f = m - 1 and s = f / (2 + f), ln(m) = ln((1 + s) / (1 - s)) = 2 s + s z p(z), z = s^2. Written as
    // f - f^2 / 2 + s (f^2 / 2 + z p(z)) it has the exact f in front and only small terms behind.
    let f = m - 1.0;
    let s = f / (2.0 + f);
    let z = s * s;
    let w = z * z;
    let even = P[0] + w * (P[2] + w * (P[4] + w * P[6]));
    let odd = P[1] + w * (P[3] + w * P[5]);
    let half_f2 = 0.5 * f * f;
    let tail = s * (half_f2 + z * (even + z * odd)) - half_f2;

    // k ln 2 + f is kept exact in two parts: the larger comes first, or is zero.
    let k_ln2 = k * LN_2_HI;
    let head = k_ln2 + f;
    let lost = (k_ln2 - head) + f;
    let y = head + (tail + (lost + k * LN_2_LO));

    // Not `x < f64::INFINITY`, which LLVM turns into a string of integer tests.
    let y = if x <= f64::MAX { y } else { x };
    let y = if x == 0.0 { f64::NEG_INFINITY } else { y };
    if x < 0.0 { f64::NAN } else { y }
}

const TWO_52: f64 = 4_503_599_627_370_496.0;
const TWO_54: f64 = 18_014_398_509_481_984.0;

const ONE: u64 = 1.0_f64.to_bits();
const SQRT_HALF: u64 = core::f64::consts::FRAC_1_SQRT_2.to_bits();
const MANTISSA: u64 = (1 << 52) - 1;

// p(z) on 0 <= z <= 0.0295, interpolated at the Chebyshev nodes; its error is below 5e-18 of ln(m).
const P: [f64; 7] = [
    0.666_666_666_666_667,
    0.399_999_999_998_988_9,
    0.285_714_286_262_538_36,
    0.222_222_110_893_794_96,
    0.181_828_924_325_368_7,
    0.153_316_117_220_550_08,
    0.146_178_071_534_173_25,
];
