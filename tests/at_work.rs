//! The implement at work, by plain arithmetic from figures set here.

use farend_core::drive::{Limit, Rate, Stall};
use farend_core::machine::SteeringShare;
use farend_core::measure::{Amount, Measure, Swath};
use farend_core::quantity::{
    AngularSpeed, Density, Flow, Length, Power, Pressure, Temperature, Velocity,
};
use farend_core::route::RouteId;
use farend_core::sensitivity::{Influence, influences};
use farend_core::source::Source;
use farend_core::spread::Spread;
use farend_core::stage::{FigureName, StageKind, StagePhysics};
use farend_core::standing::Standing;
use farend_core::units::Quantity;
use farend_core::warning::Warning;
use farend_core::work::{Load, Progress, need_for, progress};
use farend_tests::parts::Parts;

fn exact<T: Copy>(value: T) -> Spread<T> {
    Spread::exact(value, Source::Own)
}

fn near(actual: f64, expected: f64) {
    assert!(
        (actual - expected).abs() <= 1e-9 * expected.abs(),
        "{actual}, not {expected}"
    );
}

/// 2 kW empty and 720 J/kg (0.2 kWh/t) at a rotor of 600 rpm, 2 m wide, 0.25 m deep, 200 kg/m³: 100
/// kg for each metre.
fn parts() -> Parts {
    let mut parts = Parts::of("curlew-46", "snow-thrower-150");
    let work = parts.implement.work.as_mut().expect("its work");
    work.idle = exact(Power::kilowatts(2.0));
    work.energy = exact(720.0);
    work.swath = Swath {
        width: Some(Length::metres(2.0)),
        depth: Some(Length::metres(0.25)),
        density: Some(Density::kilograms_per_cubic_metre(200.0)),
    };
    let travel = parts.implement.travel.as_mut().expect("it is driven");
    travel.usual = Velocity::metres_per_second(0.2);
    travel.highest = Velocity::metres_per_second(5.0);
    parts
}

fn progressed(parts: &Parts, route: RouteId) -> Progress {
    let mut joined = parts.joined(route);
    progress(
        &mut joined,
        &parts.machine,
        &parts.implement,
        &parts.settings,
    )
    .expect("its work is known")
}

#[test]
fn the_need_is_the_yards_until_speed_depth_or_density_is_set() {
    let need = |parts: &Parts| need_for(&parts.implement, &parts.settings);
    let yards = parts().implement.need;
    assert_eq!(need(&parts()), yards);
    // 2 kW + 720 J/kg · 100 kg/m · 0.2 m/s = 16.4 kW; half as deep, half of the work.
    let mut deep = parts();
    deep.settings.depth = Some(Length::metres(0.125));
    near(need(&deep).likely.to_kilowatts(), 2.0 + 7.2);
    let mut dense = parts();
    dense.settings.density = Some(Density::kilograms_per_cubic_metre(400.0));
    near(need(&dense).likely.to_kilowatts(), 2.0 + 28.8);
    let mut fast = parts();
    fast.settings.ground_speed = Some(Velocity::metres_per_second(0.3));
    near(need(&fast).likely.to_kilowatts(), 2.0 + 21.6);
    // What works standing has no speed to reckon with.
    fast.implement.travel = None;
    assert_eq!(need(&fast), yards);
    // Low is the easy work, high the hard.
    let work = fast.implement.work.as_mut().expect("its work");
    work.energy = Spread::new(600.0, 720.0, 900.0, Source::Own);
    fast.implement.travel = parts().implement.travel;
    near(need(&fast).low.to_kilowatts(), 2.0 + 18.0);
    near(need(&fast).high.to_kilowatts(), 2.0 + 27.0);
}

