//! Turns entries into checked types, and finds what only shows when fields are held together.

use super::entry::{
    CircuitEntry, EngineEntry, GearEntry, HosesEntry, ImplementEntry, KitEntry, MachineEntry,
    MotorEntry, OilEntry, PtoEntry, PumpEntry, ReservoirEntry, RotorEntry, ShaftEntry,
    SteeringEntry, UncertainEntry,
};
use super::report::Report;
use crate::defaults;
use crate::defaults_work::{THROWN, coefficients, joules_per_unit, usual_ground};
use crate::drive::Limit;
use crate::fault::{Bound, Expected, Rule};
use crate::hint::Hint;
use crate::hookup::{Axles, Hitch, KitShaft, PtoEnd};
use crate::implement::{Implement, ImplementKind, InputMotor, InputShaft, Rotor, Travel, Work};
use crate::kit::{Kit, KitHoses, KitPump, Suction};
use crate::machine::{
    Aspiration, Circuit, Engine, Machine, MachineKind, Pto, Reservoir, SteeringPolicy,
    SteeringShare, Supply, Transmission,
};
use crate::measure::Swath;
use crate::physics::engine::{Curve, CurveFault, net_from_gross};
use crate::physics::joint;
use crate::physics::line::Pipe;
use crate::physics::oil::{Grade, Oil};
use crate::quantity::{
    AngularSpeed, Conductance, Density, Displacement, Flow, Force, Length, Mass, Power, Pressure,
    Time, Torque, Velocity, Viscosity, Volume,
};
use crate::settings::LAST_DIGITS;
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

/// A figure that another must not exceed or reach, with its value and its unit.
type Most = (Bound, f64, &'static str);

fn above((bound, most, unit): Most) -> Rule {
    Rule::NotAbove { bound, most, unit }
}

fn below((bound, most, unit): Most) -> Rule {
    Rule::Below { bound, most, unit }
}

/// Notes a figure that is above another.
fn not_above(report: &mut Report, path: String, found: f64, most: Most) {
    if found > most.1 {
        report.add(path, found.to_string(), above(most), Hint::CheckBoth);
    }
}

/// A figure that was reckoned, as a fault tells it.
fn tenths(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
}

pub(super) fn machine(entry: &MachineEntry, path: &str, report: &mut Report) -> Machine {
    let engine = engine(&entry.engine, &format!("{path}.engine"), report);
    let rated = (Bound::EngineRated, entry.engine.rated_rpm, "rpm");
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
    let economy_pto = built_pto(&entry.economy_pto, "economy_pto");
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
                Hint::OutletOnce,
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
        economy_pto,
        mid_pto,
        circuits,
        oil: oil(entry.oil.as_ref(), &format!("{path}.oil"), report),
        mass: entry.mass_kg.map(Mass::kilograms),
        transmission: entry.transmission.unwrap_or(match entry.kind {
            MachineKind::Tractor => Transmission::Gear,
            MachineKind::SkidSteer => Transmission::Hydrostatic,
        }),
        hitch: hitch(entry, path, report),
        loader: entry.loader.as_ref().map(Into::into),
        axles: axles(entry, path, report),
        price: entry.price,
    }
}

fn hitch(entry: &MachineEntry, path: &str, report: &mut Report) -> Option<Hitch> {
    let hitch = entry.hitch.as_ref()?;
    if let (Some(lowest), Some(highest)) = (hitch.lowest_m, hitch.highest_m) {
        let lifted = (Bound::LiftedHeight, highest, "m");
        not_above(report, format!("{path}.hitch.lowest_m"), lowest, lifted);
    }
    Some(hitch.into())
}

fn axles(entry: &MachineEntry, path: &str, report: &mut Report) -> Option<Axles> {
    let axles = entry.axles.as_ref()?;
    let at = format!("{path}.axles.front_kg");
    match entry.mass_kg {
        Some(mass) => not_above(report, at, axles.front_kg, (Bound::MachineMass, mass, "kg")),
        None => {
            report.add(
                format!("{path}.mass_kg"),
                "",
                Rule::Required,
                Hint::RearFollowsFromMass,
            );
        }
    }
    Some(axles.into())
}

