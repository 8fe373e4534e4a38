//! Turns entries into checked types, and finds what only shows when fields are held together.

use super::entry::{
    CircuitEntry, GearEntry, HosesEntry, ImplementEntry, KitEntry, MachineEntry, MotorEntry,
    PtoEntry, PumpEntry, RotorEntry, ShaftEntry, SteeringEntry, UncertainEntry,
};
use super::report::Report;
use crate::defaults;
use crate::drive::Limit;
use crate::fault::Rule;
use crate::implement::{Implement, InputMotor, InputShaft, Rotor};
use crate::kit::{Kit, KitHoses, KitPump};
use crate::machine::{Circuit, Engine, Machine, Pto, SteeringPolicy, SteeringShare, Supply};
use crate::physics::line::Pipe;
use crate::quantity::{AngularSpeed, Displacement, Flow, Length, Power, Pressure, Torque};
use crate::route::RouteId;
use crate::source::Source;
use crate::spread::Spread;
use crate::stage::gear::{Gear, GearKind, GearRole};

fn spread<T: Copy>(entry: &UncertainEntry, unit: fn(f64) -> T) -> Spread<T> {
    match entry {
        UncertainEntry::One(value) => Spread::exact(*value, Source::Own),
        UncertainEntry::Three {
            low,
            likely,
            high,
            source,
        } => Spread::new(*low, *likely, *high, source.unwrap_or(Source::Own)),
    }
    .map(unit)
}

fn ratio_or(entry: Option<&UncertainEntry>, default: Spread<f64>) -> Spread<f64> {
    entry.map_or(default, |entry| spread(entry, |value| value))
}

fn power(entry: Option<&UncertainEntry>) -> Option<Spread<Power>> {
    entry.map(|entry| spread(entry, Power::kilowatts))
}

/// Notes a speed that is above another.
fn not_above(report: &mut Report, path: String, found: f64, (what, most): (&str, f64)) {
    if found > most {
        let rule = Rule::NotAbove(format!("{what}, {most}"));
        report.add(path, found.to_string(), rule, "Check both figures.");
    }
}

pub(super) fn machine(entry: &MachineEntry, path: &str, report: &mut Report) -> Machine {
    let engine = Engine {
        net: spread(&entry.engine.net_kw, Power::kilowatts),
        rated: AngularSpeed::rpm(entry.engine.rated_rpm),
        lowest: AngularSpeed::rpm(entry.engine.lowest_rpm),
    };
    let rated = ("the engine's rated speed", entry.engine.rated_rpm);
    not_above(
        report,
        format!("{path}.engine.lowest_rpm"),
        entry.engine.lowest_rpm,
        rated,
    );
    let mut built_pto = |entry: &Option<PtoEntry>, key: &str| {
        entry
            .as_ref()
            .map(|entry| pto(entry, &engine, rated, &format!("{path}.{key}"), report))
    };
    let rear_pto = built_pto(&entry.rear_pto, "rear_pto");
    let mid_pto = built_pto(&entry.mid_pto, "mid_pto");
    let mut circuits: Vec<Circuit> = Vec::with_capacity(entry.circuits.len());
    for (place, circuit_entry) in entry.circuits.iter().enumerate() {
        let path = format!("{path}.circuits[{place}]");
        let built = circuit(circuit_entry, &path, report);
        not_above(
            report,
            format!("{path}.engine_rpm"),
            circuit_entry.engine_rpm,
            rated,
        );
        if circuits.iter().any(|other| other.outlet == built.outlet) {
            report.add(
                format!("{path}.outlet"),
                circuit_entry.outlet.word(),
                Rule::Unique,
                "Give each outlet once.",
            );
        }
        circuits.push(built);
    }
    Machine {
        id: entry.id.clone(),
        name: entry.name.clone(),
        kind: entry.kind,
        engine,
        rear_pto,
        mid_pto,
        circuits,
    }
}

fn pto(
    entry: &PtoEntry,
    engine: &Engine,
    rated: (&str, f64),
    path: &str,
    report: &mut Report,
) -> Pto {
    let pto = Pto {
        rated: AngularSpeed::rpm(entry.rpm),
        engine_speed: AngularSpeed::rpm(entry.engine_rpm),
        tested: power(entry.tested_kw.as_ref()),
        rating: power(entry.rating_kw.as_ref())
            .or_else(|| defaults::shaft_rating(AngularSpeed::rpm(entry.rpm))),
    };
    let at = format!("{path}.engine_rpm");
    if pto.engine_speed < engine.lowest {
        let rule = Rule::Within {
            min: engine.lowest.to_rpm().round(),
            max: engine.rated.to_rpm().round(),
            unit: "rpm",
        };
        let hint = "It lies outside the engine's own range.";
        report.add(at, entry.engine_rpm.to_string(), rule, hint);
    } else {
        not_above(report, at, entry.engine_rpm, rated);
    }
    if let Some(tested) = pto.tested {
        let net = engine.net_at(pto.engine_speed).likely;
        if tested.high > net {
            let most = format!("the engine's net power there, {:.1} kW", net.to_kilowatts());
            report.add(
                format!("{path}.tested_kw"),
                format!("{:.1}", tested.high.to_kilowatts()),
                Rule::NotAbove(most),
                "A shaft can't give more than its engine: is the engine's figure net power?",
            );
        }
    }
    pto
}

