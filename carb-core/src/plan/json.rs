//! Requests and answers as JSON.
//!
//! A request is one flat object with `"carb": 1` and the names of the vocabulary. NaN, infinities and names given twice
//! are refused; an unknown name is answered with the nearest known one. An answer nests by noun, each quantity under its
//! metric and its US name; whatever cannot be answered is `{"error": ...}`. The bytes are the same in every language.

use super::json_tables::columns_node;
use super::node::Node;
use super::{
    Bottling, Kegging, Part, Plan, Sure, bottle_with, json_bottling, json_kegging, json_uncertainty, keg_inputs,
    keg_with, plan_with,
};
use crate::basis::lists::{self, LISTS};
use crate::basis::request::{Raw, Value, choices};
use crate::basis::{Answer, Context, Function, Input, List, Lists, Refusal, Request, Values};
use crate::crosscheck;
use crate::error::Error;
use crate::evidence::steps::Step;
use crate::evidence::{Cautions, NoSteps, Notes, Source, Working};
use crate::quantity::name::edit_distance;
use crate::quantity::unit::THINGS;
use crate::quantity::{Dimension, Key, Name, ShortText, Unit};
use crate::table::functions;
use crate::table::tables::{self, Cell, Table};
use crate::uncertainty::{self, Doubts};
use alloc::borrow::Cow;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;
use core::fmt;
use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};

/// The version of requests and answers.
pub const VERSION: f64 = 1.0;

/// One value of a request as it was read.
pub(crate) enum Read<'a> {
    Number(f64),
    Text(Cow<'a, str>),
    Flag(bool),
    Object(Vec<(Cow<'a, str>, Read<'a>)>),
    List(Vec<Read<'a>>),
    Other,
}

impl<'de> Deserialize<'de> for Read<'de> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Any;
        impl<'de> Visitor<'de> for Any {
            type Value = Read<'de>;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a number, a text, true or false")
            }
            fn visit_bool<E>(self, flag: bool) -> Result<Read<'de>, E> {
                Ok(Read::Flag(flag))
            }
            fn visit_i64<E>(self, value: i64) -> Result<Read<'de>, E> {
                Ok(Read::Number(value as f64))
            }
            fn visit_u64<E>(self, value: u64) -> Result<Read<'de>, E> {
                Ok(Read::Number(value as f64))
            }
            fn visit_f64<E>(self, value: f64) -> Result<Read<'de>, E> {
                Ok(Read::Number(value))
            }
            fn visit_borrowed_str<E>(self, text: &'de str) -> Result<Read<'de>, E> {
                Ok(Read::Text(Cow::Borrowed(text)))
            }
            fn visit_str<E>(self, text: &str) -> Result<Read<'de>, E> {
                Ok(Read::Text(Cow::Owned(text.into())))
            }
            fn visit_unit<E>(self) -> Result<Read<'de>, E> {
                Ok(Read::Other)
            }
            fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Read<'de>, A::Error> {
                let mut rows = Vec::new();
                while let Some(row) = list.next_element::<Read<'de>>()? {
                    rows.push(row);
                }
                Ok(Read::List(rows))
            }
            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Read<'de>, A::Error> {
                let mut members = Vec::new();
                while let Some(entry) = map.next_entry::<NameText<'de>, Read<'de>>()? {
                    members.push((entry.0.0, entry.1));
                }
                Ok(Read::Object(members))
            }
        }
        deserializer.deserialize_any(Any)
    }
}

/// The members of an object, in order, names given twice included.
pub(crate) struct Members<'a>(pub Vec<(Cow<'a, str>, Read<'a>)>);

impl<'de> Deserialize<'de> for Members<'de> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Object;
        impl<'de> Visitor<'de> for Object {
            type Value = Members<'de>;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("an object of names and values")
            }
            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Members<'de>, A::Error> {
                let mut members = Vec::new();
                while let Some(entry) = map.next_entry::<NameText<'de>, Read<'de>>()? {
                    members.push((entry.0.0, entry.1));
                }
                Ok(Members(members))
            }
        }
        deserializer.deserialize_map(Object)
    }
}

struct NameText<'a>(Cow<'a, str>);

