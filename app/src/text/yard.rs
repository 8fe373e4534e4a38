//! What the yard's editor says.

use super::{capital, fields, list, small, words};
use crate::figure::{Counts, written};
use crate::number;
use farend_core::fault::{Fault, Rule};
use farend_core::units::UnitSystem;
use farend_core::yard::history::Deed;
use farend_core::yard::list::List;
use farend_core::yard::shape::{Field, Shape};
use serde_json::Value;

pub const UNDO: &str = "Undo";
pub const REDO: &str = "Redo";
pub const UNDONE: &str = "Undone:";
pub const REDONE: &str = "Done again:";
pub const STEPS: &str = "Steps";
pub const SAVE: &str = "Save the yard as a file";
pub const FILE: &str = "farend-yard.json";
pub const TO_DEMO: &str = "Back to the demo yard…";
pub const TO_DEMO_SURE: &str = "This puts the demo yard in place of the one here. Undo brings yours \
    back as long as this page stays open; save it as a file to keep it for longer.";
pub const YES_DEMO: &str = "Put the demo yard here";
pub const NO_DEMO: &str = "Leave the yard as it is";
pub const OWN: &str = "The yard itself";
pub const LISTS: &str = "What the yard has";
pub const SEARCH: &str = "Search by name";
pub const NONE_FOUND: &str = "Nothing of that name.";
pub const CHOOSE: &str = "Choose an entry of the list, or add one.";
pub const COPY: &str = "Copy";
pub const REMOVE: &str = "Remove";
pub const EARLIER: &str = "Move up";
pub const LATER: &str = "Move down";
pub const TO_MEND: &str = "To mend before it takes part in comparisons";
pub const OWN_TO_MEND: &str = "To mend: until then these are left out";
pub const MORE: &str = "Further figures";
pub const NEEDED: &str = "needed";
pub const NOT_KNOWN: &str = "Not known";
pub const YES: &str = "Yes";
pub const NO: &str = "No";
pub const NOTHING_KNOWN: &str = "nothing entered";
pub const RANGE: &str = "Give a range";
pub const ONE_FIGURE: &str = "One figure";
pub const ADD: &str = "Add";
pub const LEAVE_OUT: &str = "Leave it out";
pub const TAKE_AWAY: &str = "Take this field away";
pub const UNCLEAR: &str = "This isn't one clear number. Write it without marks between thousands: \
    1234 or 1.234.";
pub const ASSUMED: &str = "assumed:";
pub const KEPT: &str = "Changes are kept in this browser.";
pub const NOT_KEPT: &str = "This browser doesn't keep changes: save the yard as a file.";
pub const HELD: &str = "Changes aren't kept until you have decided above.";
pub const NOTHING_TO_COMPARE: &str = "There is nothing to compare yet";
pub const TO_EDITOR: &str = "Edit the yard";

/// A list's name.
pub fn list_name(list: List) -> &'static str {
    match list {
        List::Machines => "Machines",
        List::Implements => "Implements",
        List::Kits => "Kits",
    }
}

/// The button that adds to a list.
pub fn add(list: List) -> &'static str {
    match list {
        List::Machines => "Add a machine",
        List::Implements => "Add an implement",
        List::Kits => "Add a kit",
    }
}

/// The name of a new entry.
pub fn new_name(list: List) -> &'static str {
    match list {
        List::Machines => "New machine",
        List::Implements => "New implement",
        List::Kits => "New kit",
    }
}

/// The name of a copy, which is at most as long as names may be.
pub fn copied(name: &str) -> String {
    const END: &str = " (copy)";
    const MOST: usize = 80;
    let kept: String = name.chars().take(MOST - END.len()).collect();
    format!("{kept}{END}")
}

/// How many entries a list shows no more of.
pub fn more(hidden: usize) -> String {
    format!("{hidden} more: search by name.")
}

/// An entry's mark for its faults.
pub fn to_mend(faults: usize) -> String {
    format!("{faults} to mend")
}

/// What isn't known of an entry that much depends on.
pub fn not_known(keys: &[&str]) -> String {
    let names: Vec<_> = keys
        .iter()
        .map(|key| small(fields::field("", key).unwrap_or(key)))
        .collect();
    format!("not known: {}", list(&names))
}

