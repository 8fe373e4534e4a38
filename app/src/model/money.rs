//! Prices: the user's own, else the yard's.

use super::Model;
use farend_core::money::{RoutePrices, yard_prices};
use farend_core::route::RouteId;
use leptos::prelude::*;

impl Model {
    /// The currency of the prices.
    pub fn currency(self) -> Option<String> {
        let own = self.state.read().prices.currency.clone();
        own.or_else(|| self.yard.read().currency.clone())
    }

    /// The price of an hour of work.
    pub fn hour_price(self) -> Option<f64> {
        let own = self.state.read().prices.hour;
        own.or_else(|| self.yard_hour_price())
    }

    /// Whether the user's currency is another than the yard's, whose prices don't count then.
    pub fn is_other_currency(self) -> bool {
        let yard = self.yard.read();
        !self.state.read().prices.are_in(yard.currency.as_deref())
    }

    /// A price of the yard's, or a route's prices, where such count.
    fn of_yard<T>(self, price: Option<T>) -> Option<T> {
        price.filter(|_| !self.is_other_currency())
    }

    /// What the yard says of the price of an hour.
    pub fn yard_hour_price(self) -> Option<f64> {
        self.of_yard(self.yard.read().hour_price)
    }

    /// What the yard says of a route's prices.
    pub fn yard_prices(self, route: RouteId) -> RoutePrices {
        let (machine, implement) = (self.machine.read(), self.implement.read());
        let all = self.comparison.read();
        let yard = self.yard.read();
        let known = || {
            let run = all.as_ref()?.route(route)?.run()?;
            Some(yard_prices(
                route,
                machine.as_ref()?,
                self.settings.get().economy,
                implement.as_ref()?,
                yard.kit(&run.kit)?,
            ))
        };
        self.of_yard(known()).unwrap_or_default()
    }

    /// What the yard says of the machine's price, or of the one beside it.
    pub fn yard_machine_price(self, which: usize) -> Option<f64> {
        if which == 0 {
            return self.of_yard(self.machine.read().as_ref()?.price);
        }
        let id = self.state.read().beside.clone()?;
        self.of_yard(self.yard.read().machine(&id)?.price)
    }

    /// The price of the machine or of the one beside it.
    pub fn machine_price(self, which: usize) -> Option<f64> {
        let own = self.state.read().prices.machines.get(which).copied();
        own.flatten().or_else(|| self.yard_machine_price(which))
    }
}
