//! A yard from an address, held against the same rules as a file.

use crate::browser;
use crate::fetched::{self, Failure};
use farend_core::fault::Fault;
use farend_core::yard::Yard;
use farend_core::yard::edit::Editing;
use farend_core::yard::rules::LARGEST_FILE;
use std::time::Duration;

/// How long its host may take.
const PATIENCE: Duration = Duration::from_secs(20);

/// Why it isn't there.
#[derive(Clone, Debug, PartialEq)]
pub enum Refusal {
    /// Its text isn't.
    Failed(Failure),
    /// Its text isn't a sound yard.
    Faults(Vec<Fault>),
}

/// A yard that was loaded.
#[derive(Clone)]
pub struct Loaded {
    /// The yard.
    pub yard: Editing,
    /// When it was loaded, where that was earlier and it couldn't be loaded now.
    pub since: Option<String>,
}

/// Loads a yard; where its host can't be reached, it's the one that was loaded last.
pub async fn load(address: &str) -> Result<Loaded, Refusal> {
    let allowed = |address: &str| browser::yard_address(address).is_some();
    match fetched::text(address, LARGEST_FILE, PATIENCE, allowed).await {
        Ok(text) => {
            let yard = read(&text)?;
            fetched::keep(address, &text).await;
            Ok(Loaded { yard, since: None })
        }
        Err(failure @ (Failure::Unreachable | Failure::TooSlow)) => {
            let kept = fetched::kept(address).await;
            let (text, since) = kept.ok_or(Refusal::Failed(failure))?;
            let (yard, since) = (read(&text)?, Some(since));
            Ok(Loaded { yard, since })
        }
        Err(failure) => Err(Refusal::Failed(failure)),
    }
}

fn read(text: &str) -> Result<Editing, Refusal> {
    let yard = Yard::from_json(text).map_err(Refusal::Faults)?;
    Ok(Editing::from(&yard))
}
