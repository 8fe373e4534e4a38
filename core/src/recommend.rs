//! What to tell the customer: which route, why, and what else it needs. Made from the results, so
//! that it can't contradict them.

use crate::choice::{Weighed, Weight, Weights, Wish, best};
use crate::compare::Comparison;
use crate::fit::{Item, Judgement, gravest};
use crate::quantity::Time;
use crate::route::RouteId;
use crate::seat::{LoaderUse, View};
use crate::standing::Standing;
use crate::survey::{Running, Survey};

/// Which route to take.
#[derive(Clone, Debug, PartialEq)]
pub enum Advice {
    /// This one.
    Take(RouteId),
    /// Any of these: they come out equal.
    Equal(Vec<RouteId>),
    /// None of those there: the one that comes nearest, if any, and what is in its way.
    None(Option<(RouteId, Obstacle)>),
}

impl Advice {
    /// The route to take; the first where several are equal.
    pub fn route(&self) -> Option<RouteId> {
        match self {
            Self::Take(route) => Some(*route),
            Self::Equal(routes) => routes.first().copied(),
            Self::None(_) => None,
        }
    }
}

/// What keeps a route from being recommended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Obstacle {
    /// It does the work, and something keeps it from being hooked up.
    Stops,
    /// It brings too little.
    TooWeak(Standing),
}

/// Why the route is the one to take.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reason {
    /// What arrives over what is needed, and what that means.
    Power {
        /// Delivered over needed.
        ratio: f64,
        /// How it fares for good.
        standing: Standing,
    },
    /// It brings so many times what the best route of the other kind, shaft or oil, does.
    MoreThan {
        /// That other route.
        route: RouteId,
        /// How many times.
        times: f64,
    },
    /// Where the driver looks.
    View(View),
    /// Whether the wheels go over the work before it's done.
    DrivesOver(bool),
    /// What becomes of the loader.
    Loader(LoaderUse),
    /// Time to hook it up.
    HooksUp(Time),
    /// It's the cheapest of those that do the work.
    Cheapest(f64),
}

/// What to tell the customer.
#[derive(Clone, Debug, PartialEq)]
pub struct Recommendation {
    /// Which route.
    pub advice: Advice,
    /// The reasons, three at most, the weightiest first; those of the first route where several
    /// are equal.
    pub reasons: Vec<Reason>,
    /// What speaks against that route, by what matters to the user.
    pub drawbacks: Vec<Reason>,
    /// What that route needs beside, as far as it's known.
    pub needs: Vec<Item>,
    /// What must be asked before.
    pub questions: Vec<Item>,
}

/// The most reasons that are given.
const REASONS: usize = 3;

/// From how far a wish is met that speaks for a route, else against it: this project's judgement.
const MET: f64 = 0.5;

/// From how many times as much it's worth saying: this project's judgement.
const WORTH_SAYING: f64 = 1.2;

/// Makes the recommendation.
pub fn recommend(comparison: &Comparison, survey: &Survey, weights: Weights) -> Recommendation {
    let equal = best(&survey.weighed);
    let Some(first) = equal.first() else {
        return Recommendation {
            advice: Advice::None(nearest(comparison, survey)),
            reasons: Vec::new(),
            drawbacks: Vec::new(),
            needs: Vec::new(),
            questions: Vec::new(),
        };
    };
    let of = |judgement| {
        let items = survey.route(first.route).map(|it| it.items.iter());
        let items = items.into_iter().flatten();
        items.filter(move |it| it.judgement == judgement).copied()
    };
    Recommendation {
        advice: match equal {
            [one] => Advice::Take(one.route),
            _ => Advice::Equal(equal.iter().map(|it| it.route).collect()),
        },
        reasons: reasons(comparison, survey, first, weights),
        drawbacks: drawbacks(survey, first, weights),
        needs: of(Judgement::Advice).collect(),
        questions: of(Judgement::Question).collect(),
    }
}

