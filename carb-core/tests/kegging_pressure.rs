//! Pressures of kegging: blended gas, temperature, the keg that warms, natural carbonation, stones, charts; against
//! published tables, a general library, trade facts (common practice, named so), and themselves.

use carb_core::basis::Function;
use carb_core::basis::request::{Raw, Request};
use carb_core::basis::{Answer, Lists, Values};
use carb_core::error::{Error, code};
use carb_core::evidence::NoSteps;
use carb_core::evidence::caution::Level;
use carb_core::property::{co2_gas, water};
use carb_core::quantity::Unit;
use carb_core::quantity::unit::{CELSIUS, PSI, VOLUMES};
use carb_core::table::functions::named;
use carb_core::table::tables::{self, Cell};
use std::collections::BTreeMap;
use std::sync::Mutex;

const PUBLISHED: &str = include_str!("../checks/published/kegging_pressure.csv");
const FUNCTIONS: &str = include_str!("../checks/published/functions.csv");
const REFERENCE: &str = include_str!("../checks/reference/kegging_pressure.csv");

type Row = BTreeMap<&'static str, &'static str>;

/// The rows of a check file by the names of its header.
fn rows(csv: &'static str) -> Vec<Row> {
    let mut lines = csv.lines().filter(|line| !line.starts_with('#') && !line.is_empty());
    let header: Vec<_> = lines.next().expect("a header").split(',').collect();
    lines
        .map(|line| {
            let cells: Vec<_> = line.split(',').collect();
            assert_eq!(cells.len(), header.len(), "{line}");
            header.iter().copied().zip(cells).collect()
        })
        .collect()
}

/// How many outside values each test has checked; the last test to finish prints the sum.
fn checked(test: &'static str, count: usize) {
    static DONE: Mutex<BTreeMap<&str, usize>> = Mutex::new(BTreeMap::new());
    let mut done = DONE.lock().unwrap();
    done.insert(test, count);
    println!("{test}: {count}");
    if done.len() == TESTS {
        println!("outside values checked: {}", done.values().sum::<usize>());
    }
}

/// How many tests count outside values.
const TESTS: usize = 3;

fn request(inputs: &str) -> Request {
    let mut request = Request::new();
    for pair in inputs.split(';').filter(|pair| !pair.is_empty()) {
        let (name, value) = pair.split_once('=').expect("name=value");
        let raw = value.parse().map_or(Raw::Text(value), Raw::Number);
        request.set(name, raw).unwrap_or_else(|error| panic!("{inputs}: {error}"));
    }
    request
}

fn answer(function: &str, inputs: &str) -> Result<Answer<Values>, Error> {
    named(function).unwrap().answer(&request(inputs), &mut NoSteps)
}

fn ask(function: &str, inputs: &str, output: &str) -> f64 {
    let answer = answer(function, inputs).unwrap_or_else(|error| panic!("{function} {inputs}: {error}"));
    for (at, place) in named(function).unwrap().outputs.iter().enumerate() {
        for unit in place.key.dimension().into_iter().flat_map(Unit::of) {
            if Function::output_name(*place, unit).as_str() == output {
                return unit.from_si(answer.value.as_slice()[at]);
            }
        }
    }
    panic!("{function} has no output {output}")
}

fn of(row: &Row) -> (f64, f64) {
    (ask(row["function"], row["inputs"], row["output"]), row["value"].parse().unwrap())
}

fn near(got: f64, wanted: f64, tolerance: f64, what: &str) {
    println!("{what}: {got:.4} for {wanted} ({:+.4})", got - wanted);
    assert!((got - wanted).abs() <= tolerance, "{what}: {got} for {wanted}");
}

#[test]
fn every_published_row_is_answered_within_its_tolerance() {
    let mut count = 0;
    for row in rows(PUBLISHED) {
        assert!(!row["reason"].is_empty());
        let (got, value) = of(&row);
        if row["tolerance"].is_empty() {
            println!("{}: {got:.4} for {value}, not reproduced: {}", row["id"], row["reason"]);
            continue;
        }
        near(got, value, row["tolerance"].parse().unwrap(), row["id"]);
        count += 1;
    }
    checked("published rows", count);
}

