//! Machine hydraulics from end to end, against the plain equations in L/min, bar, kW and rpm.

use crate::every::yard_of;
use crate::plain::{left_kw, likely};
use crate::random::{implement, kit, settings, tractor};
use core::f64::consts::PI;
use farend_core::compare::{RouteResult, Run, compare};
use farend_core::defaults;
use farend_core::drive::{Limit, Stall};
use farend_core::machine::{SteeringPolicy, Supply};
use farend_core::physics::oil::{Grade, Oil};
use farend_core::quantity::{Density, Temperature, Viscosity};
use farend_core::route::RouteId;
use farend_core::settings::Settings;
use farend_core::warning::Warning;
use farend_core::yard::entry::{
    HosesEntry, ImplementEntry, KitEntry, MachineEntry, UncertainEntry,
};
use libm::{log10, pow};
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use std::cell::RefCell;
use std::collections::HashMap;

/// The oil that a machine works with.
fn oil_of(machine: &MachineEntry, settings: &Settings) -> Oil {
    let of_sheet = machine.oil.as_ref();
    let typical = |grade: Option<Grade>| grade.unwrap_or(Grade::Vg46).typical();
    match (settings.grade, of_sheet) {
        (Some(grade), _) => grade.typical(),
        (None, None) => typical(None),
        (None, Some(entry)) => {
            let typical = typical(entry.grade);
            let cst = |given: Option<f64>, typical| given.map_or(typical, Viscosity::centistokes);
            Oil {
                at_40: cst(entry.cst_40, typical.at_40),
                at_100: cst(entry.cst_100, typical.at_100),
                density_at_15: entry
                    .kg_m3
                    .map_or(typical.density_at_15, Density::kilograms_per_cubic_metre),
            }
        }
    }
}

/// Pressure that a pair of hoses, its fittings and its couplers take, in bar.
fn lost_bar(hoses: &HosesEntry, l_min: f64, oil: &Oil, at: Temperature) -> f64 {
    let viscosity = oil.viscosity(at).to_centistokes() * 1e-6;
    let density = oil.density(at).to_kilograms_per_cubic_metre();
    // Δp = (f·L/d + ΣK)·ρ·v²/2
    let fittings = hoses.fittings_k.unwrap_or(0.0);
    let in_hose = |bore_mm: f64| {
        let bore_m = bore_mm / 1000.0;
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
        (factor * hoses.length_m / bore_m + fittings) * density / 2.0 * velocity * velocity / 1e5
    };
    let rated = hoses
        .coupler_bar
        .as_ref()
        .map_or(defaults::coupler_drop().likely.to_bar(), likely);
    let rated_flow = hoses
        .coupler_l_min
        .unwrap_or(defaults::coupler_flow().to_litres_per_minute());
    in_hose(hoses.bore_mm)
        + in_hose(hoses.back_bore_mm.unwrap_or(hoses.bore_mm))
        + hoses.couplers * rated * (l_min / rated_flow) * (l_min / rated_flow)
}

/// A pump's or motor's leakage and lost torque at its rated point, as parts of V·n and V·p.
struct Rated {
    rpm: f64,
    bar: f64,
    leaks: f64,
    rubs: f64,
}

impl Rated {
    /// L/min that leak: in proportion to pressure, and the less the thicker the oil.
    fn leaks(&self, cm3: f64, bar: f64, thick: f64) -> f64 {
        self.leaks * cm3 * self.rpm / 1000.0 * bar / self.bar / thick
    }

    /// Bar of V·p/2π that friction and drag take: half of them grow with pressure, half with speed
    /// and thickness.
    fn rubs(&self, bar: f64, rpm: f64, thick: f64) -> f64 {
        self.rubs * (0.5 * bar + 0.5 * self.bar * rpm / self.rpm * thick)
    }
}

/// Where a pressure at the pump leads: kilowatts taken and handed on, and whether it is too high
/// for the engine, the relief valve or the motor.
struct At {
    kw: f64,
    too_high: bool,
}

