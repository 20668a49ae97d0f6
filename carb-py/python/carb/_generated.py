"""The functions of the library and their results."""

# Written by generate.py from the tables of the core; a test compares.

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, Literal, TypeVar

from ._at import Bound, bound
from ._errors import CarbWarning
from ._plan import Bottling, job
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
    "CarbonationDangerWarning",
    "CarbonationHighWarning",
    "ChartCommonPracticeWarning",
    "ChartPressureWarning",
    "ChartTemperatureWarning",
    "ClassCarbonationDangerWarning",
    "ClassCarbonationHighWarning",
    "ClassPressureDangerWarning",
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
    "DextrinLeftWarning",
    "DissolvedCo2",
    "DrinkProperties",
    "EndNotToldWarning",
    "EuropeanTemperatureWarning",
    "ExtractHighWarning",
    "FermentableDangerWarning",
    "FermentableLeftWarning",
    "FermenterVacuumWarning",
    "FewCellsWarning",
    "FewReadingsWarning",
    "FilteredDrinkWarning",
    "FinalGravity",
    "ForeignModelWarning",
    "GasPressureWarning",
    "Gravity",
    "GravityCo2",
    "GravityCo2Balling",
    "GravityCo2Theory",
    "GravityRangeWarning",
    "HeatedGlassWarning",
    "HenryTemperatureWarning",
    "HotConditioningWarning",
    "KegPressure",
    "LactoseLeftWarning",
    "LiquidAlcoholWarning",
    "LiquidWarmWarning",
    "LowAttenuationWarning",
    "NearCriticalWarning",
    "NotForConditioningWarning",
    "OldDrinkWarning",
    "OriginalRangeWarning",
    "PackageCarbonation",
    "PackageCarbonationDissolved",
    "PackageCarbonationLeastDissolved",
    "PackageCarbonationLeastTotal",
    "PackageCarbonationTotal",
    "PackagePressure",
    "PackagePressureExpected",
    "PackagePressureWorst",
    "PressureDangerWarning",
    "PressureHighWarning",
    "PrimedCarbonation",
    "PrimedCarbonationAdded",
    "PrimingSugar",
    "PrimingSyrup",
    "PrimingSyrupLeast",
    "PrimingWort",
    "RatingDangerWarning",
    "ResidualCo2",
    "ResidualHeldWarning",
    "Reyeasting",
    "ReyeastingDryYeast",
    "StillFallingWarning",
    "StrongDrinkWarning",
    "SweetenerLeftWarning",
    "SweetenerPacketWarning",
    "UnfinishedDangerWarning",
    "UnsteadyGravityWarning",
    "ViscosityTemperatureWarning",
    "WildDangerWarning",
    "WineTemperatureWarning",
    "added_co2",
    "ambient_pressure",
    "attenuation",
    "bottle_classes",
    "bottle_doses",
    "bottle_pressures",
    "bottle_sizes",
    "bottle_verdicts",
    "bottling",
    "carbonation_ranges",
    "cautions",
    "co2_saturation",
    "conditioning",
    "conditioning_days",
    "conditioning_time",
    "cylinder_sizes",
    "dissolved_co2",
    "drink_properties",
    "equations",
    "fermentables",
    "fill_list",
    "final_gravity",
    "gravity",
    "gravity_co2",
    "instruments",
    "keg_pressure",
    "keg_sizes",
    "package_carbonation",
    "package_pressure",
    "pressure_parts",
    "primed_carbonation",
    "priming_sugar",
    "priming_syrup",
    "priming_wort",
    "residual_co2",
    "reyeasting",
    "solubility_models",
    "sources",
    "sweeteners",
    "units",
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


