//! Errors: what was wrong, what is allowed, what to do. The numeric codes are shared by every face and never change.

use crate::quantity::field::HIGHEST_PRESSURE;
use crate::quantity::unit::{LITRE, US_GALLON};
use crate::quantity::{Dimension, Key, Name, ShortText, Unit};
use core::fmt;

/// Why there is no answer.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Error {
    /// A parameter is NaN or infinite.
    NotANumber {
        /// Which.
        parameter: Name,
    },
    /// A parameter lies outside what is answered; value and limits in SI units.
    OutOfRange {
        /// Which.
        parameter: Name,
        /// The value given.
        value: f64,
        /// The lowest that is answered.
        low: f64,
        /// The highest that is answered.
        high: f64,
    },
    /// A parameter is needed and was not given.
    Missing {
        /// Which.
        parameter: Key,
        /// What to give, and why.
        advice: &'static str,
    },
    /// A name that the vocabulary does not know.
    UnknownName {
        /// The name.
        given: ShortText,
        /// The known name nearest to it.
        nearest: Option<Name>,
    },
    /// A choice that its list does not hold.
    UnknownChoice {
        /// Of which field.
        parameter: Key,
        /// The choice given.
        given: ShortText,
        /// What may be chosen.
        allowed: &'static [&'static str],
    },
    /// One quantity was given twice, under one name or in two units.
    GivenTwice {
        /// The name given first.
        first: Name,
        /// The name given again.
        second: Name,
    },
    /// Two parameters exclude each other.
    Excluded {
        /// The one given.
        first: Name,
        /// The other one given.
        second: Name,
    },
    /// The function takes no such parameter.
    NotTaken {
        /// Which.
        parameter: Name,
        /// The function.
        function: &'static str,
    },
    /// A value of the wrong type.
    WrongType {
        /// Which parameter.
        parameter: Name,
        /// What is expected.
        wanted: &'static str,
    },
    /// A name that two products go by.
    AmbiguousSugar {
        /// Which parameter.
        key: Key,
        /// The name given.
        given: ShortText,
    },
    /// A product from which brewing yeast makes no CO2.
    MakesNoCo2 {
        /// Which parameter.
        key: Key,
        /// The name given.
        given: ShortText,
    },
    /// Priming asks for living yeast.
    NoLiveYeast,
    /// The target is below what the drink holds already; kg/m3.
    TargetBelowHeld {
        /// The target's name.
        parameter: Name,
        /// The target.
        value: f64,
        /// What the drink holds, or will make by itself.
        held: f64,
        /// What can be done.
        remedy: &'static str,
    },
    /// A pressure below what can be; Pa.
    PressureTooLow {
        /// Which.
        parameter: Name,
        /// The value given.
        value: f64,
        /// The lowest that can be, in the same reference.
        low: f64,
    },
    /// The liquid fills its package; K.
    VesselFull {
        /// The temperature's name.
        parameter: Name,
        /// The temperature at which it happens.
        value: f64,
    },
    /// The pressure would be beyond every vessel and equation of this library; Pa, absolute.
    PressureTooHigh {
        /// The parameter that asks for it.
        parameter: Name,
        /// The highest that is answered.
        limit: f64,
    },
    /// A bounded solver did not close; please report it.
    NotConverged {
        /// The parameter solved for.
        parameter: Name,
    },
    /// A text that is no valid request.
    BadJson {
        /// Line, from 1.
        line: u32,
        /// Column, from 1.
        column: u32,
        /// What is wrong.
        reason: ShortText,
    },
    /// The request is of another version.
    WrongVersion,
    /// Arrays of one call differ in length.
    UnevenArrays {
        /// How long each must be, unless it has one element.
        expected: usize,
        /// How long one is.
        given: usize,
    },
    /// A list of a request is too long.
    TooManyRows {
        /// Which.
        list: &'static str,
        /// How many rows it may have.
        most: usize,
    },
    /// A list that a function needs has no rows, or that it does not take has some.
    WrongList {
        /// Which.
        list: &'static str,
        /// What to do.
        advice: &'static str,
    },
    /// The bottles at hand do not hold the drink; m3.
    BottlesShort {
        /// The drink.
        packaged: f64,
        /// What the bottles hold.
        held: f64,
    },
    /// A carbonation on the wrong side, or at the very end, of where a drink is going; kg/m3.
    NeverReached {
        /// Its name.
        parameter: Name,
        /// The carbonation wanted, or read.
        value: f64,
        /// What the drink starts from.
        start: f64,
        /// What it comes to after a very long time.
        end: f64,
    },
    /// More sugar than so much water dissolves; m3.
    WaterShort {
        /// Its name.
        parameter: Name,
        /// The water given.
        value: f64,
        /// The least that dissolves the sugar.
        low: f64,
    },
    /// A value that the other values leave no room for; SI.
    OutOfReach {
        /// Which.
        parameter: Name,
        /// The value given, or asked for.
        value: f64,
        /// Where the others let it end.
        limit: f64,
        /// Why, and what to do.
        advice: &'static str,
    },
    /// A part of a claim that cannot be read.
    WrongClaim {
        /// Which: `quantity`, `value`, `unit`, or another column of claims.
        part: &'static str,
        /// What was given.
        given: ShortText,
        /// What to do.
        advice: &'static Advice,
    },
}

