//! Rust's own reading of the conformance cases.

use carb_core::basis::Function;
use carb_core::basis::function::{Slices, Statuses};
use carb_core::basis::kernel::Series;
use carb_core::quantity::{Name, Unit};
use carb_core::table::functions;
use carb_tests::{Case, HEADER, cases, given, pairs};

const FILE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/conformance/cases.tsv");

#[test]
fn the_file_is_current() {
    let lines: Vec<String> = std::iter::once(HEADER.into()).chain(cases().iter().map(Case::line)).collect();
    let text = lines.join("\n") + "\n";
    if std::env::var_os("BLESS").is_some() {
        std::fs::write(FILE, &text).expect("the file is written");
    }
    let kept = std::fs::read_to_string(FILE).expect("the file is there");
    for (at, (kept, now)) in kept.lines().zip(text.lines()).enumerate() {
        assert_eq!(kept, now, "line {}: answers changed; where that is meant, run with BLESS=1", at + 1);
    }
    assert_eq!(kept.lines().count(), text.lines().count());
}

#[test]
fn arrays_give_the_bits_of_scalars() {
    let mut compared = 0;
    for case in cases() {
        let Some(function) = functions::named(&case.function) else { continue };
        if given(&case.inputs).is_err() {
            continue;
        }
        // Every input that may vary becomes a series of three; the others stay.
        let varies = |name: &Name| name.unit.is_some() && function.varies(name.key);
        let columns: Vec<(Name, Vec<f64>)> = pairs(&case.inputs)
            .filter_map(|(name, value)| Some((Name::parse(name)?, vec![value.parse().ok()?; 3])))
            .filter(|(name, _)| varies(name))
            .collect();
        let series: Vec<Series<'_>> = columns.iter().map(|(name, values)| Series { name: *name, values }).collect();
        let rest: Vec<String> = pairs(&case.inputs)
            .filter(|(name, _)| !Name::parse(name).is_some_and(|n| varies(&n)))
            .map(|(name, value)| format!("{name}={value}"))
            .collect();
        let rest = given(&rest.join(";")).expect("the rest was given before");
        for (which, output) in function.outputs.iter().enumerate() {
            for unit in output.key.dimension().into_iter().flat_map(Unit::of).filter(|u| u.shown) {
                let (mut out, mut status) = ([0.0; 3], [0; 3]);
                let statuses = Statuses::Every(&mut status);
                let slices =
                    Slices { count: 3, series: &series, which, unit, out: &mut out, also: None, statuses, keep: None };
                let result = function.each(&rest, slices);
                let name = Function::output_name(*output, unit);
                match pairs(&case.outputs).find(|(n, _)| *n == name.as_str()) {
                    Some((_, value)) => {
                        result.unwrap_or_else(|error| panic!("{}: {error}", case.inputs));
                        let wanted: f64 = value.parse().expect("a number");
                        assert!(status.iter().all(|s| *s >= 0), "{} {}: {status:?}", case.function, case.inputs);
                        assert!(
                            out.iter().all(|v| v.to_bits() == wanted.to_bits()),
                            "{} {}",
                            case.function,
                            case.inputs
                        );
                        compared += 1;
                    }
                    None => {
                        let refused = result.is_err() || status.iter().all(|s| *s == case.code);
                        assert!(refused, "{} {}: {status:?}, not {}", case.function, case.inputs, case.code);
                        assert!(result_nan(&out, &status));
                    }
                }
            }
        }
    }
    assert!(compared > 500, "only {compared} values were compared");
    println!("values compared bit for bit: {compared}");
}

fn result_nan(out: &[f64], status: &[i32]) -> bool {
    out.iter().zip(status).all(|(value, status)| *status >= 0 || value.is_nan())
}
