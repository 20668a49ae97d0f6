"""Times carb's Python face beside other libraries of elementwise functions, in one run, and draws what it found.

    python benches/python.py [--quick] [--picture FILE.png]

Ratios of one run are worth something, seconds of two runs are not. The libraries beside carb answer other questions: sea
water, equations of state, seawater chemistry. What is compared is what one element costs, not which library is better.
"""

from __future__ import annotations

import argparse
import importlib.metadata
import platform
import subprocess
import sys
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from statistics import median
from time import perf_counter
from typing import Any

import carb
import numpy as np

SIZES = [10**power for power in range(8)]
REPEATS = 5
LONGEST = 2.0
"""A case is not run for more elements where it would take more seconds than this, by its last size."""
PACKAGES = ("carb", "numpy", "gsw", "CoolProp", "PyCO2SYS", "iapws", "chemicals", "dask", "matplotlib")
RNG = np.random.default_rng(3)
Work = Callable[[], object]
# What runs are repeated for: short ones are run often, and their time divided.
SHORT = 2e-4


def seconds(work: Work, repeats: int = REPEATS) -> float:
    """The median time of a call."""
    start = perf_counter()
    work()
    often = max(1, int(SHORT / max(perf_counter() - start, 1e-9)))
    times = []
    for _ in range(repeats):
        start = perf_counter()
        for _ in range(often):
            work()
        times.append((perf_counter() - start) / often)
    return median(times)


def ratio(one: Work, other: Work) -> float:
    """How long one takes, of the time of the other: the median of pairs, each run one after the other."""
    return median(seconds(one, 3) / seconds(other, 3) for _ in range(REPEATS))


def drawn(low: float, high: float, n: int) -> Any:
    return RNG.uniform(low, high, n) if n > 1 else float(RNG.uniform(low, high))


def keg_numpy(n: int) -> Work:
    volumes, f = drawn(2, 3, n), drawn(33, 58, n)
    return lambda: (volumes + 0.003342) / (0.01821 + 0.090115 * np.exp(-(f - 32) / 43.11)) - 14.695948775513


def keg_named(n: int) -> Work:
    volumes, f = drawn(2, 3, n), drawn(33, 58, n)
    return lambda: carb.keg_pressure(volumes=volumes, temperature_f=f, altitude_m=0).gauge_psi


def keg_ufunc(n: int) -> Work:
    ufunc = carb.ufunc.of("keg_pressure", "volumes", "temperature_f", gives="gauge_psi", altitude_m=0)
    volumes, f = drawn(2, 3, n), drawn(33, 58, n)
    return lambda: ufunc(volumes, f)


def chart_numpy(n: int) -> Work:
    psi, f = drawn(5, 25, n), drawn(33, 58, n)
    return lambda: (psi + 14.695948775513) * (0.01821 + 0.090115 * np.exp(-(f - 32) / 43.11)) - 0.003342


def chart_ufunc(n: int) -> Work:
    ufunc = carb.ufunc.of("dissolved_co2", "gauge_psi", "temperature_f", gives="volumes", altitude_m=0)
    psi, f = drawn(5, 25, n), drawn(33, 58, n)
    return lambda: ufunc(psi, f)


def water_core(n: int) -> Work:
    ufunc = carb.ufunc.of(
        "dissolved_co2", "abs_bar", "temperature_c", gives="co2_g_per_l", beverage="water", model="water_core"
    )
    bar, c = drawn(1, 5, n), drawn(0, 30, n)
    return lambda: ufunc(bar, c)


def sealed(n: int) -> Work:
    volumes, c = drawn(2, 2.4, n), drawn(5, 30, n)
    return lambda: carb.package_pressure(volumes=volumes, temperature_c=c, altitude_m=0).worst.gauge_bar


def copied(n: int) -> Work:
    """As many bytes as two operands and a result: read two, write one."""
    one, other = np.zeros(n), np.zeros(n)
    return lambda: np.add(one, other)


def gsw_density(n: int) -> Work:
    import gsw

    salinity, c = drawn(34, 36, n), drawn(0, 30, n)
    return lambda: gsw.rho(salinity, c, 0.0)


def coolprop_density(n: int) -> Work:
    from CoolProp.CoolProp import PropsSI

    kelvin, pascal = drawn(290, 310, n), drawn(1e5, 5e5, n)
    return lambda: PropsSI("D", "T", kelvin, "P", pascal, "CO2")


def pyco2sys_solubility(n: int) -> Work:
    from PyCO2SYS.equilibria.p1atm import kCO2_W74

    kelvin, salinity = drawn(275, 300, n), drawn(0, 5, n)
    return lambda: kCO2_W74(kelvin, salinity)


