//! What is found, in sentences, and as a page.

use super::finding::{Departure, Finding, Outcome, Verdict};
use super::program::{Program, Survivor};
use super::search::LEFT;
use super::{Crosscheck, Reading};
use crate::evidence::steps::significant;
use crate::plan::page::Page;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

/// What is said where a claim may hurt somebody.
const UNSAFE: &str = "UNSAFE: do not follow this number.";
/// What the priors are.
const JUDGEMENT: &str = "How common a habit is among programs is judgement: it orders the explanations and proves none. A number that agrees with several programs can still be wrong: all of them may have forgotten the same thing.";
const DEFER: &str = "Glass can burst, and a keg under more than its rating can. Keep to the maker's rating, to local code and to what licensed people tell you.";

/// A change, in percent with its sign.
fn percent(share: f64) -> String {
    let value = 100.0 * share;
    match value.abs() {
        small if small < 0.095 => format!("{value:+.2} %"),
        small if small < 9.95 => format!("{value:+.1} %"),
        _ => format!("{value:+.0} %"),
    }
}

/// A share of many, in words.
fn of_a_hundred(share: f64) -> String {
    match 100.0 * share {
        hundredth if hundredth < 1.0 => "fewer than 1 in 100".into(),
        hundredth => format!("{hundredth:.0} in 100"),
    }
}

/// A text as a sentence.
fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    let first: String = letters.next().into_iter().flat_map(char::to_uppercase).collect();
    let end = if text.ends_with('.') { "" } else { "." };
    format!("{first}{}{end}", letters.as_str())
}

/// What a program with these habits does.
pub(super) fn habits(departures: &[Departure]) -> String {
    let said: Vec<String> = departures
        .iter()
        .map(|departure| match departure.size {
            Some(size) if size.abs() >= 5e-5 => format!("{} ({})", departure.says, percent(size)),
            _ => departure.says.into(),
        })
        .collect();
    match said.as_slice() {
        [] => "does as this library does".into(),
        [one] => one.clone(),
        [most @ .., last] => format!("{}, and {last}", most.join(", ")),
    }
}

impl Outcome {
    /// A number in the unit of the claim, with a digit more than was printed.
    fn number(value: f64, finding: &Finding) -> String {
        let (mut places, mut step) = (0, finding.claim.printed.step);
        while step < 0.99 && places < 12 {
            places += 1;
            step *= 10.0;
        }
        let symbol = finding.claim.unit.unit.symbol;
        let joint = if symbol.is_empty() { "" } else { " " };
        format!(
            "{value:.*}{joint}{symbol}",
            places + usize::from(finding.claim.printed.step <= 1.0 && places < 12 && !symbol.is_empty())
        )
    }

    /// How likely a reading is among those that round to the claim.
    pub fn share(&self, reading: &Reading) -> f64 {
        let all: f64 = self.readings.iter().map(|reading| reading.prior).sum();
        if all > 0.0 { reading.prior / all } else { 0.0 }
    }

    /// How far the claim lies from this library's answer, as a share of it.
    pub fn difference(&self, claimed: f64) -> Option<f64> {
        (self.ours != 0.0).then(|| claimed / self.ours - 1.0)
    }

