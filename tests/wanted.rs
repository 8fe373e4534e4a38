//! What it would take, on the built-in yard: a case reckoned by hand, and each thing that can be in
//! the way where it must appear and where it must go.

use farend_core::compare::{Outcome, evaluate};
use farend_core::hookup::PtoEnd;
use farend_core::machine::{Machine, Pto};
use farend_core::quantity::{AngularSpeed, Displacement, Flow, Length, Power, Pressure};
use farend_core::route::RouteId;
use farend_core::route::part::{Hookup, NoFit, assemble};
use farend_core::settings::{OilSettings, Settings};
use farend_core::source::Source;
use farend_core::spread::Spread;
use farend_core::stage::gear::{GearKind, GearRole};
use farend_core::standing::Standing;
use farend_core::thermal::heat;
use farend_core::wanted::{Hindrance, Outfit, Wanted, Wish, wanted, wanted_by};
use farend_core::work::{Load, need_for};
use farend_tests::parts::Parts;

fn of(parts: &Parts, route: RouteId, wish: Wish) -> Wanted {
    let Parts {
        machine,
        implement,
        kits,
        settings,
    } = parts;
    wanted_by(route, machine, implement, kits, settings, wish)
}

fn outfit(parts: &Parts, route: RouteId) -> Outfit {
    let outfit = of(parts, route, Wish::Enough).outfit;
    outfit.unwrap_or_else(|why| panic!("{}: {why:?}", route.word()))
}

fn in_the_way(parts: &Parts, route: RouteId) -> Vec<Hindrance> {
    of(parts, route, Wish::Enough)
        .outfit
        .err()
        .unwrap_or_default()
}

/// Holds a value against one reckoned by hand, with four digits.
fn by_hand(what: &str, is: f64, hand: f64) {
    assert!(
        (is / hand - 1.0).abs() < 1e-3,
        "{what}: {is}, by hand {hand}"
    );
}

/// A pump pack in which only gears lose anything, so that a pocket calculator does.
fn without_loss() -> Parts {
    let exact = |part| Spread::exact(part, Source::Own);
    let mut parts = Parts::of("curlew-46", "snow-thrower-150");
    parts.machine.mass = None;
    let motor = parts.implement.motor.as_mut().expect("a motor");
    motor.volumetric = exact(1.0);
    motor.hydro_mechanical = exact(1.0);
    for kit in &mut parts.kits {
        if let Some(pump) = &mut kit.pump {
            pump.volumetric = exact(1.0);
            pump.hydro_mechanical = exact(1.0);
            pump.valve = Spread::exact(Pressure::pascals(1.0), Source::Own);
        }
        if let Some(hoses) = &mut kit.hoses {
            hoses.supply.length = Length::millimetres(1.0);
            hoses.back.length = Length::millimetres(1.0);
            hoses.couplers = 0.0;
            hoses.fittings = 0.0;
        }
    }
    parts
}

