//! What a user must know beside a run's figures.

use crate::chain::{Ledger, Passage};
use crate::defaults::working_viscosity;
use crate::drive::{Rate, Stall};
use crate::implement::Implement;
use crate::kit::Kit;
use crate::physics::derate::standard_pressure;
use crate::physics::joint::AngleAdvice;
use crate::physics::line::{LineKind, Pipe, VelocityAdvice};
use crate::physics::suction::{inlet_pressure, lowest_inlet};
use crate::quantity::{AngularSpeed, Flow, Power, Pressure, Torque, Velocity, Viscosity};
use crate::settings::Settings;
use crate::stage::pump::{Pump, PumpSize};
use crate::stage::{AtWork, Stage, StageKind, StagePhysics};

/// Something unusual, beside a result that stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Warning {
    /// Nothing turns.
    Stalled(Stall),
    /// The rotor turns too slowly to work properly.
    RotorTooSlow {
        /// What it reaches.
        speed: AngularSpeed,
        /// What it needs.
        lowest: AngularSpeed,
    },
    /// The rotor would turn faster than it may.
    RotorTooFast {
        /// What it reaches.
        speed: AngularSpeed,
        /// What it may.
        highest: AngularSpeed,
    },
    /// A pump or motor hands on less than half of what it takes: too much leaks or rubs.
    FarFromRated(StageKind),
    /// The oil is thinner or thicker than pumps and motors are made for.
    OilOutOfRange {
        /// Its viscosity.
        viscosity: Viscosity,
        /// The thinnest and the thickest to work with.
        range: (Viscosity, Viscosity),
    },
    /// More flow comes than the motor can swallow.
    FlowDiverted {
        /// What comes.
        comes: Flow,
        /// What the motor takes.
        used: Flow,
    },
    /// The kit's pump turns faster than it may.
    PumpTooFast {
        /// What it reaches.
        speed: AngularSpeed,
        /// What it may.
        highest: AngularSpeed,
    },
    /// Oil runs faster than is usual for such a line.
    LineTooNarrow {
        /// Which line.
        line: Line,
        /// How fast it runs.
        velocity: Velocity,
        /// The most that is usual.
        usual: Velocity,
    },
    /// The pump's inlet gets too little pressure: it wears out.
    SuctionTooLow {
        /// Absolute pressure there.
        inlet: Pressure,
        /// The least that it needs.
        lowest: Pressure,
    },
    /// A joint runs at an angle that it can't bear all day.
    JointAngle {
        /// The angle of each joint, radians.
        angle: f64,
        /// How long that may be.
        advice: AngleAdvice,
    },
    /// Stopped under full load, the motor can't start again.
    WontStart {
        /// Torque at the rotor with which it starts.
        starts: Torque,
        /// Torque that the job takes.
        needs: Torque,
    },
}

/// A line with oil.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line {
    /// From the tank to the pump.
    Suction,
    /// To the motor.
    Supply,
    /// Back from it.
    Back,
}

/// What a user must know of a run. `need` is what the job takes at the rotor.
pub fn warnings(
    ledger: &Ledger,
    rotor: AngularSpeed,
    implement: &Implement,
    kit: &Kit,
    (need, settings): (Power, &Settings),
) -> Vec<Warning> {
    let mut warnings = Vec::new();
    let pump = pump_of(ledger);
    if pump.is_some() {
        let (viscosity, range) = (ledger.at.viscosity, working_viscosity());
        if viscosity < range.0 || viscosity > range.1 {
            warnings.push(Warning::OilOutOfRange { viscosity, range });
        }
    }
    if let Some(stall) = ledger.stall {
        warnings.push(Warning::Stalled(stall));
        return warnings;
    }
    let bounds = &implement.rotor;
    if bounds.is_too_slow(rotor) {
        warnings.push(Warning::RotorTooSlow {
            speed: rotor,
            lowest: bounds.lowest,
        });
    }
    // A thousandth more is rounding: the flow is held where the rotor has its highest speed.
    if rotor > bounds.highest * 1.001 {
        warnings.push(Warning::RotorTooFast {
            speed: rotor,
            highest: bounds.highest,
        });
    }
    for passage in &ledger.passages {
        of_stage(passage, &mut warnings);
    }
    warnings.extend(hard_start(ledger, implement, need));
    // A kit may serve a route with the machine's own pump too.
    if let Some((passage, pump)) = pump
        && let PumpSize::Displacement(_) = pump.size
    {
        warnings.extend(hurried_pump(passage, kit));
        warnings.extend(starved_inlet(passage, &ledger.at, kit, settings));
    }
    warnings
}

