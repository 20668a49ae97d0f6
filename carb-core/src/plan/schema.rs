//! The JSON Schema of requests and answers, written from the tables that the faces walk.

use super::bottling::{self, TAKES};
use super::keg_inputs;
use super::keg_parts::PARTS;
use super::kegging::REGULATOR;
use super::node::Node;
use super::{inputs, takes};
use crate::basis::lists::{LISTS, MOST_ROWS};
use crate::basis::request::choices;
use crate::basis::{Input, List, Need};
use crate::crosscheck::QUANTITIES;
use crate::crosscheck::json::MOST_CLAIMS;
use crate::quantity::field::Kind;
use crate::quantity::name::TEXT_BYTES;
use crate::quantity::{Key, Name};
use crate::table::{FUNCTIONS, TABLES};
use crate::uncertainty::INSTRUMENTS;
use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;

/// The draft of JSON Schema.
const DRAFT: &str = "https://json-schema.org/draft/2020-12/schema";

fn object(members: Vec<(&str, Node)>) -> Node {
    Node::Object(members.into_iter().map(|(name, value)| (name.to_string(), value)).collect())
}
fn of_type(name: &str) -> Node {
    object(vec![("type", Node::text(name))])
}
fn texts<T: ToString>(list: impl IntoIterator<Item = T>) -> Node {
    Node::List(list.into_iter().map(Node::text).collect())
}
fn one_of(list: Vec<Node>) -> Node {
    object(vec![("oneOf", Node::List(list))])
}
fn list_of(items: Node) -> Node {
    object(vec![("type", Node::text("array")), ("items", items)])
}
fn see(name: &str) -> Node {
    object(vec![("$ref", Node::text(alloc::format!("#/$defs/{name}")))])
}
fn closed(properties: Node, required: Node) -> Node {
    object(vec![
        ("type", Node::text("object")),
        ("properties", properties),
        ("required", required),
        ("additionalProperties", Node::Flag(false)),
    ])
}
fn version() -> Node {
    object(vec![("const", Node::number(super::json::VERSION))])
}

/// What a name of a request may hold.
fn input(name: Name) -> Node {
    let mut node = match (name.key.field().kind, name.unit) {
        (Kind::Number { min, max, .. }, Some(unit)) => {
            let mut node = of_type("number");
            node.put("minimum", Node::number(unit.from_si(min)));
            node.put("maximum", Node::number(unit.from_si(max)));
            node
        }
        // Case, spaces and hyphens do not matter to the reader; these are the names as they stand in answers.
        (Kind::Choice, _) => object(vec![("enum", texts(choices(name.key)))]),
        (Kind::Flag, _) => of_type("boolean"),
        _ => object(vec![("type", Node::text("string")), ("maxLength", Node::Whole(TEXT_BYTES as i64))]),
    };
    node.put("description", Node::text(name.key.field().meaning));
    node
}

/// The names of which one is required.
fn required_names(inputs: &[Input]) -> Vec<Vec<String>> {
    let mut groups: Vec<(&str, Vec<String>)> = Vec::new();
    let mut all = Vec::new();
    for input in inputs {
        let names = Name::of(input.key).map(|name| name.to_string());
        match input.need {
            Need::Required => all.push(names.collect()),
            Need::OneOf(group) => match groups.iter_mut().find(|(known, _)| *known == group) {
                Some((_, list)) => list.extend(names),
                None => groups.push((group, names.collect())),
            },
            Need::Optional(_) => {}
        }
    }
    all.extend(groups.into_iter().map(|(_, names)| names));
    all
}

/// What a row of a list may hold.
fn row(list: &List) -> Node {
    let mut properties = object(vec![]);
    for name in list.columns.iter().flat_map(|input| Name::of(input.key)) {
        properties.put(name, self::input(name));
    }
    let mut node = closed(properties, Node::List(Vec::new()));
    let each = required_names(list.columns)
        .into_iter()
        .map(|names| one_of(names.into_iter().map(|name| object(vec![("required", texts([name]))])).collect()));
    node.put("allOf", Node::List(each.collect()));
    node
}

