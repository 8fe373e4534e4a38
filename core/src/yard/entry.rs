//! The yard file as it is written: format version 2. Field names carry their units.
//!
//! Read only after [`super::rules`] has found nothing wrong with the shape and the ranges.

use super::entry_hookup::{
    AxlesEntry, HitchEntry, InputEndEntry, KitShaftEntry, LoaderEntry, MountEntry, PtoEndEntry,
};
use crate::hookup::Seat;
use crate::implement::{Ground, ImplementKind, Place};
use crate::machine::{Aspiration, MachineKind, Outlet, SteeringPolicy, Supply, Transmission};
use crate::measure::Measure;
use crate::physics::oil::Grade;
use crate::route::RouteId;
use crate::source::Source;
use crate::stage::gear::GearKind;
use serde::{Deserialize, Deserializer, Serialize};

/// A whole yard file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct YardEntry {
    /// 2.
    #[serde(deserialize_with = "whole")]
    pub format_version: u32,
    /// What the yard is called.
    pub name: String,
    /// Where it is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub place: Option<String>,
    /// True where the machines are made up.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub invented: Option<bool>,
    /// Who hands out its pages.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dealer: Option<String>,
    /// A line of the dealer's own on those pages.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
    /// The currency of its prices: three letters of ISO 4217.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub currency: Option<String>,
    /// Price of an hour of work.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hour_price: Option<f64>,
    /// What supplies the power.
    pub machines: Vec<MachineEntry>,
    /// What uses it.
    pub implements: Vec<ImplementEntry>,
    /// What joins them.
    pub kits: Vec<KitEntry>,
}

/// A whole number, which some programs write with a point. The rules have checked it.
pub(crate) fn whole<'de, D: Deserializer<'de>>(from: D) -> Result<u32, D::Error> {
    f64::deserialize(from).map(|number| number as u32)
}

/// A number, or three with their source.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
pub enum UncertainEntry {
    /// Known without a range.
    One(f64),
    /// Known within a range.
    Three {
        /// Lowest to expect.
        low: f64,
        /// To expect.
        likely: f64,
        /// Highest to expect.
        high: f64,
        /// Where the three come from.
        #[serde(skip_serializing_if = "Option::is_none")]
        source: Option<Source>,
    },
}

/// A machine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct MachineEntry {
    /// Short identifier, unique in its list.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// What it is.
    pub kind: MachineKind,
    /// Its engine.
    pub engine: EngineEntry,
    /// The rear PTO, if any.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rear_pto: Option<PtoEntry>,
    /// The rear PTO in its economy gear, if it has one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub economy_pto: Option<PtoEntry>,
    /// The mid PTO, if any.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mid_pto: Option<PtoEntry>,
    /// Outlets for implements.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub circuits: Vec<CircuitEntry>,
    /// The oil in them.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub oil: Option<OilEntry>,
    /// Its mass, ready to work but without an implement.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mass_kg: Option<f64>,
    /// What drives its wheels.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub transmission: Option<Transmission>,
    /// Its rear hitch.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hitch: Option<HitchEntry>,
    /// Its loader.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loader: Option<LoaderEntry>,
    /// Its axles.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub axles: Option<AxlesEntry>,
    /// Its price.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub price: Option<f64>,
}

/// An oil: a grade, or two viscosities of a sheet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct OilEntry {
    /// As it's sold.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub grade: Option<Grade>,
    /// Viscosity at 40 °C.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cst_40: Option<f64>,
    /// Viscosity at 100 °C.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cst_100: Option<f64>,
    /// Density at 15 °C.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub kg_m3: Option<f64>,
}

/// A tank with or without a cooler.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ReservoirEntry {
    /// The oil in it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub oil_l: Option<f64>,
    /// What a cooler sheds for each kelvin above the air.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cooler_w_k: Option<f64>,
}

/// A point of an engine's power over its speed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CurveEntry {
    /// Speed.
    pub rpm: f64,
    /// Power at that speed.
    pub kw: f64,
}

/// An engine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct EngineEntry {
    /// Net power at rated speed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub net_kw: Option<UncertainEntry>,
    /// Gross power at rated speed, where no net power is known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub gross_kw: Option<UncertainEntry>,
    /// Rated speed.
    pub rated_rpm: f64,
    /// Lowest speed at which it may work under load.
    pub lowest_rpm: f64,
    /// Power over speed, as points.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub curve: Vec<CurveEntry>,
    /// How it gets its air.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub aspiration: Option<Aspiration>,
}

