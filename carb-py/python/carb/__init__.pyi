# Written by generate.py from the tables of the core; a test compares.

from collections.abc import Mapping
from typing import Any, Generic, Literal, TypedDict, TypeVar, overload

import numpy as np
from numpy.typing import NDArray
from typing_extensions import Unpack

from . import ufunc as ufunc
from ._at import Bound
from ._carb import __version__ as __version__
from ._claims import read_claims as read_claims
from ._convert import convert as convert
from ._crosscheck import Crosscheck as Crosscheck
from ._crosscheck import crosscheck as crosscheck
from ._errors import CarbError as CarbError
from ._errors import CarbWarning as CarbWarning
from ._plan import Bottling as Bottling
from ._plan import Kegging as Kegging
from ._plan import Plan as Plan
from ._plan import plan as plan
from ._result import CODES as CODES
from ._result import Caution as Caution
from ._result import Part as Part
from ._result import Result as Result
from ._result import Source as Source
from ._result import View as View
from ._table import Table as Table
from ._types import Container, Doubt, Numbers, Rows
from ._uncertainty import Estimate as Estimate
from ._uncertainty import Uncertainty as Uncertainty

_T = TypeVar("_T")
_N = TypeVar("_N")

__all__ = [
    "AboveExpectedWarning",
    "AddedCo2",
    "AddedCo2Added",
    "AddedCo2Expected",
    "AddedCo2Worst",
    "AlcoholHighWarning",
    "AmbientPressure",
    "At",
    "Attenuation",
    "AttenuationApparent",
    "AttenuationQuick",
    "AttenuationReal",
    "BelowExpectedWarning",
    "BelowFreezingWarning",
    "BeyondEveryKegWarning",
    "Blend",
    "BlendKept",
    "BlendLosesWarning",
    "BlendMixed",
    "Bottling",
    "BreakEven",
    "BurstTime",
    "BurstTimeExpected",
    "BurstTimeHold",
    "BurstTimeLatestRest",
    "BurstTimeLeast",
    "BurstTimeRest",
    "BurstTimeStop",
    "CODES",
    "CarbError",
    "CarbWarning",
    "CarbonationDangerWarning",
    "CarbonationHighWarning",
    "CarbonationProgress",
    "CarbonationProgressEnd",
    "CarbonationProgressExpected",
    "CarbonationProgressLeast",
    "CarbonationProgressMost",
    "CarbonationTime",
    "CarbonationTimeExpected",
    "CarbonationTimeLatest",
    "CarbonationTimeSoonest",
    "Caution",
    "ChartCommonPracticeWarning",
    "ChartPressureWarning",
    "ChartTemperatureWarning",
    "ClassCarbonationDangerWarning",
    "ClassCarbonationHighWarning",
    "ClassPressureDangerWarning",
    "ClosedFermentation",
    "ClosedFermentationExpected",
    "ClosedFermentationWorst",
    "Co2Saturation",
    "Co2SaturationLiquid",
    "Co2SaturationVapour",
    "CoarseScaleWarning",
    "CoarseTabletWarning",
    "ColdConditioningWarning",
    "Conditioning",
    "ConditioningExpected",
    "ConditioningLeast",
    "ConditioningMost",
    "ConditioningTime",
    "ConditioningTimeExpected",
    "ConditioningTimeLeast",
    "ConditioningTimeMost",
    "CoreWarmWarning",
    "Crosscheck",
    "CylinderContents",
    "CylinderContentsLeft",
    "CylinderHotWarning",
    "CylinderLeft",
    "CylinderLeftFalling",
    "CylinderLeftLiquidFull",
    "CylinderLiquidFullWarning",
    "CylinderOverfilledWarning",
    "CylinderOverweightWarning",
    "DeepDrinkWarning",
    "DextrinLeftWarning",
    "DissolvedCo2",
    "DrinkProperties",
    "EndNotToldWarning",
    "Estimate",
    "EuropeanTemperatureWarning",
    "ExtractHighWarning",
    "FastPourWarning",
    "FermentableDangerWarning",
    "FermentableLeftWarning",
    "FermenterVacuumWarning",
    "FewCellsWarning",
    "FewReadingsWarning",
    "FillingCarbonation",
    "FillingCarbonationExpected",
    "FillingCarbonationLeast",
    "FillingCarbonationMost",
    "FilteredDrinkWarning",
    "FinalGravity",
    "ForeignModelWarning",
    "GasBlend",
    "GasBudget",
    "GasBudgetDissolve",
    "GasBudgetHeadspace",
    "GasBudgetLeast",
    "GasBudgetLoss",
    "GasBudgetMost",
    "GasBudgetPurge",
    "GasBudgetServe",
    "GasBudgetTotal",
    "GasPressureWarning",
    "Gravity",
    "GravityCo2",
    "GravityCo2Balling",
    "GravityCo2Theory",
    "GravityRangeWarning",
    "GrowlerWarmWarning",
    "HandbookLine",
    "HandbookLineLift",
    "HandbookPressure",
    "HandbookPressureLift",
    "HandbookPressureLine",
    "HeatedGlassWarning",
    "HenryTemperatureWarning",
    "HighGaugeWarning",
    "HotConditioningWarning",
    "KegPressure",
    "KegTemperature",
    "Kegging",
    "LactoseLeftWarning",
    "LineFlow",
    "LineLength",
    "LinePressure",
    "LinePressureFittings",
    "LinePressureLift",
    "LinePressureLine",
    "LiquidAlcoholWarning",
    "LiquidWarmWarning",
    "LowAttenuationWarning",
    "NearCriticalWarning",
    "NotForConditioningWarning",
    "OldDrinkWarning",
    "OriginalRangeWarning",
    "OxygenHighWarning",
    "OxygenPickup",
    "OxygenPickupEquilibrium",
    "OxygenPickupGas",
    "OxygenPickupHeadspace",
    "OxygenTemperatureWarning",
    "PackageCarbonation",
    "PackageCarbonationDissolved",
    "PackageCarbonationLeastDissolved",
    "PackageCarbonationLeastTotal",
    "PackageCarbonationTotal",
    "PackagePressure",
    "PackagePressureExpected",
    "PackagePressureWorst",
    "PackagingCost",
    "PackagingCostBottles",
    "PackagingCostBottlesFirst",
    "PackagingCostKeg",
    "PackagingCostKegFirst",
    "Part",
    "Plan",
    "PressureDangerWarning",
    "PressureHighWarning",
    "PrimedCarbonation",
    "PrimedCarbonationAdded",
    "PrimingSugar",
    "PrimingSyrup",
    "PrimingSyrupLeast",
    "PrimingWort",
    "PurgeAboveRatingWarning",
    "PurgeCycles",
    "PurgeCyclesEach",
    "PurgeCyclesTotal",
    "PurgeCyclesWhole",
    "PurgeOxygen",
    "PurgeOxygenEach",
    "PurgeOxygenTotal",
    "PurgePressureWarning",
    "PushOxygen",
    "RatingDangerWarning",
    "ResidualCo2",
    "ResidualHeldWarning",
    "Result",
    "Reyeasting",
    "ReyeastingDryYeast",
    "RoomAboveLongTermWarning",
    "RoomAboveUkShortTermWarning",
    "RoomAboveUsShortTermWarning",
    "RoomCo2",
    "RoomCo2Aired",
    "RoomCo2Bound",
    "RoomCo2Later",
    "RoomCo2LaterLowHalf",
    "RoomCo2LowHalf",
    "RoomCo2LowHalfAired",
    "RoomCo2Mixed",
    "RoomImmediatelyDangerousWarning",
    "RoomLeak",
    "RoomLeakLowHalf",
    "RoomLeakMixed",
    "Source",
    "Spunding",
    "SpundingClosing",
    "SpundingRelief",
    "StillFallingWarning",
    "StonePressure",
    "StonePressureHead",
    "StonePressureSurface",
    "StrongDrinkWarning",
    "SweepOxygen",
    "SweepOxygenMixed",
    "SweepOxygenPlugFlow",
    "SweetenerLeftWarning",
    "SweetenerPacketWarning",
    "Table",
    "TotalPackageOxygen",
    "TotalPackageOxygenHeadspace",
    "TransitionFlowWarning",
    "Uncertainty",
    "UnfinishedDangerWarning",
    "UnpurgedWarning",
    "UnsteadyGravityWarning",
    "UptakeRate",
    "UptakeRateExpected",
    "UptakeRateLeast",
    "UptakeRateMost",
    "UptakeTemperatureWarning",
    "VesselRatingDangerWarning",
    "VesselUnratedWarning",
    "View",
    "ViscosityTemperatureWarning",
    "WarmedKeg",
    "WarmedKegExpected",
    "WarmedKegWorst",
    "WildDangerWarning",
    "WineTemperatureWarning",
    "WorkingPressureDangerWarning",
    "__version__",
    "added_co2",
    "ambient_pressure",
    "at",
    "attenuation",
    "blend",
    "bottle_classes",
    "bottle_doses",
    "bottle_pressures",
    "bottle_sizes",
    "bottle_verdicts",
    "bottling",
    "break_even",
    "burst_time",
    "carbonating_methods",
    "carbonation_chart",
    "carbonation_curve",
    "carbonation_progress",
    "carbonation_ranges",
    "carbonation_schedule",
    "carbonation_time",
    "cautions",
    "claim_quantities",
    "closed_fermentation",
    "co2_saturation",
    "conditioning",
    "conditioning_days",
    "conditioning_time",
    "convert",
    "crosscheck",
    "crosscheck_habits",
    "cylinder_contents",
    "cylinder_left",
    "cylinder_sizes",
    "dissolved_co2",
    "drink_properties",
    "equations",
    "exposure_limits",
    "fermentables",
    "fill_list",
    "filling_carbonation",
    "filling_densities",
    "filling_losses",
    "final_gravity",
    "gas_blend",
    "gas_budget",
    "gravity",
    "gravity_co2",
    "handbook_line",
    "handbook_pressure",
    "instruments",
    "keg_pressure",
    "keg_ratings",
    "keg_sizes",
    "keg_temperature",
    "kegging",
    "line_balance",
    "line_flow",
    "line_length",
    "line_pressure",
    "oxygen_limits",
    "oxygen_pickup",
    "package_carbonation",
    "package_pressure",
    "packaging_cost",
    "plan",
    "pressure_parts",
    "primed_carbonation",
    "priming_sugar",
    "priming_syrup",
    "priming_wort",
    "purge_cycles",
    "purge_oxygen",
    "push_oxygen",
    "read_claims",
    "residual_co2",
    "reyeasting",
    "room_co2",
    "room_leak",
    "solubility_models",
    "sources",
    "spunding",
    "stone_pressure",
    "sweep_oxygen",
    "sweeteners",
    "total_package_oxygen",
    "tubes",
    "ufunc",
    "units",
    "uptake_fit",
    "uptake_rate",
    "warmed_keg",
]

class ChartTemperatureWarning(CarbWarning): ...
class ChartPressureWarning(CarbWarning): ...
class CoreWarmWarning(CarbWarning): ...
class BelowFreezingWarning(CarbWarning): ...
class ResidualHeldWarning(CarbWarning): ...
class WineTemperatureWarning(CarbWarning): ...
class ExtractHighWarning(CarbWarning): ...
class AlcoholHighWarning(CarbWarning): ...
class GasPressureWarning(CarbWarning): ...
class GravityRangeWarning(CarbWarning): ...
class EuropeanTemperatureWarning(CarbWarning): ...
class HenryTemperatureWarning(CarbWarning): ...
class ViscosityTemperatureWarning(CarbWarning): ...
class NearCriticalWarning(CarbWarning): ...
class OriginalRangeWarning(CarbWarning): ...
class LiquidAlcoholWarning(CarbWarning): ...
class LiquidWarmWarning(CarbWarning): ...
class ForeignModelWarning(CarbWarning): ...
class DextrinLeftWarning(CarbWarning): ...
class LactoseLeftWarning(CarbWarning): ...
class SweetenerLeftWarning(CarbWarning): ...
class SweetenerPacketWarning(CarbWarning): ...
class ChartCommonPracticeWarning(CarbWarning): ...
class FermentableLeftWarning(CarbWarning): ...
class FermentableDangerWarning(CarbWarning): ...
class CarbonationHighWarning(CarbWarning): ...
class CarbonationDangerWarning(CarbWarning): ...
class HeatedGlassWarning(CarbWarning): ...
class PressureHighWarning(CarbWarning): ...
class PressureDangerWarning(CarbWarning): ...
class ClassCarbonationHighWarning(CarbWarning): ...
class ClassCarbonationDangerWarning(CarbWarning): ...
class ClassPressureDangerWarning(CarbWarning): ...
class RatingDangerWarning(CarbWarning): ...
class NotForConditioningWarning(CarbWarning): ...
class UnfinishedDangerWarning(CarbWarning): ...
class StillFallingWarning(CarbWarning): ...
class FewReadingsWarning(CarbWarning): ...
class BelowExpectedWarning(CarbWarning): ...
class AboveExpectedWarning(CarbWarning): ...
class WildDangerWarning(CarbWarning): ...
class StrongDrinkWarning(CarbWarning): ...
class OldDrinkWarning(CarbWarning): ...
class FilteredDrinkWarning(CarbWarning): ...
class ColdConditioningWarning(CarbWarning): ...
class HotConditioningWarning(CarbWarning): ...
class FewCellsWarning(CarbWarning): ...
class FermenterVacuumWarning(CarbWarning): ...
class UnsteadyGravityWarning(CarbWarning): ...
class CoarseScaleWarning(CarbWarning): ...
class LowAttenuationWarning(CarbWarning): ...
class EndNotToldWarning(CarbWarning): ...
class CoarseTabletWarning(CarbWarning): ...
class TransitionFlowWarning(CarbWarning): ...
class FastPourWarning(CarbWarning): ...
class GrowlerWarmWarning(CarbWarning): ...
class BlendLosesWarning(CarbWarning): ...
class VesselRatingDangerWarning(CarbWarning): ...
class VesselUnratedWarning(CarbWarning): ...
class OxygenTemperatureWarning(CarbWarning): ...
class OxygenHighWarning(CarbWarning): ...
class PurgePressureWarning(CarbWarning): ...
class PurgeAboveRatingWarning(CarbWarning): ...
class CylinderLiquidFullWarning(CarbWarning): ...
class CylinderOverfilledWarning(CarbWarning): ...
class CylinderOverweightWarning(CarbWarning): ...
class RoomAboveLongTermWarning(CarbWarning): ...
class RoomAboveUkShortTermWarning(CarbWarning): ...
class RoomAboveUsShortTermWarning(CarbWarning): ...
class RoomImmediatelyDangerousWarning(CarbWarning): ...
class UptakeTemperatureWarning(CarbWarning): ...
class DeepDrinkWarning(CarbWarning): ...
class HighGaugeWarning(CarbWarning): ...
class WorkingPressureDangerWarning(CarbWarning): ...
class BeyondEveryKegWarning(CarbWarning): ...
class UnpurgedWarning(CarbWarning): ...
class CylinderHotWarning(CarbWarning): ...

class DissolvedCo2(Result[_T]):
    """CO2 that a drink holds at equilibrium under a pressure of CO2, or of a blended gas."""

    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class _DissolvedCo2Inputs(TypedDict, Generic[_N], total=False):
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    abs_kpa: _N | None
    abs_bar: _N | None
    abs_psi: _N | None
    abs_pa: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    co2_percent: _N | None
    air_abs_kpa: _N | None
    air_abs_bar: _N | None
    air_abs_psi: _N | None
    air_abs_pa: _N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def dissolved_co2(**given: Unpack[_DissolvedCo2Inputs[float]]) -> DissolvedCo2[float]:
    """CO2 that a drink holds at equilibrium under a pressure of CO2, or of a blended gas.

    Parameters
    ----------
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required: this, or another pressure.
    abs_kpa, abs_bar, abs_psi, abs_pa : float or array, optional
        Pressure above vacuum, total of the gas over the drink. From 0 to 3000 in ``abs_kpa``. Required: this,
        or another pressure.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Default: needed with a gauge pressure, unless ambient is given.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Default: needed with a gauge pressure, unless altitude is given.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    co2_percent : float or array, optional
        CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen. From 1 to 100 in
        ``co2_percent``. Default: 100 %: CO2 and nothing else.
    air_abs_kpa, air_abs_bar, air_abs_psi, air_abs_pa : float or array, optional
        Partial pressure of air, or of nitrogen, that stays in the headspace: that of the air outside where it
        was not purged at all. From 0 to 3000 in ``air_abs_kpa``. Default: 0: purged, or driven out.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    DissolvedCo2
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.dissolved_co2(gauge_psi=12, temperature_f=38, altitude_m=0).co2_g_per_l
    5.09209689911317
    """
@overload
def dissolved_co2(**given: Unpack[_DissolvedCo2Inputs[Numbers]]) -> DissolvedCo2[NDArray[np.float64]]: ...
@overload
def dissolved_co2(**given: Unpack[_DissolvedCo2Inputs[Container]]) -> DissolvedCo2[Any]: ...

