//! How sure an answer is, in requests and answers in JSON.
//!
//! A request may hold `"uncertainty"`: an object of names and half widths in the unit of the name. A number is k = 2 of a normal
//! distribution, `{"range": number}` an even one, a text the name of a usual instrument. The empty object asks for what
//! the equations alone make unsure.

use super::node::Node;
use crate::basis::{Function, Output, Request};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::quantity::{Key, Name, Unit};
use crate::uncertainty::{Estimate, Share};
use alloc::vec::Vec;

fn object() -> Node {
    Node::Object(Vec::new())
}

/// The units in which a quantity is shown.
pub(super) fn shown(key: Key) -> impl Iterator<Item = &'static Unit> {
    key.dimension().into_iter().flat_map(Unit::of).filter(|unit| unit.shown)
}

fn quantity(key: Key, si: f64) -> Node {
    let mut node = object();
    for unit in shown(key) {
        node.put(Name { key, unit: Some(unit) }, Node::number(unit.from_si(si)));
    }
    node
}

/// A difference of two values of a quantity, in each of its units.
fn difference(key: Key, si: f64) -> Node {
    let mut node = object();
    for unit in shown(key) {
        node.put(Name { key, unit: Some(unit) }, Node::number(si / unit.scale));
    }
    node
}

fn share_node(share: &Share, key: Key) -> Node {
    let source = &share.source;
    let mut node = object();
    node.put("name", Node::text(source.name));
    node.put("value", Node::number(source.value));
    node.put("half_width", Node::number(source.doubt.half_width()));
    node.put("kind", Node::text(source.doubt.kind()));
    node.put("of_an_equation", Node::Flag(source.equation));
    node.put("share", Node::number(share.share));
    node.put("sensitivity", difference(key, share.sensitivity));
    node
}

/// One estimate.
pub(super) fn estimate_node(noun: &str, key: Key, estimate: &Estimate) -> Node {
    let mut node = object();
    node.put("noun", Node::text(noun));
    node.put("value", quantity(key, estimate.value));
    node.put("low", quantity(key, estimate.interval.0));
    node.put("high", quantity(key, estimate.interval.1));
    node.put("standard", difference(key, estimate.standard));
    node.put("method", Node::text(estimate.method.name()));
    node.put("budget", Node::List(estimate.budget.iter().map(|share| share_node(share, key)).collect()));
    node
}

/// What the other models made for the drink say: how far honest answers lie apart, beside the estimate.
pub(super) fn models_node(function: &Function, request: &Request, context: &crate::basis::Context) -> Node {
    let all = context.beverage.kind.models().iter().map(|(model, _)| {
        let mut node = object();
        node.put("model", Node::text(model.name()));
        match function.answer(&request.model(*model), &mut NoSteps) {
            Ok(answer) => {
                for (output, value) in function.outputs.iter().zip(answer.value.as_slice()) {
                    for unit in shown(output.key) {
                        let name = Name { key: output.key, unit: Some(unit) };
                        node.put_under(output.noun, name, Node::number(unit.from_si(*value)));
                    }
                }
            }
            Err(error) => node.put("refused", Node::text(error.code_name())),
        }
        node
    });
    Node::List(all.collect())
}

/// What the noun of a bound begins with: the worst case, and the ends of a range.
const BOUNDS: [&str; 5] = ["worst", "least", "most", "soonest", "latest"];

/// Whether an output is a bound, which has no interval.
fn is_bound(output: &Output) -> bool {
    BOUNDS.iter().any(|bound| output.noun.starts_with(bound))
}

/// The estimates of a function's outputs, bounds left out.
pub(super) fn estimates_node(outputs: &[Output], estimates: &[Estimate]) -> Node {
    let sure = outputs.iter().zip(estimates).filter(|(output, _)| !is_bound(output));
    let all = sure.map(|(output, estimate)| estimate_node(output.noun, output.key, estimate));
    Node::List(all.collect())
}

/// Reads what stands for a doubt.
pub(super) enum Asked<'a> {
    /// Half a width.
    Normal(f64),
    /// Half an even one.
    Range(f64),
    /// A usual instrument.
    Usual(&'a str),
    /// Something else.
    Other,
}

/// Puts the doubts of a request together.
pub(super) fn doubts<'a>(
    members: impl Iterator<Item = (&'a str, Asked<'a>)>,
) -> Result<crate::uncertainty::Doubts, Error> {
    use crate::uncertainty::{Doubt, Doubts};
    let mut doubts = Doubts::default();
    for (text, asked) in members {
        let name = Request::name(text)?;
        match asked {
            Asked::Normal(half) => doubts.set(name, Doubt::Normal(half))?,
            Asked::Range(half) => doubts.set(name, Doubt::Range(half))?,
            Asked::Usual(instrument) => doubts.set_usual(name, instrument)?,
            Asked::Other => {
                return Err(Error::WrongType {
                    parameter: name,
                    wanted: "a half width, {\"range\": half width}, or the name of a usual instrument, as its uncertainty",
                });
            }
        }
    }
    Ok(doubts)
}
