//! All six routes of one machine and one implement beside each other.

use crate::budget::Budget;
use crate::chain::{Ledger, Running};
use crate::drive::{Limit, Rate, Stall};
use crate::fault::Fault;
use crate::fit::{Judgement, Look, gravest};
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use crate::quantity::{AngularSpeed, Power};
use crate::route::RouteId;
use crate::route::joined::Joined;
use crate::route::part::{Hookup, MachineAtWork, NoFit, assemble_at_work};
use crate::settings::Settings;
use crate::spread::{Corner, Spread};
use crate::standing::{Standing, Verdict};
use crate::warning::{Warning, warnings};
use crate::work::need_for;
use core::cell::OnceCell;

/// What every route of a comparison came to.
#[derive(Clone, Debug, PartialEq)]
pub struct Comparison {
    /// The engine's speed, its net power there, and what air and driving take of it.
    pub budget: Budget,
    /// What the job needs at the rotor.
    pub need: Spread<Power>,
    /// The routes, in the order of [`RouteId::ALL`].
    pub routes: Vec<RouteResult>,
}

/// One route.
#[derive(Clone, Debug, PartialEq)]
pub struct RouteResult {
    /// Which.
    pub route: RouteId,
    /// How it came out.
    pub outcome: Outcome,
}

/// How a route came out.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// It can't be hooked up, and why.
    NoFit(Vec<NoFit>),
    /// It can.
    Runs(Box<Run>),
}

/// A route at work.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// Identifier of the kit that it takes.
    pub kit: String,
    /// Its ledger at the likely values.
    pub ledger: Ledger,
    /// What arrives at the rotor.
    pub delivered: Spread<Power>,
    /// The rotor's speed, at the likely values.
    pub rotor: AngularSpeed,
    /// What holds it where it is.
    pub limit: Limit,
    /// How it fares.
    pub verdict: Verdict,
    /// What a user must know beside the figures.
    pub warnings: Vec<Warning>,
}

impl RouteResult {
    /// The run, where it can be hooked up.
    pub fn run(&self) -> Option<&Run> {
        match &self.outcome {
            Outcome::Runs(run) => Some(run),
            Outcome::NoFit(_) => None,
        }
    }
}

impl Comparison {
    /// The result of one route.
    pub fn route(&self, route: RouteId) -> Option<&RouteResult> {
        self.routes.iter().find(|result| result.route == route)
    }

    /// The routes that can be hooked up, most delivered first.
    pub fn ranked(&self) -> Vec<(RouteId, &Run)> {
        let mut runs: Vec<_> = self
            .routes
            .iter()
            .filter_map(|result| Some((result.route, result.run()?)))
            .collect();
        runs.sort_by(|(_, a), (_, b)| {
            let (a, b) = (a.delivered.likely.to_si(), b.delivered.likely.to_si());
            b.total_cmp(&a)
        });
        runs
    }
}

/// Compares all routes.
///
/// # Errors
/// Every setting that is out of its range.
pub fn compare(
    machine: &Machine,
    implement: &Implement,
    kits: &[Kit],
    settings: &Settings,
) -> Result<Comparison, Vec<Fault>> {
    settings.check(machine)?;
    let pair = Hookup {
        machine,
        implement,
        kit: None,
        settings,
    };
    let at_work = MachineAtWork::new(machine, implement, settings);
    Ok(Comparison {
        budget: at_work.budget,
        need: need_for(implement, settings),
        routes: RouteId::ALL
            .iter()
            .map(|route| RouteResult {
                route: *route,
                outcome: outcome(
                    with_best_kit(*route, pair, serving(*route, kits), &at_work),
                    implement,
                    settings,
                ),
            })
            .collect(),
    })
}

/// One route, with that of the kits which fits and delivers most. The settings must have been checked.
pub fn evaluate(
    route: RouteId,
    machine: &Machine,
    implement: &Implement,
    kits: &[Kit],
    settings: &Settings,
) -> Outcome {
    let best = best(route, machine, implement, kits, settings);
    outcome(best, implement, settings)
}

/// What comes of the best kit.
fn outcome(
    best: Result<Candidate<'_>, Vec<NoFit>>,
    implement: &Implement,
    settings: &Settings,
) -> Outcome {
    match best {
        Ok(best) => best
            .run(implement, settings)
            .map_or(Outcome::NoFit(vec![NoFit::NoKit]), |run| {
                Outcome::Runs(Box::new(run))
            }),
        Err(reasons) => Outcome::NoFit(reasons),
    }
}

/// That of the kits which fits and delivers most by a route, or why none can be joined up. The
/// settings must have been checked.
pub(crate) fn best<'a>(
    route: RouteId,
    machine: &Machine,
    implement: &Implement,
    kits: &'a [Kit],
    settings: &Settings,
) -> Result<Candidate<'a>, Vec<NoFit>> {
    let pair = Hookup {
        machine,
        implement,
        kit: None,
        settings,
    };
    let at_work = MachineAtWork::new(machine, implement, settings);
    with_best_kit(route, pair, serving(route, kits), &at_work)
}

/// Those of the kits that serve a route.
pub(crate) fn serving(route: RouteId, kits: &[Kit]) -> impl Iterator<Item = &Kit> {
    kits.iter().filter(move |kit| kit.routes.contains(&route))
}

