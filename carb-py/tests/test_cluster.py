"""Work that is handed out to other processes gives the same bits."""

import carb
import dask.array as da
import numpy as np
import pytest
import xarray as xr

distributed = pytest.importorskip("distributed")


@pytest.fixture(scope="module")
def client():
    with (
        distributed.LocalCluster(n_workers=2, threads_per_worker=1, processes=True, dashboard_address=None) as cluster,
        distributed.Client(cluster) as client,
    ):
        yield client


RNG = np.random.default_rng(11)
VOLUMES, TEMPERATURES = RNG.uniform(2, 3, 40_000), RNG.uniform(33, 58, 40_000)


def test_every_way_of_handing_out_gives_the_same_bits(client):
    here = carb.keg_pressure(volumes=VOLUMES, temperature_f=TEMPERATURES, altitude_m=240)
    volumes, temperatures = da.from_array(VOLUMES, chunks=5000), da.from_array(TEMPERATURES, chunks=5000)
    named = carb.keg_pressure(volumes=volumes, temperature_f=temperatures, altitude_m=240)
    ufunc = carb.ufunc.of("keg_pressure", "volumes", "temperature_f", gives="gauge_psi", altitude_m=240)
    blocks = da.map_blocks(ufunc, volumes, temperatures, dtype=float)
    applied = xr.apply_ufunc(
        ufunc,
        xr.DataArray(volumes, dims="t"),
        xr.DataArray(temperatures, dims="t"),
        dask="parallelized",
        output_dtypes=[float],
    )
    within = da.map_blocks(
        lambda v, t: carb.keg_pressure(volumes=v, temperature_f=t, altitude_m=240).gauge_psi,
        volumes,
        temperatures,
        dtype=float,
    )
    for work in (named.gauge_psi, blocks, applied.data, within):
        assert client.compute(work).result().tobytes() == here.gauge_psi.tobytes()
    assert (client.compute(named.status).result() == here.status).all()
    workers = client.run(lambda: __import__("os").getpid())
    assert len(set(workers.values())) == 2


def test_results_travel(client):
    sent = carb.package_pressure(volumes=2.4, temperature_c=30, altitude_m=0)
    back = client.submit(lambda result: result, sent).result()
    assert back == sent and back.worst.gauge_bar == sent.worst.gauge_bar
