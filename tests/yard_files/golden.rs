//! Files of every format version so far. They are never changed: each must open for ever.

use farend_core::hookup::Seat;
use farend_core::kit::Kit;
use farend_core::quantity::{AngularSpeed, Power};
use farend_core::yard::Yard;
use farend_core::yard::rules::{FORMAT_VERSION, YARD};
use farend_tests::load;
use serde_json::{Value, json};
use std::collections::BTreeSet;
use std::fs;

const FOLDER: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/golden/yard");

/// What is looked at in a file once it's open.
type Look = fn(&Yard);

/// What comes with machine or implement where a file doesn't say.
const JOINTS_AND_HOSES: [&str; 5] = [
    "joint-shaft",
    "joint-shaft-heavy",
    "mid-shaft-straight",
    "loader-hoses",
    "skid-hoses",
];

const FILES: &[(&str, Look)] = &[
    ("v1-first.json", |yard| {
        sizes(yard, [6, 8, 10]);
        kilowatts(yard, "wren-18", 18.0);
        assert!(yard.machines.iter().all(|machine| machine.mass.is_none()));
        let pack = yard.kit("pump-pack-540").expect("a kit");
        assert_eq!(pack.drive[0].ratio, 3.5);
        included(yard, &JOINTS_AND_HOSES);
    }),
    ("v1-last.json", |yard| {
        sizes(yard, [6, 8, 10]);
        kilowatts(yard, "gannet-90", 90.0);
        let heron = yard.machine("heron-68").expect("a machine");
        let economy = heron.rear_pto(true).expect("an economy gear");
        assert_eq!(economy.engine_speed, AngularSpeed::rpm(1500.0));
        included(yard, &JOINTS_AND_HOSES);
    }),
    ("v2-demo.json", |yard| {
        sizes(yard, [6, 8, 10]);
        kilowatts(yard, "curlew-46", 46.0);
        let thrower = yard.implement("snow-thrower-150").expect("an implement");
        assert_eq!(thrower.need.map(Power::to_kilowatts).high.round(), 26.0);
    }),
    ("v2-full-net.json", |yard| {
        sizes(yard, [1, 1, 1]);
        kilowatts(yard, "machine", 60.0);
        full(yard.kit("kit").expect("a kit"));
    }),
    ("v2-full-gross.json", |yard| {
        sizes(yard, [1, 1, 1]);
        full(yard.kit("kit").expect("a kit"));
    }),
];

fn sizes(yard: &Yard, expected: [usize; 3]) {
    let lists = [yard.machines.len(), yard.implements.len(), yard.kits.len()];
    assert_eq!(lists, expected);
}

fn kilowatts(yard: &Yard, machine: &str, expected: f64) {
    let machine = yard.machine(machine).expect("a machine");
    assert_eq!(machine.engine.net.likely.to_kilowatts(), expected);
}

/// The kits for which nothing must be bought, in the file's order.
fn included(yard: &Yard, expected: &[&str]) {
    let kits = yard.kits.iter().filter(|kit| kit.included);
    let ids: Vec<_> = kits.map(|kit| kit.id.as_str()).collect();
    assert_eq!(ids, expected);
}

fn full(kit: &Kit) {
    assert_eq!((kit.seat, kit.included), (Some(Seat::Loader), true));
    assert_eq!(kit.price, Some(3_000.0));
}

fn text(name: &str) -> String {
    fs::read_to_string(format!("{FOLDER}/{name}")).unwrap_or_else(|why| panic!("{name}: {why}"))
}

#[test]
fn every_file_of_every_version_opens() {
    for (name, look) in FILES {
        println!("{name}");
        let yard = load(&text(name));
        look(&yard);
        assert_eq!(
            yard.written["format_version"],
            json!(FORMAT_VERSION),
            "{name}"
        );
        // What is written of it is of the current version, and the same yard.
        assert_eq!(load(&yard.written.to_string()), yard, "{name}");
    }
}

#[test]
fn no_file_is_left_out() {
    let folder = fs::read_dir(FOLDER).expect("the folder of golden files");
    let there: BTreeSet<_> = folder
        .map(|entry| entry.expect("an entry").file_name())
        .collect();
    let looked_at = FILES.iter().map(|(name, _)| (*name).into()).collect();
    assert_eq!(there, looked_at);
}

#[test]
fn every_version_has_a_file() {
    let versions: BTreeSet<_> = FILES
        .iter()
        .map(|(name, _)| {
            let file: Value = serde_json::from_str(&text(name)).expect("JSON");
            file["format_version"].as_u64().expect("a version")
        })
        .collect();
    assert_eq!(versions, (1..=u64::from(FORMAT_VERSION)).collect());
}

/// Only what came with a version is filled in: nothing that the file says is changed.
#[test]
fn raising_changes_nothing_but_the_version() {
    let mut file: Value = serde_json::from_str(&text("v1-last.json")).expect("JSON");
    let raised = load(&text("v1-last.json")).written;
    assert_ne!(raised, file);
    file["format_version"] = json!(FORMAT_VERSION);
    assert_eq!(raised, file);
}

#[test]
fn the_hint_names_the_version_to_write() {
    let field = YARD.iter().find(|field| field.key == "format_version");
    let hint = field.expect("a version").hint.english();
    assert!(hint.contains(&format!("Write {FORMAT_VERSION} ")), "{hint}");
}
