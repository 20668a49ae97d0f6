//! A request: values by the names of the vocabulary.

use super::ambient::{self, Ambient};
use super::beverage::{Beverage, Kind, Yeast};
use super::context::{Basis, BasisName, Context, ResidualModel};
use super::fermenter::{ColdCrash, Fermenter, Microbes};
use super::kernel;
use super::layout::Layout;
use super::lists::FillOrder;
use crate::error::Error;
use crate::evidence::caution::above;
use crate::property::attenuation::RealExtractModel;
use crate::property::bottle;
use crate::property::carbonating;
use crate::property::cylinder::{self, CYLINDERS, Cylinder};
use crate::property::fermentable::{self, FERMENTABLES, Fermentable, SugarKind};
use crate::property::filling_loss::{self, FILLINGS, Filling};
use crate::property::gravity::Scale;
use crate::property::keg::PurgeMethod;
use crate::property::solubility::Model;
use crate::property::sweetener::{self, SWEETENERS};
use crate::property::tube::{self, TUBES, Tube};
use crate::quantity::field::{COUNT, Kind as FieldKind};
use crate::quantity::name::TEXT_BYTES;
use crate::quantity::unit::UNITS;
use crate::quantity::{
    AbsolutePressure, AmbientPressure, Carbonation, Concentration, GaugePressure, Key, Length, Multiplier, Name,
    Percent, Plato, ShortText, SpecificGravity, Temperature, Unit, Volume,
};

/// One value of a request.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Value {
    /// A number, in the unit of its name.
    Number(f64, &'static Unit),
    /// A place in the list of [`choices`].
    Choice(usize),
    /// Yes or no.
    Flag(bool),
    /// A text.
    Text(ShortText),
}

/// A number or a text, as a face has it before it is looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Raw<'a> {
    /// A number.
    Number(f64),
    /// A text.
    Text(&'a str),
    /// Yes or no.
    Flag(bool),
    /// Something else, which no field takes.
    Other,
}

/// What a field holds, as a request keeps it: nothing, a choice, a flag, the text, or from here on a number in the unit of
/// that place. A request is copied often, so it is kept small: values in one list, what they are in another.
mod kept {
    pub(super) const NOTHING: u8 = 0;
    pub(super) const CHOICE: u8 = 1;
    pub(super) const FLAG: u8 = 2;
    pub(super) const TEXT: u8 = 3;
    pub(super) const NUMBER: u8 = 4;
}

const WORDS: usize = COUNT.div_ceil(64);

/// Values by the names of the vocabulary. Every function takes one.
#[derive(Clone, Copy, Debug, PartialEq)]
#[must_use]
pub struct Request {
    values: [f64; COUNT],
    kinds: [u8; COUNT],
    /// A bit for each field that was given, so that asking which ones does not take looking at all.
    told: [u64; WORDS],
    /// The one text, [`Key::Title`].
    text: ShortText,
}

impl Default for Request {
    fn default() -> Self {
        Self { values: [0.0; COUNT], kinds: [kept::NOTHING; COUNT], told: [0; WORDS], text: ShortText::new("") }
    }
}

/// What describes a sugar of the caller's own.
const SUGAR_PARTS: [Key; 4] = [Key::SugarWater, Key::SugarGravity, Key::SugarFermentable, Key::SugarKind];
/// What does not ferment to a hundredth of its mass is no sugar.
const LEAST_FERMENTABLE: f64 = 0.01;
const CUSTOM_ADVICE: &str = "a sugar of one's own is said by the name \"custom\", with sugar_water_percent (or sugar_sg of a syrup), sugar_fermentable_percent of its dry matter, and sugar_kind";

