//! The demo with one small edit each: faults that only show when fields are held together, and
//! slips that a person makes. What each field must hold by itself is tried elsewhere.

use crate::every_field::{speaks_plainly, word};
use farend_core::fault::Fault;
use farend_core::yard::{DEMO, Yard};
use serde_json::{Value, json};

/// What to do at a JSON pointer.
enum Edit {
    /// Put a value there, in place of one or as a new key.
    Set(&'static str, Value),
    /// Take it away.
    Remove(&'static str),
}
use Edit::{Remove, Set};

/// A fault: where, the word for its rule, and something that its text says.
type Expected<'a> = (&'a str, &'static str, &'static str);

fn edited(edits: &[Edit]) -> Value {
    let mut yard: Value = serde_json::from_str(DEMO).expect("the demo is JSON");
    for edit in edits {
        let (Set(pointer, _) | Remove(pointer)) = edit;
        let (parent, key) = pointer.rsplit_once('/').expect("a pointer");
        let parent = yard.pointer_mut(parent);
        let parent = parent.unwrap_or_else(|| panic!("nothing at {pointer}"));
        match (edit, parent) {
            (Set(_, value), Value::Object(group)) => {
                group.insert(key.to_owned(), value.clone());
            }
            (Set(_, value), Value::Array(list)) => {
                list[key.parse::<usize>().expect("a place")] = value.clone();
            }
            (Remove(_), Value::Object(group)) => {
                assert!(group.remove(key).is_some(), "nothing at {pointer}");
            }
            _ => panic!("can't edit {pointer}"),
        }
    }
    yard
}

fn faults(edits: &[Edit]) -> Vec<Fault> {
    let edited = edited(edits).to_string();
    Yard::from_json(&edited).err().unwrap_or_default()
}

/// Holds faults against what is expected: these, and no other.
fn are(faults: &[Fault], expected: &[Expected]) {
    for fault in faults {
        speaks_plainly(fault);
    }
    let found: Vec<_> = faults
        .iter()
        .map(|it| (it.path.as_str(), word(&it.rule)))
        .collect();
    let wanted: Vec<_> = expected
        .iter()
        .map(|(path, rule, _)| (*path, *rule))
        .collect();
    assert_eq!(found, wanted);
    for (fault, (path, _, says)) in faults.iter().zip(expected) {
        let text = fault.to_string();
        assert!(text.contains(says), "{path}: {text:?} doesn't say {says:?}");
    }
}

#[test]
fn each_edit_gives_its_faults() {
    let table: &[(&[Edit], &[Expected])] = &[
        // How things are hooked up.
        (
            &[Set("/machines/0/hitch/lowest_m", json!(0.8))],
            &[(
                "machines[0].hitch.lowest_m",
                "not above",
                "the height when lifted, 0.75",
            )],
        ),
        (
            &[Set("/machines/0/axles/front_kg", json!(900))],
            &[(
                "machines[0].axles.front_kg",
                "not above",
                "the machine's mass_kg, 880",
            )],
        ),
        (
            &[Remove("/machines/0/mass_kg")],
            &[("machines[0].mass_kg", "required", "the rear axle")],
        ),
        (
            &[Set("/kits/0/shaft/closed_m", json!(1.3))],
            &[("kits[0].shaft.closed_m", "not above", "tubes part, 1.25")],
        ),
        (
            &[Set("/currency", json!("eur"))],
            &[("currency", "type", "three capital letters")],
        ),
        // A field without a name has a place all the same.
        (
            &[Set("/", json!(1))],
            &[("\"\"", "unknown", "The fields here are")],
        ),
        // Speeds of an engine and what it drives.
        (
            &[Set("/machines/0/engine/lowest_rpm", json!(2700))],
            &[
                (
                    "machines[0].engine.lowest_rpm",
                    "not above",
                    "the engine's rated speed, 2600",
                ),
                ("machines[0].rear_pto.engine_rpm", "within", "2500"),
            ],
        ),
        (
            &[Set("/machines/0/rear_pto/engine_rpm", json!(2700))],
            &[("machines[0].rear_pto.engine_rpm", "not above", "2600")],
        ),
        (
            &[Set("/machines/0/rear_pto/engine_rpm", json!(1100))],
            &[(
                "machines[0].rear_pto.engine_rpm",
                "within",
                "must be 1200 to 2600 rpm",
            )],
        ),
        (
            &[Set("/machines/1/mid_pto/engine_rpm", json!(900))],
            &[(
                "machines[1].mid_pto.engine_rpm",
                "within",
                "must be 1200 to 2600 rpm",
            )],
        ),
        (
            &[Set("/machines/0/circuits/0/engine_rpm", json!(3000))],
            &[("machines[0].circuits[0].engine_rpm", "not above", "2600")],
        ),
        // A shaft can't give more than its engine.
        (
            &[Set("/machines/1/rear_pto/tested_kw", json!(40))],
            &[("machines[1].rear_pto.tested_kw", "not above", "net power")],
        ),
        (
            &[Set("/machines/1/rear_pto/tested_kw/high", json!(28.5))],
            &[("machines[1].rear_pto.tested_kw", "not above", "28.5")],
        ),
        // Net or gross power, a curve over the whole range of speeds.
        (
            &[Remove("/machines/0/engine/net_kw")],
            &[("machines[0].engine.net_kw", "required", "gross_kw")],
        ),
        (
            &[Set("/machines/0/engine/gross_kw", json!(20))],
            &[("machines[0].engine.gross_kw", "unique", "only one of")],
        ),
        (
            &[Set("/machines/3/engine/curve/0/rpm", json!(1050))],
            &[(
                "machines[3].engine.curve",
                "within",
                "(1050 – 2200) must be 1000 to 2200 rpm",
            )],
        ),
        (
            &[Set("/machines/3/engine/curve/4/rpm", json!(2150))],
            &[("machines[3].engine.curve", "within", "(1000 – 2150)")],
        ),
        (
            &[Set("/machines/3/engine/curve/2/rpm", json!(1300))],
            &[(
                "machines[3].engine.curve[2].rpm",
                "type",
                "faster than the one before",
            )],
        ),
        (
            &[Set(
                "/machines/3/engine/curve",
                json!([{"rpm": 2200, "kw": 68}]),
            )],
            &[
                ("machines[3].engine.curve", "within", "(2200 – 2200)"),
                ("machines[3].engine.curve", "type", "two points or more"),
            ],
        ),
        // A tested shaft against its engine's curve: 69 kW at 1950 rpm.
        (
            &[Set("/machines/3/rear_pto/tested_kw", json!(69.5))],
            &[("machines[3].rear_pto.tested_kw", "not above", "69 kW")],
        ),
        // Oil: a grade, or both viscosities.
        (
            &[Set("/machines/0/oil/cst_40", json!(60))],
            &[("machines[0].oil.grade", "unique", "not both")],
        ),
        (
            &[Set("/machines/0/oil", json!({"kg_m3": 880}))],
            &[("machines[0].oil", "required", "Give a grade")],
        ),
        (
            &[Set("/machines/0/oil", json!({"cst_40": 60}))],
            &[("machines[0].oil", "required", "cst_40 and cst_100")],
        ),
        (
            &[Set(
                "/machines/0/oil",
                json!({"cst_40": 9.4, "cst_100": 9.4}),
            )],
            &[("machines[0].oil.cst_100", "below", "Oil thins as it warms")],
        ),
        (
            &[Set("/kits/7/pump/oil", json!({"cst_40": 9, "cst_100": 46}))],
            &[("kits[7].pump.oil.cst_100", "below", "(46)")],
        ),
        // Steering.
        (
            &[Set("/machines/0/circuits/0/steering/flow_l_min", json!(35))],
            &[(
                "machines[0].circuits[0].steering.flow_l_min",
                "below",
                "35 L/min",
            )],
        ),
        (
            &[Remove("/machines/0/circuits/0/steering/flow_l_min")],
            &[(
                "machines[0].circuits[0].steering.flow_l_min",
                "required",
                "policy",
            )],
        ),
        (
            &[Remove("/machines/1/circuits/0/steering/flow_l_min")],
            &[(
                "machines[1].circuits[0].steering.flow_l_min",
                "required",
                "policy",
            )],
        ),
        (
            &[Set("/machines/5/circuits/1/outlet", json!("standard_flow"))],
            &[("machines[5].circuits[1].outlet", "unique", "standard_flow")],
        ),
        // Rotors and drives.
        (
            &[Set("/implements/0/rotor/lowest_rpm", json!(650))],
            &[(
                "implements[0].rotor.lowest_rpm",
                "not above",
                "the rotor's rated speed, 600",
            )],
        ),
        (
            &[Set("/implements/0/rotor/highest_rpm", json!(590))],
            &[(
                "implements[0].rotor.rated_rpm",
                "not above",
                "the rotor's highest speed, 590",
            )],
        ),
        (
            &[Remove("/implements/0/shafts/0/drive")],
            &[(
                "implements[0].shafts[0].drive",
                "empty",
                "gear, belt or chain",
            )],
        ),
        (
            &[Set("/implements/0/motor/drive", json!([]))],
            &[("implements[0].motor.drive", "empty", "gear, belt or chain")],
        ),
        (
            &[Remove("/implements/7/motor")],
            &[("implements[7].shafts", "empty", "or a motor")],
        ),
        (
            &[Set("/implements/3/shafts", json!([]))],
            &[("implements[3].shafts", "empty", "or a motor")],
        ),
        // Work and travel.
        (
            &[Remove("/implements/7/work/idle_kw")],
            &[("implements[7].work.idle_kw", "required", "no usual figure")],
        ),
        (
            &[Remove("/implements/7/work/kwh_per_unit")],
            &[(
                "implements[7].work.kwh_per_unit",
                "required",
                "no usual figure",
            )],
        ),
        (
            &[Set("/implements/0/work/measure", json!("area"))],
            &[
                ("implements[0].work.idle_kw", "required", "this measure"),
                (
                    "implements[0].work.kwh_per_unit",
                    "required",
                    "this measure",
                ),
            ],
        ),
        (
            &[Set("/implements/3/work/idle_kw", json!(20))],
            &[("implements[3].work.idle_kw", "below", "idling included")],
        ),
        (
            &[Set("/implements/0/travel/usual_km_h", json!(6.5))],
            &[(
                "implements[0].travel.usual_km_h",
                "not above",
                "the highest speed, 6",
            )],
        ),
        // Kits.
        (
            &[Set("/kits/0/routes", json!([]))],
            &[("kits[0].routes", "empty", "at least one route")],
        ),
        (
            &[Remove("/kits/6/hoses")],
            &[("kits[6].hoses", "required", "oil needs hoses")],
        ),
        (
            &[Remove("/kits/7/pump")],
            &[("kits[7].pump", "required", "needs its pump")],
        ),
        (
            &[Set("/kits/0/routes", json!(["pump_pack"]))],
            &[
                ("kits[0].hoses", "required", "oil needs hoses"),
                ("kits[0].pump", "required", "needs its pump"),
            ],
        ),
        // Lists and identifiers.
        (
            &[Set("/machines", json!([]))],
            &[("machines", "empty", "at least one")],
        ),
        (
            &[Set("/implements", json!([]))],
            &[("implements", "empty", "at least one")],
        ),
        (
            &[Set("/machines/1/id", json!("wren-18"))],
            &[("machines[1].id", "unique", "wren-18")],
        ),
        (
            &[Set("/implements/2/id", json!("snow-thrower-150"))],
            &[("implements[2].id", "unique", "snow-thrower-150")],
        ),
        (
            &[Set("/kits/9/id", json!("joint-shaft"))],
            &[("kits[9].id", "unique", "joint-shaft")],
        ),
        // Another version.
        (
            &[Set("/format_version", json!(3))],
            &[("format_version", "within", "A newer version")],
        ),
        (
            &[Set("/format_version", json!(0))],
            &[("format_version", "within", "(0) must be 1 to 2")],
        ),
        (
            &[Set("/format_version", json!("1"))],
            &[("format_version", "type", "a number")],
        ),
        (
            &[Set("/format_version", json!(1.5))],
            &[("format_version", "type", "a whole number")],
        ),
        (
            &[Remove("/format_version")],
            &[("format_version", "required", "Write 2")],
        ),
        // Of a newer file nothing else can be told, of one without a version all can.
        (
            &[
                Set("/format_version", json!(3)),
                Set("/machines", json!("told in another way")),
            ],
            &[("format_version", "within", "A newer version")],
        ),
        (
            &[Remove("/format_version"), Set("/name", json!(""))],
            &[
                ("format_version", "required", ""),
                ("name", "empty", "customers"),
            ],
        ),
        // Slips of a person.
        (
            &[Set("/machines/0/engine/net_kw", json!("18,5"))],
            &[(
                "machines[0].engine.net_kw",
                "type",
                "a decimal point, without quotes",
            )],
        ),
        (
            &[Set("/machines/0/engine/net_kw", json!("18 kW"))],
            &[("machines[0].engine.net_kw", "type", "must be a number")],
        ),
        (
            &[Set("/machines/0/engine/net_kw", json!(18_000))],
            &[(
                "machines[0].engine.net_kw",
                "within",
                "(18000) must be 3 to 600 kW",
            )],
        ),
        (
            &[Set("/machines/0/circuits/0/relief_bar", json!(2250))],
            &[(
                "machines[0].circuits[0].relief_bar",
                "within",
                "1 bar is 14.5 psi",
            )],
        ),
        (
            &[Set("/machines/0/circuits/0/relief_bar/low", json!(158))],
            &[(
                "machines[0].circuits[0].relief_bar",
                "type",
                "158, 155, 160",
            )],
        ),
        (
            &[Set("/machines/0/engine/net_hp", json!(25))],
            &[(
                "machines[0].engine.net_hp",
                "unknown",
                "Did you mean net_kw?",
            )],
        ),
        (
            &[Set("/machines/0/colour", json!(25))],
            &[(
                "machines[0].colour",
                "unknown",
                "The fields here are: id, name",
            )],
        ),
        (
            &[Set("/machines/0/kind", json!("Tractor"))],
            &[("machines[0].kind", "one of", "tractor, skid_steer")],
        ),
        (
            &[Set(
                "/machines/0/circuits/0/steering/policy",
                json!("load-sensing"),
            )],
            &[(
                "machines[0].circuits[0].steering.policy",
                "one of",
                "load_sensing_priority",
            )],
        ),
        (
            &[Set("/kits/6/hoses/bore_mm", json!(0.5))],
            &[(
                "kits[6].hoses.bore_mm",
                "within",
                "(0.5) must be 4 to 80 mm",
            )],
        ),
        (
            &[Set("/kits/6/hoses/couplers", json!(2.5))],
            &[("kits[6].hoses.couplers", "type", "a whole number")],
        ),
    ];
    for (edits, expected) in table {
        are(&faults(edits), expected);
    }
}

/// Whatever is written for a key, its fault is a line that can be read.
#[test]
fn a_key_without_end_is_cut() {
    let start = format!("machines[0].{}…", "ö".repeat(40));
    let mut yard = edited(&[]);
    yard["machines"][0]["ö".repeat(100_000)] = json!(1);
    let faults = Yard::from_json(&yard.to_string()).expect_err("an unknown field");
    are(&faults, &[(&start, "unknown", "The fields here are")]);

    let start = format!("implements[0].need_kw.{}…", "x".repeat(40));
    let mut yard = edited(&[]);
    yard["implements"][0]["need_kw"]["x".repeat(100_000)] = json!(1);
    let faults = Yard::from_json(&yard.to_string()).expect_err("an unknown field");
    are(&faults, &[(&start, "unknown", "low, likely, high")]);
}

/// Without an edit there is no fault: each row above comes from its edit alone.
#[test]
fn the_demo_itself_has_no_fault() {
    are(&faults(&[]), &[]);
}

/// What may not exceed another figure may reach it, and a shaft as fast as its rotor needs no step.
#[test]
fn figures_just_at_each_other_are_no_fault() {
    for edits in [
        &[Set("/machines/0/rear_pto/engine_rpm", json!(1200))][..],
        &[
            Set("/machines/0/rear_pto/engine_rpm", json!(2600)),
            Set("/machines/0/rear_pto/tested_kw", json!(18)),
        ],
        &[
            Set("/implements/0/shafts/0/rpm", json!(600)),
            Set("/implements/0/shafts/0/drive", json!([])),
        ],
    ] {
        are(&faults(edits), &[]);
    }
}

/// A yard may do without kits.
#[test]
fn no_kits_are_no_fault() {
    are(&faults(&[Set("/kits", json!([]))]), &[]);
}

#[test]
fn all_faults_of_fields_are_reported_at_once() {
    are(
        &faults(&[
            Set("/name", json!("")),
            Remove("/machines/0/engine/rated_rpm"),
            Set("/machines/4/rear_pto/rpm", json!(54_000)),
            Set("/machines/5/circuits/0/outlet", json!("rear")),
            Set(
                "/implements/1/need_kw",
                json!({"low": 30, "likely": 20, "high": 10}),
            ),
            Set("/kits/7/pump/colour", json!("red")),
            Set("/owner", json!("somebody")),
        ]),
        &[
            ("name", "empty", ""),
            ("machines[0].engine.rated_rpm", "required", ""),
            ("machines[4].rear_pto.rpm", "within", "54000"),
            ("machines[5].circuits[0].outlet", "one of", "rear"),
            ("implements[1].need_kw", "type", "30, 20, 10"),
            ("kits[7].pump.colour", "unknown", ""),
            ("owner", "unknown", ""),
        ],
    );
}

#[test]
fn all_faults_between_fields_are_reported_at_once() {
    are(
        &faults(&[
            Set("/machines/0/rear_pto/engine_rpm", json!(2700)),
            Set("/machines/2/id", json!("wren-18")),
            Set("/implements/0/rotor/lowest_rpm", json!(650)),
            Remove("/kits/7/pump"),
        ]),
        &[
            ("machines[0].rear_pto.engine_rpm", "not above", ""),
            ("implements[0].rotor.lowest_rpm", "not above", ""),
            ("kits[7].pump", "required", ""),
            ("machines[2].id", "unique", ""),
        ],
    );
}
