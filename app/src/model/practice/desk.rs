//! A case, and its answer once it may be seen.

use crate::model::Model;
use crate::text::practice::case::{Scene, route_and_kit};
use farend_core::compare::{Outcome, Run, evaluate};
use farend_core::fit::{Item, Judgement, Look};
use farend_core::practice::{Answer, Case, Draw, Truth, draw, reveal};
use farend_core::route::RouteId;
use farend_core::route::part::Hookup;
use farend_core::yard::Yard;
use leptos::prelude::*;

/// An answer with all that it is told by.
#[derive(Clone, Debug, PartialEq)]
pub struct Worked {
    /// The case.
    pub case: Case,
    /// What it is about.
    pub scene: Scene,
    /// Its answer.
    pub answer: Answer,
    /// The route that it asks about, where it runs with the kit that it asks about.
    pub run: Option<Run>,
    /// Routes that run and yet can't be hooked up, with what stops them.
    pub stops: Vec<(RouteId, Vec<Item>)>,
}

/// What a case is about; `None` where the yard doesn't have it.
pub fn scene(yard: &Yard, case: &Case) -> Option<Scene> {
    let kit = route_and_kit(&case.question).and_then(|(_, kit)| yard.kit(kit));
    Some(Scene {
        machine: yard.machine(&case.machine)?.clone(),
        implement: yard.implement(&case.implement)?.clone(),
        kit: kit.cloned(),
    })
}

/// How the route that a case asks about runs with its kit.
pub fn run(scene: &Scene, case: &Case) -> Option<Run> {
    let (route, _) = route_and_kit(&case.question)?;
    let kits = core::slice::from_ref(scene.kit.as_ref()?);
    let outcome = evaluate(
        route,
        &scene.machine,
        &scene.implement,
        kits,
        &case.settings,
    );
    match outcome {
        Outcome::Runs(run) => Some(*run),
        Outcome::NoFit(_) => None,
    }
}

/// Works a case out.
pub fn worked(yard: &Yard, case: &Case) -> Option<Worked> {
    let scene = scene(yard, case)?;
    let answer = reveal(yard, case)?;
    Some(Worked {
        run: run(&scene, case),
        stops: stops(yard, &scene, case, &answer),
        answer,
        case: case.clone(),
        scene,
    })
}

/// What stops routes that run, of those that are to be put in order.
fn stops(yard: &Yard, scene: &Scene, case: &Case, answer: &Answer) -> Vec<(RouteId, Vec<Item>)> {
    let Truth::Route { cant, .. } = &answer.truth else {
        return Vec::new();
    };
    let of = |route: &RouteId| {
        let kit = yard.kit(&answer.comparison.route(*route)?.run()?.kit)?;
        let pair = Hookup {
            machine: &scene.machine,
            implement: &scene.implement,
            kit: Some(kit),
            settings: &case.settings,
        };
        let mut items = Look::before(*route, pair, kit).items();
        items.retain(|item| item.judgement == Judgement::Stop);
        Some((*route, items))
    };
    cant.iter().filter_map(of).collect()
}

/// A case on the desk. Its answer is worked out only once it's open.
#[derive(Clone, Copy)]
pub struct Desk {
    /// The case.
    pub case: Memo<Option<Case>>,
    /// What it is about.
    pub scene: Memo<Option<Scene>>,
    opened: RwSignal<Option<Case>>,
    /// The answer, once it's open.
    pub answer: Memo<Option<Worked>>,
}

impl Desk {
    /// With the case of a draw.
    pub fn new(model: Model, of: Signal<Option<Draw>>) -> Self {
        let case = Memo::new(move |_| draw(&model.yard.read(), of.get()?));
        let scene = Memo::new(move |_| scene(&model.yard.read(), case.read().as_ref()?));
        let opened = RwSignal::new(None);
        // A yard that was changed lays another case under the same draw.
        let answer = Memo::new(move |_| {
            let case = case.read();
            let is_open = *opened.read() == *case;
            worked(&model.yard.read(), case.as_ref().filter(|_| is_open)?)
        });
        Self {
            case,
            scene,
            opened,
            answer,
        }
    }

    /// Opens the answer.
    pub fn open(self) {
        self.opened.set(self.case.get_untracked());
    }

    /// Closes it again.
    pub fn close(self) {
        self.opened.set(None);
    }
}