fn circuit(entry: &CircuitEntry, path: &str, report: &mut Report) -> Circuit {
    let flow = spread(&entry.flow_l_min, Flow::litres_per_minute);
    let supply = entry.supply.unwrap_or(Supply::OpenCentre);
    Circuit {
        outlet: entry.outlet,
        flow,
        engine_speed: AngularSpeed::rpm(entry.engine_rpm),
        relief: spread(&entry.relief_bar, Pressure::bar),
        steering: steering(&entry.steering, flow, &format!("{path}.steering"), report),
        supply,
        valve: valve(entry.valve_bar.as_ref(), supply),
        volumetric: ratio_or(entry.volumetric.as_ref(), defaults::PUMP_VOLUMETRIC),
        hydro_mechanical: ratio_or(
            entry.hydro_mechanical.as_ref(),
            defaults::PUMP_HYDRO_MECHANICAL,
        ),
    }
}

fn valve(entry: Option<&UncertainEntry>, supply: Supply) -> Spread<Pressure> {
    match (entry, supply) {
        (Some(entry), _) => spread(entry, Pressure::bar),
        (None, Supply::LoadSensing) => defaults::load_sensing_margin(),
        (None, Supply::OpenCentre | Supply::PressureCompensated) => defaults::valve_drop(),
    }
}

fn steering(
    entry: &SteeringEntry,
    sheet: Spread<Flow>,
    path: &str,
    report: &mut Report,
) -> SteeringShare {
    let at = format!("{path}.flow_l_min");
    let taken = entry
        .flow_l_min
        .as_ref()
        .map(|entry| spread(entry, Flow::litres_per_minute));
    let takes = |share: fn(Spread<Flow>) -> SteeringShare, report: &mut Report| match taken {
        None => {
            let hint = "This policy takes a flow: say how much.";
            report.add(at.clone(), "", Rule::Required, hint);
            SteeringShare::SeparatePump
        }
        Some(taken) => {
            if taken.high >= sheet.low {
                let most = format!(
                    "the sheet's flow, {:.1} L/min",
                    sheet.low.to_litres_per_minute()
                );
                let found = format!("{:.1}", taken.high.to_litres_per_minute());
                let hint = "Nothing would be left for the implement.";
                report.add(at.clone(), found, Rule::NotAbove(most), hint);
            }
            share(taken)
        }
    };
    match entry.policy {
        SteeringPolicy::FixedPriority => takes(SteeringShare::FixedPriority, report),
        SteeringPolicy::Summed => takes(SteeringShare::Summed, report),
        SteeringPolicy::LoadSensingPriority => SteeringShare::LoadSensingPriority,
        SteeringPolicy::SeparatePump => SteeringShare::SeparatePump,
    }
}

pub(super) fn implement(entry: &ImplementEntry, path: &str, report: &mut Report) -> Implement {
    let RotorEntry {
        rated_rpm,
        lowest_rpm,
        highest_rpm,
    } = entry.rotor;
    let rated = ("the rotor's rated speed", rated_rpm);
    not_above(
        report,
        format!("{path}.rotor.lowest_rpm"),
        lowest_rpm,
        rated,
    );
    let highest = ("the rotor's highest speed", highest_rpm);
    not_above(
        report,
        format!("{path}.rotor.rated_rpm"),
        rated_rpm,
        highest,
    );
    let mut shafts = Vec::with_capacity(entry.shafts.len());
    for (place, shaft) in entry.shafts.iter().enumerate() {
        let path = format!("{path}.shafts[{place}]");
        needs_steps(&shaft.drive, rated_rpm / shaft.rpm, &path, report);
        shafts.push(input_shaft(shaft));
    }
    if let Some(motor) = &entry.motor {
        needs_steps(&motor.drive, motor.ratio, &format!("{path}.motor"), report);
    }
    if shafts.is_empty() && entry.motor.is_none() {
        let hint = "Give it at least one entry in shafts, or a motor.";
        report.add(format!("{path}.shafts"), "", Rule::NotEmpty, hint);
    }
    Implement {
        id: entry.id.clone(),
        name: entry.name.clone(),
        kind: entry.kind,
        rotor: Rotor {
            rated: AngularSpeed::rpm(rated_rpm),
            lowest: AngularSpeed::rpm(lowest_rpm),
            highest: AngularSpeed::rpm(highest_rpm),
        },
        need: spread(&entry.need_kw, Power::kilowatts),
        shafts,
        motor: entry.motor.as_ref().map(input_motor),
    }
}

