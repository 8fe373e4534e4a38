//! The core's calculations under the names that case files use.

mod carrying;
mod claims;
mod defaults;
mod demo;
mod engine;
mod gearing;
mod heat;
mod hydraulic;
mod joint;
mod line;
mod settings;
mod shaft;
mod work;

use crate::inputs::{Point, Problem};
use farend_core::fault::Fault;
use farend_core::spread::Spread;
use farend_tests::quantity::Quantity;
use serde::de::Error;
use serde::{Deserialize, Deserializer};
use std::fmt;

/// What a calculation comes to.
pub enum Outcome {
    /// Its results by name.
    Results(Vec<(&'static str, Quantity)>),
    /// Why its input isn't taken.
    Refused(Vec<Fault>),
}

/// Low, likely and high.
fn three<T: Copy>(spread: Spread<T>, quantity: fn(T) -> Quantity) -> Outcome {
    Outcome::Results(vec![
        ("low", quantity(spread.low)),
        ("likely", quantity(spread.likely)),
        ("high", quantity(spread.high)),
    ])
}

type Calculate = fn(&Point<'_>) -> Result<Outcome, Problem>;

/// A calculation of the table.
#[derive(Clone, Copy)]
pub struct Calculation {
    /// Its name.
    pub name: &'static str,
    /// The call into the core.
    pub calculate: Calculate,
}

macro_rules! table {
    ($( $module:ident :: $function:ident; )*) => {
        /// All of them. A name is that of the function.
        pub const TABLE: &[Calculation] = &[$(
            Calculation { name: stringify!($function), calculate: $module::$function },
        )*];
    };
}

table! {
    shaft::convert;
    shaft::shaft_power;
    shaft::shaft_speed;
    shaft::shaft_torque;
    shaft::joint_speeds;
    shaft::joint_fluctuation;
    shaft::pto_power;
    hydraulic::hydraulic_power;
    hydraulic::pump_efficiency;
    hydraulic::pump_flow;
    hydraulic::motor;
    hydraulic::pump_and_motor;
    hydraulic::flow_after_steering;
    line::friction_factor;
    line::fully_rough_factor;
    line::line_velocity;
    line::reynolds;
    line::line_drop;
    line::rated_drop;
    line::oil_viscosity;
    line::fitting_drop;
    line::orifice_flow;
    line::bore_for;
    line::usual_velocities;
    line::coupler_size;
    line::suction;
    line::oil_grade;
    engine::net_power;
    engine::curve_power;
    engine::derated;
    engine::saturation_pressure;
    engine::standard_pressure;
    engine::plainly_derated;
    engine::driving_power;
    engine::default_driving;
    engine::default_net_of_gross;
    engine::left_by_air;
    joint::joint_ratio;
    joint::joint_total_fluctuation;
    joint::joint_angle;
    joint::two_joints;
    joint::joint_efficiency;
    joint::joint_angles;
    gearing::worm;
    gearing::gear_heat;
    gearing::slip_clutch;
    gearing::slip_clutch_above;
    gearing::shaft_type;
    gearing::hitch;
    gearing::rear_share;
    gearing::throwing;
    carrying::lifts_at;
    carrying::axle_loads;
    carrying::ballast;
    carrying::joint_shaft;
    carrying::joint_shaft_travel;
    carrying::joint_shaft_limits;
    heat::energy;
    heat::tank_loss;
    heat::steady_oil;
    heat::oil_after_drop;
    heat::tank_capacity;
    heat::warming;
    heat::cooler;
    heat::tank_for;
    heat::tank_surface;
    defaults::default_gear;
    defaults::default_pump;
    defaults::default_motor;
    defaults::default_pump_and_motor;
    defaults::default_coupler;
    defaults::default_oil;
    defaults::default_shaft_rating;
    demo::delivered_ratio;
    demo::at_couplers;
    demo::budget;
    demo::oil_in_route;
    demo::gross_engine;
    work::amount;
    work::default_energy;
    work::demo_work;
    work::work_power;
    settings::settings;
    claims::sheet;
}

impl<'de> Deserialize<'de> for Calculation {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let name = String::deserialize(from)?;
        let known = TABLE.iter().find(|known| known.name == name);
        known
            .copied()
            .ok_or_else(|| Error::custom(format!("{name} is no calculation")))
    }
}

impl fmt::Debug for Calculation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name)
    }
}
