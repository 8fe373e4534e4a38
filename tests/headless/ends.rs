//! How it ends, and what it says then.

use crate::program::{FOLDER, file, one_core, run};
use farend_bench::large::large;
use farend_core::yard::{DEMO, Yard};
use std::fs::File;
use std::io::Read;
use std::path::Path;
use std::process::{Output, Stdio};

/// How it ends and what it says on standard error.
fn end(output: &Output) -> (Option<i32>, String) {
    let errors = String::from_utf8_lossy(&output.stderr).into_owned();
    (output.status.code(), errors)
}

#[test]
fn a_yard_with_faults_ends_with_1_and_all_of_them() {
    let bad = DEMO.replace("\"net_kw\"", "\"net\\nkw\"");
    let faults = Yard::from_json(&bad).expect_err("faults");
    let output = run(&[], &file("bad.json", &bad));
    let (code, errors) = end(&output);
    assert_eq!((code, output.stdout.as_slice()), (Some(1), &b""[..]));
    assert_eq!(errors.lines().count(), faults.len(), "{errors}");
    assert!(faults.len() > 5 && errors.contains("machines[0].engine"));
}

#[test]
fn wrong_use_and_unknown_identifiers_end_with_2() {
    let yard = file("use.json", DEMO);
    for (arguments, says) in [
        (&["--format", "xml"][..], "xml"),
        (&["--routes"][..], "--routes"),
        (&["--machine", "robin-5"][..], "machine robin-5"),
        (&["--implement", "wren-18"][..], "implement wren-18"),
    ] {
        let (code, errors) = end(&run(arguments, &yard));
        assert_eq!(code, Some(2), "{arguments:?}");
        assert!(errors.contains(says), "{errors}");
    }
    let (code, _) = end(&one_core().output().expect("it starts"));
    assert_eq!(code, Some(2), "without a file");
}

#[test]
fn what_cannot_be_read_or_written_ends_with_3() {
    let (code, errors) = end(&run(&[], &Path::new(FOLDER).join("not-there.json")));
    assert_eq!(code, Some(3));
    assert!(errors.contains("not-there.json"), "{errors}");
    // A device that is always full, where there is one.
    if let Ok(full) = File::options().write(true).open("/dev/full") {
        let mut command = one_core();
        command.arg(file("full.json", DEMO)).stdout(full);
        let (code, errors) = end(&command.output().expect("it starts"));
        assert_eq!(code, Some(3), "{errors}");
        assert!(errors.contains("can't be written"), "{errors}");
    }
}

#[test]
fn it_ends_quietly_where_nobody_reads_on() {
    let mut command = one_core();
    command.arg(file("long.json", &large(60, 24, 24, 1)));
    command.stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn().expect("it starts");
    let mut rows = child.stdout.take().expect("its rows");
    let mut first = [0; 16];
    rows.read_exact(&mut first).expect("the headers");
    // More is to come than a pipe holds.
    drop(rows);
    let output = child.wait_with_output().expect("it ends");
    assert_eq!(end(&output), (Some(0), String::new()));
}
