//! What is shown of the whole yard.

use super::Model;
use super::once::Once;
use crate::grid_work::GridWork;
use farend_core::grid::{Arranged, Cell, Reading, Selection, arrange};
use farend_core::implement::{Implement, ImplementKind};
use farend_core::machine::{Machine, MachineKind};
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::state::View;
use farend_core::work::need_for;
use leptos::prelude::*;

/// The whole yard as it is shown. Rows and columns are counted as they stand on the screen.
#[derive(Clone, Copy)]
pub struct GridModel {
    model: Model,
    /// The rows and how they come about.
    pub work: GridWork,
    /// What of it is shown.
    pub selection: Memo<Selection>,
    /// Rows and columns in order.
    pub arranged: Memo<Arranged>,
}

impl GridModel {
    /// Of the page's model.
    fn new(model: Model) -> Self {
        let work = GridWork::of(model);
        let selection = Memo::new(move |_| model.state.read().selection);
        // Only a list hangs on what is chosen.
        let chosen = Memo::new(move |_| {
            let state = model.state.read();
            match selection.get().reading {
                Reading::Whole => (String::new(), String::new()),
                Reading::Machines => (String::new(), state.implement.clone()),
                Reading::Implements => (state.machine.clone(), String::new()),
            }
        });
        let arranged = Memo::new(move |_| {
            let (yard, rows, chosen) = (model.yard.read(), work.rows.read(), chosen.read());
            let chosen = (chosen.0.as_str(), chosen.1.as_str());
            arrange(&yard, &rows, &selection.get(), chosen)
        });
        Self {
            model,
            work,
            selection,
            arranged,
        }
    }

    /// That the page has provided to its parts.
    pub fn of_page() -> Self {
        Once::of_page(|| Self::new(Model::of_page()))
    }

    /// Changes what is shown.
    pub fn select(self, change: impl FnOnce(&mut Selection)) {
        self.model
            .state
            .update(|state| change(&mut state.selection));
    }

    fn places(self, row: usize, column: usize) -> Option<(usize, usize)> {
        let arranged = self.arranged.read();
        let machine = arranged.machines.get(row)?;
        let implement = arranged.implements.get(column)?;
        Some((*machine, *implement))
    }

    /// What a pair shows: nothing yet, no route that fits, or a route.
    pub fn shown(self, row: usize, column: usize) -> Option<Option<(RouteId, Cell)>> {
        let (machine, implement) = self.places(row, column)?;
        let rows = self.work.rows.read();
        let pair = rows.get(machine)?.as_ref()?.get(implement)?;
        Some(self.selection.get().of(pair))
    }

    fn with_machine<T>(self, row: usize, of: impl FnOnce(&Machine) -> T) -> Option<T> {
        let place = *self.arranged.read().machines.get(row)?;
        self.model.yard.read().machines.get(place).map(of)
    }

    fn with_implement<T>(self, column: usize, of: impl FnOnce(&Implement) -> T) -> Option<T> {
        let place = *self.arranged.read().implements.get(column)?;
        self.model.yard.read().implements.get(place).map(of)
    }

    /// A row's name.
    pub fn machine_name(self, row: usize) -> String {
        let name = self.with_machine(row, |it| it.name.clone());
        name.unwrap_or_default()
    }

    /// A column's name.
    pub fn implement_name(self, column: usize) -> String {
        let name = self.with_implement(column, |it| it.name.clone());
        name.unwrap_or_default()
    }

    /// A row's kind.
    pub fn machine_kind(self, row: usize) -> Option<MachineKind> {
        self.with_machine(row, |it| it.kind)
    }

    /// A column's kind.
    pub fn implement_kind(self, column: usize) -> Option<ImplementKind> {
        self.with_implement(column, |it| it.kind)
    }

    /// A row's kind, where rows are grouped and it is the first of it.
    pub fn first_of_machine_kind(self, row: usize) -> Option<MachineKind> {
        let grouped = self.selection.get().grouped;
        let kind = self.machine_kind(row).filter(|_| grouped)?;
        let before = row.checked_sub(1).and_then(|row| self.machine_kind(row));
        (before != Some(kind)).then_some(kind)
    }

    /// What a column's implement needs.
    pub fn need(self, column: usize) -> Option<Power> {
        let site = self.model.settings.get().of_site();
        self.with_implement(column, |it| need_for(it, &site).likely)
    }

    /// The name of a cell's kit.
    pub fn kit_name(self, cell: &Cell) -> Option<String> {
        let yard = self.model.yard.read();
        let kit = yard.kits.get(usize::from(cell.kit))?;
        Some(kit.name.clone())
    }

    /// Opens a pair, by the route that it shows.
    pub fn open(self, row: usize, column: usize) {
        let id = |it: &Machine| it.id.clone();
        let machine = untrack(|| self.with_machine(row, id));
        let implement = untrack(|| self.with_implement(column, |it| it.id.clone()));
        let Some((machine, implement)) = machine.zip(implement) else {
            return;
        };
        let route = untrack(|| self.shown(row, column)).flatten();
        let state = self.model.state.get_untracked();
        if state.machine != machine {
            self.model.choose_machine(machine);
        }
        if state.implement != implement {
            self.model.choose_implement(implement);
        }
        self.model.state.update(|state| {
            state.view = View::Pair;
            if let Some((route, _)) = route {
                state.route = route;
            }
        });
    }
}
