/* Eight threads go through the shared cases at once, each beginning in another floating-point state, and find what one
 * thread finds: threads cases.tsv [n], where n takes every nth line only. */
#define _POSIX_C_SOURCE 200112L
#include "cases.h"

#include <pthread.h>

enum { THREADS = 8 };

static pthread_barrier_t start;

typedef struct worker {
    pthread_t thread;
    const char *text;
    int nth, state;
    run found;
} worker;

static void *work(void *argument) {
    worker *self = (worker *)argument;
    pthread_barrier_wait(&start);
    check_cases(&self->found, self->text, self->nth, self->state);
    return NULL;
}

int main(int argc, char **argv) {
    char *text = read_cases(argc > 1 ? argv[1] : NULL);
    int nth = argc > 2 ? atoi(argv[2]) : 1, t, failures, values = 0;
    static worker workers[THREADS];
    run alone;

    if (nth < 1) {
        fputs("every which line? 1 takes all\n", stderr);
        return EXIT_FAILURE;
    }
    memset(&alone, 0, sizeof alone);
    check_cases(&alone, text, nth, 0);
    failures = alone.failures;
    if (pthread_barrier_init(&start, NULL, THREADS) != 0) {
        fputs("no barrier\n", stderr);
        return EXIT_FAILURE;
    }
    for (t = 0; t < THREADS; t++) {
        workers[t].text = text;
        workers[t].nth = nth;
        workers[t].state = t;
        if (pthread_create(&workers[t].thread, NULL, work, &workers[t]) != 0) {
            fputs("no thread\n", stderr);
            return EXIT_FAILURE;
        }
    }
    for (t = 0; t < THREADS; t++) {
        const run *found = &workers[t].found;
        pthread_join(workers[t].thread, NULL);
        failures += found->failures;
        values += found->values;
        if (found->values != alone.values || found->json != alone.json || found->arrays != alone.arrays ||
            found->bound != alone.bound || found->structs != alone.structs || found->errors != alone.errors ||
            found->states != alone.states) {
            fprintf(stderr, "thread %d checked something else than one thread alone\n", t);
            failures++;
        }
    }
    pthread_barrier_destroy(&start);
    free(text);
    printf("%d threads at once: %d answers in JSON, %d by structs, %d by arrays, %d by bound calls each; "
           "%d values bit for bit in all\n",
           THREADS, alone.json, alone.structs, alone.arrays, alone.bound, values);
    return failures == 0 && alone.structs > 0 && alone.arrays > 0 && alone.bound > 0 && alone.json > 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
