/* Checks the cases that all languages share, cases.tsv: the same bytes and the same bits, whatever the floating-point
 * state of the caller. A run keeps what it found to itself, so that several can be at work at once. C99 and C++17. */
#ifndef CASES_H
#define CASES_H

#include <carb.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "float_state.h"
#include "functions.h"

enum { COLUMNS = 7, MOST_PAIRS = 64, COPIES = 3 };

static const int function_count = (int)(sizeof functions / sizeof functions[0]);

typedef struct pair {
    char *name;
    char *value;
} pair;

/* One going through the cases, and what it found. */
typedef struct run {
    int line, failures;
    int lines, json, structs, errors, arrays, bound, values, states;
    int state;           /* the floating-point state of the next call */
    float_state entered; /* that of the call under way */
    int keeps_states;    /* whether this machine does */
} run;

static void fail(run *at, const char *what, const char *wanted, const char *found) {
    fprintf(stderr, "line %d: %s\n  wanted %s\n  found  %s\n", at->line, what, wanted, found);
    at->failures++;
}

static void expect_code(run *at, const char *what, int32_t wanted, int32_t found) {
    if (wanted != found) {
        char a[16], b[16];
        snprintf(a, sizeof a, "%d", (int)wanted);
        snprintf(b, sizeof b, "%d", (int)found);
        fail(at, what, a, b);
    }
}

static void expect_bits(run *at, const char *name, double wanted, double found) {
    at->values++;
    if (memcmp(&wanted, &found, sizeof wanted) != 0) {
        char a[32], b[32];
        snprintf(a, sizeof a, "%.17g", wanted);
        snprintf(b, sizeof b, "%.17g", found);
        fail(at, name, a, b);
    }
}

/* Takes a floating-point state for one call. */
static void enter(run *at) {
    at->entered = float_state_take(at->keeps_states ? at->state : STATE_DEFAULT);
}

/* Requires that the call left the state as it was, and goes back to the usual one. */
static void leave(run *at, const char *what) {
    float_state left = float_state_now();
    fesetenv(FE_DFL_ENV);
    if (at->keeps_states) {
        at->states++;
        if (!float_state_same(at->entered, left)) {
            char a[64], b[64];
            float_state_tell(at->entered, a, sizeof a);
            float_state_tell(left, b, sizeof b);
            fail(at, what, a, b);
        }
    }
}

static void *room(size_t size) {
    void *memory = malloc(size);
    if (memory == NULL) {
        fputs("no memory\n", stderr);
        exit(EXIT_FAILURE);
    }
    return memory;
}

/* Splits "name=value;name=value" where it lies. */
static int split(char *text, pair *pairs) {
    int count = 0;
    char *next = text;
    while (next != NULL && *next != '\0' && count < MOST_PAIRS) {
        char *name = next, *equals = strchr(name, '=');
        next = strchr(name, ';');
        if (next != NULL) {
            *next++ = '\0';
        }
        if (equals == NULL) {
            continue;
        }
        *equals = '\0';
        pairs[count].name = name;
        pairs[count].value = equals + 1;
        count++;
    }
    return count;
}

static int number(const char *text, double *value) {
    char *end;
    *value = strtod(text, &end);
    return end != text && *end == '\0';
}

/* Sets one input in the struct, a number or a choice, by its name. */
static int32_t set(run *at, carb_inputs *inputs, const pair *input, carb_error *error) {
    double value;
    int is_number = number(input->value, &value);
    int32_t status;
    enter(at);
    status = is_number ? carb_inputs_set(inputs, input->name, value, error)
                       : carb_inputs_choose(inputs, input->name, input->value, error);
    leave(at, is_number ? "carb_inputs_set" : "carb_inputs_choose");
    return status;
}

static void check_json(run *at, const char *function, const char *request, const char *answer, int32_t code) {
    size_t needed = 0, length = strlen(request), size = strlen(answer) + 1;
    int32_t status;
    char *buffer;
    enter(at);
    status = carb_json(function, request, length, NULL, 0, &needed);
    leave(at, "carb_json without room");
    expect_code(at, "carb_json without room", CARB_BUFFER_TOO_SMALL, status);
    if (needed != size) {
        fail(at, "carb_json: the room needed", answer, "another length");
        size = needed > size ? needed : size;
    }
    buffer = (char *)room(size);
    enter(at);
    status = carb_json(function, request, length, buffer, size, &needed);
    leave(at, "carb_json");
    expect_code(at, "carb_json", code, status);
    if (strcmp(buffer, answer) != 0) {
        fail(at, "carb_json", answer, buffer);
    }
    free(buffer);
    at->json++;
}

