//! Tables of the draught line: one line by handbook and by physics, and the tubes. And what filling loses.

use super::inputs::join;
use super::lines::{DRAUGHT, bore, draught, gauge, pour, rise_and_hardware};
use super::tables::{Cell, SOURCE, STANDING, Table, cited, number, text};
use crate::basis::function::{one_of, optional, required};
use crate::basis::{BasisName, Request};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::kegging::draught::{LineFound, Pour, Poured, line_flow, line_length};
use crate::kegging::handbook_line::handbook_line;
use crate::property::filling_loss::FILLINGS;
use crate::property::tube::{TRADE_FLOW, TUBES};
use crate::quantity::unit::{PERCENT, US_FLUID_OUNCE_PER_SECOND, VOLUMES};
use crate::quantity::{Dimension, Flow, Key, Length};

/// A pour of a home line of 10 ft of 3/16 in, m3/s: 1.33 US fluid ounces in a second, a US pint in 12 s; common practice.
const HOME_FLOW: f64 = US_FLUID_OUNCE_PER_SECOND.to_si(4.0 / 3.0);

const AGREED: &str = "the trade's balance: resistances of tubing and 0.5 psi per foot of rise, for 2 US fl oz/s (German figures: 3 L/min). Handbook figures are from 0.5 to 2.9 times what physics gives a smooth straight tube at 2 oz/s: vinyl 1.4 to 2.9, barrier and steel 0.5 to 0.9; one bore differs fourfold between them";
const TRIED: &str = "what physics lets through the handbook's length: a bore 5 % under its nominal size takes 28 % more, one 5 % over it 21 % less, and a coil of 0.25 m 10 to 40 % more";
const TRADE: &str = "physics, at the trade's 2 US fl oz/s: losses of the faucet count as fittings, and the rise as the weight of the drink, 0.44 psi per foot";
const HOME: &str = "physics, at 1.33 US fl oz/s, a US pint in 12 s: the pour that the home rule of 10 ft of 3/16 in at 10 to 12 psi gives";
const ASKED: &str = "physics, at the pour that was asked for";

/// A row by physics, or why there is none.
fn by_physics(way: &'static str, reason: &'static str, found: Result<(Length, Poured), Error>) -> [Cell; 7] {
    match found {
        Ok((length, p)) => [
            Cell::Text(way),
            Cell::Number(length.si()),
            Cell::Number(p.flow.si()),
            Cell::Number(p.time.si()),
            Cell::Number(p.resistance),
            Cell::Text(reason),
            Cell::Text(""),
        ],
        Err(error) => none(way, reason, error),
    }
}

fn none(way: &'static str, reason: &'static str, error: Error) -> [Cell; 7] {
    let missing = Cell::Missing;
    [Cell::Text(way), missing, missing, missing, missing, Cell::Text(reason), Cell::Text(error.code_name())]
}

/// One line, by handbook and by physics.
pub static LINE_BALANCE: Table = Table {
    name: "line_balance",
    summary: "How long a draught line should be: by the trade's balance, and by physics at the trade's flow, at the usual pour of a home line, and at a pour of one's own; with the reasons why they differ.",
    inputs: join!(
        [
            required(Key::Gauge),
            one_of("tube", Key::Tube),
            one_of("tube", Key::Bore),
            optional(Key::Flow, "no pour of one's own"),
            optional(Key::Pour, "no pour of one's own"),
            optional(Key::Hardware, "0; counts by the trade's balance only"),
        ],
        DRAUGHT,
    ),
    lists: &[],
    example: r#"{"gauge_psi": 11, "tube": "vinyl_3_16_in", "rise_ft": 2, "temperature_f": 38, "pour_seconds": 10}"#,
    columns: &[
        text("way", "handbook, handbook_by_physics, physics_trade, physics_home or physics_asked"),
        number("line", Dimension::Length, "length of the line"),
        number("flow", Dimension::Flow, "flow; of the handbook, the one that it claims"),
        number("pour", Dimension::ShortTime, "time of a pour"),
        number("resistance", Dimension::PressureGradient, "pressure lost per length of line"),
        text("reason", "what the row stands on, and why it differs from the others"),
        text("refused", "name of the error where there is no answer; empty where there is one"),
    ],
    rows: |request, _, tell| {
        let context = request.context(BasisName::Handbook)?;
        let (gauge, line) = (gauge(request)?, draught(request)?);
        let length = |pour: Pour| {
            line_length(gauge, pour, &line, &context, &mut NoSteps).map(|answer| {
                let LineFound { length, poured } = answer.value;
                (length, poured)
            })
        };
        let asked = [Key::Flow, Key::Pour].iter().any(|&key| request.get(key).is_some());
        let asked = if asked { Some(pour(request)?) } else { None };
        // What is wrong with the request as a whole is no answer of a row.
        check(request)?;
        let (rise, hardware) = rise_and_hardware(request)?;
        if let Some(tube) = request.tube() {
            match handbook_line(gauge, tube.resistance(), rise, hardware, &mut NoSteps) {
                Ok((balance, _)) => {
                    tell(&[
                        Cell::Text("handbook"),
                        Cell::Number(balance.length.si()),
                        Cell::Number(tube.flow),
                        Cell::Number(line.glass.si() / tube.flow),
                        Cell::Number(tube.resistance()),
                        Cell::Text(AGREED),
                        Cell::Text(""),
                    ]);
                    let found = line_flow(gauge, balance.length, &line, &context, &mut NoSteps);
                    let found = found.map(|answer| (balance.length, answer.value));
                    tell(&by_physics("handbook_by_physics", TRIED, found));
                }
                Err(error) => tell(&none("handbook", AGREED, error)),
            }
        }
        tell(&by_physics("physics_trade", TRADE, length(Pour::Flow(Flow::from_si(TRADE_FLOW)))));
        tell(&by_physics("physics_home", HOME, length(Pour::Flow(Flow::from_si(HOME_FLOW)))));
        if let Some(asked) = asked {
            tell(&by_physics("physics_asked", ASKED, length(asked)));
        }
        Ok(())
    },
};

