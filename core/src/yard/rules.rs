//! The fields of a yard file, format version 1: what each may hold, in which unit, and the hint
//! that a fault gets. The one place for ranges.

use super::shape::{Field, Shape};
use crate::implement::{ImplementKind, Place};
use crate::machine::{MachineKind, Outlet, SteeringPolicy, Supply};
use crate::route::RouteId;
use crate::settings::{FLOW_LIMITS, RELIEF_LIMITS};
use crate::stage::gear::GearKind;
use Shape::{Flag, Group, Id, Many, Number, OneOf, Text, Uncertain, Whole, Words};

/// The format version that this program writes and reads.
pub const FORMAT_VERSION: u32 = 1;
/// The most bytes that a yard file may have.
pub const LARGEST_FILE: usize = 2_000_000;
/// The most entries that a list may have.
pub const MOST_ENTRIES: usize = 1_000;

const fn required(key: &'static str, shape: Shape, hint: &'static str) -> Field {
    Field {
        key,
        required: true,
        shape,
        hint,
    }
}

const fn optional(key: &'static str, shape: Shape, hint: &'static str) -> Field {
    Field {
        key,
        required: false,
        shape,
        hint,
    }
}

const fn within(min: f64, max: f64, unit: &'static str) -> Shape {
    Number { min, max, unit }
}

const fn about(min: f64, max: f64, unit: &'static str) -> Shape {
    Uncertain { min, max, unit }
}

const NAME: Field = required("name", Text { most: 80 }, "The name that customers see.");
const ID: Field = required(
    "id",
    Id,
    "A short word of small letters, digits and hyphens, unique in its list.",
);
const VOLUMETRIC: Field = optional(
    "volumetric",
    about(0.5, 1.0, ""),
    "Flow against flow, as a part of one: 0.95 for 95 %.",
);
const HYDRO_MECHANICAL: Field = optional(
    "hydro_mechanical",
    about(0.5, 1.0, ""),
    "Torque against torque, as a part of one: 0.94 for 94 %.",
);
const FLOW: Shape = about(FLOW_LIMITS.0, FLOW_LIMITS.1, "L/min");
const RELIEF: Field = required(
    "relief_bar",
    about(RELIEF_LIMITS.0, RELIEF_LIMITS.1, "bar"),
    "Pressure at which the relief valve opens; 1 bar is 14.5 psi.",
);
const VALVE: Field = optional(
    "valve_bar",
    about(0.0, 60.0, "bar"),
    "What the open valve takes at the pump's rated flow, or the margin of load sensing.",
);
const SHAFT_POWER: Shape = about(1.0, 600.0, "kW");
const ENGINE_SPEED: Shape = within(300.0, 5000.0, "rpm");
const DRIVE_STEPS: Field = optional(
    "drive",
    Words {
        of: GearKind::WORDS,
        most: 8,
    },
    "The steps to the rotor in order, such as [\"bevel\"].",
);

const ENGINE: &[Field] = &[
    required(
        "net_kw",
        about(3.0, 600.0, "kW"),
        "Net power at rated speed; 1 mechanical hp is 0.7457 kW. Gross power is higher: don't use it.",
    ),
    required(
        "rated_rpm",
        ENGINE_SPEED,
        "The speed that the power holds for.",
    ),
    required(
        "lowest_rpm",
        ENGINE_SPEED,
        "The lowest speed at which it may work under load.",
    ),
];

const PTO: &[Field] = &[
    required(
        "rpm",
        within(300.0, 3000.0, "rpm"),
        "The shaft's rated speed: 540, 1000 or 2000 for most.",
    ),
    required(
        "engine_rpm",
        ENGINE_SPEED,
        "The engine speed at which the shaft has its rated speed.",
    ),
    optional(
        "tested_kw",
        SHAFT_POWER,
        "Power measured at the shaft, from a test report.",
    ),
    optional(
        "rating_kw",
        SHAFT_POWER,
        "The most that the shaft is made for at its rated speed.",
    ),
];

const STEERING: &[Field] = &[
    required(
        "policy",
        OneOf(SteeringPolicy::WORDS),
        "Ask the workshop which it is: it decides the flow at the outlets.",
    ),
    optional(
        "flow_l_min",
        FLOW,
        "Needed for fixed_priority and summed: the steering's flow.",
    ),
];

const CIRCUIT: &[Field] = &[
    required("outlet", OneOf(Outlet::WORDS), "Where the hoses plug in."),
    required(
        "flow_l_min",
        FLOW,
        "The sheet's flow; 1 US gpm is 3.785 L/min.",
    ),
    required(
        "engine_rpm",
        ENGINE_SPEED,
        "The engine speed that the flow holds for.",
    ),
    RELIEF,
    required("steering", Group(STEERING), "Who takes what for steering."),
    optional(
        "supply",
        OneOf(Supply::WORDS),
        "How the pump answers; left out, it's a fixed pump: open_centre.",
    ),
    VALVE,
    VOLUMETRIC,
    HYDRO_MECHANICAL,
];

const MACHINE: &[Field] = &[
    ID,
    NAME,
    required("kind", OneOf(MachineKind::WORDS), "What it is."),
    required("engine", Group(ENGINE), "Its engine."),
    optional("rear_pto", Group(PTO), "Leave it out where there is none."),
    optional("mid_pto", Group(PTO), "Leave it out where there is none."),
    optional(
        "circuits",
        Many {
            of: CIRCUIT,
            most: 3,
        },
        "One entry for each outlet that an implement can use.",
    ),
];

