//! What the work of each kind of implement takes where a yard doesn't say.

use crate::implement::{Ground, ImplementKind};
use crate::measure::Measure;
use crate::source::Source;
use crate::spread::Spread;

/// Coefficients of a kind of implement.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Coefficients {
    /// What its work is measured in.
    pub measure: Measure,
    /// What it takes idling at rated speed, as a part of the need.
    pub idle_part: Spread<f64>,
    /// Energy at the rotor for each unit of work, J for each SI unit.
    pub energy: Spread<f64>,
}

/// Joules of a kilowatt hour.
const KILOWATT_HOUR: f64 = 3.6e6;

/// The usual energy of a measure's file unit (t, 1000 m², m³, km) in joules for each SI unit; its
/// source is the definition of the units.
pub fn joules_per_unit(measure: Measure, kilowatt_hours: f64) -> f64 {
    let units = match measure {
        Measure::Mass | Measure::Area | Measure::Length => 1000.0,
        Measure::Volume => 1.0,
    };
    kilowatt_hours * KILOWATT_HOUR / units
}

/// The coefficients of a kind, each with its source; `None` where they are too different from one to
/// another.
pub fn coefficients(kind: ImplementKind) -> Option<Coefficients> {
    let idle = |low, likely, high| Spread::new(low, likely, high, Source::FromMemory);
    let energy = |measure, [low, likely, high]: [f64; 3], source| {
        Spread::new(low, likely, high, source).map(|it| joules_per_unit(measure, it))
    };
    let of = |measure, idle_part, kilowatt_hours, source| {
        Some(Coefficients {
            measure,
            idle_part,
            energy: energy(measure, kilowatt_hours, source),
        })
    };
    match kind {
        // Snow: what leaves at 15 m/s takes 0.03 kWh/t; gathering and rubbing take several times
        // that.
        ImplementKind::Thrower => of(
            Measure::Mass,
            idle(0.08, 0.12, 0.18),
            [0.12, 0.18, 0.28],
            Source::FromMemory,
        ),
        // 35 kW over 1.65 m at 8 km/h is 2.65 kWh for 1000 m² in grass; scrub takes more.
        ImplementKind::Mulcher => of(
            Measure::Area,
            idle(0.15, 0.22, 0.3),
            [2.0, 2.6, 4.5],
            Source::MowerArticle,
        ),
        ImplementKind::Broom => of(
            Measure::Area,
            idle(0.15, 0.25, 0.35),
            [0.15, 0.3, 0.6],
            Source::FromMemory,
        ),
        // 3.7 to 4.2 kWh for an oven-dry tonne is about half for a fresh one; blunt knives take
        // twice that.
        ImplementKind::Chipper => of(
            Measure::Mass,
            idle(0.1, 0.15, 0.25),
            [1.7, 2.0, 4.0],
            Source::ChipperTrial,
        ),
        // 7 to 15 kW for each metre at 10 km/h is 0.7 to 1.5 kWh for 1000 m² in hay; a lawn takes
        // less.
        ImplementKind::Mower => of(
            Measure::Area,
            idle(0.2, 0.3, 0.4),
            [0.4, 0.8, 1.5],
            Source::MowerArticle,
        ),
        ImplementKind::Tiller => of(
            Measure::Volume,
            idle(0.05, 0.1, 0.15),
            [0.02, 0.035, 0.06],
            Source::FromMemory,
        ),
        ImplementKind::Auger => of(
            Measure::Volume,
            idle(0.05, 0.1, 0.2),
            [0.3, 0.7, 1.5],
            Source::FromMemory,
        ),
        ImplementKind::Other => None,
    }
}

/// The power of the rotor's speed that the energy of what is thrown grows with; its source is the
/// definition of kinetic energy.
pub const THROWN: f64 = 2.0;

/// What an implement of a kind is usually driven on: this project's judgement.
pub fn usual_ground(kind: ImplementKind) -> Ground {
    match kind {
        ImplementKind::Thrower | ImplementKind::Broom => Ground::Firm,
        ImplementKind::Tiller => Ground::Loose,
        _ => Ground::Grass,
    }
}
