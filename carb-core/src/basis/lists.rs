//! The lists of a request: rows that each hold a few values by the names of the vocabulary.
//!
//! A row is a [`Request`] of its own, so that names, units and errors are the same in it as anywhere.

use super::function::{Input, Need, optional, required};
use super::kernel;
use super::request::Request;
use crate::error::Error;
use crate::quantity::{Key, Name};
use core::fmt;

/// A list that a request may hold.
#[derive(Debug)]
pub struct List {
    /// Its name in every face.
    pub name: &'static str,
    /// What its rows are.
    pub meaning: &'static str,
    /// What a row holds.
    pub columns: &'static [Input],
}

/// What is said where something else than rows is given.
pub const ROWS_WANTED: &str = "a list of rows, each an object of names and values, is wanted";

/// The error of a list that a function does not take.
pub const fn not_taken(list: &List) -> Error {
    Error::WrongList { list: list.name, advice: "this function takes no such list: leave it out" }
}

/// The most rows of a list.
pub const MOST_ROWS: usize = 400;

/// The bottles that are at hand.
pub static BOTTLES: List = List {
    name: "bottles",
    meaning: "the bottles at hand: a row for each kind",
    columns: &[
        required(Key::Bottle),
        required(Key::Count),
        optional(
            Key::BottleClass,
            "that of the request; light one-way and heavier reusable bottles are both looked at",
        ),
        optional(Key::Capacity, "what the headspace leaves"),
        optional(Key::RatingGauge, "no rating is known"),
    ],
};

/// What was put into the drink beside its priming.
pub static ADDITIONS: List = List {
    name: "additions",
    meaning: "what else was added to the drink: sugars, which count toward the carbonation, and sweeteners",
    columns: &[
        required(Key::Addition),
        required(Key::Mass),
        optional(Key::SugarWater, "only with a custom sugar"),
        optional(Key::SugarGravity, "only with a custom sugar"),
        optional(Key::SugarFermentable, "only with a custom sugar"),
        optional(Key::SugarKind, "only with a custom sugar"),
    ],
};

/// The gravity, day by day.
pub static READINGS: List = List {
    name: "readings",
    meaning: "gravity readings, the earliest first: the last one is the gravity now",
    columns: &[
        required(Key::Time),
        super::function::one_of("reading", Key::CurrentGravity),
        super::function::one_of("reading", Key::CurrentPlato),
    ],
};

/// How warm the bottles were, one spell after another.
pub static HISTORY: List = List {
    name: "history",
    meaning: "temperatures of the filled bottles, one spell after another; the last one goes on",
    columns: &[required(Key::Temperature), required(Key::Time)],
};

/// How a drink is carbonated, one step after another.
pub static SCHEDULE: List = List {
    name: "schedule",
    meaning: "steps of carbonating, one after another: a pressure and a temperature, for a time",
    columns: &[
        required(Key::Gauge),
        required(Key::Temperature),
        required(Key::Time),
        optional(Key::Method, "that of the request"),
        optional(Key::Kla, "that of the method"),
    ],
};

/// The CO2 in a drink while it is carbonated.
pub static UPTAKE_READINGS: List = List {
    name: "uptake_readings",
    meaning: "readings of the CO2 in a drink while it stands under one pressure: when, and how much",
    columns: &[required(Key::Time), required(Key::Carbonation)],
};

/// Every list.
pub static LISTS: &[&List] = &[&BOTTLES, &ADDITIONS, &READINGS, &HISTORY, &SCHEDULE, &UPTAKE_READINGS];

/// The rows of a request's lists.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[must_use]
pub struct Lists<'a> {
    rows: [&'a [Request]; LISTS.len()],
}

/// What is wrong with a request, and in which row of which list.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Refusal {
    /// What is wrong.
    pub error: Error,
    /// The list and the row, from 1, where it is in one.
    pub place: Option<(&'static str, usize)>,
}

impl From<Error> for Refusal {
    fn from(error: Error) -> Self {
        Self { error, place: None }
    }
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some((list, row)) = self.place {
            write!(f, "in row {row} of {list}: ")?;
        }
        self.error.fmt(f)
    }
}

impl core::error::Error for Refusal {}

impl<'a> Lists<'a> {
    /// No lists.
    pub fn new() -> Self {
        Self::default()
    }

    fn place(list: &List) -> usize {
        LISTS.iter().position(|known| known.name == list.name).unwrap_or_default()
    }

