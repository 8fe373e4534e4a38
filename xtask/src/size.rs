//! What the page weighs on the wire.

use std::fs;
use std::path::Path;

use anyhow::{Result, bail};

use crate::budgets::{Budgets, Weights};
use crate::finish::{brotli, first_view, parts};

struct Weight {
    name: String,
    raw: usize,
    brotli: usize,
    /// Whether the first view waits for it.
    first: bool,
}

/// Tells what each file weighs, and fails where the first view takes more than is allowed.
pub fn report(root: &Path, dist: &Path) -> Result<()> {
    let weights = weigh(dist)?;
    println!("{:>9} {:>9}  file", "raw", "brotli");
    for Weight {
        name,
        raw,
        brotli,
        first,
    } in &weights
    {
        let later = if *first { "" } else { "  (later)" };
        println!("{raw:>9} {brotli:>9}  {name}{later}");
    }
    let first = || weights.iter().filter(|weight| weight.first);
    let raw: usize = first().map(|weight| weight.raw).sum();
    let brotli: usize = first().map(|weight| weight.brotli).sum();
    println!("{raw:>9} {brotli:>9}  until the first view stands");

    let Weights { goal, ceiling } = Budgets::read(root)?.first_view;
    let verdict = if brotli <= goal { "met" } else { "missed" };
    println!("Goal {goal} bytes of brotli: {verdict}. Nobody may go beyond {ceiling}.");
    if brotli > ceiling {
        bail!(
            "the first view takes {brotli} bytes of brotli, {ceiling} are allowed: tests/bench/budgets.toml"
        );
    }
    Ok(())
}

fn weigh(dist: &Path) -> Result<Vec<Weight>> {
    let first = first_view(dist)?;
    let weigh = |name: String| {
        let content = fs::read(dist.join(&name))?;
        Ok(Weight {
            raw: content.len(),
            brotli: brotli(&content)?.len(),
            first: first.contains(&name),
            name,
        })
    };
    parts(dist)?.into_iter().map(weigh).collect()
}