fn request(inputs: &[Input], lists: &[&List], whole: bool) -> Node {
    let mut properties = object(vec![("carb", version())]);
    for list in lists {
        let mut node = list_of(see(&alloc::format!("row.{}", list.name)));
        node.put("maxItems", Node::Whole(MOST_ROWS as i64));
        node.put("description", Node::text(list.meaning));
        properties.put(list.name, node);
    }
    for name in inputs.iter().flat_map(|input| Name::of(input.key)) {
        properties.put(name, self::input(name));
    }
    properties.put("uncertainty", see("doubts"));
    let mut node = closed(properties, texts(["carb"]));
    let names = if whole { required_names(inputs) } else { Vec::new() };
    if !names.is_empty() {
        let each = names
            .into_iter()
            .map(|names| one_of(names.into_iter().map(|name| object(vec![("required", texts([name]))])).collect()));
        node.put("allOf", Node::List(each.collect()));
    }
    node
}

/// Properties for a quantity in its shown units, under its noun.
fn put_quantity(properties: &mut Node, noun: &str, key: Key) {
    for unit in super::json_uncertainty::shown(key) {
        let name = Name { key, unit: Some(unit) };
        if noun.is_empty() {
            properties.put(name, of_type("number"));
            continue;
        }
        let Node::Object(members) = properties else { return };
        if !members.iter().any(|(member, _)| member == noun) {
            members
                .push((noun.to_string(), object(vec![("type", Node::text("object")), ("properties", object(vec![]))])));
        }
        if let Some((_, Node::Object(inner))) = members.iter_mut().find(|(member, _)| member == noun)
            && let Some((_, inner)) = inner.iter_mut().find(|(member, _)| member == "properties")
        {
            inner.put(name, of_type("number"));
        }
    }
}

fn doubts() -> Node {
    let half = object(vec![("type", Node::text("number")), ("minimum", Node::number(0.0))]);
    let range = closed(object(vec![("range", half.clone())]), texts(["range"]));
    let usual = object(vec![("enum", texts(INSTRUMENTS.iter().map(|instrument| instrument.name)))]);
    let names = Key::ALL.iter().filter(|key| key.dimension().is_some()).flat_map(|&key| Name::of(key));
    object(vec![
        ("type", Node::text("object")),
        ("description", Node::text("half widths by the names of inputs: a number is k = 2 of a normal distribution")),
        ("propertyNames", object(vec![("enum", texts(names))])),
        ("additionalProperties", one_of(vec![half, range, usual])),
    ])
}

fn error() -> Node {
    let properties = object(vec![
        ("code", of_type("integer")),
        ("parameter", of_type("string")),
        ("value", object(vec![("type", texts(["number", "null"]))])),
        ("low", object(vec![("type", texts(["number", "null"]))])),
        ("high", object(vec![("type", texts(["number", "null"]))])),
        ("list", of_type("string")),
        ("row", of_type("integer")),
        ("text", of_type("string")),
    ]);
    closed(
        object(vec![("carb", version()), ("error", closed(properties, texts(["code", "parameter", "text"])))]),
        texts(["carb", "error"]),
    )
}

fn estimate() -> Node {
    let numbers = || object(vec![("type", Node::text("object")), ("additionalProperties", of_type("number"))]);
    let share = closed(
        object(vec![
            ("name", of_type("string")),
            ("value", of_type("number")),
            ("half_width", of_type("number")),
            ("kind", object(vec![("enum", texts(["normal", "range"]))])),
            ("of_an_equation", of_type("boolean")),
            (
                "share",
                object(vec![
                    ("type", Node::text("number")),
                    ("minimum", Node::number(0.0)),
                    ("maximum", Node::number(1.0)),
                ]),
            ),
            ("sensitivity", numbers()),
        ]),
        texts(["name", "half_width", "kind", "share", "sensitivity"]),
    );
    closed(
        object(vec![
            ("noun", of_type("string")),
            ("value", numbers()),
            ("low", numbers()),
            ("high", numbers()),
            ("standard", numbers()),
            ("method", object(vec![("enum", texts(["first_order", "draws"]))])),
            ("budget", list_of(share)),
        ]),
        texts(["noun", "value", "low", "high", "standard", "method", "budget"]),
    )
}

fn standing(properties: &mut Node) {
    let open = || of_type("object");
    for name in ["basis", "beverage", "ambient"] {
        properties.put(name, open());
    }
    for name in ["cautions", "equations", "sources", "working", "models"] {
        properties.put(name, list_of(open()));
    }
    properties.put("uncertainty", list_of(see("estimate")));
}

