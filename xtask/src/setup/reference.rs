//! Python with the libraries that compute the reference figures, in a virtual environment.

use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, anyhow};
use xshell::cmd;

use super::{apt, lock};
use crate::host::Host;

/// The oldest that the pinned libraries run on.
const OLDEST: (u32, u32) = (3, 11);

/// The environment's Python.
pub fn ensure(host: &Host) -> Result<PathBuf> {
    let base = base(host)?;
    let pins = host.root.join("tests/reference/requirements.txt");
    let wanted =
        fs::read_to_string(&pins).with_context(|| format!("reading {}", pins.display()))?;
    let folder = host.tools.join(folder_name(&base.version, &wanted));
    if !is_complete(host, &folder, &wanted) {
        let _alone = lock::hold(host)?;
        // The one that was waited for may have installed it.
        if !is_complete(host, &folder, &wanted) {
            install(host, &base, &pins, &folder)?;
        }
    }
    let python = python_of(&folder);
    println!(
        "Using Python {} with the libraries of tests/reference: {}",
        base.version,
        python.display()
    );
    Ok(python)
}

/// The machine's own Python, which environments are made by.
struct Base {
    program: PathBuf,
    version: String,
}

fn base(host: &Host) -> Result<Base> {
    if let Some(base) = usable(host) {
        return Ok(base);
    }
    let reason = match apt::install(host, &["python3", "python3-venv"]) {
        Ok(()) => anyhow!("the distribution's own is older"),
        Err(error) => error,
    };
    let (major, minor) = OLDEST;
    usable(host).ok_or(reason).with_context(|| {
        format!(
            "Python {major}.{minor} or later with venv is missing: install it, then run this again"
        )
    })
}

/// The first Python on PATH that is recent enough and can make environments.
fn usable(host: &Host) -> Option<Base> {
    let sh = &host.sh;
    ["python3", "python"].iter().find_map(|name| {
        let program = host.find(&[name])?;
        let version = cmd!(sh, "{program} -c")
            .arg("import ensurepip, platform, venv; print(platform.python_version())")
            .quiet()
            .ignore_stderr()
            .read()
            .ok()?;
        let mut parts = version.split('.').map_while(|part| part.parse().ok());
        let found: (u32, u32) = (parts.next()?, parts.next()?);
        (found >= OLDEST).then_some(Base { program, version })
    })
}

/// Another version of Python or another pin means another folder.
fn folder_name(version: &str, pins: &str) -> String {
    // Another compiler may hash otherwise: that costs one installation.
    let mut hasher = DefaultHasher::new();
    pins.hash(&mut hasher);
    format!("reference-python{version}-{:016x}", hasher.finish())
}

fn install(host: &Host, base: &Base, pins: &Path, folder: &Path) -> Result<()> {
    let sh = &host.sh;
    println!(
        "Installing the libraries of tests/reference/requirements.txt into {} (about 250 MB).",
        folder.display()
    );
    let program = &base.program;
    cmd!(sh, "{program} -m venv --clear {folder}")
        .run()
        .context("making a virtual environment")?;
    let python = python_of(folder);
    cmd!(sh, "{python} -m pip --quiet --disable-pip-version-check --no-input install --no-deps --only-binary :all: --requirement {pins}")
        .run()
        .context("installing the libraries of the reference figures")?;
    cmd!(sh, "{python} -m pip --disable-pip-version-check check")
        .run()
        .context("the pins of tests/reference/requirements.txt don't go together")?;
    // Last, so that an interrupted installation lacks it.
    sh.copy_file(pins, mark_of(folder))?;
    Ok(())
}

fn is_complete(host: &Host, folder: &Path, wanted: &str) -> bool {
    let sh = &host.sh;
    let python = python_of(folder);
    fs::read_to_string(mark_of(folder)).is_ok_and(|installed| installed == wanted)
        // The Python that it was made by may be gone.
        && cmd!(sh, "{python} --version")
            .quiet()
            .ignore_stdout()
            .ignore_stderr()
            .run()
            .is_ok()
}

fn mark_of(folder: &Path) -> PathBuf {
    folder.join("installed.txt")
}

fn python_of(folder: &Path) -> PathBuf {
    let bin = if cfg!(windows) { "Scripts" } else { "bin" };
    folder
        .join(bin)
        .join("python")
        .with_extension(std::env::consts::EXE_EXTENSION)
}
