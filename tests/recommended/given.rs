//! What a recommendation is made of, to be changed before it is made.

use farend_core::choice::{Weight, Weights, Wish};
use farend_core::compare::Comparison;
use farend_core::hookup::Seat;
use farend_core::kit::Kit;
use farend_core::money::{Prices, RoutePrices};
use farend_core::physics::hitch::Category;
use farend_core::quantity::Time;
use farend_core::recommend::{Recommendation, recommend};
use farend_core::route::RouteId;
use farend_core::survey::Survey;
use farend_tests::parts::Parts;

/// Nothing matters beside power.
pub const NOTHING: Weights = [Weight::Not; Wish::ALL.len()];

pub struct Given {
    pub parts: Parts,
    pub prices: Prices,
    pub weights: Weights,
}

impl Given {
    /// A tractor and a thrower of which all is known, with kits for these routes; nothing is priced
    /// and nothing matters. By its shafts it has more than enough for the job.
    pub fn by(routes: &[RouteId]) -> Self {
        let mut parts = Parts::of("curlew-46", "snow-thrower-150");
        let serves = |kit: &Kit| kit.routes.iter().any(|it| routes.contains(it));
        parts.kits.retain(serves);
        Self {
            parts,
            prices: Prices::default(),
            weights: NOTHING,
        }
    }

    pub fn surveyed(&self) -> (Comparison, Survey) {
        self.parts.surveyed(&self.prices, self.weights)
    }

    pub fn recommended(&self) -> Recommendation {
        let (comparison, survey) = self.surveyed();
        recommend(&comparison, &survey, self.weights)
    }

    pub fn matters(&mut self, wish: Wish, weight: Weight) {
        for (place, it) in Wish::ALL.iter().enumerate() {
            if *it == wish {
                self.weights[place] = weight;
            }
        }
    }

    fn kits(&mut self, route: RouteId) -> impl Iterator<Item = &mut Kit> {
        let kits = self.parts.kits.iter_mut();
        kits.filter(move |kit| kit.routes.contains(&route))
    }

    pub fn seat(&mut self, route: RouteId, seat: Seat) {
        self.kits(route).for_each(|kit| kit.seat = Some(seat));
    }

    pub fn hookup(&mut self, route: RouteId, minutes: f64) {
        let time = Time::minutes(minutes);
        self.kits(route).for_each(|kit| kit.hookup = Some(time));
    }

    /// A kit's price; implement and fitting cost 100 each.
    pub fn price(&mut self, route: RouteId, kit: f64) {
        *self.prices.of_mut(route).expect("a route") = RoutePrices {
            kit: Some(kit),
            variant: Some(100.0),
            fitting: Some(100.0),
        };
    }

    pub fn needs_times(&mut self, times: f64) {
        let need = &mut self.parts.implement.need;
        *need = need.map(|power| power * times);
    }

    /// The category of the machine's hitch; the implement's is 1.
    pub fn pins(&mut self, category: Option<Category>) {
        let hitch = self.parts.machine.hitch.as_mut();
        hitch.expect("a hitch").category = category;
    }
}
