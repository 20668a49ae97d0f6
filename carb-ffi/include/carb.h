/* carb: the mathematics of carbonating and packaging beer, cider, mead and soft drinks.
 *
 * Every function takes plain values, returns a status (CARB_OK, or below 0 an enum carb_status) and hands its results
 * through pointers. Nothing is kept between calls and nothing is allocated for the caller, except what carb_bind makes and
 * carb_bound_free frees; any function may be called from any thread. Floating-point flags and modes are left exactly as
 * they were found.
 *
 * Numbers of statuses never change and are never used again: 0 is CARB_OK, -1 to -99 are what the library finds wrong with
 * the values, -100 to -199 what is wrong with the call itself. Above 0, in the status of an element, are bits of an enum
 * carb_caution. A program takes every number below 0 for an error, known to its header or not.
 *
 * Names carry the unit: temperature_c, gauge_kpa. A gauge pressure is above the air outside, an abs pressure above
 * vacuum. Structs start with struct_size, which the caller sets to sizeof the struct (carb_inputs_init does it).
 *
 * Written by carb-ffi/tests/generated.rs: do not edit. */

#ifndef CARB_H
#define CARB_H

#include <float.h>
#include <stddef.h>
#include <stdint.h>

/* A number that is not given. (NaN is an error, never "not given".) */
#define CARB_NOT_GIVEN (-DBL_MAX)

/* The version of this header; carb_version tells that of the library. */
#define CARB_VERSION "0.1.0"
#define CARB_VERSION_MAJOR 0
#define CARB_VERSION_MINOR 1
#define CARB_VERSION_PATCH 0

// The version of the binary interface; it is in the name of the shared library, libcarb.so.0.
#define CARB_ABI_VERSION 0



// What a function returns, and the status of an element that has no value.
typedef enum carb_status {
    // It went well.
    CARB_OK = 0,
    // NaN or infinite; in arrays: missing.
    CARB_NOT_A_NUMBER = -1,
    // Outside what is answered.
    CARB_OUT_OF_RANGE = -2,
    // Needed and not given.
    CARB_MISSING = -3,
    // An unknown name.
    CARB_UNKNOWN_NAME = -4,
    // An unknown choice.
    CARB_UNKNOWN_CHOICE = -5,
    // One quantity given twice.
    CARB_GIVEN_TWICE = -6,
    // Two parameters exclude each other.
    CARB_EXCLUDED = -7,
    // A parameter the function does not take.
    CARB_NOT_TAKEN = -8,
    // A value of the wrong type.
    CARB_WRONG_TYPE = -9,
    // A name that two products go by.
    CARB_AMBIGUOUS_SUGAR = -10,
    // A product that makes no CO2.
    CARB_MAKES_NO_CO2 = -11,
    // Priming without living yeast.
    CARB_NO_LIVE_YEAST = -12,
    // A target below what the drink holds.
    CARB_TARGET_BELOW_HELD = -13,
    // A pressure below what can be.
    CARB_PRESSURE_TOO_LOW = -14,
    // The liquid fills its package.
    CARB_VESSEL_FULL = -15,
    // A pressure beyond every vessel.
    CARB_PRESSURE_TOO_HIGH = -16,
    // A solver that did not close.
    CARB_NOT_CONVERGED = -17,
    // No valid request.
    CARB_BAD_JSON = -18,
    // A request of another version.
    CARB_WRONG_VERSION = -19,
    // Arrays of different lengths.
    CARB_UNEVEN_ARRAYS = -20,
    // A list that is too long.
    CARB_TOO_MANY_ROWS = -21,
    // A list that is needed and empty, or not taken and given.
    CARB_WRONG_LIST = -22,
    // Bottles that do not hold the drink.
    CARB_BOTTLES_SHORT = -23,
    // More sugar than the water dissolves.
    CARB_WATER_SHORT = -24,
    // A value that the others leave no room for.
    CARB_OUT_OF_REACH = -25,
    // A carbonation that the drink never comes to under this pressure.
    CARB_NEVER_REACHED = -26,
    // A claim that says nothing that can be looked into.
    CARB_WRONG_CLAIM = -27,
    // A pointer is NULL, or not aligned for its type.
    CARB_NULL_POINTER = -100,
    // A struct_size that no struct has, or a member set that this version does not know.
    CARB_BAD_STRUCT_SIZE = -101,
    // A text that is not UTF-8.
    CARB_BAD_UTF8 = -102,
    // A buffer that the text does not fit into.
    CARB_BUFFER_TOO_SMALL = -103,
    // A number that is no enumerator of its list.
    CARB_UNKNOWN_ENUM = -104,
    // The library failed, which should not happen.
    CARB_PANIC = -105,
    // An output that the function does not have.
    CARB_UNKNOWN_OUTPUT = -106,
    // A unit that is not known, or that measures something else.
    CARB_UNKNOWN_UNIT = -107,
    // A count of elements that does not fit.
    CARB_BAD_COUNT = -108,
    // A name longer than any, or without an end.
    CARB_TEXT_TOO_LONG = -109,
    // Two outputs that lie over each other.
    CARB_OVERLAP = -110,
} carb_status;

// Bits of the cautions that equations raise outside their ranges, in results and in the status of elements.
typedef enum carb_caution {
    // the printed chart covers chilled beer; at the value its fit is extrapolated beyond the limit
    CARB_CAUTION_CHART_TEMPERATURE = 1,
    // the printed tables end; at the value absolute their fit is extrapolated beyond the limit
    CARB_CAUTION_CHART_PRESSURE = 2,
    // solubility in water was measured for this equation up to the limit; the value is extrapolated
    CARB_CAUTION_CORE_WARM = 4,
    // the value lies below the limit: the equations for water are extrapolated, and a weak drink freezes
    CARB_CAUTION_BELOW_FREEZING = 8,
    // the residual CO2 table ends at the limit; for the value its value there is kept
    CARB_CAUTION_RESIDUAL_HELD = 16,
    // the wine relation is given for 20 °C and carried to 0-25 °C; the value lies beyond the limit
    CARB_CAUTION_WINE_TEMPERATURE = 32,
    // the effect of dissolved matter on solubility is known to the limit; the value is extrapolated
    CARB_CAUTION_EXTRACT_HIGH = 64,
    // the effect of alcohol on solubility is known to the limit; the value is extrapolated
    CARB_CAUTION_ALCOHOL_HIGH = 128,
    // the value absolute lies beyond the limit, to which the equations were checked
    CARB_CAUTION_GAS_PRESSURE = 256,
    // the gravity tables end at the limit; the value is extrapolated
    CARB_CAUTION_GRAVITY_RANGE = 512,
    // the European form was checked to the limit against printed tables; the value is extrapolated
    CARB_CAUTION_EUROPEAN_TEMPERATURE = 1024,
    // this correlation for water is given from or to the limit; the value lies outside
    CARB_CAUTION_HENRY_TEMPERATURE = 2048,
    // viscosity and diffusivity are given from or to the limit; the value lies outside
    CARB_CAUTION_VISCOSITY_TEMPERATURE = 4096,
    // near the critical point of CO2, the value beyond the limit, a small error of temperature is a large one of
    // density
    CARB_CAUTION_NEAR_CRITICAL = 8192,
    // attenuation is known for original extracts between 5 and 25 °P; the value lies beyond the limit
    CARB_CAUTION_ORIGINAL_RANGE = 16384,
    // the density of the drink is known to the limit alcohol by volume; the value is extrapolated
    CARB_CAUTION_LIQUID_ALCOHOL = 32768,
    // the density of the drink is known to the limit; the value is extrapolated
    CARB_CAUTION_LIQUID_WARM = 65536,
    // at a Reynolds number of the value the flow may be smooth (as below the limit) or turbulent (as above 4000),
    // and change between: what the line takes may be from half to 1.6 times this. Try it, or choose another bore
    CARB_CAUTION_TRANSITION_FLOW = 67108864,
    // the value is faster than the limit that the trade pours at most: it foams. Take a longer or narrower line;
    // the pressure belongs to the carbonation
    CARB_CAUTION_FAST_POUR = 134217728,
    // the solubility of oxygen was measured from 0 to 40 °C; the value lies beyond the limit
    CARB_CAUTION_OXYGEN_TEMPERATURE = 8388608,
    // how fast a drink takes up CO2 is known for chilled kegs, and carried to the value by the viscosity of water:
    // beyond the limit it is extrapolated. Take readings
    CARB_CAUTION_UPTAKE_TEMPERATURE = 1048576,
    // the drink stands the value deep: how fast CO2 passes a still surface is known for kegs, to the limit. Take
    // readings, and fit the rate to them
    CARB_CAUTION_DEEP_DRINK = 2097152,
    // the value over the drink is more than every vessel stands: beyond the limit only kegs whose maker rates them
    // for it, with a relief valve below that. Plastic kegs and fermenters end near 2.4 bar (35 psi); read the
    // marking, and vent before opening
    CARB_CAUTION_HIGH_GAUGE = 4194304,
} carb_caution;

// Yes or no.
typedef enum carb_flag {
    // not given
    CARB_FLAG_NOT_GIVEN = 0,
    // no
    CARB_NO = 1,
    // yes
    CARB_YES = 2,
} carb_flag;

// What the drink is.
typedef enum carb_beverage {
    // not given
    CARB_BEVERAGE_NOT_GIVEN = 0,
    // water
    CARB_BEVERAGE_WATER = 1,
    // beer
    CARB_BEVERAGE_BEER = 2,
    // cider
    CARB_BEVERAGE_CIDER = 3,
    // mead
    CARB_BEVERAGE_MEAD = 4,
    // wine
    CARB_BEVERAGE_WINE = 5,
    // soft_drink
    CARB_BEVERAGE_SOFT_DRINK = 6,
} carb_beverage;

// Whether living yeast goes into the package.
typedef enum carb_yeast {
    // not given
    CARB_YEAST_NOT_GIVEN = 0,
    // live
    CARB_YEAST_LIVE = 1,
    // none
    CARB_YEAST_NONE = 2,
} carb_yeast;

// How the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own gas over
// it), co2_supplied (CO2 let in, at the fermenter's pressure).
typedef enum carb_cold_crash {
    // not given
    CARB_COLD_CRASH_NOT_GIVEN = 0,
    // open
    CARB_COLD_CRASH_OPEN = 1,
    // closed
    CARB_COLD_CRASH_CLOSED = 2,
    // co2_supplied
    CARB_COLD_CRASH_CO2_SUPPLIED = 3,
} carb_cold_crash;

// The priming sugar.
typedef enum carb_sugar {
    // not given
    CARB_SUGAR_NOT_GIVEN = 0,
    // dextrose_monohydrate
    CARB_SUGAR_DEXTROSE_MONOHYDRATE = 1,
    // dextrose_anhydrous
    CARB_SUGAR_DEXTROSE_ANHYDROUS = 2,
    // sucrose
    CARB_SUGAR_SUCROSE = 3,
    // dry_malt_extract
    CARB_SUGAR_DRY_MALT_EXTRACT = 4,
    // honey
    CARB_SUGAR_HONEY = 5,
    // maple_syrup
    CARB_SUGAR_MAPLE_SYRUP = 6,
    // table_sugar
    CARB_SUGAR_TABLE_SUGAR = 7,
    // icing_sugar
    CARB_SUGAR_ICING_SUGAR = 8,
    // turbinado
    CARB_SUGAR_TURBINADO = 9,
    // demerara
    CARB_SUGAR_DEMERARA = 10,
    // brown_sugar
    CARB_SUGAR_BROWN_SUGAR = 11,
    // maple_sugar
    CARB_SUGAR_MAPLE_SUGAR = 12,
    // invert_syrup
    CARB_SUGAR_INVERT_SYRUP = 13,
    // hfcs_42
    CARB_SUGAR_HFCS_42 = 14,
    // hfcs_55
    CARB_SUGAR_HFCS_55 = 15,
    // high_maltose_syrup
    CARB_SUGAR_HIGH_MALTOSE_SYRUP = 16,
    // molasses
    CARB_SUGAR_MOLASSES = 17,
    // blackstrap_molasses
    CARB_SUGAR_BLACKSTRAP_MOLASSES = 18,
    // cane_syrup
    CARB_SUGAR_CANE_SYRUP = 19,
    // agave_syrup
    CARB_SUGAR_AGAVE_SYRUP = 20,
    // candi_syrup
    CARB_SUGAR_CANDI_SYRUP = 21,
    // liquid_malt_extract
    CARB_SUGAR_LIQUID_MALT_EXTRACT = 22,
    // apple_juice
    CARB_SUGAR_APPLE_JUICE = 23,
    // apple_concentrate
    CARB_SUGAR_APPLE_CONCENTRATE = 24,
    // grape_juice
    CARB_SUGAR_GRAPE_JUICE = 25,
    // orange_juice
    CARB_SUGAR_ORANGE_JUICE = 26,
    // pineapple_juice
    CARB_SUGAR_PINEAPPLE_JUICE = 27,
    // raisins
    CARB_SUGAR_RAISINS = 28,
    // dates
    CARB_SUGAR_DATES = 29,
    // corn_syrup_42
    CARB_SUGAR_CORN_SYRUP_42 = 30,
    // corn_syrup_63
    CARB_SUGAR_CORN_SYRUP_63 = 31,
    // custom
    CARB_SUGAR_CUSTOM = 32,
} carb_sugar;

// What the fermentable part of a sugar of one's own is.
typedef enum carb_sugar_kind {
    // not given
    CARB_SUGAR_KIND_NOT_GIVEN = 0,
    // hexose
    CARB_SUGAR_KIND_HEXOSE = 1,
    // disaccharide
    CARB_SUGAR_KIND_DISACCHARIDE = 2,
    // trisaccharide
    CARB_SUGAR_KIND_TRISACCHARIDE = 3,
} carb_sugar_kind;

// What is added: a sugar, or something for sweetness.
typedef enum carb_addition {
    // not given
    CARB_ADDITION_NOT_GIVEN = 0,
    // dextrose_monohydrate
    CARB_ADDITION_DEXTROSE_MONOHYDRATE = 1,
    // dextrose_anhydrous
    CARB_ADDITION_DEXTROSE_ANHYDROUS = 2,
    // sucrose
    CARB_ADDITION_SUCROSE = 3,
    // dry_malt_extract
    CARB_ADDITION_DRY_MALT_EXTRACT = 4,
    // honey
    CARB_ADDITION_HONEY = 5,
    // maple_syrup
    CARB_ADDITION_MAPLE_SYRUP = 6,
    // table_sugar
    CARB_ADDITION_TABLE_SUGAR = 7,
    // icing_sugar
    CARB_ADDITION_ICING_SUGAR = 8,
    // turbinado
    CARB_ADDITION_TURBINADO = 9,
    // demerara
    CARB_ADDITION_DEMERARA = 10,
    // brown_sugar
    CARB_ADDITION_BROWN_SUGAR = 11,
    // maple_sugar
    CARB_ADDITION_MAPLE_SUGAR = 12,
    // invert_syrup
    CARB_ADDITION_INVERT_SYRUP = 13,
    // hfcs_42
    CARB_ADDITION_HFCS_42 = 14,
    // hfcs_55
    CARB_ADDITION_HFCS_55 = 15,
    // high_maltose_syrup
    CARB_ADDITION_HIGH_MALTOSE_SYRUP = 16,
    // molasses
    CARB_ADDITION_MOLASSES = 17,
    // blackstrap_molasses
    CARB_ADDITION_BLACKSTRAP_MOLASSES = 18,
    // cane_syrup
    CARB_ADDITION_CANE_SYRUP = 19,
    // agave_syrup
    CARB_ADDITION_AGAVE_SYRUP = 20,
    // candi_syrup
    CARB_ADDITION_CANDI_SYRUP = 21,
    // liquid_malt_extract
    CARB_ADDITION_LIQUID_MALT_EXTRACT = 22,
    // apple_juice
    CARB_ADDITION_APPLE_JUICE = 23,
    // apple_concentrate
    CARB_ADDITION_APPLE_CONCENTRATE = 24,
    // grape_juice
    CARB_ADDITION_GRAPE_JUICE = 25,
    // orange_juice
    CARB_ADDITION_ORANGE_JUICE = 26,
    // pineapple_juice
    CARB_ADDITION_PINEAPPLE_JUICE = 27,
    // raisins
    CARB_ADDITION_RAISINS = 28,
    // dates
    CARB_ADDITION_DATES = 29,
    // corn_syrup_42
    CARB_ADDITION_CORN_SYRUP_42 = 30,
    // corn_syrup_63
    CARB_ADDITION_CORN_SYRUP_63 = 31,
    // custom
    CARB_ADDITION_CUSTOM = 32,
    // lactose
    CARB_ADDITION_LACTOSE = 33,
    // maltodextrin
    CARB_ADDITION_MALTODEXTRIN = 34,
    // sucralose
    CARB_ADDITION_SUCRALOSE = 35,
    // aspartame
    CARB_ADDITION_ASPARTAME = 36,
    // saccharin
    CARB_ADDITION_SACCHARIN = 37,
    // stevia
    CARB_ADDITION_STEVIA = 38,
    // erythritol
    CARB_ADDITION_ERYTHRITOL = 39,
    // xylitol
    CARB_ADDITION_XYLITOL = 40,
    // sorbitol
    CARB_ADDITION_SORBITOL = 41,
    // sweetener_packets
    CARB_ADDITION_SWEETENER_PACKETS = 42,
} carb_addition;

