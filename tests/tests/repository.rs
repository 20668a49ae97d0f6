//! What the repository says of itself is true.

use carb_core::basis::{Answer, Function, Input, Need, Values};
use carb_core::evidence::NoSteps;
use carb_core::plan::json;
use carb_core::quantity::{Key, Name};
use carb_core::table::{FUNCTIONS, TABLES};
use std::fs;

const ROOT: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/..");

fn example(function: &Function) -> Answer<Values> {
    let request = function.example.replacen('{', "{\"carb\": 1, ", 1);
    let request = json::read(&request).unwrap_or_else(|error| panic!("{}: {error}", function.name));
    function.answer(&request, &mut NoSteps).unwrap_or_else(|error| panic!("{}: {error}", function.name))
}

#[test]
fn the_table_of_the_readme_is_that_of_the_library() {
    let mut table = String::from("| what | Rust | C | Python | sources |\n|---|---|---|---|---|\n");
    for function in FUNCTIONS {
        let answer = example(function);
        let sources: Vec<&str> = answer.sources().map(|source| source.key).collect();
        let (name, home) = (function.name, function.home);
        let summary = function.summary.trim_end_matches('.');
        let sources = sources.join(", ");
        table += &format!("| {summary} | `{home}` | `carb_{name}` | `carb.{name}` | {sources} |\n");
    }
    for rows in TABLES {
        let (name, summary) = (rows.name, rows.summary.trim_end_matches('.'));
        let home = format!("table::tables::named(\"{name}\")");
        table += &format!("| {summary} | `{home}` | `carb_json(\"{name}\", ...)` | `carb.{name}` | a table |\n");
    }
    table += "| Bottling, the whole job: is it finished, what primes it, which bottles, do they stand it, when is it ready | `plan::bottle` | `carb_json(\"bottling\", ...)` | `carb.bottling` | all of these |\n";
    table += "| A whole packaging day, bottles and keg | `plan::plan` | `carb_json(\"plan\", ...)` | `carb.plan` | all of these |\n";
    let path = format!("{ROOT}/README.md");
    let readme = fs::read_to_string(&path).expect("a README");
    let start =
        readme.find("<!-- functions:").and_then(|at| readme[at..].find('\n').map(|n| at + n + 1)).expect("a start");
    let end = readme.find("<!-- end of functions -->").expect("an end");
    if std::env::var_os("BLESS").is_some() {
        fs::write(&path, format!("{}{table}{}", &readme[..start], &readme[end..])).expect("the README is written");
    } else {
        assert_eq!(&readme[start..end], table, "run with BLESS=1 to rewrite the table");
    }
}

#[test]
fn every_typed_function_of_the_table_is_where_it_says() {
    for function in FUNCTIONS {
        let (module, name) = function.home.rsplit_once("::").expect("a path");
        let folder = format!("{ROOT}/carb-core/src/");
        // A method of a type re-exported by its module stands in the file named after the type.
        let file = module.replace("::", "/").to_lowercase();
        let text = fs::read_to_string(format!("{folder}{file}.rs")).expect("its file");
        assert!(text.contains(&format!("pub fn {name}")), "{}", function.home);
    }
}

/// The arithmetic lives once: a face holds no number that could be a coefficient.
#[test]
fn faces_hold_no_constants() {
    let mut read = 0;
    let folders = [
        "carb-ffi/src",
        "carb-py/src",
        "carb-py/python/carb",
        "carb-py/python/carb/plot",
        "carb-sheet/addin",
        "carb-sheet/addin/oxt",
        "carb-sheet/addin/oxt/pythonpath/carb_calc",
    ];
    for folder in folders {
        for entry in fs::read_dir(format!("{ROOT}/{folder}")).expect("a folder of a face").flatten() {
            let path = entry.path();
            if !path.extension().is_some_and(|e| e == "rs" || e == "py") {
                continue;
            }
            read += 1;
            let text = fs::read_to_string(&path).expect("a source file");
            let mut in_docstring = false;
            for (at, line) in text.lines().enumerate() {
                // A docstring may show what an example prints; doctests hold it to that.
                let quotes = line.matches("\"\"\"").count();
                let documented = in_docstring || quotes > 0;
                in_docstring ^= quotes % 2 == 1;
                if documented {
                    continue;
                }
                let code = line.split("//").next().unwrap_or("").split('#').next().unwrap_or("");
                let quoted = code.split('"').step_by(2).collect::<String>();
                let coefficient = quoted.split(|c: char| !(c.is_ascii_digit() || c == '.' || c == 'e')).any(|word| {
                    word.split_once('.')
                        .is_some_and(|(w, f)| !w.is_empty() && f.len() >= 2 && word.parse::<f64>().is_ok())
                });
                assert!(!coefficient, "{}:{}: {line}", path.display(), at + 1);
            }
        }
    }
    assert!(read > 5, "only {read} files of the faces were read");
}

