//! Which route brings how much.

use super::chance::Chance;
use super::draw::Asked;
use super::scene::Scene;
use super::{Idea, Question, Truth};
use crate::compare::{Comparison, Outcome, RouteResult, compare};
use crate::quantity::Power;
use crate::route::RouteId;
use crate::route::part::NoFit;
use crate::spread::Spread;

/// The most routes to put in order, and the least with one that can't be hooked up: this project's
/// judgement.
const MOST: usize = 4;
const LEAST: usize = 3;

/// Routes whose ranges don't touch, and at times one that can't be hooked up. Both a shaft and oil
/// are among them, so that there is something to tell apart.
pub(super) fn draw(scene: &Scene<'_>, chance: &mut Chance) -> Option<Asked> {
    let (machine, implement) = (scene.machine, scene.implement);
    let comparison = compare(machine, implement, scene.kits, &scene.settings).ok()?;
    let with_one_that_cant = chance.flip();
    let mut ranges: Vec<Spread<Power>> = Vec::new();
    let (mut routes, mut cant) = (Vec::new(), None);
    for result in chance.shuffled(comparison.routes.iter().collect()) {
        if lacks_an_end(result) {
            cant.get_or_insert(result.route);
        } else if let Some(run) = result.run()
            && can(scene, result)
            && run.delivered.low > Power::ZERO
            && ranges.iter().all(|other| is_apart(run.delivered, *other))
        {
            ranges.push(run.delivered);
            routes.push(result.route);
        }
    }
    routes.truncate(MOST - usize::from(with_one_that_cant));
    let oil = routes.iter().filter(|route| route.needs_oil()).count();
    if oil == 0 || oil == routes.len() {
        return None;
    }
    routes.extend(cant.filter(|_| with_one_that_cant));
    routes.sort_unstable();
    (routes.len() >= LEAST).then_some(Asked {
        question: Question::Route { routes },
        idea: Idea::ShaftBringsMost,
    })
}

pub(super) fn truth(scene: &Scene<'_>, comparison: &Comparison, routes: &[RouteId]) -> Truth {
    let can = |route: &RouteId| comparison.route(*route).is_some_and(|it| can(scene, it));
    let ranked = comparison.ranked().into_iter().map(|(route, _)| route);
    Truth::Route {
        order: ranked.filter(|it| routes.contains(it) && can(it)).collect(),
        cant: routes.iter().copied().filter(|it| !can(it)).collect(),
    }
}

/// Whether it runs and nothing keeps it from being hooked up.
fn can(scene: &Scene<'_>, result: &RouteResult) -> bool {
    let kit = result.run().and_then(|run| scene.kit(&run.kit));
    kit.is_some_and(|kit| !scene.is_stopped(result.route, kit))
}

/// Whether machine or implement lack what the route goes through, whatever the kit: that can be told
/// from what is known of the two. What only another kind of machine has is no trap, and what stops a
/// kit can't be told before the kit is known.
fn lacks_an_end(result: &RouteResult) -> bool {
    let of_both = |reason: &NoFit| !reason.is_of_kit() && !matches!(reason, NoFit::WrongKind(_));
    matches!(&result.outcome, Outcome::NoFit(reasons) if reasons.iter().all(of_both))
}

fn is_apart(one: Spread<Power>, other: Spread<Power>) -> bool {
    one.low > other.high || other.low > one.high
}
