//! Items of shafts. Limits: 15°, 6 in and 2 in by a driveline maker's page, 25° and 45° by a
//! forum's copy of a manual, the direction by ISO 500-1:2014, 4.2; 3 % of speed is this project's
//! judgement; what jams is common practice, no source.

use crate::{Row, parts};
use farend_core::fit::{Check, Judgement};
use farend_core::hookup::Turns;
use farend_core::implement::{ImplementKind, InputShaft};
use farend_core::kit::Kit;
use farend_core::machine::Pto;
use farend_core::physics::shaft::ShaftType;
use farend_core::quantity::{AngularSpeed, Length, Power, Torque};
use farend_core::route::RouteId;
use farend_core::source::Source;
use farend_core::spread::Spread;
use farend_core::stage::gear::Gear;
use farend_tests::item_kind::ItemKind;
use farend_tests::parts::Parts;

use ItemKind::{
    Angle, Direction, FarEnd, InputSpeed, LiftAngle, Missing, Overlap, PtoEnd, ShaftTorque,
    SlipClutch,
};
use RouteId::{MachineHydraulics, MidShaft, PumpPack, RearShaft, TurnedForward};

const PASS: Option<Judgement> = Some(Judgement::Pass);
const ADVICE: Option<Judgement> = Some(Judgement::Advice);
const QUESTION: Option<Judgement> = Some(Judgement::Question);
const STOP: Option<Judgement> = Some(Judgement::Stop);

fn rear_pto(parts: &mut Parts) -> &mut Pto {
    parts.machine.rear_pto.as_mut().expect("a rear PTO")
}

fn mid_pto(parts: &mut Parts) -> &mut Pto {
    parts.machine.mid_pto.as_mut().expect("a mid PTO")
}

fn kits(parts: &mut Parts, change: impl Fn(&mut Kit)) {
    parts.kits.iter_mut().for_each(change);
}

fn gears(parts: &mut Parts, change: impl Fn(&mut Gear)) {
    kits(parts, |kit| kit.drive.iter_mut().for_each(&change));
}

fn inputs(parts: &mut Parts, change: impl Fn(&mut InputShaft)) {
    parts.implement.shafts.iter_mut().for_each(change);
}

fn bent(parts: &mut Parts, degrees: f64) {
    gears(parts, |gear| gear.angle = Some(degrees.to_radians()));
}

fn slipping(parts: &mut Parts, kind: ImplementKind, slips: Option<f64>) {
    parts.implement.kind = kind;
    kits(parts, |kit| kit.slips = slips.map(Torque::newton_metres));
}

/// The implement's shaft so far above the PTO's, in metres, with the hitch lowered and lifted, and
/// 1 m behind it.
fn travels(parts: &mut Parts, lowered: f64, lifted: f64) {
    let end = &mut rear_pto(parts).end;
    (end.height, end.ahead) = (Some(Length::ZERO), Some(Length::metres(1.0)));
    inputs(parts, |input| {
        (input.end.above, input.end.behind) = (Some(Length::ZERO), Some(Length::ZERO));
    });
    let hitch = parts.machine.hitch.as_mut().expect("a hitch");
    hitch.lowest = Some(Length::metres(lowered));
    hitch.highest = Some(Length::metres(lifted));
}

/// A shaft of these lengths, in metres, that is 1 m long at its shortest and 1.25 m (0.75 m down)
/// at its longest.
fn telescopes(parts: &mut Parts, closed: f64, open: f64) {
    travels(parts, -0.75, 0.1);
    kits(parts, |kit| {
        kit.shaft.closed = Some(Length::metres(closed));
        kit.shaft.open = Some(Length::metres(open));
    });
}

