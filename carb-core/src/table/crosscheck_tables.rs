//! Tables of the cross-check: what can be claimed, and the habits that are looked for.

use super::tables::{Cell, Column, Table, number, text};
use crate::crosscheck::{QUANTITIES, QUESTIONS};
use crate::quantity::Dimension;

/// The quantities of claims.
pub static CLAIM_QUANTITIES: Table = Table {
    name: "claim_quantities",
    summary: "What can be claimed in a cross-check: each quantity in each unit in which it may be printed.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("quantity", "its name in a claim"),
        text("title", "in words"),
        text("unit", "a unit in which it may be claimed"),
        text("function", "the function whose inputs it takes, its assumptions left out; none for bottles"),
    ],
    rows: |_, _, tell| {
        for quantity in QUANTITIES {
            for unit in quantity.units {
                let function = quantity.function.map_or(Cell::Missing, |function| Cell::Text(function.name));
                tell(&[Cell::Text(quantity.name), Cell::Text(quantity.title), Cell::Text(unit.name), function]);
            }
        }
        Ok(())
    },
};

/// The habits of programs.
pub static CROSSCHECK_HABITS: Table = Table {
    name: "crosscheck_habits",
    summary: "On what programs differ: every habit that a cross-check looks for, this library's own first, and how common it is among programs; judgement, nobody has counted.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: COLUMNS,
    rows: |_, _, tell| {
        for matter in QUESTIONS {
            for habit in matter.habits {
                tell(&[
                    Cell::Text(matter.name),
                    Cell::Text(matter.asks),
                    Cell::Text(habit.name),
                    Cell::Number(100.0 * habit.prior),
                    Cell::Text(habit.says),
                ]);
            }
        }
        Ok(())
    },
};

const COLUMNS: &[Column] = &[
    text("question", "on what programs differ"),
    text("asks", "the question in words"),
    text("habit", "a way to answer it"),
    number("prior", Dimension::Percent, "how many programs in a hundred have it: judgement"),
    text("says", "what a program with this habit does: a program that ..."),
];
