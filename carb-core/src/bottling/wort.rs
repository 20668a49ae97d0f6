//! Priming by volume: unfermented wort (gyle, Speise) or fermenting beer (kräusen).

use super::before::{Drink, Holds, closed, holds};
use super::priming::{Batch, at_least, extract_co2, note_before};
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::bottling::attenuation::Reading;
use crate::bottling::gravity::told;
use crate::error::{Error, code};
use crate::evidence::caution::{ASSUMED_SATURATED, Caution, SLACK, above};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::attenuation;
use crate::property::fermentable;
use crate::property::gravity::Scale;
use crate::property::solubility::AnySolubility;
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, FACTOR, GRAMS_PER_LITRE, LITRE, PERCENT};
use crate::quantity::{Carbonation, Key, Name, Percent, Volume};

/// Wort for the CO2 that is missing.
pub static WORT_SHARE: Equation = Equation {
    id: "priming_wort",
    title: "priming wort per volume of drink",
    formula: "s = 100*(c - r - e)/(y*q/100*k*F + g - c)",
    result: symbol("s", Measure::In(&PERCENT), "wort, percent of the drink's volume"),
    inputs: &[
        limited("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 wanted, per litre of drink as filled", 4.0, 8.0),
        symbol("r", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 left in the drink"),
        symbol("e", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 still to come from what is fermentable in the drink"),
        limited("y", Measure::Plain("g/g"), "theoretical CO2 per mass of extract", 0.48, 0.53),
        limited("q", Measure::In(&PERCENT), "CO2 really made, of the theoretical yield", 50.0, 105.0),
        limited("k", Measure::In(&FACTOR), "factor on the yield, 1 by default", 0.8, 1.2),
        limited("F", Measure::In(&GRAMS_PER_LITRE), "extract of the wort that ferments", 40.0, 150.0),
        symbol("g", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in the wort"),
    ],
    uncertainty_percent: None,
    uncertainty: "exact: it is conservation of mass over the blend",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| 100.0 * (x[0] - x[1] - x[2]) / (x[3] * x[4] / 100.0 * x[5] * x[6] + x[7] - x[0]),
};

/// The wort's volume.
pub static WORT_VOLUME: Equation = Equation {
    id: "priming_wort_volume",
    title: "priming wort for the batch",
    formula: "W = s/100*V",
    result: symbol("W", Measure::In(&LITRE), "wort"),
    inputs: &[
        symbol("s", Measure::In(&PERCENT), "wort, percent of the drink's volume"),
        symbol("V", Measure::In(&LITRE), "drink that reaches packages, the wort not counted"),
    ],
    uncertainty_percent: None,
    uncertainty: "exact",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| x[0] / 100.0 * x[1],
};

/// The wort that primes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wort {
    /// Its gravity before fermentation.
    pub original: Reading,
    /// Its gravity when it is added, where it ferments already (kräusen); none for fresh wort.
    pub current: Option<Reading>,
    /// Real degree of fermentation at which the drink's yeast ends in it.
    pub limit: Percent,
    /// CO2 in it; by default none in fresh wort, and in fermenting wort as much as the drink keeps.
    pub co2: Option<Carbonation>,
}

#[derive(Clone, Copy)]
struct WortPriming {
    drink: Drink<AnySolubility>,
    scale: Scale,
    /// Which readings are in degrees Plato.
    plato: [bool; 2],
    fresh: bool,
    /// Whether the CO2 of the wort was given, or none is in it.
    co2_known: bool,
}

impl WortPriming {
    /// Gravity and extract of a reading, and the range cautions.
    #[inline(always)]
    fn reading(&self, plato: bool, sg: f64, degrees: f64, steps: &mut impl Steps) -> (f64, f64, i32) {
        let sg = if plato { self.scale.specific_gravity(degrees) } else { sg };
        let (found, bits) = told(self.scale, sg, steps);
        (sg, if plato { degrees } else { found }, bits)
    }

    /// What ferments of the wort, kg/m3, and a status.
    #[inline(always)]
    fn fermentable(&self, [by_sg, by_plato, now_sg, now_plato, limit]: [f64; 5], steps: &mut impl Steps) -> (f64, i32) {
        let (original_sg, original, bits) = self.reading(self.plato[0], by_sg, by_plato, steps);
        let (mut sg, mut apparent, mut more) = (original_sg, original, 0);
        if !self.fresh {
            (sg, apparent, more) = self.reading(self.plato[1], now_sg, now_plato, steps);
        }
        let end = attenuation::limit_extract(original, limit);
        steps.record(&attenuation::LIMIT_EXTRACT, &[original, limit], end);
        let left = attenuation::fermentable_left(apparent, end, sg);
        steps.record(&attenuation::FERMENTABLE_LEFT, &[apparent, end, sg], left);
        let outside = above(apparent, original) | (left < 0.0);
        (left, if outside { code::OUT_OF_RANGE } else { bits | more })
    }
}

impl Kernel<20, 2> for WortPriming {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 20] = [
        Key::Carbonation,
        Key::Packaged,
        Key::Headspace,
        Key::Filling,
        Key::Room,
        Key::WortOriginalGravity,
        Key::WortOriginalPlato,
        Key::WortCurrentGravity,
        Key::WortCurrentPlato,
        Key::LimitAttenuation,
        Key::WortCo2,
        Key::Warmest,
        Key::Ambient,
        Key::Abv,
        Key::Extract,
        Key::Fermentable,
        Key::FermenterGauge,
        Key::Crash,
        Key::FermenterHeadspace,
        Key::Residual,
    ];
    #[inline(always)]
    fn eval(&self, x: [f64; 20], steps: &mut impl Steps) -> ([f64; 2], i32) {
        let [target, packaged, headspace, filling, room, o, o_plato, n, n_plato, limit, given, held @ ..] = x;
        let (mut held, wort): (Holds, _) = (held, [o, o_plato, n, n_plato, limit]);
        held[3] = at_least(held[3], held[4]);
        let (r, e, held_bits) = self.drink.held(held, steps);
        let (total, more) = self.drink.total(target, [headspace, filling, room], [held[2], held[3]], steps);
        let (left, wort_bits) = self.fermentable(wort, steps);
        let g = if self.co2_known { given } else { r };
        let (q, k) = (self.drink.yield_percent, self.drink.yield_factor);
        let y = steps.step(&fermentable::THEORETICAL_YIELD, &[0.0, 1.0, 0.0], fermentable::extract_yield());
        let gain = extract_co2(y, q, k, left) + g - total;
        let share = 100.0 * (total - r - e) / gain;
        steps.record(&WORT_SHARE, &[total, r, e, y, q, k, left, g], share);
        let volume = steps.step(&WORT_VOLUME, &[share, packaged], share / 100.0 * packaged);
        let range = held_bits | more | wort_bits;
        let bits = [held_bits, more, wort_bits].into_iter().find(|bits| *bits < 0).unwrap_or(range);
        let most = Key::WortShare.limits().unwrap_or_default().1;
        // Wort that makes no more than the blend has to hold never gets there.
        let weak = (gain <= 0.0) | (share > most);
        let status = if weak & (bits >= 0) { code::OUT_OF_RANGE } else { bits };
        let below = total - r - e < -SLACK * target;
        ([volume, share], if below & (bits >= 0) { code::TARGET_BELOW_HELD } else { status })
    }
    fn explain(&self, status: i32, x: [f64; 20]) -> Error {
        let [target, _, headspace, filling, room, o, o_plato, n, n_plato, limit, given, held @ ..] = x;
        let wort = [o, o_plato, n, n_plato, limit];
        let (left, wort_bits) = self.fermentable(wort, &mut NoSteps);
        let name = |sg: Key, plato: Key, by_plato: bool| if by_plato { plato } else { sg };
        if status == code::OUT_OF_RANGE && wort_bits < 0 {
            let original = if self.plato[0] { o_plato } else { self.scale.plato(o) };
            let (low, high) = (attenuation::limit_extract(original, limit), original);
            let key = name(Key::WortCurrentGravity, Key::WortCurrentPlato, self.plato[1]);
            let in_scale = |plato: f64| if self.plato[1] { plato } else { self.scale.specific_gravity(plato) };
            let value = if self.plato[1] { n_plato } else { n };
            return Error::OutOfRange { parameter: Name::first(key), value, low: in_scale(low), high: in_scale(high) };
        }
        if status == code::OUT_OF_RANGE && self.drink.held(held, &mut NoSteps).2 >= 0 {
            // What the wort makes of itself, and keeps: a blend that has to hold more never gets there.
            let (y, r) = (fermentable::extract_yield(), self.drink.held(held, &mut NoSteps).0);
            let made = extract_co2(y, self.drink.yield_percent, self.drink.yield_factor, left);
            let most = made + if self.co2_known { given } else { r };
            // Dissolved it is less by what the headspace takes; where the target is below even so, the share is absurd.
            let closed = [headspace, filling, room];
            let (dissolved, _) = self.drink.dissolved(most, closed, [held[2], held[3]], &mut NoSteps);
            let high = if dissolved < target { dissolved } else { target * (1.0 - SLACK) };
            return Error::OutOfRange { parameter: Name::first(Key::Carbonation), value: target, low: 0.0, high };
        }
        self.drink.explain(status, (Key::Carbonation, target), held, room)
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<20, 2>>(
    context: &Context,
    batch: &Batch,
    wort: &Wort,
    scale: Scale,
    visitor: V,
) -> V::Output {
    let plato = |reading: Option<Reading>| matches!(reading, Some(Reading::Plato(_)));
    let (fresh, plato) = (wort.current.is_none(), [plato(Some(wort.original)), plato(wort.current)]);
    let co2_known = wort.co2.is_some() || fresh;
    let drink = Drink::new(context.solubility(), context, &batch.before, batch.added);
    visitor.visit(WortPriming { drink, scale, plato, fresh, co2_known })
}

/// Wort that primes a drink.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PrimingWort {
    /// Wort for the batch.
    pub volume: Volume,
    /// The same in percent of the drink's volume.
    pub share: Percent,
}

/// How much unfermented wort, or fermenting beer, gives the CO2 wanted in the blend.
///
/// # Errors
/// As [`super::priming::priming_sugar`], and where the wort makes no more CO2 than the blend has to hold, or its gravity
/// lies outside what its original gravity and the limit allow.
pub fn priming_wort(
    target: Carbonation,
    batch: &Batch,
    wort: &Wort,
    scale: Scale,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PrimingWort>, Error> {
    let mut notes = Notes::default();
    let x = columns(target.si(), batch, wort, context, &mut Both(&mut notes, steps))?;
    let once = Once { x, steps: &mut Both(&mut notes, steps) };
    let [volume, share] = visit(context, batch, wort, scale, once)?;
    context.beverage.note_finished(&mut notes.cautions);
    note_before(&batch.before, context, &mut notes);
    if wort.current.is_some() && wort.co2.is_none() {
        let x: Holds = holds(&batch.before, context, &mut NoSteps)?;
        let held = Drink::new(context.solubility(), context, &batch.before, batch.added).held(x, &mut NoSteps).0;
        notes.cautions.add(Caution::of(&ASSUMED_SATURATED, held));
    }
    Ok(Answer {
        value: PrimingWort { volume: Volume::from_si(volume), share: Percent::from_si(share) },
        context: *context,
        notes,
    })
}

/// The kernel's columns, SI.
pub(crate) fn columns(
    target: f64,
    batch: &Batch,
    wort: &Wort,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<[f64; 20], Error> {
    let held = holds(&batch.before, context, steps)?;
    let [headspace, filling, room] = closed(&batch.conditioned);
    // What is not given takes a value that the kernel allows.
    let both = |reading: Option<Reading>, sg: Key, plato: Key| {
        let any = |key: Key| key.limits().unwrap_or_default().0;
        match reading {
            Some(Reading::Sg(value)) => [value.si(), any(plato)],
            Some(Reading::Plato(value)) => [any(sg), value.si()],
            None => [any(sg), any(plato)],
        }
    };
    let [original, original_plato] = both(Some(wort.original), Key::WortOriginalGravity, Key::WortOriginalPlato);
    let [current, current_plato] = both(wort.current, Key::WortCurrentGravity, Key::WortCurrentPlato);
    let co2 = wort.co2.map_or(0.0, Carbonation::si);
    let mut x = [0.0; 20];
    x[..11].copy_from_slice(&[
        target,
        batch.packaged.si(),
        headspace,
        filling,
        room,
        original,
        original_plato,
        current,
        current_plato,
        wort.limit.si(),
        co2,
    ]);
    x[11..].copy_from_slice(&held);
    Ok(x)
}
