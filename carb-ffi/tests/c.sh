#!/usr/bin/env bash
# The C face: builds the library, and where it can once more under the address sanitizer; then one script after the other.
source "$(dirname "$0")/setup.sh"

"$CARGO" build -q -p carb-ffi "${built[@]}"
soname "$library" "$out"
bash carb-ffi/tests/sanitized.sh build

for script in header conformance examples memory sanitized installed; do
    start=$SECONDS
    bash "carb-ffi/tests/$script.sh"
    echo "   $script: $((SECONDS - start)) s"
done
