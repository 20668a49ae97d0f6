"""How sure an answer is."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal, InvalidOperation
from math import isfinite
from typing import TYPE_CHECKING, Any, overload

from . import _carb
from ._errors import answered
from ._frame import Listing, frame
from ._result import Frozen, View, brief

if TYPE_CHECKING:
    from ._types import Doubt

NUMBERS = ("value", "low", "high", "standard", "input_value", "half_width", "share", "sensitivity")
"""The columns of the data frame that hold numbers, even where there is no budget."""


class Estimate(View):
    """An output with how sure it is; ``value``, ``low``, ``high`` and ``standard`` have it in each of its units.

    Examples
    --------
    >>> import carb
    >>> wort = carb.gravity(plato=12).uncertainty(plato=1)["sg"]
    >>> wort
    sg = 1.0484 (1.0442 to 1.0526)
        plato 100%
    >>> wort.low.sg < wort.value.sg < wort.high.sg
    True
    """

    __slots__ = ()

    @property
    def noun(self) -> str:
        """The noun of the output, such as ``expected``; empty where it has none."""
        return str(self["noun"])

    @property
    def value(self) -> View:
        """The answer."""
        return View(self._members["value"])

    @property
    def low(self) -> View:
        """Where the interval begins that holds the truth in about 95 of 100 cases."""
        return View(self._members["low"])

    @property
    def high(self) -> View:
        """Where it ends."""
        return View(self._members["high"])

    @property
    def standard(self) -> View:
        """The standard uncertainty."""
        return View(self._members["standard"])

    @property
    def method(self) -> str:
        """How the interval was found: ``first_order`` from the sensitivities, or ``draws``."""
        return str(self["method"])

    @property
    def budget(self) -> Listing:
        """What makes it unsure, the largest share of the variance first.

        Each has name, value, half_width, kind (``normal`` or ``range``), of_an_equation, share and sensitivity.
        """
        return Listing(map(View, self._members["budget"]))

    @property
    def names(self) -> tuple[str, ...]:
        """The names of the output, one a unit, the noun before."""
        return tuple("_".join(filter(None, (self.noun, name))) for name in self.value)

    def _rows(self) -> Iterator[tuple[str, str, str, str]]:
        """Name, value, low and high of each unit, with no more digits than are sure."""
        for full, name in zip(self.names, self.value, strict=True):
            standard = self.standard[name]
            value, low, high = (rounded(part[name], standard) for part in (self.value, self.low, self.high))
            yield full, value, low, high

    def __repr__(self) -> str:
        lines = [f"{name} = {value} ({low} to {high})" for name, value, low, high in self._rows()]
        shares = [f"{entry.name} {percent(entry)}" for entry in self.budget]
        said = ", ".join(share for share in shares if not share.endswith(" 0%"))
        return "\n".join([*lines, f"    {said}"] if said else lines)

    def _repr_html_(self) -> str:
        from ._html import uncertainty

        return uncertainty([self])

    def _shares(self) -> Iterator[dict[str, Any]]:
        """A row for each name and each share of the budget."""
        for full, name in zip(self.names, self.value, strict=True):
            interval = {part: self[part][name] for part in ("value", "low", "high", "standard")}
            # What is quite sure has no budget.
            for entry in self.budget or (None,):
                yield {
                    "output": full,
                    **interval,
                    "method": self.method,
                    "input": entry and entry.name,
                    "input_value": entry and entry.value,
                    "half_width": entry and entry.half_width,
                    "kind": entry and entry.kind,
                    "of_an_equation": entry and entry.of_an_equation,
                    "share": entry and entry.share,
                    "sensitivity": entry and entry.sensitivity[name],
                }


class Uncertainty(Frozen, Sequence[Estimate]):
    """How sure each output of an answer is; one is had by its place, or by any of its names.

    Examples
    --------
    >>> import carb
    >>> keg = carb.keg_pressure(volumes=2.5, temperature_c=4, altitude_m=0)
    >>> sure = keg.uncertainty(temperature_c=("range", 1), volumes=0.1)
    >>> sure["gauge_psi"].value.gauge_psi == keg.gauge_psi
    True
    >>> [entry.name for entry in sure["gauge_psi"].budget]
    ['solubility_multiplier', 'volumes', 'temperature_c']
    """

    __slots__ = ("_text", "_whole")
    _text: str
    _whole: dict[str, Any]

    def __init__(self, text: str) -> None:
        object.__setattr__(self, "_whole", answered(text))
        object.__setattr__(self, "_text", text)

    @property
    def outputs(self) -> tuple[Estimate, ...]:
        """One estimate for each output, in the order of the function's."""
        return tuple(map(Estimate, self._whole["uncertainty"]))

    @property
    def models(self) -> Listing:
        """What each solubility model made for the drink says, or why it was ``refused``.

        Empty where the function takes no model.
        """
        return Listing(map(View, self._whole.get("models", ())))

    @overload
    def __getitem__(self, index: int | str) -> Estimate: ...
    @overload
    def __getitem__(self, index: slice) -> tuple[Estimate, ...]: ...
    def __getitem__(self, index: int | str | slice) -> Estimate | tuple[Estimate, ...]:
        if not isinstance(index, str):
            return self.outputs[index]
        for entry in self:
            if index in entry.names:
                return entry
        raise KeyError(f"there is no {index} here, but: {', '.join(name for entry in self for name in entry.names)}")

    def __iter__(self) -> Iterator[Estimate]:
        return iter(self.outputs)

    def __len__(self) -> int:
        return len(self.outputs)

    def __contains__(self, entry: object) -> bool:
        return any(entry in one.names for one in self) if isinstance(entry, str) else entry in self.outputs

    def to_json(self) -> str:
        """The whole answer with its uncertainty as JSON, the same bytes in every language."""
        return self._text

    def to_dict(self) -> dict[str, Any]:
        """The same as a dictionary."""
        return answered(self._text)

    def to_frame(self) -> Any:
        """A pandas data frame with a row for each output, in each of its units, and each share of its budget.

        Its columns are output (the full name), value, low, high and standard; method; input (or the factor of an
        equation), input_value, half_width, kind, of_an_equation, share (of the variance) and sensitivity (of the
        output to the input). pandas has to be installed.
        """
        rows = [View(row) for entry in self for row in entry._shares()]
        return frame(Listing(rows).to_columns(), NUMBERS)

    @property
    def not_counted(self) -> tuple[View, ...]:
        """Equations that say how unsure they are, where no factor of the basis carries that into the intervals."""
        if any(share.of_an_equation for entry in self for share in entry.budget):
            return ()
        return tuple(e for e in map(View, self._whole.get("equations", ())) if e.uncertainty_percent)

    def _not_counted(self) -> str:
        told = ", ".join(f"{equation.id} {equation.uncertainty_percent:g}%" for equation in self.not_counted)
        return f"not counted, what the equations themselves leave open: {told}" if told else ""

    def __repr__(self) -> str:
        return "\n".join(filter(None, [*map(repr, self), self._not_counted()]))

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Uncertainty) and self._text == other._text

    def __hash__(self) -> int:
        return hash(self._text)

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (self._text,)

    def _repr_html_(self) -> str:
        from ._html import uncertainty

        return uncertainty(self, self._not_counted())


