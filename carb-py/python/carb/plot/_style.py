"""How pictures look: colours, frame, words around and inside them."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from functools import cache
from typing import Any, NamedTuple

from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.font_manager import FontProperties
from matplotlib.text import Annotation
from matplotlib.textpath import TextToPath

import carb
from carb import Caution, Source

from ._scale import Scale, brief, symbol

# Blue, vermilion and green are those of Okabe and Ito (Color Universal Design, 2008), which people with any of the
# usual colour-blindnesses tell apart. No picture depends on it: each line has its own style, and its name beside it.
INK = "#1f2d3a"
QUIET = "#4d5863"
FAINT = "#d9dee2"
PAPER = "#ffffff"
BLUE = "#0072b2"
VERMILION = "#d55e00"
GREEN = "#009e73"

EXPECTED: dict[str, Any] = {"color": BLUE, "linestyle": "-", "linewidth": 2}
WORST: dict[str, Any] = {"color": VERMILION, "linestyle": "--", "linewidth": 2}
LIMIT: dict[str, Any] = {"color": INK, "linestyle": (0, (7, 2, 1, 2)), "linewidth": 1.4}
TARGET: dict[str, Any] = {"color": GREEN, "linestyle": (0, (3, 2)), "linewidth": 1.6}
END: dict[str, Any] = {"color": QUIET, "linestyle": ":", "linewidth": 1.6}
BAND: dict[str, Any] = {"color": BLUE, "alpha": 0.2, "linewidth": 0}
FULL: dict[str, Any] = {"hatch": "xx", "edgecolor": VERMILION, "facecolor": "none", "linewidth": 0, "alpha": 0.4}
"""Where a bottle is full of liquid."""
OUTSIDE: dict[str, Any] = {"hatch": "////", "edgecolor": FAINT, "facecolor": "none", "linewidth": 0}

BODY, SMALL, TINY, TITLE = 9.0, 8.0, 6.5, 11.0
LINE = 1.3
"""Height of a line of text, in sizes of its type."""
LEFT = 0.7
"""How much of the width of axes that were given is counted on."""
OURS = "carb.plot"
"""Marks a figure that was made here, and may grow."""


def canvas(ax: Axes | None, height: float = 3.8) -> Axes:
    """The axes to draw on, dressed; new ones where none are given."""
    if ax is None:
        from matplotlib import pyplot

        figure, made = pyplot.subplots(figsize=(7, height), dpi=100, facecolor=PAPER)
        figure.set_gid(OURS)
        figure.set_layout_engine("constrained", w_pad=0.1, h_pad=0.1)
        ax = made
    ax.set_facecolor(PAPER)
    for side, spine in ax.spines.items():
        spine.set_visible(side in ("left", "bottom"))
        spine.set_color(QUIET)
    ax.tick_params(colors=QUIET, labelcolor=INK, labelsize=SMALL)
    ax.grid(color=FAINT, linewidth=0.6)
    ax.set_axisbelow(True)
    return ax


def axis_names(ax: Axes, x: str, y: str = "") -> None:
    """What the axes are, with their units."""
    ax.set_xlabel(x, fontsize=BODY, color=INK)
    ax.set_ylabel(y, fontsize=BODY, color=INK)


def named(what: str, unit: str) -> str:
    """The name of an axis: ``pressure, gauge (bar)``."""
    return f"{what} ({symbol(unit)})"


class EndLabel(NamedTuple):
    """A name beside the right end of a line."""

    y: float
    text: str
    color: str


def _end_labels(ax: Axes, labels: Iterable[EndLabel]) -> list[tuple[EndLabel, Annotation]]:
    """Names at the right edge, as high as the ends of their lines."""
    how: dict[str, Any] = {"xycoords": ("axes fraction", "data"), "textcoords": "offset points", "va": "center"}
    return [
        (label, ax.annotate(label.text, (1, label.y), xytext=(5, 0), fontsize=SMALL, color=label.color, **how))
        for label in sorted(labels, key=lambda label: label.y)
    ]


def _spread(ax: Axes, placed: Sequence[tuple[EndLabel, Annotation]], dots: float) -> None:
    """Moves names apart that would touch: those that would are one pile, about the middle of their lines."""
    gap = SMALL * LINE
    heights = [float(ax.transData.transform((0, label.y))[1]) / dots for label, _ in placed]
    piles = [[height] for height in heights]

    def lowest(pile: list[float]) -> float:
        return sum(pile) / len(pile) - gap * (len(pile) - 1) / 2

    at = 1
    while at < len(piles):
        below, above = piles[at - 1], piles[at]
        if lowest(above) - (lowest(below) + gap * (len(below) - 1)) < gap:
            piles[at - 1 : at + 1] = [below + above]
            at = max(1, at - 1)
        else:
            at += 1
    places = [lowest(pile) + gap * place for pile in piles for place in range(len(pile))]
    for height, place, (_, text) in zip(heights, places, placed, strict=True):
        text.xyann = (5, place - height)


def note(ax: Axes, text: str, x: float, y: float, *, color: str = QUIET, **how: Any) -> None:
    """A few words inside a picture, on paper of their own so that lines do not cross them."""
    box = {"facecolor": PAPER, "edgecolor": "none", "pad": 1.5, "alpha": 0.9}
    ax.annotate(text, (x, y), **{"fontsize": SMALL, "color": color, "bbox": box, **how})


def _first_sentence(text: str) -> str:
    return re.split(r"\.\s+(?=[A-Z])", text, maxsplit=1)[0].rstrip(".")


def minded(cautions: Iterable[Caution]) -> list[Caution]:
    """Dangers and cautions, each once, the gravest first; notes are what every answer stands on."""
    once = {caution.code: caution for caution in cautions if caution.level != "note"}
    return sorted(once.values(), key=lambda caution: caution.level != "danger")


def frame(
    ax: Axes,
    title: str,
    cautions: Iterable[Caution],
    foot: Sequence[str],
    *,
    labels: Iterable[EndLabel] = (),
    room: float = 0,
) -> None:
    """The title, what is to be minded above the picture, what it stands on below, and the names of lines beside it.

    ``room`` is what the picture itself needs above its axes, in points.
    """
    figure = ax.get_figure(root=True)
    assert isinstance(figure, Figure)
    placed = _end_labels(ax, labels)
    _lay_out(figure)
    points = ax.get_window_extent().width * 72 / figure.dpi
    if figure.get_gid() != OURS:
        # What is drawn later beside it may leave it less room, and no danger may run off the figure.
        points *= LEFT
    beside: dict[str, Any] = {"xycoords": "axes fraction", "textcoords": "offset points"}
    height = 6 + room
    for caution in reversed(minded(cautions)):
        danger = caution.level == "danger"
        weight = "bold" if danger else "normal"
        said = _wrap(f"{caution.level.capitalize()}: {_first_sentence(caution.text)}.", points, SMALL, weight)
        look: dict[str, Any] = {"color": VERMILION} if danger else {"color": INK, "fontstyle": "italic"}
        ax.annotate(said, (0, 1), xytext=(0, height), va="bottom", fontsize=SMALL, fontweight=weight, **look, **beside)
        height += (said.count("\n") + 1) * SMALL * LINE + 2
    head = _wrap(title, points, TITLE, "bold")
    ax.set_title(head, loc="left", fontsize=TITLE, fontweight="bold", color=INK, pad=height + 2)
    below = "\n".join(_wrap(line, points, TINY) for line in foot if line)
    drop = 2 * SMALL + BODY * LINE + 8
    ax.annotate(below, (0, 0), xytext=(0, -drop), va="top", fontsize=TINY, color=QUIET, linespacing=LINE, **beside)
    if figure.get_gid() == OURS:
        # The picture keeps its height, however much is written around it.
        more = height + below.count("\n") * TINY * LINE
        figure.set_figheight(figure.get_figheight() + more / 72)
    _lay_out(figure)
    _spread(ax, placed, figure.dpi / 72)


@cache
def _wide(word: str, size: float, weight: str) -> float:
    """Width of a word, in points."""
    font = FontProperties(size=size, weight=weight)
    return float(TextToPath().get_text_width_height_descent(word, font, False)[0])


def _wrap(text: str, points: float, size: float, weight: str = "normal") -> str:
    """The text in lines that are no wider than so many points."""
    lines: list[list[str]] = [[]]
    space, used = _wide("n n", size, weight) - _wide("nn", size, weight), 0.0
    for word in text.split(" "):
        wide = space + _wide(word, size, weight)
        if lines[-1] and used + wide > points:
            lines.append([])
            used = 0
        lines[-1].append(word)
        used += wide
    return "\n".join(map(" ".join, lines))


def _lay_out(figure: Figure) -> None:
    """Places the axes, so that it is known where and how wide they are."""
    engine = figure.get_layout_engine()
    if engine is not None:
        engine.execute(figure)


def stands_on(result: Any, units: Scale) -> str:
    """The drink, the air and the model of a result, as they were used."""
    parts = []
    if result.beverage is not None:
        drink = result.beverage
        kind = drink.beverage.replace("_", " ")
        parts.append(f"{kind} of {drink.abv_percent:.3g} % vol and {drink.extract_g_per_l:.3g} g/L extract")
    if result.ambient is not None:
        air = result.ambient[f"ambient_{units.ambient}"]
        parts.append(f"air outside at {brief(air, units.ambient)}")
    if result.basis is not None:
        parts.append(f"basis {result.basis.basis}, solubility by {result.basis.model}")
    return f"For {'; '.join(parts)}." if parts else ""


def sources(*found: Iterable[Source]) -> str:
    """Where the numbers come from, in short; the results themselves have whole citations."""
    named = dict.fromkeys(source.citation.split(",")[0] for some in found for source in some)
    told = f"Sources: {'; '.join(named)}. " if named else ""
    return f"{told}Drawn with carb {carb.__version__}."
