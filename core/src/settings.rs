//! What the user has turned away from the yard's own figures, and how far it can be turned.

use crate::defaults;
use crate::fault::{Fault, Rule};
use crate::kit::Kit;
use crate::machine::{Circuit, Machine, Outlet};
use crate::quantity::{AngularSpeed, Flow, Pressure, Temperature};
use crate::route::RouteId;
use crate::route::part::{Part, circuit};
use crate::stage::OilAtWork;
use crate::units::Quantity;
use crate::yard::report::Report;

/// What the user has turned. `None`: the yard's own figure.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Settings {
    /// Engine speed.
    pub engine_speed: Option<AngularSpeed>,
    /// The machine's own hydraulics.
    pub own: OilSettings,
    /// The pump pack's.
    pub pack: OilSettings,
    /// Temperature of the oil.
    pub oil: Option<Temperature>,
    /// The outlet to use where a machine has several.
    pub outlet: Option<Outlet>,
}

/// What can be turned at a pump.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct OilSettings {
    /// The sheet's flow, or the pump pack's flow at the PTO's rated speed.
    pub flow: Option<Flow>,
    /// Relief pressure.
    pub relief: Option<Pressure>,
}

/// A thing that can be turned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Control {
    /// The engine's speed.
    EngineSpeed,
    /// The sheet's flow of the machine's own hydraulics.
    OwnFlow,
    /// The relief pressure of the machine's own hydraulics.
    OwnRelief,
    /// The pump pack's flow at the PTO's rated speed.
    PackFlow,
    /// The pump pack's relief pressure.
    PackRelief,
    /// The oil's temperature.
    OilTemperature,
}

/// How far a control can be turned, and where it stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// Lowest value.
    pub min: Quantity,
    /// Highest value.
    pub max: Quantity,
    /// The yard's own figure.
    pub own: Quantity,
    /// Where it stands.
    pub now: Quantity,
}

/// Lowest and highest flow, L/min, that can be set or stand in a yard file: this project's
/// judgement.
pub const FLOW_LIMITS: (f64, f64) = (1.0, 400.0);
/// Lowest and highest pressure, bar, that can be set or stand in a yard file: this project's
/// judgement.
pub const RELIEF_LIMITS: (f64, f64) = (20.0, 420.0);

/// Lowest and highest temperature of the oil that can be set, °C: this project's judgement. Below,
/// a VG 46 oil hardly flows; above, seals suffer.
pub const OIL_LIMITS: (f64, f64) = (-20.0, 100.0);

impl Control {
    /// The controls that bear on a route, the engine's speed first.
    pub fn of(route: RouteId) -> &'static [Self] {
        if route == RouteId::PumpPack {
            &[
                Self::EngineSpeed,
                Self::PackFlow,
                Self::PackRelief,
                Self::OilTemperature,
            ]
        } else if route.needs_oil() {
            &[
                Self::EngineSpeed,
                Self::OwnFlow,
                Self::OwnRelief,
                Self::OilTemperature,
            ]
        } else {
            &[Self::EngineSpeed, Self::OwnFlow, Self::OwnRelief]
        }
    }

    /// How far it can be turned for this machine and kit; `None` where there is nothing to turn.
    pub fn range(self, machine: &Machine, kit: Option<&Kit>, settings: &Settings) -> Option<Range> {
        let own_circuit = || settings.own_circuit(machine);
        let pack = || kit.and_then(|kit| kit.pump.as_ref());
        match self {
            Self::EngineSpeed => {
                let own = machine.working_speed();
                Some(Range {
                    min: Quantity::Speed(machine.engine.lowest),
                    max: Quantity::Speed(machine.engine.rated),
                    own: Quantity::Speed(own),
                    now: Quantity::Speed(settings.engine_speed.unwrap_or(own)),
                })
            }
            Self::OwnFlow => {
                own_circuit().map(|circuit| flow_range(circuit.flow.likely, settings.own.flow))
            }
            Self::OwnRelief => own_circuit()
                .map(|circuit| relief_range(circuit.relief.likely, settings.own.relief)),
            Self::PackFlow => pack().and_then(|pump| {
                let drive = kit.into_iter().flat_map(|kit| &kit.drive);
                let ratio: f64 = drive.map(|gear| gear.ratio).product();
                let speed = machine.rear_pto.as_ref()?.rated * ratio;
                let own = pump.displacement * speed * pump.volumetric.likely;
                Some(flow_range(own, settings.pack.flow))
            }),
            Self::OilTemperature => Some(Range {
                min: Quantity::Temperature(Temperature::celsius(OIL_LIMITS.0)),
                max: Quantity::Temperature(Temperature::celsius(OIL_LIMITS.1)),
                own: Quantity::Temperature(defaults::oil_temperature()),
                now: Quantity::Temperature(settings.oil_temperature()),
            }),
            Self::PackRelief => {
                pack().map(|pump| relief_range(pump.relief.likely, settings.pack.relief))
            }
        }
    }

    /// The settings with this control turned to a value, or back to the yard's own figure. A
    /// quantity of another kind changes nothing.
    pub fn turned(self, mut settings: Settings, to: Option<Quantity>) -> Settings {
        let flow = match to {
            Some(Quantity::Flow(flow)) => Some(flow),
            _ => None,
        };
        let relief = match to {
            Some(Quantity::Pressure(pressure)) => Some(pressure),
            _ => None,
        };
        match self {
            Self::EngineSpeed => {
                settings.engine_speed = match to {
                    Some(Quantity::Speed(speed)) => Some(speed),
                    _ => None,
                };
            }
            Self::OwnFlow => settings.own.flow = flow,
            Self::OwnRelief => settings.own.relief = relief,
            Self::PackFlow => settings.pack.flow = flow,
            Self::PackRelief => settings.pack.relief = relief,
            Self::OilTemperature => {
                settings.oil = match to {
                    Some(Quantity::Temperature(temperature)) => Some(temperature),
                    _ => None,
                };
            }
        }
        settings
    }
}

