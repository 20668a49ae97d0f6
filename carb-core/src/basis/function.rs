//! A function as data: what every face needs to offer it.

use super::answer::{Answer, Values};
use super::kernel::Series;
use super::request::Request;
use crate::error::Error;
use crate::evidence::Steps;
use crate::quantity::{Key, Name, Unit};

/// Whether an input is needed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Need {
    /// Always.
    Required,
    /// One of the inputs that share this group.
    OneOf(&'static str),
    /// Not: the text says what is taken instead.
    Optional(&'static str),
}

/// One input of a function.
#[derive(Clone, Copy, Debug)]
pub struct Input {
    /// Which field.
    pub key: Key,
    /// Whether it is needed.
    pub need: Need,
}

/// An input that is always needed.
pub const fn required(key: Key) -> Input {
    Input { key, need: Need::Required }
}

/// An input of which one of its group is needed.
pub const fn one_of(group: &'static str, key: Key) -> Input {
    Input { key, need: Need::OneOf(group) }
}

/// An input that is not needed, and what is taken instead.
pub const fn optional(key: Key, instead: &'static str) -> Input {
    Input { key, need: Need::Optional(instead) }
}

/// One output of a function.
#[derive(Clone, Copy, Debug)]
pub struct Output {
    /// The noun it nests under in an answer; empty at the top.
    pub noun: &'static str,
    /// Which field.
    pub key: Key,
}

/// A function of the library.
#[derive(Debug)]
pub struct Function {
    /// Its name in every face.
    pub name: &'static str,
    /// What it answers, in a sentence.
    pub summary: &'static str,
    /// Path of the typed Rust function, below the crate.
    pub home: &'static str,
    /// Its inputs.
    pub inputs: &'static [Input],
    /// Its outputs, in the order of its [`Values`].
    pub outputs: &'static [Output],
    /// The inputs that may vary over the elements of an array.
    pub columns: &'static [Key],
    /// An example that runs: names and values as JSON text.
    pub example: &'static str,
    /// Answers one request.
    pub run: fn(&Request, &mut dyn Steps) -> Result<Answer<Values>, Error>,
    /// Answers element by element.
    pub slices: fn(&Request, Slices<'_>) -> Result<(), Error>,
}

/// Where the elements of a slice call come from and go to.
#[derive(Debug)]
pub struct Slices<'a> {
    /// The inputs that vary.
    pub series: &'a [Series<'a>],
    /// Which output is wanted, by its place in [`Function::outputs`].
    pub which: usize,
    /// In which unit.
    pub unit: &'static Unit,
    /// Receives the values; NaN where the status is below 0.
    pub out: &'a mut [f64],
    /// Receives the statuses: below 0 an error code, else bits of the range cautions.
    pub status: &'a mut [i32],
}

impl Function {
    /// Whether the function takes this field.
    pub fn takes(&self, key: Key) -> bool {
        self.inputs.iter().any(|input| input.key == key)
    }

    /// Whether an input may vary over the elements of an array. The altitude may wherever the air pressure may, which
    /// follows from it.
    pub fn varies(&self, key: Key) -> bool {
        self.columns.contains(&key) || (key == Key::Altitude && self.columns.contains(&Key::Ambient))
    }

    /// The output that `name` spells, by its place, and its unit.
    pub fn find_output(&self, name: &str) -> Option<(usize, &'static Unit)> {
        self.outputs.iter().enumerate().find_map(|(which, output)| {
            let rest = name.strip_prefix(output.noun)?;
            let rest = if output.noun.is_empty() { rest } else { rest.strip_prefix('_')? };
            let unit = Name::of(output.key).find(|name| name.spells(rest))?.unit?;
            Some((which, unit))
        })
    }

    /// Checks that the request holds only what the function takes.
    ///
    /// # Errors
    /// Where it holds something else.
    pub fn accept(&self, request: &Request) -> Result<(), Error> {
        match request.given().find(|name| !self.takes(name.key)) {
            Some(parameter) => Err(Error::NotTaken { parameter, function: self.name }),
            None => Ok(()),
        }
    }

    /// Answers a request; errors carry the names and units that the request used.
    ///
    /// # Errors
    /// Whatever is wrong with the request, see [`Error`].
    pub fn answer(&self, request: &Request, steps: &mut dyn Steps) -> Result<Answer<Values>, Error> {
        self.accept(request)?;
        (self.run)(request, steps).map_err(|error| error.renamed(|key| request.name_of(key)))
    }

    /// Answers element by element: the inputs in `series` vary, the others come from `request`.
    ///
    /// # Errors
    /// Whatever is wrong with the request as a whole; what is wrong with an element is in its status.
    pub fn each(&self, request: &Request, slices: Slices<'_>) -> Result<(), Error> {
        let n = slices.out.len();
        if slices.status.len() != n {
            return Err(Error::UnevenArrays { expected: n, given: slices.status.len() });
        }
        if let Some(uneven) = slices.series.iter().find(|s| s.values.len() != 1 && s.values.len() != n) {
            return Err(Error::UnevenArrays { expected: n, given: uneven.values.len() });
        }
        let mut whole = *request;
        for series in slices.series {
            if !self.varies(series.name.key) {
                return Err(Error::WrongType { parameter: series.name, wanted: "a single value, not an array" });
            }
            whole.vary(series.name)?;
        }
        self.accept(&whole)?;
        if slices.which >= self.outputs.len() {
            return Err(Error::UnknownName { given: crate::quantity::ShortText::new("output"), nearest: None });
        }
        (self.slices)(&whole, slices).map_err(|error| error.renamed(|key| request.name_of(key)))
    }

    /// The name of an output in one of its units, with its noun: `worst_gauge_bar`.
    pub fn output_name(output: Output, unit: &'static Unit) -> crate::quantity::ShortText {
        use core::fmt::Write;
        let mut text = crate::quantity::ShortText::new("");
        let joint = if output.noun.is_empty() { "" } else { "_" };
        let _ = write!(text, "{}{joint}{}", output.noun, Name { key: output.key, unit: Some(unit) });
        text
    }
}
