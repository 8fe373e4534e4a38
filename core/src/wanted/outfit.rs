//! The hardware that does it.

use super::hindrance::{Hindrance, hindrances};
use super::least::{at_speed, standing_relief};
use super::lines::{self, Lines};
use super::scene::Scene;
use super::{boxes, pack, shaft};
use crate::chain::{Ledger, Passage};
use crate::compare::serving;
use crate::drive::Drive;
use crate::kit::Kit;
use crate::physics::heat::usual_tank;
use crate::quantity::{Conductance, Power, Pressure, Torque, Volume};
use crate::route::part::{Hookup, assemble};
use crate::settings::Settings;
use crate::spread::{Axis, Corner};
use crate::stage::gear::GearRole;
use crate::stage::pump::Pump;
use crate::stage::{Stage, StageKind, StagePhysics};
use crate::thermal::heat;
use crate::units::Quantity;
use crate::work::Load;

/// Hardware that does it, with the settings that go with it.
///
/// It is drawn from the kit of the yard that comes nearest: lengths, couplers, efficiencies and the
/// pump's highest speed are that kit's.
#[derive(Clone, Debug, PartialEq)]
pub struct Outfit {
    /// The kit: box, pump, hoses, tank and cooler have the sizes that do it. The steps of a shaft
    /// route bear just what they must.
    pub kit: Kit,
    /// With this engine speed, flow and relief pressure.
    pub settings: Settings,
    /// How it then runs at the likely values, where just the wished power arrives.
    pub ledger: Ledger,
    /// Net power that the engine must have at its speed, driving and air included.
    pub engine: Power,
    /// Bores, where oil carries the power.
    pub lines: Option<Lines>,
    /// Tank and cooler, where oil carries the power.
    pub tank: Option<Tank>,
}

/// What the oil needs so as not to get too hot, at the job's load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tank {
    /// The usual tank for the pump's flow.
    pub usual: Volume,
    /// What a cooler must take to keep the oil's limit: with the usual tank for a pump pack, with
    /// the machine's own tank and beyond its own cooler for its own hydraulics.
    pub cooler_duty: Power,
    /// The size of that cooler.
    pub cooler: Conductance,
}

impl Outfit {
    /// Power and torque that the route takes from the PTO, where it begins with one.
    pub fn pto(&self) -> Option<(Power, Torque)> {
        let first = self.ledger.passages.first()?;
        let is_pto = first.stage.kind() == StageKind::Gear(GearRole::PtoTrain);
        is_pto.then_some((first.gives.power, torque(first.gives)))
    }

    /// Each step that stays mechanical, and the torque that its output shaft must bear.
    pub fn shafts(&self) -> impl Iterator<Item = (GearRole, Torque)> {
        shafts(&self.ledger)
    }

    /// Speed out over speed in of the kit's box; 1 where it has none.
    pub fn box_ratio(&self) -> f64 {
        boxes::ratio(&self.kit)
    }

    /// The pump, where there is one, and what it then takes and hands on.
    pub fn pump(&self) -> Option<(&Pump, &Passage)> {
        self.ledger.passages.iter().find_map(|it| match &it.stage {
            Stage::Pump(pump) => Some((pump, it)),
            _ => None,
        })
    }

    /// The least relief pressure, where there is a pump.
    pub fn relief(&self) -> Option<Pressure> {
        self.pump().map(|(pump, _)| pump.relief.likely)
    }
}

fn torque(drive: Drive) -> Torque {
    match drive.effort() {
        Quantity::Torque(torque) => torque,
        _ => Torque::ZERO,
    }
}

/// Torques on the output shafts of mechanical steps.
pub(super) fn shafts(ledger: &Ledger) -> impl Iterator<Item = (GearRole, Torque)> {
    ledger.passages.iter().filter_map(|it| match &it.stage {
        Stage::Gear(gear) => Some((gear.role, torque(it.gives))),
        _ => None,
    })
}

/// A kit and settings that do it, before what else it takes is worked out.
#[derive(Clone, Debug)]
pub(super) struct Draft {
    pub kit: Kit,
    pub settings: Settings,
    pub lines: Option<Lines>,
}

/// The outfit, or all that is in the way: only the sizes where settings do it.
pub(super) fn outfit(scene: &Scene<'_>, settings_do: bool) -> Result<Outfit, Vec<Hindrance>> {
    let misfits = |reasons: Vec<_>| reasons.into_iter().map(Hindrance::NoFit).collect();
    let kit = match nearest(scene) {
        Some(kit) => kit,
        None => return Err(scene.best().err().map_or_else(Vec::new, misfits)),
    };
    // With what a kit can be changed to: what still doesn't fit is the machine's or the implement's.
    let ready = if scene.is_pack() {
        pack::slowest(scene, kit)
    } else if scene.route.needs_oil() {
        kit.clone()
    } else {
        shaft::geared(scene, kit)
    };
    if let (false, Err(reasons)) = (settings_do, scene.with(&ready).best()) {
        return Err(misfits(reasons));
    }
    [kit]
        .into_iter()
        .chain(others(scene, kit))
        .find_map(|kit| finished(scene, find(scene, kit)?))
        .ok_or_else(|| match settings_do {
            true => vec![Hindrance::NoSize],
            false => hindrances(scene, kit),
        })
}