#[test]
fn the_whole_table_of_dispense_gas_is_met_to_three_hundredths() {
    // The cells with CO2 alone, which the check of all functions allows more room for. A cell of one place was rounded
    // by up to 0.05, and has 0.03 beside that; one of two places has its rounding within the 0.03. (The talk's table,
    // which is another chart, leaves the fit by up to 0.041: it stands in functions.csv.)
    let cells: Vec<Row> = rows(FUNCTIONS).into_iter().filter(|row| row["source"] == "witte").collect();
    assert!(cells.len() >= 7);
    for row in &cells {
        let (got, value) = of(row);
        let places = row["value"].split_once('.').map_or(0, |(_, places)| places.len());
        near(got, value, if places < 2 { 0.08 } else { 0.03 }, row["id"]);
    }
}

#[test]
fn a_brewery_chart_by_altitude_is_met_to_5000_feet() {
    let cells: Vec<Row> = rows(FUNCTIONS)
        .into_iter()
        .filter(|row| row["source"] == "newbelgium" && row["function"] == "keg_pressure")
        .collect();
    assert!(cells.len() >= 13);
    for row in cells {
        // Half a printed digit is 0.05 psi of it; the rest is what the fit of another chart and the straight line of
        // half a psi for 1000 ft leave.
        let (got, value) = of(&row);
        near(got, value, 0.25, row["id"]);
    }
    // Their row at 12 000 ft goes on along the straight line, and so leaves the atmosphere.
    let row = rows(PUBLISHED).into_iter().find(|row| row["id"] == "altitude_40f_12000ft").unwrap();
    let (got, value) = of(&row);
    println!("12 000 ft: {:.3} psi less than the straight line", value - got);
    assert!((0.65..0.85).contains(&(value - got)));
    let sea = ask("keg_pressure", "volumes=2.5;temperature_f=40;altitude_m=0", "gauge_psi");
    near(sea + 12.0 * 0.5, value, 0.2, "the straight line itself");
}

#[test]
fn the_associations_example_is_met_but_for_the_vapour() {
    // Inputs of a printed example (Draught Beer Quality Manual, appendix C): a keg that needs 12 psi of CO2, a gas with
    // 70 %. The trade counts absolute pressure over share, at 14.7 psi of air: 26.7/0.7 - 14.7 psi, and 26.7/36.7.
    let (by_trade, share_by_trade) = (26.7 / 0.7 - 14.7, 100.0 * 26.7 / 36.7);
    let air = "temperature_f=38;ambient_psi=14.7";
    let held = ask("dissolved_co2", &format!("gauge_psi=12;{air}"), "volumes");
    let ours = ask("keg_pressure", &format!("volumes={held};{air};co2_percent=70"), "gauge_psi");
    // The vapour needs no sharing: its 0.11 psi at 38 °F times 1/0.7 - 1.
    near(ours, by_trade, 0.06, "psi under 70 % CO2");
    let vapour = PSI.from_si(water::vapour_pressure(CELSIUS.to_si(30.0 / 9.0)));
    near(by_trade - ours, vapour * (1.0 / 0.7 - 1.0), 1e-6, "left out by the trade");
    let share = ask("gas_blend", &format!("volumes={held};{air};gauge_psi=22"), "co2_percent");
    near(share, share_by_trade, 0.1, "share for 22 psi");
    near(by_trade, 23.44, 0.005, "the trade's formula");
    near(share_by_trade, 72.8, 0.05, "the trade's formula");
    // The common error, to scale the gauge pressure, would make nearly twice as much of 25 % at 40 psi.
    let right = ask("dissolved_co2", &format!("gauge_psi=40;{air};co2_percent=25"), "volumes");
    let wrong = ask("dissolved_co2", &format!("gauge_psi=10;{air}"), "volumes");
    near(right, 1.32, 0.03, "25 % at 40 psi");
    near(wrong, 2.38, 0.03, "as if the gauge pressure were scaled");
}

