/* A packaging day in C99: packaging_day request.json
 *
 * Single calls, an array, a conversion and an error first, then the plan of the request: bottles and keg. Exits with
 * 1 where somebody may be hurt, with 2 where there is no plan. packaging_day.cc and packaging_day.lua
 * print the same. */
#include <carb.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { DANGER = 1, NO_ANSWER = 2, CELLARS = 5 };

static void stop(const char *what, const char *why) {
    fprintf(stderr, "%s: %s\n", what, why);
    exit(NO_ANSWER);
}

/* Every call returns a status; what was wrong, and what to do, stands in the error. */
static void check(const char *what, int32_t status, const carb_error *error) {
    if (status != CARB_OK) {
        stop(what, error->text);
    }
}

static double convert(double value, const char *from, const char *to) {
    carb_error error = {.struct_size = sizeof error};
    double converted;
    check("carb_convert", carb_convert(from, to, value, &converted, &error), &error);
    return converted;
}

/* Beer of 2.4 volumes at 4 °C, 240 m above the sea. Inputs are set by any of their names, or as members. */
static carb_inputs cold_beer(void) {
    carb_inputs inputs;
    carb_error error = {.struct_size = sizeof error};
    carb_inputs_init(&inputs, sizeof inputs);
    check("volumes", carb_inputs_set(&inputs, "volumes", 2.4, &error), &error);
    inputs.temperature_c = 4;
    inputs.altitude_m = 240;
    inputs.beverage = CARB_BEVERAGE_BEER;
    return inputs;
}

static void single_answers(void) {
    carb_inputs inputs = cold_beer();
    carb_keg_pressure_result keg = {.struct_size = sizeof keg};
    carb_dissolved_co2_result held = {.struct_size = sizeof held};
    carb_error error = {.struct_size = sizeof error};

    check("carb_keg_pressure", carb_keg_pressure(&inputs, &keg, &error), &error);
    printf("2.4 volumes at 4 °C and 240 m: %.2f bar, %.1f psi\n", convert(keg.gauge_kpa, "kpa", "bar"),
           convert(keg.gauge_kpa, "kpa", "psi"));

    inputs.co2_g_per_l = CARB_NOT_GIVEN;
    check("gauge_psi", carb_inputs_set(&inputs, "gauge_psi", 12, &error), &error);
    check("carb_dissolved_co2", carb_dissolved_co2(&inputs, &held, &error), &error);
    printf("under 12 psi it holds %.2f g/L, %.2f volumes\n", held.co2_g_per_l,
           convert(held.co2_g_per_l, "co2_g_per_l", "volumes"));
}

/* One call for many temperatures; each has a status of its own, and a missing one stays missing. */
static void by_cellar(void) {
    const double cellars[CELLARS] = {2, 6, 10, NAN, 18};
    const carb_series series = {"temperature_c", cellars, CELLARS};
    carb_inputs inputs = cold_beer();
    carb_error error = {.struct_size = sizeof error};
    double bar[CELLARS];
    int32_t status[CELLARS];
    int i;

    inputs.temperature_c = CARB_NOT_GIVEN;
    check("carb_keg_pressure_n",
          carb_keg_pressure_n(&inputs, &series, 1, "gauge_bar", CELLARS, bar, status, &error), &error);
    puts("the same by the cellar's temperature:");
    for (i = 0; i < CELLARS; i++) {
        if (status[i] == CARB_NOT_A_NUMBER) {
            puts("   no reading");
        } else if (status[i] < CARB_OK) {
            printf("  %2.0f °C  no answer, status %d\n", cellars[i], (int)status[i]);
        } else {
            printf("  %2.0f °C  %.2f bar%s\n", cellars[i], bar[i],
                   status[i] & CARB_CAUTION_CHART_TEMPERATURE ? ", beyond the printed chart" : "");
        }
    }
}

/* What is refused says why. */
static void refused_answer(void) {
    carb_inputs inputs = cold_beer();
    carb_keg_pressure_result keg = {.struct_size = sizeof keg};
    carb_error error = {.struct_size = sizeof error};
    inputs.altitude_m = 24000;
    if (carb_keg_pressure(&inputs, &keg, &error) != CARB_OUT_OF_RANGE) {
        stop("an altitude of 24 km", "was not refused");
    }
    printf("refused: %s\n\n", error.text);
}

/* A whole file as a text; the caller frees it. */
static char *read_file(const char *path) {
    size_t length = 0, capacity = 4096;
    char *text = malloc(capacity);
    FILE *file = fopen(path, "rb");
    if (file == NULL) {
        stop(path, "cannot be read");
    }
    while (text != NULL) {
        length += fread(text + length, 1, capacity - 1 - length, file);
        if (length < capacity - 1) {
            text[length] = '\0';
            break;
        }
        capacity *= 2;
        text = realloc(text, capacity);
    }
    fclose(file);
    if (text == NULL) {
        stop(path, "no memory");
    }
    return text;
}

static int plan(const char *path) {
    carb_error error = {.struct_size = sizeof error};
    char *request = read_file(path), *page;
    size_t length = strlen(request), needed = 0;
    int32_t danger = 0, status;

    /* The first call asks how much room the page needs. */
    status = carb_plan_page(request, length, NULL, 0, &needed, NULL, &error);
    if (status != CARB_BUFFER_TOO_SMALL) {
        check(path, status, &error);
    }
    page = malloc(needed);
    if (page == NULL) {
        stop(path, "no memory");
    }
    check(path, carb_plan_page(request, length, page, needed, &needed, &danger, &error), &error);
    fputs(page, stdout);
    free(page);
    free(request);
    return danger ? DANGER : EXIT_SUCCESS;
}

int main(int argc, char **argv) {
    if (argc != 2) {
        stop("which file?", "give the path of a request, such as docs/scenarios/harbour_ale.json");
    }
    single_answers();
    by_cellar();
    refused_answer();
    return plan(argv[1]);
}
