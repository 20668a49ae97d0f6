//! Writes what follows from the tables of the core: `src/generated.rs`, `include/carb.h` and `tests/functions.h`.
//!
//! Without `BLESS` it only compares. `BLESS=1` rewrites; members that were there stay where they are and new ones are
//! appended, so that older callers are still understood. `BLESS=anew` forgets that order, which breaks the binary
//! interface: raise `CARB_ABI_VERSION` with it.

use carb_core::basis::request::choices;
use carb_core::basis::{Function, Lists, Need, Request};
use carb_core::error::code;
use carb_core::evidence::caution::CAUTIONS;
use carb_core::quantity::field::Kind;
use carb_core::quantity::{Key, Name, Unit};
use carb_core::table::FUNCTIONS;
use carb_core::table::tables::{self, Cell, Column, Table};
use std::fmt::Write;
use std::fs;
use std::path::Path;

/// The statuses of the face itself; those of the core come from its table.
const FACE: &[(&str, i32, &str)] = &[
    ("NULL_POINTER", -100, "A pointer is NULL, or not aligned for its type."),
    ("BAD_STRUCT_SIZE", -101, "A struct_size that no struct has, or a member set that this version does not know."),
    ("BAD_UTF8", -102, "A text that is not UTF-8."),
    ("BUFFER_TOO_SMALL", -103, "A buffer that the text does not fit into."),
    ("UNKNOWN_ENUM", -104, "A number that is no enumerator of its list."),
    ("PANIC", -105, "The library failed, which should not happen."),
    ("UNKNOWN_OUTPUT", -106, "An output that the function does not have."),
    ("UNKNOWN_UNIT", -107, "A unit that is not known, or that measures something else."),
    ("BAD_COUNT", -108, "A count of elements that does not fit."),
    ("TEXT_TOO_LONG", -109, "A name longer than any, or without an end."),
    ("OVERLAP", -110, "Two outputs that lie over each other."),
];

const I32: &str = "i32";
const F64: &str = "f64";

/// A member of a struct.
#[derive(Clone)]
struct Member {
    name: String,
    rust: &'static str,
    doc: String,
}

fn root(file: &str) -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(file)
}

fn bless() -> Option<String> {
    std::env::var("BLESS").ok().filter(|value| !value.is_empty())
}

/// Compares a file with what it should hold, or writes it.
fn keep(file: &str, text: &str) {
    let path = root(file);
    if bless().is_some() {
        fs::write(&path, text).expect("the file is written");
    }
    let kept = fs::read_to_string(&path).unwrap_or_default();
    for (at, (kept, now)) in kept.lines().zip(text.lines()).enumerate() {
        assert_eq!(kept, now, "{file}, line {}: out of date, run BLESS=1 cargo test -p carb-ffi", at + 1);
    }
    assert_eq!(kept, text, "{file} is out of date: run BLESS=1 cargo test -p carb-ffi");
}

#[test]
fn what_is_generated_is_current() {
    let before = match bless().as_deref() {
        Some("anew") => String::new(),
        _ => fs::read_to_string(root("src/generated.rs")).unwrap_or_default(),
    };
    let source = source(&before);
    assert_same_numbers(&before, &source);
    keep("src/generated.rs", &source);
    keep("tests/functions.h", &functions_h());
    keep("tests/functions/mod.rs", &functions_rs());
    keep("include/carb.h", &header());
}

/// What a struct looks like when its members change: the old ones stay, the new ones follow, nothing lies in a hole.
#[test]
fn new_members_go_behind() {
    let member = |name: &str, rust| Member { name: name.into(), rust, doc: "doc".into() };
    let first = structure("", "s", "doc", vec![member("a", I32), member("x", F64), member("b", I32)]);
    assert_eq!(members_before(&first, "s"), ["a", "x", "b", "reserved_1"]);
    let new = vec![member("c", I32), member("b", I32), member("y", F64), member("x", F64), member("a", I32)];
    let second = structure(&first, "s", "doc", new);
    assert_eq!(members_before(&second, "s"), ["a", "x", "b", "reserved_1", "c", "reserved_2", "y"]);
    let lost = std::panic::catch_unwind(|| structure(&second, "s", "doc", vec![member("a", I32)]));
    assert!(lost.is_err(), "a member that goes breaks the binary interface");
}

