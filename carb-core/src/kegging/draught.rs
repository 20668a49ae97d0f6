//! The draught line by physics: what it pours, how long it has to be, which pressure it takes.

use super::pour::{Flowing, Lengths, Taking};
use crate::basis::answer::Both;
use crate::basis::kernel::{Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::Error;
use crate::evidence::{Notes, Steps};
use crate::quantity::{
    Bore, Flow, GaugePressure, Length, Multiplier, PressureDifference, ShortTime, SpecificGravity, Temperature,
    Velocity, Volume,
};

/// What a pour is told by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pour {
    /// The drink that flows.
    Flow(Flow),
    /// The time in which the glass is full.
    Time(ShortTime),
}

/// A draught line and the drink in it, but for its length and its pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Draught {
    /// Inner diameter of the line.
    pub bore: Bore,
    /// Height of the faucet over the drink in the keg; below 0 where it is lower.
    pub rise: Length,
    /// Losses of fittings and faucet, in velocity heads of the line: [`super::line::USUAL_FITTINGS`] at home.
    pub fittings: Multiplier,
    /// What one pour is: a US pint, 16 US fluid ounces, where nothing else is said.
    pub glass: Volume,
    /// Temperature of the drink in the line.
    pub temperature: Temperature,
    /// Its specific gravity, where it was read; else it follows from the composition.
    pub gravity: Option<SpecificGravity>,
    /// Its viscosity over that of water, where it is known; else it is usual for the drink.
    pub relative_viscosity: Option<Multiplier>,
}

/// What is poured where nothing else is said: 16 US fluid ounces, m3.
pub const USUAL_GLASS: f64 = crate::quantity::unit::US_FLUID_OUNCE.to_si(16.0);

impl Draught {
    /// A line of this bore with fittings and pour as usual, the faucet at the height of the drink.
    pub fn new(bore: Bore, temperature: Temperature) -> Self {
        Self {
            bore,
            rise: Length::from_si(0.0),
            fittings: Multiplier::from_si(super::line::USUAL_FITTINGS),
            glass: Volume::from_si(USUAL_GLASS),
            temperature,
            gravity: None,
            relative_viscosity: None,
        }
    }

    /// The kernels' columns, SI, behind these two.
    pub(crate) fn columns(&self, first: f64, second: f64, context: &Context) -> [f64; 11] {
        let [t, sg, abv, extract, relative] =
            super::liquid::columns(self.temperature, self.gravity, self.relative_viscosity, context);
        let [bore, rise] = [self.bore.si(), self.rise.si()];
        [first, second, bore, rise, self.fittings.si(), self.glass.si(), t, sg, abv, extract, relative]
    }
}

/// Hands the kernel of the flow to a visitor.
pub(crate) fn visit_flow<V: Visit<11, 6>>(read: bool, visitor: V) -> V::Output {
    visitor.visit(Flowing { read })
}
/// Hands the kernel of the length to a visitor.
pub(crate) fn visit_length<V: Visit<11, 7>>(timed: bool, read: bool, visitor: V) -> V::Output {
    if timed { visitor.visit(Lengths::<true> { read }) } else { visitor.visit(Lengths::<false> { read }) }
}
/// Hands the kernel of the pressure to a visitor.
pub(crate) fn visit_pressure<V: Visit<11, 8>>(timed: bool, read: bool, visitor: V) -> V::Output {
    if timed { visitor.visit(Taking::<true> { read }) } else { visitor.visit(Taking::<false> { read }) }
}

/// What flows, and how.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Poured {
    /// The flow.
    pub flow: Flow,
    /// The time of one pour.
    pub time: ShortTime,
    /// The speed in the line.
    pub speed: Velocity,
    /// The Reynolds number: below 2000 laminar, above 4000 turbulent.
    pub reynolds: f64,
    /// Pressure lost per length of line, Pa/m.
    pub resistance: f64,
    /// The drink that stands in the line.
    pub content: Volume,
}

/// The line for a pour.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LineFound {
    /// Its length.
    pub length: Length,
    /// What flows through it.
    pub poured: Poured,
}

