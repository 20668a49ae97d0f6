//! Structs, enums and functions of the header, from the tables of the core.
//!
//! Written by tests/generated.rs (BLESS=1 cargo test -p carb-ffi): do not edit.

use crate::call::{Arrays, Shape, carb_series, each, one};
use crate::error::carb_error;
use crate::inputs::Member;
use crate::rows::{Cell, RowShape, at, count};
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
    /// A list that is too long.
    CARB_TOO_MANY_ROWS = -21,
    /// A list that is needed and empty, or not taken and given.
    CARB_WRONG_LIST = -22,
    /// Bottles that do not hold the drink.
    CARB_BOTTLES_SHORT = -23,
    /// More sugar than the water dissolves.
    CARB_WATER_SHORT = -24,
    /// A value that the others leave no room for.
    CARB_OUT_OF_REACH = -25,
    /// A carbonation that the drink never comes to under this pressure.
    CARB_NEVER_REACHED = -26,
    /// A claim that says nothing that can be looked into.
    CARB_WRONG_CLAIM = -27,
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
    /// the printed tables end; at the value absolute their fit is extrapolated beyond the limit
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
    /// the European form was checked to the limit against printed tables; the value is extrapolated
    CARB_CAUTION_EUROPEAN_TEMPERATURE = 1024,
    /// this correlation for water is given from or to the limit; the value lies outside
    CARB_CAUTION_HENRY_TEMPERATURE = 2048,
    /// viscosity and diffusivity are given from or to the limit; the value lies outside
    CARB_CAUTION_VISCOSITY_TEMPERATURE = 4096,
    /// near the critical point of CO2, the value beyond the limit, a small error of temperature is a large one of
    /// density
    CARB_CAUTION_NEAR_CRITICAL = 8192,
    /// attenuation is known for original extracts between 5 and 25 °P; the value lies beyond the limit
    CARB_CAUTION_ORIGINAL_RANGE = 16384,
    /// the density of the drink is known to the limit alcohol by volume; the value is extrapolated
    CARB_CAUTION_LIQUID_ALCOHOL = 32768,
    /// the density of the drink is known to the limit; the value is extrapolated
    CARB_CAUTION_LIQUID_WARM = 65536,
    /// at a Reynolds number of the value the flow may be smooth (as below the limit) or turbulent (as above 4000),
    /// and change between: what the line takes may be from half to 1.6 times this. Try it, or choose another bore
    CARB_CAUTION_TRANSITION_FLOW = 67108864,
    /// the value is faster than the limit that the trade pours at most: it foams. Take a longer or narrower line;
    /// the pressure belongs to the carbonation
    CARB_CAUTION_FAST_POUR = 134217728,
    /// the solubility of oxygen was measured from 0 to 40 °C; the value lies beyond the limit
    CARB_CAUTION_OXYGEN_TEMPERATURE = 8388608,
    /// how fast a drink takes up CO2 is known for chilled kegs, and carried to the value by the viscosity of water:
    /// beyond the limit it is extrapolated. Take readings
    CARB_CAUTION_UPTAKE_TEMPERATURE = 1048576,
    /// the drink stands the value deep: how fast CO2 passes a still surface is known for kegs, to the limit. Take
    /// readings, and fit the rate to them
    CARB_CAUTION_DEEP_DRINK = 2097152,
    /// the value over the drink is more than every vessel stands: beyond the limit only kegs whose maker rates them
    /// for it, with a relief valve below that. Plastic kegs and fermenters end near 2.4 bar (35 psi); read the
    /// marking, and vent before opening
    CARB_CAUTION_HIGH_GAUGE = 4194304,
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

/// How the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own gas over
/// it), co2_supplied (CO2 let in, at the fermenter's pressure).
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_cold_crash {
    /// not given
    CARB_COLD_CRASH_NOT_GIVEN = 0,
    /// open
    CARB_COLD_CRASH_OPEN = 1,
    /// closed
    CARB_COLD_CRASH_CLOSED = 2,
    /// co2_supplied
    CARB_COLD_CRASH_CO2_SUPPLIED = 3,
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
    /// table_sugar
    CARB_SUGAR_TABLE_SUGAR = 7,
    /// icing_sugar
    CARB_SUGAR_ICING_SUGAR = 8,
    /// turbinado
    CARB_SUGAR_TURBINADO = 9,
    /// demerara
    CARB_SUGAR_DEMERARA = 10,
    /// brown_sugar
    CARB_SUGAR_BROWN_SUGAR = 11,
    /// maple_sugar
    CARB_SUGAR_MAPLE_SUGAR = 12,
    /// invert_syrup
    CARB_SUGAR_INVERT_SYRUP = 13,
    /// hfcs_42
    CARB_SUGAR_HFCS_42 = 14,
    /// hfcs_55
    CARB_SUGAR_HFCS_55 = 15,
    /// high_maltose_syrup
    CARB_SUGAR_HIGH_MALTOSE_SYRUP = 16,
    /// molasses
    CARB_SUGAR_MOLASSES = 17,
    /// blackstrap_molasses
    CARB_SUGAR_BLACKSTRAP_MOLASSES = 18,
    /// cane_syrup
    CARB_SUGAR_CANE_SYRUP = 19,
    /// agave_syrup
    CARB_SUGAR_AGAVE_SYRUP = 20,
    /// candi_syrup
    CARB_SUGAR_CANDI_SYRUP = 21,
    /// liquid_malt_extract
    CARB_SUGAR_LIQUID_MALT_EXTRACT = 22,
    /// apple_juice
    CARB_SUGAR_APPLE_JUICE = 23,
    /// apple_concentrate
    CARB_SUGAR_APPLE_CONCENTRATE = 24,
    /// grape_juice
    CARB_SUGAR_GRAPE_JUICE = 25,
    /// orange_juice
    CARB_SUGAR_ORANGE_JUICE = 26,
    /// pineapple_juice
    CARB_SUGAR_PINEAPPLE_JUICE = 27,
    /// raisins
    CARB_SUGAR_RAISINS = 28,
    /// dates
    CARB_SUGAR_DATES = 29,
    /// corn_syrup_42
    CARB_SUGAR_CORN_SYRUP_42 = 30,
    /// corn_syrup_63
    CARB_SUGAR_CORN_SYRUP_63 = 31,
    /// custom
    CARB_SUGAR_CUSTOM = 32,
}

/// What the fermentable part of a sugar of one's own is.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_sugar_kind {
    /// not given
    CARB_SUGAR_KIND_NOT_GIVEN = 0,
    /// hexose
    CARB_SUGAR_KIND_HEXOSE = 1,
    /// disaccharide
    CARB_SUGAR_KIND_DISACCHARIDE = 2,
    /// trisaccharide
    CARB_SUGAR_KIND_TRISACCHARIDE = 3,
}

/// What is added: a sugar, or something for sweetness.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_addition {
    /// not given
    CARB_ADDITION_NOT_GIVEN = 0,
    /// dextrose_monohydrate
    CARB_ADDITION_DEXTROSE_MONOHYDRATE = 1,
    /// dextrose_anhydrous
    CARB_ADDITION_DEXTROSE_ANHYDROUS = 2,
    /// sucrose
    CARB_ADDITION_SUCROSE = 3,
    /// dry_malt_extract
    CARB_ADDITION_DRY_MALT_EXTRACT = 4,
    /// honey
    CARB_ADDITION_HONEY = 5,
    /// maple_syrup
    CARB_ADDITION_MAPLE_SYRUP = 6,
    /// table_sugar
    CARB_ADDITION_TABLE_SUGAR = 7,
    /// icing_sugar
    CARB_ADDITION_ICING_SUGAR = 8,
    /// turbinado
    CARB_ADDITION_TURBINADO = 9,
    /// demerara
    CARB_ADDITION_DEMERARA = 10,
    /// brown_sugar
    CARB_ADDITION_BROWN_SUGAR = 11,
    /// maple_sugar
    CARB_ADDITION_MAPLE_SUGAR = 12,
    /// invert_syrup
    CARB_ADDITION_INVERT_SYRUP = 13,
    /// hfcs_42
    CARB_ADDITION_HFCS_42 = 14,
    /// hfcs_55
    CARB_ADDITION_HFCS_55 = 15,
    /// high_maltose_syrup
    CARB_ADDITION_HIGH_MALTOSE_SYRUP = 16,
    /// molasses
    CARB_ADDITION_MOLASSES = 17,
    /// blackstrap_molasses
    CARB_ADDITION_BLACKSTRAP_MOLASSES = 18,
    /// cane_syrup
    CARB_ADDITION_CANE_SYRUP = 19,
    /// agave_syrup
    CARB_ADDITION_AGAVE_SYRUP = 20,
    /// candi_syrup
    CARB_ADDITION_CANDI_SYRUP = 21,
    /// liquid_malt_extract
    CARB_ADDITION_LIQUID_MALT_EXTRACT = 22,
    /// apple_juice
    CARB_ADDITION_APPLE_JUICE = 23,
    /// apple_concentrate
    CARB_ADDITION_APPLE_CONCENTRATE = 24,
    /// grape_juice
    CARB_ADDITION_GRAPE_JUICE = 25,
    /// orange_juice
    CARB_ADDITION_ORANGE_JUICE = 26,
    /// pineapple_juice
    CARB_ADDITION_PINEAPPLE_JUICE = 27,
    /// raisins
    CARB_ADDITION_RAISINS = 28,
    /// dates
    CARB_ADDITION_DATES = 29,
    /// corn_syrup_42
    CARB_ADDITION_CORN_SYRUP_42 = 30,
    /// corn_syrup_63
    CARB_ADDITION_CORN_SYRUP_63 = 31,
    /// custom
    CARB_ADDITION_CUSTOM = 32,
    /// lactose
    CARB_ADDITION_LACTOSE = 33,
    /// maltodextrin
    CARB_ADDITION_MALTODEXTRIN = 34,
    /// sucralose
    CARB_ADDITION_SUCRALOSE = 35,
    /// aspartame
    CARB_ADDITION_ASPARTAME = 36,
    /// saccharin
    CARB_ADDITION_SACCHARIN = 37,
    /// stevia
    CARB_ADDITION_STEVIA = 38,
    /// erythritol
    CARB_ADDITION_ERYTHRITOL = 39,
    /// xylitol
    CARB_ADDITION_XYLITOL = 40,
    /// sorbitol
    CARB_ADDITION_SORBITOL = 41,
    /// sweetener_packets
    CARB_ADDITION_SWEETENER_PACKETS = 42,
}

/// Class of the bottle: see the table bottle_classes.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_bottle_class {
    /// not given
    CARB_BOTTLE_CLASS_NOT_GIVEN = 0,
    /// light_one_way
    CARB_BOTTLE_CLASS_LIGHT_ONE_WAY = 1,
    /// heavier_reusable
    CARB_BOTTLE_CLASS_HEAVIER_REUSABLE = 2,
    /// swing_top
    CARB_BOTTLE_CLASS_SWING_TOP = 3,
    /// heavy_belgian
    CARB_BOTTLE_CLASS_HEAVY_BELGIAN = 4,
    /// champagne
    CARB_BOTTLE_CLASS_CHAMPAGNE = 5,
    /// soft_drink_multi_trip
    CARB_BOTTLE_CLASS_SOFT_DRINK_MULTI_TRIP = 6,
    /// soft_drink_glass
    CARB_BOTTLE_CLASS_SOFT_DRINK_GLASS = 7,
    /// pet_soft_drink
    CARB_BOTTLE_CLASS_PET_SOFT_DRINK = 8,
    /// growler
    CARB_BOTTLE_CLASS_GROWLER = 9,
    /// still_wine
    CARB_BOTTLE_CLASS_STILL_WINE = 10,
}

/// Which relation turns specific gravity into extract.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_extract_scale {
    /// not given
    CARB_EXTRACT_SCALE_NOT_GIVEN = 0,
    /// asbc
    CARB_EXTRACT_SCALE_ASBC = 1,
    /// lincoln
    CARB_EXTRACT_SCALE_LINCOLN = 2,
    /// quick
    CARB_EXTRACT_SCALE_QUICK = 3,
}

/// Which relation gives real extract and real attenuation: balling (one less their ratio), or quotient (which
/// counts the mass lost as CO2); alcohol is Balling's by either.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_real_extract_model {
    /// not given
    CARB_REAL_EXTRACT_MODEL_NOT_GIVEN = 0,
    /// balling
    CARB_REAL_EXTRACT_MODEL_BALLING = 1,
    /// quotient
    CARB_REAL_EXTRACT_MODEL_QUOTIENT = 2,
}

/// How the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or rocked.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_method {
    /// not given
    CARB_METHOD_NOT_GIVEN = 0,
    /// still
    CARB_METHOD_STILL = 1,
    /// dip_tube
    CARB_METHOD_DIP_TUBE = 2,
    /// on_side
    CARB_METHOD_ON_SIDE = 3,
    /// stone
    CARB_METHOD_STONE = 4,
    /// rocked
    CARB_METHOD_ROCKED = 5,
}

/// Size of the cylinder or cartridge: see the table cylinder_sizes.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_cylinder_size {
    /// not given
    CARB_CYLINDER_SIZE_NOT_GIVEN = 0,
    /// cartridge_8_g
    CARB_CYLINDER_SIZE_CARTRIDGE_8_G = 1,
    /// cartridge_12_g
    CARB_CYLINDER_SIZE_CARTRIDGE_12_G = 2,
    /// cartridge_16_g
    CARB_CYLINDER_SIZE_CARTRIDGE_16_G = 3,
    /// cartridge_74_g
    CARB_CYLINDER_SIZE_CARTRIDGE_74_G = 4,
    /// cylinder_2_kg
    CARB_CYLINDER_SIZE_CYLINDER_2_KG = 5,
    /// cylinder_5_lb
    CARB_CYLINDER_SIZE_CYLINDER_5_LB = 6,
    /// cylinder_10_lb
    CARB_CYLINDER_SIZE_CYLINDER_10_LB = 7,
    /// cylinder_6_kg
    CARB_CYLINDER_SIZE_CYLINDER_6_KG = 8,
    /// cylinder_20_lb
    CARB_CYLINDER_SIZE_CYLINDER_20_LB = 9,
    /// cylinder_10_kg
    CARB_CYLINDER_SIZE_CYLINDER_10_KG = 10,
}

/// Tubing of the draught line: see the table tubes.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_tube {
    /// not given
    CARB_TUBE_NOT_GIVEN = 0,
    /// vinyl_3_16_in
    CARB_TUBE_VINYL_3_16_IN = 1,
    /// vinyl_1_4_in
    CARB_TUBE_VINYL_1_4_IN = 2,
    /// vinyl_5_16_in
    CARB_TUBE_VINYL_5_16_IN = 3,
    /// vinyl_3_8_in
    CARB_TUBE_VINYL_3_8_IN = 4,
    /// vinyl_1_2_in
    CARB_TUBE_VINYL_1_2_IN = 5,
    /// barrier_3_16_in
    CARB_TUBE_BARRIER_3_16_IN = 6,
    /// barrier_1_4_in
    CARB_TUBE_BARRIER_1_4_IN = 7,
    /// barrier_5_16_in
    CARB_TUBE_BARRIER_5_16_IN = 8,
    /// barrier_3_8_in
    CARB_TUBE_BARRIER_3_8_IN = 9,
    /// steel_1_4_in_od
    CARB_TUBE_STEEL_1_4_IN_OD = 10,
    /// steel_5_16_in_od
    CARB_TUBE_STEEL_5_16_IN_OD = 11,
    /// steel_3_8_in_od
    CARB_TUBE_STEEL_3_8_IN_OD = 12,
    /// metric_7_mm
    CARB_TUBE_METRIC_7_MM = 13,
    /// metric_10_mm
    CARB_TUBE_METRIC_10_MM = 14,
}

/// How the drink goes from the keg into bottles or growlers: see the table filling_losses.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_fill_method {
    /// not given
    CARB_FILL_METHOD_NOT_GIVEN = 0,
    /// automatic
    CARB_FILL_METHOD_AUTOMATIC = 1,
    /// counter_pressure_line
    CARB_FILL_METHOD_COUNTER_PRESSURE_LINE = 2,
    /// hand_counter_pressure
    CARB_FILL_METHOD_HAND_COUNTER_PRESSURE = 3,
    /// tap_tube
    CARB_FILL_METHOD_TAP_TUBE = 4,
    /// tilted_glass
    CARB_FILL_METHOD_TILTED_GLASS = 5,
}

