use super::{LN_2_HI, LN_2_LO};

/// e to the power `x`.
///
/// Range: every `f64`. Above 709.78 the result is infinite, below -745.13 it is zero, between -745.13 and -708.40 it
/// is subnormal; NaN gives NaN.
///
/// Accuracy: within 0.75 units in the last place where the result is normal, within one where it is subnormal;
/// `exp(0.0)` is exactly 1. Never decreasing between neighbouring arguments.
///
/// There is no branch and no table, so that a loop over a slice becomes vector instructions.
#[inline(always)]
pub fn exp(x: f64) -> f64 {
    // Just past both ends the formula below overflows to infinity and underflows to zero of itself; farther out the
    // exponent would wrap round. `clamp` lets NaN through.
    let (mantissa, biased) = parts(x.clamp(-746.0, 710.0));
    // 2^k in two factors, as one double holds neither 2^1024 nor 2^-1075. The first product is exact, so a subnormal
    // result is rounded only once. The two biases are already in `biased`.
    let half = biased >> 1;
    let rest = biased - half;
    mantissa * f64::from_bits(half << 52) * f64::from_bits(rest << 52)
}

/// The same as [`exp`], to the bit, for `x` from -700 to 700; beyond that it gives some number that means nothing.
///
/// It saves a tenth of the time, for kernels whose limits keep what they give to it well within.
#[inline(always)]
pub fn exp_within(x: f64) -> f64 {
    let (mantissa, biased) = parts(x);
    mantissa * f64::from_bits(biased.wrapping_sub(1023) << 52)
}

/// The mantissa of e to the power `x`, and its exponent with twice the bias in the low bits.
#[inline(always)]
fn parts(x: f64) -> (f64, u64) {
    // x = k ln 2 + r with |r| <= ln(2) / 2. Adding ROUND leaves k in the low bits of the sum, a conversion to integer
    // that SSE2 and AVX2 lack.
    let shifted = x * LOG2_E + ROUND;
    let k = shifted - ROUND;
    let r_hi = x - k * LN_2_HI;
    let r_lo = k * LN_2_LO;
    let r = r_hi - r_lo;

    // exp(r) = 1 + r + r^2 q(r). The sum 1 + r_hi is kept exact in two parts, so that only the last addition rounds
    // in the last place.
    let one_plus = 1.0 + r_hi;
    let lost = (1.0 - one_plus) + r_hi;
    let r2 = r * r;
    let even = Q[0] + r2 * (Q[2] + r2 * (Q[4] + r2 * (Q[6] + r2 * (Q[8] + r2 * Q[10]))));
    let odd = Q[1] + r2 * (Q[3] + r2 * (Q[5] + r2 * (Q[7] + r2 * Q[9])));
    let tail = r2 * (even + r * odd) - r_lo;
    let mantissa = one_plus + (lost + tail);

    (mantissa, shifted.to_bits())
}

const LOG2_E: f64 = core::f64::consts::LOG2_E;

// 1.5 * 2^52, at which the spacing of doubles is 1, plus twice the bias of an exponent: one bias for each factor.
const ROUND: f64 = 6_755_399_441_055_744.0 + 2046.0;

// (exp(r) - 1 - r) / r^2 on |r| <= ln(2) / 2, interpolated at the Chebyshev nodes; its error is below 4e-19 of exp(r).
const Q: [f64; 11] = [
    0.5,
    0.166_666_666_666_666_7,
    0.041_666_666_666_666_67,
    0.008_333_333_333_326_136,
    0.001_388_888_888_888_374_8,
    0.000_198_412_698_748_206_27,
    2.480_158_732_554_774_3e-5,
    2.755_725_540_020_642_2e-6,
    2.755_727_364_311_03e-7,
    2.510_521_700_472_074_5e-8,
    2.091_468_696_808_687_6e-9,
];
