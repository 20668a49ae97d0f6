//! The binary interface: what a program that was built with an older header relies on stays as it was.
//!
//! `abi.txt` holds every enumerator, every struct with the places of its members, and every function. What is new is added
//! by `BLESS=1 cargo test -p carb-ffi`; nothing that is there may go or move, unless CARB_ABI_VERSION is raised (then
//! `BLESS=anew`). C's own view of the places is held against it by `layout.h`, which tests in C include.

use std::collections::BTreeMap;
use std::fmt::Write;
use std::fs;
use std::path::Path;

fn root(file: &str) -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(file)
}

/// Name of a thing ("member carb_error.code") and what it is ("4 int32_t").
type Interface = BTreeMap<String, String>;

/// The header without comments, and the rest of its macros.
fn bare(header: &str) -> String {
    let mut text = String::new();
    let mut rest = header;
    while let Some((before, comment)) = rest.split_once("/*") {
        text += before;
        rest = comment.split_once("*/").expect("a comment that ends").1;
    }
    text += rest;
    text.lines().map(|line| line.split("//").next().unwrap_or_default()).collect::<Vec<_>>().join("\n")
}

/// Size and alignment of a C type on a machine of 64 bits.
fn size(kind: &str) -> (usize, usize) {
    match kind {
        "int32_t" | "uint32_t" => (4, 4),
        _ if kind.ends_with('*') => (8, 8),
        "double" | "size_t" => (8, 8),
        "char" => (1, 1),
        _ => panic!("a type that no struct has had yet: {kind}"),
    }
}