class DissolvedCo2(Result[T]):
    """CO2 that a drink holds at equilibrium under a pressure of CO2."""

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
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> DissolvedCo2[Any]:
    """CO2 that a drink holds at equilibrium under a pressure of CO2.

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
    """Regulator pressure that holds a drink at a carbonation."""

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
    beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
    abv_percent: Number | None = None,
    extract_g_per_l: Number | None = None,
    basis: Literal["handbook", "physical"] | None = None,
    model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
    solubility_multiplier: float | None = None,
    errors: Literal["raise", "nan"] = "raise",
    **unknown: Any,
) -> KegPressure[Any]:
    """Regulator pressure that holds a drink at a carbonation.

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
        Temperature at which bottles are conditioned. From -5 to 60 in ``room_c``. Default: 20 °C; counts by
        the physical basis only.
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
        Temperature at which bottles are conditioned. From -5 to 60 in ``room_c``. Default: 20 °C; counts by
        the physical basis only.
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
        Temperature at which bottles are conditioned. From -5 to 60 in ``room_c``. Default: 20 °C; counts by
        the physical basis only.
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
        Temperature at which bottles are conditioned. From -5 to 60 in ``room_c``. Required.
    time_h, time_d, time_min, time_s : float or array, optional
        Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature. From
        0 to 44444.4 in ``time_h``. Required.
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
    time_h = output("time_h", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature.")


class ConditioningTimeLeast(Part[T]):
    """The outputs of ConditioningTime that are least."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature.")


class ConditioningTimeMost(Part[T]):
    """The outputs of ConditioningTime that are most."""

    __slots__ = ()
    shown = ("time_h", "time_d")
    time_h = output("time_h", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature.")
    time_d = output("time_d", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature.")
    time_min = output("time_min", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature, min.")
    time_s = output("time_s", "Time: since the bottles were closed, on the date of a reading, or of a spell at one temperature.")


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
        Temperature at which bottles are conditioned. From -5 to 60 in ``room_c``. Required.
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
        Temperature at which bottles are conditioned. From -5 to 60 in ``room_c``. Default: 20 °C; counts by
        the physical basis only.
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
        Temperature that bottles reach on a hot day. From -5 to 60 in ``hot_day_c``. Default: 35 °C.
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
        Temperature at which bottles are conditioned. From -5 to 60 in ``room_c``. Default: 20 °C, where no
        history is given.
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
        - ``time_h``, ``time_d``, ``time_min``, ``time_s``: Time: since the bottles were closed, on the date
          of a reading, or of a spell at one temperature. From 0 to 44444.4 in ``time_h``. Required.

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
    82
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
    54
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
    62
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
    40
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
        Temperature at which bottles are conditioned. From -5 to 60 in ``room_c``. Default: 20 °C.
    hot_day_c, hot_day_f, hot_day_k : float, optional
        Temperature that bottles reach on a hot day. From -5 to 60 in ``hot_day_c``. Default: 35 °C.
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

        - ``time_h``, ``time_d``, ``time_min``, ``time_s``: Time: since the bottles were closed, on the date
          of a reading, or of a spell at one temperature. From 0 to 44444.4 in ``time_h``. Required.
        - ``current_sg``: Specific gravity 20/20 °C as it is now. From 0.98 to 1.165 in ``current_sg``.
          Required: this, or another reading.
        - ``current_plato``: Apparent extract as it is now. From -5.2 to 37 in ``current_plato``. Required:
          this, or another reading.

        A data frame, or a mapping of columns, holds rows too.
    history : sequence of mappings, optional
        Temperatures of the filled bottles, one spell after another; the last one goes on. A row has:

        - ``temperature_c``, ``temperature_f``, ``temperature_k``: Temperature of the drink. From -5 to 60 in
          ``temperature_c``. Required.
        - ``time_h``, ``time_d``, ``time_min``, ``time_s``: Time: since the bottles were closed, on the date
          of a reading, or of a spell at one temperature. From 0 to 44444.4 in ``time_h``. Required.

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
    >>> [row.filled_count for row in batch.bottles]
    [24, 23]
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
        frozenset(("altitude_m", "altitude_ft", "ambient_kpa", "ambient_bar", "ambient_psi", "ambient_pa")),
        frozenset(("warmest_c", "warmest_f", "warmest_k")),
        frozenset(("fermenter_gauge_kpa", "fermenter_gauge_bar", "fermenter_gauge_psi", "fermenter_gauge_pa")),
        frozenset(("crash_c", "crash_f", "crash_k")),
        frozenset(("residual_co2_g_per_l", "residual_volumes")),
        frozenset(("syrup_water_l", "syrup_water_ml", "syrup_water_us_gal", "syrup_water_imp_gal", "syrup_water_us_fl_oz")),
        frozenset(("filling_c", "filling_f", "filling_k")),
        frozenset(("room_c", "room_f", "room_k")),
        frozenset(("wort_original_sg", "wort_original_plato")),
        frozenset(("wort_co2_g_per_l", "wort_volumes")),
        frozenset(("dissolving_c", "dissolving_f", "dissolving_k")),
        frozenset(("rating_gauge_kpa", "rating_gauge_bar", "rating_gauge_psi", "rating_gauge_pa")),
        frozenset(("time_h", "time_d", "time_min", "time_s")),
        frozenset(("age_h", "age_d", "age_min", "age_s")),
        frozenset(("sg", "plato")),
        frozenset(("original_sg", "original_plato")),
        frozenset(("current_sg", "current_plato")),
        frozenset(("final_sg", "final_plato")),
        frozenset(("cylinder_c", "cylinder_f", "cylinder_k")),
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
    plan_names = frozenset(("title", "beverage", "abv_percent", "extract_g_per_l", "fermentable_g_per_l", "yeast", "microbes", "original_sg", "original_plato", "current_sg", "current_plato", "final_sg", "final_plato", "expected_attenuation_percent", "extract_scale", "real_extract_model", "packaged_l", "packaged_ml", "packaged_us_gal", "packaged_imp_gal", "packaged_us_fl_oz", "batch_l", "batch_ml", "batch_us_gal", "batch_imp_gal", "batch_us_fl_oz", "loss_l", "loss_ml", "loss_us_gal", "loss_imp_gal", "loss_us_fl_oz", "co2_g_per_l", "volumes", "mass_g", "mass_kg", "mass_oz", "mass_lb", "warmest_c", "warmest_f", "warmest_k", "residual_co2_g_per_l", "residual_volumes", "fermenter_gauge_kpa", "fermenter_gauge_bar", "fermenter_gauge_psi", "fermenter_gauge_pa", "cold_crash", "crash_c", "crash_f", "crash_k", "fermenter_headspace_percent", "filling_c", "filling_f", "filling_k", "cellar_c", "cellar_f", "cellar_k", "room_c", "room_f", "room_k", "hot_day_c", "hot_day_f", "hot_day_k", "pasteurising_c", "pasteurising_f", "pasteurising_k", "altitude_m", "altitude_ft", "ambient_kpa", "ambient_bar", "ambient_psi", "ambient_pa", "sea_level_kpa", "sea_level_bar", "sea_level_psi", "sea_level_pa", "headspace_percent", "bottle_class", "rating_gauge_kpa", "rating_gauge_bar", "rating_gauge_psi", "rating_gauge_pa", "fill_order", "spare_percent", "sugar", "sugar_water_percent", "sugar_sg", "sugar_fermentable_percent", "sugar_kind", "syrup_water_l", "syrup_water_ml", "syrup_water_us_gal", "syrup_water_imp_gal", "syrup_water_us_fl_oz", "dissolving_c", "dissolving_f", "dissolving_k", "scale_g", "scale_kg", "scale_oz", "scale_lb", "tablet_g", "tablet_kg", "tablet_oz", "tablet_lb", "wort_original_sg", "wort_original_plato", "wort_current_sg", "wort_current_plato", "limit_attenuation_percent", "wort_co2_g_per_l", "wort_volumes", "yeast_million_per_ml", "age_h", "age_d", "age_min", "age_s", "filtered", "basis", "model", "residual_model", "yield_percent", "count_headspace", "count_syrup", "solubility_multiplier", "residual_multiplier", "yield_multiplier", "working", "serving_c", "serving_f", "serving_k", "bottles", "additions", "readings", "history"))
    dissolved_co2 = bound(dissolved_co2)
    keg_pressure = bound(keg_pressure)
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
    ambient_pressure = bound(ambient_pressure)
    solubility_models = bound(solubility_models)
    fill_list = bound(fill_list)
    bottle_doses = bound(bottle_doses)
    bottle_pressures = bound(bottle_pressures)
    bottle_verdicts = bound(bottle_verdicts)
    pressure_parts = bound(pressure_parts)
    conditioning_days = bound(conditioning_days)
    bottling = bound(bottling)
