"""How cells look: every style by its name, written as OpenDocument has it."""

from __future__ import annotations

INK, GREY, INPUT, HEAD, LINE = "#1b2a33", "#5c6b73", "#fdf0cf", "#dfe8ea", "#b9c6ca"
RED, AMBER, GREEN = "#b3261e", "#8a5a00", "#1d6b3c"
FONT = "Liberation Sans"

# Size in points, bold, colour of the letters, ground, alignment, wrapped, frame.
LOOKS: dict[str, tuple[float, bool, str, str, str, bool, str]] = {
    "title": (18, True, INK, "", "start", False, ""),
    "lead": (10, False, GREY, "", "start", True, ""),
    "status": (11, True, GREEN, "", "start", True, "all"),
    "head": (10, True, INK, HEAD, "start", False, "bottom"),
    "headright": (10, True, INK, HEAD, "end", True, "bottom"),
    "label": (10, False, INK, "", "start", True, "bottom"),
    "sub": (10, False, GREY, "", "start", True, "bottom"),
    "name": (9, False, INK, INPUT, "start", False, "all"),
    "fixed": (9, False, GREY, "", "start", False, "bottom"),
    "input": (10, True, INK, INPUT, "end", False, "all"),
    "choice": (9, True, INK, INPUT, "start", False, "all"),
    "worked": (10, False, GREY, "", "end", False, "bottom"),
    "note": (8, False, GREY, "", "start", True, "bottom"),
    "small": (7.5, False, INK, "", "start", True, "bottom"),
    "result": (10, True, INK, "", "end", False, "bottom"),
    "unit": (9, False, GREY, "", "start", False, "bottom"),
    "word": (10, True, INK, "", "start", True, "bottom"),
    "tag": (8.5, True, INK, "", "start", False, "bottom"),
    "text": (8.5, False, INK, "", "start", True, "all"),
    "grid": (10, False, INK, "", "center", False, "all"),
    "axis": (10, True, INK, HEAD, "center", False, "all"),
    "prose": (11, False, INK, "", "start", True, ""),
    "strong": (11, True, RED, "", "start", True, ""),
    "chapter": (12, True, INK, "", "start", True, "bottom"),
}
OPEN = ("name", "input", "choice")
"""Cells that may be filled in on a protected sheet."""

# What a condition makes of a cell, in the order in which conditions are tried.
SIGNALS = {
    "danger": (RED, "#fbe3e1", False),
    "failed": ("#ffffff", RED, True),
    "careful": (AMBER, "#fff6df", True),
    "fine": (GREEN, "#ffffff", True),
    "unseen": ("#ffffff", "#ffffff", False),
}


def style_name(look: str, places: int | None) -> str:
    return look if places is None else f"{look}_{places}"


def _number(places: int) -> str:
    return (
        f'<number:number-style style:name="n{places}"><number:number number:decimal-places="{places}" '
        f'number:min-decimal-places="{places}" number:min-integer-digits="1"/></number:number-style>'
    )


def _cell(look: str, places: int | None) -> str:
    size, bold, colour, ground, align, wrapped, frame = LOOKS[look]
    number = "" if places is None else f' style:data-style-name="n{places}"'
    border = {
        "all": f'fo:border="0.5pt solid {LINE}"',
        "bottom": f'fo:border-bottom="0.4pt solid {LINE}"',
        "": 'fo:border="none"',
    }[frame]
    back = f' fo:background-color="{ground}"' if ground else ""
    wrap = ' fo:wrap-option="wrap"' if wrapped else ""
    guard = "none" if look in OPEN else "protected"
    vertical = "top" if look in ("text", "prose", "strong") else "middle"
    weight = ' fo:font-weight="bold"' if bold else ""
    return (
        f'<style:style style:name="{style_name(look, places)}" style:family="table-cell" '
        f'style:parent-style-name="Default"{number}>'
        f'<style:table-cell-properties {border}{back}{wrap} style:cell-protect="{guard}" '
        f'style:vertical-align="{vertical}" fo:padding="0.07cm"/>'
        f'<style:paragraph-properties fo:text-align="{align}"/>'
        f'<style:text-properties fo:font-size="{size}pt" fo:color="{colour}"{weight}/></style:style>'
    )


def cell_styles(used: set[tuple[str, int | None]]) -> str:
    """The styles of the cells that are used, with their formats of numbers."""
    ordered = sorted(used, key=lambda one: (one[0], -1 if one[1] is None else one[1]))
    places = sorted({one for _, one in ordered if one is not None})
    return "".join(map(_number, places)) + "".join(_cell(*one) for one in ordered)


def named_styles() -> str:
    """The styles that all others follow, and those that conditions put on."""
    strong = ' fo:font-weight="bold"'
    signals = "".join(
        f'<style:style style:name="{name}" style:family="table-cell" style:parent-style-name="Default">'
        f'<style:table-cell-properties fo:background-color="{ground}"/><style:text-properties fo:color="{colour}"'
        f"{strong if bold else ''}/></style:style>"
        for name, (colour, ground, bold) in SIGNALS.items()
    )
    default = (
        '<style:style style:name="Default" style:family="table-cell"><style:text-properties '
        f'style:font-name="{FONT}" fo:font-size="10pt" fo:language="en" fo:country="GB"/></style:style>'
    )
    return default + signals
