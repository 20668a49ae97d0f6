//! Every elementwise function: typed and scalar, by name, and over slices; beside the chart's plain formula with the
//! standard library's `exp`, and beside a copy of the same bytes.
#![allow(missing_docs, clippy::disallowed_methods)]

use carb_benches::{request, spread};
use carb_core::balance::equilibrium::dissolved_co2;
use carb_core::balance::open::{RESIDUAL_TABLE, residual_co2};
use carb_core::balance::sealed::BALANCE;
use carb_core::basis::function::{Slices, Statuses};
use carb_core::basis::kernel::Series;
use carb_core::basis::request::Addition;
use carb_core::basis::{Ambient, Beverage, Context, Fermenter, Function, Kind, Request};
use carb_core::bottling::addition::added_co2;
use carb_core::bottling::attenuation::{Reading, attenuation, gravity_co2};
use carb_core::bottling::before::{Before, Conditioned};
use carb_core::bottling::glass::Glass;
use carb_core::bottling::gravity::from_sg;
use carb_core::bottling::package::{Keeping, package_pressure};
use carb_core::bottling::priming::{Batch, DOSE, priming_sugar};
use carb_core::bottling::reading::package_carbonation;
use carb_core::evidence::{Equation, NoSteps};
use carb_core::kegging::cylinder::co2_saturation;
use carb_core::kegging::liquid::drink_properties;
use carb_core::kegging::pressure::keg_pressure;
use carb_core::property::atmosphere::STATION_PRESSURE;
use carb_core::property::attenuation::RealExtractModel;
use carb_core::property::fermentable::SUCROSE;
use carb_core::property::gravity::{PLATO, Scale};
use carb_core::property::solubility::chart::CHART_FIT;
use carb_core::quantity::{
    Carbonation, Concentration, GaugePressure, Length, Name, Percent, SpecificGravity, Temperature, Unit, Volume,
};
use carb_core::table::functions;
use criterion::measurement::WallTime;
use criterion::{BenchmarkGroup, BenchmarkId, Criterion, Throughput, criterion_group, criterion_main};
use std::hint::black_box;

