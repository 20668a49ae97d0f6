//! Is it finished? What the gravities say, what is left, and what a point of gravity would add.

use super::contents::{Found, keeping, physical};
use crate::basis::lists::READINGS;
use crate::basis::request::Raw;
use crate::basis::{Answer, BasisName, Lists, Microbes, Request};
use crate::bottling::attenuation::{self, Reading, gravity_co2};
use crate::bottling::package::{Contents, PackagePressure, pressure_of_contents};
use crate::error::Error;
use crate::evidence::caution::{
    ABOVE_EXPECTED, BELOW_EXPECTED, Caution, END_NOT_TOLD, FEW_READINGS, LOW_ATTENUATION, STILL_FALLING,
    UNFINISHED_DANGER, UNSTEADY, above, below,
};
use crate::evidence::{NoSteps, Notes, Working};
use crate::property::gravity::Scale;
use crate::property::liquid;
use crate::quantity::unit::{DAY, GRAMS_PER_LITRE, PERCENT};
use crate::quantity::{Carbonation, Concentration, Key, Name, Percent, SpecificGravity, Temperature, Time};
use crate::table::inputs::gravity_reading;
use alloc::vec::Vec;

/// What a hydrometer cannot tell from nothing: a point of gravity.
const POINT: f64 = 0.001;
/// How long a gravity has to stand still; common practice, 3 days and more.
const STANDS: f64 = DAY.to_si(3.0);
/// Further below its end than any estimate of it errs: dextrins are being split. Judgement.
const SPLIT: f64 = 0.004;
/// What then is at work.
const DIASTATIC: (&str, &str) = ("microbes", "diastatic");
/// A drink that has fermented less may be stuck; common practice, no source.
const LOW: f64 = 60.0;
/// What a hydrometer shows as the same gravity.
const SAME: f64 = 0.0002;

/// What the request says of gravities.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Gravities {
    /// Before fermentation.
    pub original: Option<Reading>,
    /// Now: as it was given, or the last of the readings.
    pub current: Option<Reading>,
    /// At the end: as it was given, or by the attenuation expected.
    pub end: Option<Reading>,
}

impl Gravities {
    /// What a request and its readings say.
    ///
    /// # Errors
    /// Where they contradict each other or lie outside their limits.
    pub fn of(request: &Request, lists: &Lists<'_>) -> Result<Self, Error> {
        let given = |request: &Request, sg: Key, plato: Key| {
            let any = request.get(sg).is_some() || request.get(plato).is_some();
            any.then(|| gravity_reading(request, sg, plato)).transpose()
        };
        let original = given(request, Key::OriginalGravity, Key::OriginalPlato)?;
        let stated = given(request, Key::CurrentGravity, Key::CurrentPlato)?;
        let readings = lists.of(&READINGS);
        let current = match (stated, readings.last()) {
            (Some(_), Some(_)) => {
                const LAST: &str =
                    "the last of the readings is the gravity now: leave current_sg and current_plato out";
                return Err(Error::WrongList { list: READINGS.name, advice: LAST });
            }
            (Some(reading), None) => Some(reading),
            (None, Some(last)) => given(last, Key::CurrentGravity, Key::CurrentPlato)?,
            (None, None) => None,
        };
        let stated = given(request, Key::FinalGravity, Key::FinalPlato)?;
        let expected = request.name_of(Key::ExpectedAttenuation);
        let end = match (stated, expected, original) {
            (Some(_), Some(second), _) => {
                let first = [Key::FinalGravity, Key::FinalPlato].into_iter().find_map(|key| request.name_of(key));
                return Err(Error::Excluded { first: first.unwrap_or(second), second });
            }
            (Some(end), None, _) => Some(end),
            (None, Some(_), Some(original)) => {
                let expected = Percent::from_si(request.or(Key::ExpectedAttenuation, 0.0)?);
                let (end, _) = attenuation::final_gravity(original, expected, request.scale(), &mut NoSteps)?;
                Some(Reading::Sg(end.specific_gravity))
            }
            (None, Some(_), None) => {
                const ORIGINAL: &str =
                    "an attenuation is a share of the original extract: give original_sg or original_plato too";
                return Err(Error::Missing { parameter: Key::OriginalGravity, advice: ORIGINAL });
            }
            (None, None, None | Some(_)) => None,
        };
        Ok(Self { original, current, end })
    }

