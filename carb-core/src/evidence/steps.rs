//! The working of an answer: jobs tell an observer which equation they used, on what, with what result.

use super::caution::{Cautions, Range};
use super::equation::Equation;
use super::source::Source;
#[cfg(feature = "alloc")]
use alloc::{format, string::String, vec::Vec};

/// Someone who watches a calculation. Kernels know nothing of it; what is shown is what was computed.
pub trait Steps {
    /// `equation` gave `result` for `inputs` (in the order of its symbols, SI units).
    fn record(&mut self, equation: &'static Equation, inputs: &[f64], result: f64);
    /// `value` lies outside `range`.
    fn outside(&mut self, range: &'static Range, value: f64);

    /// Records a step and hands its result on.
    #[inline(always)]
    fn step(&mut self, equation: &'static Equation, inputs: &[f64], result: f64) -> f64 {
        self.record(equation, inputs, result);
        result
    }

    /// The status bit of `range` if `value` lies outside it, else 0.
    #[inline(always)]
    fn within(&mut self, range: &'static Range, value: f64) -> i32 {
        let bit = range.bit(value);
        if bit != 0 {
            self.outside(range, value);
        }
        bit
    }
}

/// Nobody watches: has no size and costs nothing, so the slice loops use it.
#[derive(Clone, Copy, Debug, Default)]
pub struct NoSteps;

impl Steps for NoSteps {
    #[inline(always)]
    fn record(&mut self, _: &'static Equation, _: &[f64], _: f64) {}
    #[inline(always)]
    fn outside(&mut self, _: &'static Range, _: f64) {}
    #[inline(always)]
    fn within(&mut self, range: &'static Range, value: f64) -> i32 {
        range.bit(value)
    }
}

/// The table of functions hands observers on as trait objects, and the generic functions below take them so.
impl Steps for &mut dyn Steps {
    fn record(&mut self, equation: &'static Equation, inputs: &[f64], result: f64) {
        (**self).record(equation, inputs, result);
    }
    fn outside(&mut self, range: &'static Range, value: f64) {
        (**self).outside(range, value);
    }
}

const MOST: usize = 40;

/// What every answer keeps: which equations were used and which cautions arose.
#[derive(Clone, Copy, Debug)]
pub struct Notes {
    used: [Option<&'static Equation>; MOST],
    count: usize,
    datum: Option<&'static Source>,
    /// The cautions, the gravest first.
    pub cautions: Cautions,
}

impl Default for Notes {
    fn default() -> Self {
        Self { used: [None; MOST], count: 0, datum: None, cautions: Cautions::default() }
    }
}

impl Notes {
    /// The equations used, in the order of their first use.
    pub fn equations(&self) -> impl Iterator<Item = &'static Equation> + '_ {
        self.used[..self.count].iter().flatten().copied()
    }

    /// The sources, each once, in the order of their first use.
    pub fn sources(&self) -> impl Iterator<Item = &'static Source> + '_ {
        let all = || self.equations().flat_map(|e| e.sources.iter().copied()).chain(self.datum);
        all().enumerate().filter(move |(at, source)| !all().take(*at).any(|s| s == *source)).map(|(_, source)| source)
    }

    /// Notes the source of a datum that no equation names, such as the composition of a sugar.
    pub fn datum(&mut self, source: Option<&'static Source>) {
        self.datum = source;
    }

    /// Adds what another calculation noted.
    pub fn join(&mut self, other: &Notes) {
        for equation in other.equations() {
            self.note(equation);
        }
        self.cautions.join(&other.cautions);
    }

    fn note(&mut self, equation: &'static Equation) {
        if self.count < MOST && !self.equations().any(|e| e == equation) {
            self.used[self.count] = Some(equation);
            self.count += 1;
        }
    }
}

impl Steps for Notes {
    fn record(&mut self, equation: &'static Equation, _: &[f64], _: f64) {
        self.note(equation);
    }
    fn outside(&mut self, range: &'static Range, value: f64) {
        self.cautions.add(range.caution_at(value));
    }
}

/// One line of working.
#[cfg(feature = "alloc")]
#[derive(Clone, Debug)]
pub struct Step {
    /// The equation.
    pub equation: &'static Equation,
    /// Its inputs, SI units, in the order of its symbols.
    pub inputs: Vec<f64>,
    /// Its result, SI units.
    pub result: f64,
}

/// How many significant digits the printed working carries.
#[cfg(feature = "alloc")]
pub const WORKING_DIGITS: usize = 9;

#[cfg(feature = "alloc")]
impl Step {
    /// The inputs as the formula has them: symbol, value, unit.
    pub fn shown(&self) -> impl Iterator<Item = (&'static str, f64, &'static str)> + '_ {
        self.equation.inputs.iter().zip(&self.inputs).map(|(s, &v)| (s.name, s.unit.shown(v), s.unit.symbol()))
    }

    /// The result as the formula has it.
    pub fn shown_result(&self) -> f64 {
        self.equation.result.unit.shown(self.result)
    }

    /// The step as two lines of text: the formula; the inputs and the result.
    pub fn text(&self) -> String {
        let inputs: Vec<String> = self
            .shown()
            .map(|(name, value, unit)| format!("{name} = {}{}", significant(value, WORKING_DIGITS), spaced(unit)))
            .collect();
        let result = &self.equation.result;
        format!(
            "{}: {}\n    {} -> {} = {}{}",
            self.equation.title,
            self.equation.formula,
            inputs.join(", "),
            result.name,
            significant(self.shown_result(), WORKING_DIGITS),
            spaced(result.unit.symbol())
        )
    }
}

#[cfg(feature = "alloc")]
fn spaced(unit: &str) -> String {
    if unit.is_empty() { String::new() } else { format!(" {unit}") }
}

#[cfg(feature = "alloc")]
impl Step {
    /// The step as Markdown: the formula in LaTeX, then a list of the inputs, the result, and where it comes from.
    pub fn markdown(&self) -> String {
        let row = |symbol: &super::Symbol, value: f64| {
            let unit = spaced(symbol.unit.symbol());
            let name = super::infix::latex_symbol(symbol.name);
            format!("- ${name}$ = {}{unit}: {}\n", significant(value, WORKING_DIGITS), symbol.meaning)
        };
        let mut text = format!("**{}** (`{}`)\n\n$${}$$\n\n", self.equation.title, self.equation.id, self.latex());
        for (symbol, &value) in self.equation.inputs.iter().zip(&self.inputs) {
            text += &row(symbol, symbol.unit.shown(value));
        }
        text += &row(&self.equation.result, self.shown_result());
        let sources: Vec<&str> = self.equation.sources.iter().map(|source| source.citation).collect();
        text += &format!("\n{}", self.equation.standing.words());
        if !sources.is_empty() {
            text += &format!(": {}", sources.join("; "));
        }
        text.push('\n');
        text
    }

    /// The formula in LaTeX.
    pub fn latex(&self) -> String {
        // Every formula of the catalogue is read by a test.
        super::infix::Formula::parse(self.equation.formula).map(|formula| formula.latex()).unwrap_or_default()
    }
}

/// A number with so many significant digits, without an exponent where it is easily read.
#[cfg(feature = "alloc")]
pub fn significant(value: f64, digits: usize) -> String {
    if value == 0.0 || !value.is_finite() {
        return format!("{value}");
    }
    let scientific = format!("{:.*e}", digits - 1, value);
    let exponent: i32 = scientific.split('e').nth(1).and_then(|e| e.parse().ok()).unwrap_or(0);
    if !(-5..15).contains(&exponent) {
        return scientific;
    }
    let decimals = (digits as i32 - 1 - exponent).max(0) as usize;
    let text = format!("{value:.decimals$}");
    if text.contains('.') { String::from(text.trim_end_matches('0').trim_end_matches('.')) } else { text }
}

/// Keeps the notes and every step.
#[cfg(feature = "alloc")]
#[derive(Clone, Debug, Default)]
pub struct Working {
    /// What every answer keeps.
    pub notes: Notes,
    /// The steps, in order.
    pub steps: Vec<Step>,
}

#[cfg(feature = "alloc")]
impl Working {
    /// The whole working as text.
    pub fn text(&self) -> String {
        let lines: Vec<String> = self.steps.iter().map(Step::text).collect();
        lines.join("\n")
    }

    /// The whole working as Markdown.
    pub fn markdown(&self) -> String {
        let steps: Vec<String> = self.steps.iter().map(Step::markdown).collect();
        steps.join("\n")
    }
}

#[cfg(feature = "alloc")]
impl Steps for Working {
    fn record(&mut self, equation: &'static Equation, inputs: &[f64], result: f64) {
        debug_assert_eq!(inputs.len(), equation.inputs.len(), "{}", equation.id);
        self.notes.record(equation, inputs, result);
        self.steps.push(Step { equation, inputs: inputs.to_vec(), result });
    }
    fn outside(&mut self, range: &'static Range, value: f64) {
        self.notes.outside(range, value);
    }
}
