//! Each warning appears where it must, and goes where its cause does.

use farend_core::compare::Run;
use farend_core::drive::{Limit, Stall};
use farend_core::kit::Suction;
use farend_core::physics::joint::AngleAdvice;
use farend_core::physics::line::Pipe;
use farend_core::quantity::{
    AngularSpeed, Displacement, Flow, Length, Power, Pressure, Temperature, Torque,
};
use farend_core::route::RouteId;
use farend_core::source::Source;
use farend_core::spread::Spread;
use farend_core::stage::StageKind;
use farend_core::warning::{Line, Warning};
use farend_tests::parts::Parts;

/// How many of a run's warnings are of a kind.
fn count(run: &Run, kind: fn(&Warning) -> bool) -> usize {
    run.warnings.iter().filter(|it| kind(it)).count()
}

fn run(parts: &Parts, route: RouteId) -> Run {
    parts
        .route(route)
        .unwrap_or_else(|why| panic!("{}: {why:?}", route.word()))
}

fn tractor() -> Parts {
    Parts::of("curlew-46", "snow-thrower-150")
}

fn hoses_of(parts: &mut Parts, change: impl Fn(&mut Pipe, &mut Pipe)) {
    for hoses in parts.kits.iter_mut().filter_map(|kit| kit.hoses.as_mut()) {
        change(&mut hoses.supply, &mut hoses.back);
    }
}

#[test]
fn a_narrow_hose_is_told_and_a_wide_one_is_not() {
    let is = |line| move |it: &Warning| matches!(it, Warning::LineTooNarrow { line: at, .. } if *at == line);
    let told = |parts: &Parts, line| {
        let run = run(parts, RouteId::MachineHydraulics);
        run.warnings.iter().filter(|it| is(line)(it)).count()
    };
    let mut parts = tractor();
    hoses_of(&mut parts, |supply, back| {
        supply.bore = Length::millimetres(25.0);
        back.bore = Length::millimetres(25.0);
    });
    assert_eq!(told(&parts, Line::Supply) + told(&parts, Line::Back), 0);
    hoses_of(&mut parts, |supply, _| {
        supply.bore = Length::millimetres(10.0)
    });
    assert_eq!(
        (told(&parts, Line::Supply), told(&parts, Line::Back)),
        (1, 0)
    );
    hoses_of(&mut parts, |supply, back| {
        supply.bore = Length::millimetres(25.0);
        back.bore = Length::millimetres(12.0);
    });
    assert_eq!(
        (told(&parts, Line::Supply), told(&parts, Line::Back)),
        (0, 1)
    );
}

fn with_suction(bore_mm: f64, lift_m: f64) -> Run {
    let mut parts = tractor();
    for pump in parts.kits.iter_mut().filter_map(|kit| kit.pump.as_mut()) {
        pump.suction = Some(Suction {
            line: Pipe {
                bore: Length::millimetres(bore_mm),
                length: Length::metres(1.0),
                relative_roughness: 0.0,
            },
            lift: Length::metres(lift_m),
        });
    }
    run(&parts, RouteId::PumpPack)
}

#[test]
fn an_inlet_that_gets_too_little_is_told() {
    let low = |it: &Warning| matches!(it, Warning::SuctionTooLow { .. });
    let narrow = |it: &Warning| {
        matches!(
            it,
            Warning::LineTooNarrow {
                line: Line::Suction,
                ..
            }
        )
    };
    let wide = with_suction(60.0, 0.0);
    assert_eq!((count(&wide, low), count(&wide, narrow)), (0, 0));
    let rather_narrow = with_suction(32.0, 0.0);
    assert_eq!(
        (count(&rather_narrow, low), count(&rather_narrow, narrow)),
        (0, 1)
    );
    let narrow_and_high = with_suction(20.0, 1.0);
    assert_eq!(count(&narrow_and_high, low), 1);
    // A column of 3 m takes 0.26 bar of the air's one.
    assert_eq!(count(&with_suction(60.0, 3.0), low), 1);
}

