//! The built-in yard has what a trial needs.

use farend_core::compare::Outcome;
use farend_core::machine::{Aspiration, Machine, MachineKind, Outlet, Supply};
use farend_core::route::RouteId;
use farend_core::route::part::{Hookup, assemble};
use farend_core::settings::Settings;
use farend_core::standing::Standing;
use farend_core::yard::Yard;
use farend_tests::{compared, demo};

fn tractors(yard: &Yard) -> impl Iterator<Item = &Machine> {
    let machines = yard.machines.iter();
    machines.filter(|machine| machine.kind == MachineKind::Tractor)
}

/// All results of a route, over every machine with every implement.
fn outcomes(yard: &Yard, route: RouteId) -> Vec<Outcome> {
    let mut outcomes = Vec::new();
    for machine in &yard.machines {
        for implement in &yard.implements {
            let all = compared(yard, &machine.id, &implement.id, &Settings::default());
            outcomes.extend(all.route(route).map(|result| result.outcome.clone()));
        }
    }
    outcomes
}

#[test]
fn it_is_invented_and_says_so() {
    let yard = demo();
    assert!(yard.invented);
    assert!(
        yard.place
            .is_some_and(|place| place.contains("doesn't exist"))
    );
}

#[test]
fn it_has_tractors_from_18_to_90_kw_with_and_without_mid_pto() {
    let yard = demo();
    let kilowatts: Vec<_> = tractors(&yard)
        .map(|tractor| tractor.engine.net.likely.to_kilowatts().round())
        .collect();
    assert!(kilowatts.len() >= 4, "{kilowatts:?}");
    assert!(
        kilowatts.contains(&18.0) && kilowatts.contains(&90.0),
        "{kilowatts:?}"
    );
    assert!(tractors(&yard).any(|tractor| tractor.mid_pto.is_some()));
    assert!(tractors(&yard).any(|tractor| tractor.mid_pto.is_none()));
}

#[test]
fn it_has_a_skid_steer_with_both_circuits() {
    let yard = demo();
    let both = |machine: &&Machine| {
        machine.kind == MachineKind::SkidSteer
            && machine.circuit(Outlet::StandardFlow).is_some()
            && machine.circuit(Outlet::HighFlow).is_some()
    };
    assert!(yard.machines.iter().any(|machine| both(&machine)));
}

#[test]
fn its_machines_show_every_supply_and_aspiration_and_one_has_a_curve() {
    let yard = demo();
    for supply in Supply::ALL {
        let mut circuits = yard.machines.iter().flat_map(|machine| &machine.circuits);
        let shown = circuits.any(|circuit| circuit.supply == *supply);
        assert!(shown, "{} is shown nowhere", supply.word());
    }
    for aspiration in Aspiration::ALL {
        let mut engines = yard.machines.iter().map(|machine| &machine.engine);
        let shown = engines.any(|engine| engine.aspiration == *aspiration);
        assert!(shown, "{} is shown nowhere", aspiration.word());
    }
    let mut machines = yard.machines.iter();
    assert!(machines.any(|machine| machine.engine.curve.is_some()));
}

/// Without these there would be questions where a trial wants answers.
#[test]
fn it_knows_what_heat_driving_and_work_need() {
    let yard = demo();
    for machine in &yard.machines {
        assert!(machine.mass.is_some(), "{}", machine.id);
        for circuit in &machine.circuits {
            assert!(circuit.reservoir.volume.is_some(), "{}", machine.id);
        }
    }
    for implement in &yard.implements {
        assert!(implement.work.is_some(), "{}", implement.id);
        assert!(implement.mass.is_some(), "{}", implement.id);
        assert!(implement.rotor.diameter.is_some(), "{}", implement.id);
        if let (Some(travel), Some(work)) = (implement.travel, implement.work) {
            let a_metre = work.swath.per_metre(work.measure);
            assert!(a_metre.is_some(), "{}: no work on a way", implement.id);
            assert!(travel.usual < travel.highest, "{}", implement.id);
        }
    }
    for pump in yard.kits.iter().filter_map(|kit| kit.pump.as_ref()) {
        assert!(pump.suction.is_some() && pump.reservoir.volume.is_some());
    }
}

#[test]
fn it_has_eight_implements_and_each_can_be_driven_properly_by_some_machine() {
    let yard = demo();
    assert!(yard.implements.len() >= 8);
    for implement in &yard.implements {
        let enough = yard.machines.iter().any(|machine| {
            let all = compared(&yard, &machine.id, &implement.id, &Settings::default());
            let ranked = all.ranked();
            ranked
                .iter()
                .any(|(_, run)| run.verdict.likely >= Standing::Enough)
        });
        assert!(enough, "{}", implement.id);
    }
}

#[test]
fn each_route_has_a_kit_and_a_pair_for_which_it_is_enough() {
    let yard = demo();
    for route in RouteId::ALL {
        assert!(
            yard.kits.iter().any(|kit| kit.routes.contains(route)),
            "{}",
            route.word()
        );
        let enough = outcomes(&yard, *route).iter().any(|outcome| match outcome {
            Outcome::Runs(run) => run.verdict.likely >= Standing::Enough,
            Outcome::NoFit(_) => false,
        });
        assert!(enough, "{} is enough nowhere", route.word());
    }
}

#[test]
fn it_shows_every_standing_and_a_misfit() {
    let yard = demo();
    let all: Vec<_> = RouteId::ALL
        .iter()
        .flat_map(|route| outcomes(&yard, *route))
        .collect();
    for standing in [
        Standing::Ample,
        Standing::Enough,
        Standing::Slower,
        Standing::Labours,
        Standing::Starves,
    ] {
        let shown = all.iter().any(|outcome| match outcome {
            Outcome::Runs(run) => run.verdict.likely == standing,
            Outcome::NoFit(_) => false,
        });
        assert!(shown, "{standing:?} is shown nowhere");
    }
    assert!(
        all.iter()
            .any(|outcome| matches!(outcome, Outcome::NoFit(_)))
    );
}

#[test]
fn no_kit_is_there_in_vain() {
    let yard = demo();
    let settings = Settings::default();
    for kit in &yard.kits {
        let fits = yard.machines.iter().any(|machine| {
            yard.implements.iter().any(|implement| {
                let hookup = Hookup {
                    machine,
                    implement,
                    kit: Some(kit),
                    settings: &settings,
                };
                let mut routes = kit.routes.iter();
                routes.any(|route| assemble(route.parts(), hookup).is_ok())
            })
        });
        assert!(fits, "{} can be hooked up nowhere", kit.id);
    }
}
