//! A saved comparison opens again as it was; a broken one is refused with all its faults.

use farend_core::export::open::{LARGEST_COMPARISON, Opened, open};
use farend_core::fault::{Fault, Rule};
use farend_core::measure::Measure;
use farend_core::quantity::{AngularSpeed, Time};
use farend_core::route::RouteId;
use farend_core::source::Source;
use farend_core::spread::Spread;
use farend_core::state::{LONGEST_LINK, State};
use farend_core::units::UnitSystem;
use farend_core::work::Progress;
use farend_core::yard::DEMO;
use farend_core::yard::rules::LARGEST_FILE;
use farend_tests::made::{Made, made};
use farend_tests::{demo, load};
use serde_json::{Value, json};

/// What a file must open as.
fn opened(made: &Made) -> Opened {
    Opened {
        yard: made.yard.clone(),
        state: Some(made.state.clone()),
    }
}

/// A yard of one's own, with much chosen.
fn chosen() -> Made {
    let yard = load(&DEMO.replace("Curlew", "Own"));
    let mut state = State::of("curlew-46".to_owned(), "snow-thrower-150".to_owned());
    state.route = RouteId::PumpPack;
    state.units = UnitSystem::Us;
    state.beside = Some("heron-68".to_owned());
    state.settings.engine_speed = Some(AngularSpeed::rpm(2000.0));
    state.prices.currency = Some("EUR".to_owned());
    made(yard, state)
}

fn saved() -> Value {
    serde_json::from_str(&chosen().text()).expect("JSON")
}

fn faults(file: &Value) -> Vec<Fault> {
    open(&file.to_string()).expect_err("a fault")
}

#[test]
fn a_saved_comparison_opens_as_it_was() {
    let made = chosen();
    assert_eq!(open(&made.text()), Ok(opened(&made)));
}

/// Each machine of the demo with an implement.
pub fn of_demo() -> impl Iterator<Item = Made> {
    let yard = demo();
    (0..yard.machines.len()).map(move |place| {
        let machine = yard.machines[place].id.clone();
        let implement = &yard.implements[place % yard.implements.len()];
        made(yard.clone(), State::of(machine, implement.id.clone()))
    })
}

#[test]
fn each_machine_of_the_demo_opens_as_it_was() {
    for made in of_demo() {
        assert_eq!(open(&made.text()), Ok(opened(&made)));
    }
}

/// What others read must be what the calculation gives.
#[test]
fn results_are_those_of_the_comparison() {
    let made = chosen();
    let file: Value = serde_json::from_str(&made.text()).expect("JSON");
    let results = &file["results"];
    assert_eq!(results["engine_rpm"].as_f64().map(f64::round), Some(2000.0));
    let mut running = 0;
    for (result, written) in made.comparison.routes.iter().zip(0..) {
        let written = &results["routes"][written];
        assert_eq!(written["route"], result.route.word());
        let Some(run) = result.run() else {
            assert_eq!(written.get("runs"), None);
            assert_eq!(written["fits"], "no");
            continue;
        };
        running += 1;
        let runs = &written["runs"];
        let delivered = run.delivered.likely.to_kilowatts();
        assert_eq!(runs["delivered_kw"]["likely"], json!(delivered));
        assert_eq!(runs["standing"], run.verdict.likely.word());
        assert_eq!(runs["limit"], run.limit.word());
        // What arrives, is lost and stays in the engine is all that it could give.
        let sum = delivered
            + runs["lost_kw"].as_f64().expect("a number")
            + runs["not_taken_up_kw"].as_f64().expect("a number");
        let available = run.ledger.available.to_kilowatts();
        assert!((sum - available).abs() < 1e-9, "{sum} of {available}");
    }
    assert!(running >= 3, "{running}");
}

/// A job that takes so long.
fn taking(minutes: f64) -> Progress {
    let time = Some(Time::minutes(minutes));
    Progress {
        measure: Measure::Area,
        rate: Spread::exact(1.0, Source::Own),
        ground_speed: None,
        limit: None,
        time: Some(Spread::exact(time, Source::Own)),
        rotor: AngularSpeed::rpm(540.0),
        too_slow: false,
        tip: None,
        casting: None,
    }
}