#[test]
fn sealed_kegs_and_fermenters_agree_with_a_general_library() {
    let cells = rows(REFERENCE);
    for row in &cells {
        let inputs = format!("{};altitude_m=0;basis=handbook", row["inputs"]);
        let (got, value) = (ask(row["function"], &inputs, row["output"]), row["value"].parse().unwrap());
        // The gas equation is within 0.15 % of the library's, of a share of the CO2 that is at most a third, and of the
        // water 0.01 %: in pressure a ten-thousandth, 0.005 psi; in what is dissolved 0.0005 volumes. The gravity knows
        // the gas over the drink only.
        let tolerance = match row["output"] {
            "drop_sg" => 1e-6,
            "expected_volumes" => 5e-4,
            _ => 0.005,
        };
        near(got, value, tolerance, &format!("{} {}", row["function"], row["inputs"]));
    }
    assert!(cells.len() > 80);
    checked("general library", cells.len());
}

#[test]
fn a_keg_that_warms_is_near_what_the_ideal_gas_says() {
    // Worked by hand with the chart's fit, the ideal gas, a volume of 1.9635 g/L and a liquid that does not expand: 2.5
    // volumes at 3.3 °C. At 38 °C the liquid takes a fifth of a small headspace, which is 0.3 psi; the real gas is 2 %
    // denser, which is 0.4 psi where a third of the keg is gas. Below 25 °C both are small.
    let mut count = 0;
    for (headspace, tolerances, cells) in [
        (3.5, [0.06, 0.06, 0.06, 0.15, 0.35], [17.4, 28.4, 34.5, 40.9, 51.5]),
        (50.0, [0.06, 0.06, 0.1, 0.2, 0.4], [15.9, 23.2, 26.9, 30.5, 36.0]),
    ] {
        for ((t, psi), tolerance) in [10.0, 20.0, 25.0, 30.0, 38.0].into_iter().zip(cells).zip(tolerances) {
            let inputs = format!(
                "volumes=2.5;filling_c=3.3;temperature_c={t};headspace_percent={headspace};altitude_m=0;basis=handbook"
            );
            near(ask("warmed_keg", &inputs, "expected_gauge_psi"), psi, tolerance, &inputs);
            count += 1;
        }
    }
    for (c, psi) in [(12.0, 19.7), (18.0, 26.5), (20.0, 29.0)] {
        let inputs = format!("volumes=2.5;temperature_c={c};final_sg=1.01;fermenter_headspace_percent=5;altitude_m=0");
        // Half a printed digit, and the same fit.
        near(ask("spunding", &inputs, "relief_gauge_psi"), psi, 0.06, "relief pressure");
        count += 1;
    }
    // From 0.84 to 2.5 volumes: points of gravity, by headspace; printed to a tenth, and our volume 0.7 % larger.
    for (headspace, points) in [(0, 3.4), (5, 3.6), (10, 3.7), (30, 4.5)] {
        let inputs = format!(
            "volumes=2.5;start_volumes=0.84;temperature_c=20;final_sg=1.01;fermenter_headspace_percent={headspace};altitude_m=0"
        );
        near(1e3 * ask("spunding", &inputs, "drop_sg"), points, 0.1, "points above the end");
        count += 1;
    }
    println!("{count} values worked by hand");
}

#[test]
fn the_slopes_of_the_chart_are_those_worked_by_hand() {
    // Of the chart's fit: volumes per psi and per °C, psi per °C, at pairs of °C and psi; two printed digits.
    let volumes =
        |c: f64, psi: f64| ask("dissolved_co2", &format!("gauge_psi={psi};temperature_c={c};altitude_m=0"), "volumes");
    let pressure =
        |v: f64, c: f64| ask("keg_pressure", &format!("volumes={v};temperature_c={c};altitude_m=0"), "gauge_psi");
    for (c, psi, v, per_psi, per_c, psi_per_c) in [
        (0.0, 8.0, 2.46, 0.108, -0.085, 0.79),
        (3.3, 11.3, 2.51, 0.097, -0.085, 0.88),
        (8.0, 15.0, 2.45, 0.083, -0.080, 0.97),
        (12.0, 20.0, 2.52, 0.073, -0.079, 1.09),
        (20.0, 27.6, 2.42, 0.057, -0.069, 1.20),
    ] {
        let h = 0.01;
        near(volumes(c, psi), v, 0.006, "volumes");
        near((volumes(c, psi + h) - volumes(c, psi - h)) / (2.0 * h), per_psi, 0.0011, "volumes per psi");
        near((volumes(c + h, psi) - volumes(c - h, psi)) / (2.0 * h), per_c, 0.0011, "volumes per °C");
        let held = volumes(c, psi);
        near((pressure(held, c + h) - pressure(held, c - h)) / (2.0 * h), psi_per_c, 0.011, "psi per °C");
    }
}