// Class of the bottle: see the table bottle_classes.
typedef enum carb_bottle_class {
    // not given
    CARB_BOTTLE_CLASS_NOT_GIVEN = 0,
    // light_one_way
    CARB_BOTTLE_CLASS_LIGHT_ONE_WAY = 1,
    // heavier_reusable
    CARB_BOTTLE_CLASS_HEAVIER_REUSABLE = 2,
    // swing_top
    CARB_BOTTLE_CLASS_SWING_TOP = 3,
    // heavy_belgian
    CARB_BOTTLE_CLASS_HEAVY_BELGIAN = 4,
    // champagne
    CARB_BOTTLE_CLASS_CHAMPAGNE = 5,
    // soft_drink_multi_trip
    CARB_BOTTLE_CLASS_SOFT_DRINK_MULTI_TRIP = 6,
    // soft_drink_glass
    CARB_BOTTLE_CLASS_SOFT_DRINK_GLASS = 7,
    // pet_soft_drink
    CARB_BOTTLE_CLASS_PET_SOFT_DRINK = 8,
    // growler
    CARB_BOTTLE_CLASS_GROWLER = 9,
    // still_wine
    CARB_BOTTLE_CLASS_STILL_WINE = 10,
} carb_bottle_class;

// Which relation turns specific gravity into extract.
typedef enum carb_extract_scale {
    // not given
    CARB_EXTRACT_SCALE_NOT_GIVEN = 0,
    // asbc
    CARB_EXTRACT_SCALE_ASBC = 1,
    // lincoln
    CARB_EXTRACT_SCALE_LINCOLN = 2,
    // quick
    CARB_EXTRACT_SCALE_QUICK = 3,
} carb_extract_scale;

// Which relation gives real extract and real attenuation: balling (one less their ratio), or quotient (which
// counts the mass lost as CO2); alcohol is Balling's by either.
typedef enum carb_real_extract_model {
    // not given
    CARB_REAL_EXTRACT_MODEL_NOT_GIVEN = 0,
    // balling
    CARB_REAL_EXTRACT_MODEL_BALLING = 1,
    // quotient
    CARB_REAL_EXTRACT_MODEL_QUOTIENT = 2,
} carb_real_extract_model;

// How the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or rocked.
typedef enum carb_method {
    // not given
    CARB_METHOD_NOT_GIVEN = 0,
    // still
    CARB_METHOD_STILL = 1,
    // dip_tube
    CARB_METHOD_DIP_TUBE = 2,
    // on_side
    CARB_METHOD_ON_SIDE = 3,
    // stone
    CARB_METHOD_STONE = 4,
    // rocked
    CARB_METHOD_ROCKED = 5,
} carb_method;

// Size of the cylinder or cartridge: see the table cylinder_sizes.
typedef enum carb_cylinder_size {
    // not given
    CARB_CYLINDER_SIZE_NOT_GIVEN = 0,
    // cartridge_8_g
    CARB_CYLINDER_SIZE_CARTRIDGE_8_G = 1,
    // cartridge_12_g
    CARB_CYLINDER_SIZE_CARTRIDGE_12_G = 2,
    // cartridge_16_g
    CARB_CYLINDER_SIZE_CARTRIDGE_16_G = 3,
    // cartridge_74_g
    CARB_CYLINDER_SIZE_CARTRIDGE_74_G = 4,
    // cylinder_2_kg
    CARB_CYLINDER_SIZE_CYLINDER_2_KG = 5,
    // cylinder_5_lb
    CARB_CYLINDER_SIZE_CYLINDER_5_LB = 6,
    // cylinder_10_lb
    CARB_CYLINDER_SIZE_CYLINDER_10_LB = 7,
    // cylinder_6_kg
    CARB_CYLINDER_SIZE_CYLINDER_6_KG = 8,
    // cylinder_20_lb
    CARB_CYLINDER_SIZE_CYLINDER_20_LB = 9,
    // cylinder_10_kg
    CARB_CYLINDER_SIZE_CYLINDER_10_KG = 10,
} carb_cylinder_size;

// Tubing of the draught line: see the table tubes.
typedef enum carb_tube {
    // not given
    CARB_TUBE_NOT_GIVEN = 0,
    // vinyl_3_16_in
    CARB_TUBE_VINYL_3_16_IN = 1,
    // vinyl_1_4_in
    CARB_TUBE_VINYL_1_4_IN = 2,
    // vinyl_5_16_in
    CARB_TUBE_VINYL_5_16_IN = 3,
    // vinyl_3_8_in
    CARB_TUBE_VINYL_3_8_IN = 4,
    // vinyl_1_2_in
    CARB_TUBE_VINYL_1_2_IN = 5,
    // barrier_3_16_in
    CARB_TUBE_BARRIER_3_16_IN = 6,
    // barrier_1_4_in
    CARB_TUBE_BARRIER_1_4_IN = 7,
    // barrier_5_16_in
    CARB_TUBE_BARRIER_5_16_IN = 8,
    // barrier_3_8_in
    CARB_TUBE_BARRIER_3_8_IN = 9,
    // steel_1_4_in_od
    CARB_TUBE_STEEL_1_4_IN_OD = 10,
    // steel_5_16_in_od
    CARB_TUBE_STEEL_5_16_IN_OD = 11,
    // steel_3_8_in_od
    CARB_TUBE_STEEL_3_8_IN_OD = 12,
    // metric_7_mm
    CARB_TUBE_METRIC_7_MM = 13,
    // metric_10_mm
    CARB_TUBE_METRIC_10_MM = 14,
} carb_tube;

// How the drink goes from the keg into bottles or growlers: see the table filling_losses.
typedef enum carb_fill_method {
    // not given
    CARB_FILL_METHOD_NOT_GIVEN = 0,
    // automatic
    CARB_FILL_METHOD_AUTOMATIC = 1,
    // counter_pressure_line
    CARB_FILL_METHOD_COUNTER_PRESSURE_LINE = 2,
    // hand_counter_pressure
    CARB_FILL_METHOD_HAND_COUNTER_PRESSURE = 3,
    // tap_tube
    CARB_FILL_METHOD_TAP_TUBE = 4,
    // tilted_glass
    CARB_FILL_METHOD_TILTED_GLASS = 5,
} carb_fill_method;

// How air is kept out of a keg: none, headspace (gas over the drink vented), empty (vented before it is filled),
// or push (sanitiser pushed out by CO2, then the headspace vented if cycles are given).
typedef enum carb_purge {
    // not given
    CARB_PURGE_NOT_GIVEN = 0,
    // none
    CARB_PURGE_NONE = 1,
    // headspace
    CARB_PURGE_HEADSPACE = 2,
    // empty
    CARB_PURGE_EMPTY = 3,
    // push
    CARB_PURGE_PUSH = 4,
} carb_purge;

// The set of assumptions to start from.
typedef enum carb_basis {
    // not given
    CARB_BASIS_NOT_GIVEN = 0,
    // handbook
    CARB_BASIS_HANDBOOK = 1,
    // physical
    CARB_BASIS_PHYSICAL = 2,
} carb_basis;

// The solubility model (default: that of the basis for this drink).
typedef enum carb_model {
    // not given
    CARB_MODEL_NOT_GIVEN = 0,
    // chart_fit
    CARB_MODEL_CHART_FIT = 1,
    // water_core
    CARB_MODEL_WATER_CORE = 2,
    // eu_wine
    CARB_MODEL_EU_WINE = 3,
    // chart_quadratic
    CARB_MODEL_CHART_QUADRATIC = 4,
    // european
    CARB_MODEL_EUROPEAN = 5,
    // iapws_water
    CARB_MODEL_IAPWS_WATER = 6,
    // carroll_water
    CARB_MODEL_CARROLL_WATER = 7,
} carb_model;

// The model of residual CO2 (default: that of the basis).
typedef enum carb_residual_model {
    // not given
    CARB_RESIDUAL_MODEL_NOT_GIVEN = 0,
    // table
    CARB_RESIDUAL_MODEL_TABLE = 1,
    // equilibrium
    CARB_RESIDUAL_MODEL_EQUILIBRIUM = 2,
} carb_residual_model;

// A function with its inputs, made by carb_bind and freed by carb_bound_free. It does not change, so that any number of
// threads may call it at once.
typedef struct carb_bound carb_bound;

// The inputs of every function. carb_inputs_init makes one in which nothing is given: numbers are CARB_NOT_GIVEN,
// choices and flags 0. Set its members, or use carb_inputs_set and carb_inputs_choose by any name. A function
// refuses what it does not take.
typedef struct carb_inputs {
    // sizeof (carb_inputs)
    uint32_t struct_size;
    // what the drink is; an enum carb_beverage
    int32_t beverage;
    // whether living yeast goes into the package; an enum carb_yeast
    int32_t yeast;
    // the priming sugar; an enum carb_sugar
    int32_t sugar;
    // the set of assumptions to start from; an enum carb_basis
    int32_t basis;
    // the solubility model (default: that of the basis for this drink); an enum carb_model
    int32_t model;
    // the model of residual CO2 (default: that of the basis); an enum carb_residual_model
    int32_t residual_model;
    // whether the gas over the drink takes its share of the CO2; an enum carb_flag
    int32_t count_headspace;
    // alcohol by volume; %, 0 to 25
    double abv_percent;
    // everything dissolved except CO2 and alcohol: it lowers the solubility of CO2; g/L, 0 to 400
    double extract_g_per_l;
    // what yeast in the package can still turn into CO2: it makes pressure; g/L, 0 to 400
    double fermentable_g_per_l;
    // drink that reaches packages (not the batch size: trub and losses stay behind); L, 0.001 to 1000000
    double packaged_l;
    // CO2 per litre of drink; g/L, 0 to 30
    double co2_g_per_l;
    // highest temperature of the drink since active fermentation; °C, 0 to 45
    double warmest_c;
    // temperature of the drink when its package is closed; °C, -5 to 60
    double filling_c;
    // temperature of the drink; °C, -5 to 60
    double temperature_c;
    // temperature of the room: that in which bottles condition, or into which CO2 escapes; °C, -5 to 60
    double room_c;
    // height above sea level, from which the air pressure outside follows by ISO 2533; m, -500 to 9000
    double altitude_m;
    // measured pressure of the air outside, at the station (not reduced to sea level); kPa, 30 to 110
    double ambient_kpa;
    // air pressure reduced to sea level, as weather reports give it; needs the altitude too; kPa, 87 to 109
    double sea_level_kpa;
    // pressure above the air outside, total of the gas over the drink; kPa, -110 to 3000
    double gauge_kpa;
    // pressure above vacuum, total of the gas over the drink; kPa, 0 to 3000
    double abs_kpa;
    // gas space over the drink, in percent of the drink's volume; %, 0 to 100
    double headspace_percent;
    // specific gravity 20/20 °C; SG, 0.98 to 1.165
    double sg;
    // extract, grams in 100 g of solution; °P, -5.2 to 37
    double plato;
    // CO2 really made, in percent of the sugar's theoretical yield; %, 50 to 105
    double yield_percent;
    // factor on every solubility; 0.5 to 2
    double solubility_multiplier;
    // factor on the residual CO2; 0 to 3
    double residual_multiplier;
    // factor on the yield of sugar; 0.5 to 2
    double yield_multiplier;
    // what the fermentable part of a sugar of one's own is; an enum carb_sugar_kind
    int32_t sugar_kind;
    // what is added: a sugar, or something for sweetness; an enum carb_addition
    int32_t addition;
    // which relation turns specific gravity into extract; an enum carb_extract_scale
    int32_t extract_scale;
    // which relation gives real extract and real attenuation: balling (one less their ratio), or quotient (which
    // counts the mass lost as CO2); alcohol is Balling's by either; an enum carb_real_extract_model
    int32_t real_extract_model;
    // water in a sugar of one's own, percent of its mass; %, 0 to 100
    double sugar_water_percent;
    // specific gravity 20/20 °C of a syrup of one's own, from which its water follows; SG, 1 to 1.45
    double sugar_sg;
    // what yeast ferments of the dry matter of a sugar of one's own, percent; %, 0 to 100
    double sugar_fermentable_percent;
    // sugar or other addition, as sold, per litre of drink; g/L, 0 to 400
    double dose_g_per_l;
    // specific gravity 20/20 °C of the wort or must before fermentation; SG, 1.001 to 1.165
    double original_sg;
    // extract of the wort or must before fermentation; °P, 0.2 to 37
    double original_plato;
    // specific gravity 20/20 °C as it is now; SG, 0.98 to 1.165
    double current_sg;
    // apparent extract as it is now; °P, -5.2 to 37
    double current_plato;
    // specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test; SG, 0.98 to
    // 1.165
    double final_sg;
    // apparent extract at which fermentation will end, best by a forced-fermentation test; °P, -5.2 to 37
    double final_plato;
    // viscosity of the drink over that of water; 0.5 to 10
    double viscosity_multiplier;
    // temperature of a cylinder of CO2: from the triple to the critical point, between which it holds liquid; °C,
    // -56.558 to 30.9782
    double cylinder_c;
    // how the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own gas
    // over it), co2_supplied (CO2 let in, at the fermenter's pressure); an enum carb_cold_crash
    int32_t cold_crash;
    // class of the bottle: see the table bottle_classes; an enum carb_bottle_class
    int32_t bottle_class;
    // whether the drink was filtered or fined bright; an enum carb_flag
    int32_t filtered;
    // whether the volume of the syrup, if one is made, counts; an enum carb_flag
    int32_t count_syrup;
    // CO2 in the drink before it is packaged, measured: it overrides what the warmest temperature says; g/L, 0 to
    // 30
    double residual_co2_g_per_l;
    // pressure above the air outside that the fermenter held at the warmest temperature; kPa, 0 to 500
    double fermenter_gauge_kpa;
    // temperature to which the drink was chilled before packaging; °C, -5 to 60
    double crash_c;
    // gas over the drink in a closed fermenter, in percent of the drink's volume; %, 0 to 1000
    double fermenter_headspace_percent;
    // water in which the priming sugar is dissolved; L, 0 to 1000
    double syrup_water_l;
    // temperature at which the sugar has to stay dissolved; °C, 0 to 100
    double dissolving_c;
    // mass of sugar, or of what is added, as sold; g, 0 to 1000000000
    double mass_g;
    // CO2 that the priming wort holds: none in fresh wort, about saturation in fermenting beer; g/L, 0 to 30
    double wort_co2_g_per_l;
    // specific gravity 20/20 °C of the priming wort before fermentation; SG, 1.001 to 1.165
    double wort_original_sg;
    // extract of the priming wort before fermentation; °P, 0.2 to 37
    double wort_original_plato;
    // specific gravity 20/20 °C of the priming wort when it is added; SG, 0.98 to 1.165
    double wort_current_sg;
    // apparent extract of the priming wort when it is added; °P, -5.2 to 37
    double wort_current_plato;
    // real degree of fermentation at which the yeast ends: the limit attenuation; %, 1 to 100
    double limit_attenuation_percent;
    // apparent attenuation at which fermentation is expected to end; %, 1 to 125
    double expected_attenuation_percent;
    // pressure above the air outside for which the maker rates the bottle; kPa, 0 to 3000
    double rating_gauge_kpa;
    // time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or
    // step at one temperature; h, 0 to 44444.4444
    double time_h;
    // living yeast in the drink; million/mL, 0 to 1000
    double yeast_million_per_ml;
    // time that the drink has stood since its fermentation ended; h, 0 to 44444.4444
    double age_h;
    // share of the carbonation that is made; %, 0 to 100
    double progress_percent;
    // how the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or rocked; an
    // enum carb_method
    int32_t method;
    // size of the cylinder or cartridge: see the table cylinder_sizes; an enum carb_cylinder_size
    int32_t cylinder_size;
    // tubing of the draught line: see the table tubes; an enum carb_tube
    int32_t tube;
    // how the drink goes from the keg into bottles or growlers: see the table filling_losses; an enum
    // carb_fill_method
    int32_t fill_method;
    // how air is kept out of a keg: none, headspace (gas over the drink vented), empty (vented before it is
    // filled), or push (sanitiser pushed out by CO2, then the headspace vented if cycles are given); an enum
    // carb_purge
    int32_t purge;
    // not used
    int32_t reserved_1;
    // drink that goes into one bottle; L, 0.01 to 100
    double bottle_l;
    // CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen; %, 1 to 100
    double co2_percent;
    // partial pressure of air, or of nitrogen, that stays in the headspace: that of the air outside where it was
    // not purged at all; kPa, 0 to 3000
    double air_abs_kpa;
    // height of drink above the place that is meant; m, 0 to 30
    double depth_m;
    // what the keg or tank holds, filled to the brim; L, 0.1 to 1000000
    double keg_l;
    // inner diameter of the keg or tank; m, 0.02 to 20
    double keg_diameter_m;
    // pressure above the air outside for which the keg is rated: the least of its marking and its relief valve;
    // kPa, 0 to 3000
    double keg_rating_gauge_kpa;
    // share of the gap to equilibrium that closes in a time: first-order rate of uptake; 1/h, 0 to 360
    double kla_per_h;
    // CO2 in the drink at the start; g/L, 0 to 30
    double start_co2_g_per_l;
    // high pressure, above the air outside, with which carbonation is started; kPa, 0 to 3000
    double burst_gauge_kpa;
    // the most CO2 that the regulator lets through; g/h, 0.0036 to 3600000
    double supply_g_per_h;
    // oxygen in the gas over the drink; ppm, 0 to 250000
    double oxygen_ppm;
    // oxygen in the vessel before it is purged; ppm, 0 to 250000
    double start_oxygen_ppm;
    // oxygen in the CO2 as supplied; ppm, 0 to 50000
    double gas_oxygen_ppm;
    // pressure above the air outside to which a vessel is filled before it is vented; kPa, 0.1 to 3000
    double purge_gauge_kpa;
    // how often a vessel is filled with CO2 and vented; 0 to 1000
    double cycles_count;
    // vessel volumes of CO2 that flow through an open vessel; 0 to 1000
    double sweeps_count;
    // air that stays under the lid when a vessel is filled with liquid; L, 0 to 1000
    double pocket_l;
    // oxygen dissolved in the drink; µg/L, 0 to 100000
    double dissolved_oxygen_ug_per_l;
    // mass of CO2; g, 0 to 1000000000
    double gas_g;
    // CO2 lost through leaks and disconnecting, percent of what is used; %, 0 to 500
    double gas_loss_percent;
    // CO2 in a full cylinder; g, 0.1 to 1000000
    double charge_g;
    // CO2 in a full cylinder over the water that it would hold; g/g, 0.5 to 0.9
    double filling_ratio_g_per_g;
    // what the cylinder weighs now; g, 1 to 10000000
    double gross_g;
    // what the empty cylinder weighs: it is stamped on it; g, 1 to 10000000
    double tare_g;
    // inner diameter of the line; mm, 1 to 50
    double bore_mm;
    // length of the draught line; m, 0 to 500
    double line_m;
    // height of the faucet over the drink in the keg (its middle, where it is half empty); below 0 where the
    // faucet is lower; m, -30 to 50
    double rise_m;
    // losses of fittings and faucet, in velocity heads of the line; 0 to 1000
    double fittings_multiplier;
    // drink that flows; L/min, 0.0006 to 6000
    double flow_l_per_min;
    // drink that is poured into one glass; L, 0.01 to 100
    double glass_l;
    // time in which the glass is full; s, 0.1 to 36000
    double pour_seconds;
    // pressure lost per length of line; bar/m, 0 to 100
    double resistance_bar_per_m;
    // pressure at which gas first bubbles from the wet stone; kPa, 0 to 1000
    double wetting_kpa;
    // pressure to spare, so that gas flows; kPa, 0 to 1000
    double margin_kpa;
    // CO2 lost while filling; g/L, 0 to 30
    double fill_loss_co2_g_per_l;
    // volume of the other drink that is blended in; L, 0.001 to 1000000
    double other_l;
    // CO2 in the other drink; g/L, 0 to 30
    double other_co2_g_per_l;
    // CO2 that escapes into the room; g, 0 to 100000000
    double released_g;
    // volume of the room; m3, 0.1 to 1000000
    double room_m3;
    // how often the air of the room is exchanged: about 0.5 an hour in a closed room, less in a cold room or a
    // cellar; 1/h, 0.01 to 360
    double air_changes_per_h;
    // CO2 that leaks steadily; g/h, 0 to 3600000
    double leak_g_per_h;
    // price of everything that kegging needs and bottling does not; 0 to 1000000000
    double outfit_money;
    // price of everything that bottling needs and kegging does not, without the bottles; 0 to 1000000000
    double bottling_outfit_money;
    // price of one empty bottle; 0 to 1000000000
    double bottle_money;
    // price of one cap; 0 to 1000000000
    double cap_money;
    // price of the priming sugar; per kg, 0 to 1000000000
    double sugar_money_per_kg;
    // price of CO2; per kg, 0 to 1000000000
    double gas_money_per_kg;
    // what the drink itself costs; per L, 0 to 1000000000
    double drink_money_per_l;
    // how many batches are looked at; 1 to 100000
    double batches_count;
    // how often a bottle is used before it is lost or broken; 1 to 100000
    double uses_count;
    // drink lost in bottling, percent; %, 0 to 100
    double bottle_loss_percent;
    // drink lost in kegging and in the line, percent; %, 0 to 100
    double keg_loss_percent;
    // pressure that faucet, shank, couplings and other lengths of line take, by the trade's balance; kPa, 0 to
    // 1000
    double hardware_kpa;
    // temperature of a keg that is purged while it is empty; °C, -5 to 60
    double purge_c;
    // pressure above the air outside at which CO2 pushes liquid out of a full keg; kPa, 0 to 3000
    double push_gauge_kpa;
} carb_inputs;

