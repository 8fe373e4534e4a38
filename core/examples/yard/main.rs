//! A yard without a browser: each machine with each implement, a row for each route that can be
//! hooked up. `cargo run -p farend-core --release --example yard -- --help` says more.

mod row;

use clap::{Parser, ValueEnum};
use farend_core::fault::Fault;
use farend_core::implement::Implement;
use farend_core::machine::Machine;
use farend_core::yard::Yard;
use row::{COLUMNS, Row, rows};
use std::io::{self, ErrorKind, Write};
use std::process::ExitCode;
use std::{fs, slice};

const ENDS: &str = "\
Rows come in the yard's order, as machines are done, with the yard's own settings. `fit` leaves the \
oil's heat out. `best` is, of a pair's routes that nothing stops, the one of the best standing, of \
those the one with less to ask before it's hooked up, then the one that delivers most.

Ends with 0 when all is written; 1 when the yard has faults, which stand on standard error, one a \
line; 2 when used wrongly or for an identifier that the yard doesn't have; 3 when the yard can't be \
read or the rows can't be written. All cores are used with `--features parallel`.";

/// Reckons every route of every machine of a yard with every implement.
#[derive(Parser)]
#[command(name = "yard", after_help = ENDS)]
struct Arguments {
    /// The yard file; - reads standard input
    file: String,
    /// Only the machine with this identifier
    #[arg(long, value_name = "ID")]
    machine: Option<String>,
    /// Only the implement with this identifier
    #[arg(long, value_name = "ID")]
    implement: Option<String>,
    #[arg(long, value_enum, default_value_t = Format::Csv)]
    format: Format,
}

#[derive(Clone, Copy, ValueEnum)]
enum Format {
    /// A table with a line of headers
    Csv,
    /// JSON lines: one object a line
    Json,
}

/// Why it ends before all is written.
enum End {
    Faults(Vec<Fault>),
    Unknown(String),
    CantRead(String, io::Error),
    CantWrite(io::Error),
}

fn main() -> ExitCode {
    let (code, lines) = match run(&Arguments::parse()) {
        Ok(()) => (0, vec![]),
        Err(End::Faults(faults)) => (1, faults.iter().map(Fault::to_string).collect()),
        Err(End::Unknown(what)) => (2, vec![format!("The yard has no {what}.")]),
        Err(End::CantRead(file, why)) => (3, vec![format!("{file} can't be read: {why}")]),
        // Whoever read the rows has had enough of them.
        Err(End::CantWrite(why)) if why.kind() == ErrorKind::BrokenPipe => (0, vec![]),
        Err(End::CantWrite(why)) => (3, vec![format!("The rows can't be written: {why}")]),
    };
    for line in lines {
        eprintln!("{}", line.replace(['\n', '\r'], " "));
    }
    ExitCode::from(code)
}

fn run(arguments: &Arguments) -> Result<(), End> {
    let text = read(&arguments.file).map_err(|why| End::CantRead(arguments.file.clone(), why))?;
    let yard = Yard::from_json(&text).map_err(End::Faults)?;
    let machines = match &arguments.machine {
        None => yard.machines.as_slice(),
        Some(id) => one("machine", id, yard.machine(id))?,
    };
    let implements = match &arguments.implement {
        None => yard.implements.as_slice(),
        Some(id) => one("implement", id, yard.implement(id))?,
    };
    let of = |machine: &Machine| written(machine, implements, &yard, arguments.format);

    let mut out = io::stdout().lock();
    if let Format::Csv = arguments.format {
        write!(out, "{}\r\n", COLUMNS.join(",")).map_err(End::CantWrite)?;
    }
    for some in machines.chunks(at_once()) {
        for text in each(some, of) {
            out.write_all(&text?).map_err(End::CantWrite)?;
        }
    }
    out.flush().map_err(End::CantWrite)
}

fn read(file: &str) -> io::Result<String> {
    match file {
        "-" => io::read_to_string(io::stdin()),
        _ => fs::read_to_string(file),
    }
}

fn one<'a, T>(what: &str, id: &str, found: Option<&'a T>) -> Result<&'a [T], End> {
    let found = found.ok_or_else(|| End::Unknown(format!("{what} {id}")))?;
    Ok(slice::from_ref(found))
}

/// The rows of a machine as they are written.
fn written(
    machine: &Machine,
    implements: &[Implement],
    yard: &Yard,
    format: Format,
) -> Result<Vec<u8>, End> {
    let mut text = Vec::new();
    for implement in implements {
        let rows = rows(machine, implement, &yard.kits).map_err(End::Faults)?;
        match format {
            Format::Csv => csv(&rows, &mut text),
            Format::Json => rows.iter().try_for_each(|row| {
                serde_json::to_writer(&mut text, row)?;
                text.write_all(b"\n")
            }),
        }
        .map_err(End::CantWrite)?;
    }
    Ok(text)
}

fn csv(rows: &[Row<'_>], text: &mut Vec<u8>) -> io::Result<()> {
    let mut writer = csv::WriterBuilder::new()
        .has_headers(false)
        .terminator(csv::Terminator::CRLF)
        .from_writer(text);
    for row in rows {
        writer.serialize(row.guarded())?;
    }
    writer.flush()
}

/// How many machines are reckoned before their rows are written.
#[cfg(feature = "parallel")]
fn at_once() -> usize {
    // Enough that no core waits long for the slowest.
    8 * rayon::current_num_threads()
}

#[cfg(not(feature = "parallel"))]
fn at_once() -> usize {
    1
}

/// What comes of each of some things, in their order.
#[cfg(feature = "parallel")]
fn each<T: Sync, R: Send>(things: &[T], of: impl Fn(&T) -> R + Send + Sync) -> Vec<R> {
    use rayon::prelude::*;
    things.par_iter().map(of).collect()
}

#[cfg(not(feature = "parallel"))]
fn each<T, R>(things: &[T], of: impl Fn(&T) -> R) -> Vec<R> {
    things.iter().map(of).collect()
}
