//! The bottling job: which bottles, how much, whether they stand it, and when they are ready.
#![cfg(feature = "json")]

use carb_core::basis::lists::{BOTTLES, HISTORY};
use carb_core::basis::request::Raw;
use carb_core::basis::{FillOrder, Lists, Request};
use carb_core::bottling::fill::{Kind, fill};
use carb_core::error::code;
use carb_core::evidence::NoSteps;
use carb_core::plan::json::{answer_text, bottling_of, plan_of};
use carb_core::quantity::{Name, Unit};
use carb_core::table::tables::Cell;
use carb_core::table::{functions, tables};

/// A small generator, so that the same cases are tried everywhere.
struct Dice(u64);

impl Dice {
    fn roll(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }
    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.roll()
    }
    fn below(&mut self, count: usize) -> usize {
        ((self.roll() * count as f64) as usize).min(count - 1)
    }
}

fn given(inputs: &str) -> Request {
    let mut request = Request::new();
    for pair in inputs.split(';').filter(|pair| !pair.is_empty()) {
        let (name, value) = pair.split_once('=').expect("name=value");
        let raw = match (value, value.parse()) {
            ("true", _) => Raw::Flag(true),
            ("false", _) => Raw::Flag(false),
            (_, Ok(number)) => Raw::Number(number),
            (text, Err(_)) => Raw::Text(text),
        };
        request.set(name, raw).unwrap_or_else(|error| panic!("{inputs}: {error}"));
    }
    request
}

fn ask(function: &str, inputs: &str, output: &str) -> Result<f64, carb_core::Error> {
    let function = functions::named(function).expect("a function");
    let answer = function.answer(&given(inputs), &mut NoSteps)?;
    let (which, unit): (usize, &Unit) = function.find_output(output).expect("an output");
    Ok(unit.from_si(answer.value.as_slice()[which]))
}

fn must(function: &str, inputs: &str, output: &str) -> f64 {
    ask(function, inputs, output).unwrap_or_else(|error| panic!("{function} {inputs}: {error}"))
}

fn cautions(function: &str, inputs: &str) -> Vec<&'static str> {
    let function = functions::named(function).expect("a function");
    let answer = function.answer(&given(inputs), &mut NoSteps).unwrap_or_else(|error| panic!("{inputs}: {error}"));
    answer.notes.cautions.iter().map(|caution| caution.kind.code).collect()
}

// Which bottles.

const MILLILITRE: f64 = 1.0e-6;

/// What a filling is worth, the least first.
fn worth(order: FillOrder, kinds: &[Kind], filled: &[u32], volume: f64) -> (i64, i64, i64) {
    let used: f64 = kinds.iter().zip(filled).map(|(kind, &x)| kind.content * f64::from(x)).sum();
    let leftover = ((volume - used) / (0.1 * MILLILITRE)).round() as i64;
    let bottles = filled.iter().map(|&x| i64::from(x)).sum();
    let mut sizes: Vec<u64> =
        kinds.iter().zip(filled).filter(|(_, x)| **x > 0).map(|(kind, _)| kind.content.to_bits()).collect();
    sizes.sort_unstable();
    sizes.dedup();
    let sizes = sizes.len() as i64;
    match order {
        FillOrder::FewestBottles => (bottles, leftover, sizes),
        FillOrder::FewestSizes => (sizes, leftover, bottles),
        _ => (leftover, bottles, sizes),
    }
}

/// Every way to fill the bottles.
fn every_way(kinds: &[Kind], volume: f64, visit: &mut impl FnMut(&[u32])) {
    fn go(kinds: &[Kind], left: f64, filled: &mut Vec<u32>, visit: &mut impl FnMut(&[u32])) {
        let Some(kind) = kinds.get(filled.len()) else { return visit(filled) };
        for x in 0..=kind.count {
            let rest = left - f64::from(x) * kind.content;
            if rest < -1e-10 {
                break;
            }
            filled.push(x);
            go(kinds, rest, filled, visit);
            filled.pop();
        }
    }
    go(kinds, volume, &mut Vec::new(), visit);
}

#[test]
fn the_choice_of_bottles_is_the_best_that_there_is() {
    const SIZES: [f64; 9] = [250.0, 275.0, 330.0, 341.0, 354.9, 375.0, 500.0, 568.0, 750.0];
    let mut dice = Dice(7);
    let (mut ways, mut filled_all) = (0_u64, 0);
    for _ in 0..800 {
        let kinds: Vec<Kind> = (0..1 + dice.below(4))
            .map(|_| Kind { content: SIZES[dice.below(SIZES.len())] * MILLILITRE, count: dice.below(7) as u32 })
            .collect();
        let held: f64 = kinds.iter().map(|kind| kind.content * f64::from(kind.count)).sum();
        // Now and then exactly what some bottles hold.
        let volume = match dice.below(3) {
            0 => kinds.iter().map(|k| k.content * dice.below(k.count as usize + 1) as f64).sum(),
            _ => (held * dice.roll() / MILLILITRE).round() * MILLILITRE,
        };
        let least = kinds.iter().filter(|k| k.count > 0).map(|k| k.content).fold(f64::MAX, f64::min);
        for order in [FillOrder::LeastLeftover, FillOrder::FewestBottles, FillOrder::FewestSizes] {
            let found = fill(volume, &kinds, order).expect("the bottles hold it");
            let mut best = None;
            let mut fullest = f64::MAX;
            every_way(&kinds, volume, &mut |filled| {
                let used: f64 = kinds.iter().zip(filled).map(|(k, &x)| k.content * f64::from(x)).sum();
                fullest = fullest.min(volume - used);
            });
            every_way(&kinds, volume, &mut |filled| {
                ways += 1;
                let used: f64 = kinds.iter().zip(filled).map(|(k, &x)| k.content * f64::from(x)).sum();
                // What would fill one more of the smallest is no choice, unless nothing fills more.
                let enough = volume - used < least - 1e-9 || volume - used <= fullest + 1e-9;
                let this = worth(order, &kinds, filled, volume);
                if (order == FillOrder::LeastLeftover || enough) && best.is_none_or(|best| this < best) {
                    best = Some(this);
                }
            });
            let got = worth(order, &kinds, &found.filled, volume);
            assert_eq!(Some(got), best, "{order:?} {volume} {kinds:?}: {:?}", found.filled);
            assert!(kinds.iter().zip(&found.filled).all(|(kind, &x)| x <= kind.count));
            filled_all += usize::from(found.leftover < 1e-9);
        }
    }
    println!("{ways} ways looked at, {filled_all} fillings without leftover");
    assert!(ways > 100_000 && filled_all > 100);
}

