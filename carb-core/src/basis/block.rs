//! Blocks of elements, small enough to stay in the nearest cache: how the slice loop loads them for a kernel, and
//! stores what it answers. Nothing here depends on the kernel, so it is compiled once.

use super::function::{Slices, Statuses};
use super::kernel::Series;
use crate::error::code;
use crate::evidence::caution::slack;
use crate::property::atmosphere;
use crate::quantity::{Key, Name, Unit};
use core::ops::Range;

/// How many elements there are in a block.
pub(super) const BLOCK: usize = 128;

/// So many numbers. Statuses are kept as wide as values here: the comparisons that make them then need no packing,
/// which is a tenth of the loop on CPUs with AVX2.
pub(super) type Block<T> = [T; BLOCK];

/// How a kernel's column follows from what is given, and between which limits.
#[derive(Clone, Copy)]
pub(super) struct Feed {
    scale: f64,
    offset: f64,
    /// Where altitudes are given and the column is the pressure there: the pressure at sea level.
    sea_level: Option<f64>,
    low: f64,
    high: f64,
}

impl Feed {
    /// The column `key` as `given`, or in SI units where nothing is.
    pub(super) fn new(key: Key, given: Option<Name>, sea_level: f64) -> Self {
        let (low, high) = key.limits().unwrap_or((f64::MIN, f64::MAX));
        // Infinity lies outside every limit.
        let (low, high) = (slack(low, -1.0).max(f64::MIN), slack(high, 1.0).min(f64::MAX));
        let plain = Self { scale: 1.0, offset: 0.0, sea_level: None, low, high };
        match given {
            Some(Name { key: given, unit: Some(unit) }) => Self {
                scale: unit.scale,
                offset: unit.offset,
                sea_level: (given == Key::Altitude && key == Key::Ambient).then_some(sea_level),
                ..plain
            },
            _ => plain,
        }
    }

    /// A value in SI units.
    #[inline(always)]
    pub(super) fn si(&self, value: f64) -> f64 {
        value * self.scale + self.offset
    }

    /// The air pressure at an altitude.
    #[inline(always)]
    pub(super) fn raised(sea_level: f64, altitude: f64) -> f64 {
        let (low, high) = Key::Altitude.limits().unwrap_or_default();
        let (low, high) = (slack(low, -1.0), slack(high, 1.0));
        let pressure = atmosphere::station_pressure(sea_level, altitude);
        // An altitude outside its limits becomes a pressure that is refused; what is no number stays none.
        let outside = (altitude < low) | (altitude > high);
        let refused = if altitude.is_finite() { f64::MAX } else { altitude };
        if outside { refused } else { pressure }
    }

    /// The column of one value.
    #[cfg(feature = "alloc")]
    #[inline(always)]
    pub(super) fn column(&self, value: f64) -> f64 {
        let si = self.si(value);
        match self.sea_level {
            Some(sea_level) => Self::raised(sea_level, si),
            None => si,
        }
    }

    /// Whether a value lies within the limits; what is no number does not: it compares with nothing.
    #[inline(always)]
    pub(super) fn within(&self, value: f64) -> bool {
        (value >= self.low) & (value <= self.high)
    }

    /// The status of an element with this value, after that of other columns. That something is no number goes before all
    /// else.
    #[inline]
    pub(super) fn refusal(&self, value: f64, found: i64) -> i64 {
        let (no_number, out_of_range) = (i64::from(code::NOT_A_NUMBER), i64::from(code::OUT_OF_RANGE));
        let outside = if (value < self.low) | (value > self.high) { out_of_range } else { found };
        if !value.is_finite() | (found == no_number) { no_number } else { outside }
    }
}

/// Where a kernel's column comes from.
pub(super) struct Column<'a> {
    values: &'a [f64],
    feed: Feed,
    /// Whether all that is loaded lies within the limits.
    within: bool,
}

