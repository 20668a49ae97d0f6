"""The types of the functions of the library and of their results."""

# Written by generate.py from the tables of the core; a test compares.


from collections.abc import Mapping
from typing import Any, Generic, Literal, TypedDict, TypeVar, overload

import numpy as np
from numpy.typing import NDArray
from typing_extensions import Unpack

from ._at import Bound
from ._errors import CarbWarning
from ._plan import Bottling
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

def solubility_models(**given: Unpack[_SolubilityModelsInputs]) -> Table: ...
def fill_list(**given: Unpack[_FillListInputs]) -> Table: ...
def bottle_doses(**given: Unpack[_BottleDosesInputs]) -> Table: ...
def bottle_pressures(**given: Unpack[_BottlePressuresInputs]) -> Table: ...
def bottle_verdicts(**given: Unpack[_BottleVerdictsInputs]) -> Table: ...
def pressure_parts(**given: Unpack[_PressurePartsInputs]) -> Table: ...
def conditioning_days(**given: Unpack[_ConditioningDaysInputs]) -> Table: ...
def fermentables() -> Table: ...
def sweeteners() -> Table: ...
def carbonation_ranges() -> Table: ...
def bottle_sizes() -> Table: ...
def bottle_classes() -> Table: ...
def keg_sizes() -> Table: ...
def cylinder_sizes() -> Table: ...
def equations() -> Table: ...
def sources() -> Table: ...
def cautions() -> Table: ...
def units() -> Table: ...
def instruments() -> Table: ...
def bottling(**given: Unpack[_BottlingInputs]) -> Bottling: ...

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
        beverage: Literal["water", "beer", "cider", "mead", "wine", "soft_drink"] | None = None,
        abv_percent: float | None = None,
        extract_g_per_l: float | None = None,
        basis: Literal["handbook", "physical"] | None = None,
        model: Literal["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"] | None = None,
        solubility_multiplier: float | None = None,
        co2_g_per_l: float | None = None,
        volumes: float | None = None,
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
        fermenter_headspace_percent: float | None = None,
        residual_model: Literal["table", "equilibrium"] | None = None,
        residual_multiplier: float | None = None,
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
        fermentable_g_per_l: float | None = None,
        yeast: Literal["live", "none"] | None = None,
        yield_percent: float | None = None,
        count_headspace: bool | None = None,
        headspace_percent: float | None = None,
        filling_c: float | None = None,
        filling_f: float | None = None,
        filling_k: float | None = None,
        room_c: float | None = None,
        room_f: float | None = None,
        room_k: float | None = None,
        yield_multiplier: float | None = None,
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
        extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
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
        sg: float | None = None,
        plato: float | None = None,
        original_sg: float | None = None,
        original_plato: float | None = None,
        current_sg: float | None = None,
        current_plato: float | None = None,
        real_extract_model: Literal["balling", "quotient"] | None = None,
        expected_attenuation_percent: float | None = None,
        final_sg: float | None = None,
        final_plato: float | None = None,
        addition: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom", "lactose", "maltodextrin", "sucralose", "aspartame", "saccharin", "stevia", "erythritol", "xylitol", "sorbitol", "sweetener_packets"] | None = None,
        dose_g_per_l: float | None = None,
        viscosity_multiplier: float | None = None,
        cylinder_c: float | None = None,
        cylinder_f: float | None = None,
        cylinder_k: float | None = None,
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
    def ambient_pressure(self, **given: Unpack[_AmbientPressureInputs[float]]) -> AmbientPressure[float]: ...
    @overload
    def ambient_pressure(self, **given: Unpack[_AmbientPressureInputs[Number]]) -> AmbientPressure[NDArray[np.float64]]: ...
    def solubility_models(self, **given: Unpack[_SolubilityModelsInputs]) -> Table: ...
    def fill_list(self, **given: Unpack[_FillListInputs]) -> Table: ...
    def bottle_doses(self, **given: Unpack[_BottleDosesInputs]) -> Table: ...
    def bottle_pressures(self, **given: Unpack[_BottlePressuresInputs]) -> Table: ...
    def bottle_verdicts(self, **given: Unpack[_BottleVerdictsInputs]) -> Table: ...
    def pressure_parts(self, **given: Unpack[_PressurePartsInputs]) -> Table: ...
    def conditioning_days(self, **given: Unpack[_ConditioningDaysInputs]) -> Table: ...
    def bottling(self, **given: Unpack[_BottlingInputs]) -> Bottling: ...
