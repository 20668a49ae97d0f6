//! The request of a part of a job, grown from that of the job.

use super::named;
use crate::basis::request::{Raw, Value};
use crate::basis::{Function, Request};
use crate::error::Error;
use crate::quantity::{Key, Name, Unit};
use alloc::vec::Vec;

/// The request of a part, grown from that of the job.
pub(super) struct Ask<'a> {
    whole: &'a Request,
    /// What the function is asked.
    pub request: Request,
    /// Which field of the function stands for which of the job.
    puts: Vec<(Key, Key)>,
}

impl<'a> Ask<'a> {
    /// Everything that the function takes and the job's request holds.
    pub fn new(function: &Function, whole: &'a Request) -> Self {
        let request = function.inputs.iter().fold(Request::new(), |asked, input| asked.with_of(input.key, whole));
        Self { whole, request, puts: Vec::new() }
    }

    /// What the job calls `from`, as given, or what is usual (SI).
    pub fn give(mut self, key: Key, from: Key, usual: f64) -> Self {
        self.puts.push((key, from));
        match self.whole.get(from) {
            Some(Value::Number(number, unit)) => {
                self.request = self.request.with_number(Name { key, unit: Some(unit) }, number);
                self
            }
            _ => self.set(key, usual),
        }
    }

    /// A number (SI) that follows from others.
    pub fn set(mut self, key: Key, si: f64) -> Self {
        if let Some(unit) = key.dimension().map(Unit::first) {
            self.request = self.request.with_number(Name { key, unit: Some(unit) }, unit.from_si(si));
        }
        self
    }

    /// A number (SI), unless the job's request holds the field.
    pub fn usual(self, key: Key, si: f64) -> Self {
        if self.whole.get(key).is_some() { self } else { self.set(key, si) }
    }

    /// A choice by its name.
    pub fn choose(mut self, key: Key, name: &str) -> Result<Self, Error> {
        self.request.put(Name::first(key), Raw::Text(name))?;
        Ok(self)
    }

    /// Without what is said of something else.
    pub fn without(mut self, keys: &[Key]) -> Self {
        for &key in keys {
            self.request = self.request.without(key);
        }
        self
    }

    /// The error under the names of the job.
    pub fn renamed(&self, error: Error) -> Error {
        error.renamed(|key| {
            let from = self.puts.iter().find(|(put, _)| *put == key).map(|(_, from)| *from);
            from.map(|from| named(self.whole, from)).or_else(|| self.whole.name_of(key))
        })
    }
}
