//! Structs, enums and functions of the header, from the tables of the core.
//!
//! Written by tests/generated.rs (BLESS=1 cargo test -p carb-ffi): do not edit.

use crate::call::{Arrays, Shape, carb_series, each, one};
use crate::error::carb_error;
use crate::inputs::Member;
use carb_core::quantity::Key;
use carb_core::table::functions;
use core::ffi::c_char;
use core::mem::offset_of;

/// What a function returns, and the status of an element that has no value.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_status {
    /// It went well.
    CARB_OK = 0,
    /// NaN or infinite; in arrays: missing.
    CARB_NOT_A_NUMBER = -1,
    /// Outside what is answered.
    CARB_OUT_OF_RANGE = -2,
    /// Needed and not given.
    CARB_MISSING = -3,
    /// An unknown name.
    CARB_UNKNOWN_NAME = -4,
    /// An unknown choice.
    CARB_UNKNOWN_CHOICE = -5,
    /// One quantity given twice.
    CARB_GIVEN_TWICE = -6,
    /// Two parameters exclude each other.
    CARB_EXCLUDED = -7,
    /// A parameter the function does not take.
    CARB_NOT_TAKEN = -8,
    /// A value of the wrong type.
    CARB_WRONG_TYPE = -9,
    /// A name that two products go by.
    CARB_AMBIGUOUS_SUGAR = -10,
    /// A product that makes no CO2.
    CARB_MAKES_NO_CO2 = -11,
    /// Priming without living yeast.
    CARB_NO_LIVE_YEAST = -12,
    /// A target below what the drink holds.
    CARB_TARGET_BELOW_HELD = -13,
    /// A pressure below what can be.
    CARB_PRESSURE_TOO_LOW = -14,
    /// The liquid fills its package.
    CARB_VESSEL_FULL = -15,
    /// A pressure beyond every vessel.
    CARB_PRESSURE_TOO_HIGH = -16,
    /// A solver that did not close.
    CARB_NOT_CONVERGED = -17,
    /// No valid request.
    CARB_BAD_JSON = -18,
    /// A request of another version.
    CARB_WRONG_VERSION = -19,
    /// Arrays of different lengths.
    CARB_UNEVEN_ARRAYS = -20,
    /// A pointer is NULL, or not aligned for its type.
    CARB_NULL_POINTER = -100,
    /// A struct_size that no struct has, or a member set that this version does not know.
    CARB_BAD_STRUCT_SIZE = -101,
    /// A text that is not UTF-8.
    CARB_BAD_UTF8 = -102,
    /// A buffer that the text does not fit into.
    CARB_BUFFER_TOO_SMALL = -103,
    /// A number that is no enumerator of its list.
    CARB_UNKNOWN_ENUM = -104,
    /// The library failed, which should not happen.
    CARB_PANIC = -105,
    /// An output that the function does not have.
    CARB_UNKNOWN_OUTPUT = -106,
    /// A unit that is not known, or that measures something else.
    CARB_UNKNOWN_UNIT = -107,
    /// A count of elements that does not fit.
    CARB_BAD_COUNT = -108,
    /// A name longer than any, or without an end.
    CARB_TEXT_TOO_LONG = -109,
    /// Two outputs that lie over each other.
    CARB_OVERLAP = -110,
}

/// Bits of the cautions that equations raise outside their ranges, in results and in the status of elements.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_caution {
    /// the printed chart covers chilled beer; at the value its fit is extrapolated beyond the limit
    CARB_CAUTION_CHART_TEMPERATURE = 1,
    /// the printed chart ends; at the value absolute its fit is extrapolated beyond the limit
    CARB_CAUTION_CHART_PRESSURE = 2,
    /// solubility in water was measured for this equation up to the limit; the value is extrapolated
    CARB_CAUTION_CORE_WARM = 4,
    /// the value lies below the limit: the equations for water are extrapolated, and a weak drink freezes
    CARB_CAUTION_BELOW_FREEZING = 8,
    /// the residual CO2 table ends at the limit; for the value its value there is kept
    CARB_CAUTION_RESIDUAL_HELD = 16,
    /// the wine relation is given for 20 °C and carried to 0-25 °C; the value lies beyond the limit
    CARB_CAUTION_WINE_TEMPERATURE = 32,
    /// the effect of dissolved matter on solubility is known to the limit; the value is extrapolated
    CARB_CAUTION_EXTRACT_HIGH = 64,
    /// the effect of alcohol on solubility is known to the limit; the value is extrapolated
    CARB_CAUTION_ALCOHOL_HIGH = 128,
    /// the value absolute lies beyond the limit, to which the equations were checked
    CARB_CAUTION_GAS_PRESSURE = 256,
    /// the gravity tables end at the limit; the value is extrapolated
    CARB_CAUTION_GRAVITY_RANGE = 512,
}

