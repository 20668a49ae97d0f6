"""The kegging of a batch, the tables of kegging, and what their lists take."""

import json
import pickle
import subprocess
import sys

import carb
import carb._carb as native
import numpy as np
import pytest

BATCH = {
    "packaged_l": 18.93,
    "volumes": 2.5,
    "warmest_c": 20,
    "serving_c": 3.5,
    "altitude_m": 0,
    "keg_rating_gauge_bar": 9,
}
PARTS = (
    "kegs",
    "start",
    "regulator",
    "purge",
    "purged",
    "oxygen",
    "carbonating",
    "burst",
    "keg_priming",
    "gas",
    "cylinder",
    "line",
    "handbook_line",
    "warmed",
    "days",
    "safety",
)


def test_kegging():
    done = carb.kegging(**BATCH)
    assert type(done) is carb.Kegging and "Kegging" in carb.__all__
    text = json.dumps({"carb": 1, **BATCH})
    assert done.to_json() == native.json("kegging", text) == carb.Kegging(text).to_json()
    assert all(part in done for part in PARTS) and not done.danger
    assert done.regulator.gauge_psi == carb.keg_pressure(volumes=2.5, temperature_c=3.5, altitude_m=0).gauge_psi
    assert done.days[4].expected.volumes > done.days[4].least.volumes
    assert done.page().startswith("KEGGING") and "In a keg" in str(done)
    again = eval(repr(done), {"carb": carb})
    assert again == done == pickle.loads(pickle.dumps(done)) and hash(again) == hash(done)
    assert (
        carb.at(altitude_m=0, packaged_l=18.93, volumes=2.5, warmest_c=20)
        .kegging(serving_c=3.5, keg_rating_gauge_bar=9)
        .regulator.gauge_bar
        == done.regulator.gauge_bar
    )


def test_the_plan_holds_both_ways():
    day = carb.plan({**BATCH, "outfit_money": 240, "bottle_money": 0.7, "bottles": [{"bottle_ml": 500, "count": 40}]})
    assert day.kegging.regulator.gauge_bar == carb.kegging(**BATCH).regulator.gauge_bar
    assert day.kegging.break_even.batches_count > 1 and "Bottle or keg?" in day.page()
    sure = carb.plan({**BATCH, "uncertainty": {"serving_c": 1}}).uncertainty
    assert sure.regulator.low.gauge_bar < day.kegging.regulator.gauge_bar < sure.regulator.high.gauge_bar
    alone = carb.kegging(**BATCH, uncertainty={"serving_c": 1}).uncertainty
    assert alone.regulator.low.gauge_bar == sure.regulator.low.gauge_bar and "priming" not in alone


def test_a_schedule_and_a_fit_take_lists():
    steps = [{"gauge_bar": 2, "temperature_c": 4, "time_h": 24}, {"gauge_bar": 0.8, "temperature_c": 4, "time_d": 5}]
    rows = carb.carbonation_schedule(schedule=steps, start_volumes=0.84, altitude_m=0)
    assert rows[-1].expected_volumes > rows[0].expected_volumes > 0.84
    # Readings of a keg with a known rate give that rate back.
    start, end, rate = 0.84, carb.dissolved_co2(gauge_bar=0.8, temperature_c=4, altitude_m=0).volumes, 0.02
    hours = np.array([6.0, 20, 40, 70, 110, 160])
    held = end - (end - start) * np.exp(-rate * hours)
    readings = {"time_h": hours, "volumes": held}
    fit = carb.uptake_fit(uptake_readings=readings, start_volumes=start, gauge_bar=0.8, temperature_c=4, altitude_m=0)[
        0
    ]
    assert fit.kla_per_h == pytest.approx(rate, rel=1e-6)
    with pytest.raises(carb.CarbError) as caught:
        carb.uptake_fit(
            uptake_readings=[{"time_h": 1}], start_volumes=start, gauge_bar=0.8, temperature_c=4, altitude_m=0
        )
    assert "row 1 of uptake_readings" in str(caught.value)


def test_what_is_wrong_with_one_part_is_its_error():
    found = carb.kegging(packaged_l=19, volumes=2.5, altitude_m=0)
    assert found.regulator.gauge_bar > 0 and "warmest_c" in found.carbonating.error.text
    with pytest.raises(carb.CarbError):
        carb.kegging(**BATCH, bottles=[{"bottle_ml": 500, "count": 1}])
    with pytest.raises(carb.CarbError, match="keg_l"):
        carb.kegging(**BATCH, keg_liters=19)


def test_the_command_exits_by_what_it_finds(tmp_path):
    def run(request):
        file = tmp_path / "batch.json"
        file.write_text(json.dumps({"carb": 1, **request}), encoding="utf-8")
        return subprocess.run(
            [sys.executable, "-m", "carb", "kegging", file], capture_output=True, text=True, check=False
        )

    done = run(BATCH)
    assert done.returncode == 0 and done.stdout == carb.kegging(**BATCH).page()
    weak = run({**BATCH, "keg_rating_gauge_bar": 2})
    assert weak.returncode == 1 and "DANGER" in weak.stdout
    assert run({"volumes": 2.5}).returncode == 2


def test_arrays_of_the_new_functions_are_their_scalars():
    pressures = np.linspace(0.5, 2.0, 7)
    times = carb.carbonation_time(
        start_volumes=0.85, volumes=1.4, gauge_bar=pressures, temperature_c=4, altitude_m=0
    ).expected.time_h
    one_by_one = [
        carb.carbonation_time(
            start_volumes=0.85, volumes=1.4, gauge_bar=p, temperature_c=4, altitude_m=0
        ).expected.time_h
        for p in pressures
    ]
    assert times.tolist() == one_by_one
    left = carb.purge_oxygen(
        purge_gauge_psi=30, cycles_count=np.arange(6), altitude_m=0, gas_oxygen_ppm=0
    ).oxygen_vol_percent
    assert left[0] == 20.95 and (np.diff(left) < 0).all()
