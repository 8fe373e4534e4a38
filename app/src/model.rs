//! What is stored, and what derives from it.

pub mod grid;
mod money;
mod notice;
pub mod once;
mod opening;
pub mod practice;
pub mod table;
mod unhurried;
pub mod work;
pub mod yard;

pub use notice::Notice;

use crate::embed::Options;
use crate::embed::part::Part;
use crate::text::advice;
use farend_core::compare::{Comparison, compare};
use farend_core::control::Control;
use farend_core::export::comparison::Saved;
use farend_core::fit::{Look, other_kits};
use farend_core::implement::Implement;
use farend_core::kit::Kit;
use farend_core::machine::Machine;
use farend_core::measure::Amount;
use farend_core::recommend::{Recommendation, recommend};
use farend_core::route::RouteId;
use farend_core::route::joined::Joined;
use farend_core::route::part::{Hookup, assemble};
use farend_core::settings::Settings;
use farend_core::state::{State, View};
use farend_core::survey::{Asked, Survey};
use farend_core::thermal::Heat;
use farend_core::units::{Quantity, UnitSystem};
use farend_core::yard::Yard;
use farend_core::yard::edit::Editing;
use farend_core::yard::history::History;
use leptos::prelude::*;
use opening::read_link;
use std::sync::Arc;
use table::TableFile;
use unhurried::Dragging;
use yard::OpenEntry;

/// The page's data. Signals are stored: the edited yard with its steps, the state, and what is open, told
/// or dragged at the moment. Memos derive from them.
#[derive(Clone, Copy)]
pub struct Model {
    /// What the page's host wants of it.
    pub options: StoredValue<Options>,
    /// The yard as it is written, faulty entries and all.
    pub editing: RwSignal<Editing>,
    /// The steps that led to it.
    pub history: RwSignal<History>,
    /// The entry that is open for editing.
    pub open_entry: RwSignal<OpenEntry>,
    /// The yard that is open: all of it that has no fault.
    pub yard: Memo<Arc<Yard>>,
    /// All that the user has chosen.
    pub state: RwSignal<State>,
    /// What the user must be told.
    pub notice: RwSignal<Option<Notice>>,
    /// The table that may be taken over.
    pub table: RwSignal<Option<TableFile>>,
    /// Whether the page to take home is shown.
    pub taking_home: RwSignal<bool>,
    /// Whether a slider is being dragged.
    pub dragging: Dragging,
    /// The machine chosen.
    pub machine: Memo<Option<Machine>>,
    /// The implement chosen.
    pub implement: Memo<Option<Implement>>,
    /// What has been turned.
    pub settings: Memo<Settings>,
    /// The route whose ledger is open.
    pub route: Memo<RouteId>,
    /// The reader's units.
    pub units: Memo<UnitSystem>,
    /// What is on the screen.
    pub view: Memo<View>,
    /// All six routes.
    pub comparison: Memo<Option<Comparison>>,
    /// What is asked about them beside power.
    pub survey: Memo<Option<Survey>>,
    /// Which to take.
    pub recommendation: Memo<Option<Recommendation>>,
}

impl Model {
    /// A yard, with the state that a link holds, where it holds one.
    pub fn new(yard: Editing, fragment: &str, options: Options) -> Self {
        let editing = RwSignal::new(yard);
        let yard = Memo::new(move |_| Arc::new(editing.read().sound()));
        let (state, notice) = read_link(&yard.read_untracked(), fragment, &options);
        let options = StoredValue::new(options);
        let state = RwSignal::new(state);
        let machine = Memo::new(move |_| {
            let id = state.read().machine.clone();
            yard.read().machine(&id).cloned()
        });
        let implement = Memo::new(move |_| {
            let id = state.read().implement.clone();
            yard.read().implement(&id).cloned()
        });
        let settings = Memo::new(move |_| state.read().settings);
        let comparison = Memo::new(move |_| {
            let (machine, implement) = (machine.read(), implement.read());
            let (machine, implement) = (machine.as_ref()?, implement.as_ref()?);
            compare(machine, implement, &yard.read().kits, &settings.get()).ok()
        });
        // Only these of the state: units, the open route or a sheet ask for no new survey.
        let prices = Memo::new(move |_| state.read().prices.clone());
        let weights = Memo::new(move |_| state.read().weights);
        let survey = Memo::new(move |_| {
            let (machine, implement) = (machine.read(), implement.read());
            let yard = yard.read();
            let asked = Asked {
                machine: machine.as_ref()?,
                implement: implement.as_ref()?,
                kits: &yard.kits,
                settings: &settings.get(),
                currency: yard.currency.as_deref(),
                prices: &prices.read(),
                weights: weights.get(),
            };
            Some(asked.survey(comparison.read().as_ref()?))
        });
        let recommendation = Memo::new(move |_| {
            let (comparison, survey) = (comparison.read(), survey.read());
            let weights = weights.get();
            Some(recommend(comparison.as_ref()?, survey.as_ref()?, weights))
        });
        let view = Memo::new(move |_| {
            let view = state.read().view;
            let shown = Part::of_view(view).is_none_or(|part| options.read_value().shows(part));
            if shown { view } else { View::Pair }
        });
        let model = Self {
            options,
            editing,
            history: RwSignal::default(),
            open_entry: RwSignal::default(),
            yard,
            state,
            notice: RwSignal::new(notice),
            table: RwSignal::new(None),
            taking_home: RwSignal::new(false),
            dragging: Dragging::no(),
            machine,
            implement,
            settings,
            route: Memo::new(move |_| state.read().route),
            units: Memo::new(move |_| state.read().units),
            view,
            comparison,
            survey,
            recommendation,
        };
        model.open_route_for(fragment);
        model
    }

