//! Hardware that a route needs beside machine and implement.

use crate::hookup::{KitShaft, Seat};
use crate::machine::Reservoir;
use crate::physics::line::Pipe;
use crate::physics::oil::Oil;
use crate::quantity::{AngularSpeed, Displacement, Flow, Length, Pressure, Time, Torque};
use crate::route::RouteId;
use crate::spread::Spread;
use crate::stage::gear::Gear;
use crate::stage::hoses::Hoses;

/// A kit, checked.
#[derive(Clone, Debug, PartialEq)]
pub struct Kit {
    /// Identifier in its yard.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// The routes that it serves.
    pub routes: Vec<RouteId>,
    /// The PTO speed that it's built for, where it takes a PTO of one speed.
    pub pto_speed: Option<AngularSpeed>,
    /// Mechanical steps from the PTO on, in order.
    pub drive: Vec<Gear>,
    /// Its own pump.
    pub pump: Option<KitPump>,
    /// Its hoses and couplers.
    pub hoses: Option<KitHoses>,
    /// Its shaft.
    pub shaft: KitShaft,
    /// Torque at which the first of its slip clutches slips.
    pub slips: Option<Torque>,
    /// Where it puts the implement, where that isn't the route's usual place.
    pub seat: Option<Seat>,
    /// Whether it comes with the machine or the implement, so that nothing must be bought.
    pub included: bool,
    /// Time to hook it up.
    pub hookup: Option<Time>,
    /// Its price, in the yard's currency.
    pub price: Option<f64>,
    /// Price of fitting it.
    pub fitting: Option<f64>,
}

/// A pump that a kit brings, with its own reservoir.
#[derive(Clone, Debug, PartialEq)]
pub struct KitPump {
    /// Displacement per revolution.
    pub displacement: Displacement,
    /// Highest speed.
    pub highest: AngularSpeed,
    /// Relief pressure.
    pub relief: Spread<Pressure>,
    /// Volumetric efficiency.
    pub volumetric: Spread<f64>,
    /// Hydro-mechanical efficiency.
    pub hydro_mechanical: Spread<f64>,
    /// Pressure that its open valve takes at the pump's flow at the PTO's rated speed.
    pub valve: Spread<Pressure>,
    /// The line to it.
    pub suction: Option<Suction>,
    /// Its tank.
    pub reservoir: Reservoir,
    /// Its oil.
    pub oil: Oil,
}

/// A pump's suction line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Suction {
    /// Bore and length.
    pub line: Pipe,
    /// How far the pump stands above the oil, negative below it.
    pub lift: Length,
}

/// A pair of hoses that a kit brings.
#[derive(Clone, Debug, PartialEq)]
pub struct KitHoses {
    /// The hose to the motor.
    pub supply: Pipe,
    /// The hose back from it.
    pub back: Pipe,
    /// Couplers passed, both ways together.
    pub couplers: f64,
    /// Pressure that one takes at its rated flow.
    pub coupler_drop: Spread<Pressure>,
    /// That rated flow.
    pub coupler_flow: Flow,
    /// Loss coefficients K of elbows and adapters added up, one way.
    pub fittings: f64,
    /// Size of its couplers on the machine's side.
    pub coupler_size: Option<Length>,
    /// Whether it has a third, pressureless line back to the tank.
    pub case_drain: Option<bool>,
}

impl KitHoses {
    /// As a stage of a route.
    pub fn stage(&self) -> Hoses {
        Hoses {
            supply: self.supply,
            back: self.back,
            couplers: self.couplers,
            coupler_drop: self.coupler_drop,
            coupler_flow: self.coupler_flow,
            fittings: self.fittings,
        }
    }
}
