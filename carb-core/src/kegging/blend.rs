//! Two drinks blended: the CO2 of the mix, and what of it stays.

use crate::balance::pressure;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::{BLEND_LOSES, Caution, above};
use crate::evidence::equation::{Equation, Measure, Standing, Symbol, limited};
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::solubility::{Here, Solubility};
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, GRAM, LITRE};
use crate::quantity::{Carbonation, GaugePressure, Key, Mass, Name, Temperature, Volume};

const CO2: Measure = Measure::In(&CO2_GRAMS_PER_LITRE);
const MIXED: Symbol = limited("C", CO2, "CO2 of the mix", 0.0, 15.0);
const KEPT: Symbol = limited("k", CO2, "CO2 that stays", 0.0, 15.0);
const BLENDED: Symbol = limited("V", Measure::In(&LITRE), "volume of the mix", 0.1, 1000.0);
const ONE: Symbol = limited("A", Measure::In(&LITRE), "volume of the one drink", 0.1, 1000.0);
const OTHER: Symbol = limited("B", Measure::In(&LITRE), "volume of the other", 0.1, 1000.0);

/// Volume of the mix.
pub static VOLUME: Equation = Equation {
    id: "blend_volume",
    title: "volume of the mix",
    formula: "V = A + B",
    result: BLENDED,
    inputs: &[ONE, OTHER],
    uncertainty_percent: Some(0.5),
    uncertainty: "drinks of different strength shrink a little when they are mixed; drinks of one kind do not",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| x[0] + x[1],
};

/// CO2 of the mix.
pub static BLEND: Equation = Equation {
    id: "blend_carbonation",
    title: "CO2 of the mix",
    formula: "C = (A*a + B*b)/V",
    result: MIXED,
    inputs: &[
        ONE,
        limited("a", CO2, "CO2 of the one drink", 0.0, 15.0),
        OTHER,
        limited("b", CO2, "CO2 of the other", 0.0, 15.0),
        BLENDED,
    ],
    uncertainty_percent: None,
    uncertainty: "the mass balance: nothing is lost in blending",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| (x[0] * x[1] + x[2] * x[3]) / x[4],
};

/// What of it stays.
pub static STAYS: Equation = Equation {
    id: "blend_stays",
    title: "CO2 that stays in the mix",
    formula: "k = min(C, s)",
    result: KEPT,
    inputs: &[MIXED, limited("s", CO2, "CO2 at equilibrium with the gas over it", 0.0, 15.0)],
    uncertainty_percent: None,
    uncertainty: "where the mix stands long enough; a mix that holds less takes none up from the air",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0].min(x[1]),
};

/// What escapes.
pub static ESCAPES: Equation = Equation {
    id: "blend_escapes",
    title: "CO2 that escapes from the mix",
    formula: "m = V*(C - k)",
    result: limited("m", Measure::In(&GRAM), "CO2 that escapes", 0.0, f64::INFINITY),
    inputs: &[BLENDED, MIXED, KEPT],
    uncertainty_percent: None,
    uncertainty: "the mass balance",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] * (x[1] - x[2]),
};

/// Volume and CO2 of the mix.
#[inline(always)]
fn mix([one, a, other, b]: [f64; 4], steps: &mut impl Steps) -> [f64; 2] {
    let volume = steps.step(&VOLUME, &[one, other], one + other);
    let mixed = steps.step(&BLEND, &[one, a, other, b, volume], (one * a + other * b) / volume);
    [volume, mixed]
}

/// The most drink that is answered, m3: as that of every package.
const MOST: f64 = 1.0e3;

fn too_much(one: f64, other: f64) -> Error {
    const ADVICE: &str = "the mix is more drink than is answered: check the volumes, and their units";
    Error::OutOfReach {
        parameter: Name::first(Key::OtherVolume),
        value: other,
        limit: (MOST - one).max(0.0),
        advice: ADVICE,
    }
}

const PARTS: [Key; 4] = [Key::Packaged, Key::Carbonation, Key::OtherVolume, Key::OtherCarbonation];

/// Kept under pressure: all stays.
#[derive(Clone, Copy)]
struct Closed;

impl Kernel<4, 4> for Closed {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 4] = PARTS;
    #[inline(always)]
    fn eval(&self, x: [f64; 4], steps: &mut impl Steps) -> ([f64; 4], i32) {
        let [volume, mixed] = mix(x, steps);
        ([volume, mixed, mixed, 0.0], if volume > MOST { code::OUT_OF_REACH } else { 0 })
    }
    fn explain(&self, _: i32, [one, _, other, _]: [f64; 4]) -> Error {
        too_much(one, other)
    }
}

/// Under a gas.
#[derive(Clone, Copy)]
struct Under<S>(S);

