//! CO2 in the air of a room: what an escape or a leak makes of it, and how long airing takes.

use super::gas;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::Error;
use crate::evidence::caution::{
    Caution, Cautions, LOW_HALF, ROOM_IDLH, ROOM_LONG_TERM, ROOM_SHORT_UK, ROOM_SHORT_US, above,
};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited, symbol};
use crate::evidence::{Notes, Steps};
use crate::number::{exp, ln};
use crate::property::exposure::{IDLH, LONG_TERM, OUTDOORS, SHORT_UK, SHORT_US};
use crate::quantity::unit::{CUBIC_METRE, GRAM, GRAM_PER_HOUR, HOUR, PARTS_PER_MILLION, PER_HOUR};
use crate::quantity::{Key, Mass, MassFlow, Name, Rate, RoomVolume, Temperature, Time, VolumeFraction};

/// How often the air of a closed room is exchanged where nothing is said of it, 1/s: half of it an hour.
pub const USUAL_AIR_CHANGES: f64 = PER_HOUR.to_si(0.5);

const AIR: Symbol = symbol("x", Measure::In(&PARTS_PER_MILLION), "CO2 in the air");
const GAS: Symbol = limited("v", Measure::In(&CUBIC_METRE), "volume of the CO2", 0.0, 20.0);
const ROOM: Symbol =
    limited("R", Measure::In(&CUBIC_METRE), "volume in which it spreads: the room, or its lower half", 5.0, 500.0);
const DENSITY: Symbol = limited("d", Measure::Plain("kg/m3"), "density of the CO2 at the air's pressure", 1.0, 2.0);
const CHANGES: Symbol = limited("A", Measure::In(&PER_HOUR), "air changes", 0.01, 20.0);
const OUTSIDE_AIR: &str = "420 ppm outdoors is a common figure; rooms do not mix at once, and CO2 lies low: half of the room is the worse case";

/// Volume of CO2 that escapes.
pub static VOLUME: Equation = Equation {
    id: "released_volume",
    title: "volume of CO2 that escapes",
    formula: "v = m/(1000*d)",
    result: symbol("v", Measure::In(&CUBIC_METRE), "volume of the CO2"),
    inputs: &[limited("m", Measure::In(&GRAM), "CO2 that escapes", 0.0, 50_000.0), DENSITY],
    uncertainty_percent: None,
    uncertainty: "arithmetic, at the temperature of the room",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] / x[1],
};

#[inline(always)]
fn mixed(gas: f64, room: f64) -> f64 {
    1.0 - (1.0 - OUTDOORS) * exp(-gas / room)
}

/// CO2 in a room into which some escapes at once, mixed, while the mixture leaves.
pub static MIXED: Equation = Equation {
    id: "room_mixed",
    title: "CO2 in the air after a sudden escape, mixed",
    formula: "x = 1000000 - 999580*exp(-v/R)",
    result: AIR,
    inputs: &[GAS, ROOM],
    uncertainty_percent: None,
    uncertainty: OUTSIDE_AIR,
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| mixed(x[0], x[1]),
};

#[inline(always)]
fn bound(gas: f64, room: f64) -> f64 {
    let all = OUTDOORS + gas / room;
    if all < 1.0 { all } else { 1.0 }
}

/// CO2 in a room where none of it leaves.
pub static BOUND: Equation = Equation {
    id: "room_bound",
    title: "CO2 in the air after a sudden escape, at most, mixed",
    formula: "x = min(420 + 1000000*v/R, 1000000)",
    result: AIR,
    inputs: &[GAS, ROOM],
    uncertainty_percent: None,
    uncertainty: "an upper bound of a mixed room: only air leaves",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| bound(x[0], x[1]),
};

#[inline(always)]
fn decayed(x: f64, changes: f64, time: f64) -> f64 {
    OUTDOORS + (x - OUTDOORS) * exp(-changes * time)
}