/// Yes or no.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_flag {
    /// not given
    CARB_FLAG_NOT_GIVEN = 0,
    /// no
    CARB_NO = 1,
    /// yes
    CARB_YES = 2,
}

/// What the drink is.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_beverage {
    /// not given
    CARB_BEVERAGE_NOT_GIVEN = 0,
    /// water
    CARB_BEVERAGE_WATER = 1,
    /// beer
    CARB_BEVERAGE_BEER = 2,
    /// cider
    CARB_BEVERAGE_CIDER = 3,
    /// mead
    CARB_BEVERAGE_MEAD = 4,
    /// wine
    CARB_BEVERAGE_WINE = 5,
    /// soft_drink
    CARB_BEVERAGE_SOFT_DRINK = 6,
}

/// Whether living yeast goes into the package.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_yeast {
    /// not given
    CARB_YEAST_NOT_GIVEN = 0,
    /// live
    CARB_YEAST_LIVE = 1,
    /// none
    CARB_YEAST_NONE = 2,
}

/// The priming sugar.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_sugar {
    /// not given
    CARB_SUGAR_NOT_GIVEN = 0,
    /// dextrose_monohydrate
    CARB_SUGAR_DEXTROSE_MONOHYDRATE = 1,
    /// dextrose_anhydrous
    CARB_SUGAR_DEXTROSE_ANHYDROUS = 2,
    /// sucrose
    CARB_SUGAR_SUCROSE = 3,
    /// dry_malt_extract
    CARB_SUGAR_DRY_MALT_EXTRACT = 4,
    /// honey
    CARB_SUGAR_HONEY = 5,
    /// maple_syrup
    CARB_SUGAR_MAPLE_SYRUP = 6,
}

/// The set of assumptions to start from.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_basis {
    /// not given
    CARB_BASIS_NOT_GIVEN = 0,
    /// handbook
    CARB_BASIS_HANDBOOK = 1,
    /// physical
    CARB_BASIS_PHYSICAL = 2,
}

/// The solubility model (default: that of the basis for this drink).
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_model {
    /// not given
    CARB_MODEL_NOT_GIVEN = 0,
    /// chart_fit
    CARB_MODEL_CHART_FIT = 1,
    /// water_core
    CARB_MODEL_WATER_CORE = 2,
    /// eu_wine
    CARB_MODEL_EU_WINE = 3,
}

/// The model of residual CO2 (default: that of the basis).
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_residual_model {
    /// not given
    CARB_RESIDUAL_MODEL_NOT_GIVEN = 0,
    /// table
    CARB_RESIDUAL_MODEL_TABLE = 1,
    /// equilibrium
    CARB_RESIDUAL_MODEL_EQUILIBRIUM = 2,
}

