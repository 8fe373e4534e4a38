//! All six routes of a comparison with what is asked about them beside power: whether they can be
//! hooked up, where they sit, how warm they get, what they cost, which to take.

use crate::choice::{Candidate, Weighed, Weights, weigh};
use crate::compare::{Comparison, RouteResult, Run};
use crate::fit::{Item, Look, gravest, missing};
use crate::hookup::Seat;
use crate::implement::{Implement, ImplementKind};
use crate::kit::Kit;
use crate::machine::Machine;
use crate::money::{Prices, RoutePrices, yard_prices};
use crate::quantity::{Power, Time};
use crate::route::RouteId;
use crate::route::part::Hookup;
use crate::settings::Settings;
use crate::standing::Standing;
use crate::thermal::{Heat, heat_at_job};

/// A machine and an implement with all that a user has set for them.
#[derive(Clone, Copy, Debug)]
pub struct Asked<'a> {
    /// What supplies the power.
    pub machine: &'a Machine,
    /// What uses it.
    pub implement: &'a Implement,
    /// What the yard has to join them.
    pub kits: &'a [Kit],
    /// What the user has turned.
    pub settings: &'a Settings,
    /// The currency of the prices in machine, implement and kits.
    pub currency: Option<&'a str>,
    /// Prices beside the yard's.
    pub prices: &'a Prices,
    /// What matters.
    pub weights: Weights,
}

/// A route with what is known of it beside power.
#[derive(Clone, Debug, PartialEq)]
pub struct Surveyed {
    /// Which.
    pub route: RouteId,
    /// Whether it can be hooked up.
    pub items: Vec<Item>,
    /// The rest, where it runs.
    pub running: Option<Running>,
}

/// What is known of a route that runs.
#[derive(Clone, Debug, PartialEq)]
pub struct Running {
    /// Where it puts the implement.
    pub seat: Seat,
    /// Time to hook it up.
    pub hookup: Time,
    /// Whether that is the kit's own figure.
    pub hookup_known: bool,
    /// How warm its oil gets, where it has any.
    pub heat: Option<Heat>,
    /// What it costs.
    pub prices: RoutePrices,
    /// How it fares for good: where its oil passes its limit, no better than what arrives with the
    /// oil at it, but never worse than Slower for heat alone.
    pub for_good: Standing,
}

/// Six routes with all that is asked about them.
#[derive(Clone, Debug, PartialEq)]
pub struct Survey {
    /// The routes, in the order of [`RouteId::ALL`].
    pub routes: Vec<Surveyed>,
    /// Those to choose from, best first.
    pub weighed: Vec<Weighed>,
}

impl Survey {
    /// A route.
    pub fn route(&self, route: RouteId) -> Option<&Surveyed> {
        self.routes.iter().find(|it| it.route == route)
    }
}

impl Asked<'_> {
    /// Looks at all that was compared.
    pub fn survey(&self, comparison: &Comparison) -> Survey {
        let routes: Vec<_> = comparison
            .routes
            .iter()
            .map(|result| self.look(result, comparison.need.likely))
            .collect();
        Survey {
            weighed: weighed(&routes, self.implement.kind, self.weights),
            routes,
        }
    }

    fn look(&self, result: &RouteResult, need: Power) -> Surveyed {
        let route = result.route;
        let kit_of = |run: &Run| self.kits.iter().find(|kit| kit.id == run.kit);
        let Some((run, kit)) = result.run().and_then(|run| Some((run, kit_of(run)?))) else {
            return Surveyed {
                route,
                items: missing(&result.outcome),
                running: None,
            };
        };
        let hookup = Hookup {
            machine: self.machine,
            implement: self.implement,
            kit: Some(kit),
            settings: self.settings,
        };
        let heat = heat_at_job(route, hookup);
        let look = Look {
            route,
            machine: self.machine,
            implement: self.implement,
            settings: self.settings,
            kit,
            run: Some(run),
            heat: heat.as_ref(),
        };
        let seat = look.seat();
        let economy = self.settings.economy;
        let of_yard = match self.prices.are_in(self.currency) {
            true => yard_prices(route, self.machine, economy, self.implement, kit),
            false => RoutePrices::default(),
        };
        Surveyed {
            route,
            items: look.items(),
            running: Some(Running {
                seat,
                hookup: kit.hookup.unwrap_or_else(|| seat.usual_hookup()),
                hookup_known: kit.hookup.is_some(),
                prices: self.prices.of(route).or(of_yard),
                for_good: for_good(run, heat.as_ref(), need),
                heat,
            }),
        }
    }
}

/// The cautious rule's judgement; heat alone never makes it worse than Slower, for a cooler mends
/// it: this project's judgement.
fn for_good(run: &Run, heat: Option<&Heat>, need: Power) -> Standing {
    let standing = run.verdict.likely;
    let Some(heat) = heat.filter(|heat| heat.holds().is_some()) else {
        return standing;
    };
    let [cautious, _] = heat.settling;
    let arrives = cautious.for_good.unwrap_or(Power::ZERO);
    standing.min(Standing::of(arrives / need).max(Standing::Slower))
}

/// Those of the routes that are to choose from, best first.
pub fn weighed(routes: &[Surveyed], kind: ImplementKind, weights: Weights) -> Vec<Weighed> {
    let candidates: Vec<_> = routes.iter().filter_map(candidate).collect();
    weigh(&candidates, kind, weights)
}

fn candidate(surveyed: &Surveyed) -> Option<Candidate> {
    let running = surveyed.running.as_ref()?;
    Some(Candidate {
        route: surveyed.route,
        standing: running.for_good,
        fit: gravest(&surveyed.items),
        seat: running.seat,
        hookup: running.hookup,
        total: running.prices.total(),
    })
}