/// Efficiencies: chain to the rotor 0.98, spur gears of the box 0.96, PTO train 0.86.
#[test]
fn a_pump_pack_is_sized_as_by_hand() {
    let outfit = outfit(&without_loss(), RouteId::PumpPack);
    // The pump may turn at 2500 rpm: 540·3.8 = 2052 rpm is below, so the fastest box.
    assert_eq!(outfit.box_ratio(), 3.8);
    // 20 kW at the rotor are 20/0.98 = 20.408 kW at the motor. At the kit's 200 bar that is
    // Q = 20.408·600/200 = 61.22 L/min, V = Q/(n·ηv) = 61 220/2052 = 29.84 cm³: the next is 32.
    let (pump, at) = outfit.pump().expect("a pump");
    let size = outfit.kit.pump.as_ref().expect("a pump").displacement;
    assert_eq!(size, Displacement::cubic_centimetres(32.0));
    // Q = V·n·ηv = 32·2052/1000 = 65.66 L/min.
    let flow = at.gives.rate.flowing().expect("oil");
    by_hand("flow", flow.to_litres_per_minute(), 65.66);
    // Which needs p = 20.408·600/65.66 = 186.5 bar only.
    by_hand("relief", pump.relief.likely.to_bar(), 186.5);
    by_hand("relief", outfit.relief().expect("a pump").to_bar(), 186.5);
    // The rotor: 65 660/100·0.75 = 492.5 rpm, above its 480.
    // Bores, d = √(4·Q/(π·v)) with 1.0944e-3 m³/s: at 20 ft/s 15.1 mm, at 15 ft/s 17.5 mm,
    // at 4 ft/s 33.8 mm.
    let lines = outfit.lines.expect("lines");
    let bores = [Some(lines.supply), Some(lines.back), lines.suction];
    assert_eq!(
        bores,
        [16.0, 19.0, 38.0].map(|bore| Some(Length::millimetres(bore)))
    );
    // Three minutes of the flow.
    let tank = outfit.tank.expect("a tank");
    by_hand("tank", tank.usual.to_litres(), 197.0);
    // PTO: 20.408/0.96 = 21.259 kW at 540 rpm, T = 21 259/56.549 = 375.9 N·m.
    let (power, torque) = outfit.pto().expect("a PTO");
    by_hand("PTO power", power.to_kilowatts(), 21.259);
    by_hand("PTO torque", torque.to_newton_metres(), 375.9);
    // Engine: 21.259/0.86 = 24.72 kW.
    by_hand("engine", outfit.engine.to_kilowatts(), 24.72);
}

/// Efficiencies: PTO train 0.86, joint shaft 0.98, spur gears 0.96, bevel gears 0.95.
#[test]
fn a_shaft_is_sized_as_by_hand() {
    let mut parts = Parts::of("gannet-90", "snow-thrower-150");
    parts.machine.mass = None;
    for gear in parts.kits.iter_mut().flat_map(|kit| &mut kit.drive) {
        if gear.role == GearRole::Step(GearKind::JointShaft) {
            gear.efficiency = Spread::exact(0.98, Source::Own);
        }
    }
    // The PTO turns at 1000 rpm and the thrower's rear shaft wants 540.
    assert!(matches!(
        parts.why(RouteId::RearShaft)[..],
        [NoFit::WrongSpeed { .. }]
    ));
    let outfit = outfit(&parts, RouteId::RearShaft);
    assert_eq!(outfit.box_ratio(), 0.54);
    // 20 kW at 600 rpm are 318.3 N·m at the rotor; before the bevel gears 20/0.95 = 21.053 kW at
    // 540 rpm, 372.3 N·m; before the box 21.930 kW at 1000 rpm, 209.4 N·m; before the joint shaft
    // 22.378 kW, 213.7 N·m; at the engine 22.378/0.86 = 26.02 kW.
    let torques: Vec<_> = outfit
        .shafts()
        .map(|(_, torque)| torque.to_newton_metres())
        .collect();
    let hand = [213.7, 209.4, 372.3, 372.3, 318.3];
    assert_eq!(torques.len(), hand.len());
    for (torque, hand) in torques.into_iter().zip(hand) {
        by_hand("torque", torque, hand);
    }
    let (power, _) = outfit.pto().expect("a PTO");
    by_hand("PTO power", power.to_kilowatts(), 22.378);
    by_hand("engine", outfit.engine.to_kilowatts(), 26.02);
    assert_eq!(
        (outfit.lines, outfit.tank, outfit.relief()),
        (None, None, None)
    );
}

#[test]
fn the_lowest_engine_speed_is_where_the_rotor_begins_to_work() {
    // 480 of 600 rpm at the rotor, 2200 rpm of the engine for the PTO's rated speed.
    let parts = Parts::of("curlew-46", "snow-thrower-150");
    let speed = of(&parts, RouteId::RearShaft, Wish::Enough).engine_speed;
    by_hand("engine speed", speed.expect("one").to_rpm(), 1760.0);
    // The engine's highest 2400 rpm are 655 rpm at the rotor.
    let mut parts = parts;
    parts.implement.rotor.lowest = AngularSpeed::rpm(660.0);
    let all = of(&parts, RouteId::RearShaft, Wish::Enough);
    assert_eq!(all.engine_speed, None);
}

