//! Reads a request (JSON) from a file and prints the plan; exits with 1 where there is danger, with 2 where there is no plan.

use carb_core::plan::json;
use std::process::ExitCode;

fn main() -> ExitCode {
    let Some(path) = std::env::args().nth(1) else {
        eprintln!("which file? give the path of a request, such as docs/scenarios/harbour_ale.json");
        return ExitCode::from(2);
    };
    let text = match std::fs::read_to_string(&path) {
        Ok(text) => text,
        Err(error) => {
            eprintln!("{path}: {error}");
            return ExitCode::from(2);
        }
    };
    match json::plan_of(&text) {
        Ok(plan) => {
            print!("{}", plan.to_text());
            if plan.answered() { ExitCode::from(u8::from(plan.danger())) } else { ExitCode::from(2) }
        }
        Err(error) => {
            eprintln!("{path}: {error}");
            ExitCode::from(2)
        }
    }
}
