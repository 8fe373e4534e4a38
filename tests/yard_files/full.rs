//! A yard in which every field of the format is filled, and those that can be loaded, in which of
//! fields that exclude one another only one is.

use farend_core::hookup::{Seat, Turns};
use farend_core::implement::{Ground, ImplementKind, Place};
use farend_core::machine::{Aspiration, MachineKind, Outlet, SteeringPolicy, Supply, Transmission};
use farend_core::measure::Measure;
use farend_core::physics::hitch::Category;
use farend_core::physics::oil::Grade;
use farend_core::physics::shaft::ShaftType;
use farend_core::route::RouteId;
use farend_core::source::Source;
use farend_core::stage::gear::GearKind;
use farend_core::yard::entry::{
    CircuitEntry, CurveEntry, EngineEntry, GearEntry, HosesEntry, ImplementEntry, KitEntry,
    MachineEntry, MotorEntry, OilEntry, PtoEntry, PumpEntry, ReservoirEntry, RotorEntry,
    ShaftEntry, SteeringEntry, TravelEntry, UncertainEntry, WorkEntry, YardEntry,
};
use farend_core::yard::entry_hookup::{
    AxlesEntry, HitchEntry, InputEndEntry, KitShaftEntry, LoaderEntry, MountEntry, PtoEndEntry,
};
use farend_core::yard::rules::FORMAT_VERSION;

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
        format_version: FORMAT_VERSION,
        name: "Full yard".to_owned(),
        place: Some("Nowhere".to_owned()),
        invented: Some(true),
        dealer: Some("Dealer".to_owned()),
        note: Some("A note".to_owned()),
        currency: Some("EUR".to_owned()),
        hour_price: Some(60.0),
        machines: vec![machine()],
        implements: vec![implement()],
        kits: vec![kit()],
    }
}

/// The full yard with net power and a grade of oil, and with gross power and two viscosities: no
/// file may have both.
pub fn loadable() -> [YardEntry; 2] {
    let with = |change: fn(&mut EngineEntry, &mut OilEntry)| {
        let mut yard = yard();
        let machine = &mut yard.machines[0];
        let mut oil = oil();
        change(&mut machine.engine, &mut oil);
        machine.oil = Some(oil.clone());
        if let Some(pump) = &mut yard.kits[0].pump {
            pump.oil = Some(oil);
        }
        yard
    };
    [
        with(|engine, oil| {
            engine.gross_kw = None;
            (oil.cst_40, oil.cst_100) = (None, None);
        }),
        with(|engine, oil| {
            engine.net_kw = None;
            oil.grade = None;
        }),
    ]
}

fn machine() -> MachineEntry {
    MachineEntry {
        id: "machine".to_owned(),
        name: "Machine".to_owned(),
        kind: MachineKind::Tractor,
        engine: EngineEntry {
            net_kw: Some(about(60.0)),
            gross_kw: Some(about(65.0)),
            rated_rpm: 2200.0,
            lowest_rpm: 1000.0,
            curve: vec![
                CurveEntry {
                    rpm: 1000.0,
                    kw: 30.0,
                },
                CurveEntry {
                    rpm: 2200.0,
                    kw: 60.0,
                },
            ],
            aspiration: Some(Aspiration::Turbo),
        },
        rear_pto: Some(pto(540.0)),
        economy_pto: Some(pto(540.0)),
        mid_pto: Some(pto(2000.0)),
        circuits: vec![CircuitEntry {
            outlet: Outlet::Remotes,
            flow_l_min: about(60.0),
            engine_rpm: 2000.0,
            relief_bar: about(180.0),
            steering: SteeringEntry {
                policy: SteeringPolicy::FixedPriority,
                flow_l_min: Some(about(10.0)),
            },
            supply: Some(Supply::LoadSensing),
            reservoir: Some(reservoir()),
            valve_bar: Some(about(20.0)),
            volumetric: Some(about(0.9)),
            hydro_mechanical: Some(about(0.9)),
            coupler_mm: Some(12.5),
            case_drain: Some(true),
        }],
        oil: Some(oil()),
        mass_kg: Some(3000.0),
        transmission: Some(Transmission::Hydrostatic),
        hitch: Some(HitchEntry {
            category: Some(Category::Two),
            lift_kg: Some(1800.0),
            lift_at_m: Some(0.61),
            lowest_m: Some(0.25),
            highest_m: Some(0.9),
        }),
        loader: Some(LoaderEntry {
            lift_kg: Some(1200.0),
            reach_m: Some(2.0),
            third_function: Some(true),
        }),
        axles: Some(AxlesEntry {
            wheelbase_m: 2.0,
            front_kg: 1200.0,
            front_limit_kg: Some(2500.0),
            rear_limit_kg: Some(3500.0),
            loader_ahead_m: Some(1.2),
            frame_ahead_m: Some(0.7),
            hitch_behind_m: Some(0.8),
        }),
        price: Some(45_000.0),
    }
}

