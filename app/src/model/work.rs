//! The job, and how the work goes by each route.

use super::Model;
use farend_core::compare::Comparison;
use farend_core::machine::Machine;
use farend_core::measure::{Amount, Measure};
use farend_core::route::RouteId;
use farend_core::route::part::{Hookup, assemble};
use farend_core::settings::Settings;
use farend_core::work::{Progress, progress};
use leptos::prelude::*;

/// The job that stands there until one is entered: an amount that a person can picture.
pub fn first_job(measure: Measure) -> Amount {
    match measure {
        Measure::Mass => Amount::of(measure, 10_000.0),
        Measure::Area => Amount::of(measure, 1_000.0),
        Measure::Volume => Amount::of(measure, 10.0),
        Measure::Length => Amount::of(measure, 500.0),
    }
}

impl Model {
    /// The measures in which a job can be given, where anything is known of the work.
    pub fn measures(self) -> Option<Vec<Measure>> {
        let work = self.implement.read().as_ref()?.work?;
        let swath = self.settings.get().swath_for(&work);
        let own = Amount::of(work.measure, 1.0);
        let fits = |measure: &Measure| own.in_measure(*measure, &swath).is_some();
        Some(Measure::ALL.iter().copied().filter(fits).collect())
    }

    /// The job asked for, else a usual one.
    pub fn job(self) -> Option<Amount> {
        let measures = self.measures()?;
        let set = self.settings.get().job;
        let set = set.filter(|job| measures.contains(&job.measure()));
        // Ground is what people know the size of.
        let usual = [Measure::Area, Measure::Mass, Measure::Volume]
            .into_iter()
            .find(|measure| measures.contains(measure));
        set.or_else(|| usual.or(measures.first().copied()).map(first_job))
    }

    /// How that job goes by each route that runs.
    pub fn progress(self) -> Option<Vec<(RouteId, Progress)>> {
        let machine = self.machine.read();
        let settings = Settings {
            job: self.job(),
            ..self.settings.get()
        };
        let all = self.comparison.read();
        self.progress_on(machine.as_ref()?, &settings, all.as_ref()?)
    }

    /// How the work goes on a machine by each route that runs there.
    pub fn progress_on(
        self,
        machine: &Machine,
        settings: &Settings,
        all: &Comparison,
    ) -> Option<Vec<(RouteId, Progress)>> {
        let implement = self.implement.read();
        let implement = implement.as_ref()?;
        let yard = self.yard.read();
        let each = RouteId::ALL.iter().filter_map(|route| {
            let hookup = Hookup {
                machine,
                implement,
                kit: Some(yard.kit(&all.route(*route)?.run()?.kit)?),
                settings,
            };
            let mut joined = assemble(route.parts(), hookup).ok()?;
            Some((*route, progress(&mut joined, machine, implement, settings)?))
        });
        Some(each.collect())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::tests::with_model;

    #[test]
    fn no_time_is_saved_for_a_job_that_nobody_set() {
        with_model("", |model| {
            let timed = || {
                model.with_saved(|saved| {
                    let mut all = saved.progress.iter();
                    all.any(|(_, progress)| progress.time.is_some())
                })
            };
            assert_eq!(timed(), Some(false));
            assert!(model.set_job(Amount::of(Measure::Area, 2_000.0)));
            assert_eq!(timed(), Some(true));
        });
    }
}
