//! This machine as the commands see it: a shell in the repository, and where tools are kept.

use std::env;
use std::ffi::OsString;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result};
use etcetera::BaseStrategy;
use serde_json::Value;
use xshell::{Shell, cmd};

pub struct Host {
    pub sh: Shell,
    pub root: PathBuf,
    /// Tools at their pinned versions, shared by every clone of this user.
    pub tools: PathBuf,
}

impl Host {
    pub fn new() -> Result<Self> {
        let root = Path::new(env!("CARGO_MANIFEST_DIR"))
            .parent()
            .context("xtask lies in a folder of the repository")?
            .to_owned();
        let tools = etcetera::choose_base_strategy()
            .context("no folder for caches: set HOME")?
            .cache_dir()
            .join("farend-tools");
        let sh = Shell::new()?;
        sh.change_dir(&root);
        Ok(Self { sh, root, tools })
    }

    /// The same for a copy of the repository, with the tools that were found and a folder of its own for
    /// what is built.
    pub fn at(&self, root: PathBuf) -> Result<Self> {
        let sh = Shell::new()?;
        sh.change_dir(&root);
        sh.set_var("PATH", self.path());
        sh.set_var("CARGO_TARGET_DIR", root.join("target"));
        let tools = self.tools.clone();
        Ok(Self { sh, root, tools })
    }

    pub fn dist(&self) -> PathBuf {
        self.root.join("dist")
    }

    /// The example of a dealer's page.
    pub fn example(&self) -> PathBuf {
        self.root.join("docs").join("example-dealer")
    }

    /// Scratch space that `cargo clean` removes.
    pub fn scratch(&self) -> PathBuf {
        self.root.join("target").join("xtask")
    }

    /// Where Cargo puts what it builds.
    pub fn target_folder(&self) -> Result<PathBuf> {
        let sh = &self.sh;
        let metadata = cmd!(sh, "cargo metadata --no-deps --format-version 1").read()?;
        let metadata: Value = serde_json::from_str(&metadata)?;
        let folder = metadata["target_directory"].as_str();
        Ok(folder
            .context("cargo metadata without target_directory")?
            .into())
    }

    /// Makes later commands find programs in `folder` first.
    pub fn prepend_path(&self, folder: &Path) -> Result<()> {
        self.sh.set_var("PATH", self.path_with(folder)?);
        Ok(())
    }

    fn path_with(&self, folder: &Path) -> Result<OsString> {
        let path = self.path();
        let folders = std::iter::once(folder.to_owned()).chain(env::split_paths(&path));
        env::join_paths(folders).context("a folder on PATH has a name that PATH cannot hold")
    }

    fn path(&self) -> OsString {
        self.sh
            .var_os("PATH")
            .or_else(|| env::var_os("PATH"))
            .unwrap_or_default()
    }

    /// The first of `names` on the PATH of later commands.
    pub fn find(&self, names: &[&str]) -> Option<PathBuf> {
        names
            .iter()
            .find_map(|name| which::which_in(name, Some(self.path()), &self.root).ok())
    }
}
