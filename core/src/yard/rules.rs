//! The fields of a yard file, format version 2: what each may hold, in which unit, and the hint
//! that a fault gets. The one place for ranges, which are this project's judgement.

use super::format::VERSION;
use super::rules_hookup::{AXLES, HITCH, INPUT_END, KIT_SHAFT, LOADER, MOUNT, PRICE, PTO_END};
use super::shape::{Field, Shape};
use crate::hint::Hint;
use crate::hookup::Seat;
use crate::implement::{Ground, ImplementKind, Place};
use crate::machine::{Aspiration, MachineKind, Outlet, SteeringPolicy, Supply, Transmission};
use crate::measure::Measure;
use crate::physics::oil::Grade;
use crate::route::RouteId;
use crate::settings::{
    DENSITY_LIMITS, DEPTH_LIMITS, ENGINE_POWER_LIMITS, FLOW_LIMITS, GROUND_SPEED_LIMITS,
    RELIEF_LIMITS, SHAFT_POWER_LIMITS,
};
use crate::stage::gear::GearKind;
use Shape::{Flag, Group, Id, Many, Number, OneOf, Text, Uncertain, Whole, Words};

/// The format version that this program writes. It reads the older ones too ([`super::format`]).
pub const FORMAT_VERSION: u32 = 2;
/// The most bytes that a yard file may have.
pub const LARGEST_FILE: usize = 2_000_000;
/// The most entries that a list may have.
pub const MOST_ENTRIES: usize = 1_000;

pub(crate) const fn required(key: &'static str, shape: Shape, hint: Hint) -> Field {
    Field {
        key,
        required: true,
        shape,
        hint,
    }
}

pub(crate) const fn optional(key: &'static str, shape: Shape, hint: Hint) -> Field {
    Field {
        key,
        required: false,
        shape,
        hint,
    }
}

pub(super) const fn within(min: f64, max: f64, unit: &'static str) -> Shape {
    Number { min, max, unit }
}

const fn about(min: f64, max: f64, unit: &'static str) -> Shape {
    Uncertain { min, max, unit }
}

const NAME: Field = required("name", Text { most: 80 }, Hint::Name);
const ID: Field = required("id", Id, Hint::Id);
const VOLUMETRIC: Field = optional("volumetric", about(0.5, 1.0, ""), Hint::Volumetric);
const HYDRO_MECHANICAL: Field = optional(
    "hydro_mechanical",
    about(0.5, 1.0, ""),
    Hint::HydroMechanical,
);
const FLOW: Shape = about(FLOW_LIMITS.0, FLOW_LIMITS.1, "L/min");
const RELIEF: Field = required(
    "relief_bar",
    about(RELIEF_LIMITS.0, RELIEF_LIMITS.1, "bar"),
    Hint::Relief,
);
const VALVE: Field = optional("valve_bar", about(0.0, 60.0, "bar"), Hint::Valve);
const COUPLER: Field = optional("coupler_mm", within(5.0, 51.0, "mm"), Hint::CouplerSize);
const CASE_DRAIN: Field = optional("case_drain", Flag, Hint::CaseDrain);
const SHAFT_POWER: Shape = about(SHAFT_POWER_LIMITS.0, SHAFT_POWER_LIMITS.1, "kW");
const ENGINE_POWER: Shape = about(ENGINE_POWER_LIMITS.0, ENGINE_POWER_LIMITS.1, "kW");
const ENGINE_SPEED: Shape = within(300.0, 5000.0, "rpm");
const DRIVE_STEPS: Field = optional(
    "drive",
    Words {
        of: GearKind::WORDS,
        most: 8,
    },
    Hint::ShaftDrive,
);

const CURVE: &[Field] = &[
    required("rpm", ENGINE_SPEED, Hint::CurveSpeed),
    required("kw", within(0.1, 600.0, "kW"), Hint::CurvePower),
];