    /// The model that the page has provided to its parts.
    pub fn of_page() -> Self {
        expect_context()
    }

    /// Whether the page's host lets a part be shown.
    pub fn shows(self, part: Part) -> bool {
        self.options.read_value().shows(part)
    }

    /// Chooses a machine.
    pub fn choose_machine(self, id: String) {
        let yard = self.yard.read_untracked();
        self.state.update(|state| take_machine(state, &yard, id));
        drop(yard);
        self.keep_a_running_route();
    }

    /// Chooses an implement.
    pub fn choose_implement(self, id: String) {
        self.state.update(|state| take_implement(state, id));
        self.keep_a_running_route();
    }

    /// Opens the best route where the open one can't be hooked up any more.
    fn keep_a_running_route(self) {
        let best = self.comparison.with_untracked(|comparison| {
            let comparison = comparison.as_ref()?;
            let open = comparison.route(self.route.get_untracked())?;
            match open.run() {
                Some(_) => None,
                None => Some(comparison.ranked().first()?.0),
            }
        });
        if let Some(best) = best {
            self.state.update(|state| state.route = best);
        }
    }

    /// Turns a control, or sets it back to the yard's own figure.
    pub fn turn(self, control: Control, to: Option<Quantity>) {
        self.state
            .update(|state| state.settings = control.turned(state.settings, to));
    }

    /// Whether the machine can run so.
    pub fn fits(self, settings: &Settings) -> bool {
        let machine = self.machine.read();
        machine
            .as_ref()
            .is_some_and(|machine| settings.check(machine).is_ok())
    }

    /// Takes over settings, where they fit the machine.
    pub fn take_over(self, settings: Settings) -> bool {
        let fits = untrack(|| self.fits(&settings));
        if fits {
            self.state.update(|state| state.settings = settings);
        }
        fits
    }

    /// Sets the job, where it's of a size that the core takes.
    pub fn set_job(self, job: Amount) -> bool {
        let settings = Settings {
            job: Some(job),
            ..self.state.read_untracked().settings
        };
        self.take_over(settings)
    }

    /// A route joined up with the kit that it takes, where it runs.
    pub fn joined(self, route: RouteId) -> Option<Joined> {
        let (machine, implement) = (self.machine.read(), self.implement.read());
        let comparison = self.comparison.read();
        let run = comparison.as_ref()?.route(route)?.run()?;
        let yard = self.yard.read();
        let settings = self.settings.get();
        let hookup = Hookup {
            machine: machine.as_ref()?,
            implement: implement.as_ref()?,
            kit: yard.kit(&run.kit),
            settings: &settings,
        };
        assemble(route.parts(), hookup).ok()
    }

    /// How warm the open route's oil gets at the job, where it has any.
    pub fn heat(self) -> Option<Heat> {
        let survey = self.survey.read();
        survey
            .as_ref()?
            .route(self.route.get())?
            .running
            .as_ref()?
            .heat
    }

