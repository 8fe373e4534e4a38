//! The page to take home: one sheet of paper, A4 or Letter, with the answer and what it takes.

use super::answer::reasons;
use super::code::code;
use super::elsewhere::CantPrint;
use super::picture::Picture;
use super::watch;
use crate::model::Model;
use crate::text::{advice, cautions, fit, labels, named, offline, sentences, sheet, stop};
use crate::{browser, number};
use farend_core::chain::Ledger;
use farend_core::fit::{Item, Judgement};
use farend_core::quantity::Power;
use farend_core::recommend::Advice;
use farend_core::route::RouteId;
use farend_core::seat::minds_wheels;
use farend_core::stage::StagePhysics;
use farend_core::state::{State, View};
use farend_core::units::UnitSystem;
use leptos::prelude::*;

/// Identifier of what opens the sheet.
pub const OPENER: &str = "take-home-opener";
/// Identifier of what leads back.
const BACK: &str = "take-home-back";
/// The most items that the sheet has room for.
const MOST_ITEMS: usize = 5;
/// The most questions.
const MOST_QUESTIONS: usize = 4;

/// The sheet on the screen, with what can be done with it; on paper the sheet alone.
#[component]
pub fn TakeHome() -> impl IntoView {
    let model = Model::of_page();
    let printing = watch::printing();
    // Other views have sheets of their own.
    let shown =
        move || model.taking_home.get() || (printing.get() && model.view.get() == View::Pair);
    let close = move || {
        model.taking_home.set(false);
        // Where the reader came from.
        browser::focus(OPENER);
    };
    Effect::new(move || {
        if model.taking_home.get() {
            browser::focus(BACK);
        }
    });
    view! {
        <Show when=shown>
            <main
                class="take-home"
                data-testid="take-home-page"
                on:keydown=move |event| {
                    if event.key() == "Escape" {
                        close();
                    }
                }
            >
                <div class="tools">
                    <button
                        type="button"
                        data-testid="back"
                        id=BACK
                        on:click=move |_| close()
                    >
                        {sheet::back()}
                    </button>
                    <Print />
                </div>
                {move || Sheet::of(model).map(|sheet| sheet.view(model))}
            </main>
        </Show>
    }
}

#[component]
fn Print() -> impl IntoView {
    let refused = RwSignal::new(false);
    view! {
        <button
            type="button"
            data-testid="print"
            on:click=move |_| refused.set(!browser::print())
        >
            {sheet::print()}
        </button>
        <CantPrint refused=refused told=sheet::cant_print() />
    }
}

/// The route that the sheet is about.
struct Sheet {
    route: RouteId,
    units: UnitSystem,
}

impl Sheet {
    /// The route recommended, else the one that comes nearest, else the open one.
    fn of(model: Model) -> Option<Self> {
        let recommended = model.recommendation.read();
        let advice = &recommended.as_ref()?.advice;
        let nearest = match advice {
            Advice::None(nearest) => nearest.map(|(route, _)| route),
            Advice::Take(_) | Advice::Equal(_) => None,
        };
        let told = advice.route().or(nearest);
        Some(Self {
            route: told.unwrap_or_else(|| model.route.get()),
            units: model.units.get(),
        })
    }

    fn view(self, model: Model) -> impl IntoView {
        let yard = model.yard.get();
        // The address bar follows a little later than the state does.
        let link = model.state.with(State::to_link);
        let head = yard.dealer.clone().unwrap_or_else(|| yard.name.clone());
        view! {
            <article class="sheet" data-testid="sheet">
                <header>
                    <p class="dealer">{head}</p>
                    <p>{number::today("long")}</p>
                </header>
                <h1>{model.answer()}</h1>
                <ul>{reasons(model)}</ul>
                <div
                    class="sheet-picture scroll"
                    data-testid="sheet-picture"
                    tabindex="0"
                    role="region"
                    aria-label=labels::routes_heading()
                >
                    <Picture model=model core=true />
                </div>
                <p class="sideways">{sheet::sideways()}</p>
                <div class="sheet-columns">
                    <div>{self.power(model)}</div>
                    <div>{self.taking(model)}</div>
                </div>
                <div class="sheet-bottom">
                    {self.cautions()}
                    <div class="sheet-code">
                        <p>{sheet::code()}</p>
                        {code(browser::public_address(&link).as_deref())}
                    </div>
                </div>
                <footer>
                    <div>
                        {yard.note.clone().map(|note| view! { <p class="dealer-note">{note}</p> })}
                        {yard.invented.then(|| view! { <p><b>{sheet::invented()}</b></p> })}
                        <p>{sheet::foot()} " " {stop(&offline::version(browser::build().as_deref()))}</p>
                    </div>
                </footer>
            </article>
        }
    }

