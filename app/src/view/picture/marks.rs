//! What the picture is drawn with: letters, fillings, lines.

use crate::lettering;
use crate::segments::{Piece, Segment};
use leptos::prelude::*;

pub const INK: &str = "#1b1f23";
pub const QUIET: &str = "#4b5158";
pub const NEED: &str = "#961654";
const PAPER: &str = "#ffffff";
/// Faces that every system has one of, all about equally wide.
const FACES: &str = "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif";
/// Bold letters are so much wider.
const BOLD: f64 = 1.08;

/// A length of the picture as SVG writes it.
pub fn at(length: f64) -> String {
    let text = format!("{length:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// How letters look.
#[derive(Clone, Copy)]
pub struct Letters {
    pub size: f64,
    pub bold: bool,
    pub ink: &'static str,
    /// Where the given place lies: "start", "middle" or "end" of the text.
    pub anchor: &'static str,
}

impl Letters {
    pub const fn new(size: f64) -> Self {
        Self {
            size,
            bold: false,
            ink: INK,
            anchor: "start",
        }
    }

    pub const fn bold(self) -> Self {
        Self { bold: true, ..self }
    }

    pub const fn ink(self, ink: &'static str) -> Self {
        Self { ink, ..self }
    }

    pub const fn anchor(self, anchor: &'static str) -> Self {
        Self { anchor, ..self }
    }

    /// The size that widths are reckoned with.
    fn reckoned(self) -> f64 {
        self.size * if self.bold { BOLD } else { 1.0 }
    }

    /// A text shortened to a width.
    pub fn fitted(self, text: &str, most: f64) -> String {
        lettering::fitted(text, self.reckoned(), most)
    }

    /// A text in so many lines at most, each no wider than so much.
    pub fn lines(self, text: &str, most: f64, count: usize) -> Vec<String> {
        lettering::lines(text, self.reckoned(), most, count)
    }

    /// A text within a light edge: seen on any ground.
    pub fn draw(self, x: f64, y: f64, text: &str) -> impl IntoView + use<> {
        let text = text.to_owned();
        let weight = if self.bold { "700" } else { "400" };
        view! {
            <g
                font-family=FACES
                font-size=at(self.size)
                font-weight=weight
                text-anchor=self.anchor
            >
                <text
                    x=at(x)
                    y=at(y)
                    fill=PAPER
                    stroke=PAPER
                    stroke-width="4"
                    stroke-linejoin="round"
                >
                    {text.clone()}
                </text>
                <text x=at(x) y=at(y) fill=self.ink>
                    {text}
                </text>
            </g>
        }
    }
}

/// A rectangle that stands for a piece of a bar, told apart by its filling in grey too.
pub fn filled(piece: Piece, [x, y]: [f64; 2], [width, height]: [f64; 2]) -> impl IntoView {
    let (fill, stroke, dashes) = match piece {
        Piece::Arrives => ("#164b6b", INK, ""),
        Piece::LostInShafts => ("url(#picture-hatch)", "#8a5a14", ""),
        Piece::LostInOil => ("url(#picture-drops)", "#a33b1f", ""),
        Piece::NotTakenUp => (PAPER, QUIET, "4 3"),
        Piece::AirAndDriving => ("#cfc8b8", QUIET, ""),
    };
    view! {
        <rect
            x=at(x)
            y=at(y)
            width=at(width)
            height=at(height)
            fill=fill
            stroke=stroke
            stroke-width="1"
            stroke-dasharray=(!dashes.is_empty()).then_some(dashes)
        />
    }
}

/// A bar's piece at its place along the bars.
pub fn piece(
    segment: &Segment,
    [from, to]: [f64; 2],
    y: f64,
    height: f64,
) -> impl IntoView + use<> {
    let long = to - from;
    let corner = [from + segment.from * long, y];
    filled(segment.piece, corner, [segment.width * long, height])
}

/// The fillings that tell losses apart without colour.
pub fn patterns() -> impl IntoView {
    view! {
        <defs>
            <pattern
                id="picture-hatch"
                width="8"
                height="8"
                patternUnits="userSpaceOnUse"
                patternTransform="rotate(45)"
            >
                <rect width="8" height="8" fill="#f6e7c8" />
                <rect width="3" height="8" fill="#8a5a14" />
            </pattern>
            <pattern id="picture-drops" width="9" height="9" patternUnits="userSpaceOnUse">
                <rect width="9" height="9" fill="#f9ddd2" />
                <circle cx="2.5" cy="2.5" r="1.7" fill="#a33b1f" />
                <circle cx="7" cy="7" r="1.7" fill="#a33b1f" />
            </pattern>
        </defs>
    }
}

/// The need: its range as a band, and the likely one as a line.
pub fn need([low, likely, high]: [f64; 3], [top, bottom]: [f64; 2]) -> impl IntoView {
    let line = |stroke: &'static str, width: &'static str, dashes: Option<&'static str>| {
        view! {
            <line
                x1=at(likely)
                x2=at(likely)
                y1=at(top)
                y2=at(bottom)
                stroke=stroke
                stroke-width=width
                stroke-dasharray=dashes
            />
        }
    };
    view! {
        <rect
            x=at(low)
            y=at(top)
            width=at(high - low)
            height=at(bottom - top)
            fill=NEED
            fill-opacity="0.13"
        />
        {line(PAPER, "6", None)}
        {line(NEED, "3", Some("9 4"))}
    }
}

/// A line from low to high with a stop at each end, dark within light.
pub fn whisker([low, high]: [f64; 2], middle: f64, half: f64) -> impl IntoView {
    let path = format!(
        "M{0} {1}H{2}M{0} {3}V{4}M{2} {3}V{4}",
        at(low),
        at(middle),
        at(high),
        at(middle - half),
        at(middle + half)
    );
    [(PAPER, "5"), (INK, "2")]
        .map(|(stroke, width)| {
            view! {
                <path
                    d=path.clone()
                    fill="none"
                    stroke=stroke
                    stroke-width=width
                    stroke-linecap="square"
                />
            }
        })
        .collect_view()
}