/* The struct function; gives the bits of its cautions. */
static void check_struct(run *at, int function, const pair *inputs, int count, int32_t code, const char *parameter,
                         const pair *outputs, int output_count, uint32_t *cautions) {
    carb_inputs given;
    carb_error error;
    double out[MOST_OUTPUTS];
    int32_t status;
    int i, o;

    error.struct_size = sizeof error;
    status = carb_inputs_init(&given, sizeof given);
    for (i = 0; i < count && status == CARB_OK; i++) {
        status = set(at, &given, &inputs[i], &error);
    }
    if (status == CARB_OK) {
        enter(at);
        status = functions[function].one(&given, out, cautions, &error);
        leave(at, functions[function].name);
    }
    expect_code(at, functions[function].name, code, status);
    if (code != CARB_OK) {
        if (strcmp(error.parameter, parameter) != 0 || error.code != code || error.text[0] == '\0') {
            fail(at, "the parameter at fault", parameter, error.parameter);
        }
        at->errors++;
        return;
    }
    for (o = 0; functions[function].outputs[o] != NULL; o++) {
        double wanted;
        for (i = 0; i < output_count && strcmp(outputs[i].name, functions[function].outputs[o]) != 0; i++) {
        }
        if (i == output_count || !number(outputs[i].value, &wanted)) {
            fail(at, "an output in the file", functions[function].outputs[o], "none");
        } else {
            expect_bits(at, outputs[i].name, wanted, out[o]);
        }
    }
    at->structs++;
}

/* The same output by a function that is kept with its request, where all its numbers may vary. */
static void check_bound(run *at, int function, const carb_inputs *given, const carb_series *series, size_t count,
                        const char *output, double wanted, int32_t expected) {
    const char *names[MOST_PAIRS];
    double numbers[MOST_PAIRS], out = 0;
    carb_bound *bound = NULL;
    carb_error error;
    int32_t status;
    size_t s;

    for (s = 0; s < count; s++) {
        if (series[s].count != COPIES) {
            return;
        }
        names[s] = series[s].name;
        numbers[s] = series[s].values[0];
    }
    error.struct_size = sizeof error;
    enter(at);
    status = carb_bind(functions[function].name, given, names, count, output, &bound, &error);
    leave(at, "carb_bind");
    expect_code(at, "carb_bind", CARB_OK, status);
    if (bound == NULL) {
        return;
    }
    enter(at);
    status = carb_bound_call(bound, numbers, count, &out);
    leave(at, "carb_bound_call");
    expect_code(at, "the status of a bound call", expected, status);
    expect_bits(at, output, wanted, out);
    carb_bound_free(bound);
    at->bound++;
}

/* The array function, all numbers as series under the names that were given, for every shown name of every output. */
static void check_arrays(run *at, int function, const pair *inputs, int count, const pair *outputs, int output_count,
                         const uint32_t *cautions) {
    double values[MOST_PAIRS][COPIES];
    carb_series series[MOST_PAIRS];
    carb_inputs given;
    carb_error error;
    size_t series_count = 0;
    int i, o, copy;

    error.struct_size = sizeof error;
    carb_inputs_init(&given, sizeof given);
    for (i = 0; i < count; i++) {
        double value;
        if (!number(inputs[i].value, &value)) {
            expect_code(at, inputs[i].name, CARB_OK, set(at, &given, &inputs[i], &error));
            continue;
        }
        for (copy = 0; copy < COPIES; copy++) {
            values[series_count][copy] = value;
        }
        series[series_count].name = inputs[i].name;
        series[series_count].values = values[series_count];
        series[series_count].count = COPIES;
        series_count++;
    }
    for (o = 0; o < output_count; o++) {
        double out[COPIES], wanted = 0;
        int32_t status[COPIES], result, expected;
        for (;;) {
            size_t s;
            enter(at);
            result = functions[function].n(&given, series, series_count, outputs[o].name, COPIES, out, status, &error);
            leave(at, functions[function].name);
            if (result != CARB_WRONG_TYPE) {
                break;
            }
            /* What may not vary is refused by name; it is given once instead. */
            for (s = 0; s < series_count && strcmp(series[s].name, error.parameter) != 0; s++) {
            }
            if (s == series_count || series[s].count == 1) {
                break;
            }
            series[s].count = 1;
        }
        expect_code(at, functions[function].name, CARB_OK, result);
        if (result != CARB_OK) {
            fprintf(stderr, "  %s: %s\n", error.parameter, error.text);
            return;
        }
        number(outputs[o].value, &wanted);
        expected = cautions != NULL ? (int32_t)*cautions : status[0];
        for (copy = 0; copy < COPIES; copy++) {
            expect_bits(at, outputs[o].name, wanted, out[copy]);
            if (status[copy] < 0 || status[copy] != expected) {
                expect_code(at, "the status of an element", expected, status[copy]);
            }
        }
        check_bound(at, function, &given, series, series_count, outputs[o].name, wanted, expected);
    }
    at->arrays++;
}

