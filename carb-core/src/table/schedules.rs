//! Functions of carbonating in time: rates, times, progress, and bursts of high pressure.

use super::inputs::{
    ABV, ALTITUDE, AMBIENT, BEVERAGE, EXTRACT, HANDBOOK, MODEL, SEA_LEVEL, SOLUBILITY, carbonation, each, join,
    temperature, under,
};
use crate::basis::function::{optional, required};
use crate::basis::{BasisName, Function, Input, Request, Values};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::kegging::burst;
use crate::kegging::schedule::{self, Under, carbonation_progress, carbonation_time};
use crate::kegging::uptake::{self, Uptake, uptake_rate};
use crate::property::carbonating::{METHODS, USUAL_DIAMETER, USUAL_VOLUME};
use crate::quantity::{Carbonation, GaugePressure, Key, Length, MassFlow, Rate, Time, Volume};

const METHOD: Input = optional(Key::Method, "still");
/// How drink and gas meet.
pub(super) const MEETING: [Input; 4] = [
    METHOD,
    optional(Key::Packaged, "18.93 L, a full keg of five US gallons"),
    optional(Key::KegDiameter, "0.215 m, that of the usual 19 L keg"),
    optional(Key::Kla, "that of the method; it is taken as it is, at every temperature"),
];
pub(super) const SUPPLY: Input = optional(Key::Supply, "no limit");
/// The drink, the air outside, and what the solubility stands on.
pub(super) const UNDER_GAS: [Input; 9] =
    [ALTITUDE, AMBIENT, SEA_LEVEL, BEVERAGE, ABV, EXTRACT, HANDBOOK, MODEL, SOLUBILITY];

pub(super) const GAUGE_NEEDED: &str = "say which pressure of CO2 stands over the drink, as gauge_psi or gauge_bar";

/// How drink and gas meet.
pub(super) fn meeting(request: &Request) -> Result<Uptake, Error> {
    if let (Some(first), Some(second)) = (request.name_of(Key::Method), request.name_of(Key::Kla)) {
        return Err(Error::Excluded { first, second });
    }
    let given = |key: Key| request.get(key).map(|_| request.or(key, 0.0)).transpose();
    Ok(Uptake {
        method: request.method().unwrap_or(METHODS[0]),
        packaged: Volume::from_si(request.or(Key::Packaged, USUAL_VOLUME)?),
        diameter: Length::from_si(request.or(Key::KegDiameter, USUAL_DIAMETER)?),
        kla: given(Key::Kla)?.map(Rate::from_si),
        supply: given(Key::Supply)?.map(MassFlow::from_si),
    })
}

pub(super) fn start(request: &Request) -> Result<Carbonation, Error> {
    const START: &str = "say how much CO2 the drink holds at the start, as start_volumes or start_co2_g_per_l; residual_co2 tells what fermentation left";
    request.need(Key::Start, START).map(Carbonation::from_si)
}

pub(super) fn over(request: &Request) -> Result<Under, Error> {
    let gauge = request.need(Key::Gauge, GAUGE_NEEDED).map(GaugePressure::from_si)?;
    Ok(Under { gauge, temperature: temperature(request)? })
}

fn time(request: &Request) -> Result<Time, Error> {
    request.need(Key::Time, "say how long, as time_h or time_d").map(Time::from_si)
}

/// The rate.
pub static UPTAKE_RATE: Function = Function {
    name: "uptake_rate",
    summary: "Rate at which a drink comes to equilibrium with CO2 over it: the share of the gap that closes in an hour, as expected, at the slow end (least) and at the fast end (most) of what the method does.",
    home: "kegging::uptake::uptake_rate",
    inputs: join!([required(Key::Temperature)], MEETING),
    outputs: &[under("expected", Key::Kla), under("least", Key::Kla), under("most", Key::Kla)],
    columns: &[Key::Temperature, Key::Packaged, Key::KegDiameter, Key::Kla],
    example: r#"{"temperature_f": 38, "packaged_us_gal": 5}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (t, meeting) = (temperature(request)?, meeting(request)?);
        let answer = uptake_rate(t, &meeting, &context, &mut &mut *steps)?;
        Ok(answer.map(|rate| Values::new([rate.expected.si(), rate.least.si(), rate.most.si()])))
    },
    slices: |request, s| {
        let (t, meeting) = (temperature(request)?, meeting(request)?);
        uptake::visit(meeting.how(), each(request, uptake::columns(t, &meeting), s))
    },
};

