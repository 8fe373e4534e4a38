//! The routes, as data: each is a list of parts that machine, kit and implement bring.
//! A new route is a new variant and a new list here.

mod assembly;
pub mod joined;
pub mod part;

use crate::implement::Place;
use crate::machine::{Machine, MachineKind, Outlet, Pto};
use crate::words::words;
use part::Part;

words! {
    /// One way from the engine to the implement's shaft.
    RouteId {
        /// Engine, PTO train, joints, implement's gearbox.
        RearShaft = "rear_shaft",
        /// Engine, mid-PTO gears, short shaft, subframe box.
        MidShaft = "mid_shaft",
        /// Engine, PTO train, turning box, long shaft under the machine, front box.
        TurnedForward = "turned_forward",
        /// Engine, machine's pump, steering's share, hoses, motor.
        MachineHydraulics = "machine_hydraulics",
        /// Engine, PTO train, speed-increasing box, pump with its own reservoir, hoses, motor.
        PumpPack = "pump_pack",
        /// A skid steer's standard-flow or high-flow circuit.
        SkidSteer = "skid_steer",
    }
}

impl RouteId {
    /// The parts in order, from the engine on.
    pub fn parts(self) -> &'static [Part] {
        match self {
            Self::RearShaft => &[Part::RearPto, Part::KitDrive, Part::Shaft(Place::Rear)],
            Self::MidShaft => &[Part::MidPto, Part::KitDrive, Part::Shaft(Place::Front)],
            Self::TurnedForward => &[Part::RearPto, Part::KitDrive, Part::Shaft(Place::Front)],
            Self::MachineHydraulics => &[
                Part::Kind(MachineKind::Tractor),
                Part::Circuit(&[Outlet::Remotes]),
                Part::Hoses,
                Part::Motor,
            ],
            Self::PumpPack => &[
                Part::RearPto,
                Part::KitDrive,
                Part::KitPump,
                Part::Hoses,
                Part::Motor,
            ],
            Self::SkidSteer => &[
                Part::Kind(MachineKind::SkidSteer),
                Part::Circuit(&[Outlet::HighFlow, Outlet::StandardFlow]),
                Part::Hoses,
                Part::Motor,
            ],
        }
    }

    /// Whether a PTO's shaft carries the power on a part of the way.
    pub fn has_pto(self) -> bool {
        let parts = self.parts();
        parts.contains(&Part::RearPto) || parts.contains(&Part::MidPto)
    }

    /// The PTO that it begins with, where it begins with one and the machine has it; the rear one in
    /// its economy gear where that is wished and there.
    pub fn pto(self, machine: &Machine, economy: bool) -> Option<&Pto> {
        let parts = self.parts();
        if parts.contains(&Part::RearPto) {
            machine.rear_pto(economy)
        } else if parts.contains(&Part::MidPto) {
            machine.mid_pto.as_ref()
        } else {
            None
        }
    }

    /// The end of the machine for which the implement needs an input shaft, where it needs one.
    pub fn input_place(self) -> Option<Place> {
        self.parts().iter().find_map(|part| match part {
            Part::Shaft(place) => Some(*place),
            _ => None,
        })
    }

    /// Whether a kit brings the pump.
    pub fn has_kit_pump(self) -> bool {
        self.parts().contains(&Part::KitPump)
    }

    /// Whether oil carries the power on a part of the way.
    pub fn needs_oil(self) -> bool {
        self.parts().contains(&Part::Hoses)
    }
}