#[test]
fn every_step_of_the_demo_reproduces_its_result() {
    use carb_core::evidence::infix::Formula;
    let text = fs::read_to_string(format!("{ROOT}/docs/scenarios/harbour_ale.json")).expect("the scenario");
    let asked = json::ask(&text.replacen('{', "{\"working\": true, ", 1)).expect("a valid scenario");
    let plan = carb_core::plan::plan(&asked.request, &asked.lists().expect("valid lists")).expect("a plan");
    let page = plan.to_text();
    let steps = plan
        .bottling
        .priming
        .working
        .steps
        .iter()
        .chain(plan.kegging.parts.iter().flat_map(|part| &part.part.working.steps));
    let mut checked = 0;
    for step in steps {
        let printed = step.text();
        assert!(page.contains(&printed), "the page prints every step:\n{printed}");
        // From the printed text alone: the formula, the inputs and the result, as a reader would have them.
        let (first, second) = printed.split_once('\n').expect("two lines");
        let formula = Formula::parse(first.split_once(": ").expect("a title").1).expect("a formula");
        let (inputs, result) = second.trim().split_once(" -> ").expect("inputs and result");
        let number = |text: &str| -> (String, f64) {
            let (name, value) = text.split_once(" = ").expect("name = value");
            let value = value.split(' ').next().expect("a number").parse().expect("a number");
            (name.to_owned(), value)
        };
        let given: Vec<(String, f64)> = inputs.split(", ").map(number).collect();
        let (_, wanted) = number(result);
        let symbol = |name: &str| given.iter().find(|(n, _)| n == name).map(|(_, v)| *v);
        let value = formula.expression.value(&symbol).expect("every symbol is printed");
        // Nine printed digits: an input is off by at most 5e-9 of itself, and no formula here magnifies that more than a
        // hundredfold (the exponentials of T and f, and the difference of CO2 wanted and left).
        assert!((value - wanted).abs() <= 5e-7 * wanted.abs(), "{printed}\n    gives {value}");
        checked += 1;
    }
    assert!(checked >= 8, "only {checked} steps");
}

/// The value that a table's text says is taken where nothing is given, such as "4 % of the liquid" or "20 °C".
fn said_default(input: &Input) -> Option<String> {
    let (Need::Optional(text), Some(_)) = (input.need, input.key.dimension()) else { return None };
    let (number, rest) = text.split_once(' ').unwrap_or((text, ""));
    let number: f64 = number.parse().ok()?;
    let unit = rest.split([' ', ',', ';']).next()?;
    let name = Name::of(input.key).find(|name| name.unit.is_some_and(|u| u.symbol == unit))?;
    Some(format!("{name}={number:?}"))
}

#[test]
fn what_the_tables_call_a_default_is_what_is_taken() {
    let mut checked = 0;
    for function in FUNCTIONS {
        let plain = function.example.trim_matches(['{', '}']).replace(": ", "=").replace(", ", ";").replace('"', "");
        let bases = ["", ";basis=physical"];
        for basis in bases.into_iter().filter(|b| b.is_empty() || function.takes(Key::Basis)) {
            let inputs = format!("{plain}{basis}");
            let taken = |inputs: &str| {
                let request = carb_tests::given(inputs).unwrap_or_else(|error| panic!("{inputs}: {error}"));
                function.answer(&request, &mut NoSteps).unwrap_or_else(|error| panic!("{inputs}: {error}")).value
            };
            for input in function.inputs.iter().filter(|i| !carb_tests::pairs(&inputs).any(|(n, _)| names(i, n))) {
                let Some(pair) = said_default(input) else { continue };
                assert_eq!(taken(&inputs), taken(&format!("{inputs};{pair}")), "{}: {pair}", function.name);
                checked += 1;
            }
        }
    }
    let plain = "packaged_l=19.2;volumes=2.4;warmest_c=18;altitude_m=240";
    let planned = |inputs: &str| {
        let request = carb_tests::given(inputs).unwrap_or_else(|error| panic!("{inputs}: {error}"));
        let plan = carb_core::plan::plan(&request, &carb_core::basis::Lists::new()).expect("a plan");
        let stored = plan.bottling.storage.iter().map(|s| s.pressure.value().expect("a pressure").worst.gauge.si());
        let regulator = plan.kegging.value("regulator", "", Key::Gauge).expect("a pressure");
        let expected = plan.bottling.expectation.value().expect("what is expected").expected.si();
        let mut all = vec![("bottling", stored.chain([regulator, expected]).collect::<Vec<f64>>())];
        // Every number of every part of the keg, so that a default of any of them is seen.
        let of_keg = plan.kegging.parts.iter().filter_map(|part| Some((part.place, part.part.value()?)));
        all.extend(of_keg.map(|(place, values)| (place, values.as_slice().to_vec())));
        all
    };
    for day in [plain, &format!("{plain};purge=push;cycles_count=2;room_m3=30;outfit_money=300;bottle_money=0.5")] {
        for input in &carb_core::plan::inputs() {
            let given = carb_tests::pairs(day).any(|(name, _)| names(input, name));
            let Some(pair) = said_default(input).filter(|_| !given) else { continue };
            // What is told may call for a further part, such as a price for the costs; it changes none that was there.
            let told = planned(&format!("{day};{pair}"));
            for part in planned(day) {
                assert!(told.contains(&part), "plan: {pair}: {part:?}");
            }
            checked += 1;
        }
    }
    assert!(checked >= 15, "only {checked} defaults");
}

fn names(input: &Input, name: &str) -> bool {
    Name::parse(name).is_some_and(|name| name.key == input.key)
}

#[test]
fn the_schema_is_that_of_the_tables() {
    let path = format!("{ROOT}/docs/schema/carb-1.json");
    let schema = format!("{}\n", carb_core::plan::schema::schema_text());
    if std::env::var_os("BLESS").is_some() {
        fs::create_dir_all(format!("{ROOT}/docs/schema")).expect("a folder");
        fs::write(&path, schema).expect("the schema is written");
    } else {
        let written = fs::read_to_string(&path).expect("docs/schema/carb-1.json");
        assert_eq!(written, schema, "run with BLESS=1 to rewrite the schema");
    }
}
