//! What is stored, and what derives from it.

pub mod grid;
mod money;
pub mod table;
pub mod work;

use crate::text::advice;
use farend_core::claims::Sheet;
use farend_core::compare::{Comparison, compare};
use farend_core::control::Control;
use farend_core::export::comparison::Saved;
use farend_core::export::open::{Opened, open};
use farend_core::fault::Fault;
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
use farend_core::state::{LinkFault, State, View};
use farend_core::survey::{Asked, Survey};
use farend_core::thermal::Heat;
use farend_core::units::{Quantity, UnitSystem};
use farend_core::yard::table::List;
use farend_core::yard::{DEMO, Yard};
use leptos::prelude::*;
use std::sync::Arc;
use table::TableFile;

/// Something that the user must be told, until they have read it.
#[derive(Clone, Debug, PartialEq)]
pub enum Notice {
    /// A yard file or a saved comparison was refused.
    BadFile {
        /// Its name.
        file: String,
        /// All that is wrong with it.
        faults: Vec<Fault>,
    },
    /// A file couldn't be read from the disk.
    UnreadableFile(String),
    /// A yard file was taken over.
    OpenedYard(String),
    /// A saved comparison was taken over.
    OpenedComparison(String),
    /// A table was taken over: so many entries are new, changed, unchanged and gone.
    TookTable {
        /// Its name.
        file: String,
        /// The list that it's of.
        list: List,
        /// Entries that the list didn't have.
        new: usize,
        /// Entries that say something else now.
        changed: usize,
        /// Entries that say the same.
        unchanged: usize,
        /// Entries that the list doesn't have any more.
        removed: usize,
    },
    /// Several files were picked or dropped at once.
    SeveralFiles(u32),
    /// A link couldn't be read.
    BadLink(LinkFault),
    /// A link names a machine or an implement that this yard doesn't have.
    MissingFromYard(Vec<String>),
    /// A link's settings are out of range.
    BadSettings(Vec<Fault>),
    /// The browser doesn't let the page save a file.
    CantSave,
    /// A file was handed over, but the frame around the page may keep it back.
    SavedFromFrame,
    /// The browser doesn't make pixels of the picture.
    CantDraw,
    /// The open route can't be hooked up, so there is no ledger to save.
    NoLedger(RouteId),
}

/// The page's data. `yard`, `state`, `notice` and `table` are stored; the rest derives from them.
#[derive(Clone, Copy)]
pub struct Model {
    /// The yard that is open.
    pub yard: RwSignal<Arc<Yard>>,
    /// All that the user has chosen.
    pub state: RwSignal<State>,
    /// What the user must be told.
    pub notice: RwSignal<Option<Notice>>,
    /// The table that may be taken over.
    pub table: RwSignal<Option<TableFile>>,
    /// Whether the page to take home is shown.
    pub taking_home: RwSignal<bool>,
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
    /// The demo yard, with the state that a link holds, where it holds one.
    pub fn new(fragment: &str) -> Self {
        // The demo is part of the program and its tests load it.
        let yard = Yard::from_json(DEMO).unwrap_or_default();
        let (state, notice) = read_link(&yard, fragment);
        let yard = RwSignal::new(Arc::new(yard));
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
        Self {
            yard,
            state,
            notice: RwSignal::new(notice),
            table: RwSignal::new(None),
            taking_home: RwSignal::new(false),
            machine,
            implement,
            settings,
            route: Memo::new(move |_| state.read().route),
            units: Memo::new(move |_| state.read().units),
            view: Memo::new(move |_| state.read().view),
            comparison,
            survey,
            recommendation,
        }
    }

    /// The model that the page has provided to its parts.
    pub fn of_page() -> Self {
        expect_context()
    }

    /// Chooses a machine. What was turned belonged to the one before, but for the site.
    pub fn choose_machine(self, id: String) {
        self.state.update(|state| {
            state.beside = state.beside.take().filter(|beside| *beside != id);
            state.machine = id;
            state.settings = state.settings.of_site();
            state.prices.machines = Default::default();
        });
        self.keep_a_running_route();
    }

