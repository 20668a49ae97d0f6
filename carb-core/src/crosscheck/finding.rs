//! What is found about one claim.

use super::claim::Claim;
use super::danger::danger;
use super::quantity::Otherwise;
use super::question::{Choice, Habit, Question};
use super::search::{Found, Thresholds, each};
use super::spoken::spoken;
use crate::basis::{Answer, Values};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::quantity::Key;
use crate::uncertainty::{self, Doubts};
use alloc::boxed::Box;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

/// How many times likelier than chance an explanation has to be.
pub const TIMES_CHANCE: f64 = 3.0;
/// How far a random number is taken to lie from this library's, either way, of it.
pub const RANDOM: f64 = 0.2;
/// Farther off a random number may have any size: even over the logarithm, a hundred times more or less than this library's.
const WIDE: f64 = 9.210_340_371_976_184;
/// Readings that lie nearer than this, of a printed step, are one.
pub const SAME: f64 = 0.1;
/// What the digits of a program's constants may move a number, of it: molar masses and factors are carried with four or
/// five digits.
const CONSTANTS: f64 = 3e-5;

/// What is said of a claim.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// It rounds to what this library says.
    Agrees,
    /// Habits reproduce it, and chance would hardly.
    Explained,
    /// It lies within what the equations are unsure of.
    WithinUncertainty,
    /// Habits reproduce it, as they would many a wrong number.
    Possible,
    /// No habits that were looked at reproduce it.
    NotExplained,
}

impl Verdict {
    /// The name.
    pub const fn name(self) -> &'static str {
        match self {
            Verdict::Agrees => "agrees",
            Verdict::Explained => "explained",
            Verdict::WithinUncertainty => "within_uncertainty",
            Verdict::Possible => "possible",
            Verdict::NotExplained => "not_explained",
        }
    }
}

/// A habit that is not this library's, and what it does.
#[derive(Clone, Copy, Debug)]
pub struct Departure {
    /// The question.
    pub question: Question,
    /// The habit.
    pub habit: &'static Habit,
    /// What a program with this habit does, to be read after "a program that".
    pub says: &'static str,
    /// What it alone changes, as a share of this library's answer, where that can be said.
    pub size: Option<f64>,
}

/// Habits that reproduce a number.
#[derive(Clone, Debug)]
pub struct Reading {
    /// How common these habits are together, with all that make the same number.
    pub prior: f64,
    /// What they make, in the unit of the claim.
    pub value: f64,
    /// The habits that are not this library's.
    pub departures: Vec<Departure>,
}

/// What is found about a claim that this library can answer.
#[derive(Clone, Debug)]
pub struct Outcome {
    /// What this library says, in the unit of the claim.
    pub ours: f64,
    /// What its equations are unsure of (k = 2), in that unit, where that can be said.
    pub uncertainty: Option<f64>,
    /// Chance that a random number near this library's rounds to the claim.
    pub chance: f64,
    /// Share of all readings, by their priors, that round to it.
    pub mass: f64,
    /// Share of the numbers near this library's (near the claim, where that lies farther off) that some reading rounds to: how
    /// often a wrong number would be matched.
    pub matched: f64,
    /// The readings that round to it, the likeliest first.
    pub readings: Vec<Reading>,
    /// Where there is none, the reading with at most two departures that comes nearest.
    pub nearest: Option<Reading>,
    /// What is said.
    pub verdict: Verdict,
}

/// A claim, and what is found about it.
#[derive(Clone, Debug)]
pub struct Finding {
    /// The claim.
    pub claim: Claim,
    /// What is found, or why this library has no answer of its own.
    pub outcome: Result<Outcome, Error>,
    /// Why somebody who follows the claim may be hurt.
    pub danger: Option<String>,
}

