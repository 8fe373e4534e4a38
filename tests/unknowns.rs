//! Which figures of a route aren't known exactly: by hand, from the yard file and the defaults.

use farend_core::route::RouteId;
use farend_core::route::part::{Hookup, assemble};
use farend_core::sensitivity::influences;
use farend_core::settings::Settings;
use farend_core::stage::FigureName::{self, *};
use farend_tests::{compared, demo};

/// The words of all open figures, in alphabetical order.
fn open(machine: &str, implement: &str, route: RouteId) -> Vec<&'static str> {
    let yard = demo();
    let settings = Settings::default();
    let comparison = compared(&yard, machine, implement, &settings);
    let run = comparison.route(route).and_then(|it| it.run());
    let hookup = Hookup {
        machine: yard.machine(machine).expect("one of the demo"),
        implement: yard.implement(implement).expect("one of the demo"),
        kit: run.and_then(|run| yard.kit(&run.kit)),
        settings: &settings,
    };
    let mut joined = assemble(route.parts(), hookup).expect("a route of the demo");
    words(influences(&mut joined).iter().map(|it| it.figure))
}

fn words(figures: impl IntoIterator<Item = FigureName>) -> Vec<&'static str> {
    let mut words: Vec<_> = figures.into_iter().map(FigureName::word).collect();
    words.sort_unstable();
    words
}

#[test]
fn every_figure_that_is_open_has_its_influence() {
    let (tractor, thrower) = ("curlew-46", "snow-thrower-150");
    // The train, joints and gearbox; the yard is sure of the engine and of all ratings.
    assert_eq!(
        open(tractor, thrower, RouteId::RearShaft),
        words([Driving, Efficiency, Efficiency, Efficiency])
    );
    // The chain behind the motor is the only efficiency.
    let oil = [
        Driving,
        SheetFlow,
        PumpVolumetric,
        PumpHydroMechanical,
        Relief,
        ValveDrop,
        CouplerDrop,
        MotorVolumetric,
        MotorHydroMechanical,
        Efficiency,
        Viscosity,
    ];
    let found = open(tractor, thrower, RouteId::MachineHydraulics);
    assert_eq!(found, words(oil));
    // The train and the box; the pump's size is known.
    let pack = oil.into_iter().filter(|figure| *figure != SheetFlow);
    assert_eq!(
        open(tractor, thrower, RouteId::PumpPack),
        words(pack.chain([Efficiency, Efficiency]))
    );
}
