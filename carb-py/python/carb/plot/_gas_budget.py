"""Where the CO2 of a keg goes."""

from __future__ import annotations

from typing import Any

from matplotlib.axes import Axes

import carb

from ._asked import Here, names, told
from ._scale import System, brief, scale, step
from ._style import BLUE, INK, QUIET, SMALL, axis_names, canvas, frame, named, note, sources

USES = (
    ("purge", "driving out air"),
    ("dissolve", "dissolved in the drink"),
    ("headspace", "in the headspace"),
    ("serve", "pushing the drink out"),
    ("loss", "leaks and disconnecting"),
)
"""In the order in which a keg takes it."""


def gas_budget(here: Here = None, /, *, axes: System = "metric", ax: Axes | None = None, **given: Any) -> Axes:
    """Draw where the CO2 of a keg goes, use by use, and for how many kegs a cylinder lasts.

    Parameters
    ----------
    here : At or Result, optional
        A context, or a result of ``gas_budget``.
    axes : {"metric", "us"}
        Grams or ounces.
    ax : matplotlib.axes.Axes, optional
        Where to draw; else on a new figure.
    **given
        What ``gas_budget`` takes.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    CarbError
        As ``gas_budget`` does.

    Examples
    --------
    >>> import carb.plot
    >>> keg = {"packaged_l": 19, "volumes": 2.5, "start_volumes": 0.84, "temperature_c": 4, "gauge_bar": 0.8}
    >>> ax = carb.plot.gas_budget(altitude_m=240, purge="push", gas_loss_percent=10, **keg)
    >>> len(ax.patches)
    6
    """
    units = scale(axes)
    whole: Any = told(here, given)
    budget = whole.gas_budget(**given)
    gas = f"gas_{units.mass}"
    total = float(getattr(budget.total, gas))
    said = names(whole)

    ax = canvas(ax, 3.2)
    begun = 0.0
    for place, (use, _) in enumerate(USES):
        mass = float(getattr(getattr(budget, use), gas))
        ax.barh(place, mass, left=begun, height=0.6, color=BLUE, alpha=0.5, gid=use)
        ax.plot([begun, begun], [place - 1, place] if place else [0, 0], color=QUIET, linewidth=0.8)
        _beside(ax, begun + mass, place, brief(mass, units.mass))
        begun += mass
    ax.plot([begun, begun], [len(USES) - 1, len(USES)], color=QUIET, linewidth=0.8)
    ax.barh(len(USES), total, height=0.6, color=INK, alpha=0.8, gid="total")
    _beside(ax, total, len(USES), brief(total, units.mass))
    least = float(getattr(budget.least, gas))
    if least < total:
        ax.plot([least, least], [len(USES) - 0.4, len(USES) + 0.4], color="white", linewidth=1.6, gid="least")
    ax.set_yticks(range(len(USES) + 1), [*(words for _, words in USES), "in all"], fontsize=SMALL)
    ax.invert_yaxis()
    ax.grid(visible=False, axis="y")
    ax.tick_params(axis="y", length=0)
    ax.set_xlim(0, total * 1.2 or 1)
    at = step(said)
    words = f"{brief(at[f'gauge_{units.gauge}'], units.gauge)} and {brief(at[units.temperature], units.temperature)}"
    axis_names(ax, named("CO2 for one keg", units.mass))
    note(
        ax,
        _cylinder(said, budget),
        1,
        1,
        xycoords="axes fraction",
        xytext=(0, -6),
        textcoords="offset points",
        ha="right",
        va="top",
        color=INK,
        fontweight="bold",
    )
    bare = f"At the bare minimum (no purging, no losses; white mark): {brief(least, units.mass)}."
    kept = bare if least < total else ""
    frame(ax, f"CO2 of a keg at {words}", budget.cautions, [kept, sources(budget.sources)])
    return ax


def _beside(ax: Axes, x: float, y: float, text: str) -> None:
    ax.annotate(text, (x, y), xytext=(5, 0), textcoords="offset points", va="center", fontsize=SMALL, color=INK)


def _cylinder(said: dict[str, Any], budget: Any) -> str:
    kegs, most = float(budget.kegs_count), float(budget.most.kegs_count)
    size = said.get("cylinder_size")
    cylinder = "a full cylinder" if size is None else f"a full {carb.cylinder_sizes()[size].title}"
    enough = f"{cylinder} does {kegs:.3g} such kegs"
    return enough if most <= kegs else f"{enough},\n{most:.3g} at the bare minimum"
