/* Breaks its contract on purpose: says that an array is one longer than it is, so that the library writes past its end.
 * An address sanitizer that watches the library too stops it there; what comes back has not been watched. */
#include <carb.h>
#include <stdio.h>
#include <stdlib.h>

int main(void) {
    enum { TOLD = 9, THERE = TOLD - 1 };
    static const double temperatures[TOLD] = {1, 2, 3, 4, 5, 6, 7, 8, 9};
    double *out = malloc(THERE * sizeof *out);
    int32_t status[TOLD];
    carb_series series = {"temperature_c", temperatures, TOLD};
    carb_inputs inputs;

    carb_inputs_init(&inputs, sizeof inputs);
    carb_inputs_set(&inputs, "volumes", 2.5, NULL);
    carb_inputs_set(&inputs, "altitude_m", 0, NULL);
    if (out == NULL || carb_keg_pressure_n(&inputs, &series, 1, "gauge_kpa", TOLD, out, status, NULL) != CARB_OK) {
        return EXIT_FAILURE;
    }
    printf("nobody saw it: %.2f kPa\n", out[0]);
    free(out);
    return EXIT_SUCCESS;
}
