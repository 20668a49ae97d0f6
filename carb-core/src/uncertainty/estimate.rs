//! From the doubts about the inputs to the interval of an answer.

use super::dice::Dice;
use super::{Doubt, Doubts};
use crate::balance::open::{RESIDUAL_EQUILIBRIUM, RESIDUAL_TABLE};
use crate::basis::request::Value;
use crate::basis::{Basis, BasisName, Function, Input, Request, ResidualModel};
use crate::error::Error;
use crate::number::sqrt;
use crate::property::fermentable::THEORETICAL_YIELD;
use crate::quantity::unit::FACTOR;
use crate::quantity::{Key, Name};
use alloc::vec;
use alloc::vec::Vec;

/// What makes an answer unsure: an input, or a factor that stands for an equation.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Source {
    /// The input, under the name and in the unit of the request.
    pub name: Name,
    /// Its value, in that unit.
    pub value: f64,
    /// How far it may lie from it.
    pub doubt: Doubt,
    /// Whether it stands for an equation's own uncertainty.
    pub equation: bool,
}

/// A part of the variance of an answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Share {
    /// What makes it.
    pub source: Source,
    /// Change of the answer (SI) for one unit of the source.
    pub sensitivity: f64,
    /// Part of the variance, from 0 to 1.
    pub share: f64,
}

/// How an interval was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Method {
    /// From the sensitivities: twice the standard uncertainty either way.
    FirstOrder,
    /// The central 95 % of draws, because even distributions make more than a third of the variance.
    Draws,
}

impl Method {
    /// The method as a name.
    pub const fn name(self) -> &'static str {
        match self {
            Method::FirstOrder => "first_order",
            Method::Draws => "draws",
        }
    }
}

/// An answer with how sure it is.
#[derive(Clone, Debug)]
pub struct Estimate {
    /// The answer, SI.
    pub value: f64,
    /// Standard uncertainty by first order, SI.
    pub standard: f64,
    /// The interval that holds the truth in about 95 of 100 cases, SI.
    pub interval: (f64, f64),
    /// How it was found.
    pub method: Method,
    /// Parts of the variance, the largest first.
    pub budget: Vec<Share>,
}

/// A job with several answers, SI.
pub type Job<'a> = &'a dyn Fn(&Request) -> Result<Vec<f64>, Error>;

/// Share of the variance that even distributions may make before the interval is drawn.
const MOST_BY_RANGES: f64 = 1.0 / 3.0;
/// How many draws an interval takes.
pub const DRAWS: usize = 5000;
/// Where the draws start.
pub const SEED: u64 = 1857;

/// The sources of uncertainty of a job: the doubts about its inputs, and the equations behind the factors that it takes.
/// A doubt about such a factor replaces that of the equation.
///
/// # Errors
/// Where a doubt is about something that was not given, or the request contradicts itself.
pub fn sources(request: &Request, doubts: &Doubts, inputs: &[Input], default: BasisName) -> Result<Vec<Source>, Error> {
    let mut all = Vec::new();
    for input in inputs {
        if let Some((name, doubt)) = doubts.of(request, input.key)
            && doubt.half_width() > 0.0
            && let Some(Value::Number(value, _)) = request.get(input.key)
        {
            all.push(Source { name, value, doubt, equation: false });
        }
    }
    let context = request.context(default)?;
    let solubility = context.model_uncertainty().unwrap_or(MODEL_OF_ANOTHER_DRINK);
    let of_equations = [
        (Key::SolubilityFactor, solubility),
        (Key::ResidualFactor, residual_uncertainty(&context.basis, solubility)),
        (Key::YieldFactor, THEORETICAL_YIELD.uncertainty_percent.unwrap_or_default()),
    ];
    for (key, percent) in of_equations {
        let taken = inputs.iter().any(|input| input.key == key);
        if taken && doubts.of(request, key).is_none() {
            let value = request.number(key).unwrap_or(1.0);
            let name = Name { key, unit: Some(&FACTOR) };
            all.push(Source { name, value, doubt: Doubt::Normal(value * percent / 100.0), equation: true });
        }
    }
    Ok(all)
}

/// Uncertainty, percent, of a solubility model used for a drink that it was not made for; judgement.
const MODEL_OF_ANOTHER_DRINK: f64 = 15.0;

/// What the residual CO2 is unsure of beyond its solubility, percent: where it follows from that, the solubility is a
/// source by itself and is not counted twice.
fn residual_uncertainty(basis: &Basis, solubility: f64) -> f64 {
    match basis.residual {
        ResidualModel::Table => RESIDUAL_TABLE.uncertainty_percent.unwrap_or_default(),
        ResidualModel::Equilibrium => {
            let whole = RESIDUAL_EQUILIBRIUM.uncertainty_percent.unwrap_or_default();
            let rest = whole * whole - solubility * solubility;
            if rest > 0.0 { sqrt(rest) } else { 0.0 }
        }
    }
}

/// The job with one source shifted.
fn shifted(job: Job<'_>, request: &Request, source: &Source, by: f64) -> Result<Vec<f64>, Error> {
    job(&request.with_number(source.name, source.value + by))
}

/// Step of a difference, as a share of the standard uncertainty; and the least step, as a share of the value.
const STEP: f64 = 1e-3;
const LEAST_STEP: f64 = 1e-7;