/// The inputs that any function takes, choices first, so that no struct has a hole.
fn inputs() -> Vec<Key> {
    let taken = |key: &&Key| FUNCTIONS.iter().any(|function| function.takes(**key));
    let mut keys: Vec<Key> = Key::ALL.iter().filter(taken).copied().collect();
    keys.sort_by_key(|key| matches!(key.field().kind, Kind::Number { .. }));
    keys
}

fn input_member(key: Key) -> Member {
    let name = Name::first(key).to_string();
    let meaning = key.field().meaning;
    match (key.field().kind, key.limits(), key.dimension().map(Unit::first)) {
        (Kind::Number { .. }, Some((low, high)), Some(unit)) => {
            let (low, high) = (short(unit.from_si(low)), short(unit.from_si(high)));
            let unit = if unit.symbol.is_empty() { String::new() } else { format!("{}, ", unit.symbol) };
            Member { name, rust: F64, doc: format!("{meaning}; {unit}{low} to {high}") }
        }
        (Kind::Flag, ..) => Member { name, rust: I32, doc: format!("{meaning}; an enum carb_flag") },
        _ => Member { doc: format!("{meaning}; an enum carb_{name}"), name, rust: I32 },
    }
}

fn short(value: f64) -> String {
    let text = format!("{value:.4}");
    text.trim_end_matches('0').trim_end_matches('.').to_string()
}

fn output_members(function: &Function) -> Vec<Member> {
    let head = [
        ("cautions", "u32", "bits of an enum carb_caution: where an equation was used outside its range"),
        ("danger", I32, "1 if somebody may be hurt, else 0; carb_json tells why"),
        ("caution_count", I32, "how many cautions there are, notes included; carb_json tells them"),
    ];
    let head = head.map(|(name, rust, doc)| Member { name: name.into(), rust, doc: doc.into() });
    let values = output_names(function).into_iter().zip(function.outputs).map(|(name, output)| {
        let unit = output.key.dimension().map(Unit::first).expect("an output is a number");
        let noun = if output.noun.is_empty() { String::new() } else { format!("{}: ", output.noun) };
        Member { name, rust: F64, doc: format!("{noun}{}; {}", output.key.field().meaning, unit.symbol) }
    });
    head.into_iter().chain(values).collect()
}

fn output_names(function: &Function) -> Vec<String> {
    let name = |output: &carb_core::basis::Output| {
        let unit = output.key.dimension().map(Unit::first).expect("an output is a number");
        Function::output_name(*output, unit).to_string()
    };
    function.outputs.iter().map(name).collect()
}

/// The members of a struct as the file has them.
fn members_before(before: &str, name: &str) -> Vec<String> {
    let Some((_, rest)) = before.split_once(&format!("pub struct {name} {{\n")) else { return Vec::new() };
    let body = rest.split_once("\n}").map_or(rest, |(body, _)| body);
    let names = body.lines().filter_map(|line| line.trim().strip_prefix("pub ")?.split_once(':'));
    names.map(|(name, _)| name.to_string()).filter(|name| name != "struct_size").collect()
}

/// A struct whose members keep their places, new ones behind, without holes.
fn structure(before: &str, name: &str, doc: &str, wanted: Vec<Member>) -> String {
    let old = members_before(before, name);
    let mut members = Vec::new();
    for kept in &old {
        let found = wanted.iter().find(|member| member.name == *kept).cloned();
        let reserved = || kept.starts_with("reserved_").then(|| reserve(kept.clone()));
        members.push(found.or_else(reserved).unwrap_or_else(|| {
            panic!("{name}.{kept} is gone, which breaks the binary interface: see the head of this file")
        }));
    }
    members.extend(wanted.into_iter().filter(|member| !old.contains(&member.name)));
    let start = Member { name: "struct_size".into(), rust: "u32", doc: format!("sizeof ({name})") };
    let mut whole = vec![start];
    let mut filled = 4;
    let mut reserves = old.iter().filter(|name| name.starts_with("reserved_")).count();
    let mut fill = |whole: &mut Vec<Member>| {
        reserves += 1;
        whole.push(reserve(format!("reserved_{reserves}")));
    };
    for member in members {
        if member.rust == F64 && filled % 8 != 0 {
            fill(&mut whole);
            filled += 4;
        }
        filled += width(member.rust);
        whole.push(member);
    }
    if filled % 8 != 0 {
        fill(&mut whole);
    }
    let mut text = comment("", doc);
    let _ = writeln!(text, "#[repr(C)]\n#[derive(Clone, Copy, Debug)]\npub struct {name} {{");
    for Member { name, rust, doc } in whole {
        let _ = writeln!(text, "{}    pub {name}: {rust},", comment("    ", &doc));
    }
    text + "}\n\n"
}

