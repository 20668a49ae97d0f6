//! Which habits reproduce a number: all readings of a claim, the likeliest first, until next to nothing is left.

use super::quantity::Otherwise;
use super::question::{Choice, Question};
use crate::number::ln;
use alloc::vec;
use alloc::vec::Vec;

/// Share of all readings, by their priors, that is left out: the least likely of them.
pub const LEFT: f64 = 1e-3;

/// A reading as it passes by: most are looked at and dropped.
#[derive(Clone, Copy, Debug)]
pub(super) struct Passing<'a> {
    choice: &'a Choice,
    factors: &'a Choice,
    pub prior: f64,
    pub value: f64,
    pub departures: usize,
}

impl Passing<'_> {
    /// The reading, to be kept.
    pub fn kept(&self) -> Found {
        Found { choice: self.choice.joined(self.factors), prior: self.prior, value: self.value }
    }
}

/// A reading: a habit for each question that matters, and what a program with these habits computes.
#[derive(Clone, Copy, Debug)]
pub(super) struct Found {
    pub choice: Choice,
    /// Product of the habits' shares.
    pub prior: f64,
    /// What such a program computes, SI.
    pub value: f64,
}

/// Least prior that is looked at, for sets of questions that came up before.
#[derive(Debug, Default)]
pub(super) struct Thresholds {
    known: Vec<(Vec<Question>, f64)>,
}

/// Width of the steps in which unlikeliness, -ln(prior), is counted.
const STEP: f64 = 0.02;
/// How many of them there are; what is less likely than all of them is never looked at.
const STEPS: usize = 1000;

impl Thresholds {
    /// The prior from which on readings are looked at, so that at most [`LEFT`] of them is left out.
    pub fn of(&mut self, questions: &[Question]) -> f64 {
        if let Some((_, known)) = self.known.iter().find(|(known, _)| known == questions) {
            return *known;
        }
        let threshold = threshold(questions);
        self.known.push((questions.to_vec(), threshold));
        threshold
    }
}

/// The distribution of unlikeliness over all readings, from that of each question.
fn threshold(questions: &[Question]) -> f64 {
    let mut shares = vec![0.0; STEPS];
    shares[0] = 1.0;
    for &question in questions {
        let mut next = vec![0.0; STEPS];
        for habit in question.matter().habits {
            let by = (-ln(habit.prior) / STEP + 0.5) as usize;
            for (at, share) in shares.iter().enumerate().take(STEPS.saturating_sub(by)) {
                next[at + by] += share * habit.prior;
            }
        }
        shares = next;
    }
    let mut seen = 0.0;
    let last = shares.iter().position(|share| {
        seen += share;
        seen >= 1.0 - LEFT
    });
    // Half a step for each question may have been lost in rounding.
    let steps = last.unwrap_or(STEPS) as f64 + 0.5 * questions.len() as f64;
    crate::number::exp(-STEP * steps)
}

