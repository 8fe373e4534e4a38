//! `docs/worked-examples.md` against the core: every row of its tables has a figure here and every
//! figure here a row. The core's column holds to the last digit printed; the hand's is within 2 %
//! of it, for it goes on with rounded figures.

use farend_core::chain::{Chain, Running};
use farend_core::compare::Run;
use farend_core::implement::Implement;
use farend_core::machine::Machine;
use farend_core::measure::{Amount, Measure};
use farend_core::physics::displacement::Losses;
use farend_core::physics::heat::{
    natural_loss, still_air_by_btu_rule, still_air_by_horsepower_rule,
};
use farend_core::physics::line::{fitting_drop, friction_factor};
use farend_core::quantity::{AngularSpeed, Area, Flow, Power, Pressure, Temperature};
use farend_core::route::RouteId;
use farend_core::route::joined::Joined;
use farend_core::route::part::{Hookup, assemble};
use farend_core::settings::Settings;
use farend_core::spread::Corner;
use farend_core::stage::{AtWork, OilAtWork, Stage};
use farend_core::thermal::heat;
use farend_core::work::{Load, progress};
use farend_core::yard::Yard;
use farend_tests::{compared, demo};
use std::collections::BTreeMap;

const DOCUMENT: &str = include_str!("../docs/worked-examples.md");

/// How far the hand may be from the core, for it rounds at every step.
const HAND: f64 = 0.02;

/// Figures of the core: chapter and row, value, unit.
#[derive(Default)]
struct Figures {
    chapter: &'static str,
    found: BTreeMap<(String, String), (f64, &'static str)>,
}

impl Figures {
    fn add(&mut self, row: &str, value: f64, unit: &'static str) {
        let key = (self.chapter.to_owned(), row.to_owned());
        assert!(
            self.found.insert(key, (value, unit)).is_none(),
            "{row} twice"
        );
    }

    fn flow(&mut self, row: &str, value: Flow) {
        self.add(row, value.to_litres_per_minute(), "L/min");
    }

    fn pressure(&mut self, row: &str, value: Pressure) {
        self.add(row, value.to_bar(), "bar");
    }

    fn power(&mut self, row: &str, value: Power) {
        self.add(row, value.to_kilowatts(), "kW");
    }

    fn speed(&mut self, row: &str, value: AngularSpeed) {
        self.add(row, value.to_rpm(), "rpm");
    }
}

/// One route of a pair.
struct Example<'a> {
    machine: &'a Machine,
    implement: &'a Implement,
    settings: Settings,
    run: Run,
    joined: Joined,
}

impl<'a> Example<'a> {
    fn new(yard: &'a Yard, machine: &str, implement: &str, route: RouteId) -> Self {
        let settings = Settings {
            job: Some(Amount::of(Measure::Area, 1000.0)),
            ..Settings::default()
        };
        let comparison = compared(yard, machine, implement, &settings);
        let run = comparison.route(route).and_then(|it| it.run()).cloned();
        let run = run.expect("a route that runs");
        let machine = yard.machine(machine).expect("a machine of the demo");
        let implement = yard.implement(implement).expect("an implement of the demo");
        let hookup = Hookup {
            machine,
            implement,
            kit: yard.kit(&run.kit),
            settings: &settings,
        };
        let joined = assemble(route.parts(), hookup).expect("a route that runs");
        Self {
            machine,
            implement,
            settings,
            run,
            joined,
        }
    }

    /// The budget: what every route begins with.
    fn engine(&self, to: &mut Figures) {
        let budget = &self.joined.budget;
        to.power("Engine", budget.net.likely);
        to.power("Driving", budget.driving.expect("a known mass").likely);
        to.power("Left for the route", budget.left(Corner::LIKELY));
    }

