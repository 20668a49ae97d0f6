//! Claims and findings as JSON.
//!
//! `{"carb": 1, "claims": [{"quantity": "priming_sugar", "value": "124.6", "unit": "g", ...}], "most_readings": 10}`: a claim is
//! flat, what the program was told by the names of the vocabulary, `label` and `program` as its reader likes.

use super::claim::{Claim, Printed};
use super::finding::{Departure, Finding};
use super::program::Program;
use super::{Crosscheck, Reading, USUAL_READINGS, crosscheck};
use crate::basis::{Refusal, Request};
use crate::error::{Advice, Error};
use crate::plan::json::{Members, Read, VERSION, error_node, object, raw, reason, start, write};
use crate::plan::node::Node;
use crate::quantity::ShortText;
use crate::quantity::name::TEXT_BYTES;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// The most claims of one request.
pub const MOST_CLAIMS: usize = 100_000;
/// The name of the list.
const CLAIMS: &str = "claims";

/// What is found about the claims of a request in JSON.
///
/// # Errors
/// Where the text is no request of claims, or a claim cannot be read: then the refusal has its place and its column.
pub fn crosscheck_of(text: &str) -> Result<Crosscheck, Refusal> {
    let (claims, most_readings) = read(text)?;
    Ok(Crosscheck { most_readings, ..crosscheck(claims) })
}

/// What is found, as JSON.
#[must_use]
pub fn answer(found: &Crosscheck) -> String {
    write(&found_node(found))
}

/// Reads the claims, and how many readings are wanted, and looks into none.
///
/// # Errors
/// As [`crosscheck_of`].
pub fn read(text: &str) -> Result<(Vec<Claim>, usize), Refusal> {
    const WANTED: &str = "a list of claims is wanted, each an object of names and values";
    let bad = |text: &str| Error::BadJson { line: 1, column: 1, reason: ShortText::new(text) };
    let Members(members) = serde_json::from_str(text).map_err(|error| Error::BadJson {
        line: error.line() as u32,
        column: error.column() as u32,
        reason: reason(&error),
    })?;
    let (mut version, mut rows, mut most) = (false, None, None);
    for (name, value) in &members {
        match (name.as_ref(), value) {
            ("carb", Read::Number(number)) if *number == VERSION && !version => version = true,
            ("carb", _) => return Err(Error::WrongVersion.into()),
            (CLAIMS, _) if rows.is_some() => return Err(bad("claims are given twice").into()),
            (CLAIMS, Read::List(all)) if all.len() > MOST_CLAIMS => {
                return Err(Error::TooManyRows { list: CLAIMS, most: MOST_CLAIMS }.into());
            }
            (CLAIMS, Read::List(all)) => rows = Some(all),
            (CLAIMS, _) => return Err(Error::WrongList { list: CLAIMS, advice: WANTED }.into()),
            ("most_readings", Read::Number(number)) if *number >= 0.0 && *number == (*number as u32 as f64) => {
                if most.replace(*number as usize).is_some() {
                    return Err(bad("most_readings is given twice").into());
                }
            }
            ("most_readings", _) => return Err(bad("most_readings should be a whole number").into()),
            _ => return Err(Error::UnknownName { given: ShortText::new(name), nearest: None }.into()),
        }
    }
    if !version {
        return Err(Error::WrongVersion.into());
    }
    let rows = rows.ok_or(Error::WrongList { list: CLAIMS, advice: WANTED })?;
    let mut claims = Vec::new();
    for (at, row) in rows.iter().enumerate() {
        let Read::Object(members) = row else {
            return Err(Refusal {
                error: Error::WrongList { list: CLAIMS, advice: WANTED },
                place: Some((CLAIMS, at + 1)),
            });
        };
        claims.push(read_claim(members).map_err(|error| Refusal { error, place: Some((CLAIMS, at + 1)) })?);
    }
    Ok((claims, most.unwrap_or(USUAL_READINGS)))
}

