//! Which habits reproduce a number: all readings of a claim, the likeliest first, until next to nothing is left.

use super::quantity::Otherwise;
use super::question::{Choice, Question};
use crate::number::ln;
use alloc::vec;
use alloc::vec::Vec;

/// Share of all readings, by their priors, that is left out: the least likely of them.
pub const LEFT: f64 = 1e-3;

/// A reading: a habit for each question that matters, and what a program with these habits computes.
#[derive(Clone, Copy, Debug)]
pub(super) struct Found {
    pub choice: Choice,
    /// Product of the habits' shares.
    pub prior: f64,
    /// What such a program computes, SI.
    pub value: f64,
    /// How many habits are not this library's.
    pub departures: usize,
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
pub(super) fn each(otherwise: &dyn Otherwise, questions: &[Question], least: f64, look: &mut dyn FnMut(Found)) -> f64 {
    let mut levels: Vec<Level> = questions.iter().map(|&question| Level::of(question)).collect();
    // What can vary most comes last, so that what is unlikely is cut early.
    levels.sort_by(|a, b| b.habits[0].1.total_cmp(&a.habits[0].1));
    // The best that the questions behind a level can still do.
    let mut rest = vec![1.0; levels.len() + 1];
    for at in (0..levels.len()).rev() {
        rest[at] = rest[at + 1] * levels[at].habits[0].1;
    }
    let mut walk = Walk { otherwise, levels: &levels, rest: &rest, least, look, seen: 0.0 };
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

struct Walk<'a> {
    otherwise: &'a dyn Otherwise,
    levels: &'a [Level],
    rest: &'a [f64],
    least: f64,
    look: &'a mut dyn FnMut(Found),
    seen: f64,
}

impl Walk<'_> {
    fn down(&mut self, at: usize, choice: &mut Choice, prior: f64, departures: usize) {
        let levels = self.levels;
        let Some(level) = levels.get(at) else {
            if let Some(value) = self.otherwise.value(choice) {
                self.seen += prior;
                (self.look)(Found { choice: *choice, prior, value, departures });
            }
            return;
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
}