/// A claim as it is searched: what other programs would make of it, and the readings that round to it.
pub(super) struct Searched {
    pub otherwise: Box<dyn Otherwise>,
    pub questions: Vec<Question>,
    /// This library's answer, SI.
    pub ours: f64,
    /// Readings that round to the claim, the likeliest first.
    pub found: Vec<Found>,
    /// One step of the claim's last digit, SI.
    pub step: f64,
    /// Slips that go either way, as they went here.
    spoken: Vec<(Question, &'static str)>,
    /// The claim, and how far a number may lie from it to be rounded to it, SI.
    claimed: f64,
    half: f64,
}

/// How far a number may lie from the printed one, in its unit.
fn half_step(claim: &Claim) -> f64 {
    0.5 * claim.printed.step * (1.0 + 1e-9) + CONSTANTS * claim.printed.value.abs()
}

/// This library's answer, SI; of bottles there is no function, so that the count itself is one.
fn ours(claim: &Claim, answer: Option<&Answer<Values>>, otherwise: &dyn Otherwise) -> Result<f64, Error> {
    const ADVICE: &str = "this library has no answer of its own to hold the claim against";
    let missing = Error::Missing { parameter: Key::Count, advice: ADVICE };
    match answer {
        // Cycles are claimed whole or as they come; whole ones have to be enough.
        Some(_) if claim.quantity.name == "purge_cycles" => otherwise.value(&Choice::OURS).ok_or(missing),
        Some(answer) => Ok(answer.value.as_slice().get(claim.unit.output).copied().unwrap_or_default()),
        None => otherwise.value(&Choice::OURS).ok_or(missing),
    }
}

/// What the equations behind an answer are unsure of, SI (k = 2).
fn uncertainty(claim: &Claim, answer: &Answer<Values>) -> Option<f64> {
    let function = claim.quantity.function?;
    let request = claim.asked();
    let doubts = Doubts::default();
    let mut sources = uncertainty::sources(&request, &doubts, function.inputs, answer.context.basis.name).ok()?;
    sources.retain(|source| source.equation);
    if sources.is_empty() {
        return None;
    }
    let estimates = uncertainty::first_order(&uncertainty::job_of(function), &request, &sources).ok()?;
    estimates.get(claim.unit.output).map(|estimate| 2.0 * estimate.standard)
}

/// Looks into one claim.
pub(super) fn look_into(claim: &Claim, thresholds: &mut Thresholds) -> (Finding, Option<Searched>) {
    let asked = claim.asked();
    // This library's own refusal tells best what is missing.
    let answer = claim.quantity.function.map(|function| function.answer(&asked, &mut NoSteps)).transpose();
    let danger = danger(claim, answer.as_ref().ok().and_then(Option::as_ref));
    let (outcome, searched) = match answer.and_then(|answer| search(claim, answer.as_ref(), thresholds)) {
        Ok((outcome, searched)) => (Ok(outcome), Some(searched)),
        Err(error) => (Err(error.renamed(|key| claim.request.name_of(key))), None),
    };
    (Finding { claim: claim.clone(), outcome, danger }, searched)
}

/// Looks for the habits that make a claim.
fn search(
    claim: &Claim,
    answer: Option<&Answer<Values>>,
    thresholds: &mut Thresholds,
) -> Result<(Outcome, Searched), Error> {
    let otherwise = (claim.quantity.otherwise)(claim)?;
    let ours = ours(claim, answer, otherwise.as_ref())?;
    let questions = otherwise.questions();
    let unit = claim.unit.unit;
    let (claimed, half) = (claim.printed.value, half_step(claim));
    let (mut found, mut inside) = (Vec::new(), 0.0);
    let mut nearest: Option<(f64, Found)> = None;
    let far = (claimed - unit.from_si(ours)).abs() > RANDOM * unit.from_si(ours).abs();
    let mut near = Near::around(if far { claimed } else { unit.from_si(ours) }, claim.printed.step);
    let least = thresholds.of(&questions);
    let seen = each(otherwise.as_ref(), &questions, least, &mut |reading| {
        let value = unit.from_si(reading.value);
        near.hit(value);
        let off = (value - claimed).abs();
        if off <= half {
            inside += reading.prior;
            found.push(reading.kept());
        } else if nearest.is_none_or(|(best, _)| off < best) && reading.departures <= 2 {
            nearest = Some((off, reading.kept()));
        }
    });
    found.sort_by(|a, b| b.prior.total_cmp(&a.prior).then_with(|| a.choice.key().cmp(&b.choice.key())));
    let step = unit.scale * claim.printed.step;
    let (claimed_si, half_si) = (unit.to_si(claimed), unit.scale * half);
    let searched =
        Searched { otherwise, questions, ours, found, step, claimed: claimed_si, half: half_si, spoken: spoken(claim) };
    let mass = if seen > 0.0 { inside / seen } else { 0.0 };
    let ours_told = unit.from_si(ours);
    let chance = match far {
        false => claim.printed.step / (2.0 * RANDOM * ours_told.abs()),
        true => claim.printed.step / (WIDE * claimed.abs()),
    };
    let chance = chance.min(1.0);
    let agrees = (ours_told - claimed).abs() <= half;
    let unsure = answer.and_then(|answer| uncertainty(claim, answer)).map(|unsure| unsure / unit.scale);
    let within = unsure.is_some_and(|unsure| (ours_told - claimed).abs() <= unsure);
    let verdict = match () {
        () if agrees => Verdict::Agrees,
        () if mass > 0.0 && mass >= TIMES_CHANCE * chance => Verdict::Explained,
        () if within => Verdict::WithinUncertainty,
        () if mass > 0.0 => Verdict::Possible,
        () => Verdict::NotExplained,
    };
    let readings = searched.readings().into_iter().map(|found| searched.told(claim, &found)).collect();
    let nearest = nearest.filter(|_| searched.found.is_empty()).map(|(_, found)| {
        let found = Found { choice: searched.needed(&found), ..found };
        searched.told(claim, &found)
    });
    let outcome = Outcome {
        ours: ours_told,
        uncertainty: unsure,
        chance,
        mass,
        matched: near.share(),
        readings,
        nearest,
        verdict,
    };
    Ok((outcome, searched))
}

/// Printed numbers within [`RANDOM`] of this library's, or of a claim that lies farther off, and which of them some reading makes.
struct Near {
    low: f64,
    /// Numbers in a unit.
    dense: f64,
    hit: Vec<bool>,
}

impl Near {
    /// The most printed numbers that are told apart; of finer ones several are taken together.
    const MOST: f64 = 4096.0;

