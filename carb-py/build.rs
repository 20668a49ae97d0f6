//! Packs the conformance cases, by which the installed package checks itself: of each answer, which is long and holds
//! all numbers of the case, only the checksum is kept.

use std::env;
use std::fs;
use std::path::Path;

/// In a checkout, and in a source distribution, which holds the file that `cases.tsv` links to.
const CASES: [&str; 2] = ["../tests/conformance/cases.tsv", "cases.tsv"];

fn main() {
    let cases = CASES.into_iter().find(|path| Path::new(path).is_file()).expect("the conformance cases are there");
    println!("cargo::rerun-if-changed={cases}");
    println!("cargo::rerun-if-changed=build.rs");
    let text = fs::read_to_string(cases).expect("the conformance cases can be read");
    let packed: Vec<String> = text.lines().enumerate().map(|(at, line)| packed(line, at == 0)).collect();
    let out = env::var_os("OUT_DIR").expect("cargo names the folder of what is built");
    fs::write(Path::new(&out).join("cases.tsv"), packed.join("\n") + "\n").expect("the packed cases are written");
}

/// The function and the request of a case, and the checksum of its answer.
fn packed(line: &str, header: bool) -> String {
    let cells: Vec<&str> = line.split('\t').collect();
    let [function, _, _, _, _, request, answer] = cells[..] else { panic!("a case has seven cells: {line}") };
    let last = if header { "answer_crc".into() } else { format!("{:08x}", crc32(answer.as_bytes())) };
    [function, request, &last].join("\t")
}

/// The checksum of ISO 3309, which Python calls `zlib.crc32`.
fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| (crc >> 1) ^ (0xEDB8_8320 & (crc & 1).wrapping_neg()))
    })
}