#[test]
fn the_time_for_the_job_stands_with_its_route() {
    let mut made = chosen();
    made.progress = vec![
        (RouteId::PumpPack, taking(90.0)),
        (RouteId::TurnedForward, taking(30.0)),
    ];
    let file: Value = serde_json::from_str(&made.text()).expect("JSON");
    let routes = file["results"]["routes"].as_array().expect("a list");
    let minutes = |route: RouteId| {
        let of_route = routes.iter().find(|it| it["route"] == route.word());
        of_route.map(|it| it["runs"]["job_min"].as_f64().map(f64::round))
    };
    assert_eq!(minutes(RouteId::PumpPack), Some(Some(90.0)));
    assert_eq!(minutes(RouteId::TurnedForward), Some(Some(30.0)));
    assert_eq!(minutes(RouteId::MachineHydraulics), Some(None));
}

/// They are for reading only.
#[test]
fn results_are_not_read_back() {
    let mut file = saved();
    file["results"] = json!("none of this matters");
    assert!(open(&file.to_string()).is_ok());
    file.as_object_mut().expect("a group").remove("results");
    assert!(open(&file.to_string()).is_ok());
}

#[test]
fn a_yard_file_opens_as_a_yard() {
    let (yard, state) = (demo(), None);
    assert_eq!(open(DEMO), Ok(Opened { yard, state }));
    let faults = open("{}").expect_err("a yard without anything");
    assert!(faults.iter().any(|fault| fault.path == "machines"));
}

#[test]
fn all_faults_come_at_once_with_their_places() {
    let mut file = saved();
    file["format"] = json!("farend-yard");
    file["yard"]["machines"][0]["engine"]["net_kw"] = json!(9000);
    file["yard"]["kits"][1]["ruotes"] = json!([]);
    file["lnik"] = file["link"].take();
    let faults = faults(&file);
    let found: Vec<_> = faults.iter().map(|it| it.path.as_str()).collect();
    for path in [
        "format",
        "link",
        "lnik",
        "yard.machines[0].engine.net_kw",
        "yard.kits[1].ruotes",
    ] {
        assert!(found.contains(&path), "{path} is not among {found:?}");
    }
    assert!(
        faults
            .iter()
            .all(|fault| !fault.hint.to_string().is_empty())
    );
}

/// The yard's faults that only show when its fields are held together come beside the link's.
#[test]
fn a_bad_link_does_not_hide_what_is_wrong_with_the_yard() {
    let mut file = saved();
    let link = file["link"].as_str().expect("a link").to_owned();
    file["link"] = json!(link[1..]);
    file["yard"]["machines"][1]["id"] = file["yard"]["machines"][0]["id"].clone();
    let faults = faults(&file);
    let found: Vec<_> = faults
        .iter()
        .map(|it| (it.path.as_str(), &it.rule))
        .collect();
    assert_eq!(
        found,
        [
            ("link", &Rule::Readable),
            ("yard.machines[1].id", &Rule::Unique)
        ]
    );
}

/// The rule counts letters, the reader bytes: what is too long for either is one fault.
#[test]
fn a_link_that_is_too_long_is_told() {
    for link in ["A".repeat(LONGEST_LINK + 1), "é".repeat(LONGEST_LINK)] {
        let mut file = saved();
        file["link"] = json!(link);
        let [fault] = &faults(&file)[..] else {
            panic!("{:?}", faults(&file));
        };
        assert_eq!(fault.path, "link");
    }
}

#[test]
fn a_link_to_what_the_yard_lacks_names_it() {
    let yard = saved()["yard"].to_string();
    for id in ["curlew-46", "snow-thrower-150", "heron-68"] {
        let mut file = saved();
        file["yard"] = serde_json::from_str(&yard.replace(id, "another")).expect("JSON");
        let [fault] = &faults(&file)[..] else {
            panic!("{id}: {:?}", faults(&file));
        };
        assert_eq!((fault.path.as_str(), fault.found.as_str()), ("link", id));
    }
}

