//! What a calculation returns.

use super::context::Context;
use crate::evidence::{Equation, Notes, Range, Source, Steps};

/// A value with everything it stands on.
#[derive(Clone, Copy, Debug)]
#[must_use]
pub struct Answer<T> {
    /// The value.
    pub value: T,
    /// Drink, air outside and assumptions as used.
    pub context: Context,
    /// Equations used, and cautions.
    pub notes: Notes,
}

impl<T> Answer<T> {
    /// The same answer in another form.
    pub fn map<U>(self, form: impl FnOnce(T) -> U) -> Answer<U> {
        Answer { value: form(self.value), context: self.context, notes: self.notes }
    }

    /// The sources behind the value, each once, in the order of their use.
    pub fn sources(&self) -> impl Iterator<Item = &'static Source> + '_ {
        self.notes.sources()
    }
}

/// The most values that any function returns.
pub const MOST_VALUES: usize = 9;

/// The values of a function, SI units, in the order of its outputs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Values {
    list: [f64; MOST_VALUES],
    count: usize,
}

impl Values {
    /// These values.
    pub fn new<const M: usize>(values: [f64; M]) -> Self {
        let mut list = [0.0; MOST_VALUES];
        let count = M.min(MOST_VALUES);
        list[..count].copy_from_slice(&values[..count]);
        Self { list, count }
    }

    /// The values.
    pub fn as_slice(&self) -> &[f64] {
        &self.list[..self.count]
    }
}

/// Two observers of one calculation: what the answer keeps, and whoever asked for the working.
pub struct Both<'a, A: ?Sized, B: ?Sized>(pub &'a mut A, pub &'a mut B);

impl<A: Steps + ?Sized, B: Steps + ?Sized> Steps for Both<'_, A, B> {
    fn record(&mut self, equation: &'static Equation, inputs: &[f64], result: f64) {
        self.0.record(equation, inputs, result);
        self.1.record(equation, inputs, result);
    }
    fn outside(&mut self, range: &'static Range, value: f64) {
        self.0.outside(range, value);
        self.1.outside(range, value);
    }
}