/// Claims: what a claim may hold is what its quantity takes.
fn claims_request() -> Node {
    let kinds = QUANTITIES.iter().map(|quantity| {
        let text = || of_type("string");
        let mut properties = object(vec![
            ("label", text()),
            ("program", object(vec![("type", texts(["string", "number", "null"]))])),
            ("quantity", object(vec![("const", Node::text(quantity.name))])),
            ("value", object(vec![("type", texts(["string", "number"]))])),
            ("unit", text()),
        ]);
        for name in Key::ALL.iter().filter(|&&key| quantity.takes(key)).flat_map(|&key| Name::of(key)) {
            let mut node = input(name);
            // Nothing is what a table has where nothing was told.
            if matches!(name.key.field().kind, Kind::Number { .. }) {
                node.put("type", texts(["number", "null"]));
                if let Node::Object(members) = &mut node {
                    members.remove(0);
                }
            }
            properties.put(name, node);
        }
        closed(properties, texts(["quantity", "value", "unit"]))
    });
    let mut claims = list_of(one_of(kinds.collect()));
    claims.put("maxItems", Node::Whole(MOST_CLAIMS as i64));
    let most = object(vec![("type", Node::text("integer")), ("minimum", Node::Whole(0))]);
    let properties = object(vec![("carb", version()), ("claims", claims), ("most_readings", most)]);
    closed(properties, texts(["carb", "claims"]))
}

/// What is found about claims.
fn crosscheck_answer() -> Node {
    let (number, text, maybe) =
        (|| of_type("number"), || of_type("string"), || object(vec![("type", texts(["number", "null"]))]));
    let departure = closed(
        object(vec![
            ("question", text()),
            ("habit", text()),
            ("prior", number()),
            ("size_percent", maybe()),
            ("text", text()),
        ]),
        texts(["question", "habit", "prior", "size_percent", "text"]),
    );
    let reading = closed(
        object(vec![
            ("prior", number()),
            ("share", number()),
            ("value", number()),
            ("text", text()),
            ("departures", list_of(departure.clone())),
        ]),
        texts(["prior", "value", "text", "departures"]),
    );
    let mut claim = object(vec![]);
    for name in ["label", "quantity", "value", "unit", "verdict", "danger", "text"] {
        claim.put(name, text());
    }
    claim.put("program", object(vec![("type", texts(["string", "null"]))]));
    claim.put("unsafe", of_type("boolean"));
    for name in ["claimed", "half_step", "ours", "difference", "chance", "mass", "matched"] {
        claim.put(name, number());
    }
    for name in ["difference_percent", "uncertainty_percent"] {
        claim.put(name, maybe());
    }
    claim.put("count", of_type("integer"));
    claim.put("readings", list_of(reading.clone()));
    claim.put("nearest", reading);
    claim.put("error", of_type("object"));
    let survivor = closed(
        object(vec![
            ("prior", number()),
            ("share", number()),
            ("values", list_of(number())),
            ("text", text()),
            ("departures", list_of(departure)),
        ]),
        texts(["prior", "share", "values", "text", "departures"]),
    );
    let program = closed(
        object(vec![
            ("program", text()),
            ("claims", list_of(of_type("integer"))),
            ("count", of_type("integer")),
            ("text", text()),
            ("survivors", list_of(survivor)),
        ]),
        texts(["program", "claims", "count", "text", "survivors"]),
    );
    let claim = closed(claim, texts(["label", "program", "quantity", "value", "unit"]));
    let properties = object(vec![
        ("carb", version()),
        ("unsafe", of_type("boolean")),
        ("answered", of_type("boolean")),
        ("claims", list_of(claim)),
        ("programs", list_of(program)),
    ]);
    closed(properties, texts(["carb", "unsafe", "answered", "claims", "programs"]))
}

/// The parts of the bottling job that are objects.
const BOTTLING_PARTS: [&str; 15] = [
    "drink",
    "readiness",
    "gravity_point",
    "residual",
    "added",
    "priming",
    "primed",
    "weighed",
    "syrup",
    "wort",
    "balance",
    "storage",
    "fill",
    "ready",
    "dry_yeast",
];

/// The parts of the kegging job that are objects.
fn kegging_parts() -> impl Iterator<Item = &'static str> {
    ["kegs", "readiness", "start"].into_iter().chain(PARTS.iter().map(|spec| spec.place))
}