impl<'de> Deserialize<'de> for NameText<'de> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Text;
        impl<'de> Visitor<'de> for Text {
            type Value = NameText<'de>;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a name")
            }
            fn visit_borrowed_str<E>(self, text: &'de str) -> Result<NameText<'de>, E> {
                Ok(NameText(Cow::Borrowed(text)))
            }
            fn visit_str<E>(self, text: &str) -> Result<NameText<'de>, E> {
                Ok(NameText(Cow::Owned(text.into())))
            }
        }
        deserializer.deserialize_str(Text)
    }
}

/// A request as it was asked.
#[derive(Clone, Debug)]
pub struct Asked {
    /// The request.
    pub request: Request,
    /// The rows of its lists, in the order of [`LISTS`].
    rows: [Vec<Request>; LISTS.len()],
    /// How sure its inputs are, where that is asked for.
    pub doubts: Option<Doubts>,
}

impl Asked {
    /// The lists.
    ///
    /// # Errors
    /// Where a row holds something that its list does not take, or lacks what it needs.
    pub fn lists(&self) -> Result<Lists<'_>, Refusal> {
        let mut lists = Lists::new();
        for (list, rows) in LISTS.iter().zip(&self.rows) {
            lists = lists.with(list, rows)?;
        }
        Ok(lists)
    }
}

/// Reads a request without lists; how sure its inputs are is read and left aside.
///
/// # Errors
/// Where the text is no JSON object, names no version, or holds something that no request may.
pub fn read(text: &str) -> Result<Request, Error> {
    let asked = ask(text).map_err(|refusal| refusal.error)?;
    match asked.lists().map_err(|refusal| refusal.error)?.given().next() {
        Some((list, _)) => Err(lists::not_taken(list)),
        None => Ok(asked.request),
    }
}

/// The list whose name a text spells badly.
fn near_list(text: &str) -> Option<Error> {
    let near = |list: &&&List| edit_distance(text, list.name) <= 2;
    let list = LISTS.iter().find(near)?;
    Some(Error::WrongList {
        list: list.name,
        advice: "this is the name of a list, and what was given is spelt almost so: give it under this name",
    })
}

/// The rows of a list.
fn read_rows(list: &'static List, value: &Read<'_>) -> Result<Vec<Request>, Refusal> {
    let wrong = Refusal::from(Error::WrongList { list: list.name, advice: lists::ROWS_WANTED });
    let Read::List(rows) = value else { return Err(wrong) };
    let mut read = Vec::new();
    for (at, row) in rows.iter().enumerate() {
        let placed = |error: Error| Refusal { error, place: Some((list.name, at + 1)) };
        let Read::Object(members) = row else { return Err(wrong) };
        let mut request = Request::new();
        // Nothing is what a table has where nothing is known.
        for (name, value) in members.iter().filter(|(_, value)| !matches!(value, Read::Other)) {
            let keys = || list.columns.iter().map(|input| input.key);
            request.set(name, raw(value)).map_err(|error| placed(error.nearest_of(keys())))?;
        }
        read.push(request);
    }
    Ok(read)
}

pub(crate) fn raw<'a>(value: &'a Read<'_>) -> Raw<'a> {
    match value {
        Read::Number(number) => Raw::Number(*number),
        Read::Text(text) => Raw::Text(text),
        Read::Flag(flag) => Raw::Flag(*flag),
        Read::Object(_) | Read::List(_) | Read::Other => Raw::Other,
    }
}

fn asked_doubt<'a>(value: &'a Read<'_>) -> json_uncertainty::Asked<'a> {
    use json_uncertainty::Asked;
    match value {
        Read::Number(half) => Asked::Normal(*half),
        Read::Text(instrument) => Asked::Usual(instrument),
        Read::Object(members) => match members.as_slice() {
            [(name, Read::Number(half))] if name == "range" => Asked::Range(*half),
            _ => Asked::Other,
        },
        Read::Flag(_) | Read::List(_) | Read::Other => Asked::Other,
    }
}

