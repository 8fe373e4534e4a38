//! What a pair of a machine and an implement comes to by each route, in little room.

use crate::compare::{at_speed, serving, with_best_kit};
use crate::fit::Judgement;
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use crate::route::RouteId;
use crate::route::part::{Hookup, MachineAtWork};
use crate::settings::Settings;
use crate::standing::Standing;
use crate::work::need_for;
use crate::yard::Yard;
use core::ops::Range;
use serde::{Deserialize, Serialize};

/// One route of a pair, at the likely values and before the oil has warmed up.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Cell {
    /// Place of the kit that it takes among the yard's.
    pub kit: u16,
    /// Delivered over needed.
    pub ratio: f64,
    /// How it fares.
    pub standing: Standing,
    /// What all that must fit comes to.
    pub fit: Judgement,
}

/// The routes of a pair in the order of [`RouteId::ALL`]; `None` where one can't be joined up.
pub type Pair = [Option<Cell>; RouteId::ALL.len()];

/// The kits that serve each route, with their places among the yard's.
struct Kits<'a> {
    all: &'a [Kit],
    of_routes: Vec<(RouteId, Vec<&'a Kit>)>,
}

impl<'a> Kits<'a> {
    /// All of a yard's, or only those for which nothing must be bought.
    fn new(all: &'a [Kit], as_it_stands: bool) -> Self {
        let of = |route: &RouteId| {
            let kits = serving(*route, all).filter(|kit| kit.included || !as_it_stands);
            (*route, kits.collect())
        };
        Self {
            all,
            of_routes: RouteId::ALL.iter().map(of).collect(),
        }
    }

    fn place(&self, kit: &Kit) -> Option<u16> {
        let place = self.all.iter().position(|it| core::ptr::eq(it, kit))?;
        u16::try_from(place).ok()
    }
}

/// A machine with each of some implements. The settings must fit the machine.
fn row(
    machine: &Machine,
    implements: &[Implement],
    kits: &Kits<'_>,
    settings: &Settings,
) -> Vec<Pair> {
    implements
        .iter()
        .map(|implement| pair(machine, implement, kits, settings))
        .collect()
}

fn pair(machine: &Machine, implement: &Implement, kits: &Kits<'_>, settings: &Settings) -> Pair {
    let at_work = MachineAtWork::new(machine, implement, settings);
    let hookup = Hookup {
        machine,
        implement,
        kit: None,
        settings,
    };
    let mut pair = Pair::default();
    for (cell, (route, kits_of)) in pair.iter_mut().zip(&kits.of_routes) {
        let best = with_best_kit(*route, hookup, kits_of.iter().copied(), &at_work);
        *cell = best.ok().and_then(|best| {
            let ratio = best.delivers() / need_for(implement, settings).likely;
            let speed = at_speed(best.rotor(), implement);
            Some(Cell {
                kit: kits.place(best.kit)?,
                ratio,
                standing: Standing::of(ratio).min(speed),
                fit: best.fit(*route, hookup),
            })
        });
    }
    pair
}

/// The rows of some of a yard's machines, with the settings of a site.
pub fn rows(
    yard: &Yard,
    machines: Range<usize>,
    settings: &Settings,
    as_it_stands: bool,
) -> Vec<Vec<Pair>> {
    let kits = Kits::new(&yard.kits, as_it_stands);
    let settings = settings.of_site();
    let machines = yard.machines.get(machines).unwrap_or_default();
    let row = |machine| row(machine, &yard.implements, &kits, &settings);
    machines.iter().map(row).collect()
}

/// Rows as bytes, to be handed to another thread.
pub fn to_bytes(rows: &[Vec<Pair>]) -> Vec<u8> {
    // Writing plain fields to memory has no way to fail.
    postcard::to_allocvec(rows).unwrap_or_default()
}

/// Rows from bytes; `None` where they aren't whole.
pub fn from_bytes(bytes: &[u8]) -> Option<Vec<Vec<Pair>>> {
    postcard::from_bytes(bytes).ok()
}