/// The inputs of every function. carb_inputs_init makes one in which nothing is given: numbers are CARB_NOT_GIVEN,
/// choices and flags 0. Set its members, or use carb_inputs_set and carb_inputs_choose by any name. A function
/// refuses what it does not take.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_inputs {
    /// sizeof (carb_inputs)
    pub struct_size: u32,
    /// what the drink is; an enum carb_beverage
    pub beverage: i32,
    /// whether living yeast goes into the package; an enum carb_yeast
    pub yeast: i32,
    /// the priming sugar; an enum carb_sugar
    pub sugar: i32,
    /// the set of assumptions to start from; an enum carb_basis
    pub basis: i32,
    /// the solubility model (default: that of the basis for this drink); an enum carb_model
    pub model: i32,
    /// the model of residual CO2 (default: that of the basis); an enum carb_residual_model
    pub residual_model: i32,
    /// whether the gas over the drink takes its share of the CO2; an enum carb_flag
    pub count_headspace: i32,
    /// alcohol by volume; %, 0 to 25
    pub abv_percent: f64,
    /// everything dissolved except CO2 and alcohol: it lowers the solubility of CO2; g/L, 0 to 400
    pub extract_g_per_l: f64,
    /// what yeast in the package can still turn into CO2: it makes pressure; g/L, 0 to 400
    pub fermentable_g_per_l: f64,
    /// drink that reaches packages (not the batch size: trub and losses stay behind); L, 0.001 to 1000000
    pub packaged_l: f64,
    /// CO2 per litre of drink; g/L, 0 to 30
    pub co2_g_per_l: f64,
    /// highest temperature of the drink since active fermentation; °C, 0 to 45
    pub warmest_c: f64,
    /// temperature of the drink when its package is closed; °C, -5 to 60
    pub filling_c: f64,
    /// temperature of the drink; °C, -5 to 60
    pub temperature_c: f64,
    /// temperature at which bottles are conditioned; °C, -5 to 60
    pub room_c: f64,
    /// height above sea level, from which the air pressure outside follows by ISO 2533; m, -500 to 9000
    pub altitude_m: f64,
    /// measured pressure of the air outside, at the station (not reduced to sea level); kPa, 30 to 110
    pub ambient_kpa: f64,
    /// air pressure reduced to sea level, as weather reports give it; needs the altitude too; kPa, 87 to 109
    pub sea_level_kpa: f64,
    /// pressure above the air outside, total of the gas over the drink; kPa, -110 to 3000
    pub gauge_kpa: f64,
    /// pressure above vacuum, total of the gas over the drink; kPa, 0 to 3000
    pub abs_kpa: f64,
    /// gas space over the drink, in percent of the drink's volume; %, 0 to 100
    pub headspace_percent: f64,
    /// specific gravity 20/20 °C; SG, 0.98 to 1.165
    pub sg: f64,
    /// extract, grams in 100 g of solution; °P, -5.2 to 37
    pub plato: f64,
    /// CO2 really made, in percent of the sugar's theoretical yield; %, 50 to 105
    pub yield_percent: f64,
    /// factor on every solubility; 0.5 to 2
    pub solubility_multiplier: f64,
    /// factor on the residual CO2; 0 to 3
    pub residual_multiplier: f64,
    /// factor on the yield of sugar; 0.5 to 2
    pub yield_multiplier: f64,
}

/// Where each field lies in `carb_inputs`, in the order of the vocabulary.
pub static MEMBERS: &[Member] = &[
    Member { key: Key::Beverage, offset: offset_of!(carb_inputs, beverage) },
    Member { key: Key::Abv, offset: offset_of!(carb_inputs, abv_percent) },
    Member { key: Key::Extract, offset: offset_of!(carb_inputs, extract_g_per_l) },
    Member { key: Key::Fermentable, offset: offset_of!(carb_inputs, fermentable_g_per_l) },
    Member { key: Key::Yeast, offset: offset_of!(carb_inputs, yeast) },
    Member { key: Key::Packaged, offset: offset_of!(carb_inputs, packaged_l) },
    Member { key: Key::Carbonation, offset: offset_of!(carb_inputs, co2_g_per_l) },
    Member { key: Key::Warmest, offset: offset_of!(carb_inputs, warmest_c) },
    Member { key: Key::Filling, offset: offset_of!(carb_inputs, filling_c) },
    Member { key: Key::Temperature, offset: offset_of!(carb_inputs, temperature_c) },
    Member { key: Key::Room, offset: offset_of!(carb_inputs, room_c) },
    Member { key: Key::Altitude, offset: offset_of!(carb_inputs, altitude_m) },
    Member { key: Key::Ambient, offset: offset_of!(carb_inputs, ambient_kpa) },
    Member { key: Key::SeaLevel, offset: offset_of!(carb_inputs, sea_level_kpa) },
    Member { key: Key::Gauge, offset: offset_of!(carb_inputs, gauge_kpa) },
    Member { key: Key::Absolute, offset: offset_of!(carb_inputs, abs_kpa) },
    Member { key: Key::Headspace, offset: offset_of!(carb_inputs, headspace_percent) },
    Member { key: Key::Sugar, offset: offset_of!(carb_inputs, sugar) },
    Member { key: Key::Gravity, offset: offset_of!(carb_inputs, sg) },
    Member { key: Key::Plato, offset: offset_of!(carb_inputs, plato) },
    Member { key: Key::Basis, offset: offset_of!(carb_inputs, basis) },
    Member { key: Key::Model, offset: offset_of!(carb_inputs, model) },
    Member { key: Key::ResidualModel, offset: offset_of!(carb_inputs, residual_model) },
    Member { key: Key::Yield, offset: offset_of!(carb_inputs, yield_percent) },
    Member { key: Key::CountHeadspace, offset: offset_of!(carb_inputs, count_headspace) },
    Member { key: Key::SolubilityFactor, offset: offset_of!(carb_inputs, solubility_multiplier) },
    Member { key: Key::ResidualFactor, offset: offset_of!(carb_inputs, residual_multiplier) },
    Member { key: Key::YieldFactor, offset: offset_of!(carb_inputs, yield_multiplier) },
];

