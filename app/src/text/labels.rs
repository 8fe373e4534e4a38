//! Names of things: the messages of `labels.ftl`, and which of them is whose.

use farend_core::control::Control;
use farend_core::drive::Limit;
use farend_core::implement::Ground;
use farend_core::machine::Outlet;
use farend_core::measure::Measure;
use farend_core::physics::joint::AngleAdvice;
use farend_core::physics::oil::Grade;
use farend_core::route::RouteId;
use farend_core::stage::gear::{GearKind, GearRole};
use farend_core::stage::{FigureName, StageKind};
use farend_core::standing::Standing;
use farend_core::thermal::SurfaceRule;
use farend_core::warning::Line;

pub use super::say::labels::*;

/// The program's own name, the same in all languages.
pub const TITLE: &str = "Farend";
/// What the demo yard's file is called.
pub const DEMO_FILE: &str = "farend-demo-yard.json";

/// A route's names: alone, within a list, and with its article.
fn route_names(route: RouteId) -> [&'static str; 3] {
    match route {
        RouteId::RearShaft => [
            route_rear_shaft(),
            route_rear_shaft_small(),
            route_rear_shaft_within(),
        ],
        RouteId::MidShaft => [
            route_mid_shaft(),
            route_mid_shaft_small(),
            route_mid_shaft_within(),
        ],
        RouteId::TurnedForward => [
            route_turned_forward(),
            route_turned_forward_small(),
            route_turned_forward_within(),
        ],
        RouteId::MachineHydraulics => [
            route_machine_hydraulics(),
            route_machine_hydraulics_small(),
            route_machine_hydraulics_within(),
        ],
        RouteId::PumpPack => [
            route_pump_pack(),
            route_pump_pack_small(),
            route_pump_pack_within(),
        ],
        RouteId::SkidSteer => [
            route_skid_steer(),
            route_skid_steer_small(),
            route_skid_steer_within(),
        ],
    }
}

/// A route's name.
pub fn route(route: RouteId) -> &'static str {
    let [name, ..] = route_names(route);
    name
}

/// A route in a list within a sentence.
pub fn route_small(route: RouteId) -> &'static str {
    let [_, name, _] = route_names(route);
    name
}

/// A route within a sentence.
pub fn the_route(route: RouteId) -> &'static str {
    let [.., name] = route_names(route);
    name
}

/// A standing alone, within a sentence, and what it means at work.
fn standing_names(standing: Standing) -> [&'static str; 3] {
    match standing {
        Standing::Ample => [
            standing_ample(),
            standing_ample_small(),
            standing_ample_at_work(),
        ],
        Standing::Enough => [
            standing_enough(),
            standing_enough_small(),
            standing_enough_at_work(),
        ],
        Standing::Slower => [
            standing_slower(),
            standing_slower_small(),
            standing_slower_at_work(),
        ],
        Standing::Labours => [
            standing_labours(),
            standing_labours_small(),
            standing_labours_at_work(),
        ],
        Standing::Starves => [
            standing_starves(),
            standing_starves_small(),
            standing_starves_at_work(),
        ],
    }
}

/// A standing.
pub fn standing(standing: Standing) -> &'static str {
    let [name, ..] = standing_names(standing);
    name
}

/// A standing within a sentence.
pub fn standing_small(standing: Standing) -> &'static str {
    let [_, name, _] = standing_names(standing);
    name
}

/// What a standing means at work.
pub fn at_work(standing: Standing) -> &'static str {
    let [.., meaning] = standing_names(standing);
    meaning
}

/// A limit, and what it means.
fn limit_names(limit: Limit) -> [&'static str; 2] {
    match limit {
        Limit::Engine => [limit_engine(), limit_engine_reason()],
        Limit::ShaftRating => [limit_shaft_rating(), limit_shaft_rating_reason()],
        Limit::Flow => [limit_flow(), limit_flow_reason()],
        Limit::Pressure => [limit_pressure(), limit_pressure_reason()],
        Limit::OilHeat => [limit_oil_heat(), limit_oil_heat_reason()],
        Limit::Implement => [limit_implement(), limit_implement_reason()],
    }
}

/// A limit.
pub fn limit(limit: Limit) -> &'static str {
    let [name, _] = limit_names(limit);
    name
}

/// What a limit means.
pub fn limit_reason(limit: Limit) -> &'static str {
    let [_, reason] = limit_names(limit);
    reason
}

/// A stage's name, alone and within a sentence.
fn stage_names(kind: StageKind) -> [&'static str; 2] {
    match kind {
        StageKind::Gear(GearRole::PtoTrain) => [stage_pto_train(), stage_pto_train_small()],
        StageKind::Gear(GearRole::InputShaft) => [stage_input_shaft(), stage_input_shaft_small()],
        StageKind::Gear(GearRole::Step(kind)) => gear_names(kind),
        StageKind::Pump => [stage_pump(), stage_pump_small()],
        StageKind::Steering => [stage_steering(), stage_steering_small()],
        StageKind::Divert => [stage_divert(), stage_divert_small()],
        StageKind::Valve => [stage_valve(), stage_valve_small()],
        StageKind::Hoses => [stage_hoses(), stage_hoses_small()],
        StageKind::Motor => [stage_motor(), stage_motor_small()],
    }
}

fn gear_names(kind: GearKind) -> [&'static str; 2] {
    match kind {
        GearKind::Spur => [stage_spur(), stage_spur_small()],
        GearKind::Bevel => [stage_bevel(), stage_bevel_small()],
        GearKind::SpiralBevel => [stage_spiral_bevel(), stage_spiral_bevel_small()],
        GearKind::Worm => [stage_worm(), stage_worm_small()],
        GearKind::Belt => [stage_belt(), stage_belt_small()],
        GearKind::Chain => [stage_chain(), stage_chain_small()],
        GearKind::JointShaft => [stage_joint_shaft(), stage_joint_shaft_small()],
        GearKind::Direct => [stage_direct(), stage_direct_small()],
    }
}

