//! The pressure in a sealed package: expected, and at its worst.
//!
//! The worst case takes every uncertain thing at its unfavourable end: the lower of two solubilities, 8 % more CO2
//! from fermentation, the full theoretical yield of every sugar, and all the air that was sealed in.
//!
//! What is fermentable counts as dissolved matter throughout, though it turns into alcohol: that errs on the safe side,
//! by a few percent of the pressure for a drink left sweet.

use super::glass::Glass;
use super::priming::{EXTRACT_CO2, at_least, extract_co2};
use crate::balance::pressure::{self, Pressure};
use crate::balance::sealed::{self, Closed, Sealed};
use crate::balance::visit_solubility;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Ambient, Answer, Basis, Beverage, Context, Kind, Yeast};
use crate::error::{Error, code};
use crate::evidence::caution::{
    CARBONATION_DANGER, CARBONATION_HIGH, Caution, Cautions, FERMENTABLE_DANGER, FERMENTABLE_LEFT, HEATED_GLASS,
    PRESSURE_DANGER, PRESSURE_HIGH, above,
};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::bottle::{Class, HEAVIER, LIGHT};
use crate::property::constant::STANDARD_ATMOSPHERE;
use crate::property::fermentable;
use crate::property::solubility::composition::Factor;
use crate::property::solubility::henry::Weiss;
use crate::property::solubility::water_core::WaterCore;
use crate::property::solubility::{Here, Solubility};
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, PASCAL, VOLUMES};
use crate::quantity::{AbsolutePressure, Carbonation, GaugePressure, Key, Name, Percent, Temperature};

/// How much more CO2 than the model says a drink may have kept; judgement.
pub const RESIDUAL_MARGIN: f64 = 1.08;