/// Reads a request, its lists, and how sure its inputs are.
///
/// # Errors
/// Where the text is no JSON object, names no version, or holds something that no request may.
pub fn ask(text: &str) -> Result<Asked, Refusal> {
    let Members(members) = serde_json::from_str(text).map_err(|error| Error::BadJson {
        line: error.line() as u32,
        column: error.column() as u32,
        reason: reason(&error),
    })?;
    let mut request = Request::new();
    let (mut version, mut doubts) = (None, None);
    let mut rows: [Option<Vec<Request>>; LISTS.len()] = core::array::from_fn(|_| None);
    for (name, value) in &members {
        if let Some(at) = LISTS.iter().position(|list| list.name == name.as_ref()) {
            if rows[at].replace(read_rows(LISTS[at], value)?).is_some() {
                return Err(Error::WrongList { list: LISTS[at].name, advice: "it is given twice: give it once" }.into());
            }
            continue;
        }
        if let ("uncertainty", Read::Object(inner)) = (name.as_ref(), value) {
            let inner = inner.iter().map(|(name, value)| (name.as_ref(), asked_doubt(value)));
            if doubts.replace(json_uncertainty::doubts(inner)?).is_some() {
                return Err(Error::UnknownName { given: ShortText::new("a second uncertainty"), nearest: None }.into());
            }
            continue;
        }
        if name == "carb" {
            let given = matches!(value, Read::Number(number) if *number == VERSION);
            if version.replace(given).is_some() || !given {
                return Err(Error::WrongVersion.into());
            }
            continue;
        }
        if name == "uncertainty" {
            let reason = ShortText::new("uncertainty should be an object of names and half widths");
            return Err(Error::BadJson { line: 1, column: 1, reason }.into());
        }
        request.set(name, raw(value)).map_err(|error| match error {
            Error::UnknownName { .. } => near_list(name).unwrap_or(error),
            other => other,
        })?;
    }
    if version.is_none() {
        return Err(Error::WrongVersion.into());
    }
    Ok(Asked { request, rows: rows.map(Option::unwrap_or_default), doubts })
}

/// What the reader says, without the place, which the error carries.
pub(crate) fn reason(error: &serde_json::Error) -> ShortText {
    let text = alloc::format!("{error}");
    match text.rsplit_once(" at line").map_or(text.as_str(), |(reason, _)| reason) {
        "expected value" => ShortText::new("a value is expected (not-a-number and infinity are none in JSON)"),
        reason => ShortText::new(reason),
    }
}

/// The plan of a request in JSON, with how sure it is where the request asks for that.
///
/// # Errors
/// As [`ask`] and [`plan_with`].
pub fn plan_of(text: &str) -> Result<Plan, Refusal> {
    let asked = ask(text)?;
    Ok(plan_with(&asked.request, &asked.lists()?, asked.doubts.as_ref())?)
}

/// The bottling of a request in JSON.
///
/// # Errors
/// As [`ask`] and [`bottle_with`].
pub fn bottling_of(text: &str) -> Result<Bottling, Refusal> {
    let asked = ask(text)?;
    Ok(bottle_with(&asked.request, &asked.lists()?, asked.doubts.as_ref())?)
}

/// The kegging of a request in JSON.
///
/// # Errors
/// As [`ask`] and [`keg_with`].
pub fn kegging_of(text: &str) -> Result<Kegging, Refusal> {
    let asked = ask(text)?;
    Ok(keg_with(&asked.request, &asked.lists()?, asked.doubts.as_ref())?)
}

/// Answers a request of the plan: JSON in, JSON out.
#[must_use]
pub fn plan_text(text: &str) -> String {
    answer_text("plan", text)
}

/// Answers a request of a function, of a table, or of `"plan"`: JSON in, JSON out.
#[must_use]
pub fn answer_text(function: &str, text: &str) -> String {
    answer_with_code(function, text).0
}

/// Ends the name of a function whose working is wanted in Markdown instead of its answer: `"keg_pressure.markdown"`.
pub const MARKDOWN: &str = ".markdown";

fn markdown_node(function: &'static Function, text: &str) -> Result<Node, Error> {
    let mut working = Working::default();
    let _ = function.answer(&read(text)?, &mut working)?;
    let mut node = start();
    node.put("function", Node::text(function.name));
    node.put("markdown", Node::text(working.markdown()));
    Ok(node)
}

