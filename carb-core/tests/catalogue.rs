//! The catalogue of equations, the sources, the cautions, the sugars and the units hold together: each formula is its
//! kernel, each source has its entry, each scale is its definition, each name is spelt one way.

use carb_core::error::code;
use carb_core::evidence::caution::CAUTIONS;
use carb_core::evidence::infix::{Formula, latex_symbol};
use carb_core::evidence::source::SOURCES;
use carb_core::evidence::{Equation, Measure, Standing, Symbol};
use carb_core::property::bottle::{CLASSES, SIZES};
use carb_core::property::cylinder::{CYLINDERS, FILLING_DENSITIES};
use carb_core::property::exposure::EXPOSURES;
use carb_core::property::family::RANGES;
use carb_core::property::fermentable::{self, FERMENTABLES, Fermentable};
use carb_core::property::filling_loss::FILLINGS;
use carb_core::property::oxygen::OXYGEN_LIMITS;
use carb_core::property::sweetener::{self, SWEETENERS};
use carb_core::property::tube::TUBES;
use carb_core::quantity::unit::{self, UNITS};
use carb_core::quantity::{Dimension, Key, Name, Unit};
use carb_core::table::CATALOGUE;
use std::collections::{BTreeMap, BTreeSet};

const BIBLIOGRAPHY: &str = include_str!("../references.bib");
const CHECKS: [&str; 9] = [
    include_str!("../checks/published/claims.csv"),
    include_str!("../checks/published/kegging_line.csv"),
    include_str!("../checks/published/fermentables.csv"),
    include_str!("../checks/published/water.csv"),
    include_str!("../checks/published/functions.csv"),
    include_str!("../checks/published/properties.csv"),
    include_str!("../checks/published/kegging_pressure.csv"),
    include_str!("../checks/published/kegging_gas.csv"),
    include_str!("../checks/published/kegging_schedule.csv"),
];

fn unique<T: Ord + std::fmt::Debug>(things: impl IntoIterator<Item = T>) {
    let mut seen = BTreeSet::new();
    for thing in things {
        assert!(!seen.contains(&thing), "{thing:?} twice");
        seen.insert(thing);
    }
    assert!(!seen.is_empty());
}

#[test]
fn every_equation_says_where_it_comes_from_and_how_far_it_reaches() {
    unique(CATALOGUE.iter().map(|equation| equation.id));
    // The conversion of a molality has the range of that molality, and a bound made of two equations has theirs.
    for equation in CATALOGUE {
        let id = equation.id;
        assert!(!equation.title.is_empty() && !equation.uncertainty.is_empty(), "{id}");
        // What yeast does is known far less well than what gas does.
        let most = if id.contains("yeast") { 50.0 } else { 15.0 };
        assert!(equation.uncertainty_percent.is_none_or(|percent| percent > 0.0 && percent <= most), "{id}");
        let needs_source =
            matches!(equation.standing, Standing::Published | Standing::ConfirmedFromMemory | Standing::FromMemory);
        assert!(!equation.sources.is_empty() || !needs_source, "{id} names no source");
        unique(equation.inputs.iter().map(|symbol| symbol.name));
        for symbol in equation.inputs.iter().chain([&equation.result]) {
            assert!(!symbol.meaning.is_empty(), "{id}: {}", symbol.name);
            assert!(symbol.range.0 < symbol.range.1, "{id}: {}", symbol.name);
        }
        let bounded = equation.inputs.iter().any(|symbol| symbol.range.0.is_finite() && symbol.range.1.is_finite());
        let exact = equation.standing == Standing::Definition;
        assert!(bounded || exact, "{id} has no home range");
    }
}

#[test]
fn every_formula_uses_the_symbols_that_it_declares() {
    for equation in CATALOGUE {
        let formula = Formula::parse(equation.formula).unwrap_or_else(|fault| panic!("{}: {fault:?}", equation.id));
        assert_eq!(formula.name, equation.result.name, "{}", equation.id);
        let used: BTreeSet<&str> = formula.expression.symbols().into_iter().collect();
        let declared: BTreeSet<&str> = equation.inputs.iter().map(|symbol| symbol.name).collect();
        assert_eq!(used, declared, "{}", equation.id);
    }
}

/// Numbers from 0 to 1, the same at every run.
struct Dice(u64);