#[test]
fn an_inlet_gets_less_on_a_mountain() {
    let low = |it: &Warning| matches!(it, Warning::SuctionTooLow { .. });
    let mut parts = tractor();
    for pump in parts.kits.iter_mut().filter_map(|kit| kit.pump.as_mut()) {
        pump.suction = Some(Suction {
            line: Pipe {
                bore: Length::millimetres(60.0),
                length: Length::metres(0.3),
                relative_roughness: 0.0,
            },
            lift: Length::ZERO,
        });
    }
    assert_eq!(count(&run(&parts, RouteId::PumpPack), low), 0);
    // 0.70 bar at 3000 m.
    parts.settings.altitude = Some(Length::metres(3000.0));
    assert_eq!(count(&run(&parts, RouteId::PumpPack), low), 1);
}

#[test]
fn a_pump_that_is_hurried_by_the_engine_is_told() {
    let hurried = |it: &Warning| matches!(it, Warning::PumpTooFast { .. });
    let mut parts = tractor();
    let ratio: f64 = parts
        .kits
        .iter()
        .find(|kit| kit.pump.is_some())
        .expect("a pump pack")
        .drive
        .iter()
        .map(|gear| gear.ratio)
        .product();
    for pump in parts.kits.iter_mut().filter_map(|kit| kit.pump.as_mut()) {
        pump.highest = AngularSpeed::rpm(540.0 * ratio * 1.01);
    }
    assert_eq!(count(&run(&parts, RouteId::PumpPack), hurried), 0);
    // From 2200 to 2400 rpm are 9 % more.
    parts.settings.engine_speed = Some(AngularSpeed::rpm(2400.0));
    assert_eq!(count(&run(&parts, RouteId::PumpPack), hurried), 1);
}

#[test]
fn a_bent_joint_gets_its_advice() {
    let mut parts = tractor();
    for (degrees, advice) in [
        (10.0_f64, None),
        (20.0, Some(AngleAdvice::Steady)),
        (40.0, Some(AngleAdvice::Brief)),
        (70.0, Some(AngleAdvice::NeedsWideAngle)),
    ] {
        for gear in parts.kits.iter_mut().flat_map(|kit| &mut kit.drive) {
            gear.angle = gear.angle.map(|_| degrees.to_radians());
        }
        let run = run(&parts, RouteId::RearShaft);
        let told = run.warnings.iter().find_map(|it| match it {
            Warning::JointAngle { advice, .. } => Some(*advice),
            _ => None,
        });
        assert_eq!(told, advice, "{degrees}°");
    }
}

#[test]
fn a_motor_too_small_to_start_the_job_is_told() {
    let hard = |it: &Warning| matches!(it, Warning::WontStart { .. });
    let mut parts = tractor();
    assert_eq!(count(&run(&parts, RouteId::MachineHydraulics), hard), 1);
    // Twice the displacement is twice the torque.
    let motor = parts.implement.motor.as_mut().expect("a motor");
    motor.displacement = motor.displacement * 2.0;
    assert_eq!(count(&run(&parts, RouteId::MachineHydraulics), hard), 0);
}

/// By the equation: T = V·p/2π·η_start, and then through the chain.
#[test]
fn the_starting_torque_is_that_of_the_equation() {
    let mut parts = tractor();
    let motor = parts.implement.motor.as_mut().expect("a motor");
    motor.displacement = Displacement::cubic_centimetres(80.0);
    motor.starting = Spread::exact(0.75, Source::Own);
    motor.highest_pressure = Pressure::bar(400.0);
    motor.ratio = 0.5;
    parts.settings.own.relief = Some(Pressure::bar(150.0));
    let run = run(&parts, RouteId::MachineHydraulics);
    let starts = run.warnings.iter().find_map(|it| match it {
        Warning::WontStart { starts, .. } => Some(starts.to_newton_metres()),
        _ => None,
    });
    // 80 cm³ · 150 bar / 2π = 190.99 N·m, · 0.75 · 0.98 of the chain / 0.5 = 280.75
    let starts = starts.expect("it can't start 318 N·m");
    assert!((starts - 280.75).abs() < 0.05, "{starts}");
}

#[test]
fn a_pump_far_from_its_rated_point_is_told() {
    let far = |it: &Warning| {
        matches!(
            it,
            Warning::FarFromRated(StageKind::Pump | StageKind::Motor)
        )
    };
    let mut parts = tractor();
    assert_eq!(count(&run(&parts, RouteId::MachineHydraulics), far), 0);
    // A motor that leaks half of its flow at its rated point leaks more above that.
    let motor = parts.implement.motor.as_mut().expect("a motor");
    motor.volumetric = Spread::exact(0.5, Source::Own);
    motor.highest_pressure = Pressure::bar(100.0);
    parts.settings.oil = Some(Temperature::celsius(70.0));
    assert!(count(&run(&parts, RouteId::MachineHydraulics), far) > 0);
}

