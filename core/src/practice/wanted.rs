//! What brings a route to a standing.

use super::chance::Chance;
use super::draw::Asked;
use super::scene::Scene;
use super::{Change, Idea, Misconception, Question, Tried, Truth};
use crate::compare::Run;
use crate::control::Control;
use crate::kit::Kit;
use crate::quantity::{AngularSpeed, Flow, Pressure};
use crate::route::RouteId;
use crate::settings::Settings;
use crate::units::{Quantity, UnitSystem};
use crate::wanted::Wish;
use crate::wanted::sizes;
use crate::work::need_for;

/// The most and the least to choose from: this project's judgement.
const MOST: usize = 4;
const LEAST: usize = 3;
/// How far inside or outside of what is wished a choice is, as a part of it: this project's judgement.
const CLEAR: f64 = 0.05;
/// How far two choices of a kind lie apart at the least, as a part of the smaller: this project's
/// judgement.
const APART: f64 = 0.1;

impl Change {
    /// Settings and kit with it made.
    pub fn applied(self, route: RouteId, settings: Settings, kit: &Kit) -> (Settings, Kit) {
        let mut kit = kit.clone();
        let (control, quantity) = match self {
            Self::Flow(flow) => (flow_of(route), Quantity::Flow(flow)),
            Self::Relief(pressure) => (relief_of(route), Quantity::Pressure(pressure)),
            Self::EngineSpeed(speed) => (Control::EngineSpeed, Quantity::Speed(speed)),
            Self::Hoses(bore) => {
                if let Some(hoses) = &mut kit.hoses {
                    hoses.supply.bore = bore;
                    hoses.back.bore = bore;
                }
                return (settings, kit);
            }
        };
        (control.turned(settings, Some(quantity)), kit)
    }

    /// Its place among the kinds of changes, and its size in SI.
    fn place(self) -> (u32, f64) {
        match self {
            Self::Flow(flow) => (0, flow.to_si()),
            Self::Relief(pressure) => (1, pressure.to_si()),
            Self::EngineSpeed(speed) => (2, speed.to_si()),
            Self::Hoses(bore) => (3, bore.to_si()),
        }
    }

    fn is_apart(self, other: Self) -> bool {
        let ((kind, size), (other_kind, other_size)) = (self.place(), other.place());
        kind != other_kind || size.max(other_size) >= size.min(other_size) * (1.0 + APART)
    }
}

/// Kinds of changes to aim at, in the order of their places: hoses alone hardly ever do it.
const AIMS: u32 = 3;

fn flow_of(route: RouteId) -> Control {
    if route.has_kit_pump() {
        Control::PackFlow
    } else {
        Control::OwnFlow
    }
}

fn relief_of(route: RouteId) -> Control {
    if route.has_kit_pump() {
        Control::PackRelief
    } else {
        Control::OwnRelief
    }
}

/// How a change comes out.
#[derive(Clone, Copy)]
struct Look {
    change: Change,
    ratio: f64,
    /// Rotor speed over its lowest.
    speed: f64,
}

impl Look {
    fn of(scene: &Scene<'_>, route: RouteId, kit: &Kit, change: Change) -> Option<Self> {
        let (settings, kit) = change.applied(route, scene.settings, kit);
        settings.check(scene.machine).ok()?;
        let scene = Scene { settings, ..*scene };
        let it = scene.likely(route, &kit)?;
        let rotor = &scene.implement.rotor;
        (it.rotor() <= rotor.highest && !scene.is_stopped(route, &kit)).then_some(Self {
            change,
            ratio: it.delivers() / need_for(scene.implement, &settings).likely,
            speed: it.rotor() / rotor.lowest,
        })
    }

    /// Whether it has what is wished, clearly.
    fn does(&self, aim: f64) -> bool {
        self.ratio >= aim * (1.0 + CLEAR) && self.speed >= 1.0 + CLEAR
    }

    /// Whether it hasn't, clearly.
    fn misses(&self, aim: f64) -> bool {
        self.ratio <= aim * (1.0 - CLEAR) || self.speed <= 1.0 - CLEAR
    }
}

/// A route by oil that a single one of some changes brings to a standing; one of the kind that is
/// aimed at, where one is.
pub(super) fn draw(scene: &Scene<'_>, chance: &mut Chance, aim: Option<u32>) -> Option<Asked> {
    let routes = chance.shuffled(scene.running());
    let wishes = chance.shuffled(Wish::ALL.to_vec());
    let mut by_oil = routes.into_iter().filter(|(route, _)| route.needs_oil());
    by_oil.find_map(|(route, kit)| {
        let now = scene.run(route, kit)?;
        let looks: Vec<_> = changes(scene, route, kit)
            .into_iter()
            .filter_map(|change| Look::of(scene, route, kit, change))
            .collect();
        let looks = chance.shuffled(looks);
        wishes.iter().find_map(|wish| {
            let choices = choices(&looks, &now, scene, *wish, aim)?;
            Some(Asked {
                question: Question::Wanted {
                    route,
                    kit: kit.id.clone(),
                    wish: *wish,
                    choices,
                },
                idea: Idea::FlowIsSpeed,
            })
        })
    })
}