/// Derivatives of the answers by a source, per unit of it: by a central difference, or from one side where the other has no
/// answer.
fn derivatives(job: Job<'_>, request: &Request, source: &Source, at: &[f64]) -> Result<Vec<f64>, Error> {
    let h = (STEP * source.doubt.standard()).max(LEAST_STEP * source.value.abs());
    let (more, less) = (shifted(job, request, source, h), shifted(job, request, source, -h));
    let slope = |high: &[f64], low: &[f64], width: f64| high.iter().zip(low).map(|(h, l)| (h - l) / width).collect();
    match (more, less) {
        (Ok(more), Ok(less)) => Ok(slope(&more, &less, 2.0 * h)),
        (Ok(more), Err(_)) => Ok(slope(&more, at, h)),
        (Err(_), Ok(less)) => Ok(slope(at, &less, h)),
        (Err(error), Err(_)) => Err(error),
    }
}

/// What each answer of a job is, how sure, and why.
///
/// # Errors
/// Where the job has no answer, or none near the values that were given.
pub fn estimate(job: Job<'_>, request: &Request, sources: &[Source]) -> Result<Vec<Estimate>, Error> {
    let mut all = first_order(job, request, sources)?;
    let by_ranges = |estimate: &Estimate| -> f64 {
        let even = estimate.budget.iter().filter(|share| matches!(share.source.doubt, Doubt::Range(_)));
        even.map(|share| share.share).sum()
    };
    if all.iter().any(|estimate| by_ranges(estimate) > MOST_BY_RANGES) {
        let drawn = draws(job, request, sources, DRAWS, SEED)?;
        for (estimate, drawn) in all.iter_mut().zip(drawn) {
            if by_ranges(estimate) > MOST_BY_RANGES {
                estimate.interval = drawn.central(0.95);
                estimate.method = Method::Draws;
            }
        }
    }
    Ok(all)
}

/// The same by first order alone.
///
/// # Errors
/// As [`estimate`].
pub fn first_order(job: Job<'_>, request: &Request, sources: &[Source]) -> Result<Vec<Estimate>, Error> {
    let at = job(request)?;
    let mut slopes = Vec::with_capacity(sources.len());
    for source in sources {
        slopes.push(derivatives(job, request, source, &at)?);
    }
    let estimates = at.iter().enumerate().map(|(which, &value)| {
        let variance = |source: &Source, slope: f64| {
            let part = slope * source.doubt.standard();
            part * part
        };
        let parts = || sources.iter().zip(slopes.iter().map(|slopes| slopes[which]));
        let total: f64 = parts().map(|(source, slope)| variance(source, slope)).sum();
        let mut budget: Vec<Share> = parts()
            .map(|(source, slope)| {
                let part = variance(source, slope);
                let share = if total > 0.0 { part / total } else { 0.0 };
                Share { source: *source, sensitivity: slope, share }
            })
            .collect();
        // An equation that was not used says nothing.
        budget.retain(|part| part.sensitivity != 0.0 || !part.source.equation);
        budget.sort_by(|a, b| b.share.total_cmp(&a.share));
        let standard = if total > 0.0 { sqrt(total) } else { 0.0 };
        let interval = (value - 2.0 * standard, value + 2.0 * standard);
        Estimate { value, standard, interval, method: Method::FirstOrder, budget }
    });
    Ok(estimates.collect())
}

/// Answers of a job for inputs that were drawn.
#[derive(Clone, Debug)]
pub struct Drawn {
    /// The answers, sorted, SI.
    pub values: Vec<f64>,
}

impl Drawn {
    /// The mean.
    pub fn mean(&self) -> f64 {
        self.values.iter().sum::<f64>() / self.values.len() as f64
    }

    /// The standard deviation.
    pub fn standard(&self) -> f64 {
        let mean = self.mean();
        let square: f64 = self.values.iter().map(|value| (value - mean) * (value - mean)).sum();
        let variance = square / (self.values.len() as f64 - 1.0);
        if variance > 0.0 { sqrt(variance) } else { 0.0 }
    }

    /// The interval in the middle that holds this share of the answers.
    pub fn central(&self, share: f64) -> (f64, f64) {
        let last = self.values.len() - 1;
        let tail = ((1.0 - share) / 2.0 * last as f64) as usize;
        (self.values[tail], self.values[last - tail])
    }
}

/// Asks a job `count` times with inputs that are drawn, the same for the same seed. A draw without an answer (alcohol below
/// nothing, say) is drawn again.
///
/// # Errors
/// Where most draws have no answer.
pub fn draws(
    job: Job<'_>,
    request: &Request,
    sources: &[Source],
    count: usize,
    seed: u64,
) -> Result<Vec<Drawn>, Error> {
    let mut dice = Dice::new(seed);
    let count = count.max(2);
    let mut all: Vec<Vec<f64>> = vec![Vec::with_capacity(count); job(request)?.len()];
    let (mut done, mut failed) = (0, 0);
    while done < count {
        let mut drawn = *request;
        for source in sources {
            let by = match source.doubt {
                Doubt::Normal(half) => half / 2.0 * dice.normal(),
                Doubt::Range(half) => half * dice.even(),
            };
            drawn = drawn.with_number(source.name, source.value + by);
        }
        match job(&drawn) {
            Ok(answers) => {
                for (list, answer) in all.iter_mut().zip(answers) {
                    list.push(answer);
                }
                done += 1;
            }
            Err(error) => {
                failed += 1;
                if failed > count {
                    return Err(error);
                }
            }
        }
    }
    Ok(all
        .into_iter()
        .map(|mut values| {
            values.sort_by(f64::total_cmp);
            Drawn { values }
        })
        .collect())
}

/// A function of the table as a job.
pub fn job_of(function: &'static Function) -> impl Fn(&Request) -> Result<Vec<f64>, Error> {
    move |request| {
        let answer = function.answer(request, &mut crate::evidence::NoSteps)?;
        Ok(answer.value.as_slice().to_vec())
    }
}