    fn sentences(&self, finding: &Finding) -> String {
        let ours = Self::number(self.ours, finding);
        let off =
            self.difference(finding.claim.printed.value).map(|off| format!(" ({})", percent(off))).unwrap_or_default();
        let within = self
            .uncertainty
            .map(|unsure| format!("±{} (k = 2)", significant(100.0 * unsure / self.ours.abs(), 2) + " %"));
        let likeliest = self.readings.first().map(|reading| habits(&reading.departures)).unwrap_or_default();
        let share = self.readings.first().map(|first| self.share(first)).unwrap_or_default();
        // Of the least likely of all nothing can be said against each other.
        let rare = self.mass < LEFT;
        let likely =
            if share > 0.995 || rare { String::new() } else { format!(", most likely ({:.0} %),", 100.0 * share) };
        // What else may be meant, where it is not far behind.
        let more = |n: usize| match n {
            0 => String::new(),
            1 => " One other reading rounds to it.".into(),
            n => format!(" {n} other readings round to it."),
        };
        let others = match self.readings.as_slice() {
            [] | [_] => String::new(),
            [first, second, rest @ ..] if self.share(second) >= MENTIONED && !rare && !covers(first, second) => {
                let (share, says) = (100.0 * self.share(second), habits(&second.departures));
                format!(" Or ({share:.0} %) by a program that {says}.{}", more(rest.len()))
            }
            [_, rest @ ..] => more(rest.len()),
        };
        match self.verdict {
            Verdict::Agrees => format!("It agrees: this library says {ours}."),
            Verdict::Explained => {
                format!("This library says {ours}{off}. Explained{likely} by a program that {likeliest}.{others}")
            }
            Verdict::WithinUncertainty if self.readings.is_empty() => format!(
                "It agrees within what the equations are unsure of: this library says {ours} {}{off}.{}",
                within.unwrap_or_default(),
                self.nearest_said(finding)
            ),
            Verdict::WithinUncertainty => format!(
                "It agrees within what the equations are unsure of: this library says {ours} {}{off}. It is also made{likely} by a program that {likeliest}.{others}",
                within.unwrap_or_default()
            ),
            Verdict::Possible => format!(
                "This library says {ours}{off}. Possible, no more: {}, but {} wrong numbers are matched by some reading. Made{likely} by a program that {likeliest}.{others}",
                match self.readings.len() {
                    1 => "1 reading rounds to it".into(),
                    n => format!("{n} readings round to it"),
                },
                of_a_hundred(self.matched)
            ),
            Verdict::NotExplained => {
                format!(
                    "This library says {ours}{off}. Not explained: none of the readings looked at rounds to it.{}",
                    self.nearest_said(finding)
                )
            }
        }
    }

    fn nearest_said(&self, finding: &Finding) -> String {
        let Some(nearest) = &self.nearest else { return String::new() };
        let off = Self::number((nearest.value - finding.claim.printed.value).abs(), finding);
        let value = Self::number(nearest.value, finding);
        format!(" The nearest, {value}, is {off} off: a program that {}.", habits(&nearest.departures))
    }
}

impl Finding {
    /// What the claim is called: its label, and what it says.
    pub fn title(&self) -> String {
        let claim = &self.claim;
        let symbol = claim.unit.unit.symbol;
        let joint = if symbol.is_empty() { "" } else { " " };
        let said = format!("{} {}{joint}{symbol}", claim.quantity.title, claim.printed.text);
        if claim.label.is_empty() { said } else { format!("{}: {said}", claim.label) }
    }

    /// What is found, in sentences; danger first.
    pub fn sentences(&self) -> String {
        let said = match &self.outcome {
            Ok(outcome) => outcome.sentences(self),
            Err(error) => format!("This library has no answer: {error}."),
        };
        match &self.danger {
            Some(danger) => format!("{UNSAFE} {} {said}", sentence(danger)),
            None => said,
        }
    }
}

/// How another set of habits differs from the first.
fn but(first: &[Departure], other: &[Departure]) -> String {
    let known = |list: &[Departure], departure: &Departure| {
        list.iter().any(|d| d.question == departure.question && d.habit.name == departure.habit.name)
    };
    let mut differing: Vec<Departure> = other.iter().filter(|d| !known(first, d)).copied().collect();
    let back = first.iter().filter(|d| !other.iter().any(|o| o.question == d.question));
    // What the other does as this library does.
    differing.extend(back.filter_map(|d| {
        let habit = d.question.matter().habits.first()?;
        Some(Departure { question: d.question, habit, says: habit.says, size: None })
    }));
    habits(&differing)
}

/// Whether the second reading does all that the first does, and more.
fn covers(first: &Reading, second: &Reading) -> bool {
    first
        .departures
        .iter()
        .all(|d| second.departures.iter().any(|o| o.question == d.question && o.habit.name == d.habit.name))
}

/// A second reading less likely than this, among those that round to a claim, is only counted.
const MENTIONED: f64 = 0.05;
/// Sets of habits less likely than this are not printed on a page.
const PRINTED: f64 = 0.01;
/// The most of them that are, behind the first.
const MOST_PRINTED: usize = 4;

impl Survivor {
    /// What a program with these habits does, in a sentence.
    pub fn sentence(&self) -> String {
        format!("a program that {}", habits(&self.departures))
    }
}

