//! Oxygen that a drink takes up in its package.

use super::gas;
use crate::balance::pressure::absolute;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::{Caution, Cautions, OXYGEN_HIGH, above};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::{Notes, Steps};
use crate::property::oxygen::{self, IN_GAS};
use crate::property::water;
use crate::quantity::field::HIGHEST_PRESSURE;
use crate::quantity::unit::{MICROGRAM_PER_LITRE, PERCENT};
use crate::quantity::{
    Carbonation, GaugePressure, Key, Name, Percent, Temperature, TraceConcentration, VolumeFraction,
};

const RATIO: crate::evidence::Symbol =
    limited("K", Measure::Plain(""), "oxygen in the gas over that in as much drink", 15.0, 45.0);
const SPACE: crate::evidence::Symbol =
    limited("h", Measure::In(&PERCENT), "gas over the drink, percent of it", 0.0, 100.0);

/// Total package oxygen from what is dissolved.
pub static TOTAL: Equation = Equation {
    id: "total_package_oxygen",
    title: "oxygen in drink and headspace together, from what is dissolved",
    formula: "t = d*(1 + K*h/100)",
    result: symbol("t", Measure::In(&MICROGRAM_PER_LITRE), "oxygen in the package, per litre of drink"),
    inputs: &[
        limited("d", Measure::In(&MICROGRAM_PER_LITRE), "oxygen dissolved, at equilibrium", 0.0, 1.0e4),
        RATIO,
        SPACE,
    ],
    uncertainty_percent: Some(5.0),
    uncertainty: "that of the ratio; only a package that was shaken is at equilibrium",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| x[0] * (1.0 + x[1] * x[2] / 100.0),
};

/// What of it is dissolved.
pub static DISSOLVED: Equation = Equation {
    id: "dissolved_oxygen",
    title: "oxygen dissolved at equilibrium, of that in the package",
    formula: "d = t/(1 + K*h/100)",
    result: symbol("d", Measure::In(&MICROGRAM_PER_LITRE), "oxygen dissolved"),
    inputs: &[
        limited("t", Measure::In(&MICROGRAM_PER_LITRE), "oxygen in the package, per litre of drink", 0.0, 1.0e4),
        RATIO,
        SPACE,
    ],
    uncertainty_percent: Some(5.0),
    uncertainty: "that of the ratio; beer uses its oxygen up within days",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| x[0] / (1.0 + x[1] * x[2] / 100.0),
};

/// All oxygen of a package.
pub static SUM: Equation = Equation {
    id: "package_oxygen_sum",
    title: "oxygen in drink and headspace together",
    formula: "t = d + h + q",
    result: symbol("t", Measure::In(&MICROGRAM_PER_LITRE), "oxygen in the package, per litre of drink"),
    inputs: &[
        limited("d", Measure::In(&MICROGRAM_PER_LITRE), "oxygen that was dissolved", 0.0, 1.0e4),
        limited("h", Measure::In(&MICROGRAM_PER_LITRE), "oxygen in the headspace, per litre of drink", 0.0, 1.0e6),
        limited("q", Measure::In(&MICROGRAM_PER_LITRE), "oxygen that the gas brings along", 0.0, 1.0e4),
    ],
    uncertainty_percent: None,
    uncertainty: "arithmetic",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] + x[1] + x[2],
};

/// How oxygen spreads at the temperature `t` (K): in gas over in drink, and a status.
#[inline(always)]
fn ratio(t: f64, steps: &mut impl Steps) -> (f64, i32) {
    let vapour = steps.step(&water::VAPOUR_PRESSURE, &[t], water::vapour_pressure(t));
    let held = steps.step(&oxygen::SATURATION, &[t], oxygen::saturation(t));
    let k = steps.step(&oxygen::SOLUBILITY, &[held, vapour], oxygen::solubility(held, vapour));
    (steps.step(&oxygen::PARTITION, &[t, k], oxygen::partition(t, k)), steps.within(&oxygen::TEMPERATURE, t))
}

#[derive(Clone, Copy)]
struct PickUp;

