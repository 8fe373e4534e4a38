//! Which rows and columns of the grid are shown, in which order, and what each pair shows.

use super::{Cell, Order, Pair, Reading, Selection};
use crate::fit::Judgement;
use crate::implement::Implement;
use crate::machine::Machine;
use crate::quantity::Power;
use crate::route::RouteId;
use crate::standing::Standing;
use crate::yard::Yard;
use core::cmp::{Ordering, Reverse};
use std::sync::Arc;

/// The rows of a grid as far as they are there: one for each machine of the yard.
pub type Rows = [Option<Arc<[Pair]>>];

impl Cell {
    /// What arrives at the rotor of an implement that needs so much.
    pub fn delivered(&self, need: Power) -> Power {
        need * self.ratio
    }

    /// Better standings first, of the same what fits with less to ask, then that of which more
    /// arrives: this project's judgement.
    pub fn better(&self, than: &Self) -> Ordering {
        let standing = self.standing.cmp(&than.standing);
        let fit = || than.fit.cmp(&self.fit);
        (standing.then_with(fit)).then(self.ratio.total_cmp(&than.ratio))
    }
}

impl Selection {
    /// What a pair shows: the chosen route, else the best; nothing where it can't be hooked up or
    /// stands lower than asked.
    pub fn of(&self, pair: &Pair) -> Option<(RouteId, Cell)> {
        let cells = RouteId::ALL.iter().zip(pair);
        let fitting = cells.filter_map(|(route, cell)| {
            let cell = (*cell)?;
            let asked = self.route.is_none_or(|only| only == *route);
            (asked && cell.fit != Judgement::Stop).then_some((*route, cell))
        });
        // Of equals the first.
        let best = fitting.reduce(|best, next| match next.1.better(&best.1) {
            Ordering::Greater => next,
            _ => best,
        })?;
        (self.least.is_none_or(|least| best.1.standing >= least)).then_some(best)
    }

    fn asks_for_machine(&self, machine: &Machine) -> bool {
        let net = machine.engine.net.likely;
        self.machines.is_none_or(|kind| machine.kind == kind)
            && self.from.is_none_or(|from| net >= from)
            && self.to.is_none_or(|to| net <= to)
    }

    fn asks_for_implement(&self, implement: &Implement) -> bool {
        self.implements.is_none_or(|kind| implement.kind == kind)
    }
}

/// Places in the yard, in the order in which they are shown.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Arranged {
    /// Of machines.
    pub machines: Vec<usize>,
    /// Of implements.
    pub implements: Vec<usize>,
}

/// The rows and columns that a selection shows. A reading for one machine or one implement shows
/// that one alone on its side, if the yard has it.
///
/// Where a standing is asked for, rows and columns without any such pair are left out; a row that
/// isn't there yet stays.
pub fn arrange(
    yard: &Yard,
    rows: &Rows,
    selection: &Selection,
    (machine, implement): (&str, &str),
) -> Arranged {
    let all_machines = yard.machines.iter().enumerate();
    let mut machines: Vec<usize> = match selection.reading {
        Reading::Implements => all_machines
            .filter(|(_, it)| it.id == machine)
            .map(|(place, _)| place)
            .collect(),
        Reading::Whole | Reading::Machines => all_machines
            .filter(|(_, it)| selection.asks_for_machine(it))
            .map(|(place, _)| place)
            .collect(),
    };
    let all_implements = yard.implements.iter().enumerate();
    let mut implements: Vec<usize> = match selection.reading {
        Reading::Machines => all_implements
            .filter(|(_, it)| it.id == implement)
            .map(|(place, _)| place)
            .collect(),
        Reading::Whole | Reading::Implements => all_implements
            .filter(|(_, it)| selection.asks_for_implement(it))
            .map(|(place, _)| place)
            .collect(),
    };
    let tally = Tally::new(yard, rows, selection, &machines, &implements);
    if selection.least.is_some() {
        machines.retain(|place| tally.machine(*place).is_none_or(|it| it.shown > 0));
        // A column is known once all of its rows are.
        let complete = rows.iter().all(Option::is_some);
        implements.retain(|place| !complete || tally.implement(*place).shown > 0);
    }
    sort(
        &mut machines,
        selection,
        |place| tally.machine(place).unwrap_or_default(),
        |place| {
            let it = yard.machines.get(place)?;
            let size = it.engine.net.likely.to_si();
            Some((it.kind as usize, it.name.as_str(), size))
        },
    );
    sort(
        &mut implements,
        selection,
        |place| tally.implement(place),
        |place| {
            let it = yard.implements.get(place)?;
            let size = it.need.likely.to_si();
            Some((it.kind as usize, it.name.as_str(), size))
        },
    );
    Arranged {
        machines,
        implements,
    }
}

/// Sorts by kind first where that is asked, then as asked, then as the yard has it.
fn sort<'a>(
    places: &mut [usize],
    selection: &Selection,
    tally: impl Fn(usize) -> Count,
    entry: impl Fn(usize) -> Option<(usize, &'a str, f64)>,
) {
    places.sort_by_cached_key(|place| {
        let (kind, name, size) = entry(*place).unwrap_or_default();
        let kind = if selection.grouped { kind } else { 0 };
        // No figure is below zero, and the bits of such floats rise as they do.
        match selection.order {
            Order::Best => {
                let Count { working, best, .. } = tally(*place);
                let (standing, ratio) = best.unzip();
                let ratio = ratio.unwrap_or_default().to_bits();
                (kind, Reverse((working, standing, ratio)), String::new())
            }
            Order::Size => (kind, Reverse((0, None, size.to_bits())), String::new()),
            Order::Name => (kind, Reverse((0, None, 0)), name.to_lowercase()),
        }
    });
}

/// What a row or a column has.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Count {
    /// Pairs that show something.
    shown: u32,
    /// Pairs that do the work: at least Enough.
    working: u32,
    /// The best pair's standing and ratio.
    best: Option<(Standing, f64)>,
}

impl Count {
    fn add(&mut self, cell: &Cell) {
        self.shown += 1;
        self.working += u32::from(cell.standing >= Standing::Enough);
        let this = Some((cell.standing, cell.ratio));
        if this > self.best {
            self.best = this;
        }
    }
}

/// What every row and column has.
struct Tally {
    machines: Vec<Option<Count>>,
    implements: Vec<Count>,
}

impl Tally {
    fn new(
        yard: &Yard,
        rows: &Rows,
        selection: &Selection,
        machines: &[usize],
        implements: &[usize],
    ) -> Self {
        let mut tally = Self {
            machines: vec![None; yard.machines.len()],
            implements: vec![Count::default(); yard.implements.len()],
        };
        for place in machines {
            let Some(Some(row)) = rows.get(*place) else {
                continue;
            };
            let mut of_machine = Count::default();
            for implement in implements {
                let shown = row.get(*implement).and_then(|pair| selection.of(pair));
                if let (Some((_, cell)), Some(of_implement)) =
                    (shown, tally.implements.get_mut(*implement))
                {
                    of_machine.add(&cell);
                    of_implement.add(&cell);
                }
            }
            if let Some(count) = tally.machines.get_mut(*place) {
                *count = Some(of_machine);
            }
        }
        tally
    }

    fn machine(&self, place: usize) -> Option<Count> {
        self.machines.get(place).copied().flatten()
    }

    fn implement(&self, place: usize) -> Count {
        self.implements.get(place).copied().unwrap_or_default()
    }
}
