//! Purging by pressure: a vessel is filled with CO2, mixed, and vented, again and again.

use super::gas;
use crate::balance::pressure::absolute;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::{Caution, Cautions, PURGE_PRESSURE, PURGE_RATING, SLACK, above};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited, symbol};
use crate::evidence::source::CROWL;
use crate::evidence::{Notes, Steps};
use crate::number::{ln, pow};
use crate::property::keg::SODA_KEG;
use crate::property::oxygen::{IN_AIR, IN_GAS};
use crate::quantity::field::HIGHEST_PRESSURE;
use crate::quantity::unit::{GRAM, KILOPASCAL, LITRE, PARTS_PER_MILLION, PSI};
use crate::quantity::{GaugePressure, Key, Mass, Name, Temperature, Volume, VolumeFraction};

/// Gauge pressure up to which usual kegs are purged, Pa: brewery tanks and fermenters may stand no
/// more, glass nothing.
const USUAL_MOST: f64 = PSI.to_si(15.0);

/// Share of oxygen, of `start` at first and `supplied` in the gas, after `cycles` from `ambient` to `gauge` above it (Pa).
#[inline(always)]
pub fn purged([start, supplied, ambient, gauge, cycles]: [f64; 5]) -> f64 {
    let kept = pow(ambient / (ambient + gauge), cycles);
    start * kept + supplied * (1.0 - kept)
}

const START: Symbol = limited("s", Measure::In(&PARTS_PER_MILLION), "oxygen at the start", 1.0e5, 2.5e5);
const SUPPLIED: Symbol = limited("g", Measure::In(&PARTS_PER_MILLION), "oxygen in the CO2 as supplied", 0.0, 100.0);
const AMBIENT: Symbol = limited("a", Measure::In(&KILOPASCAL), "pressure of the air outside, absolute", 60.0, 110.0);
const GAUGE: Symbol = limited("G", Measure::In(&KILOPASCAL), "pressure to which it is filled, gauge", 20.0, 800.0);
const MIXED: &str = "each filling is taken to mix fully: one that does not mix leaves less where the vent is far from the inlet, more where it is near";

/// The catalogue's entry for [`purged`].
pub static PURGED: Equation = Equation {
    id: "purged_oxygen",
    title: "oxygen left after filling and venting",
    formula: "x = s*(a/(a + G))^n + g*(1 - (a/(a + G))^n)",
    result: symbol("x", Measure::In(&PARTS_PER_MILLION), "oxygen left"),
    inputs: &[START, SUPPLIED, AMBIENT, GAUGE, limited("n", Measure::Plain(""), "cycles", 0.0, 20.0)],
    uncertainty_percent: None,
    uncertainty: MIXED,
    sources: &[&CROWL],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| purged([x[0], x[1], x[2], x[3], x[4]]),
};

/// Cycles from `start` to `limit`, where the gas has `supplied`; 0 where nothing is to be done.
#[inline(always)]
pub fn cycles([limit, start, supplied, ambient, gauge]: [f64; 5]) -> f64 {
    let (left, over) = (limit - supplied, start - supplied);
    let share = if (left > 0.0) & (left < over) { left / over } else { 1.0 };
    ln(share) / ln(ambient / (ambient + gauge))
}

/// The catalogue's entry for [`cycles`].
pub static CYCLES: Equation = Equation {
    id: "purge_cycles",
    title: "cycles of filling and venting to an amount of oxygen",
    formula: "n = max(ln((x - g)/(s - g))/ln(a/(a + G)), 0)",
    result: symbol("n", Measure::Plain(""), "cycles"),
    inputs: &[
        limited("x", Measure::In(&PARTS_PER_MILLION), "oxygen that may be left", 101.0, 9.0e4),
        START,
        SUPPLIED,
        AMBIENT,
        GAUGE,
    ],
    uncertainty_percent: None,
    uncertainty: MIXED,
    sources: &[&CROWL],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| cycles([x[0], x[1], x[2], x[3], x[4]]),
};

