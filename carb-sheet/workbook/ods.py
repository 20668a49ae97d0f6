"""Sheets written as an OpenDocument spreadsheet: the same bytes for the same sheets."""

from __future__ import annotations

import io
from collections.abc import Sequence
from xml.sax.saxutils import escape, quoteattr
from zipfile import ZIP_DEFLATED, ZIP_STORED, ZipFile, ZipInfo

from . import styles
from .formula import stored
from .sheet import Cell, Sheet, column_name

MIME = "application/vnd.oasis.opendocument.spreadsheet"
SPACES = " ".join(
    f'xmlns:{prefix}="{address}"'
    for prefix, address in {
        "office": "urn:oasis:names:tc:opendocument:xmlns:office:1.0",
        "style": "urn:oasis:names:tc:opendocument:xmlns:style:1.0",
        "text": "urn:oasis:names:tc:opendocument:xmlns:text:1.0",
        "table": "urn:oasis:names:tc:opendocument:xmlns:table:1.0",
        "fo": "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0",
        "svg": "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0",
        "number": "urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0",
        "config": "urn:oasis:names:tc:opendocument:xmlns:config:1.0",
        "meta": "urn:oasis:names:tc:opendocument:xmlns:meta:1.0",
        "dc": "http://purl.org/dc/elements/1.1/",
        "of": "urn:oasis:names:tc:opendocument:xmlns:of:1.2",
        "ooo": "http://openoffice.org/2004/office",
        "calcext": "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0",
    }.items()
)
HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n'
ROW = 0.56
MARGIN = 1.3
DATE = (1980, 1, 1, 0, 0, 0)


def written(sheets: Sequence[Sheet], title: str, version: str) -> bytes:
    """The workbook as the bytes of its file."""
    parts = {
        "content.xml": _content(sheets),
        "styles.xml": _styles(sheets, version),
        "settings.xml": _settings(sheets),
        "meta.xml": _whole("document-meta", f"<office:meta><dc:title>{escape(title)}</dc:title></office:meta>"),
    }
    entries = "".join(
        f'<manifest:file-entry manifest:full-path="{name}" manifest:media-type="text/xml"/>' for name in parts
    )
    manifest = (
        f'{HEAD}<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" '
        f'manifest:version="1.2"><manifest:file-entry manifest:full-path="/" manifest:media-type="{MIME}"/>'
        f"{entries}</manifest:manifest>"
    )
    out = io.BytesIO()
    with ZipFile(out, "w") as archive:
        archive.writestr(ZipInfo("mimetype", DATE), MIME, ZIP_STORED)
        for name, text in {**parts, "META-INF/manifest.xml": manifest}.items():
            archive.writestr(ZipInfo(name, DATE), text, ZIP_DEFLATED)
    return out.getvalue()


def _whole(kind: str, inner: str) -> str:
    return f'{HEAD}<office:{kind} {SPACES} office:version="1.2">{inner}</office:{kind}>'


def _content(sheets: Sequence[Sheet]) -> str:
    offered = list(dict.fromkeys(cell.offered for sheet in sheets for cell in sheet.cells.values() if cell.offered))
    lists = {choices: f"list{place}" for place, choices in enumerate(offered)}
    used = {(cell.look, cell.places) for sheet in sheets for cell in sheet.cells.values()}
    widths = sorted({width for sheet in sheets for width in sheet.widths})
    heights = sorted({height for sheet in sheets for height in sheet.heights.values()} | {ROW})
    automatic = "".join(
        f'<style:style style:name="{_size("co", width)}" style:family="table-column">'
        f'<style:table-column-properties style:column-width="{width}cm"/></style:style>'
        for width in widths
    )
    automatic += "".join(
        f'<style:style style:name="{_size("ro", height)}" style:family="table-row"><style:table-row-properties '
        f'style:row-height="{height}cm" style:use-optimal-row-height="false"/></style:style>'
        for height in heights
    )
    automatic += "".join(
        f'<style:style style:name="ta{place}" style:family="table" style:master-page-name="page{place}">'
        '<style:table-properties table:display="true"/></style:style>'
        for place, _ in enumerate(sheets)
    )
    tables = "".join(_table(place, sheet, lists) for place, sheet in enumerate(sheets))
    return _whole(
        "document-content",
        f"<office:automatic-styles>{styles.cell_styles(used)}{automatic}</office:automatic-styles>"
        f"<office:body><office:spreadsheet>{_validations(lists)}{tables}</office:spreadsheet></office:body>",
    )


