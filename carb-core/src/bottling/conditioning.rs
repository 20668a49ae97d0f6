//! Conditioning: how far the bottles are, when they are ready, and how much yeast helps.

use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context, Request};
use crate::error::{Error, code};
use crate::evidence::caution::{
    COLD_CONDITIONING, Caution, Cautions, FEW_CELLS, FILTERED_DRINK, HOT_CONDITIONING, MANY_CELLS, OLD_DRINK,
    STRONG_DRINK, above, below,
};
use crate::evidence::{Notes, Steps};
use crate::property::yeast::{self, PROGRESS, RATE, WORK, WORK_NEEDED};
use crate::quantity::unit::{CELSIUS, DAY};
use crate::quantity::{Key, Mass, Name, Percent, Temperature, Time, Volume};

/// Shares of one thing as expected, at least and at most.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span<T> {
    /// Expected.
    pub expected: T,
    /// The slow end.
    pub least: T,
    /// The fast end.
    pub most: T,
}

/// Work of the yeast in `time` at `t`, s at 20 °C, at each pace; told to the working at the expected one.
#[inline(always)]
fn work([t, time]: [f64; 2], paces: [f64; 3], steps: &mut impl Steps) -> [f64; 3] {
    let kept = yeast::within_reach(t);
    let rate = steps.step(&RATE, &[kept], yeast::rate(kept));
    paces.map(|pace| steps.step(&WORK, &[pace, rate, time], pace * rate * time))
}

#[derive(Clone, Copy)]
struct Progress;

impl Kernel<4, 3> for Progress {
    const COLUMNS: [Key; 4] = [Key::Room, Key::Time, Key::Abv, Key::Cells];
    #[inline(always)]
    fn eval(&self, [t, time, abv, cells]: [f64; 4], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let [expected, least, most] = work([t, time], yeast::paces(abv, cells), steps);
        let mut of = |work: f64| steps.step(&PROGRESS, &[work], yeast::progress(work));
        ([of(expected), of(least), of(most)], 0)
    }
    fn explain(&self, _: i32, _: [f64; 4]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Time) }
    }
}

/// Hands the kernel of the progress to a visitor.
pub(crate) fn visit<V: Visit<4, 3>>(visitor: V) -> V::Output {
    visitor.visit(Progress)
}

/// The highest progress that has a time.
const MOST_PROGRESS: f64 = 99.9;
/// The slowest work that is answered, of that at 20 °C.
const LEAST_RATE: f64 = 1e-3;

#[derive(Clone, Copy)]
struct Wait;

impl Kernel<4, 3> for Wait {
    const COLUMNS: [Key; 4] = [Key::Progress, Key::Room, Key::Abv, Key::Cells];
    #[inline(always)]
    fn eval(&self, [progress, t, abv, cells]: [f64; 4], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let kept = yeast::within_reach(t);
        let rate = steps.step(&RATE, &[kept], yeast::rate(kept));
        let outside = above(progress, MOST_PROGRESS) | (rate < LEAST_RATE);
        let asked = if progress < MOST_PROGRESS { progress } else { MOST_PROGRESS };
        let needed = steps.step(&WORK_NEEDED, &[asked], yeast::work(asked));
        let [expected, least, most] = yeast::paces(abv, cells);
        let speed = if rate < LEAST_RATE { LEAST_RATE } else { rate };
        // The slow pace takes the most time.
        let times = [expected, most, least].map(|pace| {
            let time = needed / (pace * speed);
            if !outside {
                steps.record(&WORK, &[pace, speed, time], needed);
            }
            time
        });
        (times, if outside { code::OUT_OF_RANGE } else { 0 })
    }
    fn explain(&self, _: i32, [progress, t, _, _]: [f64; 4]) -> Error {
        if above(progress, MOST_PROGRESS) {
            let parameter = Name::first(Key::Progress);
            return Error::OutOfRange { parameter, value: progress, low: 0.0, high: MOST_PROGRESS };
        }
        let (low, high) = yeast::WORKS;
        Error::OutOfRange { parameter: Name::first(Key::Room), value: t, low, high }
    }
}

/// Hands the kernel of the waiting time to a visitor.
pub(crate) fn visit_wait<V: Visit<4, 3>>(visitor: V) -> V::Output {
    visitor.visit(Wait)
}

#[derive(Clone, Copy)]
struct Yeast;