/// Notes a drive without steps between two speeds that differ.
fn needs_steps(drive: &[GearKind], ratio: f64, path: &str, report: &mut Report) {
    if drive.is_empty() && (ratio - 1.0).abs() > 1e-3 {
        let hint =
            "The two speeds differ, so something must change them: name the gear, belt or chain.";
        report.add(format!("{path}.drive"), "", Rule::NotEmpty, hint);
    }
}

fn input_shaft(entry: &ShaftEntry) -> InputShaft {
    InputShaft {
        place: entry.place,
        speed: AngularSpeed::rpm(entry.rpm),
        drive: entry.drive.clone(),
        rating: power(entry.rating_kw.as_ref()),
    }
}

fn input_motor(entry: &MotorEntry) -> InputMotor {
    InputMotor {
        displacement: Displacement::cubic_centimetres(entry.displacement_cm3),
        ratio: entry.ratio,
        drive: entry.drive.clone(),
        highest_flow: Flow::litres_per_minute(entry.highest_l_min),
        highest_pressure: Pressure::bar(entry.highest_bar),
        volumetric: ratio_or(entry.volumetric.as_ref(), defaults::MOTOR_VOLUMETRIC),
        hydro_mechanical: ratio_or(
            entry.hydro_mechanical.as_ref(),
            defaults::MOTOR_HYDRO_MECHANICAL,
        ),
    }
}

pub(super) fn kit(entry: &KitEntry, path: &str, report: &mut Report) -> Kit {
    let routes = entry.routes.clone();
    if routes.is_empty() {
        let hint = "Name at least one route.";
        report.add(format!("{path}.routes"), "", Rule::NotEmpty, hint);
    }
    if routes.iter().any(|route| route.needs_oil()) && entry.hoses.is_none() {
        let hint = "A route with oil needs hoses.";
        report.add(format!("{path}.hoses"), "", Rule::Required, hint);
    }
    if routes.contains(&RouteId::PumpPack) && entry.pump.is_none() {
        let hint = "A pump pack needs its pump.";
        report.add(format!("{path}.pump"), "", Rule::Required, hint);
    }
    Kit {
        id: entry.id.clone(),
        name: entry.name.clone(),
        routes,
        pto_speed: entry.pto_rpm.map(AngularSpeed::rpm),
        drive: entry.drive.iter().map(gear).collect(),
        pump: entry.pump.as_ref().map(pump),
        hoses: entry.hoses.as_ref().map(hoses),
    }
}

fn gear(entry: &GearEntry) -> Gear {
    Gear {
        role: GearRole::Step(entry.kind),
        ratio: entry.ratio,
        efficiency: ratio_or(
            entry.efficiency.as_ref(),
            defaults::gear_efficiency(entry.kind),
        ),
        rating: entry
            .rating_nm
            .as_ref()
            .map(|rating| (spread(rating, Torque::newton_metres), Limit::ShaftRating)),
    }
}

fn pump(entry: &PumpEntry) -> KitPump {
    KitPump {
        displacement: Displacement::cubic_centimetres(entry.displacement_cm3),
        highest: AngularSpeed::rpm(entry.highest_rpm),
        relief: spread(&entry.relief_bar, Pressure::bar),
        volumetric: ratio_or(entry.volumetric.as_ref(), defaults::PUMP_VOLUMETRIC),
        hydro_mechanical: ratio_or(
            entry.hydro_mechanical.as_ref(),
            defaults::PUMP_HYDRO_MECHANICAL,
        ),
        valve: valve(entry.valve_bar.as_ref(), Supply::OpenCentre),
    }
}

fn hoses(entry: &HosesEntry) -> KitHoses {
    let hose = |bore_mm| Pipe {
        bore: Length::millimetres(bore_mm),
        length: Length::metres(entry.length_m),
        relative_roughness: 0.0,
    };
    KitHoses {
        supply: hose(entry.bore_mm),
        back: hose(entry.back_bore_mm.unwrap_or(entry.bore_mm)),
        couplers: entry.couplers,
        coupler_drop: entry
            .coupler_bar
            .as_ref()
            .map_or_else(defaults::coupler_drop, |drop| spread(drop, Pressure::bar)),
        coupler_flow: entry
            .coupler_l_min
            .map_or_else(defaults::coupler_flow, Flow::litres_per_minute),
    }
}
