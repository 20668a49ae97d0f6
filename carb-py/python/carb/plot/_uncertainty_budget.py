"""How wide an answer is, and what makes it so."""

from __future__ import annotations

from typing import Any

from matplotlib.axes import Axes
from matplotlib.ticker import PercentFormatter

from carb import Caution, Estimate, Source, Uncertainty

from ._scale import Scale, System, brief, scale, symbols
from ._style import BLUE, INK, PAPER, QUIET, SMALL, axis_names, canvas, frame, sources

SHOWN = 8
"""So many entries are drawn; the rest weighs next to nothing and is counted."""


def uncertainty_budget(
    estimate: Estimate | Uncertainty,
    name: str | None = None,
    /,
    *,
    axes: System = "metric",
    ax: Axes | None = None,
) -> Axes:
    """Draw the interval of an answer, and the share that each input and equation has in its width.

    Parameters
    ----------
    estimate : Estimate or Uncertainty
        What ``result.uncertainty(...)`` gives, or one output of it.
    name : str, optional
        Which output, and in which unit: ``"gauge_psi"``. Default: the first, in a unit of the axes.
    axes : {"metric", "us"}
        The unit, where no name tells it.
    ax : matplotlib.axes.Axes, optional
        Where to draw; else on a new figure. Give it room above: the interval is drawn there.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    KeyError
        Where there is no such output.

    Examples
    --------
    >>> import carb.plot
    >>> keg = carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=0)
    >>> sure = keg.uncertainty(temperature_f="thermometer", volumes=("range", 0.1))
    >>> ax = carb.plot.uncertainty_budget(sure, "gauge_psi")
    >>> [tick.get_text() for tick in ax.get_yticklabels()][-1]
    'temperature_f = 38 ± 1.8'
    """
    units = scale(axes)
    whole: dict[str, Any] = {}
    if isinstance(estimate, Uncertainty):
        whole = estimate.to_dict()
        estimate = estimate[0 if name is None else name]
    elif not isinstance(estimate, Estimate):
        got = type(estimate).__name__
        raise TypeError(f"give what result.uncertainty(...) gives, or one of its outputs; not {got}")
    full, short = _output(estimate, name, units)
    unit = next((end for end in sorted(symbols(), key=len, reverse=True) if f"_{short}".endswith(f"_{end}")), "")
    shown, left = estimate.budget[:SHOWN], estimate.budget[SHOWN:]

    ax = canvas(ax, 1.4 + len(shown) / 3)
    for place, entry in enumerate(shown):
        hatched = {"facecolor": PAPER, "hatch": "////", "edgecolor": BLUE}
        own: dict[str, Any] = hatched if entry.of_an_equation else {"color": BLUE}
        ax.barh(place, entry.share, height=0.6, linewidth=1, gid=entry.name, **own)
        ax.annotate(
            f"{entry.share:.0%}",
            (entry.share, place),
            xytext=(5, 0),
            textcoords="offset points",
            va="center",
            fontsize=SMALL,
            color=INK,
        )
    ax.set_yticks(range(len(shown)), [_entry(entry) for entry in shown], fontsize=SMALL)
    ax.set_ylim(len(shown) - 0.4, -0.6)
    ax.set_xlim(0, 1.1)
    ax.set_xticks([0, 0.2, 0.4, 0.6, 0.8, 1])
    ax.xaxis.set_major_formatter(PercentFormatter(1))
    ax.grid(visible=False, axis="y")
    ax.tick_params(axis="y", length=0)
    axis_names(ax, "share of the variance (%)")
    value, low, high = (float(part[short]) for part in (estimate.value, estimate.low, estimate.high))
    _interval(ax, value, low, high, unit)
    foot = [
        "Line: about 95 % of cases. Filled: what was told of an input; hatched: what an equation leaves open.",
        f"{len(left)} more, each of less, are not drawn." if left else "",
        sources([Source(**source) for source in whole.get("sources", ())]),
    ]
    cautions = [Caution(*map(entry.get, Caution._fields)) for entry in whole.get("cautions", ())]
    frame(ax, f"How sure is {full}?", cautions, foot, room=STRIP)
    return ax


STRIP = 52.0
"""Points above the shares in which the interval stands."""


def _output(estimate: Estimate, name: str | None, units: Scale) -> tuple[str, str]:
    """The full name of an output, and the one without its noun: of the unit of the axes, where none was told."""
    both = dict(zip(estimate.names, estimate.value, strict=True))
    if name is not None:
        if name not in both:
            raise KeyError(f"there is no {name} here, but: {', '.join(both)}")
        return name, both[name]
    for full, short in both.items():
        if short.endswith((f"_{units.temperature}", f"_{units.gauge}", f"_{units.mass}")):
            return full, short
    return next(iter(both.items()))


def _entry(entry: Any) -> str:
    """What is unsure, and by how much."""
    if entry.of_an_equation:
        return f"{entry.name.removesuffix('_multiplier')}, equation ± {entry.half_width:.0%}"
    even = " (even)" if entry.kind == "range" else ""
    return f"{entry.name} = {entry.value:.4g} ± {entry.half_width:.2g}{even}"


def _interval(ax: Axes, value: float, low: float, high: float, unit: str) -> None:
    """The answer and its interval, on a scale of their own above the shares."""
    from matplotlib.transforms import ScaledTranslation, blended_transform_factory

    figure = ax.get_figure(root=True)
    assert figure is not None
    strip = blended_transform_factory(ax.transAxes, ax.transAxes) + ScaledTranslation(
        0, 26 / 72, figure.dpi_scale_trans
    )

    # The interval fills the middle of the strip; no number is read off it but those that are written.
    def place(at: float) -> float:
        return 0.2 + 0.6 * (at - low) / (high - low) if high > low else 0.5

    how: dict[str, Any] = {"transform": strip, "clip_on": False}
    ax.plot([place(low), place(high)], [1, 1], color=INK, linewidth=2, marker="|", markersize=9, gid="interval", **how)
    ax.plot([place(value)], [1], "o", color=BLUE, markeredgecolor=PAPER, markersize=9, gid="value", **how)
    for at, lift, size in ((low, -9, SMALL), (value, 8, SMALL + 2), (high, -9, SMALL)):
        ax.annotate(
            brief(at, unit) if unit else f"{at:.5g}",
            (place(at), 1),
            xycoords=strip,
            xytext=(0, lift),
            textcoords="offset points",
            ha="center",
            va="bottom" if lift > 0 else "top",
            fontsize=size,
            color=INK if at == value else QUIET,
            fontweight="bold" if at == value else "normal",
        )