impl<'a> Column<'a> {
    /// The column `key` as it is given, else `x` for every element.
    pub(super) fn new(key: Key, x: &'a f64, given: Option<&Series<'a>>, sea_level: f64) -> Self {
        let values = given.map_or(core::slice::from_ref(x), |series| series.values);
        Self { values, feed: Feed::new(key, given.map(|series| series.name), sea_level), within: true }
    }

    /// Brings values to SI and looks whether all of them lie within the limits.
    #[inline(always)]
    fn load(&mut self, values: &[f64], block: &mut [f64]) {
        let feed = self.feed;
        for (to, from) in block.iter_mut().zip(values) {
            *to = feed.si(*from);
        }
        if let Some(sea_level) = feed.sea_level {
            for value in block.iter_mut() {
                *value = Feed::raised(sea_level, *value);
            }
        }
        self.within = block.iter().fold(true, |all, value| all & feed.within(*value));
    }

    /// Marks the elements that lie outside.
    #[inline(always)]
    fn refuse(&self, block: &Block<f64>, refused: &mut Block<i64>) {
        for (found, &value) in refused.iter_mut().zip(block) {
            *found = self.feed.refusal(value, *found);
        }
    }
}

/// Loads the columns of some elements. A column of one value fills its block with the first of them.
#[cfg_attr(
    feature = "std",
    multiversion::multiversion(targets("x86_64+avx512f+avx512dq+avx512vl", "x86_64+avx2+fma", "aarch64+neon"))
)]
pub(super) fn load(columns: &mut [Column<'_>], elements: &Range<usize>, x: &mut [Block<f64>]) {
    for (column, block) in columns.iter_mut().zip(x) {
        match column.values {
            [one] if elements.start == 0 => column.load(&[*one; BLOCK], block),
            [_] => {}
            many => column.load(&many[elements.clone()], &mut block[..elements.len()]),
        }
    }
}

/// Stores the answers wanted of some elements and their statuses, and returns these OR-ed together.
#[cfg_attr(
    feature = "std",
    multiversion::multiversion(targets("x86_64+avx512f+avx512dq+avx512vl", "x86_64+avx2+fma", "aarch64+neon"))
)]
pub(super) fn store(
    columns: &[Column<'_>],
    x: &[Block<f64>],
    y: &mut [Block<f64>],
    status: &mut Block<i64>,
    elements: Range<usize>,
    to: &mut Slices<'_>,
) -> i32 {
    if columns.iter().any(|column| !column.within) {
        let mut refused = [0; BLOCK];
        for (column, block) in columns.iter().zip(x) {
            column.refuse(block, &mut refused);
        }
        for (status, refused) in status.iter_mut().zip(refused) {
            *status = if refused < 0 { refused } else { *status };
        }
    }
    let status = &status[..elements.len()];
    let all = status.iter().fold(0, |all, status| all | status);
    write(&mut y[to.which], status, all, to.unit, to.out.get_mut(elements.clone()).unwrap_or_default());
    if let Some(also) = &mut to.also {
        write(&mut y[also.which], status, all, also.unit, also.out.get_mut(elements.clone()).unwrap_or_default());
    }
    let told = match &mut to.statuses {
        Statuses::Every(every) => &mut every[elements],
        Statuses::Found(found) if all != 0 => &mut found[elements],
        Statuses::Found(_) | Statuses::Untold => &mut [],
    };
    for (to, status) in told.iter_mut().zip(status) {
        *to = *status as i32;
    }
    all as i32
}

/// Writes an output in its unit; no place is wanted where `out` is empty.
#[inline(always)]
fn write(y: &mut Block<f64>, status: &[i64], all: i64, unit: &Unit, out: &mut [f64]) {
    if all < 0 {
        for (value, status) in y.iter_mut().zip(status) {
            *value = if *status < 0 { f64::NAN } else { *value };
        }
    }
    for (to, value) in out.iter_mut().zip(y) {
        *to = unit.from_si(*value);
    }
}
