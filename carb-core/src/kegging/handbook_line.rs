//! The trade's balance of a draught line: so much pressure per length of tube and of rise, and the line takes it all.

use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::error::{Error, code};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited};
use crate::evidence::source::{DISPENSE_HANDBOOK, DRAUGHT_MANUAL};
use crate::evidence::{NoSteps, Notes, Steps};
use crate::quantity::unit::{FOOT, PSI, PSI_PER_FOOT};
use crate::quantity::{GaugePressure, Key, Length, Name, PressureDifference};

/// What a height takes by the trade, Pa/m: half a psi for a foot. A drink of specific gravity 1.15 would; beer takes 0.44.
pub const LIFT: f64 = PSI_PER_FOOT.to_si(0.5);

const PRESSURE: Symbol = limited("P", Measure::In(&PSI), "applied pressure, gauge", 0.0, 60.0);
const TOLD: Symbol = limited("R", Measure::In(&PSI_PER_FOOT), "resistance of the tube by the handbook", 0.01, 4.0);
const RISE: Symbol = limited("H", Measure::In(&FOOT), "height of the faucet over the drink", 0.1, 100.0);
const LENGTH: Symbol = limited("L", Measure::In(&FOOT), "length of the tube", 0.1, 300.0);
const HARDWARE: Symbol =
    limited("h", Measure::In(&PSI), "what faucet, shank and other lengths of tube take", 0.0, 20.0);
const LIFTED: Symbol = limited("w", Measure::In(&PSI), "what the rise takes", 0.0, 20.0);
const RANGE: &str = "handbooks differ by a factor of 2 to 4 for one bore, and from physics by 0.5 to 2.9: not an uncertainty, another convention";

/// What the rise takes by the trade.
pub static HANDBOOK_LIFT: Equation = Equation {
    id: "handbook_lift",
    title: "pressure that the rise takes, by the trade",
    formula: "w = 0.5*H",
    result: LIFTED,
    inputs: &[RISE],
    uncertainty_percent: None,
    uncertainty: "rounded up by the trade: beer takes 0.44",
    sources: &[&DRAUGHT_MANUAL, &DISPENSE_HANDBOOK],
    standing: Standing::Published,
    kernel: |x| LIFT * x[0],
};

/// The length of tube.
pub static HANDBOOK_LENGTH: Equation = Equation {
    id: "handbook_length",
    title: "length of the tube, by the trade",
    formula: "L = (P - w - h)/R",
    result: LENGTH,
    inputs: &[PRESSURE, LIFTED, HARDWARE, TOLD],
    uncertainty_percent: None,
    uncertainty: RANGE,
    sources: &[&DRAUGHT_MANUAL, &DISPENSE_HANDBOOK],
    standing: Standing::Published,
    kernel: |x| (x[0] - x[1] - x[2]) / x[3],
};

/// The pressure for a length.
pub static HANDBOOK_PRESSURE: Equation = Equation {
    id: "handbook_pressure",
    title: "pressure that the line takes, by the trade",
    formula: "P = R*L + w + h",
    result: PRESSURE,
    inputs: &[TOLD, LENGTH, LIFTED, HARDWARE],
    uncertainty_percent: None,
    uncertainty: RANGE,
    sources: &[&DRAUGHT_MANUAL, &DISPENSE_HANDBOOK],
    standing: Standing::Published,
    kernel: |x| x[0] * x[1] + x[2] + x[3],
};

#[derive(Clone, Copy)]
struct Balance;

impl Kernel<4, 3> for Balance {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 4] = [Key::Gauge, Key::Resistance, Key::Rise, Key::Hardware];
    #[inline(always)]
    fn eval(&self, [gauge, told, rise, hardware]: [f64; 4], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let lifted = steps.step(&HANDBOOK_LIFT, &[rise], LIFT * rise);
        let length = (gauge - lifted - hardware) / told;
        let most = Key::Line.limits().unwrap_or_default().1;
        // A resistance of nothing divides by nothing.
        let beyond = !((length >= 0.0) & (length <= most));
        let length = steps.step(&HANDBOOK_LENGTH, &[gauge, lifted, hardware, told], length);
        ([length, lifted, told], if beyond { code::OUT_OF_REACH } else { 0 })
    }
    fn explain(&self, _: i32, [gauge, told, rise, hardware]: [f64; 4]) -> Error {
        const TAKEN: &str = "rise and hardware take it all before any line; lower the faucet, or raise the keg (the pressure belongs to the carbonation)";
        const LONG: &str = "so little resistance takes a longer line than is answered: take a narrower tube";
        let taken = LIFT * rise + hardware;
        if gauge < taken {
            return Error::OutOfReach { parameter: Name::first(Key::Gauge), value: gauge, limit: taken, advice: TAKEN };
        }
        let limit = (gauge - taken) / Key::Line.limits().unwrap_or_default().1;
        Error::OutOfReach { parameter: Name::first(Key::Resistance), value: told, limit, advice: LONG }
    }
}

