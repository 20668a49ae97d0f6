//! When the bottles are ready.

use super::named;
use crate::basis::lists::HISTORY;
use crate::basis::{Answer, BasisName, Lists, Request, Yeast};
use crate::bottling::conditioning::{self, Span, YeastState};
use crate::error::Error;
use crate::evidence::Notes;
use crate::property::yeast;
use crate::quantity::unit::DAY;
use crate::quantity::{Carbonation, Key, Percent, Temperature, Time};
use crate::table::inputs::USUAL_ROOM;
use crate::table::packages::READY;
use alloc::vec::Vec;

/// The days on which progress is told.
const DAYS: [f64; 6] = [3.0, 7.0, 10.0, 14.0, 21.0, 28.0];

/// When the bottles are ready.
#[derive(Clone, Debug)]
pub struct Ready {
    /// Time until 95 % of the CO2 to come is made.
    pub time: Span<Time>,
    /// Day by day: the share that is made, and the CO2 then, by the basis of the dose.
    pub days: Vec<(Time, Span<Percent>, Option<Carbonation>)>,
}

/// When the bottles are ready, and how far they are until then.
pub(super) fn ready(
    request: &Request,
    lists: &Lists<'_>,
    state: &YeastState,
    held: Option<Carbonation>,
    target: Option<Carbonation>,
) -> Result<Answer<Ready>, Error> {
    let context = request.context(BasisName::Handbook)?;
    if context.beverage.yeast == Yeast::None {
        return Err(Error::NoLiveYeast);
    }
    let abv = context.beverage.abv();
    let room = Temperature::from_si(request.or(Key::Room, USUAL_ROOM)?);
    let history = lists.of(&HISTORY);
    let spells = || conditioning::spells(room, history);
    let mut notes = Notes::default();
    let time = conditioning::wait(Percent::from_si(READY), spells(), abv, state).map_err(|asleep| {
        let (low, high) = yeast::WORKS;
        let key = if history.is_empty() { Key::Room } else { Key::Temperature };
        Error::OutOfRange { parameter: named(request, key), value: asleep.si(), low, high }
    })?;
    let (mut coldest, mut hottest) = (f64::MAX, 0.0_f64);
    for spell in spells() {
        coldest = coldest.min(spell.temperature.si());
        hottest = hottest.max(spell.temperature.si());
    }
    conditioning::note(coldest, hottest, abv, state, &mut notes.cautions);
    conditioning::note_equations(&mut notes);
    let days = DAYS
        .iter()
        .map(|&day| {
            let time = Time::from_si(DAY.to_si(day));
            let made = conditioning::after(time, spells(), abv, state);
            let now = match (held, target) {
                (Some(held), Some(target)) => {
                    let share = made.expected.si() / 100.0;
                    Some(Carbonation::from_si(held.si() + share * (target.si() - held.si())))
                }
                _ => None,
            };
            (time, made, now)
        })
        .collect();
    let value = Ready { time, days };
    Ok(Answer { value, context, notes })
}
