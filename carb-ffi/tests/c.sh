#!/usr/bin/env bash
# The C face: builds the library for debugging, for handing out and, where it can, under the address sanitizer; then one
# script after the other.
source "$(dirname "$0")/setup.sh"

# With the Rust example of examples.sh, so that the core is built once for both.
"$CARGO" build -q -p carb-ffi -p carb-core --features carb-core/json --lib --example packaging_day
soname "$library" "$out"
# The other two at once; each has a folder of its own.
"$CARGO" build -q --release -p carb-ffi &
release=$!
bash carb-ffi/tests/sanitized.sh build
wait "$release"

for script in header conformance examples memory sanitized installed; do
    start=$SECONDS
    bash "carb-ffi/tests/$script.sh"
    echo "   $script: $((SECONDS - start)) s"
done
