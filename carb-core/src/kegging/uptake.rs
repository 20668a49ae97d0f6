//! How fast a drink takes up CO2, or gives it off: the rate, from how drink and gas meet.

use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::bottling::conditioning::Span;
use crate::error::Error;
use crate::evidence::{Notes, Steps};
use crate::property::carbonating::{
    self, DEPTH, METHODS, Method, STILL_RATE, STIRRED_RATE, TEMPERATURE, USUAL_DIAMETER, USUAL_VOLUME, WARMTH,
};
use crate::property::{liquid, water};
use crate::quantity::{Key, Length, MassFlow, Name, Rate, Temperature, Volume};

/// How drink and gas meet, and what more sets the pace.
#[derive(Clone, Copy, Debug)]
pub struct Uptake {
    /// The method.
    pub method: &'static Method,
    /// Drink in the keg.
    pub packaged: Volume,
    /// Inner diameter of the keg, standing.
    pub diameter: Length,
    /// The rate, where it is known from readings: it is taken as it is, at every temperature.
    pub kla: Option<Rate>,
    /// The most CO2 that comes in, where the regulator sets the pace.
    pub supply: Option<MassFlow>,
}

impl Default for Uptake {
    /// A standing keg of 19 L, full.
    fn default() -> Self {
        Self {
            method: METHODS[0],
            packaged: Volume::from_si(USUAL_VOLUME),
            diameter: Length::from_si(USUAL_DIAMETER),
            kla: None,
            supply: None,
        }
    }
}

impl Uptake {
    /// What the kernels go by.
    pub(crate) fn how(&self) -> How {
        let Method { of_still, expected, least, most, .. } = *self.method;
        let factors = [expected, least, most];
        How { factors, of_still, own: self.kla.is_some(), limited: self.supply.is_some() }
    }

    /// The kernels' columns, SI: drink, diameter, rate, supply. What is not given is not looked at.
    pub(crate) fn columns(&self) -> [f64; 4] {
        let kla = self.kla.map_or(Key::Kla.limits().unwrap_or_default().0, Rate::si);
        let supply = self.supply.map_or(Key::Supply.limits().unwrap_or_default().1, MassFlow::si);
        [self.packaged.si(), self.diameter.si(), kla, supply]
    }
}

/// How the rate is found, the same for all elements of an array.
#[derive(Clone, Copy)]
pub(crate) struct How {
    factors: [f64; 3],
    of_still: bool,
    own: bool,
    /// Whether the supply is limited.
    pub limited: bool,
}

impl How {
    /// Rates (1/s) as expected, of the slow end, and of the fast end; and the range bits.
    #[inline(always)]
    pub fn rates(self, [t, volume, diameter, kla]: [f64; 4], steps: &mut impl Steps) -> ([f64; 3], i32) {
        if self.own {
            return ([kla; 3], 0);
        }
        let thin = steps.step(&water::VISCOSITY, &[t], water::viscosity(t));
        let warmth = steps.step(&WARMTH, &[thin], carbonating::warmth(thin));
        let bits = steps.within(&TEMPERATURE, t) | steps.within(&liquid::TEMPERATURE, t);
        if self.of_still {
            let rates = self.factors.map(|factor| {
                let x = [factor, warmth, diameter, volume];
                steps.step(&STILL_RATE, &x, carbonating::still_rate(factor, warmth, diameter, volume))
            });
            return (rates, bits | steps.within(&DEPTH, carbonating::depth(diameter, volume)));
        }
        (self.factors.map(|base| steps.step(&STIRRED_RATE, &[base, warmth], base * warmth)), bits)
    }
}

#[derive(Clone, Copy)]
struct Speed(How);

impl Kernel<4, 3> for Speed {
    const COLUMNS: [Key; 4] = [Key::Temperature, Key::Packaged, Key::KegDiameter, Key::Kla];
    #[inline(always)]
    fn eval(&self, x: [f64; 4], steps: &mut impl Steps) -> ([f64; 3], i32) {
        self.0.rates(x, steps)
    }
    fn explain(&self, _: i32, _: [f64; 4]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Kla) }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<4, 3>>(how: How, visitor: V) -> V::Output {
    visitor.visit(Speed(how))
}

/// The kernel's columns, SI.
pub(crate) fn columns(temperature: Temperature, uptake: &Uptake) -> [f64; 4] {
    let [volume, diameter, kla, _] = uptake.columns();
    [temperature.si(), volume, diameter, kla]
}

/// The rate of first order at which a drink comes to its equilibrium with the gas: as expected, at the slow end (`least`)
/// and at the fast end (`most`). A rate of one's own is all three.
///
/// ```
/// use carb_core::basis::{Ambient, Beverage, Context, Kind};
/// use carb_core::evidence::NoSteps;
/// use carb_core::kegging::uptake::{Uptake, uptake_rate};
/// use carb_core::quantity::Temperature;
/// let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
/// let rate = uptake_rate(Temperature::from_c(4.0), &Uptake::default(), &here, &mut NoSteps)?;
/// assert_eq!(format!("{:.4}", rate.value.expected.per_h()), "0.0152");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a value lies outside its limits.
pub fn uptake_rate(
    temperature: Temperature,
    uptake: &Uptake,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Span<Rate>>, Error> {
    let mut notes = Notes::default();
    let x = columns(temperature, uptake);
    let rates = visit(uptake.how(), Once { x, steps: &mut Both(&mut notes, steps) })?;
    let [expected, least, most] = rates.map(Rate::from_si);
    Ok(Answer { value: Span { expected, least, most }, context: *context, notes })
}
