"""Runs the notebooks of docs/notebooks as a reader would, and holds them to what they say.

Each text that stands behind an arrow (``# -> ...``) has to be printed by its cell, line by line and in this order;
nothing may warn; and the last cell shows a picture. The executed notebooks and their pictures are left in
target/notebooks, to be looked at.
"""

import base64
import pathlib
import re
import sys
import tempfile
import time

import jupytext
import nbformat
from nbclient import NotebookClient
from traitlets.config import Config

ROOT = pathlib.Path(__file__).resolve().parent.parent
FOLDER = ROOT / "docs" / "notebooks"
SHOWN = ROOT / "target" / "notebooks"
MOST_LINES = 130


def check(path: pathlib.Path) -> None:
    text = path.read_text(encoding="utf-8")
    assert text.count("\n") <= MOST_LINES, f"{path.name} is too long to read"
    notebook = jupytext.reads(text, fmt="md")
    with tempfile.TemporaryDirectory() as sockets:
        # Not over TCP: a test opens no ports.
        config = Config(KernelManager={"transport": "ipc", "ip": f"{sockets}/kernel"})
        where = {"metadata": {"path": str(FOLDER)}}
        NotebookClient(notebook, kernel_name="python3", resources=where, config=config).execute()
    SHOWN.mkdir(parents=True, exist_ok=True)
    nbformat.write(notebook, SHOWN / f"{path.stem}.ipynb")
    cells = [cell for cell in notebook.cells if cell.cell_type == "code"]
    for cell in cells:
        warned = "".join(output.text for output in cell.outputs if output.get("name") == "stderr")
        assert not warned, f"{path.name} warns:\n{warned}"
        lines = printed(cell)
        for wanted in re.findall(r"# -> (.*)", cell.source):
            assert wanted in lines, f"{path.name} promises {wanted!r}, and prints {lines}"
            lines = lines[lines.index(wanted) + 1 :]
    pictures = [png for output in cells[-1].outputs if (png := output.get("data", {}).get("image/png"))]
    assert pictures, f"{path.name} should end with a picture"
    (SHOWN / f"{path.stem}.png").write_bytes(base64.b64decode(pictures[-1]))


def printed(cell: nbformat.NotebookNode) -> list[str]:
    """The lines that a cell prints, and the text of its value."""
    texts = [output.get("text") or output.get("data", {}).get("text/plain", "") for output in cell.outputs]
    return [line.rstrip() for text in texts for line in text.splitlines()]


if __name__ == "__main__":
    for path in [FOLDER / f"{name}.md" for name in sys.argv[1:]] or sorted(FOLDER.glob("*.md")):
        start = time.monotonic()
        check(path)
        print(f"{path.name} runs and prints what it promises ({time.monotonic() - start:.1f} s)")
