//! Claims of CO2 under a pressure: the keg, what is dissolved, and what is left after fermentation.

use super::claim::Claim;
use super::memo::Memo;
use super::quantity::Otherwise;
use super::question::{
    Altitude, Blend, CarbonationUnit, Choice, FermenterPressure, Question, Reference, Residual, TemperatureScale,
};
use super::relation::{Amount, At, Relation};
use super::told::Told;
use crate::balance::open::{TABLE_END_F, TABLE_START_F, quadratic};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::number::floor;
use crate::property::constant::STANDARD_ATMOSPHERE;
use crate::property::solubility::Model;
use crate::property::solubility::composition::Factor;
use crate::property::water;
use crate::quantity::unit::{CELSIUS, FAHRENHEIT, FOOT, PSI, VOLUMES};
use crate::quantity::{Key, Unit};
use crate::table::functions::RESIDUAL_CO2;
use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

/// Altitude, m, for which the rule of thumb adds a psi.
const RULE: f64 = FOOT.to_si(2000.0);

/// A number of volumes, or grams, as the claim's unit wants it; SI.
pub(super) fn claimed(amount: Amount, unit: &'static Unit, grams: f64, choice: &Choice) -> f64 {
    let other = choice.of::<CarbonationUnit>() == CarbonationUnit::Other;
    let number = if (*unit == VOLUMES) != other { amount.volumes(grams) } else { amount.grams(grams) };
    unit.to_si(number)
}

struct Keg {
    told: Told,
    /// Total pressure of CO2 alone, and whether it is by gauge.
    total: Memo<Option<(f64, bool, f64)>>,
}

/// What other programs make of a keg's pressure.
pub(super) fn keg(claim: &Claim) -> Result<Box<dyn Otherwise>, Error> {
    let told = Told::of(claim)?;
    Ok(Box::new(Keg { total: Memo::of(held_by(&told)), told }))
}

/// The share of CO2 in the gas, from 0 to 1.
fn share(told: &Told) -> Option<f64> {
    told.request.number(Key::Co2Share).map(|percent| percent / 100.0)
}

/// What the pressure that holds a carbonation depends on.
pub(super) fn held_by(told: &Told) -> Vec<Question> {
    vec![Relation::question(told.kind), Question::GasVolume, Question::TemperatureScale, Question::CarbonationUnit]
}

/// The total pressure of CO2 alone that holds the carbonation, whether it is by gauge, and the temperature.
pub(super) fn holding(told: &Told, choice: &Choice) -> Option<(f64, bool, f64)> {
    let t = told.temperature(Key::Temperature, choice)?;
    let relation = Relation::of(told.kind, told.composition, choice).at(t);
    let total = relation.total(told.amount(Key::Carbonation, choice)?, told.grams(choice));
    Some((total, relation.by_gauge(), t))
}

impl Otherwise for Keg {
    fn questions(&self) -> Vec<Question> {
        let told = &self.told;
        let mut all = vec![
            Relation::question(told.kind),
            Question::CarbonationUnit,
            Question::GasVolume,
            Question::Reference,
            Question::PressureLabel,
        ];
        all.extend(told.air(true));
        all.extend(told.scale(Key::Temperature));
        all.extend(share(told).map(|_| Question::Blend));
        all
    }

    fn value(&self, choice: &Choice) -> Option<f64> {
        let (total, by_gauge, t) = self.total.get(choice, || holding(&self.told, choice))?;
        gauge_of(&self.told, total, by_gauge, t, choice)
    }
}

/// The gauge pressure (SI, as the claim's unit has it) that a program prints for a total pressure of CO2 alone.
pub(super) fn gauge_of(told: &Told, total: f64, by_gauge: bool, t: f64, choice: &Choice) -> Option<f64> {
    let rule = choice.of::<Altitude>() == Altitude::Rule && told.elsewhere();
    let outside = if rule { Told::sea_level(choice) } else { told.outside(choice) };
    // A relation of gauge pressure becomes absolute by the program's own air pressure at sea level.
    let total = if by_gauge { total - STANDARD_ATMOSPHERE + Told::sea_level(choice) } else { total };
    let blended = match (share(told), choice.of()) {
        (None, _) | (_, Blend::Ignored) => total,
        (Some(share), Blend::Absolute) => {
            let vapour = water::vapour_pressure(t);
            vapour + (total - vapour) / share
        }
        (Some(share), Blend::Dry) => total / share,
        (Some(share), Blend::ByGauge) => outside + (total - outside) / share,
    };
    let by_rule = if rule { PSI.to_si(1.0) * told.request.number(Key::Altitude)? / RULE } else { 0.0 };
    let gauge = match choice.of() {
        Reference::Told => blended - outside,
        Reference::Absolute => blended,
    };
    Some((gauge + by_rule) * Told::pressure_label(told.unit, choice)?)
}