fn standing(parts: &Parts, route: RouteId, settings: &Settings) -> Standing {
    let Parts {
        machine,
        implement,
        kits,
        ..
    } = parts;
    match evaluate(route, machine, implement, kits, settings) {
        Outcome::Runs(run) => run.verdict.likely,
        Outcome::NoFit(why) => panic!("{why:?}"),
    }
}

#[test]
fn the_answer_is_taken_over_at_the_routes_own_pump() {
    let parts = Parts::of("curlew-46", "snow-thrower-150");
    for route in [RouteId::MachineHydraulics, RouteId::PumpPack] {
        let all = of(&parts, route, Wish::Ample);
        let turned = all.turned.expect("flow and pressure do it");
        let applied = turned.applied(route, parts.settings);
        let oil = OilSettings {
            flow: Some(turned.flow),
            relief: Some(turned.relief),
        };
        let (there, elsewhere) = match route {
            RouteId::PumpPack => (applied.pack, applied.own),
            _ => (applied.own, applied.pack),
        };
        assert_eq!((there, elsewhere), (oil, OilSettings::default()));
        assert_eq!(applied.engine_speed, Some(turned.engine_speed));
        assert_eq!(standing(&parts, route, &applied), Standing::Ample);
        assert!(standing(&parts, route, &parts.settings) < Standing::Ample);
        // Where the engine's speed alone does it, that is all that is taken over.
        let least = match all.engine_speed {
            None => applied,
            engine_speed => Settings {
                engine_speed,
                ..parts.settings
            },
        };
        assert_eq!(all.applied(parts.settings), Some(least));
        assert_eq!(standing(&parts, route, &least), Standing::Ample);
    }
}

#[test]
fn a_pump_packs_oil_stays_below_its_limit_for_good() {
    let parts = Parts::of("curlew-46", "snow-thrower-150");
    let outfit = outfit(&parts, RouteId::PumpPack);
    assert!(outfit.tank.expect("a tank").cooler_duty > Power::ZERO);
    let settles = |kit| {
        let hookup = Hookup {
            machine: &parts.machine,
            implement: &parts.implement,
            kit: Some(kit),
            settings: &outfit.settings,
        };
        let joined = assemble(RouteId::PumpPack.parts(), hookup).expect("it fits");
        let need = need_for(&parts.implement, &outfit.settings).likely;
        let load = Load::new(&parts.implement, need);
        let heat = heat(&joined, load, outfit.settings.air()).expect("oil");
        let [cautious, _] = heat.settling;
        let above = cautious.at.map(|at| (at - heat.limit).to_kelvins());
        above.is_some_and(|above| above < 0.1)
    };
    assert!(settles(&outfit.kit));
    let mut without = outfit.kit.clone();
    without.pump.as_mut().expect("a pump").reservoir.cooler = None;
    assert!(!settles(&without));
}

#[test]
fn what_the_machine_lacks_no_setting_brings() {
    let mut parts = Parts::of("gannet-90", "snow-thrower-150");
    let lacks = [Hindrance::NoFit(NoFit::NoMidPto)];
    assert_eq!(in_the_way(&parts, RouteId::MidShaft), lacks);
    parts.machine.mid_pto = Some(Pto {
        rated: AngularSpeed::rpm(2000.0),
        engine_speed: AngularSpeed::rpm(2000.0),
        tested: None,
        rating: None,
        end: PtoEnd::default(),
    });
    assert_eq!(in_the_way(&parts, RouteId::MidShaft), []);
    // A pump that may hardly turn fits no box.
    for pump in parts.kits.iter_mut().filter_map(|kit| kit.pump.as_mut()) {
        pump.highest = AngularSpeed::rpm(1400.0);
    }
    let why = in_the_way(&parts, RouteId::PumpPack);
    assert!(matches!(
        why[..],
        [Hindrance::NoFit(NoFit::PumpTooFast { .. })]
    ));
}

