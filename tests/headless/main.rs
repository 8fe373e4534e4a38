//! The example that reckons a yard without a browser, run as people run it.

mod ends;
mod program;

use csv::ReaderBuilder;
use farend_bench::large::large;
use farend_core::choice::EVEN;
use farend_core::compare::compare;
use farend_core::fit::{Check, Judgement, gravest};
use farend_core::grid::Selection;
use farend_core::money::Prices;
use farend_core::quantity::Power;
use farend_core::settings::Settings;
use farend_core::standing::Standing;
use farend_core::survey::Asked;
use farend_core::yard::DEMO;
use farend_tests::demo;
use program::{PROGRAMS, file, rows, run, text};
use serde_json::{Value, json};
use std::fs::{self, File};
use std::process::Command;

#[test]
fn each_pair_has_the_rows_of_its_comparison() {
    let rows = rows(&text(run(&["--format", "json"], &file("demo.json", DEMO))));
    let yard = demo();
    let settings = &Settings::default();
    let mut expected = Vec::new();
    for machine in &yard.machines {
        for implement in &yard.implements {
            let all = compare(machine, implement, &yard.kits, settings).expect("own settings");
            let asked = Asked {
                machine,
                implement,
                kits: &yard.kits,
                settings,
                currency: None,
                prices: &Prices::default(),
                weights: EVEN,
            };
            let survey = asked.survey(&all);
            for result in &all.routes {
                let Some(run) = result.run() else { continue };
                let mut items = survey.route(result.route).expect("a route").items.clone();
                items.retain(|item| !matches!(item.check, Check::OilHeat { .. }));
                let delivered = run.delivered.map(Power::to_kilowatts);
                expected.push(json!({
                    "machine": machine.id,
                    "machine_name": machine.name,
                    "implement": implement.id,
                    "implement_name": implement.name,
                    "route": result.route.word(),
                    "kit": run.kit,
                    "standing": run.verdict.likely.word(),
                    "delivered_low_kw": delivered.low,
                    "delivered_kw": delivered.likely,
                    "delivered_high_kw": delivered.high,
                    "need_kw": implement.need.likely.to_kilowatts(),
                    "ratio": run.verdict.ratio,
                    "limit": run.limit.word(),
                    "rotor_rpm": run.rotor.to_rpm(),
                    "fit": match gravest(&items) {
                        Judgement::Pass => "pass",
                        Judgement::Advice => "advice",
                        Judgement::Question => "question",
                        Judgement::Stop => "stop",
                    },
                }));
            }
        }
    }
    let mut without_best = rows.clone();
    for row in &mut without_best {
        row.as_object_mut().expect("an object").remove("best");
    }
    assert_eq!(without_best, expected);
}

/// A route's place among those of its pair: none that can't be hooked up.
fn merit(row: &Value) -> Option<(Standing, f64)> {
    let standing = Standing::ALL.iter().find(|it| row["standing"] == it.word());
    let delivered = row["delivered_kw"].as_f64();
    (row["fit"] != "stop").then_some((*standing?, delivered?))
}

/// The same as in the whole yard on the page.
#[test]
fn the_best_of_a_pair_is_one_that_nothing_stops_and_none_beats() {
    let rows = rows(&text(run(&["--format", "json"], &file("best.json", DEMO))));
    let yard = demo();
    let grid = farend_core::grid::rows(&yard, 0..yard.machines.len(), &Settings::default(), false);
    let mut best = rows.iter().filter(|row| row["best"] == true);
    for (machine, row) in yard.machines.iter().zip(&grid) {
        for (implement, pair) in yard.implements.iter().zip(row) {
            if let Some((route, cell)) = Selection::default().of(pair) {
                let best = best.next().expect("a best route");
                assert_eq!(best["machine"], machine.id);
                assert_eq!(best["implement"], implement.id);
                assert_eq!(best["route"], route.word());
                assert_eq!(best["ratio"], cell.ratio);
            }
        }
    }
    assert_eq!(best.next(), None);
    let pair =
        |a: &Value, b: &Value| a["machine"] == b["machine"] && a["implement"] == b["implement"];
    let mut not_the_most = 0;
    for of_pair in rows.chunk_by(pair) {
        let best: Vec<_> = of_pair.iter().filter(|row| row["best"] == true).collect();
        let possible = of_pair.iter().filter_map(merit).count();
        assert_eq!(best.len(), possible.min(1), "{of_pair:?}");
        for best in best {
            let best = merit(best);
            let standing = |of: Option<(Standing, f64)>| of.map(|it| it.0);
            let beats = |row: &Value| standing(merit(row)) > standing(best);
            assert!(!of_pair.iter().any(beats), "{of_pair:?}");
            let delivered = |row: &Value| row["delivered_kw"].as_f64();
            not_the_most += u32::from(
                of_pair
                    .iter()
                    .any(|row| delivered(row) > best.map(|it| it.1)),
            );
        }
    }
    // Something that delivers more is stopped, or turns too slowly.
    assert!(not_the_most > 0);
}

