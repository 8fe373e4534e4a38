//! The yard under the user's hands: every change is a step that can be taken back.

use super::opening::first_state;
use super::{Model, fit_sheet, take_implement, take_machine};
use farend_core::settings::Settings;
use farend_core::yard::DEMO;
use farend_core::yard::edit::{Change, Editing, Whose};
use farend_core::yard::history::{Deed, History};
use farend_core::yard::list::List;
use leptos::prelude::*;
use serde_json::Value;

/// The entry that is open for editing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OpenEntry {
    /// Its list.
    pub list: List,
    /// Its place, where one is open.
    pub place: Option<usize>,
}

impl Default for OpenEntry {
    fn default() -> Self {
        Self {
            list: List::Machines,
            place: None,
        }
    }
}

/// The built-in yard, which is part of the program and loaded by its tests.
pub fn demo() -> Editing {
    Editing::from_json(DEMO).unwrap_or_default()
}

impl Model {
    /// Makes a change as one step. False where it can't be made.
    pub fn edit(self, change: Change, deed: Deed) -> bool {
        self.step(|history, yard| {
            let made = change.clone();
            history.make(yard, change, deed).then_some(made)
        })
    }

    /// Puts something in a field, or leaves it unknown, as one step.
    pub fn put(self, whose: Whose, path: &str, to: Option<Value>) {
        let yard = self.editing.read_untracked();
        let Some(change) = yard.putting(whose, path, to) else {
            return;
        };
        let path = path.to_owned();
        let deed = match whose {
            Whose::Yard => Deed::Own(path),
            Whose::Entry(list, place) => Deed::Field(name(&yard, list, place), path),
        };
        drop(yard);
        self.edit(change, deed);
    }

    /// Takes the last step back.
    pub fn undo(self) {
        self.step(History::undo);
    }

    /// Makes the step again that was taken back last.
    pub fn redo(self) {
        self.step(History::redo);
    }

    /// Goes back to the built-in yard.
    pub fn open_demo(self) {
        let demo = demo();
        let deed = Deed::TookOver(demo.sound().name);
        self.edit(Change::All(Box::new(demo)), deed);
    }

    /// Adds an entry of which only the name is known.
    pub fn add_entry(self, list: List, name: &str) {
        let yard = self.editing.read_untracked();
        let (end, entry) = (yard.len(list), yard.blank(list, name));
        drop(yard);
        let deed = Deed::Added(name.to_owned());
        self.edit(Change::Insert(list, end, entry), deed);
    }

    /// Adds a copy of an entry behind it, under a name of its own.
    pub fn copy_entry(self, list: List, place: usize, name: String) {
        let copy = self.editing.read_untracked().copy(list, place, &name);
        if let Some(copy) = copy {
            let change = Change::Insert(list, place + 1, copy);
            self.edit(change, Deed::Added(name));
        }
    }

    /// Takes an entry out.
    pub fn remove_entry(self, list: List, place: usize) {
        let deed = Deed::Removed(name(&self.editing.read_untracked(), list, place));
        self.edit(Change::Remove(list, place), deed);
    }

    /// Moves an entry to another place of its list.
    pub fn move_entry(self, list: List, from: usize, to: usize) {
        let deed = Deed::Moved(name(&self.editing.read_untracked(), list, from));
        self.edit(Change::Move(list, from, to), deed);
    }

    /// Lets a step change the yard; what was chosen follows it. False where nothing was changed.
    fn step(self, make: impl FnOnce(&mut History, &mut Editing) -> Option<Change>) -> bool {
        let mut made = None;
        let before = self.chosen_places();
        self.editing.maybe_update(|yard| {
            self.history.update(|history| made = make(history, yard));
            made.is_some()
        });
        let Some(change) = made else {
            return false;
        };
        self.follow(&change, before);
        self.open_changed(&change);
        true
    }

    /// Where what is chosen stands in its list: the machine, the implement, the machine beside.
    fn chosen_places(self) -> [Option<usize>; 3] {
        let (yard, state) = (self.editing.read_untracked(), self.state.read_untracked());
        let beside = state.beside.as_ref();
        [
            yard.place(List::Machines, &state.machine),
            yard.place(List::Implements, &state.implement),
            beside.and_then(|id| yard.place(List::Machines, id)),
        ]
    }

    /// What was chosen stays chosen under a new identifier, and goes with the entry that it names;
    /// what was turned goes where the machine no longer allows it.
    fn follow(self, change: &Change, before: [Option<usize>; 3]) {
        let (yard, editing) = (self.yard.read_untracked(), self.editing.read_untracked());
        let renamed = |list: List, place: Option<usize>| match change {
            Change::Put(of, at, entry) if *of == list && Some(*at) == place => {
                entry.get("id").and_then(Value::as_str).map(str::to_owned)
            }
            _ => None,
        };
        let has = |list, id: &str| editing.place(list, id).is_some();
        let first = first_state(&yard, &self.options.read_value());
        let [machine, implement, beside] = before;
        self.state.update(|state| {
            if let Some(id) = renamed(List::Machines, machine) {
                state.machine = id;
            }
            if let Some(id) = renamed(List::Implements, implement) {
                state.implement = id;
            }
            if let Some(id) = renamed(List::Machines, beside) {
                state.beside = Some(id);
            }
            if !has(List::Machines, &state.machine) {
                take_machine(state, &yard, first.machine);
            }
            if !has(List::Implements, &state.implement) {
                take_implement(state, first.implement);
            }
            let beside = state.beside.take();
            state.beside = beside.filter(|id| has(List::Machines, id));
            if let Some(machine) = yard.machine(&state.machine)
                && state.settings.check(machine).is_err()
            {
                state.settings = Settings::default();
            }
            fit_sheet(state, &yard);
        });
        drop((yard, editing));
        self.keep_a_running_route();
    }