#[test]
fn a_growler_is_no_pressure_vessel() {
    // Worked by hand: beer of 2.5 volumes that is filled at 4 °C under air, 5 % of its volume, keeps 2.41 in it, comes to
    // 25 to 26 psi cold, and to about 45 psi in a room of 22 °C. That growlers are to be kept cold is common practice.
    let air = "volumes=2.41;filling_c=4;headspace_percent=5;air_abs_kpa=101.325;altitude_m=0;basis=handbook";
    let cold = ask("warmed_keg", &format!("{air};temperature_c=4"), "expected_gauge_psi");
    let warm = ask("warmed_keg", &format!("{air};temperature_c=22"), "expected_gauge_psi");
    near(cold, 25.5, 0.6, "cold, psi");
    near(warm, 45.0, 1.5, "in the room, psi");
    let found = answer("warmed_keg", &format!("{air};temperature_c=22;keg_rating_gauge_psi=0")).unwrap();
    assert!(found.notes.cautions.has("vessel_rating_danger") && found.notes.cautions.any(Level::Danger));
    let found = answer("warmed_keg", &format!("{air};temperature_c=22")).unwrap();
    assert!(found.notes.cautions.has("vessel_unrated") && !found.notes.cautions.any(Level::Danger));
    let text = found.notes.cautions.iter().map(ToString::to_string).collect::<String>();
    assert!(text.contains("marking") && text.contains("relief valve") && text.contains("Growlers"), "{text}");
}

#[test]
fn trade_facts_of_stones_and_altitude_hold() {
    // Common practice, no source: 1 psi for 2000 ft, half a psi for 1 °F.
    let psi = |inputs: &str| ask("keg_pressure", inputs, "gauge_psi");
    let sea = psi("volumes=2.5;temperature_f=38;altitude_ft=0");
    near(psi("volumes=2.5;temperature_f=38;altitude_ft=2000") - sea, 1.0, 0.06, "2000 ft");
    near(psi("volumes=2.5;temperature_f=39;altitude_ft=0") - sea, 0.5, 0.03, "1 °F");
    // Worked by hand with the trade's formula: 2.5 volumes under 70 % CO2 take 24.8 psi at 5000 ft, 1.2 volumes under
    // 25 % take 35.1 psi; a keg half a metre deep adds 0.72 psi at its bottom.
    near(psi("volumes=2.5;temperature_f=38;altitude_ft=5000;co2_percent=70"), 24.8, 0.1, "70 % at 5000 ft");
    // The vapour, which that formula leaves out, is 0.11 psi times 1/0.25 - 1 here: 0.34 psi.
    near(psi("volumes=1.2;temperature_f=38;altitude_ft=0;co2_percent=25"), 35.1 - 0.34, 0.06, "25 %");
    let stone = "volumes=2.5;temperature_f=38;depth_m=0.5;wetting_psi=4;margin_psi=1;sg=1.010;altitude_m=0";
    near(ask("stone_pressure", stone, "head_drop_psi"), 0.72, 0.006, "half a metre of beer");
    near(ask("stone_pressure", stone, "surface_gauge_psi"), sea, 1e-12, "what sets the carbonation");
    near(ask("stone_pressure", stone, "gauge_psi"), sea + 0.72 + 4.0 + 1.0, 0.006, "at the regulator");
    let found = answer("stone_pressure", stone).unwrap();
    assert!(found.notes.cautions.has("wetting_in_water"));
    checked("trade facts", 2);
}

/// Numbers from 0 to 1, the same at every run.
struct Dice(u64);

impl Dice {
    fn from(&mut self, low: f64, high: f64) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        low + (high - low) * ((self.0 >> 11) as f64 / (1_u64 << 53) as f64)
    }
}

const DRINKS: &[&str] = &[
    "beverage=beer",
    "beverage=beer;basis=physical",
    "beverage=beer;model=chart_quadratic",
    "beverage=beer;model=european",
    "beverage=soft_drink",
    "beverage=wine",
    "beverage=water;model=carroll_water",
];