/// Why a machine or an implement can't be compared: there is none, or the chosen one – its name and
/// the number of its faults – is to be mended first.
pub fn lacks(list: List, chosen: Option<(String, usize)>) -> String {
    match (list, chosen) {
        (_, Some((name, faults))) if faults > 0 => format!(
            "{} has something to mend first ({}). What is to be done stands at its entry.",
            short(&name),
            to_mend(faults)
        ),
        (List::Machines, _) => {
            "The yard has no machine that can be compared. Add one, or mend one \
            of those that it has."
                .to_owned()
        }
        (List::Implements | List::Kits, _) => {
            "The yard has no implement that can be compared. Add \
            one, or mend one of those that it has."
                .to_owned()
        }
    }
}

/// A step's name.
pub fn deed(deed: &Deed) -> String {
    match deed {
        Deed::Own(path) => format!("{} of the yard", small(&fields::at(path))),
        Deed::Field(name, path) => format!("{} of {}", small(&fields::at(path)), short(name)),
        Deed::Added(name) => format!("adding {}", short(name)),
        Deed::Removed(name) => format!("removing {}", short(name)),
        Deed::Moved(name) => format!("moving {}", short(name)),
        Deed::Opened(file) => format!("opening {file}"),
        Deed::TookOver(name) => format!("taking over {name}"),
    }
}

/// A name up to its first comma: "Curlew 46" of "Curlew 46, utility tractor".
fn short(name: &str) -> &str {
    name.split(',').next().unwrap_or(name)
}

/// Two limits with their unit.
pub fn limits(counts: Counts, limits: (f64, f64), units: UnitSystem) -> String {
    let (min, max) = counts.limits(limits, units);
    let (min, max) = (written(min, units), written(max, units));
    match counts.symbol(units) {
        "" => format!("{min} to {max}"),
        unit => format!("{min} to {max}\u{a0}{unit}"),
    }
}

/// The rule that is broken at a field.
pub fn rule(fault: &Fault, counts: Counts, units: UnitSystem) -> String {
    match &fault.rule {
        Rule::Within { min, max, .. } => {
            format!("Must be {}.", limits(counts, (*min, *max), units))
        }
        Rule::Unique => "Stands elsewhere already.".to_owned(),
        rule => format!("{}.", capital(&rule.to_string())),
    }
}

/// What is wrong at a field, beside which its own hint stands.
pub fn fault(fault: &Fault, beside: &str, units: UnitSystem) -> String {
    let rule = rule(fault, counts_of(fault), units);
    match fault.hint.as_str() {
        hint if hint == beside => rule,
        hint => format!("{rule} {hint}"),
    }
}

/// What is wrong and where, for the list of all: "Rear PTO, shaft speed: must be …".
pub fn fault_line(fault: &Fault, units: UnitSystem) -> String {
    let rule = rule(fault, counts_of(fault), units);
    format!("{}: {}", fault_at(&fault.path), small(&rule))
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
    let group = fields::field("", first).unwrap_or(first);
    let of_list = fields::places(path)
        .into_iter()
        .map(|(key, place)| format!(", {} {}", small(fields::item(key)), place + 1));
    let group = format!("{group}{}", of_list.collect::<String>());
    match own.as_str() {
        "" => path.to_owned(),
        _ if path.ends_with(']') => group,
        own if own.starts_with(&group) => own.to_owned(),
        own => format!("{group}: {}", small(own)),
    }
}

/// A group or a list in one line: "540 rpm at 2,400 rpm", "Remotes, flow on the sheet 52 L/min".
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
        _ => NOTHING_KNOWN.to_owned(),
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
        Some(engine) => format!("{rpm} at {engine} of the engine"),
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
        [] => NOTHING_KNOWN.to_owned(),
        known => known.join(", "),
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
                    Some(name) => format!("{name} {number}"),
                    None => number,
                })
            }
            (Shape::OneOf(_), "category") => Some(format!(
                "category {}",
                words::word("category", value.as_str()?)?
            )),
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
