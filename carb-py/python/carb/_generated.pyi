"""The types of the functions of the library and of their results."""

# Written by generate.py from the tables of the core; a test compares.


from collections.abc import Mapping
from typing import Any, Generic, Literal, TypedDict, TypeVar, overload

import numpy as np
from numpy.typing import NDArray
from typing_extensions import Unpack

from ._at import Bound
from ._errors import CarbWarning
from ._plan import Bottling, Kegging
from ._result import Part, Result
from ._table import Table
from ._types import Doubt, Number, Rows

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
    "BreakEven",
    "BurstTime",
    "BurstTimeExpected",
    "BurstTimeHold",
    "BurstTimeLatestRest",
    "BurstTimeLeast",
    "BurstTimeRest",
    "BurstTimeStop",
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
    "TotalPackageOxygen",
    "TotalPackageOxygenHeadspace",
    "TransitionFlowWarning",
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
    "ViscosityTemperatureWarning",
    "WarmedKeg",
    "WarmedKegExpected",
    "WarmedKegWorst",
    "WildDangerWarning",
    "WineTemperatureWarning",
    "WorkingPressureDangerWarning",
    "added_co2",
    "ambient_pressure",
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
    "pressure_parts",
    "primed_carbonation",
    "priming_sugar",
    "priming_syrup",
    "priming_wort",
    "purge_cycles",
    "purge_oxygen",
    "push_oxygen",
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
    "units",
    "uptake_fit",
    "uptake_rate",
    "warmed_keg",
]

T = TypeVar("T")
N = TypeVar("N")

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