/// How air is kept out of a keg: none, headspace (gas over the drink vented), empty (vented before it is filled),
/// or push (sanitiser pushed out by CO2, then the headspace vented if cycles are given).
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum carb_purge {
    /// not given
    CARB_PURGE_NOT_GIVEN = 0,
    /// none
    CARB_PURGE_NONE = 1,
    /// headspace
    CARB_PURGE_HEADSPACE = 2,
    /// empty
    CARB_PURGE_EMPTY = 3,
    /// push
    CARB_PURGE_PUSH = 4,
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
    /// chart_quadratic
    CARB_MODEL_CHART_QUADRATIC = 4,
    /// european
    CARB_MODEL_EUROPEAN = 5,
    /// iapws_water
    CARB_MODEL_IAPWS_WATER = 6,
    /// carroll_water
    CARB_MODEL_CARROLL_WATER = 7,
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

/// The numbers of the choices of each field, in their order.
pub static NUMBERS: &[(Key, &[i32])] = &[
    (Key::Beverage, &[1, 2, 3, 4, 5, 6]),
    (Key::Yeast, &[1, 2]),
    (Key::ColdCrash, &[1, 2, 3]),
    (Key::Sugar, &[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32]),
    (Key::SugarKind, &[1, 2, 3]),
    (Key::Addition, &[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32, 33, 34, 35, 36, 37, 38, 39, 40, 41, 42]),
    (Key::BottleClass, &[1, 2, 3, 4, 5, 6, 7, 8, 9, 10]),
    (Key::ExtractScale, &[1, 2, 3]),
    (Key::RealExtractModel, &[1, 2]),
    (Key::Method, &[1, 2, 3, 4, 5]),
    (Key::CylinderSize, &[1, 2, 3, 4, 5, 6, 7, 8, 9, 10]),
    (Key::Tube, &[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14]),
    (Key::FillMethod, &[1, 2, 3, 4, 5]),
    (Key::Purge, &[1, 2, 3, 4]),
    (Key::Basis, &[1, 2]),
    (Key::Model, &[1, 2, 3, 4, 5, 6, 7]),
    (Key::ResidualModel, &[1, 2]),
];

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
    /// temperature of the room: that in which bottles condition, or into which CO2 escapes; °C, -5 to 60
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
    /// what the fermentable part of a sugar of one's own is; an enum carb_sugar_kind
    pub sugar_kind: i32,
    /// what is added: a sugar, or something for sweetness; an enum carb_addition
    pub addition: i32,
    /// which relation turns specific gravity into extract; an enum carb_extract_scale
    pub extract_scale: i32,
    /// which relation gives real extract and real attenuation: balling (one less their ratio), or quotient (which
    /// counts the mass lost as CO2); alcohol is Balling's by either; an enum carb_real_extract_model
    pub real_extract_model: i32,
    /// water in a sugar of one's own, percent of its mass; %, 0 to 100
    pub sugar_water_percent: f64,
    /// specific gravity 20/20 °C of a syrup of one's own, from which its water follows; SG, 1 to 1.45
    pub sugar_sg: f64,
    /// what yeast ferments of the dry matter of a sugar of one's own, percent; %, 0 to 100
    pub sugar_fermentable_percent: f64,
    /// sugar or other addition, as sold, per litre of drink; g/L, 0 to 400
    pub dose_g_per_l: f64,
    /// specific gravity 20/20 °C of the wort or must before fermentation; SG, 1.001 to 1.165
    pub original_sg: f64,
    /// extract of the wort or must before fermentation; °P, 0.2 to 37
    pub original_plato: f64,
    /// specific gravity 20/20 °C as it is now; SG, 0.98 to 1.165
    pub current_sg: f64,
    /// apparent extract as it is now; °P, -5.2 to 37
    pub current_plato: f64,
    /// specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test; SG, 0.98 to
    /// 1.165
    pub final_sg: f64,
    /// apparent extract at which fermentation will end, best by a forced-fermentation test; °P, -5.2 to 37
    pub final_plato: f64,
    /// viscosity of the drink over that of water; 0.5 to 10
    pub viscosity_multiplier: f64,
    /// temperature of a cylinder of CO2: from the triple to the critical point, between which it holds liquid; °C,
    /// -56.558 to 30.9782
    pub cylinder_c: f64,
    /// how the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own gas
    /// over it), co2_supplied (CO2 let in, at the fermenter's pressure); an enum carb_cold_crash
    pub cold_crash: i32,
    /// class of the bottle: see the table bottle_classes; an enum carb_bottle_class
    pub bottle_class: i32,
    /// whether the drink was filtered or fined bright; an enum carb_flag
    pub filtered: i32,
    /// whether the volume of the syrup, if one is made, counts; an enum carb_flag
    pub count_syrup: i32,
    /// CO2 in the drink before it is packaged, measured: it overrides what the warmest temperature says; g/L, 0 to
    /// 30
    pub residual_co2_g_per_l: f64,
    /// pressure above the air outside that the fermenter held at the warmest temperature; kPa, 0 to 500
    pub fermenter_gauge_kpa: f64,
    /// temperature to which the drink was chilled before packaging; °C, -5 to 60
    pub crash_c: f64,
    /// gas over the drink in a closed fermenter, in percent of the drink's volume; %, 0 to 1000
    pub fermenter_headspace_percent: f64,
    /// water in which the priming sugar is dissolved; L, 0 to 1000
    pub syrup_water_l: f64,
    /// temperature at which the sugar has to stay dissolved; °C, 0 to 100
    pub dissolving_c: f64,
    /// mass of sugar, or of what is added, as sold; g, 0 to 1000000000
    pub mass_g: f64,
    /// CO2 that the priming wort holds: none in fresh wort, about saturation in fermenting beer; g/L, 0 to 30
    pub wort_co2_g_per_l: f64,
    /// specific gravity 20/20 °C of the priming wort before fermentation; SG, 1.001 to 1.165
    pub wort_original_sg: f64,
    /// extract of the priming wort before fermentation; °P, 0.2 to 37
    pub wort_original_plato: f64,
    /// specific gravity 20/20 °C of the priming wort when it is added; SG, 0.98 to 1.165
    pub wort_current_sg: f64,
    /// apparent extract of the priming wort when it is added; °P, -5.2 to 37
    pub wort_current_plato: f64,
    /// real degree of fermentation at which the yeast ends: the limit attenuation; %, 1 to 100
    pub limit_attenuation_percent: f64,
    /// apparent attenuation at which fermentation is expected to end; %, 1 to 125
    pub expected_attenuation_percent: f64,
    /// pressure above the air outside for which the maker rates the bottle; kPa, 0 to 3000
    pub rating_gauge_kpa: f64,
    /// time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or
    /// step at one temperature; h, 0 to 44444.4444
    pub time_h: f64,
    /// living yeast in the drink; million/mL, 0 to 1000
    pub yeast_million_per_ml: f64,
    /// time that the drink has stood since its fermentation ended; h, 0 to 44444.4444
    pub age_h: f64,
    /// share of the carbonation that is made; %, 0 to 100
    pub progress_percent: f64,
    /// how the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or rocked; an
    /// enum carb_method
    pub method: i32,
    /// size of the cylinder or cartridge: see the table cylinder_sizes; an enum carb_cylinder_size
    pub cylinder_size: i32,
    /// tubing of the draught line: see the table tubes; an enum carb_tube
    pub tube: i32,
    /// how the drink goes from the keg into bottles or growlers: see the table filling_losses; an enum
    /// carb_fill_method
    pub fill_method: i32,
    /// how air is kept out of a keg: none, headspace (gas over the drink vented), empty (vented before it is
    /// filled), or push (sanitiser pushed out by CO2, then the headspace vented if cycles are given); an enum
    /// carb_purge
    pub purge: i32,
    /// not used
    pub reserved_1: i32,
    /// drink that goes into one bottle; L, 0.01 to 100
    pub bottle_l: f64,
    /// CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen; %, 1 to 100
    pub co2_percent: f64,
    /// partial pressure of air, or of nitrogen, that stays in the headspace: that of the air outside where it was
    /// not purged at all; kPa, 0 to 3000
    pub air_abs_kpa: f64,
    /// height of drink above the place that is meant; m, 0 to 30
    pub depth_m: f64,
    /// what the keg or tank holds, filled to the brim; L, 0.1 to 1000000
    pub keg_l: f64,
    /// inner diameter of the keg or tank; m, 0.02 to 20
    pub keg_diameter_m: f64,
    /// pressure above the air outside for which the keg is rated: the least of its marking and its relief valve;
    /// kPa, 0 to 3000
    pub keg_rating_gauge_kpa: f64,
    /// share of the gap to equilibrium that closes in a time: first-order rate of uptake; 1/h, 0 to 360
    pub kla_per_h: f64,
    /// CO2 in the drink at the start; g/L, 0 to 30
    pub start_co2_g_per_l: f64,
    /// high pressure, above the air outside, with which carbonation is started; kPa, 0 to 3000
    pub burst_gauge_kpa: f64,
    /// the most CO2 that the regulator lets through; g/h, 0.0036 to 3600000
    pub supply_g_per_h: f64,
    /// oxygen in the gas over the drink; ppm, 0 to 250000
    pub oxygen_ppm: f64,
    /// oxygen in the vessel before it is purged; ppm, 0 to 250000
    pub start_oxygen_ppm: f64,
    /// oxygen in the CO2 as supplied; ppm, 0 to 50000
    pub gas_oxygen_ppm: f64,
    /// pressure above the air outside to which a vessel is filled before it is vented; kPa, 0.1 to 3000
    pub purge_gauge_kpa: f64,
    /// how often a vessel is filled with CO2 and vented; 0 to 1000
    pub cycles_count: f64,
    /// vessel volumes of CO2 that flow through an open vessel; 0 to 1000
    pub sweeps_count: f64,
    /// air that stays under the lid when a vessel is filled with liquid; L, 0 to 1000
    pub pocket_l: f64,
    /// oxygen dissolved in the drink; µg/L, 0 to 100000
    pub dissolved_oxygen_ug_per_l: f64,
    /// mass of CO2; g, 0 to 1000000000
    pub gas_g: f64,
    /// CO2 lost through leaks and disconnecting, percent of what is used; %, 0 to 500
    pub gas_loss_percent: f64,
    /// CO2 in a full cylinder; g, 0.1 to 1000000
    pub charge_g: f64,
    /// CO2 in a full cylinder over the water that it would hold; g/g, 0.5 to 0.9
    pub filling_ratio_g_per_g: f64,
    /// what the cylinder weighs now; g, 1 to 10000000
    pub gross_g: f64,
    /// what the empty cylinder weighs: it is stamped on it; g, 1 to 10000000
    pub tare_g: f64,
    /// inner diameter of the line; mm, 1 to 50
    pub bore_mm: f64,
    /// length of the draught line; m, 0 to 500
    pub line_m: f64,
    /// height of the faucet over the drink in the keg (its middle, where it is half empty); below 0 where the
    /// faucet is lower; m, -30 to 50
    pub rise_m: f64,
    /// losses of fittings and faucet, in velocity heads of the line; 0 to 1000
    pub fittings_multiplier: f64,
    /// drink that flows; L/min, 0.0006 to 6000
    pub flow_l_per_min: f64,
    /// drink that is poured into one glass; L, 0.01 to 100
    pub glass_l: f64,
    /// time in which the glass is full; s, 0.1 to 36000
    pub pour_seconds: f64,
    /// pressure lost per length of line; bar/m, 0 to 100
    pub resistance_bar_per_m: f64,
    /// pressure at which gas first bubbles from the wet stone; kPa, 0 to 1000
    pub wetting_kpa: f64,
    /// pressure to spare, so that gas flows; kPa, 0 to 1000
    pub margin_kpa: f64,
    /// CO2 lost while filling; g/L, 0 to 30
    pub fill_loss_co2_g_per_l: f64,
    /// volume of the other drink that is blended in; L, 0.001 to 1000000
    pub other_l: f64,
    /// CO2 in the other drink; g/L, 0 to 30
    pub other_co2_g_per_l: f64,
    /// CO2 that escapes into the room; g, 0 to 100000000
    pub released_g: f64,
    /// volume of the room; m3, 0.1 to 1000000
    pub room_m3: f64,
    /// how often the air of the room is exchanged: about 0.5 an hour in a closed room, less in a cold room or a
    /// cellar; 1/h, 0.01 to 360
    pub air_changes_per_h: f64,
    /// CO2 that leaks steadily; g/h, 0 to 3600000
    pub leak_g_per_h: f64,
    /// price of everything that kegging needs and bottling does not; 0 to 1000000000
    pub outfit_money: f64,
    /// price of everything that bottling needs and kegging does not, without the bottles; 0 to 1000000000
    pub bottling_outfit_money: f64,
    /// price of one empty bottle; 0 to 1000000000
    pub bottle_money: f64,
    /// price of one cap; 0 to 1000000000
    pub cap_money: f64,
    /// price of the priming sugar; per kg, 0 to 1000000000
    pub sugar_money_per_kg: f64,
    /// price of CO2; per kg, 0 to 1000000000
    pub gas_money_per_kg: f64,
    /// what the drink itself costs; per L, 0 to 1000000000
    pub drink_money_per_l: f64,
    /// how many batches are looked at; 1 to 100000
    pub batches_count: f64,
    /// how often a bottle is used before it is lost or broken; 1 to 100000
    pub uses_count: f64,
    /// drink lost in bottling, percent; %, 0 to 100
    pub bottle_loss_percent: f64,
    /// drink lost in kegging and in the line, percent; %, 0 to 100
    pub keg_loss_percent: f64,
    /// pressure that faucet, shank, couplings and other lengths of line take, by the trade's balance; kPa, 0 to
    /// 1000
    pub hardware_kpa: f64,
    /// temperature of a keg that is purged while it is empty; °C, -5 to 60
    pub purge_c: f64,
    /// pressure above the air outside at which CO2 pushes liquid out of a full keg; kPa, 0 to 3000
    pub push_gauge_kpa: f64,
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
    Member { key: Key::Residual, offset: offset_of!(carb_inputs, residual_co2_g_per_l) },
    Member { key: Key::FermenterGauge, offset: offset_of!(carb_inputs, fermenter_gauge_kpa) },
    Member { key: Key::ColdCrash, offset: offset_of!(carb_inputs, cold_crash) },
    Member { key: Key::Crash, offset: offset_of!(carb_inputs, crash_c) },
    Member { key: Key::FermenterHeadspace, offset: offset_of!(carb_inputs, fermenter_headspace_percent) },
    Member { key: Key::Altitude, offset: offset_of!(carb_inputs, altitude_m) },
    Member { key: Key::Ambient, offset: offset_of!(carb_inputs, ambient_kpa) },
    Member { key: Key::SeaLevel, offset: offset_of!(carb_inputs, sea_level_kpa) },
    Member { key: Key::Gauge, offset: offset_of!(carb_inputs, gauge_kpa) },
    Member { key: Key::Absolute, offset: offset_of!(carb_inputs, abs_kpa) },
    Member { key: Key::Headspace, offset: offset_of!(carb_inputs, headspace_percent) },
    Member { key: Key::Sugar, offset: offset_of!(carb_inputs, sugar) },
    Member { key: Key::SugarWater, offset: offset_of!(carb_inputs, sugar_water_percent) },
    Member { key: Key::SugarGravity, offset: offset_of!(carb_inputs, sugar_sg) },
    Member { key: Key::SugarFermentable, offset: offset_of!(carb_inputs, sugar_fermentable_percent) },
    Member { key: Key::SugarKind, offset: offset_of!(carb_inputs, sugar_kind) },
    Member { key: Key::SyrupWater, offset: offset_of!(carb_inputs, syrup_water_l) },
    Member { key: Key::Dissolving, offset: offset_of!(carb_inputs, dissolving_c) },
    Member { key: Key::Addition, offset: offset_of!(carb_inputs, addition) },
    Member { key: Key::Mass, offset: offset_of!(carb_inputs, mass_g) },
    Member { key: Key::Dose, offset: offset_of!(carb_inputs, dose_g_per_l) },
    Member { key: Key::WortCo2, offset: offset_of!(carb_inputs, wort_co2_g_per_l) },
    Member { key: Key::WortOriginalGravity, offset: offset_of!(carb_inputs, wort_original_sg) },
    Member { key: Key::WortOriginalPlato, offset: offset_of!(carb_inputs, wort_original_plato) },
    Member { key: Key::WortCurrentGravity, offset: offset_of!(carb_inputs, wort_current_sg) },
    Member { key: Key::WortCurrentPlato, offset: offset_of!(carb_inputs, wort_current_plato) },
    Member { key: Key::LimitAttenuation, offset: offset_of!(carb_inputs, limit_attenuation_percent) },
    Member { key: Key::ExpectedAttenuation, offset: offset_of!(carb_inputs, expected_attenuation_percent) },
    Member { key: Key::Bottle, offset: offset_of!(carb_inputs, bottle_l) },
    Member { key: Key::BottleClass, offset: offset_of!(carb_inputs, bottle_class) },
    Member { key: Key::RatingGauge, offset: offset_of!(carb_inputs, rating_gauge_kpa) },
    Member { key: Key::Time, offset: offset_of!(carb_inputs, time_h) },
    Member { key: Key::Cells, offset: offset_of!(carb_inputs, yeast_million_per_ml) },
    Member { key: Key::Age, offset: offset_of!(carb_inputs, age_h) },
    Member { key: Key::Filtered, offset: offset_of!(carb_inputs, filtered) },
    Member { key: Key::Progress, offset: offset_of!(carb_inputs, progress_percent) },
    Member { key: Key::Gravity, offset: offset_of!(carb_inputs, sg) },
    Member { key: Key::Plato, offset: offset_of!(carb_inputs, plato) },
    Member { key: Key::OriginalGravity, offset: offset_of!(carb_inputs, original_sg) },
    Member { key: Key::OriginalPlato, offset: offset_of!(carb_inputs, original_plato) },
    Member { key: Key::CurrentGravity, offset: offset_of!(carb_inputs, current_sg) },
    Member { key: Key::CurrentPlato, offset: offset_of!(carb_inputs, current_plato) },
    Member { key: Key::FinalGravity, offset: offset_of!(carb_inputs, final_sg) },
    Member { key: Key::FinalPlato, offset: offset_of!(carb_inputs, final_plato) },
    Member { key: Key::ExtractScale, offset: offset_of!(carb_inputs, extract_scale) },
    Member { key: Key::RealExtractModel, offset: offset_of!(carb_inputs, real_extract_model) },
    Member { key: Key::RelativeViscosity, offset: offset_of!(carb_inputs, viscosity_multiplier) },
    Member { key: Key::Cylinder, offset: offset_of!(carb_inputs, cylinder_c) },
    Member { key: Key::Co2Share, offset: offset_of!(carb_inputs, co2_percent) },
    Member { key: Key::HeadspaceAir, offset: offset_of!(carb_inputs, air_abs_kpa) },
    Member { key: Key::Depth, offset: offset_of!(carb_inputs, depth_m) },
    Member { key: Key::Keg, offset: offset_of!(carb_inputs, keg_l) },
    Member { key: Key::KegDiameter, offset: offset_of!(carb_inputs, keg_diameter_m) },
    Member { key: Key::KegRating, offset: offset_of!(carb_inputs, keg_rating_gauge_kpa) },
    Member { key: Key::Method, offset: offset_of!(carb_inputs, method) },
    Member { key: Key::Kla, offset: offset_of!(carb_inputs, kla_per_h) },
    Member { key: Key::Start, offset: offset_of!(carb_inputs, start_co2_g_per_l) },
    Member { key: Key::BurstGauge, offset: offset_of!(carb_inputs, burst_gauge_kpa) },
    Member { key: Key::Supply, offset: offset_of!(carb_inputs, supply_g_per_h) },
    Member { key: Key::Oxygen, offset: offset_of!(carb_inputs, oxygen_ppm) },
    Member { key: Key::StartOxygen, offset: offset_of!(carb_inputs, start_oxygen_ppm) },
    Member { key: Key::GasOxygen, offset: offset_of!(carb_inputs, gas_oxygen_ppm) },
    Member { key: Key::PurgeGauge, offset: offset_of!(carb_inputs, purge_gauge_kpa) },
    Member { key: Key::Cycles, offset: offset_of!(carb_inputs, cycles_count) },
    Member { key: Key::Sweeps, offset: offset_of!(carb_inputs, sweeps_count) },
    Member { key: Key::Pocket, offset: offset_of!(carb_inputs, pocket_l) },
    Member { key: Key::DissolvedOxygen, offset: offset_of!(carb_inputs, dissolved_oxygen_ug_per_l) },
    Member { key: Key::Gas, offset: offset_of!(carb_inputs, gas_g) },
    Member { key: Key::GasLoss, offset: offset_of!(carb_inputs, gas_loss_percent) },
    Member { key: Key::CylinderSize, offset: offset_of!(carb_inputs, cylinder_size) },
    Member { key: Key::Charge, offset: offset_of!(carb_inputs, charge_g) },
    Member { key: Key::FillingRatio, offset: offset_of!(carb_inputs, filling_ratio_g_per_g) },
    Member { key: Key::Gross, offset: offset_of!(carb_inputs, gross_g) },
    Member { key: Key::Tare, offset: offset_of!(carb_inputs, tare_g) },
    Member { key: Key::Tube, offset: offset_of!(carb_inputs, tube) },
    Member { key: Key::Bore, offset: offset_of!(carb_inputs, bore_mm) },
    Member { key: Key::Line, offset: offset_of!(carb_inputs, line_m) },
    Member { key: Key::Rise, offset: offset_of!(carb_inputs, rise_m) },
    Member { key: Key::Fittings, offset: offset_of!(carb_inputs, fittings_multiplier) },
    Member { key: Key::Flow, offset: offset_of!(carb_inputs, flow_l_per_min) },
    Member { key: Key::PourSize, offset: offset_of!(carb_inputs, glass_l) },
    Member { key: Key::Pour, offset: offset_of!(carb_inputs, pour_seconds) },
    Member { key: Key::Resistance, offset: offset_of!(carb_inputs, resistance_bar_per_m) },
    Member { key: Key::Wetting, offset: offset_of!(carb_inputs, wetting_kpa) },
    Member { key: Key::Margin, offset: offset_of!(carb_inputs, margin_kpa) },
    Member { key: Key::FillMethod, offset: offset_of!(carb_inputs, fill_method) },
    Member { key: Key::FillLoss, offset: offset_of!(carb_inputs, fill_loss_co2_g_per_l) },
    Member { key: Key::OtherVolume, offset: offset_of!(carb_inputs, other_l) },
    Member { key: Key::OtherCarbonation, offset: offset_of!(carb_inputs, other_co2_g_per_l) },
    Member { key: Key::Released, offset: offset_of!(carb_inputs, released_g) },
    Member { key: Key::RoomVolume, offset: offset_of!(carb_inputs, room_m3) },
    Member { key: Key::AirChanges, offset: offset_of!(carb_inputs, air_changes_per_h) },
    Member { key: Key::Leak, offset: offset_of!(carb_inputs, leak_g_per_h) },
    Member { key: Key::KegPrice, offset: offset_of!(carb_inputs, outfit_money) },
    Member { key: Key::BottlingPrice, offset: offset_of!(carb_inputs, bottling_outfit_money) },
    Member { key: Key::BottlePrice, offset: offset_of!(carb_inputs, bottle_money) },
    Member { key: Key::CapPrice, offset: offset_of!(carb_inputs, cap_money) },
    Member { key: Key::SugarPrice, offset: offset_of!(carb_inputs, sugar_money_per_kg) },
    Member { key: Key::GasPrice, offset: offset_of!(carb_inputs, gas_money_per_kg) },
    Member { key: Key::DrinkPrice, offset: offset_of!(carb_inputs, drink_money_per_l) },
    Member { key: Key::Batches, offset: offset_of!(carb_inputs, batches_count) },
    Member { key: Key::Uses, offset: offset_of!(carb_inputs, uses_count) },
    Member { key: Key::BottleLoss, offset: offset_of!(carb_inputs, bottle_loss_percent) },
    Member { key: Key::KegLoss, offset: offset_of!(carb_inputs, keg_loss_percent) },
    Member { key: Key::Hardware, offset: offset_of!(carb_inputs, hardware_kpa) },
    Member { key: Key::Purge, offset: offset_of!(carb_inputs, purge) },
    Member { key: Key::PurgeTemperature, offset: offset_of!(carb_inputs, purge_c) },
    Member { key: Key::PushGauge, offset: offset_of!(carb_inputs, push_gauge_kpa) },
    Member { key: Key::Basis, offset: offset_of!(carb_inputs, basis) },
    Member { key: Key::Model, offset: offset_of!(carb_inputs, model) },
    Member { key: Key::ResidualModel, offset: offset_of!(carb_inputs, residual_model) },
    Member { key: Key::Yield, offset: offset_of!(carb_inputs, yield_percent) },
    Member { key: Key::CountHeadspace, offset: offset_of!(carb_inputs, count_headspace) },
    Member { key: Key::CountSyrup, offset: offset_of!(carb_inputs, count_syrup) },
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

/// CO2 that a drink holds at equilibrium under a pressure of CO2, or of a blended gas.
///
/// Required: temperature_c.
///
/// One of: gauge_kpa, abs_kpa.
///
/// Optional: altitude_m (needed with a gauge pressure, unless ambient is given), ambient_kpa (needed with a gauge
/// pressure, unless altitude is given), sea_level_kpa (101.325 kPa, the standard atmosphere), co2_percent (100 %:
/// CO2 and nothing else), air_abs_kpa (0: purged, or driven out), beverage (beer), abv_percent (usual for the
/// drink, and noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis
/// for the drink), solubility_multiplier (1).
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
/// under any of its names; these may vary: gauge_kpa, abs_kpa, temperature_c, altitude_m, ambient_kpa, co2_percent,
/// air_abs_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "co2_g_per_l" (in any unit)
/// and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum
/// carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations,
/// such as glass that may burst, is told of single answers only: ask carb_dissolved_co2 about the extremes.
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

/// Regulator pressure that holds a drink at a carbonation, under CO2 or a blended gas.
///
/// Required: co2_g_per_l, temperature_c.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), co2_percent (100 %: CO2 and nothing else),
/// air_abs_kpa (0: purged, or driven out), beverage (beer), abv_percent (usual for the drink, and noted),
/// extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis for the drink),
/// solubility_multiplier (1).
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
/// any of its names; these may vary: co2_g_per_l, temperature_c, altitude_m, ambient_kpa, co2_percent, air_abs_kpa,
/// abv_percent, extract_g_per_l. out receives the output of a name such as "gauge_kpa" (in any unit) and NaN where
/// status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0.
/// Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as glass that
/// may burst, is told of single answers only: ask carb_keg_pressure about the extremes.
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

/// What carb_gas_blend answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_gas_blend_result {
    /// sizeof (carb_gas_blend_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen; %
    pub co2_percent: f64,
}