def _size(kind: str, size: float) -> str:
    return f"{kind}{round(size * 100)}"


def _validations(lists: dict[tuple[str, ...], str]) -> str:
    inner = "".join(
        f'<table:content-validation table:name="{name}" table:allow-empty-cell="true" '
        f"table:condition={quoteattr(_listed(choices))} "
        'table:display-list="unsorted"><table:error-message table:display="true" table:message-type="stop" '
        'table:title="Not in the list"><text:p>Choose one of the list.</text:p></table:error-message>'
        "</table:content-validation>"
        for choices, name in lists.items()
    )
    return f"<table:content-validations>{inner}</table:content-validations>"


def _listed(choices: tuple[str, ...]) -> str:
    """A condition that holds for the choices."""
    inner = ";".join(f'"{choice}"' for choice in choices)
    return f"of:cell-content-is-in-list({inner})"


def _table(place: int, sheet: Sheet, lists: dict[tuple[str, ...], str]) -> str:
    last = max(row + cell.down - 1 for (row, _), cell in sheet.cells.items())
    covered = {
        (row + down, column_name(ord(column) - ord("A") + across))
        for (row, column), cell in sheet.cells.items()
        for down in range(cell.down)
        for across in range(cell.across)
        if (down, across) != (0, 0)
    }
    columns = "".join(f'<table:table-column table:style-name="{_size("co", width)}"/>' for width in sheet.widths)
    rows = "".join(_row(sheet, row, covered, lists) for row in range(1, last + 1))
    whole = f"{sheet.name}.A1:{sheet.name}.{column_name(len(sheet.widths) - 1)}{last}"
    if not sheet.name.isalpha():
        whole = whole.replace(sheet.name, f"'{sheet.name}'")
    return (
        f'<table:table table:name={quoteattr(sheet.name)} table:style-name="ta{place}" table:protected="true" '
        f"table:print-ranges={quoteattr(whole)}>{columns}{rows}{_signals(sheet)}</table:table>"
    )


def _row(sheet: Sheet, row: int, covered: set[tuple[int, str]], lists: dict[tuple[str, ...], str]) -> str:
    cells = []
    for index in range(len(sheet.widths)):
        letter = column_name(index)
        cell = sheet.cells.get((row, letter))
        if (row, letter) in covered:
            look = f' table:style-name="{styles.style_name(cell.look, cell.places)}"' if cell else ""
            cells.append(f"<table:covered-table-cell{look}/>")
        else:
            cells.append(_cell(cell, lists) if cell else "<table:table-cell/>")
    height = _size("ro", sheet.heights.get(row, ROW))
    return f'<table:table-row table:style-name="{height}">{"".join(cells)}</table:table-row>'


def _cell(cell: Cell, lists: dict[tuple[str, ...], str]) -> str:
    marks = [f'table:style-name="{styles.style_name(cell.look, cell.places)}"']
    inner = ""
    if cell.offered:
        marks.append(f'table:content-validation-name="{lists[cell.offered]}"')
    if (cell.across, cell.down) != (1, 1):
        marks.append(f'table:number-columns-spanned="{cell.across}" table:number-rows-spanned="{cell.down}"')
    if cell.array:
        rows, columns = cell.array
        marks.append(f'table:number-matrix-columns-spanned="{columns}" table:number-matrix-rows-spanned="{rows}"')
    if cell.is_formula:
        marks.append(f"table:formula={quoteattr(stored(str(cell.content)[1:]))}")
    elif isinstance(cell.content, str):
        marks.append('office:value-type="string"')
        inner = "".join(f"<text:p>{escape(line)}</text:p>" for line in cell.content.split("\n"))
    elif cell.content is not None:
        marks.append(f'office:value-type="float" office:value="{cell.content!r}"')
    return f"<table:table-cell {' '.join(marks)}>{inner}</table:table-cell>"


