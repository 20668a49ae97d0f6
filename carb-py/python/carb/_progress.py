"""How far work is, on a terminal."""

from __future__ import annotations

from time import monotonic
from typing import TextIO


class Bar:
    """A bar on a terminal, of work that takes longer than a second; elsewhere nothing."""

    WIDTH = 40

    def __init__(self, stream: TextIO) -> None:
        self.stream = stream
        self.since = monotonic()
        self.drawn = False

    def __call__(self, done: int, total: int) -> None:
        """Draws it: so many are done, of all."""
        if not self.stream.isatty() or monotonic() - self.since < 1:
            return
        full = self.WIDTH * done // total
        self.stream.write(f"\r[{'#' * full}{'.' * (self.WIDTH - full)}] {done} of {total} claims")
        self.stream.flush()
        self.drawn = True

    def clear(self) -> None:
        """Takes it away."""
        if self.drawn:
            self.stream.write("\r\x1b[K")
            self.stream.flush()
            self.drawn = False
