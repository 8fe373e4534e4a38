//! Routes that stay mechanical, against the product of their efficiencies.

use crate::plain::{left_kw, likely};
use crate::random::{implement, kit, log, tractor, uncertain};
use core::f64::consts::PI;
use farend_core::defaults;
use farend_core::drive::{Limit, Rate};
use farend_core::implement::Place;
use farend_core::quantity::{AngularSpeed, Power, Torque};
use farend_core::route::RouteId;
use farend_core::settings::Settings;
use farend_core::source::Source;
use farend_core::spread::{Corner, Spread};
use farend_core::stage::Stage;
use farend_core::stage::gear::{Gear, GearKind, GearRole};
use farend_core::yard::entry::{PtoEntry, ShaftEntry, UncertainEntry};
use farend_tests::{most, run as run_route};
use proptest::collection::vec;
use proptest::prelude::*;

/// Ratio, efficiency and, where there is one, rated torque in N·m.
type Step = (f64, f64, Option<f64>);

fn steps() -> impl Strategy<Value = Vec<Step>> {
    let rating = proptest::option::weighted(0.7, log(5.0, 20_000.0));
    vec((log(0.05, 20.0), 0.3..=1.0_f64, rating), 1..=6)
}

fn gears(steps: &[Step]) -> Vec<Stage> {
    let gear = |(ratio, efficiency, rating): &Step| {
        Stage::Gear(Gear {
            role: GearRole::Step(GearKind::Spur),
            ratio: *ratio,
            angle: None,
            efficiency: Spread::exact(*efficiency, Source::Own),
            rating: rating.map(|torque| {
                let torque = Torque::newton_metres(torque);
                (Spread::exact(torque, Source::Own), Limit::ShaftRating)
            }),
        })
    };
    steps.iter().map(gear).collect()
}

fn nearly(actual: f64, expected: f64) -> Result<(), TestCaseError> {
    let off = (actual - expected).abs();
    prop_assert!(off <= 1e-12 * expected.abs(), "{actual}, not {expected}");
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(500))]

    #[test]
    fn without_a_rating_the_efficiencies_multiply(
        mut steps in steps(),
        watts in log(1e2, 1e6),
        rpm in log(300.0, 5000.0),
    ) {
        for step in &mut steps {
            step.2 = None;
        }
        let available = Power::watts(watts);
        let ledger = most(&gears(&steps), available, AngularSpeed::rpm(rpm), Corner::LIKELY);
        let delivered = ledger.delivered().expect("nothing stalls a shaft");
        // P₂ = P₁·η₁·η₂·…, n₂ = n₁·i₁·i₂·…
        nearly(delivered.power.to_watts(), steps.iter().fold(watts, |p, step| p * step.1))?;
        let Rate::Turning(speed) = delivered.rate else { panic!("a shaft gives oil") };
        nearly(speed.to_rpm(), steps.iter().fold(rpm, |n, step| n * step.0))?;
        nearly(ledger.taken().to_watts(), watts)?;
        prop_assert_eq!(ledger.limit, Limit::Engine);
    }

    /// The most that a chain hands on is the least of what the engine and each rating let through,
    /// each less what is lost after it.
    #[test]
    fn with_ratings_the_tightest_holds(
        steps in steps(),
        watts in log(1e2, 1e6),
        rpm in log(300.0, 5000.0),
    ) {
        let available = Power::watts(watts);
        let ledger = most(&gears(&steps), available, AngularSpeed::rpm(rpm), Corner::LIKELY);
        let after = |place: usize| steps[place..].iter().map(|step| step.1).product::<f64>();
        let mut least = watts * after(0);
        let mut turns = rpm;
        for (place, (ratio, _, rating)) in steps.iter().enumerate() {
            turns *= ratio;
            if let Some(torque) = rating {
                // P = T·2π·n/60
                let through = torque * core::f64::consts::TAU * turns / 60.0;
                least = least.min(through * after(place + 1));
            }
        }
        let delivered = ledger.delivered().expect("nothing stalls a shaft");
        nearly(delivered.power.to_watts(), least)?;
        let by_engine = (least - watts * after(0)).abs() <= 1e-12 * least;
        prop_assert_eq!(ledger.limit == Limit::Engine, by_engine);
    }

    /// A whole rear shaft route from the numbers of its file: no rating is near.
    #[test]
    fn a_rear_shaft_is_the_product_of_its_file(
        mut tractor in tractor("it"),
        mut implement in implement("it"),
        mut kit in kit("it".to_owned(), vec![RouteId::RearShaft]),
        net in uncertain(3.0, 200.0),
    ) {
        let (lowest, rated) = (tractor.engine.lowest_rpm, tractor.engine.rated_rpm);
        let engine_rpm = lowest + (rated - lowest) * 0.7;
        tractor.engine.net_kw = Some(net);
        tractor.engine.gross_kw = None;
        tractor.rear_pto = Some(PtoEntry {
            rpm: 540.0,
            engine_rpm,
            tested_kw: None,
            rating_kw: Some(UncertainEntry::One(600.0)),
            end: None,
        });
        tractor.mid_pto = None;
        kit.pto_rpm = None;
        for gear in &mut kit.drive {
            gear.ratio = 1.0;
            gear.rating_nm = None;
            gear.slip_clutch_nm = None;
        }
        implement.shafts = vec![ShaftEntry {
            place: Place::Rear,
            rpm: 540.0,
            drive: vec![GearKind::Bevel, GearKind::Belt],
            rating_kw: None,
            end: None,
            price: None,
        }];

        // η of two joints: η₀ − (4/π)·μ·(r/R)·|β| each.
        let of_angle = |degrees: f64| {
            let one = 0.995 - 4.0 / PI * 0.03 * (degrees * PI / 180.0);
            one * one
        };
        // P = P_left·η_PTO·η_kit·η_bevel·η_belt
        let kit_efficiency: f64 = kit
            .drive
            .iter()
            .map(|gear| match (&gear.efficiency, gear.angle_deg) {
                (Some(efficiency), _) => likely(efficiency),
                (None, Some(angle)) if gear.kind == GearKind::JointShaft => of_angle(angle),
                (None, _) => defaults::gear_efficiency(gear.kind).likely,
            })
            .product();
        let expected = left_kw(&tractor, &implement, &Settings::default(), engine_rpm) * 0.86 * kit_efficiency * 0.95 * 0.955;
        let rotor_rpm = implement.rotor.rated_rpm;

        let yard = crate::every::yard_of(tractor, implement, kit);
        let route = run_route(&yard, "it", "it", RouteId::RearShaft).expect("they fit");
        nearly(route.delivered.likely.to_kilowatts(), expected)?;
        nearly(route.rotor.to_rpm(), rotor_rpm)?;
    }
}
