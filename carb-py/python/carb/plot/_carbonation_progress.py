"""CO2 in a keg under a constant pressure, by time."""

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

POINTS = 97
SPELT = {"d": "days", "h": "hours", "min": "minutes", "s": "seconds"}


def carbonation_progress(
    here: Here = None,
    /,
    *,
    volumes: float | None = None,
    co2_g_per_l: float | None = None,
    axes: System = "metric",
    ax: Axes | None = None,
    **given: Any,
) -> Axes:
    """Draw how a drink takes up CO2 under a constant pressure, as expected and between the ends of the rate.

    Parameters
    ----------
    here : At or Result, optional
        A context, or a result of ``carbonation_progress`` or ``carbonation_time``.
    volumes, co2_g_per_l : float, optional
        The carbonation that is wanted: when it is reached, at the soonest and at the latest, is marked.
    axes : {"metric", "us"}
        The units of pressure and temperature in the words beside the picture.
    ax : matplotlib.axes.Axes, optional
        Where to draw; else on a new figure.
    **given
        What ``carbonation_progress`` takes: the start, the pressure, the temperature, the method, ... ``time_d``, or
        the same in another unit, tells how long is drawn; else it is until 98 % of the gap has closed at the slow end.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    CarbError
        As ``carbonation_progress`` and ``carbonation_time`` do.

    Examples
    --------
    >>> import carb.plot
    >>> keg = {"start_volumes": 0.85, "gauge_psi": 11.2, "temperature_f": 38, "altitude_m": 0}
    >>> ax = carb.plot.carbonation_progress(volumes=2.4, time_d=14, axes="us", **keg)
    >>> ax.get_xlabel(), ax.get_ylabel()
    ('time under pressure (days)', 'CO2 in the drink (volumes)')
    """
    units = scale(axes)
    asked = {"volumes": volumes, "co2_g_per_l": co2_g_per_l}
    target = {name: value for name, value in asked.items() if value is not None}
    said = names(told(here, given))
    wanted = target or {name: said[name] for name in asked if name in said}
    # Elsewhere a carbonation stands in place of a pressure; here both are said.
    said = {name: value for name, value in said.items() if name not in asked} | wanted
    whole: Any = told(None, said)
    unit = carbonation_unit(said)
    clock, span = _span(whole, said)
    times = np.linspace(0, span, POINTS)
    with written():
        answer = whole.carbonation_progress(**{**given, f"time_{clock}": times})
    last = answer[-1]
    reached = whole.carbonation_time() if wanted else None
    at = step(said)

    ax = canvas(ax)
    least, expected, most = (getattr(getattr(answer, end), unit) for end in ("least", "expected", "most"))
    ax.fill_between(times, least, most, gid="band", **BAND)
    for values, gid in ((least, "least"), (most, "most")):
        ax.plot(times, values, color=BLUE, linewidth=0.8, gid=gid)
    ax.plot(times, expected, gid="expected", **EXPECTED)
    end = float(getattr(last.end, unit))
    ax.axhline(end, gid="end", **END)
    labels = [
        EndLabel(end, f"ends at {brief(end, unit)}", QUIET),
        EndLabel(float(expected[-1]), "expected", BLUE),
    ]
    ax.set_xlim(0, span)
    heights = [*least, *most, end]
    if reached is not None:
        goal = float(getattr(_in_every_unit(whole, wanted), unit))
        heights.append(goal)
        ax.axhline(goal, gid="target", **TARGET)
        labels.append(EndLabel(goal, f"target {brief(goal, unit)}", GREEN))
        soonest, latest = (float(getattr(getattr(reached, role), f"time_{clock}")) for role in ("soonest", "latest"))
        ax.plot([soonest, latest], [goal, goal], color=GREEN, linewidth=4, solid_capstyle="butt", gid="reached")
        words = f"{brief(goal, unit)} reached after {soonest:.3g} to {latest:.3g} {SPELT[clock]}"
        corner = {"xycoords": "axes fraction", "textcoords": "offset points", "ha": "right"}
        note(ax, words, 1, 0, color=INK, fontweight="bold", xytext=(-4, 6), **corner)
    low, high = min(heights), max(heights)
    ax.set_ylim(low - (high - low) / 12, high + (high - low) / 8)
    axis_names(ax, f"time under pressure ({SPELT[clock]})", named("CO2 in the drink", unit))
    words = f"{brief(at[f'gauge_{units.gauge}'], units.gauge)} and {brief(at[units.temperature], units.temperature)}"
    foot = ["Band: the rate of uptake is known to a factor only. Confirm by tasting.", stands_on(last, units)]
    cautions = [*last.cautions, *(reached.cautions if reached is not None else ())]
    frame(ax, f"Carbonation under {words}", cautions, [*foot, sources(last.sources)], labels=labels)
    return ax


def _in_every_unit(whole: Any, wanted: dict[str, Any]) -> Any:
    """The carbonation that is wanted, told in every unit: what the pressure that holds it makes of the drink."""
    return whole.dissolved_co2(gauge_kpa=whole.keg_pressure(**wanted).gauge_kpa)


def _span(whole: Any, said: dict[str, Any]) -> tuple[str, float]:
    """The unit of time, and how long is drawn."""
    for clock in SPELT:
        if f"time_{clock}" in said:
            return clock, float(said[f"time_{clock}"])
    end = whole.carbonation_curve()[-1]
    return ("d", float(end.d)) if end.d >= 2 else ("h", float(end.h))
