//! What two gravities say: real extract, attenuation, alcohol; and what is still to come of the gravity that is left.

use super::gravity::told;
use super::priming::{EXTRACT_CO2, extract_co2};
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::error::{Error, code};
use crate::evidence::caution::{above, below};
use crate::evidence::{Notes, Steps};
use crate::property::attenuation::{self, RealExtractModel};
use crate::property::fermentable;
use crate::property::gravity::Scale;
use crate::quantity::{Carbonation, Concentration, Key, Name, Percent, Plato, SpecificGravity};

/// A gravity as it was read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reading {
    /// On the scale of specific gravity, 20/20 °C.
    Sg(SpecificGravity),
    /// In degrees Plato.
    Plato(Plato),
}

impl Reading {
    pub(crate) fn si(self) -> f64 {
        match self {
            Reading::Sg(sg) => sg.si(),
            Reading::Plato(plato) => plato.si(),
        }
    }
}

/// Gravity and extract of a column, which is a gravity or, where `PLATO`, an extract; the working is told.
#[inline(always)]
pub(crate) fn both<const PLATO: bool>(scale: Scale, column: f64, steps: &mut impl Steps) -> (f64, f64, i32) {
    let sg = if PLATO { scale.specific_gravity(column) } else { column };
    let (extract, bits) = told(scale, sg, steps);
    (sg, if PLATO { column } else { extract }, bits)
}

/// A reading that lies outside what another one leaves possible.
pub(crate) fn between(parameter: Key, value: f64, low: f64, high: f64) -> Error {
    Error::OutOfRange { parameter: Name::first(parameter), value, low, high }
}

/// A limit found in both scales, in the scale of the reading that it limits.
pub(crate) fn in_scale<const PLATO: bool>(scale: Scale, by_plato: bool, limit: f64) -> f64 {
    let sg = if by_plato { scale.specific_gravity(limit) } else { limit };
    if PLATO { if by_plato { limit } else { scale.plato(sg) } } else { sg }
}

#[derive(Clone, Copy)]
struct Fermented<const FROM: bool, const NOW: bool> {
    scale: Scale,
    model: RealExtractModel,
}

impl<const FROM: bool, const NOW: bool> Kernel<2, 7> for Fermented<FROM, NOW> {
    const COLUMNS: [Key; 2] = [
        if FROM { Key::OriginalPlato } else { Key::OriginalGravity },
        if NOW { Key::CurrentPlato } else { Key::CurrentGravity },
    ];
    #[inline(always)]
    fn eval(&self, [from, now]: [f64; 2], steps: &mut impl Steps) -> ([f64; 7], i32) {
        use attenuation::*;
        let (original_sg, original, bits) = both::<FROM>(self.scale, from, steps);
        let (sg, apparent, more) = both::<NOW>(self.scale, now, steps);
        let seems = steps.step(&APPARENT_ATTENUATION, &[original, apparent], apparent_attenuation(original, apparent));
        let balling = steps.step(&REAL_EXTRACT, &[original, apparent], real_extract(original, apparent));
        let (real, share) = match self.model {
            RealExtractModel::Balling => {
                let share = real_attenuation(original, balling);
                (balling, steps.step(&REAL_ATTENUATION, &[original, balling], share))
            }
            RealExtractModel::Quotient => {
                let share = quotient_attenuation(original, apparent);
                steps.record(&QUOTIENT_ATTENUATION, &[original, apparent], share);
                let left = extract_left(original, share);
                (steps.step(&EXTRACT_LEFT, &[original, share], left), share)
            }
        };
        let abw = steps.step(&ALCOHOL_BY_MASS, &[original, balling], alcohol_by_mass(original, balling));
        let abv = steps.step(&ALCOHOL_BY_VOLUME, &[abw, sg], alcohol_by_volume(abw, sg));
        let quick = steps.step(&QUICK_ALCOHOL, &[original_sg, sg], quick_alcohol(original_sg, sg));
        let per_litre = steps.step(&EXTRACT_PER_LITRE, &[real, sg], extract_per_litre(real, sg));
        let told = steps.within(&attenuation::ORIGINAL_EXTRACT, original);
        // Neither more extract than there was, nor less than nothing.
        let impossible = above(apparent, original) | (real < 0.0);
        let status = if impossible { code::OUT_OF_RANGE } else { bits | more | told };
        ([real, seems, share, abw, abv, quick, per_litre], status)
    }
    fn explain(&self, _: i32, [from, now]: [f64; 2]) -> Error {
        let original = if FROM { from } else { self.scale.plato(from) };
        let driest = in_scale::<NOW>(self.scale, true, self.model.driest(original));
        between(Self::COLUMNS[1], now, driest, in_scale::<NOW>(self.scale, FROM, from))
    }
}

