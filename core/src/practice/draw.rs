//! Draws a fair case.

use super::chance::Chance;
use super::scene::Scene;
use super::{Case, Draw, Idea, Kind, Question};
use super::{amount, fit, limit, route, sheet, wanted};
use crate::machine::Machine;
use crate::quantity::AngularSpeed;
use crate::settings::Settings;
use crate::yard::Yard;

/// A question that is fair, and what it teaches.
pub(super) struct Asked {
    pub question: Question,
    pub idea: Idea,
}

/// Pairs in which a certain answer is looked for first, so that answers are spread: this project's
/// judgement.
const AIMED: usize = 60;

/// Draws a case: of the yard's pairs, in an order that the seed gives, the first that makes a fair
/// one. `None` where no pair does.
pub fn draw(yard: &Yard, draw: Draw) -> Option<Case> {
    let mut chance = Chance::of(draw);
    let machines = yard.machines.iter();
    let pairs = machines.flat_map(|machine| yard.implements.iter().map(move |it| (machine, it)));
    let pairs = chance.shuffled(pairs.collect());
    let aim = chance.any();
    let aimed = pairs.iter().take(AIMED).map(|pair| (pair, Some(aim)));
    let any = pairs.iter().map(|pair| (pair, None));
    aimed.chain(any).find_map(|((machine, implement), aim)| {
        let own = Settings::default();
        let turned = turned(draw.kind, machine, &mut chance);
        // A pair that isn't fair as it's turned may be as it stands.
        let as_it_stands = (turned != own).then_some(own);
        [turned]
            .into_iter()
            .chain(as_it_stands)
            .find_map(|settings| {
                let scene = Scene {
                    machine,
                    implement,
                    kits: &yard.kits,
                    settings,
                };
                let asked = asked(draw.kind, &scene, &mut chance, aim)?;
                Some(Case {
                    draw,
                    machine: machine.id.clone(),
                    implement: implement.id.clone(),
                    settings,
                    question: asked.question,
                    idea: asked.idea,
                })
            })
    })
}

fn asked(kind: Kind, scene: &Scene<'_>, chance: &mut Chance, aim: Option<u32>) -> Option<Asked> {
    match kind {
        Kind::Route => route::draw(scene, chance),
        Kind::Amount => amount::draw(scene, chance, aim),
        Kind::Limit => limit::draw(scene, chance, aim),
        Kind::Sheet => sheet::draw(scene, chance, aim),
        Kind::Fit => fit::draw(scene, chance, aim),
        Kind::Wanted => wanted::draw(scene, chance, aim),
    }
}

/// Steps of the engine's speed, rpm, and the least part of the rated one: this project's judgement.
const STEP: u32 = 100;
const LEAST: f64 = 0.6;

/// Half of the time another engine speed, where that bears on the answer.
fn turned(kind: Kind, machine: &Machine, chance: &mut Chance) -> Settings {
    let mut settings = Settings::default();
    let bears = !matches!(kind, Kind::Sheet | Kind::Fit);
    if bears && chance.flip() {
        let rated = machine.engine.rated.to_rpm();
        let least = machine.engine.lowest.to_rpm().max(rated * LEAST);
        let steps = (rated - least) as u32 / STEP + 1;
        let speed = rated - f64::from(STEP * chance.below(steps));
        settings.engine_speed = Some(AngularSpeed::rpm(speed));
    }
    settings
}
