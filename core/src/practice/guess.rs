//! What a learner says, held against the truth.

use super::{Answer, Case, Change, Fits, Misconception, Question, Trap, Truth};
use crate::claims::Check;
use crate::drive::Limit;
use crate::quantity::Power;
use crate::route::RouteId;
use crate::spread::Spread;
use libm::log;

/// What a learner says.
#[derive(Clone, Debug, PartialEq)]
pub enum Guess {
    /// Of [`Question::Route`].
    Order {
        /// Those that can be hooked up, most arriving power first.
        order: Vec<RouteId>,
        /// Those that can't.
        cant: Vec<RouteId>,
    },
    /// Of [`Question::Amount`].
    Power(Power),
    /// Of all others: the place of a choice.
    Choice(usize),
}

/// A guess held against the truth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Judged {
    /// Whether it's right.
    pub right: bool,
    /// How near it comes, from 0 to 1, which is right.
    pub near: f64,
    /// The wrong idea that it shows, where it shows one.
    pub misconception: Option<Misconception>,
}

impl Judged {
    const RIGHT: Self = Self {
        right: true,
        near: 1.0,
        misconception: None,
    };

    fn wrong(near: f64, misconception: Option<Misconception>) -> Self {
        Self {
            right: false,
            near,
            misconception,
        }
    }
}

/// How near a guess must come to what a wrong idea gives to show it, as a part of that: this
/// project's judgement. Who reckons in the head rounds.
const SHOWS: f64 = 0.03;

/// How many times too much or too little a guess is that isn't near at all: this project's judgement.
const FAR: f64 = 2.0;

/// Holds a guess against the truth. A guess that doesn't belong to the question is wrong.
pub fn judge(case: &Case, answer: &Answer, guess: &Guess) -> Judged {
    let judged = match (&answer.truth, guess) {
        (Truth::Route { order, cant }, Guess::Order { order: o, cant: c }) => {
            Some(judge_order((order, cant), (o, c)))
        }
        (Truth::Amount { delivered, traps }, Guess::Power(power)) => {
            Some(judge_power(*delivered, traps, *power))
        }
        (_, Guess::Choice(place)) => judge_choice(&case.question, &answer.truth, *place),
        _ => None,
    };
    judged.unwrap_or(Judged::wrong(0.0, None))
}

type Ranked<'a> = (&'a [RouteId], &'a [RouteId]);

/// Place of a route: those that can't be hooked up share the last; `None` where it's left out.
fn place((order, cant): Ranked<'_>, route: RouteId) -> Option<usize> {
    let place = order.iter().position(|it| *it == route);
    place.or_else(|| cant.contains(&route).then_some(order.len()))
}

/// Near is the part that is right of all pairs of routes, which brings more, and of all routes,
/// whether they can be hooked up.
fn judge_order(truth: Ranked<'_>, guess: Ranked<'_>) -> Judged {
    let routes: Vec<_> = truth.0.iter().chain(truth.1).copied().collect();
    if guess.0.len() + guess.1.len() != routes.len() {
        return Judged::wrong(0.0, None);
    }
    let (mut said, mut right) = (0_u32, 0_u32);
    let mut count = |is_right| {
        said += 1;
        right += u32::from(is_right);
    };
    let mut misconception = None;
    for (after, one) in routes.iter().enumerate() {
        let can = |it: Ranked<'_>, route| it.0.contains(route);
        count(can(truth, one) == can(guess, one) && place(guess, *one).is_some());
        for other in routes.iter().skip(after + 1) {
            let order = |it: Ranked<'_>| Some(place(it, *one)?.cmp(&place(it, *other)?));
            count(order(truth) == order(guess));
            // Oil is said to bring more than a shaft that brings more.
            let both_can = [truth, guess]
                .iter()
                .all(|it| can(*it, one) && can(*it, other));
            if both_can && order(truth) != order(guess) && !one.needs_oil() && other.needs_oil() {
                misconception = Some(Misconception::EngineAsHydraulic);
            }
        }
    }
    if right == said {
        return Judged::RIGHT;
    }
    Judged::wrong(f64::from(right) / f64::from(said), misconception)
}

/// Half of the last digit that powers are shown with, kW.
const SHOWN: f64 = 0.05;

/// Right from low to high as they are shown; near falls with the ratio to the nearer of the two, to
/// nothing at [`FAR`] times.
fn judge_power(delivered: Spread<Power>, traps: &[Trap], guess: Power) -> Judged {
    let rounding = Power::kilowatts(SHOWN);
    if guess >= delivered.low - rounding && guess <= delivered.high + rounding {
        return Judged::RIGHT;
    }
    let times = (guess / delivered.high).max(delivered.low / guess);
    // 1 − ln(t)/ln(t_far)
    let near = 1.0 - log(times) / log(FAR);
    // Of a number that isn't one nothing is near.
    let near = if near > 0.0 { near } else { 0.0 };
    let mut shown = traps.iter().filter(|trap| {
        let off = guess / trap.gives - 1.0;
        off.abs() <= SHOWS
    });
    let first = shown.next().map(|trap| trap.misconception);
    // Where two ideas give the same, the guess tells them not apart.
    let same = shown.all(|trap| Some(trap.misconception) == first);
    Judged::wrong(near, first.filter(|_| same))
}

/// `None` where there is no such choice.
fn judge_choice(question: &Question, truth: &Truth, place: usize) -> Option<Judged> {
    Some(match (question, truth) {
        (Question::Limit { choices, .. }, Truth::Limit(limit)) => {
            let choice = *choices.get(place)?;
            if choice == *limit {
                Judged::RIGHT
            } else {
                Judged::wrong(0.0, of_limit(*limit, choice))
            }
        }
        (Question::Sheet { choices, .. }, Truth::Sheet { flaw, .. }) => {
            let choice = *choices.get(place)?;
            if choice == *flaw {
                Judged::RIGHT
            } else {
                Judged::wrong(0.0, of_sheet(*flaw, choice))
            }
        }
        (Question::Fit { choices, .. }, Truth::Fit { fits, .. }) => {
            let choice = *choices.get(place)?;
            // Nothing is between those that can and those that can't but asking.
            let neighbours = choice == Fits::AskFirst || *fits == Fits::AskFirst;
            match choice == *fits {
                true => Judged::RIGHT,
                false if neighbours => Judged::wrong(0.5, None),
                false => Judged::wrong(0.0, None),
            }
        }
        (Question::Wanted { choices, .. }, Truth::Wanted(tried)) => {
            let choice: &Change = choices.get(place)?;
            let tried = tried.iter().find(|it| it.change == *choice)?;
            if tried.reaches {
                Judged::RIGHT
            } else {
                Judged::wrong(0.0, tried.misconception)
            }
        }
        _ => return None,
    })
}

/// What a wrong limit shows.
fn of_limit(is: Limit, said: Limit) -> Option<Misconception> {
    match (is, said) {
        (Limit::Flow, Limit::Pressure) => Some(Misconception::PressureForSpeed),
        (Limit::Flow | Limit::Pressure, Limit::Engine) => Some(Misconception::EngineAsHydraulic),
        _ => None,
    }
}

/// What a wrong word on a sheet shows: what is passed over, or what an honest one is blamed for.
fn of_sheet(is: Option<Check>, said: Option<Check>) -> Option<Misconception> {
    match (is, said) {
        (Some(Check::HydraulicPower), None) | (None, Some(Check::HydraulicPower)) => {
            Some(Misconception::EngineAsHydraulic)
        }
        (Some(Check::Steering), None) => Some(Misconception::AddsFlows),
        _ => None,
    }
}
