"""The functions of the library and their results."""

# Written by generate.py from the tables of the core; a test compares.

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, Literal, TypeVar

from ._at import Bound, bound
from ._errors import CarbWarning
from ._plan import Bottling, Kegging, job
from ._result import Part, Result, function, output, part
from ._table import Table, table

if TYPE_CHECKING:
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


class ChartTemperatureWarning(CarbWarning):
    """Elements with the caution ``chart_temperature``."""

    code = "chart_temperature"


class ChartPressureWarning(CarbWarning):
    """Elements with the caution ``chart_pressure``."""

    code = "chart_pressure"


class CoreWarmWarning(CarbWarning):
    """Elements with the caution ``core_warm``."""

    code = "core_warm"


class BelowFreezingWarning(CarbWarning):
    """Elements with the caution ``below_freezing``."""

    code = "below_freezing"


class ResidualHeldWarning(CarbWarning):
    """Elements with the caution ``residual_held``."""

    code = "residual_held"


class WineTemperatureWarning(CarbWarning):
    """Elements with the caution ``wine_temperature``."""

    code = "wine_temperature"


class ExtractHighWarning(CarbWarning):
    """Elements with the caution ``extract_high``."""

    code = "extract_high"


class AlcoholHighWarning(CarbWarning):
    """Elements with the caution ``alcohol_high``."""

    code = "alcohol_high"


class GasPressureWarning(CarbWarning):
    """Elements with the caution ``gas_pressure``."""

    code = "gas_pressure"


class GravityRangeWarning(CarbWarning):
    """Elements with the caution ``gravity_range``."""

    code = "gravity_range"


class EuropeanTemperatureWarning(CarbWarning):
    """Elements with the caution ``european_temperature``."""

    code = "european_temperature"


class HenryTemperatureWarning(CarbWarning):
    """Elements with the caution ``henry_temperature``."""

    code = "henry_temperature"


class ViscosityTemperatureWarning(CarbWarning):
    """Elements with the caution ``viscosity_temperature``."""

    code = "viscosity_temperature"


class NearCriticalWarning(CarbWarning):
    """Elements with the caution ``near_critical``."""

    code = "near_critical"


class OriginalRangeWarning(CarbWarning):
    """Elements with the caution ``original_range``."""

    code = "original_range"


class LiquidAlcoholWarning(CarbWarning):
    """Elements with the caution ``liquid_alcohol``."""

    code = "liquid_alcohol"


class LiquidWarmWarning(CarbWarning):
    """Elements with the caution ``liquid_warm``."""

    code = "liquid_warm"


class ForeignModelWarning(CarbWarning):
    """Elements with the caution ``foreign_model``."""

    code = "foreign_model"


class DextrinLeftWarning(CarbWarning):
    """Elements with the caution ``dextrin_left``."""

    code = "dextrin_left"


class LactoseLeftWarning(CarbWarning):
    """Elements with the caution ``lactose_left``."""

    code = "lactose_left"


class SweetenerLeftWarning(CarbWarning):
    """Elements with the caution ``sweetener_left``."""

    code = "sweetener_left"


class SweetenerPacketWarning(CarbWarning):
    """Elements with the caution ``sweetener_packet``."""

    code = "sweetener_packet"


class ChartCommonPracticeWarning(CarbWarning):
    """Elements with the caution ``chart_common_practice``."""

    code = "chart_common_practice"


class FermentableLeftWarning(CarbWarning):
    """Elements with the caution ``fermentable_left``."""

    code = "fermentable_left"


class FermentableDangerWarning(CarbWarning):
    """Elements with the caution ``fermentable_danger``."""

    code = "fermentable_danger"


class CarbonationHighWarning(CarbWarning):
    """Elements with the caution ``carbonation_high``."""

    code = "carbonation_high"


class CarbonationDangerWarning(CarbWarning):
    """Elements with the caution ``carbonation_danger``."""

    code = "carbonation_danger"


class HeatedGlassWarning(CarbWarning):
    """Elements with the caution ``heated_glass``."""

    code = "heated_glass"


class PressureHighWarning(CarbWarning):
    """Elements with the caution ``pressure_high``."""

    code = "pressure_high"


class PressureDangerWarning(CarbWarning):
    """Elements with the caution ``pressure_danger``."""

    code = "pressure_danger"


class ClassCarbonationHighWarning(CarbWarning):
    """Elements with the caution ``class_carbonation_high``."""

    code = "class_carbonation_high"


class ClassCarbonationDangerWarning(CarbWarning):
    """Elements with the caution ``class_carbonation_danger``."""

    code = "class_carbonation_danger"


class ClassPressureDangerWarning(CarbWarning):
    """Elements with the caution ``class_pressure_danger``."""

    code = "class_pressure_danger"


class RatingDangerWarning(CarbWarning):
    """Elements with the caution ``rating_danger``."""

    code = "rating_danger"


class NotForConditioningWarning(CarbWarning):
    """Elements with the caution ``not_for_conditioning``."""

    code = "not_for_conditioning"


class UnfinishedDangerWarning(CarbWarning):
    """Elements with the caution ``unfinished_danger``."""

    code = "unfinished_danger"


class StillFallingWarning(CarbWarning):
    """Elements with the caution ``still_falling``."""

    code = "still_falling"


class FewReadingsWarning(CarbWarning):
    """Elements with the caution ``few_readings``."""

    code = "few_readings"


class BelowExpectedWarning(CarbWarning):
    """Elements with the caution ``below_expected``."""

    code = "below_expected"


class AboveExpectedWarning(CarbWarning):
    """Elements with the caution ``above_expected``."""

    code = "above_expected"


class WildDangerWarning(CarbWarning):
    """Elements with the caution ``wild_danger``."""

    code = "wild_danger"


class StrongDrinkWarning(CarbWarning):
    """Elements with the caution ``strong_drink``."""

    code = "strong_drink"


class OldDrinkWarning(CarbWarning):
    """Elements with the caution ``old_drink``."""

    code = "old_drink"


class FilteredDrinkWarning(CarbWarning):
    """Elements with the caution ``filtered_drink``."""

    code = "filtered_drink"


class ColdConditioningWarning(CarbWarning):
    """Elements with the caution ``cold_conditioning``."""

    code = "cold_conditioning"


class HotConditioningWarning(CarbWarning):
    """Elements with the caution ``hot_conditioning``."""

    code = "hot_conditioning"


class FewCellsWarning(CarbWarning):
    """Elements with the caution ``few_cells``."""

    code = "few_cells"


class FermenterVacuumWarning(CarbWarning):
    """Elements with the caution ``fermenter_vacuum``."""

    code = "fermenter_vacuum"


class UnsteadyGravityWarning(CarbWarning):
    """Elements with the caution ``unsteady_gravity``."""

    code = "unsteady_gravity"


class CoarseScaleWarning(CarbWarning):
    """Elements with the caution ``coarse_scale``."""

    code = "coarse_scale"


class LowAttenuationWarning(CarbWarning):
    """Elements with the caution ``low_attenuation``."""

    code = "low_attenuation"


class EndNotToldWarning(CarbWarning):
    """Elements with the caution ``end_not_told``."""

    code = "end_not_told"


class CoarseTabletWarning(CarbWarning):
    """Elements with the caution ``coarse_tablet``."""

    code = "coarse_tablet"


class TransitionFlowWarning(CarbWarning):
    """Elements with the caution ``transition_flow``."""

    code = "transition_flow"


class FastPourWarning(CarbWarning):
    """Elements with the caution ``fast_pour``."""

    code = "fast_pour"


class GrowlerWarmWarning(CarbWarning):
    """Elements with the caution ``growler_warm``."""

    code = "growler_warm"


class BlendLosesWarning(CarbWarning):
    """Elements with the caution ``blend_loses``."""

    code = "blend_loses"


class VesselRatingDangerWarning(CarbWarning):
    """Elements with the caution ``vessel_rating_danger``."""

    code = "vessel_rating_danger"


class VesselUnratedWarning(CarbWarning):
    """Elements with the caution ``vessel_unrated``."""

    code = "vessel_unrated"


class OxygenTemperatureWarning(CarbWarning):
    """Elements with the caution ``oxygen_temperature``."""

    code = "oxygen_temperature"


class OxygenHighWarning(CarbWarning):
    """Elements with the caution ``oxygen_high``."""

    code = "oxygen_high"


class PurgePressureWarning(CarbWarning):
    """Elements with the caution ``purge_pressure``."""

    code = "purge_pressure"


class PurgeAboveRatingWarning(CarbWarning):
    """Elements with the caution ``purge_above_rating``."""

    code = "purge_above_rating"


class CylinderLiquidFullWarning(CarbWarning):
    """Elements with the caution ``cylinder_liquid_full``."""

    code = "cylinder_liquid_full"


class CylinderOverfilledWarning(CarbWarning):
    """Elements with the caution ``cylinder_overfilled``."""

    code = "cylinder_overfilled"


class CylinderOverweightWarning(CarbWarning):
    """Elements with the caution ``cylinder_overweight``."""

    code = "cylinder_overweight"


class RoomAboveLongTermWarning(CarbWarning):
    """Elements with the caution ``room_above_long_term``."""

    code = "room_above_long_term"


class RoomAboveUkShortTermWarning(CarbWarning):
    """Elements with the caution ``room_above_uk_short_term``."""

    code = "room_above_uk_short_term"


class RoomAboveUsShortTermWarning(CarbWarning):
    """Elements with the caution ``room_above_us_short_term``."""

    code = "room_above_us_short_term"


class RoomImmediatelyDangerousWarning(CarbWarning):
    """Elements with the caution ``room_immediately_dangerous``."""

    code = "room_immediately_dangerous"


class UptakeTemperatureWarning(CarbWarning):
    """Elements with the caution ``uptake_temperature``."""

    code = "uptake_temperature"


class DeepDrinkWarning(CarbWarning):
    """Elements with the caution ``deep_drink``."""

    code = "deep_drink"


class HighGaugeWarning(CarbWarning):
    """Elements with the caution ``high_gauge``."""

    code = "high_gauge"


class WorkingPressureDangerWarning(CarbWarning):
    """Elements with the caution ``working_pressure_danger``."""

    code = "working_pressure_danger"


class BeyondEveryKegWarning(CarbWarning):
    """Elements with the caution ``beyond_every_keg``."""

    code = "beyond_every_keg"


class UnpurgedWarning(CarbWarning):
    """Elements with the caution ``unpurged``."""

    code = "unpurged"


class CylinderHotWarning(CarbWarning):
    """Elements with the caution ``cylinder_hot``."""

    code = "cylinder_hot"


class DissolvedCo2(Result[T]):
    """CO2 that a drink holds at equilibrium under a pressure of CO2, or of a blended gas."""

    __slots__ = ()
    function = "dissolved_co2"
    outputs = ("co2_g_per_l", "volumes")
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


@function(DissolvedCo2)
def dissolved_co2(
    *,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    abs_kpa: Number | None = None,
    abs_bar: Number | None = None,
    abs_psi: Number | None = None,
    abs_pa: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    co2_percent: Number | None = None,
    air_abs_kpa: Number | None = None,
    air_abs_bar: Number | None = None,
    air_abs_psi: Number | None = None,
    air_abs_pa: Number | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> DissolvedCo2[Any]:
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
    5.092096899113167
    """
    raise NotImplementedError  # The decorator answers.


class KegPressure(Result[T]):
    """Regulator pressure that holds a drink at a carbonation, under CO2 or a blended gas."""

    __slots__ = ()
    function = "keg_pressure"
    outputs = ("gauge_kpa", "gauge_bar", "gauge_psi", "gauge_pa", "abs_kpa", "abs_bar", "abs_psi", "abs_pa")
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "abs_kpa", "abs_bar", "abs_psi")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")
    abs_kpa = output("abs_kpa", "Pressure above vacuum, total of the gas over the drink, kPa.")
    abs_bar = output("abs_bar", "Pressure above vacuum, total of the gas over the drink, bar.")
    abs_psi = output("abs_psi", "Pressure above vacuum, total of the gas over the drink, psi.")
    abs_pa = output("abs_pa", "Pressure above vacuum, total of the gas over the drink, Pa.")


@function(KegPressure)
def keg_pressure(
    *,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    co2_percent: Number | None = None,
    air_abs_kpa: Number | None = None,
    air_abs_bar: Number | None = None,
    air_abs_psi: Number | None = None,
    air_abs_pa: Number | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> KegPressure[Any]:
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
    77.31862844464919
    """
    raise NotImplementedError  # The decorator answers.


class GasBlend(Result[T]):
    """Share of CO2 in a blend with nitrogen that holds a drink at a carbonation under a regulator pressure."""

    __slots__ = ()
    function = "gas_blend"
    outputs = ("co2_percent",)
    shown = ("co2_percent",)
    co2_percent = output("co2_percent", "CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen, %.")


@function(GasBlend)
def gas_blend(
    *,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    air_abs_kpa: Number | None = None,
    air_abs_bar: Number | None = None,
    air_abs_psi: Number | None = None,
    air_abs_pa: Number | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> GasBlend[Any]:
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
    70.51698887170001
    """
    raise NotImplementedError  # The decorator answers.


class KegTemperature(Result[T]):
    """Temperature at which a regulator pressure holds a drink at a carbonation: warmer, it foams and loses CO2."""

    __slots__ = ()
    function = "keg_temperature"
    outputs = ("temperature_c", "temperature_f", "temperature_k")
    shown = ("temperature_c", "temperature_f")
    temperature_c = output("temperature_c", "Temperature of the drink, °C.")
    temperature_f = output("temperature_f", "Temperature of the drink, °F.")
    temperature_k = output("temperature_k", "Temperature of the drink, K.")


@function(KegTemperature)
def keg_temperature(
    *,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    co2_percent: Number | None = None,
    air_abs_kpa: Number | None = None,
    air_abs_bar: Number | None = None,
    air_abs_psi: Number | None = None,
    air_abs_pa: Number | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> KegTemperature[Any]:
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
    raise NotImplementedError  # The decorator answers.


class WarmedKegExpected(Part[T]):
    """The outputs of WarmedKeg that are expected."""

    __slots__ = ()
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "abs_kpa", "abs_bar", "abs_psi", "co2_g_per_l", "volumes")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")
    abs_kpa = output("abs_kpa", "Pressure above vacuum, total of the gas over the drink, kPa.")
    abs_bar = output("abs_bar", "Pressure above vacuum, total of the gas over the drink, bar.")
    abs_psi = output("abs_psi", "Pressure above vacuum, total of the gas over the drink, psi.")
    abs_pa = output("abs_pa", "Pressure above vacuum, total of the gas over the drink, Pa.")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class WarmedKegWorst(Part[T]):
    """The outputs of WarmedKeg that are worst."""

    __slots__ = ()
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "abs_kpa", "abs_bar", "abs_psi")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")
    abs_kpa = output("abs_kpa", "Pressure above vacuum, total of the gas over the drink, kPa.")
    abs_bar = output("abs_bar", "Pressure above vacuum, total of the gas over the drink, bar.")
    abs_psi = output("abs_psi", "Pressure above vacuum, total of the gas over the drink, psi.")
    abs_pa = output("abs_pa", "Pressure above vacuum, total of the gas over the drink, Pa.")


class WarmedKeg(Result[T]):
    """Pressure in a keg, or a growler, that was sealed in equilibrium at its filling temperature with so much CO2 dissolved, and stands warmer or colder: expected and worst, and the CO2 then dissolved."""

    __slots__ = ()
    function = "warmed_keg"
    outputs = ("expected_gauge_kpa", "expected_gauge_bar", "expected_gauge_psi", "expected_gauge_pa", "expected_abs_kpa", "expected_abs_bar", "expected_abs_psi", "expected_abs_pa", "expected_co2_g_per_l", "expected_volumes", "worst_gauge_kpa", "worst_gauge_bar", "worst_gauge_psi", "worst_gauge_pa", "worst_abs_kpa", "worst_abs_bar", "worst_abs_psi", "worst_abs_pa")
    shown = ("expected_gauge_kpa", "expected_gauge_bar", "expected_gauge_psi", "expected_abs_kpa", "expected_abs_bar", "expected_abs_psi", "expected_co2_g_per_l", "expected_volumes", "worst_gauge_kpa", "worst_gauge_bar", "worst_gauge_psi", "worst_abs_kpa", "worst_abs_bar", "worst_abs_psi")
    expected = part(WarmedKegExpected, "expected", "Expected.")
    worst = part(WarmedKegWorst, "worst", "Worst.")


@function(WarmedKeg)
def warmed_keg(
    *,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    filling_c: Number | None = None,
    filling_f: Number | None = None,
    filling_k: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    headspace_percent: Number | None = None,
    air_abs_kpa: Number | None = None,
    air_abs_bar: Number | None = None,
    air_abs_psi: Number | None = None,
    air_abs_pa: Number | None = None,
    keg_rating_gauge_kpa: float | None = None,
    keg_rating_gauge_bar: float | None = None,
    keg_rating_gauge_psi: float | None = None,
    keg_rating_gauge_pa: float | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    fermentable_g_per_l: Number | None = None,
    yeast: Literal["live", "none"] | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    yield_percent: float | None = None,
    solubility_multiplier: float | None = None,
    yield_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> WarmedKeg[Any]:
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
    raise NotImplementedError  # The decorator answers.


class SpundingRelief(Part[T]):
    """The outputs of Spunding that are relief."""

    __slots__ = ()
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "abs_kpa", "abs_bar", "abs_psi")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")
    abs_kpa = output("abs_kpa", "Pressure above vacuum, total of the gas over the drink, kPa.")
    abs_bar = output("abs_bar", "Pressure above vacuum, total of the gas over the drink, bar.")
    abs_psi = output("abs_psi", "Pressure above vacuum, total of the gas over the drink, psi.")
    abs_pa = output("abs_pa", "Pressure above vacuum, total of the gas over the drink, Pa.")


class SpundingClosing(Part[T]):
    """The outputs of Spunding that are closing."""

    __slots__ = ()
    shown = ("sg", "plato")
    sg = output("sg", "Specific gravity 20/20 °C, SG.")
    plato = output("plato", "Extract, grams in 100 g of solution, °P.")


class Spunding(Result[T]):
    """Natural carbonation in the fermenter: the pressure at which its relief valve opens, and the gravity at which it is closed."""

    __slots__ = ()
    function = "spunding"
    outputs = ("relief_gauge_kpa", "relief_gauge_bar", "relief_gauge_psi", "relief_gauge_pa", "relief_abs_kpa", "relief_abs_bar", "relief_abs_psi", "relief_abs_pa", "closing_sg", "closing_plato", "drop_sg", "start_co2_g_per_l", "start_volumes")
    shown = ("relief_gauge_kpa", "relief_gauge_bar", "relief_gauge_psi", "relief_abs_kpa", "relief_abs_bar", "relief_abs_psi", "closing_sg", "closing_plato", "drop_sg", "start_co2_g_per_l", "start_volumes")
    relief = part(SpundingRelief, "relief", "Relief.")
    closing = part(SpundingClosing, "closing", "Closing.")
    drop_sg = output("drop_sg", "By how much the specific gravity lies above the end of fermentation, SG.")
    start_co2_g_per_l = output("start_co2_g_per_l", "CO2 in the drink at the start, g/L.")
    start_volumes = output("start_volumes", "CO2 in the drink at the start, vol.")


@function(Spunding)
def spunding(
    *,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    final_sg: Number | None = None,
    final_plato: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    fermenter_headspace_percent: Number | None = None,
    start_co2_g_per_l: Number | None = None,
    start_volumes: Number | None = None,
    extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
    keg_rating_gauge_kpa: float | None = None,
    keg_rating_gauge_bar: float | None = None,
    keg_rating_gauge_psi: float | None = None,
    keg_rating_gauge_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    residual_model: Literal["table", "equilibrium"] | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    residual_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> Spunding[Any]:
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
    135.7278802311335
    """
    raise NotImplementedError  # The decorator answers.


class ClosedFermentationExpected(Part[T]):
    """The outputs of ClosedFermentation that are expected."""

    __slots__ = ()
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "abs_kpa", "abs_bar", "abs_psi", "co2_g_per_l", "volumes")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")
    abs_kpa = output("abs_kpa", "Pressure above vacuum, total of the gas over the drink, kPa.")
    abs_bar = output("abs_bar", "Pressure above vacuum, total of the gas over the drink, bar.")
    abs_psi = output("abs_psi", "Pressure above vacuum, total of the gas over the drink, psi.")
    abs_pa = output("abs_pa", "Pressure above vacuum, total of the gas over the drink, Pa.")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class ClosedFermentationWorst(Part[T]):
    """The outputs of ClosedFermentation that are worst."""

    __slots__ = ()
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "abs_kpa", "abs_bar", "abs_psi")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")
    abs_kpa = output("abs_kpa", "Pressure above vacuum, total of the gas over the drink, kPa.")
    abs_bar = output("abs_bar", "Pressure above vacuum, total of the gas over the drink, bar.")
    abs_psi = output("abs_psi", "Pressure above vacuum, total of the gas over the drink, psi.")
    abs_pa = output("abs_pa", "Pressure above vacuum, total of the gas over the drink, Pa.")


