//! What the yard's editor says.

pub use super::faults::limits;
pub use super::say::yard::*;
pub use super::tables_in::of as list_name;

use super::say::{fit, sentences::PtoGear, yard as say};
use super::sentences::short;
use super::{amount, faults, fields, hints, items, list, named, small, words};
use crate::figure::Counts;
use crate::number;
use farend_core::fault::{Fault, Rule};
use farend_core::hint::Hint;
use farend_core::units::UnitSystem;
use farend_core::yard::history::Deed;
use farend_core::yard::list::List;
use farend_core::yard::shape::{Field, Shape};
use serde_json::Value;

/// What the yard's file is called.
pub const FILE: &str = "farend-yard.json";

/// The button that adds to a list.
pub fn add(list: List) -> &'static str {
    match list {
        List::Machines => add_machine(),
        List::Implements => add_implement(),
        List::Kits => add_kit(),
    }
}

/// The name of a new entry.
pub fn new_name(list: List) -> &'static str {
    match list {
        List::Machines => new_machine(),
        List::Implements => new_implement(),
        List::Kits => new_kit(),
    }
}

/// The name of a copy, which is at most as long as names may be.
pub fn copied(name: &str) -> String {
    const MOST: usize = 80;
    let added = copy_of("").chars().count();
    let kept: String = name.chars().take(MOST.saturating_sub(added)).collect();
    copy_of(&kept)
}

/// How many entries a list shows no more of.
pub fn more(hidden: usize) -> String {
    more_entries(&number::count(hidden))
}

/// An entry's mark for its faults.
pub fn to_mend(faults: usize) -> String {
    so_many_to_mend(&number::count(faults))
}

/// What isn't known of an entry that much depends on.
pub fn not_known(keys: &[&str]) -> String {
    let names: Vec<_> = keys
        .iter()
        .map(|key| small(fields::field("", key).unwrap_or(key)))
        .collect();
    fields_not_known(&list(&names))
}

/// Why a machine or an implement can't be compared: there is none, or the chosen one – its name and
/// the number of its faults – is to be mended first.
pub fn lacks(list: List, chosen: Option<(String, usize)>) -> String {
    match (list, chosen) {
        (_, Some((name, faults))) if faults > 0 => say::LacksMending {
            name: short(&name),
            faults: &to_mend(faults),
        }
        .said(),
        (List::Machines, _) => lacks_machine().to_owned(),
        (List::Implements | List::Kits, _) => lacks_implement().to_owned(),
    }
}

/// One of a list's groups: "Outlet 2".
pub fn numbered(item: &str, place: usize) -> String {
    say::Numbered {
        item,
        place: &number::count(place + 1),
    }
    .said()
}

/// A step's name.
pub fn deed(deed: &Deed) -> String {
    match deed {
        Deed::Own(path) => deed_own(&small(&fields::at(path))),
        Deed::Field(name, path) => say::DeedField {
            field: &small(&fields::at(path)),
            name: short(name),
        }
        .said(),
        Deed::Added(name) => deed_added(short(name)),
        Deed::Removed(name) => deed_removed(short(name)),
        Deed::Moved(name) => deed_moved(short(name)),
        Deed::Opened(file) => deed_opened(file),
        Deed::TookOver(file) => deed_took_over(file),
    }
}

/// The rule that is broken at a field.
pub fn rule(fault: &Fault, counts: Counts, units: UnitSystem) -> String {
    match &fault.rule {
        Rule::Unique => stands_elsewhere().to_owned(),
        rule => faults::rule(rule, counts, units),
    }
}

/// What is wrong at a field, beside which its own hint stands.
pub fn fault(fault: &Fault, beside: Hint, units: UnitSystem) -> String {
    let rule = rule(fault, counts_of(fault), units);
    match &fault.hint {
        hint if *hint == beside.into() => rule,
        hint => faults::with_hint(&rule, &hints::of_fault(hint)),
    }
}

/// What is wrong and where, for the list of all: "Rear PTO, shaft speed: must be …".
pub fn fault_line(fault: &Fault, units: UnitSystem) -> String {
    let rule = rule(fault, counts_of(fault), units);
    named(&fault_at(&fault.path), &small(&rule))
}

/// What a fault's own limits count.
fn counts_of(fault: &Fault) -> Counts {
    match fault.rule {
        Rule::Within { unit, .. } => Counts::Unit(unit),
        _ => Counts::Unit(""),
    }
}

/// Where a fault is: "Hydraulic outlets, outlet 2: relief pressure".
fn fault_at(path: &str) -> String {
    let own = fields::at(path);
    let first = fields::keys(path).next().unwrap_or_default();
    let group = fields::field("", first).unwrap_or(first).to_owned();
    let within = |group: String, (key, place): (&str, usize)| {
        say::ItemAt {
            group: &group,
            item: &small(fields::item(key)),
            place: &number::count(place + 1),
        }
        .said()
    };
    let group = fields::places(path).into_iter().fold(group, within);
    match own.as_str() {
        "" => path.to_owned(),
        _ if path.ends_with(']') => group,
        own if own.starts_with(&group) => own.to_owned(),
        own => named(&group, &small(own)),
    }
}

