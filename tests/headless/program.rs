//! The example, built and run.

use serde_json::Value;
use std::fs::{self, File};
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::LazyLock;

pub const FOLDER: &str = env!("CARGO_TARGET_TMPDIR");

/// The example on one core and on all.
pub static PROGRAMS: LazyLock<[PathBuf; 2]> = LazyLock::new(|| {
    // Each build takes the place of the other: no other test may build meanwhile.
    let lock = File::create(Path::new(FOLDER).join("headless.lock")).expect("a lock");
    lock.lock().expect("the lock");
    [
        built("one-core", &[]),
        built("all-cores", &["--features", "parallel"]),
    ]
});

fn built(name: &str, features: &[&str]) -> PathBuf {
    let output = Command::new(env!("CARGO"))
        .args(["build", "--quiet", "--message-format", "json"])
        .args(["--package", "farend-core", "--example", "yard"])
        .args(features)
        .current_dir(concat!(env!("CARGO_MANIFEST_DIR"), "/.."))
        .output()
        .expect("cargo");
    let errors = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{errors}");
    let messages = String::from_utf8(output.stdout).expect("text");
    let program = messages.lines().find_map(|line| {
        let message: Value = serde_json::from_str(line).expect("JSON");
        message["executable"].as_str().map(PathBuf::from)
    });
    let kept = Path::new(FOLDER).join(name);
    let _ = fs::remove_file(&kept);
    fs::hard_link(program.expect("an executable"), &kept).expect("a link to it");
    kept
}

pub fn one_core() -> Command {
    Command::new(&PROGRAMS[0])
}

/// A yard as a file.
pub fn file(name: &str, text: &str) -> PathBuf {
    let path = Path::new(FOLDER).join(name);
    fs::write(&path, text).expect("writing a yard");
    path
}

pub fn run(arguments: &[&str], yard: &Path) -> Output {
    one_core()
        .args(arguments)
        .arg(yard)
        .output()
        .expect("it starts")
}

pub fn text(output: Output) -> String {
    assert!(output.status.success(), "{output:?}");
    assert_eq!(output.stderr, b"");
    String::from_utf8(output.stdout).expect("UTF-8")
}

/// All rows of JSON lines.
pub fn rows(text: &str) -> Vec<Value> {
    let lines = text.lines();
    lines
        .map(|line| serde_json::from_str(line).expect("JSON"))
        .collect()
}
