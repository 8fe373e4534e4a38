//! What holds a route where it is.

use super::chance::Chance;
use super::draw::Asked;
use super::scene::Scene;
use super::{Idea, Question};
use crate::compare::binding;
use crate::drive::{Limit, Rate};
use crate::kit::Kit;
use crate::quantity::{AngularSpeed, Power};
use crate::route::RouteId;
use crate::route::joined::Joined;
use crate::route::part::assemble;
use crate::spread::{Axis, Corner, Scenario};
use crate::stage::{FigureName, StageKind};
use crate::work::need_for;

/// A route that has the same limit wherever its figures lie; that which is aimed at, where one is.
pub(super) fn draw(scene: &Scene<'_>, chance: &mut Chance, aim: Option<u32>) -> Option<Asked> {
    let routes = chance.shuffled(scene.running());
    routes.into_iter().find_map(|(route, kit)| {
        let choices = choices(route);
        let limit = scene.run(route, kit)?.limit;
        let aimed = aim.is_none_or(|aim| HOLDS.get(aim as usize % HOLDS.len()) == Some(&limit));
        if !aimed || !choices.contains(&limit) || !is_sure(scene, route, kit, limit) {
            return None;
        }
        Some(Asked {
            question: Question::Limit {
                route,
                kit: kit.id.clone(),
                choices,
            },
            idea: if route.needs_oil() {
                Idea::FlowIsSpeed
            } else {
                Idea::EveryChangeCosts
            },
        })
    })
}

/// What can hold a route at once. Heat holds one for good, which is another question.
const HOLDS: [Limit; 5] = [
    Limit::Engine,
    Limit::ShaftRating,
    Limit::Flow,
    Limit::Pressure,
    Limit::Implement,
];

/// What can hold a route of its kind, whatever does hold it.
fn choices(route: RouteId) -> Vec<Limit> {
    let can = |limit: &Limit| match limit {
        Limit::ShaftRating => route.has_pto(),
        Limit::Flow | Limit::Pressure => route.needs_oil(),
        _ => true,
    };
    HOLDS.into_iter().filter(can).collect()
}

/// Whether it's the limit at every corner of the figures that aren't known exactly, and of the need.
fn is_sure(scene: &Scene<'_>, route: RouteId, kit: &Kit, limit: Limit) -> bool {
    let Ok(joined) = assemble(route.parts(), scene.hookup(kit)) else {
        return false;
    };
    let need = need_for(scene.implement, &scene.settings);
    let holds = |joined: &Joined, corner: Corner| {
        let most = joined.chain(corner).most().ok();
        let most = most.filter(|(most, _)| most.stall.is_none());
        most.is_some_and(|(most, found)| {
            let rotor = match most.end.rate {
                Rate::Turning(speed) => speed,
                Rate::Flowing(_) => AngularSpeed::ZERO,
            };
            let at = |need: Power| {
                binding(found, (Some(most.arrives()), rotor), scene.implement, need) == limit
            };
            [need.low, need.likely, need.high].into_iter().all(at)
        })
    };
    // The usual corners first: they are few and tell most.
    let mut usual = joined.clone();
    let groups = groups(&joined);
    groups.len() <= MOST_GROUPS
        && usual.corners().into_iter().all(|it| holds(&joined, it))
        && every_corner(&joined, &groups).all(|it| holds(&it, Corner::LIKELY))
}

/// More groups than this have too many corners to be looked at: no route of the six has so many,
/// unless a kit has a dozen steps with ratings that aren't known exactly.
const MOST_GROUPS: usize = 12;

/// Figures that move together: they bear on which of two limits comes first in the same way.
#[derive(Clone, Copy, PartialEq)]
enum Group {
    /// What the engine has left.
    Engine,
    /// What is lost before pressure or rating is reached.
    Before,
    /// What is lost behind the pump: torque, not speed.
    Behind,
    /// One axis of its own.
    Alone(FigureName),
    /// A rating: each for itself.
    Rating(usize),
}

/// The groups of a route's figures that aren't known exactly.
fn groups(joined: &Joined) -> Vec<Group> {
    let mut groups = Vec::new();
    visit(&mut joined.clone(), &mut |group, _, is_open| {
        if is_open && !groups.contains(&group) {
            groups.push(group);
        }
        None
    });
    groups
}

/// A route with its figures at each corner, groups of them moved together.
fn every_corner(joined: &Joined, groups: &[Group]) -> impl Iterator<Item = Joined> {
    (0..1_u32 << groups.len()).map(move |corner| {
        let mut pinned = joined.clone();
        visit(&mut pinned, &mut |group, axis, _| {
            let place = groups.iter().position(|it| *it == group)?;
            let good = corner >> place & 1 == 1;
            let good = if good { Scenario::High } else { Scenario::Low };
            Some(match axis {
                Axis::Burden => good.of_a_burden(),
                _ => good,
            })
        });
        pinned
    })
}

/// Shows the group and the axis of each figure and whether it's open; what is given back is where
/// it's pinned.
fn visit(joined: &mut Joined, at: &mut dyn FnMut(Group, Axis, bool) -> Option<Scenario>) {
    let (mut pump_seen, mut ratings) = (false, 0);
    joined.visit(&mut |stage, name, axis, figure| {
        pump_seen |= stage == Some(StageKind::Pump);
        let group = match name {
            FigureName::EnginePower | FigureName::Driving => Group::Engine,
            FigureName::Efficiency if !pump_seen => Group::Before,
            FigureName::PumpHydroMechanical => Group::Before,
            FigureName::Efficiency
            | FigureName::ValveDrop
            | FigureName::CouplerDrop
            | FigureName::MotorHydroMechanical => Group::Behind,
            FigureName::Rating => {
                ratings += 1;
                Group::Rating(ratings)
            }
            other => Group::Alone(other),
        };
        if let Some(scenario) = at(group, axis, figure.is_open()) {
            figure.pin(scenario);
        }
    });
}
