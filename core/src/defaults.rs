//! Figures used where a yard has none of its own: each low, likely and high, with its source.

use crate::physics::coupler::CouplerSize;
use crate::physics::oil::{Grade, Oil};
use crate::physics::shaft::ShaftType;
use crate::quantity::{AngularSpeed, Flow, Power, Pressure, Temperature, Viscosity};
use crate::source::Source;
use crate::spread::Spread;
use crate::stage::gear::GearKind;

/// PTO power over net engine power at the same engine speed.
pub const PTO_TRAIN: Spread<f64> = Spread::new(0.83, 0.86, 0.90, Source::RatingRule);

/// Volumetric efficiency of a pump. With [`PUMP_HYDRO_MECHANICAL`] the overall efficiency is 0.80,
/// 0.90 and 0.95: the band of the source about the trade's tenth lost.
pub const PUMP_VOLUMETRIC: Spread<f64> = Spread::new(0.895, 0.95, 0.975, Source::PumpReference);
/// Hydro-mechanical efficiency of a pump.
pub const PUMP_HYDRO_MECHANICAL: Spread<f64> =
    Spread::new(0.895, 0.95, 0.975, Source::PumpReference);

/// Volumetric efficiency of a motor. With [`MOTOR_HYDRO_MECHANICAL`] the overall efficiency is
/// 0.75, 0.89 and 0.92: the band of the source about the trade's tenth lost.
pub const MOTOR_VOLUMETRIC: Spread<f64> = Spread::new(0.88, 0.95, 0.96, Source::MotorArticle);
/// Hydro-mechanical efficiency of a motor.
pub const MOTOR_HYDRO_MECHANICAL: Spread<f64> =
    Spread::new(0.855, 0.94, 0.96, Source::MotorArticle);

/// Viscosity of the oil for which efficiencies of pumps and motors hold where a sheet doesn't say:
/// about that of ISO VG 46 at 50 °C; this project's judgement.
pub fn rated_viscosity() -> Viscosity {
    Viscosity::centistokes(30.0)
}

/// Viscosity below and above which pumps and motors of most makers shouldn't work, and figures that
/// follow from those at the rated point are rough: from memory.
pub fn working_viscosity() -> (Viscosity, Viscosity) {
    (Viscosity::centistokes(10.0), Viscosity::centistokes(300.0))
}

/// Pressure that an open spool valve takes at the pump's rated flow: from memory.
pub fn valve_drop() -> Spread<Pressure> {
    Spread::new(3.0, 5.0, 8.0, Source::FromMemory).map(Pressure::bar)
}

/// Pressure by which a load-sensing pump stays above its load: from memory.
pub fn load_sensing_margin() -> Spread<Pressure> {
    Spread::new(15.0, 20.0, 25.0, Source::FromMemory).map(Pressure::bar)
}

/// Pressure that one coupler takes at [`coupler_flow`]: the source gives the highest value; low
/// and likely below it are this project's judgement.
pub fn coupler_drop() -> Spread<Pressure> {
    let (_, most) = CouplerSize::Size12.rated();
    Spread::new(0.55, 0.8, 1.0, Source::CouplerTable).map(|part| most * part)
}

/// Part of its set pressure at which a relief valve begins to open.
pub const RELIEF_OPENS: Spread<f64> = Spread::new(0.80, 0.90, 0.95, Source::CommonPractice);

/// Rated flow of a coupler of size 12.5: its source is [`Source::CouplerTable`].
pub fn coupler_flow() -> Flow {
    CouplerSize::Size12.rated().0
}

/// The oil: ISO VG 46, which is common practice.
pub fn oil() -> Oil {
    Grade::Vg46.typical()
}

/// Net power over gross power: the lower PTO ratio for gross over the higher one for net, 0.83 to
/// 0.90 (ASABE D497, from memory); the range about it is this project's judgement.
pub const NET_OF_GROSS: Spread<f64> = Spread::new(0.90, 0.92, 0.95, Source::FromMemory);

/// Torque at which a low-speed motor starts, as a part of V·Δp/2π.
pub const MOTOR_STARTING: Spread<f64> = Spread::new(0.75, 0.80, 0.90, Source::StartingNote);

/// Temperature of the air: this project's judgement.
pub fn air_temperature() -> Temperature {
    Temperature::celsius(15.0)
}

/// Temperature that the oil must not pass: from memory; many makers say less.
pub fn hottest_oil() -> Temperature {
    Temperature::celsius(80.0)
}

/// Minutes of a pump's flow that its tank holds where it isn't known: the least and the usual, and
/// this project's judgement between.
pub const TANK_MINUTES: Spread<f64> = Spread::new(1.0, 1.5, 3.0, Source::TankRules);

/// Temperature of the oil at work: this project's judgement.
pub fn oil_temperature() -> Temperature {
    Temperature::celsius(50.0)
}

/// Viscosity of an oil: its grade allows a tenth more or less.
pub fn viscosity(oil: &Oil, temperature: Temperature) -> Spread<Viscosity> {
    let likely = oil.viscosity(temperature);
    Spread::new(0.9, 1.0, 1.1, Source::ViscosityChart).map(|part| likely * part)
}

/// Efficiency by kind of gear.
pub fn gear_efficiency(kind: GearKind) -> Spread<f64> {
    match kind {
        GearKind::Spur => Spread::new(0.94, 0.96, 0.98, Source::GearNote),
        GearKind::Bevel => Spread::new(0.93, 0.95, 0.97, Source::GearNote),
        GearKind::SpiralBevel => Spread::new(0.95, 0.97, 0.99, Source::GearNote),
        GearKind::Worm => Spread::new(0.50, 0.75, 0.90, Source::GearNote),
        GearKind::Belt => Spread::new(0.93, 0.955, 0.98, Source::BeltSheet),
        GearKind::Chain => Spread::new(0.97, 0.98, 0.99, Source::FromMemory),
        // Two universal joints of 0.98 to 0.995 each.
        GearKind::JointShaft => Spread::new(0.96, 0.98, 0.99, Source::FromMemory),
        GearKind::Direct => Spread::exact(1.0, Source::Judgement),
    }
}

/// The most power that a PTO shaft is made for at its rated speed: that of its type, or where that
/// isn't known of the smallest that is usual at this speed, if one is.
///
/// Equation: P = P_type·ω_r/ω_type, the torque being the type's. Units: SI. Valid range: any speed.
/// Source: that of the types.
pub fn shaft_rating(kind: Option<ShaftType>, rated: AngularSpeed) -> Option<Spread<Power>> {
    let usual = || match rated.to_rpm() {
        rpm if (500.0..=600.0).contains(&rpm) => Some(ShaftType::One),
        rpm if (900.0..=1100.0).contains(&rpm) => Some(ShaftType::Two),
        _ => None,
    };
    let kind = kind.or_else(usual)?;
    // P = P_type·ω_r/ω_type
    let power = kind.highest_power() * (rated / kind.rated_speed());
    Some(Spread::exact(power, Source::FromMemory))
}
