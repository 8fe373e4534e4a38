//! The words of the way from the engine to the rotor, stage by stage.

use crate::number;
use crate::text::{labels, sentences, small};
use farend_core::chain::Passage;
use farend_core::compare::Run;
use farend_core::drive::{Drive, Rate};
use farend_core::implement::Rotor;
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::sensitivity::Influence;
use farend_core::stage::{StageKind, StagePhysics};
use farend_core::units::{Quantity, UnitSystem};

pub const LEAD: &str = "The same engine by a shaft and by oil. At each stage say first how much \
    you think it passes on, then look.";
pub const QUESTION: &str = "How much of that does it pass on?";
pub const PASSES_ON: &str = "Passes on";
pub const PASSED_ON: &str = "passed on";
pub const LOST: &str = "lost";
pub const GUESS: &str = "Show what it passes on";
pub const MISSING: &str = "Move the slider or type a power first; a guess will do.";
pub const POWER_ALLOWED: &str = "a power from zero up to what the stage takes.";
pub const BACK: &str = "Back";
pub const FORWARD: &str = "Forward";
pub const RESTART: &str = "From the start";
pub const CHANGES_MOST: &str = "What would change it most";
pub const TURN_IT: &str = "Turn it here and watch the figures above.";
pub const TURN_OTHERS: &str = "Turn something else";
pub const BROUGHT_OUT: &str = "What it comes to";
pub const NO_ROUTE: &str = "None of the routes can be hooked up here. Choose another machine or \
    implement.";
pub const IDEAS: &str = "Three things to keep";
pub const GO_ON: &str = "Now try it on cases";

/// Where on the way a step lies.
pub fn place(route: RouteId, place: usize, count: usize) -> String {
    format!("{}, stage {} of {count}", labels::route(route), place + 1)
}

/// What a stage is given.
pub fn takes(passage: &Passage, units: UnitSystem) -> String {
    format!(
        "The {} takes {} ({}).",
        labels::stage_small(passage.stage.kind()),
        number::power(passage.takes.power, units),
        rate_and_effort(passage.takes, units)
    )
}

fn rate_and_effort(drive: Drive, units: UnitSystem) -> String {
    format!(
        "{}, {}",
        number::shown(drive.rate.quantity(), units),
        number::shown(drive.effort(), units)
    )
}

/// Guess and truth beside each other.
pub fn result(passage: &Passage, guess: Power, units: UnitSystem) -> String {
    let part = match passage.takes.power > Power::ZERO {
        true => passage.loss / passage.takes.power,
        false => 0.0,
    };
    format!(
        "You said {}. It passes on {} ({}) and loses {}, {} of what it takes.",
        number::power(guess, units),
        number::power(passage.gives.power, units),
        rate_and_effort(passage.gives, units),
        number::power(passage.loss, units),
        number::percent(part)
    )
}

/// Which figure of a stage matters most to what arrives.
pub fn influence(influence: &Influence, units: UnitSystem) -> String {
    let (a, b) = (influence.at_low, influence.at_high);
    let (least, most) = if a < b { (a, b) } else { (b, a) };
    let (least, most) = (Quantity::Power(least), Quantity::Power(most));
    format!(
        "Of what isn't known exactly of this stage, this moves most: {}. Over its range {} arrive \
         at the rotor.",
        small(&sentences::figure_of(influence)),
        number::range(least, most, units)
    )
}

/// That nothing of a stage is uncertain.
pub const CERTAIN: &str = "All of this stage is known well enough.";

/// What came of a route.
pub fn arrives(route: RouteId, run: &Run, engine: Power, units: UnitSystem) -> String {
    format!(
        "{}: {} arrive at the rotor at {}, {} of the engine's power.",
        labels::route(route),
        number::power(run.delivered.likely, units),
        number::shown(Quantity::Speed(run.rotor), units),
        number::percent(run.delivered.likely / engine)
    )
}

pub const FLOW_TIMES_PRESSURE: &str = "Power is flow times pressure.";
pub const FLOW_IS_SPEED: &str = "Flow is speed, and pressure is torque.";
pub const CHANGE_COSTS: &str = "Every change of form costs.";

/// The first idea, in figures of this pair.
pub fn flow_times_pressure(run: &Run, engine: Power, units: UnitSystem) -> Option<String> {
    let mut passages = run.ledger.passages.iter();
    let pump = passages.find(|it| it.stage.kind() == StageKind::Pump)?;
    let Rate::Flowing(flow) = pump.gives.rate else {
        return None;
    };
    Some(format!(
        "Here {} times {} is {}. The engine has {}, but no more than that goes into the oil.",
        number::shown(Quantity::Flow(flow), units),
        number::shown(pump.gives.effort(), units),
        number::power(pump.gives.power, units),
        number::power(engine, units)
    ))
}

/// The second idea.
pub fn flow_is_speed(run: &Run, rotor: &Rotor, units: UnitSystem) -> String {
    let speed = |speed| number::shown(Quantity::Speed(speed), units);
    format!(
        "The flow brings this rotor to {}; it is built for {} and works from {} on. More pressure \
         would make it stronger, not faster.",
        speed(run.rotor),
        speed(rotor.rated),
        speed(rotor.lowest)
    )
}

/// The third idea: what each way loses of what it takes from the engine.
pub fn change_costs(shaft: Option<&Run>, oil: Option<&Run>, units: UnitSystem) -> String {
    let told = |run: &Run, way: &str| {
        let (taken, arrives) = (run.ledger.taken(), run.delivered.likely);
        format!(
            "{way} loses {} of the {} that it takes",
            number::power(taken - arrives, units),
            number::power(taken, units)
        )
    };
    let told: Vec<_> = [
        shaft.map(|run| told(run, "the shaft")),
        oil.map(|run| told(run, "the oil")),
    ]
    .into_iter()
    .flatten()
    .collect();
    format!(
        "From shaft to oil, through hoses and back to a shaft each takes its part: {}.",
        told.join(", ")
    )
}