fn typed(c: &mut Criterion) {
    let mut group = c.benchmark_group("scalar");
    let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
    group.bench_function("dissolved_co2, plain formula", |b| {
        b.iter(|| {
            let (p, f): (f64, f64) = black_box((26.6959, 38.0));
            p * (0.01821 + 0.090115 * (-(f - 32.0) / 43.11).exp()) - 0.003342
        });
    });
    group.bench_function("dissolved_co2, typed", |b| {
        b.iter(|| {
            dissolved_co2(GaugePressure::from_psi(black_box(12.0)), Temperature::from_f(38.0), &here, &mut NoSteps)
        });
    });
    group.bench_function("keg_pressure, typed", |b| {
        b.iter(|| {
            keg_pressure(Carbonation::from_volumes(black_box(2.5)), Temperature::from_f(38.0), &here, &mut NoSteps)
        });
    });
    let warmest = Temperature::from_c(20.0);
    group.bench_function("residual_co2, typed", |b| {
        b.iter(|| residual_co2(&Fermenter::open(black_box(warmest)), &here, &mut NoSteps));
    });
    let batch = Batch {
        before: Before::open(warmest),
        packaged: Volume::from_l(19.2),
        conditioned: Conditioned { headspace: Percent::from_percent(4.0), filling: warmest, room: warmest },
        syrup_water: None,
        added: Carbonation::from_si(0.0),
    };
    let target = Carbonation::from_volumes(2.4);
    group.bench_function("priming_sugar, typed", |b| {
        b.iter(|| priming_sugar(target, black_box(&batch), &SUCROSE, &here, &mut NoSteps));
    });
    let keeping = Keeping { temperature: warmest, headspace: Percent::from_percent(4.0), filling: warmest };
    group.bench_function("package_pressure, typed", |b| {
        b.iter(|| {
            package_pressure(
                black_box(Carbonation::from_volumes(2.4)),
                &keeping,
                &Glass::default(),
                &here,
                &mut NoSteps,
            )
        });
    });
    group.bench_function("package_carbonation, typed", |b| {
        b.iter(|| package_carbonation(black_box(GaugePressure::from_bar(1.8)), &keeping, &here, &mut NoSteps));
    });
    group.bench_function("gravity, typed", |b| {
        b.iter(|| from_sg(black_box(SpecificGravity::from_sg(1.048)), Scale::Asbc, &mut NoSteps));
    });
    let reading = |sg| Reading::Sg(SpecificGravity::from_sg(sg));
    group.bench_function("attenuation, typed", |b| {
        let model = RealExtractModel::Balling;
        b.iter(|| attenuation(black_box(reading(1.048)), reading(1.010), Scale::Asbc, model, &mut NoSteps));
    });
    group.bench_function("gravity_co2, typed", |b| {
        b.iter(|| gravity_co2(black_box(reading(1.013)), reading(1.012), Scale::Asbc, &mut NoSteps));
    });
    group.bench_function("added_co2, typed", |b| {
        let sugar = Addition::Sugar(SUCROSE);
        b.iter(|| added_co2(&sugar, black_box(Concentration::from_g_per_l(6.0)), &here, &mut NoSteps));
    });
    group.bench_function("drink_properties, typed", |b| {
        b.iter(|| drink_properties(black_box(warmest), None, None, &here, &mut NoSteps));
    });
    group.bench_function("co2_saturation, typed", |b| {
        b.iter(|| co2_saturation(black_box(warmest), &mut NoSteps));
    });
    group.bench_function("ambient_pressure, typed", |b| {
        b.iter(|| black_box(Ambient::Altitude(Length::from_m(1500.0))).pressure(&mut NoSteps));
    });
    // The kernels of the equations alone, on plain numbers in SI units.
    let plain: [(&Equation, &[f64]); 6] = [
        (&CHART_FIT, &[184.0e3, 276.5, 1.0]),
        (&RESIDUAL_TABLE, &[293.15, 101_325.0, 1.0]),
        (&DOSE, &[4.7, 1.7, 0.0, 0.514, 100.0, 1.0]),
        (&BALANCE, &[4.3, 1.0, 4.5, 0.04]),
        (&PLATO, &[1.048]),
        (&STATION_PRESSURE, &[101_325.0, 1500.0]),
    ];
    for (equation, inputs) in plain {
        group.bench_function(BenchmarkId::new("plain f64", equation.id), |b| {
            b.iter(|| (equation.kernel)(black_box(inputs)));
        });
    }
    for (name, asked) in requests() {
        let function = functions::named(name).expect("a function of the table");
        group.bench_function(BenchmarkId::new("by name", name), |b| {
            b.iter(|| function.answer(black_box(&asked), &mut NoSteps));
        });
    }
    // How sure an answer is costs nothing where nobody asks: the same request with and without the question.
    let keg = r#""volumes": 2.5, "temperature_f": 38, "altitude_m": 0"#;
    for (what, more) in [("unasked", ""), ("asked", r#", "uncertainty": {"temperature_f": 1}"#)] {
        let text = format!("{{\"carb\": 1, {keg}{more}}}");
        group.bench_function(BenchmarkId::new("JSON, uncertainty", what), |b| {
            b.iter(|| carb_core::plan::json::answer_text("keg_pressure", black_box(&text)));
        });
    }
    group.finish();
}

fn requests() -> Vec<(&'static str, Request)> {
    let sea = ("altitude_m", 0.0);
    vec![
        ("dissolved_co2", request(&[("gauge_psi", 12.0), ("temperature_f", 38.0), sea], &[])),
        ("keg_pressure", request(&[("volumes", 2.5), ("temperature_f", 38.0), sea], &[])),
        ("gas_blend", request(&[("volumes", 2.5), ("temperature_f", 38.0), ("gauge_psi", 22.0), sea], &[])),
        ("keg_temperature", request(&[("volumes", 2.5), ("gauge_psi", 12.0), sea], &[])),
        ("warmed_keg", request(&[("volumes", 2.5), ("filling_c", 3.3), ("temperature_c", 25.0), sea], &[])),
        (
            "spunding",
            request(
                &[
                    ("volumes", 2.5),
                    ("temperature_c", 12.0),
                    ("final_sg", 1.010),
                    ("fermenter_headspace_percent", 10.0),
                    sea,
                ],
                &[],
            ),
        ),
        (
            "closed_fermentation",
            request(
                &[
                    ("current_sg", 1.014),
                    ("final_sg", 1.010),
                    ("temperature_c", 18.0),
                    ("fermenter_headspace_percent", 10.0),
                    sea,
                ],
                &[],
            ),
        ),
        (
            "stone_pressure",
            request(&[("volumes", 2.5), ("temperature_c", 4.0), ("depth_m", 0.5), ("wetting_psi", 4.0), sea], &[]),
        ),
        ("residual_co2", request(&[("warmest_c", 20.0), sea], &[])),
        ("priming_sugar", request(&[("volumes", 2.4), ("warmest_c", 20.0), ("packaged_l", 19.2), sea], &[])),
        ("primed_carbonation", request(&[("mass_g", 116.0), ("warmest_c", 20.0), ("packaged_l", 19.2), sea], &[])),
        (
            "priming_wort",
            request(
                &[
                    ("volumes", 2.4),
                    ("warmest_c", 20.0),
                    ("packaged_l", 19.2),
                    ("wort_original_plato", 12.0),
                    ("limit_attenuation_percent", 65.0),
                    sea,
                ],
                &[],
            ),
        ),
        ("priming_syrup", request(&[("mass_g", 116.0)], &[])),
        ("conditioning", request(&[("room_c", 20.0), ("time_d", 7.0)], &[])),
        ("conditioning_time", request(&[("room_c", 20.0)], &[])),
        ("reyeasting", request(&[("packaged_l", 19.2)], &[])),
        ("final_gravity", request(&[("original_sg", 1.048), ("expected_attenuation_percent", 78.0)], &[])),
        ("package_pressure", request(&[("volumes", 2.4), ("temperature_c", 20.0), sea], &[])),
        ("package_carbonation", request(&[("gauge_bar", 1.8), ("temperature_c", 20.0), sea], &[])),
        ("gravity", request(&[("sg", 1.048)], &[])),
        ("attenuation", request(&[("original_sg", 1.048), ("current_sg", 1.010)], &[])),
        ("gravity_co2", request(&[("current_sg", 1.013), ("final_sg", 1.012)], &[])),
        ("added_co2", request(&[("dose_g_per_l", 6.0)], &[("addition", "sucrose")])),
        ("drink_properties", request(&[("temperature_c", 4.0)], &[])),
        ("co2_saturation", request(&[("cylinder_c", 20.0)], &[])),
        ("purge_oxygen", request(&[("purge_gauge_psi", 30.0), ("cycles_count", 5.0), sea], &[])),
        ("purge_cycles", request(&[("purge_gauge_psi", 30.0), ("oxygen_ppm", 1000.0), sea], &[])),
        ("sweep_oxygen", request(&[("sweeps_count", 5.0), sea], &[])),
        ("push_oxygen", request(&[("pocket_ml", 50.0), ("push_gauge_psi", 10.0), sea], &[])),
        (
            "oxygen_pickup",
            request(&[("oxygen_ppm", 1000.0), ("headspace_percent", 3.5), ("temperature_c", 4.0), sea], &[]),
        ),
        (
            "total_package_oxygen",
            request(&[("dissolved_oxygen_ppb", 40.0), ("headspace_percent", 5.0), ("temperature_c", 20.0)], &[]),
        ),
        (
            "gas_budget",
            request(&[("packaged_l", 18.93), ("volumes", 2.5), ("temperature_c", 3.3), ("gauge_psi", 11.0), sea], &[]),
        ),
        ("cylinder_left", request(&[("cylinder_c", 20.0), sea], &[("cylinder_size", "cylinder_5_lb")])),
        ("cylinder_contents", request(&[("gross_lb", 10.2), ("tare_lb", 7.7)], &[("cylinder_size", "cylinder_5_lb")])),
        ("room_co2", request(&[("released_lb", 5.0), ("room_m3", 30.0), sea], &[])),
        ("room_leak", request(&[("leak_g_per_h", 94.5), ("room_m3", 30.0), sea], &[])),
        (
            "line_flow",
            request(
                &[("gauge_psi", 11.0), ("line_ft", 10.0), ("rise_ft", 2.0), ("temperature_c", 4.0)],
                &[("tube", "vinyl_3_16_in")],
            ),
        ),
        (
            "line_length",
            request(
                &[("gauge_psi", 11.0), ("pour_seconds", 12.0), ("temperature_c", 4.0)],
                &[("tube", "vinyl_3_16_in")],
            ),
        ),
        (
            "line_pressure",
            request(&[("line_m", 3.0), ("flow_l_per_min", 3.0), ("temperature_c", 4.0)], &[("tube", "metric_7_mm")]),
        ),
        ("handbook_line", request(&[("gauge_psi", 11.0)], &[("tube", "vinyl_3_16_in")])),
        ("handbook_pressure", request(&[("line_ft", 20.0)], &[("tube", "vinyl_1_4_in")])),
        ("filling_carbonation", request(&[("volumes", 2.4)], &[("fill_method", "hand_counter_pressure")])),
        (
            "blend",
            request(
                &[
                    ("packaged_l", 15.0),
                    ("volumes", 2.8),
                    ("other_l", 5.0),
                    ("other_volumes", 0.8),
                    ("temperature_c", 4.0),
                    sea,
                ],
                &[],
            ),
        ),
        ("uptake_rate", request(&[("temperature_c", 4.0)], &[])),
        (
            "carbonation_time",
            request(
                &[
                    ("start_volumes", 0.85),
                    ("volumes", 2.4),
                    ("gauge_bar", 0.9),
                    ("temperature_c", 4.0),
                    ("altitude_m", 0.0),
                ],
                &[],
            ),
        ),
        (
            "carbonation_progress",
            request(&[("start_volumes", 0.85), ("time_d", 7.0), ("gauge_bar", 0.9), ("temperature_c", 4.0), sea], &[]),
        ),
        (
            "burst_time",
            request(
                &[("start_volumes", 0.85), ("volumes", 2.5), ("burst_gauge_bar", 2.0), ("temperature_c", 4.0), sea],
                &[],
            ),
        ),
        ("packaging_cost", request(&[("packaged_l", 19.0), ("bottle_money", 0.6), ("outfit_money", 320.0)], &[])),
        (
            "break_even",
            request(&[("packaged_l", 19.0), ("cap_money", 0.04), ("bottle_money", 0.6), ("outfit_money", 320.0)], &[]),
        ),
        ("ambient_pressure", request(&[("altitude_m", 1500.0)], &[])),
    ]
}

/// Answers every element, as an analyst's arrays are: only the statuses that are not 0 are written.
fn run(function: &Function, rest: &Request, series: &[Series<'_>], unit: &'static Unit, y: &mut [f64], s: &mut [i32]) {
    let slices =
        Slices { count: y.len(), series, which: 0, unit, out: y, also: None, statuses: Statuses::Found(s), keep: None };
    function.each(rest, slices).expect("a valid request");
}

/// A column by its name, from and to where its numbers are spread.
type Column<'a> = (&'a str, f64, f64);
type Group<'a> = BenchmarkGroup<'a, WallTime>;

/// What the functions are held against: a copy, and the chart's formula with nothing around it.
fn plain(group: &mut Group<'_>, n: usize) {
    let mut y = vec![0.0; n];
    let (psi, f) = (spread(n, 5.0, 25.0), spread(n, 33.0, 58.0));
    group.bench_function("copy", |b| b.iter(|| y.copy_from_slice(black_box(&psi))));
    group.bench_function("chart, plain formula with std exp", |b| {
        b.iter(|| {
            for ((to, p), f) in y.iter_mut().zip(black_box(&psi)).zip(&f) {
                *to = (p + 14.6959) * (0.01821 + 0.090115 * (-(f - 32.0) / 43.11).exp()) - 0.003342;
            }
        });
    });
}

/// One function over columns of `n` numbers.
fn slice(group: &mut Group<'_>, n: usize, name: &str, what: &str, columns: &[Column<'_>], rest: &Request) {
    let function = functions::named(name).expect("a function of the table");
    let data: Vec<(Name, Vec<f64>)> =
        columns.iter().map(|(name, low, high)| (Name::parse(name).expect("a name"), spread(n, *low, *high))).collect();
    let series: Vec<Series<'_>> = data.iter().map(|(name, values)| Series { name: *name, values }).collect();
    let unit = Unit::first(function.outputs[0].key.dimension().expect("a number"));
    let (mut y, mut status) = (vec![0.0; n], vec![0; n]);
    group.bench_function(BenchmarkId::new(name, what), |b| {
        b.iter(|| run(function, rest, black_box(&series), unit, &mut y, &mut status));
    });
}

