//! Times of the calculation: native, in the browser, and beside ports to other languages.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::time::Instant;

use anyhow::{Context, Result};
use xshell::cmd;

use crate::e2e;
use crate::host::Host;
use crate::server::Server;
use crate::setup::{Browser, TARGET, WasmToolchain};
use crate::wasm_opt;

/// Microseconds that a comparison may take in the browser. Reported, never enforced: a busy machine
/// takes longer.
const GOAL: f64 = 20.0;

const PACKAGE: &str = "farend-bench";

/// Median microseconds by name.
type Times = BTreeMap<String, f64>;

pub fn report(
    host: &Host,
    toolchain: WasmToolchain,
    browser: &Browser,
    python: &Path,
) -> Result<()> {
    let sh = &host.sh;
    let native = times(&cmd!(sh, "cargo run --quiet --release --package {PACKAGE}").read()?)?;
    let folder = page(host, toolchain)?;
    let in_browser = times(&in_browser(host, browser, &folder)?)?;
    let model = times(&cmd!(sh, "{python} -B tests/bench/model.py").read()?)?;
    print(&native, &in_browser, &model)?;
    let yard = e2e::large_yard(host)?;
    let in_page = times(&in_page(host, browser, &yard)?)?;
    print_grids(&native, &in_browser, &in_page, &without_page(host, &yard)?)
}

/// Reckons the yard by the example without a page, on one core and on all, with ranges and as rows of
/// a table: seconds.
fn without_page(host: &Host, yard: &Path) -> Result<[f64; 2]> {
    let sh = &host.sh;
    let mut seconds = [0.0; 2];
    for (seconds, features) in seconds.iter_mut().zip(["", "parallel"]) {
        cmd!(
            sh,
            "cargo build --quiet --release --package farend-core --example yard --features {features}"
        )
        .run()?;
        let program = host.target_folder()?.join("release/examples/yard");
        let started = Instant::now();
        cmd!(sh, "{program} {yard}").ignore_stdout().run()?;
        *seconds = started.elapsed().as_secs_f64();
    }
    Ok(seconds)
}

fn in_page(host: &Host, browser: &Browser, yard: &Path) -> Result<String> {
    let server = Server::bind(0, &host.dist(), &[])?;
    let url = server.url()?;
    server.serve_in_background();
    let sh = &host.sh;
    Ok(cmd!(sh, "node tests/bench/whole_yard.mjs")
        .env("FAREND_URL", &url)
        .env("FAREND_LARGE_YARD", yard)
        .env("CHROMIUM", &browser.chromium)
        .read()?)
}

/// What the name of a whole yard's time begins with; its machines and implements follow.
const GRID: &str = "grid-";
const ROUTES: u32 = 6;
/// Seconds that the largest of them may take in the browser. Reported, never enforced.
const GRID_GOAL: f64 = 1.0;

fn print_grids(
    native: &Times,
    in_browser: &Times,
    in_page: &Times,
    without_page: &[f64; 2],
) -> Result<()> {
    println!("\nWhole yards at the likely values, 24 kits: milliseconds, and microseconds a route");
    println!(
        "{:>10} {:>10} {:>10} {:>7} {:>7}",
        "routes", "native", "browser", "ratio", "µs"
    );
    let mut grids: Vec<_> = native.keys().filter_map(|name| grid(name)).collect();
    grids.sort_unstable();
    for (routes, name) in &grids {
        let (native, browser) = (of(native, name)? / 1e3, of(in_browser, name)? / 1e3);
        println!(
            "{routes:>10} {native:>10.1} {browser:>10.1} {:>7.2} {:>7.3}",
            browser / native,
            browser * 1e3 / f64::from(*routes)
        );
    }
    let (_, largest) = grids.last().context("no whole yard was timed")?;
    let seconds = of(in_browser, largest)? / 1e6;
    let verdict = if seconds <= GRID_GOAL {
        "met"
    } else {
        "missed"
    };
    println!("Goal {GRID_GOAL} s for 600,000 routes in the browser: {verdict}, {seconds:.2} s.");
    println!(
        "{:.0} MB of the program's memory with that yard and its results, {:.1} MB handed to the page",
        of(in_browser, "grid-megabytes")?,
        of(in_browser, "grid-bytes")? / 1e6
    );
    println!(
        "In the release page with its worker: {:.0} ms from the press to the last row; the page was \
         held up for {:.0} ms at most (0: less than 50); {:.0} MB on its heap",
        of(in_page, "page-ms")?,
        of(in_page, "page-held-up-ms")?,
        of(in_page, "page-heap-megabytes")?
    );
    let [one, all] = without_page;
    println!("Without a page, with ranges, as a table: {one:.1} s on one core, {all:.1} s on all");
    Ok(())
}