/// How long it takes.
pub static CARBONATION_TIME: Function = Function {
    name: "carbonation_time",
    summary: "Time under a constant pressure of CO2 until a drink holds a carbonation, upward or, in a vented keg, downward: as expected, at the soonest and at the latest. Confirm it by tasting.",
    home: "kegging::schedule::carbonation_time",
    inputs: join!(
        [required(Key::Start), required(Key::Carbonation), required(Key::Gauge), required(Key::Temperature), SUPPLY],
        MEETING,
        UNDER_GAS,
    ),
    outputs: &[under("expected", Key::Time), under("soonest", Key::Time), under("latest", Key::Time)],
    columns: &[
        Key::Start,
        Key::Carbonation,
        Key::Gauge,
        Key::Ambient,
        Key::Temperature,
        Key::Abv,
        Key::Extract,
        Key::Packaged,
        Key::KegDiameter,
        Key::Kla,
        Key::Supply,
    ],
    example: r#"{"start_volumes": 0.85, "volumes": 2.4, "gauge_psi": 11.2, "temperature_f": 38, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (start, target, over, meeting) =
            (start(request)?, carbonation(request)?, over(request)?, meeting(request)?);
        let answer = carbonation_time(start, target, &over, &meeting, &context, &mut &mut *steps)?;
        Ok(answer.map(|when| Values::new([when.expected.si(), when.soonest.si(), when.latest.si()])))
    },
    slices: |request, mut s| {
        let context = request.context(BasisName::Handbook)?;
        let (start, target, over, meeting) =
            (start(request)?, carbonation(request)?, over(request)?, meeting(request)?);
        let x = schedule::time_columns(start, target, &over, &meeting, &context, &mut NoSteps)?;
        // The kernel tells the slow end before the fast one.
        s.which = [0, 2, 1][s.which.min(2)];
        schedule::visit_time(meeting.how(), &context, each(request, x, s))
    },
};

/// How far it is.
pub static CARBONATION_PROGRESS: Function = Function {
    name: "carbonation_progress",
    summary: "CO2 in a drink after a time under a constant pressure of CO2: as expected, the least and the most; and what it would end at.",
    home: "kegging::schedule::carbonation_progress",
    inputs: join!(
        [required(Key::Start), required(Key::Time), required(Key::Gauge), required(Key::Temperature), SUPPLY],
        MEETING,
        UNDER_GAS,
    ),
    outputs: &[
        under("expected", Key::Carbonation),
        under("least", Key::Carbonation),
        under("most", Key::Carbonation),
        under("end", Key::Carbonation),
    ],
    columns: &[
        Key::Start,
        Key::Time,
        Key::Gauge,
        Key::Ambient,
        Key::Temperature,
        Key::Abv,
        Key::Extract,
        Key::Packaged,
        Key::KegDiameter,
        Key::Kla,
        Key::Supply,
    ],
    example: r#"{"start_volumes": 0.85, "time_d": 7, "gauge_psi": 11.2, "temperature_f": 38, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (start, time, over, meeting) = (start(request)?, time(request)?, over(request)?, meeting(request)?);
        let answer = carbonation_progress(start, time, &over, &meeting, &context, &mut &mut *steps)?;
        Ok(answer.map(|at| Values::new([at.expected.si(), at.least.si(), at.most.si(), at.end.si()])))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let (start, time, over, meeting) = (start(request)?, time(request)?, over(request)?, meeting(request)?);
        let x = schedule::progress_columns([start; 3], time, &over, &meeting, &context, &mut NoSteps)?;
        schedule::visit_progress(meeting.how(), &context, each(request, x, s))
    },
};

/// A burst that cannot pass its target.
pub static BURST_TIME: Function = Function {
    name: "burst_time",
    summary: "When to end a burst of high pressure so that the target is not passed even at the fast end of the rate; what the drink then holds as expected and at least; the pressure that holds the target; and how long that takes, as expected and at the latest, until no more than 0.1 volumes are missing.",
    home: "kegging::burst::burst_time",
    inputs: join!(
        [required(Key::Start), required(Key::Carbonation), required(Key::BurstGauge), required(Key::Temperature)],
        MEETING,
        UNDER_GAS,
    ),
    outputs: &[
        under("stop", Key::Time),
        under("expected", Key::Carbonation),
        under("least", Key::Carbonation),
        under("hold", Key::Gauge),
        under("rest", Key::Time),
        under("latest_rest", Key::Time),
    ],
    columns: &[
        Key::Start,
        Key::Carbonation,
        Key::BurstGauge,
        Key::Ambient,
        Key::Temperature,
        Key::Abv,
        Key::Extract,
        Key::Packaged,
        Key::KegDiameter,
        Key::Kla,
    ],
    example: r#"{"start_volumes": 0.85, "volumes": 2.5, "burst_gauge_psi": 30, "temperature_f": 38, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let ([start, target], gauge, t) = (ends(request)?, burst_gauge(request)?, temperature(request)?);
        let meeting = meeting(request)?;
        let answer = burst::burst_time([start, target], gauge, t, &meeting, &context, &mut &mut *steps)?;
        Ok(answer.map(|plan| {
            Values::new([
                plan.stop.si(),
                plan.expected.si(),
                plan.least.si(),
                plan.hold.si(),
                plan.rest.si(),
                plan.latest_rest.si(),
            ])
        }))
    },
    slices: |request, s| {
        let context = request.context(BasisName::Handbook)?;
        let (ends, gauge, t) = (ends(request)?, burst_gauge(request)?, temperature(request)?);
        let meeting = meeting(request)?;
        let x = burst::columns(ends, gauge, t, &meeting, &context, &mut NoSteps)?;
        burst::visit(meeting.how(), &context, each(request, x, s))
    },
};

fn ends(request: &Request) -> Result<[Carbonation; 2], Error> {
    Ok([start(request)?, carbonation(request)?])
}

fn burst_gauge(request: &Request) -> Result<GaugePressure, Error> {
    const BURST: &str = "say which pressure the burst has, as burst_gauge_psi: more than what holds the target, and no more than the keg is rated for";
    request.need(Key::BurstGauge, BURST).map(GaugePressure::from_si)
}
