//! A set of practice cases and a learner's record as files: they come back as they were, and what
//! isn't one is refused with all that is wrong.

use farend_core::export::practice_set::{CASES, SavedSet};
use farend_core::export::record::{MOST_ANSWERS, Record, Unreadable};
use farend_core::fault::Rule;
use farend_core::practice::{Answered, Confidence, Help, Idea, Kinds, Set};

fn a_set() -> SavedSet {
    SavedSet {
        yard: "Kestrel Valley \"Machinery\"".to_owned(),
        set: Set {
            seed: u32::MAX,
            kinds: Kinds::from_bits(0b10_1001).expect("bits of kinds"),
            count: CASES.1,
        },
    }
}

#[test]
fn a_set_comes_back_with_the_same_draws() {
    let saved = a_set();
    let text = saved.to_json().expect("JSON");
    let again = SavedSet::from_json(&text).expect("what was written");
    assert_eq!(again, saved);
    assert_eq!(again.set.draws(), saved.set.draws());
    assert_eq!(again.set.draws().len(), usize::from(CASES.1));
    assert!(
        text.contains("\"route\"") && text.contains("\"sheet\""),
        "{text}"
    );
}

#[test]
fn all_faults_of_a_set_come_at_once() {
    let text = r#"{ "format": "farend-practice-set", "format_version": 1, "yard": "",
        "seed": -1, "kinds": ["route", "guesswork"], "count": 31, "colour": "red" }"#;
    let faults = SavedSet::from_json(text).expect_err("five faults");
    let mut paths: Vec<_> = faults.iter().map(|fault| fault.path.as_str()).collect();
    paths.sort_unstable();
    assert_eq!(paths, ["colour", "count", "kinds[1]", "seed", "yard"]);
}

/// As some programs write them.
#[test]
fn whole_numbers_of_a_set_may_be_written_with_a_point() {
    let saved = a_set();
    let text = saved.to_json().expect("JSON");
    for whole in [
        "\"format_version\": 1",
        "\"seed\": 4294967295",
        "\"count\": 30",
    ] {
        let with_point = text.replace(whole, &format!("{whole}.0"));
        assert_ne!(with_point, text);
        assert_eq!(SavedSet::from_json(&with_point).as_ref(), Ok(&saved));
    }
}

#[test]
fn a_set_of_no_kind_is_refused() {
    let text = a_set().to_json().expect("JSON");
    let (head, rest) = text.split_once('[').expect("a list");
    let (_, tail) = rest.split_once(']').expect("a list");
    let faults = SavedSet::from_json(&format!("{head}[]{tail}")).expect_err("no kind");
    assert_eq!(faults.len(), 1);
    assert_eq!(faults[0].rule, Rule::NotEmpty);
}

#[test]
fn another_file_is_no_set() {
    for text in ["", "[]", "{}", farend_core::yard::DEMO] {
        assert!(SavedSet::from_json(text).is_err(), "{text:.40}");
    }
}

/// What else a newer file has is no fault of it.
#[test]
fn a_newer_set_is_only_told_to_be_newer() {
    let text = a_set().to_json().expect("JSON");
    let newer = "\"format_version\": 2, \"colour\": \"red\"";
    let text = text.replace("\"format_version\": 1", newer);
    let faults = SavedSet::from_json(&text).expect_err("a newer file");
    assert_eq!(faults.len(), 1, "{faults:?}");
    assert_eq!(faults[0].path, "format_version");
}

fn answered(right: bool) -> Answered {
    Answered {
        idea: Idea::FlowIsSpeed,
        right,
        confidence: Confidence::Sure,
        help: Help::Shown,
    }
}

#[test]
fn a_record_comes_back_as_it_was() {
    let mut record = Record::default();
    for idea in Idea::ALL {
        for help in Help::ALL {
            record.add(Answered {
                idea: *idea,
                help: *help,
                ..answered(*help == Help::Shown)
            });
        }
    }
    let text = record.to_json().expect("JSON");
    assert_eq!(Record::from_json(&text), Ok(record));
}

#[test]
fn a_record_keeps_the_newest_answers() {
    let mut record = Record::default();
    record.add(answered(false));
    for _ in 0..MOST_ANSWERS {
        record.add(answered(true));
    }
    assert_eq!(record.answers().len(), MOST_ANSWERS);
    assert!(record.answers().iter().all(|answer| answer.right));
}

#[test]
fn help_is_that_of_the_last_answer_about_the_idea() {
    let mut record = Record::default();
    let idea = Idea::FlowIsSpeed;
    assert_eq!(record.help(idea), Help::Shown);
    record.add(answered(true));
    record.add(answered(true));
    assert_eq!(record.help(idea), Help::FirstBlank);
    // Somebody who knows it goes on without help, whatever came before.
    record.add(Answered {
        help: Help::AllBlank,
        ..answered(true)
    });
    assert_eq!(record.help(idea), Help::AllBlank);
    // Another idea has nothing to do with it.
    record.add(Answered {
        idea: Idea::EveryChangeCosts,
        ..answered(false)
    });
    assert_eq!(record.help(idea), Help::AllBlank);
    assert_eq!(record.help(Idea::EveryChangeCosts), Help::Shown);
}

#[test]
fn a_damaged_record_and_a_newer_one_are_told_apart() {
    let text = {
        let mut record = Record::default();
        record.add(answered(true));
        record.to_json().expect("JSON")
    };
    let newer = text.replace("\"format_version\": 1", "\"format_version\": 2");
    assert_eq!(Record::from_json(&newer), Err(Unreadable::Newer));
    for end in 0..text.len() {
        assert_eq!(
            Record::from_json(&text[..end]),
            Err(Unreadable::Damaged),
            "cut off at {end}"
        );
    }
    let strange = text.replace("flow_is_speed", "flow_is_fun");
    assert_eq!(Record::from_json(&strange), Err(Unreadable::Damaged));
}
