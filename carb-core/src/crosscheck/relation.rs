//! Relations between pressure and dissolved CO2 that programs take, those among them that this library offers to nobody.

use super::question::{BeerSolubility, Choice, Question, WaterSolubility, WineSolubility};
use crate::basis::Kind;
use crate::evidence::NoSteps;
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::{BREWERY_FIT, SANDER};
use crate::number::exp;
use crate::property::constant::{CO2_MOLAR_MASS, STANDARD_ATMOSPHERE};
use crate::property::solubility::composition::Factor;
use crate::property::solubility::{AnySolubility, Here, Model, Solubility};
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, FAHRENHEIT, KELVIN, PASCAL, PSI, VOLUMES};

/// CO2 as a relation gives it: in volumes, whatever these weigh, or in grams.
#[derive(Clone, Copy, Debug)]
pub(super) enum Amount {
    /// Volumes.
    Volumes(f64),
    /// Grams in a litre.
    Grams(f64),
}

impl Amount {
    /// So many times as much.
    pub fn times(self, factor: f64) -> Self {
        match self {
            Amount::Volumes(volumes) => Amount::Volumes(volumes * factor),
            Amount::Grams(grams) => Amount::Grams(grams * factor),
        }
    }

    /// In grams per litre, where a volume weighs `grams`.
    pub fn grams(self, grams: f64) -> f64 {
        match self {
            Amount::Volumes(volumes) => volumes * grams,
            Amount::Grams(all) => all,
        }
    }

    /// In volumes that weigh `grams`.
    pub fn volumes(self, grams: f64) -> f64 {
        match self {
            Amount::Volumes(volumes) => volumes,
            Amount::Grams(all) => all / grams,
        }
    }
}

/// The coefficients of a brewery's polynomial at `f` °F: volumes for each psi (gauge), and at none.
fn brewery(f: f64) -> (f64, f64) {
    let slope = (9.81e-6 * f - 2.29169e-3) * f + 0.168_097_29;
    (slope, (2.4826e-4 * f - 0.047_101_92) * f + 2.874_242_96)
}

/// A brewery's fit of the beer chart.
pub static BREWERY_POLYNOMIAL: Equation = Equation {
    id: "brewery_polynomial",
    title: "CO2 in beer, a brewery's fit of the printed chart",
    formula: "V = ((0.00000981*f - 0.00229169)*f + 0.16809729)*P + (0.00024826*f - 0.04710192)*f + 2.87424296",
    result: symbol("V", Measure::In(&VOLUMES), "CO2 in the beer"),
    inputs: &[
        limited("P", Measure::In(&PSI), "total pressure, gauge at sea level", 0.0, 30.0),
        limited("f", Measure::In(&FAHRENHEIT), "temperature", 30.0, 60.0),
    ],
    uncertainty_percent: None,
    uncertainty: "against the printed chart: mean 0.009, rms 0.021 volumes; known to the cross-check only",
    sources: &[&BREWERY_FIT],
    standing: Standing::CommonPractice,
    kernel: |x| {
        let (slope, level) = brewery(FAHRENHEIT.from_si(x[1]));
        VOLUMES.to_si(slope * PSI.from_si(x[0]) + level)
    },
};

/// Henry's law with two constants: g/L for each Pa at the temperature `t` (K).
fn two_constants(t: f64) -> f64 {
    3.4e-4 * exp(2400.0 * (1.0 / t - 1.0 / 298.15)) * CO2_MOLAR_MASS
}

/// Henry's law with two constants.
pub static TWO_CONSTANTS: Equation = Equation {
    id: "henry_two_constants",
    title: "CO2 in water by Henry's law with two constants",
    formula: "c = 0.00034*exp(2400*(1/T - 1/298.15))*0.0440095*P",
    result: symbol("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in the water"),
    inputs: &[
        limited("P", Measure::In(&PASCAL), "pressure of CO2, taken as its fugacity", 0.0, 1.0e6),
        limited("T", Measure::In(&KELVIN), "temperature", 273.15, 313.15),
    ],
    uncertainty_percent: None,
    uncertainty: "two digits: 7 % low at 0 °C, 1 % high at 25 °C; known to the cross-check only",
    sources: &[&SANDER],
    standing: Standing::Published,
    kernel: |x| two_constants(x[1]) * x[0],
};

/// A relation that a program may take for a drink.
#[derive(Clone, Copy, Debug)]
pub(super) enum Relation {
    /// One of this library's models, and the alcohol and extract that it sees.
    Model(Model, Factor, f64, f64),
    /// A brewery's polynomial.
    Brewery,
    /// Henry's law with two constants.
    TwoConstants,
}

/// A relation at one temperature.
#[derive(Clone, Copy, Debug)]
pub(super) struct At {
    relation: Relation,
    t: f64,
    here: Option<<AnySolubility as Solubility>::Here>,
}