static GAS_BLEND: Shape = Shape {
    function: &functions::GAS_BLEND,
    size: size_of::<carb_gas_blend_result>(),
    outputs: &[
        offset_of!(carb_gas_blend_result, co2_percent),
    ],
    cautions: offset_of!(carb_gas_blend_result, cautions),
    danger: offset_of!(carb_gas_blend_result, danger),
    caution_count: offset_of!(carb_gas_blend_result, caution_count),
};

/// Share of CO2 in a blend with nitrogen that holds a drink at a carbonation under a regulator pressure.
///
/// Required: co2_g_per_l, temperature_c, gauge_kpa.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), air_abs_kpa (0: purged, or driven out), beverage
/// (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the drink, and noted), basis
/// (handbook), model (that of the basis for the drink), solubility_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_gas_blend(
    inputs: *const carb_inputs,
    result: *mut carb_gas_blend_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&GAS_BLEND, inputs, result, error) }
}

/// carb_gas_blend element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: co2_g_per_l, temperature_c, gauge_kpa, altitude_m, ambient_kpa, air_abs_kpa,
/// abv_percent, extract_g_per_l. out receives the output of a name such as "co2_percent" (in any unit) and NaN
/// where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below
/// 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as glass that
/// may burst, is told of single answers only: ask carb_gas_blend about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_gas_blend_n(
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
    unsafe { each(GAS_BLEND.function, &arrays, error) }
}

/// What carb_keg_temperature answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_keg_temperature_result {
    /// sizeof (carb_keg_temperature_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// temperature of the drink; °C
    pub temperature_c: f64,
}

static KEG_TEMPERATURE: Shape = Shape {
    function: &functions::KEG_TEMPERATURE,
    size: size_of::<carb_keg_temperature_result>(),
    outputs: &[
        offset_of!(carb_keg_temperature_result, temperature_c),
    ],
    cautions: offset_of!(carb_keg_temperature_result, cautions),
    danger: offset_of!(carb_keg_temperature_result, danger),
    caution_count: offset_of!(carb_keg_temperature_result, caution_count),
};

/// Temperature at which a regulator pressure holds a drink at a carbonation: warmer, it foams and loses CO2.
///
/// Required: co2_g_per_l, gauge_kpa.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), co2_percent (100 %: CO2 and nothing else),
/// air_abs_kpa (0: purged, or driven out), beverage (beer), abv_percent (usual for the drink, and noted),
/// extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis for the drink),
/// solubility_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_keg_temperature(
    inputs: *const carb_inputs,
    result: *mut carb_keg_temperature_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&KEG_TEMPERATURE, inputs, result, error) }
}

/// carb_keg_temperature element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: co2_g_per_l, gauge_kpa, altitude_m, ambient_kpa, co2_percent,
/// air_abs_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "temperature_c" (in any
/// unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum
/// carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations,
/// such as glass that may burst, is told of single answers only: ask carb_keg_temperature about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_keg_temperature_n(
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
    unsafe { each(KEG_TEMPERATURE.function, &arrays, error) }
}

/// What carb_warmed_keg answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_warmed_keg_result {
    /// sizeof (carb_warmed_keg_result)
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

static WARMED_KEG: Shape = Shape {
    function: &functions::WARMED_KEG,
    size: size_of::<carb_warmed_keg_result>(),
    outputs: &[
        offset_of!(carb_warmed_keg_result, expected_gauge_kpa),
        offset_of!(carb_warmed_keg_result, expected_abs_kpa),
        offset_of!(carb_warmed_keg_result, expected_co2_g_per_l),
        offset_of!(carb_warmed_keg_result, worst_gauge_kpa),
        offset_of!(carb_warmed_keg_result, worst_abs_kpa),
    ],
    cautions: offset_of!(carb_warmed_keg_result, cautions),
    danger: offset_of!(carb_warmed_keg_result, danger),
    caution_count: offset_of!(carb_warmed_keg_result, caution_count),
};

/// Pressure in a keg, or a growler, that was sealed in equilibrium at its filling temperature with so much CO2
/// dissolved, and stands warmer or colder: expected and worst, and the CO2 then dissolved.
///
/// Required: co2_g_per_l, filling_c, temperature_c.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: headspace_percent (4 % of the liquid, and noted), air_abs_kpa (0: purged, or driven out),
/// keg_rating_gauge_kpa (no rating is known, and a caution says so), sea_level_kpa (101.325 kPa, the standard
/// atmosphere), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the
/// drink, and noted), fermentable_g_per_l (0 for beer and water, and noted; needed for other drinks with living
/// yeast), yeast (live), basis (physical), model (that of the basis for the drink), yield_percent (that of the
/// basis: 100 by the handbook, 95 by the balance), solubility_multiplier (1), yield_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_warmed_keg(
    inputs: *const carb_inputs,
    result: *mut carb_warmed_keg_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&WARMED_KEG, inputs, result, error) }
}

/// carb_warmed_keg element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: co2_g_per_l, filling_c, temperature_c, headspace_percent, air_abs_kpa,
/// altitude_m, ambient_kpa, abv_percent, extract_g_per_l, fermentable_g_per_l. out receives the output of a name
/// such as "expected_gauge_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of
/// an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger
/// beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_warmed_keg about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_warmed_keg_n(
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
    unsafe { each(WARMED_KEG.function, &arrays, error) }
}

/// What carb_spunding answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_spunding_result {
    /// sizeof (carb_spunding_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// relief: pressure above the air outside, total of the gas over the drink; kPa
    pub relief_gauge_kpa: f64,
    /// relief: pressure above vacuum, total of the gas over the drink; kPa
    pub relief_abs_kpa: f64,
    /// closing: specific gravity 20/20 °C; SG
    pub closing_sg: f64,
    /// closing: extract, grams in 100 g of solution; °P
    pub closing_plato: f64,
    /// by how much the specific gravity lies above the end of fermentation; SG
    pub drop_sg: f64,
    /// CO2 in the drink at the start; g/L
    pub start_co2_g_per_l: f64,
}

static SPUNDING: Shape = Shape {
    function: &functions::SPUNDING,
    size: size_of::<carb_spunding_result>(),
    outputs: &[
        offset_of!(carb_spunding_result, relief_gauge_kpa),
        offset_of!(carb_spunding_result, relief_abs_kpa),
        offset_of!(carb_spunding_result, closing_sg),
        offset_of!(carb_spunding_result, closing_plato),
        offset_of!(carb_spunding_result, drop_sg),
        offset_of!(carb_spunding_result, start_co2_g_per_l),
    ],
    cautions: offset_of!(carb_spunding_result, cautions),
    danger: offset_of!(carb_spunding_result, danger),
    caution_count: offset_of!(carb_spunding_result, caution_count),
};

/// Natural carbonation in the fermenter: the pressure at which its relief valve opens, and the gravity at which it
/// is closed.
///
/// Required: co2_g_per_l, temperature_c, fermenter_headspace_percent.
///
/// One of: final_sg, final_plato.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: start_co2_g_per_l (what it keeps open to the air at that temperature, by the basis), extract_scale
/// (asbc), keg_rating_gauge_kpa (no rating is known, and a caution says so), beverage (beer), abv_percent (usual
/// for the drink, and noted), extract_g_per_l (usual for the drink, and noted), residual_model (that of the basis),
/// sea_level_kpa (101.325 kPa, the standard atmosphere), basis (handbook), model (that of the basis for the drink),
/// solubility_multiplier (1), residual_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_spunding(
    inputs: *const carb_inputs,
    result: *mut carb_spunding_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&SPUNDING, inputs, result, error) }
}

/// carb_spunding element by element. What does not vary comes from inputs, the rest from the series, each under any
/// of its names; these may vary: co2_g_per_l, final_sg, final_plato, temperature_c, fermenter_headspace_percent,
/// start_co2_g_per_l, abv_percent, extract_g_per_l, altitude_m, ambient_kpa. out receives the output of a name such
/// as "relief_gauge_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
/// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_spunding about
/// the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_spunding_n(
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
    unsafe { each(SPUNDING.function, &arrays, error) }
}

/// What carb_closed_fermentation answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_closed_fermentation_result {
    /// sizeof (carb_closed_fermentation_result)
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

static CLOSED_FERMENTATION: Shape = Shape {
    function: &functions::CLOSED_FERMENTATION,
    size: size_of::<carb_closed_fermentation_result>(),
    outputs: &[
        offset_of!(carb_closed_fermentation_result, expected_gauge_kpa),
        offset_of!(carb_closed_fermentation_result, expected_abs_kpa),
        offset_of!(carb_closed_fermentation_result, expected_co2_g_per_l),
        offset_of!(carb_closed_fermentation_result, worst_gauge_kpa),
        offset_of!(carb_closed_fermentation_result, worst_abs_kpa),
    ],
    cautions: offset_of!(carb_closed_fermentation_result, cautions),
    danger: offset_of!(carb_closed_fermentation_result, danger),
    caution_count: offset_of!(carb_closed_fermentation_result, caution_count),
};

/// Pressure that a fermenter comes to without a relief valve when it is closed before its fermentation ends:
/// expected by Balling's yield, and worst by theory, and the CO2 then dissolved.
///
/// Required: temperature_c, fermenter_headspace_percent.
///
/// One of: current_sg, current_plato.
///
/// One of: final_sg, final_plato.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: start_co2_g_per_l (what it keeps open to the air at that temperature, by the basis), extract_scale
/// (asbc), keg_rating_gauge_kpa (no rating is known, and a caution says so), beverage (beer), abv_percent (usual
/// for the drink, and noted), extract_g_per_l (usual for the drink, and noted), residual_model (that of the basis),
/// sea_level_kpa (101.325 kPa, the standard atmosphere), basis (physical), model (that of the basis for the drink),
/// solubility_multiplier (1), residual_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_closed_fermentation(
    inputs: *const carb_inputs,
    result: *mut carb_closed_fermentation_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&CLOSED_FERMENTATION, inputs, result, error) }
}

/// carb_closed_fermentation element by element. What does not vary comes from inputs, the rest from the series,
/// each under any of its names; these may vary: current_sg, current_plato, final_sg, final_plato, temperature_c,
/// fermenter_headspace_percent, start_co2_g_per_l, abv_percent, extract_g_per_l, altitude_m, ambient_kpa. out
/// receives the output of a name such as "expected_gauge_kpa" (in any unit) and NaN where status is below 0; status
/// receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a
/// series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
/// single answers only: ask carb_closed_fermentation about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_closed_fermentation_n(
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
    unsafe { each(CLOSED_FERMENTATION.function, &arrays, error) }
}

/// What carb_stone_pressure answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_stone_pressure_result {
    /// sizeof (carb_stone_pressure_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// pressure above the air outside, total of the gas over the drink; kPa
    pub gauge_kpa: f64,
    /// surface: pressure above the air outside, total of the gas over the drink; kPa
    pub surface_gauge_kpa: f64,
    /// head: difference of pressure; kPa
    pub head_drop_kpa: f64,
}

static STONE_PRESSURE: Shape = Shape {
    function: &functions::STONE_PRESSURE,
    size: size_of::<carb_stone_pressure_result>(),
    outputs: &[
        offset_of!(carb_stone_pressure_result, gauge_kpa),
        offset_of!(carb_stone_pressure_result, surface_gauge_kpa),
        offset_of!(carb_stone_pressure_result, head_drop_kpa),
    ],
    cautions: offset_of!(carb_stone_pressure_result, cautions),
    danger: offset_of!(carb_stone_pressure_result, danger),
    caution_count: offset_of!(carb_stone_pressure_result, caution_count),
};

/// Regulator pressure at which a carbonation stone brings a drink to a carbonation. Only the surface pressure sets
/// that; the head of drink and the wetting pressure of the stone come on top.
///
/// Required: co2_g_per_l, temperature_c, depth_m, wetting_kpa.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: margin_kpa (0), sg (that of the composition), sea_level_kpa (101.325 kPa, the standard atmosphere),
/// beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the drink, and noted),
/// basis (handbook), model (that of the basis for the drink), solubility_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_stone_pressure(
    inputs: *const carb_inputs,
    result: *mut carb_stone_pressure_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&STONE_PRESSURE, inputs, result, error) }
}

