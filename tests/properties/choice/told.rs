//! What is told of the route that is named is what was found.

use super::best::meets;
use super::{Case, Uses, cases, total};
use farend_core::choice::{Weight, Wish};
use farend_core::hookup::Seat;
use farend_core::recommend::Reason;
use farend_core::route::RouteId;
use farend_core::seat::{LoaderUse, View};
use farend_core::standing::Standing;
use farend_core::survey::Running;

/// How close a quotient comes, relative.
const CLOSE: f64 = 1e-12;

/// The wish that a reason speaks of.
fn wish(reason: &Reason) -> Option<Wish> {
    match reason {
        Reason::Power { .. } | Reason::MoreThan { .. } => None,
        Reason::View(_) => Some(Wish::LookAhead),
        Reason::DrivesOver(_) => Some(Wish::KeepOff),
        Reason::Loader(_) => Some(Wish::KeepLoader),
        Reason::HooksUp(_) => Some(Wish::HookUpQuickly),
        Reason::Cheapest(_) => Some(Wish::BuyCheaply),
    }
}

fn is_shaft(route: RouteId) -> bool {
    use RouteId::{MidShaft, RearShaft, TurnedForward};
    matches!(route, RearShaft | MidShaft | TurnedForward)
}

/// That of the other kind which delivers most, and how many times as much the named one does.
fn beside(case: &Case, route: RouteId) -> Option<(RouteId, f64)> {
    let delivers = |route| Some(case.run(route)?.delivered.likely.to_watts());
    let others = RouteId::ALL
        .iter()
        .filter(|it| is_shaft(**it) != is_shaft(route))
        .filter_map(|it| Some((*it, delivers(*it)?)));
    let (other, most) = others.max_by(|a, b| a.1.total_cmp(&b.1))?;
    Some((other, delivers(route)? / most))
}

#[test]
fn the_first_reason_is_what_arrives_of_the_need() {
    let mut uses = Uses::default();
    for case in cases() {
        let reasons = &case.recommended.reasons;
        let Some(route) = case.named() else {
            assert!(reasons.is_empty());
            continue;
        };
        assert!(reasons.len() <= 3);
        let Some(Reason::Power { ratio, standing }) = reasons.first() else {
            panic!("{reasons:?}");
        };
        let run = case.run(route).expect("it runs");
        let quotient = run.delivered.likely / case.comparison.need.likely;
        assert!((ratio / quotient - 1.0).abs() < CLOSE);
        assert_eq!(*ratio, run.verdict.ratio);
        assert_eq!(*standing, case.running(route).for_good);
        if *standing < Standing::of(*ratio) {
            uses.count("poorer for good");
        }
    }
    uses.are_at_least(&[("poorer for good", 10)]);
}

#[test]
fn so_many_times_as_much_is_the_quotient_of_what_arrives() {
    let mut uses = Uses::default();
    for case in cases() {
        let Some(route) = case.named() else { continue };
        let told = case.recommended.reasons.iter().find_map(|it| match it {
            Reason::MoreThan { route, times } => Some((*route, *times)),
            _ => None,
        });
        let beside = beside(case, route);
        let worth_saying = beside.filter(|(_, it)| *it >= 1.2 && it.is_finite());
        match (told, worth_saying) {
            (None, None) if beside.is_some() => uses.count("not worth saying"),
            (None, None) => {}
            (Some((told, times)), Some((other, quotient))) => {
                uses.count("told");
                assert_eq!(told, other);
                assert!((times / quotient - 1.0).abs() < CLOSE);
            }
            other => panic!("{other:?}"),
        }
    }
    uses.are_at_least(&[("told", 30), ("not worth saying", 30)]);
}

/// Whether what is told speaks for the route. It must be what the route means.
fn speaks_for(told: &Reason, running: &Running) -> bool {
    let seat = running.seat;
    match *told {
        Reason::View(view) => {
            let is = match seat {
                Seat::Loader | Seat::FrontFrame => View::Ahead,
                Seat::RearForwards => View::OverTheShoulder,
                Seat::RearBackwards => View::Behind,
            };
            assert_eq!(view, is);
            view != View::Behind
        }
        Reason::DrivesOver(over) => {
            assert_eq!(over, seat == Seat::RearForwards);
            !over
        }
        Reason::Loader(loader) => {
            let is = match seat {
                Seat::Loader => LoaderUse::WithoutBucket,
                Seat::FrontFrame => LoaderUse::ComesOff,
                Seat::RearForwards | Seat::RearBackwards => LoaderUse::Stays,
            };
            assert_eq!(loader, is);
            loader != LoaderUse::ComesOff
        }
        Reason::HooksUp(time) => {
            assert_eq!(time, running.hookup);
            time.to_hours() <= 0.5
        }
        Reason::Cheapest(cost) => {
            assert_eq!(Some(cost), total(running));
            true
        }
        Reason::Power { .. } | Reason::MoreThan { .. } => true,
    }
}

#[test]
fn reasons_and_drawbacks_are_what_the_route_means() {
    let mut uses = Uses::default();
    for case in cases() {
        let (reasons, drawbacks) = (&case.recommended.reasons, &case.recommended.drawbacks);
        let Some(route) = case.named() else {
            assert!(drawbacks.is_empty());
            continue;
        };
        let running = case.running(route);
        let for_it = |it: &Reason| speaks_for(it, running);
        assert!(reasons.iter().all(for_it), "{reasons:?}");
        assert!(!drawbacks.iter().any(for_it), "{drawbacks:?}");
        for reason in reasons {
            if let Reason::Cheapest(own) = reason {
                uses.count("cheapest");
                let least = |it| total(case.running(it)).is_some_and(|it| *own <= it);
                assert!(case.eligible().into_iter().all(least), "{own}");
            }
        }
        let told = || reasons.iter().chain(drawbacks).filter_map(wish);
        for (wish, weight) in Wish::ALL.iter().zip(case.weights) {
            let times = told().filter(|it| it == wish).count();
            assert!(times <= usize::from(weight != Weight::Not), "{wish:?}");
            // All that speaks against it is told; the cost stands beside.
            let against = meets(case, route, *wish) < 0.5 && *wish != Wish::BuyCheaply;
            if against && weight != Weight::Not {
                uses.count("against it");
                assert!(drawbacks.iter().any(|it| self::wish(it) == Some(*wish)));
            }
        }
        if told().next().is_some() {
            uses.count("told");
        }
    }
    uses.are_at_least(&[("cheapest", 20), ("told", 80), ("against it", 30)]);
}