#[test]
fn a_weak_engine_is_told_with_what_it_would_need() {
    let mut parts = Parts::of("plover-28", "snow-thrower-150");
    for route in [
        RouteId::TurnedForward,
        RouteId::MachineHydraulics,
        RouteId::PumpPack,
    ] {
        let why = in_the_way(&parts, route);
        let [Hindrance::EngineTooWeak { at, needs, has }] = why[..] else {
            panic!("{}: {why:?}", route.word());
        };
        assert_eq!(has, parts.machine.engine.net_at(at).likely);
        assert!(needs > has);
    }
    // The PTO's tested power would be a smaller part of a stronger engine's.
    let pto = parts.machine.rear_pto.as_mut().expect("a PTO");
    pto.tested = None;
    let with = |parts: &mut Parts, part: f64| {
        let engine = &mut parts.machine.engine;
        engine.net = engine.net.map(|power| power * part);
        in_the_way(parts, RouteId::TurnedForward)
    };
    let why = with(&mut parts, 0.9);
    let [Hindrance::EngineTooWeak { needs, has, .. }] = why[..] else {
        panic!("{why:?}");
    };
    // At another speed a little less may do.
    assert_ne!(with(&mut parts, needs / has * 0.95), []);
    assert_eq!(with(&mut parts, 1.001 / 0.95), []);
}

#[test]
fn a_weak_shaft_is_told_with_what_it_would_have_to_bear() {
    let mut parts = Parts::of("curlew-46", "snow-thrower-150");
    let rating = |machine: &mut Machine, kilowatts| {
        let rating = Spread::exact(Power::kilowatts(kilowatts), Source::Own);
        machine.rear_pto.as_mut().expect("a PTO").rating = Some(rating);
    };
    rating(&mut parts.machine, 15.0);
    for route in [RouteId::RearShaft, RouteId::PumpPack] {
        let why = in_the_way(&parts, route);
        let [
            Hindrance::ShaftTooWeak {
                shaft,
                needs,
                bears,
            },
        ] = why[..]
        else {
            panic!("{}: {why:?}", route.word());
        };
        assert_eq!(shaft, GearRole::PtoTrain);
        // 15 kW at 540 rpm.
        by_hand("torque", bears.to_newton_metres(), 265.3);
        assert!(needs > bears);
    }
    let [Hindrance::ShaftTooWeak { needs, bears, .. }] = in_the_way(&parts, RouteId::RearShaft)[..]
    else {
        panic!("a weak shaft");
    };
    rating(&mut parts.machine, 15.0 * (needs / bears) * 1.001);
    assert_eq!(in_the_way(&parts, RouteId::RearShaft), []);
}

#[test]
fn a_motor_for_too_little_flow_is_told_with_another_that_does() {
    let mut parts = Parts::of("puffin-62", "snow-thrower-150");
    assert_eq!(in_the_way(&parts, RouteId::SkidSteer), []);
    let flow = |parts: &mut Parts, litres_per_minute| {
        let motor = parts.implement.motor.as_mut().expect("a motor");
        motor.highest_flow = Flow::litres_per_minute(litres_per_minute);
    };
    // At 480 rpm of the rotor the motor's 100 cm³ pass 64 L/min.
    flow(&mut parts, 62.0);
    let why = in_the_way(&parts, RouteId::SkidSteer);
    let [
        Hindrance::MotorFlow {
            needs,
            highest,
            instead,
        },
    ] = why[..]
    else {
        panic!("{why:?}");
    };
    assert!(needs.to_litres_per_minute() > 64.0 && needs.to_litres_per_minute() < 75.0);
    by_hand("flow", highest.to_litres_per_minute(), 62.0);
    let other = instead.expect("another motor");
    assert!(other < Displacement::cubic_centimetres(100.0));
    flow(&mut parts, needs.to_litres_per_minute() * 1.001);
    assert_eq!(in_the_way(&parts, RouteId::SkidSteer), []);
    flow(&mut parts, 62.0);
    parts
        .implement
        .motor
        .as_mut()
        .expect("a motor")
        .displacement = other;
    assert_eq!(in_the_way(&parts, RouteId::SkidSteer), []);
}

