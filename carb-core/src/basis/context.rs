//! Drink, air outside and assumptions together.

use super::ambient::{self, Ambient};
use super::beverage::{Beverage, Kind};
use crate::error::Error;
use crate::evidence::Steps;
use crate::evidence::caution::{Caution, Cautions, FOREIGN_MODEL, PRACTICE_CHART};
use crate::property::solubility::{AnySolubility, Model};

/// Which set of assumptions to start from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BasisName {
    /// The printed tables of the trade.
    Handbook,
    /// The mass balance.
    Physical,
}

impl BasisName {
    /// Every basis.
    pub const ALL: &'static [BasisName] = &[BasisName::Handbook, BasisName::Physical];
    /// The names, in the order of [`BasisName::ALL`].
    pub const NAMES: &'static [&'static str] = &["handbook", "physical"];

    /// The name.
    pub fn name(self) -> &'static str {
        Self::NAMES[self as usize]
    }
}

/// How the CO2 left after fermentation is found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ResidualModel {
    /// The trade's quadratic, a table for water.
    Table,
    /// Equilibrium of the drink's own solubility model with CO2 at the pressure outside.
    Equilibrium,
}

impl ResidualModel {
    /// Every model.
    pub const ALL: &'static [ResidualModel] = &[ResidualModel::Table, ResidualModel::Equilibrium];
    /// The names, in the order of [`ResidualModel::ALL`].
    pub const NAMES: &'static [&'static str] = &["table", "equilibrium"];

    /// What the model is, in words.
    pub const fn title(self) -> &'static str {
        match self {
            ResidualModel::Table => "by the trade's table",
            ResidualModel::Equilibrium => "by the drink's own solubility",
        }
    }

    /// The name.
    pub fn name(self) -> &'static str {
        Self::NAMES[self as usize]
    }
}

/// The assumptions on which honest programs disagree, as one value.
#[derive(Clone, Copy, Debug, PartialEq)]
#[must_use]
pub struct Basis {
    /// Which set it started from.
    pub name: BasisName,
    /// The solubility model; `None` takes the basis's default for the drink.
    pub model: Option<Model>,
    /// The model of residual CO2.
    pub residual: ResidualModel,
    /// CO2 really made, percent of a sugar's theoretical yield.
    pub yield_percent: f64,
    /// Whether the gas over the drink takes its share of the CO2.
    pub count_headspace: bool,
    /// Whether the volume of a syrup, where one is made, counts.
    pub count_syrup: bool,
    /// Factor on every solubility; an equation's own uncertainty enters through these three.
    pub solubility_factor: f64,
    /// Factor on the residual CO2.
    pub residual_factor: f64,
    /// Factor on the yield of sugar.
    pub yield_factor: f64,
}

impl Basis {
    /// Reproduces the printed tables of the trade, to 1 %: their volume is the ideal gas's.
    pub const fn handbook() -> Self {
        Self {
            name: BasisName::Handbook,
            model: None,
            residual: ResidualModel::Table,
            yield_percent: 100.0,
            count_headspace: false,
            count_syrup: false,
            solubility_factor: 1.0,
            residual_factor: 1.0,
            yield_factor: 1.0,
        }
    }

    /// The mass balance: composition, real gas, water vapour, headspace, and 95 % of the theoretical yield.
    pub const fn physical() -> Self {
        Self {
            name: BasisName::Physical,
            residual: ResidualModel::Equilibrium,
            yield_percent: 95.0,
            count_headspace: true,
            count_syrup: true,
            ..Self::handbook()
        }
    }

    /// The basis of a name.
    pub const fn named(name: BasisName) -> Self {
        match name {
            BasisName::Handbook => Self::handbook(),
            BasisName::Physical => Self::physical(),
        }
    }

    /// The yield of the worst case, percent of theory: all of it, or more where the caller says so.
    pub fn most_yield(&self) -> f64 {
        (self.yield_percent * self.yield_factor).max(100.0)
    }

    /// The solubility model for a drink.
    pub fn model_for(&self, kind: Kind) -> Model {
        self.model.unwrap_or(match (kind, self.name) {
            (Kind::Water | Kind::SoftDrink, _) => Model::WaterCore,
            (Kind::Wine, _) => Model::EuWine,
            (Kind::Beer | Kind::Cider | Kind::Mead, BasisName::Handbook) => Model::ChartFit,
            (Kind::Beer | Kind::Cider | Kind::Mead, BasisName::Physical) => Model::WaterCore,
        })
    }
}

/// Everything an answer stands on.
#[derive(Clone, Copy, Debug, PartialEq)]
#[must_use]
pub struct Context {
    /// The drink.
    pub beverage: Beverage,
    /// The air outside; `None` where nothing asks for it.
    pub ambient: Option<Ambient>,
    /// The assumptions.
    pub basis: Basis,
}

impl Context {
    /// A drink under the air at some place, by the handbook.
    pub const fn new(beverage: Beverage, ambient: Ambient) -> Self {
        Self { beverage, ambient: Some(ambient), basis: Basis::handbook() }
    }

    /// The same with other assumptions.
    pub const fn with_basis(mut self, basis: Basis) -> Self {
        self.basis = basis;
        self
    }

    /// The solubility model for the drink, whichever it is.
    pub(crate) fn solubility(&self) -> AnySolubility {
        AnySolubility::new(self.model(), self.beverage.kind.factor(), self.basis.solubility_factor)
    }

    /// The solubility model.
    pub fn model(&self) -> Model {
        self.basis.model_for(self.beverage.kind)
    }

    /// Uncertainty (k = 2, percent) of the solubility model for the drink; `None` where it was not made for it.
    pub fn model_uncertainty(&self) -> Option<f64> {
        let model = self.model();
        self.beverage.kind.models().iter().find(|(made, _)| *made == model).map(|(_, percent)| *percent)
    }

    /// The pressure of the air outside, Pa.
    ///
    /// # Errors
    /// Where nothing was said of it, or a number lies outside its limits.
    pub fn ambient(&self, steps: &mut impl Steps) -> Result<f64, Error> {
        let ambient = self.ambient.ok_or(ambient::missing())?;
        ambient.check()?;
        Ok(ambient.pressure(steps))
    }

    /// Notes what the choice of model means for this drink.
    pub fn note_model(&self, cautions: &mut Cautions) {
        self.beverage.note_composition(cautions);
        if self.model_uncertainty().is_none() {
            cautions.add(Caution::of(&FOREIGN_MODEL, self.beverage.abv()));
        }
        if self.model() == Model::ChartFit && matches!(self.beverage.kind, Kind::Cider | Kind::Mead) {
            cautions.add(Caution::of(&PRACTICE_CHART, self.beverage.abv()));
        }
    }
}
