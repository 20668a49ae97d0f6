//! The native half of the Python package `carb`: it turns Python values into a request of the core and the core's
//! answers into Python values. Everything else, arithmetic and constants above all, is the core's; the names, types and
//! texts of the Python functions are written from the core's tables by `generate.py`.

use carb_core::basis::lists::LISTS;
use carb_core::basis::{Function, Refusal};
use carb_core::evidence::caution::CAUTIONS;
use carb_core::plan::{json, json_tables};
use carb_core::quantity::field::Kind;
use carb_core::quantity::{Name, Unit};
use carb_core::table::functions;
use given::{echo, read_with};
use numpy::{PyArray1, PyReadonlyArray1};
use pyo3::exceptions::{PyRuntimeError, PyValueError};
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyDict, PyType};
use std::panic::{AssertUnwindSafe, catch_unwind};

mod checks;
mod columns;
mod crosscheck;
mod given;
mod record;
mod sheet;
mod ufunc;

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

fn function_named(name: &str) -> PyResult<&'static Function> {
    functions::named(name).ok_or_else(|| PyValueError::new_err(format!("there is no function {name}")))
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
    Ok(match record::spelt(py, name)?.key.field().kind {
        Kind::Number { .. } => "number",
        Kind::Choice => "choice",
        Kind::Flag => "flag",
        _ => "text",
    })
}

/// The unit of a name of the vocabulary, such as `psi`; empty where it has none.
#[pyfunction]
fn unit(py: Python<'_>, name: &str) -> PyResult<&'static str> {
    Ok(record::spelt(py, name)?.unit.map_or("", |unit| unit.name))
}

/// The first (metric) name of the same field.
#[pyfunction]
fn first_name(py: Python<'_>, name: &str) -> PyResult<String> {
    Ok(Name::first(record::spelt(py, name)?.key).spelling().as_str().to_owned())
}

/// Values of a unit in another of its kind.
#[pyfunction]
fn convert<'py>(
    py: Python<'py>,
    values: PyReadonlyArray1<'py, f64>,
    from_unit: &str,
    to_unit: &str,
) -> PyResult<Bound<'py, PyArray1<f64>>> {
    let unit = |name: &str| {
        let text = || format!("there is no unit \"{name}\": a unit is the end of a name, such as psi in gauge_psi");
        Unit::named(name).ok_or_else(text)
    };
    let same = |from: &'static Unit, to: &'static Unit| {
        let text = || format!("{from_unit} and {to_unit} do not measure the same kind of thing");
        (from.dimension == to.dimension).then_some((from, to)).ok_or_else(text)
    };
    let pair = unit(from_unit).and_then(|from| unit(to_unit).and_then(|to| same(from, to)));
    let (from, to) = pair.map_err(PyValueError::new_err)?;
    let converted = values.as_slice()?.iter().map(|&value| from.convert(value, to)).collect();
    Ok(PyArray1::from_vec(py, converted))
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
    guarded(json_tables::tables_text)
}

/// The schema of requests and answers, as JSON.
#[pyfunction]
fn schema() -> PyResult<String> {
    guarded(carb_core::plan::schema::schema_text)
}

/// One function, table or job, as JSON, as the whole of [`tables`] has it.
#[pyfunction]
fn described(name: &str) -> PyResult<String> {
    guarded(|| json_tables::described_text(name))
}

/// The names of the functions, of the tables and of the jobs.
#[pyfunction]
fn names() -> (Vec<&'static str>, Vec<&'static str>, Vec<&'static str>) {
    let functions = carb_core::table::FUNCTIONS.iter().map(|function| function.name).collect();
    let tables = carb_core::table::tables::TABLES.iter().map(|table| table.name).collect();
    (functions, tables, json_tables::JOBS.iter().map(|job| job.name).collect())
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
        bottling_page, caution_codes, codes, convert, described, first_name, json_text, kegging_page, kind, lists,
        names, plan_page, request, schema, tables, unit,
    };

    #[pymodule_export]
    use super::columns::{each, print};

    #[pymodule_export]
    use super::record::{Call, Record, answer, output_unit};

    #[pymodule_export]
    use super::ufunc::ufunc;

    #[pymodule_export]
    use super::checks::checks;

    #[pymodule_export]
    use super::sheet::{kernel, turned, unit_factors, worksheets};

    #[pymodule_export]
    use super::crosscheck::{Crosscheck, claims_checked, crosscheck, crosscheck_merged};

    #[pymodule_export]
    #[allow(non_upper_case_globals)]
    const __version__: &str = env!("CARGO_PKG_VERSION");

    #[pymodule_export]
    const SLACK: f64 = carb_core::evidence::caution::SLACK;
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
