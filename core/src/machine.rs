//! What supplies the power.

use crate::defaults;
use crate::drive::Limit;
use crate::hookup::{Axles, Hitch, Loader, PtoEnd};
use crate::physics::derate::{self, Air, PlainRule};
use crate::physics::driving;
use crate::physics::engine::{Curve, net_power_at};
use crate::physics::oil::Oil;
use crate::quantity::{
    AngularSpeed, Conductance, Flow, Length, Mass, Power, Pressure, Temperature, Volume,
};
use crate::spread::Spread;
use crate::stage::gear::{Gear, GearRole};
use crate::stage::valve::Valve;
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
    /// The rear PTO in its economy gear: the same speed at a lower engine speed.
    pub economy_pto: Option<Pto>,
    /// The mid PTO, if any.
    pub mid_pto: Option<Pto>,
    /// Its outlets for implements.
    pub circuits: Vec<Circuit>,
    /// The oil in them.
    pub oil: Oil,
    /// Its mass, ready to work but without an implement.
    pub mass: Option<Mass>,
    /// What drives its wheels.
    pub transmission: Transmission,
    /// Its rear hitch, where anything is known of it.
    pub hitch: Option<Hitch>,
    /// Its loader, where it has one.
    pub loader: Option<Loader>,
    /// Its axles, where they are known.
    pub axles: Option<Axles>,
    /// Its price, in the yard's currency.
    pub price: Option<f64>,
}

words! {
    /// What drives a machine's wheels.
    Transmission {
        /// Gears.
        Gear = "gear",
        /// Pump and motor.
        Hydrostatic = "hydrostatic",
    }
}

impl Transmission {
    /// Its efficiency, from the engine to the ground's edge of the wheels.
    pub fn efficiency(self) -> Spread<f64> {
        match self {
            Self::Gear => driving::GEAR_TRANSMISSION,
            Self::Hydrostatic => driving::HYDROSTATIC_TRANSMISSION,
        }
    }
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
    /// Power over speed, where it's known: from the lowest to the rated speed at least.
    pub curve: Option<Curve>,
    /// How it gets its air.
    pub aspiration: Aspiration,
}

words! {
    /// How an engine gets its air.
    Aspiration {
        /// It draws it in.
        Natural = "natural",
        /// A turbocharger.
        Turbo = "turbo",
        /// A turbocharger with a charge cooler.
        TurboCooled = "turbo_cooled",
    }
}

/// Mechanical efficiency of an engine at rated power: from memory.
pub const MECHANICAL_EFFICIENCY: f64 = 0.85;

/// Relative humidity of the air where an engine works: this project's judgement.
pub const HUMIDITY: f64 = 0.5;

impl Engine {
    /// Net power at a speed between the lowest and the rated one.
    ///
    /// Equation: P = P_r·c(n)/c(n_r) with the curve c where there is one, else the default shape.
    /// Units: SI. Valid range: as said. Source: that of the curve.
    pub fn net_at(&self, speed: AngularSpeed) -> Spread<Power> {
        let of_curve = self.curve.as_ref().and_then(|curve| {
            // c(n)/c(n_r)
            Some(curve.power_at(speed)? / curve.power_at(self.rated)?)
        });
        match of_curve {
            Some(part) => self.net.map(|rated| rated * part),
            None => self.net.map(|rated| net_power_at(rated, self.rated, speed)),
        }
    }

    /// What the air of a site leaves of the power: never more than all of it, for makers limit an
    /// engine to what it is rated for.
    ///
    /// Equation: α of ISO 3046-1, not above 1; the charge cooler is as warm as the air. Units:
    /// ratio. Valid range: altitude to 5000 m, air −40 to 50 °C. Source: see [`derate`].
    pub fn left_by_air(&self, altitude: Length, air: Temperature) -> f64 {
        let exponents = match self.aspiration {
            Aspiration::Natural => derate::NATURALLY_ASPIRATED,
            Aspiration::Turbo => derate::TURBOCHARGED,
            Aspiration::TurboCooled => derate::TURBOCHARGED_COOLED,
        };
        let site = Air {
            pressure: derate::standard_pressure(altitude),
            temperature: air,
            humidity: HUMIDITY,
            coolant: air,
        };
        let ratio = derate::indicated_ratio(exponents, site);
        derate::brake_factor(ratio, MECHANICAL_EFFICIENCY).min(1.0)
    }

    /// What the plain rules leave of the power: altitude counts without a turbocharger only.
    ///
    /// Equation: that of [`PlainRule`], one after the other. Units: ratio. Valid range: as
    /// [`Self::left_by_air`]. Source: see [`PlainRule`].
    pub fn left_by_rule(&self, altitude: Length, air: Temperature) -> f64 {
        let one = Power::watts(1.0);
        let height = match self.aspiration {
            Aspiration::Natural => PlainRule::altitude().left_of(one, altitude),
            Aspiration::Turbo | Aspiration::TurboCooled => one,
        };
        PlainRule::diesel().left_of(height, air) / one
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
    /// Its end.
    pub end: PtoEnd,
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
            angle: None,
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
    /// Where its oil comes from and cools.
    pub reservoir: Reservoir,
    /// Size of its couplers.
    pub coupler_size: Option<Length>,
    /// Whether a third, pressureless line back to the tank is there.
    pub case_drain: Option<bool>,
}

impl Circuit {
    /// The valve that lets its oil out.
    pub fn open_valve(&self) -> Valve {
        match self.supply {
            Supply::LoadSensing => Valve::Margin(self.valve),
            Supply::OpenCentre | Supply::PressureCompensated => Valve::Open {
                drop: self.valve,
                at: self.flow.likely,
            },
        }
    }
}

/// A tank with or without a cooler.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Reservoir {
    /// The oil in it, where known.
    pub volume: Option<Volume>,
    /// What a cooler sheds for each kelvin above the air, where there is one.
    pub cooler: Option<Conductance>,
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

    /// The rear PTO, in its economy gear where that is wished and there.
    pub fn rear_pto(&self, economy: bool) -> Option<&Pto> {
        let economical = self.economy_pto.as_ref().filter(|_| economy);
        economical.or(self.rear_pto.as_ref())
    }

    /// The rear PTO, in its economy gear where that is wished and there; without one the mid PTO.
    pub fn first_pto(&self, economy: bool) -> Option<&Pto> {
        self.rear_pto(economy).or(self.mid_pto.as_ref())
    }

    /// The engine speed to begin with: that of the first PTO, or the rated one.
    pub fn working_speed(&self, economy: bool) -> AngularSpeed {
        self.first_pto(economy)
            .map_or(self.engine.rated, |pto| pto.engine_speed)
    }
}
