//! Kernels and the one loop that runs them over slices.
//!
//! A kernel is plain arithmetic on `f64` in SI units, without branches: it gives a value and a status. The typed
//! functions call it once, the slice loop calls it per element, so both have the same bits.

use super::block::{BLOCK, Block, Column, load, store};
#[cfg(feature = "alloc")]
use super::bound::Bound;
use super::function::Slices;
use crate::error::Error;
use crate::evidence::caution::{above, below};
use crate::evidence::{NoSteps, Steps};
use crate::quantity::{Key, Name};

/// Arithmetic of `N` columns giving `M` values.
pub trait Kernel<const N: usize, const M: usize>: Copy + Send + Sync + 'static {
    /// Whether nothing in it can be vectorised, so that one loop serves every level of the CPU.
    const SCALAR: bool = false;
    /// What the columns are.
    const COLUMNS: [Key; N];
    /// Values and status: 0, or range bits, or an error code below 0 (and then the values mean nothing).
    fn eval(&self, x: [f64; N], steps: &mut impl Steps) -> ([f64; M], i32);
    /// What the slice loop works out for a whole block before it calls [`Kernel::eval_with`]: a long chain of operations, such
    /// as an `exp`, that would keep the CPU from beginning the next elements if all the rest stood behind it.
    #[inline(always)]
    fn ahead(&self, _: &[f64; N]) -> f64 {
        0.0
    }
    /// The same as [`Kernel::eval`], to the bit, with what [`Kernel::ahead`] gave for `x`.
    #[inline(always)]
    fn eval_with(&self, _: f64, x: [f64; N], steps: &mut impl Steps) -> ([f64; M], i32) {
        self.eval(x, steps)
    }
    /// The error behind a status below 0, under the first names of the fields.
    fn explain(&self, status: i32, x: [f64; N]) -> Error;
}

/// Does something with a kernel whose type is known only where it is made.
pub trait Visit<const N: usize, const M: usize> {
    /// What it gives.
    type Output;
    /// Whether it calls the kernel but once. Then one kernel with the solubility model behind an enum serves all models.
    const ONCE: bool;
    /// Does it.
    fn visit<K: Kernel<N, M>>(self, kernel: K) -> Self::Output;
}

/// Checks a number against the limits of its field.
///
/// # Errors
/// Where it is not finite or lies outside.
pub fn check(key: Key, value: f64) -> Result<(), Error> {
    let parameter = Name::first(key);
    let (low, high) = key.limits().unwrap_or((f64::NEG_INFINITY, f64::INFINITY));
    if !value.is_finite() {
        Err(Error::NotANumber { parameter })
    } else if below(value, low) || above(value, high) {
        Err(Error::OutOfRange { parameter, value, low, high })
    } else {
        Ok(())
    }
}

/// One call of a kernel, with everything checked.
pub struct Once<'a, const N: usize, S: Steps> {
    /// The columns.
    pub x: [f64; N],
    /// Who watches.
    pub steps: &'a mut S,
}

impl<const N: usize, const M: usize, S: Steps> Visit<N, M> for Once<'_, N, S> {
    type Output = Result<[f64; M], Error>;
    const ONCE: bool = true;
    fn visit<K: Kernel<N, M>>(self, kernel: K) -> Self::Output {
        once(kernel, self.x, self.steps)
    }
}

fn once<K: Kernel<N, M>, const N: usize, const M: usize>(
    kernel: K,
    x: [f64; N],
    steps: &mut impl Steps,
) -> Result<[f64; M], Error> {
    for (key, value) in K::COLUMNS.into_iter().zip(x) {
        check(key, value)?;
    }
    match kernel.eval(x, steps) {
        (_, status) if status < 0 => Err(kernel.explain(status, x)),
        (values, _) => Ok(values),
    }
}

/// A column of numbers in some unit, one for each element or one for all.
#[derive(Clone, Copy, Debug)]
pub struct Series<'a> {
    /// Under which name it was given.
    pub name: Name,
    /// One value, or as many as there are elements.
    pub values: &'a [f64],
}

