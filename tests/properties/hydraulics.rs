//! Machine hydraulics from end to end, against the plain equations in L/min, bar, kW and rpm.

use crate::every::loaded;
use crate::random::{implement, kit, settings, tractor};
use core::f64::consts::PI;
use farend_core::compare::{RouteResult, Run, Warning, compare};
use farend_core::defaults;
use farend_core::drive::{Limit, Stall};
use farend_core::machine::SteeringPolicy;
use farend_core::quantity::Temperature;
use farend_core::route::RouteId;
use farend_core::settings::Settings;
use farend_core::spread::{Scenario, Spread};
use farend_core::yard::entry::{
    HosesEntry, ImplementEntry, KitEntry, MachineEntry, UncertainEntry, YardEntry,
};
use libm::{log10, pow};
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use std::cell::RefCell;
use std::collections::HashMap;

fn of(entry: &UncertainEntry, scenario: Scenario) -> f64 {
    match (entry, scenario) {
        (UncertainEntry::One(likely), _) => *likely,
        (UncertainEntry::Three { low, .. }, Scenario::Low) => *low,
        (UncertainEntry::Three { likely, .. }, Scenario::Likely) => *likely,
        (UncertainEntry::Three { high, .. }, Scenario::High) => *high,
    }
}

fn or(entry: Option<&UncertainEntry>, default: Spread<f64>, scenario: Scenario) -> f64 {
    entry.map_or(default.at(scenario), |entry| of(entry, scenario))
}

/// The poorest outcome has the greatest burden.
fn opposite(scenario: Scenario) -> Scenario {
    match scenario {
        Scenario::Low => Scenario::High,
        Scenario::Likely => Scenario::Likely,
        Scenario::High => Scenario::Low,
    }
}

/// Pressure that a pair of hoses and its couplers take, in bar.
fn lost_bar(hoses: &HosesEntry, l_min: f64, oil: Temperature, scenario: Scenario) -> f64 {
    let burden = opposite(scenario);
    let bore_m = hoses.bore_mm / 1000.0;
    let viscosity = defaults::viscosity(oil).at(burden).to_centistokes() * 1e-6;
    let density = defaults::oil().density(oil).to_kilograms_per_cubic_metre();
    // v = Q/A
    let velocity = l_min / 60_000.0 / (PI / 4.0 * bore_m * bore_m);
    let reynolds = velocity * bore_m / viscosity;
    // 1/√f = −1.8·lg(6.9/Re) for a smooth wall
    let turbulent = |reynolds: f64| pow(-1.8 * log10(6.9 / reynolds), -2.0);
    let factor = if reynolds < 2000.0 {
        64.0 / reynolds
    } else if reynolds > 4000.0 {
        turbulent(reynolds)
    } else {
        let part = (reynolds - 2000.0) / 2000.0;
        64.0 / 2000.0 * (1.0 - part) + turbulent(4000.0) * part
    };
    let both_ways = 2.0 * hoses.length_m;
    let in_hoses = factor * both_ways / bore_m * density / 2.0 * velocity * velocity / 1e5;
    let rated = hoses
        .coupler_bar
        .as_ref()
        .map_or(defaults::coupler_drop().at(burden).to_bar(), |drop| {
            of(drop, burden)
        });
    let rated_flow = hoses
        .coupler_l_min
        .unwrap_or(defaults::coupler_flow().to_litres_per_minute());
    in_hoses + hoses.couplers * rated * (l_min / rated_flow) * (l_min / rated_flow)
}

