//! What the page may cost, from `tests/bench/budgets.toml`.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};
use serde::Deserialize;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Budgets {
    pub first_view: Weights,
    pub slow: Slow,
    pub drag: Drag,
    pub memory: Memory,
}

/// Bytes of brotli.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Weights {
    pub goal: usize,
    pub ceiling: usize,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Slow {
    pub usable_ms: f64,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Drag {
    pub p95_ms: f64,
    pub p99_ms: f64,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Memory {
    pub growth_mb: f64,
}

impl Budgets {
    pub fn read(root: &Path) -> Result<Self> {
        let file = root.join("tests/bench/budgets.toml");
        let text = fs::read_to_string(&file)?;
        toml::from_str(&text).with_context(|| format!("reading {}", file.display()))
    }
}
