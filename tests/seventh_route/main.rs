//! A seventh route with a stage of its own, and no change in the core: rear PTO, generator, cable to
//! the front, motor, box of the implement. `docs/adding-a-route.md` tells it step by step.

mod electric_shaft;

use electric_shaft::ElectricShaft;
use farend_core::chain::{Chain, Ledger};
use farend_core::drive::{Drive, Limit, Rate, Stall};
use farend_core::formula::Formula;
use farend_core::quantity::{AngularSpeed, Power, Torque};
use farend_core::route::joined::Joined;
use farend_core::route::part::{Hookup, Part, assemble};
use farend_core::source::Source;
use farend_core::spread::{Corner, Spread};
use farend_core::stage::gear::{Gear, GearKind, GearRole};
use farend_core::stage::{AtWork, OilAtWork, Pass, Stage, StageKind, StagePhysics, Visit};
use farend_tests::parts::Parts;

/// The list's entries: the core's stages, and the new one.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Step {
    Known(Stage),
    Electric(ElectricShaft),
}

macro_rules! of_each {
    ($self:ident, $stage:ident => $does:expr) => {
        match $self {
            Self::Known($stage) => $does,
            Self::Electric($stage) => $does,
        }
    };
}

impl StagePhysics for Step {
    fn kind(&self) -> StageKind {
        of_each!(self, stage => stage.kind())
    }

    fn pass(&self, takes: Drive, at: &AtWork) -> Result<Pass, Stall> {
        of_each!(self, stage => stage.pass(takes, at))
    }

    fn may_take(&self, rate: Rate, at: &AtWork) -> Option<Power> {
        of_each!(self, stage => stage.may_take(rate, at))
    }

    fn formulas(&self, takes: Drive, gives: Drive, at: &AtWork) -> Vec<Formula> {
        of_each!(self, stage => stage.formulas(takes, gives, at))
    }

    fn visit(&mut self, visit: &mut Visit<'_>) {
        of_each!(self, stage => stage.visit(visit));
    }
}

fn gear(role: GearRole, ratio: f64, efficiency: f64, rating: Option<f64>) -> Step {
    let torque = |it| Spread::exact(Torque::newton_metres(it), Source::Own);
    Step::Known(Stage::Gear(Gear {
        role,
        ratio,
        efficiency: Spread::exact(efficiency, Source::Own),
        rating: rating.map(|it| (torque(it), Limit::Implement)),
        angle: None,
    }))
}

/// A PTO of 540 rpm at an engine's 2,400.
fn train() -> Step {
    gear(GearRole::PtoTrain, 540.0 / 2400.0, 0.90, None)
}

/// The implement's box, which may be rated.
fn front_box(rating: Option<f64>) -> Step {
    gear(GearRole::Step(GearKind::Spur), 1.0, 0.98, rating)
}

/// 400 V, and a motor that turns twice as fast as the generator.
fn electric(most_current: f64) -> ElectricShaft {
    ElectricShaft {
        pole_pairs: (6.0, 3.0),
        generator: Spread::new(0.88, 0.90, 0.92, Source::Judgement),
        motor: Spread::new(0.88, 0.90, 0.92, Source::Judgement),
        voltage: 400.0,
        resistance: 0.2,
        most_current,
    }
}

/// The seventh route: a list.
fn seventh(most_current: f64, rating: Option<f64>) -> [Step; 3] {
    [
        train(),
        Step::Electric(electric(most_current)),
        front_box(rating),
    ]
}

/// The most that the list hands on of 30 kW at 2,400 rpm.
fn most(stages: &[Step]) -> Ledger<Step> {
    let oil = OilAtWork {
        viscosity: Spread::exact(farend_core::defaults::rated_viscosity(), Source::Own),
        density: farend_core::defaults::oil().density_at_15,
    };
    let chain = Chain {
        stages,
        available: Power::kilowatts(30.0),
        speed: AngularSpeed::rpm(2400.0),
        at: AtWork::new(&oil, Corner::LIKELY),
    };
    let (most, limit) = chain.most().expect("shafts join shafts");
    chain.ledger(&most, limit).expect("shafts join shafts")
}

/// in = out + losses, stage by stage and in all.
#[track_caller]
fn balances(ledger: &Ledger<Step>) {
    for passage in &ledger.passages {
        near(
            (passage.gives.power + passage.loss).to_watts(),
            passage.takes.power.to_watts(),
        );
        assert!(passage.loss > Power::ZERO, "{passage:?}");
    }
    for two in ledger.passages.windows(2) {
        assert_eq!(two[0].gives, two[1].takes);
    }
    let lost: Power = ledger.passages.iter().map(|it| it.loss).sum();
    let arrives = ledger.delivered().expect("no stall").power;
    near((arrives + lost).to_watts(), ledger.taken().to_watts());
}

