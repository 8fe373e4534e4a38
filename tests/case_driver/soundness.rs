//! Shows that the cases can fail: a check that can't is a defect.

use crate::calculation::{Calculation, TABLE};
use crate::case::Case;
use crate::files::{all, parse};
use crate::inputs::Input;
use crate::judge::{Reading, Wanted, failures, readings};
use std::collections::HashSet;

/// A file with one case that holds, to be spoilt.
const GOOD: &str = r#"
subject = "Power"
[[case]]
id = "one"
what = "power of a flow under pressure"
calculation = "hydraulic_power"
inputs = { flow_l_min = [60, 120], pressure_bar = 100 }
expected = [{ name = "power", value = [10, 20], unit = "kw" }]
tolerance = { relative = 1e-9 }
tolerance_reason = "definition"
source = "definition"
"#;

/// What would have to be refused.
const REFUSED: &str =
    r#"refused = [{ path = "flow", found = "60", min = 0, max = 1, unit = "L/min" }]"#;

/// The failures of the good case after a change of its text.
fn after(from: &str, to: &str) -> Vec<String> {
    assert!(GOOD.contains(from), "{from} isn't there to be changed");
    match parse(&GOOD.replace(from, to)) {
        Err(problem) => vec![problem],
        Ok(cases) => cases.iter().flat_map(failures).collect(),
    }
}

#[test]
fn a_good_case_holds() {
    assert_eq!(after("one", "another"), Vec::<String>::new());
}

#[test]
fn a_spoilt_case_fails() {
    for (from, to, why) in [
        ("hydraulic_power", "steam_power", "no calculation"),
        ("[10, 20]", "[10, 20.0000001]", "wanted"),
        ("[10, 20]", "[9.9999999, 20]", "wanted"),
        ("[10, 20]", "[10, nan]", "wanted"),
        ("[10, 20]", "[10, -20]", "wanted"),
        ("[10, 20]", "10", "wanted"),
        ("[10, 20]", "[10, 20, 20]", "lengths"),
        ("[10, 20]", "[10]", "lengths"),
        ("[60, 120]", "[]", "lengths"),
        ("[60, 120]", "[60, nan]", "wanted"),
        ("[60, 120]", "\"sixty\"", "no number"),
        ("flow_l_min", "flow_litres", "missing"),
        ("flow_l_min", "flow_bar", "another kind"),
        (", pressure_bar = 100", "", "missing"),
        ("bar = 100", "bar = 100, speed_rpm = 1", "takes no"),
        ("name = \"power\"", "name = \"torque\"", "no result"),
        ("unit = \"kw\"", "unit = \"psi\"", "can't be read"),
        ("unit = \"kw\"", "unit = \"\"", "can't be read"),
        (
            "tolerance = { relative = 1e-9 }",
            "",
            "tolerance is missing",
        ),
        ("relative = 1e-9", "relative = nan", "wanted"),
        ("relative = 1e-9", "sloppy = 1e-9", "unknown variant"),
        ("source = \"definition\"", "", "missing field"),
        ("what =", "why =", "unknown field"),
        ("subject = \"Power\"", "subject = \"\"", "subject"),
        (
            "expected =",
            &format!("{REFUSED}\nexpected ="),
            "must be refused",
        ),
    ] {
        let failures = after(from, to).join("\n");
        assert!(
            failures.contains(why),
            "{to:?} gave {failures:?}, not {why:?}"
        );
    }
}

#[test]
fn an_empty_file_fails() {
    assert!(parse("").is_err());
    assert!(parse("subject = \"Power\"").is_err());
    assert!(parse("subject = \"Power\"\ncase = []").is_err());
}

#[test]
fn too_few_cases_fail() {
    let cases = all();
    assert!(!crate::are_enough(&cases[..crate::FEWEST - 1]));
}

#[test]
fn every_case_is_told_from_the_others_and_has_its_source() {
    let mut ids = HashSet::new();
    for case in all() {
        assert!(ids.insert(case.id.clone()), "{} stands twice", case.id);
        for text in [&case.id, &case.what, &case.source] {
            assert!(!text.trim().is_empty(), "{}: an empty text", case.id);
        }
        let page = case.page.as_deref();
        assert_ne!(page.map(str::trim), Some(""), "{}: an empty page", case.id);
        let kinds = [case.expected.len(), case.within.len(), case.refused.len()];
        assert!(
            kinds.iter().sum::<usize>() > 0,
            "{} checks nothing",
            case.id
        );
        let reason = case
            .tolerance_reason
            .is_some_and(|why| !why.trim().is_empty());
        assert_eq!(
            reason,
            !case.expected.is_empty(),
            "{}: a tolerance and why",
            case.id
        );
        assert_eq!(
            case.tolerance.is_some(),
            reason,
            "{}: a tolerance and why",
            case.id
        );
    }
}

#[test]
fn every_calculation_has_a_case() {
    let used: HashSet<_> = all().iter().map(|case| case.calculation.name).collect();
    for Calculation { name, .. } in TABLE {
        assert!(used.contains(name), "{name} has no case");
    }
}

#[test]
fn no_tolerance_and_no_band_is_too_wide_to_fail() {
    for reading in all_readings() {
        let sound = match reading.wanted {
            Wanted::Number(expected, tolerance) => tolerance.is_sound(expected),
            Wanted::Band(band) => band.is_sound(),
        };
        assert!(sound, "{}: {:?}", reading.what, reading.wanted);
    }
}

#[test]
fn a_result_just_outside_fails() {
    for reading in all_readings() {
        let outside = match reading.wanted {
            Wanted::Number(expected, tolerance) => {
                let step = tolerance.allowed(expected) * 1.01;
                [expected - step, expected + step, f64::NAN]
            }
            Wanted::Band(band) => [band.from * 0.999_999, band.to * 1.000_001, f64::NAN],
        };
        for actual in outside {
            let spoilt = Reading {
                actual,
                ..reading.clone()
            };
            assert!(!spoilt.holds(), "{} takes {actual}", reading.what);
        }
    }
}

/// A case whose result doesn't hang on an input doesn't check how the core uses it.
#[test]
fn every_number_that_goes_in_matters() {
    for case in all().iter().filter(|case| !case.expected.is_empty()) {
        for name in case.inputs.keys() {
            let spoilt = with_other_number(case, name);
            assert!(
                !failures(&spoilt).is_empty(),
                "{}: {name} changes nothing",
                case.id
            );
        }
    }
}

fn with_other_number(case: &Case, name: &str) -> Case {
    let other = |number: &f64| if *number == 0.0 { 0.05 } else { number / 2.0 };
    let mut case = case.clone();
    if let Some(input) = case.inputs.get_mut(name) {
        *input = match input {
            Input::Number(number) => Input::Number(other(number)),
            Input::Numbers(numbers) => Input::Numbers(numbers.iter().map(other).collect()),
            Input::Text(_) => Input::Text("nothing of this name".to_owned()),
        };
    }
    case
}

fn all_readings() -> Vec<Reading> {
    let cases = all();
    let readings = cases
        .iter()
        .flat_map(|case| readings(case).unwrap_or_else(|problem| panic!("{}: {problem}", case.id)));
    readings.collect()
}
