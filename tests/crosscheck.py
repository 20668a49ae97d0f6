"""Measures the cross-check against programs that were invented, whose habits are known (`programs.py`).

- The generator with the library's habits has to print what the library prints, of every quantity; and with other
  habits what was published of them, as far as anything was. Else nothing below would mean anything.
- Single claims: is what they were made with among the readings that are listed? What is said of them?
- Numbers drawn at random: how many are "explained" although there is nothing to explain?
- Programs of six claims: is the truth among the survivors, how many survive, and is it the first of them?

The truth counts as found where a reading's value, or each of a survivor's, lies within a tenth of the last printed
digit's step of what was computed before it was printed. Several habits may do the same; any of them will do.

    python tests/crosscheck.py [--verbose] [--singles N] [--random N] [--programs N] [--first SEED]

With --verbose every miss is printed with its seed, its claim and its truth.
"""

import argparse
import math
import statistics
import sys
import time
import warnings
from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Sequence
from typing import Any, TypeVar

import carb
import programs
from programs import Case, Row

VERDICTS = ("agrees", "within_uncertainty", "explained", "possible", "not_explained")
# Of the last printed digit's step.
NEAR = 0.1
MOST_READINGS = 100_000
CLAIMS_PER_CALL = 24

# What has to hold.
LISTED = 99.0
FALSELY_EXPLAINED = 10.0
SURVIVES = 99.0
MEDIAN_SURVIVORS = 2
MOST_SURVIVORS = 6
SURVIVORS_SHARE = 90.0
FIRST = 85.0

T = TypeVar("T")


class Report:
    """Figures as they come, and which of them fall short."""

    def __init__(self, verbose: bool) -> None:
        self.verbose = verbose
        self.short: list[str] = []

    def figure(
        self, what: str, value: float, unit: str, *, least: float | None = None, most: float | None = None
    ) -> None:
        asked = f" (at least {least:g})" if least is not None else f" (at most {most:g})" if most is not None else ""
        missed = (least is not None and value < least) or (most is not None and value > most)
        print(f"  {what}: {value:.4g}{unit}{asked}{'  MISSED' if missed else ''}")
        if missed:
            self.short.append(f"{what}: {value:.4g}{unit}{asked}")

    def miss(self, text: str) -> None:
        if self.verbose:
            print(f"    {text}")


def percent(count: int, total: int) -> float:
    return 100 * count / total if total else float("nan")


def step(row: Row) -> float:
    """One step of the last printed digit."""
    _, _, decimals = row["value"].partition(".")
    return float(10 ** -len(decimals))


def near(value: float, exact: float, row: Row) -> bool:
    return abs(value - exact) <= NEAR * step(row)


def batches(items: Sequence[T], size: int) -> Iterator[Sequence[T]]:
    for start in range(0, len(items), size):
        yield items[start : start + size]


def ask(rows: Iterable[Row]) -> dict[str, Any]:
    answer: dict[str, Any] = carb.crosscheck(claims=list(rows), most_readings=MOST_READINGS).to_dict()
    return answer


def told(row: Row) -> str:
    inputs = ", ".join(f"{k} {v}" for k, v in row.items() if k not in ("label", "program", "quantity", "value", "unit"))
    return f"{row['program']}: {row['quantity']} {row['value']} {row['unit']} of {inputs}"


def habits(truth: dict[str, str]) -> str:
    """The habits in which a program departs from the library."""
    departs = [f"{question}={habit}" for question, habit in truth.items() if habit != programs.OURS[question]]
    return ", ".join(departs) or "the library's own habits"


# ---------------------------------------------------------------------------------------------- the library's habits