/// Hands the kernel to a visitor; the flags say which readings are in degrees Plato.
pub(crate) fn visit<V: Visit<2, 7>>(plato: [bool; 2], scale: Scale, model: RealExtractModel, visitor: V) -> V::Output {
    match plato {
        [false, false] => visitor.visit(Fermented::<false, false> { scale, model }),
        [false, true] => visitor.visit(Fermented::<false, true> { scale, model }),
        [true, false] => visitor.visit(Fermented::<true, false> { scale, model }),
        [true, true] => visitor.visit(Fermented::<true, true> { scale, model }),
    }
}

/// What two gravities say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Attenuation {
    /// Extract with the alcohol taken away.
    pub real_extract: Plato,
    /// Share of the extract that seems fermented.
    pub apparent: Percent,
    /// Share of the extract that was fermented.
    pub real: Percent,
    /// Alcohol by mass.
    pub abw: Percent,
    /// Alcohol by volume.
    pub abv: Percent,
    /// Alcohol by volume by the quick form of the trade.
    pub quick_abv: Percent,
    /// Real extract per litre of drink: what a [`crate::basis::Beverage`] takes.
    pub extract: Concentration,
}

/// The readings' columns, and which of them are in degrees Plato.
pub(crate) fn columns(readings: [Reading; 2]) -> ([f64; 2], [bool; 2]) {
    (readings.map(Reading::si), readings.map(|reading| matches!(reading, Reading::Plato(_))))
}

/// Real extract, attenuation and alcohol from the gravity before fermentation and the gravity now.
///
/// ```
/// use carb_core::bottling::attenuation::{Reading, attenuation};
/// use carb_core::evidence::NoSteps;
/// use carb_core::property::attenuation::RealExtractModel;
/// use carb_core::property::gravity::Scale;
/// use carb_core::quantity::SpecificGravity;
/// let [original, now] = [1.048, 1.010].map(|sg| Reading::Sg(SpecificGravity::from_sg(sg)));
/// let (found, _) = attenuation(original, now, Scale::Asbc, RealExtractModel::Balling, &mut NoSteps)?;
/// assert_eq!(format!("{:.2} % vol", found.abv.percent()), "5.02 % vol");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a gravity lies outside its limits, or the gravity now above the original one.
pub fn attenuation(
    original: Reading,
    current: Reading,
    scale: Scale,
    model: RealExtractModel,
    steps: &mut impl Steps,
) -> Result<(Attenuation, Notes), Error> {
    let mut notes = Notes::default();
    let (x, plato) = columns([original, current]);
    let once = Once { x, steps: &mut Both(&mut notes, steps) };
    let [real_extract, apparent, real, abw, abv, quick, extract] = visit(plato, scale, model, once)?;
    let percent = Percent::from_si;
    let found = Attenuation {
        real_extract: Plato::from_si(real_extract),
        apparent: percent(apparent),
        real: percent(real),
        abw: percent(abw),
        abv: percent(abv),
        quick_abv: percent(quick),
        extract: Concentration::from_si(extract),
    };
    Ok((found, notes))
}

#[derive(Clone, Copy)]
struct Coming<const NOW: bool, const END: bool>(Scale);

impl<const NOW: bool, const END: bool> Kernel<2, 3> for Coming<NOW, END> {
    const COLUMNS: [Key; 2] = [
        if NOW { Key::CurrentPlato } else { Key::CurrentGravity },
        if END { Key::FinalPlato } else { Key::FinalGravity },
    ];
    #[inline(always)]
    fn eval(&self, [now, end]: [f64; 2], steps: &mut impl Steps) -> ([f64; 3], i32) {
        use attenuation::*;
        let (sg, apparent, bits) = both::<NOW>(self.0, now, steps);
        let (_, last, more) = both::<END>(self.0, end, steps);
        let left = steps.step(&FERMENTABLE_LEFT, &[apparent, last, sg], fermentable_left(apparent, last, sg));
        let balling = steps.step(&BALLING_YIELD, &[left], balling_co2(left));
        let y = steps.step(&fermentable::THEORETICAL_YIELD, &[0.0, 1.0, 0.0], fermentable::extract_yield());
        let theory = steps.step(&EXTRACT_CO2, &[y, 100.0, 1.0, left], extract_co2(y, 100.0, 1.0, left));
        let status = if left < -1e-9 { code::OUT_OF_RANGE } else { bits | more };
        ([left, balling, theory], status)
    }
    fn explain(&self, _: i32, [now, end]: [f64; 2]) -> Error {
        let low = Self::COLUMNS[1].limits().unwrap_or_default().0;
        between(Self::COLUMNS[1], end, low, in_scale::<END>(self.0, NOW, now))
    }
}