/// Looks at every reading whose prior is at least `least`. Gives how much was looked at, by priors; of readings without an
/// answer nothing counts.
pub(super) fn each(
    otherwise: &dyn Otherwise,
    questions: &[Question],
    least: f64,
    look: &mut dyn FnMut(Passing<'_>),
) -> f64 {
    let factors = otherwise.factors();
    let (factors, base): (Vec<Question>, Vec<Question>) = questions.iter().partition(|q| factors.contains(q));
    let mut levels: Vec<Level> = base.into_iter().map(Level::of).collect();
    // What can vary most comes last, so that what is unlikely is cut early.
    levels.sort_by(|a, b| b.habits[0].1.total_cmp(&a.habits[0].1));
    let best: f64 = factors.iter().map(|&question| Level::of(question).habits[0].1).product();
    // The best that the questions behind a level can still do.
    let mut rest = vec![best; levels.len() + 1];
    for at in (0..levels.len()).rev() {
        rest[at] = rest[at + 1] * levels[at].habits[0].1;
    }
    let group = otherwise.group();
    let groups = group.map_or(1, |question| question.matter().habits.len());
    // What is too unlikely even beside the likeliest of everything else is left out.
    let products = products(&factors, least * best / rest[0]);
    let numbers = vec![None; groups];
    let mut walk =
        Walk { otherwise, levels: &levels, rest: &rest, least, group, products: &products, numbers, look, seen: 0.0 };
    walk.down(0, &mut Choice::OURS.clone(), 1.0, 0);
    walk.seen
}

/// A question, its habits sorted by their shares.
struct Level {
    question: Question,
    habits: Vec<(usize, f64)>,
}

impl Level {
    fn of(question: Question) -> Self {
        let habits = question.matter().habits.iter().map(|habit| habit.prior);
        let mut habits: Vec<(usize, f64)> = habits.enumerate().collect();
        habits.sort_by(|a, b| b.1.total_cmp(&a.1));
        Self { question, habits }
    }
}

/// A set of habits that multiply an answer.
#[derive(Clone, Copy)]
struct Product {
    prior: f64,
    choice: Choice,
    departures: usize,
}

/// Every set of habits of these questions that is at least so likely, the likeliest first.
fn products(questions: &[Question], least: f64) -> Vec<Product> {
    let mut all = vec![Product { prior: 1.0, choice: Choice::OURS, departures: 0 }];
    for &question in questions {
        let with = |product: &Product, at: usize, share: f64| Product {
            prior: product.prior * share,
            choice: product.choice.with(question, at),
            departures: product.departures + usize::from(at > 0),
        };
        let habits = || question.matter().habits.iter().enumerate();
        all = all.iter().flat_map(|product| habits().map(move |(at, habit)| with(product, at, habit.prior))).collect();
        all.retain(|product| product.prior >= least);
    }
    all.sort_by(|a, b| b.prior.total_cmp(&a.prior));
    all
}

struct Walk<'a> {
    otherwise: &'a dyn Otherwise,
    levels: &'a [Level],
    rest: &'a [f64],
    least: f64,
    group: Option<Question>,
    products: &'a [Product],
    /// By what each product multiplies, for each habit of the group's question; NaN where it has no answer.
    numbers: Vec<Option<Vec<f64>>>,
    look: &'a mut dyn FnMut(Passing<'_>),
    seen: f64,
}

impl Walk<'_> {
    fn down(&mut self, at: usize, choice: &mut Choice, prior: f64, departures: usize) {
        let levels = self.levels;
        let Some(level) = levels.get(at) else {
            return self.leaf(choice, prior, departures);
        };
        for &(habit, share) in &level.habits {
            let prior = prior * share;
            if prior * self.rest[at + 1] < self.least {
                break;
            }
            choice.set(level.question, habit);
            self.down(at + 1, choice, prior, departures + usize::from(habit > 0));
        }
    }

    /// All products of the factors, on a choice of everything else.
    fn leaf(&mut self, choice: &Choice, prior: f64, departures: usize) {
        let Some(value) = self.otherwise.value(choice) else { return };
        let group = self.group.and_then(|question| choice.at(question)).unwrap_or_default();
        let numbers = self.numbers[group].take().unwrap_or_else(|| self.multiply(choice, value));
        for (product, factor) in self.products.iter().zip(&numbers) {
            let prior = prior * product.prior;
            if prior < self.least {
                break;
            }
            if factor.is_nan() {
                continue;
            }
            self.seen += prior;
            let departures = departures + product.departures;
            (self.look)(Passing { choice, factors: &product.choice, prior, value: value * factor, departures });
        }
        self.numbers[group] = Some(numbers);
    }

    /// By what each product multiplies the answer to a choice of everything else.
    fn multiply(&self, base: &Choice, value: f64) -> Vec<f64> {
        let answer = |product: &Product| self.otherwise.value(&base.joined(&product.choice));
        self.products.iter().map(|product| answer(product).map_or(f64::NAN, |answer| answer / value)).collect()
    }
}
