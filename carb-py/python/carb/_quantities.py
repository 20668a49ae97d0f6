"""Quantities that carry their unit, as those of Pint: what a name of the library is to them.

Nothing is imported for it: a quantity brings its registry along.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from . import _carb
from ._errors import CarbError
from ._result import CODES

if TYPE_CHECKING:
    from ._arrays import Elements

SPELT = {
    "c": "degC",
    "f": "degF",
    "k": "kelvin",
    "delta_c": "delta_degC",
    "delta_f": "delta_degF",
    "kpa": "kPa",
    "bar": "bar",
    "psi": "psi",
    "pa": "Pa",
    "co2_g_per_l": "g/L",
    "volumes": "",
    "g_per_l": "g/L",
    "l": "L",
    "ml": "mL",
    "us_gal": "US_liquid_gallon",
    "imp_gal": "imperial_gallon",
    "us_fl_oz": "US_fluid_ounce",
    "g": "g",
    "kg": "kg",
    "oz": "ounce",
    "lb": "pound",
    "m": "m",
    "ft": "ft",
    "h": "hour",
    "d": "day",
    "min": "minute",
    "s": "second",
    "percent": "percent",
    "sg": "",
    "plato": "percent",
    "multiplier": "",
    "g_per_g": "",
    "kg_per_m3": "kg/m^3",
    "lb_per_ft3": "pound/ft^3",
    "mpa_s": "mPa*s",
    "pa_s": "Pa*s",
    "cp": "centipoise",
    "count": "",
    "million_per_ml": "1/nL",
    "m2_per_s": "m^2/s",
    "ppm": "ppm",
    "vol_percent": "percent",
    "ug_per_l": "ug/L",
    "ppb": "ug/L",
    "mg_per_l": "mg/L",
    "l_per_min": "L/minute",
    "us_fl_oz_per_s": "US_fluid_ounce/s",
    "us_gal_per_min": "US_liquid_gallon/minute",
    "g_per_h": "g/hour",
    "oz_per_h": "ounce/hour",
    "per_h": "1/hour",
    "per_d": "1/day",
    "bar_per_m": "bar/m",
    "psi_per_ft": "psi/ft",
    "m_per_s": "m/s",
    "ft_per_s": "ft/s",
    "mm": "mm",
    "in": "inch",
    "m3": "m^3",
    "ft3": "ft^3",
    "seconds": "s",
}
"""How a registry spells the units of the vocabulary. Money is in none, and a volume of CO2 is a ratio of volumes."""


def is_quantity(value: Any) -> bool:
    """Whether a value carries its unit."""
    return hasattr(value, "_REGISTRY") and hasattr(value, "magnitude")


def plain(name: str, quantity: Any) -> tuple[str, Any]:
    """A quantity under a name of the vocabulary as a plain value in that name's unit."""
    unit = _carb.unit(name)
    if unit == "volumes" and not quantity.dimensionless:
        # CO2 in grams per litre is the same quantity under its other name.
        name, unit = _carb.first_name(name), "co2_g_per_l"
    if unit not in SPELT:
        raise CarbError(f"{name} takes no quantity with a unit: give a plain value", CODES["WRONG_TYPE"], name)
    try:
        return name, quantity.to(SPELT[unit]).magnitude
    except Exception as error:
        wanted = SPELT[unit] or "no unit"
        text = f"{name} should be a quantity of the dimension of {wanted}: {error}"
        raise CarbError(text, CODES["WRONG_TYPE"], name) from error


class Measured:
    """An answer whose outputs are quantities of a registry."""

    def __init__(self, function: str, bare: _carb.Record | Elements, registry: Any, given: dict[str, Any]) -> None:
        self.function = function
        self.bare = bare
        self.registry = registry
        self.as_given = given

    def value(self, name: str) -> Any:
        """The value of an output by its name, with its unit."""
        value = self.bare.value(name)
        spelt = SPELT.get(_carb.output_unit(self.function, name))
        return value if spelt is None else self.registry.Quantity(value, spelt)

    @property
    def request(self) -> dict[str, Any]:
        """What was asked, as plain values."""
        return self.bare.request
