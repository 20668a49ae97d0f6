//! What the program was told, as it may have been understood.

use super::claim::Claim;
use super::question::{
    Altitude, Atmosphere, CarbonationUnit, Choice, Gallon, GasVolume, GivenPressure, Habits, MassLabel, PressureLabel,
    Question, TemperatureScale,
};
use super::relation::Amount;
use crate::basis::{BasisName, Kind, Request};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::property::constant::{CO2_MOLAR_MASS, GAS_CONSTANT, STANDARD_ATMOSPHERE, STANDARD_GRAVITY};
use crate::quantity::unit::{
    BAR, CELSIUS, FAHRENHEIT, GRAM, IMPERIAL_GALLON, KILOPASCAL, OUNCE, POUND, PSI, US_FLUID_OUNCE, US_GALLON, VOLUMES,
};
use crate::quantity::{Dimension, Key, Unit};
use alloc::vec::Vec;

/// Imperial fluid ounces in an imperial gallon.
const OUNCES_IN_IMPERIAL_GALLON: f64 = 160.0;
/// A kilogram-force on a square centimetre, Pa: by standard gravity.
const KILOGRAM_FORCE: f64 = STANDARD_GRAVITY * 1.0e4;
/// Nearer to sea level than this, Pa, altitude makes no difference to anybody.
const SEA_LEVEL: f64 = 20.0;

/// What the program was told of drink and air.
#[derive(Clone, Debug)]
pub(super) struct Told {
    pub request: Request,
    pub kind: Kind,
    /// Alcohol and extract.
    pub composition: [f64; 2],
    /// The air outside, Pa, where anything is said of it.
    ambient: Option<f64>,
    /// The unit of the claim.
    pub unit: &'static Unit,
}

impl Told {
    pub fn of(claim: &Claim) -> Result<Self, Error> {
        let request = claim.asked();
        let context = request.context(BasisName::Handbook)?;
        let drink = context.beverage;
        let ambient = context.ambient.map(|_| context.ambient(&mut NoSteps)).transpose()?;
        let composition = [drink.abv(), drink.extract()];
        Ok(Self { request, kind: drink.kind, composition, ambient, unit: claim.unit.unit })
    }

    /// What a volume weighs, g/L: conventions of the trade as programs write them, real gas by Span and Wagner 1996 at other
    /// conditions; common practice, no source.
    pub fn grams(&self, choice: &Choice) -> f64 {
        match choice.of() {
            GasVolume::Real => VOLUMES.scale,
            GasVolume::Ideal => 44.0095 / 22.413_97,
            GasVolume::RoundedMolar => 44.01 / 22.4,
            GasVolume::Rounded => 1.96,
            GasVolume::RealRounded => 1.977,
            GasVolume::Two => 2.0,
            GasVolume::OneBar => 1.9508,
            GasVolume::IdealOneBar => 1.9378,
            GasVolume::At60F => 1.8682,
            GasVolume::At20C => 1.839,
            GasVolume::At25C => 1.808,
            GasVolume::AtDrink => {
                let told = |key| self.request.number(key);
                let t = told(Key::Temperature).or(told(Key::Warmest)).unwrap_or(CELSIUS.to_si(0.0));
                STANDARD_ATMOSPHERE * CO2_MOLAR_MASS / (GAS_CONSTANT * t)
            }
        }
    }

    /// Whether the place is not at sea level, so that a program may forget it.
    pub fn elsewhere(&self) -> bool {
        self.ambient.is_some_and(|ambient| (ambient - STANDARD_ATMOSPHERE).abs() > SEA_LEVEL)
    }

    /// The questions that the air outside raises.
    pub fn air(&self, atmosphere: bool) -> Vec<Question> {
        let mut all = Vec::new();
        if self.elsewhere() {
            all.push(Question::Altitude);
        }
        if atmosphere {
            all.push(Question::Atmosphere);
        }
        all
    }

    /// The air pressure at sea level, Pa.
    pub fn sea_level(choice: &Choice) -> f64 {
        match choice.of() {
            Atmosphere::Standard => STANDARD_ATMOSPHERE,
            Atmosphere::Psi147 => PSI.to_si(14.7),
            Atmosphere::Bar1013 => BAR.to_si(1.013),
            Atmosphere::OneBar => BAR.to_si(1.0),
        }
    }

    /// The air pressure outside at the place, Pa.
    pub fn station(&self) -> f64 {
        self.ambient.unwrap_or(STANDARD_ATMOSPHERE)
    }

    /// The air pressure that the program reckons with, Pa: its own at sea level, less by the altitude where that counts.
    pub fn outside(&self, choice: &Choice) -> f64 {
        match choice.of() {
            Altitude::Forgotten if self.elsewhere() => Self::sea_level(choice),
            // This library's own air pressure is that of the request, to the last pascal.
            _ if choice.of::<Atmosphere>() == Atmosphere::Standard => self.station(),
            _ => Self::sea_level(choice) * (self.station() / STANDARD_ATMOSPHERE),
        }
    }

