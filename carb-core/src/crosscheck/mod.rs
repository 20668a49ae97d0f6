//! Why does that other program say something else? A claim is a number that some program prints, with what the program was
//! told. Here it is held against the library's own answer, and where the two differ, the habits are looked for that
//! reproduce it: which volume, which solubility, which sugar, which unit, what was forgotten.
//!
//! On each [`Question`] programs have habits; a reading is one habit for each question that matters to a claim. All readings
//! are looked at, the likeliest first, until [`search::LEFT`] of their priors is left. What a habit does to a number is
//! worked out by this library's own equations, asked otherwise; the priors are judgement and say so.

mod alcohol;
mod bottles;
pub mod claim;
mod danger;
mod dose;
pub mod finding;
mod gas;
#[cfg(feature = "json")]
pub mod json;
mod line;
mod memo;
mod package;
mod pressure;
pub mod program;
mod purge;
pub mod quantity;
pub mod question;
mod relation;
pub mod search;
mod spoken;
mod text;
mod told;

pub use alcohol::ALCOHOL_BY_DIFFERENCE;
use alloc::collections::BTreeMap;
use alloc::vec::Vec;
pub use claim::{Claim, Printed};
pub use finding::{Departure, Finding, Outcome, Reading, Verdict};
use finding::{Searched, look_into};
pub use program::{Program, Survivor};
pub use quantity::{QUANTITIES, Quantity};
pub use question::{Choice, QUESTIONS, Question};
pub use relation::{BREWERY_POLYNOMIAL, TWO_CONSTANTS};
use search::Thresholds;

/// What is found about claims, and about the programs that they are from.
#[derive(Clone, Debug, Default)]
#[must_use]
pub struct Crosscheck {
    /// The claims, in the order in which they were given.
    pub claims: Vec<Finding>,
    /// The programs with more than one claim, in the order in which their answers come up.
    pub programs: Vec<Program>,
    /// The most readings that are listed for a claim, or survivors for a program.
    pub most_readings: usize,
}

/// How many readings are listed where nothing else is asked.
pub const USUAL_READINGS: usize = 10;

/// Looks into claims.
///
/// ```
/// use carb_core::basis::Request;
/// use carb_core::basis::request::Raw;
/// use carb_core::crosscheck::{Claim, Verdict, crosscheck};
/// // What the program was told, in the units in which it was told.
/// let mut told = Request::new().sugar("dextrose_monohydrate")?;
/// for (name, number) in [("volumes", 2.5), ("packaged_us_gal", 5.0), ("warmest_f", 68.0), ("altitude_m", 0.0)] {
///     told.set(name, Raw::Number(number))?;
/// }
/// let found = crosscheck(vec![Claim::new("priming_sugar", "124.6", "g", told)?]);
/// let outcome = found.claims[0].outcome.as_ref().expect("an answer");
/// assert_eq!(format!("{:.1}", outcome.ours), "138.0");
/// assert_eq!(outcome.verdict, Verdict::Explained);
/// let habits: Vec<_> = outcome.readings[0].departures.iter().map(|d| d.habit.name).collect();
/// assert_eq!(habits, ["ideal", "anhydrous"]);
/// # Ok::<(), carb_core::Error>(())
/// ```
pub fn crosscheck(claims: Vec<Claim>) -> Crosscheck {
    let mut thresholds = Thresholds::default();
    let mut all = Crosscheck { most_readings: USUAL_READINGS, ..Crosscheck::default() };
    // Claims of one program, by its name, as far as this library has an answer.
    let mut programs: Vec<(alloc::string::String, Vec<usize>)> = Vec::new();
    let mut places: BTreeMap<alloc::string::String, usize> = BTreeMap::new();
    for (at, claim) in claims.iter().enumerate() {
        let Some(name) = &claim.program else { continue };
        let place = *places.entry(name.clone()).or_insert_with(|| {
            programs.push((name.clone(), Vec::new()));
            programs.len() - 1
        });
        programs[place].1.push(at);
    }
    let mut findings: Vec<Option<Finding>> = claims.iter().map(|_| None).collect();
    let alone = claims.iter().enumerate().filter(|(_, claim)| claim.program.is_none()).map(|(at, _)| at);
    for at in alone {
        findings[at] = Some(look_into(&claims[at], &mut thresholds).0);
    }
    for (name, places) in programs {
        let mut searched: Vec<Searched> = Vec::new();
        let mut answered = Vec::new();
        for &at in &places {
            let (finding, search) = look_into(&claims[at], &mut thresholds);
            if let Some(search) = search {
                searched.push(search);
                answered.push(at);
            }
            findings[at] = Some(finding);
        }
        if places.len() < 2 {
            continue;
        }
        let borrowed: Vec<&Searched> = searched.iter().collect();
        let found = if answered.is_empty() { Vec::new() } else { program::survivors(&borrowed) };
        let in_units = |values: Vec<f64>| {
            let units = answered.iter().map(|&at| claims[at].unit.unit);
            units.zip(values).map(|(unit, value)| unit.from_si(value)).collect()
        };
        let survivors = found.into_iter().map(|(prior, values, departures)| Survivor {
            prior,
            values: in_units(values),
            departures,
        });
        all.programs.push(Program {
            name,
            answered: answered.len(),
            survivors: survivors.collect(),
            claims: answered.iter().map(|at| at + 1).collect(),
        });
    }
    // As in `merged`, which knows of no claim without an answer.
    all.programs.sort_by_key(|program| program.claims.first().copied());
    all.claims = findings.into_iter().flatten().collect();
    all
}

impl Crosscheck {
    /// Several together, as if their claims had been looked into at once: each with the places, from 0, of its claims among
    /// all. Claims of one program have to be in one of them.
    pub fn merged(parts: Vec<(Vec<usize>, Crosscheck)>) -> Self {
        let mut all = Crosscheck { most_readings: USUAL_READINGS, ..Crosscheck::default() };
        let mut claims: Vec<(usize, Finding)> = Vec::new();
        for (places, part) in parts {
            let place = |at: usize| places.get(at).copied().unwrap_or(at);
            all.most_readings = part.most_readings;
            all.programs.extend(part.programs.into_iter().map(|mut program| {
                program.claims.iter_mut().for_each(|claim| *claim = place(*claim - 1) + 1);
                program
            }));
            claims.extend(part.claims.into_iter().enumerate().map(|(at, finding)| (place(at), finding)));
        }
        claims.sort_by_key(|(place, _)| *place);
        all.programs.sort_by_key(|program| program.claims.first().copied());
        all.claims = claims.into_iter().map(|(_, finding)| finding).collect();
        all
    }

    /// Whether somebody who follows one of the claims may be hurt.
    pub fn danger(&self) -> bool {
        self.claims.iter().any(|finding| finding.danger.is_some())
    }

    /// Whether this library could look into any claim.
    pub fn answered(&self) -> bool {
        self.claims.iter().any(|finding| finding.outcome.is_ok())
    }
}
