//! What is shown of the yard, as tables on paper.

use super::super::watch;
use crate::model::Model;
use crate::model::grid::GridModel;
use crate::number;
use crate::text::{grid, labels};
use leptos::prelude::*;

/// Columns of implements that lie beside each other on a sheet.
const ACROSS: usize = 6;
/// The most cells that are put on paper.
const MOST: usize = 6_000;

/// The tables, while the page is being printed.
#[component]
pub fn Paper() -> impl IntoView {
    let (model, grid) = (Model::of_page(), GridModel::of_page());
    let printing = watch::printing();
    view! {
        <Show when=move || printing.get()>
            <div class="grid-paper" data-testid="grid-paper">
                {move || sheets(model, grid)}
            </div>
        </Show>
    }
}

fn sheets(model: Model, grid: GridModel) -> impl IntoView {
    let (rows, columns) = {
        let arranged = grid.arranged.read();
        (arranged.machines.len(), arranged.implements.len())
    };
    let yard = model.yard.read();
    let title = view! {
        <h1>{yard.name.clone()}</h1>
        <p>
            {yard.invented.then_some(labels::invented())} " " {grid::note()} " "
            {number::today("long")}
        </p>
    };
    if rows * columns > MOST {
        return view! { {title} <p>{grid::too_large()}</p> }.into_any();
    }
    let blocks = (0..columns).step_by(ACROSS).map(|from| {
        let across = from..(from + ACROSS).min(columns);
        let heads = across
            .clone()
            .map(|column| view! { <th scope="col">{grid.implement_name(column)}</th> });
        let lines = (0..rows).map(|row| {
            let cells = across.clone().map(|column| {
                let shown = grid.shown(row, column).flatten();
                match shown {
                    None => view! { <td>"–"</td> }.into_any(),
                    Some((route, cell)) => view! {
                        <td>
                            <b>{grid::standing(&cell)}</b>
                            <br />
                            {grid::route(route)}
                        </td>
                    }
                    .into_any(),
                }
            });
            view! {
                <tr>
                    <th scope="row">{grid.machine_name(row)}</th>
                    {cells.collect_view()}
                </tr>
            }
        });
        view! {
            <table>
                <thead>
                    <tr>
                        <th scope="col">{labels::machine()}</th>
                        {heads.collect_view()}
                    </tr>
                </thead>
                <tbody>{lines.collect_view()}</tbody>
            </table>
        }
    });
    view! { {title} {blocks.collect_view()} }.into_any()
}