class KegPressure(Result[_T]):
    """Regulator pressure that holds a drink at a carbonation, under CO2 or a blended gas."""

    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""
    @property
    def abs_kpa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, kPa."""
    @property
    def abs_bar(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, bar."""
    @property
    def abs_psi(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, psi."""
    @property
    def abs_pa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, Pa."""

class _KegPressureInputs(TypedDict, Generic[_N], total=False):
    co2_g_per_l: _N | None
    volumes: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    co2_percent: _N | None
    air_abs_kpa: _N | None
    air_abs_bar: _N | None
    air_abs_psi: _N | None
    air_abs_pa: _N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def keg_pressure(**given: Unpack[_KegPressureInputs[float]]) -> KegPressure[float]:
    """Regulator pressure that holds a drink at a carbonation, under CO2 or a blended gas.

    Parameters
    ----------
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    co2_percent : float or array, optional
        CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen. From 1 to 100 in
        ``co2_percent``. Default: 100 %: CO2 and nothing else.
    air_abs_kpa, air_abs_bar, air_abs_psi, air_abs_pa : float or array, optional
        Partial pressure of air, or of nitrogen, that stays in the headspace: that of the air outside where it
        was not purged at all. From 0 to 3000 in ``air_abs_kpa``. Default: 0: purged, or driven out.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    KegPressure
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=0).gauge_kpa
    77.31862844464908
    """
@overload
def keg_pressure(**given: Unpack[_KegPressureInputs[Numbers]]) -> KegPressure[NDArray[np.float64]]: ...
@overload
def keg_pressure(**given: Unpack[_KegPressureInputs[Container]]) -> KegPressure[Any]: ...

class GasBlend(Result[_T]):
    """Share of CO2 in a blend with nitrogen that holds a drink at a carbonation under a regulator pressure."""

    @property
    def co2_percent(self) -> _T:
        """CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen, %."""

class _GasBlendInputs(TypedDict, Generic[_N], total=False):
    co2_g_per_l: _N | None
    volumes: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    air_abs_kpa: _N | None
    air_abs_bar: _N | None
    air_abs_psi: _N | None
    air_abs_pa: _N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def gas_blend(**given: Unpack[_GasBlendInputs[float]]) -> GasBlend[float]:
    """Share of CO2 in a blend with nitrogen that holds a drink at a carbonation under a regulator pressure.

    Parameters
    ----------
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    air_abs_kpa, air_abs_bar, air_abs_psi, air_abs_pa : float or array, optional
        Partial pressure of air, or of nitrogen, that stays in the headspace: that of the air outside where it
        was not purged at all. From 0 to 3000 in ``air_abs_kpa``. Default: 0: purged, or driven out.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    GasBlend
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.gas_blend(
    ...     volumes=2.5,
    ...     temperature_f=38,
    ...     gauge_psi=22,
    ...     altitude_m=0,
    ... ).co2_percent
    70.51698887169997
    """
@overload
def gas_blend(**given: Unpack[_GasBlendInputs[Numbers]]) -> GasBlend[NDArray[np.float64]]: ...
@overload
def gas_blend(**given: Unpack[_GasBlendInputs[Container]]) -> GasBlend[Any]: ...

class KegTemperature(Result[_T]):
    """Temperature at which a regulator pressure holds a drink at a carbonation: warmer, it foams and loses CO2."""

    @property
    def temperature_c(self) -> _T:
        """Temperature of the drink, °C."""
    @property
    def temperature_f(self) -> _T:
        """Temperature of the drink, °F."""
    @property
    def temperature_k(self) -> _T:
        """Temperature of the drink, K."""

class _KegTemperatureInputs(TypedDict, Generic[_N], total=False):
    co2_g_per_l: _N | None
    volumes: _N | None
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    co2_percent: _N | None
    air_abs_kpa: _N | None
    air_abs_bar: _N | None
    air_abs_psi: _N | None
    air_abs_pa: _N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def keg_temperature(**given: Unpack[_KegTemperatureInputs[float]]) -> KegTemperature[float]:
    """Temperature at which a regulator pressure holds a drink at a carbonation: warmer, it foams and loses CO2.

    Parameters
    ----------
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    co2_percent : float or array, optional
        CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen. From 1 to 100 in
        ``co2_percent``. Default: 100 %: CO2 and nothing else.
    air_abs_kpa, air_abs_bar, air_abs_psi, air_abs_pa : float or array, optional
        Partial pressure of air, or of nitrogen, that stays in the headspace: that of the air outside where it
        was not purged at all. From 0 to 3000 in ``air_abs_kpa``. Default: 0: purged, or driven out.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    KegTemperature
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.keg_temperature(volumes=2.5, gauge_psi=12, altitude_m=0).temperature_c
    4.21827556065557
    """
@overload
def keg_temperature(**given: Unpack[_KegTemperatureInputs[Numbers]]) -> KegTemperature[NDArray[np.float64]]: ...
@overload
def keg_temperature(**given: Unpack[_KegTemperatureInputs[Container]]) -> KegTemperature[Any]: ...

class WarmedKegExpected(Part[_T]):
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""
    @property
    def abs_kpa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, kPa."""
    @property
    def abs_bar(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, bar."""
    @property
    def abs_psi(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, psi."""
    @property
    def abs_pa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, Pa."""
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class WarmedKegWorst(Part[_T]):
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""
    @property
    def abs_kpa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, kPa."""
    @property
    def abs_bar(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, bar."""
    @property
    def abs_psi(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, psi."""
    @property
    def abs_pa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, Pa."""

class WarmedKeg(Result[_T]):
    """Pressure in a keg, or a growler, that was sealed in equilibrium at its filling temperature with so much CO2 dissolved, and stands warmer or colder: expected and worst, and the CO2 then dissolved."""

    @property
    def expected(self) -> WarmedKegExpected[_T]: ...
    @property
    def worst(self) -> WarmedKegWorst[_T]: ...

class _WarmedKegInputs(TypedDict, Generic[_N], total=False):
    co2_g_per_l: _N | None
    volumes: _N | None
    filling_c: _N | None
    filling_f: _N | None
    filling_k: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    headspace_percent: _N | None
    air_abs_kpa: _N | None
    air_abs_bar: _N | None
    air_abs_psi: _N | None
    air_abs_pa: _N | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    fermentable_g_per_l: _N | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    yield_percent: float | None
    solubility_multiplier: float | None
    yield_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def warmed_keg(**given: Unpack[_WarmedKegInputs[float]]) -> WarmedKeg[float]:
    """Pressure in a keg, or a growler, that was sealed in equilibrium at its filling temperature with so much CO2 dissolved, and stands warmer or colder: expected and worst, and the CO2 then dissolved.

    Parameters
    ----------
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    filling_c, filling_f, filling_k : float or array, optional
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Required.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    headspace_percent : float or array, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the liquid, and noted.
    air_abs_kpa, air_abs_bar, air_abs_psi, air_abs_pa : float or array, optional
        Partial pressure of air, or of nitrogen, that stays in the headspace: that of the air outside where it
        was not purged at all. From 0 to 3000 in ``air_abs_kpa``. Default: 0: purged, or driven out.
    keg_rating_gauge_kpa, keg_rating_gauge_bar, keg_rating_gauge_psi, keg_rating_gauge_pa : float, optional
        Pressure above the air outside for which the keg is rated: the least of its marking and its relief
        valve. From 0 to 3000 in ``keg_rating_gauge_kpa``. Default: no rating is known, and a caution says so.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    fermentable_g_per_l : float or array, optional
        What yeast in the package can still turn into CO2: it makes pressure. From 0 to 400 in
        ``fermentable_g_per_l``. Default: 0 for beer and water, and noted; needed for other drinks with living
        yeast.
    yeast : {"live", "none"}, optional
        Whether living yeast goes into the package. Default: live.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: physical.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis: 100 by the handbook, 95 by the balance.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    WarmedKeg
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.warmed_keg(
    ...     volumes=2.5,
    ...     filling_c=3.3,
    ...     temperature_c=25,
    ...     headspace_percent=3.5,
    ...     altitude_m=0,
    ...     keg_rating_gauge_psi=130,
    ... ).expected.gauge_kpa
    256.35447315168705
    """
@overload
def warmed_keg(**given: Unpack[_WarmedKegInputs[Numbers]]) -> WarmedKeg[NDArray[np.float64]]: ...
@overload
def warmed_keg(**given: Unpack[_WarmedKegInputs[Container]]) -> WarmedKeg[Any]: ...

class SpundingRelief(Part[_T]):
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""
    @property
    def abs_kpa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, kPa."""
    @property
    def abs_bar(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, bar."""
    @property
    def abs_psi(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, psi."""
    @property
    def abs_pa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, Pa."""

class SpundingClosing(Part[_T]):
    @property
    def sg(self) -> _T:
        """Specific gravity 20/20 °C, SG."""
    @property
    def plato(self) -> _T:
        """Extract, grams in 100 g of solution, °P."""

class Spunding(Result[_T]):
    """Natural carbonation in the fermenter: the pressure at which its relief valve opens, and the gravity at which it is closed."""

    @property
    def relief(self) -> SpundingRelief[_T]: ...
    @property
    def closing(self) -> SpundingClosing[_T]: ...
    @property
    def drop_sg(self) -> _T:
        """By how much the specific gravity lies above the end of fermentation, SG."""
    @property
    def start_co2_g_per_l(self) -> _T:
        """CO2 in the drink at the start, g/L."""
    @property
    def start_volumes(self) -> _T:
        """CO2 in the drink at the start, vol."""

class _SpundingInputs(TypedDict, Generic[_N], total=False):
    co2_g_per_l: _N | None
    volumes: _N | None
    final_sg: _N | None
    final_plato: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    fermenter_headspace_percent: _N | None
    start_co2_g_per_l: _N | None
    start_volumes: _N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    residual_model: Literal["table", "equilibrium"] | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def spunding(**given: Unpack[_SpundingInputs[float]]) -> Spunding[float]:
    """Natural carbonation in the fermenter: the pressure at which its relief valve opens, and the gravity at which it is closed.

    Parameters
    ----------
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    final_sg : float or array, optional
        Specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test. From
        0.98 to 1.165 in ``final_sg``. Required: this, or another final.
    final_plato : float or array, optional
        Apparent extract at which fermentation will end, best by a forced-fermentation test. From -5.2 to 37
        in ``final_plato``. Required: this, or another final.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    fermenter_headspace_percent : float or array, optional
        Gas over the drink in a closed fermenter, in percent of the drink's volume. From 0 to 1000 in
        ``fermenter_headspace_percent``. Required.
    start_co2_g_per_l, start_volumes : float or array, optional
        CO2 in the drink at the start. From 0 to 30 in ``start_co2_g_per_l``. Default: what it keeps open to
        the air at that temperature, by the basis.
    extract_scale : {"asbc", "lincoln", "quick"}, optional
        Which relation turns specific gravity into extract. Default: asbc.
    keg_rating_gauge_kpa, keg_rating_gauge_bar, keg_rating_gauge_psi, keg_rating_gauge_pa : float, optional
        Pressure above the air outside for which the keg is rated: the least of its marking and its relief
        valve. From 0 to 3000 in ``keg_rating_gauge_kpa``. Default: no rating is known, and a caution says so.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    residual_model : {"table", "equilibrium"}, optional
        The model of residual CO2 (default: that of the basis). Default: that of the basis.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    residual_multiplier : float, optional
        Factor on the residual CO2. From 0 to 3 in ``residual_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    Spunding
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.spunding(
    ...     volumes=2.5,
    ...     temperature_c=12,
    ...     final_sg=1.01,
    ...     fermenter_headspace_percent=10,
    ...     altitude_m=0,
    ...     keg_rating_gauge_psi=60,
    ... ).relief.gauge_kpa
    135.72788023113327
    """
@overload
def spunding(**given: Unpack[_SpundingInputs[Numbers]]) -> Spunding[NDArray[np.float64]]: ...
@overload
def spunding(**given: Unpack[_SpundingInputs[Container]]) -> Spunding[Any]: ...

class ClosedFermentationExpected(Part[_T]):
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""
    @property
    def abs_kpa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, kPa."""
    @property
    def abs_bar(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, bar."""
    @property
    def abs_psi(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, psi."""
    @property
    def abs_pa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, Pa."""
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class ClosedFermentationWorst(Part[_T]):
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""
    @property
    def abs_kpa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, kPa."""
    @property
    def abs_bar(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, bar."""
    @property
    def abs_psi(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, psi."""
    @property
    def abs_pa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, Pa."""

class ClosedFermentation(Result[_T]):
    """Pressure that a fermenter comes to without a relief valve when it is closed before its fermentation ends: expected by Balling's yield, and worst by theory, and the CO2 then dissolved."""

    @property
    def expected(self) -> ClosedFermentationExpected[_T]: ...
    @property
    def worst(self) -> ClosedFermentationWorst[_T]: ...

class _ClosedFermentationInputs(TypedDict, Generic[_N], total=False):
    current_sg: _N | None
    current_plato: _N | None
    final_sg: _N | None
    final_plato: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    fermenter_headspace_percent: _N | None
    start_co2_g_per_l: _N | None
    start_volumes: _N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    residual_model: Literal["table", "equilibrium"] | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def closed_fermentation(**given: Unpack[_ClosedFermentationInputs[float]]) -> ClosedFermentation[float]:
    """Pressure that a fermenter comes to without a relief valve when it is closed before its fermentation ends: expected by Balling's yield, and worst by theory, and the CO2 then dissolved.

    Parameters
    ----------
    current_sg : float or array, optional
        Specific gravity 20/20 °C as it is now. From 0.98 to 1.165 in ``current_sg``. Required: this, or
        another current.
    current_plato : float or array, optional
        Apparent extract as it is now. From -5.2 to 37 in ``current_plato``. Required: this, or another
        current.
    final_sg : float or array, optional
        Specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test. From
        0.98 to 1.165 in ``final_sg``. Required: this, or another final.
    final_plato : float or array, optional
        Apparent extract at which fermentation will end, best by a forced-fermentation test. From -5.2 to 37
        in ``final_plato``. Required: this, or another final.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    fermenter_headspace_percent : float or array, optional
        Gas over the drink in a closed fermenter, in percent of the drink's volume. From 0 to 1000 in
        ``fermenter_headspace_percent``. Required.
    start_co2_g_per_l, start_volumes : float or array, optional
        CO2 in the drink at the start. From 0 to 30 in ``start_co2_g_per_l``. Default: what it keeps open to
        the air at that temperature, by the basis.
    extract_scale : {"asbc", "lincoln", "quick"}, optional
        Which relation turns specific gravity into extract. Default: asbc.
    keg_rating_gauge_kpa, keg_rating_gauge_bar, keg_rating_gauge_psi, keg_rating_gauge_pa : float, optional
        Pressure above the air outside for which the keg is rated: the least of its marking and its relief
        valve. From 0 to 3000 in ``keg_rating_gauge_kpa``. Default: no rating is known, and a caution says so.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    residual_model : {"table", "equilibrium"}, optional
        The model of residual CO2 (default: that of the basis). Default: that of the basis.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: physical.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    residual_multiplier : float, optional
        Factor on the residual CO2. From 0 to 3 in ``residual_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    ClosedFermentation
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.closed_fermentation(
    ...     current_sg=1.014,
    ...     final_sg=1.01,
    ...     temperature_c=18,
    ...     fermenter_headspace_percent=10,
    ...     altitude_m=0,
    ...     keg_rating_gauge_bar=2,
    ... ).expected.gauge_kpa
    210.95006617198285
    """
@overload
def closed_fermentation(**given: Unpack[_ClosedFermentationInputs[Numbers]]) -> ClosedFermentation[NDArray[np.float64]]: ...
@overload
def closed_fermentation(**given: Unpack[_ClosedFermentationInputs[Container]]) -> ClosedFermentation[Any]: ...

class StonePressureSurface(Part[_T]):
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""

class StonePressureHead(Part[_T]):
    @property
    def drop_kpa(self) -> _T:
        """Difference of pressure, kPa."""
    @property
    def drop_bar(self) -> _T:
        """Difference of pressure, bar."""
    @property
    def drop_psi(self) -> _T:
        """Difference of pressure, psi."""
    @property
    def drop_pa(self) -> _T:
        """Difference of pressure, Pa."""

class StonePressure(Result[_T]):
    """Regulator pressure at which a carbonation stone brings a drink to a carbonation. Only the surface pressure sets that; the head of drink and the wetting pressure of the stone come on top."""

    @property
    def surface(self) -> StonePressureSurface[_T]: ...
    @property
    def head(self) -> StonePressureHead[_T]: ...
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""

class _StonePressureInputs(TypedDict, Generic[_N], total=False):
    co2_g_per_l: _N | None
    volumes: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    depth_m: _N | None
    depth_ft: _N | None
    wetting_kpa: _N | None
    wetting_bar: _N | None
    wetting_psi: _N | None
    wetting_pa: _N | None
    margin_kpa: _N | None
    margin_bar: _N | None
    margin_psi: _N | None
    margin_pa: _N | None
    sg: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def stone_pressure(**given: Unpack[_StonePressureInputs[float]]) -> StonePressure[float]:
    """Regulator pressure at which a carbonation stone brings a drink to a carbonation. Only the surface pressure sets that; the head of drink and the wetting pressure of the stone come on top.

    Parameters
    ----------
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    depth_m, depth_ft : float or array, optional
        Height of drink above the place that is meant. From 0 to 30 in ``depth_m``. Required.
    wetting_kpa, wetting_bar, wetting_psi, wetting_pa : float or array, optional
        Pressure at which gas first bubbles from the wet stone. From 0 to 1000 in ``wetting_kpa``. Required.
    margin_kpa, margin_bar, margin_psi, margin_pa : float or array, optional
        Pressure to spare, so that gas flows. From 0 to 1000 in ``margin_kpa``. Default: 0.
    sg : float or array, optional
        Specific gravity 20/20 °C. From 0.98 to 1.165 in ``sg``. Default: that of the composition.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    StonePressure
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.stone_pressure(
    ...     volumes=2.5,
    ...     temperature_f=38,
    ...     depth_m=0.5,
    ...     wetting_psi=4,
    ...     margin_psi=1,
    ...     altitude_m=0,
    ... ).gauge_kpa
    116.7277025856906
    """
@overload
def stone_pressure(**given: Unpack[_StonePressureInputs[Numbers]]) -> StonePressure[NDArray[np.float64]]: ...
@overload
def stone_pressure(**given: Unpack[_StonePressureInputs[Container]]) -> StonePressure[Any]: ...

class ResidualCo2(Result[_T]):
    """CO2 left in a drink after fermentation: by its warmest temperature since, open to the air or under pressure, and what a cold crash adds."""

    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class _ResidualCo2Inputs(TypedDict, Generic[_N], total=False):
    warmest_c: _N | None
    warmest_f: _N | None
    warmest_k: _N | None
    fermenter_gauge_kpa: _N | None
    fermenter_gauge_bar: _N | None
    fermenter_gauge_psi: _N | None
    fermenter_gauge_pa: _N | None
    cold_crash: Literal["open", "closed", "co2_supplied"] | None
    crash_c: _N | None
    crash_f: _N | None
    crash_k: _N | None
    fermenter_headspace_percent: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    residual_model: Literal["table", "equilibrium"] | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def residual_co2(**given: Unpack[_ResidualCo2Inputs[float]]) -> ResidualCo2[float]:
    """CO2 left in a drink after fermentation: by its warmest temperature since, open to the air or under pressure, and what a cold crash adds.

    Parameters
    ----------
    warmest_c, warmest_f, warmest_k : float or array, optional
        Highest temperature of the drink since active fermentation. From 0 to 45 in ``warmest_c``. Required.
    fermenter_gauge_kpa, fermenter_gauge_bar, fermenter_gauge_psi, fermenter_gauge_pa : float or array,
        optional
        Pressure above the air outside that the fermenter held at the warmest temperature. From 0 to 500 in
        ``fermenter_gauge_kpa``. Default: 0: open, or under an airlock.
    cold_crash : {"open", "closed", "co2_supplied"}, optional
        How the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own
        gas over it), co2_supplied (CO2 let in, at the fermenter's pressure). Default: open.
    crash_c, crash_f, crash_k : float or array, optional
        Temperature to which the drink was chilled before packaging. From -5 to 60 in ``crash_c``. Default:
        needed with a cold crash that is closed or has CO2 supplied.
    fermenter_headspace_percent : float or array, optional
        Gas over the drink in a closed fermenter, in percent of the drink's volume. From 0 to 1000 in
        ``fermenter_headspace_percent``. Default: needed with a closed cold crash.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    residual_model : {"table", "equilibrium"}, optional
        The model of residual CO2 (default: that of the basis). Default: that of the basis.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    residual_multiplier : float, optional
        Factor on the residual CO2. From 0 to 3 in ``residual_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    ResidualCo2
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.residual_co2(warmest_c=20, altitude_m=0).co2_g_per_l
    1.7029879588734678
    """
@overload
def residual_co2(**given: Unpack[_ResidualCo2Inputs[Numbers]]) -> ResidualCo2[NDArray[np.float64]]: ...
@overload
def residual_co2(**given: Unpack[_ResidualCo2Inputs[Container]]) -> ResidualCo2[Any]: ...

class PrimingSugar(Result[_T]):
    """Priming sugar that gives a drink its carbonation."""

    @property
    def mass_g(self) -> _T:
        """Mass of sugar, or of what is added, as sold."""
    @property
    def mass_kg(self) -> _T:
        """Mass of sugar, or of what is added, as sold, kg."""
    @property
    def mass_oz(self) -> _T:
        """Mass of sugar, or of what is added, as sold, oz."""
    @property
    def mass_lb(self) -> _T:
        """Mass of sugar, or of what is added, as sold, lb."""
    @property
    def dose_g_per_l(self) -> _T:
        """Sugar or other addition, as sold, per litre of drink, g/L."""

class _PrimingSugarInputs(TypedDict, Generic[_N], total=False):
    co2_g_per_l: _N | None
    volumes: _N | None
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    warmest_c: _N | None
    warmest_f: _N | None
    warmest_k: _N | None
    residual_co2_g_per_l: _N | None
    residual_volumes: _N | None
    fermenter_gauge_kpa: _N | None
    fermenter_gauge_bar: _N | None
    fermenter_gauge_psi: _N | None
    fermenter_gauge_pa: _N | None
    cold_crash: Literal["open", "closed", "co2_supplied"] | None
    crash_c: _N | None
    crash_f: _N | None
    crash_k: _N | None
    fermenter_headspace_percent: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None
    sugar_water_percent: float | None
    sugar_sg: float | None
    sugar_fermentable_percent: float | None
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None
    syrup_water_l: _N | None
    syrup_water_ml: _N | None
    syrup_water_us_gal: _N | None
    syrup_water_imp_gal: _N | None
    syrup_water_us_fl_oz: _N | None
    count_syrup: bool | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    fermentable_g_per_l: _N | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    residual_model: Literal["table", "equilibrium"] | None
    yield_percent: float | None
    count_headspace: bool | None
    headspace_percent: _N | None
    filling_c: _N | None
    filling_f: _N | None
    filling_k: _N | None
    room_c: _N | None
    room_f: _N | None
    room_k: _N | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    yield_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def priming_sugar(**given: Unpack[_PrimingSugarInputs[float]]) -> PrimingSugar[float]:
    """Priming sugar that gives a drink its carbonation.

    Parameters
    ----------
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required.
    warmest_c, warmest_f, warmest_k : float or array, optional
        Highest temperature of the drink since active fermentation. From 0 to 45 in ``warmest_c``. Default:
        needed, unless the residual CO2 was measured.
    residual_co2_g_per_l, residual_volumes : float or array, optional
        CO2 in the drink before it is packaged, measured: it overrides what the warmest temperature says. From
        0 to 30 in ``residual_co2_g_per_l``. Default: it follows from the warmest temperature.
    fermenter_gauge_kpa, fermenter_gauge_bar, fermenter_gauge_psi, fermenter_gauge_pa : float or array,
        optional
        Pressure above the air outside that the fermenter held at the warmest temperature. From 0 to 500 in
        ``fermenter_gauge_kpa``. Default: 0: open, or under an airlock.
    cold_crash : {"open", "closed", "co2_supplied"}, optional
        How the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own
        gas over it), co2_supplied (CO2 let in, at the fermenter's pressure). Default: open.
    crash_c, crash_f, crash_k : float or array, optional
        Temperature to which the drink was chilled before packaging. From -5 to 60 in ``crash_c``. Default:
        needed with a cold crash that is closed or has CO2 supplied.
    fermenter_headspace_percent : float or array, optional
        Gas over the drink in a closed fermenter, in percent of the drink's volume. From 0 to 1000 in
        ``fermenter_headspace_percent``. Default: needed with a closed cold crash.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Default: needed, unless ambient is given or the residual CO2 was measured.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Default: needed, unless altitude is given or the residual CO2 was measured.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    sugar : {"dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey",
        "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar",
        "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses",
        "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate",
        "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63",
        "custom"}, optional
        The priming sugar. Default: sucrose.
    sugar_water_percent : float, optional
        Water in a sugar of one's own, percent of its mass. From 0 to 100 in ``sugar_water_percent``. Default:
        only with a custom sugar.
    sugar_sg : float, optional
        Specific gravity 20/20 °C of a syrup of one's own, from which its water follows. From 1 to 1.45 in
        ``sugar_sg``. Default: only with a custom sugar.
    sugar_fermentable_percent : float, optional
        What yeast ferments of the dry matter of a sugar of one's own, percent. From 0 to 100 in
        ``sugar_fermentable_percent``. Default: only with a custom sugar.
    sugar_kind : {"hexose", "disaccharide", "trisaccharide"}, optional
        What the fermentable part of a sugar of one's own is. Default: only with a custom sugar.
    syrup_water_l, syrup_water_ml, syrup_water_us_gal, syrup_water_imp_gal, syrup_water_us_fl_oz : float or
        array, optional
        Water in which the priming sugar is dissolved. From 0 to 1000 in ``syrup_water_l``. Default: the sugar
        goes in dry, and its room is left out; counts by the physical basis only.
    count_syrup : bool, optional
        Whether the volume of the syrup, if one is made, counts. Default: that of the basis.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    fermentable_g_per_l : float or array, optional
        What yeast in the package can still turn into CO2: it makes pressure. From 0 to 400 in
        ``fermentable_g_per_l``. Default: 0 for beer and water, and noted; needed for other drinks with living
        yeast.
    yeast : {"live", "none"}, optional
        Whether living yeast goes into the package. Default: live.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    residual_model : {"table", "equilibrium"}, optional
        The model of residual CO2 (default: that of the basis). Default: that of the basis.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis: 100 by the handbook, 95 by the balance.
    count_headspace : bool, optional
        Whether the gas over the drink takes its share of the CO2. Default: that of the basis.
    headspace_percent : float or array, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the liquid; counts by the physical basis only.
    filling_c, filling_f, filling_k : float or array, optional
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Default: crash,
        or else warmest; counts by the physical basis only.
    room_c, room_f, room_k : float or array, optional
        Temperature of the room: that in which bottles condition, or into which CO2 escapes. From -5 to 60 in
        ``room_c``. Default: 20 °C; counts by the physical basis only.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    residual_multiplier : float, optional
        Factor on the residual CO2. From 0 to 3 in ``residual_multiplier``. Default: 1.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    PrimingSugar
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.priming_sugar(
    ...     volumes=2.5,
    ...     warmest_f=68,
    ...     packaged_us_gal=5,
    ...     altitude_m=0,
    ...     sugar="sucrose",
    ... ).mass_g
    119.2044278929602
    """
@overload
def priming_sugar(**given: Unpack[_PrimingSugarInputs[Numbers]]) -> PrimingSugar[NDArray[np.float64]]: ...
@overload
def priming_sugar(**given: Unpack[_PrimingSugarInputs[Container]]) -> PrimingSugar[Any]: ...

class PrimedCarbonationAdded(Part[_T]):
    @property
    def abv_percent(self) -> _T:
        """Alcohol by volume, %."""

class PrimedCarbonation(Result[_T]):
    """Carbonation and alcohol of a drink to which a mass of priming sugar was added: the inverse of priming_sugar."""

    @property
    def added(self) -> PrimedCarbonationAdded[_T]: ...
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""
    @property
    def abv_percent(self) -> _T:
        """Alcohol by volume, %."""

class _PrimedCarbonationInputs(TypedDict, Generic[_N], total=False):
    mass_g: _N | None
    mass_kg: _N | None
    mass_oz: _N | None
    mass_lb: _N | None
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    warmest_c: _N | None
    warmest_f: _N | None
    warmest_k: _N | None
    residual_co2_g_per_l: _N | None
    residual_volumes: _N | None
    fermenter_gauge_kpa: _N | None
    fermenter_gauge_bar: _N | None
    fermenter_gauge_psi: _N | None
    fermenter_gauge_pa: _N | None
    cold_crash: Literal["open", "closed", "co2_supplied"] | None
    crash_c: _N | None
    crash_f: _N | None
    crash_k: _N | None
    fermenter_headspace_percent: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None
    sugar_water_percent: float | None
    sugar_sg: float | None
    sugar_fermentable_percent: float | None
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None
    syrup_water_l: _N | None
    syrup_water_ml: _N | None
    syrup_water_us_gal: _N | None
    syrup_water_imp_gal: _N | None
    syrup_water_us_fl_oz: _N | None
    count_syrup: bool | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    fermentable_g_per_l: _N | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    residual_model: Literal["table", "equilibrium"] | None
    yield_percent: float | None
    count_headspace: bool | None
    headspace_percent: _N | None
    filling_c: _N | None
    filling_f: _N | None
    filling_k: _N | None
    room_c: _N | None
    room_f: _N | None
    room_k: _N | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    yield_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def primed_carbonation(**given: Unpack[_PrimedCarbonationInputs[float]]) -> PrimedCarbonation[float]:
    """Carbonation and alcohol of a drink to which a mass of priming sugar was added: the inverse of priming_sugar.

    Parameters
    ----------
    mass_g, mass_kg, mass_oz, mass_lb : float or array, optional
        Mass of sugar, or of what is added, as sold. From 0 to 1e+09 in ``mass_g``. Required.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required.
    warmest_c, warmest_f, warmest_k : float or array, optional
        Highest temperature of the drink since active fermentation. From 0 to 45 in ``warmest_c``. Default:
        needed, unless the residual CO2 was measured.
    residual_co2_g_per_l, residual_volumes : float or array, optional
        CO2 in the drink before it is packaged, measured: it overrides what the warmest temperature says. From
        0 to 30 in ``residual_co2_g_per_l``. Default: it follows from the warmest temperature.
    fermenter_gauge_kpa, fermenter_gauge_bar, fermenter_gauge_psi, fermenter_gauge_pa : float or array,
        optional
        Pressure above the air outside that the fermenter held at the warmest temperature. From 0 to 500 in
        ``fermenter_gauge_kpa``. Default: 0: open, or under an airlock.
    cold_crash : {"open", "closed", "co2_supplied"}, optional
        How the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own
        gas over it), co2_supplied (CO2 let in, at the fermenter's pressure). Default: open.
    crash_c, crash_f, crash_k : float or array, optional
        Temperature to which the drink was chilled before packaging. From -5 to 60 in ``crash_c``. Default:
        needed with a cold crash that is closed or has CO2 supplied.
    fermenter_headspace_percent : float or array, optional
        Gas over the drink in a closed fermenter, in percent of the drink's volume. From 0 to 1000 in
        ``fermenter_headspace_percent``. Default: needed with a closed cold crash.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Default: needed, unless ambient is given or the residual CO2 was measured.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Default: needed, unless altitude is given or the residual CO2 was measured.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    sugar : {"dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey",
        "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar",
        "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses",
        "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate",
        "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63",
        "custom"}, optional
        The priming sugar. Default: sucrose.
    sugar_water_percent : float, optional
        Water in a sugar of one's own, percent of its mass. From 0 to 100 in ``sugar_water_percent``. Default:
        only with a custom sugar.
    sugar_sg : float, optional
        Specific gravity 20/20 °C of a syrup of one's own, from which its water follows. From 1 to 1.45 in
        ``sugar_sg``. Default: only with a custom sugar.
    sugar_fermentable_percent : float, optional
        What yeast ferments of the dry matter of a sugar of one's own, percent. From 0 to 100 in
        ``sugar_fermentable_percent``. Default: only with a custom sugar.
    sugar_kind : {"hexose", "disaccharide", "trisaccharide"}, optional
        What the fermentable part of a sugar of one's own is. Default: only with a custom sugar.
    syrup_water_l, syrup_water_ml, syrup_water_us_gal, syrup_water_imp_gal, syrup_water_us_fl_oz : float or
        array, optional
        Water in which the priming sugar is dissolved. From 0 to 1000 in ``syrup_water_l``. Default: the sugar
        goes in dry, and its room is left out; counts by the physical basis only.
    count_syrup : bool, optional
        Whether the volume of the syrup, if one is made, counts. Default: that of the basis.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    fermentable_g_per_l : float or array, optional
        What yeast in the package can still turn into CO2: it makes pressure. From 0 to 400 in
        ``fermentable_g_per_l``. Default: 0 for beer and water, and noted; needed for other drinks with living
        yeast.
    yeast : {"live", "none"}, optional
        Whether living yeast goes into the package. Default: live.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    residual_model : {"table", "equilibrium"}, optional
        The model of residual CO2 (default: that of the basis). Default: that of the basis.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis: 100 by the handbook, 95 by the balance.
    count_headspace : bool, optional
        Whether the gas over the drink takes its share of the CO2. Default: that of the basis.
    headspace_percent : float or array, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the liquid; counts by the physical basis only.
    filling_c, filling_f, filling_k : float or array, optional
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Default: crash,
        or else warmest; counts by the physical basis only.
    room_c, room_f, room_k : float or array, optional
        Temperature of the room: that in which bottles condition, or into which CO2 escapes. From -5 to 60 in
        ``room_c``. Default: 20 °C; counts by the physical basis only.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    residual_multiplier : float, optional
        Factor on the residual CO2. From 0 to 3 in ``residual_multiplier``. Default: 1.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    PrimedCarbonation
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.primed_carbonation(
    ...     mass_g=120,
    ...     warmest_f=68,
    ...     packaged_us_gal=5,
    ...     altitude_m=0,
    ...     sugar="sucrose",
    ... ).co2_g_per_l
    4.963617394926277
    """
@overload
def primed_carbonation(**given: Unpack[_PrimedCarbonationInputs[Numbers]]) -> PrimedCarbonation[NDArray[np.float64]]: ...
@overload
def primed_carbonation(**given: Unpack[_PrimedCarbonationInputs[Container]]) -> PrimedCarbonation[Any]: ...

class PrimingWort(Result[_T]):
    """Unfermented wort (gyle, Speise) or fermenting beer (kräusen) that gives a drink its carbonation: current gravity none for the first."""

    @property
    def wort_l(self) -> _T:
        """Wort or fermenting beer that primes the drink, L."""
    @property
    def wort_ml(self) -> _T:
        """Wort or fermenting beer that primes the drink, mL."""
    @property
    def wort_us_gal(self) -> _T:
        """Wort or fermenting beer that primes the drink, US gal."""
    @property
    def wort_imp_gal(self) -> _T:
        """Wort or fermenting beer that primes the drink, imp gal."""
    @property
    def wort_us_fl_oz(self) -> _T:
        """Wort or fermenting beer that primes the drink, US fl oz."""
    @property
    def wort_percent(self) -> _T:
        """Wort that primes the drink, in percent of the drink's volume, %."""

class _PrimingWortInputs(TypedDict, Generic[_N], total=False):
    co2_g_per_l: _N | None
    volumes: _N | None
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    wort_original_sg: _N | None
    wort_original_plato: _N | None
    wort_current_sg: _N | None
    wort_current_plato: _N | None
    limit_attenuation_percent: _N | None
    wort_co2_g_per_l: _N | None
    wort_volumes: _N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    warmest_c: _N | None
    warmest_f: _N | None
    warmest_k: _N | None
    residual_co2_g_per_l: _N | None
    residual_volumes: _N | None
    fermenter_gauge_kpa: _N | None
    fermenter_gauge_bar: _N | None
    fermenter_gauge_psi: _N | None
    fermenter_gauge_pa: _N | None
    cold_crash: Literal["open", "closed", "co2_supplied"] | None
    crash_c: _N | None
    crash_f: _N | None
    crash_k: _N | None
    fermenter_headspace_percent: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    fermentable_g_per_l: _N | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    residual_model: Literal["table", "equilibrium"] | None
    yield_percent: float | None
    count_headspace: bool | None
    headspace_percent: _N | None
    filling_c: _N | None
    filling_f: _N | None
    filling_k: _N | None
    room_c: _N | None
    room_f: _N | None
    room_k: _N | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    yield_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def priming_wort(**given: Unpack[_PrimingWortInputs[float]]) -> PrimingWort[float]:
    """Unfermented wort (gyle, Speise) or fermenting beer (kräusen) that gives a drink its carbonation: current gravity none for the first.

    Parameters
    ----------
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required.
    wort_original_sg : float or array, optional
        Specific gravity 20/20 °C of the priming wort before fermentation. From 1.001 to 1.165 in
        ``wort_original_sg``. Required: this, or another wort.
    wort_original_plato : float or array, optional
        Extract of the priming wort before fermentation. From 0.2 to 37 in ``wort_original_plato``. Required:
        this, or another wort.
    wort_current_sg : float or array, optional
        Specific gravity 20/20 °C of the priming wort when it is added. From 0.98 to 1.165 in
        ``wort_current_sg``. Default: fresh wort.
    wort_current_plato : float or array, optional
        Apparent extract of the priming wort when it is added. From -5.2 to 37 in ``wort_current_plato``.
        Default: fresh wort.
    limit_attenuation_percent : float or array, optional
        Real degree of fermentation at which the yeast ends: the limit attenuation. From 1 to 100 in
        ``limit_attenuation_percent``. Required.
    wort_co2_g_per_l, wort_volumes : float or array, optional
        CO2 that the priming wort holds: none in fresh wort, about saturation in fermenting beer. From 0 to 30
        in ``wort_co2_g_per_l``. Default: none in fresh wort, what the drink keeps in fermenting one.
    extract_scale : {"asbc", "lincoln", "quick"}, optional
        Which relation turns specific gravity into extract. Default: asbc.
    warmest_c, warmest_f, warmest_k : float or array, optional
        Highest temperature of the drink since active fermentation. From 0 to 45 in ``warmest_c``. Default:
        needed, unless the residual CO2 was measured.
    residual_co2_g_per_l, residual_volumes : float or array, optional
        CO2 in the drink before it is packaged, measured: it overrides what the warmest temperature says. From
        0 to 30 in ``residual_co2_g_per_l``. Default: it follows from the warmest temperature.
    fermenter_gauge_kpa, fermenter_gauge_bar, fermenter_gauge_psi, fermenter_gauge_pa : float or array,
        optional
        Pressure above the air outside that the fermenter held at the warmest temperature. From 0 to 500 in
        ``fermenter_gauge_kpa``. Default: 0: open, or under an airlock.
    cold_crash : {"open", "closed", "co2_supplied"}, optional
        How the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own
        gas over it), co2_supplied (CO2 let in, at the fermenter's pressure). Default: open.
    crash_c, crash_f, crash_k : float or array, optional
        Temperature to which the drink was chilled before packaging. From -5 to 60 in ``crash_c``. Default:
        needed with a cold crash that is closed or has CO2 supplied.
    fermenter_headspace_percent : float or array, optional
        Gas over the drink in a closed fermenter, in percent of the drink's volume. From 0 to 1000 in
        ``fermenter_headspace_percent``. Default: needed with a closed cold crash.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Default: needed, unless ambient is given or the residual CO2 was measured.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Default: needed, unless altitude is given or the residual CO2 was measured.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    fermentable_g_per_l : float or array, optional
        What yeast in the package can still turn into CO2: it makes pressure. From 0 to 400 in
        ``fermentable_g_per_l``. Default: 0 for beer and water, and noted; needed for other drinks with living
        yeast.
    yeast : {"live", "none"}, optional
        Whether living yeast goes into the package. Default: live.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    residual_model : {"table", "equilibrium"}, optional
        The model of residual CO2 (default: that of the basis). Default: that of the basis.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis: 100 by the handbook, 95 by the balance.
    count_headspace : bool, optional
        Whether the gas over the drink takes its share of the CO2. Default: that of the basis.
    headspace_percent : float or array, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the liquid; counts by the physical basis only.
    filling_c, filling_f, filling_k : float or array, optional
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Default: crash,
        or else warmest; counts by the physical basis only.
    room_c, room_f, room_k : float or array, optional
        Temperature of the room: that in which bottles condition, or into which CO2 escapes. From -5 to 60 in
        ``room_c``. Default: 20 °C; counts by the physical basis only.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    residual_multiplier : float, optional
        Factor on the residual CO2. From 0 to 3 in ``residual_multiplier``. Default: 1.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    PrimingWort
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.priming_wort(
    ...     co2_g_per_l=5,
    ...     residual_co2_g_per_l=1.7,
    ...     packaged_l=20,
    ...     wort_original_plato=12,
    ...     limit_attenuation_percent=65,
    ...     altitude_m=0,
    ... ).wort_l
    1.78480760330025
    """
@overload
def priming_wort(**given: Unpack[_PrimingWortInputs[Numbers]]) -> PrimingWort[NDArray[np.float64]]: ...
@overload
def priming_wort(**given: Unpack[_PrimingWortInputs[Container]]) -> PrimingWort[Any]: ...

class PrimingSyrupLeast(Part[_T]):
    @property
    def syrup_water_l(self) -> _T:
        """Water in which the priming sugar is dissolved, L."""
    @property
    def syrup_water_ml(self) -> _T:
        """Water in which the priming sugar is dissolved, mL."""
    @property
    def syrup_water_us_gal(self) -> _T:
        """Water in which the priming sugar is dissolved, US gal."""
    @property
    def syrup_water_imp_gal(self) -> _T:
        """Water in which the priming sugar is dissolved, imp gal."""
    @property
    def syrup_water_us_fl_oz(self) -> _T:
        """Water in which the priming sugar is dissolved, US fl oz."""

class PrimingSyrup(Result[_T]):
    """Syrup of a mass of priming sugar: its volume, the least water that dissolves it, its strength."""

    @property
    def least(self) -> PrimingSyrupLeast[_T]: ...
    @property
    def syrup_l(self) -> _T:
        """Volume of the syrup when it has cooled, L."""
    @property
    def syrup_ml(self) -> _T:
        """Volume of the syrup when it has cooled, mL."""
    @property
    def syrup_us_gal(self) -> _T:
        """Volume of the syrup when it has cooled, US gal."""
    @property
    def syrup_imp_gal(self) -> _T:
        """Volume of the syrup when it has cooled, imp gal."""
    @property
    def syrup_us_fl_oz(self) -> _T:
        """Volume of the syrup when it has cooled, US fl oz."""
    @property
    def syrup_percent(self) -> _T:
        """Dissolved dry matter in the syrup, percent of its mass, %."""

class _PrimingSyrupInputs(TypedDict, Generic[_N], total=False):
    mass_g: _N | None
    mass_kg: _N | None
    mass_oz: _N | None
    mass_lb: _N | None
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None
    sugar_water_percent: float | None
    sugar_sg: float | None
    sugar_fermentable_percent: float | None
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None
    syrup_water_l: _N | None
    syrup_water_ml: _N | None
    syrup_water_us_gal: _N | None
    syrup_water_imp_gal: _N | None
    syrup_water_us_fl_oz: _N | None
    dissolving_c: _N | None
    dissolving_f: _N | None
    dissolving_k: _N | None
    errors: Literal["raise", "nan"]

@overload
def priming_syrup(**given: Unpack[_PrimingSyrupInputs[float]]) -> PrimingSyrup[float]:
    """Syrup of a mass of priming sugar: its volume, the least water that dissolves it, its strength.

    Parameters
    ----------
    mass_g, mass_kg, mass_oz, mass_lb : float or array, optional
        Mass of sugar, or of what is added, as sold. From 0 to 1e+09 in ``mass_g``. Required.
    sugar : {"dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey",
        "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar",
        "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses",
        "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate",
        "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63",
        "custom"}, optional
        The priming sugar. Default: sucrose.
    sugar_water_percent : float, optional
        Water in a sugar of one's own, percent of its mass. From 0 to 100 in ``sugar_water_percent``. Default:
        only with a custom sugar.
    sugar_sg : float, optional
        Specific gravity 20/20 °C of a syrup of one's own, from which its water follows. From 1 to 1.45 in
        ``sugar_sg``. Default: only with a custom sugar.
    sugar_fermentable_percent : float, optional
        What yeast ferments of the dry matter of a sugar of one's own, percent. From 0 to 100 in
        ``sugar_fermentable_percent``. Default: only with a custom sugar.
    sugar_kind : {"hexose", "disaccharide", "trisaccharide"}, optional
        What the fermentable part of a sugar of one's own is. Default: only with a custom sugar.
    syrup_water_l, syrup_water_ml, syrup_water_us_gal, syrup_water_imp_gal, syrup_water_us_fl_oz : float or
        array, optional
        Water in which the priming sugar is dissolved. From 0 to 1000 in ``syrup_water_l``. Default: three
        times the mass of the sugar; none for a liquid.
    dissolving_c, dissolving_f, dissolving_k : float or array, optional
        Temperature at which the sugar has to stay dissolved. From 0 to 100 in ``dissolving_c``. Default: 20
        °C: it stays dissolved when it has cooled.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    PrimingSyrup
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.priming_syrup(mass_g=116, syrup_water_ml=350).syrup_l
    0.42192
    """
@overload
def priming_syrup(**given: Unpack[_PrimingSyrupInputs[Numbers]]) -> PrimingSyrup[NDArray[np.float64]]: ...
@overload
def priming_syrup(**given: Unpack[_PrimingSyrupInputs[Container]]) -> PrimingSyrup[Any]: ...

class PackagePressureExpected(Part[_T]):
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""
    @property
    def abs_kpa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, kPa."""
    @property
    def abs_bar(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, bar."""
    @property
    def abs_psi(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, psi."""
    @property
    def abs_pa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, Pa."""
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class PackagePressureWorst(Part[_T]):
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""
    @property
    def abs_kpa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, kPa."""
    @property
    def abs_bar(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, bar."""
    @property
    def abs_psi(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, psi."""
    @property
    def abs_pa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, Pa."""

class PackagePressure(Result[_T]):
    """Pressure in a sealed package, expected and worst, of CO2 stated for liquid and headspace together; the expected volumes are what stays dissolved, and the worst case adds 8 % to what is stated, for nobody can say which part of it is sure."""

    @property
    def expected(self) -> PackagePressureExpected[_T]: ...
    @property
    def worst(self) -> PackagePressureWorst[_T]: ...

class _PackagePressureInputs(TypedDict, Generic[_N], total=False):
    co2_g_per_l: _N | None
    volumes: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    headspace_percent: _N | None
    filling_c: _N | None
    filling_f: _N | None
    filling_k: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    fermentable_g_per_l: _N | None
    yeast: Literal["live", "none"] | None
    bottle_class: Literal["light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne", "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"] | None
    rating_gauge_kpa: float | None
    rating_gauge_bar: float | None
    rating_gauge_psi: float | None
    rating_gauge_pa: float | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    yield_percent: float | None
    solubility_multiplier: float | None
    yield_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def package_pressure(**given: Unpack[_PackagePressureInputs[float]]) -> PackagePressure[float]:
    """Pressure in a sealed package, expected and worst, of CO2 stated for liquid and headspace together; the expected volumes are what stays dissolved, and the worst case adds 8 % to what is stated, for nobody can say which part of it is sure.

    Parameters
    ----------
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    headspace_percent : float or array, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the liquid, and noted.
    filling_c, filling_f, filling_k : float or array, optional
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Default: 20 °C.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    fermentable_g_per_l : float or array, optional
        What yeast in the package can still turn into CO2: it makes pressure. From 0 to 400 in
        ``fermentable_g_per_l``. Default: 0 for beer and water, and noted; needed for other drinks with living
        yeast.
    yeast : {"live", "none"}, optional
        Whether living yeast goes into the package. Default: live.
    bottle_class : {"light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne",
        "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"}, optional
        Class of the bottle: see the table bottle_classes. Default: light one-way and heavier reusable bottles
        are both looked at.
    rating_gauge_kpa, rating_gauge_bar, rating_gauge_psi, rating_gauge_pa : float, optional
        Pressure above the air outside for which the maker rates the bottle. From 0 to 3000 in
        ``rating_gauge_kpa``. Default: no rating is known.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: physical.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis: 100 by the handbook, 95 by the balance.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    PackagePressure
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.package_pressure(
    ...     volumes=2.4,
    ...     temperature_c=30,
    ...     headspace_percent=4,
    ...     altitude_m=240,
    ... ).expected.gauge_kpa
    279.4888057489013
    """
@overload
def package_pressure(**given: Unpack[_PackagePressureInputs[Numbers]]) -> PackagePressure[NDArray[np.float64]]: ...
@overload
def package_pressure(**given: Unpack[_PackagePressureInputs[Container]]) -> PackagePressure[Any]: ...

class PackageCarbonationTotal(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class PackageCarbonationDissolved(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class PackageCarbonationLeastTotal(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class PackageCarbonationLeastDissolved(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class PackageCarbonation(Result[_T]):
    """CO2 in a sealed package from the pressure that a gauge on it shows, without air and with all of it."""

    @property
    def total(self) -> PackageCarbonationTotal[_T]: ...
    @property
    def dissolved(self) -> PackageCarbonationDissolved[_T]: ...
    @property
    def least_total(self) -> PackageCarbonationLeastTotal[_T]: ...
    @property
    def least_dissolved(self) -> PackageCarbonationLeastDissolved[_T]: ...

class _PackageCarbonationInputs(TypedDict, Generic[_N], total=False):
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    headspace_percent: _N | None
    filling_c: _N | None
    filling_f: _N | None
    filling_k: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def package_carbonation(**given: Unpack[_PackageCarbonationInputs[float]]) -> PackageCarbonation[float]:
    """CO2 in a sealed package from the pressure that a gauge on it shows, without air and with all of it.

    Parameters
    ----------
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    headspace_percent : float or array, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the liquid, and noted.
    filling_c, filling_f, filling_k : float or array, optional
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Default: 20 °C.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: physical.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    PackageCarbonation
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.package_carbonation(
    ...     gauge_bar=1.8,
    ...     temperature_c=20,
    ...     headspace_percent=4,
    ...     altitude_m=240,
    ... ).total.co2_g_per_l
    4.564874213766723
    """
@overload
def package_carbonation(**given: Unpack[_PackageCarbonationInputs[Numbers]]) -> PackageCarbonation[NDArray[np.float64]]: ...
@overload
def package_carbonation(**given: Unpack[_PackageCarbonationInputs[Container]]) -> PackageCarbonation[Any]: ...

class ConditioningExpected(Part[_T]):
    @property
    def progress_percent(self) -> _T:
        """Share of the carbonation that is made, %."""

class ConditioningLeast(Part[_T]):
    @property
    def progress_percent(self) -> _T:
        """Share of the carbonation that is made, %."""

class ConditioningMost(Part[_T]):
    @property
    def progress_percent(self) -> _T:
        """Share of the carbonation that is made, %."""

class Conditioning(Result[_T]):
    """Share of the carbonation that bottles have made after some time at a temperature: an estimate, with the slow and the fast end of its range."""

    @property
    def expected(self) -> ConditioningExpected[_T]: ...
    @property
    def least(self) -> ConditioningLeast[_T]: ...
    @property
    def most(self) -> ConditioningMost[_T]: ...

class _ConditioningInputs(TypedDict, Generic[_N], total=False):
    room_c: _N | None
    room_f: _N | None
    room_k: _N | None
    time_h: _N | None
    time_d: _N | None
    time_min: _N | None
    time_s: _N | None
    yeast_million_per_ml: _N | None
    age_h: float | None
    age_d: float | None
    age_min: float | None
    age_s: float | None
    filtered: bool | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    errors: Literal["raise", "nan"]

@overload
def conditioning(**given: Unpack[_ConditioningInputs[float]]) -> Conditioning[float]:
    """Share of the carbonation that bottles have made after some time at a temperature: an estimate, with the slow and the fast end of its range.

    Parameters
    ----------
    room_c, room_f, room_k : float or array, optional
        Temperature of the room: that in which bottles condition, or into which CO2 escapes. From -5 to 60 in
        ``room_c``. Required.
    time_h, time_d, time_min, time_s : float or array, optional
        Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
        or step at one temperature. From 0 to 44444.4 in ``time_h``. Required.
    yeast_million_per_ml : float or array, optional
        Living yeast in the drink. From 0 to 1000 in ``yeast_million_per_ml``. Default: enough: 1 million
        cells in a millilitre.
    age_h, age_d, age_min, age_s : float, optional
        Time that the drink has stood since its fermentation ended. From 0 to 44444.4 in ``age_h``. Default:
        fresh.
    filtered : bool, optional
        Whether the drink was filtered or fined bright. Default: false.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    Conditioning
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.conditioning(room_c=20, time_d=14).expected.progress_percent
    96.1225792168278
    """
@overload
def conditioning(**given: Unpack[_ConditioningInputs[Numbers]]) -> Conditioning[NDArray[np.float64]]: ...
@overload
def conditioning(**given: Unpack[_ConditioningInputs[Container]]) -> Conditioning[Any]: ...

class ConditioningTimeExpected(Part[_T]):
    @property
    def time_h(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_d(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_min(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min."""
    @property
    def time_s(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""

class ConditioningTimeLeast(Part[_T]):
    @property
    def time_h(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_d(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_min(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min."""
    @property
    def time_s(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""

class ConditioningTimeMost(Part[_T]):
    @property
    def time_h(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_d(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_min(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min."""
    @property
    def time_s(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""

class ConditioningTime(Result[_T]):
    """Time until bottles have made a share of their carbonation at a temperature: an estimate, with the fast (least) and the slow (most) end of its range."""

    @property
    def expected(self) -> ConditioningTimeExpected[_T]: ...
    @property
    def least(self) -> ConditioningTimeLeast[_T]: ...
    @property
    def most(self) -> ConditioningTimeMost[_T]: ...

class _ConditioningTimeInputs(TypedDict, Generic[_N], total=False):
    room_c: _N | None
    room_f: _N | None
    room_k: _N | None
    progress_percent: _N | None
    yeast_million_per_ml: _N | None
    age_h: float | None
    age_d: float | None
    age_min: float | None
    age_s: float | None
    filtered: bool | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    errors: Literal["raise", "nan"]

@overload
def conditioning_time(**given: Unpack[_ConditioningTimeInputs[float]]) -> ConditioningTime[float]:
    """Time until bottles have made a share of their carbonation at a temperature: an estimate, with the fast (least) and the slow (most) end of its range.

    Parameters
    ----------
    room_c, room_f, room_k : float or array, optional
        Temperature of the room: that in which bottles condition, or into which CO2 escapes. From -5 to 60 in
        ``room_c``. Required.
    progress_percent : float or array, optional
        Share of the carbonation that is made. From 0 to 100 in ``progress_percent``. Default: 95 %.
    yeast_million_per_ml : float or array, optional
        Living yeast in the drink. From 0 to 1000 in ``yeast_million_per_ml``. Default: enough: 1 million
        cells in a millilitre.
    age_h, age_d, age_min, age_s : float, optional
        Time that the drink has stood since its fermentation ended. From 0 to 44444.4 in ``age_h``. Default:
        fresh.
    filtered : bool, optional
        Whether the drink was filtered or fined bright. Default: false.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    ConditioningTime
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.conditioning_time(room_c=20, progress_percent=95).expected.time_h
    311.5902982611831
    """
@overload
def conditioning_time(**given: Unpack[_ConditioningTimeInputs[Numbers]]) -> ConditioningTime[NDArray[np.float64]]: ...
@overload
def conditioning_time(**given: Unpack[_ConditioningTimeInputs[Container]]) -> ConditioningTime[Any]: ...

class ReyeastingDryYeast(Part[_T]):
    @property
    def mass_g(self) -> _T:
        """Mass of sugar, or of what is added, as sold."""
    @property
    def mass_kg(self) -> _T:
        """Mass of sugar, or of what is added, as sold, kg."""
    @property
    def mass_oz(self) -> _T:
        """Mass of sugar, or of what is added, as sold, oz."""
    @property
    def mass_lb(self) -> _T:
        """Mass of sugar, or of what is added, as sold, lb."""

class Reyeasting(Result[_T]):
    """Dry yeast that brings living cells into a drink before it is bottled."""

    @property
    def dry_yeast(self) -> ReyeastingDryYeast[_T]: ...

class _ReyeastingInputs(TypedDict, Generic[_N], total=False):
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    yeast_million_per_ml: _N | None
    errors: Literal["raise", "nan"]

@overload
def reyeasting(**given: Unpack[_ReyeastingInputs[float]]) -> Reyeasting[float]:
    """Dry yeast that brings living cells into a drink before it is bottled.

    Parameters
    ----------
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required.
    yeast_million_per_ml : float or array, optional
        Living yeast in the drink. From 0 to 1000 in ``yeast_million_per_ml``. Default: 1 million cells in a
        millilitre.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    Reyeasting
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.reyeasting(packaged_l=19.2).dry_yeast.mass_g
    0.96
    """
@overload
def reyeasting(**given: Unpack[_ReyeastingInputs[Numbers]]) -> Reyeasting[NDArray[np.float64]]: ...
@overload
def reyeasting(**given: Unpack[_ReyeastingInputs[Container]]) -> Reyeasting[Any]: ...

class Gravity(Result[_T]):
    """A gravity reading as specific gravity and as degrees Plato."""

    @property
    def sg(self) -> _T:
        """Specific gravity 20/20 °C, SG."""
    @property
    def plato(self) -> _T:
        """Extract, grams in 100 g of solution, °P."""

class _GravityInputs(TypedDict, Generic[_N], total=False):
    sg: _N | None
    plato: _N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    errors: Literal["raise", "nan"]

@overload
def gravity(**given: Unpack[_GravityInputs[float]]) -> Gravity[float]:
    """A gravity reading as specific gravity and as degrees Plato.

    Parameters
    ----------
    sg : float or array, optional
        Specific gravity 20/20 °C. From 0.98 to 1.165 in ``sg``. Required: this, or another gravity.
    plato : float or array, optional
        Extract, grams in 100 g of solution. From -5.2 to 37 in ``plato``. Required: this, or another gravity.
    extract_scale : {"asbc", "lincoln", "quick"}, optional
        Which relation turns specific gravity into extract. Default: asbc.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    Gravity
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.gravity(sg=1.048).plato
    11.9120807562241
    """
@overload
def gravity(**given: Unpack[_GravityInputs[Numbers]]) -> Gravity[NDArray[np.float64]]: ...
@overload
def gravity(**given: Unpack[_GravityInputs[Container]]) -> Gravity[Any]: ...

class AttenuationApparent(Part[_T]):
    @property
    def attenuation_percent(self) -> _T:
        """Share of the extract that was fermented, %."""

class AttenuationReal(Part[_T]):
    @property
    def attenuation_percent(self) -> _T:
        """Share of the extract that was fermented, %."""

class AttenuationQuick(Part[_T]):
    @property
    def abv_percent(self) -> _T:
        """Alcohol by volume, %."""

class Attenuation(Result[_T]):
    """Real extract, attenuation and alcohol from the gravity before fermentation and the gravity now."""

    @property
    def apparent(self) -> AttenuationApparent[_T]: ...
    @property
    def real(self) -> AttenuationReal[_T]: ...
    @property
    def quick(self) -> AttenuationQuick[_T]: ...
    @property
    def real_extract_plato(self) -> _T:
        """Extract with the alcohol taken away, °P."""
    @property
    def abw_percent(self) -> _T:
        """Alcohol by mass, %."""
    @property
    def abv_percent(self) -> _T:
        """Alcohol by volume, %."""
    @property
    def extract_g_per_l(self) -> _T:
        """Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2, g/L."""

class _AttenuationInputs(TypedDict, Generic[_N], total=False):
    original_sg: _N | None
    original_plato: _N | None
    current_sg: _N | None
    current_plato: _N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    real_extract_model: Literal["balling", "quotient"] | None
    errors: Literal["raise", "nan"]

@overload
def attenuation(**given: Unpack[_AttenuationInputs[float]]) -> Attenuation[float]:
    """Real extract, attenuation and alcohol from the gravity before fermentation and the gravity now.

    Parameters
    ----------
    original_sg : float or array, optional
        Specific gravity 20/20 °C of the wort or must before fermentation. From 1.001 to 1.165 in
        ``original_sg``. Required: this, or another original.
    original_plato : float or array, optional
        Extract of the wort or must before fermentation. From 0.2 to 37 in ``original_plato``. Required: this,
        or another original.
    current_sg : float or array, optional
        Specific gravity 20/20 °C as it is now. From 0.98 to 1.165 in ``current_sg``. Required: this, or
        another current.
    current_plato : float or array, optional
        Apparent extract as it is now. From -5.2 to 37 in ``current_plato``. Required: this, or another
        current.
    extract_scale : {"asbc", "lincoln", "quick"}, optional
        Which relation turns specific gravity into extract. Default: asbc.
    real_extract_model : {"balling", "quotient"}, optional
        Which relation gives real extract and real attenuation: balling (one less their ratio), or quotient
        (which counts the mass lost as CO2); alcohol is Balling's by either. Default: balling.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    Attenuation
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.attenuation(original_sg=1.048, current_sg=1.01).real_extract_plato
    4.251493453947701
    """
@overload
def attenuation(**given: Unpack[_AttenuationInputs[Numbers]]) -> Attenuation[NDArray[np.float64]]: ...
@overload
def attenuation(**given: Unpack[_AttenuationInputs[Container]]) -> Attenuation[Any]: ...

class FinalGravity(Result[_T]):
    """Gravity at which a fermentation ends, from the original gravity and the attenuation expected of it."""

    @property
    def final_sg(self) -> _T:
        """Specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test, SG."""
    @property
    def final_plato(self) -> _T:
        """Apparent extract at which fermentation will end, best by a forced-fermentation test, °P."""

class _FinalGravityInputs(TypedDict, Generic[_N], total=False):
    original_sg: _N | None
    original_plato: _N | None
    expected_attenuation_percent: _N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    errors: Literal["raise", "nan"]

@overload
def final_gravity(**given: Unpack[_FinalGravityInputs[float]]) -> FinalGravity[float]:
    """Gravity at which a fermentation ends, from the original gravity and the attenuation expected of it.

    Parameters
    ----------
    original_sg : float or array, optional
        Specific gravity 20/20 °C of the wort or must before fermentation. From 1.001 to 1.165 in
        ``original_sg``. Required: this, or another original.
    original_plato : float or array, optional
        Extract of the wort or must before fermentation. From 0.2 to 37 in ``original_plato``. Required: this,
        or another original.
    expected_attenuation_percent : float or array, optional
        Apparent attenuation at which fermentation is expected to end. From 1 to 125 in
        ``expected_attenuation_percent``. Required.
    extract_scale : {"asbc", "lincoln", "quick"}, optional
        Which relation turns specific gravity into extract. Default: asbc.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    FinalGravity
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.final_gravity(
    ...     original_sg=1.048,
    ...     expected_attenuation_percent=78,
    ... ).final_sg
    1.0102356262042567
    """
@overload
def final_gravity(**given: Unpack[_FinalGravityInputs[Numbers]]) -> FinalGravity[NDArray[np.float64]]: ...
@overload
def final_gravity(**given: Unpack[_FinalGravityInputs[Container]]) -> FinalGravity[Any]: ...

class GravityCo2Balling(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class GravityCo2Theory(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class GravityCo2(Result[_T]):
    """Extract that is still to ferment, and the CO2 of it, from the gravity now and the gravity at the end."""

    @property
    def balling(self) -> GravityCo2Balling[_T]: ...
    @property
    def theory(self) -> GravityCo2Theory[_T]: ...
    @property
    def fermentable_g_per_l(self) -> _T:
        """What yeast in the package can still turn into CO2: it makes pressure, g/L."""

class _GravityCo2Inputs(TypedDict, Generic[_N], total=False):
    current_sg: _N | None
    current_plato: _N | None
    final_sg: _N | None
    final_plato: _N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    errors: Literal["raise", "nan"]

@overload
def gravity_co2(**given: Unpack[_GravityCo2Inputs[float]]) -> GravityCo2[float]:
    """Extract that is still to ferment, and the CO2 of it, from the gravity now and the gravity at the end.

    Parameters
    ----------
    current_sg : float or array, optional
        Specific gravity 20/20 °C as it is now. From 0.98 to 1.165 in ``current_sg``. Required: this, or
        another current.
    current_plato : float or array, optional
        Apparent extract as it is now. From -5.2 to 37 in ``current_plato``. Required: this, or another
        current.
    final_sg : float or array, optional
        Specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test. From
        0.98 to 1.165 in ``final_sg``. Required: this, or another final.
    final_plato : float or array, optional
        Apparent extract at which fermentation will end, best by a forced-fermentation test. From -5.2 to 37
        in ``final_plato``. Required: this, or another final.
    extract_scale : {"asbc", "lincoln", "quick"}, optional
        Which relation turns specific gravity into extract. Default: asbc.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    GravityCo2
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.gravity_co2(current_sg=1.013, final_sg=1.012).fermentable_g_per_l
    2.0965169994472816
    """
@overload
def gravity_co2(**given: Unpack[_GravityCo2Inputs[Numbers]]) -> GravityCo2[NDArray[np.float64]]: ...
@overload
def gravity_co2(**given: Unpack[_GravityCo2Inputs[Container]]) -> GravityCo2[Any]: ...

class AddedCo2Expected(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class AddedCo2Worst(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class AddedCo2Added(Part[_T]):
    @property
    def abv_percent(self) -> _T:
        """Alcohol by volume, %."""

class AddedCo2(Result[_T]):
    """CO2 and alcohol that a sugar or a sweetener, added to a drink with living yeast, makes in the package, beside what the drink holds and what primes it."""

    @property
    def expected(self) -> AddedCo2Expected[_T]: ...
    @property
    def worst(self) -> AddedCo2Worst[_T]: ...
    @property
    def added(self) -> AddedCo2Added[_T]: ...

class _AddedCo2Inputs(TypedDict, Generic[_N], total=False):
    addition: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom", "lactose", "maltodextrin", "sucralose", "aspartame", "saccharin", "stevia", "erythritol", "xylitol", "sorbitol", "sweetener_packets"] | None
    dose_g_per_l: _N | None
    sugar_water_percent: float | None
    sugar_sg: float | None
    sugar_fermentable_percent: float | None
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None
    basis: Literal["handbook", "physical"] | None
    yield_percent: float | None
    yield_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def added_co2(**given: Unpack[_AddedCo2Inputs[float]]) -> AddedCo2[float]:
    """CO2 and alcohol that a sugar or a sweetener, added to a drink with living yeast, makes in the package, beside what the drink holds and what primes it.

    Parameters
    ----------
    addition : {"dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey",
        "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar",
        "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses",
        "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate",
        "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63",
        "custom", "lactose", "maltodextrin", "sucralose", "aspartame", "saccharin", "stevia", "erythritol",
        "xylitol", "sorbitol", "sweetener_packets"}, optional
        What is added: a sugar, or something for sweetness. Required.
    dose_g_per_l : float or array, optional
        Sugar or other addition, as sold, per litre of drink. From 0 to 400 in ``dose_g_per_l``. Required.
    sugar_water_percent : float, optional
        Water in a sugar of one's own, percent of its mass. From 0 to 100 in ``sugar_water_percent``. Default:
        only with a custom sugar.
    sugar_sg : float, optional
        Specific gravity 20/20 °C of a syrup of one's own, from which its water follows. From 1 to 1.45 in
        ``sugar_sg``. Default: only with a custom sugar.
    sugar_fermentable_percent : float, optional
        What yeast ferments of the dry matter of a sugar of one's own, percent. From 0 to 100 in
        ``sugar_fermentable_percent``. Default: only with a custom sugar.
    sugar_kind : {"hexose", "disaccharide", "trisaccharide"}, optional
        What the fermentable part of a sugar of one's own is. Default: only with a custom sugar.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis: 100 by the handbook, 95 by the balance.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    AddedCo2
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.added_co2(addition="sucrose", dose_g_per_l=6).expected.co2_g_per_l
    3.0857062726228977
    """
@overload
def added_co2(**given: Unpack[_AddedCo2Inputs[Numbers]]) -> AddedCo2[NDArray[np.float64]]: ...
@overload
def added_co2(**given: Unpack[_AddedCo2Inputs[Container]]) -> AddedCo2[Any]: ...

class DrinkProperties(Result[_T]):
    """Density and viscosity of a drink, and the diffusivity of CO2 in it."""

    @property
    def density_kg_per_m3(self) -> _T:
        """Density, kg/m3."""
    @property
    def density_lb_per_ft3(self) -> _T:
        """Density, lb/ft3."""
    @property
    def viscosity_mpa_s(self) -> _T:
        """Dynamic viscosity, mPa s."""
    @property
    def viscosity_pa_s(self) -> _T:
        """Dynamic viscosity, Pa s."""
    @property
    def viscosity_cp(self) -> _T:
        """Dynamic viscosity, cP."""
    @property
    def diffusivity_m2_per_s(self) -> _T:
        """Diffusivity of dissolved CO2, m2/s."""

class _DrinkPropertiesInputs(TypedDict, Generic[_N], total=False):
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    sg: _N | None
    viscosity_multiplier: _N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    errors: Literal["raise", "nan"]

@overload
def drink_properties(**given: Unpack[_DrinkPropertiesInputs[float]]) -> DrinkProperties[float]:
    """Density and viscosity of a drink, and the diffusivity of CO2 in it.

    Parameters
    ----------
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    sg : float or array, optional
        Specific gravity 20/20 °C. From 0.98 to 1.165 in ``sg``. Default: that of the composition.
    viscosity_multiplier : float or array, optional
        Viscosity of the drink over that of water. From 0.5 to 10 in ``viscosity_multiplier``. Default: usual
        for the drink, as the working shows.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    DrinkProperties
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.drink_properties(temperature_c=4, sg=1.01).density_kg_per_m3
    1010.1210482178102
    """
@overload
def drink_properties(**given: Unpack[_DrinkPropertiesInputs[Numbers]]) -> DrinkProperties[NDArray[np.float64]]: ...
@overload
def drink_properties(**given: Unpack[_DrinkPropertiesInputs[Container]]) -> DrinkProperties[Any]: ...

class Co2SaturationLiquid(Part[_T]):
    @property
    def density_kg_per_m3(self) -> _T:
        """Density, kg/m3."""
    @property
    def density_lb_per_ft3(self) -> _T:
        """Density, lb/ft3."""

class Co2SaturationVapour(Part[_T]):
    @property
    def density_kg_per_m3(self) -> _T:
        """Density, kg/m3."""
    @property
    def density_lb_per_ft3(self) -> _T:
        """Density, lb/ft3."""

class Co2Saturation(Result[_T]):
    """Absolute pressure and densities of CO2 in a cylinder that still holds liquid, however much; a gauge shows an atmosphere less."""

    @property
    def liquid(self) -> Co2SaturationLiquid[_T]: ...
    @property
    def vapour(self) -> Co2SaturationVapour[_T]: ...
    @property
    def abs_kpa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, kPa."""
    @property
    def abs_bar(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, bar."""
    @property
    def abs_psi(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, psi."""
    @property
    def abs_pa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, Pa."""

class _Co2SaturationInputs(TypedDict, Generic[_N], total=False):
    cylinder_c: _N | None
    cylinder_f: _N | None
    cylinder_k: _N | None
    errors: Literal["raise", "nan"]

@overload
def co2_saturation(**given: Unpack[_Co2SaturationInputs[float]]) -> Co2Saturation[float]:
    """Absolute pressure and densities of CO2 in a cylinder that still holds liquid, however much; a gauge shows an atmosphere less.

    Parameters
    ----------
    cylinder_c, cylinder_f, cylinder_k : float or array, optional
        Temperature of a cylinder of CO2: from the triple to the critical point, between which it holds
        liquid. From -56.558 to 30.9782 in ``cylinder_c``. Required.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    Co2Saturation
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.co2_saturation(cylinder_c=20).abs_kpa
    5729.194424293769
    """
@overload
def co2_saturation(**given: Unpack[_Co2SaturationInputs[Numbers]]) -> Co2Saturation[NDArray[np.float64]]: ...
@overload
def co2_saturation(**given: Unpack[_Co2SaturationInputs[Container]]) -> Co2Saturation[Any]: ...

class LineFlow(Result[_T]):
    """What a keg pours through a draught line, by physics: flow, time of a pour, speed, and the pressure that the line takes per length."""

    @property
    def flow_l_per_min(self) -> _T:
        """Drink that flows, L/min."""
    @property
    def flow_us_fl_oz_per_s(self) -> _T:
        """Drink that flows, US fl oz/s."""
    @property
    def flow_us_gal_per_min(self) -> _T:
        """Drink that flows, US gal/min."""
    @property
    def pour_seconds(self) -> _T:
        """Time in which the glass is full."""
    @property
    def speed_m_per_s(self) -> _T:
        """Speed of the drink in the line, m/s."""
    @property
    def speed_ft_per_s(self) -> _T:
        """Speed of the drink in the line, ft/s."""
    @property
    def reynolds_multiplier(self) -> _T:
        """Reynolds number of the flow."""
    @property
    def resistance_bar_per_m(self) -> _T:
        """Pressure lost per length of line, bar/m."""
    @property
    def resistance_psi_per_ft(self) -> _T:
        """Pressure lost per length of line, psi/ft."""
    @property
    def line_l(self) -> _T:
        """Drink that stands in the line, L."""
    @property
    def line_ml(self) -> _T:
        """Drink that stands in the line, mL."""
    @property
    def line_us_gal(self) -> _T:
        """Drink that stands in the line, US gal."""
    @property
    def line_imp_gal(self) -> _T:
        """Drink that stands in the line, imp gal."""
    @property
    def line_us_fl_oz(self) -> _T:
        """Drink that stands in the line, US fl oz."""

class _LineFlowInputs(TypedDict, Generic[_N], total=False):
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    line_m: _N | None
    line_ft: _N | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    bore_mm: _N | None
    bore_in: _N | None
    rise_m: _N | None
    rise_ft: _N | None
    fittings_multiplier: _N | None
    glass_l: _N | None
    glass_ml: _N | None
    glass_us_gal: _N | None
    glass_imp_gal: _N | None
    glass_us_fl_oz: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    sg: _N | None
    viscosity_multiplier: _N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    errors: Literal["raise", "nan"]

@overload
def line_flow(**given: Unpack[_LineFlowInputs[float]]) -> LineFlow[float]:
    """What a keg pours through a draught line, by physics: flow, time of a pour, speed, and the pressure that the line takes per length.

    Parameters
    ----------
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    line_m, line_ft : float or array, optional
        Length of the draught line. From 0 to 500 in ``line_m``. Required.
    tube : {"vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in",
        "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od",
        "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"}, optional
        Tubing of the draught line: see the table tubes. Required: this, or another tube.
    bore_mm, bore_in : float or array, optional
        Inner diameter of the line. From 1 to 50 in ``bore_mm``. Required: this, or another tube.
    rise_m, rise_ft : float or array, optional
        Height of the faucet over the drink in the keg (its middle, where it is half empty); below 0 where the
        faucet is lower. From -30 to 50 in ``rise_m``. Default: 0: the faucet at the height of the drink.
    fittings_multiplier : float or array, optional
        Losses of fittings and faucet, in velocity heads of the line. From 0 to 1000 in
        ``fittings_multiplier``. Default: 3, of a home line: judgement.
    glass_l, glass_ml, glass_us_gal, glass_imp_gal, glass_us_fl_oz : float or array, optional
        Drink that is poured into one glass. From 0.01 to 100 in ``glass_l``. Default: a US pint, 473.176 mL.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    sg : float or array, optional
        Specific gravity 20/20 °C. From 0.98 to 1.165 in ``sg``. Default: that of the composition.
    viscosity_multiplier : float or array, optional
        Viscosity of the drink over that of water. From 0.5 to 10 in ``viscosity_multiplier``. Default: usual
        for the drink, as the working shows.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    LineFlow
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.line_flow(
    ...     gauge_psi=11,
    ...     line_ft=10,
    ...     tube="vinyl_3_16_in",
    ...     rise_ft=2,
    ...     temperature_f=38,
    ... ).flow_l_per_min
    2.3365216524716557
    """
@overload
def line_flow(**given: Unpack[_LineFlowInputs[Numbers]]) -> LineFlow[NDArray[np.float64]]: ...
@overload
def line_flow(**given: Unpack[_LineFlowInputs[Container]]) -> LineFlow[Any]: ...

class LineLength(Result[_T]):
    """Length of draught line through which a keg pours as fast as wanted, by physics, and the drink that stands in it."""

    @property
    def line_m(self) -> _T:
        """Length of the draught line, m."""
    @property
    def line_ft(self) -> _T:
        """Length of the draught line, ft."""
    @property
    def line_l(self) -> _T:
        """Drink that stands in the line, L."""
    @property
    def line_ml(self) -> _T:
        """Drink that stands in the line, mL."""
    @property
    def line_us_gal(self) -> _T:
        """Drink that stands in the line, US gal."""
    @property
    def line_imp_gal(self) -> _T:
        """Drink that stands in the line, imp gal."""
    @property
    def line_us_fl_oz(self) -> _T:
        """Drink that stands in the line, US fl oz."""
    @property
    def flow_l_per_min(self) -> _T:
        """Drink that flows, L/min."""
    @property
    def flow_us_fl_oz_per_s(self) -> _T:
        """Drink that flows, US fl oz/s."""
    @property
    def flow_us_gal_per_min(self) -> _T:
        """Drink that flows, US gal/min."""
    @property
    def pour_seconds(self) -> _T:
        """Time in which the glass is full."""
    @property
    def speed_m_per_s(self) -> _T:
        """Speed of the drink in the line, m/s."""
    @property
    def speed_ft_per_s(self) -> _T:
        """Speed of the drink in the line, ft/s."""
    @property
    def reynolds_multiplier(self) -> _T:
        """Reynolds number of the flow."""
    @property
    def resistance_bar_per_m(self) -> _T:
        """Pressure lost per length of line, bar/m."""
    @property
    def resistance_psi_per_ft(self) -> _T:
        """Pressure lost per length of line, psi/ft."""

class _LineLengthInputs(TypedDict, Generic[_N], total=False):
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    flow_l_per_min: _N | None
    flow_us_fl_oz_per_s: _N | None
    flow_us_gal_per_min: _N | None
    pour_seconds: _N | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    bore_mm: _N | None
    bore_in: _N | None
    rise_m: _N | None
    rise_ft: _N | None
    fittings_multiplier: _N | None
    glass_l: _N | None
    glass_ml: _N | None
    glass_us_gal: _N | None
    glass_imp_gal: _N | None
    glass_us_fl_oz: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    sg: _N | None
    viscosity_multiplier: _N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    errors: Literal["raise", "nan"]

@overload
def line_length(**given: Unpack[_LineLengthInputs[float]]) -> LineLength[float]:
    """Length of draught line through which a keg pours as fast as wanted, by physics, and the drink that stands in it.

    Parameters
    ----------
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    flow_l_per_min, flow_us_fl_oz_per_s, flow_us_gal_per_min : float or array, optional
        Drink that flows. From 0.0006 to 6000 in ``flow_l_per_min``. Required: this, or another pour.
    pour_seconds : float or array, optional
        Time in which the glass is full. From 0.1 to 36000 in ``pour_seconds``. Required: this, or another
        pour.
    tube : {"vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in",
        "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od",
        "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"}, optional
        Tubing of the draught line: see the table tubes. Required: this, or another tube.
    bore_mm, bore_in : float or array, optional
        Inner diameter of the line. From 1 to 50 in ``bore_mm``. Required: this, or another tube.
    rise_m, rise_ft : float or array, optional
        Height of the faucet over the drink in the keg (its middle, where it is half empty); below 0 where the
        faucet is lower. From -30 to 50 in ``rise_m``. Default: 0: the faucet at the height of the drink.
    fittings_multiplier : float or array, optional
        Losses of fittings and faucet, in velocity heads of the line. From 0 to 1000 in
        ``fittings_multiplier``. Default: 3, of a home line: judgement.
    glass_l, glass_ml, glass_us_gal, glass_imp_gal, glass_us_fl_oz : float or array, optional
        Drink that is poured into one glass. From 0.01 to 100 in ``glass_l``. Default: a US pint, 473.176 mL.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    sg : float or array, optional
        Specific gravity 20/20 °C. From 0.98 to 1.165 in ``sg``. Default: that of the composition.
    viscosity_multiplier : float or array, optional
        Viscosity of the drink over that of water. From 0.5 to 10 in ``viscosity_multiplier``. Default: usual
        for the drink, as the working shows.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    LineLength
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.line_length(
    ...     gauge_psi=11,
    ...     pour_seconds=12,
    ...     tube="vinyl_3_16_in",
    ...     rise_ft=2,
    ...     temperature_f=38,
    ... ).line_m
    2.975452321920576
    """
@overload
def line_length(**given: Unpack[_LineLengthInputs[Numbers]]) -> LineLength[NDArray[np.float64]]: ...
@overload
def line_length(**given: Unpack[_LineLengthInputs[Container]]) -> LineLength[Any]: ...

class LinePressureLift(Part[_T]):
    @property
    def drop_kpa(self) -> _T:
        """Difference of pressure, kPa."""
    @property
    def drop_bar(self) -> _T:
        """Difference of pressure, bar."""
    @property
    def drop_psi(self) -> _T:
        """Difference of pressure, psi."""
    @property
    def drop_pa(self) -> _T:
        """Difference of pressure, Pa."""

class LinePressureLine(Part[_T]):
    @property
    def drop_kpa(self) -> _T:
        """Difference of pressure, kPa."""
    @property
    def drop_bar(self) -> _T:
        """Difference of pressure, bar."""
    @property
    def drop_psi(self) -> _T:
        """Difference of pressure, psi."""
    @property
    def drop_pa(self) -> _T:
        """Difference of pressure, Pa."""

class LinePressureFittings(Part[_T]):
    @property
    def drop_kpa(self) -> _T:
        """Difference of pressure, kPa."""
    @property
    def drop_bar(self) -> _T:
        """Difference of pressure, bar."""
    @property
    def drop_psi(self) -> _T:
        """Difference of pressure, psi."""
    @property
    def drop_pa(self) -> _T:
        """Difference of pressure, Pa."""

class LinePressure(Result[_T]):
    """Pressure in the keg that a draught line takes at a flow, by physics, and what of it rise, tube and fittings take. To compare: the pressure of a keg belongs to its carbonation, and the line is made to fit it."""

    @property
    def lift(self) -> LinePressureLift[_T]: ...
    @property
    def line(self) -> LinePressureLine[_T]: ...
    @property
    def fittings(self) -> LinePressureFittings[_T]: ...
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""
    @property
    def flow_l_per_min(self) -> _T:
        """Drink that flows, L/min."""
    @property
    def flow_us_fl_oz_per_s(self) -> _T:
        """Drink that flows, US fl oz/s."""
    @property
    def flow_us_gal_per_min(self) -> _T:
        """Drink that flows, US gal/min."""
    @property
    def pour_seconds(self) -> _T:
        """Time in which the glass is full."""
    @property
    def speed_m_per_s(self) -> _T:
        """Speed of the drink in the line, m/s."""
    @property
    def speed_ft_per_s(self) -> _T:
        """Speed of the drink in the line, ft/s."""
    @property
    def reynolds_multiplier(self) -> _T:
        """Reynolds number of the flow."""

class _LinePressureInputs(TypedDict, Generic[_N], total=False):
    line_m: _N | None
    line_ft: _N | None
    flow_l_per_min: _N | None
    flow_us_fl_oz_per_s: _N | None
    flow_us_gal_per_min: _N | None
    pour_seconds: _N | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    bore_mm: _N | None
    bore_in: _N | None
    rise_m: _N | None
    rise_ft: _N | None
    fittings_multiplier: _N | None
    glass_l: _N | None
    glass_ml: _N | None
    glass_us_gal: _N | None
    glass_imp_gal: _N | None
    glass_us_fl_oz: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    sg: _N | None
    viscosity_multiplier: _N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    errors: Literal["raise", "nan"]

@overload
def line_pressure(**given: Unpack[_LinePressureInputs[float]]) -> LinePressure[float]:
    """Pressure in the keg that a draught line takes at a flow, by physics, and what of it rise, tube and fittings take. To compare: the pressure of a keg belongs to its carbonation, and the line is made to fit it.

    Parameters
    ----------
    line_m, line_ft : float or array, optional
        Length of the draught line. From 0 to 500 in ``line_m``. Required.
    flow_l_per_min, flow_us_fl_oz_per_s, flow_us_gal_per_min : float or array, optional
        Drink that flows. From 0.0006 to 6000 in ``flow_l_per_min``. Required: this, or another pour.
    pour_seconds : float or array, optional
        Time in which the glass is full. From 0.1 to 36000 in ``pour_seconds``. Required: this, or another
        pour.
    tube : {"vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in",
        "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od",
        "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"}, optional
        Tubing of the draught line: see the table tubes. Required: this, or another tube.
    bore_mm, bore_in : float or array, optional
        Inner diameter of the line. From 1 to 50 in ``bore_mm``. Required: this, or another tube.
    rise_m, rise_ft : float or array, optional
        Height of the faucet over the drink in the keg (its middle, where it is half empty); below 0 where the
        faucet is lower. From -30 to 50 in ``rise_m``. Default: 0: the faucet at the height of the drink.
    fittings_multiplier : float or array, optional
        Losses of fittings and faucet, in velocity heads of the line. From 0 to 1000 in
        ``fittings_multiplier``. Default: 3, of a home line: judgement.
    glass_l, glass_ml, glass_us_gal, glass_imp_gal, glass_us_fl_oz : float or array, optional
        Drink that is poured into one glass. From 0.01 to 100 in ``glass_l``. Default: a US pint, 473.176 mL.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    sg : float or array, optional
        Specific gravity 20/20 °C. From 0.98 to 1.165 in ``sg``. Default: that of the composition.
    viscosity_multiplier : float or array, optional
        Viscosity of the drink over that of water. From 0.5 to 10 in ``viscosity_multiplier``. Default: usual
        for the drink, as the working shows.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    LinePressure
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.line_pressure(
    ...     line_m=3,
    ...     flow_l_per_min=3,
    ...     tube="metric_7_mm",
    ...     rise_m=0.5,
    ...     temperature_c=4,
    ... ).gauge_kpa
    22.769189611987755
    """
@overload
def line_pressure(**given: Unpack[_LinePressureInputs[Numbers]]) -> LinePressure[NDArray[np.float64]]: ...
@overload
def line_pressure(**given: Unpack[_LinePressureInputs[Container]]) -> LinePressure[Any]: ...

class HandbookLineLift(Part[_T]):
    @property
    def drop_kpa(self) -> _T:
        """Difference of pressure, kPa."""
    @property
    def drop_bar(self) -> _T:
        """Difference of pressure, bar."""
    @property
    def drop_psi(self) -> _T:
        """Difference of pressure, psi."""
    @property
    def drop_pa(self) -> _T:
        """Difference of pressure, Pa."""

class HandbookLine(Result[_T]):
    """Length of draught line by the trade's balance: what rise (0.5 psi per foot) and hardware leave, over the tube's resistance by the handbook. Meant for 2 US fl oz/s, the German figures for 3 L/min."""

    @property
    def lift(self) -> HandbookLineLift[_T]: ...
    @property
    def line_m(self) -> _T:
        """Length of the draught line, m."""
    @property
    def line_ft(self) -> _T:
        """Length of the draught line, ft."""
    @property
    def resistance_bar_per_m(self) -> _T:
        """Pressure lost per length of line, bar/m."""
    @property
    def resistance_psi_per_ft(self) -> _T:
        """Pressure lost per length of line, psi/ft."""

class _HandbookLineInputs(TypedDict, Generic[_N], total=False):
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    resistance_bar_per_m: _N | None
    resistance_psi_per_ft: _N | None
    rise_m: _N | None
    rise_ft: _N | None
    hardware_kpa: _N | None
    hardware_bar: _N | None
    hardware_psi: _N | None
    hardware_pa: _N | None
    errors: Literal["raise", "nan"]

@overload
def handbook_line(**given: Unpack[_HandbookLineInputs[float]]) -> HandbookLine[float]:
    """Length of draught line by the trade's balance: what rise (0.5 psi per foot) and hardware leave, over the tube's resistance by the handbook. Meant for 2 US fl oz/s, the German figures for 3 L/min.

    Parameters
    ----------
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    tube : {"vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in",
        "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od",
        "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"}, optional
        Tubing of the draught line: see the table tubes. Required: this, or another tube.
    resistance_bar_per_m, resistance_psi_per_ft : float or array, optional
        Pressure lost per length of line. From 0 to 100 in ``resistance_bar_per_m``. Required: this, or
        another tube.
    rise_m, rise_ft : float or array, optional
        Height of the faucet over the drink in the keg (its middle, where it is half empty); below 0 where the
        faucet is lower. From -30 to 50 in ``rise_m``. Default: 0: the faucet at the height of the drink.
    hardware_kpa, hardware_bar, hardware_psi, hardware_pa : float or array, optional
        Pressure that faucet, shank, couplings and other lengths of line take, by the trade's balance. From 0
        to 1000 in ``hardware_kpa``. Default: 0.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    HandbookLine
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.handbook_line(gauge_psi=11, tube="vinyl_3_16_in", rise_ft=2).line_m
    1.016
    """
@overload
def handbook_line(**given: Unpack[_HandbookLineInputs[Numbers]]) -> HandbookLine[NDArray[np.float64]]: ...
@overload
def handbook_line(**given: Unpack[_HandbookLineInputs[Container]]) -> HandbookLine[Any]: ...

class HandbookPressureLift(Part[_T]):
    @property
    def drop_kpa(self) -> _T:
        """Difference of pressure, kPa."""
    @property
    def drop_bar(self) -> _T:
        """Difference of pressure, bar."""
    @property
    def drop_psi(self) -> _T:
        """Difference of pressure, psi."""
    @property
    def drop_pa(self) -> _T:
        """Difference of pressure, Pa."""

class HandbookPressureLine(Part[_T]):
    @property
    def drop_kpa(self) -> _T:
        """Difference of pressure, kPa."""
    @property
    def drop_bar(self) -> _T:
        """Difference of pressure, bar."""
    @property
    def drop_psi(self) -> _T:
        """Difference of pressure, psi."""
    @property
    def drop_pa(self) -> _T:
        """Difference of pressure, Pa."""

class HandbookPressure(Result[_T]):
    """Pressure that a draught line takes by the trade's balance: tube, rise (0.5 psi per foot) and hardware."""

    @property
    def lift(self) -> HandbookPressureLift[_T]: ...
    @property
    def line(self) -> HandbookPressureLine[_T]: ...
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""

class _HandbookPressureInputs(TypedDict, Generic[_N], total=False):
    line_m: _N | None
    line_ft: _N | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    resistance_bar_per_m: _N | None
    resistance_psi_per_ft: _N | None
    rise_m: _N | None
    rise_ft: _N | None
    hardware_kpa: _N | None
    hardware_bar: _N | None
    hardware_psi: _N | None
    hardware_pa: _N | None
    errors: Literal["raise", "nan"]

@overload
def handbook_pressure(**given: Unpack[_HandbookPressureInputs[float]]) -> HandbookPressure[float]:
    """Pressure that a draught line takes by the trade's balance: tube, rise (0.5 psi per foot) and hardware.

    Parameters
    ----------
    line_m, line_ft : float or array, optional
        Length of the draught line. From 0 to 500 in ``line_m``. Required.
    tube : {"vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in",
        "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od",
        "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"}, optional
        Tubing of the draught line: see the table tubes. Required: this, or another tube.
    resistance_bar_per_m, resistance_psi_per_ft : float or array, optional
        Pressure lost per length of line. From 0 to 100 in ``resistance_bar_per_m``. Required: this, or
        another tube.
    rise_m, rise_ft : float or array, optional
        Height of the faucet over the drink in the keg (its middle, where it is half empty); below 0 where the
        faucet is lower. From -30 to 50 in ``rise_m``. Default: 0: the faucet at the height of the drink.
    hardware_kpa, hardware_bar, hardware_psi, hardware_pa : float or array, optional
        Pressure that faucet, shank, couplings and other lengths of line take, by the trade's balance. From 0
        to 1000 in ``hardware_kpa``. Default: 0.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    HandbookPressure
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.handbook_pressure(line_ft=20, tube="vinyl_1_4_in").gauge_kpa
    117.21087398386214
    """
@overload
def handbook_pressure(**given: Unpack[_HandbookPressureInputs[Numbers]]) -> HandbookPressure[NDArray[np.float64]]: ...
@overload
def handbook_pressure(**given: Unpack[_HandbookPressureInputs[Container]]) -> HandbookPressure[Any]: ...

class FillingCarbonationExpected(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class FillingCarbonationLeast(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class FillingCarbonationMost(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class FillingCarbonation(Result[_T]):
    """CO2 that a keg or tank has to have for a carbonation in the package that is filled from it: expected, and with the least and the most that filling may lose. A loss that is told is taken as known."""

    @property
    def expected(self) -> FillingCarbonationExpected[_T]: ...
    @property
    def least(self) -> FillingCarbonationLeast[_T]: ...
    @property
    def most(self) -> FillingCarbonationMost[_T]: ...

class _FillingCarbonationInputs(TypedDict, Generic[_N], total=False):
    co2_g_per_l: _N | None
    volumes: _N | None
    fill_method: Literal["automatic", "counter_pressure_line", "hand_counter_pressure", "tap_tube", "tilted_glass"] | None
    fill_loss_co2_g_per_l: _N | None
    fill_loss_volumes: _N | None
    errors: Literal["raise", "nan"]

@overload
def filling_carbonation(**given: Unpack[_FillingCarbonationInputs[float]]) -> FillingCarbonation[float]:
    """CO2 that a keg or tank has to have for a carbonation in the package that is filled from it: expected, and with the least and the most that filling may lose. A loss that is told is taken as known.

    Parameters
    ----------
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    fill_method : {"automatic", "counter_pressure_line", "hand_counter_pressure", "tap_tube", "tilted_glass"},
        optional
        How the drink goes from the keg into bottles or growlers: see the table filling_losses. Required:
        this, or another loss.
    fill_loss_co2_g_per_l, fill_loss_volumes : float or array, optional
        CO2 lost while filling. From 0 to 30 in ``fill_loss_co2_g_per_l``. Required: this, or another loss.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    FillingCarbonation
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.filling_carbonation(
    ...     volumes=2.4,
    ...     fill_method="hand_counter_pressure",
    ... ).expected.co2_g_per_l
    5.238520190450523
    """
@overload
def filling_carbonation(**given: Unpack[_FillingCarbonationInputs[Numbers]]) -> FillingCarbonation[NDArray[np.float64]]: ...
@overload
def filling_carbonation(**given: Unpack[_FillingCarbonationInputs[Container]]) -> FillingCarbonation[Any]: ...

class BlendMixed(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class BlendKept(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class Blend(Result[_T]):
    """Volume and CO2 of two drinks blended: of the mix, and what of it stays at a temperature under a pressure of CO2 (0 where it is open); without a temperature all is kept under pressure, and stays."""

    @property
    def mixed(self) -> BlendMixed[_T]: ...
    @property
    def kept(self) -> BlendKept[_T]: ...
    @property
    def packaged_l(self) -> _T:
        """Drink that reaches packages (not the batch size: trub and losses stay behind), L."""
    @property
    def packaged_ml(self) -> _T:
        """Drink that reaches packages (not the batch size: trub and losses stay behind), mL."""
    @property
    def packaged_us_gal(self) -> _T:
        """Drink that reaches packages (not the batch size: trub and losses stay behind), US gal."""
    @property
    def packaged_imp_gal(self) -> _T:
        """Drink that reaches packages (not the batch size: trub and losses stay behind), imp gal."""
    @property
    def packaged_us_fl_oz(self) -> _T:
        """Drink that reaches packages (not the batch size: trub and losses stay behind), US fl oz."""
    @property
    def released_g(self) -> _T:
        """CO2 that escapes into the room, g."""
    @property
    def released_kg(self) -> _T:
        """CO2 that escapes into the room, kg."""
    @property
    def released_oz(self) -> _T:
        """CO2 that escapes into the room, oz."""
    @property
    def released_lb(self) -> _T:
        """CO2 that escapes into the room, lb."""

class _BlendInputs(TypedDict, Generic[_N], total=False):
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    co2_g_per_l: _N | None
    volumes: _N | None
    other_l: _N | None
    other_ml: _N | None
    other_us_gal: _N | None
    other_imp_gal: _N | None
    other_us_fl_oz: _N | None
    other_co2_g_per_l: _N | None
    other_volumes: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def blend(**given: Unpack[_BlendInputs[float]]) -> Blend[float]:
    """Volume and CO2 of two drinks blended: of the mix, and what of it stays at a temperature under a pressure of CO2 (0 where it is open); without a temperature all is kept under pressure, and stays.

    Parameters
    ----------
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required.
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    other_l, other_ml, other_us_gal, other_imp_gal, other_us_fl_oz : float or array, optional
        Volume of the other drink that is blended in. From 0.001 to 1e+06 in ``other_l``. Required.
    other_co2_g_per_l, other_volumes : float or array, optional
        CO2 in the other drink. From 0 to 30 in ``other_co2_g_per_l``. Required.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Default: all is kept under pressure.
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Default: 0: open; needs the temperature.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Default: needed with a temperature, unless ambient is given.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Default: needed with a temperature, unless altitude is given.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    Blend
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.blend(
    ...     packaged_l=15,
    ...     volumes=2.8,
    ...     other_l=5,
    ...     other_volumes=0.8,
    ...     temperature_c=4,
    ...     gauge_bar=0.6,
    ...     altitude_m=0,
    ... ).packaged_us_gal
    5.2834410471629685
    """
@overload
def blend(**given: Unpack[_BlendInputs[Numbers]]) -> Blend[NDArray[np.float64]]: ...
@overload
def blend(**given: Unpack[_BlendInputs[Container]]) -> Blend[Any]: ...

class PurgeOxygenEach(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class PurgeOxygenTotal(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class PurgeOxygen(Result[_T]):
    """Oxygen left in a vessel that is filled with CO2 and vented so many times, each filling mixed; and the CO2 that this takes."""

    @property
    def each(self) -> PurgeOxygenEach[_T]: ...
    @property
    def total(self) -> PurgeOxygenTotal[_T]: ...
    @property
    def oxygen_ppm(self) -> _T:
        """Oxygen in the gas over the drink, ppm."""
    @property
    def oxygen_vol_percent(self) -> _T:
        """Oxygen in the gas over the drink, % vol."""

class _PurgeOxygenInputs(TypedDict, Generic[_N], total=False):
    purge_gauge_kpa: _N | None
    purge_gauge_bar: _N | None
    purge_gauge_psi: _N | None
    purge_gauge_pa: _N | None
    cycles_count: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    start_oxygen_ppm: _N | None
    start_oxygen_vol_percent: _N | None
    gas_oxygen_ppm: _N | None
    gas_oxygen_vol_percent: _N | None
    keg_l: _N | None
    keg_ml: _N | None
    keg_us_gal: _N | None
    keg_imp_gal: _N | None
    keg_us_fl_oz: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    errors: Literal["raise", "nan"]

@overload
def purge_oxygen(**given: Unpack[_PurgeOxygenInputs[float]]) -> PurgeOxygen[float]:
    """Oxygen left in a vessel that is filled with CO2 and vented so many times, each filling mixed; and the CO2 that this takes.

    Parameters
    ----------
    purge_gauge_kpa, purge_gauge_bar, purge_gauge_psi, purge_gauge_pa : float or array, optional
        Pressure above the air outside to which a vessel is filled before it is vented. From 0.1 to 3000 in
        ``purge_gauge_kpa``. Required.
    cycles_count : float or array, optional
        How often a vessel is filled with CO2 and vented. From 0 to 1000 in ``cycles_count``. Required.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    start_oxygen_ppm, start_oxygen_vol_percent : float or array, optional
        Oxygen in the vessel before it is purged. From 0 to 250000 in ``start_oxygen_ppm``. Default: 20.95 %
        vol: air.
    gas_oxygen_ppm, gas_oxygen_vol_percent : float or array, optional
        Oxygen in the CO2 as supplied. From 0 to 50000 in ``gas_oxygen_ppm``. Default: 30 ppm, the most that
        CO2 for drinks may have (ISBT); 0 for a pure gas.
    keg_l, keg_ml, keg_us_gal, keg_imp_gal, keg_us_fl_oz : float or array, optional
        What the keg or tank holds, filled to the brim. From 0.1 to 1e+06 in ``keg_l``. Default: 19.6 L, a
        soda keg of 5 US gallons to the brim, and noted.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Default: 20 °C.
    keg_rating_gauge_kpa, keg_rating_gauge_bar, keg_rating_gauge_psi, keg_rating_gauge_pa : float, optional
        Pressure above the air outside for which the keg is rated: the least of its marking and its relief
        valve. From 0 to 3000 in ``keg_rating_gauge_kpa``. Default: not known: more than 15 psi gets a
        caution.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    PurgeOxygen
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.purge_oxygen(purge_gauge_psi=30, cycles_count=5, altitude_m=0).oxygen_ppm
    834.9505049842157
    """
@overload
def purge_oxygen(**given: Unpack[_PurgeOxygenInputs[Numbers]]) -> PurgeOxygen[NDArray[np.float64]]: ...
@overload
def purge_oxygen(**given: Unpack[_PurgeOxygenInputs[Container]]) -> PurgeOxygen[Any]: ...

class PurgeCyclesWhole(Part[_T]):
    @property
    def cycles_count(self) -> _T:
        """How often a vessel is filled with CO2 and vented."""

class PurgeCyclesEach(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class PurgeCyclesTotal(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class PurgeCycles(Result[_T]):
    """How often a vessel is filled with CO2 and vented until no more than some oxygen is left, as a real and as a whole number; and the CO2 that the whole number takes."""

    @property
    def whole(self) -> PurgeCyclesWhole[_T]: ...
    @property
    def each(self) -> PurgeCyclesEach[_T]: ...
    @property
    def total(self) -> PurgeCyclesTotal[_T]: ...
    @property
    def cycles_count(self) -> _T:
        """How often a vessel is filled with CO2 and vented."""

class _PurgeCyclesInputs(TypedDict, Generic[_N], total=False):
    purge_gauge_kpa: _N | None
    purge_gauge_bar: _N | None
    purge_gauge_psi: _N | None
    purge_gauge_pa: _N | None
    oxygen_ppm: _N | None
    oxygen_vol_percent: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    start_oxygen_ppm: _N | None
    start_oxygen_vol_percent: _N | None
    gas_oxygen_ppm: _N | None
    gas_oxygen_vol_percent: _N | None
    keg_l: _N | None
    keg_ml: _N | None
    keg_us_gal: _N | None
    keg_imp_gal: _N | None
    keg_us_fl_oz: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    errors: Literal["raise", "nan"]

@overload
def purge_cycles(**given: Unpack[_PurgeCyclesInputs[float]]) -> PurgeCycles[float]:
    """How often a vessel is filled with CO2 and vented until no more than some oxygen is left, as a real and as a whole number; and the CO2 that the whole number takes.

    Parameters
    ----------
    purge_gauge_kpa, purge_gauge_bar, purge_gauge_psi, purge_gauge_pa : float or array, optional
        Pressure above the air outside to which a vessel is filled before it is vented. From 0.1 to 3000 in
        ``purge_gauge_kpa``. Required.
    oxygen_ppm, oxygen_vol_percent : float or array, optional
        Oxygen in the gas over the drink. From 0 to 250000 in ``oxygen_ppm``. Required.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    start_oxygen_ppm, start_oxygen_vol_percent : float or array, optional
        Oxygen in the vessel before it is purged. From 0 to 250000 in ``start_oxygen_ppm``. Default: 20.95 %
        vol: air.
    gas_oxygen_ppm, gas_oxygen_vol_percent : float or array, optional
        Oxygen in the CO2 as supplied. From 0 to 50000 in ``gas_oxygen_ppm``. Default: 30 ppm, the most that
        CO2 for drinks may have (ISBT); 0 for a pure gas.
    keg_l, keg_ml, keg_us_gal, keg_imp_gal, keg_us_fl_oz : float or array, optional
        What the keg or tank holds, filled to the brim. From 0.1 to 1e+06 in ``keg_l``. Default: 19.6 L, a
        soda keg of 5 US gallons to the brim, and noted.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Default: 20 °C.
    keg_rating_gauge_kpa, keg_rating_gauge_bar, keg_rating_gauge_psi, keg_rating_gauge_pa : float, optional
        Pressure above the air outside for which the keg is rated: the least of its marking and its relief
        valve. From 0 to 3000 in ``keg_rating_gauge_kpa``. Default: not known: more than 15 psi gets a
        caution.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    PurgeCycles
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.purge_cycles(purge_gauge_psi=30, oxygen_ppm=1000, altitude_m=0).cycles_count
    4.832317328674432
    """
@overload
def purge_cycles(**given: Unpack[_PurgeCyclesInputs[Numbers]]) -> PurgeCycles[NDArray[np.float64]]: ...
@overload
def purge_cycles(**given: Unpack[_PurgeCyclesInputs[Container]]) -> PurgeCycles[Any]: ...

class SweepOxygenMixed(Part[_T]):
    @property
    def oxygen_ppm(self) -> _T:
        """Oxygen in the gas over the drink, ppm."""
    @property
    def oxygen_vol_percent(self) -> _T:
        """Oxygen in the gas over the drink, % vol."""

class SweepOxygenPlugFlow(Part[_T]):
    @property
    def oxygen_ppm(self) -> _T:
        """Oxygen in the gas over the drink, ppm."""
    @property
    def oxygen_vol_percent(self) -> _T:
        """Oxygen in the gas over the drink, % vol."""

class SweepOxygen(Result[_T]):
    """Oxygen left in an open vessel after so many vessel volumes of CO2 ran through it: mixed (the most), and without mixing (the least); and the CO2 that this takes."""

    @property
    def mixed(self) -> SweepOxygenMixed[_T]: ...
    @property
    def plug_flow(self) -> SweepOxygenPlugFlow[_T]: ...
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class _SweepOxygenInputs(TypedDict, Generic[_N], total=False):
    sweeps_count: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    start_oxygen_ppm: _N | None
    start_oxygen_vol_percent: _N | None
    gas_oxygen_ppm: _N | None
    gas_oxygen_vol_percent: _N | None
    keg_l: _N | None
    keg_ml: _N | None
    keg_us_gal: _N | None
    keg_imp_gal: _N | None
    keg_us_fl_oz: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    errors: Literal["raise", "nan"]

@overload
def sweep_oxygen(**given: Unpack[_SweepOxygenInputs[float]]) -> SweepOxygen[float]:
    """Oxygen left in an open vessel after so many vessel volumes of CO2 ran through it: mixed (the most), and without mixing (the least); and the CO2 that this takes.

    Parameters
    ----------
    sweeps_count : float or array, optional
        Vessel volumes of CO2 that flow through an open vessel. From 0 to 1000 in ``sweeps_count``. Required.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    start_oxygen_ppm, start_oxygen_vol_percent : float or array, optional
        Oxygen in the vessel before it is purged. From 0 to 250000 in ``start_oxygen_ppm``. Default: 20.95 %
        vol: air.
    gas_oxygen_ppm, gas_oxygen_vol_percent : float or array, optional
        Oxygen in the CO2 as supplied. From 0 to 50000 in ``gas_oxygen_ppm``. Default: 30 ppm, the most that
        CO2 for drinks may have (ISBT); 0 for a pure gas.
    keg_l, keg_ml, keg_us_gal, keg_imp_gal, keg_us_fl_oz : float or array, optional
        What the keg or tank holds, filled to the brim. From 0.1 to 1e+06 in ``keg_l``. Default: 19.6 L, a
        soda keg of 5 US gallons to the brim, and noted.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Default: 20 °C.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    SweepOxygen
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.sweep_oxygen(sweeps_count=5, altitude_m=0).mixed.oxygen_ppm
    1441.3977578984327
    """
@overload
def sweep_oxygen(**given: Unpack[_SweepOxygenInputs[Numbers]]) -> SweepOxygen[NDArray[np.float64]]: ...
@overload
def sweep_oxygen(**given: Unpack[_SweepOxygenInputs[Container]]) -> SweepOxygen[Any]: ...

class PushOxygen(Result[_T]):
    """Oxygen in a keg that was filled to the brim with sanitiser, but for some air under the lid, and pushed empty by CO2; and the CO2 that this takes."""

    @property
    def oxygen_ppm(self) -> _T:
        """Oxygen in the gas over the drink, ppm."""
    @property
    def oxygen_vol_percent(self) -> _T:
        """Oxygen in the gas over the drink, % vol."""
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class _PushOxygenInputs(TypedDict, Generic[_N], total=False):
    pocket_l: _N | None
    pocket_ml: _N | None
    pocket_us_gal: _N | None
    pocket_imp_gal: _N | None
    pocket_us_fl_oz: _N | None
    push_gauge_kpa: _N | None
    push_gauge_bar: _N | None
    push_gauge_psi: _N | None
    push_gauge_pa: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    start_oxygen_ppm: _N | None
    start_oxygen_vol_percent: _N | None
    gas_oxygen_ppm: _N | None
    gas_oxygen_vol_percent: _N | None
    keg_l: _N | None
    keg_ml: _N | None
    keg_us_gal: _N | None
    keg_imp_gal: _N | None
    keg_us_fl_oz: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    errors: Literal["raise", "nan"]

@overload
def push_oxygen(**given: Unpack[_PushOxygenInputs[float]]) -> PushOxygen[float]:
    """Oxygen in a keg that was filled to the brim with sanitiser, but for some air under the lid, and pushed empty by CO2; and the CO2 that this takes.

    Parameters
    ----------
    pocket_l, pocket_ml, pocket_us_gal, pocket_imp_gal, pocket_us_fl_oz : float or array, optional
        Air that stays under the lid when a vessel is filled with liquid. From 0 to 1000 in ``pocket_l``.
        Required.
    push_gauge_kpa, push_gauge_bar, push_gauge_psi, push_gauge_pa : float or array, optional
        Pressure above the air outside at which CO2 pushes liquid out of a full keg. From 0 to 3000 in
        ``push_gauge_kpa``. Required.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    start_oxygen_ppm, start_oxygen_vol_percent : float or array, optional
        Oxygen in the vessel before it is purged. From 0 to 250000 in ``start_oxygen_ppm``. Default: 20.95 %
        vol: air.
    gas_oxygen_ppm, gas_oxygen_vol_percent : float or array, optional
        Oxygen in the CO2 as supplied. From 0 to 50000 in ``gas_oxygen_ppm``. Default: 30 ppm, the most that
        CO2 for drinks may have (ISBT); 0 for a pure gas.
    keg_l, keg_ml, keg_us_gal, keg_imp_gal, keg_us_fl_oz : float or array, optional
        What the keg or tank holds, filled to the brim. From 0.1 to 1e+06 in ``keg_l``. Default: 19.6 L, a
        soda keg of 5 US gallons to the brim, and noted.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Default: 20 °C.
    keg_rating_gauge_kpa, keg_rating_gauge_bar, keg_rating_gauge_psi, keg_rating_gauge_pa : float, optional
        Pressure above the air outside for which the keg is rated: the least of its marking and its relief
        valve. From 0 to 3000 in ``keg_rating_gauge_kpa``. Default: not known: more than 15 psi gets a
        caution.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    PushOxygen
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.push_oxygen(pocket_ml=50, push_gauge_psi=10, altitude_m=0).oxygen_ppm
    347.9857655995446
    """
@overload
def push_oxygen(**given: Unpack[_PushOxygenInputs[Numbers]]) -> PushOxygen[NDArray[np.float64]]: ...
@overload
def push_oxygen(**given: Unpack[_PushOxygenInputs[Container]]) -> PushOxygen[Any]: ...

class OxygenPickupHeadspace(Part[_T]):
    @property
    def picked_up_ug_per_l(self) -> _T:
        """Oxygen that a drink takes up, µg/L."""
    @property
    def picked_up_ppb(self) -> _T:
        """Oxygen that a drink takes up, ppb."""
    @property
    def picked_up_mg_per_l(self) -> _T:
        """Oxygen that a drink takes up, mg/L."""

class OxygenPickupGas(Part[_T]):
    @property
    def picked_up_ug_per_l(self) -> _T:
        """Oxygen that a drink takes up, µg/L."""
    @property
    def picked_up_ppb(self) -> _T:
        """Oxygen that a drink takes up, ppb."""
    @property
    def picked_up_mg_per_l(self) -> _T:
        """Oxygen that a drink takes up, mg/L."""

class OxygenPickupEquilibrium(Part[_T]):
    @property
    def dissolved_oxygen_ug_per_l(self) -> _T:
        """Oxygen dissolved in the drink, µg/L."""
    @property
    def dissolved_oxygen_ppb(self) -> _T:
        """Oxygen dissolved in the drink, ppb."""
    @property
    def dissolved_oxygen_mg_per_l(self) -> _T:
        """Oxygen dissolved in the drink, mg/L."""

class OxygenPickup(Result[_T]):
    """Oxygen of a package per litre of drink: in the headspace, brought along by the CO2 that carbonates it, and in all with what was dissolved; and what of it is dissolved at equilibrium."""

    @property
    def headspace(self) -> OxygenPickupHeadspace[_T]: ...
    @property
    def gas(self) -> OxygenPickupGas[_T]: ...
    @property
    def equilibrium(self) -> OxygenPickupEquilibrium[_T]: ...
    @property
    def total_oxygen_ug_per_l(self) -> _T:
        """Oxygen in drink and headspace together, per litre of drink: total package oxygen, µg/L."""
    @property
    def total_oxygen_ppb(self) -> _T:
        """Oxygen in drink and headspace together, per litre of drink: total package oxygen, ppb."""
    @property
    def total_oxygen_mg_per_l(self) -> _T:
        """Oxygen in drink and headspace together, per litre of drink: total package oxygen, mg/L."""

class _OxygenPickupInputs(TypedDict, Generic[_N], total=False):
    oxygen_ppm: _N | None
    oxygen_vol_percent: _N | None
    headspace_percent: _N | None
    keg_l: float | None
    keg_ml: float | None
    keg_us_gal: float | None
    keg_imp_gal: float | None
    keg_us_fl_oz: float | None
    packaged_l: float | None
    packaged_ml: float | None
    packaged_us_gal: float | None
    packaged_imp_gal: float | None
    packaged_us_fl_oz: float | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    dissolved_oxygen_ug_per_l: _N | None
    dissolved_oxygen_ppb: _N | None
    dissolved_oxygen_mg_per_l: _N | None
    co2_g_per_l: _N | None
    volumes: _N | None
    start_co2_g_per_l: _N | None
    start_volumes: _N | None
    gas_oxygen_ppm: _N | None
    gas_oxygen_vol_percent: _N | None
    errors: Literal["raise", "nan"]

@overload
def oxygen_pickup(**given: Unpack[_OxygenPickupInputs[float]]) -> OxygenPickup[float]:
    """Oxygen of a package per litre of drink: in the headspace, brought along by the CO2 that carbonates it, and in all with what was dissolved; and what of it is dissolved at equilibrium.

    Parameters
    ----------
    oxygen_ppm, oxygen_vol_percent : float or array, optional
        Oxygen in the gas over the drink. From 0 to 250000 in ``oxygen_ppm``. Required.
    headspace_percent : float or array, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Required: this, or another gas_space.
    keg_l, keg_ml, keg_us_gal, keg_imp_gal, keg_us_fl_oz : float, optional
        What the keg or tank holds, filled to the brim. From 0.1 to 1e+06 in ``keg_l``. Required: this, or
        another gas_space.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Default: needed with keg: the drink in it.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Default: 0: just vented.
    dissolved_oxygen_ug_per_l, dissolved_oxygen_ppb, dissolved_oxygen_mg_per_l : float or array, optional
        Oxygen dissolved in the drink. From 0 to 100000 in ``dissolved_oxygen_ug_per_l``. Default: 0: none
        before.
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Default: the drink takes up no CO2.
    start_co2_g_per_l, start_volumes : float or array, optional
        CO2 in the drink at the start. From 0 to 30 in ``start_co2_g_per_l``. Default: 0: flat.
    gas_oxygen_ppm, gas_oxygen_vol_percent : float or array, optional
        Oxygen in the CO2 as supplied. From 0 to 50000 in ``gas_oxygen_ppm``. Default: 30 ppm, the most that
        CO2 for drinks may have (ISBT); 0 for a pure gas.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    OxygenPickup
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.oxygen_pickup(
    ...     oxygen_ppm=1000,
    ...     headspace_percent=3.5,
    ...     temperature_c=4,
    ...     altitude_m=0,
    ...     volumes=2.5,
    ...     start_volumes=0.84,
    ... ).headspace.picked_up_ug_per_l
    49.24457830840352
    """
@overload
def oxygen_pickup(**given: Unpack[_OxygenPickupInputs[Numbers]]) -> OxygenPickup[NDArray[np.float64]]: ...
@overload
def oxygen_pickup(**given: Unpack[_OxygenPickupInputs[Container]]) -> OxygenPickup[Any]: ...

class TotalPackageOxygenHeadspace(Part[_T]):
    @property
    def picked_up_ug_per_l(self) -> _T:
        """Oxygen that a drink takes up, µg/L."""
    @property
    def picked_up_ppb(self) -> _T:
        """Oxygen that a drink takes up, ppb."""
    @property
    def picked_up_mg_per_l(self) -> _T:
        """Oxygen that a drink takes up, mg/L."""

class TotalPackageOxygen(Result[_T]):
    """Total package oxygen from the oxygen dissolved in a package that was shaken to equilibrium, and the part of it that is in the headspace; per litre of drink."""

    @property
    def headspace(self) -> TotalPackageOxygenHeadspace[_T]: ...
    @property
    def total_oxygen_ug_per_l(self) -> _T:
        """Oxygen in drink and headspace together, per litre of drink: total package oxygen, µg/L."""
    @property
    def total_oxygen_ppb(self) -> _T:
        """Oxygen in drink and headspace together, per litre of drink: total package oxygen, ppb."""
    @property
    def total_oxygen_mg_per_l(self) -> _T:
        """Oxygen in drink and headspace together, per litre of drink: total package oxygen, mg/L."""

class _TotalPackageOxygenInputs(TypedDict, Generic[_N], total=False):
    dissolved_oxygen_ug_per_l: _N | None
    dissolved_oxygen_ppb: _N | None
    dissolved_oxygen_mg_per_l: _N | None
    headspace_percent: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    errors: Literal["raise", "nan"]

@overload
def total_package_oxygen(**given: Unpack[_TotalPackageOxygenInputs[float]]) -> TotalPackageOxygen[float]:
    """Total package oxygen from the oxygen dissolved in a package that was shaken to equilibrium, and the part of it that is in the headspace; per litre of drink.

    Parameters
    ----------
    dissolved_oxygen_ug_per_l, dissolved_oxygen_ppb, dissolved_oxygen_mg_per_l : float or array, optional
        Oxygen dissolved in the drink. From 0 to 100000 in ``dissolved_oxygen_ug_per_l``. Required.
    headspace_percent : float or array, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Required.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    TotalPackageOxygen
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.total_package_oxygen(
    ...     dissolved_oxygen_ppb=40,
    ...     headspace_percent=5,
    ...     temperature_c=20,
    ... ).total_oxygen_ug_per_l
    99.87189345828378
    """
@overload
def total_package_oxygen(**given: Unpack[_TotalPackageOxygenInputs[Numbers]]) -> TotalPackageOxygen[NDArray[np.float64]]: ...
@overload
def total_package_oxygen(**given: Unpack[_TotalPackageOxygenInputs[Container]]) -> TotalPackageOxygen[Any]: ...

class GasBudgetDissolve(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class GasBudgetHeadspace(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class GasBudgetPurge(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class GasBudgetServe(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class GasBudgetLoss(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class GasBudgetTotal(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class GasBudgetLeast(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class GasBudgetMost(Part[_T]):
    @property
    def kegs_count(self) -> _T:
        """How many kegs a cylinder does."""

class GasBudget(Result[_T]):
    """CO2 that a keg takes, use by use: dissolved, in the headspace, for purging, to push the drink out, lost; in all and at the bare minimum; and how many kegs a cylinder does at either."""

    @property
    def dissolve(self) -> GasBudgetDissolve[_T]: ...
    @property
    def headspace(self) -> GasBudgetHeadspace[_T]: ...
    @property
    def purge(self) -> GasBudgetPurge[_T]: ...
    @property
    def serve(self) -> GasBudgetServe[_T]: ...
    @property
    def loss(self) -> GasBudgetLoss[_T]: ...
    @property
    def total(self) -> GasBudgetTotal[_T]: ...
    @property
    def least(self) -> GasBudgetLeast[_T]: ...
    @property
    def most(self) -> GasBudgetMost[_T]: ...
    @property
    def kegs_count(self) -> _T:
        """How many kegs a cylinder does."""

class _GasBudgetInputs(TypedDict, Generic[_N], total=False):
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    co2_g_per_l: _N | None
    volumes: _N | None
    start_co2_g_per_l: _N | None
    start_volumes: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    keg_l: _N | None
    keg_ml: _N | None
    keg_us_gal: _N | None
    keg_imp_gal: _N | None
    keg_us_fl_oz: _N | None
    purge: Literal["none", "headspace", "empty", "push"] | None
    purge_gauge_kpa: _N | None
    purge_gauge_bar: _N | None
    purge_gauge_psi: _N | None
    purge_gauge_pa: _N | None
    cycles_count: _N | None
    push_gauge_kpa: _N | None
    push_gauge_bar: _N | None
    push_gauge_psi: _N | None
    push_gauge_pa: _N | None
    purge_c: _N | None
    purge_f: _N | None
    purge_k: _N | None
    gas_loss_percent: _N | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None
    charge_g: _N | None
    charge_kg: _N | None
    charge_oz: _N | None
    charge_lb: _N | None
    errors: Literal["raise", "nan"]

@overload
def gas_budget(**given: Unpack[_GasBudgetInputs[float]]) -> GasBudget[float]:
    """CO2 that a keg takes, use by use: dissolved, in the headspace, for purging, to push the drink out, lost; in all and at the bare minimum; and how many kegs a cylinder does at either.

    Parameters
    ----------
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required.
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    start_co2_g_per_l, start_volumes : float or array, optional
        CO2 in the drink at the start. From 0 to 30 in ``start_co2_g_per_l``. Default: 0: flat; beer that
        fermented at 20 °C holds about 0.85 volumes.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    keg_l, keg_ml, keg_us_gal, keg_imp_gal, keg_us_fl_oz : float or array, optional
        What the keg or tank holds, filled to the brim. From 0.1 to 1e+06 in ``keg_l``. Default: the drink and
        3.5 % of it, as in a full soda keg.
    purge : {"none", "headspace", "empty", "push"}, optional
        How air is kept out of a keg: none, headspace (gas over the drink vented), empty (vented before it is
        filled), or push (sanitiser pushed out by CO2, then the headspace vented if cycles are given).
        Default: none.
    purge_gauge_kpa, purge_gauge_bar, purge_gauge_psi, purge_gauge_pa : float or array, optional
        Pressure above the air outside to which a vessel is filled before it is vented. From 0.1 to 3000 in
        ``purge_gauge_kpa``. Default: needed with purge "headspace" and "empty", and with cycles.
    cycles_count : float or array, optional
        How often a vessel is filled with CO2 and vented. From 0 to 1000 in ``cycles_count``. Default: needed
        with purge "headspace" and "empty", and with purge_gauge.
    push_gauge_kpa, push_gauge_bar, push_gauge_psi, push_gauge_pa : float or array, optional
        Pressure above the air outside at which CO2 pushes liquid out of a full keg. From 0 to 3000 in
        ``push_gauge_kpa``. Default: that of serving; only with purge "push".
    purge_c, purge_f, purge_k : float or array, optional
        Temperature of a keg that is purged while it is empty. From -5 to 60 in ``purge_c``. Default: that of
        a room, 20 °C; only with purge "empty" and "push".
    gas_loss_percent : float or array, optional
        CO2 lost through leaks and disconnecting, percent of what is used. From 0 to 500 in
        ``gas_loss_percent``. Default: 0 %.
    keg_rating_gauge_kpa, keg_rating_gauge_bar, keg_rating_gauge_psi, keg_rating_gauge_pa : float, optional
        Pressure above the air outside for which the keg is rated: the least of its marking and its relief
        valve. From 0 to 3000 in ``keg_rating_gauge_kpa``. Default: not known: purging at more than 15 psi
        gets a caution.
    cylinder_size : {"cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg",
        "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"}, optional
        Size of the cylinder or cartridge: see the table cylinder_sizes. Default: cylinder_5_lb, unless charge
        is given.
    charge_g, charge_kg, charge_oz, charge_lb : float or array, optional
        CO2 in a full cylinder. From 0.1 to 1e+06 in ``charge_g``. Default: that of the cylinder_size.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    GasBudget
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.gas_budget(
    ...     packaged_us_gal=5,
    ...     volumes=2.5,
    ...     start_volumes=0.84,
    ...     temperature_f=38,
    ...     gauge_psi=11,
    ...     altitude_m=0,
    ... ).dissolve.gas_g
    62.10891897929159
    """
@overload
def gas_budget(**given: Unpack[_GasBudgetInputs[Numbers]]) -> GasBudget[NDArray[np.float64]]: ...
@overload
def gas_budget(**given: Unpack[_GasBudgetInputs[Container]]) -> GasBudget[Any]: ...

class CylinderLeftFalling(Part[_T]):
    @property
    def left_percent(self) -> _T:
        """Share of a full charge, %."""

class CylinderLeftLiquidFull(Part[_T]):
    @property
    def cylinder_c(self) -> _T:
        """Temperature of a cylinder of CO2: from the triple to the critical point, between which it holds liquid, °C."""
    @property
    def cylinder_f(self) -> _T:
        """Temperature of a cylinder of CO2: from the triple to the critical point, between which it holds liquid, °F."""
    @property
    def cylinder_k(self) -> _T:
        """Temperature of a cylinder of CO2: from the triple to the critical point, between which it holds liquid, K."""

class CylinderLeft(Result[_T]):
    """What the gauge of a cylinder shows as long as it holds liquid, the share of a full charge that is left when it begins to fall, and the temperature at which a full cylinder is full of liquid."""

    @property
    def falling(self) -> CylinderLeftFalling[_T]: ...
    @property
    def liquid_full(self) -> CylinderLeftLiquidFull[_T]: ...
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""
    @property
    def abs_kpa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, kPa."""
    @property
    def abs_bar(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, bar."""
    @property
    def abs_psi(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, psi."""
    @property
    def abs_pa(self) -> _T:
        """Pressure above vacuum, total of the gas over the drink, Pa."""

class _CylinderLeftInputs(TypedDict, Generic[_N], total=False):
    cylinder_c: _N | None
    cylinder_f: _N | None
    cylinder_k: _N | None
    cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None
    filling_ratio_g_per_g: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    errors: Literal["raise", "nan"]

@overload
def cylinder_left(**given: Unpack[_CylinderLeftInputs[float]]) -> CylinderLeft[float]:
    """What the gauge of a cylinder shows as long as it holds liquid, the share of a full charge that is left when it begins to fall, and the temperature at which a full cylinder is full of liquid.

    Parameters
    ----------
    cylinder_c, cylinder_f, cylinder_k : float or array, optional
        Temperature of a cylinder of CO2: from the triple to the critical point, between which it holds
        liquid. From -56.558 to 30.9782 in ``cylinder_c``. Required.
    cylinder_size : {"cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg",
        "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"}, optional
        Size of the cylinder or cartridge: see the table cylinder_sizes. Required: this, or another filling.
    filling_ratio_g_per_g : float or array, optional
        CO2 in a full cylinder over the water that it would hold. From 0.5 to 0.9 in
        ``filling_ratio_g_per_g``. Required: this, or another filling.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    CylinderLeft
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.cylinder_left(
    ...     cylinder_c=20,
    ...     cylinder_size="cylinder_5_lb",
    ...     altitude_m=0,
    ... ).gauge_kpa
    5627.869424293769
    """
@overload
def cylinder_left(**given: Unpack[_CylinderLeftInputs[Numbers]]) -> CylinderLeft[NDArray[np.float64]]: ...
@overload
def cylinder_left(**given: Unpack[_CylinderLeftInputs[Container]]) -> CylinderLeft[Any]: ...

class CylinderContentsLeft(Part[_T]):
    @property
    def gas_g(self) -> _T:
        """Mass of CO2, g."""
    @property
    def gas_kg(self) -> _T:
        """Mass of CO2, kg."""
    @property
    def gas_oz(self) -> _T:
        """Mass of CO2, oz."""
    @property
    def gas_lb(self) -> _T:
        """Mass of CO2, lb."""

class CylinderContents(Result[_T]):
    """CO2 left in a cylinder by its weight now and empty, the share of a full charge, and how many kegs that does."""

    @property
    def left(self) -> CylinderContentsLeft[_T]: ...
    @property
    def left_percent(self) -> _T:
        """Share of a full charge, %."""
    @property
    def kegs_count(self) -> _T:
        """How many kegs a cylinder does."""

class _CylinderContentsInputs(TypedDict, Generic[_N], total=False):
    gross_g: _N | None
    gross_kg: _N | None
    gross_oz: _N | None
    gross_lb: _N | None
    tare_g: _N | None
    tare_kg: _N | None
    tare_oz: _N | None
    tare_lb: _N | None
    cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None
    charge_g: _N | None
    charge_kg: _N | None
    charge_oz: _N | None
    charge_lb: _N | None
    gas_g: _N | None
    gas_kg: _N | None
    gas_oz: _N | None
    gas_lb: _N | None
    errors: Literal["raise", "nan"]

@overload
def cylinder_contents(**given: Unpack[_CylinderContentsInputs[float]]) -> CylinderContents[float]:
    """CO2 left in a cylinder by its weight now and empty, the share of a full charge, and how many kegs that does.

    Parameters
    ----------
    gross_g, gross_kg, gross_oz, gross_lb : float or array, optional
        What the cylinder weighs now. From 1 to 1e+07 in ``gross_g``. Required.
    tare_g, tare_kg, tare_oz, tare_lb : float or array, optional
        What the empty cylinder weighs: it is stamped on it. From 1 to 1e+07 in ``tare_g``. Required.
    cylinder_size : {"cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg",
        "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"}, optional
        Size of the cylinder or cartridge: see the table cylinder_sizes. Required: this, or another full.
    charge_g, charge_kg, charge_oz, charge_lb : float or array, optional
        CO2 in a full cylinder. From 0.1 to 1e+06 in ``charge_g``. Required: this, or another full.
    gas_g, gas_kg, gas_oz, gas_lb : float or array, optional
        Mass of CO2. From 0 to 1e+09 in ``gas_g``. Default: 150 g for each keg: 19 L carbonated, served, its
        headspace purged, a little lost; gas_budget tells it of yours.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    CylinderContents
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.cylinder_contents(
    ...     gross_lb=10.2,
    ...     tare_lb=7.7,
    ...     cylinder_size="cylinder_5_lb",
    ... ).left.gas_g
    1133.9809249999994
    """
@overload
def cylinder_contents(**given: Unpack[_CylinderContentsInputs[Numbers]]) -> CylinderContents[NDArray[np.float64]]: ...
@overload
def cylinder_contents(**given: Unpack[_CylinderContentsInputs[Container]]) -> CylinderContents[Any]: ...

class RoomCo2Mixed(Part[_T]):
    @property
    def room_air_ppm(self) -> _T:
        """CO2 in the air of the room, ppm."""
    @property
    def room_air_vol_percent(self) -> _T:
        """CO2 in the air of the room, % vol."""

class RoomCo2Bound(Part[_T]):
    @property
    def room_air_ppm(self) -> _T:
        """CO2 in the air of the room, ppm."""
    @property
    def room_air_vol_percent(self) -> _T:
        """CO2 in the air of the room, % vol."""

class RoomCo2LowHalf(Part[_T]):
    @property
    def room_air_ppm(self) -> _T:
        """CO2 in the air of the room, ppm."""
    @property
    def room_air_vol_percent(self) -> _T:
        """CO2 in the air of the room, % vol."""

class RoomCo2Later(Part[_T]):
    @property
    def room_air_ppm(self) -> _T:
        """CO2 in the air of the room, ppm."""
    @property
    def room_air_vol_percent(self) -> _T:
        """CO2 in the air of the room, % vol."""

class RoomCo2LaterLowHalf(Part[_T]):
    @property
    def room_air_ppm(self) -> _T:
        """CO2 in the air of the room, ppm."""
    @property
    def room_air_vol_percent(self) -> _T:
        """CO2 in the air of the room, % vol."""

class RoomCo2Aired(Part[_T]):
    @property
    def time_h(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_d(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_min(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min."""
    @property
    def time_s(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""

class RoomCo2LowHalfAired(Part[_T]):
    @property
    def time_h(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_d(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_min(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min."""
    @property
    def time_s(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""

class RoomCo2(Result[_T]):
    """CO2 in the air of a room into which a cylinder, or what a fermentation makes, escapes: mixed, at most, and all of it in the lower half; after some time of airing; and how long airing takes to 5000 ppm."""

    @property
    def mixed(self) -> RoomCo2Mixed[_T]: ...
    @property
    def bound(self) -> RoomCo2Bound[_T]: ...
    @property
    def low_half(self) -> RoomCo2LowHalf[_T]: ...
    @property
    def later(self) -> RoomCo2Later[_T]: ...
    @property
    def later_low_half(self) -> RoomCo2LaterLowHalf[_T]: ...
    @property
    def aired(self) -> RoomCo2Aired[_T]: ...
    @property
    def low_half_aired(self) -> RoomCo2LowHalfAired[_T]: ...

class _RoomCo2Inputs(TypedDict, Generic[_N], total=False):
    released_g: _N | None
    released_kg: _N | None
    released_oz: _N | None
    released_lb: _N | None
    room_m3: _N | None
    room_ft3: _N | None
    room_c: _N | None
    room_f: _N | None
    room_k: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    air_changes_per_h: _N | None
    air_changes_per_d: _N | None
    time_h: _N | None
    time_d: _N | None
    time_min: _N | None
    time_s: _N | None
    errors: Literal["raise", "nan"]

@overload
def room_co2(**given: Unpack[_RoomCo2Inputs[float]]) -> RoomCo2[float]:
    """CO2 in the air of a room into which a cylinder, or what a fermentation makes, escapes: mixed, at most, and all of it in the lower half; after some time of airing; and how long airing takes to 5000 ppm.

    Parameters
    ----------
    released_g, released_kg, released_oz, released_lb : float or array, optional
        CO2 that escapes into the room. From 0 to 1e+08 in ``released_g``. Required.
    room_m3, room_ft3 : float or array, optional
        Volume of the room. From 0.1 to 1e+06 in ``room_m3``. Required.
    room_c, room_f, room_k : float or array, optional
        Temperature of the room: that in which bottles condition, or into which CO2 escapes. From -5 to 60 in
        ``room_c``. Default: 20 °C.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    air_changes_per_h, air_changes_per_d : float or array, optional
        How often the air of the room is exchanged: about 0.5 an hour in a closed room, less in a cold room or
        a cellar. From 0.01 to 360 in ``air_changes_per_h``. Default: 0.5 1/h, a closed room, and noted; a
        cold room or a cellar has less.
    time_h, time_d, time_min, time_s : float or array, optional
        Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
        or step at one temperature. From 0 to 44444.4 in ``time_h``. Default: 0: at once.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    RoomCo2
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.room_co2(
    ...     released_lb=5,
    ...     room_m3=30,
    ...     altitude_m=0,
    ...     air_changes_per_h=0.5,
    ...     time_h=2,
    ... ).mixed.room_air_ppm
    40669.3429921643
    """
@overload
def room_co2(**given: Unpack[_RoomCo2Inputs[Numbers]]) -> RoomCo2[NDArray[np.float64]]: ...
@overload
def room_co2(**given: Unpack[_RoomCo2Inputs[Container]]) -> RoomCo2[Any]: ...

class RoomLeakMixed(Part[_T]):
    @property
    def room_air_ppm(self) -> _T:
        """CO2 in the air of the room, ppm."""
    @property
    def room_air_vol_percent(self) -> _T:
        """CO2 in the air of the room, % vol."""

class RoomLeakLowHalf(Part[_T]):
    @property
    def room_air_ppm(self) -> _T:
        """CO2 in the air of the room, ppm."""
    @property
    def room_air_vol_percent(self) -> _T:
        """CO2 in the air of the room, % vol."""

class RoomLeak(Result[_T]):
    """CO2 in the air of a room into which some leaks steadily, in the end: mixed, and all of it in the lower half."""

    @property
    def mixed(self) -> RoomLeakMixed[_T]: ...
    @property
    def low_half(self) -> RoomLeakLowHalf[_T]: ...

class _RoomLeakInputs(TypedDict, Generic[_N], total=False):
    leak_g_per_h: _N | None
    leak_oz_per_h: _N | None
    room_m3: _N | None
    room_ft3: _N | None
    room_c: _N | None
    room_f: _N | None
    room_k: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    air_changes_per_h: _N | None
    air_changes_per_d: _N | None
    errors: Literal["raise", "nan"]

@overload
def room_leak(**given: Unpack[_RoomLeakInputs[float]]) -> RoomLeak[float]:
    """CO2 in the air of a room into which some leaks steadily, in the end: mixed, and all of it in the lower half.

    Parameters
    ----------
    leak_g_per_h, leak_oz_per_h : float or array, optional
        CO2 that leaks steadily. From 0 to 3.6e+06 in ``leak_g_per_h``. Required.
    room_m3, room_ft3 : float or array, optional
        Volume of the room. From 0.1 to 1e+06 in ``room_m3``. Required.
    room_c, room_f, room_k : float or array, optional
        Temperature of the room: that in which bottles condition, or into which CO2 escapes. From -5 to 60 in
        ``room_c``. Default: 20 °C.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    air_changes_per_h, air_changes_per_d : float or array, optional
        How often the air of the room is exchanged: about 0.5 an hour in a closed room, less in a cold room or
        a cellar. From 0.01 to 360 in ``air_changes_per_h``. Default: 0.5 1/h, a closed room, and noted; a
        cold room or a cellar has less.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    RoomLeak
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.room_leak(
    ...     leak_g_per_h=94.5,
    ...     room_m3=30,
    ...     altitude_m=0,
    ...     air_changes_per_h=0.5,
    ... ).mixed.room_air_ppm
    3845.006091862357
    """
@overload
def room_leak(**given: Unpack[_RoomLeakInputs[Numbers]]) -> RoomLeak[NDArray[np.float64]]: ...
@overload
def room_leak(**given: Unpack[_RoomLeakInputs[Container]]) -> RoomLeak[Any]: ...

class AmbientPressure(Result[_T]):
    """Pressure of the air at an altitude."""

    @property
    def ambient_kpa(self) -> _T:
        """Measured pressure of the air outside, at the station (not reduced to sea level), kPa."""
    @property
    def ambient_bar(self) -> _T:
        """Measured pressure of the air outside, at the station (not reduced to sea level), bar."""
    @property
    def ambient_psi(self) -> _T:
        """Measured pressure of the air outside, at the station (not reduced to sea level), psi."""
    @property
    def ambient_pa(self) -> _T:
        """Measured pressure of the air outside, at the station (not reduced to sea level), Pa."""

class _AmbientPressureInputs(TypedDict, Generic[_N], total=False):
    altitude_m: _N | None
    altitude_ft: _N | None
    sea_level_kpa: _N | None
    sea_level_bar: _N | None
    sea_level_psi: _N | None
    sea_level_pa: _N | None
    errors: Literal["raise", "nan"]

@overload
def ambient_pressure(**given: Unpack[_AmbientPressureInputs[float]]) -> AmbientPressure[float]:
    """Pressure of the air at an altitude.

    Parameters
    ----------
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float or array, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    AmbientPressure
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.ambient_pressure(altitude_m=1609.344).ambient_kpa
    83.43175708062897
    """
@overload
def ambient_pressure(**given: Unpack[_AmbientPressureInputs[Numbers]]) -> AmbientPressure[NDArray[np.float64]]: ...
@overload
def ambient_pressure(**given: Unpack[_AmbientPressureInputs[Container]]) -> AmbientPressure[Any]: ...

class PackagingCostBottlesFirst(Part[_T]):
    @property
    def cost_money_per_l(self) -> _T:
        """What a litre that is drunk costs, per L."""
    @property
    def cost_money_per_us_gal(self) -> _T:
        """What a litre that is drunk costs, per US gal."""

class PackagingCostKegFirst(Part[_T]):
    @property
    def cost_money_per_l(self) -> _T:
        """What a litre that is drunk costs, per L."""
    @property
    def cost_money_per_us_gal(self) -> _T:
        """What a litre that is drunk costs, per US gal."""

class PackagingCostBottles(Part[_T]):
    @property
    def cost_money_per_l(self) -> _T:
        """What a litre that is drunk costs, per L."""
    @property
    def cost_money_per_us_gal(self) -> _T:
        """What a litre that is drunk costs, per US gal."""
    @property
    def spent_money(self) -> _T:
        """What is spent in all."""

class PackagingCostKeg(Part[_T]):
    @property
    def cost_money_per_l(self) -> _T:
        """What a litre that is drunk costs, per L."""
    @property
    def cost_money_per_us_gal(self) -> _T:
        """What a litre that is drunk costs, per US gal."""
    @property
    def spent_money(self) -> _T:
        """What is spent in all."""

class PackagingCost(Result[_T]):
    """What a litre costs that is drunk from bottles and from a keg, of the first batch and over several, by prices of one's own; of the drink itself only what is lost counts."""

    @property
    def bottles_first(self) -> PackagingCostBottlesFirst[_T]: ...
    @property
    def keg_first(self) -> PackagingCostKegFirst[_T]: ...
    @property
    def bottles(self) -> PackagingCostBottles[_T]: ...
    @property
    def keg(self) -> PackagingCostKeg[_T]: ...

class _PackagingCostInputs(TypedDict, Generic[_N], total=False):
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    bottle_l: _N | None
    bottle_ml: _N | None
    bottle_us_gal: _N | None
    bottle_imp_gal: _N | None
    bottle_us_fl_oz: _N | None
    bottling_outfit_money: _N | None
    bottle_money: _N | None
    cap_money: _N | None
    sugar_money_per_kg: _N | None
    sugar_money_per_lb: _N | None
    uses_count: _N | None
    bottle_loss_percent: _N | None
    outfit_money: _N | None
    gas_money_per_kg: _N | None
    gas_money_per_lb: _N | None
    keg_loss_percent: _N | None
    drink_money_per_l: _N | None
    drink_money_per_us_gal: _N | None
    mass_g: _N | None
    mass_kg: _N | None
    mass_oz: _N | None
    mass_lb: _N | None
    gas_g: _N | None
    gas_kg: _N | None
    gas_oz: _N | None
    gas_lb: _N | None
    batches_count: _N | None
    errors: Literal["raise", "nan"]

@overload
def packaging_cost(**given: Unpack[_PackagingCostInputs[float]]) -> PackagingCost[float]:
    """What a litre costs that is drunk from bottles and from a keg, of the first batch and over several, by prices of one's own; of the drink itself only what is lost counts.

    Parameters
    ----------
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required.
    bottle_l, bottle_ml, bottle_us_gal, bottle_imp_gal, bottle_us_fl_oz : float or array, optional
        Drink that goes into one bottle. From 0.01 to 100 in ``bottle_l``. Default: 0.5 L.
    bottling_outfit_money : float or array, optional
        Price of everything that bottling needs and kegging does not, without the bottles. From 0 to 1e+09 in
        ``bottling_outfit_money``. Default: 0.
    bottle_money : float or array, optional
        Price of one empty bottle. From 0 to 1e+09 in ``bottle_money``. Default: 0.
    cap_money : float or array, optional
        Price of one cap. From 0 to 1e+09 in ``cap_money``. Default: 0.
    sugar_money_per_kg, sugar_money_per_lb : float or array, optional
        Price of the priming sugar. From 0 to 1e+09 in ``sugar_money_per_kg``. Default: 0.
    uses_count : float or array, optional
        How often a bottle is used before it is lost or broken. From 1 to 100000 in ``uses_count``. Default:
        10.
    bottle_loss_percent : float or array, optional
        Drink lost in bottling, percent. From 0 to 100 in ``bottle_loss_percent``. Default: 3 %.
    outfit_money : float or array, optional
        Price of everything that kegging needs and bottling does not. From 0 to 1e+09 in ``outfit_money``.
        Default: 0.
    gas_money_per_kg, gas_money_per_lb : float or array, optional
        Price of CO2. From 0 to 1e+09 in ``gas_money_per_kg``. Default: 0.
    keg_loss_percent : float or array, optional
        Drink lost in kegging and in the line, percent. From 0 to 100 in ``keg_loss_percent``. Default: 3 %.
    drink_money_per_l, drink_money_per_us_gal : float or array, optional
        What the drink itself costs. From 0 to 1e+09 in ``drink_money_per_l``. Default: 0.
    mass_g, mass_kg, mass_oz, mass_lb : float or array, optional
        Mass of sugar, or of what is added, as sold. From 0 to 1e+09 in ``mass_g``. Default: 0.
    gas_g, gas_kg, gas_oz, gas_lb : float or array, optional
        Mass of CO2. From 0 to 1e+09 in ``gas_g``. Default: 0.
    batches_count : float or array, optional
        How many batches are looked at. From 1 to 100000 in ``batches_count``. Default: 10.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    PackagingCost
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.packaging_cost(
    ...     packaged_l=19,
    ...     bottle_money=0.6,
    ...     cap_money=0.04,
    ...     outfit_money=320,
    ...     gas_g=140,
    ...     gas_money_per_kg=4,
    ...     batches_count=12,
    ... ).bottles_first.cost_money_per_l
    1.3195876288659796
    """
@overload
def packaging_cost(**given: Unpack[_PackagingCostInputs[Numbers]]) -> PackagingCost[NDArray[np.float64]]: ...
@overload
def packaging_cost(**given: Unpack[_PackagingCostInputs[Container]]) -> PackagingCost[Any]: ...

class BreakEven(Result[_T]):
    """The batch at which kegging will have cost no more than bottling, fractions and all, by prices of one's own; 1 where it does from the first."""

    @property
    def batches_count(self) -> _T:
        """How many batches are looked at."""

class _BreakEvenInputs(TypedDict, Generic[_N], total=False):
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    bottle_l: _N | None
    bottle_ml: _N | None
    bottle_us_gal: _N | None
    bottle_imp_gal: _N | None
    bottle_us_fl_oz: _N | None
    bottling_outfit_money: _N | None
    bottle_money: _N | None
    cap_money: _N | None
    sugar_money_per_kg: _N | None
    sugar_money_per_lb: _N | None
    uses_count: _N | None
    bottle_loss_percent: _N | None
    outfit_money: _N | None
    gas_money_per_kg: _N | None
    gas_money_per_lb: _N | None
    keg_loss_percent: _N | None
    drink_money_per_l: _N | None
    drink_money_per_us_gal: _N | None
    mass_g: _N | None
    mass_kg: _N | None
    mass_oz: _N | None
    mass_lb: _N | None
    gas_g: _N | None
    gas_kg: _N | None
    gas_oz: _N | None
    gas_lb: _N | None
    errors: Literal["raise", "nan"]

@overload
def break_even(**given: Unpack[_BreakEvenInputs[float]]) -> BreakEven[float]:
    """The batch at which kegging will have cost no more than bottling, fractions and all, by prices of one's own; 1 where it does from the first.

    Parameters
    ----------
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required.
    bottle_l, bottle_ml, bottle_us_gal, bottle_imp_gal, bottle_us_fl_oz : float or array, optional
        Drink that goes into one bottle. From 0.01 to 100 in ``bottle_l``. Default: 0.5 L.
    bottling_outfit_money : float or array, optional
        Price of everything that bottling needs and kegging does not, without the bottles. From 0 to 1e+09 in
        ``bottling_outfit_money``. Default: 0.
    bottle_money : float or array, optional
        Price of one empty bottle. From 0 to 1e+09 in ``bottle_money``. Default: 0.
    cap_money : float or array, optional
        Price of one cap. From 0 to 1e+09 in ``cap_money``. Default: 0.
    sugar_money_per_kg, sugar_money_per_lb : float or array, optional
        Price of the priming sugar. From 0 to 1e+09 in ``sugar_money_per_kg``. Default: 0.
    uses_count : float or array, optional
        How often a bottle is used before it is lost or broken. From 1 to 100000 in ``uses_count``. Default:
        10.
    bottle_loss_percent : float or array, optional
        Drink lost in bottling, percent. From 0 to 100 in ``bottle_loss_percent``. Default: 3 %.
    outfit_money : float or array, optional
        Price of everything that kegging needs and bottling does not. From 0 to 1e+09 in ``outfit_money``.
        Default: 0.
    gas_money_per_kg, gas_money_per_lb : float or array, optional
        Price of CO2. From 0 to 1e+09 in ``gas_money_per_kg``. Default: 0.
    keg_loss_percent : float or array, optional
        Drink lost in kegging and in the line, percent. From 0 to 100 in ``keg_loss_percent``. Default: 3 %.
    drink_money_per_l, drink_money_per_us_gal : float or array, optional
        What the drink itself costs. From 0 to 1e+09 in ``drink_money_per_l``. Default: 0.
    mass_g, mass_kg, mass_oz, mass_lb : float or array, optional
        Mass of sugar, or of what is added, as sold. From 0 to 1e+09 in ``mass_g``. Default: 0.
    gas_g, gas_kg, gas_oz, gas_lb : float or array, optional
        Mass of CO2. From 0 to 1e+09 in ``gas_g``. Default: 0.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    BreakEven
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.break_even(
    ...     packaged_l=19,
    ...     bottle_money=0.6,
    ...     cap_money=0.04,
    ...     sugar_money_per_kg=2,
    ...     mass_g=116,
    ...     outfit_money=320,
    ...     gas_g=140,
    ...     gas_money_per_kg=4,
    ... ).batches_count
    92.16589861751152
    """
@overload
def break_even(**given: Unpack[_BreakEvenInputs[Numbers]]) -> BreakEven[NDArray[np.float64]]: ...
@overload
def break_even(**given: Unpack[_BreakEvenInputs[Container]]) -> BreakEven[Any]: ...

class UptakeRateExpected(Part[_T]):
    @property
    def kla_per_h(self) -> _T:
        """Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/h."""
    @property
    def kla_per_d(self) -> _T:
        """Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/d."""

class UptakeRateLeast(Part[_T]):
    @property
    def kla_per_h(self) -> _T:
        """Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/h."""
    @property
    def kla_per_d(self) -> _T:
        """Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/d."""

class UptakeRateMost(Part[_T]):
    @property
    def kla_per_h(self) -> _T:
        """Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/h."""
    @property
    def kla_per_d(self) -> _T:
        """Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/d."""

class UptakeRate(Result[_T]):
    """Rate at which a drink comes to equilibrium with CO2 over it: the share of the gap that closes in an hour, as expected, at the slow end (least) and at the fast end (most) of what the method does."""

    @property
    def expected(self) -> UptakeRateExpected[_T]: ...
    @property
    def least(self) -> UptakeRateLeast[_T]: ...
    @property
    def most(self) -> UptakeRateMost[_T]: ...

class _UptakeRateInputs(TypedDict, Generic[_N], total=False):
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    keg_diameter_m: _N | None
    keg_diameter_ft: _N | None
    kla_per_h: _N | None
    kla_per_d: _N | None
    errors: Literal["raise", "nan"]

@overload
def uptake_rate(**given: Unpack[_UptakeRateInputs[float]]) -> UptakeRate[float]:
    """Rate at which a drink comes to equilibrium with CO2 over it: the share of the gap that closes in an hour, as expected, at the slow end (least) and at the fast end (most) of what the method does.

    Parameters
    ----------
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    method : {"still", "dip_tube", "on_side", "stone", "rocked"}, optional
        How the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or
        rocked. Default: still.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Default: 18.93 L, a full keg of five US gallons.
    keg_diameter_m, keg_diameter_ft : float or array, optional
        Inner diameter of the keg or tank. From 0.02 to 20 in ``keg_diameter_m``. Default: 0.215 m, that of
        the usual 19 L keg.
    kla_per_h, kla_per_d : float or array, optional
        Share of the gap to equilibrium that closes in a time: first-order rate of uptake. From 3.6e-06 to 360
        in ``kla_per_h``. Default: that of the method; it is taken as it is, at every temperature.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    UptakeRate
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.uptake_rate(temperature_f=38, packaged_us_gal=5).expected.kla_per_h
    0.01486756373996831
    """
@overload
def uptake_rate(**given: Unpack[_UptakeRateInputs[Numbers]]) -> UptakeRate[NDArray[np.float64]]: ...
@overload
def uptake_rate(**given: Unpack[_UptakeRateInputs[Container]]) -> UptakeRate[Any]: ...

class CarbonationTimeExpected(Part[_T]):
    @property
    def time_h(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_d(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_min(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min."""
    @property
    def time_s(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""

class CarbonationTimeSoonest(Part[_T]):
    @property
    def time_h(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_d(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_min(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min."""
    @property
    def time_s(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""

class CarbonationTimeLatest(Part[_T]):
    @property
    def time_h(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_d(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_min(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min."""
    @property
    def time_s(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""

class CarbonationTime(Result[_T]):
    """Time under a constant pressure of CO2 until a drink holds a carbonation, upward or, in a vented keg, downward: as expected, at the soonest and at the latest. Confirm it by tasting."""

    @property
    def expected(self) -> CarbonationTimeExpected[_T]: ...
    @property
    def soonest(self) -> CarbonationTimeSoonest[_T]: ...
    @property
    def latest(self) -> CarbonationTimeLatest[_T]: ...

class _CarbonationTimeInputs(TypedDict, Generic[_N], total=False):
    start_co2_g_per_l: _N | None
    start_volumes: _N | None
    co2_g_per_l: _N | None
    volumes: _N | None
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    supply_g_per_h: _N | None
    supply_oz_per_h: _N | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    keg_diameter_m: _N | None
    keg_diameter_ft: _N | None
    kla_per_h: _N | None
    kla_per_d: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def carbonation_time(**given: Unpack[_CarbonationTimeInputs[float]]) -> CarbonationTime[float]:
    """Time under a constant pressure of CO2 until a drink holds a carbonation, upward or, in a vented keg, downward: as expected, at the soonest and at the latest. Confirm it by tasting.

    Parameters
    ----------
    start_co2_g_per_l, start_volumes : float or array, optional
        CO2 in the drink at the start. From 0 to 30 in ``start_co2_g_per_l``. Required.
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    supply_g_per_h, supply_oz_per_h : float or array, optional
        The most CO2 that the regulator lets through. From 0.0036 to 3.6e+06 in ``supply_g_per_h``. Default:
        no limit.
    method : {"still", "dip_tube", "on_side", "stone", "rocked"}, optional
        How the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or
        rocked. Default: still.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Default: 18.93 L, a full keg of five US gallons.
    keg_diameter_m, keg_diameter_ft : float or array, optional
        Inner diameter of the keg or tank. From 0.02 to 20 in ``keg_diameter_m``. Default: 0.215 m, that of
        the usual 19 L keg.
    kla_per_h, kla_per_d : float or array, optional
        Share of the gap to equilibrium that closes in a time: first-order rate of uptake. From 3.6e-06 to 360
        in ``kla_per_h``. Default: that of the method; it is taken as it is, at every temperature.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    CarbonationTime
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.carbonation_time(
    ...     start_volumes=0.85,
    ...     volumes=2.4,
    ...     gauge_psi=11.2,
    ...     temperature_f=38,
    ...     altitude_m=0,
    ... ).expected.time_h
    189.45310159325976
    """
@overload
def carbonation_time(**given: Unpack[_CarbonationTimeInputs[Numbers]]) -> CarbonationTime[NDArray[np.float64]]: ...
@overload
def carbonation_time(**given: Unpack[_CarbonationTimeInputs[Container]]) -> CarbonationTime[Any]: ...

class CarbonationProgressExpected(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class CarbonationProgressLeast(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class CarbonationProgressMost(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class CarbonationProgressEnd(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class CarbonationProgress(Result[_T]):
    """CO2 in a drink after a time under a constant pressure of CO2: as expected, the least and the most; and what it would end at."""

    @property
    def expected(self) -> CarbonationProgressExpected[_T]: ...
    @property
    def least(self) -> CarbonationProgressLeast[_T]: ...
    @property
    def most(self) -> CarbonationProgressMost[_T]: ...
    @property
    def end(self) -> CarbonationProgressEnd[_T]: ...

class _CarbonationProgressInputs(TypedDict, Generic[_N], total=False):
    start_co2_g_per_l: _N | None
    start_volumes: _N | None
    time_h: _N | None
    time_d: _N | None
    time_min: _N | None
    time_s: _N | None
    gauge_kpa: _N | None
    gauge_bar: _N | None
    gauge_psi: _N | None
    gauge_pa: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    supply_g_per_h: _N | None
    supply_oz_per_h: _N | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    keg_diameter_m: _N | None
    keg_diameter_ft: _N | None
    kla_per_h: _N | None
    kla_per_d: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def carbonation_progress(**given: Unpack[_CarbonationProgressInputs[float]]) -> CarbonationProgress[float]:
    """CO2 in a drink after a time under a constant pressure of CO2: as expected, the least and the most; and what it would end at.

    Parameters
    ----------
    start_co2_g_per_l, start_volumes : float or array, optional
        CO2 in the drink at the start. From 0 to 30 in ``start_co2_g_per_l``. Required.
    time_h, time_d, time_min, time_s : float or array, optional
        Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell
        or step at one temperature. From 0 to 44444.4 in ``time_h``. Required.
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float or array, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    supply_g_per_h, supply_oz_per_h : float or array, optional
        The most CO2 that the regulator lets through. From 0.0036 to 3.6e+06 in ``supply_g_per_h``. Default:
        no limit.
    method : {"still", "dip_tube", "on_side", "stone", "rocked"}, optional
        How the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or
        rocked. Default: still.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Default: 18.93 L, a full keg of five US gallons.
    keg_diameter_m, keg_diameter_ft : float or array, optional
        Inner diameter of the keg or tank. From 0.02 to 20 in ``keg_diameter_m``. Default: 0.215 m, that of
        the usual 19 L keg.
    kla_per_h, kla_per_d : float or array, optional
        Share of the gap to equilibrium that closes in a time: first-order rate of uptake. From 3.6e-06 to 360
        in ``kla_per_h``. Default: that of the method; it is taken as it is, at every temperature.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    CarbonationProgress
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.carbonation_progress(
    ...     start_volumes=0.85,
    ...     time_d=7,
    ...     gauge_psi=11.2,
    ...     temperature_f=38,
    ...     altitude_m=0,
    ... ).expected.co2_g_per_l
    4.67108016748109
    """
@overload
def carbonation_progress(**given: Unpack[_CarbonationProgressInputs[Numbers]]) -> CarbonationProgress[NDArray[np.float64]]: ...
@overload
def carbonation_progress(**given: Unpack[_CarbonationProgressInputs[Container]]) -> CarbonationProgress[Any]: ...

class BurstTimeStop(Part[_T]):
    @property
    def time_h(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_d(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_min(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min."""
    @property
    def time_s(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""

class BurstTimeExpected(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class BurstTimeLeast(Part[_T]):
    @property
    def co2_g_per_l(self) -> _T:
        """CO2 per litre of drink, g/L."""
    @property
    def volumes(self) -> _T:
        """CO2 per litre of drink, vol."""

class BurstTimeHold(Part[_T]):
    @property
    def gauge_kpa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, kPa."""
    @property
    def gauge_bar(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, bar."""
    @property
    def gauge_psi(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, psi."""
    @property
    def gauge_pa(self) -> _T:
        """Pressure above the air outside, total of the gas over the drink, Pa."""

class BurstTimeRest(Part[_T]):
    @property
    def time_h(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_d(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_min(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min."""
    @property
    def time_s(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""

class BurstTimeLatestRest(Part[_T]):
    @property
    def time_h(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_d(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""
    @property
    def time_min(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min."""
    @property
    def time_s(self) -> _T:
        """Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature."""

class BurstTime(Result[_T]):
    """When to end a burst of high pressure so that the target is not passed even at the fast end of the rate; what the drink then holds as expected and at least; the pressure that holds the target; and how long that takes, as expected and at the latest, until no more than 0.1 volumes are missing."""

    @property
    def stop(self) -> BurstTimeStop[_T]: ...
    @property
    def expected(self) -> BurstTimeExpected[_T]: ...
    @property
    def least(self) -> BurstTimeLeast[_T]: ...
    @property
    def hold(self) -> BurstTimeHold[_T]: ...
    @property
    def rest(self) -> BurstTimeRest[_T]: ...
    @property
    def latest_rest(self) -> BurstTimeLatestRest[_T]: ...

class _BurstTimeInputs(TypedDict, Generic[_N], total=False):
    start_co2_g_per_l: _N | None
    start_volumes: _N | None
    co2_g_per_l: _N | None
    volumes: _N | None
    burst_gauge_kpa: _N | None
    burst_gauge_bar: _N | None
    burst_gauge_psi: _N | None
    burst_gauge_pa: _N | None
    temperature_c: _N | None
    temperature_f: _N | None
    temperature_k: _N | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    packaged_l: _N | None
    packaged_ml: _N | None
    packaged_us_gal: _N | None
    packaged_imp_gal: _N | None
    packaged_us_fl_oz: _N | None
    keg_diameter_m: _N | None
    keg_diameter_ft: _N | None
    kla_per_h: _N | None
    kla_per_d: _N | None
    altitude_m: _N | None
    altitude_ft: _N | None
    ambient_kpa: _N | None
    ambient_bar: _N | None
    ambient_psi: _N | None
    ambient_pa: _N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: _N | None
    extract_g_per_l: _N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def burst_time(**given: Unpack[_BurstTimeInputs[float]]) -> BurstTime[float]:
    """When to end a burst of high pressure so that the target is not passed even at the fast end of the rate; what the drink then holds as expected and at least; the pressure that holds the target; and how long that takes, as expected and at the latest, until no more than 0.1 volumes are missing.

    Parameters
    ----------
    start_co2_g_per_l, start_volumes : float or array, optional
        CO2 in the drink at the start. From 0 to 30 in ``start_co2_g_per_l``. Required.
    co2_g_per_l, volumes : float or array, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    burst_gauge_kpa, burst_gauge_bar, burst_gauge_psi, burst_gauge_pa : float or array, optional
        High pressure, above the air outside, with which carbonation is started. From 0 to 3000 in
        ``burst_gauge_kpa``. Required.
    temperature_c, temperature_f, temperature_k : float or array, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    method : {"still", "dip_tube", "on_side", "stone", "rocked"}, optional
        How the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or
        rocked. Default: still.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Default: 18.93 L, a full keg of five US gallons.
    keg_diameter_m, keg_diameter_ft : float or array, optional
        Inner diameter of the keg or tank. From 0.02 to 20 in ``keg_diameter_m``. Default: 0.215 m, that of
        the usual 19 L keg.
    kla_per_h, kla_per_d : float or array, optional
        Share of the gap to equilibrium that closes in a time: first-order rate of uptake. From 3.6e-06 to 360
        in ``kla_per_h``. Default: that of the method; it is taken as it is, at every temperature.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float or array, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float or array, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    errors : {"raise", "nan"}, optional
        For arrays: whether an element without an answer raises, or is NaN and has a status. NaN stays NaN.

    Returns
    -------
    BurstTime
        Numbers for numbers. Arrays, Series, DataArrays, Dask arrays and quantities come out as what they were.

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, a value outside its range, or where there is no answer.

    Warns
    -----
    CarbWarning
        For arrays, where elements lie outside the range of an equation. (For numbers, see ``cautions``.)

    Examples
    --------
    >>> import carb
    >>> carb.burst_time(
    ...     start_volumes=0.85,
    ...     volumes=2.5,
    ...     burst_gauge_psi=30,
    ...     temperature_f=38,
    ...     altitude_m=0,
    ... ).stop.time_h
    29.65823838451562
    """
@overload
def burst_time(**given: Unpack[_BurstTimeInputs[Numbers]]) -> BurstTime[NDArray[np.float64]]: ...
@overload
def burst_time(**given: Unpack[_BurstTimeInputs[Container]]) -> BurstTime[Any]: ...

class _SolubilityModelsInputs(TypedDict, total=False):
    gauge_kpa: float | None
    gauge_bar: float | None
    gauge_psi: float | None
    gauge_pa: float | None
    abs_kpa: float | None
    abs_bar: float | None
    abs_psi: float | None
    abs_pa: float | None
    co2_g_per_l: float | None
    volumes: float | None
    temperature_c: float | None
    temperature_f: float | None
    temperature_k: float | None
    altitude_m: float | None
    altitude_ft: float | None
    ambient_kpa: float | None
    ambient_bar: float | None
    ambient_psi: float | None
    ambient_pa: float | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None
    basis: Literal["handbook", "physical"] | None
    solubility_multiplier: float | None

class _CarbonationChartInputs(TypedDict, total=False):
    chart: Literal["metric", "us"] | None
    altitude_m: float | None
    altitude_ft: float | None
    ambient_kpa: float | None
    ambient_bar: float | None
    ambient_psi: float | None
    ambient_pa: float | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    co2_percent: float | None
    air_abs_kpa: float | None
    air_abs_bar: float | None
    air_abs_psi: float | None
    air_abs_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None

class _FillListInputs(TypedDict, total=False):
    packaged_l: float | None
    packaged_ml: float | None
    packaged_us_gal: float | None
    packaged_imp_gal: float | None
    packaged_us_fl_oz: float | None
    fill_order: Literal["least_leftover", "fewest_bottles", "fewest_sizes", "as_listed"] | None
    spare_percent: float | None
    headspace_percent: float | None
    bottles: Rows | None

class _BottleDosesInputs(TypedDict, total=False):
    co2_g_per_l: float | None
    volumes: float | None
    tablet_g: float | None
    tablet_kg: float | None
    tablet_oz: float | None
    tablet_lb: float | None
    warmest_c: float | None
    warmest_f: float | None
    warmest_k: float | None
    residual_co2_g_per_l: float | None
    residual_volumes: float | None
    fermenter_gauge_kpa: float | None
    fermenter_gauge_bar: float | None
    fermenter_gauge_psi: float | None
    fermenter_gauge_pa: float | None
    cold_crash: Literal["open", "closed", "co2_supplied"] | None
    crash_c: float | None
    crash_f: float | None
    crash_k: float | None
    fermenter_headspace_percent: float | None
    altitude_m: float | None
    altitude_ft: float | None
    ambient_kpa: float | None
    ambient_bar: float | None
    ambient_psi: float | None
    ambient_pa: float | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None
    sugar_water_percent: float | None
    sugar_sg: float | None
    sugar_fermentable_percent: float | None
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None
    fermentable_g_per_l: float | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    residual_model: Literal["table", "equilibrium"] | None
    yield_percent: float | None
    count_headspace: bool | None
    headspace_percent: float | None
    filling_c: float | None
    filling_f: float | None
    filling_k: float | None
    room_c: float | None
    room_f: float | None
    room_k: float | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    yield_multiplier: float | None
    bottles: Rows | None

class _BottlePressuresInputs(TypedDict, total=False):
    co2_g_per_l: float | None
    volumes: float | None
    bottle_class: Literal["light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne", "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"] | None
    rating_gauge_kpa: float | None
    rating_gauge_bar: float | None
    rating_gauge_psi: float | None
    rating_gauge_pa: float | None
    headspace_percent: float | None
    filling_c: float | None
    filling_f: float | None
    filling_k: float | None
    altitude_m: float | None
    altitude_ft: float | None
    ambient_kpa: float | None
    ambient_bar: float | None
    ambient_psi: float | None
    ambient_pa: float | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None
    fermentable_g_per_l: float | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    yield_percent: float | None
    solubility_multiplier: float | None
    yield_multiplier: float | None

class _BottleVerdictsInputs(TypedDict, total=False):
    co2_g_per_l: float | None
    volumes: float | None
    hot_day_c: float | None
    hot_day_f: float | None
    hot_day_k: float | None
    headspace_percent: float | None
    filling_c: float | None
    filling_f: float | None
    filling_k: float | None
    altitude_m: float | None
    altitude_ft: float | None
    ambient_kpa: float | None
    ambient_bar: float | None
    ambient_psi: float | None
    ambient_pa: float | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None
    fermentable_g_per_l: float | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    yield_percent: float | None
    solubility_multiplier: float | None
    yield_multiplier: float | None

class _PressurePartsInputs(TypedDict, total=False):
    co2_g_per_l: float | None
    volumes: float | None
    temperature_c: float | None
    temperature_f: float | None
    temperature_k: float | None
    headspace_percent: float | None
    filling_c: float | None
    filling_f: float | None
    filling_k: float | None
    altitude_m: float | None
    altitude_ft: float | None
    ambient_kpa: float | None
    ambient_bar: float | None
    ambient_psi: float | None
    ambient_pa: float | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None
    fermentable_g_per_l: float | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    yield_percent: float | None
    solubility_multiplier: float | None
    yield_multiplier: float | None

class _ConditioningDaysInputs(TypedDict, total=False):
    room_c: float | None
    room_f: float | None
    room_k: float | None
    yeast_million_per_ml: float | None
    age_h: float | None
    age_d: float | None
    age_min: float | None
    age_s: float | None
    filtered: bool | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    history: Rows | None

class _CarbonationCurveInputs(TypedDict, total=False):
    start_co2_g_per_l: float | None
    start_volumes: float | None
    gauge_kpa: float | None
    gauge_bar: float | None
    gauge_psi: float | None
    gauge_pa: float | None
    temperature_c: float | None
    temperature_f: float | None
    temperature_k: float | None
    supply_g_per_h: float | None
    supply_oz_per_h: float | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    packaged_l: float | None
    packaged_ml: float | None
    packaged_us_gal: float | None
    packaged_imp_gal: float | None
    packaged_us_fl_oz: float | None
    keg_diameter_m: float | None
    keg_diameter_ft: float | None
    kla_per_h: float | None
    kla_per_d: float | None
    altitude_m: float | None
    altitude_ft: float | None
    ambient_kpa: float | None
    ambient_bar: float | None
    ambient_psi: float | None
    ambient_pa: float | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None

class _CarbonationScheduleInputs(TypedDict, total=False):
    start_co2_g_per_l: float | None
    start_volumes: float | None
    supply_g_per_h: float | None
    supply_oz_per_h: float | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    packaged_l: float | None
    packaged_ml: float | None
    packaged_us_gal: float | None
    packaged_imp_gal: float | None
    packaged_us_fl_oz: float | None
    keg_diameter_m: float | None
    keg_diameter_ft: float | None
    kla_per_h: float | None
    kla_per_d: float | None
    altitude_m: float | None
    altitude_ft: float | None
    ambient_kpa: float | None
    ambient_bar: float | None
    ambient_psi: float | None
    ambient_pa: float | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    schedule: Rows | None

class _UptakeFitInputs(TypedDict, total=False):
    start_co2_g_per_l: float | None
    start_volumes: float | None
    gauge_kpa: float | None
    gauge_bar: float | None
    gauge_psi: float | None
    gauge_pa: float | None
    temperature_c: float | None
    temperature_f: float | None
    temperature_k: float | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    packaged_l: float | None
    packaged_ml: float | None
    packaged_us_gal: float | None
    packaged_imp_gal: float | None
    packaged_us_fl_oz: float | None
    keg_diameter_m: float | None
    keg_diameter_ft: float | None
    altitude_m: float | None
    altitude_ft: float | None
    ambient_kpa: float | None
    ambient_bar: float | None
    ambient_psi: float | None
    ambient_pa: float | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    uptake_readings: Rows | None

class _LineBalanceInputs(TypedDict, total=False):
    gauge_kpa: float | None
    gauge_bar: float | None
    gauge_psi: float | None
    gauge_pa: float | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    bore_mm: float | None
    bore_in: float | None
    flow_l_per_min: float | None
    flow_us_fl_oz_per_s: float | None
    flow_us_gal_per_min: float | None
    pour_seconds: float | None
    hardware_kpa: float | None
    hardware_bar: float | None
    hardware_psi: float | None
    hardware_pa: float | None
    rise_m: float | None
    rise_ft: float | None
    fittings_multiplier: float | None
    glass_l: float | None
    glass_ml: float | None
    glass_us_gal: float | None
    glass_imp_gal: float | None
    glass_us_fl_oz: float | None
    temperature_c: float | None
    temperature_f: float | None
    temperature_k: float | None
    sg: float | None
    viscosity_multiplier: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None

class _BottlingInputs(TypedDict, total=False):
    title: str | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None
    fermentable_g_per_l: float | None
    yeast: Literal["live", "none"] | None
    microbes: Literal["brewing_yeast", "diastatic", "wild"] | None
    original_sg: float | None
    original_plato: float | None
    current_sg: float | None
    current_plato: float | None
    final_sg: float | None
    final_plato: float | None
    expected_attenuation_percent: float | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    real_extract_model: Literal["balling", "quotient"] | None
    packaged_l: float | None
    packaged_ml: float | None
    packaged_us_gal: float | None
    packaged_imp_gal: float | None
    packaged_us_fl_oz: float | None
    batch_l: float | None
    batch_ml: float | None
    batch_us_gal: float | None
    batch_imp_gal: float | None
    batch_us_fl_oz: float | None
    loss_l: float | None
    loss_ml: float | None
    loss_us_gal: float | None
    loss_imp_gal: float | None
    loss_us_fl_oz: float | None
    co2_g_per_l: float | None
    volumes: float | None
    mass_g: float | None
    mass_kg: float | None
    mass_oz: float | None
    mass_lb: float | None
    warmest_c: float | None
    warmest_f: float | None
    warmest_k: float | None
    residual_co2_g_per_l: float | None
    residual_volumes: float | None
    fermenter_gauge_kpa: float | None
    fermenter_gauge_bar: float | None
    fermenter_gauge_psi: float | None
    fermenter_gauge_pa: float | None
    cold_crash: Literal["open", "closed", "co2_supplied"] | None
    crash_c: float | None
    crash_f: float | None
    crash_k: float | None
    fermenter_headspace_percent: float | None
    filling_c: float | None
    filling_f: float | None
    filling_k: float | None
    cellar_c: float | None
    cellar_f: float | None
    cellar_k: float | None
    room_c: float | None
    room_f: float | None
    room_k: float | None
    hot_day_c: float | None
    hot_day_f: float | None
    hot_day_k: float | None
    pasteurising_c: float | None
    pasteurising_f: float | None
    pasteurising_k: float | None
    altitude_m: float | None
    altitude_ft: float | None
    ambient_kpa: float | None
    ambient_bar: float | None
    ambient_psi: float | None
    ambient_pa: float | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    headspace_percent: float | None
    bottle_class: Literal["light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne", "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"] | None
    rating_gauge_kpa: float | None
    rating_gauge_bar: float | None
    rating_gauge_psi: float | None
    rating_gauge_pa: float | None
    fill_order: Literal["least_leftover", "fewest_bottles", "fewest_sizes", "as_listed"] | None
    spare_percent: float | None
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None
    sugar_water_percent: float | None
    sugar_sg: float | None
    sugar_fermentable_percent: float | None
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None
    syrup_water_l: float | None
    syrup_water_ml: float | None
    syrup_water_us_gal: float | None
    syrup_water_imp_gal: float | None
    syrup_water_us_fl_oz: float | None
    dissolving_c: float | None
    dissolving_f: float | None
    dissolving_k: float | None
    scale_g: float | None
    scale_kg: float | None
    scale_oz: float | None
    scale_lb: float | None
    tablet_g: float | None
    tablet_kg: float | None
    tablet_oz: float | None
    tablet_lb: float | None
    wort_original_sg: float | None
    wort_original_plato: float | None
    wort_current_sg: float | None
    wort_current_plato: float | None
    limit_attenuation_percent: float | None
    wort_co2_g_per_l: float | None
    wort_volumes: float | None
    yeast_million_per_ml: float | None
    age_h: float | None
    age_d: float | None
    age_min: float | None
    age_s: float | None
    filtered: bool | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    residual_model: Literal["table", "equilibrium"] | None
    yield_percent: float | None
    count_headspace: bool | None
    count_syrup: bool | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    yield_multiplier: float | None
    working: bool | None
    bottles: Rows | None
    additions: Rows | None
    readings: Rows | None
    history: Rows | None
    uncertainty: Mapping[str, Doubt] | None

class _KeggingInputs(TypedDict, total=False):
    title: str | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: float | None
    extract_g_per_l: float | None
    fermentable_g_per_l: float | None
    yeast: Literal["live", "none"] | None
    original_sg: float | None
    original_plato: float | None
    current_sg: float | None
    current_plato: float | None
    final_sg: float | None
    final_plato: float | None
    expected_attenuation_percent: float | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    real_extract_model: Literal["balling", "quotient"] | None
    packaged_l: float | None
    packaged_ml: float | None
    packaged_us_gal: float | None
    packaged_imp_gal: float | None
    packaged_us_fl_oz: float | None
    batch_l: float | None
    batch_ml: float | None
    batch_us_gal: float | None
    batch_imp_gal: float | None
    batch_us_fl_oz: float | None
    loss_l: float | None
    loss_ml: float | None
    loss_us_gal: float | None
    loss_imp_gal: float | None
    loss_us_fl_oz: float | None
    co2_g_per_l: float | None
    volumes: float | None
    warmest_c: float | None
    warmest_f: float | None
    warmest_k: float | None
    residual_co2_g_per_l: float | None
    residual_volumes: float | None
    fermenter_gauge_kpa: float | None
    fermenter_gauge_bar: float | None
    fermenter_gauge_psi: float | None
    fermenter_gauge_pa: float | None
    cold_crash: Literal["open", "closed", "co2_supplied"] | None
    crash_c: float | None
    crash_f: float | None
    crash_k: float | None
    fermenter_headspace_percent: float | None
    start_co2_g_per_l: float | None
    start_volumes: float | None
    serving_c: float | None
    serving_f: float | None
    serving_k: float | None
    hot_day_c: float | None
    hot_day_f: float | None
    hot_day_k: float | None
    room_c: float | None
    room_f: float | None
    room_k: float | None
    altitude_m: float | None
    altitude_ft: float | None
    ambient_kpa: float | None
    ambient_bar: float | None
    ambient_psi: float | None
    ambient_pa: float | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    keg_l: float | None
    keg_ml: float | None
    keg_us_gal: float | None
    keg_imp_gal: float | None
    keg_us_fl_oz: float | None
    keg_diameter_m: float | None
    keg_diameter_ft: float | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    co2_percent: float | None
    air_abs_kpa: float | None
    air_abs_bar: float | None
    air_abs_psi: float | None
    air_abs_pa: float | None
    purge: Literal["none", "headspace", "empty", "push"] | None
    purge_gauge_kpa: float | None
    purge_gauge_bar: float | None
    purge_gauge_psi: float | None
    purge_gauge_pa: float | None
    cycles_count: float | None
    oxygen_ppm: float | None
    oxygen_vol_percent: float | None
    start_oxygen_ppm: float | None
    start_oxygen_vol_percent: float | None
    gas_oxygen_ppm: float | None
    gas_oxygen_vol_percent: float | None
    pocket_l: float | None
    pocket_ml: float | None
    pocket_us_gal: float | None
    pocket_imp_gal: float | None
    pocket_us_fl_oz: float | None
    push_gauge_kpa: float | None
    push_gauge_bar: float | None
    push_gauge_psi: float | None
    push_gauge_pa: float | None
    dissolved_oxygen_ug_per_l: float | None
    dissolved_oxygen_ppb: float | None
    dissolved_oxygen_mg_per_l: float | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    kla_per_h: float | None
    kla_per_d: float | None
    supply_g_per_h: float | None
    supply_oz_per_h: float | None
    burst_gauge_kpa: float | None
    burst_gauge_bar: float | None
    burst_gauge_psi: float | None
    burst_gauge_pa: float | None
    depth_m: float | None
    depth_ft: float | None
    wetting_kpa: float | None
    wetting_bar: float | None
    wetting_psi: float | None
    wetting_pa: float | None
    margin_kpa: float | None
    margin_bar: float | None
    margin_psi: float | None
    margin_pa: float | None
    cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None
    charge_g: float | None
    charge_kg: float | None
    charge_oz: float | None
    charge_lb: float | None
    gas_loss_percent: float | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    bore_mm: float | None
    bore_in: float | None
    line_m: float | None
    line_ft: float | None
    rise_m: float | None
    rise_ft: float | None
    fittings_multiplier: float | None
    hardware_kpa: float | None
    hardware_bar: float | None
    hardware_psi: float | None
    hardware_pa: float | None
    flow_l_per_min: float | None
    flow_us_fl_oz_per_s: float | None
    flow_us_gal_per_min: float | None
    pour_seconds: float | None
    glass_l: float | None
    glass_ml: float | None
    glass_us_gal: float | None
    glass_imp_gal: float | None
    glass_us_fl_oz: float | None
    viscosity_multiplier: float | None
    fill_method: Literal["automatic", "counter_pressure_line", "hand_counter_pressure", "tap_tube", "tilted_glass"] | None
    fill_loss_co2_g_per_l: float | None
    fill_loss_volumes: float | None
    released_g: float | None
    released_kg: float | None
    released_oz: float | None
    released_lb: float | None
    room_m3: float | None
    room_ft3: float | None
    air_changes_per_h: float | None
    air_changes_per_d: float | None
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None
    sugar_water_percent: float | None
    sugar_sg: float | None
    sugar_fermentable_percent: float | None
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None
    bottle_l: float | None
    bottle_ml: float | None
    bottle_us_gal: float | None
    bottle_imp_gal: float | None
    bottle_us_fl_oz: float | None
    bottling_outfit_money: float | None
    bottle_money: float | None
    cap_money: float | None
    sugar_money_per_kg: float | None
    sugar_money_per_lb: float | None
    uses_count: float | None
    bottle_loss_percent: float | None
    outfit_money: float | None
    gas_money_per_kg: float | None
    gas_money_per_lb: float | None
    keg_loss_percent: float | None
    drink_money_per_l: float | None
    drink_money_per_us_gal: float | None
    batches_count: float | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    residual_model: Literal["table", "equilibrium"] | None
    yield_percent: float | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    yield_multiplier: float | None
    working: bool | None
    readings: Rows | None
    uncertainty: Mapping[str, Doubt] | None

def solubility_models(**given: Unpack[_SolubilityModelsInputs]) -> Table:
    """What every solubility model made for a drink says of one state, given by a pressure or by a carbonation;
    the model of the basis first.

    Parameters
    ----------
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required: this, or another state.
    abs_kpa, abs_bar, abs_psi, abs_pa : float, optional
        Pressure above vacuum, total of the gas over the drink. From 0 to 3000 in ``abs_kpa``. Required: this,
        or another state.
    co2_g_per_l, volumes : float, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required: this, or another state.
    temperature_c, temperature_f, temperature_k : float, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    altitude_m, altitude_ft : float, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Default: needed with a gauge pressure, unless ambient is given.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Default: needed with a gauge pressure, unless altitude is given.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.

    Returns
    -------
    Table
        The columns:

        - ``model``: name of the model
        - ``title``: the model in words
        - ``co2_g_per_l`` (g/L), ``volumes`` (vol): CO2 in the drink
        - ``abs_kpa`` (kPa), ``abs_bar`` (bar), ``abs_psi`` (psi): total pressure over it, above vacuum
        - ``gauge_kpa`` (kPa), ``gauge_bar`` (bar), ``gauge_psi`` (psi): the same above the air outside, where
          that is known
        - ``uncertainty_percent`` (%): uncertainty of the model for this drink, k = 2, of the CO2; judgement;
          missing outside its range
        - ``within_range``: whether the state lies where the model holds
        - ``default``: whether the basis takes this model for this drink
        - ``refused``: name of the error where the model has no answer; empty where it has one

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> carb.solubility_models(volumes=2.5, temperature_f=38, altitude_m=0).column("model")
    ('chart_fit', 'chart_quadratic', 'european', 'water_core')
    """

def carbonation_chart(**given: Unpack[_CarbonationChartInputs]) -> Table:
    """CO2 in a drink by temperature and regulator pressure, for the air outside, the drink and the gas of the
    request: 0 to 15 °C and 0.2 to 2.4 bar, or 30 to 60 °F and 4 to 34 psi. Where the model has no answer, the
    row is left out.

    Parameters
    ----------
    chart : {"metric", "us"}, optional
        In which units a chart is laid out: metric (°C and bar) or us (°F and psi). Default: metric.
    altitude_m, altitude_ft : float, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    co2_percent : float, optional
        CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen. From 1 to 100 in
        ``co2_percent``. Default: 100 %: CO2 and nothing else.
    air_abs_kpa, air_abs_bar, air_abs_psi, air_abs_pa : float, optional
        Partial pressure of air, or of nitrogen, that stays in the headspace: that of the air outside where it
        was not purged at all. From 0 to 3000 in ``air_abs_kpa``. Default: 0: purged, or driven out.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.

    Returns
    -------
    Table
        The columns:

        - ``c`` (°C), ``f`` (°F): temperature of the drink
        - ``gauge_kpa`` (kPa), ``gauge_bar`` (bar), ``gauge_psi`` (psi): regulator pressure, above the air
          outside
        - ``co2_g_per_l`` (g/L), ``volumes`` (vol): CO2 in the drink at equilibrium

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> len(carb.carbonation_chart(chart="us", altitude_m=0))
    256
    """

def fill_list(**given: Unpack[_FillListInputs]) -> Table:
    """Which bottles to fill, and how many: the exact optimum over the bottles at hand, in tenths of a
    millilitre.

    Parameters
    ----------
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required.
    fill_order : {"least_leftover", "fewest_bottles", "fewest_sizes", "as_listed"}, optional
        What comes first in choosing bottles: least_leftover, fewest_bottles, fewest_sizes (the other two
        settle ties), or as_listed (the bottles in the order of their list). Default: least_leftover.
    spare_percent : float, optional
        Bottles to wash beyond those to fill, in percent of them. From 0 to 100 in ``spare_percent``. Default:
        5 %.
    headspace_percent : float, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the drink, where no capacity is given.
    bottles : sequence of mappings, optional
        The bottles at hand: a row for each kind. A row has:

        - ``bottle_l``, ``bottle_ml``, ``bottle_us_gal``, ``bottle_imp_gal``, ``bottle_us_fl_oz``: Drink that
          goes into one bottle. From 0.01 to 100 in ``bottle_l``. Required.
        - ``count``: How many there are. From 0 to 100000 in ``count``. Required.
        - ``bottle_class`` ("light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne",
          "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"): Class of the
          bottle: see the table bottle_classes. Default: that of the request; light one-way and heavier reusable
          bottles are both looked at.
        - ``capacity_l``, ``capacity_ml``, ``capacity_us_gal``, ``capacity_imp_gal``, ``capacity_us_fl_oz``:
          What one bottle holds, filled to the brim. From 0.01 to 120 in ``capacity_l``. Default: what the
          headspace leaves.
        - ``rating_gauge_kpa``, ``rating_gauge_bar``, ``rating_gauge_psi``, ``rating_gauge_pa``: Pressure
          above the air outside for which the maker rates the bottle. From 0 to 3000 in ``rating_gauge_kpa``.
          Default: no rating is known.

        A data frame, or a mapping of columns, holds rows too.

    Returns
    -------
    Table
        The columns:

        - ``bottle_class``: class of the bottle, where it was told
        - ``bottle_l`` (L), ``bottle_us_gal`` (US gal): drink that goes into one
        - ``count``: how many are at hand
        - ``filled_count``: how many to fill
        - ``washed_count``: how many to wash, spares included
        - ``gas_l`` (L), ``gas_us_gal`` (US gal): gas over the drink in each
        - ``headspace_percent`` (%): the same in percent of the drink
        - ``leftover_l`` (L), ``leftover_us_gal`` (US gal): drink that stays over, of the whole batch

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> carb.fill_list(
    ...     packaged_l=19.2,
    ...     bottles=[{"bottle_ml": 500, "count": 24}, {"bottle_ml": 330, "count": 40}],
    ... ).column("count")
    (24, 40)
    """

def bottle_doses(**given: Unpack[_BottleDosesInputs]) -> Table:
    """Priming sugar for one bottle, by size, and the whole number of tablets that comes nearest, with the
    carbonation that they make; the usual sizes where no bottles are listed.

    Parameters
    ----------
    co2_g_per_l, volumes : float, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    tablet_g, tablet_kg, tablet_oz, tablet_lb : float, optional
        Mass of one carbonation tablet. From 0.01 to 100 in ``tablet_g``. Default: no tablets.
    warmest_c, warmest_f, warmest_k : float, optional
        Highest temperature of the drink since active fermentation. From 0 to 45 in ``warmest_c``. Default:
        needed, unless the residual CO2 was measured.
    residual_co2_g_per_l, residual_volumes : float, optional
        CO2 in the drink before it is packaged, measured: it overrides what the warmest temperature says. From
        0 to 30 in ``residual_co2_g_per_l``. Default: it follows from the warmest temperature.
    fermenter_gauge_kpa, fermenter_gauge_bar, fermenter_gauge_psi, fermenter_gauge_pa : float, optional
        Pressure above the air outside that the fermenter held at the warmest temperature. From 0 to 500 in
        ``fermenter_gauge_kpa``. Default: 0: open, or under an airlock.
    cold_crash : {"open", "closed", "co2_supplied"}, optional
        How the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own
        gas over it), co2_supplied (CO2 let in, at the fermenter's pressure). Default: open.
    crash_c, crash_f, crash_k : float, optional
        Temperature to which the drink was chilled before packaging. From -5 to 60 in ``crash_c``. Default:
        needed with a cold crash that is closed or has CO2 supplied.
    fermenter_headspace_percent : float, optional
        Gas over the drink in a closed fermenter, in percent of the drink's volume. From 0 to 1000 in
        ``fermenter_headspace_percent``. Default: needed with a closed cold crash.
    altitude_m, altitude_ft : float, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Default: needed, unless ambient is given or the residual CO2 was measured.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Default: needed, unless altitude is given or the residual CO2 was measured.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    sugar : {"dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey",
        "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar",
        "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses",
        "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate",
        "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63",
        "custom"}, optional
        The priming sugar. Default: sucrose.
    sugar_water_percent : float, optional
        Water in a sugar of one's own, percent of its mass. From 0 to 100 in ``sugar_water_percent``. Default:
        only with a custom sugar.
    sugar_sg : float, optional
        Specific gravity 20/20 °C of a syrup of one's own, from which its water follows. From 1 to 1.45 in
        ``sugar_sg``. Default: only with a custom sugar.
    sugar_fermentable_percent : float, optional
        What yeast ferments of the dry matter of a sugar of one's own, percent. From 0 to 100 in
        ``sugar_fermentable_percent``. Default: only with a custom sugar.
    sugar_kind : {"hexose", "disaccharide", "trisaccharide"}, optional
        What the fermentable part of a sugar of one's own is. Default: only with a custom sugar.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    fermentable_g_per_l : float, optional
        What yeast in the package can still turn into CO2: it makes pressure. From 0 to 400 in
        ``fermentable_g_per_l``. Default: 0 for beer and water, and noted; needed for other drinks with living
        yeast.
    yeast : {"live", "none"}, optional
        Whether living yeast goes into the package. Default: live.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    residual_model : {"table", "equilibrium"}, optional
        The model of residual CO2 (default: that of the basis). Default: that of the basis.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis: 100 by the handbook, 95 by the balance.
    count_headspace : bool, optional
        Whether the gas over the drink takes its share of the CO2. Default: that of the basis.
    headspace_percent : float, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the liquid; counts by the physical basis only.
    filling_c, filling_f, filling_k : float, optional
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Default: crash,
        or else warmest; counts by the physical basis only.
    room_c, room_f, room_k : float, optional
        Temperature of the room: that in which bottles condition, or into which CO2 escapes. From -5 to 60 in
        ``room_c``. Default: 20 °C; counts by the physical basis only.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    residual_multiplier : float, optional
        Factor on the residual CO2. From 0 to 3 in ``residual_multiplier``. Default: 1.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.
    bottles : sequence of mappings, optional
        The bottles at hand: a row for each kind. A row has:

        - ``bottle_l``, ``bottle_ml``, ``bottle_us_gal``, ``bottle_imp_gal``, ``bottle_us_fl_oz``: Drink that
          goes into one bottle. From 0.01 to 100 in ``bottle_l``. Required.
        - ``count``: How many there are. From 0 to 100000 in ``count``. Required.
        - ``bottle_class`` ("light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne",
          "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"): Class of the
          bottle: see the table bottle_classes. Default: that of the request; light one-way and heavier reusable
          bottles are both looked at.
        - ``capacity_l``, ``capacity_ml``, ``capacity_us_gal``, ``capacity_imp_gal``, ``capacity_us_fl_oz``:
          What one bottle holds, filled to the brim. From 0.01 to 120 in ``capacity_l``. Default: what the
          headspace leaves.
        - ``rating_gauge_kpa``, ``rating_gauge_bar``, ``rating_gauge_psi``, ``rating_gauge_pa``: Pressure
          above the air outside for which the maker rates the bottle. From 0 to 3000 in ``rating_gauge_kpa``.
          Default: no rating is known.

        A data frame, or a mapping of columns, holds rows too.

    Returns
    -------
    Table
        The columns:

        - ``title``: what the size is called, where it has a name
        - ``bottle_l`` (L), ``bottle_us_gal`` (US gal): drink that goes into one
        - ``mass_g`` (g), ``mass_oz`` (oz): sugar for one, as sold
        - ``tablet_count``: tablets for one
        - ``tablet_co2_g_per_l`` (g/L), ``tablet_volumes`` (vol): carbonation that they make

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> carb.bottle_doses(
    ...     volumes=2.5,
    ...     warmest_c=20,
    ...     altitude_m=0,
    ...     tablet_g=3,
    ...     bottles=[{"bottle_ml": 500, "count": 24}, {"bottle_ml": 750, "count": 4}],
    ... ).column("tablet_count")
    (1, 2)
    """

def bottle_pressures(**given: Unpack[_BottlePressuresInputs]) -> Table:
    """Pressure in a sealed bottle against temperature, expected and worst, from 0 to 60 °C, and whether a class
    of bottle, or a maker's rating, stands it; no margin is given above 40 °C, and filled glass is never
    heated.

    Parameters
    ----------
    co2_g_per_l, volumes : float, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    bottle_class : {"light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne",
        "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"}, optional
        Class of the bottle: see the table bottle_classes. Default: light one-way and heavier reusable bottles
        are both looked at.
    rating_gauge_kpa, rating_gauge_bar, rating_gauge_psi, rating_gauge_pa : float, optional
        Pressure above the air outside for which the maker rates the bottle. From 0 to 3000 in
        ``rating_gauge_kpa``. Default: no rating is known.
    headspace_percent : float, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the liquid, and noted.
    filling_c, filling_f, filling_k : float, optional
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Default: 20 °C.
    altitude_m, altitude_ft : float, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    fermentable_g_per_l : float, optional
        What yeast in the package can still turn into CO2: it makes pressure. From 0 to 400 in
        ``fermentable_g_per_l``. Default: 0 for beer and water, and noted; needed for other drinks with living
        yeast.
    yeast : {"live", "none"}, optional
        Whether living yeast goes into the package. Default: live.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: physical.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis: 100 by the handbook, 95 by the balance.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.

    Returns
    -------
    Table
        The columns:

        - ``verdict``: within, high, danger or not_for_conditioning; danger above 40 °C, where no margin is
          given
        - ``caution``: code of the gravest caution; empty where there is none
        - ``c`` (°C), ``f`` (°F): temperature of the bottle
        - ``expected_gauge_kpa`` (kPa), ``expected_gauge_bar`` (bar), ``expected_gauge_psi`` (psi): as the
          balance expects it, without air; missing where the bottle is full or beyond
        - ``worst_gauge_kpa`` (kPa), ``worst_gauge_bar`` (bar), ``worst_gauge_psi`` (psi): in the worst case
        - ``limit_gauge_kpa`` (kPa), ``limit_gauge_bar`` (bar), ``limit_gauge_psi`` (psi): pressure that must
          not be passed; missing where the bottle is not for conditioning
        - ``expected_co2_g_per_l`` (g/L), ``expected_volumes`` (vol): CO2 then dissolved
        - ``refused``: name of the error where there is no pressure; empty where there is one

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> carb.bottle_pressures(volumes=2.4, altitude_m=240).column("verdict")
    ('within', 'within', 'within', 'within', 'within', 'within', 'within', 'within', 'within', 'danger', 'danger', 'danger', 'danger')
    """

def bottle_verdicts(**given: Unpack[_BottleVerdictsInputs]) -> Table:
    """Whether each class of bottle stands a carbonation by the worst case: against what it usually holds, and on
    a hot day against what it usually sees at 40 °C. A maker's rating goes before it: the table of
    bottle_pressures takes one.

    Parameters
    ----------
    co2_g_per_l, volumes : float, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    hot_day_c, hot_day_f, hot_day_k : float, optional
        Temperature that bottles and kegs reach on a hot day. From -5 to 60 in ``hot_day_c``. Default: 35 °C.
    headspace_percent : float, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the liquid, and noted.
    filling_c, filling_f, filling_k : float, optional
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Default: 20 °C.
    altitude_m, altitude_ft : float, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    fermentable_g_per_l : float, optional
        What yeast in the package can still turn into CO2: it makes pressure. From 0 to 400 in
        ``fermentable_g_per_l``. Default: 0 for beer and water, and noted; needed for other drinks with living
        yeast.
    yeast : {"live", "none"}, optional
        Whether living yeast goes into the package. Default: live.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: physical.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis: 100 by the handbook, 95 by the balance.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.

    Returns
    -------
    Table
        The columns:

        - ``bottle_class``: class of the bottle
        - ``verdict``: within, high, danger or not_for_conditioning
        - ``usual_co2_g_per_l`` (g/L), ``usual_volumes`` (vol): the most that is usually put into it
        - ``worst_gauge_kpa`` (kPa), ``worst_gauge_bar`` (bar), ``worst_gauge_psi`` (psi): worst pressure on
          the hot day
        - ``limit_gauge_kpa`` (kPa), ``limit_gauge_bar`` (bar), ``limit_gauge_psi`` (psi): pressure that must
          not be passed; missing where it is not for conditioning
        - ``warmest_c`` (°C), ``warmest_f`` (°F): up to which temperature the worst pressure stays within it,
          at most 40 °C; missing where nowhere

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> carb.bottle_verdicts(volumes=2.4, altitude_m=240).column("bottle_class")
    ('light_one_way', 'heavier_reusable', 'swing_top', 'heavy_belgian', 'champagne', 'soft_drink_multi_trip', 'soft_drink_glass', 'pet_soft_drink', 'growler', 'still_wine')
    """

def pressure_parts(**given: Unpack[_PressurePartsInputs]) -> Table:
    """What the pressure in a sealed package is made of, part by part: CO2, the expanding liquid, air that was
    sealed in, and the margins of the worst case.

    Parameters
    ----------
    co2_g_per_l, volumes : float, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.
    temperature_c, temperature_f, temperature_k : float, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    headspace_percent : float, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the liquid, and noted.
    filling_c, filling_f, filling_k : float, optional
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Default: 20 °C.
    altitude_m, altitude_ft : float, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    fermentable_g_per_l : float, optional
        What yeast in the package can still turn into CO2: it makes pressure. From 0 to 400 in
        ``fermentable_g_per_l``. Default: 0 for beer and water, and noted; needed for other drinks with living
        yeast.
    yeast : {"live", "none"}, optional
        Whether living yeast goes into the package. Default: live.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: physical.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis: 100 by the handbook, 95 by the balance.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.

    Returns
    -------
    Table
        The columns:

        - ``part``: what it is
        - ``adds_kpa`` (kPa), ``adds_bar`` (bar), ``adds_psi`` (psi): what it adds
        - ``gauge_kpa`` (kPa), ``gauge_bar`` (bar), ``gauge_psi`` (psi): gauge pressure with it and everything
          before it

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> carb.pressure_parts(
    ...     volumes=2.5,
    ...     temperature_f=68,
    ...     filling_f=38,
    ...     headspace_percent=1,
    ...     altitude_m=0,
    ... ).column("part")
    ('CO2 and vapour, the liquid not expanded', 'the liquid expands and squeezes the gas', 'air that was sealed in', 'the liquid expands and squeezes the air', 'worst case: less soluble, more CO2')
    """

def conditioning_days(**given: Unpack[_ConditioningDaysInputs]) -> Table:
    """Share of the carbonation that bottles have made, day by day for six weeks, in a room or through a history
    of temperatures: an estimate, with the slow and the fast end of its range.

    Parameters
    ----------
    room_c, room_f, room_k : float, optional
        Temperature of the room: that in which bottles condition, or into which CO2 escapes. From -5 to 60 in
        ``room_c``. Default: 20 °C, where no history is given.
    yeast_million_per_ml : float, optional
        Living yeast in the drink. From 0 to 1000 in ``yeast_million_per_ml``. Default: enough: 1 million
        cells in a millilitre.
    age_h, age_d, age_min, age_s : float, optional
        Time that the drink has stood since its fermentation ended. From 0 to 44444.4 in ``age_h``. Default:
        fresh.
    filtered : bool, optional
        Whether the drink was filtered or fined bright. Default: false.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    history : sequence of mappings, optional
        Temperatures of the filled bottles, one spell after another; the last one goes on. A row has:

        - ``temperature_c``, ``temperature_f``, ``temperature_k``: Temperature of the drink. From -5 to 60 in
          ``temperature_c``. Required.
        - ``time_h``, ``time_d``, ``time_min``, ``time_s``: Time: since the bottles were closed or the gas was
          connected, on the date of a reading, or of a spell or step at one temperature. From 0 to 44444.4 in
          ``time_h``. Required.

        A data frame, or a mapping of columns, holds rows too.

    Returns
    -------
    Table
        The columns:

        - ``state``: waiting, working or ready (95 %), as expected
        - ``h`` (h), ``d`` (d): time since the bottles were closed
        - ``expected_percent`` (%): expected
        - ``least_percent`` (%): the slow end
        - ``most_percent`` (%): the fast end

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> carb.conditioning_days(
    ...     history=[{"temperature_c": 21, "time_d": 5}, {"temperature_c": 14, "time_d": 30}],
    ... ).column("state")
    ('working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'working', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready', 'ready')
    """

def carbonation_curve(**given: Unpack[_CarbonationCurveInputs]) -> Table:
    """CO2 in a drink under a constant pressure of CO2, from the start until 98 % of the gap has closed at the
    slow end of the rate.

    Parameters
    ----------
    start_co2_g_per_l, start_volumes : float, optional
        CO2 in the drink at the start. From 0 to 30 in ``start_co2_g_per_l``. Required.
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    temperature_c, temperature_f, temperature_k : float, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    supply_g_per_h, supply_oz_per_h : float, optional
        The most CO2 that the regulator lets through. From 0.0036 to 3.6e+06 in ``supply_g_per_h``. Default:
        no limit.
    method : {"still", "dip_tube", "on_side", "stone", "rocked"}, optional
        How the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or
        rocked. Default: still.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Default: 18.93 L, a full keg of five US gallons.
    keg_diameter_m, keg_diameter_ft : float, optional
        Inner diameter of the keg or tank. From 0.02 to 20 in ``keg_diameter_m``. Default: 0.215 m, that of
        the usual 19 L keg.
    kla_per_h, kla_per_d : float, optional
        Share of the gap to equilibrium that closes in a time: first-order rate of uptake. From 3.6e-06 to 360
        in ``kla_per_h``. Default: that of the method; it is taken as it is, at every temperature.
    altitude_m, altitude_ft : float, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.

    Returns
    -------
    Table
        The columns:

        - ``caution``: code of the gravest caution; empty where there is none
        - ``h`` (h), ``d`` (d): time since the start
        - ``expected_co2_g_per_l`` (g/L), ``expected_volumes`` (vol): CO2 in the drink, as expected
        - ``least_co2_g_per_l`` (g/L), ``least_volumes`` (vol): the least, by either end of the rate
        - ``most_co2_g_per_l`` (g/L), ``most_volumes`` (vol): the most

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> carb.carbonation_curve(
    ...     start_volumes=0.85,
    ...     gauge_psi=11.2,
    ...     temperature_f=38,
    ...     altitude_m=0,
    ... ).column("caution")
    ('assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition', 'assumed_composition')
    """

def carbonation_schedule(**given: Unpack[_CarbonationScheduleInputs]) -> Table:
    """CO2 in a drink through a schedule of pressures and temperatures, one step after another: bursts, holding,
    chilling and venting are all such steps. Each is told in four parts, the last at its end.

    Parameters
    ----------
    start_co2_g_per_l, start_volumes : float, optional
        CO2 in the drink at the start. From 0 to 30 in ``start_co2_g_per_l``. Required.
    supply_g_per_h, supply_oz_per_h : float, optional
        The most CO2 that the regulator lets through. From 0.0036 to 3.6e+06 in ``supply_g_per_h``. Default:
        no limit.
    method : {"still", "dip_tube", "on_side", "stone", "rocked"}, optional
        How the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or
        rocked. Default: still.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Default: 18.93 L, a full keg of five US gallons.
    keg_diameter_m, keg_diameter_ft : float, optional
        Inner diameter of the keg or tank. From 0.02 to 20 in ``keg_diameter_m``. Default: 0.215 m, that of
        the usual 19 L keg.
    kla_per_h, kla_per_d : float, optional
        Share of the gap to equilibrium that closes in a time: first-order rate of uptake. From 3.6e-06 to 360
        in ``kla_per_h``. Default: that of the method; it is taken as it is, at every temperature.
    altitude_m, altitude_ft : float, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    schedule : sequence of mappings, optional
        Steps of carbonating, one after another: a pressure and a temperature, for a time. A row has:

        - ``gauge_kpa``, ``gauge_bar``, ``gauge_psi``, ``gauge_pa``: Pressure above the air outside, total of
          the gas over the drink. From -110 to 3000 in ``gauge_kpa``. Required.
        - ``temperature_c``, ``temperature_f``, ``temperature_k``: Temperature of the drink. From -5 to 60 in
          ``temperature_c``. Required.
        - ``time_h``, ``time_d``, ``time_min``, ``time_s``: Time: since the bottles were closed or the gas was
          connected, on the date of a reading, or of a spell or step at one temperature. From 0 to 44444.4 in
          ``time_h``. Required.
        - ``method`` ("still", "dip_tube", "on_side", "stone", "rocked"): How the drink meets its gas: still,
          dip_tube (gas in through the liquid tube), on_side, stone, or rocked. Default: that of the request.
        - ``kla_per_h``, ``kla_per_d``: Share of the gap to equilibrium that closes in a time: first-order
          rate of uptake. From 3.6e-06 to 360 in ``kla_per_h``. Default: that of the method.

        A data frame, or a mapping of columns, holds rows too.

    Returns
    -------
    Table
        The columns:

        - ``place``: inside, or end, of the step
        - ``caution``: code of the gravest caution; empty where there is none
        - ``step_count``: which step, from 1
        - ``h`` (h), ``d`` (d): time since the start of the schedule
        - ``gauge_kpa`` (kPa), ``gauge_bar`` (bar), ``gauge_psi`` (psi): pressure over the drink in this step
        - ``c`` (°C), ``f`` (°F): temperature of the drink in this step
        - ``expected_co2_g_per_l`` (g/L), ``expected_volumes`` (vol): CO2 in the drink, as expected
        - ``least_co2_g_per_l`` (g/L), ``least_volumes`` (vol): the least, by either end of the rate
        - ``most_co2_g_per_l`` (g/L), ``most_volumes`` (vol): the most
        - ``end_co2_g_per_l`` (g/L), ``end_volumes`` (vol): what the drink would end at, were the step long
          enough
        - ``taken_up_co2_g_per_l`` (g/L), ``taken_up_volumes`` (vol): CO2 taken up since the step began, as
          expected; below 0 where it left

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> carb.carbonation_schedule(
    ...     start_volumes=0.85,
    ...     altitude_m=0,
    ...     schedule=[{"gauge_psi": 30, "temperature_f": 38, "time_h": 29}, {"gauge_psi": 11.2, "temperature_f": 38, "time_d": 5}],
    ... ).column("place")
    ('inside', 'inside', 'inside', 'end', 'inside', 'inside', 'inside', 'end')
    """

def uptake_fit(**given: Unpack[_UptakeFitInputs]) -> Table:
    """Rate of uptake from readings of the CO2 in a drink that stands under one pressure, with its 95 % interval,
    and whether it is usual for the method; one row.

    Parameters
    ----------
    start_co2_g_per_l, start_volumes : float, optional
        CO2 in the drink at the start. From 0 to 30 in ``start_co2_g_per_l``. Default: it is fitted too.
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    temperature_c, temperature_f, temperature_k : float, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    method : {"still", "dip_tube", "on_side", "stone", "rocked"}, optional
        How the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or
        rocked. Default: still.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Default: 18.93 L, a full keg of five US gallons.
    keg_diameter_m, keg_diameter_ft : float, optional
        Inner diameter of the keg or tank. From 0.02 to 20 in ``keg_diameter_m``. Default: 0.215 m, that of
        the usual 19 L keg.
    altitude_m, altitude_ft : float, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    uptake_readings : sequence of mappings, optional
        Readings of the CO2 in a drink while it stands under one pressure: when, and how much. A row has:

        - ``time_h``, ``time_d``, ``time_min``, ``time_s``: Time: since the bottles were closed or the gas was
          connected, on the date of a reading, or of a spell or step at one temperature. From 0 to 44444.4 in
          ``time_h``. Required.
        - ``co2_g_per_l``, ``volumes``: CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required.

        A data frame, or a mapping of columns, holds rows too.

    Returns
    -------
    Table
        The columns:

        - ``verdict``: usual, slower or faster than the method; or perhaps_usual: outside, but its interval
          reaches in
        - ``caution``: code of the gravest caution; empty where there is none
        - ``kla_per_h`` (1/h): the rate that fits best
        - ``least_kla_per_h`` (1/h): the lower end of its 95 % interval
        - ``most_kla_per_h`` (1/h): the upper end: what a burst that must not pass its target is reckoned with
        - ``least_usual_per_h`` (1/h): the slow end of the method
        - ``most_usual_per_h`` (1/h): its fast end
        - ``start_co2_g_per_l`` (g/L), ``start_volumes`` (vol): CO2 at time 0: as told, or as fitted
        - ``end_co2_g_per_l`` (g/L), ``end_volumes`` (vol): what the drink comes to under this pressure
        - ``scatter_co2_g_per_l`` (g/L), ``scatter_volumes`` (vol): by how much the readings scatter about the
          law: their standard deviation
        - ``readings_count``: how many there are

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> carb.uptake_fit(
    ...     start_volumes=0.85,
    ...     gauge_psi=11.2,
    ...     temperature_f=38,
    ...     altitude_m=0,
    ...     uptake_readings=[{"time_d": 1, "volumes": 1.35}, {"time_d": 2, "volumes": 1.68}, {"time_d": 4, "volumes": 2.1}, {"time_d": 6, "volumes": 2.31}],
    ... ).column("verdict")
    ('usual',)
    """

def carbonating_methods() -> Table:
    """How drink and gas meet, and how fast CO2 then passes: the rate in a full 19 L keg at 4 °C, or a factor on
    that of the still surface, as expected and at the ends of its range.

    Returns
    -------
    Table
        The columns:

        - ``name``: its name as a method
        - ``title``: in words
        - ``expected_per_h`` (1/h): rate, as expected; missing where it is a factor
        - ``least_per_h`` (1/h): the slow end
        - ``most_per_h`` (1/h): the fast end
        - ``expected_factor``: factor on the rate of the still surface; missing where it is a rate
        - ``least_factor``: the slow end
        - ``most_factor``: the fast end
        - ``standing``: how well it is known
        - ``reason``: where it is from

    Examples
    --------
    >>> import carb
    >>> len(carb.carbonating_methods())
    5
    """

def fermentables() -> Table:
    """Sugars, syrups and juices: composition as sold, and the CO2 that follows from it.

    Returns
    -------
    Table
        The columns:

        - ``name``: its name as a sugar or an addition
        - ``title``: in words
        - ``water_percent`` (%): water, of the mass as sold
        - ``hexose_percent`` (%): fermentable hexoses (glucose, fructose)
        - ``disaccharide_percent`` (%): fermentable disaccharides (sucrose, maltose)
        - ``trisaccharide_percent`` (%): fermentable trisaccharides (maltotriose)
        - ``yield_g_per_g`` (g/g): CO2 from a gram, by the composition
        - ``low_yield_g_per_g`` (g/g): the least that samples make
        - ``high_yield_g_per_g`` (g/g): the most that samples make
        - ``density_kg_per_m3`` (kg/m3), ``density_lb_per_ft3`` (lb/ft3): density, where a source gives it
        - ``standing``: how well it is known
        - ``source``: where it is from; empty for common practice and for what follows by arithmetic

    Examples
    --------
    >>> import carb
    >>> len(carb.fermentables())
    31
    """

def sweeteners() -> Table:
    """What is added for sweetness: none makes CO2 to count on, some can make much.

    Returns
    -------
    Table
        The columns:

        - ``name``: its name as an addition
        - ``title``: in words
        - ``high_yield_g_per_g`` (g/g): the most CO2 from a gram: what safety takes
        - ``caution``: code of the caution that its use raises
        - ``standing``: how well it is known
        - ``source``: where it is from; empty for common practice and for what follows by arithmetic

    Examples
    --------
    >>> import carb
    >>> len(carb.sweeteners())
    10
    """

def carbonation_ranges() -> Table:
    """How much carbonation families of drinks usually have, with the standing of each figure.

    Returns
    -------
    Table
        The columns:

        - ``family``: the family
        - ``beverage``: the kind of drink
        - ``low_co2_g_per_l`` (g/L), ``low_volumes`` (vol): the least
        - ``high_co2_g_per_l`` (g/L), ``high_volumes`` (vol): the most
        - ``standing``: how well it is known
        - ``source``: where it is from; empty for common practice and for what follows by arithmetic

    Examples
    --------
    >>> import carb
    >>> len(carb.carbonation_ranges())
    49
    """

def bottle_sizes() -> Table:
    """Sizes of bottles that are sold.

    Returns
    -------
    Table
        The columns:

        - ``content_l`` (L), ``content_us_gal`` (US gal): nominal content
        - ``title``: what it is called
        - ``standing``: how well it is known
        - ``source``: where it is from; empty for common practice and for what follows by arithmetic

    Examples
    --------
    >>> import carb
    >>> len(carb.bottle_sizes())
    25
    """

def bottle_classes() -> Table:
    """Classes of bottles, and the carbonation that they are usually filled with: no rating, the maker's goes
    before it.

    Returns
    -------
    Table
        The columns:

        - ``name``: name of the class
        - ``title``: in words
        - ``low_co2_g_per_l`` (g/L), ``low_volumes`` (vol): what is put into the lighter ones of the class
        - ``high_co2_g_per_l`` (g/L), ``high_volumes`` (vol): the most that is usually put into it; 0 where it
          is not for conditioning
        - ``for_conditioning``: whether drink may be conditioned in it
        - ``standing``: how well it is known
        - ``published``: what is published of it
        - ``source``: where it is from; empty for common practice and for what follows by arithmetic

    Examples
    --------
    >>> import carb
    >>> len(carb.bottle_classes())
    10
    """

def keg_sizes() -> Table:
    """Sizes of kegs that are sold. Read the pressure rating on the keg itself.

    Returns
    -------
    Table
        The columns:

        - ``name``: name of the size
        - ``title``: in words
        - ``content_l`` (L), ``content_us_gal`` (US gal): nominal content
        - ``standing``: how well it is known

    Examples
    --------
    >>> import carb
    >>> len(carb.keg_sizes())
    9
    """

def keg_ratings() -> Table:
    """Pressures that are usually marked on kegs, fermenters and relief valves, gauge. No vessel is judged by
    them: read the marking on the vessel itself, never go above that or its relief valve, and follow local
    code.

    Returns
    -------
    Table
        The columns:

        - ``name``: name of the kind
        - ``title``: in words
        - ``low_gauge_kpa`` (kPa), ``low_gauge_bar`` (bar), ``low_gauge_psi`` (psi): the least that is usual;
          0 where it is no pressure vessel
        - ``high_gauge_kpa`` (kPa), ``high_gauge_bar`` (bar), ``high_gauge_psi`` (psi): the most that is usual
        - ``standing``: how well it is known

    Examples
    --------
    >>> import carb
    >>> len(carb.keg_ratings())
    9
    """

def cylinder_sizes() -> Table:
    """Cylinders and cartridges of CO2: what they hold when full.

    Returns
    -------
    Table
        The columns:

        - ``name``: name of the size
        - ``title``: in words
        - ``charge_g`` (g), ``charge_oz`` (oz): CO2 in a full one
        - ``filling_kg_per_m3`` (kg/m3), ``filling_lb_per_ft3`` (lb/ft3): CO2 per volume of water that it
          would hold: how far it may be filled
        - ``water_capacity_l`` (L), ``water_capacity_us_gal`` (US gal): the water that it would hold
        - ``standing``: how well it is known
        - ``source``: where it is from; empty for common practice and for what follows by arithmetic

    Examples
    --------
    >>> import carb
    >>> len(carb.cylinder_sizes())
    10
    """

def line_balance(**given: Unpack[_LineBalanceInputs]) -> Table:
    """How long a draught line should be: by the trade's balance, and by physics at the trade's flow, at the
    usual pour of a home line, and at a pour of one's own; with the reasons why they differ.

    Parameters
    ----------
    gauge_kpa, gauge_bar, gauge_psi, gauge_pa : float, optional
        Pressure above the air outside, total of the gas over the drink. From -110 to 3000 in ``gauge_kpa``.
        Required.
    tube : {"vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in",
        "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od",
        "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"}, optional
        Tubing of the draught line: see the table tubes. Required: this, or another tube.
    bore_mm, bore_in : float, optional
        Inner diameter of the line. From 1 to 50 in ``bore_mm``. Required: this, or another tube.
    flow_l_per_min, flow_us_fl_oz_per_s, flow_us_gal_per_min : float, optional
        Drink that flows. From 0.0006 to 6000 in ``flow_l_per_min``. Default: no pour of one's own.
    pour_seconds : float, optional
        Time in which the glass is full. From 0.1 to 36000 in ``pour_seconds``. Default: no pour of one's own.
    hardware_kpa, hardware_bar, hardware_psi, hardware_pa : float, optional
        Pressure that faucet, shank, couplings and other lengths of line take, by the trade's balance. From 0
        to 1000 in ``hardware_kpa``. Default: 0; counts by the trade's balance only.
    rise_m, rise_ft : float, optional
        Height of the faucet over the drink in the keg (its middle, where it is half empty); below 0 where the
        faucet is lower. From -30 to 50 in ``rise_m``. Default: 0: the faucet at the height of the drink.
    fittings_multiplier : float, optional
        Losses of fittings and faucet, in velocity heads of the line. From 0 to 1000 in
        ``fittings_multiplier``. Default: 3, of a home line: judgement.
    glass_l, glass_ml, glass_us_gal, glass_imp_gal, glass_us_fl_oz : float, optional
        Drink that is poured into one glass. From 0.01 to 100 in ``glass_l``. Default: a US pint, 473.176 mL.
    temperature_c, temperature_f, temperature_k : float, optional
        Temperature of the drink. From -5 to 60 in ``temperature_c``. Required.
    sg : float, optional
        Specific gravity 20/20 °C. From 0.98 to 1.165 in ``sg``. Default: that of the composition.
    viscosity_multiplier : float, optional
        Viscosity of the drink over that of water. From 0.5 to 10 in ``viscosity_multiplier``. Default: usual
        for the drink, as the working shows.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.

    Returns
    -------
    Table
        The columns:

        - ``way``: handbook, handbook_by_physics, physics_trade, physics_home or physics_asked
        - ``line_m`` (m), ``line_ft`` (ft): length of the line
        - ``flow_l_per_min`` (L/min), ``flow_us_fl_oz_per_s`` (US fl oz/s): flow; of the handbook, the one
          that it claims
        - ``pour_seconds`` (s): time of a pour
        - ``resistance_bar_per_m`` (bar/m), ``resistance_psi_per_ft`` (psi/ft): pressure lost per length of
          line
        - ``reason``: what the row stands on, and why it differs from the others
        - ``refused``: name of the error where there is no answer; empty where there is one

    Raises
    ------
    CarbError
        For an unknown name, a quantity in two units, or a value outside its range.

    Examples
    --------
    >>> import carb
    >>> carb.line_balance(
    ...     gauge_psi=11,
    ...     tube="vinyl_3_16_in",
    ...     rise_ft=2,
    ...     temperature_f=38,
    ...     pour_seconds=10,
    ... ).column("way")
    ('handbook', 'handbook_by_physics', 'physics_trade', 'physics_home', 'physics_asked')
    """

def tubes() -> Table:
    """Tubing of draught lines: bore, and the resistance that handbooks give it at their flow. They are the
    trade's conventions, not physics.

    Returns
    -------
    Table
        The columns:

        - ``name``: its name
        - ``title``: in words
        - ``bore_mm`` (mm), ``bore_in`` (in): inner diameter, nominal; real tubing differs by up to 5 %
        - ``resistance_bar_per_m`` (bar/m), ``resistance_psi_per_ft`` (psi/ft): resistance by the handbook
        - ``low_resistance_bar_per_m`` (bar/m), ``low_resistance_psi_per_ft`` (psi/ft): the least that trade
          texts give
        - ``high_resistance_bar_per_m`` (bar/m), ``high_resistance_psi_per_ft`` (psi/ft): the most that trade
          texts give
        - ``flow_l_per_min`` (L/min), ``flow_us_fl_oz_per_s`` (US fl oz/s): the flow that the figure belongs
          to
        - ``standing``: how well it is known
        - ``source``: where it is from; empty for common practice and for what follows by arithmetic
        - ``range_source``: where the ends of the range are from, if from elsewhere

    Examples
    --------
    >>> import carb
    >>> len(carb.tubes())
    14
    """

def filling_losses() -> Table:
    """CO2 that a drink loses on the way from the keg into package or glass, by the way it is filled: either an
    amount, or a share.

    Returns
    -------
    Table
        The columns:

        - ``name``: name of the way
        - ``title``: in words
        - ``expected_co2_g_per_l`` (g/L), ``expected_volumes`` (vol): loss expected, as an amount
        - ``least_co2_g_per_l`` (g/L), ``least_volumes`` (vol): the least
        - ``most_co2_g_per_l`` (g/L), ``most_volumes`` (vol): the most
        - ``expected_percent`` (%): loss expected, as a share of the CO2 in the keg
        - ``least_percent`` (%): the least
        - ``most_percent`` (%): the most
        - ``standing``: how well it is known
        - ``source``: where it is from; empty for common practice and for what follows by arithmetic
        - ``range``: where least and most are from

    Examples
    --------
    >>> import carb
    >>> len(carb.filling_losses())
    5
    """

def filling_densities() -> Table:
    """How far cylinders of CO2 may be filled, by how strong they are.

    Returns
    -------
    Table
        The columns:

        - ``name``: name of the class
        - ``title``: which cylinders
        - ``filling_g_per_g`` (g/g): CO2 in the full cylinder over the water that it would hold
        - ``gauge_kpa`` (kPa), ``gauge_bar`` (bar), ``gauge_psi`` (psi): pressure by which they are classed,
          above the air outside
        - ``pressure_is``: which pressure that is: service or test
        - ``standing``: how well it is known
        - ``source``: where it is from; empty for common practice and for what follows by arithmetic

    Examples
    --------
    >>> import carb
    >>> len(carb.filling_densities())
    6
    """

def oxygen_limits() -> Table:
    """Oxygen that the trade allows in drinks, packages and CO2: labels, no physics.

    Returns
    -------
    Table
        The columns:

        - ``name``: name of the figure
        - ``title``: in words
        - ``limit_ug_per_l`` (µg/L), ``limit_ppb`` (ppb): oxygen per litre of drink; missing where it is of a
          gas
        - ``limit_ppm`` (ppm), ``limit_vol_percent`` (% vol): oxygen in the gas; missing where it is of a
          drink
        - ``standing``: how well it is known
        - ``source``: where it is from; empty for common practice and for what follows by arithmetic

    Examples
    --------
    >>> import carb
    >>> len(carb.oxygen_limits())
    7
    """

def exposure_limits() -> Table:
    """CO2 in the air: limits of exposure, settings of alarms, effects on people. Local code decides.

    Returns
    -------
    Table
        The columns:

        - ``name``: name of the row
        - ``title``: in words
        - ``body``: who laid it down; "effect" where it is what happens to people
        - ``limit_ppm`` (ppm), ``limit_vol_percent`` (% vol): CO2 in the air
        - ``averaged_h`` (h), ``averaged_d`` (d): over how long; missing where it holds at once or nothing is
          said
        - ``threshold_g`` (g), ``threshold_oz`` (oz): CO2 in the system from which it applies
        - ``standing``: how well it is known
        - ``source``: where it is from; empty for common practice and for what follows by arithmetic

    Examples
    --------
    >>> import carb
    >>> len(carb.exposure_limits())
    17
    """

def equations() -> Table:
    """Every equation of the library: formula, uncertainty, standing.

    Returns
    -------
    Table
        The columns:

        - ``id``: stable name
        - ``title``: what it gives
        - ``formula``: the formula, one line of text
        - ``uncertainty_percent`` (%): uncertainty, k = 2; missing where the equation is exact or a bound
        - ``reason``: where that is from
        - ``standing``: how well it is known

    Examples
    --------
    >>> import carb
    >>> len(carb.equations())
    160
    """

def sources() -> Table:
    """Every source that the library names.

    Returns
    -------
    Table
        The columns:

        - ``key``: key in the bibliography
        - ``citation``: author, year and place

    Examples
    --------
    >>> import carb
    >>> len(carb.sources())
    78
    """

def cautions() -> Table:
    """Every caution that an answer may carry.

    Returns
    -------
    Table
        The columns:

        - ``code``: stable code
        - ``level``: danger, caution or note
        - ``text``: the sentence, with places for the value and the limit

    Examples
    --------
    >>> import carb
    >>> len(carb.cautions())
    92
    """

def claim_quantities() -> Table:
    """What can be claimed in a cross-check: each quantity in each unit in which it may be printed.

    Returns
    -------
    Table
        The columns:

        - ``quantity``: its name in a claim
        - ``title``: in words
        - ``unit``: a unit in which it may be claimed
        - ``function``: the function whose inputs it takes, its assumptions left out; none for bottles

    Examples
    --------
    >>> import carb
    >>> len(carb.claim_quantities())
    24
    """

def crosscheck_habits() -> Table:
    """On what programs differ: every habit that a cross-check looks for, this library's own first, and how
    common it is among programs; judgement, nobody has counted.

    Returns
    -------
    Table
        The columns:

        - ``question``: on what programs differ
        - ``asks``: the question in words
        - ``habit``: a way to answer it
        - ``prior_percent`` (%): how many programs in a hundred have it: judgement
        - ``says``: what a program with this habit does: a program that ...

    Examples
    --------
    >>> import carb
    >>> len(carb.crosscheck_habits())
    143
    """

def units() -> Table:
    """Every unit of the library, with its definition.

    Returns
    -------
    Table
        The columns:

        - ``name``: the last part of a parameter's name
        - ``symbol``: as printed
        - ``definition``: the exact definition
        - ``source``: where it is laid down

    Examples
    --------
    >>> import carb
    >>> len(carb.units())
    66
    """

def instruments() -> Table:
    """How sure usual instruments are in careful hands: offered by name for an uncertainty, never taken unasked;
    judgement.

    Returns
    -------
    Table
        The columns:

        - ``name``: its name in an uncertainty
        - ``title``: in words
        - ``kind``: normal (k = 2) or range (even)
        - ``half_width``: how far the truth may lie either way, in the unit
        - ``unit``: the unit

    Examples
    --------
    >>> import carb
    >>> len(carb.instruments())
    10
    """

def bottling(**given: Unpack[_BottlingInputs]) -> Bottling:
    """Bottle a batch: is it finished, what primes it, which bottles to fill, do they hold, when is it ready.

    Parameters
    ----------
    title : str, optional
        A name for the batch, printed on the plan. Default: no title.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    fermentable_g_per_l : float, optional
        What yeast in the package can still turn into CO2: it makes pressure. From 0 to 400 in
        ``fermentable_g_per_l``. Default: 0 for beer and water, and noted; needed for other drinks with living
        yeast.
    yeast : {"live", "none"}, optional
        Whether living yeast goes into the package. Default: live.
    microbes : {"brewing_yeast", "diastatic", "wild"}, optional
        What may ferment in the bottle: brewing_yeast; diastatic yeast, which splits dextrins; or wild yeast
        and bacteria. Default: brewing_yeast.
    original_sg : float, optional
        Specific gravity 20/20 °C of the wort or must before fermentation. From 1.001 to 1.165 in
        ``original_sg``. Default: not told; with the gravity now, alcohol and extract follow.
    original_plato : float, optional
        Extract of the wort or must before fermentation. From 0.2 to 37 in ``original_plato``. Default: not
        told.
    current_sg : float, optional
        Specific gravity 20/20 °C as it is now. From 0.98 to 1.165 in ``current_sg``. Default: not told, or
        the last of the readings.
    current_plato : float, optional
        Apparent extract as it is now. From -5.2 to 37 in ``current_plato``. Default: not told, or the last of
        the readings.
    final_sg : float, optional
        Specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test. From
        0.98 to 1.165 in ``final_sg``. Default: not told; with the gravity now, what is fermentable follows.
    final_plato : float, optional
        Apparent extract at which fermentation will end, best by a forced-fermentation test. From -5.2 to 37
        in ``final_plato``. Default: not told.
    expected_attenuation_percent : float, optional
        Apparent attenuation at which fermentation is expected to end. From 1 to 125 in
        ``expected_attenuation_percent``. Default: not told.
    extract_scale : {"asbc", "lincoln", "quick"}, optional
        Which relation turns specific gravity into extract. Default: asbc.
    real_extract_model : {"balling", "quotient"}, optional
        Which relation gives real extract and real attenuation: balling (one less their ratio), or quotient
        (which counts the mass lost as CO2); alcohol is Balling's by either. Default: balling.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required: this, or another packaged.
    batch_l, batch_ml, batch_us_gal, batch_imp_gal, batch_us_fl_oz : float, optional
        Drink in the fermenter, of which some stays behind. From 0.001 to 1e+06 in ``batch_l``. Required:
        this, or another packaged.
    loss_l, loss_ml, loss_us_gal, loss_imp_gal, loss_us_fl_oz : float, optional
        Drink that stays behind with the trub, in the bottling vessel and in hoses. From 0 to 1e+06 in
        ``loss_l``. Default: 0; counts with the batch.
    co2_g_per_l, volumes : float, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required: this, or another carbonation.
    mass_g, mass_kg, mass_oz, mass_lb : float, optional
        Mass of sugar, or of what is added, as sold. From 0 to 1e+09 in ``mass_g``. Required: this, or another
        carbonation.
    warmest_c, warmest_f, warmest_k : float, optional
        Highest temperature of the drink since active fermentation. From 0 to 45 in ``warmest_c``. Default:
        needed, unless the residual CO2 was measured.
    residual_co2_g_per_l, residual_volumes : float, optional
        CO2 in the drink before it is packaged, measured: it overrides what the warmest temperature says. From
        0 to 30 in ``residual_co2_g_per_l``. Default: it follows from the warmest temperature.
    fermenter_gauge_kpa, fermenter_gauge_bar, fermenter_gauge_psi, fermenter_gauge_pa : float, optional
        Pressure above the air outside that the fermenter held at the warmest temperature. From 0 to 500 in
        ``fermenter_gauge_kpa``. Default: 0: open, or under an airlock.
    cold_crash : {"open", "closed", "co2_supplied"}, optional
        How the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own
        gas over it), co2_supplied (CO2 let in, at the fermenter's pressure). Default: open.
    crash_c, crash_f, crash_k : float, optional
        Temperature to which the drink was chilled before packaging. From -5 to 60 in ``crash_c``. Default:
        needed with a cold crash that is closed or has CO2 supplied.
    fermenter_headspace_percent : float, optional
        Gas over the drink in a closed fermenter, in percent of the drink's volume. From 0 to 1000 in
        ``fermenter_headspace_percent``. Default: needed with a closed cold crash.
    filling_c, filling_f, filling_k : float, optional
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Default: that of
        the cold crash, or else the warmest.
    cellar_c, cellar_f, cellar_k : float, optional
        Temperature of a cool store. From -5 to 60 in ``cellar_c``. Default: 12 °C.
    room_c, room_f, room_k : float, optional
        Temperature of the room: that in which bottles condition, or into which CO2 escapes. From -5 to 60 in
        ``room_c``. Default: 20 °C.
    hot_day_c, hot_day_f, hot_day_k : float, optional
        Temperature that bottles and kegs reach on a hot day. From -5 to 60 in ``hot_day_c``. Default: 35 °C.
    pasteurising_c, pasteurising_f, pasteurising_k : float, optional
        Temperature at which filled bottles would be pasteurised. From -5 to 60 in ``pasteurising_c``.
        Default: not meant: filled glass is never heated.
    altitude_m, altitude_ft : float, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    headspace_percent : float, optional
        Gas space over the drink, in percent of the drink's volume. From 0 to 100 in ``headspace_percent``.
        Default: 4 % of the liquid, and noted.
    bottle_class : {"light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne",
        "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"}, optional
        Class of the bottle: see the table bottle_classes. Default: light one-way and heavier reusable bottles
        are both looked at.
    rating_gauge_kpa, rating_gauge_bar, rating_gauge_psi, rating_gauge_pa : float, optional
        Pressure above the air outside for which the maker rates the bottle. From 0 to 3000 in
        ``rating_gauge_kpa``. Default: no rating is known.
    fill_order : {"least_leftover", "fewest_bottles", "fewest_sizes", "as_listed"}, optional
        What comes first in choosing bottles: least_leftover, fewest_bottles, fewest_sizes (the other two
        settle ties), or as_listed (the bottles in the order of their list). Default: least_leftover.
    spare_percent : float, optional
        Bottles to wash beyond those to fill, in percent of them. From 0 to 100 in ``spare_percent``. Default:
        5 %.
    sugar : {"dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey",
        "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar",
        "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses",
        "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate",
        "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63",
        "custom"}, optional
        The priming sugar. Default: sucrose.
    sugar_water_percent : float, optional
        Water in a sugar of one's own, percent of its mass. From 0 to 100 in ``sugar_water_percent``. Default:
        only with a custom sugar.
    sugar_sg : float, optional
        Specific gravity 20/20 °C of a syrup of one's own, from which its water follows. From 1 to 1.45 in
        ``sugar_sg``. Default: only with a custom sugar.
    sugar_fermentable_percent : float, optional
        What yeast ferments of the dry matter of a sugar of one's own, percent. From 0 to 100 in
        ``sugar_fermentable_percent``. Default: only with a custom sugar.
    sugar_kind : {"hexose", "disaccharide", "trisaccharide"}, optional
        What the fermentable part of a sugar of one's own is. Default: only with a custom sugar.
    syrup_water_l, syrup_water_ml, syrup_water_us_gal, syrup_water_imp_gal, syrup_water_us_fl_oz : float,
        optional
        Water in which the priming sugar is dissolved. From 0 to 1000 in ``syrup_water_l``. Default: not
        counted; the recipe then takes three times the mass of the sugar.
    dissolving_c, dissolving_f, dissolving_k : float, optional
        Temperature at which the sugar has to stay dissolved. From 0 to 100 in ``dissolving_c``. Default: 20
        °C: it stays dissolved when it has cooled.
    scale_g, scale_kg, scale_oz, scale_lb : float, optional
        The smallest step that the scale shows. From 0.001 to 1000 in ``scale_g``. Default: the dose is not
        rounded.
    tablet_g, tablet_kg, tablet_oz, tablet_lb : float, optional
        Mass of one carbonation tablet. From 0.01 to 100 in ``tablet_g``. Default: no tablets.
    wort_original_sg : float, optional
        Specific gravity 20/20 °C of the priming wort before fermentation. From 1.001 to 1.165 in
        ``wort_original_sg``. Default: no wort to prime with.
    wort_original_plato : float, optional
        Extract of the priming wort before fermentation. From 0.2 to 37 in ``wort_original_plato``. Default:
        no wort to prime with.
    wort_current_sg : float, optional
        Specific gravity 20/20 °C of the priming wort when it is added. From 0.98 to 1.165 in
        ``wort_current_sg``. Default: fresh wort.
    wort_current_plato : float, optional
        Apparent extract of the priming wort when it is added. From -5.2 to 37 in ``wort_current_plato``.
        Default: fresh wort.
    limit_attenuation_percent : float, optional
        Real degree of fermentation at which the yeast ends: the limit attenuation. From 1 to 100 in
        ``limit_attenuation_percent``. Default: needed with wort to prime with.
    wort_co2_g_per_l, wort_volumes : float, optional
        CO2 that the priming wort holds: none in fresh wort, about saturation in fermenting beer. From 0 to 30
        in ``wort_co2_g_per_l``. Default: none in fresh wort, what the drink keeps in fermenting one.
    yeast_million_per_ml : float, optional
        Living yeast in the drink. From 0 to 1000 in ``yeast_million_per_ml``. Default: enough: 1 million
        cells in a millilitre.
    age_h, age_d, age_min, age_s : float, optional
        Time that the drink has stood since its fermentation ended. From 0 to 44444.4 in ``age_h``. Default:
        fresh.
    filtered : bool, optional
        Whether the drink was filtered or fined bright. Default: false.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook, for the dose; package pressures always take
        the physical one.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    residual_model : {"table", "equilibrium"}, optional
        The model of residual CO2 (default: that of the basis). Default: that of the basis.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis.
    count_headspace : bool, optional
        Whether the gas over the drink takes its share of the CO2. Default: that of the basis.
    count_syrup : bool, optional
        Whether the volume of the syrup, if one is made, counts. Default: that of the basis.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    residual_multiplier : float, optional
        Factor on the residual CO2. From 0 to 3 in ``residual_multiplier``. Default: 1.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.
    working : bool, optional
        Whether the answer carries its working. Default: false.
    bottles : sequence of mappings, optional
        The bottles at hand: a row for each kind. A row has:

        - ``bottle_l``, ``bottle_ml``, ``bottle_us_gal``, ``bottle_imp_gal``, ``bottle_us_fl_oz``: Drink that
          goes into one bottle. From 0.01 to 100 in ``bottle_l``. Required.
        - ``count``: How many there are. From 0 to 100000 in ``count``. Required.
        - ``bottle_class`` ("light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne",
          "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"): Class of the
          bottle: see the table bottle_classes. Default: that of the request; light one-way and heavier reusable
          bottles are both looked at.
        - ``capacity_l``, ``capacity_ml``, ``capacity_us_gal``, ``capacity_imp_gal``, ``capacity_us_fl_oz``:
          What one bottle holds, filled to the brim. From 0.01 to 120 in ``capacity_l``. Default: what the
          headspace leaves.
        - ``rating_gauge_kpa``, ``rating_gauge_bar``, ``rating_gauge_psi``, ``rating_gauge_pa``: Pressure
          above the air outside for which the maker rates the bottle. From 0 to 3000 in ``rating_gauge_kpa``.
          Default: no rating is known.

        A data frame, or a mapping of columns, holds rows too.
    additions : sequence of mappings, optional
        What else was added to the drink: sugars, which count toward the carbonation, and sweeteners. A row
        has:

        - ``addition`` ("dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey",
          "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar",
          "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses",
          "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate",
          "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42",
          "corn_syrup_63", "custom", "lactose", "maltodextrin", "sucralose", "aspartame", "saccharin", "stevia",
          "erythritol", "xylitol", "sorbitol", "sweetener_packets"): What is added: a sugar, or something for
          sweetness. Required.
        - ``mass_g``, ``mass_kg``, ``mass_oz``, ``mass_lb``: Mass of sugar, or of what is added, as sold. From
          0 to 1e+09 in ``mass_g``. Required.
        - ``sugar_water_percent``: Water in a sugar of one's own, percent of its mass. From 0 to 100 in
          ``sugar_water_percent``. Default: only with a custom sugar.
        - ``sugar_sg``: Specific gravity 20/20 °C of a syrup of one's own, from which its water follows. From
          1 to 1.45 in ``sugar_sg``. Default: only with a custom sugar.
        - ``sugar_fermentable_percent``: What yeast ferments of the dry matter of a sugar of one's own,
          percent. From 0 to 100 in ``sugar_fermentable_percent``. Default: only with a custom sugar.
        - ``sugar_kind`` ("hexose", "disaccharide", "trisaccharide"): What the fermentable part of a sugar of
          one's own is. Default: only with a custom sugar.

        A data frame, or a mapping of columns, holds rows too.
    readings : sequence of mappings, optional
        Gravity readings, the earliest first: the last one is the gravity now. A row has:

        - ``time_h``, ``time_d``, ``time_min``, ``time_s``: Time: since the bottles were closed or the gas was
          connected, on the date of a reading, or of a spell or step at one temperature. From 0 to 44444.4 in
          ``time_h``. Required.
        - ``current_sg``: Specific gravity 20/20 °C as it is now. From 0.98 to 1.165 in ``current_sg``.
          Required: this, or another reading.
        - ``current_plato``: Apparent extract as it is now. From -5.2 to 37 in ``current_plato``. Required:
          this, or another reading.

        A data frame, or a mapping of columns, holds rows too.
    history : sequence of mappings, optional
        Temperatures of the filled bottles, one spell after another; the last one goes on. A row has:

        - ``temperature_c``, ``temperature_f``, ``temperature_k``: Temperature of the drink. From -5 to 60 in
          ``temperature_c``. Required.
        - ``time_h``, ``time_d``, ``time_min``, ``time_s``: Time: since the bottles were closed or the gas was
          connected, on the date of a reading, or of a spell or step at one temperature. From 0 to 44444.4 in
          ``time_h``. Required.

        A data frame, or a mapping of columns, holds rows too.
    uncertainty : mapping, optional
        How far inputs may lie from what was given, by their names, as ``Result.uncertainty`` takes it: the
        answer's ``uncertainty`` then has the intervals of its main parts.

    Returns
    -------
    Bottling
        ``page()`` is the whole as text. The parts, each an answer or an ``error``, some only where asked for:
        ``request``, ``drink``, ``readiness``, ``gravity_point``, ``residual``, ``added``, ``priming``,
        ``primed``, ``weighed``, ``syrup``, ``wort``, ``balance``, ``storage``, ``fill``, ``ready``,
        ``dry_yeast``, ``sugars``, ``bottles``, ``safety``, ``uncertainty``.

    Raises
    ------
    CarbError
        Where the request as a whole is wrong, as with an unknown name or a wrong row of a list. What is wrong
        with one part is the ``error`` of that part.

    Examples
    --------
    >>> import carb
    >>> batch = carb.bottling(
    ...     packaged_l=19.2,
    ...     volumes=2.4,
    ...     warmest_c=20.5,
    ...     altitude_m=240,
    ...     bottles=[{"bottle_ml": 500, "count": 24}, {"bottle_ml": 330, "count": 30}],
    ... )
    >>> batch.priming.mass_g
    116.21656867043177
    >>> batch.bottles[0].filled_count
    24
    """

def kegging(**given: Unpack[_KeggingInputs]) -> Kegging:
    """Keg a batch: what pressure for how long, how it is purged, how much gas, which line, what a hot day does.

    Parameters
    ----------
    title : str, optional
        A name for the batch, printed on the plan. Default: no title.
    beverage : {"water", "beer", "cider", "mead", "wine", "soft_drink"}, optional
        What the drink is. Default: beer.
    abv_percent : float, optional
        Alcohol by volume. From 0 to 25 in ``abv_percent``. Default: usual for the drink, and noted.
    extract_g_per_l : float, optional
        Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2. From 0 to 400 in
        ``extract_g_per_l``. Default: usual for the drink, and noted.
    fermentable_g_per_l : float, optional
        What yeast in the package can still turn into CO2: it makes pressure. From 0 to 400 in
        ``fermentable_g_per_l``. Default: 0 for beer and water, and noted; needed for other drinks with living
        yeast.
    yeast : {"live", "none"}, optional
        Whether living yeast goes into the package. Default: live.
    original_sg : float, optional
        Specific gravity 20/20 °C of the wort or must before fermentation. From 1.001 to 1.165 in
        ``original_sg``. Default: not told; with the gravity now, alcohol and extract follow.
    original_plato : float, optional
        Extract of the wort or must before fermentation. From 0.2 to 37 in ``original_plato``. Default: not
        told.
    current_sg : float, optional
        Specific gravity 20/20 °C as it is now. From 0.98 to 1.165 in ``current_sg``. Default: not told, or
        the last of the readings.
    current_plato : float, optional
        Apparent extract as it is now. From -5.2 to 37 in ``current_plato``. Default: not told, or the last of
        the readings.
    final_sg : float, optional
        Specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test. From
        0.98 to 1.165 in ``final_sg``. Default: not told; with the gravity now, what is fermentable follows.
    final_plato : float, optional
        Apparent extract at which fermentation will end, best by a forced-fermentation test. From -5.2 to 37
        in ``final_plato``. Default: not told.
    expected_attenuation_percent : float, optional
        Apparent attenuation at which fermentation is expected to end. From 1 to 125 in
        ``expected_attenuation_percent``. Default: not told.
    extract_scale : {"asbc", "lincoln", "quick"}, optional
        Which relation turns specific gravity into extract. Default: asbc.
    real_extract_model : {"balling", "quotient"}, optional
        Which relation gives real extract and real attenuation: balling (one less their ratio), or quotient
        (which counts the mass lost as CO2); alcohol is Balling's by either. Default: balling.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required: this, or another packaged.
    batch_l, batch_ml, batch_us_gal, batch_imp_gal, batch_us_fl_oz : float, optional
        Drink in the fermenter, of which some stays behind. From 0.001 to 1e+06 in ``batch_l``. Required:
        this, or another packaged.
    loss_l, loss_ml, loss_us_gal, loss_imp_gal, loss_us_fl_oz : float, optional
        Drink that stays behind with the trub, in the bottling vessel and in hoses. From 0 to 1e+06 in
        ``loss_l``. Default: 0; counts with the batch.
    co2_g_per_l, volumes : float, optional
        CO2 per litre of drink. From 0 to 30 in ``co2_g_per_l``. Required: this, or another carbonation.
    warmest_c, warmest_f, warmest_k : float, optional
        Highest temperature of the drink since active fermentation. From 0 to 45 in ``warmest_c``. Default:
        needed, unless the residual CO2 was measured.
    residual_co2_g_per_l, residual_volumes : float, optional
        CO2 in the drink before it is packaged, measured: it overrides what the warmest temperature says. From
        0 to 30 in ``residual_co2_g_per_l``. Default: it follows from the warmest temperature.
    fermenter_gauge_kpa, fermenter_gauge_bar, fermenter_gauge_psi, fermenter_gauge_pa : float, optional
        Pressure above the air outside that the fermenter held at the warmest temperature. From 0 to 500 in
        ``fermenter_gauge_kpa``. Default: 0: open, or under an airlock.
    cold_crash : {"open", "closed", "co2_supplied"}, optional
        How the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own
        gas over it), co2_supplied (CO2 let in, at the fermenter's pressure). Default: open.
    crash_c, crash_f, crash_k : float, optional
        Temperature to which the drink was chilled before packaging. From -5 to 60 in ``crash_c``. Default:
        needed with a cold crash that is closed or has CO2 supplied.
    fermenter_headspace_percent : float, optional
        Gas over the drink in a closed fermenter, in percent of the drink's volume. From 0 to 1000 in
        ``fermenter_headspace_percent``. Default: needed with a closed cold crash.
    start_co2_g_per_l, start_volumes : float, optional
        CO2 in the drink at the start. From 0 to 30 in ``start_co2_g_per_l``. Default: residual CO2, by the
        warmest temperature.
    serving_c, serving_f, serving_k : float, optional
        Temperature of the keg when it is served. From -5 to 60 in ``serving_c``. Default: 4 °C.
    hot_day_c, hot_day_f, hot_day_k : float, optional
        Temperature that bottles and kegs reach on a hot day. From -5 to 60 in ``hot_day_c``. Default: 35 °C.
    room_c, room_f, room_k : float, optional
        Temperature of the room: that in which bottles condition, or into which CO2 escapes. From -5 to 60 in
        ``room_c``. Default: 20 °C: where the cylinder stands.
    altitude_m, altitude_ft : float, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
    sea_level_kpa, sea_level_bar, sea_level_psi, sea_level_pa : float, optional
        Air pressure reduced to sea level, as weather reports give it; needs the altitude too. From 87 to 109
        in ``sea_level_kpa``. Default: 101.325 kPa, the standard atmosphere.
    keg_l, keg_ml, keg_us_gal, keg_imp_gal, keg_us_fl_oz : float, optional
        What the keg or tank holds, filled to the brim. From 0.1 to 1e+06 in ``keg_l``. Default: 19.6 L, a
        soda keg of 5 US gallons to the brim.
    keg_diameter_m, keg_diameter_ft : float, optional
        Inner diameter of the keg or tank. From 0.02 to 20 in ``keg_diameter_m``. Default: 0.215 m, that of
        the usual 19 L keg.
    keg_rating_gauge_kpa, keg_rating_gauge_bar, keg_rating_gauge_psi, keg_rating_gauge_pa : float, optional
        Pressure above the air outside for which the keg is rated: the least of its marking and its relief
        valve. From 0 to 3000 in ``keg_rating_gauge_kpa``. Default: no rating is known, and a caution says so.
    co2_percent : float, optional
        CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen. From 1 to 100 in
        ``co2_percent``. Default: 100 %: CO2 and nothing else.
    air_abs_kpa, air_abs_bar, air_abs_psi, air_abs_pa : float, optional
        Partial pressure of air, or of nitrogen, that stays in the headspace: that of the air outside where it
        was not purged at all. From 0 to 3000 in ``air_abs_kpa``. Default: 0: purged, or driven out.
    purge : {"none", "headspace", "empty", "push"}, optional
        How air is kept out of a keg: none, headspace (gas over the drink vented), empty (vented before it is
        filled), or push (sanitiser pushed out by CO2, then the headspace vented if cycles are given).
        Default: headspace.
    purge_gauge_kpa, purge_gauge_bar, purge_gauge_psi, purge_gauge_pa : float, optional
        Pressure above the air outside to which a vessel is filled before it is vented. From 0.1 to 3000 in
        ``purge_gauge_kpa``. Default: 2 bar.
    cycles_count : float, optional
        How often a vessel is filled with CO2 and vented. From 0 to 1000 in ``cycles_count``. Default: as many
        as the oxygen asks for.
    oxygen_ppm, oxygen_vol_percent : float, optional
        Oxygen in the gas over the drink. From 0 to 250000 in ``oxygen_ppm``. Default: 1000 ppm.
    start_oxygen_ppm, start_oxygen_vol_percent : float, optional
        Oxygen in the vessel before it is purged. From 0 to 250000 in ``start_oxygen_ppm``. Default: 20.95 %
        vol: air.
    gas_oxygen_ppm, gas_oxygen_vol_percent : float, optional
        Oxygen in the CO2 as supplied. From 0 to 50000 in ``gas_oxygen_ppm``. Default: 30 ppm, the most that
        CO2 for drinks may have (ISBT); 0 for a pure gas.
    pocket_l, pocket_ml, pocket_us_gal, pocket_imp_gal, pocket_us_fl_oz : float, optional
        Air that stays under the lid when a vessel is filled with liquid. From 0 to 1000 in ``pocket_l``.
        Default: 0.05 L; counts with purge "push".
    push_gauge_kpa, push_gauge_bar, push_gauge_psi, push_gauge_pa : float, optional
        Pressure above the air outside at which CO2 pushes liquid out of a full keg. From 0 to 3000 in
        ``push_gauge_kpa``. Default: 0.7 bar; counts with purge "push".
    dissolved_oxygen_ug_per_l, dissolved_oxygen_ppb, dissolved_oxygen_mg_per_l : float, optional
        Oxygen dissolved in the drink. From 0 to 100000 in ``dissolved_oxygen_ug_per_l``. Default: 0: none
        before.
    method : {"still", "dip_tube", "on_side", "stone", "rocked"}, optional
        How the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or
        rocked. Default: still.
    kla_per_h, kla_per_d : float, optional
        Share of the gap to equilibrium that closes in a time: first-order rate of uptake. From 3.6e-06 to 360
        in ``kla_per_h``. Default: that of the method.
    supply_g_per_h, supply_oz_per_h : float, optional
        The most CO2 that the regulator lets through. From 0.0036 to 3.6e+06 in ``supply_g_per_h``. Default:
        no limit.
    burst_gauge_kpa, burst_gauge_bar, burst_gauge_psi, burst_gauge_pa : float, optional
        High pressure, above the air outside, with which carbonation is started. From 0 to 3000 in
        ``burst_gauge_kpa``. Default: 2 bar, where a burst is of use and the keg stands it.
    depth_m, depth_ft : float, optional
        Height of drink above the place that is meant. From 0 to 30 in ``depth_m``. Default: needed with a
        stone: the drink over it.
    wetting_kpa, wetting_bar, wetting_psi, wetting_pa : float, optional
        Pressure at which gas first bubbles from the wet stone. From 0 to 1000 in ``wetting_kpa``. Default:
        needed with a stone.
    margin_kpa, margin_bar, margin_psi, margin_pa : float, optional
        Pressure to spare, so that gas flows. From 0 to 1000 in ``margin_kpa``. Default: 0.
    cylinder_size : {"cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg",
        "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"}, optional
        Size of the cylinder or cartridge: see the table cylinder_sizes. Default: cylinder_5_lb, unless charge
        is given.
    charge_g, charge_kg, charge_oz, charge_lb : float, optional
        CO2 in a full cylinder. From 0.1 to 1e+06 in ``charge_g``. Default: that of the cylinder_size.
    gas_loss_percent : float, optional
        CO2 lost through leaks and disconnecting, percent of what is used. From 0 to 500 in
        ``gas_loss_percent``. Default: 0 %.
    tube : {"vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in",
        "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od",
        "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"}, optional
        Tubing of the draught line: see the table tubes. Default: vinyl_3_16_in, unless a bore is given.
    bore_mm, bore_in : float, optional
        Inner diameter of the line. From 1 to 50 in ``bore_mm``. Default: that of the tube.
    line_m, line_ft : float, optional
        Length of the draught line. From 0 to 500 in ``line_m``. Default: not told: the length for the pour is
        worked out.
    rise_m, rise_ft : float, optional
        Height of the faucet over the drink in the keg (its middle, where it is half empty); below 0 where the
        faucet is lower. From -30 to 50 in ``rise_m``. Default: 0: the faucet at the height of the drink.
    fittings_multiplier : float, optional
        Losses of fittings and faucet, in velocity heads of the line. From 0 to 1000 in
        ``fittings_multiplier``. Default: 3, of a home line: judgement.
    hardware_kpa, hardware_bar, hardware_psi, hardware_pa : float, optional
        Pressure that faucet, shank, couplings and other lengths of line take, by the trade's balance. From 0
        to 1000 in ``hardware_kpa``. Default: 0.
    flow_l_per_min, flow_us_fl_oz_per_s, flow_us_gal_per_min : float, optional
        Drink that flows. From 0.0006 to 6000 in ``flow_l_per_min``. Default: not told.
    pour_seconds : float, optional
        Time in which the glass is full. From 0.1 to 36000 in ``pour_seconds``. Default: 12 s, unless a flow
        is given.
    glass_l, glass_ml, glass_us_gal, glass_imp_gal, glass_us_fl_oz : float, optional
        Drink that is poured into one glass. From 0.01 to 100 in ``glass_l``. Default: a US pint, 473.176 mL.
    viscosity_multiplier : float, optional
        Viscosity of the drink over that of water. From 0.5 to 10 in ``viscosity_multiplier``. Default: usual
        for the drink.
    fill_method : {"automatic", "counter_pressure_line", "hand_counter_pressure", "tap_tube", "tilted_glass"},
        optional
        How the drink goes from the keg into bottles or growlers: see the table filling_losses. Default:
        nothing is filled from the keg.
    fill_loss_co2_g_per_l, fill_loss_volumes : float, optional
        CO2 lost while filling. From 0 to 30 in ``fill_loss_co2_g_per_l``. Default: that of the fill_method.
    released_g, released_kg, released_oz, released_lb : float, optional
        CO2 that escapes into the room. From 0 to 1e+08 in ``released_g``. Default: all that the cylinder
        holds.
    room_m3, room_ft3 : float, optional
        Volume of the room. From 0.1 to 1e+06 in ``room_m3``. Default: not told: nothing is said of the room.
    air_changes_per_h, air_changes_per_d : float, optional
        How often the air of the room is exchanged: about 0.5 an hour in a closed room, less in a cold room or
        a cellar. From 0.01 to 360 in ``air_changes_per_h``. Default: 0.5 1/h, a closed room, and noted.
    sugar : {"dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey",
        "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar",
        "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses",
        "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate",
        "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63",
        "custom"}, optional
        The priming sugar. Default: sucrose.
    sugar_water_percent : float, optional
        Water in a sugar of one's own, percent of its mass. From 0 to 100 in ``sugar_water_percent``. Default:
        only with a custom sugar.
    sugar_sg : float, optional
        Specific gravity 20/20 °C of a syrup of one's own, from which its water follows. From 1 to 1.45 in
        ``sugar_sg``. Default: only with a custom sugar.
    sugar_fermentable_percent : float, optional
        What yeast ferments of the dry matter of a sugar of one's own, percent. From 0 to 100 in
        ``sugar_fermentable_percent``. Default: only with a custom sugar.
    sugar_kind : {"hexose", "disaccharide", "trisaccharide"}, optional
        What the fermentable part of a sugar of one's own is. Default: only with a custom sugar.
    bottle_l, bottle_ml, bottle_us_gal, bottle_imp_gal, bottle_us_fl_oz : float, optional
        Drink that goes into one bottle. From 0.01 to 100 in ``bottle_l``. Default: 0.5 L.
    bottling_outfit_money : float, optional
        Price of everything that bottling needs and kegging does not, without the bottles. From 0 to 1e+09 in
        ``bottling_outfit_money``. Default: 0.
    bottle_money : float, optional
        Price of one empty bottle. From 0 to 1e+09 in ``bottle_money``. Default: 0.
    cap_money : float, optional
        Price of one cap. From 0 to 1e+09 in ``cap_money``. Default: 0.
    sugar_money_per_kg, sugar_money_per_lb : float, optional
        Price of the priming sugar. From 0 to 1e+09 in ``sugar_money_per_kg``. Default: 0.
    uses_count : float, optional
        How often a bottle is used before it is lost or broken. From 1 to 100000 in ``uses_count``. Default:
        10.
    bottle_loss_percent : float, optional
        Drink lost in bottling, percent. From 0 to 100 in ``bottle_loss_percent``. Default: 3 %.
    outfit_money : float, optional
        Price of everything that kegging needs and bottling does not. From 0 to 1e+09 in ``outfit_money``.
        Default: 0.
    gas_money_per_kg, gas_money_per_lb : float, optional
        Price of CO2. From 0 to 1e+09 in ``gas_money_per_kg``. Default: 0.
    keg_loss_percent : float, optional
        Drink lost in kegging and in the line, percent. From 0 to 100 in ``keg_loss_percent``. Default: 3 %.
    drink_money_per_l, drink_money_per_us_gal : float, optional
        What the drink itself costs. From 0 to 1e+09 in ``drink_money_per_l``. Default: 0.
    batches_count : float, optional
        How many batches are looked at. From 1 to 100000 in ``batches_count``. Default: 10.
    basis : {"handbook", "physical"}, optional
        The set of assumptions to start from. Default: handbook; a sealed keg always takes the physical one.
    model : {"chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water",
        "carroll_water"}, optional
        The solubility model (default: that of the basis for this drink). Default: that of the basis for the
        drink.
    residual_model : {"table", "equilibrium"}, optional
        The model of residual CO2 (default: that of the basis). Default: that of the basis.
    yield_percent : float, optional
        CO2 really made, in percent of the sugar's theoretical yield. From 50 to 105 in ``yield_percent``.
        Default: that of the basis.
    solubility_multiplier : float, optional
        Factor on every solubility. From 0.5 to 2 in ``solubility_multiplier``. Default: 1.
    residual_multiplier : float, optional
        Factor on the residual CO2. From 0 to 3 in ``residual_multiplier``. Default: 1.
    yield_multiplier : float, optional
        Factor on the yield of sugar. From 0.5 to 2 in ``yield_multiplier``. Default: 1.
    working : bool, optional
        Whether the answer carries its working. Default: false.
    readings : sequence of mappings, optional
        Gravity readings, the earliest first: the last one is the gravity now. A row has:

        - ``time_h``, ``time_d``, ``time_min``, ``time_s``: Time: since the bottles were closed or the gas was
          connected, on the date of a reading, or of a spell or step at one temperature. From 0 to 44444.4 in
          ``time_h``. Required.
        - ``current_sg``: Specific gravity 20/20 °C as it is now. From 0.98 to 1.165 in ``current_sg``.
          Required: this, or another reading.
        - ``current_plato``: Apparent extract as it is now. From -5.2 to 37 in ``current_plato``. Required:
          this, or another reading.

        A data frame, or a mapping of columns, holds rows too.
    uncertainty : mapping, optional
        How far inputs may lie from what was given, by their names, as ``Result.uncertainty`` takes it: the
        answer's ``uncertainty`` then has the intervals of its main parts.

    Returns
    -------
    Kegging
        ``page()`` is the whole as text. The parts, each an answer or an ``error``, some only where asked for:
        ``request``, ``kegs``, ``readiness``, ``start``, ``regulator``, ``push``, ``purge``, ``purged``,
        ``oxygen``, ``carbonating``, ``burst``, ``stone``, ``spunding``, ``keg_priming``, ``gas``,
        ``cylinder``, ``line``, ``pour``, ``handbook_line``, ``trade_line``, ``warmed``, ``filling``,
        ``filling_regulator``, ``room``, ``cost``, ``break_even``, ``days``, ``safety``, ``uncertainty``.

    Raises
    ------
    CarbError
        Where the request as a whole is wrong, as with an unknown name or a wrong row of a list. What is wrong
        with one part is the ``error`` of that part.

    Examples
    --------
    >>> import carb
    >>> batch = carb.kegging(
    ...     packaged_l=18.9,
    ...     volumes=2.5,
    ...     warmest_c=20,
    ...     serving_c=4,
    ...     altitude_m=0,
    ...     keg_rating_gauge_bar=9,
    ... )
    >>> batch.regulator.gauge_bar
    0.8138910927616374
    >>> batch.carbonating.expected.time_d
    8.204678687772928
    """

class At(Bound):
    """All functions with a context that they share."""

    def __init__(
        self,
        *,
        gauge_kpa: float | None = None,
        gauge_bar: float | None = None,
        gauge_psi: float | None = None,
        gauge_pa: float | None = None,
        abs_kpa: float | None = None,
        abs_bar: float | None = None,
        abs_psi: float | None = None,
        abs_pa: float | None = None,
        temperature_c: float | None = None,
        temperature_f: float | None = None,
        temperature_k: float | None = None,
        altitude_m: float | None = None,
        altitude_ft: float | None = None,
        ambient_kpa: float | None = None,
        ambient_bar: float | None = None,
        ambient_psi: float | None = None,
        ambient_pa: float | None = None,
        sea_level_kpa: float | None = None,
        sea_level_bar: float | None = None,
        sea_level_psi: float | None = None,
        sea_level_pa: float | None = None,
        co2_percent: float | None = None,
        air_abs_kpa: float | None = None,
        air_abs_bar: float | None = None,
        air_abs_psi: float | None = None,
        air_abs_pa: float | None = None,
        beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
        abv_percent: float | None = None,
        extract_g_per_l: float | None = None,
        basis: Literal["handbook", "physical"] | None = None,
        model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
        solubility_multiplier: float | None = None,
        co2_g_per_l: float | None = None,
        volumes: float | None = None,
        filling_c: float | None = None,
        filling_f: float | None = None,
        filling_k: float | None = None,
        headspace_percent: float | None = None,
        keg_rating_gauge_kpa: float | None = None,
        keg_rating_gauge_bar: float | None = None,
        keg_rating_gauge_psi: float | None = None,
        keg_rating_gauge_pa: float | None = None,
        fermentable_g_per_l: float | None = None,
        yeast: Literal["live", "none"] | None = None,
        yield_percent: float | None = None,
        yield_multiplier: float | None = None,
        final_sg: float | None = None,
        final_plato: float | None = None,
        fermenter_headspace_percent: float | None = None,
        start_co2_g_per_l: float | None = None,
        start_volumes: float | None = None,
        extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
        residual_model: Literal["table", "equilibrium"] | None = None,
        residual_multiplier: float | None = None,
        current_sg: float | None = None,
        current_plato: float | None = None,
        depth_m: float | None = None,
        depth_ft: float | None = None,
        wetting_kpa: float | None = None,
        wetting_bar: float | None = None,
        wetting_psi: float | None = None,
        wetting_pa: float | None = None,
        margin_kpa: float | None = None,
        margin_bar: float | None = None,
        margin_psi: float | None = None,
        margin_pa: float | None = None,
        sg: float | None = None,
        warmest_c: float | None = None,
        warmest_f: float | None = None,
        warmest_k: float | None = None,
        fermenter_gauge_kpa: float | None = None,
        fermenter_gauge_bar: float | None = None,
        fermenter_gauge_psi: float | None = None,
        fermenter_gauge_pa: float | None = None,
        cold_crash: Literal["open", "closed", "co2_supplied"] | None = None,
        crash_c: float | None = None,
        crash_f: float | None = None,
        crash_k: float | None = None,
        packaged_l: float | None = None,
        packaged_ml: float | None = None,
        packaged_us_gal: float | None = None,
        packaged_imp_gal: float | None = None,
        packaged_us_fl_oz: float | None = None,
        residual_co2_g_per_l: float | None = None,
        residual_volumes: float | None = None,
        sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None = None,
        sugar_water_percent: float | None = None,
        sugar_sg: float | None = None,
        sugar_fermentable_percent: float | None = None,
        sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None = None,
        syrup_water_l: float | None = None,
        syrup_water_ml: float | None = None,
        syrup_water_us_gal: float | None = None,
        syrup_water_imp_gal: float | None = None,
        syrup_water_us_fl_oz: float | None = None,
        count_syrup: bool | None = None,
        count_headspace: bool | None = None,
        room_c: float | None = None,
        room_f: float | None = None,
        room_k: float | None = None,
        mass_g: float | None = None,
        mass_kg: float | None = None,
        mass_oz: float | None = None,
        mass_lb: float | None = None,
        wort_original_sg: float | None = None,
        wort_original_plato: float | None = None,
        wort_current_sg: float | None = None,
        wort_current_plato: float | None = None,
        limit_attenuation_percent: float | None = None,
        wort_co2_g_per_l: float | None = None,
        wort_volumes: float | None = None,
        dissolving_c: float | None = None,
        dissolving_f: float | None = None,
        dissolving_k: float | None = None,
        bottle_class: Literal["light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne", "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"] | None = None,
        rating_gauge_kpa: float | None = None,
        rating_gauge_bar: float | None = None,
        rating_gauge_psi: float | None = None,
        rating_gauge_pa: float | None = None,
        time_h: float | None = None,
        time_d: float | None = None,
        time_min: float | None = None,
        time_s: float | None = None,
        yeast_million_per_ml: float | None = None,
        age_h: float | None = None,
        age_d: float | None = None,
        age_min: float | None = None,
        age_s: float | None = None,
        filtered: bool | None = None,
        progress_percent: float | None = None,
        plato: float | None = None,
        original_sg: float | None = None,
        original_plato: float | None = None,
        real_extract_model: Literal["balling", "quotient"] | None = None,
        expected_attenuation_percent: float | None = None,
        addition: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom", "lactose", "maltodextrin", "sucralose", "aspartame", "saccharin", "stevia", "erythritol", "xylitol", "sorbitol", "sweetener_packets"] | None = None,
        dose_g_per_l: float | None = None,
        viscosity_multiplier: float | None = None,
        cylinder_c: float | None = None,
        cylinder_f: float | None = None,
        cylinder_k: float | None = None,
        line_m: float | None = None,
        line_ft: float | None = None,
        tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None = None,
        bore_mm: float | None = None,
        bore_in: float | None = None,
        rise_m: float | None = None,
        rise_ft: float | None = None,
        fittings_multiplier: float | None = None,
        glass_l: float | None = None,
        glass_ml: float | None = None,
        glass_us_gal: float | None = None,
        glass_imp_gal: float | None = None,
        glass_us_fl_oz: float | None = None,
        flow_l_per_min: float | None = None,
        flow_us_fl_oz_per_s: float | None = None,
        flow_us_gal_per_min: float | None = None,
        pour_seconds: float | None = None,
        resistance_bar_per_m: float | None = None,
        resistance_psi_per_ft: float | None = None,
        hardware_kpa: float | None = None,
        hardware_bar: float | None = None,
        hardware_psi: float | None = None,
        hardware_pa: float | None = None,
        fill_method: Literal["automatic", "counter_pressure_line", "hand_counter_pressure", "tap_tube", "tilted_glass"] | None = None,
        fill_loss_co2_g_per_l: float | None = None,
        fill_loss_volumes: float | None = None,
        other_l: float | None = None,
        other_ml: float | None = None,
        other_us_gal: float | None = None,
        other_imp_gal: float | None = None,
        other_us_fl_oz: float | None = None,
        other_co2_g_per_l: float | None = None,
        other_volumes: float | None = None,
        purge_gauge_kpa: float | None = None,
        purge_gauge_bar: float | None = None,
        purge_gauge_psi: float | None = None,
        purge_gauge_pa: float | None = None,
        cycles_count: float | None = None,
        start_oxygen_ppm: float | None = None,
        start_oxygen_vol_percent: float | None = None,
        gas_oxygen_ppm: float | None = None,
        gas_oxygen_vol_percent: float | None = None,
        keg_l: float | None = None,
        keg_ml: float | None = None,
        keg_us_gal: float | None = None,
        keg_imp_gal: float | None = None,
        keg_us_fl_oz: float | None = None,
        oxygen_ppm: float | None = None,
        oxygen_vol_percent: float | None = None,
        sweeps_count: float | None = None,
        pocket_l: float | None = None,
        pocket_ml: float | None = None,
        pocket_us_gal: float | None = None,
        pocket_imp_gal: float | None = None,
        pocket_us_fl_oz: float | None = None,
        push_gauge_kpa: float | None = None,
        push_gauge_bar: float | None = None,
        push_gauge_psi: float | None = None,
        push_gauge_pa: float | None = None,
        dissolved_oxygen_ug_per_l: float | None = None,
        dissolved_oxygen_ppb: float | None = None,
        dissolved_oxygen_mg_per_l: float | None = None,
        purge: Literal["none", "headspace", "empty", "push"] | None = None,
        purge_c: float | None = None,
        purge_f: float | None = None,
        purge_k: float | None = None,
        gas_loss_percent: float | None = None,
        cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None = None,
        charge_g: float | None = None,
        charge_kg: float | None = None,
        charge_oz: float | None = None,
        charge_lb: float | None = None,
        filling_ratio_g_per_g: float | None = None,
        gross_g: float | None = None,
        gross_kg: float | None = None,
        gross_oz: float | None = None,
        gross_lb: float | None = None,
        tare_g: float | None = None,
        tare_kg: float | None = None,
        tare_oz: float | None = None,
        tare_lb: float | None = None,
        gas_g: float | None = None,
        gas_kg: float | None = None,
        gas_oz: float | None = None,
        gas_lb: float | None = None,
        released_g: float | None = None,
        released_kg: float | None = None,
        released_oz: float | None = None,
        released_lb: float | None = None,
        room_m3: float | None = None,
        room_ft3: float | None = None,
        air_changes_per_h: float | None = None,
        air_changes_per_d: float | None = None,
        leak_g_per_h: float | None = None,
        leak_oz_per_h: float | None = None,
        bottle_l: float | None = None,
        bottle_ml: float | None = None,
        bottle_us_gal: float | None = None,
        bottle_imp_gal: float | None = None,
        bottle_us_fl_oz: float | None = None,
        bottling_outfit_money: float | None = None,
        bottle_money: float | None = None,
        cap_money: float | None = None,
        sugar_money_per_kg: float | None = None,
        sugar_money_per_lb: float | None = None,
        uses_count: float | None = None,
        bottle_loss_percent: float | None = None,
        outfit_money: float | None = None,
        gas_money_per_kg: float | None = None,
        gas_money_per_lb: float | None = None,
        keg_loss_percent: float | None = None,
        drink_money_per_l: float | None = None,
        drink_money_per_us_gal: float | None = None,
        batches_count: float | None = None,
        method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None = None,
        keg_diameter_m: float | None = None,
        keg_diameter_ft: float | None = None,
        kla_per_h: float | None = None,
        kla_per_d: float | None = None,
        supply_g_per_h: float | None = None,
        supply_oz_per_h: float | None = None,
        burst_gauge_kpa: float | None = None,
        burst_gauge_bar: float | None = None,
        burst_gauge_psi: float | None = None,
        burst_gauge_pa: float | None = None,
        chart: Literal["metric", "us"] | None = None,
        fill_order: Literal["least_leftover", "fewest_bottles", "fewest_sizes", "as_listed"] | None = None,
        spare_percent: float | None = None,
        bottles: Rows | None = None,
        tablet_g: float | None = None,
        tablet_kg: float | None = None,
        tablet_oz: float | None = None,
        tablet_lb: float | None = None,
        hot_day_c: float | None = None,
        hot_day_f: float | None = None,
        hot_day_k: float | None = None,
        history: Rows | None = None,
        schedule: Rows | None = None,
        uptake_readings: Rows | None = None,
        title: str | None = None,
        microbes: Literal["brewing_yeast", "diastatic", "wild"] | None = None,
        batch_l: float | None = None,
        batch_ml: float | None = None,
        batch_us_gal: float | None = None,
        batch_imp_gal: float | None = None,
        batch_us_fl_oz: float | None = None,
        loss_l: float | None = None,
        loss_ml: float | None = None,
        loss_us_gal: float | None = None,
        loss_imp_gal: float | None = None,
        loss_us_fl_oz: float | None = None,
        cellar_c: float | None = None,
        cellar_f: float | None = None,
        cellar_k: float | None = None,
        pasteurising_c: float | None = None,
        pasteurising_f: float | None = None,
        pasteurising_k: float | None = None,
        scale_g: float | None = None,
        scale_kg: float | None = None,
        scale_oz: float | None = None,
        scale_lb: float | None = None,
        working: bool | None = None,
        additions: Rows | None = None,
        readings: Rows | None = None,
        serving_c: float | None = None,
        serving_f: float | None = None,
        serving_k: float | None = None,
    ) -> None: ...
    @overload
    def dissolved_co2(self, **given: Unpack[_DissolvedCo2Inputs[float]]) -> DissolvedCo2[float]: ...
    @overload
    def dissolved_co2(self, **given: Unpack[_DissolvedCo2Inputs[Numbers]]) -> DissolvedCo2[NDArray[np.float64]]: ...
    @overload
    def dissolved_co2(self, **given: Unpack[_DissolvedCo2Inputs[Container]]) -> DissolvedCo2[Any]: ...
    @overload
    def keg_pressure(self, **given: Unpack[_KegPressureInputs[float]]) -> KegPressure[float]: ...
    @overload
    def keg_pressure(self, **given: Unpack[_KegPressureInputs[Numbers]]) -> KegPressure[NDArray[np.float64]]: ...
    @overload
    def keg_pressure(self, **given: Unpack[_KegPressureInputs[Container]]) -> KegPressure[Any]: ...
    @overload
    def gas_blend(self, **given: Unpack[_GasBlendInputs[float]]) -> GasBlend[float]: ...
    @overload
    def gas_blend(self, **given: Unpack[_GasBlendInputs[Numbers]]) -> GasBlend[NDArray[np.float64]]: ...
    @overload
    def gas_blend(self, **given: Unpack[_GasBlendInputs[Container]]) -> GasBlend[Any]: ...
    @overload
    def keg_temperature(self, **given: Unpack[_KegTemperatureInputs[float]]) -> KegTemperature[float]: ...
    @overload
    def keg_temperature(self, **given: Unpack[_KegTemperatureInputs[Numbers]]) -> KegTemperature[NDArray[np.float64]]: ...
    @overload
    def keg_temperature(self, **given: Unpack[_KegTemperatureInputs[Container]]) -> KegTemperature[Any]: ...
    @overload
    def warmed_keg(self, **given: Unpack[_WarmedKegInputs[float]]) -> WarmedKeg[float]: ...
    @overload
    def warmed_keg(self, **given: Unpack[_WarmedKegInputs[Numbers]]) -> WarmedKeg[NDArray[np.float64]]: ...
    @overload
    def warmed_keg(self, **given: Unpack[_WarmedKegInputs[Container]]) -> WarmedKeg[Any]: ...
    @overload
    def spunding(self, **given: Unpack[_SpundingInputs[float]]) -> Spunding[float]: ...
    @overload
    def spunding(self, **given: Unpack[_SpundingInputs[Numbers]]) -> Spunding[NDArray[np.float64]]: ...
    @overload
    def spunding(self, **given: Unpack[_SpundingInputs[Container]]) -> Spunding[Any]: ...
    @overload
    def closed_fermentation(self, **given: Unpack[_ClosedFermentationInputs[float]]) -> ClosedFermentation[float]: ...
    @overload
    def closed_fermentation(self, **given: Unpack[_ClosedFermentationInputs[Numbers]]) -> ClosedFermentation[NDArray[np.float64]]: ...
    @overload
    def closed_fermentation(self, **given: Unpack[_ClosedFermentationInputs[Container]]) -> ClosedFermentation[Any]: ...
    @overload
    def stone_pressure(self, **given: Unpack[_StonePressureInputs[float]]) -> StonePressure[float]: ...
    @overload
    def stone_pressure(self, **given: Unpack[_StonePressureInputs[Numbers]]) -> StonePressure[NDArray[np.float64]]: ...
    @overload
    def stone_pressure(self, **given: Unpack[_StonePressureInputs[Container]]) -> StonePressure[Any]: ...
    @overload
    def residual_co2(self, **given: Unpack[_ResidualCo2Inputs[float]]) -> ResidualCo2[float]: ...
    @overload
    def residual_co2(self, **given: Unpack[_ResidualCo2Inputs[Numbers]]) -> ResidualCo2[NDArray[np.float64]]: ...
    @overload
    def residual_co2(self, **given: Unpack[_ResidualCo2Inputs[Container]]) -> ResidualCo2[Any]: ...
    @overload
    def priming_sugar(self, **given: Unpack[_PrimingSugarInputs[float]]) -> PrimingSugar[float]: ...
    @overload
    def priming_sugar(self, **given: Unpack[_PrimingSugarInputs[Numbers]]) -> PrimingSugar[NDArray[np.float64]]: ...
    @overload
    def priming_sugar(self, **given: Unpack[_PrimingSugarInputs[Container]]) -> PrimingSugar[Any]: ...
    @overload
    def primed_carbonation(self, **given: Unpack[_PrimedCarbonationInputs[float]]) -> PrimedCarbonation[float]: ...
    @overload
    def primed_carbonation(self, **given: Unpack[_PrimedCarbonationInputs[Numbers]]) -> PrimedCarbonation[NDArray[np.float64]]: ...
    @overload
    def primed_carbonation(self, **given: Unpack[_PrimedCarbonationInputs[Container]]) -> PrimedCarbonation[Any]: ...
    @overload
    def priming_wort(self, **given: Unpack[_PrimingWortInputs[float]]) -> PrimingWort[float]: ...
    @overload
    def priming_wort(self, **given: Unpack[_PrimingWortInputs[Numbers]]) -> PrimingWort[NDArray[np.float64]]: ...
    @overload
    def priming_wort(self, **given: Unpack[_PrimingWortInputs[Container]]) -> PrimingWort[Any]: ...
    @overload
    def priming_syrup(self, **given: Unpack[_PrimingSyrupInputs[float]]) -> PrimingSyrup[float]: ...
    @overload
    def priming_syrup(self, **given: Unpack[_PrimingSyrupInputs[Numbers]]) -> PrimingSyrup[NDArray[np.float64]]: ...
    @overload
    def priming_syrup(self, **given: Unpack[_PrimingSyrupInputs[Container]]) -> PrimingSyrup[Any]: ...
    @overload
    def package_pressure(self, **given: Unpack[_PackagePressureInputs[float]]) -> PackagePressure[float]: ...
    @overload
    def package_pressure(self, **given: Unpack[_PackagePressureInputs[Numbers]]) -> PackagePressure[NDArray[np.float64]]: ...
    @overload
    def package_pressure(self, **given: Unpack[_PackagePressureInputs[Container]]) -> PackagePressure[Any]: ...
    @overload
    def package_carbonation(self, **given: Unpack[_PackageCarbonationInputs[float]]) -> PackageCarbonation[float]: ...
    @overload
    def package_carbonation(self, **given: Unpack[_PackageCarbonationInputs[Numbers]]) -> PackageCarbonation[NDArray[np.float64]]: ...
    @overload
    def package_carbonation(self, **given: Unpack[_PackageCarbonationInputs[Container]]) -> PackageCarbonation[Any]: ...
    @overload
    def conditioning(self, **given: Unpack[_ConditioningInputs[float]]) -> Conditioning[float]: ...
    @overload
    def conditioning(self, **given: Unpack[_ConditioningInputs[Numbers]]) -> Conditioning[NDArray[np.float64]]: ...
    @overload
    def conditioning(self, **given: Unpack[_ConditioningInputs[Container]]) -> Conditioning[Any]: ...
    @overload
    def conditioning_time(self, **given: Unpack[_ConditioningTimeInputs[float]]) -> ConditioningTime[float]: ...
    @overload
    def conditioning_time(self, **given: Unpack[_ConditioningTimeInputs[Numbers]]) -> ConditioningTime[NDArray[np.float64]]: ...
    @overload
    def conditioning_time(self, **given: Unpack[_ConditioningTimeInputs[Container]]) -> ConditioningTime[Any]: ...
    @overload
    def reyeasting(self, **given: Unpack[_ReyeastingInputs[float]]) -> Reyeasting[float]: ...
    @overload
    def reyeasting(self, **given: Unpack[_ReyeastingInputs[Numbers]]) -> Reyeasting[NDArray[np.float64]]: ...
    @overload
    def reyeasting(self, **given: Unpack[_ReyeastingInputs[Container]]) -> Reyeasting[Any]: ...
    @overload
    def gravity(self, **given: Unpack[_GravityInputs[float]]) -> Gravity[float]: ...
    @overload
    def gravity(self, **given: Unpack[_GravityInputs[Numbers]]) -> Gravity[NDArray[np.float64]]: ...
    @overload
    def gravity(self, **given: Unpack[_GravityInputs[Container]]) -> Gravity[Any]: ...
    @overload
    def attenuation(self, **given: Unpack[_AttenuationInputs[float]]) -> Attenuation[float]: ...
    @overload
    def attenuation(self, **given: Unpack[_AttenuationInputs[Numbers]]) -> Attenuation[NDArray[np.float64]]: ...
    @overload
    def attenuation(self, **given: Unpack[_AttenuationInputs[Container]]) -> Attenuation[Any]: ...
    @overload
    def final_gravity(self, **given: Unpack[_FinalGravityInputs[float]]) -> FinalGravity[float]: ...
    @overload
    def final_gravity(self, **given: Unpack[_FinalGravityInputs[Numbers]]) -> FinalGravity[NDArray[np.float64]]: ...
    @overload
    def final_gravity(self, **given: Unpack[_FinalGravityInputs[Container]]) -> FinalGravity[Any]: ...
    @overload
    def gravity_co2(self, **given: Unpack[_GravityCo2Inputs[float]]) -> GravityCo2[float]: ...
    @overload
    def gravity_co2(self, **given: Unpack[_GravityCo2Inputs[Numbers]]) -> GravityCo2[NDArray[np.float64]]: ...
    @overload
    def gravity_co2(self, **given: Unpack[_GravityCo2Inputs[Container]]) -> GravityCo2[Any]: ...
    @overload
    def added_co2(self, **given: Unpack[_AddedCo2Inputs[float]]) -> AddedCo2[float]: ...
    @overload
    def added_co2(self, **given: Unpack[_AddedCo2Inputs[Numbers]]) -> AddedCo2[NDArray[np.float64]]: ...
    @overload
    def added_co2(self, **given: Unpack[_AddedCo2Inputs[Container]]) -> AddedCo2[Any]: ...
    @overload
    def drink_properties(self, **given: Unpack[_DrinkPropertiesInputs[float]]) -> DrinkProperties[float]: ...
    @overload
    def drink_properties(self, **given: Unpack[_DrinkPropertiesInputs[Numbers]]) -> DrinkProperties[NDArray[np.float64]]: ...
    @overload
    def drink_properties(self, **given: Unpack[_DrinkPropertiesInputs[Container]]) -> DrinkProperties[Any]: ...
    @overload
    def co2_saturation(self, **given: Unpack[_Co2SaturationInputs[float]]) -> Co2Saturation[float]: ...
    @overload
    def co2_saturation(self, **given: Unpack[_Co2SaturationInputs[Numbers]]) -> Co2Saturation[NDArray[np.float64]]: ...
    @overload
    def co2_saturation(self, **given: Unpack[_Co2SaturationInputs[Container]]) -> Co2Saturation[Any]: ...
    @overload
    def line_flow(self, **given: Unpack[_LineFlowInputs[float]]) -> LineFlow[float]: ...
    @overload
    def line_flow(self, **given: Unpack[_LineFlowInputs[Numbers]]) -> LineFlow[NDArray[np.float64]]: ...
    @overload
    def line_flow(self, **given: Unpack[_LineFlowInputs[Container]]) -> LineFlow[Any]: ...
    @overload
    def line_length(self, **given: Unpack[_LineLengthInputs[float]]) -> LineLength[float]: ...
    @overload
    def line_length(self, **given: Unpack[_LineLengthInputs[Numbers]]) -> LineLength[NDArray[np.float64]]: ...
    @overload
    def line_length(self, **given: Unpack[_LineLengthInputs[Container]]) -> LineLength[Any]: ...
    @overload
    def line_pressure(self, **given: Unpack[_LinePressureInputs[float]]) -> LinePressure[float]: ...
    @overload
    def line_pressure(self, **given: Unpack[_LinePressureInputs[Numbers]]) -> LinePressure[NDArray[np.float64]]: ...
    @overload
    def line_pressure(self, **given: Unpack[_LinePressureInputs[Container]]) -> LinePressure[Any]: ...
    @overload
    def handbook_line(self, **given: Unpack[_HandbookLineInputs[float]]) -> HandbookLine[float]: ...
    @overload
    def handbook_line(self, **given: Unpack[_HandbookLineInputs[Numbers]]) -> HandbookLine[NDArray[np.float64]]: ...
    @overload
    def handbook_line(self, **given: Unpack[_HandbookLineInputs[Container]]) -> HandbookLine[Any]: ...
    @overload
    def handbook_pressure(self, **given: Unpack[_HandbookPressureInputs[float]]) -> HandbookPressure[float]: ...
    @overload
    def handbook_pressure(self, **given: Unpack[_HandbookPressureInputs[Numbers]]) -> HandbookPressure[NDArray[np.float64]]: ...
    @overload
    def handbook_pressure(self, **given: Unpack[_HandbookPressureInputs[Container]]) -> HandbookPressure[Any]: ...
    @overload
    def filling_carbonation(self, **given: Unpack[_FillingCarbonationInputs[float]]) -> FillingCarbonation[float]: ...
    @overload
    def filling_carbonation(self, **given: Unpack[_FillingCarbonationInputs[Numbers]]) -> FillingCarbonation[NDArray[np.float64]]: ...
    @overload
    def filling_carbonation(self, **given: Unpack[_FillingCarbonationInputs[Container]]) -> FillingCarbonation[Any]: ...
    @overload
    def blend(self, **given: Unpack[_BlendInputs[float]]) -> Blend[float]: ...
    @overload
    def blend(self, **given: Unpack[_BlendInputs[Numbers]]) -> Blend[NDArray[np.float64]]: ...
    @overload
    def blend(self, **given: Unpack[_BlendInputs[Container]]) -> Blend[Any]: ...
    @overload
    def purge_oxygen(self, **given: Unpack[_PurgeOxygenInputs[float]]) -> PurgeOxygen[float]: ...
    @overload
    def purge_oxygen(self, **given: Unpack[_PurgeOxygenInputs[Numbers]]) -> PurgeOxygen[NDArray[np.float64]]: ...
    @overload
    def purge_oxygen(self, **given: Unpack[_PurgeOxygenInputs[Container]]) -> PurgeOxygen[Any]: ...
    @overload
    def purge_cycles(self, **given: Unpack[_PurgeCyclesInputs[float]]) -> PurgeCycles[float]: ...
    @overload
    def purge_cycles(self, **given: Unpack[_PurgeCyclesInputs[Numbers]]) -> PurgeCycles[NDArray[np.float64]]: ...
    @overload
    def purge_cycles(self, **given: Unpack[_PurgeCyclesInputs[Container]]) -> PurgeCycles[Any]: ...
    @overload
    def sweep_oxygen(self, **given: Unpack[_SweepOxygenInputs[float]]) -> SweepOxygen[float]: ...
    @overload
    def sweep_oxygen(self, **given: Unpack[_SweepOxygenInputs[Numbers]]) -> SweepOxygen[NDArray[np.float64]]: ...
    @overload
    def sweep_oxygen(self, **given: Unpack[_SweepOxygenInputs[Container]]) -> SweepOxygen[Any]: ...
    @overload
    def push_oxygen(self, **given: Unpack[_PushOxygenInputs[float]]) -> PushOxygen[float]: ...
    @overload
    def push_oxygen(self, **given: Unpack[_PushOxygenInputs[Numbers]]) -> PushOxygen[NDArray[np.float64]]: ...
    @overload
    def push_oxygen(self, **given: Unpack[_PushOxygenInputs[Container]]) -> PushOxygen[Any]: ...
    @overload
    def oxygen_pickup(self, **given: Unpack[_OxygenPickupInputs[float]]) -> OxygenPickup[float]: ...
    @overload
    def oxygen_pickup(self, **given: Unpack[_OxygenPickupInputs[Numbers]]) -> OxygenPickup[NDArray[np.float64]]: ...
    @overload
    def oxygen_pickup(self, **given: Unpack[_OxygenPickupInputs[Container]]) -> OxygenPickup[Any]: ...
    @overload
    def total_package_oxygen(self, **given: Unpack[_TotalPackageOxygenInputs[float]]) -> TotalPackageOxygen[float]: ...
    @overload
    def total_package_oxygen(self, **given: Unpack[_TotalPackageOxygenInputs[Numbers]]) -> TotalPackageOxygen[NDArray[np.float64]]: ...
    @overload
    def total_package_oxygen(self, **given: Unpack[_TotalPackageOxygenInputs[Container]]) -> TotalPackageOxygen[Any]: ...
    @overload
    def gas_budget(self, **given: Unpack[_GasBudgetInputs[float]]) -> GasBudget[float]: ...
    @overload
    def gas_budget(self, **given: Unpack[_GasBudgetInputs[Numbers]]) -> GasBudget[NDArray[np.float64]]: ...
    @overload
    def gas_budget(self, **given: Unpack[_GasBudgetInputs[Container]]) -> GasBudget[Any]: ...
    @overload
    def cylinder_left(self, **given: Unpack[_CylinderLeftInputs[float]]) -> CylinderLeft[float]: ...
    @overload
    def cylinder_left(self, **given: Unpack[_CylinderLeftInputs[Numbers]]) -> CylinderLeft[NDArray[np.float64]]: ...
    @overload
    def cylinder_left(self, **given: Unpack[_CylinderLeftInputs[Container]]) -> CylinderLeft[Any]: ...
    @overload
    def cylinder_contents(self, **given: Unpack[_CylinderContentsInputs[float]]) -> CylinderContents[float]: ...
    @overload
    def cylinder_contents(self, **given: Unpack[_CylinderContentsInputs[Numbers]]) -> CylinderContents[NDArray[np.float64]]: ...
    @overload
    def cylinder_contents(self, **given: Unpack[_CylinderContentsInputs[Container]]) -> CylinderContents[Any]: ...
    @overload
    def room_co2(self, **given: Unpack[_RoomCo2Inputs[float]]) -> RoomCo2[float]: ...
    @overload
    def room_co2(self, **given: Unpack[_RoomCo2Inputs[Numbers]]) -> RoomCo2[NDArray[np.float64]]: ...
    @overload
    def room_co2(self, **given: Unpack[_RoomCo2Inputs[Container]]) -> RoomCo2[Any]: ...
    @overload
    def room_leak(self, **given: Unpack[_RoomLeakInputs[float]]) -> RoomLeak[float]: ...
    @overload
    def room_leak(self, **given: Unpack[_RoomLeakInputs[Numbers]]) -> RoomLeak[NDArray[np.float64]]: ...
    @overload
    def room_leak(self, **given: Unpack[_RoomLeakInputs[Container]]) -> RoomLeak[Any]: ...
    @overload
    def ambient_pressure(self, **given: Unpack[_AmbientPressureInputs[float]]) -> AmbientPressure[float]: ...
    @overload
    def ambient_pressure(self, **given: Unpack[_AmbientPressureInputs[Numbers]]) -> AmbientPressure[NDArray[np.float64]]: ...
    @overload
    def ambient_pressure(self, **given: Unpack[_AmbientPressureInputs[Container]]) -> AmbientPressure[Any]: ...
    @overload
    def packaging_cost(self, **given: Unpack[_PackagingCostInputs[float]]) -> PackagingCost[float]: ...
    @overload
    def packaging_cost(self, **given: Unpack[_PackagingCostInputs[Numbers]]) -> PackagingCost[NDArray[np.float64]]: ...
    @overload
    def packaging_cost(self, **given: Unpack[_PackagingCostInputs[Container]]) -> PackagingCost[Any]: ...
    @overload
    def break_even(self, **given: Unpack[_BreakEvenInputs[float]]) -> BreakEven[float]: ...
    @overload
    def break_even(self, **given: Unpack[_BreakEvenInputs[Numbers]]) -> BreakEven[NDArray[np.float64]]: ...
    @overload
    def break_even(self, **given: Unpack[_BreakEvenInputs[Container]]) -> BreakEven[Any]: ...
    @overload
    def uptake_rate(self, **given: Unpack[_UptakeRateInputs[float]]) -> UptakeRate[float]: ...
    @overload
    def uptake_rate(self, **given: Unpack[_UptakeRateInputs[Numbers]]) -> UptakeRate[NDArray[np.float64]]: ...
    @overload
    def uptake_rate(self, **given: Unpack[_UptakeRateInputs[Container]]) -> UptakeRate[Any]: ...
    @overload
    def carbonation_time(self, **given: Unpack[_CarbonationTimeInputs[float]]) -> CarbonationTime[float]: ...
    @overload
    def carbonation_time(self, **given: Unpack[_CarbonationTimeInputs[Numbers]]) -> CarbonationTime[NDArray[np.float64]]: ...
    @overload
    def carbonation_time(self, **given: Unpack[_CarbonationTimeInputs[Container]]) -> CarbonationTime[Any]: ...
    @overload
    def carbonation_progress(self, **given: Unpack[_CarbonationProgressInputs[float]]) -> CarbonationProgress[float]: ...
    @overload
    def carbonation_progress(self, **given: Unpack[_CarbonationProgressInputs[Numbers]]) -> CarbonationProgress[NDArray[np.float64]]: ...
    @overload
    def carbonation_progress(self, **given: Unpack[_CarbonationProgressInputs[Container]]) -> CarbonationProgress[Any]: ...
    @overload
    def burst_time(self, **given: Unpack[_BurstTimeInputs[float]]) -> BurstTime[float]: ...
    @overload
    def burst_time(self, **given: Unpack[_BurstTimeInputs[Numbers]]) -> BurstTime[NDArray[np.float64]]: ...
    @overload
    def burst_time(self, **given: Unpack[_BurstTimeInputs[Container]]) -> BurstTime[Any]: ...
    def solubility_models(self, **given: Unpack[_SolubilityModelsInputs]) -> Table: ...
    def carbonation_chart(self, **given: Unpack[_CarbonationChartInputs]) -> Table: ...
    def fill_list(self, **given: Unpack[_FillListInputs]) -> Table: ...
    def bottle_doses(self, **given: Unpack[_BottleDosesInputs]) -> Table: ...
    def bottle_pressures(self, **given: Unpack[_BottlePressuresInputs]) -> Table: ...
    def bottle_verdicts(self, **given: Unpack[_BottleVerdictsInputs]) -> Table: ...
    def pressure_parts(self, **given: Unpack[_PressurePartsInputs]) -> Table: ...
    def conditioning_days(self, **given: Unpack[_ConditioningDaysInputs]) -> Table: ...
    def carbonation_curve(self, **given: Unpack[_CarbonationCurveInputs]) -> Table: ...
    def carbonation_schedule(self, **given: Unpack[_CarbonationScheduleInputs]) -> Table: ...
    def uptake_fit(self, **given: Unpack[_UptakeFitInputs]) -> Table: ...
    def line_balance(self, **given: Unpack[_LineBalanceInputs]) -> Table: ...
    def bottling(self, **given: Unpack[_BottlingInputs]) -> Bottling: ...
    def kegging(self, **given: Unpack[_KeggingInputs]) -> Kegging: ...

at = At
