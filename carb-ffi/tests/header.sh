#!/usr/bin/env bash
# carb.h is clean for strict compilers of C and C++, alone and included twice; they find every member where abi.txt says,
# and the library exports the functions of abi.txt and no other.
source "$(dirname "$0")/setup.sh"
printf '#include <carb.h>\n#include <carb.h>\n' > "$out/header.c"
for compiler in "${c_compilers[@]}"; do
    for standard in c99 c11 c17; do
        "$compiler" "${c99[@]}" -std=$standard -fsyntax-only "$out/header.c"
    done
done
for compiler in "${cpp_compilers[@]}"; do
    for standard in c++11 c++17; do
        "$compiler" "${cpp17[@]}" -std=$standard -fsyntax-only "$out/header.c"
    done
done
if [ "$(getconf LONG_BIT)" = 64 ]; then
    printf '#include <carb.h>\n#include "layout.h"\n' > "$out/layout.c"
    for compiler in "${c_compilers[@]}"; do
        "$compiler" "${c99[@]}" -Icarb-ffi/tests -fsyntax-only "$out/layout.c"
    done
fi
nm -D --defined-only "$library/libcarb.so" | awk '{print $3}' | sort > "$out/exported.txt"
sed -n 's/^function \([a-z0-9_]*\) = .*/\1/p' carb-ffi/abi.txt | sort | diff - "$out/exported.txt"
have clang || left_out clang "the header by a second compiler"
echo "header clean: ${c_compilers[*]} ${cpp_compilers[*]}"
