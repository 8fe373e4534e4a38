//! The host's own colours, taken where all that is written in or on them stays readable.

use super::fault::{OptionFault, Wrong};
use crate::browser;

/// A colour that a host can choose. What the bars are drawn in stays as it is: it has a meaning.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Colour {
    /// Buttons, links, edges.
    Accent,
    /// The ground of the answer and of table heads.
    AccentGround,
    /// The page's own ground.
    Ground,
}

impl Colour {
    const ALL: [Self; 3] = [Self::Accent, Self::AccentGround, Self::Ground];

    /// The option's name.
    fn name(self) -> &'static str {
        match self {
            Self::Accent => "accent",
            Self::AccentGround => "accent-ground",
            Self::Ground => "ground",
        }
    }

    /// The colour of an option.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|colour| colour.name() == name)
    }

    /// Its name in the style sheet.
    fn in_style(self) -> &'static str {
        match self {
            Self::Accent => "--deep",
            Self::AccentGround => "--deep-soft",
            Self::Ground => "--paper",
        }
    }
}

/// Which colours of the style sheet are written on which. White letters on the accent are the pair
/// of sheet and accent turned round.
const WRITTEN: [(&str, &[&str]); 3] = [
    ("--sheet", &["--deep"]),
    (
        "--paper",
        &["--ink", "--quiet", "--deep", "--need", "--oil", "--good"],
    ),
    ("--deep-soft", &["--ink", "--quiet", "--deep", "--oil"]),
];

/// The least contrast of letters with their ground: WCAG 2.2, 1.4.3.
pub const LEAST: f64 = 4.5;
/// The most that there is: black on white.
pub const MOST: f64 = 21.0;

type Rgb = [u8; 3];

/// A colour of the host's as it is read.
struct Wanted {
    colour: Colour,
    rgb: Rgb,
}

/// Takes over the colours that can be read and told apart, and says what is wrong with the others.
pub fn take_over(colours: &[(Colour, String)]) -> Vec<OptionFault> {
    let mut faults = Vec::new();
    let mut wanted = Vec::new();
    for (colour, written) in colours {
        match browser::colour(written) {
            Some(rgb) => wanted.push(Wanted {
                colour: *colour,
                rgb,
            }),
            None => {
                faults.push(OptionFault::of(colour.name(), written, Wrong::NoColour));
            }
        }
    }
    // Each round takes at least one of them away; with none left all is as in the style sheet.
    while let Some((place, fault)) = unreadable(&wanted, ours) {
        wanted.remove(place);
        faults.push(fault);
    }
    for Wanted { colour, rgb } in &wanted {
        browser::set_root_style(colour.in_style(), &hex(*rgb));
    }
    faults
}

/// A colour of the style sheet.
fn ours(name: &str) -> Option<Rgb> {
    browser::colour(browser::root_style(name)?.trim())
}

/// The place of the first colour that doesn't go with another, and why.
fn unreadable(
    wanted: &[Wanted],
    ours: impl Fn(&str) -> Option<Rgb>,
) -> Option<(usize, OptionFault)> {
    let place = |name: &str| wanted.iter().position(|it| it.colour.in_style() == name);
    let rgb = |name: &str| match place(name) {
        Some(place) => Some(wanted[place].rgb),
        None => ours(name),
    };
    let pairs = WRITTEN
        .into_iter()
        .flat_map(|(ground, all)| all.iter().map(move |ink| (*ink, ground)));
    for (ink, ground) in pairs {
        // What the style sheet itself writes is none of the host's.
        let Some(at) = place(ink).or(place(ground)) else {
            continue;
        };
        let (Some(on), Some(under)) = (rgb(ink), rgb(ground)) else {
            continue;
        };
        let contrast = contrast(on, under);
        if contrast < LEAST {
            let wrong = Wrong::Contrast([hex(on), hex(under)], contrast);
            let name = wanted[at].colour.name();
            return Some((at, OptionFault::of(name, "", wrong)));
        }
    }
    None
}

fn hex([red, green, blue]: Rgb) -> String {
    format!("#{red:02x}{green:02x}{blue:02x}")
}

/// Contrast of two colours: WCAG 2.2, definition of contrast ratio.
fn contrast(one: Rgb, other: Rgb) -> f64 {
    let (one, other) = (luminance(one), luminance(other));
    // (L₁ + 0.05) / (L₂ + 0.05), L₁ the lighter
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

/// Relative luminance: WCAG 2.2, definition of relative luminance.
fn luminance(rgb: Rgb) -> f64 {
    let [red, green, blue] = rgb.map(|part| {
        let part = f64::from(part) / 255.0;
        // c ≤ 0.04045: c / 12.92, else ((c + 0.055) / 1.055)^2.4
        if part <= 0.04045 {
            part / 12.92
        } else {
            libm::pow((part + 0.055) / 1.055, 2.4)
        }
    });
    // L = 0.2126 R + 0.7152 G + 0.0722 B
    0.2126 * red + 0.7152 * green + 0.0722 * blue
}

#[cfg(test)]
mod tests {
    use super::*;

    const WHITE: Rgb = [255; 3];

    /// The style sheet's own, for a page that is only imagined.
    fn ours(name: &str) -> Option<Rgb> {
        Some(match name {
            "--paper" => [0xf6, 0xf3, 0xec],
            "--sheet" => WHITE,
            "--deep-soft" => [0xe3, 0xed, 0xf3],
            "--deep" => [0x16, 0x4b, 0x6b],
            _ => [0x1b, 0x1f, 0x23],
        })
    }

    fn wanted(colours: &[(Colour, Rgb)]) -> Vec<Wanted> {
        let of = |(colour, rgb): &(Colour, Rgb)| Wanted {
            colour: *colour,
            rgb: *rgb,
        };
        colours.iter().map(of).collect()
    }

    /// Black on white by the definition; #767676 is widely known as the lightest grey that passes on
    /// white with 4.54 to 1 (from memory).
    #[test]
    fn contrast_is_that_of_the_definition() {
        assert!((contrast([0; 3], WHITE) - 21.0).abs() < 1e-12);
        assert!((contrast(WHITE, WHITE) - 1.0).abs() < 1e-12);
        assert!((contrast(WHITE, [0x76; 3]) - 4.54).abs() < 0.005);
        assert!(contrast(WHITE, [0x77; 3]) < LEAST);
    }

    #[test]
    fn a_colour_that_cant_be_read_is_named() {
        let dark = wanted(&[(Colour::Accent, [0x1f, 0x5a, 0x2e])]);
        assert!(unreadable(&dark, ours).is_none());
        let yellow = wanted(&[(Colour::Accent, [255, 255, 0])]);
        let (place, fault) = unreadable(&yellow, ours).unwrap();
        assert_eq!((place, fault.option.as_str()), (0, "accent"));
    }

    /// Each is readable with the page's own colours, and the two aren't with each other.
    #[test]
    fn colours_are_held_against_each_other() {
        let grey = (Colour::AccentGround, [0xd8; 3]);
        let accent = (Colour::Accent, [0x76, 0x66, 0x40]);
        assert!(unreadable(&wanted(&[grey]), ours).is_none());
        assert!(unreadable(&wanted(&[accent]), ours).is_none());
        assert!(unreadable(&wanted(&[grey, accent]), ours).is_some());
    }
}
