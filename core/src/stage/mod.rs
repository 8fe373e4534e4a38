//! The steps of a route. Each step has a file; here is what they share.
//!
//! A stage takes power at a speed or a flow and hands on what is left of it. The harder it is
//! driven, the higher its torque or pressure: [`Pass::strain`] says how near that is to the most
//! that it may be, and [`StagePhysics::may_take`], where it's known beforehand, with how much power
//! it gets there. That is all that the chain needs to know of a stage.

pub mod divert;
pub mod gear;
pub mod hoses;
pub mod motor;
pub mod pump;
pub mod steering;
pub mod valve;

use crate::defaults;
use crate::drive::{Drive, Limit, Rate, Stall};
use crate::formula::{Figure, Formula};
use crate::physics::displacement::RatedPoint;
use crate::physics::oil::Oil;
use crate::quantity::{
    AngularSpeed, Density, Flow, Power, Pressure, Temperature, Torque, Viscosity,
};
use crate::source::Source;
use crate::spread::{Axis, Corner, Scenario, Spread};
use crate::units::Quantity;
use crate::words::words;
use divert::Divert;
use gear::{Gear, GearRole};
use hoses::Hoses;
use motor::Motor;
use pump::Pump;
use steering::Steering;
use valve::Valve;

/// The oil of a route as it is at work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OilAtWork {
    /// Viscosity.
    pub viscosity: Spread<Viscosity>,
    /// Density.
    pub density: Density,
}

/// Which value each uncertain figure takes, and the oil for that.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AtWork {
    /// Which values.
    pub corner: Corner,
    /// The oil's viscosity.
    pub viscosity: Viscosity,
    /// The oil's density.
    pub density: Density,
}

impl AtWork {
    /// With this oil, at a corner.
    pub fn new(oil: &OilAtWork, corner: Corner) -> Self {
        Self {
            corner,
            viscosity: corner.of(Axis::Viscosity, &oil.viscosity),
            density: oil.density,
        }
    }
}

/// What a stage does with what it takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pass {
    /// What it hands on.
    pub gives: Drive,
    /// What it loses, by its own equation.
    pub loss: Power,
    /// Its torque or pressure over the most that is allowed, and the limit that this is.
    pub strain: Option<(f64, Limit)>,
    /// Why it hands on nothing, if so.
    pub stall: Option<Stall>,
}

impl Pass {
    /// All that is taken is lost and nothing is handed on.
    fn stalled(takes: Drive, gives: Drive, stall: Stall) -> Self {
        Self {
            gives: Drive {
                power: Power::ZERO,
                ..gives
            },
            loss: takes.power,
            strain: None,
            stall: Some(stall),
        }
    }

    /// Oil that loses some of its pressure; nothing is left where it has no more than that.
    ///
    /// Equation: P₂ = P₁ − Δp·Q. Units: SI. Valid range: flow above zero. Source: definition.
    fn less_pressure(takes: Drive, flow: Flow, drop: Pressure) -> Self {
        // P₂ = P₁ − Δp·Q
        let loss = drop * flow;
        if takes.power <= loss {
            return Self::stalled(takes, takes, Stall::NoPressureLeft);
        }
        Self {
            gives: Drive {
                power: takes.power - loss,
                ..takes
            },
            loss,
            strain: None,
            stall: None,
        }
    }
}

/// What kind of step a stage is: the key to its name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StageKind {
    /// A gear, belt, chain or joint.
    Gear(GearRole),
    /// Shaft to oil.
    Pump,
    /// The steering's share of the flow.
    Steering,
    /// Flow that the implement can't use, sent back to the tank.
    Divert,
    /// The valve that lets the oil out to the implement.
    Valve,
    /// Hoses and couplers, there and back.
    Hoses,
    /// Oil to shaft.
    Motor,
}

impl StageKind {
    /// Whether what is lost there heats the oil.
    pub fn heats_oil(self) -> bool {
        !matches!(self, Self::Gear(_))
    }
}

impl OilAtWork {
    /// An oil at a temperature.
    pub fn of(oil: &Oil, temperature: Temperature) -> Self {
        Self {
            viscosity: defaults::viscosity(oil, temperature),
            density: oil.density(temperature),
        }
    }
}

words! {
    /// An uncertain figure of a route.
    FigureName {
        /// The engine's net power.
        EnginePower = "engine_power",
        /// Power that driving takes.
        Driving = "driving",
        /// A gear's, belt's, chain's or joint's efficiency.
        Efficiency = "efficiency",
        /// A shaft's rating.
        Rating = "rating",
        /// A sheet's flow.
        SheetFlow = "sheet_flow",
        /// The steering's flow.
        SteeringFlow = "steering_flow",
        /// A pump's volumetric efficiency.
        PumpVolumetric = "pump_volumetric",
        /// A pump's hydro-mechanical efficiency.
        PumpHydroMechanical = "pump_hydro_mechanical",
        /// Relief pressure.
        Relief = "relief",
        /// What the valve takes.
        ValveDrop = "valve_drop",
        /// What a coupler takes.
        CouplerDrop = "coupler_drop",
        /// A motor's volumetric efficiency.
        MotorVolumetric = "motor_volumetric",
        /// A motor's hydro-mechanical efficiency.
        MotorHydroMechanical = "motor_hydro_mechanical",
        /// The oil's viscosity.
        Viscosity = "viscosity",
    }
}

