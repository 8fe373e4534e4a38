//! What uses the power.

use crate::defaults;
use crate::drive::Limit;
use crate::hookup::{InputEnd, Mount};
use crate::measure::{Measure, Swath};
use crate::physics::driving;
use crate::quantity::{
    AngularSpeed, Displacement, Flow, Force, Length, Mass, Power, Pressure, Velocity,
};
use crate::settings::LAST_DIGITS;
use crate::source::Source;
use crate::spread::{Axis, Corner, Spread};
use crate::stage::gear::{Gear, GearKind, GearRole};
use crate::words::words;
use libm::pow;

/// An implement with a rotor, checked.
#[derive(Clone, Debug, PartialEq)]
pub struct Implement {
    /// Identifier in its yard.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// What it does.
    pub kind: ImplementKind,
    /// Its rotor.
    pub rotor: Rotor,
    /// Power that the job needs at the rotor.
    pub need: Spread<Power>,
    /// Shafts by which it can be driven.
    pub shafts: Vec<InputShaft>,
    /// Motor by which it can be driven.
    pub motor: Option<InputMotor>,
    /// What its work takes, where that is known.
    pub work: Option<Work>,
    /// How it is taken over the ground, where it is.
    pub travel: Option<Travel>,
    /// Its mass.
    pub mass: Option<Mass>,
    /// How it hangs from its machine.
    pub mount: Mount,
}

/// What an implement's work takes.
///
/// At a rotor speed n and a work rate w it takes P = P₀·x² + e·w·xᵐ with x = n/n_r: what idles
/// grows with the square of the speed (this project's judgement, between friction and fans), what
/// a unit of work takes with the square for throwers, whose load leaves at the rotor's speed, and
/// not at all for others (this project's judgement).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Work {
    /// What the work is measured in.
    pub measure: Measure,
    /// Power at the rotor when it turns at rated speed and does nothing.
    pub idle: Spread<Power>,
    /// Energy at the rotor for each SI unit of work (J/kg, J/m², J/m³, J/m) at rated speed.
    pub energy: Spread<f64>,
    /// m, the power of the rotor's speed that a unit of work grows with.
    pub grows: f64,
    /// Width, depth and density.
    pub swath: Swath,
}

impl Work {
    /// Power that a work rate takes at a part of the rated rotor speed.
    ///
    /// Equation: P = P₀·x² + e·w·xᵐ. Units: SI. Valid range: rate from 0, x above 0.
    /// Source: this project's judgement, see [`Work`].
    pub fn power(&self, corner: Corner, rate: f64, x: f64) -> Power {
        // P = P₀·x² + e·w·xᵐ
        let idle = corner.of(Axis::Burden, &self.idle) * (x * x);
        let energy = corner.of(Axis::Burden, &self.energy);
        idle + Power::watts(energy * rate * pow(x, self.grows))
    }

    /// Work rate that a power keeps up: none where it doesn't even turn the empty rotor.
    ///
    /// Equation: w = (P − P₀·x²)/(e·xᵐ), not below 0. Units: SI. Valid range: x above 0.
    /// Source: [`Self::power`] solved for w.
    pub fn rate(&self, corner: Corner, power: Power, x: f64) -> f64 {
        let idle = corner.of(Axis::Burden, &self.idle) * (x * x);
        let energy = corner.of(Axis::Burden, &self.energy);
        // w = (P − P₀·x²)/(e·xᵐ)
        (power - idle).max(Power::ZERO).to_watts() / (energy * pow(x, self.grows))
    }
}

/// How an implement is taken over the ground.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Travel {
    /// The usual speed.
    pub usual: Velocity,
    /// The highest speed at which the work is still done well.
    pub highest: Velocity,
    /// What the ground is.
    pub ground: Ground,
    /// What the work pushes back with.
    pub pushing: Spread<Force>,
}

words! {
    /// What is driven on.
    Ground {
        /// Asphalt, gravel, frozen ground.
        Firm = "firm",
        /// Grass or a field.
        Grass = "grass",
        /// Loose snow or soft ground.
        Loose = "loose",
    }
}

impl Ground {
    /// Rolling resistance coefficient of wheels.
    pub fn rolling(self) -> Spread<f64> {
        match self {
            Self::Firm => driving::ROLLING_FIRM,
            Self::Grass => driving::ROLLING_GRASS,
            Self::Loose => driving::ROLLING_LOOSE,
        }
    }
}