def library(row: Row) -> float:
    """The library's number for a claim, by its own functions."""
    unit = row["unit"]
    given = {k: v for k, v in row.items() if k not in ("label", "program", "quantity", "value", "unit")}
    match row["quantity"]:
        case "priming_sugar":
            dose = carb.priming_sugar(**given)
            found = dose.dose_g_per_l if unit == "g_per_l" else getattr(dose, f"mass_{unit}")
        case "residual_co2":
            found = getattr(carb.residual_co2(**given), unit)
        case "dissolved_co2":
            found = getattr(carb.dissolved_co2(**given), unit)
        case "keg_pressure":
            found = getattr(carb.keg_pressure(**given), f"gauge_{unit}")
        case "package_pressure":
            found = getattr(carb.package_pressure(**given).expected, f"gauge_{unit}")
        case "bottle_count":
            bottle = {k: v for k, v in given.items() if k.startswith("bottle_")}
            drink = {k: v for k, v in given.items() if k.startswith("packaged_")}
            [fill] = carb.fill_list(**drink, bottles=[{**bottle, "count": 2000}])
            found = fill.filled_count
        case "line_length":
            found = getattr(carb.handbook_line(**given), f"line_{unit}")
        case "gas_used":
            found = getattr(carb.gas_budget(**given).total, f"gas_{unit}")
        case "purge_cycles":
            found = carb.purge_cycles(**given).cycles_count
        case _:
            found = carb.attenuation(**given).abv_percent
    return float(found)


def check_ours(report: Report, first: int, count: int) -> None:
    worst: dict[str, float] = defaultdict(float)
    same = 0
    for seed in range(first, first + count):
        row, _, exact = programs.one_of_ours(seed)
        found = library(row)
        # A number halfway between two printed ones may be printed as either.
        apart = abs(found - exact) / step(row)
        worst[row["quantity"]] = max(worst[row["quantity"]], apart)
        if apart <= 0.05:
            same += 1
        else:
            report.miss(f"ours {seed}: {told(row)}: the generator has {exact!r}, the library {found!r}")
    print(f"the generator with the library's habits, {count} claims of {len(worst)} quantities:")
    for quantity, apart in sorted(worst.items()):
        print(f"    {quantity}: at worst {apart:.1e} of the last digit's step apart")
    report.figure("same as the library", percent(same, count), " %", least=100.0)
    report.figure("quantities", len(worst), "", least=len(programs.QUANTITIES))


# Miller, BrewingTechniques 1994, Table I: volumes at a gauge pressure in psi, °F.
CHART = {
    (38.0, 10.0): 2.38, (38.0, 12.0): 2.57, (38.0, 14.0): 2.75, (38.0, 16.0): 2.94, (44.0, 12.0): 2.30,
    (44.0, 16.0): 2.64, (44.0, 20.0): 2.99, (32.0, 8.0): 2.48, (32.0, 12.0): 2.90,
}


def published() -> Iterator[tuple[str, float, float, float]]:
    """What was published, the generator's number, the published one, and what they may lie apart."""

    def made(row: Row, **habits: str) -> float:
        return programs.answer({"altitude_m": 0.0, **row}, programs.OURS | habits)[0]

    # Worst differences of the fits from the whole chart; of the polynomial three times the rms.
    for model, worst in (("chart_fit", 0.044), ("quadratic", 0.036), ("brewery_polynomial", 0.063)):
        for (f, psi), volumes in CHART.items():
            row = {"quantity": "dissolved_co2", "unit": "volumes", "gauge_psi": psi, "temperature_f": f}
            yield f"the printed chart by {model}", made(row, beer_solubility=model), volumes, worst
    row = {"quantity": "keg_pressure", "unit": "bar", "co2_g_per_l": 5.5, "temperature_c": 7.0}
    yield "worked example of the European form", made(row, beer_solubility="european"), 1.2, 0.05
    row = {"quantity": "dissolved_co2", "unit": "volumes", "temperature_f": 38.0}
    blend = {"gauge_psi": 40.0, "co2_percent": 25.0}
    yield "the trade's 40 psi of a quarter CO2", made({**row, **blend}, blend="absolute"), 1.32, 0.01
    row = {"quantity": "keg_pressure", "unit": "psi", "volumes": 2.5, "temperature_f": 32.0}
    high = {"altitude_m": 12000 * 0.3048}
    yield "a brewery's chart for 12000 ft", made({**row, **high}, altitude="rule"), 14.4, 0.1
    # Hibberd's table of residual CO2, °C.
    for c, volumes in ((10.0, 1.2), (14.0, 1.05), (18.0, 0.93), (20.0, 0.88)):
        row = {"quantity": "residual_co2", "unit": "volumes", "warmest_c": c}
        for model in ("table", "water_handbook"):
            yield f"Hibberd's table by {model}", made(row, residual=model), volumes, 0.02
    # Hanghofer, beer under the air, g/L.
    for c, grams in ((4.0, 2.80), (20.0, 1.65)):
        row = {"quantity": "residual_co2", "unit": "co2_g_per_l", "warmest_c": c}
        yield "Hanghofer's beer", made(row, residual="european"), grams, 0.03
    # IAPWS G7-04 prints ln(kH/GPa) at 300 K; the CRC Handbook has Carroll's mole fraction at 0 °C and 100 kPa.
    yield "IAPWS G7-04", programs.iapws(300.0) / programs.of_henry(1e9 * math.exp(-1.7508), 300.0), 1.0, 1e-4
    henry = 1e5 * (1 + programs.virial(1e5, 273.15)[0]) / 1.337e-3
    yield "Carroll in the CRC Handbook", programs.carroll(273.15) / programs.of_henry(henry, 273.15), 1.0, 0.002


