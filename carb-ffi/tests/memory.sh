#!/usr/bin/env bash
# No error and no leak of memory, no race between threads, as valgrind sees it. Needs what examples.sh and
# conformance.sh built. What the examples print is not compared here: valgrind keeps no floating-point flags, and 3.19
# takes NaN for a number in two comparisons of AVX (EQ_UQ and NEQ_OQ), by which missing elements are found.
source "$(dirname "$0")/setup.sh"
have valgrind || { left_out valgrind "memory and races"; exit 0; }

memcheck() {
    valgrind -q --leak-check=full --show-leak-kinds="$leaks" --errors-for-leak-kinds="$leaks" --error-exitcode=99 "$@"
}
for compiler in "$CC" "$CXX"; do
    leaks=all
    ends_with 0 memcheck "$out/packaging_day_$compiler" "$scenario" > /dev/null
    leaks=definite,possible # a program that stops at once still holds the request
    ends_with 2 memcheck "$out/packaging_day_$compiler" "$out/wrong.json" > /dev/null 2>&1
done
leaks=all
memcheck "$out/conformance_$CC" "$cases" 40 1
valgrind -q --tool=helgrind --error-exitcode=99 "$out/threads" "$cases" 400
echo "valgrind: no error, no leak, no race"