fn of_stage(passage: &Passage, warnings: &mut Vec<Warning>) {
    let kind = passage.stage.kind();
    if matches!(kind, StageKind::Pump | StageKind::Motor) && passage.loss > passage.gives.power {
        warnings.push(Warning::FarFromRated(kind));
    }
    match (&passage.stage, passage.takes.rate, passage.gives.rate) {
        (Stage::Divert(_), Rate::Flowing(comes), Rate::Flowing(used)) if used < comes => {
            warnings.push(Warning::FlowDiverted { comes, used });
        }
        (Stage::Hoses(hoses), Rate::Flowing(flow), _) => {
            let working = passage.takes.power / flow;
            let lines = [
                (Line::Supply, &hoses.supply, LineKind::Pressure(working)),
                (Line::Back, &hoses.back, LineKind::Return),
            ];
            for (line, pipe, kind) in lines {
                warnings.extend(too_fast(line, pipe, kind, flow));
            }
        }
        (Stage::Gear(gear), _, _) => {
            if let Some(angle) = gear.angle {
                let advice = AngleAdvice::of(angle);
                if advice != AngleAdvice::Fine {
                    warnings.push(Warning::JointAngle { angle, advice });
                }
            }
        }
        _ => {}
    }
}

fn too_fast(line: Line, pipe: &Pipe, kind: LineKind, flow: Flow) -> Option<Warning> {
    let velocity = pipe.velocity(flow);
    let (_, usual) = kind.usual_velocities();
    (kind.advice(velocity) == VelocityAdvice::Fast).then_some(Warning::LineTooNarrow {
        line,
        velocity,
        usual,
    })
}

/// A motor under the pump's full pressure against the job's torque at rated speed.
///
/// Equation: T = V·p/2π·η_start·Π(η/i), p not above the motor's highest. Units: SI.
/// Source: definition of displacement; no flow, so nothing is lost in the lines.
fn hard_start(ledger: &Ledger, implement: &Implement, need: Power) -> Option<Warning> {
    let (_, pump) = pump_of(ledger)?;
    let relief = pump.relief.likely;
    let mut stages = ledger.passages.iter().map(|it| &it.stage);
    let motor = stages.find_map(|stage| match stage {
        Stage::Motor(motor) => Some(motor),
        _ => None,
    })?;
    let starting = implement.motor.as_ref()?.starting.likely;
    // T = V·p/2π·η_start
    let mut starts = relief.min(motor.highest) * motor.displacement * starting;
    // What is behind the motor.
    for stage in stages {
        if let Stage::Gear(gear) = stage {
            starts = starts * (gear.efficiency.likely / gear.ratio);
        }
    }
    // T = P/ω_r
    let needs = need / implement.rotor.rated;
    (starts < needs).then_some(Warning::WontStart { starts, needs })
}

/// At the engine's speed: that it fits at the PTO's rated speed has been seen to.
fn hurried_pump(pump: &Passage, kit: &Kit) -> Option<Warning> {
    let highest = kit.pump.as_ref()?.highest;
    let speed = pump.takes.rate.turning().ok()?;
    // A thousandth more is rounding.
    (speed > highest * 1.001).then_some(Warning::PumpTooFast { speed, highest })
}

/// The route's pump and what it took and handed on, where it has one.
fn pump_of(ledger: &Ledger) -> Option<(&Passage, &Pump)> {
    let mut passages = ledger.passages.iter();
    passages.find_map(|passage| match &passage.stage {
        Stage::Pump(pump) => Some((passage, pump)),
        _ => None,
    })
}

fn starved_inlet(pump: &Passage, at: &AtWork, kit: &Kit, settings: &Settings) -> Option<Warning> {
    let suction = kit.pump.as_ref()?.suction?;
    let flow = pump.gives.rate.flowing().ok()?;
    let inlet = inlet_pressure(
        standard_pressure(settings.altitude()),
        suction.line.drop(flow, at.viscosity, at.density),
        at.density,
        suction.lift,
    );
    // Less than nothing says that so much can't be drawn at all.
    let inlet = inlet.max(Pressure::ZERO);
    let lowest = lowest_inlet();
    if inlet < lowest {
        return Some(Warning::SuctionTooLow { inlet, lowest });
    }
    too_fast(Line::Suction, &suction.line, LineKind::Suction, flow)
}