    fn shaft(&self, to: &mut Figures) {
        let [train, joints, _, gearbox] = &self.run.ledger.passages[..] else {
            panic!("train, joints, input shaft, gearbox");
        };
        let (Stage::Gear(shaft), Ok(speed)) = (&joints.stage, joints.gives.rate.turning()) else {
            panic!("a joint shaft");
        };
        to.power("Behind the PTO train", train.gives.power);
        to.add("Two joints at 10°", shaft.efficiency.likely, "");
        to.power("Behind the joints", joints.gives.power);
        let torque = joints.gives.power / speed;
        to.add("Torque in the joints", torque.to_newton_metres(), "N·m");
        to.power("Rotor", gearbox.gives.power);
        to.speed("Rotor speed", self.run.rotor);
        to.add("Over the need", self.run.verdict.ratio, "");
    }

    fn hydraulics(&self, to: &mut Figures) {
        let at = AtWork::new(&self.joined.oil, Corner::LIKELY);
        to.add("Oil's viscosity", at.viscosity.to_centistokes(), "cSt");
        let density = at.density.to_kilograms_per_cubic_metre();
        to.add("Oil's density", density, "kg/m³");
        for passage in &self.run.ledger.passages {
            let (takes, gives) = (passage.takes, passage.gives);
            match &passage.stage {
                Stage::Pump(pump) => {
                    let (Ok(speed), Ok(flow)) = (takes.rate.turning(), gives.rate.flowing()) else {
                        panic!("a pump turns a shaft into a flow");
                    };
                    let size = pump.displacement(Corner::LIKELY);
                    let (volumetric, hydro_mechanical) =
                        (pump.volumetric.likely, pump.hydro_mechanical.likely);
                    let losses = Losses::of_pump(size, pump.rated, volumetric, hydro_mechanical);
                    let pressure = gives.power / flow;
                    to.add("Pump's size", size.to_cubic_centimetres(), "cm³");
                    to.pressure("Pump's pressure", pressure);
                    to.flow("Pump leaks", losses.leaks(pressure, at.viscosity));
                    to.flow("Pump's flow", flow);
                    let friction = pressure * size * losses.friction();
                    to.add("Pump's friction", friction.to_newton_metres(), "N·m");
                    let drag = losses.drag(speed, at.viscosity);
                    to.add("Pump's drag", drag.to_newton_metres(), "N·m");
                    to.power("Pump takes", takes.power);
                    to.power("Pump gives", gives.power);
                }
                Stage::Divert(_) if passage.loss.to_watts() > 0.0 => {
                    let (Ok(comes), Ok(used)) = (takes.rate.flowing(), gives.rate.flowing()) else {
                        panic!("flow");
                    };
                    to.flow("Motor may have", used);
                    to.flow("Sent back", comes - used);
                    to.power("Lost by that", passage.loss);
                }
                Stage::Valve(valve) => {
                    let flow = takes.rate.flowing().expect("a flow");
                    to.pressure("Valve", valve.drop(flow, Corner::LIKELY));
                }
                Stage::Hoses(hoses) => {
                    let flow = takes.rate.flowing().expect("a flow");
                    let pipe = &hoses.supply;
                    let velocity = pipe.velocity(flow);
                    let reynolds = pipe.reynolds(flow, at.viscosity);
                    let factor = friction_factor(reynolds, pipe.relative_roughness);
                    let one_way = pipe.drop(flow, at.viscosity, at.density)
                        + fitting_drop(hoses.fittings, at.density, velocity);
                    to.power("Reaches the couplers", takes.power);
                    to.add("Velocity", velocity.to_metres_per_second(), "m/s");
                    to.add("Reynolds number", reynolds, "");
                    to.add("Friction factor", factor, "");
                    to.pressure("One hose", one_way);
                    let both_ways = (takes.power - gives.power) / flow;
                    to.pressure("Couplers", both_ways - one_way * 2.0);
                }
                Stage::Motor(motor) => {
                    let (Ok(flow), Ok(speed)) = (takes.rate.flowing(), gives.rate.turning()) else {
                        panic!("a motor turns a flow into a shaft");
                    };
                    let (volumetric, hydro_mechanical) =
                        (motor.volumetric.likely, motor.hydro_mechanical.likely);
                    let losses = Losses::of_motor(
                        motor.displacement,
                        motor.rated,
                        volumetric,
                        hydro_mechanical,
                    );
                    let pressure = takes.power / flow;
                    to.pressure("Motor's pressure", pressure);
                    to.power("Motor takes", takes.power);
                    to.flow("Motor leaks", losses.leaks(pressure, at.viscosity));
                    to.speed("Motor's speed", speed);
                    let friction = pressure * motor.displacement * losses.friction();
                    let rubs = friction + losses.drag(speed, at.viscosity);
                    to.add("Motor rubs", rubs.to_newton_metres(), "N·m");
                    let torque = gives.power / speed;
                    to.add("Motor's torque", torque.to_newton_metres(), "N·m");
                    to.power("Motor gives", gives.power);
                }
                _ => {}
            }
        }
        to.power("Rotor", self.run.delivered.likely);
        to.speed("Rotor speed", self.run.rotor);
        to.power("Lost in the oil", self.run.ledger.heats_oil());
        let of_engine = self.run.delivered.likely / self.joined.budget.net.likely;
        to.add("Part of the engine's power", of_engine, "");
        to.add("Over the need", self.run.verdict.ratio, "");
    }