impl<S: Solubility> Kernel<9, 4> for Under<S> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 9] = {
        let [a, b, c, d] = PARTS;
        [a, b, c, d, Key::Gauge, Key::Ambient, Key::Temperature, Key::Abv, Key::Extract]
    };
    #[inline(always)]
    fn eval(
        &self,
        [one, a, other, b, gauge, ambient, t, abv, extract]: [f64; 9],
        steps: &mut impl Steps,
    ) -> ([f64; 4], i32) {
        let [volume, mixed] = mix([one, a, other, b], steps);
        let total = pressure::absolute(gauge, ambient, steps);
        let (here, bits) = self.0.here(t, abv, extract, steps);
        let told = here.tell(total, 0.0, steps);
        let holds = here.dissolved_under(total);
        let kept = steps.step(&STAYS, &[mixed, holds], if mixed < holds { mixed } else { holds });
        let lost = steps.step(&ESCAPES, &[volume, mixed, kept], volume * (mixed - kept));
        let low = if holds < 0.0 { code::PRESSURE_TOO_LOW } else { bits | told };
        let pressed = if total > here.most() { code::PRESSURE_TOO_HIGH } else { low };
        ([volume, mixed, kept, lost], if volume > MOST { code::OUT_OF_REACH } else { pressed })
    }
    fn explain(&self, status: i32, [one, _, other, _, gauge, ambient, t, abv, extract]: [f64; 9]) -> Error {
        if status == code::OUT_OF_REACH {
            return too_much(one, other);
        }
        let parameter = Name::first(Key::Gauge);
        let (here, _) = self.0.here(t, abv, extract, &mut NoSteps);
        if status == code::PRESSURE_TOO_HIGH {
            return Error::PressureTooHigh { parameter, limit: here.most() };
        }
        Error::PressureTooLow { parameter, value: gauge, low: here.total_pressure(0.0) - ambient }
    }
}

/// Hands the kernel of what is kept under pressure to a visitor.
pub(crate) fn visit_closed<V: Visit<4, 4>>(visitor: V) -> V::Output {
    visitor.visit(Closed)
}

/// Hands the kernel of what stands under a gas to a visitor.
pub(crate) fn visit<V: Visit<9, 4>>(context: &Context, visitor: V) -> V::Output {
    let model = context.solubility();
    visitor.visit(Under(model))
}

/// Two drinks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Parts {
    /// Volume and CO2 of the one.
    pub one: (Volume, Carbonation),
    /// Volume and CO2 of the other.
    pub other: (Volume, Carbonation),
}

impl Parts {
    /// The first columns of both kernels.
    pub(crate) fn columns(&self) -> [f64; 4] {
        [self.one.0.si(), self.one.1.si(), self.other.0.si(), self.other.1.si()]
    }
}

/// Where the mix stands: at a temperature, under CO2 at a gauge pressure (0 where it is open).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// Its temperature.
    pub temperature: Temperature,
    /// The pressure over it.
    pub gauge: GaugePressure,
}

/// Columns of the kernel of what stands under a gas.
///
/// # Errors
/// Where nothing is said of the air outside.
pub(crate) fn columns(
    parts: &Parts,
    place: &Place,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<[f64; 9], Error> {
    let [one, a, other, b] = parts.columns();
    let ambient = context.ambient(steps)?;
    let drink = context.beverage;
    Ok([one, a, other, b, place.gauge.si(), ambient, place.temperature.si(), drink.abv(), drink.extract()])
}

/// A mix.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mix {
    /// Its volume.
    pub volume: Volume,
    /// Its CO2, right after blending.
    pub mixed: Carbonation,
    /// What of it stays.
    pub kept: Carbonation,
    /// What escapes.
    pub escapes: Mass,
}

/// The CO2 of two drinks blended into one; what stays of it where it is kept under pressure (all), or stands under a gas.
///
/// ```
/// use carb_core::basis::{Ambient, Beverage, Context, Kind};
/// use carb_core::evidence::NoSteps;
/// use carb_core::kegging::blend::{Parts, blend};
/// use carb_core::quantity::{Carbonation, Volume};
/// let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
/// let parts = Parts {
///     one: (Volume::from_l(15.0), Carbonation::from_volumes(2.8)),
///     other: (Volume::from_l(5.0), Carbonation::from_volumes(0.8)),
/// };
/// let mix = blend(&parts, None, &here, &mut NoSteps)?;
/// assert_eq!(format!("{:.2}", mix.value.mixed.volumes()), "2.30");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a value lies outside its limits, or nothing is said of the air outside a mix under a gas.
pub fn blend(
    parts: &Parts,
    place: Option<&Place>,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Mix>, Error> {
    let mut notes = Notes::default();
    let watch = &mut Both(&mut notes, steps);
    let [volume, mixed, kept, escapes] = match place {
        None => visit_closed(Once { x: parts.columns(), steps: watch })?,
        Some(place) => {
            let x = columns(parts, place, context, watch)?;
            visit(context, Once { x, steps: watch })?
        }
    };
    if place.is_some() {
        context.note_model(&mut notes.cautions);
    }
    if above(mixed, kept) {
        notes.cautions.add(Caution { kind: &BLEND_LOSES, value: mixed, limit: kept });
    }
    let value = Mix {
        volume: Volume::from_si(volume),
        mixed: Carbonation::from_si(mixed),
        kept: Carbonation::from_si(kept),
        escapes: Mass::from_si(escapes),
    };
    Ok(Answer { value, context: *context, notes })
}
