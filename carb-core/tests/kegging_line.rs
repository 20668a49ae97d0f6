//! Draught lines, filling and blending: against published rules and worked examples, against general libraries of fluid
//! dynamics, and against their own balances.

use carb_core::Error;
use carb_core::basis::request::{Raw, Request};
use carb_core::basis::{Answer, Function, Lists, Values};
use carb_core::error::code;
use carb_core::evidence::NoSteps;
use carb_core::property::friction;
use carb_core::property::tube::TUBES;
use carb_core::quantity::Unit;
use carb_core::table::functions::named;
use carb_core::table::tables::{self, Cell};
use std::collections::BTreeMap;
use std::sync::Mutex;

const PUBLISHED: &str = include_str!("../checks/published/kegging_line.csv");
const FRICTION: &str = include_str!("../checks/reference/friction.csv");
const FLOWS: &str = include_str!("../checks/reference/line_flow.csv");
const RESISTANCES: &str = include_str!("../checks/reference/line_resistance.csv");

/// How many outside values each test has checked; the last test to finish prints the sum.
fn checked(test: &'static str, count: usize) {
    static DONE: Mutex<BTreeMap<&str, usize>> = Mutex::new(BTreeMap::new());
    let mut done = DONE.lock().unwrap();
    done.insert(test, count);
    println!("{test}: {count}");
    if done.len() == 4 {
        println!("outside values checked: {}", done.values().sum::<usize>());
    }
}

/// The cells of a check file, under the header that it must have.
fn rows<const N: usize>(csv: &'static str, header: [&str; N]) -> Vec<[&'static str; N]> {
    let mut lines = csv.lines().filter(|line| !line.starts_with('#') && !line.is_empty());
    assert_eq!(lines.next().map(|line| line.split(',').collect::<Vec<_>>()), Some(header.to_vec()));
    let rows: Vec<_> =
        lines.map(|line| line.split(',').collect::<Vec<_>>().try_into().expect("as many cells")).collect();
    assert!(rows.len() > 10);
    rows
}

fn numbers<const N: usize>(csv: &'static str, header: [&str; N]) -> Vec<[f64; N]> {
    rows(csv, header).into_iter().map(|row| row.map(|cell| cell.parse().expect("a number"))).collect()
}

fn request(inputs: &str) -> Result<Request, Error> {
    let mut request = Request::new();
    for pair in inputs.split(';') {
        let (name, value) = pair.split_once('=').expect("name=value");
        request.set(name, value.parse().map_or(Raw::Text(value), Raw::Number))?;
    }
    Ok(request)
}

fn answer(function: &str, inputs: &str) -> Result<Answer<Values>, Error> {
    named(function).expect("a function").answer(&request(inputs)?, &mut NoSteps)
}

/// One output, by its name.
fn ask(function: &str, inputs: &str, output: &str) -> f64 {
    let found = answer(function, inputs).unwrap_or_else(|error| panic!("{function} {inputs}: {error}"));
    let (at, unit) = named(function).unwrap().find_output(output).unwrap_or_else(|| panic!("{function}: no {output}"));
    unit.from_si(found.value.as_slice()[at])
}

fn refused(function: &str, inputs: &str) -> Error {
    answer(function, inputs).map(|answer| answer.value).expect_err(inputs)
}

fn percent(got: f64, reference: f64) -> f64 {
    100.0 * (got / reference - 1.0)
}

#[test]
fn lines_and_filling_are_as_published() {
    let header = ["id", "source", "function", "inputs", "output", "value", "tolerance", "reason", "standing", "kind"];
    let mut count = 0;
    for [id, _, function, inputs, output, value, tolerance, reason, standing, kind] in rows(PUBLISHED, header) {
        let (value, tolerance): (f64, f64) = (value.parse().unwrap(), tolerance.parse().unwrap());
        let got = ask(function, inputs, output);
        println!("{id}: {got:.5}, published {value} ({standing}), {:+.1} %", percent(got, value));
        assert!((got - value).abs() <= tolerance, "{id}: {got}, published {value} within {tolerance}: {reason}");
        // A figure that the library took over proves nothing.
        count += usize::from(kind == "check" && standing != "memory");
    }
    checked("published", count);
}