pub const ROWS: &[Row] = &[
    (Missing, RearShaft, None, |_| {}),
    (Missing, RearShaft, STOP, |it| it.machine.rear_pto = None),
    (InputSpeed, RearShaft, PASS, |_| {}),
    (InputSpeed, RearShaft, PASS, |it| {
        rear_pto(it).rated = AngularSpeed::rpm(540.0 * 1.029);
    }),
    (InputSpeed, RearShaft, ADVICE, |it| {
        rear_pto(it).rated = AngularSpeed::rpm(540.0 * 1.031);
    }),
    (InputSpeed, RearShaft, PASS, |it| {
        rear_pto(it).rated = AngularSpeed::rpm(540.0 * 0.971);
    }),
    (InputSpeed, RearShaft, ADVICE, |it| {
        rear_pto(it).rated = AngularSpeed::rpm(540.0 * 0.969);
    }),
    (InputSpeed, PumpPack, None, |_| {}),
    (PtoEnd, RearShaft, PASS, |_| {}),
    (PtoEnd, RearShaft, STOP, |it| {
        rear_pto(it).end.shaft = Some(ShaftType::Two);
    }),
    // What counts is the gear that it runs in.
    (PtoEnd, RearShaft, STOP, |it| {
        it.machine.economy_pto = it.machine.rear_pto.clone();
        it.settings.economy = true;
        let economy = it.machine.economy_pto.as_mut();
        economy.expect("just set").end.shaft = Some(ShaftType::Two);
    }),
    (PtoEnd, PumpPack, QUESTION, |it| {
        rear_pto(it).end.shaft = None;
    }),
    (PtoEnd, TurnedForward, QUESTION, |it| {
        kits(it, |kit| kit.shaft.pto_end = None);
    }),
    (PtoEnd, MachineHydraulics, None, |_| {}),
    (FarEnd, RearShaft, PASS, |_| {}),
    (FarEnd, TurnedForward, STOP, |it| {
        kits(it, |kit| kit.shaft.far_end = Some(ShaftType::Three));
    }),
    (FarEnd, RearShaft, QUESTION, |it| {
        inputs(it, |input| input.end.shaft = None);
    }),
    (FarEnd, RearShaft, QUESTION, |it| {
        kits(it, |kit| kit.shaft.far_end = None);
    }),
    (FarEnd, PumpPack, None, |_| {}),
    (Direction, RearShaft, PASS, |_| {}),
    (Direction, RearShaft, STOP, |it| {
        inputs(it, |input| input.end.turns = Some(Turns::Anticlockwise));
    }),
    (Direction, RearShaft, STOP, |it| {
        kits(it, |kit| kit.shaft.reverses = Some(true));
    }),
    (Direction, RearShaft, PASS, |it| {
        kits(it, |kit| kit.shaft.reverses = Some(true));
        inputs(it, |input| input.end.turns = Some(Turns::Anticlockwise));
    }),
    // Every rear PTO turns clockwise unless the yard says otherwise; a mid PTO may turn either way.
    (Direction, TurnedForward, PASS, |it| {
        rear_pto(it).end.turns = None;
    }),
    (Direction, RearShaft, STOP, |it| {
        rear_pto(it).end.turns = Some(Turns::Anticlockwise);
    }),
    (Direction, MidShaft, PASS, |_| {}),
    (Direction, MidShaft, QUESTION, |it| {
        mid_pto(it).end.turns = None;
    }),
    (Direction, RearShaft, QUESTION, |it| {
        kits(it, |kit| kit.shaft.reverses = None);
    }),
    (Direction, RearShaft, QUESTION, |it| {
        inputs(it, |input| input.end.turns = None);
    }),
    (ShaftTorque, RearShaft, PASS, |_| {}),
    (ShaftTorque, RearShaft, ADVICE, |it| {
        inputs(it, |input| input.rating = Some(exact(10.0)));
    }),
    (ShaftTorque, RearShaft, QUESTION, |it| {
        inputs(it, |input| input.rating = None);
    }),
    (ShaftTorque, RearShaft, QUESTION, |it| {
        gears(it, |gear| gear.rating = None);
    }),
    (ShaftTorque, PumpPack, QUESTION, |it| {
        rear_pto(it).rating = None;
    }),
    (ShaftTorque, MachineHydraulics, None, |_| {}),
    (SlipClutch, RearShaft, PASS, |it| {
        slipping(it, ImplementKind::Thrower, Some(900.0));
    }),
    (SlipClutch, RearShaft, QUESTION, |it| {
        slipping(it, ImplementKind::Thrower, None);
    }),
    // Nobody knows what it is, so it may jam.
    (SlipClutch, RearShaft, QUESTION, |it| {
        slipping(it, ImplementKind::Other, None);
    }),
    (SlipClutch, RearShaft, None, |it| {
        slipping(it, ImplementKind::Broom, None);
    }),
    (SlipClutch, RearShaft, None, |it| {
        slipping(it, ImplementKind::Mower, None);
    }),
    // A relief valve lets oil past.
    (SlipClutch, PumpPack, None, |it| {
        slipping(it, ImplementKind::Thrower, None);
    }),
    (Angle, RearShaft, PASS, |it| bent(it, 14.9)),
    (Angle, RearShaft, ADVICE, |it| bent(it, 15.1)),
    (Angle, MidShaft, ADVICE, |it| bent(it, 24.9)),
    (Angle, MidShaft, STOP, |it| bent(it, 25.1)),
    (Angle, MidShaft, QUESTION, |it| {
        gears(it, |gear| gear.angle = None);
    }),
    // Of two joint shafts the one that isn't known doesn't excuse the other.
    (Angle, MidShaft, STOP, |it| {
        bent(it, 26.0);
        kits(it, |kit| {
            let another = kit.drive.first().cloned();
            kit.drive.extend(another.map(|gear| Gear {
                angle: None,
                ..gear
            }));
        });
    }),
    (Angle, MidShaft, QUESTION, |it| {
        kits(it, |kit| {
            let another = kit.drive.first().cloned();
            kit.drive.extend(another.map(|gear| Gear {
                angle: None,
                ..gear
            }));
        });
    }),
    // The hitch says it.
    (Angle, RearShaft, None, |it| {
        gears(it, |gear| gear.angle = None);
    }),
    // tan 15° = 0.268, tan 25° = 0.466, tan 45° = 1.
    (LiftAngle, RearShaft, PASS, |it| travels(it, -0.26, 0.46)),
    (LiftAngle, RearShaft, ADVICE, |it| travels(it, -0.27, 0.46)),
    (LiftAngle, RearShaft, ADVICE, |it| travels(it, -0.46, 0.46)),
    (LiftAngle, RearShaft, STOP, |it| travels(it, -0.47, 0.46)),
    (LiftAngle, RearShaft, ADVICE, |it| travels(it, -0.26, 0.47)),
    (LiftAngle, RearShaft, ADVICE, |it| travels(it, -0.26, 0.99)),
    (LiftAngle, RearShaft, STOP, |it| travels(it, -0.26, 1.01)),
    (LiftAngle, RearShaft, QUESTION, |it| {
        it.machine.hitch = None;
    }),
    (LiftAngle, RearShaft, QUESTION, |it| {
        rear_pto(it).end.height = None;
    }),
    (LiftAngle, RearShaft, QUESTION, |it| {
        inputs(it, |input| input.end.behind = None);
    }),
    (LiftAngle, TurnedForward, None, |_| {}),
    // 6 in = 0.1524 m and 2 in = 0.0508 m.
    (Overlap, RearShaft, PASS, |it| {
        telescopes(it, 0.9491, 1.4025);
    }),
    (Overlap, RearShaft, STOP, |it| {
        telescopes(it, 0.9491, 1.4023);
    }),
    (Overlap, RearShaft, ADVICE, |it| {
        telescopes(it, 0.9493, 1.4025);
    }),
    (Overlap, RearShaft, ADVICE, |it| {
        telescopes(it, 0.9999, 1.4025);
    }),
    (Overlap, RearShaft, STOP, |it| {
        telescopes(it, 1.0001, 1.4025);
    }),
    (Overlap, RearShaft, QUESTION, |it| {
        kits(it, |kit| kit.shaft.open = None);
    }),
    (Overlap, RearShaft, QUESTION, |it| {
        rear_pto(it).end.ahead = None;
    }),
    (Overlap, MidShaft, None, |_| {}),
];