/// The same with the code of the answer: 0, or that of its error object.
#[must_use]
pub fn answer_with_code(function: &str, text: &str) -> (String, i32) {
    if let Some(function) = function.strip_suffix(MARKDOWN).and_then(functions::named) {
        return match markdown_node(function, text) {
            Ok(node) => (write(&node), 0),
            Err(error) => (write(&with_error(error)), error.code()),
        };
    }
    let nearest = |refusal: Refusal, inputs: &[Input]| match refusal.place {
        Some(_) => refusal,
        None => refusal.error.nearest_of(inputs.iter().map(|input| input.key)).into(),
    };
    let answered: Result<Node, Refusal> = match (function, functions::named(function)) {
        ("plan", _) => ask(text)
            .and_then(|asked| {
                let lists = asked.lists()?;
                Ok(plan_node(&plan_with(&asked.request, &lists, asked.doubts.as_ref())?, &lists))
            })
            .map_err(|refusal| nearest(refusal, &super::inputs())),
        ("bottling", _) => ask(text)
            .and_then(|asked| {
                let lists = asked.lists()?;
                let found = bottle_with(&asked.request, &lists, asked.doubts.as_ref())?;
                Ok(json_bottling::job_node(&found, asked_node(&asked.request, &lists)))
            })
            .map_err(|refusal| nearest(refusal, super::bottling::INPUTS)),
        ("crosscheck", _) => crosscheck::json::crosscheck_of(text).map(|found| crosscheck::json::found_node(&found)),
        ("kegging", _) => ask(text)
            .and_then(|asked| {
                let lists = asked.lists()?;
                let found = keg_with(&asked.request, &lists, asked.doubts.as_ref())?;
                Ok(json_kegging::job_node(&found, asked_node(&asked.request, &lists)))
            })
            .map_err(|refusal| nearest(refusal, keg_inputs::INPUTS)),
        (_, Some(function)) => ask(text)
            .and_then(|asked| {
                let list = asked.lists()?.given().next().map(|(list, _)| list);
                list.map_or(Ok(asked), |list| Err(lists::not_taken(list).into()))
            })
            .map_err(|refusal| nearest(refusal, function.inputs))
            .and_then(|asked| Ok(function_node(function, &asked)?)),
        (_, None) => match tables::named(function) {
            Some(table) => ask(text)
                .map_err(|refusal| nearest(refusal, table.inputs))
                .and_then(|asked| table_node(table, &asked.request, &asked.lists()?)),
            None => return (no_function(function), crate::error::code::UNKNOWN_NAME),
        },
    };
    match answered {
        Ok(node) => (write(&node), 0),
        Err(refusal) => (write(&with_refusal(&refusal)), refusal.error.code()),
    }
}

fn no_function(name: &str) -> String {
    let mut node = object();
    node.put("code", Node::Whole(i64::from(crate::error::code::UNKNOWN_NAME)));
    node.put("parameter", Node::text("function"));
    let functions = crate::table::FUNCTIONS.iter().map(|function| function.name);
    let known: Vec<&str> = functions.chain(tables::TABLES.iter().map(|table| table.name)).collect();
    let text = alloc::format!(
        "there is no function \"{}\": choose plan, bottling, {}",
        ShortText::new(name),
        known.join(", ")
    );
    node.put("text", Node::text(text));
    let mut outer = start();
    outer.put("error", node);
    write(&outer)
}

pub(crate) fn write(node: &Node) -> String {
    // A tree of texts and finite numbers is always written.
    serde_json::to_string(node).unwrap_or_default()
}

pub(crate) fn object() -> Node {
    Node::Object(Vec::new())
}

pub(crate) fn start() -> Node {
    let mut node = object();
    node.put("carb", Node::Whole(VERSION as i64));
    node
}

fn with_error(error: Error) -> Node {
    let mut node = start();
    node.put("error", error_node(&error));
    node
}

fn with_refusal(refusal: &Refusal) -> Node {
    let mut inner = error_node(&refusal.error);
    if let Some((list, row)) = refusal.place
        && let Node::Object(members) = &mut inner
    {
        members.retain(|(name, _)| name != "text");
        inner.put("list", Node::text(list));
        inner.put("row", Node::Whole(row as i64));
        inner.put("text", Node::text(refusal));
    }
    let mut node = start();
    node.put("error", inner);
    node
}

pub(crate) fn error_node(error: &Error) -> Node {
    let mut node = object();
    node.put("code", Node::Whole(i64::from(error.code())));
    node.put("parameter", Node::text(error.parameter()));
    if let Some(value) = error.value() {
        node.put("value", Node::number(value));
    }
    if let Some((low, high)) = error.limits() {
        node.put("low", Node::number(low));
        node.put("high", Node::number(high));
    }
    node.put("text", Node::text(error));
    node
}

/// Puts a quantity into an object, under each of its shown names.
pub(super) fn put_quantity(node: &mut Node, noun: &str, key: Key, si: f64) {
    for unit in key.dimension().into_iter().flat_map(Unit::of).filter(|unit| unit.shown) {
        node.put_under(noun, Name { key, unit: Some(unit) }, Node::number(unit.from_si(si)));
    }
}

