//! Purging by a liquid: a keg is filled to the brim with sanitiser, and CO2 pushes that out.

use super::gas;
use super::purge::Vessel;
use crate::balance::pressure::absolute;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::above;
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::{Notes, Steps};
use crate::quantity::field::HIGHEST_PRESSURE;
use crate::quantity::unit::{GRAM, KILOPASCAL, LITRE, PARTS_PER_MILLION};
use crate::quantity::{GaugePressure, Key, Mass, Name, Volume, VolumeFraction};

#[inline(always)]
fn pushed([start, supplied, pocket, volume, ambient, gauge]: [f64; 6]) -> f64 {
    supplied + (start - supplied) * (pocket / volume) * (ambient / (ambient + gauge))
}

/// Oxygen in a keg from which CO2 has pushed the liquid.
pub static PUSHED: Equation = Equation {
    id: "pushed_oxygen",
    title: "oxygen in a keg from which CO2 pushed the sanitiser",
    formula: "x = g + (s - g)*(v/V)*(a/(a + G))",
    result: symbol("x", Measure::In(&PARTS_PER_MILLION), "oxygen in the keg, full of CO2 at its pressure"),
    inputs: &[
        limited("s", Measure::In(&PARTS_PER_MILLION), "oxygen in the air under the lid", 1.0e5, 2.5e5),
        limited("g", Measure::In(&PARTS_PER_MILLION), "oxygen in the CO2 as supplied", 0.0, 100.0),
        limited("v", Measure::In(&LITRE), "air that stayed under the lid", 0.0, 0.5),
        limited("V", Measure::In(&LITRE), "the keg, to the brim", 1.0, 60.0),
        limited("a", Measure::In(&KILOPASCAL), "pressure of the air outside, absolute", 60.0, 110.0),
        limited("G", Measure::In(&KILOPASCAL), "pressure of the CO2, gauge", 0.0, 400.0),
    ],
    uncertainty_percent: None,
    uncertainty: "arithmetic; oxygen that comes out of the sanitiser is left out: about 10 ppm more in a push of 5 minutes, judgement",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| pushed([x[0], x[1], x[2], x[3], x[4], x[5]]),
};

/// CO2 that pushes the liquid out.
pub static PUSH_GAS: Equation = Equation {
    id: "push_gas",
    title: "CO2 that pushes the sanitiser out",
    formula: "m = V*h - v*l",
    result: symbol("m", Measure::In(&GRAM), "CO2 used"),
    inputs: &[
        limited("V", Measure::In(&LITRE), "the keg, to the brim", 1.0, 60.0),
        limited("h", Measure::Plain("kg/m3"), "density of CO2 at the pressure of the push", 1.8, 12.0),
        limited("v", Measure::In(&LITRE), "air that stayed under the lid", 0.0, 0.5),
        limited("l", Measure::Plain("kg/m3"), "density of CO2 at the pressure of the air outside", 1.0, 1.8),
    ],
    uncertainty_percent: Some(1.0),
    uncertainty: "the air under the lid takes the place of as much CO2; what the sanitiser dissolves is left out",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| x[0] * x[1] - x[2] * x[3],
};

#[derive(Clone, Copy)]
struct Push;

impl Kernel<7, 2> for Push {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 7] =
        [Key::Pocket, Key::PushGauge, Key::StartOxygen, Key::GasOxygen, Key::Keg, Key::Temperature, Key::Ambient];
    #[inline(always)]
    fn eval(
        &self,
        [pocket, gauge, start, supplied, volume, t, ambient]: [f64; 7],
        steps: &mut impl Steps,
    ) -> ([f64; 2], i32) {
        let full = absolute(gauge, ambient, steps);
        let x = [start, supplied, pocket, volume, ambient, gauge];
        let left = steps.step(&PUSHED, &x, pushed(x));
        let (high, more) = gas::density(full, t, steps);
        let (low, bits) = gas::density(ambient, t, steps);
        let mass = steps.step(&PUSH_GAS, &[volume, high, pocket, low], volume * high - pocket * low);
        let refused = above(pocket, volume) | above(full, HIGHEST_PRESSURE);
        ([left, mass], if refused { code::OUT_OF_RANGE } else { bits | more })
    }
    fn explain(&self, _: i32, [pocket, gauge, _, _, volume, _, ambient]: [f64; 7]) -> Error {
        if above(pocket, volume) {
            return Error::OutOfRange { parameter: Name::first(Key::Pocket), value: pocket, low: 0.0, high: volume };
        }
        gas::beyond(Key::PushGauge, gauge, ambient)
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<7, 2>>(visitor: V) -> V::Output {
    visitor.visit(Push)
}

/// The kernel's columns, SI.
pub(crate) fn columns(pocket: Volume, gauge: GaugePressure, vessel: &Vessel, ambient: f64) -> [f64; 7] {
    let [space, t] = [vessel.space.si(), vessel.temperature.si()];
    [pocket.si(), gauge.si(), vessel.start.si(), vessel.supplied.si(), space, t, ambient]
}

/// What is in a keg from which CO2 has pushed the liquid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pushed {
    /// Oxygen in the gas.
    pub oxygen: VolumeFraction,
    /// CO2 used.
    pub gas: Mass,
}

/// Oxygen in a keg that was filled with sanitiser but for a pocket of air under the lid, and pushed empty by CO2 at a gauge
/// pressure. Vents of the keg afterwards take this oxygen as their start.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, or the pocket is larger than the keg.
pub fn push_oxygen(
    pocket: Volume,
    gauge: GaugePressure,
    vessel: &Vessel,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Pushed>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let x = columns(pocket, gauge, vessel, context.ambient(watch)?);
    let [oxygen, gas] = visit(Once { x, steps: watch })?;
    vessel.note(gauge, &mut notes.cautions);
    let value = Pushed { oxygen: VolumeFraction::from_si(oxygen), gas: Mass::from_si(gas) };
    Ok(Answer { value, context: *context, notes })
}