    /// Gravities tell what is still fermentable: it cannot be given beside them.
    ///
    /// # Errors
    /// Where it is.
    pub fn alone(&self, request: &Request) -> Result<(), Error> {
        if let (Some(_), Some(_), Some(second)) = (self.current, self.end, request.name_of(Key::Fermentable)) {
            let ends = [Key::FinalGravity, Key::FinalPlato, Key::ExpectedAttenuation];
            let first = ends.into_iter().find_map(|key| request.name_of(key)).unwrap_or(second);
            return Err(Error::Excluded { first, second });
        }
        Ok(())
    }

    /// The request with the composition and the fermentable extract that follow from the gravities, where it does not
    /// give them itself.
    ///
    /// # Errors
    /// Where the gravities cannot be.
    pub fn complete(&self, request: &Request) -> Result<Request, Error> {
        let mut whole = *request;
        if let (Some(original), Some(current)) = (self.original, self.current) {
            let (scale, model) = (request.scale(), request.real_extract_model());
            let (found, _) = attenuation::attenuation(original, current, scale, model, &mut NoSteps)?;
            if request.get(Key::Abv).is_none() {
                whole = whole.with_number(Name { key: Key::Abv, unit: Some(&PERCENT) }, found.abv.si().max(0.0));
            }
            if request.get(Key::Extract).is_none() {
                let name = Name { key: Key::Extract, unit: Some(&GRAMS_PER_LITRE) };
                whole = whole.with_number(name, found.extract.g_per_l());
            }
        }
        if let (Some(_), Some(_)) = (self.current, self.end) {
            let left = self.left(request.scale())?.map_or(0.0, |left| left.fermentable.g_per_l());
            whole = whole.with_number(Name { key: Key::Fermentable, unit: Some(&GRAMS_PER_LITRE) }, left);
            // So far below its end something splits dextrins, whatever was pitched.
            if above(self.below_end(request.scale()), SPLIT) && request.microbes() == Microbes::BrewingYeast {
                whole.set(DIASTATIC.0, Raw::Text(DIASTATIC.1))?;
            }
        }
        Ok(whole)
    }

    /// How far the gravity lies below its end, where both are known.
    fn below_end(&self, scale: Scale) -> f64 {
        match (self.current, self.end) {
            (Some(now), Some(end)) => sg(end, scale) - sg(now, scale),
            _ => 0.0,
        }
    }

    /// Whether the gravity is known to lie above its end by more than a hydrometer tells from nothing.
    pub fn still_above_end(&self, scale: Scale) -> bool {
        above(-self.below_end(scale), SAME)
    }

    /// What is still to come; `None` where it is not known, and where the gravity lies at or below its end.
    fn left(&self, scale: Scale) -> Result<Option<attenuation::ComingCo2>, Error> {
        match (self.current, self.end) {
            (Some(now), Some(end)) if sg(now, scale) > sg(end, scale) => {
                gravity_co2(now, end, scale, &mut NoSteps).map(|(coming, _)| Some(coming))
            }
            _ => Ok(None),
        }
    }
}

fn sg(reading: Reading, scale: Scale) -> f64 {
    match reading {
        Reading::Sg(sg) => sg.si(),
        Reading::Plato(plato) => scale.specific_gravity(plato.si()),
    }
}

