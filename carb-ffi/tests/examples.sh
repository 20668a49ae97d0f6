#!/usr/bin/env bash
# The packaging day prints one page in C99, C++17 and LuaJIT, whose plan is that of the Rust example, and ends as that
# does.
source "$(dirname "$0")/setup.sh"
sed 's/"volumes": 2.4/"volumes": 6/' "$scenario" > "$out/danger.json"
sed 's/"volumes": 2.4/"volumes": "fizzy"/' "$scenario" > "$out/wrong.json"

rust=$library/examples/packaging_day
ends_with 0 "$rust" "$scenario" > "$out/plan.txt"
ends_with 1 "$rust" "$out/danger.json" > "$out/danger.txt"
ends_with 2 "$rust" "$out/wrong.json" 2> "$out/wrong.txt"
plan=$(wc -l < "$out/plan.txt")

check() { # who, command
    local who=$1
    shift
    ends_with 0 "$@" "$scenario" > "$out/page.txt"
    tail -n "$plan" "$out/page.txt" | cmp - "$out/plan.txt"
    [ -f "$out/first_page.txt" ] || cp "$out/page.txt" "$out/first_page.txt"
    cmp "$out/first_page.txt" "$out/page.txt"
    ends_with 1 "$@" "$out/danger.json" > "$out/page.txt"
    tail -n "$(wc -l < "$out/danger.txt")" "$out/page.txt" | cmp - "$out/danger.txt"
    # A mistake is shown in the words of the library, behind the name of the file.
    ends_with 2 "$@" "$out/wrong.json" 2> "$out/page.txt" > /dev/null
    cmp "$out/page.txt" "$out/wrong.txt"
    ends_with 2 "$@" "$out/no_such_file.json" 2> "$out/page.txt" > /dev/null
    grep -q "no_such_file.json: cannot be read" "$out/page.txt"
    ends_with 2 "$@" 2> "$out/page.txt" > /dev/null
    grep -q "give the path of a request" "$out/page.txt"
    echo "$who: the same page"
}

rm -f "$out/first_page.txt"
for compiler in "${c_compilers[@]}"; do
    build carb-ffi/examples/packaging_day.c "packaging_day_$compiler" "$compiler" "${c99[@]}"
    check "$compiler, C99" "$out/packaging_day_$compiler"
done
for compiler in "${cpp_compilers[@]}"; do
    build carb-ffi/examples/packaging_day.cc "packaging_day_$compiler" "$compiler" "${cpp17[@]}"
    check "$compiler, C++17" "$out/packaging_day_$compiler"
done
if have luajit; then
    export CARB_HEADER=carb-ffi/include/carb.h CARB_LIBRARY=$library/libcarb.so
    check LuaJIT luajit carb-ffi/examples/packaging_day.lua
else
    left_out luajit "the packaging day in another language"
fi
