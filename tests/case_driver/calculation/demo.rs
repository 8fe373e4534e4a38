//! The built-in yard as a whole.

use super::Outcome;
use crate::inputs::{Point, Problem};
use farend_core::compare::Run;
use farend_core::route::RouteId;
use farend_core::stage::{StageKind, StagePhysics};
use farend_tests::quantity::Quantity;
use farend_tests::{demo, run};

fn route(point: &Point<'_>, name: &str) -> Result<Run, Problem> {
    let word = point.text(name)?;
    let route = RouteId::ALL
        .iter()
        .find(|route| route.word() == word)
        .ok_or_else(|| format!("{word} is no route"))?;
    let yard = demo();
    run(
        &yard,
        point.text("machine")?,
        point.text("implement")?,
        *route,
    )
    .ok_or_else(|| format!("{word} can't be had"))
}

/// What one route delivers over what another does.
pub(super) fn delivered_ratio(point: &Point<'_>) -> Result<Outcome, Problem> {
    let [route, against] = ["route", "against"].map(|name| route(point, name));
    let ratio = route?.delivered.likely / against?.delivered.likely;
    Ok(Outcome::Results(vec![("ratio", Quantity::Ratio(ratio))]))
}

/// What reaches the hoses and couplers.
pub(super) fn at_couplers(point: &Point<'_>) -> Result<Outcome, Problem> {
    let run = route(point, "route")?;
    let hoses = run
        .ledger
        .passages
        .iter()
        .find(|passage| passage.stage.kind() == StageKind::Hoses)
        .ok_or("this route has no hoses")?;
    Ok(Outcome::Results(vec![(
        "power",
        Quantity::Power(hoses.takes.power),
    )]))
}