class DissolvedCo2(Result[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class _DissolvedCo2Inputs(TypedDict, Generic[N], total=False):
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    abs_kpa: N | None
    abs_bar: N | None
    abs_psi: N | None
    abs_pa: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    co2_percent: N | None
    air_abs_kpa: N | None
    air_abs_bar: N | None
    air_abs_psi: N | None
    air_abs_pa: N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def dissolved_co2(**given: Unpack[_DissolvedCo2Inputs[float]]) -> DissolvedCo2[float]: ...
@overload
def dissolved_co2(**given: Unpack[_DissolvedCo2Inputs[Number]]) -> DissolvedCo2[NDArray[np.float64]]: ...

class KegPressure(Result[T]):
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...
    @property
    def abs_kpa(self) -> T: ...
    @property
    def abs_bar(self) -> T: ...
    @property
    def abs_psi(self) -> T: ...
    @property
    def abs_pa(self) -> T: ...


class _KegPressureInputs(TypedDict, Generic[N], total=False):
    co2_g_per_l: N | None
    volumes: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    co2_percent: N | None
    air_abs_kpa: N | None
    air_abs_bar: N | None
    air_abs_psi: N | None
    air_abs_pa: N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def keg_pressure(**given: Unpack[_KegPressureInputs[float]]) -> KegPressure[float]: ...
@overload
def keg_pressure(**given: Unpack[_KegPressureInputs[Number]]) -> KegPressure[NDArray[np.float64]]: ...

class GasBlend(Result[T]):
    @property
    def co2_percent(self) -> T: ...


class _GasBlendInputs(TypedDict, Generic[N], total=False):
    co2_g_per_l: N | None
    volumes: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    air_abs_kpa: N | None
    air_abs_bar: N | None
    air_abs_psi: N | None
    air_abs_pa: N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def gas_blend(**given: Unpack[_GasBlendInputs[float]]) -> GasBlend[float]: ...
@overload
def gas_blend(**given: Unpack[_GasBlendInputs[Number]]) -> GasBlend[NDArray[np.float64]]: ...

class KegTemperature(Result[T]):
    @property
    def temperature_c(self) -> T: ...
    @property
    def temperature_f(self) -> T: ...
    @property
    def temperature_k(self) -> T: ...


class _KegTemperatureInputs(TypedDict, Generic[N], total=False):
    co2_g_per_l: N | None
    volumes: N | None
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    co2_percent: N | None
    air_abs_kpa: N | None
    air_abs_bar: N | None
    air_abs_psi: N | None
    air_abs_pa: N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def keg_temperature(**given: Unpack[_KegTemperatureInputs[float]]) -> KegTemperature[float]: ...
@overload
def keg_temperature(**given: Unpack[_KegTemperatureInputs[Number]]) -> KegTemperature[NDArray[np.float64]]: ...

class WarmedKegExpected(Part[T]):
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...
    @property
    def abs_kpa(self) -> T: ...
    @property
    def abs_bar(self) -> T: ...
    @property
    def abs_psi(self) -> T: ...
    @property
    def abs_pa(self) -> T: ...
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class WarmedKegWorst(Part[T]):
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...
    @property
    def abs_kpa(self) -> T: ...
    @property
    def abs_bar(self) -> T: ...
    @property
    def abs_psi(self) -> T: ...
    @property
    def abs_pa(self) -> T: ...


class WarmedKeg(Result[T]):
    @property
    def expected(self) -> WarmedKegExpected[T]: ...
    @property
    def worst(self) -> WarmedKegWorst[T]: ...


class _WarmedKegInputs(TypedDict, Generic[N], total=False):
    co2_g_per_l: N | None
    volumes: N | None
    filling_c: N | None
    filling_f: N | None
    filling_k: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    headspace_percent: N | None
    air_abs_kpa: N | None
    air_abs_bar: N | None
    air_abs_psi: N | None
    air_abs_pa: N | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    fermentable_g_per_l: N | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    yield_percent: float | None
    solubility_multiplier: float | None
    yield_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def warmed_keg(**given: Unpack[_WarmedKegInputs[float]]) -> WarmedKeg[float]: ...
@overload
def warmed_keg(**given: Unpack[_WarmedKegInputs[Number]]) -> WarmedKeg[NDArray[np.float64]]: ...

class SpundingRelief(Part[T]):
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...
    @property
    def abs_kpa(self) -> T: ...
    @property
    def abs_bar(self) -> T: ...
    @property
    def abs_psi(self) -> T: ...
    @property
    def abs_pa(self) -> T: ...


class SpundingClosing(Part[T]):
    @property
    def sg(self) -> T: ...
    @property
    def plato(self) -> T: ...


class Spunding(Result[T]):
    @property
    def relief(self) -> SpundingRelief[T]: ...
    @property
    def closing(self) -> SpundingClosing[T]: ...
    @property
    def drop_sg(self) -> T: ...
    @property
    def start_co2_g_per_l(self) -> T: ...
    @property
    def start_volumes(self) -> T: ...


class _SpundingInputs(TypedDict, Generic[N], total=False):
    co2_g_per_l: N | None
    volumes: N | None
    final_sg: N | None
    final_plato: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    fermenter_headspace_percent: N | None
    start_co2_g_per_l: N | None
    start_volumes: N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    residual_model: Literal["table", "equilibrium"] | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
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
def spunding(**given: Unpack[_SpundingInputs[float]]) -> Spunding[float]: ...
@overload
def spunding(**given: Unpack[_SpundingInputs[Number]]) -> Spunding[NDArray[np.float64]]: ...

class ClosedFermentationExpected(Part[T]):
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...
    @property
    def abs_kpa(self) -> T: ...
    @property
    def abs_bar(self) -> T: ...
    @property
    def abs_psi(self) -> T: ...
    @property
    def abs_pa(self) -> T: ...
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class ClosedFermentationWorst(Part[T]):
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...
    @property
    def abs_kpa(self) -> T: ...
    @property
    def abs_bar(self) -> T: ...
    @property
    def abs_psi(self) -> T: ...
    @property
    def abs_pa(self) -> T: ...


class ClosedFermentation(Result[T]):
    @property
    def expected(self) -> ClosedFermentationExpected[T]: ...
    @property
    def worst(self) -> ClosedFermentationWorst[T]: ...


class _ClosedFermentationInputs(TypedDict, Generic[N], total=False):
    current_sg: N | None
    current_plato: N | None
    final_sg: N | None
    final_plato: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    fermenter_headspace_percent: N | None
    start_co2_g_per_l: N | None
    start_volumes: N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    residual_model: Literal["table", "equilibrium"] | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
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
def closed_fermentation(**given: Unpack[_ClosedFermentationInputs[float]]) -> ClosedFermentation[float]: ...
@overload
def closed_fermentation(**given: Unpack[_ClosedFermentationInputs[Number]]) -> ClosedFermentation[NDArray[np.float64]]: ...

class StonePressureSurface(Part[T]):
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...


class StonePressureHead(Part[T]):
    @property
    def drop_kpa(self) -> T: ...
    @property
    def drop_bar(self) -> T: ...
    @property
    def drop_psi(self) -> T: ...
    @property
    def drop_pa(self) -> T: ...


class StonePressure(Result[T]):
    @property
    def surface(self) -> StonePressureSurface[T]: ...
    @property
    def head(self) -> StonePressureHead[T]: ...
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...


class _StonePressureInputs(TypedDict, Generic[N], total=False):
    co2_g_per_l: N | None
    volumes: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    depth_m: N | None
    depth_ft: N | None
    wetting_kpa: N | None
    wetting_bar: N | None
    wetting_psi: N | None
    wetting_pa: N | None
    margin_kpa: N | None
    margin_bar: N | None
    margin_psi: N | None
    margin_pa: N | None
    sg: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def stone_pressure(**given: Unpack[_StonePressureInputs[float]]) -> StonePressure[float]: ...
@overload
def stone_pressure(**given: Unpack[_StonePressureInputs[Number]]) -> StonePressure[NDArray[np.float64]]: ...

class ResidualCo2(Result[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class _ResidualCo2Inputs(TypedDict, Generic[N], total=False):
    warmest_c: N | None
    warmest_f: N | None
    warmest_k: N | None
    fermenter_gauge_kpa: N | None
    fermenter_gauge_bar: N | None
    fermenter_gauge_psi: N | None
    fermenter_gauge_pa: N | None
    cold_crash: Literal["open", "closed", "co2_supplied"] | None
    crash_c: N | None
    crash_f: N | None
    crash_k: N | None
    fermenter_headspace_percent: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    residual_model: Literal["table", "equilibrium"] | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def residual_co2(**given: Unpack[_ResidualCo2Inputs[float]]) -> ResidualCo2[float]: ...
@overload
def residual_co2(**given: Unpack[_ResidualCo2Inputs[Number]]) -> ResidualCo2[NDArray[np.float64]]: ...

class PrimingSugar(Result[T]):
    @property
    def mass_g(self) -> T: ...
    @property
    def mass_kg(self) -> T: ...
    @property
    def mass_oz(self) -> T: ...
    @property
    def mass_lb(self) -> T: ...
    @property
    def dose_g_per_l(self) -> T: ...


class _PrimingSugarInputs(TypedDict, Generic[N], total=False):
    co2_g_per_l: N | None
    volumes: N | None
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    warmest_c: N | None
    warmest_f: N | None
    warmest_k: N | None
    residual_co2_g_per_l: N | None
    residual_volumes: N | None
    fermenter_gauge_kpa: N | None
    fermenter_gauge_bar: N | None
    fermenter_gauge_psi: N | None
    fermenter_gauge_pa: N | None
    cold_crash: Literal["open", "closed", "co2_supplied"] | None
    crash_c: N | None
    crash_f: N | None
    crash_k: N | None
    fermenter_headspace_percent: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None
    sugar_water_percent: float | None
    sugar_sg: float | None
    sugar_fermentable_percent: float | None
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None
    syrup_water_l: N | None
    syrup_water_ml: N | None
    syrup_water_us_gal: N | None
    syrup_water_imp_gal: N | None
    syrup_water_us_fl_oz: N | None
    count_syrup: bool | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    fermentable_g_per_l: N | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    residual_model: Literal["table", "equilibrium"] | None
    yield_percent: float | None
    count_headspace: bool | None
    headspace_percent: N | None
    filling_c: N | None
    filling_f: N | None
    filling_k: N | None
    room_c: N | None
    room_f: N | None
    room_k: N | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    yield_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def priming_sugar(**given: Unpack[_PrimingSugarInputs[float]]) -> PrimingSugar[float]: ...
@overload
def priming_sugar(**given: Unpack[_PrimingSugarInputs[Number]]) -> PrimingSugar[NDArray[np.float64]]: ...

class PrimedCarbonationAdded(Part[T]):
    @property
    def abv_percent(self) -> T: ...


class PrimedCarbonation(Result[T]):
    @property
    def added(self) -> PrimedCarbonationAdded[T]: ...
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...
    @property
    def abv_percent(self) -> T: ...


class _PrimedCarbonationInputs(TypedDict, Generic[N], total=False):
    mass_g: N | None
    mass_kg: N | None
    mass_oz: N | None
    mass_lb: N | None
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    warmest_c: N | None
    warmest_f: N | None
    warmest_k: N | None
    residual_co2_g_per_l: N | None
    residual_volumes: N | None
    fermenter_gauge_kpa: N | None
    fermenter_gauge_bar: N | None
    fermenter_gauge_psi: N | None
    fermenter_gauge_pa: N | None
    cold_crash: Literal["open", "closed", "co2_supplied"] | None
    crash_c: N | None
    crash_f: N | None
    crash_k: N | None
    fermenter_headspace_percent: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None
    sugar_water_percent: float | None
    sugar_sg: float | None
    sugar_fermentable_percent: float | None
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None
    syrup_water_l: N | None
    syrup_water_ml: N | None
    syrup_water_us_gal: N | None
    syrup_water_imp_gal: N | None
    syrup_water_us_fl_oz: N | None
    count_syrup: bool | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    fermentable_g_per_l: N | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    residual_model: Literal["table", "equilibrium"] | None
    yield_percent: float | None
    count_headspace: bool | None
    headspace_percent: N | None
    filling_c: N | None
    filling_f: N | None
    filling_k: N | None
    room_c: N | None
    room_f: N | None
    room_k: N | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    yield_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def primed_carbonation(**given: Unpack[_PrimedCarbonationInputs[float]]) -> PrimedCarbonation[float]: ...
@overload
def primed_carbonation(**given: Unpack[_PrimedCarbonationInputs[Number]]) -> PrimedCarbonation[NDArray[np.float64]]: ...

class PrimingWort(Result[T]):
    @property
    def wort_l(self) -> T: ...
    @property
    def wort_ml(self) -> T: ...
    @property
    def wort_us_gal(self) -> T: ...
    @property
    def wort_imp_gal(self) -> T: ...
    @property
    def wort_us_fl_oz(self) -> T: ...
    @property
    def wort_percent(self) -> T: ...


class _PrimingWortInputs(TypedDict, Generic[N], total=False):
    co2_g_per_l: N | None
    volumes: N | None
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    wort_original_sg: N | None
    wort_original_plato: N | None
    wort_current_sg: N | None
    wort_current_plato: N | None
    limit_attenuation_percent: N | None
    wort_co2_g_per_l: N | None
    wort_volumes: N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    warmest_c: N | None
    warmest_f: N | None
    warmest_k: N | None
    residual_co2_g_per_l: N | None
    residual_volumes: N | None
    fermenter_gauge_kpa: N | None
    fermenter_gauge_bar: N | None
    fermenter_gauge_psi: N | None
    fermenter_gauge_pa: N | None
    cold_crash: Literal["open", "closed", "co2_supplied"] | None
    crash_c: N | None
    crash_f: N | None
    crash_k: N | None
    fermenter_headspace_percent: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    fermentable_g_per_l: N | None
    yeast: Literal["live", "none"] | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    residual_model: Literal["table", "equilibrium"] | None
    yield_percent: float | None
    count_headspace: bool | None
    headspace_percent: N | None
    filling_c: N | None
    filling_f: N | None
    filling_k: N | None
    room_c: N | None
    room_f: N | None
    room_k: N | None
    solubility_multiplier: float | None
    residual_multiplier: float | None
    yield_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def priming_wort(**given: Unpack[_PrimingWortInputs[float]]) -> PrimingWort[float]: ...
@overload
def priming_wort(**given: Unpack[_PrimingWortInputs[Number]]) -> PrimingWort[NDArray[np.float64]]: ...

class PrimingSyrupLeast(Part[T]):
    @property
    def syrup_water_l(self) -> T: ...
    @property
    def syrup_water_ml(self) -> T: ...
    @property
    def syrup_water_us_gal(self) -> T: ...
    @property
    def syrup_water_imp_gal(self) -> T: ...
    @property
    def syrup_water_us_fl_oz(self) -> T: ...


class PrimingSyrup(Result[T]):
    @property
    def least(self) -> PrimingSyrupLeast[T]: ...
    @property
    def syrup_l(self) -> T: ...
    @property
    def syrup_ml(self) -> T: ...
    @property
    def syrup_us_gal(self) -> T: ...
    @property
    def syrup_imp_gal(self) -> T: ...
    @property
    def syrup_us_fl_oz(self) -> T: ...
    @property
    def syrup_percent(self) -> T: ...


class _PrimingSyrupInputs(TypedDict, Generic[N], total=False):
    mass_g: N | None
    mass_kg: N | None
    mass_oz: N | None
    mass_lb: N | None
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None
    sugar_water_percent: float | None
    sugar_sg: float | None
    sugar_fermentable_percent: float | None
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None
    syrup_water_l: N | None
    syrup_water_ml: N | None
    syrup_water_us_gal: N | None
    syrup_water_imp_gal: N | None
    syrup_water_us_fl_oz: N | None
    dissolving_c: N | None
    dissolving_f: N | None
    dissolving_k: N | None
    errors: Literal["raise", "nan"]

@overload
def priming_syrup(**given: Unpack[_PrimingSyrupInputs[float]]) -> PrimingSyrup[float]: ...
@overload
def priming_syrup(**given: Unpack[_PrimingSyrupInputs[Number]]) -> PrimingSyrup[NDArray[np.float64]]: ...

class PackagePressureExpected(Part[T]):
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...
    @property
    def abs_kpa(self) -> T: ...
    @property
    def abs_bar(self) -> T: ...
    @property
    def abs_psi(self) -> T: ...
    @property
    def abs_pa(self) -> T: ...
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class PackagePressureWorst(Part[T]):
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...
    @property
    def abs_kpa(self) -> T: ...
    @property
    def abs_bar(self) -> T: ...
    @property
    def abs_psi(self) -> T: ...
    @property
    def abs_pa(self) -> T: ...


class PackagePressure(Result[T]):
    @property
    def expected(self) -> PackagePressureExpected[T]: ...
    @property
    def worst(self) -> PackagePressureWorst[T]: ...


class _PackagePressureInputs(TypedDict, Generic[N], total=False):
    co2_g_per_l: N | None
    volumes: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    headspace_percent: N | None
    filling_c: N | None
    filling_f: N | None
    filling_k: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    fermentable_g_per_l: N | None
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
def package_pressure(**given: Unpack[_PackagePressureInputs[float]]) -> PackagePressure[float]: ...
@overload
def package_pressure(**given: Unpack[_PackagePressureInputs[Number]]) -> PackagePressure[NDArray[np.float64]]: ...

class PackageCarbonationTotal(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class PackageCarbonationDissolved(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class PackageCarbonationLeastTotal(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class PackageCarbonationLeastDissolved(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class PackageCarbonation(Result[T]):
    @property
    def total(self) -> PackageCarbonationTotal[T]: ...
    @property
    def dissolved(self) -> PackageCarbonationDissolved[T]: ...
    @property
    def least_total(self) -> PackageCarbonationLeastTotal[T]: ...
    @property
    def least_dissolved(self) -> PackageCarbonationLeastDissolved[T]: ...


class _PackageCarbonationInputs(TypedDict, Generic[N], total=False):
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    headspace_percent: N | None
    filling_c: N | None
    filling_f: N | None
    filling_k: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def package_carbonation(**given: Unpack[_PackageCarbonationInputs[float]]) -> PackageCarbonation[float]: ...
@overload
def package_carbonation(**given: Unpack[_PackageCarbonationInputs[Number]]) -> PackageCarbonation[NDArray[np.float64]]: ...

class ConditioningExpected(Part[T]):
    @property
    def progress_percent(self) -> T: ...


class ConditioningLeast(Part[T]):
    @property
    def progress_percent(self) -> T: ...


class ConditioningMost(Part[T]):
    @property
    def progress_percent(self) -> T: ...


class Conditioning(Result[T]):
    @property
    def expected(self) -> ConditioningExpected[T]: ...
    @property
    def least(self) -> ConditioningLeast[T]: ...
    @property
    def most(self) -> ConditioningMost[T]: ...


class _ConditioningInputs(TypedDict, Generic[N], total=False):
    room_c: N | None
    room_f: N | None
    room_k: N | None
    time_h: N | None
    time_d: N | None
    time_min: N | None
    time_s: N | None
    yeast_million_per_ml: N | None
    age_h: float | None
    age_d: float | None
    age_min: float | None
    age_s: float | None
    filtered: bool | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    errors: Literal["raise", "nan"]

@overload
def conditioning(**given: Unpack[_ConditioningInputs[float]]) -> Conditioning[float]: ...
@overload
def conditioning(**given: Unpack[_ConditioningInputs[Number]]) -> Conditioning[NDArray[np.float64]]: ...

class ConditioningTimeExpected(Part[T]):
    @property
    def time_h(self) -> T: ...
    @property
    def time_d(self) -> T: ...
    @property
    def time_min(self) -> T: ...
    @property
    def time_s(self) -> T: ...


class ConditioningTimeLeast(Part[T]):
    @property
    def time_h(self) -> T: ...
    @property
    def time_d(self) -> T: ...
    @property
    def time_min(self) -> T: ...
    @property
    def time_s(self) -> T: ...


class ConditioningTimeMost(Part[T]):
    @property
    def time_h(self) -> T: ...
    @property
    def time_d(self) -> T: ...
    @property
    def time_min(self) -> T: ...
    @property
    def time_s(self) -> T: ...


class ConditioningTime(Result[T]):
    @property
    def expected(self) -> ConditioningTimeExpected[T]: ...
    @property
    def least(self) -> ConditioningTimeLeast[T]: ...
    @property
    def most(self) -> ConditioningTimeMost[T]: ...


class _ConditioningTimeInputs(TypedDict, Generic[N], total=False):
    room_c: N | None
    room_f: N | None
    room_k: N | None
    progress_percent: N | None
    yeast_million_per_ml: N | None
    age_h: float | None
    age_d: float | None
    age_min: float | None
    age_s: float | None
    filtered: bool | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    errors: Literal["raise", "nan"]

@overload
def conditioning_time(**given: Unpack[_ConditioningTimeInputs[float]]) -> ConditioningTime[float]: ...
@overload
def conditioning_time(**given: Unpack[_ConditioningTimeInputs[Number]]) -> ConditioningTime[NDArray[np.float64]]: ...

class ReyeastingDryYeast(Part[T]):
    @property
    def mass_g(self) -> T: ...
    @property
    def mass_kg(self) -> T: ...
    @property
    def mass_oz(self) -> T: ...
    @property
    def mass_lb(self) -> T: ...


class Reyeasting(Result[T]):
    @property
    def dry_yeast(self) -> ReyeastingDryYeast[T]: ...


class _ReyeastingInputs(TypedDict, Generic[N], total=False):
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    yeast_million_per_ml: N | None
    errors: Literal["raise", "nan"]

@overload
def reyeasting(**given: Unpack[_ReyeastingInputs[float]]) -> Reyeasting[float]: ...
@overload
def reyeasting(**given: Unpack[_ReyeastingInputs[Number]]) -> Reyeasting[NDArray[np.float64]]: ...

class Gravity(Result[T]):
    @property
    def sg(self) -> T: ...
    @property
    def plato(self) -> T: ...


class _GravityInputs(TypedDict, Generic[N], total=False):
    sg: N | None
    plato: N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    errors: Literal["raise", "nan"]

@overload
def gravity(**given: Unpack[_GravityInputs[float]]) -> Gravity[float]: ...
@overload
def gravity(**given: Unpack[_GravityInputs[Number]]) -> Gravity[NDArray[np.float64]]: ...

class AttenuationApparent(Part[T]):
    @property
    def attenuation_percent(self) -> T: ...


class AttenuationReal(Part[T]):
    @property
    def attenuation_percent(self) -> T: ...


class AttenuationQuick(Part[T]):
    @property
    def abv_percent(self) -> T: ...


class Attenuation(Result[T]):
    @property
    def apparent(self) -> AttenuationApparent[T]: ...
    @property
    def real(self) -> AttenuationReal[T]: ...
    @property
    def quick(self) -> AttenuationQuick[T]: ...
    @property
    def real_extract_plato(self) -> T: ...
    @property
    def abw_percent(self) -> T: ...
    @property
    def abv_percent(self) -> T: ...
    @property
    def extract_g_per_l(self) -> T: ...


class _AttenuationInputs(TypedDict, Generic[N], total=False):
    original_sg: N | None
    original_plato: N | None
    current_sg: N | None
    current_plato: N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    real_extract_model: Literal["balling", "quotient"] | None
    errors: Literal["raise", "nan"]

@overload
def attenuation(**given: Unpack[_AttenuationInputs[float]]) -> Attenuation[float]: ...
@overload
def attenuation(**given: Unpack[_AttenuationInputs[Number]]) -> Attenuation[NDArray[np.float64]]: ...

class FinalGravity(Result[T]):
    @property
    def final_sg(self) -> T: ...
    @property
    def final_plato(self) -> T: ...


class _FinalGravityInputs(TypedDict, Generic[N], total=False):
    original_sg: N | None
    original_plato: N | None
    expected_attenuation_percent: N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    errors: Literal["raise", "nan"]

@overload
def final_gravity(**given: Unpack[_FinalGravityInputs[float]]) -> FinalGravity[float]: ...
@overload
def final_gravity(**given: Unpack[_FinalGravityInputs[Number]]) -> FinalGravity[NDArray[np.float64]]: ...

class GravityCo2Balling(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class GravityCo2Theory(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class GravityCo2(Result[T]):
    @property
    def balling(self) -> GravityCo2Balling[T]: ...
    @property
    def theory(self) -> GravityCo2Theory[T]: ...
    @property
    def fermentable_g_per_l(self) -> T: ...


class _GravityCo2Inputs(TypedDict, Generic[N], total=False):
    current_sg: N | None
    current_plato: N | None
    final_sg: N | None
    final_plato: N | None
    extract_scale: Literal["asbc", "lincoln", "quick"] | None
    errors: Literal["raise", "nan"]

@overload
def gravity_co2(**given: Unpack[_GravityCo2Inputs[float]]) -> GravityCo2[float]: ...
@overload
def gravity_co2(**given: Unpack[_GravityCo2Inputs[Number]]) -> GravityCo2[NDArray[np.float64]]: ...

class AddedCo2Expected(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class AddedCo2Worst(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class AddedCo2Added(Part[T]):
    @property
    def abv_percent(self) -> T: ...


class AddedCo2(Result[T]):
    @property
    def expected(self) -> AddedCo2Expected[T]: ...
    @property
    def worst(self) -> AddedCo2Worst[T]: ...
    @property
    def added(self) -> AddedCo2Added[T]: ...


class _AddedCo2Inputs(TypedDict, Generic[N], total=False):
    addition: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom", "lactose", "maltodextrin", "sucralose", "aspartame", "saccharin", "stevia", "erythritol", "xylitol", "sorbitol", "sweetener_packets"] | None
    dose_g_per_l: N | None
    sugar_water_percent: float | None
    sugar_sg: float | None
    sugar_fermentable_percent: float | None
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None
    basis: Literal["handbook", "physical"] | None
    yield_percent: float | None
    yield_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def added_co2(**given: Unpack[_AddedCo2Inputs[float]]) -> AddedCo2[float]: ...
@overload
def added_co2(**given: Unpack[_AddedCo2Inputs[Number]]) -> AddedCo2[NDArray[np.float64]]: ...

class DrinkProperties(Result[T]):
    @property
    def density_kg_per_m3(self) -> T: ...
    @property
    def density_lb_per_ft3(self) -> T: ...
    @property
    def viscosity_mpa_s(self) -> T: ...
    @property
    def viscosity_pa_s(self) -> T: ...
    @property
    def viscosity_cp(self) -> T: ...
    @property
    def diffusivity_m2_per_s(self) -> T: ...


class _DrinkPropertiesInputs(TypedDict, Generic[N], total=False):
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    sg: N | None
    viscosity_multiplier: N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    errors: Literal["raise", "nan"]

@overload
def drink_properties(**given: Unpack[_DrinkPropertiesInputs[float]]) -> DrinkProperties[float]: ...
@overload
def drink_properties(**given: Unpack[_DrinkPropertiesInputs[Number]]) -> DrinkProperties[NDArray[np.float64]]: ...

class Co2SaturationLiquid(Part[T]):
    @property
    def density_kg_per_m3(self) -> T: ...
    @property
    def density_lb_per_ft3(self) -> T: ...


class Co2SaturationVapour(Part[T]):
    @property
    def density_kg_per_m3(self) -> T: ...
    @property
    def density_lb_per_ft3(self) -> T: ...


class Co2Saturation(Result[T]):
    @property
    def liquid(self) -> Co2SaturationLiquid[T]: ...
    @property
    def vapour(self) -> Co2SaturationVapour[T]: ...
    @property
    def abs_kpa(self) -> T: ...
    @property
    def abs_bar(self) -> T: ...
    @property
    def abs_psi(self) -> T: ...
    @property
    def abs_pa(self) -> T: ...


class _Co2SaturationInputs(TypedDict, Generic[N], total=False):
    cylinder_c: N | None
    cylinder_f: N | None
    cylinder_k: N | None
    errors: Literal["raise", "nan"]

@overload
def co2_saturation(**given: Unpack[_Co2SaturationInputs[float]]) -> Co2Saturation[float]: ...
@overload
def co2_saturation(**given: Unpack[_Co2SaturationInputs[Number]]) -> Co2Saturation[NDArray[np.float64]]: ...

class LineFlow(Result[T]):
    @property
    def flow_l_per_min(self) -> T: ...
    @property
    def flow_us_fl_oz_per_s(self) -> T: ...
    @property
    def flow_us_gal_per_min(self) -> T: ...
    @property
    def pour_seconds(self) -> T: ...
    @property
    def speed_m_per_s(self) -> T: ...
    @property
    def speed_ft_per_s(self) -> T: ...
    @property
    def reynolds_multiplier(self) -> T: ...
    @property
    def resistance_bar_per_m(self) -> T: ...
    @property
    def resistance_psi_per_ft(self) -> T: ...
    @property
    def line_l(self) -> T: ...
    @property
    def line_ml(self) -> T: ...
    @property
    def line_us_gal(self) -> T: ...
    @property
    def line_imp_gal(self) -> T: ...
    @property
    def line_us_fl_oz(self) -> T: ...


class _LineFlowInputs(TypedDict, Generic[N], total=False):
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    line_m: N | None
    line_ft: N | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    bore_mm: N | None
    bore_in: N | None
    rise_m: N | None
    rise_ft: N | None
    fittings_multiplier: N | None
    glass_l: N | None
    glass_ml: N | None
    glass_us_gal: N | None
    glass_imp_gal: N | None
    glass_us_fl_oz: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    sg: N | None
    viscosity_multiplier: N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    errors: Literal["raise", "nan"]

@overload
def line_flow(**given: Unpack[_LineFlowInputs[float]]) -> LineFlow[float]: ...
@overload
def line_flow(**given: Unpack[_LineFlowInputs[Number]]) -> LineFlow[NDArray[np.float64]]: ...

class LineLength(Result[T]):
    @property
    def line_m(self) -> T: ...
    @property
    def line_ft(self) -> T: ...
    @property
    def line_l(self) -> T: ...
    @property
    def line_ml(self) -> T: ...
    @property
    def line_us_gal(self) -> T: ...
    @property
    def line_imp_gal(self) -> T: ...
    @property
    def line_us_fl_oz(self) -> T: ...
    @property
    def flow_l_per_min(self) -> T: ...
    @property
    def flow_us_fl_oz_per_s(self) -> T: ...
    @property
    def flow_us_gal_per_min(self) -> T: ...
    @property
    def pour_seconds(self) -> T: ...
    @property
    def speed_m_per_s(self) -> T: ...
    @property
    def speed_ft_per_s(self) -> T: ...
    @property
    def reynolds_multiplier(self) -> T: ...
    @property
    def resistance_bar_per_m(self) -> T: ...
    @property
    def resistance_psi_per_ft(self) -> T: ...


class _LineLengthInputs(TypedDict, Generic[N], total=False):
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    flow_l_per_min: N | None
    flow_us_fl_oz_per_s: N | None
    flow_us_gal_per_min: N | None
    pour_seconds: N | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    bore_mm: N | None
    bore_in: N | None
    rise_m: N | None
    rise_ft: N | None
    fittings_multiplier: N | None
    glass_l: N | None
    glass_ml: N | None
    glass_us_gal: N | None
    glass_imp_gal: N | None
    glass_us_fl_oz: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    sg: N | None
    viscosity_multiplier: N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    errors: Literal["raise", "nan"]

@overload
def line_length(**given: Unpack[_LineLengthInputs[float]]) -> LineLength[float]: ...
@overload
def line_length(**given: Unpack[_LineLengthInputs[Number]]) -> LineLength[NDArray[np.float64]]: ...

class LinePressureLift(Part[T]):
    @property
    def drop_kpa(self) -> T: ...
    @property
    def drop_bar(self) -> T: ...
    @property
    def drop_psi(self) -> T: ...
    @property
    def drop_pa(self) -> T: ...


class LinePressureLine(Part[T]):
    @property
    def drop_kpa(self) -> T: ...
    @property
    def drop_bar(self) -> T: ...
    @property
    def drop_psi(self) -> T: ...
    @property
    def drop_pa(self) -> T: ...


class LinePressureFittings(Part[T]):
    @property
    def drop_kpa(self) -> T: ...
    @property
    def drop_bar(self) -> T: ...
    @property
    def drop_psi(self) -> T: ...
    @property
    def drop_pa(self) -> T: ...


class LinePressure(Result[T]):
    @property
    def lift(self) -> LinePressureLift[T]: ...
    @property
    def line(self) -> LinePressureLine[T]: ...
    @property
    def fittings(self) -> LinePressureFittings[T]: ...
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...
    @property
    def flow_l_per_min(self) -> T: ...
    @property
    def flow_us_fl_oz_per_s(self) -> T: ...
    @property
    def flow_us_gal_per_min(self) -> T: ...
    @property
    def pour_seconds(self) -> T: ...
    @property
    def speed_m_per_s(self) -> T: ...
    @property
    def speed_ft_per_s(self) -> T: ...
    @property
    def reynolds_multiplier(self) -> T: ...


class _LinePressureInputs(TypedDict, Generic[N], total=False):
    line_m: N | None
    line_ft: N | None
    flow_l_per_min: N | None
    flow_us_fl_oz_per_s: N | None
    flow_us_gal_per_min: N | None
    pour_seconds: N | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    bore_mm: N | None
    bore_in: N | None
    rise_m: N | None
    rise_ft: N | None
    fittings_multiplier: N | None
    glass_l: N | None
    glass_ml: N | None
    glass_us_gal: N | None
    glass_imp_gal: N | None
    glass_us_fl_oz: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    sg: N | None
    viscosity_multiplier: N | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    errors: Literal["raise", "nan"]

@overload
def line_pressure(**given: Unpack[_LinePressureInputs[float]]) -> LinePressure[float]: ...
@overload
def line_pressure(**given: Unpack[_LinePressureInputs[Number]]) -> LinePressure[NDArray[np.float64]]: ...

class HandbookLineLift(Part[T]):
    @property
    def drop_kpa(self) -> T: ...
    @property
    def drop_bar(self) -> T: ...
    @property
    def drop_psi(self) -> T: ...
    @property
    def drop_pa(self) -> T: ...


class HandbookLine(Result[T]):
    @property
    def lift(self) -> HandbookLineLift[T]: ...
    @property
    def line_m(self) -> T: ...
    @property
    def line_ft(self) -> T: ...
    @property
    def resistance_bar_per_m(self) -> T: ...
    @property
    def resistance_psi_per_ft(self) -> T: ...


class _HandbookLineInputs(TypedDict, Generic[N], total=False):
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    resistance_bar_per_m: N | None
    resistance_psi_per_ft: N | None
    rise_m: N | None
    rise_ft: N | None
    hardware_kpa: N | None
    hardware_bar: N | None
    hardware_psi: N | None
    hardware_pa: N | None
    errors: Literal["raise", "nan"]

@overload
def handbook_line(**given: Unpack[_HandbookLineInputs[float]]) -> HandbookLine[float]: ...
@overload
def handbook_line(**given: Unpack[_HandbookLineInputs[Number]]) -> HandbookLine[NDArray[np.float64]]: ...

class HandbookPressureLift(Part[T]):
    @property
    def drop_kpa(self) -> T: ...
    @property
    def drop_bar(self) -> T: ...
    @property
    def drop_psi(self) -> T: ...
    @property
    def drop_pa(self) -> T: ...


class HandbookPressureLine(Part[T]):
    @property
    def drop_kpa(self) -> T: ...
    @property
    def drop_bar(self) -> T: ...
    @property
    def drop_psi(self) -> T: ...
    @property
    def drop_pa(self) -> T: ...


class HandbookPressure(Result[T]):
    @property
    def lift(self) -> HandbookPressureLift[T]: ...
    @property
    def line(self) -> HandbookPressureLine[T]: ...
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...


class _HandbookPressureInputs(TypedDict, Generic[N], total=False):
    line_m: N | None
    line_ft: N | None
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None
    resistance_bar_per_m: N | None
    resistance_psi_per_ft: N | None
    rise_m: N | None
    rise_ft: N | None
    hardware_kpa: N | None
    hardware_bar: N | None
    hardware_psi: N | None
    hardware_pa: N | None
    errors: Literal["raise", "nan"]

@overload
def handbook_pressure(**given: Unpack[_HandbookPressureInputs[float]]) -> HandbookPressure[float]: ...
@overload
def handbook_pressure(**given: Unpack[_HandbookPressureInputs[Number]]) -> HandbookPressure[NDArray[np.float64]]: ...

class FillingCarbonationExpected(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class FillingCarbonationLeast(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class FillingCarbonationMost(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class FillingCarbonation(Result[T]):
    @property
    def expected(self) -> FillingCarbonationExpected[T]: ...
    @property
    def least(self) -> FillingCarbonationLeast[T]: ...
    @property
    def most(self) -> FillingCarbonationMost[T]: ...


class _FillingCarbonationInputs(TypedDict, Generic[N], total=False):
    co2_g_per_l: N | None
    volumes: N | None
    fill_method: Literal["automatic", "counter_pressure_line", "hand_counter_pressure", "tap_tube", "tilted_glass"] | None
    fill_loss_co2_g_per_l: N | None
    fill_loss_volumes: N | None
    errors: Literal["raise", "nan"]

@overload
def filling_carbonation(**given: Unpack[_FillingCarbonationInputs[float]]) -> FillingCarbonation[float]: ...
@overload
def filling_carbonation(**given: Unpack[_FillingCarbonationInputs[Number]]) -> FillingCarbonation[NDArray[np.float64]]: ...

class BlendMixed(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class BlendKept(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class Blend(Result[T]):
    @property
    def mixed(self) -> BlendMixed[T]: ...
    @property
    def kept(self) -> BlendKept[T]: ...
    @property
    def packaged_l(self) -> T: ...
    @property
    def packaged_ml(self) -> T: ...
    @property
    def packaged_us_gal(self) -> T: ...
    @property
    def packaged_imp_gal(self) -> T: ...
    @property
    def packaged_us_fl_oz(self) -> T: ...
    @property
    def released_g(self) -> T: ...
    @property
    def released_kg(self) -> T: ...
    @property
    def released_oz(self) -> T: ...
    @property
    def released_lb(self) -> T: ...


class _BlendInputs(TypedDict, Generic[N], total=False):
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    co2_g_per_l: N | None
    volumes: N | None
    other_l: N | None
    other_ml: N | None
    other_us_gal: N | None
    other_imp_gal: N | None
    other_us_fl_oz: N | None
    other_co2_g_per_l: N | None
    other_volumes: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def blend(**given: Unpack[_BlendInputs[float]]) -> Blend[float]: ...
@overload
def blend(**given: Unpack[_BlendInputs[Number]]) -> Blend[NDArray[np.float64]]: ...

class PurgeOxygenEach(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class PurgeOxygenTotal(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class PurgeOxygen(Result[T]):
    @property
    def each(self) -> PurgeOxygenEach[T]: ...
    @property
    def total(self) -> PurgeOxygenTotal[T]: ...
    @property
    def oxygen_ppm(self) -> T: ...
    @property
    def oxygen_vol_percent(self) -> T: ...


class _PurgeOxygenInputs(TypedDict, Generic[N], total=False):
    purge_gauge_kpa: N | None
    purge_gauge_bar: N | None
    purge_gauge_psi: N | None
    purge_gauge_pa: N | None
    cycles_count: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    start_oxygen_ppm: N | None
    start_oxygen_vol_percent: N | None
    gas_oxygen_ppm: N | None
    gas_oxygen_vol_percent: N | None
    keg_l: N | None
    keg_ml: N | None
    keg_us_gal: N | None
    keg_imp_gal: N | None
    keg_us_fl_oz: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    errors: Literal["raise", "nan"]

@overload
def purge_oxygen(**given: Unpack[_PurgeOxygenInputs[float]]) -> PurgeOxygen[float]: ...
@overload
def purge_oxygen(**given: Unpack[_PurgeOxygenInputs[Number]]) -> PurgeOxygen[NDArray[np.float64]]: ...

class PurgeCyclesWhole(Part[T]):
    @property
    def cycles_count(self) -> T: ...


class PurgeCyclesEach(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class PurgeCyclesTotal(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class PurgeCycles(Result[T]):
    @property
    def whole(self) -> PurgeCyclesWhole[T]: ...
    @property
    def each(self) -> PurgeCyclesEach[T]: ...
    @property
    def total(self) -> PurgeCyclesTotal[T]: ...
    @property
    def cycles_count(self) -> T: ...


class _PurgeCyclesInputs(TypedDict, Generic[N], total=False):
    purge_gauge_kpa: N | None
    purge_gauge_bar: N | None
    purge_gauge_psi: N | None
    purge_gauge_pa: N | None
    oxygen_ppm: N | None
    oxygen_vol_percent: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    start_oxygen_ppm: N | None
    start_oxygen_vol_percent: N | None
    gas_oxygen_ppm: N | None
    gas_oxygen_vol_percent: N | None
    keg_l: N | None
    keg_ml: N | None
    keg_us_gal: N | None
    keg_imp_gal: N | None
    keg_us_fl_oz: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    errors: Literal["raise", "nan"]

@overload
def purge_cycles(**given: Unpack[_PurgeCyclesInputs[float]]) -> PurgeCycles[float]: ...
@overload
def purge_cycles(**given: Unpack[_PurgeCyclesInputs[Number]]) -> PurgeCycles[NDArray[np.float64]]: ...

class SweepOxygenMixed(Part[T]):
    @property
    def oxygen_ppm(self) -> T: ...
    @property
    def oxygen_vol_percent(self) -> T: ...


class SweepOxygenPlugFlow(Part[T]):
    @property
    def oxygen_ppm(self) -> T: ...
    @property
    def oxygen_vol_percent(self) -> T: ...


class SweepOxygen(Result[T]):
    @property
    def mixed(self) -> SweepOxygenMixed[T]: ...
    @property
    def plug_flow(self) -> SweepOxygenPlugFlow[T]: ...
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class _SweepOxygenInputs(TypedDict, Generic[N], total=False):
    sweeps_count: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    start_oxygen_ppm: N | None
    start_oxygen_vol_percent: N | None
    gas_oxygen_ppm: N | None
    gas_oxygen_vol_percent: N | None
    keg_l: N | None
    keg_ml: N | None
    keg_us_gal: N | None
    keg_imp_gal: N | None
    keg_us_fl_oz: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    errors: Literal["raise", "nan"]

@overload
def sweep_oxygen(**given: Unpack[_SweepOxygenInputs[float]]) -> SweepOxygen[float]: ...
@overload
def sweep_oxygen(**given: Unpack[_SweepOxygenInputs[Number]]) -> SweepOxygen[NDArray[np.float64]]: ...

class PushOxygen(Result[T]):
    @property
    def oxygen_ppm(self) -> T: ...
    @property
    def oxygen_vol_percent(self) -> T: ...
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class _PushOxygenInputs(TypedDict, Generic[N], total=False):
    pocket_l: N | None
    pocket_ml: N | None
    pocket_us_gal: N | None
    pocket_imp_gal: N | None
    pocket_us_fl_oz: N | None
    push_gauge_kpa: N | None
    push_gauge_bar: N | None
    push_gauge_psi: N | None
    push_gauge_pa: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    start_oxygen_ppm: N | None
    start_oxygen_vol_percent: N | None
    gas_oxygen_ppm: N | None
    gas_oxygen_vol_percent: N | None
    keg_l: N | None
    keg_ml: N | None
    keg_us_gal: N | None
    keg_imp_gal: N | None
    keg_us_fl_oz: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    errors: Literal["raise", "nan"]

@overload
def push_oxygen(**given: Unpack[_PushOxygenInputs[float]]) -> PushOxygen[float]: ...
@overload
def push_oxygen(**given: Unpack[_PushOxygenInputs[Number]]) -> PushOxygen[NDArray[np.float64]]: ...

class OxygenPickupHeadspace(Part[T]):
    @property
    def picked_up_ug_per_l(self) -> T: ...
    @property
    def picked_up_ppb(self) -> T: ...
    @property
    def picked_up_mg_per_l(self) -> T: ...


class OxygenPickupGas(Part[T]):
    @property
    def picked_up_ug_per_l(self) -> T: ...
    @property
    def picked_up_ppb(self) -> T: ...
    @property
    def picked_up_mg_per_l(self) -> T: ...


class OxygenPickupEquilibrium(Part[T]):
    @property
    def dissolved_oxygen_ug_per_l(self) -> T: ...
    @property
    def dissolved_oxygen_ppb(self) -> T: ...
    @property
    def dissolved_oxygen_mg_per_l(self) -> T: ...


class OxygenPickup(Result[T]):
    @property
    def headspace(self) -> OxygenPickupHeadspace[T]: ...
    @property
    def gas(self) -> OxygenPickupGas[T]: ...
    @property
    def equilibrium(self) -> OxygenPickupEquilibrium[T]: ...
    @property
    def total_oxygen_ug_per_l(self) -> T: ...
    @property
    def total_oxygen_ppb(self) -> T: ...
    @property
    def total_oxygen_mg_per_l(self) -> T: ...


class _OxygenPickupInputs(TypedDict, Generic[N], total=False):
    oxygen_ppm: N | None
    oxygen_vol_percent: N | None
    headspace_percent: N | None
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
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    dissolved_oxygen_ug_per_l: N | None
    dissolved_oxygen_ppb: N | None
    dissolved_oxygen_mg_per_l: N | None
    co2_g_per_l: N | None
    volumes: N | None
    start_co2_g_per_l: N | None
    start_volumes: N | None
    gas_oxygen_ppm: N | None
    gas_oxygen_vol_percent: N | None
    errors: Literal["raise", "nan"]

@overload
def oxygen_pickup(**given: Unpack[_OxygenPickupInputs[float]]) -> OxygenPickup[float]: ...
@overload
def oxygen_pickup(**given: Unpack[_OxygenPickupInputs[Number]]) -> OxygenPickup[NDArray[np.float64]]: ...

class TotalPackageOxygenHeadspace(Part[T]):
    @property
    def picked_up_ug_per_l(self) -> T: ...
    @property
    def picked_up_ppb(self) -> T: ...
    @property
    def picked_up_mg_per_l(self) -> T: ...


class TotalPackageOxygen(Result[T]):
    @property
    def headspace(self) -> TotalPackageOxygenHeadspace[T]: ...
    @property
    def total_oxygen_ug_per_l(self) -> T: ...
    @property
    def total_oxygen_ppb(self) -> T: ...
    @property
    def total_oxygen_mg_per_l(self) -> T: ...


class _TotalPackageOxygenInputs(TypedDict, Generic[N], total=False):
    dissolved_oxygen_ug_per_l: N | None
    dissolved_oxygen_ppb: N | None
    dissolved_oxygen_mg_per_l: N | None
    headspace_percent: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    errors: Literal["raise", "nan"]

@overload
def total_package_oxygen(**given: Unpack[_TotalPackageOxygenInputs[float]]) -> TotalPackageOxygen[float]: ...
@overload
def total_package_oxygen(**given: Unpack[_TotalPackageOxygenInputs[Number]]) -> TotalPackageOxygen[NDArray[np.float64]]: ...

class GasBudgetDissolve(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class GasBudgetHeadspace(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class GasBudgetPurge(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class GasBudgetServe(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class GasBudgetLoss(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class GasBudgetTotal(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class GasBudgetLeast(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class GasBudgetMost(Part[T]):
    @property
    def kegs_count(self) -> T: ...


class GasBudget(Result[T]):
    @property
    def dissolve(self) -> GasBudgetDissolve[T]: ...
    @property
    def headspace(self) -> GasBudgetHeadspace[T]: ...
    @property
    def purge(self) -> GasBudgetPurge[T]: ...
    @property
    def serve(self) -> GasBudgetServe[T]: ...
    @property
    def loss(self) -> GasBudgetLoss[T]: ...
    @property
    def total(self) -> GasBudgetTotal[T]: ...
    @property
    def least(self) -> GasBudgetLeast[T]: ...
    @property
    def most(self) -> GasBudgetMost[T]: ...
    @property
    def kegs_count(self) -> T: ...


class _GasBudgetInputs(TypedDict, Generic[N], total=False):
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    co2_g_per_l: N | None
    volumes: N | None
    start_co2_g_per_l: N | None
    start_volumes: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    keg_l: N | None
    keg_ml: N | None
    keg_us_gal: N | None
    keg_imp_gal: N | None
    keg_us_fl_oz: N | None
    purge: Literal["none", "headspace", "empty", "push"] | None
    purge_gauge_kpa: N | None
    purge_gauge_bar: N | None
    purge_gauge_psi: N | None
    purge_gauge_pa: N | None
    cycles_count: N | None
    push_gauge_kpa: N | None
    push_gauge_bar: N | None
    push_gauge_psi: N | None
    push_gauge_pa: N | None
    purge_c: N | None
    purge_f: N | None
    purge_k: N | None
    gas_loss_percent: N | None
    keg_rating_gauge_kpa: float | None
    keg_rating_gauge_bar: float | None
    keg_rating_gauge_psi: float | None
    keg_rating_gauge_pa: float | None
    cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None
    charge_g: N | None
    charge_kg: N | None
    charge_oz: N | None
    charge_lb: N | None
    errors: Literal["raise", "nan"]

@overload
def gas_budget(**given: Unpack[_GasBudgetInputs[float]]) -> GasBudget[float]: ...
@overload
def gas_budget(**given: Unpack[_GasBudgetInputs[Number]]) -> GasBudget[NDArray[np.float64]]: ...

class CylinderLeftFalling(Part[T]):
    @property
    def left_percent(self) -> T: ...


class CylinderLeftLiquidFull(Part[T]):
    @property
    def cylinder_c(self) -> T: ...
    @property
    def cylinder_f(self) -> T: ...
    @property
    def cylinder_k(self) -> T: ...


class CylinderLeft(Result[T]):
    @property
    def falling(self) -> CylinderLeftFalling[T]: ...
    @property
    def liquid_full(self) -> CylinderLeftLiquidFull[T]: ...
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...
    @property
    def abs_kpa(self) -> T: ...
    @property
    def abs_bar(self) -> T: ...
    @property
    def abs_psi(self) -> T: ...
    @property
    def abs_pa(self) -> T: ...


class _CylinderLeftInputs(TypedDict, Generic[N], total=False):
    cylinder_c: N | None
    cylinder_f: N | None
    cylinder_k: N | None
    cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None
    filling_ratio_g_per_g: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    errors: Literal["raise", "nan"]

@overload
def cylinder_left(**given: Unpack[_CylinderLeftInputs[float]]) -> CylinderLeft[float]: ...
@overload
def cylinder_left(**given: Unpack[_CylinderLeftInputs[Number]]) -> CylinderLeft[NDArray[np.float64]]: ...

class CylinderContentsLeft(Part[T]):
    @property
    def gas_g(self) -> T: ...
    @property
    def gas_kg(self) -> T: ...
    @property
    def gas_oz(self) -> T: ...
    @property
    def gas_lb(self) -> T: ...


class CylinderContents(Result[T]):
    @property
    def left(self) -> CylinderContentsLeft[T]: ...
    @property
    def left_percent(self) -> T: ...
    @property
    def kegs_count(self) -> T: ...


class _CylinderContentsInputs(TypedDict, Generic[N], total=False):
    gross_g: N | None
    gross_kg: N | None
    gross_oz: N | None
    gross_lb: N | None
    tare_g: N | None
    tare_kg: N | None
    tare_oz: N | None
    tare_lb: N | None
    cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None
    charge_g: N | None
    charge_kg: N | None
    charge_oz: N | None
    charge_lb: N | None
    gas_g: N | None
    gas_kg: N | None
    gas_oz: N | None
    gas_lb: N | None
    errors: Literal["raise", "nan"]

@overload
def cylinder_contents(**given: Unpack[_CylinderContentsInputs[float]]) -> CylinderContents[float]: ...
@overload
def cylinder_contents(**given: Unpack[_CylinderContentsInputs[Number]]) -> CylinderContents[NDArray[np.float64]]: ...

class RoomCo2Mixed(Part[T]):
    @property
    def room_air_ppm(self) -> T: ...
    @property
    def room_air_vol_percent(self) -> T: ...


class RoomCo2Bound(Part[T]):
    @property
    def room_air_ppm(self) -> T: ...
    @property
    def room_air_vol_percent(self) -> T: ...


class RoomCo2LowHalf(Part[T]):
    @property
    def room_air_ppm(self) -> T: ...
    @property
    def room_air_vol_percent(self) -> T: ...


class RoomCo2Later(Part[T]):
    @property
    def room_air_ppm(self) -> T: ...
    @property
    def room_air_vol_percent(self) -> T: ...


class RoomCo2LaterLowHalf(Part[T]):
    @property
    def room_air_ppm(self) -> T: ...
    @property
    def room_air_vol_percent(self) -> T: ...


class RoomCo2Aired(Part[T]):
    @property
    def time_h(self) -> T: ...
    @property
    def time_d(self) -> T: ...
    @property
    def time_min(self) -> T: ...
    @property
    def time_s(self) -> T: ...


class RoomCo2LowHalfAired(Part[T]):
    @property
    def time_h(self) -> T: ...
    @property
    def time_d(self) -> T: ...
    @property
    def time_min(self) -> T: ...
    @property
    def time_s(self) -> T: ...


class RoomCo2(Result[T]):
    @property
    def mixed(self) -> RoomCo2Mixed[T]: ...
    @property
    def bound(self) -> RoomCo2Bound[T]: ...
    @property
    def low_half(self) -> RoomCo2LowHalf[T]: ...
    @property
    def later(self) -> RoomCo2Later[T]: ...
    @property
    def later_low_half(self) -> RoomCo2LaterLowHalf[T]: ...
    @property
    def aired(self) -> RoomCo2Aired[T]: ...
    @property
    def low_half_aired(self) -> RoomCo2LowHalfAired[T]: ...


class _RoomCo2Inputs(TypedDict, Generic[N], total=False):
    released_g: N | None
    released_kg: N | None
    released_oz: N | None
    released_lb: N | None
    room_m3: N | None
    room_ft3: N | None
    room_c: N | None
    room_f: N | None
    room_k: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    air_changes_per_h: N | None
    air_changes_per_d: N | None
    time_h: N | None
    time_d: N | None
    time_min: N | None
    time_s: N | None
    errors: Literal["raise", "nan"]

@overload
def room_co2(**given: Unpack[_RoomCo2Inputs[float]]) -> RoomCo2[float]: ...
@overload
def room_co2(**given: Unpack[_RoomCo2Inputs[Number]]) -> RoomCo2[NDArray[np.float64]]: ...

class RoomLeakMixed(Part[T]):
    @property
    def room_air_ppm(self) -> T: ...
    @property
    def room_air_vol_percent(self) -> T: ...


class RoomLeakLowHalf(Part[T]):
    @property
    def room_air_ppm(self) -> T: ...
    @property
    def room_air_vol_percent(self) -> T: ...


class RoomLeak(Result[T]):
    @property
    def mixed(self) -> RoomLeakMixed[T]: ...
    @property
    def low_half(self) -> RoomLeakLowHalf[T]: ...


class _RoomLeakInputs(TypedDict, Generic[N], total=False):
    leak_g_per_h: N | None
    leak_oz_per_h: N | None
    room_m3: N | None
    room_ft3: N | None
    room_c: N | None
    room_f: N | None
    room_k: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    air_changes_per_h: N | None
    air_changes_per_d: N | None
    errors: Literal["raise", "nan"]

@overload
def room_leak(**given: Unpack[_RoomLeakInputs[float]]) -> RoomLeak[float]: ...
@overload
def room_leak(**given: Unpack[_RoomLeakInputs[Number]]) -> RoomLeak[NDArray[np.float64]]: ...

class AmbientPressure(Result[T]):
    @property
    def ambient_kpa(self) -> T: ...
    @property
    def ambient_bar(self) -> T: ...
    @property
    def ambient_psi(self) -> T: ...
    @property
    def ambient_pa(self) -> T: ...


class _AmbientPressureInputs(TypedDict, Generic[N], total=False):
    altitude_m: N | None
    altitude_ft: N | None
    sea_level_kpa: N | None
    sea_level_bar: N | None
    sea_level_psi: N | None
    sea_level_pa: N | None
    errors: Literal["raise", "nan"]

@overload
def ambient_pressure(**given: Unpack[_AmbientPressureInputs[float]]) -> AmbientPressure[float]: ...
@overload
def ambient_pressure(**given: Unpack[_AmbientPressureInputs[Number]]) -> AmbientPressure[NDArray[np.float64]]: ...

class PackagingCostBottlesFirst(Part[T]):
    @property
    def cost_money_per_l(self) -> T: ...
    @property
    def cost_money_per_us_gal(self) -> T: ...


class PackagingCostKegFirst(Part[T]):
    @property
    def cost_money_per_l(self) -> T: ...
    @property
    def cost_money_per_us_gal(self) -> T: ...


class PackagingCostBottles(Part[T]):
    @property
    def cost_money_per_l(self) -> T: ...
    @property
    def cost_money_per_us_gal(self) -> T: ...
    @property
    def spent_money(self) -> T: ...


class PackagingCostKeg(Part[T]):
    @property
    def cost_money_per_l(self) -> T: ...
    @property
    def cost_money_per_us_gal(self) -> T: ...
    @property
    def spent_money(self) -> T: ...


class PackagingCost(Result[T]):
    @property
    def bottles_first(self) -> PackagingCostBottlesFirst[T]: ...
    @property
    def keg_first(self) -> PackagingCostKegFirst[T]: ...
    @property
    def bottles(self) -> PackagingCostBottles[T]: ...
    @property
    def keg(self) -> PackagingCostKeg[T]: ...


class _PackagingCostInputs(TypedDict, Generic[N], total=False):
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    bottle_l: N | None
    bottle_ml: N | None
    bottle_us_gal: N | None
    bottle_imp_gal: N | None
    bottle_us_fl_oz: N | None
    bottling_outfit_money: N | None
    bottle_money: N | None
    cap_money: N | None
    sugar_money_per_kg: N | None
    sugar_money_per_lb: N | None
    uses_count: N | None
    bottle_loss_percent: N | None
    outfit_money: N | None
    gas_money_per_kg: N | None
    gas_money_per_lb: N | None
    keg_loss_percent: N | None
    drink_money_per_l: N | None
    drink_money_per_us_gal: N | None
    mass_g: N | None
    mass_kg: N | None
    mass_oz: N | None
    mass_lb: N | None
    gas_g: N | None
    gas_kg: N | None
    gas_oz: N | None
    gas_lb: N | None
    batches_count: N | None
    errors: Literal["raise", "nan"]

@overload
def packaging_cost(**given: Unpack[_PackagingCostInputs[float]]) -> PackagingCost[float]: ...
@overload
def packaging_cost(**given: Unpack[_PackagingCostInputs[Number]]) -> PackagingCost[NDArray[np.float64]]: ...

class BreakEven(Result[T]):
    @property
    def batches_count(self) -> T: ...


class _BreakEvenInputs(TypedDict, Generic[N], total=False):
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    bottle_l: N | None
    bottle_ml: N | None
    bottle_us_gal: N | None
    bottle_imp_gal: N | None
    bottle_us_fl_oz: N | None
    bottling_outfit_money: N | None
    bottle_money: N | None
    cap_money: N | None
    sugar_money_per_kg: N | None
    sugar_money_per_lb: N | None
    uses_count: N | None
    bottle_loss_percent: N | None
    outfit_money: N | None
    gas_money_per_kg: N | None
    gas_money_per_lb: N | None
    keg_loss_percent: N | None
    drink_money_per_l: N | None
    drink_money_per_us_gal: N | None
    mass_g: N | None
    mass_kg: N | None
    mass_oz: N | None
    mass_lb: N | None
    gas_g: N | None
    gas_kg: N | None
    gas_oz: N | None
    gas_lb: N | None
    errors: Literal["raise", "nan"]

@overload
def break_even(**given: Unpack[_BreakEvenInputs[float]]) -> BreakEven[float]: ...
@overload
def break_even(**given: Unpack[_BreakEvenInputs[Number]]) -> BreakEven[NDArray[np.float64]]: ...

class UptakeRateExpected(Part[T]):
    @property
    def kla_per_h(self) -> T: ...
    @property
    def kla_per_d(self) -> T: ...


class UptakeRateLeast(Part[T]):
    @property
    def kla_per_h(self) -> T: ...
    @property
    def kla_per_d(self) -> T: ...


class UptakeRateMost(Part[T]):
    @property
    def kla_per_h(self) -> T: ...
    @property
    def kla_per_d(self) -> T: ...


class UptakeRate(Result[T]):
    @property
    def expected(self) -> UptakeRateExpected[T]: ...
    @property
    def least(self) -> UptakeRateLeast[T]: ...
    @property
    def most(self) -> UptakeRateMost[T]: ...


class _UptakeRateInputs(TypedDict, Generic[N], total=False):
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    keg_diameter_m: N | None
    keg_diameter_ft: N | None
    kla_per_h: N | None
    kla_per_d: N | None
    errors: Literal["raise", "nan"]

@overload
def uptake_rate(**given: Unpack[_UptakeRateInputs[float]]) -> UptakeRate[float]: ...
@overload
def uptake_rate(**given: Unpack[_UptakeRateInputs[Number]]) -> UptakeRate[NDArray[np.float64]]: ...

class CarbonationTimeExpected(Part[T]):
    @property
    def time_h(self) -> T: ...
    @property
    def time_d(self) -> T: ...
    @property
    def time_min(self) -> T: ...
    @property
    def time_s(self) -> T: ...


class CarbonationTimeSoonest(Part[T]):
    @property
    def time_h(self) -> T: ...
    @property
    def time_d(self) -> T: ...
    @property
    def time_min(self) -> T: ...
    @property
    def time_s(self) -> T: ...


class CarbonationTimeLatest(Part[T]):
    @property
    def time_h(self) -> T: ...
    @property
    def time_d(self) -> T: ...
    @property
    def time_min(self) -> T: ...
    @property
    def time_s(self) -> T: ...


class CarbonationTime(Result[T]):
    @property
    def expected(self) -> CarbonationTimeExpected[T]: ...
    @property
    def soonest(self) -> CarbonationTimeSoonest[T]: ...
    @property
    def latest(self) -> CarbonationTimeLatest[T]: ...


class _CarbonationTimeInputs(TypedDict, Generic[N], total=False):
    start_co2_g_per_l: N | None
    start_volumes: N | None
    co2_g_per_l: N | None
    volumes: N | None
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    supply_g_per_h: N | None
    supply_oz_per_h: N | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    keg_diameter_m: N | None
    keg_diameter_ft: N | None
    kla_per_h: N | None
    kla_per_d: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def carbonation_time(**given: Unpack[_CarbonationTimeInputs[float]]) -> CarbonationTime[float]: ...
@overload
def carbonation_time(**given: Unpack[_CarbonationTimeInputs[Number]]) -> CarbonationTime[NDArray[np.float64]]: ...

class CarbonationProgressExpected(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class CarbonationProgressLeast(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class CarbonationProgressMost(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class CarbonationProgressEnd(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class CarbonationProgress(Result[T]):
    @property
    def expected(self) -> CarbonationProgressExpected[T]: ...
    @property
    def least(self) -> CarbonationProgressLeast[T]: ...
    @property
    def most(self) -> CarbonationProgressMost[T]: ...
    @property
    def end(self) -> CarbonationProgressEnd[T]: ...


class _CarbonationProgressInputs(TypedDict, Generic[N], total=False):
    start_co2_g_per_l: N | None
    start_volumes: N | None
    time_h: N | None
    time_d: N | None
    time_min: N | None
    time_s: N | None
    gauge_kpa: N | None
    gauge_bar: N | None
    gauge_psi: N | None
    gauge_pa: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    supply_g_per_h: N | None
    supply_oz_per_h: N | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    keg_diameter_m: N | None
    keg_diameter_ft: N | None
    kla_per_h: N | None
    kla_per_d: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def carbonation_progress(**given: Unpack[_CarbonationProgressInputs[float]]) -> CarbonationProgress[float]: ...
@overload
def carbonation_progress(**given: Unpack[_CarbonationProgressInputs[Number]]) -> CarbonationProgress[NDArray[np.float64]]: ...

class BurstTimeStop(Part[T]):
    @property
    def time_h(self) -> T: ...
    @property
    def time_d(self) -> T: ...
    @property
    def time_min(self) -> T: ...
    @property
    def time_s(self) -> T: ...


class BurstTimeExpected(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class BurstTimeLeast(Part[T]):
    @property
    def co2_g_per_l(self) -> T: ...
    @property
    def volumes(self) -> T: ...


class BurstTimeHold(Part[T]):
    @property
    def gauge_kpa(self) -> T: ...
    @property
    def gauge_bar(self) -> T: ...
    @property
    def gauge_psi(self) -> T: ...
    @property
    def gauge_pa(self) -> T: ...


class BurstTimeRest(Part[T]):
    @property
    def time_h(self) -> T: ...
    @property
    def time_d(self) -> T: ...
    @property
    def time_min(self) -> T: ...
    @property
    def time_s(self) -> T: ...


class BurstTimeLatestRest(Part[T]):
    @property
    def time_h(self) -> T: ...
    @property
    def time_d(self) -> T: ...
    @property
    def time_min(self) -> T: ...
    @property
    def time_s(self) -> T: ...


class BurstTime(Result[T]):
    @property
    def stop(self) -> BurstTimeStop[T]: ...
    @property
    def expected(self) -> BurstTimeExpected[T]: ...
    @property
    def least(self) -> BurstTimeLeast[T]: ...
    @property
    def hold(self) -> BurstTimeHold[T]: ...
    @property
    def rest(self) -> BurstTimeRest[T]: ...
    @property
    def latest_rest(self) -> BurstTimeLatestRest[T]: ...


class _BurstTimeInputs(TypedDict, Generic[N], total=False):
    start_co2_g_per_l: N | None
    start_volumes: N | None
    co2_g_per_l: N | None
    volumes: N | None
    burst_gauge_kpa: N | None
    burst_gauge_bar: N | None
    burst_gauge_psi: N | None
    burst_gauge_pa: N | None
    temperature_c: N | None
    temperature_f: N | None
    temperature_k: N | None
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
    keg_diameter_m: N | None
    keg_diameter_ft: N | None
    kla_per_h: N | None
    kla_per_d: N | None
    altitude_m: N | None
    altitude_ft: N | None
    ambient_kpa: N | None
    ambient_bar: N | None
    ambient_psi: N | None
    ambient_pa: N | None
    sea_level_kpa: float | None
    sea_level_bar: float | None
    sea_level_psi: float | None
    sea_level_pa: float | None
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None
    abv_percent: N | None
    extract_g_per_l: N | None
    basis: Literal["handbook", "physical"] | None
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None
    solubility_multiplier: float | None
    errors: Literal["raise", "nan"]

@overload
def burst_time(**given: Unpack[_BurstTimeInputs[float]]) -> BurstTime[float]: ...
@overload
def burst_time(**given: Unpack[_BurstTimeInputs[Number]]) -> BurstTime[NDArray[np.float64]]: ...

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

def solubility_models(**given: Unpack[_SolubilityModelsInputs]) -> Table: ...
def carbonation_chart(**given: Unpack[_CarbonationChartInputs]) -> Table: ...
def fill_list(**given: Unpack[_FillListInputs]) -> Table: ...
def bottle_doses(**given: Unpack[_BottleDosesInputs]) -> Table: ...
def bottle_pressures(**given: Unpack[_BottlePressuresInputs]) -> Table: ...
def bottle_verdicts(**given: Unpack[_BottleVerdictsInputs]) -> Table: ...
def pressure_parts(**given: Unpack[_PressurePartsInputs]) -> Table: ...
def conditioning_days(**given: Unpack[_ConditioningDaysInputs]) -> Table: ...
def carbonation_curve(**given: Unpack[_CarbonationCurveInputs]) -> Table: ...
def carbonation_schedule(**given: Unpack[_CarbonationScheduleInputs]) -> Table: ...
def uptake_fit(**given: Unpack[_UptakeFitInputs]) -> Table: ...
def carbonating_methods() -> Table: ...
def fermentables() -> Table: ...
def sweeteners() -> Table: ...
def carbonation_ranges() -> Table: ...
def bottle_sizes() -> Table: ...
def bottle_classes() -> Table: ...
def keg_sizes() -> Table: ...
def keg_ratings() -> Table: ...
def cylinder_sizes() -> Table: ...
def line_balance(**given: Unpack[_LineBalanceInputs]) -> Table: ...
def tubes() -> Table: ...
def filling_losses() -> Table: ...
def filling_densities() -> Table: ...
def oxygen_limits() -> Table: ...
def exposure_limits() -> Table: ...
def equations() -> Table: ...
def sources() -> Table: ...
def cautions() -> Table: ...
def claim_quantities() -> Table: ...
def crosscheck_habits() -> Table: ...
def units() -> Table: ...
def instruments() -> Table: ...
def bottling(**given: Unpack[_BottlingInputs]) -> Bottling: ...
def kegging(**given: Unpack[_KeggingInputs]) -> Kegging: ...

class At(Bound):
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
    def dissolved_co2(self, **given: Unpack[_DissolvedCo2Inputs[Number]]) -> DissolvedCo2[NDArray[np.float64]]: ...
    @overload
    def keg_pressure(self, **given: Unpack[_KegPressureInputs[float]]) -> KegPressure[float]: ...
    @overload
    def keg_pressure(self, **given: Unpack[_KegPressureInputs[Number]]) -> KegPressure[NDArray[np.float64]]: ...
    @overload
    def gas_blend(self, **given: Unpack[_GasBlendInputs[float]]) -> GasBlend[float]: ...
    @overload
    def gas_blend(self, **given: Unpack[_GasBlendInputs[Number]]) -> GasBlend[NDArray[np.float64]]: ...
    @overload
    def keg_temperature(self, **given: Unpack[_KegTemperatureInputs[float]]) -> KegTemperature[float]: ...
    @overload
    def keg_temperature(self, **given: Unpack[_KegTemperatureInputs[Number]]) -> KegTemperature[NDArray[np.float64]]: ...
    @overload
    def warmed_keg(self, **given: Unpack[_WarmedKegInputs[float]]) -> WarmedKeg[float]: ...
    @overload
    def warmed_keg(self, **given: Unpack[_WarmedKegInputs[Number]]) -> WarmedKeg[NDArray[np.float64]]: ...
    @overload
    def spunding(self, **given: Unpack[_SpundingInputs[float]]) -> Spunding[float]: ...
    @overload
    def spunding(self, **given: Unpack[_SpundingInputs[Number]]) -> Spunding[NDArray[np.float64]]: ...
    @overload
    def closed_fermentation(self, **given: Unpack[_ClosedFermentationInputs[float]]) -> ClosedFermentation[float]: ...
    @overload
    def closed_fermentation(self, **given: Unpack[_ClosedFermentationInputs[Number]]) -> ClosedFermentation[NDArray[np.float64]]: ...
    @overload
    def stone_pressure(self, **given: Unpack[_StonePressureInputs[float]]) -> StonePressure[float]: ...
    @overload
    def stone_pressure(self, **given: Unpack[_StonePressureInputs[Number]]) -> StonePressure[NDArray[np.float64]]: ...
    @overload
    def residual_co2(self, **given: Unpack[_ResidualCo2Inputs[float]]) -> ResidualCo2[float]: ...
    @overload
    def residual_co2(self, **given: Unpack[_ResidualCo2Inputs[Number]]) -> ResidualCo2[NDArray[np.float64]]: ...
    @overload
    def priming_sugar(self, **given: Unpack[_PrimingSugarInputs[float]]) -> PrimingSugar[float]: ...
    @overload
    def priming_sugar(self, **given: Unpack[_PrimingSugarInputs[Number]]) -> PrimingSugar[NDArray[np.float64]]: ...
    @overload
    def primed_carbonation(self, **given: Unpack[_PrimedCarbonationInputs[float]]) -> PrimedCarbonation[float]: ...
    @overload
    def primed_carbonation(self, **given: Unpack[_PrimedCarbonationInputs[Number]]) -> PrimedCarbonation[NDArray[np.float64]]: ...
    @overload
    def priming_wort(self, **given: Unpack[_PrimingWortInputs[float]]) -> PrimingWort[float]: ...
    @overload
    def priming_wort(self, **given: Unpack[_PrimingWortInputs[Number]]) -> PrimingWort[NDArray[np.float64]]: ...
    @overload
    def priming_syrup(self, **given: Unpack[_PrimingSyrupInputs[float]]) -> PrimingSyrup[float]: ...
    @overload
    def priming_syrup(self, **given: Unpack[_PrimingSyrupInputs[Number]]) -> PrimingSyrup[NDArray[np.float64]]: ...
    @overload
    def package_pressure(self, **given: Unpack[_PackagePressureInputs[float]]) -> PackagePressure[float]: ...
    @overload
    def package_pressure(self, **given: Unpack[_PackagePressureInputs[Number]]) -> PackagePressure[NDArray[np.float64]]: ...
    @overload
    def package_carbonation(self, **given: Unpack[_PackageCarbonationInputs[float]]) -> PackageCarbonation[float]: ...
    @overload
    def package_carbonation(self, **given: Unpack[_PackageCarbonationInputs[Number]]) -> PackageCarbonation[NDArray[np.float64]]: ...
    @overload
    def conditioning(self, **given: Unpack[_ConditioningInputs[float]]) -> Conditioning[float]: ...
    @overload
    def conditioning(self, **given: Unpack[_ConditioningInputs[Number]]) -> Conditioning[NDArray[np.float64]]: ...
    @overload
    def conditioning_time(self, **given: Unpack[_ConditioningTimeInputs[float]]) -> ConditioningTime[float]: ...
    @overload
    def conditioning_time(self, **given: Unpack[_ConditioningTimeInputs[Number]]) -> ConditioningTime[NDArray[np.float64]]: ...
    @overload
    def reyeasting(self, **given: Unpack[_ReyeastingInputs[float]]) -> Reyeasting[float]: ...
    @overload
    def reyeasting(self, **given: Unpack[_ReyeastingInputs[Number]]) -> Reyeasting[NDArray[np.float64]]: ...
    @overload
    def gravity(self, **given: Unpack[_GravityInputs[float]]) -> Gravity[float]: ...
    @overload
    def gravity(self, **given: Unpack[_GravityInputs[Number]]) -> Gravity[NDArray[np.float64]]: ...
    @overload
    def attenuation(self, **given: Unpack[_AttenuationInputs[float]]) -> Attenuation[float]: ...
    @overload
    def attenuation(self, **given: Unpack[_AttenuationInputs[Number]]) -> Attenuation[NDArray[np.float64]]: ...
    @overload
    def final_gravity(self, **given: Unpack[_FinalGravityInputs[float]]) -> FinalGravity[float]: ...
    @overload
    def final_gravity(self, **given: Unpack[_FinalGravityInputs[Number]]) -> FinalGravity[NDArray[np.float64]]: ...
    @overload
    def gravity_co2(self, **given: Unpack[_GravityCo2Inputs[float]]) -> GravityCo2[float]: ...
    @overload
    def gravity_co2(self, **given: Unpack[_GravityCo2Inputs[Number]]) -> GravityCo2[NDArray[np.float64]]: ...
    @overload
    def added_co2(self, **given: Unpack[_AddedCo2Inputs[float]]) -> AddedCo2[float]: ...
    @overload
    def added_co2(self, **given: Unpack[_AddedCo2Inputs[Number]]) -> AddedCo2[NDArray[np.float64]]: ...
    @overload
    def drink_properties(self, **given: Unpack[_DrinkPropertiesInputs[float]]) -> DrinkProperties[float]: ...
    @overload
    def drink_properties(self, **given: Unpack[_DrinkPropertiesInputs[Number]]) -> DrinkProperties[NDArray[np.float64]]: ...
    @overload
    def co2_saturation(self, **given: Unpack[_Co2SaturationInputs[float]]) -> Co2Saturation[float]: ...
    @overload
    def co2_saturation(self, **given: Unpack[_Co2SaturationInputs[Number]]) -> Co2Saturation[NDArray[np.float64]]: ...
    @overload
    def line_flow(self, **given: Unpack[_LineFlowInputs[float]]) -> LineFlow[float]: ...
    @overload
    def line_flow(self, **given: Unpack[_LineFlowInputs[Number]]) -> LineFlow[NDArray[np.float64]]: ...
    @overload
    def line_length(self, **given: Unpack[_LineLengthInputs[float]]) -> LineLength[float]: ...
    @overload
    def line_length(self, **given: Unpack[_LineLengthInputs[Number]]) -> LineLength[NDArray[np.float64]]: ...
    @overload
    def line_pressure(self, **given: Unpack[_LinePressureInputs[float]]) -> LinePressure[float]: ...
    @overload
    def line_pressure(self, **given: Unpack[_LinePressureInputs[Number]]) -> LinePressure[NDArray[np.float64]]: ...
    @overload
    def handbook_line(self, **given: Unpack[_HandbookLineInputs[float]]) -> HandbookLine[float]: ...
    @overload
    def handbook_line(self, **given: Unpack[_HandbookLineInputs[Number]]) -> HandbookLine[NDArray[np.float64]]: ...
    @overload
    def handbook_pressure(self, **given: Unpack[_HandbookPressureInputs[float]]) -> HandbookPressure[float]: ...
    @overload
    def handbook_pressure(self, **given: Unpack[_HandbookPressureInputs[Number]]) -> HandbookPressure[NDArray[np.float64]]: ...
    @overload
    def filling_carbonation(self, **given: Unpack[_FillingCarbonationInputs[float]]) -> FillingCarbonation[float]: ...
    @overload
    def filling_carbonation(self, **given: Unpack[_FillingCarbonationInputs[Number]]) -> FillingCarbonation[NDArray[np.float64]]: ...
    @overload
    def blend(self, **given: Unpack[_BlendInputs[float]]) -> Blend[float]: ...
    @overload
    def blend(self, **given: Unpack[_BlendInputs[Number]]) -> Blend[NDArray[np.float64]]: ...
    @overload
    def purge_oxygen(self, **given: Unpack[_PurgeOxygenInputs[float]]) -> PurgeOxygen[float]: ...
    @overload
    def purge_oxygen(self, **given: Unpack[_PurgeOxygenInputs[Number]]) -> PurgeOxygen[NDArray[np.float64]]: ...
    @overload
    def purge_cycles(self, **given: Unpack[_PurgeCyclesInputs[float]]) -> PurgeCycles[float]: ...
    @overload
    def purge_cycles(self, **given: Unpack[_PurgeCyclesInputs[Number]]) -> PurgeCycles[NDArray[np.float64]]: ...
    @overload
    def sweep_oxygen(self, **given: Unpack[_SweepOxygenInputs[float]]) -> SweepOxygen[float]: ...
    @overload
    def sweep_oxygen(self, **given: Unpack[_SweepOxygenInputs[Number]]) -> SweepOxygen[NDArray[np.float64]]: ...
    @overload
    def push_oxygen(self, **given: Unpack[_PushOxygenInputs[float]]) -> PushOxygen[float]: ...
    @overload
    def push_oxygen(self, **given: Unpack[_PushOxygenInputs[Number]]) -> PushOxygen[NDArray[np.float64]]: ...
    @overload
    def oxygen_pickup(self, **given: Unpack[_OxygenPickupInputs[float]]) -> OxygenPickup[float]: ...
    @overload
    def oxygen_pickup(self, **given: Unpack[_OxygenPickupInputs[Number]]) -> OxygenPickup[NDArray[np.float64]]: ...
    @overload
    def total_package_oxygen(self, **given: Unpack[_TotalPackageOxygenInputs[float]]) -> TotalPackageOxygen[float]: ...
    @overload
    def total_package_oxygen(self, **given: Unpack[_TotalPackageOxygenInputs[Number]]) -> TotalPackageOxygen[NDArray[np.float64]]: ...
    @overload
    def gas_budget(self, **given: Unpack[_GasBudgetInputs[float]]) -> GasBudget[float]: ...
    @overload
    def gas_budget(self, **given: Unpack[_GasBudgetInputs[Number]]) -> GasBudget[NDArray[np.float64]]: ...
    @overload
    def cylinder_left(self, **given: Unpack[_CylinderLeftInputs[float]]) -> CylinderLeft[float]: ...
    @overload
    def cylinder_left(self, **given: Unpack[_CylinderLeftInputs[Number]]) -> CylinderLeft[NDArray[np.float64]]: ...
    @overload
    def cylinder_contents(self, **given: Unpack[_CylinderContentsInputs[float]]) -> CylinderContents[float]: ...
    @overload
    def cylinder_contents(self, **given: Unpack[_CylinderContentsInputs[Number]]) -> CylinderContents[NDArray[np.float64]]: ...
    @overload
    def room_co2(self, **given: Unpack[_RoomCo2Inputs[float]]) -> RoomCo2[float]: ...
    @overload
    def room_co2(self, **given: Unpack[_RoomCo2Inputs[Number]]) -> RoomCo2[NDArray[np.float64]]: ...
    @overload
    def room_leak(self, **given: Unpack[_RoomLeakInputs[float]]) -> RoomLeak[float]: ...
    @overload
    def room_leak(self, **given: Unpack[_RoomLeakInputs[Number]]) -> RoomLeak[NDArray[np.float64]]: ...
    @overload
    def ambient_pressure(self, **given: Unpack[_AmbientPressureInputs[float]]) -> AmbientPressure[float]: ...
    @overload
    def ambient_pressure(self, **given: Unpack[_AmbientPressureInputs[Number]]) -> AmbientPressure[NDArray[np.float64]]: ...
    @overload
    def packaging_cost(self, **given: Unpack[_PackagingCostInputs[float]]) -> PackagingCost[float]: ...
    @overload
    def packaging_cost(self, **given: Unpack[_PackagingCostInputs[Number]]) -> PackagingCost[NDArray[np.float64]]: ...
    @overload
    def break_even(self, **given: Unpack[_BreakEvenInputs[float]]) -> BreakEven[float]: ...
    @overload
    def break_even(self, **given: Unpack[_BreakEvenInputs[Number]]) -> BreakEven[NDArray[np.float64]]: ...
    @overload
    def uptake_rate(self, **given: Unpack[_UptakeRateInputs[float]]) -> UptakeRate[float]: ...
    @overload
    def uptake_rate(self, **given: Unpack[_UptakeRateInputs[Number]]) -> UptakeRate[NDArray[np.float64]]: ...
    @overload
    def carbonation_time(self, **given: Unpack[_CarbonationTimeInputs[float]]) -> CarbonationTime[float]: ...
    @overload
    def carbonation_time(self, **given: Unpack[_CarbonationTimeInputs[Number]]) -> CarbonationTime[NDArray[np.float64]]: ...
    @overload
    def carbonation_progress(self, **given: Unpack[_CarbonationProgressInputs[float]]) -> CarbonationProgress[float]: ...
    @overload
    def carbonation_progress(self, **given: Unpack[_CarbonationProgressInputs[Number]]) -> CarbonationProgress[NDArray[np.float64]]: ...
    @overload
    def burst_time(self, **given: Unpack[_BurstTimeInputs[float]]) -> BurstTime[float]: ...
    @overload
    def burst_time(self, **given: Unpack[_BurstTimeInputs[Number]]) -> BurstTime[NDArray[np.float64]]: ...
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