/// What carb_dissolved_co2 answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_dissolved_co2_result {
    /// sizeof (carb_dissolved_co2_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// CO2 per litre of drink; g/L
    pub co2_g_per_l: f64,
}

static DISSOLVED_CO2: Shape = Shape {
    function: &functions::DISSOLVED_CO2,
    size: size_of::<carb_dissolved_co2_result>(),
    outputs: &[
        offset_of!(carb_dissolved_co2_result, co2_g_per_l),
    ],
    cautions: offset_of!(carb_dissolved_co2_result, cautions),
    danger: offset_of!(carb_dissolved_co2_result, danger),
    caution_count: offset_of!(carb_dissolved_co2_result, caution_count),
};

/// CO2 that a drink holds at equilibrium under a pressure of CO2.
///
/// Required: temperature_c.
///
/// One of: gauge_kpa, abs_kpa.
///
/// Optional: altitude_m (needed with a gauge pressure, unless ambient is given), ambient_kpa (needed with a gauge
/// pressure, unless altitude is given), sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer),
/// abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the drink, and noted), basis
/// (handbook), model (that of the basis for the drink), solubility_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_dissolved_co2(
    inputs: *const carb_inputs,
    result: *mut carb_dissolved_co2_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&DISSOLVED_CO2, inputs, result, error) }
}

/// carb_dissolved_co2 element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: gauge_kpa, abs_kpa, temperature_c, altitude_m, ambient_kpa, abv_percent,
/// extract_g_per_l. out receives the output of a name such as "co2_g_per_l" (in any unit) and NaN where status is
/// below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n
/// elements; a series may lie over them.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_dissolved_co2_n(
    inputs: *const carb_inputs,
    series: *const carb_series,
    series_count: usize,
    output: *const c_char,
    n: usize,
    out: *mut f64,
    status: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let arrays = Arrays { inputs, series, series_count, output, n, out, status };
    // SAFETY: the contract of the header is that of `each`.
    unsafe { each(DISSOLVED_CO2.function, &arrays, error) }
}

/// What carb_keg_pressure answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_keg_pressure_result {
    /// sizeof (carb_keg_pressure_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// pressure above the air outside, total of the gas over the drink; kPa
    pub gauge_kpa: f64,
    /// pressure above vacuum, total of the gas over the drink; kPa
    pub abs_kpa: f64,
}

static KEG_PRESSURE: Shape = Shape {
    function: &functions::KEG_PRESSURE,
    size: size_of::<carb_keg_pressure_result>(),
    outputs: &[
        offset_of!(carb_keg_pressure_result, gauge_kpa),
        offset_of!(carb_keg_pressure_result, abs_kpa),
    ],
    cautions: offset_of!(carb_keg_pressure_result, cautions),
    danger: offset_of!(carb_keg_pressure_result, danger),
    caution_count: offset_of!(carb_keg_pressure_result, caution_count),
};

/// Regulator pressure that holds a drink at a carbonation.
///
/// Required: co2_g_per_l, temperature_c.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual for the
/// drink, and noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis
/// for the drink), solubility_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_keg_pressure(
    inputs: *const carb_inputs,
    result: *mut carb_keg_pressure_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&KEG_PRESSURE, inputs, result, error) }
}

/// carb_keg_pressure element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: co2_g_per_l, temperature_c, altitude_m, ambient_kpa, abv_percent,
/// extract_g_per_l. out receives the output of a name such as "gauge_kpa" (in any unit) and NaN where status is
/// below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n
/// elements; a series may lie over them.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_keg_pressure_n(
    inputs: *const carb_inputs,
    series: *const carb_series,
    series_count: usize,
    output: *const c_char,
    n: usize,
    out: *mut f64,
    status: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let arrays = Arrays { inputs, series, series_count, output, n, out, status };
    // SAFETY: the contract of the header is that of `each`.
    unsafe { each(KEG_PRESSURE.function, &arrays, error) }
}

