//! A function as data: what every face needs to offer it.

use super::answer::{Answer, Values};
#[cfg(feature = "alloc")]
use super::bound::Bound;
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
    pub slices: fn(&Request, Slices<'_>) -> Result<i32, Error>,
}

/// Where the elements of a slice call come from and go to.
#[derive(Debug)]
pub struct Slices<'a> {
    /// How many elements there are.
    pub count: usize,
    /// The inputs that vary, each with one value or `count` of them.
    pub series: &'a [Series<'a>],
    /// Which output is wanted, by its place in [`Function::outputs`].
    pub which: usize,
    /// In which unit.
    pub unit: &'static Unit,
    /// Receives the `count` values, NaN where the status is below 0; or is empty, where none is wanted.
    pub out: &'a mut [f64],
    /// Another output, where two are wanted of the same work.
    pub also: Option<Also<'a>>,
    /// What is told of each element.
    pub statuses: Statuses<'a>,
    /// Where the call is kept for later, instead of the elements being answered.
    #[cfg(feature = "alloc")]
    pub keep: Option<&'a mut Option<Bound>>,
}

/// A second output of a slice call.
#[derive(Debug)]
pub struct Also<'a> {
    /// Which one, by its place in [`Function::outputs`].
    pub which: usize,
    /// In which unit.
    pub unit: &'static Unit,
    /// Receives the `count` values.
    pub out: &'a mut [f64],
}

/// How the statuses of the elements are told. A status below 0 is an error code: that element has no answer. Above 0 it
/// holds the bits of the range cautions, and 0 means an answer and nothing to mind.
#[derive(Debug)]
pub enum Statuses<'a> {
    /// Each of the `count` elements gets its status.
    Every(&'a mut [i32]),
    /// The same for a caller who has set all `count` of them to 0: only blocks of elements in which some status is not
    /// 0 are written, so that fresh pages of memory stay untouched.
    Found(&'a mut [i32]),
    /// Not at all.
    Untold,
}

impl Statuses<'_> {
    /// The length of the slice, where there is one.
    fn len(&self) -> Option<usize> {
        match self {
            Self::Every(statuses) | Self::Found(statuses) => Some(statuses.len()),
            Self::Untold => None,
        }
    }
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
    /// Returns the statuses of all elements, OR-ed together. It is 0 where every element has an answer and there is
    /// nothing to mind. Above 0 every element has an answer too, and it holds the bits of all cautions that were found.
    /// Below 0 some element has no answer, and no more can be read from it.
    ///
    /// # Errors
    /// Whatever is wrong with the request as a whole, and slices whose lengths do not fit. What is wrong with an
    /// element is in its status. Where there is an error nothing is written.
    pub fn each(&self, request: &Request, slices: Slices<'_>) -> Result<i32, Error> {
        let expected = slices.count;
        let given = slices.series.iter().map(|series| series.values.len()).filter(|given| *given != 1);
        let out = Some(slices.out.len()).filter(|given| *given != 0);
        let also = slices.also.as_ref().map(|also| also.out.len());
        if let Some(given) = given.chain(out).chain(also).chain(slices.statuses.len()).find(|given| *given != expected)
        {
            return Err(Error::UnevenArrays { expected, given });
        }
        let mut whole = *request;
        for series in slices.series {
            if !self.takes(series.name.key) {
                return Err(Error::NotTaken { parameter: series.name, function: self.name });
            }
            if !self.varies(series.name.key) {
                return Err(Error::WrongType { parameter: series.name, wanted: "a single value, not an array" });
            }
            whole.vary(series.name)?;
        }
        self.accept(&whole)?;
        let last = slices.also.as_ref().map_or(0, |also| also.which).max(slices.which);
        if last >= self.outputs.len() {
            return Err(Error::UnknownName { given: crate::quantity::ShortText::new("output"), nearest: None });
        }
        (self.slices)(&whole, slices).map_err(|error| error.renamed(|key| request.name_of(key)))
    }

    /// Keeps the function with its request for many calls: `names` vary, an output comes out in a unit.
    ///
    /// ```
    /// use carb_core::basis::Request;
    /// use carb_core::basis::request::Raw;
    /// use carb_core::table::functions::KEG_PRESSURE;
    /// let mut sea_level = Request::new();
    /// sea_level.put(Request::name("altitude_m")?, Raw::Number(0.0))?;
    /// let names = [Request::name("volumes")?, Request::name("temperature_f")?];
    /// let (which, psi) = KEG_PRESSURE.find_output("gauge_psi").expect("an output");
    /// let keg = KEG_PRESSURE.bind(&sea_level, &names, which, psi)?;
    /// let (gauge, status) = keg.call(&[2.5, 38.0]).expect("two numbers");
    /// assert_eq!((format!("{gauge:.2}").as_str(), status), ("11.21", 0));
    /// # Ok::<(), carb_core::Error>(())
    /// ```
    ///
    /// # Errors
    /// Whatever is wrong with the request as a whole.
    #[cfg(feature = "alloc")]
    pub fn bind(&self, request: &Request, names: &[Name], which: usize, unit: &'static Unit) -> Result<Bound, Error> {
        let series: alloc::vec::Vec<Series<'_>> =
            names.iter().map(|name| Series { name: *name, values: &[] }).collect();
        let mut kept = None;
        let statuses = Statuses::Untold;
        let keep = Some(&mut kept);
        self.each(
            request,
            Slices { count: 0, series: &series, which, unit, out: &mut [], also: None, statuses, keep },
        )?;
        // Every function hands its kernel to `Each`, which keeps it: there is always one.
        kept.ok_or(Error::NotTaken { parameter: Name::first(Key::Title), function: self.name })
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
