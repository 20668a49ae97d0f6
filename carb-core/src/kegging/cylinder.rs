//! What a cylinder of CO2 holds while there is liquid in it.

use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::error::Error;
use crate::evidence::{Notes, Steps};
use crate::property::co2_saturation::{self, liquid_density, pressure, vapour_density};
use crate::quantity::{AbsolutePressure, Density, Key, Name, Temperature};

#[derive(Clone, Copy)]
struct Saturation;

impl Kernel<1, 3> for Saturation {
    const COLUMNS: [Key; 1] = [Key::Cylinder];
    #[inline(always)]
    fn eval(&self, [t]: [f64; 1], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let p = steps.step(&co2_saturation::PRESSURE, &[t], pressure(t));
        let liquid = steps.step(&co2_saturation::LIQUID_DENSITY, &[t], liquid_density(t));
        let vapour = steps.step(&co2_saturation::VAPOUR_DENSITY, &[t], vapour_density(t));
        ([p, liquid, vapour], steps.within(&co2_saturation::TEMPERATURE, t))
    }
    fn explain(&self, _: i32, _: [f64; 1]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Cylinder) }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<1, 3>>(visitor: V) -> V::Output {
    visitor.visit(Saturation)
}

/// Liquid CO2 and the vapour over it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Saturated {
    /// Their pressure, absolute, as long as there is liquid, however much; a gauge shows an atmosphere less.
    pub pressure: AbsolutePressure,
    /// Density of the liquid.
    pub liquid: Density,
    /// Density of the vapour.
    pub vapour: Density,
}

/// Pressure and densities of CO2 in a cylinder that still holds liquid.
///
/// # Errors
/// Where the temperature lies below the triple or above the critical point, where there is no liquid.
pub fn co2_saturation(temperature: Temperature, steps: &mut impl Steps) -> Result<(Saturated, Notes), Error> {
    let mut notes = Notes::default();
    let x = [temperature.si()];
    let [p, liquid, vapour] = visit(Once { x, steps: &mut Both(&mut notes, steps) })?;
    let [liquid, vapour] = [liquid, vapour].map(Density::from_si);
    Ok((Saturated { pressure: AbsolutePressure::from_si(p), liquid, vapour }, notes))
}
