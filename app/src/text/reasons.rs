//! Why a route can't be had, and what a user must know beside its figures.

use super::labels;
use super::say::reasons as say;
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
        NoFit::WrongKind(MachineKind::SkidSteer) => say::not_a_skid_steer().to_owned(),
        NoFit::WrongKind(MachineKind::Tractor) => say::a_skid_steer().to_owned(),
        NoFit::NoRearPto => say::no_rear_pto().to_owned(),
        NoFit::NoMidPto => say::no_mid_pto().to_owned(),
        NoFit::NoOutlet => say::no_outlet().to_owned(),
        NoFit::NoShaft(Place::Rear) => say::no_rear_shaft().to_owned(),
        NoFit::NoShaft(Place::Front) => say::no_front_shaft().to_owned(),
        NoFit::NoMotor => say::no_motor().to_owned(),
        NoFit::NoKit => say::no_kit().to_owned(),
        NoFit::KitForOtherPto { brings, needs } => say::KitForOtherPto {
            needs: &speed(needs),
            brings: &speed(brings),
        }
        .said(),
        NoFit::PumpTooFast { brings, highest } => say::PumpWouldBeTooFast {
            brings: &speed(brings),
            highest: &speed(highest),
        }
        .said(),
        NoFit::WrongSpeed { brings, needs } => say::WrongSpeed {
            brings: &speed(brings),
            needs: &speed(needs),
        }
        .said(),
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
        Warning::Stalled(Stall::NoFlowLeft) => say::no_flow_left().to_owned(),
        Warning::Stalled(_) => say::no_pressure_left().to_owned(),
        Warning::RotorTooSlow {
            speed: reached,
            lowest,
        } => say::RotorTooSlow {
            speed: &speed(reached),
            lowest: &speed(lowest),
        }
        .said(),
        Warning::RotorTooFast {
            speed: reached,
            highest,
        } => say::RotorTooFast {
            speed: &speed(reached),
            highest: &speed(highest),
        }
        .said(),
        Warning::FarFromRated(stage) => say::far_from_rated(labels::stage_small(stage)),
        Warning::OilOutOfRange {
            viscosity,
            range: (thinnest, thickest),
        } => {
            let shown = |viscosity| number::shown(Quantity::Viscosity(viscosity), units);
            say::OilOutOfRange {
                viscosity: &shown(viscosity),
                thinnest: &shown(thinnest),
                thickest: &shown(thickest),
            }
            .said()
        }
        Warning::PumpTooFast {
            speed: reached,
            highest,
        } => say::PumpTooFast {
            speed: &speed(reached),
            highest: &speed(highest),
        }
        .said(),
        Warning::LineTooNarrow {
            line,
            velocity,
            usual,
        } => say::LineTooNarrow {
            line: labels::line(line),
            velocity: &number::shown(Quantity::Velocity(velocity), units),
            usual: &number::shown(Quantity::Velocity(usual), units),
        }
        .said(),
        Warning::SuctionTooLow { inlet, lowest } => say::SuctionTooLow {
            inlet: &number::shown(Quantity::Pressure(inlet), units),
            lowest: &number::shown(Quantity::Pressure(lowest), units),
        }
        .said(),
        Warning::JointAngle { angle, advice } => say::JointAngle {
            angle: &number::fixed(angle.to_degrees(), 0),
            advice: labels::angle(advice),
        }
        .said(),
        Warning::WontStart { starts, needs } => say::WontStart {
            starts: &number::shown(Quantity::Torque(starts), units),
            needs: &number::shown(Quantity::Torque(needs), units),
        }
        .said(),
        Warning::FlowDiverted { comes, used } => say::FlowDiverted {
            comes: &flow(comes),
            used: &flow(used),
        }
        .said(),
    }
}