impl Dice {
    fn roll(&mut self) -> f64 {
        // A linear congruence modulo 2^64; the upper bits are the good ones.
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }
}

/// Where a symbol without a range of its own is tried, in its own unit.
fn usual(equation: &Equation, symbol: &Symbol) -> (f64, f64) {
    match symbol.unit {
        Measure::In(unit) if *unit == unit::PASCAL => (1.0e3, 1.0e6),
        Measure::In(unit) if *unit == unit::FACTOR => (0.5, 2.0),
        Measure::In(unit) if *unit == unit::VOLUMES => (0.1, 8.0),
        Measure::In(unit) if *unit == unit::CO2_GRAMS_PER_LITRE => (0.1, 16.0),
        Measure::In(unit) if *unit == unit::GRAMS_PER_LITRE => (0.0, 400.0),
        Measure::In(unit) if *unit == unit::KILOGRAM => (0.01, 1.0),
        Measure::In(unit) if *unit == unit::DAY => (0.1, 60.0),
        Measure::In(unit) if *unit == unit::LITRE => (0.1, 1000.0),
        Measure::In(unit) if *unit == unit::PERCENT => (1.0, 95.0),
        Measure::In(unit) if *unit == unit::DEGREE_PLATO => (1.0, 25.0),
        Measure::In(unit) if *unit == unit::SPECIFIC_GRAVITY => (0.99, 1.1),
        Measure::In(unit) if *unit == unit::MILLIPASCAL_SECOND => (0.4, 1.8),
        Measure::In(unit) if *unit == unit::SQUARE_METRE_PER_SECOND => (1.0e-9, 3.0e-9),
        Measure::Plain("kg/m3") if ["rho", "w"].contains(&symbol.name) => (970.0, 1000.0),
        Measure::Plain("kg/m3") => (0.1, 30.0),
        Measure::Plain("mol/kg") => (0.0, 0.6),
        Measure::Plain("mol/(kg atm)") => (0.01, 0.08),
        Measure::Plain("") => (0.01, 1.1),
        _ => panic!("{}: say where {} lies", equation.id, symbol.name),
    }
}

#[test]
fn every_formula_is_its_kernel() {
    let mut dice = Dice(2024);
    for equation in CATALOGUE {
        // In the relations for extract, terms of about 1000 cancel near a gravity of 1: their rounding is relative to
        // them, not to the little that is left.
        let terms = if equation.id.starts_with("extract_") { 1000.0 } else { 0.0 };
        let formula = Formula::parse(equation.formula).expect("a formula");
        let mut worst = 0.0_f64;
        for _ in 0..500 {
            let values = equation.inputs.iter().map(|symbol| {
                let (low, high) = symbol.range;
                let (low, high) =
                    if low.is_finite() && high.is_finite() { (low, high) } else { usual(equation, symbol) };
                let value = low + (high - low) * dice.roll();
                match symbol.unit {
                    Measure::In(unit) => unit.to_si(value),
                    Measure::Plain(_) => value,
                }
            });
            let si: Vec<f64> = values.collect();
            let shown: BTreeMap<&str, f64> = equation
                .inputs
                .iter()
                .zip(&si)
                .map(|(symbol, &value)| (symbol.name, symbol.unit.shown(value)))
                .collect();
            let by_formula = formula.expression.value(&|name| shown.get(name).copied()).expect("a value");
            let by_kernel = equation.result.unit.shown((equation.kernel)(&si));
            assert!(by_formula.is_finite() && by_kernel.is_finite(), "{}: {shown:?}", equation.id);
            let difference = (by_formula - by_kernel).abs() / by_kernel.abs().max(terms).max(f64::MIN_POSITIVE);
            worst = worst.max(difference);
            assert!(difference <= 1e-12, "{}: {by_formula} by formula, {by_kernel} by kernel, {shown:?}", equation.id);
        }
        println!("{}: {worst:.1e}", equation.id);
    }
}

/// The entries of the bibliography: key, and all its text.
fn bibliography() -> BTreeMap<&'static str, &'static str> {
    let entries: Vec<_> = BIBLIOGRAPHY.split("\n@").skip(1).collect();
    let named = entries.iter().map(|entry| {
        let (_, rest) = entry.split_once('{').expect("a kind of entry");
        rest.split_once(',').expect("a key")
    });
    let map: BTreeMap<_, _> = named.collect();
    assert_eq!(map.len(), entries.len(), "a key stands twice");
    map
}

