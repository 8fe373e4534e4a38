//! The things that can be turned, each with how far.

use crate::defaults;
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use crate::quantity::{Density, Flow, Length, Pressure, Temperature, Velocity};
use crate::route::RouteId;
use crate::settings::{
    AIR_LIMITS, ALTITUDE_LIMITS, DENSITY_LIMITS, DEPTH_LIMITS, FLOW_LIMITS, OIL_LIMITS,
    SLOPE_LIMITS, Settings,
};
use crate::units::Quantity;

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
    /// How high the site lies.
    Altitude,
    /// The air's temperature.
    AirTemperature,
    /// Speed over ground.
    GroundSpeed,
    /// Rise over run.
    Slope,
    /// Depth of what is worked.
    Depth,
    /// Density of the material.
    MaterialDensity,
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

impl Control {
    /// All of them, in the order of their numbers in a link: new ones go to the end.
    pub const ALL: &[Self] = &[
        Self::EngineSpeed,
        Self::OwnFlow,
        Self::OwnRelief,
        Self::PackFlow,
        Self::PackRelief,
        Self::OilTemperature,
        Self::Altitude,
        Self::AirTemperature,
        Self::GroundSpeed,
        Self::Slope,
        Self::Depth,
        Self::MaterialDensity,
    ];
    /// Those of the site.
    pub const SITE: &[Self] = &[Self::Altitude, Self::AirTemperature];
    /// Those of driving and of the material.
    pub const WORK: &[Self] = &[
        Self::GroundSpeed,
        Self::Slope,
        Self::Depth,
        Self::MaterialDensity,
    ];

    /// The controls shown with a route, the engine's speed first: those that bear on it, and with a
    /// shaft those of the machine's own hydraulics, which it is held against.
    pub fn of(route: RouteId) -> &'static [Self] {
        if route.has_kit_pump() {
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

    /// How far it can be turned for this machine, implement and kit, which is this project's
    /// judgement; `None` where there is nothing to turn.
    pub fn range(
        self,
        machine: &Machine,
        implement: &Implement,
        kit: Option<&Kit>,
        settings: &Settings,
    ) -> Option<Range> {
        let own_circuit = || settings.own_circuit(machine);
        let pack = || kit.and_then(|kit| kit.pump.as_ref());
        match self {
            Self::EngineSpeed => {
                let own = machine.working_speed(settings.economy);
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
                let speed = machine.rear_pto(settings.economy)?.rated * ratio;
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
            Self::Altitude => {
                let to = |metres| Quantity::Length(Length::metres(metres));
                Some(Range {
                    min: to(ALTITUDE_LIMITS.0),
                    max: to(ALTITUDE_LIMITS.1),
                    own: to(0.0),
                    now: Quantity::Length(settings.altitude()),
                })
            }
            Self::AirTemperature => Some(Range {
                min: Quantity::Temperature(Temperature::celsius(AIR_LIMITS.0)),
                max: Quantity::Temperature(Temperature::celsius(AIR_LIMITS.1)),
                own: Quantity::Temperature(defaults::air_temperature()),
                now: Quantity::Temperature(settings.air()),
            }),
            Self::GroundSpeed => implement.travel.map(|travel| Range {
                min: Quantity::GroundSpeed(Velocity::ZERO),
                max: Quantity::GroundSpeed(travel.highest),
                own: Quantity::GroundSpeed(travel.usual),
                now: Quantity::GroundSpeed(settings.ground_speed_for(implement)),
            }),
            Self::Slope => implement.travel.map(|_| Range {
                min: Quantity::Slope(SLOPE_LIMITS.0),
                max: Quantity::Slope(SLOPE_LIMITS.1),
                own: Quantity::Slope(0.0),
                now: Quantity::Slope(settings.slope.unwrap_or(0.0)),
            }),
            Self::Depth => implement.work.and_then(|work| {
                let own = work.swath.depth?;
                Some(Range {
                    min: Quantity::Depth((own * 0.1).max(Length::metres(DEPTH_LIMITS.0))),
                    max: Quantity::Depth((own * 3.0).min(Length::metres(DEPTH_LIMITS.1))),
                    own: Quantity::Depth(own),
                    now: Quantity::Depth(settings.depth.unwrap_or(own)),
                })
            }),
            Self::MaterialDensity => implement.work.and_then(|work| {
                let own = work.swath.density?;
                let [lightest, heaviest] =
                    [DENSITY_LIMITS.0, DENSITY_LIMITS.1].map(Density::kilograms_per_cubic_metre);
                Some(Range {
                    min: Quantity::Density((own * 0.2).max(lightest)),
                    max: Quantity::Density((own * 4.0).min(heaviest)),
                    own: Quantity::Density(own),
                    now: Quantity::Density(settings.density.unwrap_or(own)),
                })
            }),
        }
    }

    /// The settings with this control turned to a value, or back to the yard's own figure. A
    /// quantity of another kind counts as none.
    pub fn turned(self, mut settings: Settings, to: Option<Quantity>) -> Settings {
        macro_rules! value_of {
            ($kind:ident) => {
                match to {
                    Some(Quantity::$kind(value)) => Some(value),
                    _ => None,
                }
            };
        }
        match self {
            Self::EngineSpeed => settings.engine_speed = value_of!(Speed),
            Self::OwnFlow => settings.own.flow = value_of!(Flow),
            Self::OwnRelief => settings.own.relief = value_of!(Pressure),
            Self::PackFlow => settings.pack.flow = value_of!(Flow),
            Self::PackRelief => settings.pack.relief = value_of!(Pressure),
            Self::OilTemperature => settings.oil = value_of!(Temperature),
            Self::Altitude => settings.altitude = value_of!(Length),
            Self::AirTemperature => settings.air = value_of!(Temperature),
            Self::GroundSpeed => settings.ground_speed = value_of!(GroundSpeed),
            Self::Slope => settings.slope = value_of!(Slope),
            Self::Depth => settings.depth = value_of!(Depth),
            Self::MaterialDensity => settings.density = value_of!(Density),
        }
        settings
    }
}

fn flow_range(own: Flow, now: Option<Flow>) -> Range {
    let most = own.to_litres_per_minute() * 2.0;
    let lowest = Flow::litres_per_minute(FLOW_LIMITS.0);
    Range {
        min: Quantity::Flow(Flow::litres_per_minute(5.0).min(own).max(lowest)),
        max: Quantity::Flow(Flow::litres_per_minute(most.clamp(40.0, FLOW_LIMITS.1))),
        own: Quantity::Flow(own),
        now: Quantity::Flow(now.unwrap_or(own)),
    }
}

fn relief_range(own: Pressure, now: Option<Pressure>) -> Range {
    // The usual ones, and the yard's own where it lies beyond.
    Range {
        min: Quantity::Pressure(Pressure::bar(50.0).min(own)),
        max: Quantity::Pressure(Pressure::bar(350.0).max(own)),
        own: Quantity::Pressure(own),
        now: Quantity::Pressure(now.unwrap_or(own)),
    }
}