/// Of the routes that run the one that brings most, and what is in its way: one that does the work
/// and is stopped before one that is too weak.
fn nearest(comparison: &Comparison, survey: &Survey) -> Option<(RouteId, Obstacle)> {
    let ranked = comparison.ranked();
    let stopped = ranked.iter().find(|(route, run)| {
        let items = survey.route(*route).map(|it| it.items.as_slice());
        run.verdict.likely >= Standing::Slower
            && gravest(items.unwrap_or_default()) == Judgement::Stop
    });
    match stopped {
        Some((route, _)) => Some((*route, Obstacle::Stops)),
        None => {
            let (route, _) = ranked.first()?;
            let running = running_of(survey, *route)?;
            Some((*route, Obstacle::TooWeak(running.for_good)))
        }
    }
}

fn reasons(
    comparison: &Comparison,
    survey: &Survey,
    first: &Weighed,
    weights: Weights,
) -> Vec<Reason> {
    let run = |route: RouteId| comparison.route(route)?.run();
    let (Some(running), Some(own)) = (running_of(survey, first.route), run(first.route)) else {
        return Vec::new();
    };
    let mut reasons = vec![Reason::Power {
        ratio: own.verdict.ratio,
        standing: running.for_good,
    }];
    let ranked = comparison.ranked();
    let of_other_kind = ranked
        .iter()
        .find(|(route, _)| route.needs_oil() != first.route.needs_oil());
    reasons.extend(of_other_kind.and_then(|(route, other)| {
        let times = own.delivered.likely / other.delivered.likely;
        (times >= WORTH_SAYING && times.is_finite()).then_some(Reason::MoreThan {
            route: *route,
            times,
        })
    }));
    let mut wishes: Vec<_> = that_matter(first, weights)
        .filter(|(_, meets, _)| *meets >= MET)
        .collect();
    // A stable sort: where two weigh the same they stay in the order of the wishes.
    wishes
        .sort_by(|(_, a, of_a), (_, b, of_b)| (b * of_b.points()).total_cmp(&(a * of_a.points())));
    reasons.extend(
        wishes
            .into_iter()
            .filter_map(|(wish, meets, _)| told(wish, meets, running)),
    );
    reasons.truncate(REASONS);
    reasons
}

/// Wishes that matter and are hardly met, but for cost: the sum stands beside.
fn drawbacks(survey: &Survey, first: &Weighed, weights: Weights) -> Vec<Reason> {
    let Some(running) = running_of(survey, first.route) else {
        return Vec::new();
    };
    that_matter(first, weights)
        .filter(|(_, meets, _)| *meets < MET)
        .filter_map(|(wish, meets, _)| told(wish, meets, running))
        .collect()
}

/// The wishes that matter and count, how far a route meets them, and how much they matter.
fn that_matter(weighed: &Weighed, weights: Weights) -> impl Iterator<Item = (Wish, f64, Weight)> {
    let wishes = Wish::ALL.iter().zip(weighed.meets).zip(weights);
    wishes
        .filter(|(_, weight)| *weight != Weight::Not)
        .filter_map(|((wish, meets), weight)| Some((*wish, meets?, weight)))
}

fn running_of(survey: &Survey, route: RouteId) -> Option<&Running> {
    survey.route(route)?.running.as_ref()
}

/// What is told of a wish, met or not.
fn told(wish: Wish, meets: f64, running: &Running) -> Option<Reason> {
    match wish {
        Wish::LookAhead => Some(Reason::View(running.seat.view())),
        Wish::KeepOff => Some(Reason::DrivesOver(meets < MET)),
        Wish::KeepLoader => Some(Reason::Loader(running.seat.loader())),
        Wish::HookUpQuickly => Some(Reason::HooksUp(running.hookup)),
        // Only the cheapest meets it wholly.
        Wish::BuyCheaply if meets >= 1.0 => running.prices.total().map(Reason::Cheapest),
        Wish::BuyCheaply => None,
    }
}
