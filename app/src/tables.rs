//! The comparison as tables for spreadsheets: the routes, and the ledger of one of them.

use crate::model::Model;
use crate::model::grid::GridModel;
use crate::text::{advice, columns, fit, grid as words, labels, reasons, sentences};
use farend_core::compare::Outcome;
use farend_core::drive::Drive;
use farend_core::export::comparison::Saved;
use farend_core::export::csv::{Cell, Table};
use farend_core::fit::{Check, Item, Judgement};
use farend_core::measure::Amount;
use farend_core::quantity::{AngularSpeed, Flow, Power, Pressure, Time, Torque};
use farend_core::spread::Spread;
use farend_core::stage::StagePhysics;
use farend_core::survey::Surveyed;
use farend_core::units::{Quantity, UnitSystem};
use leptos::prelude::*;

/// A cell with what stands above its column.
type Under = (String, Cell);

fn table(rows: Vec<Vec<Under>>) -> Table {
    let headers = rows.first().into_iter().flatten();
    Table {
        headers: headers.map(|(header, _)| header.clone()).collect(),
        rows: rows
            .into_iter()
            .map(|row| row.into_iter().map(|(_, cell)| cell).collect())
            .collect(),
    }
}

fn text(header: &str, text: Option<impl Into<String>>) -> Under {
    let cell = text.map_or(Cell::Empty, |text| Cell::Text(text.into()));
    (header.to_owned(), cell)
}

fn number(header: &str, unit: &str, number: Option<f64>) -> Under {
    let cell = number.map_or(Cell::Empty, Cell::Number);
    (columns::with_unit(header, unit), cell)
}

/// A quantity, or a kind of it where there is none.
fn quantity<T>(
    header: &str,
    kind: fn(T) -> Quantity,
    (value, none): (Option<T>, T),
    units: UnitSystem,
) -> Under {
    let (_, unit) = kind(none).shown_in(units);
    let shown = value.map(|value| kind(value).shown_in(units).0);
    number(header, unit, shown)
}

fn power(header: &str, power: Option<Power>, units: UnitSystem) -> Under {
    quantity(header, Quantity::Power, (power, Power::ZERO), units)
}

fn powers(headers: [&str; 3], spread: Option<Spread<Power>>, units: UnitSystem) -> Vec<Under> {
    let each = [
        spread.map(|it| it.low),
        spread.map(|it| it.likely),
        spread.map(|it| it.high),
    ];
    let all = headers.into_iter().zip(each);
    all.map(|(header, value)| power(header, value, units))
        .collect()
}

/// What is shown of the whole yard, a row for each pair.
pub fn grid(model: Model, grid: GridModel) -> Table {
    let units = model.units.get();
    let (machines, implements) = {
        let arranged = grid.arranged.read();
        (arranged.machines.len(), arranged.implements.len())
    };
    let pairs = (0..machines).flat_map(|row| (0..implements).map(move |column| (row, column)));
    let known = pairs.filter_map(|(row, column)| {
        let shown = grid.shown(row, column)?;
        let cell = shown.map(|(_, cell)| cell);
        let need = grid.need(column);
        let kind = |kind: Option<&'static str>, header| text(header, kind);
        let machine_kind = grid.machine_kind(row).map(words::machine_kind);
        let implement_kind = grid.implement_kind(column).map(words::implement_kind);
        let standing = cell.map_or(labels::no_fit(), |cell| labels::standing(cell.standing));
        Some(vec![
            text(labels::machine(), Some(grid.machine_name(row))),
            kind(machine_kind, words::kind_of_machine()),
            text(labels::implement(), Some(grid.implement_name(column))),
            kind(implement_kind, words::kind_of_implement()),
            text(labels::standing_heading(), Some(standing)),
            text(
                labels::route_heading(),
                shown.map(|(route, _)| labels::route(route)),
            ),
            number(words::ratio(), "", cell.map(|cell| cell.ratio)),
            power(
                words::delivered(),
                cell.zip(need).map(|(cell, need)| cell.delivered(need)),
                units,
            ),
            power(words::needed(), need, units),
            text(columns::kit(), cell.and_then(|cell| grid.kit_name(&cell))),
            text(
                words::ask_first(),
                cell.map(|cell| words::asks(cell.fit == Judgement::Question)),
            ),
        ])
    });
    table(known.collect())
}

/// The routes, a row each.
pub fn routes(saved: Saved<'_>) -> Table {
    let all = saved.survey.routes.iter();
    table(all.map(|surveyed| route(saved, surveyed)).collect())
}

fn route(saved: Saved<'_>, surveyed: &Surveyed) -> Vec<Under> {
    let units = saved.state.units;
    let result = saved.comparison.route(surveyed.route);
    let run = result.and_then(|result| result.run());
    let running = surveyed.running.as_ref();
    let why = result.map(|result| match &result.outcome {
        Outcome::NoFit(reasons) => sentences::no_fit(reasons, units),
        Outcome::Runs(run) => sentences::verdict(&run.verdict),
    });
    let standing = run.map_or(labels::no_fit(), |run| labels::standing(run.verdict.likely));
    let net = saved.comparison.budget.net.likely;
    let kit = run.and_then(|run| saved.yard.kit(&run.kit));
    let mut row = vec![
        text(labels::route_heading(), Some(labels::route(surveyed.route))),
        text(labels::standing_heading(), Some(standing)),
        text(columns::why(), why),
    ];
    row.extend(powers(
        columns::delivered(),
        run.map(|run| run.delivered),
        units,
    ));
    row.extend(powers(columns::need(), Some(saved.comparison.need), units));
    row.extend([
        number(
            columns::part(),
            "%",
            run.map(|run| run.delivered.likely / net * 100.0),
        ),
        quantity(
            columns::rotor(),
            Quantity::Speed,
            (run.map(|run| run.rotor), AngularSpeed::ZERO),
            units,
        ),
        text(labels::held_by(), run.map(|run| labels::limit(run.limit))),
        text(columns::kit(), kit.map(|kit| kit.name.as_str())),
        text(columns::seat(), running.map(|it| advice::seat(it.seat))),
        minutes(columns::hook_up(), running.map(|it| it.hookup)),
    ]);
    let judgements = [
        Judgement::Pass,
        Judgement::Advice,
        Judgement::Question,
        Judgement::Stop,
    ];
    for judgement in judgements {
        row.extend(judged(&surveyed.items, judgement, units));
    }
    row.extend(job(saved, surveyed));
    row.extend(prices(saved, surveyed));
    row
}

