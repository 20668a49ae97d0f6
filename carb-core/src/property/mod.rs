//! What things are like: CO2 gas, water, the atmosphere, solubility, gravity and extract, fermentables.
//!
//! Kernels here are plain `f64` in SI units (kg/m3 for concentrations, which is the same number in g/L); beside
//! each stands its entry of the catalogue.

pub mod atmosphere;
pub mod attenuation;
pub mod bottle;
pub mod carbonating;
pub mod co2_gas;
pub mod co2_saturation;
pub mod constant;
pub mod cylinder;
pub mod exposure;
pub mod family;
pub mod fermentable;
pub mod filling_loss;
pub mod friction;
pub mod gravity;
pub mod keg;
pub mod keg_rating;
pub mod liquid;
pub mod oxygen;
pub mod solubility;
pub mod sweetener;
pub mod syrup;
pub mod tube;
pub mod water;
pub mod yeast;