/// carb_stone_pressure element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: co2_g_per_l, temperature_c, depth_m, wetting_kpa, margin_kpa, sg,
/// altitude_m, ambient_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "gauge_kpa" (in
/// any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum
/// carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations,
/// such as glass that may burst, is told of single answers only: ask carb_stone_pressure about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_stone_pressure_n(
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
    unsafe { each(STONE_PRESSURE.function, &arrays, error) }
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

/// CO2 left in a drink after fermentation: by its warmest temperature since, open to the air or under pressure, and
/// what a cold crash adds.
///
/// Required: warmest_c.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: fermenter_gauge_kpa (0: open, or under an airlock), cold_crash (open), crash_c (needed with a cold
/// crash that is closed or has CO2 supplied), fermenter_headspace_percent (needed with a closed cold crash),
/// sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual for the drink, and
/// noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis for the
/// drink), residual_model (that of the basis), solubility_multiplier (1), residual_multiplier (1).
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
/// any of its names; these may vary: warmest_c, fermenter_gauge_kpa, crash_c, fermenter_headspace_percent,
/// altitude_m, ambient_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "co2_g_per_l"
/// (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an
/// enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of
/// equations, such as glass that may burst, is told of single answers only: ask carb_residual_co2 about the
/// extremes.
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
    /// mass of sugar, or of what is added, as sold; g
    pub mass_g: f64,
    /// sugar or other addition, as sold, per litre of drink; g/L
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
/// Required: co2_g_per_l, packaged_l.
///
/// Optional: warmest_c (needed, unless the residual CO2 was measured), residual_co2_g_per_l (it follows from the
/// warmest temperature), fermenter_gauge_kpa (0: open, or under an airlock), cold_crash (open), crash_c (needed
/// with a cold crash that is closed or has CO2 supplied), fermenter_headspace_percent (needed with a closed cold
/// crash), altitude_m (needed, unless ambient is given or the residual CO2 was measured), ambient_kpa (needed,
/// unless altitude is given or the residual CO2 was measured), sea_level_kpa (101.325 kPa, the standard
/// atmosphere), sugar (sucrose), sugar_water_percent (only with a custom sugar), sugar_sg (only with a custom
/// sugar), sugar_fermentable_percent (only with a custom sugar), sugar_kind (only with a custom sugar),
/// syrup_water_l (the sugar goes in dry, and its room is left out; counts by the physical basis only), count_syrup
/// (that of the basis), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for
/// the drink, and noted), fermentable_g_per_l (0 for beer and water, and noted; needed for other drinks with living
/// yeast), yeast (live), basis (handbook), model (that of the basis for the drink), residual_model (that of the
/// basis), yield_percent (that of the basis: 100 by the handbook, 95 by the balance), count_headspace (that of the
/// basis), headspace_percent (4 % of the liquid; counts by the physical basis only), filling_c (crash, or else
/// warmest; counts by the physical basis only), room_c (20 °C; counts by the physical basis only),
/// solubility_multiplier (1), residual_multiplier (1), yield_multiplier (1).
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
/// under any of its names; these may vary: co2_g_per_l, packaged_l, warmest_c, residual_co2_g_per_l,
/// fermenter_gauge_kpa, crash_c, fermenter_headspace_percent, altitude_m, ambient_kpa, syrup_water_l, abv_percent,
/// extract_g_per_l, fermentable_g_per_l, headspace_percent, filling_c, room_c. out receives the output of a name
/// such as "mass_g" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
/// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_priming_sugar
/// about the extremes.
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

/// What carb_primed_carbonation answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_primed_carbonation_result {
    /// sizeof (carb_primed_carbonation_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// CO2 per litre of drink; g/L
    pub co2_g_per_l: f64,
    /// added: alcohol by volume; %
    pub added_abv_percent: f64,
    /// alcohol by volume; %
    pub abv_percent: f64,
}

static PRIMED_CARBONATION: Shape = Shape {
    function: &functions::PRIMED_CARBONATION,
    size: size_of::<carb_primed_carbonation_result>(),
    outputs: &[
        offset_of!(carb_primed_carbonation_result, co2_g_per_l),
        offset_of!(carb_primed_carbonation_result, added_abv_percent),
        offset_of!(carb_primed_carbonation_result, abv_percent),
    ],
    cautions: offset_of!(carb_primed_carbonation_result, cautions),
    danger: offset_of!(carb_primed_carbonation_result, danger),
    caution_count: offset_of!(carb_primed_carbonation_result, caution_count),
};

/// Carbonation and alcohol of a drink to which a mass of priming sugar was added: the inverse of priming_sugar.
///
/// Required: mass_g, packaged_l.
///
/// Optional: warmest_c (needed, unless the residual CO2 was measured), residual_co2_g_per_l (it follows from the
/// warmest temperature), fermenter_gauge_kpa (0: open, or under an airlock), cold_crash (open), crash_c (needed
/// with a cold crash that is closed or has CO2 supplied), fermenter_headspace_percent (needed with a closed cold
/// crash), altitude_m (needed, unless ambient is given or the residual CO2 was measured), ambient_kpa (needed,
/// unless altitude is given or the residual CO2 was measured), sea_level_kpa (101.325 kPa, the standard
/// atmosphere), sugar (sucrose), sugar_water_percent (only with a custom sugar), sugar_sg (only with a custom
/// sugar), sugar_fermentable_percent (only with a custom sugar), sugar_kind (only with a custom sugar),
/// syrup_water_l (the sugar goes in dry, and its room is left out; counts by the physical basis only), count_syrup
/// (that of the basis), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for
/// the drink, and noted), fermentable_g_per_l (0 for beer and water, and noted; needed for other drinks with living
/// yeast), yeast (live), basis (handbook), model (that of the basis for the drink), residual_model (that of the
/// basis), yield_percent (that of the basis: 100 by the handbook, 95 by the balance), count_headspace (that of the
/// basis), headspace_percent (4 % of the liquid; counts by the physical basis only), filling_c (crash, or else
/// warmest; counts by the physical basis only), room_c (20 °C; counts by the physical basis only),
/// solubility_multiplier (1), residual_multiplier (1), yield_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_primed_carbonation(
    inputs: *const carb_inputs,
    result: *mut carb_primed_carbonation_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&PRIMED_CARBONATION, inputs, result, error) }
}

/// carb_primed_carbonation element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: mass_g, packaged_l, warmest_c, residual_co2_g_per_l,
/// fermenter_gauge_kpa, crash_c, fermenter_headspace_percent, altitude_m, ambient_kpa, syrup_water_l, abv_percent,
/// extract_g_per_l, fermentable_g_per_l, headspace_percent, filling_c, room_c. out receives the output of a name
/// such as "co2_g_per_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
/// the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_primed_carbonation about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_primed_carbonation_n(
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
    unsafe { each(PRIMED_CARBONATION.function, &arrays, error) }
}

/// What carb_priming_wort answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_priming_wort_result {
    /// sizeof (carb_priming_wort_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// wort or fermenting beer that primes the drink; L
    pub wort_l: f64,
    /// wort that primes the drink, in percent of the drink's volume; %
    pub wort_percent: f64,
}

static PRIMING_WORT: Shape = Shape {
    function: &functions::PRIMING_WORT,
    size: size_of::<carb_priming_wort_result>(),
    outputs: &[
        offset_of!(carb_priming_wort_result, wort_l),
        offset_of!(carb_priming_wort_result, wort_percent),
    ],
    cautions: offset_of!(carb_priming_wort_result, cautions),
    danger: offset_of!(carb_priming_wort_result, danger),
    caution_count: offset_of!(carb_priming_wort_result, caution_count),
};

/// Unfermented wort (gyle, Speise) or fermenting beer (kräusen) that gives a drink its carbonation: current gravity
/// none for the first.
///
/// Required: co2_g_per_l, packaged_l, limit_attenuation_percent.
///
/// One of: wort_original_sg, wort_original_plato.
///
/// Optional: wort_current_sg (fresh wort), wort_current_plato (fresh wort), wort_co2_g_per_l (none in fresh wort,
/// what the drink keeps in fermenting one), extract_scale (asbc), warmest_c (needed, unless the residual CO2 was
/// measured), residual_co2_g_per_l (it follows from the warmest temperature), fermenter_gauge_kpa (0: open, or
/// under an airlock), cold_crash (open), crash_c (needed with a cold crash that is closed or has CO2 supplied),
/// fermenter_headspace_percent (needed with a closed cold crash), altitude_m (needed, unless ambient is given or
/// the residual CO2 was measured), ambient_kpa (needed, unless altitude is given or the residual CO2 was measured),
/// sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual for the drink, and
/// noted), extract_g_per_l (usual for the drink, and noted), fermentable_g_per_l (0 for beer and water, and noted;
/// needed for other drinks with living yeast), yeast (live), basis (handbook), model (that of the basis for the
/// drink), residual_model (that of the basis), yield_percent (that of the basis: 100 by the handbook, 95 by the
/// balance), count_headspace (that of the basis), headspace_percent (4 % of the liquid; counts by the physical
/// basis only), filling_c (crash, or else warmest; counts by the physical basis only), room_c (20 °C; counts by the
/// physical basis only), solubility_multiplier (1), residual_multiplier (1), yield_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_priming_wort(
    inputs: *const carb_inputs,
    result: *mut carb_priming_wort_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&PRIMING_WORT, inputs, result, error) }
}

/// carb_priming_wort element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: co2_g_per_l, packaged_l, wort_original_sg, wort_original_plato,
/// wort_current_sg, wort_current_plato, limit_attenuation_percent, wort_co2_g_per_l, warmest_c,
/// residual_co2_g_per_l, fermenter_gauge_kpa, crash_c, fermenter_headspace_percent, altitude_m, ambient_kpa,
/// abv_percent, extract_g_per_l, fermentable_g_per_l, headspace_percent, filling_c, room_c. out receives the output
/// of a name such as "wort_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an
/// enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger
/// beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_priming_wort about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_priming_wort_n(
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
    unsafe { each(PRIMING_WORT.function, &arrays, error) }
}

/// What carb_priming_syrup answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_priming_syrup_result {
    /// sizeof (carb_priming_syrup_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// volume of the syrup when it has cooled; L
    pub syrup_l: f64,
    /// least: water in which the priming sugar is dissolved; L
    pub least_syrup_water_l: f64,
    /// dissolved dry matter in the syrup, percent of its mass; %
    pub syrup_percent: f64,
}

static PRIMING_SYRUP: Shape = Shape {
    function: &functions::PRIMING_SYRUP,
    size: size_of::<carb_priming_syrup_result>(),
    outputs: &[
        offset_of!(carb_priming_syrup_result, syrup_l),
        offset_of!(carb_priming_syrup_result, least_syrup_water_l),
        offset_of!(carb_priming_syrup_result, syrup_percent),
    ],
    cautions: offset_of!(carb_priming_syrup_result, cautions),
    danger: offset_of!(carb_priming_syrup_result, danger),
    caution_count: offset_of!(carb_priming_syrup_result, caution_count),
};

/// Syrup of a mass of priming sugar: its volume, the least water that dissolves it, its strength.
///
/// Required: mass_g.
///
/// Optional: sugar (sucrose), sugar_water_percent (only with a custom sugar), sugar_sg (only with a custom sugar),
/// sugar_fermentable_percent (only with a custom sugar), sugar_kind (only with a custom sugar), syrup_water_l
/// (three times the mass of the sugar; none for a liquid), dissolving_c (20 °C: it stays dissolved when it has
/// cooled).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_priming_syrup(
    inputs: *const carb_inputs,
    result: *mut carb_priming_syrup_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&PRIMING_SYRUP, inputs, result, error) }
}

/// carb_priming_syrup element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: mass_g, syrup_water_l, dissolving_c. out receives the output of a name
/// such as "syrup_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
/// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_priming_syrup
/// about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_priming_syrup_n(
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
    unsafe { each(PRIMING_SYRUP.function, &arrays, error) }
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
/// yeast), yeast (live), bottle_class (light one-way and heavier reusable bottles are both looked at),
/// rating_gauge_kpa (no rating is known), basis (physical), model (that of the basis for the drink), yield_percent
/// (that of the basis: 100 by the handbook, 95 by the balance), solubility_multiplier (1), yield_multiplier (1).
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
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
/// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_package_pressure
/// about the extremes.
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
/// carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations,
/// such as glass that may burst, is told of single answers only: ask carb_package_carbonation about the extremes.
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

/// What carb_conditioning answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_conditioning_result {
    /// sizeof (carb_conditioning_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// expected: share of the carbonation that is made; %
    pub expected_progress_percent: f64,
    /// least: share of the carbonation that is made; %
    pub least_progress_percent: f64,
    /// most: share of the carbonation that is made; %
    pub most_progress_percent: f64,
}

static CONDITIONING: Shape = Shape {
    function: &functions::CONDITIONING,
    size: size_of::<carb_conditioning_result>(),
    outputs: &[
        offset_of!(carb_conditioning_result, expected_progress_percent),
        offset_of!(carb_conditioning_result, least_progress_percent),
        offset_of!(carb_conditioning_result, most_progress_percent),
    ],
    cautions: offset_of!(carb_conditioning_result, cautions),
    danger: offset_of!(carb_conditioning_result, danger),
    caution_count: offset_of!(carb_conditioning_result, caution_count),
};

/// Share of the carbonation that bottles have made after some time at a temperature: an estimate, with the slow and
/// the fast end of its range.
///
/// Required: room_c, time_h.
///
/// Optional: yeast_million_per_ml (enough: 1 million cells in a millilitre), age_h (fresh), filtered (false),
/// beverage (beer), abv_percent (usual for the drink, and noted).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_conditioning(
    inputs: *const carb_inputs,
    result: *mut carb_conditioning_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&CONDITIONING, inputs, result, error) }
}

/// carb_conditioning element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: room_c, time_h, yeast_million_per_ml, abv_percent. out receives the output of
/// a name such as "expected_progress_percent" (in any unit) and NaN where status is below 0; status receives
/// CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie
/// over them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers
/// only: ask carb_conditioning about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_conditioning_n(
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
    unsafe { each(CONDITIONING.function, &arrays, error) }
}

/// What carb_conditioning_time answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_conditioning_time_result {
    /// sizeof (carb_conditioning_time_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// expected: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a
    /// spell or step at one temperature; h
    pub expected_time_h: f64,
    /// least: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
    /// or step at one temperature; h
    pub least_time_h: f64,
    /// most: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
    /// or step at one temperature; h
    pub most_time_h: f64,
}

static CONDITIONING_TIME: Shape = Shape {
    function: &functions::CONDITIONING_TIME,
    size: size_of::<carb_conditioning_time_result>(),
    outputs: &[
        offset_of!(carb_conditioning_time_result, expected_time_h),
        offset_of!(carb_conditioning_time_result, least_time_h),
        offset_of!(carb_conditioning_time_result, most_time_h),
    ],
    cautions: offset_of!(carb_conditioning_time_result, cautions),
    danger: offset_of!(carb_conditioning_time_result, danger),
    caution_count: offset_of!(carb_conditioning_time_result, caution_count),
};

/// Time until bottles have made a share of their carbonation at a temperature: an estimate, with the fast (least)
/// and the slow (most) end of its range.
///
/// Required: room_c.
///
/// Optional: progress_percent (95 %), yeast_million_per_ml (enough: 1 million cells in a millilitre), age_h
/// (fresh), filtered (false), beverage (beer), abv_percent (usual for the drink, and noted).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_conditioning_time(
    inputs: *const carb_inputs,
    result: *mut carb_conditioning_time_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&CONDITIONING_TIME, inputs, result, error) }
}

/// carb_conditioning_time element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: room_c, progress_percent, yeast_million_per_ml, abv_percent. out
/// receives the output of a name such as "expected_time_h" (in any unit) and NaN where status is below 0; status
/// receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a
/// series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
/// single answers only: ask carb_conditioning_time about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_conditioning_time_n(
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
    unsafe { each(CONDITIONING_TIME.function, &arrays, error) }
}

/// What carb_reyeasting answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_reyeasting_result {
    /// sizeof (carb_reyeasting_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// dry_yeast: mass of sugar, or of what is added, as sold; g
    pub dry_yeast_mass_g: f64,
}

static REYEASTING: Shape = Shape {
    function: &functions::REYEASTING,
    size: size_of::<carb_reyeasting_result>(),
    outputs: &[
        offset_of!(carb_reyeasting_result, dry_yeast_mass_g),
    ],
    cautions: offset_of!(carb_reyeasting_result, cautions),
    danger: offset_of!(carb_reyeasting_result, danger),
    caution_count: offset_of!(carb_reyeasting_result, caution_count),
};

/// Dry yeast that brings living cells into a drink before it is bottled.
///
/// Required: packaged_l.
///
/// Optional: yeast_million_per_ml (1 million cells in a millilitre).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_reyeasting(
    inputs: *const carb_inputs,
    result: *mut carb_reyeasting_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&REYEASTING, inputs, result, error) }
}

/// carb_reyeasting element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: packaged_l, yeast_million_per_ml. out receives the output of a name such as
/// "dry_yeast_mass_g" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
/// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_reyeasting about
/// the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_reyeasting_n(
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
    unsafe { each(REYEASTING.function, &arrays, error) }
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
///
/// Optional: extract_scale (asbc).
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
/// 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as glass that
/// may burst, is told of single answers only: ask carb_gravity about the extremes.
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

/// What carb_attenuation answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_attenuation_result {
    /// sizeof (carb_attenuation_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// extract with the alcohol taken away; °P
    pub real_extract_plato: f64,
    /// apparent: share of the extract that was fermented; %
    pub apparent_attenuation_percent: f64,
    /// real: share of the extract that was fermented; %
    pub real_attenuation_percent: f64,
    /// alcohol by mass; %
    pub abw_percent: f64,
    /// alcohol by volume; %
    pub abv_percent: f64,
    /// quick: alcohol by volume; %
    pub quick_abv_percent: f64,
    /// everything dissolved except CO2 and alcohol: it lowers the solubility of CO2; g/L
    pub extract_g_per_l: f64,
}

