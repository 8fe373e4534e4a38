//! Whether a sheet can be so.

use super::chance::Chance;
use super::draw::Asked;
use super::scene::Scene;
use super::{Idea, Question, Truth};
use crate::claims::{Answer, Check, Finding, ROUNDING, Rating, Sheet, Weighed, Weight, weigh};
use crate::machine::{Circuit, Machine, SteeringShare};
use crate::physics::hydraulic::hydraulic_power;
use crate::quantity::{Flow, Power, Pressure};
use crate::spread::Spread;

/// What can be wrong with a sheet; nothing is one of them.
const FLAWS: [Option<Check>; 5] = [
    Some(Check::HydraulicPower),
    Some(Check::EnginePower),
    Some(Check::Steering),
    Some(Check::PtoPower),
    None,
];

/// How far beyond a check's own tolerance a flaw is at the least: this project's judgement.
const BEYOND: f64 = 1.05;

/// A sheet of the machine with one flaw or none: that which is aimed at, else one that the machine
/// allows.
pub(super) fn draw(scene: &Scene<'_>, chance: &mut Chance, aim: Option<u32>) -> Option<Asked> {
    let circuit = scene.settings.own_circuit(scene.machine)?;
    let choices = choices(scene.machine, circuit);
    let aimed = |aim: u32| FLAWS.get(aim as usize % FLAWS.len()).copied();
    let flaws = match aim {
        Some(aim) => aimed(aim).into_iter().collect(),
        None => chance.shuffled(FLAWS.to_vec()),
    };
    let honest = honest(scene.machine, circuit);
    // From a fifth too much to three fifths.
    let excess = 1.2 + 0.05 * f64::from(chance.below(9));
    let sheet = flaws.into_iter().find_map(|flaw| {
        let sheet = match flaw {
            Some(flaw) => flawed(scene, circuit, honest, flaw, excess)?,
            None => honest,
        };
        let weighed = weigh(&sheet, scene.machine, &scene.settings).ok()?;
        (choices.contains(&flaw) && is_sure(&weighed, circuit, flaw)).then_some(sheet)
    })?;
    Some(Asked {
        question: Question::Sheet { sheet, choices },
        idea: Idea::FiguresBelongTogether,
    })
}

pub(super) fn truth(scene: &Scene<'_>, sheet: &Sheet) -> Option<Truth> {
    let weighed = weigh(sheet, scene.machine, &scene.settings).ok()?;
    Some(Truth::Sheet {
        flaw: flaw(&weighed),
        weighed,
    })
}

/// The first check that a sheet doesn't stand.
fn flaw(weighed: &Weighed) -> Option<Check> {
    let is_wrong = |answer: &Answer| matches!(answer, Answer::Found(Weight::Wrong, _));
    let mut answers = weighed.answers.iter();
    answers.find_map(|(check, answer)| is_wrong(answer).then_some(*check))
}

/// What can be wrong with a sheet of such a machine, whatever is.
fn choices(machine: &Machine, circuit: &Circuit) -> Vec<Option<Check>> {
    let can = |flaw: &Option<Check>| match flaw {
        Some(Check::Steering) => steering(circuit).is_some(),
        Some(Check::PtoPower) => machine.first_pto(false).is_some(),
        _ => true,
    };
    FLAWS.into_iter().filter(can).collect()
}

/// What steering takes at the speed of the yard's flow.
fn steering(circuit: &Circuit) -> Option<Spread<Flow>> {
    match circuit.steering {
        SteeringShare::FixedPriority(share) | SteeringShare::Summed(share) => Some(share),
        SteeringShare::SeparatePump | SteeringShare::LoadSensingPriority => None,
    }
}

/// As sheets are written: whole litres and bar, tenths of a kilowatt.
fn litres(flow: Flow) -> Flow {
    Flow::litres_per_minute(flow.to_litres_per_minute().round())
}

fn bar(pressure: Pressure) -> Pressure {
    Pressure::bar(pressure.to_bar().round())
}

fn tenths(power: Power) -> Power {
    Power::kilowatts((power.to_kilowatts() * 10.0).round() / 10.0)
}