/// The bytes of a member.
fn width(rust: &str) -> usize {
    match rust {
        F64 => size_of::<f64>(),
        _ => text_width(rust).unwrap_or(size_of::<i32>()),
    }
}

/// The bytes of a text.
fn text_width(rust: &str) -> Option<usize> {
    rust.strip_prefix("[c_char; ")?.strip_suffix(']')?.parse().ok()
}

fn reserve(name: String) -> Member {
    Member { name, rust: I32, doc: "not used".into() }
}

/// The tables whose rows are had by index.
const BY_INDEX: [&str; 4] = ["fermentables", "bottle_classes", "sources", "cautions"];

fn table(name: &str) -> &'static Table {
    tables::named(name).expect("a table of the library")
}

/// The members of a row. A text has room for half as much again as it needs now, and keeps its room for ever.
fn row_members(before: &str, table: &Table) -> Vec<Member> {
    let mut longest = vec![0; table.columns.len()];
    let mut look = |cells: &[Cell]| {
        for (longest, cell) in longest.iter_mut().zip(cells) {
            if let Cell::Text(text) = cell {
                *longest = text.len().max(*longest);
            }
        }
    };
    table.rows(&Request::new(), &Lists::default(), &mut look).expect("a table that takes nothing");
    let member = |(column, longest): (&Column, usize)| {
        let Some(unit) = column.dimension.map(Unit::first) else {
            let name = column.name(None).to_string();
            let room = room_before(before, &row_name(table), &name);
            let room = room.unwrap_or_else(|| (longest + longest / 2 + 1).next_power_of_two().max(32));
            assert!(longest < room, "{}.{name} has {room} bytes, a text needs {longest} and its NUL", table.name);
            let rust = Box::leak(format!("[c_char; {room}]").into_boxed_str());
            return Member { name, rust, doc: format!("{}; a text that ends with a NUL", column.meaning) };
        };
        let symbol = if unit.symbol.is_empty() { String::new() } else { format!("; {}", unit.symbol) };
        let doc = format!("{}{symbol}; NaN where nothing is known", column.meaning);
        Member { name: column.name(Some(unit)).to_string(), rust: F64, doc }
    };
    table.columns.iter().zip(longest).map(member).collect()
}

fn row_name(table: &Table) -> String {
    format!("carb_{}_row", table.name)
}

/// The room of a text that the file has already.
fn room_before(before: &str, structure: &str, member: &str) -> Option<usize> {
    let (_, rest) = before.split_once(&format!("pub struct {structure} {{\n"))?;
    let body = rest.split_once("\n}").map_or(rest, |(body, _)| body);
    let found = body.lines().find_map(|line| line.trim().strip_prefix(&format!("pub {member}: "))?.strip_suffix(','));
    text_width(found?)
}

/// What follows from a table: its row, and how many there are.
fn rows_source(before: &str, table: &Table) -> String {
    let (name, upper, row) = (table.name, table.name.to_uppercase(), row_name(table));
    let members = row_members(before, table);
    let choice = choice_of(table).map(|key| (key, Name::first(key).to_string()));
    let doc = format!("A row of {name}. {}", table.summary);
    let number = choice.iter().map(|(_, field)| Member {
        name: field.clone(),
        rust: I32,
        doc: format!("its number, for the {field} of carb_inputs; an enum carb_{field}"),
    });
    let mut text = structure(before, &row, &doc, number.chain(members.iter().cloned()).collect());
    let _ = write!(
        text,
        "static {upper}_ROW: RowShape = RowShape {{\n    table: \"{name}\",\n    size: size_of::<{row}>(),\n    columns: &[\n"
    );
    for Member { name, rust, .. } in &members {
        let _ = match text_width(rust) {
            Some(room) => writeln!(text, "        Cell::Text {{ offset: offset_of!({row}, {name}), room: {room} }},"),
            None => writeln!(text, "        Cell::Number {{ offset: offset_of!({row}, {name}) }},"),
        };
    }
    let number =
        choice.map_or("None".to_string(), |(key, field)| format!("Some((Key::{key:?}, offset_of!({row}, {field})))"));
    let _ = write!(text, "    ],\n    number: {number},\n}};\n\n");
    text += &comment("", &format!("How many {} there are.", name.replace('_', " ")));
    let _ = write!(
        text,
        "#[unsafe(no_mangle)]\npub extern \"C\" fn carb_{name}_count() -> usize {{\n    count(&{upper}_ROW)\n}}\n\n"
    );
    let doc = "Receives the row at an index from 0, below the count. The texts are the caller's own, as everything is.";
    text += &comment("", doc);
    let _ = write!(
        text,
        "#[unsafe(no_mangle)]\npub unsafe extern \"C\" fn carb_{name}_at(\n    index: usize,\n    row: *mut {row},\n    \
         error: *mut carb_error,\n) -> i32 {{\n    // SAFETY: the contract of the header is that of `at`.\n    \
         unsafe {{ at(&{upper}_ROW, index, row, error) }}\n}}\n"
    );
    text
}

