//! The formulas that a ledger shows hold between the figures that they show: each right-hand side is
//! worked out by a library for expressions and held against its left-hand side.

use exmex::{Express, FlatEx};
use farend_core::chain::Ledger;
use farend_core::formula::{Figure, Formula, Part};
use farend_core::quantity::Temperature;
use farend_core::settings::Settings;
use farend_core::stage::{StageKind, StagePhysics};
use farend_core::units::Quantity;
use farend_tests::{compared, demo};
use std::collections::{BTreeMap, BTreeSet};

/// Relative, of what is added and taken away in a formula.
const ROUNDING: f64 = 1e-9;

/// A figure in SI; shafts turn in revolutions a second but where the symbol is an angular speed.
fn in_si(figure: &Figure) -> f64 {
    match figure.value {
        Quantity::Power(it) => it.to_watts(),
        Quantity::Speed(it) if figure.symbol.starts_with('ω') => it.to_si(),
        Quantity::Speed(it) => it.to_rpm() / 60.0,
        Quantity::Torque(it) => it.to_newton_metres(),
        Quantity::Flow(it) => it.to_si(),
        Quantity::Pressure(it) => it.to_si(),
        Quantity::Displacement(it) => it.to_cubic_centimetres() * 1e-6,
        Quantity::Length(it) | Quantity::Bore(it) => it.to_si(),
        Quantity::Velocity(it) => it.to_si(),
        Quantity::Viscosity(it) => it.to_si(),
        Quantity::Density(it) => it.to_si(),
        Quantity::Ratio(it) | Quantity::Angle(it) => it,
        other => panic!("no formula of a stage has {other:?}"),
    }
}

/// The right-hand side as the library writes it.
fn expression(formula: &Formula) -> String {
    let parts = formula.parts.iter().map(|part| match part {
        Part::Figure(figure) => format!("({})", in_si(figure)),
        Part::Sign(sign) => sign
            .replace("2π", "(2*π)")
            .replace('·', "*")
            .replace('−', "-")
            .replace('²', "^2"),
    });
    parts.collect::<Vec<_>>().join(" ")
}

fn worked_out(formula: &Formula) -> f64 {
    let text = expression(formula);
    let parsed = FlatEx::<f64>::parse(&text).unwrap_or_else(|why| panic!("{text}: {why}"));
    parsed
        .eval(&[])
        .unwrap_or_else(|why| panic!("{text}: {why}"))
}

/// How large a formula's terms are, for those in which they nearly cancel.
fn size(formula: &Formula) -> f64 {
    let figures = formula.parts.iter().filter_map(|part| match part {
        Part::Figure(figure) if figure.value_is_like(&formula.result) => Some(in_si(figure).abs()),
        _ => None,
    });
    figures.fold(in_si(&formula.result).abs(), f64::max)
}

trait Like {
    /// Whether both are of one kind.
    fn value_is_like(&self, other: &Self) -> bool;
}

impl Like for Figure {
    fn value_is_like(&self, other: &Self) -> bool {
        core::mem::discriminant(&self.value) == core::mem::discriminant(&other.value)
    }
}

/// Shows each ledger of the demo yard, with the oil cold, usual and hot.
fn on_each_ledger(mut show: impl FnMut(&Ledger)) {
    let yard = demo();
    for celsius in [0.0, 50.0, 80.0] {
        let settings = Settings {
            oil: Some(Temperature::celsius(celsius)),
            ..Settings::default()
        };
        for machine in &yard.machines {
            for implement in &yard.implements {
                let all = compared(&yard, &machine.id, &implement.id, &settings);
                for run in all.routes.iter().filter_map(|route| route.run()) {
                    show(&run.ledger);
                }
            }
        }
    }
}

#[test]
fn both_sides_of_every_formula_are_the_same() {
    let mut shown: BTreeMap<String, u32> = BTreeMap::new();
    on_each_ledger(|ledger| {
        for passage in &ledger.passages {
            let formulas = passage.formulas(&ledger.at);
            for formula in &formulas {
                let (left, right) = (in_si(&formula.result), worked_out(formula));
                let kind = passage.stage.kind();
                assert!(
                    (left - right).abs() <= ROUNDING * size(formula),
                    "{kind:?}: {} = {} is {left}, not {right}",
                    formula.result.symbol,
                    expression(formula)
                );
                let name = format!("{kind:?} {}", formula.result.symbol);
                *shown.entry(name).or_default() += 1;
            }
        }
    });
    assert!(shown.len() >= 20, "{shown:#?}");
}

/// Nothing that is lost makes an efficiency of more than 1, of a pump that has swung back neither.
#[test]
fn no_efficiency_is_above_1() {
    let mut swung_back = 0;
    on_each_ledger(|ledger| {
        for passage in &ledger.passages {
            for formula in passage.formulas(&ledger.at) {
                let parts = formula.parts.iter();
                let figures = parts.filter_map(|part| match part {
                    Part::Figure(figure) => Some(figure),
                    Part::Sign(_) => None,
                });
                for figure in figures {
                    let kind = passage.stage.kind();
                    let is_efficiency = figure.symbol.starts_with('η');
                    assert!(
                        !is_efficiency || in_si(figure) <= 1.0,
                        "{kind:?}: {figure:?}"
                    );
                    swung_back += u32::from(figure.symbol == "Qₐ");
                }
            }
        }
    });
    assert!(swung_back > 0);
}

/// Every stage says by at least one formula what it hands on or loses.
#[test]
fn every_stage_shows_what_becomes_of_its_power() {
    let mut kinds = BTreeSet::new();
    on_each_ledger(|ledger| {
        for passage in &ledger.passages {
            let formulas = passage.formulas(&ledger.at);
            let gives = passage.gives.power.to_watts();
            let loses = (passage.takes.power - passage.gives.power).to_watts();
            let told = formulas.iter().any(|formula| match formula.result.value {
                Quantity::Power(it) => [gives, loses].contains(&it.to_watts()),
                // Steering takes flow at the pressure that is there.
                Quantity::Flow(_) => passage.stage.kind() == StageKind::Steering,
                _ => false,
            });
            let kind = passage.stage.kind();
            assert!(told || gives == 0.0, "{kind:?}");
            assert!(gives > 0.0 || formulas.is_empty(), "{kind:?}");
            kinds.insert(format!("{kind:?}"));
        }
    });
    assert!(kinds.len() >= 8, "{kinds:?}");
}

/// Velocity, Reynolds number and drop of each hose, couplers and what is left; hoses that are alike
/// are told once.
#[test]
fn hoses_show_how_their_drop_comes_about() {
    on_each_ledger(|ledger| {
        let hoses = |kind| matches!(kind, StageKind::Hoses);
        for passage in ledger.passages.iter().filter(|it| hoses(it.stage.kind())) {
            let formulas = passage.formulas(&ledger.at);
            let symbols: Vec<_> = formulas.iter().map(|it| it.result.symbol).collect();
            let farend_core::stage::Stage::Hoses(pair) = &passage.stage else {
                panic!("not hoses");
            };
            let expected: &[_] = if pair.back == pair.supply {
                &["v", "Re", "Δp₁", "Δp₂", "Δp₃", "P₂"]
            } else {
                &["v", "Re", "Δp₁", "v", "Re", "Δp₂", "Δp₃", "P₂"]
            };
            assert_eq!(symbols, expected);
        }
    });
}
