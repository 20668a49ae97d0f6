//! Every function against answers computed to 50 digits from the published equations, by a script that shares nothing
//! with this library (`checks/scripts/high_precision.py`).

use carb_core::basis::request::Raw;
use carb_core::basis::{Output, Request};
use carb_core::quantity::{Name, Unit};
use carb_core::table::functions::named;

const ROWS: &str = include_str!("../checks/high_precision/functions.csv");

struct Row<'a> {
    function: &'a str,
    inputs: &'a str,
    output: &'a str,
    value: f64,
}

fn rows() -> impl Iterator<Item = Row<'static>> {
    ROWS.lines().filter(|line| !line.starts_with('#')).skip(1).map(|line| {
        let cells: Vec<_> = line.split(',').collect();
        let [function, inputs, output, value] = cells[..] else { panic!("four cells: {line}") };
        Row { function, inputs, output, value: value.parse().unwrap() }
    })
}

fn request(inputs: &str) -> Request {
    let mut request = Request::new();
    for pair in inputs.split(';') {
        let (name, value) = pair.split_once('=').unwrap();
        let raw = match (value, value.parse()) {
            ("true" | "false", _) => Raw::Flag(value == "true"),
            (_, Ok(number)) => Raw::Number(number),
            (_, Err(_)) => Raw::Text(value),
        };
        request.set(name, raw).unwrap_or_else(|error| panic!("{inputs}: {error}"));
    }
    request
}

/// The place and the unit of an output such as `worst_gauge_kpa`.
fn column(outputs: &[Output], name: &str) -> (usize, &'static Unit) {
    for (at, output) in outputs.iter().enumerate() {
        let bare = match output.noun {
            "" => Some(name),
            noun => name.strip_prefix(noun).and_then(|rest| rest.strip_prefix('_')),
        };
        for candidate in Name::of(output.key) {
            if bare == Some(candidate.spelling().as_str()) {
                return (at, candidate.unit.unwrap());
            }
        }
    }
    panic!("no output {name}");
}

#[test]
fn probe() {
    let mut worst = std::collections::BTreeMap::new();
    for row in rows() {
        let function = named(row.function).unwrap();
        match function.answer(&request(row.inputs), &mut carb_core::evidence::NoSteps) {
            Ok(answer) => {
                let (at, unit) = column(function.outputs, row.output);
                let got = unit.from_si(answer.value.as_slice()[at]);
                let diff = ((got - row.value) / row.value).abs();
                let entry = worst.entry((row.function, row.output)).or_insert((0.0, ""));
                if diff > entry.0 { *entry = (diff, row.inputs); }
                if diff > 1e-11 {
                    println!("{} {} {} got {got} want {}", row.function, row.inputs, row.output, row.value);
                }
            }
            Err(e) => println!("ERR {} {}: {e}", row.function, row.inputs),
        }
    }
    for (k, v) in worst { println!("{k:?} {v:?}"); }
}