/// What is added to a drink.
#[derive(Clone, Copy, Debug)]
pub enum Addition {
    /// A sugar, which ferments.
    Sugar(Fermentable),
    /// Something for sweetness, which is not meant to.
    Sweetener(&'static sweetener::Sweetener),
}

/// The list that a choice is taken from.
pub fn choices(key: Key) -> &'static [&'static str] {
    match key {
        Key::Beverage => Kind::NAMES,
        Key::Yeast => Yeast::NAMES,
        Key::Basis => BasisName::NAMES,
        Key::Model => Model::NAMES,
        Key::ResidualModel => ResidualModel::NAMES,
        Key::Sugar => fermentable::NAMES,
        Key::SugarKind => SugarKind::NAMES,
        Key::Addition => sweetener::ADDITIONS,
        Key::ExtractScale => Scale::NAMES,
        Key::RealExtractModel => RealExtractModel::NAMES,
        Key::ColdCrash => ColdCrash::NAMES,
        Key::BottleClass => bottle::NAMES,
        Key::FillOrder => FillOrder::NAMES,
        Key::Microbes => Microbes::NAMES,
        Key::Tube => tube::NAMES,
        Key::FillMethod => filling_loss::NAMES,
        Key::Chart => Layout::NAMES,
        Key::CylinderSize => cylinder::NAMES,
        Key::Purge => PurgeMethod::NAMES,
        Key::Method => carbonating::NAMES,
        _ => &[],
    }
}

