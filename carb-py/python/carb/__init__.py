"""The mathematics of carbonating and packaging beer, cider, mead and soft drinks.

>>> import carb
>>> pressure = carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=0)
>>> round(pressure.gauge_psi, 1)
11.2

Functions take names with units and give results with names and units; ``pressure.working()`` shows how a number was
found, ``pressure.cautions`` what to mind, ``pressure.sources`` where the equations come from, and
``pressure.uncertainty(temperature_f="thermometer")`` how sure it is. ``carb.bottling``,
``carb.kegging`` and ``carb.plan`` do whole jobs, and ``carb.crosscheck`` tells why another program says something else.
"""

from . import _generated
from ._carb import __version__
from ._claims import read_claims
from ._crosscheck import Crosscheck, crosscheck
from ._errors import CarbError, CarbWarning
from ._generated import *  # noqa: F403
from ._generated import At
from ._plan import Bottling, Kegging, Plan, plan
from ._result import CODES, Caution, Result, Source
from ._table import Table
from ._uncertainty import Estimate, Uncertainty

at = At

__all__ = [
    *_generated.__all__,
    "CODES",
    "Bottling",
    "CarbError",
    "CarbWarning",
    "Caution",
    "Crosscheck",
    "Estimate",
    "Kegging",
    "Plan",
    "Result",
    "Source",
    "Table",
    "Uncertainty",
    "__version__",
    "at",
    "crosscheck",
    "plan",
    "read_claims",
]
