//! How warm a route's oil gets at work.

use crate::chain::{Chain, Running};
use crate::defaults;
use crate::drive::{Limit, Stall};
use crate::physics::heat::{
    Warming, cooler_duty, cooler_size, heat_capacity, oil_specific_heat, smallest_tank,
    still_air_by_btu_rule, still_air_by_horsepower_rule, tank_surface, usual_tank,
};
use crate::quantity::{
    AngularSpeed, Area, Conductance, Flow, Power, Temperature, TemperatureDifference, Time, Volume,
};
use crate::root::{Bracket, rising_root};
use crate::route::RouteId;
use crate::route::joined::Joined;
use crate::route::part::{Hookup, assemble};
use crate::source::Source;
use crate::spread::{Corner, Spread};
use crate::stage::pump::Pump;
use crate::stage::valve::Valve;
use crate::stage::{AtWork, OilAtWork, Stage};
use crate::units::Quantity;
use crate::work::{Load, need_for};

/// A rule for what a tank's surface sheds in still air.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SurfaceRule {
    /// 2.0 Btu/h for each square foot and degree Fahrenheit.
    Btu,
    /// 0.001 hp for each square foot and degree Fahrenheit.
    Horsepower,
}

impl SurfaceRule {
    /// Both, the more cautious first.
    pub const ALL: [Self; 2] = [Self::Btu, Self::Horsepower];
}

/// How the oil warms by one rule.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Settling {
    /// The rule.
    pub rule: SurfaceRule,
    /// Where the temperature settles; `None` above [`HOTTEST`].
    pub at: Option<Temperature>,
    /// Time from cold until the limit: `None` where it's never reached.
    pub to_limit: Option<Time>,
    /// What of the load the route delivers for good: where the oil settles, or with less of the load to
    /// keep it at its limit; `None` where even an empty rotor is too much for that.
    pub for_good: Option<Power>,
}

/// What heats a route's oil and what cools it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Heat {
    /// What ends as heat in the oil at work, at the temperature that is set.
    pub lost: Power,
    /// What ends as heat in the oil while the rotor stands and the engine turns.
    pub idle: Power,
    /// The oil in the tank: known, or by rules of thumb.
    pub tank: Spread<Volume>,
    /// Its surface.
    pub surface: Area,
    /// The temperature that the oil must not pass.
    pub limit: Temperature,
    /// Where it settles by each rule.
    pub settling: [Settling; 2],
    /// What a cooler must take to keep the limit, by the more cautious rule.
    pub cooler_duty: Power,
    /// The size of that cooler.
    pub cooler: Conductance,
    /// The tank that is usual for this flow.
    pub usual_tank: Volume,
}

impl Heat {
    /// What holds the route for good: the oil's heat, where by the more cautious rule it passes its
    /// limit.
    pub fn holds(&self) -> Option<Limit> {
        let [cautious, _] = self.settling;
        cautious.to_limit.map(|_| Limit::OilHeat)
    }
}

/// The hottest that is looked at, °C: this project's judgement.
pub const HOTTEST: f64 = 150.0;

