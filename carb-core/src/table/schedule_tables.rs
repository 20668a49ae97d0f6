//! Tables of carbonating in time: the methods, the way to equilibrium, a schedule of steps, and a rate from readings.

use super::inputs::join;
use super::schedules::{GAUGE_NEEDED, MEETING, SUPPLY, UNDER_GAS, meeting, over, start};
use super::tables::{Cell, Table, number, text};
use crate::balance::equilibrium::dissolved_co2;
use crate::basis::function::{optional, required};
use crate::basis::lists::{SCHEDULE, UPTAKE_READINGS};
use crate::basis::{BasisName, Context, Request};
use crate::error::Error;
use crate::evidence::caution::SLACK;
use crate::evidence::{NoSteps, Notes};
use crate::kegging::fit::{Reading, fit};
use crate::kegging::schedule::{Under, carbonation_progress, carbonation_time, carry_on};
use crate::kegging::uptake::{Uptake, uptake_rate};
use crate::property::carbonating::METHODS;
use crate::quantity::unit::{DAY, FACTOR, HOUR, PER_HOUR};
use crate::quantity::{Carbonation, Dimension, GaugePressure, Key, Rate, Temperature, Time};

/// The methods.
pub static CARBONATING_METHODS: Table = Table {
    name: "carbonating_methods",
    summary: "How drink and gas meet, and how fast CO2 then passes: the rate in a full 19 L keg at 4 °C, or a factor on that of the still surface, as expected and at the ends of its range.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "its name as a method"),
        text("title", "in words"),
        number("expected", Dimension::Rate, "rate, as expected; missing where it is a factor"),
        number("least", Dimension::Rate, "the slow end"),
        number("most", Dimension::Rate, "the fast end"),
        number(
            "expected_factor",
            Dimension::Multiplier,
            "factor on the rate of the still surface; missing where it is a rate",
        ),
        number("least_factor", Dimension::Multiplier, "the slow end"),
        number("most_factor", Dimension::Multiplier, "the fast end"),
        text("standing", "how well it is known"),
        text("reason", "where it is from"),
    ],
    rows: |_, _, tell| {
        for method in METHODS {
            let figures = [method.expected, method.least, method.most];
            let rate = figures
                .map(|si| if method.of_still { Cell::Missing } else { Cell::In(PER_HOUR.from_si(si), &PER_HOUR) });
            let factor = figures.map(|si| if method.of_still { Cell::In(si, &FACTOR) } else { Cell::Missing });
            tell(&[
                Cell::Text(method.name),
                Cell::Text(method.title),
                rate[0],
                rate[1],
                rate[2],
                factor[0],
                factor[1],
                factor[2],
                Cell::Text(method.standing.words()),
                Cell::Text(method.reason),
            ]);
        }
        Ok(())
    },
};

/// Code of the gravest caution; empty where there is none.
fn gravest(notes: &Notes) -> Cell {
    Cell::Text(notes.cautions.iter().next().map_or("", |caution| caution.kind.code))
}

/// The steps of time that a curve is told in, s: the first of them that gives no more rows than this.
const STEPS: [f64; 15] = [
    60.0,
    120.0,
    300.0,
    600.0,
    900.0,
    1800.0,
    HOUR.to_si(1.0),
    HOUR.to_si(2.0),
    HOUR.to_si(3.0),
    HOUR.to_si(6.0),
    HOUR.to_si(12.0),
    DAY.to_si(1.0),
    DAY.to_si(2.0),
    DAY.to_si(7.0),
    DAY.to_si(28.0),
];
const MOST_ROWS: f64 = 48.0;
/// The curve ends where this share of the gap is closed at the slow end.
const CLOSED: f64 = 0.98;

/// The way to equilibrium.
pub static CARBONATION_CURVE: Table = Table {
    name: "carbonation_curve",
    summary: "CO2 in a drink under a constant pressure of CO2, from the start until 98 % of the gap has closed at the slow end of the rate.",
    inputs: join!([required(Key::Start), required(Key::Gauge), required(Key::Temperature), SUPPLY], MEETING, UNDER_GAS),
    lists: &[],
    example: r#"{"start_volumes": 0.85, "gauge_psi": 11.2, "temperature_f": 38, "altitude_m": 0}"#,
    columns: &[
        text("caution", "code of the gravest caution; empty where there is none"),
        number("", Dimension::Time, "time since the start"),
        number("expected", Dimension::Carbonation, "CO2 in the drink, as expected"),
        number("least", Dimension::Carbonation, "the least, by either end of the rate"),
        number("most", Dimension::Carbonation, "the most"),
    ],
    rows: |request, _, tell| {
        let context = request.context(BasisName::Handbook)?;
        let (start, over, meeting) = (start(request)?, over(request)?, meeting(request)?);
        let at = |time: f64| carbonation_progress(start, Time::from_si(time), &over, &meeting, &context, &mut NoSteps);
        let gap = at(0.0)?.value.end.si() - start.si();
        let longest = Key::Time.limits().unwrap_or_default().1;
        // Where nothing changes, one row says all.
        let last = if gap.abs() <= SLACK * start.si() {
            0.0
        } else {
            let nearly = Carbonation::from_si(start.si() + CLOSED * gap);
            carbonation_time(start, nearly, &over, &meeting, &context, &mut NoSteps)?.value.latest.si().min(longest)
        };
        let mut step = STEPS.iter().copied().find(|step| last <= MOST_ROWS * step).unwrap_or(DAY.to_si(28.0));
        while last > MOST_ROWS * step {
            step *= 2.0;
        }
        let mut row = 0.0;
        loop {
            let time = (row * step).min(longest);
            let answer = at(time)?;
            let CO2 { expected, least, most } = CO2::of(&answer.value);
            tell(&[gravest(&answer.notes), Cell::Number(time), expected, least, most]);
            if time >= last {
                return Ok(());
            }
            row += 1.0;
        }
    },
};