/// CO2 in the worst case, where the parts are known.
pub static WORST_CO2: Equation = Equation {
    id: "worst_co2",
    title: "CO2 in the worst case",
    formula: "c = 1.08*r + s + e",
    result: symbol("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in the package, per litre of drink as filled"),
    inputs: &[
        limited(
            "r",
            Measure::In(&CO2_GRAMS_PER_LITRE),
            "larger of the two residual models, or the CO2 stated",
            0.0,
            30.0,
        ),
        limited("s", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 from the sugar, full theoretical yield", 0.0, 30.0),
        limited(
            "e",
            Measure::In(&CO2_GRAMS_PER_LITRE),
            "CO2 from what is still fermentable, full theoretical yield",
            0.0,
            30.0,
        ),
    ],
    uncertainty_percent: None,
    uncertainty: "a bound on the safe side, not an estimate",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| worst_co2(x[0], x[1], x[2]),
};

/// CO2 in the worst case; kg/m3.
#[inline(always)]
pub(crate) fn worst_co2(residual: f64, sugar: f64, extract: f64) -> f64 {
    RESIDUAL_MARGIN * residual + sugar + extract
}

/// CO2 in the package as the balance expects it, where the parts are known.
pub static EXPECTED_CO2: Equation = Equation {
    id: "expected_co2",
    title: "CO2 expected in the package",
    formula: "c = r + s + e",
    result: symbol("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in the package, per litre of drink as filled"),
    inputs: &[
        symbol("r", Measure::In(&CO2_GRAMS_PER_LITRE), "residual CO2, or the CO2 stated"),
        symbol("s", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 from the sugar"),
        symbol("e", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 from what is still fermentable"),
    ],
    uncertainty_percent: None,
    uncertainty: "exact: it is conservation of mass",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] + x[1] + x[2],
};

/// The worst case is never better than what is expected: the wine relation, carried far beyond its range, would make it
/// so.
pub static WORST_PRESSURE: Equation = Equation {
    id: "worst_pressure",
    title: "pressure in the worst case",
    formula: "W = max(w, P)",
    result: symbol("W", Measure::In(&PASCAL), "pressure in the worst case, absolute"),
    inputs: &[
        limited("w", Measure::In(&PASCAL), "pressure by the least favourable solubility, absolute", 0.0, 3.0e6),
        limited("P", Measure::In(&PASCAL), "pressure expected, absolute", 0.0, 3.0e6),
    ],
    uncertainty_percent: None,
    uncertainty: "a bound on the safe side, not an estimate",
    sources: &[],
    standing: Standing::Judgement,
    kernel: |x| at_least(x[0], x[1]),
};

/// CO2 in a package, per litre of drink as filled, liquid and gas together; kg/m3.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contents {
    /// As the balance expects it.
    pub expected: f64,
    /// In the worst case.
    pub worst: f64,
}

/// The two vessels: expected without air, or with what is known to be there, and worst with all of it.
#[derive(Clone, Copy)]
pub(crate) struct Package<S> {
    pub(crate) solubility: S,
    /// Factor on the solubility in the worst case: the caller's where that lowers it, else 1.
    worst_factor: f64,
}

impl<S> Package<S> {
    pub(crate) fn new(solubility: S, context: &Context) -> Self {
        Self { solubility, worst_factor: context.basis.solubility_factor.min(1.0) }
    }
}

impl<S: Solubility> Package<S> {
    /// The pressures of the two, where `air` (Pa, with its moisture) was known to be sealed in.
    #[inline(always)]
    pub(crate) fn pressures(
        &self,
        contents: Contents,
        air: f64,
        [t, headspace, filling, ambient, abv, extract]: [f64; 6],
        steps: &mut impl Steps,
    ) -> ([f64; 5], i32) {
        let (here, bits) = self.solubility.here(t, abv, extract, steps);
        let vessel = Sealed::new(here, Closed { headspace, filling, air }, t, steps);
        let (co2, solved) = vessel.solve(contents.expected);
        let (absolute, told) = vessel.total(co2, steps);
        let gauge = pressure::gauge(absolute, ambient, steps);

        let unfavourable = WaterCore { law: Weiss, composition: Factor::Unfavourable, factor: self.worst_factor };
        let (worst_here, more) = unfavourable.here(t, abv, extract, steps);
        let all = at_least(ambient, air);
        let worst_vessel = Sealed::new(worst_here, Closed { headspace, filling, air: all }, t, steps);
        let (worst_co2, worst_solved) = worst_vessel.solve(contents.worst);
        let (unfavourable, worst_told) = worst_vessel.total(worst_co2, steps);
        let worst_absolute = steps.step(&WORST_PRESSURE, &[unfavourable, absolute], at_least(unfavourable, absolute));
        let worst_gauge = pressure::gauge(worst_absolute, ambient, steps);

        let range = bits | told | more | worst_told;
        let failed = if solved < worst_solved { solved } else { worst_solved };
        let status = if failed < 0 { failed } else { range };
        ([gauge, absolute, vessel.dissolved(co2), worst_gauge, worst_absolute], status)
    }

    pub(crate) fn explain(&self, status: i32, content: f64, [t, _, _, _, abv, extract]: [f64; 6]) -> Error {
        let parameter = Name::first(Key::Carbonation);
        match status {
            code::VESSEL_FULL => Error::VesselFull { parameter: Name::first(Key::Temperature), value: t },
            code::TARGET_BELOW_HELD => {
                let (here, _) = self.solubility.here(t, abv, extract, &mut NoSteps);
                Error::TargetBelowHeld {
                    parameter,
                    value: content,
                    held: here.dissolved(0.0, 0.0),
                    remedy: "this solubility model holds that much under vapour alone; take model=\"water_core\"",
                }
            }
            code::PRESSURE_TOO_HIGH => Error::PressureTooHigh { parameter, limit: sealed::MOST },
            _ => Error::NotConverged { parameter },
        }
    }
}

/// The package whose contents are known in full.
#[derive(Clone, Copy)]
struct OfContents<S>(Package<S>);

impl<S: Solubility> Kernel<8, 5> for OfContents<S> {
    const COLUMNS: [Key; 8] = [
        Key::Carbonation,
        Key::Carbonation,
        Key::Temperature,
        Key::Headspace,
        Key::Filling,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
    ];
    #[inline(always)]
    fn eval(&self, [expected, worst, rest @ ..]: [f64; 8], steps: &mut impl Steps) -> ([f64; 5], i32) {
        self.0.pressures(Contents { expected, worst }, 0.0, rest, steps)
    }
    fn explain(&self, status: i32, [content, _, rest @ ..]: [f64; 8]) -> Error {
        self.0.explain(status, content, rest)
    }
}

/// What living yeast makes of what is still fermentable.
#[derive(Clone, Copy)]
pub(crate) struct Ferments {
    /// 1 with living yeast, 0 without: then what is fermentable stays as it is.
    live: f64,
    yield_percent: f64,
    yield_factor: f64,
    /// Yield in the worst case, percent of theory.
    most_percent: f64,
}

impl Ferments {
    pub(crate) fn of(context: &Context) -> Self {
        let basis = &context.basis;
        Self {
            live: if context.beverage.yeast == Yeast::Live { 1.0 } else { 0.0 },
            yield_percent: basis.yield_percent,
            yield_factor: basis.yield_factor,
            most_percent: basis.most_yield(),
        }
    }

    /// The contents of a package in which so much CO2 (kg/m3) is stated, and so much is fermentable.
    #[inline(always)]
    pub(crate) fn contents(&self, stated: f64, matter: f64, steps: &mut impl Steps) -> Contents {
        let left = matter * self.live;
        let y = fermentable::extract_yield();
        let likely = extract_co2(y, self.yield_percent, self.yield_factor, left);
        let most = extract_co2(y, self.most_percent, 1.0, left);
        let contents = Contents { expected: stated + likely, worst: worst_co2(stated, 0.0, most) };
        if left != 0.0 {
            steps.record(&fermentable::THEORETICAL_YIELD, &[0.0, 1.0, 0.0], y);
            steps.record(&EXTRACT_CO2, &[y, self.yield_percent, self.yield_factor, left], likely);
            steps.record(&EXTRACT_CO2, &[y, self.most_percent, 1.0, left], most);
        }
        steps.record(&EXPECTED_CO2, &[stated, 0.0, likely], contents.expected);
        steps.record(&WORST_CO2, &[stated, 0.0, most], contents.worst);
        contents
    }
}

/// The package of a drink whose carbonation is stated.
#[derive(Clone, Copy)]
struct OfStated<S> {
    package: Package<S>,
    ferments: Ferments,
}

impl<S: Solubility> Kernel<8, 5> for OfStated<S> {
    const COLUMNS: [Key; 8] = [
        Key::Carbonation,
        Key::Fermentable,
        Key::Temperature,
        Key::Headspace,
        Key::Filling,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
    ];
    #[inline(always)]
    fn eval(&self, [stated, matter, mut rest @ ..]: [f64; 8], steps: &mut impl Steps) -> ([f64; 5], i32) {
        // What is fermentable is part of the extract.
        rest[5] = at_least(rest[5], matter);
        let contents = self.ferments.contents(stated, matter, steps);
        self.package.pressures(contents, 0.0, rest, steps)
    }
    fn explain(&self, status: i32, [content, _, rest @ ..]: [f64; 8]) -> Error {
        self.package.explain(status, content, rest)
    }
}

/// Hands the kernel for a stated carbonation to a visitor.
pub(crate) fn visit<V: Visit<8, 5>>(context: &Context, visitor: V) -> V::Output {
    visit_solubility!(visitor: V, context, solubility => OfStated {
        package: Package::new(solubility, context),
        ferments: Ferments::of(context),
    })
}

fn visit_contents<V: Visit<8, 5>>(context: &Context, visitor: V) -> V::Output {
    visit_solubility!(visitor: V, context, solubility => OfContents(Package::new(solubility, context)))
}

/// The pressure in a package: never one bare number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PackagePressure {
    /// As the balance expects it, without air.
    pub expected: Pressure,
    /// CO2 then dissolved in the drink.
    pub dissolved: Carbonation,
    /// In the worst case.
    pub worst: Pressure,
}

