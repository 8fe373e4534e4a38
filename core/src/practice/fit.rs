//! Whether a route with a kit can be hooked up.

use super::chance::Chance;
use super::draw::Asked;
use super::scene::Scene;
use super::{Fits, Idea, Question, Truth};
use crate::compare::Outcome;
use crate::fit::{Check, Item, Judgement, Look, gravest, missing};
use crate::kit::Kit;
use crate::route::RouteId;
use crate::route::part::NoFit;
use crate::thermal::{Heat, heat_at_job};

/// A route with a kit of which it's sure whether they fit; so as is aimed at, where that is.
pub(super) fn draw(scene: &Scene<'_>, chance: &mut Chance, aim: Option<u32>) -> Option<Asked> {
    let kits = scene.kits.iter();
    let ways = kits.flat_map(|kit| kit.routes.iter().map(move |route| (*route, kit)));
    let ways = chance.shuffled(ways.collect());
    let (route, kit) = ways.into_iter().find(|(route, kit)| {
        // How warm oil gets is never a stop nor a question.
        let items = items(scene, *route, kit, None);
        let fits = fits(&items);
        let aimed = |aim| Fits::ALL.get(aim as usize % Fits::ALL.len()) == Some(&fits);
        items.iter().all(is_fair) && aim.is_none_or(aimed)
    })?;
    Some(Asked {
        question: Question::Fit {
            route,
            kit: kit.id.clone(),
            choices: Fits::ALL.to_vec(),
        },
        idea: Idea::ItMustHookUp,
    })
}

/// What only another kind of machine has is no trap; what is lifted with luck only is no answer.
fn is_fair(item: &Item) -> bool {
    !matches!(
        (item.check, item.judgement),
        (Check::Missing(NoFit::WrongKind(_)), _) | (Check::Lift { .. }, Judgement::Advice)
    )
}

pub(super) fn truth(scene: &Scene<'_>, route: RouteId, kit: &Kit) -> Truth {
    let heat = heat_at_job(route, scene.hookup(kit));
    let items = items(scene, route, kit, heat.as_ref());
    Truth::Fit {
        fits: fits(&items),
        items,
    }
}

fn fits(items: &[Item]) -> Fits {
    match gravest(items) {
        Judgement::Pass | Judgement::Advice => Fits::Fits,
        Judgement::Question => Fits::AskFirst,
        Judgement::Stop => Fits::Cant,
    }
}

fn items(scene: &Scene<'_>, route: RouteId, kit: &Kit, heat: Option<&Heat>) -> Vec<Item> {
    let outcome = scene.with(route, kit);
    let Outcome::Runs(run) = &outcome else {
        return missing(&outcome);
    };
    Look {
        run: Some(run),
        heat,
        ..Look::before(route, scene.hookup(kit), kit)
    }
    .items()
}
