//! A route joined up to an engine: what it can do, over all that isn't known exactly.

use crate::budget::Budget;
use crate::chain::Chain;
use crate::machine::Reservoir;
use crate::physics::oil::Oil;
use crate::quantity::{AngularSpeed, Power};
use crate::source::Source;
use crate::spread::{Axis, Corner, Scenario, Spread};
use crate::stage::pump::Pump;
use crate::stage::{AtWork, FigureName, OilAtWork, Stage, StageKind, StagePhysics, Uncertain};

/// An oil in its tank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Filling {
    /// The oil as its sheet gives it.
    pub oil: Oil,
    /// The tank.
    pub reservoir: Reservoir,
}

/// A route's stages in order, and the oil that it works with.
#[derive(Clone, Debug, PartialEq)]
pub struct Joined<S = Stage> {
    /// From the engine on.
    pub stages: Vec<S>,
    /// The oil; nothing reads it where no stage has any.
    pub oil: OilAtWork,
    /// What the engine can give them, and its speed.
    pub budget: Budget,
    /// The oil's kind and where it cools.
    pub filling: Filling,
}

impl Joined {
    /// The route's pump and the speed of its shaft: the engine's, through the gears before it.
    pub fn pump(&self) -> Option<(&Pump, AngularSpeed)> {
        let mut speed = self.budget.speed;
        for stage in &self.stages {
            match stage {
                Stage::Gear(gear) => speed = speed * gear.ratio,
                Stage::Pump(pump) => return Some((pump, speed)),
                _ => return None,
            }
        }
        None
    }
}

impl<S: StagePhysics + Copy> Joined<S> {
    /// With each figure at one of its values.
    pub fn chain(&self, corner: Corner) -> Chain<'_, S> {
        Chain {
            stages: &self.stages,
            available: self.budget.left(corner),
            speed: self.budget.speed,
            at: AtWork::new(&self.oil, corner),
        }
    }

    /// Shows each uncertain figure in turn, with the stage that it belongs to, always in the same
    /// order.
    pub fn visit(&mut self, visit: &mut VisitStaged<'_>) {
        let net = Uncertain::Power(&mut self.budget.net);
        visit(None, FigureName::EnginePower, Axis::Merit, net);
        if let Some(driving) = &mut self.budget.driving {
            let driving = Uncertain::Power(driving);
            visit(None, FigureName::Driving, Axis::Burden, driving);
        }
        let mut has_oil = false;
        for stage in &mut self.stages {
            let kind = stage.kind();
            has_oil |= kind.heats_oil();
            stage.visit(&mut |name, axis, figure| visit(Some(kind), name, axis, figure));
        }
        if has_oil {
            let viscosity = Uncertain::Viscosity(&mut self.oil.viscosity);
            visit(None, FigureName::Viscosity, Axis::Viscosity, viscosity);
        }
    }

    /// Where the least and the most lie: every merit poor and every merit good, with each figure of
    /// which more can help or harm low and high. A best value between those two isn't looked for.
    pub fn corners(&mut self) -> Vec<Corner> {
        use Scenario::{High, Likely, Low};
        let [mut flow, mut steering, mut tightness, mut viscosity] = [&[Likely][..]; 4];
        self.visit(&mut |_, _, axis, figure| {
            let tried = match axis {
                Axis::Merit | Axis::Burden => return,
                Axis::Flow => &mut flow,
                Axis::Steering => &mut steering,
                Axis::Tightness => &mut tightness,
                Axis::Viscosity => &mut viscosity,
            };
            if figure.is_open() {
                *tried = &[Low, High];
            }
        });
        let mut corners = Vec::with_capacity(32);
        for &flow in flow {
            for &steering in steering {
                for &tightness in tightness {
                    for &viscosity in viscosity {
                        corners.extend([Low, High].map(|merit| Corner {
                            merit,
                            flow,
                            steering,
                            tightness,
                            viscosity,
                        }));
                    }
                }
            }
        }
        corners
    }

    /// The least and the most that can arrive, about the likely value. `None` only where a route's
    /// list of parts is itself wrong.
    pub fn range(&mut self, likely: Power) -> Option<Spread<Power>> {
        let (mut least, mut most) = (likely, likely);
        for corner in self.corners() {
            let arrives = self.chain(corner).most().ok()?.0.arrives();
            least = least.min(arrives);
            most = most.max(arrives);
        }
        Some(Spread::new(least, likely, most, Source::Computed))
    }
}

/// What is told each uncertain figure: its stage, its name, how it bears on what arrives.
pub type VisitStaged<'v> = dyn FnMut(Option<StageKind>, FigureName, Axis, Uncertain<'_>) + 'v;