/// Hands the kernel to a visitor; the flags say which readings are in degrees Plato.
pub(crate) fn visit_coming<V: Visit<2, 3>>(plato: [bool; 2], scale: Scale, visitor: V) -> V::Output {
    match plato {
        [false, false] => visitor.visit(Coming::<false, false>(scale)),
        [false, true] => visitor.visit(Coming::<false, true>(scale)),
        [true, false] => visitor.visit(Coming::<true, false>(scale)),
        [true, true] => visitor.visit(Coming::<true, true>(scale)),
    }
}

/// What is still to come of the gravity that is left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ComingCo2 {
    /// Extract that will ferment.
    pub fermentable: Concentration,
    /// CO2 of it by Balling's yield: what is to be expected.
    pub balling: Carbonation,
    /// CO2 of it by the theory for maltose, without what yeast growth takes.
    pub theory: Carbonation,
}

/// Extract that ferments, and CO2 that it makes, while the gravity falls from what it is now to its end.
///
/// # Errors
/// Where a gravity lies outside its limits, or the end above the gravity now.
pub fn gravity_co2(
    current: Reading,
    end: Reading,
    scale: Scale,
    steps: &mut impl Steps,
) -> Result<(ComingCo2, Notes), Error> {
    let mut notes = Notes::default();
    let (x, plato) = columns([current, end]);
    let [left, balling, theory] = visit_coming(plato, scale, Once { x, steps: &mut Both(&mut notes, steps) })?;
    let [balling, theory] = [balling, theory].map(Carbonation::from_si);
    Ok((ComingCo2 { fermentable: Concentration::from_si(left), balling, theory }, notes))
}

#[derive(Clone, Copy)]
struct Ended<const FROM: bool>(Scale);

impl<const FROM: bool> Kernel<2, 2> for Ended<FROM> {
    const COLUMNS: [Key; 2] = [if FROM { Key::OriginalPlato } else { Key::OriginalGravity }, Key::ExpectedAttenuation];
    #[inline(always)]
    fn eval(&self, [from, expected]: [f64; 2], steps: &mut impl Steps) -> ([f64; 2], i32) {
        use attenuation::*;
        let (_, original, bits) = both::<FROM>(self.0, from, steps);
        let end = steps.step(&ATTENUATED, &[original, expected], attenuated(original, expected));
        // More than everything cannot ferment.
        let driest = RealExtractModel::Balling.driest(original);
        let status =
            if below(end, driest) { code::OUT_OF_RANGE } else { bits | steps.within(&ORIGINAL_EXTRACT, original) };
        ([self.0.specific_gravity(end), end], status)
    }
    fn explain(&self, _: i32, [from, expected]: [f64; 2]) -> Error {
        let original = if FROM { from } else { self.0.plato(from) };
        let most = attenuation::apparent_attenuation(original, RealExtractModel::Balling.driest(original));
        let low = Key::ExpectedAttenuation.limits().unwrap_or_default().0;
        between(Key::ExpectedAttenuation, expected, low, most)
    }
}

/// Hands the kernel to a visitor; the flag says whether the original reading is in degrees Plato.
pub(crate) fn visit_end<V: Visit<2, 2>>(plato: bool, scale: Scale, visitor: V) -> V::Output {
    if plato { visitor.visit(Ended::<true>(scale)) } else { visitor.visit(Ended::<false>(scale)) }
}

/// The kernel's columns, and whether the original reading is in degrees Plato.
pub(crate) fn end_columns(original: Reading, expected: Percent) -> ([f64; 2], bool) {
    ([original.si(), expected.si()], matches!(original, Reading::Plato(_)))
}

/// The gravity at which a fermentation ends, from the attenuation expected of it: as specific gravity and extract.
///
/// # Errors
/// Where a value lies outside its limits, or more than all extract would have to ferment.
pub fn final_gravity(
    original: Reading,
    expected: Percent,
    scale: Scale,
    steps: &mut impl Steps,
) -> Result<(super::gravity::Gravity, Notes), Error> {
    let mut notes = Notes::default();
    let (x, plato) = end_columns(original, expected);
    let [sg, extract] = visit_end(plato, scale, Once { x, steps: &mut Both(&mut notes, steps) })?;
    let gravity =
        super::gravity::Gravity { specific_gravity: SpecificGravity::from_si(sg), plato: Plato::from_si(extract) };
    Ok((gravity, notes))
}
