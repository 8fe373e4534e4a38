//! A machine, an implement and kits of the built-in yard, to be changed before they are joined up.

use crate::demo;
use farend_core::choice::Weights;
use farend_core::compare::{Comparison, Outcome, Run, compare};
use farend_core::fit::{Item, Look, missing};
use farend_core::implement::Implement;
use farend_core::kit::Kit;
use farend_core::machine::Machine;
use farend_core::money::Prices;
use farend_core::route::RouteId;
use farend_core::route::joined::Joined;
use farend_core::route::part::{Hookup, NoFit, assemble};
use farend_core::settings::Settings;
use farend_core::survey::{Asked, Survey};
use farend_core::thermal::heat_at_job;
use farend_core::yard::Yard;

/// What is joined up, to be changed before it is.
pub struct Parts {
    /// What supplies the power.
    pub machine: Machine,
    /// What uses it.
    pub implement: Implement,
    /// What joins them.
    pub kits: Vec<Kit>,
    /// What is turned.
    pub settings: Settings,
}

impl Parts {
    /// Those with these identifiers, and all kits.
    ///
    /// # Panics
    /// Where the demo doesn't have them.
    pub fn of(machine: &str, implement: &str) -> Self {
        let Yard {
            machines,
            implements,
            kits,
            ..
        } = demo();
        let machine = machines.into_iter().find(|it| it.id == machine);
        let implement = implements.into_iter().find(|it| it.id == implement);
        Self {
            machine: machine.expect("a machine of the demo"),
            implement: implement.expect("an implement of the demo"),
            kits,
            settings: Settings::default(),
        }
    }

    /// All six routes.
    ///
    /// # Panics
    /// Where the settings don't fit the machine.
    pub fn compared(&self) -> Comparison {
        let all = compare(&self.machine, &self.implement, &self.kits, &self.settings);
        all.expect("settings that fit the machine")
    }

    /// All six routes with what is asked beside power.
    ///
    /// # Panics
    /// As [`Self::compared`].
    pub fn surveyed(&self, prices: &Prices, weights: Weights) -> (Comparison, Survey) {
        let comparison = self.compared();
        let asked = Asked {
            machine: &self.machine,
            implement: &self.implement,
            kits: &self.kits,
            settings: &self.settings,
            currency: None,
            prices,
            weights,
        };
        let survey = asked.survey(&comparison);
        (comparison, survey)
    }

    /// How a route runs, or why it doesn't fit.
    ///
    /// # Errors
    /// Every reason why it can't be had.
    ///
    /// # Panics
    /// As [`Self::compared`].
    pub fn route(&self, route: RouteId) -> Result<Run, Vec<NoFit>> {
        match self
            .compared()
            .route(route)
            .map(|result| result.outcome.clone())
        {
            Some(Outcome::Runs(run)) => Ok(*run),
            Some(Outcome::NoFit(why)) => Err(why),
            None => panic!("all six routes are there"),
        }
    }

    /// How a route runs.
    ///
    /// # Panics
    /// Where the route can't be had.
    pub fn run(&self, route: RouteId) -> Run {
        let run = self.route(route);
        run.unwrap_or_else(|why| panic!("{}: {why:?}", route.word()))
    }

    fn hookup(&self, run: &Run) -> Hookup<'_> {
        Hookup {
            machine: &self.machine,
            implement: &self.implement,
            kit: self.kits.iter().find(|kit| kit.id == run.kit),
            settings: &self.settings,
        }
    }

    /// A route joined up with the kit that it takes.
    ///
    /// # Panics
    /// As [`Self::run`].
    pub fn joined(&self, route: RouteId) -> Joined {
        assemble(route.parts(), self.hookup(&self.run(route))).expect("a route that runs")
    }

    /// Looks at a route with the kit that it takes.
    ///
    /// # Panics
    /// As [`Self::run`].
    pub fn look<T>(&self, route: RouteId, at: impl FnOnce(Look<'_>) -> T) -> T {
        let run = self.run(route);
        let hookup = self.hookup(&run);
        at(Look {
            route,
            machine: &self.machine,
            implement: &self.implement,
            settings: &self.settings,
            kit: hookup.kit.expect("a run names its kit"),
            run: Some(&run),
            heat: heat_at_job(route, hookup).as_ref(),
        })
    }

    /// What must fit for a route, or what is missing for it.
    pub fn items(&self, route: RouteId) -> Vec<Item> {
        match self.route(route) {
            Ok(_) => self.look(route, |look| look.items()),
            Err(why) => missing(&Outcome::NoFit(why)),
        }
    }

    /// Why a route can't be had.
    pub fn why(&self, route: RouteId) -> Vec<NoFit> {
        self.route(route).err().unwrap_or_default()
    }
}
