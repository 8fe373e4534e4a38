//! The six routes as a picture of its own: an SVG that needs nothing beside it, for files and paper.
//!
//! All of its look stands in its attributes. What is told by colour is told by filling, outline or
//! word too.

mod marks;

use crate::model::Model;
use crate::segments::{Piece, scale, segments};
use crate::text::{columns, labels, sentences};
use crate::{browser, number};
use farend_core::compare::{Comparison, Outcome, RouteResult, Run};
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::route::part::NoFit;
use farend_core::units::UnitSystem;
use leptos::prelude::*;
use marks::{Letters, NEED, QUIET, at, filled, need, patterns, piece, whisker};
use web_sys::HtmlElement;

/// Width and height in the picture's own units.
pub const SIZE: [u32; 2] = [1000, 640];

/// Left and right edge of all that is shown.
const EDGES: [f64; 2] = [32.0, 968.0];
/// Where the bars begin, and where their scale ends.
const BARS: [f64; 2] = [222.0, 776.0];
/// Where a bar's figures begin.
const FIGURES: f64 = 794.0;
/// Top of the first bar.
const TOP: f64 = 126.0;
/// From one bar to the next.
const PITCH: f64 = 396.0 / RouteId::ALL.len() as f64;
/// Height of a bar.
const BAR: f64 = 32.0;
/// From above the first bar to below what is told of the last one.
const DOWN: [f64; 2] = [120.0, 510.0];

const SMALL: Letters = Letters::new(12.0).ink(QUIET);
const KEY: Letters = Letters::new(12.0);

/// The picture as the text of an SVG file. `None` where the browser refuses.
pub fn file(model: Model) -> Option<String> {
    // Outside the document: nobody sees or hears it.
    let apart: HtmlElement = browser::element("div")?;
    let shown = leptos::mount::mount_to(apart.clone(), move || view! { <Picture model=model /> });
    let text = browser::serialized(&apart.first_element_child()?);
    drop(shown);
    text
}

/// The part of the picture without its heading and foot: from where, and how large.
const CORE: &str = "24 80 952 510";

/// The picture; its core alone where heading and foot stand beside it.
#[component]
pub fn Picture(model: Model, #[prop(optional)] core: bool) -> impl IntoView {
    move || {
        let (machine, implement) = (model.machine.read(), model.implement.read());
        let all = model.comparison.read();
        let (machine, implement, all) = (machine.as_ref()?, implement.as_ref()?, all.as_ref()?);
        let units = model.units.get();
        let chart = Chart {
            scale: scale(machine, &model.settings.get(), all),
            engine: all.budget.net.likely,
            units,
        };
        let title = sentences::picture_title(machine, implement);
        let [width, height] = SIZE;
        let shown = if core {
            CORE.to_owned()
        } else {
            format!("0 0 {width} {height}")
        };
        let rows = || {
            let tops = (0..).map(|place: u8| TOP + PITCH * f64::from(place));
            all.routes.iter().zip(tops)
        };
        Some(view! {
            <svg
                role="img"
                aria-label=sentences::picture(&title, all, units)
                width=width
                height=height
                viewBox=shown
            >
                {patterns()}
                <rect width=width height=height fill="#ffffff" />
                {(!core).then(|| heading(&title, all, units))}
                {rows().filter_map(|(result, y)| Some(chart.bar(result.run()?, y))).collect_view()}
                {chart.ends(all)}
                {rows().map(|(result, y)| chart.words(result, y)).collect_view()}
                {key()}
                {(!core).then(|| foot(model.yard.read().invented))}
            </svg>
        })
    }
}

fn heading(title: &str, all: &Comparison, units: UnitSystem) -> impl IntoView + use<> {
    let [left, right] = EDGES;
    let large = Letters::new(26.0).bold();
    let small = Letters::new(15.0).ink(QUIET);
    let subject = sentences::picture_subject(all, units);
    view! {
        {large.draw(left, 44.0, &large.fitted(title, right - left))}
        {small.draw(left, 68.0, &small.fitted(&subject, right - left))}
    }
}

/// What all bars have in common.
#[derive(Clone, Copy)]
struct Chart {
    /// Power that the whole width stands for.
    scale: Power,
    /// The engine's net power.
    engine: Power,
    units: UnitSystem,
}

impl Chart {
    fn x(&self, power: Power) -> f64 {
        let [from, to] = BARS;
        from + (to - from) * (power / self.scale)
    }

    fn shown(&self, power: Power) -> String {
        number::power(power, self.units)
    }

    /// The need and the engine's power, down through all bars and named above them.
    fn ends(&self, all: &Comparison) -> impl IntoView + use<> {
        let label = |power: Power, y: f64, letters: Letters, text: String| {
            let x = self.x(power);
            let [from, to] = BARS;
            // Named towards the middle.
            let anchor = if x > (from + to) / 2.0 {
                "end"
            } else {
                "start"
            };
            letters.anchor(anchor).draw(x, y, &text)
        };
        let bold = Letters::new(14.0).bold();
        let engine = at(self.x(self.engine));
        let range = [all.need.low, all.need.likely, all.need.high].map(|power| self.x(power));
        let [top, foot] = DOWN;
        view! {
            <line
                x1=engine.clone()
                x2=engine
                y1=at(top)
                y2=at(foot)
                stroke=QUIET
                stroke-width="1"
            />
            {need(range, DOWN)}
            {label(
                self.engine,
                96.0,
                bold.ink(QUIET),
                sentences::engine_end(&self.shown(self.engine)),
            )}
            {label(
                all.need.likely,
                114.0,
                bold.ink(NEED),
                sentences::need_end(&self.shown(all.need.likely)),
            )}
        }
    }