pub(super) fn request_node(request: &Request) -> Node {
    let mut node = object();
    for name in request.given() {
        let value = match request.get(name.key) {
            Some(Value::Number(number, _)) => Node::number(number),
            Some(Value::Choice(at)) => choices(name.key).get(at).map_or(Node::Null, Node::text),
            Some(Value::Flag(flag)) => Node::Flag(flag),
            Some(Value::Text(text)) => Node::text(text),
            None => continue,
        };
        node.put(name, value);
    }
    node
}

/// The request with its lists.
pub(super) fn asked_node(request: &Request, lists: &Lists<'_>) -> Node {
    let mut node = request_node(request);
    for (list, rows) in lists.given() {
        node.put(list.name, Node::List(rows.iter().map(request_node).collect()));
    }
    node
}

fn caution_nodes(cautions: &Cautions) -> Node {
    let all = cautions.iter().map(|caution| {
        let mut node = object();
        node.put("code", Node::text(caution.kind.code));
        node.put("level", Node::text(caution.kind.level.word()));
        let unit = Unit::first(caution.kind.dimension);
        node.put("value", Node::number(unit.from_si(caution.value)));
        if caution.limit != caution.value {
            node.put("limit", Node::number(unit.from_si(caution.limit)));
        }
        node.put("unit", Node::text(unit.symbol));
        node.put("text", Node::text(caution));
        node
    });
    Node::List(all.collect())
}

fn source_nodes<'a>(sources: impl Iterator<Item = &'a Source>) -> Node {
    let all = sources.map(|source| {
        let mut node = object();
        node.put("key", Node::text(source.key));
        node.put("citation", Node::text(source.citation));
        node
    });
    Node::List(all.collect())
}

fn equation_nodes(notes: &Notes) -> Node {
    let all = notes.equations().map(|equation| {
        let mut node = object();
        node.put("id", Node::text(equation.id));
        node.put("standing", Node::text(equation.standing.words()));
        node.put("uncertainty_percent", equation.uncertainty_percent.map_or(Node::Null, Node::number));
        node
    });
    Node::List(all.collect())
}

fn step_node(step: &Step) -> Node {
    let mut node = object();
    node.put("equation", Node::text(step.equation.id));
    node.put("formula", Node::text(step.equation.formula));
    let mut inputs = object();
    let mut units = object();
    for (name, value, unit) in step.shown() {
        inputs.put(name, Node::number(value));
        units.put(name, Node::text(unit));
    }
    let result = &step.equation.result;
    units.put(result.name, Node::text(result.unit.symbol()));
    let mut results = object();
    results.put(result.name, Node::number(step.shown_result()));
    node.put("inputs", inputs);
    node.put("result", results);
    node.put("units", units);
    node.put("text", Node::text(step.text()));
    node
}

fn context_nodes(context: &Context) -> Vec<(&'static str, Node)> {
    let basis = &context.basis;
    let mut basis_node = object();
    basis_node.put("basis", Node::text(basis.name.name()));
    basis_node.put("model", Node::text(context.model().name()));
    basis_node.put("residual_model", Node::text(basis.residual.name()));
    basis_node.put("yield_percent", Node::number(basis.yield_percent));
    basis_node.put("count_headspace", Node::Flag(basis.count_headspace));
    basis_node.put("solubility_multiplier", Node::number(basis.solubility_factor));
    basis_node.put("residual_multiplier", Node::number(basis.residual_factor));
    basis_node.put("yield_multiplier", Node::number(basis.yield_factor));
    let drink = &context.beverage;
    let mut drink_node = object();
    drink_node.put("beverage", Node::text(drink.kind.name()));
    drink_node.put("abv_percent", Node::number(drink.abv()));
    drink_node.put("extract_g_per_l", Node::number(drink.extract()));
    drink_node.put("fermentable_g_per_l", drink.fermentable().map_or(Node::Null, Node::number));
    drink_node.put("yeast", Node::text(drink.yeast.name()));
    let mut all = vec![("basis", basis_node), ("beverage", drink_node)];
    if let Ok(pressure) = context.ambient(&mut NoSteps) {
        let mut ambient_node = object();
        put_quantity(&mut ambient_node, "", Key::Ambient, pressure);
        all.push(("ambient", ambient_node));
    }
    all
}

