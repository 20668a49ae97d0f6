"""Answers as a notebook shows them: pieces of HTML that take font and colours from the page around them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import cache
from html import escape
from itertools import groupby
from json import loads
from typing import TYPE_CHECKING, Any, NamedTuple

from . import _carb
from ._frame import bare
from ._result import CODES, Result, brief

if TYPE_CHECKING:
    from ._crosscheck import Crosscheck
    from ._plan import Job
    from ._table import Table
    from ._uncertainty import Estimate

HEAD = 8
"""So many elements of an array are shown."""
MOST = 60
"""So many rows of a table are shown."""

LINE = "1px solid rgba(128,128,128,.35)"
FAINT = "rgba(128,128,128,.22)"
CELL = "border:0;padding:.2em 1.1em .2em 0;background:transparent;color:inherit;vertical-align:top;line-height:1.4;"
TEXT = f"{CELL}text-align:left;max-width:26em;white-space:normal;"
NUMBER = f"{CELL}text-align:right;white-space:nowrap;font-variant-numeric:tabular-nums;"
SMALL = "font-size:.85em;"
# The mark and the word say it too: nobody has to tell colours apart. Each colour is seen on white and on black.
LEVELS = {
    "danger": ("▲", "DANGER", "#e0443e"),
    "caution": ("◆", "CAUTION", "#c98200"),
    "note": ("●", "NOTE", "#808080"),
}


def tag(name: str, inner: str, style: str = "", **attributes: str) -> str:
    """An element around what is HTML already."""
    given = {**({"style": style} if style else {}), **attributes}
    said = "".join(f' {key}="{escape(value)}"' for key, value in given.items())
    return f"<{name}{said}>{inner}</{name}>"


def text(value: Any) -> str:
    """A value as text; what is missing is a dash."""
    return "–" if value is None or value != value else escape(brief(value))


def code(said: str, style: str = "") -> str:
    """A name or a call, as it is typed."""
    return tag("code", escape(said), f"background:transparent;color:inherit;padding:0;{style}")


def page(*parts: str) -> str:
    """A whole piece."""
    style = "font-family:inherit;font-size:.93em;color:inherit;line-height:1.45;padding:.2em 0;"
    return tag("div", "".join(parts), style)


def block(inner: str, style: str = "") -> str:
    """A paragraph."""
    return tag("div", inner, f"margin:.35em 0;{style}")


def grid(rows: Iterable[str], style: str = "") -> str:
    """A table; what is too wide for the page is scrolled."""
    plain = "width:max-content;table-layout:auto;border-collapse:collapse;border:0;margin:.35em 0;"
    inner = tag("table", "".join(rows), f"{plain}font-size:inherit;color:inherit;")
    return tag("div", inner, f"overflow-x:auto;{style}")


def line(*cells: str, rule: bool = True) -> str:
    """A row of a table."""
    return tag("tr", "".join(cells), f"background:transparent;{f'border-top:{LINE};' if rule else ''}")


def head(name: str, unit: str = "", meaning: str = "", number: bool = False, noun: str = "") -> str:
    """The head of a column, its noun above and its unit below."""
    above = tag("div", text(noun)) if noun else ""
    below = tag("div", text(unit), f"{SMALL}font-weight:normal;") if unit else ""
    attributes = {"title": meaning} if meaning else {}
    style = f"{NUMBER if number else TEXT}vertical-align:bottom;font-weight:bold;"
    return tag("th", f"{above}{text(name)}{below}", style, **attributes)


def cell(value: Any) -> str:
    """A cell of a table, a number to the right."""
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        return tag("td", text(value), NUMBER)
    return tag("td", text(value), TEXT)


def share_bar(share: float) -> str:
    """A bar as long as a share."""
    full = tag("div", "", f"height:.7em;background:currentColor;opacity:.6;width:{100 * share:.1f}%;")
    return tag("div", full, f"width:9em;background:{FAINT};margin-top:.35em;")


def interval_bar(low: float, value: float, high: float, reach: tuple[float, float]) -> str:
    """A bar from the low to the high end, with a mark at the value, on an axis that reaches from zero."""
    start, end = reach
    where = [100 * (at - start) / (end - start or 1) for at in (low, value, high)]
    width = max(where[2] - where[0], 0.5)
    span = f"position:absolute;top:0;height:.7em;left:{where[0]:.1f}%;width:{width:.1f}%;"
    mark = f"position:absolute;top:-.15em;height:1em;left:{where[1]:.1f}%;width:2px;margin-left:-1px;"
    bars = tag("div", "", f"{span}background:currentColor;opacity:.45;")
    bars += tag("div", "", f"{mark}background:currentColor;")
    return tag("div", bars, f"position:relative;width:14em;height:.7em;background:{FAINT};margin-top:.35em;")


# The names of the library and what they mean, from the core's tables


class Out(NamedTuple):
    """An output that is shown."""

    noun: str
    name: str
    unit: str
    meaning: str

    @property
    def full(self) -> str:
        """Its name with the noun before."""
        return f"{self.noun}_{self.name}" if self.noun else self.name


@cache
def _known() -> dict[str, Any]:
    found: dict[str, Any] = loads(_carb.tables())
    return found


@cache
def outputs(function: str) -> tuple[Out, ...]:
    """The outputs of a function that are shown."""
    entry = next(entry for entry in _known()["functions"] if entry["name"] == function)
    return tuple(Out(*map(found.get, Out._fields)) for found in entry["outputs"] if found["shown"])


@cache
def meanings() -> dict[str, str]:
    """What the names that may be given mean."""
    entries = [entry for kind in ("functions", "tables") for entry in _known()[kind]]
    inputs = [*_known()["plan"], *(found for entry in entries for found in entry["inputs"])]
    lists = {found["name"]: found["meaning"] for found in _known()["lists"]}
    return lists | {name: found["meaning"] for found in inputs for name in found["names"]}


@cache
def _symbols() -> dict[str, str]:
    return {row["name"]: row["symbol"] for row in loads(_carb.json("units", '{"carb":1}'))["rows"]}


@cache
def symbol(name: str) -> str:
    """The symbol of the unit in which a name of the vocabulary ends; empty where it ends in none."""
    words = name.split("_")
    ends = ("_".join(words[at:]) for at in range(len(words)))
    return next((_symbols()[end] for end in ends if end in _symbols()), "")


# What answers have in common


def cautions(found: Iterable[Any]) -> str:
    """What is to be minded, dangers first."""
    order = [*LEVELS]
    return "".join(minded(one.level, one.text) for one in sorted(found, key=lambda one: order.index(one.level)))


def minded(level: str, said: str) -> str:
    """One thing to mind."""
    mark, word, colour = LEVELS[level]
    told = f"{tag('span', mark, f'color:{colour};')} {tag('strong', word)} {text(said)}"
    return block(told, f"border-left:3px solid {colour};padding-left:.6em;max-width:60em;")


def asked(name: str, request: Mapping[str, Any]) -> str:
    """A function with what it was asked."""
    return block(code(f"carb.{name}({', '.join(f'{name}={_given(value)}' for name, value in request.items())})", SMALL))


def _given(value: Any) -> str:
    if isinstance(value, (float, str)):
        return repr(value) if isinstance(value, str) else brief(value)
    shape = getattr(value, "shape", None)
    if shape is not None:
        return f"<{' × '.join(map(str, shape))} numbers>"
    return f"<{len(value)} row{'s' * (len(value) != 1)}>" if isinstance(value, Sequence) else str(value)


def _assumed(whole: Result[Any]) -> str:
    """The assumptions, and the air outside."""
    parts = [part for part in (whole.basis, whole.beverage, whole.ambient) if part is not None]
    said = (" · ".join(f"{text(name)} {text(value)}" for name, value in part.items()) for part in parts)
    return "".join(block(found, SMALL) for found in said)


def _sources(whole: Result[Any]) -> str:
    if not whole.sources:
        return ""
    count = len(whole.sources)
    title = tag("summary", f"{count} source{'s' * (count != 1)}", "cursor:pointer;")
    listed = tag("ul", "".join(tag("li", text(source.citation)) for source in whole.sources), "margin:.2em 0;")
    return tag("details", title + listed, SMALL)


# One answer each


def result(whole: Result[Any]) -> str:
    """A result."""
    if whole._elements is not None:
        return elements(whole)
    parts = (_quantities(whole), cautions(whole.cautions), _assumed(whole), _sources(whole))
    return page(asked(whole.function, whole.request), *parts)


def part(noun: str, whole: Result[Any]) -> str:
    """The outputs of a result that share a noun."""
    return page(_quantities(whole, noun))


def _quantities(whole: Result[Any], only: str | None = None) -> str:
    """A row for each quantity with its value in every unit, under their nouns."""
    shown = [out for out in outputs(whole.function) if only in (None, out.noun)]
    nouns = sorted({out.noun: None for out in shown}, key=bool)  # Those without one come first.
    rows = []
    for noun in nouns:
        if noun:
            said = tag("th", code(noun), f"{TEXT}padding-top:.6em;font-weight:bold;", colspan="4")
            rows.append(line(said, rule=False))
        for meaning, same in groupby((out for out in shown if out.noun == noun), lambda out: out.meaning):
            cells = [_valued(out, bare(whole._value(out.full))) for out in same]
            rows.append(line(tag("td", text(meaning), f"{TEXT}{'padding-left:1.2em;' if noun else ''}"), *cells))
    return grid(rows)


def _valued(out: Out, value: Any) -> str:
    said = f"{tag('strong', text(value))} {text(out.unit)}"
    name = tag("div", code(out.name), f"{SMALL}opacity:.75;")
    return tag("td", said + name, NUMBER, title=out.full)


def elements(whole: Result[Any]) -> str:
    """A result for arrays: how many elements, the first of them, and what is to be minded."""
    import numpy as np

    shape = np.shape(whole.status)
    # What is not worked out yet may not know its size either.
    known = all(length == length for length in shape)
    count = int(np.prod(shape)) if known else 0
    size = f"{' × '.join(map(str, shape))} element{'s' * (count != 1)}" if known else "elements of unknown number"
    title = asked(whole.function, whole.request)
    if getattr(whole._elements, "lazy", False):
        return page(title, block(f"{size}, not worked out yet"))
    more = block(f"… and {count - HEAD} more", SMALL) if count > HEAD else ""
    told = _unanswered(np.asarray(whole.status)) + cautions(whole.cautions)
    return page(title, block(size), _first(whole, shape, min(count, HEAD)) if count else "", more, told)


def _first(whole: Result[Any], shape: tuple[int, ...], count: int) -> str:
    """The first elements. No more is worked out than they need."""
    import numpy as np

    places = np.unravel_index(np.arange(count), shape)
    some, shown = whole[places], outputs(whole.function)
    varied = [name for name, value in whole.request.items() if np.size(value) > 1]
    heads = [head("element")]
    for name in varied:
        noun = "given" if name in whole.shown else ""
        heads.append(head(name, symbol(name), meanings().get(name, ""), number=True, noun=noun))
    heads += [head(out.name, out.unit, out.meaning, number=True, noun=out.noun) for out in shown]
    found = [some.request[name] for name in varied] + [bare(some._value(out.full)) for out in shown]
    columns = [np.asarray(column).tolist() for column in found]
    rows = [line(*heads, head("status"), rule=False)]
    for at, status in enumerate(np.asarray(some.status).tolist()):
        place = ", ".join(str(axis[at]) for axis in places)
        rows.append(line(cell(place), *(cell(column[at]) for column in columns), cell(_status(status))))
    return grid(rows)


def _status(status: int) -> str:
    """A status in words."""
    if status < 0:
        return next((name for name, code in CODES.items() if code == status), str(status))
    return ", ".join(code for code, _, bit in _carb.caution_codes() if bit is not None and status >> bit & 1) or "ok"


def _unanswered(status: Any) -> str:
    """How many elements have no answer, and why."""
    import numpy as np

    codes, counts = np.unique(status[status < 0], return_counts=True)
    if not codes.size:
        return ""
    said = ", ".join(f"{count} {_status(int(code))}" for code, count in zip(codes[::-1], counts[::-1], strict=True))
    return block(f"{tag('strong', 'no answer')} for {counts.sum()} of {status.size} elements: {text(said)}")


def table(whole: Table) -> str:
    """A table."""
    rows = whole._whole["rows"]
    numbers = {
        name for name, unit in whole.units.items() if unit or any(isinstance(row[name], (int, float)) for row in rows)
    }
    heads = [head(name, unit, whole.meanings[name], name in numbers) for name, unit in whole.units.items()]
    body = [line(*(_of_table(value, name in numbers) for name, value in row.items())) for row in rows[:MOST]]
    more = f"… and {len(rows) - MOST} more" if len(rows) > MOST else ""
    said = f"{len(rows)} row{'s' * (len(rows) != 1)}"
    boxed = grid([line(*heads, rule=False), *body], "max-height:36em;overflow-y:auto;")
    return page(asked(whole.name, whole.request), block(said, SMALL), boxed, block(more, SMALL) if more else "")


def _of_table(value: Any, number: bool) -> str:
    return tag("td", text(value), NUMBER) if number else cell(value)


def uncertainty(estimates: Sequence[Estimate], note: str = "") -> str:
    """Estimates: their intervals on one axis for each unit, and what makes each unsure."""
    reaches: dict[str, tuple[float, float]] = {}
    for entry in estimates:
        name = next(iter(entry.value))
        low, high = reaches.get(name, (0.0, 0.0))
        reaches[name] = min(low, entry.low[name]), max(high, entry.high[name])
    pieces = [_estimate(entry, reaches[next(iter(entry.value))]) for entry in estimates]
    return page(*pieces, *([tag("p", text(note), SMALL)] if note else []))


def _estimate(entry: Estimate, reach: tuple[float, float]) -> str:
    first = next(iter(entry.value))
    bar = interval_bar(entry.low[first], entry.value[first], entry.high[first], reach)
    start, end = (f"{at:.3g}" for at in reach)
    axis = f"from {start} to {end} {symbol(first)}".strip()
    rows = [line(head("output"), head("value", number=True), head("95 %", number=True), head(axis), rule=False)]
    for full, value, low, high in entry._rows():
        unit = symbol(full)
        interval = f"{text(low)} to {text(high)} {text(unit)}"
        drawn = tag("td", "" if len(rows) > 1 else bar, CELL)
        name = tag("td", code(full), TEXT)
        said = tag("td", f"{tag('strong', text(value))} {text(unit)}", NUMBER)
        rows.append(line(name, said, tag("td", interval, NUMBER), drawn))
    heads = [head("made unsure by"), head("value", number=True), head("half width", number=True), head("kind")]
    made = [line(*heads, head("share"))]
    for share in entry.budget:
        told = f"{code(share.name)}{' (of an equation)' if share.of_an_equation else ''}"
        percent = tag("td", f"{share.share:.0%}", NUMBER)
        cells = (tag("td", told, TEXT), cell(share.value), cell(share.half_width), cell(share.kind))
        made.append(line(*cells, percent, tag("td", share_bar(share.share), CELL)))
    return grid(rows) + (grid(made, f"{SMALL}margin:0 0 1em 1.2em;") if entry.budget else "")


def job(whole: Job) -> str:
    """A whole job: what may hurt somebody, and the page."""
    found = dict.fromkeys(_dangers(whole._members))
    if whole.danger and not found:
        found["somebody may be hurt: read what the page says to mind"] = None
    style = "background:transparent;color:inherit;border:0;padding:0;line-height:1.35;"
    pinned = tag("pre", escape(whole.page()), style)
    return page(*(minded("danger", said) for said in found), pinned)


def _dangers(member: Any) -> Iterable[str]:
    """The texts of the dangers in a part of an answer, in their order."""
    if isinstance(member, Mapping):
        if member.get("level") == "danger":
            yield str(member["text"])
        for inner in member.values():
            yield from _dangers(inner)
    elif isinstance(member, (list, tuple)):
        for inner in member:
            yield from _dangers(inner)


def crosscheck(whole: Crosscheck) -> str:
    """What is found about claims, a row each, and about programs."""
    heads = ("claim", "quantity", "claimed", "ours", "difference", "verdict", "found")
    rows = [line(*(head(name, number=name in heads[2:5]) for name in heads), rule=False)]
    rows += [_claim(found) for found in whole.claims]
    programs = (f"{tag('strong', text(found.program))} {text(found.text)}" for found in whole.programs)
    return page(grid(rows), *(block(said, "max-width:60em;") for said in programs))


def _claim(found: Mapping[str, Any]) -> str:
    unit = found["unit"]
    said = symbol(unit) or unit
    who = " · ".join(filter(None, (found.get("program"), found.get("label"))))
    answered = "error" not in found
    ours = f"{text(found['ours'])} {text(said)}" if answered else "–"
    off = f"{found['difference_percent']:+.1f} %" if answered and found["difference_percent"] is not None else "–"
    mark, _, colour = LEVELS["danger"]
    marked = f"{tag('span', mark, f'color:{colour};')} {tag('strong', 'UNSAFE')}"
    unsafe = tag("div", marked) if found["unsafe"] else ""
    verdict = text(found["verdict"] if answered else "no answer").replace("_", " ")
    told = found["text"] if answered else found["error"]["text"]
    return line(
        tag("td", text(who), TEXT),
        cell(found["quantity"]),
        tag("td", f"{text(found['value'])} {text(said)}", NUMBER),
        tag("td", ours, NUMBER),
        tag("td", off, NUMBER),
        tag("td", f"{unsafe}{verdict}", TEXT),
        tag("td", text(told), f"{TEXT}max-width:40em;"),
    )


def bound(context: Mapping[str, Any]) -> str:
    """What a context binds."""
    rows = []
    for name, value in context.items():
        said = value if isinstance(value, str) else _given(value)
        rows.append(line(tag("td", code(name), TEXT), tag("td", text(said), NUMBER), cell(meanings().get(name, ""))))
    return page(block(f"{code('carb.at', SMALL)} binds{'' if rows else ' nothing'}"), grid(rows))