// What was wrong. The caller owns it, sets struct_size to sizeof (carb_error), and may pass NULL instead. After a call
// that succeeded the code is CARB_OK and the texts are empty.
typedef struct carb_error {
    // sizeof (carb_error)
    uint32_t struct_size;
    // the status that was returned
    int32_t code;
    // the parameter at fault, by the name that was used; empty where there is none
    char parameter[64];
    // the value at fault, in the unit of the parameter's name; NaN where there is none
    double value;
    // the lowest value that is answered; NaN where there is no limit
    double low;
    // the highest value that is answered, infinite where that side is open; NaN where there is no limit
    double high;
    // what is wrong and what to do, in a sentence of UTF-8
    char text[512];
} carb_error;

// What carb_dissolved_co2 answers; numbers are NaN where it returns an error.
typedef struct carb_dissolved_co2_result {
    // sizeof (carb_dissolved_co2_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // CO2 per litre of drink; g/L
    double co2_g_per_l;
} carb_dissolved_co2_result;

// Values of one input of an array call.
typedef struct carb_series {
    // any name of the vocabulary, such as "temperature_f"
    const char *name;
    // the values, in the unit of the name
    const double *values;
    // how many: 1 (the same for every element), or as many as there are elements
    size_t count;
} carb_series;

// What carb_keg_pressure answers; numbers are NaN where it returns an error.
typedef struct carb_keg_pressure_result {
    // sizeof (carb_keg_pressure_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // pressure above the air outside, total of the gas over the drink; kPa
    double gauge_kpa;
    // pressure above vacuum, total of the gas over the drink; kPa
    double abs_kpa;
} carb_keg_pressure_result;

// What carb_gas_blend answers; numbers are NaN where it returns an error.
typedef struct carb_gas_blend_result {
    // sizeof (carb_gas_blend_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen; %
    double co2_percent;
} carb_gas_blend_result;

// What carb_keg_temperature answers; numbers are NaN where it returns an error.
typedef struct carb_keg_temperature_result {
    // sizeof (carb_keg_temperature_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // temperature of the drink; °C
    double temperature_c;
} carb_keg_temperature_result;

// What carb_warmed_keg answers; numbers are NaN where it returns an error.
typedef struct carb_warmed_keg_result {
    // sizeof (carb_warmed_keg_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // expected: pressure above the air outside, total of the gas over the drink; kPa
    double expected_gauge_kpa;
    // expected: pressure above vacuum, total of the gas over the drink; kPa
    double expected_abs_kpa;
    // expected: CO2 per litre of drink; g/L
    double expected_co2_g_per_l;
    // worst: pressure above the air outside, total of the gas over the drink; kPa
    double worst_gauge_kpa;
    // worst: pressure above vacuum, total of the gas over the drink; kPa
    double worst_abs_kpa;
} carb_warmed_keg_result;

// What carb_spunding answers; numbers are NaN where it returns an error.
typedef struct carb_spunding_result {
    // sizeof (carb_spunding_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // relief: pressure above the air outside, total of the gas over the drink; kPa
    double relief_gauge_kpa;
    // relief: pressure above vacuum, total of the gas over the drink; kPa
    double relief_abs_kpa;
    // closing: specific gravity 20/20 °C; SG
    double closing_sg;
    // closing: extract, grams in 100 g of solution; °P
    double closing_plato;
    // by how much the specific gravity lies above the end of fermentation; SG
    double drop_sg;
    // CO2 in the drink at the start; g/L
    double start_co2_g_per_l;
} carb_spunding_result;

// What carb_closed_fermentation answers; numbers are NaN where it returns an error.
typedef struct carb_closed_fermentation_result {
    // sizeof (carb_closed_fermentation_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // expected: pressure above the air outside, total of the gas over the drink; kPa
    double expected_gauge_kpa;
    // expected: pressure above vacuum, total of the gas over the drink; kPa
    double expected_abs_kpa;
    // expected: CO2 per litre of drink; g/L
    double expected_co2_g_per_l;
    // worst: pressure above the air outside, total of the gas over the drink; kPa
    double worst_gauge_kpa;
    // worst: pressure above vacuum, total of the gas over the drink; kPa
    double worst_abs_kpa;
} carb_closed_fermentation_result;

// What carb_stone_pressure answers; numbers are NaN where it returns an error.
typedef struct carb_stone_pressure_result {
    // sizeof (carb_stone_pressure_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // pressure above the air outside, total of the gas over the drink; kPa
    double gauge_kpa;
    // surface: pressure above the air outside, total of the gas over the drink; kPa
    double surface_gauge_kpa;
    // head: difference of pressure; kPa
    double head_drop_kpa;
} carb_stone_pressure_result;

// What carb_residual_co2 answers; numbers are NaN where it returns an error.
typedef struct carb_residual_co2_result {
    // sizeof (carb_residual_co2_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // CO2 per litre of drink; g/L
    double co2_g_per_l;
} carb_residual_co2_result;

// What carb_priming_sugar answers; numbers are NaN where it returns an error.
typedef struct carb_priming_sugar_result {
    // sizeof (carb_priming_sugar_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // mass of sugar, or of what is added, as sold; g
    double mass_g;
    // sugar or other addition, as sold, per litre of drink; g/L
    double dose_g_per_l;
} carb_priming_sugar_result;

// What carb_primed_carbonation answers; numbers are NaN where it returns an error.
typedef struct carb_primed_carbonation_result {
    // sizeof (carb_primed_carbonation_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // CO2 per litre of drink; g/L
    double co2_g_per_l;
    // added: alcohol by volume; %
    double added_abv_percent;
    // alcohol by volume; %
    double abv_percent;
} carb_primed_carbonation_result;

// What carb_priming_wort answers; numbers are NaN where it returns an error.
typedef struct carb_priming_wort_result {
    // sizeof (carb_priming_wort_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // wort or fermenting beer that primes the drink; L
    double wort_l;
    // wort that primes the drink, in percent of the drink's volume; %
    double wort_percent;
} carb_priming_wort_result;

// What carb_priming_syrup answers; numbers are NaN where it returns an error.
typedef struct carb_priming_syrup_result {
    // sizeof (carb_priming_syrup_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // volume of the syrup when it has cooled; L
    double syrup_l;
    // least: water in which the priming sugar is dissolved; L
    double least_syrup_water_l;
    // dissolved dry matter in the syrup, percent of its mass; %
    double syrup_percent;
} carb_priming_syrup_result;

// What carb_package_pressure answers; numbers are NaN where it returns an error.
typedef struct carb_package_pressure_result {
    // sizeof (carb_package_pressure_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // expected: pressure above the air outside, total of the gas over the drink; kPa
    double expected_gauge_kpa;
    // expected: pressure above vacuum, total of the gas over the drink; kPa
    double expected_abs_kpa;
    // expected: CO2 per litre of drink; g/L
    double expected_co2_g_per_l;
    // worst: pressure above the air outside, total of the gas over the drink; kPa
    double worst_gauge_kpa;
    // worst: pressure above vacuum, total of the gas over the drink; kPa
    double worst_abs_kpa;
} carb_package_pressure_result;

// What carb_package_carbonation answers; numbers are NaN where it returns an error.
typedef struct carb_package_carbonation_result {
    // sizeof (carb_package_carbonation_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // total: CO2 per litre of drink; g/L
    double total_co2_g_per_l;
    // dissolved: CO2 per litre of drink; g/L
    double dissolved_co2_g_per_l;
    // least_total: CO2 per litre of drink; g/L
    double least_total_co2_g_per_l;
    // least_dissolved: CO2 per litre of drink; g/L
    double least_dissolved_co2_g_per_l;
} carb_package_carbonation_result;

// What carb_conditioning answers; numbers are NaN where it returns an error.
typedef struct carb_conditioning_result {
    // sizeof (carb_conditioning_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // expected: share of the carbonation that is made; %
    double expected_progress_percent;
    // least: share of the carbonation that is made; %
    double least_progress_percent;
    // most: share of the carbonation that is made; %
    double most_progress_percent;
} carb_conditioning_result;

// What carb_conditioning_time answers; numbers are NaN where it returns an error.
typedef struct carb_conditioning_time_result {
    // sizeof (carb_conditioning_time_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // expected: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a
    // spell or step at one temperature; h
    double expected_time_h;
    // least: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
    // or step at one temperature; h
    double least_time_h;
    // most: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
    // or step at one temperature; h
    double most_time_h;
} carb_conditioning_time_result;

// What carb_reyeasting answers; numbers are NaN where it returns an error.
typedef struct carb_reyeasting_result {
    // sizeof (carb_reyeasting_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // dry_yeast: mass of sugar, or of what is added, as sold; g
    double dry_yeast_mass_g;
} carb_reyeasting_result;

// What carb_gravity answers; numbers are NaN where it returns an error.
typedef struct carb_gravity_result {
    // sizeof (carb_gravity_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // specific gravity 20/20 °C; SG
    double sg;
    // extract, grams in 100 g of solution; °P
    double plato;
} carb_gravity_result;

// What carb_attenuation answers; numbers are NaN where it returns an error.
typedef struct carb_attenuation_result {
    // sizeof (carb_attenuation_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // extract with the alcohol taken away; °P
    double real_extract_plato;
    // apparent: share of the extract that was fermented; %
    double apparent_attenuation_percent;
    // real: share of the extract that was fermented; %
    double real_attenuation_percent;
    // alcohol by mass; %
    double abw_percent;
    // alcohol by volume; %
    double abv_percent;
    // quick: alcohol by volume; %
    double quick_abv_percent;
    // everything dissolved except CO2 and alcohol: it lowers the solubility of CO2; g/L
    double extract_g_per_l;
} carb_attenuation_result;

// What carb_final_gravity answers; numbers are NaN where it returns an error.
typedef struct carb_final_gravity_result {
    // sizeof (carb_final_gravity_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test; SG
    double final_sg;
    // apparent extract at which fermentation will end, best by a forced-fermentation test; °P
    double final_plato;
} carb_final_gravity_result;

// What carb_gravity_co2 answers; numbers are NaN where it returns an error.
typedef struct carb_gravity_co2_result {
    // sizeof (carb_gravity_co2_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // what yeast in the package can still turn into CO2: it makes pressure; g/L
    double fermentable_g_per_l;
    // balling: CO2 per litre of drink; g/L
    double balling_co2_g_per_l;
    // theory: CO2 per litre of drink; g/L
    double theory_co2_g_per_l;
} carb_gravity_co2_result;

// What carb_added_co2 answers; numbers are NaN where it returns an error.
typedef struct carb_added_co2_result {
    // sizeof (carb_added_co2_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // expected: CO2 per litre of drink; g/L
    double expected_co2_g_per_l;
    // worst: CO2 per litre of drink; g/L
    double worst_co2_g_per_l;
    // added: alcohol by volume; %
    double added_abv_percent;
} carb_added_co2_result;

// What carb_drink_properties answers; numbers are NaN where it returns an error.
typedef struct carb_drink_properties_result {
    // sizeof (carb_drink_properties_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // density; kg/m3
    double density_kg_per_m3;
    // dynamic viscosity; mPa s
    double viscosity_mpa_s;
    // diffusivity of dissolved CO2; m2/s
    double diffusivity_m2_per_s;
} carb_drink_properties_result;

// What carb_co2_saturation answers; numbers are NaN where it returns an error.
typedef struct carb_co2_saturation_result {
    // sizeof (carb_co2_saturation_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // pressure above vacuum, total of the gas over the drink; kPa
    double abs_kpa;
    // liquid: density; kg/m3
    double liquid_density_kg_per_m3;
    // vapour: density; kg/m3
    double vapour_density_kg_per_m3;
} carb_co2_saturation_result;

