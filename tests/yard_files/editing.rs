//! A yard that is edited: entries with faults, new ones, copies, paths, what is kept of it.

use farend_core::fault::{Expected, Rule};
use farend_core::stage::gear::GearKind;
use farend_core::yard::assumed::assumed;
use farend_core::yard::edit::{Change, Editing, Whose};
use farend_core::yard::history::{Deed, History, MOST_STEPS};
use farend_core::yard::kept::{self, KeptFault};
use farend_core::yard::list::List;
use farend_core::yard::rules::{LARGEST_FILE, MOST_ENTRIES};
use farend_core::yard::{DEMO, Yard, path};
use serde_json::{Value, json};

fn demo() -> Editing {
    Editing::from_json(DEMO).expect("the demo can be edited")
}

fn put(yard: &mut Editing, whose: Whose, at: &str, to: Value) {
    let change = yard.putting(whose, at, Some(to)).expect("a change");
    yard.apply(change).expect("that can be made");
}

#[test]
fn the_demo_is_sound_as_it_stands() {
    assert_eq!(demo().faults(), []);
    assert_eq!(demo().sound(), farend_tests::demo());
    assert_eq!(Editing::from(&farend_tests::demo()), demo());
}

#[test]
fn an_entry_with_faults_takes_no_part_until_it_is_mended() {
    let mut yard = demo();
    let place = yard.place(List::Machines, "heron-68").expect("a machine");
    let heron = Whose::Entry(List::Machines, place);
    put(&mut yard, heron, "engine.net_kw", json!(9000));
    let faults = yard.faults_of(heron);
    assert_eq!(faults[0].path, "engine.net_kw");
    assert!(matches!(faults[0].rule, Rule::Within { max: 600.0, .. }));
    assert_eq!(yard.faults().len(), 1);
    assert_eq!(yard.sound().machine("heron-68"), None);
    assert_eq!(yard.sound().machines.len(), yard.len(List::Machines) - 1);
    put(&mut yard, heron, "engine.net_kw", json!(68));
    assert_eq!(yard.sound(), farend_tests::demo());
}

#[test]
fn what_only_shows_when_fields_are_held_together_is_told_at_its_field() {
    let mut yard = demo();
    let heron = Whose::Entry(List::Machines, 3);
    put(&mut yard, heron, "engine.lowest_rpm", json!(2300));
    let paths: Vec<_> = yard
        .faults_of(heron)
        .into_iter()
        .map(|it| it.path)
        .collect();
    assert!(paths.contains(&"engine.lowest_rpm".to_owned()), "{paths:?}");
    assert!(
        paths.contains(&"rear_pto.engine_rpm".to_owned()),
        "{paths:?}"
    );
}

#[test]
fn of_two_entries_with_one_identifier_the_later_is_left_out() {
    let mut yard = demo();
    put(&mut yard, Whose::Entry(List::Kits, 4), "id", json!("hoses"));
    let first = yard.entry(List::Kits, 0).expect("a kit")["id"].clone();
    put(&mut yard, Whose::Entry(List::Kits, 4), "id", first);
    assert_eq!(yard.faults_of(Whose::Entry(List::Kits, 0)), []);
    let faults = yard.faults_of(Whose::Entry(List::Kits, 4));
    assert_eq!(faults[0].rule, Rule::Unique);
    assert_eq!(yard.fault_counts(List::Kits)[4], 1);
    assert_eq!(yard.sound().kits.len(), yard.len(List::Kits) - 1);
    let change = Change::Remove(List::Kits, 0);
    yard.apply(change).expect("a kit to remove");
    assert_eq!(yard.faults(), []);
}

#[test]
fn a_new_entry_has_a_free_identifier_and_a_name_and_nothing_else() {
    let mut yard = demo();
    for expected in ["machine", "machine-2", "machine-3"] {
        let entry = yard.blank(List::Machines, "New machine");
        assert_eq!(entry, json!({"id": expected, "name": "New machine"}));
        let end = yard.len(List::Machines);
        yard.apply(Change::Insert(List::Machines, end, entry))
            .expect("room for it");
    }
    let copy = yard
        .copy(List::Machines, 0, "Wren 18 (copy)")
        .expect("a copy");
    assert_eq!(copy["id"], "wren-2");
    assert_eq!(copy["name"], "Wren 18 (copy)");
    assert_eq!(
        copy["engine"],
        yard.entry(List::Machines, 0).expect("it")["engine"]
    );
}

