//! The native half of the Python package `carb`: it turns Python values into a request of the core and the core's
//! answers into Python values. Everything else, arithmetic and constants above all, is the core's; the names, types and
//! texts of the Python functions are written from the core's tables by `generate.py`.

use carb_core::Error;
use carb_core::basis::function::Slices;
use carb_core::basis::kernel::Series;
use carb_core::basis::lists::{LISTS, ROWS_WANTED, not_taken};
use carb_core::basis::request::{Raw, Value, choices};
use carb_core::basis::{Function, List, Refusal, Request, Values};
use carb_core::evidence::NoSteps;
use carb_core::evidence::caution::CAUTIONS;
use carb_core::plan::json;
use carb_core::quantity::field::Kind;
use carb_core::quantity::{Name, Unit};
use carb_core::table::functions;
use numpy::{PyArray1, PyReadonlyArray1};
use pyo3::exceptions::{PyRuntimeError, PyValueError};
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyDict, PyList, PyString, PyType};
use std::borrow::Cow;
use std::panic::{AssertUnwindSafe, catch_unwind};

mod checks;
mod crosscheck;

/// Runs what the core does; a panic, which would be a defect of the core, becomes a `RuntimeError`.
fn guarded<T>(work: impl FnOnce() -> T) -> PyResult<T> {
    catch_unwind(AssertUnwindSafe(work))
        .map_err(|_| PyRuntimeError::new_err("carb failed inside, which should not happen: please report the inputs"))
}

/// Runs what the core does; its error becomes a `carb.CarbError`.
fn core<T, E: Into<Refusal>>(py: Python<'_>, work: impl FnOnce() -> Result<T, E>) -> PyResult<T> {
    guarded(work)?.map_err(|error| raised(py, error))
}

fn raised(py: Python<'_>, refused: impl Into<Refusal>) -> PyErr {
    static CLASS: PyOnceLock<Py<PyType>> = PyOnceLock::new();
    let refusal: Refusal = refused.into();
    let error = &refusal.error;
    let (low, high) = error.limits().unzip();
    let (list, row) = refusal.place.unzip();
    let element: Option<usize> = None;
    let at = error.parameter().as_str().to_owned();
    let parts = (refusal.to_string(), error.code(), at, error.value(), low, high, element, list, row);
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
    Request::name(text).map_err(|error| raised(py, error))
}

/// A key of a mapping. What is no text is no name either, and the core's error says so.
fn spelled(key: &Bound<'_, PyAny>) -> PyResult<String> {
    Ok(key.str()?.to_string_lossy().into_owned())
}

/// Sets a value by its name.
fn set(request: &mut Request, name: &str, value: &Bound<'_, PyAny>) -> Result<(), Error> {
    if value.is_none() {
        // Nothing was given, but under a name that there is.
        Request::name(name).map(|_| ())
    } else if let Ok(flag) = value.extract::<bool>() {
        request.set(name, Raw::Flag(flag))
    } else if let Ok(text) = value.cast::<PyString>() {
        let text: Cow<'_, str> = text.to_string_lossy();
        request.set(name, Raw::Text(&text))
    } else if let Ok(number) = value.extract::<f64>() {
        request.set(name, Raw::Number(number))
    } else {
        request.set(name, Raw::Other)
    }
}

/// The rows of a list: a `list` of `dict`s.
fn read_rows(list: &'static List, value: &Bound<'_, PyAny>) -> PyResult<Vec<Request>> {
    let py = value.py();
    let wrong = Error::WrongList { list: list.name, advice: ROWS_WANTED };
    let Ok(given) = value.cast::<PyList>() else { return Err(raised(py, wrong)) };
    let mut rows = Vec::new();
    for (at, row) in given.iter().enumerate() {
        let placed = |error: Error| raised(py, Refusal { error, place: Some((list.name, at + 1)) });
        let Ok(cells) = row.cast::<PyDict>() else { return Err(raised(py, wrong)) };
        let mut request = Request::new();
        for (name, cell) in cells.iter() {
            let columns = list.columns.iter().map(|column| column.key);
            set(&mut request, &spelled(&name)?, &cell).map_err(|error| placed(error.nearest_of(columns)))?;
        }
        rows.push(request);
    }
    Ok(rows)
}

