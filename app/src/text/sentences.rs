//! Results in words.

use super::{capital, labels, list, reasons};
use crate::number;
use farend_core::budget::Budget;
use farend_core::compare::{Comparison, Outcome, Run};
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

/// How the route with oil compares, where the best one is a shaft.
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
    Some(format!(
        "Through {} only {} arrive, {} of the engine's power; {} brings {} times as much.",
        labels::the_route(*route),
        number::power(run.delivered.likely, units),
        number::percent(run.delivered.likely / all.budget.net.likely),
        labels::the_route(*best),
        number::fixed(ratio, 1),
    ))
}

/// A name up to its first comma, as people say it.
pub fn short(name: &str) -> &str {
    name.split(',').next().unwrap_or(name)
}

/// The message of the bars, for those who don't see them.
pub fn bars(all: &Comparison, units: UnitSystem) -> String {
    let told: Vec<_> = all
        .routes
        .iter()
        .map(|result| match &result.outcome {
            Outcome::NoFit(_) => format!("{} no fit", labels::route(result.route).to_lowercase()),
            Outcome::Runs(run) => format!(
                "{} {}",
                labels::route(result.route).to_lowercase(),
                number::power(run.delivered.likely, units)
            ),
        })
        .collect();
    format!(
        "Of the engine's {}, these arrive at the rotor: {}. The job needs {}.",
        number::power(all.budget.net.likely, units),
        list(&told),
        number::power(all.need.likely, units)
    )
}

/// What the end of the bars stands for.
pub fn engine_end(power: String) -> String {
    format!("engine {power}")
}

/// What the line down through the bars stands for.
pub fn need_end(power: String) -> String {
    format!("the job needs {power}")
}

/// The picture's title.
pub fn picture_title(machine: &Machine, implement: &Implement) -> String {
    format!("{} on the {}", short(&implement.name), short(&machine.name))
}

/// What the picture shows.
pub fn picture_subject(all: &Comparison, units: UnitSystem) -> String {
    format!(
        "What arrives at the rotor by six routes, of the engine's {} net at {}",
        number::power(all.budget.net.likely, units),
        number::shown(Quantity::Speed(all.budget.speed), units)
    )
}

/// What a route loses by kinds, below its bar.
pub fn losses_by_kind(kinds: &[(&str, Power)], units: UnitSystem) -> String {
    let told: Vec<_> = kinds
        .iter()
        .filter(|(_, power)| *power > Power::ZERO)
        .map(|(kind, power)| format!("{kind} {}", number::power(*power, units)))
        .collect();
    told.join(" · ")
}

/// How a route fares, beside its bar.
pub fn standing_and_part(run: &Run, engine: Power) -> [String; 2] {
    [
        labels::standing(run.verdict.likely).to_owned(),
        format!(
            "{} of engine",
            number::percent(run.delivered.likely / engine)
        ),
    ]
}

/// What the picture tells, for those who don't see it.
pub fn picture(title: &str, all: &Comparison, units: UnitSystem) -> String {
    format!("{title}. {}", bars(all, units))
}

/// Who made the picture, and when.
pub fn made_by(version: &str, date: &str) -> String {
    format!("{} {version}, {date}", labels::TITLE)
}

/// Where a route's losses lie, in one line.
pub fn losses(run: &Run, units: UnitSystem) -> Option<String> {
    let told: Vec<_> = run
        .ledger
        .passages
        .iter()
        .filter(|passage| passage.loss > Power::ZERO)
        .map(|passage| {
            let stage = super::small(labels::stage(passage.stage.kind()));
            format!("{stage} {}", number::power(passage.loss, units))
        })
        .collect();
    (!told.is_empty()).then(|| format!("Lost in: {}", told.join(" · ")))
}

/// Why a route can't be had, as a sentence.
pub fn no_fit(reasons: &[farend_core::route::part::NoFit], units: UnitSystem) -> String {
    let told: Vec<_> = reasons
        .iter()
        .map(|reason| reasons::no_fit(*reason, units))
        .collect();
    format!("{}.", capital(&told.join("; ")))
}

/// A standing with what the ranges make of it, where they fall into other bands.
pub fn verdict(verdict: &Verdict) -> String {
    let likely = labels::standing(verdict.likely);
    let (poorest, best) = (verdict.poorest, verdict.best);
    match (poorest == verdict.likely, best == verdict.likely) {
        (true, true) => format!("{likely}, over the whole range of what isn't known exactly."),
        (false, true) => format!(
            "{likely}; at worst {}.",
            labels::standing(poorest).to_lowercase()
        ),
        (true, false) => format!(
            "{likely}; at best {}.",
            labels::standing(best).to_lowercase()
        ),
        (false, false) => format!(
            "{likely}; at worst {}, at best {}.",
            labels::standing(poorest).to_lowercase(),
            labels::standing(best).to_lowercase()
        ),
    }
}

/// What a job must be.
pub const JOB_REFUSED: &str =
    "Enter a number above zero, of a size that can be done. It stays as it was until then.";
/// A gear of the PTO: "540 rpm at an engine speed of 2,200 rpm".
pub fn pto_gear(pto: &Pto, units: UnitSystem) -> String {
    let speed = |speed| number::shown(Quantity::Speed(speed), units);
    format!(
        "{} with the engine at {}",
        speed(pto.rated),
        speed(pto.engine_speed)
    )
}

/// How to read the table of work.
pub const WORK_NOTE: &str = "The most that a route keeps up: the faster it is driven, the more is \
    worked and the less the engine has left. Time is for working without turning and stopping. \
    How far a thrower throws is a bound without air's drag; real throws are shorter.";
/// How to read the list of what matters.
pub const INFLUENCES: &str = "What would arrive if one figure alone were at its low or its high \
    value. The first is the one most worth asking about.";

