//! Reads a table as entries of a list.

use super::cell::value;
use super::columns::{Holds, holds, nearest};
use super::number::{DecimalMark, Figure};
use super::row::{Values, entry};
use super::sheet::{COMMA, Line, Sheet, fault, known, shown};
use super::write::Entry;
use super::{List, RowFault};
use crate::export::csv::unguarded;
use crate::fault::{Rule, beginning};
use crate::hint::{FaultHint, Hint};
use std::collections::{HashMap, HashSet};

/// What a file says, or what must be asked before it can be told.
#[derive(Clone, Debug, PartialEq)]
pub enum Reading {
    /// Entries without a fault.
    Rows(Rows),
    /// Whether a mark in its numbers stands before decimals or thousands.
    AsksMark(Doubt),
}

/// Entries of a list, each from a row, without a fault.
#[derive(Clone, Debug, PartialEq)]
pub struct Rows {
    pub(super) list: List,
    pub(super) rows: Vec<(usize, Entry)>,
}

/// A number that can be read in two ways, in a file that shows nowhere which is meant.
#[derive(Clone, Debug, PartialEq)]
pub struct Doubt {
    /// Its row.
    pub row: usize,
    /// The header of its column.
    pub column: String,
    /// What the cell says.
    pub cell: String,
    /// The number where a point stands before decimals.
    pub with_point: f64,
    /// The number where a comma does.
    pub with_comma: f64,
}

/// Which list a table is of, told by its headers; `None` where they are those of several.
///
/// # Errors
/// What keeps the file from being read.
pub fn list_of(text: &str) -> Result<Option<List>, Vec<RowFault>> {
    let sheet = Sheet::read(text)?;
    let known = |list: &List| known(*list, &sheet.headers);
    let most = List::ALL.iter().map(known).max();
    let mut best = List::ALL.iter().filter(|list| Some(known(list)) == most);
    Ok(best.next().filter(|_| best.next().is_none()).copied())
}

/// Reads a table as entries of a list. Numbers may have a point or a comma before their decimals, in
/// each cell another; only where the file leaves it open the caller must say which.
///
/// # Errors
/// Every fault of every row.
pub fn read(text: &str, list: List, mark: Option<DecimalMark>) -> Result<Reading, Vec<RowFault>> {
    let sheet = Sheet::read(text)?;
    let (columns, mut faults) = headers(list, &sheet);
    let mark = match mark.map_or_else(|| told(&sheet, &columns), Ok) {
        Ok(mark) => mark,
        Err(doubt) => return Ok(Reading::AsksMark(doubt)),
    };
    let mut rows = Vec::with_capacity(sheet.rows.len());
    let mut ids = HashMap::new();
    let mut of_rows = Vec::new();
    for line in &sheet.rows {
        let values: Values<'_> = cells(line, &columns)
            .map(|(column, cell)| {
                let value = value(column.holds, cell, mark);
                (column.name.as_str(), (column.holds, value))
            })
            .collect();
        let (entry, found) = entry(list, &values);
        for mut found in found {
            found.path = header(&found.path, &columns);
            of_rows.push(RowFault {
                row: Some(line.row),
                fault: found,
            });
        }
        if let Some(id) = entry.get("id").and_then(|id| id.as_str())
            && let Some(first) = ids.insert(id.to_owned(), line.row)
        {
            let column = header("id", &columns);
            of_rows.push(fault(
                line.row,
                column,
                id,
                Rule::Unique,
                FaultHint::InRow(first),
            ));
        }
        rows.push((line.row, entry));
    }
    faults.extend(unread(&sheet, &columns));
    faults.extend(once(of_rows, &sheet, &columns));
    if faults.is_empty() {
        Ok(Reading::Rows(Rows { list, rows }))
    } else {
        Err(faults)
    }
}

/// A column of a file that belongs to the list.
#[derive(Debug)]
struct Column {
    /// Where it stands.
    place: usize,
    /// Its header as the file has it.
    header: String,
    /// Its own name.
    name: String,
    holds: Holds,
}

/// The columns that the list knows, and the faults of the others.
fn headers(list: List, sheet: &Sheet) -> (Vec<Column>, Vec<RowFault>) {
    let mut columns = Vec::new();
    let mut faults = Vec::new();
    let mut seen = HashSet::new();
    for (place, header) in sheet.headers.iter().enumerate() {
        let name = unguarded(header).to_lowercase();
        let at = |rule, hint: FaultHint| {
            let header = beginning(header);
            fault(sheet.first, header, letters(place), rule, hint)
        };
        match holds(list, &name) {
            _ if name.is_empty() => {}
            None => faults.push(at(
                Rule::UnknownField,
                nearest(list, &beginning(name.as_str())),
            )),
            Some(_) if !seen.insert(name.clone()) => {
                faults.push(at(Rule::Unique, Hint::ColumnOnce.into()));
            }
            Some(holds) => columns.push(Column {
                place,
                header: header.clone(),
                name,
                holds,
            }),
        }
    }
    (columns, faults)
}