/// The further kits for the route.
fn others<'a>(scene: &Scene<'a>, kit: &Kit) -> impl Iterator<Item = &'a Kit> {
    serving(scene.route, scene.kits).filter(move |it| it.id != kit.id)
}

/// The kit to begin with: the one that the route takes, else the one with the fewest reasons
/// against it.
fn nearest<'a>(scene: &Scene<'a>) -> Option<&'a Kit> {
    let against = |kit: &&Kit| scene.with(kit).best().err().map_or(0, |it| it.len());
    match scene.best() {
        Ok(best) => Some(best.kit),
        Err(_) => serving(scene.route, scene.kits).min_by_key(against),
    }
}

/// A kit and settings that do it.
pub(super) fn find(scene: &Scene<'_>, kit: &Kit) -> Option<Draft> {
    if scene.route.needs_oil() && !scene.motor_could() {
        None
    } else if scene.is_pack() {
        pack::find(scene, kit)
    } else if scene.route.needs_oil() {
        own(scene, kit)
    } else {
        shaft::find(scene, kit)
    }
}

/// The machine's own hydraulics: its pump's flow and relief pressure, and the hoses.
fn own(scene: &Scene<'_>, kit: &Kit) -> Option<Draft> {
    let standing = standing_relief(&scene.with(kit))?;
    scene.speeds().into_iter().find_map(|speed| {
        let (lines, settings) = lines::fitted(&scene.at(speed), kit, |scene| {
            let oil = at_speed(scene, standing)?;
            Some(scene.with_oil(oil).settings)
        })?;
        Some(Draft {
            kit: lines.of(kit),
            settings,
            lines: Some(lines),
        })
    })
}

/// How a draft runs where just the wished power arrives.
pub(super) fn at_wish(scene: &Scene<'_>, draft: &Draft) -> Option<(Ledger, Power)> {
    let wished = scene.wished();
    let scene = Scene {
        settings: draft.settings,
        ..scene.with(&draft.kit)
    };
    let best = scene.best().ok()?;
    let chain = best.joined.chain(Corner::LIKELY);
    let running = chain.working(best.most, |_| wished);
    let ledger = chain.ledger(&running, best.limit).ok()?;
    let budget = &best.joined.budget;
    let driving = budget
        .driving
        .map_or(Power::ZERO, |it| Corner::LIKELY.of(Axis::Burden, &it));
    // P_net = (P + P_driving)/α
    let engine = (ledger.taken() + driving) / budget.air;
    Some((ledger, engine))
}

fn finished(scene: &Scene<'_>, mut draft: Draft) -> Option<Outfit> {
    let (ledger, engine) = at_wish(scene, &draft)?;
    if !scene.route.needs_oil() {
        // The first is the machine's own train.
        let torques = shafts(&ledger).skip(1).map(|(_, torque)| torque);
        boxes::rated(&mut draft.kit, torques);
    }
    let tank = tank(scene, &mut draft, &ledger);
    Some(Outfit {
        kit: draft.kit,
        settings: draft.settings,
        ledger,
        engine,
        lines: draft.lines,
        tank,
    })
}

/// Tank and cooler; a kit that brings a pump gets them.
fn tank(scene: &Scene<'_>, draft: &mut Draft, ledger: &Ledger) -> Option<Tank> {
    let pumped = ledger
        .passages
        .iter()
        .find_map(|it| it.gives.rate.flowing().ok())?;
    let usual = usual_tank(pumped);
    let pump = draft.kit.pump.as_mut().filter(|_| scene.is_pack());
    if let Some(pump) = pump {
        pump.reservoir.volume = Some(usual);
        pump.reservoir.cooler = None;
    }
    let hookup = Hookup {
        machine: scene.machine,
        implement: scene.implement,
        kit: Some(&draft.kit),
        settings: &draft.settings,
    };
    let joined = assemble(scene.route.parts(), hookup).ok()?;
    let need = scene.wished() / scene.aim;
    let load = Load::new(scene.implement, need);
    let heat = heat(&joined, load, draft.settings.air())?;
    let pump = draft.kit.pump.as_mut().filter(|_| scene.is_pack());
    if let Some(pump) = pump {
        pump.reservoir.cooler = (heat.cooler_duty > Power::ZERO).then_some(heat.cooler);
    }
    Some(Tank {
        usual,
        cooler_duty: heat.cooler_duty,
        cooler: heat.cooler,
    })
}