/// The pressure that a line takes, and what takes it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Taken {
    /// All of it: what the keg has to have.
    pub gauge: GaugePressure,
    /// By the rise.
    pub lift: PressureDifference,
    /// By the tube.
    pub line: PressureDifference,
    /// By fittings and faucet.
    pub fittings: PressureDifference,
    /// The flow.
    pub flow: Flow,
    /// The time of one pour.
    pub time: ShortTime,
    /// The speed in the line.
    pub speed: Velocity,
    /// The Reynolds number.
    pub reynolds: f64,
}

/// What a keg at a gauge pressure pours through a line of a length.
///
/// ```
/// use carb_core::basis::{Ambient, Beverage, Context, Kind};
/// use carb_core::evidence::NoSteps;
/// use carb_core::kegging::draught::{Draught, line_flow};
/// use carb_core::quantity::{Bore, GaugePressure, Length, Temperature};
/// let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
/// let mut line = Draught::new(Bore::from_in(0.1875), Temperature::from_c(4.0));
/// line.rise = Length::from_ft(2.0);
/// let found = line_flow(GaugePressure::from_psi(11.0), Length::from_ft(10.0), &line, &here, &mut NoSteps)?;
/// assert_eq!(format!("{:.0} s", found.value.time.seconds()), "12 s");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a value lies outside its limits, the pressure does not lift the drink to the faucet, or hardly anything holds it
/// back.
pub fn line_flow(
    gauge: GaugePressure,
    length: Length,
    line: &Draught,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Poured>, Error> {
    let mut notes = Notes::default();
    let x = line.columns(gauge.si(), length.si(), context);
    let once = Once { x, steps: &mut Both(&mut notes, steps) };
    let [flow, time, speed, reynolds, resistance, content] = visit_flow(line.gravity.is_some(), once)?;
    context.beverage.note_composition(&mut notes.cautions);
    let value = Poured {
        flow: Flow::from_si(flow),
        time: ShortTime::from_si(time),
        speed: Velocity::from_si(speed),
        reynolds,
        resistance,
        content: Volume::from_si(content),
    };
    Ok(Answer { value, context: *context, notes })
}

/// The length of line through which a keg at a gauge pressure pours as wanted.
///
/// # Errors
/// Where a value lies outside its limits, the pressure does not lift the drink to the faucet, even no line at all lets less
/// through, or the line is longer than is answered.
pub fn line_length(
    gauge: GaugePressure,
    pour: Pour,
    line: &Draught,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<LineFound>, Error> {
    let mut notes = Notes::default();
    let (timed, told) = pour.told();
    let x = line.columns(gauge.si(), told, context);
    let once = Once { x, steps: &mut Both(&mut notes, steps) };
    let [length, content, flow, time, speed, reynolds, resistance] = visit_length(timed, line.gravity.is_some(), once)?;
    context.beverage.note_composition(&mut notes.cautions);
    let poured = Poured {
        flow: Flow::from_si(flow),
        time: ShortTime::from_si(time),
        speed: Velocity::from_si(speed),
        reynolds,
        resistance,
        content: Volume::from_si(content),
    };
    Ok(Answer { value: LineFound { length: Length::from_si(length), poured }, context: *context, notes })
}

/// The gauge pressure that a line takes at a pour: to compare with the one that holds the carbonation, which comes first.
///
/// # Errors
/// Where a value lies outside its limits, or the pressure is beyond every keg.
pub fn line_pressure(
    length: Length,
    pour: Pour,
    line: &Draught,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Taken>, Error> {
    let mut notes = Notes::default();
    let (timed, told) = pour.told();
    let x = line.columns(length.si(), told, context);
    let once = Once { x, steps: &mut Both(&mut notes, steps) };
    let [gauge, lift, lost, held, flow, time, speed, reynolds] = visit_pressure(timed, line.gravity.is_some(), once)?;
    context.beverage.note_composition(&mut notes.cautions);
    let [lift, tube, fittings] = [lift, lost, held].map(PressureDifference::from_si);
    let value = Taken {
        gauge: GaugePressure::from_si(gauge),
        lift,
        line: tube,
        fittings,
        flow: Flow::from_si(flow),
        time: ShortTime::from_si(time),
        speed: Velocity::from_si(speed),
        reynolds,
    };
    Ok(Answer { value, context: *context, notes })
}

impl Pour {
    /// Whether it is told by its time, and the number, SI.
    pub(crate) fn told(self) -> (bool, f64) {
        match self {
            Pour::Flow(flow) => (false, flow.si()),
            Pour::Time(time) => (true, time.si()),
        }
    }
}
