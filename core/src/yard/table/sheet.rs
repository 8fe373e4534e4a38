//! A file as rows of cells, before anything is known of what they mean.

use super::columns::holds;
use super::{List, RowFault};
use crate::export::csv::MARK;
use crate::fault::{Expected, FILE, Fault, Rule};
use crate::hint::{FaultHint, Hint};
use crate::yard::rules::{LARGEST_FILE, MOST_ENTRIES};
use csv::{ReaderBuilder, StringRecord};
use serde_json::Value;

/// The most columns that a table may have: more than any list has with all its places.
pub const MOST_COLUMNS: usize = 1_000;

/// The path of a fault of a table's headers.
pub const HEADERS: &str = "headers";
/// The path of a fault of a row's quotes.
pub const QUOTES: &str = "quotes";

/// What spreadsheets put between cells.
const SEPARATORS: [u8; 3] = *b",;\t";
pub(super) const COMMA: u8 = b',';

/// A file as rows of cells.
#[derive(Debug)]
pub(super) struct Sheet {
    pub separator: u8,
    /// The row of the headers.
    pub first: usize,
    pub headers: Vec<String>,
    /// Those below in which a cell isn't empty.
    pub rows: Vec<Line>,
}

/// A row.
#[derive(Debug)]
pub(super) struct Line {
    pub row: usize,
    pub cells: StringRecord,
}

/// A fault of a row, or of the whole file.
pub(super) fn fault(
    row: impl Into<Option<usize>>,
    path: impl Into<String>,
    found: impl Into<String>,
    rule: Rule,
    hint: impl Into<FaultHint>,
) -> RowFault {
    RowFault {
        row: row.into(),
        fault: Fault::new(path, found, rule, hint),
    }
}

/// A cell's text in quotes, so that a fault shows where it begins.
pub(super) fn shown(text: &str) -> String {
    Value::from(text).to_string()
}

impl Sheet {
    /// Reads a file.
    ///
    /// # Errors
    /// What keeps it from being read: too large, no text, no headers of a list, a quote left open.
    pub fn read(text: &str) -> Result<Self, Vec<RowFault>> {
        let whole = |found: String, rule, hint: Hint| vec![fault(None, FILE, found, rule, hint)];
        if text.len() > LARGEST_FILE {
            let found = text.len().to_string();
            return Err(whole(found, Rule::AtMost(LARGEST_FILE), Hint::TooLarge));
        }
        let text = text.strip_prefix(MARK).unwrap_or(text);
        if text.contains('\0') {
            return Err(whole(String::new(), Rule::Readable, Hint::NoUtf8));
        }
        let Some(separator) = separator(text) else {
            if let Some(Err(fault)) = lines(text, COMMA).next() {
                return Err(vec![fault]);
            }
            let start = text.trim().lines().next().unwrap_or_default();
            let rule = Rule::Type(Expected::Table);
            return Err(whole(shown(start), rule, Hint::NeedsHeaders));
        };
        let mut lines = lines(text, separator);
        let mut faults = Vec::new();
        let (first, headers) = match lines.next() {
            Some(Ok(line)) => (
                line.row,
                line.cells.iter().map(|it| it.trim().to_owned()).collect(),
            ),
            Some(Err(fault)) => return Err(vec![fault]),
            None => (1, Vec::new()),
        };
        let mut rows = Vec::new();
        for line in lines {
            match line {
                Ok(line) if line.filled().next().is_none() => {}
                Ok(line) => rows.push(line),
                Err(fault) => faults.push(fault),
            }
            if rows.len() > MOST_ENTRIES {
                let rule = Rule::AtMost(MOST_ENTRIES);
                faults.push(fault(None, FILE, "", rule, Hint::InParts));
                break;
            }
        }
        let sheet = Self {
            separator,
            first,
            headers,
            rows,
        };
        if sheet.headers.len() > MOST_COLUMNS {
            let found = sheet.headers.len().to_string();
            let rule = Rule::AtMost(MOST_COLUMNS);
            faults.push(fault(first, HEADERS, found, rule, Hint::TooManyColumns));
        }
        if faults.is_empty() {
            Ok(sheet)
        } else {
            Err(faults)
        }
    }
}

impl Line {
    /// The cells that aren't empty, with the number of their column.
    pub fn filled(&self) -> impl Iterator<Item = (usize, &str)> {
        let cells = self.cells.iter().enumerate();
        cells.filter(|(_, cell)| !cell.trim().is_empty())
    }
}

/// How many headers a list knows.
pub(super) fn known(list: List, headers: &[impl AsRef<str>]) -> usize {
    let first = headers.iter().take(MOST_COLUMNS);
    first
        .filter(|header| holds(list, &header.as_ref().trim().to_lowercase()).is_some())
        .count()
}

/// What stands between cells: that with which the first row has most headers of a list.
fn separator(text: &str) -> Option<u8> {
    let found = SEPARATORS.iter().rev().map(|separator| {
        let headers: Vec<String> = match lines(text, *separator).next() {
            Some(Ok(line)) => line.cells.iter().map(str::to_owned).collect(),
            _ => Vec::new(),
        };
        let known = List::ALL.iter().map(|list| known(*list, &headers)).max();
        (known.unwrap_or(0), headers.len(), *separator)
    });
    // Of equals the last, which is the comma.
    let most = found.max_by_key(|(known, columns, _)| (*known, *columns))?;
    (most.0 > 0).then_some(most.2)
}

/// The rows of a file that aren't blank, each with its number.
fn lines(text: &str, separator: u8) -> impl Iterator<Item = Result<Line, RowFault>> {
    let mut reader = ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(separator)
        .from_reader(text.as_bytes());
    let mut row = 0;
    core::iter::from_fn(move || {
        let start = reader.position().byte();
        let mut cells = StringRecord::new();
        let unreadable = |row, found, hint: Hint| fault(row, QUOTES, found, Rule::Readable, hint);
        match reader.read_record(&mut cells) {
            Ok(true) => {}
            Ok(false) => return None,
            Err(error) => {
                return Some(Err(unreadable(
                    row + 1,
                    error.to_string(),
                    Hint::PleaseReport,
                )));
            }
        }
        let end = reader.position().byte();
        let span = text.get(usize::try_from(start).ok()?..usize::try_from(end).ok()?)?;
        let before = text.get(..usize::try_from(start).ok()?)?;
        row += blank(before, span) + 1;
        if span.matches('"').count() % 2 == 1 {
            return Some(Err(unreadable(row, String::new(), Hint::LoneQuote)));
        }
        Some(Ok(Line { row, cells }))
    })
}

/// The reader passes over blank lines, which a spreadsheet counts.
fn blank(before: &str, span: &str) -> usize {
    let mut last = before.chars().next_back();
    let mut blank = 0;
    for sign in span.chars().take_while(|it| matches!(it, '\r' | '\n')) {
        if sign == '\r' || last != Some('\r') {
            blank += 1;
        }
        last = Some(sign);
    }
    blank
}
