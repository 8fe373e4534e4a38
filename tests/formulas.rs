//! The formulas that a ledger shows hold between the figures that they show.

use farend_core::chain::Passage;
use farend_core::formula::{Figure, Part};
use farend_core::route::RouteId;
use farend_core::stage::{StageKind, StagePhysics};
use farend_core::units::{Quantity, UnitSystem};
use farend_tests::parts::Parts;

/// The stage of a kind in the tractor's own hydraulics, with all figures of its formulas.
fn shown(kind: StageKind) -> (Passage, usize, Vec<Figure>) {
    let run = Parts::of("curlew-46", "snow-thrower-150").route(RouteId::MachineHydraulics);
    let ledger = run.expect("it fits").ledger;
    let mut passages = ledger.passages.into_iter();
    let passage = passages
        .find(|it| it.stage.kind() == kind)
        .expect("the stage");
    let formulas = passage
        .stage
        .formulas(passage.takes, passage.gives, &ledger.at);
    let figures = formulas.iter().flat_map(|formula| {
        let parts = formula.parts.iter().filter_map(|part| match part {
            Part::Figure(figure) => Some(*figure),
            Part::Sign(_) => None,
        });
        core::iter::once(formula.result).chain(parts)
    });
    let figures = figures.collect();
    (passage, formulas.len(), figures)
}

fn value(figures: &[Figure], symbol: &str) -> f64 {
    let figure = figures.iter().find(|it| it.symbol == symbol);
    let figure: &Figure = figure.expect("the figure");
    assert!(matches!(figure.value, Quantity::Ratio(_)));
    figure.value.shown_in(UnitSystem::Metric).0
}

/// P₂ = P₁·ηv·ηhm (ISO 4391 sense).
#[test]
fn a_motors_two_efficiencies_make_its_power() {
    let (passage, _, figures) = shown(StageKind::Motor);
    let both = value(&figures, "ηv") * value(&figures, "ηhm");
    let hands_on = passage.gives.power / passage.takes.power;
    assert!((both - hands_on).abs() < 1e-9, "{both}, not {hands_on}");
}

/// Velocity, Reynolds number, both hoses, couplers and what is left.
#[test]
fn hoses_show_how_their_drop_comes_about() {
    let (_, count, figures) = shown(StageKind::Hoses);
    assert!(count >= 5, "{count}");
    assert!(figures.iter().any(|it| it.symbol == "Re"));
}