macro_rules! setters {
    ($($(#[$doc:meta])* $setter:ident: $type:ident = $key:ident;)*) => {
        impl Request {
            $(
                #[doc = concat!("The same request with [`Key::", stringify!($key), "`].")]
                pub fn $setter(self, value: $type) -> Self {
                    self.with_si(Key::$key, value.si())
                }
            )*
        }
    };
}

setters! {
    abv: Percent = Abv;
    extract: Concentration = Extract;
    fermentable: Concentration = Fermentable;
    packaged: Volume = Packaged;
    carbonation: Carbonation = Carbonation;
    warmest: Temperature = Warmest;
    filling: Temperature = Filling;
    temperature: Temperature = Temperature;
    serving: Temperature = Serving;
    cellar: Temperature = Cellar;
    room: Temperature = Room;
    hot_day: Temperature = HotDay;
    altitude: Length = Altitude;
    ambient: AmbientPressure = Ambient;
    sea_level: AmbientPressure = SeaLevel;
    gauge: GaugePressure = Gauge;
    absolute: AbsolutePressure = Absolute;
    headspace: Percent = Headspace;
    gravity: SpecificGravity = Gravity;
    plato: Plato = Plato;
    residual: Carbonation = Residual;
    fermenter_gauge: GaugePressure = FermenterGauge;
    bottle: Volume = Bottle;
    syrup_water: Volume = SyrupWater;
    yield_percent: Percent = Yield;
    solubility_factor: Multiplier = SolubilityFactor;
    residual_factor: Multiplier = ResidualFactor;
    yield_factor: Multiplier = YieldFactor;
}

impl Request {
    /// A request with nothing in it.
    pub fn new() -> Self {
        Self::default()
    }

    fn keep(&mut self, key: Key, value: Value) {
        self.told[key as usize / 64] |= 1 << (key as usize % 64);
        (self.values[key as usize], self.kinds[key as usize]) = match value {
            Value::Number(number, unit) => (number, kept::NUMBER + unit.place),
            Value::Choice(at) => (at as f64, kept::CHOICE),
            Value::Flag(flag) => (f64::from(flag), kept::FLAG),
            Value::Text(text) => {
                self.text = text;
                (0.0, kept::TEXT)
            }
        };
    }

    fn with_si(mut self, key: Key, si: f64) -> Self {
        if let Some(unit) = key.dimension().map(Unit::first) {
            self.keep(key, Value::Number(unit.from_si(si), unit));
        }
        self
    }

    /// The same request for this kind of drink.
    pub fn beverage(mut self, kind: Kind) -> Self {
        self.keep(Key::Beverage, Value::Choice(kind as usize));
        self
    }

    /// The same request, packaged with or without living yeast.
    pub fn yeast(mut self, yeast: Yeast) -> Self {
        self.keep(Key::Yeast, Value::Choice(yeast as usize));
        self
    }

    /// The same request on this basis.
    pub fn basis(mut self, basis: BasisName) -> Self {
        self.keep(Key::Basis, Value::Choice(basis as usize));
        self
    }

    /// The same request with this solubility model.
    pub fn model(mut self, model: Model) -> Self {
        self.keep(Key::Model, Value::Choice(model as usize));
        self
    }

    /// The same request with this priming sugar, by name.
    ///
    /// # Errors
    /// Where the name is unknown, ambiguous, or of something that makes no CO2.
    pub fn sugar(mut self, name: &str) -> Result<Self, Error> {
        self.set("sugar", Raw::Text(name))?;
        Ok(self)
    }

    /// Sets a value by its name.
    ///
    /// # Errors
    /// For an unknown name, a quantity given twice, a value of the wrong type, a number that is not finite, or a choice
    /// that is not in its list. Whether a number lies within its limits is seen when it is used.
    pub fn set(&mut self, name: &str, raw: Raw<'_>) -> Result<(), Error> {
        self.put(Self::name(name)?, raw)
    }

    /// The name that a text spells.
    ///
    /// # Errors
    /// For a name that the vocabulary does not know, with the nearest that it does.
    pub fn name(text: &str) -> Result<Name, Error> {
        let nearest = || Name::nearest(text, Key::ALL.iter().copied());
        Name::parse(text).ok_or_else(|| Error::UnknownName { given: ShortText::new(text), nearest: nearest() })
    }

    /// Sets a value by its name, already parsed.
    ///
    /// # Errors
    /// As [`Request::set`].
    pub fn put(&mut self, name: Name, raw: Raw<'_>) -> Result<(), Error> {
        if let Some(first) = self.name_of(name.key) {
            return Err(Error::GivenTwice { first, second: name });
        }
        let wrong = |wanted| Err(Error::WrongType { parameter: name, wanted });
        let value = match (name.key.field().kind, raw) {
            (FieldKind::Number { .. }, Raw::Number(number)) if !number.is_finite() => {
                return Err(Error::NotANumber { parameter: name });
            }
            (FieldKind::Number { min, max, .. }, Raw::Number(number)) => match name.unit {
                // So large that it is no finite number in SI units.
                Some(unit) if !unit.to_si(number).is_finite() => {
                    let value = f64::MAX.copysign(number);
                    return Err(Error::OutOfRange { parameter: name, value, low: min, high: max });
                }
                Some(unit) => Value::Number(number, unit),
                None => return wrong("a number"),
            },
            (FieldKind::Choice, Raw::Text(text)) => Value::Choice(choose(name.key, text)?),
            (FieldKind::Flag, Raw::Flag(flag)) => Value::Flag(flag),
            (FieldKind::Text, Raw::Text(text)) if text.len() > TEXT_BYTES || text.chars().any(char::is_control) => {
                return wrong("a text of one line and at most 64 bytes");
            }
            (FieldKind::Text, Raw::Text(text)) => Value::Text(ShortText::new(text)),
            (FieldKind::Number { .. }, _) => return wrong("a number"),
            (FieldKind::Choice, _) => return wrong("a name from its list, as text"),
            (FieldKind::Flag, _) => return wrong("true or false"),
            (FieldKind::Text, _) => return wrong("a text"),
        };
        self.keep(name.key, value);
        Ok(())
    }

    /// Marks a number as one that varies: it takes a value that is allowed, for what does not depend on it.
    pub(crate) fn vary(&mut self, name: Name) -> Result<(), Error> {
        let (low, _) = name.key.limits().unwrap_or_default();
        let Some(unit) = name.unit else {
            return Err(Error::WrongType { parameter: name, wanted: "a single value, not an array" });
        };
        self.put(name, Raw::Number(unit.from_si(low)))
    }

    /// The same request with a number in the unit of its name, given or not; what it may be is seen when it is used.
    pub fn with_number(mut self, name: Name, number: f64) -> Self {
        if let Some(unit) = name.unit {
            self.keep(name.key, Value::Number(number, unit));
        }
        self
    }

    /// The same request without a field.
    pub fn without(mut self, key: Key) -> Self {
        self.told[key as usize / 64] &= !(1 << (key as usize % 64));
        if self.kinds[key as usize] == kept::TEXT {
            self.text = ShortText::new("");
        }
        // Nothing is left of it: requests that say the same are equal.
        (self.values[key as usize], self.kinds[key as usize]) = (0.0, kept::NOTHING);
        self
    }

    /// The same request with what another one says of a field, if anything.
    pub(crate) fn with_of(mut self, key: Key, other: &Request) -> Self {
        if let Some(value) = other.get(key) {
            self.keep(key, value);
        }
        self
    }

    /// The value of a field.
    pub fn get(&self, key: Key) -> Option<Value> {
        let value = self.values[key as usize];
        match self.kinds[key as usize] {
            kept::NOTHING => None,
            kept::CHOICE => Some(Value::Choice(value as usize)),
            kept::FLAG => Some(Value::Flag(value != 0.0)),
            kept::TEXT => Some(Value::Text(self.text)),
            number => UNITS.get(usize::from(number - kept::NUMBER)).map(|unit| Value::Number(value, unit)),
        }
    }

    /// The number of a field, SI.
    pub fn number(&self, key: Key) -> Option<f64> {
        match self.get(key) {
            Some(Value::Number(number, unit)) => Some(unit.to_si(number)),
            _ => None,
        }
    }

    /// The flag of a field.
    pub fn flag(&self, key: Key) -> Option<bool> {
        match self.get(key) {
            Some(Value::Flag(flag)) => Some(flag),
            _ => None,
        }
    }

    /// The text of a field.
    pub fn text(&self, key: Key) -> Option<ShortText> {
        match self.get(key) {
            Some(Value::Text(text)) => Some(text),
            _ => None,
        }
    }

    fn choice<T: Copy>(&self, key: Key, all: &[T]) -> Option<T> {
        match self.get(key) {
            Some(Value::Choice(at)) => all.get(at).copied(),
            _ => None,
        }
    }

    /// The name under which a field was given.
    pub fn name_of(&self, key: Key) -> Option<Name> {
        self.get(key).map(|value| match value {
            Value::Number(_, unit) => Name { key, unit: Some(unit) },
            _ => Name { key, unit: None },
        })
    }

    /// The names given, in the order of the vocabulary.
    pub fn given(&self) -> impl Iterator<Item = Name> + '_ {
        let bits = self.told.into_iter().enumerate().flat_map(|(word, mut bits)| {
            core::iter::from_fn(move || {
                let bit = bits.trailing_zeros() as usize;
                (bits != 0).then(|| {
                    bits &= bits - 1;
                    64 * word + bit
                })
            })
        });
        bits.filter_map(|at| self.name_of(*Key::ALL.get(at)?))
    }

    /// A number that is needed, within its limits, SI.
    ///
    /// # Errors
    /// Where it is missing (then `advice` says what to give) or outside its limits.
    pub fn need(&self, key: Key, advice: &'static str) -> Result<f64, Error> {
        let value = self.number(key).ok_or(Error::Missing { parameter: key, advice })?;
        kernel::check(key, value)?;
        Ok(value)
    }

    /// A number with a default, within its limits, SI.
    ///
    /// # Errors
    /// Where it is outside its limits.
    pub fn or(&self, key: Key, default: f64) -> Result<f64, Error> {
        let value = self.number(key).unwrap_or(default);
        kernel::check(key, value)?;
        Ok(value)
    }

    /// The drink; beer unless another kind is named.
    ///
    /// # Errors
    /// Where a number lies outside its limits.
    pub fn drink(&self) -> Result<Beverage, Error> {
        let mut beverage = Beverage::new(self.choice(Key::Beverage, Kind::ALL).unwrap_or(Kind::Beer));
        if let Some(yeast) = self.choice(Key::Yeast, Yeast::ALL) {
            beverage = beverage.with_yeast(yeast);
        }
        for key in [Key::Abv, Key::Extract, Key::Fermentable] {
            if let Some(value) = self.number(key) {
                kernel::check(key, value)?;
                beverage = match key {
                    Key::Abv => beverage.with_abv(Percent::from_si(value)),
                    Key::Extract => beverage.with_extract(Concentration::from_si(value)),
                    _ => beverage.with_fermentable(Concentration::from_si(value)),
                };
            }
        }
        Ok(beverage)
    }

    /// The air outside, where anything is said of it.
    ///
    /// # Errors
    /// Where what is said contradicts itself or is not enough.
    pub fn air(&self) -> Result<Option<Ambient>, Error> {
        let name = |key| Name::first(key);
        let altitude = self.number(Key::Altitude).map(Length::from_si);
        let ambient = self.number(Key::Ambient).map(AmbientPressure::from_si);
        let sea_level = self.number(Key::SeaLevel).map(AmbientPressure::from_si);
        let found = match (ambient, sea_level, altitude) {
            (Some(_), Some(_), _) => {
                return Err(Error::Excluded { first: name(Key::Ambient), second: name(Key::SeaLevel) });
            }
            (Some(_), None, Some(_)) => {
                return Err(Error::Excluded { first: name(Key::Ambient), second: name(Key::Altitude) });
            }
            (Some(pressure), None, None) => Ambient::Measured(pressure),
            (None, Some(_), None) => return Err(ambient::missing_altitude()),
            (None, Some(sea_level), Some(altitude)) => Ambient::Weather { sea_level, altitude },
            (None, None, Some(altitude)) => Ambient::Altitude(altitude),
            (None, None, None) => return Ok(None),
        };
        found.check()?;
        Ok(Some(found))
    }

    /// The assumptions; those of `default` unless a basis is named.
    ///
    /// # Errors
    /// Where a number lies outside its limits.
    pub fn assumptions(&self, default: BasisName) -> Result<Basis, Error> {
        let mut basis = Basis::named(self.choice(Key::Basis, BasisName::ALL).unwrap_or(default));
        basis.model = self.choice(Key::Model, Model::ALL);
        if let Some(residual) = self.choice(Key::ResidualModel, ResidualModel::ALL) {
            basis.residual = residual;
        }
        if let Some(count) = self.flag(Key::CountHeadspace) {
            basis.count_headspace = count;
        }
        if let Some(count) = self.flag(Key::CountSyrup) {
            basis.count_syrup = count;
        }
        basis.yield_percent = self.or(Key::Yield, basis.yield_percent)?;
        basis.solubility_factor = self.or(Key::SolubilityFactor, 1.0)?;
        basis.residual_factor = self.or(Key::ResidualFactor, 1.0)?;
        basis.yield_factor = self.or(Key::YieldFactor, 1.0)?;
        Ok(basis)
    }

    /// Drink, air and assumptions.
    ///
    /// # Errors
    /// As those of its parts.
    pub fn context(&self, default: BasisName) -> Result<Context, Error> {
        Ok(Context { beverage: self.drink()?, ambient: self.air()?, basis: self.assumptions(default)? })
    }

    /// The priming sugar; sucrose where none is named.
    ///
    /// # Errors
    /// Where one of the caller's own is named and not described.
    pub fn priming_sugar(&self) -> Result<Fermentable, Error> {
        let listed = match self.get(Key::Sugar) {
            Some(Value::Choice(at)) => FERMENTABLES.get(at).copied(),
            _ => Some(fermentable::SUCROSE),
        };
        match listed {
            Some(sugar) => self.nothing_described(Key::Sugar).map(|()| sugar),
            None => self.custom_sugar(Key::Sugar),
        }
    }

    /// What is added: a sugar, or something for sweetness.
    ///
    /// # Errors
    /// Where nothing is named, or a sugar of the caller's own is not described.
    pub fn addition(&self) -> Result<Addition, Error> {
        const ADVICE: &str = "say what is added: a sugar such as \"sucrose\", or a sweetener such as \"lactose\"";
        if !matches!(self.get(Key::Addition), Some(Value::Choice(at)) if at == FERMENTABLES.len()) {
            self.nothing_described(Key::Addition)?;
        }
        match self.get(Key::Addition) {
            Some(Value::Choice(at)) => match (FERMENTABLES.get(at), at.checked_sub(FERMENTABLES.len() + 1)) {
                (Some(sugar), _) => Ok(Addition::Sugar(*sugar)),
                (None, Some(sweetener)) => SWEETENERS
                    .get(sweetener)
                    .map(Addition::Sweetener)
                    .ok_or(Error::Missing { parameter: Key::Addition, advice: ADVICE }),
                (None, None) => self.custom_sugar(Key::Addition).map(Addition::Sugar),
            },
            _ => Err(Error::Missing { parameter: Key::Addition, advice: ADVICE }),
        }
    }

    /// Where a sugar of the list is meant, what describes one of the caller's own would be forgotten.
    fn nothing_described(&self, key: Key) -> Result<(), Error> {
        match (SUGAR_PARTS.iter().find_map(|&part| self.name_of(part)), self.name_of(key)) {
            (Some(second), Some(first)) => Err(Error::Excluded { first, second }),
            (Some(_), None) => Err(Error::Missing { parameter: key, advice: CUSTOM_ADVICE }),
            (None, _) => Ok(()),
        }
    }

    /// A sugar of the caller's own.
    fn custom_sugar(&self, key: Key) -> Result<Fermentable, Error> {
        const KIND: &str = "say what its fermentable part is: hexose (glucose, fructose), disaccharide (sucrose, maltose) or trisaccharide";
        let water = match (self.name_of(Key::SugarWater), self.name_of(Key::SugarGravity)) {
            (Some(first), Some(second)) => return Err(Error::Excluded { first, second }),
            (None, Some(_)) => 1.0 - fermentable::syrup_solids(self.need(Key::SugarGravity, CUSTOM_ADVICE)?),
            _ => self.need(Key::SugarWater, CUSTOM_ADVICE)? / 100.0,
        };
        let share = self.need(Key::SugarFermentable, CUSTOM_ADVICE)? / 100.0;
        let kind = self.choice(Key::SugarKind, SugarKind::ALL);
        let kind = kind.ok_or(Error::Missing { parameter: Key::SugarKind, advice: KIND })?;
        if (1.0 - water) * share < LEAST_FERMENTABLE {
            return Err(Error::MakesNoCo2 { key, given: ShortText::new(Fermentable::CUSTOM) });
        }
        let mut sugar = Fermentable::custom(water, share, kind);
        if self.get(Key::SugarGravity).is_some() {
            // Safety takes the most that the fit of the gravity leaves open.
            sugar.yield_range.1 *= 1.0 + fermentable::SYRUP.uncertainty_percent.unwrap_or_default() / 100.0;
        }
        Ok(sugar)
    }

    /// How the drink came out of its fermentation.
    ///
    /// # Errors
    /// Where a number lies outside its limits, the temperature of a cold crash is missing, or what is said of it has no
    /// use without one.
    pub fn fermenter(&self, warmest: Temperature) -> Result<Fermenter, Error> {
        const CRASH: &str = "say to which temperature the drink was chilled, as crash_c or crash_f";
        const HEADSPACE: &str =
            "a closed fermenter keeps the gas over the drink: give it, as fermenter_headspace_percent of the drink";
        const UNUSED: &str = "fermenter_headspace counts only where the fermenter was closed tight: say cold_crash=\"closed\", or leave it out";
        let crash = self.choice(Key::ColdCrash, ColdCrash::ALL).unwrap_or_default();
        if crash == ColdCrash::Open {
            // Through an airlock the temperature may be told, and changes nothing; a tight headspace contradicts it.
            if self.get(Key::FermenterHeadspace).is_some() {
                return Err(Error::Missing { parameter: Key::ColdCrash, advice: UNUSED });
            }
            let cold = self.or(Key::Crash, warmest.si())?;
            if above(cold, warmest.si()) {
                let (low, _) = Key::Crash.limits().unwrap_or_default();
                return Err(Error::OutOfRange {
                    parameter: Name::first(Key::Crash),
                    value: cold,
                    low,
                    high: warmest.si(),
                });
            }
            return Ok(Fermenter {
                gauge: GaugePressure::from_si(self.or(Key::FermenterGauge, 0.0)?),
                ..Fermenter::open(warmest)
            });
        }
        let headspace = match crash {
            ColdCrash::Closed => self.need(Key::FermenterHeadspace, HEADSPACE)?,
            _ => self.or(Key::FermenterHeadspace, 0.0)?,
        };
        Ok(Fermenter {
            warmest,
            gauge: GaugePressure::from_si(self.or(Key::FermenterGauge, 0.0)?),
            crash,
            cold: Temperature::from_si(self.need(Key::Crash, CRASH)?),
            headspace: Percent::from_si(headspace),
        })
    }

    /// The class of bottle, where one is named.
    pub fn bottle_class(&self) -> Option<&'static bottle::Class> {
        self.choice(Key::BottleClass, bottle::CLASSES)
    }

    /// What comes first in choosing bottles.
    pub fn fill_order(&self) -> FillOrder {
        self.choice(Key::FillOrder, FillOrder::ALL).unwrap_or_default()
    }

    /// What may ferment in the bottle.
    pub fn microbes(&self) -> Microbes {
        self.choice(Key::Microbes, Microbes::ALL).unwrap_or_default()
    }

    /// The tube of the draught line, where one is named.
    pub fn tube(&self) -> Option<Tube> {
        self.choice(Key::Tube, TUBES)
    }

    /// The way to fill, where one is named.
    pub fn fill_method(&self) -> Option<Filling> {
        self.choice(Key::FillMethod, FILLINGS)
    }

    /// In which units a chart is laid out.
    pub fn chart(&self) -> Layout {
        self.choice(Key::Chart, Layout::ALL).unwrap_or_default()
    }

    /// The size of the cylinder, where one is named.
    pub fn cylinder_size(&self) -> Option<&'static Cylinder> {
        match self.get(Key::CylinderSize) {
            Some(Value::Choice(at)) => CYLINDERS.get(at),
            _ => None,
        }
    }

    /// How air is kept out of the keg.
    pub fn purge(&self) -> PurgeMethod {
        self.choice(Key::Purge, PurgeMethod::ALL).unwrap_or_default()
    }

    /// How drink and gas meet, where it is told.
    pub fn method(&self) -> Option<&'static carbonating::Method> {
        self.choice(Key::Method, carbonating::METHODS)
    }

    /// Which relation turns specific gravity into extract.
    pub fn scale(&self) -> Scale {
        self.choice(Key::ExtractScale, Scale::ALL).unwrap_or(Scale::Asbc)
    }

    /// Which relation gives real extract.
    pub fn real_extract_model(&self) -> RealExtractModel {
        self.choice(Key::RealExtractModel, RealExtractModel::ALL).unwrap_or(RealExtractModel::Balling)
    }
}

/// The place of a choice in its list. Case, spaces and hyphens do not matter.
fn choose(key: Key, text: &str) -> Result<usize, Error> {
    let same = |name: &str| {
        name.len() == text.len()
            && name
                .bytes()
                .zip(text.bytes())
                .all(|(n, t)| n == t.to_ascii_lowercase() || (n == b'_' && matches!(t, b' ' | b'-')))
    };
    let given = ShortText::new(text);
    if let Some(at) = choices(key).iter().position(|name| same(name)) {
        return Ok(at);
    }
    if matches!(key, Key::Sugar | Key::Addition) && fermentable::AMBIGUOUS.iter().any(|name| same(name)) {
        return Err(Error::AmbiguousSugar { key, given });
    }
    if key == Key::Sugar && (same(sweetener::ANY) || SWEETENERS.iter().any(|sweetener| same(sweetener.name))) {
        return Err(Error::MakesNoCo2 { key, given });
    }
    Err(Error::UnknownChoice { parameter: key, given, allowed: choices(key) })
}
