//! A pair of a yard as a case sets it.

use super::Case;
use crate::compare::{Candidate, Outcome, Run, best, evaluate};
use crate::fit::Look;
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use crate::quantity::Power;
use crate::route::RouteId;
use crate::route::part::Hookup;
use crate::settings::Settings;
use crate::yard::Yard;

/// A machine and an implement with all kits of their yard.
#[derive(Clone, Copy, Debug)]
pub(super) struct Scene<'a> {
    pub machine: &'a Machine,
    pub implement: &'a Implement,
    pub kits: &'a [Kit],
    pub settings: Settings,
}

impl<'a> Scene<'a> {
    /// That of a case; `None` where the yard doesn't have it.
    pub fn of(yard: &'a Yard, case: &Case) -> Option<Self> {
        Some(Self {
            machine: yard.machine(&case.machine)?,
            implement: yard.implement(&case.implement)?,
            kits: &yard.kits,
            settings: case.settings,
        })
    }

    /// A kit of the yard.
    pub fn kit(&self, id: &str) -> Option<&'a Kit> {
        self.kits.iter().find(|kit| kit.id == id)
    }

    /// Joined by a kit.
    pub fn hookup<'b>(&'b self, kit: &'b Kit) -> Hookup<'b> {
        Hookup {
            machine: self.machine,
            implement: self.implement,
            kit: Some(kit),
            settings: &self.settings,
        }
    }

    /// How a route comes out with one kit.
    pub fn with(&self, route: RouteId, kit: &Kit) -> Outcome {
        let kits = core::slice::from_ref(kit);
        evaluate(route, self.machine, self.implement, kits, &self.settings)
    }

    /// How a route runs with one kit.
    pub fn run(&self, route: RouteId, kit: &Kit) -> Option<Run> {
        match self.with(route, kit) {
            Outcome::Runs(run) => Some(*run),
            Outcome::NoFit(_) => None,
        }
    }

    /// The most that a route does with one kit at the likely values.
    pub fn likely<'b>(&self, route: RouteId, kit: &'b Kit) -> Option<Candidate<'b>> {
        let kits = core::slice::from_ref(kit);
        best(route, self.machine, self.implement, kits, &self.settings).ok()
    }

    /// The engine's net power at the speed that is set.
    pub fn engine_at_its_speed(&self) -> Power {
        let speed = self.settings.engine_speed_for(self.machine);
        self.settings.net_at(self.machine, speed).likely
    }

    /// Its net power at rated speed.
    pub fn engine_at_rated(&self) -> Power {
        let rated = self.machine.engine.rated;
        self.settings.net_at(self.machine, rated).likely
    }

    /// Whether something keeps a route with a kit from being hooked up.
    pub fn is_stopped(&self, route: RouteId, kit: &Kit) -> bool {
        Look::before(route, self.hookup(kit), kit).is_stopped()
    }

    /// The routes that can be hooked up and bring something, each with the kit that it takes.
    pub fn running(&self) -> Vec<(RouteId, &'a Kit)> {
        let of = |route: &RouteId| {
            let best = best(
                *route,
                self.machine,
                self.implement,
                self.kits,
                &self.settings,
            );
            let best = best.ok().filter(|it| it.most.stall.is_none())?;
            let fits = !self.is_stopped(*route, best.kit);
            fits.then_some((*route, best.kit))
        };
        RouteId::ALL.iter().filter_map(of).collect()
    }
}