/// More than the caches hold.
fn long_slices(c: &mut Criterion) {
    let n = 1_000_000;
    let mut group = c.benchmark_group("slice of 1000000");
    group.throughput(Throughput::Elements(n as u64)).sample_size(20);
    plain(&mut group, n);
    let sea = request(&[("altitude_m", 0.0)], &[]);
    let f = ("temperature_f", 33.0, 58.0);
    slice(&mut group, n, "dissolved_co2", "chart_fit", &[("gauge_psi", 5.0, 25.0), f], &sea);
    slice(&mut group, n, "keg_pressure", "chart_fit", &[("volumes", 2.0, 3.0), f], &sea);
    group.finish();
}

fn slices(c: &mut Criterion) {
    let n = 10_000;
    let mut group = c.benchmark_group("slice of 10000");
    group.throughput(Throughput::Elements(n as u64));
    plain(&mut group, n);
    let sea = ("altitude_m", 0.0);
    let cases: Vec<(&str, &str, Vec<Column<'_>>, Request)> = vec![
        (
            "dissolved_co2",
            "chart_fit",
            vec![("gauge_psi", 5.0, 25.0), ("temperature_f", 33.0, 58.0)],
            request(&[sea], &[]),
        ),
        (
            "dissolved_co2",
            "water_core",
            vec![("gauge_psi", 5.0, 25.0), ("temperature_f", 33.0, 58.0)],
            request(&[sea], &[("model", "water_core")]),
        ),
        ("keg_pressure", "chart_fit", vec![("volumes", 2.0, 3.0), ("temperature_f", 33.0, 58.0)], request(&[sea], &[])),
        (
            "keg_pressure",
            "water_core",
            vec![("volumes", 2.0, 3.0), ("temperature_f", 33.0, 58.0)],
            request(&[sea], &[("model", "water_core")]),
        ),
        (
            "keg_pressure",
            "chart_fit, blended gas",
            vec![("volumes", 2.0, 3.0), ("temperature_f", 33.0, 58.0)],
            request(&[sea, ("co2_percent", 70.0)], &[]),
        ),
        (
            "gas_blend",
            "chart_fit",
            vec![("volumes", 2.0, 2.4), ("gauge_psi", 20.0, 40.0)],
            request(&[sea, ("temperature_f", 38.0)], &[]),
        ),
        ("keg_temperature", "chart_fit", vec![("volumes", 2.0, 3.0), ("gauge_psi", 10.0, 20.0)], request(&[sea], &[])),
        (
            "warmed_keg",
            "sealed",
            vec![("volumes", 2.0, 3.0), ("temperature_c", 5.0, 38.0)],
            request(&[sea, ("filling_c", 3.3)], &[]),
        ),
        (
            "spunding",
            "chart_fit",
            vec![("volumes", 2.0, 3.0)],
            request(&[sea, ("temperature_c", 12.0), ("final_sg", 1.010), ("fermenter_headspace_percent", 10.0)], &[]),
        ),
        (
            "closed_fermentation",
            "sealed",
            vec![("current_sg", 1.012, 1.02)],
            request(&[sea, ("temperature_c", 18.0), ("final_sg", 1.010), ("fermenter_headspace_percent", 10.0)], &[]),
        ),
        (
            "stone_pressure",
            "chart_fit",
            vec![("volumes", 2.0, 3.0), ("depth_m", 0.2, 2.0)],
            request(&[sea, ("temperature_c", 4.0), ("wetting_psi", 4.0)], &[]),
        ),
        ("residual_co2", "table", vec![("warmest_c", 2.0, 28.0)], request(&[sea], &[])),
        (
            "priming_sugar",
            "handbook",
            vec![("volumes", 2.0, 3.0), ("warmest_c", 10.0, 28.0)],
            request(&[sea, ("packaged_l", 20.0)], &[]),
        ),
        (
            "priming_sugar",
            "physical, syrup counted",
            vec![("volumes", 2.0, 3.0), ("warmest_c", 10.0, 28.0)],
            request(&[sea, ("packaged_l", 20.0), ("syrup_water_l", 0.4)], &[("basis", "physical")]),
        ),
        (
            "residual_co2",
            "cold crash, closed",
            vec![("warmest_c", 10.0, 28.0)],
            request(&[sea, ("crash_c", 4.0), ("fermenter_headspace_percent", 10.0)], &[("cold_crash", "closed")]),
        ),
        ("conditioning", "days", vec![("room_c", 8.0, 30.0), ("time_d", 0.0, 30.0)], request(&[], &[])),
        ("package_pressure", "sealed", vec![("volumes", 2.0, 3.0), ("temperature_c", 5.0, 38.0)], request(&[sea], &[])),
        (
            "package_carbonation",
            "sealed",
            vec![("gauge_bar", 0.5, 4.0), ("temperature_c", 5.0, 38.0)],
            request(&[sea], &[]),
        ),
        ("gravity", "from sg", vec![("sg", 1.0, 1.12)], request(&[], &[])),
        ("gravity", "from plato", vec![("plato", 0.0, 28.0)], request(&[], &[])),
        ("attenuation", "balling", vec![("original_sg", 1.04, 1.1), ("current_sg", 1.0, 1.02)], request(&[], &[])),
        ("gravity_co2", "asbc", vec![("current_sg", 1.012, 1.02)], request(&[("final_sg", 1.012)], &[])),
        ("added_co2", "sucrose", vec![("dose_g_per_l", 0.0, 12.0)], request(&[], &[("addition", "sucrose")])),
        ("drink_properties", "beer", vec![("temperature_c", 1.0, 30.0)], request(&[], &[])),
        ("co2_saturation", "cylinder", vec![("cylinder_c", -10.0, 30.0)], request(&[], &[])),
        (
            "line_flow",
            "3/16 in",
            vec![("line_ft", 4.0, 20.0)],
            request(&[("gauge_psi", 11.0), ("temperature_c", 4.0)], &[("tube", "vinyl_3_16_in")]),
        ),
        (
            "line_length",
            "3/16 in",
            vec![("pour_seconds", 8.0, 20.0)],
            request(&[("gauge_psi", 11.0), ("temperature_c", 4.0)], &[("tube", "vinyl_3_16_in")]),
        ),
        (
            "dissolved_co2",
            "chart_quadratic",
            vec![("gauge_bar", 0.5, 1.5)],
            request(&[("temperature_c", 4.0), ("altitude_m", 0.0)], &[("model", "chart_quadratic")]),
        ),
        (
            "keg_pressure",
            "iapws_water",
            vec![("volumes", 2.0, 4.0)],
            request(
                &[("temperature_c", 10.0), ("altitude_m", 0.0)],
                &[("beverage", "water"), ("model", "iapws_water")],
            ),
        ),
        (
            "purge_oxygen",
            "cycles",
            vec![("purge_gauge_psi", 10.0, 60.0), ("cycles_count", 0.0, 15.0)],
            request(&[sea], &[]),
        ),
        (
            "gas_budget",
            "no purge",
            vec![("volumes", 2.0, 3.0), ("gauge_psi", 5.0, 25.0)],
            request(&[sea, ("packaged_l", 18.93), ("temperature_c", 3.3)], &[]),
        ),
        ("room_co2", "escape", vec![("released_kg", 0.1, 10.0)], request(&[sea, ("room_m3", 30.0)], &[])),
        ("ambient_pressure", "altitude", vec![("altitude_m", 0.0, 3000.0)], request(&[], &[])),
    ];
    for (name, what, columns, rest) in &cases {
        slice(&mut group, n, name, what, columns, rest);
    }
    group.finish();
}

criterion_group!(all, typed, slices, long_slices);
criterion_main!(all);