/// A PTO.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PtoEntry {
    /// Its rated speed.
    pub rpm: f64,
    /// The engine speed for that.
    pub engine_rpm: f64,
    /// Tested power at the shaft.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tested_kw: Option<UncertainEntry>,
    /// The most power that the shaft is made for at its rated speed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rating_kw: Option<UncertainEntry>,
    /// Its end.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub end: Option<PtoEndEntry>,
}

/// A hydraulic outlet with the pump behind it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CircuitEntry {
    /// Where the hoses plug in.
    pub outlet: Outlet,
    /// The sheet's flow.
    pub flow_l_min: UncertainEntry,
    /// The engine speed for that.
    pub engine_rpm: f64,
    /// Relief pressure.
    pub relief_bar: UncertainEntry,
    /// Steering's share.
    pub steering: SteeringEntry,
    /// How the pump answers when less is asked of it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub supply: Option<Supply>,
    /// Where its oil comes from and cools.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reservoir: Option<ReservoirEntry>,
    /// Pressure that the open valve takes at the sheet's flow, or the margin of load sensing.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub valve_bar: Option<UncertainEntry>,
    /// Volumetric efficiency of the pump.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub volumetric: Option<UncertainEntry>,
    /// Hydro-mechanical efficiency of the pump.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hydro_mechanical: Option<UncertainEntry>,
    /// Size of its couplers.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub coupler_mm: Option<f64>,
    /// Whether a pressureless line back to the tank is there.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub case_drain: Option<bool>,
}

/// Steering's share of a circuit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SteeringEntry {
    /// How steering gets its oil.
    pub policy: SteeringPolicy,
    /// The flow taken at every speed (fixed priority), or added into the sheet (summed).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub flow_l_min: Option<UncertainEntry>,
}

/// An implement.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ImplementEntry {
    /// Short identifier, unique in its list.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// What it does.
    pub kind: ImplementKind,
    /// Its rotor.
    pub rotor: RotorEntry,
    /// Power that the job needs at the rotor.
    pub need_kw: UncertainEntry,
    /// Shafts by which it can be driven.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub shafts: Vec<ShaftEntry>,
    /// Motor by which it can be driven.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub motor: Option<MotorEntry>,
    /// What its work takes.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub work: Option<WorkEntry>,
    /// How it is taken over the ground.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub travel: Option<TravelEntry>,
    /// Its mass.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mass_kg: Option<f64>,
    /// How it hangs from its machine.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mount: Option<MountEntry>,
}

/// What an implement's work takes; what is left out comes from its kind.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct WorkEntry {
    /// What the work is measured in.
    pub measure: Measure,
    /// Power at the rotor when it turns at rated speed and does nothing.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub idle_kw: Option<UncertainEntry>,
    /// Energy at the rotor for each tonne, 1000 m², m³ or km.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub kwh_per_unit: Option<UncertainEntry>,
    /// Working width.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub width_m: Option<f64>,
    /// Usual depth of what is worked.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub depth_m: Option<f64>,
    /// Usual density of the material.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub density_kg_m3: Option<f64>,
}

/// How an implement is taken over the ground; what is left out comes from its kind.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct TravelEntry {
    /// The usual speed.
    pub usual_km_h: f64,
    /// The highest speed at which the work is still done well.
    pub highest_km_h: f64,
    /// What is driven on.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ground: Option<Ground>,
    /// What the work pushes back with.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pushing_n: Option<UncertainEntry>,
}

/// A rotor.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct RotorEntry {
    /// Speed that it's built for.
    pub rated_rpm: f64,
    /// Lowest speed at which it works properly.
    pub lowest_rpm: f64,
    /// Highest speed allowed.
    pub highest_rpm: f64,
    /// Diameter over its tips.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub diameter_mm: Option<f64>,
}

