//! Purging by a flow: CO2 runs through an open vessel.

use super::gas;
use super::purge::Vessel;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::Error;
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited, symbol};
use crate::evidence::source::CROWL;
use crate::evidence::{Notes, Steps};
use crate::number::exp;
use crate::quantity::unit::PARTS_PER_MILLION;
use crate::quantity::{Key, Mass, Name, VolumeFraction};

const INPUTS: &[Symbol] = &[
    limited("s", Measure::In(&PARTS_PER_MILLION), "oxygen at the start", 1.0e5, 2.5e5),
    limited("g", Measure::In(&PARTS_PER_MILLION), "oxygen in the CO2 as supplied", 0.0, 100.0),
    limited("N", Measure::Plain(""), "vessel volumes of gas that have run through", 0.0, 15.0),
];

#[inline(always)]
fn mixed([start, supplied, n]: [f64; 3]) -> f64 {
    supplied + (start - supplied) * exp(-n)
}

#[inline(always)]
fn plug([start, supplied, n]: [f64; 3]) -> f64 {
    let left = 1.0 - n;
    supplied + (start - supplied) * if left > 0.0 { left } else { 0.0 }
}

/// Oxygen left where the gas mixes with what is there: the most.
pub static SWEPT: Equation = Equation {
    id: "swept_oxygen",
    title: "oxygen left after a flow of CO2 that mixes fully",
    formula: "x = g + (s - g)*exp(-N)",
    result: symbol("x", Measure::In(&PARTS_PER_MILLION), "oxygen left, mixed"),
    inputs: INPUTS,
    uncertainty_percent: None,
    uncertainty: "a bound: a slow flow from the bottom leaves less",
    sources: &[&CROWL],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| mixed([x[0], x[1], x[2]]),
};

/// Oxygen left where the gas pushes the air out without mixing: the least.
pub static PLUG: Equation = Equation {
    id: "plug_flow_oxygen",
    title: "oxygen left after a flow of CO2 that does not mix",
    formula: "y = g + (s - g)*max(1 - N, 0)",
    result: symbol("y", Measure::In(&PARTS_PER_MILLION), "oxygen left, not mixed, the mean over the vessel"),
    inputs: INPUTS,
    uncertainty_percent: None,
    uncertainty: "a bound: no flow mixes not at all",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| plug([x[0], x[1], x[2]]),
};

#[derive(Clone, Copy)]
struct Sweep;

impl Kernel<6, 3> for Sweep {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 6] = [Key::Sweeps, Key::StartOxygen, Key::GasOxygen, Key::Keg, Key::Temperature, Key::Ambient];
    #[inline(always)]
    fn eval(&self, [n, start, supplied, volume, t, ambient]: [f64; 6], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let x = [start, supplied, n];
        let most = steps.step(&SWEPT, &x, mixed(x));
        let least = steps.step(&PLUG, &x, plug(x));
        let (d, bits) = gas::density(ambient, t, steps);
        ([most, least, gas::fill(n, volume, d, steps)], bits)
    }
    fn explain(&self, _: i32, _: [f64; 6]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Sweeps) }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<6, 3>>(visitor: V) -> V::Output {
    visitor.visit(Sweep)
}

/// The kernel's columns, SI.
pub(crate) fn columns(sweeps: f64, vessel: &Vessel, ambient: f64) -> [f64; 6] {
    let [space, t] = [vessel.space.si(), vessel.temperature.si()];
    [sweeps, vessel.start.si(), vessel.supplied.si(), space, t, ambient]
}

/// What a flow of CO2 leaves, and takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Swept {
    /// Oxygen left where the gas mixes fully: the most.
    pub mixed: VolumeFraction,
    /// Oxygen left where it does not mix: the least.
    pub plug_flow: VolumeFraction,
    /// CO2 used.
    pub gas: Mass,
}

/// Oxygen left in an open vessel after so many vessel volumes of CO2 (as it is at the air's pressure) ran through it.
///
/// # Errors
/// Where a value lies outside its limits, or nothing is said of the air outside.
pub fn sweep_oxygen(
    sweeps: f64,
    vessel: &Vessel,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Swept>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let x = columns(sweeps, vessel, context.ambient(watch)?);
    let [mixed, plug, gas] = visit(Once { x, steps: watch })?;
    let [mixed, plug_flow] = [mixed, plug].map(VolumeFraction::from_si);
    Ok(Answer { value: Swept { mixed, plug_flow, gas: Mass::from_si(gas) }, context: *context, notes })
}
