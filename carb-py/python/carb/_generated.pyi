"""The types of the functions of the library and of their results."""

# Written by generate.py from the tables of the core; a test compares.


from typing import Any, Generic, Literal, TypedDict, TypeVar, overload

import numpy as np
from numpy.typing import NDArray
from typing_extensions import Unpack

from ._at import Bound
from ._errors import CarbWarning
from ._result import Part, Result
from ._table import Table
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
    warmest_c: N | None
    warmest_f: N | None
    warmest_k: N | None
    packaged_l: N | None
    packaged_ml: N | None
    packaged_us_gal: N | None
    packaged_imp_gal: N | None
    packaged_us_fl_oz: N | None
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

def solubility_models(**given: Unpack[_SolubilityModelsInputs]) -> Table: ...
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
        residual_model: Literal["table", "equilibrium"] | None = None,
        residual_multiplier: float | None = None,
        packaged_l: float | None = None,
        packaged_ml: float | None = None,
        packaged_us_gal: float | None = None,
        packaged_imp_gal: float | None = None,
        packaged_us_fl_oz: float | None = None,
        sugar: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom"] | None = None,
        sugar_water_percent: float | None = None,
        sugar_sg: float | None = None,
        sugar_fermentable_percent: float | None = None,
        sugar_kind: Literal["hexose", "disaccharide", "trisaccharide"] | None = None,
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
        sg: float | None = None,
        plato: float | None = None,
        extract_scale: Literal["asbc", "lincoln", "quick"] | None = None,
        original_sg: float | None = None,
        original_plato: float | None = None,
        current_sg: float | None = None,
        current_plato: float | None = None,
        real_extract_model: Literal["balling", "quotient"] | None = None,
        final_sg: float | None = None,
        final_plato: float | None = None,
        addition: Literal["dextrose_monohydrate", "dextrose_anhydrous", "sucrose", "dry_malt_extract", "honey", "maple_syrup", "table_sugar", "icing_sugar", "turbinado", "demerara", "brown_sugar", "maple_sugar", "invert_syrup", "hfcs_42", "hfcs_55", "high_maltose_syrup", "molasses", "blackstrap_molasses", "cane_syrup", "agave_syrup", "candi_syrup", "liquid_malt_extract", "apple_juice", "apple_concentrate", "grape_juice", "orange_juice", "pineapple_juice", "raisins", "dates", "corn_syrup_42", "corn_syrup_63", "custom", "lactose", "maltodextrin", "sucralose", "aspartame", "saccharin", "stevia", "erythritol", "xylitol", "sorbitol", "sweetener_packets"] | None = None,
        dose_g_per_l: float | None = None,
        viscosity_multiplier: float | None = None,
        cylinder_c: float | None = None,
        cylinder_f: float | None = None,
        cylinder_k: float | None = None,
        title: str | None = None,
        serving_c: float | None = None,
        serving_f: float | None = None,
        serving_k: float | None = None,
        cellar_c: float | None = None,
        cellar_f: float | None = None,
        cellar_k: float | None = None,
        hot_day_c: float | None = None,
        hot_day_f: float | None = None,
        hot_day_k: float | None = None,
        working: bool | None = None,
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
    def package_pressure(self, **given: Unpack[_PackagePressureInputs[float]]) -> PackagePressure[float]: ...
    @overload
    def package_pressure(self, **given: Unpack[_PackagePressureInputs[Number]]) -> PackagePressure[NDArray[np.float64]]: ...
    @overload
    def package_carbonation(self, **given: Unpack[_PackageCarbonationInputs[float]]) -> PackageCarbonation[float]: ...
    @overload
    def package_carbonation(self, **given: Unpack[_PackageCarbonationInputs[Number]]) -> PackageCarbonation[NDArray[np.float64]]: ...
    @overload
    def gravity(self, **given: Unpack[_GravityInputs[float]]) -> Gravity[float]: ...
    @overload
    def gravity(self, **given: Unpack[_GravityInputs[Number]]) -> Gravity[NDArray[np.float64]]: ...
    @overload
    def attenuation(self, **given: Unpack[_AttenuationInputs[float]]) -> Attenuation[float]: ...
    @overload
    def attenuation(self, **given: Unpack[_AttenuationInputs[Number]]) -> Attenuation[NDArray[np.float64]]: ...
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