    /// Names of the kits with which the open route fits better than with the one that it takes.
    pub fn other_kits(self) -> Option<Vec<String>> {
        let route = self.route.get();
        let (machine, implement) = (self.machine.read(), self.implement.read());
        let (all, survey) = (self.comparison.read(), self.survey.read());
        let yard = self.yard.read();
        let run = all.as_ref()?.route(route)?.run()?;
        let running = survey.as_ref()?.route(route)?.running.as_ref()?;
        let look = Look {
            route,
            machine: machine.as_ref()?,
            implement: implement.as_ref()?,
            settings: &self.settings.get(),
            kit: yard.kit(&run.kit)?,
            run: Some(run),
            heat: running.heat.as_ref(),
        };
        let others = other_kits(&look, &yard.kits);
        let name = |kit: &str| yard.kit(kit).map(|kit| kit.name.clone());
        Some(others.iter().filter_map(|it| name(&it.run.kit)).collect())
    }

    /// Which route to take, in one sentence; nothing where the yard lacks what is chosen.
    pub fn answer(self) -> String {
        let (machine, implement) = (self.machine.read(), self.implement.read());
        let (all, recommended) = (self.comparison.read(), self.recommendation.read());
        let parts = machine.as_ref().zip(implement.as_ref());
        let results = all.as_ref().zip(recommended.as_ref());
        parts
            .zip(results)
            .map_or_else(String::new, |((machine, implement), (all, recommended))| {
                advice::recommendation(machine, implement, all, recommended, self.units.get())
            })
    }

    /// What the recommended route takes, and what must be asked before.
    pub fn takes(self) -> Option<String> {
        let recommended = self.recommendation.read();
        let recommended = recommended.as_ref()?;
        let route = recommended.advice.route()?;
        let all = self.comparison.read();
        let run = all.as_ref()?.route(route)?.run()?;
        let yard = self.yard.read();
        let kit = &yard.kit(&run.kit)?.name;
        Some(advice::takes(
            kit,
            &recommended.needs,
            &recommended.questions,
        ))
    }

    /// Hands over all of the comparison as it stands, to be taken along; `None` where there is none.
    pub fn with_saved<T>(self, take: impl FnOnce(Saved<'_>) -> T) -> Option<T> {
        let yard = self.yard.read_untracked();
        let state = self.state.read_untracked();
        let machine = yard.machine(&state.machine)?;
        let implement = yard.implement(&state.implement)?;
        let comparison = self.comparison.read_untracked();
        let comparison = comparison.as_ref()?;
        let survey = self.survey.read_untracked();
        // The usual job, which stands there until one is set, is nobody's.
        let progress = untrack(|| self.progress_on(machine, &state.settings, comparison));
        let progress = progress.unwrap_or_default();
        Some(take(Saved {
            yard: &yard,
            state: &state,
            machine,
            implement,
            comparison,
            survey: survey.as_ref()?,
            progress: &progress,
        }))
    }

    /// The kit that the open route takes, where it runs.
    pub fn kit(self) -> Option<Kit> {
        let route = self.route.get();
        let comparison = self.comparison.read();
        let run = comparison.as_ref()?.route(route)?.run()?;
        self.yard.read().kit(&run.kit).cloned()
    }
}

/// Another machine. What was turned belonged to the one before, but for the site.
fn take_machine(state: &mut State, yard: &Yard, id: String) {
    state.beside = state.beside.take().filter(|beside| *beside != id);
    state.machine = id;
    state.settings = state.settings.of_site();
    state.prices.machines = Default::default();
    fit_sheet(state, yard);
}

/// A sheet's engine speed goes where the machine never runs at it. Nothing else of a sheet hangs on the
/// machine.
fn fit_sheet(state: &mut State, yard: &Yard) {
    let machine = yard.machine(&state.machine);
    if machine.is_some_and(|machine| state.sheet.check(machine).is_err()) {
        state.sheet.engine_speed = None;
    }
}

/// Another implement. What was set for the work of the one before is of no use to it.
fn take_implement(state: &mut State, id: String) {
    state.implement = id;
    state.settings = Settings {
        ground_speed: None,
        ground: None,
        depth: None,
        density: None,
        job: None,
        ..state.settings
    };
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;
    use crate::model::yard::demo;
    use leptos::reactive::owner::Owner;

    pub fn with_model(fragment: &str, test: impl FnOnce(Model)) {
        with_options(Options::default(), fragment, test);
    }

    pub fn with_options(options: Options, fragment: &str, test: impl FnOnce(Model)) {
        let owner = Owner::new();
        owner.set();
        test(Model::new(demo(), fragment, options));
    }

    #[test]
    fn another_machine_never_leaves_a_route_open_that_it_cant_have() {
        with_model("", |model| {
            model.choose_machine("puffin-62".to_owned());
            assert_eq!(model.route.get(), RouteId::SkidSteer);
        });
    }
}
