//! What flows from the faucet, how long a line has to be for it, and which pressure a line takes: by physics.
//!
//! Three kernels over the same columns: two that differ, then bore, rise, fittings, glass, and the drink. A pour is told by its
//! flow or by its time.

use super::line::{
    CONTENT, FITTINGS, FLOW_OF_SPEED, LIFTED, LINE_LENGTH, LINE_PRESSURE, POUR_FLOW, POUR_TIME, SPEED_OF_FLOW, Tubing,
    area, heads, lift,
};
use super::liquid::flowing;
use crate::basis::kernel::Kernel;
use crate::error::{Error, code};
use crate::evidence::{NoSteps, Steps};
use crate::number::sqrt;
use crate::quantity::{Key, Name};

/// What all three take behind their first two columns.
const REST: [Key; 9] = [
    Key::Bore,
    Key::Rise,
    Key::Fittings,
    Key::PourSize,
    Key::Temperature,
    Key::Gravity,
    Key::Abv,
    Key::Extract,
    Key::RelativeViscosity,
];

const fn columns(first: Key, second: Key) -> [Key; 11] {
    let [a, b, c, d, e, f, g, h, i] = REST;
    [first, second, a, b, c, d, e, f, g, h, i]
}

const fn pour(timed: bool) -> Key {
    if timed { Key::Pour } else { Key::Flow }
}

/// Whether a number lies outside what its field answers.
#[inline(always)]
fn outside(key: Key, value: f64) -> bool {
    let (low, high) = key.limits().unwrap_or((f64::NEG_INFINITY, f64::INFINITY));
    // A number that is none is outside too.
    !((value >= low) & (value <= high))
}

/// The tubing of a kernel's columns, what the rise takes, and range cautions.
#[inline(always)]
fn tubing(read: bool, [bore, rise, fittings, _, drink @ ..]: [f64; 9], steps: &mut impl Steps) -> (Tubing, f64, i32) {
    let ([density, viscosity], bits) = flowing(read, drink, steps);
    let lifted = steps.step(&LIFTED, &[density, rise], lift(density, rise));
    (Tubing { bore, fittings, density, viscosity }, lifted, bits)
}

/// Flow and time of a pour of which one is told.
#[inline(always)]
fn flow_and_time<const TIMED: bool>(told: f64, glass: f64, steps: &mut impl Steps) -> [f64; 2] {
    if TIMED {
        [steps.step(&POUR_FLOW, &[glass, told], glass / told), told]
    } else {
        [told, steps.step(&POUR_TIME, &[glass, told], glass / told)]
    }
}

/// A status for what is answered beyond its limits.
#[inline(always)]
fn status(bits: i32, beyond: bool) -> i32 {
    if beyond { code::OUT_OF_REACH } else { bits }
}

/// So little, Pa, drives no drink that anyone would notice, and has no square root worth telling.
const LEAST_HEAD: f64 = 1e-6;
const NO_LIFT: &str = "it does not lift the drink to the faucet; raise the keg, or lower the faucet (the pressure belongs to the carbonation)";
const NOTHING_HOLDS: &str = "hardly anything holds the drink back, and no flow is worked out beyond this; give the line a length, or its fittings their losses";
const HARDLY_FLOWS: &str = "the drink hardly flows: take a shorter or wider line";
const NO_LINE_FLOW: &str =
    "even without any line rise and fittings let no more through; pour slower, lower the faucet, or take a wider tube";
const NO_LINE_TIME: &str = "even without any line rise and fittings let no more through; take longer over a pour, lower the faucet, or take a wider tube";
const TOO_LONG: &str = "so slow a pour takes a longer line than is answered: pour faster, or take a narrower tube";
const POUR_BEYOND: &str = "with this size of pour flow or time leave what is answered: check both, and their units";
const TOO_HIGH: &str =
    "this line takes more pressure than is answered at this flow: check the bore and its unit, or pour slower";

fn reach(key: Key, value: f64, limit: f64, advice: &'static str) -> Error {
    Error::OutOfReach { parameter: Name::first(key), value, limit, advice }
}