/// How a package is closed and kept.
#[derive(Clone, Copy, Debug)]
pub struct Keeping {
    /// Temperature at which it is kept.
    pub temperature: Temperature,
    /// Headspace at filling, percent of the liquid.
    pub headspace: Percent,
    /// Temperature at which it was closed.
    pub filling: Temperature,
}

/// Headspace where none is given, percent of the liquid; judgement from published bottle designs (3.5-4.5 %).
pub const USUAL_HEADSPACE: f64 = 4.0;

/// Filling temperature where none is given, K.
pub const USUAL_FILLING: f64 = 293.15;

/// Hottest store for which a margin is known, K; judgement.
pub const HOTTEST_STORE: f64 = 313.15;

/// One volume still to come is what turns an ordinary bottle into a dangerous one; judgement.
const DANGEROUS_EXTRA: f64 = VOLUMES.to_si(1.0);

/// Notes what the contents mean for glass: of the classes, a light and a heavier one, where they are to be looked at.
pub(crate) fn note_contents(
    classes: Option<(&Class, &Class)>,
    worst: f64,
    still_to_come: f64,
    cautions: &mut Cautions,
) {
    let caution = |kind, value, limit| Caution { kind, value, limit };
    if let Some((light, heavier)) = classes.map(|(a, b)| (VOLUMES.to_si(a.usual.1), VOLUMES.to_si(b.usual.1))) {
        if above(worst, heavier) {
            cautions.add(caution(&CARBONATION_DANGER, worst, heavier));
        } else if above(worst, light) {
            cautions.add(caution(&CARBONATION_HIGH, worst, light));
        }
    }
    if above(still_to_come, DANGEROUS_EXTRA) {
        cautions.add(Caution::of(&FERMENTABLE_DANGER, still_to_come));
    } else if still_to_come > 0.0 {
        cautions.add(Caution::of(&FERMENTABLE_LEFT, still_to_come));
    }
}

