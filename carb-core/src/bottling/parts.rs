//! What the pressure in a package is made of, part by part.

use super::package::{Keeping, columns, visit};
use crate::balance::sealed::{Closed, Sealed};
use crate::basis::kernel::Once;
use crate::basis::{Context, Yeast};
use crate::bottling::priming::extract_co2;
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::property::fermentable;
use crate::property::solubility::Solubility;
use crate::quantity::Carbonation;

/// A part of a pressure: its name, what it adds (Pa), and the gauge pressure then (Pa).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PressurePart {
    /// In words.
    pub name: &'static str,
    /// What it adds, Pa.
    pub adds: f64,
    /// Gauge pressure with it and everything before it, Pa.
    pub gauge: f64,
}

/// How many parts there are.
pub const PARTS: usize = 5;

const NAMES: [&str; PARTS] = [
    "CO2 and vapour, the liquid not expanded",
    "the liquid expands and squeezes the gas",
    "air that was sealed in",
    "the liquid expands and squeezes the air",
    "worst case: less soluble, more CO2",
];

/// Gauge pressures of one vessel: CO2 in a gas of its filling volume, then in what the expanding liquid leaves of it.
fn of_co2<S: Solubility>(solubility: S, content: f64, x: [f64; 6]) -> Result<[f64; 4], i32> {
    let [t, headspace, filling, ambient, abv, extract] = x;
    let (here, _) = solubility.here(t, abv, extract, &mut NoSteps);
    let gauge = |filling: f64, air: f64| {
        let vessel = Sealed::new(here, Closed { headspace, filling, air }, t, &mut NoSteps);
        let (co2, solved) = vessel.solve(content);
        if solved < 0 { Err(solved) } else { Ok((vessel.total(co2, &mut NoSteps).0 - ambient, vessel.air)) }
    };
    // Closed at the temperature at which it is kept, the liquid does not expand.
    let (still, _) = gauge(t, 0.0)?;
    let (expanded, _) = gauge(filling, 0.0)?;
    let (with_air, air) = gauge(filling, ambient)?;
    let room = Sealed::new(here, Closed { headspace, filling, air: ambient }, t, &mut NoSteps).gas;
    // What the air would press in the room that it was sealed into.
    let loose = if headspace > 0.0 { air * room / (headspace / 100.0) } else { 0.0 };
    Ok([still, expanded, expanded + loose, with_air])
}

/// The pressure of a package, part by part, of a carbonation that is stated.
///
/// # Errors
/// As [`super::package::package_pressure`].
pub fn pressure_parts(
    carbonation: Carbonation,
    keeping: &Keeping,
    context: &Context,
) -> Result<[PressurePart; PARTS], Error> {
    let x = columns(carbonation.si(), keeping, context, &mut NoSteps)?;
    let [_, _, _, worst, _] = visit(context, Once { x, steps: &mut NoSteps })?;
    let [stated, matter, rest @ ..] = x;
    let live = if context.beverage.yeast == Yeast::Live { 1.0 } else { 0.0 };
    let (y, basis) = (fermentable::extract_yield(), &context.basis);
    let content = stated + extract_co2(y, basis.yield_percent, basis.yield_factor, matter * live);
    let mut vessel = rest;
    // What is fermentable is part of the extract.
    vessel[5] = vessel[5].max(matter);
    // The kernel has answered for the same vessel, so these do too.
    let not = |_| Error::NotConverged { parameter: crate::quantity::Name::first(crate::quantity::Key::Carbonation) };
    let [a, b, c, d] = of_co2(context.solubility(), content, vessel).map_err(not)?;
    let worst = worst.max(d);
    let gauges = [a, b, c, d, worst];
    let mut before = 0.0;
    let mut parts = [PressurePart { name: "", adds: 0.0, gauge: 0.0 }; PARTS];
    for ((part, name), gauge) in parts.iter_mut().zip(NAMES).zip(gauges) {
        *part = PressurePart { name, adds: gauge - before, gauge };
        before = gauge;
    }
    Ok(parts)
}