const OIL: &[Field] = &[
    optional("grade", OneOf(Grade::WORDS), Hint::Grade),
    optional("cst_40", within(5.0, 500.0, "cSt"), Hint::ViscosityAt40),
    optional("cst_100", within(2.0, 50.0, "cSt"), Hint::ViscosityAt100),
    optional("kg_m3", within(700.0, 1200.0, "kg/m³"), Hint::OilDensity),
];

const RESERVOIR: &[Field] = &[
    optional("oil_l", within(2.0, 1000.0, "L"), Hint::OilVolume),
    optional("cooler_w_k", within(0.0, 5000.0, "W/K"), Hint::Cooler),
];
const RESERVOIR_FIELD: Field = optional("reservoir", Group(RESERVOIR), Hint::WhereUnknown);
const OIL_FIELD: Field = optional("oil", Group(OIL), Hint::Oil);
const MASS: Shape = within(20.0, 30_000.0, "kg");

const ENGINE: &[Field] = &[
    optional("net_kw", ENGINE_POWER, Hint::NetPower),
    optional("gross_kw", ENGINE_POWER, Hint::GrossPower),
    required("rated_rpm", ENGINE_SPEED, Hint::EngineRated),
    required("lowest_rpm", ENGINE_SPEED, Hint::EngineLowest),
    optional(
        "curve",
        Many {
            of: CURVE,
            most: 40,
        },
        Hint::Curve,
    ),
    optional("aspiration", OneOf(Aspiration::WORDS), Hint::Aspiration),
];

const PTO: &[Field] = &[
    required("rpm", within(300.0, 3000.0, "rpm"), Hint::PtoSpeed),
    required("engine_rpm", ENGINE_SPEED, Hint::PtoEngineSpeed),
    optional("tested_kw", SHAFT_POWER, Hint::PtoTested),
    optional("rating_kw", SHAFT_POWER, Hint::PtoRating),
    optional("end", Group(PTO_END), Hint::PtoEnd),
];

const STEERING: &[Field] = &[
    required("policy", OneOf(SteeringPolicy::WORDS), Hint::SteeringPolicy),
    optional("flow_l_min", FLOW, Hint::SteeringFlow),
];

const CIRCUIT: &[Field] = &[
    required("outlet", OneOf(Outlet::WORDS), Hint::Outlet),
    required("flow_l_min", FLOW, Hint::SheetFlow),
    required("engine_rpm", ENGINE_SPEED, Hint::FlowSpeed),
    RELIEF,
    required("steering", Group(STEERING), Hint::Steering),
    optional("supply", OneOf(Supply::WORDS), Hint::Supply),
    VALVE,
    RESERVOIR_FIELD,
    VOLUMETRIC,
    HYDRO_MECHANICAL,
    COUPLER,
    CASE_DRAIN,
];

pub(super) const MACHINE: &[Field] = &[
    ID,
    NAME,
    required("kind", OneOf(MachineKind::WORDS), Hint::Kind),
    required("engine", Group(ENGINE), Hint::Engine),
    optional("rear_pto", Group(PTO), Hint::WhereNone),
    optional("economy_pto", Group(PTO), Hint::EconomyPto),
    optional("mid_pto", Group(PTO), Hint::WhereNone),
    optional(
        "circuits",
        Many {
            of: CIRCUIT,
            most: 3,
        },
        Hint::Circuits,
    ),
    OIL_FIELD,
    optional("mass_kg", MASS, Hint::MachineMass),
    optional(
        "transmission",
        OneOf(Transmission::WORDS),
        Hint::Transmission,
    ),
    optional("hitch", Group(HITCH), Hint::Hitch),
    optional("loader", Group(LOADER), Hint::Loader),
    optional("axles", Group(AXLES), Hint::Axles),
    optional("price", PRICE, Hint::YardPrice),
];