/// One change that does it and some that don't, those first that a wrong idea takes for right.
fn choices(
    looks: &[Look],
    now: &Run,
    scene: &Scene<'_>,
    wish: Wish,
    aim: Option<u32>,
) -> Option<Vec<Change>> {
    let wished = wish.standing();
    if now.verdict.likely >= wished {
        return None;
    }
    let ratio = wished.begins_at();
    let aimed = |look: &&Look| aim.is_none_or(|aim| look.change.place().0 == aim % AIMS);
    let does = looks.iter().filter(|it| it.does(ratio)).find(aimed)?;
    let slow = scene.implement.rotor.is_too_slow(now.rotor);
    let is_bait = |it: &&Look| {
        let pressure = slow && matches!(it.change, Change::Relief(_));
        pressure || it.ratio >= ratio
    };
    let misses = || looks.iter().filter(|it| it.misses(ratio));
    let mut choices = vec![does.change];
    for look in misses().filter(is_bait).chain(misses()) {
        if choices.len() < MOST && choices.iter().all(|it| it.is_apart(look.change)) {
            choices.push(look.change);
        }
    }
    choices.sort_by(|a, b| {
        let ((a, of_a), (b, of_b)) = (a.place(), b.place());
        a.cmp(&b).then(of_a.total_cmp(&of_b))
    });
    (choices.len() >= LEAST).then_some(choices)
}

/// Single changes that a dealer could think of, in round figures: this project's judgement.
fn changes(scene: &Scene<'_>, route: RouteId, kit: &Kit) -> Vec<Change> {
    let mut changes = Vec::new();
    // Where a control stands and how far it goes, L/min, bar or rpm.
    let span = |control: Control| {
        let range = control.range(scene.machine, scene.implement, Some(kit), &scene.settings)?;
        Some([range.now, range.max].map(|it| it.shown_in(UnitSystem::Metric).0))
    };
    let rounded = |value: f64, to: f64| (value / to).round() * to;
    if let Some([now, max]) = span(flow_of(route)) {
        let more = [1.25, 1.5, 1.75, 2.0].map(|times| rounded(now * times, 5.0));
        let more = more.into_iter().filter(|it| *it > now && *it <= max);
        changes.extend(more.map(|it| Change::Flow(Flow::litres_per_minute(it))));
    }
    if let Some([now, max]) = span(relief_of(route)) {
        let more = [20.0, 40.0, 60.0, 80.0].map(|more| rounded(now + more, 10.0));
        let more = more.into_iter().filter(|it| *it <= max);
        changes.extend(more.map(|it| Change::Relief(Pressure::bar(it))));
    }
    if let Some([now, max]) = span(Control::EngineSpeed) {
        let more = [200.0, 400.0, 600.0, 800.0].map(|more| rounded(now + more, 50.0));
        let more = more.into_iter().filter(|it| *it <= max);
        changes.extend(more.map(|it| Change::EngineSpeed(AngularSpeed::rpm(it))));
    }
    if let Some(hoses) = &kit.hoses {
        let now = hoses.supply.bore.min(hoses.back.bore);
        let wider = sizes::bores().filter(|bore| *bore > now * (1.0 + APART));
        changes.extend(wider.take(2).map(Change::Hoses));
    }
    changes
}

pub(super) fn truth(
    scene: &Scene<'_>,
    (route, kit): (RouteId, &Kit),
    wish: Wish,
    choices: &[Change],
) -> Option<Truth> {
    let now = scene.run(route, kit)?;
    let slow = |run: &Run| scene.implement.rotor.is_too_slow(run.rotor);
    let tried = choices.iter().map(|change| {
        let (settings, kit) = change.applied(route, scene.settings, kit);
        settings.check(scene.machine).ok()?;
        let run = Scene { settings, ..*scene }.run(route, &kit)?;
        let reaches = run.verdict.likely >= wish.standing();
        let misconception = if reaches {
            None
        } else if slow(&run) && run.verdict.ratio >= wish.standing().begins_at() {
            Some(Misconception::IgnoresSpeed)
        } else if slow(&now) && matches!(change, Change::Relief(_)) {
            Some(Misconception::PressureForSpeed)
        } else {
            None
        };
        Some(Tried {
            change: *change,
            run,
            reaches,
            misconception,
        })
    });
    Some(Truth::Wanted(tried.collect::<Option<_>>()?))
}