fn flow_range(own: Flow, now: Option<Flow>) -> Range {
    let most = own.to_litres_per_minute() * 2.0;
    Range {
        min: Quantity::Flow(Flow::litres_per_minute(5.0)),
        max: Quantity::Flow(Flow::litres_per_minute(most.clamp(40.0, FLOW_LIMITS.1))),
        own: Quantity::Flow(own),
        now: Quantity::Flow(now.unwrap_or(own)),
    }
}

fn relief_range(own: Pressure, now: Option<Pressure>) -> Range {
    Range {
        min: Quantity::Pressure(Pressure::bar(50.0)),
        max: Quantity::Pressure(Pressure::bar(350.0)),
        own: Quantity::Pressure(own),
        now: Quantity::Pressure(now.unwrap_or(own)),
    }
}

impl Settings {
    /// The engine speed that they mean for a machine.
    pub fn engine_speed_for(&self, machine: &Machine) -> AngularSpeed {
        self.engine_speed.unwrap_or_else(|| machine.working_speed())
    }

    /// The circuit of a machine's own hydraulics that they mean.
    pub fn own_circuit<'a>(&self, machine: &'a Machine) -> Option<&'a Circuit> {
        [RouteId::MachineHydraulics, RouteId::SkidSteer]
            .into_iter()
            .flat_map(RouteId::parts)
            .find_map(|part| match part {
                Part::Circuit(outlets) => circuit(machine, outlets, self),
                _ => None,
            })
    }

    /// The oil's temperature that they mean.
    pub fn oil_temperature(&self) -> Temperature {
        self.oil.unwrap_or_else(defaults::oil_temperature)
    }

    /// The oil that they mean, as it is at work.
    pub fn oil_at_work(&self) -> OilAtWork {
        let temperature = self.oil_temperature();
        OilAtWork {
            viscosity: defaults::viscosity(temperature),
            density: defaults::oil().density(temperature),
        }
    }

    /// Checks them against a machine.
    ///
    /// # Errors
    /// Every value that is out of its range or isn't a number.
    pub fn check(&self, machine: &Machine) -> Result<(), Vec<Fault>> {
        let mut report = Report::default();
        let mut within = |path: &str, value: Option<f64>, (min, max), unit, hint: &str| {
            // A value at a limit may come through SI a last digit off.
            let rounding = max * 1e-9;
            if let Some(value) = value
                && !(min - rounding..=max + rounding).contains(&value)
            {
                let rule = Rule::Within { min, max, unit };
                report.add(path, value.to_string(), rule, hint);
            }
        };
        let engine = &machine.engine;
        // As the yard file writes them, without the last digits of SI.
        let written = |speed: AngularSpeed| (speed.to_rpm() * 1e6).round() / 1e6;
        let speeds = (written(engine.lowest), written(engine.rated));
        within(
            "engine_speed",
            self.engine_speed.map(AngularSpeed::to_rpm),
            speeds,
            "rpm",
            "The engine can't work there: choose a speed between its lowest and its rated one.",
        );
        within(
            "oil",
            self.oil.map(Temperature::to_celsius),
            OIL_LIMITS,
            "°C",
            "Oil of this kind isn't worked with there.",
        );
        for (name, oil) in [("own", &self.own), ("pack", &self.pack)] {
            within(
                &format!("{name}.flow"),
                oil.flow.map(Flow::to_litres_per_minute),
                FLOW_LIMITS,
                "L/min",
                "No pump for this job has such a flow.",
            );
            within(
                &format!("{name}.relief"),
                oil.relief.map(Pressure::to_bar),
                RELIEF_LIMITS,
                "bar",
                "No machine for this job is set so.",
            );
        }
        if report.is_empty() {
            Ok(())
        } else {
            Err(report.into_faults())
        }
    }
}
