//! The rate of uptake from readings: the law of first order, fitted by least squares, with its 95 % interval.
//!
//! For every rate the start that fits best follows by a sum (or is told), so that one number is searched for: its
//! logarithm, first over a grid of the whole range, then by the root of the slope. Nothing depends on a first guess.

use crate::error::Error;
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::ABRAMOWITZ;
use crate::number::root::bracketed;
use crate::number::{exp, ln, sqrt};
use crate::quantity::{Carbonation, Key, Name, Rate, Time};

/// Student's t for 95 %, two-sided, for 1 to 10 degrees of freedom.
const FEW: [f64; 10] = [
    12.706_204_736,
    4.302_652_730,
    3.182_446_305,
    2.776_445_105,
    2.570_581_836,
    2.446_911_851,
    2.364_624_252,
    2.306_004_135,
    2.262_157_163,
    2.228_138_852,
];

/// Student's t for 95 %, two-sided, beyond 10 degrees of freedom.
#[inline(always)]
pub fn many(freedom: f64) -> f64 {
    let x = 1.0 / freedom;
    1.959_963_984_540_054 + x * (2.372_271_230_3 + x * (2.822_498_615_7 + x * (2.555_849_679_5 + x * 1.589_534_053_4)))
}

/// Student's t for 95 %, two-sided, for whole degrees of freedom from 1.
pub fn student_t(freedom: usize) -> f64 {
    FEW.get(freedom.saturating_sub(1)).copied().unwrap_or_else(|| many(freedom as f64))
}

/// The catalogue's entry for [`many`].
pub static STUDENT_T: Equation = Equation {
    id: "student_t",
    title: "Student's t for 95 %, two-sided",
    formula: "t = 1.959963984540054 + 2.3722712303/n + 2.8224986157/n^2 + 2.5558496795/n^3 + 1.5895340534/n^4",
    result: symbol("t", Measure::Plain(""), "how many standard deviations the interval reaches either way"),
    inputs: &[limited("n", Measure::Plain(""), "degrees of freedom", 11.0, 400.0)],
    uncertainty_percent: Some(0.001),
    uncertainty: "the expansion ends; 2e-6 at 11 degrees of freedom, less beyond; up to 10 a table is used",
    sources: &[&ABRAMOWITZ],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| many(x[0]),
};

/// A reading of the CO2 in a drink.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// When.
    pub time: Time,
    /// How much.
    pub carbonation: Carbonation,
}

/// A rate from readings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fit {
    /// The rate that fits best.
    pub kla: Rate,
    /// The lower end of its 95 % interval.
    pub least: Rate,
    /// The upper end.
    pub most: Rate,
    /// CO2 at time 0: as told, or as fitted.
    pub start: Carbonation,
    /// How many readings there are.
    pub readings: usize,
    /// By how much they scatter about the law: their standard deviation.
    pub scatter: Carbonation,
}

/// Why no rate follows from readings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NoFit {
    /// Fewer than two readings more than there are unknowns.
    TooFew,
    /// All are of one time.
    OneTime,
    /// This one lies beyond what the drink comes to, by more than a quarter of the gap.
    Beyond(Reading),
    /// What changes is not told from the scatter, or it goes the wrong way.
    NoUptake,
    /// All of it happened before, or between, the first readings.
    TooFast,
    /// A start that no drink has.
    NoStart,
    /// The search did not end; please report it.
    NotConverged,
}

impl NoFit {
    /// The error that a request gets.
    pub fn error(self, list: &'static str, start: f64, end: f64) -> Error {
        let advice = match self {
            NoFit::TooFew => {
                "a rate takes at least three readings with the start told, four without: it needs two more than there are unknowns"
            }
            NoFit::OneTime => "all readings are of one time: read it again some hours later",
            NoFit::NoUptake => {
                "no uptake stands out of the scatter of these readings: take more, further apart, and check pressure and temperature"
            }
            NoFit::TooFast => "all of the uptake lies before the second time of reading: read it sooner",
            NoFit::NoStart => {
                "at time 0 the law fits no drink: count the time from the first reading, or tell the start"
            }
            NoFit::Beyond(reading) => {
                let parameter = Name::first(Key::Carbonation);
                return Error::NeverReached { parameter, value: reading.carbonation.si(), start, end };
            }
            NoFit::NotConverged => return Error::NotConverged { parameter: Name::first(Key::Kla) },
        };
        Error::WrongList { list, advice }
    }
}

/// How far beyond its equilibrium a reading may lie, of the whole gap: four times a scatter of a tenth of a volume, from
/// flat beer to 2.5 volumes. More is another pressure or another temperature.
const BEYOND: f64 = 0.25;
/// Steps of the grid, of the logarithm.
const GRID: f64 = 0.1;

/// Sums over the readings at one rate; the gap at the first of them is `gap`.
struct Sums {
    gap: f64,
    squares: f64,
    slope: f64,
    /// Of the squared change of a reading with the logarithm of the rate, with what the start can make up for left out.
    information: f64,
}