#[test]
fn bottles_in_the_order_of_their_list_and_bottles_that_are_too_few() {
    let kinds = [
        Kind { content: 330.0 * MILLILITRE, count: 10 },
        Kind { content: 750.0 * MILLILITRE, count: 4 },
        Kind { content: 500.0 * MILLILITRE, count: 3 },
    ];
    let found = fill(5.0e-3, &kinds, FillOrder::AsListed).unwrap();
    assert_eq!(found.filled, [10, 2, 0]);
    assert!((found.leftover - 200.0 * MILLILITRE).abs() < 1e-12);
    let error = fill(10.0e-3, &kinds, FillOrder::LeastLeftover).unwrap_err();
    assert_eq!(error.code(), code::BOTTLES_SHORT);
    assert!(error.to_string().contains("2.20 L (0.58 US gal) are short"), "{error}");
    assert_eq!(fill(1e-3, &[], FillOrder::LeastLeftover).unwrap_err().code(), code::BOTTLES_SHORT);
    // Fluid ounces are no whole millilitres, and a batch told in gallons fills to the last of them.
    let ounce = 29.573_529_562_5 * MILLILITRE;
    for (ounces, gallons, wanted) in [(12.0, 4.5, 48), (16.0, 5.0, 40), (22.0, 11.0, 64)] {
        let kinds = [Kind { content: ounces * ounce, count: 200 }];
        let found = fill(gallons * 128.0 * ounce, &kinds, FillOrder::LeastLeftover).unwrap();
        assert_eq!(found.filled, [wanted]);
    }
    // However many: never more than there is, and hardly less.
    let huge =
        [330.0, 355.0, 16.0 * 29.573_529_562_5, 750.0].map(|ml| Kind { content: ml * MILLILITRE, count: 100_000 });
    for (volume, order) in
        [(1.0, FillOrder::LeastLeftover), (100.0, FillOrder::FewestSizes), (150.0, FillOrder::LeastLeftover)]
    {
        let found = fill(volume, &huge, order).unwrap();
        let used: f64 = huge.iter().zip(&found.filled).map(|(k, &x)| k.content * f64::from(x)).sum();
        assert!(used <= volume * (1.0 + 1e-12) && volume - used < 330.0 * MILLILITRE, "{used} of {volume}");
    }
    let odd: Vec<Kind> =
        (0..101).map(|at| Kind { content: (300.0 + 1.7 * f64::from(at)) * MILLILITRE, count: 1 }).collect();
    assert_eq!(fill(0.02, &odd, FillOrder::LeastLeftover).unwrap_err().code(), code::TOO_MANY_ROWS);
    assert!(fill(0.02, &odd[..100], FillOrder::FewestSizes).unwrap().leftover < 300.0 * MILLILITRE);
    assert!(fill(0.02, &odd[..100], FillOrder::LeastLeftover).unwrap().leftover < MILLILITRE);
    // Two hundred bottles in six sizes, and a cubic metre in as many odd ones.
    let many =
        |count| [330.0, 341.0, 355.0, 500.0, 568.0, 750.0].map(|size| Kind { content: size * MILLILITRE, count });
    assert!(fill(90.0e-3, &many(34), FillOrder::LeastLeftover).unwrap().leftover < 1e-9);
    assert!(fill(1.0, &many(400), FillOrder::FewestBottles).unwrap().leftover < 331.0 * MILLILITRE);
}

#[test]
fn the_fill_list_is_a_table_too() {
    let rows = [given("bottle_ml=500;count=30;capacity_ml=520"), given("bottle_ml=330;count=24")];
    let lists = Lists::new().with(&BOTTLES, &rows).unwrap();
    let table = tables::named("fill_list").unwrap();
    let mut found = Vec::new();
    table.rows(&given("packaged_l=19.2"), &lists, &mut |cells| found.push(cells.to_vec())).unwrap();
    let number = |row: usize, column: &str| {
        let at = table.columns.iter().position(|c| c.name(None).as_str().starts_with(column)).expect("a column");
        let Cell::Number(si) = found[row][at] else { panic!("{column}") };
        si
    };
    let (halves, thirds) = (number(0, "filled"), number(1, "filled"));
    assert!(halves <= 30.0 && thirds <= 24.0);
    assert!((halves * 0.5 + thirds * 0.33 + 1000.0 * number(0, "leftover") - 19.2).abs() < 1e-9);
    assert!(number(0, "washed") >= halves && number(1, "washed") >= thirds);
    assert!((number(0, "headspace") - 4.0).abs() < 1e-9 && (number(1, "gas") - 13.2e-6).abs() < 1e-12);
    // A list that the table does not take, and none.
    let history = [given("temperature_c=20;time_d=3")];
    let other = Lists::new().with(&HISTORY, &history).unwrap();
    let wrong = table.rows(&given("packaged_l=19.2"), &other, &mut |_| {}).unwrap_err();
    assert_eq!(wrong.code(), code::WRONG_LIST);
    let none = table.rows(&given("packaged_l=19.2"), &Lists::new(), &mut |_| {}).unwrap_err();
    assert_eq!((none.code(), none.parameter().as_str()), (code::WRONG_LIST, "bottles"));
}

// How much.

