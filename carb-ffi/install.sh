#!/usr/bin/env bash
# Installs what C and C++ programs need, or takes exactly that away again: install.sh install|uninstall
#   PREFIX   where it will be used (/usr/local)        LIBDIR  the folder of libraries in there (lib)
#   DESTDIR  put before the prefix, for packagers      PROFILE of cargo (release; dev to debug)
# CARGO, RUSTC and CARGO_TARGET_DIR as usual; CARGO_FLAGS for more of cargo's.
# A list of what was put there, share/carb/installed, remembers files and the folders that were made for them.
set -euo pipefail
cd "$(dirname "$0")/.."
: "${PREFIX:=/usr/local}" "${LIBDIR:=lib}" "${DESTDIR:=}" "${CARGO:=cargo}" "${RUSTC:=rustc}" "${PROFILE:=release}"
case $PREFIX in /*) ;; *) echo "PREFIX=$PREFIX is no absolute path: give one, such as /usr/local" >&2; exit 2 ;; esac
case /$LIBDIR/ in //* | */../* | */./*) echo "LIBDIR=$LIBDIR: give a folder in the prefix, such as lib" >&2; exit 2 ;; esac
root=$DESTDIR$PREFIX
list=share/carb/installed

made() { # remembers a file or a folder (with a slash behind it), given from the prefix
    grep -qxF -- "$1" "$root/$list.new" || echo "$1" >> "$root/$list.new"
}

folder() { # makes a folder and those above it
    local path=$1
    [ -d "$root/$path" ] && return
    case $path in */*) folder "${path%/*}" ;; esac
    install -d -m 755 "$root/$path"
    folders+=("$path/")
}

put() { # mode, source, path from the prefix
    folder "${3%/*}"
    install -m "$1" "$2" "$root/$3"
    made "$3"
}

link() { # target, path from the prefix
    ln -sfn "$1" "$root/$2"
    made "$2"
}

fill() { # template: what stands between at signs is filled in
    sed -e "s|@libdir@|$LIBDIR|g" -e "s|@up@|$up|g" -e "s|@version@|$version|g" -e "s|@abi@|$abi|g" \
        -e "s|@major@|${version%%.*}|g" -e "s|@minor@|$(cut -d. -f2 <<< "$version")|g" \
        -e "s|@static_flags@|${static[*]}|g" -e "s|@static_libraries@|$(IFS=\;; echo "${static[*]#-l}")|g" \
        -e "s|@pointer_bytes@|$pointer_bytes|g" "$1"
}

# What the static library needs of the system: what the standard library of Rust does, for nothing else is linked. The
# C compiler finds the unwinder by itself, the shared one or, for a static program, the static one; naming it would take
# the wrong one for one of them.
find_static() {
    local flag needed
    needed=$("$RUSTC" --crate-name none --crate-type staticlib --print native-static-libs -o "$work/none.a" - \
        < /dev/null 2>&1 | sed -n 's/^note: native-static-libs: //p')
    [ -n "$needed" ] || { echo "$RUSTC does not tell what a static library needs" >&2; exit 1; }
    for flag in $needed; do
        case $flag in -lgcc_s | -lc) ;; *) static+=("$flag") ;; esac
    done
}

install_all() {
    [ "$(uname -s)" = Linux ] || { echo "make install knows the shared libraries of Linux only" >&2; exit 1; }
    local built version abi up pointer_bytes static=() folders=() template path
    # Where it lies is cargo's to say: its configuration may name another folder, or another machine.
    built=$("$CARGO" build -q --locked --profile "$PROFILE" -p carb-ffi \
        --message-format=json-render-diagnostics ${CARGO_FLAGS:-})
    built_file() { grep -o "\"[^\"]*/$1\"" <<< "$built" | tail -n 1 | tr -d '"'; }
    version=$("$CARGO" pkgid -p carb-ffi | sed 's/.*[#@]//')
    abi=$(awk '$2 == "CARB_ABI_VERSION" {print $3}' carb-ffi/include/carb.h)
    up=$(sed 's|[^/]\+|..|g' <<< "$LIBDIR") # from the folder of libraries to the prefix
    pointer_bytes=$(($("$RUSTC" --print cfg | sed -n 's/^target_pointer_width="\(.*\)"/\1/p') / 8))
    work=$(mktemp -d)
    trap 'rm -rf "$work"' EXIT
    find_static

    [ -d "$root" ] || mkdir -p "$root"
    folder share/carb
    # What an older version left is still known, and taken away by uninstall.
    if [ -f "$root/$list" ]; then cp "$root/$list" "$root/$list.new"; else : > "$root/$list.new"; fi
    put 644 carb-ffi/include/carb.h include/carb.h
    put 755 "$(built_file libcarb.so)" "$LIBDIR/libcarb.so.$version"
    link "libcarb.so.$version" "$LIBDIR/libcarb.so.$abi"
    link "libcarb.so.$abi" "$LIBDIR/libcarb.so"
    put 644 "$(built_file libcarb.a)" "$LIBDIR/libcarb.a"
    fill carb-ffi/carb.pc.in > "$work/carb.pc"
    put 644 "$work/carb.pc" "$LIBDIR/pkgconfig/carb.pc"
    for template in carb-ffi/cmake/*.in; do
        fill "$template" > "$work/filled"
        put 644 "$work/filled" "$LIBDIR/cmake/carb/$(basename "$template" .in)"
    done
    put 644 LICENSE-MIT share/licenses/carb/LICENSE-MIT
    put 644 LICENSE-APACHE share/licenses/carb/LICENSE-APACHE
    made "$list"
    for path in "${folders[@]}"; do made "$path"; done
    mv "$root/$list.new" "$root/$list"
    echo "carb $version is installed in $root (a new shared library may need ldconfig)"
}

uninstall_all() {
    local path paths
    [ -f "$root/$list" ] || { echo "there is no carb in $root: $root/$list is not there" >&2; exit 1; }
    mapfile -t paths < <(sort -r "$root/$list") # what lies in a folder before the folder
    for path in "${paths[@]}"; do
        case $path in */) ;; *) rm -f "$root/$path" ;; esac
    done
    for path in "${paths[@]}"; do
        case $path in */) [ ! -d "$root/$path" ] || rmdir --ignore-fail-on-non-empty "$root/$path" ;; esac
    done
    echo "carb is gone from $root"
}

case ${1:-} in
    install) install_all ;;
    uninstall) uninstall_all ;;
    *) echo "usage: install.sh install|uninstall" >&2; exit 2 ;;
esac