/// Refuses numbers outside their limits, which would spoil every row.
fn check(request: &Request) -> Result<(), Error> {
    bore(request)?;
    for input in LINE_BALANCE.inputs {
        if let Some(value) = request.number(input.key) {
            crate::basis::kernel::check(input.key, value)?;
        }
    }
    Ok(())
}

/// The tubes.
pub static TUBE_LIST: Table = Table {
    name: "tubes",
    summary: "Tubing of draught lines: bore, and the resistance that handbooks give it at their flow. They are the trade's conventions, not physics.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "its name"),
        text("title", "in words"),
        number("bore", Dimension::Bore, "inner diameter, nominal; real tubing differs by up to 5 %"),
        number("resistance", Dimension::PressureGradient, "resistance by the handbook"),
        number("low_resistance", Dimension::PressureGradient, "the least that trade texts give"),
        number("high_resistance", Dimension::PressureGradient, "the most that trade texts give"),
        number("flow", Dimension::Flow, "the flow that the figure belongs to"),
        STANDING,
        SOURCE,
        text("range_source", "where the ends of the range are from, if from elsewhere"),
    ],
    rows: |_, _, tell| {
        for tube in TUBES {
            let told = |figure: f64| Cell::In(figure, tube.unit);
            tell(&[
                Cell::Text(tube.name),
                Cell::Text(tube.title),
                Cell::Number(tube.bore),
                told(tube.told),
                told(tube.range.0),
                told(tube.range.1),
                Cell::Number(tube.flow),
                Cell::Text(tube.standing.words()),
                cited(Some(tube.source)),
                cited(tube.range_source),
            ]);
        }
        Ok(())
    },
};

/// What filling loses.
pub static FILLING_LOSSES: Table = Table {
    name: "filling_losses",
    summary: "CO2 that a drink loses on the way from the keg into package or glass, by the way it is filled: either an amount, or a share.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "name of the way"),
        text("title", "in words"),
        number("expected", Dimension::Carbonation, "loss expected, as an amount"),
        number("least", Dimension::Carbonation, "the least"),
        number("most", Dimension::Carbonation, "the most"),
        number("expected", Dimension::Percent, "loss expected, as a share of the CO2 in the keg"),
        number("least", Dimension::Percent, "the least"),
        number("most", Dimension::Percent, "the most"),
        STANDING,
        SOURCE,
        text("range", "where least and most are from"),
    ],
    rows: |_, _, tell| {
        for way in FILLINGS {
            // A loss is told as the one or as the other.
            let amount = |value: f64| if value > 0.0 { Cell::In(value, &VOLUMES) } else { Cell::Missing };
            let share = |value: f64| if value > 0.0 { Cell::In(value, &PERCENT) } else { Cell::Missing };
            let ([a, b, c], [d, e, f]) = (way.volumes, way.percent);
            tell(&[
                Cell::Text(way.name),
                Cell::Text(way.title),
                amount(a),
                amount(b),
                amount(c),
                share(d),
                share(e),
                share(f),
                Cell::Text(way.standing.words()),
                cited(way.source),
                Cell::Text(way.range),
            ]);
        }
        Ok(())
    },
};