fn reservoir() -> ReservoirEntry {
    ReservoirEntry {
        oil_l: Some(40.0),
        cooler_w_k: Some(120.0),
    }
}

fn oil() -> OilEntry {
    OilEntry {
        grade: Some(Grade::TractorFluid),
        cst_40: Some(60.0),
        cst_100: Some(9.4),
        kg_m3: Some(880.0),
    }
}

fn pto(rpm: f64) -> PtoEntry {
    PtoEntry {
        rpm,
        engine_rpm: 2000.0,
        tested_kw: Some(about(45.0)),
        rating_kw: Some(about(60.0)),
        end: Some(PtoEndEntry {
            shaft: Some(ShaftType::One),
            turns: Some(Turns::Clockwise),
            height_m: Some(0.6),
            ahead_m: Some(0.5),
        }),
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
            diameter_mm: Some(450.0),
        },
        need_kw: about(20.0),
        shafts: vec![ShaftEntry {
            place: Place::Rear,
            rpm: 540.0,
            drive: vec![GearKind::Bevel],
            rating_kw: Some(about(45.0)),
            end: Some(InputEndEntry {
                shaft: Some(ShaftType::One),
                turns: Some(Turns::Clockwise),
                behind_m: Some(0.3),
                above_m: Some(0.2),
            }),
            price: Some(6_000.0),
        }],
        motor: Some(MotorEntry {
            displacement_cm3: 100.0,
            ratio: 0.75,
            drive: vec![GearKind::Chain],
            highest_l_min: 115.0,
            highest_bar: 240.0,
            starting: Some(about(0.8)),
            volumetric: Some(about(0.9)),
            hydro_mechanical: Some(about(0.9)),
            case_drain: Some(true),
            price: Some(6_500.0),
        }),
        work: Some(WorkEntry {
            measure: Measure::Mass,
            idle_kw: Some(about(2.0)),
            kwh_per_unit: Some(about(0.2)),
            width_m: Some(1.5),
            depth_m: Some(0.3),
            density_kg_m3: Some(200.0),
        }),
        travel: Some(TravelEntry {
            usual_km_h: 3.0,
            highest_km_h: 8.0,
            ground: Some(Ground::Loose),
            pushing_n: Some(about(800.0)),
        }),
        mass_kg: Some(350.0),
        mount: Some(MountEntry {
            category: Some(Category::One),
            centre_m: Some(0.6),
            backwards: Some(true),
            guarded: Some(true),
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
            // Only such a step has an angle.
            kind: GearKind::JointShaft,
            ratio: 3.5,
            efficiency: Some(about(0.95)),
            rating_nm: Some(about(400.0)),
            slip_clutch_nm: Some(600.0),
            angle_deg: Some(10.0),
        }],
        pump: Some(PumpEntry {
            displacement_cm3: 45.0,
            highest_rpm: 2500.0,
            relief_bar: about(200.0),
            suction_bore_mm: Some(38.0),
            suction_length_m: Some(0.6),
            suction_lift_m: Some(-0.2),
            reservoir: Some(reservoir()),
            oil: Some(oil()),
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
            fittings_k: Some(4.0),
            coupler_mm: Some(12.5),
            case_drain: Some(true),
        }),
        shaft: Some(KitShaftEntry {
            pto_end: Some(ShaftType::One),
            far_end: Some(ShaftType::One),
            closed_m: Some(0.6),
            open_m: Some(1.1),
            reverses: Some(false),
            guarded: Some(true),
        }),
        seat: Some(Seat::Loader),
        included: Some(true),
        hookup_min: Some(20.0),
        price: Some(3_000.0),
        fitting_price: Some(400.0),
    }
}