// What carb_line_flow answers; numbers are NaN where it returns an error.
typedef struct carb_line_flow_result {
    // sizeof (carb_line_flow_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // drink that flows; L/min
    double flow_l_per_min;
    // time in which the glass is full; s
    double pour_seconds;
    // speed of the drink in the line; m/s
    double speed_m_per_s;
    // Reynolds number of the flow;
    double reynolds_multiplier;
    // pressure lost per length of line; bar/m
    double resistance_bar_per_m;
    // drink that stands in the line; L
    double line_l;
} carb_line_flow_result;

// What carb_line_length answers; numbers are NaN where it returns an error.
typedef struct carb_line_length_result {
    // sizeof (carb_line_length_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // length of the draught line; m
    double line_m;
    // drink that stands in the line; L
    double line_l;
    // drink that flows; L/min
    double flow_l_per_min;
    // time in which the glass is full; s
    double pour_seconds;
    // speed of the drink in the line; m/s
    double speed_m_per_s;
    // Reynolds number of the flow;
    double reynolds_multiplier;
    // pressure lost per length of line; bar/m
    double resistance_bar_per_m;
} carb_line_length_result;

// What carb_line_pressure answers; numbers are NaN where it returns an error.
typedef struct carb_line_pressure_result {
    // sizeof (carb_line_pressure_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // pressure above the air outside, total of the gas over the drink; kPa
    double gauge_kpa;
    // lift: difference of pressure; kPa
    double lift_drop_kpa;
    // line: difference of pressure; kPa
    double line_drop_kpa;
    // fittings: difference of pressure; kPa
    double fittings_drop_kpa;
    // drink that flows; L/min
    double flow_l_per_min;
    // time in which the glass is full; s
    double pour_seconds;
    // speed of the drink in the line; m/s
    double speed_m_per_s;
    // Reynolds number of the flow;
    double reynolds_multiplier;
} carb_line_pressure_result;

// What carb_handbook_line answers; numbers are NaN where it returns an error.
typedef struct carb_handbook_line_result {
    // sizeof (carb_handbook_line_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // length of the draught line; m
    double line_m;
    // lift: difference of pressure; kPa
    double lift_drop_kpa;
    // pressure lost per length of line; bar/m
    double resistance_bar_per_m;
} carb_handbook_line_result;

// What carb_handbook_pressure answers; numbers are NaN where it returns an error.
typedef struct carb_handbook_pressure_result {
    // sizeof (carb_handbook_pressure_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // pressure above the air outside, total of the gas over the drink; kPa
    double gauge_kpa;
    // lift: difference of pressure; kPa
    double lift_drop_kpa;
    // line: difference of pressure; kPa
    double line_drop_kpa;
} carb_handbook_pressure_result;

// What carb_filling_carbonation answers; numbers are NaN where it returns an error.
typedef struct carb_filling_carbonation_result {
    // sizeof (carb_filling_carbonation_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // expected: CO2 per litre of drink; g/L
    double expected_co2_g_per_l;
    // least: CO2 per litre of drink; g/L
    double least_co2_g_per_l;
    // most: CO2 per litre of drink; g/L
    double most_co2_g_per_l;
} carb_filling_carbonation_result;

// What carb_blend answers; numbers are NaN where it returns an error.
typedef struct carb_blend_result {
    // sizeof (carb_blend_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // drink that reaches packages (not the batch size: trub and losses stay behind); L
    double packaged_l;
    // mixed: CO2 per litre of drink; g/L
    double mixed_co2_g_per_l;
    // kept: CO2 per litre of drink; g/L
    double kept_co2_g_per_l;
    // CO2 that escapes into the room; g
    double released_g;
} carb_blend_result;

// What carb_purge_oxygen answers; numbers are NaN where it returns an error.
typedef struct carb_purge_oxygen_result {
    // sizeof (carb_purge_oxygen_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // oxygen in the gas over the drink; ppm
    double oxygen_ppm;
    // each: mass of CO2; g
    double each_gas_g;
    // total: mass of CO2; g
    double total_gas_g;
} carb_purge_oxygen_result;

// What carb_purge_cycles answers; numbers are NaN where it returns an error.
typedef struct carb_purge_cycles_result {
    // sizeof (carb_purge_cycles_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // how often a vessel is filled with CO2 and vented;
    double cycles_count;
    // whole: how often a vessel is filled with CO2 and vented;
    double whole_cycles_count;
    // each: mass of CO2; g
    double each_gas_g;
    // total: mass of CO2; g
    double total_gas_g;
} carb_purge_cycles_result;

// What carb_sweep_oxygen answers; numbers are NaN where it returns an error.
typedef struct carb_sweep_oxygen_result {
    // sizeof (carb_sweep_oxygen_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // mixed: oxygen in the gas over the drink; ppm
    double mixed_oxygen_ppm;
    // plug_flow: oxygen in the gas over the drink; ppm
    double plug_flow_oxygen_ppm;
    // mass of CO2; g
    double gas_g;
} carb_sweep_oxygen_result;

// What carb_push_oxygen answers; numbers are NaN where it returns an error.
typedef struct carb_push_oxygen_result {
    // sizeof (carb_push_oxygen_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // oxygen in the gas over the drink; ppm
    double oxygen_ppm;
    // mass of CO2; g
    double gas_g;
} carb_push_oxygen_result;

// What carb_oxygen_pickup answers; numbers are NaN where it returns an error.
typedef struct carb_oxygen_pickup_result {
    // sizeof (carb_oxygen_pickup_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // headspace: oxygen that a drink takes up; µg/L
    double headspace_picked_up_ug_per_l;
    // gas: oxygen that a drink takes up; µg/L
    double gas_picked_up_ug_per_l;
    // oxygen in drink and headspace together, per litre of drink: total package oxygen; µg/L
    double total_oxygen_ug_per_l;
    // equilibrium: oxygen dissolved in the drink; µg/L
    double equilibrium_dissolved_oxygen_ug_per_l;
} carb_oxygen_pickup_result;

// What carb_total_package_oxygen answers; numbers are NaN where it returns an error.
typedef struct carb_total_package_oxygen_result {
    // sizeof (carb_total_package_oxygen_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // oxygen in drink and headspace together, per litre of drink: total package oxygen; µg/L
    double total_oxygen_ug_per_l;
    // headspace: oxygen that a drink takes up; µg/L
    double headspace_picked_up_ug_per_l;
} carb_total_package_oxygen_result;

// What carb_gas_budget answers; numbers are NaN where it returns an error.
typedef struct carb_gas_budget_result {
    // sizeof (carb_gas_budget_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // dissolve: mass of CO2; g
    double dissolve_gas_g;
    // headspace: mass of CO2; g
    double headspace_gas_g;
    // purge: mass of CO2; g
    double purge_gas_g;
    // serve: mass of CO2; g
    double serve_gas_g;
    // loss: mass of CO2; g
    double loss_gas_g;
    // total: mass of CO2; g
    double total_gas_g;
    // least: mass of CO2; g
    double least_gas_g;
    // how many kegs a cylinder does;
    double kegs_count;
    // most: how many kegs a cylinder does;
    double most_kegs_count;
} carb_gas_budget_result;

// What carb_cylinder_left answers; numbers are NaN where it returns an error.
typedef struct carb_cylinder_left_result {
    // sizeof (carb_cylinder_left_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // pressure above the air outside, total of the gas over the drink; kPa
    double gauge_kpa;
    // pressure above vacuum, total of the gas over the drink; kPa
    double abs_kpa;
    // falling: share of a full charge; %
    double falling_left_percent;
    // liquid_full: temperature of a cylinder of CO2: from the triple to the critical point, between which it holds
    // liquid; °C
    double liquid_full_cylinder_c;
} carb_cylinder_left_result;

// What carb_cylinder_contents answers; numbers are NaN where it returns an error.
typedef struct carb_cylinder_contents_result {
    // sizeof (carb_cylinder_contents_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // left: mass of CO2; g
    double left_gas_g;
    // share of a full charge; %
    double left_percent;
    // how many kegs a cylinder does;
    double kegs_count;
} carb_cylinder_contents_result;

// What carb_room_co2 answers; numbers are NaN where it returns an error.
typedef struct carb_room_co2_result {
    // sizeof (carb_room_co2_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // mixed: CO2 in the air of the room; ppm
    double mixed_room_air_ppm;
    // bound: CO2 in the air of the room; ppm
    double bound_room_air_ppm;
    // low_half: CO2 in the air of the room; ppm
    double low_half_room_air_ppm;
    // later: CO2 in the air of the room; ppm
    double later_room_air_ppm;
    // later_low_half: CO2 in the air of the room; ppm
    double later_low_half_room_air_ppm;
    // aired: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
    // or step at one temperature; h
    double aired_time_h;
    // low_half_aired: time: since the bottles were closed or the gas was connected, on the date of a reading, or
    // of a spell or step at one temperature; h
    double low_half_aired_time_h;
} carb_room_co2_result;

// What carb_room_leak answers; numbers are NaN where it returns an error.
typedef struct carb_room_leak_result {
    // sizeof (carb_room_leak_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // mixed: CO2 in the air of the room; ppm
    double mixed_room_air_ppm;
    // low_half: CO2 in the air of the room; ppm
    double low_half_room_air_ppm;
} carb_room_leak_result;

// What carb_ambient_pressure answers; numbers are NaN where it returns an error.
typedef struct carb_ambient_pressure_result {
    // sizeof (carb_ambient_pressure_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // measured pressure of the air outside, at the station (not reduced to sea level); kPa
    double ambient_kpa;
} carb_ambient_pressure_result;

// What carb_packaging_cost answers; numbers are NaN where it returns an error.
typedef struct carb_packaging_cost_result {
    // sizeof (carb_packaging_cost_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // bottles_first: what a litre that is drunk costs; per L
    double bottles_first_cost_money_per_l;
    // keg_first: what a litre that is drunk costs; per L
    double keg_first_cost_money_per_l;
    // bottles: what a litre that is drunk costs; per L
    double bottles_cost_money_per_l;
    // keg: what a litre that is drunk costs; per L
    double keg_cost_money_per_l;
    // bottles: what is spent in all;
    double bottles_spent_money;
    // keg: what is spent in all;
    double keg_spent_money;
} carb_packaging_cost_result;

// What carb_break_even answers; numbers are NaN where it returns an error.
typedef struct carb_break_even_result {
    // sizeof (carb_break_even_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // how many batches are looked at;
    double batches_count;
} carb_break_even_result;

// What carb_uptake_rate answers; numbers are NaN where it returns an error.
typedef struct carb_uptake_rate_result {
    // sizeof (carb_uptake_rate_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // expected: share of the gap to equilibrium that closes in a time: first-order rate of uptake; 1/h
    double expected_kla_per_h;
    // least: share of the gap to equilibrium that closes in a time: first-order rate of uptake; 1/h
    double least_kla_per_h;
    // most: share of the gap to equilibrium that closes in a time: first-order rate of uptake; 1/h
    double most_kla_per_h;
} carb_uptake_rate_result;

// What carb_carbonation_time answers; numbers are NaN where it returns an error.
typedef struct carb_carbonation_time_result {
    // sizeof (carb_carbonation_time_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // expected: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a
    // spell or step at one temperature; h
    double expected_time_h;
    // soonest: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a
    // spell or step at one temperature; h
    double soonest_time_h;
    // latest: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a
    // spell or step at one temperature; h
    double latest_time_h;
} carb_carbonation_time_result;

// What carb_carbonation_progress answers; numbers are NaN where it returns an error.
typedef struct carb_carbonation_progress_result {
    // sizeof (carb_carbonation_progress_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // expected: CO2 per litre of drink; g/L
    double expected_co2_g_per_l;
    // least: CO2 per litre of drink; g/L
    double least_co2_g_per_l;
    // most: CO2 per litre of drink; g/L
    double most_co2_g_per_l;
    // end: CO2 per litre of drink; g/L
    double end_co2_g_per_l;
} carb_carbonation_progress_result;

// What carb_burst_time answers; numbers are NaN where it returns an error.
typedef struct carb_burst_time_result {
    // sizeof (carb_burst_time_result)
    uint32_t struct_size;
    // bits of an enum carb_caution: where an equation was used outside its range
    uint32_t cautions;
    // 1 if somebody may be hurt, else 0; carb_json tells why
    int32_t danger;
    // how many cautions there are, notes included; carb_json tells them
    int32_t caution_count;
    // stop: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
    // or step at one temperature; h
    double stop_time_h;
    // expected: CO2 per litre of drink; g/L
    double expected_co2_g_per_l;
    // least: CO2 per litre of drink; g/L
    double least_co2_g_per_l;
    // hold: pressure above the air outside, total of the gas over the drink; kPa
    double hold_gauge_kpa;
    // rest: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
    // or step at one temperature; h
    double rest_time_h;
    // latest_rest: time: since the bottles were closed or the gas was connected, on the date of a reading, or of a
    // spell or step at one temperature; h
    double latest_rest_time_h;
} carb_burst_time_result;

// A row of fermentables. Sugars, syrups and juices: composition as sold, and the CO2 that follows from it.
typedef struct carb_fermentables_row {
    // sizeof (carb_fermentables_row)
    uint32_t struct_size;
    // its number, for the sugar of carb_inputs; an enum carb_sugar
    int32_t sugar;
    // its name as a sugar or an addition; a text that ends with a NUL
    char name[32];
    // in words; a text that ends with a NUL
    char title[128];
    // water, of the mass as sold; %; NaN where nothing is known
    double water_percent;
    // fermentable hexoses (glucose, fructose); %; NaN where nothing is known
    double hexose_percent;
    // fermentable disaccharides (sucrose, maltose); %; NaN where nothing is known
    double disaccharide_percent;
    // fermentable trisaccharides (maltotriose); %; NaN where nothing is known
    double trisaccharide_percent;
    // CO2 from a gram, by the composition; g/g; NaN where nothing is known
    double yield_g_per_g;
    // the least that samples make; g/g; NaN where nothing is known
    double low_yield_g_per_g;
    // the most that samples make; g/g; NaN where nothing is known
    double high_yield_g_per_g;
    // density, where a source gives it; kg/m3; NaN where nothing is known
    double density_kg_per_m3;
    // how well it is known; a text that ends with a NUL
    char standing[128];
    // where it is from; empty for common practice and for what follows by arithmetic; a text that ends with a NUL
    char source[128];
} carb_fermentables_row;

// A row of bottle_classes. Classes of bottles, and the carbonation that they are usually filled with: no rating,
// the maker's goes before it.
typedef struct carb_bottle_classes_row {
    // sizeof (carb_bottle_classes_row)
    uint32_t struct_size;
    // its number, for the bottle_class of carb_inputs; an enum carb_bottle_class
    int32_t bottle_class;
    // name of the class; a text that ends with a NUL
    char name[32];
    // in words; a text that ends with a NUL
    char title[128];
    // what is put into the lighter ones of the class; g/L; NaN where nothing is known
    double low_co2_g_per_l;
    // the most that is usually put into it; 0 where it is not for conditioning; g/L; NaN where nothing is known
    double high_co2_g_per_l;
    // whether drink may be conditioned in it; a text that ends with a NUL
    char for_conditioning[32];
    // how well it is known; a text that ends with a NUL
    char standing[64];
    // what is published of it; a text that ends with a NUL
    char published[256];
    // where it is from; empty for common practice and for what follows by arithmetic; a text that ends with a NUL
    char source[128];
} carb_bottle_classes_row;

// A row of sources. Every source that the library names.
typedef struct carb_sources_row {
    // sizeof (carb_sources_row)
    uint32_t struct_size;
    // key in the bibliography; a text that ends with a NUL
    char key[32];
    // author, year and place; a text that ends with a NUL
    char citation[256];
    // not used
    int32_t reserved_1;
} carb_sources_row;

// A row of cautions. Every caution that an answer may carry.
typedef struct carb_cautions_row {
    // sizeof (carb_cautions_row)
    uint32_t struct_size;
    // stable code; a text that ends with a NUL
    char code[64];
    // danger, caution or note; a text that ends with a NUL
    char level[32];
    // the sentence, with places for the value and the limit; a text that ends with a NUL
    char text[512];
    // not used
    int32_t reserved_1;
} carb_cautions_row;

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

// The version of the library, such as "1.2.3"; a constant text.
const char *carb_version(void);

// The CARB_ABI_VERSION that the library was built with; a program may compare it with that of its header.
uint32_t carb_abi_version(void);

