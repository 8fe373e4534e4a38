//! The words of the way from the engine to the rotor, stage by stage.

use crate::number;
use crate::text::say::practice::walk as say;
use crate::text::{items, labels, pair};
use farend_core::chain::Passage;
use farend_core::compare::Run;
use farend_core::drive::{Drive, Rate};
use farend_core::implement::Rotor;
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::sensitivity::Influence;
use farend_core::stage::{StageKind, StagePhysics};
use farend_core::units::{Quantity, UnitSystem};

pub use crate::text::say::practice::walk::*;

/// Where on the way a step lies.
pub fn place(route: RouteId, place: usize, count: usize) -> String {
    say::Place {
        route: labels::route(route),
        place: &number::count(place + 1),
        count: &number::count(count),
    }
    .said()
}

/// What a stage is given.
pub fn takes(passage: &Passage, units: UnitSystem) -> String {
    say::Takes {
        stage: labels::stage_small(passage.stage.kind()),
        power: &number::power(passage.takes.power, units),
        drive: &rate_and_effort(passage.takes, units),
    }
    .said()
}

fn rate_and_effort(drive: Drive, units: UnitSystem) -> String {
    pair(
        &number::shown(drive.rate.quantity(), units),
        &number::shown(drive.effort(), units),
    )
}

/// Guess and truth beside each other.
pub fn result(passage: &Passage, guess: Power, units: UnitSystem) -> String {
    let part = match passage.takes.power > Power::ZERO {
        true => passage.loss / passage.takes.power,
        false => 0.0,
    };
    say::Compared {
        guess: &number::power(guess, units),
        gives: &number::power(passage.gives.power, units),
        drive: &rate_and_effort(passage.gives, units),
        loses: &number::power(passage.loss, units),
        part: &number::percent(part),
    }
    .said()
}

/// Which figure of a stage matters most to what arrives.
pub fn influence(influence: &Influence, units: UnitSystem) -> String {
    let (a, b) = (influence.at_low, influence.at_high);
    let (least, most) = if a < b { (a, b) } else { (b, a) };
    let (least, most) = (Quantity::Power(least), Quantity::Power(most));
    say::Influence {
        figure: labels::figure(influence.figure),
        range: &number::range(least, most, units),
    }
    .said()
}

/// What came of a route.
pub fn arrives(route: RouteId, run: &Run, engine: Power, units: UnitSystem) -> String {
    say::Brings {
        route: labels::route(route),
        power: &number::power(run.delivered.likely, units),
        speed: &number::shown(Quantity::Speed(run.rotor), units),
        part: &number::percent(run.delivered.likely / engine),
    }
    .said()
}

/// The first idea, in figures of this pair.
pub fn flow_times_pressure(run: &Run, engine: Power, units: UnitSystem) -> Option<String> {
    let mut passages = run.ledger.passages.iter();
    let pump = passages.find(|it| it.stage.kind() == StageKind::Pump)?;
    let Rate::Flowing(flow) = pump.gives.rate else {
        return None;
    };
    let here = say::IdeaFlowTimesPressureHere {
        flow: &number::shown(Quantity::Flow(flow), units),
        pressure: &number::shown(pump.gives.effort(), units),
        power: &number::power(pump.gives.power, units),
        engine: &number::power(engine, units),
    };
    Some(here.said())
}

/// The second idea.
pub fn flow_is_speed(run: &Run, rotor: &Rotor, units: UnitSystem) -> String {
    let speed = |speed| number::shown(Quantity::Speed(speed), units);
    say::IdeaFlowIsSpeedHere {
        reached: &speed(run.rotor),
        rated: &speed(rotor.rated),
        lowest: &speed(rotor.lowest),
    }
    .said()
}

/// The third idea: what each way loses of what it takes from the engine.
pub fn change_costs(shaft: Option<&Run>, oil: Option<&Run>, units: UnitSystem) -> String {
    let figures = |run: &Run| {
        let (taken, arrives) = (run.ledger.taken(), run.delivered.likely);
        [taken - arrives, taken].map(|power| number::power(power, units))
    };
    let shaft = shaft.map(figures).map(|[lost, taken]| {
        let told = say::IdeaChangeCostsShaft {
            lost: &lost,
            taken: &taken,
        };
        told.said()
    });
    let oil = oil.map(figures).map(|[lost, taken]| {
        let told = say::IdeaChangeCostsOil {
            lost: &lost,
            taken: &taken,
        };
        told.said()
    });
    let told: Vec<_> = [shaft, oil].into_iter().flatten().collect();
    say::idea_change_costs_here(&items(&told))
}