/// The year at the end of a key, if it ends in one.
fn year(key: &str) -> Option<&str> {
    let digits = key.get(key.len().checked_sub(4)?..)?;
    let number: u32 = digits.parse().ok()?;
    (1800..2100).contains(&number).then_some(digits)
}

#[test]
fn every_source_has_its_entry_and_every_entry_its_use() {
    let entries = bibliography();
    unique(SOURCES.iter().map(|source| source.key));
    let mut used = BTreeSet::new();
    used.extend(CATALOGUE.iter().flat_map(|equation| equation.sources).map(|source| source.key));
    let data = FERMENTABLES.iter().map(|sugar| sugar.source);
    let data = data.chain(SWEETENERS.iter().map(|sweetener| sweetener.source));
    let data = data.chain(RANGES.iter().map(|range| range.source));
    let data = data.chain(SIZES.iter().map(|size| size.source)).chain(CLASSES.iter().map(|class| class.source));
    let data = data.chain(CYLINDERS.iter().map(|cylinder| cylinder.source));
    let data = data.chain(FILLING_DENSITIES.iter().map(|class| Some(class.source)));
    let data = data.chain(OXYGEN_LIMITS.iter().map(|limit| limit.source));
    let data = data.chain(EXPOSURES.iter().map(|row| row.source));
    let data = data.chain(FILLINGS.iter().map(|way| way.source));
    let data = data.chain(TUBES.iter().flat_map(|tube| [Some(tube.source), tube.range_source]));
    used.extend(data.flatten().map(|source| source.key));
    for source in SOURCES {
        assert!(used.contains(source.key), "nothing uses {}", source.key);
        let entry = entries.get(source.key).unwrap_or_else(|| panic!("references.bib lacks {}", source.key));
        if let Some(year) = year(source.key) {
            assert!(source.citation.contains(year), "{}", source.key);
        }
        // The first word of the citation is an author, an institution or a number that the entry has too.
        let first = source.citation.split([' ', ',']).next().expect("a word");
        let spelt = if first == "ASBC" { "American Society of Brewing Chemists" } else { first };
        assert!(entry.contains(spelt), "{}: {first}", source.key);
    }
    for csv in CHECKS {
        let mut lines = csv.lines().filter(|line| !line.starts_with('#'));
        let column = lines.next().expect("a header").split(',').position(|name| name == "source").expect("a source");
        let keys = lines.map(|line| line.split(',').nth(column).expect("a source"));
        used.extend(keys);
    }
    let known: BTreeSet<&str> = entries.keys().copied().collect();
    assert_eq!(used, known, "used by the library or its checks, and in references.bib");
    for (key, entry) in &entries {
        assert!(entry.contains("title = {"), "{key} has no title");
        if let Some(year) = year(key) {
            assert!(entry.contains(year), "{key} is of another year");
        }
    }
}

#[test]
fn cautions_and_errors_have_one_code_each() {
    unique(CAUTIONS.iter().map(|caution| caution.code));
    let bits: Vec<u8> = CAUTIONS.iter().filter_map(|caution| caution.bit).collect();
    assert!(bits.iter().all(|&bit| bit < 30));
    unique(bits);
    unique(code::ALL.iter().map(|(name, _)| *name));
    unique(code::ALL.iter().map(|(_, number)| *number));
    assert!(code::ALL.iter().all(|(_, number)| *number < 0));
}

#[test]
fn every_sugar_is_made_of_no_more_than_itself() {
    unique(FERMENTABLES.iter().map(|sugar| sugar.name));
    unique(sweetener::ADDITIONS.iter().chain(fermentable::AMBIGUOUS).copied());
    let names: Vec<_> = FERMENTABLES.iter().map(|sugar| sugar.name).chain([Fermentable::CUSTOM]).collect();
    assert_eq!(names, fermentable::NAMES);
    for sugar in FERMENTABLES {
        // Water and sugar of the monohydrate are reckoned to make a whole, to the last bit.
        let whole = sugar.water + sugar.sugars.parts().iter().sum::<f64>();
        assert!(whole <= 1.0 + f64::EPSILON, "{}: {whole}", sugar.name);
        let (low, high) = sugar.yield_range;
        let made = sugar.theoretical_yield();
        assert!(low <= made && made <= high, "{}: {made}", sugar.name);
        assert!(sugar.highest_yield() >= made);
    }
}

