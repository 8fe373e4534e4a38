//! Cases for one learner.

use super::desk::{Desk, Worked, worked};
use super::record::RecordModel;
use crate::browser;
use crate::model::Model;
use farend_core::practice::{
    Answered, Case, Confidence, Draw, Guess, Help, Judged, Kind, draw, judge,
};
use leptos::prelude::*;

/// What the learner has said to a case, and what that was worth.
#[derive(Clone, Debug, PartialEq)]
pub struct Committed {
    /// The guess.
    pub guess: Guess,
    /// How sure.
    pub confidence: Confidence,
    /// Held against the truth.
    pub judged: Judged,
}

/// Cases for one.
#[derive(Clone, Copy)]
pub struct Alone {
    model: Model,
    record: RecordModel,
    set: Memo<Vec<Draw>>,
    /// What is practised; everything where nothing is chosen.
    pub kind: RwSignal<Option<Kind>>,
    /// The case that is asked.
    pub draw: RwSignal<Option<Draw>>,
    /// Its place in the set, where it comes from that.
    pub place: RwSignal<Option<usize>>,
    /// The case.
    pub desk: Desk,
    /// How much help there is with it.
    pub help: RwSignal<Help>,
    /// What was said, once it was.
    pub committed: RwSignal<Option<Committed>>,
}

impl Alone {
    /// Nothing is asked yet.
    pub fn new(model: Model, record: RecordModel, set: Memo<Vec<Draw>>) -> Self {
        let draw = RwSignal::new(None);
        Self {
            model,
            record,
            set,
            kind: RwSignal::new(None),
            draw,
            place: RwSignal::new(None),
            desk: Desk::new(model, draw.into()),
            help: RwSignal::new(Help::Shown),
            committed: RwSignal::new(None),
        }
    }

    /// Asks a case.
    pub fn ask(self, draw: Draw) {
        self.desk.close();
        self.committed.set(None);
        self.draw.set(Some(draw));
        let case = self.desk.case.read_untracked();
        if let Some(case) = case.as_ref() {
            let record = self.record.record.read_untracked();
            self.help.set(record.help(case.idea));
        }
    }

    /// Asks a case of its own drawing.
    pub fn ask_any(self, kind: Option<Kind>) {
        self.place.set(None);
        let seed = browser::any_number();
        let any = Kind::ALL
            .iter()
            .cycle()
            .nth(seed as usize % Kind::ALL.len());
        if let Some(kind) = kind.or(any.copied()) {
            self.ask(Draw { kind, seed });
        }
    }

    /// Asks a case again.
    pub fn ask_again(self, draw: Draw) {
        self.place.set(None);
        self.ask(draw);
    }

    /// Asks the first case of the set.
    pub fn begin_set(self) {
        self.ask_of_set(0);
    }

    /// The place of the next case of the set, where there is one.
    pub fn next_place(self) -> Option<usize> {
        let next = self.place.get()? + 1;
        (next < self.set.read().len()).then_some(next)
    }

    /// Asks a case of the set.
    pub fn ask_of_set(self, place: usize) {
        let draw = self.set.read_untracked().get(place).copied();
        if let Some(draw) = draw {
            self.place.set(Some(place));
            self.ask(draw);
        }
    }

    /// Takes the answer, opens the truth and keeps what came of it.
    pub fn commit(self, guess: Guess, confidence: Confidence) {
        self.desk.open();
        let judged = self.desk.answer.with_untracked(|worked| {
            let worked = worked.as_ref()?;
            Some((
                worked.case.idea,
                judge(&worked.case, &worked.answer, &guess),
            ))
        });
        let Some((idea, judged)) = judged else {
            return;
        };
        self.committed.set(Some(Committed {
            guess,
            confidence,
            judged,
        }));
        self.record.add(Answered {
            idea,
            right: judged.right,
            confidence,
            help: self.help.get_untracked(),
        });
    }

    /// A case of the same kind on another pair, worked out.
    pub fn example(self, case: &Case) -> Option<Worked> {
        /// Draws that are tried: more would make the learner wait.
        const TRIES: u32 = 12;
        let yard = self.model.yard.read();
        let draws = (1..=TRIES).map(|next| Draw {
            seed: case.draw.seed.wrapping_add(next),
            ..case.draw
        });
        let mut cases = draws.filter_map(|of| draw(&yard, of));
        let other = cases
            .find(|other| other.machine != case.machine || other.implement != case.implement)?;
        worked(&yard, &other)
    }
}
