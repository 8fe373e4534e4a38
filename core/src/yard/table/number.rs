//! Numbers as spreadsheets write them, with a point or a comma before the decimals.

use crate::words::words;

words! {
    /// What stands before the decimals.
    DecimalMark {
        /// 1.5
        Point = "point",
        /// 1,5
        Comma = "comma",
    }
}

impl DecimalMark {
    pub(super) fn sign(self) -> char {
        match self {
            Self::Point => '.',
            Self::Comma => ',',
        }
    }

    pub(super) fn other(self) -> Self {
        match self {
            Self::Point => Self::Comma,
            Self::Comma => Self::Point,
        }
    }
}

/// A number as a cell has it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Figure {
    /// It can only be read in one way; the mark that it shows to be the decimal one.
    Clear(f64, Option<DecimalMark>),
    /// One mark before three digits: decimals, or thousands.
    Doubtful {
        mark: DecimalMark,
        decimal: f64,
        grouped: f64,
    },
}

impl Figure {
    /// Reads a cell; one too large for a double is infinite. `None` where it's no number: no unit, no
    /// blank between digits, no NaN, infinity or hexadecimal.
    pub fn read(text: &str) -> Option<Self> {
        let text = text.trim();
        let (sign, text) = match text.strip_prefix(['-', '−']) {
            Some(rest) => ("-", rest),
            None => ("", text.strip_prefix('+').unwrap_or(text)),
        };
        let (digits, exponent) = match text.split_once(['e', 'E']) {
            None => (text, None),
            Some((digits, exponent)) => (digits, Some(exponent)),
        };
        let value = |whole: &str, decimals: &str| {
            let whole: String = whole.chars().filter(char::is_ascii_digit).collect();
            let exponent = exponent.unwrap_or("0");
            format!("{sign}{whole}.{decimals}e{exponent}").parse().ok()
        };
        let Some(last) = digits.rfind(['.', ',']) else {
            let number = is_digits(digits).then(|| value(digits, "0"))??;
            return Some(Self::Clear(number, None));
        };
        let (whole, rest) = digits.split_at_checked(last)?;
        let mark = match rest.chars().next()? {
            '.' => DecimalMark::Point,
            _ => DecimalMark::Comma,
        };
        let decimals = rest.get(1..).filter(|decimals| is_digits(decimals))?;
        if whole.contains(mark.sign()) {
            // The same mark twice can't stand before decimals.
            let number = is_grouped(digits, mark).then(|| value(digits, "0"))??;
            return Some(Self::Clear(number, Some(mark.other())));
        }
        if whole.contains(mark.other().sign()) {
            let number = is_grouped(whole, mark.other()).then(|| value(whole, decimals))??;
            return Some(Self::Clear(number, Some(mark)));
        }
        if !whole.is_empty() && !is_digits(whole) {
            return None;
        }
        let decimal = value(whole, decimals)?;
        if exponent.is_none() && is_grouped(digits, mark) {
            return Some(Self::Doubtful {
                mark,
                decimal,
                grouped: value(digits, "0")?,
            });
        }
        Some(Self::Clear(decimal, Some(mark)))
    }

    /// The number where a mark is the decimal one.
    pub fn with(self, decimal_mark: DecimalMark) -> f64 {
        match self {
            Self::Clear(number, _) => number,
            Self::Doubtful { mark, decimal, .. } if mark == decimal_mark => decimal,
            Self::Doubtful { grouped, .. } => grouped,
        }
    }
}

fn is_digits(text: &str) -> bool {
    !text.is_empty() && text.bytes().all(|it| it.is_ascii_digit())
}

/// Whether a mark stands before every three digits but those that a number begins with.
fn is_grouped(digits: &str, mark: DecimalMark) -> bool {
    digits.split(mark.sign()).enumerate().all(|(place, group)| {
        is_digits(group)
            && match place {
                0 => group.len() <= 3 && !group.starts_with('0'),
                _ => group.len() == 3,
            }
    })
}