impl Kernel<9, 4> for PickUp {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 9] = [
        Key::Oxygen,
        Key::Headspace,
        Key::Temperature,
        Key::Gauge,
        Key::Ambient,
        Key::DissolvedOxygen,
        Key::Carbonation,
        Key::Start,
        Key::GasOxygen,
    ];
    #[inline(always)]
    fn eval(
        &self,
        [share, headspace, t, gauge, ambient, held, c, start, supplied]: [f64; 9],
        steps: &mut impl Steps,
    ) -> ([f64; 4], i32) {
        let p = absolute(gauge, ambient, steps);
        let over =
            steps.step(&oxygen::IN_HEADSPACE, &[share, p, t, headspace], oxygen::in_headspace(share, p, t, headspace));
        let brought = steps.step(&oxygen::BROUGHT, &[c - start, supplied], oxygen::brought(c - start, supplied));
        let total = steps.step(&SUM, &[held, over, brought], held + over + brought);
        let (k, bits) = ratio(t, steps);
        let dissolved = steps.step(&DISSOLVED, &[total, k, headspace], total / (1.0 + k * headspace / 100.0));
        let low = if p < 0.0 { code::PRESSURE_TOO_LOW } else { bits };
        let high = if above(p, HIGHEST_PRESSURE) { code::OUT_OF_RANGE } else { low };
        ([over, brought, total, dissolved], if above(start, c) { code::TARGET_BELOW_HELD } else { high })
    }
    fn explain(&self, status: i32, [.., gauge, ambient, _, c, start, _]: [f64; 9]) -> Error {
        match status {
            code::TARGET_BELOW_HELD => Error::TargetBelowHeld {
                parameter: Name::first(Key::Carbonation),
                value: c,
                held: start,
                remedy: "no gas is taken up then; leave the start out, or give the carbonation that it is brought to",
            },
            code::PRESSURE_TOO_LOW => {
                Error::PressureTooLow { parameter: Name::first(Key::Gauge), value: gauge, low: -ambient }
            }
            _ => gas::beyond(Key::Gauge, gauge, ambient),
        }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<9, 4>>(visitor: V) -> V::Output {
    visitor.visit(PickUp)
}

/// The gas over a drink that is packaged, and what was done before.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Headspace {
    /// Oxygen in the gas.
    pub oxygen: VolumeFraction,
    /// Gas over the drink, percent of it.
    pub space: Percent,
    /// Temperature of both.
    pub temperature: Temperature,
    /// Pressure of the gas when it has that much oxygen: none where it was just vented.
    pub gauge: GaugePressure,
    /// Oxygen dissolved in the drink already.
    pub dissolved: TraceConcentration,
    /// CO2 before and after carbonating.
    pub carbonated: (Carbonation, Carbonation),
    /// Oxygen in the CO2 with which it is carbonated.
    pub supplied: VolumeFraction,
}

impl Headspace {
    /// A vented headspace over a drink without oxygen, that is not carbonated.
    pub fn vented(oxygen: VolumeFraction, space: Percent, temperature: Temperature) -> Self {
        let none = Carbonation::from_si(0.0);
        Self {
            oxygen,
            space,
            temperature,
            gauge: GaugePressure::from_si(0.0),
            dissolved: TraceConcentration::from_si(0.0),
            carbonated: (none, none),
            supplied: VolumeFraction::from_si(IN_GAS),
        }
    }
}

/// The kernel's columns, SI.
pub(crate) fn columns(over: &Headspace, ambient: f64) -> [f64; 9] {
    let (start, c) = over.carbonated;
    let [share, space, t] = [over.oxygen.si(), over.space.si(), over.temperature.si()];
    [share, space, t, over.gauge.si(), ambient, over.dissolved.si(), c.si(), start.si(), over.supplied.si()]
}

/// Oxygen of a package, per litre of drink.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PackageOxygen {
    /// In the headspace: what the drink takes up from there, for it uses it all up in time.
    pub headspace: TraceConcentration,
    /// Brought along by the CO2 with which it is carbonated.
    pub brought: TraceConcentration,
    /// All of it, with what was dissolved before.
    pub total: TraceConcentration,
    /// What of that is dissolved at equilibrium, before it is used up.
    pub dissolved: TraceConcentration,
}

fn note(total: f64, cautions: &mut Cautions) {
    if above(total, oxygen::LIMIT) {
        cautions.add(Caution { kind: &OXYGEN_HIGH, value: total, limit: oxygen::LIMIT });
    }
}

/// Oxygen that a drink takes up from the gas over it and from the CO2 with which it is carbonated.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, or carbonating takes CO2 away.
pub fn oxygen_pickup(
    over: &Headspace,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PackageOxygen>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let x = columns(over, context.ambient(watch)?);
    let all = visit(Once { x, steps: watch })?;
    note(all[2], &mut notes.cautions);
    let [headspace, brought, total, dissolved] = all.map(TraceConcentration::from_si);
    Ok(Answer { value: PackageOxygen { headspace, brought, total, dissolved }, context: *context, notes })
}

#[derive(Clone, Copy)]
struct Package;

impl Kernel<3, 2> for Package {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 3] = [Key::DissolvedOxygen, Key::Headspace, Key::Temperature];
    #[inline(always)]
    fn eval(&self, [held, headspace, t]: [f64; 3], steps: &mut impl Steps) -> ([f64; 2], i32) {
        let (k, bits) = ratio(t, steps);
        let total = steps.step(&TOTAL, &[held, k, headspace], held * (1.0 + k * headspace / 100.0));
        ([total, total - held], bits)
    }
    fn explain(&self, _: i32, _: [f64; 3]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::DissolvedOxygen) }
    }
}

/// Hands the kernel of the total to a visitor.
pub(crate) fn visit_total<V: Visit<3, 2>>(visitor: V) -> V::Output {
    visitor.visit(Package)
}

/// Total package oxygen from the oxygen dissolved in a package that was shaken to equilibrium, and that of its headspace, per
/// litre of drink.
///
/// # Errors
/// Where a value lies outside its limits.
pub fn total_package_oxygen(
    dissolved: TraceConcentration,
    headspace: Percent,
    temperature: Temperature,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<[TraceConcentration; 2]>, Error> {
    let mut notes = Notes::default();
    let x = [dissolved.si(), headspace.si(), temperature.si()];
    let all = visit_total(Once { x, steps: &mut Both(&mut notes, steps) })?;
    note(all[0], &mut notes.cautions);
    Ok(Answer { value: all.map(TraceConcentration::from_si), context: *context, notes })
}