#[test]
fn oil_too_thick_or_too_thin_is_told() {
    let out = |it: &Warning| matches!(it, Warning::OilOutOfRange { .. });
    let mut parts = tractor();
    for (celsius, times) in [(-5.0, 1), (20.0, 0), (80.0, 0), (100.0, 1)] {
        parts.settings.oil = Some(Temperature::celsius(celsius));
        let run = run(&parts, RouteId::MachineHydraulics);
        assert_eq!(count(&run, out), times, "{celsius} °C");
    }
    assert_eq!(count(&run(&parts, RouteId::RearShaft), out), 0);
    // So thick that nothing turns.
    parts.settings.oil = Some(Temperature::celsius(-20.0));
    let stalled = |it: &Warning| matches!(it, Warning::Stalled(Stall::NoPressureLeft));
    assert_eq!(count(&run(&parts, RouteId::MachineHydraulics), stalled), 1);
}

/// 3 kW, of which driving takes more than half, don't bring the pump to what valve, hoses and couplers
/// take: the engine holds it, not the relief valve.
#[test]
fn an_engine_too_weak_for_the_hoses_is_what_holds_them() {
    let mut parts = tractor();
    parts.settings.engine_power = Some(Power::kilowatts(3.0));
    let run = run(&parts, RouteId::MachineHydraulics);
    assert_eq!(run.ledger.stall, Some(Stall::NoPressureLeft));
    assert_eq!(run.limit, Limit::Engine);
}

#[test]
fn flow_that_the_motor_cant_take_is_told() {
    let sent = |it: &Warning| matches!(it, Warning::FlowDiverted { .. });
    let mut parts = tractor();
    assert_eq!(count(&run(&parts, RouteId::MachineHydraulics), sent), 0);
    let motor = parts.implement.motor.as_mut().expect("a motor");
    motor.highest_flow = Flow::litres_per_minute(20.0);
    assert_eq!(count(&run(&parts, RouteId::MachineHydraulics), sent), 1);
}

/// An economy gear gives the same shaft speed at a lower engine speed, with the power of that.
#[test]
fn an_economy_gear_slows_the_engine_and_not_the_rotor() {
    let mut parts = Parts::of("heron-68", "snow-thrower-150");
    let standard = run(&parts, RouteId::RearShaft);
    parts.settings.economy = true;
    let economical = run(&parts, RouteId::RearShaft);
    let close = |a: AngularSpeed, b: AngularSpeed| (a.to_rpm() - b.to_rpm()).abs() < 1e-9;
    assert!(close(standard.rotor, economical.rotor));
    assert!(economical.ledger.available < standard.ledger.available);
    // As much, to rounding, where the implement is what holds both.
    let most = standard.delivered.likely.to_watts() * (1.0 + 1e-12);
    assert!(economical.delivered.likely.to_watts() <= most);
    // A machine without one stays as it was.
    let mut parts = tractor();
    let before = run(&parts, RouteId::RearShaft);
    parts.settings.economy = true;
    assert_eq!(run(&parts, RouteId::RearShaft), before);
}

/// A slip clutch holds the shaft's torque, as a rating does.
#[test]
fn a_slip_clutch_holds_the_torque() {
    let json =
        farend_core::yard::DEMO.replacen("\"slip_clutch_nm\": 900", "\"slip_clutch_nm\": 300", 1);
    let yard = farend_tests::load(&json);
    let kit = yard.kit("joint-shaft").expect("the first kit of the demo");
    let (rating, _) = kit.drive[0].rating.expect("the clutch holds it");
    assert_eq!(rating.likely, Torque::newton_metres(300.0));
    let mut parts = tractor();
    parts.kits = vec![kit.clone()];
    let delivered = run(&parts, RouteId::RearShaft).delivered.likely;
    // 300 N·m at 540 rpm are 16.96 kW, less the gearbox.
    assert!(delivered < Power::kilowatts(17.0), "{delivered:?}");
}
