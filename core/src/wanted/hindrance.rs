//! What is in the way of a route, found by lifting one limit after another.

use super::lift::{Lift, lifts, most_flow};
use super::outfit::{Draft, at_wish, find, shafts};
use super::scene::{FEW_LOOKS, Scene};
use super::sizes::motors;
use crate::chain::Ledger;
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use crate::quantity::{AngularSpeed, Displacement, Flow, Power, Pressure, Torque};
use crate::route::part::NoFit;
use crate::stage::Stage;
use crate::stage::gear::GearRole;
use libm::log;

/// Why no setting of a route, nor any of the common sizes of its kit, brings it to a standing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Hindrance {
    /// It can't be hooked up: what is missing is the machine's, the implement's or a whole kit.
    NoFit(NoFit),
    /// The engine.
    EngineTooWeak {
        /// At this speed.
        at: AngularSpeed,
        /// Net power that it would need.
        needs: Power,
        /// What it has.
        has: Power,
    },
    /// A shaft of the machine or the implement.
    ShaftTooWeak {
        /// Which.
        shaft: GearRole,
        /// Torque that it would have to bear.
        needs: Torque,
        /// What it may.
        bears: Torque,
    },
    /// The motor's highest flow.
    MotorFlow {
        /// What would have to pass.
        needs: Flow,
        /// What may.
        highest: Flow,
        /// The common size nearest to the motor's that does it with the same limits, where one does.
        instead: Option<Displacement>,
    },
    /// The motor's highest pressure.
    MotorPressure {
        /// What it would have to bear.
        needs: Pressure,
        /// What it may.
        highest: Pressure,
        /// The common size nearest to the motor's that does it with the same limits, where one does.
        instead: Option<Displacement>,
    },
    /// The common sizes of boxes, pumps and hoses, with the kit's lengths and couplers: settings may
    /// do it still. Where those don't either, nothing was found within the flows and pressures that
    /// can be set and the rotor's speeds, even with all other limits lifted.
    NoSize,
}

/// A draft with limits lifted, and the machine and the implement that it is for.
struct Lifted {
    draft: Draft,
    machine: Machine,
    implement: Implement,
}

fn lifted(scene: &Scene<'_>, kit: &Kit, lift: Lift) -> Option<Lifted> {
    let machine = lift.machine(scene.machine);
    let implement = lift.implement(scene.implement);
    let with = Scene {
        machine: &machine,
        implement: &implement,
        settings: lift.settings(scene.settings),
        looks: FEW_LOOKS,
        ..*scene
    };
    let draft = find(&with, kit)?;
    Some(Lifted {
        draft,
        machine,
        implement,
    })
}

/// All that is in the way. `kit` is the one to begin with.
pub(super) fn hindrances(scene: &Scene<'_>, kit: &Kit) -> Vec<Hindrance> {
    if let Some(too_large) = too_large_a_motor(scene, kit) {
        return vec![too_large];
    }
    let found = lifts(scene)
        .into_iter()
        .find_map(|lift| Some((lift, lifted(scene, kit, lift)?)));
    let Some((lift, found)) = found else {
        return vec![Hindrance::NoSize];
    };
    let found = match lift.pressure {
        Some(pressure) => least_pressure(scene, kit, lift, pressure).unwrap_or(found),
        None => found,
    };
    let all = exceeded(scene, kit, lift, &found).unwrap_or_default();
    if all.is_empty() {
        vec![Hindrance::NoSize]
    } else {
        all
    }
}

/// A motor that even the most flow that can be set turns too slowly.
///
/// Equation: Q = V·ω_min/2π. Units: SI. Source: definition of displacement; nothing leaks.
fn too_large_a_motor(scene: &Scene<'_>, kit: &Kit) -> Option<Hindrance> {
    let motor = scene.implement.motor.as_ref();
    let motor = motor.filter(|_| scene.route.needs_oil())?;
    // Q = V·ω_min/2π
    let needs = motor.displacement * (scene.implement.rotor.lowest / motor.ratio);
    (needs > most_flow()).then(|| Hindrance::MotorFlow {
        needs,
        highest: motor.highest_flow.min(most_flow()),
        instead: another(scene, kit),
    })
}

