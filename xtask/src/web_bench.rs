//! How the release page loads and answers on a slow phone and a slow network. Reported against the
//! budgets, never enforced: a busy machine takes longer.

use std::net::{Ipv4Addr, TcpListener};

use anyhow::Result;
use serde::Deserialize;
use serde::de::DeserializeOwned;
use xshell::cmd;

use crate::budgets::Budgets;
use crate::finish;
use crate::host::Host;
use crate::server::Server;
use crate::setup::Browser;

/// What `tests/bench/web.mjs` prints.
#[derive(Deserialize)]
struct Measured {
    /// Milliseconds until the first view can be used, and until all of the pair is there.
    usable: f64,
    whole: f64,
    files: Vec<File>,
    drag: Drag,
    /// Megabytes after few changes and after many.
    memory: [f64; 2],
}

#[derive(Deserialize)]
struct File {
    name: String,
    /// Whether it was asked for before the first view could be used.
    first: bool,
    /// As it came over the network; none where it was still coming.
    bytes: Option<f64>,
}

#[derive(Deserialize)]
struct Drag {
    sliders: u32,
    p50: f64,
    p95: f64,
    p99: f64,
    slowest: (String, f64),
}

/// What `tests/bench/lighthouse.mjs` prints.
#[derive(Deserialize)]
struct Findings {
    /// Out of 100, by subject.
    scores: Vec<(String, u8)>,
    /// What could be better, and by how much.
    missed: Vec<(String, String)>,
}

/// Measures the packed page in dist/.
pub fn report(host: &Host, browser: &Browser) -> Result<()> {
    let dist = host.dist();
    let server = Server::bind(0, &dist, &finish::everywhere(&dist)?)?;
    let url = server.url()?;
    server.serve_in_background();
    let measured = told_by(host, browser, &url, "web.mjs")?;
    print(&measured, &Budgets::read(&host.root)?);
    print_findings(&told_by(host, browser, &url, "lighthouse.mjs")?);
    Ok(())
}

fn told_by<T: DeserializeOwned>(
    host: &Host,
    browser: &Browser,
    url: &str,
    script: &str,
) -> Result<T> {
    let port = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?
        .local_addr()?
        .port();
    let sh = &host.sh;
    let told = cmd!(sh, "node tests/bench/{script}")
        .env("FAREND_URL", url)
        .env("FAREND_DEBUG_PORT", port.to_string())
        .env("CHROMIUM", &browser.chromium)
        .read()?;
    Ok(serde_json::from_str(&told)?)
}

fn print(measured: &Measured, budgets: &Budgets) {
    println!("1.6 Mbit/s, 150 ms, a quarter of this machine's speed:");
    for File { name, first, bytes } in &measured.files {
        let when = if *first {
            ""
        } else {
            "  (after the first view)"
        };
        println!("{:>9.0}  {name}{when}", bytes.unwrap_or(f64::NAN));
    }
    told(
        "usable after",
        measured.usable,
        budgets.slow.usable_ms,
        "ms",
    );
    println!("all of the pair after {:.0} ms", measured.whole);
    let Drag {
        sliders,
        p50,
        p95,
        p99,
        slowest: (slowest, longest),
    } = &measured.drag;
    println!(
        "{sliders} sliders dragged at a quarter of this machine's speed, frame to frame: half of them {p50:.1} ms"
    );
    told("95 of 100 within", *p95, budgets.drag.p95_ms, "ms");
    told("99 of 100 within", *p99, budgets.drag.p99_ms, "ms");
    println!("slowest: {slowest}, {longest:.1} ms");
    let [few, many] = measured.memory;
    told(
        "memory grows by",
        many - few,
        budgets.memory.growth_mb,
        "MB",
    );
}

fn print_findings(findings: &Findings) {
    println!("Lighthouse, as on a phone:");
    for (subject, score) in &findings.scores {
        println!("{score:>9}  {subject}");
    }
    println!("what it would have better:");
    for (what, by) in &findings.missed {
        println!("           {what}  {by}");
    }
}

fn told(what: &str, found: f64, goal: f64, unit: &str) {
    let verdict = if found <= goal { "met" } else { "missed" };
    println!("{what} {found:.1} {unit}; goal {goal} {unit}: {verdict}");
}
