/* Requires the bytes and the bits of the shared cases: conformance cases.tsv [n], where n takes every nth line only. Every
 * case is checked in every floating-point state; of a part, each in one. */
#include "cases.h"

int main(int argc, char **argv) {
    char *text = read_cases(argc > 1 ? argv[1] : NULL);
    int nth = argc > 2 ? atoi(argv[2]) : 1, state, rounds;
    carb_inputs fresh;
    run all;

    memset(&all, 0, sizeof all);
    if (carb_abi_version() != CARB_ABI_VERSION || carb_inputs_init(&fresh, sizeof fresh) != CARB_OK ||
        fresh.temperature_c != CARB_NOT_GIVEN || fresh.beverage != CARB_BEVERAGE_NOT_GIVEN) {
        fputs("the header and the library do not belong together\n", stderr);
        return EXIT_FAILURE;
    }
    if (nth < 1) {
        fputs("every which line? 1 takes all\n", stderr);
        return EXIT_FAILURE;
    }
    rounds = nth == 1 && float_state_kept() ? STATES : 1;
    for (state = 0; state < rounds; state++) {
        check_cases(&all, text, nth, state);
    }
    free(text);
    printf("cases %d: %d answers in JSON byte for byte, %d by structs, %d errors by structs, %d by arrays; "
           "%d values bit for bit",
           all.lines / rounds, all.json / rounds, all.structs / rounds, all.errors / rounds, all.arrays / rounds,
           all.values / rounds);
    if (all.keeps_states) {
        printf("; %d floating-point states found as they were, in %d rounds\n", all.states, rounds);
    } else {
        puts("; floating-point flags are not kept here, and not looked at");
    }
    if (all.structs == 0 || all.arrays == 0 || all.errors == 0) {
        fputs("too little was checked\n", stderr);
        all.failures++;
    }
    return all.failures == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