/// How warm the oil gets at a load in air; `None` for a route without oil or where nothing moves.
///
/// Every watt that a stage with oil loses heats it, once: pump, steering's share, what is sent
/// back, valve, hoses and motor. The tank's surface sheds, and a cooler where there is one; lines
/// and housings shed too and aren't counted.
pub fn heat(joined: &Joined, load: Load<'_>, air: Temperature) -> Option<Heat> {
    let circuit = Circuit { joined, load };
    let now = circuit.running(&joined.oil)?;
    if now.heat <= Power::ZERO || now.stall == Some(Stall::NoFlowLeft) {
        return None;
    }
    let flow = now.pumped?.rate.flowing().ok()?;
    let limit = defaults::hottest_oil();
    let tank = match joined.filling.reservoir.volume {
        Some(volume) => Spread::exact(volume, Source::Own),
        None => defaults::TANK_MINUTES.map(|minutes| smallest_tank(flow) * minutes),
    };
    let surface = tank_surface(tank.likely);
    let at_limit = circuit.at(limit)?;
    let looks: Vec<_> = (0..=LOOKS)
        .map(|look| f64::from(look) / f64::from(LOOKS))
        .map(|part| (part, circuit.lost(part, air)))
        .collect();
    let below_limit = |at: Option<Temperature>| at.filter(|at| *at <= limit);
    let settling = SurfaceRule::ALL.map(|rule| {
        let shed = circuit.shed(rule, surface);
        let at = circuit.settles(&looks, shed, air);
        match below_limit(at) {
            Some(below) => Settling {
                rule,
                at,
                to_limit: None,
                for_good: circuit.at(below).map(|running| running.arrives()),
            },
            None => Settling {
                rule,
                at,
                to_limit: circuit.time_to(limit, shed, air, tank.likely),
                for_good: circuit.for_good(limit, shed, air),
            },
        }
    });
    let [cautious, _] = &settling;
    // Oil that settles below the limit never gets to where hot, thin oil would lose more than is shed.
    let duty = match below_limit(cautious.at) {
        Some(_) => Power::ZERO,
        None => {
            let shed = circuit.shed(SurfaceRule::Btu, surface);
            cooler_duty(at_limit.heat, shed, limit, air)
        }
    };
    Some(Heat {
        lost: now.heat,
        idle: circuit.idles()?,
        tank,
        surface,
        limit,
        settling,
        cooler_duty: duty,
        cooler: cooler_size(duty, limit, air),
        usual_tank: usual_tank(flow),
    })
}

/// How warm a route's oil gets at the job that is asked, in the air that is set; `None` for a route
/// that can't be had too.
pub fn heat_at_job(route: RouteId, hookup: Hookup<'_>) -> Option<Heat> {
    let Hookup {
        implement,
        settings,
        ..
    } = hookup;
    let joined = assemble(route.parts(), hookup).ok()?;
    let need = need_for(implement, settings).likely;
    heat(&joined, Load::new(implement, need), settings.air())
}

fn to_hottest(air: Temperature) -> TemperatureDifference {
    Temperature::celsius(HOTTEST) - air
}

struct Circuit<'a> {
    joined: &'a Joined,
    load: Load<'a>,
}

