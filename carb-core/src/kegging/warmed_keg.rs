//! A keg, or a growler, that was sealed in equilibrium at one temperature and stands at another.

use super::rating::note_rating;
use crate::balance::sealed::{self, Closed, LEAST_GAS, Sealed};
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::bottling::package::{Ferments, Keeping, Package, PackagePressure, package};
use crate::bottling::priming::at_least;
use crate::error::{Error, code};
use crate::evidence::{Notes, Steps};
use crate::property::solubility::Solubility;
use crate::property::water;
use crate::quantity::{AbsolutePressure, Carbonation, GaugePressure, Key, Name};

#[derive(Clone, Copy)]
struct Warmed<S> {
    package: Package<S>,
    ferments: Ferments,
}

impl<S: Solubility> Kernel<9, 5> for Warmed<S> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 9] = [
        Key::Carbonation,
        Key::Fermentable,
        Key::HeadspaceAir,
        Key::Temperature,
        Key::Headspace,
        Key::Filling,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
    ];
    #[inline(always)]
    fn eval(&self, [dissolved, matter, air, mut rest @ ..]: [f64; 9], steps: &mut impl Steps) -> ([f64; 5], i32) {
        // What is fermentable is part of the extract.
        rest[5] = at_least(rest[5], matter);
        let [_, headspace, filling, _, abv, extract] = rest;
        // The vessel counts what was sealed in with its moisture; the air is told without.
        let sealed_in = if air == 0.0 { 0.0 } else { air + water::vapour_pressure(filling) };
        let (here, bits) = self.package.solubility.here(filling, abv, extract, steps);
        let vessel = Sealed::new(here, Closed { headspace, filling, air: sealed_in }, filling, steps);
        let co2 = vessel.co2_pressure(dissolved);
        let (total, told) = vessel.total(co2, steps);
        let contents = self.ferments.contents(vessel.content(co2), matter, steps);
        let (values, status) = self.package.pressures(contents, sealed_in, rest, steps);
        let found = if status < 0 { status } else { bits | told | status };
        let high = if total > sealed::MOST { code::PRESSURE_TOO_HIGH } else { found };
        (values, if vessel.gas < LEAST_GAS { code::VESSEL_FULL } else { high })
    }
    fn explain(&self, status: i32, [dissolved, _, _, rest @ ..]: [f64; 9]) -> Error {
        let [_, headspace, filling, ..] = rest;
        if status == code::VESSEL_FULL && 1.0 + headspace / 100.0 - 1.0 < LEAST_GAS {
            return Error::VesselFull { parameter: Name::first(Key::Filling), value: filling };
        }
        self.package.explain(status, dissolved, rest)
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<9, 5>>(context: &Context, visitor: V) -> V::Output {
    let solubility = context.solubility();
    visitor.visit(Warmed { package: Package::new(solubility, context), ferments: Ferments::of(context) })
}

/// The kernel's columns, SI.
pub(crate) fn columns(
    carbonation: Carbonation,
    keeping: &Keeping,
    air: AbsolutePressure,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<[f64; 9], Error> {
    let drink = context.beverage;
    Ok([
        carbonation.si(),
        drink.fermentable_matter()?,
        air.si(),
        keeping.temperature.si(),
        keeping.headspace.si(),
        keeping.filling.si(),
        context.ambient(steps)?,
        drink.abv(),
        drink.extract(),
    ])
}

/// The pressure in a keg that was sealed at its filling temperature, in equilibrium and with `carbonation` dissolved, and
/// that is now warmer or colder.
///
/// The worst case takes the lower of two solubilities, 8 % more CO2, all the air of an unpurged headspace, and the full
/// yield of what is still fermentable. `air` is the partial pressure of what air was really left, when it was sealed: that
/// of the air outside for a growler, which is no pressure vessel.
///
/// ```
/// use carb_core::basis::{Ambient, Beverage, Context, Kind};
/// use carb_core::bottling::package::Keeping;
/// use carb_core::evidence::NoSteps;
/// use carb_core::kegging::warmed_keg::warmed_keg;
/// use carb_core::quantity::{AbsolutePressure, Carbonation, GaugePressure, Percent, Temperature};
/// let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
/// let keeping = Keeping {
///     filling: Temperature::from_c(3.3),
///     temperature: Temperature::from_c(25.0),
///     headspace: Percent::from_percent(3.5),
/// };
/// let (co2, none) = (Carbonation::from_volumes(2.5), AbsolutePressure::from_si(0.0));
/// let rating = Some(GaugePressure::from_bar(9.0));
/// let keg = warmed_keg(co2, &keeping, none, rating, &here, &mut NoSteps)?;
/// assert_eq!(format!("{:.1}", keg.value.expected.gauge.psi()), "34.5");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, what is still fermentable is not known, or
/// the liquid fills the keg.
pub fn warmed_keg(
    carbonation: Carbonation,
    keeping: &Keeping,
    air: AbsolutePressure,
    rating: Option<GaugePressure>,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PackagePressure>, Error> {
    let mut notes = Notes::default();
    let x = columns(carbonation, keeping, air, context, &mut Both(&mut notes, steps))?;
    let values = visit(context, Once { x, steps: &mut Both(&mut notes, steps) })?;
    context.beverage.note_finished(&mut notes.cautions);
    context.note_model(&mut notes.cautions);
    note_rating(values[3], rating, &mut notes.cautions);
    // A keg is a vessel, whatever the basis leaves out of a dose.
    let mut context = *context;
    context.basis.count_headspace = true;
    Ok(Answer { value: package(values), context, notes })
}
