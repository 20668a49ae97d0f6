//! Where the CO2 is: in a drink under a gas ([`equilibrium`]), in one open to the air ([`open`]), and in a sealed
//! package ([`sealed`]).

pub mod air;
pub mod equilibrium;
pub mod open;
pub mod pressure;
pub mod sealed;

/// Runs `$body` with the solubility model of a context, whose type differs from model to model.
macro_rules! with_solubility {
    ($context:expr, $solubility:ident => $body:expr) => {{
        let context: &$crate::basis::Context = $context;
        let factor = context.basis.solubility_factor;
        match context.model() {
            $crate::property::solubility::Model::ChartFit => {
                let $solubility = $crate::property::solubility::chart::ChartFit { factor };
                $body
            }
            $crate::property::solubility::Model::WaterCore => {
                let composition = context.beverage.kind.factor();
                let $solubility = $crate::property::solubility::water_core::WaterCore { composition, factor };
                $body
            }
            $crate::property::solubility::Model::EuWine => {
                let $solubility = $crate::property::solubility::eu_wine::EuWine { factor };
                $body
            }
        }
    }};
}
pub(crate) use with_solubility;