#[test]
fn pressure_temperature_carbonation_and_gas_go_round() {
    let mut dice = Dice(7);
    for at in 0..400 {
        let drink = DRINKS[at % DRINKS.len()];
        let (v, c, share) = (dice.from(1.5, 4.0), dice.from(0.0, 20.0), dice.from(25.0, 100.0));
        let air = dice.from(0.0, 1.0e5);
        let rest = format!("{drink};altitude_m={};air_abs_pa={air}", dice.from(0.0, 2500.0));
        let told = format!("{rest};co2_percent={share}");
        let gauge = ask("keg_pressure", &format!("volumes={v};temperature_c={c};{told}"), "gauge_pa");
        // Differences of pressures around an atmosphere: 1e-12 of that, and what the solubility's own inverse leaves.
        let same = |got: f64, wanted: f64, scale: f64, what: &str| {
            assert!((got - wanted).abs() <= 1e-11 * scale, "{what}: {got} for {wanted}, {told}");
        };
        let back = ask("dissolved_co2", &format!("gauge_pa={gauge};temperature_c={c};{told}"), "volumes");
        same(back, v, 4.0, "carbonation");
        let temperature = ask("keg_temperature", &format!("volumes={v};gauge_pa={gauge};{told}"), "temperature_c");
        same(temperature, c, 300.0, "temperature");
        let blend = ask("gas_blend", &format!("volumes={v};temperature_c={c};gauge_pa={gauge};{rest}"), "co2_percent");
        same(blend, share, 100.0, "share");
    }
}

#[test]
fn pure_gas_by_the_law_of_blends_is_pure_gas() {
    let mut dice = Dice(11);
    for at in 0..100 {
        let drink = DRINKS[at % DRINKS.len()];
        let state =
            format!("volumes={};temperature_c={};{drink};altitude_m=300", dice.from(1.5, 4.0), dice.from(0.0, 20.0));
        let plain = ask("keg_pressure", &state, "abs_pa");
        let law = ask("keg_pressure", &format!("{state};co2_percent=100"), "abs_pa");
        assert!((plain - law).abs() <= 1e-15 * 4.0 * plain, "{state}");
        // Air adds itself, whatever else is there.
        let airy = ask("keg_pressure", &format!("{state};air_abs_pa=50000"), "abs_pa");
        assert!((airy - plain - 5.0e4).abs() < 1e-9, "{state}");
    }
}

#[test]
fn more_pressure_holds_more_and_less_co2_holds_less() {
    let held = |psi: f64, share: f64, c: f64| {
        ask("dissolved_co2", &format!("gauge_psi={psi};temperature_c={c};co2_percent={share};altitude_m=0"), "volumes")
    };
    for step in 0..20 {
        let psi = 10.0 + f64::from(step);
        assert!(held(psi + 1.0, 60.0, 4.0) > held(psi, 60.0, 4.0));
        assert!(held(psi, 61.0, 4.0) > held(psi, 60.0, 4.0));
        assert!(held(psi, 60.0, 5.0) < held(psi, 60.0, 4.0));
        let keg = |t: f64| {
            let inputs = format!("volumes=2.5;filling_c=4;temperature_c={t};headspace_percent=4;altitude_m=0");
            (ask("warmed_keg", &inputs, "expected_gauge_psi"), ask("warmed_keg", &inputs, "worst_gauge_psi"))
        };
        let (t, warmer) = (2.0 + 2.0 * f64::from(step), 3.0 + 2.0 * f64::from(step));
        assert!(keg(warmer).0 > keg(t).0 && keg(warmer).1 > keg(t).1 && keg(t).1 > keg(t).0, "{t}");
        let closing = |headspace: f64| {
            let inputs = format!(
                "volumes=2.5;temperature_c=15;final_sg=1.01;fermenter_headspace_percent={headspace};altitude_m=0"
            );
            ask("spunding", &inputs, "closing_sg")
        };
        assert!(closing(psi + 1.0) > closing(psi));
    }
}