/// The circuit of a tractor at one pressure of its pump, at the likely values.
fn at_bar(
    (machine, implement, kit): (&MachineEntry, &ImplementEntry, &KitEntry),
    settings: &Settings,
    rpm: f64,
    bar: f64,
) -> At {
    let [circuit] = machine.circuits.as_slice() else {
        panic!("one circuit");
    };
    let (Some(motor), Some(hoses)) = (&implement.motor, &kit.hoses) else {
        panic!("a motor and hoses");
    };
    let temperature = settings.oil_temperature();
    let oil = oil_of(machine, settings);
    // Against the 30 cSt at which efficiencies hold.
    let thick = oil.viscosity(temperature).to_centistokes() / 30.0;
    let or = |entry: &Option<UncertainEntry>, default: f64| entry.as_ref().map_or(default, likely);

    let engine = left_kw(machine, implement, settings, rpm);

    let sheet = settings
        .own
        .flow
        .map_or(likely(&circuit.flow_l_min), |it| it.to_litres_per_minute());
    let relief = settings
        .own
        .relief
        .map_or(likely(&circuit.relief_bar), |it| it.to_bar());
    let steering = circuit.steering.flow_l_min.as_ref().map_or(0.0, likely);
    let (summed, divided) = match circuit.steering.policy {
        SteeringPolicy::Summed => (steering, 0.0),
        SteeringPolicy::FixedPriority => (0.0, steering),
        SteeringPolicy::SeparatePump | SteeringPolicy::LoadSensingPriority => (0.0, 0.0),
    };

    let volumetric = or(&circuit.volumetric, defaults::PUMP_VOLUMETRIC.likely);
    let mechanical = or(
        &circuit.hydro_mechanical,
        defaults::PUMP_HYDRO_MECHANICAL.likely,
    );
    let pump = Rated {
        rpm: circuit.engine_rpm,
        bar: likely(&circuit.relief_bar),
        leaks: 1.0 - volumetric,
        rubs: 1.0 / mechanical - 1.0,
    };
    let pump_cm3 = (sheet - summed) * 1000.0 / circuit.engine_rpm / volumetric;
    if pump_cm3 <= 0.0 {
        return At {
            kw: 0.0,
            too_high: true,
        };
    }
    let geometric = pump_cm3 * rpm / 1000.0;
    let leaks = pump.leaks(pump_cm3, bar, thick);

    // The motor is given no more than its own most, and no more than its highest speed needs.
    let highest_rpm = implement.rotor.highest_rpm / motor.ratio;
    let swallows = (motor.displacement_cm3 * highest_rpm / 1000.0).min(motor.highest_l_min);
    let pumped = match circuit.supply {
        Some(Supply::LoadSensing | Supply::PressureCompensated) => {
            (geometric - leaks).min(swallows + divided)
        }
        _ => geometric - leaks,
    };
    // T·2π/V = p·(stroke) + what rubs, kW = bar·L/min/600
    let stroke = (pumped + leaks) / geometric;
    let taken = geometric * (bar * stroke + pump.rubs(bar, rpm, thick)) / 600.0;
    let used = (pumped - divided).min(swallows);
    if used <= 0.0 {
        return At {
            kw: 0.0,
            too_high: true,
        };
    }
    let valve = match circuit.supply {
        Some(Supply::LoadSensing) => or(&circuit.valve_bar, 20.0),
        _ => {
            let part = used / likely(&circuit.flow_l_min);
            or(&circuit.valve_bar, 5.0) * part * part
        }
    };
    let difference = bar - valve - lost_bar(hoses, used, &oil, temperature);
    let too_high = taken > engine || bar > relief || difference > motor.highest_bar;
    if difference <= 0.0 {
        return At { kw: 0.0, too_high };
    }
    let at_motor = Rated {
        rpm: implement.rotor.rated_rpm / motor.ratio,
        bar: motor.highest_bar,
        leaks: 1.0 / or(&motor.volumetric, defaults::MOTOR_VOLUMETRIC.likely) - 1.0,
        rubs: 1.0
            - or(
                &motor.hydro_mechanical,
                defaults::MOTOR_HYDRO_MECHANICAL.likely,
            ),
    };
    let turned = used - at_motor.leaks(motor.displacement_cm3, difference, thick);
    let motor_rpm = turned * 1000.0 / motor.displacement_cm3;
    let turning = difference - at_motor.rubs(difference, motor_rpm, thick);
    let to_rotor: f64 = motor
        .drive
        .iter()
        .map(|kind| defaults::gear_efficiency(*kind).likely)
        .product();
    At {
        kw: turned.max(0.0) * turning.max(0.0) / 600.0 * to_rotor,
        too_high,
    }
}