#[derive(Clone, Copy)]
struct Problem<I> {
    readings: I,
    end: f64,
    /// When the clock starts, and the gap then, where the start is told.
    origin: f64,
    told: Option<f64>,
}

impl<I: Iterator<Item = Reading> + Clone> Problem<I> {
    fn sums(&self, k: f64) -> Sums {
        let each = || {
            self.readings.clone().map(|reading| {
                let since = reading.time.si() - self.origin;
                (since, exp(-(k * since)), self.end - reading.carbonation.si())
            })
        };
        let gap = self.told.unwrap_or_else(|| {
            let (up, down) = each().fold((0.0, 0.0), |(up, down), (_, w, y)| (up + y * w, down + w * w));
            up / down
        });
        let (mut squares, mut slope) = (0.0, 0.0);
        let (mut jj, mut jw, mut ww) = (0.0, 0.0, 0.0);
        for (since, w, y) in each() {
            let (off, turned) = (y - gap * w, k * since * gap * w);
            squares += off * off;
            slope += off * turned;
            jj += turned * turned;
            jw += turned * w;
            ww += w * w;
        }
        let information = if self.told.is_some() { jj } else { jj - jw * jw / ww };
        Sums { gap, squares, slope, information }
    }
}

/// The rate of first order from readings under one pressure, at which the drink comes to `end`.
///
/// The interval tells what the scatter of the readings leaves open. Of a wrong pressure or temperature it knows nothing.
///
/// # Errors
/// Where the readings do not tell it: see [`NoFit`].
pub fn fit(
    readings: impl Iterator<Item = Reading> + Clone,
    start: Option<Carbonation>,
    end: Carbonation,
) -> Result<Fit, NoFit> {
    let count = readings.clone().count();
    let unknowns = if start.is_some() { 1 } else { 2 };
    if count < unknowns + 2 {
        return Err(NoFit::TooFew);
    }
    let least = |of: fn(Reading) -> f64| readings.clone().map(of).fold(f64::INFINITY, f64::min);
    let most = |of: fn(Reading) -> f64| readings.clone().map(of).fold(f64::NEG_INFINITY, f64::max);
    let (first, last) = (least(|r| r.time.si()), most(|r| r.time.si()));
    if first == last {
        return Err(NoFit::OneTime);
    }
    let end = end.si();
    let from = start.map_or_else(|| at_first(readings.clone(), first), Carbonation::si);
    let beyond = |r: &Reading| (r.carbonation.si() - end) * (end - from).signum() > BEYOND * (end - from).abs();
    if let Some(reading) = readings.clone().find(beyond) {
        return Err(NoFit::Beyond(reading));
    }

    let told = start.map(|start| end - start.si());
    let problem = Problem { readings, end, origin: if told.is_some() { 0.0 } else { first }, told };
    let (low, high) = Key::Kla.limits().unwrap_or_default();
    let (low, high) = (ln(low), ln(high));
    let steps = ((high - low) / GRID) as u32;
    let at = |step: u32| low + (high - low) * f64::from(step) / f64::from(steps);
    let (mut best, mut smallest) = (0, f64::INFINITY);
    for step in 0..=steps {
        let squares = problem.sums(exp(at(step))).squares;
        if squares < smallest {
            (best, smallest) = (step, squares);
        }
    }
    if best == 0 {
        return Err(NoFit::NoUptake);
    }
    if best == steps {
        return Err(NoFit::TooFast);
    }
    let found = bracketed(at(best - 1), at(best + 1), |x| problem.sums(exp(x)).slope).ok_or(NoFit::NotConverged)?;
    let kla = exp(found);
    let Sums { gap, squares, information, .. } = problem.sums(kla);
    let freedom = count - unknowns;
    let scatter = if squares > 0.0 { sqrt(squares / freedom as f64) } else { 0.0 };
    if information <= 0.0 || !information.is_finite() {
        return Err(NoFit::NoUptake);
    }
    // Half the interval of the logarithm; where it is 1, the interval of the rate itself begins at nothing.
    let half = student_t(freedom) * scatter / sqrt(information);
    if half >= 1.0 || gap == 0.0 {
        return Err(NoFit::NoUptake);
    }
    let at_zero = start.map_or_else(|| end - gap * exp(kla * first), Carbonation::si);
    let (lowest, highest) = Key::Start.limits().unwrap_or_default();
    // Scatter alone can put the start of a flat drink a little below nothing.
    if !(lowest - 3.0 * scatter..=highest).contains(&at_zero) {
        return Err(NoFit::NoStart);
    }
    Ok(Fit {
        kla: Rate::from_si(kla),
        least: Rate::from_si(exp(found - half)),
        most: Rate::from_si(exp(found + half)),
        start: Carbonation::from_si(at_zero),
        readings: count,
        scatter: Carbonation::from_si(scatter),
    })
}

/// The CO2 of the first reading.
fn at_first(readings: impl Iterator<Item = Reading>, first: f64) -> f64 {
    readings.filter(|r| r.time.si() == first).map(|r| r.carbonation.si()).next().unwrap_or_default()
}