#[test]
fn a_machine_is_made_from_nothing() {
    let mut yard = demo();
    let place = yard.len(List::Machines);
    let entry = yard.blank(List::Machines, "Snipe 30");
    yard.apply(Change::Insert(List::Machines, place, entry))
        .expect("room for it");
    let new = Whose::Entry(List::Machines, place);
    for (at, to) in [
        ("kind", json!("tractor")),
        ("engine.net_kw", json!(30)),
        ("engine.rated_rpm", json!(2500)),
    ] {
        assert!(!yard.faults_of(new).is_empty());
        put(&mut yard, new, at, to);
    }
    assert_eq!(yard.faults_of(new)[0].path, "engine.lowest_rpm");
    put(&mut yard, new, "engine.lowest_rpm", json!(1100));
    assert_eq!(yard.faults_of(new), []);
    assert!(yard.sound().machine("machine").is_some());
}

#[test]
fn faults_of_the_yard_itself_leave_its_entries_alone() {
    let mut yard = demo();
    put(&mut yard, Whose::Yard, "currency", json!("euro"));
    yard.apply(yard.putting(Whose::Yard, "name", None).expect("a change"));
    let paths: Vec<_> = yard
        .faults()
        .into_iter()
        .map(|(whose, fault)| (whose, fault.path))
        .collect();
    let own = |path: &str| (Whose::Yard, path.to_owned());
    assert_eq!(paths, [own("name"), own("currency")]);
    let sound = yard.sound();
    assert_eq!(sound.machines, farend_tests::demo().machines);
    assert_eq!(sound.currency, None);
    // It can be taken along in a saved comparison.
    assert_eq!(Yard::from_json(&sound.written.to_string()), Ok(sound));
    put(&mut yard, Whose::Yard, "name", json!("Pier"));
    put(&mut yard, Whose::Yard, "currency", json!("eur"));
    let rule = &yard.faults_of(Whose::Yard)[0].rule;
    assert_eq!(*rule, Rule::Type(Expected::Capitals));
}

/// However it is called: what is sound can be saved and opened again.
#[test]
fn a_field_that_no_yard_has_is_left_out_of_what_is_sound() {
    let long = "x".repeat(50);
    for key in [long.as_str(), "a.b", "[0]", "", " ", "naem"] {
        let mut own = demo().own().clone();
        own.insert(key.to_owned(), json!(1));
        let mut yard = demo();
        yard.apply(Change::Own(own)).expect("a change");
        assert_eq!(yard.faults().len(), 1, "{key:?}");
        assert_eq!(yard.sound(), farend_tests::demo(), "{key:?}");
    }
}

#[test]
fn a_change_at_a_place_that_isnt_there_changes_nothing() {
    let mut yard = demo();
    let end = yard.len(List::Kits);
    let entry = json!({"id": "it"});
    for change in [
        Change::Put(List::Kits, end, entry.clone()),
        Change::Put(List::Kits, 0, json!(7)),
        Change::Insert(List::Kits, end + 1, entry.clone()),
        Change::Insert(List::Kits, 0, json!("text")),
        Change::Remove(List::Kits, end),
        Change::Move(List::Kits, 0, end),
        Change::Move(List::Kits, end, 0),
    ] {
        assert_eq!(yard.apply(change), None);
        assert_eq!(yard, demo());
    }
    while !yard.is_full(List::Kits) {
        yard.apply(Change::Insert(List::Kits, 0, yard.blank(List::Kits, "Kit")))
            .expect("room");
    }
    assert_eq!(yard.apply(Change::Insert(List::Kits, 0, entry)), None);
    assert_eq!(yard.len(List::Kits), MOST_ENTRIES);
    assert_eq!(
        yard.faults()
            .iter()
            .filter(|(_, it)| it.rule == Rule::Unique)
            .count(),
        0
    );
}

