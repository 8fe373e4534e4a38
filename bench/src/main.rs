//! The native part of `cargo xtask bench`: median times in microseconds, as JSON. With
//! `large MACHINES IMPLEMENTS` it prints a large yard instead.

use farend_bench::Work;
use farend_bench::grid::{Grid, KITS, SEED, SIZES};
use farend_bench::large::large;
use std::env;
use std::process::ExitCode;
use std::time::{Duration, Instant};

/// A batch takes at least this long, so that the clock's steps are nothing beside it.
const BATCH: Duration = Duration::from_millis(50);
const BATCHES: usize = 15;

type Task = fn(&Work, u32) -> f64;

const TASKS: [(&str, Task); 5] = [
    ("comparison", Work::comparison),
    ("likely", Work::likely),
    ("route", Work::route),
    ("curve", Work::curve),
    ("yard", Work::yard),
];

fn main() -> ExitCode {
    let arguments: Vec<_> = env::args().skip(1).collect();
    let arguments: Vec<_> = arguments.iter().map(String::as_str).collect();
    match arguments.as_slice() {
        [] => times(),
        ["large", machines, implements] => match (machines.parse(), implements.parse()) {
            (Ok(machines), Ok(implements)) => {
                println!("{}", large(machines, implements, KITS, SEED))
            }
            _ => return usage(),
        },
        _ => return usage(),
    }
    ExitCode::SUCCESS
}

fn usage() -> ExitCode {
    eprintln!("farend-bench [large MACHINES IMPLEMENTS]");
    ExitCode::from(2)
}

fn times() {
    let work = Work::new();
    let tasks = TASKS
        .iter()
        .map(|(name, task)| ((*name).to_owned(), median(&work, *task)));
    let grids = SIZES.iter().map(|[machines, implements]| {
        let grid = Grid::new(*machines, *implements);
        (format!("grid-{machines}-{implements}"), once(&grid))
    });
    let times: Vec<_> = tasks
        .chain(grids)
        .map(|(name, time)| format!("\"{name}\":{time}"))
        .collect();
    println!("{{{}}}", times.join(","));
}

/// The median of three, in microseconds: it takes long enough to be timed alone.
fn once(grid: &Grid) -> f64 {
    let mut runs = [(); 3].map(|()| {
        let started = Instant::now();
        std::hint::black_box(grid.reckon());
        started.elapsed()
    });
    runs.sort();
    runs[1].as_secs_f64() * 1e6
}

/// Microseconds a piece.
fn median(work: &Work, task: Task) -> f64 {
    let batch = |times| {
        let started = Instant::now();
        task(work, times);
        started.elapsed()
    };
    let mut times = 1;
    while batch(times) < BATCH {
        times *= 2;
    }
    let mut batches: Vec<_> = (0..BATCHES).map(|_| batch(times)).collect();
    batches.sort();
    batches[BATCHES / 2].as_secs_f64() * 1e6 / f64::from(times)
}
