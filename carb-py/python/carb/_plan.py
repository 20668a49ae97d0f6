"""A whole packaging day."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from . import _carb
from ._result import View, request_text


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
        Names and values, or the same as JSON text (then with ``"carb": 1``).

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
    """
    if isinstance(request, str):
        return Plan(request)
    given = dict(request)
    version = {"carb": given.pop("carb")} if "carb" in given else {}
    return Plan(request_text({**_carb.request(given), **version}))