def check_published(report: Report, *_: int) -> None:
    apart = [(what, abs(found - wanted), allowed) for what, found, wanted, allowed in published()]
    for what, error, allowed in apart:
        if error > allowed:
            report.miss(f"{what}: {error:.3g} apart")
    print("the generator's other habits against what was published:")
    kept = sum(error <= allowed for _, error, allowed in apart)
    report.figure(f"of {len(apart)} published values met", percent(kept, len(apart)), " %", least=100.0)


# ---------------------------------------------------------------------------------------------- claims


def departs(case: Case) -> bool:
    """Whether the program prints another number than it would with the library's habits."""
    row, _, _ = case
    ours, _ = programs.answer(row, programs.OURS)
    decimals = len(row["value"].partition(".")[2])
    return f"{ours:.{decimals}f}" != str(row["value"])


def table(title: str, verdicts: dict[str, Counter[str]], *more: str) -> None:
    print(f"  {title}:")
    heads = "".join(f"{head:>10}" for head in ("listed", *more))
    print("    " + f"{'':18}{'claims':>8}" + "".join(f"{verdict:>20}" for verdict in VERDICTS) + heads)
    for name in ("all", *programs.QUANTITIES):
        counts = verdicts.get(name, Counter())
        if not (total := counts["claims"]):
            continue
        shares = "".join(f"{percent(counts[verdict], total):>18.1f} %" for verdict in VERDICTS)
        others = "".join(f"{percent(counts[what], total):>8.1f} %" for what in ("listed", *more))
        print(f"    {name:18}{total:>8}{shares}{others}")


def check_singles(report: Report, first: int, count: int) -> None:
    cases = [(seed, programs.single(seed)) for seed in range(first, first + count)]
    other: dict[str, Counter[str]] = {"all": Counter()}
    same: dict[str, Counter[str]] = {"all": Counter()}
    listed = 0
    for batch in batches(cases, CLAIMS_PER_CALL):
        answers = ask(row for _, (row, _, _) in batch)["claims"]
        for (seed, case), answer in zip(batch, answers, strict=True):
            row, truth, exact = case
            group = other if departs(case) else same
            hits = [near(reading["value"], exact, row) for reading in answer.get("readings", ())]
            found, leads = any(hits), hits[:1] == [True]
            listed += found
            for counts in (group["all"], group.setdefault(row["quantity"], Counter())):
                counts.update({"claims": 1, "listed": int(found), "first": int(leads), answer.get("verdict", "error"): 1})
            if not found:
                said = answer.get("error") or f"{answer['verdict']}, {len(answer['readings'])} readings"
                report.miss(f"single {seed}: {told(row)}, computed as {exact:.6g} by {habits(truth)}: {said}")
    print(f"{count} single claims:")
    report.figure("what they were made with is listed", percent(listed, count), " %", least=LISTED)
    reached = percent(other["all"]["explained"], other["all"]["claims"])
    print(f"    of {other['all']['claims']} that print another number than ours {reached:.1f} % are called explained")
    table("verdicts on claims that print another number than ours", other, "first")
    table("verdicts on claims that print our number", same)


