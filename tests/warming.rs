//! What heats an idling circuit, when its oil passes the limit, and what it does for good, each by
//! another way than the core's. Idling: the plain equations in L/min, bar and cm³, with the demo
//! yard's figures; viscosity and density have their own cases.

use farend_core::chain::{Chain, Running};
use farend_core::physics::heat::{still_air_by_btu_rule, still_air_by_horsepower_rule};
use farend_core::quantity::{AngularSpeed, Conductance, Power, Temperature, TemperatureDifference};
use farend_core::route::RouteId;
use farend_core::route::joined::Joined;
use farend_core::route::part::{Hookup, assemble};
use farend_core::settings::Settings;
use farend_core::spread::Corner;
use farend_core::stage::{AtWork, OilAtWork, Stage};
use farend_core::thermal::{Heat, SurfaceRule, heat};
use farend_core::work::Load;
use farend_core::yard::Yard;
use farend_tests::{compared, demo};

/// A route joined up with its kit, where it can be had.
fn joined(yard: &Yard, machine: &str, implement: &str, route: RouteId) -> Option<Joined> {
    let settings = Settings::default();
    let comparison = compared(yard, machine, implement, &settings);
    let run = comparison.route(route)?.run()?;
    let hookup = Hookup {
        machine: yard.machine(machine)?,
        implement: yard.implement(implement)?,
        kit: yard.kit(&run.kit),
        settings: &settings,
    };
    assemble(route.parts(), hookup).ok()
}

fn load<'a>(yard: &'a Yard, implement: &str) -> Load<'a> {
    let implement = yard.implement(implement).expect("one of the demo");
    Load::new(implement, implement.need.likely)
}

fn air() -> Temperature {
    Settings::default().air()
}

/// An idling pump: its displacement in cm³, speeds in rpm, pressures in bar.
struct Idling {
    displacement: f64,
    speed: f64,
    rated_speed: f64,
    rated_pressure: f64,
    against: f64,
    /// Whether it is a fixed pump, that sends all its flow round.
    fixed: bool,
}

impl Idling {
    fn kilowatts(&self, centistokes: f64) -> f64 {
        let thinner = 30.0 / centistokes;
        let at_rated = self.displacement * self.rated_speed / 1000.0;
        let litres_per_minute = if self.fixed {
            self.displacement * self.speed / 1000.0
        } else {
            0.05 * at_rated * (self.against / self.rated_pressure) * thinner
        };
        // N·m of cm³ and bar: V·p/20π. Half of 1/0.95 − 1 is friction, half is drag.
        let newton_metres = |bar: f64| self.displacement * bar / (20.0 * core::f64::consts::PI);
        let lost = 0.5 * (1.0 / 0.95 - 1.0);
        let torque = lost * newton_metres(self.against)
            + lost * newton_metres(self.rated_pressure) * (self.speed / self.rated_speed) / thinner;
        let radians = self.speed * core::f64::consts::PI / 30.0;
        self.against * litres_per_minute / 600.0 + torque * radians / 1000.0
    }
}

#[test]
fn an_idling_pump_takes_what_the_plain_equations_say() {
    let yard = demo();
    let thrower = "snow-thrower-150";
    let square = |x: f64| x * x;
    // Open centre: through the valve, 5 bar at the sheet's flow.
    let curlew = 52_000.0 / 2400.0 / 0.95;
    let heron = 77_000.0 / 2200.0 / 0.95;
    let gannet = 106_000.0 / 2200.0 / 0.95;
    for (machine, route, idling) in [
        (
            "curlew-46",
            RouteId::MachineHydraulics,
            Idling {
                displacement: curlew,
                speed: 2200.0,
                rated_speed: 2400.0,
                rated_pressure: 190.0,
                against: 5.0 * square(curlew * 2.2 / 52.0),
                fixed: true,
            },
        ),
        // Compensated: at its set pressure.
        (
            "heron-68",
            RouteId::MachineHydraulics,
            Idling {
                displacement: heron,
                speed: 1950.0,
                rated_speed: 2200.0,
                rated_pressure: 198.0,
                against: 198.0,
                fixed: false,
            },
        ),
        // Load-sensing: at its margin.
        (
            "gannet-90",
            RouteId::MachineHydraulics,
            Idling {
                displacement: gannet,
                speed: 2000.0,
                rated_speed: 2200.0,
                rated_pressure: 200.0,
                against: 20.0,
                fixed: false,
            },
        ),
        // A pump pack: 540 times 3.5, where its valve takes 5 bar.
        (
            "curlew-46",
            RouteId::PumpPack,
            Idling {
                displacement: 45.0,
                speed: 1890.0,
                rated_speed: 1890.0,
                rated_pressure: 200.0,
                against: 5.0,
                fixed: true,
            },
        ),
    ] {
        let joined = joined(&yard, machine, thrower, route).expect("a route of the demo");
        let found = heat(&joined, load(&yard, thrower), air()).expect("a circuit");
        let expected = idling.kilowatts(joined.oil.viscosity.likely.to_centistokes());
        let found = found.idle.to_kilowatts();
        assert!(
            (found / expected - 1.0).abs() < 1e-9,
            "{machine} {route:?}: {found} {expected}"
        );
    }
}

