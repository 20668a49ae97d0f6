//! A page of text, 80 columns wide, to be pinned to the wall.

use crate::quantity::Temperature;
use crate::quantity::unit::{BAR, CELSIUS, FAHRENHEIT, PSI};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

const WIDTH: usize = 80;

/// A page of text that grows line by line.
#[derive(Default)]
pub(crate) struct Page {
    pub text: String,
    /// What was said once and needs no saying again.
    said: Vec<String>,
}

impl Page {
    pub(crate) fn line(&mut self, line: &str) {
        self.text.push_str(line.trim_end());
        self.text.push('\n');
    }

    pub(crate) fn heading(&mut self, title: &str) {
        self.line("");
        self.line(title);
        self.line(&"-".repeat(title.chars().count()));
    }

    /// A label and what it says, wrapped under itself.
    pub(crate) fn say(&mut self, label: &str, what: &str) {
        self.wrapped(&format!("{label:<20}"), 20, what);
    }

    /// The same, unless it has been said before.
    pub(crate) fn say_once(&mut self, label: &str, what: &str) {
        if !self.said.iter().any(|said| said == what) {
            self.say(label, what);
            self.said.push(String::from(what));
        }
    }

    pub(crate) fn bullet(&mut self, what: &str) {
        self.wrapped("  * ", 4, what);
    }

    pub(crate) fn wrapped(&mut self, first: &str, indent: usize, what: &str) {
        let mut line = String::from(first);
        let mut used = 0;
        for word in what.split_whitespace() {
            if used > 0 && line.chars().count() + 1 + word.chars().count() > WIDTH {
                self.line(&line);
                line = " ".repeat(indent);
                used = 0;
            }
            if used > 0 {
                line.push(' ');
            }
            line.push_str(word);
            used += 1;
        }
        self.line(&line);
    }
}

pub(crate) fn celsius(t: Temperature) -> String {
    format!("{:.1} °C ({:.0} °F)", CELSIUS.from_si(t.si()), FAHRENHEIT.from_si(t.si()))
}

pub(crate) fn bar_and_psi(pa: f64) -> String {
    format!("{:.2} bar ({:.1} psi)", BAR.from_si(pa), PSI.from_si(pa))
}
