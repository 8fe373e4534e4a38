//! A yard in which every field of the format is filled.

use farend_core::implement::{ImplementKind, Place};
use farend_core::machine::{MachineKind, Outlet, SteeringPolicy, Supply};
use farend_core::route::RouteId;
use farend_core::source::Source;
use farend_core::stage::gear::GearKind;
use farend_core::yard::entry::{
    CircuitEntry, EngineEntry, GearEntry, HosesEntry, ImplementEntry, KitEntry, MachineEntry,
    MotorEntry, PtoEntry, PumpEntry, RotorEntry, ShaftEntry, SteeringEntry, UncertainEntry,
    YardEntry,
};

fn about(likely: f64) -> UncertainEntry {
    UncertainEntry::Three {
        low: likely * 0.9,
        likely,
        high: likely * 1.05,
        source: Some(Source::FromMemory),
    }
}

/// No field is left to a default: a new one doesn't compile until it stands here.
pub fn yard() -> YardEntry {
    YardEntry {
        format_version: 1,
        name: "Full yard".to_owned(),
        place: Some("Nowhere".to_owned()),
        invented: Some(true),
        machines: vec![machine()],
        implements: vec![implement()],
        kits: vec![kit()],
    }
}

fn machine() -> MachineEntry {
    MachineEntry {
        id: "machine".to_owned(),
        name: "Machine".to_owned(),
        kind: MachineKind::Tractor,
        engine: EngineEntry {
            net_kw: about(60.0),
            rated_rpm: 2200.0,
            lowest_rpm: 1000.0,
        },
        rear_pto: Some(pto(540.0)),
        mid_pto: Some(pto(2000.0)),
        circuits: vec![CircuitEntry {
            outlet: Outlet::Remotes,
            flow_l_min: about(60.0),
            engine_rpm: 2200.0,
            relief_bar: about(180.0),
            steering: SteeringEntry {
                policy: SteeringPolicy::FixedPriority,
                flow_l_min: Some(about(10.0)),
            },
            supply: Some(Supply::LoadSensing),
            valve_bar: Some(about(20.0)),
            volumetric: Some(about(0.9)),
            hydro_mechanical: Some(about(0.9)),
        }],
    }
}

fn pto(rpm: f64) -> PtoEntry {
    PtoEntry {
        rpm,
        engine_rpm: 2000.0,
        tested_kw: Some(about(45.0)),
        rating_kw: Some(about(60.0)),
    }
}

fn implement() -> ImplementEntry {
    ImplementEntry {
        id: "implement".to_owned(),
        name: "Implement".to_owned(),
        kind: ImplementKind::Thrower,
        rotor: RotorEntry {
            rated_rpm: 600.0,
            lowest_rpm: 480.0,
            highest_rpm: 700.0,
        },
        need_kw: about(20.0),
        shafts: vec![ShaftEntry {
            place: Place::Rear,
            rpm: 540.0,
            drive: vec![GearKind::Bevel],
            rating_kw: Some(about(45.0)),
        }],
        motor: Some(MotorEntry {
            displacement_cm3: 100.0,
            ratio: 0.75,
            drive: vec![GearKind::Chain],
            highest_l_min: 115.0,
            highest_bar: 240.0,
            volumetric: Some(about(0.9)),
            hydro_mechanical: Some(about(0.9)),
        }),
    }
}

fn kit() -> KitEntry {
    KitEntry {
        id: "kit".to_owned(),
        name: "Kit".to_owned(),
        routes: vec![RouteId::PumpPack],
        pto_rpm: Some(540.0),
        drive: vec![GearEntry {
            kind: GearKind::Spur,
            ratio: 3.5,
            efficiency: Some(about(0.95)),
            rating_nm: Some(about(400.0)),
        }],
        pump: Some(PumpEntry {
            displacement_cm3: 45.0,
            highest_rpm: 2500.0,
            relief_bar: about(200.0),
            valve_bar: Some(about(5.0)),
            volumetric: Some(about(0.9)),
            hydro_mechanical: Some(about(0.9)),
        }),
        hoses: Some(HosesEntry {
            bore_mm: 19.0,
            length_m: 4.0,
            back_bore_mm: Some(25.0),
            couplers: 4.0,
            coupler_bar: Some(about(1.5)),
            coupler_l_min: Some(106.0),
        }),
    }
}