/// At work with its oil at a temperature, without what a compensated pump's valve throttles.
fn at_work(joined: &Joined, load: Load<'_>, oil: Temperature) -> Running {
    let oil = OilAtWork::of(&joined.filling.oil, oil);
    let chain = Chain {
        at: AtWork::new(&oil, Corner::LIKELY),
        ..joined.chain(Corner::LIKELY)
    };
    let (most, _) = chain.most().expect("joined rightly");
    chain.working(most, |speed| load.at(speed))
}

fn shed(joined: &Joined, found: &Heat, rule: SurfaceRule) -> Conductance {
    let film = match rule {
        SurfaceRule::Btu => still_air_by_btu_rule(),
        SurfaceRule::Horsepower => still_air_by_horsepower_rule(),
    };
    let cooler = joined.filling.reservoir.cooler;
    film * found.surface + cooler.unwrap_or(Conductance::ZERO)
}

/// A pump that holds its set pressure takes what it idles with and, for the flow that is used, p_set·Q
/// (Wilson's leakage follows pressure alone). What doesn't reach the rotor heats the oil.
#[test]
fn a_compensated_pump_pays_for_its_set_pressure() {
    let yard = demo();
    let (machine, broom) = ("heron-68", "broom-180");
    let joined =
        joined(&yard, machine, broom, RouteId::MachineHydraulics).expect("a route of the demo");
    assert!(matches!(joined.stages.last(), Some(Stage::Motor(_))));
    let load = load(&yard, broom).part(0.4);
    let found = heat(&joined, load, air()).expect("a circuit");
    let (pump, _) = joined.pump().expect("a pump");
    let set = pump.relief.likely;
    let work = at_work(&joined, load, Settings::default().oil_temperature());
    let flow = work.pumped.expect("a pump").rate.flowing().expect("oil");
    let takes = found.idle + set * flow;
    let lost = (takes - work.arrives()) / found.lost;
    assert!((lost - 1.0).abs() < 1e-9, "{lost}");
    // The valve alone: far more than a fixed pump's circuit would lose.
    assert!(found.lost > work.heat * 1.5);
}

/// One to three minutes of the pump's flow, and the usual is three: the rules of thumb of the defaults.
#[test]
fn a_tank_that_isnt_known_holds_what_is_pumped_in_some_minutes() {
    let yard = demo();
    let thrower = "snow-thrower-150";
    let route = RouteId::MachineHydraulics;
    let mut joined = joined(&yard, "curlew-46", thrower, route).expect("a route of the demo");
    joined.filling.reservoir.volume = None;
    let found = heat(&joined, load(&yard, thrower), air()).expect("a circuit");
    let running = at_work(
        &joined,
        load(&yard, thrower),
        Settings::default().oil_temperature(),
    );
    let pumped = running.pumped.expect("a pump").rate.flowing().expect("oil");
    let minutes = |litres: f64| litres / pumped.to_litres_per_minute();
    for (tank, expected) in [
        (found.tank.low, 1.0),
        (found.tank.likely, 1.5),
        (found.tank.high, 3.0),
        (found.usual_tank, 3.0),
    ] {
        let minutes = minutes(tank.to_litres());
        assert!(
            (minutes / expected - 1.0).abs() < 1e-9,
            "{minutes}, not {expected}"
        );
    }
}

/// The core takes 12 steps, each solved exactly; 260 plain ones must come within half of 1 %.
#[test]
fn the_limit_is_reached_when_small_steps_say() {
    let yard = demo();
    let mut reached = 0;
    for (machine, route) in [
        ("wren-18", RouteId::MachineHydraulics),
        ("curlew-46", RouteId::MachineHydraulics),
        ("curlew-46", RouteId::PumpPack),
        ("puffin-62", RouteId::SkidSteer),
    ] {
        let thrower = "snow-thrower-150";
        let joined = joined(&yard, machine, thrower, route).expect("a route of the demo");
        let load = load(&yard, thrower);
        let found = heat(&joined, load, air()).expect("a circuit");
        for settling in &found.settling {
            let shed = shed(&joined, &found, settling.rule).to_watts_per_kelvin();
            // C = ρ·V·c_p, at the density that is set.
            let density = joined.oil.density.to_kilograms_per_cubic_metre();
            let capacity = density * found.tank.likely.to_cubic_metres() * 1800.0;
            let climb = (found.limit - air()).to_kelvins();
            let steps = 260_u32;
            let step = climb / f64::from(steps);
            let mut time = Some(0.0);
            for place in 0..steps {
                let above = (f64::from(place) + 0.5) * step;
                let oil = air() + TemperatureDifference::kelvins(above);
                // C·dT/dt = P − UA·(T − T_a)
                let net = at_work(&joined, load, oil).heat.to_watts() - shed * above;
                time = time
                    .filter(|_| net > 0.0)
                    .map(|time| time + capacity * step / net);
            }
            let now = settling.to_limit.map(|time| time.to_seconds());
            match (time, now) {
                (Some(small), Some(now)) => {
                    assert!(
                        (now / small - 1.0).abs() < 0.005,
                        "{machine}: {now} {small}"
                    );
                    reached += 1;
                }
                (small, now) => assert_eq!(small.is_some(), now.is_some(), "{machine}"),
            }
        }
    }
    assert!(reached >= 4, "{reached}");
}