    /// Chooses an implement. What was set for the work of the one before is of no use to it.
    pub fn choose_implement(self, id: String) {
        self.state.update(|state| {
            state.implement = id;
            state.settings = Settings {
                ground_speed: None,
                ground: None,
                depth: None,
                density: None,
                job: None,
                ..state.settings
            };
        });
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

    /// Takes over settings, where they fit the machine.
    pub fn take_over(self, settings: Settings) -> bool {
        let fits = self.machine.with_untracked(|machine| {
            machine
                .as_ref()
                .is_some_and(|machine| settings.check(machine).is_ok())
        });
        if fits {
            self.state.update(|state| state.settings = settings);
        }
        fits
    }

    /// Sets the job, where it's of a size that the core takes.
    pub fn set_job(self, job: Amount) -> bool {
        let settings = Settings {
            job: Some(job),
            ..self.settings.get_untracked()
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

    /// Takes over a yard file or a saved comparison, or says all that is wrong with it and leaves
    /// everything as it was. Of a table it shows what that would change.
    pub fn open_file(self, file: String, text: &str) {
        if TableFile::is_one(&file) {
            return self.open_table(file, text);
        }
        match open(text) {
            Err(faults) => self.notice.set(Some(Notice::BadFile { file, faults })),
            Ok(Opened {
                yard,
                state: Some(state),
            }) => {
                self.yard.set(Arc::new(yard));
                self.state.set(state);
                self.notice.set(Some(Notice::OpenedComparison(file)));
            }
            Ok(Opened { yard, state: None }) => {
                let units = self.units.get_untracked();
                let mut state = first_state(&yard);
                state.units = units;
                self.yard.set(Arc::new(yard));
                self.state.set(state);
                self.notice.set(Some(Notice::OpenedYard(file)));
                self.keep_a_running_route();
            }
        }
    }

    /// Takes over a yard that was changed; what was chosen stays as far as the yard still has it.
    pub fn change_yard(self, yard: Yard) {
        let first = first_state(&yard);
        self.state.update(|state| {
            if yard.machine(&state.machine).is_none() {
                state.machine = first.machine;
                state.settings = state.settings.of_site();
            }
            if yard.implement(&state.implement).is_none() {
                state.implement = first.implement;
            }
        });
        self.yard.set(Arc::new(yard));
        self.keep_a_running_route();
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
        let progress = untrack(|| self.progress()).unwrap_or_default();
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

    /// Takes over a link's state, or says what is wrong with it.
    pub fn open_link(self, fragment: &str) {
        if fragment == self.state.with_untracked(State::to_link) {
            return;
        }
        let (state, notice) = read_link(&self.yard.read_untracked(), fragment);
        self.state.set(state);
        self.notice.set(notice);
    }

    /// The kit that the open route takes, where it runs.
    pub fn kit(self) -> Option<Kit> {
        let route = self.route.get();
        let comparison = self.comparison.read();
        let run = comparison.as_ref()?.route(route)?.run()?;
        self.yard.read().kit(&run.kit).cloned()
    }
}

/// What a yard opens with: its machine of middling power and its first implement.
fn first_state(yard: &Yard) -> State {
    let mut machines: Vec<_> = yard.machines.iter().collect();
    machines.sort_by(|a, b| {
        let (a, b) = (a.engine.net.likely.to_si(), b.engine.net.likely.to_si());
        a.total_cmp(&b)
    });
    let middle = machines.get(machines.len().saturating_sub(1) / 2);
    let implement = yard.implements.first();
    State::of(
        middle.map_or_else(String::new, |machine| machine.id.clone()),
        implement.map_or_else(String::new, |implement| implement.id.clone()),
    )
}

/// The state that a link means in a yard, and what must be said about it.
fn read_link(yard: &Yard, fragment: &str) -> (State, Option<Notice>) {
    let fallback = first_state(yard);
    if fragment.is_empty() {
        return (fallback, None);
    }
    let linked = match State::from_link(fragment) {
        Ok(linked) => linked,
        Err(fault) => return (fallback, Some(Notice::BadLink(fault))),
    };
    let machine = yard.machine(&linked.machine);
    let implement = yard.implement(&linked.implement);
    let (Some(machine), Some(_)) = (machine, implement) else {
        let missing = [
            machine.is_none().then(|| linked.machine.clone()),
            implement.is_none().then(|| linked.implement.clone()),
        ];
        // What the yard does have is kept.
        let state = State {
            machine: machine.map_or(fallback.machine, |machine| machine.id.clone()),
            implement: implement.map_or(fallback.implement, |implement| implement.id.clone()),
            units: linked.units,
            ..fallback
        };
        let missing = missing.into_iter().flatten().collect();
        return (state, Some(Notice::MissingFromYard(missing)));
    };
    let checks = [linked.settings.check(machine), linked.sheet.check(machine)];
    let faults: Vec<_> = checks
        .into_iter()
        .filter_map(Result::err)
        .flatten()
        .collect();
    match faults.as_slice() {
        [] => (linked, None),
        _ => (
            State {
                settings: Settings::default(),
                sheet: Sheet::default(),
                ..linked
            },
            Some(Notice::BadSettings(faults)),
        ),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use leptos::reactive::owner::Owner;

    fn with_model(fragment: &str, test: impl FnOnce(Model)) {
        let owner = Owner::new();
        owner.set();
        test(Model::new(fragment));
    }

    #[test]
    fn a_link_brings_back_the_same_state() {
        with_model("", |model| {
            model.choose_machine("heron-68".to_owned());
            model.choose_implement("broom-180".to_owned());
            let bar = Quantity::Pressure(farend_core::quantity::Pressure::bar(150.0));
            model.turn(Control::OwnRelief, Some(bar));
            let state = model.state.get();
            with_model(&state.to_link(), |again| {
                assert_eq!(again.state.get(), state);
                assert_eq!(again.notice.get(), None);
            });
        });
    }

    #[test]
    fn a_bad_file_leaves_everything_as_it_was() {
        with_model("", |model| {
            let (yard, state) = (model.yard.get(), model.state.get());
            model.open_file("bad.json".to_owned(), "{}");
            assert_eq!(model.yard.get(), yard);
            assert_eq!(model.state.get(), state);
            let Some(Notice::BadFile { faults, .. }) = model.notice.get() else {
                panic!("the faults must be told");
            };
            assert!(faults.len() > 1);
        });
    }

    /// The demo cut off at many places, and with a letter too many in many of its keys.
    #[test]
    fn no_damaged_file_touches_what_is_open() {
        let ends = DEMO.char_indices().step_by(DEMO.len() / 30);
        let cut = ends.map(|(end, _)| DEMO[..end].to_owned());
        let keys = DEMO.match_indices("\": ").step_by(20);
        let misspelt = keys.map(|(end, _)| format!("{}e{}", &DEMO[..end], &DEMO[end..]));
        let files: Vec<_> = cut.chain(misspelt).collect();
        assert!(files.len() > 60, "{}", files.len());
        with_model("", |model| {
            model.open_file("own.json".to_owned(), &DEMO.replace("heron-68", "own-68"));
            model.choose_machine("own-68".to_owned());
            let (yard, state) = (model.yard.get(), model.state.get());
            for file in files {
                model.open_file("bad.json".to_owned(), &file);
                let notice = model.notice.get();
                assert!(matches!(notice, Some(Notice::BadFile { .. })), "{file}");
                assert_eq!(model.yard.get(), yard);
                assert_eq!(model.state.get(), state);
            }
        });
    }

    #[test]
    fn a_saved_comparison_brings_back_yard_and_state() {
        with_model("", |model| {
            let own = DEMO.replace("heron-68", "own-68");
            model.open_file("own.json".to_owned(), &own);
            model.choose_machine("own-68".to_owned());
            model.state.update(|state| state.route = RouteId::PumpPack);
            let text = model.with_saved(|saved| saved.to_json().unwrap()).unwrap();
            let (yard, state) = (model.yard.get(), model.state.get());
            with_model("", |again| {
                again.open_file("saved.json".to_owned(), &text);
                assert_eq!(again.yard.get(), yard);
                assert_eq!(again.state.get(), state);
                let opened = Notice::OpenedComparison("saved.json".to_owned());
                assert_eq!(again.notice.get(), Some(opened));
            });
        });
    }

    #[test]
    fn a_link_to_missing_equipment_names_it_and_shows_the_rest() {
        with_model("", |model| {
            let mut state = model.state.get();
            state.machine = "not-there".to_owned();
            state.implement = "broom-180".to_owned();
            with_model(&state.to_link(), |again| {
                let missing = vec!["not-there".to_owned()];
                assert_eq!(again.notice.get(), Some(Notice::MissingFromYard(missing)));
                assert_eq!(again.state.get().implement, "broom-180");
            });
        });
    }

    #[test]
    fn another_machine_never_leaves_a_route_open_that_it_cant_have() {
        with_model("", |model| {
            model.choose_machine("puffin-62".to_owned());
            assert_eq!(model.route.get(), RouteId::SkidSteer);
        });
    }
}
