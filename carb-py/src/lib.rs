//! The native half of the Python package `carb`: it turns Python values into a request of the core and the core's
//! answers into Python values. Everything else, arithmetic and constants above all, is the core's; the names, types and
//! texts of the Python functions are written from the core's tables by `generate.py`.

use carb_core::Error;
use carb_core::basis::function::Slices;
use carb_core::basis::kernel::Series;
use carb_core::basis::request::{Raw, Value, choices};
use carb_core::basis::{Function, Request, Values};
use carb_core::evidence::NoSteps;
use carb_core::evidence::caution::CAUTIONS;
use carb_core::plan::json;
use carb_core::quantity::{Name, Unit};
use carb_core::table::functions;
use numpy::{PyArray1, PyReadonlyArray1};
use pyo3::exceptions::{PyRuntimeError, PyValueError};
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyBool, PyDict, PyString, PyType};
use std::panic::{AssertUnwindSafe, catch_unwind};

/// Runs what the core does; a panic, which would be a defect of the core, becomes a `RuntimeError`.
fn guarded<T>(work: impl FnOnce() -> T) -> PyResult<T> {
    catch_unwind(AssertUnwindSafe(work))
        .map_err(|_| PyRuntimeError::new_err("carb failed inside, which should not happen: please report the inputs"))
}

/// Runs what the core does; its error becomes a `carb.CarbError`.
fn core<T>(py: Python<'_>, work: impl FnOnce() -> Result<T, Error>) -> PyResult<T> {
    guarded(work)?.map_err(|error| raised(py, &error))
}

fn raised(py: Python<'_>, error: &Error) -> PyErr {
    static CLASS: PyOnceLock<Py<PyType>> = PyOnceLock::new();
    let (low, high) = error.limits().unzip();
    let parts = (error.to_string(), error.code(), error.parameter().as_str().to_owned(), error.value(), low, high);
    match CLASS.import(py, "carb._errors", "CarbError").and_then(|class| class.call1(parts)) {
        Ok(instance) => PyErr::from_value(instance),
        Err(failed) => failed,
    }
}

fn named(function: &str) -> PyResult<&'static Function> {
    functions::named(function).ok_or_else(|| PyValueError::new_err(format!("there is no function {function}")))
}

/// The name that `text` spells; the core's error says what was meant.
fn known(py: Python<'_>, text: &str) -> PyResult<Name> {
    Request::name(text).map_err(|error| raised(py, &error))
}

/// Reads names and values. `None` means that nothing was given.
fn read(given: &Bound<'_, PyDict>) -> PyResult<Request> {
    let mut request = Request::new();
    for (name, value) in given.iter() {
        let name = name.cast::<PyString>()?.to_str()?;
        let result = if value.is_none() {
            known(given.py(), name).map(|_| ())?;
            continue;
        } else if let Ok(flag) = value.cast::<PyBool>() {
            request.set(name, Raw::Flag(flag.is_true()))
        } else if let Ok(text) = value.cast::<PyString>() {
            request.set(name, Raw::Text(text.to_str()?))
        } else if let Ok(number) = value.extract::<f64>() {
            request.set(name, Raw::Number(number))
        } else {
            request.set(name, Raw::Other)
        };
        result.map_err(|error| raised(given.py(), &error))?;
    }
    Ok(request)
}

/// Names and values as they were given, in the order of the vocabulary.
fn echo<'py>(py: Python<'py>, request: &Request) -> PyResult<Bound<'py, PyDict>> {
    let given = PyDict::new(py);
    for name in request.given() {
        let key = name.spelling();
        match request.get(name.key) {
            Some(Value::Number(number, _)) => given.set_item(key.as_str(), number)?,
            Some(Value::Choice(at)) => given.set_item(key.as_str(), choices(name.key).get(at))?,
            Some(Value::Flag(flag)) => given.set_item(key.as_str(), flag)?,
            Some(Value::Text(text)) => given.set_item(key.as_str(), text.as_str())?,
            None => {}
        }
    }
    Ok(given)
}

/// The output that `name` spells: its place in [`Function::outputs`], and the unit.
fn output(function: &'static Function, name: &str) -> PyResult<(usize, &'static Unit)> {
    function.find_output(name).ok_or_else(|| PyValueError::new_err(format!("{} gives no {name}", function.name)))
}

/// The answer to one request.
#[pyclass(frozen, module = "carb._carb")]
struct Record {
    function: &'static Function,
    request: Request,
    values: Values,
}