#[test]
fn a_load_grows_with_the_rotors_speed() {
    let rpm = AngularSpeed::rpm;
    let need = Power::kilowatts(20.0);
    let mut parts = parts();
    let load = |parts: &Parts, part: f64, speed: f64| {
        let load = Load::new(&parts.implement, need).part(part);
        load.at(rpm(speed)).to_kilowatts()
    };
    // What is thrown takes the square: 2 + 18 at 600 rpm, a quarter of both at 300.
    near(load(&parts, 1.0, 600.0), 20.0);
    near(load(&parts, 1.0, 300.0), 5.0);
    near(load(&parts, 0.5, 300.0), 0.5 + 2.25);
    near(load(&parts, 0.0, 600.0), 2.0);
    // Without anything known of the work, the same torque at every speed.
    parts.implement.work = None;
    near(load(&parts, 1.0, 600.0), 20.0);
    near(load(&parts, 0.5, 300.0), 5.0);
}

#[test]
fn work_speed_and_time_go_together() {
    let mut parts = parts();
    parts.settings.job = Some(Amount::of(Measure::Area, 1000.0));
    let found = progressed(&parts, RouteId::RearShaft);
    assert_eq!(found.measure, Measure::Mass);
    let speed = found.ground_speed.expect("it is driven").likely.to_si();
    near(found.rate.likely, 100.0 * speed);
    // 1000 m² · 0.25 m · 200 kg/m³ = 50 t.
    let time = found.time.expect("a job").likely.expect("it gets done");
    near(time.to_seconds(), 50_000.0 / found.rate.likely);
    // At its full speed the rotor takes just what arrives, with driving at that speed taken off.
    let mut there = parts;
    there.settings.ground_speed = Some(Velocity::metres_per_second(speed));
    let arrives = there.route(RouteId::RearShaft).expect("it fits");
    let arrives = arrives.delivered.likely.to_kilowatts();
    let takes = 2.0 + 0.72 * found.rate.likely;
    assert!((arrives - takes).abs() < 1e-6, "{arrives} and {takes}");
}

#[test]
fn no_faster_than_the_work_is_done_well() {
    let mut parts = parts();
    let travel = parts.implement.travel.as_mut().expect("it is driven");
    travel.highest = Velocity::metres_per_second(0.21);
    let found = progressed(&parts, RouteId::RearShaft);
    near(found.rate.likely, 21.0);
    assert_eq!(found.limit, Some(Limit::Implement));
    assert_eq!(found.time, None);
}

#[test]
fn standing_it_works_as_hard_as_it_can() {
    let mut parts = parts();
    parts.implement.travel = None;
    let found = progressed(&parts, RouteId::RearShaft);
    let arrives = parts.route(RouteId::RearShaft).expect("it fits");
    let arrives = arrives.delivered.likely.to_watts();
    near(found.rate.likely, (arrives - 2000.0) / 720.0);
    assert_eq!(found.ground_speed, None);
}

#[test]
fn a_rotor_just_at_its_lowest_speed_works_and_below_it_doesnt() {
    let mut parts = parts();
    // By the shaft it turns at 600 rpm; a hair more is asked.
    parts.implement.rotor.lowest = AngularSpeed::rpm(599.99);
    let found = progressed(&parts, RouteId::RearShaft);
    assert!(found.rate.likely > 0.0 && !found.too_slow);
    parts.settings.engine_speed = Some(AngularSpeed::rpm(2199.0));
    let found = progressed(&parts, RouteId::RearShaft);
    assert_eq!(found.rate.high, 0.0);
    // A shaft has no flow that could be short.
    assert_eq!(found.limit, None);
    assert!(found.too_slow);
    let found = progressed(&parts, RouteId::MachineHydraulics);
    assert_eq!((found.limit, found.too_slow), (Some(Limit::Flow), true));
}

/// Though some of these come through SI a last digit below.
#[test]
fn a_rotor_that_is_built_for_its_lowest_speed_works() {
    let mut parts = parts();
    for rpm in 300..=1500 {
        let speed = AngularSpeed::rpm(f64::from(rpm));
        parts.implement.rotor.rated = speed;
        parts.implement.rotor.lowest = speed;
        parts.implement.rotor.highest = speed * 1.1;
        let found = progressed(&parts, RouteId::RearShaft);
        assert!(found.rate.likely > 0.0 && !found.too_slow, "{rpm}");
        let run = parts.route(RouteId::RearShaft).expect("it fits");
        let told = |it: &Warning| matches!(it, Warning::RotorTooSlow { .. });
        assert!(!run.warnings.iter().any(told), "{rpm}");
        assert_eq!(run.verdict.likely, Standing::of(run.verdict.ratio), "{rpm}");
    }
}

