//! How long carbonating takes under a pressure, and how far it is after a time; upward, and downward where a keg is vented.

use super::uptake::{How, Uptake};
use crate::balance::{equilibrium, pressure};
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::SLACK;
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::carbonating::{
    self, GAP_LEFT, GAP_TIME, PRESSURE, SUPPLY_LEFT, SUPPLY_TAKEN, SUPPLY_TIME, SUPPLY_TURN, UPTAKE,
};
use crate::property::solubility::{Here, Solubility};
use crate::quantity::{Carbonation, GaugePressure, Key, Name, Temperature, Time};

/// The status of a target: on the way from start to end, and not at the very end, where it takes for ever.
#[inline(always)]
pub(super) fn reached(start: f64, target: f64, end: f64) -> i32 {
    let left = carbonating::gap_left(start, target, end);
    // What is there already takes no time, even where nothing changes.
    let there = (target == start) | ((left > SLACK) & (left <= 1.0));
    if there { 0 } else { code::NEVER_REACHED }
}

/// Share of the gap that is left at the target; 1 where the drink holds the target already.
#[inline(always)]
pub(super) fn left(start: f64, target: f64, end: f64, steps: &mut impl Steps) -> f64 {
    if target == start {
        return 1.0;
    }
    steps.step(&GAP_LEFT, &[start, target, end], carbonating::gap_left(start, target, end))
}

/// Whichever status below 0 comes first, else the range bits of all.
#[inline(always)]
pub(super) fn join(first: i32, second: i32) -> i32 {
    let both = if second < 0 { second } else { first | second };
    if first < 0 { first } else { both }
}

#[derive(Clone, Copy)]
struct Until<S> {
    model: S,
    how: How,
}

impl<S: Solubility> Kernel<11, 3> for Until<S> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 11] = [
        Key::Start,
        Key::Carbonation,
        Key::Gauge,
        Key::Ambient,
        Key::Temperature,
        Key::Abv,
        Key::Extract,
        Key::Packaged,
        Key::KegDiameter,
        Key::Kla,
        Key::Supply,
    ];
    #[inline(always)]
    fn eval(&self, x: [f64; 11], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let [start, target, gauge, ambient, t, abv, extract, volume, diameter, kla, supply] = x;
        let p = pressure::absolute(gauge, ambient, steps);
        let (end, status) = equilibrium::dissolved(self.model, p, t, abv, extract, steps);
        let (rates, bits) = self.how.rates([t, volume, diameter, kla], steps);
        let bits = bits | steps.within(&PRESSURE, gauge);
        let limited = self.how.limited;
        let times = rates.map(|k| {
            let mut turn = start;
            if limited {
                turn = carbonating::supply_turn(start, target, end, k, supply, volume);
                steps.record(&SUPPLY_TURN, &[start, target, end, k, supply, volume], turn);
            }
            let left = left(turn, target, end, steps);
            let time = steps.step(&GAP_TIME, &[left, k], carbonating::gap_time(left, k));
            if !limited {
                return time;
            }
            let all = carbonating::supply_time(start, turn, supply, volume, time);
            steps.step(&SUPPLY_TIME, &[start, turn, supply, volume, time], all)
        });
        (times, join(status, join(reached(start, target, end), bits)))
    }
    fn explain(&self, status: i32, x: [f64; 11]) -> Error {
        let [start, target, gauge, ambient, t, abv, extract, ..] = x;
        if status == code::NEVER_REACHED {
            let (here, _) = self.model.here(t, abv, extract, &mut NoSteps);
            let end = here.dissolved_under(gauge + ambient);
            return Error::NeverReached { parameter: Name::first(Key::Carbonation), value: target, start, end };
        }
        equilibrium::none(self.model, status, Key::Gauge, gauge, ambient, [t, abv, extract])
    }
}

/// Hands the kernel of the time to a visitor.
pub(crate) fn visit_time<V: Visit<11, 3>>(how: How, context: &Context, visitor: V) -> V::Output {
    let model = context.solubility();
    visitor.visit(Until { model, how })
}

#[derive(Clone, Copy)]
struct After<S> {
    model: S,
    how: How,
}

impl<S: Solubility> Kernel<13, 6> for After<S> {
    const SCALAR: bool = true;
    /// Where each end of the rate has its own start; from one start, all three are the same.
    const COLUMNS: [Key; 13] = [
        Key::Start,
        Key::Start,
        Key::Start,
        Key::Time,
        Key::Gauge,
        Key::Ambient,
        Key::Temperature,
        Key::Abv,
        Key::Extract,
        Key::Packaged,
        Key::KegDiameter,
        Key::Kla,
        Key::Supply,
    ];
    #[inline(always)]
    fn eval(&self, x: [f64; 13], steps: &mut impl Steps) -> ([f64; 6], i32) {
        let [expected, slow, fast, time, gauge, ambient, t, abv, extract, volume, diameter, kla, supply] = x;
        let p = pressure::absolute(gauge, ambient, steps);
        let (end, status) = equilibrium::dissolved(self.model, p, t, abv, extract, steps);
        let (rates, bits) = self.how.rates([t, volume, diameter, kla], steps);
        let bits = bits | steps.within(&PRESSURE, gauge);
        let limited = self.how.limited;
        let mut after = |start: f64, k: f64| {
            let (mut from, mut left) = (start, time);
            if limited {
                from = carbonating::supply_taken(start, end, k, supply, volume, time);
                steps.record(&SUPPLY_TAKEN, &[start, end, k, supply, volume, time], from);
                left = carbonating::supply_left(start, from, supply, volume, time);
                steps.record(&SUPPLY_LEFT, &[start, from, supply, volume, time], left);
            }
            steps.step(&UPTAKE, &[from, end, k, left], carbonating::uptake(from, end, k, left))
        };
        let expected = after(expected, rates[0]);
        let [slow, fast] = [after(slow, rates[1]), after(fast, rates[2])];
        // Where CO2 leaves the drink, the fast end is the least; after up and down, any of the three may be.
        let [low, high] = if slow < fast { [slow, fast] } else { [fast, slow] };
        let (least, most) =
            (if expected < low { expected } else { low }, if expected > high { expected } else { high });
        ([expected, least, most, end, slow, fast], join(status, bits))
    }
    fn explain(&self, status: i32, x: [f64; 13]) -> Error {
        let [_, _, _, _, gauge, ambient, t, abv, extract, ..] = x;
        equilibrium::none(self.model, status, Key::Gauge, gauge, ambient, [t, abv, extract])
    }
}

