//! What the workbook of plain formulas is generated from: the catalogue as worksheet text, and the factors of the units.

use carb_core::evidence::infix::Formula;
use carb_core::evidence::{Equation, Measure, Symbol};
use carb_core::quantity::unit::UNITS;
use carb_core::table::CATALOGUE;
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;

/// A symbol: name, unit's name (empty for a unit outside the table), unit as printed, meaning, and its range.
type Told = (&'static str, &'static str, &'static str, &'static str, f64, f64);

/// An equation: id, worksheet text, result, inputs, citations.
type Row = (&'static str, String, Told, Vec<Told>, Vec<&'static str>);

fn told(symbol: &Symbol) -> Told {
    let unit = match symbol.unit {
        Measure::In(unit) => unit.name,
        Measure::Plain(_) => "",
    };
    (symbol.name, unit, symbol.unit.symbol(), symbol.meaning, symbol.range.0, symbol.range.1)
}

fn named(id: &str) -> PyResult<&'static Equation> {
    let found = CATALOGUE.iter().copied().find(|equation| equation.id == id);
    found.ok_or_else(|| PyValueError::new_err(format!("there is no equation {id}")))
}

fn read(equation: &Equation) -> PyResult<Formula> {
    Formula::parse(equation.formula).map_err(|(at, fault)| PyValueError::new_err(format!("at byte {at}: {fault}")))
}

/// A symbol in braces, where the cell that holds it goes.
fn place(name: &str) -> String {
    format!("{{{name}}}")
}

/// The catalogue: what each equation gives, as worksheet text with its symbols in braces.
#[pyfunction]
pub fn worksheets() -> PyResult<Vec<Row>> {
    let row = |equation: &&'static Equation| {
        let inputs = equation.inputs.iter().map(told).collect();
        let sources = equation.sources.iter().map(|source| source.citation).collect();
        Ok((equation.id, read(equation)?.worksheet(&place), told(&equation.result), inputs, sources))
    };
    CATALOGUE.iter().map(row).collect()
}

/// An equation turned round for one of its symbols, as worksheet text; `None` where that cannot be written.
#[pyfunction]
pub fn turned(equation: &str, symbol: &str) -> PyResult<Option<String>> {
    Ok(read(named(equation)?)?.solved_for(symbol).map(|formula| formula.worksheet(&place)))
}

/// The value of an equation, its inputs and its result in the units of the formula.
#[pyfunction]
pub fn kernel(equation: &str, values: Vec<f64>) -> PyResult<f64> {
    let equation = named(equation)?;
    let wanted = equation.inputs.len();
    if values.len() != wanted {
        let text = format!("{} takes {wanted} values, not {}", equation.id, values.len());
        return Err(PyValueError::new_err(text));
    }
    let si: Vec<f64> = equation.inputs.iter().zip(values).map(|(symbol, value)| symbol.unit.si(value)).collect();
    Ok(equation.result.unit.shown((equation.kernel)(&si)))
}

/// The units: name, as printed, dimension, and scale and offset of `SI = value * scale + offset`.
#[pyfunction]
pub fn unit_factors() -> Vec<(&'static str, &'static str, String, f64, f64)> {
    let row = |unit: &&carb_core::quantity::Unit| {
        (unit.name, unit.symbol, format!("{:?}", unit.dimension), unit.scale, unit.offset)
    };
    UNITS.iter().map(row).collect()
}