/// A time's range: "28 min to 1 h 2 min".
pub fn time_range(time: Spread<Option<Time>>) -> String {
    let told = |time: Option<Time>| time.map_or_else(|| labels::NEVER.to_owned(), number::time);
    match (time.low, time.high) {
        // "28 to 45 min": the unit once.
        (Some(low), Some(high)) if high < Time::hours(1.0) => {
            let low = number::fixed(low.to_minutes(), 0);
            format!("{low}\u{a0}to\u{a0}{}", number::time(high))
        }
        (low, high) => format!("{} to {}", told(low), told(high)),
    }
}

/// How far a thrower throws at the most.
pub fn casting((bound, ratio): (Length, f64), units: UnitSystem) -> String {
    format!(
        "{}, {} of rated",
        number::shown(Quantity::Length(bound), units),
        number::percent(ratio)
    )
}

/// An uncertain figure with the stage that it belongs to.
pub fn figure_of(influence: &Influence) -> String {
    let figure = labels::figure(influence.figure);
    match influence.stage {
        None => capital(figure),
        Some(stage) => format!("{}: {figure}", labels::stage(stage)),
    }
}

/// Beyond the hottest that is looked at.
pub fn hotter_than(units: UnitSystem) -> String {
    let hottest = Temperature::celsius(HOTTEST);
    format!(
        "above {}",
        number::shown(Quantity::Temperature(hottest), units)
    )
}

/// What heats the oil.
pub fn heat(heat: &Heat, units: UnitSystem) -> String {
    format!(
        "At work {} end as heat in the oil; while the rotor stands and the engine turns, {}. This \
         is how {} of oil warm up where only the tank's surface, and a cooler if the yard knows \
         one, cool them. The oil shouldn't pass {}.",
        number::power(heat.lost, units),
        number::power(heat.idle, units),
        number::shown(Quantity::Volume(heat.tank.likely), units),
        number::shown(Quantity::Temperature(heat.limit), units)
    )
}

/// What holds a route for good, where the oil gets too hot.
pub fn too_hot(heat: &Heat, units: UnitSystem) -> Option<String> {
    let reason = labels::limit_reason(heat.holds()?);
    let [cautious, hopeful] = heat.settling;
    let after = number::time(cautious.to_limit?);
    let for_good = match hopeful.for_good {
        None => "with this tank and no more cooling it can't even turn the empty rotor".to_owned(),
        Some(power) => format!(
            "with this tank and no more cooling {} can arrive at most",
            number::power(power, units)
        ),
    };
    Some(format!(
        "{reason} From cold it passes {} after about {after} of this work; for good, {for_good}.",
        number::shown(Quantity::Temperature(heat.limit), units)
    ))
}

/// What the work takes, with its sources.
pub fn work_takes(work: &Work, units: UnitSystem) -> String {
    let energy = |joules| Quantity::WorkEnergy(work.measure, joules);
    format!(
        "The empty rotor takes {} ({}): {}. The work takes {} ({}): {}.",
        number::power(work.idle.likely, units),
        number::range(
            Quantity::Power(work.idle.low),
            Quantity::Power(work.idle.high),
            units
        ),
        work.idle.source.citation(),
        number::shown(energy(work.energy.likely), units),
        number::range(energy(work.energy.low), energy(work.energy.high), units),
        work.energy.source.citation()
    )
}

/// What would cool it.
pub fn cooling(heat: &Heat, units: UnitSystem) -> String {
    let tank = number::shown(Quantity::Volume(heat.usual_tank), units);
    if heat.cooler_duty <= Power::ZERO {
        return format!("No cooler is needed for this work. The usual tank for this flow: {tank}.");
    }
    format!(
        "To keep the limit for good, a cooler must take {} ({}). The usual tank for this flow: \
         {tank}. Hoses, pipes and housings help; they aren't counted.",
        number::power(heat.cooler_duty, units),
        number::shown(Quantity::Conductance(heat.cooler), units)
    )
}

/// What air and driving take of the engine's power, where they take anything.
pub fn budget(budget: &Budget, units: UnitSystem) -> Option<String> {
    let air = budget.net.likely * (1.0 - budget.air);
    let driving = budget.driving.map_or(Power::ZERO, |it| it.likely);
    let told: Vec<_> = [("thin or warm air", air), ("driving", driving)]
        .into_iter()
        .filter(|(_, power)| *power > Power::ZERO)
        .map(|(what, power)| format!("{what} {}", number::power(power, units)))
        .collect();
    let rule = (budget.air < 1.0 || budget.air_by_rule < 1.0).then(|| {
        format!(
            "; the trade's plain rule for air: {}",
            number::power(budget.net.likely * (1.0 - budget.air_by_rule), units)
        )
    });
    (!told.is_empty()).then(|| {
        format!(
            "of {}; taken before: {}{}",
            number::power(budget.net.likely, units),
            list(&told),
            rule.unwrap_or_default()
        )
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
        Some(drive) => format!(
            "{power} ({range}) at {} and {}",
            number::shown(Quantity::Speed(run.rotor), units),
            number::shown(drive.effort(), units)
        ),
    }
}

/// The curve's message, for those who don't see it.
pub fn curve(route: RouteId, control: &str, least: String, most: String) -> String {
    format!(
        "Power that arrives by {} over {}: from {least} to {most}.",
        labels::the_route(route),
        control.to_lowercase()
    )
}

/// What is wrong with a number typed into a control.
pub fn out_of_range(low: Quantity, high: Quantity, units: UnitSystem) -> String {
    format!(
        "Enter a number from {}. It stays as it was until then.",
        number::range(low, high, units)
    )
}