/// However large the file that was opened: what is saved of it can be opened.
#[test]
fn a_large_yard_is_saved_so_that_it_opens_again() {
    let mut yard: Value = serde_json::from_str(DEMO).expect("JSON");
    let kits = yard["kits"].as_array_mut().expect("kits");
    let largest = kits.iter().max_by_key(|kit| kit.to_string().len());
    let mut kit = largest.expect("a kit").clone();
    kit["comment"] = json!("x".repeat(1_300));
    for place in kits.len()..MOST_ENTRIES {
        kit["id"] = json!(format!("k{place}"));
        kits.push(kit.clone());
    }
    let text = yard.to_string();
    let indented = serde_json::to_string_pretty(&yard).expect("JSON");
    assert!(text.len() <= LARGEST_FILE && indented.len() > LARGEST_FILE);
    let opened = Editing::from_json(&text).expect("a yard");
    let saved = opened.to_json().expect("JSON");
    assert_eq!(Editing::from_json(&saved), Ok(opened));
    // Where there is room it has lines for people.
    let small = demo().to_json().expect("JSON");
    assert!(small.lines().count() > 100);
}

#[test]
fn at_least_a_hundred_steps_can_be_taken_back() {
    let (mut yard, mut history) = (demo(), History::default());
    for step in 0..MOST_STEPS + 20 {
        let to = Some(json!(1000 + step));
        let change = yard.putting(Whose::Entry(List::Machines, 0), "mass_kg", to);
        let deed = Deed::Field("Wren".to_owned(), format!("step {step}"));
        assert!(history.make(&mut yard, change.expect("a change"), deed));
    }
    let mut back = 0;
    while history.undo(&mut yard).is_some() {
        back += 1;
    }
    const { assert!(MOST_STEPS >= 100) };
    assert_eq!(back, MOST_STEPS);
    // The first twenty have gone, so the mass of the twentieth stands.
    assert_eq!(yard.entry(List::Machines, 0).expect("it")["mass_kg"], 1019);
    let next = Deed::Field("Wren".to_owned(), "step 20".to_owned());
    assert_eq!(history.ahead(), Some(&next));
}

#[test]
fn paths_find_make_and_take_away() {
    let mut entry = json!({"engine": {"net_kw": 46}, "circuits": [{"outlet": "remotes"}]});
    assert_eq!(
        path::get(&entry, "circuits[0].outlet"),
        Some(&json!("remotes"))
    );
    assert_eq!(path::get(&entry, "circuits[1].outlet"), None);
    assert!(path::set(
        &mut entry,
        "rear_pto.end.turns",
        Some(json!("clockwise"))
    ));
    assert_eq!(entry["rear_pto"], json!({"end": {"turns": "clockwise"}}));
    // With its last field a group goes too, and the group round it.
    assert!(path::set(&mut entry, "rear_pto.end.turns", None));
    assert_eq!(entry.get("rear_pto"), None);
    // A list's own entry keeps its place, empty as it is.
    assert!(path::set(
        &mut entry,
        "circuits[1]",
        Some(json!({"outlet": "high_flow"}))
    ));
    // There is no place but the next.
    assert!(!path::set(&mut entry, "circuits[3]", Some(json!({}))));
    assert!(path::set(&mut entry, "circuits[0].outlet", None));
    assert_eq!(entry["circuits"], json!([{}, {"outlet": "high_flow"}]));
    assert!(path::set(&mut entry, "circuits[0]", None));
    assert!(path::set(&mut entry, "circuits[0]", None));
    assert_eq!(entry, json!({"engine": {"net_kw": 46}}));
    // What isn't there is taken away, and a list is made with its first entry.
    assert!(path::set(&mut entry, "circuits[0].outlet", None));
    assert_eq!(entry, json!({"engine": {"net_kw": 46}}));
    assert!(path::set(&mut entry, "engine.curve[0]", Some(json!({}))));
    assert_eq!(entry["engine"]["curve"], json!([{}]));
    assert!(path::set(&mut entry, "engine.curve[0]", None));
    for nowhere in [
        "",
        "engine..net_kw",
        "engine.net_kw.low",
        "circuits[3].x",
        "a[b]",
        "a[0",
    ] {
        let before = entry.clone();
        assert!(!path::set(&mut entry, nowhere, Some(json!(1))), "{nowhere}");
        assert_eq!(entry, before);
    }
}