/// The same for a pair of which the shared part has been worked out, and kits that serve the route.
pub(crate) fn with_best_kit<'a>(
    route: RouteId,
    pair: Hookup<'_>,
    kits: impl Iterator<Item = &'a Kit>,
    at_work: &MachineAtWork,
) -> Result<Candidate<'a>, Vec<NoFit>> {
    let joined = |kit| assemble_at_work(route.parts(), Hookup { kit, ..pair }, at_work);
    let mut best: Option<Candidate<'a>> = None;
    let mut reasons: Option<Vec<NoFit>> = None;
    for kit in kits {
        match joined(Some(kit)) {
            // What no kit mends is all that is in the way.
            Err(mut why) if why.iter().any(|reason| !reason.is_of_kit()) => {
                why.retain(|reason| !reason.is_of_kit());
                return Err(why);
            }
            // Else the kit that comes nearest says it.
            Err(why) => {
                reasons = Some(match reasons {
                    Some(fewer) if fewer.len() <= why.len() => fewer,
                    _ => why,
                });
            }
            Ok(joined) => {
                let Some(candidate) = Candidate::new(kit, joined) else {
                    continue;
                };
                let better = |than: &Candidate<'_>| {
                    let stopped = |it: &Candidate<'_>| it.fit(route, pair) == Judgement::Stop;
                    match (stopped(&candidate), stopped(than)) {
                        (false, true) => true,
                        (true, false) => false,
                        _ => candidate.delivers() > than.delivers() * (1.0 + SAME),
                    }
                };
                if best.as_ref().is_none_or(better) {
                    best = Some(candidate);
                }
            }
        }
    }
    match (best, reasons) {
        (Some(best), _) => Ok(best),
        (None, Some(reasons)) => Err(reasons),
        (None, None) => match joined(None) {
            Err(reasons) => Err(reasons),
            Ok(_) => Err(vec![NoFit::NoKit]),
        },
    }
}

/// Kits that differ less than this in proportion deliver the same, and the first in the yard is
/// taken.
const SAME: f64 = 1e-9;

/// A kit joined up, and the most that it can do at the likely values.
pub(crate) struct Candidate<'a> {
    /// The kit.
    pub(crate) kit: &'a Kit,
    /// Its route.
    pub(crate) joined: Joined,
    /// The most.
    pub(crate) most: Running,
    /// What holds it there.
    pub(crate) limit: Limit,
    /// What all that must fit comes to, once it was asked for.
    fit: OnceCell<Judgement>,
}

impl<'a> Candidate<'a> {
    /// `None` only where a route's list of parts is itself wrong.
    fn new(kit: &'a Kit, joined: Joined) -> Option<Self> {
        let (most, limit) = joined.chain(Corner::LIKELY).most().ok()?;
        Some(Self {
            kit,
            joined,
            most,
            limit,
            fit: OnceCell::new(),
        })
    }

    /// What all that must fit comes to on the route and with the pair that it was joined up for.
    pub(crate) fn fit(&self, route: RouteId, pair: Hookup<'_>) -> Judgement {
        let look = || gravest(&Look::before(route, pair, self.kit).items());
        *self.fit.get_or_init(look)
    }

    /// What arrives.
    pub(crate) fn delivers(&self) -> Power {
        self.most.arrives()
    }

    /// Its ledger.
    pub(crate) fn ledger(&self) -> Result<Ledger, Stall> {
        let chain = self.joined.chain(Corner::LIKELY);
        chain.ledger(&self.most, self.limit)
    }

    /// The rotor's speed.
    pub(crate) fn rotor(&self) -> AngularSpeed {
        match (self.most.stall, self.most.end.rate) {
            (None, Rate::Turning(speed)) => speed,
            _ => AngularSpeed::ZERO,
        }
    }

    fn run(mut self, implement: &Implement, settings: &Settings) -> Option<Run> {
        let need = need_for(implement, settings);
        let ledger = self.ledger().ok()?;
        let delivered = self.joined.range(self.delivers())?;
        let rotor = self.rotor();
        let verdict = Verdict::of(delivered, need).at_most(at_speed(rotor, implement));
        Some(Run {
            kit: self.kit.id.clone(),
            delivered,
            rotor,
            limit: binding(
                ledger.limit,
                (ledger.delivered().map(|it| it.power), rotor),
                implement,
                need.likely,
            ),
            verdict,
            warnings: warnings(&ledger, rotor, implement, self.kit, (need.likely, settings)),
            ledger,
        })
    }
}

/// The best standing that a rotor's speed allows: below its lowest it no longer works properly.
pub(crate) fn at_speed(rotor: AngularSpeed, implement: &Implement) -> Standing {
    if implement.rotor.is_too_slow(rotor) {
        Standing::Labours
    } else {
        Standing::Ample
    }
}

/// The limit that binds: where pressure holds the torque but the speed is the shorter of the two,
/// it's the flow.
pub(crate) fn binding(
    limit: Limit,
    (arrives, rotor): (Option<Power>, AngularSpeed),
    implement: &Implement,
    need: Power,
) -> Limit {
    let (Limit::Pressure, Some(arrives)) = (limit, arrives) else {
        return limit;
    };
    // n/n_r against T/T_need, T_need = P_need/ω_r; P = T·ω
    let speed = rotor / implement.rotor.rated;
    let torque = (arrives / need) / speed;
    if speed < 1.0 && speed < torque {
        Limit::Flow
    } else {
        Limit::Pressure
    }
}
