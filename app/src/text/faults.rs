//! What is wrong with an input.

use super::say::faults as say;
use super::{hints, items, small};
use crate::figure::{Counts, written};
use crate::number;
use farend_core::fault::{Bound, Expected, FILE, Fault, Rule};
use farend_core::units::UnitSystem;
use farend_core::yard::table::{COLUMN, HEADERS, QUOTES, RowFault};

/// A fault of a file: where in it, what was found, the rule in the file's units, and what to do.
pub fn fault(fault: &Fault) -> String {
    let counts = match fault.rule {
        Rule::Within { unit, .. } => Counts::Unit(unit),
        _ => Counts::Unit(""),
    };
    let place = &place(&fault.path, &fault.rule);
    let rule = &small(&rule(&fault.rule, counts, UnitSystem::Metric));
    let hint = &hints::of_fault(&fault.hint);
    // What a parser found it says in English; the rule names the place.
    let is_told = !fault.found.is_empty() && !matches!(fault.rule, Rule::Json { .. });
    match is_told {
        true => say::AtFound {
            place,
            found: &column(&fault.found),
            rule,
            hint,
        }
        .said(),
        false => say::At { place, rule, hint }.said(),
    }
}

/// A fault of a table.
pub fn row_fault(of: &RowFault) -> String {
    let said = fault(&of.fault);
    match of.row {
        Some(row) => say::InRow {
            row: &row.to_string(),
            fault: &said,
        }
        .said(),
        None => said,
    }
}

/// A rule and what to do.
pub fn with_hint(rule: &str, hint: &str) -> String {
    say::WithHint { rule, hint }.said()
}

/// Where a fault is, as the file has it. A header that no list knows is told as it is.
fn place(path: &str, rule: &Rule) -> String {
    let as_it_is = matches!(rule, Rule::UnknownField | Rule::Unique);
    match path {
        _ if as_it_is => path.to_owned(),
        FILE => say::file().to_owned(),
        QUOTES => say::quotes().to_owned(),
        HEADERS => say::headers().to_owned(),
        path => column(path),
    }
}

/// A column that is told by its place.
fn column(text: &str) -> String {
    text.strip_prefix(COLUMN)
        .map_or_else(|| text.to_owned(), say::column)
}

/// Two limits with their unit.
pub fn limits(counts: Counts, limits: (f64, f64), units: UnitSystem) -> String {
    let (min, max) = counts.limits(limits, units);
    say::LimitsAre {
        min: &written(min, units),
        max: &with_unit(max, counts, units),
    }
    .said()
}

fn with_unit(number: f64, counts: Counts, units: UnitSystem) -> String {
    let number = written(number, units);
    match counts.symbol(units) {
        "" => number,
        unit => format!("{number}\u{a0}{unit}"),
    }
}

/// A rule that is broken. Its limits count what the caller says.
pub fn rule(rule: &Rule, counts: Counts, units: UnitSystem) -> String {
    match rule {
        Rule::Within { min, max, .. } => say::within(&limits(counts, (*min, *max), units)),
        Rule::Required => say::required().to_owned(),
        Rule::Type(it) => expected(*it).to_owned(),
        Rule::OneOf(words) => say::one_of(&items(words)),
        Rule::UnknownField => say::unknown_field().to_owned(),
        Rule::AtMost(most) => say::at_most(&number::count(*most)),
        Rule::NotEmpty => say::not_empty().to_owned(),
        Rule::Unique => say::unique().to_owned(),
        Rule::NotAbove { bound, most, unit } => {
            say::not_above(&bounded(*bound, *most, unit, units))
        }
        Rule::Below { bound, most, unit } => say::below(&bounded(*bound, *most, unit, units)),
        Rule::Readable => say::readable().to_owned(),
        Rule::Json { line, column } => say::Json {
            line: &line.to_string(),
            column: &column.to_string(),
        }
        .said(),
    }
}

fn expected(expected: Expected) -> &'static str {
    match expected {
        Expected::Flag => say::expected_flag(),
        Expected::Whole => say::expected_whole(),
        Expected::Number => say::expected_number(),
        Expected::NumberWithPoint => say::expected_number_with_point(),
        Expected::Rising => say::expected_rising(),
        Expected::RisingThree => say::expected_rising_three(),
        Expected::Text => say::expected_text(),
        Expected::Id => say::expected_id(),
        Expected::Capitals => say::expected_capitals(),
        Expected::Group => say::expected_group(),
        Expected::List => say::expected_list(),
        Expected::Yard => say::expected_yard(),
        Expected::Table => say::expected_table(),
        Expected::MachineOfYard => say::expected_machine_of_yard(),
        Expected::ImplementOfYard => say::expected_implement_of_yard(),
    }
}

/// A figure that another must not exceed or reach, with its value in the reader's units.
fn bounded(of: Bound, most: f64, unit: &'static str, units: UnitSystem) -> String {
    let counts = Counts::Unit(unit);
    bound(of, &with_unit(counts.shown(most, units), counts, units))
}

fn bound(bound: Bound, value: &str) -> String {
    match bound {
        Bound::EngineRated => say::bound_engine_rated(value),
        Bound::LiftedHeight => say::bound_lifted_height(value),
        Bound::MachineMass => say::bound_machine_mass(value),
        Bound::ViscosityAt40 => say::bound_viscosity_at_40(value),
        Bound::NetPowerThere => say::bound_net_power_there(value),
        Bound::SheetFlow => say::bound_sheet_flow(value),
        Bound::RotorRated => say::bound_rotor_rated(value),
        Bound::RotorHighest => say::bound_rotor_highest(value),
        Bound::Need => say::bound_need(value),
        Bound::HighestSpeed => say::bound_highest_speed(value),
        Bound::OpenLength => say::bound_open_length(value),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use farend_core::hint::Hint;

    fn of(rule: Rule) -> Fault {
        Fault {
            path: "engine.net_kw".to_owned(),
            found: "9000".to_owned(),
            rule,
            hint: Hint::CheckBoth.into(),
        }
    }

    /// The terminal and the page say the same, but for spaces that don't break.
    #[test]
    fn english_faults_are_those_of_the_core() {
        let within = Rule::Within {
            min: 3.0,
            max: 600.0,
            unit: "kW",
        };
        let mut rules = vec![
            within,
            Rule::Required,
            Rule::OneOf(vec!["tractor", "skid_steer"]),
            Rule::UnknownField,
            Rule::AtMost(40),
            Rule::NotEmpty,
            Rule::Unique,
            Rule::Readable,
        ];
        rules.extend(Expected::ALL.iter().map(|it| Rule::Type(*it)));
        for bound in Bound::ALL.iter().copied() {
            let (most, unit) = (2600.0, "rpm");
            rules.push(Rule::NotAbove { bound, most, unit });
            rules.push(Rule::Below { bound, most, unit });
        }
        for it in rules.into_iter().map(of) {
            assert_eq!(fault(&it).replace('\u{a0}', " "), it.to_string());
        }
    }

    #[test]
    fn places_that_are_no_fields_are_named_but_a_header_of_that_name_isn_t() {
        assert_eq!(place(FILE, &Rule::Readable), "The file");
        assert_eq!(place(FILE, &Rule::UnknownField), "file");
        let fault = Fault {
            path: format!("{COLUMN}D"),
            ..of(Rule::Required)
        };
        let row = RowFault {
            row: Some(3),
            fault,
        };
        assert_eq!(
            row_fault(&row),
            "Row 3, column D (9000) is missing. Check both figures."
        );
    }
}