/// The pressure (Pa, gauge) that a class of bottle sees in usual use: at a carbonation (kg/m3), by the worst case, at
/// 40 °C. Judgement, for glass of which no rating is known.
pub(crate) fn usual_pressure(carbonation: f64) -> f64 {
    let beer = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD).with_basis(Basis::physical());
    let drink = beer.beverage;
    let x = [
        carbonation,
        carbonation,
        HOTTEST_STORE,
        USUAL_HEADSPACE,
        USUAL_FILLING,
        STANDARD_ATMOSPHERE,
        drink.abv(),
        drink.extract(),
    ];
    visit_contents(&beer, Once { x, steps: &mut NoSteps }).map_or(f64::INFINITY, |values: [f64; 5]| values[3])
}

/// Notes what the worst pressure means for glass of which neither class nor rating is known.
pub(crate) fn note_pressure(worst_gauge: f64, cautions: &mut Cautions) {
    // The usual case is settled by the first comparison.
    let light = usual_pressure(VOLUMES.to_si(LIGHT.usual.1));
    if !above(worst_gauge, light) {
        return;
    }
    let heavier = usual_pressure(VOLUMES.to_si(HEAVIER.usual.1));
    let (kind, limit) = if above(worst_gauge, heavier) { (&PRESSURE_DANGER, heavier) } else { (&PRESSURE_HIGH, light) };
    cautions.add(Caution { kind, value: worst_gauge, limit });
}

pub(crate) fn note_temperature(t: f64, cautions: &mut Cautions) {
    if above(t, HOTTEST_STORE) {
        cautions.add(Caution { kind: &HEATED_GLASS, value: t, limit: HOTTEST_STORE });
    }
}