/// The input that a row of the table can be chosen for.
fn choice_of(table: &Table) -> Option<Key> {
    [("fermentables", Key::Sugar), ("bottle_classes", Key::BottleClass)]
        .into_iter()
        .find_map(|(name, key)| (name == table.name).then_some(key))
}

/// A documentation comment, wrapped.
fn comment(indent: &str, doc: &str) -> String {
    let mut text = String::new();
    for paragraph in doc.split('\n') {
        let mut line = format!("{indent}///");
        for word in paragraph.split_whitespace() {
            if line.chars().count() + 1 + word.chars().count() > 116 {
                text += &line;
                text += "\n";
                line = format!("{indent}///");
            }
            line.push(' ');
            line += word;
        }
        text += &line;
        text += "\n";
    }
    text
}

fn enumeration(name: &str, doc: &str, values: &[(String, i32, String)]) -> String {
    let mut text = comment("", doc);
    let _ = writeln!(text, "#[repr(C)]\n#[derive(Clone, Copy, Debug, PartialEq, Eq)]\npub enum {name} {{");
    for (name, value, doc) in values {
        let _ = writeln!(text, "{}    {name} = {value},", comment("    ", doc));
    }
    text + "}\n\n"
}

/// The enums, by name.
fn enumerations(before: &str) -> Vec<(String, String)> {
    let mut all = Vec::new();
    let mut add = |name: &str, doc: &str, values: Vec<(String, i32, String)>| {
        all.push((name.to_string(), enumeration(name, doc, &values)));
    };
    let mut status = vec![("CARB_OK".into(), 0, "It went well.".into())];
    for ((name, value), meaning) in code::ALL.iter().zip(code::MEANINGS) {
        status.push((format!("CARB_{name}"), *value, meaning.trim().into()));
    }
    status.extend(FACE.iter().map(|(name, value, doc)| (format!("CARB_{name}"), *value, doc.to_string())));
    add("carb_status", "What a function returns, and the status of an element that has no value.", status);
    let bits = CAUTIONS.iter().filter_map(|caution| {
        let text = caution.text.replace("the {limit}", "{limit}");
        let text = text.replace("{value}", "the value").replace("{limit}", "the limit");
        Some((format!("CARB_CAUTION_{}", caution.code.to_uppercase()), 1 << caution.bit?, text))
    });
    let doc =
        "Bits of the cautions that equations raise outside their ranges, in results and in the status of elements.";
    add("carb_caution", doc, bits.collect());
    let flags = [("CARB_FLAG_NOT_GIVEN", 0, "not given"), ("CARB_NO", 1, "no"), ("CARB_YES", 2, "yes")];
    add("carb_flag", "Yes or no.", flags.map(|(name, value, doc)| (name.into(), value, doc.into())).to_vec());
    for key in inputs().into_iter().filter(|key| !choices(*key).is_empty()) {
        let field = Name::first(key).to_string();
        let prefix = prefix(key);
        let mut values = vec![(format!("{prefix}_NOT_GIVEN"), 0, "not given".into())];
        for (name, number) in choices(key).iter().zip(numbers(before, key)) {
            values.push((format!("{prefix}_{}", name.to_uppercase()), number, name.to_string()));
        }
        let first = key.field().meaning[..1].to_uppercase();
        add(&format!("carb_{field}"), &format!("{first}{}.", &key.field().meaning[1..]), values);
    }
    all
}

