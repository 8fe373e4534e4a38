//! The yard's lists as tables for spreadsheets, with a template for each.

use super::save::hand_over;
use crate::browser;
use crate::model::Model;
use crate::text::tables_in;
use farend_core::export::csv::Table;
use farend_core::yard::list::List;
use farend_core::yard::table::{table, template};
use leptos::prelude::*;

/// Buttons that save each list, and a template of each.
#[component]
pub fn YardTables() -> impl IntoView {
    let model = Model::of_page();
    let save = move |name: String, table: Table| {
        hand_over(model, &name, table.to_csv(), browser::CSV);
    };
    let buttons = move |list: List| {
        let whole = move |_| {
            let table = table(&model.yard.read_untracked(), list);
            save(tables_in::file(list), table);
        };
        let pattern = move |_| save(tables_in::template_file(list), template(list));
        view! {
            <button type="button" data-testid=format!("save-{}", list.word()) on:click=whole>
                {tables_in::save(list)}
            </button>
            <button type="button" data-testid=format!("template-{}", list.word()) on:click=pattern>
                {tables_in::template(list)}
            </button>
        }
    };
    view! {
        <div class="yard-tables">
            <p>{tables_in::tables()}</p>
            {List::ALL.iter().map(|list| buttons(*list)).collect_view()}
        </div>
    }
}