words! {
    /// What an implement does.
    ImplementKind {
        /// Throws snow or spoil.
        Thrower = "thrower",
        /// Mulches standing growth.
        Mulcher = "mulcher",
        /// Sweeps.
        Broom = "broom",
        /// Chips wood.
        Chipper = "chipper",
        /// Mows.
        Mower = "mower",
        /// Tills soil.
        Tiller = "tiller",
        /// Bores holes or moves bulk goods.
        Auger = "auger",
        /// Anything else that turns.
        Other = "other",
    }
}

/// The part that does the work.
#[derive(Clone, Debug, PartialEq)]
pub struct Rotor {
    /// Speed that it's built for.
    pub rated: AngularSpeed,
    /// Lowest speed at which it works properly.
    pub lowest: AngularSpeed,
    /// Highest speed allowed.
    pub highest: AngularSpeed,
    /// Diameter over its tips, where known.
    pub diameter: Option<Length>,
}

impl Rotor {
    /// Whether it turns too slowly to work properly. Just at its lowest speed it doesn't.
    ///
    /// Units: SI. Valid range: a speed from 0. Source: the yard's own figure.
    pub fn is_too_slow(&self, speed: AngularSpeed) -> bool {
        speed < self.lowest * (1.0 - LAST_DIGITS)
    }
}

words! {
    /// The end of the machine that an input shaft suits.
    Place {
        /// On the rear hitch.
        Rear = "rear",
        /// On a front subframe.
        Front = "front",
    }
}

/// A shaft by which an implement can be driven.
#[derive(Clone, Debug, PartialEq)]
pub struct InputShaft {
    /// The end of the machine that it suits.
    pub place: Place,
    /// Its speed when the rotor has its rated speed.
    pub speed: AngularSpeed,
    /// From this shaft to the rotor.
    pub drive: Vec<GearKind>,
    /// The most power that it may take at its speed.
    pub rating: Option<Spread<Power>>,
    /// Its end.
    pub end: InputEnd,
    /// Price of the implement with this shaft, in the yard's currency.
    pub price: Option<f64>,
}

/// A hydraulic motor by which an implement can be driven.
#[derive(Clone, Debug, PartialEq)]
pub struct InputMotor {
    /// Displacement per revolution.
    pub displacement: Displacement,
    /// Rotor speed over motor speed.
    pub ratio: f64,
    /// From the motor to the rotor.
    pub drive: Vec<GearKind>,
    /// Highest flow.
    pub highest_flow: Flow,
    /// Highest pressure difference.
    pub highest_pressure: Pressure,
    /// Volumetric efficiency.
    pub volumetric: Spread<f64>,
    /// Hydro-mechanical efficiency.
    pub hydro_mechanical: Spread<f64>,
    /// Torque at which it starts, as a part of V·Δp/2π.
    pub starting: Spread<f64>,
    /// Whether it needs a third, pressureless line back to the tank.
    pub case_drain: Option<bool>,
    /// Price of the implement with this motor, in the yard's currency.
    pub price: Option<f64>,
}

impl Implement {
    /// The steps from an input shaft to the rotor.
    pub fn from_shaft(&self, shaft: &InputShaft) -> impl Iterator<Item = Gear> {
        let input = shaft.rating.map(|rating| Gear {
            role: GearRole::InputShaft,
            ratio: 1.0,
            efficiency: Spread::exact(1.0, Source::Judgement),
            // T_r = P_r/ω
            rating: Some((rating.map(|power| power / shaft.speed), Limit::Implement)),
            angle: None,
        });
        let ratio = self.rotor.rated / shaft.speed;
        input.into_iter().chain(steps(&shaft.drive, ratio))
    }

    /// The steps from the motor to the rotor.
    pub fn from_motor(&self, motor: &InputMotor) -> impl Iterator<Item = Gear> {
        steps(&motor.drive, motor.ratio)
    }
}

/// Default steps of these kinds; the first has the whole ratio.
fn steps(kinds: &[GearKind], ratio: f64) -> impl Iterator<Item = Gear> {
    kinds.iter().enumerate().map(move |(place, kind)| Gear {
        role: GearRole::Step(*kind),
        ratio: if place == 0 { ratio } else { 1.0 },
        efficiency: defaults::gear_efficiency(*kind),
        rating: None,
        angle: None,
    })
}
