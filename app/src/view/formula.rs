//! A formula: its symbols, and beneath them its figures.

use crate::number;
use crate::text::{in_turn, sources};
use farend_core::formula::{Figure, Formula, Part};
use farend_core::source::Source;
use farend_core::units::UnitSystem;
use leptos::prelude::*;

/// A formula in symbols and in figures, and the sources of the figures that have one.
pub fn formula(formula: &Formula, units: UnitSystem) -> impl IntoView + use<> {
    let line = |show: &dyn Fn(&Figure) -> String| {
        let mut text = format!("{} =", show(&formula.result));
        for part in &formula.parts {
            let part = match part {
                Part::Sign(sign) => (*sign).to_owned(),
                Part::Figure(figure) => show(figure),
            };
            // Brackets and exponents stand close.
            if !text.ends_with('(') && !part.starts_with([')', '²']) {
                text.push(' ');
            }
            text.push_str(&part);
        }
        text
    };
    let symbols = line(&|figure| figure.symbol.to_owned());
    let figures = line(&|figure| number::shown(figure.value, units));
    let notes: Vec<_> = formula
        .parts
        .iter()
        .filter_map(|part| match part {
            Part::Figure(figure) if figure.source != Source::Computed => {
                Some(sources::note(figure, units))
            }
            _ => None,
        })
        .collect();
    view! {
        <div class="formula">
            <p class="symbols">{symbols}</p>
            <p class="filled">{figures}</p>
            {(!notes.is_empty())
                .then(|| {
                    view! { <p class="source">{in_turn(&notes)}</p> }
                })}
        </div>
    }
}