#[test]
fn a_dose_given_back_makes_the_carbonation_that_it_was_found_for() {
    let mut dice = Dice(11);
    let drinks = ["beer", "cider", "mead", "wine", "water", "soft_drink"];
    let mut worst = 0.0_f64;
    for _ in 0..600 {
        let (basis, drink) = (["handbook", "physical"][dice.below(2)], drinks[dice.below(6)]);
        let warmest = dice.between(2.0, 29.0);
        let crash = match dice.below(3) {
            0 => String::new(),
            1 => format!(
                ";cold_crash=closed;crash_c={};fermenter_headspace_percent={}",
                warmest * dice.roll(),
                dice.between(1.0, 40.0)
            ),
            _ => format!(";cold_crash=co2_supplied;crash_c={}", warmest * dice.roll()),
        };
        let held = if dice.roll() < 0.2 { ";residual_volumes=0.9" } else { "" };
        let base = format!(
            "warmest_c={warmest};packaged_l={};altitude_m={};beverage={drink};basis={basis};fermentable_g_per_l={};sugar={};syrup_water_ml={};headspace_percent={};fermenter_gauge_bar={}{crash}{held}",
            dice.between(1.0, 60.0),
            dice.between(0.0, 2500.0),
            dice.between(0.0, 2.0),
            ["sucrose", "dextrose_monohydrate", "honey", "dry_malt_extract"][dice.below(4)],
            dice.between(0.0, 600.0),
            dice.between(2.0, 8.0),
            dice.between(0.0, 0.2),
        );
        let target = dice.between(3.0, 4.5);
        let dose = match ask("priming_sugar", &format!("{base};volumes={target}"), "mass_g") {
            Ok(dose) => dose,
            Err(error) => {
                assert_eq!(error.code(), code::TARGET_BELOW_HELD, "{base}: {error}");
                continue;
            }
        };
        let back = must("primed_carbonation", &format!("{base};mass_g={dose}"), "volumes");
        worst = worst.max((back / target - 1.0).abs());
        // More sugar, more CO2 and more alcohol.
        let more = format!("{base};mass_g={}", dose * 1.1 + 1.0);
        assert!(must("primed_carbonation", &more, "volumes") > back);
        assert!(must("primed_carbonation", &more, "added_abv_percent") > 0.0);
    }
    println!("round trips within {worst:.1e}");
    assert!(worst < 1e-11, "{worst:e}");
}

#[test]
fn a_syrup_that_counts_thins_the_drink_by_what_it_weighs() {
    let base = "volumes=2.5;residual_volumes=0.85;packaged_l=20;altitude_m=0;sugar=sucrose";
    let dose = |more: &str| must("priming_sugar", &format!("{base}{more}"), "mass_g");
    let dry = dose("");
    assert_eq!(dry, dose(";syrup_water_ml=500"), "the printed tables leave it out");
    let counted = dose(";syrup_water_ml=500;count_syrup=true");
    // By hand: CO2 for the drink and the syrup, of which only the drink brings its own.
    let (volume, c) = (44.0095 / 22.263, 2.5 * 44.0095 / 22.263);
    let made = 4.0 * 44.0095 / 342.297;
    let by_hand = |m: f64| (20.0 * 0.85 * volume + made * m) / (20.0 + 0.5 + 0.62 * m / 1000.0);
    assert!((by_hand(counted) - c).abs() < 1e-9, "{} for {c}", by_hand(counted));
    assert!(counted > dry * 1.03 && counted < dry * 1.05);
}

#[test]
fn wort_that_primes_keeps_the_balance() {
    let mut dice = Dice(5);
    let mut answered = 0;
    for _ in 0..300 {
        let (fresh, plato) = (dice.roll() < 0.5, dice.between(9.0, 18.0));
        let (limit, packaged) = (dice.between(58.0, 72.0), dice.between(5.0, 60.0));
        let (held, target) = (dice.between(0.6, 1.2), dice.between(2.0, 3.2));
        let (now, co2) = if fresh { (plato, 0.0) } else { (dice.between(0.5, 0.8) * plato, dice.between(0.5, 1.0)) };
        let kind = if fresh { String::new() } else { format!(";wort_current_plato={now};wort_volumes={co2}") };
        let inputs = format!(
            "volumes={target};residual_volumes={held};packaged_l={packaged};altitude_m=0;wort_original_plato={plato};limit_attenuation_percent={limit}{kind}"
        );
        let Ok(wort) = ask("priming_wort", &inputs, "wort_l") else { continue };
        answered += 1;
        // The extract that ferments, by Balling, in a litre of wort of its density.
        let sg = must("gravity", &format!("plato={now}"), "sg");
        let end = (plato * (1.0 - limit / 100.0) - 0.1808 * plato) / 0.8192;
        let fermentable = 10.0 * 0.9982 * sg * 0.8192 * (now - end);
        let volume = 44.0095 / 22.263;
        let put_in = volume * (held * packaged + co2 * wort) + 4.0 * 44.0095 / 342.297 * fermentable * wort;
        assert!((put_in / (volume * target * (packaged + wort)) - 1.0).abs() < 1e-9, "{inputs}");
    }
    assert!(answered > 200, "{answered}");
    let weak = "volumes=3;warmest_c=20;packaged_l=20;altitude_m=0;wort_original_plato=1;limit_attenuation_percent=60";
    let error = ask("priming_wort", weak, "wort_l").unwrap_err();
    assert_eq!((error.code(), error.parameter().as_str()), (code::OUT_OF_RANGE, "volumes"), "{error}");
    let spent = format!("{weak};wort_current_plato=0.9").replace("wort_original_plato=1;", "wort_original_plato=12;");
    let error = ask("priming_wort", &spent, "wort_l").unwrap_err();
    assert_eq!(error.parameter().as_str(), "wort_current_plato", "{error}");
    let young = "volumes=2.5;warmest_c=12;packaged_l=20;altitude_m=0;wort_original_sg=1.05;wort_current_sg=1.03;limit_attenuation_percent=65";
    assert!(cautions("priming_wort", young).contains(&"assumed_saturated"));
}

