//! One thing that can be turned: by dragging, by tapping, by keys or by typing.

use crate::model::Model;
use crate::number;
use crate::text::{labels, named, sentences};
use farend_core::control::{Control, Range};
use farend_core::settings::LAST_DIGITS;
use farend_core::units::{Quantity, UnitSystem};
use leptos::prelude::*;

/// The step of the slider and that of the buttons, in the reader's units.
fn steps(quantity: Quantity, units: UnitSystem) -> (f64, f64) {
    match (quantity, units) {
        (Quantity::Speed(_), _) => (10.0, 50.0),
        (Quantity::Temperature(_), _) | (Quantity::Slope(_), _) => (1.0, 5.0),
        (Quantity::Length(_), UnitSystem::Metric) => (50.0, 250.0),
        (Quantity::Length(_), UnitSystem::Us) => (100.0, 1000.0),
        (Quantity::GroundSpeed(_), _) => (0.1, 0.5),
        (Quantity::Depth(_), UnitSystem::Metric) => (1.0, 5.0),
        (Quantity::Density(_), UnitSystem::Metric) => (10.0, 50.0),
        (Quantity::Depth(_) | Quantity::Density(_), UnitSystem::Us) => (0.5, 2.0),
        (Quantity::Pressure(_), UnitSystem::Metric) => (1.0, 5.0),
        (Quantity::Pressure(_), UnitSystem::Us) => (10.0, 100.0),
        (_, UnitSystem::Metric) => (0.5, 2.0),
        (_, UnitSystem::Us) => (0.1, 0.5),
    }
}

/// An end of the slider on a whole step, so that dragging gives round numbers.
fn whole_steps(end: f64, step: f64, round: fn(f64) -> f64) -> f64 {
    round(end / step) * step
}

/// A slider with its buttons, its number box and its way back.
#[component]
pub fn ControlRow(control: Control) -> impl IntoView {
    let model = Model::of_page();
    let range = Memo::new(move |_| {
        let (machine, implement) = (model.machine.read(), model.implement.read());
        control.range(
            machine.as_ref()?,
            implement.as_ref()?,
            model.kit().as_ref(),
            &model.settings.get(),
        )
    });
    // What was typed, while it can't be used.
    let refused = RwSignal::new(None::<String>);

    let number_of = move |pick: fn(&Range) -> Quantity| {
        let range = range.read();
        let quantity = range.as_ref().map(pick)?;
        Some(quantity.shown_in(model.units.get()).0)
    };
    let min = move || number_of(|range| range.min).unwrap_or(0.0);
    let max = move || number_of(|range| range.max).unwrap_or(0.0);
    let now = move || number_of(|range| range.now).unwrap_or(0.0);
    let small = move || {
        range
            .read()
            .map_or(1.0, |range| steps(range.now, model.units.get()).0)
    };
    let spoken = move || {
        let (_, unit) = range.get()?.now.shown_in(model.units.get());
        Some(format!("{} {}", number::plain(now()), labels::spoken(unit)))
    };
    let own = move || {
        range
            .read()
            .map(|range| number::shown(range.own, model.units.get()))
    };
    let is_own = move || range.read().is_none_or(|range| range.now == range.own);

    // Takes a number in the reader's units, where it's in range.
    let turn_to = move |value: f64| {
        let Some(now) = range.get_untracked() else {
            return false;
        };
        let units = model.units.get_untracked();
        let (low, high) = (now.min.shown_in(units).0, now.max.shown_in(units).0);
        // An end may come through SI a last digit off.
        let rounding = low.abs().max(high.abs()) * LAST_DIGITS;
        let fits = (low - rounding..=high + rounding).contains(&value);
        if fits {
            refused.set(None);
            model.turn(control, now.now.entered_in(units, value));
        }
        fits
    };
    let drag = move |event: leptos::ev::Event| {
        if let Ok(value) = event_target_value(&event).parse::<f64>() {
            model.dragging.step();
            turn_to(value.clamp(min(), max()));
        }
    };
    let type_in = move |event: leptos::ev::Event| {
        let text = event_target_value(&event);
        if !number::typed(&text).is_some_and(turn_to) {
            refused.set(Some(text));
        }
    };
    let push = move |direction: f64| {
        let step = range
            .get_untracked()
            .map_or(1.0, |range| steps(range.now, model.units.get_untracked()).1);
        // To the next whole step in that direction, but not beyond the ends.
        let place = untrack(now) / step;
        let next = if direction > 0.0 {
            (place + 1e-6).floor() + 1.0
        } else {
            (place - 1e-6).ceil() - 1.0
        };
        turn_to((next * step).clamp(untrack(min), untrack(max)));
    };
    let back = move |_| {
        refused.set(None);
        model.turn(control, None);
    };
    let complaint = move || {
        refused.get()?;
        let range = range.get()?;
        Some(sentences::out_of_range(
            range.min,
            range.max,
            model.units.get(),
        ))
    };

    let name = labels::control(control);
    let id = format!("{control:?}").to_lowercase();
    let complaint_id = format!("{id}-complaint");
    view! {
        <div class="control" data-testid=id>
            <label class="control-name">
                <span>{name}</span>
                <input
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    data-testid="number"
                    aria-invalid=move || refused.read().is_some().to_string()
                    aria-describedby=complaint_id.clone()
                    prop:value=move || refused.get().unwrap_or_else(|| number::plain(now()))
                    on:change=type_in
                />
                <span class="unit">
                    {move || range.read().map(|range| number::unit(range.now, model.units.get()))}
                </span>
            </label>
            <div class="slide">
                <button
                    type="button"
                    data-testid="less"
                    aria-label=named(labels::less(), name)
                    on:click=move |_| push(-1.0)
                >
                    "−"
                </button>
                <input
                    type="range"
                    data-testid="slider"
                    aria-label=name
                    aria-valuetext=spoken
                    min=move || whole_steps(min(), small(), f64::ceil)
                    max=move || whole_steps(max(), small(), f64::floor)
                    step=small
                    prop:value=now
                    on:input=drag
                />
                <button
                    type="button"
                    data-testid="more"
                    aria-label=named(labels::more(), name)
                    on:click=move |_| push(1.0)
                >
                    "+"
                </button>
            </div>
            <p id=complaint_id class="complaint" role="alert" data-testid="complaint">
                {complaint}
            </p>
            <p class="own">
                <Show
                    when=is_own
                    fallback=move || {
                        view! {
                            <button type="button" data-testid="back" on:click=back>
                                {move || own().map(|own| labels::back_to_own(&own))}
                            </button>
                        }
                    }
                >
                    {move || own().map(|own| labels::own(&own))}
                </Show>
            </p>
        </div>
    }
}
