//! `exp` and `ln` of the library beside those of the standard library, over slices that fit the cache.
#![allow(missing_docs, clippy::disallowed_methods)]

use carb_benches::spread;
use carb_core::number;
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

criterion_group!(all, numbers);
criterion_main!(all);