/// What carb_residual_co2 answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_residual_co2_result {
    /// sizeof (carb_residual_co2_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// CO2 per litre of drink; g/L
    pub co2_g_per_l: f64,
}

static RESIDUAL_CO2: Shape = Shape {
    function: &functions::RESIDUAL_CO2,
    size: size_of::<carb_residual_co2_result>(),
    outputs: &[
        offset_of!(carb_residual_co2_result, co2_g_per_l),
    ],
    cautions: offset_of!(carb_residual_co2_result, cautions),
    danger: offset_of!(carb_residual_co2_result, danger),
    caution_count: offset_of!(carb_residual_co2_result, caution_count),
};

/// CO2 left in a drink after fermentation, open to the air.
///
/// Required: warmest_c.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual for the
/// drink, and noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis
/// for the drink), residual_model (that of the basis), solubility_multiplier (1), residual_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_residual_co2(
    inputs: *const carb_inputs,
    result: *mut carb_residual_co2_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&RESIDUAL_CO2, inputs, result, error) }
}

/// carb_residual_co2 element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: warmest_c, altitude_m, ambient_kpa, abv_percent, extract_g_per_l. out receives
/// the output of a name such as "co2_g_per_l" (in any unit) and NaN where status is below 0; status receives
/// CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie
/// over them.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_residual_co2_n(
    inputs: *const carb_inputs,
    series: *const carb_series,
    series_count: usize,
    output: *const c_char,
    n: usize,
    out: *mut f64,
    status: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let arrays = Arrays { inputs, series, series_count, output, n, out, status };
    // SAFETY: the contract of the header is that of `each`.
    unsafe { each(RESIDUAL_CO2.function, &arrays, error) }
}

/// What carb_priming_sugar answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_priming_sugar_result {
    /// sizeof (carb_priming_sugar_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// mass of priming sugar, as sold; g
    pub mass_g: f64,
    /// priming sugar, as sold, per litre of drink; g/L
    pub dose_g_per_l: f64,
}

static PRIMING_SUGAR: Shape = Shape {
    function: &functions::PRIMING_SUGAR,
    size: size_of::<carb_priming_sugar_result>(),
    outputs: &[
        offset_of!(carb_priming_sugar_result, mass_g),
        offset_of!(carb_priming_sugar_result, dose_g_per_l),
    ],
    cautions: offset_of!(carb_priming_sugar_result, cautions),
    danger: offset_of!(carb_priming_sugar_result, danger),
    caution_count: offset_of!(carb_priming_sugar_result, caution_count),
};

/// Priming sugar that gives a drink its carbonation.
///
/// Required: co2_g_per_l, warmest_c, packaged_l.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), sugar (sucrose), beverage (beer), abv_percent
/// (usual for the drink, and noted), extract_g_per_l (usual for the drink, and noted), fermentable_g_per_l (0 for
/// beer and water, and noted; needed for other drinks with living yeast), yeast (live), basis (handbook), model
/// (that of the basis for the drink), residual_model (that of the basis), yield_percent (that of the basis: 100 by
/// the handbook, 95 by the balance), count_headspace (that of the basis), headspace_percent (4 % of the liquid;
/// counts by the physical basis only), filling_c (the warmest; counts by the physical basis only), room_c (20 °C;
/// counts by the physical basis only), solubility_multiplier (1), residual_multiplier (1), yield_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_priming_sugar(
    inputs: *const carb_inputs,
    result: *mut carb_priming_sugar_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&PRIMING_SUGAR, inputs, result, error) }
}

/// carb_priming_sugar element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: co2_g_per_l, warmest_c, packaged_l, altitude_m, ambient_kpa,
/// abv_percent, extract_g_per_l, fermentable_g_per_l, headspace_percent, filling_c, room_c. out receives the output
/// of a name such as "mass_g" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an
/// enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_priming_sugar_n(
    inputs: *const carb_inputs,
    series: *const carb_series,
    series_count: usize,
    output: *const c_char,
    n: usize,
    out: *mut f64,
    status: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let arrays = Arrays { inputs, series, series_count, output, n, out, status };
    // SAFETY: the contract of the header is that of `each`.
    unsafe { each(PRIMING_SUGAR.function, &arrays, error) }
}

