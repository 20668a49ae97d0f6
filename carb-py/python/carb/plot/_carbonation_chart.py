"""Pressure against temperature, with lines of equal carbonation."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from matplotlib.axes import Axes

from carb import DissolvedCo2, KegPressure, KegTemperature, Result

from ._asked import Here, names, told, written
from ._scale import Scale, System, brief, scale, step, symbol
from ._style import (
    BLUE,
    INK,
    OUTSIDE,
    PAPER,
    VERMILION,
    EndLabel,
    axis_names,
    canvas,
    frame,
    named,
    note,
    sources,
    stands_on,
)

USUAL: dict[str, Sequence[float]] = {
    "volumes": (1.6, 1.8, 2.0, 2.2, 2.4, 2.6, 2.8, 3.0, 3.2),
    "co2_g_per_l": (3, 4, 5, 6, 7),
}
"""Lines that are drawn where none are asked for: from cask ale to wheat beer."""
FROM_TO: dict[str, tuple[float, float]] = {"c": (0, 20), "f": (32, 68)}
"""Temperatures of the chart where none are told."""
POINTS = 201


def carbonation_chart(
    here: Here = None,
    /,
    *,
    volumes: Sequence[float] | float | None = None,
    co2_g_per_l: Sequence[float] | float | None = None,
    axes: System = "metric",
    ax: Axes | None = None,
    **given: Any,
) -> Axes:
    """Draw at which pressure a drink holds how much CO2, by temperature.

    Where the equation is asked beyond the range of its source the lines are broken and the paper is hatched.

    Parameters
    ----------
    here : At or Result, optional
        A context, or a result of ``keg_pressure``, ``dissolved_co2`` or ``keg_temperature``: that is marked too.
    volumes, co2_g_per_l : float or sequence of float, optional
        The carbonations to draw. Default: 1.6 to 3.2 volumes.
    axes : {"metric", "us"}
        °C and bar, or °F and psi.
    ax : matplotlib.axes.Axes, optional
        Where to draw; else on a new figure.
    **given
        What ``keg_pressure`` takes: the altitude, the drink, the gas, the model. ``temperature_c=(from, to)``, or the
        same in another unit, tells how far the chart goes.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    CarbError
        As ``keg_pressure`` does.

    Examples
    --------
    >>> import carb.plot
    >>> ax = carb.plot.carbonation_chart(volumes=[2.2, 2.5], temperature_c=(0, 12), altitude_m=240)
    >>> [line.get_gid() for line in ax.get_lines()]
    ['volumes 2.2', 'volumes 2.2 in range', 'volumes 2.5', 'volumes 2.5 in range']
    """
    units = scale(axes)
    ends = {name: given.pop(name) for name in list(given) if name.startswith("temperature_")}
    low, high = _from_to(ends, units)
    temperatures = np.linspace(low, high, POINTS)
    lines = [(unit, lines) for unit, lines in (("volumes", volumes), ("co2_g_per_l", co2_g_per_l)) if lines is not None]
    if not lines:
        from_given = isinstance(here, Result) and "co2_g_per_l" in here.request
        unit = "co2_g_per_l" if from_given else "volumes"
        lines = [(unit, USUAL[unit])]

    whole: Any = told(here, given)
    at = {f"temperature_{units.temperature}": temperatures, "errors": "nan"}
    drawn = []
    with written():
        for unit, values in lines:
            for value in np.atleast_1d(np.asarray(values, dtype=float)):
                answer = whole.keg_pressure(**{**given, unit: float(value), **at})
                drawn.append((unit, float(value), answer))
    known = next((answer[answer.status >= 0][0] for *_, answer in drawn if (answer.status >= 0).any()), None)
    if not drawn:
        raise ValueError("there is no carbonation to draw: give some volumes, or leave them out")
    if known is None:
        # Nothing can be drawn: this says why.
        unit, value, _ = drawn[-1]
        known = whole.keg_pressure(**{**given, unit: value, f"temperature_{units.temperature}": high})
    point = _point(here, whole, units)

    ax = canvas(ax)
    gauge = f"gauge_{units.gauge}"
    tops = []
    labels = []
    for unit, value, answer in drawn:
        held = np.where(getattr(answer, gauge) >= 0, getattr(answer, gauge), np.nan)
        sure = np.where(answer.status == 0, held, np.nan)
        ax.plot(temperatures, held, color=BLUE, linewidth=1, linestyle=(0, (4, 3)), gid=f"{unit} {value:g}")
        ax.plot(temperatures, sure, color=BLUE, linewidth=1.8, gid=f"{unit} {value:g} in range")
        if np.isfinite(held[-1]):
            labels.append((float(held[-1]), value, unit))
        if np.isfinite(held).any():
            tops.append(float(np.nanmax(held)))
    ax.set_xlim(low, high)
    top = max([*tops, point[1] if point else 0])
    ax.set_ylim(0, top * 1.1 or 1)
    _hatch(ax, whole, units, temperatures)
    if point:
        x, y, text = point
        ax.plot([x], [y], "o", color=VERMILION, markeredgecolor=PAPER, markersize=9, gid="point", zorder=5)
        side = "left" if x < (low + high) / 2 else "right"
        note(ax, text, x, y, color=INK, xytext=(0, 9), textcoords="offset points", ha=side, fontweight="bold")
    axis_names(ax, named("temperature of the drink", units.temperature), named("pressure, gauge", units.gauge))
    cautions = here.cautions if point and isinstance(here, Result) else ()
    foot = [stands_on(known, units), sources(known.sources)]
    frame(ax, "Pressure that holds a carbonation", cautions, foot, labels=_names_of(labels))
    return ax


def _names_of(ends: list[tuple[float, float, str]]) -> list[EndLabel]:
    """The carbonation of each line, with as many decimals as any has, and the unit once for each unit."""
    places = max((len(f"{value:g}".partition(".")[2]) for _, value, _ in ends), default=0)
    named_last = {unit: max(y for y, _, other in ends if other == unit) for _, _, unit in ends}
    return [
        EndLabel(y, f"{value:.{places}f} {symbol(unit)}" if y == named_last[unit] else f"{value:.{places}f}", BLUE)
        for y, value, unit in ends
    ]


def _from_to(ends: dict[str, Any], units: Scale) -> tuple[float, float]:
    if not ends:
        return FROM_TO[units.temperature]
    for name, pair in ends.items():
        if np.shape(pair) != (2,):
            raise TypeError(f"{name} of a chart is a pair, from and to, such as (0, 20)")
    low, high = (float(step({name: pair[end] for name, pair in ends.items()})[units.temperature]) for end in (0, 1))
    if low >= high:
        raise ValueError(f"the temperatures of a chart go from the lower to the higher one, not {ends}")
    return low, high


def _point(here: Here, whole: Any, units: Scale) -> tuple[float, float, str] | None:
    """Where the brewer's own state lies on the chart, and what to write beside it."""
    if not isinstance(here, (KegPressure, DissolvedCo2, KegTemperature)):
        return None
    said = names(whole)
    if isinstance(here, KegTemperature):
        said["temperature_c"] = here.temperature_c
        keg = whole.keg_pressure(temperature_c=here.temperature_c)
    else:
        keg = here if isinstance(here, KegPressure) else whole.keg_pressure(co2_g_per_l=here.co2_g_per_l)
    x = float(step({name: said[name] for name in said if name.startswith("temperature_")})[units.temperature])
    y = float(getattr(keg, f"gauge_{units.gauge}"))
    unit = "co2_g_per_l" if "co2_g_per_l" in said else "volumes"
    held = here.volumes if isinstance(here, DissolvedCo2) else said[unit]
    return x, y, f"{brief(float(held), unit)} at {brief(x, units.temperature)}: {brief(y, units.gauge)}"


def _hatch(ax: Axes, whole: Any, units: Scale, temperatures: Any) -> None:
    """Hatches where the equation is asked beyond the range of its source."""
    pressures = np.linspace(*ax.get_ylim(), POINTS)
    at = {f"temperature_{units.temperature}": temperatures[None, :], f"gauge_{units.gauge}": pressures[:, None]}
    with written():
        outside = whole.dissolved_co2(**at, errors="nan").status != 0
    if not outside.any():
        return
    hatched = ax.contourf(temperatures, pressures, outside, levels=[1e-3, 2], colors="none", hatches=["////"])
    hatched.set_edgecolor(OUTSIDE["edgecolor"])
    hatched.set_zorder(0)
    beyond = "////  broken lines: beyond the range of the source, extrapolated"
    note(ax, beyond, 0, 1, xycoords="axes fraction", xytext=(6, -6), textcoords="offset points", va="top")