/// A fraction of two integers.
type Ratio = (u128, u128);

/// The definitions of the units: scale and offset as exact fractions of integers.
fn definition(unit: &Unit) -> (Ratio, Ratio) {
    const ONE: Ratio = (1, 1);
    const NONE: Ratio = (0, 1);
    // A pound in kg, standard gravity in m/s2, an inch in m, a gallon in cubic inches.
    const POUND: Ratio = (45_359_237, 100_000_000);
    const GRAVITY: Ratio = (980_665, 100_000);
    const INCH: Ratio = (254, 10_000);
    const INCH_CUBED: Ratio = (254 * 254 * 254, 1_000_000_000_000);
    let times = |a: Ratio, b: Ratio| (a.0 * b.0, a.1 * b.1);
    let over = |a: Ratio, b: Ratio| (a.0 * b.1, a.1 * b.0);
    let gallon = times((231, 1), INCH_CUBED);
    match unit.name {
        "c" => (ONE, (27_315, 100)),
        "f" => ((5, 9), (45_967 * 5, 100 * 9)),
        "delta_f" => ((5, 9), NONE),
        "k" | "delta_c" | "pa" | "co2_g_per_l" | "g_per_l" | "kg" | "m" | "s" => (ONE, NONE),
        "kg_per_m3" | "pa_s" | "m2_per_s" | "g_per_g" => (ONE, NONE),
        "mpa_s" | "cp" => ((1, 1000), NONE),
        "lb_per_ft3" => (over(POUND, times((12 * 12 * 12, 1), INCH_CUBED)), NONE),
        "percent" | "sg" | "plato" | "multiplier" | "count" => (ONE, NONE),
        "million_per_ml" => ((1_000_000_000_000, 1), NONE),
        "kpa" => ((1000, 1), NONE),
        "bar" => ((100_000, 1), NONE),
        "psi" => (over(times(POUND, GRAVITY), times(INCH, INCH)), NONE),
        // 44.0095 g/mol on 22.263 L/mol.
        "volumes" => (over((440_095, 10_000), (22_263, 1000)), NONE),
        "l" => ((1, 1000), NONE),
        "ml" => ((1, 1_000_000), NONE),
        "us_gal" => (gallon, NONE),
        "us_fl_oz" => (over(gallon, (128, 1)), NONE),
        "imp_gal" => ((454_609, 100_000 * 1000), NONE),
        "g" => ((1, 1000), NONE),
        "lb" => (POUND, NONE),
        "oz" => (over(POUND, (16, 1)), NONE),
        "ft" => (times((12, 1), INCH), NONE),
        "min" => ((60, 1), NONE),
        "h" => ((60 * 60, 1), NONE),
        "d" => ((24 * 60 * 60, 1), NONE),
        "ppm" | "ug_per_l" | "ppb" => ((1, 1_000_000), NONE),
        "vol_percent" => ((1, 100), NONE),
        "mg_per_l" | "mm" => ((1, 1000), NONE),
        "l_per_min" => ((1, 1000 * 60), NONE),
        "us_fl_oz_per_s" => (over(gallon, (128, 1)), NONE),
        "us_gal_per_min" => (over(gallon, (60, 1)), NONE),
        "g_per_h" => ((1, 1000 * 60 * 60), NONE),
        "oz_per_h" => (over(POUND, (16 * 60 * 60, 1)), NONE),
        "per_h" => ((1, 60 * 60), NONE),
        "per_d" => ((1, 24 * 60 * 60), NONE),
        "bar_per_m" => ((100_000, 1), NONE),
        "psi_per_ft" => (over(over(times(POUND, GRAVITY), times(INCH, INCH)), times((12, 1), INCH)), NONE),
        "m_per_s" | "m3" | "seconds" | "money" | "money_per_kg" => (ONE, NONE),
        "ft_per_s" => (times((12, 1), INCH), NONE),
        "in" => (INCH, NONE),
        "ft3" => (times((12 * 12 * 12, 1), INCH_CUBED), NONE),
        "money_per_lb" => (over(ONE, POUND), NONE),
        "money_per_l" => ((1000, 1), NONE),
        "money_per_us_gal" => (over(ONE, gallon), NONE),
        other => panic!("the definition of {other} is not checked"),
    }
}