class ClosedFermentation(Result[T]):
    """Pressure that a fermenter comes to without a relief valve when it is closed before its fermentation ends: expected by Balling's yield, and worst by theory, and the CO2 then dissolved."""

    __slots__ = ()
    function = "closed_fermentation"
    outputs = ("expected_gauge_kpa", "expected_gauge_bar", "expected_gauge_psi", "expected_gauge_pa", "expected_abs_kpa", "expected_abs_bar", "expected_abs_psi", "expected_abs_pa", "expected_co2_g_per_l", "expected_volumes", "worst_gauge_kpa", "worst_gauge_bar", "worst_gauge_psi", "worst_gauge_pa", "worst_abs_kpa", "worst_abs_bar", "worst_abs_psi", "worst_abs_pa")
    shown = ("expected_gauge_kpa", "expected_gauge_bar", "expected_gauge_psi", "expected_abs_kpa", "expected_abs_bar", "expected_abs_psi", "expected_co2_g_per_l", "expected_volumes", "worst_gauge_kpa", "worst_gauge_bar", "worst_gauge_psi", "worst_abs_kpa", "worst_abs_bar", "worst_abs_psi")
    expected = part(ClosedFermentationExpected, "expected", "Expected.")
    worst = part(ClosedFermentationWorst, "worst", "Worst.")


@function(ClosedFermentation)
def closed_fermentation(
    *,
    current_sg: Number | None = None,
    current_plato: Number | None = None,
    final_sg: Number | None = None,
    final_plato: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    fermenter_headspace_percent: Number | None = None,
    start_co2_g_per_l: Number | None = None,
    start_volumes: Number | None = None,
    extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
    keg_rating_gauge_kpa: float | None = None,
    keg_rating_gauge_bar: float | None = None,
    keg_rating_gauge_psi: float | None = None,
    keg_rating_gauge_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    residual_model: Literal["table", "equilibrium"] | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    residual_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> ClosedFermentation[Any]:
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
    raise NotImplementedError  # The decorator answers.


class StonePressureSurface(Part[T]):
    """The outputs of StonePressure that are surface."""

    __slots__ = ()
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")


class StonePressureHead(Part[T]):
    """The outputs of StonePressure that are head."""

    __slots__ = ()
    shown = ("drop_kpa", "drop_bar", "drop_psi")
    drop_kpa = output("drop_kpa", "Difference of pressure, kPa.")
    drop_bar = output("drop_bar", "Difference of pressure, bar.")
    drop_psi = output("drop_psi", "Difference of pressure, psi.")
    drop_pa = output("drop_pa", "Difference of pressure, Pa.")


class StonePressure(Result[T]):
    """Regulator pressure at which a carbonation stone brings a drink to a carbonation. Only the surface pressure sets that; the head of drink and the wetting pressure of the stone come on top."""

    __slots__ = ()
    function = "stone_pressure"
    outputs = ("gauge_kpa", "gauge_bar", "gauge_psi", "gauge_pa", "surface_gauge_kpa", "surface_gauge_bar", "surface_gauge_psi", "surface_gauge_pa", "head_drop_kpa", "head_drop_bar", "head_drop_psi", "head_drop_pa")
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "surface_gauge_kpa", "surface_gauge_bar", "surface_gauge_psi", "head_drop_kpa", "head_drop_bar", "head_drop_psi")
    surface = part(StonePressureSurface, "surface", "Surface.")
    head = part(StonePressureHead, "head", "Head.")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")


@function(StonePressure)
def stone_pressure(
    *,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    depth_m: Number | None = None,
    depth_ft: Number | None = None,
    wetting_kpa: Number | None = None,
    wetting_bar: Number | None = None,
    wetting_psi: Number | None = None,
    wetting_pa: Number | None = None,
    margin_kpa: Number | None = None,
    margin_bar: Number | None = None,
    margin_psi: Number | None = None,
    margin_pa: Number | None = None,
    sg: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> StonePressure[Any]:
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
    116.72770258569071
    """
    raise NotImplementedError  # The decorator answers.


class ResidualCo2(Result[T]):
    """CO2 left in a drink after fermentation: by its warmest temperature since, open to the air or under pressure, and what a cold crash adds."""

    __slots__ = ()
    function = "residual_co2"
    outputs = ("co2_g_per_l", "volumes")
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


@function(ResidualCo2)
def residual_co2(
    *,
    warmest_c: Number | None = None,
    warmest_f: Number | None = None,
    warmest_k: Number | None = None,
    fermenter_gauge_kpa: Number | None = None,
    fermenter_gauge_bar: Number | None = None,
    fermenter_gauge_psi: Number | None = None,
    fermenter_gauge_pa: Number | None = None,
    cold_crash: Literal["open", "closed", "co2_supplied"] | None = None,
    crash_c: Number | None = None,
    crash_f: Number | None = None,
    crash_k: Number | None = None,
    fermenter_headspace_percent: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    residual_model: Literal["table", "equilibrium"] | None = None,
    solubility_multiplier: float | None = None,
    residual_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> ResidualCo2[Any]:
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
    raise NotImplementedError  # The decorator answers.


class PrimingSugar(Result[T]):
    """Priming sugar that gives a drink its carbonation."""

    __slots__ = ()
    function = "priming_sugar"
    outputs = ("mass_g", "mass_kg", "mass_oz", "mass_lb", "dose_g_per_l")
    shown = ("mass_g", "mass_oz", "dose_g_per_l")
    mass_g = output("mass_g", "Mass of sugar, or of what is added, as sold.")
    mass_kg = output("mass_kg", "Mass of sugar, or of what is added, as sold, kg.")
    mass_oz = output("mass_oz", "Mass of sugar, or of what is added, as sold, oz.")
    mass_lb = output("mass_lb", "Mass of sugar, or of what is added, as sold, lb.")
    dose_g_per_l = output("dose_g_per_l", "Sugar or other addition, as sold, per litre of drink, g/L.")


@function(PrimingSugar)
def priming_sugar(
    *,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    warmest_c: Number | None = None,
    warmest_f: Number | None = None,
    warmest_k: Number | None = None,
    residual_co2_g_per_l: Number | None = None,
    residual_volumes: Number | None = None,
    fermenter_gauge_kpa: Number | None = None,
    fermenter_gauge_bar: Number | None = None,
    fermenter_gauge_psi: Number | None = None,
    fermenter_gauge_pa: Number | None = None,
    cold_crash: Literal["open", "closed", "co2_supplied"] | None = None,
    crash_c: Number | None = None,
    crash_f: Number | None = None,
    crash_k: Number | None = None,
    fermenter_headspace_percent: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None = None,
    sugar_water_percent: float | None = None,
    sugar_sg: float | None = None,
    sugar_fermentable_percent: float | None = None,
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None = None,
    syrup_water_l: Number | None = None,
    syrup_water_ml: Number | None = None,
    syrup_water_us_gal: Number | None = None,
    syrup_water_imp_gal: Number | None = None,
    syrup_water_us_fl_oz: Number | None = None,
    count_syrup: bool | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    fermentable_g_per_l: Number | None = None,
    yeast: Literal["live", "none"] | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    residual_model: Literal["table", "equilibrium"] | None = None,
    yield_percent: float | None = None,
    count_headspace: bool | None = None,
    headspace_percent: Number | None = None,
    filling_c: Number | None = None,
    filling_f: Number | None = None,
    filling_k: Number | None = None,
    room_c: Number | None = None,
    room_f: Number | None = None,
    room_k: Number | None = None,
    solubility_multiplier: float | None = None,
    residual_multiplier: float | None = None,
    yield_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> PrimingSugar[Any]:
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
    raise NotImplementedError  # The decorator answers.


class PrimedCarbonationAdded(Part[T]):
    """The outputs of PrimedCarbonation that are added."""

    __slots__ = ()
    shown = ("abv_percent",)
    abv_percent = output("abv_percent", "Alcohol by volume, %.")


class PrimedCarbonation(Result[T]):
    """Carbonation and alcohol of a drink to which a mass of priming sugar was added: the inverse of priming_sugar."""

    __slots__ = ()
    function = "primed_carbonation"
    outputs = ("co2_g_per_l", "volumes", "added_abv_percent", "abv_percent")
    shown = ("co2_g_per_l", "volumes", "added_abv_percent", "abv_percent")
    added = part(PrimedCarbonationAdded, "added", "Added.")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")
    abv_percent = output("abv_percent", "Alcohol by volume, %.")


@function(PrimedCarbonation)
def primed_carbonation(
    *,
    mass_g: Number | None = None,
    mass_kg: Number | None = None,
    mass_oz: Number | None = None,
    mass_lb: Number | None = None,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    warmest_c: Number | None = None,
    warmest_f: Number | None = None,
    warmest_k: Number | None = None,
    residual_co2_g_per_l: Number | None = None,
    residual_volumes: Number | None = None,
    fermenter_gauge_kpa: Number | None = None,
    fermenter_gauge_bar: Number | None = None,
    fermenter_gauge_psi: Number | None = None,
    fermenter_gauge_pa: Number | None = None,
    cold_crash: Literal["open", "closed", "co2_supplied"] | None = None,
    crash_c: Number | None = None,
    crash_f: Number | None = None,
    crash_k: Number | None = None,
    fermenter_headspace_percent: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None = None,
    sugar_water_percent: float | None = None,
    sugar_sg: float | None = None,
    sugar_fermentable_percent: float | None = None,
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None = None,
    syrup_water_l: Number | None = None,
    syrup_water_ml: Number | None = None,
    syrup_water_us_gal: Number | None = None,
    syrup_water_imp_gal: Number | None = None,
    syrup_water_us_fl_oz: Number | None = None,
    count_syrup: bool | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    fermentable_g_per_l: Number | None = None,
    yeast: Literal["live", "none"] | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    residual_model: Literal["table", "equilibrium"] | None = None,
    yield_percent: float | None = None,
    count_headspace: bool | None = None,
    headspace_percent: Number | None = None,
    filling_c: Number | None = None,
    filling_f: Number | None = None,
    filling_k: Number | None = None,
    room_c: Number | None = None,
    room_f: Number | None = None,
    room_k: Number | None = None,
    solubility_multiplier: float | None = None,
    residual_multiplier: float | None = None,
    yield_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> PrimedCarbonation[Any]:
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
    raise NotImplementedError  # The decorator answers.


class PrimingWort(Result[T]):
    """Unfermented wort (gyle, Speise) or fermenting beer (kräusen) that gives a drink its carbonation: current gravity none for the first."""

    __slots__ = ()
    function = "priming_wort"
    outputs = ("wort_l", "wort_ml", "wort_us_gal", "wort_imp_gal", "wort_us_fl_oz", "wort_percent")
    shown = ("wort_l", "wort_us_gal", "wort_percent")
    wort_l = output("wort_l", "Wort or fermenting beer that primes the drink, L.")
    wort_ml = output("wort_ml", "Wort or fermenting beer that primes the drink, mL.")
    wort_us_gal = output("wort_us_gal", "Wort or fermenting beer that primes the drink, US gal.")
    wort_imp_gal = output("wort_imp_gal", "Wort or fermenting beer that primes the drink, imp gal.")
    wort_us_fl_oz = output("wort_us_fl_oz", "Wort or fermenting beer that primes the drink, US fl oz.")
    wort_percent = output("wort_percent", "Wort that primes the drink, in percent of the drink's volume, %.")


@function(PrimingWort)
def priming_wort(
    *,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    wort_original_sg: Number | None = None,
    wort_original_plato: Number | None = None,
    wort_current_sg: Number | None = None,
    wort_current_plato: Number | None = None,
    limit_attenuation_percent: Number | None = None,
    wort_co2_g_per_l: Number | None = None,
    wort_volumes: Number | None = None,
    extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
    warmest_c: Number | None = None,
    warmest_f: Number | None = None,
    warmest_k: Number | None = None,
    residual_co2_g_per_l: Number | None = None,
    residual_volumes: Number | None = None,
    fermenter_gauge_kpa: Number | None = None,
    fermenter_gauge_bar: Number | None = None,
    fermenter_gauge_psi: Number | None = None,
    fermenter_gauge_pa: Number | None = None,
    cold_crash: Literal["open", "closed", "co2_supplied"] | None = None,
    crash_c: Number | None = None,
    crash_f: Number | None = None,
    crash_k: Number | None = None,
    fermenter_headspace_percent: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    fermentable_g_per_l: Number | None = None,
    yeast: Literal["live", "none"] | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    residual_model: Literal["table", "equilibrium"] | None = None,
    yield_percent: float | None = None,
    count_headspace: bool | None = None,
    headspace_percent: Number | None = None,
    filling_c: Number | None = None,
    filling_f: Number | None = None,
    filling_k: Number | None = None,
    room_c: Number | None = None,
    room_f: Number | None = None,
    room_k: Number | None = None,
    solubility_multiplier: float | None = None,
    residual_multiplier: float | None = None,
    yield_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> PrimingWort[Any]:
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
    raise NotImplementedError  # The decorator answers.


class PrimingSyrupLeast(Part[T]):
    """The outputs of PrimingSyrup that are least."""

    __slots__ = ()
    shown = ("syrup_water_l", "syrup_water_us_gal")
    syrup_water_l = output("syrup_water_l", "Water in which the priming sugar is dissolved, L.")
    syrup_water_ml = output("syrup_water_ml", "Water in which the priming sugar is dissolved, mL.")
    syrup_water_us_gal = output("syrup_water_us_gal", "Water in which the priming sugar is dissolved, US gal.")
    syrup_water_imp_gal = output("syrup_water_imp_gal", "Water in which the priming sugar is dissolved, imp gal.")
    syrup_water_us_fl_oz = output("syrup_water_us_fl_oz", "Water in which the priming sugar is dissolved, US fl oz.")


class PrimingSyrup(Result[T]):
    """Syrup of a mass of priming sugar: its volume, the least water that dissolves it, its strength."""

    __slots__ = ()
    function = "priming_syrup"
    outputs = ("syrup_l", "syrup_ml", "syrup_us_gal", "syrup_imp_gal", "syrup_us_fl_oz", "least_syrup_water_l", "least_syrup_water_ml", "least_syrup_water_us_gal", "least_syrup_water_imp_gal", "least_syrup_water_us_fl_oz", "syrup_percent")
    shown = ("syrup_l", "syrup_us_gal", "least_syrup_water_l", "least_syrup_water_us_gal", "syrup_percent")
    least = part(PrimingSyrupLeast, "least", "Least.")
    syrup_l = output("syrup_l", "Volume of the syrup when it has cooled, L.")
    syrup_ml = output("syrup_ml", "Volume of the syrup when it has cooled, mL.")
    syrup_us_gal = output("syrup_us_gal", "Volume of the syrup when it has cooled, US gal.")
    syrup_imp_gal = output("syrup_imp_gal", "Volume of the syrup when it has cooled, imp gal.")
    syrup_us_fl_oz = output("syrup_us_fl_oz", "Volume of the syrup when it has cooled, US fl oz.")
    syrup_percent = output("syrup_percent", "Dissolved dry matter in the syrup, percent of its mass, %.")


@function(PrimingSyrup)
def priming_syrup(
    *,
    mass_g: Number | None = None,
    mass_kg: Number | None = None,
    mass_oz: Number | None = None,
    mass_lb: Number | None = None,
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None = None,
    sugar_water_percent: float | None = None,
    sugar_sg: float | None = None,
    sugar_fermentable_percent: float | None = None,
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None = None,
    syrup_water_l: Number | None = None,
    syrup_water_ml: Number | None = None,
    syrup_water_us_gal: Number | None = None,
    syrup_water_imp_gal: Number | None = None,
    syrup_water_us_fl_oz: Number | None = None,
    dissolving_c: Number | None = None,
    dissolving_f: Number | None = None,
    dissolving_k: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> PrimingSyrup[Any]:
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
    raise NotImplementedError  # The decorator answers.


class PackagePressureExpected(Part[T]):
    """The outputs of PackagePressure that are expected."""

    __slots__ = ()
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "abs_kpa", "abs_bar", "abs_psi", "co2_g_per_l", "volumes")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")
    abs_kpa = output("abs_kpa", "Pressure above vacuum, total of the gas over the drink, kPa.")
    abs_bar = output("abs_bar", "Pressure above vacuum, total of the gas over the drink, bar.")
    abs_psi = output("abs_psi", "Pressure above vacuum, total of the gas over the drink, psi.")
    abs_pa = output("abs_pa", "Pressure above vacuum, total of the gas over the drink, Pa.")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class PackagePressureWorst(Part[T]):
    """The outputs of PackagePressure that are worst."""

    __slots__ = ()
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "abs_kpa", "abs_bar", "abs_psi")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")
    abs_kpa = output("abs_kpa", "Pressure above vacuum, total of the gas over the drink, kPa.")
    abs_bar = output("abs_bar", "Pressure above vacuum, total of the gas over the drink, bar.")
    abs_psi = output("abs_psi", "Pressure above vacuum, total of the gas over the drink, psi.")
    abs_pa = output("abs_pa", "Pressure above vacuum, total of the gas over the drink, Pa.")


class PackagePressure(Result[T]):
    """Pressure in a sealed package, expected and worst, of CO2 stated for liquid and headspace together; the expected volumes are what stays dissolved, and the worst case adds 8 % to what is stated, for nobody can say which part of it is sure."""

    __slots__ = ()
    function = "package_pressure"
    outputs = ("expected_gauge_kpa", "expected_gauge_bar", "expected_gauge_psi", "expected_gauge_pa", "expected_abs_kpa", "expected_abs_bar", "expected_abs_psi", "expected_abs_pa", "expected_co2_g_per_l", "expected_volumes", "worst_gauge_kpa", "worst_gauge_bar", "worst_gauge_psi", "worst_gauge_pa", "worst_abs_kpa", "worst_abs_bar", "worst_abs_psi", "worst_abs_pa")
    shown = ("expected_gauge_kpa", "expected_gauge_bar", "expected_gauge_psi", "expected_abs_kpa", "expected_abs_bar", "expected_abs_psi", "expected_co2_g_per_l", "expected_volumes", "worst_gauge_kpa", "worst_gauge_bar", "worst_gauge_psi", "worst_abs_kpa", "worst_abs_bar", "worst_abs_psi")
    expected = part(PackagePressureExpected, "expected", "Expected.")
    worst = part(PackagePressureWorst, "worst", "Worst.")


@function(PackagePressure)
def package_pressure(
    *,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    headspace_percent: Number | None = None,
    filling_c: Number | None = None,
    filling_f: Number | None = None,
    filling_k: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    fermentable_g_per_l: Number | None = None,
    yeast: Literal["live", "none"] | None = None,
    bottle_class: Literal["light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne", "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"] | None = None,
    rating_gauge_kpa: float | None = None,
    rating_gauge_bar: float | None = None,
    rating_gauge_psi: float | None = None,
    rating_gauge_pa: float | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    yield_percent: float | None = None,
    solubility_multiplier: float | None = None,
    yield_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> PackagePressure[Any]:
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
    raise NotImplementedError  # The decorator answers.


class PackageCarbonationTotal(Part[T]):
    """The outputs of PackageCarbonation that are total."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class PackageCarbonationDissolved(Part[T]):
    """The outputs of PackageCarbonation that are dissolved."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class PackageCarbonationLeastTotal(Part[T]):
    """The outputs of PackageCarbonation that are least_total."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class PackageCarbonationLeastDissolved(Part[T]):
    """The outputs of PackageCarbonation that are least_dissolved."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class PackageCarbonation(Result[T]):
    """CO2 in a sealed package from the pressure that a gauge on it shows, without air and with all of it."""

    __slots__ = ()
    function = "package_carbonation"
    outputs = ("total_co2_g_per_l", "total_volumes", "dissolved_co2_g_per_l", "dissolved_volumes", "least_total_co2_g_per_l", "least_total_volumes", "least_dissolved_co2_g_per_l", "least_dissolved_volumes")
    shown = ("total_co2_g_per_l", "total_volumes", "dissolved_co2_g_per_l", "dissolved_volumes", "least_total_co2_g_per_l", "least_total_volumes", "least_dissolved_co2_g_per_l", "least_dissolved_volumes")
    total = part(PackageCarbonationTotal, "total", "Total.")
    dissolved = part(PackageCarbonationDissolved, "dissolved", "Dissolved.")
    least_total = part(PackageCarbonationLeastTotal, "least_total", "Least_total.")
    least_dissolved = part(PackageCarbonationLeastDissolved, "least_dissolved", "Least_dissolved.")


@function(PackageCarbonation)
def package_carbonation(
    *,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    headspace_percent: Number | None = None,
    filling_c: Number | None = None,
    filling_f: Number | None = None,
    filling_k: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> PackageCarbonation[Any]:
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
    raise NotImplementedError  # The decorator answers.


class ConditioningExpected(Part[T]):
    """The outputs of Conditioning that are expected."""

    __slots__ = ()
    shown = ("progress_percent",)
    progress_percent = output("progress_percent", "Share of the carbonation that is made, %.")


class ConditioningLeast(Part[T]):
    """The outputs of Conditioning that are least."""

    __slots__ = ()
    shown = ("progress_percent",)
    progress_percent = output("progress_percent", "Share of the carbonation that is made, %.")


class ConditioningMost(Part[T]):
    """The outputs of Conditioning that are most."""

    __slots__ = ()
    shown = ("progress_percent",)
    progress_percent = output("progress_percent", "Share of the carbonation that is made, %.")


class Conditioning(Result[T]):
    """Share of the carbonation that bottles have made after some time at a temperature: an estimate, with the slow and the fast end of its range."""

    __slots__ = ()
    function = "conditioning"
    outputs = ("expected_progress_percent", "least_progress_percent", "most_progress_percent")
    shown = ("expected_progress_percent", "least_progress_percent", "most_progress_percent")
    expected = part(ConditioningExpected, "expected", "Expected.")
    least = part(ConditioningLeast, "least", "Least.")
    most = part(ConditioningMost, "most", "Most.")


@function(Conditioning)
def conditioning(
    *,
    room_c: Number | None = None,
    room_f: Number | None = None,
    room_k: Number | None = None,
    time_h: Number | None = None,
    time_d: Number | None = None,
    time_min: Number | None = None,
    time_s: Number | None = None,
    yeast_million_per_ml: Number | None = None,
    age_h: float | None = None,
    age_d: float | None = None,
    age_min: float | None = None,
    age_s: float | None = None,
    filtered: bool | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> Conditioning[Any]:
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
    raise NotImplementedError  # The decorator answers.


class ConditioningTimeExpected(Part[T]):
    """The outputs of ConditioningTime that are expected."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")