#[test]
fn friction_is_that_of_the_reference_library() {
    let [mut laminar, mut turbulent, mut same] = [0.0_f64; 3];
    let all = numbers(FRICTION, ["reynolds", "relative_roughness", "factor", "churchill"]);
    for [re, relative, reference, churchill] in &all {
        let got = friction::factor(*re, *relative);
        let worst = if *re <= friction::LAMINAR { &mut laminar } else { &mut turbulent };
        *worst = worst.max(percent(got, *reference).abs());
        same = same.max(percent(got, *churchill).abs());
    }
    println!("worst: laminar {laminar:.4} % of 64/Re, turbulent {turbulent:.3} % of Colebrook, Churchill {same:.1e} %");
    // What is claimed of the equation; and the ten digits of the file.
    assert!(laminar <= 0.2 && turbulent <= 2.5 && same <= 1e-7);
    checked("friction", all.len());
}

/// Between laminar and turbulent flow there is no reference, but the two laws on either side bound it, with 5 % for Churchill's
/// curve, which lies a little above Colebrook's where they meet.
#[test]
fn resistances_are_those_of_colebrook_and_between_the_laws_in_the_transition() {
    let header = ["bore_in", "us_fl_oz_per_s", "reynolds", "psi_per_ft"];
    let all = numbers(RESISTANCES, header);
    let (density, viscosity, mut turbulent) = (1010.0, 0.00251, 0.0_f64);
    for [inches, ounces, reynolds, reference] in &all {
        let bore = inches * 0.0254;
        let speed = ounces * 29.573_529_562_5e-6 / (std::f64::consts::FRAC_PI_4 * bore * bore);
        let re = friction::reynolds(density, speed, bore, viscosity);
        assert!(percent(re, *reynolds).abs() < 1e-6);
        let of = |factor: f64| friction::resistance(factor, bore, density, speed) * 0.3048 / 6_894.757_293_168;
        let got = of(friction::factor(re, friction::ROUGHNESS / bore));
        println!("{inches} in, {ounces:.2} oz/s, Re {re:.0}: {got:.4} psi/ft, Colebrook {reference:.4}");
        if re >= friction::TURBULENT {
            turbulent = turbulent.max(percent(got, *reference).abs());
        } else {
            assert!(got > of(64.0 / re) && got < 1.05 * reference, "{got}");
        }
    }
    println!("turbulent: worst {turbulent:.2} %");
    assert!(turbulent <= 2.5);
    checked("resistances", all.len());
}

#[test]
fn water_flows_as_with_the_reference_libraries() {
    let header = [
        "temperature_c",
        "gauge_bar",
        "line_m",
        "bore_mm",
        "rise_m",
        "fittings_multiplier",
        "reynolds",
        "flow_l_per_min",
    ];
    let all = numbers(FLOWS, header);
    let [mut laminar, mut turbulent] = [0.0_f64; 2];
    for row in &all {
        let inputs: Vec<_> = header.iter().zip(row).take(6).map(|(name, value)| format!("{name}={value}")).collect();
        let inputs = format!("beverage=water;{}", inputs.join(";"));
        let off = percent(ask("line_flow", &inputs, "flow_l_per_min"), row[7]).abs();
        let worst = if row[6] < friction::LAMINAR { &mut laminar } else { &mut turbulent };
        *worst = worst.max(off);
    }
    println!("flow, worst: laminar {laminar:.3} %, turbulent {turbulent:.3} %");
    // The flow goes with the root of the factor, of which 2.5 % are claimed; and with the viscosity, of which 1 % are.
    assert!(laminar <= 1.2 && turbulent <= 1.5);
    checked("flows", all.len());
}

/// Common practice, no source: ten feet of 3/16 in line at 10 to 12 psi fill a pint in ten to fourteen seconds.
#[test]
fn a_home_line_pours_a_pint_as_the_trade_says() {
    for (psi, noted) in [(10.0, 12.8), (11.0, 12.0), (12.0, 11.4)] {
        let inputs = format!("gauge_psi={psi};line_ft=10;tube=vinyl_3_16_in;rise_ft=2;temperature_c=4");
        let seconds = ask("line_flow", &inputs, "pour_seconds");
        println!("{psi} psi: {seconds:.2} s");
        assert!((10.0..=14.0).contains(&seconds));
        // Worked out apart from the library, with Colebrook's factor and a rounded drink: that factor makes 1 %.
        assert!((seconds - noted).abs() < 0.2, "{seconds}, {noted}");
    }
}

