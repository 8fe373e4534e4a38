//! The work that `cargo xtask bench` times: the demo yard's default pair with all kits.

pub mod grid;
pub mod large;

use farend_core::compare::compare;
use farend_core::control::Control;
use farend_core::implement::Implement;
use farend_core::machine::Machine;
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::route::joined::Joined;
use farend_core::route::part::{Hookup, MachineAtWork, assemble, assemble_at_work};
use farend_core::settings::Settings;
use farend_core::spread::{Axis, Corner};
use farend_core::stage::Stage;
use farend_core::stage::valve::Valve;
use farend_core::sweep::sweep;
use farend_core::yard::{DEMO, Yard};
use std::hint::black_box;
use wasm_bindgen::prelude::wasm_bindgen;

const MACHINE: &str = "curlew-46";
const IMPLEMENT: &str = "snow-thrower-150";
const ROUTE: RouteId = RouteId::MachineHydraulics;
/// Points of a curve.
const POINTS: u16 = 50;

/// The demo yard, and its default pair joined up. Each work is done a number of times over and
/// gives a figure in the end, so that none of it is left out.
#[wasm_bindgen]
pub struct Work {
    yard: Yard,
    machine: Machine,
    implement: Implement,
    settings: Settings,
    joined: Joined,
}

#[wasm_bindgen]
impl Work {
    /// The demo yard and its default pair.
    #[wasm_bindgen(constructor)]
    #[allow(clippy::new_without_default)]
    pub fn new() -> Self {
        let yard = Yard::from_json(DEMO).expect("the demo yard");
        let machine = yard.machine(MACHINE).expect("in the yard").clone();
        let implement = yard.implement(IMPLEMENT).expect("in the yard").clone();
        let settings = Settings::default();
        let kit = yard.kits.iter().find(|kit| kit.routes.contains(&ROUTE));
        let joined = assemble(
            ROUTE.parts(),
            Hookup {
                machine: &machine,
                implement: &implement,
                kit,
                settings: &settings,
            },
        )
        .expect("the pair fits");
        Self {
            yard,
            machine,
            implement,
            settings,
            joined,
        }
    }

    /// Six routes with ranges. Gives the kilowatts of all routes together.
    pub fn comparison(&self, times: u32) -> f64 {
        repeat(times, || {
            let Self {
                yard,
                machine,
                implement,
                settings,
                ..
            } = black_box(self);
            let comparison =
                compare(machine, implement, &yard.kits, settings).expect("own figures");
            comparison
                .routes
                .iter()
                .filter_map(|route| Some(route.run()?.delivered.likely.to_kilowatts()))
                .sum()
        })
    }

    /// Six routes at the likely values alone: every kit joined up, the best one's ledger. Gives the
    /// kilowatts of all routes together.
    pub fn likely(&self, times: u32) -> f64 {
        repeat(times, || {
            let work = black_box(self);
            let at_work = MachineAtWork::new(&work.machine, &work.implement, &work.settings);
            RouteId::ALL
                .iter()
                .map(|route| work.likely_of(*route, &at_work))
                .sum()
        })
    }

    fn likely_of(&self, route: RouteId, at_work: &MachineAtWork) -> f64 {
        let kits = self
            .yard
            .kits
            .iter()
            .filter(|kit| kit.routes.contains(&route));
        let joined = kits.filter_map(|kit| {
            let hookup = Hookup {
                machine: &self.machine,
                implement: &self.implement,
                kit: Some(kit),
                settings: &self.settings,
            };
            assemble_at_work(route.parts(), hookup, at_work).ok()
        });
        let runs = joined.map(|joined| {
            let (most, limit) = joined.chain(Corner::LIKELY).most().expect("joined");
            (joined, most, limit)
        });
        let best =
            runs.max_by(|(_, a, _), (_, b, _)| a.arrives().to_si().total_cmp(&b.arrives().to_si()));
        best.map_or(0.0, |(joined, most, limit)| {
            let ledger = joined.chain(Corner::LIKELY).ledger(&most, limit);
            let delivered = ledger.expect("joined").delivered();
            delivered.map_or(0.0, |drive| drive.power.to_kilowatts())
        })
    }

    /// The machine's own hydraulics at the likely values, joined up before: its ledger. Gives the
    /// kilowatts delivered.
    pub fn route(&self, times: u32) -> f64 {
        repeat(times, || {
            let chain = black_box(self).joined.chain(Corner::LIKELY);
            let (most, limit) = chain.most().expect("joined");
            let ledger = chain.ledger(&most, limit).expect("joined");
            let delivered = ledger.delivered().map_or(Power::ZERO, |drive| drive.power);
            delivered.to_kilowatts()
        })
    }