/// Hands the kernel of the progress to a visitor.
pub(crate) fn visit_progress<V: Visit<13, 6>>(how: How, context: &Context, visitor: V) -> V::Output {
    let model = context.solubility();
    visitor.visit(After { model, how })
}

/// The kernel's columns, SI.
pub(crate) fn time_columns(
    start: Carbonation,
    target: Carbonation,
    under: &Under,
    uptake: &Uptake,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<[f64; 11], Error> {
    let [volume, diameter, kla, supply] = uptake.columns();
    let drink = context.beverage;
    let (start, target, gauge) = (start.si(), target.si(), under.gauge.si());
    let (ambient, t) = (context.ambient(steps)?, under.temperature.si());
    Ok([start, target, gauge, ambient, t, drink.abv(), drink.extract(), volume, diameter, kla, supply])
}

/// The kernel's columns, SI, from the three starts as expected, slow and fast.
pub(crate) fn progress_columns(
    [expected, slow, fast]: [Carbonation; 3],
    time: Time,
    under: &Under,
    uptake: &Uptake,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<[f64; 13], Error> {
    let [start, _, gauge, ambient, t, abv, extract, volume, diameter, kla, supply] =
        time_columns(expected, expected, under, uptake, context, steps)?;
    let (slow, fast, time) = (slow.si(), fast.si(), time.si());
    Ok([start, slow, fast, time, gauge, ambient, t, abv, extract, volume, diameter, kla, supply])
}

/// The gas over a drink.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Under {
    /// Its pressure above the air outside, of CO2 alone.
    pub gauge: GaugePressure,
    /// How warm the drink is.
    pub temperature: Temperature,
}

/// When something is reached.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct When {
    /// As expected.
    pub expected: Time,
    /// At the fast end of the rate.
    pub soonest: Time,
    /// At the slow end.
    pub latest: Time,
}

/// How long it takes under a constant pressure until a drink that starts at one carbonation holds another.
///
/// ```
/// use carb_core::basis::{Ambient, Beverage, Context, Kind};
/// use carb_core::evidence::NoSteps;
/// use carb_core::kegging::schedule::{Under, carbonation_time};
/// use carb_core::kegging::uptake::Uptake;
/// use carb_core::quantity::{Carbonation, GaugePressure, Temperature};
/// let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
/// let burst = Under { gauge: GaugePressure::from_psi(30.0), temperature: Temperature::from_f(38.0) };
/// let [flat, target] = [0.85, 2.5].map(Carbonation::from_volumes);
/// let time = carbonation_time(flat, target, &burst, &Uptake::default(), &here, &mut NoSteps)?.value;
/// assert_eq!(format!("{:.0} h", time.expected.h()), "43 h");
/// assert!(time.soonest < time.expected && time.expected < time.latest);
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, or the target does not lie on the way from
/// the start to what the drink holds at equilibrium.
pub fn carbonation_time(
    start: Carbonation,
    target: Carbonation,
    under: &Under,
    uptake: &Uptake,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<When>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let x = time_columns(start, target, under, uptake, context, watch)?;
    let times = visit_time(uptake.how(), context, Once { x, steps: watch })?;
    context.note_model(&mut notes.cautions);
    let [expected, latest, soonest] = times.map(Time::from_si);
    Ok(Answer { value: When { expected, soonest, latest }, context: *context, notes })
}

/// Where a drink is on its way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OnTheWay {
    /// As expected.
    pub expected: Carbonation,
    /// The least, by the slow and the fast end of the rate.
    pub least: Carbonation,
    /// The most, by either.
    pub most: Carbonation,
    /// What the drink would hold after a very long time.
    pub end: Carbonation,
    /// As expected, at the slow and at the fast end of the rate: where the next step starts from.
    pub tracks: [Carbonation; 3],
}

/// The CO2 in a drink after a time under a constant pressure.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, or there is no equilibrium at the pressure.
pub fn carbonation_progress(
    start: Carbonation,
    time: Time,
    under: &Under,
    uptake: &Uptake,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<OnTheWay>, Error> {
    carry_on([start; 3], time, under, uptake, context, steps)
}

/// The same from where another step has left the drink: a schedule is one step after another.
///
/// # Errors
/// As [`carbonation_progress`].
pub fn carry_on(
    tracks: [Carbonation; 3],
    time: Time,
    under: &Under,
    uptake: &Uptake,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<OnTheWay>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let x = progress_columns(tracks, time, under, uptake, context, watch)?;
    let found = visit_progress(uptake.how(), context, Once { x, steps: watch })?;
    context.note_model(&mut notes.cautions);
    let [expected, least, most, end, slow, fast] = found.map(Carbonation::from_si);
    let value = OnTheWay { expected, least, most, end, tracks: [expected, slow, fast] };
    Ok(Answer { value, context: *context, notes })
}
