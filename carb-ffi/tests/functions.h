/* Every function by name, in what C99 and C++17 share. Written by tests/generated.rs: do not edit. */
#define MOST_OUTPUTS 9

static int32_t one_dissolved_co2(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_dissolved_co2_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_dissolved_co2(inputs, &result, error);
    out[0] = result.co2_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_keg_pressure(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_keg_pressure_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_keg_pressure(inputs, &result, error);
    out[0] = result.gauge_kpa;
    out[1] = result.abs_kpa;
    *cautions = result.cautions;
    return status;
}

static int32_t one_gas_blend(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_gas_blend_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_gas_blend(inputs, &result, error);
    out[0] = result.co2_percent;
    *cautions = result.cautions;
    return status;
}

static int32_t one_keg_temperature(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_keg_temperature_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_keg_temperature(inputs, &result, error);
    out[0] = result.temperature_c;
    *cautions = result.cautions;
    return status;
}

static int32_t one_warmed_keg(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_warmed_keg_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_warmed_keg(inputs, &result, error);
    out[0] = result.expected_gauge_kpa;
    out[1] = result.expected_abs_kpa;
    out[2] = result.expected_co2_g_per_l;
    out[3] = result.worst_gauge_kpa;
    out[4] = result.worst_abs_kpa;
    *cautions = result.cautions;
    return status;
}

static int32_t one_spunding(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_spunding_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_spunding(inputs, &result, error);
    out[0] = result.relief_gauge_kpa;
    out[1] = result.relief_abs_kpa;
    out[2] = result.closing_sg;
    out[3] = result.closing_plato;
    out[4] = result.drop_sg;
    out[5] = result.start_co2_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_closed_fermentation(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_closed_fermentation_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_closed_fermentation(inputs, &result, error);
    out[0] = result.expected_gauge_kpa;
    out[1] = result.expected_abs_kpa;
    out[2] = result.expected_co2_g_per_l;
    out[3] = result.worst_gauge_kpa;
    out[4] = result.worst_abs_kpa;
    *cautions = result.cautions;
    return status;
}

static int32_t one_stone_pressure(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_stone_pressure_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_stone_pressure(inputs, &result, error);
    out[0] = result.gauge_kpa;
    out[1] = result.surface_gauge_kpa;
    out[2] = result.head_drop_kpa;
    *cautions = result.cautions;
    return status;
}

static int32_t one_residual_co2(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_residual_co2_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_residual_co2(inputs, &result, error);
    out[0] = result.co2_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_priming_sugar(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_priming_sugar_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_priming_sugar(inputs, &result, error);
    out[0] = result.mass_g;
    out[1] = result.dose_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_primed_carbonation(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_primed_carbonation_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_primed_carbonation(inputs, &result, error);
    out[0] = result.co2_g_per_l;
    out[1] = result.added_abv_percent;
    out[2] = result.abv_percent;
    *cautions = result.cautions;
    return status;
}

static int32_t one_priming_wort(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_priming_wort_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_priming_wort(inputs, &result, error);
    out[0] = result.wort_l;
    out[1] = result.wort_percent;
    *cautions = result.cautions;
    return status;
}

static int32_t one_priming_syrup(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_priming_syrup_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_priming_syrup(inputs, &result, error);
    out[0] = result.syrup_l;
    out[1] = result.least_syrup_water_l;
    out[2] = result.syrup_percent;
    *cautions = result.cautions;
    return status;
}

static int32_t one_package_pressure(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_package_pressure_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_package_pressure(inputs, &result, error);
    out[0] = result.expected_gauge_kpa;
    out[1] = result.expected_abs_kpa;
    out[2] = result.expected_co2_g_per_l;
    out[3] = result.worst_gauge_kpa;
    out[4] = result.worst_abs_kpa;
    *cautions = result.cautions;
    return status;
}

static int32_t one_package_carbonation(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_package_carbonation_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_package_carbonation(inputs, &result, error);
    out[0] = result.total_co2_g_per_l;
    out[1] = result.dissolved_co2_g_per_l;
    out[2] = result.least_total_co2_g_per_l;
    out[3] = result.least_dissolved_co2_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_conditioning(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_conditioning_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_conditioning(inputs, &result, error);
    out[0] = result.expected_progress_percent;
    out[1] = result.least_progress_percent;
    out[2] = result.most_progress_percent;
    *cautions = result.cautions;
    return status;
}

static int32_t one_conditioning_time(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_conditioning_time_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_conditioning_time(inputs, &result, error);
    out[0] = result.expected_time_h;
    out[1] = result.least_time_h;
    out[2] = result.most_time_h;
    *cautions = result.cautions;
    return status;
}

static int32_t one_reyeasting(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_reyeasting_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_reyeasting(inputs, &result, error);
    out[0] = result.dry_yeast_mass_g;
    *cautions = result.cautions;
    return status;
}

static int32_t one_gravity(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_gravity_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_gravity(inputs, &result, error);
    out[0] = result.sg;
    out[1] = result.plato;
    *cautions = result.cautions;
    return status;
}

static int32_t one_attenuation(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_attenuation_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_attenuation(inputs, &result, error);
    out[0] = result.real_extract_plato;
    out[1] = result.apparent_attenuation_percent;
    out[2] = result.real_attenuation_percent;
    out[3] = result.abw_percent;
    out[4] = result.abv_percent;
    out[5] = result.quick_abv_percent;
    out[6] = result.extract_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_final_gravity(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_final_gravity_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_final_gravity(inputs, &result, error);
    out[0] = result.final_sg;
    out[1] = result.final_plato;
    *cautions = result.cautions;
    return status;
}

static int32_t one_gravity_co2(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_gravity_co2_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_gravity_co2(inputs, &result, error);
    out[0] = result.fermentable_g_per_l;
    out[1] = result.balling_co2_g_per_l;
    out[2] = result.theory_co2_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_added_co2(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_added_co2_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_added_co2(inputs, &result, error);
    out[0] = result.expected_co2_g_per_l;
    out[1] = result.worst_co2_g_per_l;
    out[2] = result.added_abv_percent;
    *cautions = result.cautions;
    return status;
}

static int32_t one_drink_properties(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_drink_properties_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_drink_properties(inputs, &result, error);
    out[0] = result.density_kg_per_m3;
    out[1] = result.viscosity_mpa_s;
    out[2] = result.diffusivity_m2_per_s;
    *cautions = result.cautions;
    return status;
}

static int32_t one_co2_saturation(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_co2_saturation_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_co2_saturation(inputs, &result, error);
    out[0] = result.abs_kpa;
    out[1] = result.liquid_density_kg_per_m3;
    out[2] = result.vapour_density_kg_per_m3;
    *cautions = result.cautions;
    return status;
}

static int32_t one_line_flow(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_line_flow_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_line_flow(inputs, &result, error);
    out[0] = result.flow_l_per_min;
    out[1] = result.pour_seconds;
    out[2] = result.speed_m_per_s;
    out[3] = result.reynolds_multiplier;
    out[4] = result.resistance_bar_per_m;
    out[5] = result.line_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_line_length(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_line_length_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_line_length(inputs, &result, error);
    out[0] = result.line_m;
    out[1] = result.line_l;
    out[2] = result.flow_l_per_min;
    out[3] = result.pour_seconds;
    out[4] = result.speed_m_per_s;
    out[5] = result.reynolds_multiplier;
    out[6] = result.resistance_bar_per_m;
    *cautions = result.cautions;
    return status;
}

static int32_t one_line_pressure(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_line_pressure_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_line_pressure(inputs, &result, error);
    out[0] = result.gauge_kpa;
    out[1] = result.lift_drop_kpa;
    out[2] = result.line_drop_kpa;
    out[3] = result.fittings_drop_kpa;
    out[4] = result.flow_l_per_min;
    out[5] = result.pour_seconds;
    out[6] = result.speed_m_per_s;
    out[7] = result.reynolds_multiplier;
    *cautions = result.cautions;
    return status;
}

static int32_t one_handbook_line(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_handbook_line_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_handbook_line(inputs, &result, error);
    out[0] = result.line_m;
    out[1] = result.lift_drop_kpa;
    out[2] = result.resistance_bar_per_m;
    *cautions = result.cautions;
    return status;
}

static int32_t one_handbook_pressure(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_handbook_pressure_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_handbook_pressure(inputs, &result, error);
    out[0] = result.gauge_kpa;
    out[1] = result.lift_drop_kpa;
    out[2] = result.line_drop_kpa;
    *cautions = result.cautions;
    return status;
}

static int32_t one_filling_carbonation(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_filling_carbonation_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_filling_carbonation(inputs, &result, error);
    out[0] = result.expected_co2_g_per_l;
    out[1] = result.least_co2_g_per_l;
    out[2] = result.most_co2_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_blend(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_blend_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_blend(inputs, &result, error);
    out[0] = result.packaged_l;
    out[1] = result.mixed_co2_g_per_l;
    out[2] = result.kept_co2_g_per_l;
    out[3] = result.released_g;
    *cautions = result.cautions;
    return status;
}

static int32_t one_purge_oxygen(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_purge_oxygen_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_purge_oxygen(inputs, &result, error);
    out[0] = result.oxygen_ppm;
    out[1] = result.each_gas_g;
    out[2] = result.total_gas_g;
    *cautions = result.cautions;
    return status;
}

static int32_t one_purge_cycles(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_purge_cycles_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_purge_cycles(inputs, &result, error);
    out[0] = result.cycles_count;
    out[1] = result.whole_cycles_count;
    out[2] = result.each_gas_g;
    out[3] = result.total_gas_g;
    *cautions = result.cautions;
    return status;
}

static int32_t one_sweep_oxygen(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_sweep_oxygen_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_sweep_oxygen(inputs, &result, error);
    out[0] = result.mixed_oxygen_ppm;
    out[1] = result.plug_flow_oxygen_ppm;
    out[2] = result.gas_g;
    *cautions = result.cautions;
    return status;
}

static int32_t one_push_oxygen(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_push_oxygen_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_push_oxygen(inputs, &result, error);
    out[0] = result.oxygen_ppm;
    out[1] = result.gas_g;
    *cautions = result.cautions;
    return status;
}

static int32_t one_oxygen_pickup(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_oxygen_pickup_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_oxygen_pickup(inputs, &result, error);
    out[0] = result.headspace_picked_up_ug_per_l;
    out[1] = result.gas_picked_up_ug_per_l;
    out[2] = result.total_oxygen_ug_per_l;
    out[3] = result.equilibrium_dissolved_oxygen_ug_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_total_package_oxygen(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_total_package_oxygen_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_total_package_oxygen(inputs, &result, error);
    out[0] = result.total_oxygen_ug_per_l;
    out[1] = result.headspace_picked_up_ug_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_gas_budget(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_gas_budget_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_gas_budget(inputs, &result, error);
    out[0] = result.dissolve_gas_g;
    out[1] = result.headspace_gas_g;
    out[2] = result.purge_gas_g;
    out[3] = result.serve_gas_g;
    out[4] = result.loss_gas_g;
    out[5] = result.total_gas_g;
    out[6] = result.least_gas_g;
    out[7] = result.kegs_count;
    out[8] = result.most_kegs_count;
    *cautions = result.cautions;
    return status;
}

static int32_t one_cylinder_left(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_cylinder_left_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_cylinder_left(inputs, &result, error);
    out[0] = result.gauge_kpa;
    out[1] = result.abs_kpa;
    out[2] = result.falling_left_percent;
    out[3] = result.liquid_full_cylinder_c;
    *cautions = result.cautions;
    return status;
}

static int32_t one_cylinder_contents(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_cylinder_contents_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_cylinder_contents(inputs, &result, error);
    out[0] = result.left_gas_g;
    out[1] = result.left_percent;
    out[2] = result.kegs_count;
    *cautions = result.cautions;
    return status;
}

static int32_t one_room_co2(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_room_co2_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_room_co2(inputs, &result, error);
    out[0] = result.mixed_room_air_ppm;
    out[1] = result.bound_room_air_ppm;
    out[2] = result.low_half_room_air_ppm;
    out[3] = result.later_room_air_ppm;
    out[4] = result.later_low_half_room_air_ppm;
    out[5] = result.aired_time_h;
    out[6] = result.low_half_aired_time_h;
    *cautions = result.cautions;
    return status;
}

static int32_t one_room_leak(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_room_leak_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_room_leak(inputs, &result, error);
    out[0] = result.mixed_room_air_ppm;
    out[1] = result.low_half_room_air_ppm;
    *cautions = result.cautions;
    return status;
}

static int32_t one_ambient_pressure(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_ambient_pressure_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_ambient_pressure(inputs, &result, error);
    out[0] = result.ambient_kpa;
    *cautions = result.cautions;
    return status;
}

static int32_t one_packaging_cost(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_packaging_cost_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_packaging_cost(inputs, &result, error);
    out[0] = result.bottles_first_cost_money_per_l;
    out[1] = result.keg_first_cost_money_per_l;
    out[2] = result.bottles_cost_money_per_l;
    out[3] = result.keg_cost_money_per_l;
    out[4] = result.bottles_spent_money;
    out[5] = result.keg_spent_money;
    *cautions = result.cautions;
    return status;
}

static int32_t one_break_even(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_break_even_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_break_even(inputs, &result, error);
    out[0] = result.batches_count;
    *cautions = result.cautions;
    return status;
}

static int32_t one_uptake_rate(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_uptake_rate_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_uptake_rate(inputs, &result, error);
    out[0] = result.expected_kla_per_h;
    out[1] = result.least_kla_per_h;
    out[2] = result.most_kla_per_h;
    *cautions = result.cautions;
    return status;
}

static int32_t one_carbonation_time(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_carbonation_time_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_carbonation_time(inputs, &result, error);
    out[0] = result.expected_time_h;
    out[1] = result.soonest_time_h;
    out[2] = result.latest_time_h;
    *cautions = result.cautions;
    return status;
}

static int32_t one_carbonation_progress(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_carbonation_progress_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_carbonation_progress(inputs, &result, error);
    out[0] = result.expected_co2_g_per_l;
    out[1] = result.least_co2_g_per_l;
    out[2] = result.most_co2_g_per_l;
    out[3] = result.end_co2_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_burst_time(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_burst_time_result result;
    int32_t status;
    result.struct_size = sizeof result;
    status = carb_burst_time(inputs, &result, error);
    out[0] = result.stop_time_h;
    out[1] = result.expected_co2_g_per_l;
    out[2] = result.least_co2_g_per_l;
    out[3] = result.hold_gauge_kpa;
    out[4] = result.rest_time_h;
    out[5] = result.latest_rest_time_h;
    *cautions = result.cautions;
    return status;
}

static const struct {
    const char *name;
    int32_t (*one)(const carb_inputs *, double *, uint32_t *, carb_error *);
    int32_t (*n)(const carb_inputs *, const carb_series *, size_t, const char *, size_t, double *, int32_t *, carb_error *);
    const char *outputs[MOST_OUTPUTS + 1];
} functions[] = {
    {"dissolved_co2", one_dissolved_co2, carb_dissolved_co2_n, {"co2_g_per_l", NULL}},
    {"keg_pressure", one_keg_pressure, carb_keg_pressure_n, {"gauge_kpa", "abs_kpa", NULL}},
    {"gas_blend", one_gas_blend, carb_gas_blend_n, {"co2_percent", NULL}},
    {"keg_temperature", one_keg_temperature, carb_keg_temperature_n, {"temperature_c", NULL}},
    {"warmed_keg", one_warmed_keg, carb_warmed_keg_n, {"expected_gauge_kpa", "expected_abs_kpa", "expected_co2_g_per_l", "worst_gauge_kpa", "worst_abs_kpa", NULL}},
    {"spunding", one_spunding, carb_spunding_n, {"relief_gauge_kpa", "relief_abs_kpa", "closing_sg", "closing_plato", "drop_sg", "start_co2_g_per_l", NULL}},
    {"closed_fermentation", one_closed_fermentation, carb_closed_fermentation_n, {"expected_gauge_kpa", "expected_abs_kpa", "expected_co2_g_per_l", "worst_gauge_kpa", "worst_abs_kpa", NULL}},
    {"stone_pressure", one_stone_pressure, carb_stone_pressure_n, {"gauge_kpa", "surface_gauge_kpa", "head_drop_kpa", NULL}},
    {"residual_co2", one_residual_co2, carb_residual_co2_n, {"co2_g_per_l", NULL}},
    {"priming_sugar", one_priming_sugar, carb_priming_sugar_n, {"mass_g", "dose_g_per_l", NULL}},
    {"primed_carbonation", one_primed_carbonation, carb_primed_carbonation_n, {"co2_g_per_l", "added_abv_percent", "abv_percent", NULL}},
    {"priming_wort", one_priming_wort, carb_priming_wort_n, {"wort_l", "wort_percent", NULL}},
    {"priming_syrup", one_priming_syrup, carb_priming_syrup_n, {"syrup_l", "least_syrup_water_l", "syrup_percent", NULL}},
    {"package_pressure", one_package_pressure, carb_package_pressure_n, {"expected_gauge_kpa", "expected_abs_kpa", "expected_co2_g_per_l", "worst_gauge_kpa", "worst_abs_kpa", NULL}},
    {"package_carbonation", one_package_carbonation, carb_package_carbonation_n, {"total_co2_g_per_l", "dissolved_co2_g_per_l", "least_total_co2_g_per_l", "least_dissolved_co2_g_per_l", NULL}},
    {"conditioning", one_conditioning, carb_conditioning_n, {"expected_progress_percent", "least_progress_percent", "most_progress_percent", NULL}},
    {"conditioning_time", one_conditioning_time, carb_conditioning_time_n, {"expected_time_h", "least_time_h", "most_time_h", NULL}},
    {"reyeasting", one_reyeasting, carb_reyeasting_n, {"dry_yeast_mass_g", NULL}},
    {"gravity", one_gravity, carb_gravity_n, {"sg", "plato", NULL}},
    {"attenuation", one_attenuation, carb_attenuation_n, {"real_extract_plato", "apparent_attenuation_percent", "real_attenuation_percent", "abw_percent", "abv_percent", "quick_abv_percent", "extract_g_per_l", NULL}},
    {"final_gravity", one_final_gravity, carb_final_gravity_n, {"final_sg", "final_plato", NULL}},
    {"gravity_co2", one_gravity_co2, carb_gravity_co2_n, {"fermentable_g_per_l", "balling_co2_g_per_l", "theory_co2_g_per_l", NULL}},
    {"added_co2", one_added_co2, carb_added_co2_n, {"expected_co2_g_per_l", "worst_co2_g_per_l", "added_abv_percent", NULL}},
    {"drink_properties", one_drink_properties, carb_drink_properties_n, {"density_kg_per_m3", "viscosity_mpa_s", "diffusivity_m2_per_s", NULL}},
    {"co2_saturation", one_co2_saturation, carb_co2_saturation_n, {"abs_kpa", "liquid_density_kg_per_m3", "vapour_density_kg_per_m3", NULL}},
    {"line_flow", one_line_flow, carb_line_flow_n, {"flow_l_per_min", "pour_seconds", "speed_m_per_s", "reynolds_multiplier", "resistance_bar_per_m", "line_l", NULL}},
    {"line_length", one_line_length, carb_line_length_n, {"line_m", "line_l", "flow_l_per_min", "pour_seconds", "speed_m_per_s", "reynolds_multiplier", "resistance_bar_per_m", NULL}},
    {"line_pressure", one_line_pressure, carb_line_pressure_n, {"gauge_kpa", "lift_drop_kpa", "line_drop_kpa", "fittings_drop_kpa", "flow_l_per_min", "pour_seconds", "speed_m_per_s", "reynolds_multiplier", NULL}},
    {"handbook_line", one_handbook_line, carb_handbook_line_n, {"line_m", "lift_drop_kpa", "resistance_bar_per_m", NULL}},
    {"handbook_pressure", one_handbook_pressure, carb_handbook_pressure_n, {"gauge_kpa", "lift_drop_kpa", "line_drop_kpa", NULL}},
    {"filling_carbonation", one_filling_carbonation, carb_filling_carbonation_n, {"expected_co2_g_per_l", "least_co2_g_per_l", "most_co2_g_per_l", NULL}},
    {"blend", one_blend, carb_blend_n, {"packaged_l", "mixed_co2_g_per_l", "kept_co2_g_per_l", "released_g", NULL}},
    {"purge_oxygen", one_purge_oxygen, carb_purge_oxygen_n, {"oxygen_ppm", "each_gas_g", "total_gas_g", NULL}},
    {"purge_cycles", one_purge_cycles, carb_purge_cycles_n, {"cycles_count", "whole_cycles_count", "each_gas_g", "total_gas_g", NULL}},
    {"sweep_oxygen", one_sweep_oxygen, carb_sweep_oxygen_n, {"mixed_oxygen_ppm", "plug_flow_oxygen_ppm", "gas_g", NULL}},
    {"push_oxygen", one_push_oxygen, carb_push_oxygen_n, {"oxygen_ppm", "gas_g", NULL}},
    {"oxygen_pickup", one_oxygen_pickup, carb_oxygen_pickup_n, {"headspace_picked_up_ug_per_l", "gas_picked_up_ug_per_l", "total_oxygen_ug_per_l", "equilibrium_dissolved_oxygen_ug_per_l", NULL}},
    {"total_package_oxygen", one_total_package_oxygen, carb_total_package_oxygen_n, {"total_oxygen_ug_per_l", "headspace_picked_up_ug_per_l", NULL}},
    {"gas_budget", one_gas_budget, carb_gas_budget_n, {"dissolve_gas_g", "headspace_gas_g", "purge_gas_g", "serve_gas_g", "loss_gas_g", "total_gas_g", "least_gas_g", "kegs_count", "most_kegs_count", NULL}},
    {"cylinder_left", one_cylinder_left, carb_cylinder_left_n, {"gauge_kpa", "abs_kpa", "falling_left_percent", "liquid_full_cylinder_c", NULL}},
    {"cylinder_contents", one_cylinder_contents, carb_cylinder_contents_n, {"left_gas_g", "left_percent", "kegs_count", NULL}},
    {"room_co2", one_room_co2, carb_room_co2_n, {"mixed_room_air_ppm", "bound_room_air_ppm", "low_half_room_air_ppm", "later_room_air_ppm", "later_low_half_room_air_ppm", "aired_time_h", "low_half_aired_time_h", NULL}},
    {"room_leak", one_room_leak, carb_room_leak_n, {"mixed_room_air_ppm", "low_half_room_air_ppm", NULL}},
    {"ambient_pressure", one_ambient_pressure, carb_ambient_pressure_n, {"ambient_kpa", NULL}},
    {"packaging_cost", one_packaging_cost, carb_packaging_cost_n, {"bottles_first_cost_money_per_l", "keg_first_cost_money_per_l", "bottles_cost_money_per_l", "keg_cost_money_per_l", "bottles_spent_money", "keg_spent_money", NULL}},
    {"break_even", one_break_even, carb_break_even_n, {"batches_count", NULL}},
    {"uptake_rate", one_uptake_rate, carb_uptake_rate_n, {"expected_kla_per_h", "least_kla_per_h", "most_kla_per_h", NULL}},
    {"carbonation_time", one_carbonation_time, carb_carbonation_time_n, {"expected_time_h", "soonest_time_h", "latest_time_h", NULL}},
    {"carbonation_progress", one_carbonation_progress, carb_carbonation_progress_n, {"expected_co2_g_per_l", "least_co2_g_per_l", "most_co2_g_per_l", "end_co2_g_per_l", NULL}},
    {"burst_time", one_burst_time, carb_burst_time_n, {"stop_time_h", "expected_co2_g_per_l", "least_co2_g_per_l", "hold_gauge_kpa", "rest_time_h", "latest_rest_time_h", NULL}},
};