/// What to do about a part that cannot be read.
#[derive(Debug, PartialEq)]
pub struct Advice {
    /// In words; to be read before the list of what is allowed.
    pub text: &'static str,
    /// What there is to choose from, if it is a choice.
    pub allowed: &'static [&'static str],
}

impl Advice {
    /// To do something, where there is nothing to choose from.
    pub const fn to(text: &'static str) -> Self {
        Self { text, allowed: &[] }
    }
}

macro_rules! codes {
    ($(#[doc = $meaning:literal] $name:ident = $value:literal;)*) => {
        /// Statuses of array elements, and error codes of every face.
        pub mod code {
            $(#[doc = $meaning] pub const $name: i32 = $value;)*
            /// Every code with its name.
            pub const ALL: &[(&str, i32)] = &[$((stringify!($name), $value)),*];
            /// What each of [`ALL`] means.
            pub const MEANINGS: &[&str] = &[$($meaning),*];
        }
    };
}

codes! {
    /// NaN or infinite; in arrays: missing.
    NOT_A_NUMBER = -1;
    /// Outside what is answered.
    OUT_OF_RANGE = -2;
    /// Needed and not given.
    MISSING = -3;
    /// An unknown name.
    UNKNOWN_NAME = -4;
    /// An unknown choice.
    UNKNOWN_CHOICE = -5;
    /// One quantity given twice.
    GIVEN_TWICE = -6;
    /// Two parameters exclude each other.
    EXCLUDED = -7;
    /// A parameter the function does not take.
    NOT_TAKEN = -8;
    /// A value of the wrong type.
    WRONG_TYPE = -9;
    /// A name that two products go by.
    AMBIGUOUS_SUGAR = -10;
    /// A product that makes no CO2.
    MAKES_NO_CO2 = -11;
    /// Priming without living yeast.
    NO_LIVE_YEAST = -12;
    /// A target below what the drink holds.
    TARGET_BELOW_HELD = -13;
    /// A pressure below what can be.
    PRESSURE_TOO_LOW = -14;
    /// The liquid fills its package.
    VESSEL_FULL = -15;
    /// A pressure beyond every vessel.
    PRESSURE_TOO_HIGH = -16;
    /// A solver that did not close.
    NOT_CONVERGED = -17;
    /// No valid request.
    BAD_JSON = -18;
    /// A request of another version.
    WRONG_VERSION = -19;
    /// Arrays of different lengths.
    UNEVEN_ARRAYS = -20;
    /// A list that is too long.
    TOO_MANY_ROWS = -21;
    /// A list that is needed and empty, or not taken and given.
    WRONG_LIST = -22;
    /// Bottles that do not hold the drink.
    BOTTLES_SHORT = -23;
    /// More sugar than the water dissolves.
    WATER_SHORT = -24;
    /// A value that the others leave no room for.
    OUT_OF_REACH = -25;
    /// A carbonation that the drink never comes to under this pressure.
    NEVER_REACHED = -26;
    /// A claim that says nothing that can be looked into.
    WRONG_CLAIM = -27;
}

impl Error {
    /// The stable numeric code.
    pub const fn code(&self) -> i32 {
        match self {
            Error::NotANumber { .. } => code::NOT_A_NUMBER,
            Error::OutOfRange { .. } => code::OUT_OF_RANGE,
            Error::Missing { .. } => code::MISSING,
            Error::UnknownName { .. } => code::UNKNOWN_NAME,
            Error::UnknownChoice { .. } => code::UNKNOWN_CHOICE,
            Error::GivenTwice { .. } => code::GIVEN_TWICE,
            Error::Excluded { .. } => code::EXCLUDED,
            Error::NotTaken { .. } => code::NOT_TAKEN,
            Error::WrongType { .. } => code::WRONG_TYPE,
            Error::AmbiguousSugar { .. } => code::AMBIGUOUS_SUGAR,
            Error::MakesNoCo2 { .. } => code::MAKES_NO_CO2,
            Error::NoLiveYeast => code::NO_LIVE_YEAST,
            Error::TargetBelowHeld { .. } => code::TARGET_BELOW_HELD,
            Error::PressureTooLow { .. } => code::PRESSURE_TOO_LOW,
            Error::VesselFull { .. } => code::VESSEL_FULL,
            Error::PressureTooHigh { .. } => code::PRESSURE_TOO_HIGH,
            Error::NotConverged { .. } => code::NOT_CONVERGED,
            Error::BadJson { .. } => code::BAD_JSON,
            Error::WrongVersion => code::WRONG_VERSION,
            Error::UnevenArrays { .. } => code::UNEVEN_ARRAYS,
            Error::TooManyRows { .. } => code::TOO_MANY_ROWS,
            Error::WrongList { .. } => code::WRONG_LIST,
            Error::BottlesShort { .. } => code::BOTTLES_SHORT,
            Error::WaterShort { .. } => code::WATER_SHORT,
            Error::OutOfReach { .. } => code::OUT_OF_REACH,
            Error::NeverReached { .. } => code::NEVER_REACHED,
            Error::WrongClaim { .. } => code::WRONG_CLAIM,
        }
    }

    /// The name of the code.
    pub fn code_name(&self) -> &'static str {
        code::ALL.iter().find(|(_, number)| *number == self.code()).map_or("", |(name, _)| name)
    }

    /// The name of the parameter that is at fault.
    pub fn parameter(&self) -> ShortText {
        match *self {
            Error::NotANumber { parameter }
            | Error::OutOfRange { parameter, .. }
            | Error::NotTaken { parameter, .. }
            | Error::WrongType { parameter, .. }
            | Error::TargetBelowHeld { parameter, .. }
            | Error::PressureTooLow { parameter, .. }
            | Error::VesselFull { parameter, .. }
            | Error::PressureTooHigh { parameter, .. }
            | Error::NotConverged { parameter }
            | Error::WaterShort { parameter, .. }
            | Error::OutOfReach { parameter, .. }
            | Error::NeverReached { parameter, .. } => parameter.spelling(),
            Error::Missing { parameter, .. } | Error::UnknownChoice { parameter, .. } => {
                Name::first(parameter).spelling()
            }
            Error::GivenTwice { second, .. } | Error::Excluded { second, .. } => second.spelling(),
            Error::UnknownName { given, .. } => given,
            Error::AmbiguousSugar { key, .. } | Error::MakesNoCo2 { key, .. } => Name::first(key).spelling(),
            Error::NoLiveYeast => Name::first(Key::Yeast).spelling(),
            Error::BadJson { .. } => ShortText::new("request"),
            Error::WrongVersion => ShortText::new("carb"),
            Error::UnevenArrays { .. } => ShortText::new("arrays"),
            Error::TooManyRows { list, .. } | Error::WrongList { list, .. } => ShortText::new(list),
            Error::BottlesShort { .. } => ShortText::new("bottles"),
            Error::WrongClaim { part, .. } => ShortText::new(part),
        }
    }

    /// The value at fault in the parameter's unit, where it is a number.
    pub fn value(&self) -> Option<f64> {
        match *self {
            Error::NotANumber { .. } => Some(f64::NAN),
            Error::OutOfRange { parameter, value, .. }
            | Error::TargetBelowHeld { parameter, value, .. }
            | Error::PressureTooLow { parameter, value, .. }
            | Error::WaterShort { parameter, value, .. }
            | Error::OutOfReach { parameter, value, .. }
            | Error::NeverReached { parameter, value, .. }
            | Error::VesselFull { parameter, value } => Some(in_unit(parameter, value)),
            _ => None,
        }
    }

    /// The limits in the parameter's unit, where there are any; infinite where one side is open.
    pub fn limits(&self) -> Option<(f64, f64)> {
        match *self {
            Error::NotANumber { parameter } => {
                parameter.key.limits().map(|(low, high)| (in_unit(parameter, low), in_unit(parameter, high)))
            }
            Error::OutOfRange { parameter, low, high, .. } => Some((in_unit(parameter, low), in_unit(parameter, high))),
            Error::TargetBelowHeld { parameter, held, .. } => Some((in_unit(parameter, held), f64::INFINITY)),
            Error::NeverReached { parameter, start, end, .. } => {
                Some((in_unit(parameter, start.min(end)), in_unit(parameter, start.max(end))))
            }
            Error::PressureTooLow { parameter, low, .. } | Error::WaterShort { parameter, low, .. } => {
                Some((in_unit(parameter, low), f64::INFINITY))
            }
            Error::OutOfReach { parameter, value, limit, .. } if value <= limit => {
                Some((in_unit(parameter, limit), f64::INFINITY))
            }
            Error::OutOfReach { parameter, limit, .. } => Some((f64::NEG_INFINITY, in_unit(parameter, limit))),
            _ => None,
        }
    }

    /// The same error, an unknown name answered with the nearest of these fields rather than of all, if any is near.
    #[must_use]
    pub fn nearest_of(mut self, keys: impl Iterator<Item = Key>) -> Self {
        if let Error::UnknownName { given, nearest } = &mut self {
            *nearest = Name::nearest(given.as_str(), keys).or(*nearest);
        }
        self
    }

    /// The same error, its numbers under the name and in the unit that the caller used.
    #[must_use]
    pub fn renamed(mut self, as_given: impl Fn(Key) -> Option<Name>) -> Self {
        match &mut self {
            Error::NotANumber { parameter }
            | Error::OutOfRange { parameter, .. }
            | Error::TargetBelowHeld { parameter, .. }
            | Error::PressureTooLow { parameter, .. }
            | Error::VesselFull { parameter, .. }
            | Error::WaterShort { parameter, .. }
            | Error::OutOfReach { parameter, .. }
            | Error::NeverReached { parameter, .. }
            | Error::PressureTooHigh { parameter, .. }
            | Error::NotConverged { parameter } => {
                if let Some(name) = as_given(parameter.key) {
                    *parameter = name;
                }
            }
            _ => {}
        }
        self
    }
}

fn in_unit(name: Name, si: f64) -> f64 {
    name.unit.map_or(si, |unit| unit.from_si(si))
}

/// A number with its unit, short: four significant digits or so.
struct Short(f64, Option<&'static Unit>);

impl fmt::Display for Short {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Short(si, unit) = *self;
        let value = unit.map_or(si, |u| u.from_si(si));
        let size = value.abs();
        // A gravity point is the third place.
        let places = if unit.is_some_and(|u| u.dimension == Dimension::SpecificGravity) {
            4
        } else if size >= 1000.0 || size == 0.0 {
            0
        } else if size >= 10.0 {
            1
        } else {
            3
        };
        if size != 0.0 && !(1e-3..1e9).contains(&size) {
            write!(f, "{value:e}")?;
        } else {
            write!(f, "{value:.places$}")?;
        }
        match unit {
            Some(u) if !u.symbol.is_empty() => write!(f, " {}", u.symbol),
            _ => Ok(()),
        }
    }
}

struct List(&'static [&'static str]);