impl Relation {
    /// The question that is asked of a drink.
    pub fn question(kind: Kind) -> Question {
        match kind {
            Kind::Beer | Kind::Cider | Kind::Mead => Question::BeerSolubility,
            Kind::Water | Kind::SoftDrink => Question::WaterSolubility,
            Kind::Wine => Question::WineSolubility,
        }
    }

    /// The relation that a program takes, for a drink of `abv` (% vol) and `extract` (g/L).
    pub fn of(kind: Kind, [abv, extract]: [f64; 2], choice: &Choice) -> Self {
        let pure = |model| Relation::Model(model, Factor::Laboratory, 0.0, 0.0);
        let drink = Relation::Model(Model::WaterCore, kind.factor(), abv, extract);
        match Self::question(kind) {
            Question::WaterSolubility => match choice.of() {
                WaterSolubility::WaterCore => drink,
                WaterSolubility::PureWater => pure(Model::WaterCore),
                WaterSolubility::Sander => Relation::TwoConstants,
                WaterSolubility::ChartFit => pure(Model::ChartFit),
                WaterSolubility::Quadratic => pure(Model::ChartQuadratic),
                WaterSolubility::Carroll => pure(Model::CarrollWater),
                WaterSolubility::Iapws => pure(Model::IapwsWater),
            },
            Question::WineSolubility => match choice.of() {
                WineSolubility::EuWine => Relation::Model(Model::EuWine, kind.factor(), abv, extract),
                WineSolubility::ChartFit => pure(Model::ChartFit),
                WineSolubility::Quadratic => pure(Model::ChartQuadratic),
                WineSolubility::WaterCore => pure(Model::WaterCore),
                WineSolubility::European => pure(Model::European),
            },
            _ => match choice.of() {
                BeerSolubility::ChartFit => pure(Model::ChartFit),
                BeerSolubility::Quadratic => pure(Model::ChartQuadratic),
                BeerSolubility::European => pure(Model::European),
                BeerSolubility::BreweryPolynomial => Relation::Brewery,
                BeerSolubility::WaterCore => pure(Model::WaterCore),
                BeerSolubility::Composition => drink,
                BeerSolubility::Carroll => pure(Model::CarrollWater),
                BeerSolubility::Iapws => pure(Model::IapwsWater),
                BeerSolubility::Sander => Relation::TwoConstants,
            },
        }
    }

    /// The relation at the temperature `t` (K).
    pub fn at(self, t: f64) -> At {
        let here = match self {
            Relation::Model(model, factor, abv, extract) => {
                let solubility = AnySolubility::new(model, factor, 1.0);
                Some(solubility.here(t, abv, extract, &mut NoSteps).0)
            }
            _ => None,
        };
        At { relation: self, t, here }
    }
}

impl At {
    /// Whether the relation is one of gauge pressure at sea level, so that it knows no air pressure.
    pub fn by_gauge(&self) -> bool {
        matches!(self.relation, Relation::Brewery | Relation::Model(Model::ChartQuadratic, ..))
    }

    /// Whether the relation gives volumes.
    fn in_volumes(&self) -> bool {
        let models = [Model::ChartFit, Model::ChartQuadratic];
        matches!(self.relation, Relation::Brewery)
            || matches!(self.relation, Relation::Model(model, ..) if models.contains(&model))
    }

    /// CO2 under the total pressure `total` (Pa, absolute).
    pub fn dissolved(&self, total: f64) -> Amount {
        match (self.here, self.relation) {
            (Some(here), _) if self.in_volumes() => Amount::Volumes(VOLUMES.from_si(here.dissolved_under(total))),
            (Some(here), _) => Amount::Grams(here.dissolved_under(total)),
            (None, Relation::Brewery) => {
                let (slope, level) = brewery(FAHRENHEIT.from_si(self.t));
                Amount::Volumes(slope * PSI.from_si(total - STANDARD_ATMOSPHERE) + level)
            }
            (None, _) => Amount::Grams(two_constants(self.t) * total),
        }
    }

    /// The total pressure (Pa, absolute) that holds an amount, where a volume weighs `grams`.
    pub fn total(&self, amount: Amount, grams: f64) -> f64 {
        match (self.here, self.relation) {
            (Some(here), _) if self.in_volumes() => here.total_pressure(VOLUMES.to_si(amount.volumes(grams))),
            (Some(here), _) => here.total_pressure(amount.grams(grams)),
            (None, Relation::Brewery) => {
                let (slope, level) = brewery(FAHRENHEIT.from_si(self.t));
                PSI.to_si((amount.volumes(grams) - level) / slope) + STANDARD_ATMOSPHERE
            }
            (None, _) => amount.grams(grams) / two_constants(self.t),
        }
    }
}
