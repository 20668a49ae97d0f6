//! Where the CO2 is: in a drink under a gas ([`equilibrium`]), in one open to the air ([`open`]), and in a sealed
//! package ([`sealed`]).

pub mod air;
pub mod equilibrium;
pub mod open;
pub mod pressure;
pub mod sealed;
pub mod spread;

/// Runs `$body` with the solubility model of a context, whose type differs from model to model.
macro_rules! with_solubility {
    ($context:expr, $solubility:ident => $body:expr) => {{
        use $crate::property::solubility::{
            Model, chart::ChartFit, chart_quadratic::ChartQuadratic, eu_wine::EuWine, european::European, henry,
            water_core::WaterCore,
        };
        let context: &$crate::basis::Context = $context;
        let factor = context.basis.solubility_factor;
        let composition = context.beverage.kind.factor();
        macro_rules! with {
            ($model:expr) => {{
                let $solubility = $model;
                $body
            }};
        }
        match context.model() {
            Model::ChartFit => with!(ChartFit { factor }),
            Model::ChartQuadratic => with!(ChartQuadratic { factor }),
            Model::European => with!(European { factor }),
            Model::EuWine => with!(EuWine { factor }),
            Model::WaterCore => with!(WaterCore { law: henry::Weiss, composition, factor }),
            Model::IapwsWater => with!(WaterCore { law: henry::Iapws, composition, factor }),
            Model::CarrollWater => with!(WaterCore { law: henry::Carroll, composition, factor }),
        }
    }};
}
pub(crate) use with_solubility;
