//! How sure an input is.

use crate::basis::request::Value;
use crate::basis::{Function, Request};
use crate::error::Error;
use crate::quantity::field::COUNT;
use crate::quantity::unit::{CELSIUS, GRAM, GRAMS_PER_LITRE, KILOPASCAL, LITRE, PERCENT, PSI, SPECIFIC_GRAVITY};
use crate::quantity::{Key, Name, ShortText, Unit};

/// How far a value may lie from what was given, in the unit of its name.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Doubt {
    /// Plus or minus two standard deviations of a normal distribution (k = 2, about 95 %).
    Normal(f64),
    /// Anywhere between minus and plus this, evenly.
    Range(f64),
}

impl Doubt {
    /// Half the width.
    pub fn half_width(self) -> f64 {
        match self {
            Doubt::Normal(half) | Doubt::Range(half) => half,
        }
    }

    /// The standard deviation.
    pub fn standard(self) -> f64 {
        match self {
            Doubt::Normal(half) => half / 2.0,
            // The variance of an even distribution is a third of the square of its half width.
            Doubt::Range(half) => half / crate::number::sqrt(3.0),
        }
    }

    /// The same, half as wide or twice.
    #[must_use]
    pub fn times(self, factor: f64) -> Self {
        match self {
            Doubt::Normal(half) => Doubt::Normal(half * factor),
            Doubt::Range(half) => Doubt::Range(half * factor),
        }
    }

    /// What kind it is, in a word.
    pub fn kind(self) -> &'static str {
        match self {
            Doubt::Normal(_) => "normal",
            Doubt::Range(_) => "range",
        }
    }
}

/// The doubts about the inputs of a request.
#[derive(Clone, Copy, Debug, PartialEq)]
#[must_use]
pub struct Doubts {
    list: [Option<(Doubt, &'static Unit)>; COUNT],
}

impl Default for Doubts {
    fn default() -> Self {
        Self { list: [None; COUNT] }
    }
}

impl Doubts {
    /// Sets the doubt about an input.
    ///
    /// # Errors
    /// For what is no number, a doubt that is negative or not finite, or one set twice.
    pub fn set(&mut self, name: Name, doubt: Doubt) -> Result<(), Error> {
        let Some(unit) = name.unit else {
            return Err(Error::WrongType { parameter: name, wanted: "a number, for its uncertainty to mean anything" });
        };
        let half = doubt.half_width();
        if !half.is_finite() {
            return Err(Error::NotANumber { parameter: name });
        }
        if half < 0.0 {
            return Err(Error::WrongType { parameter: name, wanted: "0 or more, as its uncertainty" });
        }
        if let Some((_, first)) = self.list[name.key as usize] {
            return Err(Error::GivenTwice { first: Name { key: name.key, unit: Some(first) }, second: name });
        }
        self.list[name.key as usize] = Some((doubt, unit));
        Ok(())
    }

    /// Sets the doubt about an input to that of a usual instrument, by its name.
    ///
    /// # Errors
    /// For an unknown instrument, or one that measures something else.
    pub fn set_usual(&mut self, name: Name, instrument: &str) -> Result<(), Error> {
        let found = INSTRUMENTS.iter().find(|known| known.name == instrument);
        let given = ShortText::new(instrument);
        let allowed = INSTRUMENT_NAMES;
        let Some(found) = found else {
            return Err(Error::UnknownChoice { parameter: name.key, given, allowed });
        };
        let (Some(unit), Some(dimension)) = (name.unit, name.key.dimension()) else {
            return Err(Error::WrongType { parameter: name, wanted: "a number, for its uncertainty to mean anything" });
        };
        if found.unit.dimension != dimension {
            return Err(Error::WrongType { parameter: name, wanted: "what that instrument measures" });
        }
        self.set(name, found.doubt.times(found.unit.scale / unit.scale))
    }

    /// The doubt about an input in the unit in which the request gives it.
    pub fn of(&self, request: &Request, key: Key) -> Option<(Name, Doubt)> {
        let (doubt, unit) = self.list[key as usize]?;
        match request.get(key)? {
            Value::Number(_, given) => Some((Name { key, unit: Some(given) }, doubt.times(unit.scale / given.scale))),
            _ => None,
        }
    }

    /// The inputs that are in doubt.
    pub fn keys(&self) -> impl Iterator<Item = Key> + '_ {
        Key::ALL.iter().copied().filter(|key| self.list[*key as usize].is_some())
    }

    /// Checks that every doubt is about a number that was given.
    ///
    /// # Errors
    /// Where one is not.
    pub fn check(&self, request: &Request, function: Option<&Function>) -> Result<(), Error> {
        for key in self.keys() {
            if let Some(function) = function.filter(|function| !function.takes(key)) {
                return Err(Error::NotTaken { parameter: Name::first(key), function: function.name });
            }
            if request.number(key).is_none() {
                return Err(Error::Missing {
                    parameter: key,
                    advice: "an uncertainty is about a value: give the value too, even where it is the usual one",
                });
            }
        }
        Ok(())
    }
}

/// A usual instrument, and how sure it is in careful hands. Judgement; offered by name, never taken unasked.
#[derive(Debug)]
pub struct Instrument {
    /// Its name.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// How sure it is, in the unit below.
    pub doubt: Doubt,
    /// In which unit.
    pub unit: &'static Unit,
}

/// The instruments.
pub static INSTRUMENTS: &[Instrument] = &[
    Instrument {
        name: "kitchen_scale",
        title: "kitchen scale that shows 1 g: rounding and drift",
        doubt: Doubt::Range(1.0),
        unit: &GRAM,
    },
    Instrument {
        name: "thermometer",
        title: "kitchen or stick-on thermometer",
        doubt: Doubt::Normal(1.0),
        unit: &CELSIUS,
    },
    Instrument {
        name: "good_thermometer",
        title: "thermometer checked in ice water",
        doubt: Doubt::Normal(0.3),
        unit: &CELSIUS,
    },
    Instrument {
        name: "hydrometer",
        title: "hydrometer with a scale of 0.002, read to half a division",
        doubt: Doubt::Normal(0.001),
        unit: &SPECIFIC_GRAVITY,
    },
    Instrument {
        name: "marked_bucket",
        title: "marks on a bucket or fermenter",
        doubt: Doubt::Normal(0.5),
        unit: &LITRE,
    },
    Instrument { name: "regulator_gauge", title: "gauge on a regulator", doubt: Doubt::Normal(1.5), unit: &PSI },
    Instrument {
        name: "weather",
        title: "air pressure from the altitude, for the weather",
        doubt: Doubt::Normal(2.0),
        unit: &KILOPASCAL,
    },
    Instrument {
        name: "headspace_by_eye",
        title: "fill level judged by eye",
        doubt: Doubt::Range(1.0),
        unit: &PERCENT,
    },
    Instrument {
        name: "sugar_moisture",
        title: "moisture that a sugar has drawn, of its mass",
        doubt: Doubt::Range(1.0),
        unit: &PERCENT,
    },
    Instrument {
        name: "extract_by_hydrometer",
        title: "extract worked out from a hydrometer",
        doubt: Doubt::Normal(3.0),
        unit: &GRAMS_PER_LITRE,
    },
];

static INSTRUMENT_NAMES: &[&str] = &{
    let mut names = [""; INSTRUMENTS.len()];
    let mut at = 0;
    while at < names.len() {
        names[at] = INSTRUMENTS[at].name;
        at += 1;
    }
    names
};