/// The lowest of the motor's highest pressures with which it can be done, to within a hundredth of
/// what it is short of: a motor for more pressure leaks less at any.
fn least_pressure(scene: &Scene<'_>, kit: &Kit, lift: Lift, most: Pressure) -> Option<Lifted> {
    let own = scene.implement.motor.as_ref()?.highest_pressure;
    let (mut without, mut with) = (own, most);
    let mut found = None;
    for _ in 0..HALVINGS {
        let middle = without + (with - without) * 0.5;
        let pressure = Some(middle);
        match lifted(scene, kit, Lift { pressure, ..lift }) {
            None => without = middle,
            some => (with, found) = (middle, some),
        }
    }
    found
}

/// Halvings by which a hundredth is reached.
const HALVINGS: u32 = 7;

/// The limits that a draft exceeds.
fn exceeded(scene: &Scene<'_>, kit: &Kit, lift: Lift, found: &Lifted) -> Option<Vec<Hindrance>> {
    let with = Scene {
        machine: &found.machine,
        implement: &found.implement,
        ..*scene
    };
    let (ledger, needs) = at_wish(&with, &found.draft)?;
    let at = ledger.passages.first()?.takes.rate.turning().ok()?;
    let has = scene.settings.net_at(scene.machine, at).likely;
    let mut all = Vec::new();
    if needs > has {
        all.push(Hindrance::EngineTooWeak { at, needs, has });
    }
    all.extend(shafts_too_weak(scene, &found.draft.kit, &ledger));
    let instead = || match lift.engine {
        // Another motor makes no engine stronger.
        true => None,
        false => another(scene, kit),
    };
    if let (Some(own), Some(other)) = (&scene.implement.motor, &found.implement.motor) {
        let passes = ledger.passages.iter().find_map(|it| match it.stage {
            Stage::Motor(_) => it.takes.rate.flowing().ok(),
            _ => None,
        });
        if let Some(needs) = passes.filter(|flow| *flow > own.highest_flow) {
            all.push(Hindrance::MotorFlow {
                needs,
                highest: own.highest_flow,
                instead: instead(),
            });
        }
        if other.highest_pressure > own.highest_pressure {
            all.push(Hindrance::MotorPressure {
                needs: other.highest_pressure,
                highest: own.highest_pressure,
                instead: instead(),
            });
        }
    }
    Some(all)
}

/// Shafts of the machine and the implement that a ledger asks too much of.
fn shafts_too_weak(scene: &Scene<'_>, kit: &Kit, ledger: &Ledger) -> Vec<Hindrance> {
    let own = scene.with(kit).best();
    let own = own.into_iter().flat_map(|own| own.joined.stages);
    let ratings = own.filter_map(|stage| match stage {
        Stage::Gear(gear) => Some(gear.rating),
        _ => None,
    });
    ratings
        .zip(shafts(ledger))
        .filter_map(|(rating, (shaft, needs))| {
            let bears = rating?.0.likely;
            (needs > bears).then_some(Hindrance::ShaftTooWeak {
                shaft,
                needs,
                bears,
            })
        })
        .collect()
}

/// The common size of motor nearest to the implement's that does it with the same limits.
fn another(scene: &Scene<'_>, kit: &Kit) -> Option<Displacement> {
    let own = scene.implement.motor.as_ref()?.displacement;
    let away = |size: &Displacement| log(*size / own).abs();
    let mut sizes: Vec<_> = motors().collect();
    sizes.sort_by(|a, b| away(a).total_cmp(&away(b)));
    sizes.into_iter().find(|size| {
        let mut implement = scene.implement.clone();
        if let Some(motor) = &mut implement.motor {
            motor.displacement = *size;
        }
        let with = Scene {
            implement: &implement,
            looks: FEW_LOOKS,
            ..*scene
        };
        find(&with, kit).is_some()
    })
}
