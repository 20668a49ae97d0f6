//! Where the CO2 is: in a drink under a gas ([`equilibrium`]), in one open to the air ([`open`]), and in a sealed
//! package ([`sealed`]).

pub mod air;
pub mod equilibrium;
pub mod open;
pub mod pressure;
pub mod sealed;
pub mod spread;

/// Hands `$visitor`, of the type `$V`, the kernel that `$body` makes with the solubility model of a context. Loops are
/// compiled for each model that a basis takes by itself; the others, and whoever calls the kernel but once, share one
/// that has the model behind an enum. No bit depends on that.
macro_rules! visit_solubility {
    ($visitor:ident: $V:ident, $context:expr, $solubility:ident => $body:expr) => {{
        use $crate::property::solubility::{Model, chart::ChartFit, eu_wine::EuWine, henry, water_core::WaterCore};
        let context: &$crate::basis::Context = $context;
        let factor = context.basis.solubility_factor;
        let composition = context.beverage.kind.factor();
        macro_rules! with {
            ($model:expr) => {{
                let $solubility = $model;
                $visitor.visit($body)
            }};
        }
        if const { $V::ONCE } {
            with!(context.solubility())
        } else {
            match context.model() {
                Model::ChartFit => with!(ChartFit { factor }),
                Model::EuWine => with!(EuWine { factor }),
                Model::WaterCore => with!(WaterCore { law: henry::Weiss, composition, factor }),
                _ => with!(context.solubility()),
            }
        }
    }};
}
pub(crate) use visit_solubility;
