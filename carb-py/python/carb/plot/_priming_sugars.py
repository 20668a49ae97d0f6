"""What one batch takes of each sugar."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from matplotlib.axes import Axes

import carb

from ._asked import Here, names, told
from ._scale import System, brief, scale
from ._style import (
    BLUE,
    INK,
    PAPER,
    SMALL,
    VERMILION,
    axis_names,
    canvas,
    frame,
    named,
    sources,
    stands_on,
)

USUAL = (
    "sucrose",
    "dextrose_anhydrous",
    "dextrose_monohydrate",
    "demerara",
    "brown_sugar",
    "invert_syrup",
    "honey",
    "maple_syrup",
    "dry_malt_extract",
    "liquid_malt_extract",
    "molasses",
    "agave_syrup",
)
"""The sugars that are drawn where none are asked for: what a brewer may have in the cupboard."""

UNSOURCED = "common practice, no source"


def priming_sugars(
    here: Here = None,
    /,
    *,
    sugars: Sequence[str] | None = None,
    axes: System = "metric",
    ax: Axes | None = None,
    **given: Any,
) -> Axes:
    """Draw how much of each sugar primes a batch, and how far samples of a sugar differ.

    Parameters
    ----------
    here : At or Result, optional
        A context, or a result of ``priming_sugar``: its sugar is marked.
    sugars : sequence of str, optional
        Which, by their names in ``fermentables()``. Default: what is usual.
    axes : {"metric", "us"}
        Grams or ounces.
    ax : matplotlib.axes.Axes, optional
        Where to draw; else on a new figure.
    **given
        What ``priming_sugar`` takes; its ``sugar`` is marked.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    CarbError
        As ``priming_sugar`` does.

    Examples
    --------
    >>> import carb.plot
    >>> batch = {"volumes": 2.4, "warmest_c": 20.5, "packaged_l": 19.2, "altitude_m": 240}
    >>> ax = carb.plot.priming_sugars(sugars=["sucrose", "honey"], **batch)
    >>> [tick.get_text() for tick in ax.get_yticklabels()]
    ['honey', 'sucrose (table sugar)']
    """
    units = scale(axes)
    whole: Any = told(here, given)
    known = carb.fermentables()
    own = names(whole).get("sugar")
    chosen = list(dict.fromkeys(USUAL if sugars is None else [sugars] if isinstance(sugars, str) else sugars))
    if own is not None and own not in chosen and own in known:
        chosen.append(own)
    factor = names(whole).get("yield_multiplier", 1)
    mass = f"mass_{units.mass}"

    def dose(sugar: str, **more: Any) -> Any:
        return whole.priming_sugar(**{**given, "sugar": sugar, **more})

    rows = []
    for sugar in chosen:
        usual = dose(sugar)
        made = known[sugar]
        # The range of a composition enters as the library has it, by the factor on the yield.
        ends = [factor * end / made.yield_g_per_g for end in (made.high_yield_g_per_g, made.low_yield_g_per_g)]
        low, high = (getattr(dose(sugar, yield_multiplier=end), mass) for end in ends)
        rows.append((made, usual, low, high))
    if not rows:
        raise ValueError("sugars is empty: name some of carb.fermentables(), or leave it out")
    rows.sort(key=lambda row: getattr(row[1], mass), reverse=True)

    ax = canvas(ax, 1 + len(rows) / 4)
    places = np.arange(len(rows))[::-1]
    doses = [getattr(row[1], mass) for row in rows][::-1]
    bars = ax.barh(range(len(rows)), doses, height=0.6, color=BLUE, alpha=0.3)
    furthest = max(row[3] for row in rows)
    for place, (made, usual, low, high) in zip(places, rows, strict=True):
        value = getattr(usual, mass)
        mine = made.name == own
        ax.plot([low, high], [place, place], color=INK, linewidth=1.4, marker="|", gid=f"range {made.name}")
        ax.plot([value], [place], "o", color=BLUE, markeredgecolor=PAPER, gid=f"dose {made.name}")
        ax.annotate(
            f"{brief(value, units.mass)}{'  ◄ yours' if mine else ''}",
            (max(high, value), place),
            xytext=(6, 0),
            textcoords="offset points",
            va="center",
            fontsize=SMALL,
            fontweight="bold" if mine else "normal",
            color=VERMILION if mine else INK,
        )
    assert len(bars) == len(rows)
    ax.set_yticks(places, [f"{_short(made.title)}{_star(made)}" for made, *_ in rows], fontsize=SMALL)
    ax.set_xlim(0, furthest * 1.2)
    ax.grid(visible=False, axis="y")
    ax.tick_params(axis="y", length=0)
    axis_names(ax, named("sugar for the whole batch", units.mass))
    usual = [row[1] for row in rows]
    foot = [
        "Bar and dot: usual composition; line: from the richest to the poorest samples.",
        f"* Composition by {UNSOURCED}." if any(_star(row[0]) for row in rows) else "",
        stands_on(usual[0], units),
        sources(usual[0].sources),
    ]
    cautions = [caution for result in usual for caution in result.cautions]
    frame(ax, f"Priming sugar for {_batch(names(whole))}", cautions, foot)
    return ax


def _star(made: Any) -> str:
    return " *" if made.standing == UNSOURCED else ""


def _short(title: str) -> str:
    """A title without what only tells packets apart."""
    return title.replace(" (corn sugar as usually sold)", "").split(", dry matter")[0]


def _batch(said: dict[str, Any]) -> str:
    def first(role: str) -> str:
        return next((brief(said[n], n.removeprefix(role)) for n in said if n.startswith(role)), "a batch")

    unit = "co2_g_per_l" if "co2_g_per_l" in said else "volumes"
    held = f" at {brief(said[unit], unit)}" if unit in said else ""
    return f"{first('packaged_')}{held}"