/// A state for the properties: gauge, line, bore, rise, fittings, temperature, drink.
fn states() -> Vec<String> {
    let mut all = Vec::new();
    for bore in [3.0, 4.7625, 6.35, 9.525, 12.7] {
        for (bar, rise) in [(0.2, 0.0), (0.8, 0.6), (1.5, -1.0), (3.0, 4.0)] {
            for (fittings, celsius) in [(0.0, 1.0), (3.0, 6.0), (20.0, 25.0)] {
                if rise * 0.1 < bar {
                    all.push(format!(
                        "gauge_bar={bar};bore_mm={bore};rise_m={rise};fittings_multiplier={fittings};temperature_c={celsius}"
                    ));
                }
            }
        }
    }
    all
}

#[test]
fn flow_length_and_pressure_are_one_balance() {
    let mut worst = [0.0_f64; 4];
    let mut count = 0;
    for state in states() {
        for metres in [0.05, 1.0, 3.0, 30.0, 200.0] {
            let Ok(found) = answer("line_flow", &format!("{state};line_m={metres}")) else { continue };
            count += 1;
            let [flow, time, speed, _, resistance, _] = *found.value.as_slice() else { panic!("six values") };
            let read = |name: &str| {
                let part = state.split(';').find_map(|pair| pair.strip_prefix(&format!("{name}="))).unwrap();
                part.parse::<f64>().unwrap()
            };
            // The energy, from the answer and nothing else.
            let density =
                ask("drink_properties", &format!("temperature_c={}", read("temperature_c")), "density_kg_per_m3");
            let held = read("fittings_multiplier") * density * speed * speed / 2.0;
            let taken = 9.80665 * density * read("rise_m") + resistance * metres + held;
            let gauge = read("gauge_bar") * 1e5;
            worst[0] = worst[0].max((taken / gauge - 1.0).abs());
            // There and back.
            let rest: Vec<_> = state.split(';').filter(|pair| !pair.starts_with("gauge")).collect();
            let rest = rest.join(";");
            let litres = flow * 60_000.0;
            let length = ask("line_length", &format!("{state};flow_l_per_min={litres:e}"), "line_m");
            let timed = ask("line_length", &format!("{state};pour_seconds={time:e}"), "line_m");
            let pressure =
                ask("line_pressure", &format!("{rest};line_m={metres};flow_l_per_min={litres:e}"), "gauge_bar");
            // What rise and fittings take is taken off first: the rounding is relative to the whole pressure.
            let share = gauge / (resistance * metres);
            worst[1] = worst[1].max((length / metres - 1.0).abs() / share);
            worst[2] = worst[2].max((timed / metres - 1.0).abs() / share);
            worst[3] = worst[3].max((pressure / read("gauge_bar") - 1.0).abs());
        }
    }
    println!("{count} states: energy, length by flow, length by time, pressure: {worst:?}");
    assert!(count > 200);
    assert!(worst.iter().all(|&worst| worst <= 1e-12));
}

#[test]
fn more_pressure_pours_more_and_more_line_less() {
    let flow = |inputs: String| ask("line_flow", &inputs, "flow_l_per_min");
    let mut thicker = 0;
    for state in states().iter().filter(|state| !state.contains("gauge_bar=0.2")) {
        let [gauge, bore, rise, fittings, celsius] =
            state.split(';').collect::<Vec<_>>().try_into().expect("five parts");
        let given = |part: &str| part.split_once('=').unwrap().1.parse::<f64>().unwrap();
        let (g, b, r, k, t) = (given(gauge), given(bore), given(rise), given(fittings), given(celsius));
        let at = |g: f64, b: f64, r: f64, k: f64, t: f64, metres: f64, viscosity: f64| {
            flow(format!(
                "gauge_bar={g};bore_mm={b};rise_m={r};fittings_multiplier={k};temperature_c={t};line_m={metres};viscosity_multiplier={viscosity}"
            ))
        };
        let usual = at(g, b, r, k, t, 5.0, 1.6);
        assert!(at(g * 1.01, b, r, k, t, 5.0, 1.6) > usual, "pressure, {state}");
        assert!(at(g, b * 1.01, r, k, t, 5.0, 1.6) > usual, "bore, {state}");
        assert!(at(g, b, r + 0.05, k, t, 5.0, 1.6) < usual, "rise, {state}");
        assert!(at(g, b, r, k + 0.1, t, 5.0, 1.6) < usual, "fittings, {state}");
        assert!(at(g, b, r, k, t, 5.1, 1.6) < usual, "length, {state}");
        // In the transition a thicker drink may flow faster, because it flows more smoothly.
        let re = ask("line_flow", &format!("{state};line_m=5"), "reynolds_multiplier");
        if !(friction::LAMINAR..=4500.0).contains(&re) {
            assert!(at(g, b, r, k, t, 5.0, 1.7) < usual, "viscosity, {state}");
            thicker += 1;
        }
    }
    assert!(thicker > 15, "{thicker}");
    // A longer pour is a longer line.
    let mut last = 0.0;
    for seconds in 7..40 {
        let length = ask(
            "line_length",
            &format!("gauge_psi=11;pour_seconds={seconds};tube=vinyl_3_16_in;rise_ft=2;temperature_c=4"),
            "line_m",
        );
        assert!(length > last, "{seconds} s");
        last = length;
    }
}

