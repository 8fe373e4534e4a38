//! Results in words.

pub use super::say::sentences::{influences_note, job_refused, work_note};

use super::say::sentences as say;
use super::{amount, amounts, capital, clauses, labels, list, pair, reasons, sources, stop};
use crate::number;
use farend_core::budget::Budget;
use farend_core::compare::{Comparison, Outcome, Run};
use farend_core::control::Control;
use farend_core::implement::{Implement, Work};
use farend_core::machine::{Machine, Pto};
use farend_core::quantity::{Length, Power, Temperature, Time};
use farend_core::route::RouteId;
use farend_core::sensitivity::Influence;
use farend_core::spread::Spread;
use farend_core::stage::StagePhysics;
use farend_core::standing::Verdict;
use farend_core::thermal::{HOTTEST, Heat};
use farend_core::units::{Quantity, UnitSystem};

/// How the machine's own hydraulics compare, where another route is the best.
pub fn contrast(all: &Comparison, units: UnitSystem) -> Option<String> {
    let ranked = all.ranked();
    let (best, most) = ranked.first()?;
    let (route, run) = ranked
        .iter()
        .find(|(route, _)| *route == RouteId::MachineHydraulics)?;
    if route == best || run.ledger.stall.is_some() {
        return None;
    }
    let ratio = most.delivered.likely / run.delivered.likely;
    let told = say::Contrast {
        route: labels::the_route(*route),
        power: &number::power(run.delivered.likely, units),
        part: &number::percent(run.delivered.likely / all.budget.net.likely),
        best: labels::the_route(*best),
        times: &number::fixed(ratio, 1),
    };
    Some(told.said())
}

/// A name up to its first comma, as people say it: "Curlew 46" of "Curlew 46, utility tractor".
pub fn short(name: &str) -> &str {
    name.split(',').next().unwrap_or(name)
}

/// The message of the bars, for those who don't see them.
pub fn bars(all: &Comparison, units: UnitSystem) -> String {
    let told: Vec<_> = all
        .routes
        .iter()
        .map(|result| {
            let route = labels::route_small(result.route);
            match &result.outcome {
                Outcome::NoFit(_) => say::bars_no_fit(route),
                Outcome::Runs(run) => amount(route, &number::power(run.delivered.likely, units)),
            }
        })
        .collect();
    say::Bars {
        engine: &number::power(all.budget.net.likely, units),
        routes: &list(&told),
        need: &number::power(all.need.likely, units),
    }
    .said()
}

/// What the end of the bars stands for.
pub fn engine_end(power: &str) -> String {
    say::engine_end(power)
}

/// What the line down through the bars stands for.
pub fn need_end(power: &str) -> String {
    say::need_end(power)
}

/// The picture's title.
pub fn picture_title(machine: &Machine, implement: &Implement) -> String {
    say::PictureTitle {
        implement: short(&implement.name),
        machine: short(&machine.name),
    }
    .said()
}

/// What the picture shows.
pub fn picture_subject(all: &Comparison, units: UnitSystem) -> String {
    say::PictureSubject {
        power: &number::power(all.budget.net.likely, units),
        speed: &number::shown(Quantity::Speed(all.budget.speed), units),
    }
    .said()
}

/// What a route loses by kinds, below its bar.
pub fn losses_by_kind(kinds: &[(&str, Power)], units: UnitSystem) -> String {
    let told: Vec<_> = kinds
        .iter()
        .filter(|(_, power)| *power > Power::ZERO)
        .map(|(kind, power)| amount(kind, &number::power(*power, units)))
        .collect();
    amounts(&told)
}

/// How a route fares, beside its bar.
pub fn standing_and_part(run: &Run, engine: Power) -> [String; 2] {
    [
        labels::standing(run.verdict.likely).to_owned(),
        say::of_engine(&number::percent(run.delivered.likely / engine)),
    ]
}