#[test]
fn what_cant_be_taken_apart_is_refused() {
    for text in [
        "{",
        "[]",
        r#"{"format_version": 99, "name": "A", "machines": []}"#,
        r#"{"name": "A", "machines": []}"#,
        r#"{"format_version": 1, "name": "A", "machines": {}}"#,
        r#"{"format_version": 1, "name": "A", "machines": [7]}"#,
    ] {
        assert!(Editing::from_json(text).is_err(), "{text}");
    }
}

#[test]
fn a_kept_yard_that_is_damaged_or_newer_is_told_apart() {
    let whole = kept::write(&demo()).expect("a text");
    assert_eq!(kept::read(&whole), Ok(demo()));
    let other = |from: &str, to: &str| {
        assert!(whole.contains(from), "{from}");
        kept::read(&whole.replace(from, to))
    };
    // With faults in it a yard may be larger than a file may be.
    let large = whole.clone() + &" ".repeat(3 * LARGEST_FILE);
    assert_eq!(kept::read(&large), Ok(demo()));
    let damaged = Err(KeptFault::Damaged);
    assert_eq!(kept::read(&whole[..whole.len() / 2]), damaged);
    assert_eq!(kept::read(""), damaged);
    assert_eq!(kept::read("{}"), damaged);
    assert_eq!(other("farend-edited-yard", "another"), damaged);
    assert_eq!(other(r#""machines":["#, r#""machines":[7,"#), damaged);
    assert_eq!(
        other(r#"yard","format_version":1"#, r#"yard","format_version":2"#),
        Err(KeptFault::Newer)
    );
    assert_eq!(
        other(r#""format_version":2"#, r#""format_version":9"#),
        Err(KeptFault::Newer)
    );
}

/// What is said to be assumed is what comes of an entry that leaves it out.
#[test]
fn what_is_assumed_is_what_is_taken() {
    let without = |list: List, place: usize, path: &str| {
        let mut yard = demo();
        let whose = Whose::Entry(list, place);
        if let Some(change) = yard.putting(whose, path, None) {
            yard.apply(change).expect("that can be made");
        }
        let entry = yard.entry(list, place).expect("an entry");
        (assumed(entry, path).expect("a figure"), yard.sound())
    };
    let near = |(said, taken): (f64, f64), path: &str| {
        assert!(
            (said - taken).abs() < 1e-9 * taken.max(1.0),
            "{path}: {said}, not {taken}"
        );
    };
    for (path, place) in [
        ("circuits[0].volumetric", 0),
        ("circuits[0].hydro_mechanical", 0),
        ("circuits[0].valve_bar", 0),
        // One that senses its load.
        ("circuits[0].valve_bar", 4),
    ] {
        let (said, yard) = without(List::Machines, place, path);
        let circuit = &yard.machines[place].circuits[0];
        let taken = match path.rsplit_once('.').expect("a group").1 {
            "volumetric" => circuit.volumetric.likely,
            "hydro_mechanical" => circuit.hydro_mechanical.likely,
            _ => circuit.valve.likely.to_bar(),
        };
        near((said, taken), path);
    }
    let (said, yard) = without(List::Machines, 0, "rear_pto.rating_kw");
    let rating = yard.machines[0]
        .rear_pto
        .as_ref()
        .and_then(|pto| pto.rating);
    near(
        (said, rating.expect("a rating").likely.to_kilowatts()),
        "rear_pto.rating_kw",
    );
    // A heavier shaft than is usual at its speed.
    let mut yard = demo();
    let gannet = Whose::Entry(List::Machines, 4);
    put(&mut yard, gannet, "rear_pto.end.shaft", json!("3"));
    let entry = yard.entry(List::Machines, 4).expect("an entry");
    let said = assumed(entry, "rear_pto.rating_kw").expect("a figure");
    let pto = yard.sound().machines[4].rear_pto.clone();
    let rating = pto.and_then(|pto| pto.rating).expect("a rating");
    near(
        (said, rating.likely.to_kilowatts()),
        "rear_pto.rating_kw of type 3",
    );
    near((said, 275.0), "type 3, from memory (ISO 500)");
    let (said, yard) = without(List::Machines, 0, "oil.kg_m3");
    let oil = yard.machines[0].oil.density_at_15;
    near((said, oil.to_kilograms_per_cubic_metre()), "oil.kg_m3");

    let with_motor = |it: &farend_core::implement::Implement| it.motor.is_some();
    let place = farend_tests::demo()
        .implements
        .iter()
        .position(with_motor)
        .expect("a motor");
    for path in [
        "motor.volumetric",
        "motor.hydro_mechanical",
        "motor.starting",
    ] {
        let (said, yard) = without(List::Implements, place, path);
        let motor = yard.implements[place].motor.as_ref().expect("a motor");
        let taken = match path {
            "motor.volumetric" => motor.volumetric,
            "motor.starting" => motor.starting,
            _ => motor.hydro_mechanical,
        };
        near((said, taken.likely), path);
    }
    let with_hoses = |it: &farend_core::kit::Kit| it.hoses.is_some();
    let place = farend_tests::demo()
        .kits
        .iter()
        .position(with_hoses)
        .expect("hoses");
    for path in [
        "hoses.coupler_bar",
        "hoses.coupler_l_min",
        "hoses.fittings_k",
        "hoses.back_bore_mm",
    ] {
        let (said, yard) = without(List::Kits, place, path);
        let hoses = yard.kits[place].hoses.as_ref().expect("hoses");
        let taken = match path {
            "hoses.coupler_bar" => hoses.coupler_drop.likely.to_bar(),
            "hoses.coupler_l_min" => hoses.coupler_flow.to_litres_per_minute(),
            "hoses.fittings_k" => hoses.fittings,
            _ => hoses.back.bore.to_millimetres(),
        };
        near((said, taken), path);
    }
    for kind in GearKind::ALL {
        let gear = json!({"kind": kind.word(), "ratio": 1.0});
        let kit = json!({"id": "it", "name": "It", "routes": ["rear_shaft"], "drive": [gear]});
        let said = assumed(&kit, "drive[0].efficiency").expect("a figure");
        let mut yard = demo();
        yard.apply(Change::Put(List::Kits, 0, kit)).expect("a kit");
        near(
            (said, yard.sound().kits[0].drive[0].efficiency.likely),
            kind.word(),
        );
    }
    assert_eq!(assumed(&json!({}), "engine.net_kw"), None);
    assert_eq!(assumed(&json!({}), "mass_kg"), None);
}

/// Only a joint shaft has joints.
#[test]
fn an_angle_of_another_step_means_nothing() {
    for kind in GearKind::ALL {
        let gear = json!({"kind": kind.word(), "ratio": 1.0, "angle_deg": 40});
        let kit = json!({"id": "it", "name": "It", "routes": ["rear_shaft"], "drive": [gear]});
        let said = assumed(&kit, "drive[0].efficiency");
        let mut yard = demo();
        yard.apply(Change::Put(List::Kits, 0, kit)).expect("a kit");
        let gear = yard.sound().kits[0].drive[0];
        let has_joints = *kind == GearKind::JointShaft;
        assert_eq!(gear.angle.is_some(), has_joints, "{kind:?}");
        let likely = gear.efficiency.likely;
        assert_eq!(said, (!has_joints).then_some(likely), "{kind:?}");
    }
}

#[test]
fn a_new_step_leaves_nothing_to_be_made_again() {
    let (mut yard, mut history) = (demo(), History::default());
    let step = |yard: &mut Editing, history: &mut History, mass: u32| {
        let change = yard.putting(
            Whose::Entry(List::Machines, 0),
            "mass_kg",
            Some(json!(mass)),
        );
        history.make(
            yard,
            change.expect("a change"),
            Deed::Own("name".to_owned()),
        )
    };
    assert!(step(&mut yard, &mut history, 1000));
    history.undo(&mut yard).expect("a step back");
    assert!(history.ahead().is_some());
    // A change that can't be made is no step.
    let nowhere = Change::Remove(List::Machines, 99);
    assert!(!history.make(&mut yard, nowhere, Deed::Own("name".to_owned())));
    assert!(history.ahead().is_some());
    assert!(step(&mut yard, &mut history, 1100));
    assert_eq!(history.redo(&mut yard), None);
}
