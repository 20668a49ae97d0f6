//! The answer to one request, and the functions that give it.

use crate::given::{echo, keyword, known, list, read, set};
use crate::{core, function_named, raised};
use carb_core::basis::lists::not_taken;
use carb_core::basis::request::Raw;
use carb_core::basis::{Function, Request, Values};
use carb_core::evidence::NoSteps;
use carb_core::quantity::Unit;
use carb_core::table::FUNCTIONS;
use pyo3::exceptions::PyValueError;
use pyo3::intern;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyFloat, PyInt, PyString, PyType};
use std::collections::HashMap;
use std::ptr;
use std::sync::LazyLock;

type Outputs = HashMap<String, (usize, &'static Unit)>;

/// The outputs of every function by their names, nouns before.
static OUTPUTS: LazyLock<HashMap<&'static str, Outputs>> = LazyLock::new(|| {
    let of = |function: &&'static Function| {
        let mut all = Outputs::new();
        for (at, &output) in function.outputs.iter().enumerate() {
            for unit in output.key.dimension().into_iter().flat_map(Unit::of) {
                let name = Function::output_name(output, unit);
                all.entry(name.as_str().to_owned()).or_insert((at, unit));
            }
        }
        (function.name, all)
    };
    FUNCTIONS.iter().map(of).collect()
});

/// The output that `name` spells: its place in [`Function::outputs`], and the unit.
pub fn output(function: &'static Function, name: &str) -> PyResult<(usize, &'static Unit)> {
    let found = OUTPUTS.get(function.name).and_then(|outputs| outputs.get(name)).copied();
    found.ok_or_else(|| PyValueError::new_err(format!("{} gives no {name}", function.name)))
}

/// The answer to one request.
#[pyclass(frozen, module = "carb._carb")]
pub struct Record {
    function: &'static Function,
    outputs: &'static Outputs,
    /// What was given, which nobody else has: a request is larger, and seldom asked for again.
    given: Py<PyDict>,
    values: Values,
}

impl Record {
    fn of(
        function: &'static Function,
        outputs: &'static Outputs,
        request: &Request,
        given: &Bound<'_, PyDict>,
    ) -> PyResult<Self> {
        // Only the values are handed on: with its notes an answer is large.
        let values = core(given.py(), || function.answer(request, &mut NoSteps).map(|answer| answer.value))?;
        Ok(Self { function, outputs, given: given.clone().unbind(), values })
    }
}

#[pymethods]
impl Record {
    /// The value of an output by its name, such as `worst_gauge_bar`.
    fn value(&self, name: &str) -> PyResult<f64> {
        match self.outputs.get(name) {
            Some(&(at, unit)) => Ok(unit.from_si(self.values.as_slice()[at])),
            None => output(self.function, name).map(|_| f64::NAN),
        }
    }

    /// Names and values as they were given, in the order of the vocabulary.
    #[getter]
    fn request<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        echo(py, &read(self.given.bind(py))?)
    }
}

/// The unit of an output by its name, such as `bar`.
#[pyfunction]
pub fn output_unit(function: &str, name: &str) -> PyResult<&'static str> {
    Ok(output(function_named(function)?, name)?.1.name)
}

/// Answers one request.
#[pyfunction]
pub fn answer(function: &str, given: &Bound<'_, PyDict>) -> PyResult<Record> {
    let own = given.copy()?;
    let function = function_named(function)?;
    Record::of(function, &OUTPUTS[function.name], &read(&own)?, &own)
}

/// A function of the library for Python: numbers are answered here, the direct way; whatever else is given goes to `other`.
#[pyclass(frozen, module = "carb._carb")]
pub struct Call {
    function: &'static Function,
    outputs: &'static Outputs,
    kind: Py<PyType>,
    other: Py<PyAny>,
}

#[pymethods]
impl Call {
    #[new]
    fn new(function: &str, kind: Py<PyType>, other: Py<PyAny>) -> PyResult<Self> {
        let function = function_named(function)?;
        Ok(Self { function, outputs: &OUTPUTS[function.name], kind, other })
    }

    /// Answers; `given` is the call's own.
    fn answer<'py>(&self, py: Python<'py>, given: &Bound<'py, PyDict>) -> PyResult<Bound<'py, PyAny>> {
        let mut request = Request::new();
        for (name, value) in given.iter() {
            // Most calls are of keywords and numbers.
            if let Some(name) = keyword(&name)
                && let Some(number) = number(&value)
            {
                request.put(name, Raw::Number(number)).map_err(|error| raised(py, error))?;
                continue;
            }
            let name = name.cast::<PyString>()?.to_str()?;
            let plain = value.is_none()
                || value.is_instance_of::<PyFloat>()
                || value.is_instance_of::<PyInt>()
                || value.is_instance_of::<PyString>();
            if !plain || name == "errors" {
                return self.other.bind(py).call1((&self.kind, given));
            }
            match list(name) {
                Some(_) if value.is_none() => {}
                Some(list) => return Err(raised(py, not_taken(list))),
                None => set(&mut request, name, &value).map_err(|error| raised(py, error))?,
            }
        }
        self.wrap(py, Record::of(self.function, self.outputs, &request, given)?)
    }
}

/// A plain number.
fn number(value: &Bound<'_, PyAny>) -> Option<f64> {
    match value.cast::<PyFloat>() {
        Ok(number) => Some(number.value()),
        Err(_) => value.cast_exact::<PyInt>().ok()?.extract().ok(),
    }
}

impl Call {
    /// The record as a result. Its one member is set past the class, which lets nobody change it.
    fn wrap<'py>(&self, py: Python<'py>, record: Record) -> PyResult<Bound<'py, PyAny>> {
        // SAFETY: the class is one of Python's own, made without arguments.
        let result = unsafe {
            let made = pyo3::ffi::PyType_GenericNew(self.kind.as_ptr().cast(), ptr::null_mut(), ptr::null_mut());
            Bound::from_owned_ptr_or_err(py, made)?
        };
        let record = Bound::new(py, record)?;
        let name = intern!(py, "_answer");
        // SAFETY: three valid objects, and the interpreter is attached.
        let set = unsafe { pyo3::ffi::PyObject_GenericSetAttr(result.as_ptr(), name.as_ptr(), record.as_ptr()) };
        if set == 0 { Ok(result) } else { Err(PyErr::fetch(py)) }
    }
}

/// The name that a text spells, for faces that ask whether there is one.
pub fn spelt(py: Python<'_>, text: &str) -> PyResult<carb_core::quantity::Name> {
    known(text).map_err(|error| raised(py, error))
}