/// An uncertain figure where it stands, of any quantity.
#[derive(Debug)]
pub enum Uncertain<'a> {
    /// A ratio or an efficiency.
    Ratio(&'a mut Spread<f64>),
    /// A power.
    Power(&'a mut Spread<Power>),
    /// A torque.
    Torque(&'a mut Spread<Torque>),
    /// A flow.
    Flow(&'a mut Spread<Flow>),
    /// A pressure.
    Pressure(&'a mut Spread<Pressure>),
    /// A viscosity.
    Viscosity(&'a mut Spread<Viscosity>),
}

impl Uncertain<'_> {
    /// Whether its low and high values differ.
    pub fn is_open(&self) -> bool {
        match self {
            Self::Ratio(it) => it.low != it.high,
            Self::Power(it) => it.low != it.high,
            Self::Torque(it) => it.low != it.high,
            Self::Flow(it) => it.low != it.high,
            Self::Pressure(it) => it.low != it.high,
            Self::Viscosity(it) => it.low != it.high,
        }
    }

    /// Makes one of its three values the only one.
    pub fn pin(self, scenario: Scenario) {
        match self {
            Self::Ratio(it) => *it = Spread::exact(it.at(scenario), it.source),
            Self::Power(it) => *it = Spread::exact(it.at(scenario), it.source),
            Self::Torque(it) => *it = Spread::exact(it.at(scenario), it.source),
            Self::Flow(it) => *it = Spread::exact(it.at(scenario), it.source),
            Self::Pressure(it) => *it = Spread::exact(it.at(scenario), it.source),
            Self::Viscosity(it) => *it = Spread::exact(it.at(scenario), it.source),
        }
    }
}

/// What is told each uncertain figure, how it bears on what is delivered, and its name.
pub type Visit<'v> = dyn FnMut(FigureName, Axis, Uncertain<'_>) + 'v;

/// Goes on with how far a pump or motor is from its rated point: `· p/pᵣ · nᵣ/n · νᵣ/ν`.
fn against_rated(
    formula: Formula,
    rated: &RatedPoint,
    (speed, pressure): (AngularSpeed, Pressure),
    at: &AtWork,
) -> Formula {
    let known = |symbol, quantity| Figure::known(symbol, quantity, Source::Judgement);
    formula
        .then("·", Figure::computed("p", Quantity::Pressure(pressure)))
        .then("/", known("pᵣ", Quantity::Pressure(rated.pressure)))
        .then("·", known("nᵣ", Quantity::Speed(rated.speed)))
        .then("/", Figure::computed("n", Quantity::Speed(speed)))
        .then("·", known("νᵣ", Quantity::Viscosity(rated.viscosity)))
        .then(
            "/",
            Figure::computed("ν", Quantity::Viscosity(at.viscosity)),
        )
}

/// What every kind of stage can tell.
pub trait StagePhysics {
    /// What kind it is.
    fn kind(&self) -> StageKind;

    /// What it does with what it takes.
    ///
    /// # Errors
    /// [`Stall::NotJoined`] where a stage for oil meets a shaft or the other way.
    fn pass(&self, takes: Drive, at: &AtWork) -> Result<Pass, Stall>;

    /// The most power that it may take at a rate: what strains it to its limit. `None` where it has
    /// none, or where that isn't known beforehand.
    fn may_take(&self, _: Rate, _: &AtWork) -> Option<Power> {
        None
    }

    /// How its figures come about, for showing.
    fn formulas(&self, takes: Drive, gives: Drive, at: &AtWork) -> Vec<Formula>;

    /// Shows each of its uncertain figures in turn, always in the same order.
    fn visit(&mut self, visit: &mut Visit<'_>);
}

/// One step of a route.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Stage {
    /// A gear, belt, chain or joint.
    Gear(Gear),
    /// Shaft to oil.
    Pump(Pump),
    /// The steering's share.
    Steering(Steering),
    /// Flow that can't be used.
    Divert(Divert),
    /// The valve that lets the oil out.
    Valve(Valve),
    /// Hoses and couplers.
    Hoses(Hoses),
    /// Oil to shaft.
    Motor(Motor),
}

/// The same for each kind of stage.
macro_rules! of_each {
    ($self:ident, $stage:ident => $does:expr) => {
        match $self {
            Self::Gear($stage) => $does,
            Self::Pump($stage) => $does,
            Self::Steering($stage) => $does,
            Self::Divert($stage) => $does,
            Self::Valve($stage) => $does,
            Self::Hoses($stage) => $does,
            Self::Motor($stage) => $does,
        }
    };
}

impl StagePhysics for Stage {
    fn kind(&self) -> StageKind {
        of_each!(self, stage => stage.kind())
    }

    fn pass(&self, takes: Drive, at: &AtWork) -> Result<Pass, Stall> {
        of_each!(self, stage => stage.pass(takes, at))
    }

    fn may_take(&self, rate: Rate, at: &AtWork) -> Option<Power> {
        of_each!(self, stage => stage.may_take(rate, at))
    }

    fn formulas(&self, takes: Drive, gives: Drive, at: &AtWork) -> Vec<Formula> {
        of_each!(self, stage => stage.formulas(takes, gives, at))
    }

    fn visit(&mut self, visit: &mut Visit<'_>) {
        of_each!(self, stage => stage.visit(visit));
    }
}