impl Circuit<'_> {
    /// At work with an oil; at its most where that isn't enough for the load.
    fn running(&self, oil: &OilAtWork) -> Option<Running> {
        self.with(oil, self.load)
    }

    fn with(&self, oil: &OilAtWork, load: Load<'_>) -> Option<Running> {
        let chain = Chain {
            at: AtWork::new(oil, Corner::LIKELY),
            ..self.joined.chain(Corner::LIKELY)
        };
        let (most, _) = chain.most().ok()?;
        let mut running = chain.working(most, |speed| load.at(speed));
        running.heat = running.heat + self.throttled(&running, &chain.at);
        Some(running)
    }

    fn pump_and_valve(&self) -> Option<((&Pump, AngularSpeed), &Valve)> {
        let mut stages = self.joined.stages.iter();
        let valve = stages.find_map(|stage| match stage {
            Stage::Valve(valve) => Some(valve),
            _ => None,
        })?;
        Some((self.joined.pump()?, valve))
    }

    /// What a pump that always holds its set pressure costs beyond what its load needs.
    fn throttled(&self, running: &Running, at: &AtWork) -> Power {
        match (self.pump_and_valve(), running.pumped) {
            (Some(((pump, speed), Valve::Open { .. })), Some(pumped)) if pump.demand.is_some() => {
                let flow = pumped.rate.flowing().unwrap_or(Flow::ZERO);
                match pumped.effort() {
                    Quantity::Pressure(pressure) => pump.held_up(flow, pressure, speed, at),
                    _ => Power::ZERO,
                }
            }
            _ => Power::ZERO,
        }
    }

    /// What is lost while the rotor stands: a fixed pump sends its flow round through the valve, a
    /// compensated one holds its set pressure, a load-sensing one its margin.
    fn idles(&self) -> Option<Power> {
        let ((pump, speed), valve) = self.pump_and_valve()?;
        let chain = self.joined.chain(Corner::LIKELY);
        let flow = pump.displacement(Corner::LIKELY) * speed;
        let against = match (valve, pump.demand) {
            (Valve::Open { .. }, Some(_)) => pump.relief.likely,
            (valve, _) => valve.drop(flow, Corner::LIKELY),
        };
        Some(pump.idles(against, speed, &chain.at))
    }

    /// At work with its oil at a temperature.
    fn at(&self, temperature: Temperature) -> Option<Running> {
        self.running(&OilAtWork::of(&self.joined.filling.oil, temperature))
    }

    /// What tank and cooler shed for each kelvin.
    fn shed(&self, rule: SurfaceRule, surface: Area) -> Conductance {
        let film = match rule {
            SurfaceRule::Btu => still_air_by_btu_rule(),
            SurfaceRule::Horsepower => still_air_by_horsepower_rule(),
        };
        let cooler = self.joined.filling.reservoir.cooler;
        film * surface + cooler.unwrap_or(Conductance::ZERO)
    }

    /// What is lost with the oil a part of the way from the air's temperature to [`HOTTEST`].
    fn lost(&self, part: f64, air: Temperature) -> Power {
        let oil = air + to_hottest(air) * part;
        self.at(oil).map_or(Power::ZERO, |it| it.heat)
    }

    /// Where the oil's temperature settles as it warms from the air's: the first at which what is
    /// shed has grown to what is lost. Hot, thin oil leaks more, so there may be others above.
    /// `looks` are what is lost at evenly spaced parts of the way to [`HOTTEST`].
    fn settles(
        &self,
        looks: &[(f64, Power)],
        shed: Conductance,
        air: Temperature,
    ) -> Option<Temperature> {
        // P_shed − P_lost
        let excess = |part: f64, lost: Power| (shed * (to_hottest(air) * part) - lost).to_watts();
        let neighbours = looks.iter().zip(looks.iter().skip(1));
        let mut brackets = neighbours.map(|(&(a, lost_a), &(b, lost_b))| Bracket {
            a,
            b,
            at_a: excess(a, lost_a),
            at_b: excess(b, lost_b),
        });
        let first = brackets.find(|bracket| bracket.at_b > 0.0)?;
        let part = first.root(|part| excess(part, self.lost(part, air)));
        Some(air + to_hottest(air) * part)
    }

    /// Time from the air's temperature to a limit.
    ///
    /// Equation: C·dT/dt = P(T) − UA·(T − T_a), in [`STEPS`] steps of equal warming with P that of
    /// each step's middle, each solved exactly. Units: SI. Source: balance of heat.
    fn time_to(
        &self,
        limit: Temperature,
        shed: Conductance,
        air: Temperature,
        tank: Volume,
    ) -> Option<Time> {
        let density = self.joined.oil.density;
        let capacity = heat_capacity(tank, density, oil_specific_heat());
        let step = TemperatureDifference::kelvins((limit - air).to_kelvins() / f64::from(STEPS));
        let half = TemperatureDifference::kelvins(0.5 * step.to_kelvins());
        let mut time = Time::ZERO;
        let mut start = air;
        for _ in 0..STEPS {
            let warming = Warming {
                start,
                air,
                heat: self.at(start + half)?.heat,
                shed,
                capacity,
            };
            time = time + warming.time_to(start + step)?;
            start = start + step;
        }
        Some(time)
    }

    /// What arrives at the largest part of the load that the tank keeps at the limit for good.
    fn for_good(&self, limit: Temperature, shed: Conductance, air: Temperature) -> Option<Power> {
        let oil = OilAtWork::of(&self.joined.filling.oil, limit);
        let allowed = shed * (limit - air);
        let at = |part| self.with(&oil, self.load.part(part));
        let part = rising_root(|part| {
            let lost = at(part).map_or(Power::ZERO, |it| it.heat);
            (lost - allowed).to_watts()
        });
        let running = at(part)?;
        (running.heat <= allowed * (1.0 + 1e-9)).then(|| running.arrives())
    }
}

/// Temperatures that are looked at for the first balance.
const LOOKS: u32 = 30;

/// Steps of the warming.
const STEPS: u32 = 12;
