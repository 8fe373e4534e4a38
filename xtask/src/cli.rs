//! The command line.

use std::path::PathBuf;

use anyhow::Result;
use clap::{Parser, Subcommand};

use crate::commands::{self, Extent};
use crate::host::Host;

#[derive(Parser)]
#[command(
    name = "cargo xtask",
    about = "Builds, serves and tests Farend. Installs what is missing, in words."
)]
struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Build the release page and serve it on this machine until Ctrl-C
    Run {
        /// First port to try; a taken one gives way to the next free one
        #[arg(long, default_value_t = 8080)]
        port: u16,
    },
    /// Everything CI runs: lints, all tests, licences, release build, browser flows, size
    Test {
        /// Leave out what needs the release page and cargo-deny; the steps left out are named
        #[arg(long)]
        quick: bool,
        /// Also the slow steps: all flows with the network cut, LibreOffice reads the saved tables,
        /// 10,000 actions by chance, the fuzzer, the release page built twice
        #[arg(long, conflicts_with = "quick")]
        full: bool,
    },
    /// The fast part: format, rules of the house, clippy and tests of the native build
    Check,
    /// Build the release page into dist/
    Build,
    /// A next version of the page in dist/, to try the change from one to the other
    #[command(hide = true)]
    Next { folder: PathBuf },
    /// Raw and brotli bytes of what the page runs on, and of a first visit against tests/bench/budgets.toml;
    /// what costs what in the first file
    Size,
    /// Build, then take pictures and a printed page of it into target/shots/
    Shots,
    /// Compute the figures of tests/reference again and compare them with the committed ones
    Reference {
        /// Replace the committed ones instead
        #[arg(long)]
        write: bool,
    },
    /// Time the calculation natively and in Chromium, beside ports to JavaScript and Python
    Bench {
        /// Time the page instead: how it loads and answers on a slow phone and a slow network
        #[arg(long)]
        web: bool,
    },
    /// Actions by chance over all views, twice the same: nothing may fail, pile up or differ
    Soak {
        #[arg(long, default_value_t = commands::SOAKED)]
        actions: u32,
        /// What the actions are drawn by
        #[arg(long, default_value_t = 1)]
        seed: u32,
    },
    /// Any bytes against what must hold for them: by the fuzzer, or where there is none by 100,000
    /// random changes of its corpus
    Fuzz {
        /// So long on each target; without the fuzzer it takes as long as it takes
        #[arg(long, default_value_t = 60)]
        seconds: u32,
        /// Only this one, a folder of fuzz/corpus/
        target: Option<String>,
    },
    /// Change one thing at a time in what was changed in the core, and see whether a test notices
    Mutants {
        /// A commit: what differs from where the work left it
        #[arg(long, default_value = "main")]
        since: String,
    },
    /// Write the golden files of the current versions of all formats where there are none
    Golden,
    /// All that must stand before a version is given out, then its archive in target/release-page/
    Release {
        /// The version, as in Cargo.toml and CHANGELOG.md
        version: String,
        /// Also name it in the repository; nothing is pushed
        #[arg(long)]
        tag: bool,
    },
    /// Only install what is missing for all of the above
    Setup,
}

pub fn run() -> Result<()> {
    let arguments = Arguments::parse();
    let host = Host::new()?;
    match arguments.command {
        Command::Run { port } => commands::run(&host, port),
        Command::Test { quick, full } => commands::test(
            &host,
            match (quick, full) {
                (true, _) => Extent::Quick,
                (false, false) => Extent::Usual,
                (false, true) => Extent::Full,
            },
        ),
        Command::Check => commands::check(&host),
        Command::Build => commands::build(&host),
        Command::Next { folder } => commands::next(&host, &folder),
        Command::Size => commands::size(&host),
        Command::Shots => commands::shots(&host),
        Command::Reference { write } => commands::reference(&host, write),
        Command::Bench { web: false } => commands::bench(&host),
        Command::Bench { web: true } => commands::bench_web(&host),
        Command::Soak { actions, seed } => commands::soak(&host, actions, seed),
        Command::Fuzz { seconds, target } => commands::fuzz(&host, seconds, target.as_deref()),
        Command::Mutants { since } => commands::mutants(&host, &since),
        Command::Golden => commands::golden(&host),
        Command::Release { version, tag } => commands::release(&host, &version, tag),
        Command::Setup => commands::setup(&host),
    }
}