struct CO2 {
    expected: Cell,
    least: Cell,
    most: Cell,
}

impl CO2 {
    fn of(on_the_way: &crate::kegging::schedule::OnTheWay) -> Self {
        let [expected, least, most] =
            [on_the_way.expected, on_the_way.least, on_the_way.most].map(|co2| Cell::Number(co2.si()));
        Self { expected, least, most }
    }
}

/// Into how many parts a step of a schedule is told.
const PARTS: u32 = 4;

/// Step after step.
pub static CARBONATION_SCHEDULE: Table = Table {
    name: "carbonation_schedule",
    summary: "CO2 in a drink through a schedule of pressures and temperatures, one step after another: bursts, holding, chilling and venting are all such steps. Each is told in four parts, the last at its end.",
    inputs: join!([required(Key::Start), SUPPLY], MEETING, UNDER_GAS),
    lists: &[&SCHEDULE],
    example: r#"{"start_volumes": 0.85, "altitude_m": 0, "schedule": [{"gauge_psi": 30, "temperature_f": 38, "time_h": 29}, {"gauge_psi": 11.2, "temperature_f": 38, "time_d": 5}]}"#,
    columns: &[
        text("place", "inside, or end, of the step"),
        text("caution", "code of the gravest caution; empty where there is none"),
        number("step", Dimension::Count, "which step, from 1"),
        number("", Dimension::Time, "time since the start of the schedule"),
        number("gauge", Dimension::Pressure, "pressure over the drink in this step"),
        number("", Dimension::Temperature, "temperature of the drink in this step"),
        number("expected", Dimension::Carbonation, "CO2 in the drink, as expected"),
        number("least", Dimension::Carbonation, "the least, by either end of the rate"),
        number("most", Dimension::Carbonation, "the most"),
        number("end", Dimension::Carbonation, "what the drink would end at, were the step long enough"),
        number(
            "taken_up",
            Dimension::Carbonation,
            "CO2 taken up since the step began, as expected; below 0 where it left",
        ),
    ],
    rows: |request, lists, tell| {
        const EMPTY: &str = "list the steps, each row with gauge_psi, temperature_c and time_h";
        let rows = lists.of(&SCHEDULE);
        if rows.is_empty() {
            return Err(Error::WrongList { list: SCHEDULE.name, advice: EMPTY });
        }
        let context = request.context(BasisName::Handbook)?;
        let (usual, mut tracks) = (meeting(request)?, [start(request)?; 3]);
        let mut since = 0.0;
        for (at, row) in rows.iter().enumerate() {
            let named = |error: Error| error.renamed(|key| row.name_of(key));
            let (over, uptake) = (over(row).map_err(named)?, of_step(row, &usual).map_err(named)?);
            let time = row.need(Key::Time, "say how long the step lasts, as time_h").map_err(named)?;
            let from = tracks;
            for part in 1..=PARTS {
                let inside = time * f64::from(part) / f64::from(PARTS);
                let answer =
                    carry_on(from, Time::from_si(inside), &over, &uptake, &context, &mut NoSteps).map_err(named)?;
                let found = answer.value;
                let CO2 { expected, least, most } = CO2::of(&found);
                tell(&[
                    Cell::Text(if part == PARTS { "end" } else { "inside" }),
                    gravest(&answer.notes),
                    Cell::Number(at as f64 + 1.0),
                    Cell::Number(since + inside),
                    Cell::Number(over.gauge.si()),
                    Cell::Number(over.temperature.si()),
                    expected,
                    least,
                    most,
                    Cell::Number(found.end.si()),
                    Cell::Number(found.expected.si() - from[0].si()),
                ]);
                tracks = found.tracks;
            }
            since += time;
        }
        Ok(())
    },
};

