"""The cross-check: what other programs print, held against this library, and which assumptions reproduce it."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor, as_completed
from json import loads
from typing import TYPE_CHECKING, Any

from . import _carb
from ._claims import SAID, cell, claims_of
from ._claims import claim as one_claim
from ._errors import CarbError
from ._frame import Listing, frame
from ._plan import Job
from ._result import CODES, request_text

if TYPE_CHECKING:
    from ._types import Rows

Progress = Callable[[int, int], object]

FOUND = ("verdict", "unsafe", "ours", "difference_percent", "count")
LEAST_CLAIMS = 8
"""A thread is given at least so many claims at a time, if there are as many."""


class Crosscheck(Job):
    """What is found about claims: ``claims``, each with a verdict or an ``error``, and ``programs``.

    It is also a mapping, as its JSON is. ``page()`` is the whole as text, ``to_columns()`` a table for a data frame.
    """

    __slots__ = ("_answer", "_page")
    _answer: str
    _page: str
    job = "crosscheck"

    def __init__(self, text: str, answer: str = "", page: str = "") -> None:
        if not answer:
            found = _carb.crosscheck(text)
            answer, page = found.json(), found.page()
        object.__setattr__(self, "_answer", answer)
        object.__setattr__(self, "_page", page)
        super().__init__(text)

    @property
    def danger(self) -> bool:
        """Whether somebody who follows one of the claims may be hurt."""
        return bool(self["unsafe"])

    @property
    def claims(self) -> Listing:
        """The claims in the order in which they were given, each with what is found about it, or with an ``error``."""
        claims: Listing = self["claims"]
        return claims

    @property
    def programs(self) -> Listing:
        """The programs with several claims, each with the assumptions that reproduce all of them."""
        programs: Listing = self["programs"]
        return programs

    @property
    def answered(self) -> bool:
        """Whether this library has an answer of its own to any of the claims."""
        return any("error" not in found for found in self._members["claims"])

    def page(self) -> str:
        """What is found, as a page of text."""
        return self._page

    def to_json(self) -> str:
        """What is found as JSON, the same bytes in every language."""
        return self._answer

    def to_columns(self) -> dict[str, list[Any]]:
        """A table with a row for each claim, as columns by name; ``pandas.DataFrame`` takes them.

        Its columns are label, program, quantity, value (the text as printed), unit, verdict, unsafe, ours (this
        library's answer in the claim's unit), difference_percent, count (of the readings that reproduce the claim) and
        explanation. What is not known is None; where this library has no answer, the explanation says why.
        """
        found = self._members["claims"]
        said = {name: [row.get(name) or None for row in found] for name in SAID}
        table = {name: [row.get(name) for row in found] for name in FOUND}
        return {
            **said,
            **table,
            "explanation": [row["error"]["text"] if "error" in row else row["text"] for row in found],
        }

    def to_frame(self) -> Any:
        """The table of ``to_columns()`` as a pandas data frame; pandas has to be installed."""
        return frame(self.to_columns(), ("ours", "difference_percent"))

    def __repr__(self) -> str:
        verdicts = [row.get("verdict", "no answer") for row in self._members["claims"]]
        counts = ", ".join(f"{verdicts.count(verdict)} {verdict}" for verdict in dict.fromkeys(verdicts))
        return f"<Crosscheck of {len(verdicts)} claims: {counts}{', UNSAFE' if self.danger else ''}>"

    def __eq__(self, other: object) -> bool:
        # Nobody minds the order in which the inputs of a claim were given.
        return isinstance(other, Crosscheck) and loads(self._text) == loads(other._text)

    def __hash__(self) -> int:
        return hash(self._answer)

    def __reduce__(self) -> tuple[Any, ...]:
        # The search is not done again.
        return type(self), (self._text, self._answer, self._page)

    def _repr_html_(self) -> str:
        from ._html import crosscheck

        return crosscheck(self)


def crosscheck(
    claims: Rows | None = None, *, most_readings: int = 10, progress: Progress | None = None, **claim: Any
) -> Crosscheck:
    """Find out why another program says something else: does its number agree, and if not, what reproduces it.

    A claim is a number that a program prints, with what the program was told. It is held against this library's answer
    to the same inputs; where the two differ, the usual assumptions of such programs are gone through (what a volume of
    CO2 weighs, which solubility, which sugar, which unit, what was forgotten) for those that make the number that is
    printed. Claims of one program are also looked at together: assumptions have to reproduce all of them.

    Parameters
    ----------
    claims : list of dict, mapping of columns, or data frame
        The claims: ``quantity``, ``value`` and ``unit`` of each, the inputs by their names in this library
        (``volumes``, ``temperature_f``, ``altitude_m``, ...), and, if there are any, ``label`` (free text) and
        ``program`` (free text; claims with the same one are of one program). What is None, NaN, or an empty text, is
        not given. An input may be a text of a number, so that the rows of ``carb.read_claims`` are taken as they are.

        ``value`` should be the text as it was printed, because its last digit says how far it was rounded: ``"4.40"``
        is 4.395 to 4.405 in ``unit``. Of a number, such as in a data frame's column of floats, the printed digits are
        lost, and the fewest that tell it are taken: 4.40 becomes ``"4.4"``, 4.35 to 4.45, and 124.0 becomes ``"124"``.

        ======================  ================================  ==========================================
        ``quantity``            ``unit``                          inputs
        ======================  ================================  ==========================================
        ``priming_sugar``       g, kg, oz, lb; g_per_l            as ``carb.priming_sugar``
        ``residual_co2``        volumes, co2_g_per_l              as ``carb.residual_co2``
        ``dissolved_co2``       volumes, co2_g_per_l              as ``carb.dissolved_co2``
        ``keg_pressure``        psi, bar, kpa (gauge)             as ``carb.keg_pressure``
        ``package_pressure``    psi, bar, kpa (gauge)             as ``carb.package_pressure``
        ``bottle_count``        count                             ``packaged_l``, ``bottle_ml``
        ``line_length``         ft, m                             as ``carb.handbook_line``
        ``gas_used``            g, kg, oz, lb                     as ``carb.gas_budget``
        ``purge_cycles``        count                             as ``carb.purge_cycles``
        ``alcohol``             percent, abv_percent              as ``carb.attenuation``
        ======================  ================================  ==========================================

        ``carb.claim_quantities()`` has the same. What is an assumption (``basis``, ``model``, factors, whether a
        headspace or a syrup counts) is not told but looked for: ``carb.crosscheck_habits()`` lists what is gone
        through. What the package stands may be told too, to judge whether a claim may hurt somebody: ``bottle_class``
        and ``rating_gauge_bar`` of bottles, with a dose or a package's pressure; ``keg_rating_gauge_bar`` of a keg,
        wherever there is a pressure.
    most_readings : int
        The most ways of reproducing a number that are listed for a claim, or for a program.
    progress : callable, optional
        Called with the number of claims that are done and the number of all, each time that some more are done, from
        the thread that called ``crosscheck``. What it raises ends the work.
    **claim
        A single claim instead of ``claims``.

    Returns
    -------
    Crosscheck
        With ``claims`` in the order in which they were given. Claims of many programs are worked on by several threads
        at once; the answer is the same to the last byte.

    Raises
    ------
    CarbError
        Where a claim is malformed, before any is looked into: ``row`` says which, from 1, and ``parameter`` which of
        its columns. A claim to which this library has no answer, such as for want of an altitude, has an ``error``
        instead.

    Examples
    --------
    >>> import carb
    >>> print(carb.crosscheck(
    ...     quantity="keg_pressure", value="11.2", unit="psi", volumes=2.5, temperature_f=38, altitude_m=0
    ... ).claims[0].verdict)
    agrees
    """
    if claims is None:
        rows = [one_claim(claim)] if claim else None
    elif claim:
        name = next(iter(claim))
        text = f"claims and {name} exclude each other: give claims, or one claim by its names"
        raise CarbError(text, CODES["EXCLUDED"], name)
    else:
        rows = claims_of(claims)
    return checked(rows, most_readings, progress)


def asking(most_readings: Any) -> Callable[[Sequence[Any] | None], str]:
    """What makes claims a request."""
    most = cell("most_readings", most_readings)
    return lambda rows: request_text({"claims": rows, "most_readings": most})


def checked(rows: Sequence[Any] | None, most_readings: Any, progress: Progress | None) -> Crosscheck:
    """Answers claims that are as JSON has them; many of them by several threads."""
    request = asking(most_readings)
    if rows is None:
        return Crosscheck(request(rows))
    chunks = list(_chunks(rows))
    if len(chunks) < 2:
        found = _carb.crosscheck(request(rows))
        if progress is not None:
            progress(len(rows), len(rows))
    else:
        _carb.claims_checked(request(rows))
        parts = _parts([request([rows[at] for at in chunk]) for chunk in chunks], list(map(len, chunks)), progress)
        found = _carb.crosscheck_merged(list(zip(chunks, parts, strict=True)))
    return Crosscheck(request(rows), found.json(), found.page())


def _parts(texts: list[str], sizes: list[int], progress: Progress | None) -> list[_carb.Crosscheck]:
    with ThreadPoolExecutor(min(len(texts), os.cpu_count() or 1)) as pool:
        work = {pool.submit(_carb.crosscheck, text): size for text, size in zip(texts, sizes, strict=True)}
        try:
            done = 0
            for future in as_completed(work):
                done += work[future]
                if progress is not None:
                    progress(done, sum(sizes))
            return [future.result() for future in work]
        except BaseException:
            pool.shutdown(wait=False, cancel_futures=True)
            raise


def _chunks(rows: Sequence[Any]) -> Iterator[list[int]]:
    """The places of the claims, those of whole programs together, in the order in which the programs come up."""
    programs: dict[Any, list[int]] = {}
    for at, row in enumerate(rows):
        program = row.get("program") if isinstance(row, dict) else None
        # A claim that is of no program is looked at by itself.
        programs.setdefault(program if isinstance(program, str) else at, []).append(at)
    chunk: list[int] = []
    for places in programs.values():
        chunk += places
        if len(chunk) >= LEAST_CLAIMS:
            yield chunk
            chunk = []
    if chunk:
        yield chunk