    /// Need, bars and the ledger in short.
    fn power(&self, model: Model) -> impl IntoView + use<> {
        let (all, survey) = (model.comparison.read(), model.survey.read());
        let all = all.as_ref()?;
        let run = all.route(self.route).and_then(|it| it.run());
        let seat = survey.as_ref()?.route(self.route)?.running.as_ref();
        let outcome = run.zip(seat).map(|(run, running)| {
            sheet::outcome(self.route, run, advice::seat(running.seat), self.units)
        });
        let kind = model.implement.read().as_ref()?.kind;
        let place = seat.map(|running| {
            let drives_over = running.seat.drives_over(kind);
            let matters = minds_wheels(kind);
            sheet::at_work(running.seat, matters.then_some(drives_over))
        });
        Some(view! {
            <h2>{sheet::outcome_heading()}</h2>
            <p>{sheet::need(all, self.units)}</p>
            <p>{outcome} " " {place}</p>
            {run.map(|run| ledger(&run.ledger, self.units))}
        })
    }

    /// What to see to, to buy and to ask.
    fn taking(&self, model: Model) -> impl IntoView + use<> {
        let survey = model.survey.read();
        let surveyed = survey.as_ref()?.route(self.route)?;
        let told = sheet::told(&surveyed.items);
        let line = |item: &Item| {
            view! {
                <li>
                    <b>{stop(&named(fit::judgement(item.judgement), fit::name(&item.check)))}</b> " "
                    {fit::finding(&item.check, self.units)} " "
                    {fit::remedy(item, self.units)}
                </li>
            }
        };
        let asked: Vec<_> = surveyed
            .items
            .iter()
            .filter(|it| it.judgement == Judgement::Question)
            .map(|it| fit::question(&it.check))
            .collect();
        Some(view! {
            <h2>{sheet::buy_heading()}</h2>
            <ul>{self.buying(model)}</ul>
            <h2>{sheet::fit_heading()}</h2>
            {told.is_empty().then_some(sheet::fits())}
            <ul>
                {told.iter().take(MOST_ITEMS).map(line).collect_view()}
                {rest(told.len(), MOST_ITEMS)}
            </ul>
            {(!asked.is_empty())
                .then(|| {
                    let lines = asked.iter().take(MOST_QUESTIONS);
                    view! {
                        <h2>{sheet::ask_heading()}</h2>
                        <ul>
                            {lines.map(|it| view! { <li>{*it}</li> }).collect_view()}
                            {rest(asked.len(), MOST_QUESTIONS)}
                        </ul>
                    }
                })}
        })
    }

    fn buying(&self, model: Model) -> impl IntoView + use<> {
        let (all, survey) = (model.comparison.read(), model.survey.read());
        let implement = model.implement.read();
        let run = all.as_ref()?.route(self.route)?.run()?;
        let yard = model.yard.read();
        let kit = yard.kit(&run.kit)?;
        let running = survey.as_ref()?.route(self.route)?.running.as_ref()?;
        let name = sentences::short(&implement.as_ref()?.name).to_owned();
        let currency = model.currency();
        let price = |amount| number::money(amount, currency.as_deref());
        let lines = sheet::to_buy(&kit.name, &name, self.route, running.prices, price);
        Some(
            lines
                .into_iter()
                .map(|line| view! { <li>{line}</li> })
                .collect_view(),
        )
    }

    fn cautions(&self) -> impl IntoView + use<> {
        let cautions = cautions::of_route(self.route);
        view! {
            <div class="sheet-cautions">
                <h2>{labels::cautions_heading()}</h2>
                <p>{cautions::lead()}</p>
                <ul>{cautions.map(|it| view! { <li>{it.text}</li> }).collect_view()}</ul>
            </div>
        }
    }
}

/// That there are more than there is room for.
fn rest(all: usize, most: usize) -> impl IntoView {
    (all > most).then(|| view! { <li>{sheet::more(all - most)}</li> })
}

/// Each stage that loses anything, with what it loses and passes on.
fn ledger(ledger: &Ledger, units: UnitSystem) -> impl IntoView + use<> {
    let rows: Vec<_> = ledger
        .passages
        .iter()
        .filter(|passage| passage.loss > Power::ZERO)
        .map(|passage| {
            view! {
                <tr>
                    <th scope="row">{labels::stage(passage.stage.kind())}</th>
                    <td>{number::power(passage.loss, units)}</td>
                    <td>{number::power(passage.gives.power, units)}</td>
                </tr>
            }
        })
        .collect();
    view! {
        <h2>{sheet::ledger_heading()}</h2>
        <table>
            <thead>
                <tr>
                    <td></td>
                    <th scope="col">{sheet::lost()}</th>
                    <th scope="col">{sheet::passed_on()}</th>
                </tr>
            </thead>
            <tbody>{rows}</tbody>
        </table>
    }
}
