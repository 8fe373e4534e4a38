//! What the page weighs on the wire.

use std::fs;
use std::path::Path;

use anyhow::{Result, bail};

use crate::finish::{brotli, first_view, parts};

/// The most that a first visit may load, in bytes after brotli.
const GOAL: usize = 150_000;

struct Weight {
    name: String,
    raw: usize,
    brotli: usize,
    /// Whether the first view waits for it.
    first: bool,
}

pub fn report(dist: &Path, must_meet_goal: bool) -> Result<()> {
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

    let share = brotli * 100 / GOAL;
    if brotli <= GOAL {
        println!(
            "Goal {GOAL} bytes of brotli: met, {share} % of it used, {} left.",
            GOAL - brotli
        );
        return Ok(());
    }
    let words = format!(
        "goal {GOAL} bytes of brotli: missed by {}, {share} % of it",
        brotli - GOAL
    );
    if must_meet_goal {
        bail!(words);
    }
    println!("{words}");
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
