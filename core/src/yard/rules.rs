//! The fields of a yard file, format version 2: what each may hold, in which unit, and the hint
//! that a fault gets. The one place for ranges, which are this project's judgement.

use super::format::VERSION;
use super::rules_hookup::{AXLES, HITCH, INPUT_END, KIT_SHAFT, LOADER, MOUNT, PRICE, PTO_END};
use super::shape::{Field, Shape};
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

pub(crate) const fn required(key: &'static str, shape: Shape, hint: &'static str) -> Field {
    Field {
        key,
        required: true,
        shape,
        hint,
    }
}

pub(crate) const fn optional(key: &'static str, shape: Shape, hint: &'static str) -> Field {
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
const COUPLER: Field = optional(
    "coupler_mm",
    within(5.0, 51.0, "mm"),
    "The couplers' size: 12.5 for most tractors.",
);
const CASE_DRAIN: Field = optional(
    "case_drain",
    Flag,
    "Whether a third, pressureless line back to the tank is there.",
);
const SHAFT_POWER: Shape = about(SHAFT_POWER_LIMITS.0, SHAFT_POWER_LIMITS.1, "kW");
const ENGINE_POWER: Shape = about(ENGINE_POWER_LIMITS.0, ENGINE_POWER_LIMITS.1, "kW");
const ENGINE_SPEED: Shape = within(300.0, 5000.0, "rpm");
const DRIVE_STEPS: Field = optional(
    "drive",
    Words {
        of: GearKind::WORDS,
        most: 8,
    },
    "The steps to the rotor in order, such as [\"bevel\"].",
);

const CURVE: &[Field] = &[
    required("rpm", ENGINE_SPEED, "Each faster than the one before."),
    required("kw", within(0.1, 600.0, "kW"), "Power at that speed."),
];

const OIL: &[Field] = &[
    optional(
        "grade",
        OneOf(Grade::WORDS),
        "Leave it out where the viscosities are given.",
    ),
    optional(
        "cst_40",
        within(5.0, 500.0, "cSt"),
        "Viscosity at 40 °C, from the oil's sheet.",
    ),
    optional(
        "cst_100",
        within(2.0, 50.0, "cSt"),
        "Viscosity at 100 °C, from the oil's sheet.",
    ),
    optional(
        "kg_m3",
        within(700.0, 1200.0, "kg/m³"),
        "Density at 15 °C; left out, it's 870.",
    ),
];

const RESERVOIR: &[Field] = &[
    optional("oil_l", within(2.0, 1000.0, "L"), "The oil in the tank."),
    optional(
        "cooler_w_k",
        within(0.0, 5000.0, "W/K"),
        "What a cooler sheds for each kelvin that the oil is warmer than the air.",
    ),
];
const RESERVOIR_FIELD: Field = optional(
    "reservoir",
    Group(RESERVOIR),
    "Leave it out where nothing is known of it.",
);
const OIL_FIELD: Field = optional("oil", Group(OIL), "Left out, it's ISO VG 46.");
const MASS: Shape = within(20.0, 30_000.0, "kg");

const ENGINE: &[Field] = &[
    optional(
        "net_kw",
        ENGINE_POWER,
        "Net power at rated speed; 1 mechanical hp is 0.7457 kW. Gross power is higher.",
    ),
    optional(
        "gross_kw",
        ENGINE_POWER,
        "Gross power at rated speed, only where no net power is known.",
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
    optional(
        "curve",
        Many {
            of: CURVE,
            most: 40,
        },
        "Power over speed, from the lowest speed to the rated one; its shape is used.",
    ),
    optional(
        "aspiration",
        OneOf(Aspiration::WORDS),
        "How the engine gets its air; left out, it draws it in: natural.",
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
    optional("end", Group(PTO_END), "What the joint shaft slides on to."),
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
    RESERVOIR_FIELD,
    VOLUMETRIC,
    HYDRO_MECHANICAL,
    COUPLER,
    CASE_DRAIN,
];

pub(super) const MACHINE: &[Field] = &[
    ID,
    NAME,
    required("kind", OneOf(MachineKind::WORDS), "What it is."),
    required("engine", Group(ENGINE), "Its engine."),
    optional("rear_pto", Group(PTO), "Leave it out where there is none."),
    optional(
        "economy_pto",
        Group(PTO),
        "The rear PTO in its economy gear: the same speed at a lower engine speed.",
    ),
    optional("mid_pto", Group(PTO), "Leave it out where there is none."),
    optional(
        "circuits",
        Many {
            of: CIRCUIT,
            most: 3,
        },
        "One entry for each outlet that an implement can use.",
    ),
    OIL_FIELD,
    optional(
        "mass_kg",
        MASS,
        "Ready to work, without an implement; without it driving isn't counted.",
    ),
    optional(
        "transmission",
        OneOf(Transmission::WORDS),
        "What drives the wheels; left out, it's gears for a tractor and hydrostatic for a skid steer.",
    ),
    optional("hitch", Group(HITCH), "What is known of the rear hitch."),
    optional(
        "loader",
        Group(LOADER),
        "What is known of the loader or the arms.",
    ),
    optional("axles", Group(AXLES), "For weight and ballast."),
    optional("price", PRICE, "In the yard's currency."),
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
    optional(
        "diameter_mm",
        within(20.0, 3000.0, "mm"),
        "Over the tips, for their speed.",
    ),
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
    optional(
        "end",
        Group(INPUT_END),
        "What the joint shaft slides on to.",
    ),
    optional("price", PRICE, "Price of the implement with this shaft."),
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
    optional(
        "starting",
        about(0.3, 1.0, ""),
        "Torque at which it starts, as a part of the torque without loss: 0.8 for 80 %.",
    ),
    VOLUMETRIC,
    HYDRO_MECHANICAL,
    optional(
        "case_drain",
        Flag,
        "Whether it needs a third, pressureless line back to the tank.",
    ),
    optional("price", PRICE, "Price of the implement with this motor."),
];

const WORK: &[Field] = &[
    required(
        "measure",
        OneOf(Measure::WORDS),
        "Mass for what is thrown or chipped, area for what is mown or swept, volume for soil.",
    ),
    optional(
        "idle_kw",
        about(0.01, 300.0, "kW"),
        "Power at the rotor when it turns at rated speed and does nothing.",
    ),
    optional(
        "kwh_per_unit",
        about(0.001, 100.0, "kWh"),
        "Energy at the rotor for each tonne, 1000 m², m³ or km.",
    ),
    optional("width_m", within(0.05, 12.0, "m"), "Working width."),
    optional(
        "depth_m",
        within(DEPTH_LIMITS.0, DEPTH_LIMITS.1, "m"),
        "Usual depth of snow, growth or tilth.",
    ),
    optional(
        "density_kg_m3",
        within(DENSITY_LIMITS.0, DENSITY_LIMITS.1, "kg/m³"),
        "Usual density: settled snow about 200.",
    ),
];

const TRAVEL: &[Field] = &[
    required(
        "usual_km_h",
        within(0.1, GROUND_SPEED_LIMITS.1, "km/h"),
        "The usual speed at work.",
    ),
    required(
        "highest_km_h",
        within(0.1, GROUND_SPEED_LIMITS.1, "km/h"),
        "The highest speed at which the work is still done well.",
    ),
    optional("ground", OneOf(Ground::WORDS), "What is driven on."),
    optional(
        "pushing_n",
        about(0.0, 50_000.0, "N"),
        "What the work pushes back with.",
    ),
];

pub(super) const IMPLEMENT: &[Field] = &[
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
    optional(
        "work",
        Group(WORK),
        "What its work takes; without it there is no time for a job.",
    ),
    optional(
        "travel",
        Group(TRAVEL),
        "Leave it out for what works standing.",
    ),
    optional("mass_kg", MASS, "What the machine carries with it."),
    optional("mount", Group(MOUNT), "How it hangs from its machine."),
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
    optional(
        "slip_clutch_nm",
        within(5.0, 20_000.0, "N·m"),
        "Torque at which a slip clutch in it slips.",
    ),
    optional(
        "angle_deg",
        within(0.0, 80.0, "°"),
        "Angle of each joint of a joint shaft at work.",
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
    optional(
        "suction_bore_mm",
        within(6.0, 120.0, "mm"),
        "Inner diameter of the suction line.",
    ),
    optional(
        "suction_length_m",
        within(0.05, 5.0, "m"),
        "Length of the suction line.",
    ),
    optional(
        "suction_lift_m",
        within(-2.0, 2.0, "m"),
        "How far the pump stands above the oil, negative below it.",
    ),
    RESERVOIR_FIELD,
    OIL_FIELD,
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
    optional(
        "fittings_k",
        within(0.0, 100.0, ""),
        "Loss coefficients K of elbows and adapters added up, one way: a sharp elbow is about 1.",
    ),
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
    optional(
        "shaft",
        Group(KIT_SHAFT),
        "Its shaft from the PTO to the implement.",
    ),
    optional(
        "seat",
        OneOf(Seat::WORDS),
        "Where it puts the implement; left out, it's the usual place of its route.",
    ),
    optional(
        "included",
        Flag,
        "Whether it comes with the machine or the implement, so that nothing must be bought.",
    ),
    optional(
        "hookup_min",
        within(0.0, 600.0, "min"),
        "Minutes to hook it up.",
    ),
    optional("price", PRICE, "In the yard's currency."),
    optional("fitting_price", PRICE, "What fitting it costs."),
];

/// A whole yard file.
pub const YARD: &[Field] = &[
    required(
        VERSION,
        Whole {
            min: 1,
            max: FORMAT_VERSION,
        },
        "Write 2 in a new file; 1 and 2 can be read.",
    ),
    NAME,
    optional("place", Text { most: 80 }, "Where the yard is."),
    optional("invented", Flag, "True where the machines are made up."),
    optional("dealer", Text { most: 80 }, "Who hands out its pages."),
    optional(
        "note",
        Text { most: 240 },
        "A line of the dealer's own on those pages.",
    ),
    optional(
        "currency",
        Text { most: 3 },
        "Its code in ISO 4217, such as EUR or USD.",
    ),
    optional("hour_price", PRICE, "Price of an hour of work."),
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
