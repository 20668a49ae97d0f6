//! Answers for whole arrays of NumPy in one pass.

use crate::given::read;
use crate::record::{output, spelt};
use crate::{function_named, guarded, raised};
use carb_core::Error;
use carb_core::basis::function::{Also, Slices, Statuses};
use carb_core::basis::kernel::Series;
use carb_core::basis::{Function, Request};
use carb_core::quantity::{Name, Unit};
use numpy::{PyArray1, PyArrayMethods, PyReadonlyArray1};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// How many elements go through in one piece, so that the print is taken while they are at hand.
const PIECE: usize = 8192;
/// How many parts of the print are kept side by side.
const LANES: usize = 16;

/// A print of numbers, by which a change of an array is noticed. It is no secret, and no proof against intent.
struct Print {
    lanes: [u64; LANES],
    /// Differs from group to group, or what is the same everywhere would cancel.
    place: u64,
}

impl Print {
    fn new() -> Self {
        Self { lanes: [0; LANES], place: 0 }
    }

    fn add(&mut self, values: &[f64]) {
        self.place = mix(&mut self.lanes, self.place, values);
    }

    fn whole(&self) -> u64 {
        self.lanes.iter().fold(self.place, |all, lane| all.rotate_left(7) ^ lane)
    }
}

#[multiversion::multiversion(targets("x86_64+avx512f+avx512dq+avx512vl", "x86_64+avx2", "aarch64+neon"))]
fn mix(lanes: &mut [u64; LANES], mut place: u64, values: &[f64]) -> u64 {
    /// The golden ratio of 2^64, an odd number without a pattern.
    const STRIDE: u64 = 0x9e37_79b9_7f4a_7c15;
    let mut mixed = *lanes;
    let (groups, rest) = values.as_chunks::<LANES>();
    for group in groups {
        for (lane, value) in mixed.iter_mut().zip(group) {
            *lane = lane.rotate_left(5) ^ value.to_bits().wrapping_add(place);
        }
        place = place.wrapping_add(STRIDE);
    }
    for (lane, value) in mixed.iter_mut().zip(rest) {
        *lane = lane.rotate_left(5) ^ value.to_bits().wrapping_add(place);
    }
    *lanes = mixed;
    place.wrapping_add(STRIDE)
}

type Values<'py> = Bound<'py, PyArray1<f64>>;
/// The values of an output and of another, the statuses, all of these OR-ed together, and the print of the arrays.
type Elements<'py> = (Values<'py>, Option<Values<'py>>, Bound<'py, PyArray1<i32>>, i32, u64);
type Wanted = (usize, &'static Unit);

/// Answers element by element: `arrays` vary, each with one element or `count`; `given` is the same for all.
#[pyfunction]
#[pyo3(signature = (function, given, arrays, count, name, also=None))]
pub fn each<'py>(
    py: Python<'py>,
    function: &str,
    given: &Bound<'py, PyDict>,
    arrays: &Bound<'py, PyDict>,
    count: usize,
    name: &str,
    also: Option<&str>,
) -> PyResult<Elements<'py>> {
    let (function, request) = (function_named(function)?, read(given)?);
    let wanted = output(function, name)?;
    let other = also.map(|name| output(function, name)).transpose()?;
    let mut columns: Vec<(Name, PyReadonlyArray1<'py, f64>)> = Vec::new();
    for (name, values) in arrays.iter() {
        columns.push((spelt(py, &name.extract::<String>()?)?, values.extract()?));
    }
    let mut all = Vec::new();
    for (name, values) in &columns {
        let values = values.as_slice()?;
        if values.len() != 1 && values.len() != count {
            return Err(PyValueError::new_err(format!("{name} has {} elements, not {count}", values.len())));
        }
        all.push(Series { name: *name, values });
    }
    // SAFETY: every element is written below, or the array is dropped.
    let fresh = || unsafe { PyArray1::<f64>::new(py, count, false) };
    let (values, others, statuses) = (fresh(), other.map(|_| fresh()), PyArray1::<i32>::zeros(py, count, false));
    // SAFETY: all were made here, and nobody else has them.
    let (out, more, status) = unsafe {
        let more = others.as_ref().map(|others| others.as_slice_mut()).transpose()?.unwrap_or_default();
        (values.as_slice_mut()?, more, statuses.as_slice_mut()?)
    };
    let passed = py.detach(|| guarded(|| pieces(function, &request, &all, (wanted, out), (other, more), status)))?;
    let (seen, print) = passed.map_err(|error| raised(py, error))?;
    Ok((values, others, statuses, seen, print))
}

/// The pass in pieces, and the print of what was read.
fn pieces(
    function: &'static Function,
    request: &Request,
    series: &[Series<'_>],
    ((which, unit), out): (Wanted, &mut [f64]),
    (other, mut more): (Option<Wanted>, &mut [f64]),
    status: &mut [i32],
) -> Result<(i32, u64), Error> {
    let (mut print, mut seen, mut start) = (Print::new(), 0, 0);
    if out.is_empty() {
        // What is wrong with the request is wrong without elements too.
        let slices =
            Slices { count: 0, series, which, unit, out: &mut [], also: None, statuses: Statuses::Untold, keep: None };
        seen = function.each(request, slices)?;
    }
    for (out, status) in out.chunks_mut(PIECE).zip(status.chunks_mut(PIECE)) {
        let (count, end) = (out.len(), start + out.len());
        let piece: Vec<_> = series
            .iter()
            .map(|s| Series {
                name: s.name,
                values: if s.values.len() == 1 { s.values } else { &s.values[start..end] },
            })
            .collect();
        let (mine, rest) = more.split_at_mut(count.min(more.len()));
        more = rest;
        let also = other.map(|(which, unit)| Also { which, unit, out: mine });
        let statuses = Statuses::Found(status);
        seen |=
            function.each(request, Slices { count, series: &piece, which, unit, out, also, statuses, keep: None })?;
        // Only now: it is the work above that hides how long memory takes.
        piece.iter().for_each(|s| print.add(s.values));
        start = end;
    }
    Ok((seen, print.whole()))
}

/// The print of arrays as [`each`] takes it.
#[pyfunction]
pub fn print(py: Python<'_>, arrays: Vec<PyReadonlyArray1<'_, f64>>, count: usize) -> PyResult<u64> {
    let columns: Vec<&[f64]> = arrays.iter().map(|array| Ok(array.as_slice()?)).collect::<PyResult<_>>()?;
    let mut print = Print::new();
    py.detach(|| {
        for start in (0..count).step_by(PIECE) {
            let end = count.min(start + PIECE);
            for column in &columns {
                print.add(if column.len() == 1 { column } else { column.get(start..end).unwrap_or(&[]) });
            }
        }
    });
    Ok(print.whole())
}