    /// The curve of that route over the engine's speed. Gives the kilowatts of all points together.
    pub fn curve(&self, times: u32) -> f64 {
        let control = Control::EngineSpeed;
        let range = control.range(&self.machine, &self.implement, None, &self.settings);
        let range = range.expect("every machine has a speed");
        repeat(times, || {
            let Self {
                yard,
                machine,
                implement,
                settings,
                ..
            } = black_box(self);
            let parts = (machine, implement, &*yard.kits);
            let points = sweep(parts, ROUTE, settings, (control, range), POINTS);
            points
                .iter()
                .map(|point| point.delivered.likely.to_kilowatts())
                .sum()
        })
    }

    /// Reads the demo yard. Gives its number of machines.
    pub fn yard(&self, times: u32) -> f64 {
        repeat(times, || {
            let yard = Yard::from_json(black_box(DEMO)).expect("the demo yard");
            yard.machines.len() as f64
        })
    }

    /// The likely figures of [`Self::route`] in SI, as JSON, for the port in JavaScript.
    pub fn figures(&self) -> String {
        let chain = self.joined.chain(Corner::LIKELY);
        let mut figures = vec![
            ("available", chain.available.to_si()),
            ("speed", chain.speed.to_si()),
            ("viscosity", chain.at.viscosity.to_si()),
            ("density", chain.at.density.to_si()),
        ];
        for stage in &self.joined.stages {
            figures.extend(figures_of(stage));
        }
        let fields: Vec<_> = figures
            .iter()
            .map(|(name, value)| format!("\"{name}\":{value:e}"))
            .collect();
        format!("{{{}}}", fields.join(","))
    }
}

fn repeat(times: u32, mut work: impl FnMut() -> f64) -> f64 {
    (0..times).fold(0.0, |_, _| black_box(work()))
}

fn figures_of(stage: &Stage) -> Vec<(&'static str, f64)> {
    match stage {
        Stage::Pump(pump) if pump.demand.is_none() => vec![
            (
                "pumpDisplacement",
                pump.displacement(Corner::LIKELY).to_si(),
            ),
            ("pumpRatedSpeed", pump.rated.speed.to_si()),
            ("pumpRatedPressure", pump.rated.pressure.to_si()),
            ("pumpRatedViscosity", pump.rated.viscosity.to_si()),
            ("pumpVolumetric", pump.volumetric.likely),
            ("pumpHydroMechanical", pump.hydro_mechanical.likely),
            ("relief", pump.relief.likely.to_si()),
        ],
        Stage::Divert(divert) => vec![("mostFlow", divert.most.to_si())],
        Stage::Valve(Valve::Open { drop, at }) => vec![
            ("valveDrop", drop.likely.to_si()),
            ("valveFlow", at.to_si()),
        ],
        Stage::Hoses(hoses) => vec![
            ("supplyBore", hoses.supply.bore.to_si()),
            ("supplyLength", hoses.supply.length.to_si()),
            ("supplyRoughness", hoses.supply.relative_roughness),
            ("backBore", hoses.back.bore.to_si()),
            ("backLength", hoses.back.length.to_si()),
            ("backRoughness", hoses.back.relative_roughness),
            ("couplers", hoses.couplers),
            ("couplerDrop", hoses.coupler_drop.likely.to_si()),
            ("couplerFlow", hoses.coupler_flow.to_si()),
            ("fittings", hoses.fittings),
        ],
        Stage::Motor(motor) => vec![
            ("motorDisplacement", motor.displacement.to_si()),
            ("motorRatedSpeed", motor.rated.speed.to_si()),
            ("motorRatedPressure", motor.rated.pressure.to_si()),
            ("motorRatedViscosity", motor.rated.viscosity.to_si()),
            ("motorVolumetric", motor.volumetric.likely),
            ("motorHydroMechanical", motor.hydro_mechanical.likely),
            ("motorHighest", motor.highest.to_si()),
        ],
        Stage::Gear(gear) if gear.rating.is_none() => vec![
            ("gearRatio", gear.ratio),
            (
                "gearEfficiency",
                Corner::LIKELY.of(Axis::Merit, &gear.efficiency),
            ),
        ],
        other => panic!("the port has no such stage: {other:?}"),
    }
}