/// CO2 that cycles of filling and venting take.
pub static PURGE_GAS: Equation = Equation {
    id: "purge_gas",
    title: "CO2 that filling and venting takes",
    formula: "m = n*V*(h - l)",
    result: symbol("m", Measure::In(&GRAM), "CO2 used"),
    inputs: &[
        limited("n", Measure::Plain(""), "cycles", 0.0, 1000.0),
        limited("V", Measure::In(&LITRE), "the gas space", 0.1, 1000.0),
        limited("h", Measure::Plain("kg/m3"), "density of CO2 when it is full", 3.0, 30.0),
        limited("l", Measure::Plain("kg/m3"), "density of CO2 when it is vented", 1.0, 2.5),
    ],
    uncertainty_percent: Some(2.0),
    uncertainty: "the gas is taken to be CO2 from the first cycle on, and to keep its temperature",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| x[0] * x[1] * (x[2] - x[3]),
};

/// CO2 of `times` fillings of `volume` (m3) from `ambient` to `full` (Pa, absolute) at `t` (K); kg for all of them and for one,
/// and a status.
#[inline(always)]
pub(crate) fn vents(times: f64, volume: f64, [ambient, full, t]: [f64; 3], steps: &mut impl Steps) -> ([f64; 2], i32) {
    let (high, more) = gas::density(full, t, steps);
    let (low, bits) = gas::density(ambient, t, steps);
    let mut mass = |n: f64| steps.step(&PURGE_GAS, &[n, volume, high, low], n * volume * (high - low));
    let (one, all) = (mass(1.0), mass(times));
    ([all, one], if above(full, HIGHEST_PRESSURE) { code::OUT_OF_RANGE } else { bits | more })
}

#[derive(Clone, Copy)]
struct Purge;

impl Kernel<7, 3> for Purge {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 7] =
        [Key::PurgeGauge, Key::Cycles, Key::StartOxygen, Key::GasOxygen, Key::Keg, Key::Temperature, Key::Ambient];
    #[inline(always)]
    fn eval(
        &self,
        [gauge, n, start, supplied, volume, t, ambient]: [f64; 7],
        steps: &mut impl Steps,
    ) -> ([f64; 3], i32) {
        let full = absolute(gauge, ambient, steps);
        let x = [start, supplied, ambient, gauge, n];
        let left = steps.step(&PURGED, &x, purged(x));
        let ([all, one], status) = vents(n, volume, [ambient, full, t], steps);
        ([left, one, all], status)
    }
    fn explain(&self, _: i32, [gauge, .., ambient]: [f64; 7]) -> Error {
        gas::beyond(Key::PurgeGauge, gauge, ambient)
    }
}

#[derive(Clone, Copy)]
struct Cycles;

impl Kernel<7, 4> for Cycles {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 7] =
        [Key::PurgeGauge, Key::Oxygen, Key::StartOxygen, Key::GasOxygen, Key::Keg, Key::Temperature, Key::Ambient];
    #[inline(always)]
    fn eval(
        &self,
        [gauge, limit, start, supplied, volume, t, ambient]: [f64; 7],
        steps: &mut impl Steps,
    ) -> ([f64; 4], i32) {
        let full = absolute(gauge, ambient, steps);
        let x = [limit, start, supplied, ambient, gauge];
        let n = cycles(x);
        let asked = limit < start;
        let never = asked & (limit <= supplied);
        // Where nothing is to be done, the logarithm of the equation may be of a negative number.
        if asked & !never {
            steps.record(&CYCLES, &x, n);
        }
        // A number that is whole but for its rounding is that whole number.
        let down = (n - n * SLACK) as i64 as f64;
        let whole = if n > 0.0 { down + 1.0 } else { 0.0 };
        let ([all, one], status) = vents(whole, volume, [ambient, full, t], steps);
        ([n, whole, one, all], if never & (status >= 0) { code::OUT_OF_REACH } else { status })
    }
    fn explain(&self, status: i32, [gauge, limit, _, supplied, _, _, ambient]: [f64; 7]) -> Error {
        if status == code::OUT_OF_REACH {
            return Error::OutOfReach {
                parameter: Name::first(Key::Oxygen),
                value: limit,
                limit: supplied,
                advice: "the CO2 itself has as much oxygen; allow more, or take purer gas (gas_oxygen_ppm)",
            };
        }
        gas::beyond(Key::PurgeGauge, gauge, ambient)
    }
}

/// Hands the kernel of the oxygen that is left to a visitor.
pub(crate) fn visit<V: Visit<7, 3>>(visitor: V) -> V::Output {
    visitor.visit(Purge)
}

/// Hands the kernel of the cycles to a visitor.
pub(crate) fn visit_cycles<V: Visit<7, 4>>(visitor: V) -> V::Output {
    visitor.visit(Cycles)
}

