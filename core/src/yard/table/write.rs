//! A list of the yard as a table.

use super::List;
use super::columns::{COMMENT, PARTS, SOURCE};
use crate::export::csv::{Cell, Table};
use crate::yard::shape::{Field, Shape};
use crate::yard::{DEMO, Yard};
use serde_json::{Map, Value};

pub(super) type Entry = Map<String, Value>;

/// A column under its name, with a cell for each entry.
pub(super) type Column = (String, Vec<Cell>);

/// Flags as they are written: words that no spreadsheet puts in its own language.
const YES: &str = "yes";
const NO: &str = "no";

/// A list of a yard, with the columns that any of its entries uses.
pub fn table(yard: &Yard, list: List) -> Table {
    let entries = entries(&yard.written, list);
    let groups: Vec<_> = entries.into_iter().map(Some).collect();
    of_columns(columns(list, &groups, Extent::Used), groups.len())
}

/// A table with every column, the first place of each list, and a made-up entry below.
pub fn template(list: List) -> Table {
    // The demo is part of the program and its tests load it.
    let demo: Value = serde_json::from_str(DEMO).unwrap_or_default();
    let whole = |entry| columns(list, &[entry], Extent::All);
    // Of those that need no further place the one that shows most.
    let shown = |columns: &[Column]| {
        let cells = columns.iter().flat_map(|(_, cells)| cells);
        cells.filter(|cell| **cell != Cell::Empty).count()
    };
    let fewest = whole(None).len();
    let examples = entries(&demo, list).into_iter().map(|it| whole(Some(it)));
    let example = examples
        .filter(|columns| columns.len() == fewest)
        .max_by_key(|columns| shown(columns));
    let mut columns = example.unwrap_or_else(|| whole(None));
    if let Some((_, cells)) = columns.first_mut() {
        *cells = vec![Cell::Text("example".to_owned())];
    }
    of_columns(columns, 1)
}

/// The entries of a list of a yard file.
pub(super) fn entries(yard: &Value, list: List) -> Vec<&Entry> {
    let entries = yard.get(list.word()).and_then(Value::as_array);
    let entries = entries.map(Vec::as_slice).unwrap_or_default();
    entries.iter().filter_map(Value::as_object).collect()
}

fn of_columns(columns: Vec<Column>, rows: usize) -> Table {
    let mut table = Table {
        headers: Vec::with_capacity(columns.len()),
        rows: vec![Vec::with_capacity(columns.len()); rows],
    };
    for (name, cells) in columns {
        table.headers.push(name);
        for (row, cell) in table.rows.iter_mut().zip(cells) {
            row.push(cell);
        }
    }
    table
}

/// Which columns are wanted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Extent {
    /// Those in which an entry has a cell that isn't empty.
    Used,
    /// Those of every field.
    All,
}

/// The columns of entries that stand side by side, in the rules' order.
pub(super) fn columns(list: List, entries: &[Option<&Entry>], extent: Extent) -> Vec<Column> {
    let mut writer = Writer {
        extent,
        columns: Vec::new(),
    };
    writer.group(list.fields(), "", entries);
    writer.columns
}

struct Writer {
    extent: Extent,
    columns: Vec<Column>,
}

impl Writer {
    fn group(&mut self, fields: &'static [Field], path: &str, groups: &[Option<&Entry>]) {
        for field in fields {
            let name = joined(path, field.key);
            let values = under(groups, field.key);
            match field.shape {
                Shape::Group(of) => self.inner(of, &name, &values),
                Shape::Many { of, .. } => self.many(of, &name, &values),
                Shape::Uncertain { .. } => self.uncertain(name, &values),
                _ => self.push(name, &values),
            }
        }
        let comments = under(groups, COMMENT);
        if path.is_empty() || comments.iter().any(Option::is_some) {
            self.push(joined(path, COMMENT), &comments);
        }
    }

    /// A group that may be there without anything known of it.
    fn inner(&mut self, of: &'static [Field], name: &str, values: &[Option<&Value>]) {
        let groups: Vec<_> = values
            .iter()
            .map(|it| it.and_then(Value::as_object))
            .collect();
        let bare: Vec<_> = groups
            .iter()
            .map(|group| match group.is_some_and(is_bare) {
                true => Cell::Text(YES.to_owned()),
                false => Cell::Empty,
            })
            .collect();
        if bare.iter().any(|cell| *cell != Cell::Empty) {
            self.columns.push((name.to_owned(), bare));
        }
        self.group(of, name, &groups);
    }

    fn many(&mut self, of: &'static [Field], name: &str, values: &[Option<&Value>]) {
        let lists: Vec<_> = values
            .iter()
            .map(|it| it.and_then(Value::as_array))
            .collect();
        let longest = lists.iter().flatten().map(|list| list.len()).max();
        let places = match self.extent {
            Extent::Used => longest.unwrap_or(0),
            Extent::All => longest.unwrap_or(0).max(1),
        };
        for place in 0..places {
            let items: Vec<_> = lists
                .iter()
                .map(|list| list.and_then(|it| it.get(place)))
                .collect();
            self.inner(of, &format!("{name}.{}", place + 1), &items);
        }
    }

    fn uncertain(&mut self, name: String, values: &[Option<&Value>]) {
        let one: Vec<_> = values
            .iter()
            .map(|it| it.filter(|it| !it.is_object()))
            .collect();
        let three: Vec<_> = values
            .iter()
            .map(|it| it.and_then(Value::as_object))
            .collect();
        self.push(name.clone(), &one);
        for key in PARTS.iter().chain([&SOURCE]) {
            self.push(joined(&name, key), &under(&three, key));
        }
    }

    fn push(&mut self, name: String, values: &[Option<&Value>]) {
        let cells: Vec<_> = values
            .iter()
            .map(|it| it.map_or(Cell::Empty, cell))
            .collect();
        if self.extent == Extent::All || cells.iter().any(|cell| *cell != Cell::Empty) {
            self.columns.push((name, cells));
        }
    }
}

fn under<'a>(groups: &[Option<&'a Entry>], key: &str) -> Vec<Option<&'a Value>> {
    groups
        .iter()
        .map(|group| group.and_then(|it| it.get(key)))
        .collect()
}

/// A dotted path.
pub(super) fn joined(path: &str, key: &str) -> String {
    match path {
        "" => key.to_owned(),
        _ => format!("{path}.{key}"),
    }
}

/// Whether no cell would tell that a group is there.
fn is_bare(group: &Entry) -> bool {
    group.iter().all(|(key, value)| match value {
        Value::Array(items) => items.is_empty(),
        Value::String(text) => key == "$schema" || text.trim().is_empty(),
        _ => false,
    })
}

fn cell(value: &Value) -> Cell {
    let text = match value {
        Value::Null => return Cell::Empty,
        Value::Bool(true) => YES.to_owned(),
        Value::Bool(false) => NO.to_owned(),
        Value::Number(number) => return number.as_f64().map_or(Cell::Empty, Cell::Number),
        Value::String(text) => text.clone(),
        // A list of words; of comments anything that isn't a text stays JSON.
        Value::Array(items) => match items.iter().map(Value::as_str).collect::<Option<Vec<_>>>() {
            Some(words) => words.join(" "),
            None => value.to_string(),
        },
        Value::Object(_) => value.to_string(),
    };
    match text.trim().is_empty() {
        true => Cell::Empty,
        false => Cell::Text(text),
    }
}
