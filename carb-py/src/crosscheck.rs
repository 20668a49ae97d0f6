//! The cross-check: what other programs claim, and which assumptions reproduce it.

use crate::{core, guarded};
use carb_core::crosscheck::{Crosscheck as Whole, json};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;

/// The answer to some claims.
#[pyclass(frozen, module = "carb._carb")]
pub struct Crosscheck(Whole);

#[pymethods]
impl Crosscheck {
    /// The answer as JSON.
    fn json(&self, py: Python<'_>) -> PyResult<String> {
        py.detach(|| guarded(|| json::answer(&self.0)))
    }

    /// The answer as a page of text.
    fn page(&self, py: Python<'_>) -> PyResult<String> {
        py.detach(|| guarded(|| self.0.to_text()))
    }

    /// Whether a claim that somebody relies on may hurt them.
    #[getter]
    fn danger(&self) -> PyResult<bool> {
        guarded(|| self.0.danger())
    }
}

/// Answers claims in JSON. Other threads go on while it works.
#[pyfunction]
pub fn crosscheck(py: Python<'_>, text: &str) -> PyResult<Crosscheck> {
    let answered = py.detach(|| guarded(|| json::crosscheck_of(text)))?;
    core(py, || answered).map(Crosscheck)
}

/// Puts answers together, each with the places of its claims among all, counted from 0. Claims of one program have to be
/// in one of them.
#[pyfunction]
pub fn crosscheck_merged(py: Python<'_>, parts: Vec<(Vec<usize>, PyRef<'_, Crosscheck>)>) -> PyResult<Crosscheck> {
    let mut taken: Vec<usize> = parts.iter().flat_map(|(places, _)| places.iter().copied()).collect();
    taken.sort_unstable();
    let each = parts.iter().all(|(places, part)| places.len() == part.0.claims.len());
    if !each || taken.iter().enumerate().any(|(at, &place)| at != place) {
        return Err(PyValueError::new_err("every claim should have a place of its own"));
    }
    let parts: Vec<(Vec<usize>, Whole)> = parts.into_iter().map(|(places, part)| (places, part.0.clone())).collect();
    py.detach(|| guarded(|| Whole::merged(parts))).map(Crosscheck)
}

/// Refuses claims in JSON that are malformed, as [`crosscheck`] does, and looks into none.
#[pyfunction]
pub fn claims_checked(py: Python<'_>, text: &str) -> PyResult<()> {
    let read = py.detach(|| guarded(|| json::read(text).map(|_| ())))?;
    core(py, || read)
}
