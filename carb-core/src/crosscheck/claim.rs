//! A claim: a number that some program prints, and what the program was told.

use super::quantity::{ClaimUnit, QUANTITIES, Quantity};
use crate::basis::{Request, kernel};
use crate::error::{Advice, Error};
use crate::quantity::{Key, Name, ShortText};
use alloc::format;
use alloc::string::String;

/// A number as it is printed.
#[derive(Clone, Debug, PartialEq)]
pub struct Printed {
    /// As it was given.
    pub text: String,
    /// The number.
    pub value: f64,
    /// One step of its last digit.
    pub step: f64,
}

/// The most digits behind the point, and the most bytes, of a number that somebody prints.
const MOST_PLACES: i32 = 12;
const MOST_BYTES: usize = 40;

/// A power of ten.
fn ten_to(power: i32) -> f64 {
    let mut value = 1.0;
    for _ in 0..power.unsigned_abs() {
        value *= 10.0;
    }
    if power < 0 { 1.0 / value } else { value }
}

impl Printed {
    /// A number by its text, of which every digit counts: `"4.0"` says more than `"4"`.
    ///
    /// # Errors
    /// Where it is no number with a point for its decimals.
    pub fn read(text: &str) -> Result<Self, Error> {
        const ADVICE: Advice = Advice::to(
            "a claimed value is a number as it is printed, such as \"124.6\", with a point for its decimals and nothing else",
        );
        const MISSING: Advice = Advice::to("give the number that is claimed, as it is printed");
        let trimmed = text.trim();
        let advice = if trimmed.is_empty() { &MISSING } else { &ADVICE };
        let wrong = Error::WrongClaim { part: "value", given: ShortText::new(trimmed), advice };
        let (digits, power) = match trimmed.split_once(['e', 'E']) {
            Some((digits, power)) => (digits, power.parse::<i8>().map_err(|_| wrong)?),
            None => (trimmed, 0),
        };
        let plain = digits.strip_prefix(['-', '+']).unwrap_or(digits);
        let counted = plain.bytes().all(|byte| byte.is_ascii_digit() || byte == b'.');
        let value = trimmed.parse::<f64>().ok().filter(|value| value.is_finite() && counted).ok_or(wrong)?;
        let places = digits.split_once('.').map_or(0, |(_, places)| places.len() as i32) - i32::from(power);
        if trimmed.len() > MOST_BYTES || places.abs() > MOST_PLACES {
            return Err(wrong);
        }
        Ok(Self { text: trimmed.into(), value, step: ten_to(-places) })
    }

    /// A number whose text is lost: the fewest digits that tell it.
    ///
    /// # Errors
    /// As [`Printed::read`].
    pub fn of(value: f64) -> Result<Self, Error> {
        Self::read(&format!("{value}"))
    }
}

/// A claim.
#[derive(Clone, Debug)]
pub struct Claim {
    /// What its row is called.
    pub label: String,
    /// Which program it is from, where that is told; claims of one program share its habits.
    pub program: Option<String>,
    /// What is claimed.
    pub quantity: &'static Quantity,
    /// How much of it.
    pub printed: Printed,
    /// In which unit.
    pub unit: &'static ClaimUnit,
    /// What the program was told.
    pub request: Request,
}

impl Claim {
    /// A claim by the texts of its parts.
    ///
    /// # Errors
    /// Where one of them cannot be read, or something was told that the quantity does not depend on, or that lies outside
    /// what is answered.
    pub fn new(quantity: &str, value: &str, unit: &str, request: Request) -> Result<Self, Error> {
        let quantity = Quantity::named(quantity)?;
        let claim = Self {
            label: String::new(),
            program: None,
            quantity,
            printed: Printed::read(value)?,
            unit: quantity.unit(unit)?,
            request,
        };
        for name in request.given() {
            if !quantity.takes(name.key) {
                return Err(Error::NotTaken { parameter: name, function: quantity.name });
            }
            if let Some(value) = request.number(name.key) {
                kernel::check(name.key, value).map_err(|error| error.renamed(|key| request.name_of(key)))?;
            }
        }
        Ok(claim)
    }

    /// The same claim with what its row is called.
    #[must_use]
    pub fn labelled(mut self, label: &str) -> Self {
        self.label = label.into();
        self
    }

    /// The same claim, said to be one of a program.
    #[must_use]
    pub fn of_program(mut self, program: &str) -> Self {
        self.program = Some(program.into());
        self
    }

    /// The request as this library's function takes it: without what only tells of the package.
    pub fn asked(&self) -> Request {
        let takes = |key| self.quantity.function.is_some_and(|function| function.takes(key));
        PACKAGE.iter().filter(|&&key| !takes(key)).fold(self.request, |request, &key| request.without(key))
    }
}

/// What tells of the package, and judges a claim without entering into it.
const PACKAGE: [Key; 3] = [Key::BottleClass, Key::RatingGauge, Key::KegRating];

/// What of it judges a quantity: bottles are primed, kegs are put under pressure, and what is sealed may be either.
pub(super) const fn judged_by(quantity: &str) -> &'static [Key] {
    match quantity.as_bytes() {
        b"priming_sugar" => &[Key::BottleClass, Key::RatingGauge],
        b"package_pressure" => &PACKAGE,
        b"keg_pressure" | b"dissolved_co2" | b"gas_used" | b"purge_cycles" | b"residual_co2" => &[Key::KegRating],
        _ => &[],
    }
}

impl Quantity {
    /// The quantity of a name.
    ///
    /// # Errors
    /// Where there is none.
    pub fn named(text: &str) -> Result<&'static Quantity, Error> {
        let given = ShortText::new(text);
        const ADVICE: Advice = Advice { text: "choose one of", allowed: super::quantity::NAMES };
        let wrong = Error::WrongClaim { part: "quantity", given, advice: &ADVICE };
        QUANTITIES.iter().find(|quantity| quantity.name == text).ok_or(wrong)
    }

    /// The unit of a name.
    ///
    /// # Errors
    /// Where the quantity is not told in it.
    pub fn unit(&'static self, text: &str) -> Result<&'static ClaimUnit, Error> {
        let given = ShortText::new(text);
        let wrong = Error::WrongClaim { part: "unit", given, advice: &self.known_units };
        // The whole name of what is claimed will do as well: gauge_psi, abv_percent.
        let whole = |unit: &&ClaimUnit| {
            let output = self.function.and_then(|function| function.outputs.get(unit.output));
            output.is_some_and(|output| Name { key: output.key, unit: Some(unit.unit) }.spells(text))
        };
        let named = |unit: &&ClaimUnit| unit.name == text;
        self.units.iter().find(named).or_else(|| self.units.iter().find(whole)).ok_or(wrong)
    }
}
