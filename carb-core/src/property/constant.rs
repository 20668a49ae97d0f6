//! Constants of nature and the molar masses that the equations share.

/// Molar gas constant, J/(mol K), exact since 2019 (CODATA 2018).
pub const GAS_CONSTANT: f64 = 8.314_462_618;

/// Molar mass of CO2, kg/mol.
pub const CO2_MOLAR_MASS: f64 = 0.044_009_5;

/// Molar mass of water, kg/mol.
pub const WATER_MOLAR_MASS: f64 = 0.018_015_268;

/// Density of water at 20 °C, kg/m3, as the gravities 20/20 °C take it.
pub const WATER_DENSITY_20: f64 = 998.2;

/// Standard atmosphere, Pa.
pub const STANDARD_ATMOSPHERE: f64 = crate::quantity::typed::STANDARD_PRESSURE;

/// Standard gravity, m/s2, exact by definition; the true one differs by 0.3 % between pole and equator.
pub const STANDARD_GRAVITY: f64 = 9.806_65;