def _signals(sheet: Sheet) -> str:
    if not sheet.signals:
        return ""
    name = sheet.name if sheet.name.isalpha() else f"'{sheet.name}'"
    found = ""
    for area, conditions in sheet.signals:
        first, _, last = area.partition(":")
        target, base = quoteattr(f"{name}.{first}:{name}.{last or first}"), quoteattr(f"{name}.{first}")
        inner = "".join(
            f'<calcext:condition calcext:apply-style-name="{signal}" calcext:value={quoteattr(condition)} '
            f"calcext:base-cell-address={base}/>"
            for condition, signal in conditions
        )
        opened = f"<calcext:conditional-format calcext:target-range-address={target}>"
        found += f"{opened}{inner}</calcext:conditional-format>"
    return f"<calcext:conditional-formats>{found}</calcext:conditional-formats>"


def _styles(sheets: Sequence[Sheet], version: str) -> str:
    layouts, masters = "", ""
    for place, sheet in enumerate(sheets):
        width, height, turned = (29.7, 21.0, "landscape") if sheet.landscape else (21.0, 29.7, "portrait")
        layouts += (
            f'<style:page-layout style:name="layout{place}"><style:page-layout-properties fo:page-width="{width}cm" '
            f'fo:page-height="{height}cm" style:print-orientation="{turned}" '
            f'fo:margin="{MARGIN}cm" style:scale-to-X="1" style:scale-to-Y="1" style:table-centering="horizontal" '
            'style:print="objects charts drawings zero-values"/>'
            '<style:header-style><style:header-footer-properties fo:min-height="0.7cm" fo:margin-bottom="0.2cm"/>'
            '</style:header-style><style:footer-style><style:header-footer-properties fo:min-height="0.7cm" '
            'fo:margin-top="0.2cm"/></style:footer-style></style:page-layout>'
        )
        masters += (
            f'<style:master-page style:name="page{place}" style:page-layout-name="layout{place}">'
            f"<style:header><text:p>Packaging day: {escape(sheet.title)}</text:p></style:header>"
            f"<style:footer><text:p>Worked out by carb {version}. The maker's rating, local code and licensed "
            "practice go before every number here.</text:p></style:footer></style:master-page>"
        )
    return _whole(
        "document-styles",
        f'<office:font-face-decls><style:font-face style:name="{styles.FONT}" svg:font-family="\'{styles.FONT}\'"/>'
        f"</office:font-face-decls><office:styles>{styles.named_styles()}</office:styles>"
        f"<office:automatic-styles>{layouts}</office:automatic-styles>"
        f"<office:master-styles>{masters}</office:master-styles>",
    )


def _item(name: str, kind: str, value: object) -> str:
    return f'<config:config-item config:name="{name}" config:type="{kind}">{value}</config:config-item>'


def _settings(sheets: Sequence[Sheet]) -> str:
    entries = ""
    for sheet in sheets:
        first = next((key for key, cell in sorted(sheet.cells.items()) if cell.look == "input"), (1, "A"))
        frozen = (
            _item("VerticalSplitMode", "short", 2)
            + _item("VerticalSplitPosition", "int", sheet.frozen)
            + _item("ActiveSplitRange", "short", 2)
            + _item("PositionTop", "int", 0)
            + _item("PositionBottom", "int", sheet.frozen)
        )
        entries += (
            f"<config:config-item-map-entry config:name={quoteattr(sheet.name)}>"
            + _item("CursorPositionX", "int", ord(first[1]) - ord("A"))
            + _item("CursorPositionY", "int", first[0] - 1)
            + (frozen if sheet.frozen else "")
            + _item("ShowGrid", "boolean", "false")
            + "</config:config-item-map-entry>"
        )
    return _whole(
        "document-settings",
        '<office:settings><config:config-item-set config:name="ooo:view-settings"><config:config-item-map-indexed '
        'config:name="Views"><config:config-item-map-entry>'
        + _item("ViewId", "string", "view1")
        + f'<config:config-item-map-named config:name="Tables">{entries}</config:config-item-map-named>'
        + _item("ActiveTable", "string", escape(sheets[0].name))
        + _item("ShowGrid", "boolean", "false")
        + "</config:config-item-map-entry></config:config-item-map-indexed></config:config-item-set></office:settings>",
    )