/// The lists of a request that were given, with their rows.
type Given = Vec<(&'static List, Vec<Request>)>;

/// Reads names and values, and lists where they are taken. `None` means that nothing was given.
fn read_with(given: &Bound<'_, PyDict>, take: bool) -> PyResult<(Request, Given)> {
    let (mut request, mut lists) = (Request::new(), Given::new());
    for (name, value) in given.iter() {
        let name = spelled(&name)?;
        match LISTS.iter().find(|list| list.name == name) {
            Some(_) if value.is_none() => {}
            Some(list) if take => lists.push((list, read_rows(list, &value)?)),
            Some(list) => return Err(raised(given.py(), not_taken(list))),
            None => set(&mut request, &name, &value).map_err(|error| raised(given.py(), error))?,
        }
    }
    lists.sort_by_key(|(list, _)| LISTS.iter().position(|known| known.name == list.name));
    Ok((request, lists))
}

/// Reads names and values of a function that takes no lists.
fn read(given: &Bound<'_, PyDict>) -> PyResult<Request> {
    Ok(read_with(given, false)?.0)
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
    result.map_err(|error| raised(py, error))?;
    Ok((PyArray1::from_vec(py, out), PyArray1::from_vec(py, status)))
}

/// Checks names and values without answering, and gives them back in the order of the vocabulary; lists, where they are
/// taken, behind them.
#[pyfunction]
#[pyo3(signature = (given, lists=true))]
fn request<'py>(py: Python<'py>, given: &Bound<'py, PyDict>, lists: bool) -> PyResult<Bound<'py, PyDict>> {
    let (request, given) = read_with(given, lists)?;
    let all = echo(py, &request)?;
    for (list, rows) in given {
        let rows: Vec<_> = rows.iter().map(|row| echo(py, row)).collect::<PyResult<_>>()?;
        all.set_item(list.name, rows)?;
    }
    Ok(all)
}

/// The names of the lists that a request may hold.
#[pyfunction]
fn lists() -> Vec<&'static str> {
    LISTS.iter().map(|list| list.name).collect()
}

/// What a name of the vocabulary takes.
#[pyfunction]
fn kind(py: Python<'_>, name: &str) -> PyResult<&'static str> {
    Ok(match known(py, name)?.key.field().kind {
        Kind::Number { .. } => "number",
        Kind::Choice => "choice",
        Kind::Flag => "flag",
        _ => "text",
    })
}

/// Answers a request in JSON: that of a function, of a table, or of a job.
#[pyfunction(name = "json")]
fn json_text(function: &str, text: &str) -> PyResult<String> {
    guarded(|| json::answer_text(function, text))
}

/// The page of a plan.
#[pyfunction]
fn plan_page(py: Python<'_>, text: &str) -> PyResult<String> {
    core(py, || json::plan_of(text).map(|plan| plan.to_text()))
}

/// The page of a bottling.
#[pyfunction]
fn bottling_page(py: Python<'_>, text: &str) -> PyResult<String> {
    core(py, || json::bottling_of(text).map(|bottling| bottling.to_text()))
}

/// The page of a kegging.
#[pyfunction]
fn kegging_page(py: Python<'_>, text: &str) -> PyResult<String> {
    core(py, || json::kegging_of(text).map(|kegging| kegging.to_text()))
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
    use super::{
        Record, answer, bottling_page, caution_codes, codes, each, json_text, kegging_page, kind, lists, plan_page,
        request, tables,
    };

    #[pymodule_export]
    use super::checks::checks;
    #[pymodule_export]
    use super::crosscheck::{Crosscheck, claims_checked, crosscheck, crosscheck_merged};

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