/// A vessel whose air gives way to CO2.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Vessel {
    /// Its gas space: the whole of an empty vessel.
    pub space: Volume,
    /// Temperature of the gas.
    pub temperature: Temperature,
    /// Oxygen in it at the start.
    pub start: VolumeFraction,
    /// Oxygen in the CO2 as supplied.
    pub supplied: VolumeFraction,
    /// What it is rated for, where that is known.
    pub rating: Option<GaugePressure>,
}

impl Vessel {
    /// An empty soda keg of 5 US gallons, full of air, at 20 °C, and CO2 as it is sold for drinks.
    pub fn soda_keg() -> Self {
        Self {
            space: Volume::from_si(SODA_KEG),
            temperature: Temperature::from_c(20.0),
            start: VolumeFraction::from_si(IN_AIR),
            supplied: VolumeFraction::from_si(IN_GAS),
            rating: None,
        }
    }

    /// Warns of a pressure in it that it may not stand.
    pub(crate) fn note(&self, gauge: GaugePressure, cautions: &mut Cautions) {
        let value = gauge.si();
        match self.rating.map(GaugePressure::si) {
            Some(limit) if above(value, limit) => cautions.add(Caution { kind: &PURGE_RATING, value, limit }),
            None if above(value, USUAL_MOST) => {
                cautions.add(Caution { kind: &PURGE_PRESSURE, value, limit: USUAL_MOST });
            }
            _ => {}
        }
    }
}

/// The kernels' columns, SI; `wanted` is how many cycles or how much oxygen.
pub(crate) fn columns(gauge: GaugePressure, wanted: f64, vessel: &Vessel, ambient: f64) -> [f64; 7] {
    let [space, t] = [vessel.space.si(), vessel.temperature.si()];
    [gauge.si(), wanted, vessel.start.si(), vessel.supplied.si(), space, t, ambient]
}

/// What purging leaves, and takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Purged {
    /// Oxygen left in the gas.
    pub oxygen: VolumeFraction,
    /// CO2 used by each cycle.
    pub each: Mass,
    /// CO2 used by all of them.
    pub total: Mass,
}

/// Oxygen left in a vessel that is filled with CO2 to a gauge pressure, mixed and vented to the air outside so many times.
///
/// ```
/// use carb_core::basis::{Ambient, Beverage, Context, Kind};
/// use carb_core::evidence::NoSteps;
/// use carb_core::kegging::purge::{Vessel, purge_oxygen};
/// use carb_core::quantity::GaugePressure;
/// let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
/// let left = purge_oxygen(GaugePressure::from_psi(30.0), 5.0, &Vessel::soda_keg(), &here, &mut NoSteps)?;
/// assert_eq!(format!("{:.0}", left.value.oxygen.ppm()), "835");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a value lies outside its limits, or nothing is said of the air outside.
pub fn purge_oxygen(
    gauge: GaugePressure,
    cycles: f64,
    vessel: &Vessel,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Purged>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let x = columns(gauge, cycles, vessel, context.ambient(watch)?);
    let [oxygen, each, total] = visit(Once { x, steps: watch })?;
    vessel.note(gauge, &mut notes.cautions);
    let value =
        Purged { oxygen: VolumeFraction::from_si(oxygen), each: Mass::from_si(each), total: Mass::from_si(total) };
    Ok(Answer { value, context: *context, notes })
}

/// How often a vessel is purged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PurgeCycles {
    /// Cycles, a real number.
    pub cycles: f64,
    /// The next whole number: what is done.
    pub whole: f64,
    /// CO2 used by each cycle.
    pub each: Mass,
    /// CO2 used by the whole number of cycles.
    pub total: Mass,
}

/// How often a vessel is filled with CO2 to a gauge pressure and vented until no more than `limit` of oxygen is left.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, or the CO2 itself has more oxygen than that.
pub fn purge_cycles(
    gauge: GaugePressure,
    limit: VolumeFraction,
    vessel: &Vessel,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PurgeCycles>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let x = columns(gauge, limit.si(), vessel, context.ambient(watch)?);
    let [cycles, whole, each, total] = visit_cycles(Once { x, steps: watch })?;
    vessel.note(gauge, &mut notes.cautions);
    let value = PurgeCycles { cycles, whole, each: Mass::from_si(each), total: Mass::from_si(total) };
    Ok(Answer { value, context: *context, notes })
}
