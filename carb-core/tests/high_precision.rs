//! Every function against answers computed to 50 digits from the published equations, by a script that shares nothing
//! with this library (`checks/scripts/high_precision.py`).

use carb_core::basis::request::{Raw, choices};
use carb_core::basis::{Output, Request};
use carb_core::evidence::NoSteps;
use carb_core::quantity::{Key, Name, Unit};
use carb_core::table::functions::{FUNCTIONS, named};

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

/// Relative tolerance, of vessels that are solved as well as of closed forms. The longest sums stand in exponents: those
/// of Henry's constant reach 60, so one rounding in them is 60 * 1.1e-16 of the result, and there are a few. An iteration
/// that has converged adds no more than its last step's rounding. In all that is 3e-14; the rest is margin.
const RELATIVE: f64 = 1e-13;

/// What the relative tolerance is taken of: the value, and whatever larger number it is the difference of.
fn size(row: &Row<'_>, unit: &Unit) -> f64 {
    let subtracted = match row.output.rsplit_once("gauge_") {
        // A gauge pressure is what is left when the air outside, about one atmosphere, is taken off.
        Some(_) => unit.from_si(101_325.0),
        None => match row.output {
            // Of the total pressure up to 20 kPa is vapour at 60 °C, which would hold 0.15 g/L of CO2.
            name if name.ends_with("co2_g_per_l") && !name.starts_with("expected") => 0.15,
            // A dose is for what is left when the CO2 held, up to 3.4 g/L, is taken off, and 0.3 of sugar becomes CO2.
            "dose_g_per_l" => 3.4 / 0.3,
            // The largest term of the cubic is 1111 times the gravity; 20 °P are left, or none.
            "plato" | "closing_plato" => 1111.0,
            // Two gravities of about 1.
            "drop_sg" => 1.0,
            _ => 0.0,
        },
    };
    row.value.abs() + subtracted
}

#[test]
fn every_answer_is_that_of_the_published_equations() {
    let (mut worst, mut count) = (std::collections::BTreeMap::new(), 0);
    for row in rows() {
        let function = named(row.function).unwrap();
        let (at, unit) = column(function.outputs, row.output);
        let answer = function.answer(&request(row.inputs), &mut NoSteps);
        let answer = answer.unwrap_or_else(|error| panic!("{} {}: {error}", row.function, row.inputs));
        let got = unit.from_si(answer.value.as_slice()[at]);
        let difference = (got - row.value).abs();
        // Nothing makes nothing, exactly.
        let error = if difference == 0.0 { 0.0 } else { difference / size(&row, unit) };
        assert!(
            error <= RELATIVE,
            "{} {}: {} = {got}, to 50 digits {}",
            row.function,
            row.inputs,
            row.output,
            row.value
        );
        let most: &mut f64 = worst.entry((row.function, row.output)).or_default();
        *most = most.max(error);
        count += 1;
    }
    for ((function, output), error) in worst {
        println!("{function} {output}: {error:.1e}");
    }
    assert!(count >= 2000, "{count} rows");
}

#[test]
fn the_answers_cover_every_function_and_every_choice() {
    for function in FUNCTIONS {
        assert!(rows().any(|row| row.function == function.name), "{}", function.name);
        for (place, output) in function.outputs.iter().enumerate() {
            // A package's absolute pressures are its gauge pressures and the air outside, which has rows of its own.
            let sum = output.key == Key::Absolute && !output.noun.is_empty();
            let covered =
                rows().any(|row| row.function == function.name && column(function.outputs, row.output).0 == place);
            assert!(covered || sum, "{} {output:?}", function.name);
        }
    }
    let keys = [Key::Beverage, Key::Basis, Key::Model, Key::ResidualModel, Key::Sugar, Key::Addition];
    for key in keys.into_iter().chain([
        Key::SugarKind,
        Key::ExtractScale,
        Key::RealExtractModel,
        Key::ColdCrash,
        Key::Purge,
        Key::CylinderSize,
    ]) {
        for choice in choices(key) {
            // A sugar is the same sugar whether it primes or is added.
            let role = if key == Key::Sugar { "addition" } else { key.field().role };
            let pair = format!("{role}={choice}");
            assert!(rows().any(|row| row.inputs.split(';').any(|given| given == pair)), "{pair}");
        }
    }
}