fn engine(entry: &EngineEntry, path: &str, report: &mut Report) -> Engine {
    let net = entry.net_kw.as_ref().or(entry.gross_kw.as_ref());
    let net = net.map_or_else(
        || Spread::exact(Power::ZERO, Source::Own),
        |entry| spread(entry, Power::kilowatts),
    );
    match (&entry.net_kw, &entry.gross_kw) {
        (None, None) => {
            report.add(
                format!("{path}.net_kw"),
                "",
                Rule::Required,
                Hint::NetOrGross,
            );
        }
        (Some(_), Some(_)) => {
            report.add(format!("{path}.gross_kw"), "", Rule::Unique, Hint::OnlyNet);
        }
        _ => {}
    }
    Engine {
        net: match entry.net_kw {
            Some(_) => net,
            None => from_gross(net),
        },
        rated: AngularSpeed::rpm(entry.rated_rpm),
        lowest: AngularSpeed::rpm(entry.lowest_rpm),
        curve: curve(entry, &format!("{path}.curve"), report),
        aspiration: entry.aspiration.unwrap_or(Aspiration::Natural),
    }
}

fn from_gross(gross: Spread<Power>) -> Spread<Power> {
    let factor = defaults::NET_OF_GROSS;
    Spread::new(
        net_from_gross(gross.low, factor.low),
        net_from_gross(gross.likely, factor.likely),
        net_from_gross(gross.high, factor.high),
        factor.source,
    )
}

/// The curve of an engine; one with faults is left out, as the file is refused.
fn curve(entry: &EngineEntry, path: &str, report: &mut Report) -> Option<Curve> {
    let (first, last) = (entry.curve.first()?, entry.curve.last()?);
    if first.rpm > entry.lowest_rpm || last.rpm < entry.rated_rpm {
        let rule = Rule::Within {
            min: entry.lowest_rpm,
            max: entry.rated_rpm,
            unit: "rpm",
        };
        let found = format!("{} – {}", first.rpm, last.rpm);
        report.add(path, found, rule, Hint::CurveReaches);
    }
    let points = entry
        .curve
        .iter()
        .map(|point| (AngularSpeed::rpm(point.rpm), Power::kilowatts(point.kw)))
        .collect();
    match Curve::new(points) {
        Ok(curve) => Some(curve),
        Err(faults) => {
            for fault in faults {
                let (at, hint) = match fault {
                    CurveFault::TooFew => (path.to_owned(), Hint::CurveNeedsTwo),
                    CurveFault::NotPositive(place) => {
                        (format!("{path}[{place}]"), Hint::CurveAboveZero)
                    }
                    CurveFault::NotRising(place) => {
                        (format!("{path}[{place}].rpm"), Hint::CurveSpeed)
                    }
                };
                report.add(at, "", Rule::Type(Expected::Rising), hint);
            }
            None
        }
    }
}

fn oil(entry: Option<&OilEntry>, path: &str, report: &mut Report) -> Oil {
    let Some(entry) = entry else {
        return defaults::oil();
    };
    let density = entry.kg_m3.map(Density::kilograms_per_cubic_metre);
    let typical = entry.grade.map_or_else(defaults::oil, Grade::typical);
    let oil = match (entry.grade, entry.cst_40, entry.cst_100) {
        (Some(_), None, None) => typical,
        (None, Some(at_40), Some(at_100)) => {
            if at_100 >= at_40 {
                report.add(
                    format!("{path}.cst_100"),
                    at_100.to_string(),
                    below((Bound::ViscosityAt40, at_40, "cSt")),
                    Hint::OilThins,
                );
            }
            Oil {
                at_40: Viscosity::centistokes(at_40),
                at_100: Viscosity::centistokes(at_100),
                ..typical
            }
        }
        (Some(grade), _, _) => {
            report.add(
                format!("{path}.grade"),
                grade.word(),
                Rule::Unique,
                Hint::GradeOrViscosities,
            );
            typical
        }
        _ => {
            report.add(path, "", Rule::Required, Hint::GradeOrBoth);
            typical
        }
    };
    Oil {
        density_at_15: density.unwrap_or(oil.density_at_15),
        ..oil
    }
}

fn reservoir(entry: Option<&ReservoirEntry>) -> Reservoir {
    Reservoir {
        volume: entry.and_then(|entry| entry.oil_l).map(Volume::litres),
        cooler: entry
            .and_then(|entry| entry.cooler_w_k)
            .map(Conductance::watts_per_kelvin),
    }
}