const ROTOR_SPEED: Shape = within(10.0, 6000.0, "rpm");
const ROTOR: &[Field] = &[
    required(
        "rated_rpm",
        ROTOR_SPEED,
        "The speed that the rotor is built for.",
    ),
    required(
        "lowest_rpm",
        ROTOR_SPEED,
        "Below this it no longer works properly.",
    ),
    required("highest_rpm", ROTOR_SPEED, "It must never turn faster."),
];

const SHAFT: &[Field] = &[
    required(
        "place",
        OneOf(Place::WORDS),
        "The end of the machine that it suits.",
    ),
    required(
        "rpm",
        within(100.0, 3000.0, "rpm"),
        "The input's speed when the rotor has its rated speed.",
    ),
    DRIVE_STEPS,
    optional(
        "rating_kw",
        SHAFT_POWER,
        "The most that the implement's input may take.",
    ),
];

const MOTOR: &[Field] = &[
    required(
        "displacement_cm3",
        within(4.0, 2000.0, "cm³"),
        "Per revolution; 1 in³ is 16.387 cm³.",
    ),
    required(
        "ratio",
        within(0.01, 20.0, ""),
        "Rotor speed over motor speed: 1 where the motor drives the rotor straight.",
    ),
    DRIVE_STEPS,
    required(
        "highest_l_min",
        within(FLOW_LIMITS.0, FLOW_LIMITS.1, "L/min"),
        "From the motor's sheet.",
    ),
    required(
        "highest_bar",
        within(RELIEF_LIMITS.0, RELIEF_LIMITS.1, "bar"),
        "Highest continuous pressure difference, from the motor's sheet.",
    ),
    VOLUMETRIC,
    HYDRO_MECHANICAL,
];

const IMPLEMENT: &[Field] = &[
    ID,
    NAME,
    required("kind", OneOf(ImplementKind::WORDS), "What it does."),
    required("rotor", Group(ROTOR), "What turns."),
    required(
        "need_kw",
        about(0.2, 500.0, "kW"),
        "Power at the rotor for the job, not the machine size that a sheet asks for.",
    ),
    optional(
        "shafts",
        Many { of: SHAFT, most: 4 },
        "One entry for each shaft drive that it can be had with.",
    ),
    optional(
        "motor",
        Group(MOTOR),
        "Leave it out where it can't be had with a motor.",
    ),
];

const GEAR: &[Field] = &[
    required("kind", OneOf(GearKind::WORDS), "What it is."),
    required(
        "ratio",
        within(0.05, 20.0, ""),
        "Speed out over speed in: above 1 makes it faster.",
    ),
    optional(
        "efficiency",
        about(0.3, 1.0, ""),
        "As a part of one: 0.96 for 96 %.",
    ),
    optional(
        "rating_nm",
        about(5.0, 20_000.0, "N·m"),
        "The most torque on its output shaft.",
    ),
];

const PUMP: &[Field] = &[
    required(
        "displacement_cm3",
        within(2.0, 500.0, "cm³"),
        "Per revolution; 1 in³ is 16.387 cm³.",
    ),
    required(
        "highest_rpm",
        within(300.0, 6000.0, "rpm"),
        "From the pump's sheet.",
    ),
    RELIEF,
    VALVE,
    VOLUMETRIC,
    HYDRO_MECHANICAL,
];

const HOSES: &[Field] = &[
    required(
        "bore_mm",
        within(4.0, 80.0, "mm"),
        "Inner diameter of the hose.",
    ),
    required("length_m", within(0.2, 60.0, "m"), "One way."),
    optional(
        "back_bore_mm",
        within(4.0, 80.0, "mm"),
        "Inner diameter of the hose back, where it's another.",
    ),
    required(
        "couplers",
        Whole { min: 0, max: 20 },
        "All that the oil passes, there and back.",
    ),
    optional(
        "coupler_bar",
        about(0.0, 20.0, "bar"),
        "What one coupler takes at its rated flow.",
    ),
    optional(
        "coupler_l_min",
        within(FLOW_LIMITS.0, FLOW_LIMITS.1, "L/min"),
        "That rated flow.",
    ),
];

const KIT: &[Field] = &[
    ID,
    NAME,
    required(
        "routes",
        Words {
            of: RouteId::WORDS,
            most: 6,
        },
        "The routes that it serves.",
    ),
    optional(
        "pto_rpm",
        within(300.0, 3000.0, "rpm"),
        "The PTO speed that it's built for; leave it out for hoses and for any speed.",
    ),
    optional(
        "drive",
        Many { of: GEAR, most: 8 },
        "The mechanical steps from the PTO on, in order.",
    ),
    optional("pump", Group(PUMP), "Only for a pump pack."),
    optional("hoses", Group(HOSES), "For every route with oil."),
];

/// A whole yard file.
pub const YARD: &[Field] = &[
    required(
        "format_version",
        Whole { min: 1, max: 1 },
        "This program reads version 1.",
    ),
    NAME,
    optional("place", Text { most: 80 }, "Where the yard is."),
    optional("invented", Flag, "True where the machines are made up."),
    required(
        "machines",
        Many {
            of: MACHINE,
            most: MOST_ENTRIES,
        },
        "At least one machine.",
    ),
    required(
        "implements",
        Many {
            of: IMPLEMENT,
            most: MOST_ENTRIES,
        },
        "At least one implement.",
    ),
    required(
        "kits",
        Many {
            of: KIT,
            most: MOST_ENTRIES,
        },
        "May be empty: [].",
    ),
];