impl Kernel<2, 1> for Yeast {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 2] = [Key::Packaged, Key::Cells];
    #[inline(always)]
    fn eval(&self, [volume, cells]: [f64; 2], steps: &mut impl Steps) -> ([f64; 1], i32) {
        ([steps.step(&yeast::DRY_YEAST, &[volume, cells], yeast::dry_yeast(volume, cells))], 0)
    }
    fn explain(&self, _: i32, _: [f64; 2]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Cells) }
    }
}

/// Hands the kernel of the yeast to be added to a visitor.
pub(crate) fn visit_yeast<V: Visit<2, 1>>(visitor: V) -> V::Output {
    visitor.visit(Yeast)
}

/// What is known of the yeast in the bottles.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct YeastState {
    /// Living cells per m3, where they were counted or added.
    pub cells: Option<f64>,
    /// How long the drink has stood since its fermentation ended.
    pub age: Option<Time>,
    /// Whether it was filtered or fined bright.
    pub filtered: bool,
}

impl YeastState {
    /// Cells as the rates take them: enough, where nobody counted.
    pub(crate) fn cells(&self) -> f64 {
        self.cells.unwrap_or(yeast::USUAL)
    }

    /// Whether fresh yeast is called for.
    pub fn wants_yeast(&self, abv: f64) -> bool {
        let few = self.cells.is_some_and(|cells| below(cells, yeast::FEW));
        // Whoever counted, or added yeast, knows better than the age tells.
        let guessed = self.cells.is_none() && (self.filtered || self.age.is_some_and(|age| above(age.si(), OLD)));
        few || guessed || above(abv, yeast::STRONG)
    }
}

/// Time in bulk after which little yeast is alive, s; common practice, no source.
const OLD: f64 = DAY.to_si(60.0);
/// Below this, yeast is slow beyond use, K; judgement from the rates.
const COLD: f64 = CELSIUS.to_si(12.0);
/// Above this, drinks stale fast, K; common practice, no source.
const HOT: f64 = CELSIUS.to_si(30.0);

/// Notes what slows conditioning, or stops it.
pub(crate) fn note(coldest: f64, hottest: f64, abv: f64, state: &YeastState, cautions: &mut Cautions) {
    let mut add = |kind, value, limit| cautions.add(Caution { kind, value, limit });
    if above(abv, yeast::STRONG) {
        add(&STRONG_DRINK, abv, yeast::STRONG);
    }
    if let Some(cells) = state.cells {
        if below(cells, yeast::FEW) {
            add(&FEW_CELLS, cells, yeast::FEW);
        } else if above(cells, yeast::MANY) {
            add(&MANY_CELLS, cells, yeast::MANY);
        }
    } else {
        if state.filtered {
            add(&FILTERED_DRINK, yeast::USUAL, yeast::USUAL);
        }
        if let Some(age) = state.age.filter(|age| above(age.si(), OLD)) {
            add(&OLD_DRINK, age.si(), OLD);
        }
    }
    if below(coldest, COLD) {
        add(&COLD_CONDITIONING, coldest, COLD);
    }
    if above(hottest, HOT) {
        add(&HOT_CONDITIONING, hottest, HOT);
    }
}

/// The kernels' columns, SI; the first two are what each takes.
pub(crate) fn columns(first: f64, second: f64, state: &YeastState, context: &Context) -> [f64; 4] {
    [first, second, context.beverage.abv(), state.cells()]
}