def percent(entry: View) -> str:
    """The share of an entry of a budget."""
    return f"{entry.share:.0%}"


def rounded(value: float, standard: float) -> str:
    """A value to the second digit of its standard uncertainty: what follows says nothing."""
    if standard:
        try:
            return f"{Decimal(value).quantize(Decimal(f'{standard:.1e}')):f}"
        except InvalidOperation:  # It is so sure that the place lies beyond all digits.
            pass
    return brief(value)


def doubts_of(doubts: Mapping[str, Doubt]) -> dict[str, Any]:
    """Doubts as JSON has them; the core judges them. None means that nothing was said, as with inputs."""
    _carb.request({name: None for name, doubt in doubts.items() if doubt is None})
    return {name: _doubt(name, doubt) for name, doubt in doubts.items() if doubt is not None}


def _doubt(name: str, doubt: Any) -> Any:
    match doubt:
        case (str(kind), half):
            return {kind: _half_width(name, half)}
        case Mapping():
            return {kind: _half_width(name, half) for kind, half in doubt.items()}
    return _half_width(name, doubt)


def _half_width(name: str, half: Any) -> Any:
    if isinstance(half, (str, bool)):
        return half
    try:
        number = None if hasattr(half, "__len__") else float(half)
    except (TypeError, ValueError):
        number = None
    if number is not None and not isfinite(number):
        # JSON cannot hold it, so the core would say that the text is wrong, not which name.
        _carb.request({name: number})
    return number