fn reduced((n, d): Ratio) -> Ratio {
    let (mut a, mut b) = (n, d);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    (n / a, d / a)
}

/// Whether `x` is the double nearest to a fraction, by integers alone.
fn nearest(x: f64, ratio: Ratio) -> bool {
    let (n, d) = reduced(ratio);
    if n == 0 {
        return x == 0.0;
    }
    let bits = x.to_bits();
    let (exponent, mantissa) = ((bits >> 52) as i32 - 1075, u128::from(bits & ((1 << 52) - 1) | (1 << 52)));
    // x = mantissa × 2^exponent, and a unit in its last place is 2^exponent: compare 2 |x - n/d| with that unit.
    let (left, right, unit) = if exponent <= 0 {
        (mantissa.checked_mul(d), n.checked_shl(exponent.unsigned_abs()), d)
    } else {
        ((mantissa << exponent).checked_mul(d), Some(n), d << exponent)
    };
    let (left, right) = (left.expect("it fits"), right.expect("it fits"));
    assert!(exponent > 0 || right >> exponent.unsigned_abs() == n, "it fits");
    2 * left.abs_diff(right) <= unit
}

#[test]
fn every_scale_is_the_double_nearest_to_its_definition() {
    for unit in UNITS {
        let (scale, offset) = definition(unit);
        assert!(nearest(unit.scale, scale), "scale of {}", unit.name);
        assert!(nearest(unit.offset, offset), "offset of {}", unit.name);
        assert!(!nearest(unit.scale.next_up(), scale) && !nearest(unit.scale.next_down(), scale), "{}", unit.name);
        assert!(!unit.definition.is_empty() && !unit.source.is_empty(), "{}", unit.name);
        // A plain factor is printed as a plain number.
        let plain = matches!(unit.dimension, Dimension::Multiplier | Dimension::Count | Dimension::Money);
        assert_eq!(unit.symbol.is_empty(), plain, "{}", unit.name);
    }
}

#[test]
fn every_name_is_read_as_it_is_printed() {
    let names: Vec<Name> = Key::ALL.iter().flat_map(|&key| Name::of(key)).collect();
    unique(names.iter().map(|name| name.to_string()));
    for name in &names {
        assert_eq!(Name::parse(&name.to_string()), Some(*name));
        assert_eq!(Name::parse(name.spelling().as_str()), Some(*name));
        assert_eq!(Name::parse(&format!("{name}x")), None);
    }
    for key in Key::ALL {
        assert_eq!(names.iter().find(|name| name.key == *key), Some(&Name::first(*key)));
        assert!(!key.field().meaning.is_empty());
    }
}

#[test]
fn every_formula_is_set_in_latex() {
    for equation in CATALOGUE {
        let formula = Formula::parse(equation.formula).expect("a formula");
        let latex = formula.latex();
        let mut open = 0_i32;
        for letter in latex.chars() {
            open += match letter {
                '{' => 1,
                '}' => -1,
                _ => 0,
            };
            assert!(open >= 0, "{}: {latex}", equation.id);
        }
        assert_eq!(open, 0, "{}: {latex}", equation.id);
        assert_eq!(latex.matches("\\left(").count(), latex.matches("\\right)").count(), "{latex}");
        // Nothing of the plain text is left over, and every symbol is there.
        assert!(!latex.contains(['*', '/']), "{latex}");
        for symbol in equation.inputs.iter().chain([&equation.result]) {
            assert!(latex.contains(&latex_symbol(symbol.name)), "{}: {latex}", symbol.name);
        }
    }
}

#[test]
fn the_sea_level_that_a_default_tells_is_the_standard_atmosphere() {
    let standard = carb_core::quantity::typed::STANDARD_PRESSURE / 1000.0;
    let inputs = carb_core::table::FUNCTIONS.iter().flat_map(|function| function.inputs);
    let mut told = 0;
    for input in inputs.filter(|input| input.key == Key::SeaLevel) {
        let carb_core::basis::Need::Optional(text) = input.need else { panic!("it may be left out") };
        assert!(text.starts_with(&format!("{standard} kPa")), "{text}");
        told += 1;
    }
    assert!(told > 0);
}
