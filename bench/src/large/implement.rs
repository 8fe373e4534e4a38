//! Implements of every kind, from those for a small tractor to those for a large one.

use super::{about, between, mostly, neat, one_of, to};
use farend_core::implement::ImplementKind;
use farend_core::measure::Measure;
use fastrand::Rng;
use serde_json::{Value, json};

/// What implements of a kind have in common.
struct Kind {
    rotor_rpm: f64,
    rotor_mm: f64,
    /// From an input shaft to the rotor.
    drive: &'static [&'static str],
    /// Whether it's also built for the front of a machine.
    front: bool,
    /// The speed that its motor has, where it can be had with one.
    motor_rpm: Option<f64>,
    measure: Measure,
    usual_km_h: Option<f64>,
}

impl Kind {
    fn of(kind: ImplementKind) -> Self {
        use ImplementKind::{Auger, Broom, Chipper, Mower, Mulcher, Other, Thrower, Tiller};
        let (rotor_rpm, rotor_mm, drive): (f64, f64, &'static [&'static str]) = match kind {
            Thrower => (600.0, 450.0, &["bevel"]),
            Mulcher => (2100.0, 420.0, &["bevel", "belt"]),
            Broom => (180.0, 700.0, &["bevel", "chain"]),
            Chipper => (1000.0, 620.0, &["belt"]),
            Mower => (2900.0, 520.0, &["spiral_bevel", "belt"]),
            Tiller => (200.0, 480.0, &["bevel", "chain"]),
            Auger => (70.0, 300.0, &["bevel"]),
            Other => (800.0, 460.0, &["spur"]),
        };
        Self {
            rotor_rpm,
            rotor_mm,
            drive,
            front: matches!(kind, Thrower | Mulcher | Broom | Mower),
            motor_rpm: match kind {
                Chipper | Tiller => None,
                Mulcher | Mower | Other => Some(rotor_rpm),
                Thrower => Some(800.0),
                Broom | Auger => Some(240.0),
            },
            measure: match kind {
                Thrower | Chipper => Measure::Mass,
                Mulcher | Broom | Mower => Measure::Area,
                Tiller | Auger | Other => Measure::Volume,
            },
            usual_km_h: match kind {
                Thrower => Some(1.3),
                Tiller => Some(2.2),
                Mulcher | Broom | Mower => Some(5.0),
                Chipper | Auger | Other => None,
            },
        }
    }
}

/// The kinds take turns.
pub fn implement(place: usize, rng: &mut Rng) -> Value {
    let word = ImplementKind::ALL[place % ImplementKind::ALL.len()];
    let kind = Kind::of(word);
    // More small ones than large ones.
    let part = rng.f64();
    let need = neat(3.0 + 55.0 * part * part);
    let rpm = to(10.0, kind.rotor_rpm * between(rng, 0.85, 1.15));
    let mut implement = json!({
        "id": format!("implement-{:03}", place + 1),
        "name": format!("Implement {:03}", place + 1),
        "kind": word.word(),
        "rotor": {
            "rated_rpm": rpm,
            "lowest_rpm": neat(rpm * 0.8),
            "highest_rpm": neat(rpm * 1.15),
            "diameter_mm": to(10.0, kind.rotor_mm * between(rng, 0.8, 1.2)),
        },
        "need_kw": about(need, 0.28),
        "shafts": kind.shafts(need, rng),
        "work": kind.work(need, rng),
        "mass_kg": to(5.0, 110.0 + need * between(rng, 8.0, 12.0)),
    });
    if let Some(motor) = kind.motor(need, rpm, rng) {
        implement["motor"] = motor;
    }
    if let Some(usual) = kind.usual_km_h {
        let usual = neat(usual * between(rng, 0.8, 1.2));
        implement["travel"] = json!({
            "usual_km_h": usual,
            "highest_km_h": neat(usual * 2.0),
            "pushing_n": about(need * 30.0, 0.5),
        });
    }
    let mount = json!({
        "category": if need < 35.0 { "1" } else { "2" },
        "centre_m": neat(between(rng, 0.4, 0.9)),
        "backwards": word == ImplementKind::Thrower,
        "guarded": rng.f64() < 0.9,
    });
    mostly(rng, &mut implement, "mount", mount);
    implement
}

impl Kind {
    fn shafts(&self, need: f64, rng: &mut Rng) -> Value {
        let price = to(50.0, 1500.0 + need * 180.0);
        let shaft = |place: &str, rpm: f64, end: &str| {
            json!({
                "place": place,
                "rpm": rpm,
                "drive": self.drive,
                "rating_kw": neat(need * 2.0),
                "end": { "shaft": end, "turns": "clockwise", "behind_m": 0.3, "above_m": 0.25 },
                "price": price,
            })
        };
        let fast = need > 40.0 && rng.bool();
        let (rpm, end) = if fast { (1000.0, "2") } else { (540.0, "1") };
        let mut shafts = vec![shaft("rear", rpm, end)];
        if self.front {
            shafts.push(shaft("front", one_of(rng, &[1000.0, 2000.0]), "2"));
        }
        json!(shafts)
    }

    /// A motor that gives twice the need at 200 bar.
    fn motor(&self, need: f64, rotor_rpm: f64, rng: &mut Rng) -> Option<Value> {
        let motor_rpm = self.motor_rpm?;
        // Q = P/Δp: 1 kW at 600 bar is 1 L/min. V = Q/n.
        let l_min = 2.0 * need * 600.0 / 200.0;
        let straight = motor_rpm == self.rotor_rpm;
        let mut motor = json!({
            "displacement_cm3": neat((l_min * 1000.0 / motor_rpm).clamp(4.0, 2000.0)),
            "ratio": if straight { 1.0 } else { neat(rotor_rpm / motor_rpm) },
            "highest_l_min": neat((l_min * 1.4).min(400.0)),
            "highest_bar": one_of(rng, &[210.0, 240.0, 280.0]),
            "case_drain": rng.bool(),
            "price": to(50.0, 1800.0 + need * 200.0),
        });
        if !straight {
            motor["drive"] = json!(["chain"]);
        }
        Some(motor)
    }

    fn work(&self, need: f64, rng: &mut Rng) -> Value {
        json!({
            "measure": self.measure.word(),
            "idle_kw": about(need * 0.15, 0.4),
            "kwh_per_unit": about(between(rng, 0.2, 2.0), 0.5),
            "width_m": neat(0.9 + need * 0.03),
            "depth_m": neat(between(rng, 0.05, 0.3)),
            "density_kg_m3": to(10.0, between(rng, 100.0, 1400.0)),
        })
    }
}
