//! What Python gives: names and values, and lists of rows.

use crate::raised;
use carb_core::Error;
use carb_core::basis::lists::{LISTS, ROWS_WANTED, not_taken};
use carb_core::basis::request::{Raw, Value, choices};
use carb_core::basis::{List, Refusal, Request};
use carb_core::quantity::{Key, Name};
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyBool, PyDict, PyFloat, PyInt, PyList, PyString};
use std::collections::HashMap;
use std::hash::{BuildHasherDefault, Hasher};
use std::sync::LazyLock;

/// Every name of the vocabulary by its spelling, so that a call need not look through them all.
static NAMES: LazyLock<HashMap<String, Name>> = LazyLock::new(|| {
    let all = Key::ALL.iter().flat_map(|&key| Name::of(key));
    all.map(|name| (name.spelling().as_str().to_owned(), name)).collect()
});

/// The name that `text` spells; the core's error says what was meant.
pub fn known(text: &str) -> Result<Name, Error> {
    NAMES.get(text).copied().map_or_else(|| Request::name(text), Ok)
}

/// The names by the place of the interned text that spells them: the keywords of a call are such texts, so that most calls
/// need not look at a letter.
static PLACES: PyOnceLock<HashMap<usize, Name, BuildHasherDefault<Place>>> = PyOnceLock::new();

/// The hash of a place in memory: it needs no more than being spread.
#[derive(Default)]
struct Place(u64);

impl Hasher for Place {
    fn write(&mut self, bytes: &[u8]) {
        bytes.iter().for_each(|&byte| self.write_usize(byte.into()));
    }
    fn write_usize(&mut self, place: usize) {
        // The golden ratio of 2^64, an odd number without a pattern.
        self.0 = (self.0 ^ place as u64).wrapping_mul(0x9e37_79b9_7f4a_7c15);
    }
    fn finish(&self) -> u64 {
        self.0 ^ (self.0 >> 32)
    }
}

/// The name of a keyword, where it is one of the vocabulary and was written in code.
pub fn keyword(name: &Bound<'_, PyAny>) -> Option<Name> {
    let places = PLACES.get_or_init(name.py(), || {
        // The interpreter keeps an interned text only while somebody has it: these are never given back.
        let place = |text: &String| PyString::intern(name.py(), text).into_ptr() as usize;
        NAMES.iter().map(|(text, name)| (place(text), *name)).collect()
    });
    places.get(&(name.as_ptr() as usize)).copied()
}

/// A key of a mapping. What is no text is no name either, and the core's error says so.
fn spelled(key: &Bound<'_, PyAny>) -> PyResult<String> {
    Ok(key.str()?.to_string_lossy().into_owned())
}

/// A value as the core looks at it; `None` where nothing was given.
fn with_raw<T>(value: &Bound<'_, PyAny>, then: impl FnOnce(Option<Raw<'_>>) -> T) -> T {
    // The usual kinds first, by their type alone: a call with numbers should cost no more than it must.
    if let Ok(number) = value.cast::<PyFloat>() {
        then(Some(Raw::Number(number.value())))
    } else if value.is_none() {
        then(None)
    } else if let Ok(text) = value.cast::<PyString>() {
        then(Some(Raw::Text(&text.to_string_lossy())))
    } else if let Ok(flag) = value.cast::<PyBool>() {
        then(Some(Raw::Flag(flag.is_true())))
    } else if value.is_instance_of::<PyInt>() {
        then(Some(value.extract::<f64>().map_or(Raw::Other, Raw::Number)))
    } else if let Ok(flag) = value.extract::<bool>() {
        then(Some(Raw::Flag(flag)))
    } else {
        then(Some(value.extract::<f64>().map_or(Raw::Other, Raw::Number)))
    }
}

/// Sets a value by its name. What is `None` was not given, but under a name that there is.
pub fn set(request: &mut Request, name: &str, value: &Bound<'_, PyAny>) -> Result<(), Error> {
    let name = known(name)?;
    with_raw(value, |raw| raw.map_or(Ok(()), |raw| request.put(name, raw)))
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
pub type Given = Vec<(&'static List, Vec<Request>)>;

/// The list of a name.
pub fn list(name: &str) -> Option<&'static List> {
    LISTS.iter().copied().find(|list| list.name == name)
}

/// Reads names and values, and lists where they are taken. `None` means that nothing was given.
pub fn read_with(given: &Bound<'_, PyDict>, take: bool) -> PyResult<(Request, Given)> {
    let (mut request, mut lists) = (Request::new(), Given::new());
    for (name, value) in given.iter() {
        let name = spelled(&name)?;
        match list(&name) {
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
pub fn read(given: &Bound<'_, PyDict>) -> PyResult<Request> {
    Ok(read_with(given, false)?.0)
}

/// Names and values as they were given, in the order of the vocabulary.
pub fn echo<'py>(py: Python<'py>, request: &Request) -> PyResult<Bound<'py, PyDict>> {
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
