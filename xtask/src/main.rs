//! The one entry for people and CI. `cargo xtask help` lists what it does.

mod bench;
mod budgets;
mod cli;
mod commands;
mod costs;
mod dependencies;
mod e2e;
mod finish;
mod fuzz;
mod host;
mod limited;
mod mutants;
mod page;
mod pins;
mod program;
mod reference;
mod release;
mod server;
mod setup;
mod size;
mod steps;
mod texts;
mod tidy;
mod twice;
mod wasm_opt;
mod web_bench;

use std::process::ExitCode;

fn main() -> ExitCode {
    match cli::run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("\nerror: {error:#}");
            ExitCode::FAILURE
        }
    }
}