#[derive(Clone, Copy)]
struct Applied;

/// Pressure, rise, line.
#[inline(always)]
fn applied([length, told, rise, hardware]: [f64; 4], steps: &mut impl Steps) -> [f64; 3] {
    let lifted = steps.step(&HANDBOOK_LIFT, &[rise], LIFT * rise);
    let gauge = told * length + lifted + hardware;
    let gauge = steps.step(&HANDBOOK_PRESSURE, &[told, length, lifted, hardware], gauge);
    [gauge, lifted, told * length]
}

impl Kernel<4, 3> for Applied {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 4] = [Key::Line, Key::Resistance, Key::Rise, Key::Hardware];
    #[inline(always)]
    fn eval(&self, x: [f64; 4], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let values = applied(x, steps);
        let (low, high) = Key::Gauge.limits().unwrap_or_default();
        let [gauge, ..] = values;
        (values, if (gauge < low) | (gauge > high) { code::OUT_OF_REACH } else { 0 })
    }
    fn explain(&self, _: i32, x: [f64; 4]) -> Error {
        const ADVICE: &str = "that is no pressure of this trade: check the length, the resistance, and their units";
        let (low, high) = Key::Gauge.limits().unwrap_or_default();
        let [gauge, ..] = applied(x, &mut NoSteps);
        let limit = if gauge < low { low } else { high };
        Error::OutOfReach { parameter: Name::first(Key::Gauge), value: gauge, limit, advice: ADVICE }
    }
}

/// Hands the kernel of the length to a visitor.
pub(crate) fn visit<V: Visit<4, 3>>(visitor: V) -> V::Output {
    visitor.visit(Balance)
}

/// Hands the kernel of the pressure to a visitor.
pub(crate) fn visit_pressure<V: Visit<4, 3>>(visitor: V) -> V::Output {
    visitor.visit(Applied)
}

/// A line by the trade's balance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HandbookLine {
    /// Length of the tube.
    pub length: Length,
    /// What the rise takes.
    pub lift: PressureDifference,
}

/// The length of a tube of `resistance` (Pa/m, by the handbook) that takes up the pressure in the keg: the trade's balance, meant
/// for 2 US fluid ounces in a second.
///
/// ```
/// use carb_core::evidence::NoSteps;
/// use carb_core::kegging::handbook_line::handbook_line;
/// use carb_core::quantity::unit::PSI_PER_FOOT;
/// use carb_core::quantity::{GaugePressure, Length, PressureDifference};
/// let none = PressureDifference::from_psi(0.0);
/// let vinyl = PSI_PER_FOOT.to_si(3.0);
/// let (line, _) = handbook_line(GaugePressure::from_psi(11.0), vinyl, Length::from_ft(2.0), none, &mut NoSteps)?;
/// assert_eq!(format!("{:.2} ft", line.length.ft()), "3.33 ft");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a value lies outside its limits, rise and hardware take more than there is, or the line is longer than is answered.
pub fn handbook_line(
    gauge: GaugePressure,
    resistance: f64,
    rise: Length,
    hardware: PressureDifference,
    steps: &mut impl Steps,
) -> Result<(HandbookLine, Notes), Error> {
    let mut notes = Notes::default();
    let x = [gauge.si(), resistance, rise.si(), hardware.si()];
    let [length, lift, _] = visit(Once { x, steps: &mut Both(&mut notes, steps) })?;
    let value = HandbookLine { length: Length::from_si(length), lift: PressureDifference::from_si(lift) };
    Ok((value, notes))
}

/// What a line takes by the trade's balance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HandbookPressure {
    /// All of it.
    pub gauge: GaugePressure,
    /// By the rise.
    pub lift: PressureDifference,
    /// By the tube.
    pub line: PressureDifference,
}

/// The pressure that a tube of `resistance` (Pa/m, by the handbook) takes up over a length: the reverse of [`handbook_line`].
///
/// # Errors
/// Where a value lies outside its limits, or the pressure is none of this trade.
pub fn handbook_pressure(
    length: Length,
    resistance: f64,
    rise: Length,
    hardware: PressureDifference,
    steps: &mut impl Steps,
) -> Result<(HandbookPressure, Notes), Error> {
    let mut notes = Notes::default();
    let x = [length.si(), resistance, rise.si(), hardware.si()];
    let [gauge, lift, line] = visit_pressure(Once { x, steps: &mut Both(&mut notes, steps) })?;
    let [lift, line] = [lift, line].map(PressureDifference::from_si);
    Ok((HandbookPressure { gauge: GaugePressure::from_si(gauge), lift, line }, notes))
}
