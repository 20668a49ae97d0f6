#!/usr/bin/env bash
# The shared cases in C99, C++17 and LuaJIT, and by eight threads at once: every language finds the same number of them.
source "$(dirname "$0")/setup.sh"
found=()
how=() # in every floating-point state; the other programs go through the cases once, where the states take turns

check() { # who, command; the cases go behind it, and what else is told in `how`
    local who=$1 line
    shift
    line=$("$@" "$cases" "${how[@]}")
    echo "$who: $line"
    found+=("${line%%; *}")
}

for compiler in "${c_compilers[@]}"; do
    build carb-ffi/tests/conformance.c "conformance_$compiler" "$compiler" "${c99[@]}"
    check "$compiler, C99" "$out/conformance_$compiler"
    how=(1 1)
done
for compiler in "${cpp_compilers[@]}"; do
    build carb-ffi/tests/conformance.c "conformance_$compiler" "$compiler" "${cpp17[@]}"
    check "$compiler, C++17" "$out/conformance_$compiler"
done
if have luajit; then
    export CARB_HEADER=carb-ffi/include/carb.h CARB_LIBRARY=$library/libcarb.so
    how=()
    check LuaJIT luajit carb-ffi/tests/conformance.lua
else
    left_out luajit "the cases in another language"
fi
[ "$(printf '%s\n' "${found[@]}" | sort -u | wc -l)" = 1 ]

build carb-ffi/tests/threads.c threads "$CC" "${c99[@]}"
"$out/threads" "$cases"
