//! An implement at work: how much of its work a route keeps up, and what limits it.

use crate::chain::{Chain, Running};
use crate::drive::Limit;
use crate::implement::{Implement, ImplementKind, Work};
use crate::machine::Machine;
use crate::measure::{Amount, Measure};
use crate::physics::throwing::{casting_bound, casting_ratio, tip_speed};
use crate::quantity::{AngularSpeed, Length, Power, Time, Velocity};
use crate::root::rising_root;
use crate::route::joined::Joined;
use crate::settings::Settings;
use crate::source::Source;
use crate::spread::{Corner, Scenario, Spread};
use crate::stage::StagePhysics;

/// What an implement takes at each speed of its rotor, when it does the job that its need is for.
#[derive(Clone, Copy, Debug)]
pub struct Load<'a> {
    implement: &'a Implement,
    need: Power,
    /// A part of the job, 0 to 1: at 0 the rotor turns empty.
    part: f64,
}

impl<'a> Load<'a> {
    /// The whole job.
    pub fn new(implement: &'a Implement, need: Power) -> Self {
        Self {
            implement,
            need,
            part: 1.0,
        }
    }

    /// A part of the job, 0 to 1.
    pub fn part(self, part: f64) -> Self {
        Self { part, ..self }
    }

    /// Power at a speed of the rotor.
    ///
    /// Equation: P = P₀·x² + (P_need − P₀)·k·xᵐ with x = n/n_r and k the part of the job; P =
    /// P_need·k·x, the same torque at every speed, where nothing is known of the work. Units: SI.
    /// Valid range: speed from 0.
    /// Source: this project's judgement, see [`Work`].
    pub fn at(&self, speed: AngularSpeed) -> Power {
        let x = speed / self.implement.rotor.rated;
        match &self.implement.work {
            Some(work) => {
                let rate = work.rate(Corner::LIKELY, self.need, 1.0);
                work.power(Corner::LIKELY, rate * self.part, x)
            }
            // P = P_need·k·x
            None => self.need * (self.part * x),
        }
    }
}

/// What the job asked takes at the rotor: the yard's own figure, or what follows from speed, depth
/// and density where one of them was set.
///
/// Equation: P = P₀ + e·b·h·ρ·v, by the measure. Units: SI. Valid range: as the settings'.
/// Source: that of the coefficients.
pub fn need_for(implement: &Implement, settings: &Settings) -> Spread<Power> {
    let turned =
        settings.ground_speed.is_some() || settings.depth.is_some() || settings.density.is_some();
    let asked = implement
        .work
        .filter(|_| turned && implement.travel.is_some())
        .and_then(|work| {
            let per_metre = settings.swath_for(&work).per_metre(work.measure)?;
            let rate = per_metre * settings.ground_speed_for(implement).to_si();
            let at = |merit| work.power(Corner::all(merit), rate, 1.0);
            use Scenario::{High, Likely, Low};
            Some(Spread::new(at(High), at(Likely), at(Low), Source::Computed))
        });
    asked.unwrap_or(implement.need)
}

/// How the work goes by a route.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Progress {
    /// What it is measured in.
    pub measure: Measure,
    /// The most work for each second, in SI units of the measure: none where the rotor is too slow
    /// to do it properly.
    pub rate: Spread<f64>,
    /// The speed over ground that goes with it, where the implement is driven.
    pub ground_speed: Option<Spread<Velocity>>,
    /// What holds it there; nothing that limits power does where a shaft turns the rotor too slowly.
    pub limit: Option<Limit>,
    /// Time for the job, quickest first, where one is asked and its measure can be turned into the
    /// work's; no time where it's never done.
    pub time: Option<Spread<Option<Time>>>,
    /// The rotor's speed at that work.
    pub rotor: AngularSpeed,
    /// Whether that is below the lowest at which the work is done properly.
    pub too_slow: bool,
    /// Speed of the rotor's tips.
    pub tip: Option<Velocity>,
    /// For a thrower: how far it throws at the most, and over what it throws at rated speed.
    pub casting: Option<(Length, f64)>,
}

/// The most at one corner.
struct Most {
    rate: f64,
    rotor: AngularSpeed,
    limit: Option<Limit>,
}

