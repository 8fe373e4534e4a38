//! Whole hydraulic circuits as `tests/reference/circuits.py` draws them, as the core's stages.

mod drawn;
mod found;
mod plain;

pub use found::{Found, Held, pump_bar};
pub use plain::{LAMINAR_UP_TO, TURBULENT_FROM};

use farend_core::chain::{Chain, Ledger};
use farend_core::drive::Limit;
use farend_core::physics::displacement::RatedPoint;
use farend_core::physics::line::Pipe;
use farend_core::quantity::{
    AngularSpeed, Density, Displacement, Flow, Length, Power, Pressure, Torque, Viscosity,
};
use farend_core::source::Source;
use farend_core::spread::{Corner, Spread};
use farend_core::stage::divert::Divert;
use farend_core::stage::gear::{GearKind, GearRole};
use farend_core::stage::hoses::Hoses;
use farend_core::stage::motor::Motor;
use farend_core::stage::pump::{Pump, PumpSize};
use farend_core::stage::steering::Steering;
use farend_core::stage::valve::Valve;
use farend_core::stage::{AtWork, Stage, gear};
use serde::Deserialize;

/// At which its figures are rated: `circuits.py` has the same.
const RATED_CST: f64 = 30.0;

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Circuit {
    pub given: Given,
    pub found: Found,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Given {
    pub engine_kw: f64,
    pub engine_rpm: f64,
    pub viscosity_cst: f64,
    pub density_kg_m3: f64,
    pub gear_in: GivenGear,
    pub pump: GivenPump,
    pub steering_l_min: f64,
    pub divert_l_min: Option<f64>,
    pub valve: GivenValve,
    pub hoses: GivenHoses,
    pub motor: GivenMotor,
    pub gear_out: GivenGear,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GivenGear {
    pub ratio: f64,
    pub efficiency: f64,
    pub rating_nm: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GivenPump {
    pub displacement_cm3: f64,
    pub rated_rpm: f64,
    pub rated_bar: f64,
    pub volumetric: f64,
    pub hydro_mechanical: f64,
    pub relief_bar: f64,
    pub demand_l_min: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GivenValve {
    pub drop_bar: f64,
    pub at_l_min: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GivenHoses {
    pub supply: GivenHose,
    pub back: GivenHose,
    pub couplers: f64,
    pub coupler_bar: f64,
    pub coupler_l_min: f64,
    pub fittings: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GivenHose {
    pub bore_mm: f64,
    pub length_m: f64,
    pub relative_roughness: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct GivenMotor {
    pub displacement_cm3: f64,
    pub rated_rpm: f64,
    pub rated_bar: f64,
    pub volumetric: f64,
    pub hydro_mechanical: f64,
    pub highest_bar: f64,
}

fn exact<T: Copy>(value: T) -> Spread<T> {
    Spread::exact(value, Source::Own)
}

fn rated(rpm: f64, bar: f64) -> RatedPoint {
    RatedPoint {
        speed: AngularSpeed::rpm(rpm),
        pressure: Pressure::bar(bar),
        viscosity: Viscosity::centistokes(RATED_CST),
    }
}

impl GivenGear {
    fn stage(&self) -> Stage {
        let rating = |nm| (exact(Torque::newton_metres(nm)), Limit::ShaftRating);
        Stage::Gear(gear::Gear {
            role: GearRole::Step(GearKind::Spur),
            ratio: self.ratio,
            efficiency: exact(self.efficiency),
            rating: self.rating_nm.map(rating),
            angle: None,
        })
    }
}

impl GivenPump {
    fn stage(&self) -> Stage {
        Stage::Pump(Pump {
            size: PumpSize::Displacement(Displacement::cubic_centimetres(self.displacement_cm3)),
            rated: rated(self.rated_rpm, self.rated_bar),
            volumetric: exact(self.volumetric),
            hydro_mechanical: exact(self.hydro_mechanical),
            relief: exact(Pressure::bar(self.relief_bar)),
            demand: self.demand_l_min.map(Flow::litres_per_minute),
        })
    }
}

impl GivenValve {
    fn stage(&self) -> Stage {
        let drop = exact(Pressure::bar(self.drop_bar));
        Stage::Valve(match self.at_l_min {
            Some(at) => Valve::Open {
                drop,
                at: Flow::litres_per_minute(at),
            },
            None => Valve::Margin(drop),
        })
    }
}

impl GivenHose {
    fn pipe(&self) -> Pipe {
        Pipe {
            bore: Length::millimetres(self.bore_mm),
            length: Length::metres(self.length_m),
            relative_roughness: self.relative_roughness,
        }
    }
}

impl GivenHoses {
    fn stage(&self) -> Stage {
        Stage::Hoses(Hoses {
            supply: self.supply.pipe(),
            back: self.back.pipe(),
            couplers: self.couplers,
            coupler_drop: exact(Pressure::bar(self.coupler_bar)),
            coupler_flow: Flow::litres_per_minute(self.coupler_l_min),
            fittings: self.fittings,
        })
    }
}

impl GivenMotor {
    fn stage(&self) -> Stage {
        Stage::Motor(Motor {
            displacement: Displacement::cubic_centimetres(self.displacement_cm3),
            rated: rated(self.rated_rpm, self.rated_bar),
            volumetric: exact(self.volumetric),
            hydro_mechanical: exact(self.hydro_mechanical),
            highest: Pressure::bar(self.highest_bar),
        })
    }
}

impl Given {
    fn stages(&self) -> Vec<Stage> {
        let steering = Flow::litres_per_minute(self.steering_l_min);
        let divert = |most| {
            Stage::Divert(Divert {
                most: Flow::litres_per_minute(most),
            })
        };
        [self.gear_in.stage(), self.pump.stage()]
            .into_iter()
            .chain([Stage::Steering(Steering::FixedPriority(exact(steering)))])
            .chain(self.divert_l_min.map(divert))
            .chain([self.valve.stage(), self.hoses.stage()])
            .chain([self.motor.stage(), self.gear_out.stage()])
            .collect()
    }

    /// Whether its pump gives less than it could.
    pub fn swings_back(&self, found: &Found) -> bool {
        // Other flows aren't at the demand to so many digits.
        let at_demand = |demand: f64| (demand / found.pump_l_min - 1.0).abs() < 1e-9;
        self.pump.demand_l_min.is_some_and(at_demand)
    }

    /// Whether more flow comes than may go on.
    pub fn diverts(&self, found: &Found) -> bool {
        let comes = found.pump_l_min - self.steering_l_min;
        self.divert_l_min.is_some_and(|most| most < comes)
    }

    /// By the core, at the most that arrives.
    pub fn ledger(&self) -> Ledger {
        let stages = self.stages();
        let chain = Chain {
            stages: &stages,
            available: Power::kilowatts(self.engine_kw),
            speed: AngularSpeed::rpm(self.engine_rpm),
            at: AtWork {
                corner: Corner::LIKELY,
                viscosity: Viscosity::centistokes(self.viscosity_cst),
                density: Density::kilograms_per_cubic_metre(self.density_kg_m3),
            },
        };
        let (most, limit) = chain.most().expect("stages that are joined");
        chain.ledger(&most, limit).expect("stages that are joined")
    }
}