struct Dissolved {
    told: Told,
    /// The relation, and the temperature.
    relation: Memo<Option<(At, f64)>>,
}

/// What other programs make of the CO2 under a pressure.
pub(super) fn dissolved(claim: &Claim) -> Result<Box<dyn Otherwise>, Error> {
    let told = Told::of(claim)?;
    let by = vec![Relation::question(told.kind), Question::TemperatureScale];
    Ok(Box::new(Dissolved { relation: Memo::of(by), told }))
}

impl Otherwise for Dissolved {
    fn questions(&self) -> Vec<Question> {
        let told = &self.told;
        let mut all = vec![
            Relation::question(told.kind),
            Question::CarbonationUnit,
            Question::GasVolume,
            Question::GivenPressure,
            Question::Reference,
        ];
        // Absolute pressure asks for no air outside.
        if told.request.number(Key::Gauge).is_some() {
            all.extend(told.air(true));
        }
        all.extend(told.scale(Key::Temperature));
        all.extend(share(told).map(|_| Question::Blend));
        all
    }

    fn value(&self, choice: &Choice) -> Option<f64> {
        let told = &self.told;
        let (relation, t) = self.relation.get(choice, || {
            let t = told.temperature(Key::Temperature, choice)?;
            Some((Relation::of(told.kind, told.composition, choice).at(t), t))
        })?;
        let outside = told.outside(choice);
        // The number that was told, as it was understood.
        let given = |key| {
            let unit = told.request.name_of(key)?.unit?;
            Some(told.request.number(key)? * Told::given_pressure(unit, choice)?)
        };
        let mistaken = choice.of::<Reference>() == Reference::Absolute;
        let total = match told.request.number(Key::Gauge) {
            Some(_) if mistaken => given(Key::Gauge)?,
            Some(_) => given(Key::Gauge)? + outside,
            None if mistaken => given(Key::Absolute)? + STANDARD_ATMOSPHERE,
            None => given(Key::Absolute)?,
        };
        let alone = match (share(told), choice.of()) {
            (None, _) | (_, Blend::Ignored) => total,
            (Some(share), Blend::Absolute) => {
                let vapour = water::vapour_pressure(t);
                vapour + (total - vapour) * share
            }
            (Some(share), Blend::Dry) => total * share,
            (Some(share), Blend::ByGauge) => outside + (total - outside) * share,
        };
        let base = if relation.by_gauge() { STANDARD_ATMOSPHERE - Told::sea_level(choice) } else { 0.0 };
        let value = claimed(relation.dissolved(alone + base), told.unit, told.grams(choice), choice);
        (value > 0.0).then_some(value)
    }
}

/// A handbook's table of CO2 in water under 1 atm of it: °C, volumes. Bunsen coefficients of Bohr and Bock as chemical
/// handbooks print them; from memory, within 1.4 % of the water core.
const WATER_HANDBOOK: [(f64, f64); 7] =
    [(0.0, 1.713), (5.0, 1.424), (10.0, 1.194), (15.0, 1.019), (20.0, 0.878), (25.0, 0.759), (30.0, 0.665)];

/// The same, with a line for each degree from 0 °C on; from memory too.
const WATER_BY_DEGREE: [f64; 31] = [
    1.713, 1.646, 1.584, 1.527, 1.473, 1.424, 1.377, 1.331, 1.282, 1.237, 1.194, 1.154, 1.117, 1.083, 1.050, 1.019,
    0.985, 0.956, 0.928, 0.902, 0.878, 0.854, 0.829, 0.804, 0.781, 0.759, 0.738, 0.718, 0.699, 0.682, 0.665,
];

/// Read between its lines, in volumes; `None` beyond its ends.
fn water_by_degree(t: f64) -> Option<f64> {
    let celsius = CELSIUS.from_si(t);
    let at = floor(celsius.max(0.0));
    let (low, high) = (*WATER_BY_DEGREE.get(at as usize)?, *WATER_BY_DEGREE.get(at as usize + 1)?);
    (celsius > -1e-9).then_some(low + (high - low) * (celsius - at))
}

/// Read between its lines, in volumes; `None` beyond its ends.
fn water_handbook(t: f64) -> Option<f64> {
    let celsius = CELSIUS.from_si(t);
    WATER_HANDBOOK.windows(2).find_map(|pair| match *pair {
        [(low, at_low), (high, at_high)] if celsius >= low - 1e-9 && celsius <= high + 1e-9 => {
            Some(at_low + (at_high - at_low) * (celsius - low) / (high - low))
        }
        _ => None,
    })
}