static ATTENUATION: Shape = Shape {
    function: &functions::ATTENUATION,
    size: size_of::<carb_attenuation_result>(),
    outputs: &[
        offset_of!(carb_attenuation_result, real_extract_plato),
        offset_of!(carb_attenuation_result, apparent_attenuation_percent),
        offset_of!(carb_attenuation_result, real_attenuation_percent),
        offset_of!(carb_attenuation_result, abw_percent),
        offset_of!(carb_attenuation_result, abv_percent),
        offset_of!(carb_attenuation_result, quick_abv_percent),
        offset_of!(carb_attenuation_result, extract_g_per_l),
    ],
    cautions: offset_of!(carb_attenuation_result, cautions),
    danger: offset_of!(carb_attenuation_result, danger),
    caution_count: offset_of!(carb_attenuation_result, caution_count),
};

/// Real extract, attenuation and alcohol from the gravity before fermentation and the gravity now.
///
/// One of: original_sg, original_plato.
///
/// One of: current_sg, current_plato.
///
/// Optional: extract_scale (asbc), real_extract_model (balling).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_attenuation(
    inputs: *const carb_inputs,
    result: *mut carb_attenuation_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&ATTENUATION, inputs, result, error) }
}

/// carb_attenuation element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: original_sg, original_plato, current_sg, current_plato. out receives the
/// output of a name such as "real_extract_plato" (in any unit) and NaN where status is below 0; status receives
/// CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie
/// over them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers
/// only: ask carb_attenuation about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_attenuation_n(
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
    unsafe { each(ATTENUATION.function, &arrays, error) }
}

/// What carb_final_gravity answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_final_gravity_result {
    /// sizeof (carb_final_gravity_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test; SG
    pub final_sg: f64,
    /// apparent extract at which fermentation will end, best by a forced-fermentation test; °P
    pub final_plato: f64,
}

static FINAL_GRAVITY: Shape = Shape {
    function: &functions::FINAL_GRAVITY,
    size: size_of::<carb_final_gravity_result>(),
    outputs: &[
        offset_of!(carb_final_gravity_result, final_sg),
        offset_of!(carb_final_gravity_result, final_plato),
    ],
    cautions: offset_of!(carb_final_gravity_result, cautions),
    danger: offset_of!(carb_final_gravity_result, danger),
    caution_count: offset_of!(carb_final_gravity_result, caution_count),
};

/// Gravity at which a fermentation ends, from the original gravity and the attenuation expected of it.
///
/// Required: expected_attenuation_percent.
///
/// One of: original_sg, original_plato.
///
/// Optional: extract_scale (asbc).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_final_gravity(
    inputs: *const carb_inputs,
    result: *mut carb_final_gravity_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&FINAL_GRAVITY, inputs, result, error) }
}

/// carb_final_gravity element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: original_sg, original_plato, expected_attenuation_percent. out receives
/// the output of a name such as "final_sg" (in any unit) and NaN where status is below 0; status receives CARB_OK,
/// or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over
/// them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_final_gravity about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_final_gravity_n(
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
    unsafe { each(FINAL_GRAVITY.function, &arrays, error) }
}

/// What carb_gravity_co2 answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_gravity_co2_result {
    /// sizeof (carb_gravity_co2_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// what yeast in the package can still turn into CO2: it makes pressure; g/L
    pub fermentable_g_per_l: f64,
    /// balling: CO2 per litre of drink; g/L
    pub balling_co2_g_per_l: f64,
    /// theory: CO2 per litre of drink; g/L
    pub theory_co2_g_per_l: f64,
}

static GRAVITY_CO2: Shape = Shape {
    function: &functions::GRAVITY_CO2,
    size: size_of::<carb_gravity_co2_result>(),
    outputs: &[
        offset_of!(carb_gravity_co2_result, fermentable_g_per_l),
        offset_of!(carb_gravity_co2_result, balling_co2_g_per_l),
        offset_of!(carb_gravity_co2_result, theory_co2_g_per_l),
    ],
    cautions: offset_of!(carb_gravity_co2_result, cautions),
    danger: offset_of!(carb_gravity_co2_result, danger),
    caution_count: offset_of!(carb_gravity_co2_result, caution_count),
};

/// Extract that is still to ferment, and the CO2 of it, from the gravity now and the gravity at the end.
///
/// One of: current_sg, current_plato.
///
/// One of: final_sg, final_plato.
///
/// Optional: extract_scale (asbc).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_gravity_co2(
    inputs: *const carb_inputs,
    result: *mut carb_gravity_co2_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&GRAVITY_CO2, inputs, result, error) }
}

/// carb_gravity_co2 element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: current_sg, current_plato, final_sg, final_plato. out receives the output of a
/// name such as "fermentable_g_per_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or
/// bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them.
/// A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_gravity_co2 about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_gravity_co2_n(
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
    unsafe { each(GRAVITY_CO2.function, &arrays, error) }
}

/// What carb_added_co2 answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_added_co2_result {
    /// sizeof (carb_added_co2_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// expected: CO2 per litre of drink; g/L
    pub expected_co2_g_per_l: f64,
    /// worst: CO2 per litre of drink; g/L
    pub worst_co2_g_per_l: f64,
    /// added: alcohol by volume; %
    pub added_abv_percent: f64,
}

static ADDED_CO2: Shape = Shape {
    function: &functions::ADDED_CO2,
    size: size_of::<carb_added_co2_result>(),
    outputs: &[
        offset_of!(carb_added_co2_result, expected_co2_g_per_l),
        offset_of!(carb_added_co2_result, worst_co2_g_per_l),
        offset_of!(carb_added_co2_result, added_abv_percent),
    ],
    cautions: offset_of!(carb_added_co2_result, cautions),
    danger: offset_of!(carb_added_co2_result, danger),
    caution_count: offset_of!(carb_added_co2_result, caution_count),
};

/// CO2 and alcohol that a sugar or a sweetener, added to a drink with living yeast, makes in the package, beside
/// what the drink holds and what primes it.
///
/// Required: addition, dose_g_per_l.
///
/// Optional: sugar_water_percent (only with a custom sugar), sugar_sg (only with a custom sugar),
/// sugar_fermentable_percent (only with a custom sugar), sugar_kind (only with a custom sugar), basis (handbook),
/// yield_percent (that of the basis: 100 by the handbook, 95 by the balance), yield_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_added_co2(
    inputs: *const carb_inputs,
    result: *mut carb_added_co2_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&ADDED_CO2, inputs, result, error) }
}

/// carb_added_co2 element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: dose_g_per_l. out receives the output of a name such as "expected_co2_g_per_l"
/// (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an
/// enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of
/// equations, such as glass that may burst, is told of single answers only: ask carb_added_co2 about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_added_co2_n(
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
    unsafe { each(ADDED_CO2.function, &arrays, error) }
}

/// What carb_drink_properties answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_drink_properties_result {
    /// sizeof (carb_drink_properties_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// density; kg/m3
    pub density_kg_per_m3: f64,
    /// dynamic viscosity; mPa s
    pub viscosity_mpa_s: f64,
    /// diffusivity of dissolved CO2; m2/s
    pub diffusivity_m2_per_s: f64,
}

static DRINK_PROPERTIES: Shape = Shape {
    function: &functions::DRINK_PROPERTIES,
    size: size_of::<carb_drink_properties_result>(),
    outputs: &[
        offset_of!(carb_drink_properties_result, density_kg_per_m3),
        offset_of!(carb_drink_properties_result, viscosity_mpa_s),
        offset_of!(carb_drink_properties_result, diffusivity_m2_per_s),
    ],
    cautions: offset_of!(carb_drink_properties_result, cautions),
    danger: offset_of!(carb_drink_properties_result, danger),
    caution_count: offset_of!(carb_drink_properties_result, caution_count),
};

/// Density and viscosity of a drink, and the diffusivity of CO2 in it.
///
/// Required: temperature_c.
///
/// Optional: sg (that of the composition), viscosity_multiplier (usual for the drink, as the working shows),
/// beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the drink, and noted).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_drink_properties(
    inputs: *const carb_inputs,
    result: *mut carb_drink_properties_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&DRINK_PROPERTIES, inputs, result, error) }
}

/// carb_drink_properties element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: temperature_c, sg, viscosity_multiplier, abv_percent, extract_g_per_l.
/// out receives the output of a name such as "density_kg_per_m3" (in any unit) and NaN where status is below 0;
/// status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements;
/// a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
/// single answers only: ask carb_drink_properties about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_drink_properties_n(
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
    unsafe { each(DRINK_PROPERTIES.function, &arrays, error) }
}

/// What carb_co2_saturation answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_co2_saturation_result {
    /// sizeof (carb_co2_saturation_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// pressure above vacuum, total of the gas over the drink; kPa
    pub abs_kpa: f64,
    /// liquid: density; kg/m3
    pub liquid_density_kg_per_m3: f64,
    /// vapour: density; kg/m3
    pub vapour_density_kg_per_m3: f64,
}

static CO2_SATURATION: Shape = Shape {
    function: &functions::CO2_SATURATION,
    size: size_of::<carb_co2_saturation_result>(),
    outputs: &[
        offset_of!(carb_co2_saturation_result, abs_kpa),
        offset_of!(carb_co2_saturation_result, liquid_density_kg_per_m3),
        offset_of!(carb_co2_saturation_result, vapour_density_kg_per_m3),
    ],
    cautions: offset_of!(carb_co2_saturation_result, cautions),
    danger: offset_of!(carb_co2_saturation_result, danger),
    caution_count: offset_of!(carb_co2_saturation_result, caution_count),
};

/// Absolute pressure and densities of CO2 in a cylinder that still holds liquid, however much; a gauge shows an
/// atmosphere less.
///
/// Required: cylinder_c.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_co2_saturation(
    inputs: *const carb_inputs,
    result: *mut carb_co2_saturation_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&CO2_SATURATION, inputs, result, error) }
}

/// carb_co2_saturation element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: cylinder_c. out receives the output of a name such as "abs_kpa" (in any
/// unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum
/// carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations,
/// such as glass that may burst, is told of single answers only: ask carb_co2_saturation about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_co2_saturation_n(
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
    unsafe { each(CO2_SATURATION.function, &arrays, error) }
}

/// What carb_line_flow answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_line_flow_result {
    /// sizeof (carb_line_flow_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// drink that flows; L/min
    pub flow_l_per_min: f64,
    /// time in which the glass is full; s
    pub pour_seconds: f64,
    /// speed of the drink in the line; m/s
    pub speed_m_per_s: f64,
    /// Reynolds number of the flow;
    pub reynolds_multiplier: f64,
    /// pressure lost per length of line; bar/m
    pub resistance_bar_per_m: f64,
    /// drink that stands in the line; L
    pub line_l: f64,
}

static LINE_FLOW: Shape = Shape {
    function: &functions::LINE_FLOW,
    size: size_of::<carb_line_flow_result>(),
    outputs: &[
        offset_of!(carb_line_flow_result, flow_l_per_min),
        offset_of!(carb_line_flow_result, pour_seconds),
        offset_of!(carb_line_flow_result, speed_m_per_s),
        offset_of!(carb_line_flow_result, reynolds_multiplier),
        offset_of!(carb_line_flow_result, resistance_bar_per_m),
        offset_of!(carb_line_flow_result, line_l),
    ],
    cautions: offset_of!(carb_line_flow_result, cautions),
    danger: offset_of!(carb_line_flow_result, danger),
    caution_count: offset_of!(carb_line_flow_result, caution_count),
};

/// What a keg pours through a draught line, by physics: flow, time of a pour, speed, and the pressure that the line
/// takes per length.
///
/// Required: gauge_kpa, line_m, temperature_c.
///
/// One of: tube, bore_mm.
///
/// Optional: rise_m (0: the faucet at the height of the drink), fittings_multiplier (3, of a home line: judgement),
/// glass_l (a US pint, 473.176 mL), sg (that of the composition), viscosity_multiplier (usual for the drink, as the
/// working shows), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the
/// drink, and noted).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_line_flow(
    inputs: *const carb_inputs,
    result: *mut carb_line_flow_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&LINE_FLOW, inputs, result, error) }
}

/// carb_line_flow element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: gauge_kpa, line_m, bore_mm, rise_m, fittings_multiplier, glass_l,
/// temperature_c, sg, viscosity_multiplier, abv_percent, extract_g_per_l. out receives the output of a name such as
/// "flow_l_per_min" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
/// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_line_flow about
/// the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_line_flow_n(
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
    unsafe { each(LINE_FLOW.function, &arrays, error) }
}

/// What carb_line_length answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_line_length_result {
    /// sizeof (carb_line_length_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// length of the draught line; m
    pub line_m: f64,
    /// drink that stands in the line; L
    pub line_l: f64,
    /// drink that flows; L/min
    pub flow_l_per_min: f64,
    /// time in which the glass is full; s
    pub pour_seconds: f64,
    /// speed of the drink in the line; m/s
    pub speed_m_per_s: f64,
    /// Reynolds number of the flow;
    pub reynolds_multiplier: f64,
    /// pressure lost per length of line; bar/m
    pub resistance_bar_per_m: f64,
}

static LINE_LENGTH: Shape = Shape {
    function: &functions::LINE_LENGTH,
    size: size_of::<carb_line_length_result>(),
    outputs: &[
        offset_of!(carb_line_length_result, line_m),
        offset_of!(carb_line_length_result, line_l),
        offset_of!(carb_line_length_result, flow_l_per_min),
        offset_of!(carb_line_length_result, pour_seconds),
        offset_of!(carb_line_length_result, speed_m_per_s),
        offset_of!(carb_line_length_result, reynolds_multiplier),
        offset_of!(carb_line_length_result, resistance_bar_per_m),
    ],
    cautions: offset_of!(carb_line_length_result, cautions),
    danger: offset_of!(carb_line_length_result, danger),
    caution_count: offset_of!(carb_line_length_result, caution_count),
};

/// Length of draught line through which a keg pours as fast as wanted, by physics, and the drink that stands in it.
///
/// Required: gauge_kpa, temperature_c.
///
/// One of: flow_l_per_min, pour_seconds.
///
/// One of: tube, bore_mm.
///
/// Optional: rise_m (0: the faucet at the height of the drink), fittings_multiplier (3, of a home line: judgement),
/// glass_l (a US pint, 473.176 mL), sg (that of the composition), viscosity_multiplier (usual for the drink, as the
/// working shows), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the
/// drink, and noted).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_line_length(
    inputs: *const carb_inputs,
    result: *mut carb_line_length_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&LINE_LENGTH, inputs, result, error) }
}

/// carb_line_length element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: gauge_kpa, flow_l_per_min, pour_seconds, bore_mm, rise_m, fittings_multiplier,
/// glass_l, temperature_c, sg, viscosity_multiplier, abv_percent, extract_g_per_l. out receives the output of a
/// name such as "line_m" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
/// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_line_length
/// about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_line_length_n(
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
    unsafe { each(LINE_LENGTH.function, &arrays, error) }
}

/// What carb_line_pressure answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_line_pressure_result {
    /// sizeof (carb_line_pressure_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// pressure above the air outside, total of the gas over the drink; kPa
    pub gauge_kpa: f64,
    /// lift: difference of pressure; kPa
    pub lift_drop_kpa: f64,
    /// line: difference of pressure; kPa
    pub line_drop_kpa: f64,
    /// fittings: difference of pressure; kPa
    pub fittings_drop_kpa: f64,
    /// drink that flows; L/min
    pub flow_l_per_min: f64,
    /// time in which the glass is full; s
    pub pour_seconds: f64,
    /// speed of the drink in the line; m/s
    pub speed_m_per_s: f64,
    /// Reynolds number of the flow;
    pub reynolds_multiplier: f64,
}

static LINE_PRESSURE: Shape = Shape {
    function: &functions::LINE_PRESSURE,
    size: size_of::<carb_line_pressure_result>(),
    outputs: &[
        offset_of!(carb_line_pressure_result, gauge_kpa),
        offset_of!(carb_line_pressure_result, lift_drop_kpa),
        offset_of!(carb_line_pressure_result, line_drop_kpa),
        offset_of!(carb_line_pressure_result, fittings_drop_kpa),
        offset_of!(carb_line_pressure_result, flow_l_per_min),
        offset_of!(carb_line_pressure_result, pour_seconds),
        offset_of!(carb_line_pressure_result, speed_m_per_s),
        offset_of!(carb_line_pressure_result, reynolds_multiplier),
    ],
    cautions: offset_of!(carb_line_pressure_result, cautions),
    danger: offset_of!(carb_line_pressure_result, danger),
    caution_count: offset_of!(carb_line_pressure_result, caution_count),
};

/// Pressure in the keg that a draught line takes at a flow, by physics, and what of it rise, tube and fittings
/// take. To compare: the pressure of a keg belongs to its carbonation, and the line is made to fit it.
///
/// Required: line_m, temperature_c.
///
/// One of: flow_l_per_min, pour_seconds.
///
/// One of: tube, bore_mm.
///
/// Optional: rise_m (0: the faucet at the height of the drink), fittings_multiplier (3, of a home line: judgement),
/// glass_l (a US pint, 473.176 mL), sg (that of the composition), viscosity_multiplier (usual for the drink, as the
/// working shows), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the
/// drink, and noted).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_line_pressure(
    inputs: *const carb_inputs,
    result: *mut carb_line_pressure_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&LINE_PRESSURE, inputs, result, error) }
}

/// carb_line_pressure element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: line_m, flow_l_per_min, pour_seconds, bore_mm, rise_m,
/// fittings_multiplier, glass_l, temperature_c, sg, viscosity_multiplier, abv_percent, extract_g_per_l. out
/// receives the output of a name such as "gauge_kpa" (in any unit) and NaN where status is below 0; status receives
/// CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie
/// over them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers
/// only: ask carb_line_pressure about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_line_pressure_n(
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
    unsafe { each(LINE_PRESSURE.function, &arrays, error) }
}

/// What carb_handbook_line answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_handbook_line_result {
    /// sizeof (carb_handbook_line_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// length of the draught line; m
    pub line_m: f64,
    /// lift: difference of pressure; kPa
    pub lift_drop_kpa: f64,
    /// pressure lost per length of line; bar/m
    pub resistance_bar_per_m: f64,
}

static HANDBOOK_LINE: Shape = Shape {
    function: &functions::HANDBOOK_LINE,
    size: size_of::<carb_handbook_line_result>(),
    outputs: &[
        offset_of!(carb_handbook_line_result, line_m),
        offset_of!(carb_handbook_line_result, lift_drop_kpa),
        offset_of!(carb_handbook_line_result, resistance_bar_per_m),
    ],
    cautions: offset_of!(carb_handbook_line_result, cautions),
    danger: offset_of!(carb_handbook_line_result, danger),
    caution_count: offset_of!(carb_handbook_line_result, caution_count),
};