/// Kilowatts at the rotor; nothing where the oil stands still.
fn plain_kw(
    (machine, implement, kit): (&MachineEntry, &ImplementEntry, &KitEntry),
    settings: &Settings,
    rpm: f64,
    scenario: Scenario,
) -> f64 {
    let burden = opposite(scenario);
    let [circuit] = machine.circuits.as_slice() else {
        panic!("one circuit");
    };
    let (Some(motor), Some(hoses)) = (&implement.motor, &kit.hoses) else {
        panic!("a motor and hoses");
    };

    // P = P_r·(0.87x + 1.13x² − x³)
    let x = rpm / machine.engine.rated_rpm;
    let engine = of(&machine.engine.net_kw, scenario) * (0.87 * x + 1.13 * x * x - x * x * x);

    // A figure that the user turned keeps its range in proportion.
    let sheet_likely = of(&circuit.flow_l_min, Scenario::Likely);
    let relief_likely = of(&circuit.relief_bar, Scenario::Likely);
    let flow_turned = settings
        .own
        .flow
        .map_or(1.0, |flow| flow.to_litres_per_minute() / sheet_likely);
    let relief_turned = settings
        .own
        .relief
        .map_or(1.0, |relief| relief.to_bar() / relief_likely);

    let steering = circuit.steering.flow_l_min.as_ref();
    let (summed, divided) = match circuit.steering.policy {
        SteeringPolicy::Summed => (steering.map_or(0.0, |it| of(it, burden)), 0.0),
        SteeringPolicy::FixedPriority => (0.0, steering.map_or(0.0, |it| of(it, burden))),
        SteeringPolicy::SeparatePump | SteeringPolicy::LoadSensingPriority => (0.0, 0.0),
    };
    let sheet = of(&circuit.flow_l_min, scenario) * flow_turned - summed;
    let pumped = sheet * rpm / circuit.engine_rpm;
    let left = pumped - divided;
    if pumped <= 0.0 || left <= 0.0 {
        return 0.0;
    }
    // The pump hands on what the engine can turn it for, and never more than relief lets through.
    let pump = or(
        circuit.volumetric.as_ref(),
        defaults::PUMP_VOLUMETRIC,
        scenario,
    ) * or(
        circuit.hydro_mechanical.as_ref(),
        defaults::PUMP_HYDRO_MECHANICAL,
        scenario,
    );
    let relief = of(&circuit.relief_bar, scenario) * relief_turned;
    // P = p·Q/600
    let bar = relief.min(engine * pump * 600.0 / pumped);

    // The motor swallows Q = V·n/ηv at its highest speed.
    let motor_volumetric = or(
        motor.volumetric.as_ref(),
        defaults::MOTOR_VOLUMETRIC,
        scenario,
    );
    let highest_rpm = implement.rotor.highest_rpm / motor.ratio;
    let swallows = motor.displacement_cm3 * highest_rpm / 1000.0 / motor_volumetric;
    let used = left.min(motor.highest_l_min).min(swallows);
    let difference = bar - lost_bar(hoses, used, settings.oil_temperature(), scenario);
    if difference <= 0.0 {
        return 0.0;
    }
    let motor_mechanical = or(
        motor.hydro_mechanical.as_ref(),
        defaults::MOTOR_HYDRO_MECHANICAL,
        scenario,
    );
    // T = p·V/20π N·m, n = 1000·Q·ηv/V, P = T·n/9549.3 kW
    let torque = difference.min(motor.highest_bar) * motor.displacement_cm3 / (20.0 * PI);
    let motor_rpm = 1000.0 * used * motor_volumetric / motor.displacement_cm3;
    let at_motor = torque * motor_mechanical * motor_rpm * 2.0 * PI / 60_000.0;
    let gears = motor.drive.iter();
    let to_rotor: f64 = gears
        .map(|kind| defaults::gear_efficiency(*kind).at(scenario))
        .product();
    at_motor * to_rotor
}

/// What a random case was about, so that none is left out.
fn kinds(run: &Run) -> Vec<&'static str> {
    let limit = match (run.ledger.stall, run.ledger.limit) {
        (Some(Stall::NoFlowLeft), _) => "no flow left",
        (Some(_), _) => "no pressure left",
        (None, Limit::Engine) => "held by the engine",
        (None, Limit::Implement) => "held by the motor",
        (None, _) => "held by relief",
    };
    let diverted = run
        .warnings
        .iter()
        .any(|it| matches!(it, Warning::FlowDiverted { .. }));
    [Some(limit), diverted.then_some("diverted")]
        .into_iter()
        .flatten()
        .collect()
}

#[test]
fn it_is_the_plain_equations() {
    let tractor = tractor("it").prop_filter("has remotes", |it| !it.circuits.is_empty());
    let implement = implement("it").prop_filter("has a motor", |it| it.motor.is_some());
    let kit = kit("it".to_owned(), vec![RouteId::MachineHydraulics]);
    let random = (tractor, implement, kit, settings());
    let seen: RefCell<HashMap<&str, u32>> = RefCell::default();
    let result =
        TestRunner::new(crate::cases(1_000)).run(&random, |(tractor, implement, kit, turned)| {
            let entry = YardEntry {
                format_version: 1,
                name: "A yard".to_owned(),
                place: None,
                invented: None,
                machines: vec![tractor],
                implements: vec![implement],
                kits: vec![kit],
            };
            let yard = loaded(&entry);
            let machine = &yard.machines[0];
            let settings = turned.on(machine);
            let comparison = compare(machine, &yard.implements[0], &yard.kits, &settings)
                .expect("settings within their ranges");
            let route = comparison.route(RouteId::MachineHydraulics);
            let run = route
                .and_then(RouteResult::run)
                .expect("nothing keeps it from fitting");
            for kind in kinds(run) {
                *seen.borrow_mut().entry(kind).or_default() += 1;
            }

            let of_entry = (&entry.machines[0], &entry.implements[0], &entry.kits[0]);
            let rpm = comparison.engine_speed.to_rpm();
            let [low, likely, high] =
                Scenario::ALL.map(|scenario| plain_kw(of_entry, &settings, rpm, scenario));
            // What is lost in the hoses may be nearly all of the engine's power: the rest is known to
            // so many of the engine's digits.
            let allowed = 1e-12 * comparison.engine.high.to_kilowatts();
            for (actual, expected) in [
                (run.delivered.likely, likely),
                (run.delivered.low, low.min(likely).min(high)),
                (run.delivered.high, low.max(likely).max(high)),
            ] {
                let actual = actual.to_kilowatts();
                prop_assert!(
                    (actual - expected).abs() <= 1e-9 * expected + allowed,
                    "{actual} kW, not {expected} kW"
                );
            }
            Ok(())
        });
    if let Err(error) = result {
        panic!("{error}");
    }
    let seen = seen.borrow();
    for kind in [
        "no flow left",
        "no pressure left",
        "held by the engine",
        "held by the motor",
        "held by relief",
        "diverted",
    ] {
        let times = seen.get(kind).copied().unwrap_or_default();
        assert!(times >= 5, "{kind}: only {times} times in {seen:?}");
    }
}
