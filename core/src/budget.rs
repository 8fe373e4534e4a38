//! What an engine has left for a route: its power at the speed, less what the air and driving take.

use crate::implement::Implement;
use crate::machine::Machine;
use crate::physics::driving::Travel;
use crate::quantity::{AngularSpeed, Force, Mass, Power, Velocity};
use crate::settings::Settings;
use crate::source::Source;
use crate::spread::{Axis, Corner, Spread};

/// An engine's power and what others take of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Budget {
    /// The engine's speed.
    pub speed: AngularSpeed,
    /// Net power at that speed in the reference's air: of the yard's engine, or of one with the power
    /// that is set and its curve.
    pub net: Spread<Power>,
    /// The part that the site's air leaves, at most 1.
    pub air: f64,
    /// The same by the plain rules of the trade, for comparing.
    pub air_by_rule: f64,
    /// What driving takes; `None` where the machine's mass isn't known, so that nothing is counted.
    pub driving: Option<Spread<Power>>,
}

impl Budget {
    /// The same at another speed over ground.
    pub fn driven_at(
        self,
        machine: &Machine,
        implement: &Implement,
        settings: &Settings,
        ground_speed: Velocity,
    ) -> Self {
        Self {
            driving: machine
                .mass
                .map(|mass| driving(machine, mass, implement, settings, ground_speed)),
            ..self
        }
    }

    /// The budget of a machine that takes an implement over the ground at a speed.
    pub fn at(
        machine: &Machine,
        implement: &Implement,
        settings: &Settings,
        ground_speed: Velocity,
    ) -> Self {
        let speed = settings.engine_speed_for(machine);
        let engine = &machine.engine;
        Self {
            speed,
            net: settings.net_at(machine, speed),
            air: engine.left_by_air(settings.altitude(), settings.air()),
            air_by_rule: engine.left_by_rule(settings.altitude(), settings.air()),
            driving: None,
        }
        .driven_at(machine, implement, settings, ground_speed)
    }

    /// What is left for a route.
    ///
    /// Equation: P = α·P_net − P_driving, not below 0. Units: SI. Valid range: any.
    /// Source: definition.
    pub fn left(&self, corner: Corner) -> Power {
        let driving = self
            .driving
            .map_or(Power::ZERO, |it| corner.of(Axis::Burden, &it));
        // P = α·P_net − P_driving
        (corner.of(Axis::Merit, &self.net) * self.air - driving).max(Power::ZERO)
    }
}

fn driving(
    machine: &Machine,
    mass: Mass,
    implement: &Implement,
    settings: &Settings,
    speed: Velocity,
) -> Spread<Power> {
    let (Some(travel), true) = (implement.travel, speed > Velocity::ZERO) else {
        return Spread::exact(Power::ZERO, Source::Computed);
    };
    let rolling = settings.ground.unwrap_or(travel.ground).rolling();
    let efficiency = machine.transmission.efficiency();
    let power = |rolling: f64, pushing: Force, efficiency: f64| {
        let travel = Travel {
            mass: mass + implement.mass.unwrap_or(Mass::ZERO),
            rolling,
            slope: settings.slope.unwrap_or(0.0),
            pushing,
            speed,
        };
        travel.power(efficiency)
    };
    Spread::new(
        power(rolling.low, travel.pushing.low, efficiency.high),
        power(rolling.likely, travel.pushing.likely, efficiency.likely),
        power(rolling.high, travel.pushing.high, efficiency.low),
        Source::FromMemory,
    )
}
