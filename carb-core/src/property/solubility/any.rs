//! Any of the models behind one type, for calculations that are not made for speed: each of them is then compiled once,
//! instead of once for every model. The arithmetic is that of the model, to the last bit.

use super::chart::ChartFit;
use super::chart_quadratic::ChartQuadratic;
use super::composition::Factor;
use super::eu_wine::EuWine;
use super::european::European;
use super::henry::{Carroll, Iapws, Weiss};
use super::water_core::WaterCore;
use super::{Here, Model, Solubility};
use crate::evidence::Steps;

macro_rules! any {
    ($($variant:ident: $model:ty;)*) => {
        /// A model.
        #[derive(Clone, Copy, Debug)]
        pub enum AnySolubility {
            $(#[doc = concat!("[`Model::", stringify!($variant), "`].")] $variant($model),)*
        }

        /// A model at one temperature and composition.
        #[derive(Clone, Copy, Debug)]
        pub enum AnyHere {
            $(#[doc = concat!("[`Model::", stringify!($variant), "`].")] $variant(<$model as Solubility>::Here),)*
        }

        impl Solubility for AnySolubility {
            type Here = AnyHere;
            #[inline(never)]
            fn here(&self, t: f64, abv: f64, extract: f64, steps: &mut impl Steps) -> (AnyHere, i32) {
                match self {
                    $(Self::$variant(model) => {
                        let (here, bits) = model.here(t, abv, extract, steps);
                        (AnyHere::$variant(here), bits)
                    })*
                }
            }
        }

        impl Here for AnyHere {
            #[inline(never)]
            fn vapour(&self) -> f64 {
                match self { $(Self::$variant(here) => here.vapour(),)* }
            }
            #[inline(never)]
            fn dissolved(&self, co2: f64, other: f64) -> f64 {
                match self { $(Self::$variant(here) => here.dissolved(co2, other),)* }
            }
            #[inline(never)]
            fn slope(&self, co2: f64, other: f64) -> f64 {
                match self { $(Self::$variant(here) => here.slope(co2, other),)* }
            }
            #[inline(never)]
            fn co2_pressure(&self, dissolved: f64, other: f64) -> f64 {
                match self { $(Self::$variant(here) => here.co2_pressure(dissolved, other),)* }
            }
            #[inline(never)]
            fn dissolved_under(&self, total: f64) -> f64 {
                match self { $(Self::$variant(here) => here.dissolved_under(total),)* }
            }
            #[inline(never)]
            fn total_pressure(&self, dissolved: f64) -> f64 {
                match self { $(Self::$variant(here) => here.total_pressure(dissolved),)* }
            }
            #[inline(never)]
            fn most(&self) -> f64 {
                match self { $(Self::$variant(here) => here.most(),)* }
            }
            #[inline(never)]
            fn tell(&self, total: f64, other: f64, steps: &mut impl Steps) -> i32 {
                match self { $(Self::$variant(here) => here.tell(total, other, steps),)* }
            }
        }
    };
}

any! {
    ChartFit: ChartFit;
    WaterCore: WaterCore<Weiss>;
    EuWine: EuWine;
    ChartQuadratic: ChartQuadratic;
    European: European;
    IapwsWater: WaterCore<Iapws>;
    CarrollWater: WaterCore<Carroll>;
}

impl AnySolubility {
    /// The model of a name, with a factor on the solubility, and the composition factor that the water core takes.
    pub fn new(model: Model, composition: Factor, factor: f64) -> Self {
        match model {
            Model::ChartFit => Self::ChartFit(ChartFit { factor }),
            Model::WaterCore => Self::WaterCore(WaterCore { law: Weiss, composition, factor }),
            Model::EuWine => Self::EuWine(EuWine { factor }),
            Model::ChartQuadratic => Self::ChartQuadratic(ChartQuadratic { factor }),
            Model::European => Self::European(European { factor }),
            Model::IapwsWater => Self::IapwsWater(WaterCore { law: Iapws, composition, factor }),
            Model::CarrollWater => Self::CarrollWater(WaterCore { law: Carroll, composition, factor }),
        }
    }
}
