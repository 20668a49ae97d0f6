//! How much CO2 in the air people may breathe, and for how long: limits, alarms, effects. Local code decides.

use crate::evidence::Source;
use crate::evidence::equation::Standing;
use crate::evidence::source::{EH40, EU_EXPOSURE, FIRE_CODE, NIOSH_IDLH, UK_CELLAR};
use crate::quantity::unit::{HOUR, MINUTE, PARTS_PER_MILLION, POUND};

/// CO2 in the air outdoors, a share: a common figure, which rises by 2 to 3 ppm a year.
pub const OUTDOORS: f64 = 420.0e-6;
/// The limit over a day of work on which all bodies agree.
pub const LONG_TERM: f64 = 5000.0e-6;
/// The British limit over 15 minutes.
pub const SHORT_UK: f64 = 15_000.0e-6;
/// The American limit for a short time.
pub const SHORT_US: f64 = 30_000.0e-6;
/// Immediately dangerous to life or health.
pub const IDLH: f64 = 40_000.0e-6;

/// A limit, an alarm or an effect.
#[derive(Debug)]
pub struct Exposure {
    /// Its name.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// Who laid it down or told it.
    pub body: &'static str,
    /// CO2 in the air, a share by volume.
    pub share: Option<f64>,
    /// Over how long, s.
    pub time: Option<f64>,
    /// Mass of CO2 from which it applies, kg.
    pub mass: Option<f64>,
    /// Where it is from.
    pub source: Option<&'static Source>,
    /// How well it is known.
    pub standing: Standing,
}

const DAY_OF_WORK: Option<f64> = Some(HOUR.to_si(8.0));
const fn minutes(count: f64) -> Option<f64> {
    Some(MINUTE.to_si(count))
}
const fn listed(
    (name, title, body): (&'static str, &'static str, &'static str),
    ppm: f64,
    time: Option<f64>,
    source: &'static Source,
) -> Exposure {
    let share = Some(PARTS_PER_MILLION.to_si(ppm));
    Exposure { name, title, body, share, time, mass: None, source: Some(source), standing: Standing::Published }
}
const fn practice(mut row: Exposure) -> Exposure {
    row.standing = Standing::CommonPractice;
    row
}

/// The limits, the alarms and the effects.
pub static EXPOSURES: &[Exposure] = &[
    Exposure {
        name: "outdoors",
        title: "air outdoors, a common figure",
        body: "",
        share: Some(OUTDOORS),
        time: None,
        mass: None,
        source: None,
        standing: Standing::CommonPractice,
    },
    listed(("osha_pel", "permissible exposure limit, over 8 hours", "OSHA"), 5000.0, DAY_OF_WORK, &NIOSH_IDLH),
    listed(
        ("niosh_rel", "recommended limit, over a day of work of up to 10 hours", "NIOSH"),
        5000.0,
        Some(HOUR.to_si(10.0)),
        &NIOSH_IDLH,
    ),
    listed(("niosh_stel", "recommended limit, over 15 minutes", "NIOSH"), 30_000.0, minutes(15.0), &NIOSH_IDLH),
    listed(("acgih_tlv", "threshold limit value, over 8 hours", "ACGIH"), 5000.0, DAY_OF_WORK, &NIOSH_IDLH),
    listed(("acgih_stel", "threshold limit value, over 15 minutes", "ACGIH"), 30_000.0, minutes(15.0), &NIOSH_IDLH),
    listed(
        ("idlh", "immediately dangerous to life or health (1994; 50 000 ppm before)", "NIOSH"),
        40_000.0,
        None,
        &NIOSH_IDLH,
    ),
    listed(("eh40_long", "long-term exposure limit, over 8 hours", "HSE"), 5000.0, DAY_OF_WORK, &EH40),
    listed(("eh40_short", "short-term exposure limit, over 15 minutes", "HSE"), 15_000.0, minutes(15.0), &EH40),
    listed(("eu_2006_15", "indicative limit, over 8 hours", "European Commission"), 5000.0, DAY_OF_WORK, &EU_EXPOSURE),
    listed(
        ("fire_code_alarm", "highest setting of the alarm of a dispense system", "International Fire Code"),
        5000.0,
        None,
        &FIRE_CODE,
    ),
    Exposure {
        name: "fire_code_threshold",
        title: "dispense systems with more CO2 than this need ventilation or gas detection; some towns ask it of any system below grade",
        body: "International Fire Code",
        share: None,
        time: None,
        mass: Some(POUND.to_si(100.0)),
        source: Some(&FIRE_CODE),
        standing: Standing::Published,
    },
    practice(listed(("uk_cellar_first", "first stage of a cellar alarm", "UK practice"), 15_000.0, None, &UK_CELLAR)),
    practice(listed(
        ("uk_cellar_second", "second stage of a cellar alarm: leave", "UK practice"),
        40_000.0,
        None,
        &UK_CELLAR,
    )),
    listed(
        ("effect_intoxication", "signs of intoxication after 30 minutes", "effect"),
        50_000.0,
        minutes(30.0),
        &NIOSH_IDLH,
    ),
    listed(("effect_unconscious", "unconscious within minutes, from here on", "effect"), 70_000.0, None, &NIOSH_IDLH),
    listed(("effect_lethal", "lowest that killed, within 5 minutes", "effect"), 90_000.0, minutes(5.0), &NIOSH_IDLH),
];
