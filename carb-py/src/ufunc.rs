//! Ufuncs of NumPy: one function of the library, some of its inputs as operands, one output, or its status.

use crate::given::read;
use crate::record::{output, spelt};
use crate::{core, function_named};
use carb_core::basis::function::{Slices, Statuses};
use carb_core::basis::kernel::Series;
use carb_core::basis::{Function, Request};
use carb_core::quantity::{Name, Unit};
use numpy::npyffi::objects::{PyUFuncGenericFunction, PyUFuncObject};
use numpy::npyffi::{NPY_TYPES, PY_UFUNC_API, npy_intp};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;
use pyo3::types::{PyCapsule, PyDict};
use std::ffi::{CString, c_char, c_int, c_void};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::ptr;

/// How many elements pass through memory of our own, where they cannot be used where they lie.
const PIECE: usize = 4096;
/// The status of every element where the library failed inside.
const FAILED: i32 = i32::MIN;
/// The place of the function that clears the floating-point flags in NumPy's table of ufunc functions.
const CLEAR_FLAGS: usize = 27;

/// What a loop works on; the same for all threads.
struct Task {
    function: &'static Function,
    request: Request,
    operands: Vec<Name>,
    wanted: (usize, &'static Unit),
    clear_flags: extern "C" fn(),
}

/// A ufunc's own memory: NumPy keeps pointers to all of it.
struct Kept {
    _task: Box<Task>,
    loops: [PyUFuncGenericFunction; 2],
    data: [*mut c_void; 2],
    types: Vec<c_char>,
    name: CString,
    doc: CString,
}

// SAFETY: the pointers go to what the struct itself keeps, and nothing in it changes.
unsafe impl Send for Kept {}

/// A number of NumPy that the loops take.
trait Element: Copy {
    fn read(self) -> f64;
    fn written(value: f64) -> Self;
}

impl Element for f64 {
    fn read(self) -> f64 {
        self
    }
    fn written(value: f64) -> Self {
        value
    }
}

impl Element for f32 {
    fn read(self) -> f64 {
        f64::from(self)
    }
    fn written(value: f64) -> Self {
        value as f32
    }
}

/// An operand of a loop: where it starts, and how far apart its elements lie.
#[derive(Clone, Copy)]
struct Operand {
    start: *mut c_char,
    step: isize,
}

impl Operand {
    /// Where element `at` lies.
    fn place<T>(self, at: usize) -> *mut T {
        // SAFETY: NumPy gives operands of as many elements as it says.
        unsafe { self.start.offset(self.step * at as isize).cast() }
    }

    /// Whether its elements lie side by side, where a slice may be made of them.
    fn is_dense<T>(self) -> bool {
        self.step == size_of::<T>() as isize && self.start.cast::<T>().is_aligned()
    }

