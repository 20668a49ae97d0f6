//! The draught line: the equations of what drives the drink through it and what holds it back.

use crate::evidence::Steps;
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited};
use crate::number::root::bracketed;
use crate::number::sqrt;
use crate::property::constant::STANDARD_GRAVITY;
use crate::property::friction::{
    self, FACTOR, FASTEST, MOST_BEYOND_LAMINAR, RESISTANCE, REYNOLDS, ROUGHNESS, TRANSITION,
};
use crate::quantity::unit::{BORE_MILLIMETRE, LITRE, LITRE_PER_MINUTE, METRE, METRE_PER_SECOND, PASCAL, SECONDS};

/// Velocity heads that pickup tube, coupling and faucet of a home line of 3/16 in take together; judgement: with it 10 ft pour
/// as the trade says.
pub const USUAL_FITTINGS: f64 = 3.0;

/// Area over the square of the diameter of a circle.
const QUARTER_CIRCLE: f64 = core::f64::consts::FRAC_PI_4;

const PRESSURE: Symbol = limited("p", Measure::In(&PASCAL), "pressure in the keg, gauge", 0.0, 1.0e6);
const DENSITY: Symbol = limited("d", Measure::Plain("kg/m3"), "density of the drink", 950.0, 1160.0);
const RISE: Symbol = limited("H", Measure::In(&METRE), "height of the faucet over the drink", 0.1, 10.0);
const HEADS: Symbol = limited("K", Measure::Plain(""), "losses of fittings and faucet, in velocity heads", 0.0, 50.0);
const SPEED: Symbol = limited("v", Measure::In(&METRE_PER_SECOND), "speed in the line", 0.001, 20.0);
const LENGTH: Symbol = limited("L", Measure::In(&METRE), "length of the line", 0.0, 100.0);
const BORE: Symbol = limited("D", Measure::In(&BORE_MILLIMETRE), "bore of the line", 1.0, 50.0);
const FLOW: Symbol = limited("q", Measure::In(&LITRE_PER_MINUTE), "flow", 0.01, 100.0);
const GRADIENT: Symbol = limited("g", Measure::Plain("Pa/m"), "pressure lost per length of line", 10.0, 1.0e5);
const LIFT: Symbol = limited("w", Measure::In(&PASCAL), "pressure that the rise takes", 0.0, 1.0e5);
const HELD: Symbol = limited("k", Measure::In(&PASCAL), "pressure that fittings and faucet take", 0.0, 1.0e5);

/// What lifts the drink to the faucet.
pub static LIFTED: Equation = Equation {
    id: "line_lift",
    title: "pressure that the rise takes",
    formula: "w = 9.80665*d*H",
    result: LIFT,
    inputs: &[DENSITY, RISE],
    uncertainty_percent: Some(0.5),
    uncertainty: "gravity differs so much over the globe",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| lift(x[0], x[1]),
};

/// What fittings and faucet take.
pub static FITTINGS: Equation = Equation {
    id: "line_fittings",
    title: "pressure that fittings and faucet take",
    formula: "k = K*d*v^2/2",
    result: HELD,
    inputs: &[HEADS, DENSITY, SPEED],
    uncertainty_percent: None,
    uncertainty: "defines the velocity heads",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| heads(x[0], x[1], x[2]),
};

/// The pressure in the keg, which the line, the rise and the fittings take up.
pub static LINE_PRESSURE: Equation = Equation {
    id: "line_pressure",
    title: "pressure that the whole line takes",
    formula: "p = w + g*L + k",
    result: PRESSURE,
    inputs: &[LIFT, GRADIENT, LENGTH, HELD],
    uncertainty_percent: None,
    uncertainty: "the balance of energy; its terms have their own",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] + x[1] * x[2] + x[3],
};

/// The length of line that takes up what rise and fittings leave.
pub static LINE_LENGTH: Equation = Equation {
    id: "line_length",
    title: "length of the line",
    formula: "L = (p - w - k)/g",
    result: LENGTH,
    inputs: &[PRESSURE, LIFT, HELD, GRADIENT],
    uncertainty_percent: None,
    uncertainty: "the balance of energy; its terms have their own",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| (x[0] - x[1] - x[2]) / x[3],
};

/// Flow from speed.
pub static FLOW_OF_SPEED: Equation = Equation {
    id: "line_flow",
    title: "flow in the line",
    formula: "q = 0.06*0.7853981633974483*D^2*v",
    result: FLOW,
    inputs: &[BORE, SPEED],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| area(x[0]) * x[1],
};

