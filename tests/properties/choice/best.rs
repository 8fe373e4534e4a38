//! The route that is named is the best by what matters, weighed here anew.

use super::{Case, Uses, cases, total};
use farend_core::choice::{TIE, Weight, Weights, Wish};
use farend_core::compare::Run;
use farend_core::hookup::Seat;
use farend_core::implement::ImplementKind;
use farend_core::recommend::{Advice, Obstacle};
use farend_core::route::RouteId;
use farend_core::standing::Standing;

/// Points that lie closer together than this are the same.
const CLOSE: f64 = 1e-9;

/// Points of those that can be recommended.
fn points(case: &Case, weights: Weights) -> Vec<(RouteId, f64)> {
    let of = |route: RouteId| {
        let standing = match case.running(route).for_good {
            Standing::Ample => 6.0,
            Standing::Enough => 5.0,
            Standing::Slower => 2.0,
            Standing::Labours | Standing::Starves => unreachable!("it can't be recommended"),
        };
        let wishes = Wish::ALL.iter().zip(weights);
        let wishes = wishes.map(|(wish, weight)| match weight {
            Weight::Not => 0.0,
            Weight::Somewhat => meets(case, route, *wish),
            Weight::Much => 2.0 * meets(case, route, *wish),
        });
        standing + wishes.sum::<f64>()
    };
    let eligible = case.eligible();
    eligible.into_iter().map(|it| (it, of(it))).collect()
}

/// How far a route meets a wish, from 0 to 1. What is the same for all doesn't matter here.
pub(super) fn meets(case: &Case, route: RouteId, wish: Wish) -> f64 {
    use ImplementKind::{Broom, Mower, Mulcher, Thrower};
    let running = case.running(route);
    match wish {
        Wish::LookAhead => match running.seat {
            Seat::Loader | Seat::FrontFrame => 1.0,
            Seat::RearForwards => 0.5,
            Seat::RearBackwards => 0.0,
        },
        Wish::KeepOff => match (running.seat, case.kind) {
            (Seat::RearForwards, Thrower | Mulcher | Broom | Mower) => 0.0,
            _ => 1.0,
        },
        Wish::KeepLoader => match running.seat {
            Seat::RearForwards | Seat::RearBackwards => 1.0,
            Seat::Loader => 0.5,
            Seat::FrontFrame => 0.0,
        },
        Wish::HookUpQuickly => {
            let minutes = running.hookup.to_hours() * 60.0;
            if minutes < 60.0 {
                (60.0 - minutes) / 60.0
            } else {
                0.0
            }
        }
        Wish::BuyCheaply => {
            let eligible = case.eligible();
            let totals: Option<Vec<_>> =
                eligible.iter().map(|it| total(case.running(*it))).collect();
            // Costs count only where every one is known.
            let (Some(totals), Some(own)) = (totals, total(running)) else {
                return 0.0;
            };
            let cheapest = totals.into_iter().fold(own, f64::min);
            if cheapest < own { cheapest / own } else { 1.0 }
        }
    }
}

#[test]
fn no_route_that_does_the_work_has_more_points_than_the_one_named() {
    let mut uses = Uses::default();
    for case in cases() {
        let points = points(case, case.weights);
        let most = points.iter().map(|(_, it)| *it).fold(0.0, f64::max);
        // Where two lie just a tie apart, rounding decides.
        let unsure = |(_, it): &(RouteId, f64)| (most - it - TIE).abs() < CLOSE;
        if points.iter().any(unsure) {
            continue;
        }
        let equal = points.iter().filter(|(_, it)| most - it < TIE);
        let mut equal: Vec<_> = equal.map(|(route, _)| *route).collect();
        let mut named = match &case.recommended.advice {
            Advice::Take(route) => vec![*route],
            Advice::Equal(routes) => {
                assert!(routes.len() > 1, "{routes:?}");
                uses.count("equal");
                routes.clone()
            }
            Advice::None(_) => Vec::new(),
        };
        if points.len() > equal.len() {
            uses.count("outweighed");
        }
        if let Some(first) = named.first() {
            let own = points.iter().find(|(route, _)| route == first);
            let best = own.is_some_and(|(_, it)| most - it < CLOSE);
            assert!(best, "{first:?} of {points:?}");
        }
        equal.sort();
        named.sort();
        assert_eq!(named, equal, "{points:?}");
    }
    uses.are_at_least(&[("equal", 8), ("outweighed", 40)]);
}

