#!/usr/bin/env bash
# Times the wheel that `make test-package` left, in an environment of its own with what it is compared with.
set -euo pipefail
cd "$(dirname "$0")/.."
wheels=(target/package/dist/carb-*-abi3-*.whl)
[ -f "${wheels[0]}" ] || { echo "there is no wheel: run make test-package first" >&2; exit 1; }
place=target/bench-python
[ -d "$place" ] || python3 -m venv "$place"
"$place/bin/pip" install -q --disable-pip-version-check -r benches/requirements.txt
"$place/bin/pip" install -q --disable-pip-version-check -r <(grep -E '^(numpy|matplotlib|dask|distributed)' requirements.txt)
"$place/bin/pip" install -q --disable-pip-version-check --no-deps --force-reinstall "${wheels[0]}"
"$place/bin/python" -I benches/python.py --picture docs/speed.png "$@"