#[pymethods]
impl Record {
    /// The value of an output by its name, such as `worst_gauge_bar`.
    fn value(&self, name: &str) -> PyResult<f64> {
        let (at, unit) = output(self.function, name)?;
        Ok(unit.from_si(self.values.as_slice()[at]))
    }

    /// Names and values as they were given, in the order of the vocabulary.
    #[getter]
    fn request<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        echo(py, &self.request)
    }
}

/// Answers one request.
#[pyfunction]
fn answer(py: Python<'_>, function: &str, given: &Bound<'_, PyDict>) -> PyResult<Record> {
    let (function, request) = (named(function)?, read(given)?);
    let answer = core(py, || function.answer(&request, &mut NoSteps))?;
    Ok(Record { function, request, values: answer.value })
}

/// The values and the statuses of one output.
type Elements<'py> = (Bound<'py, PyArray1<f64>>, Bound<'py, PyArray1<i32>>);

/// Answers element by element: `arrays` vary, each with one element or `count`; `given` is the same for all.
#[pyfunction(name = "each")]
fn each<'py>(
    py: Python<'py>,
    function: &str,
    given: &Bound<'py, PyDict>,
    arrays: &Bound<'py, PyDict>,
    count: usize,
    name: &str,
) -> PyResult<Elements<'py>> {
    let (function, request) = (named(function)?, read(given)?);
    let (which, unit) = output(function, name)?;
    let mut columns: Vec<(Name, PyReadonlyArray1<'py, f64>)> = Vec::new();
    for (name, values) in arrays.iter() {
        columns.push((known(py, name.cast::<PyString>()?.to_str()?)?, values.extract()?));
    }
    let mut series = Vec::new();
    for (name, values) in &columns {
        let values = values.as_slice()?;
        if values.len() != 1 && values.len() != count {
            return Err(PyValueError::new_err(format!("{name} has {} elements, not {count}", values.len())));
        }
        series.push(Series { name: *name, values });
    }
    let (mut out, mut status) = (vec![0.0; count], vec![0; count]);
    let slices = Slices { series: &series, which, unit, out: &mut out, status: &mut status };
    let result = py.detach(|| guarded(|| function.each(&request, slices)))?;
    result.map_err(|error| raised(py, &error))?;
    Ok((PyArray1::from_vec(py, out), PyArray1::from_vec(py, status)))
}

/// Checks names and values without answering, and gives them back in the order of the vocabulary.
#[pyfunction]
fn request<'py>(py: Python<'py>, given: &Bound<'py, PyDict>) -> PyResult<Bound<'py, PyDict>> {
    echo(py, &read(given)?)
}

/// Answers a request in JSON: a function's, or that of `plan`.
#[pyfunction(name = "json")]
fn json_text(function: &str, text: &str) -> PyResult<String> {
    guarded(|| json::answer_text(function, text))
}

/// The page of a plan.
#[pyfunction]
fn plan_page(py: Python<'_>, text: &str) -> PyResult<String> {
    core(py, || Ok(json::plan_of(text)?.to_text()))
}

/// The functions of the library, their inputs and outputs, as JSON.
#[pyfunction]
fn tables() -> PyResult<String> {
    guarded(json::tables_text)
}

/// The names and numbers of the error codes.
#[pyfunction]
fn codes() -> Vec<(&'static str, i32)> {
    carb_core::error::code::ALL.to_vec()
}

/// The codes, levels and status bits of the cautions.
#[pyfunction]
fn caution_codes() -> Vec<(&'static str, &'static str, Option<u8>)> {
    CAUTIONS.iter().map(|kind| (kind.code, kind.level.word(), kind.bit)).collect()
}

#[pymodule(name = "_carb")]
mod native {
    #[pymodule_export]
    use super::{Record, answer, caution_codes, codes, each, json_text, plan_page, request, tables};

    #[pymodule_export]
    #[allow(non_upper_case_globals)]
    const __version__: &str = env!("CARGO_PKG_VERSION");
}

#[cfg(test)]
mod test {
    use super::{PyRuntimeError, Python, guarded};

    #[test]
    fn a_panic_becomes_an_exception() {
        Python::initialize();
        Python::attach(|py| {
            let caught: pyo3::PyResult<()> = guarded(|| panic!("a defect"));
            assert!(caught.is_err_and(|error| error.is_instance_of::<PyRuntimeError>(py)));
        });
    }
}