/// What carb_package_pressure answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_package_pressure_result {
    /// sizeof (carb_package_pressure_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// expected: pressure above the air outside, total of the gas over the drink; kPa
    pub expected_gauge_kpa: f64,
    /// expected: pressure above vacuum, total of the gas over the drink; kPa
    pub expected_abs_kpa: f64,
    /// expected: CO2 per litre of drink; g/L
    pub expected_co2_g_per_l: f64,
    /// worst: pressure above the air outside, total of the gas over the drink; kPa
    pub worst_gauge_kpa: f64,
    /// worst: pressure above vacuum, total of the gas over the drink; kPa
    pub worst_abs_kpa: f64,
}

static PACKAGE_PRESSURE: Shape = Shape {
    function: &functions::PACKAGE_PRESSURE,
    size: size_of::<carb_package_pressure_result>(),
    outputs: &[
        offset_of!(carb_package_pressure_result, expected_gauge_kpa),
        offset_of!(carb_package_pressure_result, expected_abs_kpa),
        offset_of!(carb_package_pressure_result, expected_co2_g_per_l),
        offset_of!(carb_package_pressure_result, worst_gauge_kpa),
        offset_of!(carb_package_pressure_result, worst_abs_kpa),
    ],
    cautions: offset_of!(carb_package_pressure_result, cautions),
    danger: offset_of!(carb_package_pressure_result, danger),
    caution_count: offset_of!(carb_package_pressure_result, caution_count),
};

/// Pressure in a sealed package, expected and worst, of CO2 stated for liquid and headspace together; the expected
/// volumes are what stays dissolved, and the worst case adds 8 % to what is stated, for nobody can say which part
/// of it is sure.
///
/// Required: co2_g_per_l, temperature_c.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: headspace_percent (4 % of the liquid, and noted), filling_c (20 °C), sea_level_kpa (101.325 kPa, the
/// standard atmosphere), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for
/// the drink, and noted), fermentable_g_per_l (0 for beer and water, and noted; needed for other drinks with living
/// yeast), yeast (live), basis (physical), model (that of the basis for the drink), yield_percent (that of the
/// basis: 100 by the handbook, 95 by the balance), solubility_multiplier (1), yield_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_package_pressure(
    inputs: *const carb_inputs,
    result: *mut carb_package_pressure_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&PACKAGE_PRESSURE, inputs, result, error) }
}

/// carb_package_pressure element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: co2_g_per_l, temperature_c, headspace_percent, filling_c, altitude_m,
/// ambient_kpa, abv_percent, extract_g_per_l, fermentable_g_per_l. out receives the output of a name such as
/// "expected_gauge_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_package_pressure_n(
    inputs: *const carb_inputs,
    series: *const carb_series,
    series_count: usize,
    output: *const c_char,
    n: usize,
    out: *mut f64,
    status: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let arrays = Arrays { inputs, series, series_count, output, n, out, status };
    // SAFETY: the contract of the header is that of `each`.
    unsafe { each(PACKAGE_PRESSURE.function, &arrays, error) }
}

/// What carb_package_carbonation answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_package_carbonation_result {
    /// sizeof (carb_package_carbonation_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// total: CO2 per litre of drink; g/L
    pub total_co2_g_per_l: f64,
    /// dissolved: CO2 per litre of drink; g/L
    pub dissolved_co2_g_per_l: f64,
    /// least_total: CO2 per litre of drink; g/L
    pub least_total_co2_g_per_l: f64,
    /// least_dissolved: CO2 per litre of drink; g/L
    pub least_dissolved_co2_g_per_l: f64,
}

static PACKAGE_CARBONATION: Shape = Shape {
    function: &functions::PACKAGE_CARBONATION,
    size: size_of::<carb_package_carbonation_result>(),
    outputs: &[
        offset_of!(carb_package_carbonation_result, total_co2_g_per_l),
        offset_of!(carb_package_carbonation_result, dissolved_co2_g_per_l),
        offset_of!(carb_package_carbonation_result, least_total_co2_g_per_l),
        offset_of!(carb_package_carbonation_result, least_dissolved_co2_g_per_l),
    ],
    cautions: offset_of!(carb_package_carbonation_result, cautions),
    danger: offset_of!(carb_package_carbonation_result, danger),
    caution_count: offset_of!(carb_package_carbonation_result, caution_count),
};

