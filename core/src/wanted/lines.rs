//! The narrowest common lines in which the oil runs no faster than is usual.

use super::scene::Scene;
use super::sizes::bores;
use crate::drive::Rate;
use crate::kit::Kit;
use crate::physics::line::{LineKind, Pipe, VelocityAdvice};
use crate::quantity::{Flow, Length};
use crate::settings::Settings;
use crate::stage::Stage;
use crate::warning::Line;

/// Bores of a route's lines.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lines {
    /// The hose to the motor.
    pub supply: Length,
    /// The hose back from it.
    pub back: Length,
    /// The line to a pump pack's pump.
    pub suction: Option<Length>,
}

impl Lines {
    fn all(bore: Length, scene: &Scene<'_>) -> Self {
        Self {
            supply: bore,
            back: bore,
            suction: scene.is_pack().then_some(bore),
        }
    }

    /// With another bore of a line that is there.
    fn with(mut self, line: Line, bore: Length) -> Option<Self> {
        *match line {
            Line::Supply => &mut self.supply,
            Line::Back => &mut self.back,
            Line::Suction => self.suction.as_mut()?,
        } = bore;
        Some(self)
    }

    /// The kit with these lines; a suction line of which nothing is known stays so.
    pub(super) fn of(self, kit: &Kit) -> Kit {
        let mut kit = kit.clone();
        if let Some(hoses) = &mut kit.hoses {
            hoses.supply.bore = self.supply;
            hoses.back.bore = self.back;
        }
        let pump = kit.pump.as_mut();
        if let Some((suction, bore)) = pump.and_then(|it| it.suction.as_mut()).zip(self.suction) {
            suction.line.bore = bore;
        }
        kit
    }
}

/// A kit with the widest lines, which take next to nothing.
pub(super) fn widest(scene: &Scene<'_>, kit: &Kit) -> Kit {
    bores()
        .next_back()
        .map_or(kit.clone(), |bore| Lines::all(bore, scene).of(kit))
}

/// The narrowest lines for a kit with which it can still be solved, and the settings that solve it.
/// `None` where it can't or no common line is wide enough.
pub(super) fn fitted(
    scene: &Scene<'_>,
    kit: &Kit,
    solve: impl Fn(&Scene<'_>) -> Option<Settings>,
) -> Option<(Lines, Settings)> {
    let solved = |lines: Lines| {
        let kit = lines.of(kit);
        let settings = solve(&scene.with(&kit))?;
        Some((
            settings,
            Oil::of(&Scene {
                settings,
                ..scene.with(&kit)
            })?,
        ))
    };
    let mut lines = Lines::all(bores().next_back()?, scene);
    let (mut settings, mut oil) = solved(lines).filter(|(_, oil)| oil.suits(lines))?;
    for line in [Line::Supply, Line::Back, Line::Suction] {
        // What runs too fast already needn't be solved.
        let wide_enough = |narrower: &Lines| oil.suits(*narrower);
        let narrower = bores().filter_map(|bore| lines.with(line, bore));
        let found = narrower.filter(wide_enough).find_map(|lines| {
            // A narrower line may ask for more flow in all.
            let (settings, oil) = solved(lines).filter(|(_, oil)| oil.suits(lines))?;
            Some((lines, settings, oil))
        });
        if let Some(found) = found {
            (lines, settings, oil) = found;
        }
    }
    Some((lines, settings))
}

/// What runs in the lines.
struct Oil {
    pumped: Flow,
    used: Flow,
    kind: LineKind,
}

impl Oil {
    fn of(scene: &Scene<'_>) -> Option<Self> {
        let ledger = scene.best().ok()?.ledger().ok()?;
        let mut passages = ledger.passages.iter();
        let pumped = passages.find_map(|it| it.gives.rate.flowing().ok())?;
        let hoses = passages.find(|it| matches!(it.stage, Stage::Hoses(_) | Stage::Motor(_)))?;
        let Rate::Flowing(used) = hoses.takes.rate else {
            return None;
        };
        Some(Self {
            pumped,
            used,
            kind: LineKind::Pressure(hoses.takes.power / used),
        })
    }

    /// Whether it runs no faster than is usual in any of the lines.
    fn suits(&self, lines: Lines) -> bool {
        let suits = |kind: LineKind, flow, bore| {
            let pipe = Pipe {
                bore,
                length: Length::ZERO,
                relative_roughness: 0.0,
            };
            kind.advice(pipe.velocity(flow)) != VelocityAdvice::Fast
        };
        suits(self.kind, self.used, lines.supply)
            && suits(LineKind::Return, self.used, lines.back)
            && lines
                .suction
                .is_none_or(|bore| suits(LineKind::Suction, self.pumped, bore))
    }
}