/// What would break a line of a page, or turn its direction.
fn unprintable(letter: char) -> bool {
    letter.is_control() || matches!(letter, '\u{200e}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

/// The parts of a claim that are texts.
const PARTS: [&str; 5] = ["label", "program", "quantity", "value", "unit"];

fn read_claim(members: &[(alloc::borrow::Cow<'_, str>, Read<'_>)]) -> Result<Claim, Error> {
    const TEXT: Advice = Advice::to("a text of one line is wanted");
    const QUANTITY: Advice = Advice::to("say what is claimed, such as \"priming_sugar\"");
    const UNIT: Advice = Advice::to("say in which unit it is claimed, such as \"g\"");
    const TWICE: Advice = Advice::to("it is given twice: give it once");
    let wrong =
        |part, given: &str, advice: &'static Advice| Error::WrongClaim { part, given: ShortText::new(given), advice };
    let mut parts: [Option<String>; PARTS.len()] = [const { None }; PARTS.len()];
    let mut request = Request::new();
    for (name, value) in members {
        let Some(at) = PARTS.iter().position(|part| part == name) else {
            // Nothing is what a table has where nothing was told.
            if !matches!(value, Read::Other) {
                request.set(name, raw(value))?;
            } else {
                Request::name(name)?;
            }
            continue;
        };
        let text = match value {
            Read::Text(text) => String::from(text.as_ref()),
            Read::Number(number) if PARTS[at] == "value" => Printed::of(*number)?.text,
            Read::Number(number) if at < 2 => format!("{number}"),
            Read::Other => continue,
            _ => return Err(wrong(PARTS[at], "", &TEXT)),
        };
        if parts[at].is_some() {
            return Err(wrong(PARTS[at], &text, &TWICE));
        }
        // What a row is called may be longer than a name, and it is printed on a page.
        if at < 2 && (text.len() > 4 * TEXT_BYTES || text.chars().any(unprintable)) {
            return Err(wrong(PARTS[at], &text, &TEXT));
        }
        parts[at] = Some(text);
    }
    let [label, program, quantity, value, unit] = parts;
    let quantity = quantity.ok_or(wrong("quantity", "", &QUANTITY))?;
    let unit = unit.ok_or(wrong("unit", "", &UNIT))?;
    let claim = Claim::new(&quantity, &value.unwrap_or_default(), &unit, request)?;
    let claim = claim.labelled(&label.unwrap_or_default());
    Ok(match program.filter(|program| !program.trim().is_empty()) {
        Some(program) => claim.of_program(&program),
        None => claim,
    })
}

fn departures_node(departures: &[Departure]) -> Node {
    let all = departures.iter().map(|departure| {
        let mut node = object();
        node.put("question", Node::text(departure.question.matter().name));
        node.put("habit", Node::text(departure.habit.name));
        node.put("prior", Node::number(departure.habit.prior));
        node.put("size_percent", departure.size.map_or(Node::Null, |size| Node::number(100.0 * size)));
        node.put("text", Node::text(departure.says));
        node
    });
    Node::List(all.collect())
}

fn reading_node(reading: &Reading, share: Option<f64>) -> Node {
    let mut node = object();
    node.put("prior", Node::number(reading.prior));
    if let Some(share) = share {
        node.put("share", Node::number(share));
    }
    node.put("value", Node::number(reading.value));
    node.put("text", Node::text(format!("a program that {}", super::text::habits(&reading.departures))));
    node.put("departures", departures_node(&reading.departures));
    node
}

fn finding_node(finding: &Finding, most: usize) -> Node {
    let claim = &finding.claim;
    let mut node = object();
    node.put("label", Node::text(&claim.label));
    node.put("program", claim.program.as_ref().map_or(Node::Null, Node::text));
    node.put("quantity", Node::text(claim.quantity.name));
    node.put("value", Node::text(&claim.printed.text));
    node.put("unit", Node::text(claim.unit.name));
    node.put("unsafe", Node::Flag(finding.danger.is_some()));
    if let Some(danger) = &finding.danger {
        node.put("danger", Node::text(danger));
    }
    node.put("text", Node::text(finding.sentences()));
    let outcome = match &finding.outcome {
        Ok(outcome) => outcome,
        Err(error) => {
            node.put("error", error_node(error));
            return node;
        }
    };
    node.put("verdict", Node::text(outcome.verdict));
    node.put("claimed", Node::number(claim.printed.value));
    node.put("half_step", Node::number(0.5 * claim.printed.step));
    node.put("ours", Node::number(outcome.ours));
    node.put("difference", Node::number(claim.printed.value - outcome.ours));
    let off = outcome.difference(claim.printed.value);
    node.put("difference_percent", off.map_or(Node::Null, |off| Node::number(100.0 * off)));
    let unsure = outcome.uncertainty.map(|unsure| 100.0 * unsure / outcome.ours.abs());
    node.put("uncertainty_percent", unsure.map_or(Node::Null, Node::number));
    node.put("chance", Node::number(outcome.chance));
    node.put("mass", Node::number(outcome.mass));
    node.put("matched", Node::number(outcome.matched));
    node.put("count", Node::Whole(outcome.readings.len() as i64));
    let listed = outcome.readings.iter().take(most);
    let readings = listed.map(|reading| reading_node(reading, Some(outcome.share(reading))));
    node.put("readings", Node::List(readings.collect()));
    if let Some(nearest) = &outcome.nearest {
        node.put("nearest", reading_node(nearest, None));
    }
    node
}

fn program_node(program: &Program, most: usize) -> Node {
    let mut node = object();
    node.put("program", Node::text(&program.name));
    node.put("claims", Node::List(program.claims.iter().map(|&at| Node::Whole(at as i64)).collect()));
    node.put("count", Node::Whole(program.survivors.len() as i64));
    node.put("text", Node::text(program.sentences()));
    let all = program.survivors.iter().take(most).map(|survivor| {
        let mut node = object();
        node.put("prior", Node::number(survivor.prior));
        node.put("share", Node::number(program.share(survivor)));
        node.put("values", Node::List(survivor.values.iter().map(|&value| Node::number(value)).collect()));
        node.put("text", Node::text(survivor.sentence()));
        node.put("departures", departures_node(&survivor.departures));
        node
    });
    node.put("survivors", Node::List(all.collect()));
    node
}

/// What is found, as a tree.
pub(crate) fn found_node(found: &Crosscheck) -> Node {
    let mut node = start();
    node.put("unsafe", Node::Flag(found.danger()));
    node.put("answered", Node::Flag(found.answered()));
    let most = found.most_readings;
    node.put("claims", Node::List(found.claims.iter().map(|finding| finding_node(finding, most)).collect()));
    node.put("programs", Node::List(found.programs.iter().map(|program| program_node(program, most)).collect()));
    node
}
