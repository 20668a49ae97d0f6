//! One entry of the catalogue: everything that is to be said of an equation, beside its kernel.

use super::source::Source;
use crate::quantity::Unit;

/// How well the coefficients of an equation, or a figure, are known to be what their source says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Standing {
    /// True by definition, or by arithmetic alone.
    Definition,
    /// Published; the digits were read in the source or in public text that quotes it.
    Published,
    /// Published; the digits are from memory of the source and confirmed numerically against others.
    ConfirmedFromMemory,
    /// Published; the figure is from memory of the source, and nothing else confirms it.
    FromMemory,
    /// Used by the trade without a source.
    CommonPractice,
    /// Our own judgement or fit, with the reason given.
    Judgement,
}

impl Standing {
    /// The standing in words.
    pub const fn words(self) -> &'static str {
        match self {
            Standing::Definition => "definition",
            Standing::Published => "published",
            Standing::ConfirmedFromMemory => "published, coefficients from memory, confirmed numerically",
            Standing::FromMemory => "published, from memory, not confirmed",
            Standing::CommonPractice => "common practice, no source",
            Standing::Judgement => "judgement",
        }
    }
}

/// The unit of a symbol in a formula.
#[derive(Clone, Copy, Debug)]
pub enum Measure {
    /// A unit of the table: kernels work in SI, the formula in this unit.
    In(&'static Unit),
    /// Any other unit, in which kernel and formula agree; empty for a plain number.
    Plain(&'static str),
}

impl Measure {
    /// A kernel's (SI) value as the formula has it.
    pub fn shown(self, si: f64) -> f64 {
        match self {
            Measure::In(unit) => unit.from_si(si),
            Measure::Plain(_) => si,
        }
    }

    /// A value in the formula's unit as the kernel takes it (SI).
    pub fn si(self, shown: f64) -> f64 {
        match self {
            Measure::In(unit) => unit.to_si(shown),
            Measure::Plain(_) => shown,
        }
    }

    /// How the unit is printed.
    pub const fn symbol(self) -> &'static str {
        match self {
            Measure::In(unit) => unit.symbol,
            Measure::Plain(text) => text,
        }
    }
}

/// A symbol of a formula.
#[derive(Debug)]
pub struct Symbol {
    /// As written in the formula.
    pub name: &'static str,
    /// Its unit there.
    pub unit: Measure,
    /// What it means.
    pub meaning: &'static str,
    /// Where the source says the equation holds, in the symbol's unit; infinite where it says nothing.
    pub range: (f64, f64),
}

/// A symbol without a limit of its own.
pub const fn symbol(name: &'static str, unit: Measure, meaning: &'static str) -> Symbol {
    Symbol { name, unit, meaning, range: (f64::NEG_INFINITY, f64::INFINITY) }
}

/// A symbol that the source limits to `low..=high`, in the symbol's unit.
pub const fn limited(name: &'static str, unit: Measure, meaning: &'static str, low: f64, high: f64) -> Symbol {
    Symbol { name, unit, meaning, range: (low, high) }
}

/// An equation of the catalogue.
#[derive(Debug)]
pub struct Equation {
    /// Stable name.
    pub id: &'static str,
    /// What it gives, in words.
    pub title: &'static str,
    /// One line of infix text, `result = expression`, over the symbols below.
    pub formula: &'static str,
    /// The left-hand side.
    pub result: Symbol,
    /// The symbols of the right-hand side, in the order of the kernel's arguments.
    pub inputs: &'static [Symbol],
    /// Uncertainty (k = 2) of the result, percent; `None` where the equation is exact.
    pub uncertainty_percent: Option<f64>,
    /// Where that uncertainty comes from, or why there is none.
    pub uncertainty: &'static str,
    /// Sources; empty only for a definition, common practice, or a judgement that stands in no paper.
    pub sources: &'static [&'static Source],
    /// How well the coefficients are known.
    pub standing: Standing,
    /// The kernel, in SI units (or the plain units of the symbols).
    pub kernel: fn(&[f64]) -> f64,
}

impl PartialEq for Equation {
    fn eq(&self, other: &Equation) -> bool {
        core::ptr::eq(self, other)
    }
}