// Keeps a function with its inputs: what does not vary comes from inputs, the names (any of the vocabulary, such as
// "temperature_f") say what every call gives, and output in which name it answers ("gauge_psi"). A call then costs little
// more than the equation. What bound receives is to be freed by carb_bound_free, and is NULL where there is an error. A call
// tells no danger beyond the ranges of equations, such as glass that may burst: ask the function itself about the ends.
int32_t carb_bind(const char *function,
                  const struct carb_inputs *inputs,
                  const char *const *names,
                  size_t name_count,
                  const char *output,
                  struct carb_bound **bound,
                  struct carb_error *error);

// Calls a bound function with one number for each of its names, in their order. out receives the answer, or NaN. Returns
// CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0, as the status of an element of an array call.
int32_t carb_bound_call(const struct carb_bound *bound,
                        const double *numbers,
                        size_t count,
                        double *out);

// Frees what carb_bind made; NULL is left alone. No thread may use it any more.
void carb_bound_free(struct carb_bound *bound);

// Converts a value between two units of one kind by their names, such as "psi" to "kpa". Between gauge and absolute
// pressure nothing is converted: that takes the air outside.
int32_t carb_convert(const char *from_name, const char *to_name, double value, double *out, struct carb_error *error);

// CO2 that a drink holds at equilibrium under a pressure of CO2, or of a blended gas.
//
// Required: temperature_c.
//
// One of: gauge_kpa, abs_kpa.
//
// Optional: altitude_m (needed with a gauge pressure, unless ambient is given), ambient_kpa (needed with a gauge
// pressure, unless altitude is given), sea_level_kpa (101.325 kPa, the standard atmosphere), co2_percent (100 %:
// CO2 and nothing else), air_abs_kpa (0: purged, or driven out), beverage (beer), abv_percent (usual for the
// drink, and noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis
// for the drink), solubility_multiplier (1).
int32_t carb_dissolved_co2(const struct carb_inputs *inputs,
                           struct carb_dissolved_co2_result *result,
                           struct carb_error *error);

// carb_dissolved_co2 element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: gauge_kpa, abs_kpa, temperature_c, altitude_m, ambient_kpa, co2_percent,
// air_abs_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "co2_g_per_l" (in any unit)
// and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum
// carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations,
// such as glass that may burst, is told of single answers only: ask carb_dissolved_co2 about the extremes.
int32_t carb_dissolved_co2_n(const struct carb_inputs *inputs,
                             const struct carb_series *series,
                             size_t series_count,
                             const char *output,
                             size_t n,
                             double *out,
                             int32_t *status,
                             struct carb_error *error);

// Regulator pressure that holds a drink at a carbonation, under CO2 or a blended gas.
//
// Required: co2_g_per_l, temperature_c.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), co2_percent (100 %: CO2 and nothing else),
// air_abs_kpa (0: purged, or driven out), beverage (beer), abv_percent (usual for the drink, and noted),
// extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis for the drink),
// solubility_multiplier (1).
int32_t carb_keg_pressure(const struct carb_inputs *inputs,
                          struct carb_keg_pressure_result *result,
                          struct carb_error *error);

// carb_keg_pressure element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: co2_g_per_l, temperature_c, altitude_m, ambient_kpa, co2_percent, air_abs_kpa,
// abv_percent, extract_g_per_l. out receives the output of a name such as "gauge_kpa" (in any unit) and NaN where
// status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0.
// Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as glass that
// may burst, is told of single answers only: ask carb_keg_pressure about the extremes.
int32_t carb_keg_pressure_n(const struct carb_inputs *inputs,
                            const struct carb_series *series,
                            size_t series_count,
                            const char *output,
                            size_t n,
                            double *out,
                            int32_t *status,
                            struct carb_error *error);

// Share of CO2 in a blend with nitrogen that holds a drink at a carbonation under a regulator pressure.
//
// Required: co2_g_per_l, temperature_c, gauge_kpa.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), air_abs_kpa (0: purged, or driven out), beverage
// (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the drink, and noted), basis
// (handbook), model (that of the basis for the drink), solubility_multiplier (1).
int32_t carb_gas_blend(const struct carb_inputs *inputs,
                       struct carb_gas_blend_result *result,
                       struct carb_error *error);

// carb_gas_blend element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: co2_g_per_l, temperature_c, gauge_kpa, altitude_m, ambient_kpa, air_abs_kpa,
// abv_percent, extract_g_per_l. out receives the output of a name such as "co2_percent" (in any unit) and NaN
// where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below
// 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as glass that
// may burst, is told of single answers only: ask carb_gas_blend about the extremes.
int32_t carb_gas_blend_n(const struct carb_inputs *inputs,
                         const struct carb_series *series,
                         size_t series_count,
                         const char *output,
                         size_t n,
                         double *out,
                         int32_t *status,
                         struct carb_error *error);

// Temperature at which a regulator pressure holds a drink at a carbonation: warmer, it foams and loses CO2.
//
// Required: co2_g_per_l, gauge_kpa.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), co2_percent (100 %: CO2 and nothing else),
// air_abs_kpa (0: purged, or driven out), beverage (beer), abv_percent (usual for the drink, and noted),
// extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis for the drink),
// solubility_multiplier (1).
int32_t carb_keg_temperature(const struct carb_inputs *inputs,
                             struct carb_keg_temperature_result *result,
                             struct carb_error *error);

// carb_keg_temperature element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: co2_g_per_l, gauge_kpa, altitude_m, ambient_kpa, co2_percent,
// air_abs_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "temperature_c" (in any
// unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum
// carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations,
// such as glass that may burst, is told of single answers only: ask carb_keg_temperature about the extremes.
int32_t carb_keg_temperature_n(const struct carb_inputs *inputs,
                               const struct carb_series *series,
                               size_t series_count,
                               const char *output,
                               size_t n,
                               double *out,
                               int32_t *status,
                               struct carb_error *error);

// Pressure in a keg, or a growler, that was sealed in equilibrium at its filling temperature with so much CO2
// dissolved, and stands warmer or colder: expected and worst, and the CO2 then dissolved.
//
// Required: co2_g_per_l, filling_c, temperature_c.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: headspace_percent (4 % of the liquid, and noted), air_abs_kpa (0: purged, or driven out),
// keg_rating_gauge_kpa (no rating is known, and a caution says so), sea_level_kpa (101.325 kPa, the standard
// atmosphere), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the
// drink, and noted), fermentable_g_per_l (0 for beer and water, and noted; needed for other drinks with living
// yeast), yeast (live), basis (physical), model (that of the basis for the drink), yield_percent (that of the
// basis: 100 by the handbook, 95 by the balance), solubility_multiplier (1), yield_multiplier (1).
int32_t carb_warmed_keg(const struct carb_inputs *inputs,
                        struct carb_warmed_keg_result *result,
                        struct carb_error *error);

// carb_warmed_keg element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: co2_g_per_l, filling_c, temperature_c, headspace_percent, air_abs_kpa,
// altitude_m, ambient_kpa, abv_percent, extract_g_per_l, fermentable_g_per_l. out receives the output of a name
// such as "expected_gauge_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of
// an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger
// beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_warmed_keg about the extremes.
int32_t carb_warmed_keg_n(const struct carb_inputs *inputs,
                          const struct carb_series *series,
                          size_t series_count,
                          const char *output,
                          size_t n,
                          double *out,
                          int32_t *status,
                          struct carb_error *error);

// Natural carbonation in the fermenter: the pressure at which its relief valve opens, and the gravity at which it
// is closed.
//
// Required: co2_g_per_l, temperature_c, fermenter_headspace_percent.
//
// One of: final_sg, final_plato.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: start_co2_g_per_l (what it keeps open to the air at that temperature, by the basis), extract_scale
// (asbc), keg_rating_gauge_kpa (no rating is known, and a caution says so), beverage (beer), abv_percent (usual
// for the drink, and noted), extract_g_per_l (usual for the drink, and noted), residual_model (that of the basis),
// sea_level_kpa (101.325 kPa, the standard atmosphere), basis (handbook), model (that of the basis for the drink),
// solubility_multiplier (1), residual_multiplier (1).
int32_t carb_spunding(const struct carb_inputs *inputs, struct carb_spunding_result *result, struct carb_error *error);

// carb_spunding element by element. What does not vary comes from inputs, the rest from the series, each under any
// of its names; these may vary: co2_g_per_l, final_sg, final_plato, temperature_c, fermenter_headspace_percent,
// start_co2_g_per_l, abv_percent, extract_g_per_l, altitude_m, ambient_kpa. out receives the output of a name such
// as "relief_gauge_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_spunding about
// the extremes.
int32_t carb_spunding_n(const struct carb_inputs *inputs,
                        const struct carb_series *series,
                        size_t series_count,
                        const char *output,
                        size_t n,
                        double *out,
                        int32_t *status,
                        struct carb_error *error);

// Pressure that a fermenter comes to without a relief valve when it is closed before its fermentation ends:
// expected by Balling's yield, and worst by theory, and the CO2 then dissolved.
//
// Required: temperature_c, fermenter_headspace_percent.
//
// One of: current_sg, current_plato.
//
// One of: final_sg, final_plato.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: start_co2_g_per_l (what it keeps open to the air at that temperature, by the basis), extract_scale
// (asbc), keg_rating_gauge_kpa (no rating is known, and a caution says so), beverage (beer), abv_percent (usual
// for the drink, and noted), extract_g_per_l (usual for the drink, and noted), residual_model (that of the basis),
// sea_level_kpa (101.325 kPa, the standard atmosphere), basis (physical), model (that of the basis for the drink),
// solubility_multiplier (1), residual_multiplier (1).
int32_t carb_closed_fermentation(const struct carb_inputs *inputs,
                                 struct carb_closed_fermentation_result *result,
                                 struct carb_error *error);

// carb_closed_fermentation element by element. What does not vary comes from inputs, the rest from the series,
// each under any of its names; these may vary: current_sg, current_plato, final_sg, final_plato, temperature_c,
// fermenter_headspace_percent, start_co2_g_per_l, abv_percent, extract_g_per_l, altitude_m, ambient_kpa. out
// receives the output of a name such as "expected_gauge_kpa" (in any unit) and NaN where status is below 0; status
// receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a
// series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
// single answers only: ask carb_closed_fermentation about the extremes.
int32_t carb_closed_fermentation_n(const struct carb_inputs *inputs,
                                   const struct carb_series *series,
                                   size_t series_count,
                                   const char *output,
                                   size_t n,
                                   double *out,
                                   int32_t *status,
                                   struct carb_error *error);

// Regulator pressure at which a carbonation stone brings a drink to a carbonation. Only the surface pressure sets
// that; the head of drink and the wetting pressure of the stone come on top.
//
// Required: co2_g_per_l, temperature_c, depth_m, wetting_kpa.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: margin_kpa (0), sg (that of the composition), sea_level_kpa (101.325 kPa, the standard atmosphere),
// beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the drink, and noted),
// basis (handbook), model (that of the basis for the drink), solubility_multiplier (1).
int32_t carb_stone_pressure(const struct carb_inputs *inputs,
                            struct carb_stone_pressure_result *result,
                            struct carb_error *error);

// carb_stone_pressure element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: co2_g_per_l, temperature_c, depth_m, wetting_kpa, margin_kpa, sg,
// altitude_m, ambient_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "gauge_kpa" (in
// any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum
// carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations,
// such as glass that may burst, is told of single answers only: ask carb_stone_pressure about the extremes.
int32_t carb_stone_pressure_n(const struct carb_inputs *inputs,
                              const struct carb_series *series,
                              size_t series_count,
                              const char *output,
                              size_t n,
                              double *out,
                              int32_t *status,
                              struct carb_error *error);

// CO2 left in a drink after fermentation: by its warmest temperature since, open to the air or under pressure, and
// what a cold crash adds.
//
// Required: warmest_c.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: fermenter_gauge_kpa (0: open, or under an airlock), cold_crash (open), crash_c (needed with a cold
// crash that is closed or has CO2 supplied), fermenter_headspace_percent (needed with a closed cold crash),
// sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual for the drink, and
// noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis for the
// drink), residual_model (that of the basis), solubility_multiplier (1), residual_multiplier (1).
int32_t carb_residual_co2(const struct carb_inputs *inputs,
                          struct carb_residual_co2_result *result,
                          struct carb_error *error);

// carb_residual_co2 element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: warmest_c, fermenter_gauge_kpa, crash_c, fermenter_headspace_percent,
// altitude_m, ambient_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "co2_g_per_l"
// (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an
// enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of
// equations, such as glass that may burst, is told of single answers only: ask carb_residual_co2 about the
// extremes.
int32_t carb_residual_co2_n(const struct carb_inputs *inputs,
                            const struct carb_series *series,
                            size_t series_count,
                            const char *output,
                            size_t n,
                            double *out,
                            int32_t *status,
                            struct carb_error *error);

// Priming sugar that gives a drink its carbonation.
//
// Required: co2_g_per_l, packaged_l.
//
// Optional: warmest_c (needed, unless the residual CO2 was measured), residual_co2_g_per_l (it follows from the
// warmest temperature), fermenter_gauge_kpa (0: open, or under an airlock), cold_crash (open), crash_c (needed
// with a cold crash that is closed or has CO2 supplied), fermenter_headspace_percent (needed with a closed cold
// crash), altitude_m (needed, unless ambient is given or the residual CO2 was measured), ambient_kpa (needed,
// unless altitude is given or the residual CO2 was measured), sea_level_kpa (101.325 kPa, the standard
// atmosphere), sugar (sucrose), sugar_water_percent (only with a custom sugar), sugar_sg (only with a custom
// sugar), sugar_fermentable_percent (only with a custom sugar), sugar_kind (only with a custom sugar),
// syrup_water_l (the sugar goes in dry, and its room is left out; counts by the physical basis only), count_syrup
// (that of the basis), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for
// the drink, and noted), fermentable_g_per_l (0 for beer and water, and noted; needed for other drinks with living
// yeast), yeast (live), basis (handbook), model (that of the basis for the drink), residual_model (that of the
// basis), yield_percent (that of the basis: 100 by the handbook, 95 by the balance), count_headspace (that of the
// basis), headspace_percent (4 % of the liquid; counts by the physical basis only), filling_c (crash, or else
// warmest; counts by the physical basis only), room_c (20 °C; counts by the physical basis only),
// solubility_multiplier (1), residual_multiplier (1), yield_multiplier (1).
int32_t carb_priming_sugar(const struct carb_inputs *inputs,
                           struct carb_priming_sugar_result *result,
                           struct carb_error *error);

// carb_priming_sugar element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: co2_g_per_l, packaged_l, warmest_c, residual_co2_g_per_l,
// fermenter_gauge_kpa, crash_c, fermenter_headspace_percent, altitude_m, ambient_kpa, syrup_water_l, abv_percent,
// extract_g_per_l, fermentable_g_per_l, headspace_percent, filling_c, room_c. out receives the output of a name
// such as "mass_g" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_priming_sugar
// about the extremes.
int32_t carb_priming_sugar_n(const struct carb_inputs *inputs,
                             const struct carb_series *series,
                             size_t series_count,
                             const char *output,
                             size_t n,
                             double *out,
                             int32_t *status,
                             struct carb_error *error);

// Carbonation and alcohol of a drink to which a mass of priming sugar was added: the inverse of priming_sugar.
//
// Required: mass_g, packaged_l.
//
// Optional: warmest_c (needed, unless the residual CO2 was measured), residual_co2_g_per_l (it follows from the
// warmest temperature), fermenter_gauge_kpa (0: open, or under an airlock), cold_crash (open), crash_c (needed
// with a cold crash that is closed or has CO2 supplied), fermenter_headspace_percent (needed with a closed cold
// crash), altitude_m (needed, unless ambient is given or the residual CO2 was measured), ambient_kpa (needed,
// unless altitude is given or the residual CO2 was measured), sea_level_kpa (101.325 kPa, the standard
// atmosphere), sugar (sucrose), sugar_water_percent (only with a custom sugar), sugar_sg (only with a custom
// sugar), sugar_fermentable_percent (only with a custom sugar), sugar_kind (only with a custom sugar),
// syrup_water_l (the sugar goes in dry, and its room is left out; counts by the physical basis only), count_syrup
// (that of the basis), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for
// the drink, and noted), fermentable_g_per_l (0 for beer and water, and noted; needed for other drinks with living
// yeast), yeast (live), basis (handbook), model (that of the basis for the drink), residual_model (that of the
// basis), yield_percent (that of the basis: 100 by the handbook, 95 by the balance), count_headspace (that of the
// basis), headspace_percent (4 % of the liquid; counts by the physical basis only), filling_c (crash, or else
// warmest; counts by the physical basis only), room_c (20 °C; counts by the physical basis only),
// solubility_multiplier (1), residual_multiplier (1), yield_multiplier (1).
int32_t carb_primed_carbonation(const struct carb_inputs *inputs,
                                struct carb_primed_carbonation_result *result,
                                struct carb_error *error);