/// How much of the carbonation is made after some time at a temperature: an estimate with its range.
///
/// # Errors
/// Where a value lies outside its limits.
pub fn conditioning(
    room: Temperature,
    time: Time,
    state: &YeastState,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Span<Percent>>, Error> {
    let mut notes = Notes::default();
    let x = columns(room.si(), time.si(), state, context);
    let values = visit(Once { x, steps: &mut Both(&mut notes, steps) })?;
    note(room.si(), room.si(), x[2], state, &mut notes.cautions);
    let [expected, least, most] = values.map(Percent::from_si);
    Ok(Answer { value: Span { expected, least, most }, context: *context, notes })
}

/// How long it takes at a temperature until a share of the carbonation is made: an estimate with its range.
///
/// # Errors
/// Where a value lies outside its limits, or no yeast works at the temperature.
pub fn conditioning_time(
    progress: Percent,
    room: Temperature,
    state: &YeastState,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Span<Time>>, Error> {
    let mut notes = Notes::default();
    let x = columns(progress.si(), room.si(), state, context);
    let values = visit_wait(Once { x, steps: &mut Both(&mut notes, steps) })?;
    note(room.si(), room.si(), x[2], state, &mut notes.cautions);
    let [expected, least, most] = values.map(Time::from_si);
    Ok(Answer { value: Span { expected, least, most }, context: *context, notes })
}

/// Dry yeast that brings so many living cells into a drink.
///
/// # Errors
/// Where a value lies outside its limits.
pub fn reyeasting(
    packaged: Volume,
    cells: f64,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Mass>, Error> {
    let mut notes = Notes::default();
    let [mass] = visit_yeast(Once { x: [packaged.si(), cells], steps: &mut Both(&mut notes, steps) })?;
    if above(cells, yeast::MANY) {
        notes.cautions.add(Caution { kind: &MANY_CELLS, value: cells, limit: yeast::MANY });
    } else if below(cells, yeast::FEW) {
        notes.cautions.add(Caution { kind: &FEW_CELLS, value: cells, limit: yeast::FEW });
    }
    Ok(Answer { value: Mass::from_si(mass), context: *context, notes })
}

/// A spell at one temperature, the last of which goes on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spell {
    /// How warm the bottles were.
    pub temperature: Temperature,
    /// How long.
    pub time: Time,
}

/// Work done (s at 20 °C) after some time of spells, whatever the temperature at which it was done.
fn worked(time: f64, spells: impl Iterator<Item = Spell>) -> f64 {
    let (mut left, mut done, mut rate) = (time, 0.0, 0.0);
    for spell in spells {
        rate = yeast::rate(yeast::within_reach(spell.temperature.si()));
        let here = if spell.time.si() < left { spell.time.si() } else { left };
        done += rate * here;
        left -= here;
    }
    // The last spell goes on.
    done + rate * left
}

/// The spells of a history; where there is none, the room for ever.
pub fn spells(room: Temperature, history: &[Request]) -> impl Iterator<Item = Spell> + Clone + use<'_> {
    let of = move |row: &Request| Spell {
        temperature: row.number(Key::Temperature).map_or(room, Temperature::from_si),
        time: Time::from_si(row.number(Key::Time).unwrap_or_default()),
    };
    let always = history.is_empty().then_some(Spell { temperature: room, time: Time::from_si(0.0) });
    always.into_iter().chain(history.iter().map(of))
}

/// How far the bottles are after some time of spells.
pub fn after(time: Time, spells: impl Iterator<Item = Spell>, abv: f64, state: &YeastState) -> Span<Percent> {
    let done = worked(time.si(), spells);
    let [expected, least, most] =
        yeast::paces(abv, state.cells()).map(|pace| Percent::from_si(yeast::progress(pace * done)));
    Span { expected, least, most }
}

/// Time of spells until a share of the carbonation is made.
///
/// # Errors
/// The temperature at which the yeast sleeps for ever before it is done.
pub fn wait(
    progress: Percent,
    spells: impl Iterator<Item = Spell> + Clone,
    abv: f64,
    state: &YeastState,
) -> Result<Span<Time>, Temperature> {
    let [expected, slow, fast] = yeast::paces(abv, state.cells());
    let needed = yeast::work(progress.si());
    let until = |pace: f64| {
        let (mut missing, mut time, mut rate) = (needed / pace, 0.0, 0.0);
        let mut last = Temperature::from_si(yeast::WORKS.0);
        for spell in spells.clone() {
            rate = yeast::rate(yeast::within_reach(spell.temperature.si()));
            last = spell.temperature;
            if rate * spell.time.si() >= missing {
                return Ok(Time::from_si(time + missing / rate));
            }
            missing -= rate * spell.time.si();
            time += spell.time.si();
        }
        if rate < LEAST_RATE { Err(last) } else { Ok(Time::from_si(time + missing / rate)) }
    };
    // The fast pace takes the least time.
    Ok(Span { expected: until(expected)?, least: until(fast)?, most: until(slow)? })
}

/// Notes the equations behind [`after`] and [`wait`].
#[cfg(feature = "alloc")]
pub(crate) fn note_equations(notes: &mut Notes) {
    for equation in [&RATE, &PROGRESS] {
        notes.record(equation, &[], 0.0);
    }
}