#[test]
fn a_keg_keeps_its_co2() {
    let mut dice = Dice(23);
    let dense = |p: f64, t: f64| co2_gas::density(p, t, co2_gas::second_virial(t));
    for at in 0..300 {
        let drink = DRINKS[at % DRINKS.len()];
        let (v, headspace) = (dice.from(1.8, 4.0), dice.from(2.0, 60.0));
        let (cold, t) = (CELSIUS.to_si(dice.from(0.0, 10.0)), CELSIUS.to_si(dice.from(0.0, 40.0)));
        let rest = format!("{drink};fermentable_g_per_l=0;altitude_m=0");
        let inputs = format!("volumes={v};filling_k={cold};temperature_k={t};headspace_percent={headspace};{rest}");
        let Ok(found) = answer("warmed_keg", &inputs) else { panic!("{inputs}") };
        let [_, total, dissolved, ..] = found.value.as_slice() else { panic!() };
        // What there was: in the drink, and as gas at the pressure that holds it.
        let basis = if drink.contains("basis") { "" } else { ";basis=physical" };
        let rest = format!("{drink}{basis};altitude_m=0");
        let sealed = ask("keg_pressure", &format!("volumes={v};temperature_k={cold};{rest}"), "abs_pa");
        let before = VOLUMES.to_si(v) + dense(sealed - water::vapour_pressure(cold), cold) * headspace / 100.0;
        let liquid = water::density(cold) / water::density(t);
        let gas = 1.0 + headspace / 100.0 - liquid;
        let after = dissolved * liquid + dense(total - water::vapour_pressure(t), t) * gas;
        assert!((after / before - 1.0).abs() < 1e-12, "{inputs}: {before} became {after}");
        // At the temperature at which it was sealed nothing has happened.
        let same = format!(
            "volumes={v};filling_k={cold};temperature_k={cold};headspace_percent={headspace};{rest};fermentable_g_per_l=0"
        );
        let back = ask("warmed_keg", &same, "expected_volumes");
        assert!((back / v - 1.0).abs() < 1e-12, "{same}: {back}");
    }
}

#[test]
fn a_valve_and_no_valve_come_to_the_same_pressure() {
    let mut dice = Dice(31);
    for at in 0..100 {
        let basis = ["handbook", "physical"][at % 2];
        let rest = format!(
            "temperature_c={};final_sg={};fermenter_headspace_percent={};start_volumes=0.8;altitude_m=200;basis={basis}",
            dice.from(5.0, 25.0),
            dice.from(1.004, 1.02),
            dice.from(3.0, 60.0)
        );
        let spunding = format!("volumes={};{rest}", dice.from(1.5, 3.5));
        let relief = ask("spunding", &spunding, "relief_gauge_pa");
        let closing = ask("spunding", &spunding, "closing_sg");
        // Closed there without a valve it comes to what the valve is set to: a gravity's rounding is 1e-16 of 1, and of
        // the few points that ferment 1e-13.
        let shut = ask("closed_fermentation", &format!("current_sg={closing};{rest}"), "expected_gauge_pa");
        assert!((shut - relief).abs() < 1e-5, "{spunding}: {relief} and {shut} Pa");
        let worst = ask("closed_fermentation", &format!("current_sg={closing};{rest}"), "worst_gauge_pa");
        assert!(worst > shut, "{spunding}");
    }
}

