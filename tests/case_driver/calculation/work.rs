//! How much work there is, and what it takes.

use super::{Outcome, three};
use crate::inputs::{Point, Problem};
use farend_core::defaults_work::coefficients;
use farend_core::implement::{ImplementKind, Work};
use farend_core::measure::{Amount, Measure, Swath};
use farend_core::quantity::Power;
use farend_core::source::Source;
use farend_core::spread::{Corner, Spread};
use farend_tests::demo;
use farend_tests::quantity::Quantity;

/// The amount of a job, where there is one.
pub(super) fn job(point: &Point<'_>) -> Result<Option<Amount>, Problem> {
    match point.quantity("job")? {
        None => Ok(None),
        Some(Quantity::Mass(it)) => Ok(Some(Amount::Mass(it))),
        Some(Quantity::Area(it)) => Ok(Some(Amount::Area(it))),
        Some(Quantity::Volume(it)) => Ok(Some(Amount::Volume(it))),
        Some(Quantity::Length(it)) => Ok(Some(Amount::Length(it))),
        Some(_) => Err("job has a unit of another kind".to_owned()),
    }
}

/// A job in another measure.
pub(super) fn amount(point: &Point<'_>) -> Result<Outcome, Problem> {
    let word = point.text("measure")?;
    let mut measures = Measure::ALL.iter();
    let measure = measures
        .find(|measure| measure.word() == word)
        .ok_or_else(|| format!("{word} is no measure"))?;
    let swath = Swath {
        width: point.get_if_any("width")?,
        depth: point.get_if_any("depth")?,
        density: point.get_if_any("density")?,
    };
    let amount = job(point)?.ok_or("job is missing")?;
    let amount = amount
        .in_measure(*measure, &swath)
        .ok_or("too little is known")?;
    Ok(Outcome::Results(vec![("amount", amount.into())]))
}

/// Energy at the rotor for each SI unit of work, in joules.
pub(super) fn default_energy(point: &Point<'_>) -> Result<Outcome, Problem> {
    let word = point.text("kind")?;
    let mut kinds = ImplementKind::ALL.iter();
    let usual = kinds
        .find(|kind| kind.word() == word)
        .and_then(|kind| coefficients(*kind))
        .ok_or_else(|| format!("{word} has no usual energy"))?;
    Ok(three(usual.energy, Quantity::Ratio))
}

/// What an implement of the built-in yard takes idling, and for each SI unit of work in joules.
pub(super) fn demo_work(point: &Point<'_>) -> Result<Outcome, Problem> {
    let yard = demo();
    let work = yard
        .implement(point.text("implement")?)
        .and_then(|implement| implement.work)
        .ok_or("the demo has no such work")?;
    Ok(Outcome::Results(vec![
        ("idle", Quantity::Power(work.idle.likely)),
        ("energy", Quantity::Ratio(work.energy.likely)),
    ]))
}

/// Power for a work rate and the work rate for that power, at a part of the rated rotor speed.
pub(super) fn work_power(point: &Point<'_>) -> Result<Outcome, Problem> {
    let unknown = Swath {
        width: None,
        depth: None,
        density: None,
    };
    let work = Work {
        measure: Measure::Mass,
        idle: Spread::exact(point.get("idle")?, Source::Own),
        energy: Spread::exact(point.number("joules_per_kg")?, Source::Own),
        grows: point.number("grows")?,
        swath: unknown,
    };
    let part = point.number("speed_part")?;
    let power: Power = work.power(Corner::LIKELY, point.number("kg_per_s")?, part);
    Ok(Outcome::Results(vec![
        ("power", Quantity::Power(power)),
        (
            "rate",
            Quantity::Ratio(work.rate(Corner::LIKELY, power, part)),
        ),
    ]))
}
