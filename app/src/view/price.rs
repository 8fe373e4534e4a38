//! A field for one price.

use super::entry::NumberEntry;
use crate::model::Model;
use crate::number;
use crate::text::cost;
use farend_core::money::{Prices, is_price};
use leptos::prelude::*;

/// A price of the user's own at a place among the prices; the yard's stands in the empty field.
pub fn price(
    id: String,
    label: String,
    of: String,
    place: impl for<'a> Fn(&'a mut Prices) -> Option<&'a mut Option<f64>> + Copy + Send + Sync + 'static,
    of_yard: impl Fn() -> Option<f64> + Send + Sync + 'static,
) -> impl IntoView {
    let model = Model::of_page();
    let enter = Callback::new(move |entered: Option<f64>| {
        let fits = entered.is_none_or(is_price);
        if fits {
            model.state.update(|state| {
                if let Some(price) = place(&mut state.prices) {
                    *price = entered;
                }
            });
        }
        fits
    });
    let value = Signal::derive(move || *place(&mut model.state.read().prices.clone())?);
    view! {
        <NumberEntry
            id=id
            label=label
            of=of
            unit=Signal::derive(move || model.currency().unwrap_or_default())
            value=value
            hint=Signal::derive(move || of_yard().map_or_else(String::new, number::plain))
            enter=enter
            allowed=cost::prices()
        />
    }
}
