//! A route's bar: what arrives, what is lost, what the job needs, and how sure that is.

use crate::segments::{Piece, Segment, segments};
use farend_core::compare::{Comparison, Run};
use farend_core::quantity::Power;
use farend_core::spread::Spread;
use leptos::prelude::*;

/// A part of the picture's width as an SVG length.
pub fn across(part: f64) -> String {
    format!("{:.3}%", part * 100.0)
}

/// All that a bar shows, in parts of the picture's width.
#[derive(Clone, PartialEq)]
pub struct Drawn {
    segments: Vec<Segment>,
    need: Spread<f64>,
    delivered: Spread<f64>,
}

impl Drawn {
    /// Of a route that runs.
    pub fn of(run: &Run, all: &Comparison, scale: Power) -> Self {
        Self {
            segments: segments(run, all.budget.net.likely, scale),
            need: all.need.map(|power| power / scale),
            delivered: run.delivered.map(|power| power / scale),
        }
    }

    /// What its pieces stand for.
    pub fn pieces(&self) -> Vec<Piece> {
        self.segments.iter().map(|segment| segment.piece).collect()
    }

    fn segment(&self, place: usize) -> Option<&Segment> {
        self.segments.get(place)
    }
}

/// The picture of a route that runs. Its message stands in words beside it.
pub fn bar(pieces: Vec<Piece>, drawn: Memo<Option<Drawn>>) -> impl IntoView {
    let length = move |of: fn(&Drawn) -> f64| move || across(drawn.read().as_ref().map_or(0.0, of));
    let of_segment = move |place, of: fn(&Segment) -> f64| {
        move || {
            let drawn = drawn.read();
            let segment = drawn.as_ref().and_then(|it| it.segment(place));
            across(segment.map_or(0.0, of))
        }
    };
    let piece = |(place, piece)| {
        view! {
            <rect
                class=class(piece)
                x=of_segment(place, |it| it.from)
                width=of_segment(place, |it| it.width)
                y="18%"
                height="64%"
            />
        }
    };
    let need = |class| {
        let likely = length(|it| it.need.likely);
        view! { <line class=class x1=likely x2=likely y1="0" y2="100%" /> }
    };
    view! {
        <svg class="bar" aria-hidden="true" focusable="false">
            {pieces.into_iter().enumerate().map(piece).collect_view()}
            <rect
                class="need-range"
                x=length(|it| it.need.low)
                width=length(|it| it.need.high - it.need.low)
                y="0"
                height="100%"
            />
            {need("need halo")}
            {need("need")}
            {whisker(
                0.12,
                length(|it| it.delivered.low),
                // Without any width the stops wouldn't be drawn either.
                length(|it| (it.delivered.high - it.delivered.low).max(1e-5)),
            )}
        </svg>
    }
}

fn class(piece: Piece) -> &'static str {
    match piece {
        Piece::Arrives => "arrives",
        Piece::LostInShafts => "lost-shafts",
        Piece::LostInOil => "lost-oil",
        Piece::NotTakenUp => "not-taken",
        Piece::AirAndDriving => "air-and-driving",
    }
}

/// A line from low to high with a stop at each end, dark within light: seen on any ground.
pub fn whisker(
    half: f64,
    from: impl Fn() -> String + Send + 'static,
    width: impl Fn() -> String + Send + 'static,
) -> impl IntoView {
    let (top, bottom) = (across(0.5 - half), across(0.5 + half));
    let lines = ["whisker halo", "whisker"].map(|class| {
        let stop = |at| view! { <line x1=at x2=at y1=top.clone() y2=bottom.clone() /> };
        view! {
            <g class=class>
                <line x1="0" x2="100%" y1="50%" y2="50%" />
                {stop("0")}
                {stop("100%")}
            </g>
        }
    });
    view! {
        <svg class="whiskers" x=from width=width>
            {lines.collect_view()}
        </svg>
    }
}
