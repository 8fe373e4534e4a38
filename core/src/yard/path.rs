//! Finds and changes what stands at a path of an entry, written as faults write it:
//! `circuits[0].flow_l_min.low`.

use serde_json::{Map, Value};

/// One step down.
enum Step<'p> {
    Key(&'p str),
    Place(usize),
}

/// The steps of a path; `None` where it isn't one.
fn steps(path: &str) -> Option<Vec<Step<'_>>> {
    let mut steps = Vec::new();
    for part in path.split('.') {
        let mut pieces = part.split('[');
        steps.push(Step::Key(pieces.next().filter(|key| !key.is_empty())?));
        for piece in pieces {
            let place = piece.strip_suffix(']')?.parse().ok()?;
            steps.push(Step::Place(place));
        }
    }
    Some(steps)
}

/// What stands at a path.
pub fn get<'v>(value: &'v Value, path: &str) -> Option<&'v Value> {
    steps(path)?.iter().try_fold(value, |at, step| match step {
        Step::Key(key) => at.get(key),
        Step::Place(place) => at.get(place),
    })
}

/// Puts something at a path, or takes away what stands there. Groups on the way are made where they
/// are missing; a group or a list that is left empty goes too, but for a list's own entries, which
/// keep their places. A place just behind a list's last entry adds one. False where the path leads
/// nowhere, and nothing has changed.
pub fn set(value: &mut Value, path: &str, to: Option<Value>) -> bool {
    match steps(path) {
        Some(steps) => set_at(value, &steps, to),
        None => false,
    }
}

fn set_at(value: &mut Value, steps: &[Step<'_>], to: Option<Value>) -> bool {
    let Some((step, rest)) = steps.split_first() else {
        return false;
    };
    match (step, value) {
        (Step::Key(key), Value::Object(group)) => set_key(group, key, rest, to),
        (Step::Place(place), Value::Array(items)) => set_place(items, *place, rest, to),
        _ => false,
    }
}

/// What is made where something further down is put: a list where a place in it comes next.
fn blank(next: Option<&Step<'_>>) -> Value {
    match next {
        Some(Step::Place(_)) => Value::Array(Vec::new()),
        _ => Value::Object(Map::new()),
    }
}

fn set_key(
    group: &mut Map<String, Value>,
    key: &str,
    rest: &[Step<'_>],
    to: Option<Value>,
) -> bool {
    if rest.is_empty() {
        match to {
            Some(to) => group.insert(key.to_owned(), to),
            None => group.remove(key),
        };
        return true;
    }
    let mut below = match group.get(key) {
        Some(below) => below.clone(),
        None if to.is_none() => return true,
        None => blank(rest.first()),
    };
    if !set_at(&mut below, rest, to) {
        return false;
    }
    match is_empty(&below) {
        true => group.remove(key),
        false => group.insert(key.to_owned(), below),
    };
    true
}

fn set_place(items: &mut Vec<Value>, place: usize, rest: &[Step<'_>], to: Option<Value>) -> bool {
    let ends = items.len();
    match (items.get_mut(place), rest.is_empty(), to) {
        (Some(item), false, to) => return set_at(item, rest, to),
        (Some(item), true, Some(to)) => *item = to,
        (Some(_), true, None) => {
            items.remove(place);
        }
        (None, true, Some(to)) if place == ends => items.push(to),
        (None, ..) => return false,
    }
    true
}

fn is_empty(value: &Value) -> bool {
    match value {
        Value::Object(group) => group.is_empty(),
        Value::Array(items) => items.is_empty(),
        _ => false,
    }
}