/// A sheet that has added the steering pump's flow in: 52 − 12 of 52 L/min are left.
#[test]
fn a_summed_steering_flow_is_taken_off_the_pumps_size() {
    let pumped = |parts: &Parts| {
        let run = parts.route(RouteId::MachineHydraulics).expect("it fits");
        match run.ledger.passages[0].gives.rate {
            Rate::Flowing(flow) => flow.to_litres_per_minute(),
            Rate::Turning(_) => panic!("the pump comes first"),
        }
    };
    let mut parts = parts();
    let whole = pumped(&parts);
    parts.machine.circuits[0].steering =
        SteeringShare::Summed(exact(Flow::litres_per_minute(12.0)));
    let left = pumped(&parts);
    assert!(
        (left / whole - 40.0 / 52.0).abs() < 1e-6,
        "{left} of {whole}"
    );
}

#[test]
fn an_influence_spans_from_its_low_to_its_high() {
    let of = |low: f64, high: f64| Influence {
        stage: None,
        figure: FigureName::Relief,
        at_low: Power::kilowatts(low),
        at_high: Power::kilowatts(high),
    };
    near(of(3.0, 8.0).span().to_kilowatts(), 5.0);
    near(of(8.0, 3.0).span().to_kilowatts(), 5.0);
    // Pinned by hand: a rear shaft's only open figures are efficiencies and driving.
    let mut parts = parts();
    parts.machine.engine.net = exact(Power::kilowatts(46.0));
    let run = parts.route(RouteId::RearShaft).expect("it fits");
    let all = influences(&mut parts.joined(RouteId::RearShaft));
    let train = all.first().expect("something is open");
    // The train is 0.83 to 0.90 about 0.86.
    near(train.at_low / run.delivered.likely, 0.83 / 0.86);
    near(train.at_high / run.delivered.likely, 0.90 / 0.86);
}

/// Where a divider's flow isn't known for sure, more of it leaves less, and it is told among what matters.
#[test]
fn an_uncertain_flow_for_steering_is_among_what_moves_the_figure() {
    let mut parts = parts();
    let flows = Spread::new(4.0, 8.0, 12.0, Source::Own).map(Flow::litres_per_minute);
    parts.machine.circuits[0].steering = SteeringShare::FixedPriority(flows);
    let all = influences(&mut parts.joined(RouteId::MachineHydraulics));
    let steering = all
        .iter()
        .find(|it| it.figure == FigureName::SteeringFlow)
        .expect("it is open");
    assert!(steering.at_low > steering.at_high);
}

/// What drag alone holds up stands still within the motor's limit, not above it.
#[test]
fn a_motor_that_may_not_have_the_pressure_to_turn_stays_at_its_highest() {
    let mut parts = parts();
    let highest = Pressure::bar(5.0);
    // Thick oil: what it rubs is more than so little pressure moves.
    parts.settings.oil = Some(Temperature::celsius(-13.0));
    let motor = parts.implement.motor.as_mut().expect("a motor");
    motor.highest_pressure = highest;
    let run = parts.route(RouteId::MachineHydraulics).expect("it fits");
    assert_eq!(run.ledger.stall, Some(Stall::NoPressureLeft));
    let motor = run
        .ledger
        .passages
        .iter()
        .find(|it| it.stage.kind() == StageKind::Motor)
        .expect("the oil comes to it");
    let Quantity::Pressure(pressure) = motor.takes.effort() else {
        panic!("oil drives it");
    };
    assert!(pressure <= highest * (1.0 + 1e-9), "{pressure:?}");
}
