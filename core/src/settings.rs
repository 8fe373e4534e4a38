//! What the user has turned away from the yard's own figures, and within which limits.

use crate::defaults;
use crate::fault::Fault;
use crate::hint::Hint;
use crate::implement::{Ground, Implement, Work};
use crate::machine::{Circuit, Engine, Machine, Outlet};
use crate::measure::{Amount, Swath};
use crate::physics::oil::{Grade, Oil};
use crate::quantity::{
    AngularSpeed, Density, Flow, Length, Power, Pressure, Temperature, Velocity,
};
use crate::route::RouteId;
use crate::route::part::{Part, circuit};
use crate::spread::Spread;
use crate::yard::report::Report;
use serde::Serialize;

/// What the user has turned. `None`: the yard's own figure.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct Settings {
    /// Engine speed.
    pub engine_speed: Option<AngularSpeed>,
    /// The engine's net power at rated speed.
    pub engine_power: Option<Power>,
    /// The machine's own hydraulics.
    pub own: OilSettings,
    /// The pump pack's.
    pub pack: OilSettings,
    /// Temperature of the oil.
    pub oil: Option<Temperature>,
    /// The outlet to use where a machine has several.
    pub outlet: Option<Outlet>,
    /// Whether the rear PTO runs in its economy gear, where the machine has one.
    pub economy: bool,
    /// The oil in the circuits.
    pub grade: Option<Grade>,
    /// How high the site lies.
    pub altitude: Option<Length>,
    /// Temperature of the air.
    pub air: Option<Temperature>,
    /// Speed over ground.
    pub ground_speed: Option<Velocity>,
    /// Rise over run, negative downhill.
    pub slope: Option<f64>,
    /// What is driven on.
    pub ground: Option<Ground>,
    /// Depth of what is worked.
    pub depth: Option<Length>,
    /// Density of the material.
    pub density: Option<Density>,
    /// How much there is to do.
    pub job: Option<Amount>,
}

/// What can be turned at a pump.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct OilSettings {
    /// The sheet's flow, or the pump pack's flow at the PTO's rated speed.
    pub flow: Option<Flow>,
    /// Relief pressure.
    pub relief: Option<Pressure>,
}

/// Lowest and highest flow, L/min, that can be set or stand in a yard file: this project's
/// judgement.
pub const FLOW_LIMITS: (f64, f64) = (1.0, 400.0);
/// Lowest and highest pressure, bar, that can be set or stand in a yard file: this project's
/// judgement.
pub const RELIEF_LIMITS: (f64, f64) = (20.0, 420.0);

/// Least and most power of an engine, kW, that can be set or stand in a yard file: this project's
/// judgement.
pub const ENGINE_POWER_LIMITS: (f64, f64) = (3.0, 600.0);
/// Least and most power of a shaft, kW, that can stand in a yard file or on a sheet: this project's
/// judgement.
pub const SHAFT_POWER_LIMITS: (f64, f64) = (1.0, 600.0);

/// Lowest and highest temperature of the oil that can be set, °C: this project's judgement. Below,
/// a VG 46 oil hardly flows; above, seals suffer.
pub const OIL_LIMITS: (f64, f64) = (-20.0, 100.0);

/// Lowest and highest site, m: this project's judgement, as all that follow.
pub const ALTITUDE_LIMITS: (f64, f64) = (0.0, 4000.0);
/// Coldest and warmest air, °C.
pub const AIR_LIMITS: (f64, f64) = (-30.0, 45.0);
/// Slowest and fastest travel at work, km/h.
pub const GROUND_SPEED_LIMITS: (f64, f64) = (0.0, 20.0);
/// Steepest way down and up, rise over run.
pub const SLOPE_LIMITS: (f64, f64) = (-0.3, 0.3);
/// Thinnest and thickest layer worked, m.
pub const DEPTH_LIMITS: (f64, f64) = (0.01, 2.0);
/// Lightest and heaviest material, kg/m³.
pub const DENSITY_LIMITS: (f64, f64) = (20.0, 2500.0);
/// Smallest and largest job, t, m², m³ or m.
pub const JOB_LIMITS: (f64, f64) = (0.1, 1e7);

/// A value at a limit may come through SI a last digit off.
pub const LAST_DIGITS: f64 = 1e-9;

/// An engine's lowest and rated speed, rpm, as the yard file writes them, without the last digits
/// of SI.
pub(crate) fn engine_speed_limits(engine: &Engine) -> (f64, f64) {
    let written = |speed: AngularSpeed| (speed.to_rpm() * 1e6).round() / 1e6;
    (written(engine.lowest), written(engine.rated))
}

impl Settings {
    /// What belongs to the site, whatever machine is on it.
    pub fn of_site(&self) -> Self {
        Self {
            altitude: self.altitude,
            air: self.air,
            oil: self.oil,
            ..Self::default()
        }
    }

