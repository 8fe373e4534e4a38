//! The fuzzer's inputs and properties without the fuzzer: all that is kept of them, and random changes of
//! that. `cargo xtask fuzz` runs it with many more where there is no fuzzer.
//!
//! The same random ones each time: `PROPTEST_RNG_SEED` gives others, `PROPTEST_CASES` more.

mod mutated;
#[path = "../seeded.rs"]
mod seeded;

use farend_tests::folder::files;
use farend_tests::fuzzing::{TARGETS, target};
use mutated::mutated;
use proptest::test_runner::{TestError, TestRunner};
use std::collections::BTreeSet;
use std::fs;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;

/// What is committed.
const CORPUS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../fuzz/corpus");
/// Inputs that have failed on this machine.
const FOUND: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../fuzz/found");

fn corpus(name: &str) -> Vec<Vec<u8>> {
    let files = files(&Path::new(CORPUS).join(name));
    assert!(!files.is_empty(), "fuzz/corpus/{name} is empty");
    files
        .iter()
        .map(|file| fs::read(file).expect("a file"))
        .collect()
}

/// What is committed, and what has failed here before.
#[test]
fn kept_inputs_hold() {
    let mut failed = Vec::new();
    for target in TARGETS {
        assert!(!corpus(target.name).is_empty());
        for folder in [CORPUS, FOUND] {
            for file in files(&Path::new(folder).join(target.name)) {
                let bytes = fs::read(&file).expect("a file");
                if catch_unwind(AssertUnwindSafe(|| (target.holds)(&bytes))).is_err() {
                    failed.push(file);
                }
            }
        }
    }
    assert!(failed.is_empty(), "{failed:#?}");
}

#[test]
fn every_folder_belongs_to_a_target() {
    let names: BTreeSet<_> = TARGETS.iter().map(|it| it.name.to_owned()).collect();
    let folders = files(Path::new(CORPUS)).into_iter();
    let folders = folders.filter_map(|it| Some(it.file_name()?.to_string_lossy().into_owned()));
    assert_eq!(folders.collect::<BTreeSet<_>>(), names);
}

/// Tries so many changes of the corpus, unless the environment wants others, and keeps an input that
/// fails.
fn try_many(name: &str, number: u32) {
    let target = target(name);
    let config = seeded::cases(number);
    let inputs = config.cases;
    let mut runner = TestRunner::new(config);
    let found = runner.run(&mutated(corpus(name)), |bytes| {
        (target.holds)(&bytes);
        Ok(())
    });
    match found {
        Ok(()) => println!("{name}: {inputs} inputs"),
        Err(TestError::Abort(why)) => panic!("{name}: {why}"),
        Err(TestError::Fail(why, bytes)) => {
            let folder = Path::new(FOUND).join(name);
            let file = folder.join(format!("{:08x}", crc32fast::hash(&bytes)));
            fs::create_dir_all(&folder).expect("a folder for what is found");
            fs::write(&file, bytes).expect("what is found");
            panic!("{name}: {why}\nThe input is kept as {}", file.display());
        }
    }
}

macro_rules! twins {
    ($($name:ident: $number:literal,)*) => {$(
        #[test]
        fn $name() {
            try_many(stringify!($name), $number);
        }
    )*};
}

// So many that all of them take some seconds together.
twins! {
    yard: 200,
    kept: 200,
    table: 200,
    link: 1_000,
    record: 2_000,
    set: 1_000,
    comparison: 100,
    circuit: 400,
}
