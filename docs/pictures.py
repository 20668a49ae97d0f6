"""Draws the pictures of docs/pictures.md, each once: an invented batch, bottled and kegged.

python docs/pictures.py [FOLDER]
"""

from __future__ import annotations

import re
import sys
from io import BytesIO
from pathlib import Path

import matplotlib
from matplotlib.axes import Axes
from PIL import Image

matplotlib.use("Agg")

import carb  # noqa: E402
import carb.plot  # noqa: E402
from matplotlib import pyplot  # noqa: E402

DOCS = Path(__file__).parent
CALL = r"```python\n(.*?)```\n\n!\[[^\]]*\]\(pictures/(\w+)\.png\)"
COLORS = 256
"""So many are enough for lines on paper, and a picture stays small."""


def calls() -> dict[str, str]:
    """The calls of the gallery, by the name of the picture that stands below each."""
    page = (DOCS / "pictures.md").read_text()
    return {
        name: code
        for code, name in re.findall(r"```python\n(.*?)```\n\n!\[[^\]]*\]\(pictures/(\w+)\.png\)", page, re.S)
    }


def save(ax: Axes, file: Path) -> None:
    """Saves the figure of a picture as a small PNG."""
    figure = ax.get_figure(root=True)
    assert figure is not None
    whole = BytesIO()
    figure.savefig(whole, format="png")
    Image.open(whole).convert("RGB").quantize(COLORS, Image.Quantize.MAXCOVERAGE, dither=Image.Dither.NONE).save(
        file, optimize=True
    )
    pyplot.close("all")


def main(folder: Path) -> None:
    """Runs each call as it stands in the gallery, so that the page shows what it says."""
    folder.mkdir(exist_ok=True)
    names: dict[str, object] = {"carb": carb}
    for name, code in calls().items():
        exec(code, names)
        ax = names["ax"]
        assert isinstance(ax, Axes)
        save(ax, folder / f"{name}.png")
        print(folder / f"{name}.png")


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else DOCS / "pictures")