/// What the flow or the time of a pour has to be for the other to stay within its limits.
fn pour_beyond(timed: bool, told: f64, glass: f64) -> Error {
    let (low, high) = pour(!timed).limits().unwrap_or_default();
    let other = (glass / told).max(low).min(high);
    reach(pour(timed), told, glass / other, POUR_BEYOND)
}

/// What flows through a line.
#[derive(Clone, Copy)]
pub(super) struct Flowing {
    pub read: bool,
}

impl Kernel<11, 6> for Flowing {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 11] = columns(Key::Gauge, Key::Line);
    #[inline(always)]
    fn eval(&self, [gauge, length, rest @ ..]: [f64; 11], steps: &mut impl Steps) -> ([f64; 6], i32) {
        let [bore, .., glass, _, _, _, _, _] = rest;
        let (line, lifted, bits) = tubing(self.read, rest, steps);
        let Some(speed) = line.speed(gauge - lifted, length) else {
            return ([0.0; 6], code::OUT_OF_REACH);
        };
        let flow = steps.step(&FLOW_OF_SPEED, &[bore, speed], area(bore) * speed);
        let ([re, lost], told) = line.at(speed, flow, steps);
        let held = heads(line.fittings, line.density, speed);
        let held = steps.step(&FITTINGS, &[line.fittings, line.density, speed], held);
        steps.record(&LINE_PRESSURE, &[lifted, lost, length, held], lifted + lost * length + held);
        let time = steps.step(&POUR_TIME, &[glass, flow], glass / flow);
        let content = steps.step(&CONTENT, &[bore, length], area(bore) * length);
        let beyond = outside(Key::Flow, flow) | outside(Key::Pour, time) | outside(Key::Speed, speed);
        ([flow, time, speed, re, lost, content], status(bits | told, beyond))
    }
    fn explain(&self, _: i32, [gauge, length, rest @ ..]: [f64; 11]) -> Error {
        let [bore, .., glass, _, _, _, _, _] = rest;
        let (line, lifted, _) = tubing(self.read, rest, &mut NoSteps);
        if gauge <= lifted + LEAST_HEAD {
            return reach(Key::Gauge, gauge, lifted + LEAST_HEAD, NO_LIFT);
        }
        let (low, high) = Key::Flow.limits().unwrap_or_default();
        let Some(flow) = line.speed(gauge - lifted, length).map(|speed| area(bore) * speed) else {
            // Without length and losses: what would hold it to the most that is answered.
            let most = high / area(bore);
            let limit = 2.0 * (gauge - lifted) / (line.density * most * most);
            return reach(Key::Fittings, line.fittings, limit, NOTHING_HOLDS);
        };
        let (least, most) = Key::Pour.limits().unwrap_or_default();
        let low = low.max(glass / most);
        if flow < low {
            return reach(Key::Flow, flow, low, HARDLY_FLOWS);
        }
        let fastest = area(bore) * Key::Speed.limits().unwrap_or_default().1;
        reach(Key::Flow, flow, high.min(glass / least).min(fastest), NOTHING_HOLDS)
    }
}

/// The line for a pour.
#[derive(Clone, Copy)]
pub(super) struct Lengths<const TIMED: bool> {
    pub read: bool,
}

