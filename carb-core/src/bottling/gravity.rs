//! A gravity reading in both of its scales.

use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::error::Error;
use crate::evidence::{Notes, Steps};
use crate::property::gravity::{self, Scale};
use crate::quantity::{Key, Name, Plato, SpecificGravity};

/// A gravity in both scales.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gravity {
    /// Specific gravity 20/20 °C.
    pub specific_gravity: SpecificGravity,
    /// Extract.
    pub plato: Plato,
}

#[derive(Clone, Copy)]
struct FromSg(Scale);

#[derive(Clone, Copy)]
struct FromPlato(Scale);

/// The extract of a gravity, told, and the range cautions.
#[inline(always)]
pub(crate) fn told(scale: Scale, sg: f64, steps: &mut impl Steps) -> (f64, i32) {
    let bits = steps.within(&gravity::TABLE, sg);
    (steps.step(scale.equation(), &[sg], scale.plato(sg)), bits)
}

impl Kernel<1, 2> for FromSg {
    const COLUMNS: [Key; 1] = [Key::Gravity];
    #[inline(always)]
    fn eval(&self, [sg]: [f64; 1], steps: &mut impl Steps) -> ([f64; 2], i32) {
        let (plato, bits) = told(self.0, sg, steps);
        ([sg, plato], bits)
    }
    fn explain(&self, _: i32, _: [f64; 1]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Gravity) }
    }
}

impl Kernel<1, 2> for FromPlato {
    const COLUMNS: [Key; 1] = [Key::Plato];
    #[inline(always)]
    fn eval(&self, [plato]: [f64; 1], steps: &mut impl Steps) -> ([f64; 2], i32) {
        let sg = self.0.specific_gravity(plato);
        let (_, bits) = told(self.0, sg, steps);
        ([sg, plato], bits)
    }
    fn explain(&self, _: i32, _: [f64; 1]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Plato) }
    }
}

/// Hands the kernel for a specific gravity to a visitor.
pub(crate) fn visit_sg<V: Visit<1, 2>>(scale: Scale, visitor: V) -> V::Output {
    visitor.visit(FromSg(scale))
}

/// Hands the kernel for degrees Plato to a visitor.
pub(crate) fn visit_plato<V: Visit<1, 2>>(scale: Scale, visitor: V) -> V::Output {
    visitor.visit(FromPlato(scale))
}

/// Degrees Plato of a specific gravity.
///
/// # Errors
/// Where the gravity lies outside its limits.
pub fn from_sg(sg: SpecificGravity, scale: Scale, steps: &mut impl Steps) -> Result<(Gravity, Notes), Error> {
    let mut notes = Notes::default();
    let [sg, plato] = visit_sg(scale, Once { x: [sg.si()], steps: &mut Both(&mut notes, steps) })?;
    Ok((Gravity { specific_gravity: SpecificGravity::from_si(sg), plato: Plato::from_si(plato) }, notes))
}

/// Specific gravity of degrees Plato.
///
/// # Errors
/// Where the extract lies outside its limits.
pub fn from_plato(plato: Plato, scale: Scale, steps: &mut impl Steps) -> Result<(Gravity, Notes), Error> {
    let mut notes = Notes::default();
    let [sg, plato] = visit_plato(scale, Once { x: [plato.si()], steps: &mut Both(&mut notes, steps) })?;
    Ok((Gravity { specific_gravity: SpecificGravity::from_si(sg), plato: Plato::from_si(plato) }, notes))
}