    /// A temperature, K, as it may have been understood.
    pub fn temperature(&self, key: Key, choice: &Choice) -> Option<f64> {
        let unit = self.request.name_of(key)?.unit?;
        let si = self.request.number(key)?;
        match choice.of() {
            TemperatureScale::Told => Some(si),
            TemperatureScale::Other if *unit == CELSIUS => Some(FAHRENHEIT.to_si(unit.from_si(si))),
            TemperatureScale::Other if *unit == FAHRENHEIT => Some(CELSIUS.to_si(unit.from_si(si))),
            TemperatureScale::Other => None,
        }
    }

    /// A carbonation, in the unit in which it was told, or was taken to be.
    pub fn amount(&self, key: Key, choice: &Choice) -> Option<Amount> {
        let unit = self.request.name_of(key)?.unit?;
        let si = self.request.number(key)?;
        let other = choice.of::<CarbonationUnit>() == CarbonationUnit::Other;
        let number = unit.from_si(si);
        Some(match (*unit == VOLUMES, other) {
            (true, false) | (false, true) => Amount::Volumes(number),
            (true, true) => Amount::Grams(number),
            // To the last bit what was told.
            (false, false) => Amount::Grams(si),
        })
    }

    /// By which a volume is mistaken where its gallon or fluid ounce is: 1 in other units; nothing where it is not given.
    pub fn gallon(&self, key: Key, choice: &Choice) -> Option<f64> {
        let unit = self.request.name_of(key)?.unit?;
        Some(match choice.of() {
            Gallon::Told => 1.0,
            Gallon::Other if *unit == US_GALLON => IMPERIAL_GALLON.scale / US_GALLON.scale,
            Gallon::Other if *unit == IMPERIAL_GALLON => US_GALLON.scale / IMPERIAL_GALLON.scale,
            Gallon::Other if *unit == US_FLUID_OUNCE => {
                IMPERIAL_GALLON.scale / OUNCES_IN_IMPERIAL_GALLON / US_FLUID_OUNCE.scale
            }
            Gallon::Other => 1.0,
        })
    }

    /// Whether a volume is told in gallons or fluid ounces.
    pub fn in_gallons(&self, keys: &[Key]) -> bool {
        let other = Choice::OURS.with(Question::Gallon, 1);
        keys.iter().any(|&key| self.gallon(key, &other).is_some_and(|by| by != 1.0))
    }

    /// The question of the gallon, where it is one.
    pub fn gallons(&self, keys: &[Key]) -> Option<Question> {
        self.in_gallons(keys).then_some(Question::Gallon)
    }

    /// The question of the thermometer, where a temperature is told that can be mistaken.
    pub fn scale(&self, key: Key) -> Option<Question> {
        let other = Choice::OURS.with(Question::TemperatureScale, 1);
        self.temperature(key, &other).map(|_| Question::TemperatureScale)
    }

    /// What stands for a number of the claim's unit that is really in another, as a factor; `None` where it is that unit.
    pub fn pressure_label(unit: &'static Unit, choice: &Choice) -> Option<f64> {
        let really: &Unit = match choice.of() {
            PressureLabel::Told => return Some(1.0),
            PressureLabel::Psi => &PSI,
            PressureLabel::Bar => &BAR,
            PressureLabel::Kpa => &KILOPASCAL,
            PressureLabel::Atmosphere => return Some(unit.scale / STANDARD_ATMOSPHERE),
            PressureLabel::KilogramForce => return Some(unit.scale / KILOGRAM_FORCE),
        };
        (really != unit).then(|| unit.scale / really.scale)
    }

    /// The same for a pressure that was given in `unit`: what the number was taken for.
    pub fn given_pressure(unit: &'static Unit, choice: &Choice) -> Option<f64> {
        let taken: &Unit = match choice.of() {
            GivenPressure::Told => return Some(1.0),
            GivenPressure::Psi => &PSI,
            GivenPressure::Bar => &BAR,
            GivenPressure::Kpa => &KILOPASCAL,
        };
        (taken != unit).then(|| taken.scale / unit.scale)
    }

    /// The same for masses.
    pub fn mass_label(&self, choice: &Choice) -> Option<f64> {
        let unit = self.unit;
        let ounces = *unit == OUNCE || *unit == POUND;
        let grams_in_ounce = GRAM.from_si(OUNCE.scale);
        match choice.of() {
            MassLabel::Told => Some(1.0),
            MassLabel::Ounce28 if ounces => Some(grams_in_ounce / 28.0),
            MassLabel::Ounce30 if ounces => Some(grams_in_ounce / 30.0),
            MassLabel::OunceFluid if ounces => Some(grams_in_ounce / 29.5735),
            MassLabel::Other if *unit == OUNCE => Some(grams_in_ounce),
            MassLabel::Other if *unit == GRAM => Some(1.0 / grams_in_ounce),
            _ => None,
        }
    }

    /// The question of ounces and grams, where the claim is a mass that can be mistaken.
    pub fn masses(&self) -> Option<Question> {
        let can = |at| self.mass_label(&Choice::OURS.with(Question::MassLabel, at)).is_some();
        let mass = self.unit.dimension == Dimension::Mass;
        (mass && (1..MassLabel::ALL.len()).any(can)).then_some(Question::MassLabel)
    }
}
