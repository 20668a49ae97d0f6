//! A function with its request, ready to be called: one value for one set of numbers, for little more than the equation
//! costs. What [`Function::each`](super::Function::each) does for many elements this does for one after the other.

use super::block::Feed;
use super::kernel::{Each, Kernel, gives};
use crate::evidence::NoSteps;
use crate::quantity::Key;
use alloc::boxed::Box;

/// One call: the numbers in the order of their names, the value, and its status.
type Call = dyn Fn(&[f64]) -> (f64, i32) + Send + Sync;

/// A function with its request and the names of what varies.
pub struct Bound {
    takes: usize,
    call: Box<Call>,
}

impl core::fmt::Debug for Bound {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.debug_struct("Bound").field("takes", &self.takes).finish_non_exhaustive()
    }
}

/// A column that follows from one of the numbers of a call.
#[derive(Clone, Copy)]
struct Given {
    column: usize,
    number: usize,
    feed: Feed,
}

impl Bound {
    /// How many numbers a call takes: one for each name, in their order.
    #[must_use]
    pub fn takes(&self) -> usize {
        self.takes
    }

    /// The value and its status, with the same bits as an element of a slice call: below 0 an error code, and the value is
    /// NaN; else the bits of the range cautions. `None` where there are more or fewer numbers than names.
    #[inline]
    #[must_use]
    pub fn call(&self, numbers: &[f64]) -> Option<(f64, i32)> {
        (numbers.len() == self.takes).then(|| (self.call)(numbers))
    }

    /// Keeps a kernel with what it is to be fed.
    pub(super) fn new<K: Kernel<N, M>, const N: usize, const M: usize>(kernel: K, each: &Each<'_, N>) -> Self {
        let series = each.slices.series;
        let (mut fixed, mut refused, mut count) = (each.x, 0, 0);
        let mut given = [Given { column: 0, number: 0, feed: Feed::new(Key::Title, None, 0.0) }; N];
        for (column, key) in K::COLUMNS.into_iter().enumerate() {
            let number = series.iter().rposition(|series| gives(series.name.key, key, each.filling_is));
            let feed = Feed::new(key, number.map(|number| series[number].name), each.sea_level);
            match number {
                Some(number) => {
                    given[count] = Given { column, number, feed };
                    count += 1;
                }
                None => {
                    fixed[column] = feed.column(fixed[column]);
                    refused = feed.refusal(fixed[column], refused);
                }
            }
        }
        let (which, unit) = (each.slices.which, each.slices.unit);
        let call = move |numbers: &[f64]| {
            let (mut x, mut refused) = (fixed, refused);
            for Given { column, number, feed } in &given[..count] {
                let value = feed.column(numbers.get(*number).copied().unwrap_or(f64::NAN));
                x[*column] = value;
                if !feed.within(value) {
                    refused = feed.refusal(value, refused);
                }
            }
            let (values, status) = kernel.eval(x, &mut NoSteps);
            let status = if refused < 0 { refused as i32 } else { status };
            let value = values.get(which).map_or(f64::NAN, |value| unit.from_si(*value));
            (if status < 0 { f64::NAN } else { value }, status)
        };
        Self { takes: series.len(), call: Box::new(call) }
    }
}