const ROTOR_SPEED: Shape = within(10.0, 6000.0, "rpm");
const ROTOR: &[Field] = &[
    required("rated_rpm", ROTOR_SPEED, Hint::RotorRated),
    required("lowest_rpm", ROTOR_SPEED, Hint::RotorLowest),
    required("highest_rpm", ROTOR_SPEED, Hint::RotorHighest),
    optional(
        "diameter_mm",
        within(20.0, 3000.0, "mm"),
        Hint::RotorDiameter,
    ),
];

const SHAFT: &[Field] = &[
    required("place", OneOf(Place::WORDS), Hint::ShaftPlace),
    required("rpm", within(100.0, 3000.0, "rpm"), Hint::ShaftSpeed),
    DRIVE_STEPS,
    optional("rating_kw", SHAFT_POWER, Hint::ShaftRating),
    optional("end", Group(INPUT_END), Hint::PtoEnd),
    optional("price", PRICE, Hint::ShaftPrice),
];

const MOTOR: &[Field] = &[
    required(
        "displacement_cm3",
        within(4.0, 2000.0, "cm³"),
        Hint::Displacement,
    ),
    required("ratio", within(0.01, 20.0, ""), Hint::MotorRatio),
    DRIVE_STEPS,
    required(
        "highest_l_min",
        within(FLOW_LIMITS.0, FLOW_LIMITS.1, "L/min"),
        Hint::MotorFlow,
    ),
    required(
        "highest_bar",
        within(RELIEF_LIMITS.0, RELIEF_LIMITS.1, "bar"),
        Hint::MotorPressure,
    ),
    optional("starting", about(0.3, 1.0, ""), Hint::MotorStarting),
    VOLUMETRIC,
    HYDRO_MECHANICAL,
    optional("case_drain", Flag, Hint::MotorCaseDrain),
    optional("price", PRICE, Hint::MotorPrice),
];

const WORK: &[Field] = &[
    required("measure", OneOf(Measure::WORDS), Hint::Measure),
    optional("idle_kw", about(0.01, 300.0, "kW"), Hint::Idle),
    optional("kwh_per_unit", about(0.001, 100.0, "kWh"), Hint::Energy),
    optional("width_m", within(0.05, 12.0, "m"), Hint::Width),
    optional(
        "depth_m",
        within(DEPTH_LIMITS.0, DEPTH_LIMITS.1, "m"),
        Hint::Depth,
    ),
    optional(
        "density_kg_m3",
        within(DENSITY_LIMITS.0, DENSITY_LIMITS.1, "kg/m³"),
        Hint::MaterialDensity,
    ),
];

const TRAVEL: &[Field] = &[
    required(
        "usual_km_h",
        within(0.1, GROUND_SPEED_LIMITS.1, "km/h"),
        Hint::UsualSpeed,
    ),
    required(
        "highest_km_h",
        within(0.1, GROUND_SPEED_LIMITS.1, "km/h"),
        Hint::HighestSpeed,
    ),
    optional("ground", OneOf(Ground::WORDS), Hint::Ground),
    optional("pushing_n", about(0.0, 50_000.0, "N"), Hint::Pushing),
];

pub(super) const IMPLEMENT: &[Field] = &[
    ID,
    NAME,
    required("kind", OneOf(ImplementKind::WORDS), Hint::ImplementKind),
    required("rotor", Group(ROTOR), Hint::Rotor),
    required("need_kw", about(0.2, 500.0, "kW"), Hint::Need),
    optional("shafts", Many { of: SHAFT, most: 4 }, Hint::Shafts),
    optional("motor", Group(MOTOR), Hint::Motor),
    optional("work", Group(WORK), Hint::Work),
    optional("travel", Group(TRAVEL), Hint::Travel),
    optional("mass_kg", MASS, Hint::ImplementMass),
    optional("mount", Group(MOUNT), Hint::Mount),
];

