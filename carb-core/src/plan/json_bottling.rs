//! The bottling job as JSON.

use super::bottles::{BottleRow, Verdict};
use super::bottling::Bottling;
use super::json::{error_node, object, part_node, put_quantity, put_sure, start};
use super::node::Node;
use super::{Expectation, Point, Readiness, safety};
use crate::basis::Request;
use crate::bottling::conditioning::Span;
use crate::bottling::package::PackagePressure;
use crate::bottling::priming::PrimingDose;
use crate::quantity::{Key, Percent, Time};

fn put_dose(node: &mut Node, dose: &PrimingDose) {
    put_quantity(node, "", Key::Mass, dose.mass.si());
    put_quantity(node, "", Key::Dose, dose.dose.si());
}

fn put_package(node: &mut Node, package: &PackagePressure) {
    put_quantity(node, "expected", Key::Gauge, package.expected.gauge.si());
    put_quantity(node, "expected", Key::Absolute, package.expected.absolute.si());
    put_quantity(node, "expected", Key::Carbonation, package.dissolved.si());
    put_quantity(node, "worst", Key::Gauge, package.worst.gauge.si());
    put_quantity(node, "worst", Key::Absolute, package.worst.absolute.si());
}

fn put_expectation(node: &mut Node, found: &Expectation, job: &Bottling) {
    put_quantity(node, "expected", Key::Carbonation, found.expected.si());
    put_quantity(node, "low", Key::Carbonation, found.low.si());
    put_quantity(node, "high", Key::Carbonation, found.high.si());
    if let Some(dose) = found.dose {
        put_quantity(node, "balance_dose", Key::Mass, dose.mass.si());
        put_quantity(node, "balance_dose", Key::Dose, dose.dose.si());
    }
    node.put("text", Node::text(job.expectation_sentence().unwrap_or_default()));
}

pub(super) fn put_readiness(node: &mut Node, found: &Readiness) {
    node.put("verdict", Node::text(found.verdict));
    put_quantity(node, "", Key::CurrentGravity, found.current.si());
    if let Some(end) = found.end {
        put_quantity(node, "", Key::FinalGravity, end.si());
    }
    if let (Some(left), Some(co2)) = (found.left, found.to_come) {
        put_quantity(node, "", Key::Fermentable, left.si());
        put_quantity(node, "to_come", Key::Carbonation, co2.si());
    }
    if let (Some(span), Some(fall)) = (found.span, found.fall) {
        put_quantity(node, "readings", Key::Time, span.si());
        node.put("fall_sg", Node::number(fall));
    }
}

fn put_point(node: &mut Node, point: &Point) {
    put_quantity(node, "", Key::Carbonation, point.co2.si());
    put_quantity(node, "expected", Key::Gauge, point.pressure);
    put_quantity(node, "worst", Key::Gauge, point.worst);
}

fn put_verdict(node: &mut Node, found: &Verdict) {
    node.put("verdict", Node::text(found.word));
    put_quantity(node, "worst", Key::Gauge, found.worst.si());
    put_quantity(node, "limit", Key::Gauge, found.limit.si());
    node.put("rated", Node::Flag(found.rated));
    if let Some(warmest) = found.warmest {
        put_quantity(node, "warmest_store", Key::Temperature, warmest.si());
    }
}

fn put_progress(node: &mut Node, made: &Span<Percent>) {
    put_quantity(node, "expected", Key::Progress, made.expected.si());
    put_quantity(node, "least", Key::Progress, made.least.si());
    put_quantity(node, "most", Key::Progress, made.most.si());
}

fn put_times(node: &mut Node, time: &Span<Time>) {
    put_quantity(node, "expected", Key::Time, time.expected.si());
    put_quantity(node, "least", Key::Time, time.least.si());
    put_quantity(node, "most", Key::Time, time.most.si());
}

fn count(number: u32) -> Node {
    Node::Whole(i64::from(number))
}

fn row_node(row: &BottleRow, request: &Request) -> Node {
    let mut node = object();
    put_quantity(&mut node, "", Key::Bottle, row.content.si());
    if !row.class.is_empty() {
        node.put("bottle_class", Node::text(row.class));
    }
    put_quantity(&mut node, "", Key::Headspace, row.headspace.si());
    put_quantity(&mut node, "gas", Key::Bottle, row.gas.si());
    node.put("count", count(row.count));
    node.put("filled_count", row.filled.map_or(Node::Null, count));
    node.put("washed_count", row.washed.map_or(Node::Null, count));
    if let Some(dose) = &row.dose {
        put_quantity(&mut node, "", Key::Mass, dose.mass.si());
        if let Some((tablets, co2)) = dose.tablets {
            node.put("tablet_count", count(tablets));
            put_quantity(&mut node, "tablets", Key::Carbonation, co2.si());
        }
    }
    let mut storage = object();
    for (place, pressure) in &row.pressures {
        let mut inner = object();
        match pressure {
            Ok(pressure) => put_package(&mut inner, pressure),
            Err(error) => inner.put("error", error_node(error)),
        }
        storage.put(place, inner);
    }
    node.put("storage", storage);
    node.put("glass", part_node(&row.glass, request, put_verdict));
    node
}