/// CO2 left after airing.
pub static DECAYED: Equation = Equation {
    id: "room_aired",
    title: "CO2 in the air after some time of airing",
    formula: "y = 420 + (x - 420)*exp(-A*t)",
    result: symbol("y", Measure::In(&PARTS_PER_MILLION), "CO2 in the air then"),
    inputs: &[
        limited("x", Measure::In(&PARTS_PER_MILLION), "CO2 in the air at first", 420.0, 1.0e6),
        CHANGES,
        limited("t", Measure::In(&HOUR), "time", 0.0, 24.0),
    ],
    uncertainty_percent: None,
    uncertainty: OUTSIDE_AIR,
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| decayed(x[0], x[1], x[2]),
};

#[inline(always)]
fn waited(x: f64, changes: f64) -> f64 {
    ln((x - OUTDOORS) / (LONG_TERM - OUTDOORS)) / changes
}

/// Time of airing to the long-term limit.
pub static WAIT: Equation = Equation {
    id: "room_airing_time",
    title: "time of airing to 5000 ppm, from more",
    formula: "t = ln((x - 420)/(5000 - 420))/A",
    result: symbol("t", Measure::In(&HOUR), "time"),
    inputs: &[limited("x", Measure::In(&PARTS_PER_MILLION), "CO2 in the air, 5000 ppm or more", 6.0e3, 1.0e6), CHANGES],
    uncertainty_percent: None,
    uncertainty: OUTSIDE_AIR,
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| waited(x[0], x[1]),
};

#[inline(always)]
fn leaking(leak: f64, density: f64, changes: f64, room: f64) -> f64 {
    let all = OUTDOORS + leak / (density * changes * room);
    if all < 1.0 { all } else { 1.0 }
}

/// CO2 in a room with a steady leak.
pub static LEAKING: Equation = Equation {
    id: "room_leak",
    title: "CO2 in the air with a steady leak, in the end",
    formula: "x = min(420 + 1000*L/(d*A*R), 1000000)",
    result: AIR,
    inputs: &[limited("L", Measure::In(&GRAM_PER_HOUR), "CO2 that leaks", 0.0, 1000.0), DENSITY, CHANGES, ROOM],
    uncertainty_percent: None,
    uncertainty: OUTSIDE_AIR,
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| leaking(x[0], x[1], x[2], x[3]),
};

#[derive(Clone, Copy)]
struct Escape;

impl Kernel<6, 7> for Escape {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 6] = [Key::Released, Key::RoomVolume, Key::Room, Key::Ambient, Key::AirChanges, Key::Time];
    #[inline(always)]
    fn eval(&self, [mass, room, t, ambient, changes, time]: [f64; 6], steps: &mut impl Steps) -> ([f64; 7], i32) {
        let (d, bits) = gas::density(ambient, t, steps);
        let v = steps.step(&VOLUME, &[mass, d], mass / d);
        let peak = steps.step(&MIXED, &[v, room], mixed(v, room));
        let most = steps.step(&BOUND, &[v, room], bound(v, room));
        let low = steps.step(&MIXED, &[v, 0.5 * room], mixed(v, 0.5 * room));
        let mut later = |x: f64| steps.step(&DECAYED, &[x, changes, time], decayed(x, changes, time));
        let after = [later(peak), later(low)];
        let mut wait = |x: f64| {
            // Below the limit there is nothing to wait for.
            let from = if x > LONG_TERM { x } else { LONG_TERM };
            steps.step(&WAIT, &[from, changes], waited(from, changes))
        };
        let waits = [wait(peak), wait(low)];
        ([peak, most, low, after[0], after[1], waits[0], waits[1]], bits)
    }
    fn explain(&self, _: i32, _: [f64; 6]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Released) }
    }
}

#[derive(Clone, Copy)]
struct Leak;

