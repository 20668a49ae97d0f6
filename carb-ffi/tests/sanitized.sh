#!/usr/bin/env bash
# Undefined behaviour in the C programs, and, with a nightly toolchain that brings its runtime, addresses in the library
# too: sanitized.sh [build]. In an ordinary library what it writes itself is not seen; overrun.c proves that it is here.
source "$(dirname "$0")/setup.sh"
watched=$target/sanitized
host=$(rustc -vV | sed -n 's/^host: //p')
binaries=$watched/$host/debug

nightly() { # whether it is there; nothing is fetched
    have rustup && rustup toolchain list | grep '^nightly' > /dev/null &&
        compgen -G "$(rustup run nightly rustc --print sysroot)/lib/rustlib/$host/lib/librustc*_rt.asan.a" > /dev/null
}

# Whether a compiler can link with a sanitizer.
links() { # compiler, sanitizers
    echo 'int main(void) { return 0; }' | "$1" -fsanitize="$2" -x c - -o "$out/links" 2> /dev/null && "$out/links"
}

if [ "${1:-}" = build ]; then
    nightly || exit 0
    # Without optimisation it is there in half the time, and hides nothing.
    RUSTFLAGS=-Zsanitizer=address CARGO_TARGET_DIR=$watched CARGO_PROFILE_DEV_OPT_LEVEL=0 CARGO_INCREMENTAL=0 \
        rustup run nightly cargo build -q -p carb-ffi --target "$host"
    soname "$binaries" "$out/sanitized"
    exit 0
fi

flags=(-g -fno-sanitize-recover=all)
for compiler in "${c_compilers[@]}"; do
    if ! links "$compiler" undefined; then
        left_out "the runtime of $compiler" "its undefined-behaviour sanitizer"
        continue
    fi
    build carb-ffi/tests/conformance.c ub "$compiler" "${c99[@]}" "${flags[@]}" -fsanitize=undefined
    "$out/ub" "$cases" 1 1 > /dev/null
    build carb-ffi/examples/packaging_day.c ub "$compiler" "${c99[@]}" "${flags[@]}" -fsanitize=undefined
    "$out/ub" "$scenario" | cmp - "$out/first_page.txt"
    echo "$compiler: no undefined behaviour"
done

if ! nightly; then left_out "a nightly toolchain with its address sanitizer" "addresses in the library"; exit 0; fi

watch() { # source, program, compiler and its flags
    local source=$1 program=$2
    shift 2
    "$@" "${flags[@]}" -fsanitize=address,undefined "$source" -x none -o "$out/sanitized/$program" \
        -L"$binaries" -lcarb -lm -lpthread -Wl,-rpath,"$out/sanitized"
}

for at in "${!c_compilers[@]}"; do
    c=${c_compilers[at]} cpp=${cpp_compilers[at]:-$CXX}
    if ! links "$c" address,undefined; then left_out "the runtime of $c" "its address sanitizer"; continue; fi
    watch carb-ffi/tests/overrun.c overrun "$c" "${c99[@]}"
    if "$out/sanitized/overrun" > "$out/overrun.txt" 2>&1; then
        echo "a write of the library past an array of the caller's was not seen" >&2
        exit 1
    fi
    grep -q 'heap-buffer-overflow' "$out/overrun.txt"
    grep -A1 '^WRITE of size 8' "$out/overrun.txt" | grep -q '\.rs:'
    watch carb-ffi/examples/packaging_day.c day_c "$c" "${c99[@]}"
    watch carb-ffi/examples/packaging_day.cc day_cpp "$cpp" "${cpp17[@]}"
    for program in day_c day_cpp; do
        "$out/sanitized/$program" "$scenario" | cmp - "$out/first_page.txt"
        ends_with 2 "$out/sanitized/$program" "$out/wrong.json" > /dev/null 2>&1
    done
    watch carb-ffi/tests/conformance.c conformance "$c" "${c99[@]}"
    watch carb-ffi/tests/threads.c threads "$c" "${c99[@]}"
    "$out/sanitized/conformance" "$cases" 5 1
    "$out/sanitized/threads" "$cases" 50
    echo "$c with a watched library: no wrong address, and a planted one is seen"
done