#[test]
fn a_motor_for_too_little_pressure_is_told_with_another_that_does() {
    let mut parts = Parts::of("puffin-62", "snow-thrower-150");
    let pressure = |parts: &mut Parts, pressure| {
        let motor = parts.implement.motor.as_mut().expect("a motor");
        motor.highest_pressure = pressure;
    };
    pressure(&mut parts, Pressure::bar(130.0));
    let why = in_the_way(&parts, RouteId::SkidSteer);
    let [
        Hindrance::MotorPressure {
            needs,
            highest,
            instead,
        },
    ] = why[..]
    else {
        panic!("{why:?}");
    };
    assert_eq!(highest, Pressure::bar(130.0));
    let other = instead.expect("another motor");
    assert!(other > Displacement::cubic_centimetres(100.0));
    pressure(&mut parts, needs);
    assert_eq!(in_the_way(&parts, RouteId::SkidSteer), []);
    pressure(&mut parts, Pressure::bar(130.0));
    parts
        .implement
        .motor
        .as_mut()
        .expect("a motor")
        .displacement = other;
    assert_eq!(in_the_way(&parts, RouteId::SkidSteer), []);
}

#[test]
fn a_motor_that_no_flow_turns_fast_enough_is_told() {
    let mut parts = Parts::of("puffin-62", "snow-thrower-150");
    let motor = parts.implement.motor.as_mut().expect("a motor");
    // At 640 rpm: 448 L/min, and 400 can be set.
    motor.displacement = Displacement::cubic_centimetres(700.0);
    motor.highest_flow = Flow::litres_per_minute(1000.0);
    let why = in_the_way(&parts, RouteId::SkidSteer);
    let [
        Hindrance::MotorFlow {
            needs,
            highest,
            instead,
        },
    ] = why[..]
    else {
        panic!("{why:?}");
    };
    by_hand("needs", needs.to_litres_per_minute(), 448.0);
    by_hand("highest", highest.to_litres_per_minute(), 400.0);
    let motor = parts.implement.motor.as_mut().expect("a motor");
    motor.displacement = instead.expect("a smaller one");
    assert_eq!(in_the_way(&parts, RouteId::SkidSteer), []);
}

#[test]
fn a_rotor_that_must_not_slow_down_at_all_is_brought_there_by_nothing() {
    let mut parts = Parts::of("puffin-62", "snow-thrower-150");
    let slowed = |parts: &mut Parts, part| {
        let rotor = &mut parts.implement.rotor;
        rotor.highest = rotor.rated;
        rotor.lowest = rotor.rated * part;
        in_the_way(parts, RouteId::SkidSteer)
    };
    // The flow is held where the rotor has its highest speed without load: what leaks slows it.
    assert_eq!(slowed(&mut parts, 1.0), [Hindrance::NoSize]);
    assert_eq!(slowed(&mut parts, 0.9), []);
}

#[test]
fn settings_that_are_out_of_range_are_refused() {
    let mut parts = Parts::of("puffin-62", "snow-thrower-150");
    parts.settings.own.relief = Some(Pressure::bar(1000.0));
    let Parts {
        machine,
        implement,
        kits,
        settings,
    } = &parts;
    let faults = wanted(machine, implement, kits, settings, Wish::Enough);
    assert_eq!(faults.expect_err("a fault").len(), 1);
    let all = wanted(machine, implement, kits, &Settings::default(), Wish::Enough);
    let routes: Vec<_> = all
        .expect("good settings")
        .into_iter()
        .map(|it| it.route)
        .collect();
    assert_eq!(routes, RouteId::ALL);
}