class ConditioningTimeLeast(Part[T]):
    """The outputs of ConditioningTime that are least."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")


class ConditioningTimeMost(Part[T]):
    """The outputs of ConditioningTime that are most."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")


class ConditioningTime(Result[T]):
    """Time until bottles have made a share of their carbonation at a temperature: an estimate, with the fast (least) and the slow (most) end of its range."""

    __slots__ = ()
    function = "conditioning_time"
    outputs = ("expected_time_h", "expected_time_d", "expected_time_min", "expected_time_s", "least_time_h", "least_time_d", "least_time_min", "least_time_s", "most_time_h", "most_time_d", "most_time_min", "most_time_s")
    shown = ("expected_time_h", "expected_time_d", "least_time_h", "least_time_d", "most_time_h", "most_time_d")
    expected = part(ConditioningTimeExpected, "expected", "Expected.")
    least = part(ConditioningTimeLeast, "least", "Least.")
    most = part(ConditioningTimeMost, "most", "Most.")


@function(ConditioningTime)
def conditioning_time(
    *,
    room_c: Number | None = None,
    room_f: Number | None = None,
    room_k: Number | None = None,
    progress_percent: Number | None = None,
    yeast_million_per_ml: Number | None = None,
    age_h: float | None = None,
    age_d: float | None = None,
    age_min: float | None = None,
    age_s: float | None = None,
    filtered: bool | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> ConditioningTime[Any]:
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
    raise NotImplementedError  # The decorator answers.


class ReyeastingDryYeast(Part[T]):
    """The outputs of Reyeasting that are dry_yeast."""

    __slots__ = ()
    shown = ("mass_g", "mass_oz")
    mass_g = output("mass_g", "Mass of sugar, or of what is added, as sold.")
    mass_kg = output("mass_kg", "Mass of sugar, or of what is added, as sold, kg.")
    mass_oz = output("mass_oz", "Mass of sugar, or of what is added, as sold, oz.")
    mass_lb = output("mass_lb", "Mass of sugar, or of what is added, as sold, lb.")


class Reyeasting(Result[T]):
    """Dry yeast that brings living cells into a drink before it is bottled."""

    __slots__ = ()
    function = "reyeasting"
    outputs = ("dry_yeast_mass_g", "dry_yeast_mass_kg", "dry_yeast_mass_oz", "dry_yeast_mass_lb")
    shown = ("dry_yeast_mass_g", "dry_yeast_mass_oz")
    dry_yeast = part(ReyeastingDryYeast, "dry_yeast", "Dry_yeast.")


@function(Reyeasting)
def reyeasting(
    *,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    yeast_million_per_ml: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> Reyeasting[Any]:
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
    raise NotImplementedError  # The decorator answers.


class Gravity(Result[T]):
    """A gravity reading as specific gravity and as degrees Plato."""

    __slots__ = ()
    function = "gravity"
    outputs = ("sg", "plato")
    shown = ("sg", "plato")
    sg = output("sg", "Specific gravity 20/20 °C, SG.")
    plato = output("plato", "Extract, grams in 100 g of solution, °P.")


@function(Gravity)
def gravity(
    *,
    sg: Number | None = None,
    plato: Number | None = None,
    extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> Gravity[Any]:
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
    raise NotImplementedError  # The decorator answers.


class AttenuationApparent(Part[T]):
    """The outputs of Attenuation that are apparent."""

    __slots__ = ()
    shown = ("attenuation_percent",)
    attenuation_percent = output("attenuation_percent", "Share of the extract that was fermented, %.")


class AttenuationReal(Part[T]):
    """The outputs of Attenuation that are real."""

    __slots__ = ()
    shown = ("attenuation_percent",)
    attenuation_percent = output("attenuation_percent", "Share of the extract that was fermented, %.")


class AttenuationQuick(Part[T]):
    """The outputs of Attenuation that are quick."""

    __slots__ = ()
    shown = ("abv_percent",)
    abv_percent = output("abv_percent", "Alcohol by volume, %.")


class Attenuation(Result[T]):
    """Real extract, attenuation and alcohol from the gravity before fermentation and the gravity now."""

    __slots__ = ()
    function = "attenuation"
    outputs = ("real_extract_plato", "apparent_attenuation_percent", "real_attenuation_percent", "abw_percent", "abv_percent", "quick_abv_percent", "extract_g_per_l")
    shown = ("real_extract_plato", "apparent_attenuation_percent", "real_attenuation_percent", "abw_percent", "abv_percent", "quick_abv_percent", "extract_g_per_l")
    apparent = part(AttenuationApparent, "apparent", "Apparent.")
    real = part(AttenuationReal, "real", "Real.")
    quick = part(AttenuationQuick, "quick", "Quick.")
    real_extract_plato = output("real_extract_plato", "Extract with the alcohol taken away, °P.")
    abw_percent = output("abw_percent", "Alcohol by mass, %.")
    abv_percent = output("abv_percent", "Alcohol by volume, %.")
    extract_g_per_l = output("extract_g_per_l", "Everything dissolved except CO2 and alcohol: it lowers the solubility of CO2, g/L.")


@function(Attenuation)
def attenuation(
    *,
    original_sg: Number | None = None,
    original_plato: Number | None = None,
    current_sg: Number | None = None,
    current_plato: Number | None = None,
    extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
    real_extract_model: Literal["balling", "quotient"] | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> Attenuation[Any]:
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
    raise NotImplementedError  # The decorator answers.


class FinalGravity(Result[T]):
    """Gravity at which a fermentation ends, from the original gravity and the attenuation expected of it."""

    __slots__ = ()
    function = "final_gravity"
    outputs = ("final_sg", "final_plato")
    shown = ("final_sg", "final_plato")
    final_sg = output("final_sg", "Specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test, SG.")
    final_plato = output("final_plato", "Apparent extract at which fermentation will end, best by a forced-fermentation test, °P.")


@function(FinalGravity)
def final_gravity(
    *,
    original_sg: Number | None = None,
    original_plato: Number | None = None,
    expected_attenuation_percent: Number | None = None,
    extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> FinalGravity[Any]:
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
    raise NotImplementedError  # The decorator answers.


class GravityCo2Balling(Part[T]):
    """The outputs of GravityCo2 that are balling."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class GravityCo2Theory(Part[T]):
    """The outputs of GravityCo2 that are theory."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class GravityCo2(Result[T]):
    """Extract that is still to ferment, and the CO2 of it, from the gravity now and the gravity at the end."""

    __slots__ = ()
    function = "gravity_co2"
    outputs = ("fermentable_g_per_l", "balling_co2_g_per_l", "balling_volumes", "theory_co2_g_per_l", "theory_volumes")
    shown = ("fermentable_g_per_l", "balling_co2_g_per_l", "balling_volumes", "theory_co2_g_per_l", "theory_volumes")
    balling = part(GravityCo2Balling, "balling", "Balling.")
    theory = part(GravityCo2Theory, "theory", "Theory.")
    fermentable_g_per_l = output("fermentable_g_per_l", "What yeast in the package can still turn into CO2: it makes pressure, g/L.")


@function(GravityCo2)
def gravity_co2(
    *,
    current_sg: Number | None = None,
    current_plato: Number | None = None,
    final_sg: Number | None = None,
    final_plato: Number | None = None,
    extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> GravityCo2[Any]:
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
    raise NotImplementedError  # The decorator answers.


class AddedCo2Expected(Part[T]):
    """The outputs of AddedCo2 that are expected."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class AddedCo2Worst(Part[T]):
    """The outputs of AddedCo2 that are worst."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class AddedCo2Added(Part[T]):
    """The outputs of AddedCo2 that are added."""

    __slots__ = ()
    shown = ("abv_percent",)
    abv_percent = output("abv_percent", "Alcohol by volume, %.")


class AddedCo2(Result[T]):
    """CO2 and alcohol that a sugar or a sweetener, added to a drink with living yeast, makes in the package, beside what the drink holds and what primes it."""

    __slots__ = ()
    function = "added_co2"
    outputs = ("expected_co2_g_per_l", "expected_volumes", "worst_co2_g_per_l", "worst_volumes", "added_abv_percent")
    shown = ("expected_co2_g_per_l", "expected_volumes", "worst_co2_g_per_l", "worst_volumes", "added_abv_percent")
    expected = part(AddedCo2Expected, "expected", "Expected.")
    worst = part(AddedCo2Worst, "worst", "Worst.")
    added = part(AddedCo2Added, "added", "Added.")


@function(AddedCo2)
def added_co2(
    *,
    addition: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom", "lactose", "maltodextrin", "sucralose", "aspartame", "saccharin", "stevia", "erythritol", "xylitol", "sorbitol", "sweetener_packets"] | None = None,
    dose_g_per_l: Number | None = None,
    sugar_water_percent: float | None = None,
    sugar_sg: float | None = None,
    sugar_fermentable_percent: float | None = None,
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    yield_percent: float | None = None,
    yield_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> AddedCo2[Any]:
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
    raise NotImplementedError  # The decorator answers.


class DrinkProperties(Result[T]):
    """Density and viscosity of a drink, and the diffusivity of CO2 in it."""

    __slots__ = ()
    function = "drink_properties"
    outputs = ("density_kg_per_m3", "density_lb_per_ft3", "viscosity_mpa_s", "viscosity_pa_s", "viscosity_cp", "diffusivity_m2_per_s")
    shown = ("density_kg_per_m3", "density_lb_per_ft3", "viscosity_mpa_s", "diffusivity_m2_per_s")
    density_kg_per_m3 = output("density_kg_per_m3", "Density, kg/m3.")
    density_lb_per_ft3 = output("density_lb_per_ft3", "Density, lb/ft3.")
    viscosity_mpa_s = output("viscosity_mpa_s", "Dynamic viscosity, mPa s.")
    viscosity_pa_s = output("viscosity_pa_s", "Dynamic viscosity, Pa s.")
    viscosity_cp = output("viscosity_cp", "Dynamic viscosity, cP.")
    diffusivity_m2_per_s = output("diffusivity_m2_per_s", "Diffusivity of dissolved CO2, m2/s.")


@function(DrinkProperties)
def drink_properties(
    *,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    sg: Number | None = None,
    viscosity_multiplier: Number | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> DrinkProperties[Any]:
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
    raise NotImplementedError  # The decorator answers.


class Co2SaturationLiquid(Part[T]):
    """The outputs of Co2Saturation that are liquid."""

    __slots__ = ()
    shown = ("density_kg_per_m3", "density_lb_per_ft3")
    density_kg_per_m3 = output("density_kg_per_m3", "Density, kg/m3.")
    density_lb_per_ft3 = output("density_lb_per_ft3", "Density, lb/ft3.")


class Co2SaturationVapour(Part[T]):
    """The outputs of Co2Saturation that are vapour."""

    __slots__ = ()
    shown = ("density_kg_per_m3", "density_lb_per_ft3")
    density_kg_per_m3 = output("density_kg_per_m3", "Density, kg/m3.")
    density_lb_per_ft3 = output("density_lb_per_ft3", "Density, lb/ft3.")


class Co2Saturation(Result[T]):
    """Absolute pressure and densities of CO2 in a cylinder that still holds liquid, however much; a gauge shows an atmosphere less."""

    __slots__ = ()
    function = "co2_saturation"
    outputs = ("abs_kpa", "abs_bar", "abs_psi", "abs_pa", "liquid_density_kg_per_m3", "liquid_density_lb_per_ft3", "vapour_density_kg_per_m3", "vapour_density_lb_per_ft3")
    shown = ("abs_kpa", "abs_bar", "abs_psi", "liquid_density_kg_per_m3", "liquid_density_lb_per_ft3", "vapour_density_kg_per_m3", "vapour_density_lb_per_ft3")
    liquid = part(Co2SaturationLiquid, "liquid", "Liquid.")
    vapour = part(Co2SaturationVapour, "vapour", "Vapour.")
    abs_kpa = output("abs_kpa", "Pressure above vacuum, total of the gas over the drink, kPa.")
    abs_bar = output("abs_bar", "Pressure above vacuum, total of the gas over the drink, bar.")
    abs_psi = output("abs_psi", "Pressure above vacuum, total of the gas over the drink, psi.")
    abs_pa = output("abs_pa", "Pressure above vacuum, total of the gas over the drink, Pa.")


@function(Co2Saturation)
def co2_saturation(
    *,
    cylinder_c: Number | None = None,
    cylinder_f: Number | None = None,
    cylinder_k: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> Co2Saturation[Any]:
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
    raise NotImplementedError  # The decorator answers.


class LineFlow(Result[T]):
    """What a keg pours through a draught line, by physics: flow, time of a pour, speed, and the pressure that the line takes per length."""

    __slots__ = ()
    function = "line_flow"
    outputs = ("flow_l_per_min", "flow_us_fl_oz_per_s", "flow_us_gal_per_min", "pour_seconds", "speed_m_per_s", "speed_ft_per_s", "reynolds_multiplier", "resistance_bar_per_m", "resistance_psi_per_ft", "line_l", "line_ml", "line_us_gal", "line_imp_gal", "line_us_fl_oz")
    shown = ("flow_l_per_min", "flow_us_fl_oz_per_s", "pour_seconds", "speed_m_per_s", "speed_ft_per_s", "reynolds_multiplier", "resistance_bar_per_m", "resistance_psi_per_ft", "line_l", "line_us_gal")
    flow_l_per_min = output("flow_l_per_min", "Drink that flows, L/min.")
    flow_us_fl_oz_per_s = output("flow_us_fl_oz_per_s", "Drink that flows, US fl oz/s.")
    flow_us_gal_per_min = output("flow_us_gal_per_min", "Drink that flows, US gal/min.")
    pour_seconds = output("pour_seconds", "Time in which the glass is full.")
    speed_m_per_s = output("speed_m_per_s", "Speed of the drink in the line, m/s.")
    speed_ft_per_s = output("speed_ft_per_s", "Speed of the drink in the line, ft/s.")
    reynolds_multiplier = output("reynolds_multiplier", "Reynolds number of the flow.")
    resistance_bar_per_m = output("resistance_bar_per_m", "Pressure lost per length of line, bar/m.")
    resistance_psi_per_ft = output("resistance_psi_per_ft", "Pressure lost per length of line, psi/ft.")
    line_l = output("line_l", "Drink that stands in the line, L.")
    line_ml = output("line_ml", "Drink that stands in the line, mL.")
    line_us_gal = output("line_us_gal", "Drink that stands in the line, US gal.")
    line_imp_gal = output("line_imp_gal", "Drink that stands in the line, imp gal.")
    line_us_fl_oz = output("line_us_fl_oz", "Drink that stands in the line, US fl oz.")


@function(LineFlow)
def line_flow(
    *,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    line_m: Number | None = None,
    line_ft: Number | None = None,
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None = None,
    bore_mm: Number | None = None,
    bore_in: Number | None = None,
    rise_m: Number | None = None,
    rise_ft: Number | None = None,
    fittings_multiplier: Number | None = None,
    glass_l: Number | None = None,
    glass_ml: Number | None = None,
    glass_us_gal: Number | None = None,
    glass_imp_gal: Number | None = None,
    glass_us_fl_oz: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    sg: Number | None = None,
    viscosity_multiplier: Number | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> LineFlow[Any]:
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
    raise NotImplementedError  # The decorator answers.


class LineLength(Result[T]):
    """Length of draught line through which a keg pours as fast as wanted, by physics, and the drink that stands in it."""

    __slots__ = ()
    function = "line_length"
    outputs = ("line_m", "line_ft", "line_l", "line_ml", "line_us_gal", "line_imp_gal", "line_us_fl_oz", "flow_l_per_min", "flow_us_fl_oz_per_s", "flow_us_gal_per_min", "pour_seconds", "speed_m_per_s", "speed_ft_per_s", "reynolds_multiplier", "resistance_bar_per_m", "resistance_psi_per_ft")
    shown = ("line_m", "line_ft", "line_l", "line_us_gal", "flow_l_per_min", "flow_us_fl_oz_per_s", "pour_seconds", "speed_m_per_s", "speed_ft_per_s", "reynolds_multiplier", "resistance_bar_per_m", "resistance_psi_per_ft")
    line_m = output("line_m", "Length of the draught line, m.")
    line_ft = output("line_ft", "Length of the draught line, ft.")
    line_l = output("line_l", "Drink that stands in the line, L.")
    line_ml = output("line_ml", "Drink that stands in the line, mL.")
    line_us_gal = output("line_us_gal", "Drink that stands in the line, US gal.")
    line_imp_gal = output("line_imp_gal", "Drink that stands in the line, imp gal.")
    line_us_fl_oz = output("line_us_fl_oz", "Drink that stands in the line, US fl oz.")
    flow_l_per_min = output("flow_l_per_min", "Drink that flows, L/min.")
    flow_us_fl_oz_per_s = output("flow_us_fl_oz_per_s", "Drink that flows, US fl oz/s.")
    flow_us_gal_per_min = output("flow_us_gal_per_min", "Drink that flows, US gal/min.")
    pour_seconds = output("pour_seconds", "Time in which the glass is full.")
    speed_m_per_s = output("speed_m_per_s", "Speed of the drink in the line, m/s.")
    speed_ft_per_s = output("speed_ft_per_s", "Speed of the drink in the line, ft/s.")
    reynolds_multiplier = output("reynolds_multiplier", "Reynolds number of the flow.")
    resistance_bar_per_m = output("resistance_bar_per_m", "Pressure lost per length of line, bar/m.")
    resistance_psi_per_ft = output("resistance_psi_per_ft", "Pressure lost per length of line, psi/ft.")


@function(LineLength)
def line_length(
    *,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    flow_l_per_min: Number | None = None,
    flow_us_fl_oz_per_s: Number | None = None,
    flow_us_gal_per_min: Number | None = None,
    pour_seconds: Number | None = None,
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None = None,
    bore_mm: Number | None = None,
    bore_in: Number | None = None,
    rise_m: Number | None = None,
    rise_ft: Number | None = None,
    fittings_multiplier: Number | None = None,
    glass_l: Number | None = None,
    glass_ml: Number | None = None,
    glass_us_gal: Number | None = None,
    glass_imp_gal: Number | None = None,
    glass_us_fl_oz: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    sg: Number | None = None,
    viscosity_multiplier: Number | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> LineLength[Any]:
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
    raise NotImplementedError  # The decorator answers.


class LinePressureLift(Part[T]):
    """The outputs of LinePressure that are lift."""

    __slots__ = ()
    shown = ("drop_kpa", "drop_bar", "drop_psi")
    drop_kpa = output("drop_kpa", "Difference of pressure, kPa.")
    drop_bar = output("drop_bar", "Difference of pressure, bar.")
    drop_psi = output("drop_psi", "Difference of pressure, psi.")
    drop_pa = output("drop_pa", "Difference of pressure, Pa.")


class LinePressureLine(Part[T]):
    """The outputs of LinePressure that are line."""

    __slots__ = ()
    shown = ("drop_kpa", "drop_bar", "drop_psi")
    drop_kpa = output("drop_kpa", "Difference of pressure, kPa.")
    drop_bar = output("drop_bar", "Difference of pressure, bar.")
    drop_psi = output("drop_psi", "Difference of pressure, psi.")
    drop_pa = output("drop_pa", "Difference of pressure, Pa.")


class LinePressureFittings(Part[T]):
    """The outputs of LinePressure that are fittings."""

    __slots__ = ()
    shown = ("drop_kpa", "drop_bar", "drop_psi")
    drop_kpa = output("drop_kpa", "Difference of pressure, kPa.")
    drop_bar = output("drop_bar", "Difference of pressure, bar.")
    drop_psi = output("drop_psi", "Difference of pressure, psi.")
    drop_pa = output("drop_pa", "Difference of pressure, Pa.")


class LinePressure(Result[T]):
    """Pressure in the keg that a draught line takes at a flow, by physics, and what of it rise, tube and fittings take. To compare: the pressure of a keg belongs to its carbonation, and the line is made to fit it."""

    __slots__ = ()
    function = "line_pressure"
    outputs = ("gauge_kpa", "gauge_bar", "gauge_psi", "gauge_pa", "lift_drop_kpa", "lift_drop_bar", "lift_drop_psi", "lift_drop_pa", "line_drop_kpa", "line_drop_bar", "line_drop_psi", "line_drop_pa", "fittings_drop_kpa", "fittings_drop_bar", "fittings_drop_psi", "fittings_drop_pa", "flow_l_per_min", "flow_us_fl_oz_per_s", "flow_us_gal_per_min", "pour_seconds", "speed_m_per_s", "speed_ft_per_s", "reynolds_multiplier")
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "lift_drop_kpa", "lift_drop_bar", "lift_drop_psi", "line_drop_kpa", "line_drop_bar", "line_drop_psi", "fittings_drop_kpa", "fittings_drop_bar", "fittings_drop_psi", "flow_l_per_min", "flow_us_fl_oz_per_s", "pour_seconds", "speed_m_per_s", "speed_ft_per_s", "reynolds_multiplier")
    lift = part(LinePressureLift, "lift", "Lift.")
    line = part(LinePressureLine, "line", "Line.")
    fittings = part(LinePressureFittings, "fittings", "Fittings.")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")
    flow_l_per_min = output("flow_l_per_min", "Drink that flows, L/min.")
    flow_us_fl_oz_per_s = output("flow_us_fl_oz_per_s", "Drink that flows, US fl oz/s.")
    flow_us_gal_per_min = output("flow_us_gal_per_min", "Drink that flows, US gal/min.")
    pour_seconds = output("pour_seconds", "Time in which the glass is full.")
    speed_m_per_s = output("speed_m_per_s", "Speed of the drink in the line, m/s.")
    speed_ft_per_s = output("speed_ft_per_s", "Speed of the drink in the line, ft/s.")
    reynolds_multiplier = output("reynolds_multiplier", "Reynolds number of the flow.")


@function(LinePressure)
def line_pressure(
    *,
    line_m: Number | None = None,
    line_ft: Number | None = None,
    flow_l_per_min: Number | None = None,
    flow_us_fl_oz_per_s: Number | None = None,
    flow_us_gal_per_min: Number | None = None,
    pour_seconds: Number | None = None,
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None = None,
    bore_mm: Number | None = None,
    bore_in: Number | None = None,
    rise_m: Number | None = None,
    rise_ft: Number | None = None,
    fittings_multiplier: Number | None = None,
    glass_l: Number | None = None,
    glass_ml: Number | None = None,
    glass_us_gal: Number | None = None,
    glass_imp_gal: Number | None = None,
    glass_us_fl_oz: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    sg: Number | None = None,
    viscosity_multiplier: Number | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> LinePressure[Any]:
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
    raise NotImplementedError  # The decorator answers.


class HandbookLineLift(Part[T]):
    """The outputs of HandbookLine that are lift."""

    __slots__ = ()
    shown = ("drop_kpa", "drop_bar", "drop_psi")
    drop_kpa = output("drop_kpa", "Difference of pressure, kPa.")
    drop_bar = output("drop_bar", "Difference of pressure, bar.")
    drop_psi = output("drop_psi", "Difference of pressure, psi.")
    drop_pa = output("drop_pa", "Difference of pressure, Pa.")


class HandbookLine(Result[T]):
    """Length of draught line by the trade's balance: what rise (0.5 psi per foot) and hardware leave, over the tube's resistance by the handbook. Meant for 2 US fl oz/s, the German figures for 3 L/min."""

    __slots__ = ()
    function = "handbook_line"
    outputs = ("line_m", "line_ft", "lift_drop_kpa", "lift_drop_bar", "lift_drop_psi", "lift_drop_pa", "resistance_bar_per_m", "resistance_psi_per_ft")
    shown = ("line_m", "line_ft", "lift_drop_kpa", "lift_drop_bar", "lift_drop_psi", "resistance_bar_per_m", "resistance_psi_per_ft")
    lift = part(HandbookLineLift, "lift", "Lift.")
    line_m = output("line_m", "Length of the draught line, m.")
    line_ft = output("line_ft", "Length of the draught line, ft.")
    resistance_bar_per_m = output("resistance_bar_per_m", "Pressure lost per length of line, bar/m.")
    resistance_psi_per_ft = output("resistance_psi_per_ft", "Pressure lost per length of line, psi/ft.")


@function(HandbookLine)
def handbook_line(
    *,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None = None,
    resistance_bar_per_m: Number | None = None,
    resistance_psi_per_ft: Number | None = None,
    rise_m: Number | None = None,
    rise_ft: Number | None = None,
    hardware_kpa: Number | None = None,
    hardware_bar: Number | None = None,
    hardware_psi: Number | None = None,
    hardware_pa: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> HandbookLine[Any]:
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
    raise NotImplementedError  # The decorator answers.


class HandbookPressureLift(Part[T]):
    """The outputs of HandbookPressure that are lift."""

    __slots__ = ()
    shown = ("drop_kpa", "drop_bar", "drop_psi")
    drop_kpa = output("drop_kpa", "Difference of pressure, kPa.")
    drop_bar = output("drop_bar", "Difference of pressure, bar.")
    drop_psi = output("drop_psi", "Difference of pressure, psi.")
    drop_pa = output("drop_pa", "Difference of pressure, Pa.")


class HandbookPressureLine(Part[T]):
    """The outputs of HandbookPressure that are line."""

    __slots__ = ()
    shown = ("drop_kpa", "drop_bar", "drop_psi")
    drop_kpa = output("drop_kpa", "Difference of pressure, kPa.")
    drop_bar = output("drop_bar", "Difference of pressure, bar.")
    drop_psi = output("drop_psi", "Difference of pressure, psi.")
    drop_pa = output("drop_pa", "Difference of pressure, Pa.")


class HandbookPressure(Result[T]):
    """Pressure that a draught line takes by the trade's balance: tube, rise (0.5 psi per foot) and hardware."""

    __slots__ = ()
    function = "handbook_pressure"
    outputs = ("gauge_kpa", "gauge_bar", "gauge_psi", "gauge_pa", "lift_drop_kpa", "lift_drop_bar", "lift_drop_psi", "lift_drop_pa", "line_drop_kpa", "line_drop_bar", "line_drop_psi", "line_drop_pa")
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "lift_drop_kpa", "lift_drop_bar", "lift_drop_psi", "line_drop_kpa", "line_drop_bar", "line_drop_psi")
    lift = part(HandbookPressureLift, "lift", "Lift.")
    line = part(HandbookPressureLine, "line", "Line.")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")


@function(HandbookPressure)
def handbook_pressure(
    *,
    line_m: Number | None = None,
    line_ft: Number | None = None,
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None = None,
    resistance_bar_per_m: Number | None = None,
    resistance_psi_per_ft: Number | None = None,
    rise_m: Number | None = None,
    rise_ft: Number | None = None,
    hardware_kpa: Number | None = None,
    hardware_bar: Number | None = None,
    hardware_psi: Number | None = None,
    hardware_pa: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> HandbookPressure[Any]:
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
    raise NotImplementedError  # The decorator answers.


class FillingCarbonationExpected(Part[T]):
    """The outputs of FillingCarbonation that are expected."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class FillingCarbonationLeast(Part[T]):
    """The outputs of FillingCarbonation that are least."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class FillingCarbonationMost(Part[T]):
    """The outputs of FillingCarbonation that are most."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class FillingCarbonation(Result[T]):
    """CO2 that a keg or tank has to have for a carbonation in the package that is filled from it: expected, and with the least and the most that filling may lose. A loss that is told is taken as known."""

    __slots__ = ()
    function = "filling_carbonation"
    outputs = ("expected_co2_g_per_l", "expected_volumes", "least_co2_g_per_l", "least_volumes", "most_co2_g_per_l", "most_volumes")
    shown = ("expected_co2_g_per_l", "expected_volumes", "least_co2_g_per_l", "least_volumes", "most_co2_g_per_l", "most_volumes")
    expected = part(FillingCarbonationExpected, "expected", "Expected.")
    least = part(FillingCarbonationLeast, "least", "Least.")
    most = part(FillingCarbonationMost, "most", "Most.")


@function(FillingCarbonation)
def filling_carbonation(
    *,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    fill_method: Literal["automatic", "counter_pressure_line", "hand_counter_pressure", "tap_tube", "tilted_glass"] | None = None,
    fill_loss_co2_g_per_l: Number | None = None,
    fill_loss_volumes: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> FillingCarbonation[Any]:
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
    raise NotImplementedError  # The decorator answers.


class BlendMixed(Part[T]):
    """The outputs of Blend that are mixed."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class BlendKept(Part[T]):
    """The outputs of Blend that are kept."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class Blend(Result[T]):
    """Volume and CO2 of two drinks blended: of the mix, and what of it stays at a temperature under a pressure of CO2 (0 where it is open); without a temperature all is kept under pressure, and stays."""

    __slots__ = ()
    function = "blend"
    outputs = ("packaged_l", "packaged_ml", "packaged_us_gal", "packaged_imp_gal", "packaged_us_fl_oz", "mixed_co2_g_per_l", "mixed_volumes", "kept_co2_g_per_l", "kept_volumes", "released_g", "released_kg", "released_oz", "released_lb")
    shown = ("packaged_l", "packaged_us_gal", "mixed_co2_g_per_l", "mixed_volumes", "kept_co2_g_per_l", "kept_volumes", "released_g", "released_oz")
    mixed = part(BlendMixed, "mixed", "Mixed.")
    kept = part(BlendKept, "kept", "Kept.")
    packaged_l = output("packaged_l", "Drink that reaches packages (not the batch size: trub and losses stay behind), L.")
    packaged_ml = output("packaged_ml", "Drink that reaches packages (not the batch size: trub and losses stay behind), mL.")
    packaged_us_gal = output("packaged_us_gal", "Drink that reaches packages (not the batch size: trub and losses stay behind), US gal.")
    packaged_imp_gal = output("packaged_imp_gal", "Drink that reaches packages (not the batch size: trub and losses stay behind), imp gal.")
    packaged_us_fl_oz = output("packaged_us_fl_oz", "Drink that reaches packages (not the batch size: trub and losses stay behind), US fl oz.")
    released_g = output("released_g", "CO2 that escapes into the room, g.")
    released_kg = output("released_kg", "CO2 that escapes into the room, kg.")
    released_oz = output("released_oz", "CO2 that escapes into the room, oz.")
    released_lb = output("released_lb", "CO2 that escapes into the room, lb.")


@function(Blend)
def blend(
    *,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    other_l: Number | None = None,
    other_ml: Number | None = None,
    other_us_gal: Number | None = None,
    other_imp_gal: Number | None = None,
    other_us_fl_oz: Number | None = None,
    other_co2_g_per_l: Number | None = None,
    other_volumes: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> Blend[Any]:
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
    raise NotImplementedError  # The decorator answers.


class PurgeOxygenEach(Part[T]):
    """The outputs of PurgeOxygen that are each."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class PurgeOxygenTotal(Part[T]):
    """The outputs of PurgeOxygen that are total."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class PurgeOxygen(Result[T]):
    """Oxygen left in a vessel that is filled with CO2 and vented so many times, each filling mixed; and the CO2 that this takes."""

    __slots__ = ()
    function = "purge_oxygen"
    outputs = ("oxygen_ppm", "oxygen_vol_percent", "each_gas_g", "each_gas_kg", "each_gas_oz", "each_gas_lb", "total_gas_g", "total_gas_kg", "total_gas_oz", "total_gas_lb")
    shown = ("oxygen_ppm", "oxygen_vol_percent", "each_gas_g", "each_gas_oz", "total_gas_g", "total_gas_oz")
    each = part(PurgeOxygenEach, "each", "Each.")
    total = part(PurgeOxygenTotal, "total", "Total.")
    oxygen_ppm = output("oxygen_ppm", "Oxygen in the gas over the drink, ppm.")
    oxygen_vol_percent = output("oxygen_vol_percent", "Oxygen in the gas over the drink, % vol.")


@function(PurgeOxygen)
def purge_oxygen(
    *,
    purge_gauge_kpa: Number | None = None,
    purge_gauge_bar: Number | None = None,
    purge_gauge_psi: Number | None = None,
    purge_gauge_pa: Number | None = None,
    cycles_count: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    start_oxygen_ppm: Number | None = None,
    start_oxygen_vol_percent: Number | None = None,
    gas_oxygen_ppm: Number | None = None,
    gas_oxygen_vol_percent: Number | None = None,
    keg_l: Number | None = None,
    keg_ml: Number | None = None,
    keg_us_gal: Number | None = None,
    keg_imp_gal: Number | None = None,
    keg_us_fl_oz: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    keg_rating_gauge_kpa: float | None = None,
    keg_rating_gauge_bar: float | None = None,
    keg_rating_gauge_psi: float | None = None,
    keg_rating_gauge_pa: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> PurgeOxygen[Any]:
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
    raise NotImplementedError  # The decorator answers.


class PurgeCyclesWhole(Part[T]):
    """The outputs of PurgeCycles that are whole."""

    __slots__ = ()
    shown = ("cycles_count",)
    cycles_count = output("cycles_count", "How often a vessel is filled with CO2 and vented.")


class PurgeCyclesEach(Part[T]):
    """The outputs of PurgeCycles that are each."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class PurgeCyclesTotal(Part[T]):
    """The outputs of PurgeCycles that are total."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class PurgeCycles(Result[T]):
    """How often a vessel is filled with CO2 and vented until no more than some oxygen is left, as a real and as a whole number; and the CO2 that the whole number takes."""

    __slots__ = ()
    function = "purge_cycles"
    outputs = ("cycles_count", "whole_cycles_count", "each_gas_g", "each_gas_kg", "each_gas_oz", "each_gas_lb", "total_gas_g", "total_gas_kg", "total_gas_oz", "total_gas_lb")
    shown = ("cycles_count", "whole_cycles_count", "each_gas_g", "each_gas_oz", "total_gas_g", "total_gas_oz")
    whole = part(PurgeCyclesWhole, "whole", "Whole.")
    each = part(PurgeCyclesEach, "each", "Each.")
    total = part(PurgeCyclesTotal, "total", "Total.")
    cycles_count = output("cycles_count", "How often a vessel is filled with CO2 and vented.")


@function(PurgeCycles)
def purge_cycles(
    *,
    purge_gauge_kpa: Number | None = None,
    purge_gauge_bar: Number | None = None,
    purge_gauge_psi: Number | None = None,
    purge_gauge_pa: Number | None = None,
    oxygen_ppm: Number | None = None,
    oxygen_vol_percent: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    start_oxygen_ppm: Number | None = None,
    start_oxygen_vol_percent: Number | None = None,
    gas_oxygen_ppm: Number | None = None,
    gas_oxygen_vol_percent: Number | None = None,
    keg_l: Number | None = None,
    keg_ml: Number | None = None,
    keg_us_gal: Number | None = None,
    keg_imp_gal: Number | None = None,
    keg_us_fl_oz: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    keg_rating_gauge_kpa: float | None = None,
    keg_rating_gauge_bar: float | None = None,
    keg_rating_gauge_psi: float | None = None,
    keg_rating_gauge_pa: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> PurgeCycles[Any]:
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
    raise NotImplementedError  # The decorator answers.


class SweepOxygenMixed(Part[T]):
    """The outputs of SweepOxygen that are mixed."""

    __slots__ = ()
    shown = ("oxygen_ppm", "oxygen_vol_percent")
    oxygen_ppm = output("oxygen_ppm", "Oxygen in the gas over the drink, ppm.")
    oxygen_vol_percent = output("oxygen_vol_percent", "Oxygen in the gas over the drink, % vol.")


class SweepOxygenPlugFlow(Part[T]):
    """The outputs of SweepOxygen that are plug_flow."""

    __slots__ = ()
    shown = ("oxygen_ppm", "oxygen_vol_percent")
    oxygen_ppm = output("oxygen_ppm", "Oxygen in the gas over the drink, ppm.")
    oxygen_vol_percent = output("oxygen_vol_percent", "Oxygen in the gas over the drink, % vol.")


class SweepOxygen(Result[T]):
    """Oxygen left in an open vessel after so many vessel volumes of CO2 ran through it: mixed (the most), and without mixing (the least); and the CO2 that this takes."""

    __slots__ = ()
    function = "sweep_oxygen"
    outputs = ("mixed_oxygen_ppm", "mixed_oxygen_vol_percent", "plug_flow_oxygen_ppm", "plug_flow_oxygen_vol_percent", "gas_g", "gas_kg", "gas_oz", "gas_lb")
    shown = ("mixed_oxygen_ppm", "mixed_oxygen_vol_percent", "plug_flow_oxygen_ppm", "plug_flow_oxygen_vol_percent", "gas_g", "gas_oz")
    mixed = part(SweepOxygenMixed, "mixed", "Mixed.")
    plug_flow = part(SweepOxygenPlugFlow, "plug_flow", "Plug_flow.")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


@function(SweepOxygen)
def sweep_oxygen(
    *,
    sweeps_count: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    start_oxygen_ppm: Number | None = None,
    start_oxygen_vol_percent: Number | None = None,
    gas_oxygen_ppm: Number | None = None,
    gas_oxygen_vol_percent: Number | None = None,
    keg_l: Number | None = None,
    keg_ml: Number | None = None,
    keg_us_gal: Number | None = None,
    keg_imp_gal: Number | None = None,
    keg_us_fl_oz: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> SweepOxygen[Any]:
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
    raise NotImplementedError  # The decorator answers.


class PushOxygen(Result[T]):
    """Oxygen in a keg that was filled to the brim with sanitiser, but for some air under the lid, and pushed empty by CO2; and the CO2 that this takes."""

    __slots__ = ()
    function = "push_oxygen"
    outputs = ("oxygen_ppm", "oxygen_vol_percent", "gas_g", "gas_kg", "gas_oz", "gas_lb")
    shown = ("oxygen_ppm", "oxygen_vol_percent", "gas_g", "gas_oz")
    oxygen_ppm = output("oxygen_ppm", "Oxygen in the gas over the drink, ppm.")
    oxygen_vol_percent = output("oxygen_vol_percent", "Oxygen in the gas over the drink, % vol.")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


@function(PushOxygen)
def push_oxygen(
    *,
    pocket_l: Number | None = None,
    pocket_ml: Number | None = None,
    pocket_us_gal: Number | None = None,
    pocket_imp_gal: Number | None = None,
    pocket_us_fl_oz: Number | None = None,
    push_gauge_kpa: Number | None = None,
    push_gauge_bar: Number | None = None,
    push_gauge_psi: Number | None = None,
    push_gauge_pa: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    start_oxygen_ppm: Number | None = None,
    start_oxygen_vol_percent: Number | None = None,
    gas_oxygen_ppm: Number | None = None,
    gas_oxygen_vol_percent: Number | None = None,
    keg_l: Number | None = None,
    keg_ml: Number | None = None,
    keg_us_gal: Number | None = None,
    keg_imp_gal: Number | None = None,
    keg_us_fl_oz: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    keg_rating_gauge_kpa: float | None = None,
    keg_rating_gauge_bar: float | None = None,
    keg_rating_gauge_psi: float | None = None,
    keg_rating_gauge_pa: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> PushOxygen[Any]:
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
    raise NotImplementedError  # The decorator answers.


class OxygenPickupHeadspace(Part[T]):
    """The outputs of OxygenPickup that are headspace."""

    __slots__ = ()
    shown = ("picked_up_ug_per_l", "picked_up_ppb")
    picked_up_ug_per_l = output("picked_up_ug_per_l", "Oxygen that a drink takes up, µg/L.")
    picked_up_ppb = output("picked_up_ppb", "Oxygen that a drink takes up, ppb.")
    picked_up_mg_per_l = output("picked_up_mg_per_l", "Oxygen that a drink takes up, mg/L.")


class OxygenPickupGas(Part[T]):
    """The outputs of OxygenPickup that are gas."""

    __slots__ = ()
    shown = ("picked_up_ug_per_l", "picked_up_ppb")
    picked_up_ug_per_l = output("picked_up_ug_per_l", "Oxygen that a drink takes up, µg/L.")
    picked_up_ppb = output("picked_up_ppb", "Oxygen that a drink takes up, ppb.")
    picked_up_mg_per_l = output("picked_up_mg_per_l", "Oxygen that a drink takes up, mg/L.")


class OxygenPickupEquilibrium(Part[T]):
    """The outputs of OxygenPickup that are equilibrium."""

    __slots__ = ()
    shown = ("dissolved_oxygen_ug_per_l", "dissolved_oxygen_ppb")
    dissolved_oxygen_ug_per_l = output("dissolved_oxygen_ug_per_l", "Oxygen dissolved in the drink, µg/L.")
    dissolved_oxygen_ppb = output("dissolved_oxygen_ppb", "Oxygen dissolved in the drink, ppb.")
    dissolved_oxygen_mg_per_l = output("dissolved_oxygen_mg_per_l", "Oxygen dissolved in the drink, mg/L.")


class OxygenPickup(Result[T]):
    """Oxygen of a package per litre of drink: in the headspace, brought along by the CO2 that carbonates it, and in all with what was dissolved; and what of it is dissolved at equilibrium."""

    __slots__ = ()
    function = "oxygen_pickup"
    outputs = ("headspace_picked_up_ug_per_l", "headspace_picked_up_ppb", "headspace_picked_up_mg_per_l", "gas_picked_up_ug_per_l", "gas_picked_up_ppb", "gas_picked_up_mg_per_l", "total_oxygen_ug_per_l", "total_oxygen_ppb", "total_oxygen_mg_per_l", "equilibrium_dissolved_oxygen_ug_per_l", "equilibrium_dissolved_oxygen_ppb", "equilibrium_dissolved_oxygen_mg_per_l")
    shown = ("headspace_picked_up_ug_per_l", "headspace_picked_up_ppb", "gas_picked_up_ug_per_l", "gas_picked_up_ppb", "total_oxygen_ug_per_l", "total_oxygen_ppb", "equilibrium_dissolved_oxygen_ug_per_l", "equilibrium_dissolved_oxygen_ppb")
    headspace = part(OxygenPickupHeadspace, "headspace", "Headspace.")
    gas = part(OxygenPickupGas, "gas", "Gas.")
    equilibrium = part(OxygenPickupEquilibrium, "equilibrium", "Equilibrium.")
    total_oxygen_ug_per_l = output("total_oxygen_ug_per_l", "Oxygen in drink and headspace together, per litre of drink: total package oxygen, µg/L.")
    total_oxygen_ppb = output("total_oxygen_ppb", "Oxygen in drink and headspace together, per litre of drink: total package oxygen, ppb.")
    total_oxygen_mg_per_l = output("total_oxygen_mg_per_l", "Oxygen in drink and headspace together, per litre of drink: total package oxygen, mg/L.")


@function(OxygenPickup)
def oxygen_pickup(
    *,
    oxygen_ppm: Number | None = None,
    oxygen_vol_percent: Number | None = None,
    headspace_percent: Number | None = None,
    keg_l: float | None = None,
    keg_ml: float | None = None,
    keg_us_gal: float | None = None,
    keg_imp_gal: float | None = None,
    keg_us_fl_oz: float | None = None,
    packaged_l: float | None = None,
    packaged_ml: float | None = None,
    packaged_us_gal: float | None = None,
    packaged_imp_gal: float | None = None,
    packaged_us_fl_oz: float | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    dissolved_oxygen_ug_per_l: Number | None = None,
    dissolved_oxygen_ppb: Number | None = None,
    dissolved_oxygen_mg_per_l: Number | None = None,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    start_co2_g_per_l: Number | None = None,
    start_volumes: Number | None = None,
    gas_oxygen_ppm: Number | None = None,
    gas_oxygen_vol_percent: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> OxygenPickup[Any]:
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
    raise NotImplementedError  # The decorator answers.


class TotalPackageOxygenHeadspace(Part[T]):
    """The outputs of TotalPackageOxygen that are headspace."""

    __slots__ = ()
    shown = ("picked_up_ug_per_l", "picked_up_ppb")
    picked_up_ug_per_l = output("picked_up_ug_per_l", "Oxygen that a drink takes up, µg/L.")
    picked_up_ppb = output("picked_up_ppb", "Oxygen that a drink takes up, ppb.")
    picked_up_mg_per_l = output("picked_up_mg_per_l", "Oxygen that a drink takes up, mg/L.")


class TotalPackageOxygen(Result[T]):
    """Total package oxygen from the oxygen dissolved in a package that was shaken to equilibrium, and the part of it that is in the headspace; per litre of drink."""

    __slots__ = ()
    function = "total_package_oxygen"
    outputs = ("total_oxygen_ug_per_l", "total_oxygen_ppb", "total_oxygen_mg_per_l", "headspace_picked_up_ug_per_l", "headspace_picked_up_ppb", "headspace_picked_up_mg_per_l")
    shown = ("total_oxygen_ug_per_l", "total_oxygen_ppb", "headspace_picked_up_ug_per_l", "headspace_picked_up_ppb")
    headspace = part(TotalPackageOxygenHeadspace, "headspace", "Headspace.")
    total_oxygen_ug_per_l = output("total_oxygen_ug_per_l", "Oxygen in drink and headspace together, per litre of drink: total package oxygen, µg/L.")
    total_oxygen_ppb = output("total_oxygen_ppb", "Oxygen in drink and headspace together, per litre of drink: total package oxygen, ppb.")
    total_oxygen_mg_per_l = output("total_oxygen_mg_per_l", "Oxygen in drink and headspace together, per litre of drink: total package oxygen, mg/L.")


@function(TotalPackageOxygen)
def total_package_oxygen(
    *,
    dissolved_oxygen_ug_per_l: Number | None = None,
    dissolved_oxygen_ppb: Number | None = None,
    dissolved_oxygen_mg_per_l: Number | None = None,
    headspace_percent: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> TotalPackageOxygen[Any]:
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
    raise NotImplementedError  # The decorator answers.


class GasBudgetDissolve(Part[T]):
    """The outputs of GasBudget that are dissolve."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class GasBudgetHeadspace(Part[T]):
    """The outputs of GasBudget that are headspace."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class GasBudgetPurge(Part[T]):
    """The outputs of GasBudget that are purge."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class GasBudgetServe(Part[T]):
    """The outputs of GasBudget that are serve."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class GasBudgetLoss(Part[T]):
    """The outputs of GasBudget that are loss."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class GasBudgetTotal(Part[T]):
    """The outputs of GasBudget that are total."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class GasBudgetLeast(Part[T]):
    """The outputs of GasBudget that are least."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class GasBudgetMost(Part[T]):
    """The outputs of GasBudget that are most."""

    __slots__ = ()
    shown = ("kegs_count",)
    kegs_count = output("kegs_count", "How many kegs a cylinder does.")


class GasBudget(Result[T]):
    """CO2 that a keg takes, use by use: dissolved, in the headspace, for purging, to push the drink out, lost; in all and at the bare minimum; and how many kegs a cylinder does at either."""

    __slots__ = ()
    function = "gas_budget"
    outputs = ("dissolve_gas_g", "dissolve_gas_kg", "dissolve_gas_oz", "dissolve_gas_lb", "headspace_gas_g", "headspace_gas_kg", "headspace_gas_oz", "headspace_gas_lb", "purge_gas_g", "purge_gas_kg", "purge_gas_oz", "purge_gas_lb", "serve_gas_g", "serve_gas_kg", "serve_gas_oz", "serve_gas_lb", "loss_gas_g", "loss_gas_kg", "loss_gas_oz", "loss_gas_lb", "total_gas_g", "total_gas_kg", "total_gas_oz", "total_gas_lb", "least_gas_g", "least_gas_kg", "least_gas_oz", "least_gas_lb", "kegs_count", "most_kegs_count")
    shown = ("dissolve_gas_g", "dissolve_gas_oz", "headspace_gas_g", "headspace_gas_oz", "purge_gas_g", "purge_gas_oz", "serve_gas_g", "serve_gas_oz", "loss_gas_g", "loss_gas_oz", "total_gas_g", "total_gas_oz", "least_gas_g", "least_gas_oz", "kegs_count", "most_kegs_count")
    dissolve = part(GasBudgetDissolve, "dissolve", "Dissolve.")
    headspace = part(GasBudgetHeadspace, "headspace", "Headspace.")
    purge = part(GasBudgetPurge, "purge", "Purge.")
    serve = part(GasBudgetServe, "serve", "Serve.")
    loss = part(GasBudgetLoss, "loss", "Loss.")
    total = part(GasBudgetTotal, "total", "Total.")
    least = part(GasBudgetLeast, "least", "Least.")
    most = part(GasBudgetMost, "most", "Most.")
    kegs_count = output("kegs_count", "How many kegs a cylinder does.")


@function(GasBudget)
def gas_budget(
    *,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    start_co2_g_per_l: Number | None = None,
    start_volumes: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    keg_l: Number | None = None,
    keg_ml: Number | None = None,
    keg_us_gal: Number | None = None,
    keg_imp_gal: Number | None = None,
    keg_us_fl_oz: Number | None = None,
    purge: Literal["none", "headspace", "empty", "push"] | None = None,
    purge_gauge_kpa: Number | None = None,
    purge_gauge_bar: Number | None = None,
    purge_gauge_psi: Number | None = None,
    purge_gauge_pa: Number | None = None,
    cycles_count: Number | None = None,
    push_gauge_kpa: Number | None = None,
    push_gauge_bar: Number | None = None,
    push_gauge_psi: Number | None = None,
    push_gauge_pa: Number | None = None,
    purge_c: Number | None = None,
    purge_f: Number | None = None,
    purge_k: Number | None = None,
    gas_loss_percent: Number | None = None,
    keg_rating_gauge_kpa: float | None = None,
    keg_rating_gauge_bar: float | None = None,
    keg_rating_gauge_psi: float | None = None,
    keg_rating_gauge_pa: float | None = None,
    cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None = None,
    charge_g: Number | None = None,
    charge_kg: Number | None = None,
    charge_oz: Number | None = None,
    charge_lb: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> GasBudget[Any]:
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
    raise NotImplementedError  # The decorator answers.


class CylinderLeftFalling(Part[T]):
    """The outputs of CylinderLeft that are falling."""

    __slots__ = ()
    shown = ("left_percent",)
    left_percent = output("left_percent", "Share of a full charge, %.")


class CylinderLeftLiquidFull(Part[T]):
    """The outputs of CylinderLeft that are liquid_full."""

    __slots__ = ()
    shown = ("cylinder_c", "cylinder_f")
    cylinder_c = output("cylinder_c", "Temperature of a cylinder of CO2: from the triple to the critical point, between which it holds liquid, °C.")
    cylinder_f = output("cylinder_f", "Temperature of a cylinder of CO2: from the triple to the critical point, between which it holds liquid, °F.")
    cylinder_k = output("cylinder_k", "Temperature of a cylinder of CO2: from the triple to the critical point, between which it holds liquid, K.")


class CylinderLeft(Result[T]):
    """What the gauge of a cylinder shows as long as it holds liquid, the share of a full charge that is left when it begins to fall, and the temperature at which a full cylinder is full of liquid."""

    __slots__ = ()
    function = "cylinder_left"
    outputs = ("gauge_kpa", "gauge_bar", "gauge_psi", "gauge_pa", "abs_kpa", "abs_bar", "abs_psi", "abs_pa", "falling_left_percent", "liquid_full_cylinder_c", "liquid_full_cylinder_f", "liquid_full_cylinder_k")
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi", "abs_kpa", "abs_bar", "abs_psi", "falling_left_percent", "liquid_full_cylinder_c", "liquid_full_cylinder_f")
    falling = part(CylinderLeftFalling, "falling", "Falling.")
    liquid_full = part(CylinderLeftLiquidFull, "liquid_full", "Liquid_full.")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")
    abs_kpa = output("abs_kpa", "Pressure above vacuum, total of the gas over the drink, kPa.")
    abs_bar = output("abs_bar", "Pressure above vacuum, total of the gas over the drink, bar.")
    abs_psi = output("abs_psi", "Pressure above vacuum, total of the gas over the drink, psi.")
    abs_pa = output("abs_pa", "Pressure above vacuum, total of the gas over the drink, Pa.")


@function(CylinderLeft)
def cylinder_left(
    *,
    cylinder_c: Number | None = None,
    cylinder_f: Number | None = None,
    cylinder_k: Number | None = None,
    cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None = None,
    filling_ratio_g_per_g: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> CylinderLeft[Any]:
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
    raise NotImplementedError  # The decorator answers.


class CylinderContentsLeft(Part[T]):
    """The outputs of CylinderContents that are left."""

    __slots__ = ()
    shown = ("gas_g", "gas_oz")
    gas_g = output("gas_g", "Mass of CO2, g.")
    gas_kg = output("gas_kg", "Mass of CO2, kg.")
    gas_oz = output("gas_oz", "Mass of CO2, oz.")
    gas_lb = output("gas_lb", "Mass of CO2, lb.")


class CylinderContents(Result[T]):
    """CO2 left in a cylinder by its weight now and empty, the share of a full charge, and how many kegs that does."""

    __slots__ = ()
    function = "cylinder_contents"
    outputs = ("left_gas_g", "left_gas_kg", "left_gas_oz", "left_gas_lb", "left_percent", "kegs_count")
    shown = ("left_gas_g", "left_gas_oz", "left_percent", "kegs_count")
    left = part(CylinderContentsLeft, "left", "Left.")
    left_percent = output("left_percent", "Share of a full charge, %.")
    kegs_count = output("kegs_count", "How many kegs a cylinder does.")


@function(CylinderContents)
def cylinder_contents(
    *,
    gross_g: Number | None = None,
    gross_kg: Number | None = None,
    gross_oz: Number | None = None,
    gross_lb: Number | None = None,
    tare_g: Number | None = None,
    tare_kg: Number | None = None,
    tare_oz: Number | None = None,
    tare_lb: Number | None = None,
    cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None = None,
    charge_g: Number | None = None,
    charge_kg: Number | None = None,
    charge_oz: Number | None = None,
    charge_lb: Number | None = None,
    gas_g: Number | None = None,
    gas_kg: Number | None = None,
    gas_oz: Number | None = None,
    gas_lb: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> CylinderContents[Any]:
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
    raise NotImplementedError  # The decorator answers.


class RoomCo2Mixed(Part[T]):
    """The outputs of RoomCo2 that are mixed."""

    __slots__ = ()
    shown = ("room_air_ppm", "room_air_vol_percent")
    room_air_ppm = output("room_air_ppm", "CO2 in the air of the room, ppm.")
    room_air_vol_percent = output("room_air_vol_percent", "CO2 in the air of the room, % vol.")


class RoomCo2Bound(Part[T]):
    """The outputs of RoomCo2 that are bound."""

    __slots__ = ()
    shown = ("room_air_ppm", "room_air_vol_percent")
    room_air_ppm = output("room_air_ppm", "CO2 in the air of the room, ppm.")
    room_air_vol_percent = output("room_air_vol_percent", "CO2 in the air of the room, % vol.")


class RoomCo2LowHalf(Part[T]):
    """The outputs of RoomCo2 that are low_half."""

    __slots__ = ()
    shown = ("room_air_ppm", "room_air_vol_percent")
    room_air_ppm = output("room_air_ppm", "CO2 in the air of the room, ppm.")
    room_air_vol_percent = output("room_air_vol_percent", "CO2 in the air of the room, % vol.")


class RoomCo2Later(Part[T]):
    """The outputs of RoomCo2 that are later."""

    __slots__ = ()
    shown = ("room_air_ppm", "room_air_vol_percent")
    room_air_ppm = output("room_air_ppm", "CO2 in the air of the room, ppm.")
    room_air_vol_percent = output("room_air_vol_percent", "CO2 in the air of the room, % vol.")


class RoomCo2LaterLowHalf(Part[T]):
    """The outputs of RoomCo2 that are later_low_half."""

    __slots__ = ()
    shown = ("room_air_ppm", "room_air_vol_percent")
    room_air_ppm = output("room_air_ppm", "CO2 in the air of the room, ppm.")
    room_air_vol_percent = output("room_air_vol_percent", "CO2 in the air of the room, % vol.")


class RoomCo2Aired(Part[T]):
    """The outputs of RoomCo2 that are aired."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")


class RoomCo2LowHalfAired(Part[T]):
    """The outputs of RoomCo2 that are low_half_aired."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")


class RoomCo2(Result[T]):
    """CO2 in the air of a room into which a cylinder, or what a fermentation makes, escapes: mixed, at most, and all of it in the lower half; after some time of airing; and how long airing takes to 5000 ppm."""

    __slots__ = ()
    function = "room_co2"
    outputs = ("mixed_room_air_ppm", "mixed_room_air_vol_percent", "bound_room_air_ppm", "bound_room_air_vol_percent", "low_half_room_air_ppm", "low_half_room_air_vol_percent", "later_room_air_ppm", "later_room_air_vol_percent", "later_low_half_room_air_ppm", "later_low_half_room_air_vol_percent", "aired_time_h", "aired_time_d", "aired_time_min", "aired_time_s", "low_half_aired_time_h", "low_half_aired_time_d", "low_half_aired_time_min", "low_half_aired_time_s")
    shown = ("mixed_room_air_ppm", "mixed_room_air_vol_percent", "bound_room_air_ppm", "bound_room_air_vol_percent", "low_half_room_air_ppm", "low_half_room_air_vol_percent", "later_room_air_ppm", "later_room_air_vol_percent", "later_low_half_room_air_ppm", "later_low_half_room_air_vol_percent", "aired_time_h", "aired_time_d", "low_half_aired_time_h", "low_half_aired_time_d")
    mixed = part(RoomCo2Mixed, "mixed", "Mixed.")
    bound = part(RoomCo2Bound, "bound", "Bound.")
    low_half = part(RoomCo2LowHalf, "low_half", "Low_half.")
    later = part(RoomCo2Later, "later", "Later.")
    later_low_half = part(RoomCo2LaterLowHalf, "later_low_half", "Later_low_half.")
    aired = part(RoomCo2Aired, "aired", "Aired.")
    low_half_aired = part(RoomCo2LowHalfAired, "low_half_aired", "Low_half_aired.")


@function(RoomCo2)
def room_co2(
    *,
    released_g: Number | None = None,
    released_kg: Number | None = None,
    released_oz: Number | None = None,
    released_lb: Number | None = None,
    room_m3: Number | None = None,
    room_ft3: Number | None = None,
    room_c: Number | None = None,
    room_f: Number | None = None,
    room_k: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    air_changes_per_h: Number | None = None,
    air_changes_per_d: Number | None = None,
    time_h: Number | None = None,
    time_d: Number | None = None,
    time_min: Number | None = None,
    time_s: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> RoomCo2[Any]:
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
    raise NotImplementedError  # The decorator answers.


class RoomLeakMixed(Part[T]):
    """The outputs of RoomLeak that are mixed."""

    __slots__ = ()
    shown = ("room_air_ppm", "room_air_vol_percent")
    room_air_ppm = output("room_air_ppm", "CO2 in the air of the room, ppm.")
    room_air_vol_percent = output("room_air_vol_percent", "CO2 in the air of the room, % vol.")


class RoomLeakLowHalf(Part[T]):
    """The outputs of RoomLeak that are low_half."""

    __slots__ = ()
    shown = ("room_air_ppm", "room_air_vol_percent")
    room_air_ppm = output("room_air_ppm", "CO2 in the air of the room, ppm.")
    room_air_vol_percent = output("room_air_vol_percent", "CO2 in the air of the room, % vol.")


class RoomLeak(Result[T]):
    """CO2 in the air of a room into which some leaks steadily, in the end: mixed, and all of it in the lower half."""

    __slots__ = ()
    function = "room_leak"
    outputs = ("mixed_room_air_ppm", "mixed_room_air_vol_percent", "low_half_room_air_ppm", "low_half_room_air_vol_percent")
    shown = ("mixed_room_air_ppm", "mixed_room_air_vol_percent", "low_half_room_air_ppm", "low_half_room_air_vol_percent")
    mixed = part(RoomLeakMixed, "mixed", "Mixed.")
    low_half = part(RoomLeakLowHalf, "low_half", "Low_half.")


@function(RoomLeak)
def room_leak(
    *,
    leak_g_per_h: Number | None = None,
    leak_oz_per_h: Number | None = None,
    room_m3: Number | None = None,
    room_ft3: Number | None = None,
    room_c: Number | None = None,
    room_f: Number | None = None,
    room_k: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    air_changes_per_h: Number | None = None,
    air_changes_per_d: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> RoomLeak[Any]:
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
    raise NotImplementedError  # The decorator answers.


class AmbientPressure(Result[T]):
    """Pressure of the air at an altitude."""

    __slots__ = ()
    function = "ambient_pressure"
    outputs = ("ambient_kpa", "ambient_bar", "ambient_psi", "ambient_pa")
    shown = ("ambient_kpa", "ambient_bar", "ambient_psi")
    ambient_kpa = output("ambient_kpa", "Measured pressure of the air outside, at the station (not reduced to sea level), kPa.")
    ambient_bar = output("ambient_bar", "Measured pressure of the air outside, at the station (not reduced to sea level), bar.")
    ambient_psi = output("ambient_psi", "Measured pressure of the air outside, at the station (not reduced to sea level), psi.")
    ambient_pa = output("ambient_pa", "Measured pressure of the air outside, at the station (not reduced to sea level), Pa.")


@function(AmbientPressure)
def ambient_pressure(
    *,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    sea_level_kpa: Number | None = None,
    sea_level_bar: Number | None = None,
    sea_level_psi: Number | None = None,
    sea_level_pa: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> AmbientPressure[Any]:
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
    raise NotImplementedError  # The decorator answers.


class PackagingCostBottlesFirst(Part[T]):
    """The outputs of PackagingCost that are bottles_first."""

    __slots__ = ()
    shown = ("cost_money_per_l", "cost_money_per_us_gal")
    cost_money_per_l = output("cost_money_per_l", "What a litre that is drunk costs, per L.")
    cost_money_per_us_gal = output("cost_money_per_us_gal", "What a litre that is drunk costs, per US gal.")


class PackagingCostKegFirst(Part[T]):
    """The outputs of PackagingCost that are keg_first."""

    __slots__ = ()
    shown = ("cost_money_per_l", "cost_money_per_us_gal")
    cost_money_per_l = output("cost_money_per_l", "What a litre that is drunk costs, per L.")
    cost_money_per_us_gal = output("cost_money_per_us_gal", "What a litre that is drunk costs, per US gal.")


class PackagingCostBottles(Part[T]):
    """The outputs of PackagingCost that are bottles."""

    __slots__ = ()
    shown = ("cost_money_per_l", "cost_money_per_us_gal", "spent_money")
    cost_money_per_l = output("cost_money_per_l", "What a litre that is drunk costs, per L.")
    cost_money_per_us_gal = output("cost_money_per_us_gal", "What a litre that is drunk costs, per US gal.")
    spent_money = output("spent_money", "What is spent in all.")


class PackagingCostKeg(Part[T]):
    """The outputs of PackagingCost that are keg."""

    __slots__ = ()
    shown = ("cost_money_per_l", "cost_money_per_us_gal", "spent_money")
    cost_money_per_l = output("cost_money_per_l", "What a litre that is drunk costs, per L.")
    cost_money_per_us_gal = output("cost_money_per_us_gal", "What a litre that is drunk costs, per US gal.")
    spent_money = output("spent_money", "What is spent in all.")


class PackagingCost(Result[T]):
    """What a litre costs that is drunk from bottles and from a keg, of the first batch and over several, by prices of one's own; of the drink itself only what is lost counts."""

    __slots__ = ()
    function = "packaging_cost"
    outputs = ("bottles_first_cost_money_per_l", "bottles_first_cost_money_per_us_gal", "keg_first_cost_money_per_l", "keg_first_cost_money_per_us_gal", "bottles_cost_money_per_l", "bottles_cost_money_per_us_gal", "keg_cost_money_per_l", "keg_cost_money_per_us_gal", "bottles_spent_money", "keg_spent_money")
    shown = ("bottles_first_cost_money_per_l", "bottles_first_cost_money_per_us_gal", "keg_first_cost_money_per_l", "keg_first_cost_money_per_us_gal", "bottles_cost_money_per_l", "bottles_cost_money_per_us_gal", "keg_cost_money_per_l", "keg_cost_money_per_us_gal", "bottles_spent_money", "keg_spent_money")
    bottles_first = part(PackagingCostBottlesFirst, "bottles_first", "Bottles_first.")
    keg_first = part(PackagingCostKegFirst, "keg_first", "Keg_first.")
    bottles = part(PackagingCostBottles, "bottles", "Bottles.")
    keg = part(PackagingCostKeg, "keg", "Keg.")


@function(PackagingCost)
def packaging_cost(
    *,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    bottle_l: Number | None = None,
    bottle_ml: Number | None = None,
    bottle_us_gal: Number | None = None,
    bottle_imp_gal: Number | None = None,
    bottle_us_fl_oz: Number | None = None,
    bottling_outfit_money: Number | None = None,
    bottle_money: Number | None = None,
    cap_money: Number | None = None,
    sugar_money_per_kg: Number | None = None,
    sugar_money_per_lb: Number | None = None,
    uses_count: Number | None = None,
    bottle_loss_percent: Number | None = None,
    outfit_money: Number | None = None,
    gas_money_per_kg: Number | None = None,
    gas_money_per_lb: Number | None = None,
    keg_loss_percent: Number | None = None,
    drink_money_per_l: Number | None = None,
    drink_money_per_us_gal: Number | None = None,
    mass_g: Number | None = None,
    mass_kg: Number | None = None,
    mass_oz: Number | None = None,
    mass_lb: Number | None = None,
    gas_g: Number | None = None,
    gas_kg: Number | None = None,
    gas_oz: Number | None = None,
    gas_lb: Number | None = None,
    batches_count: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> PackagingCost[Any]:
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
    raise NotImplementedError  # The decorator answers.


class BreakEven(Result[T]):
    """The batch at which kegging will have cost no more than bottling, fractions and all, by prices of one's own; 1 where it does from the first."""

    __slots__ = ()
    function = "break_even"
    outputs = ("batches_count",)
    shown = ("batches_count",)
    batches_count = output("batches_count", "How many batches are looked at.")


@function(BreakEven)
def break_even(
    *,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    bottle_l: Number | None = None,
    bottle_ml: Number | None = None,
    bottle_us_gal: Number | None = None,
    bottle_imp_gal: Number | None = None,
    bottle_us_fl_oz: Number | None = None,
    bottling_outfit_money: Number | None = None,
    bottle_money: Number | None = None,
    cap_money: Number | None = None,
    sugar_money_per_kg: Number | None = None,
    sugar_money_per_lb: Number | None = None,
    uses_count: Number | None = None,
    bottle_loss_percent: Number | None = None,
    outfit_money: Number | None = None,
    gas_money_per_kg: Number | None = None,
    gas_money_per_lb: Number | None = None,
    keg_loss_percent: Number | None = None,
    drink_money_per_l: Number | None = None,
    drink_money_per_us_gal: Number | None = None,
    mass_g: Number | None = None,
    mass_kg: Number | None = None,
    mass_oz: Number | None = None,
    mass_lb: Number | None = None,
    gas_g: Number | None = None,
    gas_kg: Number | None = None,
    gas_oz: Number | None = None,
    gas_lb: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> BreakEven[Any]:
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
    raise NotImplementedError  # The decorator answers.


class UptakeRateExpected(Part[T]):
    """The outputs of UptakeRate that are expected."""

    __slots__ = ()
    shown = ("kla_per_h",)
    kla_per_h = output("kla_per_h", "Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/h.")
    kla_per_d = output("kla_per_d", "Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/d.")


class UptakeRateLeast(Part[T]):
    """The outputs of UptakeRate that are least."""

    __slots__ = ()
    shown = ("kla_per_h",)
    kla_per_h = output("kla_per_h", "Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/h.")
    kla_per_d = output("kla_per_d", "Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/d.")


class UptakeRateMost(Part[T]):
    """The outputs of UptakeRate that are most."""

    __slots__ = ()
    shown = ("kla_per_h",)
    kla_per_h = output("kla_per_h", "Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/h.")
    kla_per_d = output("kla_per_d", "Share of the gap to equilibrium that closes in a time: first-order rate of uptake, 1/d.")


class UptakeRate(Result[T]):
    """Rate at which a drink comes to equilibrium with CO2 over it: the share of the gap that closes in an hour, as expected, at the slow end (least) and at the fast end (most) of what the method does."""

    __slots__ = ()
    function = "uptake_rate"
    outputs = ("expected_kla_per_h", "expected_kla_per_d", "least_kla_per_h", "least_kla_per_d", "most_kla_per_h", "most_kla_per_d")
    shown = ("expected_kla_per_h", "least_kla_per_h", "most_kla_per_h")
    expected = part(UptakeRateExpected, "expected", "Expected.")
    least = part(UptakeRateLeast, "least", "Least.")
    most = part(UptakeRateMost, "most", "Most.")


@function(UptakeRate)
def uptake_rate(
    *,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None = None,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    keg_diameter_m: Number | None = None,
    keg_diameter_ft: Number | None = None,
    kla_per_h: Number | None = None,
    kla_per_d: Number | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> UptakeRate[Any]:
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
    raise NotImplementedError  # The decorator answers.


class CarbonationTimeExpected(Part[T]):
    """The outputs of CarbonationTime that are expected."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")


class CarbonationTimeSoonest(Part[T]):
    """The outputs of CarbonationTime that are soonest."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")


class CarbonationTimeLatest(Part[T]):
    """The outputs of CarbonationTime that are latest."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")


class CarbonationTime(Result[T]):
    """Time under a constant pressure of CO2 until a drink holds a carbonation, upward or, in a vented keg, downward: as expected, at the soonest and at the latest. Confirm it by tasting."""

    __slots__ = ()
    function = "carbonation_time"
    outputs = ("expected_time_h", "expected_time_d", "expected_time_min", "expected_time_s", "soonest_time_h", "soonest_time_d", "soonest_time_min", "soonest_time_s", "latest_time_h", "latest_time_d", "latest_time_min", "latest_time_s")
    shown = ("expected_time_h", "expected_time_d", "soonest_time_h", "soonest_time_d", "latest_time_h", "latest_time_d")
    expected = part(CarbonationTimeExpected, "expected", "Expected.")
    soonest = part(CarbonationTimeSoonest, "soonest", "Soonest.")
    latest = part(CarbonationTimeLatest, "latest", "Latest.")


@function(CarbonationTime)
def carbonation_time(
    *,
    start_co2_g_per_l: Number | None = None,
    start_volumes: Number | None = None,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    supply_g_per_h: Number | None = None,
    supply_oz_per_h: Number | None = None,
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None = None,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    keg_diameter_m: Number | None = None,
    keg_diameter_ft: Number | None = None,
    kla_per_h: Number | None = None,
    kla_per_d: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> CarbonationTime[Any]:
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
    189.4531015932612
    """
    raise NotImplementedError  # The decorator answers.


class CarbonationProgressExpected(Part[T]):
    """The outputs of CarbonationProgress that are expected."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class CarbonationProgressLeast(Part[T]):
    """The outputs of CarbonationProgress that are least."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class CarbonationProgressMost(Part[T]):
    """The outputs of CarbonationProgress that are most."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class CarbonationProgressEnd(Part[T]):
    """The outputs of CarbonationProgress that are end."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class CarbonationProgress(Result[T]):
    """CO2 in a drink after a time under a constant pressure of CO2: as expected, the least and the most; and what it would end at."""

    __slots__ = ()
    function = "carbonation_progress"
    outputs = ("expected_co2_g_per_l", "expected_volumes", "least_co2_g_per_l", "least_volumes", "most_co2_g_per_l", "most_volumes", "end_co2_g_per_l", "end_volumes")
    shown = ("expected_co2_g_per_l", "expected_volumes", "least_co2_g_per_l", "least_volumes", "most_co2_g_per_l", "most_volumes", "end_co2_g_per_l", "end_volumes")
    expected = part(CarbonationProgressExpected, "expected", "Expected.")
    least = part(CarbonationProgressLeast, "least", "Least.")
    most = part(CarbonationProgressMost, "most", "Most.")
    end = part(CarbonationProgressEnd, "end", "End.")


@function(CarbonationProgress)
def carbonation_progress(
    *,
    start_co2_g_per_l: Number | None = None,
    start_volumes: Number | None = None,
    time_h: Number | None = None,
    time_d: Number | None = None,
    time_min: Number | None = None,
    time_s: Number | None = None,
    gauge_kpa: Number | None = None,
    gauge_bar: Number | None = None,
    gauge_psi: Number | None = None,
    gauge_pa: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    supply_g_per_h: Number | None = None,
    supply_oz_per_h: Number | None = None,
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None = None,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    keg_diameter_m: Number | None = None,
    keg_diameter_ft: Number | None = None,
    kla_per_h: Number | None = None,
    kla_per_d: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> CarbonationProgress[Any]:
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
    4.671080167481087
    """
    raise NotImplementedError  # The decorator answers.


class BurstTimeStop(Part[T]):
    """The outputs of BurstTime that are stop."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")


class BurstTimeExpected(Part[T]):
    """The outputs of BurstTime that are expected."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class BurstTimeLeast(Part[T]):
    """The outputs of BurstTime that are least."""

    __slots__ = ()
    shown = ("co2_g_per_l", "volumes")
    co2_g_per_l = output("co2_g_per_l", "CO2 per litre of drink, g/L.")
    volumes = output("volumes", "CO2 per litre of drink, vol.")


class BurstTimeHold(Part[T]):
    """The outputs of BurstTime that are hold."""

    __slots__ = ()
    shown = ("gauge_kpa", "gauge_bar", "gauge_psi")
    gauge_kpa = output("gauge_kpa", "Pressure above the air outside, total of the gas over the drink, kPa.")
    gauge_bar = output("gauge_bar", "Pressure above the air outside, total of the gas over the drink, bar.")
    gauge_psi = output("gauge_psi", "Pressure above the air outside, total of the gas over the drink, psi.")
    gauge_pa = output("gauge_pa", "Pressure above the air outside, total of the gas over the drink, Pa.")


class BurstTimeRest(Part[T]):
    """The outputs of BurstTime that are rest."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")


class BurstTimeLatestRest(Part[T]):
    """The outputs of BurstTime that are latest_rest."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature.")


class BurstTime(Result[T]):
    """When to end a burst of high pressure so that the target is not passed even at the fast end of the rate; what the drink then holds as expected and at least; the pressure that holds the target; and how long that takes, as expected and at the latest, until no more than 0.1 volumes are missing."""

    __slots__ = ()
    function = "burst_time"
    outputs = ("stop_time_h", "stop_time_d", "stop_time_min", "stop_time_s", "expected_co2_g_per_l", "expected_volumes", "least_co2_g_per_l", "least_volumes", "hold_gauge_kpa", "hold_gauge_bar", "hold_gauge_psi", "hold_gauge_pa", "rest_time_h", "rest_time_d", "rest_time_min", "rest_time_s", "latest_rest_time_h", "latest_rest_time_d", "latest_rest_time_min", "latest_rest_time_s")
    shown = ("stop_time_h", "stop_time_d", "expected_co2_g_per_l", "expected_volumes", "least_co2_g_per_l", "least_volumes", "hold_gauge_kpa", "hold_gauge_bar", "hold_gauge_psi", "rest_time_h", "rest_time_d", "latest_rest_time_h", "latest_rest_time_d")
    stop = part(BurstTimeStop, "stop", "Stop.")
    expected = part(BurstTimeExpected, "expected", "Expected.")
    least = part(BurstTimeLeast, "least", "Least.")
    hold = part(BurstTimeHold, "hold", "Hold.")
    rest = part(BurstTimeRest, "rest", "Rest.")
    latest_rest = part(BurstTimeLatestRest, "latest_rest", "Latest_rest.")


@function(BurstTime)
def burst_time(
    *,
    start_co2_g_per_l: Number | None = None,
    start_volumes: Number | None = None,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    burst_gauge_kpa: Number | None = None,
    burst_gauge_bar: Number | None = None,
    burst_gauge_psi: Number | None = None,
    burst_gauge_pa: Number | None = None,
    temperature_c: Number | None = None,
    temperature_f: Number | None = None,
    temperature_k: Number | None = None,
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None = None,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
    keg_diameter_m: Number | None = None,
    keg_diameter_ft: Number | None = None,
    kla_per_h: Number | None = None,
    kla_per_d: Number | None = None,
    altitude_m: Number | None = None,
    altitude_ft: Number | None = None,
    ambient_kpa: Number | None = None,
    ambient_bar: Number | None = None,
    ambient_psi: Number | None = None,
    ambient_pa: Number | None = None,
    sea_level_kpa: float | None = None,
    sea_level_bar: float | None = None,
    sea_level_psi: float | None = None,
    sea_level_pa: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> BurstTime[Any]:
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
    29.65823838451565
    """
    raise NotImplementedError  # The decorator answers.


@table
def solubility_models(
    *,
    gauge_kpa: float | None = None,
    gauge_bar: float | None = None,
    gauge_psi: float | None = None,
    gauge_pa: float | None = None,
    abs_kpa: float | None = None,
    abs_bar: float | None = None,
    abs_psi: float | None = None,
    abs_pa: float | None = None,
    co2_g_per_l: float | None = None,
    volumes: float | None = None,
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
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    extract_g_per_l: float | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    solubility_multiplier: float | None = None,
    **unknown: Any,
) -> Table:
    """What every solubility model made for a drink says of one state, given by a pressure or by a
    carbonation; the model of the basis first.

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
    raise NotImplementedError  # The decorator answers.


@table
def carbonation_chart(
    *,
    chart: Literal["metric", "us"] | None = None,
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
    **unknown: Any,
) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def fill_list(
    *,
    packaged_l: float | None = None,
    packaged_ml: float | None = None,
    packaged_us_gal: float | None = None,
    packaged_imp_gal: float | None = None,
    packaged_us_fl_oz: float | None = None,
    fill_order: Literal["least_leftover", "fewest_bottles", "fewest_sizes", "as_listed"] | None = None,
    spare_percent: float | None = None,
    headspace_percent: float | None = None,
    bottles: Rows | None = None,
    **unknown: Any,
) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def bottle_doses(
    *,
    co2_g_per_l: float | None = None,
    volumes: float | None = None,
    tablet_g: float | None = None,
    tablet_kg: float | None = None,
    tablet_oz: float | None = None,
    tablet_lb: float | None = None,
    warmest_c: float | None = None,
    warmest_f: float | None = None,
    warmest_k: float | None = None,
    residual_co2_g_per_l: float | None = None,
    residual_volumes: float | None = None,
    fermenter_gauge_kpa: float | None = None,
    fermenter_gauge_bar: float | None = None,
    fermenter_gauge_psi: float | None = None,
    fermenter_gauge_pa: float | None = None,
    cold_crash: Literal["open", "closed", "co2_supplied"] | None = None,
    crash_c: float | None = None,
    crash_f: float | None = None,
    crash_k: float | None = None,
    fermenter_headspace_percent: float | None = None,
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
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None = None,
    sugar_water_percent: float | None = None,
    sugar_sg: float | None = None,
    sugar_fermentable_percent: float | None = None,
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    extract_g_per_l: float | None = None,
    fermentable_g_per_l: float | None = None,
    yeast: Literal["live", "none"] | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    residual_model: Literal["table", "equilibrium"] | None = None,
    yield_percent: float | None = None,
    count_headspace: bool | None = None,
    headspace_percent: float | None = None,
    filling_c: float | None = None,
    filling_f: float | None = None,
    filling_k: float | None = None,
    room_c: float | None = None,
    room_f: float | None = None,
    room_k: float | None = None,
    solubility_multiplier: float | None = None,
    residual_multiplier: float | None = None,
    yield_multiplier: float | None = None,
    bottles: Rows | None = None,
    **unknown: Any,
) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def bottle_pressures(
    *,
    co2_g_per_l: float | None = None,
    volumes: float | None = None,
    bottle_class: Literal["light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne", "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"] | None = None,
    rating_gauge_kpa: float | None = None,
    rating_gauge_bar: float | None = None,
    rating_gauge_psi: float | None = None,
    rating_gauge_pa: float | None = None,
    headspace_percent: float | None = None,
    filling_c: float | None = None,
    filling_f: float | None = None,
    filling_k: float | None = None,
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
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    extract_g_per_l: float | None = None,
    fermentable_g_per_l: float | None = None,
    yeast: Literal["live", "none"] | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    yield_percent: float | None = None,
    solubility_multiplier: float | None = None,
    yield_multiplier: float | None = None,
    **unknown: Any,
) -> Table:
    """Pressure in a sealed bottle against temperature, expected and worst, from 0 to 60 °C, and whether a
    class of bottle, or a maker's rating, stands it; no margin is given above 40 °C, and filled glass is never
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
    raise NotImplementedError  # The decorator answers.


@table
def bottle_verdicts(
    *,
    co2_g_per_l: float | None = None,
    volumes: float | None = None,
    hot_day_c: float | None = None,
    hot_day_f: float | None = None,
    hot_day_k: float | None = None,
    headspace_percent: float | None = None,
    filling_c: float | None = None,
    filling_f: float | None = None,
    filling_k: float | None = None,
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
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    extract_g_per_l: float | None = None,
    fermentable_g_per_l: float | None = None,
    yeast: Literal["live", "none"] | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    yield_percent: float | None = None,
    solubility_multiplier: float | None = None,
    yield_multiplier: float | None = None,
    **unknown: Any,
) -> Table:
    """Whether each class of bottle stands a carbonation by the worst case: against what it usually holds, and
    on a hot day against what it usually sees at 40 °C. A maker's rating goes before it: the table of
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
    raise NotImplementedError  # The decorator answers.


@table
def pressure_parts(
    *,
    co2_g_per_l: float | None = None,
    volumes: float | None = None,
    temperature_c: float | None = None,
    temperature_f: float | None = None,
    temperature_k: float | None = None,
    headspace_percent: float | None = None,
    filling_c: float | None = None,
    filling_f: float | None = None,
    filling_k: float | None = None,
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
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    extract_g_per_l: float | None = None,
    fermentable_g_per_l: float | None = None,
    yeast: Literal["live", "none"] | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    yield_percent: float | None = None,
    solubility_multiplier: float | None = None,
    yield_multiplier: float | None = None,
    **unknown: Any,
) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def conditioning_days(
    *,
    room_c: float | None = None,
    room_f: float | None = None,
    room_k: float | None = None,
    yeast_million_per_ml: float | None = None,
    age_h: float | None = None,
    age_d: float | None = None,
    age_min: float | None = None,
    age_s: float | None = None,
    filtered: bool | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    history: Rows | None = None,
    **unknown: Any,
) -> Table:
    """Share of the carbonation that bottles have made, day by day for six weeks, in a room or through a
    history of temperatures: an estimate, with the slow and the fast end of its range.

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
    raise NotImplementedError  # The decorator answers.


@table
def carbonation_curve(
    *,
    start_co2_g_per_l: float | None = None,
    start_volumes: float | None = None,
    gauge_kpa: float | None = None,
    gauge_bar: float | None = None,
    gauge_psi: float | None = None,
    gauge_pa: float | None = None,
    temperature_c: float | None = None,
    temperature_f: float | None = None,
    temperature_k: float | None = None,
    supply_g_per_h: float | None = None,
    supply_oz_per_h: float | None = None,
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None = None,
    packaged_l: float | None = None,
    packaged_ml: float | None = None,
    packaged_us_gal: float | None = None,
    packaged_imp_gal: float | None = None,
    packaged_us_fl_oz: float | None = None,
    keg_diameter_m: float | None = None,
    keg_diameter_ft: float | None = None,
    kla_per_h: float | None = None,
    kla_per_d: float | None = None,
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
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    extract_g_per_l: float | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    **unknown: Any,
) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def carbonation_schedule(
    *,
    start_co2_g_per_l: float | None = None,
    start_volumes: float | None = None,
    supply_g_per_h: float | None = None,
    supply_oz_per_h: float | None = None,
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None = None,
    packaged_l: float | None = None,
    packaged_ml: float | None = None,
    packaged_us_gal: float | None = None,
    packaged_imp_gal: float | None = None,
    packaged_us_fl_oz: float | None = None,
    keg_diameter_m: float | None = None,
    keg_diameter_ft: float | None = None,
    kla_per_h: float | None = None,
    kla_per_d: float | None = None,
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
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    extract_g_per_l: float | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    schedule: Rows | None = None,
    **unknown: Any,
) -> Table:
    """CO2 in a drink through a schedule of pressures and temperatures, one step after another: bursts,
    holding, chilling and venting are all such steps. Each is told in four parts, the last at its end.

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
    raise NotImplementedError  # The decorator answers.


@table
def uptake_fit(
    *,
    start_co2_g_per_l: float | None = None,
    start_volumes: float | None = None,
    gauge_kpa: float | None = None,
    gauge_bar: float | None = None,
    gauge_psi: float | None = None,
    gauge_pa: float | None = None,
    temperature_c: float | None = None,
    temperature_f: float | None = None,
    temperature_k: float | None = None,
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None = None,
    packaged_l: float | None = None,
    packaged_ml: float | None = None,
    packaged_us_gal: float | None = None,
    packaged_imp_gal: float | None = None,
    packaged_us_fl_oz: float | None = None,
    keg_diameter_m: float | None = None,
    keg_diameter_ft: float | None = None,
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
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    extract_g_per_l: float | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    uptake_readings: Rows | None = None,
    **unknown: Any,
) -> Table:
    """Rate of uptake from readings of the CO2 in a drink that stands under one pressure, with its 95 %
    interval, and whether it is usual for the method; one row.

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
    raise NotImplementedError  # The decorator answers.


@table
def carbonating_methods(**unknown: Any) -> Table:
    """How drink and gas meet, and how fast CO2 then passes: the rate in a full 19 L keg at 4 °C, or a factor
    on that of the still surface, as expected and at the ends of its range.

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
    raise NotImplementedError  # The decorator answers.


@table
def fermentables(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def sweeteners(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def carbonation_ranges(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def bottle_sizes(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def bottle_classes(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def keg_sizes(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def keg_ratings(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def cylinder_sizes(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def line_balance(
    *,
    gauge_kpa: float | None = None,
    gauge_bar: float | None = None,
    gauge_psi: float | None = None,
    gauge_pa: float | None = None,
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None = None,
    bore_mm: float | None = None,
    bore_in: float | None = None,
    flow_l_per_min: float | None = None,
    flow_us_fl_oz_per_s: float | None = None,
    flow_us_gal_per_min: float | None = None,
    pour_seconds: float | None = None,
    hardware_kpa: float | None = None,
    hardware_bar: float | None = None,
    hardware_psi: float | None = None,
    hardware_pa: float | None = None,
    rise_m: float | None = None,
    rise_ft: float | None = None,
    fittings_multiplier: float | None = None,
    glass_l: float | None = None,
    glass_ml: float | None = None,
    glass_us_gal: float | None = None,
    glass_imp_gal: float | None = None,
    glass_us_fl_oz: float | None = None,
    temperature_c: float | None = None,
    temperature_f: float | None = None,
    temperature_k: float | None = None,
    sg: float | None = None,
    viscosity_multiplier: float | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    extract_g_per_l: float | None = None,
    **unknown: Any,
) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def tubes(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def filling_losses(**unknown: Any) -> Table:
    """CO2 that a drink loses on the way from the keg into package or glass, by the way it is filled: either
    an amount, or a share.

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
    raise NotImplementedError  # The decorator answers.


@table
def filling_densities(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def oxygen_limits(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def exposure_limits(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def equations(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def sources(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def cautions(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def claim_quantities(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def crosscheck_habits(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def units(**unknown: Any) -> Table:
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
    raise NotImplementedError  # The decorator answers.


@table
def instruments(**unknown: Any) -> Table:
    """How sure usual instruments are in careful hands: offered by name for an uncertainty, never taken
    unasked; judgement.

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
    raise NotImplementedError  # The decorator answers.


@job(Bottling)
def bottling(
    *,
    title: str | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    extract_g_per_l: float | None = None,
    fermentable_g_per_l: float | None = None,
    yeast: Literal["live", "none"] | None = None,
    microbes: Literal["brewing_yeast", "diastatic", "wild"] | None = None,
    original_sg: float | None = None,
    original_plato: float | None = None,
    current_sg: float | None = None,
    current_plato: float | None = None,
    final_sg: float | None = None,
    final_plato: float | None = None,
    expected_attenuation_percent: float | None = None,
    extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
    real_extract_model: Literal["balling", "quotient"] | None = None,
    packaged_l: float | None = None,
    packaged_ml: float | None = None,
    packaged_us_gal: float | None = None,
    packaged_imp_gal: float | None = None,
    packaged_us_fl_oz: float | None = None,
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
    co2_g_per_l: float | None = None,
    volumes: float | None = None,
    mass_g: float | None = None,
    mass_kg: float | None = None,
    mass_oz: float | None = None,
    mass_lb: float | None = None,
    warmest_c: float | None = None,
    warmest_f: float | None = None,
    warmest_k: float | None = None,
    residual_co2_g_per_l: float | None = None,
    residual_volumes: float | None = None,
    fermenter_gauge_kpa: float | None = None,
    fermenter_gauge_bar: float | None = None,
    fermenter_gauge_psi: float | None = None,
    fermenter_gauge_pa: float | None = None,
    cold_crash: Literal["open", "closed", "co2_supplied"] | None = None,
    crash_c: float | None = None,
    crash_f: float | None = None,
    crash_k: float | None = None,
    fermenter_headspace_percent: float | None = None,
    filling_c: float | None = None,
    filling_f: float | None = None,
    filling_k: float | None = None,
    cellar_c: float | None = None,
    cellar_f: float | None = None,
    cellar_k: float | None = None,
    room_c: float | None = None,
    room_f: float | None = None,
    room_k: float | None = None,
    hot_day_c: float | None = None,
    hot_day_f: float | None = None,
    hot_day_k: float | None = None,
    pasteurising_c: float | None = None,
    pasteurising_f: float | None = None,
    pasteurising_k: float | None = None,
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
    headspace_percent: float | None = None,
    bottle_class: Literal["light_one_way", "heavier_reusable", "swing_top", "heavy_belgian", "champagne", "soft_drink_multi_trip", "soft_drink_glass", "pet_soft_drink", "growler", "still_wine"] | None = None,
    rating_gauge_kpa: float | None = None,
    rating_gauge_bar: float | None = None,
    rating_gauge_psi: float | None = None,
    rating_gauge_pa: float | None = None,
    fill_order: Literal["least_leftover", "fewest_bottles", "fewest_sizes", "as_listed"] | None = None,
    spare_percent: float | None = None,
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
    dissolving_c: float | None = None,
    dissolving_f: float | None = None,
    dissolving_k: float | None = None,
    scale_g: float | None = None,
    scale_kg: float | None = None,
    scale_oz: float | None = None,
    scale_lb: float | None = None,
    tablet_g: float | None = None,
    tablet_kg: float | None = None,
    tablet_oz: float | None = None,
    tablet_lb: float | None = None,
    wort_original_sg: float | None = None,
    wort_original_plato: float | None = None,
    wort_current_sg: float | None = None,
    wort_current_plato: float | None = None,
    limit_attenuation_percent: float | None = None,
    wort_co2_g_per_l: float | None = None,
    wort_volumes: float | None = None,
    yeast_million_per_ml: float | None = None,
    age_h: float | None = None,
    age_d: float | None = None,
    age_min: float | None = None,
    age_s: float | None = None,
    filtered: bool | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    residual_model: Literal["table", "equilibrium"] | None = None,
    yield_percent: float | None = None,
    count_headspace: bool | None = None,
    count_syrup: bool | None = None,
    solubility_multiplier: float | None = None,
    residual_multiplier: float | None = None,
    yield_multiplier: float | None = None,
    working: bool | None = None,
    bottles: Rows | None = None,
    additions: Rows | None = None,
    readings: Rows | None = None,
    history: Rows | None = None,
    uncertainty: Mapping[str, Doubt] | None = None,
    **unknown: Any,
) -> Bottling:
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
    raise NotImplementedError  # The decorator answers.


@job(Kegging)
def kegging(
    *,
    title: str | None = None,
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: float | None = None,
    extract_g_per_l: float | None = None,
    fermentable_g_per_l: float | None = None,
    yeast: Literal["live", "none"] | None = None,
    original_sg: float | None = None,
    original_plato: float | None = None,
    current_sg: float | None = None,
    current_plato: float | None = None,
    final_sg: float | None = None,
    final_plato: float | None = None,
    expected_attenuation_percent: float | None = None,
    extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
    real_extract_model: Literal["balling", "quotient"] | None = None,
    packaged_l: float | None = None,
    packaged_ml: float | None = None,
    packaged_us_gal: float | None = None,
    packaged_imp_gal: float | None = None,
    packaged_us_fl_oz: float | None = None,
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
    co2_g_per_l: float | None = None,
    volumes: float | None = None,
    warmest_c: float | None = None,
    warmest_f: float | None = None,
    warmest_k: float | None = None,
    residual_co2_g_per_l: float | None = None,
    residual_volumes: float | None = None,
    fermenter_gauge_kpa: float | None = None,
    fermenter_gauge_bar: float | None = None,
    fermenter_gauge_psi: float | None = None,
    fermenter_gauge_pa: float | None = None,
    cold_crash: Literal["open", "closed", "co2_supplied"] | None = None,
    crash_c: float | None = None,
    crash_f: float | None = None,
    crash_k: float | None = None,
    fermenter_headspace_percent: float | None = None,
    start_co2_g_per_l: float | None = None,
    start_volumes: float | None = None,
    serving_c: float | None = None,
    serving_f: float | None = None,
    serving_k: float | None = None,
    hot_day_c: float | None = None,
    hot_day_f: float | None = None,
    hot_day_k: float | None = None,
    room_c: float | None = None,
    room_f: float | None = None,
    room_k: float | None = None,
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
    keg_l: float | None = None,
    keg_ml: float | None = None,
    keg_us_gal: float | None = None,
    keg_imp_gal: float | None = None,
    keg_us_fl_oz: float | None = None,
    keg_diameter_m: float | None = None,
    keg_diameter_ft: float | None = None,
    keg_rating_gauge_kpa: float | None = None,
    keg_rating_gauge_bar: float | None = None,
    keg_rating_gauge_psi: float | None = None,
    keg_rating_gauge_pa: float | None = None,
    co2_percent: float | None = None,
    air_abs_kpa: float | None = None,
    air_abs_bar: float | None = None,
    air_abs_psi: float | None = None,
    air_abs_pa: float | None = None,
    purge: Literal["none", "headspace", "empty", "push"] | None = None,
    purge_gauge_kpa: float | None = None,
    purge_gauge_bar: float | None = None,
    purge_gauge_psi: float | None = None,
    purge_gauge_pa: float | None = None,
    cycles_count: float | None = None,
    oxygen_ppm: float | None = None,
    oxygen_vol_percent: float | None = None,
    start_oxygen_ppm: float | None = None,
    start_oxygen_vol_percent: float | None = None,
    gas_oxygen_ppm: float | None = None,
    gas_oxygen_vol_percent: float | None = None,
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
    method: Literal["still", "dip_tube", "on_side", "stone", "rocked"] | None = None,
    kla_per_h: float | None = None,
    kla_per_d: float | None = None,
    supply_g_per_h: float | None = None,
    supply_oz_per_h: float | None = None,
    burst_gauge_kpa: float | None = None,
    burst_gauge_bar: float | None = None,
    burst_gauge_psi: float | None = None,
    burst_gauge_pa: float | None = None,
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
    cylinder_size: Literal["cartridge_8_g", "cartridge_12_g", "cartridge_16_g", "cartridge_74_g", "cylinder_2_kg", "cylinder_5_lb", "cylinder_10_lb", "cylinder_6_kg", "cylinder_20_lb", "cylinder_10_kg"] | None = None,
    charge_g: float | None = None,
    charge_kg: float | None = None,
    charge_oz: float | None = None,
    charge_lb: float | None = None,
    gas_loss_percent: float | None = None,
    tube: Literal["vinyl_3_16_in", "vinyl_1_4_in", "vinyl_5_16_in", "vinyl_3_8_in", "vinyl_1_2_in", "barrier_3_16_in", "barrier_1_4_in", "barrier_5_16_in", "barrier_3_8_in", "steel_1_4_in_od", "steel_5_16_in_od", "steel_3_8_in_od", "metric_7_mm", "metric_10_mm"] | None = None,
    bore_mm: float | None = None,
    bore_in: float | None = None,
    line_m: float | None = None,
    line_ft: float | None = None,
    rise_m: float | None = None,
    rise_ft: float | None = None,
    fittings_multiplier: float | None = None,
    hardware_kpa: float | None = None,
    hardware_bar: float | None = None,
    hardware_psi: float | None = None,
    hardware_pa: float | None = None,
    flow_l_per_min: float | None = None,
    flow_us_fl_oz_per_s: float | None = None,
    flow_us_gal_per_min: float | None = None,
    pour_seconds: float | None = None,
    glass_l: float | None = None,
    glass_ml: float | None = None,
    glass_us_gal: float | None = None,
    glass_imp_gal: float | None = None,
    glass_us_fl_oz: float | None = None,
    viscosity_multiplier: float | None = None,
    fill_method: Literal["automatic", "counter_pressure_line", "hand_counter_pressure", "tap_tube", "tilted_glass"] | None = None,
    fill_loss_co2_g_per_l: float | None = None,
    fill_loss_volumes: float | None = None,
    released_g: float | None = None,
    released_kg: float | None = None,
    released_oz: float | None = None,
    released_lb: float | None = None,
    room_m3: float | None = None,
    room_ft3: float | None = None,
    air_changes_per_h: float | None = None,
    air_changes_per_d: float | None = None,
    sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None = None,
    sugar_water_percent: float | None = None,
    sugar_sg: float | None = None,
    sugar_fermentable_percent: float | None = None,
    sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None = None,
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
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    residual_model: Literal["table", "equilibrium"] | None = None,
    yield_percent: float | None = None,
    solubility_multiplier: float | None = None,
    residual_multiplier: float | None = None,
    yield_multiplier: float | None = None,
    working: bool | None = None,
    readings: Rows | None = None,
    uncertainty: Mapping[str, Doubt] | None = None,
    **unknown: Any,
) -> Kegging:
    """Keg a batch: what pressure for how long, how it is purged, how much gas, which line, what a hot day
    does.

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
    0.8138910927616388
    >>> batch.carbonating.expected.time_d
    8.204678687772942
    """
    raise NotImplementedError  # The decorator answers.


class At(Bound):
    """All functions with a context that they share; what a call gives replaces it.

    Examples
    --------
    >>> import carb
    >>> here = carb.at(altitude_m=240, beverage="beer")
    >>> here.ambient_pressure().ambient_kpa
    98.47497148824074
    """

    __slots__ = ()
    groups = (
        frozenset(("temperature_c", "temperature_f", "temperature_k")),
        frozenset(("sea_level_kpa", "sea_level_bar", "sea_level_psi", "sea_level_pa")),
        frozenset(("air_abs_kpa", "air_abs_bar", "air_abs_psi", "air_abs_pa")),
        frozenset(("altitude_m", "altitude_ft", "ambient_kpa", "ambient_bar", "ambient_psi", "ambient_pa")),
        frozenset(("filling_c", "filling_f", "filling_k")),
        frozenset(("keg_rating_gauge_kpa", "keg_rating_gauge_bar", "keg_rating_gauge_psi", "keg_rating_gauge_pa")),
        frozenset(("final_sg", "final_plato")),
        frozenset(("start_co2_g_per_l", "start_volumes")),
        frozenset(("current_sg", "current_plato")),
        frozenset(("depth_m", "depth_ft")),
        frozenset(("wetting_kpa", "wetting_bar", "wetting_psi", "wetting_pa")),
        frozenset(("margin_kpa", "margin_bar", "margin_psi", "margin_pa")),
        frozenset(("warmest_c", "warmest_f", "warmest_k")),
        frozenset(("fermenter_gauge_kpa", "fermenter_gauge_bar", "fermenter_gauge_psi", "fermenter_gauge_pa")),
        frozenset(("crash_c", "crash_f", "crash_k")),
        frozenset(("residual_co2_g_per_l", "residual_volumes")),
        frozenset(("syrup_water_l", "syrup_water_ml", "syrup_water_us_gal", "syrup_water_imp_gal", "syrup_water_us_fl_oz")),
        frozenset(("room_c", "room_f", "room_k")),
        frozenset(("wort_original_sg", "wort_original_plato")),
        frozenset(("wort_co2_g_per_l", "wort_volumes")),
        frozenset(("dissolving_c", "dissolving_f", "dissolving_k")),
        frozenset(("rating_gauge_kpa", "rating_gauge_bar", "rating_gauge_psi", "rating_gauge_pa")),
        frozenset(("time_h", "time_d", "time_min", "time_s")),
        frozenset(("age_h", "age_d", "age_min", "age_s")),
        frozenset(("sg", "plato")),
        frozenset(("original_sg", "original_plato")),
        frozenset(("cylinder_c", "cylinder_f", "cylinder_k")),
        frozenset(("line_m", "line_ft")),
        frozenset(("tube", "bore_mm", "bore_in")),
        frozenset(("rise_m", "rise_ft")),
        frozenset(("glass_l", "glass_ml", "glass_us_gal", "glass_imp_gal", "glass_us_fl_oz")),
        frozenset(("flow_l_per_min", "flow_us_fl_oz_per_s", "flow_us_gal_per_min", "pour_seconds")),
        frozenset(("tube", "resistance_bar_per_m", "resistance_psi_per_ft")),
        frozenset(("hardware_kpa", "hardware_bar", "hardware_psi", "hardware_pa")),
        frozenset(("fill_method", "fill_loss_co2_g_per_l", "fill_loss_volumes")),
        frozenset(("other_l", "other_ml", "other_us_gal", "other_imp_gal", "other_us_fl_oz")),
        frozenset(("other_co2_g_per_l", "other_volumes")),
        frozenset(("purge_gauge_kpa", "purge_gauge_bar", "purge_gauge_psi", "purge_gauge_pa")),
        frozenset(("start_oxygen_ppm", "start_oxygen_vol_percent")),
        frozenset(("gas_oxygen_ppm", "gas_oxygen_vol_percent")),
        frozenset(("oxygen_ppm", "oxygen_vol_percent")),
        frozenset(("pocket_l", "pocket_ml", "pocket_us_gal", "pocket_imp_gal", "pocket_us_fl_oz")),
        frozenset(("push_gauge_kpa", "push_gauge_bar", "push_gauge_psi", "push_gauge_pa")),
        frozenset(("headspace_percent", "keg_l", "keg_ml", "keg_us_gal", "keg_imp_gal", "keg_us_fl_oz")),
        frozenset(("dissolved_oxygen_ug_per_l", "dissolved_oxygen_ppb", "dissolved_oxygen_mg_per_l")),
        frozenset(("purge_c", "purge_f", "purge_k")),
        frozenset(("cylinder_size", "filling_ratio_g_per_g")),
        frozenset(("gross_g", "gross_kg", "gross_oz", "gross_lb")),
        frozenset(("tare_g", "tare_kg", "tare_oz", "tare_lb")),
        frozenset(("cylinder_size", "charge_g", "charge_kg", "charge_oz", "charge_lb")),
        frozenset(("gas_g", "gas_kg", "gas_oz", "gas_lb")),
        frozenset(("released_g", "released_kg", "released_oz", "released_lb")),
        frozenset(("room_m3", "room_ft3")),
        frozenset(("air_changes_per_h", "air_changes_per_d")),
        frozenset(("leak_g_per_h", "leak_oz_per_h")),
        frozenset(("bottle_l", "bottle_ml", "bottle_us_gal", "bottle_imp_gal", "bottle_us_fl_oz")),
        frozenset(("sugar_money_per_kg", "sugar_money_per_lb")),
        frozenset(("gas_money_per_kg", "gas_money_per_lb")),
        frozenset(("drink_money_per_l", "drink_money_per_us_gal")),
        frozenset(("keg_diameter_m", "keg_diameter_ft")),
        frozenset(("kla_per_h", "kla_per_d")),
        frozenset(("supply_g_per_h", "supply_oz_per_h")),
        frozenset(("burst_gauge_kpa", "burst_gauge_bar", "burst_gauge_psi", "burst_gauge_pa")),
        frozenset(("gauge_kpa", "gauge_bar", "gauge_psi", "gauge_pa", "abs_kpa", "abs_bar", "abs_psi", "abs_pa", "co2_g_per_l", "volumes")),
        frozenset(("tablet_g", "tablet_kg", "tablet_oz", "tablet_lb")),
        frozenset(("hot_day_c", "hot_day_f", "hot_day_k")),
        frozenset(("packaged_l", "packaged_ml", "packaged_us_gal", "packaged_imp_gal", "packaged_us_fl_oz", "batch_l", "batch_ml", "batch_us_gal", "batch_imp_gal", "batch_us_fl_oz")),
        frozenset(("loss_l", "loss_ml", "loss_us_gal", "loss_imp_gal", "loss_us_fl_oz")),
        frozenset(("co2_g_per_l", "volumes", "mass_g", "mass_kg", "mass_oz", "mass_lb")),
        frozenset(("cellar_c", "cellar_f", "cellar_k")),
        frozenset(("pasteurising_c", "pasteurising_f", "pasteurising_k")),
        frozenset(("scale_g", "scale_kg", "scale_oz", "scale_lb")),
        frozenset(("serving_c", "serving_f", "serving_k")),
    )
    plan_names = frozenset(("title", "beverage", "abv_percent", "extract_g_per_l", "fermentable_g_per_l", "yeast", "microbes", "original_sg", "original_plato", "current_sg", "current_plato", "final_sg", "final_plato", "expected_attenuation_percent", "extract_scale", "real_extract_model", "packaged_l", "packaged_ml", "packaged_us_gal", "packaged_imp_gal", "packaged_us_fl_oz", "batch_l", "batch_ml", "batch_us_gal", "batch_imp_gal", "batch_us_fl_oz", "loss_l", "loss_ml", "loss_us_gal", "loss_imp_gal", "loss_us_fl_oz", "co2_g_per_l", "volumes", "mass_g", "mass_kg", "mass_oz", "mass_lb", "warmest_c", "warmest_f", "warmest_k", "residual_co2_g_per_l", "residual_volumes", "fermenter_gauge_kpa", "fermenter_gauge_bar", "fermenter_gauge_psi", "fermenter_gauge_pa", "cold_crash", "crash_c", "crash_f", "crash_k", "fermenter_headspace_percent", "filling_c", "filling_f", "filling_k", "cellar_c", "cellar_f", "cellar_k", "room_c", "room_f", "room_k", "hot_day_c", "hot_day_f", "hot_day_k", "pasteurising_c", "pasteurising_f", "pasteurising_k", "altitude_m", "altitude_ft", "ambient_kpa", "ambient_bar", "ambient_psi", "ambient_pa", "sea_level_kpa", "sea_level_bar", "sea_level_psi", "sea_level_pa", "headspace_percent", "bottle_class", "rating_gauge_kpa", "rating_gauge_bar", "rating_gauge_psi", "rating_gauge_pa", "fill_order", "spare_percent", "sugar", "sugar_water_percent", "sugar_sg", "sugar_fermentable_percent", "sugar_kind", "syrup_water_l", "syrup_water_ml", "syrup_water_us_gal", "syrup_water_imp_gal", "syrup_water_us_fl_oz", "dissolving_c", "dissolving_f", "dissolving_k", "scale_g", "scale_kg", "scale_oz", "scale_lb", "tablet_g", "tablet_kg", "tablet_oz", "tablet_lb", "wort_original_sg", "wort_original_plato", "wort_current_sg", "wort_current_plato", "limit_attenuation_percent", "wort_co2_g_per_l", "wort_volumes", "yeast_million_per_ml", "age_h", "age_d", "age_min", "age_s", "filtered", "basis", "model", "residual_model", "yield_percent", "count_headspace", "count_syrup", "solubility_multiplier", "residual_multiplier", "yield_multiplier", "working", "start_co2_g_per_l", "start_volumes", "serving_c", "serving_f", "serving_k", "keg_l", "keg_ml", "keg_us_gal", "keg_imp_gal", "keg_us_fl_oz", "keg_diameter_m", "keg_diameter_ft", "keg_rating_gauge_kpa", "keg_rating_gauge_bar", "keg_rating_gauge_psi", "keg_rating_gauge_pa", "co2_percent", "air_abs_kpa", "air_abs_bar", "air_abs_psi", "air_abs_pa", "purge", "purge_gauge_kpa", "purge_gauge_bar", "purge_gauge_psi", "purge_gauge_pa", "cycles_count", "oxygen_ppm", "oxygen_vol_percent", "start_oxygen_ppm", "start_oxygen_vol_percent", "gas_oxygen_ppm", "gas_oxygen_vol_percent", "pocket_l", "pocket_ml", "pocket_us_gal", "pocket_imp_gal", "pocket_us_fl_oz", "push_gauge_kpa", "push_gauge_bar", "push_gauge_psi", "push_gauge_pa", "dissolved_oxygen_ug_per_l", "dissolved_oxygen_ppb", "dissolved_oxygen_mg_per_l", "method", "kla_per_h", "kla_per_d", "supply_g_per_h", "supply_oz_per_h", "burst_gauge_kpa", "burst_gauge_bar", "burst_gauge_psi", "burst_gauge_pa", "depth_m", "depth_ft", "wetting_kpa", "wetting_bar", "wetting_psi", "wetting_pa", "margin_kpa", "margin_bar", "margin_psi", "margin_pa", "cylinder_size", "charge_g", "charge_kg", "charge_oz", "charge_lb", "gas_loss_percent", "tube", "bore_mm", "bore_in", "line_m", "line_ft", "rise_m", "rise_ft", "fittings_multiplier", "hardware_kpa", "hardware_bar", "hardware_psi", "hardware_pa", "flow_l_per_min", "flow_us_fl_oz_per_s", "flow_us_gal_per_min", "pour_seconds", "glass_l", "glass_ml", "glass_us_gal", "glass_imp_gal", "glass_us_fl_oz", "viscosity_multiplier", "fill_method", "fill_loss_co2_g_per_l", "fill_loss_volumes", "released_g", "released_kg", "released_oz", "released_lb", "room_m3", "room_ft3", "air_changes_per_h", "air_changes_per_d", "bottle_l", "bottle_ml", "bottle_us_gal", "bottle_imp_gal", "bottle_us_fl_oz", "bottling_outfit_money", "bottle_money", "cap_money", "sugar_money_per_kg", "sugar_money_per_lb", "uses_count", "bottle_loss_percent", "outfit_money", "gas_money_per_kg", "gas_money_per_lb", "keg_loss_percent", "drink_money_per_l", "drink_money_per_us_gal", "batches_count", "bottles", "additions", "readings", "history"))
    dissolved_co2 = bound(dissolved_co2)
    keg_pressure = bound(keg_pressure)
    gas_blend = bound(gas_blend)
    keg_temperature = bound(keg_temperature)
    warmed_keg = bound(warmed_keg)
    spunding = bound(spunding)
    closed_fermentation = bound(closed_fermentation)
    stone_pressure = bound(stone_pressure)
    residual_co2 = bound(residual_co2)
    priming_sugar = bound(priming_sugar)
    primed_carbonation = bound(primed_carbonation)
    priming_wort = bound(priming_wort)
    priming_syrup = bound(priming_syrup)
    package_pressure = bound(package_pressure)
    package_carbonation = bound(package_carbonation)
    conditioning = bound(conditioning)
    conditioning_time = bound(conditioning_time)
    reyeasting = bound(reyeasting)
    gravity = bound(gravity)
    attenuation = bound(attenuation)
    final_gravity = bound(final_gravity)
    gravity_co2 = bound(gravity_co2)
    added_co2 = bound(added_co2)
    drink_properties = bound(drink_properties)
    co2_saturation = bound(co2_saturation)
    line_flow = bound(line_flow)
    line_length = bound(line_length)
    line_pressure = bound(line_pressure)
    handbook_line = bound(handbook_line)
    handbook_pressure = bound(handbook_pressure)
    filling_carbonation = bound(filling_carbonation)
    blend = bound(blend)
    purge_oxygen = bound(purge_oxygen)
    purge_cycles = bound(purge_cycles)
    sweep_oxygen = bound(sweep_oxygen)
    push_oxygen = bound(push_oxygen)
    oxygen_pickup = bound(oxygen_pickup)
    total_package_oxygen = bound(total_package_oxygen)
    gas_budget = bound(gas_budget)
    cylinder_left = bound(cylinder_left)
    cylinder_contents = bound(cylinder_contents)
    room_co2 = bound(room_co2)
    room_leak = bound(room_leak)
    ambient_pressure = bound(ambient_pressure)
    packaging_cost = bound(packaging_cost)
    break_even = bound(break_even)
    uptake_rate = bound(uptake_rate)
    carbonation_time = bound(carbonation_time)
    carbonation_progress = bound(carbonation_progress)
    burst_time = bound(burst_time)
    solubility_models = bound(solubility_models)
    carbonation_chart = bound(carbonation_chart)
    fill_list = bound(fill_list)
    bottle_doses = bound(bottle_doses)
    bottle_pressures = bound(bottle_pressures)
    bottle_verdicts = bound(bottle_verdicts)
    pressure_parts = bound(pressure_parts)
    conditioning_days = bound(conditioning_days)
    carbonation_curve = bound(carbonation_curve)
    carbonation_schedule = bound(carbonation_schedule)
    uptake_fit = bound(uptake_fit)
    line_balance = bound(line_balance)
    bottling = bound(bottling)
    kegging = bound(kegging)