// carb_primed_carbonation element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: mass_g, packaged_l, warmest_c, residual_co2_g_per_l,
// fermenter_gauge_kpa, crash_c, fermenter_headspace_percent, altitude_m, ambient_kpa, syrup_water_l, abv_percent,
// extract_g_per_l, fermentable_g_per_l, headspace_percent, filling_c, room_c. out receives the output of a name
// such as "co2_g_per_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
// the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_primed_carbonation about the extremes.
int32_t carb_primed_carbonation_n(const struct carb_inputs *inputs,
                                  const struct carb_series *series,
                                  size_t series_count,
                                  const char *output,
                                  size_t n,
                                  double *out,
                                  int32_t *status,
                                  struct carb_error *error);

// Unfermented wort (gyle, Speise) or fermenting beer (kräusen) that gives a drink its carbonation: current gravity
// none for the first.
//
// Required: co2_g_per_l, packaged_l, limit_attenuation_percent.
//
// One of: wort_original_sg, wort_original_plato.
//
// Optional: wort_current_sg (fresh wort), wort_current_plato (fresh wort), wort_co2_g_per_l (none in fresh wort,
// what the drink keeps in fermenting one), extract_scale (asbc), warmest_c (needed, unless the residual CO2 was
// measured), residual_co2_g_per_l (it follows from the warmest temperature), fermenter_gauge_kpa (0: open, or
// under an airlock), cold_crash (open), crash_c (needed with a cold crash that is closed or has CO2 supplied),
// fermenter_headspace_percent (needed with a closed cold crash), altitude_m (needed, unless ambient is given or
// the residual CO2 was measured), ambient_kpa (needed, unless altitude is given or the residual CO2 was measured),
// sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual for the drink, and
// noted), extract_g_per_l (usual for the drink, and noted), fermentable_g_per_l (0 for beer and water, and noted;
// needed for other drinks with living yeast), yeast (live), basis (handbook), model (that of the basis for the
// drink), residual_model (that of the basis), yield_percent (that of the basis: 100 by the handbook, 95 by the
// balance), count_headspace (that of the basis), headspace_percent (4 % of the liquid; counts by the physical
// basis only), filling_c (crash, or else warmest; counts by the physical basis only), room_c (20 °C; counts by the
// physical basis only), solubility_multiplier (1), residual_multiplier (1), yield_multiplier (1).
int32_t carb_priming_wort(const struct carb_inputs *inputs,
                          struct carb_priming_wort_result *result,
                          struct carb_error *error);

// carb_priming_wort element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: co2_g_per_l, packaged_l, wort_original_sg, wort_original_plato,
// wort_current_sg, wort_current_plato, limit_attenuation_percent, wort_co2_g_per_l, warmest_c,
// residual_co2_g_per_l, fermenter_gauge_kpa, crash_c, fermenter_headspace_percent, altitude_m, ambient_kpa,
// abv_percent, extract_g_per_l, fermentable_g_per_l, headspace_percent, filling_c, room_c. out receives the output
// of a name such as "wort_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an
// enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger
// beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_priming_wort about the extremes.
int32_t carb_priming_wort_n(const struct carb_inputs *inputs,
                            const struct carb_series *series,
                            size_t series_count,
                            const char *output,
                            size_t n,
                            double *out,
                            int32_t *status,
                            struct carb_error *error);

// Syrup of a mass of priming sugar: its volume, the least water that dissolves it, its strength.
//
// Required: mass_g.
//
// Optional: sugar (sucrose), sugar_water_percent (only with a custom sugar), sugar_sg (only with a custom sugar),
// sugar_fermentable_percent (only with a custom sugar), sugar_kind (only with a custom sugar), syrup_water_l
// (three times the mass of the sugar; none for a liquid), dissolving_c (20 °C: it stays dissolved when it has
// cooled).
int32_t carb_priming_syrup(const struct carb_inputs *inputs,
                           struct carb_priming_syrup_result *result,
                           struct carb_error *error);

// carb_priming_syrup element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: mass_g, syrup_water_l, dissolving_c. out receives the output of a name
// such as "syrup_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_priming_syrup
// about the extremes.
int32_t carb_priming_syrup_n(const struct carb_inputs *inputs,
                             const struct carb_series *series,
                             size_t series_count,
                             const char *output,
                             size_t n,
                             double *out,
                             int32_t *status,
                             struct carb_error *error);

// Pressure in a sealed package, expected and worst, of CO2 stated for liquid and headspace together; the expected
// volumes are what stays dissolved, and the worst case adds 8 % to what is stated, for nobody can say which part
// of it is sure.
//
// Required: co2_g_per_l, temperature_c.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: headspace_percent (4 % of the liquid, and noted), filling_c (20 °C), sea_level_kpa (101.325 kPa, the
// standard atmosphere), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for
// the drink, and noted), fermentable_g_per_l (0 for beer and water, and noted; needed for other drinks with living
// yeast), yeast (live), bottle_class (light one-way and heavier reusable bottles are both looked at),
// rating_gauge_kpa (no rating is known), basis (physical), model (that of the basis for the drink), yield_percent
// (that of the basis: 100 by the handbook, 95 by the balance), solubility_multiplier (1), yield_multiplier (1).
int32_t carb_package_pressure(const struct carb_inputs *inputs,
                              struct carb_package_pressure_result *result,
                              struct carb_error *error);

// carb_package_pressure element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: co2_g_per_l, temperature_c, headspace_percent, filling_c, altitude_m,
// ambient_kpa, abv_percent, extract_g_per_l, fermentable_g_per_l. out receives the output of a name such as
// "expected_gauge_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_package_pressure
// about the extremes.
int32_t carb_package_pressure_n(const struct carb_inputs *inputs,
                                const struct carb_series *series,
                                size_t series_count,
                                const char *output,
                                size_t n,
                                double *out,
                                int32_t *status,
                                struct carb_error *error);

// CO2 in a sealed package from the pressure that a gauge on it shows, without air and with all of it.
//
// Required: gauge_kpa, temperature_c.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: headspace_percent (4 % of the liquid, and noted), filling_c (20 °C), sea_level_kpa (101.325 kPa, the
// standard atmosphere), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for
// the drink, and noted), basis (physical), model (that of the basis for the drink), solubility_multiplier (1).
int32_t carb_package_carbonation(const struct carb_inputs *inputs,
                                 struct carb_package_carbonation_result *result,
                                 struct carb_error *error);

// carb_package_carbonation element by element. What does not vary comes from inputs, the rest from the series,
// each under any of its names; these may vary: gauge_kpa, temperature_c, headspace_percent, filling_c, altitude_m,
// ambient_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "total_co2_g_per_l" (in any
// unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum
// carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations,
// such as glass that may burst, is told of single answers only: ask carb_package_carbonation about the extremes.
int32_t carb_package_carbonation_n(const struct carb_inputs *inputs,
                                   const struct carb_series *series,
                                   size_t series_count,
                                   const char *output,
                                   size_t n,
                                   double *out,
                                   int32_t *status,
                                   struct carb_error *error);

// Share of the carbonation that bottles have made after some time at a temperature: an estimate, with the slow and
// the fast end of its range.
//
// Required: room_c, time_h.
//
// Optional: yeast_million_per_ml (enough: 1 million cells in a millilitre), age_h (fresh), filtered (false),
// beverage (beer), abv_percent (usual for the drink, and noted).
int32_t carb_conditioning(const struct carb_inputs *inputs,
                          struct carb_conditioning_result *result,
                          struct carb_error *error);

// carb_conditioning element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: room_c, time_h, yeast_million_per_ml, abv_percent. out receives the output of
// a name such as "expected_progress_percent" (in any unit) and NaN where status is below 0; status receives
// CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie
// over them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers
// only: ask carb_conditioning about the extremes.
int32_t carb_conditioning_n(const struct carb_inputs *inputs,
                            const struct carb_series *series,
                            size_t series_count,
                            const char *output,
                            size_t n,
                            double *out,
                            int32_t *status,
                            struct carb_error *error);

// Time until bottles have made a share of their carbonation at a temperature: an estimate, with the fast (least)
// and the slow (most) end of its range.
//
// Required: room_c.
//
// Optional: progress_percent (95 %), yeast_million_per_ml (enough: 1 million cells in a millilitre), age_h
// (fresh), filtered (false), beverage (beer), abv_percent (usual for the drink, and noted).
int32_t carb_conditioning_time(const struct carb_inputs *inputs,
                               struct carb_conditioning_time_result *result,
                               struct carb_error *error);

// carb_conditioning_time element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: room_c, progress_percent, yeast_million_per_ml, abv_percent. out
// receives the output of a name such as "expected_time_h" (in any unit) and NaN where status is below 0; status
// receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a
// series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
// single answers only: ask carb_conditioning_time about the extremes.
int32_t carb_conditioning_time_n(const struct carb_inputs *inputs,
                                 const struct carb_series *series,
                                 size_t series_count,
                                 const char *output,
                                 size_t n,
                                 double *out,
                                 int32_t *status,
                                 struct carb_error *error);

// Dry yeast that brings living cells into a drink before it is bottled.
//
// Required: packaged_l.
//
// Optional: yeast_million_per_ml (1 million cells in a millilitre).
int32_t carb_reyeasting(const struct carb_inputs *inputs,
                        struct carb_reyeasting_result *result,
                        struct carb_error *error);

// carb_reyeasting element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: packaged_l, yeast_million_per_ml. out receives the output of a name such as
// "dry_yeast_mass_g" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_reyeasting about
// the extremes.
int32_t carb_reyeasting_n(const struct carb_inputs *inputs,
                          const struct carb_series *series,
                          size_t series_count,
                          const char *output,
                          size_t n,
                          double *out,
                          int32_t *status,
                          struct carb_error *error);

// A gravity reading as specific gravity and as degrees Plato.
//
// One of: sg, plato.
//
// Optional: extract_scale (asbc).
int32_t carb_gravity(const struct carb_inputs *inputs, struct carb_gravity_result *result, struct carb_error *error);

// carb_gravity element by element. What does not vary comes from inputs, the rest from the series, each under any
// of its names; these may vary: sg, plato. out receives the output of a name such as "sg" (in any unit) and NaN
// where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below
// 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as glass that
// may burst, is told of single answers only: ask carb_gravity about the extremes.
int32_t carb_gravity_n(const struct carb_inputs *inputs,
                       const struct carb_series *series,
                       size_t series_count,
                       const char *output,
                       size_t n,
                       double *out,
                       int32_t *status,
                       struct carb_error *error);

// Real extract, attenuation and alcohol from the gravity before fermentation and the gravity now.
//
// One of: original_sg, original_plato.
//
// One of: current_sg, current_plato.
//
// Optional: extract_scale (asbc), real_extract_model (balling).
int32_t carb_attenuation(const struct carb_inputs *inputs,
                         struct carb_attenuation_result *result,
                         struct carb_error *error);

// carb_attenuation element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: original_sg, original_plato, current_sg, current_plato. out receives the
// output of a name such as "real_extract_plato" (in any unit) and NaN where status is below 0; status receives
// CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie
// over them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers
// only: ask carb_attenuation about the extremes.
int32_t carb_attenuation_n(const struct carb_inputs *inputs,
                           const struct carb_series *series,
                           size_t series_count,
                           const char *output,
                           size_t n,
                           double *out,
                           int32_t *status,
                           struct carb_error *error);

// Gravity at which a fermentation ends, from the original gravity and the attenuation expected of it.
//
// Required: expected_attenuation_percent.
//
// One of: original_sg, original_plato.
//
// Optional: extract_scale (asbc).
int32_t carb_final_gravity(const struct carb_inputs *inputs,
                           struct carb_final_gravity_result *result,
                           struct carb_error *error);

// carb_final_gravity element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: original_sg, original_plato, expected_attenuation_percent. out receives
// the output of a name such as "final_sg" (in any unit) and NaN where status is below 0; status receives CARB_OK,
// or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over
// them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_final_gravity about the extremes.
int32_t carb_final_gravity_n(const struct carb_inputs *inputs,
                             const struct carb_series *series,
                             size_t series_count,
                             const char *output,
                             size_t n,
                             double *out,
                             int32_t *status,
                             struct carb_error *error);

// Extract that is still to ferment, and the CO2 of it, from the gravity now and the gravity at the end.
//
// One of: current_sg, current_plato.
//
// One of: final_sg, final_plato.
//
// Optional: extract_scale (asbc).
int32_t carb_gravity_co2(const struct carb_inputs *inputs,
                         struct carb_gravity_co2_result *result,
                         struct carb_error *error);

// carb_gravity_co2 element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: current_sg, current_plato, final_sg, final_plato. out receives the output of a
// name such as "fermentable_g_per_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or
// bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them.
// A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_gravity_co2 about the extremes.
int32_t carb_gravity_co2_n(const struct carb_inputs *inputs,
                           const struct carb_series *series,
                           size_t series_count,
                           const char *output,
                           size_t n,
                           double *out,
                           int32_t *status,
                           struct carb_error *error);

// CO2 and alcohol that a sugar or a sweetener, added to a drink with living yeast, makes in the package, beside
// what the drink holds and what primes it.
//
// Required: addition, dose_g_per_l.
//
// Optional: sugar_water_percent (only with a custom sugar), sugar_sg (only with a custom sugar),
// sugar_fermentable_percent (only with a custom sugar), sugar_kind (only with a custom sugar), basis (handbook),
// yield_percent (that of the basis: 100 by the handbook, 95 by the balance), yield_multiplier (1).
int32_t carb_added_co2(const struct carb_inputs *inputs,
                       struct carb_added_co2_result *result,
                       struct carb_error *error);

// carb_added_co2 element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: dose_g_per_l. out receives the output of a name such as "expected_co2_g_per_l"
// (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an
// enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of
// equations, such as glass that may burst, is told of single answers only: ask carb_added_co2 about the extremes.
int32_t carb_added_co2_n(const struct carb_inputs *inputs,
                         const struct carb_series *series,
                         size_t series_count,
                         const char *output,
                         size_t n,
                         double *out,
                         int32_t *status,
                         struct carb_error *error);

// Density and viscosity of a drink, and the diffusivity of CO2 in it.
//
// Required: temperature_c.
//
// Optional: sg (that of the composition), viscosity_multiplier (usual for the drink, as the working shows),
// beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the drink, and noted).
int32_t carb_drink_properties(const struct carb_inputs *inputs,
                              struct carb_drink_properties_result *result,
                              struct carb_error *error);

// carb_drink_properties element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: temperature_c, sg, viscosity_multiplier, abv_percent, extract_g_per_l.
// out receives the output of a name such as "density_kg_per_m3" (in any unit) and NaN where status is below 0;
// status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements;
// a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
// single answers only: ask carb_drink_properties about the extremes.
int32_t carb_drink_properties_n(const struct carb_inputs *inputs,
                                const struct carb_series *series,
                                size_t series_count,
                                const char *output,
                                size_t n,
                                double *out,
                                int32_t *status,
                                struct carb_error *error);

// Absolute pressure and densities of CO2 in a cylinder that still holds liquid, however much; a gauge shows an
// atmosphere less.
//
// Required: cylinder_c.
int32_t carb_co2_saturation(const struct carb_inputs *inputs,
                            struct carb_co2_saturation_result *result,
                            struct carb_error *error);

// carb_co2_saturation element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: cylinder_c. out receives the output of a name such as "abs_kpa" (in any
// unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum
// carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations,
// such as glass that may burst, is told of single answers only: ask carb_co2_saturation about the extremes.
int32_t carb_co2_saturation_n(const struct carb_inputs *inputs,
                              const struct carb_series *series,
                              size_t series_count,
                              const char *output,
                              size_t n,
                              double *out,
                              int32_t *status,
                              struct carb_error *error);

// What a keg pours through a draught line, by physics: flow, time of a pour, speed, and the pressure that the line
// takes per length.
//
// Required: gauge_kpa, line_m, temperature_c.
//
// One of: tube, bore_mm.
//
// Optional: rise_m (0: the faucet at the height of the drink), fittings_multiplier (3, of a home line: judgement),
// glass_l (a US pint, 473.176 mL), sg (that of the composition), viscosity_multiplier (usual for the drink, as the
// working shows), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the
// drink, and noted).
int32_t carb_line_flow(const struct carb_inputs *inputs,
                       struct carb_line_flow_result *result,
                       struct carb_error *error);

// carb_line_flow element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: gauge_kpa, line_m, bore_mm, rise_m, fittings_multiplier, glass_l,
// temperature_c, sg, viscosity_multiplier, abv_percent, extract_g_per_l. out receives the output of a name such as
// "flow_l_per_min" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_line_flow about
// the extremes.
int32_t carb_line_flow_n(const struct carb_inputs *inputs,
                         const struct carb_series *series,
                         size_t series_count,
                         const char *output,
                         size_t n,
                         double *out,
                         int32_t *status,
                         struct carb_error *error);

