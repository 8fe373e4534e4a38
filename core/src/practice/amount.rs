//! How much arrives by a route.

use super::chance::Chance;
use super::draw::Asked;
use super::scene::Scene;
use super::{Idea, Misconception, Question, Trap, Truth};
use crate::chain::Ledger;
use crate::compare::Run;
use crate::kit::Kit;
use crate::machine::SteeringShare;
use crate::physics::hydraulic::hydraulic_power;
use crate::quantity::{AngularSpeed, Flow, Power, Pressure};
use crate::route::RouteId;
use crate::settings::Settings;
use crate::spread::Spread;
use crate::stage::Stage;

/// The most that high may be of low, so that a guess can be judged: this project's judgement.
const WIDEST: f64 = 1.7;
/// How far beyond low and high a trap must lie, as a part of the likely value: this project's
/// judgement.
const CLEAR: f64 = 0.05;

/// Half of the time oil is looked for first, else a shaft.
pub(super) fn draw(scene: &Scene<'_>, chance: &mut Chance, aim: Option<u32>) -> Option<Asked> {
    let oil = aim.map(|aim| aim % 2 == 0);
    let routes = chance.shuffled(scene.running());
    let mut wished = routes
        .into_iter()
        .filter(|(route, _)| oil.is_none_or(|oil| route.needs_oil() == oil));
    let (route, kit) = wished.find(|(route, kit)| {
        let run = scene.run(*route, kit);
        run.is_some_and(|run| is_narrow(run.delivered))
    })?;
    Some(Asked {
        question: Question::Amount {
            route,
            kit: kit.id.clone(),
        },
        idea: if route.needs_oil() {
            Idea::PowerIsFlowTimesPressure
        } else {
            Idea::EveryChangeCosts
        },
    })
}

fn is_narrow(delivered: Spread<Power>) -> bool {
    delivered.low > Power::ZERO && delivered.high <= delivered.low * WIDEST
}

pub(super) fn truth(scene: &Scene<'_>, route: RouteId, kit: &Kit) -> Option<Truth> {
    let run = scene.run(route, kit)?;
    let clear = |trap: &Trap| {
        let (low, high) = (run.delivered.low, run.delivered.high);
        let beside = run.delivered.likely * CLEAR;
        trap.gives < low - beside || trap.gives > high + beside
    };
    Some(Truth::Amount {
        delivered: run.delivered,
        traps: traps(scene, route, kit, &run)
            .into_iter()
            .filter(clear)
            .collect(),
    })
}

/// What wrong ideas make of what oil brings; nothing for a shaft.
fn traps(scene: &Scene<'_>, route: RouteId, kit: &Kit, run: &Run) -> Vec<Trap> {
    let Some((relief, flow)) = pump(&run.ledger) else {
        return Vec::new();
    };
    let mut traps = Vec::new();
    let mut add = |misconception, gives: Option<Power>| {
        traps.extend(gives.map(|gives| Trap {
            misconception,
            gives,
        }));
    };
    let arrives = |scene: &Scene<'_>, kit: &Kit| Some(scene.likely(route, kit)?.delivers());
    for power in [
        run.ledger.available,
        scene.engine_at_its_speed(),
        scene.engine_at_rated(),
    ] {
        add(Misconception::EngineAsHydraulic, Some(power));
    }
    if let Some(added) = added(scene, route) {
        // P = (Q + Q_added)·p
        let on_paper = hydraulic_power(relief, flow + added);
        let settings = with_added(scene, added);
        let with_losses = arrives(&Scene { settings, ..*scene }, kit);
        add(Misconception::AddsFlows, Some(on_paper));
        add(Misconception::AddsFlows, with_losses);
    }
    // P = Q·p
    let on_paper = hydraulic_power(relief, flow);
    add(Misconception::ForgetsReturn, Some(on_paper));
    for kit in [with_free_return(kit), with_free_lines(kit)] {
        add(Misconception::ForgetsReturn, arrives(scene, &kit));
    }
    let rotor = &scene.implement.rotor;
    if rotor.is_too_slow(run.rotor) && run.rotor > AngularSpeed::ZERO {
        // P = T·ω_r, T = P/ω
        let at_speed = run.delivered.likely * (rotor.rated / run.rotor);
        add(Misconception::IgnoresSpeed, Some(at_speed));
    }
    traps
}

/// Relief pressure, and the flow that is left for the implement.
fn pump(ledger: &Ledger) -> Option<(Pressure, Flow)> {
    let relief = ledger.passages.iter().find_map(|it| match &it.stage {
        Stage::Pump(pump) => Some(pump.relief.likely),
        _ => None,
    })?;
    let flow = ledger.passages.iter().find_map(|it| match it.stage {
        Stage::Valve(_) => it.takes.rate.flowing().ok(),
        _ => None,
    })?;
    Some((relief, flow))
}

/// A bore so many times as wide takes next to nothing.
const FREE: f64 = 10.0;

/// The kit as it would be if the way back took nothing.
fn with_free_return(kit: &Kit) -> Kit {
    let mut kit = kit.clone();
    if let Some(hoses) = &mut kit.hoses {
        hoses.back.bore = hoses.back.bore * FREE;
        hoses.couplers *= 0.5;
    }
    kit
}

/// The kit as it would be if no line took anything.
fn with_free_lines(kit: &Kit) -> Kit {
    let mut kit = with_free_return(kit);
    if let Some(hoses) = &mut kit.hoses {
        hoses.supply.bore = hoses.supply.bore * FREE;
        hoses.couplers = 0.0;
    }
    kit
}

/// Flow at the engine's speed that isn't the implement's: steering's, where it takes any, and that
/// of other outlets.
fn added(scene: &Scene<'_>, route: RouteId) -> Option<Flow> {
    if route.has_kit_pump() {
        return None;
    }
    let own = scene.settings.own_circuit(scene.machine)?;
    let speed = scene.settings.engine_speed_for(scene.machine);
    let steering = match own.steering {
        SteeringShare::FixedPriority(share) => share.likely,
        SteeringShare::Summed(share) => share.likely * (speed / own.engine_speed),
        SteeringShare::SeparatePump | SteeringShare::LoadSensingPriority => Flow::ZERO,
    };
    let others = scene.machine.circuits.iter();
    let others = others.filter(|other| other.outlet != own.outlet);
    let others = others.map(|other| other.flow.likely * (speed / other.engine_speed));
    let added = others.fold(steering, |all, flow| all + flow);
    (added > Flow::ZERO).then_some(added)
}

/// The settings with a flow at the engine's speed added to the sheet's.
fn with_added(scene: &Scene<'_>, added: Flow) -> Settings {
    let mut settings = scene.settings;
    if let Some(own) = settings.own_circuit(scene.machine) {
        let speed = settings.engine_speed_for(scene.machine);
        let sheet = settings.own.flow.unwrap_or(own.flow.likely);
        settings.own.flow = Some(sheet + added * (own.engine_speed / speed));
    }
    settings
}
