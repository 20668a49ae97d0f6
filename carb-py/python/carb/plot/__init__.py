"""Pictures of what the library answers; they need matplotlib (``pip install carb[plot]``).

Each function draws one picture and returns its ``matplotlib.axes.Axes``. All take the names of the vocabulary, as the
functions of the library do, and three things more:

* first, without a name, a context (``carb.at(...)``) or a result of the library, whose request is then meant;
* ``axes``, ``"metric"`` or ``"us"``: the units of everything on the picture. Carbonation is drawn in the unit in which
  it was given, else in volumes, which are no more American than metric;
* ``ax``, the ``Axes`` to draw on, else there is a new figure.

What endangers somebody, and what else is to be minded of the numbers drawn, is written on the picture. A picture shows
what the library says and works nothing out itself.

Examples
--------
>>> import carb.plot
>>> keg = carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=0)
>>> ax = carb.plot.carbonation_chart(keg, axes="us")
>>> ax.get_xlabel()
'temperature of the drink (°F)'
"""

try:
    import matplotlib as _matplotlib  # noqa: F401
except ImportError as missing:
    raise ImportError("carb.plot draws with matplotlib, which is not installed: pip install carb[plot]") from missing

from ._bottle_pressure import bottle_pressure
from ._burst_schedule import burst_schedule
from ._carbonation_chart import carbonation_chart
from ._carbonation_progress import carbonation_progress
from ._gas_budget import gas_budget
from ._priming_sugars import priming_sugars
from ._uncertainty_budget import uncertainty_budget

__all__ = [
    "bottle_pressure",
    "burst_schedule",
    "carbonation_chart",
    "carbonation_progress",
    "gas_budget",
    "priming_sugars",
    "uncertainty_budget",
]