/// A group or a list in one line: "540 rpm with the engine at 2,400 rpm", "Remotes, flow on the
/// sheet 52 L/min".
pub fn summary(field: &Field, value: Option<&Value>, units: UnitSystem) -> String {
    match (field.shape, value) {
        (Shape::Many { of, .. }, Some(Value::Array(items))) => match items.as_slice() {
            [one] => group(field.key, of.iter(), Some(one), units),
            items if items.len() > MOST_NAMED => items.len().to_string(),
            items => {
                let first = |item| known(field.key, of.iter(), item, units).into_iter().next();
                list(&items.iter().filter_map(first).collect::<Vec<_>>())
            }
        },
        (Shape::Group(of), Some(value)) => match pto(field.key, of, value, units) {
            Some(told) => told,
            None => group(field.key, of.iter(), Some(value), units),
        },
        _ => nothing_known().to_owned(),
    }
}

/// The most of a list that its summary names.
const MOST_NAMED: usize = 4;
/// The most figures in a summary.
const MOST_FIGURES: usize = 3;

/// A PTO's two speeds, which say all of it.
fn pto(key: &str, fields: &[Field], value: &Value, units: UnitSystem) -> Option<String> {
    let speed = |key: &str| {
        let field = fields.iter().find(|field| field.key == key)?;
        number_of(field, value.get(key)?, units)
    };
    let rpm = speed("rpm").filter(|_| key.ends_with("pto"))?;
    Some(match speed("engine_rpm") {
        Some(engine) => PtoGear {
            speed: &rpm,
            engine: &engine,
        }
        .said(),
        None => rpm,
    })
}

/// A group's fields in one line, as far as they are known.
pub fn group<'f>(
    within: &str,
    fields: impl Iterator<Item = &'f Field>,
    value: Option<&Value>,
    units: UnitSystem,
) -> String {
    let mut known = value.map_or_else(Vec::new, |value| known(within, fields, value, units));
    known.truncate(MOST_FIGURES);
    match known.as_slice() {
        [] => nothing_known().to_owned(),
        known => items(known),
    }
}

/// What is known of a group's own fields, in their order.
fn known<'f>(
    within: &str,
    fields: impl Iterator<Item = &'f Field>,
    value: &Value,
    units: UnitSystem,
) -> Vec<String> {
    let told = fields.filter_map(|field| {
        let value = value.get(field.key)?;
        match (field.shape, field.key) {
            // The engine speed of a figure tells less than the next figure.
            (_, "engine_rpm") => None,
            (Shape::Number { .. } | Shape::Uncertain { .. }, key) => {
                let name = fields::field(within, key).map(small);
                let number = number_of(field, value, units)?;
                Some(match name {
                    Some(name) => amount(&name, &number),
                    None => number,
                })
            }
            (Shape::OneOf(_), "category") => {
                words::word("category", value.as_str()?).map(fit::category_named)
            }
            (Shape::OneOf(_), key) => words::word(key, value.as_str()?).map(str::to_owned),
            (Shape::Words { .. }, key) => {
                let named = |it: &Value| words::word(key, it.as_str()?).map(small);
                let named: Vec<_> = value.as_array()?.iter().filter_map(named).collect();
                (!named.is_empty()).then(|| list(&named))
            }
            _ => None,
        }
    });
    told.collect()
}

/// A number with its unit.
fn number_of(field: &Field, value: &Value, units: UnitSystem) -> Option<String> {
    let (Shape::Number { unit, .. } | Shape::Uncertain { unit, .. }) = field.shape else {
        return None;
    };
    if field.key.ends_with("price") {
        return None;
    }
    let number = value.as_f64().or_else(|| value.get("likely")?.as_f64())?;
    let counts = Counts::Unit(unit);
    let shown = counts.shown(number, units);
    let digits = match shown.abs() {
        it if it >= 100.0 || it.fract() == 0.0 => 0,
        it if it >= 10.0 => 1,
        _ => 2,
    };
    let number = number::fixed(shown, digits);
    Some(match counts.symbol(units) {
        "" => number,
        symbol => format!("{number}\u{a0}{symbol}"),
    })
}

#[cfg(test)]
mod tests {
    use super::{copied, fault_at};

    #[test]
    fn a_fault_is_found_by_its_words() {
        for (path, words) in [
            ("kind", "Kind"),
            ("engine", "Engine"),
            ("need_kw.low", "Power that the job needs, low"),
            ("engine.net_kw", "Engine: net power"),
            ("engine.curve[1].kw", "Engine, point 2: power"),
            ("circuits[1]", "Hydraulic outlets, outlet 2"),
            (
                "circuits[0].relief_bar.low",
                "Hydraulic outlets, outlet 1: relief pressure, low",
            ),
            ("not_there", "not_there"),
        ] {
            assert_eq!(fault_at(path), words);
        }
    }

    #[test]
    fn a_copys_name_is_no_longer_than_names_may_be() {
        assert_eq!(copied("Wren 18"), "Wren 18 (copy)");
        assert_eq!(copied(&"ü".repeat(80)).chars().count(), 80);
    }
}