#[test]
fn what_cannot_be_held_is_refused_with_words() {
    for (function, inputs, expected, words) in [
        ("gas_blend", "volumes=2.5;temperature_f=38;gauge_psi=8;altitude_m=0", code::OUT_OF_REACH, "CO2 alone"),
        ("gas_blend", "volumes=0.02;temperature_f=38;gauge_psi=40;altitude_m=0", code::TARGET_BELOW_HELD, "1 % CO2"),
        ("keg_temperature", "volumes=5;gauge_psi=2;altitude_m=0", code::OUT_OF_REACH, "-5 °C"),
        ("keg_temperature", "volumes=0.5;gauge_psi=40;altitude_m=0", code::TARGET_BELOW_HELD, "60 °C"),
        ("keg_pressure", "volumes=0.3;temperature_c=4;altitude_m=0;co2_percent=75", code::TARGET_BELOW_HELD, "gas"),
        (
            "spunding",
            "volumes=0.5;temperature_c=12;final_sg=1.01;fermenter_headspace_percent=10;altitude_m=0",
            code::TARGET_BELOW_HELD,
            "open fermenter",
        ),
        (
            "spunding",
            "volumes=10;temperature_c=30;final_sg=1.01;fermenter_headspace_percent=1000;altitude_m=0",
            code::OUT_OF_REACH,
            "fermenter_headspace_percent = 1000",
        ),
        (
            "spunding",
            "volumes=10;temperature_c=10;final_sg=1.15;fermenter_headspace_percent=100;altitude_m=0",
            code::OUT_OF_REACH,
            "final_sg = 1.15",
        ),
        (
            "spunding",
            "volumes=2.5;temperature_c=50;final_sg=1.01;fermenter_headspace_percent=10;altitude_m=0",
            code::OUT_OF_RANGE,
            "temperature_c = 50",
        ),
        (
            "closed_fermentation",
            "current_sg=1.01;final_sg=1.014;temperature_c=18;fermenter_headspace_percent=10;altitude_m=0",
            code::OUT_OF_RANGE,
            "final_sg = 1.014",
        ),
        (
            "closed_fermentation",
            "current_sg=1.06;final_sg=1.01;temperature_c=18;fermenter_headspace_percent=10;altitude_m=0",
            code::PRESSURE_TOO_HIGH,
            "current_sg",
        ),
        (
            "warmed_keg",
            "volumes=2.5;filling_c=4;temperature_c=40;headspace_percent=0;altitude_m=0",
            code::VESSEL_FULL,
            "filling_c",
        ),
        (
            "stone_pressure",
            "volumes=0.5;temperature_c=4;depth_m=1;wetting_psi=4;altitude_m=0",
            code::TARGET_BELOW_HELD,
            "stone",
        ),
    ] {
        let error = answer(function, inputs).expect_err(inputs);
        assert_eq!(error.code(), expected, "{inputs}: {error}");
        assert!(error.to_string().contains(words), "{error}");
    }
}

#[test]
fn the_limits_that_errors_name_are_the_ends() {
    // The most that the pressure holds: pure CO2 then, or as cold as any drink.
    let state = "temperature_f=38;gauge_psi=8;altitude_m=0";
    let most = answer("gas_blend", &format!("volumes=2.5;{state}")).unwrap_err().limits().unwrap().1;
    assert!((most / ask("dissolved_co2", state, "volumes") - 1.0).abs() < 1e-12);
    near(ask("gas_blend", &format!("volumes={most};{state}"), "co2_percent"), 100.0, 1e-9, "CO2 alone");
    let air = "gauge_psi=2;altitude_m=0";
    let most = answer("keg_temperature", &format!("volumes=5;{air}")).unwrap_err().limits().unwrap().1;
    near(most, ask("dissolved_co2", &format!("temperature_c=-5;{air}"), "volumes"), 1e-12, "at -5 °C");
    let room = |headspace: f64| {
        let inputs =
            format!("volumes=10;temperature_c=30;final_sg=1.01;fermenter_headspace_percent={headspace};altitude_m=0");
        answer("spunding", &inputs)
    };
    let most = room(1000.0).unwrap_err().limits().unwrap().1;
    assert!(room(most * (1.0 - 1e-9)).is_ok() && room(most * (1.0 + 1e-6)).is_err());
    let end = |sg: f64| {
        let inputs = format!("volumes=10;temperature_c=10;final_sg={sg};fermenter_headspace_percent=100;altitude_m=0");
        answer("spunding", &inputs)
    };
    let most = end(1.15).unwrap_err().limits().unwrap().1;
    assert!(end(most - 1e-9).is_ok() && end(most + 1e-6).is_err(), "{most}");
}