/// The schema: under `$defs`, `request.NAME` and `answer.NAME` for each function, each table and the plan.
#[must_use]
pub fn schema_text() -> String {
    let mut defs = object(vec![("doubts", doubts()), ("estimate", estimate()), ("error", error())]);
    for function in FUNCTIONS {
        let name = function.name;
        defs.put(alloc::format!("request.{name}"), request(function.inputs, &[], true));
        let mut properties = object(vec![("carb", version()), ("function", object(vec![("const", Node::text(name))]))]);
        properties.put("request", of_type("object"));
        for output in function.outputs {
            put_quantity(&mut properties, output.noun, output.key);
        }
        standing(&mut properties);
        let required = texts(["carb", "function", "request", "cautions", "equations", "sources", "working"]);
        defs.put(alloc::format!("answer.{name}"), one_of(vec![closed(properties, required), see("error")]));
    }
    for table in TABLES {
        let name = table.name;
        let mut row = object(vec![]);
        for column in table.columns {
            if column.dimension.is_none() {
                row.put(column.name(None), object(vec![("type", texts(["string", "null"]))]));
            }
            for unit in column.units() {
                row.put(column.name(Some(unit)), object(vec![("type", texts(["number", "null"]))]));
            }
        }
        let properties = object(vec![
            ("carb", version()),
            ("table", object(vec![("const", Node::text(name))])),
            ("request", of_type("object")),
            ("columns", list_of(of_type("object"))),
            ("rows", list_of(closed(row, Node::List(Vec::new())))),
        ]);
        defs.put(alloc::format!("request.{name}"), request(table.inputs, table.lists, true));
        let required = texts(["carb", "table", "request", "columns", "rows"]);
        defs.put(alloc::format!("answer.{name}"), one_of(vec![closed(properties, required), see("error")]));
    }
    // A plan answers part by part: what is missing is an error of the part that needs it.
    for list in LISTS {
        defs.put(alloc::format!("row.{}", list.name), row(list));
    }
    defs.put("request.plan", request(&inputs(), &takes(), false));
    defs.put("request.kegging", request(keg_inputs::INPUTS, keg_inputs::TAKES, false));
    defs.put("request.bottling", request(bottling::INPUTS, TAKES, false));
    let start = || {
        let mut properties = object(vec![("carb", version()), ("request", of_type("object"))]);
        for flag in ["answered", "danger"] {
            properties.put(flag, of_type("boolean"));
        }
        properties
    };
    let mut properties = start();
    for part in BOTTLING_PARTS {
        properties.put(part, of_type("object"));
    }
    for part in ["sugars", "bottles", "safety"] {
        properties.put(part, of_type("array"));
    }
    let sure = || object(vec![("type", Node::text("object")), ("additionalProperties", see("estimate"))]);
    properties.put("uncertainty", sure());
    let required = texts(["carb", "request", "answered", "danger", "priming", "storage", "ready", "safety"]);
    defs.put("answer.bottling", one_of(vec![closed(properties, required), see("error")]));
    let mut properties = start();
    put_quantity(&mut properties, "", Key::Serving);
    for part in kegging_parts() {
        properties.put(part, of_type("object"));
    }
    for part in ["days", "safety"] {
        properties.put(part, of_type("array"));
    }
    properties.put("uncertainty", sure());
    let required = texts(["carb", "request", "answered", "danger", "kegs", "start", REGULATOR, "days", "safety"]);
    defs.put("answer.kegging", one_of(vec![closed(properties, required), see("error")]));
    let mut properties = start();
    for part in ["bottling", "kegging"] {
        properties.put(part, of_type("object"));
    }
    properties.put("uncertainty", sure());
    let required = texts(["carb", "request", "answered", "danger", "bottling", "kegging"]);
    defs.put("answer.plan", one_of(vec![closed(properties, required), see("error")]));
    defs.put("request.crosscheck", claims_request());
    defs.put("answer.crosscheck", one_of(vec![crosscheck_answer(), see("error")]));
    let schema = object(vec![
        ("$schema", Node::text(DRAFT)),
        ("title", Node::text("requests and answers of carb, version 1")),
        ("$defs", defs),
    ]);
    serde_json::to_string_pretty(&schema).unwrap_or_default()
}
