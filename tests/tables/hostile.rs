//! Files made to be too much.

use crate::{faults, rows};
use farend_core::fault::Rule;
use farend_core::yard::edit::Editing;
use farend_core::yard::list::List;
use farend_core::yard::rules::{LARGEST_FILE, MOST_ENTRIES};
use farend_core::yard::table::{How, list_of, read, take_in};
use farend_tests::demo;

fn kits(number: usize) -> String {
    let line = |place| format!("kit-{place},A kit,rear_shaft\n");
    let lines: String = (0..number).map(line).collect();
    format!("id,name,routes\n{lines}")
}

#[test]
fn as_many_rows_as_a_list_may_have_are_read_and_no_more() {
    let full = rows(List::Kits, &kits(MOST_ENTRIES), None);
    assert!(take_in(&Editing::from(&demo()), &full, How::Replace).is_ok());
    // With those that the yard has they are too many.
    let faults_of_yard = take_in(&Editing::from(&demo()), &full, How::Merge).expect_err("too many");
    assert_eq!(faults_of_yard.len(), 1);
    assert_eq!(faults_of_yard[0].fault.rule, Rule::AtMost(MOST_ENTRIES));
    let over = faults(List::Kits, &kits(MOST_ENTRIES + 1));
    assert_eq!(over.len(), 1);
    assert_eq!(over[0].fault.rule, Rule::AtMost(MOST_ENTRIES));
    // Blank rows are none.
    let gaps = kits(MOST_ENTRIES).replace("kit-7,", ",,\n\nkit-7,");
    assert!(read(&gaps, List::Kits, None).is_ok());
}

#[test]
fn a_file_that_is_too_large_is_not_read() {
    let start = kits(1);
    let blank = " ".repeat(LARGEST_FILE - start.len());
    assert!(read(&format!("{start}{blank}"), List::Kits, None).is_ok());
    let text = format!("{start}{blank} ");
    for found in [
        faults(List::Kits, &text),
        list_of(&text).expect_err("too large"),
    ] {
        assert_eq!(found.len(), 1);
        assert_eq!(found[0].fault.rule, Rule::AtMost(LARGEST_FILE));
    }
}

/// A table is shorter than the yard file that comes of it, for it names each field once.
#[test]
fn a_yard_too_large_to_be_opened_again_is_not_made() {
    let comment = "x".repeat(1_960);
    let line = |place| format!("kit-{place},A kit,rear_shaft,{comment}\n");
    let lines: String = (0..MOST_ENTRIES).map(line).collect();
    let text = format!("id,name,routes,comment\n{lines}");
    assert!(text.len() < LARGEST_FILE);
    let rows = rows(List::Kits, &text, None);
    let faults = take_in(&Editing::from(&demo()), &rows, How::Replace).expect_err("too large");
    assert_eq!(faults[0].fault.rule, Rule::AtMost(LARGEST_FILE));
}

#[test]
fn what_is_no_text_is_refused() {
    for text in [
        "id,name,routes\nkit,A\0B,rear_shaft\n",
        "i\0d\0,\0n\0a\0m\0e\0",
    ] {
        let faults = faults(List::Kits, text);
        assert_eq!(faults.len(), 1, "{text:?}");
        assert_eq!(faults[0].fault.rule, Rule::Readable);
        assert!(faults[0].to_string().contains("CSV UTF-8"));
    }
}

/// Each of these ends, with faults that repeat only a little of the file.
#[test]
fn no_file_takes_long_or_says_much() {
    let wide = vec!["id"; 10_000].join(",");
    let cell = "x".repeat(LARGEST_FILE - 100);
    let files = [
        format!("{wide}\n{}", vec!["1"; 10_000].join(",")),
        format!(
            "id,name,{}\n",
            (0..10_000).map(|it| format!("c{it},")).collect::<String>()
        ),
        format!("id,name,routes\nkit,{cell},rear_shaft\n"),
        format!("id,name,routes\nkit,A kit,{cell}\n"),
        format!("id,name,routes,{cell}\n"),
        format!(
            "id,name,price\nkit,A kit,{}\n",
            "1".repeat(LARGEST_FILE - 100)
        ),
        format!(
            "id,name,price\nkit,A kit,{}\n",
            "1.".repeat(LARGEST_FILE / 2 - 100)
        ),
        format!("id,name,routes\n{}", "\"".repeat(LARGEST_FILE - 100)),
        format!("id,name,routes\n\"{}", "\n,".repeat(LARGEST_FILE / 2 - 100)),
        format!("id,name,routes\n{}", ",".repeat(LARGEST_FILE - 100)),
        format!("id,name,routes\n{}", "\n".repeat(LARGEST_FILE - 100)),
        format!("id,name,routes\n{}x", "\r\n".repeat(LARGEST_FILE / 2 - 100)),
        format!(
            "id,name,routes,{}\nkit,A,rear_shaft\n",
            "drive.1.".repeat(100_000)
        ),
        "\"".to_owned(),
        "\",\"".to_owned(),
        "id,name,routes\n\"".to_owned(),
    ];
    for file in files {
        let started = &file[..file.len().min(60)];
        if let Err(faults) = read(&file, List::Kits, None) {
            for fault in &faults {
                let text = fault.to_string();
                assert!(text.chars().count() < 600, "{started:?}: {text:.600}");
            }
            assert!(
                faults.len() <= MOST_ENTRIES,
                "{started:?}: {}",
                faults.len()
            );
        }
        let _ = list_of(&file);
    }
}