const GEAR: &[Field] = &[
    required("kind", OneOf(GearKind::WORDS), Hint::Kind),
    required("ratio", within(0.05, 20.0, ""), Hint::GearRatio),
    optional("efficiency", about(0.3, 1.0, ""), Hint::GearEfficiency),
    optional("rating_nm", about(5.0, 20_000.0, "N·m"), Hint::GearRating),
    optional(
        "slip_clutch_nm",
        within(5.0, 20_000.0, "N·m"),
        Hint::SlipClutch,
    ),
    optional("angle_deg", within(0.0, 80.0, "°"), Hint::JointAngle),
];

const PUMP: &[Field] = &[
    required(
        "displacement_cm3",
        within(2.0, 500.0, "cm³"),
        Hint::Displacement,
    ),
    required(
        "highest_rpm",
        within(300.0, 6000.0, "rpm"),
        Hint::PumpHighest,
    ),
    RELIEF,
    VALVE,
    optional(
        "suction_bore_mm",
        within(6.0, 120.0, "mm"),
        Hint::SuctionBore,
    ),
    optional(
        "suction_length_m",
        within(0.05, 5.0, "m"),
        Hint::SuctionLength,
    ),
    optional("suction_lift_m", within(-2.0, 2.0, "m"), Hint::SuctionLift),
    RESERVOIR_FIELD,
    OIL_FIELD,
    VOLUMETRIC,
    HYDRO_MECHANICAL,
];

const HOSES: &[Field] = &[
    required("bore_mm", within(4.0, 80.0, "mm"), Hint::HoseBore),
    required("length_m", within(0.2, 60.0, "m"), Hint::HoseLength),
    optional("back_bore_mm", within(4.0, 80.0, "mm"), Hint::HoseBackBore),
    required("couplers", Whole { min: 0, max: 20 }, Hint::Couplers),
    optional("coupler_bar", about(0.0, 20.0, "bar"), Hint::CouplerDrop),
    optional(
        "coupler_l_min",
        within(FLOW_LIMITS.0, FLOW_LIMITS.1, "L/min"),
        Hint::CouplerFlow,
    ),
    optional("fittings_k", within(0.0, 100.0, ""), Hint::Fittings),
    COUPLER,
    CASE_DRAIN,
];

pub(super) const KIT: &[Field] = &[
    ID,
    NAME,
    required(
        "routes",
        Words {
            of: RouteId::WORDS,
            most: RouteId::ALL.len(),
        },
        Hint::Routes,
    ),
    optional("pto_rpm", within(300.0, 3000.0, "rpm"), Hint::KitPtoSpeed),
    optional("drive", Many { of: GEAR, most: 8 }, Hint::KitDrive),
    optional("pump", Group(PUMP), Hint::Pump),
    optional("hoses", Group(HOSES), Hint::Hoses),
    optional("shaft", Group(KIT_SHAFT), Hint::KitShaft),
    optional("seat", OneOf(Seat::WORDS), Hint::Seat),
    optional("included", Flag, Hint::Included),
    optional("hookup_min", within(0.0, 600.0, "min"), Hint::Hookup),
    optional("price", PRICE, Hint::YardPrice),
    optional("fitting_price", PRICE, Hint::FittingPrice),
];

/// A whole yard file.
pub const YARD: &[Field] = &[
    required(
        VERSION,
        Whole {
            min: 1,
            max: FORMAT_VERSION,
        },
        Hint::Version,
    ),
    NAME,
    optional("place", Text { most: 80 }, Hint::Place),
    optional("invented", Flag, Hint::Invented),
    optional("dealer", Text { most: 80 }, Hint::Dealer),
    optional("note", Text { most: 240 }, Hint::Note),
    optional("currency", Text { most: 3 }, Hint::Currency),
    optional("hour_price", PRICE, Hint::HourPrice),
    required(
        "machines",
        Many {
            of: MACHINE,
            most: MOST_ENTRIES,
        },
        Hint::Machines,
    ),
    required(
        "implements",
        Many {
            of: IMPLEMENT,
            most: MOST_ENTRIES,
        },
        Hint::Implements,
    ),
    required(
        "kits",
        Many {
            of: KIT,
            most: MOST_ENTRIES,
        },
        Hint::Kits,
    ),
];