/// What stands before a column's letters where a fault tells of a column by its place.
pub const COLUMN: &str = "column ";

/// A column as a spreadsheet names it: A, B, …, Z, AA.
fn letters(place: usize) -> String {
    let letter = char::from(b'A' + (place % 26) as u8);
    match place / 26 {
        0 => format!("{COLUMN}{letter}"),
        more => format!("{}{letter}", letters(more - 1)),
    }
}

/// The cells of a row that the list knows and that aren't empty.
fn cells<'s>(line: &'s Line, columns: &'s [Column]) -> impl Iterator<Item = (&'s Column, &'s str)> {
    columns.iter().filter_map(|column| {
        let cell = unguarded(line.cells.get(column.place)?);
        (!cell.trim().is_empty()).then_some((column, cell))
    })
}

/// The mark before decimals that a file shows, or a number that can be read in two ways.
fn told(sheet: &Sheet, columns: &[Column]) -> Result<DecimalMark, Doubt> {
    let numbers = || {
        let lines = sheet.rows.iter();
        let cells =
            lines.flat_map(|line| cells(line, columns).map(|(it, cell)| (line.row, it, cell)));
        cells
            .filter(|(_, column, _)| column.holds == Holds::Number)
            .filter_map(|(row, column, cell)| Some((row, column, cell, Figure::read(cell)?)))
    };
    let shows = |mark| {
        numbers().any(|(_, _, _, it)| matches!(it, Figure::Clear(_, Some(it)) if it == mark))
    };
    let told = match (shows(DecimalMark::Point), shows(DecimalMark::Comma)) {
        (true, false) => Some(DecimalMark::Point),
        (false, true) => Some(DecimalMark::Comma),
        // Who has commas between cells has points before decimals.
        (false, false) if sheet.separator == COMMA => Some(DecimalMark::Point),
        _ => None,
    };
    let doubtful = numbers().find_map(|(row, column, cell, figure)| match figure {
        // Thousands are never guessed.
        Figure::Doubtful { mark, .. } if told != Some(mark) => Some(Doubt {
            row,
            column: column.header.clone(),
            cell: cell.trim().to_owned(),
            with_point: figure.with(DecimalMark::Point),
            with_comma: figure.with(DecimalMark::Comma),
        }),
        _ => None,
    });
    // Where there is no doubt both read the same.
    doubtful.map_or(Ok(told.unwrap_or(DecimalMark::Point)), Err)
}

/// The header of the column that has a name, or of one that has a part of it; else the name.
fn header(name: &str, columns: &[Column]) -> String {
    let exact = |name: &str| columns.iter().find(|column| column.name == name);
    let inside = || {
        columns.iter().find(|column| {
            let rest = column.name.strip_prefix(name);
            rest.is_some_and(|rest| rest.starts_with('.'))
        })
    };
    let column = exact(name)
        .or_else(|| exact(&format!("{name}.likely")))
        .or_else(inside);
    column.map_or_else(|| name.to_owned(), |column| column.header.clone())
}

/// Cells that nothing is made of: below no header, or with letters that the file has lost.
fn unread(sheet: &Sheet, columns: &[Column]) -> Vec<RowFault> {
    let mut faults = Vec::new();
    let mut bare = HashSet::new();
    for line in &sheet.rows {
        for (place, cell) in line.filled() {
            let header = sheet
                .headers
                .get(place)
                .map(String::as_str)
                .unwrap_or_default();
            if header.is_empty() && bare.insert(place) {
                let rule = Rule::Required;
                faults.push(fault(
                    line.row,
                    letters(place),
                    shown(cell),
                    rule,
                    Hint::NoHeader,
                ));
            }
        }
        for (column, cell) in cells(line, columns) {
            if cell.contains(char::REPLACEMENT_CHARACTER) {
                let header = column.header.clone();
                faults.push(fault(
                    line.row,
                    header,
                    shown(cell),
                    Rule::Readable,
                    Hint::LostLetters,
                ));
            }
        }
    }
    faults
}

/// What every row lacks, since its column is missing, is told once, at the headers.
fn once(faults: Vec<RowFault>, sheet: &Sheet, columns: &[Column]) -> Vec<RowFault> {
    let lacks = |it: &RowFault| {
        let there = columns.iter().any(|column| column.header == it.fault.path);
        it.fault.rule == Rule::Required && !there
    };
    let mut lacking: HashMap<String, usize> = HashMap::new();
    for it in faults.iter().filter(|it| lacks(it)) {
        *lacking.entry(it.fault.path.clone()).or_default() += 1;
    }
    lacking.retain(|_, rows| *rows == sheet.rows.len());
    let mut told = HashSet::new();
    faults
        .into_iter()
        .filter_map(|mut it| {
            if lacks(&it) && lacking.contains_key(&it.fault.path) {
                it.row = Some(sheet.first);
                told.insert(it.fault.path.clone()).then_some(it)
            } else {
                Some(it)
            }
        })
        .collect()
}
