//! The built-in yard as a whole.

use super::{Outcome, settings, three};
use crate::inputs::{Point, Problem};
use farend_core::compare::Run;
use farend_core::physics::oil::Grade;
use farend_core::route::RouteId;
use farend_core::settings::Settings;
use farend_core::spread::{Corner, Scenario};
use farend_core::stage::{StageKind, StagePhysics};
use farend_core::yard::DEMO;
use farend_tests::quantity::Quantity;
use farend_tests::{compared, demo, load, run};
use serde_json::{Value, json};

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

/// What air and driving take of an engine: the likely figures, and all three of driving and of
/// what is left.
pub(super) fn budget(point: &Point<'_>) -> Result<Outcome, Problem> {
    let settings = settings::given(point)?;
    let (machine, implement) = (point.text("machine")?, point.text("implement")?);
    let yard = demo();
    let (Some(it), Some(_)) = (yard.machine(machine), yard.implement(implement)) else {
        return Err("the demo has no such pair".to_owned());
    };
    if let Err(faults) = settings.check(it) {
        return Err(format!("{faults:?}"));
    }
    let budget = compared(&yard, machine, implement, &settings).budget;
    let driving = budget.driving.ok_or("the mass isn't known")?;
    let left = |scenario| Quantity::Power(budget.left(Corner::all(scenario)));
    Ok(Outcome::Results(vec![
        ("net", Quantity::Power(budget.net.likely)),
        ("air", Quantity::Ratio(budget.air)),
        ("driving_low", Quantity::Power(driving.low)),
        ("driving", Quantity::Power(driving.likely)),
        ("driving_high", Quantity::Power(driving.high)),
        ("left_low", left(Scenario::Low)),
        ("left", left(Scenario::Likely)),
        ("left_high", left(Scenario::High)),
    ]))
}

/// The oil of a route of the built-in yard: its own, or another grade.
pub(super) fn oil_in_route(point: &Point<'_>) -> Result<Outcome, Problem> {
    let word = point.text("grade")?;
    let grade = Grade::ALL.iter().find(|grade| grade.word() == word);
    if grade.is_none() && word != "own" {
        return Err(format!("{word} is no grade"));
    }
    let settings = Settings {
        grade: grade.copied(),
        ..settings::given(point)?
    };
    let word = point.text("route")?;
    let mut routes = RouteId::ALL.iter();
    let route = routes
        .find(|route| route.word() == word)
        .ok_or_else(|| format!("{word} is no route"))?;
    let yard = demo();
    let comparison = compared(&yard, "curlew-46", "snow-thrower-150", &settings);
    let ledger = comparison
        .route(*route)
        .and_then(|result| result.run())
        .map(|run| &run.ledger)
        .ok_or("the route can't be had")?;
    Ok(Outcome::Results(vec![
        ("viscosity", Quantity::Viscosity(ledger.at.viscosity)),
        ("density", Quantity::Density(ledger.at.density)),
    ]))
}

/// Net power of an engine of which a yard file says gross power only.
pub(super) fn gross_engine(point: &Point<'_>) -> Result<Outcome, Problem> {
    let mut yard: Value = serde_json::from_str(DEMO).map_err(|error| error.to_string())?;
    let engine = &mut yard["machines"][0]["engine"];
    engine["net_kw"] = Value::Null;
    engine["gross_kw"] = json!(point.number("gross_kilowatts")?);
    let engine = &load(&yard.to_string()).machines[0].engine;
    Ok(three(engine.net, Quantity::Power))
}
