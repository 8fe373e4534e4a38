//! Which route is named on random yards, and what is told of it.

mod best;
mod told;

use crate::every::{loaded, pairs};
use crate::random::{settings, yard};
use crate::uses::Uses;
use farend_core::choice::{Weight, Weights};
use farend_core::compare::{Comparison, Run, compare};
use farend_core::fit::Judgement;
use farend_core::hookup::{InputEnd, KitShaft, Mount, PtoEnd};
use farend_core::implement::{Implement, ImplementKind};
use farend_core::kit::Kit;
use farend_core::machine::Machine;
use farend_core::money::{Prices, RoutePrices};
use farend_core::quantity::{AngularSpeed, Power};
use farend_core::recommend::{Advice, Recommendation, recommend};
use farend_core::route::RouteId;
use farend_core::settings::Settings;
use farend_core::source::Source;
use farend_core::spread::Spread;
use farend_core::standing::Standing;
use farend_core::survey::{Asked, Running, Survey, weighed};
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;
use proptest::test_runner::TestRunner;
use std::cell::RefCell;
use std::sync::OnceLock;

/// Prices, most often of all three parts of all routes.
fn prices() -> BoxedStrategy<Prices> {
    let price = || option::weighted(0.97, select(&[0.0, 400.0, 650.0, 1500.0, 7000.0][..]));
    let route = (price(), price(), price()).prop_map(|(kit, variant, fitting)| RoutePrices {
        kit,
        variant,
        fitting,
    });
    proptest::array::uniform6(route)
        .prop_map(|routes| Prices {
            routes,
            ..Prices::default()
        })
        .boxed()
}

fn weights() -> BoxedStrategy<Weights> {
    proptest::array::uniform5(select(Weight::ALL)).boxed()
}

/// A machine and an implement of a random yard, with what comes of them.
struct Case {
    kind: ImplementKind,
    comparison: Comparison,
    survey: Survey,
    weights: Weights,
    recommended: Recommendation,
}

impl Case {
    fn run(&self, route: RouteId) -> Option<&Run> {
        self.comparison.route(route)?.run()
    }

    fn running(&self, route: RouteId) -> &Running {
        let surveyed = self.survey.route(route).expect("all six are there");
        surveyed.running.as_ref().expect("it runs")
    }

    fn is_stopped(&self, route: RouteId) -> bool {
        let surveyed = self.survey.route(route).expect("all six are there");
        let mut items = surveyed.items.iter();
        items.any(|it| it.judgement == Judgement::Stop)
    }

    /// The route that is named, the first of those that are equal.
    fn named(&self) -> Option<RouteId> {
        first(&self.recommended.advice)
    }

    /// The route that is named where other things matter.
    fn named_by(&self, weights: Weights) -> Option<RouteId> {
        let survey = Survey {
            weighed: weighed(&self.survey.routes, self.kind, weights),
            ..self.survey.clone()
        };
        first(&recommend(&self.comparison, &survey, weights).advice)
    }

    /// Those that nothing stops and that stand at least Slower for good.
    fn eligible(&self) -> Vec<RouteId> {
        let fits = |route: &RouteId| {
            self.run(*route).is_some()
                && !self.is_stopped(*route)
                && self.running(*route).for_good >= Standing::Slower
        };
        RouteId::ALL.iter().copied().filter(fits).collect()
    }
}

fn first(advice: &Advice) -> Option<RouteId> {
    match advice {
        Advice::Take(route) => Some(*route),
        Advice::Equal(routes) => routes.first().copied(),
        Advice::None(_) => None,
    }
}

fn total(running: &Running) -> Option<f64> {
    let prices = running.prices;
    Some(prices.kit? + prices.variant? + prices.fitting?)
}

/// Blanks most of what stops a route, so that some are there to choose from: most random yards have
/// nothing that both can be hooked up and does the work.
fn without_stops(machine: &mut Machine, implement: &mut Implement, kits: &mut [Kit]) {
    (machine.hitch, machine.loader, machine.axles) = (None, None, None);
    let ptos = [
        &mut machine.rear_pto,
        &mut machine.economy_pto,
        &mut machine.mid_pto,
    ];
    for pto in ptos.into_iter().flatten() {
        pto.end = PtoEnd::default();
    }
    for shaft in &mut implement.shafts {
        shaft.end = InputEnd::default();
    }
    if let Some(motor) = &mut implement.motor {
        motor.case_drain = None;
    }
    implement.mount = Mount {
        backwards: implement.mount.backwards,
        ..Mount::default()
    };
    implement.mass = None;
    for kit in kits {
        // Its guards may stop one of several.
        kit.shaft = KitShaft {
            guarded: kit.shaft.guarded,
            ..KitShaft::default()
        };
        for gear in &mut kit.drive {
            gear.angle = None;
        }
    }
}

/// Makes a job of what the middle one of the routes that run delivers, so that some do it and some
/// don't, at any speed of the rotor.
fn with_a_fitting_job(
    machine: &Machine,
    implement: &mut Implement,
    kits: &[Kit],
    settings: &Settings,
    part: f64,
) {
    implement.work = None;
    implement.rotor.lowest = AngularSpeed::ZERO;
    let all = compare(machine, implement, kits, settings).expect("settings within their ranges");
    let ranked = all.ranked();
    if let Some((_, middle)) = ranked.get(ranked.len() / 2)
        && middle.delivered.likely > Power::ZERO
    {
        let need = middle.delivered.likely * part;
        implement.need = Spread::exact(need, Source::Own);
    }
}

/// One machine with one implement of each random yard, worked out once for all tests.
fn cases() -> &'static [Case] {
    static CASES: OnceLock<Vec<Case>> = OnceLock::new();
    CASES.get_or_init(|| {
        let cases = RefCell::new(Vec::new());
        // The job as a part of what a route delivers.
        let eased = option::weighted(0.9, 0.4..1.3_f64);
        // Twice as often the tractor, which has routes to choose from.
        let random = (yard(), settings(), prices(), weights(), eased, 0..3_usize);
        let result = TestRunner::new(crate::cases(400)).run(
            &random,
            |(entry, turned, prices, weights, eased, place)| {
                let yard = loaded(&entry);
                let (machine, implement) = pairs(&yard).nth(place).expect("four pairs");
                let settings = turned.on(machine, implement);
                let (mut machine, mut implement) = (machine.clone(), implement.clone());
                let mut kits = yard.kits.clone();
                if let Some(part) = eased {
                    without_stops(&mut machine, &mut implement, &mut kits);
                    with_a_fitting_job(&machine, &mut implement, &kits, &settings, part);
                }
                let comparison = compare(&machine, &implement, &kits, &settings);
                let comparison = comparison.expect("settings within their ranges");
                let asked = Asked {
                    machine: &machine,
                    implement: &implement,
                    kits: &kits,
                    settings: &settings,
                    currency: None,
                    prices: &prices,
                    weights,
                };
                let survey = asked.survey(&comparison);
                cases.borrow_mut().push(Case {
                    kind: implement.kind,
                    recommended: recommend(&comparison, &survey, weights),
                    comparison,
                    survey,
                    weights,
                });
                Ok(())
            },
        );
        if let Err(error) = result {
            panic!("{error}");
        }
        cases.into_inner()
    })
}
