//! The circuits of `circuits.py` as the core's stages.

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
use farend_core::stage::{AtWork, Stage, StageKind, StagePhysics, gear};
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
    engine_kw: f64,
    engine_rpm: f64,
    viscosity_cst: f64,
    density_kg_m3: f64,
    gear_in: GivenGear,
    pump: GivenPump,
    steering_l_min: f64,
    divert_l_min: Option<f64>,
    valve: GivenValve,
    hoses: GivenHoses,
    motor: GivenMotor,
    gear_out: GivenGear,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct GivenGear {
    ratio: f64,
    efficiency: f64,
    rating_nm: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct GivenPump {
    displacement_cm3: f64,
    rated_rpm: f64,
    rated_bar: f64,
    volumetric: f64,
    hydro_mechanical: f64,
    relief_bar: f64,
    demand_l_min: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct GivenValve {
    drop_bar: f64,
    at_l_min: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct GivenHoses {
    supply: GivenHose,
    back: GivenHose,
    couplers: f64,
    coupler_bar: f64,
    coupler_l_min: f64,
    fittings: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct GivenHose {
    bore_mm: f64,
    length_m: f64,
    relative_roughness: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct GivenMotor {
    displacement_cm3: f64,
    rated_rpm: f64,
    rated_bar: f64,
    volumetric: f64,
    hydro_mechanical: f64,
    highest_bar: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Found {
    pub limit: Held,
    pub delivered_kw: f64,
    pump_l_min: f64,
    pump_bar: f64,
    motor_rpm: f64,
    rotor_nm: f64,
    /// What every part with oil loses, summed.
    oil_heat_kw: f64,
    /// What goes into the pump's shaft less what comes out of the motor's.
    between_shafts_kw: f64,
    pub hose_loss_kw: f64,
    /// In the hose to the motor.
    pub reynolds: f64,
    /// With Colebrook's equation for turbulent friction.
    pub delivered_by_colebrook_kw: f64,
}

/// What holds a circuit where it is, in the words of `circuits.py`.
#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq, PartialOrd, Ord)]
#[serde(rename_all = "snake_case")]
pub enum Held {
    Engine,
    Relief,
    Motor,
    GearIn,
    GearOut,
    Flow,
}

impl Held {
    pub const ALL: [Self; 6] = [
        Self::Engine,
        Self::Relief,
        Self::Motor,
        Self::GearIn,
        Self::GearOut,
        Self::Flow,
    ];

    /// The core's name for it; both gears' ratings are the same to it.
    pub fn limit(self) -> Limit {
        match self {
            Self::Engine => Limit::Engine,
            Self::Relief => Limit::Pressure,
            Self::Motor => Limit::Implement,
            Self::GearIn | Self::GearOut => Limit::ShaftRating,
            Self::Flow => Limit::Flow,
        }
    }
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

impl Found {
    /// Each of its figures after the core's, by name. `None` where the core stalls.
    pub fn beside(&self, ledger: &Ledger) -> Option<[(&'static str, f64, f64); 8]> {
        let passage = |kind| {
            let mut passages = ledger.passages.iter();
            passages.find(|passage| passage.stage.kind() == kind)
        };
        let (pump, motor) = (passage(StageKind::Pump)?, passage(StageKind::Motor)?);
        let hoses = passage(StageKind::Hoses)?;
        let delivered = ledger.delivered()?;
        let flow = pump.gives.rate.flowing().ok()?;
        let motor_speed = motor.gives.rate.turning().ok()?;
        let rotor_speed = delivered.rate.turning().ok()?;
        let (pressure, torque) = (pump.gives.power / flow, delivered.power / rotor_speed);
        let between_shafts = pump.takes.power - motor.gives.power;
        let kw = Power::to_kilowatts;
        Some([
            ("power delivered", kw(delivered.power), self.delivered_kw),
            ("pump's flow", flow.to_litres_per_minute(), self.pump_l_min),
            ("pump's pressure", pressure.to_bar(), self.pump_bar),
            ("motor's speed", motor_speed.to_rpm(), self.motor_rpm),
            ("rotor's torque", torque.to_newton_metres(), self.rotor_nm),
            ("heat in oil", kw(ledger.heats_oil()), self.oil_heat_kw),
            (
                "lost between shafts",
                kw(between_shafts),
                self.between_shafts_kw,
            ),
            ("hoses' loss", kw(hoses.loss), self.hose_loss_kw),
        ])
    }
}