fn prefix(key: Key) -> String {
    format!("CARB_{}", Name::first(key).to_string().to_uppercase())
}

/// The numbers of a field's choices, in their order. What has a number keeps it; what is new takes the next one, wherever
/// it stands in the list.
fn numbers(before: &str, key: Key) -> Vec<i32> {
    let prefix = prefix(key);
    let old = |name: &str| {
        let start = format!("    {prefix}_{} = ", name.to_uppercase());
        before.lines().find_map(|line| line.strip_prefix(&start)?.trim_end_matches(',').parse::<i32>().ok())
    };
    let kept: Vec<Option<i32>> = choices(key).iter().map(|name| old(name)).collect();
    let mut next = 1 + kept.iter().flatten().max().copied().unwrap_or(0);
    let mut take = || {
        next += 1;
        next - 1
    };
    kept.into_iter().map(|number| number.unwrap_or_else(&mut take)).collect()
}

#[test]
fn a_choice_keeps_its_number_wherever_it_stands() {
    assert_eq!(choices(Key::Yeast), ["live", "none"]);
    assert_eq!(numbers("", Key::Yeast), [1, 2]);
    assert_eq!(numbers("    CARB_YEAST_NONE = 1,\n", Key::Yeast), [2, 1]);
    assert_eq!(numbers("    CARB_YEAST_LIVE = 1,\n    CARB_YEAST_NONE = 7,\n", Key::Yeast), [1, 7]);
}

/// No enumerator may ever change its number.
fn assert_same_numbers(before: &str, now: &str) {
    for line in before.lines().filter(|line| line.starts_with("    CARB_") && line.contains(" = ")) {
        assert!(now.contains(line), "{} changed or is gone, which breaks the binary interface", line.trim());
    }
}

fn about(function: &Function) -> String {
    let names = |wanted: &dyn Fn(&Need) -> Option<String>| {
        let found = function.inputs.iter().filter_map(|input| {
            let instead = wanted(&input.need)?;
            Some(format!("{}{instead}", Name::first(input.key)))
        });
        found.collect::<Vec<_>>().join(", ")
    };
    let mut text = function.summary.to_string();
    let required = names(&|need| (*need == Need::Required).then(String::new));
    if !required.is_empty() {
        let _ = write!(text, "\n\nRequired: {required}.");
    }
    let mut groups: Vec<&str> = Vec::new();
    for input in function.inputs {
        if let Need::OneOf(group) = input.need
            && !groups.contains(&group)
        {
            groups.push(group);
            let members = names(&|need| (*need == Need::OneOf(group)).then(String::new));
            let _ = write!(text, "\n\nOne of: {members}.");
        }
    }
    let optional = names(&|need| match need {
        Need::Optional(instead) => Some(format!(" ({instead})")),
        _ => None,
    });
    if !optional.is_empty() {
        let _ = write!(text, "\n\nOptional: {optional}.");
    }
    text
}

fn about_n(function: &Function) -> String {
    let varies =
        |key: &Key| function.columns.contains(key) || *key == Key::Altitude && function.columns.contains(&Key::Ambient);
    let columns: Vec<String> = function
        .inputs
        .iter()
        .filter(|input| varies(&input.key))
        .map(|input| Name::first(input.key).to_string())
        .collect();
    format!(
        "carb_{} element by element. What does not vary comes from inputs, the rest from the series, each under any of its \
         names; these may vary: {}. out receives the output of a name such as \"{}\" (in any unit) and NaN where status is \
         below 0; status receives CARB_OK, or bits of an enum carb_caution, or an enum carb_status below 0. Both have n \
         elements; a series may lie over them. A danger beyond the ranges of equations, such as glass that may burst, is told \
         of single answers only: ask carb_{} about the extremes.",
        function.name,
        columns.join(", "),
        output_names(function)[0],
        function.name,
    )
}