static int is_job(const char *function) {
    return strcmp(function, "plan") == 0 || strcmp(function, "bottling") == 0 || strcmp(function, "kegging") == 0 ||
           strcmp(function, "crosscheck") == 0;
}

/* Checks a case in one floating-point state. */
static void check(run *at, char *columns[COLUMNS]) {
    const char *function = columns[0], *parameter = columns[3], *answer = columns[6];
    pair inputs[MOST_PAIRS], outputs[MOST_PAIRS];
    int32_t code = (int32_t)strtol(columns[2], NULL, 10);
    int count, output_count, i, first = 1, found = 0;
    uint32_t cautions = 0;

    at->lines++;
    check_json(at, function, columns[5], answer, code);
    while (found < function_count && strcmp(functions[found].name, function) != 0) {
        found++;
    }
    if (found == function_count) {
        /* Jobs and tables are had as JSON only. */
        if (!is_job(function) && code == CARB_OK && strstr(answer, "\"table\":") == NULL) {
            fail(at, "a function of the library", function, "none");
        }
        return;
    }
    count = split(columns[1], inputs);
    output_count = split(columns[4], outputs);
    for (i = 0; i < count; i++) {
        first = first && carb_is_first_name(inputs[i].name);
    }
    if (first) {
        check_struct(at, found, inputs, count, code, parameter, outputs, output_count, &cautions);
    }
    if (code == CARB_OK) {
        check_arrays(at, found, inputs, count, outputs, output_count, first ? &cautions : NULL);
    }
}

/* The file of cases as one text; the caller frees it. */
static char *read_cases(const char *path) {
    FILE *file = path != NULL ? fopen(path, "rb") : NULL;
    char *text;
    long size;
    if (file == NULL) {
        fputs("which cases? give the path of cases.tsv\n", stderr);
        exit(EXIT_FAILURE);
    }
    fseek(file, 0, SEEK_END);
    size = ftell(file);
    rewind(file);
    text = (char *)room((size_t)size + 1);
    text[fread(text, 1, (size_t)size, file)] = '\0';
    fclose(file);
    return text;
}

/* Goes through every nth line of the cases, each in one floating-point state: the states take turns, beginning with the
 * one that is told. The text is left as it was. */
static void check_cases(run *at, const char *text, int nth, int state) {
    const char *line = text;
    at->line = 0;
    at->keeps_states = float_state_kept();
    while (*line != '\0') {
        const char *end = strchr(line, '\n');
        size_t length = end != NULL ? (size_t)(end - line) : strlen(line);
        at->line++;
        if (at->line > 1 && at->line % nth == 0) {
            char *columns[COLUMNS], *copy = (char *)room(length + 1), *next = copy;
            int count = 0;
            memcpy(copy, line, length);
            copy[length] = '\0';
            while (next != NULL && count < COLUMNS) {
                columns[count++] = next;
                next = strchr(next, '\t');
                if (next != NULL) {
                    *next++ = '\0';
                }
            }
            at->state = (at->line + state) % STATES;
            if (count == COLUMNS && next == NULL) {
                check(at, columns);
            } else {
                fail(at, "a line of seven columns", "7", "another number");
            }
            free(copy);
        }
        line += length + (end != NULL);
    }
}

#endif
