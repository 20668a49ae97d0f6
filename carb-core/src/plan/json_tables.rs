//! What the library offers, as JSON: functions, tables and jobs, their inputs and outputs.

use super::json::{object, start, write};
use super::keg_inputs;
use super::node::Node;
use crate::basis::request::choices;
use crate::basis::{Function, Input, List, Need};
use crate::quantity::{Name, ShortText, Unit};
use crate::table::functions::FUNCTIONS;
use crate::table::tables::{TABLES, Table};
use alloc::string::String;
use alloc::vec::Vec;

/// The inputs, outputs and choices of every function, as JSON: what a face needs to offer them.
#[must_use]
pub fn tables_text() -> String {
    let mut node = start();
    node.put("functions", Node::List(FUNCTIONS.iter().map(|function| function_described(function)).collect()));
    node.put("tables", Node::List(TABLES.iter().map(|table| table_described(table)).collect()));
    node.put("plan", inputs_node(&super::inputs(), None));
    node.put("jobs", Node::List(JOBS.iter().map(job_described).collect()));
    node.put("lists", lists_node(&super::takes()));
    write(&node)
}

/// A job that is asked by names and values.
pub struct Job {
    /// Its name in every face.
    pub name: &'static str,
    /// What it does, in a sentence.
    pub summary: &'static str,
    /// An example that runs: names and values as JSON text.
    pub example: &'static str,
    inputs: &'static [Input],
    lists: &'static [&'static List],
}

/// The jobs.
pub static JOBS: [Job; 2] = [
    Job {
        name: "bottling",
        summary: "Bottle a batch: is it finished, what primes it, which bottles to fill, do they hold, when is it ready.",
        example: r#"{"packaged_l": 19.2, "volumes": 2.4, "warmest_c": 20.5, "altitude_m": 240, "bottles": [{"bottle_ml": 500, "count": 24}, {"bottle_ml": 330, "count": 30}]}"#,
        inputs: super::bottling::INPUTS,
        lists: super::bottling::TAKES,
    },
    Job {
        name: "kegging",
        summary: "Keg a batch: what pressure for how long, how it is purged, how much gas, which line, what a hot day does.",
        example: r#"{"packaged_l": 18.9, "volumes": 2.5, "warmest_c": 20, "serving_c": 4, "altitude_m": 0, "keg_rating_gauge_bar": 9}"#,
        inputs: keg_inputs::INPUTS,
        lists: keg_inputs::TAKES,
    },
];

/// One function, table or job as [`tables_text`] has it; `null` for anything else.
#[must_use]
pub fn described_text(name: &str) -> String {
    let function = FUNCTIONS.iter().find(|function| function.name == name).map(|function| function_described(function));
    let table = || TABLES.iter().find(|table| table.name == name).map(|table| table_described(table));
    let job = || JOBS.iter().find(|job| job.name == name).map(job_described);
    write(&function.or_else(table).or_else(job).unwrap_or(Node::Null))
}

fn job_described(job: &Job) -> Node {
    let mut node = object();
    node.put("name", Node::text(job.name));
    node.put("summary", Node::text(job.summary));
    node.put("example", Node::text(job.example));
    node.put("inputs", inputs_node(job.inputs, None));
    node.put("lists", lists_node(job.lists));
    node
}

fn function_described(function: &Function) -> Node {
    let mut node = object();
    node.put("name", Node::text(function.name));
    node.put("summary", Node::text(function.summary));
    node.put("example", Node::text(function.example));
    node.put("inputs", inputs_node(function.inputs, Some(function)));
    let outputs = function.outputs.iter().flat_map(|output| {
        output.key.dimension().into_iter().flat_map(Unit::of).map(|unit| {
            let mut node = object();
            node.put("noun", Node::text(output.noun));
            node.put("name", Node::text(Name { key: output.key, unit: Some(unit) }));
            node.put("unit", Node::text(unit.symbol));
            node.put("shown", Node::Flag(unit.shown));
            node.put("meaning", Node::text(output.key.field().meaning));
            node
        })
    });
    node.put("outputs", Node::List(outputs.collect()));
    node
}

fn table_described(table: &Table) -> Node {
    let mut node = object();
    node.put("name", Node::text(table.name));
    node.put("summary", Node::text(table.summary));
    node.put("example", Node::text(table.example));
    node.put("inputs", inputs_node(table.inputs, None));
    node.put("lists", lists_node(table.lists));
    node.put("columns", columns_node(table));
    node
}

fn lists_node(lists: &[&List]) -> Node {
    let all = lists.iter().map(|list| {
        let mut node = object();
        node.put("name", Node::text(list.name));
        node.put("meaning", Node::text(list.meaning));
        node.put("columns", inputs_node(list.columns, None));
        node
    });
    Node::List(all.collect())
}

fn inputs_node(inputs: &[Input], function: Option<&Function>) -> Node {
    let all = inputs.iter().map(|input| {
        let key = input.key;
        let mut node = object();
        node.put("names", Node::List(Name::of(key).map(Node::text).collect()));
        node.put("meaning", Node::text(key.field().meaning));
        node.put("array", Node::Flag(function.is_some_and(|function| function.varies(key))));
        match input.need {
            Need::Required => node.put("need", Node::text("required")),
            Need::OneOf(group) => node.put("one_of", Node::text(group)),
            Need::Optional(instead) => node.put("default", Node::text(instead)),
        }
        if !choices(key).is_empty() {
            node.put("choices", Node::List(choices(key).iter().map(Node::text).collect()));
        }
        if let Some((low, high)) = key.limits()
            && let Some(unit) = key.dimension().map(Unit::first)
        {
            node.put("low", Node::number(unit.from_si(low)));
            node.put("high", Node::number(unit.from_si(high)));
        }
        node
    });
    Node::List(all.collect())
}

pub(super) fn columns_node(table: &Table) -> Node {
    let described = |name: ShortText, unit: &str, meaning: &str| {
        let mut node = object();
        node.put("name", Node::text(name));
        node.put("unit", Node::text(unit));
        node.put("meaning", Node::text(meaning));
        node
    };
    let all = table.columns.iter().flat_map(|column| {
        let text = column.dimension.is_none().then(|| described(column.name(None), "", column.meaning));
        let units = column.units().map(|unit| described(column.name(Some(unit)), unit.symbol, column.meaning));
        text.into_iter().chain(units.collect::<Vec<_>>())
    });
    Node::List(all.collect())
}
