//! The cross-check: claims of every quantity, beside the library's own answers to them, on one thread and on two.
#![allow(missing_docs)]

use carb_core::basis::Request;
use carb_core::basis::request::Raw;
use carb_core::crosscheck::{Claim, crosscheck};
use carb_core::evidence::NoSteps;
use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use std::hint::black_box;

/// Quantity, value, unit, and what the program was told; as often as a program is asked for it, sugar most of all.
type Day = (&'static str, f64, &'static str, &'static [(&'static str, f64)]);
const SUGAR: Day = (
    "priming_sugar",
    118.0,
    "g",
    &[("volumes", 2.5), ("warmest_f", 68.0), ("packaged_us_gal", 5.0), ("altitude_m", 300.0)],
);
const KEG: Day = ("keg_pressure", 12.0, "psi", &[("volumes", 2.5), ("temperature_f", 38.0), ("altitude_m", 700.0)]);
const DAYS: &[Day] = &[
    SUGAR,
    KEG,
    ("dissolved_co2", 2.5, "volumes", &[("gauge_psi", 12.0), ("temperature_f", 38.0), ("altitude_m", 300.0)]),
    SUGAR,
    ("residual_co2", 0.85, "volumes", &[("warmest_c", 20.0), ("altitude_m", 300.0)]),
    (
        "package_pressure",
        2.0,
        "bar",
        &[("volumes", 2.4), ("temperature_c", 30.0), ("headspace_percent", 4.0), ("altitude_m", 240.0)],
    ),
    SUGAR,
    KEG,
    ("alcohol", 5.0, "percent", &[("original_sg", 1.048), ("current_sg", 1.010)]),
    (
        "gas_used",
        130.0,
        "g",
        &[
            ("packaged_l", 19.0),
            ("volumes", 2.5),
            ("start_volumes", 0.84),
            ("temperature_c", 4.0),
            ("gauge_bar", 0.8),
            ("altitude_m", 0.0),
        ],
    ),
];
const COUNT: usize = 1000;

fn claims(programs: bool) -> Vec<Claim> {
    let one = |at: usize| {
        let (quantity, value, unit, told) = DAYS[at % DAYS.len()];
        let mut request = Request::new();
        for (name, number) in told {
            // Every day a little different.
            request.set(name, Raw::Number(number * (1.0 + 1e-5 * at as f64))).expect("an input");
        }
        let value = format!("{:.2}", value * (0.9 + 2e-4 * at as f64));
        let claim = Claim::new(quantity, &value, unit, request).expect("a claim");
        if programs { claim.of_program(&format!("{}", at / 6)) } else { claim }
    };
    (0..COUNT).map(one).collect()
}

fn whole(c: &mut Criterion) {
    let mut group = c.benchmark_group("1000 claims");
    group.sample_size(10).throughput(Throughput::Elements(COUNT as u64));
    let all = claims(false);
    group.bench_function("own answers only", |b| {
        b.iter(|| {
            let answered = all.iter().filter(|claim| {
                let function = claim.quantity.function.expect("a function");
                function.answer(black_box(&claim.asked()), &mut NoSteps).is_ok()
            });
            answered.count()
        });
    });
    group.bench_function("cross-checked, one thread", |b| b.iter(|| crosscheck(black_box(&all).clone()).claims.len()));
    group.bench_function("cross-checked, two threads", |b| {
        b.iter(|| {
            std::thread::scope(|scope| {
                let halves: Vec<_> = all
                    .chunks(COUNT / 2)
                    .map(|half| scope.spawn(move || crosscheck(black_box(half).to_vec()).claims.len()))
                    .collect();
                halves.into_iter().map(|half| half.join().expect("no panic")).sum::<usize>()
            })
        });
    });
    let joined = claims(true);
    group.bench_function("six of one program, one thread", |b| {
        b.iter(|| crosscheck(black_box(&joined).clone()).programs.len());
    });
    group.finish();
}

criterion_group!(benches, whole);
criterion_main!(benches);
