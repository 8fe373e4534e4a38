//! The stages that parts of a route become.

use super::part::{NoFit, most_for, nearest_shaft};
use crate::defaults;
use crate::implement::{Implement, InputMotor, Place};
use crate::kit::KitPump;
use crate::machine::{Circuit, Machine, Pto, Reservoir, SteeringShare, Supply};
use crate::physics::displacement::RatedPoint;
use crate::physics::hydraulic::pump_displacement;
use crate::physics::oil::Oil;
use crate::quantity::AngularSpeed;
use crate::settings::{LAST_DIGITS, Settings};
use crate::stage::Stage;
use crate::stage::divert::Divert;
use crate::stage::gear::Gear;
use crate::stage::motor::Motor;
use crate::stage::pump::{Pump, PumpSize};
use crate::stage::steering::Steering;
use crate::stage::valve::Valve;

/// Brought over needed input speed, both rated, that can still be worked with: this project's
/// judgement.
const SPEED_FITS: core::ops::RangeInclusive<f64> = 0.8 - LAST_DIGITS..=1.1 + LAST_DIGITS;

/// Stages and reasons as the parts add them.
#[derive(Debug, Default)]
pub(super) struct Assembly {
    pub stages: Vec<Stage>,
    pub reasons: Vec<NoFit>,
    /// Speed of the shaft reached so far when the PTO has its rated speed.
    pub rated: Option<AngularSpeed>,
    /// The oil, where a kit brings its own.
    pub oil: Option<Oil>,
    /// The tank.
    pub reservoir: Reservoir,
}

impl Assembly {
    pub fn gear(&mut self, gear: Gear) {
        self.rated = self.rated.map(|speed| speed * gear.ratio);
        self.stages.push(Stage::Gear(gear));
    }

    pub fn pto(&mut self, machine: &Machine, pto: Option<&Pto>, missing: NoFit) {
        match pto {
            None => self.reasons.push(missing),
            Some(pto) => {
                self.stages.push(Stage::Gear(pto.train(&machine.engine)));
                self.rated = Some(pto.rated);
            }
        }
    }

    pub fn circuit(&mut self, circuit: &Circuit, implement: &Implement, settings: &Settings) {
        let flow = match settings.own.flow {
            None => circuit.flow,
            Some(flow) => circuit.flow.moved_to(flow),
        };
        let (less, steering) = match circuit.steering {
            SteeringShare::SeparatePump => (None, None),
            SteeringShare::Summed(flow) => (Some(flow), None),
            SteeringShare::FixedPriority(flow) => (None, Some(Steering::FixedPriority(flow))),
            SteeringShare::LoadSensingPriority => (None, Some(Steering::LoadSensing)),
        };
        let asked = implement.motor.as_ref().map(|motor| {
            let most = most_for(motor, implement);
            match steering {
                // Q_asked = Q_motor + Q_st
                Some(Steering::FixedPriority(taken)) => most + taken.likely,
                _ => most,
            }
        });
        self.stages.push(Stage::Pump(Pump {
            size: PumpSize::Sheet {
                flow,
                less,
                volumetric: circuit.volumetric.likely,
            },
            rated: RatedPoint {
                speed: circuit.engine_speed,
                pressure: circuit.relief.likely,
                viscosity: defaults::rated_viscosity(),
            },
            volumetric: circuit.volumetric,
            hydro_mechanical: circuit.hydro_mechanical,
            relief: match settings.own.relief {
                None => circuit.relief,
                Some(relief) => circuit.relief.moved_to(relief),
            },
            demand: match circuit.supply {
                Supply::OpenCentre => None,
                Supply::PressureCompensated | Supply::LoadSensing => asked,
            },
        }));
        self.reservoir = circuit.reservoir;
        self.stages.extend(steering.map(Stage::Steering));
        self.divert(implement);
        self.stages.push(Stage::Valve(circuit.open_valve()));
    }

    pub fn kit_pump(&mut self, pump: &KitPump, implement: &Implement, settings: &Settings) {
        let most = pump.highest * (1.0 + LAST_DIGITS);
        if let Some(brings) = self.rated.filter(|speed| *speed > most) {
            self.reasons.push(NoFit::PumpTooFast {
                brings,
                highest: pump.highest,
            });
        }
        // Where there is no PTO, its speed is of no matter: a reason has been given.
        let speed = self.rated.unwrap_or(pump.highest);
        // V = 2π·Q/(ω·ηv) for a wished flow at the PTO's rated speed.
        let displacement = settings.pack.flow.map_or(pump.displacement, |flow| {
            pump_displacement(flow, speed, pump.volumetric.likely)
        });
        self.stages.push(Stage::Pump(Pump {
            size: PumpSize::Displacement(displacement),
            rated: RatedPoint {
                speed,
                pressure: pump.relief.likely,
                viscosity: defaults::rated_viscosity(),
            },
            volumetric: pump.volumetric,
            hydro_mechanical: pump.hydro_mechanical,
            relief: match settings.pack.relief {
                None => pump.relief,
                Some(relief) => pump.relief.moved_to(relief),
            },
            demand: None,
        }));
        self.oil = Some(pump.oil);
        self.reservoir = pump.reservoir;
        self.divert(implement);
        self.stages.push(Stage::Valve(Valve::Open {
            drop: pump.valve,
            at: pump.displacement * speed,
        }));
    }

    pub fn divert(&mut self, implement: &Implement) {
        if let Some(motor) = &implement.motor {
            self.stages.push(Stage::Divert(Divert {
                most: most_for(motor, implement),
            }));
        }
    }

    pub fn motor(&mut self, motor: &InputMotor, implement: &Implement) {
        self.stages.push(Stage::Motor(Motor {
            displacement: motor.displacement,
            rated: RatedPoint {
                speed: implement.rotor.rated / motor.ratio,
                pressure: motor.highest_pressure,
                viscosity: defaults::rated_viscosity(),
            },
            volumetric: motor.volumetric,
            hydro_mechanical: motor.hydro_mechanical,
            highest: motor.highest_pressure,
        }));
        let steps = implement.from_motor(motor);
        self.stages.extend(steps.map(Stage::Gear));
    }

    pub fn shaft(&mut self, implement: &Implement, place: Place) {
        let Some(brings) = self.rated else {
            // Without a PTO the speed is unknown: only say whether the implement has a shaft.
            if !implement.shafts.iter().any(|shaft| shaft.place == place) {
                self.reasons.push(NoFit::NoShaft(place));
            }
            return;
        };
        match nearest_shaft(implement, place, brings) {
            None => self.reasons.push(NoFit::NoShaft(place)),
            Some(shaft) if SPEED_FITS.contains(&(brings / shaft.speed)) => {
                for gear in implement.from_shaft(shaft) {
                    self.gear(gear);
                }
            }
            Some(shaft) => self.reasons.push(NoFit::WrongSpeed {
                brings,
                needs: shaft.speed,
            }),
        }
    }
}
