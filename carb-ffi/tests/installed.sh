#!/usr/bin/env bash
# What make install puts into a prefix serves projects that know nothing of this checkout, in C by pkg-config and in C++
# by CMake; it may be moved; and make uninstall takes away that and nothing else.
source "$(dirname "$0")/setup.sh"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
version=$(sed -n '/^\[workspace.package\]/,/^\[/s/^version = "\(.*\)"/\1/p' Cargo.toml)
[ -f "$out/first_page.txt" ] || { echo "run examples.sh before: it makes the page that is wanted" >&2; exit 1; }

quietly() { # shows what a command said only where it fails
    "$@" > "$work/log" 2>&1 || { cat "$work/log" >&2; return 1; }
}

# The library that is there already, which spares building it again with all optimisation.
carb() { quietly env CARGO_FLAGS="${built[*]}" make -s "$1" CARGO="$CARGO" PROFILE=dev "${@:2}"; }

same_page() { ends_with 0 "$@" "$scenario" > "$work/page.txt" && cmp "$work/page.txt" "$out/first_page.txt"; }

# Which of our libraries a program asks for when it starts.
needs() { # program, library
    [ "$(readelf -d "$1" | sed -n 's/.*NEEDED.*\[\(libcarb.*\)\]/\1/p')" = "$2" ]
}

# Builds and runs the project in C against an installed prefix.
c_project() { # prefix, folder of libraries
    local project=$work/c_project
    rm -rf "$project"
    cp -r carb-ffi/tests/project_c "$project"
    cp carb-ffi/examples/packaging_day.c "$project"
    export PKG_CONFIG_PATH=$1/$2/pkgconfig
    [ "$(pkg-config --modversion carb)" = "$version" ]
    quietly make -s -C "$project" CC="$CC" shared
    same_page env LD_LIBRARY_PATH="$1/$2" "$project/shared"
    # It asks for the binary interface, not for the very version.
    needs "$project/shared" "libcarb.so.$abi"
    quietly make -s -C "$project" CC="$CC" static
    same_page "$project/static"
    needs "$project/static" ""
}

# Builds and runs the project in C++ against an installed prefix.
cpp_project() { # prefix
    local project=$work/cpp_project
    rm -rf "$project"
    cp -r carb-ffi/tests/project_cpp "$project"
    cp carb-ffi/examples/packaging_day.cc "$project"
    find_carb() {
        quietly env CXX="$CXX" cmake -S "$project" -B "$project/$2" -DCMAKE_PREFIX_PATH="$1" -DWANTED="$3"
    }
    for wanted in "$version" "${version%.*}" ""; do
        find_carb "$1" build "$wanted"
    done
    for wanted in 99 "${version%%.*}.99"; do
        if find_carb "$1" refused "$wanted" 2> /dev/null; then
            echo "CMake took carb $version for $wanted" >&2
            return 1
        fi
        grep -q 'requested version "'"$wanted" "$work/log"
    done
    quietly cmake --build "$project/build"
    same_page "$project/build/shared"
    same_page "$project/build/static"
    needs "$project/build/shared" "libcarb.so.$abi"
    needs "$project/build/static" ""
}

projects() { # prefix, folder of libraries
    if have pkg-config; then c_project "$1" "$2"; else left_out pkg-config "the C project"; fi
    if have cmake; then cpp_project "$1"; else left_out cmake "the C++ project"; fi
}

prefix=$work/prefix
carb install PREFIX="$prefix"
# Nothing knows where it lies, or where it came from.
[ -z "$(grep -rlF -e "$work" -e "$PWD" "$prefix/lib/pkgconfig" "$prefix/lib/cmake" "$prefix/share")" ]
[ "$(readelf -d "$prefix/lib/libcarb.so" | sed -n 's/.*SONAME.*\[\(.*\)\]/\1/p')" = "libcarb.so.$abi" ]
# Every name that programs see is ours.
[ -z "$(nm -D --defined-only "$prefix/lib/libcarb.so" | awk '{print $3}' | grep -v '^carb_')" ]
projects "$prefix" lib
mv "$prefix" "$work/moved"
projects "$work/moved" lib
carb install PREFIX="$work/moved" # over what is there
carb uninstall PREFIX="$work/moved"
[ -z "$(find "$work/moved" -mindepth 1)" ]

# A prefix in which others live, and a packager's: in a stage, with another folder of libraries, such as Debian's.
libdir=lib/$("$CC" -print-multiarch 2> /dev/null || true)
[ "$libdir" != lib/ ] || libdir=lib64
mkdir -p "$work/stage/usr/$libdir" "$work/stage/usr/include"
echo other > "$work/stage/usr/$libdir/libother.so"
find "$work/stage" | sort > "$work/before"
carb install DESTDIR="$work/stage" PREFIX=/usr LIBDIR="$libdir"
projects "$work/stage/usr" "$libdir"
if have pkg-config; then
    # With a sysroot too, the stage is named once.
    flags=$(PKG_CONFIG_SYSROOT_DIR=$work/stage PKG_CONFIG_LIBDIR=$work/stage/usr/$libdir/pkgconfig \
        pkg-config --cflags-only-I carb)
    flags=${flags% }
    [ -f "${flags#-I}/carb.h" ]
fi
carb uninstall DESTDIR="$work/stage" PREFIX=/usr LIBDIR="$libdir"
find "$work/stage" | sort | cmp - "$work/before"
if carb uninstall DESTDIR="$work/stage" PREFIX=/usr 2> /dev/null; then
    echo "what is not there was taken away" >&2
    exit 1
fi
if carb install PREFIX=here 2> /dev/null; then echo "a prefix that is no absolute path was taken" >&2; exit 1; fi
echo "installed, used from C and C++, moved, and gone again"