/// Length of draught line by the trade's balance: what rise (0.5 psi per foot) and hardware leave, over the tube's
/// resistance by the handbook. Meant for 2 US fl oz/s, the German figures for 3 L/min.
///
/// Required: gauge_kpa.
///
/// One of: tube, resistance_bar_per_m.
///
/// Optional: rise_m (0: the faucet at the height of the drink), hardware_kpa (0).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_handbook_line(
    inputs: *const carb_inputs,
    result: *mut carb_handbook_line_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&HANDBOOK_LINE, inputs, result, error) }
}

/// carb_handbook_line element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: gauge_kpa, resistance_bar_per_m, rise_m, hardware_kpa. out receives the
/// output of a name such as "line_m" (in any unit) and NaN where status is below 0; status receives CARB_OK, or
/// bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them.
/// A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_handbook_line about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_handbook_line_n(
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
    unsafe { each(HANDBOOK_LINE.function, &arrays, error) }
}

/// What carb_handbook_pressure answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_handbook_pressure_result {
    /// sizeof (carb_handbook_pressure_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// pressure above the air outside, total of the gas over the drink; kPa
    pub gauge_kpa: f64,
    /// lift: difference of pressure; kPa
    pub lift_drop_kpa: f64,
    /// line: difference of pressure; kPa
    pub line_drop_kpa: f64,
}

static HANDBOOK_PRESSURE: Shape = Shape {
    function: &functions::HANDBOOK_PRESSURE,
    size: size_of::<carb_handbook_pressure_result>(),
    outputs: &[
        offset_of!(carb_handbook_pressure_result, gauge_kpa),
        offset_of!(carb_handbook_pressure_result, lift_drop_kpa),
        offset_of!(carb_handbook_pressure_result, line_drop_kpa),
    ],
    cautions: offset_of!(carb_handbook_pressure_result, cautions),
    danger: offset_of!(carb_handbook_pressure_result, danger),
    caution_count: offset_of!(carb_handbook_pressure_result, caution_count),
};

/// Pressure that a draught line takes by the trade's balance: tube, rise (0.5 psi per foot) and hardware.
///
/// Required: line_m.
///
/// One of: tube, resistance_bar_per_m.
///
/// Optional: rise_m (0: the faucet at the height of the drink), hardware_kpa (0).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_handbook_pressure(
    inputs: *const carb_inputs,
    result: *mut carb_handbook_pressure_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&HANDBOOK_PRESSURE, inputs, result, error) }
}

/// carb_handbook_pressure element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: line_m, resistance_bar_per_m, rise_m, hardware_kpa. out receives the
/// output of a name such as "gauge_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK, or
/// bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them.
/// A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_handbook_pressure about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_handbook_pressure_n(
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
    unsafe { each(HANDBOOK_PRESSURE.function, &arrays, error) }
}

/// What carb_filling_carbonation answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_filling_carbonation_result {
    /// sizeof (carb_filling_carbonation_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// expected: CO2 per litre of drink; g/L
    pub expected_co2_g_per_l: f64,
    /// least: CO2 per litre of drink; g/L
    pub least_co2_g_per_l: f64,
    /// most: CO2 per litre of drink; g/L
    pub most_co2_g_per_l: f64,
}

static FILLING_CARBONATION: Shape = Shape {
    function: &functions::FILLING_CARBONATION,
    size: size_of::<carb_filling_carbonation_result>(),
    outputs: &[
        offset_of!(carb_filling_carbonation_result, expected_co2_g_per_l),
        offset_of!(carb_filling_carbonation_result, least_co2_g_per_l),
        offset_of!(carb_filling_carbonation_result, most_co2_g_per_l),
    ],
    cautions: offset_of!(carb_filling_carbonation_result, cautions),
    danger: offset_of!(carb_filling_carbonation_result, danger),
    caution_count: offset_of!(carb_filling_carbonation_result, caution_count),
};

/// CO2 that a keg or tank has to have for a carbonation in the package that is filled from it: expected, and with
/// the least and the most that filling may lose. A loss that is told is taken as known.
///
/// Required: co2_g_per_l.
///
/// One of: fill_method, fill_loss_co2_g_per_l.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_filling_carbonation(
    inputs: *const carb_inputs,
    result: *mut carb_filling_carbonation_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&FILLING_CARBONATION, inputs, result, error) }
}

/// carb_filling_carbonation element by element. What does not vary comes from inputs, the rest from the series,
/// each under any of its names; these may vary: co2_g_per_l, fill_loss_co2_g_per_l. out receives the output of a
/// name such as "expected_co2_g_per_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or
/// bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them.
/// A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_filling_carbonation about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_filling_carbonation_n(
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
    unsafe { each(FILLING_CARBONATION.function, &arrays, error) }
}

/// What carb_blend answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_blend_result {
    /// sizeof (carb_blend_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// drink that reaches packages (not the batch size: trub and losses stay behind); L
    pub packaged_l: f64,
    /// mixed: CO2 per litre of drink; g/L
    pub mixed_co2_g_per_l: f64,
    /// kept: CO2 per litre of drink; g/L
    pub kept_co2_g_per_l: f64,
    /// CO2 that escapes into the room; g
    pub released_g: f64,
}

static BLEND: Shape = Shape {
    function: &functions::BLEND,
    size: size_of::<carb_blend_result>(),
    outputs: &[
        offset_of!(carb_blend_result, packaged_l),
        offset_of!(carb_blend_result, mixed_co2_g_per_l),
        offset_of!(carb_blend_result, kept_co2_g_per_l),
        offset_of!(carb_blend_result, released_g),
    ],
    cautions: offset_of!(carb_blend_result, cautions),
    danger: offset_of!(carb_blend_result, danger),
    caution_count: offset_of!(carb_blend_result, caution_count),
};

/// Volume and CO2 of two drinks blended: of the mix, and what of it stays at a temperature under a pressure of CO2
/// (0 where it is open); without a temperature all is kept under pressure, and stays.
///
/// Required: packaged_l, co2_g_per_l, other_l, other_co2_g_per_l.
///
/// Optional: temperature_c (all is kept under pressure), gauge_kpa (0: open; needs the temperature), altitude_m
/// (needed with a temperature, unless ambient is given), ambient_kpa (needed with a temperature, unless altitude is
/// given), sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual for the drink,
/// and noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis for the
/// drink), solubility_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_blend(
    inputs: *const carb_inputs,
    result: *mut carb_blend_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&BLEND, inputs, result, error) }
}

/// carb_blend element by element. What does not vary comes from inputs, the rest from the series, each under any of
/// its names; these may vary: packaged_l, co2_g_per_l, other_l, other_co2_g_per_l, temperature_c, gauge_kpa,
/// altitude_m, ambient_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "packaged_l"
/// (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an
/// enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of
/// equations, such as glass that may burst, is told of single answers only: ask carb_blend about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_blend_n(
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
    unsafe { each(BLEND.function, &arrays, error) }
}

/// What carb_purge_oxygen answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_purge_oxygen_result {
    /// sizeof (carb_purge_oxygen_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// oxygen in the gas over the drink; ppm
    pub oxygen_ppm: f64,
    /// each: mass of CO2; g
    pub each_gas_g: f64,
    /// total: mass of CO2; g
    pub total_gas_g: f64,
}

static PURGE_OXYGEN: Shape = Shape {
    function: &functions::PURGE_OXYGEN,
    size: size_of::<carb_purge_oxygen_result>(),
    outputs: &[
        offset_of!(carb_purge_oxygen_result, oxygen_ppm),
        offset_of!(carb_purge_oxygen_result, each_gas_g),
        offset_of!(carb_purge_oxygen_result, total_gas_g),
    ],
    cautions: offset_of!(carb_purge_oxygen_result, cautions),
    danger: offset_of!(carb_purge_oxygen_result, danger),
    caution_count: offset_of!(carb_purge_oxygen_result, caution_count),
};

/// Oxygen left in a vessel that is filled with CO2 and vented so many times, each filling mixed; and the CO2 that
/// this takes.
///
/// Required: purge_gauge_kpa, cycles_count.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), start_oxygen_ppm (20.95 % vol: air),
/// gas_oxygen_ppm (30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure gas), keg_l (19.6 L, a soda
/// keg of 5 US gallons to the brim, and noted), temperature_c (20 °C), keg_rating_gauge_kpa (not known: more than
/// 15 psi gets a caution).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_purge_oxygen(
    inputs: *const carb_inputs,
    result: *mut carb_purge_oxygen_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&PURGE_OXYGEN, inputs, result, error) }
}

/// carb_purge_oxygen element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: purge_gauge_kpa, cycles_count, altitude_m, ambient_kpa, start_oxygen_ppm,
/// gas_oxygen_ppm, keg_l, temperature_c. out receives the output of a name such as "oxygen_ppm" (in any unit) and
/// NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status
/// below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as
/// glass that may burst, is told of single answers only: ask carb_purge_oxygen about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_purge_oxygen_n(
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
    unsafe { each(PURGE_OXYGEN.function, &arrays, error) }
}

/// What carb_purge_cycles answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_purge_cycles_result {
    /// sizeof (carb_purge_cycles_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// how often a vessel is filled with CO2 and vented;
    pub cycles_count: f64,
    /// whole: how often a vessel is filled with CO2 and vented;
    pub whole_cycles_count: f64,
    /// each: mass of CO2; g
    pub each_gas_g: f64,
    /// total: mass of CO2; g
    pub total_gas_g: f64,
}

static PURGE_CYCLES: Shape = Shape {
    function: &functions::PURGE_CYCLES,
    size: size_of::<carb_purge_cycles_result>(),
    outputs: &[
        offset_of!(carb_purge_cycles_result, cycles_count),
        offset_of!(carb_purge_cycles_result, whole_cycles_count),
        offset_of!(carb_purge_cycles_result, each_gas_g),
        offset_of!(carb_purge_cycles_result, total_gas_g),
    ],
    cautions: offset_of!(carb_purge_cycles_result, cautions),
    danger: offset_of!(carb_purge_cycles_result, danger),
    caution_count: offset_of!(carb_purge_cycles_result, caution_count),
};

/// How often a vessel is filled with CO2 and vented until no more than some oxygen is left, as a real and as a
/// whole number; and the CO2 that the whole number takes.
///
/// Required: purge_gauge_kpa, oxygen_ppm.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), start_oxygen_ppm (20.95 % vol: air),
/// gas_oxygen_ppm (30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure gas), keg_l (19.6 L, a soda
/// keg of 5 US gallons to the brim, and noted), temperature_c (20 °C), keg_rating_gauge_kpa (not known: more than
/// 15 psi gets a caution).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_purge_cycles(
    inputs: *const carb_inputs,
    result: *mut carb_purge_cycles_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&PURGE_CYCLES, inputs, result, error) }
}

/// carb_purge_cycles element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: purge_gauge_kpa, oxygen_ppm, altitude_m, ambient_kpa, start_oxygen_ppm,
/// gas_oxygen_ppm, keg_l, temperature_c. out receives the output of a name such as "cycles_count" (in any unit) and
/// NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status
/// below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as
/// glass that may burst, is told of single answers only: ask carb_purge_cycles about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_purge_cycles_n(
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
    unsafe { each(PURGE_CYCLES.function, &arrays, error) }
}

/// What carb_sweep_oxygen answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_sweep_oxygen_result {
    /// sizeof (carb_sweep_oxygen_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// mixed: oxygen in the gas over the drink; ppm
    pub mixed_oxygen_ppm: f64,
    /// plug_flow: oxygen in the gas over the drink; ppm
    pub plug_flow_oxygen_ppm: f64,
    /// mass of CO2; g
    pub gas_g: f64,
}

static SWEEP_OXYGEN: Shape = Shape {
    function: &functions::SWEEP_OXYGEN,
    size: size_of::<carb_sweep_oxygen_result>(),
    outputs: &[
        offset_of!(carb_sweep_oxygen_result, mixed_oxygen_ppm),
        offset_of!(carb_sweep_oxygen_result, plug_flow_oxygen_ppm),
        offset_of!(carb_sweep_oxygen_result, gas_g),
    ],
    cautions: offset_of!(carb_sweep_oxygen_result, cautions),
    danger: offset_of!(carb_sweep_oxygen_result, danger),
    caution_count: offset_of!(carb_sweep_oxygen_result, caution_count),
};

/// Oxygen left in an open vessel after so many vessel volumes of CO2 ran through it: mixed (the most), and without
/// mixing (the least); and the CO2 that this takes.
///
/// Required: sweeps_count.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), start_oxygen_ppm (20.95 % vol: air),
/// gas_oxygen_ppm (30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure gas), keg_l (19.6 L, a soda
/// keg of 5 US gallons to the brim, and noted), temperature_c (20 °C).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_sweep_oxygen(
    inputs: *const carb_inputs,
    result: *mut carb_sweep_oxygen_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&SWEEP_OXYGEN, inputs, result, error) }
}

/// carb_sweep_oxygen element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: sweeps_count, altitude_m, ambient_kpa, start_oxygen_ppm, gas_oxygen_ppm,
/// keg_l, temperature_c. out receives the output of a name such as "mixed_oxygen_ppm" (in any unit) and NaN where
/// status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0.
/// Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as glass that
/// may burst, is told of single answers only: ask carb_sweep_oxygen about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_sweep_oxygen_n(
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
    unsafe { each(SWEEP_OXYGEN.function, &arrays, error) }
}

/// What carb_push_oxygen answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_push_oxygen_result {
    /// sizeof (carb_push_oxygen_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// oxygen in the gas over the drink; ppm
    pub oxygen_ppm: f64,
    /// mass of CO2; g
    pub gas_g: f64,
}

static PUSH_OXYGEN: Shape = Shape {
    function: &functions::PUSH_OXYGEN,
    size: size_of::<carb_push_oxygen_result>(),
    outputs: &[
        offset_of!(carb_push_oxygen_result, oxygen_ppm),
        offset_of!(carb_push_oxygen_result, gas_g),
    ],
    cautions: offset_of!(carb_push_oxygen_result, cautions),
    danger: offset_of!(carb_push_oxygen_result, danger),
    caution_count: offset_of!(carb_push_oxygen_result, caution_count),
};

/// Oxygen in a keg that was filled to the brim with sanitiser, but for some air under the lid, and pushed empty by
/// CO2; and the CO2 that this takes.
///
/// Required: pocket_l, push_gauge_kpa.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), start_oxygen_ppm (20.95 % vol: air),
/// gas_oxygen_ppm (30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure gas), keg_l (19.6 L, a soda
/// keg of 5 US gallons to the brim, and noted), temperature_c (20 °C), keg_rating_gauge_kpa (not known: more than
/// 15 psi gets a caution).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_push_oxygen(
    inputs: *const carb_inputs,
    result: *mut carb_push_oxygen_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&PUSH_OXYGEN, inputs, result, error) }
}

/// carb_push_oxygen element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: pocket_l, push_gauge_kpa, altitude_m, ambient_kpa, start_oxygen_ppm,
/// gas_oxygen_ppm, keg_l, temperature_c. out receives the output of a name such as "oxygen_ppm" (in any unit) and
/// NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status
/// below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as
/// glass that may burst, is told of single answers only: ask carb_push_oxygen about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_push_oxygen_n(
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
    unsafe { each(PUSH_OXYGEN.function, &arrays, error) }
}

/// What carb_oxygen_pickup answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_oxygen_pickup_result {
    /// sizeof (carb_oxygen_pickup_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// headspace: oxygen that a drink takes up; µg/L
    pub headspace_picked_up_ug_per_l: f64,
    /// gas: oxygen that a drink takes up; µg/L
    pub gas_picked_up_ug_per_l: f64,
    /// oxygen in drink and headspace together, per litre of drink: total package oxygen; µg/L
    pub total_oxygen_ug_per_l: f64,
    /// equilibrium: oxygen dissolved in the drink; µg/L
    pub equilibrium_dissolved_oxygen_ug_per_l: f64,
}

static OXYGEN_PICKUP: Shape = Shape {
    function: &functions::OXYGEN_PICKUP,
    size: size_of::<carb_oxygen_pickup_result>(),
    outputs: &[
        offset_of!(carb_oxygen_pickup_result, headspace_picked_up_ug_per_l),
        offset_of!(carb_oxygen_pickup_result, gas_picked_up_ug_per_l),
        offset_of!(carb_oxygen_pickup_result, total_oxygen_ug_per_l),
        offset_of!(carb_oxygen_pickup_result, equilibrium_dissolved_oxygen_ug_per_l),
    ],
    cautions: offset_of!(carb_oxygen_pickup_result, cautions),
    danger: offset_of!(carb_oxygen_pickup_result, danger),
    caution_count: offset_of!(carb_oxygen_pickup_result, caution_count),
};

/// Oxygen of a package per litre of drink: in the headspace, brought along by the CO2 that carbonates it, and in
/// all with what was dissolved; and what of it is dissolved at equilibrium.
///
/// Required: oxygen_ppm, temperature_c.
///
/// One of: headspace_percent, keg_l.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: packaged_l (needed with keg: the drink in it), sea_level_kpa (101.325 kPa, the standard atmosphere),
/// gauge_kpa (0: just vented), dissolved_oxygen_ug_per_l (0: none before), co2_g_per_l (the drink takes up no CO2),
/// start_co2_g_per_l (0: flat), gas_oxygen_ppm (30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure
/// gas).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_oxygen_pickup(
    inputs: *const carb_inputs,
    result: *mut carb_oxygen_pickup_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&OXYGEN_PICKUP, inputs, result, error) }
}

/// carb_oxygen_pickup element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: oxygen_ppm, headspace_percent, temperature_c, altitude_m, ambient_kpa,
/// gauge_kpa, dissolved_oxygen_ug_per_l, co2_g_per_l, start_co2_g_per_l, gas_oxygen_ppm. out receives the output of
/// a name such as "headspace_picked_up_ug_per_l" (in any unit) and NaN where status is below 0; status receives
/// CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie
/// over them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers
/// only: ask carb_oxygen_pickup about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_oxygen_pickup_n(
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
    unsafe { each(OXYGEN_PICKUP.function, &arrays, error) }
}