    /// The rows of a list.
    pub fn of(&self, list: &List) -> &'a [Request] {
        self.rows[Self::place(list)]
    }

    /// The lists that have rows.
    pub fn given(&self) -> impl Iterator<Item = (&'static List, &'a [Request])> + use<'a> {
        LISTS.iter().copied().zip(self.rows).filter(|(_, rows)| !rows.is_empty())
    }

    /// The same lists with these rows.
    ///
    /// # Errors
    /// Where a row holds something that the list does not take, lacks what it needs, or holds a number outside its
    /// limits; or where there are too many rows.
    pub fn with(mut self, list: &'static List, rows: &'a [Request]) -> Result<Self, Refusal> {
        for (at, row) in rows.iter().enumerate() {
            let before = at.checked_sub(1).and_then(|at| rows.get(at));
            check(list, row)
                .and_then(|()| check_meaning(row, before))
                .map_err(|error| error.renamed(|key| row.name_of(key)))
                .map_err(|error| Refusal { error, place: Some((list.name, at + 1)) })?;
        }
        if rows.len() > MOST_ROWS {
            return Err(Error::TooManyRows { list: list.name, most: MOST_ROWS }.into());
        }
        self.rows[Self::place(list)] = rows;
        Ok(self)
    }
}

fn check(list: &'static List, row: &Request) -> Result<(), Error> {
    if let Some(parameter) = row.given().find(|name| !list.columns.iter().any(|input| input.key == name.key)) {
        return Err(Error::NotTaken { parameter, function: list.name });
    }
    for input in list.columns {
        match (row.number(input.key), row.name_of(input.key), input.need) {
            (Some(value), ..) => {
                kernel::check(input.key, value)?;
                // Nobody has half a bottle.
                if input.key == Key::Count && f64::from(value as u32) != value {
                    return Err(Error::WrongType { parameter: Name::first(Key::Count), wanted: "a whole number" });
                }
            }
            (None, None, Need::Required) => {
                return Err(Error::Missing { parameter: input.key, advice: "every row needs it" });
            }
            (None, Some(_), _) => {}
            (None, None, Need::OneOf(group)) => {
                let mut same = list.columns.iter().filter(|other| other.need == Need::OneOf(group));
                if !same.any(|other| row.name_of(other.key).is_some()) {
                    return Err(Error::Missing {
                        parameter: input.key,
                        advice: "every row needs a reading, as sg or plato",
                    });
                }
            }
            _ => {}
        }
    }
    Ok(())
}

/// What the values of a row mean together, and after the row before.
fn check_meaning(row: &Request, before: Option<&Request>) -> Result<(), Error> {
    let outside = |key: Key, value: f64, low: f64, high: f64| {
        Err(Error::OutOfRange { parameter: Name::first(key), value, low, high })
    };
    if let (Some(first), Some(second)) = (row.name_of(Key::CurrentGravity), row.name_of(Key::CurrentPlato)) {
        return Err(Error::Excluded { first, second });
    }
    if row.get(Key::Addition).is_some() {
        row.addition()?;
    }
    if let (Some(content), Some(capacity)) = (row.number(Key::Bottle), row.number(Key::Capacity))
        && !(content..=2.0 * content).contains(&capacity)
    {
        return outside(Key::Capacity, capacity, content, 2.0 * content);
    }
    // Only readings have a gravity, and only of them the time is a date.
    let reading = row.get(Key::CurrentGravity).is_some() || row.get(Key::CurrentPlato).is_some();
    if let (true, Some(time), Some(earlier)) =
        (reading, row.number(Key::Time), before.and_then(|b| b.number(Key::Time)))
        && time < earlier
    {
        return outside(Key::Time, time, earlier, Key::Time.limits().unwrap_or_default().1);
    }
    Ok(())
}

/// What comes first in choosing bottles; the others settle ties.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum FillOrder {
    /// Least drink left over, then fewest bottles, then fewest sizes.
    #[default]
    LeastLeftover,
    /// Fewest bottles, then least left over, then fewest sizes.
    FewestBottles,
    /// Fewest sizes, then least left over, then fewest bottles.
    FewestSizes,
    /// The bottles in the order in which they are listed.
    AsListed,
}

impl FillOrder {
    /// Every order.
    pub const ALL: &'static [FillOrder] =
        &[FillOrder::LeastLeftover, FillOrder::FewestBottles, FillOrder::FewestSizes, FillOrder::AsListed];
    /// The names, in the order of [`FillOrder::ALL`].
    pub const NAMES: &'static [&'static str] = &["least_leftover", "fewest_bottles", "fewest_sizes", "as_listed"];
}