def iapws_henry(n: int) -> Work:
    from iapws._iapws import _Henry

    kelvin = np.atleast_1d(drawn(280, 320, n))
    return lambda: [_Henry(value, "CO2") for value in kelvin]


def chemicals_vapour_pressure(n: int) -> Work:
    from chemicals.iapws import iapws95_Psat

    kelvin = np.atleast_1d(drawn(280, 320, n))
    return lambda: [iapws95_Psat(value) for value in kelvin]


CASES: dict[str, tuple[Callable[[int], Work], str]] = {
    "keg pressure, NumPy formula": (keg_numpy, "the bare formula: no limits, no statuses"),
    "keg pressure, carb by name": (keg_named, "with limits, statuses, cautions"),
    "keg pressure, carb ufunc": (keg_ufunc, "with limits"),
    "chart, NumPy formula": (chart_numpy, "the bare formula"),
    "chart, carb ufunc": (chart_ufunc, "with limits"),
    "water core, carb ufunc": (water_core, "real gas and Poynting term"),
    "sealed vessel, carb by name": (sealed, "a solver for each element, expected and worst"),
    "sum of two arrays": (copied, "the limit: the same bytes, nothing worked out"),
    "sea water density, gsw": (gsw_density, "another question"),
    "CO2 density, CoolProp": (coolprop_density, "another question: a reference equation of state"),
    "CO2 solubility, PyCO2SYS": (pyco2sys_solubility, "K0 of sea water, without pressure"),
    "Henry's constant, iapws": (iapws_henry, "another relation, number by number"),
    "vapour pressure, chemicals": (chemicals_vapour_pressure, "another question, number by number"),
}


def table(sizes: list[int]) -> dict[str, dict[int, float]]:
    """Nanoseconds per element of each case and size."""
    found: dict[str, dict[int, float]] = {}
    for name, (make, _) in CASES.items():
        found[name] = {}
        for n in sizes:
            last = max(found[name].items(), default=None)
            if last is not None and last[1] * 1e-9 * n > LONGEST:
                break
            try:
                found[name][n] = seconds(make(n)) / n * 1e9
            except ImportError as missing:
                print(f"  ({name}: {missing})")
                break
    return found


def machine() -> list[str]:
    """What it was run on."""
    lines = [f"Python {platform.python_version()}"]
    for package in PACKAGES:
        try:
            lines.append(f"{package} {importlib.metadata.version(package)}")
        except importlib.metadata.PackageNotFoundError:
            lines.append(f"{package} not installed")
    try:
        text = Path("/proc/cpuinfo").read_text(encoding="utf-8")
        flags = next(line for line in text.splitlines() if line.startswith("flags")).split()
        model = next(line for line in text.splitlines() if line.startswith("model name")).partition(":")[2].strip()
        level = "AVX-512" if {"avx512f", "avx512dq", "avx512vl"} <= set(flags) else "AVX2" if "avx2" in flags else "SSE2"
        lines.append(f"{model}, {level}")
    except (OSError, StopIteration):
        lines.append(platform.processor() or platform.machine())
    return lines


def imported(module: str) -> float:
    """Seconds of a process that imports a module, the least of several."""
    def once() -> float:
        start = perf_counter()
        subprocess.run([sys.executable, "-c", f"import {module}"], check=True)
        return perf_counter() - start

    return min(once() for _ in range(15))