/// What carb_total_package_oxygen answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_total_package_oxygen_result {
    /// sizeof (carb_total_package_oxygen_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// oxygen in drink and headspace together, per litre of drink: total package oxygen; µg/L
    pub total_oxygen_ug_per_l: f64,
    /// headspace: oxygen that a drink takes up; µg/L
    pub headspace_picked_up_ug_per_l: f64,
}

static TOTAL_PACKAGE_OXYGEN: Shape = Shape {
    function: &functions::TOTAL_PACKAGE_OXYGEN,
    size: size_of::<carb_total_package_oxygen_result>(),
    outputs: &[
        offset_of!(carb_total_package_oxygen_result, total_oxygen_ug_per_l),
        offset_of!(carb_total_package_oxygen_result, headspace_picked_up_ug_per_l),
    ],
    cautions: offset_of!(carb_total_package_oxygen_result, cautions),
    danger: offset_of!(carb_total_package_oxygen_result, danger),
    caution_count: offset_of!(carb_total_package_oxygen_result, caution_count),
};

/// Total package oxygen from the oxygen dissolved in a package that was shaken to equilibrium, and the part of it
/// that is in the headspace; per litre of drink.
///
/// Required: dissolved_oxygen_ug_per_l, headspace_percent, temperature_c.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_total_package_oxygen(
    inputs: *const carb_inputs,
    result: *mut carb_total_package_oxygen_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&TOTAL_PACKAGE_OXYGEN, inputs, result, error) }
}

/// carb_total_package_oxygen element by element. What does not vary comes from inputs, the rest from the series,
/// each under any of its names; these may vary: dissolved_oxygen_ug_per_l, headspace_percent, temperature_c. out
/// receives the output of a name such as "total_oxygen_ug_per_l" (in any unit) and NaN where status is below 0;
/// status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements;
/// a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
/// single answers only: ask carb_total_package_oxygen about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_total_package_oxygen_n(
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
    unsafe { each(TOTAL_PACKAGE_OXYGEN.function, &arrays, error) }
}

/// What carb_gas_budget answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_gas_budget_result {
    /// sizeof (carb_gas_budget_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// dissolve: mass of CO2; g
    pub dissolve_gas_g: f64,
    /// headspace: mass of CO2; g
    pub headspace_gas_g: f64,
    /// purge: mass of CO2; g
    pub purge_gas_g: f64,
    /// serve: mass of CO2; g
    pub serve_gas_g: f64,
    /// loss: mass of CO2; g
    pub loss_gas_g: f64,
    /// total: mass of CO2; g
    pub total_gas_g: f64,
    /// least: mass of CO2; g
    pub least_gas_g: f64,
    /// how many kegs a cylinder does;
    pub kegs_count: f64,
    /// most: how many kegs a cylinder does;
    pub most_kegs_count: f64,
}

static GAS_BUDGET: Shape = Shape {
    function: &functions::GAS_BUDGET,
    size: size_of::<carb_gas_budget_result>(),
    outputs: &[
        offset_of!(carb_gas_budget_result, dissolve_gas_g),
        offset_of!(carb_gas_budget_result, headspace_gas_g),
        offset_of!(carb_gas_budget_result, purge_gas_g),
        offset_of!(carb_gas_budget_result, serve_gas_g),
        offset_of!(carb_gas_budget_result, loss_gas_g),
        offset_of!(carb_gas_budget_result, total_gas_g),
        offset_of!(carb_gas_budget_result, least_gas_g),
        offset_of!(carb_gas_budget_result, kegs_count),
        offset_of!(carb_gas_budget_result, most_kegs_count),
    ],
    cautions: offset_of!(carb_gas_budget_result, cautions),
    danger: offset_of!(carb_gas_budget_result, danger),
    caution_count: offset_of!(carb_gas_budget_result, caution_count),
};

/// CO2 that a keg takes, use by use: dissolved, in the headspace, for purging, to push the drink out, lost; in all
/// and at the bare minimum; and how many kegs a cylinder does at either.
///
/// Required: packaged_l, co2_g_per_l, temperature_c, gauge_kpa.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: start_co2_g_per_l (0: flat; beer that fermented at 20 °C holds about 0.85 volumes), sea_level_kpa
/// (101.325 kPa, the standard atmosphere), keg_l (the drink and 3.5 % of it, as in a full soda keg), purge (none),
/// purge_gauge_kpa (needed with purge "headspace" and "empty", and with cycles), cycles_count (needed with purge
/// "headspace" and "empty", and with purge_gauge), push_gauge_kpa (that of serving; only with purge "push"),
/// purge_c (that of a room, 20 °C; only with purge "empty" and "push"), gas_loss_percent (0 %),
/// keg_rating_gauge_kpa (not known: purging at more than 15 psi gets a caution), cylinder_size (cylinder_5_lb,
/// unless charge is given), charge_g (that of the cylinder_size).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_gas_budget(
    inputs: *const carb_inputs,
    result: *mut carb_gas_budget_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&GAS_BUDGET, inputs, result, error) }
}

/// carb_gas_budget element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: packaged_l, co2_g_per_l, start_co2_g_per_l, temperature_c, gauge_kpa,
/// altitude_m, ambient_kpa, keg_l, purge_gauge_kpa, cycles_count, push_gauge_kpa, purge_c, gas_loss_percent,
/// charge_g. out receives the output of a name such as "dissolve_gas_g" (in any unit) and NaN where status is below
/// 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n
/// elements; a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is
/// told of single answers only: ask carb_gas_budget about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_gas_budget_n(
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
    unsafe { each(GAS_BUDGET.function, &arrays, error) }
}

/// What carb_cylinder_left answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_cylinder_left_result {
    /// sizeof (carb_cylinder_left_result)
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
    /// falling: share of a full charge; %
    pub falling_left_percent: f64,
    /// liquid_full: temperature of a cylinder of CO2: from the triple to the critical point, between which it holds
    /// liquid; °C
    pub liquid_full_cylinder_c: f64,
}

static CYLINDER_LEFT: Shape = Shape {
    function: &functions::CYLINDER_LEFT,
    size: size_of::<carb_cylinder_left_result>(),
    outputs: &[
        offset_of!(carb_cylinder_left_result, gauge_kpa),
        offset_of!(carb_cylinder_left_result, abs_kpa),
        offset_of!(carb_cylinder_left_result, falling_left_percent),
        offset_of!(carb_cylinder_left_result, liquid_full_cylinder_c),
    ],
    cautions: offset_of!(carb_cylinder_left_result, cautions),
    danger: offset_of!(carb_cylinder_left_result, danger),
    caution_count: offset_of!(carb_cylinder_left_result, caution_count),
};

/// What the gauge of a cylinder shows as long as it holds liquid, the share of a full charge that is left when it
/// begins to fall, and the temperature at which a full cylinder is full of liquid.
///
/// Required: cylinder_c.
///
/// One of: cylinder_size, filling_ratio_g_per_g.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_cylinder_left(
    inputs: *const carb_inputs,
    result: *mut carb_cylinder_left_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&CYLINDER_LEFT, inputs, result, error) }
}

/// carb_cylinder_left element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: cylinder_c, filling_ratio_g_per_g, altitude_m, ambient_kpa. out receives
/// the output of a name such as "gauge_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK,
/// or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over
/// them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_cylinder_left about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_cylinder_left_n(
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
    unsafe { each(CYLINDER_LEFT.function, &arrays, error) }
}

/// What carb_cylinder_contents answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_cylinder_contents_result {
    /// sizeof (carb_cylinder_contents_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// left: mass of CO2; g
    pub left_gas_g: f64,
    /// share of a full charge; %
    pub left_percent: f64,
    /// how many kegs a cylinder does;
    pub kegs_count: f64,
}

static CYLINDER_CONTENTS: Shape = Shape {
    function: &functions::CYLINDER_CONTENTS,
    size: size_of::<carb_cylinder_contents_result>(),
    outputs: &[
        offset_of!(carb_cylinder_contents_result, left_gas_g),
        offset_of!(carb_cylinder_contents_result, left_percent),
        offset_of!(carb_cylinder_contents_result, kegs_count),
    ],
    cautions: offset_of!(carb_cylinder_contents_result, cautions),
    danger: offset_of!(carb_cylinder_contents_result, danger),
    caution_count: offset_of!(carb_cylinder_contents_result, caution_count),
};

/// CO2 left in a cylinder by its weight now and empty, the share of a full charge, and how many kegs that does.
///
/// Required: gross_g, tare_g.
///
/// One of: cylinder_size, charge_g.
///
/// Optional: gas_g (150 g for each keg: 19 L carbonated, served, its headspace purged, a little lost; gas_budget
/// tells it of yours).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_cylinder_contents(
    inputs: *const carb_inputs,
    result: *mut carb_cylinder_contents_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&CYLINDER_CONTENTS, inputs, result, error) }
}

/// carb_cylinder_contents element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: gross_g, tare_g, charge_g, gas_g. out receives the output of a name such
/// as "left_gas_g" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
/// the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_cylinder_contents about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_cylinder_contents_n(
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
    unsafe { each(CYLINDER_CONTENTS.function, &arrays, error) }
}

/// What carb_room_co2 answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_room_co2_result {
    /// sizeof (carb_room_co2_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// mixed: CO2 in the air of the room; ppm
    pub mixed_room_air_ppm: f64,
    /// bound: CO2 in the air of the room; ppm
    pub bound_room_air_ppm: f64,
    /// low_half: CO2 in the air of the room; ppm
    pub low_half_room_air_ppm: f64,
    /// later: CO2 in the air of the room; ppm
    pub later_room_air_ppm: f64,
    /// later_low_half: CO2 in the air of the room; ppm
    pub later_low_half_room_air_ppm: f64,
    /// aired: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
    /// or step at one temperature; h
    pub aired_time_h: f64,
    /// low_half_aired: time: since the bottles were closed or the gas was connected, on the date of a reading, or
    /// of a spell or step at one temperature; h
    pub low_half_aired_time_h: f64,
}

static ROOM_CO2: Shape = Shape {
    function: &functions::ROOM_CO2,
    size: size_of::<carb_room_co2_result>(),
    outputs: &[
        offset_of!(carb_room_co2_result, mixed_room_air_ppm),
        offset_of!(carb_room_co2_result, bound_room_air_ppm),
        offset_of!(carb_room_co2_result, low_half_room_air_ppm),
        offset_of!(carb_room_co2_result, later_room_air_ppm),
        offset_of!(carb_room_co2_result, later_low_half_room_air_ppm),
        offset_of!(carb_room_co2_result, aired_time_h),
        offset_of!(carb_room_co2_result, low_half_aired_time_h),
    ],
    cautions: offset_of!(carb_room_co2_result, cautions),
    danger: offset_of!(carb_room_co2_result, danger),
    caution_count: offset_of!(carb_room_co2_result, caution_count),
};

/// CO2 in the air of a room into which a cylinder, or what a fermentation makes, escapes: mixed, at most, and all
/// of it in the lower half; after some time of airing; and how long airing takes to 5000 ppm.
///
/// Required: released_g, room_m3.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: room_c (20 °C), sea_level_kpa (101.325 kPa, the standard atmosphere), air_changes_per_h (0.5 1/h, a
/// closed room, and noted; a cold room or a cellar has less), time_h (0: at once).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_room_co2(
    inputs: *const carb_inputs,
    result: *mut carb_room_co2_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&ROOM_CO2, inputs, result, error) }
}

/// carb_room_co2 element by element. What does not vary comes from inputs, the rest from the series, each under any
/// of its names; these may vary: released_g, room_m3, room_c, altitude_m, ambient_kpa, air_changes_per_h, time_h.
/// out receives the output of a name such as "mixed_room_air_ppm" (in any unit) and NaN where status is below 0;
/// status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements;
/// a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
/// single answers only: ask carb_room_co2 about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_room_co2_n(
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
    unsafe { each(ROOM_CO2.function, &arrays, error) }
}

/// What carb_room_leak answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_room_leak_result {
    /// sizeof (carb_room_leak_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// mixed: CO2 in the air of the room; ppm
    pub mixed_room_air_ppm: f64,
    /// low_half: CO2 in the air of the room; ppm
    pub low_half_room_air_ppm: f64,
}

static ROOM_LEAK: Shape = Shape {
    function: &functions::ROOM_LEAK,
    size: size_of::<carb_room_leak_result>(),
    outputs: &[
        offset_of!(carb_room_leak_result, mixed_room_air_ppm),
        offset_of!(carb_room_leak_result, low_half_room_air_ppm),
    ],
    cautions: offset_of!(carb_room_leak_result, cautions),
    danger: offset_of!(carb_room_leak_result, danger),
    caution_count: offset_of!(carb_room_leak_result, caution_count),
};

/// CO2 in the air of a room into which some leaks steadily, in the end: mixed, and all of it in the lower half.
///
/// Required: leak_g_per_h, room_m3.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: room_c (20 °C), sea_level_kpa (101.325 kPa, the standard atmosphere), air_changes_per_h (0.5 1/h, a
/// closed room, and noted; a cold room or a cellar has less).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_room_leak(
    inputs: *const carb_inputs,
    result: *mut carb_room_leak_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&ROOM_LEAK, inputs, result, error) }
}

/// carb_room_leak element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: leak_g_per_h, room_m3, room_c, altitude_m, ambient_kpa, air_changes_per_h. out
/// receives the output of a name such as "mixed_room_air_ppm" (in any unit) and NaN where status is below 0; status
/// receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a
/// series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
/// single answers only: ask carb_room_leak about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_room_leak_n(
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
    unsafe { each(ROOM_LEAK.function, &arrays, error) }
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
/// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
/// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_ambient_pressure
/// about the extremes.
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

/// What carb_packaging_cost answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_packaging_cost_result {
    /// sizeof (carb_packaging_cost_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// bottles_first: what a litre that is drunk costs; per L
    pub bottles_first_cost_money_per_l: f64,
    /// keg_first: what a litre that is drunk costs; per L
    pub keg_first_cost_money_per_l: f64,
    /// bottles: what a litre that is drunk costs; per L
    pub bottles_cost_money_per_l: f64,
    /// keg: what a litre that is drunk costs; per L
    pub keg_cost_money_per_l: f64,
    /// bottles: what is spent in all;
    pub bottles_spent_money: f64,
    /// keg: what is spent in all;
    pub keg_spent_money: f64,
}

static PACKAGING_COST: Shape = Shape {
    function: &functions::PACKAGING_COST,
    size: size_of::<carb_packaging_cost_result>(),
    outputs: &[
        offset_of!(carb_packaging_cost_result, bottles_first_cost_money_per_l),
        offset_of!(carb_packaging_cost_result, keg_first_cost_money_per_l),
        offset_of!(carb_packaging_cost_result, bottles_cost_money_per_l),
        offset_of!(carb_packaging_cost_result, keg_cost_money_per_l),
        offset_of!(carb_packaging_cost_result, bottles_spent_money),
        offset_of!(carb_packaging_cost_result, keg_spent_money),
    ],
    cautions: offset_of!(carb_packaging_cost_result, cautions),
    danger: offset_of!(carb_packaging_cost_result, danger),
    caution_count: offset_of!(carb_packaging_cost_result, caution_count),
};

/// What a litre costs that is drunk from bottles and from a keg, of the first batch and over several, by prices of
/// one's own; of the drink itself only what is lost counts.
///
/// Required: packaged_l.
///
/// Optional: bottle_l (0.5 L), bottling_outfit_money (0), bottle_money (0), cap_money (0), sugar_money_per_kg (0),
/// uses_count (10), bottle_loss_percent (3 %), outfit_money (0), gas_money_per_kg (0), keg_loss_percent (3 %),
/// drink_money_per_l (0), mass_g (0), gas_g (0), batches_count (10).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_packaging_cost(
    inputs: *const carb_inputs,
    result: *mut carb_packaging_cost_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&PACKAGING_COST, inputs, result, error) }
}

/// carb_packaging_cost element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: packaged_l, bottle_l, bottling_outfit_money, bottle_money, cap_money,
/// sugar_money_per_kg, uses_count, bottle_loss_percent, outfit_money, gas_money_per_kg, keg_loss_percent,
/// drink_money_per_l, mass_g, gas_g, batches_count. out receives the output of a name such as
/// "bottles_first_cost_money_per_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits
/// of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A
/// danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_packaging_cost about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_packaging_cost_n(
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
    unsafe { each(PACKAGING_COST.function, &arrays, error) }
}

/// What carb_break_even answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_break_even_result {
    /// sizeof (carb_break_even_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// how many batches are looked at;
    pub batches_count: f64,
}

static BREAK_EVEN: Shape = Shape {
    function: &functions::BREAK_EVEN,
    size: size_of::<carb_break_even_result>(),
    outputs: &[
        offset_of!(carb_break_even_result, batches_count),
    ],
    cautions: offset_of!(carb_break_even_result, cautions),
    danger: offset_of!(carb_break_even_result, danger),
    caution_count: offset_of!(carb_break_even_result, caution_count),
};

/// The batch at which kegging will have cost no more than bottling, fractions and all, by prices of one's own; 1
/// where it does from the first.
///
/// Required: packaged_l.
///
/// Optional: bottle_l (0.5 L), bottling_outfit_money (0), bottle_money (0), cap_money (0), sugar_money_per_kg (0),
/// uses_count (10), bottle_loss_percent (3 %), outfit_money (0), gas_money_per_kg (0), keg_loss_percent (3 %),
/// drink_money_per_l (0), mass_g (0), gas_g (0).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_break_even(
    inputs: *const carb_inputs,
    result: *mut carb_break_even_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&BREAK_EVEN, inputs, result, error) }
}

/// carb_break_even element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: packaged_l, bottle_l, bottling_outfit_money, bottle_money, cap_money,
/// sugar_money_per_kg, uses_count, bottle_loss_percent, outfit_money, gas_money_per_kg, keg_loss_percent,
/// drink_money_per_l, mass_g, gas_g. out receives the output of a name such as "batches_count" (in any unit) and
/// NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status
/// below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as
/// glass that may burst, is told of single answers only: ask carb_break_even about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_break_even_n(
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
    unsafe { each(BREAK_EVEN.function, &arrays, error) }
}

/// What carb_uptake_rate answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_uptake_rate_result {
    /// sizeof (carb_uptake_rate_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// expected: share of the gap to equilibrium that closes in a time: first-order rate of uptake; 1/h
    pub expected_kla_per_h: f64,
    /// least: share of the gap to equilibrium that closes in a time: first-order rate of uptake; 1/h
    pub least_kla_per_h: f64,
    /// most: share of the gap to equilibrium that closes in a time: first-order rate of uptake; 1/h
    pub most_kla_per_h: f64,
}

