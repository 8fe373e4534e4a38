//! All six routes of one machine and one implement beside each other.

use crate::budget::Budget;
use crate::chain::{Ledger, Running};
use crate::drive::Limit;
use crate::fault::Fault;
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
                outcome: with_best_kit(*route, pair, kits, &at_work),
            })
            .collect(),
    })
}

/// One route, with that of the kits which delivers most. The settings must have been checked.
pub fn evaluate(
    route: RouteId,
    machine: &Machine,
    implement: &Implement,
    kits: &[Kit],
    settings: &Settings,
) -> Outcome {
    let pair = Hookup {
        machine,
        implement,
        kit: None,
        settings,
    };
    let at_work = MachineAtWork::new(machine, implement, settings);
    with_best_kit(route, pair, kits, &at_work)
}

/// One route of a pair, with that of the kits which delivers most.
fn with_best_kit(
    route: RouteId,
    pair: Hookup<'_>,
    kits: &[Kit],
    at_work: &MachineAtWork,
) -> Outcome {
    let joined = |kit| assemble_at_work(route.parts(), Hookup { kit, ..pair }, at_work);
    let mut best: Option<Candidate<'_>> = None;
    let mut reasons: Option<Vec<NoFit>> = None;
    for kit in kits.iter().filter(|kit| kit.routes.contains(&route)) {
        match joined(Some(kit)) {
            // The kit that comes nearest says what is in the way.
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
                let more =
                    |than: &Candidate<'_>| candidate.delivers() > than.delivers() * (1.0 + SAME);
                if best.as_ref().is_none_or(more) {
                    best = Some(candidate);
                }
            }
        }
    }
    let run = best.and_then(|best| best.run(pair.implement, pair.settings));
    match (run, reasons) {
        (Some(run), _) => Outcome::Runs(Box::new(run)),
        (None, Some(reasons)) => Outcome::NoFit(reasons),
        (None, None) => match joined(None) {
            Err(reasons) => Outcome::NoFit(reasons),
            Ok(_) => Outcome::NoFit(vec![NoFit::NoKit]),
        },
    }
}

/// Kits that differ less than this in proportion deliver the same, and the first in the yard is
/// taken.
const SAME: f64 = 1e-9;

/// A kit joined up, and the most that it can do at the likely values.
struct Candidate<'a> {
    kit: &'a Kit,
    joined: Joined,
    most: Running,
    limit: Limit,
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
        })
    }

    fn delivers(&self) -> Power {
        self.most.arrives()
    }

    fn run(mut self, implement: &Implement, settings: &Settings) -> Option<Run> {
        let need = need_for(implement, settings);
        let ledger = self
            .joined
            .chain(Corner::LIKELY)
            .ledger(&self.most, self.limit)
            .ok()?;
        let delivered = self.joined.range(self.delivers())?;
        let rotor = ledger
            .delivered()
            .and_then(|drive| drive.rate.turning().ok())
            .unwrap_or(AngularSpeed::ZERO);
        let mut verdict = Verdict::of(delivered, need);
        if rotor < implement.rotor.lowest {
            verdict = verdict.at_most(Standing::Labours);
        }
        Some(Run {
            kit: self.kit.id.clone(),
            delivered,
            rotor,
            limit: binding(&ledger, rotor, implement, need.likely),
            verdict,
            warnings: warnings(&ledger, rotor, implement, self.kit, (need.likely, settings)),
            ledger,
        })
    }
}

/// The limit that binds: where pressure holds the torque but the speed is the shorter of the two,
/// it's the flow.
fn binding(ledger: &Ledger, rotor: AngularSpeed, implement: &Implement, need: Power) -> Limit {
    let (Limit::Pressure, Some(drive)) = (ledger.limit, ledger.delivered()) else {
        return ledger.limit;
    };
    // n/n_r against T/T_need, T_need = P_need/ω_r; P = T·ω
    let speed = rotor / implement.rotor.rated;
    let torque = (drive.power / need) / speed;
    if speed < 1.0 && speed < torque {
        Limit::Flow
    } else {
        Limit::Pressure
    }
}