def check_random(report: Report, first: int, count: int) -> None:
    rows = [(seed, programs.random_wrong(seed)) for seed in range(first, first + count)]
    verdicts: dict[str, Counter[str]] = {"all": Counter()}
    for batch in batches(rows, CLAIMS_PER_CALL):
        answers = ask(row for _, row in batch)["claims"]
        for (seed, row), answer in zip(batch, answers, strict=True):
            verdict = answer.get("verdict", "error")
            for counts in (verdicts["all"], verdicts.setdefault(row["quantity"], Counter())):
                counts.update({"claims": 1, verdict: 1, "listed": int(bool(answer.get("readings")))})
            if verdict in ("explained", "error"):
                said = answer.get("error") or answer["readings"][0]["text"]
                report.miss(f"random {seed}: {told(row)}: {verdict}: {said}")
    explained = percent(verdicts["all"]["explained"], count)
    print(f"{count} numbers drawn within 20 % of the right one:")
    report.figure("explained", explained, " %", most=FALSELY_EXPLAINED)
    report.figure("errors", verdicts["all"]["error"], "", most=0)
    table("verdicts (listed: any reading at all)", verdicts)


def check_programs(report: Report, first: int, count: int, coarse: bool = False) -> None:
    digits = programs.COARSE if coarse else programs.DIGITS
    invented = [(seed, programs.six(seed, digits)) for seed in range(first, first + count)]
    found = leads = 0
    survivors: list[int] = []
    for batch in batches(invented, CLAIMS_PER_CALL // 6):
        answer = ask(row for _, cases in batch for row, _, _ in cases)
        by_name = {program["program"]: program for program in answer["programs"]}
        for seed, cases in batch:
            program = by_name.get(f"six {seed}", {"survivors": []})
            survivors.append(len(program["survivors"]))
            hits = [
                all(near(value, exact, row) for value, (row, _, exact) in zip(survivor["values"], cases, strict=True))
                for survivor in program["survivors"]
            ]
            found += any(hits)
            leads += bool(hits) and hits[0]
            if not any(hits):
                truth = {question: habit for _, each, _ in cases for question, habit in each.items()}
                report.miss(f"six {seed}: {len(hits)} survivors, none computes as {habits(truth)}")
                for row, _, exact in cases:
                    report.miss(f"    {told(row)}, computed as {exact:.6g}")
            elif not hits[0]:
                report.miss(f"six {seed}: the truth is survivor {1 + hits.index(True)} of {len(hits)}")
    print(f"{count} programs of six claims{', printed coarsely: held to nothing' if coarse else ''}:")
    ninth = sorted(survivors)[max(0, -(-len(survivors) * 9 // 10) - 1)]
    # With few digits nobody could tell more.
    least = {} if coarse else {"survives": SURVIVES, "first": FIRST}
    most = {} if coarse else {"median": MEDIAN_SURVIVORS, "ninth": MOST_SURVIVORS}
    report.figure("the truth survives", percent(found, count), " %", least=least.get("survives"))
    report.figure("survivors, median", statistics.median(survivors), "", most=most.get("median"))
    report.figure(f"survivors, of {SURVIVORS_SHARE:g} % of the programs", ninth, "", most=most.get("ninth"))
    print(f"    most survivors: {max(survivors)}; none: {percent(survivors.count(0), count):.1f} % of the programs")
    report.figure("the truth is first", percent(leads, count), " %", least=least.get("first"))


def check_coarse(report: Report, first: int, count: int) -> None:
    check_programs(report, first, count, coarse=True)


def main() -> int:
    parser = argparse.ArgumentParser(description="Measures the cross-check against invented programs.")
    parser.add_argument("--verbose", action="store_true", help="print every miss with its seed")
    parser.add_argument("--ours", type=int, default=1000, help="claims of a program with the library's habits")
    parser.add_argument("--singles", type=int, default=2000, help="single claims")
    parser.add_argument("--random", type=int, default=2000, help="numbers drawn at random")
    parser.add_argument("--programs", type=int, default=1000, help="programs of six claims")
    parser.add_argument("--first", type=int, default=0, help="the first seed")
    options = parser.parse_args()
    warnings.simplefilter("ignore", carb.CarbWarning)
    report = Report(options.verbose)
    for check, count in (
        (check_ours, options.ours),
        (check_published, options.ours),
        (check_singles, options.singles),
        (check_random, options.random),
        (check_programs, options.programs),
        (check_coarse, options.programs // 5),
    ):
        if count:
            start = time.perf_counter()
            check(report, options.first, count)
            print(f"  took {time.perf_counter() - start:.1f} s")
    for line in report.short:
        print(f"falls short: {line}")
    return 1 if report.short else 0


if __name__ == "__main__":
    sys.exit(main())
