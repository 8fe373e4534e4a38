//! The list of machines, implements and kits that the user works with, and the file it comes from.

pub mod assumed;
pub mod build;
mod check;
pub mod edit;
pub mod entry;
pub mod entry_hookup;
pub(crate) mod format;
pub mod history;
pub mod kept;
pub mod list;
pub mod path;
pub mod report;
pub mod rules;
pub mod rules_hookup;
pub mod shape;
pub mod table;

use crate::export::csv::MARK;
use crate::fault::{Expected, FILE, Fault, Rule};
use crate::hint::Hint;
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use entry::YardEntry;
use report::Report;
use serde_json::{Map, Value};
use std::collections::HashSet;

/// A yard, checked.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Yard {
    /// What it is called.
    pub name: String,
    /// Where it is.
    pub place: Option<String>,
    /// Whether its machines are made up.
    pub invented: bool,
    /// Who hands out its pages.
    pub dealer: Option<String>,
    /// A line of the dealer's own on those pages.
    pub note: Option<String>,
    /// The currency of its prices: three letters of ISO 4217.
    pub currency: Option<String>,
    /// Price of an hour of work.
    pub hour_price: Option<f64>,
    /// What supplies the power. At least one.
    pub machines: Vec<Machine>,
    /// What uses it. At least one.
    pub implements: Vec<Implement>,
    /// What joins them.
    pub kits: Vec<Kit>,
    /// The file that all of this comes from, with its comments, raised to the current format
    /// version, to be written again.
    pub written: Value,
}

/// The built-in yard: invented machines in a made-up place.
pub const DEMO: &str = include_str!("demo.json");

impl Yard {
    /// Reads a yard file of this format version or an older one.
    ///
    /// # Errors
    /// Every fault of the file, with its path, what was found, what is allowed and a hint.
    pub fn from_json(text: &str) -> Result<Self, Vec<Fault>> {
        Self::from_group(read_group(text, rules::LARGEST_FILE)?)
    }

    /// Reads a yard from a group of JSON.
    pub(crate) fn from_group(group: Map<String, Value>) -> Result<Self, Vec<Fault>> {
        let group = format::raised(group)?;
        let mut report = Report::default();
        shape::check_group(&group, rules::YARD, "", &mut report);
        if !report.is_empty() {
            return Err(report.into_faults());
        }
        let mut written = Value::Object(group);
        drop_nulls(&mut written);
        let group = written.as_object();
        match group.and_then(|group| check::read::<YardEntry>(group, FILE, &mut report)) {
            Some(entry) => Self::from_entry(&entry, written),
            None => Err(report.into_faults()),
        }
    }

    fn from_entry(entry: &YardEntry, written: Value) -> Result<Self, Vec<Fault>> {
        let mut report = Report::default();
        let yard = Self {
            machines: each(&entry.machines, "machines", build::machine, &mut report),
            implements: each(
                &entry.implements,
                "implements",
                build::implement,
                &mut report,
            ),
            kits: each(&entry.kits, "kits", build::kit, &mut report),
            ..Self::without_lists(entry, written, &mut report)
        };
        unique(
            "machines",
            yard.machines.iter().map(|it| &it.id),
            &mut report,
        );
        unique(
            "implements",
            yard.implements.iter().map(|it| &it.id),
            &mut report,
        );
        unique("kits", yard.kits.iter().map(|it| &it.id), &mut report);
        for (list, empty) in [
            ("machines", yard.machines.is_empty()),
            ("implements", yard.implements.is_empty()),
        ] {
            if empty {
                report.add(list, "", Rule::NotEmpty, Hint::AtLeastOne);
            }
        }
        if report.is_empty() {
            Ok(yard)
        } else {
            Err(report.into_faults())
        }
    }

    /// A yard's own fields.
    fn without_lists(entry: &YardEntry, written: Value, report: &mut Report) -> Self {
        if let Some(code) = &entry.currency
            && !is_currency(code)
        {
            let rule = Rule::Type(Expected::Capitals);
            report.add("currency", code, rule, Hint::Currency);
        }
        Self {
            name: entry.name.clone(),
            place: entry.place.clone(),
            invented: entry.invented.unwrap_or(false),
            dealer: entry.dealer.clone(),
            note: entry.note.clone(),
            currency: entry.currency.clone(),
            hour_price: entry.hour_price,
            machines: Vec::new(),
            implements: Vec::new(),
            kits: Vec::new(),
            written,
        }
    }

    /// The machine with an identifier.
    pub fn machine(&self, id: &str) -> Option<&Machine> {
        self.machines.iter().find(|machine| machine.id == id)
    }

    /// The implement with an identifier.
    pub fn implement(&self, id: &str) -> Option<&Implement> {
        self.implements.iter().find(|implement| implement.id == id)
    }

    /// The kit with an identifier.
    pub fn kit(&self, id: &str) -> Option<&Kit> {
        self.kits.iter().find(|kit| kit.id == id)
    }
}

/// Reads a file that is one group of JSON.
///
/// # Errors
/// One fault where it's larger than so many bytes, isn't JSON or isn't a group.
pub(crate) fn read_group(text: &str, largest: usize) -> Result<Map<String, Value>, Vec<Fault>> {
    let mut report = Report::default();
    if text.len() > largest {
        let found = text.len().to_string();
        report.add(FILE, found, Rule::AtMost(largest), Hint::TooLarge);
        return Err(report.into_faults());
    }
    // Editors on some systems begin a file with a byte order mark.
    let text = text.strip_prefix(MARK).unwrap_or(text);
    match serde_json::from_str(text) {
        Ok(Value::Object(group)) => return Ok(group),
        Ok(other) => {
            report.wrong_type(FILE, &other, Expected::Yard, Hint::NoYard);
        }
        Err(error) => {
            let (line, column) = (error.line(), error.column());
            let rule = Rule::Json { line, column };
            report.reader_says(FILE, &error, rule, Hint::NoJson);
        }
    }
    Err(report.into_faults())
}

/// Whether a text has the form of a code of ISO 4217.
pub fn is_currency(code: &str) -> bool {
    code.len() == 3 && code.bytes().all(|letter| letter.is_ascii_uppercase())
}

/// A field that is null counts as left out, as in the rules.
fn drop_nulls(value: &mut Value) {
    match value {
        Value::Object(group) => {
            group.retain(|_, value| !value.is_null());
            group.values_mut().for_each(drop_nulls);
        }
        Value::Array(items) => items.iter_mut().for_each(drop_nulls),
        _ => {}
    }
}

fn each<E, T>(
    entries: &[E],
    list: &str,
    build: fn(&E, &str, &mut Report) -> T,
    report: &mut Report,
) -> Vec<T> {
    entries
        .iter()
        .enumerate()
        .map(|(place, entry)| build(entry, &format!("{list}[{place}]"), report))
        .collect()
}

fn unique<'a>(list: &str, ids: impl Iterator<Item = &'a String>, report: &mut Report) {
    let mut seen = HashSet::new();
    for (place, id) in ids.enumerate() {
        if !seen.insert(id) {
            let path = format!("{list}[{place}].id");
            report.add(path, id, Rule::Unique, Hint::OwnId);
        }
    }
}
