//! A large yard loads, has what a yard can have, and is the same wherever it's made.

use farend_bench::large::large;
use farend_core::compare::compare;
use farend_core::implement::ImplementKind;
use farend_core::machine::{MachineKind, Outlet, SteeringPolicy, SteeringShare, Supply};
use farend_core::route::RouteId;
use farend_core::settings::Settings;
use farend_core::yard::Yard;
use farend_core::yard::rules::LARGEST_FILE;
use farend_tests::load;
use std::collections::BTreeSet;

const SEED: u64 = 1;

fn policy(share: &SteeringShare) -> SteeringPolicy {
    match share {
        SteeringShare::SeparatePump => SteeringPolicy::SeparatePump,
        SteeringShare::FixedPriority(_) => SteeringPolicy::FixedPriority,
        SteeringShare::LoadSensingPriority => SteeringPolicy::LoadSensingPriority,
        SteeringShare::Summed(_) => SteeringPolicy::Summed,
    }
}

#[test]
fn five_hundred_machines_and_two_hundred_implements_load() {
    let text = large(500, 200, 24, SEED);
    assert!(text.len() <= LARGEST_FILE, "{} bytes", text.len());
    let yard = load(&text);
    let sizes = [yard.machines.len(), yard.implements.len(), yard.kits.len()];
    assert_eq!(sizes, [500, 200, 24]);
}

/// No draw breaks a rule.
#[test]
fn other_seeds_load_too() {
    for seed in 2..8 {
        load(&large(500, 300, 100, seed));
    }
}

#[test]
fn it_has_all_that_a_yard_can_have() {
    let yard = load(&large(500, 200, 24, SEED));
    let kilowatts = yard
        .machines
        .iter()
        .map(|it| it.engine.net.likely.to_kilowatts());
    let (least, most) = kilowatts.fold((f64::MAX, 0.0_f64), |(least, most), it| {
        (least.min(it), most.max(it))
    });
    assert!(
        (12.0..15.0).contains(&least) && (115.0..=120.0).contains(&most),
        "{least} to {most}"
    );

    let kinds: BTreeSet<_> = yard.machines.iter().map(|machine| machine.kind).collect();
    assert_eq!(kinds.len(), MachineKind::ALL.len());
    let circuits = || yard.machines.iter().flat_map(|machine| &machine.circuits);
    let outlets: BTreeSet<_> = circuits().map(|circuit| circuit.outlet).collect();
    assert_eq!(outlets.len(), Outlet::ALL.len());
    let supplies: BTreeSet<_> = circuits().map(|circuit| circuit.supply).collect();
    assert_eq!(supplies.len(), Supply::ALL.len());
    let policies: BTreeSet<_> = circuits()
        .map(|circuit| policy(&circuit.steering))
        .collect();
    assert_eq!(policies.len(), SteeringPolicy::ALL.len());
    let kinds: BTreeSet<_> = yard.implements.iter().map(|it| it.kind).collect();
    assert_eq!(kinds.len(), ImplementKind::ALL.len());
}

/// How often a route is the one that delivers most, and how many pairs have no route at all.
fn best(yard: &Yard) -> (BTreeSet<RouteId>, usize) {
    let mut none = 0;
    let mut routes = BTreeSet::new();
    for machine in &yard.machines {
        for implement in &yard.implements {
            let all = compare(machine, implement, &yard.kits, &Settings::default());
            let all = all.expect("its own settings");
            match all.ranked().first() {
                Some((route, _)) => {
                    routes.insert(*route);
                }
                None => none += 1,
            }
        }
    }
    (routes, none)
}

/// It's a yard in which there's something to choose: each route is the best of some pair.
#[test]
fn each_route_is_best_somewhere() {
    let yard = load(&large(60, 24, 24, SEED));
    let (routes, none) = best(&yard);
    assert_eq!(routes, RouteId::ALL.iter().copied().collect());
    assert!(
        none * 4 < yard.machines.len() * yard.implements.len(),
        "{none}"
    );
}

#[test]
fn the_same_seed_gives_the_same_text_and_another_gives_another() {
    let text = |seed| large(20, 16, 24, seed);
    assert_eq!(text(SEED), text(SEED));
    assert_ne!(text(SEED), text(SEED + 1));
    // On every machine: what it was where it was written.
    assert_eq!(crc32fast::hash(text(SEED).as_bytes()), 0x4e18_fb95);
}
