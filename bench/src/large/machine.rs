//! Tractors and skid steers from 12 to 120 kW.

use super::{about, between, mostly, neat, one_of, to};
use farend_core::machine::{SteeringPolicy, Supply};
use fastrand::Rng;
use serde_json::{Value, json};

/// Each fifth is a skid steer.
pub fn machine(place: usize, rng: &mut Rng) -> Value {
    let kilowatts = to(0.5, between(rng, 12.0, 120.0));
    let rated = one_of(rng, &[2200.0, 2300.0, 2400.0, 2600.0, 2800.0]);
    let mass = to(10.0, kilowatts * between(rng, 45.0, 55.0));
    let aspiration = match kilowatts {
        ..30.0 => "natural",
        ..60.0 => one_of(rng, &["natural", "turbo"]),
        _ => one_of(rng, &["turbo", "turbo_cooled"]),
    };
    let mut machine = json!({
        "id": format!("machine-{:03}", place + 1),
        "name": format!("Machine {:03}", place + 1),
        "mass_kg": mass,
        "oil": { "grade": "tractor-fluid" },
        "engine": {
            "net_kw": kilowatts,
            "rated_rpm": rated,
            "lowest_rpm": to(50.0, rated * 0.45),
            "aspiration": aspiration,
        },
    });
    let size = Size {
        kilowatts,
        rated,
        mass,
    };
    if place % 5 == 4 {
        skid_steer(&mut machine, place, &size, rng);
    } else {
        tractor(&mut machine, place, &size, rng);
    }
    let price = to(100.0, kilowatts * between(rng, 700.0, 1000.0));
    mostly(rng, &mut machine, "price", json!(price));
    machine
}

struct Size {
    kilowatts: f64,
    rated: f64,
    mass: f64,
}

fn tractor(machine: &mut Value, place: usize, size: &Size, rng: &mut Rng) {
    let Size {
        kilowatts,
        rated,
        mass,
    } = *size;
    machine["kind"] = json!("tractor");
    machine["transmission"] = json!(one_of(rng, &["gear", "hydrostatic"]));
    let category = match kilowatts {
        ..50.0 => "1",
        ..100.0 => "2",
        _ => "3",
    };
    let hitch = json!({
        "category": category,
        "lift_kg": to(10.0, mass * 0.72),
        "lift_at_m": 0.61,
        "lowest_m": 0.22,
        "highest_m": neat(0.75 + kilowatts * 0.003),
    });
    mostly(rng, machine, "hitch", hitch);
    let loader = json!({
        "lift_kg": to(10.0, mass * 0.42),
        "reach_m": neat(1.4 + kilowatts * 0.012),
        "third_function": rng.bool(),
    });
    mostly(rng, machine, "loader", loader);
    let axles = json!({
        "wheelbase_m": neat(1.3 + kilowatts * 0.012),
        "front_kg": to(10.0, mass * 0.43),
        "front_limit_kg": to(10.0, mass * 0.9),
        "rear_limit_kg": to(10.0, mass * 1.25),
        "loader_ahead_m": neat(0.85 + kilowatts * 0.006),
        "frame_ahead_m": neat(0.4 + kilowatts * 0.004),
        "hitch_behind_m": neat(0.5 + kilowatts * 0.005),
    });
    mostly(rng, machine, "axles", axles);

    let fast = kilowatts > 75.0 && rng.bool();
    let (rpm, end) = if fast { (1000, "2") } else { (540, "1") };
    let end = json!({
        "shaft": end,
        "turns": "clockwise",
        "height_m": neat(0.45 + kilowatts * 0.002),
        "ahead_m": 0.5,
    });
    let at = to(50.0, rated * 0.9);
    machine["rear_pto"] = json!({ "rpm": rpm, "engine_rpm": at, "end": end });
    if rng.bool() {
        machine["rear_pto"]["tested_kw"] = about(kilowatts * between(rng, 0.8, 0.86), 0.03);
    }
    if kilowatts > 50.0 && rng.bool() {
        let slow = to(50.0, rated * 0.7);
        machine["economy_pto"] = json!({ "rpm": rpm, "engine_rpm": slow, "end": end });
    }
    if kilowatts < 60.0 && rng.bool() {
        machine["mid_pto"] = json!({
            "rpm": 2000,
            "engine_rpm": at,
            "rating_kw": to(0.5, kilowatts * 0.75),
            "end": { "turns": "clockwise" },
        });
    }
    let remotes = Outlet {
        name: "remotes",
        flow: 22.0 + kilowatts * between(rng, 0.8, 1.0),
        bar: 150.0 + kilowatts * 0.5,
        coupler: 12.5,
    };
    machine["circuits"] = json!([remotes.circuit(place, size, rng)]);
}

fn skid_steer(machine: &mut Value, place: usize, size: &Size, rng: &mut Rng) {
    let Size {
        kilowatts, mass, ..
    } = *size;
    machine["kind"] = json!("skid_steer");
    machine["transmission"] = json!("hydrostatic");
    machine["loader"] = json!({
        "lift_kg": to(10.0, mass * 0.3),
        "reach_m": 2.2,
        "third_function": true,
    });
    let axles = json!({
        "wheelbase_m": neat(0.9 + kilowatts * 0.004),
        "front_kg": to(10.0, mass * 0.36),
        "front_limit_kg": to(10.0, mass * 1.3),
        "rear_limit_kg": to(10.0, mass * 1.1),
        "loader_ahead_m": 0.95,
    });
    mostly(rng, machine, "axles", axles);
    let standard = Outlet {
        name: "standard_flow",
        flow: 40.0 + kilowatts * between(rng, 0.6, 0.8),
        bar: 190.0 + kilowatts * 0.3,
        coupler: 12.5,
    };
    let mut circuits = vec![standard.circuit(place, size, rng)];
    if rng.f64() < 0.6 {
        let high = Outlet {
            name: "high_flow",
            flow: standard.flow * between(rng, 1.3, 1.6),
            bar: standard.bar + 20.0,
            coupler: 20.0,
        };
        circuits.push(high.circuit(place, size, rng));
    }
    machine["circuits"] = json!(circuits);
}

struct Outlet {
    name: &'static str,
    flow: f64,
    bar: f64,
    coupler: f64,
}

impl Outlet {
    /// Steering policies and supplies take turns, so that a large yard has all of them.
    fn circuit(&self, place: usize, size: &Size, rng: &mut Rng) -> Value {
        let policy = SteeringPolicy::ALL[place % SteeringPolicy::ALL.len()];
        let mut steering = json!({ "policy": policy.word() });
        if matches!(
            policy,
            SteeringPolicy::FixedPriority | SteeringPolicy::Summed
        ) {
            steering["flow_l_min"] = json!(neat(self.flow * between(rng, 0.15, 0.3)));
        }
        let mut reservoir = json!({ "oil_l": to(1.0, 8.0 + size.kilowatts * 0.65) });
        if size.kilowatts > 60.0 {
            reservoir["cooler_w_k"] = json!(to(10.0, size.kilowatts * between(rng, 1.5, 5.0)));
        }
        let mut circuit = json!({
            "outlet": self.name,
            "flow_l_min": about(self.flow, 0.04),
            "engine_rpm": size.rated,
            "relief_bar": about(self.bar, 0.03),
            "steering": steering,
            "supply": one_of(rng, Supply::WORDS),
            "coupler_mm": self.coupler,
        });
        mostly(rng, &mut circuit, "reservoir", reservoir);
        let case_drain = json!(rng.bool());
        mostly(rng, &mut circuit, "case_drain", case_drain);
        circuit
    }
}
