"""The mathematics of carbonating and packaging beer, cider, mead and soft drinks.

>>> import carb
>>> pressure = carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=0)
>>> round(pressure.gauge_psi, 1)
11.2

Functions take names with units and give results with names and units; ``pressure.working()`` shows how a number was
found, ``pressure.cautions`` what to mind, ``pressure.sources`` where the equations come from, and
``pressure.uncertainty(temperature_f="thermometer")`` how sure it is. Arrays, Series, DataArrays, Dask arrays and
quantities go in and come out as what they were; ``carb.ufunc`` has the functions as ufuncs of NumPy. ``carb.bottling``,
``carb.kegging`` and ``carb.plan`` do whole jobs, and ``carb.crosscheck`` tells why another program says something else.
``carb.plot`` draws pictures.
"""

from typing import Any as _Any

from ._carb import __version__ as __version__

# What is not made from the core's tables, and the module in which it stands. It is imported when it is asked for.
_HOMES = {
    "CODES": "_result",
    "Caution": "_result",
    "Result": "_result",
    "Part": "_result",
    "Source": "_result",
    "View": "_result",
    "CarbError": "_errors",
    "CarbWarning": "_errors",
    "convert": "_convert",
    "Crosscheck": "_crosscheck",
    "crosscheck": "_crosscheck",
    "read_claims": "_claims",
    "Bottling": "_plan",
    "Kegging": "_plan",
    "Plan": "_plan",
    "plan": "_plan",
    "Table": "_table",
    "Estimate": "_uncertainty",
    "Uncertainty": "_uncertainty",
}
_MODULES = ("plot", "ufunc")
_CONTEXT = ("At", "at")


def __getattr__(name: str) -> _Any:
    from importlib import import_module

    if name == "__all__":
        return _public()
    if name in _MODULES:
        return import_module(f".{name}", __name__)
    if name in _HOMES:
        found = getattr(import_module(f".{_HOMES[name]}", __name__), name)
    elif name in _CONTEXT:
        found = import_module("._at", __name__).context()
    elif name.startswith("_"):
        found = None
    elif name.endswith("Warning"):
        found = import_module("._errors", __name__).WARNINGS.get(name)
    else:
        found = import_module("._functions", __name__).made(name)
    if found is None:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}{_meant(name)}")
    return globals().setdefault(name, found)


def _meant(name: str) -> str:
    """The nearest name that there is; nobody means one with a line before it."""
    if name.startswith("_"):
        return ""
    from difflib import get_close_matches

    near = get_close_matches(name, _public(), 1, 0.7)
    return f": did you mean {near[0]!r}?" if near else ""


def _public() -> list[str]:
    from ._errors import WARNINGS
    from ._functions import public

    return sorted({*_HOMES, *_MODULES, *_CONTEXT, *WARNINGS, *public(), "__version__"} - {"plot"})


def __dir__() -> list[str]:
    return sorted({name for name in globals() if name.startswith("__")} | {*_public(), *_MODULES})