/// A stage's name.
pub fn stage(kind: StageKind) -> &'static str {
    let [name, _] = stage_names(kind);
    name
}

/// A stage's name within a sentence.
pub fn stage_small(kind: StageKind) -> &'static str {
    let [_, name] = stage_names(kind);
    name
}

/// A control's name, alone and within a sentence.
fn control_names(control: Control) -> [&'static str; 2] {
    match control {
        Control::EngineSpeed => [control_engine_speed(), control_engine_speed_small()],
        Control::OwnFlow => [control_own_flow(), control_own_flow_small()],
        Control::OwnRelief => [control_own_relief(), control_own_relief_small()],
        Control::PackFlow => [control_pack_flow(), control_pack_flow_small()],
        Control::PackRelief => [control_pack_relief(), control_pack_relief_small()],
        Control::OilTemperature => [control_oil_temperature(), control_oil_temperature_small()],
        Control::Altitude => [control_altitude(), control_altitude_small()],
        Control::AirTemperature => [control_air_temperature(), control_air_temperature_small()],
        Control::GroundSpeed => [control_ground_speed(), control_ground_speed_small()],
        Control::Slope => [control_slope(), control_slope_small()],
        Control::Depth => [control_depth(), control_depth_small()],
        Control::MaterialDensity => [control_material_density(), control_material_density_small()],
    }
}

/// A control's name.
pub fn control(control: Control) -> &'static str {
    let [name, _] = control_names(control);
    name
}

/// A control's name within a sentence.
pub fn control_small(control: Control) -> &'static str {
    let [_, name] = control_names(control);
    name
}

/// What is driven on.
pub fn ground(ground: Ground) -> &'static str {
    match ground {
        Ground::Firm => ground_firm(),
        Ground::Grass => ground_grass(),
        Ground::Loose => ground_loose(),
    }
}

/// An oil. Grades have the same names everywhere.
pub fn grade(grade: Grade) -> &'static str {
    match grade {
        Grade::Vg22 => "ISO VG 22",
        Grade::Vg32 => "ISO VG 32",
        Grade::Vg46 => "ISO VG 46",
        Grade::Vg68 => "ISO VG 68",
        Grade::Vg100 => "ISO VG 100",
        Grade::TractorFluid => grade_tractor_fluid(),
    }
}

/// What a job is measured in.
pub fn measure(measure: Measure) -> &'static str {
    match measure {
        Measure::Mass => measure_mass(),
        Measure::Area => measure_area(),
        Measure::Volume => measure_volume(),
        Measure::Length => measure_length(),
    }
}

/// An uncertain figure.
pub fn figure(figure: FigureName) -> &'static str {
    match figure {
        FigureName::EnginePower => figure_engine_power(),
        FigureName::Driving => figure_driving(),
        FigureName::Efficiency => figure_efficiency(),
        FigureName::Rating => figure_rating(),
        FigureName::SheetFlow => figure_sheet_flow(),
        FigureName::SteeringFlow => figure_steering_flow(),
        FigureName::PumpVolumetric | FigureName::MotorVolumetric => figure_leakage(),
        FigureName::PumpHydroMechanical | FigureName::MotorHydroMechanical => figure_friction(),
        FigureName::Relief => figure_relief(),
        FigureName::ValveDrop => figure_valve_drop(),
        FigureName::CouplerDrop => figure_coupler_drop(),
        FigureName::Viscosity => figure_viscosity(),
    }
}

/// A rule for what a tank sheds.
pub fn surface_rule(rule: SurfaceRule) -> &'static str {
    match rule {
        SurfaceRule::Btu => surface_btu(),
        SurfaceRule::Horsepower => surface_horsepower(),
    }
}

/// How long a joint may run at an angle.
pub fn angle(advice: AngleAdvice) -> &'static str {
    match advice {
        AngleAdvice::Fine => angle_fine(),
        AngleAdvice::Steady => angle_steady(),
        AngleAdvice::Brief => angle_brief(),
        AngleAdvice::NeedsWideAngle => angle_needs_wide_angle(),
        AngleAdvice::Never => angle_never(),
    }
}

/// A line, with its article.
pub fn line(line: Line) -> &'static str {
    match line {
        Line::Suction => line_suction(),
        Line::Supply => line_supply(),
        Line::Back => line_back(),
    }
}

/// An outlet.
pub fn outlet(outlet: Outlet) -> &'static str {
    match outlet {
        Outlet::Remotes => outlet_remotes(),
        Outlet::StandardFlow => outlet_standard_flow(),
        Outlet::HighFlow => outlet_high_flow(),
    }
}

/// A unit of what can be turned as a screen reader should say it. "bar" and "%" it says by itself.
pub fn spoken(symbol: &str) -> &str {
    match symbol {
        "rpm" => spoken_rpm(),
        "L/min" => spoken_litres_per_minute(),
        "°C" => spoken_celsius(),
        "°F" => spoken_fahrenheit(),
        "gpm" => spoken_gallons(),
        "psi" => spoken_psi(),
        "m" => spoken_metres(),
        "ft" => spoken_feet(),
        "km/h" => spoken_kilometres_per_hour(),
        "mph" => spoken_miles_per_hour(),
        "cm" => spoken_centimetres(),
        "in" => spoken_inches(),
        "kg/m³" => spoken_kilograms_per_cubic_metre(),
        "lb/ft³" => spoken_pounds_per_cubic_foot(),
        other => other,
    }
}