impl Program {
    /// How likely a survivor is among all of them.
    pub fn share(&self, survivor: &Survivor) -> f64 {
        let all: f64 = self.survivors.iter().map(|survivor| survivor.prior).sum();
        if all > 0.0 { survivor.prior / all } else { 0.0 }
    }

    /// What is found about its claims together, in sentences.
    pub fn sentences(&self) -> String {
        let claims = self.answered;
        match self.survivors.as_slice() {
            [] if claims == 0 => "This library could look into none of its claims.".into(),
            [] => format!(
                "No habits that were looked at reproduce all {claims} claims: one of them may be mistyped, or made otherwise."
            ),
            [first, ..] if claims == 1 => {
                format!("Of its claims this library could look into one, which fits {}.", first.sentence())
            }
            [only] => format!("All {claims} claims fit {}, and no other habits that were looked at.", only.sentence()),
            [first, ..] => format!(
                "All {claims} claims fit {} sets of habits. The likeliest ({:.0} %): {}.",
                self.survivors.len(),
                100.0 * self.share(first),
                first.sentence()
            ),
        }
    }
}

impl fmt::Display for Verdict {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

impl Crosscheck {
    /// What is found, as a page: what is unsafe first, then program by program.
    #[must_use]
    pub fn to_text(&self) -> String {
        let mut page = Page::default();
        page.line("CROSS-CHECK");
        let of = |verdict| {
            self.claims.iter().filter(|finding| finding.outcome.as_ref().is_ok_and(|o| o.verdict == verdict)).count()
        };
        let dangers: Vec<&Finding> = self.claims.iter().filter(|finding| finding.danger.is_some()).collect();
        let unanswered = self.claims.iter().filter(|finding| finding.outcome.is_err()).count();
        let counted = [
            (dangers.len(), "unsafe"),
            (of(Verdict::Agrees), "agree"),
            (of(Verdict::Explained), "explained"),
            (of(Verdict::WithinUncertainty), "within uncertainty"),
            (of(Verdict::Possible), "possible"),
            (of(Verdict::NotExplained), "not explained"),
            (unanswered, "without an answer"),
        ];
        let counted: Vec<String> =
            counted.iter().filter(|(n, _)| *n > 0).map(|(n, what)| format!("{n} {what}")).collect();
        let noun = if self.claims.len() == 1 { "claim" } else { "claims" };
        page.wrapped("", 0, &format!("{} {noun}: {}.", self.claims.len(), counted.join(", ")));
        if !dangers.is_empty() {
            page.heading("UNSAFE - do not follow these numbers");
            for finding in dangers {
                let danger = finding.danger.as_deref().unwrap_or_default();
                page.bullet(&format!("{}. {}", finding.title(), sentence(danger)));
            }
            page.bullet(DEFER);
        }
        let mut programs: Vec<Option<&str>> = Vec::new();
        for finding in &self.claims {
            let program = finding.claim.program.as_deref();
            if !programs.contains(&program) {
                programs.push(program);
            }
        }
        for program in programs {
            page.heading(&program.map_or_else(|| "Claims".to_string(), |name| format!("Program {name}")));
            if let Some(found) = self.programs.iter().find(|found| Some(found.name.as_str()) == program) {
                page.wrapped("", 0, &found.sentences());
                if let [first, others @ ..] = found.survivors.as_slice() {
                    let likely = others.iter().take_while(|other| found.share(other) >= PRINTED).take(MOST_PRINTED);
                    for other in likely.clone() {
                        let share = 100.0 * found.share(other);
                        page.bullet(&format!(
                            "{share:.0} %: the same, but it {}",
                            but(&first.departures, &other.departures)
                        ));
                    }
                    match others.len() - likely.count() {
                        0 => {}
                        1 => page.bullet("one more, less likely"),
                        n => page.bullet(&format!("{n} more, less likely")),
                    }
                }
                page.line("");
            }
            for finding in self.claims.iter().filter(|finding| finding.claim.program.as_deref() == program) {
                page.wrapped("", 0, &finding.title());
                page.wrapped("    ", 4, &finding.sentences());
            }
        }
        page.line("");
        page.wrapped("", 0, JUDGEMENT);
        page.text
    }
}
