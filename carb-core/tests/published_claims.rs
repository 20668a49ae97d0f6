//! The cross-check against published numbers: worked examples, cells of tables, rules. Of some the source says, or its
//! arithmetic shows, how they were made; then a reading has to say the same. What these habits make was worked out
//! apart from the library (`checks/scripts/published_claims.py`). Of the others nobody knows: they have to be
//! explained, or lie within what our equations are unsure of.
#![cfg(feature = "json")]
#![allow(clippy::disallowed_methods)]

use carb_core::crosscheck::json;
use serde_json::{Map, Value};
use std::collections::{BTreeMap, BTreeSet};

const CLAIMS: &str = include_str!("../checks/published/claims.csv");
/// More readings than any claim has, so that all are listed.
const ALL: u32 = 1_000_000;

type Row = BTreeMap<&'static str, &'static str>;
/// Habits by their questions.
type Habits = BTreeMap<String, String>;

fn rows() -> Vec<Row> {
    let mut lines = CLAIMS.lines().filter(|line| !line.starts_with('#'));
    let header: Vec<_> = lines.next().expect("a header").split(',').collect();
    let row = |line: &'static str| {
        let cells: Vec<_> = line.split(',').collect();
        assert_eq!(cells.len(), header.len(), "{line}");
        header.iter().copied().zip(cells).collect()
    };
    lines.map(row).collect()
}

fn pairs(text: &str) -> impl Iterator<Item = (&str, &str)> {
    let parts = text.split(';').filter(|part| !part.is_empty());
    parts.map(|part| part.split_once('=').unwrap_or_else(|| panic!("name=value, not {part}")))
}

/// The claim of a row as JSON, of a value that may be told more finely than it is printed.
fn claim(row: &Row, value: &str) -> Value {
    let parts = [("value", value), ("label", row["label"]), ("quantity", row["quantity"]), ("unit", row["unit"])];
    let told = pairs(row["inputs"]).map(|(name, text)| (name, text.parse::<f64>().map_or(text.into(), Value::from)));
    let all = parts.map(|(name, text)| (name, Value::from(text))).into_iter().chain(told);
    Value::from(all.map(|(name, value)| (name.to_owned(), value)).collect::<Map<_, _>>())
}

/// What the library finds about claims.
fn findings(claims: Vec<Value>) -> Vec<Value> {
    let count = claims.len();
    let request = serde_json::json!({"carb": 1, "claims": claims, "most_readings": ALL}).to_string();
    let found = json::crosscheck_of(&request).unwrap_or_else(|refusal| panic!("{refusal}"));
    let answer: Value = serde_json::from_str(&json::answer(&found)).expect("JSON");
    let findings = answer["claims"].as_array().expect("a list of claims").clone();
    assert_eq!(findings.len(), count);
    findings
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("a number, not {value}"))
}

fn habits(reading: &Value) -> Habits {
    let text = |value: &Value| value.as_str().expect("a text").to_owned();
    let departures = reading["departures"].as_array().expect("departures");
    departures.iter().map(|departure| (text(&departure["question"]), text(&departure["habit"]))).collect()
}

/// A row, and what the library found about it.
struct Checked<'a> {
    row: &'a Row,
    finding: &'a Value,
}

impl Checked<'_> {
    fn says(&self) -> String {
        format!("{}: {}", self.row["label"], self.finding["text"])
    }

    fn verdict(&self) -> &str {
        self.finding["verdict"].as_str().unwrap_or_else(|| panic!("{}: {}", self.row["label"], self.finding["error"]))
    }

    fn readings(&self) -> impl Iterator<Item = Habits> + '_ {
        let readings = self.finding["readings"].as_array().expect("readings");
        assert_eq!(self.finding["count"], readings.len(), "all are listed");
        readings.iter().map(habits)
    }

    /// A reading is listed that has these habits and no others; of a question with `?` any habit will do.
    fn is_read_as(&self, expected: &Habits) {
        let fits = |habits: &Habits| {
            let told = expected.iter().all(|(question, habit)| habit == "?" || habits.get(question) == Some(habit));
            told && habits.keys().all(|question| expected.contains_key(question))
        };
        let found: Vec<_> = self.readings().collect();
        assert!(found.iter().any(fits), "{}\nwanted {expected:?}, found {found:?}", self.says());
    }

    /// What the habits of the row make, by the script, with some digits more; it has to round to what is printed.
    fn finer(&self) -> String {
        let worked: f64 =
            self.row["worked"].parse().unwrap_or_else(|_| panic!("{} has nothing worked out", self.says()));
        let half = number(&self.finding["half_step"]);
        let off = (worked - number(&self.finding["claimed"])).abs();
        assert!(off <= half * (1.0 + 1e-9), "{}\nis off {worked} by {off}", self.says());
        let places = -(2.0 * half).log10().round() as i32 + MORE;
        format!("{worked:.*}", places.max(0) as usize)
    }
}

/// Digits by which numbers that were worked out are told more finely than printed ones.
const MORE: i32 = 2;

/// Looks into each row; gives those whose habits are known, with the number that they make.
fn check<'a>(rows: &'a [Row], findings: &[Value]) -> Vec<(&'a Row, String, Habits)> {
    const REASONS: [&str; 4] = ["agrees", "within_uncertainty", "explained", "possible"];
    let mut known = Vec::new();
    for (row, finding) in rows.iter().zip(findings) {
        let checked = Checked { row, finding };
        let verdict = checked.verdict();
        let expected = row["expected"];
        if expected == "none" {
            assert_eq!(verdict, "not_explained", "{}", checked.says());
            continue;
        }
        assert!(REASONS.contains(&verdict), "{}", checked.says());
        if expected == "?" {
            continue;
        }
        let habits: Habits = pairs(expected).map(|(question, habit)| (question.into(), habit.into())).collect();
        if habits.values().any(|habit| habit == "?") {
            checked.is_read_as(&habits);
        } else {
            assert!(!habits.is_empty() || verdict == "agrees", "{}", checked.says());
            known.push((row, checked.finer(), habits));
        }
    }
    known
}

#[test]
fn published_numbers_are_read_as_they_were_made() {
    let rows = rows();
    let labels: BTreeSet<_> = rows.iter().map(|row| row["label"]).collect();
    assert_eq!(labels.len(), rows.len(), "a label stands twice");
    for row in &rows {
        assert!(["published", "secondary", "from memory"].contains(&row["standing"]), "{}", row["label"]);
        assert!(!row["note"].is_empty(), "{}", row["label"]);
    }
    let as_printed = findings(rows.iter().map(|row| claim(row, row["value"])).collect());
    let mut verdicts = BTreeMap::<String, usize>::new();
    for (row, finding) in rows.iter().zip(&as_printed) {
        *verdicts.entry(Checked { row, finding }.verdict().to_owned()).or_default() += 1;
    }
    for (verdict, count) in &verdicts {
        println!("{verdict}: {count} of {}", rows.len());
    }
    // Readings that make the same number are listed as one, which need not be that of the source. Of a number with more
    // digits only that is left which makes it.
    let known = check(&rows, &as_printed);
    let finer = findings(known.iter().map(|(row, worked, _)| claim(row, worked)).collect());
    for ((row, _, habits), finding) in known.iter().zip(&finer) {
        Checked { row, finding }.is_read_as(habits);
    }
    // The values of the others are held against the library elsewhere.
    println!("outside values checked: {}", known.len());
}
