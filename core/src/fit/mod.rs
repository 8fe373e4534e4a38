//! Whether a route's machine, kit and implement can be hooked up, item by item: what isn't known
//! is a question, never a pass.

mod carrying;
mod oil;
mod other;
mod shaft;

pub use other::{OtherKit, other_kits};

use crate::compare::{Outcome, Run};
use crate::hookup::{Seat, Turns};
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use crate::physics::balance::End;
use crate::physics::hitch::Category;
use crate::physics::shaft::ShaftType;
use crate::quantity::{AngularSpeed, Flow, Length, Mass, Power, Pressure, Time, Torque};
use crate::route::RouteId;
use crate::route::part::{Hookup, NoFit};
use crate::seat::seat;
use crate::settings::Settings;
use crate::spread::Spread;
use crate::thermal::Heat;
use serde::{Deserialize, Serialize};

/// What an item comes to, from the best.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub enum Judgement {
    /// It fits.
    Pass,
    /// It can be done; something should be known or changed.
    Advice,
    /// Something isn't known: ask.
    Question,
    /// It can't be hooked up like this.
    Stop,
}

/// One item.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Item {
    /// What was looked at, with its figures.
    pub check: Check,
    /// What it comes to.
    pub judgement: Judgement,
}

/// What was looked at. A figure that is `None` isn't known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Check {
    /// A part of the route is missing.
    Missing(NoFit),
    /// The input shaft's speed.
    InputSpeed {
        /// What PTO and kit bring at the PTO's rated speed.
        brings: AngularSpeed,
        /// What the implement is built for.
        needs: AngularSpeed,
    },
    /// The kit's shaft on the PTO.
    PtoEnd {
        /// The machine's PTO.
        pto: Option<ShaftType>,
        /// What the kit suits.
        kit: Option<ShaftType>,
    },
    /// The kit's shaft on the implement.
    FarEnd {
        /// What the kit suits.
        kit: Option<ShaftType>,
        /// The implement's input.
        input: Option<ShaftType>,
    },
    /// Direction of rotation at the implement's input.
    Direction {
        /// What comes.
        comes: Option<Turns>,
        /// What it needs.
        needs: Option<Turns>,
    },
    /// Torque that the engine can bring against what a shaft or box may take.
    ShaftTorque {
        /// What the engine can bring at this speed.
        can: Torque,
        /// What may be taken.
        may: Option<Torque>,
    },
    /// Something that slips when the rotor jams.
    SlipClutch {
        /// Where it slips.
        slips: Option<Torque>,
    },
    /// Angle of the kit's joints at work.
    Angle {
        /// The largest that is known, radians.
        working: Option<f64>,
    },
    /// Angle of the joints over the hitch's travel.
    LiftAngle {
        /// With the hitch lowered to work, and the largest, radians.
        angles: Option<(f64, f64)>,
    },
    /// How far the joint shaft's tubes overlap at its longest, and how far it is from bottoming at
    /// its shortest.
    Overlap {
        /// The least overlap and the least way left, negative where there is none.
        least: Option<(Length, Length)>,
    },
    /// Guards.
    Guards {
        /// On the kit's shaft; `Some(None)` where nothing is known, `None` where it has no shaft.
        kit: Option<Option<bool>>,
        /// On the implement.
        implement: Option<bool>,
    },
    /// Hitch categories.
    Category {
        /// The machine's.
        machine: Option<Category>,
        /// The implement's.
        implement: Option<Category>,
    },
    /// Whether the implement can be lifted.
    Lift {
        /// Where it hangs.
        seat: Seat,
        /// What it weighs.
        mass: Option<Mass>,
        /// How far its centre lies from the pins.
        centre: Option<Length>,
        /// What can be lifted there.
        lifts: Option<Spread<Mass>>,
    },
    /// Whether a front subframe can be hung under the machine.
    FrontHooks {
        /// Whether the machine is known to have its hooks.
        known: bool,
    },
    /// Whether oil gets to the loader's end.
    ThirdFunction {
        /// Whether it does.
        there: Option<bool>,
    },
    /// What stays on the axle at the other end than the implement.
    Balance {
        /// That axle.
        axle: End,
        /// Its share, and the ballast with which it keeps the least; where that can be hung.
        found: Option<Balance>,
    },
    /// What an axle carries against what it may.
    AxleLoad {
        /// Which.
        axle: End,
        /// What it carries, the ballast that is needed included.
        load: Option<Mass>,
        /// What it may.
        limit: Option<Mass>,
    },
    /// Sizes of the couplers.
    Couplers {
        /// The machine's.
        machine: Option<Length>,
        /// The hoses'.
        hoses: Option<Length>,
    },
    /// Flow against what the motor may be given.
    MotorFlow {
        /// What comes.
        comes: Flow,
        /// The most that it may be given.
        most: Flow,
    },
    /// Relief pressure against what the motor may take.
    MotorPressure {
        /// Relief pressure.
        relief: Pressure,
        /// The most that it may take.
        most: Pressure,
    },
    /// The motor's third, pressureless line.
    CaseDrain {
        /// Whether it needs one.
        needs: Option<bool>,
        /// Whether it is there all the way.
        there: Option<bool>,
    },
    /// How long the oil stays cool enough at the job.
    OilHeat {
        /// Until it passes its limit; `None` where it never does.
        after: Option<Time>,
        /// What a cooler must take.
        cooler: Power,
    },
}