fn source(before: &str) -> String {
    let mut text = String::from(
        "//! Structs, enums and functions of the header, from the tables of the core.\n//!\n\
         //! Written by tests/generated.rs (BLESS=1 cargo test -p carb-ffi): do not edit.\n\n\
         use crate::call::{Arrays, Shape, carb_series, each, one};\n\
         use crate::error::carb_error;\n\
         use crate::inputs::Member;\n\
         use crate::rows::{Cell, RowShape, at, count};\n\
         use carb_core::quantity::Key;\n\
         use carb_core::table::functions;\n\
         use core::ffi::c_char;\n\
         use core::mem::offset_of;\n\n",
    );
    for (_, enumeration) in enumerations(before) {
        text += &enumeration;
    }
    text += "/// The numbers of the choices of each field, in their order.\n";
    text += "pub static NUMBERS: &[(Key, &[i32])] = &[\n";
    for key in inputs().into_iter().filter(|key| !choices(*key).is_empty()) {
        let _ = writeln!(text, "    (Key::{key:?}, &{:?}),", numbers(before, key));
    }
    text += "];\n\n";
    let doc = "The inputs of every function. carb_inputs_init makes one in which nothing is given: numbers are CARB_NOT_GIVEN, \
               choices and flags 0. Set its members, or use carb_inputs_set and carb_inputs_choose by any name. A function \
               refuses what it does not take.";
    text += &structure(before, "carb_inputs", doc, inputs().into_iter().map(input_member).collect());
    text += "/// Where each field lies in `carb_inputs`, in the order of the vocabulary.\n";
    text += "pub static MEMBERS: &[Member] = &[\n";
    let mut keys = inputs();
    keys.sort();
    for key in keys {
        let _ = writeln!(
            text,
            "    Member {{ key: Key::{key:?}, offset: offset_of!(carb_inputs, {}) }},",
            Name::first(key)
        );
    }
    text += "];\n";
    for function in FUNCTIONS {
        let (name, upper) = (function.name, function.name.to_uppercase());
        let result = format!("carb_{name}_result");
        text += "\n";
        let doc = format!("What carb_{name} answers; numbers are NaN where it returns an error.");
        text += &structure(before, &result, &doc, output_members(function));
        let _ = write!(
            text,
            "static {upper}: Shape = Shape {{\n    function: &functions::{upper},\n    size: size_of::<{result}>(),\n    outputs: &[\n"
        );
        for output in output_names(function) {
            let _ = writeln!(text, "        offset_of!({result}, {output}),");
        }
        text += "    ],\n";
        for member in ["cautions", "danger", "caution_count"] {
            let _ = writeln!(text, "    {member}: offset_of!({result}, {member}),");
        }
        text += "};\n\n";
        text += &comment("", &about(function));
        let _ = write!(
            text,
            "#[unsafe(no_mangle)]\npub unsafe extern \"C\" fn carb_{name}(\n    inputs: *const carb_inputs,\n    \
             result: *mut {result},\n    error: *mut carb_error,\n) -> i32 {{\n    \
             // SAFETY: the contract of the header is that of `one`.\n    \
             unsafe {{ one(&{upper}, inputs, result, error) }}\n}}\n\n"
        );
        text += &comment("", &about_n(function));
        let _ = write!(
            text,
            "#[unsafe(no_mangle)]\npub unsafe extern \"C\" fn carb_{name}_n(\n    inputs: *const carb_inputs,\n    \
             series: *const carb_series,\n    series_count: usize,\n    output: *const c_char,\n    n: usize,\n    \
             out: *mut f64,\n    status: *mut i32,\n    error: *mut carb_error,\n) -> i32 {{\n    \
             let arrays = Arrays {{ inputs, series, series_count, output, n, out, status }};\n    \
             // SAFETY: the contract of the header is that of `each`.\n    \
             unsafe {{ each({upper}.function, &arrays, error) }}\n}}\n"
        );
    }
    for name in BY_INDEX {
        text += "\n";
        text += &rows_source(before, table(name));
    }
    text
}

/// The functions by name, for the hostile tests in Rust.
fn functions_rs() -> String {
    let mut text = String::from(
        "//! Every function by name, whatever its result. Written by tests/generated.rs: do not edit.\n\n\
         use carb::*;\nuse core::ffi::{c_char, c_void};\n\n\
         pub type One = unsafe extern \"C\" fn(*const carb_inputs, *mut c_void, *mut carb_error) -> i32;\n\
         pub type Each = unsafe extern \"C\" fn(\n    *const carb_inputs,\n    *const carb_series,\n    usize,\n    \
         *const c_char,\n    usize,\n    *mut f64,\n    *mut i32,\n    *mut carb_error,\n) -> i32;\n\n\
         pub struct Entry {\n    pub name: &'static str,\n    pub one: One,\n    pub each: Each,\n    \
         pub size: usize,\n}\n\n\
         macro_rules! all {\n    ($($name:ident, $one:ident, $each:ident, $result:ident;)*) => {\n        &[$(Entry {\n            \
         name: stringify!($name),\n            \
         // SAFETY: the pointer to the result is all that differs.\n            \
         one: unsafe { core::mem::transmute::<*const (), One>($one as *const ()) },\n            \
         each: $each,\n            size: size_of::<$result>(),\n        }),*]\n    };\n}\n\n\
         pub static ALL: &[Entry] = all! {\n",
    );
    for function in FUNCTIONS {
        let name = function.name;
        let _ = writeln!(text, "    {name}, carb_{name}, carb_{name}_n, carb_{name}_result;");
    }
    text + "};\n"
}

