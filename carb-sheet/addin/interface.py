"""The interface of the add-in, as LibreOffice reads it: one method for each function, and the companions."""

from typing import Any

Entry = dict[str, Any]
HEAD = """\
module carbcalc {
interface XFunctions : com::sun::star::uno::XInterface {
"""
TAIL = "}; };\n"
CALLER = "[in] com::sun::star::beans::XPropertySet caller"


def idl(functions: list[Entry], companions: list[Entry]) -> str:
    """The caller is the document, which Calc hands over by itself; users do not see it. All answers are rows, for only
    so can one function give numbers, texts and arrays: one row of one value is a value."""
    lines = [method(function["name"], ["any wanted", "sequence<any> pairs"]) for function in functions]
    for companion in companions:
        lines.append(method(companion["name"], [f"{kind} {plain(name)}" for name, kind, _ in companion["arguments"]]))
    return HEAD + "".join(lines) + TAIL


def plain(name: str) -> str:
    """A name without underlines, which this language does not have: files know the functions by these."""
    return name.replace("_", "")


def method(name: str, arguments: list[str]) -> str:
    taken = ", ".join([CALLER, *(f"[in] {argument}" for argument in arguments)]) if arguments else ""
    return (
        f"  sequence< sequence<any> > {plain(name)}({taken}) raises (com::sun::star::lang::IllegalArgumentException);\n"
    )
