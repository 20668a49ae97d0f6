//! What a tube takes of the pressure of a drink that flows through it.

use crate::evidence::caution::{FAST_POUR, Range, TRANSITION_FLOW};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited};
use crate::evidence::source::CHURCHILL;
use crate::number::{ln, pow};
use crate::quantity::unit::{BORE_MILLIMETRE, METRE_PER_SECOND, MILLIPASCAL_SECOND, US_GALLON_PER_MINUTE};

/// Roughness of drawn tubing, plastic or metal, m: smooth, as engineering tables have it; common practice, no source.
/// A hundred times finer than the bore, it changes what a line takes by less than 1 %.
pub const ROUGHNESS: f64 = 1.5e-6;

/// Reynolds number to which flow in a tube is laminar.
pub const LAMINAR: f64 = 2000.0;
/// Reynolds number from which it is turbulent.
pub const TURBULENT: f64 = 4000.0;

/// Asked of the Reynolds number where it lies in the transition, see [`transition`].
pub static TRANSITION: Range = Range { caution: &TRANSITION_FLOW, low: f64::NEG_INFINITY, high: LAMINAR };

/// The most that the trade pours, a US gallon in a minute; common practice, no source.
pub static FASTEST: Range = Range { caution: &FAST_POUR, low: 0.0, high: US_GALLON_PER_MINUTE.to_si(1.0) };

/// A Reynolds number of the transition as it is, and 0 for one outside: [`TRANSITION`] is a range that ends at its lower end.
#[inline(always)]
pub fn transition(reynolds: f64) -> f64 {
    if reynolds < TURBULENT { reynolds } else { 0.0 }
}

/// Reynolds number of a liquid of `density` (kg/m3) and `viscosity` (Pa s) at `speed` (m/s) in a tube of `bore` (m).
#[inline(always)]
pub fn reynolds(density: f64, speed: f64, bore: f64, viscosity: f64) -> f64 {
    density * speed * bore / viscosity
}

/// Friction factor (Darcy's) of a tube with roughness over bore `relative`.
#[inline(always)]
pub fn factor(reynolds: f64, relative: f64) -> f64 {
    // Multiplied out, so that what is below 0, in a flow that hardly creeps, has its power too.
    let fourth = |x: f64| x * x * (x * x);
    let rough = fourth(fourth(2.457 * ln(1.0 / (pow(7.0 / reynolds, 0.9) + 0.27 * relative))));
    let smooth = fourth(fourth(37530.0 / reynolds));
    let laminar = fourth(8.0 / reynolds);
    8.0 * pow(laminar * laminar * laminar + pow(rough + smooth, -1.5), 1.0 / 12.0)
}

/// The factor is never more than that of laminar flow and this together: for tubes from 1 mm with [`ROUGHNESS`], by a scan of
/// all Reynolds numbers.
pub const MOST_BEYOND_LAMINAR: f64 = 0.04;

/// Pressure lost per length of tube, Pa/m.
#[inline(always)]
pub fn resistance(factor: f64, bore: f64, density: f64, speed: f64) -> f64 {
    factor * density * speed * speed / (2.0 * bore)
}

const DENSITY: Symbol = limited("d", Measure::Plain("kg/m3"), "density of the drink", 950.0, 1160.0);
const SPEED: Symbol = limited("v", Measure::In(&METRE_PER_SECOND), "speed in the line", 0.001, 20.0);
const BORE: Symbol = limited("D", Measure::In(&BORE_MILLIMETRE), "bore of the line", 1.0, 50.0);

/// The catalogue's entry for [`reynolds`].
pub static REYNOLDS: Equation = Equation {
    id: "reynolds_number",
    title: "Reynolds number of the flow",
    formula: "R = d*v*D/e",
    result: limited("R", Measure::Plain(""), "Reynolds number", 0.0, f64::INFINITY),
    inputs: &[
        DENSITY,
        SPEED,
        BORE,
        limited("e", Measure::In(&MILLIPASCAL_SECOND), "viscosity of the drink", 0.3, 10.0),
    ],
    uncertainty_percent: None,
    uncertainty: "exact, for what is put in",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| reynolds(x[0], x[1], x[2], x[3]),
};

/// The catalogue's entry for [`factor`].
pub static FACTOR: Equation = Equation {
    id: "friction_factor",
    title: "friction factor of the line",
    formula: "f = 8*((8/R)^12 + (((2.457*ln(1/((7/R)^0.9 + 0.27*r)))^8)^2 + (37530/R)^16)^(-1.5))^(1/12)",
    result: limited("f", Measure::Plain(""), "Darcy's friction factor", 0.0, f64::INFINITY),
    inputs: &[
        limited("R", Measure::Plain(""), "Reynolds number", 1.0, 1.0e6),
        limited("r", Measure::Plain(""), "roughness of the tube, 0.0015 mm, over its bore", 0.0, 0.002),
    ],
    uncertainty_percent: Some(5.0),
    uncertainty: "smooth tubes scatter so much about the equations of turbulent flow; laminar flow is exact within 0.2 %; between Reynolds numbers of 2000 and 4000 nobody knows",
    sources: &[&CHURCHILL],
    standing: Standing::ConfirmedFromMemory,
    kernel: |x| factor(x[0], x[1]),
};

/// The catalogue's entry for [`resistance`].
pub static RESISTANCE: Equation = Equation {
    id: "line_resistance",
    title: "pressure lost per length of line",
    formula: "g = 1000*f*d*v^2/(2*D)",
    result: limited("g", Measure::Plain("Pa/m"), "pressure lost per length", 0.0, f64::INFINITY),
    inputs: &[limited("f", Measure::Plain(""), "friction factor", 0.005, 1.0), BORE, DENSITY, SPEED],
    uncertainty_percent: None,
    uncertainty: "defines the friction factor",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| resistance(x[0], x[1], x[2], x[3]),
};
