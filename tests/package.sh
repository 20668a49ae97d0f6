#!/usr/bin/env bash
# The package as a user gets it: the source distribution, the wheel that is built from that and from nothing else, and the
# wheel alone in clean environments, with the newest NumPy and with the oldest that is supported.
set -euo pipefail
cd "$(dirname "$0")/.."
root=$PWD
tools=$root/.venv/bin
out=$root/target/package
MOST_BYTES=3000000
NEWEST=$(sed -n 's/^numpy==//p' requirements.txt)
OLDEST=1.26.4

rm -rf "$out/dist" "$out/unpacked" "$out/clean"
mkdir -p "$out/unpacked"
quietly() { "$@" > "$out/log" 2>&1 || { cat "$out/log" >&2; fail "$* failed"; }; }
fail() { echo "package: $1" >&2; exit 1; }

quietly "$tools/maturin" sdist -m carb-py/Cargo.toml -o "$out/dist"
tar -xzf "$out"/dist/carb-*.tar.gz -C "$out/unpacked" --strip-components 1
# Every file in it bears one old date, by which cargo would take changed sources for those that it built before.
if ! diff -rq "$out/unpacked" "$out/source" > "$out/changed" 2>&1; then
  rm -rf "$out/source"
  mv "$out/unpacked" "$out/source"
  find "$out/source" -type f -exec touch {} +
fi
# The versions are those of Cargo.lock; cargo only drops what the crates that stayed behind needed.
cd "$out/source"
CARGO_TARGET_DIR=$out/build quietly "$tools/maturin" build -o "$out/dist"
cd "$root"

wheels=("$out"/dist/carb-*-abi3-*.whl)
[ ${#wheels[@]} -eq 1 ] && [ -f "${wheels[0]}" ] || fail "there should be one abi3 wheel: ${wheels[*]}"
wheel=${wheels[0]}
bytes=$(stat -c %s "$wheel")
[ "$bytes" -lt $MOST_BYTES ] || fail "the wheel has $bytes bytes, no more than $MOST_BYTES are wanted"
names=$("$tools/python" -m zipfile -l "$wheel")
holds() { grep -q "$1" <<< "$names" || fail "the wheel does not hold $1"; }
holds carb/py.typed
holds licenses/LICENSE-MIT
holds licenses/LICENSE-APACHE
echo "   $(basename "$wheel"): $bytes bytes; source distribution: $(stat -c %s "$out"/dist/carb-*.tar.gz) bytes"

for numpy in "$NEWEST" $OLDEST; do
  clean=$out/clean/numpy-$numpy
  "$tools/python" -m venv "$clean"
  "$clean/bin/pip" install -q --disable-pip-version-check --only-binary :all: "numpy==$numpy" "$wheel"
  # From a folder without sources, and isolated from whatever the caller's environment holds.
  (
    cd "$clean"
    "$clean/bin/python" -I -m carb version
    "$clean/bin/python" -I -m carb selfcheck
    "$clean/bin/python" -I -m carb plan "$root/docs/scenarios/harbour_ale.json" > plan.txt
    grep -q "g of" plan.txt || { cat plan.txt; exit 1; }
    "$clean/bin/python" -I - <<'PYTHON'
import carb
import numpy as np

keg = carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=0)
assert f"{keg.gauge_psi:.2f}" == "11.21", keg  # README.md
many = carb.keg_pressure(volumes=np.array([2.5, 2.5]), temperature_f=38, altitude_m=0).gauge_psi
assert many.tolist() == [keg.gauge_psi] * 2, many
assert keg.sources and keg.working() and len(carb.fermentables()) > 10

import pickle
import warnings

warnings.simplefilter("error")
ufunc = carb.ufunc.of("keg_pressure", "volumes", "temperature_f", gives="gauge_psi", altitude_m=0)
out = np.zeros(3)
assert pickle.loads(pickle.dumps(ufunc)) is ufunc and ufunc([2.5, np.nan, -1], 38, out=out) is out
assert out[0] == keg.gauge_psi and np.isnan(out[1:]).all()
masked = carb.keg_pressure(volumes=np.ma.masked_array([2.5, 99.0], mask=[False, True]), temperature_f=38, altitude_m=0)
assert masked.gauge_psi.mask.tolist() == [False, True]
PYTHON
  ) || fail "the wheel does not work with NumPy $numpy alone"
done
