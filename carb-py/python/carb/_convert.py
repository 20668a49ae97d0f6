"""Units by their names."""

from __future__ import annotations

from typing import TYPE_CHECKING, overload

from . import _carb
from ._errors import CarbError
from ._result import CODES

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from ._types import Several


@overload
def convert(value: float, from_unit: str, to_unit: str) -> float: ...
@overload
def convert(value: Several, from_unit: str, to_unit: str) -> NDArray[np.float64]: ...
def convert(value: float | Several, from_unit: str, to_unit: str) -> float | NDArray[np.float64]:
    """Convert between two units of one kind.

    Parameters
    ----------
    value : float or array
        The value, or values. NaN stays NaN in an array.
    from_unit, to_unit : str
        Names of units, which are the ends of the names of the vocabulary: ``"psi"`` in ``gauge_psi``. ``carb.units()``
        lists them. Between gauge and absolute pressure nothing is converted: that takes the air outside.

    Returns
    -------
    float or array

    Raises
    ------
    CarbError
        For an unknown unit, units of two kinds, what is no plain number, or one that is not finite in both units.

    Examples
    --------
    >>> import carb
    >>> carb.convert(38, "f", "c")
    3.3333333333333712
    >>> carb.convert([2.0, 2.5], "volumes", "co2_g_per_l").round(2)
    array([3.95, 4.94])
    """
    import numpy as np

    from ._arrays import column, is_container
    from ._quantities import is_quantity

    if is_quantity(value) or is_container(value) or isinstance(value, (str, bool)):
        text = "value should be a number or an array of numbers without unit, index or mask"
        raise CarbError(f"{text}, not {type(value).__name__}", CODES["WRONG_TYPE"], "value")
    values = column("", value)
    try:
        converted = _carb.convert(values.ravel(), from_unit, to_unit).reshape(values.shape)
    except ValueError as error:
        raise CarbError(str(error), CODES["UNKNOWN_NAME"], "to_unit") from None
    if values.ndim:
        return converted
    if not np.isfinite(converted):
        raise CarbError(f"{value} {from_unit} is no finite number of {to_unit}", CODES["NOT_A_NUMBER"], "value")
    return float(converted)