#[test]
fn a_closed_fermenter_that_is_chilled_keeps_its_co2_and_loses_its_pressure() {
    let base = "warmest_c=20;altitude_m=0;basis=physical;model=water_core";
    let open = must("residual_co2", base, "co2_g_per_l");
    let mut before = open;
    for headspace in [5.0, 10.0, 20.0, 40.0, 80.0] {
        let closed = format!("{base};cold_crash=closed;crash_c=4;fermenter_headspace_percent={headspace}");
        let now = must("residual_co2", &closed, "co2_g_per_l");
        assert!(now > before, "more gas, more CO2");
        before = now;
        assert!(cautions("residual_co2", &closed).contains(&"fermenter_vacuum"));
        // The package that was closed at 20 °C under pure CO2 holds as much at 4 °C: the same balance by its inverse.
        let total = format!("gauge_bar=0;temperature_c=20;filling_c=20;headspace_percent={headspace};altitude_m=0");
        let content = must("package_carbonation", &total, "total_co2_g_per_l");
        let cold =
            format!("co2_g_per_l={content};temperature_c=4;filling_c=20;headspace_percent={headspace};altitude_m=0");
        let dissolved = must("package_pressure", &cold, "expected_co2_g_per_l");
        assert!((now / dissolved - 1.0).abs() < 1e-9, "{now} {dissolved}");
    }
    // As much as the gas holds, never what CO2 let in would make of it.
    assert!(before < must("residual_co2", &format!("{base};cold_crash=co2_supplied;crash_c=4"), "co2_g_per_l"));
    // Through an airlock nothing is gained, and under pressure everything in its measure.
    assert_eq!(open, must("residual_co2", &format!("{base};cold_crash=open;crash_c=4"), "co2_g_per_l"));
    let table =
        |gauge: f64| must("residual_co2", &format!("warmest_c=20;altitude_m=0;fermenter_gauge_kpa={gauge}"), "volumes");
    assert!((table(101.325) / table(0.0) - 2.0).abs() < 1e-12);
    let warmer = format!("{base};cold_crash=co2_supplied;crash_c=21");
    let error = ask("residual_co2", &warmer, "volumes").unwrap_err();
    assert_eq!((error.code(), error.parameter().as_str()), (code::OUT_OF_RANGE, "crash_c"));
}

#[test]
fn colder_fermentation_never_raises_the_dose() {
    let mut compared = 0;
    for drink in ["beer", "cider", "mead", "wine", "water", "soft_drink"] {
        for basis in ["handbook", "physical"] {
            let dose = |warmest: f64| {
                let inputs = format!(
                    "volumes=3.5;warmest_c={warmest};packaged_l=20;altitude_m=300;beverage={drink};basis={basis};fermentable_g_per_l=0"
                );
                must("priming_sugar", &inputs, "mass_g")
            };
            let doses: Vec<f64> = (0..=90).map(|half| dose(f64::from(half) * 0.5)).collect();
            for pair in doses.windows(2) {
                assert!(pair[0] <= pair[1] * (1.0 + 1e-12), "{drink} {basis}: {pair:?}");
                compared += 1;
            }
        }
    }
    assert_eq!(compared, 12 * 90);
}

#[test]
fn more_sugar_warmth_or_air_never_lowers_the_worst_pressure() {
    let worst = |volumes: f64, celsius: f64, ambient: f64, headspace: f64, drink: &str, what: &str| {
        let inputs = format!(
            "volumes={volumes};temperature_c={celsius};ambient_kpa={ambient};headspace_percent={headspace};filling_c=20;beverage={drink};fermentable_g_per_l=0"
        );
        ask("package_pressure", &inputs, what).ok()
    };
    let mut dice = Dice(3);
    let mut compared = 0;
    for _ in 0..2000 {
        let drink = ["beer", "cider", "mead", "wine", "soft_drink"][dice.below(5)];
        let (v, t, a, h) =
            (dice.between(0.5, 6.0), dice.between(-2.0, 58.0), dice.between(70.0, 104.0), dice.between(1.0, 12.0));
        let more = [
            (
                worst(v, t, a, h, drink, "worst_gauge_bar"),
                worst(v + dice.between(0.0, 1.0), t, a, h, drink, "worst_gauge_bar"),
            ),
            (
                worst(v, t, a, h, drink, "worst_gauge_bar"),
                worst(v, t + dice.between(0.0, 2.0), a, h, drink, "worst_gauge_bar"),
            ),
            (
                worst(v, t, a, h, drink, "worst_abs_bar"),
                worst(v, t, a + dice.between(0.0, 4.0), h, drink, "worst_abs_bar"),
            ),
        ];
        for (less, more) in more {
            if let (Some(less), Some(more)) = (less, more) {
                assert!(more >= less * (1.0 - 1e-12), "{v} {t} {a} {h} {drink}: {less} {more}");
                compared += 1;
            }
        }
    }
    println!("{compared} pairs");
    assert!(compared > 4000);
}

#[test]
fn the_nearest_number_of_tablets_is_the_nearest() {
    let rows: Vec<Request> =
        [187.0, 330.0, 355.0, 500.0, 750.0, 1500.0].map(|ml| given(&format!("bottle_ml={ml};count=6"))).into();
    let lists = Lists::new().with(&BOTTLES, &rows).unwrap();
    let table = tables::named("bottle_doses").unwrap();
    for (target, tablet, basis) in
        [(2.4, 3.0, "handbook"), (3.0, 3.5, "handbook"), (2.4, 0.5, "handbook"), (2.6, 4.0, "physical")]
    {
        let base = format!("warmest_c=20;altitude_m=0;basis={basis}");
        let request = given(&format!("{base};volumes={target};tablet_g={tablet}"));
        let mut told = 0;
        table
            .rows(&request, &lists, &mut |cells| {
                let [_, Cell::Number(content), Cell::Number(mass), Cell::Number(count), Cell::Number(co2)] = *cells
                else {
                    panic!("{cells:?}")
                };
                let made = |n: f64| {
                    let inputs = format!("{base};packaged_l={};mass_g={}", content * 1000.0, n * tablet);
                    // So many tablets that no bottle holds them are far from the target.
                    ask("primed_carbonation", &inputs, "volumes").unwrap_or(f64::MAX)
                };
                let off = |n: f64| (made(n) - target).abs();
                let best = (0..20).map(f64::from).min_by(|a, b| off(*a).total_cmp(&off(*b)));
                assert_eq!(Some(count), best, "{content} {target}");
                assert!((made(count) * 44.0095 / 22.263 / co2 - 1.0).abs() < 1e-12);
                assert!((made(mass * 1000.0 / tablet) - target).abs() < 1e-9);
                told += 1;
            })
            .unwrap();
        assert_eq!(told, rows.len());
    }
}

// Whether it is finished.

const DAY: &str = r#""carb": 1, "packaged_l": 19, "volumes": 2.4, "warmest_c": 18, "altitude_m": 0"#;

