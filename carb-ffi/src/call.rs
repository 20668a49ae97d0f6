//! The generic routines behind the functions of `generated`.

use crate::boundary::{self, Place, guard};
use crate::error::{Fault, carb_error, carb_status};
use crate::generated::carb_inputs;
use crate::inputs;
use carb_core::basis::Function;
use carb_core::basis::Request;
use carb_core::basis::function::{Slices, Statuses};
use carb_core::basis::kernel::Series;
use carb_core::basis::request::Raw;
use carb_core::error::code;
use carb_core::evidence::NoSteps;
use carb_core::evidence::caution::Level;
use carb_core::quantity::Unit;
use carb_core::quantity::field::COUNT;
use core::ffi::c_char;
use std::borrow::Cow;

/// A function of the core and the struct that takes its answer.
#[derive(Debug)]
pub struct Shape {
    /// The function.
    pub function: &'static Function,
    /// The size of the struct.
    pub size: usize,
    /// Where each output goes, in the order of the function's outputs.
    pub outputs: &'static [usize],
    /// Where the bits of the range cautions go.
    pub cautions: usize,
    /// Where it is said that somebody may be hurt.
    pub danger: usize,
    /// Where the number of cautions goes.
    pub caution_count: usize,
}

/// Values of one input of an array call.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_series {
    /// any name of the vocabulary, such as "temperature_f"
    pub name: *const c_char,
    /// the values, in the unit of the name
    pub values: *const f64,
    /// how many: 1 (the same for every element), or as many as there are elements
    pub count: usize,
}

impl Shape {
    fn blank(&self, place: Place) {
        for &offset in self.outputs {
            place.write(offset, f64::NAN);
        }
        place.write(self.cautions, 0u32);
        place.write(self.danger, 0i32);
        place.write(self.caution_count, 0i32);
        place.mark_unknown(self.size);
    }
}

/// One answer.
///
/// # Safety
/// Each pointer is NULL or points to a struct as long as its `struct_size` says.
pub(crate) unsafe fn one<R>(shape: &Shape, inputs: *const carb_inputs, result: *mut R, error: *mut carb_error) -> i32 {
    // SAFETY: by the contract of this function.
    let place = || unsafe { Place::new(result, "result") };
    let body = || {
        let place = place()?;
        let request = inputs::request(inputs)?;
        let answer = shape.function.answer(&request, &mut NoSteps)?;
        shape.blank(place);
        let outputs = shape.function.outputs.iter().zip(answer.value.as_slice());
        for (&offset, (output, si)) in shape.outputs.iter().zip(outputs) {
            if let Some(dimension) = output.key.dimension() {
                place.write(offset, Unit::first(dimension).from_si(*si));
            }
        }
        let cautions = &answer.notes.cautions;
        place.write(shape.cautions, cautions.bits().cast_unsigned());
        place.write(shape.danger, i32::from(cautions.any(Level::Danger)));
        place.write(shape.caution_count, cautions.count() as i32);
        Ok(0)
    };
    let blank = |_| {
        if let Ok(place) = place() {
            shape.blank(place);
        }
    };
    // SAFETY: by the contract of this function.
    unsafe { guard(error, blank, body) }
}

/// The arguments of an array call, as they came.
pub(crate) struct Arrays {
    pub inputs: *const carb_inputs,
    pub series: *const carb_series,
    pub series_count: usize,
    pub output: *const c_char,
    pub n: usize,
    pub out: *mut f64,
    pub status: *mut i32,
}

/// Answers element by element.
///
/// # Safety
/// Each pointer is NULL or points to as much as is said of it: `out` and `status` to `n` elements, the values of a series
/// to its count, texts to a NUL.
pub(crate) unsafe fn each(function: &Function, arrays: &Arrays, error: *mut carb_error) -> i32 {
    let &Arrays { n, out, status, .. } = arrays;
    let body = || {
        if n > 0 {
            boundary::count::<f64>(n, "n")?;
            boundary::pointer(out, "out")?;
            boundary::pointer(status, "status")?;
        }
        // SAFETY: by the contract of this function.
        unsafe { each_checked(function, arrays) }
    };
    let blank = |code| {
        if boundary::count::<f64>(n, "n").is_ok() {
            // SAFETY: each is NULL or has n elements, by the contract.
            unsafe {
                boundary::fill(out, n, f64::NAN);
                boundary::fill(status, n, code);
            }
        }
    };
    // SAFETY: by the contract of this function.
    unsafe { guard(error, blank, body) }
}