/// How drink and gas meet in a step.
fn of_step(row: &Request, usual: &Uptake) -> Result<Uptake, Error> {
    if let (Some(first), Some(second)) = (row.name_of(Key::Method), row.name_of(Key::Kla)) {
        return Err(Error::Excluded { first, second });
    }
    let own = row.get(Key::Kla).map(|_| row.or(Key::Kla, 0.0)).transpose()?.map(Rate::from_si);
    Ok(match (row.method(), own) {
        (Some(method), None) => Uptake { method, kla: None, ..*usual },
        (_, Some(kla)) => Uptake { kla: Some(kla), ..*usual },
        (None, None) => *usual,
    })
}

/// A rate from readings.
pub static UPTAKE_FIT: Table = Table {
    name: "uptake_fit",
    summary: "Rate of uptake from readings of the CO2 in a drink that stands under one pressure, with its 95 % interval, and whether it is usual for the method; one row.",
    inputs: join!(
        [optional(Key::Start, "it is fitted too"), required(Key::Gauge), required(Key::Temperature)],
        [MEETING[0], MEETING[1], MEETING[2]],
        UNDER_GAS,
    ),
    lists: &[&UPTAKE_READINGS],
    example: r#"{"start_volumes": 0.85, "gauge_psi": 11.2, "temperature_f": 38, "altitude_m": 0, "uptake_readings": [{"time_d": 1, "volumes": 1.35}, {"time_d": 2, "volumes": 1.68}, {"time_d": 4, "volumes": 2.1}, {"time_d": 6, "volumes": 2.31}]}"#,
    columns: &[
        text(
            "verdict",
            "usual, slower or faster than the method; or perhaps_usual: outside, but its interval reaches in",
        ),
        text("caution", "code of the gravest caution; empty where there is none"),
        number("kla", Dimension::Rate, "the rate that fits best"),
        number("least_kla", Dimension::Rate, "the lower end of its 95 % interval"),
        number(
            "most_kla",
            Dimension::Rate,
            "the upper end: what a burst that must not pass its target is reckoned with",
        ),
        number("least_usual", Dimension::Rate, "the slow end of the method"),
        number("most_usual", Dimension::Rate, "its fast end"),
        number("start", Dimension::Carbonation, "CO2 at time 0: as told, or as fitted"),
        number("end", Dimension::Carbonation, "what the drink comes to under this pressure"),
        number(
            "scatter",
            Dimension::Carbonation,
            "by how much the readings scatter about the law: their standard deviation",
        ),
        number("readings", Dimension::Count, "how many there are"),
    ],
    rows: |request, lists, tell| {
        const EMPTY: &str = "list the readings, each row with time_h and volumes";
        let rows = lists.of(&UPTAKE_READINGS);
        if rows.is_empty() {
            return Err(Error::WrongList { list: UPTAKE_READINGS.name, advice: EMPTY });
        }
        let context: Context = request.context(BasisName::Handbook)?;
        let gauge = request.need(Key::Gauge, GAUGE_NEEDED).map(GaugePressure::from_si)?;
        let over = Under { gauge, temperature: super::inputs::temperature(request)? };
        let meeting = meeting(request)?;
        let told = request.get(Key::Start).map(|_| start(request)).transpose()?;
        let of = |row: &Request| Reading {
            time: Time::from_si(row.number(Key::Time).unwrap_or_default()),
            carbonation: Carbonation::from_si(row.number(Key::Carbonation).unwrap_or_default()),
        };
        let temperature: Temperature = over.temperature;
        let end = dissolved_co2(gauge, temperature, &context, &mut NoSteps)?;
        let mut notes = end.notes;
        let from = told.map_or_else(|| rows.first().map_or(0.0, |row| of(row).carbonation.si()), Carbonation::si);
        let found = fit(rows.iter().map(of), told, end.value)
            .map_err(|refused| refused.error(UPTAKE_READINGS.name, from, end.value.si()))
            .map_err(|error| error.renamed(|key| rows.first().and_then(|row| row.name_of(key))))?;
        let usual = uptake_rate(temperature, &meeting, &context, &mut NoSteps)?;
        notes.join(&usual.notes);
        let usual = usual.value;
        let word = if (usual.least..=usual.most).contains(&found.kla) {
            "usual"
        } else if found.most >= usual.least && found.least <= usual.most {
            "perhaps_usual"
        } else if found.kla < usual.least {
            "slower"
        } else {
            "faster"
        };
        tell(&[
            Cell::Text(word),
            gravest(&notes),
            Cell::Number(found.kla.si()),
            Cell::Number(found.least.si()),
            Cell::Number(found.most.si()),
            Cell::Number(usual.least.si()),
            Cell::Number(usual.most.si()),
            Cell::Number(found.start.si()),
            Cell::Number(end.value.si()),
            Cell::Number(found.scatter.si()),
            Cell::Number(found.readings as f64),
        ]);
        Ok(())
    },
};