impl<const TIMED: bool> Kernel<11, 7> for Lengths<TIMED> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 11] = columns(Key::Gauge, pour(TIMED));
    #[inline(always)]
    fn eval(&self, [gauge, told, rest @ ..]: [f64; 11], steps: &mut impl Steps) -> ([f64; 7], i32) {
        let [bore, .., glass, _, _, _, _, _] = rest;
        let (line, lifted, bits) = tubing(self.read, rest, steps);
        let [flow, time] = flow_and_time::<TIMED>(told, glass, steps);
        let speed = steps.step(&SPEED_OF_FLOW, &[flow, bore], flow / area(bore));
        let ([re, lost], more) = line.at(speed, flow, steps);
        let held = heads(line.fittings, line.density, speed);
        let held = steps.step(&FITTINGS, &[line.fittings, line.density, speed], held);
        let length = (gauge - lifted - held) / lost;
        let length = steps.step(&LINE_LENGTH, &[gauge, lifted, held, lost], length);
        let content = steps.step(&CONTENT, &[bore, length], area(bore) * length);
        let pour = outside(Key::Flow, flow) | outside(Key::Pour, time) | outside(Key::Speed, speed);
        ([length, content, flow, time, speed, re, lost], status(bits | more, pour | outside(Key::Line, length)))
    }
    fn explain(&self, _: i32, [gauge, told, rest @ ..]: [f64; 11]) -> Error {
        let [bore, .., glass, _, _, _, _, _] = rest;
        let (line, lifted, _) = tubing(self.read, rest, &mut NoSteps);
        let [flow, time] = flow_and_time::<TIMED>(told, glass, &mut NoSteps);
        let speed = flow / area(bore);
        if gauge <= lifted + LEAST_HEAD {
            return reach(Key::Gauge, gauge, lifted + LEAST_HEAD, NO_LIFT);
        }
        if gauge - lifted < heads(line.fittings, line.density, speed) {
            let most = area(bore) * sqrt(2.0 * (gauge - lifted) / (line.fittings * line.density));
            return if TIMED {
                reach(Key::Pour, told, glass / most, NO_LINE_TIME)
            } else {
                reach(Key::Flow, told, most, NO_LINE_FLOW)
            };
        }
        if outside(Key::Speed, speed) {
            let (low, high) = Key::Speed.limits().unwrap_or_default();
            return reach(Key::Speed, speed, if speed < low { low } else { high }, POUR_BEYOND);
        }
        if outside(Key::Flow, flow) | outside(Key::Pour, time) {
            return pour_beyond(TIMED, told, glass);
        }
        let ([_, lost], _) = line.at(speed, flow, &mut NoSteps);
        let length = (gauge - lifted - heads(line.fittings, line.density, speed)) / lost;
        reach(Key::Line, length, Key::Line.limits().unwrap_or_default().1, TOO_LONG)
    }
}

/// The pressure that a line takes at a pour.
#[derive(Clone, Copy)]
pub(super) struct Taking<const TIMED: bool> {
    pub read: bool,
}

impl<const TIMED: bool> Kernel<11, 8> for Taking<TIMED> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 11] = columns(Key::Line, pour(TIMED));
    #[inline(always)]
    fn eval(&self, [length, told, rest @ ..]: [f64; 11], steps: &mut impl Steps) -> ([f64; 8], i32) {
        let [bore, .., glass, _, _, _, _, _] = rest;
        let (line, lifted, bits) = tubing(self.read, rest, steps);
        let [flow, time] = flow_and_time::<TIMED>(told, glass, steps);
        let speed = steps.step(&SPEED_OF_FLOW, &[flow, bore], flow / area(bore));
        let ([re, lost], more) = line.at(speed, flow, steps);
        let held = heads(line.fittings, line.density, speed);
        let held = steps.step(&FITTINGS, &[line.fittings, line.density, speed], held);
        let gauge = lifted + lost * length + held;
        let gauge = steps.step(&LINE_PRESSURE, &[lifted, lost, length, held], gauge);
        let pour = outside(Key::Flow, flow) | outside(Key::Pour, time) | outside(Key::Speed, speed);
        let values = [gauge, lifted, lost * length, held, flow, time, speed, re];
        (values, status(bits | more, pour | outside(Key::Gauge, gauge)))
    }
    fn explain(&self, _: i32, [length, told, rest @ ..]: [f64; 11]) -> Error {
        let [bore, .., glass, _, _, _, _, _] = rest;
        let (line, lifted, _) = tubing(self.read, rest, &mut NoSteps);
        let [flow, time] = flow_and_time::<TIMED>(told, glass, &mut NoSteps);
        let speed = flow / area(bore);
        if outside(Key::Speed, speed) {
            return reach(Key::Speed, speed, Key::Speed.limits().unwrap_or_default().1, POUR_BEYOND);
        }
        if outside(Key::Flow, flow) | outside(Key::Pour, time) {
            return pour_beyond(TIMED, told, glass);
        }
        let ([_, lost], _) = line.at(speed, flow, &mut NoSteps);
        let gauge = lifted + lost * length + heads(line.fittings, line.density, speed);
        let (low, high) = Key::Gauge.limits().unwrap_or_default();
        reach(Key::Gauge, gauge, if gauge < low { low } else { high }, TOO_HIGH)
    }
}
