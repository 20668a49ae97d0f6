"""The interface of the add-in, as LibreOffice reads it: one method for each function, and the companions."""

from typing import Any

HEAD = """\
module carbcalc {
interface XFunctions : com::sun::star::uno::XInterface {
"""
TAIL = "}; };\n"
CALLER = "[in] com::sun::star::beans::XPropertySet caller"


def idl(said: dict[str, Any]) -> str:
    """The caller is the document, which Calc hands over by itself; users do not see it. All answers are rows, for only
    so can one function give numbers, texts and arrays: one row of one value is a value. Arguments are listed one by
    one: a sequence of them Calc would take apart in array formulas, and call the function for every element."""
    return HEAD + "".join(method(name, [argument for argument, _ in text[1]]) for name, text in said.items()) + TAIL


def plain(name: str) -> str:
    """A name without underlines and spaces, which this language does not have: files know the functions by these."""
    return name.replace("_", "").replace(" ", "")


def method(name: str, arguments: list[str]) -> str:
    taken = ", ".join([CALLER, *(f"[in] any {plain(argument)}" for argument in arguments)]) if arguments else ""
    return (
        f"  sequence< sequence<any> > {plain(name)}({taken}) raises (com::sun::star::lang::IllegalArgumentException);\n"
    )