impl fmt::Display for List {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (at, name) in self.0.iter().enumerate() {
            let joint = if at == 0 { "" } else { ", " };
            write!(f, "{joint}\"{name}\"")?;
        }
        Ok(())
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Error::NotANumber { parameter } => {
                let (low, high) = parameter.key.limits().unwrap_or((f64::NEG_INFINITY, f64::INFINITY));
                write!(
                    f,
                    "{parameter} is not a finite number: give one from {} to {}, or leave it out",
                    Short(low, parameter.unit),
                    Short(high, parameter.unit)
                )
            }
            Error::OutOfRange { parameter, value, low, high } => write!(
                f,
                "{parameter} = {} lies outside {} to {}: check the value and its unit",
                Short(value, parameter.unit),
                Short(low, parameter.unit),
                Short(high, parameter.unit)
            ),
            Error::Missing { parameter, advice } => write!(f, "{} is missing: {advice}", Name::first(parameter)),
            Error::UnknownName { given, nearest: Some(name) } => {
                write!(f, "there is no parameter \"{given}\": did you mean \"{name}\"?")
            }
            Error::UnknownName { given, nearest: None } => {
                write!(f, "there is no parameter \"{given}\": a name is a role and a unit, such as warmest_c")
            }
            Error::UnknownChoice { parameter, given, allowed } => {
                write!(f, "{} = \"{given}\" is not known: choose one of {}", Name::first(parameter), List(allowed))
            }
            Error::GivenTwice { first, second } if first == second => {
                write!(f, "{first} is given twice: give it once")
            }
            Error::GivenTwice { first, second } => {
                write!(f, "{first} and {second} are one quantity in two units: give one of them")
            }
            Error::Excluded { first, second } => write!(f, "{first} and {second} exclude each other: give one of them"),
            Error::NotTaken { parameter, function } => {
                write!(f, "{function} takes no {parameter}: leave it out, or look up the parameters of {function}")
            }
            Error::WrongType { parameter, wanted } => write!(f, "{parameter} should be {wanted}"),
            Error::AmbiguousSugar { key, given } => write!(
                f,
                "{} = \"{given}\" is ambiguous, and the two differ by 10 %: say \"dextrose_monohydrate\" (corn sugar as usually sold) or \"dextrose_anhydrous\"",
                Name::first(key)
            ),
            Error::MakesNoCo2 { key, given } => write!(
                f,
                "{} = \"{given}\" makes no CO2 with brewing yeast, or none to count on: choose a fermentable sugar, such as \"sucrose\"",
                Name::first(key)
            ),
            Error::NoLiveYeast => f.write_str(
                "yeast = \"none\": priming sugar makes CO2 only with living yeast; say yeast=\"live\" and give what is fermentable, or carbonate in a keg",
            ),
            Error::TargetBelowHeld { parameter, value, held, remedy } => write!(
                f,
                "{parameter} = {} is below what the drink holds or makes by itself, {}: {remedy}",
                Short(value, parameter.unit),
                Short(held, parameter.unit)
            ),
            Error::PressureTooLow { parameter, value, low } => write!(
                f,
                "{parameter} = {} is below {}, the least that can be: check gauge against absolute, and the unit",
                Short(value, parameter.unit),
                Short(low, parameter.unit)
            ),
            Error::VesselFull { parameter, value } => write!(
                f,
                "at {parameter} = {} the liquid fills its package, and the pressure has no limit but its walls: leave more headspace, or keep it cooler",
                Short(value, parameter.unit)
            ),
            // Below the pressure at which every answer ends, it is the model that ends.
            Error::PressureTooHigh { parameter, limit } if limit < HIGHEST_PRESSURE => write!(
                f,
                "{parameter} leads to more than {} absolute, where this solubility model ends: check the unit, or choose another model, such as \"water_core\"",
                Short(limit, Some(&crate::quantity::unit::BAR))
            ),
            Error::PressureTooHigh { parameter, limit } => write!(
                f,
                "{parameter} leads to more than {} absolute, more than any vessel of this trade is for; glass bursts long before. Let it ferment out, carbonate less, leave more headspace, or keep it cooler",
                Short(limit, Some(&crate::quantity::unit::BAR))
            ),
            Error::NotConverged { parameter } => {
                write!(f, "no solution was found for {parameter}, which should not happen: please report the inputs")
            }
            Error::BadJson { line, column, reason } => {
                write!(f, "the request is no valid JSON object at line {line}, column {column}: {reason}")
            }
            Error::UnevenArrays { expected, given } => {
                write!(f, "an array has {given} elements where the others have {expected}: give 1 or {expected}")
            }
            Error::TooManyRows { list, most } => write!(f, "{list} has more than {most} rows: put like rows together"),
            Error::WrongList { list, advice } => write!(f, "{list}: {advice}"),
            Error::BottlesShort { packaged, held } => write!(
                f,
                "the bottles at hand hold {:.2} L, and {:.2} L of drink wait: {:.2} L ({:.2} US gal) are short; add bottles, or keg the rest",
                LITRE.from_si(held),
                LITRE.from_si(packaged),
                LITRE.from_si(packaged - held),
                US_GALLON.from_si(packaged - held)
            ),
            Error::WaterShort { parameter, value, low } => write!(
                f,
                "{parameter} = {} does not dissolve the sugar, which takes {}: take more water, or dissolve it warmer",
                Short(value, parameter.unit),
                Short(low, parameter.unit)
            ),
            Error::OutOfReach { parameter, value, limit, advice } => write!(
                f,
                "{parameter} = {} is out of reach, with the other values as they are; the limit is {}: {advice}",
                Short(value, parameter.unit),
                Short(limit, parameter.unit)
            ),
            Error::NeverReached { parameter, value, end, .. } if (value - end).abs() <= 1e-6 * end => write!(
                f,
                "{parameter} = {} is where the drink ends under this pressure, after an endless time: ask for a little less, such as 95 % of the way, or take a little more pressure",
                Short(value, parameter.unit)
            ),
            Error::NeverReached { parameter, value, start, end } => write!(
                f,
                "{parameter} = {} is never reached: under this pressure and at this temperature the drink goes from {} to {}. Change the pressure (keg_pressure tells the one that holds a carbonation), or the carbonation",
                Short(value, parameter.unit),
                Short(start, parameter.unit),
                Short(end, parameter.unit)
            ),
            Error::WrongClaim { part, given, advice } if advice.allowed.is_empty() && given.as_str().is_empty() => {
                write!(f, "{part} is missing: {}", advice.text)
            }
            Error::WrongClaim { part, given, advice } if advice.allowed.is_empty() => {
                write!(f, "{part} = \"{given}\": {}", advice.text)
            }
            Error::WrongClaim { part, given, advice } => {
                write!(f, "{part} = \"{given}\": {} {}", advice.text, List(advice.allowed))
            }
            Error::WrongVersion => f.write_str("the request should name the one version there is, {\"carb\": 1, ...}"),
        }
    }
}

impl core::error::Error for Error {}
