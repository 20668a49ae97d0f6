/* Requires the bytes and the bits of the shared cases: conformance cases.tsv [n [rounds]], where n takes every nth line
 * only. In each round the floating-point states take turns; after as many rounds as there are states, the usual number,
 * every case was checked in every one. */
#include "cases.h"

int main(int argc, char **argv) {
    char *text = read_cases(argc > 1 ? argv[1] : NULL);
    int nth = argc > 2 ? atoi(argv[2]) : 1, rounds = argc > 3 ? atoi(argv[3]) : STATES, round;
    carb_inputs fresh;
    run all;

    memset(&all, 0, sizeof all);
    if (carb_abi_version() != CARB_ABI_VERSION || carb_inputs_init(&fresh, sizeof fresh) != CARB_OK ||
        fresh.temperature_c != CARB_NOT_GIVEN || fresh.beverage != CARB_BEVERAGE_NOT_GIVEN) {
        fputs("the header and the library do not belong together\n", stderr);
        return EXIT_FAILURE;
    }
    if (nth < 1 || rounds < 1) {
        fputs("every which line, how often? 1 takes all, or goes once\n", stderr);
        return EXIT_FAILURE;
    }
    for (round = 0; round < rounds; round++) {
        check_cases(&all, text, nth, round);
    }
    free(text);
    printf("cases %d: %d answers in JSON byte for byte, %d by structs, %d errors by structs, %d by arrays, "
           "%d by bound calls; "
           "%d values bit for bit",
           all.lines / rounds, all.json / rounds, all.structs / rounds, all.errors / rounds, all.arrays / rounds,
           all.bound / rounds, all.values / rounds);
    if (all.keeps_states) {
        printf("; %d floating-point states found as they were, in %d rounds\n", all.states, rounds);
    } else {
        puts("; floating-point flags are not kept here, and not looked at");
    }
    if (all.structs == 0 || all.arrays == 0 || all.bound == 0 || all.errors == 0) {
        fputs("too little was checked\n", stderr);
        all.failures++;
    }
    return all.failures == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
