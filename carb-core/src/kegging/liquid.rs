//! The drink as it flows: density, viscosity, diffusivity of CO2.

use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::Error;
use crate::evidence::{Notes, Steps};
use crate::property::{liquid, water};
use crate::quantity::{Density, Diffusivity, Key, Multiplier, Name, SpecificGravity, Temperature, Viscosity};

/// Density (kg/m3) and viscosity (Pa s) from the kernel's columns, and their range cautions; `read` says whether the
/// gravity was read, else it follows from the composition.
#[inline(always)]
pub(crate) fn flowing(
    read: bool,
    [t, sg, abv, extract, relative]: [f64; 5],
    steps: &mut impl Steps,
) -> ([f64; 2], i32) {
    let mut sg = sg;
    if !read {
        sg = steps.step(&liquid::GRAVITY_OF_COMPOSITION, &[extract, abv], liquid::gravity(abv, extract));
    }
    let of_water = steps.step(&water::DENSITY, &[t], water::density(t));
    let density = steps.step(&liquid::DENSITY, &[sg, of_water, abv, t], liquid::density(t, of_water, sg, abv));
    let thin = steps.step(&water::VISCOSITY, &[t], water::viscosity(t));
    let viscosity = steps.step(&liquid::VISCOSITY, &[relative, thin], relative * thin);
    let bits = steps.within(&liquid::TEMPERATURE, t) | steps.within(&liquid::DENSITY_ALCOHOL, abv);
    ([density, viscosity], bits | steps.within(&liquid::DENSITY_TEMPERATURE, t))
}

#[derive(Clone, Copy)]
struct Liquid {
    /// Whether the gravity was read; else it follows from the composition.
    read: bool,
}

impl Kernel<5, 3> for Liquid {
    const COLUMNS: [Key; 5] = [Key::Temperature, Key::Gravity, Key::Abv, Key::Extract, Key::RelativeViscosity];
    #[inline(always)]
    fn eval(&self, [t, sg, abv, extract, relative]: [f64; 5], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let ([density, viscosity], bits) = flowing(self.read, [t, sg, abv, extract, relative], steps);
        let fast = steps.step(&liquid::DIFFUSIVITY_WATER, &[t], liquid::diffusivity(t));
        let diffusivity = steps.step(&liquid::DIFFUSIVITY, &[fast, relative], fast / relative);
        ([density, viscosity, diffusivity], bits)
    }
    fn explain(&self, _: i32, _: [f64; 5]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Temperature) }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<5, 3>>(read: bool, visitor: V) -> V::Output {
    visitor.visit(Liquid { read })
}

/// A drink as it flows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LiquidProperties {
    /// Density, without dissolved CO2.
    pub density: Density,
    /// Dynamic viscosity.
    pub viscosity: Viscosity,
    /// Diffusivity of CO2.
    pub diffusivity: Diffusivity,
}

/// The kernel's columns, SI; the viscosity usual for the drink, where none is given.
pub(crate) fn columns(
    temperature: Temperature,
    gravity: Option<SpecificGravity>,
    relative: Option<Multiplier>,
    context: &Context,
) -> [f64; 5] {
    let (abv, extract) = (context.beverage.abv(), context.beverage.extract());
    let usual = context.beverage.kind.relative_viscosity();
    let sg = gravity.map_or(1.0, SpecificGravity::si);
    [temperature.si(), sg, abv, extract, relative.map_or(usual, Multiplier::si)]
}

/// Density, viscosity and diffusivity of CO2 of a drink.
///
/// # Errors
/// Where a value lies outside its limits.
pub fn drink_properties(
    temperature: Temperature,
    gravity: Option<SpecificGravity>,
    relative_viscosity: Option<Multiplier>,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<LiquidProperties>, Error> {
    let mut notes = Notes::default();
    let x = columns(temperature, gravity, relative_viscosity, context);
    let once = Once { x, steps: &mut Both(&mut notes, steps) };
    let [density, viscosity, diffusivity] = visit(gravity.is_some(), once)?;
    context.beverage.note_composition(&mut notes.cautions);
    let value = LiquidProperties {
        density: Density::from_si(density),
        viscosity: Viscosity::from_si(viscosity),
        diffusivity: Diffusivity::from_si(diffusivity),
    };
    Ok(Answer { value, context: *context, notes })
}