def threads(n: int) -> float:
    """How many times as fast two threads are as one, each with half of the elements."""
    ufunc = carb.ufunc.of("keg_pressure", "volumes", "temperature_f", gives="gauge_psi", altitude_m=0)
    volumes, f, out = drawn(2, 3, n), drawn(33, 58, n), np.empty(n)
    halves = [slice(0, n // 2), slice(n // 2, n)]

    def two() -> None:
        list(pool.map(lambda half: ufunc(volumes[half], f[half], out=out[half]), halves))

    with ThreadPoolExecutor(2) as pool:
        return ratio(lambda: ufunc(volumes, f, out=out), two)


def cluster(n: int) -> dict[int, float]:
    """Seconds of a sealed vessel for `n` elements, made and worked out in so many processes."""
    import dask
    import dask.array as da
    import distributed

    found = {}
    with dask.config.set({"distributed.logging.distributed": "error"}):
        for workers in (1, 2):
            with (
                distributed.LocalCluster(
                    n_workers=workers, threads_per_worker=1, processes=True, dashboard_address=None
                ) as local,
                distributed.Client(local) as client,
            ):
                chunks = max(1, n // 16)
                volumes = da.random.default_rng(1).uniform(2, 3, n, chunks=chunks)
                celsius = da.random.default_rng(2).uniform(5, 38, n, chunks=chunks)
                work = carb.package_pressure(volumes=volumes, temperature_c=celsius, altitude_m=0).worst.gauge_bar.sum()
                client.compute(work).result()
                found[workers] = seconds(lambda: client.compute(work).result(), 3)
    return found


def picture(found: dict[str, dict[int, float]], said: list[str], file: str) -> None:
    """All cases over the number of elements."""
    from matplotlib.figure import Figure

    figure = Figure(figsize=(8, 6.2), layout="constrained")
    ax = figure.subplots()
    ends = []
    for name, times in found.items():
        if not times:
            continue
        ours, limit = "carb" in name, name.startswith("sum")
        colour = "#00507a" if ours else "#7a7a7a" if limit else "#b35900" if "NumPy" in name else "#a8a8a8"
        style = "-" if ours else ":" if limit else "--"
        ax.loglog(list(times), list(times.values()), style, color=colour, linewidth=2 if ours else 1.3)
        ends.append((list(times.values())[-1], list(times)[-1], name, colour))
    ends.sort()
    place = 0.0
    for value, n, name, colour in ends:
        # Names at the right edge, no two over each other.
        place = max(value, place * 1.45)
        ax.annotate(
            name, (n, value), (SIZES[-1] * 1.6, place), fontsize=8, color=colour if colour != "#a8a8a8" else "#606060",
            va="center", annotation_clip=False, arrowprops={"arrowstyle": "-", "color": colour, "linewidth": 0.4},
        )
    ax.set_xlim(1, SIZES[-1])
    ax.set_xlabel("elements")
    ax.set_ylabel("nanoseconds per element")
    ax.set_title("What an element costs, one thread", loc="left")
    ax.grid(True, which="major", color="#e0e0e0", linewidth=0.6)
    for side in ("top", "right"):
        ax.spines[side].set_visible(False)
    ax.text(
        0, -0.16, "; ".join(said[:2] + said[-1:]) + ". The others answer other questions.", transform=ax.transAxes, fontsize=7
    )
    figure.savefig(file, dpi=110)


def main() -> None:
    """Runs it all."""
    asked = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    asked.add_argument("--quick", action="store_true", help="to 10^5 elements only, and no cluster")
    asked.add_argument("--picture", help="a file for the picture")
    options = asked.parse_args()
    sizes = SIZES[:6] if options.quick else SIZES
    said = machine()
    print("\n".join(said))
    print(f"\nns per element, median of {REPEATS}, one thread; the others answer other questions\n")
    found = table(sizes)
    width = max(map(len, CASES))
    print(" " * width, *(f"{f'1e{len(str(n)) - 1}':>9}" for n in sizes))
    for name, times in found.items():
        cells = (f"{times[n]:9.3g}" if n in times else f"{'-':>9}" for n in sizes)
        print(f"{name:{width}}", *cells, f"  {CASES[name][1]}")
    print(f"\nof the time of the NumPy formula, median of {REPEATS} pairs")
    for kind, ours in (("keg pressure", "carb by name"), ("keg pressure", "carb ufunc"), ("chart", "carb ufunc")):
        formula, mine = CASES[f"{kind}, NumPy formula"][0], CASES[f"{kind}, {ours}"][0]
        print(f"{f'{kind}, {ours}':{width}}", *(f"{ratio(mine(n), formula(n)):9.2f}" for n in sizes))
    keg = carb.keg_pressure
    call = seconds(lambda: keg(volumes=2.5, temperature_f=38, altitude_m=0))
    value = seconds(lambda: keg(volumes=2.5, temperature_f=38, altitude_m=0).gauge_psi)
    print(f"\na number by name: {call * 1e6:.2f} us; with its value: {value * 1e6:.2f} us")
    bare, both = imported("numpy"), imported("numpy, carb")
    alone = imported("carb")
    print(f"import, ms: numpy {bare * 1e3:.1f}, numpy and carb {both * 1e3:.1f}, carb {alone * 1e3:.1f} (a process each)")
    print(f"two threads on {sizes[-1]:.0e} elements: {threads(sizes[-1]):.2f} times one")
    if not options.quick:
        work = cluster(4_000_000)
        print(f"two worker processes on 4e6 sealed vessels: {work[1] / work[2]:.2f} times one")
    if options.picture:
        picture(found, said, options.picture)


if __name__ == "__main__":
    main()