pub(crate) fn columns(
    stated: f64,
    keeping: &Keeping,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<[f64; 8], Error> {
    let drink = context.beverage;
    Ok([
        stated,
        drink.fermentable_matter()?,
        keeping.temperature.si(),
        keeping.headspace.si(),
        keeping.filling.si(),
        context.ambient(steps)?,
        drink.abv(),
        drink.extract(),
    ])
}

pub(crate) fn package(values: [f64; 5]) -> PackagePressure {
    let [gauge, absolute, dissolved, worst_gauge, worst_absolute] = values;
    let both = |gauge, absolute| Pressure {
        gauge: GaugePressure::from_si(gauge),
        absolute: AbsolutePressure::from_si(absolute),
    };
    PackagePressure {
        expected: both(gauge, absolute),
        dissolved: Carbonation::from_si(dissolved),
        worst: both(worst_gauge, worst_absolute),
    }
}

/// Pressure in a sealed package of a drink whose carbonation is stated: CO2 in liquid and gas together, per litre of
/// drink as filled.
///
/// Nobody can say how much of a stated carbonation is sure, so the worst case adds 8 % to all of it.
///
/// # Errors
/// Where a value lies outside its limits, nothing is said of the air outside, what is still fermentable is not known,
/// or the liquid fills the package.
pub fn package_pressure(
    carbonation: Carbonation,
    keeping: &Keeping,
    glass: &Glass,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PackagePressure>, Error> {
    let mut notes = Notes::default();
    let x = columns(carbonation.si(), keeping, context, &mut Both(&mut notes, steps))?;
    let values = visit(context, Once { x, steps: &mut Both(&mut notes, steps) })?;
    context.beverage.note_finished(&mut notes.cautions);
    context.note_model(&mut notes.cautions);
    let left =
        extract_co2(fermentable::extract_yield(), context.basis.most_yield(), 1.0, context.beverage.fermentable()?);
    glass.note_contents(worst_co2(x[0], 0.0, left), left, &mut notes.cautions);
    glass.note_pressure(values[3], &mut notes.cautions);
    note_temperature(x[2], &mut notes.cautions);
    // A package is a vessel, whatever the basis leaves out of a dose.
    let mut context = *context;
    context.basis.count_headspace = true;
    Ok(Answer { value: package(values), context, notes })
}

/// The contents of a package whose carbonation (kg/m3) is stated.
///
/// # Errors
/// Where what is still fermentable is not known.
pub(crate) fn stated_contents(stated: f64, context: &Context) -> Result<Contents, Error> {
    let (left, basis) = (context.beverage.fermentable()?, &context.basis);
    let y = fermentable::extract_yield();
    let (likely, most) =
        (extract_co2(y, basis.yield_percent, basis.yield_factor, left), extract_co2(y, basis.most_yield(), 1.0, left));
    Ok(Contents { expected: stated + likely, worst: worst_co2(stated, 0.0, most) })
}

/// Pressure in a sealed package whose contents are known in full; the glass is judged where it is named.
///
/// # Errors
/// As [`package_pressure`].
pub fn pressure_of_contents(
    contents: Contents,
    keeping: &Keeping,
    glass: Option<&Glass>,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PackagePressure>, Error> {
    let mut notes = Notes::default();
    let mut x = columns(contents.expected, keeping, context, &mut Both(&mut notes, steps))?;
    x[1] = contents.worst;
    let values = visit_contents(context, Once { x, steps: &mut Both(&mut notes, steps) })?;
    if let Some(glass) = glass {
        glass.note_pressure(values[3], &mut notes.cautions);
    }
    note_temperature(x[2], &mut notes.cautions);
    // A package is a vessel, whatever the basis leaves out of a dose.
    let mut context = *context;
    context.basis.count_headspace = true;
    Ok(Answer { value: package(values), context, notes })
}