#[test]
fn the_trades_balance_is_its_own_reverse() {
    for tube in TUBES {
        for (psi, feet) in [(10.0, 0.0), (14.5, 5.0), (25.0, -2.0)] {
            let inputs = format!("gauge_psi={psi};tube={};rise_ft={feet};hardware_psi=1.5", tube.name);
            // The widest tubes would have to be longer than is answered.
            let Ok(found) = answer("handbook_line", &inputs) else {
                assert!(refused("handbook_line", &inputs).to_string().contains("narrower"));
                continue;
            };
            let metres = found.value.as_slice()[0];
            let back = format!("line_m={metres:e};tube={};rise_ft={feet};hardware_psi=1.5", tube.name);
            assert!((ask("handbook_pressure", &back, "gauge_psi") / psi - 1.0).abs() < 1e-13);
        }
    }
}

#[test]
fn no_line_and_no_pressure_are_refused_with_what_to_do() {
    let line = "tube=vinyl_3_16_in;temperature_c=4";
    for (function, inputs, parameter, words) in [
        // The faucet is too high.
        ("line_flow", format!("gauge_psi=1;line_ft=10;rise_ft=5;{line}"), "gauge_psi", "lift"),
        ("line_flow", format!("gauge_psi=0;line_ft=10;{line}"), "gauge_psi", "lift"),
        ("line_length", format!("gauge_psi=1;pour_seconds=12;rise_ft=5;{line}"), "gauge_psi", "lift"),
        ("handbook_line", "gauge_psi=2;rise_ft=5;tube=vinyl_3_16_in".into(), "gauge_psi", "rise and hardware"),
        // Nothing holds it back.
        ("line_flow", format!("gauge_psi=12;line_ft=0;fittings_multiplier=0;{line}"), "fittings_multiplier", "hold"),
        (
            "line_flow",
            "gauge_bar=30;line_m=0;fittings_multiplier=0;bore_mm=50;temperature_c=4".into(),
            "fittings_multiplier",
            "hold",
        ),
        // Even without a line.
        (
            "line_length",
            format!("gauge_psi=12;flow_us_fl_oz_per_s=8;{line}"),
            "flow_us_fl_oz_per_s",
            "even without any line",
        ),
        ("line_length", format!("gauge_psi=12;pour_seconds=2;{line}"), "pour_seconds", "even without any line"),
        // A line without end.
        ("line_length", "gauge_psi=12;pour_seconds=600;bore_mm=12;temperature_c=4".into(), "line_m", "longer line"),
        ("handbook_line", "gauge_psi=12;resistance_psi_per_ft=0".into(), "resistance_psi_per_ft", "narrower"),
        // Pressures of no keg.
        ("line_pressure", "line_m=500;pour_seconds=1;bore_mm=4;temperature_c=4".into(), "gauge_kpa", "bore"),
        ("handbook_pressure", "line_m=500;resistance_psi_per_ft=30".into(), "gauge_kpa", "length"),
        // More CO2 than any keg holds.
        ("filling_carbonation", "co2_g_per_l=29;fill_loss_volumes=1".into(), "co2_g_per_l", "less loss"),
    ] {
        let error = refused(function, &inputs);
        assert_eq!(error.code(), code::OUT_OF_REACH, "{inputs}: {error}");
        assert_eq!(error.parameter().as_str(), parameter, "{error}");
        assert!(error.to_string().contains(words), "{error}");
        let (low, high) = error.limits().expect("limits");
        let value = error.value().expect("a value");
        assert!(value <= low || value >= high, "{value} lies within {low} to {high}: {error}");
        println!("{error}");
    }
    // The limit that an error names is one: just inside there is an answer.
    let error = refused("line_length", &format!("gauge_psi=12;flow_us_fl_oz_per_s=8;{line}"));
    let most = error.limits().unwrap().1;
    assert!(answer("line_length", &format!("gauge_psi=12;flow_us_fl_oz_per_s={:e};{line}", 0.999 * most)).is_ok());
    assert!(answer("line_length", &format!("gauge_psi=12;flow_us_fl_oz_per_s={:e};{line}", 1.001 * most)).is_err());
    // What is missing, and what excludes itself.
    for (inputs, status, parameter) in [
        ("gauge_psi=12;temperature_c=4;pour_seconds=10", code::MISSING, "tube"),
        ("gauge_psi=12;temperature_c=4;tube=vinyl_3_16_in", code::MISSING, "flow_l_per_min"),
        ("gauge_psi=12;temperature_c=4;tube=vinyl_3_16_in;bore_mm=5;pour_seconds=10", code::EXCLUDED, "bore_mm"),
        (
            "gauge_psi=12;temperature_c=4;tube=vinyl_3_16_in;flow_us_fl_oz_per_s=2;pour_seconds=10",
            code::EXCLUDED,
            "pour_seconds",
        ),
        ("gauge_psi=12;temperature_c=4;tube=garden_hose;pour_seconds=10", code::UNKNOWN_CHOICE, "tube"),
        ("gauge_psi=12;temperature_c=4;bore_mm=0;pour_seconds=10", code::OUT_OF_RANGE, "bore_mm"),
    ] {
        let error = refused("line_length", inputs);
        assert_eq!((error.code(), error.parameter().as_str()), (status, parameter), "{error}");
    }
}

