//! The figures that tests/reference.rs compares the core with: made again, and held against the
//! committed ones.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result, bail};
use serde_json::Value;
use xshell::cmd;

use crate::host::Host;

/// Relative. Another machine's logarithm may end in another digit, and a peak that is searched for
/// is known to half of all digits; another formula or draw shows.
const SAME: f64 = 1e-6;

const COMMITTED: &str = "tests/reference/figures.json";

/// Makes the figures again and fails where the committed ones are others.
pub fn check(host: &Host, python: &Path) -> Result<()> {
    let scratch = host.scratch();
    host.sh.create_dir(&scratch)?;
    let made = scratch.join("figures.json");
    make(host, python, &made)?;
    let differences = differences(&read(&host.root.join(COMMITTED))?, &read(&made)?);
    if differences.is_empty() {
        println!("{COMMITTED} is what Python computes.");
        return Ok(());
    }
    bail!(
        "{COMMITTED} isn't what Python computes. If it's meant to change: \
         `cargo xtask reference --write`, then look at the difference.\n{}",
        differences.join("\n")
    );
}

/// Makes the figures again in place of the committed ones.
pub fn write(host: &Host, python: &Path) -> Result<()> {
    make(host, python, &host.root.join(COMMITTED))?;
    println!("Wrote {COMMITTED}.");
    Ok(())
}

fn make(host: &Host, python: &Path, into: &Path) -> Result<()> {
    let sh = &host.sh;
    // -B: no compiled modules beside the sources.
    Ok(cmd!(sh, "{python} -B tests/reference/make.py {into}").run()?)
}

fn read(path: &Path) -> Result<Value> {
    let text = fs::read_to_string(path).with_context(|| format!("reading {}", path.display()))?;
    serde_json::from_str(&text).with_context(|| format!("reading {}", path.display()))
}

fn differences(committed: &Value, made: &Value) -> Vec<String> {
    let mut found = Vec::new();
    compare("", committed, made, &mut found);
    found
}

fn compare(place: &str, committed: &Value, made: &Value, found: &mut Vec<String>) {
    match (committed, made) {
        (Value::Object(a), Value::Object(b)) => {
            for (key, value) in a {
                match b.get(key) {
                    Some(other) => compare(&format!("{place}/{key}"), value, other, found),
                    None => found.push(format!("{place}/{key}: no longer computed")),
                }
            }
            let new = b.keys().filter(|key| !a.contains_key(*key));
            found.extend(new.map(|key| format!("{place}/{key}: not committed")));
        }
        (Value::Array(a), Value::Array(b)) => {
            if a.len() != b.len() {
                let (a, b) = (a.len(), b.len());
                found.push(format!("{place}: {a} committed, {b} computed"));
            }
            for (index, (value, other)) in a.iter().zip(b).enumerate() {
                compare(&format!("{place}/{index}"), value, other, found);
            }
        }
        _ if !is_same(committed, made) => {
            found.push(format!("{place}: {committed} committed, {made} computed"));
        }
        _ => {}
    }
}

fn is_same(committed: &Value, made: &Value) -> bool {
    match (committed.as_f64(), made.as_f64()) {
        (Some(a), Some(b)) => (a - b).abs() <= SAME * a.abs(),
        _ => committed == made,
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    fn figures() -> Value {
        json!({ "drops": [{ "unit": "bar", "drop": 2.5 }, { "unit": "psi", "drop": 0.0 }] })
    }

    #[test]
    fn another_last_digit_is_the_same() {
        let mut made = figures();
        made["drops"][0]["drop"] = json!(2.5 + 1e-7);
        assert_eq!(differences(&figures(), &made), Vec::<String>::new());
    }

    #[test]
    fn every_difference_is_named() {
        let made = json!({
            "drops": [{ "unit": "pa", "new": 1 }, { "unit": "psi", "drop": 1e-30 }, {}],
        });
        assert_eq!(
            differences(&figures(), &made),
            [
                "/drops: 2 committed, 3 computed",
                "/drops/0/drop: no longer computed",
                "/drops/0/unit: \"bar\" committed, \"pa\" computed",
                "/drops/0/new: not committed",
                "/drops/1/drop: 0.0 committed, 1e-30 computed",
            ]
        );
    }
}
