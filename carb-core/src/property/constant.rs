//! Constants of nature and the molar masses that the equations share.

/// Molar gas constant, J/(mol K), exact since 2019 (CODATA 2018).
pub const GAS_CONSTANT: f64 = 8.314_462_618;

/// Molar mass of CO2, kg/mol.
pub const CO2_MOLAR_MASS: f64 = 0.044_009_5;

/// Standard atmosphere, Pa.
pub const STANDARD_ATMOSPHERE: f64 = crate::quantity::typed::STANDARD_PRESSURE;
