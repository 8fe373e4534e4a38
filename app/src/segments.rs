//! Where the pieces of a bar lie, in parts of the picture's width.

use farend_core::compare::{Comparison, Run};
use farend_core::machine::Machine;
use farend_core::quantity::Power;
use farend_core::settings::Settings;
use farend_core::stage::{StageKind, StagePhysics};

/// What a piece of a bar stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Piece {
    /// Power that arrives at the rotor.
    Arrives,
    /// Power lost in shafts, gears, belts and chains.
    LostInShafts,
    /// Power lost in oil: pump, steering, valve, hoses, motor.
    LostInOil,
    /// Power of the engine that the route can't take up.
    NotTakenUp,
    /// Power that thin air and driving take before the route.
    AirAndDriving,
}

/// A piece of a bar.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Segment {
    /// What it stands for.
    pub piece: Piece,
    /// Where it begins.
    pub from: f64,
    /// How wide it is.
    pub width: f64,
}

/// The power that the picture's whole width stands for. It stays while the engine's speed is turned, so
/// that bars can be seen to shrink, unless the engine gives more at a lower speed.
pub fn scale(machine: &Machine, settings: &Settings, all: &Comparison) -> Power {
    let rated = settings.net_at(machine, machine.engine.rated).high;
    (rated.max(all.need.high) * 1.02).max(all.budget.net.high)
}

/// The pieces of a route's bar: what arrives first, then the losses from the implement back to
/// the engine, then what the engine keeps, then what it never had for a route. Together they are the
/// engine's power.
pub fn segments(run: &Run, engine: Power, scale: Power) -> Vec<Segment> {
    let losses = run
        .ledger
        .passages
        .iter()
        .rev()
        .map(|passage| (lost_in(passage.stage.kind()), passage.loss));
    let mut from = 0.0;
    std::iter::once((Piece::Arrives, run.delivered.likely))
        .chain(losses)
        .chain([
            (Piece::NotTakenUp, run.ledger.left_in_engine()),
            (Piece::AirAndDriving, engine - run.ledger.available),
        ])
        .filter_map(|(piece, power)| {
            let width = power / scale;
            let segment = Segment { piece, from, width };
            from += width;
            (width > 0.0).then_some(segment)
        })
        .collect()
}

fn lost_in(kind: StageKind) -> Piece {
    if kind.heats_oil() {
        Piece::LostInOil
    } else {
        Piece::LostInShafts
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use farend_core::compare::compare;
    use farend_core::settings::Settings;
    use farend_core::source::Source;
    use farend_core::spread::Spread;
    use farend_core::yard::{DEMO, Yard};

    #[test]
    fn the_pieces_of_every_bar_fill_the_engines_power() {
        let yard = Yard::from_json(DEMO).unwrap();
        let mut bars = 0;
        for machine in &yard.machines {
            for implement in &yard.implements {
                let all = compare(machine, implement, &yard.kits, &Settings::default()).unwrap();
                for (_, run) in all.ranked() {
                    let pieces = segments(run, all.budget.net.likely, all.budget.net.likely);
                    let total: f64 = pieces.iter().map(|piece| piece.width).sum();
                    assert!((total - 1.0).abs() < 1e-9, "{total}");
                    assert!(pieces.iter().all(|piece| piece.width > 0.0));
                    bars += 1;
                }
            }
        }
        assert!(bars > 100, "{bars}");
    }

    #[test]
    fn no_bar_and_no_range_is_longer_than_the_picture() {
        let yard = Yard::from_json(DEMO).unwrap();
        let settings = Settings::default();
        for machine in &yard.machines {
            let mut machine = machine.clone();
            let net = machine.engine.net.likely;
            machine.engine.net = Spread::new(net * 0.8, net, net * 1.3, Source::Own);
            for implement in &yard.implements {
                let all = compare(&machine, implement, &yard.kits, &settings).unwrap();
                let scale = scale(&machine, &settings, &all);
                assert!(all.budget.net.likely <= scale);
                for (_, run) in all.ranked() {
                    assert!(run.delivered.high <= scale, "{}", machine.id);
                }
            }
        }
    }
}
