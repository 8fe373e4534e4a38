//! What supplies the power.

use crate::defaults;
use crate::drive::Limit;
use crate::physics::engine::net_power_at;
use crate::quantity::{AngularSpeed, Flow, Power, Pressure};
use crate::spread::Spread;
use crate::stage::gear::{Gear, GearRole};
use crate::words::words;

/// A tractor or a skid steer, checked.
#[derive(Clone, Debug, PartialEq)]
pub struct Machine {
    /// Identifier in its yard.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// What it is.
    pub kind: MachineKind,
    /// Its engine.
    pub engine: Engine,
    /// The rear PTO, if any.
    pub rear_pto: Option<Pto>,
    /// The mid PTO, if any.
    pub mid_pto: Option<Pto>,
    /// Its outlets for implements.
    pub circuits: Vec<Circuit>,
}

words! {
    /// What a machine is.
    MachineKind {
        /// A tractor.
        Tractor = "tractor",
        /// A skid steer or compact track loader.
        SkidSteer = "skid_steer",
    }
}

/// An engine.
#[derive(Clone, Debug, PartialEq)]
pub struct Engine {
    /// Net power at rated speed.
    pub net: Spread<Power>,
    /// Rated speed.
    pub rated: AngularSpeed,
    /// Lowest speed under load.
    pub lowest: AngularSpeed,
}

impl Engine {
    /// Net power at a speed between the lowest and the rated one.
    pub fn net_at(&self, speed: AngularSpeed) -> Spread<Power> {
        self.net.map(|rated| net_power_at(rated, self.rated, speed))
    }
}

/// A power take-off.
#[derive(Clone, Debug, PartialEq)]
pub struct Pto {
    /// Its rated speed.
    pub rated: AngularSpeed,
    /// The engine speed for that.
    pub engine_speed: AngularSpeed,
    /// Power measured at the shaft at that speed.
    pub tested: Option<Spread<Power>>,
    /// The most that the shaft is made for at its rated speed, where known.
    pub rating: Option<Spread<Power>>,
}

impl Pto {
    /// The machine's own train from the engine to this shaft.
    ///
    /// Equation: η = P_tested/P_net at the PTO's engine speed, else the default; T_r = P_r/ω_r.
    /// Units: SI. Valid range: tested power not above net power, as a yard is checked for.
    /// Source: definition.
    pub fn train(&self, engine: &Engine) -> Gear {
        let efficiency = match self.tested {
            None => defaults::PTO_TRAIN,
            Some(tested) => {
                // η = P_tested/P_net
                let net = engine.net_at(self.engine_speed).likely;
                tested.map(|power| power / net)
            }
        };
        Gear {
            role: GearRole::PtoTrain,
            ratio: self.rated / self.engine_speed,
            efficiency,
            // T_r = P_r/ω_r
            rating: self
                .rating
                .map(|rating| (rating.map(|power| power / self.rated), Limit::ShaftRating)),
        }
    }
}

words! {
    /// Where an implement's hoses plug in.
    Outlet {
        /// A tractor's remotes or third function.
        Remotes = "remotes",
        /// A skid steer's standard-flow circuit.
        StandardFlow = "standard_flow",
        /// A skid steer's high-flow circuit.
        HighFlow = "high_flow",
    }
}

words! {
    /// How steering gets its oil.
    SteeringPolicy {
        /// From a pump of its own that the sheet's flow leaves out.
        SeparatePump = "separate_pump",
        /// A constant flow at every speed.
        FixedPriority = "fixed_priority",
        /// Nothing while not steering.
        LoadSensingPriority = "load_sensing_priority",
        /// From a pump of its own whose flow the sheet has added in.
        Summed = "summed",
    }
}

words! {
    /// How a pump answers when less is asked of it.
    Supply {
        /// A fixed pump: all its flow, always; what isn't used goes round.
        OpenCentre = "open_centre",
        /// A variable pump that gives the flow that is asked for, always at its set pressure.
        PressureCompensated = "pressure_compensated",
        /// A variable pump that gives the flow that is asked for, a margin above the load.
        LoadSensing = "load_sensing",
    }
}

/// An outlet with the pump behind it.
#[derive(Clone, Debug, PartialEq)]
pub struct Circuit {
    /// Where it is.
    pub outlet: Outlet,
    /// The sheet's flow.
    pub flow: Spread<Flow>,
    /// The engine speed that it holds for.
    pub engine_speed: AngularSpeed,
    /// Relief pressure.
    pub relief: Spread<Pressure>,
    /// What steering takes.
    pub steering: SteeringShare,
    /// How the pump answers.
    pub supply: Supply,
    /// Pressure that the open valve takes at the sheet's flow, or the margin of load sensing.
    pub valve: Spread<Pressure>,
    /// Volumetric efficiency of the pump.
    pub volumetric: Spread<f64>,
    /// Hydro-mechanical efficiency of the pump.
    pub hydro_mechanical: Spread<f64>,
}

/// Who takes what for steering.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SteeringShare {
    /// A pump of its own that the sheet's flow leaves out: nothing is taken.
    SeparatePump,
    /// A constant flow at every speed.
    FixedPriority(Spread<Flow>),
    /// Nothing while not steering.
    LoadSensingPriority,
    /// A pump of its own whose flow the sheet has added in: to be taken out again.
    Summed(Spread<Flow>),
}

impl Machine {
    /// The outlet of a kind, if it has one.
    pub fn circuit(&self, outlet: Outlet) -> Option<&Circuit> {
        self.circuits
            .iter()
            .find(|circuit| circuit.outlet == outlet)
    }

    /// The engine speed to begin with: that of the rear PTO, of the mid PTO, or the rated one.
    pub fn working_speed(&self) -> AngularSpeed {
        self.rear_pto
            .as_ref()
            .or(self.mid_pto.as_ref())
            .map_or(self.engine.rated, |pto| pto.engine_speed)
    }
}