    /// The engine speed that they mean for a machine.
    pub fn engine_speed_for(&self, machine: &Machine) -> AngularSpeed {
        let Some(speed) = self.engine_speed else {
            return machine.working_speed(self.economy);
        };
        let engine = &machine.engine;
        // The check lets a last digit beyond a limit through, where a curve has no points.
        let is = |limit: AngularSpeed| ((speed - limit) / engine.rated).abs() <= LAST_DIGITS;
        [engine.lowest, engine.rated]
            .into_iter()
            .find(|limit| is(*limit))
            .unwrap_or(speed)
    }

    /// The engine's net power at a speed that they mean: the yard's, or the one that is set with the
    /// yard's curve and relative spread.
    ///
    /// Equation: P(n) = P_set·P_yard(n)/P_yard. Units: SI. Valid range: as
    /// [`crate::machine::Engine::net_at`]. Source: definition.
    pub fn net_at(&self, machine: &Machine, speed: AngularSpeed) -> Spread<Power> {
        let engine = &machine.engine;
        let net = engine.net_at(speed);
        match self.engine_power {
            None => net,
            // P(n) = P_set·P_yard(n)/P_yard
            Some(power) => net.moved_to(power * (net.likely / engine.net.likely)),
        }
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

    /// The air's temperature that they mean.
    pub fn air(&self) -> Temperature {
        self.air.unwrap_or_else(defaults::air_temperature)
    }

    /// The site's altitude that they mean.
    pub fn altitude(&self) -> Length {
        self.altitude.unwrap_or(Length::ZERO)
    }

    /// The speed over ground that they mean for an implement.
    pub fn ground_speed_for(&self, implement: &Implement) -> Velocity {
        match (implement.travel, self.ground_speed) {
            (None, _) => Velocity::ZERO,
            (Some(travel), speed) => speed.unwrap_or(travel.usual),
        }
    }

    /// Width, depth and density that they mean for an implement's work.
    pub fn swath_for(&self, work: &Work) -> Swath {
        Swath {
            width: work.swath.width,
            depth: self.depth.or(work.swath.depth),
            density: self.density.or(work.swath.density),
        }
    }

    /// An oil, or the one that they mean instead.
    pub fn oil_for(&self, own: Oil) -> Oil {
        self.grade.map_or(own, Grade::typical)
    }

    /// Checks them against a machine.
    ///
    /// # Errors
    /// Every value that is out of its range or isn't a number.
    pub fn check(&self, machine: &Machine) -> Result<(), Vec<Fault>> {
        let mut report = Report::default();
        report.within(
            "engine_speed",
            self.engine_speed.map(AngularSpeed::to_rpm),
            engine_speed_limits(&machine.engine),
            "rpm",
            Hint::EngineSpeed,
        );
        report.within(
            "engine_power",
            self.engine_power.map(Power::to_kilowatts),
            ENGINE_POWER_LIMITS,
            "kW",
            Hint::EnginePower,
        );
        report.within(
            "oil",
            self.oil.map(Temperature::to_celsius),
            OIL_LIMITS,
            "°C",
            Hint::OilTemperature,
        );
        report.within(
            "altitude",
            self.altitude.map(Length::to_metres),
            ALTITUDE_LIMITS,
            "m",
            Hint::Altitude,
        );
        report.within(
            "air",
            self.air.map(Temperature::to_celsius),
            AIR_LIMITS,
            "°C",
            Hint::Air,
        );
        report.within(
            "ground_speed",
            self.ground_speed.map(Velocity::to_kilometres_per_hour),
            GROUND_SPEED_LIMITS,
            "km/h",
            Hint::GroundSpeed,
        );
        report.within("slope", self.slope, SLOPE_LIMITS, "", Hint::Slope);
        report.within(
            "depth",
            self.depth.map(Length::to_metres),
            DEPTH_LIMITS,
            "m",
            Hint::WorkedDepth,
        );
        report.within(
            "density",
            self.density.map(Density::to_kilograms_per_cubic_metre),
            DENSITY_LIMITS,
            "kg/m³",
            Hint::WorkedDensity,
        );
        report.within(
            "job",
            self.job.map(|job| match job {
                Amount::Mass(mass) => mass.to_tonnes(),
                other => other.to_si(),
            }),
            JOB_LIMITS,
            "",
            Hint::Job,
        );
        for (flow, relief, oil) in [
            ("own.flow", "own.relief", &self.own),
            ("pack.flow", "pack.relief", &self.pack),
        ] {
            report.within(
                flow,
                oil.flow.map(Flow::to_litres_per_minute),
                FLOW_LIMITS,
                "L/min",
                Hint::PumpFlow,
            );
            report.within(
                relief,
                oil.relief.map(Pressure::to_bar),
                RELIEF_LIMITS,
                "bar",
                Hint::ReliefSet,
            );
        }
        if report.is_empty() {
            Ok(())
        } else {
            Err(report.into_faults())
        }
    }
}