#[test]
fn a_faucet_below_the_keg_and_a_line_without_length_pour() {
    let level = ask("line_flow", "gauge_psi=8;line_ft=5;tube=vinyl_3_16_in;temperature_c=4", "flow_l_per_min");
    let below =
        ask("line_flow", "gauge_psi=8;line_ft=5;tube=vinyl_3_16_in;temperature_c=4;rise_m=-3", "flow_l_per_min");
    assert!(below > level);
    // Bernoulli: v = sqrt(2 p/(K rho)).
    let inputs = "gauge_bar=0.5;line_m=0;bore_mm=5;fittings_multiplier=3;temperature_c=4";
    let density = ask("drink_properties", "temperature_c=4", "density_kg_per_m3");
    let speed = (2.0 * 0.5e5 / (3.0 * density)).sqrt();
    assert!((ask("line_flow", inputs, "speed_m_per_s") / speed - 1.0).abs() < 1e-12);
}

#[test]
fn cautions_say_where_the_flow_is_unsteady_and_where_it_foams() {
    let has = |inputs: &str, code: &str| answer("line_flow", inputs).unwrap().notes.cautions.has(code);
    let wide = "line_ft=40;tube=vinyl_3_8_in;temperature_c=4";
    let reynolds = |psi: f64| ask("line_flow", &format!("gauge_psi={psi};{wide}"), "reynolds_multiplier");
    for psi in [0.5, 2.0, 3.0, 4.0, 6.0, 10.0] {
        let re = reynolds(psi);
        let inside = re > friction::LAMINAR && re < friction::TURBULENT;
        assert_eq!(has(&format!("gauge_psi={psi};{wide}"), "transition_flow"), inside, "{re}");
    }
    assert!(reynolds(0.5) < 2000.0 && (2000.0..4000.0).contains(&reynolds(3.0)) && reynolds(10.0) > 4000.0);
    assert!(has("gauge_psi=12;line_ft=3;tube=vinyl_3_16_in;temperature_c=4", "fast_pour"));
    assert!(!has("gauge_psi=12;line_ft=10;tube=vinyl_3_16_in;temperature_c=4", "fast_pour"));
    let growler = answer("filling_carbonation", "volumes=2.5;fill_method=tap_tube").unwrap();
    assert!(growler.notes.cautions.has("growler_warm"));
}

