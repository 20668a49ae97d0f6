//! Holds claims against the library: `cargo run -p carb-core --features json --example crosscheck -- FILE.json [--json]`.
//!
//! The file is a request, `{"carb": 1, "claims": [...]}`; `-` reads it from the standard input.

use carb_core::crosscheck::json;
use std::io::Read;
use std::process::ExitCode;

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let Some(path) = arguments.first() else {
        eprintln!("a file with claims is wanted: {{\"carb\": 1, \"claims\": [...]}}");
        return ExitCode::from(2);
    };
    let mut text = String::new();
    let read = match path.as_str() {
        "-" => std::io::stdin().read_to_string(&mut text).map(|_| text),
        path => std::fs::read_to_string(path),
    };
    match read.map_err(|error| error.to_string()).and_then(|text| json::crosscheck_of(&text).map_err(|e| e.to_string()))
    {
        Ok(found) => {
            if arguments.iter().any(|argument| argument == "--json") {
                println!("{}", json::answer(&found));
            } else {
                print!("{}", found.to_text());
            }
            ExitCode::from(u8::from(found.danger()))
        }
        Err(error) => {
            eprintln!("{error}");
            ExitCode::from(2)
        }
    }
}