fn job(more: &str) -> carb_core::plan::Bottling {
    bottling_of(&format!("{{{DAY}, {more}}}")).unwrap_or_else(|refusal| panic!("{more}: {refusal}"))
}

fn said(job: &carb_core::plan::Bottling) -> (&'static str, Vec<&'static str>) {
    let answer = job.readiness.as_ref().expect("something of gravity").answer.as_ref().expect("an answer");
    (answer.value.verdict, answer.notes.cautions.iter().map(|caution| caution.kind.code).collect())
}

#[test]
fn a_gravity_that_stands_still_at_its_end_is_finished() {
    let still = r#""original_sg": 1.05, "final_sg": 1.011, "readings": [{"time_d": 8, "current_sg": 1.012}, {"time_d": 10, "current_sg": 1.011}, {"time_d": 13, "current_sg": 1.011}]"#;
    let (verdict, cautions) = said(&job(still));
    assert_eq!((verdict, cautions.as_slice()), ("finished", &[][..]));
    let falling = still.replace("\"time_d\": 13, \"current_sg\": 1.011", "\"time_d\": 11, \"current_sg\": 1.0095");
    let (verdict, cautions) = said(&job(&falling));
    assert_eq!(verdict, "not_finished");
    assert!(cautions.contains(&"still_falling"));
    // One reading proves nothing, whatever it says.
    let (verdict, cautions) = said(&job(r#""current_sg": 1.011, "final_sg": 1.011"#));
    assert_eq!((verdict, cautions.as_slice()), ("unknown", &["few_readings"][..]));
    // Too high: stuck; too low: something splits dextrins.
    let stuck = still.replace("\"final_sg\": 1.011", "\"final_sg\": 1.006");
    assert!(said(&job(&stuck)).1.contains(&"above_expected"));
    let dry = still.replace("\"final_sg\": 1.011", "\"final_sg\": 1.013");
    let (verdict, cautions) = said(&job(&dry));
    assert_eq!((verdict, cautions.as_slice()), ("unknown", &["below_expected"][..]));
    // So far below it that dextrins are being split: all that is left may ferment.
    let split = job(&still.replace("\"final_sg\": 1.011", "\"final_sg\": 1.016"));
    assert_eq!(said(&split), ("unknown", vec!["unfinished_danger", "below_expected"]));
    assert!(split.danger() && split.readiness.as_ref().unwrap().value().unwrap().left.is_none());
    // A stable gravity proves nothing for what splits dextrins.
    for microbes in ["diastatic", "wild"] {
        let found = job(&format!(r#"{still}, "microbes": "{microbes}""#));
        assert_eq!(said(&found), ("unknown", vec!["unfinished_danger"]));
        assert!(found.danger() && found.to_text().contains("a stable gravity proves nothing"), "{microbes}");
    }
}

#[test]
fn a_gravity_without_its_end_may_be_a_stuck_one() {
    let at = |gravity: f64| {
        job(&format!(
            r#""original_sg": 1.05, "readings": [{{"time_d": 8, "current_sg": {gravity}}}, {{"time_d": 12, "current_sg": {gravity}}}]"#
        ))
    };
    assert_eq!(said(&at(1.011)), ("unknown", vec!["end_not_told"]));
    assert!(!at(1.011).danger());
    let stuck = at(1.04);
    assert_eq!(said(&stuck), ("unknown", vec!["low_attenuation", "end_not_told"]));
    assert!(stuck.danger() && stuck.to_text().contains("nothing tells where it ends"));
}

#[test]
fn a_gravity_that_creeps_is_not_finished() {
    // Half a point in three days is what three days cannot tell; nine days can.
    let readings = |step: f64| {
        let row = |n: usize| format!(r#"{{"time_d": {}, "current_sg": {:.5}}}"#, 3 * n, 1.012 - step * n as f64);
        let rows: Vec<String> = (0..6).map(row).collect();
        format!(r#""original_sg": 1.05, "final_sg": {:.5}, "readings": [{}]"#, 1.012 - 5.0 * step, rows.join(", "))
    };
    assert_eq!(said(&job(&readings(0.0))).0, "finished");
    assert_eq!(said(&job(&readings(0.0001))).0, "finished");
    assert_eq!(said(&job(&readings(0.0005))), ("unknown", vec!["unsteady_gravity"]));
}

#[test]
fn wild_microbes_ferment_what_yeast_leaves_of_a_sugar() {
    let batch = r#""additions": [{"addition": "corn_syrup_42", "mass_g": 300}]"#;
    let bottle = |microbes: &str| {
        let found = job(&format!(
            r#"{batch}, "abv_percent": 5, "extract_g_per_l": 0, "fermentable_g_per_l": 0, "microbes": "{microbes}", "bottles": [{{"bottle_ml": 750, "count": 60, "rating_gauge_bar": 30}}]"#
        ));
        found.bottles[0].glass.value().expect("a verdict").worst.bar()
    };
    assert!(bottle("wild") > bottle("brewing_yeast") + 1.0, "{} {}", bottle("wild"), bottle("brewing_yeast"));
}

#[test]
fn what_is_left_to_ferment_takes_its_part_of_the_dose_and_warns_of_the_bottle() {
    let dose = |job: &carb_core::plan::Bottling| job.priming.value().map(|dose| dose.mass.g());
    let done = job(r#""current_sg": 1.010, "final_sg": 1.010"#);
    let near = job(r#""current_sg": 1.011, "final_sg": 1.010"#);
    let (done_dose, near_dose) = (dose(&done).unwrap(), dose(&near).unwrap());
    // A point of gravity makes about half a volume, a third of the dose.
    let lost = (done_dose - near_dose) / done_dose;
    assert!((0.3..0.4).contains(&lost), "{lost}");
    let far = job(r#""current_sg": 1.020, "final_sg": 1.010"#);
    let (verdict, cautions) = said(&far);
    assert_eq!(verdict, "not_finished");
    assert!(cautions.contains(&"unfinished_danger") && far.danger(), "{cautions:?}");
    // The plan tells what a point would add whether or not anything is said of gravity.
    for found in [&done, &near, &job(r#""scale_g": 1"#)] {
        let point = found.point.value().expect("what a point adds");
        assert!((0.53..0.56).contains(&point.co2.volumes()), "{:?}", point.co2);
        assert!(point.pressure > 0.4e5 && point.worst > point.pressure && point.worst < 1.0e5);
        assert!(found.to_text().contains("0.001 of gravity"));
    }
    // Alcohol and extract follow from the gravities.
    let beer = job(r#""original_sg": 1.048, "current_sg": 1.010, "final_sg": 1.010"#);
    let drink = beer.priming.answer.as_ref().unwrap().context.beverage;
    assert!((drink.abv() - 5.02).abs() < 0.01 && (drink.extract() - 42.9).abs() < 0.2, "{drink:?}");
    // Gravities that cannot be are an error of every part that needs them, and of no other.
    let plan = plan_of(&format!(r#"{{{DAY}, "original_sg": 1.04, "current_sg": 1.05, "final_sg": 1.01}}"#)).unwrap();
    assert_eq!(plan.bottling.priming.answer.as_ref().unwrap_err().code(), code::OUT_OF_RANGE);
    assert!(plan.bottling.storage.iter().all(|place| place.pressure.answer.is_err()));
    assert!(plan.kegging.answered());
}

#[test]
fn what_else_was_added_counts_toward_the_carbonation() {
    let plain = job(r#""sugar": "sucrose""#);
    let honey = job(r#""additions": [{"addition": "honey", "mass_g": 50}]"#);
    let (a, b) = (plain.priming.value().unwrap().mass.g(), honey.priming.value().unwrap().mass.g());
    // Fifty grams of honey make what 50 x yield of honey / yield of sucrose grams of sucrose do.
    let share = must("added_co2", "addition=honey;dose_g_per_l=1", "expected_co2_g_per_l")
        / must("added_co2", "addition=sucrose;dose_g_per_l=1", "expected_co2_g_per_l");
    assert!((a - b - 50.0 * share).abs() < 1e-9, "{a} {b} {share}");
    // A sweetener packet may make nothing or much: the dose counts on nothing, the worst case on all.
    let sweet = job(
        r#""additions": [{"addition": "sweetener_packets", "mass_g": 60}, {"addition": "lactose", "mass_g": 200}]"#,
    );
    assert_eq!(sweet.priming.value().unwrap().mass.g(), a);
    let worst = |job: &carb_core::plan::Bottling| job.storage[1].pressure.value().unwrap().worst.gauge.bar();
    assert!(worst(&sweet) > worst(&plain) + 0.5);
    assert!(sweet.to_text().contains("lactose") && sweet.to_text().contains("packets"));
}

// Whether the glass stands it, and when it is ready.

#[test]
fn each_bottle_is_judged_by_its_class_or_its_rating() {
    let bottles = |more: &str| {
        let found = job(&format!(r#""volumes": 0, {more}"#).replace(r#""volumes": 0, "#, ""));
        let rows: Vec<(&str, f64, Option<f64>)> = found
            .bottles
            .iter()
            .map(|row| {
                let verdict = row.glass.value().expect("a verdict");
                (verdict.word, verdict.limit.bar(), verdict.warmest.map(|t| t.c()))
            })
            .collect();
        (rows, found.danger())
    };
    let row = |class: &str| format!(r#"{{"bottle_ml": 500, "count": 50, "bottle_class": "{class}"}}"#);
    for class in ["light_one_way", "heavier_reusable", "swing_top", "champagne", "pet_soft_drink"] {
        let (rows, danger) = bottles(&format!(r#""bottles": [{}]"#, row(class)));
        assert_eq!((rows[0].0, rows[0].2, danger), ("within", Some(40.0), false), "{class}: {rows:?}");
    }
    for class in ["growler", "still_wine"] {
        let (rows, danger) = bottles(&format!(r#""bottles": [{}]"#, row(class)));
        // They are never filled; but where there is nothing else, somebody means to.
        assert_eq!((rows[0].0, rows[0].2, danger), ("not_for_conditioning", None, true), "{class}");
        let found = job(&format!(r#""bottles": [{}]"#, row(class)));
        assert_eq!(found.bottles[0].filled, Some(0), "{class}");
        assert_eq!(found.fill.unwrap().answer.unwrap_err().code(), code::BOTTLES_SHORT, "{class}");
    }
    // A maker's rating goes before what the class sees.
    let (rows, danger) = bottles(r#""bottles": [{"bottle_ml": 330, "count": 70, "rating_gauge_bar": 3.5}]"#);
    assert_eq!((rows[0].0, danger), ("danger", true));
    let warmest = rows[0].2.expect("a temperature");
    let store = job(&format!(
        r#""hot_day_c": {warmest}, "bottles": [{{"bottle_ml": 330, "count": 70, "rating_gauge_bar": 3.5}}]"#
    ));
    let there = store.bottles[0].glass.value().unwrap();
    assert!((there.worst.bar() - 3.5).abs() < 1e-3 && there.word == "within", "{there:?}");
    let found = job(&format!(r#""bottles": [{}, {}], "fill_order": "as_listed""#, row("champagne"), row("growler")));
    assert_eq!(found.bottles[1].filled, Some(0));
    assert!(found.bottles.iter().any(|row| row.glass.value().unwrap().word == "not_for_conditioning"));
    assert!(!found.danger());
    // A rating told of all bottles makes no class stronger, and none fit for conditioning.
    let limit = |class: &str, rating: f64| {
        let found = job(&format!(r#""rating_gauge_bar": {rating}, "bottles": [{}]"#, row(class)));
        let verdict = *found.bottles[0].glass.value().unwrap();
        (verdict.limit.bar(), verdict.rated)
    };
    assert_eq!(limit("heavier_reusable", 3.0), (3.0, true));
    assert!(limit("heavier_reusable", 30.0).0 < 10.0 && !limit("heavier_reusable", 30.0).1);
    assert_eq!(limit("growler", 30.0), (0.0, false));
    // Tablets that are too large for a bottle leave it flat.
    let flat = job(r#""tablet_g": 10, "bottles": [{"bottle_ml": 330, "count": 70}]"#);
    assert!(flat.bottles[0].glass.answer.as_ref().unwrap().notes.cautions.has("coarse_tablet"));
}

#[test]
fn the_table_of_pressures_judges_what_it_is_told_of_the_bottle() {
    let rows = |more: &str| {
        let table = tables::named("bottle_pressures").unwrap();
        let mut found = Vec::new();
        let request = given(&format!("volumes=2.4;altitude_m=240{more}"));
        table.rows(&request, &Lists::new(), &mut |cells| found.push(cells.to_vec())).unwrap();
        found
    };
    let number = |cell: &Cell| match cell {
        Cell::Number(number) => Some(*number),
        _ => None,
    };
    let (word, celsius) = (|row: &[Cell]| row[0], |row: &[Cell]| number(&row[2]).unwrap() - 273.15);
    // A rating is passed exactly where the worst pressure passes it, and above 40 °C nothing is within.
    for rating in [2.0, 3.5, 20.0] {
        let mut seen = [0, 0];
        for row in rows(&format!(";rating_gauge_bar={rating}")) {
            let beyond = number(&row[4]).is_none_or(|worst| worst > rating * 1e5);
            let danger = beyond || celsius(&row) > 40.01;
            assert_eq!(word(&row), Cell::Text(if danger { "danger" } else { "within" }), "{rating}: {row:?}");
            assert!((number(&row[5]).unwrap() / rating / 1e5 - 1.0).abs() < 1e-12);
            seen[usize::from(danger)] += 1;
        }
        assert!(seen[0] > 0 && seen[1] > 0, "{rating}: {seen:?}");
    }
    // A weaker class is never judged milder, and no growler is for conditioning.
    let grave = |class: &str| -> Vec<usize> {
        let level = |row: &Vec<Cell>| ["within", "high", "danger"].iter().position(|w| word(row) == Cell::Text(w));
        rows(&format!(";bottle_class={class}")).iter().filter_map(level).collect()
    };
    let (light, champagne) = (grave("light_one_way"), grave("champagne"));
    assert!(light.len() == champagne.len() && light.iter().zip(&champagne).all(|(a, b)| a >= b));
    for row in rows(";bottle_class=growler") {
        assert_eq!((word(&row), row[5]), (Cell::Text("not_for_conditioning"), Cell::Missing));
    }
}

#[test]
fn filled_glass_is_never_heated() {
    let found = job(r#""pasteurising_c": 60"#);
    let place = found.storage.last().unwrap();
    assert_eq!(place.place, "pasteurising");
    let answer = place.pressure.answer.as_ref().expect("a figure");
    assert!(answer.notes.cautions.has("heated_glass") && found.danger());
    assert!(answer.value.worst.gauge.bar() > 7.0);
    assert!(found.to_text().contains("never heat filled glass"));
}

#[test]
fn the_wait_is_the_inverse_of_the_progress() {
    for (celsius, abv, cells) in [(20.0, 5.0, 1.0), (12.0, 5.0, 1.0), (25.0, 11.0, 1.0), (18.0, 5.0, 0.2)] {
        let base = format!("room_c={celsius};abv_percent={abv};yeast_million_per_ml={cells}");
        let days = |what: &str| must("conditioning_time", &format!("{base};progress_percent=90"), what);
        let share = |days: f64, what: &str| must("conditioning", &format!("{base};time_d={days}"), what);
        for (time, progress) in [("expected", "expected"), ("least", "most"), ("most", "least")] {
            let back = share(days(&format!("{time}_time_d")), &format!("{progress}_progress_percent"));
            assert!((back - 90.0).abs() < 1e-9, "{base} {time}: {back}");
        }
        assert!(days("least_time_d") < days("expected_time_d") && days("expected_time_d") < days("most_time_d"));
        // No progress is lost by waiting.
        let shares: Vec<f64> = (0..60).map(|day| share(f64::from(day), "expected_progress_percent")).collect();
        assert!(shares.windows(2).all(|pair| pair[0] <= pair[1]) && shares[0] == 0.0);
    }
    // After one week near 20 °C the trade has 60 to 90 %, after two it is ready.
    let week = |what: &str| must("conditioning", "room_c=20;time_d=7", what);
    assert!((week("least_progress_percent") - 60.0).abs() < 1.0 && (week("most_progress_percent") - 90.0).abs() < 1.0);
    assert!((12.0..15.0).contains(&must("conditioning_time", "room_c=20", "expected_time_d")));
    for (inputs, parameter) in [("room_c=3", "room_c"), ("room_c=20;progress_percent=99.95", "progress_percent")] {
        let error = ask("conditioning_time", inputs, "expected_time_d").unwrap_err();
        assert_eq!((error.code(), error.parameter().as_str()), (code::OUT_OF_RANGE, parameter), "{error}");
    }
}

#[test]
fn a_history_of_one_temperature_is_a_room() {
    let table = tables::named("conditioning_days").unwrap();
    let days = |request: &Request, lists: &Lists<'_>| {
        let mut found = Vec::new();
        table.rows(request, lists, &mut |cells| found.push(cells.to_vec())).unwrap();
        found
    };
    let spells = [given("temperature_c=16;time_d=4"), given("temperature_c=16;time_d=1")];
    let same = Lists::new().with(&HISTORY, &spells).unwrap();
    let (room, history) = (days(&given("room_c=16"), &Lists::new()), days(&Request::new(), &same));
    for (a, b) in room.iter().zip(&history) {
        let (Cell::Number(a), Cell::Number(b)) = (a[2], b[2]) else { panic!() };
        assert!((a - b).abs() < 1e-9);
        let one = must(
            "conditioning",
            &format!("room_c=16;time_d={}", 1 + room.iter().position(|r| r[2] == Cell::Number(a)).unwrap()),
            "expected_progress_percent",
        );
        assert!((a - one).abs() < 1e-9);
    }
    // Bottles that are moved into the cold before they are done never are.
    let found = job(r#""history": [{"temperature_c": 20, "time_d": 3}, {"temperature_c": 1, "time_d": 30}]"#);
    let error = found.ready.answer.as_ref().unwrap_err();
    assert_eq!(error.code(), code::OUT_OF_RANGE, "{error}");
    let slow = job(r#""abv_percent": 11, "age_d": 100, "filtered": true, "room_c": 10"#);
    let answer = slow.ready.answer.as_ref().unwrap();
    for code in ["strong_drink", "old_drink", "filtered_drink", "cold_conditioning"] {
        assert!(answer.notes.cautions.has(code), "{code}");
    }
    let yeast = slow.yeast.as_ref().expect("fresh yeast").value().unwrap().g();
    assert!((yeast - 0.95).abs() < 1e-9, "5 g in 100 L: {yeast}");
    assert!(job(r#""room_c": 20"#).yeast.is_none());
}

// As a whole.

#[test]
fn a_sugar_that_was_weighed_tells_what_follows() {
    let (wanted, stepped) = (job(r#""abv_percent": 5"#), job(r#""abv_percent": 5, "scale_g": 5"#));
    let dose = wanted.priming.value().unwrap().mass.g();
    let text = format!(r#"{{{}, "abv_percent": 5, "mass_g": {dose}}}"#, DAY.replace(r#""volumes": 2.4, "#, ""));
    let weighed = bottling_of(&text).unwrap();
    assert!((weighed.primed.value().unwrap().carbonation.volumes() - 2.4).abs() < 1e-12);
    let pressure = |job: &carb_core::plan::Bottling| job.storage[0].pressure.value().unwrap().worst.gauge.si();
    assert!((pressure(&weighed) / pressure(&wanted) - 1.0).abs() < 1e-12);
    // The scale shows steps of 5 g: what it cannot tell from the dose may be in the bottles as well.
    assert!(pressure(&stepped) > pressure(&wanted));
    let on_scale = stepped.weighed.as_ref().unwrap().value().unwrap();
    assert!((on_scale.mass.g() / 5.0).fract() < 1e-9 && (on_scale.mass.g() - dose).abs() <= 2.5);
    assert!(on_scale.range.0.si() < on_scale.carbonation.si() && on_scale.carbonation.si() < on_scale.range.1.si());
    let both = answer_text("bottling", &format!(r#"{{{DAY}, "mass_g": 100}}"#));
    assert!(both.contains("exclude each other"), "{both}");
}

#[test]
fn what_is_wrong_in_a_row_is_told_with_its_place() {
    for (rows, place, word) in [
        (
            r#"[{"bottle_ml": 500, "count": 12}, {"bottle_ml": 500, "cuont": 12}]"#,
            r#""row":2"#,
            "did you mean \\\"count\\\"",
        ),
        (r#"[{"bottle_ml": 500}]"#, r#""row":1"#, "count is missing"),
        (r#"[{"bottle_l": 500, "count": 1}]"#, r#""row":1"#, "lies outside"),
        (r#"[{"bottle_ml": 500, "count": 1, "volumes": 2}]"#, r#""row":1"#, "takes no volumes"),
        (r#"[{"bottle_ml": 500, "count": 1.5}]"#, r#""row":1"#, "a whole number"),
        (r#"[500]"#, r#""parameter":"bottles""#, "each an object"),
        (
            r#"[{"bottle_ml": 500, "count": 1, "capacity_ml": 400}]"#,
            r#""row":1"#,
            "capacity_ml = 400.0 mL lies outside 500.0 mL",
        ),
        (r#"{"bottle_ml": 500}"#, r#""parameter":"bottles""#, "a list of rows"),
    ] {
        let answer = answer_text("bottling", &format!(r#"{{{DAY}, "bottles": {rows}}}"#));
        assert!(answer.contains(place) && answer.contains(word), "{answer}");
    }
    let twice = answer_text("bottling", &format!(r#"{{{DAY}, "bottles": [], "bottles": []}}"#));
    assert!(twice.contains("given twice"), "{twice}");
    let long = vec![r#"{"bottle_ml": 500, "count": 1}"#; 401].join(",");
    let answer = answer_text("bottling", &format!(r#"{{{DAY}, "bottles": [{long}]}}"#));
    assert!(answer.contains("more than 400 rows"), "{answer}");
    let taken = answer_text(
        "keg_pressure",
        r#"{"carb": 1, "volumes": 2.5, "temperature_c": 4, "altitude_m": 0, "bottles": []}"#,
    );
    assert!(taken.contains("gauge_bar"), "an empty list is none: {taken}");
    let refused = answer_text(
        "keg_pressure",
        r#"{"carb": 1, "volumes": 2.5, "temperature_c": 4, "altitude_m": 0, "bottles": [{"bottle_ml": 500, "count": 1}]}"#,
    );
    assert!(refused.contains("takes no such list"), "{refused}");
}

#[test]
fn every_page_fits_eighty_columns() {
    let rows = carb_core::property::bottle::CLASSES.iter().map(|class| {
        format!(r#"{{"bottle_ml": 1893, "count": 40, "bottle_class": "{}", "capacity_ml": 1990}}"#, class.name)
    });
    let rows: Vec<String> = rows.collect();
    let all = format!(
        r#""bottles": [{}], "tablet_g": 3.5, "scale_g": 0.1, "pasteurising_c": 60, "microbes": "wild", "abv_percent": 12, "age_d": 100, "filtered": true, "wort_original_plato": 12, "limit_attenuation_percent": 65, "additions": [{{"addition": "honey", "mass_g": 30}}], "original_sg": 1.06, "current_sg": 1.02, "final_sg": 1.01"#,
        rows.join(",")
    );
    for more in [
        all.as_str(),
        r#""scale_g": 1"#,
        r#""headspace_percent": 0.2"#,
        r#""yeast": "none""#,
        r#""fermentable_g_per_l": 300"#,
    ] {
        let (job, plan) = (job(more).to_text(), plan_of(&format!("{{{DAY}, {more}}}")).unwrap().to_text());
        for line in job.lines().chain(plan.lines()) {
            assert!(line.chars().count() <= 80, "{line}");
        }
        assert!(!job.contains("NaN") && !job.contains("inf "), "{job}");
    }
}

#[test]
fn names_of_rows_are_names_of_the_vocabulary() {
    for list in carb_core::basis::lists::LISTS {
        assert!(list.columns.iter().all(|input| Name::of(input.key).next().is_some()), "{}", list.name);
        assert!(Name::parse(list.name).is_none(), "{} is no field", list.name);
    }
}
