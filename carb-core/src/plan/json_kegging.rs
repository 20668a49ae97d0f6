//! The kegging job as JSON.

use super::json::{object, part_node, put_quantity, put_sure, start};
use super::json_bottling::put_readiness;
use super::kegging::{KegPart, Kegging};
use super::node::Node;
use super::safety;
use crate::basis::Request;
use crate::quantity::Key;

/// The parts that each ask one function.
fn asked_node(part: &KegPart, request: &Request) -> Node {
    part_node(&part.part, request, |node, values| {
        for (output, value) in part.function.outputs.iter().zip(values.as_slice()) {
            put_quantity(node, output.noun, output.key, *value);
        }
    })
}

/// The answer of the kegging job, by itself.
pub(super) fn job_node(job: &Kegging, request: Node) -> Node {
    let mut node = start();
    node.put("request", request);
    node.put("answered", Node::Flag(job.answered()));
    node.put("danger", Node::Flag(job.danger()));
    put_sure(&mut node, job.sure.as_ref());
    if let (Node::Object(members), Node::Object(parts)) = (&mut node, kegging_node(job)) {
        members.extend(parts);
    }
    node
}

/// The parts of the kegging job.
pub(super) fn kegging_node(job: &Kegging) -> Node {
    let request = &job.request;
    let mut node = object();
    put_quantity(&mut node, "", Key::Serving, job.serving.si());
    let kegs = part_node(&job.kegs, request, |node, kegs| {
        node.put("kegs_count", Node::Whole(i64::from(kegs.count)));
        put_quantity(node, "", Key::Keg, kegs.capacity.si());
        put_quantity(node, "", Key::Packaged, kegs.drink.si());
        put_quantity(node, "", Key::Headspace, kegs.headspace());
    });
    node.put("kegs", kegs);
    if let Some(readiness) = &job.readiness {
        node.put("readiness", part_node(readiness, request, put_readiness));
    }
    node.put("start", part_node(&job.start, request, |node, c| put_quantity(node, "", Key::Carbonation, c.si())));
    for part in &job.parts {
        node.put(part.place, asked_node(part, request));
    }
    let days = job.days.iter().map(|day| {
        let mut node = object();
        put_quantity(&mut node, "", Key::Time, day.time.si());
        put_quantity(&mut node, "expected", Key::Carbonation, day.carbonation.expected.si());
        put_quantity(&mut node, "least", Key::Carbonation, day.carbonation.least.si());
        put_quantity(&mut node, "most", Key::Carbonation, day.carbonation.most.si());
        node
    });
    node.put("days", Node::List(days.collect()));
    node.put("safety", Node::List(safety::KEGS.iter().map(Node::text).collect()));
    node
}