/// Puts everything that an answer stands on behind its value.
fn put_standing<T>(node: &mut Node, answer: &Answer<T>, of_a_drink: bool, working: Option<&Working>) {
    if of_a_drink {
        for (name, value) in context_nodes(&answer.context) {
            node.put(name, value);
        }
    }
    node.put("cautions", caution_nodes(&answer.notes.cautions));
    node.put("equations", equation_nodes(&answer.notes));
    node.put("sources", source_nodes(answer.sources()));
    if let Some(working) = working {
        node.put("working", Node::List(working.steps.iter().map(step_node).collect()));
    }
}

fn function_node(function: &'static Function, asked: &Asked) -> Result<Node, Error> {
    let request = &asked.request;
    let mut working = Working::default();
    let answer: Answer<Values> = function.answer(request, &mut working)?;
    let mut node = start();
    node.put("function", Node::text(function.name));
    node.put("request", request_node(request));
    for (output, value) in function.outputs.iter().zip(answer.value.as_slice()) {
        put_quantity(&mut node, output.noun, output.key, *value);
    }
    put_standing(&mut node, &answer, function.takes(Key::Beverage), Some(&working));
    if let Some(doubts) = &asked.doubts {
        doubts.check(request, Some(function))?;
        let sources = uncertainty::sources(request, doubts, function.inputs, answer.context.basis.name)?;
        let estimates = uncertainty::estimate(&uncertainty::job_of(function), request, &sources)?;
        node.put("uncertainty", json_uncertainty::estimates_node(function.outputs, &estimates));
        if function.takes(Key::Model) {
            node.put("models", json_uncertainty::models_node(function, request, &answer.context));
        }
    }
    Ok(node)
}

fn table_node(table: &Table, request: &Request, lists: &Lists<'_>) -> Result<Node, Refusal> {
    let mut rows = Vec::new();
    table.rows(request, lists, &mut |cells| {
        let mut row = object();
        for (column, cell) in table.columns.iter().zip(cells) {
            match *cell {
                Cell::Text(text) => row.put(column.name(None), Node::text(text)),
                // A count is a whole number.
                Cell::Number(count) if column.dimension == Some(Dimension::Count) => {
                    row.put(column.name(Some(&THINGS)), Node::Whole(count as i64));
                }
                Cell::Number(si) => {
                    for unit in column.units() {
                        row.put(column.name(Some(unit)), Node::number(unit.from_si(si)));
                    }
                }
                Cell::In(value, own) => {
                    for unit in column.units() {
                        row.put(column.name(Some(unit)), Node::number(own.convert(value, unit)));
                    }
                }
                Cell::Missing if column.dimension.is_none() => row.put(column.name(None), Node::Null),
                Cell::Missing => {
                    for unit in column.units() {
                        row.put(column.name(Some(unit)), Node::Null);
                    }
                }
            }
        }
        rows.push(row);
    })?;
    let mut node = start();
    node.put("table", Node::text(table.name));
    node.put("request", asked_node(request, lists));
    node.put("columns", columns_node(table));
    node.put("rows", Node::List(rows));
    Ok(node)
}

pub(super) fn part_node<T>(part: &Part<T>, request: &Request, value: impl FnOnce(&mut Node, &T)) -> Node {
    let mut node = object();
    match &part.answer {
        Ok(answer) => {
            value(&mut node, &answer.value);
            let asked = request.flag(Key::Working) == Some(true);
            put_standing(&mut node, answer, true, asked.then_some(&part.working));
        }
        Err(error) => node.put("error", error_node(error)),
    }
    node
}

/// Puts how sure a job is, where that was asked for.
pub(super) fn put_sure(node: &mut Node, sure: Option<&Sure>) {
    let Some(sure) = sure else { return };
    let mut estimates = object();
    for (place, noun, key, estimate) in sure.parts() {
        estimates.put(place, json_uncertainty::estimate_node(noun, key, estimate));
    }
    node.put("uncertainty", estimates);
}

/// The answer of a plan as a tree.
fn plan_node(plan: &Plan, lists: &Lists<'_>) -> Node {
    let mut node = start();
    node.put("request", asked_node(&plan.request, lists));
    node.put("answered", Node::Flag(plan.answered()));
    node.put("danger", Node::Flag(plan.danger()));
    put_sure(&mut node, plan.sure.as_ref());
    node.put("bottling", json_bottling::bottling_node(&plan.bottling));

    node.put("kegging", json_kegging::kegging_node(&plan.kegging));
    node
}