fn spaced(text: &str) -> String {
    let text = text.replace('*', " * ").replace("struct ", "");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A declaration such as `char name[32]`, as type, name, and count.
fn declared(text: &str) -> (String, String, usize) {
    let (text, count) = match text.split_once('[') {
        Some((before, count)) => (before, count.trim_end_matches(']').parse().expect("a count")),
        None => (text, 1),
    };
    let text = spaced(text);
    let (kind, name) = text.rsplit_once(' ').expect("a type and a name");
    (kind.into(), name.into(), count)
}

/// What the header promises.
fn interface(header: &str) -> Interface {
    let text = bare(header);
    let mut all = Interface::new();
    for line in text.lines() {
        let mut words = line.split_whitespace();
        if let (Some("#define"), Some(name), Some(value)) = (words.next(), words.next(), words.next())
            && !name.starts_with("CARB_VERSION")
        {
            all.insert(format!("macro {name}"), value.into());
        }
    }
    let code = text.lines().filter(|line| !line.starts_with('#')).collect::<Vec<_>>().join(" ");
    for (kind, rest) in ["enum", "struct"].into_iter().flat_map(|kind| {
        let opened = format!("typedef {kind} ");
        code.split(opened.as_str()).skip(1).map(|rest| (kind, rest.to_string())).collect::<Vec<_>>()
    }) {
        let Some((name, body)) = rest.split_once('{').filter(|(name, _)| !name.contains(';')) else {
            let name = rest.split_whitespace().next().expect("a name").to_string();
            all.insert(format!("struct {name}"), "opaque".into());
            continue;
        };
        let (name, body) = (name.trim(), body.split_once('}').expect("a body").0);
        if kind == "enum" {
            for value in body.split(',').filter_map(|value| value.split_once('=')) {
                all.insert(format!("enumerator {}", value.0.trim()), value.1.trim().into());
            }
            continue;
        }
        let (mut end, mut strictest) = (0, 1);
        for member in body.split(';').map(str::trim).filter(|member| !member.is_empty()) {
            let (kind, member, count) = declared(member);
            let (bytes, alignment) = size(&kind);
            end = usize::next_multiple_of(end, alignment);
            strictest = strictest.max(alignment);
            all.insert(format!("member {name}.{member}"), format!("{end} {kind} x {count}"));
            end += bytes * count;
        }
        all.insert(format!("struct {name}"), usize::next_multiple_of(end, strictest).to_string());
    }
    for statement in code.split(';') {
        let statement = statement.rsplit(['{', '}']).next().unwrap_or_default();
        let Some((head, arguments)) = statement.split_once('(').filter(|(head, _)| head.contains("carb_")) else {
            continue;
        };
        let (result, name, _) = declared(head.trim());
        let arguments: Vec<String> = arguments
            .trim()
            .trim_end_matches(')')
            .split(',')
            // Names too: two arguments of one type that change places break a program as well.
            .map(spaced)
            .collect();
        all.insert(format!("function {name}"), format!("{result} ({})", arguments.join(", ")));
    }
    all
}

/// What of the old interface the new one breaks.
fn broken(old: &Interface, new: &Interface) -> Vec<String> {
    let grows = |name: &str| {
        let name = name.strip_prefix("struct ")?;
        let sized = new.contains_key(&format!("member {name}.struct_size"));
        let (old, new) = (old.get(&format!("struct {name}"))?, new.get(&format!("struct {name}"))?);
        (sized && new.parse::<usize>().ok()? >= old.parse().ok()?).then_some(())
    };
    let differs = |(name, was): (&String, &String)| match new.get(name) {
        Some(is) if is == was || grows(name).is_some() => None,
        Some(is) => Some(format!("{name} was {was}, is {is}")),
        None => Some(format!("{name} is gone")),
    };
    old.iter().filter_map(differs).collect()
}

fn written(interface: &Interface) -> String {
    let mut text = String::from(
        "# The binary interface, see tests/interface.rs: name = offset, type and count; size; number; result (arguments).\n",
    );
    for (name, is) in interface {
        let _ = writeln!(text, "{name} = {is}");
    }
    text
}

fn read(text: &str) -> Interface {
    let lines = text.lines().filter(|line| !line.starts_with("# ")).filter_map(|line| line.split_once(" = "));
    lines.map(|(name, is)| (name.to_string(), is.to_string())).collect()
}

/// Checks of the places in C, for a compiler to agree with.
fn layout(interface: &Interface) -> String {
    let mut text = String::from(
        "/* The places of members and the sizes of structs, for 64 bits. Written by tests/interface.rs: do not edit. */\n\
         #define CARB_SAME(name, a, b) typedef char name[(a) == (b) ? 1 : -1]\n\n",
    );
    for (at, (name, is)) in interface.iter().enumerate() {
        let _ = if let Some(member) = name.strip_prefix("member ") {
            let (structure, member) = member.split_once('.').expect("a struct and its member");
            let offset = is.split_once(' ').expect("an offset").0;
            writeln!(text, "CARB_SAME(carb_same_{at}, offsetof({structure}, {member}), {offset});")
        } else if let Some(structure) = name.strip_prefix("struct ").filter(|_| is != "opaque") {
            writeln!(text, "CARB_SAME(carb_same_{at}, sizeof({structure}), {is});")
        } else {
            Ok(())
        };
    }
    text
}

fn keep(file: &str, text: &str) {
    if std::env::var("BLESS").is_ok_and(|bless| !bless.is_empty()) {
        fs::write(root(file), text).expect("the file is written");
    }
    let kept = fs::read_to_string(root(file)).unwrap_or_default();
    assert_eq!(kept, text, "{file} is out of date: run BLESS=1 cargo test -p carb-ffi");
}

#[test]
fn nothing_that_older_programs_rely_on_goes_or_moves() {
    let header = fs::read_to_string(root("include/carb.h")).expect("the header");
    let now = interface(&header);
    let kept = read(&fs::read_to_string(root("abi.txt")).unwrap_or_default());
    let raised = kept.get("macro CARB_ABI_VERSION") != now.get("macro CARB_ABI_VERSION");
    let breaks = broken(&kept, &now);
    assert!(breaks.is_empty() || raised, "this breaks the binary interface: raise CARB_ABI_VERSION\n{breaks:#?}");
    keep("abi.txt", &written(&now));
    keep("tests/layout.h", &layout(&now));
    assert_eq!(now["member carb_error.text"], format!("{} char x 512", std::mem::offset_of!(carb::carb_error, text)));
    assert_eq!(now["struct carb_inputs"], size_of::<carb::carb_inputs>().to_string());
    assert!(now.keys().filter(|name| name.starts_with("function ")).count() > 100);
}

#[test]
fn what_would_break_a_program_is_noticed() {
    let old = interface(
        "typedef enum e { A = 1, B = 2, } e;\n\
         typedef struct s { uint32_t struct_size; int32_t x; double y; char z[8]; } s;\n\
         typedef struct p { const char *name; size_t count; } p;\n\
         int32_t carb_f(const struct s *in, double x);\n",
    );
    assert_eq!(old["member s.z"], "16 char x 8");
    assert_eq!((old["struct s"].as_str(), old["member p.count"].as_str()), ("24", "8 size_t x 1"));
    assert_eq!(old["function carb_f"], "int32_t (const s * in, double x)");
    let with = |from: &str, to: &str| {
        let text = "typedef enum e { A = 1, B = 2, } e;\n\
         typedef struct s { uint32_t struct_size; int32_t x; double y; char z[8]; } s;\n\
         typedef struct p { const char *name; size_t count; } p;\n\
         int32_t carb_f(const struct s *in, double x);\n";
        assert!(text.contains(from));
        broken(&old, &interface(&text.replace(from, to))).len()
    };
    assert_eq!(with("char z[8];", "char z[8]; double more;"), 0, "a struct with a size may grow");
    assert_eq!(with("B = 2,", "B = 2, C = 3,"), 0, "an enumerator may be added");
    assert_eq!(with("int32_t x; double y;", "double y; int32_t x;"), 2, "nothing moves");
    assert_eq!(with("double y;", "float y;".replace("float", "int32_t").as_str()), 3, "no type changes");
    assert_eq!(with("B = 2", "B = 3"), 1, "no number changes");
    assert_eq!(with("B = 2,", ""), 1, "no enumerator goes");
    assert_eq!(with("size_t count;", "size_t count; size_t more;"), 1, "a struct without a size stays as it is");
    assert_eq!(with("double x)", "int32_t x)"), 1, "no argument changes");
    assert_eq!(with("*in, double x)", "*in, double y)"), 1, "no argument is called something else");
    assert_eq!(with("carb_f", "carb_g"), 1, "no function goes");
}

/// The name of the shared library is that of the interface.
#[test]
fn the_version_is_the_same_wherever_it_stands() {
    let header = fs::read_to_string(root("include/carb.h")).expect("the header");
    let build = fs::read_to_string(root("build.rs")).expect("the build script");
    let abi = carb::carb_abi_version();
    assert!(header.contains(&format!("#define CARB_ABI_VERSION {abi}\n")));
    assert!(build.contains(&format!("-soname,libcarb.so.{abi}\"")));
    // SAFETY: a constant text.
    let version = unsafe { core::ffi::CStr::from_ptr(carb::carb_version()) }.to_str().expect("UTF-8");
    assert!(header.contains(&format!("#define CARB_VERSION \"{version}\"\n")));
    let parts = ["MAJOR", "MINOR", "PATCH"].into_iter().zip(version.split('.'));
    for (part, number) in parts {
        assert!(header.contains(&format!("#define CARB_VERSION_{part} {number}\n")), "{part}");
    }
}
