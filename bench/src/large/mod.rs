//! Large yards of invented entries, for times and for trying out how much the program bears. All
//! proportions are this project's judgement.

mod implement;
mod kit;
mod machine;

use farend_core::yard::rules::FORMAT_VERSION;
use fastrand::Rng;
use serde_json::{Value, json};

/// A yard with so many entries of each list, as the text of its file. The same numbers give the same
/// text on every machine.
pub fn large(machines: usize, implements: usize, kits: usize, seed: u64) -> String {
    let mut rng = Rng::with_seed(seed);
    let mut each = |entry: fn(usize, &mut Rng) -> Value, count: usize| -> Vec<Value> {
        (0..count).map(|place| entry(place, &mut rng)).collect()
    };
    let yard = json!({
        "format_version": FORMAT_VERSION,
        "name": "Large yard",
        "place": "Nowhere: every entry is made up",
        "invented": true,
        "currency": "EUR",
        "hour_price": 60,
        "machines": each(machine::machine, machines),
        "implements": each(implement::implement, implements),
        "kits": each(kit::kit, kits),
    });
    yard.to_string()
}

/// A number between two.
fn between(rng: &mut Rng, min: f64, max: f64) -> f64 {
    min + (max - min) * rng.f64()
}

/// With so many digits after the point as a sheet has: two.
fn neat(number: f64) -> f64 {
    (number * 100.0).round() / 100.0
}

/// To the next multiple of a step.
fn to(step: f64, number: f64) -> f64 {
    (number / step).round() * step
}

fn one_of<T: Copy>(rng: &mut Rng, all: &[T]) -> T {
    // Not usize: its width decides what is drawn next.
    all[rng.u32(..all.len() as u32) as usize]
}

/// A figure within a part of itself.
fn about(likely: f64, part: f64) -> Value {
    json!({
        "low": neat(likely * (1.0 - part)),
        "likely": neat(likely),
        "high": neat(likely * (1.0 + part)),
        "source": "judgement",
    })
}

/// Adds a field that most entries have.
fn mostly(rng: &mut Rng, entry: &mut Value, key: &str, value: Value) {
    if rng.f64() < 0.75 {
        entry[key] = value;
    }
}
