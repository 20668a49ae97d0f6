//! What can be claimed, in which units, by which inputs, and which function of the library answers it.

use super::claim::{Claim, judged_by};
use super::question::{Choice, Question};
use super::{alcohol, bottles, dose, gas, line, package, pressure, purge};
use crate::basis::Function;
use crate::error::{Advice, Error};
use crate::quantity::unit::{
    BAR, CO2_GRAMS_PER_LITRE, FOOT, GRAM, GRAMS_PER_LITRE, KILOGRAM, KILOPASCAL, METRE, OUNCE, PERCENT, POUND, PSI,
    THINGS, VOLUMES,
};
use crate::quantity::{Key, Unit};
use crate::table::functions::{
    ATTENUATION, DISSOLVED_CO2, GAS_BUDGET, HANDBOOK_LINE, KEG_PRESSURE, PACKAGE_PRESSURE, PRIMING_SUGAR, PURGE_CYCLES,
    RESIDUAL_CO2,
};
use alloc::boxed::Box;
use alloc::vec::Vec;

/// A unit in which a quantity is claimed, and the output of the function that it belongs to.
#[derive(Debug)]
pub struct ClaimUnit {
    /// Its name in claims.
    pub name: &'static str,
    /// The unit.
    pub unit: &'static Unit,
    /// The output of the quantity's function.
    pub output: usize,
}

/// Something that can be claimed.
#[derive(Debug)]
pub struct Quantity {
    /// Its name in claims.
    pub name: &'static str,
    /// What it is, in words.
    pub title: &'static str,
    /// The function that answers it; bottles are counted without one.
    pub function: Option<&'static Function>,
    /// Units in which it is claimed.
    pub units: &'static [ClaimUnit],
    /// Their names, as they are told to who gives another.
    pub(super) known_units: Advice,
    /// Inputs where there is no function.
    inputs: &'static [Key],
    /// What other programs may make of a claim's inputs.
    pub(super) otherwise: fn(&Claim) -> Result<Box<dyn Otherwise>, Error>,
}

/// What a program would make of the inputs of a claim, by its habits.
pub(super) trait Otherwise {
    /// The questions that matter.
    fn questions(&self) -> Vec<Question>;
    /// The answer, SI; `None` where there is none by these habits.
    fn value(&self, choice: &Choice) -> Option<f64>;
    /// Which of the questions only multiply an answer, so that their product is looked up and not worked out again.
    fn factors(&self) -> Vec<Question> {
        Vec::new()
    }
    /// The question on which the factors depend, if they depend on one.
    fn group(&self) -> Option<Question> {
        None
    }
}

/// Assumptions: they are what is looked for, so a claim does not tell them.
const ASSUMPTIONS: [Key; 12] = [
    Key::Basis,
    Key::Model,
    Key::ResidualModel,
    Key::Yield,
    Key::YieldFactor,
    Key::ResidualFactor,
    Key::SolubilityFactor,
    Key::CountHeadspace,
    Key::CountSyrup,
    Key::RealExtractModel,
    Key::ExtractScale,
    Key::HeadspaceAir,
];

impl Quantity {
    /// Whether a claim may tell this.
    pub fn takes(&self, key: Key) -> bool {
        let told = match self.function {
            Some(function) => function.takes(key) && !ASSUMPTIONS.contains(&key),
            None => self.inputs.contains(&key),
        };
        told || judged_by(self.name).contains(&key)
    }
}

const fn unit(unit: &'static Unit, output: usize) -> ClaimUnit {
    ClaimUnit { name: unit.name, unit, output }
}

macro_rules! quantities {
    ($($name:literal $title:literal $function:expr, $otherwise:path, [$($unit:expr => $output:expr),*], [$($input:expr),*];)*) => {
        /// Everything that can be claimed.
        pub static QUANTITIES: &[Quantity] = &[$(Quantity {
            name: $name,
            title: $title,
            function: $function,
            units: &[$(unit(&$unit, $output)),*],
            known_units: Advice { text: "this quantity is claimed in", allowed: &[$($unit.name),*] },
            inputs: &[$($input),*],
            otherwise: $otherwise,
        }),*];
        /// Their names.
        pub const NAMES: &[&str] = &[$($name),*];
    };
}

quantities! {
    "priming_sugar" "priming sugar" Some(&PRIMING_SUGAR), dose::otherwise,
        [GRAM => 0, KILOGRAM => 0, OUNCE => 0, POUND => 0, GRAMS_PER_LITRE => 1], [];
    "keg_pressure" "keg pressure" Some(&KEG_PRESSURE), pressure::keg, [PSI => 0, BAR => 0, KILOPASCAL => 0], [];
    "dissolved_co2" "dissolved CO2" Some(&DISSOLVED_CO2), pressure::dissolved,
        [VOLUMES => 0, CO2_GRAMS_PER_LITRE => 0], [];
    "residual_co2" "residual CO2" Some(&RESIDUAL_CO2), pressure::residual,
        [VOLUMES => 0, CO2_GRAMS_PER_LITRE => 0], [];
    "package_pressure" "pressure in the package" Some(&PACKAGE_PRESSURE), package::otherwise,
        [PSI => 0, BAR => 0, KILOPASCAL => 0], [];
    "bottle_count" "bottles" None, bottles::otherwise, [THINGS => 0], [Key::Packaged, Key::Bottle];
    "line_length" "length of the draught line" Some(&HANDBOOK_LINE), line::otherwise, [FOOT => 0, METRE => 0], [];
    "gas_used" "CO2 used" Some(&GAS_BUDGET), gas::otherwise,
        [GRAM => 5, KILOGRAM => 5, OUNCE => 5, POUND => 5], [];
    "purge_cycles" "purge cycles" Some(&PURGE_CYCLES), purge::otherwise, [THINGS => 0], [];
    "alcohol" "alcohol" Some(&ATTENUATION), alcohol::otherwise, [PERCENT => 4], [];
}
