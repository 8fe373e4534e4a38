//! A comparison with all that comes of it, as a file.

use farend_core::compare::{Comparison, compare};
use farend_core::export::comparison::Saved;
use farend_core::route::RouteId;
use farend_core::state::State;
use farend_core::survey::{Asked, Survey};
use farend_core::work::Progress;
use farend_core::yard::Yard;

/// A comparison of a yard's own.
pub struct Made {
    /// The yard.
    pub yard: Yard,
    /// What is chosen in it.
    pub state: State,
    /// What comes of it.
    pub comparison: Comparison,
    /// And beside power.
    pub survey: Survey,
    /// How the job goes by some routes: by none unless a test says so.
    pub progress: Vec<(RouteId, Progress)>,
}

/// Compares what a state chooses.
///
/// # Panics
/// Where the yard has no such machine or implement, or the settings don't suit the machine.
pub fn made(yard: Yard, state: State) -> Made {
    let machine = yard.machine(&state.machine).expect("a machine");
    let implement = yard.implement(&state.implement).expect("an implement");
    let comparison =
        compare(machine, implement, &yard.kits, &state.settings).expect("settings in range");
    let asked = Asked {
        machine,
        implement,
        kits: &yard.kits,
        settings: &state.settings,
        currency: yard.currency.as_deref(),
        prices: &state.prices,
        weights: state.weights,
    };
    let survey = asked.survey(&comparison);
    Made {
        yard,
        state,
        comparison,
        survey,
        progress: Vec::new(),
    }
}

impl Made {
    /// The text of its file.
    ///
    /// # Panics
    /// Where a number isn't finite.
    pub fn text(&self) -> String {
        let saved = Saved {
            yard: &self.yard,
            state: &self.state,
            machine: self.yard.machine(&self.state.machine).expect("a machine"),
            implement: self
                .yard
                .implement(&self.state.implement)
                .expect("an implement"),
            comparison: &self.comparison,
            survey: &self.survey,
            progress: &self.progress,
        };
        saved.to_json().expect("finite numbers")
    }
}
