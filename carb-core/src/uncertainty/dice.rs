//! Random numbers that are the same everywhere: no platform's generator, no platform's logarithm.

use crate::number::{ln, sqrt};

/// A generator (splitmix64), for draws and not for secrets.
#[derive(Clone, Copy, Debug)]
pub struct Dice(u64);

impl Dice {
    /// A generator that starts from `seed`.
    pub const fn new(seed: u64) -> Self {
        Self(seed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// From -1 to 1, evenly.
    pub fn even(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1_u64 << 52) as f64 - 1.0
    }

    /// From the normal distribution with the standard deviation 1 (Marsaglia's polar method).
    pub fn normal(&mut self) -> f64 {
        loop {
            let (x, y) = (self.even(), self.even());
            let s = x * x + y * y;
            if s > 0.0 && s < 1.0 {
                return x * sqrt(-2.0 * ln(s) / s);
            }
        }
    }
}
