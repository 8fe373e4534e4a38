//! Figures that are taken where an entry has none, for those who fill it in.

use super::path;
use crate::defaults;
use crate::physics::oil::Grade;
use crate::physics::shaft::ShaftType;
use crate::quantity::AngularSpeed;
use crate::stage::gear::GearKind;
use serde_json::Value;

/// The likely figure, in the file's unit, that is taken where an entry has none at a path; `None`
/// where what isn't there stays unknown, or follows from more than one other figure.
pub fn assumed(entry: &Value, at: &str) -> Option<f64> {
    let (group, key) = at.rsplit_once('.')?;
    let beside = |key: &str| path::get(entry, &format!("{group}.{key}"));
    let in_group = group.rsplit('.').next()?.split('[').next()?;
    Some(match (in_group, key) {
        ("circuits" | "pump", "volumetric") => defaults::PUMP_VOLUMETRIC.likely,
        ("circuits" | "pump", "hydro_mechanical") => defaults::PUMP_HYDRO_MECHANICAL.likely,
        ("motor", "volumetric") => defaults::MOTOR_VOLUMETRIC.likely,
        ("motor", "hydro_mechanical") => defaults::MOTOR_HYDRO_MECHANICAL.likely,
        ("motor", "starting") => defaults::MOTOR_STARTING.likely,
        ("circuits" | "pump", "valve_bar") => {
            let senses = beside("supply").and_then(Value::as_str) == Some("load_sensing");
            let drop = match senses {
                true => defaults::load_sensing_margin(),
                false => defaults::valve_drop(),
            };
            drop.likely.to_bar()
        }
        ("rear_pto" | "economy_pto" | "mid_pto", "rating_kw") => {
            let speed = AngularSpeed::rpm(beside("rpm")?.as_f64()?);
            let word = beside("end.shaft").and_then(Value::as_str);
            let mut kinds = ShaftType::ALL.iter().copied();
            let kind = kinds.find(|kind| Some(kind.word()) == word);
            defaults::shaft_rating(kind, speed)?.likely.to_kilowatts()
        }
        ("drive", "efficiency") => {
            let word = beside("kind")?.as_str()?;
            let kind = GearKind::ALL.iter().find(|kind| kind.word() == word)?;
            let follows = *kind == GearKind::JointShaft && beside("angle_deg").is_some();
            (!follows).then(|| defaults::gear_efficiency(*kind).likely)?
        }
        ("hoses", "coupler_bar") => defaults::coupler_drop().likely.to_bar(),
        ("hoses", "coupler_l_min") => defaults::coupler_flow().to_litres_per_minute(),
        ("hoses", "back_bore_mm") => beside("bore_mm")?.as_f64()?,
        ("oil", "kg_m3") => {
            let word = beside("grade").and_then(Value::as_str);
            let grade = Grade::ALL.iter().find(|grade| Some(grade.word()) == word);
            let oil = grade.map_or_else(defaults::oil, |grade| grade.typical());
            oil.density_at_15.to_kilograms_per_cubic_metre()
        }
        ("hoses", "fittings_k")
        | ("hitch", "lift_at_m")
        | ("travel", "pushing_n")
        | ("pump", "suction_length_m" | "suction_lift_m") => 0.0,
        _ => return None,
    })
}