// Length of draught line through which a keg pours as fast as wanted, by physics, and the drink that stands in it.
//
// Required: gauge_kpa, temperature_c.
//
// One of: flow_l_per_min, pour_seconds.
//
// One of: tube, bore_mm.
//
// Optional: rise_m (0: the faucet at the height of the drink), fittings_multiplier (3, of a home line: judgement),
// glass_l (a US pint, 473.176 mL), sg (that of the composition), viscosity_multiplier (usual for the drink, as the
// working shows), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the
// drink, and noted).
int32_t carb_line_length(const struct carb_inputs *inputs,
                         struct carb_line_length_result *result,
                         struct carb_error *error);

// carb_line_length element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: gauge_kpa, flow_l_per_min, pour_seconds, bore_mm, rise_m, fittings_multiplier,
// glass_l, temperature_c, sg, viscosity_multiplier, abv_percent, extract_g_per_l. out receives the output of a
// name such as "line_m" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_line_length
// about the extremes.
int32_t carb_line_length_n(const struct carb_inputs *inputs,
                           const struct carb_series *series,
                           size_t series_count,
                           const char *output,
                           size_t n,
                           double *out,
                           int32_t *status,
                           struct carb_error *error);

// Pressure in the keg that a draught line takes at a flow, by physics, and what of it rise, tube and fittings
// take. To compare: the pressure of a keg belongs to its carbonation, and the line is made to fit it.
//
// Required: line_m, temperature_c.
//
// One of: flow_l_per_min, pour_seconds.
//
// One of: tube, bore_mm.
//
// Optional: rise_m (0: the faucet at the height of the drink), fittings_multiplier (3, of a home line: judgement),
// glass_l (a US pint, 473.176 mL), sg (that of the composition), viscosity_multiplier (usual for the drink, as the
// working shows), beverage (beer), abv_percent (usual for the drink, and noted), extract_g_per_l (usual for the
// drink, and noted).
int32_t carb_line_pressure(const struct carb_inputs *inputs,
                           struct carb_line_pressure_result *result,
                           struct carb_error *error);

// carb_line_pressure element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: line_m, flow_l_per_min, pour_seconds, bore_mm, rise_m,
// fittings_multiplier, glass_l, temperature_c, sg, viscosity_multiplier, abv_percent, extract_g_per_l. out
// receives the output of a name such as "gauge_kpa" (in any unit) and NaN where status is below 0; status receives
// CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie
// over them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers
// only: ask carb_line_pressure about the extremes.
int32_t carb_line_pressure_n(const struct carb_inputs *inputs,
                             const struct carb_series *series,
                             size_t series_count,
                             const char *output,
                             size_t n,
                             double *out,
                             int32_t *status,
                             struct carb_error *error);

// Length of draught line by the trade's balance: what rise (0.5 psi per foot) and hardware leave, over the tube's
// resistance by the handbook. Meant for 2 US fl oz/s, the German figures for 3 L/min.
//
// Required: gauge_kpa.
//
// One of: tube, resistance_bar_per_m.
//
// Optional: rise_m (0: the faucet at the height of the drink), hardware_kpa (0).
int32_t carb_handbook_line(const struct carb_inputs *inputs,
                           struct carb_handbook_line_result *result,
                           struct carb_error *error);

// carb_handbook_line element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: gauge_kpa, resistance_bar_per_m, rise_m, hardware_kpa. out receives the
// output of a name such as "line_m" (in any unit) and NaN where status is below 0; status receives CARB_OK, or
// bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them.
// A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_handbook_line about the extremes.
int32_t carb_handbook_line_n(const struct carb_inputs *inputs,
                             const struct carb_series *series,
                             size_t series_count,
                             const char *output,
                             size_t n,
                             double *out,
                             int32_t *status,
                             struct carb_error *error);

// Pressure that a draught line takes by the trade's balance: tube, rise (0.5 psi per foot) and hardware.
//
// Required: line_m.
//
// One of: tube, resistance_bar_per_m.
//
// Optional: rise_m (0: the faucet at the height of the drink), hardware_kpa (0).
int32_t carb_handbook_pressure(const struct carb_inputs *inputs,
                               struct carb_handbook_pressure_result *result,
                               struct carb_error *error);

// carb_handbook_pressure element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: line_m, resistance_bar_per_m, rise_m, hardware_kpa. out receives the
// output of a name such as "gauge_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK, or
// bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them.
// A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_handbook_pressure about the extremes.
int32_t carb_handbook_pressure_n(const struct carb_inputs *inputs,
                                 const struct carb_series *series,
                                 size_t series_count,
                                 const char *output,
                                 size_t n,
                                 double *out,
                                 int32_t *status,
                                 struct carb_error *error);

// CO2 that a keg or tank has to have for a carbonation in the package that is filled from it: expected, and with
// the least and the most that filling may lose. A loss that is told is taken as known.
//
// Required: co2_g_per_l.
//
// One of: fill_method, fill_loss_co2_g_per_l.
int32_t carb_filling_carbonation(const struct carb_inputs *inputs,
                                 struct carb_filling_carbonation_result *result,
                                 struct carb_error *error);

// carb_filling_carbonation element by element. What does not vary comes from inputs, the rest from the series,
// each under any of its names; these may vary: co2_g_per_l, fill_loss_co2_g_per_l. out receives the output of a
// name such as "expected_co2_g_per_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or
// bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them.
// A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_filling_carbonation about the extremes.
int32_t carb_filling_carbonation_n(const struct carb_inputs *inputs,
                                   const struct carb_series *series,
                                   size_t series_count,
                                   const char *output,
                                   size_t n,
                                   double *out,
                                   int32_t *status,
                                   struct carb_error *error);

// Volume and CO2 of two drinks blended: of the mix, and what of it stays at a temperature under a pressure of CO2
// (0 where it is open); without a temperature all is kept under pressure, and stays.
//
// Required: packaged_l, co2_g_per_l, other_l, other_co2_g_per_l.
//
// Optional: temperature_c (all is kept under pressure), gauge_kpa (0: open; needs the temperature), altitude_m
// (needed with a temperature, unless ambient is given), ambient_kpa (needed with a temperature, unless altitude is
// given), sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual for the drink,
// and noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis for the
// drink), solubility_multiplier (1).
int32_t carb_blend(const struct carb_inputs *inputs, struct carb_blend_result *result, struct carb_error *error);

// carb_blend element by element. What does not vary comes from inputs, the rest from the series, each under any of
// its names; these may vary: packaged_l, co2_g_per_l, other_l, other_co2_g_per_l, temperature_c, gauge_kpa,
// altitude_m, ambient_kpa, abv_percent, extract_g_per_l. out receives the output of a name such as "packaged_l"
// (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an
// enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of
// equations, such as glass that may burst, is told of single answers only: ask carb_blend about the extremes.
int32_t carb_blend_n(const struct carb_inputs *inputs,
                     const struct carb_series *series,
                     size_t series_count,
                     const char *output,
                     size_t n,
                     double *out,
                     int32_t *status,
                     struct carb_error *error);

// Oxygen left in a vessel that is filled with CO2 and vented so many times, each filling mixed; and the CO2 that
// this takes.
//
// Required: purge_gauge_kpa, cycles_count.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), start_oxygen_ppm (20.95 % vol: air),
// gas_oxygen_ppm (30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure gas), keg_l (19.6 L, a soda
// keg of 5 US gallons to the brim, and noted), temperature_c (20 °C), keg_rating_gauge_kpa (not known: more than
// 15 psi gets a caution).
int32_t carb_purge_oxygen(const struct carb_inputs *inputs,
                          struct carb_purge_oxygen_result *result,
                          struct carb_error *error);

// carb_purge_oxygen element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: purge_gauge_kpa, cycles_count, altitude_m, ambient_kpa, start_oxygen_ppm,
// gas_oxygen_ppm, keg_l, temperature_c. out receives the output of a name such as "oxygen_ppm" (in any unit) and
// NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status
// below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as
// glass that may burst, is told of single answers only: ask carb_purge_oxygen about the extremes.
int32_t carb_purge_oxygen_n(const struct carb_inputs *inputs,
                            const struct carb_series *series,
                            size_t series_count,
                            const char *output,
                            size_t n,
                            double *out,
                            int32_t *status,
                            struct carb_error *error);

// How often a vessel is filled with CO2 and vented until no more than some oxygen is left, as a real and as a
// whole number; and the CO2 that the whole number takes.
//
// Required: purge_gauge_kpa, oxygen_ppm.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), start_oxygen_ppm (20.95 % vol: air),
// gas_oxygen_ppm (30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure gas), keg_l (19.6 L, a soda
// keg of 5 US gallons to the brim, and noted), temperature_c (20 °C), keg_rating_gauge_kpa (not known: more than
// 15 psi gets a caution).
int32_t carb_purge_cycles(const struct carb_inputs *inputs,
                          struct carb_purge_cycles_result *result,
                          struct carb_error *error);

// carb_purge_cycles element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: purge_gauge_kpa, oxygen_ppm, altitude_m, ambient_kpa, start_oxygen_ppm,
// gas_oxygen_ppm, keg_l, temperature_c. out receives the output of a name such as "cycles_count" (in any unit) and
// NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status
// below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as
// glass that may burst, is told of single answers only: ask carb_purge_cycles about the extremes.
int32_t carb_purge_cycles_n(const struct carb_inputs *inputs,
                            const struct carb_series *series,
                            size_t series_count,
                            const char *output,
                            size_t n,
                            double *out,
                            int32_t *status,
                            struct carb_error *error);

// Oxygen left in an open vessel after so many vessel volumes of CO2 ran through it: mixed (the most), and without
// mixing (the least); and the CO2 that this takes.
//
// Required: sweeps_count.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), start_oxygen_ppm (20.95 % vol: air),
// gas_oxygen_ppm (30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure gas), keg_l (19.6 L, a soda
// keg of 5 US gallons to the brim, and noted), temperature_c (20 °C).
int32_t carb_sweep_oxygen(const struct carb_inputs *inputs,
                          struct carb_sweep_oxygen_result *result,
                          struct carb_error *error);

// carb_sweep_oxygen element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: sweeps_count, altitude_m, ambient_kpa, start_oxygen_ppm, gas_oxygen_ppm,
// keg_l, temperature_c. out receives the output of a name such as "mixed_oxygen_ppm" (in any unit) and NaN where
// status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0.
// Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as glass that
// may burst, is told of single answers only: ask carb_sweep_oxygen about the extremes.
int32_t carb_sweep_oxygen_n(const struct carb_inputs *inputs,
                            const struct carb_series *series,
                            size_t series_count,
                            const char *output,
                            size_t n,
                            double *out,
                            int32_t *status,
                            struct carb_error *error);

// Oxygen in a keg that was filled to the brim with sanitiser, but for some air under the lid, and pushed empty by
// CO2; and the CO2 that this takes.
//
// Required: pocket_l, push_gauge_kpa.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere), start_oxygen_ppm (20.95 % vol: air),
// gas_oxygen_ppm (30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure gas), keg_l (19.6 L, a soda
// keg of 5 US gallons to the brim, and noted), temperature_c (20 °C), keg_rating_gauge_kpa (not known: more than
// 15 psi gets a caution).
int32_t carb_push_oxygen(const struct carb_inputs *inputs,
                         struct carb_push_oxygen_result *result,
                         struct carb_error *error);

// carb_push_oxygen element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: pocket_l, push_gauge_kpa, altitude_m, ambient_kpa, start_oxygen_ppm,
// gas_oxygen_ppm, keg_l, temperature_c. out receives the output of a name such as "oxygen_ppm" (in any unit) and
// NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status
// below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as
// glass that may burst, is told of single answers only: ask carb_push_oxygen about the extremes.
int32_t carb_push_oxygen_n(const struct carb_inputs *inputs,
                           const struct carb_series *series,
                           size_t series_count,
                           const char *output,
                           size_t n,
                           double *out,
                           int32_t *status,
                           struct carb_error *error);

// Oxygen of a package per litre of drink: in the headspace, brought along by the CO2 that carbonates it, and in
// all with what was dissolved; and what of it is dissolved at equilibrium.
//
// Required: oxygen_ppm, temperature_c.
//
// One of: headspace_percent, keg_l.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: packaged_l (needed with keg: the drink in it), sea_level_kpa (101.325 kPa, the standard atmosphere),
// gauge_kpa (0: just vented), dissolved_oxygen_ug_per_l (0: none before), co2_g_per_l (the drink takes up no CO2),
// start_co2_g_per_l (0: flat), gas_oxygen_ppm (30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure
// gas).
int32_t carb_oxygen_pickup(const struct carb_inputs *inputs,
                           struct carb_oxygen_pickup_result *result,
                           struct carb_error *error);

// carb_oxygen_pickup element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: oxygen_ppm, headspace_percent, temperature_c, altitude_m, ambient_kpa,
// gauge_kpa, dissolved_oxygen_ug_per_l, co2_g_per_l, start_co2_g_per_l, gas_oxygen_ppm. out receives the output of
// a name such as "headspace_picked_up_ug_per_l" (in any unit) and NaN where status is below 0; status receives
// CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie
// over them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers
// only: ask carb_oxygen_pickup about the extremes.
int32_t carb_oxygen_pickup_n(const struct carb_inputs *inputs,
                             const struct carb_series *series,
                             size_t series_count,
                             const char *output,
                             size_t n,
                             double *out,
                             int32_t *status,
                             struct carb_error *error);

// Total package oxygen from the oxygen dissolved in a package that was shaken to equilibrium, and the part of it
// that is in the headspace; per litre of drink.
//
// Required: dissolved_oxygen_ug_per_l, headspace_percent, temperature_c.
int32_t carb_total_package_oxygen(const struct carb_inputs *inputs,
                                  struct carb_total_package_oxygen_result *result,
                                  struct carb_error *error);

// carb_total_package_oxygen element by element. What does not vary comes from inputs, the rest from the series,
// each under any of its names; these may vary: dissolved_oxygen_ug_per_l, headspace_percent, temperature_c. out
// receives the output of a name such as "total_oxygen_ug_per_l" (in any unit) and NaN where status is below 0;
// status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements;
// a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
// single answers only: ask carb_total_package_oxygen about the extremes.
int32_t carb_total_package_oxygen_n(const struct carb_inputs *inputs,
                                    const struct carb_series *series,
                                    size_t series_count,
                                    const char *output,
                                    size_t n,
                                    double *out,
                                    int32_t *status,
                                    struct carb_error *error);

// CO2 that a keg takes, use by use: dissolved, in the headspace, for purging, to push the drink out, lost; in all
// and at the bare minimum; and how many kegs a cylinder does at either.
//
// Required: packaged_l, co2_g_per_l, temperature_c, gauge_kpa.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: start_co2_g_per_l (0: flat; beer that fermented at 20 °C holds about 0.85 volumes), sea_level_kpa
// (101.325 kPa, the standard atmosphere), keg_l (the drink and 3.5 % of it, as in a full soda keg), purge (none),
// purge_gauge_kpa (needed with purge "headspace" and "empty", and with cycles), cycles_count (needed with purge
// "headspace" and "empty", and with purge_gauge), push_gauge_kpa (that of serving; only with purge "push"),
// purge_c (that of a room, 20 °C; only with purge "empty" and "push"), gas_loss_percent (0 %),
// keg_rating_gauge_kpa (not known: purging at more than 15 psi gets a caution), cylinder_size (cylinder_5_lb,
// unless charge is given), charge_g (that of the cylinder_size).
int32_t carb_gas_budget(const struct carb_inputs *inputs,
                        struct carb_gas_budget_result *result,
                        struct carb_error *error);

// carb_gas_budget element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: packaged_l, co2_g_per_l, start_co2_g_per_l, temperature_c, gauge_kpa,
// altitude_m, ambient_kpa, keg_l, purge_gauge_kpa, cycles_count, push_gauge_kpa, purge_c, gas_loss_percent,
// charge_g. out receives the output of a name such as "dissolve_gas_g" (in any unit) and NaN where status is below
// 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n
// elements; a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is
// told of single answers only: ask carb_gas_budget about the extremes.
int32_t carb_gas_budget_n(const struct carb_inputs *inputs,
                          const struct carb_series *series,
                          size_t series_count,
                          const char *output,
                          size_t n,
                          double *out,
                          int32_t *status,
                          struct carb_error *error);

// What the gauge of a cylinder shows as long as it holds liquid, the share of a full charge that is left when it
// begins to fall, and the temperature at which a full cylinder is full of liquid.
//
// Required: cylinder_c.
//
// One of: cylinder_size, filling_ratio_g_per_g.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere).
int32_t carb_cylinder_left(const struct carb_inputs *inputs,
                           struct carb_cylinder_left_result *result,
                           struct carb_error *error);

// carb_cylinder_left element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: cylinder_c, filling_ratio_g_per_g, altitude_m, ambient_kpa. out receives
// the output of a name such as "gauge_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK,
// or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over
// them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_cylinder_left about the extremes.
int32_t carb_cylinder_left_n(const struct carb_inputs *inputs,
                             const struct carb_series *series,
                             size_t series_count,
                             const char *output,
                             size_t n,
                             double *out,
                             int32_t *status,
                             struct carb_error *error);

