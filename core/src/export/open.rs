//! Opens what has been saved: a yard file, or a comparison with its yard.

use super::comparison::{FORMAT_VERSION, Format};
use crate::fault::{Expected, Fault, Rule};
use crate::hint::Hint;
use crate::state::{LONGEST_LINK, LinkFault, State};
use crate::yard::format::{VERSION, refuse_newer};
use crate::yard::report::Report;
use crate::yard::rules::{LARGEST_FILE, YARD, optional, required};
use crate::yard::shape::{Field, Shape, check_group};
use crate::yard::{Yard, read_group};
use serde_json::{Map, Value};

/// What a file held.
#[derive(Clone, Debug, PartialEq)]
pub struct Opened {
    /// The yard.
    pub yard: Yard,
    /// All that was chosen in it, where the file is a saved comparison.
    pub state: Option<State>,
}

/// The most bytes that a saved comparison may have: the largest yard, indented, and its results.
pub const LARGEST_COMPARISON: usize = 4 * LARGEST_FILE;

const LINK: &str = "link";
const YARD_KEY: &str = "yard";

/// The fields of a saved comparison that are read. The yard is held against its own rules.
const COMPARISON: &[Field] = &[
    required("format", Shape::OneOf(Format::WORDS), Hint::TellsFromYard),
    required(
        VERSION,
        Shape::Whole {
            min: 1,
            max: FORMAT_VERSION,
        },
        Hint::ReadsVersion1,
    ),
    required(LINK, Shape::Text { most: LONGEST_LINK }, Hint::WrittenLink),
    optional(YARD_KEY, Shape::Group(YARD), YARD_HINT),
];
const YARD_HINT: Hint = Hint::WholeYard;

/// Opens a file.
///
/// # Errors
/// Every fault of the file, with its path, what was found, what is allowed and a hint.
pub fn open(text: &str) -> Result<Opened, Vec<Fault>> {
    let group = read_group(text, LARGEST_COMPARISON)?;
    let has = |key| group.contains_key(key);
    if !has("machines") && (has("format") || has(YARD_KEY)) {
        comparison(group)
    } else {
        let yard = Yard::from_json(text)?;
        Ok(Opened { yard, state: None })
    }
}

fn comparison(mut group: Map<String, Value>) -> Result<Opened, Vec<Fault>> {
    refuse_newer(&group, FORMAT_VERSION)?;
    let mut report = Report::default();
    group.remove("results");
    let yard = group.remove(YARD_KEY);
    check_group(&group, COMPARISON, "", &mut report);
    let state = linked(&group, &mut report);
    let yard = match yard {
        Some(Value::Object(yard)) => Yard::from_group(yard),
        Some(Value::Null) | None => {
            report.add(YARD_KEY, "", Rule::Required, YARD_HINT);
            Err(Vec::new())
        }
        Some(other) => {
            report.wrong_type(YARD_KEY, &other, Expected::Group, YARD_HINT);
            Err(Vec::new())
        }
    };
    if let (Ok(yard), Some(state)) = (&yard, &state) {
        check_choices(state, yard, &mut report);
    }
    let mut faults = report.into_faults();
    match (yard, state) {
        (Ok(yard), state @ Some(_)) if faults.is_empty() => Ok(Opened { yard, state }),
        (yard, _) => {
            let of_yard = yard.err().unwrap_or_default();
            faults.extend(of_yard.into_iter().map(|fault| Fault {
                path: format!("{YARD_KEY}.{}", fault.path),
                ..fault
            }));
            Err(faults)
        }
    }
}

/// What the link says, where it's there and whole.
fn linked(group: &Map<String, Value>, report: &mut Report) -> Option<State> {
    let link = group.get(LINK)?;
    // The rules have told of one that is empty or too long.
    let may_be = |text: &&str| !text.trim().is_empty() && text.chars().count() <= LONGEST_LINK;
    let text = link.as_str().filter(may_be)?;
    let hint = match State::from_link(text) {
        Ok(state) => return Some(state),
        // Too long in bytes alone: no link has letters of several.
        Err(LinkFault::Damaged | LinkFault::TooLong) => Hint::LinkDamaged,
        Err(LinkFault::Newer(_)) => Hint::Newer,
    };
    report.add(LINK, link.to_string(), Rule::Readable, hint);
    None
}

/// What was chosen must be in the yard, and suit it.
fn check_choices(state: &State, yard: &Yard, report: &mut Report) {
    let hint = Hint::LinkOfAnotherYard;
    let machine = yard.machine(&state.machine);
    let beside = state.beside.as_ref();
    let missing_machines = [
        machine.is_none().then_some(&state.machine),
        beside.filter(|id| yard.machine(id).is_none()),
    ];
    for id in missing_machines.into_iter().flatten() {
        let rule = Rule::Type(Expected::MachineOfYard);
        report.add(LINK, id, rule, hint);
    }
    if yard.implement(&state.implement).is_none() {
        let rule = Rule::Type(Expected::ImplementOfYard);
        report.add(LINK, &state.implement, rule, hint);
    }
    if let Some(Err(faults)) = machine.map(|machine| state.settings.check(machine)) {
        for fault in faults {
            let path = format!("{LINK}.{}", fault.path);
            report.add(path, fault.found, fault.rule, fault.hint);
        }
    }
}
