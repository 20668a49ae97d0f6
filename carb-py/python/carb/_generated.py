"""The functions of the library and their results."""

# Written by generate.py from the tables of the core; a test compares.

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Literal, TypeVar

from ._at import Bound, bound
from ._errors import CarbWarning
from ._result import Part, Result, function, output, part
from ._table import Table, table

if TYPE_CHECKING:
    from ._types import Number

__all__ = [
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
    "BelowFreezingWarning",
    "CarbonationDangerWarning",
    "CarbonationHighWarning",
    "ChartCommonPracticeWarning",
    "ChartPressureWarning",
    "ChartTemperatureWarning",
    "Co2Saturation",
    "Co2SaturationLiquid",
    "Co2SaturationVapour",
    "CoreWarmWarning",
    "DextrinLeftWarning",
    "DissolvedCo2",
    "DrinkProperties",
    "EuropeanTemperatureWarning",
    "ExtractHighWarning",
    "FermentableDangerWarning",
    "FermentableLeftWarning",
    "ForeignModelWarning",
    "GasPressureWarning",
    "Gravity",
    "GravityCo2",
    "GravityCo2Balling",
    "GravityCo2Theory",
    "GravityRangeWarning",
    "HeatedGlassWarning",
    "HenryTemperatureWarning",
    "KegPressure",
    "LactoseLeftWarning",
    "LiquidAlcoholWarning",
    "LiquidWarmWarning",
    "NearCriticalWarning",
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
    "PrimingSugar",
    "ResidualCo2",
    "ResidualHeldWarning",
    "SweetenerLeftWarning",
    "SweetenerPacketWarning",
    "ViscosityTemperatureWarning",
    "WineTemperatureWarning",
    "added_co2",
    "ambient_pressure",
    "attenuation",
    "bottle_classes",
    "bottle_sizes",
    "carbonation_ranges",
    "cautions",
    "co2_saturation",
    "cylinder_sizes",
    "dissolved_co2",
    "drink_properties",
    "equations",
    "fermentables",
    "gravity",
    "gravity_co2",
    "instruments",
    "keg_pressure",
    "keg_sizes",
    "package_carbonation",
    "package_pressure",
    "priming_sugar",
    "residual_co2",
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
    """CO2 left in a drink after fermentation, open to the air."""

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
    """CO2 left in a drink after fermentation, open to the air.

    Parameters
    ----------
    warmest_c, warmest_f, warmest_k : float or array, optional
        Highest temperature of the drink since active fermentation. From 0 to 45 in ``warmest_c``. Required.
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
    mass_g = output("mass_g", "Mass of priming sugar, as sold.")
    mass_kg = output("mass_kg", "Mass of priming sugar, as sold, kg.")
    mass_oz = output("mass_oz", "Mass of priming sugar, as sold, oz.")
    mass_lb = output("mass_lb", "Mass of priming sugar, as sold, lb.")
    dose_g_per_l = output("dose_g_per_l", "Sugar or other addition, as sold, per litre of drink, g/L.")


@function(PrimingSugar)
def priming_sugar(
    *,
    co2_g_per_l: Number | None = None,
    volumes: Number | None = None,
    warmest_c: Number | None = None,
    warmest_f: Number | None = None,
    warmest_k: Number | None = None,
    packaged_l: Number | None = None,
    packaged_ml: Number | None = None,
    packaged_us_gal: Number | None = None,
    packaged_imp_gal: Number | None = None,
    packaged_us_fl_oz: Number | None = None,
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
    warmest_c, warmest_f, warmest_k : float or array, optional
        Highest temperature of the drink since active fermentation. From 0 to 45 in ``warmest_c``. Required.
    packaged_l, packaged_ml, packaged_us_gal, packaged_imp_gal, packaged_us_fl_oz : float or array, optional
        Drink that reaches packages (not the batch size: trub and losses stay behind). From 0.001 to 1e+06 in
        ``packaged_l``. Required.
    altitude_m, altitude_ft : float or array, optional
        Height above sea level, from which the air pressure outside follows by ISO 2533. From -500 to 9000 in
        ``altitude_m``. Required: this, or another ambient.
    ambient_kpa, ambient_bar, ambient_psi, ambient_pa : float or array, optional
        Measured pressure of the air outside, at the station (not reduced to sea level). From 30 to 110 in
        ``ambient_kpa``. Required: this, or another ambient.
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
        Temperature of the drink when its package is closed. From -5 to 60 in ``filling_c``. Default: the
        warmest; counts by the physical basis only.
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
    >>> carb.priming_sugar(volumes=2.5, warmest_f=68, packaged_us_gal=5, altitude_m=0, sugar="sucrose").mass_g
    119.2044278929602
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
    >>> carb.package_pressure(volumes=2.4, temperature_c=30, headspace_percent=4, altitude_m=240).expected.gauge_kpa
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
    >>> carb.package_carbonation(gauge_bar=1.8, temperature_c=20, headspace_percent=4, altitude_m=240).total.co2_g_per_l
    4.564874213766723
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
    63
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
    47
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
    36
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
    38
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
        frozenset(("gauge_kpa", "gauge_bar", "gauge_psi", "gauge_pa", "abs_kpa", "abs_bar", "abs_psi", "abs_pa", "co2_g_per_l", "volumes")),
        frozenset(("temperature_c", "temperature_f", "temperature_k")),
        frozenset(("altitude_m", "altitude_ft", "ambient_kpa", "ambient_bar", "ambient_psi", "ambient_pa")),
        frozenset(("sea_level_kpa", "sea_level_bar", "sea_level_psi", "sea_level_pa")),
        frozenset(("warmest_c", "warmest_f", "warmest_k")),
        frozenset(("packaged_l", "packaged_ml", "packaged_us_gal", "packaged_imp_gal", "packaged_us_fl_oz")),
        frozenset(("filling_c", "filling_f", "filling_k")),
        frozenset(("room_c", "room_f", "room_k")),
        frozenset(("sg", "plato")),
        frozenset(("original_sg", "original_plato")),
        frozenset(("current_sg", "current_plato")),
        frozenset(("final_sg", "final_plato")),
        frozenset(("cylinder_c", "cylinder_f", "cylinder_k")),
        frozenset(("serving_c", "serving_f", "serving_k")),
        frozenset(("cellar_c", "cellar_f", "cellar_k")),
        frozenset(("hot_day_c", "hot_day_f", "hot_day_k")),
    )
    plan_names = frozenset(("title", "beverage", "abv_percent", "extract_g_per_l", "fermentable_g_per_l", "yeast", "packaged_l", "packaged_ml", "packaged_us_gal", "packaged_imp_gal", "packaged_us_fl_oz", "co2_g_per_l", "volumes", "warmest_c", "warmest_f", "warmest_k", "filling_c", "filling_f", "filling_k", "serving_c", "serving_f", "serving_k", "cellar_c", "cellar_f", "cellar_k", "room_c", "room_f", "room_k", "hot_day_c", "hot_day_f", "hot_day_k", "altitude_m", "altitude_ft", "ambient_kpa", "ambient_bar", "ambient_psi", "ambient_pa", "sea_level_kpa", "sea_level_bar", "sea_level_psi", "sea_level_pa", "headspace_percent", "sugar", "sugar_water_percent", "sugar_sg", "sugar_fermentable_percent", "sugar_kind", "basis", "model", "residual_model", "yield_percent", "count_headspace", "solubility_multiplier", "residual_multiplier", "yield_multiplier", "working"))
    dissolved_co2 = bound(dissolved_co2)
    keg_pressure = bound(keg_pressure)
    residual_co2 = bound(residual_co2)
    priming_sugar = bound(priming_sugar)
    package_pressure = bound(package_pressure)
    package_carbonation = bound(package_carbonation)
    gravity = bound(gravity)
    attenuation = bound(attenuation)
    gravity_co2 = bound(gravity_co2)
    added_co2 = bound(added_co2)
    drink_properties = bound(drink_properties)
    co2_saturation = bound(co2_saturation)
    ambient_pressure = bound(ambient_pressure)
    solubility_models = bound(solubility_models)
