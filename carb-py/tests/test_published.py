"""Published values, from outside the library."""

import csv

from shared import ROOT, call, given, pick

FILE = ROOT / "carb-core" / "checks" / "published" / "functions.csv"


def test_published(capsys):
    with FILE.open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(line for line in file if not line.startswith("#")))
    checked = 0
    for row in rows:
        if row["tolerance"]:
            value = pick(call(row["function"], **given(row["inputs"])), row["output"])
            assert abs(value - float(row["value"])) <= float(row["tolerance"]), (row["id"], value)
            checked += 1
    assert checked > 0
    with capsys.disabled():
        print(f"\npublished values checked: {checked} of {len(rows)}")
