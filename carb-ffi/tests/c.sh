#!/usr/bin/env bash
# Builds the library, checks the header in C and C++, runs the example and the conformance test in C.
set -euo pipefail
cd "$(dirname "$0")/../.."
: "${CC:=gcc}" "${CXX:=g++}" "${CARGO:=cargo}"
target=$(realpath -m "${CARGO_TARGET_DIR:-target}")
library=$target/debug
out=$target/c
mkdir -p "$out"

"$CARGO" build -q -p carb-ffi

# Programs ask for the library by its SONAME, which cargo does not make a file of.
abi=$(awk '$2 == "CARB_ABI_VERSION" {print $3}' carb-ffi/include/carb.h)
ln -sf "$library/libcarb.so" "$out/libcarb.so.$abi"

warnings=(-Wall -Wextra -pedantic -Werror)
echo '#include <carb.h>' > "$out/header.c"
cp "$out/header.c" "$out/header.cc"
for standard in c99 c11 c17; do
    "$CC" -std=$standard "${warnings[@]}" -Icarb-ffi/include -fsyntax-only "$out/header.c"
done
for standard in c++11 c++17; do
    "$CXX" -std=$standard "${warnings[@]}" -Icarb-ffi/include -fsyntax-only "$out/header.cc"
done

build() { # source, name
    "$CC" -std=c99 -O1 "${warnings[@]}" -Icarb-ffi/include "$1" -o "$out/$2" \
        -L"$library" -lcarb -Wl,-rpath,"$out"
}
build carb-ffi/examples/packaging_day.c packaging_day
build carb-ffi/tests/conformance.c conformance
# The static library takes along what the standard library of Rust needs.
"$CC" -std=c99 -O1 "${warnings[@]}" -Icarb-ffi/include carb-ffi/examples/packaging_day.c -o "$out/packaging_day_static" \
    "$library/libcarb.a" -lgcc_s -lutil -lrt -lpthread -lm -ldl

scenario=docs/scenarios/harbour_ale.json
"$out/packaging_day" "$scenario" > "$out/page.txt" && code=0 || code=$?
"$out/packaging_day_static" "$scenario" > "$out/page_static.txt" && static_code=0 || static_code=$?
cmp "$out/page.txt" "$out/page_static.txt"
[ "$code" = "$static_code" ]
[ "$(head -2 "$out/page.txt")" = $'11.21 psi\n2.576 volumes' ]
"$CARGO" run -q -p carb-core --features json --example packaging_day -- "$scenario" > "$out/page_rust.txt" && rust_code=0 || rust_code=$?
tail -n +3 "$out/page.txt" | cmp - "$out/page_rust.txt"
[ "$code" = "$rust_code" ]

"$out/conformance" tests/conformance/cases.tsv

if command -v valgrind > /dev/null; then
    valgrind -q --leak-check=full --error-exitcode=99 "$out/packaging_day" "$scenario" > "$out/page_valgrind.txt" && code=0 || code=$?
    [ "$code" = "$rust_code" ]
    cmp "$out/page.txt" "$out/page_valgrind.txt"
    echo "valgrind: no error, no leak"
else
    echo "valgrind is not there: left out"
fi