    /// A route's bar.
    fn bar(&self, run: &Run, y: f64) -> impl IntoView + use<> {
        let pieces = segments(run, self.engine, self.scale);
        pieces
            .iter()
            .map(|it| piece(it, BARS, y, BAR))
            .collect_view()
    }

    /// All that is told about a route, and how sure its figure is.
    fn words(&self, result: &RouteResult, y: f64) -> impl IntoView + use<> {
        let [left, _] = EDGES;
        let [bars, _] = BARS;
        let bold = Letters::new(15.0).bold();
        let name = bold.lines(labels::route(result.route), bars - left - 8.0, 2);
        let lines = || (0..).map(|line| y + 14.0 + 17.0 * f64::from(line));
        let below = lines().nth(name.len()).unwrap_or(y);
        let names = name.iter().zip(lines());
        let names = names.map(|(line, y)| bold.draw(left, y, line));
        let rest = match &result.outcome {
            Outcome::NoFit(reasons) => self.no_fit(reasons, y).into_any(),
            Outcome::Runs(run) => {
                let limit = SMALL.draw(left, below, &columns::held_by(run.limit));
                view! { {limit} {self.figures(run, y)} }.into_any()
            }
        };
        view! { {names.collect_view()} {rest} }
    }

    fn figures(&self, run: &Run, y: f64) -> impl IntoView + use<> {
        let [from, to] = BARS;
        let pieces = segments(run, self.engine, self.scale);
        let power_of = |piece: Piece| {
            let widths = pieces.iter().filter(|it| it.piece == piece);
            self.scale * widths.map(|it| it.width).sum::<f64>()
        };
        let lost = [
            (labels::in_shafts(), Piece::LostInShafts),
            (labels::in_oil(), Piece::LostInOil),
            (labels::left_over(), Piece::NotTakenUp),
            (labels::before(), Piece::AirAndDriving),
        ]
        .map(|(name, piece)| (name, power_of(piece)));
        let lost = sentences::losses_by_kind(&lost, self.units);
        let range = [run.delivered.low, run.delivered.high].map(|power| self.x(power));
        let [standing, part] = sentences::standing_and_part(run, self.engine);
        view! {
            {whisker(range, y + BAR / 2.0, 7.0)}
            {SMALL.draw(from, y + BAR + 15.0, &SMALL.fitted(&lost, to - from))}
            {Letters::new(22.0).bold().draw(FIGURES, y + 18.0, &self.shown(run.delivered.likely))}
            {Letters::new(15.0).bold().draw(FIGURES, y + 37.0, &standing)}
            {SMALL.draw(FIGURES, y + 53.0, &part)}
        }
    }

    fn no_fit(&self, reasons: &[NoFit], y: f64) -> impl IntoView + use<> {
        let [from, to] = BARS;
        let told = sentences::no_fit(reasons, self.units);
        let lines = SMALL.lines(&told, to - from, 3).into_iter();
        let lines = lines
            .zip(0..)
            .map(|(line, place)| SMALL.draw(from, y + 14.0 + 16.0 * f64::from(place), &line));
        view! {
            {lines.collect_view()}
            {Letters::new(15.0).bold().ink(QUIET).draw(FIGURES, y + 14.0, labels::no_fit())}
        }
    }
}

/// What the fillings and lines stand for, in three columns.
fn key() -> impl IntoView {
    const WIDTH: f64 = 34.0;
    const HEIGHT: f64 = 13.0;
    /// From the end of one name to the next filling.
    const GAP: f64 = 8.0;
    let [left, right] = EDGES;
    let [_, foot] = DOWN;
    // The first has the longest name.
    let columns = [left, 372.0, 676.0];
    let place = |column: usize, row: f64| [columns[column], foot + 18.0 + 20.0 * row];
    let name = move |[x, y]: [f64; 2], name: &str| {
        let next = columns.into_iter().find(|column| *column > x);
        let from = x + WIDTH + GAP;
        let most = next.map_or(right, |next| next - GAP) - from;
        KEY.draw(from, y + 11.0, &KEY.fitted(name, most))
    };
    let pieces = [
        (Piece::Arrives, labels::arrives(), place(0, 0.0)),
        (Piece::NotTakenUp, labels::not_taken_up(), place(0, 1.0)),
        (Piece::LostInShafts, labels::lost_in_shafts(), place(1, 0.0)),
        (
            Piece::AirAndDriving,
            labels::air_and_driving(),
            place(1, 1.0),
        ),
        (Piece::LostInOil, labels::lost_in_oil(), place(2, 0.0)),
    ];
    let pieces = pieces.map(|(piece, text, corner)| {
        view! { {filled(piece, corner, [WIDTH, HEIGHT])} {name(corner, text)} }
    });
    let (need_at, spread_at) = (place(2, 1.0), place(0, 2.0));
    let [x, y] = need_at;
    let across = [x, x + WIDTH / 2.0, x + WIDTH];
    let [from, middle] = spread_at;
    view! {
        {pieces.into_iter().collect_view()}
        {need(across, [y, y + HEIGHT])}
        {name(need_at, labels::need())}
        {whisker([from + 2.0, from + WIDTH - 2.0], middle + HEIGHT / 2.0, 5.0)}
        {name(spread_at, labels::spread())}
    }
}

fn foot(invented: bool) -> impl IntoView {
    let [left, right] = EDGES;
    let [_, height] = SIZE;
    let y = f64::from(height) - 16.0;
    let made_by = sentences::made_by(env!("CARGO_PKG_VERSION"), &number::today("medium"));
    view! {
        {invented.then(|| Letters::new(13.0).bold().draw(left, y, labels::invented_data()))}
        {Letters::new(12.5).ink(QUIET).anchor("end").draw(right, y, &made_by)}
    }
}