    /// At the work's own load with the oil at a temperature.
    fn at_work(&self, oil: Temperature) -> Running {
        let oil = OilAtWork::of(&self.joined.filling.oil, oil);
        let chain = Chain {
            at: AtWork::new(&oil, Corner::LIKELY),
            ..self.joined.chain(Corner::LIKELY)
        };
        let load = Load::new(self.implement, self.implement.need.likely);
        let (most, _) = chain.most().expect("joined rightly");
        let working = chain.working(most, |speed| load.at(speed));
        assert!(working.part < most.part, "enough for the load");
        working
    }

    fn warmth(&self, to: &mut Figures) {
        let air = self.settings.air();
        let load = Load::new(self.implement, self.implement.need.likely);
        let heat = heat(&self.joined, load, air).expect("a circuit");
        let running = self.at_work(self.settings.oil_temperature());
        let pumped = running.pumped.expect("a pump");
        let flow = pumped.rate.flowing().expect("a flow");
        to.pressure("Pressure at work", pumped.power / flow);
        let rotor = running.end.rate.turning().expect("a rotor");
        to.speed("Rotor speed at work", rotor);
        to.power("Rotor at work", running.end.power);
        to.power("Lost at work", heat.lost);
        to.add("Tank's surface", heat.surface.to_square_metres(), "m²");
        let cooler = self.joined.filling.reservoir.cooler;
        let cooled = cooler.map(|cooler| cooler * (heat.limit - air));
        let sheds = |film, surface: Area| {
            let tank = natural_loss(film, surface, heat.limit, air);
            cooled.map_or(tank, |cooled| tank + cooled)
        };
        let (btu, horsepower) = (still_air_by_btu_rule(), still_air_by_horsepower_rule());
        to.power("Shed at 80 °C, Btu rule", sheds(btu, heat.surface));
        to.power("Shed at 80 °C, hp rule", sheds(horsepower, heat.surface));
        let [by_btu, by_horsepower] = &heat.settling;
        match (by_btu.at, by_horsepower.at) {
            (Some(btu), Some(horsepower)) => {
                to.add("Settles, Btu rule", btu.to_celsius(), "°C");
                to.add("Settles, hp rule", horsepower.to_celsius(), "°C");
            }
            _ => {
                to.power("Lost with the oil at 80 °C", self.at_work(heat.limit).heat);
                to.power("A cooler must take", heat.cooler_duty);
            }
        }
    }

    fn work(&mut self, to: &mut Figures) {
        let progress = progress(
            &mut self.joined,
            self.machine,
            self.implement,
            &self.settings,
        );
        let progress = progress.expect("known work");
        match progress.measure {
            Measure::Mass => to.add("Work", progress.rate.likely * 3.6, "t/h"),
            _ => to.add("Work", progress.rate.likely * 3600.0, "m²/h"),
        }
        let ground_speed = progress.ground_speed.expect("it is driven").likely;
        to.add(
            "Ground speed",
            ground_speed.to_kilometres_per_hour(),
            "km/h",
        );
        // No time where it's never done.
        if let Some(time) = progress.time.expect("a job").likely {
            to.add("1000 m² take", time.to_minutes(), "min");
        }
        let tip = progress.tip.expect("a known diameter");
        to.add("Tip speed", tip.to_metres_per_second(), "m/s");
        if let Some((bound, ratio)) = progress.casting {
            to.add("Casting bound", bound.to_metres(), "m");
            to.add("Against rated speed", ratio, "");
        }
    }
}