#[test]
fn filling_loses_what_it_says() {
    for (way, keep) in [("tap_tube", [0.85, 0.90, 0.80])] {
        for (noun, share) in ["expected", "least", "most"].iter().zip(keep) {
            let keg = ask("filling_carbonation", &format!("volumes=2.2;fill_method={way}"), &format!("{noun}_volumes"));
            assert!((keg * share / 2.2 - 1.0).abs() < 1e-14);
        }
    }
    for way in carb_core::basis::request::choices(carb_core::quantity::Key::FillMethod) {
        let inputs = format!("volumes=2.5;fill_method={way}");
        let [expected, least, most] =
            ["expected", "least", "most"].map(|noun| ask("filling_carbonation", &inputs, &format!("{noun}_volumes")));
        assert!(2.5 < least && least < expected && expected < most, "{way}");
    }
    assert_eq!(refused("filling_carbonation", "volumes=2.5").code(), code::MISSING);
    assert_eq!(
        refused("filling_carbonation", "volumes=2.5;fill_loss_volumes=0.1;fill_method=automatic").code(),
        code::EXCLUDED
    );
}

#[test]
fn a_blend_keeps_the_mass_of_its_co2() {
    let parts = "packaged_l=15;volumes=2.8;other_l=5;other_volumes=0.8";
    assert!((ask("blend", parts, "mixed_volumes") - 2.3).abs() < 1e-14);
    assert_eq!(ask("blend", parts, "kept_volumes"), ask("blend", parts, "mixed_volumes"));
    assert_eq!(ask("blend", parts, "released_g"), 0.0);
    for (bar, celsius) in [(0.0, 4.0), (0.2, 4.0), (0.6, 4.0), (0.6, 20.0), (3.0, 4.0)] {
        let inputs = format!("{parts};temperature_c={celsius};gauge_bar={bar};altitude_m=0");
        let [volume, mixed, kept, lost] = ["packaged_l", "mixed_co2_g_per_l", "kept_co2_g_per_l", "released_g"]
            .map(|name| ask("blend", &inputs, name));
        assert!((volume - 20.0).abs() < 1e-13);
        assert!((kept * volume + lost - mixed * volume).abs() < 1e-12, "{inputs}");
        let holds =
            ask("dissolved_co2", &format!("gauge_bar={bar};temperature_c={celsius};altitude_m=0"), "co2_g_per_l");
        assert_eq!(kept, mixed.min(holds), "{inputs}");
        let told = answer("blend", &inputs).unwrap().notes.cautions.has("blend_loses");
        assert_eq!(told, holds < mixed, "{inputs}");
    }
    // Either way round; and pressure without a temperature says nothing.
    let turned = "packaged_l=5;volumes=0.8;other_l=15;other_volumes=2.8";
    assert!((ask("blend", turned, "mixed_volumes") - 2.3).abs() < 1e-14);
    assert_eq!(refused("blend", &format!("{parts};gauge_bar=1")).parameter().as_str(), "temperature_c");
    assert_eq!(refused("blend", &format!("{parts};temperature_c=4")).code(), code::MISSING);
    assert_eq!(
        refused("blend", "packaged_l=900000;volumes=2;other_l=900000;other_volumes=1").code(),
        code::OUT_OF_REACH
    );
}

fn table(name: &str, inputs: &str) -> Vec<Vec<Cell>> {
    let mut rows = Vec::new();
    let request = if inputs.is_empty() { Request::new() } else { request(inputs).unwrap() };
    tables::named(name).unwrap().rows(&request, &Lists::new(), &mut |row| rows.push(row.to_vec())).unwrap();
    rows
}

