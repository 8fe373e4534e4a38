//! What each part of a route adds: stages, or the reason why it can't be there.

use super::assembly::Assembly;
use crate::budget::Budget;
use crate::implement::{Implement, InputMotor, InputShaft, Place};
use crate::kit::Kit;
use crate::machine::{Circuit, Machine, MachineKind, Outlet};
use crate::quantity::{AngularSpeed, Flow};
use crate::route::joined::{Filling, Joined};
use crate::settings::Settings;
use crate::stage::divert::most_flow;
use crate::stage::{OilAtWork, Stage};

/// A part of a route.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Part {
    /// The machine must be of this kind; adds nothing.
    Kind(MachineKind),
    /// The train to the rear PTO.
    RearPto,
    /// The train to the mid PTO.
    MidPto,
    /// The machine's pump, what steering takes, and the valve: the outlet that is set, else the first there.
    Circuit(&'static [Outlet]),
    /// The kit's mechanical steps.
    KitDrive,
    /// The kit's own pump and its valve.
    KitPump,
    /// The kit's hoses.
    Hoses,
    /// The implement's input shaft at this end, and its way to the rotor.
    Shaft(Place),
    /// The implement's motor, and its way to the rotor.
    Motor,
}

/// Why a route can't be had.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NoFit {
    /// Only a machine of this kind has such a circuit.
    WrongKind(MachineKind),
    /// The machine has no rear PTO.
    NoRearPto,
    /// The machine has no mid PTO.
    NoMidPto,
    /// The machine has no outlet for an implement's oil.
    NoOutlet,
    /// The implement can't be had with an input shaft for this end.
    NoShaft(Place),
    /// The implement can't be had with a hydraulic motor.
    NoMotor,
    /// The yard has no kit for it.
    NoKit,
    /// The kit is built for another PTO speed.
    KitForOtherPto {
        /// The PTO's rated speed.
        brings: AngularSpeed,
        /// The speed that the kit is built for.
        needs: AngularSpeed,
    },
    /// The kit's pump would turn faster than it may.
    PumpTooFast {
        /// What PTO and kit bring at the PTO's rated speed.
        brings: AngularSpeed,
        /// What the pump may.
        highest: AngularSpeed,
    },
    /// The shaft would turn at another speed than the implement is built for.
    WrongSpeed {
        /// What kit and PTO bring at the PTO's rated speed.
        brings: AngularSpeed,
        /// What the implement's nearest input needs.
        needs: AngularSpeed,
    },
}

impl NoFit {
    /// Whether another kit could mend it.
    pub fn is_of_kit(self) -> bool {
        match self {
            Self::WrongKind(_)
            | Self::NoRearPto
            | Self::NoMidPto
            | Self::NoOutlet
            | Self::NoShaft(_)
            | Self::NoMotor => false,
            Self::NoKit
            | Self::KitForOtherPto { .. }
            | Self::PumpTooFast { .. }
            | Self::WrongSpeed { .. } => true,
        }
    }
}

/// The PTO's rated speed over the one that a kit is built for: this project's judgement.
const KIT_FITS: core::ops::RangeInclusive<f64> = 0.95..=1.05;

/// A machine, an implement and a kit, joined up along a route.
#[derive(Clone, Copy, Debug)]
pub struct Hookup<'a> {
    /// What supplies the power.
    pub machine: &'a Machine,
    /// What uses it.
    pub implement: &'a Implement,
    /// What joins them, where the yard has something.
    pub kit: Option<&'a Kit>,
    /// What the user has turned.
    pub settings: &'a Settings,
}

/// A machine at work with an implement: what all its routes have in common.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MachineAtWork {
    /// What the engine has left for a route.
    pub budget: Budget,
    /// The machine's own oil.
    pub oil: OilAtWork,
}

impl MachineAtWork {
    /// At these settings.
    pub fn new(machine: &Machine, implement: &Implement, settings: &Settings) -> Self {
        let ground_speed = settings.ground_speed_for(implement);
        let oil = settings.oil_for(machine.oil);
        Self {
            budget: Budget::at(machine, implement, settings, ground_speed),
            oil: OilAtWork::of(&oil, settings.oil_temperature()),
        }
    }
}

/// Joins up a route.
///
/// # Errors
/// Every reason why it can't be had.
pub fn assemble(parts: &[Part], hookup: Hookup<'_>) -> Result<Joined, Vec<NoFit>> {
    let machine = MachineAtWork::new(hookup.machine, hookup.implement, hookup.settings);
    assemble_at_work(parts, hookup, &machine)
}