fn pto(entry: &PtoEntry, engine: &Engine, rated: Most, path: &str, report: &mut Report) -> Pto {
    let speed = AngularSpeed::rpm(entry.rpm);
    let end: PtoEnd = entry.end.as_ref().map(Into::into).unwrap_or_default();
    let pto = Pto {
        rated: speed,
        engine_speed: AngularSpeed::rpm(entry.engine_rpm),
        tested: power(entry.tested_kw.as_ref()),
        rating: power(entry.rating_kw.as_ref())
            .or_else(|| defaults::shaft_rating(end.shaft, speed)),
        end,
    };
    let at = format!("{path}.engine_rpm");
    if pto.engine_speed < engine.lowest {
        let rule = Rule::Within {
            min: engine.lowest.to_rpm().round(),
            max: engine.rated.to_rpm().round(),
            unit: "rpm",
        };
        report.add(at, entry.engine_rpm.to_string(), rule, Hint::OutsideEngine);
    } else {
        not_above(report, at, entry.engine_rpm, rated);
    }
    if let Some(tested) = pto.tested {
        let net = engine.net_at(pto.engine_speed).likely;
        if tested.high > net * (1.0 + LAST_DIGITS) {
            let most = tenths(net.to_kilowatts());
            report.add(
                format!("{path}.tested_kw"),
                tenths(tested.high.to_kilowatts()).to_string(),
                above((Bound::NetPowerThere, most, "kW")),
                Hint::IsItNet,
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
        reservoir: reservoir(entry.reservoir.as_ref()),
        coupler_size: entry.coupler_mm.map(Length::millimetres),
        case_drain: entry.case_drain,
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
            report.add(at.clone(), "", Rule::Required, Hint::PolicyTakesFlow);
            SteeringShare::SeparatePump
        }
        Some(taken) => {
            if taken.high >= sheet.low {
                let most = tenths(sheet.low.to_litres_per_minute());
                let found = tenths(taken.high.to_litres_per_minute()).to_string();
                let rule = below((Bound::SheetFlow, most, "L/min"));
                report.add(at.clone(), found, rule, Hint::NothingLeft);
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
        diameter_mm,
    } = entry.rotor;
    let rated = (Bound::RotorRated, rated_rpm, "rpm");
    not_above(
        report,
        format!("{path}.rotor.lowest_rpm"),
        lowest_rpm,
        rated,
    );
    let highest = (Bound::RotorHighest, highest_rpm, "rpm");
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
        report.add(
            format!("{path}.shafts"),
            "",
            Rule::NotEmpty,
            Hint::ShaftOrMotor,
        );
    }
    Implement {
        id: entry.id.clone(),
        name: entry.name.clone(),
        kind: entry.kind,
        rotor: Rotor {
            rated: AngularSpeed::rpm(rated_rpm),
            lowest: AngularSpeed::rpm(lowest_rpm),
            highest: AngularSpeed::rpm(highest_rpm),
            diameter: diameter_mm.map(Length::millimetres),
        },
        need: spread(&entry.need_kw, Power::kilowatts),
        shafts,
        motor: entry.motor.as_ref().map(input_motor),
        work: work(entry, &format!("{path}.work"), report),
        travel: travel(entry, &format!("{path}.travel"), report),
        mass: entry.mass_kg.map(Mass::kilograms),
        mount: entry.mount.as_ref().map(Into::into).unwrap_or_default(),
    }
}

/// What the file says of the work, and of the rest what is usual for the kind.
fn work(entry: &ImplementEntry, path: &str, report: &mut Report) -> Option<Work> {
    let work = entry.work.as_ref()?;
    let usual =
        coefficients(entry.kind).filter(|coefficients| coefficients.measure == work.measure);
    let need = spread(&entry.need_kw, Power::kilowatts).likely;
    let idle = match (&work.idle_kw, usual) {
        (Some(idle), _) => Some(spread(idle, Power::kilowatts)),
        (None, Some(usual)) => Some(usual.idle_part.map(|part| need * part)),
        (None, None) => None,
    };
    let energy = match (&work.kwh_per_unit, usual) {
        (Some(energy), _) => {
            let energy = spread(energy, |it| it);
            Some(energy.map(|it| joules_per_unit(work.measure, it)))
        }
        (None, Some(usual)) => Some(usual.energy),
        (None, None) => None,
    };
    let missing = Hint::NoUsualFigure;
    for (key, found) in [
        ("idle_kw", idle.is_some()),
        ("kwh_per_unit", energy.is_some()),
    ] {
        if !found {
            report.add(format!("{path}.{key}"), "", Rule::Required, missing);
        }
    }
    if let Some(idle) = idle.filter(|idle| idle.likely >= need) {
        let rule = below((Bound::Need, tenths(need.to_kilowatts()), "kW"));
        let found = tenths(idle.likely.to_kilowatts()).to_string();
        report.add(format!("{path}.idle_kw"), found, rule, Hint::IdlingIncluded);
    }
    Some(Work {
        measure: work.measure,
        idle: idle?,
        energy: energy?,
        grows: match entry.kind {
            ImplementKind::Thrower => THROWN,
            _ => 0.0,
        },
        swath: Swath {
            width: work.width_m.map(Length::metres),
            depth: work.depth_m.map(Length::metres),
            density: work.density_kg_m3.map(Density::kilograms_per_cubic_metre),
        },
    })
}

fn travel(entry: &ImplementEntry, path: &str, report: &mut Report) -> Option<Travel> {
    let travel = entry.travel.as_ref()?;
    let highest = (Bound::HighestSpeed, travel.highest_km_h, "km/h");
    not_above(
        report,
        format!("{path}.usual_km_h"),
        travel.usual_km_h,
        highest,
    );
    Some(Travel {
        usual: Velocity::kilometres_per_hour(travel.usual_km_h),
        highest: Velocity::kilometres_per_hour(travel.highest_km_h),
        ground: travel.ground.unwrap_or(usual_ground(entry.kind)),
        pushing: travel
            .pushing_n
            .as_ref()
            .map_or(Spread::exact(Force::ZERO, Source::Own), |pushing| {
                spread(pushing, Force::newtons)
            }),
    })
}

/// Notes a drive without steps between two speeds that differ.
fn needs_steps(drive: &[GearKind], ratio: f64, path: &str, report: &mut Report) {
    if drive.is_empty() && (ratio - 1.0).abs() > 1e-3 {
        report.add(format!("{path}.drive"), "", Rule::NotEmpty, Hint::NeedsStep);
    }
}

fn input_shaft(entry: &ShaftEntry) -> InputShaft {
    InputShaft {
        place: entry.place,
        speed: AngularSpeed::rpm(entry.rpm),
        drive: entry.drive.clone(),
        rating: power(entry.rating_kw.as_ref()),
        end: entry.end.as_ref().map(Into::into).unwrap_or_default(),
        price: entry.price,
    }
}

fn input_motor(entry: &MotorEntry) -> InputMotor {
    InputMotor {
        displacement: Displacement::cubic_centimetres(entry.displacement_cm3),
        ratio: entry.ratio,
        drive: entry.drive.clone(),
        highest_flow: Flow::litres_per_minute(entry.highest_l_min),
        highest_pressure: Pressure::bar(entry.highest_bar),
        starting: ratio_or(entry.starting.as_ref(), defaults::MOTOR_STARTING),
        volumetric: ratio_or(entry.volumetric.as_ref(), defaults::MOTOR_VOLUMETRIC),
        hydro_mechanical: ratio_or(
            entry.hydro_mechanical.as_ref(),
            defaults::MOTOR_HYDRO_MECHANICAL,
        ),
        case_drain: entry.case_drain,
        price: entry.price,
    }
}

pub(super) fn kit(entry: &KitEntry, path: &str, report: &mut Report) -> Kit {
    let routes = entry.routes.clone();
    if routes.is_empty() {
        report.add(
            format!("{path}.routes"),
            "",
            Rule::NotEmpty,
            Hint::NameRoute,
        );
    }
    if routes.iter().any(|route| route.needs_oil()) && entry.hoses.is_none() {
        report.add(
            format!("{path}.hoses"),
            "",
            Rule::Required,
            Hint::OilNeedsHoses,
        );
    }
    if routes.iter().any(|route| route.has_kit_pump()) && entry.pump.is_none() {
        report.add(
            format!("{path}.pump"),
            "",
            Rule::Required,
            Hint::PackNeedsPump,
        );
    }
    Kit {
        id: entry.id.clone(),
        name: entry.name.clone(),
        routes,
        pto_speed: entry.pto_rpm.map(AngularSpeed::rpm),
        drive: entry.drive.iter().map(gear).collect(),
        pump: entry
            .pump
            .as_ref()
            .map(|entry| pump(entry, &format!("{path}.pump"), report)),
        hoses: entry.hoses.as_ref().map(hoses),
        shaft: kit_shaft(entry, path, report),
        slips: first_slip(entry),
        seat: entry.seat,
        included: entry.included.unwrap_or_else(|| usually_included(entry)),
        hookup: entry.hookup_min.map(Time::minutes),
        price: entry.price,
        fitting: entry.fitting_price,
    }
}

/// Joint shafts come with an implement and hoses with one that has a motor; what changes a speed,
/// pumps or moves the implement elsewhere is bought: this project's judgement.
fn usually_included(entry: &KitEntry) -> bool {
    let mut drive = entry.drive.iter();
    let only_joints = drive.all(|step| step.kind == GearKind::JointShaft);
    only_joints && entry.pump.is_none() && entry.seat.is_none()
}

fn kit_shaft(entry: &KitEntry, path: &str, report: &mut Report) -> KitShaft {
    let shaft = entry.shaft.as_ref();
    if let Some((closed, open)) = shaft.and_then(|it| it.closed_m.zip(it.open_m)) {
        let parted = (Bound::OpenLength, open, "m");
        not_above(report, format!("{path}.shaft.closed_m"), closed, parted);
    }
    shaft.map(Into::into).unwrap_or_default()
}

/// Of its slip clutches the one that slips first. Not reckoned to the same shaft.
fn first_slip(entry: &KitEntry) -> Option<Torque> {
    let slips = entry.drive.iter().filter_map(|step| step.slip_clutch_nm);
    slips.map(Torque::newton_metres).reduce(Torque::min)
}

fn gear(entry: &GearEntry) -> Gear {
    // No other step has joints.
    let of_joints = entry
        .angle_deg
        .filter(|_| entry.kind == GearKind::JointShaft);
    Gear {
        role: GearRole::Step(entry.kind),
        ratio: entry.ratio,
        efficiency: ratio_or(
            entry.efficiency.as_ref(),
            match of_joints {
                Some(angle) => joint_shaft(angle),
                None => defaults::gear_efficiency(entry.kind),
            },
        ),
        angle: of_joints.map(f64::to_radians),
        rating: gear_rating(entry).map(|rating| (rating, Limit::ShaftRating)),
    }
}

/// The most torque: that of the shaft, and no more than lets its slip clutch slip.
fn gear_rating(entry: &GearEntry) -> Option<Spread<Torque>> {
    let rating = entry.rating_nm.as_ref();
    let rating = rating.map(|rating| spread(rating, Torque::newton_metres));
    let slips = entry.slip_clutch_nm.map(Torque::newton_metres);
    match (rating, slips) {
        (Some(rating), Some(slips)) => Some(rating.map(|torque| torque.min(slips))),
        (None, Some(slips)) => Some(Spread::exact(slips, Source::Own)),
        (rating, None) => rating,
    }
}

/// Two joints at an angle each.
fn joint_shaft(angle_deg: f64) -> Spread<f64> {
    let both = |friction| {
        let one = joint::efficiency(angle_deg.to_radians(), friction);
        one * one
    };
    let friction = joint::FRICTION;
    Spread::new(
        both(friction.high),
        both(friction.likely),
        both(friction.low),
        friction.source,
    )
}

fn pump(entry: &PumpEntry, path: &str, report: &mut Report) -> KitPump {
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
        suction: entry.suction_bore_mm.map(|bore| Suction {
            line: Pipe {
                bore: Length::millimetres(bore),
                length: Length::metres(entry.suction_length_m.unwrap_or(0.0)),
                relative_roughness: 0.0,
            },
            lift: Length::metres(entry.suction_lift_m.unwrap_or(0.0)),
        }),
        reservoir: reservoir(entry.reservoir.as_ref()),
        oil: oil(entry.oil.as_ref(), &format!("{path}.oil"), report),
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
        fittings: entry.fittings_k.unwrap_or(0.0),
        coupler_size: entry.coupler_mm.map(Length::millimetres),
        case_drain: entry.case_drain,
    }
}