    /// Whether it shares memory with another, of `count` elements each.
    fn touches(self, other: Operand, count: usize) -> bool {
        let ends = |one: Operand| {
            let (a, b) = (one.start as isize, one.start as isize + one.step * (count as isize - 1));
            (a.min(b), a.max(b) + size_of::<f64>() as isize)
        };
        let (mine, theirs) = (ends(self), ends(other));
        mine.0 < theirs.1 && theirs.0 < mine.1
    }
}

/// The loop of a ufunc: values where `STATUS` is false, else statuses.
///
/// # Safety
/// As NumPy calls loops: `operands` and `steps` have one entry for each operand and one for the output, `data` is a [`Task`].
unsafe extern "C" fn each<T: Element, const STATUS: bool>(
    operands: *mut *mut c_char,
    dimensions: *mut npy_intp,
    steps: *mut npy_intp,
    data: *mut c_void,
) {
    // SAFETY: `data` is the task that the ufunc was made with, and lives as long.
    let task = unsafe { &*data.cast::<Task>() };
    // SAFETY: a loop has one dimension.
    let count = unsafe { *dimensions } as usize;
    // SAFETY: as said of the function.
    let operand = |at: usize| unsafe { Operand { start: *operands.add(at), step: *steps.add(at) } };
    let inputs: Vec<Operand> = (0..task.operands.len()).map(operand).collect();
    let out = operand(task.operands.len());
    let passed = catch_unwind(AssertUnwindSafe(|| pass::<T, STATUS>(task, &inputs, out, count)));
    if !matches!(passed, Ok(Ok(()))) {
        for at in 0..count {
            put::<T, STATUS>(out, at, f64::NAN, FAILED);
        }
    }
    // A branch that is not taken may be evaluated beside one that is: what flags that leaves, nobody should be warned of.
    (task.clear_flags)();
}

/// Writes one element of the output.
fn put<T: Element, const STATUS: bool>(out: Operand, at: usize, value: f64, status: i32) {
    // SAFETY: the output has this element, of this type.
    unsafe {
        if STATUS {
            out.place::<i32>(at).write_unaligned(status);
        } else {
            out.place::<T>(at).write_unaligned(T::written(value));
        }
    }
}

fn pass<T: Element, const STATUS: bool>(
    task: &Task,
    inputs: &[Operand],
    out: Operand,
    count: usize,
) -> Result<(), carb_core::Error> {
    let double = size_of::<T>() == size_of::<f64>();
    // Where a step reads what the step before wrote, as in `reduce` and `accumulate`, one goes after the other.
    let chained = |input: &Operand| {
        let in_place = input.start == out.start && input.step == out.step && input.step != 0;
        input.touches(out, count) && !in_place
    };
    let piece = if inputs.iter().any(chained) { 1 } else { PIECE };
    let direct = |input: &Operand| double && input.is_dense::<f64>();
    let apart = |size: bool| size && !inputs.iter().any(|input| input.touches(out, count));
    let values_apart = apart(!STATUS && double && out.is_dense::<f64>());
    let statuses_apart = apart(STATUS && out.is_dense::<i32>());
    let mut values = vec![0.0; if STATUS || values_apart { 0 } else { PIECE.min(count) }];
    let mut statuses = vec![0; if !STATUS || statuses_apart { 0 } else { PIECE.min(count) }];
    let mut own: Vec<Vec<f64>> = inputs.iter().map(|_| Vec::new()).collect();
    let mut start = 0;
    while start < count {
        let many = piece.min(count - start);
        for (input, own) in inputs.iter().zip(&mut own).filter(|(input, _)| !direct(input)) {
            // An operand that does not move has one value for all.
            let moving = if input.step == 0 { 1 } else { many };
            own.clear();
            // SAFETY: NumPy gives operands of as many elements as it says, of this type.
            own.extend((0..moving).map(|at| unsafe { input.place::<T>(start + at).read_unaligned() }.read()));
        }
        let series: Vec<Series<'_>> = inputs
            .iter()
            .zip(&own)
            .zip(&task.operands)
            .map(|((input, own), &name)| {
                let values = if direct(input) {
                    // SAFETY: dense and aligned doubles, of which nobody writes while this piece is worked out.
                    unsafe { std::slice::from_raw_parts(input.place(start), many) }
                } else {
                    &own[..]
                };
                Series { name, values }
            })
            .collect();
        // SAFETY: dense and aligned elements of the output that no operand shares.
        let (out_values, out_statuses) = unsafe {
            (
                if values_apart {
                    std::slice::from_raw_parts_mut(out.place(start), many)
                } else {
                    &mut values[..if STATUS { 0 } else { many }]
                },
                if statuses_apart {
                    std::slice::from_raw_parts_mut(out.place(start), many)
                } else {
                    &mut statuses[..if STATUS { many } else { 0 }]
                },
            )
        };
        let (which, unit) = task.wanted;
        let told = if STATUS { Statuses::Every(out_statuses) } else { Statuses::Untold };
        let slices = Slices {
            count: many,
            series: &series,
            which,
            unit,
            out: out_values,
            also: None,
            statuses: told,
            keep: None,
        };
        task.function.each(&task.request, slices)?;
        if !(values_apart || statuses_apart) {
            for at in 0..many {
                put::<T, STATUS>(
                    out,
                    start + at,
                    if STATUS { 0.0 } else { values[at] },
                    if STATUS { statuses[at] } else { 0 },
                );
            }
        }
        start += many;
    }
    Ok(())
}

/// Makes a ufunc of a function: `operands` are the names of its operands in order, `given` what is the same for all
/// elements, `output` the name of the output; of `status` it gives the status instead.
#[pyfunction]
#[pyo3(signature = (function, operands, given, wanted, status, name, doc))]
#[allow(clippy::too_many_arguments)]
pub fn ufunc<'py>(
    py: Python<'py>,
    function: &str,
    operands: Vec<String>,
    given: &Bound<'py, PyDict>,
    wanted: &str,
    status: bool,
    name: &str,
    doc: &str,
) -> PyResult<Bound<'py, PyAny>> {
    let (function, request) = (function_named(function)?, read(given)?);
    let wanted = output(function, wanted)?;
    if operands.is_empty() {
        return Err(PyValueError::new_err("a ufunc needs an operand"));
    }
    let operands: Vec<Name> = operands.iter().map(|name| spelt(py, name)).collect::<PyResult<_>>()?;
    // What is wrong with the request as a whole is said now, not when arrays come.
    let series: Vec<Series<'_>> = operands.iter().map(|&name| Series { name, values: &[] }).collect();
    let (which, unit) = wanted;
    let slices = Slices {
        count: 0,
        series: &series,
        which,
        unit,
        out: &mut [],
        also: None,
        statuses: Statuses::Untold,
        keep: None,
    };
    core(py, || function.each(&request, slices))?;

    let clear_flags = clear_flags(py)?;
    let count = operands.len();
    let task = Box::new(Task { function, request, operands, wanted, clear_flags });
    let data = (&raw const *task).cast_mut().cast::<c_void>();
    let (single, double) = (NPY_TYPES::NPY_FLOAT as c_char, NPY_TYPES::NPY_DOUBLE as c_char);
    let told = |number: c_char| if status { NPY_TYPES::NPY_INT as c_char } else { number };
    let mut types = vec![single; count];
    types.push(told(single));
    types.extend(vec![double; count]);
    types.push(told(double));
    let loops: [PyUFuncGenericFunction; 2] = if status {
        [Some(each::<f32, true>), Some(each::<f64, true>)]
    } else {
        [Some(each::<f32, false>), Some(each::<f64, false>)]
    };
    let text = |text: &str| CString::new(text).map_err(|_| PyValueError::new_err("a NUL byte"));
    let mut kept = Box::new(Kept { _task: task, loops, data: [data; 2], types, name: text(name)?, doc: text(doc)? });
    let (loops, data, types) = (kept.loops.as_mut_ptr(), kept.data.as_mut_ptr(), kept.types.as_mut_ptr());
    let (name, doc) = (kept.name.as_ptr(), kept.doc.as_ptr());
    // The ufunc owns what it points to, as a capsule that goes with it.
    let keeper = PyCapsule::new_with_value(py, KeptBox(kept), c"carb.ufunc")?;
    const NO_IDENTITY: c_int = -1;
    // SAFETY: all pointers are to what the capsule keeps.
    unsafe {
        let made = PY_UFUNC_API.PyUFunc_FromFuncAndData(
            py,
            loops,
            data,
            types,
            2,
            count as c_int,
            1,
            NO_IDENTITY,
            name,
            doc,
            0,
        );
        let made = Bound::from_owned_ptr_or_err(py, made)?;
        let inside = made.as_ptr().cast::<PyUFuncObject>();
        ptr::write(&raw mut (*inside).fields.obj, keeper.into_any().into_ptr());
        Ok(made)
    }
}

/// What the capsule holds.
struct KeptBox(#[allow(dead_code, reason = "it is kept for those who point to it")] Box<Kept>);

/// NumPy's function that clears the floating-point flags; it needs no interpreter.
fn clear_flags(py: Python<'_>) -> PyResult<extern "C" fn()> {
    let umath = py.import("numpy._core.umath").or_else(|_| py.import("numpy.core.umath"))?;
    let table = umath.getattr("_UFUNC_API")?;
    // SAFETY: NumPy's documented way to its table of functions, of which this one has this type.
    unsafe {
        let table = pyo3::ffi::PyCapsule_GetPointer(table.as_ptr(), ptr::null()).cast::<*const c_void>();
        if table.is_null() {
            return Err(PyErr::fetch(py));
        }
        Ok(std::mem::transmute::<*const c_void, extern "C" fn()>(*table.add(CLEAR_FLAGS)))
    }
}
