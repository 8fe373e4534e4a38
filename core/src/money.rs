//! What routes cost: the user's own prices only. Where one is missing there is no claim.

use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use crate::quantity::{Power, Time};
use crate::route::RouteId;
use crate::route::part::nearest_shaft;
use crate::yard::rules_hookup::PRICE_LIMITS;

/// What a route costs to buy, each part where it's known.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct RoutePrices {
    /// The kit.
    pub kit: Option<f64>,
    /// The implement as this route needs it.
    pub variant: Option<f64>,
    /// Fitting.
    pub fitting: Option<f64>,
}

impl RoutePrices {
    /// All three together, where all three are known.
    pub fn total(self) -> Option<f64> {
        Some(self.kit? + self.variant? + self.fitting?)
    }

    /// These, and where one is missing the other's.
    pub fn or(self, other: Self) -> Self {
        Self {
            kit: self.kit.or(other.kit),
            variant: self.variant.or(other.variant),
            fitting: self.fitting.or(other.fitting),
        }
    }
}

/// What the user has entered beside the yard's own prices.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Prices {
    /// The currency: three letters of ISO 4217.
    pub currency: Option<String>,
    /// An hour of work.
    pub hour: Option<f64>,
    /// The routes, in the order of [`RouteId::ALL`].
    pub routes: [RoutePrices; ROUTES],
    /// The machine, and the one beside it.
    pub machines: [Option<f64>; 2],
}

/// How many routes there are.
const ROUTES: usize = RouteId::ALL.len();

/// Whether a number can be a price.
pub fn is_price(price: f64) -> bool {
    (PRICE_LIMITS.0..=PRICE_LIMITS.1).contains(&price)
}

impl Prices {
    /// Whether prices in a currency count beside these: no sum is taken over two currencies. Where one
    /// isn't named, it's the other.
    pub fn are_in(&self, currency: Option<&str>) -> bool {
        let own = self.currency.as_deref();
        own.is_none() || currency.is_none() || own == currency
    }

    /// What is entered for a route.
    pub fn of(&self, route: RouteId) -> RoutePrices {
        let mut all = RouteId::ALL.iter().zip(self.routes);
        all.find(|(other, _)| **other == route)
            .map_or_else(RoutePrices::default, |(_, prices)| prices)
    }

    /// What is entered for a route, to change it.
    pub fn of_mut(&mut self, route: RouteId) -> Option<&mut RoutePrices> {
        let mut all = RouteId::ALL.iter().zip(&mut self.routes);
        all.find(|(other, _)| **other == route)
            .map(|(_, prices)| prices)
    }
}

/// What the yard says of a route's prices.
pub fn yard_prices(
    route: RouteId,
    machine: &Machine,
    economy: bool,
    implement: &Implement,
    kit: &Kit,
) -> RoutePrices {
    let variant = if route.needs_oil() {
        implement.motor.as_ref().and_then(|motor| motor.price)
    } else {
        let pto = route.pto(machine, economy);
        route.input_place().zip(pto).and_then(|(place, pto)| {
            let brings = kit.drive.iter().fold(pto.rated, |it, gear| it * gear.ratio);
            nearest_shaft(implement, place, brings)?.price
        })
    };
    RoutePrices {
        kit: kit.price,
        variant,
        fitting: kit.fitting,
    }
}

/// Price for each watt that arrives. Nothing where nothing arrives.
///
/// Equation: c = C/P. Units: currency for each watt. Valid range: C from 0. Source: definition.
pub fn per_watt(total: f64, delivered: Power) -> Option<f64> {
    // c = C/P
    (delivered > Power::ZERO).then(|| total / delivered.to_watts())
}

/// What working on a job costs.
///
/// Equation: C = h·t. Units: currency; h for an hour. Valid range: t from 0. Source: definition.
pub fn working(hour: f64, time: Time) -> f64 {
    // C = h·t
    hour * time.to_hours()
}

/// When a route has paid for itself against another by its speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BreakEven {
    /// It costs no more, and its hours don't cost more either.
    AtOnce,
    /// After so many hours of work by itself.
    After(Time),
    /// It costs less and is slower: ahead until so many hours of work by itself.
    AheadFor(Time),
    /// It costs as much or more and saves nothing.
    Never,
}

/// A route's price and the work that it does in a second.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Worker {
    /// What it costs to buy.
    pub total: f64,
    /// Work for each second, SI units of one measure, above zero.
    pub rate: f64,
}

/// When one route has paid for itself against another.
///
/// Equation: t = (C₁ − C₂)/(h·(r₁/r₂ − 1)); 1 the route in question, 2 the other, r work for each
/// second, h price of an hour. Units: hours. Valid range: rates above zero, h from zero.
/// Source: C₁ + h·W/r₁ = C₂ + h·W/r₂ solved for t = W/r₁.
pub fn break_even(one: Worker, other: Worker, hour: f64) -> BreakEven {
    let more = one.total - other.total;
    // What an hour of the one saves of the other's hours.
    let saves = hour * (one.rate / other.rate - 1.0);
    // t = (C₁ − C₂)/(h·(r₁/r₂ − 1))
    let even = || Time::hours(more / saves);
    if more <= 0.0 && saves >= 0.0 {
        // At no price of an hour a slower route that costs no more is ahead for good.
        BreakEven::AtOnce
    } else if more > 0.0 && saves > 0.0 {
        BreakEven::After(even())
    } else if more < 0.0 {
        BreakEven::AheadFor(even())
    } else {
        BreakEven::Never
    }
}