/// What is left after fermentation, by a program's habits.
pub(super) struct Left {
    told: Told,
    /// By this library, kg/m3.
    ours: f64,
    known: Memo<Option<Amount>>,
}

/// What raises the pressure over the fermenting drink.
const CRASHED: [Key; 3] = [Key::ColdCrash, Key::Crash, Key::FermenterHeadspace];

impl Left {
    pub fn of(told: Told) -> Result<Self, Error> {
        let taken = told.request.given().filter(|name| !RESIDUAL_CO2.takes(name.key));
        let asked = taken.fold(told.request, |request, name| request.without(name.key));
        let answer = RESIDUAL_CO2.answer(&asked, &mut NoSteps)?;
        let known = Memo::of(Self::asked(&told));
        Ok(Self { ours: answer.value.as_slice()[0], known, told })
    }

    pub fn questions(&self) -> Vec<Question> {
        Self::asked(&self.told)
    }

    fn asked(told: &Told) -> Vec<Question> {
        let mut all = vec![Question::Residual];
        all.extend(told.air(false));
        all.extend(told.scale(Key::Warmest));
        if told.request.number(Key::FermenterGauge).is_some() {
            all.extend([Question::FermenterPressure, Question::Reference]);
        }
        all
    }

    pub fn amount(&self, choice: &Choice) -> Option<Amount> {
        self.known.get(choice, || self.find(choice))
    }

    fn find(&self, choice: &Choice) -> Option<Amount> {
        let told = &self.told;
        let t = told.temperature(Key::Warmest, choice)?;
        let place = match choice.of() {
            Altitude::Used | Altitude::Rule if told.elsewhere() => told.station(),
            _ => STANDARD_ATMOSPHERE,
        };
        let over = match choice.of() {
            FermenterPressure::Counted => match (told.request.number(Key::FermenterGauge), choice.of()) {
                (None, _) => place,
                (Some(gauge), Reference::Told) => place + gauge,
                (Some(gauge), Reference::Absolute) => gauge,
            },
            FermenterPressure::Ignored => place,
        };
        let scale = over / STANDARD_ATMOSPHERE;
        // Told for one atmosphere, and taken in proportion.
        let pure = |model| {
            let at = Relation::Model(model, Factor::Laboratory, 0.0, 0.0).at(t);
            at.dissolved(STANDARD_ATMOSPHERE).times(scale)
        };
        let amount = match choice.of() {
            Residual::Table => {
                let f = FAHRENHEIT.from_si(t);
                let understood = choice.of::<TemperatureScale>() == TemperatureScale::Told;
                let as_asked = understood && over_as_told(told, over);
                if as_asked || CRASHED.iter().any(|&key| told.request.get(key).is_some()) {
                    Amount::Volumes(VOLUMES.from_si(self.ours))
                } else {
                    // Understood rightly the quadratic is held at its ends, as here; a mistaken degree goes beyond them.
                    let f = if understood { f.clamp(TABLE_START_F, TABLE_END_F) } else { f };
                    Amount::Volumes(quadratic(f) * scale)
                }
            }
            Residual::WaterHandbook => Amount::Volumes(water_handbook(t)? * scale),
            Residual::WaterByDegree => Amount::Volumes(water_by_degree(t)? * scale),
            Residual::BeerChart => pure(Model::ChartFit),
            Residual::European => pure(Model::European),
            Residual::Water => pure(Model::WaterCore),
            Residual::Nothing => Amount::Volumes(0.0),
            Residual::Fixed085 => Amount::Volumes(0.85),
            Residual::Fixed09 => Amount::Volumes(0.9),
            Residual::Fixed1 => Amount::Volumes(1.0),
        };
        Some(amount)
    }
}

/// Whether a pressure over the fermenting drink is the one that was told.
fn over_as_told(told: &Told, over: f64) -> bool {
    let gauge = told.request.number(Key::FermenterGauge).unwrap_or_default();
    (over - told.station() - gauge).abs() < 1e-6
}

struct LeftAfter(Left);

/// What other programs make of the CO2 that is left after fermentation.
pub(super) fn residual(claim: &Claim) -> Result<Box<dyn Otherwise>, Error> {
    Ok(Box::new(LeftAfter(Left::of(Told::of(claim)?)?)))
}

impl Otherwise for LeftAfter {
    fn questions(&self) -> Vec<Question> {
        let mut all = self.0.questions();
        all.extend([Question::GasVolume, Question::CarbonationUnit]);
        all
    }

    fn value(&self, choice: &Choice) -> Option<f64> {
        let amount = self.0.amount(choice)?;
        let told = &self.0.told;
        let value = claimed(amount, told.unit, told.grams(choice), choice);
        (value >= 0.0).then_some(value)
    }
}
