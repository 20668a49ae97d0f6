/* Reads the cases that all languages share, and requires the same bytes and the same bits: conformance cases.tsv */
#include <carb.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "functions.h"

enum { COLUMNS = 7, MOST_PAIRS = 64, COPIES = 3 };

typedef struct pair {
    char *name;
    char *value;
} pair;

static int line_number, failures;
static struct {
    int lines, json, structs, errors, arrays, values;
} checked;

static void fail(const char *what, const char *wanted, const char *found) {
    fprintf(stderr, "line %d: %s\n  wanted %s\n  found  %s\n", line_number, what, wanted, found);
    failures++;
}

static void expect_code(const char *what, int32_t wanted, int32_t found) {
    if (wanted != found) {
        char a[16], b[16];
        snprintf(a, sizeof a, "%d", (int)wanted);
        snprintf(b, sizeof b, "%d", (int)found);
        fail(what, a, b);
    }
}

static void expect_bits(const char *name, double wanted, double found) {
    checked.values++;
    if (memcmp(&wanted, &found, sizeof wanted) != 0) {
        char a[32], b[32];
        snprintf(a, sizeof a, "%.17g", wanted);
        snprintf(b, sizeof b, "%.17g", found);
        fail(name, a, b);
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
static int32_t set(carb_inputs *inputs, const pair *input, carb_error *error) {
    double value;
    if (number(input->value, &value)) {
        return carb_inputs_set(inputs, input->name, value, error);
    }
    return carb_inputs_choose(inputs, input->name, input->value, error);
}

static void check_json(const char *function, const char *request, const char *answer, int32_t code) {
    size_t needed = 0, length = strlen(request), size = strlen(answer) + 1;
    char *buffer;
    expect_code("carb_json without room", CARB_BUFFER_TOO_SMALL, carb_json(function, request, length, NULL, 0, &needed));
    if (needed != size) {
        fail("carb_json: the room needed", answer, "another length");
        size = needed > size ? needed : size;
    }
    buffer = room(size);
    expect_code("carb_json", code, carb_json(function, request, length, buffer, size, &needed));
    if (strcmp(buffer, answer) != 0) {
        fail("carb_json", answer, buffer);
    }
    free(buffer);
    checked.json++;
}

/* The struct function; gives the bits of its cautions. */
static void check_struct(int at, const pair *inputs, int count, int32_t code, const char *parameter, const pair *outputs,
                         int output_count, uint32_t *cautions) {
    carb_inputs given;
    carb_error error = {.struct_size = sizeof error};
    double out[MOST_OUTPUTS];
    int32_t status;
    int i, o;

    status = carb_inputs_init(&given, sizeof given);
    for (i = 0; i < count && status == CARB_OK; i++) {
        status = set(&given, &inputs[i], &error);
    }
    if (status == CARB_OK) {
        status = functions[at].one(&given, out, cautions, &error);
    }
    expect_code(functions[at].name, code, status);
    if (code != CARB_OK) {
        if (strcmp(error.parameter, parameter) != 0 || error.code != code || error.text[0] == '\0') {
            fail("the parameter at fault", parameter, error.parameter);
        }
        checked.errors++;
        return;
    }
    for (o = 0; functions[at].outputs[o] != NULL; o++) {
        double wanted;
        for (i = 0; i < output_count && strcmp(outputs[i].name, functions[at].outputs[o]) != 0; i++) {
        }
        if (i == output_count || !number(outputs[i].value, &wanted)) {
            fail("an output in the file", functions[at].outputs[o], "none");
        } else {
            expect_bits(outputs[i].name, wanted, out[o]);
        }
    }
    checked.structs++;
}

/* The array function, all numbers as series under the names that were given, for every shown name of every output. */
static void check_arrays(int at, const pair *inputs, int count, const pair *outputs, int output_count,
                         const uint32_t *cautions) {
    static double values[MOST_PAIRS][COPIES];
    carb_series series[MOST_PAIRS];
    carb_inputs given;
    carb_error error = {.struct_size = sizeof error};
    size_t series_count = 0;
    int i, o, copy;

    carb_inputs_init(&given, sizeof given);
    for (i = 0; i < count; i++) {
        double value;
        if (!number(inputs[i].value, &value)) {
            expect_code(inputs[i].name, CARB_OK, set(&given, &inputs[i], &error));
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
        int32_t status[COPIES];
        int32_t result = functions[at].n(&given, series, series_count, outputs[o].name, COPIES, out, status, &error);
        /* What may not vary is refused by name; it is given once instead. */
        while (result == CARB_WRONG_TYPE) {
            size_t s;
            for (s = 0; s < series_count && strcmp(series[s].name, error.parameter) != 0; s++) {
            }
            if (s == series_count || series[s].count == 1) {
                break;
            }
            series[s].count = 1;
            result = functions[at].n(&given, series, series_count, outputs[o].name, COPIES, out, status, &error);
        }
        expect_code(functions[at].name, CARB_OK, result);
        if (result != CARB_OK) {
            fprintf(stderr, "  %s: %s\n", error.parameter, error.text);
            return;
        }
        number(outputs[o].value, &wanted);
        for (copy = 0; copy < COPIES; copy++) {
            expect_bits(outputs[o].name, wanted, out[copy]);
            if (status[copy] < 0 || status[copy] != status[0] || (cautions != NULL && (uint32_t)status[copy] != *cautions)) {
                expect_code("the status of an element", cautions != NULL ? (int32_t)*cautions : status[0], status[copy]);
            }
        }
    }
    checked.arrays++;
}

static void check(char *columns[COLUMNS]) {
    const char *function = columns[0], *parameter = columns[3], *answer = columns[6];
    pair inputs[MOST_PAIRS], outputs[MOST_PAIRS];
    int32_t code = (int32_t)strtol(columns[2], NULL, 10);
    int count, output_count, at, i, first = 1;
    uint32_t cautions = 0;

    checked.lines++;
    check_json(function, columns[5], answer, code);
    for (at = 0; at < (int)(sizeof functions / sizeof functions[0]); at++) {
        if (strcmp(functions[at].name, function) == 0) {
            break;
        }
    }
    if (at == (int)(sizeof functions / sizeof functions[0])) {
        /* Jobs and tables are had as JSON only. */
        int job = strcmp(function, "plan") == 0 || strcmp(function, "bottling") == 0 ||
                  strcmp(function, "kegging") == 0 || strcmp(function, "crosscheck") == 0;
        if (!job && code == CARB_OK && strstr(answer, "\"table\":") == NULL) {
            fail("a function of the library", function, "none");
        }
        return;
    }
    count = split(columns[1], inputs);
    output_count = split(columns[4], outputs);
    for (i = 0; i < count; i++) {
        first = first && carb_is_first_name(inputs[i].name);
    }
    if (first) {
        check_struct(at, inputs, count, code, parameter, outputs, output_count, &cautions);
    }
    if (code == CARB_OK) {
        check_arrays(at, inputs, count, outputs, output_count, first ? &cautions : NULL);
    }
}

int main(int argc, char **argv) {
    FILE *file = argc > 1 ? fopen(argv[1], "rb") : NULL;
    char *text, *line;
    long size;
    carb_inputs fresh;

    if (file == NULL) {
        fputs("which cases? give the path of cases.tsv\n", stderr);
        return EXIT_FAILURE;
    }
    fseek(file, 0, SEEK_END);
    size = ftell(file);
    rewind(file);
    text = room((size_t)size + 1);
    text[fread(text, 1, (size_t)size, file)] = '\0';
    fclose(file);

    if (carb_abi_version() != CARB_ABI_VERSION || carb_inputs_init(&fresh, sizeof fresh) != CARB_OK ||
        fresh.temperature_c != CARB_NOT_GIVEN || fresh.beverage != CARB_BEVERAGE_NOT_GIVEN) {
        fputs("the header and the library do not belong together\n", stderr);
        return EXIT_FAILURE;
    }
    for (line = text; line != NULL && *line != '\0';) {
        char *columns[COLUMNS], *end = strchr(line, '\n'), *next = line;
        int count = 0;
        if (end != NULL) {
            *end++ = '\0';
        }
        line_number++;
        while (next != NULL && count < COLUMNS) {
            columns[count++] = next;
            next = strchr(next, '\t');
            if (next != NULL) {
                *next++ = '\0';
            }
        }
        if (count != COLUMNS || next != NULL) {
            fail("a line of seven columns", "7", "another number");
        } else if (line_number > 1) {
            check(columns);
        }
        line = end;
    }
    free(text);
    printf("cases %d: %d answers in JSON byte for byte, %d by structs, %d errors by structs, %d by arrays; "
           "%d values bit for bit\n",
           checked.lines, checked.json, checked.structs, checked.errors, checked.arrays, checked.values);
    if (checked.structs == 0 || checked.arrays == 0 || checked.errors == 0) {
        fputs("too little was checked\n", stderr);
        failures++;
    }
    return failures == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