/// The whole loop over slices: the columns given as series vary, the others are those of `x`.
pub struct Each<'a, const N: usize> {
    /// The columns that do not vary, SI.
    pub x: [f64; N],
    /// Which temperature is that of filling: its own, or where it is not given that of the cold crash or the warmest.
    pub filling_is: Key,
    /// Air pressure at sea level, Pa, for altitudes that vary.
    pub sea_level: f64,
    /// The columns that do, and where the answers go.
    pub slices: Slices<'a>,
}

impl<const N: usize, const M: usize> Visit<N, M> for Each<'_, N> {
    type Output = Result<i32, Error>;
    const ONCE: bool = false;
    fn visit<K: Kernel<N, M>>(self, kernel: K) -> Self::Output {
        #[cfg(feature = "alloc")]
        if self.slices.keep.is_some() {
            let bound = Bound::new(kernel, &self);
            if let Some(place) = self.slices.keep {
                *place = Some(bound);
            }
            return Ok(0);
        }
        let Self { x, filling_is, sea_level, mut slices } = self;
        let mut columns: [_; N] = core::array::from_fn(|at| {
            let key = K::COLUMNS[at];
            let given = slices.series.iter().rfind(|series| gives(series.name.key, key, filling_is));
            Column::new(key, &x[at], given, sea_level)
        });
        let (mut x, mut y, mut status) = ([[0.0; BLOCK]; N], [[0.0; BLOCK]; M], [0; BLOCK]);
        let mut all = 0;
        for start in (0..slices.count).step_by(BLOCK) {
            let elements = start..slices.count.min(start + BLOCK);
            load(&mut columns, &elements, &mut x);
            if const { K::SCALAR } {
                answer(kernel, &x, &mut y, &mut status, elements.len());
            } else {
                answer_all(kernel, &x, &mut y, &mut status);
            }
            all |= store(&columns, &x, &mut y, &mut status, elements, &mut slices);
        }
        Ok(all)
    }
}

/// Whether a series of the field `given` is the kernel's column `column`.
pub(super) fn gives(given: Key, column: Key, filling_is: Key) -> bool {
    let altitude = column == Key::Ambient && given == Key::Altitude;
    let filling = column == Key::Filling && given == filling_is;
    given == column || altitude || filling
}

/// Answers a whole block, compiled for several levels of the CPU and chosen at run time. No level changes a bit: Rust
/// never fuses a multiplication with an addition by itself. The length is fixed, so that there is one vector loop and
/// nothing else.
#[cfg_attr(
    feature = "std",
    multiversion::multiversion(targets("x86_64+avx512f+avx512dq+avx512vl", "x86_64+avx2+fma", "aarch64+neon"))
)]
fn answer_all<K: Kernel<N, M>, const N: usize, const M: usize>(
    kernel: K,
    x: &[Block<f64>; N],
    y: &mut [Block<f64>; M],
    status: &mut Block<i64>,
) {
    answer(kernel, x, y, status, BLOCK);
}

/// Answers the first `used` elements of a block. Nothing but the kernel stands in the loop, so that LLVM vectorises it.
#[inline(always)]
fn answer<K: Kernel<N, M>, const N: usize, const M: usize>(
    kernel: K,
    x: &[Block<f64>; N],
    y: &mut [Block<f64>; M],
    status: &mut Block<i64>,
    used: usize,
) {
    let mut ahead = [0.0; BLOCK];
    for (at, ahead) in ahead.iter_mut().enumerate().take(used) {
        *ahead = kernel.ahead(&core::array::from_fn(|column| x[column][at]));
    }
    for at in 0..used.min(BLOCK) {
        let (values, found) = kernel.eval_with(ahead[at], core::array::from_fn(|column| x[column][at]), &mut NoSteps);
        for (column, value) in y.iter_mut().zip(values) {
            column[at] = value;
        }
        status[at] = i64::from(found);
    }
}