/// An input shaft of an implement.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ShaftEntry {
    /// The end of the machine that it suits.
    pub place: Place,
    /// Speed of the input shaft at the rotor's rated speed.
    pub rpm: f64,
    /// From the input shaft to the rotor, without ratios: they follow from the two speeds.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub drive: Vec<GearKind>,
    /// The most power that the input may take at its speed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rating_kw: Option<UncertainEntry>,
    /// Its end.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub end: Option<InputEndEntry>,
    /// Price of the implement with this shaft.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub price: Option<f64>,
}

/// A hydraulic motor of an implement.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct MotorEntry {
    /// Displacement per revolution.
    pub displacement_cm3: f64,
    /// Rotor speed over motor speed.
    pub ratio: f64,
    /// From the motor to the rotor.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub drive: Vec<GearKind>,
    /// Highest flow.
    pub highest_l_min: f64,
    /// Highest pressure difference.
    pub highest_bar: f64,
    /// Torque at which it starts, as a part of the torque without loss.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub starting: Option<UncertainEntry>,
    /// Volumetric efficiency.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub volumetric: Option<UncertainEntry>,
    /// Hydro-mechanical efficiency.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hydro_mechanical: Option<UncertainEntry>,
    /// Whether it needs a pressureless line back to the tank.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub case_drain: Option<bool>,
    /// Price of the implement with this motor.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub price: Option<f64>,
}

/// A kit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct KitEntry {
    /// Short identifier, unique in its list.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// The routes that it serves.
    pub routes: Vec<RouteId>,
    /// The PTO speed that it's built for, where it takes a PTO.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pto_rpm: Option<f64>,
    /// Mechanical steps from the PTO on, in order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub drive: Vec<GearEntry>,
    /// Its own pump.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pump: Option<PumpEntry>,
    /// Its hoses and couplers.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hoses: Option<HosesEntry>,
    /// Its shaft.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub shaft: Option<KitShaftEntry>,
    /// Where it puts the implement, where that isn't the route's usual place.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub seat: Option<Seat>,
    /// Whether it comes with the machine or the implement.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub included: Option<bool>,
    /// Minutes to hook it up.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hookup_min: Option<f64>,
    /// Its price.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub price: Option<f64>,
    /// Price of fitting it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fitting_price: Option<f64>,
}

/// A mechanical step.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct GearEntry {
    /// What it is.
    pub kind: GearKind,
    /// Speed out over speed in.
    pub ratio: f64,
    /// Efficiency.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub efficiency: Option<UncertainEntry>,
    /// The most torque on its output shaft.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rating_nm: Option<UncertainEntry>,
    /// Torque at which a slip clutch in it slips.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub slip_clutch_nm: Option<f64>,
    /// Angle of each joint of a joint shaft at work.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub angle_deg: Option<f64>,
}

/// A kit's own pump.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PumpEntry {
    /// Displacement per revolution.
    pub displacement_cm3: f64,
    /// Highest speed.
    pub highest_rpm: f64,
    /// Relief pressure.
    pub relief_bar: UncertainEntry,
    /// Inner diameter of its suction line.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub suction_bore_mm: Option<f64>,
    /// Length of its suction line.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub suction_length_m: Option<f64>,
    /// How far it stands above its oil.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub suction_lift_m: Option<f64>,
    /// Its tank.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reservoir: Option<ReservoirEntry>,
    /// Its oil.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub oil: Option<OilEntry>,
    /// Pressure that its open valve takes.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub valve_bar: Option<UncertainEntry>,
    /// Volumetric efficiency.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub volumetric: Option<UncertainEntry>,
    /// Hydro-mechanical efficiency.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hydro_mechanical: Option<UncertainEntry>,
}

/// A pair of hoses.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct HosesEntry {
    /// Inner diameter.
    pub bore_mm: f64,
    /// Length one way.
    pub length_m: f64,
    /// Inner diameter of the hose back, where it is another.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub back_bore_mm: Option<f64>,
    /// Couplers passed, both ways together.
    pub couplers: f64,
    /// Pressure that one takes at its rated flow.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub coupler_bar: Option<UncertainEntry>,
    /// That rated flow.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub coupler_l_min: Option<f64>,
    /// Loss coefficients K of elbows and adapters added up, one way.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fittings_k: Option<f64>,
    /// Size of its couplers on the machine's side.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub coupler_mm: Option<f64>,
    /// Whether it has a pressureless line back to the tank.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub case_drain: Option<bool>,
}
