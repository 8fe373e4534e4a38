//! Why a route can't be had, and what a user must know beside its figures.

use super::labels;
use crate::number;
use farend_core::drive::Stall;
use farend_core::implement::Place;
use farend_core::machine::MachineKind;
use farend_core::route::part::NoFit;
use farend_core::units::{Quantity, UnitSystem};
use farend_core::warning::Warning;

/// Why a route can't be had, as the rest of a sentence.
pub fn no_fit(reason: NoFit, units: UnitSystem) -> String {
    let speed = |speed| number::shown(Quantity::Speed(speed), units);
    match reason {
        NoFit::WrongKind(MachineKind::SkidSteer) => "this machine isn't a skid steer".to_owned(),
        NoFit::WrongKind(MachineKind::Tractor) => {
            "a skid steer's circuits have a route of their own".to_owned()
        }
        NoFit::NoRearPto => "the machine has no rear PTO".to_owned(),
        NoFit::NoMidPto => "the machine has no mid PTO".to_owned(),
        NoFit::NoOutlet => "the machine has no outlet for an implement's oil".to_owned(),
        NoFit::NoShaft(Place::Rear) => {
            "the implement can't be had with a shaft for the rear hitch".to_owned()
        }
        NoFit::NoShaft(Place::Front) => {
            "the implement can't be had with a shaft for the front".to_owned()
        }
        NoFit::NoMotor => "the implement can't be had with a hydraulic motor".to_owned(),
        NoFit::NoKit => "this yard has no kit for it".to_owned(),
        NoFit::KitForOtherPto { brings, needs } => format!(
            "the kit is built for {}, the PTO turns at {}",
            speed(needs),
            speed(brings)
        ),
        NoFit::PumpTooFast { brings, highest } => format!(
            "the pump would turn at {}, it's built for at most {}",
            speed(brings),
            speed(highest)
        ),
        NoFit::WrongSpeed { brings, needs } => format!(
            "the shaft brings {}, the implement needs {}",
            speed(brings),
            speed(needs)
        ),
    }
}

/// Whether it's worth knowing rather than in the way of the work.
pub fn is_advice(warning: &Warning) -> bool {
    matches!(
        warning,
        Warning::LineTooNarrow { .. } | Warning::FlowDiverted { .. } | Warning::WontStart { .. }
    )
}

/// A warning as a sentence.
pub fn warning(warning: Warning, units: UnitSystem) -> String {
    let speed = |speed| number::shown(Quantity::Speed(speed), units);
    let flow = |flow| number::shown(Quantity::Flow(flow), units);
    match warning {
        Warning::Stalled(Stall::NoFlowLeft) => {
            "Steering takes all the oil that the pump gives here: nothing is left to turn the \
             rotor."
                .to_owned()
        }
        Warning::Stalled(_) => {
            "Hoses and couplers eat all the pressure at this flow: the relief valve opens and the \
             rotor stands still."
                .to_owned()
        }
        Warning::RotorTooSlow {
            speed: reached,
            lowest,
        } => format!(
            "The rotor reaches {} and needs at least {} to work properly, whatever its power: no \
             better than Labours.",
            speed(reached),
            speed(lowest)
        ),
        Warning::RotorTooFast {
            speed: reached,
            highest,
        } => format!(
            "The rotor would turn at {}, faster than the {} it may: lower the engine speed.",
            speed(reached),
            speed(highest)
        ),
        Warning::FarFromRated(stage) => format!(
            "The {} hands on less than half of what it takes: here it works far from what it is \
             made for, and the figures are rough.",
            super::small(labels::stage(stage))
        ),
        Warning::OilOutOfRange {
            viscosity,
            range: (thinnest, thickest),
        } => {
            let shown = |viscosity| number::shown(Quantity::Viscosity(viscosity), units);
            format!(
                "The oil is at {}; pumps and motors are made for {} to {}. The figures are rough \
                 here, and the machine's manual says how to warm it up.",
                shown(viscosity),
                shown(thinnest),
                shown(thickest)
            )
        }
        Warning::PumpTooFast {
            speed: reached,
            highest,
        } => format!(
            "The pack's pump turns at {}, faster than the {} it may: lower the engine speed.",
            speed(reached),
            speed(highest)
        ),
        Warning::LineTooNarrow {
            line,
            velocity,
            usual,
        } => format!(
            "Oil runs at {} in the {}, up to {} is usual there: a wider one loses less.",
            number::shown(Quantity::Velocity(velocity), units),
            labels::line(line),
            number::shown(Quantity::Velocity(usual), units)
        ),
        Warning::SuctionTooLow { inlet, lowest } => format!(
            "The pump's inlet gets {} absolute and needs {}: it draws bubbles and wears out. A \
             wider or shorter suction line, or a pump below its oil.",
            number::shown(Quantity::Pressure(inlet), units),
            number::shown(Quantity::Pressure(lowest), units)
        ),
        Warning::JointAngle { angle, advice } => format!(
            "Each joint bends by {}°: {}.",
            number::fixed(angle.to_degrees(), 0),
            labels::angle(advice)
        ),
        Warning::WontStart { starts, needs } => format!(
            "Stopped under full load it won't start again: the motor starts with {} at the rotor, \
             the job takes {}. Back off and clear it with the engine stopped.",
            number::shown(Quantity::Torque(starts), units),
            number::shown(Quantity::Torque(needs), units)
        ),
        Warning::FlowDiverted { comes, used } => format!(
            "{} come, the motor may take {}: the rest goes back to the tank and heats the oil.",
            flow(comes),
            flow(used)
        ),
    }
}