/// The most kilowatts at the rotor: every pressure up to the highest is tried, closer and closer
/// about the best.
fn plain_kw(it: (&MachineEntry, &ImplementEntry, &KitEntry), settings: &Settings, rpm: f64) -> f64 {
    // Halved until no more is known: the highest pressure that is not too high.
    let (mut from, mut to) = (0.0, 500.0);
    for _ in 0..100 {
        let bar = 0.5 * (from + to);
        if at_bar(it, settings, rpm, bar).too_high {
            to = bar;
        } else {
            from = bar;
        }
    }
    let highest = from;
    let mut best = at_bar(it, settings, rpm, highest).kw;
    let (mut centre, mut reach) = (0.5 * highest, 0.5 * highest);
    // The most may lie in a narrow place, so the first points stand close.
    for points in [1500, 500, 500, 500, 500, 500, 500] {
        let nearby = (-points..=points)
            .map(|place| (centre + reach * f64::from(place) / f64::from(points)).min(highest))
            .map(|bar| (at_bar(it, settings, rpm, bar).kw, bar));
        let (kw, bar) = nearby
            .max_by(|a, b| a.0.total_cmp(&b.0))
            .expect("many points");
        best = best.max(kw);
        (centre, reach) = (bar, reach / 50.0);
    }
    best
}

/// What a random case was about, so that none is left out.
fn kinds(run: &Run) -> Vec<&'static str> {
    let limit = match (run.ledger.stall, run.ledger.limit) {
        (Some(Stall::NoFlowLeft), _) => "no flow left",
        (Some(_), _) => "no pressure left",
        (None, Limit::Engine) => "held by the engine",
        (None, Limit::Implement) => "held by the motor",
        (None, Limit::Flow) => "held by leakage",
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
        TestRunner::new(crate::cases(500)).run(&random, |(tractor, implement, kit, turned)| {
            let yard = yard_of(tractor.clone(), implement.clone(), kit.clone());
            let machine = &yard.machines[0];
            let settings = turned.on(machine, &yard.implements[0]);
            let comparison = compare(machine, &yard.implements[0], &yard.kits, &settings)
                .expect("settings within their ranges");
            let route = comparison.route(RouteId::MachineHydraulics);
            let run = route
                .and_then(RouteResult::run)
                .expect("nothing keeps it from fitting");
            for kind in kinds(run) {
                *seen.borrow_mut().entry(kind).or_default() += 1;
            }
            if run.ledger.stall == Some(Stall::NoFlowLeft) {
                // What stands still takes nothing, and it's for want of flow.
                prop_assert!(run.ledger.passages.is_empty());
                prop_assert_eq!(run.ledger.limit, Limit::Flow);
            }

            let of_entry = (&tractor, &implement, &kit);
            let rpm = comparison.budget.speed.to_rpm();
            let expected = plain_kw(of_entry, &settings, rpm);
            let actual = run.delivered.likely.to_kilowatts();
            // Where nearly all is lost, what arrives may hide between the plain search's points.
            let allowed = 1e-5 * comparison.budget.net.likely.to_kilowatts();
            prop_assert!(
                (actual - expected).abs() <= 1e-9 * expected + allowed,
                "{actual} kW, not {expected} kW: {:?}",
                kinds(run)
            );
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
        "held by leakage",
        "held by relief",
        "diverted",
    ] {
        let times = seen.get(kind).copied().unwrap_or_default();
        assert!(times >= 5, "{kind}: only {times} times in {seen:?}");
    }
}
