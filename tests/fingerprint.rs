//! One number for every figure that the core gives for the demo yard: the same natively and in a
//! browser, bit for bit.

use crate::{compared, demo};
use crc32fast::Hasher;
use farend_core::budget::Budget;
use farend_core::compare::Run;
use farend_core::drive::{Drive, Rate};
use farend_core::machine::Machine;
use farend_core::quantity::{AngularSpeed, Length, Power, Temperature};
use farend_core::route::part::{Hookup, assemble};
use farend_core::sensitivity::influences;
use farend_core::settings::Settings;
use farend_core::spread::Spread;
use farend_core::thermal::{Heat, heat};
use farend_core::work::{Load, Progress, progress};

/// What [`fingerprint`] was when the core's figures last changed on purpose.
pub const COMMITTED: u32 = 0xa9f2_bf44;

/// CRC-32 of the bits of every figure of all pairs of the demo yard: budgets and ledgers in several
/// settings, and at the yard's own settings heat, progress and influences too.
pub fn fingerprint() -> u32 {
    let yard = demo();
    let mut bits = Bits::default();
    for machine in &yard.machines {
        for (place, settings) in settings(machine).iter().enumerate() {
            for implement in &yard.implements {
                let comparison = compared(&yard, &machine.id, &implement.id, settings);
                bits.budget(&comparison.budget);
                bits.power(comparison.need);
                for result in &comparison.routes {
                    let Some(run) = result.run() else {
                        bits.flag(false);
                        continue;
                    };
                    bits.run(run);
                    if place > 0 {
                        continue;
                    }
                    let hookup = Hookup {
                        machine,
                        implement,
                        kit: yard.kit(&run.kit),
                        settings,
                    };
                    let mut joined =
                        assemble(result.route.parts(), hookup).expect("a route that runs");
                    let load = Load::new(implement, comparison.need.likely);
                    bits.heat(heat(&joined, load, settings.air()).as_ref());
                    bits.progress(progress(&mut joined, machine, implement, settings).as_ref());
                    for influence in influences(&mut joined) {
                        bits.add(influence.at_low.to_si());
                        bits.add(influence.at_high.to_si());
                    }
                }
            }
        }
    }
    bits.0.finalize()
}

/// Panics where the fingerprint isn't the committed one.
///
/// # Panics
/// As said.
pub fn assert_committed() {
    let now = fingerprint();
    assert_eq!(
        now, COMMITTED,
        "the core's figures have changed: if the native test says {now:#x} as well, they were \
         changed for everybody, and where that was meant, COMMITTED in tests/fingerprint.rs becomes \
         that; if only one of the two tests fails, a function is used that depends on the platform"
    );
}

/// The yard's own settings, and some far from them.
fn settings(machine: &Machine) -> [Settings; 4] {
    let engine = &machine.engine;
    let at = |speed: AngularSpeed, oil, air, altitude, slope| Settings {
        engine_speed: Some(speed),
        oil: Some(Temperature::celsius(oil)),
        air: Some(Temperature::celsius(air)),
        altitude: Some(Length::metres(altitude)),
        slope: Some(slope),
        ..Settings::default()
    };
    [
        Settings::default(),
        at(engine.lowest, -10.0, -20.0, 300.0, 0.05),
        at(machine.working_speed(false), 20.0, 10.0, 1500.0, -0.2),
        at(engine.rated, 80.0, 40.0, 3200.0, 0.15),
    ]
}

#[derive(Default)]
struct Bits(Hasher);

impl Bits {
    fn add(&mut self, figure: f64) {
        self.0.update(&figure.to_bits().to_le_bytes());
    }

    fn flag(&mut self, is: bool) {
        self.0.update(&[u8::from(is)]);
    }

    /// Whether it is there, and it.
    fn maybe(&mut self, figure: Option<f64>) {
        self.flag(figure.is_some());
        if let Some(figure) = figure {
            self.add(figure);
        }
    }

    fn spread(&mut self, spread: Spread<f64>) {
        self.add(spread.low);
        self.add(spread.likely);
        self.add(spread.high);
    }

    fn power(&mut self, power: Spread<Power>) {
        self.spread(power.map(Power::to_si));
    }

    fn drive(&mut self, drive: Drive) {
        self.add(match drive.rate {
            Rate::Turning(speed) => speed.to_si(),
            Rate::Flowing(flow) => flow.to_si(),
        });
        self.add(drive.power.to_si());
    }

    fn budget(&mut self, budget: &Budget) {
        self.add(budget.speed.to_si());
        self.power(budget.net);
        self.add(budget.air);
        self.flag(budget.driving.is_some());
        if let Some(driving) = budget.driving {
            self.power(driving);
        }
    }

    fn run(&mut self, run: &Run) {
        self.flag(true);
        self.0.update(run.kit.as_bytes());
        self.power(run.delivered);
        self.add(run.rotor.to_si());
        self.add(run.verdict.ratio);
        self.add(run.ledger.available.to_si());
        for passage in &run.ledger.passages {
            self.drive(passage.takes);
            self.drive(passage.gives);
            self.add(passage.loss.to_si());
        }
    }

    fn heat(&mut self, heat: Option<&Heat>) {
        self.flag(heat.is_some());
        let Some(heat) = heat else { return };
        self.add(heat.lost.to_si());
        self.add(heat.idle.to_si());
        self.add(heat.surface.to_si());
        self.add(heat.cooler_duty.to_si());
        self.add(heat.cooler.to_si());
        self.add(heat.usual_tank.to_si());
        for settling in &heat.settling {
            self.maybe(settling.at.map(Temperature::to_kelvins));
            self.maybe(settling.to_limit.map(|time| time.to_si()));
            self.maybe(settling.for_good.map(Power::to_si));
        }
    }

    fn progress(&mut self, progress: Option<&Progress>) {
        self.flag(progress.is_some());
        let Some(progress) = progress else { return };
        self.spread(progress.rate);
        self.add(progress.rotor.to_si());
        self.maybe(progress.ground_speed.map(|speed| speed.likely.to_si()));
        self.maybe(progress.tip.map(|tip| tip.to_si()));
        self.maybe(progress.casting.map(|(bound, _)| bound.to_si()));
        self.maybe(progress.casting.map(|(_, ratio)| ratio));
    }
}
