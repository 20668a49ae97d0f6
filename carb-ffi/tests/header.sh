#!/usr/bin/env bash
# carb.h is clean for strict compilers of C and C++, alone and included twice.
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
have clang || left_out clang "the header by a second compiler"
echo "header clean: ${c_compilers[*]} ${cpp_compilers[*]}"
