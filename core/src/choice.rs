//! Which route to take: by power, by what its place means at work, and by cost, weighed openly by
//! what matters to the user. All points are this project's judgement.

use crate::fit::Judgement;
use crate::hookup::Seat;
use crate::implement::ImplementKind;
use crate::quantity::Time;
use crate::route::RouteId;
use crate::seat::{LoaderUse, View, minds_wheels};
use crate::standing::Standing;
use crate::words::words;

words! {
    /// How much something matters to the user.
    Weight {
        /// Not at all.
        Not = "not",
        /// Somewhat.
        Somewhat = "somewhat",
        /// Much.
        Much = "much",
    }
}

impl Weight {
    /// Points that it can bring.
    pub fn points(self) -> f64 {
        match self {
            Self::Not => 0.0,
            Self::Somewhat => 1.0,
            Self::Much => 2.0,
        }
    }
}

words! {
    /// What can matter beside power.
    Wish {
        /// Looking ahead at the work.
        LookAhead = "look_ahead",
        /// Not driving over the work before it's done.
        KeepOff = "keep_off",
        /// The loader staying on.
        KeepLoader = "keep_loader",
        /// Hooking up quickly.
        HookUpQuickly = "hook_up_quickly",
        /// Buying cheaply.
        BuyCheaply = "buy_cheaply",
    }
}

/// How many wishes there are.
const WISHES: usize = Wish::ALL.len();

/// What matters to the user, in the order of [`Wish::ALL`].
pub type Weights = [Weight; WISHES];

/// To begin with, all of it somewhat.
pub const EVEN: Weights = [Weight::Somewhat; WISHES];

/// A route to choose from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Candidate {
    /// Which.
    pub route: RouteId,
    /// How it fares at the likely values.
    pub standing: Standing,
    /// The gravest of its items.
    pub fit: Judgement,
    /// Where it puts the implement.
    pub seat: Seat,
    /// Time to hook it up.
    pub hookup: Time,
    /// What it costs to buy, where that is known.
    pub total: Option<f64>,
}

/// A route with its points.
#[derive(Clone, Debug, PartialEq)]
pub struct Weighed {
    /// Which.
    pub route: RouteId,
    /// For its standing.
    pub power: f64,
    /// How far it meets each wish, 0 to 1, in the order of [`Wish::ALL`]; `None` where that doesn't
    /// count: a cost that isn't known of every route, wheels that the work doesn't mind.
    pub meets: [Option<f64>; WISHES],
    /// All together.
    pub points: f64,
}

/// Routes that lie so close in points are told as equal: this project's judgement.
pub const TIE: f64 = 0.25;

/// Time to hook up from which nothing is quick about it: this project's judgement.
pub fn slow_hookup() -> Time {
    Time::minutes(60.0)
}

/// Points for a standing; `None` where the work isn't done well enough to recommend it: this
/// project's judgement.
pub fn points_for(standing: Standing) -> Option<f64> {
    match standing {
        Standing::Ample => Some(6.0),
        Standing::Enough => Some(5.0),
        Standing::Slower => Some(2.0),
        Standing::Labours | Standing::Starves => None,
    }
}

/// Weighs those that can be hooked up and do the work, best first.
///
/// Equation: points = p(standing) + Σ w·m; w 0, 1 or 2, m from 0 to 1. Units: points.
/// Valid range: any. Source: this project's judgement.
pub fn weigh(candidates: &[Candidate], kind: ImplementKind, weights: Weights) -> Vec<Weighed> {
    let eligible: Vec<_> = candidates
        .iter()
        .filter(|candidate| candidate.fit != Judgement::Stop)
        .filter_map(|candidate| Some((candidate, points_for(candidate.standing)?)))
        .collect();
    let totals: Option<Vec<f64>> = eligible.iter().map(|(it, _)| it.total).collect();
    let cheapest = totals.and_then(|totals| totals.into_iter().reduce(f64::min));
    let mut weighed: Vec<_> = eligible
        .into_iter()
        .map(|(candidate, power)| {
            let meets = core::array::from_fn(|place| {
                let wish = Wish::ALL.get(place)?;
                meets(*wish, candidate, kind, cheapest)
            });
            let wishes = meets.iter().zip(weights);
            // points = p(standing) + Σ w·m
            let points = power
                + wishes
                    .filter_map(|(meets, weight)| meets.map(|meets| weight.points() * meets))
                    .sum::<f64>();
            Weighed {
                route: candidate.route,
                power,
                meets,
                points,
            }
        })
        .collect();
    weighed.sort_by(|one, other| other.points.total_cmp(&one.points));
    weighed
}

/// How far a candidate meets a wish, 0 to 1.
fn meets(
    wish: Wish,
    candidate: &Candidate,
    kind: ImplementKind,
    cheapest: Option<f64>,
) -> Option<f64> {
    let seat = candidate.seat;
    Some(match wish {
        Wish::LookAhead => match seat.view() {
            View::Ahead => 1.0,
            View::OverTheShoulder => 0.5,
            View::Behind => 0.0,
        },
        Wish::KeepOff if !minds_wheels(kind) => return None,
        Wish::KeepOff => f64::from(!seat.drives_over(kind)),
        Wish::KeepLoader => match seat.loader() {
            LoaderUse::Stays => 1.0,
            LoaderUse::WithoutBucket => 0.5,
            LoaderUse::ComesOff => 0.0,
        },
        Wish::HookUpQuickly => 1.0 - (candidate.hookup / slow_hookup()).min(1.0),
        Wish::BuyCheaply => {
            let (cheapest, total) = (cheapest?, candidate.total?);
            // What costs nothing is as cheap as can be.
            if total > 0.0 { cheapest / total } else { 1.0 }
        }
    })
}

/// The best, and those that lie so close to it that they are told as equal.
pub fn best(weighed: &[Weighed]) -> &[Weighed] {
    let Some(first) = weighed.first() else {
        return &[];
    };
    let close = weighed
        .iter()
        .take_while(|it| first.points - it.points <= TIE);
    weighed.get(..close.count()).unwrap_or_default()
}