/// Joins up a route with the hookup's machine at work.
///
/// # Errors
/// Every reason why it can't be had.
pub fn assemble_at_work(
    parts: &[Part],
    hookup: Hookup<'_>,
    machine: &MachineAtWork,
) -> Result<Joined, Vec<NoFit>> {
    let mut assembly = Assembly {
        stages: Vec::with_capacity(MANY_STAGES),
        ..Assembly::default()
    };
    if hookup.kit.is_none() {
        assembly.reasons.push(NoFit::NoKit);
    }
    for part in parts {
        part.add(hookup, &mut assembly);
    }
    if !assembly.reasons.is_empty() {
        return Err(assembly.reasons);
    }
    let settings = hookup.settings;
    let oil = settings.oil_for(assembly.oil.unwrap_or(hookup.machine.oil));
    Ok(Joined {
        stages: assembly.stages,
        oil: match assembly.oil {
            None => machine.oil,
            Some(_) => OilAtWork::of(&oil, settings.oil_temperature()),
        },
        budget: machine.budget,
        filling: Filling {
            oil,
            reservoir: assembly.reservoir,
        },
    })
}

/// As many stages as most routes have.
const MANY_STAGES: usize = 12;

impl Part {
    fn add(self, hookup: Hookup<'_>, to: &mut Assembly) {
        let Hookup {
            machine,
            implement,
            kit,
            settings,
        } = hookup;
        match self {
            Self::Kind(kind) if machine.kind == kind => {}
            Self::Kind(kind) => to.reasons.push(NoFit::WrongKind(kind)),
            Self::RearPto => {
                to.pto(
                    machine,
                    machine.rear_pto(settings.economy),
                    NoFit::NoRearPto,
                );
            }
            Self::MidPto => to.pto(machine, machine.mid_pto.as_ref(), NoFit::NoMidPto),
            Self::Circuit(outlets) => match circuit(machine, outlets, settings) {
                // The wrong kind of machine says it already.
                None if !to.reasons.is_empty() => {}
                None => to.reasons.push(NoFit::NoOutlet),
                Some(circuit) => to.circuit(circuit, implement, settings),
            },
            Self::KitDrive => {
                if let Some((brings, needs)) = to.rated.zip(kit.and_then(|kit| kit.pto_speed))
                    && !KIT_FITS.contains(&(brings / needs))
                {
                    to.reasons.push(NoFit::KitForOtherPto { brings, needs });
                }
                for gear in kit.into_iter().flat_map(|kit| &kit.drive) {
                    to.gear(*gear);
                }
            }
            Self::KitPump => {
                if let Some(pump) = kit.and_then(|kit| kit.pump.as_ref()) {
                    to.kit_pump(pump, implement, settings);
                }
            }
            Self::Hoses => {
                let hoses = kit.and_then(|kit| kit.hoses.as_ref());
                to.stages
                    .extend(hoses.map(|hoses| Stage::Hoses(hoses.stage())));
            }
            Self::Shaft(place) => to.shaft(implement, place),
            Self::Motor => match &implement.motor {
                None => to.reasons.push(NoFit::NoMotor),
                Some(motor) => to.motor(motor, implement),
            },
        }
    }
}

/// The most flow that a motor of an implement may be given.
pub fn most_for(motor: &InputMotor, implement: &Implement) -> Flow {
    most_flow(
        motor.highest_flow,
        motor.displacement,
        implement.rotor.highest / motor.ratio,
    )
}

/// Of an implement's input shafts for one end of the machine the one nearest to a speed.
pub fn nearest_shaft(
    implement: &Implement,
    place: Place,
    brings: AngularSpeed,
) -> Option<&InputShaft> {
    // How far off in proportion, in either direction.
    let misfit = |shaft: &&InputShaft| {
        let ratio = brings / shaft.speed;
        ratio.max(1.0 / ratio)
    };
    let at_place = implement.shafts.iter().filter(|shaft| shaft.place == place);
    at_place.min_by(|a, b| misfit(a).total_cmp(&misfit(b)))
}

/// The outlet that is set, where the machine has it, else its first of these.
pub fn circuit<'a>(
    machine: &'a Machine,
    outlets: &[Outlet],
    settings: &Settings,
) -> Option<&'a Circuit> {
    let wished = settings.outlet.filter(|outlet| outlets.contains(outlet));
    wished
        .iter()
        .chain(outlets)
        .find_map(|outlet| machine.circuit(*outlet))
}
