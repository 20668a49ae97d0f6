"""Pressure in a sealed bottle, by temperature."""

from __future__ import annotations

from typing import Any

import numpy as np
from matplotlib.axes import Axes

import carb
from carb import Caution

from ._asked import Here, names, told
from ._scale import System, brief, carbonation_unit, scale
from ._style import (
    BLUE,
    EXPECTED,
    FULL,
    INK,
    LIMIT,
    OUTSIDE,
    VERMILION,
    WORST,
    EndLabel,
    axis_names,
    canvas,
    frame,
    named,
    note,
    sources,
    stands_on,
)

HEATED = "heated_glass"
"""The caution of temperatures at which no bottle is judged."""


def bottle_pressure(here: Here = None, /, *, axes: System = "metric", ax: Axes | None = None, **given: Any) -> Axes:
    """Draw the pressure in a sealed bottle by temperature, as expected and at worst, and the limit it is judged by.

    Temperatures at which the worst case is over the limit are crossed. Above 40 °C no limit is drawn, because no margin
    is known there.

    Parameters
    ----------
    here : At or Result, optional
        A context, or a result of ``package_pressure``.
    axes : {"metric", "us"}
        °C and bar, or °F and psi.
    ax : matplotlib.axes.Axes, optional
        Where to draw; else on a new figure.
    **given
        What ``bottle_pressures`` takes: the carbonation, the class or the rating of the bottle, the headspace, ...

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    CarbError
        As ``bottle_pressures`` does.

    Examples
    --------
    >>> import carb.plot
    >>> ax = carb.plot.bottle_pressure(volumes=2.4, bottle_class="swing_top", altitude_m=240)
    >>> [line.get_gid() for line in ax.get_lines()]
    ['expected', 'worst', 'limit']
    """
    units = scale(axes)
    whole: Any = told(here, given)
    table = whole.bottle_pressures(**given)
    judged = [row for row in table if row.caution != HEATED]
    # A bottle that is full of liquid has no pressure to tell; where all are, this says why.
    hottest = ([row for row in judged if not row.refused] or judged)[-1]
    told_of = whole.package_pressure(temperature_c=hottest.c)
    said = names(whole)

    ax = canvas(ax)
    warmth = np.array(table.column(units.temperature), dtype=float)

    def pressures(role: str) -> Any:
        return np.array(table.column(f"{role}_gauge_{units.gauge}"), dtype=float)

    expected, worst = pressures("expected"), pressures("worst")
    ax.plot(warmth, expected, gid="expected", **EXPECTED)
    ax.plot(warmth, worst, gid="worst", **WORST)
    last = judged[-1][units.temperature]
    limits = [(row[units.temperature], row[f"limit_gauge_{units.gauge}"]) for row in judged]
    within = [pair for pair in limits if pair[1] is not None]
    labels = [
        EndLabel(float(values[np.isfinite(values)][-1]), text, color)
        for values, text, color in ((expected, "expected", BLUE), (worst, "worst case", VERMILION))
    ]
    if within:
        ax.plot(*zip(*within, strict=True), gid="limit", **LIMIT)
        note(
            ax,
            _limit(said, within[-1][1], judged[-1], units),
            within[0][0],
            within[0][1],
            color=INK,
            xytext=(6, 4),
            textcoords="offset points",
            va="bottom",
        )
    over = [row for row in judged if _over(row, units)]
    if over:
        ax.plot(
            [row[units.temperature] for row in over],
            [row[f"worst_gauge_{units.gauge}"] for row in over],
            "X",
            color=VERMILION,
            markeredgecolor=INK,
            markersize=9,
            gid="over the limit",
            zorder=5,
        )
        highest = over[-1]
        note(
            ax,
            "over the limit",
            highest[units.temperature],
            highest[f"worst_gauge_{units.gauge}"],
            color=INK,
            xytext=(-6, 16),
            textcoords="offset points",
            ha="right",
            fontweight="bold",
        )
    shaded = ax.axvspan(last, warmth[-1], **OUTSIDE)
    shaded.set_zorder(0)
    top = np.nanmax([*worst, *(pair[1] for pair in within)])
    ax.set_xlim(warmth[0], warmth[-1])
    ax.set_ylim(min(0, np.nanmin(expected)), top * 1.2)
    hot = f"never heat filled glass:\nno margin is known\nabove {brief(last, units.temperature)}"
    below = {"xycoords": ("data", "axes fraction"), "textcoords": "offset points", "va": "bottom"}
    note(ax, hot, last, 0, color=INK, xytext=(6, 6), fontweight="bold", **below)
    full = [row for row in table if row.refused]
    cautions = told_of.cautions
    if full:
        begins = full[0][units.temperature]
        bursts = f"full of liquid at {brief(begins, units.temperature)}: it bursts"
        ax.axvspan(begins, warmth[-1], **FULL).set_zorder(0)
        ax.axvline(begins, color=VERMILION, linewidth=2, gid="full of liquid")
        note(ax, bursts, begins, 1, color=VERMILION, xytext=(6, -16), fontweight="bold", **below)
        cautions = (Caution("vessel_full", "danger", f"the bottle is {bursts}", begins, None, ""), *cautions)
    axis_names(
        ax, named("temperature of the bottle", units.temperature), named("pressure in the bottle, gauge", units.gauge)
    )
    unit = carbonation_unit(said)
    title = f"Bottle closed with {brief(said[unit], unit)}" + _of(said)
    foot = [
        f"The pressure told above is that at {brief(hottest[units.temperature], units.temperature)}." if over else "",
        stands_on(told_of, units),
        sources(told_of.sources),
    ]
    frame(ax, title, cautions, foot, labels=labels)
    return ax


def _over(row: Any, units: Any) -> bool:
    limit, worst = row[f"limit_gauge_{units.gauge}"], row[f"worst_gauge_{units.gauge}"]
    return limit is not None and worst is not None and worst > limit


def _of(said: dict[str, Any]) -> str:
    kind = said.get("bottle_class")
    return "" if kind is None else f", {carb.bottle_classes()[kind].title.split(',')[0]}"


def _limit(said: dict[str, Any], limit: float, row: Any, units: Any) -> str:
    value = brief(limit, units.gauge)
    if any(name.startswith("rating_gauge_") for name in said):
        return f"rating of the bottle: {value}"
    kind = "this class" if "bottle_class" in said else "heavier reusable bottles"
    hot = brief(row[units.temperature], units.temperature)
    return f"{value}: {kind} in usual use at {hot}, no rating"
