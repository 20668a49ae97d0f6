//! A fermenter that is closed without a relief valve: the pressure that what is left to ferment makes.

use super::rating::note_rating;
use super::spunding::{CLOSED_CO2, Fermenting, Starts, in_all};
use crate::balance::sealed;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::bottling::attenuation::{Reading, between, both, in_scale};
use crate::bottling::package::{Contents, Package, PackagePressure, WORST_CO2, package, worst_co2};
use crate::bottling::priming::{EXTRACT_CO2, extract_co2};
use crate::error::{Error, code};
use crate::evidence::{Notes, Steps};
use crate::property::attenuation::{BALLING_YIELD, FERMENTABLE_LEFT, balling_co2, fermentable_left};
use crate::property::gravity::Scale;
use crate::property::solubility::Solubility;
use crate::property::{co2_gas, fermentable, water};
use crate::quantity::{GaugePressure, Key, Name};

#[derive(Clone, Copy)]
struct Shut<S, const NOW: bool, const END: bool> {
    package: Package<S>,
    starts: Starts,
    scale: Scale,
}

impl<S: Solubility, const NOW: bool, const END: bool> Kernel<8, 5> for Shut<S, NOW, END> {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 8] = [
        if NOW { Key::CurrentPlato } else { Key::CurrentGravity },
        if END { Key::FinalPlato } else { Key::FinalGravity },
        Key::Temperature,
        Key::FermenterHeadspace,
        Key::Start,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
    ];
    #[inline(always)]
    fn eval(&self, x: [f64; 8], steps: &mut impl Steps) -> ([f64; 5], i32) {
        let [now, end, t, headspace, measured, ambient, abv, extract] = x;
        let (sg, apparent, bits) = both::<NOW>(self.scale, now, steps);
        let (_, last, more) = both::<END>(self.scale, end, steps);
        let drink = [t, ambient, abv, extract];
        let (starts, held) = self.starts.held(self.package.solubility, measured, drink, steps);

        let ferments = fermentable_left(apparent, last, sg);
        steps.record(&FERMENTABLE_LEFT, &[apparent, last, sg], ferments);
        let made = steps.step(&BALLING_YIELD, &[ferments], balling_co2(ferments));
        let y = steps.step(&fermentable::THEORETICAL_YIELD, &[0.0, 1.0, 0.0], fermentable::extract_yield());
        let most = steps.step(&EXTRACT_CO2, &[y, 100.0, 1.0, ferments], extract_co2(y, 100.0, 1.0, ferments));

        let b = steps.step(&co2_gas::SECOND_VIRIAL, &[t], co2_gas::second_virial(t));
        let co2 = ambient - water::vapour_pressure(t);
        let gas = steps.step(&co2_gas::DENSITY, &[co2, t, b], co2_gas::density(co2, t, b));
        let expected = in_all(starts, headspace, gas, made);
        steps.record(&CLOSED_CO2, &[starts, headspace, gas, made], expected);
        // At worst the gas over the drink is air, which does not dissolve, and not CO2.
        let worst = steps.step(&WORST_CO2, &[starts, 0.0, most], worst_co2(starts, 0.0, most));

        let contents = Contents { expected, worst };
        let (values, status) = self.package.pressures(contents, 0.0, [t, headspace, t, ambient, abv, extract], steps);
        let range = if status < 0 { status } else { bits | more | held | status };
        let backwards = if ferments < -1e-9 { code::OUT_OF_RANGE } else { range };
        (values, if held < 0 { held } else { backwards })
    }
    fn explain(&self, status: i32, x: [f64; 8]) -> Error {
        let [now, end, t, headspace, measured, ambient, abv, extract] = x;
        match status {
            code::OUT_OF_RANGE if self.starts.too_warm(t) => Starts::refuse(t),
            code::OUT_OF_RANGE => {
                let low = Self::COLUMNS[1].limits().unwrap_or_default().0;
                between(Self::COLUMNS[1], end, low, in_scale::<END>(self.scale, NOW, now))
            }
            code::PRESSURE_TOO_HIGH => {
                Error::PressureTooHigh { parameter: Name::first(Self::COLUMNS[0]), limit: sealed::MOST }
            }
            _ => match self.package.explain(status, measured, [t, headspace, t, ambient, abv, extract]) {
                // What is too little for the model is the CO2 at the start.
                Error::TargetBelowHeld { value, held, remedy, .. } => {
                    Error::TargetBelowHeld { parameter: Name::first(Key::Start), value, held, remedy }
                }
                error => error,
            },
        }
    }
}

/// Hands the kernel to a visitor; the flags say which readings are in degrees Plato.
pub(crate) fn visit<V: Visit<8, 5>>(
    plato: [bool; 2],
    fermenting: &Fermenting,
    scale: Scale,
    context: &Context,
    visitor: V,
) -> V::Output {
    let starts = Starts::new(fermenting, context);
    let solubility = context.solubility();
    {
        let package = Package::new(solubility, context);
        match plato {
            [false, false] => visitor.visit(Shut::<_, false, false> { package, starts, scale }),
            [false, true] => visitor.visit(Shut::<_, false, true> { package, starts, scale }),
            [true, false] => visitor.visit(Shut::<_, true, false> { package, starts, scale }),
            [true, true] => visitor.visit(Shut::<_, true, true> { package, starts, scale }),
        }
    }
}

/// The kernel's columns, SI, and which readings are in degrees Plato.
pub(crate) fn columns(
    [now, end]: [Reading; 2],
    fermenting: &Fermenting,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<([f64; 8], [bool; 2]), Error> {
    let (drink, ambient) = (context.beverage, context.ambient(steps)?);
    let (t, headspace) = (fermenting.temperature.si(), fermenting.headspace.si());
    let start = fermenting.start.map_or(0.0, crate::quantity::Carbonation::si);
    let x = [now.si(), end.si(), t, headspace, start, ambient, drink.abv(), drink.extract()];
    Ok((x, [now, end].map(|reading| matches!(reading, Reading::Plato(_)))))
}

/// The pressure in a fermenter that was closed at the gravity `now` and has no relief valve, when its fermentation ends.
///
/// Expected by Balling's yield, with CO2 over the drink when it was closed. The worst case takes the theoretical yield, the
/// lower of two solubilities, 8 % more CO2 at the start, and air over the drink.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, the end lies above the gravity now, or the
/// pressure would be beyond every vessel.
pub fn closed_fermentation(
    now: Reading,
    end: Reading,
    fermenting: &Fermenting,
    scale: Scale,
    rating: Option<GaugePressure>,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PackagePressure>, Error> {
    let mut notes = Notes::default();
    let (x, plato) = columns([now, end], fermenting, context, &mut Both(&mut notes, steps))?;
    let once = Once { x, steps: &mut Both(&mut notes, steps) };
    let values = visit(plato, fermenting, scale, context, once)?;
    context.note_model(&mut notes.cautions);
    note_rating(values[3], rating, &mut notes.cautions);
    Ok(Answer { value: package(values), context: *context, notes })
}