/// Whether a drink is finished.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Readiness {
    /// `finished`, `not_finished`, or `unknown`.
    pub verdict: &'static str,
    /// Gravity now.
    pub current: SpecificGravity,
    /// Gravity at the end, where it is known.
    pub end: Option<SpecificGravity>,
    /// Extract that will ferment, where the end is known and the gravity not below it.
    pub left: Option<Concentration>,
    /// CO2 of it by the theory.
    pub to_come: Option<Carbonation>,
    /// Time that the readings span.
    pub span: Option<Time>,
    /// How far the gravity fell over the last three days and more of them.
    pub fall: Option<f64>,
}

/// What the readings say: the time that they span, and how far the gravity moved in the last days of them.
struct Stretch {
    span: f64,
    /// Fall over the shortest stretch at the end that is long enough to tell, or over all of them.
    fall: f64,
    /// Difference of the highest and the lowest there.
    moved: f64,
    /// The same over a week.
    moved_in_a_week: f64,
}

/// A gravity that moved by no more than this over three days, and by a point over a week, stands still; or one that did not
/// move at all over three days.
const STEADY: f64 = 0.0005;
const WEEK: f64 = DAY.to_si(7.0);

impl Stretch {
    fn stands(&self) -> bool {
        let most = if above(self.moved_in_a_week, POINT) { SAME } else { STEADY };
        !below(self.span, STANDS) && !above(self.moved, most)
    }
}

fn last_stretch(lists: &Lists<'_>, scale: Scale) -> Option<Stretch> {
    let readings: Vec<(f64, f64)> = lists
        .of(&READINGS)
        .iter()
        .filter_map(|row| {
            let reading = gravity_reading(row, Key::CurrentGravity, Key::CurrentPlato).ok()?;
            Some((row.number(Key::Time)?, sg(reading, scale)))
        })
        .collect();
    let (end, last) = *readings.last()?;
    let span = readings.iter().map(|(time, _)| end - time).fold(0.0, f64::max);
    // The readings from the latest that lies so far back, or all of them.
    let since = |long: f64| {
        let start = readings.iter().rev().find(|(time, _)| !below(end - time, long)).or(readings.first());
        let start = start.map_or(end, |(time, _)| *time);
        let mut range = (last, last);
        for (_, sg) in readings.iter().filter(|(time, _)| *time >= start) {
            range = (range.0.min(*sg), range.1.max(*sg));
        }
        range
    };
    let ((low, high), week) = (since(STANDS), since(WEEK));
    Some(Stretch { span, fall: high - last, moved: high - low, moved_in_a_week: week.1 - week.0 })
}