#[test]
fn a_wish_that_matters_more_is_never_met_less() {
    let mut uses = Uses::default();
    for case in cases() {
        for (place, wish) in Wish::ALL.iter().enumerate() {
            let met = |weight| {
                let mut weights = case.weights;
                weights[place] = weight;
                let named = case.named_by(weights)?;
                Some(meets(case, named, *wish))
            };
            let all = [Weight::Not, Weight::Somewhat, Weight::Much].map(met);
            for two in all.windows(2) {
                let [Some(less), Some(more)] = two else {
                    assert_eq!(all, [None; 3]);
                    continue;
                };
                assert!(*more >= less - CLOSE, "{wish:?}: {all:?}");
                if more > less {
                    uses.count("better");
                }
            }
        }
    }
    uses.are_at_least(&[("better", 20)]);
}

#[test]
fn where_nothing_else_matters_the_best_standing_is_named() {
    let mut uses = Uses::default();
    for case in cases() {
        let Some(named) = case.named_by([Weight::Not; Wish::ALL.len()]) else {
            continue;
        };
        let own = case.running(named).for_good;
        for other in case.eligible() {
            let other = case.running(other).for_good;
            assert!(other <= own, "{other:?}");
            if other < own {
                uses.count("poorer");
            }
        }
    }
    uses.are_at_least(&[("poorer", 30)]);
}

#[test]
fn what_is_named_does_the_work_and_nothing_stops_it() {
    let mut uses = Uses::default();
    for case in cases() {
        let Some(route) = case.named() else { continue };
        uses.count("named");
        assert!(!case.is_stopped(route), "{route:?}");
        let for_good = case.running(route).for_good;
        assert!(for_good >= Standing::Slower, "{route:?}");
        let likely = case.run(route).expect("it runs").verdict.likely;
        assert!(for_good <= likely, "{route:?}");
        if case.eligible().len() < case.comparison.ranked().len() {
            uses.count("others that aren't");
        }
    }
    uses.are_at_least(&[("named", 80), ("others that aren't", 30)]);
}

#[test]
fn none_is_named_only_where_none_can_be_and_then_what_is_in_the_way() {
    let mut uses = Uses::default();
    for case in cases() {
        let Advice::None(nearest) = case.recommended.advice else {
            continue;
        };
        assert!(case.eligible().is_empty());
        let ranked = case.comparison.ranked();
        let does = |it: &&(RouteId, &Run)| it.1.verdict.likely >= Standing::Slower;
        let strongest = ranked.iter().find(does);
        match nearest {
            None => {
                uses.count("nothing runs");
                assert!(ranked.is_empty());
            }
            // Of those that do the work all are stopped, and the strongest is told.
            Some((route, Obstacle::Stops)) => {
                uses.count("stopped");
                assert_eq!(Some(route), strongest.map(|(route, _)| *route));
                assert!(case.is_stopped(route), "{route:?}");
            }
            Some((route, Obstacle::TooWeak(standing))) => {
                uses.count("too weak");
                assert!(strongest.is_none());
                let own = case.run(route).expect("it runs");
                assert_eq!(own.verdict.likely, standing);
                let most = |it: &(RouteId, &Run)| it.1.delivered.likely <= own.delivered.likely;
                assert!(ranked.iter().all(most), "{route:?}");
            }
        }
    }
    uses.are_at_least(&[("nothing runs", 8), ("stopped", 8), ("too weak", 30)]);
}
