//! The way of one pair's power, stage by stage: the best route by shafts, then the best by oil.

use crate::model::Model;
use farend_core::chain::Passage;
use farend_core::compare::Run;
use farend_core::fit::{Judgement, gravest};
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::stage::{StageKind, StagePhysics};
use leptos::prelude::*;

/// A stage of a route: the first, second … of its kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Step {
    /// The route.
    pub route: RouteId,
    /// What the stage is.
    pub kind: StageKind,
    /// Stages of its kind before it.
    nth: usize,
    /// Its place among the steps of its route.
    pub place: usize,
    /// The steps of its route.
    pub of: usize,
}

/// How far somebody has come with a pair.
#[derive(Clone, Debug, Default, PartialEq)]
struct Way {
    pair: (String, String),
    at: usize,
    /// What was guessed of a step, as a part of what it takes.
    guesses: Vec<((RouteId, StageKind, usize), f64)>,
}

/// The way.
#[derive(Clone, Copy)]
pub struct Walk {
    model: Model,
    pair: Memo<(String, String)>,
    way: RwSignal<Way>,
    /// The best routes: by shafts, and by oil.
    pub routes: Memo<[Option<RouteId>; 2]>,
    /// All steps in order.
    pub steps: Memo<Vec<Step>>,
    /// Which one is open; beyond the last is the end.
    pub at: Memo<usize>,
}

impl Walk {
    /// At the first step.
    pub fn new(model: Model) -> Self {
        let pair = Memo::new(move |_| {
            let state = model.state.read();
            (state.machine.clone(), state.implement.clone())
        });
        let routes = Memo::new(move |_| best(model));
        let steps = Memo::new(move |_| {
            let all = model.comparison.read();
            let run = |route| all.as_ref()?.route(route)?.run();
            let routes = routes.get().into_iter().flatten();
            let steps = routes.filter_map(|route| Some(steps(route, run(route)?)));
            steps.flatten().collect::<Vec<_>>()
        });
        let way: RwSignal<Way> = RwSignal::default();
        let at = Memo::new(move |_| {
            let way = way.read();
            let at = if way.pair == *pair.read() { way.at } else { 0 };
            at.min(steps.read().len())
        });
        Self {
            model,
            pair,
            way,
            routes,
            steps,
            at,
        }
    }

    /// The open step.
    pub fn step(self) -> Option<Step> {
        self.steps.read().get(self.at.get()).copied()
    }

    /// What it takes, loses and passes on.
    pub fn passage(self, step: Step) -> Option<Passage> {
        let all = self.model.comparison.read();
        let run = all.as_ref()?.route(step.route)?.run()?;
        let passages = run.ledger.passages.iter();
        let mut of_kind = passages.filter(|it| it.stage.kind() == step.kind);
        of_kind.nth(step.nth).cloned()
    }

    /// What was guessed of a step.
    pub fn guess(self, step: Step) -> Option<f64> {
        let way = self.way.read();
        if way.pair != *self.pair.read() {
            return None;
        }
        let mut guesses = way.guesses.iter();
        let found = guesses.find(|(of, _)| *of == (step.route, step.kind, step.nth));
        found.map(|(_, part)| *part)
    }

    fn change(self, change: impl FnOnce(&mut Way)) {
        let pair = self.pair.get_untracked();
        self.way.update(|way| {
            if way.pair != pair {
                *way = Way {
                    pair,
                    ..Way::default()
                };
            }
            change(way);
        });
    }

    /// Takes a guess.
    pub fn say(self, step: Step, part: f64) {
        let of = (step.route, step.kind, step.nth);
        self.change(|way| way.guesses.push((of, part)));
    }

    /// Goes to a step. What can be turned there is of its route.
    pub fn go_to(self, at: usize) {
        self.change(|way| way.at = at);
        self.follow_route();
    }

    /// Opens the route of the step that is open.
    pub fn follow_route(self) {
        let route = untrack(|| self.step()).map(|step| step.route);
        if let Some(route) = route.filter(|route| *route != self.model.route.get_untracked()) {
            self.model.state.update(|state| state.route = route);
        }
    }

    /// Begins again, without any guess.
    pub fn restart(self) {
        self.change(|way| {
            way.at = 0;
            way.guesses.clear();
        });
        self.follow_route();
    }
}

/// The route that brings most by shafts, and that by oil; one that nothing stops, where there is one.
fn best(model: Model) -> [Option<RouteId>; 2] {
    let (all, survey) = (model.comparison.read(), model.survey.read());
    let ranked = all.as_ref().map(|all| all.ranked()).unwrap_or_default();
    let is_stopped = |route: RouteId| {
        let surveyed = survey.as_ref().and_then(|survey| survey.route(route));
        surveyed.is_some_and(|it| gravest(&it.items) == Judgement::Stop)
    };
    [false, true].map(|by_oil| {
        let of_way = || {
            let of_way = ranked
                .iter()
                .filter(|(route, run)| route.needs_oil() == by_oil && run.ledger.stall.is_none());
            of_way.map(|(route, _)| *route)
        };
        of_way()
            .find(|route| !is_stopped(*route))
            .or(of_way().next())
    })
}

fn steps(route: RouteId, run: &Run) -> Vec<Step> {
    let passages = &run.ledger.passages;
    let mut steps: Vec<Step> = Vec::new();
    for (before, passage) in passages.iter().enumerate() {
        let kind = passage.stage.kind();
        let same = |it: &&Passage| it.stage.kind() == kind;
        // What loses nothing is no question.
        if passage.loss > Power::ZERO {
            steps.push(Step {
                route,
                kind,
                nth: passages.iter().take(before).filter(same).count(),
                place: steps.len(),
                of: 0,
            });
        }
    }
    let of = steps.len();
    steps.iter_mut().for_each(|step| step.of = of);
    steps
}
