//! Orders, amounts and limits.

use super::{Seen, distinct, right_one, shows};
use farend_core::compare::Outcome;
use farend_core::drive::{Limit, Rate};
use farend_core::practice::{Guess, Truth, judge};
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::route::part::{NoFit, assemble};
use farend_core::spread::{Corner, Scenario};

impl Seen<'_> {
    pub fn route(&self, routes: &[RouteId]) -> Vec<String> {
        distinct(routes);
        assert!((3..=4).contains(&routes.len()), "{routes:?}");
        let result = |route: &RouteId| self.comparison.route(*route).expect("all are there");
        let (cant, mut can): (Vec<_>, Vec<_>) =
            (routes.iter().copied()).partition(|route| self.cant(result(route)));
        assert!(cant.len() <= 1, "{cant:?}");
        for route in &cant {
            // Machine or implement lack something, which the case tells; no kit is named.
            let Outcome::NoFit(reasons) = &result(route).outcome else {
                panic!("only its kit stops it: {:?}", self.case);
            };
            let lacks = |it: &NoFit| {
                matches!(
                    it,
                    NoFit::NoRearPto
                        | NoFit::NoMidPto
                        | NoFit::NoOutlet
                        | NoFit::NoShaft(_)
                        | NoFit::NoMotor
                )
            };
            assert!(reasons.iter().all(lacks), "{reasons:?}: {:?}", self.case);
        }
        let delivered = |route: &RouteId| result(route).run().expect("it runs").delivered;
        can.sort_by(|a, b| {
            delivered(b)
                .likely
                .partial_cmp(&delivered(a).likely)
                .expect("numbers")
        });
        for pair in can.windows(2) {
            let (more, less) = (delivered(&pair[0]), delivered(&pair[1]));
            assert!(more.low > less.high, "{:?}: {pair:?}", self.case);
        }
        let truth = Truth::Route {
            order: can.clone(),
            cant: cant.clone(),
        };
        assert_eq!(self.answer.truth, truth);
        // The same read backwards is wrong.
        let right = Guess::Order {
            order: can.clone(),
            cant: cant.clone(),
        };
        assert!(judge(self.case, &self.answer, &right).right);
        can.reverse();
        let wrong = Guess::Order {
            order: can,
            cant: cant.clone(),
        };
        let wrong = judge(self.case, &self.answer, &wrong);
        assert!(!wrong.right && wrong.near < 1.0);
        let mut counts = shows(wrong.misconception);
        counts.push(format!("route: {} of {} can't", cant.len(), routes.len()));
        counts
    }

    pub fn amount(&self, route: RouteId, kit: &str) -> Vec<String> {
        let run = self.run(route, kit);
        let Truth::Amount { delivered, traps } = &self.answer.truth else {
            panic!("{:?}", self.answer.truth);
        };
        assert_eq!(*delivered, run.delivered);
        let [low, likely, high] =
            [delivered.low, delivered.likely, delivered.high].map(Power::to_kilowatts);
        assert!(low > 0.0 && high <= 1.7 * low, "{low} to {high} kW");
        let judged = |kilowatts| {
            judge(
                self.case,
                &self.answer,
                &Guess::Power(Power::kilowatts(kilowatts)),
            )
        };
        assert!(judged(low).right && judged(likely).right && judged(high).right);
        let mut shown = Vec::new();
        for trap in traps {
            let gives = trap.gives.to_kilowatts();
            let beside = 0.049 * likely;
            assert!(
                gives < low - beside || gives > high + beside,
                "{trap:?}: {delivered:?}"
            );
            let it = judged(gives);
            assert!(!it.right);
            if let Some(idea) = it.misconception {
                assert_eq!(idea, trap.misconception);
                shown.push(idea);
            }
        }
        let mut counts = shows(shown);
        counts.push(format!("amount: {} traps", traps.len()));
        counts.push(format!("amount: {}", route.word()));
        counts
    }

    pub fn limit(&self, route: RouteId, kit: &str, choices: &[Limit]) -> Vec<String> {
        distinct(choices);
        let run = self.run(route, kit);
        assert_eq!(self.answer.truth, Truth::Limit(run.limit));
        let joined = assemble(route.parts(), self.hookup(self.kit(kit))).expect("it runs");
        let need = self.comparison.need;
        let mut random = u64::from(self.case.draw.seed) + 1;
        for corner in 0..48 {
            let mut pinned = joined.clone();
            pinned.visit(&mut |_, _, _, figure| {
                // Knuth's MMIX generator, from memory.
                random = random.wrapping_mul(6_364_136_223_846_793_005);
                random = random.wrapping_add(1_442_695_040_888_963_407);
                figure.pin(match corner {
                    0 => Scenario::Low,
                    1 => Scenario::High,
                    _ => [Scenario::Low, Scenario::High][(random >> 40) as usize % 2],
                });
            });
            let (most, limit) = pinned
                .chain(Corner::LIKELY)
                .most()
                .expect("shafts join shafts");
            assert_eq!(most.stall, None, "{:?}", self.case);
            let Rate::Turning(speed) = most.end.rate else {
                panic!("a rotor turns");
            };
            for need in [need.low, need.likely, need.high] {
                // Where pressure holds the torque, the flow is the limit if speed is the shorter.
                let rated = self.implement.rotor.rated;
                let torque = (most.end.power / speed) / (need / rated);
                let short = speed / rated;
                let is = match limit {
                    Limit::Pressure if short < 1.0 && short < torque => Limit::Flow,
                    other => other,
                };
                assert_eq!(is, run.limit, "{:?} at corner {corner}", self.case);
            }
        }
        let (right, shown) = right_one(self.case, &self.answer, choices.len());
        assert_eq!(choices[right], run.limit);
        let mut counts = shows(shown);
        counts.push(format!("limit: {}", run.limit.word()));
        counts
    }
}