fn minutes(header: &str, time: Option<Time>) -> Under {
    number(header, "min", time.map(Time::to_minutes))
}

fn judged(items: &[Item], judgement: Judgement, units: UnitSystem) -> [Under; 2] {
    let [count, which] = columns::judged(judgement);
    let names: Vec<_> = items
        .iter()
        .filter(|item| item.judgement == judgement)
        .map(|item| match item.check {
            Check::Missing(reason) => reasons::no_fit(reason, units),
            check => fit::name(&check).to_owned(),
        })
        .collect();
    let told = (!names.is_empty()).then(|| names.join("; "));
    [
        number(count, "", Some(names.len() as f64)),
        text(which, told),
    ]
}

/// The job, where one is set, and the time for it.
fn job(saved: Saved<'_>, surveyed: &Surveyed) -> Vec<Under> {
    let units = saved.state.units;
    let job = saved.state.settings.job;
    let shown = job.map(|job: Amount| Quantity::Amount(job).shown_in(units));
    let unit = shown.map_or("", |(_, unit)| unit);
    let progress = saved.progress_by(surveyed.route);
    let time = progress.and_then(|progress| progress.time);
    let each = [
        time.and_then(|it| it.low),
        time.and_then(|it| it.likely),
        time.and_then(|it| it.high),
    ];
    let times = columns::time().into_iter().zip(each);
    std::iter::once(number(
        columns::job(),
        unit,
        shown.map(|(number, _)| number),
    ))
    .chain(times.map(|(header, time)| minutes(header, time)))
    .collect()
}

fn prices(saved: Saved<'_>, surveyed: &Surveyed) -> Vec<Under> {
    let own = saved.state.prices.currency.as_deref();
    let currency = own.or(saved.yard.currency.as_deref()).unwrap_or_default();
    let prices = surveyed.running.as_ref().map(|it| it.prices);
    let each = [
        prices.and_then(|it| it.kit),
        prices.and_then(|it| it.variant),
        prices.and_then(|it| it.fitting),
    ];
    let parts = columns::prices().into_iter().zip(each);
    parts
        .chain([(columns::price_total(), prices.and_then(|it| it.total()))])
        .map(|(header, price)| number(header, currency, price))
        .collect()
}

/// The ledger of the open route, a row for each stage between engine and rotor. `None` where the
/// route can't be hooked up.
pub fn ledger(saved: Saved<'_>) -> Option<Table> {
    let units = saved.state.units;
    let ledger = &saved.comparison.route(saved.state.route)?.run()?.ledger;
    let first = ledger.passages.first().map(|passage| passage.takes);
    let mut rows = vec![stage(
        labels::engine(),
        [ledger.available, ledger.left_in_engine(), ledger.taken()].map(Some),
        [None, first],
        units,
    )];
    rows.extend(ledger.passages.iter().map(|passage| {
        stage(
            labels::stage(passage.stage.kind()),
            [passage.takes.power, passage.loss, passage.gives.power].map(Some),
            [Some(passage.takes), Some(passage.gives)],
            units,
        )
    }));
    let end = ledger.delivered();
    let arrives = Some(end.map_or(Power::ZERO, |drive| drive.power));
    rows.push(stage(
        labels::rotor(),
        [arrives, None, None],
        [end, None],
        units,
    ));
    Some(table(rows))
}

fn stage(
    name: &str,
    [takes, loses, passes_on]: [Option<Power>; 3],
    [from, to]: [Option<Drive>; 2],
    units: UnitSystem,
) -> Vec<Under> {
    let mut row = vec![
        text(labels::stage_heading(), Some(name)),
        power(labels::takes(), takes, units),
        power(labels::loses(), loses, units),
        power(labels::passes_on(), passes_on, units),
    ];
    for (headers, drive) in [(columns::takes(), from), (columns::passes_on(), to)] {
        row.extend(carried(headers, drive, units));
    }
    row
}

/// Speed and torque of a shaft, flow and pressure of oil.
fn carried(headers: [&str; 4], drive: Option<Drive>, units: UnitSystem) -> Vec<Under> {
    let kinds = [
        Quantity::Speed(AngularSpeed::ZERO),
        Quantity::Torque(Torque::ZERO),
        Quantity::Flow(Flow::ZERO),
        Quantity::Pressure(Pressure::ZERO),
    ];
    let has = drive.map(|drive| [drive.rate.quantity(), drive.effort()]);
    let of_kind = |kind: Quantity| {
        let same = |it: &Quantity| std::mem::discriminant(it) == std::mem::discriminant(&kind);
        has.into_iter().flatten().find(same)
    };
    let all = headers.into_iter().zip(kinds);
    all.map(|(header, kind)| {
        let (_, unit) = kind.shown_in(units);
        let shown = of_kind(kind).map(|it| it.shown_in(units).0);
        number(header, unit, shown)
    })
    .collect()
}
