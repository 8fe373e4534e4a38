//! Kits over all routes.

use super::{about, between, mostly, neat, one_of, to};
use farend_core::route::RouteId;
use fastrand::Rng;
use serde_json::{Value, json};

/// The routes take turns; each time round the kits are for more power.
pub fn kit(place: usize, rng: &mut Rng) -> Value {
    let route = RouteId::ALL[place % RouteId::ALL.len()];
    let size = (place / RouteId::ALL.len() % 4) as f64;
    let newton_metres = to(10.0, (500.0 + 500.0 * size) * between(rng, 0.9, 1.1));
    // Every second one is for the fast PTO.
    let fast = size % 2.0 == 1.0;
    let (pto_rpm, end) = if fast { (1000.0, "2") } else { (540.0, "1") };
    let mut kit = match route {
        RouteId::RearShaft => json!({
            "shaft": shaft(end, end),
            "drive": [joint_shaft(newton_metres, 10.0)],
        }),
        RouteId::MidShaft => json!({
            "shaft": { "far_end": "2", "reverses": false, "guarded": true },
            "pto_rpm": 2000,
            "drive": [
                joint_shaft(to(10.0, newton_metres * 0.3), 6.0),
                { "kind": "spur", "ratio": one_of(rng, &[0.5, 1.0]), "rating_nm": newton_metres },
            ],
        }),
        RouteId::TurnedForward => json!({
            "shaft": shaft(end, "2"),
            "pto_rpm": pto_rpm,
            "drive": [
                { "kind": one_of(rng, &["chain", "belt"]), "ratio": 1, "rating_nm": newton_metres },
                joint_shaft(newton_metres, 4.0),
                { "kind": "spur", "ratio": neat(1000.0 / pto_rpm), "rating_nm": newton_metres },
            ],
        }),
        RouteId::MachineHydraulics | RouteId::SkidSteer => json!({ "hoses": hoses(size, rng) }),
        RouteId::PumpPack => json!({
            "shaft": shaft(end, end),
            "pto_rpm": pto_rpm,
            "drive": [{ "kind": "spur", "ratio": if fast { 2.0 } else { 3.5 } }],
            "pump": pump(size, rng),
            "hoses": hoses(size + 1.0, rng),
        }),
    };
    kit["id"] = json!(format!("kit-{:02}", place + 1));
    kit["name"] = json!(format!("Kit {:02}", place + 1));
    kit["routes"] = json!([route.word()]);
    let minutes = to(5.0, between(rng, 5.0, 45.0));
    mostly(rng, &mut kit, "hookup_min", json!(minutes));
    let price = to(10.0, between(rng, 200.0, 900.0) * (1.0 + size));
    mostly(rng, &mut kit, "price", json!(price));
    mostly(rng, &mut kit, "fitting_price", json!(to(10.0, price * 0.2)));
    kit
}

fn shaft(pto_end: &str, far_end: &str) -> Value {
    json!({
        "pto_end": pto_end,
        "far_end": far_end,
        "closed_m": 0.75,
        "open_m": 1.3,
        "reverses": false,
        "guarded": true,
    })
}

fn joint_shaft(newton_metres: f64, degrees: f64) -> Value {
    json!({
        "kind": "joint_shaft",
        "ratio": 1,
        "rating_nm": newton_metres,
        "slip_clutch_nm": newton_metres,
        "angle_deg": degrees,
    })
}

fn pump(size: f64, rng: &mut Rng) -> Value {
    json!({
        "displacement_cm3": to(1.0, (28.0 + 18.0 * size) * between(rng, 0.9, 1.1)),
        "highest_rpm": 2500,
        "relief_bar": about(to(5.0, between(rng, 180.0, 250.0)), 0.03),
        "suction_bore_mm": to(1.0, 40.0 + 6.0 * size),
        "suction_length_m": 0.6,
        "suction_lift_m": -0.3,
        "reservoir": { "oil_l": to(5.0, 60.0 + 40.0 * size) },
        "oil": { "grade": "iso-vg-46" },
    })
}

fn hoses(size: f64, rng: &mut Rng) -> Value {
    let (bore, coupler) = match size {
        ..1.0 => (12.7, 12.5),
        ..2.0 => (15.9, 12.5),
        ..3.0 => (19.0, 20.0),
        _ => (25.4, 20.0),
    };
    json!({
        "bore_mm": bore,
        "length_m": neat(between(rng, 2.0, 4.5)),
        "couplers": 4,
        "fittings_k": to(1.0, between(rng, 3.0, 7.0)),
        "coupler_mm": coupler,
        "case_drain": rng.bool(),
    })
}
