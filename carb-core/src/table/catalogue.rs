//! Every equation of the library.

use crate::balance::{open, pressure, sealed};
use crate::bottling::{package, priming};
use crate::evidence::Equation;
use crate::property::solubility::{self, chart, composition, eu_wine, water_core};
use crate::property::{atmosphere, co2_gas, fermentable, gravity, water};

/// The catalogue, in the order of the floors.
pub static CATALOGUE: &[&Equation] = &[
    &atmosphere::STATION_PRESSURE,
    &water::VAPOUR_PRESSURE,
    &water::DENSITY,
    &co2_gas::SECOND_VIRIAL,
    &co2_gas::COMPRESSIBILITY,
    &co2_gas::FUGACITY,
    &co2_gas::DENSITY,
    &water_core::HENRY,
    &solubility::CO2_SHARE,
    &water_core::MOLALITY,
    &composition::LABORATORY,
    &composition::MIDPOINT,
    &composition::UNFAVOURABLE,
    &water_core::DISSOLVED,
    &chart::CHART_FIT,
    &eu_wine::RELATION,
    &gravity::PLATO,
    &fermentable::THEORETICAL_YIELD,
    &pressure::ABSOLUTE,
    &pressure::GAUGE,
    &pressure::TOTAL,
    &open::RESIDUAL_TABLE,
    &open::RESIDUAL_EQUILIBRIUM,
    &sealed::LIQUID_VOLUME,
    &sealed::GAS_VOLUME,
    &sealed::TRAPPED_AIR,
    &sealed::BALANCE,
    &priming::EXTRACT_CO2,
    &priming::DOSE,
    &priming::BATCH,
    &package::EXPECTED_CO2,
    &package::WORST_CO2,
    &package::WORST_PRESSURE,
];
