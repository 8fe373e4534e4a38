//! What uses the power.

use crate::defaults;
use crate::drive::Limit;
use crate::quantity::{AngularSpeed, Displacement, Flow, Power, Pressure};
use crate::source::Source;
use crate::spread::Spread;
use crate::stage::gear::{Gear, GearKind, GearRole};
use crate::words::words;

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
}

impl Implement {
    /// The steps from an input shaft to the rotor.
    pub fn from_shaft(&self, shaft: &InputShaft) -> Vec<Gear> {
        let input = shaft.rating.map(|rating| Gear {
            role: GearRole::InputShaft,
            ratio: 1.0,
            efficiency: Spread::exact(1.0, Source::Judgement),
            // T_r = P_r/ω
            rating: Some((rating.map(|power| power / shaft.speed), Limit::Implement)),
        });
        let ratio = self.rotor.rated / shaft.speed;
        input
            .into_iter()
            .chain(steps(&shaft.drive, ratio))
            .collect()
    }

    /// The steps from the motor to the rotor.
    pub fn from_motor(&self, motor: &InputMotor) -> Vec<Gear> {
        steps(&motor.drive, motor.ratio).collect()
    }
}

/// Default steps of these kinds; the first has the whole ratio.
fn steps(kinds: &[GearKind], ratio: f64) -> impl Iterator<Item = Gear> {
    kinds.iter().enumerate().map(move |(place, kind)| Gear {
        role: GearRole::Step(*kind),
        ratio: if place == 0 { ratio } else { 1.0 },
        efficiency: defaults::gear_efficiency(*kind),
        rating: None,
    })
}
