//! What the page weighs on the wire.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result, bail};
use walkdir::WalkDir;

/// The most that a first visit may load, in bytes after brotli.
const GOAL: usize = 150_000;

/// Brotli's largest quality, and the window that browsers are sure to accept.
const QUALITY: i32 = 11;
const WINDOW: i32 = 22;

struct Weight {
    name: String,
    raw: usize,
    brotli: usize,
}

pub fn report(dist: &Path, must_meet_goal: bool) -> Result<()> {
    let weights = weigh(dist)?;
    let raw: usize = weights.iter().map(|weight| weight.raw).sum();
    let brotli: usize = weights.iter().map(|weight| weight.brotli).sum();

    println!("{:>9} {:>9}  file", "raw", "brotli");
    for weight in &weights {
        println!("{:>9} {:>9}  {}", weight.raw, weight.brotli, weight.name);
    }
    println!("{raw:>9} {brotli:>9}  in all");

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
    let mut weights = Vec::new();
    for entry in WalkDir::new(dist).sort_by_file_name() {
        let entry = entry.context("no release page: run `cargo xtask build` first")?;
        if !entry.file_type().is_file() {
            continue;
        }
        let content = fs::read(entry.path())?;
        let name = entry.path().strip_prefix(dist)?.display().to_string();
        weights.push(Weight {
            name,
            raw: content.len(),
            brotli: brotli_size(&content)?,
        });
    }
    Ok(weights)
}

fn brotli_size(content: &[u8]) -> Result<usize> {
    let parameters = brotli::enc::BrotliEncoderParams {
        quality: QUALITY,
        lgwin: WINDOW,
        ..Default::default()
    };
    let mut packed = Vec::new();
    brotli::BrotliCompress(&mut &content[..], &mut packed, &parameters)?;
    Ok(packed.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn repeated_text_packs_well() {
        let packed = brotli_size(&b"shaft power ".repeat(1000)).unwrap();
        assert!((1..100).contains(&packed), "{packed}");
    }
}
