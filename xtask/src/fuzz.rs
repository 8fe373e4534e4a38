//! Any bytes against what must hold for them: by the fuzzer where it can be had, else by many random
//! changes of its corpus. Both call `farend_tests::fuzzing`.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, bail, ensure};
use xshell::cmd;

use crate::host::Host;

/// Committed inputs, a folder for each target.
const CORPUS: &str = "fuzz/corpus";
/// Inputs that failed, a folder for each target. The test below tries them too.
const FOUND: &str = "fuzz/found";
const AGAIN: &str = "cargo test --package farend-tests --test fuzzing kept_inputs";
/// The inputs of each target where there is no fuzzer.
const INPUTS: &str = "100000";
/// Seconds that one input may take.
const LONGEST: u32 = 30;

/// The targets that are meant: all, or the named one.
pub fn targets(host: &Host, wanted: Option<&str>) -> Result<Vec<String>> {
    let mut all = Vec::new();
    for entry in fs::read_dir(host.root.join(CORPUS)).context(CORPUS)? {
        all.push(entry?.file_name().to_string_lossy().into_owned());
    }
    all.sort();
    match wanted {
        None => Ok(all),
        Some(name) if all.iter().any(|it| it == name) => Ok(vec![name.to_owned()]),
        Some(name) => bail!("no target is called {name}: {}", all.join(", ")),
    }
}

/// Builds the fuzzer's program.
///
/// It takes options of the compiler that only nightly has; a stable one takes them where it's told to.
/// No sanitizer: nothing here is unsafe, and it would have to be had first.
pub fn build(host: &Host) -> Result<PathBuf> {
    let sh = &host.sh;
    let folder = host.target_folder()?.join("fuzz");
    cmd!(
        sh,
        "cargo-fuzz fuzz build --sanitizer none --target-dir {folder} any"
    )
    .env("RUSTC_BOOTSTRAP", "1")
    .run()?;
    let triple = cmd!(sh, "rustc --print host-tuple").quiet().read()?;
    let program = folder.join(triple).join("release").join("any");
    ensure!(program.is_file(), "no {}", program.display());
    Ok(program)
}

/// Runs the fuzzer for so many seconds on each target.
pub fn run(host: &Host, program: &Path, seconds: u32, targets: &[String]) -> Result<()> {
    let mut failed = Vec::new();
    for name in targets {
        if !on_target(host, program, seconds, name)? {
            failed.push(name.as_str());
        }
    }
    told(&failed)
}

fn on_target(host: &Host, program: &Path, seconds: u32, name: &str) -> Result<bool> {
    let sh = &host.sh;
    // What leads to new places in the program is kept from run to run, beside what is committed.
    let grown = host.scratch().join("fuzz").join(name);
    let found = host.root.join(FOUND).join(name);
    sh.create_dir(&grown)?;
    sh.create_dir(&found)?;
    let artifacts = format!("-artifact_prefix={}/", found.display());
    let (time, longest) = (
        format!("-max_total_time={seconds}"),
        format!("-timeout={LONGEST}"),
    );
    let output = cmd!(
        sh,
        "{program} {grown} {CORPUS}/{name} {time} {longest} {artifacts} -print_final_stats=1"
    )
    .env("FAREND_TARGET", name)
    .quiet()
    .ignore_status()
    .output()?;
    let log = String::from_utf8_lossy(&output.stderr);
    let inputs = inputs(&log).unwrap_or("no");
    println!("{name}: {inputs} inputs in {seconds} s by the fuzzer");
    if !output.status.success() {
        for line in failure(&log) {
            println!("    {line}");
        }
    }
    Ok(output.status.success())
}

/// How many inputs the fuzzer says that it has tried.
fn inputs(log: &str) -> Option<&str> {
    let mut lines = log.lines();
    lines.find_map(|line| Some(line.strip_prefix("stat::number_of_executed_units:")?.trim()))
}

/// What it says about an input that failed: the panic, and where the input is.
fn failure(log: &str) -> impl Iterator<Item = &str> {
    let is_told = |line: &&str| !line.starts_with(['#', '=']) && !line.starts_with("INFO");
    let from_panic = log.lines().skip_while(|line| !line.contains("panicked at"));
    let written = log.lines().filter(|line| line.contains("unit written to"));
    from_panic.take(2).filter(is_told).chain(written)
}

/// Tries random changes of the corpus, without the fuzzer.
pub fn twin(host: &Host, targets: &[String]) -> Result<()> {
    let sh = &host.sh;
    let mut failed = Vec::new();
    for name in targets {
        let status = cmd!(
            sh,
            "cargo test --quiet --release --package farend-tests --test fuzzing -- --exact --nocapture {name}"
        )
        .env("PROPTEST_CASES", INPUTS)
        .run();
        if status.is_err() {
            failed.push(name.as_str());
        }
    }
    told(&failed)
}

fn told(failed: &[&str]) -> Result<()> {
    if failed.is_empty() {
        return Ok(());
    }
    bail!(
        "inputs of {} failed. They are kept in {FOUND}; to try them again: {AGAIN}\n\
         Once it's mended, move the input to {CORPUS}.",
        failed.join(", ")
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    const LOG: &str = "#12\tNEW cov: 3\n\nthread '<unnamed>' (5) panicked at a.rs:1:5:\nno path\n\
        note: run with\n==5== ERROR\nartifact_prefix='f/'; Test unit written to f/crash-1\n\
        stat::number_of_executed_units: 1057\nstat::average_exec_per_sec:     0\n";

    #[test]
    fn the_fuzzers_report_is_read() {
        assert_eq!(inputs(LOG), Some("1057"));
        assert_eq!(inputs("nothing"), None);
        let told: Vec<_> = failure(LOG).collect();
        assert_eq!(
            told,
            [
                "thread '<unnamed>' (5) panicked at a.rs:1:5:",
                "no path",
                "artifact_prefix='f/'; Test unit written to f/crash-1"
            ]
        );
    }
}
