//! Several claims of one program: the habits that reproduce all of them.
//!
//! Each claim rules out habits of the questions that it depends on, and no others. Claims are joined one after the other on
//! the questions that they share; what makes the same numbers so far, and agrees on everything that a later claim asks, is
//! one.

use super::finding::{Departure, SAME, Searched};
use super::question::{COUNT, Choice, Question};
use super::search::{Found, LEFT};
use alloc::collections::BTreeMap;
use alloc::vec;
use alloc::vec::Vec;

/// The most joint readings that are carried on; beyond them the least likely are dropped.
const MOST: usize = 40_000;

/// Habits that reproduce all claims of a program.
#[derive(Clone, Debug)]
pub struct Survivor {
    /// How common they are together, with all that make the same numbers.
    pub prior: f64,
    /// What they make of each claim, in its unit.
    pub values: Vec<f64>,
    /// The habits that are not this library's; the size of each is that in the claim that it changes most.
    pub departures: Vec<Departure>,
}

/// What is found about the claims of one program.
#[derive(Clone, Debug)]
pub struct Program {
    /// Its name, as it was told.
    pub name: alloc::string::String,
    /// Its claims, by their place among all claims, from 1.
    pub claims: Vec<usize>,
    /// How many of them this library could look into.
    pub answered: usize,
    /// The habits that reproduce them, the likeliest first.
    pub survivors: Vec<Survivor>,
}

/// Habits that reproduce the claims so far.
#[derive(Clone)]
struct Joint {
    choice: Choice,
    prior: f64,
    /// What they make of each claim, SI, in the order of the claims.
    values: Vec<f64>,
}

/// The habits that reproduce all these claims, the likeliest first; values SI.
pub(super) fn survivors(claims: &[&Searched]) -> Vec<(f64, Vec<f64>, Vec<Departure>)> {
    let order = order(claims);
    let mut joints = vec![Joint { choice: Choice::OURS, prior: 1.0, values: vec![f64::NAN; claims.len()] }];
    let mut known: Vec<Question> = Vec::new();
    for (step, &at) in order.iter().enumerate() {
        let claim = claims[at];
        let shared: Vec<Question> = claim.questions.iter().copied().filter(|q| known.contains(q)).collect();
        joints = join(&joints, claim, at, &shared);
        known.extend(claim.questions.iter().copied().filter(|q| !shared.contains(q)));
        let later: Vec<Question> = known
            .iter()
            .copied()
            .filter(|q| order[step + 1..].iter().any(|&l| claims[l].questions.contains(q)))
            .collect();
        joints = merged(joints, claims, &later);
    }
    // As of readings, the least likely are left out.
    let all: f64 = joints.iter().map(|joint| joint.prior).sum();
    let mut seen = 0.0;
    let kept = joints.into_iter().take_while(|joint| {
        let before = seen;
        seen += joint.prior;
        before < (1.0 - LEFT) * all
    });
    kept.map(|joint| told(joint, claims)).collect()
}

/// The order in which claims are joined: the one with fewest readings first, then always one that shares most questions.
fn order(claims: &[&Searched]) -> Vec<usize> {
    let mut left: Vec<usize> = (0..claims.len()).collect();
    let mut order = Vec::new();
    let mut known: Vec<Question> = Vec::new();
    while !left.is_empty() {
        let rank = |&at: &usize| {
            let fresh = claims[at].questions.iter().filter(|q| !known.contains(q)).count();
            (fresh, claims[at].found.len())
        };
        let best = if known.is_empty() {
            left.iter().copied().min_by_key(|&at| claims[at].found.len())
        } else {
            left.iter().copied().min_by_key(|at| rank(at))
        };
        let Some(best) = best else { break };
        left.retain(|&at| at != best);
        known.extend(claims[best].questions.iter().copied());
        order.push(best);
    }
    order
}

fn join(joints: &[Joint], claim: &Searched, at: usize, shared: &[Question]) -> Vec<Joint> {
    let mut by_shared: BTreeMap<[u8; COUNT], Vec<&Found>> = BTreeMap::new();
    for found in &claim.found {
        by_shared.entry(found.choice.only(shared).key()).or_default().push(found);
    }
    let mut all = Vec::new();
    for joint in joints {
        let Some(matching) = by_shared.get(&joint.choice.only(shared).key()) else { continue };
        for found in matching {
            let both: f64 =
                shared.iter().filter_map(|&q| found.choice.at(q).map(|h| q.matter().habits[h].prior)).product();
            let mut values = joint.values.clone();
            values[at] = found.value;
            let choice = joint.choice.joined(&found.choice);
            all.push(Joint { choice, prior: joint.prior * found.prior / both, values });
        }
    }
    all
}

/// Puts together what makes the same numbers and agrees on the questions that come later.
fn merged(mut joints: Vec<Joint>, claims: &[&Searched], later: &[Question]) -> Vec<Joint> {
    joints.sort_by(|a, b| b.prior.total_cmp(&a.prior).then_with(|| a.choice.key().cmp(&b.choice.key())));
    joints.truncate(MOST);
    let same = |a: &Joint, b: &Joint| {
        let pairs = a.values.iter().zip(&b.values).zip(claims);
        pairs.into_iter().all(|((a, b), claim)| (a.is_nan() && b.is_nan()) || (a - b).abs() < SAME * claim.step)
    };
    let mut by_later: BTreeMap<[u8; COUNT], Vec<Joint>> = BTreeMap::new();
    for joint in joints {
        let group = by_later.entry(joint.choice.only(later).key()).or_default();
        match group.iter_mut().find(|known| same(known, &joint)) {
            Some(known) => known.prior += joint.prior,
            None => group.push(joint),
        }
    }
    let mut all: Vec<Joint> = by_later.into_values().flatten().collect();
    all.sort_by(|a, b| b.prior.total_cmp(&a.prior).then_with(|| a.choice.key().cmp(&b.choice.key())));
    all
}

/// A survivor, without the habits that make no difference to any claim.
fn told(joint: Joint, claims: &[&Searched]) -> (f64, Vec<f64>, Vec<Departure>) {
    let mut choice = joint.choice;
    for &question in Question::ALL.iter().filter(|&&q| joint.choice.at(q).is_some_and(|at| at > 0)) {
        let without = choice.with(question, 0);
        let same = claims
            .iter()
            .zip(&joint.values)
            .filter(|(claim, _)| claim.questions.contains(&question))
            .all(|(claim, value)| claim.otherwise.value(&without).is_some_and(|v| claim.same(v, *value)));
        if same {
            choice = without;
        }
    }
    let departures = choice.departures().map(|(question, habit)| {
        let at = choice.at(question).unwrap_or_default();
        let sizes = claims.iter().filter(|claim| claim.questions.contains(&question));
        let size = sizes.filter_map(|claim| claim.size(question, at)).max_by(|a, b| a.abs().total_cmp(&b.abs()));
        // Of claims that were told in several units the slip went several ways.
        let mut said =
            claims.iter().filter(|claim| claim.questions.contains(&question)).map(|claim| claim.says(question, habit));
        let first = said.next().unwrap_or(habit.says);
        let says = if said.all(|says| says == first) { first } else { habit.says };
        Departure { question, habit, says, size }
    });
    let departures = departures.collect();
    (joint.prior, joint.values, departures)
}