    fn around(number: f64, step: f64) -> Self {
        let width = 2.0 * RANDOM * number.abs();
        let count = (width / step).clamp(1.0, Self::MOST);
        Self { low: number - 0.5 * width, dense: 1.0 / (width / count).max(step), hit: vec![false; count as usize] }
    }

    fn hit(&mut self, value: f64) {
        let at = (value - self.low) * self.dense;
        if at >= 0.0
            && let Some(hit) = self.hit.get_mut(at as usize)
        {
            *hit = true;
        }
    }

    fn share(&self) -> f64 {
        self.hit.iter().filter(|hit| **hit).count() as f64 / self.hit.len() as f64
    }
}

impl Searched {
    /// The readings, those that make the same number put together.
    fn readings(&self) -> Vec<Found> {
        let mut all: Vec<Found> = Vec::new();
        for found in &self.found {
            match all.iter_mut().find(|known| (known.value - found.value).abs() < SAME * self.step) {
                Some(known) => known.prior += found.prior,
                None => all.push(*found),
            }
        }
        for found in &mut all {
            found.choice = self.needed(found);
        }
        all.sort_by(|a, b| b.prior.total_cmp(&a.prior));
        // What is left of some is the same.
        let mut named: Vec<Found> = Vec::new();
        for found in all {
            match named.iter_mut().find(|known| known.choice.key() == found.choice.key()) {
                Some(known) => known.prior += found.prior,
                None => named.push(found),
            }
        }
        named
    }

    /// Whether another number says the same as one that was found: next to it, and rounded to the claim where that is.
    pub fn same(&self, value: f64, found: f64) -> bool {
        let rounds = |value: f64| (value - self.claimed).abs() <= self.half;
        (value - found).abs() < SAME * self.step && (rounds(value) || !rounds(found))
    }

    /// The habits of a reading without those that make no difference.
    fn needed(&self, found: &Found) -> Choice {
        let mut choice = found.choice;
        for &question in &self.questions {
            let without = choice.with(question, 0);
            if self.otherwise.value(&without).is_some_and(|value| self.same(value, found.value)) {
                choice = without;
            }
        }
        choice
    }

    /// What a program with a habit does to this claim.
    pub fn says(&self, question: Question, habit: &'static Habit) -> &'static str {
        let slip = self.spoken.iter().find(|(known, _)| *known == question && habit.name == "other");
        slip.map_or(habit.says, |(_, says)| says)
    }

    /// What a habit alone changes, as a share of this library's answer.
    pub fn size(&self, question: Question, at: usize) -> Option<f64> {
        let value = self.otherwise.value(&Choice::OURS.with(question, at))?;
        (self.ours != 0.0).then(|| value / self.ours - 1.0)
    }

    /// A reading in the claim's unit.
    fn told(&self, claim: &Claim, found: &Found) -> Reading {
        let departures = found.choice.departures().map(|(question, habit)| Departure {
            question,
            habit,
            says: self.says(question, habit),
            size: found.choice.at(question).and_then(|at| self.size(question, at)),
        });
        Reading { prior: found.prior, value: claim.unit.unit.from_si(found.value), departures: departures.collect() }
    }
}
