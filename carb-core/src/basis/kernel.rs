//! Kernels and the one loop that runs them over slices.
//!
//! A kernel is plain arithmetic on `f64` in SI units, without branches: it gives a value and a status. The typed
//! functions call it once, the slice loop calls it per element, so both have the same bits.

use crate::error::{Error, code};
use crate::evidence::caution::{above, below, slack};
use crate::evidence::{NoSteps, Steps};
use crate::property::atmosphere;
use crate::quantity::{Key, Name, Unit};

/// Arithmetic of `N` columns giving `M` values.
pub trait Kernel<const N: usize, const M: usize>: Copy {
    /// Whether nothing in it can be vectorised, so that one loop serves every level of the CPU.
    const SCALAR: bool = false;
    /// What the columns are.
    const COLUMNS: [Key; N];
    /// Values and status: 0, or range bits, or an error code below 0 (and then the values mean nothing).
    fn eval(&self, x: [f64; N], steps: &mut impl Steps) -> ([f64; M], i32);
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

/// Where a kernel's column comes from.
#[derive(Clone, Copy)]
struct Column<'a> {
    values: &'a [f64],
    scale: f64,
    offset: f64,
    /// Where the values are altitudes and the column is the pressure there: the pressure at sea level.
    sea_level: Option<f64>,
}

impl Column<'_> {
    #[inline(always)]
    fn load(&self, start: usize, block: &mut [f64; BLOCK]) {
        match self.values {
            [one] => block.fill(one * self.scale + self.offset),
            many => {
                let end = many.len().min(start + BLOCK);
                let part = many.get(start..end).unwrap_or(&[]);
                for (to, from) in block.iter_mut().zip(part) {
                    *to = from * self.scale + self.offset;
                }
            }
        }
        if let Some(sea_level) = self.sea_level {
            let (low, high) = Key::Altitude.limits().unwrap_or_default();
            for value in block.iter_mut() {
                let pressure = atmosphere::station_pressure(sea_level, *value);
                // An altitude outside its limits becomes a pressure that is refused; what is no number stays none.
                let outside = below(*value, low) | above(*value, high);
                let refused = if value.is_finite() { f64::MAX } else { *value };
                *value = if outside { refused } else { pressure };
            }
        }
    }
}

/// The whole loop over slices: the columns given as series vary, the others are those of `x`.
pub struct Each<'a, const N: usize> {
    /// The columns that do not vary, SI.
    pub x: [f64; N],
    /// Which temperature is that of filling: its own, or where it is not given that of the cold crash or the warmest.
    pub filling_is: Key,
    /// Air pressure at sea level, Pa, for altitudes that vary.
    pub sea_level: f64,
    /// The columns that do.
    pub series: &'a [Series<'a>],
    /// Which of the kernel's values is wanted.
    pub which: usize,
    /// In which unit.
    pub unit: &'static Unit,
    /// Receives the values; NaN where the status is below 0.
    pub out: &'a mut [f64],
    /// Receives the statuses.
    pub status: &'a mut [i32],
}

const BLOCK: usize = 128;

impl<const N: usize, const M: usize> Visit<N, M> for Each<'_, N> {
    type Output = Result<(), Error>;
    const ONCE: bool = false;
    fn visit<K: Kernel<N, M>>(self, kernel: K) -> Self::Output {
        if const { K::SCALAR } { blocks(kernel, self) } else { each(kernel, self) }
    }
}

/// Runs a kernel over slices, compiled for several levels of the CPU and chosen at run time. No level changes a bit:
/// Rust never fuses a multiplication with an addition by itself.
#[cfg_attr(
    feature = "std",
    multiversion::multiversion(targets("x86_64+avx512f+avx512dq+avx512vl", "x86_64+avx2+fma", "aarch64+neon"))
)]
fn each<K: Kernel<N, M>, const N: usize, const M: usize>(kernel: K, job: Each<'_, N>) -> Result<(), Error> {
    blocks(kernel, job)
}

/// The loop itself.
#[inline(always)]
fn blocks<K: Kernel<N, M>, const N: usize, const M: usize>(kernel: K, job: Each<'_, N>) -> Result<(), Error> {
    let mut columns = [Column { values: &[], scale: 1.0, offset: 0.0, sea_level: None }; N];
    for ((column, x), key) in columns.iter_mut().zip(&job.x).zip(K::COLUMNS) {
        column.values = core::slice::from_ref(x);
        for series in job.series {
            let altitude = key == Key::Ambient && series.name.key == Key::Altitude;
            let filling = key == Key::Filling && series.name.key == job.filling_is;
            if let Some(unit) = series.name.unit
                && (series.name.key == key || altitude || filling)
            {
                let sea_level = altitude.then_some(job.sea_level);
                *column = Column { values: series.values, scale: unit.scale, offset: unit.offset, sea_level };
            }
        }
    }
    let (mut x, mut y, mut status) = ([[0.0; BLOCK]; N], [[0.0; BLOCK]; M], [0; BLOCK]);
    let mut start = 0;
    for (out, out_status) in job.out.chunks_mut(BLOCK).zip(job.status.chunks_mut(BLOCK)) {
        for (column, block) in columns.iter().zip(x.iter_mut()) {
            // A column of one value fills its block once.
            if start == 0 || column.values.len() > 1 {
                column.load(start, block);
            }
        }
        block_loop(&kernel, &x, &mut y, &mut status);
        for (to, from) in out.iter_mut().zip(&y[job.which]) {
            *to = job.unit.from_si(*from);
        }
        out_status.copy_from_slice(&status[..out_status.len()]);
        start += BLOCK;
    }
    Ok(())
}

/// The inner loop: fixed length and no branches, so that LLVM vectorises it.
#[inline(always)]
fn block_loop<K: Kernel<N, M>, const N: usize, const M: usize>(
    kernel: &K,
    x: &[[f64; BLOCK]; N],
    y: &mut [[f64; BLOCK]; M],
    status: &mut [i32; BLOCK],
) {
    let kernel = *kernel;
    // Three plain loops rather than one: each is simple enough for LLVM to vectorise.
    let mut refused = [0; BLOCK];
    for (column, key) in x.iter().zip(K::COLUMNS) {
        let (low, high) = key.limits().unwrap_or((f64::NEG_INFINITY, f64::INFINITY));
        let (low, high) = (slack(low, -1.0), slack(high, 1.0));
        for (found, &value) in refused.iter_mut().zip(column) {
            let outside = if (value < low) | (value > high) { code::OUT_OF_RANGE } else { *found };
            *found = if !value.is_finite() | (*found == code::NOT_A_NUMBER) { code::NOT_A_NUMBER } else { outside };
        }
    }
    for at in 0..BLOCK {
        let mut element = [0.0; N];
        for (value, column) in element.iter_mut().zip(x) {
            *value = column[at];
        }
        let (values, found) = kernel.eval(element, &mut NoSteps);
        for (column, value) in y.iter_mut().zip(values) {
            column[at] = value;
        }
        status[at] = found;
    }
    for at in 0..BLOCK {
        status[at] = if refused[at] < 0 { refused[at] } else { status[at] };
        for value in y.iter_mut() {
            value[at] = if status[at] < 0 { f64::NAN } else { value[at] };
        }
    }
}
