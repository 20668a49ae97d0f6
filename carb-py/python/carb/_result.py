"""Results: what every function of the library returns, for numbers and for arrays."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType
from typing import TYPE_CHECKING, Any, ClassVar, Generic, Literal, NamedTuple, NoReturn, TypeVar, overload

from . import _carb
from ._errors import CarbError, answered

if TYPE_CHECKING:
    from ._arrays import Elements
    from ._quantities import Measured
    from ._types import Doubt
    from ._uncertainty import Uncertainty

T = TypeVar("T")
CODES: Mapping[str, int] = MappingProxyType(dict(_carb.codes()))


class Caution(NamedTuple):
    """Something to mind about an answer."""

    code: str
    """Stable code."""
    level: str
    """``danger``, ``caution`` or ``note``."""
    text: str
    value: float
    """The value given."""
    limit: float | None
    """The limit that it crossed, if there is one."""
    unit: str
    """In what both are measured."""


class Source(NamedTuple):
    """Where an equation comes from."""

    key: str
    citation: str


class Frozen:
    """An object that nobody changes."""

    __slots__ = ()

    def __setattr__(self, name: str, value: object) -> NoReturn:
        raise AttributeError(f"{type(self).__name__} is immutable")

    def __delattr__(self, name: str) -> NoReturn:
        raise AttributeError(f"{type(self).__name__} is immutable")


class View(Frozen, Mapping[str, Any]):
    """A part of an answer: a mapping that is also read by attribute."""

    __slots__ = ("_members",)
    _members: dict[str, Any]

    def __init__(self, members: dict[str, Any]) -> None:
        object.__setattr__(self, "_members", members)

    def __getitem__(self, name: str) -> Any:
        return view(self._members[name])

    def __getattr__(self, name: str) -> Any:
        if not name.startswith("_") and name in self._members:
            return self[name]
        raise AttributeError(f"there is no {name} here, but: {', '.join(self)}")

    def __iter__(self) -> Iterator[str]:
        return iter(self._members)

    def __len__(self) -> int:
        return len(self._members)

    def __dir__(self) -> list[str]:
        return [*super().__dir__(), *self]

    def __repr__(self) -> str:
        return f"{type(self).__name__}({', '.join(f'{name}={self[name]!r}' for name in self)})"

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (self._members,)


def view(value: Any) -> Any:
    """Makes what JSON gave read-only."""
    if isinstance(value, dict):
        return View(value)
    return tuple(map(view, value)) if isinstance(value, list) else value


def request_text(request: Mapping[str, Any]) -> str:
    """A request as JSON."""
    import json

    return json.dumps({"carb": 1, **request})


def brief(value: Any) -> str:
    """A value as a person wants to read it; ``to_dict()`` has all its digits."""
    return f"{value:.6g}" if isinstance(value, float) else str(value)


class Values(Frozen):
    """Something that has outputs by name."""

    __slots__ = ()
    shown: ClassVar[tuple[str, ...]] = ()
    """The outputs that are printed: each quantity under its metric and its US name."""

    def _value(self, name: str) -> Any:
        raise NotImplementedError

    def __repr__(self) -> str:
        return f"{type(self).__name__}({', '.join(f'{name}={brief(self._value(name))}' for name in self.shown)})"


def output(name: str, doc: str) -> property:
    """A property for an output of a part."""
    return property(lambda self: self._value(name), doc=doc)


def whole_output(name: str, doc: str) -> property:
    """A property for an output of a result: the same with a call less."""
    return property(lambda self: self._answer.value(name), doc=doc)


class Part(Values, Generic[T]):
    """The outputs of a result that share a noun."""

    __slots__ = ("_noun", "_whole")
    _whole: Result[Any]
    _noun: str

    def __init__(self, whole: Result[Any], noun: str) -> None:
        object.__setattr__(self, "_whole", whole)
        object.__setattr__(self, "_noun", noun)

    def _value(self, name: str) -> Any:
        return self._whole._value(f"{self._noun}_{name}")

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Part) and (self._noun, self._whole) == (other._noun, other._whole)

    def __hash__(self) -> int:
        return hash((self._noun, self._whole))

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (self._whole, self._noun)

    def _repr_html_(self) -> str:
        from ._html import part

        return part(self._noun, self._whole)


def part(kind: type[Part[Any]], noun: str, doc: str) -> property:
    """A property for the outputs that share a noun."""
    return property(lambda self: kind(self, noun), doc=doc)


class Result(Values, Generic[T]):
    """The answer of a function, with everything that it stands on.

    Where arrays were given, the outputs are arrays; what belongs to one element (working, sources, ...) is had from
    that element: ``result[3].working()``.
    """

    __slots__ = ("_answer", "_whole")
    _whole: dict[str, Any]
    function: ClassVar[str] = ""
    outputs: ClassVar[tuple[str, ...]] = ()
    """The outputs in every unit, nouns before."""
    _worst: ClassVar[str | None] = None
    """The first output of the worst case, where there is one."""
    _told: ClassVar[tuple[str, ...]] = ()
    """Outputs by whose extremes an array is judged."""
    _answer: _carb.Record | Elements | Measured

    def __init__(self, answer: _carb.Record | Elements | Measured) -> None:
        object.__setattr__(self, "_answer", answer)

    def _value(self, name: str) -> Any:
        return self._answer.value(name)

    @property
    def _elements(self) -> Elements | None:
        bare: Any = getattr(self._answer, "bare", self._answer)
        return None if isinstance(bare, _carb.Record) else bare

    @property
    def _details(self) -> dict[str, Any]:
        if not hasattr(self, "_whole"):
            import json

            object.__setattr__(self, "_whole", json.loads(self.to_json()))
        return self._whole

    @property
    def request(self) -> dict[str, Any]:
        """What was asked, as it was given."""
        return self._answer.request

    @property
    def cautions(self) -> tuple[Caution, ...]:
        """What to mind, the gravest first.

        For arrays: the range cautions of all elements, with their count, as told of the first that each concerns; and
        what else is said of the elements with the least and the most of an input or an output (in packages: of the
        worst pressure). ``result[i]`` has all that is said of one.
        """
        if self._elements is not None:
            if self._elements.lazy:
                raise TypeError("nothing is worked out yet, so nothing is known to mind: compute first, or see .status")
            return self._elements.cautions
        names = Caution._fields
        return tuple(Caution(*map(entry.get, names)) for entry in self._details["cautions"])

    @property
    def status(self) -> Any:
        """For arrays: below 0 an error code (see ``CODES``), else bits of the range cautions. For a number: 0."""
        return 0 if self._elements is None else self._elements.status

    @property
    def sources(self) -> tuple[Source, ...]:
        """The sources behind the value, in the order of their use."""
        return tuple(Source(**entry) for entry in self._details["sources"])

    @property
    def equations(self) -> tuple[View, ...]:
        """The equations used: id, standing, uncertainty in percent (k = 2)."""
        return tuple(map(View, self._details["equations"]))

    def _part(self, name: str) -> View | None:
        found = self._details.get(name)
        return None if found is None else View(found)

    @property
    def basis(self) -> View | None:
        """The assumptions, as used; None where the answer depends on none, as that of gravity."""
        return self._part("basis")

    @property
    def beverage(self) -> View | None:
        """The drink, as used; None where the answer is of no drink."""
        return self._part("beverage")

    @property
    def ambient(self) -> View | None:
        """The air outside, as used; None where nothing asked for it."""
        return self._part("ambient")

    @property
    def steps(self) -> tuple[View, ...]:
        """The working, one step for each equation: equation, formula, inputs, result, units, text."""
        return tuple(map(View, self._details["working"]))

    def working(self, form: Literal["text", "markdown"] = "text") -> str:
        """The working as text, or as Markdown with formulas in LaTeX, the meaning of every symbol and the sources."""
        if form == "markdown":
            text = _carb.json(f"{self.function}.markdown", request_text(self._single))
            return str(answered(text)["markdown"])
        if form != "text":
            raise CarbError('form should be "text" or "markdown"', CODES["UNKNOWN_CHOICE"], "form")
        return "\n".join(step.text for step in self.steps)

    def uncertainty(self, doubts: Mapping[str, Doubt] | None = None, /, **named: Doubt) -> Uncertainty:
        """How sure the answer is: an interval of about 95 % for each output, and what makes it how wide.

        Without anything said of the inputs, what the equations leave open as far as a factor of the basis carries it:
        solubility, residual CO2 and the yield of sugar. What else an equation is unsure of, such as a rate or a friction,
        is in ``equations`` and not in the interval; the ends of a range (``least``, ``most``) are answers of their own.

        Parameters
        ----------
        doubts : mapping, optional
            How far inputs may lie from what was given, by name; in any unit, and only of inputs that were given. A
            number is a half width of about 95 % (k = 2 of a normal distribution), ``{"range": number}`` or
            ``("range", number)`` one within which every value is as likely, a text a usual instrument such as
            ``"thermometer"``.
        **named
            The same as keywords; they replace what the mapping says under the same name.

        Returns
        -------
        Uncertainty

        Raises
        ------
        CarbError
            For what no input has, was not given, is below 0, or an instrument that is not known.
        TypeError
            For arrays: take one element.

        Examples
        --------
        >>> import carb
        >>> keg = carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=0)
        >>> keg.uncertainty(temperature_f="thermometer", volumes=("range", 0.1))["gauge_psi"]
        gauge_kpa = 77.3 (64.9 to 91.2)
        gauge_bar = 0.773 (0.649 to 0.912)
        gauge_psi = 11.21 (9.41 to 13.22)
            solubility_multiplier 43%, volumes 37%, temperature_f 20%
        """
        from ._uncertainty import Uncertainty, doubts_of

        asked = {**self._single, "uncertainty": doubts_of({**(doubts or {}), **named})}
        return Uncertainty(_carb.json(self.function, request_text(asked)))

    @property
    def _single(self) -> dict[str, Any]:
        """The request, where it is for one element."""
        if self._elements is not None:
            raise TypeError("this belongs to one element: take it from one, such as result[0]")
        return self.request

    def to_json(self) -> str:
        """The whole answer as JSON, the same bytes in every language."""
        return _carb.json(self.function, request_text(self._single))

    def to_dict(self) -> dict[str, Any]:
        """The whole answer as a dictionary; for arrays, the columns: the outputs by name, and the status."""
        import json

        if self._elements is not None:
            return {**{name: self._value(name) for name in self.shown}, "status": self.status}
        answer: dict[str, Any] = json.loads(self.to_json())
        return answer

    @overload
    def __getitem__(self, index: int | tuple[int, ...]) -> Any: ...
    @overload
    def __getitem__(self: R, index: Any) -> R: ...
    def __getitem__(self, index: Any) -> Any:
        """The result of one element, or of some, where arrays were given."""
        if self._elements is None:
            raise TypeError("this is the result for a single number")
        found = _again(type(self), self._elements.element(index))
        registry = getattr(self._answer, "registry", None)
        if registry is None:
            return found
        from ._quantities import Measured

        return type(self)(Measured(self.function, found._answer, registry, found.request))  # type: ignore[arg-type]


    def __repr__(self) -> str:
        if self._elements is None:
            return super().__repr__()
        return f"<{type(self).__name__} of shape {self._elements.shape}: {', '.join(self.shown)}>"

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Result) or type(self) is not type(other):
            return False
        mine, theirs = self.request, other.request
        return mine.keys() == theirs.keys() and all(_same(mine[name], theirs[name]) for name in mine)

    def __hash__(self) -> int:
        plain = {name: value for name, value in self.request.items() if isinstance(value, (str, bool, float))}
        return hash((self.function, frozenset(plain.items())))

    def __reduce__(self) -> tuple[Any, ...]:
        return _again, (type(self), getattr(self._answer, "as_given", self.request))

    def to_frame(self) -> Any:
        """The elements as a pandas data frame: inputs, shown outputs and status; pandas has to be installed."""
        from ._frame import elements

        return elements(self)

    def _repr_html_(self) -> str:
        from ._html import result

        return result(self)


R = TypeVar("R", bound=Result[Any])


def _same(one: Any, other: Any) -> bool:
    """Whether two inputs are the same: of one kind, with the same elements, and what these are indexed by."""
    import numpy as np

    if type(one) is not type(other):
        return False
    if isinstance(one, (str, bool, float)):
        return bool(one == other)
    if hasattr(one, "__dask_tokenize__"):
        return bool(one.__dask_tokenize__() == other.__dask_tokenize__())
    if hasattr(one, "equals"):
        return bool(one.equals(other))
    if isinstance(one, np.ma.MaskedArray):
        hidden = np.ma.getmaskarray(one), np.ma.getmaskarray(other)
        return bool(np.array_equal(*hidden) and np.array_equal(one.filled(0), other.filled(0), equal_nan=True))
    return bool(np.array_equal(one, other, equal_nan=True))


def _again(kind: type[R], request: dict[str, Any]) -> R:
    from ._arrays import run

    return run(kind, {**request, "errors": "nan"}, warn=False)  # type: ignore[return-value]
