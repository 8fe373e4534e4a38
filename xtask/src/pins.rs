//! Versions of the tools that Cargo.lock does not hold.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};
use serde::Deserialize;

#[derive(Deserialize)]
#[serde(rename_all = "kebab-case")]
pub struct Pins {
    pub trunk: String,
    pub wasm_bindgen_cli: String,
    pub binaryen: String,
    pub cargo_deny: String,
    pub cargo_fuzz: String,
    pub cargo_mutants: String,
}

#[derive(Deserialize)]
struct Manifest {
    workspace: Workspace,
}

#[derive(Deserialize)]
struct Workspace {
    metadata: Metadata,
}

#[derive(Deserialize)]
struct Metadata {
    tools: Pins,
}

impl Pins {
    pub fn read(root: &Path) -> Result<Self> {
        let path = root.join("Cargo.toml");
        let text =
            fs::read_to_string(&path).with_context(|| format!("reading {}", path.display()))?;
        let manifest: Manifest =
            toml::from_str(&text).context("[workspace.metadata.tools] of Cargo.toml")?;
        Ok(manifest.workspace.metadata.tools)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The command refuses a module made by another version of the library.
    #[test]
    fn wasm_bindgen_command_matches_the_locked_library() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
        let lock: toml::Table = fs::read_to_string(root.join("Cargo.lock"))
            .unwrap()
            .parse()
            .unwrap();
        let library = lock["package"]
            .as_array()
            .unwrap()
            .iter()
            .find(|package| package["name"].as_str() == Some("wasm-bindgen"))
            .unwrap();
        let pins = Pins::read(root).unwrap();
        assert_eq!(library["version"].as_str(), Some(&*pins.wasm_bindgen_cli));
    }
}
