"""A program that a strict type checker accepts; the marked lines are those that it must refuse."""

from typing import Any

import carb
import numpy as np
from numpy.typing import NDArray
from typing_extensions import assert_type

keg: carb.KegPressure[float] = carb.keg_pressure(volumes=2.5, temperature_f=38, altitude_m=0, beverage="beer")
psi: float = keg.gauge_psi
worst: float = carb.package_pressure(volumes=2.4, temperature_c=30, altitude_m=0).worst.gauge_bar
many: NDArray[np.float64] = carb.gravity(sg=[1.04, 1.05], errors="nan").plato
grid: NDArray[np.float64] = carb.dissolved_co2(gauge_psi=np.arange(9.0), temperature_c=4, altitude_m=0).volumes
here = carb.at(altitude_m=240, beverage="cider")
dose: float = here.priming_sugar(volumes=2.4, warmest_c=20.5, packaged_l=19.2, fermentable_g_per_l=0).mass_g
some: NDArray[np.float64] = here.residual_co2(warmest_c=[18, 20]).volumes
day: carb.Plan = here.plan({"volumes": 2.4})
batch: carb.Bottling = carb.bottling(
    packaged_l=19.2, volumes=2.4, warmest_c=20.5, altitude_m=240, bottles=[{"bottle_ml": 500, "count": 40}]
)
columns: carb.Bottling = here.bottling(packaged_l=19.2, bottles={"bottle_ml": [500, 330], "count": np.array([24, 30])})
said: list[str] = [batch.page(), batch.to_json(), *batch.to_dict()] + [str(batch.danger)]
spells = ({"temperature_c": 21, "time_d": 5}, {"temperature_c": 14.5, "time_d": 30})
days: carb.Table = carb.conditioning_days(history=spells, room_c=20)
crates: carb.Table = carb.at(bottles=[{"bottle_ml": 500, "count": 40}]).fill_list(packaged_l=10)
models: carb.Table = here.solubility_models(volumes=2.5, temperature_c=4, basis="physical")
names: tuple[str, ...] = carb.fermentables().columns + tuple(row.model for row in models)
count: int = len(models) + len(models[:2]) + len(carb.sweeteners()["lactose"])
texts: list[str] = [caution.text for caution in keg.cautions] + [source.citation for source in keg.sources]
sure: carb.Uncertainty = keg.uncertainty({"volumes": 0.1}, temperature_f="thermometer", altitude_m=("range", 50))
estimate: carb.Estimate = sure["gauge_psi"]
entries: tuple[carb.Estimate, ...] = sure.outputs + sure[:1]
reasons: list[str] = [share.name for share in estimate.budget] + [estimate.noun, estimate.method]
markdown: str = keg.working("markdown") + keg.working(form="text")
claim: dict[str, object] = {"quantity": "alcohol", "value": "5.1", "unit": "abv_percent", "original_sg": 1.05}
found: carb.Crosscheck = carb.crosscheck([claim], most_readings=3, progress=lambda done, total: print(done / total))
one: carb.Crosscheck = carb.crosscheck(quantity="alcohol", value=5.1, unit="abv_percent")
of_columns: carb.Crosscheck = carb.crosscheck({"quantity": ["alcohol"], "value": np.array([5.1])})
of_a_file: carb.Crosscheck = carb.crosscheck(carb.read_claims("claims.csv"))
told: list[str] = [found.page(), found.to_json(), *found.to_columns(), *found.to_dict()]
verdicts: list[str] = [row.verdict for row in found.claims] + [program.text for program in found.programs]
unsafe: bool = found.danger and found.answered
frames: list[object] = [models.to_frame(), sure.to_frame(), found.to_frame(), models[:2].to_frame()]
doses: list[object] = estimate.budget.to_columns()["share"] + sure.models.to_columns()["model"]


class Series:
    """What a type checker sees of a column of a data frame."""

    name = "volumes"

    def __array__(self, *args: Any, **kwargs: Any) -> NDArray[np.float64]:
        return np.zeros(3)


assert_type(keg, carb.KegPressure[float])
assert_type(keg.gauge_psi, float)
assert_type(keg.cautions, tuple[carb.Caution, ...])
assert_type(carb.keg_pressure(volumes=np.array([2.4, 2.5]), temperature_f=38).gauge_psi, NDArray[np.float64])
assert_type(carb.keg_pressure(volumes=[2.4, 2.5], temperature_f=np.arange(2.0)).abs_bar, NDArray[np.float64])
assert_type(carb.keg_pressure(volumes=Series(), temperature_f=38), carb.KegPressure[Any])
assert_type(carb.package_pressure(volumes=2.4, temperature_c=30).worst, carb.PackagePressureWorst[float])
assert_type(here.keg_pressure(volumes=2.5, temperature_f=38).gauge_psi, float)
assert_type(here.context, dict[str, Any])
assert_type(carb.ufunc.keg_pressure, np.ufunc)
assert_type(carb.ufunc.of("keg_pressure", "volumes", gives="gauge_psi", temperature_c=4, altitude_m=0), np.ufunc)
assert_type(carb.convert(38.0, "f", "c"), float)
assert_type(carb.convert([38.0], "f", "c"), NDArray[np.float64])
there: carb.At = here.at(volumes=2.4)

carb.keg_pressure(volumes=2.5, tempertaure_c=4)  # type: ignore[call-overload]
carb.keg_pressure(volumes=2.5, beverage="tea")  # type: ignore[call-overload]
keg.gauge_atm  # type: ignore[attr-defined]
keg.worst  # type: ignore[attr-defined]
carb.solubility_models(volumes=2.5, tempertaure_c=4)  # type: ignore[call-arg]
carb.solubility_models(volumes=[2.4, 2.5], temperature_c=4)  # type: ignore[arg-type]
carb.bottling(packagd_l=19.2)  # type: ignore[call-arg]
carb.bottling(bottles=[500, 330])  # type: ignore[list-item]
carb.bottling(bottles=40)  # type: ignore[arg-type]
carb.bottling(fill_order="any")  # type: ignore[arg-type]
here.bottling(serving_c=4)  # type: ignore[call-arg]
batch.danger = False  # type: ignore[misc]
carb.fill_list(history=spells)  # type: ignore[call-arg]
carb.fermentables(sugar="honey")  # type: ignore[call-arg]
models["name"] = 1  # type: ignore[index]
keg.working("html")  # type: ignore[arg-type]
keg.uncertainty(volumes=[0.1])  # type: ignore[arg-type]
sure.outputs = ()  # type: ignore[misc]
carb.crosscheck("claims.csv")  # type: ignore[arg-type]
carb.crosscheck([claim], progress=print, most_readings="10")  # type: ignore[arg-type]
carb.crosscheck([claim], progress=lambda done: None)  # type: ignore[arg-type, misc]
found.claims = found.claims  # type: ignore[misc]
