//! The bottling job: choosing bottles, and the whole job from text to text.
#![allow(missing_docs)]

use carb_core::basis::FillOrder;
use carb_core::bottling::fill::{Kind, fill};
use carb_core::plan::json;
use criterion::{BenchmarkId, Criterion, criterion_group, criterion_main};
use std::hint::black_box;

/// Two hundred bottles in six sizes; the odd ones share no round unit, the ounces are not whole millilitres.
const SIZES: [(&str, [f64; 6]); 3] = [
    ("round sizes", [250.0, 330.0, 500.0, 750.0, 1000.0, 1500.0]),
    ("odd sizes", [330.0, 341.0, 355.0, 500.0, 568.0, 750.0]),
    ("ounces", [207.0, 354.9, 473.2, 500.0, 650.6, 946.4]),
];

fn bottles(c: &mut Criterion) {
    let mut group = c.benchmark_group("200 bottles");
    for (name, sizes) in SIZES {
        let counts = [34, 34, 33, 33, 33, 33];
        let kinds: Vec<Kind> =
            sizes.iter().zip(counts).map(|(ml, count)| Kind { content: ml * 1.0e-6, count }).collect();
        let held: f64 = kinds.iter().map(|kind| kind.content * f64::from(kind.count)).sum();
        for (what, order) in [("least leftover", FillOrder::LeastLeftover), ("fewest sizes", FillOrder::FewestSizes)] {
            group.bench_function(BenchmarkId::new(name, what), |b| {
                b.iter(|| fill(black_box(0.93 * held), &kinds, order));
            });
        }
    }
    group.finish();
}

fn jobs(c: &mut Criterion) {
    let mut group = c.benchmark_group("whole job, JSON");
    let day = r#""carb": 1, "packaged_l": 19.2, "volumes": 2.4, "warmest_c": 20.5, "altitude_m": 240"#;
    let list = r#", "bottles": [{"bottle_ml": 500, "count": 30}, {"bottle_ml": 330, "count": 24}]"#;
    for (what, more) in [("without bottles", ""), ("with bottles", list)] {
        let text = format!("{{{day}{more}}}");
        group.bench_function(what, |b| b.iter(|| json::answer_text("bottling", black_box(&text))));
    }
    group.finish();
}

criterion_group!(all, bottles, jobs);
criterion_main!(all);