/// CO2 in a sealed package from the pressure that a gauge on it shows, without air and with all of it.
///
/// Required: gauge_kpa, temperature_c.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: headspace_percent (4 % of the liquid, and noted), filling_c (20 °C), sea_level_kpa (101.325 kPa, the
/// standard atmosphere), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for
/// the drink, and noted), basis (physical), model (that of the basis for the drink), solubility_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_package_carbonation(
    inputs: *const carb_inputs,
    result: *mut carb_package_carbonation_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&PACKAGE_CARBONATION, inputs, result, error) }
}

/// carb_package_carbonation element by element. What does not vary comes from inputs, the rest from the series,
/// each under any of its names; these may vary: gauge_kpa, temperature_c, headspace_percent, filling_c, altitude_m,
/// ambient_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "total_co2_g_per_l" (in any
/// unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum
/// carb_status below 0. Both have n elements; a series may lie over them.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_package_carbonation_n(
    inputs: *const carb_inputs,
    series: *const carb_series,
    series_count: usize,
    output: *const c_char,
    n: usize,
    out: *mut f64,
    status: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let arrays = Arrays { inputs, series, series_count, output, n, out, status };
    // SAFETY: the contract of the header is that of `each`.
    unsafe { each(PACKAGE_CARBONATION.function, &arrays, error) }
}

/// What carb_gravity answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_gravity_result {
    /// sizeof (carb_gravity_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// specific gravity 20/20 °C; SG
    pub sg: f64,
    /// extract, grams in 100 g of solution; °P
    pub plato: f64,
}

static GRAVITY: Shape = Shape {
    function: &functions::GRAVITY,
    size: size_of::<carb_gravity_result>(),
    outputs: &[
        offset_of!(carb_gravity_result, sg),
        offset_of!(carb_gravity_result, plato),
    ],
    cautions: offset_of!(carb_gravity_result, cautions),
    danger: offset_of!(carb_gravity_result, danger),
    caution_count: offset_of!(carb_gravity_result, caution_count),
};

/// A gravity reading as specific gravity and as degrees Plato.
///
/// One of: sg, plato.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_gravity(
    inputs: *const carb_inputs,
    result: *mut carb_gravity_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&GRAVITY, inputs, result, error) }
}

/// carb_gravity element by element. What does not vary comes from inputs, the rest from the series, each under any
/// of its names; these may vary: sg, plato. out receives the output of a name such as "sg" (in any unit) and NaN
/// where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below
/// 0. Both have n elements; a series may lie over them.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_gravity_n(
    inputs: *const carb_inputs,
    series: *const carb_series,
    series_count: usize,
    output: *const c_char,
    n: usize,
    out: *mut f64,
    status: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let arrays = Arrays { inputs, series, series_count, output, n, out, status };
    // SAFETY: the contract of the header is that of `each`.
    unsafe { each(GRAVITY.function, &arrays, error) }
}

/// What carb_ambient_pressure answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_ambient_pressure_result {
    /// sizeof (carb_ambient_pressure_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// measured pressure of the air outside, at the station (not reduced to sea level); kPa
    pub ambient_kpa: f64,
}

static AMBIENT_PRESSURE: Shape = Shape {
    function: &functions::AMBIENT_PRESSURE,
    size: size_of::<carb_ambient_pressure_result>(),
    outputs: &[
        offset_of!(carb_ambient_pressure_result, ambient_kpa),
    ],
    cautions: offset_of!(carb_ambient_pressure_result, cautions),
    danger: offset_of!(carb_ambient_pressure_result, danger),
    caution_count: offset_of!(carb_ambient_pressure_result, caution_count),
};

/// Pressure of the air at an altitude.
///
/// Required: altitude_m.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_ambient_pressure(
    inputs: *const carb_inputs,
    result: *mut carb_ambient_pressure_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&AMBIENT_PRESSURE, inputs, result, error) }
}

/// carb_ambient_pressure element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: altitude_m, sea_level_kpa. out receives the output of a name such as
/// "ambient_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_ambient_pressure_n(
    inputs: *const carb_inputs,
    series: *const carb_series,
    series_count: usize,
    output: *const c_char,
    n: usize,
    out: *mut f64,
    status: *mut i32,
    error: *mut carb_error,
) -> i32 {
    let arrays = Arrays { inputs, series, series_count, output, n, out, status };
    // SAFETY: the contract of the header is that of `each`.
    unsafe { each(AMBIENT_PRESSURE.function, &arrays, error) }
}