/// The functions by name, for the conformance test in C.
fn functions_h() -> String {
    let most = FUNCTIONS.iter().map(|function| function.outputs.len()).max().unwrap_or(1);
    let mut text = String::from(
        "/* Every function by name, in what C99 and C++17 share. Written by tests/generated.rs: do not edit. */\n",
    );
    let _ = writeln!(text, "#define MOST_OUTPUTS {most}\n");
    for function in FUNCTIONS {
        let name = function.name;
        let _ = write!(
            text,
            "static int32_t one_{name}(const carb_inputs *inputs, double *out, uint32_t *cautions, carb_error *error) {{\n    \
             carb_{name}_result result;\n    int32_t status;\n    \
             result.struct_size = sizeof result;\n    status = carb_{name}(inputs, &result, error);\n"
        );
        for (at, output) in output_names(function).iter().enumerate() {
            let _ = writeln!(text, "    out[{at}] = result.{output};");
        }
        text += "    *cautions = result.cautions;\n    return status;\n}\n\n";
    }
    text += "static const struct {\n    const char *name;\n    \
             int32_t (*one)(const carb_inputs *, double *, uint32_t *, carb_error *);\n    \
             int32_t (*n)(const carb_inputs *, const carb_series *, size_t, const char *, size_t, double *, int32_t *, \
             carb_error *);\n    const char *outputs[MOST_OUTPUTS + 1];\n} functions[] = {\n";
    for function in FUNCTIONS {
        let name = function.name;
        let outputs: Vec<String> = output_names(function).iter().map(|output| format!("\"{output}\"")).collect();
        let _ = writeln!(text, "    {{\"{name}\", one_{name}, carb_{name}_n, {{{}, NULL}}}},", outputs.join(", "));
    }
    text + "};\n"
}

/// The version of the header, as macros.
fn version() -> String {
    let parts: Vec<&str> = env!("CARGO_PKG_VERSION").split('.').collect();
    let [major, minor, patch] = parts[..] else { panic!("a version of three parts") };
    format!(
        "\n\n/* The version of this header; carb_version tells that of the library. */\n\
         #define CARB_VERSION \"{major}.{minor}.{patch}\"\n#define CARB_VERSION_MAJOR {major}\n\
         #define CARB_VERSION_MINOR {minor}\n#define CARB_VERSION_PATCH {patch}"
    )
}

/// The library's statuses and those of the face have ranges of their own.
#[test]
fn statuses_lie_in_their_ranges() {
    assert!(code::ALL.iter().all(|(_, number)| (-99..=-1).contains(number)));
    assert!(FACE.iter().all(|(_, number, _)| (-199..=-100).contains(number)));
    let mut all: Vec<i32> = code::ALL.iter().map(|(_, n)| *n).chain(FACE.iter().map(|(_, n, _)| *n)).collect();
    all.sort();
    assert!(all.windows(2).all(|pair| pair[0] != pair[1]), "a number is used twice");
}

fn header() -> String {
    let mut config = cbindgen::Config::from_file(root("cbindgen.toml")).expect("cbindgen.toml");
    config.export.include = enumerations("").into_iter().map(|(name, _)| name).collect();
    config.export.include.push("CARB_ABI_VERSION".into());
    config.after_includes = config.after_includes.map(|text| text + &version());
    // The modules are found from there, in their order.
    let builder = cbindgen::Builder::new().with_config(config).with_src(root("src/lib.rs"));
    let mut bytes = Vec::new();
    builder.generate().expect("a header").write(&mut bytes);
    String::from_utf8(bytes).expect("UTF-8")
}