/// The answer of the bottling job, by itself.
pub(super) fn job_node(job: &Bottling, request: Node) -> Node {
    let mut node = start();
    node.put("request", request);
    node.put("answered", Node::Flag(job.answered()));
    node.put("danger", Node::Flag(job.danger()));
    put_sure(&mut node, job.sure.as_ref());
    if let (Node::Object(members), Node::Object(parts)) = (&mut node, bottling_node(job)) {
        members.extend(parts);
    }
    node
}

/// The parts of the bottling job.
pub(super) fn bottling_node(job: &Bottling) -> Node {
    let request = &job.request;
    let mut node = object();
    if let Some(packaged) = request.number(Key::Packaged) {
        put_quantity(&mut node, "drink", Key::Packaged, packaged);
    }
    if let Some(readiness) = &job.readiness {
        node.put("readiness", part_node(readiness, request, put_readiness));
    }
    node.put("gravity_point", part_node(&job.point, request, put_point));
    node.put("residual", part_node(&job.residual, request, |node, c| put_quantity(node, "", Key::Carbonation, c.si())));
    if let Some(added) = &job.added {
        node.put("added", part_node(added, request, |node, c| put_quantity(node, "", Key::Carbonation, c.si())));
    }
    node.put(
        "priming",
        part_node(&job.priming, request, |node, dose| {
            node.put("sugar", Node::text(job.sugar.name));
            put_dose(node, dose);
        }),
    );
    node.put(
        "primed",
        part_node(&job.primed, request, |node, drink| {
            put_quantity(node, "", Key::Carbonation, drink.carbonation.si());
            put_quantity(node, "", Key::Abv, drink.abv.si());
            put_quantity(node, "added", Key::Abv, drink.added_abv.si());
        }),
    );
    if let Some(weighed) = &job.weighed {
        let part = part_node(weighed, request, |node, found| {
            put_quantity(node, "", Key::Mass, found.mass.si());
            put_quantity(node, "", Key::Carbonation, found.carbonation.si());
            put_quantity(node, "low", Key::Carbonation, found.range.0.si());
            put_quantity(node, "high", Key::Carbonation, found.range.1.si());
        });
        node.put("weighed", part);
    }
    let sugars = job.sugars.iter().map(|(sugar, dose)| {
        let mut node = object();
        node.put("sugar", Node::text(sugar.name));
        match dose {
            Ok(dose) => put_dose(&mut node, dose),
            Err(error) => node.put("error", error_node(error)),
        }
        node.put("standing", Node::text(sugar.standing.words()));
        node.put("source", Node::text(sugar.source.map_or("", |source| source.citation)));
        node
    });
    node.put("sugars", Node::List(sugars.collect()));
    let syrup = part_node(&job.syrup, request, |node, (syrup, water)| {
        put_quantity(node, "", Key::SyrupWater, water.si());
        put_quantity(node, "least", Key::SyrupWater, syrup.least_water.si());
        put_quantity(node, "", Key::Syrup, syrup.volume.si());
        put_quantity(node, "", Key::SyrupStrength, syrup.strength.si());
    });
    node.put("syrup", syrup);
    if let Some(wort) = &job.wort {
        let part = part_node(wort, request, |node, wort| {
            put_quantity(node, "", Key::Wort, wort.volume.si());
            put_quantity(node, "", Key::WortShare, wort.share.si());
        });
        node.put("wort", part);
    }
    node.put("balance", part_node(&job.expectation, request, |node, found| put_expectation(node, found, job)));
    let mut storage = object();
    for place in &job.storage {
        let mut inner = object();
        put_quantity(&mut inner, "", Key::Temperature, place.temperature.si());
        let part = part_node(&place.pressure, request, put_package);
        if let (Node::Object(members), Node::Object(more)) = (&mut inner, part) {
            members.extend(more);
        }
        storage.put(place.place, inner);
    }
    node.put("storage", storage);
    if let Some(fill) = &job.fill {
        let part = part_node(fill, request, |node, all| {
            put_quantity(node, "", Key::Packaged, all.drink.si());
            node.put("filled_count", count(all.filled));
            node.put("washed_count", count(all.washed));
            put_quantity(node, "leftover", Key::Packaged, all.leftover.si());
        });
        node.put("fill", part);
        node.put("bottles", Node::List(job.bottles.iter().map(|row| row_node(row, request)).collect()));
    }
    let ready = part_node(&job.ready, request, |node, ready| {
        put_times(node, &ready.time);
        let days = ready.days.iter().map(|(time, made, now)| {
            let mut node = object();
            put_quantity(&mut node, "", Key::Time, time.si());
            put_progress(&mut node, made);
            if let Some(co2) = now {
                put_quantity(&mut node, "", Key::Carbonation, co2.si());
            }
            node
        });
        node.put("days", Node::List(days.collect()));
    });
    node.put("ready", ready);
    if let Some(yeast) = &job.yeast {
        node.put("dry_yeast", part_node(yeast, request, |node, mass| put_quantity(node, "", Key::Mass, mass.si())));
    }
    node.put("safety", Node::List(safety::BOTTLES.iter().map(Node::text).collect()));
    node
}