/// What an honest sheet says of the machine.
fn honest(machine: &Machine, circuit: &Circuit) -> Sheet {
    let taken = steering(circuit).map_or(Flow::ZERO, |share| share.likely);
    let engine = &machine.engine;
    let pto = machine.first_pto(false).map(|pto| {
        let net = engine.net_at(pto.engine_speed).likely;
        net * pto.train(engine).efficiency.likely
    });
    let sheet = Sheet {
        pressure: Some(bar(circuit.relief.likely)),
        engine: Some(tenths(engine.net.likely)),
        rating: Some(Rating::Net),
        pto: pto.map(tenths),
        ..Sheet::default()
    };
    with_flow(sheet, circuit.flow.likely - taken)
}

/// With a flow, and the hydraulic power that goes with it.
fn with_flow(sheet: Sheet, flow: Flow) -> Sheet {
    let flow = litres(flow);
    let hydraulic = sheet
        .pressure
        .map(|pressure| hydraulic_power(pressure, flow));
    Sheet {
        flow: Some(flow),
        hydraulic: hydraulic.map(tenths),
        ..sheet
    }
}

/// An honest sheet with one thing made wrong.
fn flawed(
    scene: &Scene<'_>,
    circuit: &Circuit,
    honest: Sheet,
    flaw: Check,
    excess: f64,
) -> Option<Sheet> {
    Some(match flaw {
        Check::HydraulicPower => {
            let more = honest.hydraulic? * excess;
            // The engine's power is what is mistaken for it.
            let hydraulic = honest
                .engine
                .filter(|engine| *engine > more)
                .unwrap_or(more);
            Sheet {
                hydraulic: Some(tenths(hydraulic)),
                ..honest
            }
        }
        Check::Steering => with_flow(honest, circuit.flow.likely),
        Check::EnginePower => {
            let weighed = weigh(&honest, scene.machine, &scene.settings).ok()?;
            let times = weighed
                .answers
                .iter()
                .find_map(|(_, answer)| match answer {
                    Answer::Found(_, Finding::EnginePower { needs, net, .. }) => {
                        Some(net.high / needs.low)
                    }
                    _ => None,
                })?;
            with_flow(honest, honest.flow? * (times * excess))
        }
        Check::PtoPower => {
            // What reaches the PTO of all that the engine has is less than that.
            let most = honest.pto?.max(honest.engine?);
            Sheet {
                pto: Some(tenths(most * excess)),
                ..honest
            }
        }
        _ => return None,
    })
}

/// Whether just this is wrong, and clearly, and all the rest holds. Above the pressure at which its
/// relief valve begins to open every sheet is that gives the relief pressure.
fn is_sure(weighed: &Weighed, circuit: &Circuit, flaw: Option<Check>) -> bool {
    weighed.answers.iter().all(|(check, answer)| match answer {
        Answer::Found(Weight::Wrong, finding) => Some(*check) == flaw && is_clear(finding, circuit),
        Answer::Found(weight, _) => {
            Some(*check) != flaw && (*weight == Weight::Holds || *check == Check::Relief)
        }
        Answer::Lacks(_) | Answer::NotForThisMachine => Some(*check) != flaw,
    })
}

/// Whether a flaw is one wherever the figures lie that aren't known exactly.
fn is_clear(finding: &Finding, circuit: &Circuit) -> bool {
    let beyond = |claimed: Power, most: Power| claimed > most * ((1.0 + ROUNDING) * BEYOND);
    match *finding {
        Finding::HydraulicPower {
            claimed, comes_to, ..
        } => beyond(claimed, comes_to),
        Finding::EnginePower { needs, net, .. } => beyond(needs.low, net.high),
        Finding::PtoPower { claimed, gives, .. } => beyond(claimed, gives.high),
        Finding::PtoAboveEngine { claimed, engine } => beyond(claimed, engine),
        Finding::Steering { claimed, .. } => steering(circuit).is_some_and(|share| {
            // The most that can be left, were steering to take the least.
            let most = circuit.flow.high - share.low;
            claimed > most * ((1.0 + ROUNDING) * BEYOND)
        }),
        _ => false,
    }
}