/// What the picture tells, for those who don't see it.
pub fn picture(title: &str, all: &Comparison, units: UnitSystem) -> String {
    format!("{} {}", stop(title), bars(all, units))
}

/// Who made the picture, and when.
pub fn made_by(version: &str, date: &str) -> String {
    pair(&amount(labels::TITLE, version), date)
}

/// Where a route's losses lie, in one line.
pub fn losses(run: &Run, units: UnitSystem) -> Option<String> {
    let told: Vec<_> = run
        .ledger
        .passages
        .iter()
        .filter(|passage| passage.loss > Power::ZERO)
        .map(|passage| {
            let stage = labels::stage_small(passage.stage.kind());
            amount(stage, &number::power(passage.loss, units))
        })
        .collect();
    (!told.is_empty()).then(|| say::losses(&amounts(&told)))
}

/// Why a route can't be had, as a sentence.
pub fn no_fit(reasons: &[farend_core::route::part::NoFit], units: UnitSystem) -> String {
    let told: Vec<_> = reasons
        .iter()
        .map(|reason| reasons::no_fit(*reason, units))
        .collect();
    clauses(&told)
}

/// A standing with what the ranges make of it, where they fall into other bands.
pub fn verdict(verdict: &Verdict) -> String {
    let likely = labels::standing(verdict.likely);
    let [worst, best] = [verdict.poorest, verdict.best].map(labels::standing_small);
    match (
        verdict.poorest == verdict.likely,
        verdict.best == verdict.likely,
    ) {
        (true, true) => say::verdict_sure(likely),
        (false, true) => say::VerdictAtWorst { likely, worst }.said(),
        (true, false) => say::VerdictAtBest { likely, best }.said(),
        (false, false) => say::VerdictBetween {
            likely,
            worst,
            best,
        }
        .said(),
    }
}

/// A gear of the PTO: "540 rpm with the engine at 2,200 rpm".
pub fn pto_gear(pto: &Pto, units: UnitSystem) -> String {
    let speed = |speed| number::shown(Quantity::Speed(speed), units);
    say::PtoGear {
        speed: &speed(pto.rated),
        engine: &speed(pto.engine_speed),
    }
    .said()
}

/// A time's range: "28 min to 1 h 2 min".
pub fn time_range(time: Spread<Option<Time>>) -> String {
    let told = |time: Option<Time>| time.map_or_else(|| labels::never().to_owned(), number::time);
    match (time.low, time.high) {
        // "28 to 45 min": the unit once.
        (Some(low), Some(high)) if high < Time::hours(1.0) => {
            let low = number::fixed(low.to_minutes(), 0);
            number::between(&low, &number::time(high))
        }
        (low, high) => say::TimeRange {
            low: &told(low),
            high: &told(high),
        }
        .said(),
    }
}

/// How far a thrower throws at the most.
pub fn casting((bound, ratio): (Length, f64), units: UnitSystem) -> String {
    say::Casting {
        distance: &number::shown(Quantity::Length(bound), units),
        part: &number::percent(ratio),
    }
    .said()
}

/// An uncertain figure with the stage that it belongs to.
pub fn figure_of(influence: &Influence) -> String {
    let figure = labels::figure(influence.figure);
    match influence.stage {
        None => capital(figure),
        Some(stage) => say::FigureOfStage {
            stage: labels::stage(stage),
            figure,
        }
        .said(),
    }
}

/// Beyond the hottest that is looked at.
pub fn hotter_than(units: UnitSystem) -> String {
    let hottest = Temperature::celsius(HOTTEST);
    say::hotter_than(&number::shown(Quantity::Temperature(hottest), units))
}

/// What heats the oil.
pub fn heat(heat: &Heat, units: UnitSystem) -> String {
    say::Heat {
        lost: &number::power(heat.lost, units),
        idle: &number::power(heat.idle, units),
        tank: &number::shown(Quantity::Volume(heat.tank.likely), units),
        limit: &number::shown(Quantity::Temperature(heat.limit), units),
    }
    .said()
}