fn exact(kilowatts: f64) -> Spread<Power> {
    Spread::exact(Power::kilowatts(kilowatts), Source::Own)
}

/// The torques of a route's shafts as they are looked at: what can come and what may be taken.
fn torques(parts: &Parts, route: RouteId) -> Vec<(Torque, Option<Torque>)> {
    let items = parts.items(route).into_iter();
    let torques = items.filter_map(|item| match item.check {
        Check::ShaftTorque { can, may } => Some((can, may)),
        _ => None,
    });
    torques.collect()
}

fn near(one: Torque, other: Torque) -> bool {
    (one / other - 1.0).abs() < 1e-9
}

/// All of the engine's power over the PTO train's 0.86, with a lossless shaft after it, at 540 rpm:
/// however little of it the route takes.
#[test]
fn a_shafts_torque_is_that_of_all_the_engines_power() {
    let mut parts = parts(RearShaft);
    gears(&mut parts, |gear| {
        gear.efficiency = Spread::exact(1.0, Source::Own);
        gear.rating = None;
    });
    // Far less than the engine has.
    inputs(&mut parts, |input| input.rating = Some(exact(10.0)));
    let run = parts.route(RearShaft).expect("it fits");
    assert!(run.ledger.taken() < run.ledger.available * 0.5);
    let can = run.ledger.available * 0.86 / AngularSpeed::rpm(540.0);
    // The input's, and that of the joint shaft, which isn't rated.
    let input = Power::kilowatts(10.0) / AngularSpeed::rpm(540.0);
    let found = torques(&parts, RearShaft);
    let [(first, Some(may)), (second, None)] = found[..] else {
        panic!("{found:?}");
    };
    assert!(near(first, can) && near(may, input), "{found:?}");
    assert!(near(second, can), "{found:?}");
}

/// Behind lossless gears that turn 540 into 540·1.852 rpm.
#[test]
fn an_input_that_isnt_rated_is_asked_for_with_the_torque_that_comes_to_it() {
    let mut parts = parts(TurnedForward);
    gears(&mut parts, |gear| {
        gear.efficiency = Spread::exact(1.0, Source::Own);
    });
    inputs(&mut parts, |input| input.rating = None);
    let run = parts.route(TurnedForward).expect("it fits");
    let can = run.ledger.available * 0.86 / AngularSpeed::rpm(540.0 * 1.852);
    let found = torques(&parts, TurnedForward);
    let [(_, Some(_)), (asked, None)] = found[..] else {
        panic!("{found:?}");
    };
    assert!(near(asked, can), "{found:?}");
}
