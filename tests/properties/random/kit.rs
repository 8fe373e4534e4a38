//! Random kits.

use super::hookup::{coupler, kit_shaft, often};
use super::{efficiency, log, oil, reservoir, uncertain};
use farend_core::hookup::Seat;
use farend_core::route::RouteId;
use farend_core::stage::gear::GearKind;
use farend_core::yard::entry::{GearEntry, HosesEntry, KitEntry, PumpEntry};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;

/// A kit for some routes: with a pump and hoses, which a route without oil leaves alone.
pub fn kit(id: String, routes: Vec<RouteId>) -> BoxedStrategy<KitEntry> {
    let pto_rpm = option::weighted(0.2, proptest::sample::select(&[540.0, 1000.0][..]));
    let money = (option::of(0.0..1e6), option::of(0.0..1e5));
    (
        pto_rpm,
        vec(gear(), 0..=3),
        pump(),
        hoses(),
        often(kit_shaft()),
        option::weighted(0.3, proptest::sample::select(Seat::ALL)),
        option::of(0.0..=600.0_f64),
        money,
    )
        .prop_map(
            move |(pto_rpm, drive, pump, hoses, shaft, seat, hookup_min, money)| KitEntry {
                id: id.clone(),
                name: "A kit".to_owned(),
                routes: routes.clone(),
                pto_rpm,
                drive,
                pump: Some(pump),
                hoses: Some(hoses),
                shaft,
                seat,
                // Nothing hangs on it: it needs no draw of its own.
                included: money.0.map(|price| price < 5e5),
                hookup_min,
                price: money.0,
                fitting_price: money.1,
            },
        )
        .boxed()
}

fn gear() -> BoxedStrategy<GearEntry> {
    (
        proptest::sample::select(GearKind::ALL),
        prop_oneof![3 => Just(1.0), 1 => log(0.05, 20.0)],
        option::of(efficiency(0.3)),
        option::of(uncertain(5.0, 20_000.0)),
        option::weighted(0.3, log(5.0, 20_000.0)),
        option::of(0.0..=80.0_f64),
    )
        .prop_map(
            |(kind, ratio, efficiency, rating_nm, slip_clutch_nm, angle_deg)| GearEntry {
                kind,
                ratio,
                efficiency,
                rating_nm,
                slip_clutch_nm,
                angle_deg,
            },
        )
        .boxed()
}

fn pump() -> BoxedStrategy<PumpEntry> {
    (
        log(2.0, 500.0),
        log(1000.0, 6000.0),
        uncertain(20.0, 420.0),
        option::of(uncertain(0.1, 60.0)),
        option::of(efficiency(0.5)),
        option::of(efficiency(0.5)),
        (
            option::of(log(6.0, 120.0)),
            option::of(log(0.05, 5.0)),
            option::of(-2.0..=2.0_f64),
        ),
        (option::of(reservoir()), option::of(oil())),
    )
        .prop_map(
            |(
                displacement_cm3,
                highest_rpm,
                relief_bar,
                valve_bar,
                volumetric,
                hydro_mechanical,
                (suction_bore_mm, suction_length_m, suction_lift_m),
                (reservoir, oil),
            )| PumpEntry {
                displacement_cm3,
                highest_rpm,
                relief_bar,
                suction_bore_mm,
                suction_length_m,
                suction_lift_m,
                reservoir,
                oil,
                valve_bar,
                volumetric,
                hydro_mechanical,
            },
        )
        .boxed()
}

fn hoses() -> BoxedStrategy<HosesEntry> {
    (
        log(4.0, 80.0),
        log(0.2, 60.0),
        option::of(log(4.0, 80.0)),
        0..=20,
        option::of(uncertain(0.01, 20.0)),
        option::of(log(1.0, 400.0)),
        option::of(0.0..=20.0_f64),
        (often(coupler()), option::of(any::<bool>())),
    )
        .prop_map(
            |(
                bore_mm,
                length_m,
                back_bore_mm,
                couplers,
                coupler_bar,
                coupler_l_min,
                fittings_k,
                (coupler_mm, case_drain),
            )| HosesEntry {
                bore_mm,
                length_m,
                back_bore_mm,
                couplers: f64::from(couplers),
                coupler_bar,
                coupler_l_min,
                fittings_k,
                coupler_mm,
                case_drain,
            },
        )
        .boxed()
}