// CO2 left in a cylinder by its weight now and empty, the share of a full charge, and how many kegs that does.
//
// Required: gross_g, tare_g.
//
// One of: cylinder_size, charge_g.
//
// Optional: gas_g (150 g for each keg: 19 L carbonated, served, its headspace purged, a little lost; gas_budget
// tells it of yours).
int32_t carb_cylinder_contents(const struct carb_inputs *inputs,
                               struct carb_cylinder_contents_result *result,
                               struct carb_error *error);

// carb_cylinder_contents element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: gross_g, tare_g, charge_g, gas_g. out receives the output of a name such
// as "left_gas_g" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
// the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_cylinder_contents about the extremes.
int32_t carb_cylinder_contents_n(const struct carb_inputs *inputs,
                                 const struct carb_series *series,
                                 size_t series_count,
                                 const char *output,
                                 size_t n,
                                 double *out,
                                 int32_t *status,
                                 struct carb_error *error);

// CO2 in the air of a room into which a cylinder, or what a fermentation makes, escapes: mixed, at most, and all
// of it in the lower half; after some time of airing; and how long airing takes to 5000 ppm.
//
// Required: released_g, room_m3.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: room_c (20 °C), sea_level_kpa (101.325 kPa, the standard atmosphere), air_changes_per_h (0.5 1/h, a
// closed room, and noted; a cold room or a cellar has less), time_h (0: at once).
int32_t carb_room_co2(const struct carb_inputs *inputs, struct carb_room_co2_result *result, struct carb_error *error);

// carb_room_co2 element by element. What does not vary comes from inputs, the rest from the series, each under any
// of its names; these may vary: released_g, room_m3, room_c, altitude_m, ambient_kpa, air_changes_per_h, time_h.
// out receives the output of a name such as "mixed_room_air_ppm" (in any unit) and NaN where status is below 0;
// status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements;
// a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
// single answers only: ask carb_room_co2 about the extremes.
int32_t carb_room_co2_n(const struct carb_inputs *inputs,
                        const struct carb_series *series,
                        size_t series_count,
                        const char *output,
                        size_t n,
                        double *out,
                        int32_t *status,
                        struct carb_error *error);

// CO2 in the air of a room into which some leaks steadily, in the end: mixed, and all of it in the lower half.
//
// Required: leak_g_per_h, room_m3.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: room_c (20 °C), sea_level_kpa (101.325 kPa, the standard atmosphere), air_changes_per_h (0.5 1/h, a
// closed room, and noted; a cold room or a cellar has less).
int32_t carb_room_leak(const struct carb_inputs *inputs,
                       struct carb_room_leak_result *result,
                       struct carb_error *error);

// carb_room_leak element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: leak_g_per_h, room_m3, room_c, altitude_m, ambient_kpa, air_changes_per_h. out
// receives the output of a name such as "mixed_room_air_ppm" (in any unit) and NaN where status is below 0; status
// receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a
// series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
// single answers only: ask carb_room_leak about the extremes.
int32_t carb_room_leak_n(const struct carb_inputs *inputs,
                         const struct carb_series *series,
                         size_t series_count,
                         const char *output,
                         size_t n,
                         double *out,
                         int32_t *status,
                         struct carb_error *error);

// Pressure of the air at an altitude.
//
// Required: altitude_m.
//
// Optional: sea_level_kpa (101.325 kPa, the standard atmosphere).
int32_t carb_ambient_pressure(const struct carb_inputs *inputs,
                              struct carb_ambient_pressure_result *result,
                              struct carb_error *error);

// carb_ambient_pressure element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: altitude_m, sea_level_kpa. out receives the output of a name such as
// "ambient_kpa" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an enum
// carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger beyond
// the ranges of equations, such as glass that may burst, is told of single answers only: ask carb_ambient_pressure
// about the extremes.
int32_t carb_ambient_pressure_n(const struct carb_inputs *inputs,
                                const struct carb_series *series,
                                size_t series_count,
                                const char *output,
                                size_t n,
                                double *out,
                                int32_t *status,
                                struct carb_error *error);

// What a litre costs that is drunk from bottles and from a keg, of the first batch and over several, by prices of
// one's own; of the drink itself only what is lost counts.
//
// Required: packaged_l.
//
// Optional: bottle_l (0.5 L), bottling_outfit_money (0), bottle_money (0), cap_money (0), sugar_money_per_kg (0),
// uses_count (10), bottle_loss_percent (3 %), outfit_money (0), gas_money_per_kg (0), keg_loss_percent (3 %),
// drink_money_per_l (0), mass_g (0), gas_g (0), batches_count (10).
int32_t carb_packaging_cost(const struct carb_inputs *inputs,
                            struct carb_packaging_cost_result *result,
                            struct carb_error *error);

// carb_packaging_cost element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: packaged_l, bottle_l, bottling_outfit_money, bottle_money, cap_money,
// sugar_money_per_kg, uses_count, bottle_loss_percent, outfit_money, gas_money_per_kg, keg_loss_percent,
// drink_money_per_l, mass_g, gas_g, batches_count. out receives the output of a name such as
// "bottles_first_cost_money_per_l" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits
// of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A
// danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_packaging_cost about the extremes.
int32_t carb_packaging_cost_n(const struct carb_inputs *inputs,
                              const struct carb_series *series,
                              size_t series_count,
                              const char *output,
                              size_t n,
                              double *out,
                              int32_t *status,
                              struct carb_error *error);

// The batch at which kegging will have cost no more than bottling, fractions and all, by prices of one's own; 1
// where it does from the first.
//
// Required: packaged_l.
//
// Optional: bottle_l (0.5 L), bottling_outfit_money (0), bottle_money (0), cap_money (0), sugar_money_per_kg (0),
// uses_count (10), bottle_loss_percent (3 %), outfit_money (0), gas_money_per_kg (0), keg_loss_percent (3 %),
// drink_money_per_l (0), mass_g (0), gas_g (0).
int32_t carb_break_even(const struct carb_inputs *inputs,
                        struct carb_break_even_result *result,
                        struct carb_error *error);

// carb_break_even element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: packaged_l, bottle_l, bottling_outfit_money, bottle_money, cap_money,
// sugar_money_per_kg, uses_count, bottle_loss_percent, outfit_money, gas_money_per_kg, keg_loss_percent,
// drink_money_per_l, mass_g, gas_g. out receives the output of a name such as "batches_count" (in any unit) and
// NaN where status is below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status
// below 0. Both have n elements; a series may lie over them. A danger beyond the ranges of equations, such as
// glass that may burst, is told of single answers only: ask carb_break_even about the extremes.
int32_t carb_break_even_n(const struct carb_inputs *inputs,
                          const struct carb_series *series,
                          size_t series_count,
                          const char *output,
                          size_t n,
                          double *out,
                          int32_t *status,
                          struct carb_error *error);

// Rate at which a drink comes to equilibrium with CO2 over it: the share of the gap that closes in an hour, as
// expected, at the slow end (least) and at the fast end (most) of what the method does.
//
// Required: temperature_c.
//
// Optional: method (still), packaged_l (18.93 L, a full keg of five US gallons), keg_diameter_m (0.215 m, that of
// the usual 19 L keg), kla_per_h (that of the method; it is taken as it is, at every temperature).
int32_t carb_uptake_rate(const struct carb_inputs *inputs,
                         struct carb_uptake_rate_result *result,
                         struct carb_error *error);

// carb_uptake_rate element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: temperature_c, packaged_l, keg_diameter_m, kla_per_h. out receives the output
// of a name such as "expected_kla_per_h" (in any unit) and NaN where status is below 0; status receives CARB_OK,
// or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over
// them. A danger beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_uptake_rate about the extremes.
int32_t carb_uptake_rate_n(const struct carb_inputs *inputs,
                           const struct carb_series *series,
                           size_t series_count,
                           const char *output,
                           size_t n,
                           double *out,
                           int32_t *status,
                           struct carb_error *error);

// Time under a constant pressure of CO2 until a drink holds a carbonation, upward or, in a vented keg, downward:
// as expected, at the soonest and at the latest. Confirm it by tasting.
//
// Required: start_co2_g_per_l, co2_g_per_l, gauge_kpa, temperature_c.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: supply_g_per_h (no limit), method (still), packaged_l (18.93 L, a full keg of five US gallons),
// keg_diameter_m (0.215 m, that of the usual 19 L keg), kla_per_h (that of the method; it is taken as it is, at
// every temperature), sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual
// for the drink, and noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of
// the basis for the drink), solubility_multiplier (1).
int32_t carb_carbonation_time(const struct carb_inputs *inputs,
                              struct carb_carbonation_time_result *result,
                              struct carb_error *error);

// carb_carbonation_time element by element. What does not vary comes from inputs, the rest from the series, each
// under any of its names; these may vary: start_co2_g_per_l, co2_g_per_l, gauge_kpa, temperature_c,
// supply_g_per_h, packaged_l, keg_diameter_m, kla_per_h, altitude_m, ambient_kpa, abv_percent, extract_g_per_l.
// out receives the output of a name such as "expected_time_h" (in any unit) and NaN where status is below 0;
// status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements;
// a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
// single answers only: ask carb_carbonation_time about the extremes.
int32_t carb_carbonation_time_n(const struct carb_inputs *inputs,
                                const struct carb_series *series,
                                size_t series_count,
                                const char *output,
                                size_t n,
                                double *out,
                                int32_t *status,
                                struct carb_error *error);

// CO2 in a drink after a time under a constant pressure of CO2: as expected, the least and the most; and what it
// would end at.
//
// Required: start_co2_g_per_l, time_h, gauge_kpa, temperature_c.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: supply_g_per_h (no limit), method (still), packaged_l (18.93 L, a full keg of five US gallons),
// keg_diameter_m (0.215 m, that of the usual 19 L keg), kla_per_h (that of the method; it is taken as it is, at
// every temperature), sea_level_kpa (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual
// for the drink, and noted), extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of
// the basis for the drink), solubility_multiplier (1).
int32_t carb_carbonation_progress(const struct carb_inputs *inputs,
                                  struct carb_carbonation_progress_result *result,
                                  struct carb_error *error);

// carb_carbonation_progress element by element. What does not vary comes from inputs, the rest from the series,
// each under any of its names; these may vary: start_co2_g_per_l, time_h, gauge_kpa, temperature_c,
// supply_g_per_h, packaged_l, keg_diameter_m, kla_per_h, altitude_m, ambient_kpa, abv_percent, extract_g_per_l.
// out receives the output of a name such as "expected_co2_g_per_l" (in any unit) and NaN where status is below 0;
// status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n elements;
// a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told of
// single answers only: ask carb_carbonation_progress about the extremes.
int32_t carb_carbonation_progress_n(const struct carb_inputs *inputs,
                                    const struct carb_series *series,
                                    size_t series_count,
                                    const char *output,
                                    size_t n,
                                    double *out,
                                    int32_t *status,
                                    struct carb_error *error);

// When to end a burst of high pressure so that the target is not passed even at the fast end of the rate; what the
// drink then holds as expected and at least; the pressure that holds the target; and how long that takes, as
// expected and at the latest, until no more than 0.1 volumes are missing.
//
// Required: start_co2_g_per_l, co2_g_per_l, burst_gauge_kpa, temperature_c.
//
// One of: altitude_m, ambient_kpa.
//
// Optional: method (still), packaged_l (18.93 L, a full keg of five US gallons), keg_diameter_m (0.215 m, that of
// the usual 19 L keg), kla_per_h (that of the method; it is taken as it is, at every temperature), sea_level_kpa
// (101.325 kPa, the standard atmosphere), beverage (beer), abv_percent (usual for the drink, and noted),
// extract_g_per_l (usual for the drink, and noted), basis (handbook), model (that of the basis for the drink),
// solubility_multiplier (1).
int32_t carb_burst_time(const struct carb_inputs *inputs,
                        struct carb_burst_time_result *result,
                        struct carb_error *error);

// carb_burst_time element by element. What does not vary comes from inputs, the rest from the series, each under
// any of its names; these may vary: start_co2_g_per_l, co2_g_per_l, burst_gauge_kpa, temperature_c, packaged_l,
// keg_diameter_m, kla_per_h, altitude_m, ambient_kpa, abv_percent, extract_g_per_l. out receives the output of a
// name such as "stop_time_h" (in any unit) and NaN where status is below 0; status receives CARB_OK, or bits of an
// enum carb_caution, or an enum carb_status below 0. Both have n elements; a series may lie over them. A danger
// beyond the ranges of equations, such as glass that may burst, is told of single answers only: ask
// carb_burst_time about the extremes.
int32_t carb_burst_time_n(const struct carb_inputs *inputs,
                          const struct carb_series *series,
                          size_t series_count,
                          const char *output,
                          size_t n,
                          double *out,
                          int32_t *status,
                          struct carb_error *error);

// How many fermentables there are.
size_t carb_fermentables_count(void);

// Receives the row at an index from 0, below the count. The texts are the caller's own, as everything is.
int32_t carb_fermentables_at(size_t index, struct carb_fermentables_row *row, struct carb_error *error);

// How many bottle classes there are.
size_t carb_bottle_classes_count(void);

// Receives the row at an index from 0, below the count. The texts are the caller's own, as everything is.
int32_t carb_bottle_classes_at(size_t index, struct carb_bottle_classes_row *row, struct carb_error *error);

// How many sources there are.
size_t carb_sources_count(void);

// Receives the row at an index from 0, below the count. The texts are the caller's own, as everything is.
int32_t carb_sources_at(size_t index, struct carb_sources_row *row, struct carb_error *error);

// How many cautions there are.
size_t carb_cautions_count(void);

// Receives the row at an index from 0, below the count. The texts are the caller's own, as everything is.
int32_t carb_cautions_at(size_t index, struct carb_cautions_row *row, struct carb_error *error);

// Makes a struct in which nothing is given; struct_size is sizeof (carb_inputs).
int32_t carb_inputs_init(struct carb_inputs *inputs, uint32_t struct_size);

// Sets a number by any name of the vocabulary, such as temperature_f. A name of a member sets just its value; another
// unit is converted to that of the member, and CARB_NOT_GIVEN unsets it. Where the name or the value is refused nothing is
// set.
int32_t carb_inputs_set(struct carb_inputs *inputs,
                        const char *name,
                        double value,
                        struct carb_error *error);

// Sets a choice by its name, such as "beverage" to "soft_drink", or a flag to "true" or "false". Where either is refused
// nothing is set.
int32_t carb_inputs_choose(struct carb_inputs *inputs,
                           const char *name,
                           const char *choice,
                           struct carb_error *error);

// 1 if the name is that of a member of carb_inputs, which carb_inputs_set sets without conversion; 0 if it is another.
int32_t carb_is_first_name(const char *name);

// Answers a request of a function, of a table, or of a job ("bottling", "kegging", "plan", "crosscheck"): JSON in, JSON out. Tables and jobs take
// lists of rows, such as "bottles". A request may hold "uncertainty", half widths by the names of inputs; a function's name with ".markdown" behind it gives its working in Markdown. The request
// need not end with a NUL; the answer does. needed receives the bytes of the answer, its NUL included. Returns CARB_OK, or the code of the error that the
// answer tells (it is written all the same), or CARB_BUFFER_TOO_SMALL; with capacity 0 the buffer may be NULL.
int32_t carb_json(const char *function,
                  const char *request,
                  size_t request_length,
                  char *buffer,
                  size_t capacity,
                  size_t *needed);

// The plan of a packaging day as a page of text (UTF-8, 80 columns), from a request in JSON. Buffer and needed are used
// as by carb_json. danger may be NULL; it receives 1 if somebody may be hurt (a program for the command line then exits
// with a failure), else 0.
int32_t carb_plan_page(const char *request,
                       size_t request_length,
                       char *buffer,
                       size_t capacity,
                       size_t *needed,
                       int32_t *danger,
                       struct carb_error *error);

// The bottling of a batch as a page of text; everything else as carb_plan_page.
int32_t carb_bottling_page(const char *request,
                           size_t request_length,
                           char *buffer,
                           size_t capacity,
                           size_t *needed,
                           int32_t *danger,
                           struct carb_error *error);

// The kegging of a batch as a page of text; everything else as carb_plan_page.
int32_t carb_kegging_page(const char *request,
                          size_t request_length,
                          char *buffer,
                          size_t capacity,
                          size_t *needed,
                          int32_t *danger,
                          struct carb_error *error);

// What is found about claims of other programs, as a page of text, from a request {"carb": 1, "claims": [...]}; everything else as
// carb_plan_page, danger where following a claim may hurt somebody.
int32_t carb_crosscheck_page(const char *request,
                             size_t request_length,
                             char *buffer,
                             size_t capacity,
                             size_t *needed,
                             int32_t *danger,
                             struct carb_error *error);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* CARB_H */
