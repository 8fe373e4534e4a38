//! Golden files: what each version of each format has written. They are never changed, and each must
//! open for ever.
//!
//! `cargo xtask golden` writes those of the current versions that aren't there yet, and their check sums.

use farend_core::export::comparison;
use farend_core::export::open::open;
use farend_core::export::practice_set::{self, SavedSet};
use farend_core::export::record::{self, Record};
use farend_core::practice::{Answered, Confidence, Help, Idea, Kind, Kinds, Set};
use farend_core::route::RouteId;
use farend_core::state::{self, State};
use farend_core::yard::edit::{Change, Editing};
use farend_core::yard::list::List;
use farend_core::yard::{DEMO, Yard, kept, rules};
use farend_tests::made::made;
use farend_tests::{demo, folder};
use serde_json::json;
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

/// What `cargo xtask golden` sets.
const WRITE: &str = "FAREND_WRITE_GOLDEN";
const FOLDER: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/golden");
/// As `sha256sum -c` reads it.
const SUMS: &str = "SHA256SUMS";

struct Format {
    /// The name of its folder.
    name: &'static str,
    /// The version that is written now.
    version: u32,
    /// What is written now.
    written: fn() -> String,
    /// Opens a file of any version; what doesn't open is `None`.
    opens: fn(&str) -> Option<()>,
}

const FORMATS: [Format; 6] = [
    Format {
        name: "yard",
        version: rules::FORMAT_VERSION,
        written: || DEMO.to_owned(),
        opens: |text| Yard::from_json(text).map(drop).ok(),
    },
    Format {
        name: "link",
        version: state::VERSION as u32,
        written: || chosen().to_link(),
        opens: |text| State::from_link(text).map(drop).ok(),
    },
    Format {
        name: "comparison",
        version: comparison::FORMAT_VERSION,
        written: || made(demo(), chosen()).text(),
        opens: |text| open(text).ok()?.state.map(drop),
    },
    Format {
        name: "kept",
        version: kept::VERSION,
        written: || kept::write(&edited()).expect("a yard that was read"),
        opens: |text| kept::read(text).map(drop).ok(),
    },
    Format {
        name: "set",
        version: practice_set::FORMAT_VERSION,
        written: || set().to_json().expect("JSON"),
        opens: |text| SavedSet::from_json(text).map(drop).ok(),
    },
    Format {
        name: "record",
        version: record::FORMAT_VERSION,
        written: || answers().to_json().expect("JSON"),
        opens: |text| Record::from_json(text).map(drop).ok(),
    },
];

fn chosen() -> State {
    State {
        route: RouteId::PumpPack,
        beside: Some("heron-68".to_owned()),
        ..State::of("curlew-46".to_owned(), "snow-thrower-150".to_owned())
    }
}

/// With an entry that has faults, for such are kept too.
fn edited() -> Editing {
    let mut yard = Editing::from(&demo());
    let faulty = json!({ "id": "half-done", "name": "Half done" });
    yard.apply(Change::Insert(List::Kits, 0, faulty));
    yard
}

fn set() -> SavedSet {
    SavedSet {
        yard: demo().name,
        set: Set {
            seed: 4_711,
            kinds: Kinds::NONE.toggled(Kind::Amount).toggled(Kind::Fit),
            count: 12,
        },
    }
}

/// One of each kind.
fn answers() -> Record {
    let mut record = Record::default();
    for idea in Idea::ALL {
        for help in Help::ALL {
            record.add(Answered {
                idea: *idea,
                right: *help == Help::Shown,
                confidence: Confidence::Sure,
                help: *help,
            });
        }
    }
    record
}

/// The files of a format by their names, each with its version.
fn files(format: &Format) -> Vec<(PathBuf, u32)> {
    let files = folder::files(&Path::new(FOLDER).join(format.name));
    let with_version = |path: PathBuf| {
        let version = version(&path);
        (path, version)
    };
    files.into_iter().map(with_version).collect()
}

/// `v2-demo.json` is of version 2.
fn version(path: &Path) -> u32 {
    let name = path.file_name().expect("a name").to_string_lossy();
    let digits = name.strip_prefix('v').and_then(|rest| rest.split_once('-'));
    let version = digits.and_then(|(digits, _)| digits.parse().ok());
    version.unwrap_or_else(|| panic!("{name} doesn't begin with its version, as in v2-demo.json"))
}

fn sum(path: &Path) -> String {
    let content = fs::read(path).expect("a golden file");
    Sha256::digest(content)
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

/// The sums of the files that are there, by their paths in the folder.
fn sums_now() -> BTreeMap<String, String> {
    let all = FORMATS.iter().flat_map(files);
    all.map(|(path, _)| {
        let name = path.strip_prefix(FOLDER).expect("a path in the folder");
        (name.to_string_lossy().replace('\\', "/"), sum(&path))
    })
    .collect()
}

fn sums_committed() -> BTreeMap<String, String> {
    let text = fs::read_to_string(Path::new(FOLDER).join(SUMS)).unwrap_or_default();
    let lines = text.lines();
    lines
        .map(|line| {
            let (sum, name) = line.split_once("  ").expect("a sum and a name");
            (name.to_owned(), sum.to_owned())
        })
        .collect()
}

/// Writes what the current versions lack, and the sums of files that have none.
fn write() {
    for format in &FORMATS {
        if files(format).iter().any(|(_, of)| *of == format.version) {
            continue;
        }
        let ending = if format.name == "link" { "txt" } else { "json" };
        let name = format!("{}/v{}-made.{ending}", format.name, format.version);
        let path = Path::new(FOLDER).join(&name);
        fs::create_dir_all(path.parent().expect("a folder")).expect("a folder");
        fs::write(path, (format.written)()).expect("a file");
        println!("Wrote tests/golden/{name}");
    }
    let mut sums = sums_now();
    sums.extend(sums_committed());
    let lines = sums.iter().map(|(name, sum)| format!("{sum}  {name}\n"));
    fs::write(Path::new(FOLDER).join(SUMS), lines.collect::<String>()).expect("the sums");
}

#[test]
fn every_version_of_every_format_has_a_file_that_opens() {
    if std::env::var_os(WRITE).is_some() {
        write();
    }
    for format in &FORMATS {
        let files = files(format);
        for of in 1..=format.version {
            assert!(
                files.iter().any(|(_, version)| *version == of),
                "version {of} of {} has no golden file: `cargo xtask golden` writes it, before \
                 anything of that version is given to anybody",
                format.name
            );
        }
        for (path, version) in files {
            assert!(version <= format.version, "{}", path.display());
            let text = fs::read_to_string(&path).expect("text");
            assert!((format.opens)(&text).is_some(), "{}", path.display());
        }
    }
    assert_eq!(
        sums_now(),
        sums_committed(),
        "a golden file was changed, which must open as it is for ever; or it's new: \
         `cargo xtask golden` adds its sum"
    );
}