static UPTAKE_RATE: Shape = Shape {
    function: &functions::UPTAKE_RATE,
    size: size_of::<carb_uptake_rate_result>(),
    outputs: &[
        offset_of!(carb_uptake_rate_result, expected_kla_per_h),
        offset_of!(carb_uptake_rate_result, least_kla_per_h),
        offset_of!(carb_uptake_rate_result, most_kla_per_h),
    ],
    cautions: offset_of!(carb_uptake_rate_result, cautions),
    danger: offset_of!(carb_uptake_rate_result, danger),
    caution_count: offset_of!(carb_uptake_rate_result, caution_count),
};

/// Rate at which a drink comes to equilibrium with CO2 over it: the share of the gap that closes in an hour, as
/// expected, at the slow end (least) and at the fast end (most) of what the method does.
///
/// Required: temperature_c.
///
/// Optional: method (still), packaged_l (18.93 L, a full keg of five US gallons), keg_diameter_m (0.215 m, that of
/// the usual 19 L keg), kla_per_h (that of the method; it is taken as it is, at every temperature).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_uptake_rate(
    inputs: *const carb_inputs,
    result: *mut carb_uptake_rate_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&UPTAKE_RATE, inputs, result, error) }
}

/// carb_uptake_rate element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: temperature_c, packaged_l, keg_diameter_m, kla_per_h. out receives the output
/// of a name such as "expected_kla_per_h" (in any unit) and NaN where status is below 0; status receives CARB_OK,
/// or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over
/// them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_uptake_rate about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_uptake_rate_n(
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
    unsafe { each(UPTAKE_RATE.function, &arrays, error) }
}

/// What carb_carbonation_time answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_carbonation_time_result {
    /// sizeof (carb_carbonation_time_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// expected: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a
    /// spell or step at one temperature; h
    pub expected_time_h: f64,
    /// soonest: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a
    /// spell or step at one temperature; h
    pub soonest_time_h: f64,
    /// latest: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a
    /// spell or step at one temperature; h
    pub latest_time_h: f64,
}

static CARBONATION_TIME: Shape = Shape {
    function: &functions::CARBONATION_TIME,
    size: size_of::<carb_carbonation_time_result>(),
    outputs: &[
        offset_of!(carb_carbonation_time_result, expected_time_h),
        offset_of!(carb_carbonation_time_result, soonest_time_h),
        offset_of!(carb_carbonation_time_result, latest_time_h),
    ],
    cautions: offset_of!(carb_carbonation_time_result, cautions),
    danger: offset_of!(carb_carbonation_time_result, danger),
    caution_count: offset_of!(carb_carbonation_time_result, caution_count),
};

/// Time under a constant pressure of CO2 until a drink holds a carbonation, upward or, in a vented keg, downward:
/// as expected, at the soonest and at the latest. Confirm it by tasting.
///
/// Required: start_co2_g_per_l, co2_g_per_l, gauge_kpa, temperature_c.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: supply_g_per_h (no limit), method (still), packaged_l (18.93 L, a full keg of five US gallons),
/// keg_diameter_m (0.215 m, that of the usual 19 L keg), kla_per_h (that of the method; it is taken as it is, at
/// every temperature), sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual
/// for the drink, and noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of
/// the basis for the drink), solubility_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_carbonation_time(
    inputs: *const carb_inputs,
    result: *mut carb_carbonation_time_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&CARBONATION_TIME, inputs, result, error) }
}

/// carb_carbonation_time element by element. What does not vary comes from inputs, the rest from the series, each
/// under any of its names; these may vary: start_co2_g_per_l, co2_g_per_l, gauge_kpa, temperature_c,
/// supply_g_per_h, packaged_l, keg_diameter_m, kla_per_h, altitude_m, ambient_kpa, abv_percent, extract_g_per_l.
/// out receives the output of a name such as "expected_time_h" (in any unit) and NaN where status is below 0;
/// status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements;
/// a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
/// single answers only: ask carb_carbonation_time about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_carbonation_time_n(
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
    unsafe { each(CARBONATION_TIME.function, &arrays, error) }
}

/// What carb_carbonation_progress answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_carbonation_progress_result {
    /// sizeof (carb_carbonation_progress_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// expected: CO2 per litre of drink; g/L
    pub expected_co2_g_per_l: f64,
    /// least: CO2 per litre of drink; g/L
    pub least_co2_g_per_l: f64,
    /// most: CO2 per litre of drink; g/L
    pub most_co2_g_per_l: f64,
    /// end: CO2 per litre of drink; g/L
    pub end_co2_g_per_l: f64,
}

static CARBONATION_PROGRESS: Shape = Shape {
    function: &functions::CARBONATION_PROGRESS,
    size: size_of::<carb_carbonation_progress_result>(),
    outputs: &[
        offset_of!(carb_carbonation_progress_result, expected_co2_g_per_l),
        offset_of!(carb_carbonation_progress_result, least_co2_g_per_l),
        offset_of!(carb_carbonation_progress_result, most_co2_g_per_l),
        offset_of!(carb_carbonation_progress_result, end_co2_g_per_l),
    ],
    cautions: offset_of!(carb_carbonation_progress_result, cautions),
    danger: offset_of!(carb_carbonation_progress_result, danger),
    caution_count: offset_of!(carb_carbonation_progress_result, caution_count),
};

/// CO2 in a drink after a time under a constant pressure of CO2: as expected, the least and the most; and what it
/// would end at.
///
/// Required: start_co2_g_per_l, time_h, gauge_kpa, temperature_c.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: supply_g_per_h (no limit), method (still), packaged_l (18.93 L, a full keg of five US gallons),
/// keg_diameter_m (0.215 m, that of the usual 19 L keg), kla_per_h (that of the method; it is taken as it is, at
/// every temperature), sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual
/// for the drink, and noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of
/// the basis for the drink), solubility_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_carbonation_progress(
    inputs: *const carb_inputs,
    result: *mut carb_carbonation_progress_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&CARBONATION_PROGRESS, inputs, result, error) }
}

/// carb_carbonation_progress element by element. What does not vary comes from inputs, the rest from the series,
/// each under any of its names; these may vary: start_co2_g_per_l, time_h, gauge_kpa, temperature_c,
/// supply_g_per_h, packaged_l, keg_diameter_m, kla_per_h, altitude_m, ambient_kpa, abv_percent, extract_g_per_l.
/// out receives the output of a name such as "expected_co2_g_per_l" (in any unit) and NaN where status is below 0;
/// status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements;
/// a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
/// single answers only: ask carb_carbonation_progress about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_carbonation_progress_n(
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
    unsafe { each(CARBONATION_PROGRESS.function, &arrays, error) }
}

/// What carb_burst_time answers; numbers are NaN where it returns an error.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_burst_time_result {
    /// sizeof (carb_burst_time_result)
    pub struct_size: u32,
    /// bits of an enum carb_caution: where an equation was used outside its range
    pub cautions: u32,
    /// 1 if somebody may be hurt, else 0; carb_json tells why
    pub danger: i32,
    /// how many cautions there are, notes included; carb_json tells them
    pub caution_count: i32,
    /// stop: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
    /// or step at one temperature; h
    pub stop_time_h: f64,
    /// expected: CO2 per litre of drink; g/L
    pub expected_co2_g_per_l: f64,
    /// least: CO2 per litre of drink; g/L
    pub least_co2_g_per_l: f64,
    /// hold: pressure above the air outside, total of the gas over the drink; kPa
    pub hold_gauge_kpa: f64,
    /// rest: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
    /// or step at one temperature; h
    pub rest_time_h: f64,
    /// latest_rest: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a
    /// spell or step at one temperature; h
    pub latest_rest_time_h: f64,
}

static BURST_TIME: Shape = Shape {
    function: &functions::BURST_TIME,
    size: size_of::<carb_burst_time_result>(),
    outputs: &[
        offset_of!(carb_burst_time_result, stop_time_h),
        offset_of!(carb_burst_time_result, expected_co2_g_per_l),
        offset_of!(carb_burst_time_result, least_co2_g_per_l),
        offset_of!(carb_burst_time_result, hold_gauge_kpa),
        offset_of!(carb_burst_time_result, rest_time_h),
        offset_of!(carb_burst_time_result, latest_rest_time_h),
    ],
    cautions: offset_of!(carb_burst_time_result, cautions),
    danger: offset_of!(carb_burst_time_result, danger),
    caution_count: offset_of!(carb_burst_time_result, caution_count),
};

/// When to end a burst of high pressure so that the target is not passed even at the fast end of the rate; what the
/// drink then holds as expected and at least; the pressure that holds the target; and how long that takes, as
/// expected and at the latest, until no more than 0.1 volumes are missing.
///
/// Required: start_co2_g_per_l, co2_g_per_l, burst_gauge_kpa, temperature_c.
///
/// One of: altitude_m, ambient_kpa.
///
/// Optional: method (still), packaged_l (18.93 L, a full keg of five US gallons), keg_diameter_m (0.215 m, that of
/// the usual 19 L keg), kla_per_h (that of the method; it is taken as it is, at every temperature), sea_level_kpa
/// (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual for the drink, and noted),
/// extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis for the drink),
/// solubility_multiplier (1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_burst_time(
    inputs: *const carb_inputs,
    result: *mut carb_burst_time_result,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `one`.
    unsafe { one(&BURST_TIME, inputs, result, error) }
}

/// carb_burst_time element by element. What does not vary comes from inputs, the rest from the series, each under
/// any of its names; these may vary: start_co2_g_per_l, co2_g_per_l, burst_gauge_kpa, temperature_c, packaged_l,
/// keg_diameter_m, kla_per_h, altitude_m, ambient_kpa, abv_percent, extract_g_per_l. out receives the output of a
/// name such as "stop_time_h" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an
/// enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger
/// beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
/// carb_burst_time about the extremes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_burst_time_n(
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
    unsafe { each(BURST_TIME.function, &arrays, error) }
}

/// A row of fermentables. Sugars, syrups and juices: composition as sold, and the CO2 that follows from it.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_fermentables_row {
    /// sizeof (carb_fermentables_row)
    pub struct_size: u32,
    /// its number, for the sugar of carb_inputs; an enum carb_sugar
    pub sugar: i32,
    /// its name as a sugar or an addition; a text that ends with a NUL
    pub name: [c_char; 32],
    /// in words; a text that ends with a NUL
    pub title: [c_char; 128],
    /// water, of the mass as sold; %; NaN where nothing is known
    pub water_percent: f64,
    /// fermentable hexoses (glucose, fructose); %; NaN where nothing is known
    pub hexose_percent: f64,
    /// fermentable disaccharides (sucrose, maltose); %; NaN where nothing is known
    pub disaccharide_percent: f64,
    /// fermentable trisaccharides (maltotriose); %; NaN where nothing is known
    pub trisaccharide_percent: f64,
    /// CO2 from a gram, by the composition; g/g; NaN where nothing is known
    pub yield_g_per_g: f64,
    /// the least that samples make; g/g; NaN where nothing is known
    pub low_yield_g_per_g: f64,
    /// the most that samples make; g/g; NaN where nothing is known
    pub high_yield_g_per_g: f64,
    /// density, where a source gives it; kg/m3; NaN where nothing is known
    pub density_kg_per_m3: f64,
    /// how well it is known; a text that ends with a NUL
    pub standing: [c_char; 128],
    /// where it is from; empty for common practice and for what follows by arithmetic; a text that ends with a NUL
    pub source: [c_char; 128],
}

static FERMENTABLES_ROW: RowShape = RowShape {
    table: "fermentables",
    size: size_of::<carb_fermentables_row>(),
    columns: &[
        Cell::Text { offset: offset_of!(carb_fermentables_row, name), room: 32 },
        Cell::Text { offset: offset_of!(carb_fermentables_row, title), room: 128 },
        Cell::Number { offset: offset_of!(carb_fermentables_row, water_percent) },
        Cell::Number { offset: offset_of!(carb_fermentables_row, hexose_percent) },
        Cell::Number { offset: offset_of!(carb_fermentables_row, disaccharide_percent) },
        Cell::Number { offset: offset_of!(carb_fermentables_row, trisaccharide_percent) },
        Cell::Number { offset: offset_of!(carb_fermentables_row, yield_g_per_g) },
        Cell::Number { offset: offset_of!(carb_fermentables_row, low_yield_g_per_g) },
        Cell::Number { offset: offset_of!(carb_fermentables_row, high_yield_g_per_g) },
        Cell::Number { offset: offset_of!(carb_fermentables_row, density_kg_per_m3) },
        Cell::Text { offset: offset_of!(carb_fermentables_row, standing), room: 128 },
        Cell::Text { offset: offset_of!(carb_fermentables_row, source), room: 128 },
    ],
    number: Some((Key::Sugar, offset_of!(carb_fermentables_row, sugar))),
};

/// How many fermentables there are.
#[unsafe(no_mangle)]
pub extern "C" fn carb_fermentables_count() -> usize {
    count(&FERMENTABLES_ROW)
}

/// Receives the row at an index from 0, below the count. The texts are the caller's own, as everything is.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_fermentables_at(
    index: usize,
    row: *mut carb_fermentables_row,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `at`.
    unsafe { at(&FERMENTABLES_ROW, index, row, error) }
}

/// A row of bottle_classes. Classes of bottles, and the carbonation that they are usually filled with: no rating,
/// the maker's goes before it.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_bottle_classes_row {
    /// sizeof (carb_bottle_classes_row)
    pub struct_size: u32,
    /// its number, for the bottle_class of carb_inputs; an enum carb_bottle_class
    pub bottle_class: i32,
    /// name of the class; a text that ends with a NUL
    pub name: [c_char; 32],
    /// in words; a text that ends with a NUL
    pub title: [c_char; 128],
    /// what is put into the lighter ones of the class; g/L; NaN where nothing is known
    pub low_co2_g_per_l: f64,
    /// the most that is usually put into it; 0 where it is not for conditioning; g/L; NaN where nothing is known
    pub high_co2_g_per_l: f64,
    /// whether drink may be conditioned in it; a text that ends with a NUL
    pub for_conditioning: [c_char; 32],
    /// how well it is known; a text that ends with a NUL
    pub standing: [c_char; 64],
    /// what is published of it; a text that ends with a NUL
    pub published: [c_char; 256],
    /// where it is from; empty for common practice and for what follows by arithmetic; a text that ends with a NUL
    pub source: [c_char; 128],
}

static BOTTLE_CLASSES_ROW: RowShape = RowShape {
    table: "bottle_classes",
    size: size_of::<carb_bottle_classes_row>(),
    columns: &[
        Cell::Text { offset: offset_of!(carb_bottle_classes_row, name), room: 32 },
        Cell::Text { offset: offset_of!(carb_bottle_classes_row, title), room: 128 },
        Cell::Number { offset: offset_of!(carb_bottle_classes_row, low_co2_g_per_l) },
        Cell::Number { offset: offset_of!(carb_bottle_classes_row, high_co2_g_per_l) },
        Cell::Text { offset: offset_of!(carb_bottle_classes_row, for_conditioning), room: 32 },
        Cell::Text { offset: offset_of!(carb_bottle_classes_row, standing), room: 64 },
        Cell::Text { offset: offset_of!(carb_bottle_classes_row, published), room: 256 },
        Cell::Text { offset: offset_of!(carb_bottle_classes_row, source), room: 128 },
    ],
    number: Some((Key::BottleClass, offset_of!(carb_bottle_classes_row, bottle_class))),
};

/// How many bottle classes there are.
#[unsafe(no_mangle)]
pub extern "C" fn carb_bottle_classes_count() -> usize {
    count(&BOTTLE_CLASSES_ROW)
}

/// Receives the row at an index from 0, below the count. The texts are the caller's own, as everything is.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_bottle_classes_at(
    index: usize,
    row: *mut carb_bottle_classes_row,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `at`.
    unsafe { at(&BOTTLE_CLASSES_ROW, index, row, error) }
}

/// A row of sources. Every source that the library names.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_sources_row {
    /// sizeof (carb_sources_row)
    pub struct_size: u32,
    /// key in the bibliography; a text that ends with a NUL
    pub key: [c_char; 32],
    /// author, year and place; a text that ends with a NUL
    pub citation: [c_char; 256],
    /// not used
    pub reserved_1: i32,
}

static SOURCES_ROW: RowShape = RowShape {
    table: "sources",
    size: size_of::<carb_sources_row>(),
    columns: &[
        Cell::Text { offset: offset_of!(carb_sources_row, key), room: 32 },
        Cell::Text { offset: offset_of!(carb_sources_row, citation), room: 256 },
    ],
    number: None,
};

/// How many sources there are.
#[unsafe(no_mangle)]
pub extern "C" fn carb_sources_count() -> usize {
    count(&SOURCES_ROW)
}

/// Receives the row at an index from 0, below the count. The texts are the caller's own, as everything is.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_sources_at(
    index: usize,
    row: *mut carb_sources_row,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `at`.
    unsafe { at(&SOURCES_ROW, index, row, error) }
}

/// A row of cautions. Every caution that an answer may carry.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct carb_cautions_row {
    /// sizeof (carb_cautions_row)
    pub struct_size: u32,
    /// stable code; a text that ends with a NUL
    pub code: [c_char; 64],
    /// danger, caution or note; a text that ends with a NUL
    pub level: [c_char; 32],
    /// the sentence, with places for the value and the limit; a text that ends with a NUL
    pub text: [c_char; 512],
    /// not used
    pub reserved_1: i32,
}

static CAUTIONS_ROW: RowShape = RowShape {
    table: "cautions",
    size: size_of::<carb_cautions_row>(),
    columns: &[
        Cell::Text { offset: offset_of!(carb_cautions_row, code), room: 64 },
        Cell::Text { offset: offset_of!(carb_cautions_row, level), room: 32 },
        Cell::Text { offset: offset_of!(carb_cautions_row, text), room: 512 },
    ],
    number: None,
};

/// How many cautions there are.
#[unsafe(no_mangle)]
pub extern "C" fn carb_cautions_count() -> usize {
    count(&CAUTIONS_ROW)
}

/// Receives the row at an index from 0, below the count. The texts are the caller's own, as everything is.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn carb_cautions_at(
    index: usize,
    row: *mut carb_cautions_row,
    error: *mut carb_error,
) -> i32 {
    // SAFETY: the contract of the header is that of `at`.
    unsafe { at(&CAUTIONS_ROW, index, row, error) }
}
