//! `exp` and `ln` of the library, and a kernel that uses them, beside those of the standard library.
#![allow(missing_docs, clippy::disallowed_methods)]

use carb_benches::spread;
use carb_core::evidence::NoSteps;
use carb_core::number;
use carb_core::property::solubility::chart::ChartFit;
use carb_core::property::solubility::{Here, Solubility};
use carb_core::quantity::unit::{FAHRENHEIT, PSI, VOLUMES};
use criterion::{BenchmarkId, Criterion, Throughput, criterion_group, criterion_main};
use std::hint::black_box;

#[multiversion::multiversion(targets("x86_64+avx512f+avx512dq+avx512vl", "x86_64+avx2+fma", "aarch64+neon"))]
fn each(x: &[f64], y: &mut [f64], f: impl Fn(f64) -> f64 + Copy) {
    for (to, from) in y.iter_mut().zip(x) {
        *to = f(*from);
    }
}

fn numbers(c: &mut Criterion) {
    let mut group = c.benchmark_group("number");
    for n in [10_000, 1_000_000] {
        let (x, positive) = (spread(n, -30.0, 30.0), spread(n, 1e-3, 1e3));
        let mut y = vec![0.0; n];
        group.throughput(Throughput::Elements(n as u64));
        group.bench_function(BenchmarkId::new("exp", n), |b| b.iter(|| each(black_box(&x), &mut y, number::exp)));
        group.bench_function(BenchmarkId::new("exp, std", n), |b| b.iter(|| each(black_box(&x), &mut y, f64::exp)));
        group.bench_function(BenchmarkId::new("ln", n), |b| b.iter(|| each(black_box(&positive), &mut y, number::ln)));
        group
            .bench_function(BenchmarkId::new("ln, std", n), |b| b.iter(|| each(black_box(&positive), &mut y, f64::ln)));
    }
    group.finish();
}

/// The kernel of the chart, in which the library's `exp` stands, beside the same formula with the standard library's.
fn kernel(c: &mut Criterion) {
    let n = 10_000;
    let fahrenheit = spread(n, 33.0, 58.0);
    let mut y = vec![0.0; n];
    let mut group = c.benchmark_group("chart at 26.7 psi");
    group.throughput(Throughput::Elements(n as u64));
    group.bench_function("kernel", |b| {
        b.iter(|| {
            each(black_box(&fahrenheit), &mut y, |f| {
                let (here, _) = ChartFit { factor: 1.0 }.here(FAHRENHEIT.to_si(f), 0.0, 0.0, &mut NoSteps);
                VOLUMES.from_si(here.dissolved_under(PSI.to_si(26.7)))
            });
        });
    });
    group.bench_function("formula, std exp", |b| {
        b.iter(|| {
            each(black_box(&fahrenheit), &mut y, |f| {
                26.7 * (0.01821 + 0.090115 * (-(f - 32.0) / 43.11).exp()) - 0.003342
            });
        });
    });
    group.finish();
}

criterion_group!(all, numbers, kernel);
criterion_main!(all);