#[test]
fn one_line_stands_side_by_side() {
    let number = |cell: Cell| match cell {
        Cell::Number(number) => number,
        other => panic!("{other:?}"),
    };
    let usual = "gauge_psi=11;tube=vinyl_3_16_in;rise_ft=2;temperature_c=4;pour_seconds=12";
    let rows = table("line_balance", usual);
    let ways: Vec<Cell> = rows.iter().map(|row| row[0]).collect();
    let names = ["handbook", "handbook_by_physics", "physics_trade", "physics_home", "physics_asked"];
    assert_eq!(ways, names.map(Cell::Text));
    // The same line by the functions.
    let feet: Vec<f64> = rows.iter().map(|row| number(row[1]) / 0.3048).collect();
    assert!((feet[0] - 10.0 / 3.0).abs() < 1e-12 && feet[1] == feet[0]);
    let asked = ask("line_length", usual, "line_ft");
    assert!((feet[4] - asked).abs() < 1e-9 && (feet[3] / feet[4] - 1.0).abs() < 0.01);
    // Common practice at home is three times the handbook's length.
    assert!(feet[3] / feet[0] > 2.7 && feet[3] / feet[0] < 3.3, "{feet:?}");
    // A bore of one's own has no handbook.
    let own = table("line_balance", "gauge_psi=11;bore_mm=4;rise_ft=2;temperature_c=4");
    assert_eq!(own.iter().map(|row| row[0]).collect::<Vec<_>>(), ["physics_trade", "physics_home"].map(Cell::Text));
    // What a row cannot answer, it says.
    let low = table("line_balance", "gauge_psi=1;tube=vinyl_3_16_in;rise_ft=5;temperature_c=4");
    assert!(low.iter().all(|row| row[1] == Cell::Missing && row[6] == Cell::Text("OUT_OF_REACH")), "{low:?}");
    let error = request("gauge_psi=11;bore_mm=500;temperature_c=4").unwrap();
    assert!(tables::named("line_balance").unwrap().rows(&error, &Lists::new(), &mut |_| {}).is_err());
}

/// The handbook's figures over what physics takes at their own flow: the spread that the table speaks of.
#[test]
fn handbooks_differ_from_physics_as_the_table_says() {
    for tube in TUBES {
        let inputs = format!(
            "line_m=1;tube={};flow_l_per_min={:e};fittings_multiplier=0;temperature_c=4",
            tube.name,
            tube.flow * 60_000.0
        );
        let physics = ask("line_pressure", &inputs, "line_drop_pa");
        let ratio = tube.resistance() / physics;
        println!("{}: {ratio:.2}", tube.name);
        let told = match tube.name.split('_').next().unwrap() {
            "vinyl" => 1.35..3.0,
            // At 4 °C the flow in 10 mm lies in the transition, where the rule is a little beyond a quarter.
            "metric" => 0.75..1.35,
            // The narrowest barrier tube, of polyethylene, is told as if it were half vinyl.
            _ if tube.name == "barrier_3_16_in" => 1.15..1.25,
            _ => 0.5..0.95,
        };
        assert!(told.contains(&ratio), "{}: {ratio}", tube.name);
        assert!(tube.range.0 <= tube.told && tube.told <= tube.range.1, "{}", tube.name);
    }
    assert_eq!(table("tubes", "").len(), TUBES.len());
    assert_eq!(table("filling_losses", "").len(), 5);
}

#[test]
fn arrays_are_answered_as_single_values_are() {
    use carb_core::basis::function::{Slices, Statuses};
    use carb_core::basis::kernel::Series;
    let function: &Function = named("line_flow").unwrap();
    let given = request("gauge_psi=11;tube=vinyl_3_16_in;rise_ft=2;temperature_c=4").unwrap();
    let feet: Vec<f64> = (0..300).map(|at| f64::from(at) * 0.1).collect();
    let name = Request::name("line_ft").unwrap();
    let (which, unit): (usize, &'static Unit) = function.find_output("pour_seconds").unwrap();
    let (mut out, mut status) = (vec![0.0; feet.len()], vec![0; feet.len()]);
    let series = [Series { name, values: &feet }];
    let statuses = Statuses::Every(&mut status);
    let slices =
        Slices { count: feet.len(), series: &series, which, unit, out: &mut out, also: None, statuses, keep: None };
    function.each(&given, slices).unwrap();
    for ((&line, &seconds), &status) in feet.iter().zip(&out).zip(&status) {
        let one = function.answer(&given.with_number(name, line), &mut NoSteps).unwrap();
        assert_eq!(one.value.as_slice()[which].to_bits(), seconds.to_bits());
        assert_eq!(status, one.notes.cautions.bits());
    }
}