/// The routes of a whole yard by the name of its time, with that name.
fn grid(name: &str) -> Option<(u32, &str)> {
    let (machines, implements) = name.strip_prefix(GRID)?.split_once('-')?;
    let [machines, implements]: [u32; 2] = [machines.parse().ok()?, implements.parse().ok()?];
    Some((machines * implements * ROUTES, name))
}

fn of(times: &Times, name: &str) -> Result<f64> {
    let time = times.get(name).copied();
    time.with_context(|| format!("{name} wasn't timed"))
}

fn times(json: &str) -> Result<Times> {
    serde_json::from_str(json).with_context(|| format!("not times: {json}"))
}

/// The program and the page that times it, compiled as the release page is.
fn page(host: &Host, toolchain: WasmToolchain) -> Result<PathBuf> {
    let sh = &host.sh;
    let build = cmd!(
        sh,
        "cargo build --quiet --lib --package {PACKAGE} --profile web --target {TARGET}"
    );
    toolchain.choose(build).run()?;
    let compiled = host
        .target_folder()?
        .join(TARGET)
        .join("web/farend_bench.wasm");

    let folder = host.scratch().join("bench");
    sh.remove_path(&folder)?;
    sh.create_dir(&folder)?;
    cmd!(
        sh,
        "wasm-bindgen --target web --no-typescript --out-dir {folder} {compiled}"
    )
    .run()?;
    let module = folder.join("farend_bench_bg.wasm");
    wasm_opt::run(host, &module)?;
    for name in ["index.html", "page.mjs", "port.mjs"] {
        sh.copy_file(host.root.join("tests/bench").join(name), &folder)?;
    }
    Ok(folder)
}

fn in_browser(host: &Host, browser: &Browser, folder: &Path) -> Result<String> {
    let server = Server::bind(0, folder, &[])?;
    let url = server.url()?;
    server.serve_in_background();
    let sh = &host.sh;
    Ok(cmd!(sh, "node tests/bench/browser.mjs")
        .env("FAREND_URL", &url)
        .env("CHROMIUM", &browser.chromium)
        .read()?)
}

fn print(native: &Times, in_browser: &Times, model: &Times) -> Result<()> {
    println!("\nMedian microseconds, the demo yard's default pair");
    println!("{:>10} {:>10} {:>7}", "native", "browser", "ratio");
    for (name, words) in [
        ("comparison", "six routes with ranges"),
        ("likely", "six routes at the likely values alone"),
        (
            "route",
            "the machine's own hydraulics alone, likely, joined up before",
        ),
        ("curve", "its curve of 50 points with ranges"),
        ("yard", "reading the demo yard"),
    ] {
        let (native, browser) = (of(native, name)?, of(in_browser, name)?);
        let ratio = browser / native;
        println!("{native:>10.2} {browser:>10.2} {ratio:>7.2}  {words}");
    }
    let route = of(in_browser, "route")?;
    let port = of(in_browser, "port")?;
    let circuit = of(model, "circuit")?;
    println!(
        "{:>10} {port:>10.2} {:>7.2}  that route ported to JavaScript, over the program in the browser",
        "",
        port / route
    );
    println!(
        "{circuit:>10.2} {:>10} {:>7.2}  a circuit of the reference model in Python, over a native route",
        "",
        circuit / of(native, "route")?
    );
    let comparison = of(in_browser, "comparison")?;
    let verdict = if comparison <= GOAL { "met" } else { "missed" };
    println!("Goal {GOAL} µs a comparison in the browser: {verdict}, {comparison:.1} µs.");
    Ok(())
}
