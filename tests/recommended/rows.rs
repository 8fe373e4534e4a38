//! What is said of a machine and an implement, and what makes it go.

use crate::given::{Given, NOTHING};
use crate::said::{Answer, Meaning, Said};
use farend_core::choice::{Weight, Wish};
use farend_core::hookup::Seat;
use farend_core::implement::ImplementKind;
use farend_core::physics::hitch::Category;
use farend_core::route::RouteId;
use farend_tests::item_kind::ItemKind;

use Answer::{Equal, NothingRuns, Stopped, Take, TooWeak};
use Meaning::*;
use RouteId::{MachineHydraulics, MidShaft, RearShaft};
use Said::{Advice, Against, Asks, For, Needs};
use Weight::{Much, Somewhat};
use Wish::{BuyCheaply, HookUpQuickly, KeepLoader, KeepOff, LookAhead};

/// What is said, the routes that have kits, what makes it said, and what then makes it go.
pub type Row = (Said, &'static [RouteId], fn(&mut Given), fn(&mut Given));

/// The rear shaft puts the thrower on the hitch and drives it backwards, in 10 minutes; the mid
/// shaft puts it on a subframe in front.
pub const ROWS: &[Row] = &[
    (
        Advice(Take),
        &[RearShaft],
        |_| {},
        |it| it.parts.kits.clear(),
    ),
    (
        Advice(Take),
        &[RearShaft, MidShaft],
        |it| it.matters(LookAhead, Somewhat),
        |it| it.weights = NOTHING,
    ),
    (
        Advice(Equal),
        &[RearShaft, MidShaft],
        |_| {},
        |it| it.matters(LookAhead, Somewhat),
    ),
    // Of an hour 14 minutes are 0.233 points, 16 are 0.267; a quarter is still equal.
    (
        Advice(Equal),
        &[RearShaft, MidShaft],
        |it| {
            it.matters(HookUpQuickly, Somewhat);
            it.hookup(MidShaft, 24.0);
        },
        |it| it.hookup(MidShaft, 26.0),
    ),
    // Twice as much where it matters much: 7 minutes and 8.
    (
        Advice(Equal),
        &[RearShaft, MidShaft],
        |it| {
            it.matters(HookUpQuickly, Much);
            it.hookup(MidShaft, 17.0);
        },
        |it| it.hookup(MidShaft, 18.0),
    ),
    (
        Advice(NothingRuns),
        &[],
        |_| {},
        |it| *it = Given::by(&[RearShaft]),
    ),
    (
        Advice(Stopped),
        &[RearShaft],
        |it| it.parts.implement.mount.guarded = Some(false),
        |it| it.parts.implement.mount.guarded = None,
    ),
    // Stopped and too weak, more power is what it needs first.
    (
        Advice(Stopped),
        &[RearShaft],
        |it| it.parts.implement.mount.guarded = Some(false),
        |it| it.needs_times(4.0),
    ),
    // 1.723 of the need arrive: 0.697 of 2.47 times as much, 0.703 of 2.45 times.
    (
        Advice(TooWeak),
        &[RearShaft],
        |it| it.needs_times(2.47),
        |it| it.needs_times(2.45 / 2.47),
    ),
    (For(Power), &[RearShaft], |_| {}, |it| it.parts.kits.clear()),
    (
        For(MoreThan),
        &[RearShaft, MachineHydraulics],
        |_| {},
        |it| it.parts.kits.retain(|kit| kit.hoses.is_none()),
    ),
    // Another shaft is of the same kind.
    (
        For(MoreThan),
        &[RearShaft, MachineHydraulics],
        |_| {},
        |it| *it = Given::by(&[RearShaft, MidShaft]),
    ),
    (
        For(Ahead),
        &[MidShaft],
        |it| it.matters(LookAhead, Somewhat),
        |it| it.seat(MidShaft, Seat::RearBackwards),
    ),
    (
        For(OverTheShoulder),
        &[RearShaft],
        |it| {
            it.matters(LookAhead, Somewhat);
            it.parts.implement.mount.backwards = Some(false);
        },
        |it| it.parts.implement.mount.backwards = Some(true),
    ),
    (
        Against(Behind),
        &[RearShaft],
        |it| it.matters(LookAhead, Somewhat),
        |it| it.parts.implement.mount.backwards = Some(false),
    ),
    (
        Against(DrivesOver),
        &[RearShaft],
        |it| {
            it.matters(KeepOff, Somewhat);
            it.parts.implement.mount.backwards = Some(false);
        },
        |it| it.parts.implement.mount.backwards = Some(true),
    ),
    // Soil that is tilled next may be driven over.
    (
        Against(DrivesOver),
        &[RearShaft],
        |it| {
            it.matters(KeepOff, Somewhat);
            it.parts.implement.mount.backwards = Some(false);
        },
        |it| it.parts.implement.kind = ImplementKind::Tiller,
    ),
    (
        For(KeepsOff),
        &[RearShaft],
        |it| it.matters(KeepOff, Somewhat),
        |it| it.parts.implement.mount.backwards = Some(false),
    ),
    // A chipper has no ground to keep off.
    (
        For(KeepsOff),
        &[RearShaft],
        |it| it.matters(KeepOff, Somewhat),
        |it| it.parts.implement.kind = ImplementKind::Chipper,
    ),
    (
        For(LoaderStays),
        &[RearShaft],
        |it| it.matters(KeepLoader, Somewhat),
        |it| it.seat(RearShaft, Seat::FrontFrame),
    ),
    (
        For(WithoutBucket),
        &[RearShaft],
        |it| {
            it.matters(KeepLoader, Somewhat);
            it.seat(RearShaft, Seat::Loader);
        },
        |it| it.seat(RearShaft, Seat::RearBackwards),
    ),
    (
        Against(LoaderComesOff),
        &[MidShaft],
        |it| it.matters(KeepLoader, Somewhat),
        |it| it.seat(MidShaft, Seat::Loader),
    ),
    // Half an hour is the middle between at once and too long.
    (
        For(HooksUp),
        &[RearShaft],
        |it| {
            it.matters(HookUpQuickly, Somewhat);
            it.hookup(RearShaft, 30.0);
        },
        |it| it.hookup(RearShaft, 31.0),
    ),
    (
        Against(HooksUp),
        &[RearShaft],
        |it| {
            it.matters(HookUpQuickly, Somewhat);
            it.hookup(RearShaft, 31.0);
        },
        |it| it.hookup(RearShaft, 30.0),
    ),
    (
        For(Cheapest),
        &[RearShaft, MidShaft],
        |it| {
            it.matters(BuyCheaply, Somewhat);
            it.matters(KeepLoader, Much);
            it.price(RearShaft, 900.0);
            it.price(MidShaft, 901.0);
        },
        |it| it.price(MidShaft, 899.0),
    ),
    // Where one isn't known, none is the cheapest.
    (
        For(Cheapest),
        &[RearShaft, MidShaft],
        |it| {
            it.matters(BuyCheaply, Somewhat);
            it.matters(KeepLoader, Much);
            it.price(RearShaft, 900.0);
            it.price(MidShaft, 901.0);
        },
        |it| it.prices.of_mut(MidShaft).expect("a route").fitting = None,
    ),
    (
        Needs(ItemKind::Category),
        &[RearShaft],
        |it| it.pins(Some(Category::Two)),
        |it| it.pins(Some(Category::One)),
    ),
    (
        Asks(ItemKind::Category),
        &[RearShaft],
        |it| it.pins(None),
        |it| it.pins(Some(Category::One)),
    ),
];
