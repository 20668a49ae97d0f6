/* Every function by name. Written by tests/generated.rs: do not edit. */
#define MOST_OUTPUTS 7

static int32_t one_dissolved_co2(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_dissolved_co2_result result = {.struct_size = sizeof result};
    int32_t status = carb_dissolved_co2(inputs, &result, error);
    out[0] = result.co2_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_keg_pressure(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_keg_pressure_result result = {.struct_size = sizeof result};
    int32_t status = carb_keg_pressure(inputs, &result, error);
    out[0] = result.gauge_kpa;
    out[1] = result.abs_kpa;
    *cautions = result.cautions;
    return status;
}

static int32_t one_residual_co2(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_residual_co2_result result = {.struct_size = sizeof result};
    int32_t status = carb_residual_co2(inputs, &result, error);
    out[0] = result.co2_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_priming_sugar(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_priming_sugar_result result = {.struct_size = sizeof result};
    int32_t status = carb_priming_sugar(inputs, &result, error);
    out[0] = result.mass_g;
    out[1] = result.dose_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_primed_carbonation(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_primed_carbonation_result result = {.struct_size = sizeof result};
    int32_t status = carb_primed_carbonation(inputs, &result, error);
    out[0] = result.co2_g_per_l;
    out[1] = result.added_abv_percent;
    out[2] = result.abv_percent;
    *cautions = result.cautions;
    return status;
}

static int32_t one_priming_wort(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_priming_wort_result result = {.struct_size = sizeof result};
    int32_t status = carb_priming_wort(inputs, &result, error);
    out[0] = result.wort_l;
    out[1] = result.wort_percent;
    *cautions = result.cautions;
    return status;
}

static int32_t one_priming_syrup(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_priming_syrup_result result = {.struct_size = sizeof result};
    int32_t status = carb_priming_syrup(inputs, &result, error);
    out[0] = result.syrup_l;
    out[1] = result.least_syrup_water_l;
    out[2] = result.syrup_percent;
    *cautions = result.cautions;
    return status;
}

static int32_t one_package_pressure(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_package_pressure_result result = {.struct_size = sizeof result};
    int32_t status = carb_package_pressure(inputs, &result, error);
    out[0] = result.expected_gauge_kpa;
    out[1] = result.expected_abs_kpa;
    out[2] = result.expected_co2_g_per_l;
    out[3] = result.worst_gauge_kpa;
    out[4] = result.worst_abs_kpa;
    *cautions = result.cautions;
    return status;
}

static int32_t one_package_carbonation(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_package_carbonation_result result = {.struct_size = sizeof result};
    int32_t status = carb_package_carbonation(inputs, &result, error);
    out[0] = result.total_co2_g_per_l;
    out[1] = result.dissolved_co2_g_per_l;
    out[2] = result.least_total_co2_g_per_l;
    out[3] = result.least_dissolved_co2_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_conditioning(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_conditioning_result result = {.struct_size = sizeof result};
    int32_t status = carb_conditioning(inputs, &result, error);
    out[0] = result.expected_progress_percent;
    out[1] = result.least_progress_percent;
    out[2] = result.most_progress_percent;
    *cautions = result.cautions;
    return status;
}

static int32_t one_conditioning_time(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_conditioning_time_result result = {.struct_size = sizeof result};
    int32_t status = carb_conditioning_time(inputs, &result, error);
    out[0] = result.expected_time_h;
    out[1] = result.least_time_h;
    out[2] = result.most_time_h;
    *cautions = result.cautions;
    return status;
}

static int32_t one_reyeasting(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_reyeasting_result result = {.struct_size = sizeof result};
    int32_t status = carb_reyeasting(inputs, &result, error);
    out[0] = result.dry_yeast_mass_g;
    *cautions = result.cautions;
    return status;
}

static int32_t one_gravity(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_gravity_result result = {.struct_size = sizeof result};
    int32_t status = carb_gravity(inputs, &result, error);
    out[0] = result.sg;
    out[1] = result.plato;
    *cautions = result.cautions;
    return status;
}

static int32_t one_attenuation(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_attenuation_result result = {.struct_size = sizeof result};
    int32_t status = carb_attenuation(inputs, &result, error);
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
    carb_final_gravity_result result = {.struct_size = sizeof result};
    int32_t status = carb_final_gravity(inputs, &result, error);
    out[0] = result.final_sg;
    out[1] = result.final_plato;
    *cautions = result.cautions;
    return status;
}

static int32_t one_gravity_co2(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_gravity_co2_result result = {.struct_size = sizeof result};
    int32_t status = carb_gravity_co2(inputs, &result, error);
    out[0] = result.fermentable_g_per_l;
    out[1] = result.balling_co2_g_per_l;
    out[2] = result.theory_co2_g_per_l;
    *cautions = result.cautions;
    return status;
}

static int32_t one_added_co2(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_added_co2_result result = {.struct_size = sizeof result};
    int32_t status = carb_added_co2(inputs, &result, error);
    out[0] = result.expected_co2_g_per_l;
    out[1] = result.worst_co2_g_per_l;
    out[2] = result.added_abv_percent;
    *cautions = result.cautions;
    return status;
}

static int32_t one_drink_properties(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_drink_properties_result result = {.struct_size = sizeof result};
    int32_t status = carb_drink_properties(inputs, &result, error);
    out[0] = result.density_kg_per_m3;
    out[1] = result.viscosity_mpa_s;
    out[2] = result.diffusivity_m2_per_s;
    *cautions = result.cautions;
    return status;
}

static int32_t one_co2_saturation(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_co2_saturation_result result = {.struct_size = sizeof result};
    int32_t status = carb_co2_saturation(inputs, &result, error);
    out[0] = result.abs_kpa;
    out[1] = result.liquid_density_kg_per_m3;
    out[2] = result.vapour_density_kg_per_m3;
    *cautions = result.cautions;
    return status;
}

static int32_t one_ambient_pressure(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {
    carb_ambient_pressure_result result = {.struct_size = sizeof result};
    int32_t status = carb_ambient_pressure(inputs, &result, error);
    out[0] = result.ambient_kpa;
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
    {"ambient_pressure", one_ambient_pressure, carb_ambient_pressure_n, {"ambient_kpa", NULL}},
};