#[test]
fn settings_that_do_not_suit_the_machine_are_told() {
    let mut file = saved();
    for machine in file["yard"]["machines"].as_array_mut().expect("machines") {
        if machine["id"] == "curlew-46" {
            machine["engine"]["lowest_rpm"] = json!(2100);
        }
    }
    let faults = faults(&file);
    assert_eq!(faults.len(), 1, "{faults:?}");
    assert_eq!(faults[0].path, "link.engine_speed");
}

#[test]
fn a_newer_file_says_so_and_nothing_else() {
    let mut file = saved();
    file["format_version"] = json!(2);
    file["yard"]["machines"] = json!("told in another way");
    let faults = faults(&file);
    assert_eq!(faults.len(), 1, "{faults:?}");
    assert_eq!(faults[0].path, "format_version");
    assert!(faults[0].to_string().contains("newer version"));
}

/// The yard in it is raised as any yard file is, and refused where it's newer.
#[test]
fn a_yard_of_another_version_is_read_as_a_file_of_it_is() {
    const OLD: &str = include_str!("../golden/yard/v1-last.json");
    let mut file = saved();
    file["link"] = json!(State::of("wren-18".to_owned(), "broom-180".to_owned()).to_link());
    file["yard"] = serde_json::from_str(OLD).expect("JSON");
    let opened = open(&file.to_string()).expect("an older yard");
    assert_eq!(opened.yard, load(OLD));

    file["yard"]["format_version"] = json!(3);
    file["yard"]["machines"] = json!("told in another way");
    let faults = faults(&file);
    assert_eq!(faults.len(), 1, "{faults:?}");
    assert_eq!(faults[0].path, "yard.format_version");
    assert!(faults[0].to_string().contains("newer version"));
}

#[test]
fn what_is_missing_is_missed() {
    for key in ["format", "format_version", "link", "yard"] {
        let mut file = saved();
        file.as_object_mut().expect("a group").remove(key);
        let [fault] = &faults(&file)[..] else {
            panic!("{key}: {:?}", faults(&file));
        };
        assert_eq!((fault.path.as_str(), &fault.rule), (key, &Rule::Required));
    }
    let mut file = saved();
    file["yard"] = json!([]);
    assert_eq!(faults(&file)[0].path, "yard");
}

/// Looked at before anything is read.
#[test]
fn a_file_that_is_too_large_is_refused_unread() {
    let spaces = " ".repeat(LARGEST_COMPARISON + 1);
    let faults = open(&spaces).expect_err("too large");
    assert_eq!(faults[0].rule, Rule::AtMost(LARGEST_COMPARISON));
    let yard = format!("{DEMO}{}", " ".repeat(LARGEST_FILE));
    let faults = open(&yard).expect_err("too large for a yard");
    assert_eq!(faults[0].rule, Rule::AtMost(LARGEST_FILE));
}

/// However large the yard that was opened: what is saved of it can be opened.
#[test]
fn the_largest_yard_can_be_saved_and_opened() {
    let mut yard: Value = serde_json::from_str(DEMO).expect("JSON");
    let kits = yard["kits"].as_array_mut().expect("kits");
    let kit = kits
        .iter()
        .max_by_key(|kit| kit.to_string().len())
        .expect("a kit")
        .clone();
    for place in kits.len()..1000 {
        let mut another = kit.clone();
        another["id"] = json!(format!("k{place}"));
        kits.push(another);
    }
    let implements = yard["implements"].as_array_mut().expect("implements");
    let implement = implements[0].clone();
    for place in implements.len()..1000 {
        let mut another = implement.clone();
        another["id"] = json!(format!("i{place}"));
        implements.push(another);
    }
    let text = yard.to_string();
    assert!((LARGEST_FILE / 2..=LARGEST_FILE).contains(&text.len()));
    let state = State::of("wren-18".to_owned(), "snow-thrower-150".to_owned());
    let text = made(load(&text), state).text();
    assert!(text.len() > LARGEST_FILE, "indented: {}", text.len());
    assert!(open(&text).is_ok());
}
