"""A whole packaging day."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from . import _carb
from ._result import View, request_text
from ._uncertainty import doubts_of


class Plan(View):
    """A packaging day: parts by attribute (``plan.kegging.regulator.gauge_psi``), each an answer or an ``error``."""

    __slots__ = ("_text",)
    _text: str

    def __init__(self, text: str) -> None:
        import json

        object.__setattr__(self, "_text", text)
        _carb.plan_page(text)  # Raises what is wrong with the request as a whole.
        super().__init__(json.loads(self.to_json()))

    @property
    def danger(self) -> bool:
        """Whether somebody may be hurt."""
        return bool(self["danger"])

    def page(self) -> str:
        """The plan as a page of text, to be pinned to the wall."""
        return _carb.plan_page(self._text)

    def to_json(self) -> str:
        """The plan as JSON, the same bytes in every language."""
        return _carb.json("plan", self._text)

    def to_dict(self) -> dict[str, Any]:
        """The plan as a dictionary."""
        import json

        answer: dict[str, Any] = json.loads(self.to_json())
        return answer

    __str__ = page

    def __repr__(self) -> str:
        return f"carb.plan({self._text!r})"

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Plan) and self._text == other._text

    def __hash__(self) -> int:
        return hash(self._text)

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (self._text,)

    def _repr_html_(self) -> str:
        from html import escape

        return f"<pre>{escape(self.page())}</pre>"


def plan(request: Mapping[str, Any] | str) -> Plan:
    """Plan a packaging day: priming sugar, bottle pressures, regulator pressure, cautions and safety.

    Parameters
    ----------
    request : mapping or str
        Names and values, or the same as JSON text (then with ``"carb": 1``). ``"uncertainty"`` may hold how far inputs
        may lie from what was given, as ``Result.uncertainty`` takes it; the plan's ``uncertainty`` then has the
        intervals of its main answers.

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
    >>> day = carb.plan({"packaged_l": 19.2, "volumes": 2.4, "warmest_c": 20.5, "altitude_m": 240})
    >>> round(day.bottling.priming.mass_g, 1)
    116.2

    >>> sure = carb.plan({**day.request, "uncertainty": {"volumes": 0.1, "packaged_l": "marked_bucket"}}).uncertainty
    >>> [entry.name for entry in sure.priming.budget if not entry.of_an_equation]
    ['volumes', 'packaged_l']
    """
    if isinstance(request, str):
        return Plan(request)
    given = dict(request)
    # These are no names of the vocabulary, so the core takes them in JSON only.
    apart: dict[str, Any] = {name: given.pop(name) for name in ("carb", "uncertainty") if name in given}
    doubts = apart.get("uncertainty")
    if isinstance(doubts, Mapping):
        apart["uncertainty"] = doubts_of(doubts)
    elif doubts is None:
        apart.pop("uncertainty", None)
    return Plan(request_text({**_carb.request(given), **apart}))
