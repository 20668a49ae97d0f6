# What the scripts of this folder share: where things are, how programs are built, what they should say. To be sourced.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
: "${CC:=gcc}" "${CXX:=g++}" "${CARGO:=cargo}"
target=$(realpath -m "${CARGO_TARGET_DIR:-target}")
library=$target/debug
out=$target/c
mkdir -p "$out"
cases=tests/conformance/cases.tsv
scenario=docs/scenarios/harbour_ale.json
abi=$(awk '$2 == "CARB_ABI_VERSION" {print $3}' carb-ffi/include/carb.h)

c99=(-std=c99 -O1 -Wall -Wextra -Wpedantic -Werror -Icarb-ffi/include)
cpp17=(-x c++ -std=c++17 -O1 -Wall -Wextra -Wpedantic -Werror -Icarb-ffi/include)

# What the Rust tests build, so that nothing is built again for other packages beside it.
read -ra built <<< "$(sed -n 's/^BUILT := //p' Makefile)"

have() { command -v "$1" > /dev/null 2>&1; }

left_out() { echo "left out, $1 is not there: $2"; }

# The compilers of C and C++, by pairs.
c_compilers=("$CC")
cpp_compilers=("$CXX")
if have clang && [ "$CC" != clang ]; then c_compilers+=(clang); fi
if have clang++ && [ "$CXX" != clang++ ]; then cpp_compilers+=(clang++); fi

# Programs ask for the library by its SONAME, which cargo does not make a file of.
soname() { # folder of a build, folder to make it in
    mkdir -p "$2"
    ln -sf "$1/libcarb.so" "$2/libcarb.so.$abi"
}

# Builds with the debug library: source, program, compiler and its flags.
build() {
    local source=$1 program=$2
    shift 2
    "$@" "$source" -x none -o "$out/$program" -L"$library" -lcarb -lm -lpthread -Wl,-rpath,"$out"
}

# Runs a program and requires the code it ends with; told even where the program's own errors are hidden.
exec 3>&2
ends_with() { # code, command
    local wanted=$1 code=0
    shift
    "$@" || code=$?
    [ "$code" = "$wanted" ] || { echo "ended with $code, not with $wanted: $*" >&3; return 1; }
}
