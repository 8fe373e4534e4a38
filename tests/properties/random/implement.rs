//! Random implements.

use super::hookup::{input_end, mount, often};
use super::{efficiency, log, shaft_rpm, uncertain};
use farend_core::defaults_work::coefficients;
use farend_core::implement::{Ground, ImplementKind, Place};
use farend_core::measure::Measure;
use farend_core::stage::gear::GearKind;
use farend_core::yard::entry::{
    ImplementEntry, MotorEntry, RotorEntry, ShaftEntry, TravelEntry, UncertainEntry, WorkEntry,
};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;

/// An implement with shafts at both ends and, most often, a motor.
pub fn implement(id: &'static str) -> BoxedStrategy<ImplementEntry> {
    rotor()
        .prop_flat_map(move |rotor| {
            (
                proptest::sample::select(ImplementKind::ALL),
                uncertain(0.2, 500.0),
                vec(shaft(Place::Rear), 1..=2),
                vec(shaft(Place::Front), 1..=2),
                option::weighted(0.9, motor()),
                option::of(work()),
                option::weighted(0.8, travel()),
                often(log(20.0, 5000.0)),
                often(mount()),
            )
                .prop_map(
                    move |(kind, need_kw, rear, front, motor, work, travel, mass_kg, mount)| {
                        ImplementEntry {
                            id: id.to_owned(),
                            name: "An implement".to_owned(),
                            kind,
                            rotor: rotor.clone(),
                            work: work.map(|work| work.of(kind, &need_kw)),
                            need_kw,
                            shafts: rear.into_iter().chain(front).collect(),
                            motor,
                            travel,
                            mass_kg,
                            mount,
                        }
                    },
                )
        })
        .boxed()
}

fn rotor() -> BoxedStrategy<RotorEntry> {
    (
        log(40.0, 4000.0),
        0.3..=1.0_f64,
        1.0..=1.5_f64,
        option::of(log(20.0, 3000.0)),
    )
        .prop_map(|(rated_rpm, lowest, highest, diameter_mm)| RotorEntry {
            rated_rpm,
            lowest_rpm: rated_rpm * lowest,
            highest_rpm: rated_rpm * highest,
            diameter_mm,
        })
        .boxed()
}

/// Work before its implement's kind and need are known.
#[derive(Clone, Debug)]
struct AnyWork {
    measure: Measure,
    /// As a part of the need.
    idle: Option<f64>,
    kwh_per_unit: Option<UncertainEntry>,
    swath: (Option<f64>, Option<f64>, Option<f64>),
}

impl AnyWork {
    /// What the kind has no usual figure for is given.
    fn of(&self, kind: ImplementKind, need_kw: &UncertainEntry) -> WorkEntry {
        let (UncertainEntry::One(need) | UncertainEntry::Three { likely: need, .. }) = need_kw;
        let usual = coefficients(kind).is_some_and(|usual| usual.measure == self.measure);
        let idle = if usual {
            self.idle
        } else {
            self.idle.or(Some(0.2))
        };
        let energy = if usual {
            None
        } else {
            Some(UncertainEntry::One(1.0))
        };
        WorkEntry {
            measure: self.measure,
            idle_kw: idle.map(|part| UncertainEntry::One((need * part).clamp(0.01, 300.0))),
            kwh_per_unit: self.kwh_per_unit.clone().or(energy),
            width_m: self.swath.0,
            depth_m: self.swath.1,
            density_kg_m3: self.swath.2,
        }
    }
}

fn work() -> BoxedStrategy<AnyWork> {
    let swath = (
        option::of(log(0.05, 12.0)),
        option::of(log(0.01, 2.0)),
        option::of(log(20.0, 2500.0)),
    );
    (
        proptest::sample::select(Measure::ALL),
        option::of(0.01..0.9_f64),
        option::of(uncertain(0.001, 100.0)),
        swath,
    )
        .prop_map(|(measure, idle, kwh_per_unit, swath)| AnyWork {
            measure,
            idle,
            kwh_per_unit,
            swath,
        })
        .boxed()
}

fn travel() -> BoxedStrategy<TravelEntry> {
    (
        log(0.1, 20.0),
        0.0..=1.0_f64,
        option::of(proptest::sample::select(Ground::ALL)),
        option::of(uncertain(1.0, 20_000.0)),
    )
        .prop_map(|(highest_km_h, part, ground, pushing_n)| TravelEntry {
            usual_km_h: (highest_km_h * part).max(0.1),
            highest_km_h,
            ground,
            pushing_n,
        })
        .boxed()
}

/// The steps that a change of speed needs.
fn drive() -> impl Strategy<Value = Vec<GearKind>> {
    vec(proptest::sample::select(GearKind::ALL), 1..=3)
}

fn shaft(place: Place) -> BoxedStrategy<ShaftEntry> {
    (
        shaft_rpm(),
        drive(),
        option::of(uncertain(1.0, 600.0)),
        often(input_end()),
        option::of(0.0..1e6),
    )
        .prop_map(move |(rpm, drive, rating_kw, end, price)| ShaftEntry {
            place,
            rpm,
            drive,
            rating_kw,
            end,
            price,
        })
        .boxed()
}

fn motor() -> BoxedStrategy<MotorEntry> {
    (
        log(4.0, 2000.0),
        log(0.01, 20.0),
        drive(),
        log(1.0, 400.0),
        log(20.0, 420.0),
        option::of(efficiency(0.3)),
        option::of(efficiency(0.5)),
        option::of(efficiency(0.5)),
        (option::of(any::<bool>()), option::of(0.0..1e6)),
    )
        .prop_map(
            |(
                displacement_cm3,
                ratio,
                drive,
                highest_l_min,
                highest_bar,
                starting,
                volumetric,
                hydro_mechanical,
                (case_drain, price),
            )| MotorEntry {
                displacement_cm3,
                ratio,
                drive,
                highest_l_min,
                highest_bar,
                starting,
                volumetric,
                hydro_mechanical,
                case_drain,
                price,
            },
        )
        .boxed()
}