/// What is done for good is the part of the job with which the oil settles at its limit.
#[test]
fn for_good_is_the_part_with_which_the_oil_settles_at_the_limit() {
    let yard = demo();
    let mut held = 0;
    // With coolers too small for the job, in W/K.
    for (machine, implement, route, cooler) in [
        (
            "curlew-46",
            "snow-thrower-150",
            RouteId::MachineHydraulics,
            30.0,
        ),
        ("puffin-62", "flail-mulcher-140", RouteId::SkidSteer, 200.0),
        ("gannet-90", "mower-150", RouteId::MachineHydraulics, 120.0),
    ] {
        let mut joined = joined(&yard, machine, implement, route).expect("a route of the demo");
        joined.filling.reservoir.cooler = Some(Conductance::watts_per_kelvin(cooler));
        let load = load(&yard, implement);
        let settles = |part| {
            let found = heat(&joined, load.part(part), air()).expect("a circuit");
            found.settling[0].at
        };
        let found = heat(&joined, load, air()).expect("a circuit");
        let is_too_hot = |part| settles(part).is_none_or(|at| at > found.limit);
        let Some(for_good) = found.settling[0].for_good else {
            assert!(is_too_hot(0.0), "{machine} {implement}");
            continue;
        };
        if !is_too_hot(1.0) {
            continue;
        }
        let (mut cool, mut hot) = (0.0, 1.0);
        for _ in 0..30 {
            let part = 0.5 * (cool + hot);
            if is_too_hot(part) {
                hot = part;
            } else {
                cool = part;
            }
        }
        let arrives = at_work(&joined, load.part(cool), found.limit).arrives();
        let ratio = for_good / arrives;
        assert!((ratio - 1.0).abs() < 1e-6, "{machine} {implement}: {ratio}");
        held += 1;
    }
    assert!(held >= 3, "{held}");
}

#[test]
fn where_no_oil_flows_nothing_warms() {
    let yard = demo();
    let (machine, thrower) = ("plover-28", "snow-thrower-150");
    let mut joined =
        joined(&yard, machine, thrower, RouteId::MachineHydraulics).expect("a route of the demo");
    assert!(heat(&joined, load(&yard, thrower), air()).is_some());
    // Steering takes 11 L/min first, and the pump gives less.
    joined.budget.speed = AngularSpeed::rpm(600.0);
    assert_eq!(heat(&joined, load(&yard, thrower), air()), None);
}

/// Hot, thin oil leaks more: with this cooler the Puffin's oil could hold at two temperatures. From
/// cold it meets the lower, which stays below the limit.
#[test]
fn the_oil_stops_at_its_first_balance() {
    let yard = demo();
    let (machine, cutter) = ("puffin-62", "stump-cutter");
    let mut joined =
        joined(&yard, machine, cutter, RouteId::SkidSteer).expect("a route of the demo");
    joined.filling.reservoir.cooler = Some(Conductance::watts_per_kelvin(150.0));
    let load = load(&yard, cutter).part(0.6);
    let found = heat(&joined, load, air()).expect("a circuit");
    let [cautious, _] = found.settling;
    let at = cautious.at.expect("it settles").to_celsius();
    assert!((60.0..80.0).contains(&at), "{at} °C");
    assert_eq!(cautious.to_limit, None);
    // There is nothing to keep down, and all of the load stays.
    assert_eq!(found.cooler_duty, Power::ZERO);
    let there = at_work(&joined, load, cautious.at.expect("it settles"));
    assert_eq!(cautious.for_good, Some(there.arrives()));
    // Up from the air's temperature more is lost than shed until there.
    let shed = still_air_by_btu_rule() * found.surface + Conductance::watts_per_kelvin(150.0);
    for step in 0..=200 {
        let warm = TemperatureDifference::kelvins((at - 15.0 - 0.01) * f64::from(step) / 200.0);
        let lost = at_work(&joined, load, air() + warm).heat;
        assert!(lost > shed * warm, "at {warm:?} above the air");
    }
}