/// Whether the drink is finished; `None` where nothing is said of its gravity.
pub(super) fn readiness(
    request: &Request,
    lists: &Lists<'_>,
    found: Option<&Found>,
    usual: f64,
    steps: &mut Working,
) -> Result<Option<Answer<Readiness>>, Error> {
    let gravities = Gravities::of(request, lists)?;
    let Some(current) = gravities.current else { return Ok(None) };
    let scale = request.scale();
    let whole = gravities.complete(request)?;
    let context = whole.context(BasisName::Physical)?;
    let mut notes = Notes::default();
    let now = sg(current, scale);
    let end = gravities.end.map(|end| sg(end, scale));
    let coming = match (gravities.end, gravities.left(scale)?) {
        (Some(end), Some(_)) => {
            let (coming, told) = gravity_co2(current, end, scale, steps)?;
            notes.join(&told);
            Some(coming)
        }
        _ => None,
    };
    let stretch = last_stretch(lists, scale);
    let mut add = |kind, value, limit| notes.cautions.add(Caution { kind, value, limit });
    let falling = stretch.as_ref().is_some_and(|stretch| above(stretch.fall, POINT));
    let stood = stretch.as_ref().is_some_and(Stretch::stands);
    let span = stretch.as_ref().map_or(0.0, |stretch| stretch.span);
    if falling {
        add(&STILL_FALLING, stretch.as_ref().map_or(0.0, |stretch| stretch.fall), POINT);
    } else if !stood && below(span, STANDS) {
        add(&FEW_READINGS, span, STANDS);
    } else if !stood {
        add(&UNSTEADY, stretch.as_ref().map_or(0.0, |stretch| stretch.moved_in_a_week), STEADY);
    }
    let mut unfinished = falling;
    let mut dry = false;
    if let Some(end) = end {
        if above(now - end, POINT) {
            unfinished = true;
            add(&ABOVE_EXPECTED, now, end);
        } else if above(end - now, POINT) {
            dry = true;
            add(&BELOW_EXPECTED, now, end);
        }
    }
    let wild = request.microbes() != Microbes::BrewingYeast;
    if let Some(found) = found
        && (found.still_to_come > 0.0 || wild)
        && above(found.unprimed, usual)
    {
        add(&UNFINISHED_DANGER, found.unprimed, usual);
    }
    if end.is_none() {
        add(&END_NOT_TOLD, now, now);
        if let Some(original) = gravities.original {
            let model = request.real_extract_model();
            let (found, _) = attenuation::attenuation(original, current, scale, model, &mut NoSteps)?;
            let fermented = found.apparent.percent();
            if below(fermented, LOW) {
                add(&LOW_ATTENUATION, PERCENT.to_si(fermented), PERCENT.to_si(LOW));
            }
        }
    }
    let verdict = if unfinished {
        "not_finished"
    } else if stood && !wild && !dry && end.is_some() {
        "finished"
    } else {
        "unknown"
    };
    // Below the end nobody knows what is left.
    let known = end.filter(|_| !dry);
    let value = Readiness {
        verdict,
        current: SpecificGravity::from_si(now),
        end: end.map(SpecificGravity::from_si),
        left: known.map(|_| coming.map_or(Concentration::from_si(0.0), |coming| coming.fermentable)),
        to_come: known.map(|_| coming.map_or(Carbonation::from_si(0.0), |coming| coming.theory)),
        span: stretch.as_ref().map(|stretch| Time::from_si(stretch.span)),
        fall: stretch.as_ref().map(|stretch| stretch.fall),
    };
    Ok(Some(Answer { value, context, notes }))
}

/// What a point of gravity that is not finished would add.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// CO2 in the package, by the theory.
    pub co2: Carbonation,
    /// Rise of the pressure expected in the room.
    pub pressure: f64,
    /// Rise of the worst pressure there.
    pub worst: f64,
}

/// What 0.001 of specific gravity that is not finished would add.
pub(super) fn point(
    request: &Request,
    lists: &Lists<'_>,
    found: &Found,
    room: Temperature,
    steps: &mut Working,
) -> Result<Answer<Point>, Error> {
    let context = physical(request)?;
    let scale = request.scale();
    let drink = context.beverage;
    let now = match Gravities::of(request, lists)?.current {
        Some(reading) => sg(reading, scale),
        None => liquid::gravity(drink.abv(), drink.extract()),
    };
    let (low, high) = Key::CurrentGravity.limits().unwrap_or_default();
    let now = now.clamp(low + POINT, high);
    let reading = |sg: f64| Reading::Sg(SpecificGravity::from_si(sg));
    let (coming, notes) = gravity_co2(reading(now), reading(now - POINT), scale, steps)?;
    let co2 = coming.theory.si();
    let keeping = keeping(request, room)?;
    let pressure = |contents: Contents| {
        pressure_of_contents(contents, &keeping, None, &context, &mut NoSteps).map(|answer| answer.value)
    };
    let before: PackagePressure = pressure(found.package)?;
    let after = pressure(Contents { expected: found.package.expected + co2, worst: found.package.worst + co2 })?;
    let value = Point {
        co2: coming.theory,
        pressure: after.expected.gauge.si() - before.expected.gauge.si(),
        worst: after.worst.gauge.si() - before.worst.gauge.si(),
    };
    Ok(Answer { value, context, notes })
}