/// What an implement leaves on the axle at the other end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Balance {
    /// Part of the whole weight there, without ballast; below 0 it lifts off.
    pub share: f64,
    /// The ballast that it needs, hung on that end; `None` where it isn't known how far out that
    /// hangs.
    pub ballast: Option<Mass>,
}

/// A route with all that it is looked at for.
#[derive(Clone, Copy, Debug)]
pub struct Look<'a> {
    /// Which route.
    pub route: RouteId,
    /// What supplies the power.
    pub machine: &'a Machine,
    /// What uses it.
    pub implement: &'a Implement,
    /// What the user has turned.
    pub settings: &'a Settings,
    /// The kit that the route takes.
    pub kit: &'a Kit,
    /// The route at work; without it nothing is said of torque, flow and pressure, of which none
    /// stops a route.
    pub run: Option<&'a Run>,
    /// How warm its oil gets, where it has any.
    pub heat: Option<&'a Heat>,
}

/// As many items as most routes have.
const MANY_ITEMS: usize = 16;

impl<'a> Look<'a> {
    /// Before it's known how the route runs with a kit.
    pub fn before(route: RouteId, pair: Hookup<'a>, kit: &'a Kit) -> Self {
        Self {
            route,
            machine: pair.machine,
            implement: pair.implement,
            settings: pair.settings,
            kit,
            run: None,
            heat: None,
        }
    }

    /// Where it puts the implement.
    pub fn seat(&self) -> Seat {
        seat(self.route, self.kit, self.implement)
    }

    /// Every item, in the order in which one would look.
    pub fn items(&self) -> Vec<Item> {
        let mut items = Vec::with_capacity(MANY_ITEMS);
        shaft::look(self, &mut items);
        oil::look(self, &mut items);
        carrying::look(self, &mut items);
        items.push(self.guards());
        items
    }

    /// Whether it can't be hooked up like this.
    pub fn is_stopped(&self) -> bool {
        gravest(&self.items()) == Judgement::Stop
    }

    fn guards(&self) -> Item {
        let kit = self.route.has_pto().then_some(self.kit.shaft.guarded);
        let implement = self.implement.mount.guarded;
        Item {
            check: Check::Guards { kit, implement },
            judgement: there(all([kit.unwrap_or(Some(true)), implement])),
        }
    }
}

/// The items of a route that can't be had: its reasons.
pub fn missing(outcome: &Outcome) -> Vec<Item> {
    match outcome {
        Outcome::Runs(_) => Vec::new(),
        Outcome::NoFit(reasons) => reasons
            .iter()
            .map(|reason| Item {
                check: Check::Missing(*reason),
                judgement: Judgement::Stop,
            })
            .collect(),
    }
}

/// What all items come to: the gravest. No item is a pass.
pub fn gravest(items: &[Item]) -> Judgement {
    let judgements = items.iter().map(|item| item.judgement);
    judgements.max().unwrap_or(Judgement::Pass)
}

/// Whether all of some things are there, as far as that is known.
fn all<const N: usize>(things: [Option<bool>; N]) -> Option<bool> {
    if things.contains(&Some(false)) {
        Some(false)
    } else if things.contains(&None) {
        None
    } else {
        Some(true)
    }
}

/// Something that must be there.
fn there(known: Option<bool>) -> Judgement {
    match known {
        Some(true) => Judgement::Pass,
        Some(false) => Judgement::Stop,
        None => Judgement::Question,
    }
}

/// Two things that must be the same: a stop where they differ, a question where one isn't known.
fn same<T: PartialEq>(one: Option<T>, other: Option<T>) -> Judgement {
    match (one, other) {
        (Some(one), Some(other)) if one == other => Judgement::Pass,
        (Some(_), Some(_)) => Judgement::Stop,
        _ => Judgement::Question,
    }
}
