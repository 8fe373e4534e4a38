//! What is stored of practice, and what derives from it. It outlives a look at another view.

pub mod alone;
pub mod desk;
pub mod group;
pub mod record;
pub mod walk;

use super::Model;
use super::once::Once;
use alone::Alone;
use farend_core::practice::Draw;
use farend_core::state::View;
use group::Group;
use leptos::prelude::*;
use record::RecordModel;
use walk::Walk;

/// A part of practice.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// One pair, stage by stage.
    Walk,
    /// One case at a time.
    Alone,
    /// A set for a group.
    Group,
    /// The learner's own record.
    Record,
}

/// Practice.
#[derive(Clone, Copy)]
pub struct PracticeModel {
    model: Model,
    /// What is on the screen.
    pub part: RwSignal<Part>,
    /// The way through one pair.
    pub walk: Walk,
    /// Cases for one.
    pub alone: Alone,
    /// Cases for many.
    pub group: Group,
    /// How it goes.
    pub record: RecordModel,
    /// The draws of the set that is open, in order.
    pub set: Memo<Vec<Draw>>,
}

impl PracticeModel {
    /// Of the page's model. A link with a set begins with that.
    pub fn new(model: Model) -> Self {
        let record = RecordModel::new();
        let practice = Memo::new(move |_| model.state.read().practice);
        let set = Memo::new(move |_| practice.get().map_or_else(Vec::new, |set| set.draws()));
        let alone = Alone::new(model, record, set);
        let begins_with_set =
            model.view.get_untracked() == View::Practice && practice.get_untracked().is_some();
        if begins_with_set {
            alone.begin_set();
        }
        Self {
            model,
            part: RwSignal::new(if begins_with_set {
                Part::Alone
            } else {
                Part::Walk
            }),
            walk: Walk::new(model),
            alone,
            group: Group::new(model, set),
            record,
            set,
        }
    }

    /// Whether a case is shown large, with nothing else beside it.
    pub fn is_large(self) -> bool {
        let is_group = self.part.get() == Part::Group;
        self.group.showing.get() && is_group && self.model.view.get() == View::Practice
    }

    /// That the page has provided to its parts.
    pub fn of_page() -> Self {
        Once::of_page(|| Self::new(Model::of_page()))
    }
}
