//! Kits that fit better than the one that delivers most.

use farend_core::fit::{Judgement, gravest, other_kits};
use farend_core::kit::Kit;
use farend_core::physics::shaft::ShaftType;
use farend_core::quantity::{AngularSpeed, Conductance, Length};
use farend_core::route::RouteId;
use farend_tests::parts::Parts;

/// A wood chipper that a heavy and a light joint shaft turn: by the heavy one more arrives. All is
/// known of both, and nothing is in the way.
fn chipper() -> Parts {
    let mut parts = Parts::of("heron-68", "wood-chipper-15");
    parts.kits.retain(|kit| kit.id.starts_with("joint-shaft"));
    for kit in &mut parts.kits {
        kit.shaft.closed = Some(Length::metres(0.3));
        kit.shaft.open = Some(Length::metres(2.0));
    }
    let hitch = parts.machine.hitch.as_mut().expect("a hitch");
    hitch.category = parts.implement.mount.category;
    hitch.highest = Some(Length::metres(0.6));
    parts
}

fn kit<'a>(parts: &'a mut Parts, id: &str) -> &'a mut Kit {
    let mut kits = parts.kits.iter_mut();
    kits.find(|kit| kit.id == id).expect("a kit of the demo")
}

/// The identifiers and judgements of what fits better.
fn others(parts: &Parts, route: RouteId) -> Vec<(String, Judgement)> {
    let found = parts.look(route, |look| other_kits(&look, &parts.kits));
    let others = found.into_iter();
    others.map(|it| (it.run.kit, it.gravest)).collect()
}

fn judged(parts: &Parts, route: RouteId) -> Judgement {
    gravest(&parts.items(route))
}

#[test]
fn a_kit_that_fits_better_is_named_with_its_own_run() {
    let mut parts = chipper();
    let route = RouteId::RearShaft;
    let [heavy, light] = ["joint-shaft-heavy", "joint-shaft"];
    assert_eq!(parts.route(route).expect("it fits").kit, heavy);
    let before = judged(&parts, route);
    assert!(before < Judgement::Question, "{:#?}", parts.items(route));
    // Both are judged alike.
    assert_eq!(others(&parts, route), []);
    kit(&mut parts, heavy).shaft.pto_end = Some(ShaftType::Two);
    assert_eq!(judged(&parts, route), Judgement::Stop);
    assert_eq!(others(&parts, route), [(light.to_owned(), before)]);
    let found = parts.look(route, |look| other_kits(&look, &parts.kits));
    let mut alone = chipper();
    alone.kits.retain(|kit| kit.id == light);
    assert_eq!(Some(&found[0].run), alone.route(route).as_ref().ok());
    // One with a question is still better than one with a stop, and not than one with a question.
    kit(&mut parts, light).shaft.pto_end = None;
    let named = (light.to_owned(), Judgement::Question);
    assert_eq!(others(&parts, route), [named]);
    kit(&mut parts, heavy).shaft.pto_end = None;
    assert_eq!(others(&parts, route), []);
}

#[test]
fn a_kit_that_doesnt_serve_the_route_is_never_named() {
    let route = RouteId::RearShaft;
    let stopped = || {
        let mut parts = chipper();
        kit(&mut parts, "joint-shaft-heavy").shaft.pto_end = Some(ShaftType::Two);
        parts
    };
    assert_eq!(others(&stopped(), route).len(), 1);
    let mut parts = stopped();
    kit(&mut parts, "joint-shaft").routes = vec![RouteId::TurnedForward];
    assert_eq!(others(&parts, route), []);
    let mut parts = stopped();
    kit(&mut parts, "joint-shaft").pto_speed = Some(AngularSpeed::rpm(1000.0));
    assert_eq!(others(&parts, route), []);
}

#[test]
fn the_best_judged_stands_first_then_the_one_that_delivers_most() {
    let mut parts = chipper();
    let route = RouteId::RearShaft;
    kit(&mut parts, "joint-shaft-heavy").shaft.pto_end = Some(ShaftType::Two);
    let light = kit(&mut parts, "joint-shaft").clone();
    for (id, rating, pto_end) in [
        ("weaker", 0.8, light.shaft.pto_end),
        ("open", 1.05, None),
        ("weakest", 0.7, light.shaft.pto_end),
    ] {
        let mut kit = light.clone();
        kit.id = id.to_owned();
        kit.shaft.pto_end = pto_end;
        for gear in &mut kit.drive {
            let (torque, _) = gear.rating.as_mut().expect("it is rated");
            *torque = torque.map(|torque| torque * rating);
        }
        parts.kits.insert(0, kit);
    }
    let found: Vec<_> = others(&parts, route).into_iter().map(|it| it.0).collect();
    assert_eq!(found, ["joint-shaft", "weaker", "weakest", "open"]);
}

/// Of two like pump packs the one with longer hoses delivers less; it is better only where its oil
/// stays cooler.
#[test]
fn another_kit_is_judged_by_its_own_oil() {
    let route = RouteId::PumpPack;
    let mut parts = Parts::of("curlew-46", "snow-thrower-150");
    parts.kits.retain(|kit| kit.id == "pump-pack-540");
    let mut other = parts.kits[0].clone();
    other.id = "long".to_owned();
    let hoses = other.hoses.as_mut().expect("hoses");
    hoses.supply.length = Length::metres(8.0);
    parts.kits.push(other);
    assert_eq!(judged(&parts, route), Judgement::Advice);
    assert_eq!(others(&parts, route), []);
    let pump = kit(&mut parts, "long").pump.as_mut().expect("a pump");
    pump.reservoir.cooler = Some(Conductance::watts_per_kelvin(5000.0));
    let cool = ("long".to_owned(), Judgement::Pass);
    assert_eq!(others(&parts, route), [cool]);
}
