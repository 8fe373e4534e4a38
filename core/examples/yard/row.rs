//! One route of one machine with one implement, as a row.

use farend_core::compare::{Run, compare};
use farend_core::drive::Limit;
use farend_core::export::csv::guarded;
use farend_core::fault::Fault;
use farend_core::fit::{Judgement, Look, gravest};
use farend_core::grid::Cell;
use farend_core::implement::Implement;
use farend_core::kit::Kit;
use farend_core::machine::Machine;
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::settings::Settings;
use farend_core::standing::Standing;
use serde::Serialize;
use std::borrow::Cow;

/// The names of a row's fields, in their order.
pub const COLUMNS: [&str; 16] = [
    "machine",
    "machine_name",
    "implement",
    "implement_name",
    "route",
    "kit",
    "standing",
    "delivered_low_kw",
    "delivered_kw",
    "delivered_high_kw",
    "need_kw",
    "ratio",
    "limit",
    "rotor_rpm",
    "fit",
    "best",
];

/// One row. Machine, implement and kit are identifiers.
#[derive(Clone, Serialize)]
pub struct Row<'a> {
    machine: Cow<'a, str>,
    machine_name: Cow<'a, str>,
    implement: Cow<'a, str>,
    implement_name: Cow<'a, str>,
    route: RouteId,
    kit: Cow<'a, str>,
    standing: Standing,
    delivered_low_kw: f64,
    delivered_kw: f64,
    delivered_high_kw: f64,
    need_kw: f64,
    /// Delivered over needed.
    ratio: f64,
    limit: Limit,
    rotor_rpm: f64,
    fit: &'static str,
    best: bool,
}

impl Row<'_> {
    /// The same, with nothing that a spreadsheet would take for a formula.
    pub fn guarded(&self) -> Self {
        let guarded = |text: &str| Cow::Owned(guarded(text));
        Self {
            machine: guarded(&self.machine),
            machine_name: guarded(&self.machine_name),
            implement: guarded(&self.implement),
            implement_name: guarded(&self.implement_name),
            kit: guarded(&self.kit),
            ..self.clone()
        }
    }
}

fn word(judgement: Judgement) -> &'static str {
    match judgement {
        Judgement::Pass => "pass",
        Judgement::Advice => "advice",
        Judgement::Question => "question",
        Judgement::Stop => "stop",
    }
}

/// The routes of a pair that can be hooked up.
pub fn rows<'a>(
    machine: &'a Machine,
    implement: &'a Implement,
    kits: &'a [Kit],
) -> Result<Vec<Row<'a>>, Vec<Fault>> {
    let settings = &Settings::default();
    let comparison = compare(machine, implement, kits, settings)?;
    let need = comparison.need.likely;
    let row = |route, run: &Run| {
        let kit = kits.iter().find(|kit| kit.id == run.kit)?;
        let look = Look {
            route,
            machine,
            implement,
            settings,
            kit,
            run: Some(run),
            heat: None,
        };
        let delivered = run.delivered.map(Power::to_kilowatts);
        let before = Look { run: None, ..look };
        let cell = Cell {
            kit: 0,
            ratio: run.verdict.ratio,
            standing: run.verdict.likely,
            fit: gravest(&before.items()),
        };
        let row = Row {
            machine: (&machine.id).into(),
            machine_name: (&machine.name).into(),
            implement: (&implement.id).into(),
            implement_name: (&implement.name).into(),
            route,
            kit: (&kit.id).into(),
            standing: run.verdict.likely,
            delivered_low_kw: delivered.low,
            delivered_kw: delivered.likely,
            delivered_high_kw: delivered.high,
            need_kw: need.to_kilowatts(),
            ratio: run.verdict.ratio,
            limit: run.limit,
            rotor_rpm: run.rotor.to_rpm(),
            fit: word(gravest(&look.items())),
            best: false,
        };
        Some((cell, row))
    };
    let results = comparison.routes.iter();
    let mut rows: Vec<_> = results
        .filter_map(|result| row(result.route, result.run()?))
        .collect();
    let possible = rows
        .iter_mut()
        .filter(|(cell, _)| cell.fit != Judgement::Stop);
    // Of equals the first: the last, seen from the end.
    if let Some((_, best)) = possible.rev().max_by(|(a, _), (b, _)| a.better(b)) {
        best.best = true;
    }
    Ok(rows.into_iter().map(|(_, row)| row).collect())
}