#[test]
fn a_vessel_is_judged_by_its_rating() {
    let spunding = "volumes=2.5;temperature_c=20;final_sg=1.01;fermenter_headspace_percent=10;altitude_m=0";
    let closed = "current_sg=1.016;final_sg=1.01;temperature_c=20;fermenter_headspace_percent=10;altitude_m=0";
    let keg = "volumes=2.5;filling_c=4;temperature_c=35;headspace_percent=4;altitude_m=0";
    for (function, inputs, judged) in
        [("spunding", spunding, "relief"), ("closed_fermentation", closed, "worst"), ("warmed_keg", keg, "worst")]
    {
        let pressure = ask(function, inputs, &format!("{judged}_gauge_kpa"));
        for (rating, level) in [(pressure - 0.1, Some(Level::Danger)), (pressure + 0.1, None)] {
            let found = answer(function, &format!("{inputs};keg_rating_gauge_kpa={rating}")).unwrap();
            assert_eq!(found.notes.cautions.has("vessel_rating_danger"), level.is_some(), "{function}");
            assert_eq!(found.notes.cautions.any(Level::Danger), level.is_some(), "{function}");
            assert!(!found.notes.cautions.has("vessel_unrated"));
        }
        assert!(answer(function, inputs).unwrap().notes.cautions.has("vessel_unrated"), "{function}");
    }
}

fn chart(inputs: &str) -> Vec<[f64; 3]> {
    let mut rows = Vec::new();
    let table = tables::named("carbonation_chart").unwrap();
    table
        .rows(&request(inputs), &Lists::new(), &mut |cells| {
            let [Cell::In(t, of_t), Cell::In(p, of_p), Cell::Number(c)] = cells else { panic!("three numbers") };
            rows.push([of_t.to_si(*t), of_p.to_si(*p), *c]);
        })
        .unwrap_or_else(|error| panic!("{inputs}: {error}"));
    rows
}

#[test]
fn the_chart_is_dissolved_co2_on_its_grid() {
    for (inputs, count) in [
        ("chart=us;altitude_m=0", 16 * 16),
        ("altitude_m=0", 16 * 23),
        ("chart=metric;altitude_m=1600;co2_percent=70;basis=physical", 16 * 23),
        ("chart=us;ambient_kpa=95;beverage=soft_drink;air_abs_kpa=20", 16 * 16),
    ] {
        let rows = chart(inputs);
        assert_eq!(rows.len(), count, "{inputs}");
        let rest: Vec<&str> = inputs.split(';').filter(|pair| !pair.starts_with("chart")).collect();
        for [t, p, c] in rows {
            let state = format!("temperature_k={t};gauge_pa={p};{}", rest.join(";"));
            assert_eq!(ask("dissolved_co2", &state, "co2_g_per_l").to_bits(), c.to_bits(), "{state}");
        }
    }
    let first = chart("chart=us;altitude_m=0")[0];
    assert!((first[0] - CELSIUS.to_si(-10.0 / 9.0)).abs() < 1e-9 && (PSI.from_si(first[1]) - 4.0).abs() < 1e-12);
    let last = chart("altitude_m=0").pop().unwrap();
    assert_eq!((last[0], last[1]), (288.15, 2.4e5));
    // A printed cell of the chart, 38 °F and 12 psi: 2.57 volumes (Miller 1994), within the fit's 0.044 and a half digit.
    let cell = chart("chart=us;altitude_m=0")
        .into_iter()
        .find(|row| (row[0] - CELSIUS.to_si(30.0 / 9.0)).abs() < 1e-6 && (PSI.from_si(row[1]) - 12.0).abs() < 1e-9);
    near(VOLUMES.from_si(cell.unwrap()[2]), miller(), 0.049, "38 °F and 12 psi");
    // Over much air most cells of the chart hold nothing: they are left out, and the rest stands.
    let airy = chart("altitude_m=0;air_abs_kpa=200");
    assert!(!airy.is_empty() && airy.len() < 16 * 23);
}

fn miller() -> f64 {
    let row = rows(FUNCTIONS).into_iter().find(|row| row["id"] == "miller_38f_12psi").unwrap();
    row["value"].parse().unwrap()
}

#[test]
fn usual_markings_are_common_practice_and_in_order() {
    let table = tables::named("keg_ratings").unwrap();
    let mut count = 0;
    table
        .rows(&Request::new(), &Lists::new(), &mut |cells| {
            let [_, _, Cell::Number(low), Cell::Number(high), Cell::Text(standing)] = cells else {
                panic!("{cells:?}")
            };
            assert!(0.0 <= *low && low <= high && *standing == "common practice, no source");
            count += 1;
        })
        .unwrap();
    assert!(count >= 8 && table.summary.contains("marking"));
}
