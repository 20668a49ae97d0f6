"""Write ../reference/kegging_schedule.csv and student_t.csv: schedules of carbonating integrated numerically by scipy, and
Student's t by scipy. Nothing of the library goes into them.

The rate law dC/dt = min(kLa (C* - C), Q/V) is integrated step by step (DOP853, relative tolerance 1e-11) with C* from the
fit of the beer chart and the viscosity of water, written out here once more. Random schedules come from a fixed seed.

Run from anywhere: python3 reference_schedule.py (needs numpy and scipy).
"""

import math
import random
from pathlib import Path

from scipy.integrate import solve_ivp
from scipy.stats import t as student

FOLDER = Path(__file__).resolve().parent.parent / "reference"
PSI = 0.45359237 * 9.80665 / 0.0254**2
ATM_PSI = 101325 / PSI
VOLUME = 44.0095 / 22.263  # g/L
METHODS = {  # expected, slow, fast: factors on the still surface, or rates at 4 degC in 1/h
    "still": (True, 1.0, 0.6, 22 / 15), "dip_tube": (True, 1.5, 1.1 * 0.6, 2.5 * 22 / 15),
    "on_side": (True, 1.7, 1.4 * 0.6, 2 * 22 / 15), "stone": (False, 5, 1, 12), "rocked": (False, 10, 5, 40),
}


def held(gauge_psi, f):
    """Fit of the beer chart: volumes, here in g/L."""
    total = gauge_psi + ATM_PSI
    return VOLUME * (total * (0.01821 + 0.090115 * math.exp(-(f - 32) / 43.11)) - 0.003342)


def viscosity(f):
    t = (f + 459.67) * 5 / 9 / 300
    return sum(a * t**n for a, n in ((280.68, -1.9), (511.45, -7.7), (61.131, -19.6), (0.45903, -40)))


def rates(method, f, litres, diameter):
    """1/h: expected, slow, fast."""
    of_still, *figures = METHODS[method]
    warmth = viscosity(277.15 * 9 / 5 - 459.67) / viscosity(f)
    still = 2.2e-6 * 3600 * math.pi / 4 * diameter**2 / (litres / 1000) if of_still else 1
    return [figure * still * warmth for figure in figures]


def integrate(start, k, end, most, hours):
    def slope(_, c):
        rate = k * (end - c[0])
        return [min(rate, most)]

    # From where the supply is the limit on, the law is smooth again: a step of the method must not bridge the kink.
    def kink(_, c):
        return k * (end - c[0]) - most

    kink.terminal, t, c = True, 0.0, start
    while t < hours:
        watch = [kink] if k * (end - c) > most * (1 + 1e-12) else None
        done = solve_ivp(slope, (t, hours), [c], method="DOP853", rtol=1e-11, atol=1e-13, events=watch)
        t, c = done.t[-1], done.y[0][-1]
        if done.status == 1:
            c = min(c, end - most / k)
            rest = solve_ivp(lambda _, y: [k * (end - y[0])], (t, hours), [c], method="DOP853", rtol=1e-11, atol=1e-13)
            return rest.y[0][-1]
    return c


def run(case):
    volumes, litres, diameter, supply, steps = case
    tracks, rows = [volumes * VOLUME] * 3, []
    for gauge, f, hours, method in steps:
        end = held(gauge, f)
        most = math.inf if supply is None else supply / litres
        tracks = [integrate(c, k, end, most, hours) for c, k in zip(tracks, rates(method, f, litres, diameter))]
        rows.append((tracks[0], min(tracks), max(tracks)))
    return rows


def cases():
    keg = (18.93, 0.215)
    yield "constant", (0.85, *keg, None, [(11.3, 38, 168, "still")])
    yield "burst_then_hold", (0.85, *keg, None, [(30, 38, 29, "still"), (11.2, 38, 120, "still")])
    yield "stepped", (0.85, *keg, None, [(10, 40, 24, "still"), (20, 40, 24, "still"), (30, 40, 12, "still"), (12, 40, 48, "still")])
    yield "chilled", (0.85, *keg, None, [(25, 68, 24, "still"), (25, 50, 12, "still"), (25, 38, 12, "still"), (12, 38, 72, "still")])
    yield "supply_limited", (0.4, *keg, 3.0, [(30, 38, 30, "still"), (30, 38, 200, "still")])
    yield "supply_limited_stone", (0.85, *keg, 60.0, [(14, 36, 0.5, "stone"), (14, 36, 1.5, "stone")])
    yield "vented", (3.6, *keg, None, [(0, 38, 12, "still"), (5, 38, 48, "still")])
    yield "shaken", (0.85, *keg, None, [(30, 38, 0.05, "rocked"), (12, 38, 48, "still")])
    rng = random.Random(1516)
    for number in range(24):
        steps = []
        for _ in range(rng.randint(1, 5)):
            method = rng.choice(list(METHODS))
            hours = rng.uniform(0.02, 1.0) if method in ("stone", "rocked") else rng.uniform(1, 120)
            steps.append((round(rng.uniform(0, 40), 1), round(rng.uniform(33, 72), 1), round(hours, 2), method))
        supply = rng.choice((None, round(rng.uniform(1, 80), 1)))
        yield f"random_{number + 1}", (round(rng.uniform(0, 3), 2), round(rng.uniform(4, 60), 1),
                                       round(rng.uniform(0.15, 0.4), 3), supply, steps)


HEADER = """\
# Schedules of carbonating, integrated numerically (scipy, DOP853, relative tolerance 1e-11); by reference_schedule.py, which
# shares nothing with the library. steps: gauge psi, degF, hours and method of each, up to the step that the row is the end of.
# supply_g_per_h: empty where there is no limit. Tracks: as expected, and the least and most of the three, in g/L.
case,start_volumes,packaged_l,keg_diameter_m,supply_g_per_h,steps,expected,least,most
"""


def main():
    lines = []
    for name, case in cases():
        volumes, litres, diameter, supply, steps = case
        for at, row in enumerate(run(case)):
            told = "|".join(" ".join(map(str, step)) for step in steps[: at + 1])
            values = ",".join(f"{value:.12g}" for value in row)
            lines.append(f"{name},{volumes},{litres},{diameter},{'' if supply is None else supply},{told},{values}\n")
    (FOLDER / "kegging_schedule.csv").write_text(HEADER + "".join(lines), encoding="utf-8")
    freedom = [*range(1, 41), 50, 60, 80, 100, 150, 200, 300, 399]
    rows = "".join(f"{n},{student.ppf(0.975, n):.12g}\n" for n in freedom)
    head = "# Student's t for 95 %, two-sided, by scipy.stats; by reference_schedule.py.\nfreedom,t\n"
    (FOLDER / "student_t.csv").write_text(head + rows, encoding="utf-8")
    print(len(lines), "schedules,", len(freedom), "values of t")


if __name__ == "__main__":
    main()
