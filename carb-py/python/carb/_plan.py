"""Whole jobs: a packaging day, the bottling of a batch, and its kegging."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Mapping
from typing import Any, ClassVar

from . import _carb
from ._errors import answered
from ._frame import rowed
from ._lists import asked
from ._result import View, request_text
from ._uncertainty import doubts_of


class Job(View):
    """The answer of a whole job: parts by attribute, each an answer or an ``error``.

    What is a list of rows (``bottling.bottles``, ``kegging.days``, ``bottling.request.bottles``) has ``to_frame()``.
    """

    __slots__ = ("_text",)
    _text: str
    job: ClassVar[str]
    """The function that answers with this."""

    def __init__(self, text: str) -> None:
        object.__setattr__(self, "_text", text)
        super().__init__(rowed(self.to_dict()))

    @property
    def danger(self) -> bool:
        """Whether somebody may be hurt."""
        return bool(self["danger"])

    @abstractmethod
    def page(self) -> str:
        """The job as a page of text, to be pinned to the wall."""

    def to_json(self) -> str:
        """The job as JSON, the same bytes in every language."""
        return _carb.json(self.job, self._text)

    def to_dict(self) -> dict[str, Any]:
        """The job as a dictionary."""
        return answered(self.to_json())

    def __str__(self) -> str:
        return self.page()

    def __repr__(self) -> str:
        return f"carb.{self.job}({self._text!r})"

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Job) and (self.job, self._text) == (other.job, other._text)

    def __hash__(self) -> int:
        return hash((self.job, self._text))

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (self._text,)

    def _repr_html_(self) -> str:
        from ._html import job

        return job(self)


class Plan(Job):
    """A packaging day: parts by attribute (``plan.kegging.regulator.gauge_psi``), each an answer or an ``error``."""

    __slots__ = ()
    job = "plan"

    def page(self) -> str:
        """The plan as a page of text, to be pinned to the wall."""
        return _carb.plan_page(self._text)


class NamedJob(Job):
    """A job that is asked by its names and values."""

    __slots__ = ()

    def __repr__(self) -> str:
        import json

        given = {name: value for name, value in json.loads(self._text).items() if name != "carb"}
        return f"carb.{self.job}({', '.join(f'{name}={value!r}' for name, value in given.items())})"


class Bottling(NamedJob):
    """A batch in bottles: parts by attribute (``bottling.priming.mass_g``), each an answer or an ``error``."""

    __slots__ = ()
    job = "bottling"

    def page(self) -> str:
        """The bottling as a page of text, to be pinned to the wall."""
        return _carb.bottling_page(self._text)


class Kegging(NamedJob):
    """A batch in kegs: parts by attribute (``kegging.regulator.gauge_psi``), each an answer or an ``error``."""

    __slots__ = ()
    job = "kegging"

    def page(self) -> str:
        """The kegging as a page of text, to be pinned to the wall."""
        return _carb.kegging_page(self._text)


def job_text(request: Mapping[str, Any]) -> str:
    """The request of a job as JSON."""
    given = dict(request)
    # These are no names of the vocabulary, so the core takes them in JSON only.
    apart: dict[str, Any] = {name: given.pop(name) for name in ("carb", "uncertainty") if name in given}
    doubts = apart.get("uncertainty")
    if isinstance(doubts, Mapping):
        apart["uncertainty"] = doubts_of(doubts)
    elif doubts is None:
        apart.pop("uncertainty", None)
    return request_text({**asked(given), **apart})


def plan(request: Mapping[str, Any] | str) -> Plan:
    """Plan a packaging day: in bottles, in kegs, and which of the two; cautions and safety.

    Parameters
    ----------
    request : mapping or str
        Names and values, or the same as JSON text (then with ``"carb": 1``): those of ``bottling`` and ``kegging``,
        their lists among them. ``"uncertainty"`` may hold how far inputs may lie from what was given, as
        ``Result.uncertainty`` takes it; the plan's ``uncertainty`` then has the intervals of its main answers.

    Returns
    -------
    Plan

    Raises
    ------
    CarbError
        Where the request as a whole is wrong. What is wrong with one part is the ``error`` of that part.

    Examples
    --------
    >>> import carb
    >>> batch = {"packaged_l": 19.2, "volumes": 2.4, "warmest_c": 20.5, "altitude_m": 240}
    >>> day = carb.plan({**batch, "bottles": [{"bottle_ml": 500, "count": 40}]})
    >>> round(day.bottling.priming.mass_g, 1)
    116.2
    >>> day.bottling.bottles[0].filled_count
    39

    >>> sure = carb.plan({**batch, "uncertainty": {"volumes": 0.1, "packaged_l": "marked_bucket"}}).uncertainty
    >>> [entry.name for entry in sure.priming.budget if not entry.of_an_equation]
    ['volumes', 'packaged_l']
    """
    return Plan(request if isinstance(request, str) else job_text(request))