/// Speed from flow.
pub static SPEED_OF_FLOW: Equation = Equation {
    id: "line_speed",
    title: "speed in the line",
    formula: "v = q/(0.06*0.7853981633974483*D^2)",
    result: SPEED,
    inputs: &[FLOW, BORE],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] / area(x[1]),
};

/// Time from flow.
pub static POUR_TIME: Equation = Equation {
    id: "pour_time",
    title: "time of a pour",
    formula: "t = 60*V/q",
    result: limited("t", Measure::In(&SECONDS), "time of a pour", 0.0, f64::INFINITY),
    inputs: &[limited("V", Measure::In(&LITRE), "what is poured", 0.1, 2.0), FLOW],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] / x[1],
};

/// Flow from time.
pub static POUR_FLOW: Equation = Equation {
    id: "pour_flow",
    title: "flow of a pour",
    formula: "q = 60*V/t",
    result: FLOW,
    inputs: &[
        limited("V", Measure::In(&LITRE), "what is poured", 0.1, 2.0),
        limited("t", Measure::In(&SECONDS), "time of a pour", 1.0, 100.0),
    ],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] / x[1],
};

/// Drink in the line.
pub static CONTENT: Equation = Equation {
    id: "line_content",
    title: "drink that stands in the line",
    formula: "V = 0.001*0.7853981633974483*D^2*L",
    result: limited("V", Measure::In(&LITRE), "drink in the line", 0.0, f64::INFINITY),
    inputs: &[BORE, LENGTH],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| area(x[0]) * x[1],
};

/// Cross-section of a tube of `bore` (m), m2.
#[inline(always)]
pub fn area(bore: f64) -> f64 {
    QUARTER_CIRCLE * (bore * bore)
}

/// Pressure that lifts a drink of `density` (kg/m3) by `rise` (m), Pa; below 0 where it runs down.
#[inline(always)]
pub fn lift(density: f64, rise: f64) -> f64 {
    STANDARD_GRAVITY * density * rise
}

/// Pressure of so many velocity heads, Pa.
#[inline(always)]
pub fn heads(count: f64, density: f64, speed: f64) -> f64 {
    count * density * speed * speed / 2.0
}

/// A line with a drink in it, SI units.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Tubing {
    pub bore: f64,
    pub fittings: f64,
    pub density: f64,
    pub viscosity: f64,
}

impl Tubing {
    /// Pressure lost per length at a speed, Pa/m.
    #[inline(always)]
    fn resistance(&self, speed: f64) -> f64 {
        let re = friction::reynolds(self.density, speed, self.bore, self.viscosity);
        friction::resistance(friction::factor(re, ROUGHNESS / self.bore), self.bore, self.density, speed)
    }

    /// The speed (m/s) at which a line of `length` (m) and its fittings take up `head` (Pa); `None` where nothing drives the
    /// drink, or nothing holds it.
    #[inline(always)]
    pub(crate) fn speed(&self, head: f64, length: f64) -> Option<f64> {
        // Between laminar flow all the way and the most that any flow loses: two quadratic equations.
        let laminar = 32.0 * self.viscosity * length / (self.bore * self.bore);
        let of = |square: f64| 2.0 * head / (laminar + sqrt(laminar * laminar + 4.0 * square * head));
        let most = of(0.5 * self.fittings * self.density);
        let least = of(0.5 * (MOST_BEYOND_LAMINAR * length / self.bore + self.fittings) * self.density);
        // Wider than rounding, for the line without length, where the two are one.
        bracketed(least * (1.0 - 1e-9), most * (1.0 + 1e-9), |speed| {
            self.resistance(speed) * length + heads(self.fittings, self.density, speed) - head
        })
    }

    /// Reynolds number and resistance at a speed, told to the working; with the range cautions of the flow.
    #[inline(always)]
    pub(crate) fn at(&self, speed: f64, flow: f64, steps: &mut impl Steps) -> ([f64; 2], i32) {
        let Tubing { bore, density, viscosity, .. } = *self;
        let re = friction::reynolds(density, speed, bore, viscosity);
        let re = steps.step(&REYNOLDS, &[density, speed, bore, viscosity], re);
        let relative = ROUGHNESS / bore;
        let factor = steps.step(&FACTOR, &[re, relative], friction::factor(re, relative));
        let lost = friction::resistance(factor, bore, density, speed);
        let lost = steps.step(&RESISTANCE, &[factor, bore, density, speed], lost);
        ([re, lost], steps.within(&TRANSITION, friction::transition(re)) | steps.within(&FASTEST, flow))
    }
}
