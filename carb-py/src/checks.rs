//! What the installed package checks itself against.

use pyo3::prelude::*;

/// The published values of the core, and the packed conformance cases (`build.rs`), by name.
const FILES: [(&str, &str); 5] = [
    ("functions.csv", include_str!("../../carb-core/checks/published/functions.csv")),
    ("kegging_pressure.csv", include_str!("../../carb-core/checks/published/kegging_pressure.csv")),
    ("kegging_line.csv", include_str!("../../carb-core/checks/published/kegging_line.csv")),
    ("kegging_gas.csv", include_str!("../../carb-core/checks/published/kegging_gas.csv")),
    ("cases.tsv", include_str!(concat!(env!("OUT_DIR"), "/cases.tsv"))),
];

/// The files that the package was built with, by name: published check values, and the conformance cases.
#[pyfunction]
pub fn checks() -> Vec<(&'static str, &'static str)> {
    FILES.to_vec()
}
