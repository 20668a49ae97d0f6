/* What pressure holds beer at 2.5 volumes of CO2 at 38 degrees Fahrenheit and sea level, and what does it hold under
 * 12 psi? Then the plan of a packaging day: packaging_day [request.json]. */
#include <carb.h>
#include <stdio.h>
#include <stdlib.h>

static int small_example(void) {
    carb_inputs inputs;
    carb_keg_pressure_result keg = {.struct_size = sizeof keg};
    carb_dissolved_co2_result co2 = {.struct_size = sizeof co2};
    carb_error error = {.struct_size = sizeof error};
    double psi, volumes;

    carb_inputs_init(&inputs, sizeof inputs);
    carb_inputs_set(&inputs, "volumes", 2.5, &error);
    carb_inputs_set(&inputs, "temperature_f", 38, &error);
    inputs.altitude_m = 0;
    if (carb_keg_pressure(&inputs, &keg, &error) != CARB_OK ||
        carb_convert("kpa", "psi", keg.gauge_kpa, &psi, &error) != CARB_OK) {
        fprintf(stderr, "%s\n", error.text);
        return EXIT_FAILURE;
    }
    printf("%.2f psi\n", psi);

    inputs.co2_g_per_l = CARB_NOT_GIVEN;
    carb_inputs_set(&inputs, "gauge_psi", 12, &error);
    if (carb_dissolved_co2(&inputs, &co2, &error) != CARB_OK ||
        carb_convert("co2_g_per_l", "volumes", co2.co2_g_per_l, &volumes, &error) != CARB_OK) {
        fprintf(stderr, "%s\n", error.text);
        return EXIT_FAILURE;
    }
    printf("%.3f volumes\n", volumes);
    return EXIT_SUCCESS;
}

static int plan(const char *path) {
    static char request[65536];
    carb_error error = {.struct_size = sizeof error};
    size_t length, needed = 0;
    int32_t danger = 0;
    char *page;
    FILE *file = fopen(path, "rb");

    if (file == NULL) {
        perror(path);
        return EXIT_FAILURE;
    }
    length = fread(request, 1, sizeof request, file);
    fclose(file);
    /* The first call asks how much room the page needs. */
    if (carb_plan_page(request, length, NULL, 0, &needed, NULL, &error) != CARB_BUFFER_TOO_SMALL) {
        fprintf(stderr, "%s: %s\n", path, error.text);
        return EXIT_FAILURE;
    }
    page = malloc(needed);
    if (page == NULL || carb_plan_page(request, length, page, needed, &needed, &danger, &error) != CARB_OK) {
        fprintf(stderr, "%s: %s\n", path, page == NULL ? "no memory" : error.text);
        free(page);
        return EXIT_FAILURE;
    }
    fputs(page, stdout);
    free(page);
    return danger ? EXIT_FAILURE : EXIT_SUCCESS;
}

int main(int argc, char **argv) {
    int code = small_example();
    return code != EXIT_SUCCESS || argc < 2 ? code : plan(argv[1]);
}