fn figures() -> BTreeMap<(String, String), (f64, &'static str)> {
    let yard = demo();
    let mut to = Figures::default();
    let (tractor, thrower) = ("curlew-46", "snow-thrower-150");

    let mut shaft = Example::new(&yard, tractor, thrower, RouteId::RearShaft);
    to.chapter = "Curlew 46, rear shaft";
    shaft.engine(&mut to);
    shaft.shaft(&mut to);
    shaft.work(&mut to);

    let mut oil = Example::new(&yard, tractor, thrower, RouteId::MachineHydraulics);
    to.chapter = "Curlew 46, its own hydraulics";
    oil.hydraulics(&mut to);
    oil.work(&mut to);
    to.chapter = "Curlew 46, how warm the oil gets";
    oil.warmth(&mut to);

    let mut skid_steer = Example::new(&yard, "puffin-62", "flail-mulcher-140", RouteId::SkidSteer);
    to.chapter = "Puffin 62, its circuit";
    skid_steer.engine(&mut to);
    skid_steer.hydraulics(&mut to);
    to.chapter = "Puffin 62, the mulcher at work";
    skid_steer.work(&mut to);
    to.chapter = "Puffin 62, how warm the oil gets";
    skid_steer.warmth(&mut to);
    to.found
}

/// A printed figure: its number, half of what its last digit stands for, its unit.
fn printed(cell: &str) -> (f64, f64, &str) {
    let (number, unit) = cell.split_once(' ').unwrap_or((cell, ""));
    let decimals = number.split_once('.').map_or(0, |(_, after)| after.len());
    let half = 0.5 / (0..decimals).fold(1.0, |scale, _| scale * 10.0);
    let value = number.parse();
    (
        value.unwrap_or_else(|_| panic!("{cell} is no figure")),
        half,
        unit,
    )
}

/// The rows of all tables: chapter and name, the hand's figure, the core's.
fn rows() -> Vec<((String, String), String, String)> {
    let mut chapter = "";
    let mut rows = Vec::new();
    for line in DOCUMENT.lines() {
        if let Some(heading) = line.strip_prefix("## ") {
            chapter = heading;
        }
        let cells: Vec<_> = line.split('|').map(str::trim).collect();
        if let ["", name, _, hand, core, ""] = cells[..]
            && name != "what"
            && !name.starts_with("---")
        {
            let key = (chapter.to_owned(), name.to_owned());
            rows.push((key, hand.to_owned(), core.to_owned()));
        }
    }
    rows
}

#[test]
fn every_printed_figure_is_the_cores_and_near_the_hands() {
    let mut figures = figures();
    let mut wrong = Vec::new();
    for ((chapter, name), hand, core) in rows() {
        let row = format!("{chapter}: {name}");
        let Some((exact, unit)) = figures.remove(&(chapter, name)) else {
            wrong.push(format!(
                "{row}: the core has no such figure, or it stands there twice"
            ));
            continue;
        };
        let (by_hand, _, hand_unit) = printed(&hand);
        let (by_core, half, core_unit) = printed(&core);
        if hand_unit != unit || core_unit != unit {
            wrong.push(format!("{row}: it is in {unit}"));
        }
        if (by_core - exact).abs() > half * (1.0 + 1e-9) {
            wrong.push(format!("{row}: printed {by_core}, the core says {exact}"));
        }
        if (by_hand - exact).abs() > HAND * exact.abs() {
            wrong.push(format!("{row}: by hand {by_hand}, the core says {exact}"));
        }
    }
    let missing = figures
        .keys()
        .map(|(chapter, name)| format!("{chapter}: {name}: no row"));
    wrong.extend(missing);
    assert!(
        wrong.is_empty(),
        "docs/worked-examples.md:\n{}",
        wrong.join("\n")
    );
}