#[test]
fn the_table_says_what_the_lines_say() {
    let yard = file("table.json", DEMO);
    let lines = text(run(&["--format", "json"], &yard));
    let rows = rows(&lines);
    let table = text(run(&[], &yard));
    let mut reader = ReaderBuilder::new().from_reader(table.as_bytes());
    let headers = reader.headers().expect("headers").clone();
    let places = headers
        .iter()
        .map(|header| lines.find(&format!("\"{header}\":")));
    let places: Vec<_> = places.map(|place| place.expect("a field")).collect();
    assert!(places.is_sorted(), "{headers:?}");
    assert_eq!(places.len(), rows[0].as_object().expect("an object").len());

    let records: Vec<_> = reader.records().map(|it| it.expect("a record")).collect();
    assert_eq!(records.len(), rows.len());
    for (record, row) in records.iter().zip(&rows) {
        for (header, cell) in headers.iter().zip(record) {
            let same = match &row[header] {
                Value::String(text) => text == cell,
                Value::Number(number) => number.as_f64() == cell.parse().ok(),
                Value::Bool(flag) => cell.parse() == Ok(*flag),
                _ => false,
            };
            assert!(same, "{header}: {cell} in {row}");
        }
    }
}

#[test]
fn a_formula_stays_a_text() {
    let yard = file("formula.json", &DEMO.replace("Wren 18", "=18+1"));
    let only = ["--machine", "wren-18"];
    assert!(text(run(&only, &yard)).contains("\"'=18+1, small"));
    let lines = text(run(&[&only[..], &["--format", "json"]].concat(), &yard));
    assert!(lines.contains("\"=18+1, small"));
}

#[test]
fn all_cores_write_the_same_bytes_as_one() {
    let [one, all] = PROGRAMS
        .each_ref()
        .map(|it| fs::read(it).expect("a program"));
    assert!(one != all, "one program is held against itself");
    let yard = file("large.json", &large(60, 24, 24, 1));
    for format in ["csv", "json"] {
        let written = PROGRAMS.each_ref().map(|program| {
            let input = File::open(&yard).expect("the yard");
            let mut command = Command::new(program);
            // Three, so that some core has more to do than another.
            command
                .args(["--format", format, "-"])
                .env("RAYON_NUM_THREADS", "3");
            let output = command.stdin(input).output().expect("it starts");
            text(output)
        });
        assert!(written[0].lines().count() > 1440, "a route for most pairs");
        assert!(written[0] == written[1], "{format}");
    }
}

#[test]
fn machine_and_implement_can_be_chosen() {
    let yard = file("chosen.json", DEMO);
    let all = rows(&text(run(&["--format", "json"], &yard)));
    let both = ["--machine", "heron-68", "--implement", "broom-180"];
    for chosen in [&both[..2], &both[2..], &both[..]] {
        let some = rows(&text(run(&[&["--format", "json"], chosen].concat(), &yard)));
        let is_chosen = |row: &Value| {
            let asked = chosen
                .chunks(2)
                .map(|it| (it[0].trim_start_matches('-'), it[1]));
            asked.into_iter().all(|(key, id)| row[key] == id)
        };
        let expected: Vec<_> = all.iter().filter(|row| is_chosen(row)).cloned().collect();
        assert!(!expected.is_empty() && expected.len() < all.len());
        assert_eq!(some, expected);
    }
}