/// What holds a route for good, where the oil gets too hot.
pub fn too_hot(heat: &Heat, units: UnitSystem) -> Option<String> {
    let reason = labels::limit_reason(heat.holds()?);
    let [cautious, hopeful] = heat.settling;
    let after = &number::time(cautious.to_limit?);
    let limit = &number::shown(Quantity::Temperature(heat.limit), units);
    Some(match hopeful.for_good {
        None => say::TooHotEmpty {
            reason,
            limit,
            after,
        }
        .said(),
        Some(power) => say::TooHot {
            reason,
            limit,
            after,
            power: &number::power(power, units),
        }
        .said(),
    })
}

/// What the work takes, with its sources.
pub fn work_takes(work: &Work, units: UnitSystem) -> String {
    let energy = |joules| Quantity::WorkEnergy(work.measure, joules);
    let range = |low, high| number::range(low, high, units);
    say::WorkTakes {
        idle: &number::power(work.idle.likely, units),
        idle_range: &range(
            Quantity::Power(work.idle.low),
            Quantity::Power(work.idle.high),
        ),
        idle_source: sources::citation(work.idle.source),
        energy: &number::shown(energy(work.energy.likely), units),
        energy_range: &range(energy(work.energy.low), energy(work.energy.high)),
        energy_source: sources::citation(work.energy.source),
    }
    .said()
}

/// What would cool it.
pub fn cooling(heat: &Heat, units: UnitSystem) -> String {
    let tank = &number::shown(Quantity::Volume(heat.usual_tank), units);
    if heat.cooler_duty <= Power::ZERO {
        return say::cooling_none(tank);
    }
    say::Cooling {
        power: &number::power(heat.cooler_duty, units),
        cooler: &number::shown(Quantity::Conductance(heat.cooler), units),
        tank,
    }
    .said()
}

/// What air and driving take of the engine's power, where they take anything.
pub fn budget(budget: &Budget, units: UnitSystem) -> Option<String> {
    let air = budget.net.likely * (1.0 - budget.air);
    let driving = budget.driving.map_or(Power::ZERO, |it| it.likely);
    let told: Vec<_> = [(say::budget_air(), air), (say::budget_driving(), driving)]
        .into_iter()
        .filter(|(_, power)| *power > Power::ZERO)
        .map(|(what, power)| amount(what, &number::power(power, units)))
        .collect();
    if told.is_empty() {
        return None;
    }
    let net = &number::power(budget.net.likely, units);
    let taken = &list(&told);
    let by_rule = budget.net.likely * (1.0 - budget.air_by_rule);
    Some(if budget.air < 1.0 || budget.air_by_rule < 1.0 {
        say::BudgetWithRule {
            net,
            taken,
            rule: &number::power(by_rule, units),
        }
        .said()
    } else {
        say::Budget { net, taken }.said()
    })
}

/// What arrives at the rotor, in one line.
pub fn at_the_rotor(run: &Run, units: UnitSystem) -> String {
    let power = number::power(run.delivered.likely, units);
    let range = number::range(
        Quantity::Power(run.delivered.low),
        Quantity::Power(run.delivered.high),
        units,
    );
    match run.ledger.delivered() {
        None => power,
        Some(drive) => say::AtTheRotor {
            power: &power,
            range: &range,
            speed: &number::shown(Quantity::Speed(run.rotor), units),
            effort: &number::shown(drive.effort(), units),
        }
        .said(),
    }
}

/// The curve's message, for those who don't see it.
pub fn curve(route: RouteId, control: Control, least: &str, most: &str) -> String {
    say::Curve {
        route: labels::the_route(route),
        control: labels::control_small(control),
        least,
        most,
    }
    .said()
}

/// What is wrong with a number typed into a control.
pub fn out_of_range(low: Quantity, high: Quantity, units: UnitSystem) -> String {
    say::out_of_range(&number::allowed(low, high, units))
}