impl Kernel<5, 2> for Leak {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 5] = [Key::Leak, Key::RoomVolume, Key::Room, Key::Ambient, Key::AirChanges];
    #[inline(always)]
    fn eval(&self, [leak, room, t, ambient, changes]: [f64; 5], steps: &mut impl Steps) -> ([f64; 2], i32) {
        let (d, bits) = gas::density(ambient, t, steps);
        let mut steady = |room: f64| steps.step(&LEAKING, &[leak, d, changes, room], leaking(leak, d, changes, room));
        ([steady(room), steady(0.5 * room)], bits)
    }
    fn explain(&self, _: i32, _: [f64; 5]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Leak) }
    }
}

/// Hands the kernel of an escape to a visitor.
pub(crate) fn visit<V: Visit<6, 7>>(visitor: V) -> V::Output {
    visitor.visit(Escape)
}

/// Hands the kernel of a leak to a visitor.
pub(crate) fn visit_leak<V: Visit<5, 2>>(visitor: V) -> V::Output {
    visitor.visit(Leak)
}

/// A room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Room {
    /// Its volume.
    pub volume: RoomVolume,
    /// Its temperature.
    pub temperature: Temperature,
    /// How often its air is exchanged.
    pub air_changes: Rate,
}

/// The limit that CO2 in the air crosses, by the worse case: all of it in the lower half.
fn note(low: f64, cautions: &mut Cautions) {
    let grave =
        [(&ROOM_IDLH, IDLH), (&ROOM_SHORT_US, SHORT_US), (&ROOM_SHORT_UK, SHORT_UK), (&ROOM_LONG_TERM, LONG_TERM)];
    if let Some((kind, limit)) = grave.into_iter().find(|(_, limit)| above(low, *limit)) {
        cautions.add(Caution { kind, value: low, limit });
        cautions.add(Caution::of(&LOW_HALF, low));
    }
}

/// CO2 in a room after an escape.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoomCo2 {
    /// Mixed, at once.
    pub mixed: VolumeFraction,
    /// Mixed, at once, if only air left the room: an upper bound of that.
    pub bound: VolumeFraction,
    /// All of it in the lower half of the room: the worse case.
    pub low_half: VolumeFraction,
    /// Mixed, after the time.
    pub later: VolumeFraction,
    /// In the lower half, after the time.
    pub later_low_half: VolumeFraction,
    /// Time of airing to 5000 ppm, mixed.
    pub aired: Time,
    /// The same in the lower half.
    pub low_half_aired: Time,
}

/// CO2 in the air of a room into which a mass of it escapes at once (a cylinder, or all that a fermentation makes), and after
/// `time` of airing.
///
/// # Errors
/// Where a value lies outside its limits, or nothing is said of the air outside.
pub fn room_co2(
    released: Mass,
    room: &Room,
    time: Time,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<RoomCo2>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let Room { volume, temperature, air_changes } = room;
    let ambient = context.ambient(watch)?;
    let x = [released.si(), volume.si(), temperature.si(), ambient, air_changes.si(), time.si()];
    let [peak, most, low, after, after_low, wait, wait_low] = visit(Once { x, steps: watch })?;
    note(low, &mut notes.cautions);
    let [mixed, bound, low_half, later, later_low_half] =
        [peak, most, low, after, after_low].map(VolumeFraction::from_si);
    let [aired, low_half_aired] = [wait, wait_low].map(Time::from_si);
    let value = RoomCo2 { mixed, bound, low_half, later, later_low_half, aired, low_half_aired };
    Ok(Answer { value, context: *context, notes })
}

/// CO2 in the air of a room with a steady leak, in the end: mixed, and all of it in the lower half.
///
/// # Errors
/// Where a value lies outside its limits, or nothing is said of the air outside.
pub fn room_leak(
    leak: MassFlow,
    room: &Room,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<[VolumeFraction; 2]>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let Room { volume, temperature, air_changes } = room;
    let x = [leak.si(), volume.si(), temperature.si(), context.ambient(watch)?, air_changes.si()];
    let [mixed, low] = visit_leak(Once { x, steps: watch })?;
    note(low, &mut notes.cautions);
    Ok(Answer { value: [mixed, low].map(VolumeFraction::from_si), context: *context, notes })
}