/// How the work goes by a route that is joined up; `None` where nothing is known of the work or
/// nothing moves.
pub fn progress(
    joined: &mut Joined,
    machine: &Machine,
    implement: &Implement,
    settings: &Settings,
) -> Option<Progress> {
    let work = implement.work?;
    let job = Job {
        machine,
        implement,
        settings,
        work: &work,
        per_metre: implement
            .travel
            .and_then(|_| settings.swath_for(&work).per_metre(work.measure))
            .filter(|per_metre| *per_metre > 0.0),
    };
    let likely = job.most(joined, Corner::LIKELY)?;
    let (mut least, mut best) = (likely.rate, likely.rate);
    for corner in joined.corners() {
        let rate = job.most(joined, corner).map_or(0.0, |most| most.rate);
        least = least.min(rate);
        best = best.max(rate);
    }
    let rate = Spread::new(least, likely.rate, best, Source::Computed);
    let swath = settings.swath_for(&work);
    let amount = settings
        .job
        .and_then(|job| job.in_measure(work.measure, &swath));
    // t = A/w: the slowest takes longest.
    let time = |amount: Amount| {
        let at = |rate: f64| (rate > 0.0).then(|| Time::seconds(amount.to_si() / rate));
        Spread::new(
            at(rate.high),
            at(rate.likely),
            at(rate.low),
            Source::Computed,
        )
    };
    let diameter = implement.rotor.diameter;
    let tip = diameter.map(|diameter| tip_speed(likely.rotor, diameter));
    let throws = implement.kind == ImplementKind::Thrower;
    Some(Progress {
        measure: work.measure,
        rate,
        ground_speed: job
            .per_metre
            .map(|per_metre| rate.map(|rate| Velocity::metres_per_second(rate / per_metre))),
        limit: likely.limit,
        time: amount.map(time),
        rotor: likely.rotor,
        too_slow: implement.rotor.is_too_slow(likely.rotor),
        tip,
        casting: tip.filter(|_| throws).map(|tip| {
            let ratio = casting_ratio(likely.rotor, implement.rotor.rated);
            (casting_bound(tip), ratio)
        }),
    })
}

struct Job<'a> {
    machine: &'a Machine,
    implement: &'a Implement,
    settings: &'a Settings,
    work: &'a Work,
    /// Work for each metre of way, where it is driven.
    per_metre: Option<f64>,
}

impl Job<'_> {
    /// The most work at a corner. The faster it is driven, the more is worked and the less the
    /// engine has left for it.
    fn most(&self, joined: &Joined, corner: Corner) -> Option<Most> {
        let (Some(per_metre), Some(travel)) = (self.per_metre, self.implement.travel) else {
            return self.with(joined.chain(corner), corner);
        };
        let at = |speed: Velocity| {
            let budget =
                joined
                    .budget
                    .driven_at(self.machine, self.implement, self.settings, speed);
            let chain = Chain {
                available: budget.left(corner),
                ..joined.chain(corner)
            };
            self.with(chain, corner)
        };
        let speed = |part: f64| travel.highest * part;
        // What is met with at a speed, less what can be done at it.
        let part = rising_root(|part| {
            let done = at(speed(part)).map_or(0.0, |most| most.rate);
            per_metre * speed(part).to_si() - done
        });
        let most = at(speed(part))?;
        Some(Most {
            rate: per_metre * speed(part).to_si(),
            limit: if part < 1.0 {
                most.limit
            } else {
                Some(Limit::Implement)
            },
            ..most
        })
    }

    fn with(&self, chain: Chain<'_>, corner: Corner) -> Option<Most> {
        let (most, limit) = chain.most().ok()?;
        let (power, rotor) = arriving(&most)?;
        let bounds = &self.implement.rotor;
        if bounds.is_too_slow(rotor) {
            // Whatever its power: it drops its load at its feet.
            let has_oil = chain.stages.iter().any(|it| it.kind().heats_oil());
            return Some(Most {
                rate: 0.0,
                rotor,
                limit: has_oil.then_some(Limit::Flow),
            });
        }
        Some(Most {
            rate: self.work.rate(corner, power, rotor / bounds.rated),
            rotor,
            limit: Some(limit),
        })
    }
}

/// Power and speed at the rotor; `None` after a stall.
fn arriving(running: &Running) -> Option<(Power, AngularSpeed)> {
    match running.stall {
        Some(_) => None,
        None => Some((running.end.power, running.end.rate.turning().ok()?)),
    }
}
