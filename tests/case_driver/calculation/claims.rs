//! What a sheet says.

use super::Outcome;
use crate::inputs::{Point, Problem};
use farend_core::claims::{Answer, Finding, Rating, Sheet, Taken, weigh};
use farend_core::settings::Settings;
use farend_core::spread::Spread;
use farend_tests::demo;
use farend_tests::quantity::Quantity;
use serde::de::DeserializeOwned;

/// The arithmetic of every check of a sheet that has its figures, for a machine of the built-in yard.
pub(super) fn sheet(point: &Point<'_>) -> Result<Outcome, Problem> {
    let sheet = Sheet {
        flow: point.get_if_any("flow")?,
        pressure: point.get_if_any("pressure")?,
        hydraulic: point.get_if_any("hydraulic")?,
        taken: word::<Taken>(point, "taken")?,
        engine_speed: point.get_if_any("sheet_speed")?,
        engine: point.get_if_any("engine_power")?,
        rating: word::<Rating>(point, "rating")?,
        pto: point.get_if_any("pto_power")?,
    };
    let settings = Settings {
        engine_speed: point.get_if_any("working_speed")?,
        ..Settings::default()
    };
    let yard = demo();
    let machine = yard
        .machine(point.text("machine")?)
        .ok_or("the demo has no such machine")?;
    Ok(match weigh(&sheet, machine, &settings) {
        Err(faults) => Outcome::Refused(faults),
        Ok(weighed) => Outcome::Results(
            weighed
                .answers
                .into_iter()
                .filter_map(|(_, answer)| match answer {
                    Answer::Found(_, finding) => Some(results(finding)),
                    Answer::Lacks(_) | Answer::NotForThisMachine => None,
                })
                .flatten()
                .collect(),
        ),
    })
}

/// A word of the core, where it is there.
fn word<T: DeserializeOwned>(point: &Point<'_>, name: &str) -> Result<Option<T>, Problem> {
    let word = point.text_if_any(name)?;
    word.map(|word| serde_json::from_value(word.into()))
        .transpose()
        .map_err(|error| error.to_string())
}

fn results(finding: Finding) -> Vec<(&'static str, Quantity)> {
    fn three<T: Copy>(
        names: [&'static str; 3],
        spread: Spread<T>,
        kind: fn(T) -> Quantity,
    ) -> Vec<(&'static str, Quantity)> {
        let values = [spread.low, spread.likely, spread.high].map(kind);
        names.into_iter().zip(values).collect()
    }
    match finding {
        Finding::HydraulicPower {
            comes_to, apart, ..
        } => vec![
            ("comes_to", Quantity::Power(comes_to)),
            ("apart", Quantity::Power(apart)),
        ],
        Finding::EnginePower { needs, .. } => {
            three(["needs_low", "needs", "needs_high"], needs, Quantity::Power)
        }
        Finding::Steering { left, .. } => vec![("without_steering", Quantity::Flow(left))],
        Finding::WorkingSpeed { left, .. } => vec![("at_working_speed", Quantity::Flow(left))],
        Finding::Couplers { at_couplers, .. } => three(
            ["at_couplers_low", "at_couplers", "at_couplers_high"],
            at_couplers,
            Quantity::Pressure,
        ),
        Finding::Relief { opens, .. } => three(
            ["opens_low", "opens", "opens_high"],
            opens,
            Quantity::Pressure,
        ),
        Finding::EngineRating { net, .. } => {
            three(["net_low", "net", "net_high"], net, Quantity::Power)
        }
        Finding::PtoPower {
            claimed,
            net,
            gives,
            ..
        } => {
            let part = Quantity::Ratio(claimed / net.likely);
            let gives = three(["gives_low", "gives", "gives_high"], gives, Quantity::Power);
            [("part_of_net", part)].into_iter().chain(gives).collect()
        }
        Finding::PtoAboveEngine { engine, .. } => vec![("engine", Quantity::Power(engine))],
    }
}
