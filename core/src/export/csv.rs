//! Tables for spreadsheets: comma-separated as in RFC 4180, UTF-8 with a byte order mark.
//!
//! Numbers are plain, with a point and all their digits. Text that a spreadsheet would take for a
//! formula gets an apostrophe in front (OWASP ASVS, formula injection); numbers never do.

use csv::{Terminator, WriterBuilder};

/// One cell.
#[derive(Clone, Debug, PartialEq)]
pub enum Cell {
    /// Words.
    Text(String),
    /// A number in the unit of its header.
    Number(f64),
    /// Nothing known, or nothing that applies.
    Empty,
}

/// A table with a header above each column.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Table {
    /// The headers.
    pub headers: Vec<String>,
    /// The rows, each with a cell for every header.
    pub rows: Vec<Vec<Cell>>,
}

/// What tells programs that a file is UTF-8.
pub(crate) const MARK: char = '\u{feff}';
/// What spreadsheets take for the start of a formula.
pub const STARTS_FORMULA: [char; 6] = ['=', '+', '-', '@', '\t', '\r'];
/// What keeps it from doing so.
const GUARD: char = '\'';

impl Table {
    /// The table as the text of a file. `None` where a row has more or fewer cells than there are
    /// headers, or a number isn't finite.
    pub fn to_csv(&self) -> Option<String> {
        let mut writer = WriterBuilder::new()
            .terminator(Terminator::CRLF)
            .from_writer(MARK.to_string().into_bytes());
        let headers = self.headers.iter().map(|header| guarded(header));
        writer.write_record(headers).ok()?;
        for row in &self.rows {
            let cells: Option<Vec<_>> = row.iter().map(Cell::written).collect();
            writer.write_record(cells?).ok()?;
        }
        String::from_utf8(writer.into_inner().ok()?).ok()
    }
}

impl Cell {
    fn written(&self) -> Option<String> {
        match self {
            Self::Text(text) => Some(guarded(text)),
            // Adding nothing makes 0 of −0.
            Self::Number(number) => number.is_finite().then(|| (number + 0.0).to_string()),
            Self::Empty => Some(String::new()),
        }
    }
}

/// A text as a cell holds it: with an apostrophe in front where it would be taken for a formula.
pub fn guarded(text: &str) -> String {
    if would_run(text) {
        format!("{GUARD}{text}")
    } else {
        text.to_owned()
    }
}

/// A text as it was before it was guarded.
pub(crate) fn unguarded(cell: &str) -> &str {
    match cell.strip_prefix(GUARD) {
        Some(text) if would_run(text) => text,
        _ => cell,
    }
}

/// Whether a spreadsheet takes a text for a formula. So that a guard can be told from an apostrophe of
/// the text's own, those before such a start count with it.
fn would_run(text: &str) -> bool {
    text.trim_start_matches(GUARD).starts_with(STARTS_FORMULA)
}
