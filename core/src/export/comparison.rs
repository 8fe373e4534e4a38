//! A comparison as a file: the yard and all that a user has chosen, and beside them the results
//! for people and other programs. Only yard and choices are read back ([`super::open`]).

use crate::compare::{Comparison, Run};
use crate::drive::Limit;
use crate::fit::{Judgement, gravest};
use crate::hookup::Seat;
use crate::implement::Implement;
use crate::machine::Machine;
use crate::quantity::{Power, Time};
use crate::route::RouteId;
use crate::spread::Spread;
use crate::standing::Standing;
use crate::state::State;
use crate::survey::{Running, Survey, Surveyed};
use crate::words::words;
use crate::work::Progress;
use crate::yard::Yard;
use serde::Serialize;
use serde_json::Value;

words! {
    /// What kind of file it is.
    Format {
        /// A saved comparison.
        Comparison = "farend-comparison",
    }
}

/// The version that this program writes and reads.
pub const FORMAT_VERSION: u32 = 1;
/// Where an editor finds the schema: beside the file.
const SCHEMA: &str = "comparison.schema.json";

/// A saved comparison.
#[derive(Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SavedComparison<'a> {
    /// The schema that it follows.
    #[serde(rename = "$schema")]
    schema: &'static str,
    /// What kind of file it is.
    format: Format,
    /// 1.
    #[cfg_attr(feature = "schema", schemars(range(min = 1, max = 1)))]
    format_version: u32,
    /// All that was chosen, as in the page's address. Read back.
    link: String,
    /// The yard that it was chosen from. Read back.
    #[cfg_attr(feature = "schema", schemars(with = "crate::yard::entry::YardEntry"))]
    yard: &'a Value,
    /// What came of it. For people and other programs: not read back.
    results: Results,
}

/// What came of a comparison.
#[derive(Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Results {
    /// The machine's name.
    machine: String,
    /// The implement's name.
    implement: String,
    /// The engine's speed.
    engine_rpm: f64,
    /// The engine's net power at that speed.
    engine_kw: Three,
    /// What the job needs at the rotor.
    need_kw: Three,
    /// The six routes.
    routes: Vec<RouteResults>,
}

/// Three values in rising order.
#[derive(Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Three {
    /// Lowest to expect.
    low: f64,
    /// To expect.
    likely: f64,
    /// Highest to expect.
    high: f64,
}

words! {
    /// Whether a route can be hooked up: the gravest of all that was looked at.
    Fits {
        /// It fits.
        Yes = "yes",
        /// It can be done; something should be known or changed.
        WithAdvice = "with_advice",
        /// Something isn't known: ask.
        Ask = "ask",
        /// Not like this.
        No = "no",
    }
}

impl From<Judgement> for Fits {
    fn from(judgement: Judgement) -> Self {
        match judgement {
            Judgement::Pass => Self::Yes,
            Judgement::Advice => Self::WithAdvice,
            Judgement::Question => Self::Ask,
            Judgement::Stop => Self::No,
        }
    }
}

/// What came of one route.
#[derive(Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct RouteResults {
    /// Which.
    route: RouteId,
    /// Whether it can be hooked up.
    fits: Fits,
    /// How it runs; left out where a part of it is missing.
    #[serde(skip_serializing_if = "Option::is_none")]
    runs: Option<RunResults>,
}

/// How a route runs.
#[derive(Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct RunResults {
    /// How it fares against the need.
    standing: Standing,
    /// How it fares for good, when the oil has warmed up.
    standing_for_good: Standing,
    /// What arrives at the rotor.
    delivered_kw: Three,
    /// The likely part of the engine's net power that arrives.
    delivered_part: f64,
    /// What the stages lose together.
    lost_kw: f64,
    /// What the engine could give and the route can't take up.
    not_taken_up_kw: f64,
    /// The rotor's speed.
    rotor_rpm: f64,
    /// What holds it where it is.
    limit: Limit,
    /// Identifier of the kit that it takes.
    kit: String,
    /// Where it puts the implement.
    seat: Seat,
    /// Time to hook it up.
    hookup_min: f64,
    /// Likely time for the job, where one is set and can be done.
    #[serde(skip_serializing_if = "Option::is_none")]
    job_min: Option<f64>,
    /// What it costs to buy in the currency of the prices, where all of that is known.
    #[serde(skip_serializing_if = "Option::is_none")]
    price: Option<f64>,
}

/// All that is saved of a comparison.
#[derive(Clone, Copy, Debug)]
pub struct Saved<'a> {
    /// The yard.
    pub yard: &'a Yard,
    /// What was chosen.
    pub state: &'a State,
    /// The machine that this means.
    pub machine: &'a Machine,
    /// The implement.
    pub implement: &'a Implement,
    /// What came of it.
    pub comparison: &'a Comparison,
    /// And beside power.
    pub survey: &'a Survey,
    /// How the job goes by the routes of which that is known.
    pub progress: &'a [(RouteId, Progress)],
}

impl<'a> Saved<'a> {
    /// The text of the file.
    ///
    /// # Errors
    /// As the library's, where a number has no place in JSON.
    pub fn to_json(self) -> serde_json::Result<String> {
        serde_json::to_string_pretty(&SavedComparison {
            schema: SCHEMA,
            format: Format::Comparison,
            format_version: FORMAT_VERSION,
            link: self.state.to_link(),
            yard: &self.yard.written,
            results: self.results(),
        })
    }

    fn results(self) -> Results {
        let budget = &self.comparison.budget;
        Results {
            machine: self.machine.name.clone(),
            implement: self.implement.name.clone(),
            engine_rpm: budget.speed.to_rpm(),
            engine_kw: kilowatts(budget.net),
            need_kw: kilowatts(self.comparison.need),
            routes: self
                .survey
                .routes
                .iter()
                .map(|surveyed| self.route(surveyed))
                .collect(),
        }
    }

    fn route(self, surveyed: &Surveyed) -> RouteResults {
        let result = self.comparison.route(surveyed.route);
        let run = result.and_then(|result| result.run());
        RouteResults {
            route: surveyed.route,
            fits: gravest(&surveyed.items).into(),
            runs: run
                .zip(surveyed.running.as_ref())
                .map(|(run, running)| self.run(surveyed.route, run, running)),
        }
    }

    /// How the job goes by a route.
    pub fn progress_by(self, route: RouteId) -> Option<&'a Progress> {
        let mut all = self.progress.iter();
        all.find(|(other, _)| *other == route).map(|(_, it)| it)
    }

    fn run(self, route: RouteId, run: &Run, running: &Running) -> RunResults {
        let lost: Power = run.ledger.passages.iter().map(|passage| passage.loss).sum();
        let progress = self.progress_by(route);
        RunResults {
            standing: run.verdict.likely,
            standing_for_good: running.for_good,
            delivered_kw: kilowatts(run.delivered),
            delivered_part: run.delivered.likely / self.comparison.budget.net.likely,
            lost_kw: lost.to_kilowatts(),
            not_taken_up_kw: run.ledger.left_in_engine().to_kilowatts(),
            rotor_rpm: run.rotor.to_rpm(),
            limit: run.limit,
            kit: run.kit.clone(),
            seat: running.seat,
            hookup_min: running.hookup.to_minutes(),
            job_min: progress
                .and_then(|progress| progress.time?.likely)
                .map(Time::to_minutes),
            price: running.prices.total(),
        }
    }
}

fn kilowatts(power: Spread<Power>) -> Three {
    let Spread {
        low, likely, high, ..
    } = power.map(Power::to_kilowatts);
    Three { low, likely, high }
}