/// What the ledger promises: 1e-9, relative.
#[track_caller]
fn near(found: f64, expected: f64) {
    assert!(
        (found - expected).abs() <= 1e-9 * expected.abs(),
        "{found} for {expected}"
    );
}

#[test]
fn the_engine_holds_it() {
    let ledger = most(&seventh(50.0, None));
    balances(&ledger);
    assert_eq!(ledger.limit, Limit::Engine);
    let [train, electric, front_box] = &ledger.passages[..] else {
        panic!("three stages");
    };
    // P₁ = 30 kW·0.90
    near(electric.takes.power.to_watts(), 27_000.0);
    // P_e = 27 kW·0.90 = 24.3 kW, P_l = 0.2 Ω·(24,300 W/400 V)² = 738.1125 W
    // P₂ = (24,300 − 738.1125) W·0.90
    near(electric.gives.power.to_watts(), 21_205.698_75);
    // P₃ = P₂·0.98
    near(front_box.gives.power.to_watts(), 20_781.584_775);
    // 540 rpm·6/3
    let speed = |drive: Drive| drive.rate.turning().expect("a shaft").to_rpm();
    near(speed(train.gives), 540.0);
    near(speed(front_box.gives), 1080.0);
    assert_eq!(ledger.heats_oil(), Power::ZERO);
}

#[test]
fn the_cable_holds_it() {
    let ledger = most(&seventh(30.0, None));
    balances(&ledger);
    assert_eq!(ledger.limit, Limit::ShaftRating);
    // P_e = √3·400 V·30 A = 20,784.60969 W, taken from the engine P_e/(0.90·0.90)
    near(ledger.taken().to_watts(), 25_660.011_964_0);
    // P_l = 3·0.2 Ω·(30 A)² = 540 W; ((P_e − 540 W)·0.90)·0.98
    let arrives = ledger.delivered().expect("no stall").power;
    near(arrives.to_watts(), 17_855.745_747_3);
    // P₁ = P_e/0.90, known without a search
    let [_, shaft, _] = &ledger.passages[..] else {
        panic!("three stages");
    };
    let may_take = shaft.stage.may_take(shaft.takes.rate, &ledger.at);
    near(may_take.expect("a limit").to_watts(), 23_094.010_767_6);
}

/// The cable's loss goes with the square, so how much may be taken for a rating behind it is only
/// found by searching.
#[test]
fn a_box_behind_the_cable_holds_it() {
    let ledger = most(&seventh(50.0, Some(100.0)));
    balances(&ledger);
    assert_eq!(ledger.limit, Limit::Implement);
    // P = 100 N·m·2π·1080/60 s = 11,309.733553 W
    let arrives = ledger.delivered().expect("no stall").power.to_watts();
    near(arrives, 11_309.733_552_923);
}

/// Joined to a machine of the yard, over all that isn't known exactly.
#[test]
fn a_machine_of_the_yard_drives_it() {
    let parts = Parts::of("plover-28", "flail-mulcher-140");
    let hookup = Hookup {
        machine: &parts.machine,
        implement: &parts.implement,
        kit: parts.kits.first(),
        settings: &parts.settings,
    };
    let rear = assemble(&[Part::RearPto], hookup).expect("a machine with a rear PTO");
    let steps = rear.stages.into_iter().map(Step::Known);
    let behind = [Step::Electric(electric(50.0)), front_box(None)];
    let mut joined = Joined {
        stages: steps.chain(behind).collect(),
        oil: rear.oil,
        budget: rear.budget,
        filling: rear.filling,
    };
    let ledger_at = |joined: &Joined<Step>, corner| {
        let chain = joined.chain(corner);
        let (most, limit) = chain.most().expect("shafts join shafts");
        chain.ledger(&most, limit).expect("shafts join shafts")
    };
    for corner in joined.corners() {
        balances(&ledger_at(&joined, corner));
    }
    let likely = ledger_at(&joined, Corner::LIKELY);
    let arrives = likely.delivered().expect("no stall").power;
    let range = joined.range(arrives).expect("shafts join shafts");
    assert!(range.low < arrives && arrives < range.high, "{range:?}");
    for passage in &likely.passages {
        assert!(!passage.formulas(&likely.at).is_empty(), "{passage:?}");
    }
    let mut shown = 0;
    joined.visit(&mut |_, name, _, _| {
        shown += usize::from(name == farend_core::stage::FigureName::Efficiency);
    });
    // Train, generator, motor and box.
    assert_eq!(shown, 4);
}
