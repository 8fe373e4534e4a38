//! Kits that fit better than the one that delivers most.

use farend_core::fit::{Check, Judgement, gravest, other_kits};
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
    kit(&mut parts, heavy).shaft.pto_end = None;
    assert_eq!(judged(&parts, route), Judgement::Question);
    assert_eq!(others(&parts, route), [(light.to_owned(), before)]);
    let found = parts.look(route, |look| other_kits(&look, &parts.kits));
    let mut alone = chipper();
    alone.kits.retain(|kit| kit.id == light);
    assert_eq!(Some(&found[0].run), alone.route(route).as_ref().ok());
    kit(&mut parts, light).shaft.pto_end = None;
    assert_eq!(others(&parts, route), []);
}

#[test]
fn a_kit_that_fits_is_taken_before_one_that_delivers_more() {
    let mut parts = chipper();
    let route = RouteId::RearShaft;
    let [heavy, light] = ["joint-shaft-heavy", "joint-shaft"];
    let before = judged(&parts, route);
    kit(&mut parts, heavy).shaft.pto_end = Some(ShaftType::Two);
    assert_eq!(parts.route(route).expect("it fits").kit, light);
    assert_eq!(judged(&parts, route), before);
    assert_eq!(others(&parts, route), []);
    // Whichever stands first.
    parts.kits.reverse();
    assert_eq!(parts.route(route).expect("it fits").kit, light);
    // What must be asked about it doesn't stop it.
    kit(&mut parts, light).shaft.far_end = None;
    assert_eq!(parts.route(route).expect("it fits").kit, light);
    // Where none fits it's the one that delivers most, and the fit says why not.
    kit(&mut parts, light).shaft.pto_end = Some(ShaftType::Two);
    assert_eq!(parts.route(route).expect("it runs").kit, heavy);
    assert_eq!(judged(&parts, route), Judgement::Stop);
    assert_eq!(others(&parts, route), []);
}

#[test]
fn a_kit_that_doesnt_serve_the_route_is_never_named() {
    let route = RouteId::RearShaft;
    let asking = || {
        let mut parts = chipper();
        kit(&mut parts, "joint-shaft-heavy").shaft.pto_end = None;
        parts
    };
    assert_eq!(others(&asking(), route).len(), 1);
    let mut parts = asking();
    kit(&mut parts, "joint-shaft").routes = vec![RouteId::TurnedForward];
    assert_eq!(others(&parts, route), []);
    let mut parts = asking();
    kit(&mut parts, "joint-shaft").pto_speed = Some(AngularSpeed::rpm(1000.0));
    assert_eq!(others(&parts, route), []);
}

#[test]
fn the_best_judged_stands_first_then_the_one_that_delivers_most() {
    let mut parts = chipper();
    // The joint shaft lies level, so that nothing else is advised.
    let pto = parts
        .machine
        .rear_pto
        .as_ref()
        .expect("a rear PTO")
        .end
        .height;
    let input = parts.implement.shafts[0].end.above;
    let level = pto.zip(input).map(|(pto, input)| pto - input);
    let hitch = parts.machine.hitch.as_mut().expect("a hitch");
    (hitch.lowest, hitch.highest) = (level, level);
    let route = RouteId::RearShaft;
    kit(&mut parts, "joint-shaft-heavy").shaft.pto_end = None;
    // Strong enough for all of the engine's power, of which it loses a little more.
    let light = kit(&mut parts, "joint-shaft");
    for gear in &mut light.drive {
        let (torque, _) = gear.rating.as_mut().expect("it is rated");
        *torque = torque.map(|torque| torque * 2.0);
        gear.efficiency = gear.efficiency.map(|it| it * 0.99);
    }
    let light = light.clone();
    let usual = light.shaft.closed;
    // Pushed together by the hitch it comes within a centimetre of its end.
    let items = parts.items(route);
    let left = items.iter().find_map(|item| match item.check {
        Check::Overlap { least } => least.map(|(_, left)| left),
        _ => None,
    });
    let nearly = usual
        .zip(left)
        .map(|(closed, left)| closed + left - Length::metres(0.01));
    for (id, efficiency, closed) in [
        ("weaker", 0.95, usual),
        ("long", 1.0, nearly),
        ("weakest", 0.9, usual),
    ] {
        let mut kit = light.clone();
        kit.id = id.to_owned();
        kit.shaft.closed = closed;
        for gear in &mut kit.drive {
            gear.efficiency = gear.efficiency.map(|it| it * efficiency);
        }
        parts.kits.insert(0, kit);
    }
    let found: Vec<_> = others(&parts, route).into_iter().map(|it| it.0).collect();
    assert_eq!(found, ["joint-shaft", "weaker", "weakest", "long"]);
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
