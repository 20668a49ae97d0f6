"""A burst of high pressure, then the pressure that holds."""

from __future__ import annotations

from typing import Any

import numpy as np
from matplotlib.axes import Axes

from ._asked import Here, names, told, written
from ._scale import System, brief, carbonation_unit, scale, step
from ._style import (
    BAND,
    BLUE,
    END,
    EXPECTED,
    FAINT,
    GREEN,
    INK,
    QUIET,
    TARGET,
    EndLabel,
    axis_names,
    canvas,
    frame,
    named,
    note,
    sources,
    stands_on,
)

PARTS = 10
"""Steps into which each of the two is cut; the library tells each in four points."""
SHARED = ("start_", "method", "packaged_", "keg_diameter_", "kla_", "altitude_", "ambient_", "sea_level_")
DRINK = ("beverage", "abv_percent", "extract_g_per_l", "basis", "model", "solubility_multiplier")


def burst_schedule(here: Here = None, /, *, axes: System = "metric", ax: Axes | None = None, **given: Any) -> Axes:
    """Draw a burst of high pressure that cannot pass the target, and the rest under the pressure that holds it.

    Parameters
    ----------
    here : At or Result, optional
        A context, or a result of ``burst_time``.
    axes : {"metric", "us"}
        The units of pressure and temperature in the words of the picture.
    ax : matplotlib.axes.Axes, optional
        Where to draw; else on a new figure.
    **given
        What ``burst_time`` takes: the start, the target, the pressure of the burst, the temperature, the method, ...

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    CarbError
        As ``burst_time`` does.

    Examples
    --------
    >>> import carb.plot
    >>> keg = carb.burst_time(start_volumes=0.85, volumes=2.5, burst_gauge_bar=2, temperature_c=4, altitude_m=0)
    >>> ax = carb.plot.burst_schedule(keg)
    >>> ax.get_xlabel()
    'time (days)'
    """
    units = scale(axes)
    whole: Any = told(here, given)
    burst = whole.burst_time(**given)
    said = names(whole)
    unit = carbonation_unit(said)
    at = step(said, "burst_")
    hold, stop, rest = burst.hold, burst.stop.time_h, burst.latest_rest.time_h
    warmth = {"temperature_c": at.c}
    steps = [
        {"gauge_kpa": gauge, **warmth, "time_h": hours / PARTS}
        for gauge, hours in ((at.gauge_kpa, stop), (hold.gauge_kpa, rest))
        for _ in range(PARTS)
        if hours > 0
    ]
    shared = {name: value for name, value in said.items() if name.startswith(SHARED) or name in DRINK}
    keg: Any = told(None, {**shared, **warmth, "gauge_kpa": hold.gauge_kpa})
    rows = keg.carbonation_schedule(schedule=steps)
    clock = "d" if rows[-1].d >= 2 else "h"
    times = np.array([0, *rows.column(clock)])
    with written():
        steady = keg.carbonation_progress(**{f"time_{clock}": times})

    def held(role: str) -> Any:
        return np.array([getattr(steady.expected, unit)[0], *rows.column(f"{role}_{unit}")])

    high_gauge, low_gauge = float(at[f"gauge_{units.gauge}"]), float(getattr(hold, f"gauge_{units.gauge}"))

    ax = canvas(ax)
    least, expected, most = held("least"), held("expected"), held("most")
    ax.fill_between(times, least, most, gid="band", **BAND)
    ax.plot(times, expected, gid="expected", **EXPECTED)
    without = getattr(steady.expected, unit)
    ax.plot(times, without, gid="without burst", **END)
    goal = float(getattr(steady[-1].end, unit))
    ax.axhline(goal, gid="target", **TARGET)
    turn = float(getattr(burst.stop, f"time_{clock}"))
    ax.axvspan(0, turn, color=FAINT, alpha=0.6, linewidth=0, zorder=0)
    ax.axvline(turn, color=INK, linewidth=1, gid="stop")
    low, high = float(least.min()), max(float(most.max()), goal)
    ax.set_xlim(0, float(times[-1]))
    ax.set_ylim(low - (high - low) / 12, high + (high - low) / 4)
    burst_bar, hold_bar = (brief(gauge, units.gauge) for gauge in (high_gauge, low_gauge))
    words = f"{burst_bar} for {_long(burst.stop)},\nthen {hold_bar}"
    corner = {"xycoords": ("data", "axes fraction"), "textcoords": "offset points", "va": "top"}
    note(ax, words, turn, 1, color=INK, fontweight="bold", xytext=(5, -4), **corner)
    labels = [
        EndLabel(goal, f"target {brief(goal, unit)}", GREEN),
        EndLabel(float(expected[-1]), "expected", BLUE),
        EndLabel(float(without[-1]), f"{hold_bar} all along", QUIET),
    ]
    axis_names(ax, f"time ({'days' if clock == 'd' else 'hours'})", named("CO2 in the drink", unit))
    foot = [
        "Band: slow and fast end of the rate of uptake; the burst ends where the fast end meets the target.",
        stands_on(burst, units),
        sources(burst.sources),
    ]
    title = f"A burst, then the pressure that holds, at {brief(at[units.temperature], units.temperature)}"
    frame(ax, title, burst.cautions, foot, labels=labels)
    return ax


def _long(time: Any) -> str:
    """A time in the unit in which it is no fraction."""
    clock = next((clock for clock in ("h", "min") if getattr(time, f"time_{clock}") >= 1), "s")
    return brief(float(getattr(time, f"time_{clock}")), clock)
