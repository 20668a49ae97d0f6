//! Every function by name, whatever its result. Written by tests/generated.rs: do not edit.

use carb::*;
use core::ffi::{c_char, c_void};

pub type One = unsafe extern "C" fn(*const carb_inputs, *mut c_void, *mut carb_error) -> i32;
pub type Each = unsafe extern "C" fn(
    *const carb_inputs,
    *const carb_series,
    usize,
    *const c_char,
    usize,
    *mut f64,
    *mut i32,
    *mut carb_error,
) -> i32;

pub struct Entry {
    pub name: &'static str,
    pub one: One,
    pub each: Each,
    pub size: usize,
}

macro_rules! all {
    ($($name:ident, $one:ident, $each:ident, $result:ident;)*) => {
        &[$(Entry {
            name: stringify!($name),
            // SAFETY: the pointer to the result is all that differs.
            one: unsafe { core::mem::transmute::<*const (), One>($one as *const ()) },
            each: $each,
            size: size_of::<$result>(),
        }),*]
    };
}

pub static ALL: &[Entry] = all! {
    dissolved_co2, carb_dissolved_co2, carb_dissolved_co2_n, carb_dissolved_co2_result;
    keg_pressure, carb_keg_pressure, carb_keg_pressure_n, carb_keg_pressure_result;
    gas_blend, carb_gas_blend, carb_gas_blend_n, carb_gas_blend_result;
    keg_temperature, carb_keg_temperature, carb_keg_temperature_n, carb_keg_temperature_result;
    warmed_keg, carb_warmed_keg, carb_warmed_keg_n, carb_warmed_keg_result;
    spunding, carb_spunding, carb_spunding_n, carb_spunding_result;
    closed_fermentation, carb_closed_fermentation, carb_closed_fermentation_n, carb_closed_fermentation_result;
    stone_pressure, carb_stone_pressure, carb_stone_pressure_n, carb_stone_pressure_result;
    residual_co2, carb_residual_co2, carb_residual_co2_n, carb_residual_co2_result;
    priming_sugar, carb_priming_sugar, carb_priming_sugar_n, carb_priming_sugar_result;
    primed_carbonation, carb_primed_carbonation, carb_primed_carbonation_n, carb_primed_carbonation_result;
    priming_wort, carb_priming_wort, carb_priming_wort_n, carb_priming_wort_result;
    priming_syrup, carb_priming_syrup, carb_priming_syrup_n, carb_priming_syrup_result;
    package_pressure, carb_package_pressure, carb_package_pressure_n, carb_package_pressure_result;
    package_carbonation, carb_package_carbonation, carb_package_carbonation_n, carb_package_carbonation_result;
    conditioning, carb_conditioning, carb_conditioning_n, carb_conditioning_result;
    conditioning_time, carb_conditioning_time, carb_conditioning_time_n, carb_conditioning_time_result;
    reyeasting, carb_reyeasting, carb_reyeasting_n, carb_reyeasting_result;
    gravity, carb_gravity, carb_gravity_n, carb_gravity_result;
    attenuation, carb_attenuation, carb_attenuation_n, carb_attenuation_result;
    final_gravity, carb_final_gravity, carb_final_gravity_n, carb_final_gravity_result;
    gravity_co2, carb_gravity_co2, carb_gravity_co2_n, carb_gravity_co2_result;
    added_co2, carb_added_co2, carb_added_co2_n, carb_added_co2_result;
    drink_properties, carb_drink_properties, carb_drink_properties_n, carb_drink_properties_result;
    co2_saturation, carb_co2_saturation, carb_co2_saturation_n, carb_co2_saturation_result;
    line_flow, carb_line_flow, carb_line_flow_n, carb_line_flow_result;
    line_length, carb_line_length, carb_line_length_n, carb_line_length_result;
    line_pressure, carb_line_pressure, carb_line_pressure_n, carb_line_pressure_result;
    handbook_line, carb_handbook_line, carb_handbook_line_n, carb_handbook_line_result;
    handbook_pressure, carb_handbook_pressure, carb_handbook_pressure_n, carb_handbook_pressure_result;
    filling_carbonation, carb_filling_carbonation, carb_filling_carbonation_n, carb_filling_carbonation_result;
    blend, carb_blend, carb_blend_n, carb_blend_result;
    purge_oxygen, carb_purge_oxygen, carb_purge_oxygen_n, carb_purge_oxygen_result;
    purge_cycles, carb_purge_cycles, carb_purge_cycles_n, carb_purge_cycles_result;
    sweep_oxygen, carb_sweep_oxygen, carb_sweep_oxygen_n, carb_sweep_oxygen_result;
    push_oxygen, carb_push_oxygen, carb_push_oxygen_n, carb_push_oxygen_result;
    oxygen_pickup, carb_oxygen_pickup, carb_oxygen_pickup_n, carb_oxygen_pickup_result;
    total_package_oxygen, carb_total_package_oxygen, carb_total_package_oxygen_n, carb_total_package_oxygen_result;
    gas_budget, carb_gas_budget, carb_gas_budget_n, carb_gas_budget_result;
    cylinder_left, carb_cylinder_left, carb_cylinder_left_n, carb_cylinder_left_result;
    cylinder_contents, carb_cylinder_contents, carb_cylinder_contents_n, carb_cylinder_contents_result;
    room_co2, carb_room_co2, carb_room_co2_n, carb_room_co2_result;
    room_leak, carb_room_leak, carb_room_leak_n, carb_room_leak_result;
    ambient_pressure, carb_ambient_pressure, carb_ambient_pressure_n, carb_ambient_pressure_result;
    packaging_cost, carb_packaging_cost, carb_packaging_cost_n, carb_packaging_cost_result;
    break_even, carb_break_even, carb_break_even_n, carb_break_even_result;
    uptake_rate, carb_uptake_rate, carb_uptake_rate_n, carb_uptake_rate_result;
    carbonation_time, carb_carbonation_time, carb_carbonation_time_n, carb_carbonation_time_result;
    carbonation_progress, carb_carbonation_progress, carb_carbonation_progress_n, carb_carbonation_progress_result;
    burst_time, carb_burst_time, carb_burst_time_n, carb_burst_time_result;
};