    /// Opens what a change has touched.
    fn open_changed(self, change: &Change) {
        let opened = match change {
            Change::Put(list, place, _)
            | Change::Insert(list, place, _)
            | Change::Move(list, _, place) => (*list, Some(*place)),
            Change::Remove(list, place) => {
                let last = self.editing.read_untracked().len(*list).checked_sub(1);
                (*list, last.map(|last| last.min(*place)))
            }
            Change::All(_) => (List::Machines, None),
            Change::Own(_) => return,
        };
        let (list, place) = opened;
        let opened = OpenEntry { list, place };
        let stays = matches!(change, Change::Put(..));
        // Set anew even where the place is the same: another entry stands there now.
        if !stays || self.open_entry.get_untracked() != opened {
            self.open_entry.set(opened);
        }
    }
}

/// An entry's name, or its identifier where it has none.
pub fn name(yard: &Editing, list: List, place: usize) -> String {
    let of = |key| {
        yard.get(Whose::Entry(list, place), key)
            .and_then(Value::as_str)
    };
    of("name").or(of("id")).unwrap_or_default().to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::tests::with_model;
    use farend_core::control::Control;
    use farend_core::measure::{Amount, Measure};
    use farend_core::quantity::{AngularSpeed, Flow};
    use farend_core::units::Quantity;
    use serde_json::json;

    const HERON: Whose = Whose::Entry(List::Machines, 3);

    #[test]
    fn a_changed_figure_is_compared_and_taken_back() {
        with_model("", |model| {
            model.choose_machine("heron-68".to_owned());
            let before = model.machine.get();
            model.put(HERON, "engine.net_kw", Some(json!(40)));
            assert_ne!(model.machine.get(), before);
            model.undo();
            assert_eq!(model.machine.get(), before);
            model.redo();
            assert_ne!(model.machine.get(), before);
        });
    }

    #[test]
    fn a_chosen_machine_with_faults_stays_chosen() {
        with_model("", |model| {
            model.choose_machine("heron-68".to_owned());
            model.put(HERON, "engine.net_kw", Some(json!(9000)));
            assert_eq!(model.machine.get(), None);
            assert_eq!(model.comparison.get(), None);
            model.undo();
            assert!(model.comparison.get().is_some());
        });
    }

    #[test]
    fn a_machine_that_goes_is_no_longer_chosen() {
        with_model("", |model| {
            model.choose_machine("heron-68".to_owned());
            model
                .state
                .update(|state| state.beside = Some("wren-18".to_owned()));
            model.remove_entry(List::Machines, 0);
            assert_eq!(model.state.get().beside, None);
            model.remove_entry(List::Machines, 2);
            assert_ne!(model.state.get().machine, "heron-68");
            assert!(model.machine.get().is_some());
        });
    }

    #[test]
    fn what_was_set_goes_with_what_it_was_set_for() {
        with_model("", |model| {
            model.choose_machine("heron-68".to_owned());
            model.state.update(|state| {
                state.beside = Some("curlew-46".to_owned());
                state.prices.machines = [Some(41_000.0), Some(29_000.0)];
            });
            model.remove_entry(List::Machines, 3);
            let state = model.state.get();
            assert_eq!(state.machine, "curlew-46");
            assert_eq!(state.beside, None);
            assert_eq!(state.prices.machines, [None, None]);
            assert!(model.set_job(Amount::of(Measure::Area, 2_000.0)));
            model.remove_entry(List::Implements, 0);
            assert_ne!(model.state.get().implement, state.implement);
            assert_eq!(model.settings.get().job, None);
        });
    }

    #[test]
    fn a_sheet_goes_along_to_another_machine_but_for_a_speed_that_it_never_runs_at() {
        with_model("", |model| {
            model.choose_machine("curlew-46".to_owned());
            model.state.update(|state| {
                state.sheet.engine_speed = Some(AngularSpeed::rpm(2390.0));
                state.sheet.flow = Some(Flow::litres_per_minute(60.0));
            });
            model.choose_machine("heron-68".to_owned());
            let state = model.state.get();
            assert_eq!(state.sheet.engine_speed, None);
            assert!(state.sheet.flow.is_some());
            with_model(&state.to_link(), |again| {
                assert_eq!(again.notice.get(), None);
                assert!(again.state.get().sheet.flow.is_some());
            });
        });
    }

    #[test]
    fn what_was_turned_goes_where_the_machine_no_longer_allows_it() {
        with_model("", |model| {
            model.choose_machine("heron-68".to_owned());
            let speed = Quantity::Speed(AngularSpeed::rpm(2190.0));
            model.turn(Control::EngineSpeed, Some(speed));
            model.put(HERON, "mass_kg", Some(json!(3600)));
            assert!(model.settings.get().engine_speed.is_some());
            model.put(HERON, "engine.rated_rpm", Some(json!(2180)));
            model.put(HERON, "engine.curve", None);
            model.put(HERON, "circuits[0].engine_rpm", Some(json!(2180)));
            assert!(model.comparison.get().is_some());
            assert_eq!(model.settings.get().engine_speed, None);
        });
    }

    #[test]
    fn a_yard_that_is_taken_over_keeps_what_was_chosen() {
        with_model("", |model| {
            model.choose_machine("heron-68".to_owned());
            let mut yard = demo();
            let change = yard.putting(HERON, "name", Some(json!("Heron")));
            yard.apply(change.unwrap());
            let deed = Deed::TookOver("heron.csv".to_owned());
            model.edit(Change::All(Box::new(yard)), deed);
            assert_eq!(model.machine.get().unwrap().name, "Heron");
            model.undo();
            assert_ne!(model.machine.get().unwrap().name, "Heron");
        });
    }
}