unsafe fn each_checked(function: &Function, arrays: &Arrays) -> Result<i32, Fault> {
    let &Arrays { n, out, status, .. } = arrays;
    let mut request = inputs::request(arrays.inputs)?;
    // SAFETY: by the contract of `each`.
    let (which, unit) = wanted(function, unsafe { boundary::name(arrays.output, "output") }?)?;
    if arrays.series_count > COUNT {
        return Err(Fault::face(carb_status::CARB_BAD_COUNT, "series_count", "there are more series than names"));
    }
    let targets = (bytes(out, n), bytes(status, n));
    if overlap(&targets.0, &targets.1) {
        return Err(Fault::face(carb_status::CARB_OVERLAP, "status", "out and status lie over each other"));
    }
    // SAFETY: by the contract of `each`.
    let given = unsafe { boundary::slice(arrays.series, arrays.series_count, "series") }?;
    let mut columns = Vec::with_capacity(given.len());
    for series in given {
        // SAFETY: by the contract of `each`.
        let name = Request::name(unsafe { boundary::name(series.name, "series.name") }?)?;
        if series.count != 1 && series.count != n {
            let text = format!("a series has 1 value or as many as there are elements, not {}", series.count);
            return Err(Fault::face(carb_status::CARB_BAD_COUNT, name.spelling().as_str(), text));
        }
        // SAFETY: by the contract of `each`; it is copied where it lies over what will be written.
        let values = unsafe { boundary::slice(series.values, series.count, "series.values") }?;
        let over = bytes(series.values, series.count);
        let values = match overlap(&over, &targets.0) || overlap(&over, &targets.1) {
            true => Cow::Owned(values.to_vec()),
            false => Cow::Borrowed(values),
        };
        match (series.count, &*values) {
            (1, &[one]) if !function.varies(name.key) => request.put(name, Raw::Number(one))?,
            _ => columns.push((name, values)),
        }
    }
    let series: Vec<Series<'_>> = columns.iter().map(|(name, values)| Series { name: *name, values }).collect();
    // SAFETY: n elements each, which nothing else lies over: the series that did were copied.
    let (out, status) = match n {
        0 => (&mut [][..], &mut [][..]),
        _ => unsafe { (core::slice::from_raw_parts_mut(out, n), core::slice::from_raw_parts_mut(status, n)) },
    };
    let statuses = Statuses::Every(status);
    function
        .each(&request, Slices { count: n, series: &series, which, unit, out, also: None, statuses, keep: None })?;
    Ok(0)
}

/// Which output a name means, and in which unit.
pub(crate) fn wanted(function: &Function, name: &str) -> Result<(usize, &'static Unit), Fault> {
    if let Some(found) = function.find_output(name) {
        return Ok(found);
    }
    let known = function.outputs.iter().filter_map(|output| {
        let dimension = output.key.dimension()?;
        Some(Function::output_name(*output, Unit::first(dimension)).to_string())
    });
    let known = known.collect::<Vec<_>>().join(", ");
    let text = format!("{} has no output \"{name}\": it has {known}, each in any unit", function.name);
    Err(Fault::face(carb_status::CARB_UNKNOWN_OUTPUT, name, text))
}

/// The memory of an array.
fn bytes<T>(first: *const T, count: usize) -> core::ops::Range<usize> {
    first.addr()..first.wrapping_add(count).addr()
}

fn overlap(a: &core::ops::Range<usize>, b: &core::ops::Range<usize>) -> bool {
    a.start < b.end && b.start < a.end
}

/// Converts a value between two units of one kind by their names, such as "psi" to "kpa". Between gauge and absolute
/// pressure nothing is converted: that takes the air outside.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_convert(
    from_name: *const c_char,
    to_name: *const c_char,
    value: f64,
    out: *mut f64,
    error: *mut carb_error,
) -> i32 {
    let unit = |text: *const c_char, what| {
        // SAFETY: NULL or a text with an end, by the contract.
        let name = unsafe { boundary::name(text, what) }?;
        Unit::named(name).ok_or_else(|| {
            let text = format!("there is no unit \"{name}\": a unit is the end of a name, such as psi in gauge_psi");
            Fault::face(carb_status::CARB_UNKNOWN_UNIT, what, text)
        })
    };
    let body = || {
        boundary::pointer(out, "out")?;
        let (from, to) = (unit(from_name, "from_name")?, unit(to_name, "to_name")?);
        if from.dimension != to.dimension {
            let text = format!("{} and {} do not measure the same kind of thing", from.name, to.name);
            return Err(Fault::face(carb_status::CARB_UNKNOWN_UNIT, "to_name", text));
        }
        let converted = from.convert(value, to);
        if !converted.is_finite() {
            let text = "value is not a finite number in both units";
            return Err(Fault::Face {
                status: carb_status::CARB_NOT_A_NUMBER,
                parameter: "value".into(),
                text: text.into(),
            });
        }
        // SAFETY: not NULL and aligned, by the check above.
        unsafe { *out = converted };
        Ok(0)
    };
    let blank = |_| {
        if boundary::pointer(out, "out").is_ok() {
            // SAFETY: as above.
            unsafe { *out = f64::NAN };
        }
    };
    // SAFETY: `error` is NULL or a `carb_error`, by the contract.
    unsafe { guard(error, blank, body) }
}

// The statuses of the core have one number everywhere.
const _: () = assert!(carb_status::CARB_NOT_A_NUMBER as i32 == code::NOT_A_NUMBER);
